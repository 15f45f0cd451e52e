import { readFileSync } from "node:fs";
import { join } from "node:path";
import * as z from "zod";
import { ROOT } from "../../lib/launch/paths.mjs";

const manifestShape = z.object({
  node: z.record(
    z.string(),
    z.object({ exportedName: z.string(), workers: z.record(z.string(), z.unknown()) }),
  ),
});

export type BuiltAction = Readonly<{ id: string; name: string; page: string }>;

/** The server actions of the build, each with a page that carries it. */
export function builtActions(): BuiltAction[] {
  const text = readFileSync(join(ROOT, ".next/server/server-reference-manifest.json"), "utf8");
  return Object.entries(manifestShape.parse(JSON.parse(text)).node).map(([id, { exportedName, workers }]) => {
    const pages = Object.keys(workers).filter((one) => one.endsWith("/page") && !one.includes("_not-found"));
    const page = pages[0] ?? "app/page";
    return { id, name: exportedName, page: page.replace(/^app/, "").replace(/\/page$/, "") || "/" };
  });
}

/** Calls a server action past its form, as a program would that knows its id: what it wants typed is left empty. */
export function calledAction(
  address: string,
  { id, page }: BuiltAction,
  cookie: string,
  ask: typeof fetch = fetch,
): Promise<Response> {
  const body = new FormData();
  const state = { values: {}, faults: [], trouble: null, attempt: 0 };
  body.set("1_id", "0190f3c4-0000-7000-8000-000000000000");
  body.set("0", JSON.stringify([state, "$K1"])); // React's form of arguments: a state, and the form whose fields begin with 1_
  const path = page.replaceAll(/\[\w+\]/g, "0190f3c4-0000-7000-8000-000000000000");
  return ask(`${address}${path}`, {
    method: "POST",
    headers: { cookie, origin: address, "next-action": id, accept: "text/x-component" },
    body,
    redirect: "manual",
  });
}
