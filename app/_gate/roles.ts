/**
 * Who a request comes from. owner, crew (log, draw, see) and reader (savings and reports) have signed in. Nobody has: "here" is
 * this computer while no sign-in is asked for; "demo" is this computer looking at the demo while it is; "nobody" is anyone else.
 */
export const ROLES = ["owner", "crew", "reader", "here", "demo", "nobody"] as const;
export type Role = (typeof ROLES)[number];
export type Roles = readonly Role[];

export const EVERYONE: Roles = ROLES;
/** Whoever has some business inside. */
export const INSIDE: Roles = ["owner", "crew", "reader", "here", "demo"];
/** Sees prices, projects and stock. */
export const SEES: Roles = ["owner", "crew", "here", "demo"];
/** Logs what was seen and bought, draws, counts. */
export const WORKS: Roles = SEES;
/** Sets what the figures rest on: settings, projects, what is archived or thrown away. */
export const KEEPS: Roles = ["owner", "here", "demo"];
/** The same three for the JSON interface, which speaks to the house's own workspace, never to the demo. */
export const SEES_OWN: Roles = ["owner", "crew", "here"];
export const WORKS_OWN: Roles = SEES_OWN;
export const KEEPS_OWN: Roles = ["owner", "here"];
/** The bookkeeper's reading of it. */
export const READS_OWN: Roles = ["owner", "crew", "reader", "here"];
/** Says who may come in. */
export const HOUSE: Roles = KEEPS_OWN;
/** Has a sign-in of their own. */
export const SIGNED_IN: Roles = ["owner", "crew", "reader"];
export const NO_ONE: Roles = [];
