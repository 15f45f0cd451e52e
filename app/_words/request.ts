import { cookies, headers } from "next/headers";
import { getRequestConfig } from "next-intl/server";
import en from "./en.json";
import { LOCALE_COOKIE, localeOf } from "./locale.ts";

/** The words of a request. Days carry no zone here, so everything is formatted in UTC; an instant names its own. */
export default getRequestConfig(async () => {
  const locale = localeOf(
    (await cookies()).get(LOCALE_COOKIE)?.value,
    (await headers()).get("accept-language"),
  );
  return { locale, messages: en, timeZone: "UTC" };
});
