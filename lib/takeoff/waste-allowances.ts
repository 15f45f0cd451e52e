import { type Decimal, decimal } from "../decimal.ts";
import type { LineName } from "./result.ts";

/** How far a figure can be trusted: read where the source says, or only remembered. */
export type Mark = "read" | "from-memory";

/** A usual waste, in percent from least to most, for what a takeoff comes to. Offered, never applied by itself. */
export type WasteAllowance = Readonly<{
  name: string;
  lines: readonly LineName[];
  least: Decimal;
  most: Decimal;
  mark: Mark;
  source: string;
}>;

const CRIB = "estimating crib sheet of a college";
const OPINIONS = "roofing reference articles; opinions ranged from 0 to 15 %";

function allowance(
  name: string,
  lines: readonly LineName[],
  [least, most]: readonly [number, number],
  mark: Mark,
  source: string,
): WasteAllowance {
  return { name, lines, least: decimal(least), most: decimal(most), mark, source };
}

/** Usual waste allowances, common practice, each with where it was read or that it is from memory. */
export const WASTE_ALLOWANCES: readonly WasteAllowance[] = [
  allowance(
    "framing",
    ["rafters", "hipRafters", "valleyRafters", "ridgeBoard", "studs", "plates", "joists", "rims"],
    [10, 10],
    "read",
    "carpentry manual, materials estimate list: 10 % for two inches and thicker",
  ),
  allowance("drywall", ["drywall"], [5, 5], "read", CRIB),
  allowance("houseWrap", ["houseWrap"], [10, 10], "read", CRIB),
  allowance("shinglesGable", ["shingles"], [5, 10], "read", OPINIONS),
  allowance("shinglesHip", ["shingles"], [10, 15], "read", OPINIONS),
  allowance("metalRoofing", ["metalPanels"], [5, 15], "read", "metal roofing articles"),
  allowance("concrete", ["concrete"], [5, 10], "from-memory", "common practice"),
];

/** The allowances for a line; none where no source was read. */
export function wasteAllowancesFor(name: LineName): WasteAllowance[] {
  return WASTE_ALLOWANCES.filter(({ lines }) => lines.includes(name));
}
