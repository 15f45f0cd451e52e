"use client";

import { type FormEvent, useRef, useState } from "react";
import { v7 } from "uuid";
import type { PurchaseUnit } from "../../lib/measure/units.ts";
import type { Terms } from "../../lib/prices/observation.ts";
import { tenfoldOff, withPointMoved } from "../../lib/show/aisle-doubt.ts";
import { openedMaterial } from "../../lib/show/aisle-opened.ts";
import { aisleVerdict } from "../../lib/show/aisle-verdict.ts";
import { usableUnits } from "../../lib/show/usable-units.ts";
import type { Row } from "../_offline/log-database.ts";
import { keepRows } from "../_offline/outbox.ts";
import { seenOfRow } from "../_offline/since.ts";
import { Button } from "../_ui/button.client.tsx";
import { FormContext } from "../_ui/form-context.client.tsx";
import { type FormFault, FRESH_FORM } from "../_ui/form-state.ts";
import { entryOfTyped, faultsOfTyped, type TypedPrice } from "./check-price.ts";
import { Doubt } from "./doubt.client.tsx";
import { faultTexts } from "./fault-texts.ts";
import { Faults } from "./faults.client.tsx";
import style from "./log.module.css";
import { MaterialField } from "./material-field.client.tsx";
import { MoreFields } from "./more-fields.client.tsx";
import { aisleNames } from "./names.ts";
import { PriceFields } from "./price-fields.client.tsx";
import { Reading } from "./reading.client.tsx";
import { rowOfPrice, stillSo } from "./rows-of-price.ts";
import { lastShelfAt, ShelfQuestion } from "./shelf-question.client.tsx";
import { Tap } from "./tap.client.tsx";
import { typedPrice } from "./typed.ts";
import type { Aisle } from "./use-aisle.client.ts";
import { logWords } from "./words.ts";

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
  const given = { newId: () => "typed", at: 0, workspaceId: "", restsOn: [] };
  const verdict =
    clean && plain && typed.terms !== "none-left"
      ? aisleVerdict(
          seenOfRow(rowOfPrice(entryOfTyped({ ...typed, ...chosen }, words.orderChargeName), given)),
          plain,
          snapshot,
          aisle.today,
          aisle.since,
        )
      : null;
  const shelf = terms === "shelf" || plain === undefined ? null : lastShelfAt(plain, storeId, aisle.since);

  const keep = async (now: TypedPrice, sure: boolean, still: boolean) => {
    const found = faultsOfTyped(now, aisle.today);
    setFaults(faultTexts(found, words));
    if (found.length > 0) return;
    const off = sure || now.terms === "none-left" || verdict === null ? null : tenfoldOff(verdict.logged);
    setDoubt(off);
    if (off !== null || busy.current) return;
    busy.current = true; // pressed twice, it is kept once
    const made = aisle.rows.outbox.filter(({ id }) => id === materialId || id === storeId);
    const workspaceId = snapshot.workspace.id;
    const row = { newId: v7, at: Date.now(), workspaceId, restsOn: made.map(({ id }) => id) };
    const entry = entryOfTyped(now, words.orderChargeName);
    const rows = [
      ...(still && shelf ? [rowOfPrice(stillSo(shelf, entry), row)] : []),
      rowOfPrice(entry, row),
    ];
    try {
      await keepRows(rows);
    } catch {
      busy.current = false;
      setFull(true);
      return;
    }
    const [last] = rows.slice(-1);
    const habit = { storeId, tax: { [storeId]: now.taxIncluded }, units: { [materialId]: unit } };
    if (last) props.onKept(last, habit);
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const now = read();
    setTyped(now);
    const still = form.current !== null && new FormData(form.current).get("stillSo") === "yes";
    if (now !== null) void keep(now, false, still);
  };
  const again = (sure: boolean) => {
    const now = read();
    if (now === null || now.amount === undefined || doubt === null) return;
    if (!sure) setAmount(withPointMoved(now.amount, doubt));
    setDoubt(null);
    void keep(sure ? now : { ...now, amount: withPointMoved(now.amount, doubt) }, true, false);
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
        {verdict && plain ? (
          <Reading
            verdict={verdict}
            names={aisleNames(snapshot)}
            unit={plain.unit}
            locale={locale}
            known={aisle.known}
          />
        ) : null}
        <Doubt doubt={doubt} amount={typed?.amount} words={words} locale={locale} onAnswer={again} />
        <div className={style.bar}>
          <Button wide>{terms === "none-left" ? words.keepNothing : words.keep}</Button>
          {plain && terms !== "none-left" ? (
            <Tap
              onTap={() => {
                const now = read();
                if (now) void keep({ ...now, terms: "none-left" }, true, false);
              }}
            >
              {words.noneLeft}
            </Tap>
          ) : null}
        </div>
      </form>
    </FormContext>
  );
}
