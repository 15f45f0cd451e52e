import { doorCall } from "../../measure/door-size.ts";
import type { Hand } from "../identity.ts";
import type { CatalogueEntry, WrittenSizes } from "./entry.ts";
import { PRACTICE } from "./sources.ts";

const HEIGHT = 80;
const INTERIOR = "1-3/8 in";
const EXTERIOR = "1-3/4 in";
const NARROW_JAMB = "4-9/16 in";
const WIDE_JAMB = "6-9/16 in";

const HAND_WORDS: Readonly<Record<Hand, string>> = {
  left: "left hand",
  right: "right hand",
  "left-reverse": "left hand reverse",
  "right-reverse": "right hand reverse",
};

function size(width: string, thickness: string): WrittenSizes {
  return { width, length: `${HEIGHT} in`, thickness };
}

function slab(inches: number): CatalogueEntry {
  return {
    key: `slab-${inches}`,
    name: `Interior door slab ${inches} x ${HEIGHT} in`,
    words: `leaf bare hollow core ${doorCall(inches, HEIGHT)}`,
    category: "doors",
    purchaseUnit: "each",
    sizes: size(`${inches} in`, INTERIOR),
    identity: { doorKind: "slab" },
    sources: { thickness: PRACTICE },
  };
}

function prehung(place: "Interior" | "Entry", inches: number, hand: Hand, jambDepth: string): CatalogueEntry {
  const thickness = place === "Entry" ? EXTERIOR : INTERIOR;
  const key = `${place} ${inches} ${hand} ${jambDepth === WIDE_JAMB ? 6 : 4}`;
  return {
    key: `door-${key.toLowerCase().replaceAll(" ", "-")}`,
    name: `${place} door ${inches} x ${HEIGHT} in, ${HAND_WORDS[hand]}, prehung, ${jambDepth.replace(" in", "")} jamb`,
    words: `${place === "Entry" ? "exterior front outside" : "passage"} ${doorCall(inches, HEIGHT)}`,
    category: "doors",
    purchaseUnit: "each",
    sizes: { ...size(`${inches} in`, thickness), jambDepth },
    identity: { doorKind: "prehung", hand },
    sources: { thickness: PRACTICE },
  };
}

/** Nominal size, hand, jamb depth and slab or prehung are what a door is: each combination is a material of its own. */
export const DOORS: readonly CatalogueEntry[] = [
  ...[24, 28, 30, 32, 36].map(slab),
  prehung("Interior", 30, "left", NARROW_JAMB),
  prehung("Interior", 30, "right", NARROW_JAMB),
  prehung("Interior", 32, "left", NARROW_JAMB),
  prehung("Interior", 32, "right", NARROW_JAMB),
  prehung("Entry", 36, "left", NARROW_JAMB),
  prehung("Entry", 36, "right", NARROW_JAMB),
  prehung("Entry", 36, "left", WIDE_JAMB),
  prehung("Entry", 36, "right", WIDE_JAMB),
  prehung("Entry", 36, "left-reverse", WIDE_JAMB),
  prehung("Entry", 36, "right-reverse", WIDE_JAMB),
];
