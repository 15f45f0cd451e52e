import "server-only";
import { caller } from "../_gate/caller.ts";
import { openness } from "../_gate/caller-of.ts";
import { qrPath } from "./qr-path.ts";
import type { ShownCode } from "./shown-code.ts";

/** The address another device knows the house by: on the network when it is open to it, else the one called now. */
export async function addressElsewhere(): Promise<string> {
  return openness().origins[0] ?? (await caller())?.from.origin ?? "";
}

/** A code, with the address it is used at. The code stands behind the #, so that it never reaches a log. */
export async function shownCode(code: string, path: string): Promise<ShownCode> {
  const plainAddress = `${await addressElsewhere()}${path}`;
  const address = `${plainAddress}#${code}`;
  return { code, address, plainAddress, ...qrPath(address) };
}
