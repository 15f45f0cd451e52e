import { addMaterial, materialsOf } from "../../../../lib/data/materials.ts";
import { apiMaterial } from "../../../../lib/show/api-material.ts";
import { created } from "../_answers/created.ts";
import { pageOf } from "../_answers/page.ts";
import { does, resource } from "../_answers/resource.ts";
import { addMaterials, listMaterials } from "../_operations/materials.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(listMaterials, async ({ scope, query }) => {
    const materials = (await materialsOf(scope, query)).map(apiMaterial);
    return { status: 200, value: pageOf(materials, ({ id }) => id, query) };
  }),
  does(addMaterials, ({ scope, body }) =>
    created(body, ({ id, entry }) => addMaterial(scope, id, entry), apiMaterial),
  ),
);
