-- For many jobs: what a job is found by, cut so that any part of it is the beginning of a row. Each table and column is
-- described in docs/store-schema.md.

CREATE TABLE search_suffix (
  suffix TEXT NOT NULL,
  term INTEGER NOT NULL REFERENCES search_term (id),
  PRIMARY KEY (suffix, term)
) STRICT, WITHOUT ROWID;
CREATE INDEX search_suffix_by_term ON search_suffix (term);

WITH RECURSIVE cut (term, suffix) AS (
  SELECT id, substr(term, 1, 200) FROM search_term WHERE length(term) >= 2
  UNION ALL
  SELECT term, substr(suffix, 2) FROM cut WHERE length(suffix) > 2
)
INSERT INTO search_suffix (suffix, term) SELECT suffix, term FROM cut;

DROP TABLE search_gram;

-- What a reading is judged with comes from a few rows, however many jobs there are.
CREATE INDEX job_by_second_assembly ON job (gearbox, opened_at_ms) WHERE assembly >= 2;
CREATE INDEX job_by_last ON job (last_at_ms);
