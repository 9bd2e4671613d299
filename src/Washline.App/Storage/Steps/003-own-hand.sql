-- How the person at home shakes and stirs, as a factor on the calibrated rate with its band; empty as long as nobody has measured.
ALTER TABLE settings ADD COLUMN shake_factor REAL CHECK (shake_factor BETWEEN 0.2 AND 5);
ALTER TABLE settings ADD COLUMN shake_low REAL CHECK (shake_low BETWEEN 0.2 AND 5);
ALTER TABLE settings ADD COLUMN shake_high REAL CHECK (shake_high BETWEEN 0.2 AND 5);
ALTER TABLE settings ADD COLUMN stir_factor REAL CHECK (stir_factor BETWEEN 0.2 AND 5);
ALTER TABLE settings ADD COLUMN stir_low REAL CHECK (stir_low BETWEEN 0.2 AND 5);
ALTER TABLE settings ADD COLUMN stir_high REAL CHECK (stir_high BETWEEN 0.2 AND 5);
