import { getLocale, getTranslations } from "next-intl/server";
import type { Material } from "../../../lib/materials/material.ts";
import { IDENTITY_NAMES } from "../../../lib/show/identity-fields.ts";
import { measuresOfOne, sizeRows } from "../../../lib/show/measures-of-one.ts";
import { Part } from "../../_ui/page-head.tsx";
import { unitWords } from "../../_words/unit-words.ts";
import { identityWords } from "../identity-words.ts";
import style from "../materials.module.css";

/** What the material is: kind, sizes, what one of it comes to in other measures, and what else was noted. */
export async function Sizes({
  material,
  recheckDays,
}: Readonly<{ material: Material; recheckDays: number }>) {
  const t = await getTranslations("materials");
  const c = await getTranslations("categories");
  const locale = await getLocale();
  const units = await unitWords();
  const said = await identityWords();
  const measures = measuresOfOne(material, locale).map(
    ({ unit, text, exact }) => `${text} ${units.of(unit, exact)}`,
  );
  const rows: readonly Readonly<{ key: string; name: string; text: string; source?: string | null }>[] = [
    { key: "category", name: t("form.category"), text: c(material.category) },
    { key: "unit", name: t("form.purchaseUnit"), text: units.one(material.purchaseUnit) },
    ...IDENTITY_NAMES.flatMap((name) => {
      const value = material.identity[name];
      return value === undefined
        ? []
        : [{ key: name, name: t(`form.identity.${name}`), text: said(name, value) }];
    }),
    ...sizeRows(material, locale).map(({ name, text, unit, source }) => ({
      key: name,
      name: t(`form.size.${name}`),
      text: `${text} ${units.short(unit)}`,
      source,
    })),
    ...(measures.length > 0
      ? [
          {
            key: "measures",
            name: t("page.oneIs", { unit: units.one(material.purchaseUnit) }),
            text: measures.join(" · "),
          },
        ]
      : []),
    ...(material.shelfLifeDays === null
      ? []
      : [
          {
            key: "keeps",
            name: t("form.shelfLifeDays"),
            text: String(material.shelfLifeDays),
            source: material.sources.shelfLifeDays ?? null,
          },
        ]),
    { key: "recheck", name: t("form.recheckDays"), text: String(material.recheckDays ?? recheckDays) },
    ...(material.exemptFrom.length > 0
      ? [{ key: "exempt", name: t("form.exemptFrom"), text: material.exemptFrom.join(", ") }]
      : []),
    ...(material.note === null ? [] : [{ key: "note", name: t("form.note"), text: material.note }]),
  ];
  return (
    <Part title={t("page.sizes")}>
      <dl className={style.facts}>
        {rows.map((row) => (
          <div key={row.key}>
            <dt>{row.name}</dt>
            <dd>
              {row.text}
              {row.source ? (
                <span className={style.quiet}> · {t("form.source", { source: row.source })}</span>
              ) : null}
            </dd>
          </div>
        ))}
      </dl>
    </Part>
  );
}
