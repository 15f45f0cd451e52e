import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { ChoiceField } from "../../_ui/choice-field.client.tsx";
import { Part } from "../../_ui/page-head.tsx";
import { unitWords } from "../../_words/unit-words.ts";
import { QuantityField } from "../quantity-field.tsx";
import { WhenFields } from "../when-fields.tsx";
import { EventForm } from "./event-form.tsx";
import type { LotContext } from "./lot-context.ts";

/** Moving some of a lot to another place, or to the site, and what that cost. Nothing while nothing of it has come in. */
export async function MoveForm({ lot, more, places, valuation, day }: LotContext) {
  const t = await getTranslations("lotLife");
  const units = await unitWords();
  const [first] = more.lying;
  if (first === undefined) return null;
  const from = more.lying.map(({ placeId, quantity }) => ({
    value: placeId ?? "",
    label: `${placeId === null ? t("notPutAway") : places.name(placeId)}: ${quantity}`,
  }));
  const elsewhere = places.live.filter(({ value }) => value !== first.placeId);
  const onSite = first.placeId === null ? [] : [{ value: "", label: t("move.site") }];
  const to = [...elsewhere, ...onSite];
  const currency = valuation.homeCurrency;
  return (
    <Part title={t("move.title")}>
      {to.length === 0 ? (
        <p>
          {t("move.noPlaces")} <Link href="/stock/places/new">{t("move.addPlace")}</Link>
        </p>
      ) : (
        <EventForm lotId={lot.lot.id} kind="moved" button={t("move.button")}>
          <QuantityField label={t("move.many")} start={first.exact} beside={units.of(lot.unit, "2")} />
          {from.length > 1 ? (
            <ChoiceField
              name="fromPlaceId"
              label={t("move.from")}
              choices={from}
              start={from[0]?.value ?? ""}
            />
          ) : (
            <input type="hidden" name="fromPlaceId" value={first.placeId ?? ""} />
          )}
          <ChoiceField
            name="placeId"
            label={t("move.to")}
            choices={from.length > 1 ? [...places.live, { value: "", label: t("move.site") }] : to}
            start={to[0]?.value ?? ""}
          />
          <WhenFields day={day}>
            <input type="hidden" name="currency" value={currency} />
            <QuantityField name="amount" label={t("moveCost")} hint={t("moveCostHint")} beside={currency} />
          </WhenFields>
        </EventForm>
      )}
    </Part>
  );
}
