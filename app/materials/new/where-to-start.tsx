import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { CATEGORIES } from "../../../lib/materials/material.ts";
import { LinkButton } from "../../_ui/link-button.tsx";
import { PageHead, Part } from "../../_ui/page-head.tsx";
import style from "../materials.module.css";
import { FindInCatalogue } from "./find-in-catalogue.tsx";

/** The two ways to begin: with a ready-made material, or with nothing but its kind. */
export async function WhereToStart() {
  const t = await getTranslations("materials");
  const c = await getTranslations("categories");
  return (
    <>
      <PageHead
        title={t("form.pickTitle")}
        answer={t("form.start")}
        up={<Link href="/materials">{t("back")}</Link>}
        aside={
          <LinkButton kind="plain" href="/materials/new/catalogue">
            {t("form.catalogueAll")}
          </LinkButton>
        }
      />
      <FindInCatalogue />
      <Part title={t("form.pick")}>
        <nav className={style.kinds} aria-label={t("form.pick")}>
          {CATEGORIES.map((one) => (
            <Link key={one} href={`/materials/new?category=${one}`}>
              {c(one)}
            </Link>
          ))}
        </nav>
      </Part>
    </>
  );
}
