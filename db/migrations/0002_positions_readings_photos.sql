-- SPDX-License-Identifier: MIT
-- Schema 2: cuttings by position, readings and care of stations, photos and expenses of batches, check schedules, and the units that the
-- grower reads and types. Released: never edited again, the next change is a file 0003_....sql.
--
-- What 0001 says of actions, triggers, dates and ids holds here too. Quantities are stored in one unit each: core/climate/quantity.h.

ALTER TABLE facts ADD COLUMN interval TEXT NOT NULL DEFAULT 'wilson'
    CHECK (interval IN ('wilson', 'wilson_continuity', 'clopper_pearson', 'jeffreys', 'agresti_coull', 'mid_p'));
ALTER TABLE facts ADD COLUMN temperature_unit TEXT NOT NULL DEFAULT 'C' CHECK (temperature_unit IN ('C', 'F'));
ALTER TABLE facts ADD COLUMN ec_unit TEXT NOT NULL DEFAULT 'mS/cm'
    CHECK (ec_unit IN ('mS/cm', 'uS/cm', 'ppm500', 'ppm640', 'ppm700'));
ALTER TABLE facts ADD COLUMN volume_unit TEXT NOT NULL DEFAULT 'L' CHECK (volume_unit IN ('L', 'gal'));
ALTER TABLE facts ADD COLUMN length_unit TEXT NOT NULL DEFAULT 'mm' CHECK (length_unit IN ('mm', 'in'));
ALTER TABLE facts ADD COLUMN currency TEXT NOT NULL DEFAULT 'EUR' CHECK (currency GLOB '[A-Z][A-Z][A-Z]');

CREATE TABLE check_schedules (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 500),
    first_after_days INTEGER NOT NULL CHECK (first_after_days BETWEEN 0 AND 3650),
    every_days INTEGER NOT NULL CHECK (every_days BETWEEN 1 AND 3650),
    is_retired INTEGER NOT NULL CHECK (is_retired IN (0, 1))
) STRICT;
ALTER TABLE plants ADD COLUMN check_schedule_id INTEGER REFERENCES check_schedules (id) DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE methods ADD COLUMN check_schedule_id INTEGER REFERENCES check_schedules (id) DEFERRABLE INITIALLY DEFERRED;

ALTER TABLE stations ADD COLUMN is_staggered INTEGER NOT NULL DEFAULT 0 CHECK (is_staggered IN (0, 1));
-- As core/station/position.h writes positions: "A1-A6, B2".
ALTER TABLE stations ADD COLUMN blocked TEXT NOT NULL DEFAULT '' CHECK (length(blocked) <= 100000);
ALTER TABLE batches ADD COLUMN positions TEXT NOT NULL DEFAULT '' CHECK (length(positions) <= 100000);

-- Of the counts of a check, those whose position is known.
CREATE TABLE check_findings (
    check_id INTEGER NOT NULL REFERENCES checks (id) DEFERRABLE INITIALLY DEFERRED,
    position_row INTEGER NOT NULL CHECK (position_row BETWEEN 0 AND 25),
    position_column INTEGER NOT NULL CHECK (position_column BETWEEN 0 AND 999),
    outcome TEXT NOT NULL CHECK (outcome IN ('rooted', 'lost', 'withdrawn')),
    cause_id INTEGER REFERENCES loss_causes (id) DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (check_id, position_row, position_column),
    CHECK (cause_id IS NULL OR outcome = 'lost')
) STRICT, WITHOUT ROWID;

CREATE TABLE readings (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    station_id INTEGER NOT NULL REFERENCES stations (id) DEFERRABLE INITIALLY DEFERRED,
    quantity TEXT NOT NULL CHECK (quantity IN ('solution_ec', 'solution_ph', 'solution_temperature', 'dissolved_oxygen',
                                               'medium_temperature', 'air_temperature', 'relative_humidity', 'light')),
    read_at TEXT NOT NULL CHECK (strftime('%Y-%m-%dT%H:%M:%SZ', read_at, '+0 days') IS read_at),
    value REAL NOT NULL CHECK (value BETWEEN -1000 AND 1000000),
    note TEXT NOT NULL CHECK (length(note) <= 100000)
) STRICT;
CREATE INDEX readings_of_station ON readings (station_id, quantity, read_at);

CREATE TABLE care (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    station_id INTEGER NOT NULL REFERENCES stations (id) DEFERRABLE INITIALLY DEFERRED,
    done_at TEXT NOT NULL CHECK (strftime('%Y-%m-%dT%H:%M:%SZ', done_at, '+0 days') IS done_at),
    kind TEXT NOT NULL CHECK (kind IN ('topped up', 'solution changed', 'vented', 'misted', 'sprayed', 'pump on', 'pump off',
                                       'other')),
    note TEXT NOT NULL CHECK (length(note) <= 100000)
) STRICT;
CREATE INDEX care_of_station ON care (station_id, done_at);

CREATE TABLE photos (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    batch_id INTEGER NOT NULL REFERENCES batches (id) DEFERRABLE INITIALLY DEFERRED,
    taken_on TEXT NOT NULL CHECK (taken_on >= '1800-01-01' AND date(taken_on, '+0 days') IS taken_on),
    caption TEXT NOT NULL CHECK (length(caption) <= 500),
    image BLOB NOT NULL CHECK (length(image) BETWEEN 1 AND 4000000)
) STRICT;
CREATE INDEX photos_of_batch ON photos (batch_id, taken_on);

CREATE TABLE expenses (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    batch_id INTEGER NOT NULL REFERENCES batches (id) DEFERRABLE INITIALLY DEFERRED,
    spent_on TEXT NOT NULL CHECK (spent_on >= '1800-01-01' AND date(spent_on, '+0 days') IS spent_on),
    what TEXT NOT NULL CHECK (length(what) BETWEEN 1 AND 500),
    amount_hundredths INTEGER NOT NULL CHECK (amount_hundredths BETWEEN 0 AND 100000000000)
) STRICT;
CREATE INDEX expenses_of_batch ON expenses (batch_id, spent_on);
