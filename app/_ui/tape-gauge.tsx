import style from "./tape-gauge.module.css";

/** A measuring tape with a board laid along it: how much of the whole is there. share: 0 to 1; label says it in words. */
export function TapeGauge({ share, label }: Readonly<{ share: number; label: string }>) {
  return (
    <span className={style.gauge} role="img" aria-label={label}>
      <span className={style.board} style={{ inlineSize: `${Math.min(Math.max(share, 0), 1) * 100}%` }} />
    </span>
  );
}
