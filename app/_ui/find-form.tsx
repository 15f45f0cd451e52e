import Link from "next/link";
import { Button } from "./button.client.tsx";
import { type Choice, Options } from "./choice-field.client.tsx";
import fields from "./field.module.css";
import style from "./find-form.module.css";

export type FindFormProps = Readonly<{
  path: string;
  words: Readonly<{ find: string; hint: string; kind: string; show: string; clear: string }>;
  typed: string;
  kind: string;
  kinds: readonly Choice[];
}>;

/** Finds in a list by words and by kind. A plain GET form: works without scripts, and the address can be kept. */
export function FindForm({ path, words, typed, kind, kinds }: FindFormProps) {
  return (
    <search>
      <form key={`${kind} ${typed}`} action={path} method="get" className={style.form}>
        <label className={style.field}>
          <span>{words.find}</span>
          <input
            type="search"
            name="find"
            className={fields.input}
            defaultValue={typed}
            placeholder={words.hint}
            autoComplete="off"
          />
        </label>
        <label className={style.field}>
          <span>{words.kind}</span>
          <select name="category" className={fields.input} defaultValue={kind}>
            <Options choices={kinds} />
          </select>
        </label>
        <Button kind="plain">{words.show}</Button>
        {typed === "" && kind === "" ? null : (
          <Link href={path} className={style.clear}>
            {words.clear}
          </Link>
        )}
      </form>
    </search>
  );
}
