import { getTranslations } from "next-intl/server";
import type { AmountWords } from "../_ui/amount-field.client.tsx";

/** What stands under an amount field. */
export async function amountWords(): Promise<AmountWords> {
  const t = await getTranslations("ui");
  return { readAs: t("readAs"), cannotTell: t("cannotTell") };
}
