-- Hours as a crew's phone logs them: running, with breaks and travel, approved by day, held when their days are locked.

ALTER TABLE time_entry
  ALTER COLUMN ended_at DROP NOT NULL,
  ADD COLUMN kind text NOT NULL DEFAULT 'work' CONSTRAINT ck_time_entry__kind CHECK (kind IN ('work', 'travel')),
  ADD COLUMN breaks jsonb NOT NULL DEFAULT '[]',
  ADD COLUMN unpaid_span_seconds numeric(8, 3) NOT NULL DEFAULT 0,
  ADD COLUMN held boolean NOT NULL DEFAULT false,
  ADD COLUMN approved_at timestamptz,
  ADD COLUMN approved_by uuid,
  ADD COLUMN recorded_at timestamptz,
  ADD COLUMN received_at timestamptz NOT NULL DEFAULT now(),
  ADD COLUMN clock_skew_seconds numeric(14, 3),
  ADD COLUMN changed_at timestamptz,
  ADD COLUMN changed_by uuid,
  ADD COLUMN change_reason text,
  DROP CONSTRAINT ck_time_entry__break_within,
  ADD CONSTRAINT ck_time_entry__break_within CHECK (make_interval(mins => unpaid_break_minutes, secs => unpaid_span_seconds::double precision) <= ended_at - started_at),
  ADD CONSTRAINT ck_time_entry__unpaid_span_seconds CHECK (unpaid_span_seconds >= 0),
  ADD CONSTRAINT ck_time_entry__approved_by CHECK ((approved_at IS NULL) OR (ended_at IS NOT NULL AND voided_at IS NULL AND NOT held)),
  -- Running hours have no end to overlap with: a phone left running on Monday must not refuse Tuesday's hours.
  DROP CONSTRAINT ex_time_entry__one_place_at_a_time,
  ADD CONSTRAINT ex_time_entry__one_place_at_a_time EXCLUDE USING gist
    (company_id WITH =, person_id WITH =, tstzrange(started_at, ended_at, '[)') WITH &&) WHERE (voided_at IS NULL AND ended_at IS NOT NULL);

CREATE UNIQUE INDEX uq_time_entry__person_id ON time_entry (company_id, person_id) WHERE ended_at IS NULL AND voided_at IS NULL;
CREATE INDEX ix_time_entry__started ON time_entry (company_id, person_id, started_at);
COMMENT ON COLUMN time_entry.ended_at IS 'null while the hours run; such hours count for nothing yet';
COMMENT ON COLUMN time_entry.unpaid_span_seconds IS 'what of breaks is not paid, beside unpaid_break_minutes; rests under 20 minutes are paid';
COMMENT ON COLUMN time_entry.held IS 'came in for a locked day; counts for nothing until the office releases it';
COMMENT ON COLUMN time_entry.clock_skew_seconds IS 'the phone''s clock less the service''s when it was sent; null when the phone did not tell its time';
COMMENT ON COLUMN time_entry.change_reason IS 'why this version is as it is; former versions are in the journal';

-- Through which day hours are settled, in the company's zone. No row: nothing is locked.
CREATE TABLE time_lock (
  company_id uuid NOT NULL CONSTRAINT fk_time_lock__company REFERENCES company,
  id uuid NOT NULL GENERATED ALWAYS AS (company_id) STORED,
  version integer NOT NULL DEFAULT 1,
  locked_through date,
  locked_by uuid,
  locked_at timestamptz NOT NULL,
  CONSTRAINT pk_time_lock PRIMARY KEY (company_id, id)
);
CALL make_tenant_table('time_lock');
REVOKE DELETE ON time_lock FROM rillbook_service;

-- The first instant that is not locked. Whoever writes hours holds the lock's key in common, whoever moves the lock
-- holds it alone: so hours can't slip into a day while it is being locked. Volatile, so that the day is read after the
-- wait and not before it.
CREATE FUNCTION hold_time_lock(company uuid) RETURNS timestamptz
  LANGUAGE plpgsql VOLATILE
  AS $$
BEGIN
  PERFORM pg_advisory_xact_lock_shared(hashtextextended('time-lock ' || company::text, 0));
  RETURN (SELECT (l.locked_through + 1)::timestamp AT TIME ZONE c.time_zone
          FROM time_lock l JOIN company c ON c.company_id = l.company_id WHERE l.company_id = company);
END $$;
