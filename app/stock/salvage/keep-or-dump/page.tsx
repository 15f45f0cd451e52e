import type { Metadata } from "next";
import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { askingPrices } from "../../../../lib/data/asking-prices.ts";
import { materialFacts, offerFacts } from "../../../../lib/data/facts.ts";
import { faultsOf } from "../../../../lib/fault.ts";
import { goingPriceOn } from "../../../../lib/prices/going-price.ts";
import { choiceText } from "../../../../lib/show/choice-text.ts";
import { lotsOnDay } from "../../../../lib/show/lot-text.ts";
import { askingOn } from "../../../../lib/stock/asking-price.ts";
import { salvageChoiceEntry } from "../../../../lib/stock/salvage-choice-entry.ts";
import { faultWords } from "../../../_forms/fault-words.ts";
import { fieldNames } from "../../../_forms/field-names.ts";
import { Button } from "../../../_ui/button.client.tsx";
import { FRESH_FORM } from "../../../_ui/form-state.ts";
import { Caution } from "../../../_ui/notice.tsx";
import { PageHead } from "../../../_ui/page-head.tsx";
import { asked, type Query } from "../../../_workspace/day-asked.ts";
import { isId } from "../../../_workspace/id-asked.ts";
import { scopeSeen, today, workspaceSeen } from "../../../_workspace/workspace-seen.ts";
import { AskedForm } from "./asked-form.client.tsx";
import { ChoiceAnswer } from "./choice-answer.tsx";
import { ChoiceFields } from "./choice-fields.tsx";
import { CHOICE_FIELDS, type ChoiceTyped, choiceOfLot, typedChoice } from "./choice-typed.ts";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("salvage"))("choiceTitle") };
}

async function names() {
  const t = await getTranslations("salvage");
  return fieldNames({
    materialId: t("material"),
    quantity: t("choiceQuantity"),
    condition: t("conditionPercent"),
    hours: t("choiceHours"),
    hourlyRate: t("hourlyRate"),
    hauling: t("choiceHauling"),
    storage: t("choiceStorage"),
    fee: t("choiceFee"),
    least: t("choiceLeast"),
    loads: t("choiceLoads"),
    weight: t("choiceWeight"),
    haulingAway: t("choiceHaulingAway"),
    asking: t("choiceAsking"),
  });
}

/** What was asked: typed into the form, or begun from a lot (?lot=); null: nothing yet. */
async function askedOf(query: Query): Promise<ChoiceTyped | null> {
  const given = await Promise.all(
    CHOICE_FIELDS.map(async (name) => [name, await asked(query, name)] as const),
  );
  const typed: ChoiceTyped = Object.fromEntries(given.filter(([, text]) => text !== undefined));
  return Object.keys(typed).length === 0 ? null : typed;
}

/** Keeping, selling or dumping so much material, each line shown. */
export default async function KeepOrDumpPage({ searchParams }: Readonly<{ searchParams: Query }>) {
  const t = await getTranslations("salvage");
  const locale = await getLocale();
  const scope = await scopeSeen();
  const day = await today();
  const { homeCurrency } = await workspaceSeen();
  const typed = await askedOf(searchParams);
  const [facts, asking] = await Promise.all([offerFacts(scope, day), askingPrices(scope)]);
  const lotId = await asked(searchParams, "lot");
  const lot = lotsOnDay(day, facts).find((one) => one.lot.id === lotId);
  const price = lot === undefined ? null : (askingOn(asking, lot.lot.id, day)?.amount ?? null);
  const ofLot =
    lot === undefined
      ? {}
      : choiceOfLot(lot, price?.currency === homeCurrency ? price.amount.toFixed() : null);
  const read = typed === null ? null : salvageChoiceEntry.safeParse(typedChoice(typed, locale));
  const faults = read === null || read.success ? [] : await faultWords(faultsOf(read.error), await names());
  const id = read?.success ? read.data.materialId : undefined;
  const own = isId(id) ? await materialFacts(scope, id, day) : null;
  const material = own?.materials.get(id ?? "");
  const text =
    read?.success && own && material
      ? choiceText(
          read.data,
          material,
          goingPriceOn(day, own.observations, material, own.valuation),
          homeCurrency,
          locale,
        )
      : null;
  return (
    <>
      <PageHead
        title={t("choiceTitle")}
        up={<Link href="/stock/salvage">{t("up")}</Link>}
        answer={text === null ? t("choiceAsk") : t("choiceNote")}
      />
      {text === null ? null : <ChoiceAnswer text={text} currency={homeCurrency} />}
      <AskedForm state={{ ...FRESH_FORM, faults }} faultsTitle={t("faultsTitle")}>
        <ChoiceFields
          materials={[...facts.materials.values()].filter(({ archivedOn }) => archivedOn === null)}
          start={typed ?? ofLot}
          currency={homeCurrency}
        />
        <Button>{t("choiceShow")}</Button>
      </AskedForm>
      <Caution>{t("caution")}</Caution>
    </>
  );
}
