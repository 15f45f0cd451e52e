import { useTranslations } from "next-intl";
import { UndoBar, type UndoBarProps } from "../_ui/undo-bar.tsx";
import type en from "../_words/en.json";

type DoneCode = keyof typeof en.materials.done;

/** What the last form did, from the address (`?done=`); an unknown word says nothing. */
export function Done({ code, undo }: Readonly<{ code: unknown; undo?: UndoBarProps["undo"] }>) {
  const t = useTranslations("materials.done");
  if (typeof code !== "string" || !t.has(code as DoneCode)) return null;
  return <UndoBar undo={undo}>{t(code as DoneCode)}</UndoBar>;
}
