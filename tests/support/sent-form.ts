import { expect } from "vitest";

type Sent = Readonly<Record<string, string>>;

/** The hidden fields of the form of a page that has a field, or a button's form, of this name. */
function hiddenFields(html: string, having: string): [string, string][] {
  const form = [...html.matchAll(/<form\b[\s\S]*?<\/form>/g)].find(([text]) => text.includes(having));
  expect(form, `no form with ${having}`).toBeDefined();
  return [...(form?.[0] ?? "").matchAll(/<input[^>]*type="hidden"[^>]*>/g)].map(([input]) => [
    unescaped(/name="([^"]*)"/.exec(input)?.[1] ?? ""),
    unescaped(/value="([^"]*)"/.exec(input)?.[1] ?? ""),
  ]);
}

const unescaped = (text: string) =>
  text
    .replaceAll("&quot;", '"')
    .replaceAll("&#x27;", "'")
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&amp;", "&");

/** Fills in and sends a form of a page as a browser without JavaScript does. having: a text only that form has. */
export async function sentForm(
  address: string,
  path: string,
  having: string,
  fields: Sent,
  cookie = "",
  ask: typeof fetch = fetch,
): Promise<Response> {
  const page = await ask(`${address}${path}`, { headers: { cookie }, redirect: "manual" });
  expect([path, page.status]).toEqual([path, 200]);
  const body = new FormData();
  for (const [name, value] of hiddenFields(await page.text(), having)) body.append(name, value);
  for (const [name, value] of Object.entries(fields)) body.set(name, value);
  return ask(`${address}${path}`, {
    method: "POST",
    headers: { cookie, origin: address },
    body,
    redirect: "manual",
  });
}

/** The session an answer puts into the browser, as a cookie header; null when it puts none. */
export function sessionIn(response: Response): string | null {
  const cookie = response.headers.getSetCookie().find((one) => one.startsWith("dunnage.session_token="));
  return cookie?.split(";")[0] ?? null;
}
