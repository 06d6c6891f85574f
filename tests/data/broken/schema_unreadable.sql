-- SPDX-License-Identifier: MIT
-- says: is damaged
PRAGMA writable_schema = ON;
UPDATE sqlite_schema SET sql = 'CREATE nonsense' WHERE name = 'plants';
