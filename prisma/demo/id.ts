import { v5 } from "uuid";

const DEMO = "6b1f5f0e-7a52-5f0c-9d0e-3d2f8f6f4b10";

/** The id of a demo thing: the same name gives the same id on every day and machine (UUID version 5). */
export function demoId(name: string): string {
  return v5(name, DEMO);
}
