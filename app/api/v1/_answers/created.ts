import type { Written } from "../../../../lib/fault.ts";
import { type AddMany, type Came, type ManyAnswer, manyAnswer } from "./many-answer.ts";
import type { OneOrMany } from "./many-body.ts";
import type { New } from "./new-body.ts";
import type { Outcome } from "./operation.ts";
import { made } from "./outcome.ts";
import { USED_ID } from "./used-id.ts";

async function came<T>(id: string, writing: Promise<Written<T>>): Promise<Came> {
  const written = await writing;
  if (written.ok) return { id, faults: null };
  if (written.why === "faults") return { id, faults: written.faults };
  return { id, faults: written.why === "conflict" ? USED_ID : [{ path: "", code: "not-there" }] };
}

/** Many by adding one after the other. */
function oneByOne<E, T>(add: (one: New<E>) => Promise<Written<T>>): AddMany<New<E>> {
  return async (entries) => {
    const all: Came[] = [];
    for (const entry of entries) all.push(await came(entry.id, add(entry)));
    return all;
  };
}

/** One thing or many, made by `add`; many at once by `addMany` where there is one. */
export async function created<E, T, A>(
  body: OneOrMany<New<E>>,
  add: (one: New<E>) => Promise<Written<T>>,
  answer: (value: T) => A,
  addMany: AddMany<New<E>> = oneByOne(add),
): Promise<Outcome<A | ManyAnswer>> {
  if (!body.many) return made(await add(body.one), answer);
  return { status: 200, value: await manyAnswer(body.entries, addMany) };
}
