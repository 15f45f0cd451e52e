import type { Decimal } from "../decimal.ts";
import { measure, type TakeoffMeasure } from "./result.ts";
import { hipFactor, slopeFactor } from "./slope.ts";

/** The two factors of an equal-sloped hip roof and the measures that show them. Units: none. Rounds: roots, to 40 digits. */
export function hipFigures(
  rise: Decimal,
): Readonly<{ factor: Decimal; hip: Decimal; common: readonly TakeoffMeasure[] }> {
  const [factor, hip] = [slopeFactor(rise), hipFactor(rise)];
  return {
    factor,
    hip,
    common: [
      measure("slopeFactor", factor, "sqrt(slope² + 12²) / 12"),
      measure("hipFactor", hip, "sqrt(slope² + 2 × 12²) / 12"),
    ],
  };
}
