-- SPDX-License-Identifier: MIT
-- says: is not laid out as a logbook
CREATE TRIGGER meddle AFTER INSERT ON checks BEGIN UPDATE batches SET stuck = 1; END;
