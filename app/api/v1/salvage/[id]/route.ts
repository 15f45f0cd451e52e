import { salvage } from "../../../../../lib/data/salvage.ts";
import { asOfDay } from "../../_answers/as-of.ts";
import { found } from "../../_answers/outcome.ts";
import { does, resource } from "../../_answers/resource.ts";
import { salvageAnswer } from "../../_answers/salvage-answer.ts";
import { readSalvage } from "../../_operations/salvage.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(readSalvage, async ({ scope, part, query, today }) => {
    const day = asOfDay(query.asOf, today);
    if (typeof day !== "string") return day;
    return found(await salvage(scope, part("id")), await salvageAnswer(scope, part("id"), day));
  }),
);
