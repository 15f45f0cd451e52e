/** A code made just now: what to type, the address that carries it, and that as a drawing. */
export type ShownCode = Readonly<{
  code: string;
  address: string;
  plainAddress: string;
  path: string;
  size: number;
}>;

/** The action of a form that makes a code: null when it was not made. */
export type CodeAction = (previous: ShownCode | null, form: FormData) => Promise<ShownCode | null>;
