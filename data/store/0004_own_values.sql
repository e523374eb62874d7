-- The workshop's own values: how they were found and how long they hold. Each table and column is described in
-- docs/store-schema.md.

ALTER TABLE person ADD COLUMN role TEXT NOT NULL DEFAULT 'technician' CHECK (role IN ('technician', 'checker'));
ALTER TABLE person ADD COLUMN left_on TEXT;
ALTER TABLE person ADD COLUMN feel_nm INTEGER;
ALTER TABLE person ADD COLUMN feel_on TEXT;

ALTER TABLE instrument ADD COLUMN calibrated_on TEXT;
ALTER TABLE instrument ADD COLUMN repeatability INTEGER;
ALTER TABLE instrument ADD COLUMN repeatability_on TEXT;
ALTER TABLE instrument ADD COLUMN in_use INTEGER NOT NULL DEFAULT 1 CHECK (in_use IN (0, 1));

ALTER TABLE tray_shim ADD COLUMN reorder_at INTEGER CHECK (reorder_at >= 0);
ALTER TABLE tray_shim ADD COLUMN counted_at_ms INTEGER;

ALTER TABLE workshop ADD COLUMN logo_type TEXT;
ALTER TABLE workshop ADD COLUMN logo BLOB CHECK ((logo IS NULL) = (logo_type IS NULL));

CREATE TABLE tray_reading (
  tray TEXT NOT NULL,
  shim TEXT NOT NULL,
  item INTEGER NOT NULL CHECK (item >= 1),
  base INTEGER NOT NULL,
  decimals INTEGER NOT NULL,
  unit TEXT NOT NULL,
  instrument TEXT NOT NULL REFERENCES instrument (id),
  PRIMARY KEY (tray, shim, item)
) STRICT, WITHOUT ROWID;
