/** A compiled kernel as bytes inside the bundle; see vite-plugin.ts. */
declare module '*.wasm?bytes' {
  const bytes: Uint8Array<ArrayBuffer>;
  export default bytes;
}
