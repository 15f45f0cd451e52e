import { typed, typedAmount, typedOrNull } from "../../_forms/typed.ts";

function limit(form: FormData, name: string, locale: string): string | null {
  const value = typedAmount(form, name, locale);
  return value === undefined ? null : `${value} ${typed(form, `${name}.unit`) ?? ""}`.trim();
}

function flag(form: FormData, name: string): boolean | null {
  const said = typed(form, name);
  return said === undefined ? null : said === "yes";
}

/** The place form as an entry still to be checked; limits as "value unit". */
export function placeTyped(form: FormData, locale: string) {
  return {
    name: typed(form, "name") ?? "",
    note: typedOrNull(form, "note"),
    area: limit(form, "area", locale),
    volume: limit(form, "volume", locale),
    weight: limit(form, "weight", locale),
    count: typedAmount(form, "count", locale) ?? null,
    covered: flag(form, "covered"),
    ventilated: flag(form, "ventilated"),
  };
}
