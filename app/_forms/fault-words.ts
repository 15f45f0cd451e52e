import { getTranslations } from "next-intl/server";
import type { Fault } from "../../lib/fault.ts";
import type { FormFault } from "../_ui/form-state.ts";

/** What a field is called, by its path; null: say the fault alone. */
export type FieldNames = (path: string) => string | null;

/** Faults in words, each opening with the name of its field: "Price: must be more than 0". */
export async function faultWords(faults: readonly Fault[], names: FieldNames): Promise<FormFault[]> {
  const t = await getTranslations("faults");
  return faults.map((fault) => {
    const name = names(fault.path);
    const words = t(fault.code, fault.values ?? {});
    return { path: fault.path, text: name === null ? words : `${name}: ${words}` };
  });
}
