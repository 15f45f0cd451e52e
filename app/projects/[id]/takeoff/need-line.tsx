import { getLocale, getTranslations } from "next-intl/server";
import type { UnitSystem } from "../../../../lib/measure/unit-system.ts";
import { isCounted, type Quantity, UNITS } from "../../../../lib/measure/units.ts";
import { cutText } from "../../../../lib/show/cut-text.ts";
import type { LineBought } from "../../../../lib/show/lines-bought.ts";
import { quantityText } from "../../../../lib/show/money-text.ts";
import { wasteAllowancesFor } from "../../../../lib/takeoff/waste-allowances.ts";
import { newId } from "../../../_forms/new-id.ts";
import { AmountField } from "../../../_ui/amount-field.client.tsx";
import { ChoiceField } from "../../../_ui/choice-field.client.tsx";
import { RowFields } from "../../../_ui/rows.tsx";
import { amountWords } from "../../../_words/amount-words.ts";
import { type UnitWords, unitWords } from "../../../_words/unit-words.ts";
import type { NeedBefore } from "./asked-takeoff.ts";
import style from "./takeoff.module.css";
import { YieldField } from "./yield-field.client.tsx";

type NeedLineProps = Readonly<{
  bought: LineBought;
  at: number;
  before: NeedBefore | null;
  holds: Quantity | null;
  system: UnitSystem;
}>;

/** The usual waste of a line, where a source was read. */
async function wasteHint({ line }: LineBought): Promise<string | undefined> {
  const t = await getTranslations("takeoff");
  const [usual] = wasteAllowancesFor(line.name);
  if (usual === undefined) return undefined;
  const [least, most] = [usual.least.toFixed(), usual.most.toFixed()];
  return least === most ? t("wasteUsualOne", { least }) : t("wasteUsual", { least, most });
}

const plain = ({ value, unit }: Quantity) => ({ value: value.toFixed(), unit });

/** As it would be typed: "0.6 cu ft". */
function heldText({ value, unit }: Quantity, units: UnitWords): string {
  return `${value.toFixed()} ${units.short(unit)}`;
}

function lineUnit({ value, unit }: Quantity, units: UnitWords): string {
  return isCounted(unit) ? units.of(unit, value.toFixed()) : units.short(unit);
}

/** An example in the measure of the line. */
async function yieldHint({ line }: LineBought): Promise<string> {
  const t = await getTranslations("takeoff.holdsHint");
  const { dimension } = UNITS[line.quantity.unit];
  if (line.cut !== null || dimension === "length") return t("length");
  return dimension === "area" || dimension === "volume" ? t(dimension) : t("count");
}

/** One line of a takeoff: what it is bought as, with free stock named, and the waste. */
export async function NeedLine({ bought, at, before, holds, system }: NeedLineProps) {
  const t = await getTranslations("takeoff");
  const locale = await getLocale();
  const units = await unitWords();
  const { line } = bought;
  const name = `needs.${at}`;
  const label = t("line", {
    what: line.label ?? t(`lines.${line.name}`),
    quantity: quantityText(line.quantity.value, locale),
    unit: lineUnit(line.quantity, units),
    cut: line.cut === null ? "none" : cutText(line.cut, system),
  });
  const fits = bought.as.filter(({ materialId }) => before === null || before.materialId === materialId);
  const choices = fits.map(({ materialId, name: material, quantity, exact, unit, free }) => ({
    value: materialId,
    label:
      quantity === null
        ? t("choiceByYield", { name: material, unit: units.one(unit), free: free ?? "none" })
        : t("choice", { name: material, quantity, unit: units.of(unit, exact), free: free ?? "none" }),
  }));
  const asked = fits.find(({ asksYield }) => asksYield);
  return (
    <div className={style.line}>
      <strong>{label}</strong>
      <input type="hidden" name={`${name}.line`} value={line.key} />
      <input type="hidden" name={`${name}.id`} value={newId()} />
      {choices.length === 0 ? (
        <p>{t("nothingFits")}</p>
      ) : (
        <RowFields label={label}>
          <ChoiceField
            name={`${name}.materialId`}
            label={t("material")}
            choices={[{ value: "", label: t("notBought") }, ...choices]}
            start={before === null || before.closed ? "" : before.materialId}
          />
          {asked === undefined ? null : (
            <YieldField
              name={`${name}.holds`}
              start={holds === null ? "" : heldText(holds, units)}
              line={{ quantity: plain(line.quantity), cut: line.cut && plain(line.cut) }}
              words={{ label: t("holds"), hint: await yieldHint(bought), comesTo: t("holdsComesTo") }}
              locale={locale}
            />
          )}
          <AmountField
            name={`${name}.wastePercent`}
            label={t("waste")}
            hint={await wasteHint(bought)}
            start={before?.wastePercent ?? ""}
            locale={locale}
            words={await amountWords()}
          />
        </RowFields>
      )}
    </div>
  );
}
