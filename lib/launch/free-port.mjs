import { createServer } from "node:net";

/** A port of this computer that nothing listens on now. */
export function freePort() {
  return listenOnce(0, "127.0.0.1");
}

/** Whether something listens on the port already. */
export async function isTaken(port, host) {
  try {
    await listenOnce(port, host);
    return false;
  } catch (error) {
    if (error.code === "EADDRINUSE") return true;
    throw error;
  }
}

function listenOnce(port, host) {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.on("error", reject);
    server.listen(port, host, () => {
      const found = server.address().port;
      server.close(() => resolve(found));
    });
  });
}
