-- Answered from the index alone, else the planner reads a material's every entry in the other one instead.
DROP INDEX observation_with_an_end;
CREATE INDEX observation_with_an_end
  ON observation (workspace_id, material_id, until_day) INCLUDE (id, store_id, seen_on)
  WHERE deleted_at IS NULL AND until_day IS NOT NULL;
