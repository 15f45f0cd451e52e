import { decimal } from "../../../../lib/decimal.ts";
import { lengthText } from "../../../../lib/measure/length-text.ts";
import type { UnitSystem } from "../../../../lib/measure/unit-system.ts";
import type { InputField, InputShape } from "./input-shapes.ts";

/** What was typed, by the names of the form's fields: "walls.0.openings.1.width". */
export type TypedInputs = Readonly<Record<string, string>>;
type Given = Record<string, unknown>;

/** What a part is until something else is chosen. */
const FIRST_SHAPE = "rectangle";

/** Whether a field is asked, given what its row says. */
export function isAsked({ when }: InputField, typed: TypedInputs, at: string): boolean {
  if (when === undefined) return true;
  const said = typed[`${at}${when.field}`] || FIRST_SHAPE;
  return when.is.some((one) => one === said);
}

function isFilled(shape: InputShape, typed: TypedInputs, at: string): boolean {
  return shape.some((item) => {
    if ("rows" in item) return rowsFilled(item.rows, typed, `${at}${item.name}.`) > 0;
    return item.kind !== "choice" && item.kind !== "flag" && (typed[`${at}${item.name}`] ?? "").trim() !== "";
  });
}

/** How many rows of a group there are up to the last one with something typed. */
export function rowsFilled(shape: InputShape, typed: TypedInputs, at: string): number {
  const places = Object.keys(typed)
    .filter((name) => name.startsWith(at))
    .map((name) => Number(name.slice(at.length).split(".")[0]))
    .filter((place) => Number.isInteger(place) && isFilled(shape, typed, `${at}${place}.`));
  return places.length === 0 ? 0 : Math.max(...places) + 1;
}

function fieldGiven(field: InputField, text: string): unknown {
  if (field.kind === "flag") return text !== "";
  if (field.kind === "choice" && text === "") return field.choices?.[0];
  return text.trim() === "" ? undefined : text;
}

/** What was typed as the entry of a calculator; empty fields and empty rows at the end are left out. */
export function inputsGiven(shape: InputShape, typed: TypedInputs, at = ""): Given {
  const given: Given = {};
  for (const item of shape) {
    const name = `${at}${item.name}`;
    if ("rows" in item) {
      const length = rowsFilled(item.rows, typed, `${name}.`);
      given[item.name] = Array.from({ length }, (_, row) => inputsGiven(item.rows, typed, `${name}.${row}.`));
    } else if (isAsked(item, typed, at)) {
      const value = fieldGiven(item, typed[name] ?? "");
      if (value !== undefined) given[item.name] = value;
    }
  }
  return given;
}

function writtenField(field: InputField, value: unknown, system: UnitSystem): string {
  if (value === true) return "yes";
  if (typeof value !== "string") return "";
  return field.kind === "length" ? lengthText(decimal(value), system) : value;
}

/** A stored entry as it would be typed: lengths as read off a tape. */
export function inputsTyped(shape: InputShape, stored: unknown, system: UnitSystem, at = ""): TypedInputs {
  const values = typeof stored === "object" && stored !== null ? new Map(Object.entries(stored)) : new Map();
  const typed: Record<string, string> = {};
  for (const item of shape) {
    const name = `${at}${item.name}`;
    const value: unknown = values.get(item.name);
    if (!("rows" in item)) typed[name] = writtenField(item, value, system);
    else if (Array.isArray(value))
      for (const [row, one] of value.entries())
        Object.assign(typed, inputsTyped(item.rows, one, system, `${name}.${row}.`));
  }
  return typed;
}
