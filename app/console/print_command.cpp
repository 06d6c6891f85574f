// SPDX-License-Identifier: MIT
#include "app/console/print_command.h"

#include "app/console/arguments.h"
#include "app/console/json_text.h"
#include "app/console/open_logbook.h"
#include "app/console/painting_application.h"
#include "app/console/stuck_on_day.h"
#include "app/console/words.h"
#include "app/report/batch_summary_sheet.h"
#include "app/report/check_sheet.h"
#include "app/report/pdf.h"
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
    return tr("a batch's summary, the check sheet of a round, or the sheet of a session, as PDF");
}

void PrintCommand::declare(Options& options) {
    options.argument("LOG", tr("the logbook"), file_);
    options.option("--batch", "CODE", tr("which batch"), code_);
    options.flag("--round", tr("what is due today, with boxes for a pencil"), isRound_);
    options.option("--session", "DATE", tr("what was stuck on that day"), session_);
    options.neededOption("--to", "FILE.pdf", tr("the file to write; an older one is replaced"), to_);
    options.option("--paper", "A4|Letter", tr("(as the logbook says)"), paper_);
    options.flag("--json", tr("for machines"), isJson_);
}

int PrintCommand::run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) {
    if ((code_ ? 1 : 0) + (session_ ? 1 : 0) + (isRound_ ? 1 : 0) != 1)
        throw WrongArgument(tr("Of --batch CODE, --round and --session DATE one is needed, and no more than one."));
    requirePdfName(*to_);
    if (paper_ && *paper_ != "A4" && *paper_ != "Letter")
        throw WrongArgument(filled(tr("--paper is %1; A4 or Letter is allowed."), {shown(*paper_)}));
    const std::optional<core::Date> day =
        session_ ? std::optional(dateFrom("--session", *session_)) : std::optional<core::Date>();
    const db::Logbook logbook = openToRead(file_, surroundings);
    const PaintingApplication application;
    const std::optional<report::Sheet> sheet = code_ ? batchSheet(logbook, surroundings, err)
                                               : day ? sessionSheet(logbook, *day, surroundings, err)
                                                     : roundSheet(logbook, surroundings);
    if (!sheet) return Refused;
    const std::string usual = logbook.shelves().facts.paper;
    report::writePdf(*sheet, QString::fromStdString(*to_),
                     report::paperFrom(QString::fromStdString(paper_.value_or(usual))));
    say(*sheet, out);
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
    if (isRound_) json["round"] = true;
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
    return report::batchSummarySheet(*record, sessionOf(logbook, record->batch), summary, shelves,
                                     momentFrom(surroundings.clock),
                                     report::batchEventsOf(logbook, *record, shelves, surroundings.today));
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
                                momentFrom(surroundings.clock));
}

}  // namespace console
