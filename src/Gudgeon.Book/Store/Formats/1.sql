-- What was done, in order. The tables below hold what follows from it.
CREATE TABLE journal (
    revision INTEGER PRIMARY KEY,
    at       TEXT NOT NULL,
    who      TEXT NOT NULL,
    device   TEXT NOT NULL,
    content  TEXT NOT NULL CHECK (json_valid(content)),
    seal     BLOB NOT NULL CHECK (length(seal) = 32)
) STRICT;

CREATE TRIGGER journal_grows BEFORE INSERT ON journal
WHEN NEW.revision <> (SELECT ifnull(max(revision), 0) + 1 FROM journal)
BEGIN SELECT raise(ABORT, 'the journal is only added to'); END;

CREATE TRIGGER journal_is_kept BEFORE UPDATE ON journal
BEGIN SELECT raise(ABORT, 'the journal is only added to'); END;

CREATE TRIGGER journal_stays BEFORE DELETE ON journal
BEGIN SELECT raise(ABORT, 'the journal is only added to'); END;

CREATE TABLE book (
    only  INTEGER PRIMARY KEY CHECK (only = 1),
    name  TEXT NOT NULL,
    notes TEXT NOT NULL
) STRICT;

CREATE TABLE change (
    place  INTEGER PRIMARY KEY,
    id     TEXT NOT NULL UNIQUE,
    title  TEXT NOT NULL,
    reason TEXT NOT NULL,
    is_on  INTEGER NOT NULL CHECK (is_on IN (0, 1))
) STRICT;

-- Values of the baseline, and of a change where one is named; content as in a book's JSON.
CREATE TABLE value (
    place   INTEGER PRIMARY KEY,
    change  TEXT REFERENCES change (id),
    path    TEXT NOT NULL,
    content TEXT NOT NULL CHECK (json_valid(content))
) STRICT;

CREATE UNIQUE INDEX value_once ON value (ifnull(change, ''), path);

CREATE TABLE reading (
    place   INTEGER PRIMARY KEY,
    path    TEXT NOT NULL GENERATED ALWAYS AS (content ->> 'field') STORED,
    content TEXT NOT NULL CHECK (json_valid(content))
) STRICT;

CREATE TABLE limits (
    place  INTEGER PRIMARY KEY,
    name   TEXT NOT NULL UNIQUE,
    value  TEXT NOT NULL,
    reason TEXT NOT NULL
) STRICT;

-- A value set on an older revision than the one that set it last: it waits until somebody settles.
CREATE TABLE conflict (
    revision INTEGER PRIMARY KEY REFERENCES journal (revision),
    change   TEXT REFERENCES change (id),
    path     TEXT NOT NULL,
    content  TEXT NOT NULL CHECK (json_valid(content))
) STRICT;

-- Files kept with the book, each content once.
CREATE TABLE blob (
    sha256  TEXT PRIMARY KEY,
    content BLOB NOT NULL
) STRICT;

CREATE TRIGGER blob_is_kept BEFORE UPDATE ON blob
BEGIN SELECT raise(ABORT, 'an attached file is kept as it came'); END;

CREATE TRIGGER blob_stays BEFORE DELETE ON blob
BEGIN SELECT raise(ABORT, 'an attached file is kept as it came'); END;

CREATE TABLE attachment (
    revision INTEGER PRIMARY KEY REFERENCES journal (revision),
    name     TEXT NOT NULL,
    type     TEXT NOT NULL,
    size     INTEGER NOT NULL,
    sha256   TEXT NOT NULL REFERENCES blob (sha256),
    about    TEXT NOT NULL
) STRICT;
