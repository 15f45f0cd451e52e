import Link from "next/link";
import { getTranslations } from "next-intl/server";
import type { PageOf } from "../../lib/show/page-of.ts";

type PagesProps = Readonly<{
  page: Omit<PageOf<unknown>, "items">;
  total: number;
  query: Readonly<Record<string, string | undefined>>;
}>;

/** Which rows of how many, and the way to those before and after. */
export async function Pages({ page, total, query }: PagesProps) {
  const t = await getTranslations("savings");
  const to = (number: number) => {
    const given = Object.entries({ ...query, page: String(number) }).flatMap(([name, value]) =>
      value === undefined ? [] : [[name, value]],
    );
    return `/savings?${new URLSearchParams(given)}`;
  };
  return (
    <p>
      {t("showing", { from: page.from, until: page.until, count: total })}{" "}
      {page.number > 1 ? <Link href={to(page.number - 1)}>{t("before")}</Link> : null}{" "}
      {page.number < page.of ? <Link href={to(page.number + 1)}>{t("next")}</Link> : null}
    </p>
  );
}
