import { getTranslations } from "next-intl/server";
import type { ReactNode } from "react";
import { When } from "./when-fields.client.tsx";

/** The day, a reason, and what else is rare, folded away: most things are written down on their day. */
export async function WhenFields({ day, children }: Readonly<{ day: string; children?: ReactNode }>) {
  const t = await getTranslations("stock");
  return (
    <When day={day} words={{ title: t("anotherDay"), on: t("on"), reason: t("reason") }}>
      {children}
    </When>
  );
}
