/**
 * The parts of lib in their order: a part may import only the parts above it. The rules of .dependency-cruiser.mjs are
 * made from this list, and DEVELOPERS.md explains it. pure: no clock, no input or output, no package but decimal.js, zod and papaparse.
 */
export const LAYERS = [
  { name: "decimal.ts", pure: true },
  { name: "fault.ts", pure: true },
  { name: "money", pure: true },
  { name: "measure", pure: true },
  { name: "calendar", pure: true },
  { name: "entry-fields.ts", pure: true },
  { name: "files", pure: true },
  { name: "tax", pure: true },
  { name: "rates", pure: true },
  { name: "indices", pure: true },
  { name: "materials", pure: true },
  { name: "prices", pure: true },
  { name: "takeoff", pure: true },
  { name: "projects", pure: true },
  { name: "stock", pure: true },
  { name: "bills", pure: true },
  { name: "exposure", pure: true },
  { name: "savings", pure: true },
  { name: "reminders", pure: true },
  { name: "show", pure: true },
  { name: "data", pure: false },
  { name: "launch", pure: false },
];
