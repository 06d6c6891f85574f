-- SPDX-License-Identifier: MIT
-- says: write-ahead log
PRAGMA journal_mode = WAL;
