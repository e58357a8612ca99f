-- Sections of a quote: base or optional, in phases; and which of them a customer took.

ALTER TABLE quote_line ADD COLUMN section text;
COMMENT ON COLUMN quote_line.section IS 'the key of its section in the revision; null for work that is taken in any case';

ALTER TABLE quote_revision
  ADD COLUMN sections jsonb NOT NULL DEFAULT '[]',
  ADD COLUMN accepted_sections jsonb,
  ADD COLUMN accepted_net_total numeric(19, 4),
  ADD COLUMN accepted_tax_total numeric(19, 4),
  ADD COLUMN accepted_gross_total numeric(19, 4),
  ADD COLUMN accepted_taxes jsonb;
COMMENT ON COLUMN quote_revision.sections IS 'the sections with the totals of each on its own; net_total, tax_total, gross_total and taxes are those of all but the optional ones';
COMMENT ON COLUMN quote_revision.accepted_sections IS 'the keys of the sections that were taken; the accepted totals are those of their lines and of the lines without a section';

-- What was accepted before there were sections was accepted whole. That rewrites rows which the guard holds for good
-- and which belong to many companies; it tells nothing new, so it is no entry in the journal.
ALTER TABLE quote_revision NO FORCE ROW LEVEL SECURITY;
ALTER TABLE quote_revision DISABLE TRIGGER USER;
UPDATE quote_revision
  SET accepted_sections = '[]', accepted_net_total = net_total, accepted_tax_total = tax_total, accepted_gross_total = gross_total, accepted_taxes = taxes
  WHERE state = 'accepted';
ALTER TABLE quote_revision ENABLE TRIGGER USER;
ALTER TABLE quote_revision FORCE ROW LEVEL SECURITY;

ALTER TABLE quote_revision
  ADD CONSTRAINT ck_quote_revision__accepted_totals CHECK (accepted_gross_total = accepted_net_total + accepted_tax_total),
  ADD CONSTRAINT ck_quote_revision__taken_whole CHECK (
    num_nonnulls(accepted_sections, accepted_net_total, accepted_tax_total, accepted_gross_total, accepted_taxes) = CASE state WHEN 'accepted' THEN 5 ELSE 0 END
  );

-- As before, but what was taken may be written with the acceptance. What was issued still never changes.
CREATE OR REPLACE FUNCTION guard_issued_revision() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  later text[] := '{state,accepted_by,accepted_on,accepted_at,accepted_sections,accepted_net_total,accepted_tax_total,accepted_gross_total,accepted_taxes}';
BEGIN
  IF TG_OP = 'DELETE' THEN
    RAISE EXCEPTION 'a revision of a quote is never deleted' USING ERRCODE = 'restrict_violation', CONSTRAINT = 'ck_quote_revision__issued_is_final';
  END IF;
  IF OLD.state <> 'draft' AND (OLD.state <> 'issued' OR NEW.state = 'draft' OR to_jsonb(NEW) - later IS DISTINCT FROM to_jsonb(OLD) - later) THEN
    RAISE EXCEPTION 'an issued revision of a quote never changes' USING ERRCODE = 'restrict_violation', CONSTRAINT = 'ck_quote_revision__issued_is_final';
  END IF;
  RETURN NEW;
END $$;
