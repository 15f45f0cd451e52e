import { createTranslator } from "next-intl";
import words from "../../app/_words/en.json";
import type { ReportWords } from "../../app/savings/_report/worded.ts";
import { decimal } from "../../lib/decimal.ts";
import { type ReportContent, reportContent } from "../../lib/savings/report-content.ts";
import { day, observation, rate, SHEET, TODAY, valuation } from "./price-example.ts";
import { a } from "./saving-example.ts";
import {
  cad,
  eventOf,
  factsOf,
  lotOf,
  needOf,
  projectOf,
  revisionOf,
  SEVEN_PERCENT,
} from "./stock-example.ts";

const locale = "en-CA";
const units = createTranslator({ locale, messages: words, namespace: "units" });

/** The words of a report in English, as a request has them. */
export const REPORT_WORDS: ReportWords = {
  t: createTranslator({ locale, messages: words, namespace: "savingsReport" }),
  s: createTranslator({ locale, messages: words, namespace: "savings" }),
  units: {
    one: (unit) => units(`${unit}.one`),
    short: (unit) => units(`${unit}.short`),
    of: (unit, quantity) => units(decimal(quantity).equals(1) ? `${unit}.one` : `${unit}.many`),
  },
  locale,
};

/** Sheets of an awkward name bought ahead, some of everything done with them, and boards whose price is not known. */
export const REPORT_FACTS = factsOf({
  valuation: valuation({ rates: [rate("2026-03-01", "USD", "CAD", "1.3741")] }),
  materials: [
    { ...SHEET, name: "Épinette – contreplaqué ½ in − 4×8" },
    { ...SHEET, id: "board", name: "=1+1 board" },
  ],
  projects: [
    projectOf("job", { name: "Birch Road kitchen" }),
    projectOf("other", { name: "+Quarry Street" }),
  ],
  requirements: [
    needOf("a", revisionOf(40)),
    needOf("b", revisionOf(8), { projectId: "other", materialId: "board" }),
  ],
  lots: [
    lotOf(52, "2181.40", { terms: "special" }),
    lotOf(8, 96, { id: "boards", materialId: "board", terms: "quote" }),
  ],
  events: [
    eventOf("allocated", 40, "2026-01-06", a),
    eventOf("written-off", 2, "2026-01-20"),
    eventOf("drawn", 31, "2026-02-10", a),
    eventOf("returned", 6, "2026-02-12", { amount: cad("240.00") }),
    eventOf("sold", 3, "2026-02-20", { amount: cad("141.00") }),
    eventOf("allocated", 8, "2026-01-06", { lotId: "boards", requirementId: "b" }),
    eventOf("drawn", 3, "2026-02-11", { lotId: "boards", requirementId: "b" }),
  ],
  observations: [
    observation("47.95", { seenOn: day("2026-01-04") }),
    observation("51.20", { seenOn: day("2026-02-08"), storeId: "far" }),
    observation("44.10", { seenOn: day("2026-02-09"), terms: "special", until: day("2026-02-20") }),
    observation("52.60", { seenOn: day("2026-02-27") }),
  ],
  moneyRates: SEVEN_PERCENT,
});

/** The report of it, of everything or of what is asked. */
export function reportExample(asked: Partial<ReportContent["asked"]> = {}): ReportContent {
  const all = { from: null, until: null, projectId: null, materialId: null, currency: null, day: TODAY };
  return reportContent({ ...all, ...asked }, REPORT_FACTS);
}
