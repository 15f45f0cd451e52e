-- What salvage took to get and how it was counted, what is asked for a lot, and what a project paid to be rid of waste. Part 1
-- follows prisma/schema.prisma; part 2 is what the database itself refuses.

-- CreateTable
CREATE TABLE "salvage" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "lot_id" UUID NOT NULL,
    "reclaimed_from" TEXT,
    "project_id" UUID,
    "hours" DECIMAL NOT NULL,
    "hourly_rate" DECIMAL NOT NULL,
    "hauling" DECIMAL NOT NULL,
    "purchase_price" DECIMAL NOT NULL,
    "tally" JSONB NOT NULL DEFAULT '[]',

    CONSTRAINT "salvage_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "asking_price" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL,
    "lot_id" UUID NOT NULL,
    "amount" DECIMAL,
    "currency" TEXT NOT NULL,
    "since" DATE NOT NULL,
    "note" TEXT,
    "sequence" BIGSERIAL NOT NULL,
    "entry_hash" TEXT NOT NULL,
    "undone_at" TIMESTAMPTZ(6),

    CONSTRAINT "asking_price_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "disposal" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "on_day" DATE NOT NULL,
    "fee_basis" TEXT NOT NULL,
    "fee" DECIMAL NOT NULL,
    "least" DECIMAL,
    "loads" DECIMAL,
    "hauling" DECIMAL NOT NULL,
    "currency" TEXT NOT NULL,
    "tax_included" BOOLEAN NOT NULL,
    "tax_region" TEXT,
    "weight" DECIMAL,
    "weight_unit" TEXT,
    "material_id" UUID,
    "quantity" DECIMAL,
    "note" TEXT,
    "sequence" BIGSERIAL NOT NULL,
    "entry_hash" TEXT NOT NULL,
    "undone_at" TIMESTAMPTZ(6),

    CONSTRAINT "disposal_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateIndex
CREATE UNIQUE INDEX "salvage_workspace_id_lot_id_key" ON "salvage"("workspace_id", "lot_id");

-- CreateIndex
CREATE INDEX "asking_price_workspace_id_lot_id_idx" ON "asking_price"("workspace_id", "lot_id");

-- CreateIndex
CREATE INDEX "disposal_workspace_id_project_id_idx" ON "disposal"("workspace_id", "project_id");

-- AddForeignKey
ALTER TABLE "salvage" ADD CONSTRAINT "salvage_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "salvage" ADD CONSTRAINT "salvage_workspace_id_lot_id_fkey" FOREIGN KEY ("workspace_id", "lot_id") REFERENCES "lot"("workspace_id", "id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "salvage" ADD CONSTRAINT "salvage_workspace_id_project_id_fkey" FOREIGN KEY ("workspace_id", "project_id") REFERENCES "project"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "asking_price" ADD CONSTRAINT "asking_price_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "asking_price" ADD CONSTRAINT "asking_price_workspace_id_lot_id_fkey" FOREIGN KEY ("workspace_id", "lot_id") REFERENCES "lot"("workspace_id", "id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "disposal" ADD CONSTRAINT "disposal_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "disposal" ADD CONSTRAINT "disposal_workspace_id_project_id_fkey" FOREIGN KEY ("workspace_id", "project_id") REFERENCES "project"("workspace_id", "id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "disposal" ADD CONSTRAINT "disposal_workspace_id_material_id_fkey" FOREIGN KEY ("workspace_id", "material_id") REFERENCES "material"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- Part 2.

ALTER TABLE salvage
  ADD CONSTRAINT salvage_from CHECK (reclaimed_from <> '' AND (reclaimed_from IS NOT NULL OR project_id IS NOT NULL)),
  ADD CONSTRAINT salvage_money CHECK (hours >= 0 AND hours < 1e15 AND hourly_rate >= 0 AND hourly_rate < 1e15
    AND hauling >= 0 AND hauling < 1e15 AND purchase_price >= 0 AND purchase_price < 1e15),
  ADD CONSTRAINT salvage_tally CHECK (jsonb_typeof(tally) = 'array');

ALTER TABLE asking_price
  ADD CONSTRAINT asking_price_amount CHECK (amount > 0 AND amount < 1e15),
  ADD CONSTRAINT asking_price_currency CHECK (currency ~ '^[A-Z]{3}$'),
  ADD CONSTRAINT asking_price_since CHECK (since >= '1990-01-01');

ALTER TABLE disposal
  ADD CONSTRAINT disposal_kind CHECK (kind IN ('clean-wood', 'painted-or-treated-wood', 'drywall', 'masonry-and-concrete',
    'metal', 'roofing', 'mixed', 'hazardous')),
  ADD CONSTRAINT disposal_day CHECK (on_day >= '1990-01-01'),
  ADD CONSTRAINT disposal_fee CHECK (fee_basis IN ('tonne', 'load', 'flat') AND fee >= 0 AND fee < 1e15),
  ADD CONSTRAINT disposal_least CHECK (least IS NULL OR (fee_basis = 'tonne' AND least > 0 AND least < 1e15)),
  ADD CONSTRAINT disposal_loads CHECK ((fee_basis = 'load') = (loads IS NOT NULL) AND (loads IS NULL OR (loads > 0
    AND loads < 1e15))),
  ADD CONSTRAINT disposal_hauling CHECK (hauling >= 0 AND hauling < 1e15),
  ADD CONSTRAINT disposal_currency CHECK (currency ~ '^[A-Z]{3}$'),
  ADD CONSTRAINT disposal_weight CHECK ((weight IS NULL) = (weight_unit IS NULL) AND (weight IS NULL OR (weight > 0
    AND weight < 1e15 AND weight_unit IN ('kilogram', 'tonne', 'pound')))),
  ADD CONSTRAINT disposal_of_material CHECK ((material_id IS NULL) = (quantity IS NULL) AND (quantity IS NULL
    OR (quantity > 0 AND quantity < 1e15)));

-- The change log, one workspace at a time, and the role the program works as: as for every table (ground, part 2). An asking
-- price is never rewritten: it is undone, or a newer one counts.

DO $$
DECLARE
  noun text;
BEGIN
  FOREACH noun IN ARRAY ARRAY['salvage', 'asking_price', 'disposal']
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
    GRANT SELECT, INSERT, UPDATE ON salvage, disposal TO dunnage_app;
    GRANT SELECT, INSERT ON asking_price TO dunnage_app;
    GRANT UPDATE (undone_at) ON asking_price TO dunnage_app;
    GRANT USAGE ON SEQUENCE asking_price_sequence_seq, disposal_sequence_seq TO dunnage_app;
  END IF;
END $$;
