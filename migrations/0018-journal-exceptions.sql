-- What the journal leaves out is said of each table, instead of by name in the trigger's function.

-- Arguments of the trigger: a column whose values are secrets or bulk, which are named but never copied; with a minus
-- before it, a column whose changes are none that anybody keeps. So is the version, beside others; a change of it alone
-- is told, as where lines in another table changed: a phone that kept the former version would be refused its next change.
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
      WHERE o.value IS DISTINCT FROM becomes -> o.key AND o.key <> 'version' AND NOT '-' || o.key = ANY (coalesce(TG_ARGV, '{}'));
    -- The version is named only where nothing else tells of it.
    IF changed IS NULL AND was -> 'version' IS DISTINCT FROM becomes -> 'version' THEN
      changed := ARRAY['version'];
      former := jsonb_build_object('version', was -> 'version');
    END IF;
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

-- After make_tenant_table. Without columns the whole table stays out of the journal: its rows are a record of their own
-- that never changes, or carry something from here to there. test/architecture names each with its reason.
CREATE PROCEDURE leave_out_of_journal(name regclass, VARIADIC columns text[] DEFAULT '{}')
  LANGUAGE plpgsql
  AS $$
DECLARE
  arguments text;
BEGIN
  IF cardinality(columns) > 0 THEN
    SELECT string_agg(quote_literal(argument), ', ') INTO arguments FROM (
      SELECT unnest(string_to_array(encode(tgargs, 'escape'), '\000')) AS argument FROM pg_trigger WHERE tgrelid = name AND tgname = 'journal'
      UNION SELECT '-' || unnest(columns)
    ) AS all_of_them WHERE argument <> '';
  END IF;
  EXECUTE format('DROP TRIGGER journal ON %s', name);
  IF arguments IS NOT NULL THEN
    EXECUTE format('CREATE TRIGGER journal AFTER INSERT OR UPDATE OR DELETE ON %s FOR EACH ROW EXECUTE FUNCTION write_history(%s)', name, arguments);
  END IF;
END $$;

CALL leave_out_of_journal('device', 'last_seen_at');
CALL leave_out_of_journal('sync_mutation');
CALL leave_out_of_journal('upload_piece');
CALL leave_out_of_journal('refresh_token');
