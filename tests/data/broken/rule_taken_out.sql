-- SPDX-License-Identifier: MIT
-- says: is not laid out as a logbook
PRAGMA writable_schema = ON;
UPDATE sqlite_schema SET sql = replace(sql, 'CHECK (stuck BETWEEN 1 AND 100000)', '') WHERE name = 'batches';
