-- What the crew found, hauled, used and put in: facts that are taken down once, and what is left to do.

-- A fact never changes, whatever the code does: it is voided, and taken down anew. Arguments: columns that may still be
-- written, beside those of voiding.
CREATE FUNCTION guard_fact() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  free text[] := ARRAY['version', 'voided_at', 'void_reason'] || coalesce(TG_ARGV, '{}');
BEGIN
  IF OLD.voided_at IS NOT NULL OR to_jsonb(NEW) - free IS DISTINCT FROM to_jsonb(OLD) - free THEN
    RAISE EXCEPTION 'a fact never changes; void it' USING ERRCODE = 'restrict_violation', CONSTRAINT = format('ck_%s__is_final', TG_TABLE_NAME);
  END IF;
  RETURN NEW;
END $$;

CREATE TABLE hauled_load (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  job_id uuid NOT NULL,
  feature_id uuid,
  happened_at timestamptz NOT NULL,
  recorded_by uuid,
  note text,
  voided_at timestamptz,
  void_reason text,
  material text NOT NULL CONSTRAINT ck_hauled_load__material CHECK (material IN ('sediment', 'soil', 'stone', 'plants', 'debris', 'water', 'other')),
  loads integer NOT NULL CONSTRAINT ck_hauled_load__loads CHECK (loads > 0),
  volume jsonb,
  weight jsonb,
  destination text,
  ticket text,
  CONSTRAINT pk_hauled_load PRIMARY KEY (company_id, id),
  CONSTRAINT fk_hauled_load__job_id FOREIGN KEY (company_id, job_id) REFERENCES job,
  CONSTRAINT fk_hauled_load__feature_id FOREIGN KEY (company_id, feature_id) REFERENCES feature,
  CONSTRAINT ck_hauled_load__void_reason CHECK ((voided_at IS NULL) = (void_reason IS NULL))
);
CREATE INDEX ix_hauled_load__job ON hauled_load (company_id, job_id, id);
CALL make_tenant_table('hauled_load');

CREATE TABLE found_depth (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  job_id uuid NOT NULL,
  feature_id uuid,
  happened_at timestamptz NOT NULL,
  recorded_by uuid,
  note text,
  voided_at timestamptz,
  void_reason text,
  place text NOT NULL,
  to_sediment jsonb,
  to_bottom jsonb NOT NULL,
  CONSTRAINT pk_found_depth PRIMARY KEY (company_id, id),
  CONSTRAINT fk_found_depth__job_id FOREIGN KEY (company_id, job_id) REFERENCES job,
  CONSTRAINT fk_found_depth__feature_id FOREIGN KEY (company_id, feature_id) REFERENCES feature,
  CONSTRAINT ck_found_depth__void_reason CHECK ((voided_at IS NULL) = (void_reason IS NULL))
);
CREATE INDEX ix_found_depth__job ON found_depth (company_id, job_id, id);
CALL make_tenant_table('found_depth');

CREATE TABLE material_use (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  job_id uuid NOT NULL,
  feature_id uuid,
  happened_at timestamptz NOT NULL,
  recorded_by uuid,
  note text,
  voided_at timestamptz,
  void_reason text,
  part_id uuid,
  description text NOT NULL,
  quantity numeric(19, 6) NOT NULL CONSTRAINT ck_material_use__quantity CHECK (quantity > 0),
  unit text NOT NULL,
  CONSTRAINT pk_material_use PRIMARY KEY (company_id, id),
  CONSTRAINT fk_material_use__job_id FOREIGN KEY (company_id, job_id) REFERENCES job,
  CONSTRAINT fk_material_use__feature_id FOREIGN KEY (company_id, feature_id) REFERENCES feature,
  CONSTRAINT fk_material_use__part_id FOREIGN KEY (company_id, part_id) REFERENCES part,
  CONSTRAINT ck_material_use__void_reason CHECK ((voided_at IS NULL) = (void_reason IS NULL))
);
CREATE INDEX ix_material_use__job ON material_use (company_id, job_id, id);
CALL make_tenant_table('material_use');

CREATE TABLE installation (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  job_id uuid NOT NULL,
  feature_id uuid,
  happened_at timestamptz NOT NULL,
  recorded_by uuid,
  note text,
  voided_at timestamptz,
  void_reason text,
  equipment_id uuid NOT NULL,
  kind text NOT NULL,
  make text,
  model text,
  serial_number text,
  warranty_until date,
  CONSTRAINT pk_installation PRIMARY KEY (company_id, id),
  CONSTRAINT fk_installation__job_id FOREIGN KEY (company_id, job_id) REFERENCES job,
  CONSTRAINT fk_installation__feature_id FOREIGN KEY (company_id, feature_id) REFERENCES feature,
  CONSTRAINT fk_installation__equipment_id FOREIGN KEY (company_id, equipment_id) REFERENCES equipment,
  CONSTRAINT ck_installation__void_reason CHECK ((voided_at IS NULL) = (void_reason IS NULL))
);
CREATE INDEX ix_installation__job ON installation (company_id, job_id, id);
CREATE INDEX ix_installation__equipment ON installation (company_id, equipment_id, id);
CALL make_tenant_table('installation');

CREATE TABLE water_reading (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  job_id uuid NOT NULL,
  feature_id uuid,
  happened_at timestamptz NOT NULL,
  recorded_by uuid,
  note text,
  voided_at timestamptz,
  void_reason text,
  figures jsonb NOT NULL,
  CONSTRAINT pk_water_reading PRIMARY KEY (company_id, id),
  CONSTRAINT fk_water_reading__job_id FOREIGN KEY (company_id, job_id) REFERENCES job,
  CONSTRAINT fk_water_reading__feature_id FOREIGN KEY (company_id, feature_id) REFERENCES feature,
  CONSTRAINT ck_water_reading__void_reason CHECK ((voided_at IS NULL) = (void_reason IS NULL))
);
CREATE INDEX ix_water_reading__job ON water_reading (company_id, job_id, id);
CALL make_tenant_table('water_reading');

CREATE TABLE change_request (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  job_id uuid NOT NULL,
  feature_id uuid,
  happened_at timestamptz NOT NULL,
  recorded_by uuid,
  note text,
  voided_at timestamptz,
  void_reason text,
  description text NOT NULL,
  attachment_ids jsonb NOT NULL DEFAULT '[]',
  decision text CONSTRAINT ck_change_request__decision CHECK (decision IN ('taken-up', 'declined')),
  answer text,
  answered_at timestamptz,
  answered_by uuid,
  CONSTRAINT pk_change_request PRIMARY KEY (company_id, id),
  CONSTRAINT fk_change_request__job_id FOREIGN KEY (company_id, job_id) REFERENCES job,
  CONSTRAINT fk_change_request__feature_id FOREIGN KEY (company_id, feature_id) REFERENCES feature,
  CONSTRAINT ck_change_request__void_reason CHECK ((voided_at IS NULL) = (void_reason IS NULL)),
  CONSTRAINT ck_change_request__answered_at CHECK ((decision IS NULL) = (answered_at IS NULL) AND (answer IS NULL OR decision IS NOT NULL))
);
CREATE INDEX ix_change_request__job ON change_request (company_id, job_id, id);
CALL make_tenant_table('change_request');
COMMENT ON COLUMN change_request.attachment_ids IS 'photos; a list without foreign keys, since on a weak signal the words arrive before the pictures';

CREATE TABLE sign_off (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  job_id uuid NOT NULL,
  feature_id uuid,
  happened_at timestamptz NOT NULL,
  recorded_by uuid,
  note text,
  voided_at timestamptz,
  void_reason text,
  signed_by text NOT NULL,
  statement text NOT NULL,
  drawing text,
  attachment_id uuid,
  CONSTRAINT pk_sign_off PRIMARY KEY (company_id, id),
  CONSTRAINT fk_sign_off__job_id FOREIGN KEY (company_id, job_id) REFERENCES job,
  CONSTRAINT fk_sign_off__feature_id FOREIGN KEY (company_id, feature_id) REFERENCES feature,
  CONSTRAINT ck_sign_off__drawing CHECK (num_nonnulls(drawing, attachment_id) > 0),
  CONSTRAINT ck_sign_off__void_reason CHECK ((voided_at IS NULL) = (void_reason IS NULL))
);
CREATE INDEX ix_sign_off__job ON sign_off (company_id, job_id, id);
CALL make_tenant_table('sign_off');

DO $$
DECLARE
  fact text;
BEGIN
  FOREACH fact IN ARRAY ARRAY['hauled_load', 'found_depth', 'material_use', 'installation', 'water_reading', 'sign_off'] LOOP
    EXECUTE format('CREATE TRIGGER guard_fact BEFORE UPDATE ON %I FOR EACH ROW EXECUTE FUNCTION guard_fact()', fact);
    EXECUTE format('REVOKE DELETE ON %I FROM rillbook_service', fact);
  END LOOP;
END $$;
CREATE TRIGGER guard_fact BEFORE UPDATE ON change_request FOR EACH ROW EXECUTE FUNCTION guard_fact('decision', 'answer', 'answered_at', 'answered_by');
REVOKE DELETE ON change_request FROM rillbook_service;

-- What is left to do before the customer can be asked to sign. Unlike a fact it changes.
CREATE TABLE punch_item (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  job_id uuid NOT NULL,
  feature_id uuid,
  description text NOT NULL,
  place text,
  state text NOT NULL CONSTRAINT ck_punch_item__state CHECK (state IN ('open', 'done')),
  recorded_by uuid,
  done_at timestamptz,
  done_by uuid,
  CONSTRAINT pk_punch_item PRIMARY KEY (company_id, id),
  CONSTRAINT fk_punch_item__job_id FOREIGN KEY (company_id, job_id) REFERENCES job,
  CONSTRAINT fk_punch_item__feature_id FOREIGN KEY (company_id, feature_id) REFERENCES feature,
  CONSTRAINT ck_punch_item__done_at CHECK ((state = 'done') = (done_at IS NOT NULL))
);
CREATE INDEX ix_punch_item__job ON punch_item (company_id, job_id, id);
CALL make_tenant_table('punch_item');
REVOKE DELETE ON punch_item FROM rillbook_service;
