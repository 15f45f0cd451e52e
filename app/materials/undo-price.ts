import { getTranslations } from "next-intl/server";
import type { UndoBarProps } from "../_ui/undo-bar.tsx";
import { asked, type Query } from "../_workspace/day-asked.ts";
import { bringPriceBack, takePriceBack } from "./price-actions.ts";
import { undoOf } from "./undo-of.ts";

/** What takes back the last act on a price, from the address of the page. */
export async function undoPrice(query: Query): Promise<UndoBarProps["undo"]> {
  const ui = await getTranslations("ui");
  const undo = undoOf(await asked(query, "done"), await asked(query, "undo"), {
    deleted: bringPriceBack,
    undeleted: takePriceBack,
  });
  return undo === null ? undefined : { ...undo, label: ui("undo") };
}
