-- What the workspace wants to be told, what a person did with a reminder, and which digests were mailed. Part 1 follows
-- prisma/schema.prisma; part 2 is what the database itself refuses.

-- CreateTable
CREATE TABLE "wanted_price" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "material_id" UUID NOT NULL,
    "amount" DECIMAL NOT NULL,
    "currency" TEXT NOT NULL,

    CONSTRAINT "wanted_price_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "reminder_setting" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "lapse_days" INTEGER,
    "feed_hash" TEXT,
    "feed_made_at" TIMESTAMPTZ(6),

    CONSTRAINT "reminder_setting_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "reminder_mark" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "until" DATE,
    "sequence" BIGSERIAL NOT NULL,
    "entry_hash" TEXT NOT NULL,
    "made_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "undone_at" TIMESTAMPTZ(6),

    CONSTRAINT "reminder_mark_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "reminder_digest" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "day" DATE NOT NULL,
    "keys" TEXT[],
    "state" TEXT NOT NULL,
    "trouble" TEXT,
    "at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "reminder_digest_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateIndex
CREATE UNIQUE INDEX "wanted_price_workspace_id_material_id_key" ON "wanted_price"("workspace_id", "material_id");

-- CreateIndex
CREATE UNIQUE INDEX "reminder_setting_workspace_id_key" ON "reminder_setting"("workspace_id");

-- CreateIndex
CREATE UNIQUE INDEX "reminder_digest_workspace_id_day_key" ON "reminder_digest"("workspace_id", "day");

-- AddForeignKey
ALTER TABLE "wanted_price" ADD CONSTRAINT "wanted_price_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "wanted_price" ADD CONSTRAINT "wanted_price_workspace_id_material_id_fkey" FOREIGN KEY ("workspace_id", "material_id") REFERENCES "material"("workspace_id", "id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "reminder_setting" ADD CONSTRAINT "reminder_setting_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "reminder_mark" ADD CONSTRAINT "reminder_mark_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "reminder_digest" ADD CONSTRAINT "reminder_digest_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- Part 2.

ALTER TABLE wanted_price
  ADD CONSTRAINT wanted_price_amount CHECK (amount > 0 AND amount < 1e15),
  ADD CONSTRAINT wanted_price_currency CHECK (currency ~ '^[A-Z]{3}$');
ALTER TABLE reminder_setting
  ADD CONSTRAINT reminder_setting_lapse_days CHECK (lapse_days BETWEEN 1 AND 3650),
  ADD CONSTRAINT reminder_setting_feed CHECK ((feed_hash IS NULL) = (feed_made_at IS NULL));
ALTER TABLE reminder_mark
  ADD CONSTRAINT reminder_mark_kind CHECK (kind IN ('done', 'snoozed')),
  ADD CONSTRAINT reminder_mark_until CHECK ((kind = 'snoozed') = (until IS NOT NULL));
-- Of one reminder the last thing done with it counts.
CREATE UNIQUE INDEX reminder_mark_one ON reminder_mark (workspace_id, key) WHERE undone_at IS NULL;
ALTER TABLE reminder_digest
  ALTER COLUMN keys SET NOT NULL,
  ADD CONSTRAINT reminder_digest_state CHECK (state IN ('sending', 'sent', 'failed')),
  ADD CONSTRAINT reminder_digest_trouble CHECK ((state = 'failed') = (trouble IS NOT NULL));

-- The change log, one workspace at a time, and the role the program works as: as for every table (ground, part 2).

DO $$
DECLARE
  noun text;
BEGIN
  FOREACH noun IN ARRAY ARRAY['wanted_price', 'reminder_setting', 'reminder_mark', 'reminder_digest']
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
    GRANT SELECT, INSERT, UPDATE, DELETE ON wanted_price TO dunnage_app;
    GRANT SELECT, INSERT, UPDATE ON reminder_setting, reminder_digest TO dunnage_app;
    GRANT SELECT, INSERT, UPDATE (undone_at) ON reminder_mark TO dunnage_app;
    GRANT USAGE ON SEQUENCE reminder_mark_sequence_seq TO dunnage_app;
  END IF;
END $$;
