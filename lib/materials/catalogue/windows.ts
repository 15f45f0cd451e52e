import type { Identity } from "../identity.ts";
import type { CatalogueEntry } from "./entry.ts";

function sash(
  key: string,
  name: string,
  width: string,
  length: string,
  identity: Identity = {},
): CatalogueEntry {
  return {
    key,
    name,
    words: "sash glazing",
    category: "windows",
    purchaseUnit: "each",
    sizes: { width, length },
    identity,
  };
}

/** Sizes are the names they are ordered by; the opening is the maker's to say. */
export const WINDOWS: readonly CatalogueEntry[] = [
  sash("window-fixed-24x36", "Window 24 x 36 in, fixed", "24 in", "36 in"),
  sash("window-casement-24x48-left", "Window 24 x 48 in, casement, left hand", "24 in", "48 in", {
    hand: "left",
  }),
  sash("window-casement-24x48-right", "Window 24 x 48 in, casement, right hand", "24 in", "48 in", {
    hand: "right",
  }),
  sash("window-hung-32x54", "Window 32 x 54 in, double hung", "32 in", "54 in"),
  sash("window-slider-48x36", "Window 48 x 36 in, slider", "48 in", "36 in"),
  sash("window-hopper-32x16", "Basement window 32 x 16 in, hopper", "32 in", "16 in"),
];
