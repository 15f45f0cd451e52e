import { getTranslations } from "next-intl/server";
import type { Person } from "../../../lib/data/people.ts";
import { Button } from "../../_ui/button.client.tsx";
import field from "../../_ui/field.module.css";
import { Table } from "../../_ui/table.tsx";
import { changeRoleForm, removePersonForm } from "./actions.ts";

/** Everybody who may come in, with their role to change. */
export async function PeopleTable({ people }: Readonly<{ people: readonly Person[] }>) {
  const t = await getTranslations("signIn.people");
  const s = await getTranslations("signIn");
  return (
    <Table
      caption={t("list")}
      captionHidden
      cards
      columns={[
        { key: "name", label: s("name") },
        { key: "role", label: t("role") },
        { key: "passkeys", label: s("passkeysTitle"), quiet: true },
        { key: "remove", label: t("remove"), quiet: true },
      ]}
      rows={people.map(({ id, name, role, passkeys }) => ({
        key: id,
        cells: [
          name,
          <form key="role" action={changeRoleForm}>
            <input type="hidden" name="personId" value={id} />
            <select
              name="role"
              defaultValue={role}
              className={field.input}
              aria-label={t("roleOf", { name })}
            >
              {(["owner", "crew", "reader"] as const).map((one) => (
                <option key={one} value={one}>
                  {s(`roles.${one}`)}
                </option>
              ))}
            </select>
            <Button kind="quiet">{t("change")}</Button>
          </form>,
          t("passkeys", { count: passkeys }),
          <form key="remove" action={removePersonForm}>
            <input type="hidden" name="personId" value={id} />
            <Button kind="quiet" label={t("removeOf", { name })}>
              {t("remove")}
            </Button>
          </form>,
        ],
      }))}
    />
  );
}
