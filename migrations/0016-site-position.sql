-- Where a site lies on the globe (WGS 84, degrees), so that a phone can open a map there.

ALTER TABLE site
  ADD COLUMN latitude double precision CONSTRAINT ck_site__latitude CHECK (latitude BETWEEN -90 AND 90),
  ADD COLUMN longitude double precision CONSTRAINT ck_site__longitude CHECK (longitude BETWEEN -180 AND 180),
  ADD CONSTRAINT ck_site__position CHECK ((latitude IS NULL) = (longitude IS NULL));
