/** The cookie that says which workspace a browser looks at: "demo", or nothing for the owner's own. */
export const WORKSPACE_COOKIE = "dunnage-workspace";
