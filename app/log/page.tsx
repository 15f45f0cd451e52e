import type { Metadata } from "next";
import Link from "next/link";
import { getLocale } from "next-intl/server";
import { offerFacts } from "../../lib/data/facts.ts";
import { exposure } from "../../lib/exposure/exposure.ts";
import { aisleFacts } from "../../lib/show/aisle-facts-of.ts";
import { newId } from "../_forms/new-id.ts";
import { EmptyState } from "../_ui/empty-state.tsx";
import { LinkButton } from "../_ui/link-button.tsx";
import { PageHead } from "../_ui/page-head.tsx";
import { asked, type Query } from "../_workspace/day-asked.ts";
import { scopeSeen, today } from "../_workspace/workspace-seen.ts";
import { keepPrice } from "./actions.ts";
import { AfterWrite } from "./after-write.tsx";
import { lastStore } from "./last-store.ts";
import { LogForm } from "./log-form.client.tsx";
import { logWords } from "./words.ts";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: logWords(await getLocale()).title };
}

/** Log: one price as it stands on the tag; after it is kept, what it means. */
export default async function LogPage({ searchParams }: Readonly<{ searchParams: Query }>) {
  const locale = await getLocale();
  const words = logWords(locale);
  const day = await today();
  const facts = await offerFacts(await scopeSeen(), day);
  const figures = exposure(day, facts);
  const aisle = aisleFacts(facts, figures);
  if (aisle.stores.length === 0 || aisle.materials.length === 0) {
    const lacks = aisle.stores.length === 0 ? "store" : "material";
    return (
      <>
        <PageHead title={words.title} />
        <EmptyState
          title={lacks === "store" ? words.noStores : words.noMaterials}
          action={
            <LinkButton kind="main" href={lacks === "store" ? "/settings/stores/new" : "/materials/new"}>
              {lacks === "store" ? words.addStore : words.addMaterial}
            </LinkButton>
          }
        >
          {lacks === "store" ? words.noStoresText : words.noMaterialsText}
        </EmptyState>
      </>
    );
  }
  const remembered = await lastStore();
  const startStore = aisle.stores.find((store) => store.id === remembered) ?? aisle.stores[0];
  const askedMaterial = await asked(searchParams, "material");
  return (
    <>
      <PageHead title={words.title} />
      <AfterWrite query={searchParams} facts={facts} exposure={figures} />
      <LogForm
        key={(await asked(searchParams, "seen")) ?? "form"}
        facts={aisle}
        action={keepPrice}
        id={newId()}
        locale={locale}
        startMaterial={
          aisle.materials.some((known) => known.id === askedMaterial) ? (askedMaterial ?? "") : ""
        }
        startStore={startStore?.id ?? ""}
      />
      <p>
        <Link href="/materials/new">{words.newMaterial}</Link>
      </p>
      <p>
        <Link href="/bills/new">{words.enterReceipt}</Link>
      </p>
    </>
  );
}
