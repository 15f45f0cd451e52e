import type { LocalDate } from "../calendar/local-date.ts";
import type { Category } from "../materials/material.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import type { AisleFacts, AisleMaterial, AisleStore } from "./aisle-facts.ts";
import type { PlainLows } from "./aisle-lows.ts";
import type { PlainSeen } from "./aisle-seen.ts";

/** Grows when the shape changes: a phone throws an older one away and fetches anew; what it has to send stays. */
export const SNAPSHOT_VERSION = 1;

export type SnapshotStore = AisleStore &
  Readonly<{ distanceKm: string | null; archivedOn: LocalDate | null }>;

/** A need of the material that is still open. Its own purchase units. */
export type PlainNeed = Readonly<{
  requirementId: string;
  projectId: string;
  open: string;
  neededBy: LocalDate;
  acceptsUsed: boolean;
}>;

export type PlainPaid = Readonly<{
  lotId: string;
  each: string;
  on: LocalDate;
  storeId: string | null;
  projectIds: readonly string[];
}>;

export type SnapshotMaterial = Readonly<{
  id: string;
  name: string;
  category: Category;
  unit: PurchaseUnit;
  dimensions: AisleMaterial["dimensions"];
  exemptFrom: readonly string[];
  recheckDays: number | null;
  /** The day it was last seen anywhere: the form lists the newest first. */
  lastSeen: LocalDate | null;
  /** The few prices that decide what it is to be had for. */
  seen: readonly PlainSeen[];
  needs: readonly PlainNeed[];
  paid: PlainPaid | null;
  lows: PlainLows;
}>;

/**
 * All the aisle form works from when there is no server: text, numbers and nothing else, of one workspace at one moment.
 * Figures come out of it as they do on the server, by the same rules, from the day it was taken on.
 */
export type AisleSnapshot = Omit<AisleFacts, "materials" | "stores"> &
  Readonly<{
    version: typeof SNAPSHOT_VERSION;
    /** The instant it was taken, ISO 8601. */
    takenAt: string;
    workspace: Readonly<{ id: string; kind: "owner" | "demo"; name: string; timeZone: string }>;
    recheckDays: number;
    chosenSources: Readonly<Partial<Record<CurrencyCode, string>>>;
    regionNames: readonly Readonly<{ code: string; name: string }>[];
    stores: readonly SnapshotStore[];
    projects: readonly Readonly<{ id: string; name: string }>[];
    materials: readonly SnapshotMaterial[];
  }>;
