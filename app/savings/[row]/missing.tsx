import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import type { MakesKnown } from "../../../lib/savings/makes-known.ts";
import { dayText } from "../../../lib/show/day-text.ts";
import { LinkButton } from "../../_ui/link-button.tsx";
import { Notice } from "../../_ui/notice.tsx";
import { Part } from "../../_ui/page-head.tsx";

type MissingProps = Readonly<{
  missing: readonly MakesKnown[];
  materialId: string;
  material: string;
  lotId: string;
}>;

const REASONS: Readonly<Record<string, "tax" | "rate">> = {
  "tax-unknown": "tax",
  "region-unknown": "tax",
  "rate-unknown": "rate",
};

/** What would make a figure known, each with the way to enter it. */
export async function Missing({ missing, materialId, material, lotId }: MissingProps) {
  const t = await getTranslations("savingWhy");
  const s = await getTranslations("savings");
  const locale = await getLocale();
  if (missing.length === 0) return null;
  return (
    <Part title={t("missing")}>
      {missing.map((one) => (
        <Notice key={one.figure} tone="warn">
          {one.what === "shelf-price" ? (
            <>
              <p>
                {t("missingPrice", {
                  figure: one.figure === "going-at-acquisition" ? "bought" : "use",
                  material,
                  from: dayText(one.from, locale),
                  until: dayText(one.until, locale),
                })}
              </p>
              {one.unvalued === null ? (
                <p>
                  <LinkButton href={`/log?material=${materialId}`}>{t("logIt")}</LinkButton>
                </p>
              ) : (
                <p>{t("missingUnvalued", { reason: REASONS[one.unvalued] ?? "unit" })}</p>
              )}
            </>
          ) : one.figure === "paid" ? (
            <p>
              {t("missingPaid", {
                reason: one.what === "tax-unknown" ? "tax" : one.what === "rate-unknown" ? "rate" : "region",
              })}{" "}
              <Link href={`/stock/${lotId}`}>{t("toLot")}</Link>
            </p>
          ) : (
            <p>
              {t("missingReceived", { day: dayText(one.on, locale) })}{" "}
              <Link href="/settings/workspace">{s("toSettings")}</Link>
            </p>
          )}
        </Notice>
      ))}
    </Part>
  );
}
