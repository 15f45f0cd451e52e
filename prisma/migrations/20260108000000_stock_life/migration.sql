-- Where stock lies, what storing it costs, what was agreed when it was bought, and what is done and undone together.
-- Part 1 follows prisma/schema.prisma; part 2 is what the database itself refuses, and the way of the earlier text.

-- AlterTable
ALTER TABLE "store" ADD COLUMN     "lead_days" INTEGER,
ADD COLUMN     "price_adjustment_days" INTEGER,
ADD COLUMN     "restocking_percent" DECIMAL,
ADD COLUMN     "return_days" INTEGER;

-- AlterTable
ALTER TABLE "lot" ADD COLUMN     "adjustable_until" DATE,
ADD COLUMN     "expected_on" DATE,
ADD COLUMN     "given_free" TEXT,
ADD COLUMN     "lead_days" INTEGER,
ADD COLUMN     "other_currency" TEXT,
ADD COLUMN     "place_id" UUID,
ADD COLUMN     "restocking_percent" DECIMAL,
ADD COLUMN     "returnable_until" DATE;

-- AlterTable
ALTER TABLE "lot_receipt" ADD COLUMN     "entry_hash" TEXT NOT NULL DEFAULT '',
ADD COLUMN     "place_id" UUID,
ADD COLUMN     "undone_at" TIMESTAMPTZ(6);

-- AlterTable
ALTER TABLE "lot_payment" ADD COLUMN     "entry_hash" TEXT NOT NULL DEFAULT '',
ADD COLUMN     "undone_at" TIMESTAMPTZ(6);

-- AlterTable
ALTER TABLE "stock_event" ADD COLUMN     "act_id" UUID,
ADD COLUMN     "from_place_id" UUID,
ADD COLUMN     "place_id" UUID;

-- CreateTable
CREATE TABLE "stock_act" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "on_day" DATE NOT NULL,
    "undoes" UUID[] DEFAULT ARRAY[]::UUID[],
    "reason" TEXT,
    "sequence" BIGSERIAL NOT NULL,
    "entry_hash" TEXT NOT NULL,
    "undone_at" TIMESTAMPTZ(6),

    CONSTRAINT "stock_act_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "storage_place" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "note" TEXT,
    "area" DECIMAL,
    "area_unit" TEXT,
    "volume" DECIMAL,
    "volume_unit" TEXT,
    "weight" DECIMAL,
    "weight_unit" TEXT,
    "count" DECIMAL,
    "covered" BOOLEAN,
    "ventilated" BOOLEAN,
    "archived_on" DATE,
    "entry_hash" TEXT NOT NULL,

    CONSTRAINT "storage_place_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateIndex
CREATE INDEX "stock_event_workspace_id_act_id_idx" ON "stock_event"("workspace_id", "act_id");

-- AddForeignKey
ALTER TABLE "lot" ADD CONSTRAINT "lot_workspace_id_place_id_fkey" FOREIGN KEY ("workspace_id", "place_id") REFERENCES "storage_place"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "lot_receipt" ADD CONSTRAINT "lot_receipt_workspace_id_place_id_fkey" FOREIGN KEY ("workspace_id", "place_id") REFERENCES "storage_place"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "stock_event" ADD CONSTRAINT "stock_event_workspace_id_place_id_fkey" FOREIGN KEY ("workspace_id", "place_id") REFERENCES "storage_place"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "stock_event" ADD CONSTRAINT "stock_event_workspace_id_from_place_id_fkey" FOREIGN KEY ("workspace_id", "from_place_id") REFERENCES "storage_place"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "stock_event" ADD CONSTRAINT "stock_event_workspace_id_act_id_fkey" FOREIGN KEY ("workspace_id", "act_id") REFERENCES "stock_act"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "stock_act" ADD CONSTRAINT "stock_act_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "storage_place" ADD CONSTRAINT "storage_place_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- Part 2.

ALTER TABLE storage_place
  ADD CONSTRAINT storage_place_name CHECK (name <> ''),
  ADD CONSTRAINT storage_place_limits CHECK (area > 0 AND area < 1e15 AND volume > 0 AND volume < 1e15
    AND weight > 0 AND weight < 1e15 AND count > 0 AND count < 1e15),
  ADD CONSTRAINT storage_place_units CHECK ((area IS NULL) = (area_unit IS NULL)
    AND (volume IS NULL) = (volume_unit IS NULL) AND (weight IS NULL) = (weight_unit IS NULL));
CREATE UNIQUE INDEX storage_place_live_name ON storage_place (workspace_id, lower(name)) WHERE archived_on IS NULL;

ALTER TABLE stock_act
  ADD CONSTRAINT stock_act_kind CHECK (kind IN ('moved-between', 'counted', 'storage-money', 'unused', 'left-overs'));

ALTER TABLE store
  ADD CONSTRAINT store_return_days CHECK (return_days BETWEEN 1 AND 3650),
  ADD CONSTRAINT store_price_adjustment_days CHECK (price_adjustment_days BETWEEN 1 AND 3650),
  ADD CONSTRAINT store_lead_days CHECK (lead_days BETWEEN 1 AND 3650),
  ADD CONSTRAINT store_restocking CHECK (restocking_percent BETWEEN 0 AND 100);

ALTER TABLE lot
  ADD CONSTRAINT lot_expected CHECK (expected_on >= ordered_on),
  ADD CONSTRAINT lot_lead_days CHECK (lead_days BETWEEN 1 AND 3650),
  ADD CONSTRAINT lot_returnable CHECK (returnable_until >= ordered_on),
  ADD CONSTRAINT lot_adjustable CHECK (adjustable_until >= ordered_on),
  ADD CONSTRAINT lot_restocking CHECK (restocking_percent BETWEEN 0 AND 100),
  ADD CONSTRAINT lot_reasons CHECK (given_free <> '' AND other_currency <> '');

ALTER TABLE stock_event
  DROP CONSTRAINT stock_event_kind,
  DROP CONSTRAINT stock_event_quantity,
  ADD CONSTRAINT stock_event_kind CHECK (kind IN ('allocated', 'released', 'drawn', 'returned', 'sold', 'written-off',
    'found', 'missing', 'moved', 'stored')),
  -- Storage money is of a lot, not of so many of it: what it is borne by follows from the day.
  ADD CONSTRAINT stock_event_quantity CHECK (quantity < 1e15 AND quantity >= 0 AND (quantity = 0) = (kind = 'stored')),
  ADD CONSTRAINT stock_event_stored CHECK (kind <> 'stored' OR amount > 0),
  ADD CONSTRAINT stock_event_place CHECK (place_id IS NULL OR kind NOT IN ('allocated', 'released')),
  ADD CONSTRAINT stock_event_from_place CHECK (from_place_id IS NULL OR (kind = 'moved' AND from_place_id IS DISTINCT FROM
    place_id)),
  ADD CONSTRAINT stock_event_for_nobody CHECK (kind NOT IN ('moved', 'stored') OR requirement_id IS NULL);

-- Conservation as before (ground, part 2): what is moved stays, and storage money is no stock.

CREATE OR REPLACE FUNCTION refuse_stock_from_nothing(of_workspace uuid, of_lot uuid) RETURNS void LANGUAGE plpgsql AS $$
DECLARE
  there numeric;
  short date;
BEGIN
  SELECT quantity INTO there FROM lot WHERE workspace_id = of_workspace AND id = of_lot FOR NO KEY UPDATE;
  WITH event AS (
    SELECT kind, quantity, on_day, requirement_id FROM stock_event
    WHERE workspace_id = of_workspace AND lot_id = of_lot AND undone_at IS NULL AND kind NOT IN ('moved', 'stored')
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

CREATE OR REPLACE FUNCTION conserve_stock_of_event() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'UPDATE' AND to_jsonb(NEW) - 'undone_at' IS DISTINCT FROM to_jsonb(OLD) - 'undone_at' THEN
    RAISE EXCEPTION 'a stock event is never rewritten: undo it and enter a new one'
      USING ERRCODE = 'check_violation', CONSTRAINT = 'stock_event_keeps_its_figures', TABLE = 'stock_event';
  END IF;
  PERFORM refuse_stock_from_nothing(NEW.workspace_id, NEW.lot_id);
  RETURN NULL;
END $$;

-- No more comes in than was bought. Receipts and payments are undone, never rewritten.

CREATE FUNCTION refuse_receiving_more() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  bought numeric;
BEGIN
  SELECT quantity INTO bought FROM lot WHERE workspace_id = NEW.workspace_id AND id = NEW.lot_id FOR NO KEY UPDATE;
  IF (SELECT sum(quantity) FROM lot_receipt WHERE workspace_id = NEW.workspace_id AND lot_id = NEW.lot_id
      AND undone_at IS NULL) > bought THEN
    RAISE EXCEPTION 'lot % would receive more than was bought', NEW.lot_id
      USING ERRCODE = 'check_violation', CONSTRAINT = 'no_more_received_than_bought', TABLE = 'lot_receipt';
  END IF;
  RETURN NULL;
END $$;
CREATE TRIGGER lot_receipt_within_lot AFTER INSERT OR UPDATE ON lot_receipt
  FOR EACH ROW EXECUTE FUNCTION refuse_receiving_more();

-- The change log, one workspace at a time, and the role the program works as: as for every table (ground, part 2).

DO $$
DECLARE
  noun text;
BEGIN
  FOREACH noun IN ARRAY ARRAY['storage_place', 'stock_act']
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
    GRANT SELECT, INSERT, UPDATE ON storage_place TO dunnage_app;
    GRANT SELECT, INSERT ON stock_act TO dunnage_app;
    GRANT UPDATE (undone_at) ON stock_act TO dunnage_app;
    GRANT USAGE ON SEQUENCE stock_act_sequence_seq TO dunnage_app;
  END IF;
END $$;

-- What was typed as text becomes places, one per name and workspace, capitals aside; each workspace entered in turn, so
-- that the policies bind this too.

DO $$
DECLARE
  one uuid;
BEGIN
  PERFORM set_config('app.finding', 'on', true);
  FOR one IN SELECT id FROM workspace
  LOOP
    PERFORM set_config('app.workspace', one::text, true);
    INSERT INTO storage_place (workspace_id, id, name, entry_hash)
      SELECT DISTINCT ON (lower(btrim(stored_at))) one, gen_random_uuid(), btrim(stored_at), ''
      FROM lot WHERE workspace_id = one AND btrim(stored_at) <> '' ORDER BY lower(btrim(stored_at)), sequence;
    UPDATE lot SET place_id = p.id FROM storage_place p
      WHERE lot.workspace_id = one AND p.workspace_id = one AND lower(p.name) = lower(btrim(lot.stored_at));
  END LOOP;
  PERFORM set_config('app.workspace', '', true), set_config('app.finding', 'off', true);
END $$;

ALTER TABLE lot DROP COLUMN stored_at;
