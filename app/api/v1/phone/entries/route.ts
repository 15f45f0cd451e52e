import { phoneWorkspace } from "../../../../_offline/phone-scope.ts";
import { writeEntries } from "../../_answers/phone-entries.ts";
import { NOT_THERE } from "../../_answers/problem.ts";
import { does, resource } from "../../_answers/resource.ts";
import { sendEntries } from "../../_operations/phone.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(sendEntries, async ({ body }) => {
    const found = await phoneWorkspace(body.workspaceId);
    if (found === null) return NOT_THERE;
    return { status: 200, value: await writeEntries(found.scope, body.entries) };
  }),
);
