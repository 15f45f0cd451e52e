import { getTranslations } from "next-intl/server";
import type { ReactNode } from "react";
import button from "../../_ui/button.module.css";
import style from "./report.module.css";

const KINDS = ["pdf", "xlsx", "csv"] as const;

/** The report as files, made when asked for, and what else can be done with it. query: the same question, with its question mark. */
export async function Files({ query, children }: Readonly<{ query: string; children?: ReactNode }>) {
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
      {children}
    </div>
  );
}
