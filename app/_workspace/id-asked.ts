import { notFound } from "next/navigation";

const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;

/** Whether a text of an address can be an id at all: nothing else is asked of the database. */
export function isId(text: string | undefined): text is string {
  return text !== undefined && UUID.test(text);
}

/** The id in an address; what is no id has no page. */
export function idAsked(text: string): string {
  if (!UUID.test(text)) notFound();
  return text.toLowerCase();
}
