import { once } from "node:events";
import { connect, createServer, type Socket } from "node:net";

/** A line to a server that can be cut and joined again, so that a test can take the database away. */
export type Line = Readonly<{ url: string; cut: () => void; join: () => void; close: () => Promise<void> }>;

/** The address of a database behind a line of our own. */
export async function lineTo(databaseUrl: string): Promise<Line> {
  const target = new URL(databaseUrl);
  const host = target.hostname === "" ? "127.0.0.1" : target.hostname.replace(/^\[|\]$/g, "");
  const open = new Set<Socket>();
  let joined = true;
  const server = createServer((near) => {
    if (!joined) {
      near.destroy();
      return;
    }
    const far = connect(Number(target.port || 5432), host);
    for (const [one, other] of [
      [near, far],
      [far, near],
    ] as const) {
      open.add(one);
      one.on("error", () => other.destroy());
      one.on("close", () => {
        open.delete(one);
        other.destroy();
      });
    }
    near.pipe(far);
    far.pipe(near);
  });
  server.listen(0, "127.0.0.1");
  await once(server, "listening");
  const at = server.address();
  if (at === null || typeof at === "string") throw new Error("the line has no port");
  const near = new URL(databaseUrl);
  near.hostname = "127.0.0.1";
  near.port = String(at.port);
  const cutAll = () => {
    for (const socket of open) socket.destroy();
  };
  return {
    url: near.href,
    cut: () => {
      joined = false;
      cutAll();
    },
    join: () => {
      joined = true;
    },
    close: async () => {
      server.close();
      cutAll();
      await once(server, "close");
    },
  };
}
