import localFont from "next/font/local";

/** Three typefaces from packages on disk: heads, text, figures. Latin only; other letters fall back to the system's. */

export const head = localFont({
  src: "../node_modules/@fontsource-variable/bricolage-grotesque/files/bricolage-grotesque-latin-wght-normal.woff2",
  variable: "--font-head",
  weight: "200 800",
  display: "swap",
});
export const text = localFont({
  src: "../node_modules/@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2",
  variable: "--font-text",
  weight: "200 800",
  display: "swap",
});
export const figures = localFont({
  src: "../node_modules/@fontsource-variable/atkinson-hyperlegible-mono/files/atkinson-hyperlegible-mono-latin-wght-normal.woff2",
  variable: "--font-fig",
  weight: "200 800",
  display: "swap",
});
