import { material } from "../../../../../../lib/data/materials.ts";
import { contentsOfPlace } from "../../../../../../lib/data/place-contents.ts";
import { apiFits } from "../../../../../../lib/show/api-place.ts";
import { fitsIn } from "../../../../../../lib/stock/place-room.ts";
import { asOfDay } from "../../../_answers/as-of.ts";
import { found } from "../../../_answers/outcome.ts";
import { faulty } from "../../../_answers/problem.ts";
import { does, resource } from "../../../_answers/resource.ts";
import { readFits } from "../../../_operations/places.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(readFits, async ({ scope, part, query, today }) => {
    const day = asOfDay(query.asOf, today);
    if (typeof day !== "string") return day;
    const what = await material(scope, query.materialId);
    if (what === null) return faulty([{ path: "materialId", code: "not-there" }]);
    return found(await contentsOfPlace(scope, part("id"), day), ({ place, loads }) =>
      apiFits(fitsIn(place, loads, what)),
    );
  }),
);
