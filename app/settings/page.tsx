import type { Metadata } from "next";
import { getLocale, getTranslations } from "next-intl/server";
import { exchangeRates } from "../../lib/data/exchange-rates.ts";
import { storesOf } from "../../lib/data/stores.ts";
import { taxRegions } from "../../lib/data/tax-regions.ts";
import { percentText } from "../../lib/show/percent-text.ts";
import { Button } from "../_ui/button.client.tsx";
import { LinksList } from "../_ui/links-list.tsx";
import { PageHead, Part } from "../_ui/page-head.tsx";
import { beginDemoAnew, discardDemo, openDemo } from "../_workspace/actions.ts";
import { scopeSeen, workspaceSeen } from "../_workspace/workspace-seen.ts";
import { Done } from "./done.tsx";
import { peopleLink } from "./people/people-link.ts";
import { remindersToday } from "./reminders/reminders-today.ts";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("settings"))("title") };
}

/** Where everything that stands behind the figures is set. */
export default async function SettingsPage({ searchParams }: PageProps<"/settings">) {
  const t = await getTranslations("settings");
  const reminders = await getTranslations("reminders.settings");
  const locale = await getLocale();
  const { done } = await searchParams;
  const workspace = await workspaceSeen();
  const scope = await scopeSeen();
  const [stores, regions, rates] = await Promise.all([
    storesOf(scope),
    taxRegions(scope),
    exchangeRates(scope),
  ]);
  const region = regions.find((one) => one.code === workspace.taxRegion);
  const marked = regions.filter((one) => one.components.some((part) => part.fromMemory)).length;
  const moneyRate = workspace.moneyRates.at(-1);
  return (
    <>
      <Done code={done} />
      <PageHead
        title={t("title")}
        answer={t("answer", {
          currency: workspace.homeCurrency,
          region: region?.name ?? workspace.taxRegion,
        })}
      />
      <LinksList
        links={[
          {
            href: "/settings/workspace",
            title: t("workspace.title"),
            text: t("workspace.text", {
              name: workspace.name,
              moneyRate: moneyRate ? percentText(moneyRate.percent, locale) : t("workspace.noMoneyRate"),
              days: workspace.recheckDays,
            }),
          },
          {
            href: "/settings/stores",
            title: t("stores.title"),
            text: t("stores.text", { count: stores.length }),
          },
          {
            href: "/settings/taxes",
            title: t("taxes.title"),
            text: t("taxes.text", { count: regions.length, marked }),
          },
          {
            href: "/settings/rates",
            title: t("rates.title"),
            text: t("rates.text", { count: rates.length }),
          },
          {
            href: "/settings/indices",
            title: t("indices.title"),
            text: t("indices.text"),
          },
          {
            href: "/settings/reminders",
            title: reminders("title"),
            text: reminders("text", { count: await remindersToday() }),
          },
          ...(await peopleLink()),
          { href: "/settings/changes", title: t("changes.title"), text: t("changes.text") },
        ]}
      />
      <Part
        title={t("demo.title")}
        note={workspace.kind === "demo" ? `${t("demo.isDemo")} ${t("demo.discardText")}` : t("demo.text")}
      >
        {workspace.kind === "demo" ? (
          <>
            <form action={discardDemo}>
              <Button kind="plain">{t("demo.discard")}</Button>
            </form>
            <form action={beginDemoAnew}>
              <Button kind="quiet" pending={t("demo.opening")}>
                {t("demo.anew")}
              </Button>
            </form>
          </>
        ) : (
          <form action={openDemo}>
            <Button kind="plain" pending={t("demo.opening")}>
              {t("demo.open")}
            </Button>
          </form>
        )}
      </Part>
    </>
  );
}
