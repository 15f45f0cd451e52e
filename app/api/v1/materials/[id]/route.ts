import { archiveMaterial, changeMaterial, material } from "../../../../../lib/data/materials.ts";
import { apiMaterial } from "../../../../../lib/show/api-material.ts";
import { changed, found } from "../../_answers/outcome.ts";
import { does, resource } from "../../_answers/resource.ts";
import * as operations from "../../_operations/materials.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.readMaterial, async ({ scope, part }) =>
    found(await material(scope, part("id")), apiMaterial),
  ),
  does(operations.changeMaterial, async ({ scope, part, body }) =>
    changed(await changeMaterial(scope, part("id"), body), apiMaterial),
  ),
  does(operations.archiveMaterial, async ({ scope, part }) =>
    changed(await archiveMaterial(scope, part("id")), apiMaterial),
  ),
);
