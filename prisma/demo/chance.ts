/** A stream of numbers from 0 up to 1 that is the same for the same name on every machine: FNV-1a seeds mulberry32. */
export function chance(name: string): () => number {
  let state = 0x811c9dc5;
  for (const letter of name) state = Math.imul(state ^ letter.charCodeAt(0), 0x01000193);
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}
