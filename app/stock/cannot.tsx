import { getLocale, getTranslations } from "next-intl/server";
import { isLocalDate } from "../../lib/calendar/local-date.ts";
import { dayText } from "../../lib/show/day-text.ts";
import { STOCK_EVENT_KINDS } from "../../lib/stock/lot.ts";
import { Notice } from "../_ui/notice.tsx";
import { asked, type Query } from "../_workspace/day-asked.ts";

/** Names the later event that needs the one that was to be taken back. */
export async function Cannot({ query }: Readonly<{ query: Query }>) {
  const t = await getTranslations("stock");
  const ui = await getTranslations("ui");
  const life = await getTranslations("lotLife");
  const named = await asked(query, "kind");
  const known = STOCK_EVENT_KINDS.find((one) => one === named);
  const on = await asked(query, "on");
  const why = await asked(query, "why");
  if (why === "held-by-an-act" || known === undefined || !isLocalDate(on))
    return (
      <Notice tone="warn" live>
        <p>{why === "held-by-an-act" ? life("heldByAct") : ui("couldNotUndo")}</p>
      </Notice>
    );
  return (
    <Notice tone="warn" live>
      <p>
        {t("cannotUndo", {
          event: t(`kinds.${known}`),
          quantity: (await asked(query, "quantity")) ?? "",
          day: dayText(on, await getLocale()),
        })}
      </p>
    </Notice>
  );
}
