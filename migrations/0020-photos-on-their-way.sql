-- Which photos of a request, and which picture of a signature, are still on their way; equipment that was taken out; and
-- what became of the item whose installation was voided.

-- Photos arrive whatever became of the record that names them, so that column is free even when it is void.
CREATE OR REPLACE FUNCTION guard_fact() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  -- The column that is worked out of another is not there yet before the row is written.
  arriving text[] := ARRAY['version', 'photos_missing', 'waits_for_photos'];
  free text[] := arriving || ARRAY['voided_at', 'void_reason'] || coalesce(TG_ARGV, '{}');
BEGIN
  IF OLD.voided_at IS NOT NULL THEN
    free := arriving;
  END IF;
  IF to_jsonb(NEW) - free IS DISTINCT FROM to_jsonb(OLD) - free THEN
    RAISE EXCEPTION 'a fact never changes; void it' USING ERRCODE = 'restrict_violation', CONSTRAINT = format('ck_%s__is_final', TG_TABLE_NAME);
  END IF;
  RETURN NEW;
END $$;

ALTER TABLE change_request
  ADD COLUMN photos_missing uuid[] NOT NULL DEFAULT '{}',
  ADD COLUMN waits_for_photos boolean NOT NULL GENERATED ALWAYS AS (photos_missing <> '{}') STORED,
  ADD COLUMN answered_version integer;
ALTER TABLE sign_off
  ADD COLUMN photos_missing uuid[] NOT NULL DEFAULT '{}',
  ADD COLUMN waits_for_photos boolean NOT NULL GENERATED ALWAYS AS (photos_missing <> '{}') STORED;

CREATE FUNCTION photos_named(fact jsonb) RETURNS uuid[] LANGUAGE sql IMMUTABLE AS $$
  SELECT coalesce(array_agg(DISTINCT named.id::uuid), '{}')
    FROM jsonb_array_elements_text(coalesce(fact -> 'attachment_ids', jsonb_build_array(fact -> 'attachment_id'))) AS named(id)
   WHERE named.id IS NOT NULL
$$;

-- A record and the photo that it names may come in at the same moment, each unseen by the other. Both take the photo's
-- lock, so that one of them sees the other; in the order of ids, so that two records never wait for each other.
CREATE FUNCTION lock_photo(company uuid, photo uuid) RETURNS void LANGUAGE sql AS $$
  SELECT pg_advisory_xact_lock(hashtextextended('photo ' || company || ' ' || photo, 0))
$$;

CREATE FUNCTION note_missing_photos() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  photo uuid;
BEGIN
  NEW.photos_missing := photos_named(to_jsonb(NEW));
  FOREACH photo IN ARRAY NEW.photos_missing LOOP
    PERFORM lock_photo(NEW.company_id, photo);
  END LOOP;
  NEW.photos_missing := ARRAY(SELECT m.id FROM unnest(NEW.photos_missing) AS m(id)
    WHERE NOT EXISTS (SELECT FROM attachment a WHERE a.company_id = NEW.company_id AND a.id = m.id) ORDER BY m.id);
  RETURN NEW;
END $$;

-- A change of the record's own row, so that its version and the journal tell everybody who keeps it.
CREATE FUNCTION note_photo() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM lock_photo(NEW.company_id, NEW.id);
  UPDATE change_request SET photos_missing = array_remove(photos_missing, NEW.id), version = version + 1
    WHERE company_id = NEW.company_id AND waits_for_photos AND NEW.id = ANY (photos_missing);
  UPDATE sign_off SET photos_missing = array_remove(photos_missing, NEW.id), version = version + 1
    WHERE company_id = NEW.company_id AND waits_for_photos AND NEW.id = ANY (photos_missing);
  RETURN NULL;
END $$;

-- What is there already: no trigger, and no journal row that nobody made.
ALTER TABLE change_request NO FORCE ROW LEVEL SECURITY, DISABLE TRIGGER USER;
ALTER TABLE sign_off NO FORCE ROW LEVEL SECURITY, DISABLE TRIGGER USER;
ALTER TABLE attachment NO FORCE ROW LEVEL SECURITY;
UPDATE change_request t SET
  photos_missing = ARRAY(SELECT m.id FROM unnest(photos_named(to_jsonb(t))) AS m(id) WHERE NOT EXISTS (SELECT FROM attachment a WHERE a.company_id = t.company_id AND a.id = m.id) ORDER BY m.id),
  -- An answer was the second version of every request: what is void is never answered.
  answered_version = CASE WHEN decision IS NOT NULL THEN 2 END;
UPDATE sign_off t SET
  photos_missing = ARRAY(SELECT m.id FROM unnest(photos_named(to_jsonb(t))) AS m(id) WHERE NOT EXISTS (SELECT FROM attachment a WHERE a.company_id = t.company_id AND a.id = m.id) ORDER BY m.id);
ALTER TABLE change_request FORCE ROW LEVEL SECURITY, ENABLE TRIGGER USER;
ALTER TABLE sign_off FORCE ROW LEVEL SECURITY, ENABLE TRIGGER USER;
ALTER TABLE attachment FORCE ROW LEVEL SECURITY;

ALTER TABLE change_request ADD CONSTRAINT ck_change_request__answered_version CHECK ((answered_version IS NULL) = (decision IS NULL));
COMMENT ON COLUMN change_request.answered_version IS 'the version that the answer made: a photo that arrives makes another, and is no answer';
COMMENT ON COLUMN change_request.photos_missing IS 'those of attachment_ids that have not arrived; kept by triggers';
COMMENT ON COLUMN sign_off.photos_missing IS 'attachment_id while it has not arrived; kept by triggers';

-- By a column and not by a comparison, which under row-level security serves no index: it might tell what it compares.
CREATE INDEX ix_change_request__waits_for_photos ON change_request (company_id, id) WHERE waits_for_photos;
CREATE INDEX ix_sign_off__waits_for_photos ON sign_off (company_id, id) WHERE waits_for_photos;
CREATE TRIGGER note_missing_photos BEFORE INSERT ON change_request FOR EACH ROW EXECUTE FUNCTION note_missing_photos();
CREATE TRIGGER note_missing_photos BEFORE INSERT ON sign_off FOR EACH ROW EXECUTE FUNCTION note_missing_photos();
CREATE TRIGGER note_photo AFTER INSERT ON attachment FOR EACH ROW EXECUTE FUNCTION note_photo();
DROP TRIGGER guard_fact ON change_request;
CREATE TRIGGER guard_fact BEFORE UPDATE ON change_request FOR EACH ROW EXECUTE FUNCTION guard_fact('decision', 'answer', 'answered_at', 'answered_by', 'answered_version');

ALTER TABLE equipment ADD COLUMN removed_on date;
COMMENT ON COLUMN equipment.removed_on IS 'the day it was taken out, or was found never to have been there';

ALTER TABLE installation ADD COLUMN item_stays_because text,
  ADD CONSTRAINT ck_installation__item_stays_because CHECK (item_stays_because IS NULL OR (item_stays_because IN ('changed', 'named') AND voided_at IS NOT NULL));
DROP TRIGGER guard_fact ON installation;
CREATE TRIGGER guard_fact BEFORE UPDATE ON installation FOR EACH ROW EXECUTE FUNCTION guard_fact('item_stays_because');
COMMENT ON COLUMN installation.item_stays_because IS 'why the item that a voided record made was not taken out with it';
