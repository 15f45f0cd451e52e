import Link from "next/link";
import { Button } from "./button.client.tsx";
import style from "./day-switch.module.css";

export type DaySwitchProps = Readonly<{
  /** The page's own address; the day goes into its query as `asOf`. */
  path: string;
  day: string;
  today: string;
  words: Readonly<{ label: string; show: string; back: string }>;
}>;

/** Chooses the day a page is read as of. A plain GET form: works without JavaScript, and the address can be kept. */
export function DaySwitch({ path, day, today, words }: DaySwitchProps) {
  return (
    <form key={day} action={path} method="get" className={style.switch}>
      <label htmlFor="as-of" className={style.label}>
        {words.label}
      </label>
      <input id="as-of" type="date" name="asOf" defaultValue={day} max={today} className={style.day} />
      <Button kind="plain">{words.show}</Button>
      {day === today ? null : (
        <Link href={path} className={style.back}>
          {words.back}
        </Link>
      )}
    </form>
  );
}
