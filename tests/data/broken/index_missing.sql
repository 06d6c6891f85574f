-- SPDX-License-Identifier: MIT
-- says: is not laid out as a logbook
DROP INDEX batches_of_plant;
