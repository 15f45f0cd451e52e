import type { Metadata } from "next";
import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { bills } from "../../lib/data/bills.ts";
import { storesOf } from "../../lib/data/stores.ts";
import { billText } from "../../lib/show/bill-text.ts";
import { dayText } from "../../lib/show/day-text.ts";
import { EmptyState } from "../_ui/empty-state.tsx";
import { LinkButton } from "../_ui/link-button.tsx";
import { Figure, NotKnown } from "../_ui/money-text.tsx";
import { PageHead } from "../_ui/page-head.tsx";
import { Table } from "../_ui/table.tsx";
import { asked, type Query } from "../_workspace/day-asked.ts";
import { scopeSeen } from "../_workspace/workspace-seen.ts";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("bills"))("title") };
}

const UUID = /^[0-9a-f-]{36}$/i;

/** Receipts and quotes, the newest day first, each with its total and whether it comes to the printed one. */
export default async function BillsPage({ searchParams }: Readonly<{ searchParams: Query }>) {
  const t = await getTranslations("bills");
  const locale = await getLocale();
  const scope = await scopeSeen();
  const after = (await asked(searchParams, "after")) ?? "";
  const page = await bills(scope, { limit: 50, cursor: UUID.test(after) ? after : null });
  const sellers = [...(await storesOf(scope)), ...(await storesOf(scope, { archived: true }))];
  const stores = new Map(sellers.map((store) => [store.id, store.name]));
  const enter = (kind: "main" | "plain") => (
    <LinkButton kind={kind} href="/bills/new">
      {t("enter")}
    </LinkButton>
  );
  if (page.items.length === 0)
    return (
      <>
        <PageHead title={t("title")} up={<Link href="/stock">{t("stock")}</Link>} />
        <EmptyState title={t("emptyTitle")} action={enter("main")}>
          {t("emptyText")}
        </EmptyState>
      </>
    );
  const rows = page.items.map((bill) => {
    const text = bill.terms === null ? null : billText(bill, bill.terms, locale);
    return {
      key: bill.id,
      cells: [
        <Link key="bill" href={`/bills/${bill.id}`}>
          {dayText(bill.on, locale)}, {stores.get(bill.storeId) ?? "–"}
        </Link>,
        t(bill.kind),
        text === null ? (
          <NotKnown key="total">{t("totalNotKnown")}</NotKnown>
        ) : (
          <Figure key="total">
            {text.total} {text.currency}
          </Figure>
        ),
        text === null ? "" : t(`states.${text.reconciled.state}`),
      ],
    };
  });
  return (
    <>
      <PageHead title={t("title")} up={<Link href="/stock">{t("stock")}</Link>} aside={enter("plain")} />
      <Table
        caption={t("title")}
        captionHidden
        cards
        columns={[
          { key: "bill", label: t("bill") },
          { key: "kind", label: t("kind") },
          { key: "total", label: t("total"), figures: true },
          { key: "state", label: t("state") },
        ]}
        rows={rows}
      />
      {page.next === null ? null : <Link href={`/bills?after=${page.next}`}>{t("older")}</Link>}
    </>
  );
}
