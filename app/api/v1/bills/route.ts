import { addBill, bills } from "../../../../lib/data/bills.ts";
import { apiBill } from "../../../../lib/show/api-bill.ts";
import { created } from "../_answers/created.ts";
import { does, resource } from "../_answers/resource.ts";
import { addBills, listBills } from "../_operations/bills.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(listBills, async ({ scope, query: { limit, cursor } }) => {
    const page = await bills(scope, { limit, cursor: cursor ?? null });
    return { status: 200, value: { items: page.items.map(apiBill), nextCursor: page.next } };
  }),
  does(addBills, ({ scope, body }) => created(body, ({ id, entry }) => addBill(scope, id, entry), apiBill)),
);
