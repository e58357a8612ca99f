-- Files are read in slices: as they came, so that a slice is found without unpacking all before it. What is kept here is
-- compressed by its own format already, and trying again cost time at every write.
ALTER TABLE stored_file ALTER COLUMN bytes SET STORAGE EXTERNAL;
