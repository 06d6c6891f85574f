-- SPDX-License-Identifier: MIT
-- says: is not laid out as a logbook
CREATE TABLE more (x);
