import type { Written } from "../../../../lib/fault.ts";
import type { Outcome } from "./operation.ts";
import { faulty, NOT_THERE, type Problem, problem } from "./problem.ts";
import { USED_ID } from "./used-id.ts";

/** A thing found, or 404. */
export function found<T, A>(value: T | null, answer: (value: T) => A): Outcome<A> {
  return value === null ? NOT_THERE : { status: 200, value: answer(value) };
}

/** A thing made: 201; made before with the same content: 200; refused: its problem. */
export function made<T, A>(written: Written<T>, answer: (value: T) => A): Outcome<A> {
  if (written.ok) return { status: written.repeated ? 200 : 201, value: answer(written.value) };
  return notWritten(written);
}

/** A thing changed: 200; refused: its problem. */
export function changed<T, A>(written: Written<T>, answer: (value: T) => A): Outcome<A> {
  return written.ok ? { status: 200, value: answer(written.value) } : notWritten(written);
}

function notWritten<T>(written: Extract<Written<T>, { ok: false }>): Problem {
  if (written.why === "faults") return faulty(written.faults);
  if (written.why === "not-there") return NOT_THERE;
  return problem(409, "Another one was accepted under this id before; it stays as it is.", USED_ID);
}
