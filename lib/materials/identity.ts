/**
 * Which way a door or a casement is hung, seen from outside or from the side the key is on: hinges on the left or right,
 * opening away; "reverse" opens towards. Source: the trade's four hands (from memory); other conventions exist, so the
 * form says this one.
 */
export const HANDS = ["left", "right", "left-reverse", "right-reverse"] as const;
export type Hand = (typeof HANDS)[number];

/** A bare leaf, or a leaf hung in its frame. */
export const DOOR_KINDS = ["slab", "prehung"] as const;
export type DoorKind = (typeof DOOR_KINDS)[number];

/** What was done to a material that changes where it may be used; none named: nothing was. */
export const TREATMENTS = [
  "above-ground",
  "ground-contact",
  "borate",
  "fire-retardant",
  "hot-dip-galvanized",
  "stainless",
] as const;
export type Treatment = (typeof TREATMENTS)[number];

/**
 * What a material is beside its sizes: another of any of these is another material (R4). grade: as stamped ("No. 2",
 * "Stud", "Type X"). The thickness category and the jamb depth are sizes and stand among the dimensions.
 */
export type Identity = Readonly<{
  grade?: string;
  hand?: Hand;
  doorKind?: DoorKind;
  treatment?: Treatment;
}>;

/** Grades of one family, the best first: only within a family is one better than the other. */
const FAMILIES: readonly (readonly string[])[] = [
  ["select structural", "no 1", "no 2", "no 3"],
  ["construction", "standard", "utility"],
];

const SPELLED: Readonly<Record<string, string>> = {
  ss: "select structural",
  "sel str": "select structural",
  "1": "no 1",
  "2": "no 2",
  "3": "no 3",
  const: "construction",
  stand: "standard",
  util: "utility",
};

/** One spelling of a grade: "#2", "No.2", "No. 2 and better" and "2 & Btr" are one, by the least they promise. */
function spelled(grade: string): string {
  const plain = grade
    .toLowerCase()
    .replaceAll(/[.#]/g, " ")
    .replaceAll(/(&|\band\b)\s*(better|btr)\b/g, " ")
    .replaceAll(/\b(no|number)\s*(?=\d)/g, "")
    .replaceAll(/\s+/g, " ")
    .trim();
  return SPELLED[plain] ?? plain;
}

/** How one grade stands to another: the same or better, lower, or of another family so that it cannot be said. */
export type GradeStanding = "as-good" | "lower" | "not-comparable";

/**
 * How a grade stands to the one asked for.
 * Units: none. Source: families of PS 20 and the grading rules as commonly named (common practice): Select Structural, No. 1, No. 2,
 * No. 3; Construction, Standard, Utility; Stud stands alone. Two grades of one name are the same, whatever they mean.
 */
export function gradeStanding(asked: string, offered: string): GradeStanding {
  const [wanted, given] = [spelled(asked), spelled(offered)];
  if (wanted === given) return "as-good";
  const family = FAMILIES.find((grades) => grades.includes(wanted) && grades.includes(given));
  if (family === undefined) return "not-comparable";
  return family.indexOf(given) < family.indexOf(wanted) ? "as-good" : "lower";
}

/** Treatments that also do the work of another. Source: common practice. */
const SERVES: Readonly<Partial<Record<Treatment, readonly Treatment[]>>> = {
  "above-ground": ["ground-contact"],
  "hot-dip-galvanized": ["stainless"],
};

/** Whether a treatment (or none) will do where one (or none) is asked for. Source: common practice. */
export function treatmentServes(asked: Treatment | undefined, offered: Treatment | undefined): boolean {
  if (asked === undefined || asked === offered) return true;
  return offered !== undefined && (SERVES[asked] ?? []).includes(offered);
}
