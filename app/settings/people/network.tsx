import { getTranslations } from "next-intl/server";
import { openness } from "../../_gate/caller-of.ts";
import { Part } from "../../_ui/page-head.tsx";
import { qrPath } from "../../sign-in/qr-path.ts";
import { Square } from "../../sign-in/square.tsx";

/** Whether other devices can reach the program, where, and how a phone comes to trust it. */
export async function Network() {
  const t = await getTranslations("signIn.people");
  const s = await getTranslations("signIn");
  const { origins } = openness();
  const [address] = origins;
  const fingerprint = process.env.DUNNAGE_AUTHORITY_FINGERPRINT;
  if (address === undefined) {
    return (
      <Part title={t("network")}>
        <p>{t("networkClosed")}</p>
      </Part>
    );
  }
  return (
    <Part title={t("network")}>
      <p>{t("networkOpen", { address: origins.join(", ") })}</p>
      <Square {...qrPath(address)} label={s("square", { address })} />
      {fingerprint ? (
        <p>{t("trust", { address: address.replace("https://", "http://"), fingerprint })}</p>
      ) : null}
    </Part>
  );
}
