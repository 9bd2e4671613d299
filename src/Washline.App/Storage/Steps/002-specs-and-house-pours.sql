-- The makers' specs, each as the text that reads back to it.
CREATE TABLE spec (
    title TEXT NOT NULL PRIMARY KEY COLLATE NOCASE CHECK (title <> ''),
    text TEXT NOT NULL
) STRICT;

-- What the household pours for a spec; lines is JSON: [{"bottle": "The rye", "ml": 60}, ...].
CREATE TABLE house_pour (
    spec TEXT NOT NULL PRIMARY KEY COLLATE NOCASE CHECK (spec <> ''),
    lines TEXT NOT NULL CHECK (json_valid(lines)),
    note TEXT
) STRICT;
