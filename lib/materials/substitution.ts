import type { Decimal } from "../decimal.ts";
import type { FaultCode } from "../fault.ts";
import { inUnit, sameMeasure } from "../measure/in-unit.ts";
import { systemOf } from "../measure/unit-system.ts";
import type { Quantity } from "../measure/units.ts";
import { gradeStanding, treatmentServes } from "./identity.ts";
import type { DimensionName, Material } from "./material.ts";

/** What two materials were compared by. */
export type Compared =
  | "category"
  | "doorKind"
  | "grade"
  | "hand"
  | "treatment"
  | Extract<
      DimensionName,
      "thickness" | "nominalThickness" | "nominalWidth" | "width" | "length" | "jambDepth"
    >;

/** Why a material may not stand in for another. `by`: the figure or property that tells. */
export type SubstitutionRefusal = Readonly<{
  code: Extract<FaultCode, `alternative-${string}`>;
  by: Compared;
}>;

type Kind = Pick<Material, "category" | "dimensions" | "identity">;

function refused(code: SubstitutionRefusal["code"], by: Compared): SubstitutionRefusal[] {
  return [{ code, by }];
}

/** How much larger (below zero: smaller) what is offered measures; null where one of the two is not known. */
function difference(asked: Quantity | undefined, offered: Quantity | undefined): Decimal | null {
  if (asked === undefined || offered === undefined || !sameMeasure(asked.unit, offered.unit)) return null;
  return inUnit(offered, asked.unit).minus(asked.value);
}

/** The same of two names; null where a metric one meets one in inches: 12.5 mm is neither 15/32 nor 1/2 by itself. */
function compared(asked: Quantity | undefined, offered: Quantity | undefined): Decimal | null {
  if (asked === undefined || offered === undefined) return null;
  return systemOf(asked.unit) === systemOf(offered.unit) ? difference(asked, offered) : null;
}

function notSmaller(name: "nominalThickness" | "nominalWidth", asked: Kind, offered: Kind) {
  const size = asked.dimensions[name];
  if (size === undefined) return [];
  const more = compared(size, offered.dimensions[name]);
  if (more === null) return refused("alternative-not-comparable", name);
  return more.isNegative() ? refused("alternative-thinner", name) : [];
}

/** A panel is as thick as the category stamped on it; where none is known, or they are named in two systems, as measured. */
function panelNotThinner({ dimensions: asked }: Kind, { dimensions: offered }: Kind): SubstitutionRefusal[] {
  if (asked.nominalThickness === undefined && asked.thickness === undefined) return [];
  const [named, otherNamed] = [
    asked.nominalThickness ?? asked.thickness,
    offered.nominalThickness ?? offered.thickness,
  ];
  const more = compared(named, otherNamed) ?? difference(asked.thickness, offered.thickness);
  if (more === null) return refused("alternative-not-comparable", "thickness");
  return more.isNegative() ? refused("alternative-thinner", "thickness") : [];
}

function gradeServes({ identity: asked }: Kind, { identity: offered }: Kind): SubstitutionRefusal[] {
  if (asked.grade === undefined) return [];
  if (offered.grade === undefined) return refused("alternative-not-comparable", "grade");
  const standing = gradeStanding(asked.grade, offered.grade);
  if (standing === "lower") return refused("alternative-lower-grade", "grade");
  return standing === "not-comparable" ? refused("alternative-not-comparable", "grade") : [];
}

function sameSize(name: "width" | "length" | "jambDepth", asked: Kind, offered: Kind): SubstitutionRefusal[] {
  const size = asked.dimensions[name];
  if (size === undefined) return [];
  const off = difference(size, offered.dimensions[name]);
  if (off === null) return refused("alternative-not-comparable", name);
  if (off.isZero()) return [];
  return refused(name === "jambDepth" ? "alternative-wrong-jamb" : "alternative-wrong-size", name);
}

function hungAlike({ identity: asked }: Kind, { identity: offered }: Kind): SubstitutionRefusal[] {
  const { hand, doorKind } = asked;
  const kind =
    doorKind === undefined || doorKind === offered.doorKind
      ? []
      : refused(
          offered.doorKind === undefined ? "alternative-not-comparable" : "alternative-wrong-kind",
          "doorKind",
        );
  if (hand === undefined || hand === offered.hand) return kind;
  const other = offered.hand === undefined ? "alternative-not-comparable" : "alternative-wrong-hand";
  return [...kind, ...refused(other, "hand")];
}

/** What goes into one opening: the same size, hand, jamb, and with or without its frame. */
function fitsOpening(asked: Kind, offered: Kind): SubstitutionRefusal[] {
  const sizes = (["width", "length", "jambDepth"] as const).flatMap((name) => sameSize(name, asked, offered));
  return [...hungAlike(asked, offered), ...sizes];
}

/**
 * Every reason why one material may not stand in for another, none hidden by the first; none: it is the buyer's to decide.
 *     another category (where both are known); panels: thinner; lumber: a smaller nominal size; a lower grade, or one of
 *     another family; a treatment that does not do the work; doors and windows: another size, hand, jamb, or slab for
 *     prehung
 * What the required material does not say is not compared; what it says and the other does not is "not comparable": it
 * is never taken for granted. Units: sizes in any; names in two systems of units are not mapped onto each other.
 * Source: rules.md R4; the span tables allow no thinner panel and no lower grade on price (IRC R503, read).
 */
export function substitutionRefusals(asked: Kind, offered: Kind): readonly SubstitutionRefusal[] {
  const known = asked.category !== "other" && offered.category !== "other";
  if (known && asked.category !== offered.category) return refused("alternative-wrong-kind", "category");
  const treatment = treatmentServes(asked.identity.treatment, offered.identity.treatment)
    ? []
    : refused("alternative-wrong-treatment", "treatment");
  const both = [...gradeServes(asked, offered), ...treatment];
  if (asked.category === "sheet-goods") return [...panelNotThinner(asked, offered), ...both];
  if (asked.category === "doors" || asked.category === "windows")
    return [...fitsOpening(asked, offered), ...both];
  if (asked.category !== "dimensional-lumber") return both;
  const sizes = (["nominalThickness", "nominalWidth"] as const).flatMap((name) =>
    notSmaller(name, asked, offered),
  );
  return [...sizes, ...both];
}

/** Whether a door or window goes into the opening another was meant for: never one of the wrong hand or jamb. */
export function goesIntoOpening(asked: Kind, offered: Kind): boolean {
  const isOpening = asked.category === "doors" || asked.category === "windows";
  return !isOpening || fitsOpening(asked, offered).length === 0;
}
