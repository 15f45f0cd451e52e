import { fileURLToPath } from "node:url";

/** The folder of the project, whatever folder the program is started from. */
export const ROOT = fileURLToPath(new URL("../../", import.meta.url));
