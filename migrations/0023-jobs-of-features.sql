-- Which jobs a photo of a feature belongs to is asked for every photo that a phone pulls.
CREATE INDEX ix_job__feature ON job (company_id, feature_id, id) WHERE feature_id IS NOT NULL;
