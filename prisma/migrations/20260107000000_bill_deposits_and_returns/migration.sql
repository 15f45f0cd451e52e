-- What becomes of a bill's deposits, goods handed back out of a lot, and a lot's taxes as its receipt shows them. Part 1
-- follows prisma/schema.prisma; part 2 is what the database itself refuses.

-- AlterTable
ALTER TABLE "bill_line" ADD COLUMN     "stock_event_id" UUID;

-- AlterTable
ALTER TABLE "lot" ADD COLUMN     "taxes" JSONB;

-- CreateTable
CREATE TABLE "deposit_event" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL,
    "bill_id" UUID NOT NULL,
    "deposit" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "amount" DECIMAL NOT NULL,
    "on_day" DATE NOT NULL,
    "note" TEXT,
    "sequence" BIGSERIAL NOT NULL,
    "entry_hash" TEXT NOT NULL,
    "undone_at" TIMESTAMPTZ(6),

    CONSTRAINT "deposit_event_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateIndex
CREATE INDEX "deposit_event_workspace_id_bill_id_idx" ON "deposit_event"("workspace_id", "bill_id");

-- CreateIndex
CREATE INDEX "bill_line_workspace_id_stock_event_id_idx" ON "bill_line"("workspace_id", "stock_event_id");

-- AddForeignKey
ALTER TABLE "bill_line" ADD CONSTRAINT "bill_line_workspace_id_stock_event_id_fkey" FOREIGN KEY ("workspace_id", "stock_event_id") REFERENCES "stock_event"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "deposit_event" ADD CONSTRAINT "deposit_event_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "deposit_event" ADD CONSTRAINT "deposit_event_workspace_id_bill_id_fkey" FOREIGN KEY ("workspace_id", "bill_id") REFERENCES "bill"("workspace_id", "id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- Part 2.

ALTER TABLE lot
  ADD CONSTRAINT lot_taxes CHECK (taxes IS NULL OR jsonb_typeof(taxes) = 'array');

ALTER TABLE deposit_event
  ADD CONSTRAINT deposit_event_place CHECK (deposit >= 0),
  ADD CONSTRAINT deposit_event_kind CHECK (kind IN ('given-back', 'forfeited')),
  ADD CONSTRAINT deposit_event_amount CHECK (amount > 0 AND amount < 1e15),
  ADD CONSTRAINT deposit_event_day CHECK (on_day >= '1990-01-01');

-- The change log, one workspace at a time, and the role the program works as: as for every table (ground, part 2). What
-- was recorded is never rewritten: it is undone.

CREATE TRIGGER deposit_event_logged_added AFTER INSERT ON deposit_event REFERENCING NEW TABLE AS added
  FOR EACH STATEMENT EXECUTE FUNCTION log_added();
CREATE TRIGGER deposit_event_logged_changed AFTER UPDATE ON deposit_event REFERENCING OLD TABLE AS earlier
  NEW TABLE AS later FOR EACH STATEMENT EXECUTE FUNCTION log_changed();
CREATE TRIGGER deposit_event_logged_removed AFTER DELETE ON deposit_event REFERENCING OLD TABLE AS removed
  FOR EACH STATEMENT EXECUTE FUNCTION log_removed();
ALTER TABLE deposit_event ENABLE ROW LEVEL SECURITY, FORCE ROW LEVEL SECURITY;
CREATE POLICY own_workspace ON deposit_event USING (workspace_id = current_workspace())
  WITH CHECK (workspace_id = current_workspace());

DO $$
BEGIN
  IF EXISTS (SELECT 1 FROM pg_roles WHERE rolname = 'dunnage_app') THEN
    GRANT SELECT, INSERT ON deposit_event TO dunnage_app;
    GRANT UPDATE (undone_at) ON deposit_event TO dunnage_app;
    GRANT USAGE ON SEQUENCE deposit_event_sequence_seq TO dunnage_app;
  END IF;
END $$;
