-- Offers that name their last day, by material: what is still in force on a day however long ago it was seen.
CREATE INDEX observation_with_an_end
  ON observation (workspace_id, material_id, until_day) WHERE deleted_at IS NULL AND until_day IS NOT NULL;
