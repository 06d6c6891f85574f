-- SPDX-License-Identifier: MIT
-- Schema 4: what loggers recorded, how their files are read, the grower's own bands, recipes as they were mixed; the bench's altitude, the
-- base of degree-days, the rate of false alarms; edible plants, licences, litres. Released: never edited again, the next change is a file
-- 0005_....sql.
--
-- What 0001 says of actions, triggers, dates and ids holds here too.

ALTER TABLE facts ADD COLUMN altitude_m REAL NOT NULL DEFAULT 0 CHECK (altitude_m BETWEEN -430 AND 6000);
ALTER TABLE facts ADD COLUMN degree_day_base REAL NOT NULL DEFAULT 10 CHECK (degree_day_base BETWEEN -10 AND 40);
ALTER TABLE facts ADD COLUMN false_alarm_rate REAL NOT NULL DEFAULT 0.01 CHECK (false_alarm_rate BETWEEN 0.0001 AND 0.5);

ALTER TABLE plants ADD COLUMN is_edible INTEGER NOT NULL DEFAULT 0 CHECK (is_edible IN (0, 1));
ALTER TABLE batches ADD COLUMN licence TEXT NOT NULL DEFAULT '' CHECK (length(licence) <= 500);
ALTER TABLE care ADD COLUMN litres REAL CHECK (litres IS NULL OR litres > 0 AND litres <= 100000);

-- Rebuilt, since a CHECK can't be changed: one more quantity.
ALTER TABLE readings RENAME TO readings_before;
CREATE TABLE readings (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    station_id INTEGER NOT NULL REFERENCES stations (id) DEFERRABLE INITIALLY DEFERRED,
    quantity TEXT NOT NULL CHECK (quantity IN ('solution_ec', 'solution_ph', 'solution_temperature', 'dissolved_oxygen',
                                               'medium_temperature', 'air_temperature', 'relative_humidity', 'light',
                                               'leaf_temperature')),
    read_at TEXT NOT NULL CHECK (strftime('%Y-%m-%dT%H:%M:%SZ', read_at, '+0 days') IS read_at),
    value REAL NOT NULL CHECK (value BETWEEN -1000 AND 1000000),
    note TEXT NOT NULL CHECK (length(note) <= 100000)
) STRICT;
INSERT INTO readings (id, station_id, quantity, read_at, value, note)
    SELECT id, station_id, quantity, read_at, value, note FROM readings_before;
DROP TABLE readings_before;
CREATE INDEX readings_of_station ON readings (station_id, quantity, read_at);

-- Kept with a session or with one entry of care. cautions: names, one a line.
CREATE TABLE mixes (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    made_at TEXT NOT NULL CHECK (strftime('%Y-%m-%dT%H:%M:%SZ', made_at, '+0 days') IS made_at),
    kind TEXT NOT NULL CHECK (kind IN ('nutrient', 'label', 'tub', 'ph', 'titration', 'auxin', 'medium')),
    title TEXT NOT NULL CHECK (length(title) BETWEEN 1 AND 500),
    amounts TEXT NOT NULL CHECK (length(amounts) BETWEEN 1 AND 100000),
    workings TEXT NOT NULL CHECK (length(workings) <= 100000),
    cautions TEXT NOT NULL CHECK (length(cautions) <= 100000),
    session_id INTEGER REFERENCES sessions (id) DEFERRABLE INITIALLY DEFERRED,
    care_id INTEGER REFERENCES care (id) DEFERRABLE INITIALLY DEFERRED,
    CHECK ((session_id IS NULL) <> (care_id IS NULL))
) STRICT;
CREATE INDEX mixes_of_session ON mixes (session_id);
CREATE INDEX mixes_of_care ON mixes (care_id);

-- plant_id NULL: of every plant that has none of its own. Units: core/climate/own_band.h.
CREATE TABLE own_bands (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    stage TEXT NOT NULL CHECK (stage IN ('before roots', 'first roots', 'filling roots', 'hardening')),
    quantity TEXT NOT NULL CHECK (quantity IN ('solution_ec', 'solution_ph', 'solution_temperature', 'dissolved_oxygen',
                                               'medium_temperature', 'air_temperature', 'relative_humidity', 'light',
                                               'leaf_temperature', 'vapour_deficit', 'daily_light')),
    plant_id INTEGER REFERENCES plants (id) DEFERRABLE INITIALLY DEFERRED,
    low REAL CHECK (low BETWEEN -1000 AND 1000000),
    high REAL CHECK (high BETWEEN -1000 AND 1000000),
    note TEXT NOT NULL CHECK (length(note) <= 100000),
    CHECK (low IS NOT NULL OR high IS NOT NULL),
    CHECK (low IS NULL OR high IS NULL OR low <= high)
) STRICT;
-- A UNIQUE of the three columns would let two general bands stand side by side: no NULL equals another.
CREATE UNIQUE INDEX own_bands_once ON own_bands (stage, quantity, COALESCE(plant_id, 0));
CREATE INDEX own_bands_of_plant ON own_bands (plant_id);

-- One quantity at one station on one day (UTC). samples: 12 bytes each, little-endian: the second of the day (32 bits without sign, rising),
-- then the value (64 bits, IEEE 754) in the unit of core/climate/quantity.h. A row for each value would make a million of them some fifty
-- times as large in the file and in what undo needs.
CREATE TABLE logger_days (
    station_id INTEGER NOT NULL REFERENCES stations (id) DEFERRABLE INITIALLY DEFERRED,
    quantity TEXT NOT NULL CHECK (quantity IN ('solution_ec', 'solution_ph', 'solution_temperature', 'dissolved_oxygen',
                                               'medium_temperature', 'air_temperature', 'relative_humidity', 'light',
                                               'leaf_temperature')),
    day TEXT NOT NULL CHECK (day >= '1800-01-01' AND date(day, '+0 days') IS day),
    samples BLOB NOT NULL CHECK (length(samples) BETWEEN 12 AND 1036800 AND length(samples) % 12 = 0),
    PRIMARY KEY (station_id, quantity, day)
) STRICT, WITHOUT ROWID;

-- How the columns of a logger's files are read. header: the line that names them; mapping: JSON that the program writes and reads.
CREATE TABLE logger_formats (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 500),
    header TEXT NOT NULL CHECK (length(header) <= 100000),
    mapping TEXT NOT NULL CHECK (length(mapping) <= 100000)
) STRICT;
