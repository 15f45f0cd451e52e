import { resolve } from "node:path";

export default { turbopack: { root: resolve(import.meta.dirname, "../../..") } };
