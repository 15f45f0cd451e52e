import { getTranslations } from "next-intl/server";
import type { LyingText } from "../../lib/show/place-text.ts";

type LiesWhereProps = Readonly<{
  lying: readonly LyingText[];
  placeName: (id: string) => string;
  /** The place the lot was said to go to: named while nothing of it has come in. */
  said: string | null;
}>;

/** Where a lot lies: the place, or so many in each of several. */
export async function LiesWhere({ lying, placeName, said }: LiesWhereProps) {
  const t = await getTranslations("lotLife");
  const stock = await getTranslations("stock");
  const name = (placeId: string | null) => (placeId === null ? t("notPutAway") : placeName(placeId));
  const [only] = lying;
  if (only === undefined) return said ?? stock("nowhere");
  if (lying.length === 1) return name(only.placeId);
  return lying.map(({ placeId, quantity }) => `${name(placeId)}: ${quantity}`).join("; ");
}
