-- What one purchase unit gives, typed with a takeoff where the material's own sizes do not say: by the line's key.

-- AlterTable
ALTER TABLE "takeoff" ADD COLUMN     "yields" JSONB NOT NULL DEFAULT '{}';

-- Part 2.

ALTER TABLE takeoff ADD CONSTRAINT takeoff_yields CHECK (jsonb_typeof(yields) = 'object');

DO $$
BEGIN
  IF EXISTS (SELECT 1 FROM pg_roles WHERE rolname = 'dunnage_app') THEN
    GRANT UPDATE (yields) ON takeoff TO dunnage_app;
  END IF;
END $$;
