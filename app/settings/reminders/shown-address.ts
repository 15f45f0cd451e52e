/** A calendar's address made just now, and the same as a drawing for a camera. */
export type ShownAddress = Readonly<{ address: string; path: string; size: number }>;
