import { ACTIONS, type ActionName } from "./actions-table.ts";
import type { Role, Roles } from "./roles.ts";
import { finder, type Row } from "./rows.ts";
import { SCREENS } from "./screens-table.ts";
import { SERVICES } from "./services-table.ts";

/** Every address of the program with who may come to it. With actions-table.ts the one table of who may do what. */
export const ROWS: readonly Row[] = [...SCREENS, ...SERVICES];

/** The row of an address; null where there is none, and then nobody may come. */
export const rowOf = finder(ROWS);

const READS: ReadonlySet<string> = new Set(["GET", "HEAD", "OPTIONS"]);

function has(roles: Roles, role: Role): boolean {
  return roles.includes(role);
}

/** Whether somebody may ask an address this way. What no row names is denied. */
export function mayAsk(role: Role, method: string, path: string): boolean {
  const row = rowOf(path);
  return row !== null && has(READS.has(method) ? row.reads : row.writes, role);
}

/** Whether somebody may do a server action. */
export function mayDo(role: Role, action: ActionName): boolean {
  return has(ACTIONS[action], role);
}
