-- Who asks, where the work is, what stands there, and what was measured.

CREATE TABLE customer (
  company_id uuid NOT NULL CONSTRAINT fk_customer__company REFERENCES company,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  name text NOT NULL,
  email text,
  phone text,
  billing_address text,
  concerns text,
  CONSTRAINT pk_customer PRIMARY KEY (company_id, id)
);
CALL make_tenant_table('customer');

CREATE TABLE site (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  customer_id uuid NOT NULL,
  address text NOT NULL,
  time_zone text NOT NULL,
  access_notes text,
  hazards text,
  CONSTRAINT pk_site PRIMARY KEY (company_id, id),
  CONSTRAINT fk_site__customer_id FOREIGN KEY (company_id, customer_id) REFERENCES customer
);
CREATE INDEX ix_site__customer ON site (company_id, customer_id, id);
CALL make_tenant_table('site');

CREATE TABLE feature (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  site_id uuid NOT NULL,
  kind text NOT NULL CONSTRAINT ck_feature__kind CHECK (kind IN ('pond', 'stream', 'waterfall', 'basin')),
  name text NOT NULL,
  built_year integer,
  CONSTRAINT pk_feature PRIMARY KEY (company_id, id),
  CONSTRAINT fk_feature__site_id FOREIGN KEY (company_id, site_id) REFERENCES site
);
CREATE INDEX ix_feature__site ON feature (company_id, site_id, id);
CALL make_tenant_table('feature');

CREATE TABLE equipment (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  feature_id uuid NOT NULL,
  kind text NOT NULL,
  make text,
  model text,
  serial_number text,
  installed_on date,
  warranty_until date,
  condition text,
  settings jsonb NOT NULL DEFAULT '{}',
  CONSTRAINT pk_equipment PRIMARY KEY (company_id, id),
  CONSTRAINT fk_equipment__feature_id FOREIGN KEY (company_id, feature_id) REFERENCES feature
);
CREATE INDEX ix_equipment__feature ON equipment (company_id, feature_id, id);
CALL make_tenant_table('equipment');

CREATE TABLE survey (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  feature_id uuid NOT NULL,
  surveyed_on date NOT NULL,
  outline jsonb NOT NULL,
  probes jsonb,
  access_factor numeric(8, 4) NOT NULL CONSTRAINT ck_survey__access_factor CHECK (access_factor > 0),
  findings jsonb NOT NULL DEFAULT '[]',
  CONSTRAINT pk_survey PRIMARY KEY (company_id, id),
  CONSTRAINT fk_survey__feature_id FOREIGN KEY (company_id, feature_id) REFERENCES feature
);
CREATE INDEX ix_survey__feature ON survey (company_id, feature_id, id);
CALL make_tenant_table('survey');
