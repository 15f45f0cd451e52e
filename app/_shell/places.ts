/** The screens in the navigation. `bar`: has its own place in the phone's bottom bar; the others stand behind "More". */
export type Place = Readonly<{ href: string; label: string; bar: boolean; main: boolean }>;

const PLACES = [
  { key: "today", href: "/", bar: true },
  { key: "projects", href: "/projects", bar: true },
  { key: "log", href: "/log", bar: true },
  { key: "stock", href: "/stock", bar: true },
  { key: "materials", href: "/materials", bar: false },
  { key: "savings", href: "/savings", bar: false },
  { key: "settings", href: "/settings", bar: false },
] as const;
type PlaceKey = (typeof PLACES)[number]["key"];

/** The screens with their names in the language of the request. */
export function placesOf(word: (key: PlaceKey) => string): Place[] {
  return PLACES.map(({ key, href, bar }) => ({ href, bar, main: key === "log", label: word(key) }));
}
