import { useTranslations } from "next-intl";
import style from "./small.module.css";

/** How old something is, in words: "6 days ago"; marked when stale. On the server. */
export function Age({ days, stale = false }: Readonly<{ days: number; stale?: boolean }>) {
  const t = useTranslations("ui");
  return (
    <span className={stale ? style.stale : style.age}>
      {t("age", { days })}
      {stale ? `, ${t("stale")}` : ""}
    </span>
  );
}
