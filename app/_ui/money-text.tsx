import { useLocale } from "next-intl";
import type { ReactNode } from "react";
import { money } from "../../lib/money/money.ts";
import { moneyText, type PlainMoney } from "../../lib/show/money-text.ts";
import style from "./small.module.css";

/** Figures of one width, with a slashed zero. */
export function Figure({ children }: Readonly<{ children: ReactNode }>) {
  return <span className={style.figure}>{children}</span>;
}

/** What is not known, said in words and never as 0. */
export function NotKnown({ children }: Readonly<{ children: ReactNode }>) {
  return <span className={style.unknown}>{children}</span>;
}

/** A smaller line under a figure in a table cell. */
export function Below({ children }: Readonly<{ children: ReactNode }>) {
  return <span className={style.below}>{children}</span>;
}

/** An amount in figures; the currency code in front where currencies mix. signed: "+" before a gain. */
export function MoneyText(props: Readonly<{ value: PlainMoney; code?: boolean; signed?: boolean }>) {
  const { value, code = false, signed = false } = props;
  const figures = moneyText(money(value.amount, value.currency), useLocale(), { signed });
  return (
    <span className={style.figure}>
      {code ? <span className={style.code}>{value.currency}</span> : null}
      {figures}
    </span>
  );
}
