import { useTranslations } from "next-intl";
import type { ChangeText } from "../../lib/show/material-rows.ts";
import style from "./materials.module.css";

const TRIANGLE = { up: "▲", down: "▼", level: "" } as const;

/** How the price moved since the one before: a triangle for its direction, and the word for those who do not see it. */
export function PriceChange({ change }: Readonly<{ change: ChangeText | null }>) {
  const t = useTranslations("materials");
  if (change === null) return <span className={style.quiet}>{t("first")}</span>;
  if (change.direction === "level") return <span className={style.quiet}>{t("level")}</span>;
  return (
    <span className={style[change.direction]}>
      <span aria-hidden="true">{TRIANGLE[change.direction]}</span>{" "}
      {t("moved", { direction: change.direction, percent: change.percent })}
    </span>
  );
}
