import { getLocale, getTranslations } from "next-intl/server";
import { isLocalDate, type LocalDate } from "../../../lib/calendar/local-date.ts";
import { basketFacts } from "../../../lib/data/basket-facts.ts";
import { projectBasket, usualBase } from "../../../lib/exposure/basket.ts";
import { basketDrawing } from "../../../lib/show/basket-drawing.ts";
import { basketText } from "../../../lib/show/basket-text.ts";
import { Notice } from "../../_ui/notice.tsx";
import { KeyFigures, Part } from "../../_ui/page-head.tsx";
import { said } from "../../_ui/said.tsx";
import { asked, type Query } from "../../_workspace/day-asked.ts";
import { namesOf } from "../../_workspace/names-of.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";
import { BasketBase } from "./basket-base.tsx";
import { BasketDays } from "./basket-days.tsx";
import { BasketLine } from "./basket-line.tsx";
import { BasketParts } from "./basket-parts.tsx";

type BasketProps = Readonly<{ projectId: string; day: LocalDate; today: LocalDate; query: Query }>;

/** What the project requires, at the going prices of a day against those of a base day (?base=): the index, its parts, its way. */
export async function Basket({ projectId, day, today, query }: BasketProps) {
  const facts = await basketFacts(await scopeSeen(), projectId, day);
  const project = facts?.projects[0];
  if (facts === null || project === undefined) return null;
  const chosen = await asked(query, "base");
  const good = isLocalDate(chosen) && chosen < day;
  const base = good ? chosen : usualBase(project, day);
  const basket = projectBasket(projectId, day, base, facts);
  if (basket === null) return null;
  const t = await getTranslations("basket");
  const locale = await getLocale();
  const currency = facts.valuation.homeCurrency;
  const { now, coverage, days, ...text } = basketText(basket, currency, locale);
  const names = namesOf(facts);
  const line = basketDrawing(basket, locale);
  return (
    <Part id="basket" title={t("title")} note={t("note", { base: text.base, currency })}>
      {chosen === undefined || good ? null : (
        <Notice tone="warn" live>
          <p>{t("badBase", { base: text.base })}</p>
        </Notice>
      )}
      <p>
        {now === null
          ? t("notKnown", { base: text.base, day: text.day })
          : t.rich("answer", {
              ...text,
              level: now.level,
              way: now.way,
              before: now.before,
              now: now.now,
              currency,
              b: said,
            })}
      </p>
      {coverage.whole ? null : (
        <Notice tone="warn">
          {now === null ? null : (
            <p>
              {t("part", {
                known: coverage.known,
                of: coverage.of,
                share: coverage.share ?? t("shareNotKnown"),
              })}
            </p>
          )}
          <ul>
            {coverage.missing.map(({ materialId, missing }) => (
              <li key={materialId}>
                {names.material(materialId)}: {t(`missing.${missing}`)}
              </li>
            ))}
          </ul>
        </Notice>
      )}
      {now === null ? null : (
        <KeyFigures
          figures={[
            { key: "level", label: t("level"), value: now.level, note: t("levelNote", { base: text.base }) },
            { key: "points", label: t("points"), value: now.points, note: t("pointsNote") },
            { key: "percent", label: t("percent"), value: now.percent, note: t("percentNote") },
          ]}
        />
      )}
      <BasketBase projectId={projectId} base={base} day={day} asOf={day === today ? null : day} />
      {line === null ? null : <BasketLine line={line} label={t("lineLabel", text)} note={t("lineNote")} />}
      {now === null ? null : <BasketParts now={now} facts={facts} names={names} currency={currency} />}
      <BasketDays days={days} />
    </Part>
  );
}
