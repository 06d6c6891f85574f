-- SPDX-License-Identifier: MIT
-- says: is damaged inside
PRAGMA ignore_check_constraints = ON;
UPDATE history SET done_at = '2026-02-30T10:00:00Z';
