-- The ground that every tenant table stands on: roles, the tenant of a session, the journal.

-- Two roles without a login. Everything the service may do is granted to rillbook_service; the login that the
-- service uses is a member of it and owns nothing, so forced row-level security always applies to it.
-- Roles belong to the cluster, not to the database: another database of the same cluster may have made them.
DO $$
BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'rillbook_service') THEN
    BEGIN
      CREATE ROLE rillbook_service NOLOGIN NOINHERIT;
    EXCEPTION WHEN duplicate_object OR unique_violation THEN NULL;
    END;
  END IF;
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'rillbook_sign_in') THEN
    BEGIN
      CREATE ROLE rillbook_sign_in NOLOGIN NOINHERIT;
    EXCEPTION WHEN duplicate_object OR unique_violation THEN NULL;
    END;
  END IF;
END $$;

CREATE EXTENSION IF NOT EXISTS btree_gist;

REVOKE ALL ON SCHEMA public FROM PUBLIC;
GRANT USAGE ON SCHEMA public TO rillbook_service, rillbook_sign_in;

-- The company that this connection serves; null when none was set, and then no row is visible.
CREATE FUNCTION current_company() RETURNS uuid
  LANGUAGE sql STABLE PARALLEL SAFE
  AS $$ SELECT nullif(current_setting('rillbook.company', true), '')::uuid $$;

-- Keys and secrets of the service itself. Only the owner of the schema may read it: the service reads it once,
-- at start, before it gives the owner's rights up.
CREATE TABLE service_secret (
  name text CONSTRAINT pk_service_secret PRIMARY KEY,
  value text NOT NULL,
  created_at timestamptz NOT NULL DEFAULT now()
);

-- The journal: every change of every tenant table, written by triggers, never changed afterwards.
-- xid stands beside seq because a sequence number is taken before its transaction commits: a reader that went by
-- seq alone would skip for ever the rows of a slow transaction that commits after a fast one.
CREATE TABLE history (
  company_id uuid NOT NULL,
  xid xid8 NOT NULL DEFAULT pg_current_xact_id(),
  seq bigint GENERATED ALWAYS AS IDENTITY,
  occurred_at timestamptz NOT NULL DEFAULT clock_timestamp(),
  actor_id uuid,
  request_id text,
  entity text NOT NULL,
  entity_id uuid NOT NULL,
  operation text NOT NULL CONSTRAINT ck_history__operation CHECK (operation IN ('insert', 'update', 'delete')),
  columns text[],
  before jsonb,
  CONSTRAINT pk_history PRIMARY KEY (company_id, xid, seq)
);
CREATE INDEX ix_history__entity ON history (company_id, entity, entity_id, xid, seq);
COMMENT ON COLUMN history.columns IS 'the changed columns of an update; null for an insert or a delete, which touch the whole row';
COMMENT ON COLUMN history.before IS 'the former values of the changed columns (an update) or of the row (a delete), without secrets';

ALTER TABLE history ENABLE ROW LEVEL SECURITY;
ALTER TABLE history FORCE ROW LEVEL SECURITY;
CREATE POLICY company_only ON history USING (company_id = (SELECT current_company()));
GRANT SELECT ON history TO rillbook_service;

-- Writes one journal row for each changed row. SECURITY DEFINER, so that the service needs no right to write
-- history itself. Arguments: columns whose values are secrets or bulk; they are named but never copied.
CREATE FUNCTION write_history() RETURNS trigger
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
      WHERE o.value IS DISTINCT FROM becomes -> o.key AND o.key <> 'version';
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

-- Makes a table a tenant table: forced row-level security on company_id, the service's rights, the journal.
-- `secrets` are the columns whose values the journal must not copy.
CREATE PROCEDURE make_tenant_table(name regclass, VARIADIC secrets text[] DEFAULT '{}')
  LANGUAGE plpgsql
  AS $$
DECLARE
  arguments text := (SELECT coalesce(string_agg(quote_literal(s), ', '), '') FROM unnest(secrets) AS s WHERE s <> '');
BEGIN
  EXECUTE format('ALTER TABLE %s ENABLE ROW LEVEL SECURITY', name);
  EXECUTE format('ALTER TABLE %s FORCE ROW LEVEL SECURITY', name);
  EXECUTE format('CREATE POLICY company_only ON %s USING (company_id = (SELECT current_company()))', name);
  EXECUTE format('GRANT SELECT, INSERT, UPDATE, DELETE ON %s TO rillbook_service', name);
  EXECUTE format(
    'CREATE TRIGGER journal AFTER INSERT OR UPDATE OR DELETE ON %s FOR EACH ROW EXECUTE FUNCTION write_history(%s)',
    name, arguments);
END $$;
