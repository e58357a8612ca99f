-- A calendar feed that was made on an enrolled phone ends with the phone: whoever finds the phone finds the feed's address.

ALTER TABLE calendar_feed
  ADD COLUMN device_id uuid,
  ADD CONSTRAINT fk_calendar_feed__device_id FOREIGN KEY (company_id, device_id) REFERENCES device;
CREATE INDEX ix_calendar_feed__device ON calendar_feed (company_id, device_id) WHERE device_id IS NOT NULL;
COMMENT ON COLUMN calendar_feed.device_id IS 'the enrolled device that it was made on; null for one made after a sign-in with a password';
