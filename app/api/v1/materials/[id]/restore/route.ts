import { restoreMaterial } from "../../../../../../lib/data/materials.ts";
import { apiMaterial } from "../../../../../../lib/show/api-material.ts";
import { changed } from "../../../_answers/outcome.ts";
import { does, resource } from "../../../_answers/resource.ts";
import * as operations from "../../../_operations/materials.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.restoreMaterial, async ({ scope, part }) =>
    changed(await restoreMaterial(scope, part("id")), apiMaterial),
  ),
);
