import { redoBill } from "../../../../../../lib/data/bills.ts";
import { apiBill } from "../../../../../../lib/show/api-bill.ts";
import { changed } from "../../../_answers/outcome.ts";
import { does, resource } from "../../../_answers/resource.ts";
import { restoreBill } from "../../../_operations/bills.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(restoreBill, async ({ scope, part }) => changed(await redoBill(scope, part("id")), apiBill)),
);
