import { type Problem, problem } from "./problem.ts";

/** Largest bodies: of one entry, and of many at once. */
export const ONE_MEGABYTE = 1_000_000;
export const TEN_MEGABYTES = 10_000_000;

export type Raw =
  | Readonly<{ ok: true; value: unknown; bytes: number }>
  | Readonly<{ ok: false; problem: Problem }>;

const refused = (found: Problem): Raw => ({ ok: false, problem: found });

export function tooBig(limit: number): Problem {
  return problem(413, `The body is larger than ${limit} bytes.`);
}

async function bytesUpTo(request: Request, limit: number): Promise<Uint8Array | null> {
  const chunks: Uint8Array[] = [];
  let size = 0;
  // Read piece by piece: a body without a length must not fill the memory before it is refused.
  for await (const chunk of request.body ?? []) {
    size += chunk.byteLength;
    if (size > limit) return null;
    chunks.push(chunk);
  }
  return Buffer.concat(chunks, size);
}

/** The JSON of a request. Problems: 415 another content type, 413 too big, 400 not UTF-8 or not JSON. */
export async function readJson(request: Request, limit: number): Promise<Raw> {
  const type = request.headers.get("content-type") ?? "";
  if (!/^application\/json\s*(;|$)/i.test(type)) return refused(problem(415, "Send application/json."));
  if (Number(request.headers.get("content-length") ?? 0) > limit) return refused(tooBig(limit));
  const bytes = await bytesUpTo(request, limit);
  if (bytes === null) return refused(tooBig(limit));
  try {
    const text = new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    return { ok: true, value: JSON.parse(text), bytes: bytes.byteLength };
  } catch {
    return refused(problem(400, "The body cannot be read as JSON in UTF-8."));
  }
}
