-- The store as it began. Each table and column is described in docs/store-schema.md.
-- Lengths end in _um (micrometre) or _nm (nanometre), times in _ms (UTC, milliseconds since 1970).
-- A yes or no is 1 or 0. An id is a UUID in its text form.

CREATE TABLE store (
  id TEXT NOT NULL PRIMARY KEY,
  made_at_ms INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

-- Registers

CREATE TABLE person (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL,
  initials TEXT NOT NULL,
  pin_hash TEXT,
  active INTEGER NOT NULL CHECK (active IN (0, 1))
) STRICT, WITHOUT ROWID;

CREATE TABLE instrument (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL,
  kind TEXT NOT NULL,
  resolution INTEGER NOT NULL,
  permissible_error INTEGER NOT NULL,
  calibrated_to TEXT,
  turn_um INTEGER
) STRICT, WITHOUT ROWID;

CREATE TABLE tray (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL UNIQUE
) STRICT, WITHOUT ROWID;

CREATE TABLE tray_shim (
  tray TEXT NOT NULL REFERENCES tray (id),
  shim TEXT NOT NULL,
  thickness_um INTEGER NOT NULL,
  u_nm INTEGER NOT NULL,
  count INTEGER,
  PRIMARY KEY (tray, shim)
) STRICT, WITHOUT ROWID;

CREATE TABLE workshop (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL,
  address TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE job_sheet (
  hash TEXT NOT NULL PRIMARY KEY,
  id TEXT NOT NULL,
  name TEXT NOT NULL,
  issue INTEGER NOT NULL,
  json BLOB NOT NULL,
  added_at_ms INTEGER NOT NULL,
  UNIQUE (name, issue)
) STRICT, WITHOUT ROWID;

CREATE TABLE spec_sheet (
  hash TEXT NOT NULL PRIMARY KEY,
  id TEXT NOT NULL,
  name TEXT NOT NULL,
  issue INTEGER NOT NULL,
  json BLOB NOT NULL,
  added_at_ms INTEGER NOT NULL,
  UNIQUE (name, issue)
) STRICT, WITHOUT ROWID;

CREATE TABLE register_change (
  position INTEGER NOT NULL PRIMARY KEY,
  register TEXT NOT NULL,
  item TEXT NOT NULL,
  person TEXT NOT NULL,
  at_ms INTEGER NOT NULL,
  offset_min INTEGER NOT NULL,
  clock_went_back INTEGER NOT NULL CHECK (clock_went_back IN (0, 1)),
  body BLOB NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX register_change_by_item ON register_change (register, item, position);

-- The truth

CREATE TABLE entry (
  job TEXT NOT NULL,
  seq INTEGER NOT NULL CHECK (seq >= 1),
  at_ms INTEGER NOT NULL,
  offset_min INTEGER NOT NULL,
  clock_went_back INTEGER NOT NULL CHECK (clock_went_back IN (0, 1)),
  person TEXT NOT NULL,
  kind TEXT NOT NULL,
  kind_version INTEGER NOT NULL,
  body BLOB NOT NULL,
  previous_hash TEXT NOT NULL,
  hash TEXT NOT NULL,
  PRIMARY KEY (job, seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE chain_head (
  position INTEGER NOT NULL PRIMARY KEY,
  job TEXT NOT NULL,
  seq INTEGER NOT NULL,
  hash TEXT NOT NULL,
  list_hash TEXT NOT NULL,
  FOREIGN KEY (job, seq) REFERENCES entry (job, seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE private_text (
  id TEXT NOT NULL PRIMARY KEY,
  salt TEXT,
  text TEXT,
  CHECK ((salt IS NULL) = (text IS NULL))
) STRICT, WITHOUT ROWID;

-- What follows from the entries

CREATE TABLE vehicle (
  key TEXT NOT NULL PRIMARY KEY,
  chassis_reason TEXT
) STRICT, WITHOUT ROWID;

CREATE TABLE job (
  id TEXT NOT NULL PRIMARY KEY,
  number TEXT NOT NULL,
  vehicle TEXT NOT NULL REFERENCES vehicle (key),
  gearbox TEXT NOT NULL,
  gearbox_serial TEXT,
  plate TEXT REFERENCES private_text (id),
  customer_reference TEXT REFERENCES private_text (id),
  complaint TEXT REFERENCES private_text (id),
  sheet_hash TEXT NOT NULL REFERENCES job_sheet (hash),
  spec_hash TEXT NOT NULL REFERENCES spec_sheet (hash),
  opened_at_ms INTEGER NOT NULL,
  last_at_ms INTEGER NOT NULL,
  last_seq INTEGER NOT NULL,
  standing TEXT NOT NULL CHECK (standing IN ('open', 'parked', 'closed')),
  stage TEXT NOT NULL,
  next_step TEXT NOT NULL,
  assembly INTEGER NOT NULL,
  waits_for TEXT NOT NULL,
  due TEXT,
  at_bench TEXT NOT NULL,
  pack_serial TEXT
) STRICT, WITHOUT ROWID;
CREATE INDEX job_by_opened ON job (opened_at_ms, id);
CREATE INDEX job_by_standing ON job (standing, last_at_ms);
CREATE INDEX job_by_vehicle ON job (vehicle, opened_at_ms);
CREATE INDEX job_by_number ON job (number);
CREATE INDEX job_by_gearbox ON job (gearbox);

CREATE TABLE measurement (
  job TEXT NOT NULL,
  seq INTEGER NOT NULL,
  item INTEGER NOT NULL,
  step TEXT,
  assembly INTEGER,
  channel TEXT NOT NULL,
  base INTEGER NOT NULL,
  decimals INTEGER NOT NULL,
  unit TEXT NOT NULL,
  verdict TEXT NOT NULL,
  limit_least INTEGER,
  limit_most INTEGER,
  instrument TEXT,
  attempt INTEGER,
  PRIMARY KEY (job, seq, item),
  FOREIGN KEY (job, seq) REFERENCES entry (job, seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE shim_trial (
  job TEXT NOT NULL,
  seq INTEGER NOT NULL,
  step TEXT NOT NULL,
  assembly INTEGER NOT NULL,
  side TEXT NOT NULL,
  shim TEXT NOT NULL,
  fit TEXT NOT NULL,
  PRIMARY KEY (job, seq),
  FOREIGN KEY (job, seq) REFERENCES entry (job, seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE float_run (
  job TEXT NOT NULL,
  seq INTEGER NOT NULL,
  step TEXT NOT NULL,
  assembly INTEGER NOT NULL,
  side TEXT NOT NULL,
  as_found INTEGER NOT NULL CHECK (as_found IN (0, 1)),
  spot INTEGER NOT NULL,
  series INTEGER NOT NULL,
  rest_um INTEGER NOT NULL,
  lifted_um INTEGER NOT NULL,
  zero_after_um INTEGER,
  float_um INTEGER NOT NULL,
  unit TEXT NOT NULL,
  instrument TEXT,
  PRIMARY KEY (job, seq),
  FOREIGN KEY (job, seq) REFERENCES entry (job, seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE shim_chosen (
  job TEXT NOT NULL,
  seq INTEGER NOT NULL,
  step TEXT NOT NULL,
  assembly INTEGER NOT NULL,
  side TEXT NOT NULL,
  shim TEXT NOT NULL,
  thickness_um INTEGER NOT NULL,
  u_nm INTEGER NOT NULL,
  chosen_by TEXT NOT NULL,
  chance_percent INTEGER,
  reason TEXT NOT NULL,
  PRIMARY KEY (job, seq),
  FOREIGN KEY (job, seq) REFERENCES entry (job, seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE advice (
  job TEXT NOT NULL,
  seq INTEGER NOT NULL,
  step TEXT NOT NULL,
  assembly INTEGER NOT NULL,
  side TEXT NOT NULL,
  engine TEXT NOT NULL,
  conclusion TEXT NOT NULL,
  shim TEXT,
  mean_um INTEGER,
  expanded_u_um INTEGER,
  trials_agree INTEGER CHECK (trials_agree IN (0, 1)),
  PRIMARY KEY (job, seq),
  FOREIGN KEY (job, seq) REFERENCES entry (job, seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE part_fitted (
  job TEXT NOT NULL,
  seq INTEGER NOT NULL,
  item INTEGER NOT NULL,
  step TEXT NOT NULL,
  assembly INTEGER NOT NULL,
  part TEXT NOT NULL,
  number TEXT NOT NULL,
  quantity INTEGER NOT NULL,
  batch TEXT NOT NULL,
  PRIMARY KEY (job, seq, item),
  FOREIGN KEY (job, seq) REFERENCES entry (job, seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE deviation (
  job TEXT NOT NULL,
  seq INTEGER NOT NULL,
  step TEXT NOT NULL,
  assembly INTEGER NOT NULL,
  reason TEXT NOT NULL,
  PRIMARY KEY (job, seq),
  FOREIGN KEY (job, seq) REFERENCES entry (job, seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE photo (
  job TEXT NOT NULL,
  seq INTEGER NOT NULL,
  step TEXT NOT NULL,
  assembly INTEGER NOT NULL,
  sha256 TEXT NOT NULL,
  media_type TEXT NOT NULL,
  bytes INTEGER NOT NULL,
  caption TEXT NOT NULL,
  PRIMARY KEY (job, seq),
  FOREIGN KEY (job, seq) REFERENCES entry (job, seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE withdrawal (
  job TEXT NOT NULL,
  seq INTEGER NOT NULL,
  entry INTEGER NOT NULL,
  reason TEXT NOT NULL,
  PRIMARY KEY (job, seq),
  FOREIGN KEY (job, seq) REFERENCES entry (job, seq)
) STRICT, WITHOUT ROWID;
CREATE INDEX withdrawal_by_entry ON withdrawal (job, entry);

CREATE TABLE search_term (
  id INTEGER NOT NULL PRIMARY KEY,
  job TEXT NOT NULL REFERENCES job (id),
  place TEXT NOT NULL,
  term TEXT NOT NULL,
  private_text TEXT REFERENCES private_text (id),
  UNIQUE (job, place, term)
) STRICT, WITHOUT ROWID;
CREATE INDEX search_term_by_private_text ON search_term (private_text);

CREATE TABLE search_gram (
  gram TEXT NOT NULL,
  term INTEGER NOT NULL REFERENCES search_term (id),
  PRIMARY KEY (gram, term)
) STRICT, WITHOUT ROWID;
CREATE INDEX search_gram_by_term ON search_gram (term);

-- What was once written stays

CREATE TRIGGER entry_is_not_changed BEFORE UPDATE ON entry
BEGIN SELECT RAISE(ABORT, 'an entry is kept for ever'); END;
CREATE TRIGGER entry_is_not_deleted BEFORE DELETE ON entry
BEGIN SELECT RAISE(ABORT, 'an entry is kept for ever'); END;
CREATE TRIGGER chain_head_is_not_changed BEFORE UPDATE ON chain_head
BEGIN SELECT RAISE(ABORT, 'a chain head is kept for ever'); END;
CREATE TRIGGER chain_head_is_not_deleted BEFORE DELETE ON chain_head
BEGIN SELECT RAISE(ABORT, 'a chain head is kept for ever'); END;
CREATE TRIGGER register_change_is_not_changed BEFORE UPDATE ON register_change
BEGIN SELECT RAISE(ABORT, 'the history of a register is kept for ever'); END;
CREATE TRIGGER register_change_is_not_deleted BEFORE DELETE ON register_change
BEGIN SELECT RAISE(ABORT, 'the history of a register is kept for ever'); END;
CREATE TRIGGER job_sheet_is_not_changed BEFORE UPDATE ON job_sheet
BEGIN SELECT RAISE(ABORT, 'an issue is kept for ever'); END;
CREATE TRIGGER job_sheet_is_not_deleted BEFORE DELETE ON job_sheet
BEGIN SELECT RAISE(ABORT, 'an issue is kept for ever'); END;
CREATE TRIGGER spec_sheet_is_not_changed BEFORE UPDATE ON spec_sheet
BEGIN SELECT RAISE(ABORT, 'an issue is kept for ever'); END;
CREATE TRIGGER spec_sheet_is_not_deleted BEFORE DELETE ON spec_sheet
BEGIN SELECT RAISE(ABORT, 'an issue is kept for ever'); END;
CREATE TRIGGER private_text_is_only_erased BEFORE UPDATE ON private_text
WHEN NEW.id <> OLD.id OR NEW.text IS NOT NULL
BEGIN SELECT RAISE(ABORT, 'a personal text is only erased'); END;
CREATE TRIGGER private_text_is_not_deleted BEFORE DELETE ON private_text
BEGIN SELECT RAISE(ABORT, 'a personal text is erased, its place stays'); END;
