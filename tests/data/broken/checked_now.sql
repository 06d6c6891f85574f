-- SPDX-License-Identifier: MIT
-- says: is damaged
PRAGMA ignore_check_constraints = ON;
UPDATE checks SET checked_on = 'now' WHERE id = (SELECT MIN(id) FROM checks);
