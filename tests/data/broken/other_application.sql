-- SPDX-License-Identifier: MIT
-- says: is a database of another program
PRAGMA application_id = 1;
