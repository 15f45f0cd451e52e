import { encode } from "uqr";

/** The dark squares of a QR code as one path of a drawing, and how many squares it is wide. */
export function qrPath(text: string): Readonly<{ path: string; size: number }> {
  const { data, size } = encode(text, { border: 4 });
  const path = data.flatMap((row, y) => row.flatMap((dark, x) => (dark ? [`M${x} ${y}h1v1h-1z`] : [])));
  return { path: path.join(""), size };
}
