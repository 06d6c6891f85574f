-- SPDX-License-Identifier: MIT
-- Schema 1 of a logbook. Released: never edited again, the next change is a file 0002_....sql.
--
-- No ON DELETE or ON UPDATE actions and no triggers: both would fire again when a changeset is applied, and undo would go wrong.
-- UNIQUE only where no action swaps two values: two swapped values could not be undone.
-- Dates are ISO 8601 text; '+0 days' makes SQLite work out the day, else it lets 30 February through.
-- Quantities carry their unit in the column's name. Ids are random positive 63-bit numbers.

CREATE TABLE facts (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    name TEXT NOT NULL CHECK (length(name) <= 500),
    grower TEXT NOT NULL CHECK (length(grower) <= 500),
    root_length_mm INTEGER NOT NULL CHECK (root_length_mm BETWEEN 1 AND 1000),
    check_every_days INTEGER NOT NULL CHECK (check_every_days BETWEEN 1 AND 3650),
    first_check_after_days INTEGER NOT NULL CHECK (first_check_after_days BETWEEN 0 AND 3650),
    horizon_day INTEGER NOT NULL CHECK (horizon_day BETWEEN 1 AND 3650),
    level REAL NOT NULL CHECK (level > 0 AND level < 1),
    paper TEXT NOT NULL CHECK (paper IN ('A4', 'Letter')),
    is_invented INTEGER NOT NULL CHECK (is_invented IN (0, 1)),
    citation TEXT NOT NULL CHECK (length(citation) <= 100000)
) STRICT;

CREATE TABLE plants (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    botanical_name TEXT NOT NULL CHECK (length(botanical_name) BETWEEN 1 AND 500),
    cultivar TEXT NOT NULL CHECK (length(cultivar) <= 500),
    common_name TEXT NOT NULL CHECK (length(common_name) <= 500),
    is_protected INTEGER NOT NULL CHECK (is_protected IN (0, 1)),
    usual_rooting_days_high INTEGER CHECK (usual_rooting_days_high BETWEEN 1 AND 3650),
    note TEXT NOT NULL CHECK (length(note) <= 100000),
    is_retired INTEGER NOT NULL CHECK (is_retired IN (0, 1))
) STRICT;

CREATE TABLE stock_plants (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    plant_id INTEGER NOT NULL REFERENCES plants (id) DEFERRABLE INITIALLY DEFERRED,
    label TEXT NOT NULL CHECK (length(label) BETWEEN 1 AND 500),
    note TEXT NOT NULL CHECK (length(note) <= 100000),
    is_retired INTEGER NOT NULL CHECK (is_retired IN (0, 1))
) STRICT;
CREATE INDEX stock_plants_of_plant ON stock_plants (plant_id);

CREATE TABLE methods (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 500),
    is_retired INTEGER NOT NULL CHECK (is_retired IN (0, 1))
) STRICT;

CREATE TABLE stations (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 500),
    method_id INTEGER NOT NULL REFERENCES methods (id) DEFERRABLE INITIALLY DEFERRED,
    position_rows INTEGER NOT NULL CHECK (position_rows BETWEEN 0 AND 1000),
    position_columns INTEGER NOT NULL CHECK (position_columns BETWEEN 0 AND 1000),
    walking_order INTEGER NOT NULL CHECK (walking_order BETWEEN -1000000 AND 1000000),
    note TEXT NOT NULL CHECK (length(note) <= 100000),
    is_retired INTEGER NOT NULL CHECK (is_retired IN (0, 1))
) STRICT;

CREATE TABLE media (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 500),
    note TEXT NOT NULL CHECK (length(note) <= 100000),
    is_retired INTEGER NOT NULL CHECK (is_retired IN (0, 1))
) STRICT;

CREATE TABLE media_components (
    medium_id INTEGER NOT NULL REFERENCES media (id) DEFERRABLE INITIALLY DEFERRED,
    position INTEGER NOT NULL CHECK (position BETWEEN 0 AND 1000),
    name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 500),
    parts_by_volume REAL NOT NULL CHECK (parts_by_volume > 0 AND parts_by_volume <= 1000000),
    PRIMARY KEY (medium_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE treatments (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 500),
    carrier TEXT NOT NULL CHECK (carrier IN ('none', 'gel', 'powder', 'liquid dip')),
    dip_seconds INTEGER NOT NULL CHECK (dip_seconds BETWEEN 0 AND 1000000),
    is_wounded INTEGER NOT NULL CHECK (is_wounded IN (0, 1)),
    note TEXT NOT NULL CHECK (length(note) <= 100000),
    is_retired INTEGER NOT NULL CHECK (is_retired IN (0, 1))
) STRICT;

CREATE TABLE treatment_auxins (
    treatment_id INTEGER NOT NULL REFERENCES treatments (id) DEFERRABLE INITIALLY DEFERRED,
    position INTEGER NOT NULL CHECK (position BETWEEN 0 AND 1000),
    name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 500),
    form TEXT NOT NULL CHECK (form IN ('acid', 'salt')),
    dose_mg_per_l REAL NOT NULL CHECK (dose_mg_per_l >= 0 AND dose_mg_per_l <= 1000000),
    PRIMARY KEY (treatment_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE cutting_kinds (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 500),
    is_retired INTEGER NOT NULL CHECK (is_retired IN (0, 1))
) STRICT;

CREATE TABLE loss_causes (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    made_as INTEGER NOT NULL CHECK (made_as > 0),
    name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 500),
    entry_key TEXT CHECK (entry_key GLOB '[a-z]' AND entry_key <> 'w'),
    is_retired INTEGER NOT NULL CHECK (is_retired IN (0, 1))
) STRICT;

CREATE TABLE trials (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 500),
    horizon_day INTEGER CHECK (horizon_day BETWEEN 1 AND 3650),
    allocation_seed INTEGER CHECK (allocation_seed BETWEEN 0 AND 4294967295),
    note TEXT NOT NULL CHECK (length(note) <= 100000)
) STRICT;

CREATE TABLE sessions (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    held_on TEXT NOT NULL CHECK (held_on >= '1800-01-01' AND date(held_on, '+0 days') IS held_on),
    worker TEXT NOT NULL CHECK (length(worker) <= 500),
    note TEXT NOT NULL CHECK (length(note) <= 100000)
) STRICT;

-- A batch was stuck on its session's day, which is kept there only.
CREATE TABLE batches (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    code TEXT NOT NULL UNIQUE CHECK (length(code) BETWEEN 1 AND 40),
    session_id INTEGER NOT NULL REFERENCES sessions (id) DEFERRABLE INITIALLY DEFERRED,
    plant_id INTEGER NOT NULL REFERENCES plants (id) DEFERRABLE INITIALLY DEFERRED,
    stock_plant_id INTEGER REFERENCES stock_plants (id) DEFERRABLE INITIALLY DEFERRED,
    method_id INTEGER NOT NULL REFERENCES methods (id) DEFERRABLE INITIALLY DEFERRED,
    station_id INTEGER REFERENCES stations (id) DEFERRABLE INITIALLY DEFERRED,
    medium_id INTEGER REFERENCES media (id) DEFERRABLE INITIALLY DEFERRED,
    treatment_id INTEGER REFERENCES treatments (id) DEFERRABLE INITIALLY DEFERRED,
    cutting_kind_id INTEGER REFERENCES cutting_kinds (id) DEFERRABLE INITIALLY DEFERRED,
    stuck INTEGER NOT NULL CHECK (stuck BETWEEN 1 AND 100000),
    trial_id INTEGER REFERENCES trials (id) DEFERRABLE INITIALLY DEFERRED,
    block TEXT NOT NULL CHECK (length(block) <= 500),
    closed_on TEXT CHECK (closed_on IS NULL OR closed_on >= '1800-01-01' AND date(closed_on, '+0 days') IS closed_on),
    close_reason TEXT NOT NULL CHECK (length(close_reason) <= 100000),
    note TEXT NOT NULL CHECK (length(note) <= 100000)
) STRICT;
CREATE INDEX batches_of_session ON batches (session_id);
CREATE INDEX batches_of_plant ON batches (plant_id);
CREATE INDEX batches_of_stock_plant ON batches (stock_plant_id);
CREATE INDEX batches_of_station ON batches (station_id);
CREATE INDEX batches_of_trial ON batches (trial_id);

-- What is new since the check before; what was lost, by cause, is in check_losses.
CREATE TABLE checks (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    batch_id INTEGER NOT NULL REFERENCES batches (id) DEFERRABLE INITIALLY DEFERRED,
    checked_on TEXT NOT NULL CHECK (checked_on >= '1800-01-01' AND date(checked_on, '+0 days') IS checked_on),
    rooted INTEGER NOT NULL CHECK (rooted BETWEEN 0 AND 100000),
    withdrawn INTEGER NOT NULL CHECK (withdrawn BETWEEN 0 AND 100000),
    note TEXT NOT NULL CHECK (length(note) <= 100000),
    UNIQUE (batch_id, checked_on)
) STRICT;

-- cause_id NULL: the cause is not known.
CREATE TABLE check_losses (
    check_id INTEGER NOT NULL REFERENCES checks (id) DEFERRABLE INITIALLY DEFERRED,
    position INTEGER NOT NULL CHECK (position BETWEEN 0 AND 1000),
    cause_id INTEGER REFERENCES loss_causes (id) DEFERRABLE INITIALLY DEFERRED,
    lost INTEGER NOT NULL CHECK (lost BETWEEN 1 AND 100000),
    PRIMARY KEY (check_id, position)
) STRICT, WITHOUT ROWID;

-- Rows are only ever added. An action carries the changeset of what it did; an undo or redo names the action that it took back or put
-- back. A changeset fits only the schema that it was made under.
CREATE TABLE history (
    number INTEGER PRIMARY KEY CHECK (number > 0),
    done_at TEXT NOT NULL CHECK (strftime('%Y-%m-%dT%H:%M:%SZ', done_at, '+0 days') IS done_at),
    author TEXT NOT NULL CHECK (length(author) <= 500),
    words TEXT NOT NULL CHECK (length(words) BETWEEN 1 AND 5000),
    kind TEXT NOT NULL CHECK (kind IN ('action', 'undo', 'redo')),
    of_number INTEGER REFERENCES history (number) DEFERRABLE INITIALLY DEFERRED,
    schema_version INTEGER NOT NULL CHECK (schema_version > 0),
    changeset BLOB,
    CHECK ((kind = 'action') = (of_number IS NULL)),
    CHECK ((kind = 'action') = (changeset IS NOT NULL))
) STRICT;
