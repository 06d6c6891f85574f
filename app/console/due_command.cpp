// SPDX-License-Identifier: MIT
#include "app/console/due_command.h"

#include "app/console/arguments.h"
#include "app/console/calendar_output.h"
#include "app/console/json_text.h"
#include "app/console/open_logbook.h"
#include "app/console/text_table.h"
#include "app/console/words.h"
#include "app/plot/number_text.h"
#include "core/due/due_today.h"

namespace console {

namespace {

template <class Thing, class ThingId>
std::string nameIn(const std::vector<Thing>& things, ThingId id) {
    const Thing* thing = core::find(things, id);
    return thing == nullptr || !id.isSet() ? std::string() : thing->name;
}

std::string plantIn(const core::Shelves& shelves, core::PlantId id) {
    const core::Plant* plant = core::find(shelves.plants, id);
    return plant == nullptr ? std::string() : core::fullName(*plant);
}

Json jsonOf(const core::DueBatch& due, const core::Shelves& shelves) {
    const core::Batch& batch = due.line.batch;
    const core::Tally& tally = due.line.tally;
    return {{"batch", batch.code},
            {"due_on", core::isoText(due.dueOn)},
            {"days_overdue", due.daysOverdue},
            {"plant", plantIn(shelves, batch.plant)},
            {"method", nameIn(shelves.methods, batch.method)},
            {"station", nameIn(shelves.stations, batch.station)},
            {"stuck_on", core::isoText(batch.stuckOn)},
            {"last_checked_on", tally.lastCheckedOn ? Json(core::isoText(*tally.lastCheckedOn)) : Json()},
            {"stuck", tally.stuck},
            {"rooted", tally.rooted},
            {"lost", tally.lost},
            {"withdrawn", tally.withdrawn},
            {"undecided", tally.undecided()}};
}

void printText(const std::vector<core::DueBatch>& due, const core::Shelves& shelves, core::Date on, std::ostream& out) {
    using Align = TextTable::Align;
    const std::string day = plot::dateText(on).toStdString();
    if (due.empty()) {
        out << filled(tr("Nothing is due on %1."), {day}) << '\n';
        return;
    }
    out << filled(tr("Due on %1: %2"), {day, plot::batchesText(static_cast<int>(due.size())).toStdString()}) << '\n';
    TextTable table({{tr("station"), Align::Left},
                     {tr("batch"), Align::Left},
                     {tr("plant"), Align::Left},
                     {tr("stuck"), Align::Right},
                     {tr("rooted"), Align::Right},
                     {tr("lost"), Align::Right},
                     {tr("withdrawn"), Align::Right},
                     {tr("undecided"), Align::Right},
                     {tr("due since"), Align::Left}});
    for (const core::DueBatch& each : due) {
        const core::Tally& tally = each.line.tally;
        const auto number = [](int count) { return std::to_string(count); };
        table.addRow({nameIn(shelves.stations, each.line.batch.station), each.line.batch.code,
                      plantIn(shelves, each.line.batch.plant), number(tally.stuck), number(tally.rooted),
                      number(tally.lost), number(tally.withdrawn), number(tally.undecided()),
                      each.daysOverdue == 0 ? tr("today") : plot::daysText(each.daysOverdue).toStdString()});
    }
    table.printTo(out);
}

}  // namespace

std::string DueCommand::name() const {
    return "due";
}

std::string DueCommand::summary() const {
    return tr("which batches want a look");
}

void DueCommand::declare(Options& options) {
    options.argument("LOG", tr("the logbook"), file_);
    options.option("--on", "DATE", tr("the day, such as 2026-03-14 (today)"), on_);
    options.option("--ics", "FILE.ics",
                   tr("write the next look at every open batch for calendars; an older file is replaced"), ics_);
    options.flag("--json", tr("for machines"), isJson_);
}

int DueCommand::run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) {
    if (ics_) requireCalendarName(*ics_);
    const core::Date on = on_ ? dateFrom("--on", *on_) : surroundings.today;
    const db::Logbook logbook = openToRead(file_, surroundings);
    const core::Shelves shelves = logbook.shelves();
    const std::vector<core::BatchLine> lines = logbook.batchLines();
    const std::vector<core::DueBatch> due = core::dueOn(on, lines, shelves);
    if (ics_) {
        const std::vector<report::CalendarDay> days = report::calendarOf(lines, shelves, on);
        if (days.empty()) {
            err << filled(tr("No batch in %1 is open, so there is no day to write to %2."), {file_, *ics_}) << '\n';
            return Refused;
        }
        writeCalendar(*ics_, shelves.facts.name, days, surroundings);
    }
    if (!isJson_) {
        printText(due, shelves, on, out);
        if (ics_) out << filled(tr("Wrote the next look at every open batch to %1."), {*ics_}) << '\n';
        return Done;
    }
    Json json = {{"on", core::isoText(on)}, {"due", Json::array()}};
    for (const core::DueBatch& each : due) json["due"].push_back(jsonOf(each, shelves));
    print(json, out);
    return Done;
}

}  // namespace console
