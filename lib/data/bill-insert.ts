import "server-only";
import type { Bill } from "../bills/bill.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { writtenAmount, writtenShares } from "./bill-rows.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { dateOf, dateOrNull, digits, digitsOrNull } from "./rows.ts";

/** What was made of one line, by id. */
export type LineMade = Readonly<{
  observationId: string | null;
  lotId: string | null;
  stockEventId: string | null;
}>;

type Placed = Readonly<{
  id: string;
  hash: string;
  bill: Bill;
  /** What was made of each line; stored before the bill, which refers to it. */
  made: readonly LineMade[];
  homeCurrency: CurrencyCode;
}>;

/** The document, its lines in their places. It has been checked. */
export async function insertBill(tx: Tx, { id, hash, bill, made, homeCurrency }: Placed): Promise<void> {
  await tx.bill.create({
    data: {
      id,
      kind: bill.kind,
      storeId: bill.storeId,
      onDay: dateOf(bill.on),
      untilDay: dateOrNull(bill.until),
      currency: bill.currency,
      taxRegion: bill.taxRegion,
      taxIncluded: bill.taxIncluded,
      taxRounding: bill.taxRounding,
      shareBy: bill.shareBy,
      paidInCash: bill.paidInCash,
      fees: bill.fees.map(writtenShares),
      deposits: bill.deposits.map(writtenAmount),
      rebates: bill.rebates.map(writtenAmount),
      printedTotal: digitsOrNull(bill.printedTotal),
      paidHome: digitsOrNull(bill.paidHome),
      paidHomeCurrency: bill.paidHome === null ? null : homeCurrency,
      anyQuantity: bill.anyQuantity,
      receivedOn: dateOrNull(bill.receivedOn),
      storedAt: bill.storedAt,
      note: bill.note,
      entryHash: hash,
    },
    select: { id: true },
  });
  await tx.billLine.createMany({
    data: bill.lines.map((line, place) => ({
      billId: id,
      place,
      materialId: line.materialId,
      text: line.text,
      quantity: digits(line.quantity),
      unit: line.unit,
      priceAmount: digits(line.price.amount),
      priceQuantity: digits(line.price.per.quantity),
      priceUnit: line.price.per.unit,
      discountAmount: digitsOrNull(line.discount?.amount ?? null),
      discountPercent: digitsOrNull(line.discount?.percent ?? null),
      exemptFrom: [...line.exemptFrom],
      fees: line.fees.map(writtenShares),
      returned: line.returned === null ? Prisma.DbNull : writtenShares(line.returned),
      keepPrice: line.keepPrice,
      keepLot: line.keepLot,
      observationId: made[place]?.observationId ?? null,
      lotId: made[place]?.lotId ?? null,
      stockEventId: made[place]?.stockEventId ?? null,
    })),
  });
}
