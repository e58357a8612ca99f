-- What prices are made of, and the offers made from them.

CREATE TABLE labor_rule (
  company_id uuid NOT NULL CONSTRAINT fk_labor_rule__company REFERENCES company,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  made_order bigint NOT NULL GENERATED ALWAYS AS IDENTITY,
  cost_code text NOT NULL,
  name text NOT NULL,
  quantity text NOT NULL,
  unit text NOT NULL,
  setup_hours numeric(14, 6) NOT NULL CONSTRAINT ck_labor_rule__setup_hours CHECK (setup_hours >= 0),
  hours_per_unit numeric(14, 6) NOT NULL CONSTRAINT ck_labor_rule__hours_per_unit CHECK (hours_per_unit >= 0),
  minimum_hours numeric(14, 6) NOT NULL CONSTRAINT ck_labor_rule__minimum_hours CHECK (minimum_hours >= 0),
  effective_from date NOT NULL,
  CONSTRAINT pk_labor_rule PRIMARY KEY (company_id, id)
);
CREATE INDEX ix_labor_rule__in_force ON labor_rule (company_id, cost_code, effective_from DESC, made_order DESC);
CALL make_tenant_table('labor_rule');
COMMENT ON COLUMN labor_rule.made_order IS 'of two rules with the same effective_from, the one made last is in force';

CREATE TABLE part (
  company_id uuid NOT NULL CONSTRAINT fk_part__company REFERENCES company,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  sku text NOT NULL,
  name text NOT NULL,
  unit text NOT NULL,
  unit_cost numeric(19, 4) NOT NULL CONSTRAINT ck_part__unit_cost CHECK (unit_cost >= 0),
  currency text NOT NULL,
  markup_percent numeric(9, 4) NOT NULL CONSTRAINT ck_part__markup_percent CHECK (markup_percent > -100),
  pack_size numeric(14, 4) NOT NULL CONSTRAINT ck_part__pack_size CHECK (pack_size > 0),
  tax_category text,
  active boolean NOT NULL DEFAULT true,
  CONSTRAINT pk_part PRIMARY KEY (company_id, id),
  CONSTRAINT uq_part__sku UNIQUE (company_id, sku)
);
CALL make_tenant_table('part');

CREATE TABLE part_cost (
  company_id uuid NOT NULL,
  id uuid NOT NULL DEFAULT uuidv7(),
  part_id uuid NOT NULL,
  part_version integer NOT NULL,
  unit_cost numeric(19, 4) NOT NULL,
  currency text NOT NULL,
  recorded_at timestamptz NOT NULL DEFAULT now(),
  recorded_by uuid,
  CONSTRAINT pk_part_cost PRIMARY KEY (company_id, id),
  CONSTRAINT fk_part_cost__part_id FOREIGN KEY (company_id, part_id) REFERENCES part,
  CONSTRAINT uq_part_cost__version UNIQUE (company_id, part_id, part_version)
);
CALL make_tenant_table('part_cost');

-- An offer; what it says stands in its revisions.
CREATE TABLE quote (
  company_id uuid NOT NULL CONSTRAINT fk_quote__company REFERENCES company,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  number text NOT NULL,
  revision integer NOT NULL DEFAULT 1,
  customer_id uuid,
  site_id uuid,
  feature_id uuid,
  CONSTRAINT pk_quote PRIMARY KEY (company_id, id),
  CONSTRAINT uq_quote__number UNIQUE (company_id, number),
  CONSTRAINT fk_quote__customer_id FOREIGN KEY (company_id, customer_id) REFERENCES customer,
  CONSTRAINT fk_quote__site_id FOREIGN KEY (company_id, site_id) REFERENCES site,
  CONSTRAINT fk_quote__feature_id FOREIGN KEY (company_id, feature_id) REFERENCES feature
);
CREATE INDEX ix_quote__customer ON quote (company_id, customer_id, id);
CREATE INDEX ix_quote__feature ON quote (company_id, feature_id, id);
CALL make_tenant_table('quote');

CREATE TABLE quote_revision (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  quote_id uuid NOT NULL,
  revision integer NOT NULL,
  state text NOT NULL CONSTRAINT ck_quote_revision__state CHECK (state IN ('draft', 'issued', 'accepted', 'superseded')),
  survey_id uuid,
  title text NOT NULL,
  reason text,
  valid_until date,
  rules_as_of date NOT NULL,
  asked jsonb NOT NULL,
  currency text NOT NULL,
  net_total numeric(19, 4) NOT NULL,
  tax_total numeric(19, 4) NOT NULL,
  gross_total numeric(19, 4) NOT NULL,
  taxes jsonb NOT NULL,
  created_at timestamptz NOT NULL DEFAULT now(),
  issued_at timestamptz,
  issued_on date,
  document_sha256 bytea,
  accepted_by text,
  accepted_on date,
  accepted_at timestamptz,
  CONSTRAINT pk_quote_revision PRIMARY KEY (company_id, id),
  CONSTRAINT uq_quote_revision__revision UNIQUE (company_id, quote_id, revision),
  CONSTRAINT fk_quote_revision__quote_id FOREIGN KEY (company_id, quote_id) REFERENCES quote,
  CONSTRAINT fk_quote_revision__survey_id FOREIGN KEY (company_id, survey_id) REFERENCES survey,
  CONSTRAINT fk_quote_revision__document FOREIGN KEY (company_id, document_sha256) REFERENCES stored_file,
  CONSTRAINT ck_quote_revision__totals CHECK (gross_total = net_total + tax_total),
  CONSTRAINT ck_quote_revision__issued_whole CHECK (num_nonnulls(issued_at, issued_on, document_sha256) = CASE state WHEN 'draft' THEN 0 ELSE 3 END),
  CONSTRAINT ck_quote_revision__accepted_whole CHECK (num_nonnulls(accepted_by, accepted_on, accepted_at) = CASE state WHEN 'accepted' THEN 3 ELSE 0 END)
);
CALL make_tenant_table('quote_revision');
COMMENT ON COLUMN quote_revision.rules_as_of IS 'the date whose labor rules apply: the survey''s, or without a survey the day the quote was made';
COMMENT ON COLUMN quote_revision.asked IS 'the request that was priced: labor, parts and other lines as the estimator gave them';
COMMENT ON COLUMN quote_revision.reason IS 'why the revision was made, in the estimator''s words; not on the document';

CREATE TABLE quote_line (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  revision_id uuid NOT NULL,
  position integer NOT NULL,
  kind text NOT NULL CONSTRAINT ck_quote_line__kind CHECK (kind IN ('labor', 'part', 'other')),
  cost_code text NOT NULL,
  description text NOT NULL,
  quantity numeric(19, 6),
  unit text,
  hours numeric(14, 6),
  unit_price numeric(19, 4) NOT NULL,
  amount numeric(19, 4) NOT NULL,
  unit_cost numeric(19, 4),
  cost numeric(19, 4) NOT NULL,
  tax_category text,
  rule_id uuid,
  part_id uuid,
  working jsonb NOT NULL,
  CONSTRAINT pk_quote_line PRIMARY KEY (company_id, id),
  CONSTRAINT uq_quote_line__position UNIQUE (company_id, revision_id, position),
  CONSTRAINT fk_quote_line__revision FOREIGN KEY (company_id, revision_id) REFERENCES quote_revision,
  CONSTRAINT fk_quote_line__rule_id FOREIGN KEY (company_id, rule_id) REFERENCES labor_rule,
  CONSTRAINT fk_quote_line__part_id FOREIGN KEY (company_id, part_id) REFERENCES part
);
CALL make_tenant_table('quote_line');

-- An issued revision never changes: only that it was accepted or superseded may still be written, and once.
CREATE FUNCTION guard_issued_revision() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  later text[] := '{state,accepted_by,accepted_on,accepted_at}';
BEGIN
  IF TG_OP = 'DELETE' THEN
    RAISE EXCEPTION 'a revision of a quote is never deleted' USING ERRCODE = 'restrict_violation', CONSTRAINT = 'ck_quote_revision__issued_is_final';
  END IF;
  IF OLD.state <> 'draft' AND (OLD.state <> 'issued' OR NEW.state = 'draft' OR to_jsonb(NEW) - later IS DISTINCT FROM to_jsonb(OLD) - later) THEN
    RAISE EXCEPTION 'an issued revision of a quote never changes' USING ERRCODE = 'restrict_violation', CONSTRAINT = 'ck_quote_revision__issued_is_final';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER guard_issued BEFORE UPDATE OR DELETE ON quote_revision FOR EACH ROW EXECUTE FUNCTION guard_issued_revision();

-- Both sides of an update are looked at: a line can't be moved into an issued revision either.
CREATE FUNCTION guard_issued_line() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  line quote_line := CASE WHEN TG_OP = 'INSERT' THEN NEW ELSE OLD END;
  target uuid := CASE WHEN TG_OP = 'UPDATE' THEN NEW.revision_id ELSE line.revision_id END;
BEGIN
  IF EXISTS (SELECT FROM quote_revision r WHERE r.company_id = line.company_id AND r.id IN (line.revision_id, target) AND r.state <> 'draft') THEN
    RAISE EXCEPTION 'the lines of an issued quote never change' USING ERRCODE = 'restrict_violation', CONSTRAINT = 'ck_quote_line__issued_is_final';
  END IF;
  RETURN CASE WHEN TG_OP = 'DELETE' THEN OLD ELSE NEW END;
END $$;
CREATE TRIGGER guard_issued BEFORE INSERT OR UPDATE OR DELETE ON quote_line FOR EACH ROW EXECUTE FUNCTION guard_issued_line();
