-- Reports of savings as they were when they were kept. Part 1 follows prisma/schema.prisma; part 2 is what the database
-- itself refuses.

-- CreateTable
CREATE TABLE "saved_report" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL,
    "made_on" DATE NOT NULL,
    "query" JSONB NOT NULL,
    "content" JSONB NOT NULL,
    "figures" JSONB NOT NULL,
    "sequence" BIGSERIAL NOT NULL,
    "entry_hash" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "deleted_at" TIMESTAMPTZ(6),

    CONSTRAINT "saved_report_pkey" PRIMARY KEY ("workspace_id","id")
);

-- AddForeignKey
ALTER TABLE "saved_report" ADD CONSTRAINT "saved_report_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- Part 2.

ALTER TABLE saved_report
  ADD CONSTRAINT saved_report_query CHECK (jsonb_typeof(query) = 'object'),
  ADD CONSTRAINT saved_report_content CHECK (jsonb_typeof(content) = 'object'),
  ADD CONSTRAINT saved_report_figures CHECK (jsonb_typeof(figures) = 'object');

-- The change log, one workspace at a time, and the role the program works as: as for every table (ground, part 2). What was
-- kept never changes; it can be deleted and brought back.

CREATE TRIGGER saved_report_logged_added AFTER INSERT ON saved_report REFERENCING NEW TABLE AS added
  FOR EACH STATEMENT EXECUTE FUNCTION log_added();
CREATE TRIGGER saved_report_logged_changed AFTER UPDATE ON saved_report REFERENCING OLD TABLE AS earlier NEW TABLE AS later
  FOR EACH STATEMENT EXECUTE FUNCTION log_changed();
CREATE TRIGGER saved_report_logged_removed AFTER DELETE ON saved_report REFERENCING OLD TABLE AS removed
  FOR EACH STATEMENT EXECUTE FUNCTION log_removed();
ALTER TABLE saved_report ENABLE ROW LEVEL SECURITY, FORCE ROW LEVEL SECURITY;
CREATE POLICY own_workspace ON saved_report USING (workspace_id = current_workspace())
  WITH CHECK (workspace_id = current_workspace());

DO $$
BEGIN
  IF EXISTS (SELECT 1 FROM pg_roles WHERE rolname = 'dunnage_app') THEN
    GRANT SELECT, INSERT ON saved_report TO dunnage_app;
    GRANT UPDATE (deleted_at) ON saved_report TO dunnage_app;
    GRANT USAGE ON SEQUENCE saved_report_sequence_seq TO dunnage_app;
  END IF;
END $$;
