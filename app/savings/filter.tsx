import Link from "next/link";
import { getTranslations } from "next-intl/server";
import type { LocalDate } from "../../lib/calendar/local-date.ts";
import type { SavingsFacts } from "../../lib/savings/savings.ts";
import { currenciesSeen } from "../../lib/show/currencies-seen.ts";
import type { SavingsAsked } from "../../lib/show/savings-asked.ts";
import { Button } from "../_ui/button.client.tsx";
import { type Choice, Options } from "../_ui/choice-field.client.tsx";
import fields from "../_ui/field.module.css";
import style from "../_ui/find-form.module.css";

type FilterProps = Readonly<{
  asked: SavingsAsked;
  day: LocalDate;
  today: LocalDate;
  facts: SavingsFacts;
  path?: string;
}>;

function named(things: Iterable<Readonly<{ id: string; name: string }>>): Choice[] {
  return [...things]
    .map(({ id, name }) => ({ value: id, label: name }))
    .sort((a, b) => a.label.localeCompare(b.label));
}

/** Which rows: a period, a project, a material, a currency, a day to read them on. A plain GET form: the address can be kept and printed. */
export async function Filter({ asked, day, today, facts, path = "/savings" }: FilterProps) {
  const t = await getTranslations("savings");
  const r = await getTranslations("savingsReport");
  const served = new Set(facts.requirements.map(({ projectId }) => projectId));
  const held = new Set(facts.lots.map(({ materialId }) => materialId));
  const projects = named(facts.projects.filter(({ id }) => served.has(id)));
  const materials = named([...facts.materials.values()].filter(({ id }) => held.has(id)));
  const currencies = currenciesSeen(facts).map((code) => ({ value: code, label: code }));
  const date = (name: string, label: string, value: string) => (
    <label className={style.field}>
      <span>{label}</span>
      <input type="date" name={name} defaultValue={value} max={today} className={fields.input} />
    </label>
  );
  const choice = (name: string, label: string, value: string | null, choices: readonly Choice[]) => (
    <label className={style.field}>
      <span>{label}</span>
      <select name={name} defaultValue={value ?? ""} className={fields.input}>
        <Options choices={choices} />
      </select>
    </label>
  );
  const { view, ...narrowing } = asked;
  const narrowed = Object.values(narrowing).some((value) => value !== null) || day !== today;
  return (
    <search>
      <form action={path} method="get" className={style.form}>
        {view === "project" ? null : <input type="hidden" name="by" value={view} />}
        {choice("project", t("project"), asked.projectId, [
          { value: "", label: t("anyProject") },
          ...projects,
        ])}
        {choice("material", t("material"), asked.materialId, [
          { value: "", label: t("anyMaterial") },
          ...materials,
        ])}
        {date("from", t("from"), asked.from ?? "")}
        {date("until", t("until"), asked.until ?? "")}
        {date("asOf", t("asOf"), day)}
        {currencies.length > 1 || asked.currency !== null
          ? choice("currency", r("currency"), asked.currency ?? facts.valuation.homeCurrency, currencies)
          : null}
        <Button kind="plain">{t("show")}</Button>
        {narrowed ? (
          <Link href={path} className={style.clear}>
            {t("clear")}
          </Link>
        ) : null}
      </form>
    </search>
  );
}
