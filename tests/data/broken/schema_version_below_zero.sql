-- SPDX-License-Identifier: MIT
-- says: was never finished or is damaged
PRAGMA user_version = -5;
