import { todayIn } from "../../../../../lib/calendar/local-date.ts";
import { offerFacts } from "../../../../../lib/data/facts.ts";
import { isEntryKnown } from "../../../../../lib/data/phone-entries.ts";
import { recentObservations } from "../../../../../lib/data/recent-observations.ts";
import { exposure } from "../../../../../lib/exposure/exposure.ts";
import { aisleSnapshot } from "../../../../../lib/show/aisle-snapshot-of.ts";
import { phoneWorkspace } from "../../../../_offline/phone-scope.ts";
import { NOT_THERE } from "../../_answers/problem.ts";
import { does, resource } from "../../_answers/resource.ts";
import { readSnapshot } from "../../_operations/phone.ts";

/** Earlier prices of each material that lows are told from. */
const EARLIER = 50;

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(readSnapshot, async ({ query }) => {
    const found = await phoneWorkspace(query.workspace);
    if (found === null) return NOT_THERE;
    const { scope, workspace } = found;
    const now = new Date();
    const day = todayIn(workspace.timeZone, now);
    const facts = await offerFacts(scope, day);
    const history = await recentObservations(scope, [...facts.materials.keys()], day, EARLIER);
    const { id, kind, name, timeZone } = workspace;
    const taken = { takenAt: now.toISOString(), workspace: { id, kind, name, timeZone } };
    const snapshot = { ...aisleSnapshot(facts, exposure(day, facts), history, taken) };
    const restored = query.acknowledged !== undefined && !(await isEntryKnown(scope, query.acknowledged));
    return { status: 200, value: { restored, snapshot } };
  }),
);
