/** The compiled rules folder as JSON text; the build and the test configuration provide it. */
declare module 'virtual:rulebook' {
  const json: string;
  export default json;
}
