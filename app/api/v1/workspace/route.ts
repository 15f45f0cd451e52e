import { updateWorkspace } from "../../../../lib/data/workspaces.ts";
import { apiWorkspace } from "../../../../lib/show/api-settings.ts";
import { changed } from "../_answers/outcome.ts";
import { does, resource } from "../_answers/resource.ts";
import { changeWorkspace, readWorkspace } from "../_operations/settings.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(readWorkspace, async ({ workspace, today }) => ({
    status: 200,
    value: apiWorkspace(workspace, today),
  })),
  does(changeWorkspace, async ({ scope, body, today }) =>
    changed(await updateWorkspace(scope, body), (workspace) => apiWorkspace(workspace, today)),
  ),
);
