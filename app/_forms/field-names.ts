import type { FieldNames } from "./fault-words.ts";

/** Names by path; the numbers of repeated rows do not matter: "discounts.0.percent" is found as "discounts percent". */
export function fieldNames(names: Readonly<Record<string, string>>): FieldNames {
  return (path) => {
    const key = path
      .split(".")
      .filter((part) => !/^\d+$/.test(part))
      .join(" ");
    return names[key] ?? null;
  };
}
