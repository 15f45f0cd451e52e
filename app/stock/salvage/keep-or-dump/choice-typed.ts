import type { LotOnDay } from "../../../../lib/show/lot-text.ts";
import { parseAmount } from "../../../../lib/show/parse-amount.ts";
import { percentTyped, shareOfPercent } from "../../../../lib/show/share-typed.ts";

export const CHOICE_FIELDS = [
  "materialId",
  "quantity",
  "condition",
  "hours",
  "hourlyRate",
  "hauling",
  "storage",
  "feeBasis",
  "fee",
  "least",
  "loads",
  "weight",
  "haulingAway",
  "asking",
] as const;
export type ChoiceTyped = Readonly<Partial<Record<(typeof CHOICE_FIELDS)[number], string>>>;

const AS_TEXT: ReadonlySet<string> = new Set(["materialId", "feeBasis"]);

/** What was typed, as an entry still to be checked: amounts as canonical decimal text, the condition as a share of one. */
export function typedChoice(typed: ChoiceTyped, locale: string): Readonly<Record<string, string>> {
  const entries = Object.entries(typed).flatMap(([name, text]) => {
    if (text === undefined || text.trim() === "") return [];
    const read = AS_TEXT.has(name) ? text : (parseAmount(text, locale) ?? text);
    return [[name, name === "condition" ? shareOfPercent(read) : read] as const];
  });
  return Object.fromEntries(entries);
}

/** What to begin with for a lot that is there: nothing of what it took so far counts any more. */
export function choiceOfLot({ lot, free }: LotOnDay, asking: string | null): ChoiceTyped {
  return {
    materialId: lot.materialId,
    quantity: free.quantity.toFixed(),
    condition: percentTyped(lot.condition),
    hours: "0",
    hauling: "0",
    ...(asking === null ? {} : { asking }),
  };
}
