import Link from "next/link";
import { getTranslations } from "next-intl/server";
import type { WasteRowText } from "../../../../lib/show/waste-text.ts";
import { Button } from "../../../_ui/button.client.tsx";
import { Below, NotKnown } from "../../../_ui/money-text.tsx";
import { Table } from "../../../_ui/table.tsx";
import { undoWaste } from "./actions.ts";

type Props = Readonly<{ rows: readonly WasteRowText[]; projectId: string; currency: string }>;

/** What was gotten rid of, what it weighed and by which source, what it cost; each to be corrected or taken back. */
export async function WasteTable({ rows, projectId, currency }: Props) {
  const t = await getTranslations("waste");
  return (
    <Table
      caption={t("title")}
      captionHidden
      cards
      least="38rem"
      columns={[
        { key: "kind", label: t("kind") },
        { key: "day", label: t("day"), figures: true },
        { key: "weighs", label: t("weighs"), figures: true },
        { key: "cost", label: t("cost", { currency }), figures: true },
        { key: "undo", label: t("undo"), quiet: true, figures: true },
      ]}
      rows={rows.map(({ id, kind, on, weight, cost, unknown, note }) => ({
        key: id,
        cells: [
          <>
            <Link href={`/projects/${projectId}/waste/${id}`}>{t(`kinds.${kind}`)}</Link>
            {note === null ? null : <Below>{note}</Below>}
          </>,
          on,
          weight === null ? (
            <NotKnown key="w">{t("weightUnknown")}</NotKnown>
          ) : weight.from === "weighed" ? (
            t("weighed", { kilograms: weight.kilograms })
          ) : (
            t("fromMaterial", { kilograms: weight.kilograms, source: weight.source ?? "none" })
          ),
          cost ?? <NotKnown key="c">{t(`unknown.${unknown ?? "weight-unknown"}`)}</NotKnown>,
          <form key="u" action={undoWaste}>
            <input type="hidden" name="id" value={id} />
            <input type="hidden" name="projectId" value={projectId} />
            <Button kind="quiet" label={`${t("undo")}: ${t(`kinds.${kind}`)}, ${on}`}>
              {t("undo")}
            </Button>
          </form>,
        ],
      }))}
    />
  );
}
