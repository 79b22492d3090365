-- Job cards of the book's own, and what was done to cards, in order; content as in a book's JSON.
CREATE TABLE card (
    place   INTEGER PRIMARY KEY,
    id      TEXT NOT NULL UNIQUE,
    content TEXT NOT NULL CHECK (json_valid(content))
) STRICT;

CREATE TABLE act (
    place    INTEGER PRIMARY KEY,
    revision INTEGER NOT NULL REFERENCES journal (revision),
    content  TEXT NOT NULL CHECK (json_valid(content))
) STRICT;
