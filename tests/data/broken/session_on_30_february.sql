-- SPDX-License-Identifier: MIT
-- says: is damaged inside
PRAGMA ignore_check_constraints = ON;
UPDATE sessions SET held_on = '2026-02-30';
