import type { Metadata } from "next";
import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { askingPrices } from "../../../lib/data/asking-prices.ts";
import { offerFacts } from "../../../lib/data/facts.ts";
import { materialOf } from "../../../lib/exposure/exposure-facts.ts";
import { goingPriceOn } from "../../../lib/prices/going-price.ts";
import { lotsOnDay, stockText } from "../../../lib/show/lot-text.ts";
import { saleRow, salvageRow } from "../../../lib/show/salvage-text.ts";
import { EmptyState } from "../../_ui/empty-state.tsx";
import { LinkButton } from "../../_ui/link-button.tsx";
import { Caution } from "../../_ui/notice.tsx";
import { PageHead, Part } from "../../_ui/page-head.tsx";
import { said } from "../../_ui/said.tsx";
import { namesOf } from "../../_workspace/names-of.ts";
import { scopeSeen, today } from "../../_workspace/workspace-seen.ts";
import { SaleTable } from "./sale-table.tsx";
import { SalvageTable } from "./salvage-table.tsx";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("salvage"))("title") };
}

/** Salvage: what is on hand and what new material in its place would be worth, and what is up for sale. */
export default async function SalvagePage() {
  const t = await getTranslations("salvage");
  const stock = await getTranslations("stock");
  const locale = await getLocale();
  const scope = await scopeSeen();
  const day = await today();
  const [facts, asked] = await Promise.all([offerFacts(scope, day), askingPrices(scope)]);
  const { valuation } = facts;
  const currency = valuation.homeCurrency;
  const lots = lotsOnDay(day, facts);
  const salvaged = lots.filter(({ lot, onHand }) => lot.origin === "salvaged" && !onHand.quantity.isZero());
  const total = stockText(salvaged, currency, locale);
  const rows = salvaged.map((one) => {
    const material = materialOf(facts, one.lot.materialId);
    return salvageRow(one, goingPriceOn(day, facts.observations, material, valuation), locale);
  });
  const named = new Set(asked.map(({ lotId }) => lotId));
  const sales = lots
    .filter(({ lot }) => named.has(lot.id))
    .map((one) => saleRow(one, asked, facts.events, day, locale))
    .filter((one) => one.asked !== null || one.sold !== null);
  const names = namesOf(facts);
  const countIn = (kind: "main" | "plain") => (
    <LinkButton kind={kind} href="/stock/salvage/new">
      {t("countIn")}
    </LinkButton>
  );
  return (
    <>
      <PageHead
        title={t("title")}
        up={<Link href="/stock">{stock("up")}</Link>}
        answer={
          rows.length === 0
            ? t("answerEmpty")
            : t.rich("answer", { lots: total.lots, cost: total.cost, currency, b: said })
        }
        aside={
          <>
            {rows.length === 0 ? null : countIn("plain")}
            <Link href="/stock/salvage/keep-or-dump">{t("choiceLink")}</Link>
          </>
        }
      />
      {rows.length === 0 ? (
        <EmptyState title={t("emptyTitle")} action={countIn("main")}>
          {t("emptyText")}
        </EmptyState>
      ) : (
        <Part title={t("onHand")} note={t("onHandNote", { currency })}>
          <SalvageTable rows={rows} names={names} currency={currency} />
          <Caution>{t("caution")}</Caution>
        </Part>
      )}
      <Part title={t("forSale")} note={sales.length === 0 ? t("forSaleNone") : t("forSaleNote")}>
        {sales.length === 0 ? null : <SaleTable rows={sales} names={names} />}
      </Part>
    </>
  );
}
