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
  CONSTRAINT pk_job PRIMARY KEY (company_id, id),
  CONSTRAINT uq_job__number UNIQUE (company_id, number),
  CONSTRAINT uq_job__quote UNIQUE (company_id, quote_id),
  CONSTRAINT fk_job__quote_id FOREIGN KEY (company_id, quote_id) REFERENCES quote,
  CONSTRAINT fk_job__customer_id FOREIGN KEY (company_id, customer_id) REFERENCES customer,
  CONSTRAINT fk_job__site_id FOREIGN KEY (company_id, site_id) REFERENCES site,
  CONSTRAINT fk_job__feature_id FOREIGN KEY (company_id, feature_id) REFERENCES feature
);
CREATE INDEX ix_job__state ON job (company_id, state, id);
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
  CONSTRAINT ck_time_entry__ended_at CHECK (ended_at > started_at),
  CONSTRAINT ck_time_entry__at_most_a_day CHECK (ended_at - started_at <= interval '24 hours'),
  CONSTRAINT ck_time_entry__break_within CHECK (make_interval(mins => unpaid_break_minutes) <= ended_at - started_at),
  CONSTRAINT ex_time_entry__one_place_at_a_time EXCLUDE USING gist
    (company_id WITH =, person_id WITH =, tstzrange(started_at, ended_at, '[)') WITH &&) WHERE (voided_at IS NULL)
);
CREATE INDEX ix_time_entry__job ON time_entry (company_id, job_id, id);
CREATE INDEX ix_time_entry__person ON time_entry (company_id, person_id, id);
CALL make_tenant_table('time_entry');
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
  amount numeric(19, 4) NOT NULL,
  currency text NOT NULL,
  incurred_on date NOT NULL,
  supplier text,
  reference text,
  voided_at timestamptz,
  void_reason text,
  CONSTRAINT pk_cost PRIMARY KEY (company_id, id),
  CONSTRAINT fk_cost__job_id FOREIGN KEY (company_id, job_id) REFERENCES job
);
CREATE INDEX ix_cost__job ON cost (company_id, job_id, id);
CALL make_tenant_table('cost');

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
  CONSTRAINT fk_invoice__document FOREIGN KEY (company_id, document_sha256) REFERENCES stored_file,
  CONSTRAINT ck_invoice__totals CHECK (gross_total = net_total + tax_total),
  CONSTRAINT ck_invoice__paid_total CHECK (paid_total BETWEEN 0 AND gross_total),
  CONSTRAINT ck_invoice__number_at_issue CHECK ((number IS NOT NULL) = (issued_at IS NOT NULL))
);
CREATE UNIQUE INDEX uq_invoice__once_a_job ON invoice (company_id, job_id, basis) WHERE state <> 'void';
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
  CONSTRAINT fk_payment__invoice_id FOREIGN KEY (company_id, invoice_id) REFERENCES invoice
);
CREATE INDEX ix_payment__invoice ON payment (company_id, invoice_id, id);
CALL make_tenant_table('payment');
