import { bill, undoBill } from "../../../../../lib/data/bills.ts";
import { apiBill } from "../../../../../lib/show/api-bill.ts";
import { changed, found } from "../../_answers/outcome.ts";
import { does, resource } from "../../_answers/resource.ts";
import * as operations from "../../_operations/bills.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.readBill, async ({ scope, part }) => found(await bill(scope, part("id")), apiBill)),
  does(operations.undoBill, async ({ scope, part }) => changed(await undoBill(scope, part("id")), apiBill)),
);
