-- Who comes when to which job, what has to come before, and the calendars that show it.

CREATE TABLE visit (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  job_id uuid NOT NULL,
  day date NOT NULL,
  start_time text NOT NULL CONSTRAINT ck_visit__start_time CHECK (start_time ~ '^([01][0-9]|2[0-3]):[0-5][0-9]$'),
  length_minutes integer NOT NULL CONSTRAINT ck_visit__length_minutes CHECK (length_minutes BETWEEN 1 AND 1440),
  time_zone text NOT NULL,
  starts_at timestamptz NOT NULL,
  ends_at timestamptz NOT NULL CONSTRAINT ck_visit__ends_at CHECK (ends_at > starts_at),
  bring text[] NOT NULL,
  note text,
  state text NOT NULL DEFAULT 'planned' CONSTRAINT ck_visit__state CHECK (state IN ('planned', 'cancelled')),
  cancel_reason text,
  changed_at timestamptz NOT NULL,
  CONSTRAINT pk_visit PRIMARY KEY (company_id, id),
  CONSTRAINT fk_visit__job_id FOREIGN KEY (company_id, job_id) REFERENCES job,
  CONSTRAINT ck_visit__cancel_reason CHECK ((state = 'cancelled') = (cancel_reason IS NOT NULL))
);
CREATE INDEX ix_visit__job ON visit (company_id, job_id, id);
CREATE INDEX ix_visit__day ON visit (company_id, day, id);
CREATE INDEX ix_visit__starts_at ON visit (company_id, starts_at);
CALL make_tenant_table('visit');
-- A calendar that was told of a visit must be told that it is off: cancelled, never taken away.
REVOKE DELETE ON visit FROM rillbook_service;
COMMENT ON COLUMN visit.start_time IS 'by the clocks of time_zone, the site''s; starts_at and ends_at are the instants that it means';
COMMENT ON COLUMN visit.changed_at IS 'the last change of the visit or of who comes';

CREATE TABLE visit_person (
  company_id uuid NOT NULL,
  id uuid NOT NULL DEFAULT uuidv7(),
  visit_id uuid NOT NULL,
  person_id uuid NOT NULL,
  position integer NOT NULL,
  left_at timestamptz,
  CONSTRAINT pk_visit_person PRIMARY KEY (company_id, visit_id, person_id),
  CONSTRAINT fk_visit_person__visit_id FOREIGN KEY (company_id, visit_id) REFERENCES visit,
  CONSTRAINT fk_visit_person__person_id FOREIGN KEY (company_id, person_id) REFERENCES person
);
CREATE INDEX ix_visit_person__person ON visit_person (company_id, person_id, visit_id);
CALL make_tenant_table('visit_person');
REVOKE DELETE ON visit_person FROM rillbook_service;
COMMENT ON COLUMN visit_person.left_at IS 'when the person was taken off the visit; null while they come. Their calendar shows it as cancelled';

CREATE TABLE day_off (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  person_id uuid NOT NULL,
  first_day date NOT NULL,
  last_day date NOT NULL,
  note text,
  withdrawn_at timestamptz,
  CONSTRAINT pk_day_off PRIMARY KEY (company_id, id),
  CONSTRAINT fk_day_off__person_id FOREIGN KEY (company_id, person_id) REFERENCES person,
  CONSTRAINT ck_day_off__last_day CHECK (last_day >= first_day AND last_day - first_day <= 365)
);
CREATE INDEX ix_day_off__person ON day_off (company_id, person_id, id);
CREATE INDEX ix_day_off__last_day ON day_off (company_id, last_day) WHERE withdrawn_at IS NULL;
CALL make_tenant_table('day_off');
REVOKE DELETE ON day_off FROM rillbook_service;

CREATE TABLE blocker (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  job_id uuid NOT NULL,
  kind text NOT NULL CONSTRAINT ck_blocker__kind CHECK (kind IN ('utility-locate', 'permit', 'materials', 'other')),
  requested_on date,
  clear_on date,
  cleared_on date,
  valid_until date,
  reference text,
  note text,
  withdrawn_at timestamptz,
  CONSTRAINT pk_blocker PRIMARY KEY (company_id, id),
  CONSTRAINT fk_blocker__job_id FOREIGN KEY (company_id, job_id) REFERENCES job
);
CREATE INDEX ix_blocker__job ON blocker (company_id, job_id, id);
CALL make_tenant_table('blocker');
REVOKE DELETE ON blocker FROM rillbook_service;
COMMENT ON COLUMN blocker.clear_on IS 'when it is expected to be out of the way; null when nobody knows';
COMMENT ON COLUMN blocker.valid_until IS 'the last day on which the clearance holds, such as that of a locate''s marks; null when it does not lapse';

CREATE TABLE calendar_feed (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  person_id uuid NOT NULL,
  name text NOT NULL,
  secret_hash bytea NOT NULL,
  revoked_at timestamptz,
  CONSTRAINT pk_calendar_feed PRIMARY KEY (company_id, id),
  CONSTRAINT fk_calendar_feed__person_id FOREIGN KEY (company_id, person_id) REFERENCES person
);
CREATE INDEX ix_calendar_feed__person ON calendar_feed (company_id, person_id, id);
CALL make_tenant_table('calendar_feed', 'secret_hash');
REVOKE DELETE ON calendar_feed FROM rillbook_service;
