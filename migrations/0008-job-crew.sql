-- Who is on the crew of a job: whose phone keeps it.

CREATE TABLE job_member (
  company_id uuid NOT NULL,
  id uuid NOT NULL DEFAULT uuidv7(),
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  job_id uuid NOT NULL,
  person_id uuid NOT NULL,
  left_at timestamptz,
  CONSTRAINT pk_job_member PRIMARY KEY (company_id, id),
  CONSTRAINT uq_job_member__person_id UNIQUE (company_id, job_id, person_id),
  CONSTRAINT fk_job_member__job_id FOREIGN KEY (company_id, job_id) REFERENCES job,
  CONSTRAINT fk_job_member__person_id FOREIGN KEY (company_id, person_id) REFERENCES person
);
CREATE INDEX ix_job_member__person ON job_member (company_id, person_id, job_id);
CALL make_tenant_table('job_member');
-- Who ever was on a crew must be told what left the phone, so a member is marked as gone and never taken away.
REVOKE DELETE ON job_member FROM rillbook_service;
COMMENT ON COLUMN job_member.left_at IS 'when the person left the crew; null while on it';
