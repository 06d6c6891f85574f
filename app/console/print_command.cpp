// SPDX-License-Identifier: MIT
#include "app/console/print_command.h"

#include <algorithm>

#include "app/console/arguments.h"
#include "app/console/json_text.h"
#include "app/console/open_logbook.h"
#include "app/console/painting_application.h"
#include "app/console/stuck_on_day.h"
#include "app/console/trial_sheet.h"
#include "app/console/words.h"
#include "app/report/batch_summary_sheet.h"
#include "app/report/check_sheet.h"
#include "app/report/logbook_costs.h"
#include "app/report/map_sheet.h"
#include "app/report/pdf.h"
#include "app/report/season_review_sheet.h"
#include "app/report/session_sheet.h"
#include "app/report/sheet.h"
#include "core/comparison/batch_summary.h"
#include "core/due/due_today.h"

namespace console {

namespace {

core::Session sessionOf(const db::Logbook& logbook, const core::Batch& batch) {
    const std::vector<core::Session> sessions = logbook.sessions();
    const core::Session* session = core::find(sessions, batch.session);
    return session == nullptr ? core::Session{.id = {}, .date = batch.stuckOn, .worker = {}, .note = {}} : *session;
}

}  // namespace

std::string PrintCommand::name() const {
    return "print";
}

std::string PrintCommand::summary() const {
    return tr(
        "a batch's summary, a check sheet, a session sheet, a map of positions, a trial's report or its "
        "map, a season's review, or a lid to drill, as PDF");
}

void PrintCommand::declare(Options& options) {
    options.optionalArgument("LOG", tr("the logbook"), file_);
    options.option("--batch", "CODE", tr("which batch"), code_);
    options.flag("--round", tr("what is due today, with boxes for a pencil"), isRound_);
    options.option("--session", "DATE", tr("what was stuck on that day"), session_);
    options.option("--map", "WHERE", tr("what stands at each position: a station's name or a batch's code"), map_);
    options.option("--trial", "NAME", tr("how a trial was planned, how far it is, what came of it"), trial_);
    options.option("--trial-map", "NAME", tr("which cutting of a trial goes where, for the bench"), trialMap_);
    seasonOptions_.declare(options);
    drilling_.declare(options);
    options.neededOption("--to", "FILE.pdf", tr("the file to write; an older one is replaced"), to_);
    options.option("--paper", "A4|Letter", tr("(as the logbook says)"), paper_);
    options.flag("--json", tr("for machines"), isJson_);
}

int PrintCommand::run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) {
    requireOneThing();
    requirePdfName(*to_);
    if (paper_ && *paper_ != "A4" && *paper_ != "Letter")
        throw WrongArgument(filled(tr("--paper is %1; A4 or Letter is allowed."), {shown(*paper_)}));
    const std::optional<core::ReviewQuestion> season = seasonOptions_.read();
    const std::optional<core::Date> day =
        session_ ? std::optional(dateFrom("--session", *session_)) : std::optional<core::Date>();
    if (std::optional<report::DrillingTemplate> drilling = drilling_.read())
        return printTemplate(std::move(*drilling), surroundings, out);
    if (file_.empty()) throw WrongArgument(tr("LOG is missing."));
    const db::Logbook logbook = openToRead(file_, surroundings);
    const PaintingApplication application;
    if (season) return printSeason(*season, logbook, surroundings, out);
    const std::optional<report::Sheet> sheet = code_    ? batchSheet(logbook, surroundings, err)
                                               : day    ? sessionSheet(logbook, *day, surroundings, err)
                                               : map_   ? mapSheet(logbook, surroundings, err)
                                               : trial_ ? trialSheet(*trial_, logbook, file_, surroundings, err)
                                               : trialMap_
                                                   ? trialMapSheet(*trialMap_, logbook, file_, surroundings, err)
                                                   : roundSheet(logbook, surroundings);
    if (!sheet) return Refused;
    const std::string usual = logbook.shelves().facts.paper;
    report::writePdf(*sheet, QString::fromStdString(*to_),
                     report::paperFrom(QString::fromStdString(paper_.value_or(usual))));
    say(*sheet, out);
    return Done;
}

void PrintCommand::requireOneThing() const {
    const int things = (code_ ? 1 : 0) + (session_ ? 1 : 0) + (isRound_ ? 1 : 0) + (map_ ? 1 : 0) + (trial_ ? 1 : 0) +
                       (trialMap_ ? 1 : 0) + (seasonOptions_.isWanted() ? 1 : 0) + (drilling_.isWanted() ? 1 : 0);
    if (things != 1)
        throw WrongArgument(
            tr("Of --batch CODE, --round, --session DATE, --map WHERE, --trial NAME, --trial-map NAME, --season YEAR "
               "(or --from DATE --until DATE) and --template one is needed, and no more than one."));
}

int PrintCommand::printTemplate(report::DrillingTemplate drilling, const Surroundings& surroundings,
                                std::ostream& out) const {
    std::string paper = paper_.value_or("A4");
    if (!file_.empty()) {
        const core::LogbookFacts facts = openToRead(file_, surroundings).shelves().facts;
        drilling.unit = facts.units.length;
        if (!paper_) paper = facts.paper;
    }
    drilling.printedAt = momentFrom(surroundings.clock);
    const PaintingApplication application;
    const report::Paper sheets = report::paperFrom(QString::fromStdString(paper));
    report::writePdf(drilling, QString::fromStdString(*to_), sheets);
    const std::size_t pages = report::tilesOf(drilling.layout, sheets).tiles.size();
    const core::LidLayout& layout = drilling.layout;
    if (isJson_)
        print({{"file", *to_},
               {"holes", layout.count()},
               {"pattern", layout.pattern == core::RowPattern::Square ? "square" : "staggered"},
               {"rows", layout.rows},
               {"columns", layout.columns},
               {"turned", layout.isTurned},
               {"square", core::layoutOf(drilling.lid, core::RowPattern::Square).count()},
               {"staggered", core::layoutOf(drilling.lid, core::RowPattern::Staggered).count()},
               {"pages", pages}},
              out);
    else
        out << filled(
                   tr("Printed the drilling template to %1: %2, pages: %3. Print them at 100 %."),
                   {*to_, report::holesText(drilling.lid, layout, drilling.unit).toStdString(), std::to_string(pages)})
            << '\n';
    return Done;
}

int PrintCommand::printSeason(const core::ReviewQuestion& season, const db::Logbook& logbook,
                              const Surroundings& surroundings, std::ostream& out) const {
    const core::SeasonReview review = seasonReviewOf(season, logbook, surroundings);
    const core::Shelves shelves = logbook.shelves();
    const report::Sheet sheet = report::seasonReviewSheet(review, shelves, momentFrom(surroundings.clock));
    const report::Paper paper = report::paperFrom(QString::fromStdString(paper_.value_or(shelves.facts.paper)));
    report::writePdf(sheet, QString::fromStdString(*to_), paper);
    if (!isJson_) {
        out << filled(tr("Printed %1 to %2."), {sheet.title.toStdString(), *to_}) << '\n' << review.inWords << '\n';
        return Done;
    }
    Json json = {{"file", *to_}, {"pages", report::pageCount(sheet, paper)}};
    json["review"] = jsonOf(review);
    print(json, out);
    return Done;
}

void PrintCommand::say(const report::Sheet& sheet, std::ostream& out) const {
    if (!isJson_) {
        out << filled(tr("Printed %1 to %2."), {code_.value_or(sheet.title.toStdString()), *to_}) << '\n';
        return;
    }
    Json json = {{"file", *to_}};
    if (code_) json["batch"] = *code_;
    if (session_) json["session"] = *session_;
    if (trial_) json["trial"] = *trial_;
    if (trialMap_) json["trial_map"] = *trialMap_;
    if (isRound_) json["round"] = true;
    if (map_) json["map"] = *map_;
    print(json, out);
}

std::optional<report::Sheet> PrintCommand::batchSheet(const db::Logbook& logbook, const Surroundings& surroundings,
                                                      std::ostream& err) const {
    const std::optional<core::BatchRecord> record = logbook.batch(logbook.batchWithCode(*code_));
    if (!record) {
        err << filled(tr("There is no batch %1 in %2."), {shown(*code_), file_}) << '\n';
        return {};
    }
    const core::Shelves shelves = logbook.shelves();
    const std::vector<core::BatchRecord> all = logbook.batchRecords(record->batch.plant);
    const core::BatchSummary summary = core::summaryOf(*record, shelves, all, surroundings.today);
    report::BatchEvents events =
        report::batchEventsOf(logbook, *record, shelves, surroundings.today, surroundings.clock());
    events.cost = report::wholeCostOf(report::costsOfLogbook(logbook, logbook.batchRecords(), surroundings.today),
                                      record->batch.id);
    return report::batchSummarySheet(*record, sessionOf(logbook, record->batch), summary, shelves,
                                     momentFrom(surroundings.clock), events);
}

std::optional<report::Sheet> PrintCommand::mapSheet(const db::Logbook& logbook, const Surroundings& surroundings,
                                                    std::ostream& err) const {
    const core::Shelves shelves = logbook.shelves();
    const std::optional<core::BatchRecord> focus = logbook.batch(logbook.batchWithCode(*map_));
    const auto named = std::ranges::find(shelves.stations, *map_, &core::Station::name);
    const core::Station* station = focus ? core::find(shelves.stations, focus->batch.station)
                                   : named == shelves.stations.end() ? nullptr
                                                                     : &*named;
    if (station == nullptr && !focus) {
        err << filled(tr("There is no station and no batch %1 in %2."), {shown(*map_), file_}) << '\n';
        return {};
    }
    if (station == nullptr || !station->hasLayout() || (focus && core::positionStates(*focus).empty())) {
        err << filled(tr("%1 has no positions in %2, so there is nothing to map."), {shown(*map_), file_}) << '\n';
        return {};
    }
    std::vector<core::BatchRecord> records;
    for (const core::BatchLine& line : logbook.batchLines()) {
        const bool isOpenHere = line.batch.station == station->id && !core::isClosed(line.batch, line.tally);
        if (!isOpenHere && !(focus && line.batch.id == focus->batch.id)) continue;
        if (auto record = logbook.batch(line.batch.id)) records.push_back(std::move(*record));
    }
    return report::mapSheet(*station, records, focus ? focus->batch.id : core::BatchId(), shelves,
                            momentFrom(surroundings.clock));
}

std::optional<report::Sheet> PrintCommand::roundSheet(const db::Logbook& logbook,
                                                      const Surroundings& surroundings) const {
    const core::Shelves shelves = logbook.shelves();
    const std::vector<core::BatchLine> lines = logbook.batchLines();
    return report::checkSheet(core::dueOn(surroundings.today, lines, shelves), surroundings.today, shelves,
                              momentFrom(surroundings.clock));
}

std::optional<report::Sheet> PrintCommand::sessionSheet(const db::Logbook& logbook, core::Date day,
                                                        const Surroundings& surroundings, std::ostream& err) const {
    const std::vector<core::Batch> batches = batchesStuckOn(day, logbook);
    if (batches.empty()) {
        err << nothingStuckText(day, file_) << '\n';
        return {};
    }
    return report::sessionSheet(sessionOf(logbook, batches.front()), batches, logbook.shelves(),
                                momentFrom(surroundings.clock), logbook.mixes(batches.front().session));
}

}  // namespace console
