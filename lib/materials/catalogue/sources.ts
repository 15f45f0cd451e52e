/** Where the catalogue's figures were read. "From memory" and "common practice" are said where nothing was. */
export const MEMORY = "from memory";
export const PRACTICE = "common practice, no source";

/** What was read of one of these, or derived from it by arithmetic alone. */
export const DRESSED = "Softwood Lumber Dimensions, an engineering reference page after PS 20 (read)";
export const DENSITY =
  "35 lb per cubic foot, Softwood Lumber Dimensions page after PS 20 (read); wet or treated wood weighs more (from memory)";
export const PLYWOOD_WEIGHT =
  "3 lb per square foot for each inch of thickness, quoted in several weight articles (read); one listed product is 12 % lighter";
export const OSB_WEIGHT = "building-materials weights guide (read)";
export const OSB_716_WEIGHT = "1.4 lb per square foot, from memory; one weight article says 45 lb (read)";
export const GYPSUM_WEIGHT =
  "drywall weight articles, per square foot (read); other pages say 54.4 and 57 lb for a 1/2 in sheet of 4x8";
export const LIFT_COUNT =
  "lift-count article (read); another page of it goes by 2,000 board feet instead, so count what is delivered";
export const LIFT_BY_BOARD_FEET =
  "lift-count article, 2,000 board feet a lift (read); the same pages count otherwise too, so count what is delivered";
export const BUNDLES =
  "roofing reference articles: three bundles a square, heavier shingles four or five (read)";
export const SHINGLE_WEIGHT = "roofing reference articles: 75 to 80 lb a bundle (read), the heavier taken";
export const SHINGLE_SIZE = "asphalt shingle description page (read); exposure from memory";
export const CAP_RUN = "20 to 33 ft a bundle, from memory, the shorter taken: read the wrapper";
export const FELT =
  "felt coverage article: 36 in x 144 ft is 432 square feet, sold as 400 net of laps (read)";
export const PANEL_COVER =
  "metal panel coverage guides (read); they disagree on what 36 in means, so measure the panel";
export const BRICK = "brick estimating page: 6.75 a square foot, by a module of 8 x 2-2/3 in (read)";
export const MODULE = "its size with the joint (derived)";
export const BAG_YIELD = "concrete bag yield articles, two (read)";
export const CEMENT_LIFE =
  "magazine answer and cement storage pages: from 3 months to without limit if dry (read), the shortest taken";
export const NAIL_COUNT = "nails per pound tables, two (read); they differ by about 5 %";
export const TUBE_LIFE = "9 to 18 months unopened, from memory, the shortest taken: read the date code";
export const SIDING_SQUARE = "a square is 100 square feet exposed; two to a carton, from memory";
export const AS_SOLD = "what it is sold by";
