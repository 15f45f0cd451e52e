import { request as ask, createServer as createPlainServer } from "node:http";
import { createServer as createSecureServer } from "node:https";
import { createServer as createSocketServer } from "node:net";
import { plainAnswer } from "./plain-page.mjs";
import { Refusal } from "./refusal.mjs";

const TLS_HELLO = 22;
const FIRST_BYTE_WITHIN = 10_000;
// Of one connection only, or ours alone to say: who forwards, who called, what was called.
const DROPPED =
  /^(connection|keep-alive|proxy-.*|te|trailer|transfer-encoding|upgrade|forwarded|via|x-forwarded-.*|x-real-ip|x-dunnage-.*)$/i;

/**
 * The program in the network: TLS on one port, passed on to the pages, which listen on loopback alone. Who speaks plain HTTP
 * to the same port gets the certificate to trust, and nothing else.
 * @returns {Promise<{ stop(): Promise<void> }>}
 */
export async function openFront({ port, key, certificate, authority, secret, pages, host = undefined }) {
  const secure = createSecureServer({ key, cert: certificate, minVersion: "TLSv1.2" }, (request, response) =>
    passOn(request, response, { pages, secret }),
  );
  const plain = createPlainServer((request, response) => plainAnswer(request, response, authority));
  const sockets = new Set();
  const server = createSocketServer({ pauseOnConnect: false }, (socket) => {
    sockets.add(socket);
    socket.on("close", () => sockets.delete(socket));
    socket.on("error", () => socket.destroy());
    socket.setTimeout(FIRST_BYTE_WITHIN, () => socket.destroy());
    socket.once("readable", () => {
      const first = socket.read(1);
      if (first === null) return socket.destroy();
      socket.setTimeout(0);
      socket.removeAllListeners("timeout");
      socket.unshift(first);
      (first[0] === TLS_HELLO ? secure : plain).emit("connection", socket);
    });
  });
  await listening(server, port, host);
  return {
    port: server.address().port,
    stop: async () => {
      server.close();
      for (const socket of sockets) socket.destroy();
    },
  };
}

function listening(server, port, host) {
  return new Promise((resolve, reject) => {
    server.once("error", (error) =>
      reject(
        error.code === "EADDRINUSE"
          ? new Refusal(`Port ${port} is used by another program. Choose another one with NETWORK_PORT.`)
          : error,
      ),
    );
    server.listen({ port, host }, resolve);
  });
}

function passOn(request, response, { pages, secret }) {
  const headers = {};
  for (const [name, value] of Object.entries(request.headers)) if (!DROPPED.test(name)) headers[name] = value;
  const called = request.headers.host ?? "";
  Object.assign(headers, {
    "x-forwarded-host": called,
    "x-forwarded-proto": "https",
    "x-forwarded-for": clientOf(request),
    "x-dunnage-host": called,
    "x-dunnage-client": clientOf(request),
    "x-dunnage-front": secret,
  });
  const onward = ask(
    { host: pages.host, port: pages.port, method: request.method, path: request.url, headers },
    (answer) => {
      response.writeHead(answer.statusCode ?? 502, kept(answer.headers));
      answer.pipe(response);
      answer.on("error", () => response.destroy());
    },
  );
  onward.on("error", () => {
    if (response.headersSent) return response.destroy();
    response.writeHead(502, { "content-type": "text/plain; charset=utf-8" });
    response.end("The program does not answer. It may be starting, or have been stopped.");
  });
  response.on("close", () => onward.destroy());
  request.pipe(onward);
}

const ENDS_HERE = new Set(["connection", "keep-alive", "transfer-encoding"]);
const kept = (headers) =>
  Object.fromEntries(Object.entries(headers).filter(([name]) => !ENDS_HERE.has(name)));

/** The address of who called, an IPv4 one written plainly. */
function clientOf({ socket }) {
  return (socket.remoteAddress ?? "").replace(/^::ffff:/, "");
}
