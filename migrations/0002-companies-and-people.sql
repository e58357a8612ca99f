-- A contractor's firm, its people, and how they sign in.
-- Keys: (company_id, id) everywhere, so that a reference can only lead to a row of the same company.

CREATE TABLE company (
  company_id uuid NOT NULL,
  id uuid NOT NULL GENERATED ALWAYS AS (company_id) STORED,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  name text NOT NULL,
  address text NOT NULL DEFAULT '',
  phone text,
  email text,
  licence_number text,
  currency text NOT NULL,
  time_zone text NOT NULL,
  locale text NOT NULL,
  unit_system text NOT NULL CONSTRAINT ck_company__unit_system CHECK (unit_system IN ('us', 'metric')),
  paper_size text NOT NULL CONSTRAINT ck_company__paper_size CHECK (paper_size IN ('letter', 'a4')),
  labor_sell_rate numeric(14, 4) NOT NULL CONSTRAINT ck_company__labor_sell_rate CHECK (labor_sell_rate >= 0),
  hour_increment numeric(8, 6) NOT NULL CONSTRAINT ck_company__hour_increment CHECK (hour_increment > 0),
  tax_categories jsonb NOT NULL DEFAULT '[]',
  labor_tax_category text,
  payment_terms_days integer NOT NULL DEFAULT 30 CONSTRAINT ck_company__payment_terms_days CHECK (payment_terms_days BETWEEN 0 AND 365),
  payment_instructions text,
  CONSTRAINT pk_company PRIMARY KEY (company_id)
);
CALL make_tenant_table('company');

CREATE TABLE person (
  company_id uuid NOT NULL CONSTRAINT fk_person__company REFERENCES company,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  name text NOT NULL,
  email text NOT NULL,
  phone text,
  role text NOT NULL CONSTRAINT ck_person__role CHECK (role IN ('owner', 'estimator', 'crew-lead', 'crew')),
  active boolean NOT NULL DEFAULT true,
  hourly_wage numeric(14, 4) NOT NULL CONSTRAINT ck_person__hourly_wage CHECK (hourly_wage >= 0),
  burden_percent numeric(9, 4) NOT NULL CONSTRAINT ck_person__burden_percent CHECK (burden_percent >= 0),
  CONSTRAINT pk_person PRIMARY KEY (company_id, id)
);
CREATE UNIQUE INDEX uq_person__email ON person (company_id, lower(email));
CREATE INDEX ix_person__email ON person (lower(email));
CALL make_tenant_table('person');

CREATE TABLE credential (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  password_hash text NOT NULL,
  changed_at timestamptz NOT NULL DEFAULT now(),
  CONSTRAINT pk_credential PRIMARY KEY (company_id, id),
  CONSTRAINT fk_credential__person FOREIGN KEY (company_id, id) REFERENCES person
);
CALL make_tenant_table('credential', 'password_hash');
COMMENT ON COLUMN credential.id IS 'the person''s id: one credential a person';

-- One sign-in on one device: the family of all refresh tokens that came from it.
CREATE TABLE sign_in_session (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  person_id uuid NOT NULL,
  started_at timestamptz NOT NULL DEFAULT now(),
  revoked_at timestamptz,
  revoked_because text,
  CONSTRAINT pk_sign_in_session PRIMARY KEY (company_id, id),
  CONSTRAINT fk_sign_in_session__person_id FOREIGN KEY (company_id, person_id) REFERENCES person
);
CREATE INDEX ix_sign_in_session__person ON sign_in_session (company_id, person_id) WHERE revoked_at IS NULL;
CALL make_tenant_table('sign_in_session');

CREATE TABLE refresh_token (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  session_id uuid NOT NULL,
  secret_hash bytea NOT NULL,
  expires_at timestamptz NOT NULL,
  used_at timestamptz,
  CONSTRAINT pk_refresh_token PRIMARY KEY (company_id, id),
  CONSTRAINT fk_refresh_token__session_id FOREIGN KEY (company_id, session_id) REFERENCES sign_in_session
);
CREATE INDEX ix_refresh_token__session ON refresh_token (company_id, session_id);
CALL make_tenant_table('refresh_token', 'secret_hash');

-- Signing in starts before the company is known. This function and the next alone look across companies; their
-- owner may read what they need and nothing else.
CREATE FUNCTION find_sign_ins(address text)
  RETURNS TABLE (company_id uuid, person_id uuid, password_hash text)
  LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp
  AS $$
    SELECT p.company_id, p.id, c.password_hash
    FROM person p JOIN credential c ON c.company_id = p.company_id AND c.id = p.id
    WHERE lower(p.email) = lower(address) AND p.active
    ORDER BY p.company_id
    LIMIT 8
  $$;
REVOKE ALL ON FUNCTION find_sign_ins FROM PUBLIC;
GRANT EXECUTE ON FUNCTION find_sign_ins TO rillbook_service;
GRANT SELECT ON person, credential TO rillbook_sign_in;
CREATE POLICY sign_in ON person FOR SELECT TO rillbook_sign_in USING (true);
CREATE POLICY sign_in ON credential FOR SELECT TO rillbook_sign_in USING (true);


-- Whether there is any company at all: the service asks it once, at start, to know whether to seed a demonstration.
CREATE FUNCTION any_company() RETURNS boolean
  LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp
  AS $$ SELECT EXISTS (SELECT FROM company) $$;
REVOKE ALL ON FUNCTION any_company FROM PUBLIC;
GRANT EXECUTE ON FUNCTION any_company TO rillbook_service;
GRANT SELECT (company_id) ON company TO rillbook_sign_in;
CREATE POLICY sign_in ON company FOR SELECT TO rillbook_sign_in USING (true);

-- To give the functions to their role, the owner must be able to become that role, and the role to create in the
-- schema for that moment.
GRANT rillbook_sign_in TO CURRENT_USER;
GRANT CREATE ON SCHEMA public TO rillbook_sign_in;
ALTER FUNCTION find_sign_ins OWNER TO rillbook_sign_in;
ALTER FUNCTION any_company OWNER TO rillbook_sign_in;
REVOKE CREATE ON SCHEMA public FROM rillbook_sign_in;

-- Numbers of documents: one row a company and kind, locked until the document that takes the number commits,
-- so that a number is never skipped and never given twice.
CREATE TABLE document_counter (
  company_id uuid NOT NULL CONSTRAINT fk_document_counter__company REFERENCES company,
  id uuid NOT NULL DEFAULT uuidv7(),
  kind text NOT NULL,
  last_number integer NOT NULL,
  CONSTRAINT pk_document_counter PRIMARY KEY (company_id, kind)
);
CALL make_tenant_table('document_counter');

-- Rendered documents, by the SHA-256 of their bytes.
CREATE TABLE stored_file (
  company_id uuid NOT NULL CONSTRAINT fk_stored_file__company REFERENCES company,
  id uuid NOT NULL DEFAULT uuidv7(),
  sha256 bytea NOT NULL CONSTRAINT ck_stored_file__sha256 CHECK (sha256 = sha256(bytes)),
  media_type text NOT NULL,
  bytes bytea NOT NULL,
  created_at timestamptz NOT NULL DEFAULT now(),
  CONSTRAINT pk_stored_file PRIMARY KEY (company_id, sha256)
);
CALL make_tenant_table('stored_file', 'bytes');
