-- Why hours are held: when they came in their day was locked, their job finished or cancelled, or the person gone. The column that
-- said whether is worked out from the one that says why, so that the two never differ; what is void waits for nothing.
-- The rows are rewritten by the change of the type: no trigger, and no journal row that nobody made.

ALTER TABLE time_entry
  DROP CONSTRAINT ck_time_entry__approved_by,
  ALTER COLUMN held DROP DEFAULT,
  ALTER COLUMN held TYPE text[] USING CASE WHEN held THEN ARRAY['day-locked'] ELSE '{}'::text[] END;
ALTER TABLE time_entry RENAME COLUMN held TO held_because;
ALTER TABLE time_entry
  ALTER COLUMN held_because SET DEFAULT '{}',
  ADD COLUMN held boolean NOT NULL GENERATED ALWAYS AS (held_because <> '{}' AND voided_at IS NULL) STORED,
  ADD CONSTRAINT ck_time_entry__held_because CHECK (held_because <@ ARRAY['day-locked', 'job-finished', 'job-cancelled', 'person-inactive']),
  ADD CONSTRAINT ck_time_entry__approved_by CHECK ((approved_at IS NULL) OR (ended_at IS NOT NULL AND voided_at IS NULL AND NOT held));

-- What the office has still to look at.
CREATE INDEX ix_time_entry__held ON time_entry (company_id, id) WHERE held;
COMMENT ON COLUMN time_entry.held_because IS 'why it counts for nothing until the office releases it; empty when it counts';
COMMENT ON COLUMN time_entry.held IS 'waits for the office to release it';
