-- SPDX-License-Identifier: MIT
-- Schema 5: prices with the days from which they hold, lots of hormone and medium, counts after potting; expenses of sessions, and the
-- minutes that went with an expense. Released: never edited again, the next change is a file 0006_....sql.
--
-- What 0001 says of actions, triggers, dates and ids holds here too. What each kind of price asks for: core/money/price.h.

-- Its owner is one thing at most; none: the whole bench. until_day NULL: until the next of its name, or still. Amounts in ten-thousandths
-- of the logbook's currency, so that a kWh need not be rounded to the cent.
CREATE TABLE prices (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    kind TEXT NOT NULL CHECK (kind IN ('lasting', 'used up', 'electricity', 'tariff', 'work time', 'hour of work', 'day sooner')),
    what TEXT NOT NULL CHECK (length(what) BETWEEN 1 AND 500),
    method_id INTEGER REFERENCES methods (id) DEFERRABLE INITIALLY DEFERRED,
    station_id INTEGER REFERENCES stations (id) DEFERRABLE INITIALLY DEFERRED,
    medium_id INTEGER REFERENCES media (id) DEFERRABLE INITIALLY DEFERRED,
    treatment_id INTEGER REFERENCES treatments (id) DEFERRABLE INITIALLY DEFERRED,
    from_day TEXT NOT NULL CHECK (from_day >= '1800-01-01' AND date(from_day, '+0 days') IS from_day),
    until_day TEXT CHECK (until_day IS NULL OR until_day >= from_day AND date(until_day, '+0 days') IS until_day),
    amount_ten_thousandths INTEGER NOT NULL CHECK (amount_ten_thousandths BETWEEN 0 AND 10000000000000),
    lasts_years REAL CHECK (lasts_years > 0 AND lasts_years <= 100),
    lasts_for REAL CHECK (lasts_for > 0 AND lasts_for <= 1000000),
    basis TEXT NOT NULL CHECK (basis IN ('cutting', 'batch', 'session', 'check', 'care')),
    watts REAL NOT NULL CHECK (watts BETWEEN 0 AND 100000),
    hours_a_day REAL NOT NULL CHECK (hours_a_day BETWEEN 0 AND 24),
    duty REAL NOT NULL CHECK (duty BETWEEN 0 AND 1),
    minutes REAL NOT NULL CHECK (minutes BETWEEN 0 AND 10000),
    note TEXT NOT NULL CHECK (length(note) <= 100000),
    CHECK ((method_id IS NOT NULL) + (station_id IS NOT NULL) + (medium_id IS NOT NULL) + (treatment_id IS NOT NULL) <= 1)
) STRICT;
CREATE INDEX prices_of_method ON prices (method_id);
CREATE INDEX prices_of_station ON prices (station_id);
CREATE INDEX prices_of_medium ON prices (medium_id);
CREATE INDEX prices_of_treatment ON prices (treatment_id);

-- Used up to the day before the next one's of the same treatment or medium.
CREATE TABLE lots (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 500),
    treatment_id INTEGER REFERENCES treatments (id) DEFERRABLE INITIALLY DEFERRED,
    medium_id INTEGER REFERENCES media (id) DEFERRABLE INITIALLY DEFERRED,
    used_from TEXT NOT NULL CHECK (used_from >= '1800-01-01' AND date(used_from, '+0 days') IS used_from),
    made_on TEXT CHECK (made_on IS NULL OR made_on >= '1800-01-01' AND date(made_on, '+0 days') IS made_on),
    note TEXT NOT NULL CHECK (length(note) <= 100000),
    CHECK ((treatment_id IS NULL) <> (medium_id IS NULL))
) STRICT;
CREATE INDEX lots_of_treatment ON lots (treatment_id);
CREATE INDEX lots_of_medium ON lots (medium_id);

-- What is new since the count before.
CREATE TABLE pottings (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    batch_id INTEGER NOT NULL REFERENCES batches (id) DEFERRABLE INITIALLY DEFERRED,
    counted_on TEXT NOT NULL CHECK (counted_on >= '1800-01-01' AND date(counted_on, '+0 days') IS counted_on),
    potted INTEGER NOT NULL CHECK (potted BETWEEN 0 AND 100000),
    lost INTEGER NOT NULL CHECK (lost BETWEEN 0 AND 100000),
    note TEXT NOT NULL CHECK (length(note) <= 100000),
    CHECK (potted + lost > 0)
) STRICT;
CREATE INDEX pottings_of_batch ON pottings (batch_id, counted_on);

-- Rebuilt, since a NOT NULL can't be taken off: of a batch or of a session.
ALTER TABLE expenses RENAME TO expenses_before;
CREATE TABLE expenses (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    batch_id INTEGER REFERENCES batches (id) DEFERRABLE INITIALLY DEFERRED,
    session_id INTEGER REFERENCES sessions (id) DEFERRABLE INITIALLY DEFERRED,
    spent_on TEXT NOT NULL CHECK (spent_on >= '1800-01-01' AND date(spent_on, '+0 days') IS spent_on),
    what TEXT NOT NULL CHECK (length(what) BETWEEN 1 AND 500),
    amount_hundredths INTEGER NOT NULL CHECK (amount_hundredths BETWEEN 0 AND 100000000000),
    minutes REAL CHECK (minutes > 0 AND minutes <= 100000),
    CHECK ((batch_id IS NULL) <> (session_id IS NULL))
) STRICT;
INSERT INTO expenses (id, batch_id, session_id, spent_on, what, amount_hundredths, minutes)
    SELECT id, batch_id, NULL, spent_on, what, amount_hundredths, NULL FROM expenses_before;
DROP TABLE expenses_before;
CREATE INDEX expenses_of_batch ON expenses (batch_id, spent_on);
CREATE INDEX expenses_of_session ON expenses (session_id, spent_on);
