import { type LocalDate, plusDays } from "../../lib/calendar/local-date.ts";
import { chance } from "./chance.ts";

/** Weekly Canadian dollars per US dollar of three years ending today: invented, and its source says so. */
export function demoRates(today: LocalDate) {
  const next = chance("CAD per USD");
  let tenThousandths = 13_600;
  return Array.from({ length: 160 }, (_, index) => {
    tenThousandths += Math.round((next() - 0.5) * 160 - (tenThousandths - 13_700) * 0.04);
    const ago = (159 - index) * 7 + 1;
    return {
      date: plusDays(today, -ago),
      base: "USD",
      quote: "CAD",
      rate: `1.${String(tenThousandths - 10_000).padStart(4, "0")}`,
      source: "demo, invented",
    };
  });
}
