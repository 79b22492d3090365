-- Engine runs by the wave model, which take seconds, under SHA-256 of the model and of all that they read. They are no
-- part of the book: no entry makes them, and nothing is lost with them.
CREATE TABLE duty_cache (
    place   INTEGER PRIMARY KEY,
    key     TEXT NOT NULL UNIQUE CHECK (length(key) = 64),
    nudged  INTEGER NOT NULL CHECK (nudged IN (0, 1)),
    content TEXT NOT NULL CHECK (json_valid(content))
) STRICT;
