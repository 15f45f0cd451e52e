import Link from "next/link";
import { getLocale } from "next-intl/server";
import { historyOf, observation } from "../../lib/data/observations.ts";
import type { ExposureFacts } from "../../lib/exposure/exposure-facts.ts";
import type { WorkspaceExposure } from "../../lib/exposure/exposure-figures.ts";
import { loggedPrice } from "../../lib/show/logged-price.ts";
import { quantityText } from "../../lib/show/money-text.ts";
import { Notice } from "../_ui/notice.tsx";
import { UndoBar } from "../_ui/undo-bar.tsx";
import { asked, type Query } from "../_workspace/day-asked.ts";
import { isId } from "../_workspace/id-asked.ts";
import { namesOf } from "../_workspace/names-of.ts";
import { scopeSeen } from "../_workspace/workspace-seen.ts";
import { bringBack } from "./actions.ts";
import { BoughtForm } from "./bought-form.tsx";
import { Verdict } from "./verdict.tsx";
import { logWords, unitWord } from "./words.ts";

type AfterWriteProps = Readonly<{ query: Query; facts: ExposureFacts; exposure: WorkspaceExposure }>;

async function Seen({ id, facts, exposure }: Omit<AfterWriteProps, "query"> & Readonly<{ id: string }>) {
  const scope = await scopeSeen();
  const seen = await observation(scope, id);
  const material = seen === null ? undefined : facts.materials.get(seen.materialId);
  if (seen === null || seen.deletedAt !== null || material === undefined) return null;
  const history = await historyOf(scope, seen.materialId, exposure.day);
  const logged = loggedPrice(seen, history, exposure, facts, material);
  const names = namesOf(facts);
  return (
    <>
      <Verdict
        observation={seen}
        logged={logged}
        names={names}
        valuation={facts.valuation}
        day={exposure.day}
      />
      {logged.offer === null && seen.terms !== "paid" ? null : (
        <BoughtForm observation={seen} logged={logged} material={material} names={names} />
      )}
      <h2>{logWords(await getLocale()).next}</h2>
    </>
  );
}

/** What stands above the form after something was done: the meaning of a price, a lot recorded, or a price taken back. */
export async function AfterWrite({ query, facts, exposure }: AfterWriteProps) {
  const locale = await getLocale();
  const words = logWords(locale);
  const seen = await asked(query, "seen");
  if (isId(seen)) return <Seen id={seen} facts={facts} exposure={exposure} />;
  const undone = await asked(query, "undone");
  if (isId(undone))
    return (
      <UndoBar undo={{ action: bringBack, fields: { id: undone }, label: words.bringBack }}>
        {words.undone}
      </UndoBar>
    );
  const bought = await asked(query, "bought");
  const lot = facts.lots.find((known) => known.id === bought);
  const material = lot && facts.materials.get(lot.materialId);
  if (lot && material)
    return (
      <UndoBar>
        {words.boughtDone(
          quantityText(lot.quantity, locale),
          unitWord(material.purchaseUnit, lot.quantity.toFixed()),
          material.name,
        )}{" "}
        <Link href={`/stock/${lot.id}`}>{words.toLot}</Link>
      </UndoBar>
    );
  return (await asked(query, "cannot")) === undefined ? null : <Notice tone="warn">{words.cannot}</Notice>;
}
