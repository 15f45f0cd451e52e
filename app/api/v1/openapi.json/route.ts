import { version } from "../../../../package.json";
import { openApi } from "../_answers/openapi.ts";
import { does, resource } from "../_answers/resource.ts";
import { OPERATIONS } from "../_operations/all.ts";
import { readDocument } from "../_operations/program.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(readDocument, async () => ({ status: 200, value: openApi(OPERATIONS, version) })),
);
