-- Files of rates and of index values, each taken back as one; reference indices, whose values keep the day they were
-- published; the index a material is held against. Part 1 follows prisma/schema.prisma; part 2 is what the database refuses.

-- AlterTable
ALTER TABLE "exchange_rate" ADD COLUMN     "taken_file_id" UUID;

-- AlterTable
ALTER TABLE "material" ADD COLUMN     "index_id" UUID;

-- CreateTable
CREATE TABLE "taken_file" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "source" TEXT NOT NULL,
    "index_id" UUID,
    "added" INTEGER NOT NULL,
    "taken_at" TIMESTAMPTZ(6) NOT NULL DEFAULT clock_timestamp(),
    "undone_at" TIMESTAMPTZ(6),

    CONSTRAINT "taken_file_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "reference_index" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "series" TEXT NOT NULL,
    "publisher" TEXT NOT NULL,
    "base" TEXT,
    "entry_hash" TEXT NOT NULL,

    CONSTRAINT "reference_index_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateTable
CREATE TABLE "index_value" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "index_id" UUID NOT NULL,
    "month" DATE NOT NULL,
    "published_on" DATE NOT NULL,
    "value" DECIMAL NOT NULL,
    "preliminary" BOOLEAN,
    "taken_file_id" UUID,

    CONSTRAINT "index_value_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateIndex
CREATE UNIQUE INDEX "reference_index_workspace_id_publisher_series_key" ON "reference_index"("workspace_id", "publisher", "series");

-- CreateIndex
CREATE UNIQUE INDEX "index_value_workspace_id_index_id_month_published_on_key" ON "index_value"("workspace_id", "index_id", "month", "published_on");

-- AddForeignKey
ALTER TABLE "exchange_rate" ADD CONSTRAINT "exchange_rate_workspace_id_taken_file_id_fkey" FOREIGN KEY ("workspace_id", "taken_file_id") REFERENCES "taken_file"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "material" ADD CONSTRAINT "material_workspace_id_index_id_fkey" FOREIGN KEY ("workspace_id", "index_id") REFERENCES "reference_index"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "taken_file" ADD CONSTRAINT "taken_file_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "taken_file" ADD CONSTRAINT "taken_file_workspace_id_index_id_fkey" FOREIGN KEY ("workspace_id", "index_id") REFERENCES "reference_index"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "reference_index" ADD CONSTRAINT "reference_index_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "index_value" ADD CONSTRAINT "index_value_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "index_value" ADD CONSTRAINT "index_value_workspace_id_index_id_fkey" FOREIGN KEY ("workspace_id", "index_id") REFERENCES "reference_index"("workspace_id", "id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "index_value" ADD CONSTRAINT "index_value_workspace_id_taken_file_id_fkey" FOREIGN KEY ("workspace_id", "taken_file_id") REFERENCES "taken_file"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- Part 2.

ALTER TABLE taken_file
  ADD CONSTRAINT taken_file_kind CHECK (kind IN ('rates', 'index') AND (kind = 'index') = (index_id IS NOT NULL)),
  ADD CONSTRAINT taken_file_source CHECK (source <> '' AND name <> ''),
  ADD CONSTRAINT taken_file_added CHECK (added > 0);

ALTER TABLE reference_index
  ADD CONSTRAINT reference_index_words CHECK (name <> '' AND series <> '' AND publisher <> '' AND base <> '');

ALTER TABLE index_value
  ADD CONSTRAINT index_value_month CHECK (extract(day FROM month) = 1),
  ADD CONSTRAINT index_value_published CHECK (published_on >= '1990-01-01'),
  ADD CONSTRAINT index_value_positive CHECK (value > 0 AND value < 1e15);

-- The change log, one workspace at a time, and the role the program works as: as for every table (ground, part 2). A value
-- once published is never rewritten: a revision stands beside it, and only what was taken back may be taken in again.

CREATE FUNCTION index_value_stays() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NOT EXISTS (SELECT 1 FROM taken_file f WHERE f.workspace_id = OLD.workspace_id AND f.id = OLD.taken_file_id
    AND f.undone_at IS NOT NULL) THEN
    RAISE EXCEPTION 'a published index value is never rewritten';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER index_value_stays BEFORE UPDATE ON index_value FOR EACH ROW EXECUTE FUNCTION index_value_stays();

DO $$
DECLARE
  noun text;
BEGIN
  FOREACH noun IN ARRAY ARRAY['taken_file', 'reference_index', 'index_value']
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
    GRANT SELECT, INSERT ON taken_file, index_value TO dunnage_app;
    GRANT UPDATE (undone_at) ON taken_file TO dunnage_app;
    GRANT UPDATE (value, preliminary, taken_file_id) ON index_value TO dunnage_app;
    GRANT SELECT, INSERT, UPDATE ON reference_index TO dunnage_app;
  END IF;
END $$;
