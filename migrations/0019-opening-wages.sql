-- What people had earned in a calendar year before the company kept its hours here, so that yearly caps start right.

CREATE TABLE opening_wages (
  company_id uuid NOT NULL CONSTRAINT fk_opening_wages__company REFERENCES company,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  person_id uuid NOT NULL,
  through date NOT NULL,
  year integer NOT NULL GENERATED ALWAYS AS (extract(year FROM through)::integer) STORED,
  all_pay numeric(19, 4) NOT NULL CONSTRAINT ck_opening_wages__all_pay CHECK (all_pay >= 0),
  straight_pay numeric(19, 4) NOT NULL CONSTRAINT ck_opening_wages__straight_pay CHECK (straight_pay BETWEEN 0 AND all_pay),
  currency text NOT NULL,
  CONSTRAINT pk_opening_wages PRIMARY KEY (company_id, id),
  CONSTRAINT fk_opening_wages__person_id FOREIGN KEY (company_id, person_id) REFERENCES person,
  CONSTRAINT uq_opening_wages__person_id UNIQUE (company_id, person_id, year)
);
CALL make_tenant_table('opening_wages');
COMMENT ON COLUMN opening_wages.through IS 'the amounts are what was earned from the beginning of its year to this day, hours that are kept here among it';
COMMENT ON COLUMN opening_wages.straight_pay IS 'without the premium of overtime';
