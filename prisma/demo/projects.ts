import { type LocalDate, plusDays } from "../../lib/calendar/local-date.ts";
import { demoId } from "./id.ts";
import { materialId } from "./materials.ts";

type DemoRequirement = Readonly<
  { id: string; projectId: string; materialId: string } & Record<string, unknown>
>;

/** The demo's four jobs. Days are counted from the day the demo is made. */
export function demoProjects(today: LocalDate) {
  const job = (name: string, status: string, from: number, budget?: string) => ({
    id: demoId(`project ${name}`),
    name,
    status,
    statusFrom: plusDays(today, from),
    budget,
  });
  return [
    job("Heron Lane workshop", "live", -220, "9600.00"),
    job("Birch Road kitchen", "live", -120, "2950.00"),
    job("Quarry Street basement suite", "finished", -40),
    job("Mill Pond cabin", "planned", -20),
  ];
}

/** needed, unit price budgeted (all in), days from today it is needed by, waste in percent. */
const LINES: Readonly<
  Record<
    string,
    readonly (readonly [key: string, quantity: string, budget: string, neededIn: number, waste: string])[]
  >
> = {
  "Heron Lane workshop": [
    ["ply12", "53", "36.00", 24, "8"],
    ["osb716", "38", "22.50", 38, "6"],
    ["stud", "164", "4.60", 18, "0"],
    ["2x6x12", "58", "13.40", 30, "5"],
    ["2x10x14", "6", "32.00", 30, "0"],
    ["shingle", "54", "38.00", 46, "10"],
    ["felt", "4", "39.00", 44, "0"],
    ["drip", "12", "12.50", 44, "5"],
    ["door36", "1", "540.00", 60, "0"],
    ["win3648", "4", "470.00", 60, "0"],
    ["wrap", "2", "135.00", 32, "0"],
  ],
  "Birch Road kitchen": [
    ["gyp12", "22", "20.50", 12, "5"],
    ["2x4x8", "36", "5.20", 10, "5"],
    ["door30", "2", "104.00", 28, "0"],
    ["cem12", "9", "23.00", 20, "10"],
    ["floor", "13", "138.00", 35, "7"],
    ["screw", "2", "20.00", 12, "0"],
  ],
  "Quarry Street basement suite": [
    ["stud", "96", "4.80", -110, "0"],
    ["gyp12", "40", "21.00", -80, "5"],
    ["batt", "18", "74.00", -95, "0"],
    ["door32pre", "3", "198.00", -70, "0"],
    ["osb58tg", "12", "38.00", -100, "0"],
  ],
  "Mill Pond cabin": [
    ["metal", "44", "55.00", 190, "8"],
    ["clap", "900", "2.30", 210, "10"],
    ["pt2x6x12", "34", "20.00", 160, "5"],
    ["block", "60", "5.00", 150, "5"],
    ["win2436", "3", "280.00", 200, "0"],
  ],
};

/** What else will do, and how many of it do the work of one: an 8 ft ceiling is framed with precut studs as well. */
const ALTERNATIVES: Readonly<Record<string, readonly (readonly [key: string, factor: string])[]>> = {
  "Birch Road kitchen 2x4x8": [["stud", "1"]],
};

/** Every requirement of the demo, written down some time before it is needed. */
export function demoRequirements(today: LocalDate): DemoRequirement[] {
  return Object.entries(LINES).flatMap(([project, lines]) =>
    lines.map(([key, quantity, budgetUnitPrice, neededIn, wastePercent]) => ({
      id: requirementId(project, key),
      projectId: demoId(`project ${project}`),
      materialId: materialId(key),
      quantity,
      unit: unitOf(key),
      wastePercent,
      neededBy: plusDays(today, neededIn),
      budgetUnitPrice,
      acceptsUsed: key === "win2436",
      alternatives: (ALTERNATIVES[`${project} ${key}`] ?? []).map(([other, factor]) => ({
        materialId: materialId(other),
        factor,
      })),
      validFrom: plusDays(today, Math.min(neededIn, 0) - 200),
    })),
  );
}

/** The id of the requirement of a project for a material. */
export function requirementId(project: string, key: string): string {
  return demoId(`requirement ${project} ${key}`);
}

const UNITS: Readonly<Record<string, string>> = {
  ply12: "sheet",
  osb716: "sheet",
  osb58tg: "sheet",
  gyp12: "sheet",
  cem12: "sheet",
  shingle: "bundle",
  felt: "roll",
  wrap: "roll",
  batt: "bag",
  floor: "box",
  screw: "box",
  door36: "each",
  door30: "each",
  door32pre: "each",
  win3648: "each",
  win2436: "each",
  clap: "linear-foot",
};

function unitOf(key: string): string {
  return UNITS[key] ?? "piece";
}
