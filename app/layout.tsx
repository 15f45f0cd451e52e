import type { Metadata, Viewport } from "next";
import { getLocale, getTranslations } from "next-intl/server";
import type { ReactNode } from "react";
import "./tokens.css";
import { Shell } from "./_shell/shell.tsx";
import { figures, head, text } from "./fonts.ts";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("shell");
  return { title: { default: t("name"), template: `%s · ${t("name")}` }, description: t("tagline") };
}

export const viewport: Viewport = {
  width: "device-width",
  initialScale: 1,
  viewportFit: "cover",
  themeColor: [
    { media: "(prefers-color-scheme: light)", color: "#FFFFFF" },
    { media: "(prefers-color-scheme: dark)", color: "#1B232C" },
  ],
};

/** The frame of every screen. */
export default async function RootLayout({ children }: Readonly<{ children: ReactNode }>) {
  return (
    <html lang={await getLocale()} className={`${head.variable} ${text.variable} ${figures.variable}`}>
      <body>
        <Shell>{children}</Shell>
      </body>
    </html>
  );
}
