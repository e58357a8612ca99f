-- The accepted work, what it took, what was billed and what was paid.

CREATE TABLE job (
  company_id uuid NOT NULL CONSTRAINT fk_job__company REFERENCES company,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  number text NOT NULL,
  state text NOT NULL CONSTRAINT ck_job__state CHECK (state IN ('planned', 'under-way', 'finished', 'cancelled')),
  title text NOT NULL,
  quote_id uuid NOT NULL,
  quote_revision integer NOT NULL,
  customer_id uuid,
  site_id uuid,
  feature_id uuid,
  time_zone text NOT NULL,
  currency text NOT NULL,
  contract_total numeric(19, 4) NOT NULL,
  contract_tax numeric(19, 4) NOT NULL,
  started_on date,
  finished_on date,
  cancelled_on date,
  cancel_reason text,
  CONSTRAINT pk_job PRIMARY KEY (company_id, id),
  CONSTRAINT uq_job__number UNIQUE (company_id, number),
  CONSTRAINT uq_job__quote UNIQUE (company_id, quote_id),
  CONSTRAINT ck_job__started_on CHECK (state NOT IN ('under-way', 'finished') OR started_on IS NOT NULL),
  CONSTRAINT ck_job__finished_on CHECK ((state = 'finished') = (finished_on IS NOT NULL)),
  CONSTRAINT ck_job__cancelled_on CHECK ((state = 'cancelled') = (cancelled_on IS NOT NULL) AND (cancelled_on IS NULL) = (cancel_reason IS NULL)),
  CONSTRAINT fk_job__quote_id FOREIGN KEY (company_id, quote_id) REFERENCES quote,
  CONSTRAINT fk_job__customer_id FOREIGN KEY (company_id, customer_id) REFERENCES customer,
  CONSTRAINT fk_job__site_id FOREIGN KEY (company_id, site_id) REFERENCES site,
  CONSTRAINT fk_job__feature_id FOREIGN KEY (company_id, feature_id) REFERENCES feature
);
CREATE INDEX ix_job__state ON job (company_id, state, id);
CREATE INDEX ix_job__site ON job (company_id, site_id, id);
CALL make_tenant_table('job');

-- What the accepted quote planned for a cost code: hours, purchases and price, as they stood that day.
CREATE TABLE job_plan (
  company_id uuid NOT NULL,
  id uuid NOT NULL DEFAULT uuidv7(),
  job_id uuid NOT NULL,
  position integer NOT NULL,
  cost_code text NOT NULL,
  hours numeric(14, 4) NOT NULL,
  cost numeric(19, 4) NOT NULL,
  amount numeric(19, 4) NOT NULL,
  CONSTRAINT pk_job_plan PRIMARY KEY (company_id, job_id, cost_code),
  CONSTRAINT fk_job_plan__job_id FOREIGN KEY (company_id, job_id) REFERENCES job
);
CALL make_tenant_table('job_plan');
-- What was agreed never changes, and a job is never taken away: not even by a mistake in the code.
REVOKE DELETE ON job FROM rillbook_service;
REVOKE UPDATE, DELETE ON job_plan FROM rillbook_service;

CREATE TABLE time_entry (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  job_id uuid NOT NULL,
  person_id uuid NOT NULL,
  cost_code text NOT NULL,
  started_at timestamptz NOT NULL,
  ended_at timestamptz NOT NULL,
  unpaid_break_minutes integer NOT NULL DEFAULT 0 CONSTRAINT ck_time_entry__unpaid_break_minutes CHECK (unpaid_break_minutes >= 0),
  note text,
  recorded_by uuid NOT NULL,
  hourly_wage numeric(14, 4) NOT NULL,
  burden_percent numeric(9, 4) NOT NULL,
  voided_at timestamptz,
  void_reason text,
  CONSTRAINT pk_time_entry PRIMARY KEY (company_id, id),
  CONSTRAINT fk_time_entry__job_id FOREIGN KEY (company_id, job_id) REFERENCES job,
  CONSTRAINT fk_time_entry__person_id FOREIGN KEY (company_id, person_id) REFERENCES person,
  CONSTRAINT ck_time_entry__void_reason CHECK ((voided_at IS NULL) = (void_reason IS NULL)),
  CONSTRAINT ck_time_entry__ended_at CHECK (ended_at > started_at),
  CONSTRAINT ck_time_entry__at_most_a_day CHECK (ended_at - started_at <= interval '24 hours'),
  CONSTRAINT ck_time_entry__break_within CHECK (make_interval(mins => unpaid_break_minutes) <= ended_at - started_at),
  CONSTRAINT ex_time_entry__one_place_at_a_time EXCLUDE USING gist
    (company_id WITH =, person_id WITH =, tstzrange(started_at, ended_at, '[)') WITH &&) WHERE (voided_at IS NULL)
);
CREATE INDEX ix_time_entry__job ON time_entry (company_id, job_id, id);
CREATE INDEX ix_time_entry__person ON time_entry (company_id, person_id, id);
CALL make_tenant_table('time_entry');
-- A wrong entry is voided, never taken away.
REVOKE DELETE ON time_entry FROM rillbook_service;
COMMENT ON COLUMN time_entry.hourly_wage IS 'the person''s wage when the entry was made: a later raise does not cost old hours anew';

CREATE TABLE cost (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  job_id uuid NOT NULL,
  cost_code text NOT NULL,
  kind text NOT NULL CONSTRAINT ck_cost__kind CHECK (kind IN ('material', 'disposal', 'rental', 'subcontract', 'other')),
  description text NOT NULL,
  amount numeric(19, 4) NOT NULL CONSTRAINT ck_cost__amount CHECK (amount <> 0),
  currency text NOT NULL,
  incurred_on date NOT NULL,
  supplier text,
  reference text,
  voided_at timestamptz,
  void_reason text,
  CONSTRAINT pk_cost PRIMARY KEY (company_id, id),
  CONSTRAINT ck_cost__void_reason CHECK ((voided_at IS NULL) = (void_reason IS NULL)),
  CONSTRAINT fk_cost__job_id FOREIGN KEY (company_id, job_id) REFERENCES job
);
CREATE INDEX ix_cost__job ON cost (company_id, job_id, id);
CALL make_tenant_table('cost');
-- A wrong cost is voided, never taken away.
REVOKE DELETE ON cost FROM rillbook_service;
COMMENT ON COLUMN cost.amount IS 'below zero for a supplier''s credit';

CREATE TABLE invoice (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  job_id uuid NOT NULL,
  basis text NOT NULL CONSTRAINT ck_invoice__basis CHECK (basis IN ('final')),
  state text NOT NULL CONSTRAINT ck_invoice__state CHECK (state IN ('draft', 'issued', 'part-paid', 'paid', 'void')),
  number text,
  quote_id uuid NOT NULL,
  quote_revision integer NOT NULL,
  title text NOT NULL,
  currency text NOT NULL,
  net_total numeric(19, 4) NOT NULL,
  tax_total numeric(19, 4) NOT NULL,
  gross_total numeric(19, 4) NOT NULL,
  taxes jsonb NOT NULL,
  paid_total numeric(19, 4) NOT NULL DEFAULT 0,
  issued_at timestamptz,
  issued_on date,
  due_on date,
  document_sha256 bytea,
  voided_at timestamptz,
  void_reason text,
  CONSTRAINT pk_invoice PRIMARY KEY (company_id, id),
  CONSTRAINT uq_invoice__number UNIQUE (company_id, number),
  CONSTRAINT fk_invoice__job_id FOREIGN KEY (company_id, job_id) REFERENCES job,
  CONSTRAINT fk_invoice__quote_id FOREIGN KEY (company_id, quote_id, quote_revision) REFERENCES quote_revision (company_id, quote_id, revision),
  CONSTRAINT fk_invoice__document FOREIGN KEY (company_id, document_sha256) REFERENCES stored_file,
  CONSTRAINT ck_invoice__totals CHECK (gross_total = net_total + tax_total),
  CONSTRAINT ck_invoice__paid_total CHECK (paid_total BETWEEN 0 AND gross_total),
  CONSTRAINT ck_invoice__issued_whole CHECK (num_nonnulls(number, issued_at, issued_on, due_on, document_sha256) IN (0, 5)),
  CONSTRAINT ck_invoice__state_fits CHECK (CASE state
    WHEN 'draft' THEN number IS NULL AND paid_total = 0
    WHEN 'issued' THEN number IS NOT NULL AND paid_total = 0
    WHEN 'part-paid' THEN number IS NOT NULL AND paid_total > 0 AND paid_total < gross_total
    WHEN 'paid' THEN number IS NOT NULL AND paid_total = gross_total
    ELSE paid_total = 0
  END),
  CONSTRAINT ck_invoice__voided CHECK ((state = 'void') = (voided_at IS NOT NULL) AND (state = 'void') = (void_reason IS NOT NULL))
);
CREATE UNIQUE INDEX uq_invoice__job_id ON invoice (company_id, job_id, basis) WHERE state <> 'void';
CREATE INDEX ix_invoice__job ON invoice (company_id, job_id, id);
CREATE INDEX ix_invoice__state ON invoice (company_id, state, id);
CALL make_tenant_table('invoice');

CREATE TABLE invoice_line (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  invoice_id uuid NOT NULL,
  position integer NOT NULL,
  kind text NOT NULL CONSTRAINT ck_invoice_line__kind CHECK (kind IN ('labor', 'part', 'other')),
  cost_code text NOT NULL,
  description text NOT NULL,
  quantity numeric(19, 6),
  unit text,
  unit_price numeric(19, 4) NOT NULL,
  amount numeric(19, 4) NOT NULL,
  tax_category text,
  CONSTRAINT pk_invoice_line PRIMARY KEY (company_id, id),
  CONSTRAINT uq_invoice_line__position UNIQUE (company_id, invoice_id, position),
  CONSTRAINT fk_invoice_line__invoice FOREIGN KEY (company_id, invoice_id) REFERENCES invoice
);
CALL make_tenant_table('invoice_line');

-- What a customer was billed never changes: only the payments, and that it was voided, may still be written.
CREATE FUNCTION guard_issued_invoice() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'DELETE' THEN
    RAISE EXCEPTION 'an invoice is never deleted' USING ERRCODE = 'restrict_violation', CONSTRAINT = 'ck_invoice__issued_is_final';
  END IF;
  IF OLD.state = 'void' OR OLD.number IS NOT NULL
     AND (NEW.number, NEW.job_id, NEW.basis, NEW.quote_id, NEW.quote_revision, NEW.title, NEW.currency, NEW.net_total, NEW.tax_total, NEW.gross_total, NEW.taxes, NEW.issued_at, NEW.issued_on, NEW.due_on, NEW.document_sha256)
     IS DISTINCT FROM (OLD.number, OLD.job_id, OLD.basis, OLD.quote_id, OLD.quote_revision, OLD.title, OLD.currency, OLD.net_total, OLD.tax_total, OLD.gross_total, OLD.taxes, OLD.issued_at, OLD.issued_on, OLD.due_on, OLD.document_sha256) THEN
    RAISE EXCEPTION 'an issued or void invoice never changes' USING ERRCODE = 'restrict_violation', CONSTRAINT = 'ck_invoice__issued_is_final';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER guard_issued BEFORE UPDATE OR DELETE ON invoice FOR EACH ROW EXECUTE FUNCTION guard_issued_invoice();

CREATE FUNCTION guard_invoice_line() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP <> 'INSERT' OR EXISTS (SELECT FROM invoice i WHERE i.company_id = NEW.company_id AND i.id = NEW.invoice_id AND i.state <> 'draft') THEN
    RAISE EXCEPTION 'the lines of an invoice never change' USING ERRCODE = 'restrict_violation', CONSTRAINT = 'ck_invoice_line__is_final';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER guard_lines BEFORE INSERT OR UPDATE OR DELETE ON invoice_line FOR EACH ROW EXECUTE FUNCTION guard_invoice_line();

CREATE TABLE payment (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  invoice_id uuid NOT NULL,
  amount numeric(19, 4) NOT NULL CONSTRAINT ck_payment__amount CHECK (amount > 0),
  currency text NOT NULL,
  received_on date NOT NULL,
  method text NOT NULL,
  reference text,
  voided_at timestamptz,
  void_reason text,
  CONSTRAINT pk_payment PRIMARY KEY (company_id, id),
  CONSTRAINT fk_payment__invoice_id FOREIGN KEY (company_id, invoice_id) REFERENCES invoice,
  CONSTRAINT ck_payment__method CHECK (method IN ('cash', 'check', 'card', 'bank-transfer', 'other')),
  CONSTRAINT ck_payment__voided CHECK ((voided_at IS NULL) = (void_reason IS NULL))
);
CREATE INDEX ix_payment__invoice ON payment (company_id, invoice_id, id);
CALL make_tenant_table('payment');

-- A payment is booked once, and may be voided once.
CREATE FUNCTION guard_payment() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'DELETE' OR OLD.voided_at IS NOT NULL
     OR (NEW.invoice_id, NEW.amount, NEW.currency, NEW.received_on, NEW.method, NEW.reference)
     IS DISTINCT FROM (OLD.invoice_id, OLD.amount, OLD.currency, OLD.received_on, OLD.method, OLD.reference) THEN
    RAISE EXCEPTION 'a payment never changes; void it' USING ERRCODE = 'restrict_violation', CONSTRAINT = 'ck_payment__is_final';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER guard_payment BEFORE UPDATE OR DELETE ON payment FOR EACH ROW EXECUTE FUNCTION guard_payment();
