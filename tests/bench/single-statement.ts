/**
 * The bar for exposure: the open quantity of every requirement at the cheapest offer in force, as one statement that knows
 * one tax rate, one currency, and no packs, limits, breaks or fees. $1: the day.
 */
export const EXPOSURE_IN_ONE_STATEMENT = `
WITH held AS (
  SELECT requirement_id, sum(CASE kind WHEN 'allocated' THEN quantity WHEN 'released' THEN -quantity ELSE 0 END) AS quantity
  FROM stock_event WHERE requirement_id IS NOT NULL AND undone_at IS NULL AND on_day <= $1 GROUP BY requirement_id
), required AS (
  SELECT DISTINCT ON (requirement_id) requirement_id, quantity * (1 + waste_percent / 100) AS quantity
  FROM requirement_revision WHERE valid_from <= $1 ORDER BY requirement_id, valid_from DESC
), newest AS (
  SELECT DISTINCT ON (material_id, store_id, terms, tier) material_id, terms, tier, amount / per_quantity AS price, seen_on, until_day
  FROM observation WHERE deleted_at IS NULL AND seen_on <= $1 AND workspace_id = (SELECT id FROM workspace WHERE kind = 'owner')
  ORDER BY material_id, store_id, terms, tier, seen_on DESC, sequence DESC
), best AS (
  SELECT material_id, min(price) * 1.14 AS price FROM newest
  WHERE tier = 0 AND coalesce(until_day, CASE terms WHEN 'special' THEN seen_on + 7 ELSE seen_on + 365 END) >= $1
  GROUP BY material_id
)
SELECT r.project_id, sum(round(greatest(0, ceil(q.quantity - coalesce(h.quantity, 0))) * b.price, 2)) AS cost
FROM requirement r JOIN required q ON q.requirement_id = r.id LEFT JOIN held h ON h.requirement_id = r.id
LEFT JOIN best b USING (material_id) WHERE r.closed_on IS NULL OR r.closed_on > $1 GROUP BY r.project_id`;
