/** The languages the screens have words for. A regional form decides figures and dates only. */
export const LOCALES = ["en-CA"] as const;
export type ScreenLocale = (typeof LOCALES)[number];
export const LOCALE_COOKIE = "dunnage-language";

/** The locale for a wish such as "fr" or "en-GB": the same, else the same language, else none. */
function nearest(wish: string, available: readonly ScreenLocale[]): ScreenLocale | null {
  const wanted = wish.trim().toLowerCase();
  const language = wanted.split("-")[0];
  return (
    available.find((locale) => locale.toLowerCase() === wanted) ??
    available.find((locale) => locale.toLowerCase().split("-")[0] === language) ??
    null
  );
}

/** The wishes of an Accept-Language header, most wanted first (RFC 9110, 12.5.4). */
function wishes(header: string): string[] {
  return header
    .split(",")
    .map((part) => {
      const [tag = "", ...rest] = part.split(";");
      const quality = rest.map((text) => text.trim()).find((text) => text.startsWith("q="));
      return { tag: tag.trim(), quality: quality === undefined ? 1 : Number(quality.slice(2)) || 0 };
    })
    .filter((wish) => wish.tag !== "" && wish.quality > 0)
    .sort((a, b) => b.quality - a.quality)
    .map((wish) => wish.tag);
}

/** The language of a request: the cookie, then Accept-Language, then the first we have. */
export function localeOf(
  cookie: string | undefined,
  acceptLanguage: string | null,
  available: readonly ScreenLocale[] = LOCALES,
): ScreenLocale {
  for (const wish of [cookie ?? "", ...wishes(acceptLanguage ?? "")]) {
    const found = nearest(wish, available);
    if (found !== null) return found;
  }
  return available[0] ?? "en-CA";
}
