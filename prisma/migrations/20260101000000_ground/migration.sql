-- Part 1 (tables, keys, indexes) follows prisma/schema.prisma. Part 2 holds what the database itself refuses: bad values,
-- another workspace's rows, a rewritten history, stock that does not exist. Runs on PostgreSQL 15 and newer.

-- The workspace a transaction works in (lib/data/client.ts sets it); null outside of one, and then nothing is visible.
CREATE FUNCTION current_workspace() RETURNS uuid LANGUAGE sql STABLE PARALLEL SAFE
  AS $$ SELECT nullif(current_setting('app.workspace', true), '')::uuid $$;

-- CreateTable
CREATE TABLE "workspace" (
    "id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "home_currency" TEXT NOT NULL,
    "tax_region" TEXT NOT NULL,
    "recheck_days" INTEGER NOT NULL DEFAULT 30,
    "time_zone" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "workspace_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "registration" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "tax" TEXT NOT NULL,
    "from_day" DATE,
    "until_day" DATE,

    CONSTRAINT "registration_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "money_rate" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "percent" DECIMAL NOT NULL,
    "from_day" DATE,

    CONSTRAINT "money_rate_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "rate_source" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "currency" TEXT NOT NULL,
    "source" TEXT NOT NULL,

    CONSTRAINT "rate_source_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "tax_region" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "country" TEXT,
    "complete_from" DATE NOT NULL,

    CONSTRAINT "tax_region_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "tax_component" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "region_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "rate_percent" DECIMAL NOT NULL,
    "from_day" DATE NOT NULL,
    "until_day" DATE,
    "base" TEXT NOT NULL,
    "recoverable" BOOLEAN NOT NULL,
    "evidence" TEXT NOT NULL,

    CONSTRAINT "tax_component_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "tax_confirmation" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "region" TEXT NOT NULL,
    "component" TEXT NOT NULL,
    "from_day" DATE NOT NULL,

    CONSTRAINT "tax_confirmation_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "exchange_rate" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "on_day" DATE NOT NULL,
    "base" TEXT NOT NULL,
    "quote" TEXT NOT NULL,
    "rate" DECIMAL NOT NULL,
    "source" TEXT NOT NULL,

    CONSTRAINT "exchange_rate_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "store" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "tax_region" TEXT NOT NULL,
    "currency" TEXT NOT NULL,
    "trip_cost" DECIMAL,
    "trip_currency" TEXT,
    "prices_include_tax" BOOLEAN NOT NULL,
    "distance_km" DECIMAL,
    "import_charges_confirmed" BOOLEAN NOT NULL,
    "archived_on" DATE,
    "entry_hash" TEXT NOT NULL,

    CONSTRAINT "store_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "store_discount" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "store_id" UUID NOT NULL,
    "category" TEXT,
    "percent" DECIMAL NOT NULL,
    "from_day" DATE,
    "until_day" DATE,

    CONSTRAINT "store_discount_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "store_import_charge" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "store_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "percent" DECIMAL NOT NULL,
    "per_order" DECIMAL,
    "recoverable" BOOLEAN NOT NULL,
    "from_day" DATE,
    "until_day" DATE,

    CONSTRAINT "store_import_charge_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "material" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "category" TEXT NOT NULL,
    "purchase_unit" TEXT NOT NULL,
    "dimensions" JSONB NOT NULL DEFAULT '{}',
    "recheck_days" INTEGER,
    "exempt_from" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "note" TEXT,
    "archived_on" DATE,
    "entry_hash" TEXT NOT NULL,

    CONSTRAINT "material_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "observation" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL,
    "material_id" UUID NOT NULL,
    "store_id" UUID NOT NULL,
    "seen_on" DATE NOT NULL,
    "terms" TEXT NOT NULL,
    "amount" DECIMAL,
    "currency" TEXT,
    "per_quantity" DECIMAL NOT NULL,
    "per_unit" TEXT NOT NULL,
    "tax_included" BOOLEAN NOT NULL,
    "tax_region" TEXT,
    "exempt_from" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "min_quantity" DECIMAL,
    "max_quantity" DECIMAL,
    "pack_size" DECIMAL,
    "from_day" DATE,
    "until_day" DATE,
    "fees" JSONB NOT NULL DEFAULT '[]',
    "note" TEXT,
    "tier" DECIMAL GENERATED ALWAYS AS (COALESCE("min_quantity", 0)) STORED,
    "sequence" BIGSERIAL NOT NULL,
    "entry_hash" TEXT NOT NULL,
    "deleted_at" TIMESTAMPTZ(6),

    CONSTRAINT "observation_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "observation_correction" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "observation_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(6) NOT NULL DEFAULT clock_timestamp(),
    "actor" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "earlier" JSONB NOT NULL,

    CONSTRAINT "observation_correction_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "project" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "budget" DECIMAL,
    "budget_currency" TEXT,
    "note" TEXT,
    "entry_hash" TEXT NOT NULL,

    CONSTRAINT "project_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "project_status" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "project_id" UUID NOT NULL,
    "status" TEXT NOT NULL,
    "from_day" DATE NOT NULL,

    CONSTRAINT "project_status_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "requirement" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "material_id" UUID NOT NULL,
    "closed_on" DATE,
    "sequence" BIGSERIAL NOT NULL,
    "entry_hash" TEXT NOT NULL,

    CONSTRAINT "requirement_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "requirement_revision" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "requirement_id" UUID NOT NULL,
    "valid_from" DATE NOT NULL,
    "quantity" DECIMAL NOT NULL,
    "unit" TEXT NOT NULL,
    "waste_percent" DECIMAL NOT NULL,
    "needed_by" DATE NOT NULL,
    "budget_unit_price" DECIMAL,
    "budget_currency" TEXT,
    "accepts_used" BOOLEAN NOT NULL,

    CONSTRAINT "requirement_revision_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "requirement_alternative" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "requirement_id" UUID NOT NULL,
    "material_id" UUID NOT NULL,
    "factor" DECIMAL NOT NULL,

    CONSTRAINT "requirement_alternative_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "lot" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL,
    "material_id" UUID NOT NULL,
    "origin" TEXT NOT NULL,
    "store_id" UUID,
    "terms" TEXT,
    "observation_id" UUID,
    "quantity" DECIMAL NOT NULL,
    "paid_amount" DECIMAL NOT NULL,
    "paid_currency" TEXT NOT NULL,
    "tax_included" BOOLEAN NOT NULL,
    "tax_region" TEXT,
    "exempt_from" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "fees" JSONB NOT NULL DEFAULT '[]',
    "paid_home" DECIMAL,
    "paid_home_currency" TEXT,
    "ordered_on" DATE NOT NULL,
    "condition" DECIMAL NOT NULL,
    "stored_at" TEXT,
    "note" TEXT,
    "sequence" BIGSERIAL NOT NULL,
    "entry_hash" TEXT NOT NULL,
    "deleted_at" TIMESTAMPTZ(6),

    CONSTRAINT "lot_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "lot_receipt" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "lot_id" UUID NOT NULL,
    "quantity" DECIMAL NOT NULL,
    "on_day" DATE NOT NULL,

    CONSTRAINT "lot_receipt_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "lot_payment" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "lot_id" UUID NOT NULL,
    "amount" DECIMAL NOT NULL,
    "on_day" DATE NOT NULL,
    "home" DECIMAL,

    CONSTRAINT "lot_payment_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "stock_event" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL,
    "lot_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "quantity" DECIMAL NOT NULL,
    "on_day" DATE NOT NULL,
    "requirement_id" UUID,
    "amount" DECIMAL,
    "currency" TEXT,
    "reason" TEXT,
    "sequence" BIGSERIAL NOT NULL,
    "entry_hash" TEXT NOT NULL,
    "undone_at" TIMESTAMPTZ(6),

    CONSTRAINT "stock_event_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "change" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" BIGSERIAL NOT NULL,
    "at" TIMESTAMPTZ(6) NOT NULL DEFAULT clock_timestamp(),
    "actor" TEXT NOT NULL,
    "noun" TEXT NOT NULL,
    "row_id" UUID NOT NULL,
    "action" TEXT NOT NULL,
    "before" JSONB,
    "after" JSONB,

    CONSTRAINT "change_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateIndex
CREATE UNIQUE INDEX "rate_source_workspace_id_currency_key" ON "rate_source"("workspace_id", "currency");

-- CreateIndex
CREATE UNIQUE INDEX "tax_region_workspace_id_code_key" ON "tax_region"("workspace_id", "code");

-- CreateIndex
CREATE INDEX "tax_component_workspace_id_region_id_idx" ON "tax_component"("workspace_id", "region_id");

-- CreateIndex
CREATE UNIQUE INDEX "tax_confirmation_workspace_id_region_component_from_day_key" ON "tax_confirmation"("workspace_id", "region", "component", "from_day");

-- CreateIndex
CREATE INDEX "exchange_rate_workspace_id_on_day_idx" ON "exchange_rate"("workspace_id", "on_day");

-- CreateIndex
CREATE UNIQUE INDEX "exchange_rate_workspace_id_base_quote_source_on_day_key" ON "exchange_rate"("workspace_id", "base", "quote", "source", "on_day");

-- CreateIndex
CREATE INDEX "store_discount_workspace_id_store_id_idx" ON "store_discount"("workspace_id", "store_id");

-- CreateIndex
CREATE INDEX "store_import_charge_workspace_id_store_id_idx" ON "store_import_charge"("workspace_id", "store_id");

-- CreateIndex
CREATE INDEX "observation_workspace_id_material_id_seen_on_sequence_idx" ON "observation"("workspace_id", "material_id", "seen_on" DESC, "sequence" DESC);

-- CreateIndex
CREATE INDEX "observation_correction_workspace_id_observation_id_at_idx" ON "observation_correction"("workspace_id", "observation_id", "at");

-- CreateIndex
CREATE UNIQUE INDEX "project_status_workspace_id_project_id_from_day_key" ON "project_status"("workspace_id", "project_id", "from_day");

-- CreateIndex
CREATE INDEX "requirement_workspace_id_project_id_idx" ON "requirement"("workspace_id", "project_id");

-- CreateIndex
CREATE UNIQUE INDEX "requirement_revision_workspace_id_requirement_id_valid_from_key" ON "requirement_revision"("workspace_id", "requirement_id", "valid_from");

-- CreateIndex
CREATE UNIQUE INDEX "requirement_alternative_workspace_id_requirement_id_materia_key" ON "requirement_alternative"("workspace_id", "requirement_id", "material_id");

-- CreateIndex
CREATE INDEX "lot_workspace_id_material_id_idx" ON "lot"("workspace_id", "material_id");

-- CreateIndex
CREATE INDEX "lot_receipt_workspace_id_lot_id_idx" ON "lot_receipt"("workspace_id", "lot_id");

-- CreateIndex
CREATE INDEX "lot_payment_workspace_id_lot_id_idx" ON "lot_payment"("workspace_id", "lot_id");

-- CreateIndex
CREATE INDEX "stock_event_workspace_id_lot_id_idx" ON "stock_event"("workspace_id", "lot_id");

-- CreateIndex
CREATE INDEX "stock_event_workspace_id_requirement_id_idx" ON "stock_event"("workspace_id", "requirement_id");

-- AddForeignKey
ALTER TABLE "registration" ADD CONSTRAINT "registration_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "money_rate" ADD CONSTRAINT "money_rate_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "rate_source" ADD CONSTRAINT "rate_source_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "tax_region" ADD CONSTRAINT "tax_region_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "tax_component" ADD CONSTRAINT "tax_component_workspace_id_region_id_fkey" FOREIGN KEY ("workspace_id", "region_id") REFERENCES "tax_region"("workspace_id", "id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "tax_confirmation" ADD CONSTRAINT "tax_confirmation_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "exchange_rate" ADD CONSTRAINT "exchange_rate_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "store" ADD CONSTRAINT "store_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "store_discount" ADD CONSTRAINT "store_discount_workspace_id_store_id_fkey" FOREIGN KEY ("workspace_id", "store_id") REFERENCES "store"("workspace_id", "id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "store_import_charge" ADD CONSTRAINT "store_import_charge_workspace_id_store_id_fkey" FOREIGN KEY ("workspace_id", "store_id") REFERENCES "store"("workspace_id", "id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "material" ADD CONSTRAINT "material_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "observation" ADD CONSTRAINT "observation_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "observation" ADD CONSTRAINT "observation_workspace_id_material_id_fkey" FOREIGN KEY ("workspace_id", "material_id") REFERENCES "material"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "observation" ADD CONSTRAINT "observation_workspace_id_store_id_fkey" FOREIGN KEY ("workspace_id", "store_id") REFERENCES "store"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "observation_correction" ADD CONSTRAINT "observation_correction_workspace_id_observation_id_fkey" FOREIGN KEY ("workspace_id", "observation_id") REFERENCES "observation"("workspace_id", "id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "project" ADD CONSTRAINT "project_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "project_status" ADD CONSTRAINT "project_status_workspace_id_project_id_fkey" FOREIGN KEY ("workspace_id", "project_id") REFERENCES "project"("workspace_id", "id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "requirement" ADD CONSTRAINT "requirement_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "requirement" ADD CONSTRAINT "requirement_workspace_id_project_id_fkey" FOREIGN KEY ("workspace_id", "project_id") REFERENCES "project"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "requirement" ADD CONSTRAINT "requirement_workspace_id_material_id_fkey" FOREIGN KEY ("workspace_id", "material_id") REFERENCES "material"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "requirement_revision" ADD CONSTRAINT "requirement_revision_workspace_id_requirement_id_fkey" FOREIGN KEY ("workspace_id", "requirement_id") REFERENCES "requirement"("workspace_id", "id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "requirement_alternative" ADD CONSTRAINT "requirement_alternative_workspace_id_requirement_id_fkey" FOREIGN KEY ("workspace_id", "requirement_id") REFERENCES "requirement"("workspace_id", "id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "requirement_alternative" ADD CONSTRAINT "requirement_alternative_workspace_id_material_id_fkey" FOREIGN KEY ("workspace_id", "material_id") REFERENCES "material"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "lot" ADD CONSTRAINT "lot_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "lot" ADD CONSTRAINT "lot_workspace_id_material_id_fkey" FOREIGN KEY ("workspace_id", "material_id") REFERENCES "material"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "lot" ADD CONSTRAINT "lot_workspace_id_store_id_fkey" FOREIGN KEY ("workspace_id", "store_id") REFERENCES "store"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "lot" ADD CONSTRAINT "lot_workspace_id_observation_id_fkey" FOREIGN KEY ("workspace_id", "observation_id") REFERENCES "observation"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "lot_receipt" ADD CONSTRAINT "lot_receipt_workspace_id_lot_id_fkey" FOREIGN KEY ("workspace_id", "lot_id") REFERENCES "lot"("workspace_id", "id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "lot_payment" ADD CONSTRAINT "lot_payment_workspace_id_lot_id_fkey" FOREIGN KEY ("workspace_id", "lot_id") REFERENCES "lot"("workspace_id", "id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "stock_event" ADD CONSTRAINT "stock_event_workspace_id_lot_id_fkey" FOREIGN KEY ("workspace_id", "lot_id") REFERENCES "lot"("workspace_id", "id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "stock_event" ADD CONSTRAINT "stock_event_workspace_id_requirement_id_fkey" FOREIGN KEY ("workspace_id", "requirement_id") REFERENCES "requirement"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "change" ADD CONSTRAINT "change_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- ---------------------------------------------------------------------------------------------------------------------
-- Part 2

-- Values. Every number has an upper bound too: NUMERIC knows NaN and Infinity, and both are above zero.

ALTER TABLE workspace
  ADD CONSTRAINT workspace_kind CHECK (kind IN ('owner', 'demo')),
  ADD CONSTRAINT workspace_currency CHECK (home_currency ~ '^[A-Z]{3}$'),
  ADD CONSTRAINT workspace_recheck_days CHECK (recheck_days BETWEEN 1 AND 3650),
  ADD CONSTRAINT workspace_name CHECK (name <> '');
CREATE UNIQUE INDEX workspace_one_owner ON workspace (kind) WHERE kind = 'owner';

ALTER TABLE registration ADD CONSTRAINT registration_days CHECK (from_day <= until_day);

ALTER TABLE money_rate ADD CONSTRAINT money_rate_percent CHECK (percent BETWEEN 0 AND 100);
CREATE UNIQUE INDEX money_rate_one_a_day ON money_rate (workspace_id, (coalesce(from_day, '-infinity'::date)))
  WHERE workspace_id IS NOT NULL;

ALTER TABLE rate_source ADD CONSTRAINT rate_source_currency CHECK (currency ~ '^[A-Z]{3}$');

ALTER TABLE tax_component
  ADD CONSTRAINT tax_component_percent CHECK (rate_percent BETWEEN 0 AND 100),
  ADD CONSTRAINT tax_component_base CHECK (base IN ('price', 'price-plus-other-tax')),
  ADD CONSTRAINT tax_component_days CHECK (from_day <= until_day);

ALTER TABLE exchange_rate
  ADD CONSTRAINT exchange_rate_currencies CHECK (base ~ '^[A-Z]{3}$' AND quote ~ '^[A-Z]{3}$' AND base <> quote),
  ADD CONSTRAINT exchange_rate_positive CHECK (rate > 0 AND rate < 1e15),
  ADD CONSTRAINT exchange_rate_day CHECK (on_day >= '1990-01-01');

ALTER TABLE store
  ADD CONSTRAINT store_name CHECK (name <> ''),
  ADD CONSTRAINT store_currency CHECK (currency ~ '^[A-Z]{3}$' AND trip_currency ~ '^[A-Z]{3}$'),
  ADD CONSTRAINT store_trip_cost CHECK (trip_cost >= 0 AND trip_cost < 1e15),
  ADD CONSTRAINT store_trip_cost_currency CHECK ((trip_cost IS NULL) = (trip_currency IS NULL)),
  ADD CONSTRAINT store_distance CHECK (distance_km >= 0 AND distance_km < 1e15);
CREATE UNIQUE INDEX store_live_name ON store (workspace_id, lower(name)) WHERE archived_on IS NULL;

ALTER TABLE store_discount
  ADD CONSTRAINT store_discount_percent CHECK (percent BETWEEN 0 AND 100),
  ADD CONSTRAINT store_discount_days CHECK (from_day <= until_day);

ALTER TABLE store_import_charge
  ADD CONSTRAINT store_import_charge_percent CHECK (percent BETWEEN 0 AND 1000),
  ADD CONSTRAINT store_import_charge_per_order CHECK (per_order >= 0 AND per_order < 1e15),
  ADD CONSTRAINT store_import_charge_days CHECK (from_day <= until_day);

ALTER TABLE material
  ADD CONSTRAINT material_name CHECK (name <> ''),
  ADD CONSTRAINT material_category CHECK (category IN ('sheet-goods', 'dimensional-lumber', 'doors', 'windows', 'roofing',
    'siding', 'insulation', 'masonry', 'fasteners', 'other')),
  ADD CONSTRAINT material_recheck_days CHECK (recheck_days BETWEEN 1 AND 3650),
  ADD CONSTRAINT material_dimensions CHECK (jsonb_typeof(dimensions) = 'object');
CREATE UNIQUE INDEX material_live_name ON material (workspace_id, lower(name)) WHERE archived_on IS NULL;

ALTER TABLE observation
  ADD CONSTRAINT observation_terms CHECK (terms IN ('shelf', 'special', 'clearance', 'quantity-break', 'quote', 'used',
    'paid', 'none-left')),
  ADD CONSTRAINT observation_amount CHECK (amount > 0 AND amount < 1e15),
  ADD CONSTRAINT observation_amount_unless_none_left CHECK ((amount IS NULL) = (terms = 'none-left')),
  ADD CONSTRAINT observation_amount_currency CHECK ((amount IS NULL) = (currency IS NULL)),
  ADD CONSTRAINT observation_currency CHECK (currency ~ '^[A-Z]{3}$'),
  ADD CONSTRAINT observation_per CHECK (per_quantity > 0 AND per_quantity < 1e15),
  ADD CONSTRAINT observation_minimum CHECK (min_quantity > 0 AND min_quantity < 1e15),
  ADD CONSTRAINT observation_maximum CHECK (max_quantity > 0 AND max_quantity < 1e15),
  ADD CONSTRAINT observation_minimum_to_maximum CHECK (min_quantity <= max_quantity),
  ADD CONSTRAINT observation_pack CHECK (pack_size > 0 AND pack_size < 1e15),
  ADD CONSTRAINT observation_break_has_minimum CHECK (terms <> 'quantity-break' OR min_quantity IS NOT NULL),
  ADD CONSTRAINT observation_quote_has_until CHECK (terms <> 'quote' OR until_day IS NOT NULL),
  ADD CONSTRAINT observation_days CHECK (from_day <= until_day),
  ADD CONSTRAINT observation_day CHECK (seen_on >= '1990-01-01'),
  ADD CONSTRAINT observation_fees CHECK (jsonb_typeof(fees) = 'array');

ALTER TABLE observation_correction ADD CONSTRAINT observation_correction_reason CHECK (reason <> '');

ALTER TABLE project
  ADD CONSTRAINT project_name CHECK (name <> ''),
  ADD CONSTRAINT project_budget CHECK (budget >= 0 AND budget < 1e15),
  ADD CONSTRAINT project_budget_currency CHECK ((budget IS NULL) = (budget_currency IS NULL)),
  ADD CONSTRAINT project_currency CHECK (budget_currency ~ '^[A-Z]{3}$');
CREATE UNIQUE INDEX project_name_once ON project (workspace_id, lower(name)) WHERE workspace_id IS NOT NULL;

ALTER TABLE project_status
  ADD CONSTRAINT project_status_status CHECK (status IN ('planned', 'live', 'finished', 'dropped'));

ALTER TABLE requirement_revision
  ADD CONSTRAINT requirement_revision_quantity CHECK (quantity > 0 AND quantity < 1e15),
  ADD CONSTRAINT requirement_revision_waste CHECK (waste_percent BETWEEN 0 AND 1000),
  ADD CONSTRAINT requirement_revision_budget CHECK (budget_unit_price >= 0 AND budget_unit_price < 1e15),
  ADD CONSTRAINT requirement_revision_budget_currency CHECK ((budget_unit_price IS NULL) = (budget_currency IS NULL)),
  ADD CONSTRAINT requirement_revision_currency CHECK (budget_currency ~ '^[A-Z]{3}$');

ALTER TABLE requirement_alternative
  ADD CONSTRAINT requirement_alternative_factor CHECK (factor > 0 AND factor < 1e15);

ALTER TABLE lot
  ADD CONSTRAINT lot_origin CHECK (origin IN ('bought', 'special-order', 'salvaged', 'left-over')),
  ADD CONSTRAINT lot_terms CHECK (terms IN ('shelf', 'special', 'clearance', 'quantity-break', 'quote', 'used', 'paid')),
  ADD CONSTRAINT lot_quantity CHECK (quantity > 0 AND quantity < 1e15),
  ADD CONSTRAINT lot_paid CHECK (paid_amount >= 0 AND paid_amount < 1e15),
  ADD CONSTRAINT lot_currency CHECK (paid_currency ~ '^[A-Z]{3}$' AND paid_home_currency ~ '^[A-Z]{3}$'),
  ADD CONSTRAINT lot_paid_home CHECK (paid_home >= 0 AND paid_home < 1e15),
  ADD CONSTRAINT lot_paid_home_currency CHECK ((paid_home IS NULL) = (paid_home_currency IS NULL)),
  ADD CONSTRAINT lot_condition CHECK (condition > 0 AND condition <= 1),
  ADD CONSTRAINT lot_day CHECK (ordered_on >= '1990-01-01'),
  ADD CONSTRAINT lot_fees CHECK (jsonb_typeof(fees) = 'array');

ALTER TABLE lot_receipt ADD CONSTRAINT lot_receipt_quantity CHECK (quantity > 0 AND quantity < 1e15);
ALTER TABLE lot_payment
  ADD CONSTRAINT lot_payment_amount CHECK (amount >= 0 AND amount < 1e15),
  ADD CONSTRAINT lot_payment_home CHECK (home >= 0 AND home < 1e15);

ALTER TABLE stock_event
  ADD CONSTRAINT stock_event_kind CHECK (kind IN ('allocated', 'released', 'drawn', 'returned', 'sold', 'written-off',
    'found', 'missing')),
  ADD CONSTRAINT stock_event_quantity CHECK (quantity > 0 AND quantity < 1e15),
  ADD CONSTRAINT stock_event_amount CHECK (amount >= 0 AND amount < 1e15),
  ADD CONSTRAINT stock_event_amount_currency CHECK ((amount IS NULL) = (currency IS NULL)),
  ADD CONSTRAINT stock_event_currency CHECK (currency ~ '^[A-Z]{3}$'),
  ADD CONSTRAINT stock_event_requirement CHECK (kind NOT IN ('allocated', 'released') OR requirement_id IS NOT NULL);

-- What the observations of a day are picked by: the newest of each material, store, terms and smallest quantity.
CREATE INDEX observation_candidates
  ON observation (workspace_id, material_id, store_id, terms, tier, seen_on DESC, sequence DESC)
  INCLUDE (id, from_day, until_day) WHERE deleted_at IS NULL;

-- Append-only: rows go only together with their workspace.

CREATE FUNCTION refuse_rewriting() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'DELETE' AND NOT EXISTS (SELECT 1 FROM workspace WHERE id = OLD.workspace_id) THEN
    RETURN OLD;
  END IF;
  RAISE EXCEPTION 'rows of % are only ever added', TG_TABLE_NAME
    USING ERRCODE = 'check_violation', CONSTRAINT = TG_TABLE_NAME || '_is_append_only', TABLE = TG_TABLE_NAME;
END $$;

CREATE FUNCTION refuse_emptying() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'rows of % are only ever added', TG_TABLE_NAME
    USING ERRCODE = 'check_violation', CONSTRAINT = TG_TABLE_NAME || '_is_append_only', TABLE = TG_TABLE_NAME;
END $$;

CREATE TRIGGER change_append_only BEFORE UPDATE OR DELETE ON change FOR EACH ROW EXECUTE FUNCTION refuse_rewriting();
CREATE TRIGGER change_not_emptied BEFORE TRUNCATE ON change FOR EACH STATEMENT EXECUTE FUNCTION refuse_emptying();
CREATE TRIGGER observation_correction_append_only BEFORE UPDATE OR DELETE ON observation_correction
  FOR EACH ROW EXECUTE FUNCTION refuse_rewriting();
CREATE TRIGGER observation_correction_not_emptied BEFORE TRUNCATE ON observation_correction
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_emptying();

-- Corrections: an observation's figures change only with a reason, and what it said before is kept.

-- Numbers of a row as text, so that no reader turns them into floating point.
CREATE FUNCTION numbers_as_text(given jsonb) RETURNS jsonb LANGUAGE sql IMMUTABLE AS $$
  SELECT jsonb_object_agg(key, CASE jsonb_typeof(value) WHEN 'number' THEN to_jsonb(value #>> '{}') ELSE value END)
  FROM jsonb_each(given)
$$;

CREATE FUNCTION keep_earlier_observation() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  why text := nullif(current_setting('app.reason', true), '');
BEGIN
  IF (NEW.workspace_id, NEW.id, NEW.material_id, NEW.store_id, NEW.sequence, NEW.entry_hash)
      IS DISTINCT FROM (OLD.workspace_id, OLD.id, OLD.material_id, OLD.store_id, OLD.sequence, OLD.entry_hash) THEN
    RAISE EXCEPTION 'an observation is never made into another sighting: delete it and add a new one'
      USING ERRCODE = 'check_violation', CONSTRAINT = 'observation_keeps_its_sighting', TABLE = 'observation';
  END IF;
  IF to_jsonb(NEW) - 'deleted_at' IS DISTINCT FROM to_jsonb(OLD) - 'deleted_at' THEN
    IF why IS NULL THEN
      RAISE EXCEPTION 'a correction of an observation needs a reason (app.reason)'
        USING ERRCODE = 'check_violation', CONSTRAINT = 'observation_keeps_earlier_values', TABLE = 'observation';
    END IF;
    INSERT INTO observation_correction (workspace_id, observation_id, actor, reason, earlier)
    VALUES (OLD.workspace_id, OLD.id, current_actor(), why,
      numbers_as_text(to_jsonb(OLD) - '{workspace_id,entry_hash,sequence,tier,deleted_at}'::text[]));
  END IF;
  RETURN NULL;
END $$;

CREATE FUNCTION current_actor() RETURNS text LANGUAGE sql STABLE
  AS $$ SELECT coalesce(nullif(current_setting('app.actor', true), ''), 'database:' || session_user) $$;

CREATE TRIGGER observation_keeps_earlier AFTER UPDATE ON observation
  FOR EACH ROW EXECUTE FUNCTION keep_earlier_observation();

-- Conservation: on no day may more be gone, or held for requirements, than there is. lib/stock says it in words before
-- this is asked; this holds under any number of writers, because the lot is locked first.

CREATE FUNCTION refuse_stock_from_nothing(of_workspace uuid, of_lot uuid) RETURNS void LANGUAGE plpgsql AS $$
DECLARE
  there numeric;
  short date;
BEGIN
  SELECT quantity INTO there FROM lot WHERE workspace_id = of_workspace AND id = of_lot FOR NO KEY UPDATE;
  WITH event AS (
    SELECT kind, quantity, on_day, requirement_id FROM stock_event
    WHERE workspace_id = of_workspace AND lot_id = of_lot AND undone_at IS NULL
  )
  SELECT d.on_day INTO short
  FROM (SELECT DISTINCT on_day FROM event) d
  CROSS JOIN LATERAL (
    SELECT there + sum(CASE WHEN kind = 'found' THEN quantity WHEN kind IN ('allocated', 'released') THEN 0
      ELSE -quantity END) AS remaining
    FROM event WHERE on_day <= d.on_day
  ) p
  CROSS JOIN LATERAL (
    SELECT coalesce(sum(greatest(h.held, 0)), 0) AS held
    FROM (
      SELECT sum(CASE WHEN kind = 'allocated' THEN quantity WHEN kind = 'found' THEN 0 ELSE -quantity END) AS held
      FROM event WHERE on_day <= d.on_day AND requirement_id IS NOT NULL GROUP BY requirement_id
    ) h
  ) r
  WHERE p.remaining < 0 OR r.held > p.remaining
  ORDER BY d.on_day LIMIT 1;
  IF short IS NOT NULL THEN
    RAISE EXCEPTION 'lot % would hold less than nothing on %', of_lot, short
      USING ERRCODE = 'check_violation', CONSTRAINT = 'stock_is_conserved', TABLE = 'stock_event';
  END IF;
END $$;

CREATE FUNCTION conserve_stock_of_event() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'UPDATE' AND (NEW.lot_id, NEW.kind, NEW.quantity, NEW.on_day, NEW.requirement_id, NEW.amount, NEW.currency)
      IS DISTINCT FROM (OLD.lot_id, OLD.kind, OLD.quantity, OLD.on_day, OLD.requirement_id, OLD.amount, OLD.currency) THEN
    RAISE EXCEPTION 'a stock event is never rewritten: undo it and enter a new one'
      USING ERRCODE = 'check_violation', CONSTRAINT = 'stock_event_keeps_its_figures', TABLE = 'stock_event';
  END IF;
  PERFORM refuse_stock_from_nothing(NEW.workspace_id, NEW.lot_id);
  RETURN NULL;
END $$;

CREATE FUNCTION conserve_stock_of_lot() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM refuse_stock_from_nothing(NEW.workspace_id, NEW.id);
  RETURN NULL;
END $$;

CREATE TRIGGER stock_event_conserved AFTER INSERT OR UPDATE ON stock_event
  FOR EACH ROW EXECUTE FUNCTION conserve_stock_of_event();
CREATE TRIGGER lot_conserved AFTER UPDATE OF quantity ON lot FOR EACH ROW EXECUTE FUNCTION conserve_stock_of_lot();

-- The owner's workspace is never thrown away.
CREATE FUNCTION refuse_discarding_owner() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD.kind = 'owner' THEN
    RAISE EXCEPTION 'the owner''s workspace cannot be discarded'
      USING ERRCODE = 'check_violation', CONSTRAINT = 'workspace_owner_stays', TABLE = 'workspace';
  END IF;
  RETURN OLD;
END $$;
CREATE TRIGGER workspace_owner_stays BEFORE DELETE ON workspace FOR EACH ROW EXECUTE FUNCTION refuse_discarding_owner();

-- The change log: every row added, changed or taken away, by whoever writes, in the writer's own transaction.

CREATE FUNCTION logged_row(given jsonb) RETURNS jsonb LANGUAGE sql IMMUTABLE
  AS $$ SELECT given - '{workspace_id,entry_hash,sequence,tier}'::text[] $$;

CREATE FUNCTION logged_action(noun text, before jsonb, after jsonb) RETURNS text LANGUAGE sql IMMUTABLE AS $$
  SELECT CASE
    WHEN before ->> 'deleted_at' IS NULL AND after ->> 'deleted_at' IS NOT NULL THEN 'deleted'
    WHEN before ->> 'deleted_at' IS NOT NULL AND after ->> 'deleted_at' IS NULL THEN 'undeleted'
    WHEN before ->> 'undone_at' IS NULL AND after ->> 'undone_at' IS NOT NULL THEN 'undone'
    WHEN before ->> 'undone_at' IS NOT NULL AND after ->> 'undone_at' IS NULL THEN 'redone'
    WHEN before ->> 'archived_on' IS NULL AND after ->> 'archived_on' IS NOT NULL THEN 'archived'
    WHEN before ->> 'archived_on' IS NOT NULL AND after ->> 'archived_on' IS NULL THEN 'restored'
    WHEN before ->> 'closed_on' IS NULL AND after ->> 'closed_on' IS NOT NULL THEN 'closed'
    WHEN before ->> 'closed_on' IS NOT NULL AND after ->> 'closed_on' IS NULL THEN 'reopened'
    WHEN noun = 'observation' THEN 'corrected'
    ELSE 'changed'
  END
$$;

CREATE FUNCTION log_added() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  INSERT INTO change (workspace_id, actor, noun, row_id, action, after)
  SELECT coalesce((r.row ->> 'workspace_id')::uuid, a.id), current_actor(), TG_TABLE_NAME, a.id, 'created', logged_row(r.row)
  FROM added a CROSS JOIN LATERAL (SELECT to_jsonb(a) AS row) r;
  RETURN NULL;
END $$;

CREATE FUNCTION log_changed() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  INSERT INTO change (workspace_id, actor, noun, row_id, action, before, after)
  SELECT coalesce((n.row ->> 'workspace_id')::uuid, a.id), current_actor(), TG_TABLE_NAME, a.id,
    logged_action(TG_TABLE_NAME, o.row, n.row), logged_row(o.row), logged_row(n.row)
  FROM later a CROSS JOIN LATERAL (SELECT to_jsonb(a) AS row) n
  JOIN (SELECT b.id, to_jsonb(b) AS row FROM earlier b) o
    ON o.id = a.id AND o.row ->> 'workspace_id' IS NOT DISTINCT FROM n.row ->> 'workspace_id'
  WHERE o.row IS DISTINCT FROM n.row;
  RETURN NULL;
END $$;

CREATE FUNCTION log_removed() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  INSERT INTO change (workspace_id, actor, noun, row_id, action, before)
  SELECT r.workspace_id, current_actor(), TG_TABLE_NAME, r.id, 'removed', logged_row(to_jsonb(r))
  FROM removed r WHERE EXISTS (SELECT 1 FROM workspace w WHERE w.id = r.workspace_id);
  RETURN NULL;
END $$;

DO $$
DECLARE
  noun text;
BEGIN
  FOREACH noun IN ARRAY ARRAY['workspace', 'registration', 'money_rate', 'rate_source', 'tax_region', 'tax_component',
    'tax_confirmation', 'exchange_rate', 'store', 'store_discount', 'store_import_charge', 'material', 'observation',
    'project', 'project_status', 'requirement', 'requirement_revision', 'requirement_alternative', 'lot', 'lot_receipt',
    'lot_payment', 'stock_event']
  LOOP
    EXECUTE format('CREATE TRIGGER %1$I_logged_added AFTER INSERT ON %1$I REFERENCING NEW TABLE AS added
      FOR EACH STATEMENT EXECUTE FUNCTION log_added()', noun);
    EXECUTE format('CREATE TRIGGER %1$I_logged_changed AFTER UPDATE ON %1$I REFERENCING OLD TABLE AS earlier
      NEW TABLE AS later FOR EACH STATEMENT EXECUTE FUNCTION log_changed()', noun);
    IF noun <> 'workspace' THEN
      EXECUTE format('CREATE TRIGGER %1$I_logged_removed AFTER DELETE ON %1$I REFERENCING OLD TABLE AS removed
        FOR EACH STATEMENT EXECUTE FUNCTION log_removed()', noun);
    END IF;
  END LOOP;
END $$;

-- One workspace at a time: every table shows and takes only the rows of current_workspace(), its owner included (FORCE).

DO $$
DECLARE
  noun text;
BEGIN
  FOR noun IN SELECT c.table_name FROM information_schema.columns c
    WHERE c.table_schema = current_schema() AND c.column_name = 'workspace_id'
  LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY, FORCE ROW LEVEL SECURITY', noun);
    EXECUTE format('CREATE POLICY own_workspace ON %I USING (workspace_id = current_workspace())
      WITH CHECK (workspace_id = current_workspace())', noun);
  END LOOP;
END $$;

ALTER TABLE workspace ENABLE ROW LEVEL SECURITY, FORCE ROW LEVEL SECURITY;
CREATE POLICY own_workspace ON workspace USING (id = current_workspace()) WITH CHECK (id = current_workspace());
-- Finding the owner's or the demo's workspace before one is entered (lib/data/client.ts, findingWorkspaces).
CREATE POLICY finding_workspaces ON workspace FOR SELECT USING (current_setting('app.finding', true) = 'on');

-- The role the program works as: no superuser, so that the policies bind it. Where the migrating user may not make
-- roles, it works as that user, whom FORCE binds. Rows of a history it may only add.

DO $$
BEGIN
  IF NOT EXISTS (SELECT 1 FROM pg_roles WHERE rolname = 'dunnage_app') THEN
    CREATE ROLE dunnage_app NOLOGIN;
    EXECUTE format('GRANT dunnage_app TO %I', current_user);
  END IF;
EXCEPTION
  -- Another database of this server made it a moment ago, or this user may not.
  WHEN duplicate_object OR unique_violation OR insufficient_privilege THEN NULL;
END $$;

DO $$
BEGIN
  IF EXISTS (SELECT 1 FROM pg_roles WHERE rolname = 'dunnage_app') THEN
    EXECUTE format('GRANT USAGE ON SCHEMA %I TO dunnage_app', current_schema());
    GRANT SELECT, INSERT, UPDATE ON workspace, store, material, observation, project, project_status, requirement,
      requirement_revision, lot, stock_event, tax_region, exchange_rate TO dunnage_app;
    GRANT SELECT, INSERT, UPDATE, DELETE ON registration, money_rate, rate_source, tax_component, tax_confirmation,
      store_discount, store_import_charge, requirement_alternative, lot_receipt, lot_payment TO dunnage_app;
    GRANT SELECT, INSERT ON observation_correction, change TO dunnage_app;
    GRANT DELETE ON workspace TO dunnage_app;
    EXECUTE format('GRANT USAGE ON ALL SEQUENCES IN SCHEMA %I TO dunnage_app', current_schema());
  END IF;
END $$;
