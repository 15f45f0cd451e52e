import type en from "./en.json";
import type { ScreenLocale } from "./locale.ts";

declare module "next-intl" {
  interface AppConfig {
    Locale: ScreenLocale;
    Messages: typeof en;
  }
}
