/** The ways a file's letters are written that its first bytes, or its zero bytes, give away. */
type Encoding = "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";
const SAMPLE = 512;

function encodingOf(bytes: Uint8Array): Encoding {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return "utf-16le";
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return "utf-16be";
  const sample = [...bytes.subarray(0, SAMPLE)];
  const zeros = (odd: number) => sample.filter((byte, at) => byte === 0 && at % 2 === odd).length;
  if (zeros(1) * 4 > sample.length) return "utf-16le";
  if (zeros(0) * 4 > sample.length) return "utf-16be";
  try {
    new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    return "utf-8";
  } catch {
    return "windows-1252";
  }
}

/**
 * The text of a file, whatever its bytes: UTF-8 or UTF-16 with or without a byte-order mark (which is dropped), else
 * Windows 1252, in which every byte is a letter. Never throws. Source: Encoding Standard (WHATWG), the decoders.
 */
export function fileText(bytes: Uint8Array): string {
  return new TextDecoder(encodingOf(bytes)).decode(bytes);
}
