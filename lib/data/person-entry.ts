import * as z from "zod";
import { fields, textAs } from "../entry-fields.ts";

const NAME_LENGTH = 80;
const SHORTEST_PASSWORD = 12;
const LONGEST_PASSWORD = 128;

/** What somebody is called. Errors: missing, too-long, not-text. */
function personName() {
  return textAs<string>((text) => {
    const name = text.normalize("NFC").trim();
    if (name === "") return "missing";
    return name.length > NAME_LENGTH ? "too-long" : { value: name };
  });
}

/** A password of 12 to 128 characters, taken as typed. Errors: missing, password-too-short, too-long. */
function password() {
  return textAs<string>((text) => {
    if (text === "") return "missing";
    if ([...text].length < SHORTEST_PASSWORD) return "password-too-short";
    return text.length > LONGEST_PASSWORD ? "too-long" : { value: text };
  });
}

/** Somebody new, with the code that lets them in. */
export const personEntry = fields({
  code: textAs<string>((text) => (text.trim() === "" ? "missing" : { value: text })),
  name: personName(),
  password: password(),
});
export type PersonEntry = z.output<typeof personEntry>;

/** What somebody may do. Errors: unknown-choice. */
export const roleEntry = fields({ role: z.enum(["owner", "crew", "reader"]) });
