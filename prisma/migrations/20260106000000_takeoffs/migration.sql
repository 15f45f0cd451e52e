-- What a project was measured by. Part 1 follows prisma/schema.prisma; part 2 is what the database itself refuses.

-- AlterTable
ALTER TABLE "requirement" ADD COLUMN     "takeoff_id" UUID,
ADD COLUMN     "takeoff_line" TEXT;

-- CreateTable
CREATE TABLE "takeoff" (
    "workspace_id" UUID NOT NULL DEFAULT current_workspace(),
    "id" UUID NOT NULL,
    "project_id" UUID NOT NULL,
    "calculator" TEXT NOT NULL,
    "unit_system" TEXT NOT NULL,
    "inputs" JSONB NOT NULL,
    "sequence" BIGSERIAL NOT NULL,
    "entry_hash" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "takeoff_pkey" PRIMARY KEY ("workspace_id","id")
);

-- CreateIndex
CREATE INDEX "takeoff_workspace_id_project_id_idx" ON "takeoff"("workspace_id", "project_id");

-- CreateIndex
CREATE INDEX "requirement_workspace_id_takeoff_id_idx" ON "requirement"("workspace_id", "takeoff_id");

-- AddForeignKey
ALTER TABLE "requirement" ADD CONSTRAINT "requirement_workspace_id_takeoff_id_fkey" FOREIGN KEY ("workspace_id", "takeoff_id") REFERENCES "takeoff"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "takeoff" ADD CONSTRAINT "takeoff_workspace_id_fkey" FOREIGN KEY ("workspace_id") REFERENCES "workspace"("id") ON DELETE CASCADE ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "takeoff" ADD CONSTRAINT "takeoff_workspace_id_project_id_fkey" FOREIGN KEY ("workspace_id", "project_id") REFERENCES "project"("workspace_id", "id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- Part 2.

ALTER TABLE takeoff
  ADD CONSTRAINT takeoff_calculator CHECK (calculator <> ''),
  ADD CONSTRAINT takeoff_unit_system CHECK (unit_system IN ('imperial', 'metric')),
  ADD CONSTRAINT takeoff_inputs CHECK (jsonb_typeof(inputs) = 'object');

ALTER TABLE requirement
  ADD CONSTRAINT requirement_takeoff_line CHECK ((takeoff_id IS NULL) = (takeoff_line IS NULL));

-- The change log, one workspace at a time, and the role the program works as: as for every table (ground, part 2). Inputs
-- may change; the log keeps what they were.

CREATE TRIGGER takeoff_logged_added AFTER INSERT ON takeoff REFERENCING NEW TABLE AS added
  FOR EACH STATEMENT EXECUTE FUNCTION log_added();
CREATE TRIGGER takeoff_logged_changed AFTER UPDATE ON takeoff REFERENCING OLD TABLE AS earlier NEW TABLE AS later
  FOR EACH STATEMENT EXECUTE FUNCTION log_changed();
CREATE TRIGGER takeoff_logged_removed AFTER DELETE ON takeoff REFERENCING OLD TABLE AS removed
  FOR EACH STATEMENT EXECUTE FUNCTION log_removed();
ALTER TABLE takeoff ENABLE ROW LEVEL SECURITY, FORCE ROW LEVEL SECURITY;
CREATE POLICY own_workspace ON takeoff USING (workspace_id = current_workspace())
  WITH CHECK (workspace_id = current_workspace());

DO $$
BEGIN
  IF EXISTS (SELECT 1 FROM pg_roles WHERE rolname = 'dunnage_app') THEN
    GRANT SELECT, INSERT ON takeoff TO dunnage_app;
    GRANT UPDATE (inputs, unit_system) ON takeoff TO dunnage_app;
    GRANT USAGE ON SEQUENCE takeoff_sequence_seq TO dunnage_app;
  END IF;
END $$;
