-- What a design needs to know: the technical data of a part, and more of what is measured on site.

ALTER TABLE part ADD COLUMN attributes jsonb
  CONSTRAINT ck_part__attributes CHECK (jsonb_typeof(attributes) = 'object' AND attributes ? 'kind');
-- Generated, so that the kind a list filters by can't differ from the kind the attributes are of.
ALTER TABLE part ADD COLUMN kind text GENERATED ALWAYS AS (attributes ->> 'kind') STORED;
CREATE INDEX ix_part__kind ON part (company_id, kind, id);
COMMENT ON COLUMN part.attributes IS 'technical data by kind, quantities in the units they were entered in; null when none were entered';

ALTER TABLE survey
  ADD COLUMN depth_profile jsonb,
  ADD COLUMN pipe_run jsonb,
  ADD COLUMN equipment_condition jsonb NOT NULL DEFAULT '[]',
  ADD COLUMN reclaimed_materials jsonb NOT NULL DEFAULT '[]',
  ADD COLUMN water_tests jsonb NOT NULL DEFAULT '[]';
COMMENT ON COLUMN survey.equipment_condition IS 'entries may name equipment by id; it is looked up when the survey is written, and equipment is never deleted';
