import { request } from "node:http";

/** A request whose Host and Origin are as given: what a page that points its own name here would send. */
export function rawRequest(
  port: number,
  method: string,
  path: string,
  headers: Readonly<Record<string, string>>,
  body = "",
): Promise<{ status: number; type: string; text: string }> {
  return new Promise((resolve, reject) => {
    const asked = request({ host: "127.0.0.1", port, method, path, headers }, (response) => {
      const pieces: Buffer[] = [];
      response.on("data", (piece: Buffer) => pieces.push(piece));
      response.on("end", () =>
        resolve({
          status: response.statusCode ?? 0,
          type: response.headers["content-type"] ?? "",
          text: Buffer.concat(pieces).toString("utf8"),
        }),
      );
    });
    asked.on("error", reject);
    asked.end(body);
  });
}
