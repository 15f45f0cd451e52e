import { notFound } from "next/navigation";

const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;

/** The id in an address; what is no id has no page. */
export function idAsked(text: string): string {
  if (!UUID.test(text)) notFound();
  return text.toLowerCase();
}
