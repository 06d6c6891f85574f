-- SPDX-License-Identifier: MIT
-- says: was written by a newer Strikebook (format 7
PRAGMA user_version = 7;
