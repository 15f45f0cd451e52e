import { expect, test } from "vitest";
import * as z from "zod";
import { indexValueShape, referenceIndexShape } from "../../lib/show/api-index.ts";
import { ownInterface } from "../support/interface.ts";

const api = ownInterface();
const lumber = { name: "Lumber", series: "WPU081", publisher: "Bureau", base: "1982 = 100" };

test("an index is made once, refused under its series again, and listed", async () => {
  const made = await api.make(referenceIndexShape, "/reference-indices", lumber);
  expect(made).toMatchObject(lumber);
  expect((await api.refused(422, "POST", "/reference-indices", lumber)).faults).toEqual([
    "series: name-taken",
  ]);
  const { items } = await api.read(
    z.object({ items: z.array(referenceIndexShape) }),
    "/reference-indices?limit=10",
  );
  expect(items).toEqual([made]);
  const values = z.object({ items: z.array(indexValueShape) });
  expect((await api.read(values, `/reference-indices/${made.id}/values`)).items).toEqual([]);
});

test("an index that is not there has no values, and a day ahead is refused", async () => {
  const nobody = "/reference-indices/00000000-0000-4000-8000-000000000000/values";
  await api.refused(404, "GET", nobody);
  expect((await api.refused(422, "GET", `${nobody}?asOf=2999-01-01`)).faults).toEqual(["asOf: day-ahead"]);
});
