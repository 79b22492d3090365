-- A reading knows the entry that brought it. The first entry brought as many as its book holds; each later one stands
-- unless an undoing took it back.
CREATE TABLE dated_reading (
    place    INTEGER PRIMARY KEY,
    revision INTEGER NOT NULL REFERENCES journal (revision),
    path     TEXT NOT NULL GENERATED ALWAYS AS (content ->> 'field') STORED,
    content  TEXT NOT NULL CHECK (json_valid(content))
) STRICT;

INSERT INTO dated_reading (place, revision, content)
WITH
    begun (number) AS (SELECT ifnull(json_array_length(content, '$.book.measurements'), 0) FROM journal WHERE revision = 1),
    brought AS (
        SELECT revision, row_number() OVER (ORDER BY revision) + (SELECT number FROM begun) AS number
        FROM journal
        WHERE content ->> 'edit' = 'reading'
        AND revision NOT IN (SELECT content ->> 'of' FROM journal WHERE content ->> 'edit' = 'undo')),
    held AS (SELECT place, content, row_number() OVER (ORDER BY place) AS number FROM reading)
SELECT held.place, ifnull(brought.revision, 1), held.content FROM held LEFT JOIN brought USING (number) ORDER BY held.place;

DROP TABLE reading;

ALTER TABLE dated_reading RENAME TO reading;

-- An id that a reading was given where it was taken comes once, also when the reading was taken back since.
CREATE UNIQUE INDEX reading_once ON journal (CASE WHEN json_valid(content) THEN content ->> '$.reading.id' END)
WHERE CASE WHEN json_valid(content) THEN content ->> '$.reading.id' END IS NOT NULL;

-- Runs that somebody wanted kept; content as in a book's JSON.
CREATE TABLE run (
    place    INTEGER PRIMARY KEY,
    revision INTEGER NOT NULL REFERENCES journal (revision),
    content  TEXT NOT NULL CHECK (json_valid(content))
) STRICT;

-- Statements signed over the book as it stood after an entry; seal is that entry's, in hexadecimal.
CREATE TABLE signature (
    revision  INTEGER PRIMARY KEY REFERENCES journal (revision),
    statement TEXT NOT NULL,
    over      INTEGER NOT NULL REFERENCES journal (revision),
    seal      TEXT NOT NULL CHECK (length(seal) = 64)
) STRICT;

-- Small pictures of attached ones, made when first asked for; null when none can be made. Nothing is lost with them.
CREATE TABLE thumbnail (
    sha256  TEXT PRIMARY KEY REFERENCES blob (sha256),
    content BLOB
) STRICT;
