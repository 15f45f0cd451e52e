/** How much stands in a workspace under a bench: a first year, several busy years, more than one outfit will ever have. */
export type Size = Readonly<{
  name: "S" | "M" | "L";
  materials: number;
  stores: number;
  prices: number;
  projects: number;
  requirements: number;
  lots: number;
}>;

export const SMALL: Size = {
  name: "S",
  materials: 40,
  stores: 6,
  prices: 2_000,
  projects: 4,
  requirements: 80,
  lots: 150,
};
export const MEDIUM: Size = {
  name: "M",
  materials: 500,
  stores: 20,
  prices: 100_000,
  projects: 80,
  requirements: 1_600,
  lots: 5_000,
};
export const LARGE: Size = {
  name: "L",
  materials: 2_000,
  stores: 50,
  prices: 1_000_000,
  projects: 500,
  requirements: 10_000,
  lots: 30_000,
};
