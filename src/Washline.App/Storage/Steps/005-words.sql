-- Words that the catalogue does not have, and the kind that the household has said they mean.
CREATE TABLE words (
    name TEXT NOT NULL PRIMARY KEY COLLATE NOCASE CHECK (name <> ''),
    kind TEXT NOT NULL
) STRICT;
