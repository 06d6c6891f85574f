-- SPDX-License-Identifier: MIT
-- says: is not laid out as a logbook
CREATE VIEW all_of_it AS SELECT * FROM batches;
