import type { Metadata } from "next";
import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { valuationOf } from "../../../lib/data/facts.ts";
import { storesOf } from "../../../lib/data/stores.ts";
import { isForeign } from "../../../lib/prices/foreign-store.ts";
import type { Store } from "../../../lib/prices/store.ts";
import { dayText } from "../../../lib/show/day-text.ts";
import { plainMoney } from "../../../lib/show/money-text.ts";
import { EmptyState } from "../../_ui/empty-state.tsx";
import { LinkButton } from "../../_ui/link-button.tsx";
import { MoneyText } from "../../_ui/money-text.tsx";
import { PageHead, Part } from "../../_ui/page-head.tsx";
import { Table } from "../../_ui/table.tsx";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";
import { Done } from "../done.tsx";
import { restoreStoreForm } from "./actions.ts";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("settings.stores"))("title") };
}

/** The stores: where prices are seen, with what their tags mean. */
export default async function StoresPage({ searchParams }: PageProps<"/settings/stores">) {
  const t = await getTranslations("settings.stores");
  const s = await getTranslations("settings");
  const ui = await getTranslations("ui");
  const locale = await getLocale();
  const { done, undo } = await searchParams;
  const scope = await scopeSeen();
  const [stores, archived, valuation] = await Promise.all([
    storesOf(scope),
    storesOf(scope, { archived: true }),
    valuationOf(scope),
  ]);
  const border = (store: Store) => {
    if (!isForeign(store, valuation)) return t("sameCountry");
    if (store.importCharges === null) return t("borderUnconfirmed");
    return store.importCharges.length === 0
      ? t("borderNone")
      : t("borderCharges", { count: store.importCharges.length });
  };
  const undoes = done === "store-archived" && typeof undo === "string";
  return (
    <>
      <Done
        code={done}
        undo={undoes ? { action: restoreStoreForm, fields: { id: undo }, label: ui("undo") } : undefined}
      />
      <PageHead
        title={t("title")}
        answer={t("answer", { count: stores.length })}
        up={<Link href="/settings">{s("back")}</Link>}
        aside={stores.length > 0 ? <LinkButton href="/settings/stores/new">{t("add")}</LinkButton> : null}
      />
      {stores.length === 0 ? (
        <EmptyState
          title={t("emptyTitle")}
          action={
            <LinkButton kind="main" href="/settings/stores/new">
              {t("add")}
            </LinkButton>
          }
        >
          {t("emptyText")}
        </EmptyState>
      ) : (
        <Table
          caption={t("title")}
          captionHidden
          cards
          least="44rem"
          columns={[
            { key: "name", label: t("name") },
            { key: "region", label: t("taxRegion") },
            { key: "currency", label: t("currency") },
            { key: "tax", label: t("includesTax") },
            { key: "trip", label: t("tripCost"), figures: true },
            { key: "border", label: t("border") },
          ]}
          rows={stores.map((store) => ({
            key: store.id,
            cells: [
              <Link key="name" href={`/settings/stores/${store.id}`}>
                {store.name}
              </Link>,
              valuation.regions.get(store.taxRegion)?.name ?? store.taxRegion,
              store.currency,
              store.pricesIncludeTax ? s("yes") : s("no"),
              store.tripCost === null ? (
                ui("notKnown")
              ) : (
                <MoneyText key="trip" value={plainMoney(store.tripCost)} code />
              ),
              border(store),
            ],
          }))}
        />
      )}
      {archived.length > 0 ? (
        <Part title={t("archivedTitle")}>
          <Table
            caption={t("archivedTitle")}
            captionHidden
            least="20rem"
            columns={[
              { key: "name", label: t("name") },
              { key: "day", label: "" },
            ]}
            rows={archived.map((store) => ({
              key: store.id,
              cells: [
                <Link key="name" href={`/settings/stores/${store.id}`}>
                  {store.name}
                </Link>,
                store.archivedOn === null ? "" : s("archivedOn", { day: dayText(store.archivedOn, locale) }),
              ],
            }))}
          />
        </Part>
      ) : null}
    </>
  );
}
