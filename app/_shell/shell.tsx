import Link from "next/link";
import { getTranslations } from "next-intl/server";
import type { ReactNode } from "react";
import { FormPlace } from "../_ui/form-context.client.tsx";
import { leaveDemo } from "../_workspace/actions.ts";
import { seesDemo } from "../_workspace/workspace-seen.ts";
import { Mark } from "./mark.tsx";
import { BottomBar, TopBar } from "./navigation.client.tsx";
import { placesOpen } from "./places-open.ts";
import style from "./shell.module.css";

/** Skip link, header with the tape edge, navigation and the main region. Stands when the database is down. */
export async function Shell({ children }: Readonly<{ children: ReactNode }>) {
  const t = await getTranslations("shell");
  const places = await placesOpen();
  const demo = await seesDemo();
  return (
    <>
      <a href="#main" className={style.skip}>
        {t("skip")}
      </a>
      <header className={style.header}>
        <div className={style.inner}>
          <Link href="/" className={style.name}>
            <Mark />
            <span>{t("name")}</span>
          </Link>
          <TopBar places={places} label={t("navigation")} />
        </div>
        <div className={style.tape} aria-hidden="true" />
      </header>
      {demo ? (
        <aside aria-label={t("demoLabel")}>
          <form action={leaveDemo} className={style.demo}>
            <p>{t("demo")}</p>
            <button type="submit">{t("leaveDemo")}</button>
          </form>
        </aside>
      ) : null}
      <main id="main" className={style.main} tabIndex={-1}>
        <FormPlace
          value={{ place: demo ? "demo" : "owner", tooMuch: (await getTranslations("ui"))("tooMuch") }}
        >
          {children}
        </FormPlace>
      </main>
      <BottomBar places={places} label={t("navigation")} more={t("more")} />
    </>
  );
}
