-- Depth and flat base of a glass, where somebody has measured them; the curve of its inside is fitted to them.
ALTER TABLE glass ADD COLUMN depth_mm REAL CHECK (depth_mm BETWEEN 10 AND 500);
ALTER TABLE glass ADD COLUMN base_mm REAL CHECK (base_mm BETWEEN 1 AND 300);
