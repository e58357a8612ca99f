-- Enrolled phones: a code made for a person, the device that used it, and the sign-ins that the device opens.

CREATE TABLE device_enrolment (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  created_at timestamptz NOT NULL DEFAULT now(),
  person_id uuid NOT NULL,
  session_id uuid NOT NULL,
  code_hash bytea NOT NULL,
  expires_at timestamptz NOT NULL,
  CONSTRAINT pk_device_enrolment PRIMARY KEY (company_id, id),
  CONSTRAINT fk_device_enrolment__person_id FOREIGN KEY (company_id, person_id) REFERENCES person,
  CONSTRAINT fk_device_enrolment__session_id FOREIGN KEY (company_id, session_id) REFERENCES sign_in_session
);
CREATE INDEX ix_device_enrolment__person ON device_enrolment (company_id, person_id);
CREATE INDEX ix_device_enrolment__session ON device_enrolment (company_id, session_id);
CREATE INDEX ix_device_enrolment__code_hash ON device_enrolment (code_hash);
CALL make_tenant_table('device_enrolment', 'code_hash');
REVOKE DELETE ON device_enrolment FROM rillbook_service;
COMMENT ON COLUMN device_enrolment.session_id IS 'the sign-in that made the code: the code dies with it';

CREATE TABLE device (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  enrolment_id uuid NOT NULL,
  person_id uuid NOT NULL,
  enrolled_by uuid NOT NULL,
  name text NOT NULL,
  secret_hash bytea NOT NULL,
  last_seen_at timestamptz,
  revoked_at timestamptz,
  revoked_because text,
  CONSTRAINT pk_device PRIMARY KEY (company_id, id),
  -- A code makes one device, even if two phones send it at the same moment.
  CONSTRAINT uq_device__enrolment_id UNIQUE (company_id, enrolment_id),
  CONSTRAINT fk_device__enrolment_id FOREIGN KEY (company_id, enrolment_id) REFERENCES device_enrolment,
  CONSTRAINT fk_device__person_id FOREIGN KEY (company_id, person_id) REFERENCES person,
  CONSTRAINT fk_device__enrolled_by FOREIGN KEY (company_id, enrolled_by) REFERENCES person,
  CONSTRAINT ck_device__revoked_at CHECK (num_nonnulls(revoked_at, revoked_because) IN (0, 2))
);
CREATE INDEX ix_device__person ON device (company_id, person_id);
CREATE INDEX ix_device__enrolled_by ON device (company_id, enrolled_by);
CALL make_tenant_table('device', 'secret_hash', 'create_digest');
-- Which phone ever spoke for whom must stay known.
REVOKE DELETE ON device FROM rillbook_service;

ALTER TABLE sign_in_session
  ADD COLUMN device_id uuid,
  ADD CONSTRAINT fk_sign_in_session__device_id FOREIGN KEY (company_id, device_id) REFERENCES device;
CREATE INDEX ix_sign_in_session__device ON sign_in_session (company_id, device_id) WHERE device_id IS NOT NULL;
COMMENT ON COLUMN sign_in_session.device_id IS 'the enrolled device that opened it; null for a sign-in with a password';

-- A phone with a code does not know the company yet. This function looks across companies, by the hash of a code alone.
CREATE FUNCTION find_device_enrolment(hash bytea)
  RETURNS TABLE (company_id uuid, id uuid, person_id uuid)
  LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp
  AS $$ SELECT e.company_id, e.id, e.person_id FROM device_enrolment e WHERE e.code_hash = hash LIMIT 1 $$;
REVOKE ALL ON FUNCTION find_device_enrolment FROM PUBLIC;
GRANT EXECUTE ON FUNCTION find_device_enrolment TO rillbook_service;
GRANT SELECT (company_id, id, person_id, code_hash) ON device_enrolment TO rillbook_sign_in;
CREATE POLICY sign_in ON device_enrolment FOR SELECT TO rillbook_sign_in USING (true);
GRANT rillbook_sign_in TO CURRENT_USER;
GRANT CREATE ON SCHEMA public TO rillbook_sign_in;
ALTER FUNCTION find_device_enrolment OWNER TO rillbook_sign_in;
REVOKE CREATE ON SCHEMA public FROM rillbook_sign_in;

-- When a device was last seen is written once a minute and changes nothing that anybody keeps: two hundred phones
-- would bury the journal under a hundred thousand rows a day. It is left out, as the version always was.
CREATE OR REPLACE FUNCTION write_history() RETURNS trigger
  LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp
  AS $$
DECLARE
  was jsonb;
  becomes jsonb;
  changed text[];
  former jsonb;
  subject jsonb;
BEGIN
  IF TG_OP = 'UPDATE' THEN
    was := to_jsonb(OLD);
    becomes := to_jsonb(NEW);
    SELECT array_agg(o.key ORDER BY o.key), jsonb_object_agg(o.key, o.value) FILTER (WHERE NOT o.key = ANY (coalesce(TG_ARGV, '{}')))
      INTO changed, former
      FROM jsonb_each(was) AS o
      WHERE o.value IS DISTINCT FROM becomes -> o.key AND o.key NOT IN ('version', 'last_seen_at');
    IF changed IS NULL THEN
      RETURN NULL;
    END IF;
    subject := becomes;
  ELSIF TG_OP = 'DELETE' THEN
    was := to_jsonb(OLD);
    SELECT jsonb_object_agg(o.key, o.value) INTO former FROM jsonb_each(was) AS o WHERE NOT o.key = ANY (coalesce(TG_ARGV, '{}'));
    subject := was;
  ELSE
    subject := jsonb_build_object('company_id', NEW.company_id, 'id', NEW.id);
  END IF;
  INSERT INTO history (company_id, actor_id, request_id, entity, entity_id, operation, columns, before)
  VALUES (
    (subject ->> 'company_id')::uuid,
    nullif(current_setting('rillbook.actor', true), '')::uuid,
    nullif(current_setting('rillbook.request', true), ''),
    TG_TABLE_NAME, (subject ->> 'id')::uuid, lower(TG_OP), changed, former
  );
  RETURN NULL;
END $$;
