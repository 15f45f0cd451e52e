import type { APIRequestContext } from "@playwright/test";
import * as z from "zod";
import { expect } from "./test.ts";

const madeShape = z.object({ id: z.string() });

/** Stores a thing through the interface, into the owner's workspace; the answer is its id. */
export async function stored(request: APIRequestContext, path: string, body: object): Promise<string> {
  const response = await request.post(`/api/v1/${path}`, { data: body });
  expect(`${path}: ${response.status()} ${response.ok() ? "" : await response.text()}`).toBe(`${path}: 201 `);
  return madeShape.parse(await response.json()).id;
}

/** A store in Nova Scotia, tags before tax. */
export function storedStore(request: APIRequestContext, name: string): Promise<string> {
  return stored(request, "stores", { name, taxRegion: "CA-NS", currency: "CAD" });
}

/** A sheet of 4 by 8 feet. */
export function storedSheet(request: APIRequestContext, name: string): Promise<string> {
  return stored(request, "materials", {
    name,
    category: "sheet-goods",
    purchaseUnit: "sheet",
    dimensions: { faceWidth: "48 in", faceLength: "96 in" },
  });
}

/** A shelf price of one sheet, before tax, in Canadian dollars. */
export function storedPrice(
  request: APIRequestContext,
  price: Readonly<{ materialId: string; storeId: string; seenOn: string; amount: string }>,
): Promise<string> {
  return stored(request, "observations", {
    currency: "CAD",
    per: { quantity: "1", unit: "sheet" },
    taxIncluded: false,
    terms: "shelf",
    ...price,
  });
}

/** A day so many days ago, in the time zone of the tests. */
export function daysAgo(days: number): string {
  return new Intl.DateTimeFormat("en-CA", { dateStyle: "short", timeZone: "America/Halifax" }).format(
    Date.now() - days * 86_400_000,
  );
}
