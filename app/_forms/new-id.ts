import { v7 } from "uuid";

/** An id for the entry a form will make: made once when the page is drawn, so that sending twice makes one entry. */
export function newId(): string {
  return v7();
}
