import { getTranslations } from "next-intl/server";
import { Button } from "../../_ui/button.client.tsx";
import { More } from "../../_ui/more.tsx";
import { deleteLotForm } from "../actions.ts";

/** Takes a lot that was entered by mistake out of the books; it can be brought back. */
export async function DeleteLot({ id }: Readonly<{ id: string }>) {
  const t = await getTranslations("stock");
  return (
    <More title={t("deleteLot")}>
      <form action={deleteLotForm}>
        <input type="hidden" name="id" value={id} />
        <p>{t("deleteNote")}</p>
        <Button kind="plain">{t("deleteLot")}</Button>
      </form>
    </More>
  );
}
