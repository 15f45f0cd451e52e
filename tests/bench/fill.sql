-- Fills an empty, migrated database with one workspace of a size. The same size gives the same rows, ending today.
-- :materials and the others are put in by fill.ts. Triggers rest meanwhile: what is written here is sound by construction.
SET session_replication_role = replica;

CREATE FUNCTION pg_temp.id(kind int, n bigint) RETURNS uuid LANGUAGE sql IMMUTABLE
  AS $$ SELECT format('%s-0000-4000-8000-%s', lpad(kind::text, 8, '0'), lpad(n::text, 12, '0'))::uuid $$;

UPDATE workspace SET home_currency = 'CAD', tax_region = 'CA-NS', time_zone = 'UTC' WHERE kind = 'owner';

CREATE TEMP TABLE here AS SELECT id AS workspace_id FROM workspace WHERE kind = 'owner';

INSERT INTO store (workspace_id, id, name, tax_region, currency, prices_include_tax, import_charges_confirmed, entry_hash)
SELECT workspace_id, pg_temp.id(1, n), 'Store ' || n, 'CA-NS', 'CAD', false, false, ''
FROM here, generate_series(0, :stores - 1) n;

INSERT INTO material (workspace_id, id, name, category, purchase_unit, dimensions, entry_hash)
SELECT workspace_id, pg_temp.id(2, n), 'Panel ' || n, 'sheet-goods', 'sheet',
  '{"faceWidth":{"value":"4","unit":"foot"},"faceLength":{"value":"8","unit":"foot"}}', ''
FROM here, generate_series(0, :materials - 1) n;

INSERT INTO observation (workspace_id, id, material_id, store_id, seen_on, terms, amount, currency, per_quantity, per_unit,
  tax_included, min_quantity, max_quantity, until_day, entry_hash)
SELECT workspace_id, pg_temp.id(3, n), pg_temp.id(2, n % :materials), pg_temp.id(1, (n / :materials) % :stores), seen_on, terms,
  round((15 + (n % :materials) % 60 + (n * 7919::bigint % 1000) / 100.0) * CASE terms WHEN 'shelf' THEN 1 ELSE 0.85 END, 2), 'CAD', 1, 'sheet',
  false, CASE terms WHEN 'quantity-break' THEN 10 END, CASE WHEN terms = 'special' AND n % 2 = 0 THEN 25 END,
  CASE terms WHEN 'special' THEN seen_on + 6 END, ''
FROM here, generate_series(0, :prices - 1) n,
  LATERAL (SELECT current_date - (n * 7919::bigint % 1095)::int AS seen_on,
    CASE WHEN n * 31::bigint % 20 < 17 THEN 'shelf' WHEN n * 31::bigint % 20 < 19 THEN 'special' ELSE 'quantity-break' END AS terms) t;

INSERT INTO project (workspace_id, id, name, entry_hash)
SELECT workspace_id, pg_temp.id(4, n), 'Project ' || n, '' FROM here, generate_series(0, :projects - 1) n;
INSERT INTO project_status (workspace_id, project_id, status, from_day)
SELECT workspace_id, pg_temp.id(4, n), 'live', current_date - 300 FROM here, generate_series(0, :projects - 1) n;

INSERT INTO requirement (workspace_id, id, project_id, material_id, entry_hash)
SELECT workspace_id, pg_temp.id(5, n), pg_temp.id(4, n % :projects), pg_temp.id(2, n % :materials), ''
FROM here, generate_series(0, :requirements - 1) n;
INSERT INTO requirement_revision (workspace_id, requirement_id, valid_from, quantity, unit, waste_percent, needed_by, accepts_used)
SELECT workspace_id, pg_temp.id(5, n), current_date - 250, 12 + n % 50, 'sheet', 10, current_date + 5 + (n % 200)::int, false
FROM here, generate_series(0, :requirements - 1) n;

-- Each lot is set aside for a requirement of its material; every other one is partly drawn.
CREATE TEMP TABLE laid_in AS
SELECT n, n % :requirements AS r, 2 + n % 4 AS quantity, current_date - 200 + (n % 150)::int AS on_day
FROM generate_series(0, :lots - 1) n;
INSERT INTO lot (workspace_id, id, material_id, origin, terms, quantity, paid_amount, paid_currency, tax_included, ordered_on,
  condition, entry_hash)
SELECT workspace_id, pg_temp.id(6, n), pg_temp.id(2, r % :materials), 'bought', 'special', quantity, quantity * (15 + r % :materials % 60),
  'CAD', false, on_day, 1, ''
FROM here, laid_in;
INSERT INTO lot_receipt (workspace_id, lot_id, quantity, on_day)
SELECT workspace_id, pg_temp.id(6, n), quantity, on_day FROM here, laid_in;
INSERT INTO lot_payment (workspace_id, lot_id, amount, on_day)
SELECT workspace_id, pg_temp.id(6, n), quantity * (15 + r % :materials % 60) * 1.14, on_day FROM here, laid_in;
INSERT INTO stock_event (workspace_id, id, lot_id, kind, quantity, on_day, requirement_id, entry_hash)
SELECT workspace_id, pg_temp.id(7, n), pg_temp.id(6, n), 'allocated', quantity, on_day, pg_temp.id(5, r), '' FROM here, laid_in;
INSERT INTO stock_event (workspace_id, id, lot_id, kind, quantity, on_day, requirement_id, entry_hash)
SELECT workspace_id, pg_temp.id(8, n), pg_temp.id(6, n), 'drawn', 1, on_day + 20, pg_temp.id(5, r), '' FROM here, laid_in WHERE n % 2 = 0;

SET session_replication_role = DEFAULT;
