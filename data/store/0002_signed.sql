-- Keys, seals and what is added after them. Each table and column is described in docs/store-schema.md.

CREATE TABLE signing_key (
  public_key TEXT NOT NULL PRIMARY KEY,
  person TEXT NOT NULL REFERENCES person (id),
  made_at_ms INTEGER NOT NULL,
  salt TEXT,
  nonce TEXT,
  box TEXT,
  passes INTEGER NOT NULL,
  memory_bytes INTEGER NOT NULL,
  invalid_from TEXT,
  CHECK ((salt IS NULL) = (box IS NULL) AND (nonce IS NULL) = (box IS NULL))
) STRICT, WITHOUT ROWID;
CREATE INDEX signing_key_by_person ON signing_key (person, made_at_ms);

CREATE TABLE pin_attempt (
  person TEXT NOT NULL PRIMARY KEY REFERENCES person (id),
  failed INTEGER NOT NULL CHECK (failed >= 0),
  not_before_ms INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE seal (
  job TEXT NOT NULL PRIMARY KEY,
  seq INTEGER NOT NULL,
  statement BLOB NOT NULL,
  record BLOB NOT NULL,
  code TEXT NOT NULL,
  FOREIGN KEY (job, seq) REFERENCES entry (job, seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE addendum (
  job TEXT NOT NULL REFERENCES seal (job),
  seq INTEGER NOT NULL,
  statement BLOB NOT NULL,
  PRIMARY KEY (job, seq),
  FOREIGN KEY (job, seq) REFERENCES entry (job, seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE signature (
  job TEXT NOT NULL REFERENCES seal (job),
  seq INTEGER NOT NULL,
  item INTEGER NOT NULL,
  signature TEXT NOT NULL,
  PRIMARY KEY (job, seq, item),
  FOREIGN KEY (job, seq) REFERENCES entry (job, seq)
) STRICT, WITHOUT ROWID;

CREATE TRIGGER signing_key_keeps_its_name BEFORE UPDATE ON signing_key
WHEN NEW.public_key <> OLD.public_key OR NEW.person <> OLD.person OR NEW.made_at_ms <> OLD.made_at_ms
BEGIN SELECT RAISE(ABORT, 'a public key is kept for ever'); END;
CREATE TRIGGER signing_key_is_not_deleted BEFORE DELETE ON signing_key
BEGIN SELECT RAISE(ABORT, 'a public key is kept for ever'); END;
CREATE TRIGGER seal_is_not_changed BEFORE UPDATE ON seal
BEGIN SELECT RAISE(ABORT, 'a seal is kept for ever'); END;
CREATE TRIGGER seal_is_not_deleted BEFORE DELETE ON seal
BEGIN SELECT RAISE(ABORT, 'a seal is kept for ever'); END;
CREATE TRIGGER addendum_is_not_changed BEFORE UPDATE ON addendum
BEGIN SELECT RAISE(ABORT, 'an addendum is kept for ever'); END;
CREATE TRIGGER addendum_is_not_deleted BEFORE DELETE ON addendum
BEGIN SELECT RAISE(ABORT, 'an addendum is kept for ever'); END;
CREATE TRIGGER signature_is_not_changed BEFORE UPDATE ON signature
BEGIN SELECT RAISE(ABORT, 'a signature is kept for ever'); END;
CREATE TRIGGER signature_is_not_deleted BEFORE DELETE ON signature
BEGIN SELECT RAISE(ABORT, 'a signature is kept for ever'); END;
