import { getTranslations } from "next-intl/server";
import type { ReactNode } from "react";
import { More } from "../../../_ui/more.tsx";
import type { LotContext } from "../lot-context.ts";
import { CountForm } from "./count-form.tsx";
import { ReturnForm } from "./return-form.tsx";
import { SellForm } from "./sell-form.tsx";
import { StoringForm } from "./storing-form.tsx";
import { TransferForm } from "./transfer-form.tsx";
import { UnusedForm } from "./unused-form.tsx";
import { WriteOffForm } from "./write-off-form.tsx";

/** What is rarer with a lot, folded away: returned, sold, written off, counted, moved to another project, unused, storage money. */
export async function MoreWithLot({ children, ...lot }: LotContext & Readonly<{ children: ReactNode }>) {
  const t = await getTranslations("lotLife");
  return (
    <More title={t("moreTitle")}>
      <ReturnForm {...lot} />
      <SellForm {...lot} />
      <WriteOffForm {...lot} />
      <UnusedForm {...lot} />
      <TransferForm {...lot} />
      <CountForm {...lot} />
      <StoringForm {...lot} />
      {children}
    </More>
  );
}
