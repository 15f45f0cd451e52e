"use client";

import { type FormEvent, Suspense, useRef, useState } from "react";
import type { PurchaseUnit } from "../../lib/measure/units.ts";
import type { Terms } from "../../lib/prices/observation.ts";
import { openedMaterial } from "../../lib/show/aisle-opened.ts";
import { withPointMoved } from "../../lib/show/point-moved.ts";
import { usableUnits } from "../../lib/show/usable-units.ts";
import type { Row } from "../_offline/log-database.ts";
import { Button } from "../_ui/button.client.tsx";
import { FormContext } from "../_ui/form-context.client.tsx";
import { type FormFault, FRESH_FORM } from "../_ui/form-state.ts";
import { entryOfTyped, faultsOfTyped, type TypedPrice } from "./check-price.ts";
import { Doubt } from "./doubt.client.tsx";
import { faultTexts } from "./fault-texts.ts";
import { Faults } from "./faults.client.tsx";
import { keepPrice } from "./keep-price.ts";
import { later } from "./later.tsx";
import style from "./log.module.css";
import { MaterialField } from "./material-field.client.tsx";
import { MoreFields } from "./more-fields.client.tsx";
import { PriceFields } from "./price-fields.client.tsx";
import { lastShelfAt, ShelfQuestion } from "./shelf-question.client.tsx";
import { Tap } from "./tap.client.tsx";
import { typedPrice } from "./typed.ts";
import type { Aisle } from "./use-aisle.client.ts";
import { logWords } from "./words.ts";

// What a price means is worked out by a part that comes after the form: the form stands and keeps without it.
const Reading = later(async () => (await import("./reading.client.tsx")).Reading);

export type Remembered = Readonly<{
  storeId: string;
  tax: Readonly<Record<string, boolean>>;
  units: Readonly<Record<string, PurchaseUnit>>;
}>;

type PriceFormProps = Readonly<{
  aisle: Aisle;
  locale: string;
  materialId: string;
  storeId: string;
  habits: Remembered;
  onMaterial: (id: string) => void;
  onStore: (id: string) => void;
  onNewMaterial: (name: string) => void;
  onKept: (row: Row, habits: Partial<Remembered>) => void;
}>;

/** The aisle form: one price as it stands on the tag, what it comes to while it is typed, and the one button that keeps it. */
export function PriceForm(props: PriceFormProps) {
  const { aisle, locale, materialId, storeId, habits } = props;
  const { snapshot } = aisle;
  const words = logWords(locale);
  const form = useRef<HTMLFormElement>(null);
  const busy = useRef(false);
  const [typed, setTyped] = useState<TypedPrice | null>(null);
  const [terms, setTerms] = useState<Terms>("shelf");
  const [chosenUnit, setUnit] = useState<PurchaseUnit | null>(null);
  const [amount, setAmount] = useState("");
  const [faults, setFaults] = useState<readonly FormFault[]>([]);
  const [doubt, setDoubt] = useState<"tenth" | "tenfold" | null>(null);
  const [full, setFull] = useState(false);
  const plain = snapshot.materials.find(({ id }) => id === materialId);
  const store = snapshot.stores.find(({ id }) => id === storeId);
  const units = plain === undefined ? [] : usableUnits(openedMaterial(plain, snapshot).material);
  const unit = units.find((one) => one === (chosenUnit ?? habits.units[materialId])) ?? units[0] ?? "each";
  const chosen = {
    materialId: plain?.id,
    storeId: store?.id,
    unit,
    currency: store?.currency ?? snapshot.homeCurrency,
  };
  const read = () => (form.current ? typedPrice(new FormData(form.current), chosen, locale) : null);
  const clean = typed !== null && faultsOfTyped({ ...typed, ...chosen }, aisle.today).length === 0;
  const entry = clean ? entryOfTyped({ ...typed, ...chosen }, words.orderChargeName) : null;
  const shelf = terms === "shelf" || plain === undefined ? null : lastShelfAt(plain, storeId, aisle.since);

  const keep = async (now: TypedPrice | null, sure: boolean) => {
    setTyped(now);
    if (now === null || busy.current) return; // pressed twice, it is kept once
    busy.current = true;
    const still = form.current && new FormData(form.current).get("stillSo") === "yes" ? shelf : null;
    const became = await keepPrice({
      typed: now,
      sure,
      still,
      plain,
      aisle,
      chargeName: words.orderChargeName,
    });
    busy.current = became.is === "kept";
    setFaults(became.is === "faults" ? faultTexts(became.faults, words) : []);
    setDoubt(became.is === "doubt" ? became.off : null);
    setFull(became.is === "full");
    const habit = { storeId, tax: { [storeId]: now.taxIncluded }, units: { [materialId]: unit } };
    if (became.is === "kept") props.onKept(became.row, habit);
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    void keep(read(), false);
  };
  const again = (asTyped: boolean) => {
    const now = read();
    if (now?.amount === undefined || doubt === null) return;
    const meant = asTyped ? now.amount : withPointMoved(now.amount, doubt);
    setAmount(asTyped ? amount : meant);
    void keep({ ...now, amount: meant }, true);
  };
  const noneLeft = () => {
    const now = read();
    void keep(now && { ...now, terms: "none-left" }, true);
  };
  return (
    <FormContext value={{ id: "log", state: { ...FRESH_FORM, faults } }}>
      <form
        ref={form}
        className={style.form}
        noValidate
        onSubmit={submit}
        onInput={() => setTyped(read())}
        onChange={() => setTyped(read())}
      >
        <Faults faults={faults} title={full ? words.phoneFull : words.faults} full={full} />
        <MaterialField
          words={words}
          materials={snapshot.materials}
          chosen={plain ?? null}
          onChoice={(id) => {
            props.onMaterial(id);
            setUnit(null);
            setTimeout(() => document.getElementById("log-amount")?.focus());
          }}
          onNew={props.onNewMaterial}
        />
        <PriceFields
          words={words}
          locale={locale}
          materialId={materialId}
          storeId={storeId}
          stores={snapshot.stores.filter(({ archivedOn }) => archivedOn === null)}
          currency={aisle.known ? chosen.currency : ""}
          units={units.length > 0 ? units : ["each"]}
          unit={unit}
          amount={amount}
          taxHabit={habits.tax[storeId] ?? store?.pricesIncludeTax ?? false}
          terms={terms}
          onStore={props.onStore}
          onTerms={setTerms}
          onUnit={setUnit}
        />
        <ShelfQuestion shelf={shelf} locale={locale} words={words} />
        <MoreFields
          terms={terms}
          today={aisle.clockWrong ? "" : aisle.today}
          askDay={aisle.clockWrong}
          locale={locale}
          words={words}
        />
        <Suspense>
          {entry && plain && terms !== "none-left" ? (
            <Reading entry={entry} plain={plain} aisle={aisle} locale={locale} />
          ) : null}
        </Suspense>
        <Doubt doubt={doubt} amount={typed?.amount} words={words} locale={locale} onAnswer={again} />
        <div className={style.bar}>
          <Button wide>{terms === "none-left" ? words.keepNothing : words.keep}</Button>
          {plain && terms !== "none-left" ? <Tap onTap={noneLeft}>{words.noneLeft}</Tap> : null}
        </div>
      </form>
    </FormContext>
  );
}
