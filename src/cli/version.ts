/** Put in by the build, from package.json. */
declare const DIEWRIGHT_VERSION: string;

export const VERSION: string = DIEWRIGHT_VERSION;
