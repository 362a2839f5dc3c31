/** The fields whose value is not undefined: what TypeScript's exact optional properties ask for. */
export function present<T extends object>(fields: T): Present<T> {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as Present<T>;
}

type Present<T> = { [K in keyof T as undefined extends T[K] ? never : K]: T[K] } & {
  [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined>;
};
