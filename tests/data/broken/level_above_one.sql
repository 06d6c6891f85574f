-- SPDX-License-Identifier: MIT
-- says: is damaged inside
PRAGMA ignore_check_constraints = ON;
UPDATE facts SET level = 1.5;
