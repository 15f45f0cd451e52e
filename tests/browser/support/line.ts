import { createServer, type IncomingMessage, request, type ServerResponse } from "node:http";
import { freePort } from "../../../lib/launch/free-port.mjs";

/**
 * up: everything passes. down: nobody listens. silent: taken, never answered. lost: what the phone sends arrives and is
 * written, and the answer never comes back.
 */
export type LineState = "up" | "down" | "silent" | "lost";

/** The line between a phone and the program: a real address of its own that can fail as lines do. */
export type Line = Readonly<{
  address: string;
  turn: (state: LineState) => Promise<void>;
  /** What comes back instead of a file of the program, e.g. of an older build. */
  instead: (path: string, change: ((text: string) => string) | null) => void;
  stop: () => Promise<void>;
}>;

const ENTRIES = "/api/v1/phone/entries";

/** A line to a program. */
export async function lineTo(program: string): Promise<Line> {
  const port = await freePort();
  const target = new URL(program);
  let state: LineState = "up";
  const changes = new Map<string, (text: string) => string>();

  const pass = (asked: IncomingMessage, answer: ServerResponse): void => {
    if (state === "silent") return;
    const { method, url = "/", headers } = asked;
    const change = changes.get(url);
    const lost = state === "lost" && url.startsWith(ENTRIES);
    const sent = change === undefined ? headers : { ...headers, "accept-encoding": "identity" };
    const onward = request(
      { host: target.hostname, port: target.port, method, path: url, headers: sent },
      (came) => {
        if (lost) {
          came.resume().on("end", () => answer.destroy());
          return;
        }
        if (change === undefined) {
          answer.writeHead(came.statusCode ?? 502, came.headers);
          came.pipe(answer);
          return;
        }
        const parts: Buffer[] = [];
        came.on("data", (part: Buffer) => parts.push(part));
        came.on("end", () => {
          // Without the marks of the file it stands for: it is another one.
          const { "content-length": _, etag: __, "last-modified": ___, ...rest } = came.headers;
          answer.writeHead(came.statusCode ?? 502, rest).end(change(Buffer.concat(parts).toString()));
        });
      },
    );
    onward.on("error", () => answer.destroy());
    asked.pipe(onward);
  };
  const server = createServer(pass);
  const listen = () => new Promise<void>((ready) => server.listen(port, "127.0.0.1", ready));
  const hangUp = () =>
    new Promise<void>((done) => {
      server.close(() => done());
      server.closeAllConnections();
    });
  await listen();
  return {
    address: `http://127.0.0.1:${port}`,
    turn: async (next) => {
      if (server.listening && next === "down") await hangUp();
      if (!server.listening && next !== "down") await listen();
      if (state === "silent") server.closeAllConnections();
      state = next;
    },
    instead: (path, change) => {
      if (change === null) changes.delete(path);
      else changes.set(path, change);
    },
    stop: async () => {
      if (server.listening) await hangUp();
    },
  };
}
