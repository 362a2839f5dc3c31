/** The compiled rules folder as text (pack.ts); the build and the test configuration provide it. */
declare module 'virtual:rulebook' {
  const text: string;
  export default text;
}
