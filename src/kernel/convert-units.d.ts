/** The definition files of convert-units as data; the types of the package cover its converter only. */
declare module 'convert-units/lib/definitions/*.js' {
  interface Definition {
    readonly to_anchor: number;
  }
  const definitions: { readonly metric: Readonly<Record<string, Definition>> };
  export default definitions;
}
