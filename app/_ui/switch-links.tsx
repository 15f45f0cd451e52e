import Link from "next/link";
import style from "./switch-links.module.css";

export type SwitchLinksProps = Readonly<{
  label: string;
  choices: readonly Readonly<{ href: string; label: string; current: boolean }>[];
}>;

/** One of a few ways to see the same thing, each an address of its own: works without scripts. One choice: nothing to switch. */
export function SwitchLinks({ label, choices }: SwitchLinksProps) {
  if (choices.length < 2) return null;
  return (
    <div className={style.switch}>
      <span className={style.label} aria-hidden="true">
        {label}
      </span>
      <ul className={style.choices} aria-label={label}>
        {choices.map((choice) => (
          <li key={choice.href}>
            <Link href={choice.href} scroll={false} aria-current={choice.current ? "true" : undefined}>
              {choice.label}
            </Link>
          </li>
        ))}
      </ul>
    </div>
  );
}
