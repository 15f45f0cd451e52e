import { getTranslations } from "next-intl/server";
import type { FileFormProps } from "./file-form.client.tsx";

/** What a form with a file says. */
export async function fileFormWords(): Promise<FileFormProps["words"]> {
  const t = await getTranslations("settings.files");
  const ui = await getTranslations("ui");
  return {
    file: t("file"),
    fileHint: t("fileHint"),
    look: t("look"),
    take: t("take"),
    pending: t("pending"),
    report: t("report"),
    faultsTitle: ui("faultsTitle"),
    tooBig: t("tooBig"),
  };
}
