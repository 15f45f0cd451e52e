import { shareOfPercent } from "../../../lib/show/share-typed.ts";
import { rowsTyped, typed, typedAmount, typedOrNull } from "../../_forms/typed.ts";

/** A tally as typed, without the rows left empty; each keeps its number, so that its faults find it. */
function tallyTyped(form: FormData, locale: string) {
  return rowsTyped(form, "tally")
    .filter((row) => typed(form, `tally.${row}.pieces`) ?? typed(form, `tally.${row}.length`))
    .map((row) => ({
      row,
      entry: {
        pieces: typedAmount(form, `tally.${row}.pieces`, locale),
        length: typedOrNull(form, `tally.${row}.length`),
      },
    }));
}

/** What the form of salvage sent, as an entry still to be checked, and which row of the form each row of its tally is. */
export function typedSalvage(form: FormData, locale: string) {
  const amount = (name: string) => typedAmount(form, name, locale) ?? "0";
  const condition = typedAmount(form, "condition", locale);
  const tally = tallyTyped(form, locale);
  return {
    rows: tally.map(({ row }) => row),
    entry: {
      reclaimedFrom: typedOrNull(form, "reclaimedFrom"),
      projectId: typedOrNull(form, "projectId"),
      hours: amount("hours"),
      hourlyRate: amount("hourlyRate"),
      hauling: amount("hauling"),
      purchasePrice: amount("purchasePrice"),
      currency: typed(form, "currency"),
      condition: condition === undefined ? undefined : shareOfPercent(condition),
      tally: tally.map(({ entry }) => entry),
      quantity: typedAmount(form, "quantity", locale) ?? null,
      on: typed(form, "on"),
      note: typedOrNull(form, "note"),
    },
  };
}
