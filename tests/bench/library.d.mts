/** The part file of a number in a made-up library, as text. */
export function partText(number: number, seed?: number): string;
/** Writes the parts from 1 to `count` into folders of fifty. */
export function writeLibrary(folder: string, count: number, seed?: number): void;
