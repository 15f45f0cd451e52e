-- Money for storing says how much: an amount that is missing satisfied the first check, being neither more nor less.
ALTER TABLE stock_event
  DROP CONSTRAINT stock_event_stored,
  ADD CONSTRAINT stock_event_stored CHECK (kind <> 'stored' OR (amount IS NOT NULL AND amount > 0));
