// SPDX-License-Identifier: MIT
// The part of Writer that has to do with conditions, mixes and plans.
#include "db/tables/care_table.h"
#include "db/tables/logger_day_table.h"
#include "db/tables/logger_format_table.h"
#include "db/tables/mix_table.h"
#include "db/tables/own_band_table.h"
#include "db/tables/plan_table.h"
#include "db/tables/reading_table.h"
#include "db/writer_rows.h"

namespace db {

core::ReadingId Writer::add(core::Reading reading) {
    return addThing(*inside_.connection, reading);
}

core::CareId Writer::add(core::Care care) {
    return addThing(*inside_.connection, care);
}

core::PlanId Writer::add(core::Plan plan) {
    return addThing(*inside_.connection, plan);
}

core::KeptMixId Writer::add(core::KeptMix mix) {
    return addThing(*inside_.connection, mix);
}

core::OwnBandId Writer::add(core::OwnBand band) {
    return addThing(*inside_.connection, band);
}

core::LoggerFormatId Writer::add(core::LoggerFormat format) {
    return addThing(*inside_.connection, format);
}

void Writer::put(const core::LoggerDay& day) {
    putRow(*inside_.connection, day);
}

void Writer::change(const core::Reading& reading) {
    requireFound(updateRow(*inside_.connection, reading));
}

void Writer::change(const core::Care& care) {
    requireFound(updateRow(*inside_.connection, care));
}

void Writer::change(const core::Plan& plan) {
    requireFound(updateRow(*inside_.connection, plan));
}

void Writer::change(const core::KeptMix& mix) {
    requireFound(updateRow(*inside_.connection, mix));
}

void Writer::change(const core::OwnBand& band) {
    requireFound(updateRow(*inside_.connection, band));
}

void Writer::change(const core::LoggerFormat& format) {
    requireFound(updateRow(*inside_.connection, format));
}

void Writer::remove(core::ReadingId id) {
    requireFound(deleteRow(*inside_.connection, id));
}

void Writer::remove(core::CareId id) {
    deleteMixesOf(*inside_.connection, id);
    requireFound(deleteRow(*inside_.connection, id));
}

void Writer::remove(core::PlanId id) {
    requireFound(deleteRow(*inside_.connection, id));
}

void Writer::remove(core::KeptMixId id) {
    requireFound(deleteRow(*inside_.connection, id));
}

void Writer::remove(core::OwnBandId id) {
    requireFound(deleteRow(*inside_.connection, id));
}

void Writer::remove(core::LoggerFormatId id) {
    requireFound(deleteRow(*inside_.connection, id));
}

void Writer::remove(core::StationId station, core::Quantity quantity, core::Date day) {
    requireFound(deleteLoggerDay(*inside_.connection, station, quantity, day));
}

}  // namespace db
