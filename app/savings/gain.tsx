import { getTranslations } from "next-intl/server";
import type { GainText } from "../../lib/show/savings-rows.ts";
import { Below, Figure, NotKnown } from "../_ui/money-text.tsx";

/** A saving or a loss, in the same size: its sign, its figure and the word for it. null: not known, and said so. inline: within a sentence. */
export async function Gain({ gain, inline = false }: Readonly<{ gain: GainText | null; inline?: boolean }>) {
  const t = await getTranslations("savings");
  if (gain === null) return <NotKnown>{t("notKnown")}</NotKnown>;
  if (inline)
    return (
      <>
        <Figure>{gain.figure}</Figure> {t(gain.side)}
      </>
    );
  return (
    <>
      {gain.figure}
      <Below>{t(gain.side)}</Below>
    </>
  );
}
