import { getTranslations } from "next-intl/server";
import { Button } from "../../_ui/button.client.tsx";
import style from "../../_ui/day-switch.module.css";

type BasketBaseProps = Readonly<{ projectId: string; base: string; day: string; asOf: string | null }>;

/** Chooses the base day of the index. A plain GET form: works without scripts, and the address can be kept. asOf: the day the page is read as of, when it is not today. */
export async function BasketBase({ projectId, base, day, asOf }: BasketBaseProps) {
  const t = await getTranslations("basket");
  return (
    <form
      key={`${base} ${asOf}`}
      action={`/projects/${projectId}#basket`}
      method="get"
      className={style.switch}
    >
      {asOf === null ? null : <input type="hidden" name="asOf" value={asOf} />}
      <label htmlFor="basket-base" className={style.label}>
        {t("chooseBase")}
      </label>
      <input id="basket-base" type="date" name="base" defaultValue={base} max={day} className={style.day} />
      <Button kind="plain">{t("show")}</Button>
    </form>
  );
}
