-- SPDX-License-Identifier: MIT
-- says: is not laid out as a logbook
DROP TABLE check_losses;
