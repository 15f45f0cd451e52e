import { v7 } from "uuid";
import { type LocalDate, localDate } from "../../lib/calendar/local-date.ts";
import type { Scope } from "../../lib/data/client.ts";
import { takeIndexValues } from "../../lib/data/index-values.ts";
import { takeRates } from "../../lib/data/rate-files.ts";
import { addReferenceIndex, nameIndexOfMaterial } from "../../lib/data/reference-indices.ts";
import { decimal } from "../../lib/decimal.ts";
import { referenceIndexEntry } from "../../lib/indices/reference-index-entry.ts";
import { accepted } from "./stored-things.ts";

/** An index of one value that a material names, and a file of one exchange rate; ids of the index and of its file. */
export async function storedIndex(scope: Scope & { today: LocalDate }, materialId: string) {
  const entry = referenceIndexEntry.parse({ name: "Lumber", series: "ONE", publisher: "Bureau" });
  const { id } = await accepted(addReferenceIndex(scope, v7(), entry));
  const file = v7();
  const from = { name: "one.csv", source: "Bureau" };
  const at = { row: 2, column: "ONE", text: "1", fate: "accepted" } as const;
  const month = localDate("2024-01-01");
  const rate = { on: month, base: "USD", quote: "CAD", rate: decimal("1.3") } as const;
  await takeRates(scope, v7(), { ...from, readings: [{ ...at, value: rate }] });
  const value = { series: "ONE", month, value: decimal("1"), preliminary: null };
  const published = { ...from, publishedOn: scope.today, readings: [{ ...at, value }] };
  await takeIndexValues(scope, file, id, published);
  await accepted(nameIndexOfMaterial(scope, materialId, id));
  return { id, file };
}
