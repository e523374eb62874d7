-- Sheets: checked before they are used, half written, and what a job sheet lost. Each table and column is described in
-- docs/store-schema.md.

CREATE TABLE sheet_check (
  id TEXT NOT NULL PRIMARY KEY,
  sheet TEXT NOT NULL,
  person TEXT NOT NULL REFERENCES person (id),
  at_ms INTEGER NOT NULL,
  offset_min INTEGER NOT NULL,
  second_person INTEGER NOT NULL CHECK (second_person IN (0, 1)),
  UNIQUE (sheet, person)
) STRICT, WITHOUT ROWID;

CREATE TABLE taken_away (
  sheet TEXT NOT NULL REFERENCES job_sheet (hash),
  item INTEGER NOT NULL CHECK (item >= 1),
  step TEXT NOT NULL,
  kind TEXT NOT NULL CHECK (kind IN ('caution', 'hold_point')),
  text TEXT NOT NULL,
  reason TEXT NOT NULL,
  PRIMARY KEY (sheet, item)
) STRICT, WITHOUT ROWID;

CREATE TABLE sheet_draft (
  id TEXT NOT NULL PRIMARY KEY,
  register TEXT NOT NULL CHECK (register IN ('job_sheet', 'spec_sheet')),
  begun_as TEXT NOT NULL CHECK (begun_as IN ('new', 'copy', 'issue', 'file')),
  begun_from TEXT,
  body BLOB NOT NULL,
  reasons BLOB NOT NULL,
  begun_by TEXT NOT NULL,
  begun_at_ms INTEGER NOT NULL,
  changed_by TEXT NOT NULL,
  changed_at_ms INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

-- How many jobs a sheet has, and how many of them are open.
CREATE INDEX job_by_spec_sheet ON job (spec_hash, standing);
CREATE INDEX job_by_job_sheet ON job (sheet_hash, standing);

CREATE TRIGGER sheet_check_is_not_changed BEFORE UPDATE ON sheet_check
BEGIN SELECT RAISE(ABORT, 'a check of a sheet is kept for ever'); END;
CREATE TRIGGER sheet_check_is_not_deleted BEFORE DELETE ON sheet_check
BEGIN SELECT RAISE(ABORT, 'a check of a sheet is kept for ever'); END;
CREATE TRIGGER taken_away_is_not_changed BEFORE UPDATE ON taken_away
BEGIN SELECT RAISE(ABORT, 'what a sheet lost is kept for ever'); END;
CREATE TRIGGER taken_away_is_not_deleted BEFORE DELETE ON taken_away
BEGIN SELECT RAISE(ABORT, 'what a sheet lost is kept for ever'); END;
