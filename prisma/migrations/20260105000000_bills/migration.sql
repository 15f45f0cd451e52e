-- Receipts and quotes as documents. Part 1 follows prisma/schema.prisma; part 2 is what the database itself refuses.

-- CreateTable
CREATE TABLE "bill" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "store_id" UUID NOT NULL,
    "on_day" DATE NOT NULL,
    "until_day" DATE,
    "currency" TEXT NOT NULL,
    "tax_region" TEXT,
    "tax_included" BOOLEAN NOT NULL,
    "tax_rounding" TEXT NOT NULL,
    "share_by" TEXT NOT NULL,
    "paid_in_cash" BOOLEAN NOT NULL,
    "fees" JSONB NOT NULL DEFAULT '[]',
    "deposits" JSONB NOT NULL DEFAULT '[]',
    "rebates" JSONB NOT NULL DEFAULT '[]',
    "printed_total" DECIMAL,
    "paid_home" DECIMAL,
    "paid_home_currency" TEXT,
    "any_quantity" BOOLEAN NOT NULL,
    "received_on" DATE,
    "stored_at" TEXT,
    "note" TEXT,
    "sequence" BIGSERIAL NOT NULL,
    "entry_hash" TEXT NOT NULL,
    "deleted_at" TIMESTAMPTZ(6),

    CONSTRAINT "bill_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "bill_line" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "bill_id" UUID NOT NULL,
    "place" INTEGER NOT NULL,
    "material_id" UUID,
    "text" TEXT,
    "quantity" DECIMAL NOT NULL,
    "unit" TEXT NOT NULL,
    "price_amount" DECIMAL NOT NULL,
    "price_quantity" DECIMAL NOT NULL,
    "price_unit" TEXT NOT NULL,
    "discount_amount" DECIMAL,
    "discount_percent" DECIMAL,
    "exempt_from" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "fees" JSONB NOT NULL DEFAULT '[]',
    "returned" JSONB,
    "keep_price" BOOLEAN NOT NULL,
    "keep_lot" BOOLEAN NOT NULL,
    "observation_id" UUID,
    "lot_id" UUID,

    CONSTRAINT "bill_line_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateIndex
CREATE INDEX "bill_workspace_id_store_id_on_day_idx" ON "bill"("workspace_id", "store_id", "on_day");

-- CreateIndex
CREATE INDEX "bill_line_workspace_id_observation_id_idx" ON "bill_line"("workspace_id", "observation_id");

-- CreateIndex
CREATE INDEX "bill_line_workspace_id_lot_id_idx" ON "bill_line"("workspace_id", "lot_id");

-- CreateIndex
CREATE UNIQUE INDEX "bill_line_workspace_id_bill_id_place_key" ON "bill_line"("workspace_id", "bill_id", "place");

-- AddForeignKey
ALTER TABLE "bill" ADD CONSTRAINT "bill_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "bill" ADD CONSTRAINT "bill_workspace_id_store_id_fkey" FOREIGN KEY ("workspace_id", "store_id") REFERENCES "store"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "bill_line" ADD CONSTRAINT "bill_line_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "bill_line" ADD CONSTRAINT "bill_line_workspace_id_bill_id_fkey" FOREIGN KEY ("workspace_id", "bill_id") REFERENCES "bill"("workspace_id", "id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "bill_line" ADD CONSTRAINT "bill_line_workspace_id_material_id_fkey" FOREIGN KEY ("workspace_id", "material_id") REFERENCES "material"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "bill_line" ADD CONSTRAINT "bill_line_workspace_id_observation_id_fkey" FOREIGN KEY ("workspace_id", "observation_id") REFERENCES "observation"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "bill_line" ADD CONSTRAINT "bill_line_workspace_id_lot_id_fkey" FOREIGN KEY ("workspace_id", "lot_id") REFERENCES "lot"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- Part 2.

ALTER TABLE bill
  ADD CONSTRAINT bill_kind CHECK (kind IN ('receipt', 'quote')),
  ADD CONSTRAINT bill_tax_rounding CHECK (tax_rounding IN ('per-bill', 'per-line', 'per-bill-together',
    'per-line-together')),
  ADD CONSTRAINT bill_share_by CHECK (share_by IN ('value', 'weight', 'count')),
  ADD CONSTRAINT bill_currency CHECK (currency ~ '^[A-Z]{3}$' AND paid_home_currency ~ '^[A-Z]{3}$'),
  ADD CONSTRAINT bill_printed_total CHECK (printed_total >= 0 AND printed_total < 1e15),
  ADD CONSTRAINT bill_paid_home CHECK (paid_home > 0 AND paid_home < 1e15),
  ADD CONSTRAINT bill_paid_home_currency CHECK ((paid_home IS NULL) = (paid_home_currency IS NULL)),
  ADD CONSTRAINT bill_day CHECK (on_day >= '1990-01-01'),
  ADD CONSTRAINT bill_until CHECK (until_day >= on_day),
  ADD CONSTRAINT bill_quote_until CHECK (kind <> 'quote' OR until_day IS NOT NULL),
  ADD CONSTRAINT bill_lists CHECK (jsonb_typeof(fees) = 'array' AND jsonb_typeof(deposits) = 'array'
    AND jsonb_typeof(rebates) = 'array');

ALTER TABLE bill_line
  ADD CONSTRAINT bill_line_place CHECK (place >= 0),
  ADD CONSTRAINT bill_line_names_something CHECK (material_id IS NOT NULL OR text <> ''),
  ADD CONSTRAINT bill_line_quantity CHECK (quantity > 0 AND quantity < 1e15),
  ADD CONSTRAINT bill_line_price CHECK (price_amount > 0 AND price_amount < 1e15 AND price_quantity > 0
    AND price_quantity < 1e15),
  ADD CONSTRAINT bill_line_discount CHECK (discount_amount >= 0 AND discount_amount < 1e15
    AND discount_percent BETWEEN 0 AND 100 AND (discount_amount IS NULL OR discount_percent IS NULL)),
  ADD CONSTRAINT bill_line_fees CHECK (jsonb_typeof(fees) = 'array'),
  ADD CONSTRAINT bill_line_makes CHECK ((observation_id IS NULL AND lot_id IS NULL) OR material_id IS NOT NULL);

-- The change log, one workspace at a time, and the role the program works as: as for every table (ground, part 2).
-- What a document says is never rewritten: lines are only added, and of a bill only its deletion changes.

DO $$
DECLARE
  noun text;
BEGIN
  FOREACH noun IN ARRAY ARRAY['bill', 'bill_line']
  LOOP
    EXECUTE format('CREATE TRIGGER %1$I_logged_added AFTER INSERT ON %1$I REFERENCING NEW TABLE AS added
      FOR EACH STATEMENT EXECUTE FUNCTION log_added()', noun);
    EXECUTE format('CREATE TRIGGER %1$I_logged_changed AFTER UPDATE ON %1$I REFERENCING OLD TABLE AS earlier
      NEW TABLE AS later FOR EACH STATEMENT EXECUTE FUNCTION log_changed()', noun);
    EXECUTE format('CREATE TRIGGER %1$I_logged_removed AFTER DELETE ON %1$I REFERENCING OLD TABLE AS removed
      FOR EACH STATEMENT EXECUTE FUNCTION log_removed()', noun);
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY, FORCE ROW LEVEL SECURITY', noun);
    EXECUTE format('CREATE POLICY own_workspace ON %I USING (workspace_id = current_workspace())
      WITH CHECK (workspace_id = current_workspace())', noun);
  END LOOP;
END $$;

DO $$
BEGIN
  IF EXISTS (SELECT 1 FROM pg_roles WHERE rolname = 'dunnage_app') THEN
    GRANT SELECT, INSERT ON bill, bill_line TO dunnage_app;
    GRANT UPDATE (deleted_at) ON bill TO dunnage_app;
    GRANT USAGE ON SEQUENCE bill_sequence_seq TO dunnage_app;
  END IF;
END $$;
