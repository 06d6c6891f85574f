-- SPDX-License-Identifier: MIT
-- says: is not laid out as a logbook
ALTER TABLE plants ADD COLUMN colour TEXT;
