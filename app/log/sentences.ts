import { dayText } from "../../lib/show/day-text.ts";
import type { LoggedPriceText } from "../../lib/show/logged-price-text.ts";
import { type LogWords, unitWord } from "./words.ts";

type NamesHere = Readonly<{ store: (id: string) => string; project: (id: string) => string }>;

function lowestSentence(lowest: LoggedPriceText["lowest"], words: LogWords): string | null {
  if (lowest === null) return null;
  if (lowest.kind === "first") return words.firstSighting;
  return lowest.kind === "ever"
    ? words.lowestEver(lowest.sightings, lowest.months)
    : words.lowestIn(lowest.months);
}

function bestSentence(best: LoggedPriceText["best"], names: NamesHere, words: LogWords): string | null {
  if (best === null) return null;
  const say = { under: words.underBest, over: words.overBest, same: words.sameBest }[best.side];
  return say(best.by, best.storeId === null ? words.severalStores : names.store(best.storeId));
}

function goingSentence(going: LoggedPriceText["going"], words: LogWords): string | null {
  if (going === null) return null;
  if (going.side === "same") return words.atGoing;
  return (going.side === "under" ? words.underGoing : words.overGoing)(going.by, going.stores);
}

function paidSentence(
  paid: LoggedPriceText["paid"],
  names: NamesHere,
  locale: string,
  words: LogWords,
): string | null {
  if (paid === null) return null;
  const projects = paid.projectIds.map(names.project).join(", ");
  const what = words.paidWhat(paid.other, dayText(paid.on, locale), projects);
  const say = { under: words.paidUnder, over: words.paidOver, same: words.paidSame }[paid.side];
  return say(paid.by, what);
}

function coverSentences(text: LoggedPriceText, currency: string, words: LogWords): (string | null)[] {
  const { covers, total, unit } = text;
  if (covers === null || unit === null) return [];
  const named = unitWord(unit, covers.exact);
  return [
    covers.all
      ? words.covers(covers.quantity, named)
      : words.coversPart(covers.quantity, covers.open, unitWord(unit, "2")),
    total === null
      ? null
      : { under: words.allUnder, over: words.allOver, same: words.allSame }[total.side](
          covers.quantity,
          total.by,
          currency,
        ),
  ];
}

/** Everything that can be said about a logged price, a sentence each, the most useful first. */
export function sentencesOf(
  text: LoggedPriceText,
  names: NamesHere,
  currency: string,
  locale: string,
  words: LogWords,
): string[] {
  return [
    text.leftOut === null ? null : words.noOffer[text.leftOut],
    text.beforeImportCharges && text.leftOut === null ? words.importCharges : null,
    lowestSentence(text.lowest, words),
    ...coverSentences(text, currency, words),
    bestSentence(text.best, names, words),
    goingSentence(text.going, words),
    paidSentence(text.paid, names, locale, words),
  ].filter((sentence) => sentence !== null);
}
