-- What phones pushed, and what became of it: a mutation sent again gets its first outcome instead of a second effect.

CREATE TABLE sync_mutation (
  company_id uuid NOT NULL CONSTRAINT fk_sync_mutation__company REFERENCES company,
  id uuid NOT NULL,
  client_id uuid NOT NULL,
  counter integer NOT NULL,
  pushed_by uuid NOT NULL,
  kind text NOT NULL,
  digest bytea NOT NULL,
  outcome text NOT NULL CONSTRAINT ck_sync_mutation__outcome CHECK (outcome IN ('applied', 'conflict', 'rejected')),
  entity text,
  entity_id uuid,
  revision integer,
  problem json,
  recorded_at timestamptz NOT NULL,
  received_at timestamptz NOT NULL,
  clock_skew_seconds integer,
  CONSTRAINT pk_sync_mutation PRIMARY KEY (company_id, id),
  CONSTRAINT ck_sync_mutation__outcome_fits CHECK (CASE outcome
    WHEN 'applied' THEN num_nonnulls(entity, entity_id, revision) = 3 AND problem IS NULL
    ELSE problem IS NOT NULL AND revision IS NULL
  END)
);
CALL make_tenant_table('sync_mutation');
-- An outcome that a phone was told never changes.
REVOKE UPDATE, DELETE ON sync_mutation FROM rillbook_service;
COMMENT ON COLUMN sync_mutation.digest IS 'of what was asked for: tells a mutation sent again from another one with the same id';
COMMENT ON COLUMN sync_mutation.problem IS 'json and not jsonb: it may quote a character that jsonb can not hold';
COMMENT ON COLUMN sync_mutation.clock_skew_seconds IS 'the phone''s clock less the service''s; null when the phone did not say its time';
