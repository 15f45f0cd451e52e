import { createServer, type IncomingMessage } from "node:http";
import type { AddressInfo } from "node:net";
import { afterEach, expect, test } from "vitest";
import { askDaily, dailySecret } from "../../../lib/launch/daily.mjs";

let close = () => {};
afterEach(() => close());

/** A server that answers with these statuses in turn, then 200; the answer resolves once it was asked so many times. */
async function askedTimes(times: number, statuses: readonly number[] = []) {
  const asked: IncomingMessage[] = [];
  let enough = () => {};
  const all = new Promise<void>((resolve) => {
    enough = resolve;
  });
  const server = createServer((request, response) => {
    asked.push(request);
    response.statusCode = statuses[asked.length - 1] ?? 200;
    response.end();
    if (asked.length === times) enough();
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  const daily = askDaily(`http://127.0.0.1:${port}`, "the word", { soon: 1, every: 1 });
  close = () => {
    daily.stop();
    server.closeAllConnections();
    server.close();
  };
  await all;
  return asked;
}

test("the launcher asks soon after the start and again each time, with its word", async () => {
  const asked = await askedTimes(3);
  expect(asked.slice(0, 3).map(({ method, url }) => `${method} ${url}`)).toEqual(
    Array.from({ length: 3 }, () => "POST /calendar/daily"),
  );
  expect(asked[0]?.headers["x-dunnage-daily"]).toBe("the word");
});

test("an answer that is an error is the next time's to mend", async () => {
  expect((await askedTimes(3, [500, 500])).length).toBeGreaterThanOrEqual(3);
});

test("its word is another one at each start", () => {
  expect(dailySecret()).toMatch(/^[0-9a-f]{64}$/);
  expect(dailySecret()).not.toBe(dailySecret());
});
