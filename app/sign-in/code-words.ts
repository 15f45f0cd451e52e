import { getTranslations } from "next-intl/server";

/** The sentences around a code that was made; {code} and {address} are filled in where it is shown. */
export async function codeWords(minutes: number) {
  const t = await getTranslations("signIn");
  const days = Math.round(minutes / (24 * 60));
  const code = "{code}";
  return {
    shown: days > 0 ? t("shownOnceDays", { code, days }) : t("shownOnce", { code, minutes }),
    at: t("atAddress", { address: "{address}" }),
    square: t("square", { address: "{address}" }),
  };
}
