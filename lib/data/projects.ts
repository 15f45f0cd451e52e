import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Written } from "../fault.ts";
import type { Project, ProjectStatus } from "../projects/project.ts";
import type { ProjectEntry, ProjectPatch } from "../projects/project-entry.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { createdOnce, entryHash } from "./first-received.ts";
import { nameFaults } from "./names.ts";
import { projectsWithin, projectWithin } from "./project-rows.ts";
import { dateOf, digitsOrNull } from "./rows.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";
import { accepted, NOT_THERE, refused } from "./written.ts";

/** All projects of the workspace, whatever their status, by name. */
export function projectsOf(scope: Scope): Promise<Project[]> {
  return inWorkspace(scope, projectsWithin);
}

/** The project of an id in the workspace, or null. */
export function project(scope: Scope, id: string): Promise<Project | null> {
  return inWorkspace(scope, (tx) => projectWithin(tx, id));
}

async function stored(tx: Tx, id: string): Promise<Written<Project>> {
  const value = await projectWithin(tx, id);
  return value === null ? NOT_THERE : accepted(value);
}

/** One status a day: a second one of the same day takes the first one's place. */
async function setStatus(tx: Tx, projectId: string, status: ProjectStatus, from: LocalDate): Promise<void> {
  const where = { projectId, fromDay: dateOf(from) };
  const { count } = await tx.projectStatus.updateMany({ where, data: { status } });
  if (count === 0) await tx.projectStatus.create({ data: { ...where, status }, select: { id: true } });
}

/** Faults: name-taken. A status without a day holds from today. */
export function addProject(scope: Scope, id: string, entry: ProjectEntry): Promise<Written<Project>> {
  const hash = entryHash(entry);
  return inWorkspace(scope, (tx) =>
    createdOnce(tx, { table: "project", id, hash, stored: () => projectWithin(tx, id) }, async () => {
      const faults = await nameFaults(tx, "project", entry.name, id);
      if (faults.length > 0) return refused(faults);
      const workspace = await workspaceWithin(tx);
      const { name, budget, note, status, statusFrom } = entry;
      await tx.project.create({
        data: {
          id,
          name,
          budget: digitsOrNull(budget),
          budgetCurrency: budget === null ? null : workspace.homeCurrency,
          note,
          entryHash: hash,
        },
        select: { id: true },
      });
      await setStatus(tx, id, status, statusFrom ?? todayOf(workspace));
      return stored(tx, id);
    }),
  );
}

/** Faults: name-taken. A status holds from statusFrom, or from today; statuses of other days stay. */
export function changeProject(scope: Scope, id: string, patch: ProjectPatch): Promise<Written<Project>> {
  return inWorkspace(scope, async (tx) => {
    if ((await projectWithin(tx, id)) === null) return NOT_THERE;
    const { name, budget, note, status, statusFrom } = patch;
    const faults = name === undefined ? [] : await nameFaults(tx, "project", name, id);
    if (faults.length > 0) return refused(faults);
    const workspace = await workspaceWithin(tx);
    const currency = budget === null ? null : workspace.homeCurrency;
    const figures = budget === undefined ? {} : { budget: digitsOrNull(budget), budgetCurrency: currency };
    await tx.project.updateMany({ where: { id }, data: { name, note, ...figures } });
    if (status !== undefined) await setStatus(tx, id, status, statusFrom ?? todayOf(workspace));
    return stored(tx, id);
  });
}
