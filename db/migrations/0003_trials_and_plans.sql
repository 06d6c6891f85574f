-- SPDX-License-Identifier: MIT
-- Schema 3: trials with their question, arms, what chance dealt and what was changed after the first check; and plans. Released: never
-- edited again, the next change is a file 0004_....sql.
--
-- What 0001 says of actions, triggers, dates and ids holds here too. What hangs on a trial is told apart by its number within the trial.

ALTER TABLE trials ADD COLUMN question TEXT NOT NULL DEFAULT '' CHECK (length(question) <= 100000);
-- NULL: a trial that is only named.
ALTER TABLE trials ADD COLUMN factor TEXT CHECK (factor IN ('method', 'treatment', 'medium', 'cutting'));
ALTER TABLE trials ADD COLUMN blocked_by TEXT NOT NULL DEFAULT 'nothing'
    CHECK (blocked_by IN ('nothing', 'plant', 'stock plant', 'session', 'station side'));
ALTER TABLE trials ADD COLUMN measure TEXT NOT NULL DEFAULT 'more rooted' CHECK (measure IN ('more rooted', 'as good as'));
-- A difference in share rooted.
ALTER TABLE trials ADD COLUMN margin REAL CHECK (margin > 0 AND margin < 1);
ALTER TABLE trials ADD COLUMN per_arm INTEGER CHECK (per_arm BETWEEN 1 AND 100000);
ALTER TABLE trials ADD COLUMN is_blinded INTEGER NOT NULL DEFAULT 0 CHECK (is_blinded IN (0, 1));
ALTER TABLE trials ADD COLUMN is_crossed_over INTEGER NOT NULL DEFAULT 0 CHECK (is_crossed_over IN (0, 1));
ALTER TABLE trials ADD COLUMN set_on TEXT
    CHECK (set_on IS NULL OR set_on >= '1800-01-01' AND date(set_on, '+0 days') IS set_on);

-- One id each: of the trial's factor.
CREATE TABLE trial_arms (
    trial_id INTEGER NOT NULL REFERENCES trials (id) DEFERRABLE INITIALLY DEFERRED,
    position INTEGER NOT NULL CHECK (position BETWEEN 0 AND 1000),
    method_id INTEGER REFERENCES methods (id) DEFERRABLE INITIALLY DEFERRED,
    treatment_id INTEGER REFERENCES treatments (id) DEFERRABLE INITIALLY DEFERRED,
    medium_id INTEGER REFERENCES media (id) DEFERRABLE INITIALLY DEFERRED,
    cutting_kind_id INTEGER REFERENCES cutting_kinds (id) DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (trial_id, position),
    CHECK ((method_id IS NOT NULL) + (treatment_id IS NOT NULL) + (medium_id IS NOT NULL) + (cutting_kind_id IS NOT NULL) = 1)
) STRICT, WITHOUT ROWID;

-- What chance dealt: one batch to be stuck each; batch_id once it is.
CREATE TABLE trial_batches (
    trial_id INTEGER NOT NULL REFERENCES trials (id) DEFERRABLE INITIALLY DEFERRED,
    number INTEGER NOT NULL CHECK (number BETWEEN 1 AND 1000000),
    session_number INTEGER NOT NULL CHECK (session_number BETWEEN 1 AND 1000),
    station_id INTEGER NOT NULL REFERENCES stations (id) DEFERRABLE INITIALLY DEFERRED,
    block TEXT NOT NULL CHECK (length(block) <= 500),
    plant_id INTEGER REFERENCES plants (id) DEFERRABLE INITIALLY DEFERRED,
    stock_plant_id INTEGER REFERENCES stock_plants (id) DEFERRABLE INITIALLY DEFERRED,
    arm INTEGER NOT NULL CHECK (arm BETWEEN 0 AND 1000),
    stuck INTEGER NOT NULL CHECK (stuck BETWEEN 1 AND 100000),
    positions TEXT NOT NULL CHECK (length(positions) <= 100000),
    batch_id INTEGER REFERENCES batches (id) DEFERRABLE INITIALLY DEFERRED,
    PRIMARY KEY (trial_id, number)
) STRICT, WITHOUT ROWID;
CREATE INDEX trial_batches_of_batch ON trial_batches (batch_id);

-- How a trial is judged, changed after the first check of one of its batches.
CREATE TABLE trial_changes (
    trial_id INTEGER NOT NULL REFERENCES trials (id) DEFERRABLE INITIALLY DEFERRED,
    position INTEGER NOT NULL CHECK (position BETWEEN 0 AND 100000),
    changed_on TEXT NOT NULL CHECK (changed_on >= '1800-01-01' AND date(changed_on, '+0 days') IS changed_on),
    what TEXT NOT NULL CHECK (length(what) BETWEEN 1 AND 500),
    was TEXT NOT NULL CHECK (length(was) <= 100000),
    became TEXT NOT NULL CHECK (length(became) <= 100000),
    reason TEXT NOT NULL CHECK (length(reason) BETWEEN 1 AND 100000),
    PRIMARY KEY (trial_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE plans (
    id INTEGER PRIMARY KEY CHECK (id > 0),
    plant_id INTEGER NOT NULL REFERENCES plants (id) DEFERRABLE INITIALLY DEFERRED,
    method_id INTEGER REFERENCES methods (id) DEFERRABLE INITIALLY DEFERRED,
    wanted INTEGER NOT NULL CHECK (wanted BETWEEN 1 AND 100000),
    assurance REAL NOT NULL CHECK (assurance > 0 AND assurance < 1),
    need_by TEXT CHECK (need_by IS NULL OR need_by >= '1800-01-01' AND date(need_by, '+0 days') IS need_by),
    potted_live_percent REAL NOT NULL CHECK (potted_live_percent > 0 AND potted_live_percent <= 100),
    hardening_days INTEGER NOT NULL CHECK (hardening_days BETWEEN 0 AND 3650),
    potting_days INTEGER NOT NULL CHECK (potting_days BETWEEN 0 AND 3650),
    note TEXT NOT NULL CHECK (length(note) <= 100000)
) STRICT;
CREATE INDEX plans_of_plant ON plans (plant_id);
