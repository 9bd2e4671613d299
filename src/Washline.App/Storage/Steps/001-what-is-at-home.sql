-- 'WSLN': by this a file is known to be a bar.
PRAGMA application_id = 1465076814;

CREATE TABLE bottle (
    name TEXT NOT NULL PRIMARY KEY COLLATE NOCASE CHECK (name <> ''),
    kind TEXT NOT NULL,
    strength_percent REAL CHECK (strength_percent BETWEEN 0 AND 100),
    sugar_g_l REAL CHECK (sugar_g_l >= 0),
    acid_g_l REAL CHECK (acid_g_l >= 0),
    size_ml REAL NOT NULL CHECK (size_ml >= 0),
    left_ml REAL NOT NULL CHECK (left_ml >= 0),
    price TEXT,
    currency TEXT CHECK (length(currency) = 3),
    note TEXT
) STRICT;

CREATE TABLE house_made (
    name TEXT NOT NULL PRIMARY KEY COLLATE NOCASE CHECK (name <> ''),
    kind TEXT NOT NULL,
    strength_percent REAL CHECK (strength_percent BETWEEN 0 AND 100),
    sugar_g_l REAL CHECK (sugar_g_l >= 0),
    acid_g_l REAL CHECK (acid_g_l >= 0),
    left_ml REAL NOT NULL CHECK (left_ml >= 0),
    made TEXT CHECK (made LIKE '____-__-__'),
    use_by TEXT CHECK (use_by LIKE '____-__-__'),
    note TEXT
) STRICT;

CREATE TABLE fruit (
    name TEXT NOT NULL PRIMARY KEY COLLATE NOCASE CHECK (name <> ''),
    kind TEXT NOT NULL,
    count INTEGER NOT NULL CHECK (count BETWEEN 0 AND 1000)
) STRICT;

CREATE TABLE tool (
    name TEXT NOT NULL PRIMARY KEY COLLATE NOCASE CHECK (name <> '')
) STRICT;

CREATE TABLE glass (
    name TEXT NOT NULL PRIMARY KEY COLLATE NOCASE CHECK (name <> ''),
    shape TEXT NOT NULL,
    capacity_ml REAL NOT NULL CHECK (capacity_ml BETWEEN 20 AND 2000),
    rim_mm REAL NOT NULL CHECK (rim_mm BETWEEN 25 AND 200),
    count INTEGER NOT NULL CHECK (count BETWEEN 0 AND 1000)
) STRICT;

CREATE TABLE measure (
    name TEXT NOT NULL PRIMARY KEY COLLATE NOCASE CHECK (name <> ''),
    unit TEXT NOT NULL CHECK (unit IN ('oz', 'ml')),
    step_in_unit REAL NOT NULL CHECK (step_in_unit > 0),
    eye_step_in_unit REAL NOT NULL CHECK (eye_step_in_unit > 0),
    largest_in_unit REAL NOT NULL CHECK (largest_in_unit > 0)
) STRICT;

-- One row at most: what the household has told us once.
CREATE TABLE settings (
    one INTEGER NOT NULL PRIMARY KEY DEFAULT 1 CHECK (one = 1),
    country TEXT NOT NULL,
    ice TEXT CHECK (ice IN ('wet', 'freezer'))
) STRICT;
