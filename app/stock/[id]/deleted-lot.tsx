import { getTranslations } from "next-intl/server";
import type { ReactNode } from "react";
import { Button } from "../../_ui/button.client.tsx";
import { PageHead } from "../../_ui/page-head.tsx";
import { undeleteLotForm } from "../actions.ts";

/** A lot that was deleted counts on no day; here is the way back. */
export async function DeletedLot({ id, name, up }: Readonly<{ id: string; name: string; up: ReactNode }>) {
  const t = await getTranslations("stock");
  return (
    <>
      <PageHead title={name} up={up} answer={t("lotDeleted")} />
      <form action={undeleteLotForm}>
        <input type="hidden" name="id" value={id} />
        <Button>{t("bringBack")}</Button>
      </form>
    </>
  );
}
