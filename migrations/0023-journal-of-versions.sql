-- A change that leaves every value as it was still makes a new version, and so does one of lines in another table. The
-- journal said nothing of it, so phones kept the former version for ever, and their next change of the row was refused.

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
