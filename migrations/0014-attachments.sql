-- Photos, receipts and documents: what phones send piece by piece, and what it belongs to.

ALTER TABLE company ADD COLUMN keep_photo_location boolean NOT NULL DEFAULT false;
COMMENT ON COLUMN company.keep_photo_location IS 'whether photos are kept as they come, with where and with what they were taken';

-- A file on its way. Once it is there whole and was looked at, file_sha256 says under which name its bytes are kept.
CREATE TABLE upload (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  created_at timestamptz NOT NULL DEFAULT now(),
  person_id uuid NOT NULL,
  size integer NOT NULL CONSTRAINT ck_upload__size CHECK (size > 0),
  sha256 bytea NOT NULL CONSTRAINT ck_upload__sha256 CHECK (length(sha256) = 32),
  metadata jsonb NOT NULL,
  file_sha256 bytea,
  file_size integer,
  media_type text,
  width integer,
  height integer,
  thumbnail_sha256 bytea,
  CONSTRAINT pk_upload PRIMARY KEY (company_id, id),
  CONSTRAINT fk_upload__person_id FOREIGN KEY (company_id, person_id) REFERENCES person,
  CONSTRAINT fk_upload__file_document FOREIGN KEY (company_id, file_sha256) REFERENCES stored_file,
  CONSTRAINT fk_upload__thumbnail_document FOREIGN KEY (company_id, thumbnail_sha256) REFERENCES stored_file,
  CONSTRAINT ck_upload__whole CHECK (num_nonnulls(file_sha256, file_size, media_type) IN (0, 3) AND num_nonnulls(width, height, thumbnail_sha256) IN (0, 3))
);
CREATE INDEX ix_upload__person ON upload (company_id, person_id, sha256);
CREATE INDEX ix_upload__created_at ON upload (company_id, created_at);
CALL make_tenant_table('upload');
COMMENT ON COLUMN upload.sha256 IS 'what the sender says of the whole file; it is checked when the last piece is there';

-- The key keeps two connections from writing the same place: a piece begins where the one before it ended.
CREATE TABLE upload_piece (
  company_id uuid NOT NULL,
  id uuid NOT NULL DEFAULT uuidv7(),
  upload_id uuid NOT NULL,
  starts_at integer NOT NULL,
  bytes bytea NOT NULL CONSTRAINT ck_upload_piece__bytes CHECK (length(bytes) > 0),
  CONSTRAINT pk_upload_piece PRIMARY KEY (company_id, upload_id, starts_at),
  CONSTRAINT fk_upload_piece__upload_id FOREIGN KEY (company_id, upload_id) REFERENCES upload ON DELETE CASCADE
);
CALL make_tenant_table('upload_piece', 'bytes');
-- What a phone sent is compressed already.
ALTER TABLE upload_piece ALTER COLUMN bytes SET STORAGE EXTERNAL;

CREATE TABLE attachment (
  company_id uuid NOT NULL,
  id uuid NOT NULL,
  version integer NOT NULL DEFAULT 1,
  created_at timestamptz NOT NULL DEFAULT now(),
  create_digest bytea,
  kind text NOT NULL CONSTRAINT ck_attachment__kind CHECK (kind IN ('photo', 'receipt', 'document')),
  job_id uuid,
  feature_id uuid,
  equipment_id uuid,
  cost_id uuid,
  caption text,
  taken_at timestamptz,
  attached_by uuid NOT NULL,
  file_sha256 bytea NOT NULL,
  file_size integer NOT NULL,
  media_type text NOT NULL,
  width integer,
  height integer,
  thumbnail_sha256 bytea,
  voided_at timestamptz,
  void_reason text,
  CONSTRAINT pk_attachment PRIMARY KEY (company_id, id),
  CONSTRAINT ck_attachment__one_subject CHECK (num_nonnulls(job_id, feature_id, equipment_id, cost_id) = 1),
  CONSTRAINT ck_attachment__image_whole CHECK (num_nonnulls(width, height, thumbnail_sha256) IN (0, 3)),
  CONSTRAINT ck_attachment__void_reason CHECK ((voided_at IS NULL) = (void_reason IS NULL)),
  CONSTRAINT fk_attachment__job_id FOREIGN KEY (company_id, job_id) REFERENCES job,
  CONSTRAINT fk_attachment__feature_id FOREIGN KEY (company_id, feature_id) REFERENCES feature,
  CONSTRAINT fk_attachment__equipment_id FOREIGN KEY (company_id, equipment_id) REFERENCES equipment,
  CONSTRAINT fk_attachment__cost_id FOREIGN KEY (company_id, cost_id) REFERENCES cost,
  CONSTRAINT fk_attachment__attached_by FOREIGN KEY (company_id, attached_by) REFERENCES person,
  CONSTRAINT fk_attachment__file_document FOREIGN KEY (company_id, file_sha256) REFERENCES stored_file,
  CONSTRAINT fk_attachment__thumbnail_document FOREIGN KEY (company_id, thumbnail_sha256) REFERENCES stored_file
);
CREATE INDEX ix_attachment__job ON attachment (company_id, job_id, id) WHERE job_id IS NOT NULL;
CREATE INDEX ix_attachment__feature ON attachment (company_id, feature_id, id) WHERE feature_id IS NOT NULL;
CREATE INDEX ix_attachment__equipment ON attachment (company_id, equipment_id, id) WHERE equipment_id IS NOT NULL;
CREATE INDEX ix_attachment__cost ON attachment (company_id, cost_id, id) WHERE cost_id IS NOT NULL;
CREATE INDEX ix_attachment__person ON attachment (company_id, attached_by, id);
CREATE INDEX ix_attachment__file ON attachment (company_id, file_sha256);
CREATE INDEX ix_attachment__thumbnail ON attachment (company_id, thumbnail_sha256);
CALL make_tenant_table('attachment');
-- A wrong photo is voided, never taken away: it may be all that shows how something was.
REVOKE DELETE ON attachment FROM rillbook_service;

-- The receipt of a cost, as somebody took it on site.
ALTER TABLE cost ADD COLUMN receipt_id uuid,
  ADD CONSTRAINT fk_cost__receipt_id FOREIGN KEY (company_id, receipt_id) REFERENCES attachment;
CREATE INDEX ix_cost__receipt ON cost (company_id, receipt_id) WHERE receipt_id IS NOT NULL;
