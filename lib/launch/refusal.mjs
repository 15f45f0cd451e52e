/** Something the person starting the program can put right; the message says what, and is all that is shown. */
export class Refusal extends Error {
  name = "Refusal";
}
