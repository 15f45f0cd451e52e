import type { Fault } from "../../../../lib/fault.ts";

/** The fault of a create under an id that was accepted before with other content. */
export const USED_ID: readonly Fault[] = [{ path: "id", code: "used-id" }];
