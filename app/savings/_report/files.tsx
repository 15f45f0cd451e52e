import { getTranslations } from "next-intl/server";
import button from "../../_ui/button.module.css";
import style from "./report.module.css";

const KINDS = ["pdf", "xlsx", "csv"] as const;

/** The report as files, made when asked for. query: the same question, with its question mark. */
export async function Files({ query }: Readonly<{ query: string }>) {
  const t = await getTranslations("savingsReport");
  return (
    <div className={style.files}>
      {KINDS.map((kind) => (
        <a
          key={kind}
          href={`/savings/report/${kind}${query}`}
          download
          className={`${button.button} ${button.plain}`}
        >
          {t(kind)}
        </a>
      ))}
    </div>
  );
}
