import { describe, expect, test } from "vitest";
import { gradeStanding, treatmentServes } from "../../../lib/materials/identity.ts";

describe("a grade", () => {
  test.each([
    ["No. 2", "Select Structural", "as-good"],
    ["No. 2", "No. 1", "as-good"],
    ["No. 2", "No. 2", "as-good"],
    ["No. 2", "No. 3", "lower"],
    ["Construction", "Utility", "lower"],
    ["Standard", "Construction", "as-good"],
  ])("where %s is asked for, %s is %s", (asked, offered, standing) => {
    expect(gradeStanding(asked, offered)).toBe(standing);
  });

  test("of another family is neither better nor lower", () => {
    expect(gradeStanding("No. 2", "Standard")).toBe("not-comparable");
    expect(gradeStanding("Stud", "No. 1")).toBe("not-comparable");
    expect(gradeStanding("Stud", "Stud")).toBe("as-good");
  });

  test.each(["#2", "no.2", "No 2", "NO. 2 AND BETTER", "No. 2 & Btr", "#2&Btr", "2"])(
    "No. 2 is also written %s",
    (written) => {
      expect(gradeStanding("No. 2", written)).toBe("as-good");
      expect(gradeStanding(written, "No. 3")).toBe("lower");
    },
  );

  test("nobody ranked is only as good as itself", () => {
    expect(gradeStanding("Type X", "type x")).toBe("as-good");
    expect(gradeStanding("Type X", "Type C")).toBe("not-comparable");
  });
});

describe("a treatment", () => {
  test("of any kind may stand where none is asked for, and none where one is", () => {
    expect(treatmentServes(undefined, "ground-contact")).toBe(true);
    expect(treatmentServes("ground-contact", undefined)).toBe(false);
    expect(treatmentServes(undefined, undefined)).toBe(true);
  });

  test("for the ground does above it, not the other way round", () => {
    expect(treatmentServes("above-ground", "ground-contact")).toBe(true);
    expect(treatmentServes("ground-contact", "above-ground")).toBe(false);
  });

  test("against fire is none against rot", () => {
    expect(treatmentServes("ground-contact", "fire-retardant")).toBe(false);
  });

  test("stainless does what hot-dip galvanized does, not the other way round", () => {
    expect(treatmentServes("hot-dip-galvanized", "stainless")).toBe(true);
    expect(treatmentServes("stainless", "hot-dip-galvanized")).toBe(false);
  });
});
