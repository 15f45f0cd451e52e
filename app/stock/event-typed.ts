import { typed, typedAmount } from "../_forms/typed.ts";

/** Of what a lot's event says, only what was typed: nothing else is sent on. */
function given(fields: Readonly<Record<string, unknown>>): Record<string, unknown> {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
}

/** What goes with each kind beside how many, when and why. */
function special(form: FormData, kind: string, locale: string): Record<string, unknown> {
  const amount = typedAmount(form, "amount", locale);
  const placeId = typed(form, "placeId");
  const money = { amount, currency: typed(form, "currency") };
  switch (kind) {
    case "drawn":
      return { requirementId: typed(form, "requirementId"), placeId };
    case "returned":
    case "sold":
      return { ...money, placeId };
    case "moved":
      return {
        placeId,
        fromPlaceId: typed(form, "fromPlaceId"),
        cost: amount === undefined ? undefined : money,
      };
    case "stored":
      return money;
    case "written-off":
      return { placeId };
    default:
      return { requirementId: typed(form, "requirementId") };
  }
}

/** One thing to happen to a lot, as typed: an entry still to be checked. cause: a reason chosen from a few, before what was typed. */
export function typedEvent(form: FormData, locale: string) {
  const kind = typed(form, "kind") ?? "";
  const reason = [typed(form, "cause"), typed(form, "reason")].filter(Boolean).join(": ");
  return given({
    kind,
    quantity: kind === "stored" ? undefined : typedAmount(form, "quantity", locale),
    on: typed(form, "on"),
    reason: reason === "" ? undefined : reason,
    ...special(form, kind, locale),
  });
}
