// SPDX-License-Identifier: MIT
#include "app/console/import_command.h"

#include "app/console/fault_output.h"
#include "app/console/json_text.h"
#include "app/console/open_logbook.h"
#include "app/console/words.h"
#include "app/plot/number_text.h"
#include "db/actions/records_actions.h"
#include "db/exchange/import_folder.h"

namespace console {

namespace {

void printImported(const Imported& imported, bool isJson, std::ostream& out) {
    if (isJson)
        return print({{"imported", true},
                      {"logbook", imported.logbook},
                      {"is_new", imported.isNew},
                      {"sessions", imported.sessions},
                      {"batches", imported.batches},
                      {"checks", imported.checks}},
                     out);
    if (imported.isNew) out << filled(tr("Made the logbook %1."), {imported.logbook}) << '\n';
    out << filled(tr("Imported %1 with %2."), {plot::batchesText(static_cast<int>(imported.batches)).toStdString(),
                                               plot::checksText(static_cast<int>(imported.checks)).toStdString()})
        << '\n';
}

/// Codes that the logbook has already, as faults of the rows that bring them.
void findTakenCodes(const db::Logbook& logbook, db::FolderContents& contents) {
    constexpr std::size_t mostFaults = 100;
    for (std::size_t i = 0; i < contents.records.batches.size(); ++i) {
        const std::string& code = contents.records.batches[i].batch.code;
        if (!logbook.batchWithCode(code).isSet()) continue;
        contents.moreFaults = contents.faults.size() == mostFaults;
        if (contents.moreFaults) return;
        contents.faults.push_back(
            {.file = "batches.csv",
             .row = contents.batchRows[i],
             .column = "batch",
             .reason = filled(tr("The batch %1 is in the logbook already; a code that no batch has is allowed."),
                              {shown(code)})});
    }
}

Imported importedFrom(const db::FolderContents& contents, const std::string& file) {
    std::error_code ignored;  // where it can't be told whether there is a file, making one says why
    Imported imported{.logbook = file,
                      .isNew = !std::filesystem::exists(file, ignored),
                      .sessions = contents.records.sessions.size(),
                      .batches = contents.records.batches.size(),
                      .checks = 0};
    for (const core::BatchRecord& record : contents.records.batches) imported.checks += record.checks.size();
    return imported;
}

core::Result<db::Changes> addTo(db::Logbook& logbook, core::Records records, const std::string& folder,
                                bool withFacts) {
    std::string from = std::filesystem::path(folder).lexically_normal().filename().string();
    if (from.empty()) from = std::filesystem::path(folder).parent_path().filename().string();
    return db::addRecords(logbook, std::move(records), "import of " + shown(from), withFacts);
}

}  // namespace

std::string ImportCommand::name() const {
    return "import";
}

std::string ImportCommand::summary() const {
    return tr("take in the plain tables of a folder, all or nothing");
}

void ImportCommand::declare(Options& options) {
    options.argument("LOG", tr("the logbook to add to; made when there is none of this name"), file_);
    options.argument("FOLDER", tr("with batches.csv and checks.csv"), folder_);
    options.flag("--json", tr("for machines"), isJson_);
}

int ImportCommand::run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) {
    db::FolderContents contents = db::readFolder(folder_, surroundings.today);
    if (!contents.faults.empty()) {
        printFaults(contents.faults, contents.moreFaults ? -1 : 0, isJson_, out, err);
        return Refused;
    }
    const Imported imported = importedFrom(contents, file_);
    return imported.isNew ? importIntoNew(imported, contents, surroundings, out, err)
                          : importIntoOld(imported, contents, surroundings, out, err);
}

int ImportCommand::importIntoNew(const Imported& imported, db::FolderContents& contents,
                                 const Surroundings& surroundings, std::ostream& out, std::ostream& err) {
    core::LogbookFacts facts = contents.records.shelves.facts;
    if (facts.name.empty()) facts.name = nameFromFile(file_);
    const auto fill = [&](db::Logbook& logbook) {
        return addTo(logbook, std::move(contents.records), folder_, contents.hasFacts);
    };
    return answer(createAndFill(file_, facts, surroundings, fill), imported, out, err);
}

int ImportCommand::importIntoOld(const Imported& imported, db::FolderContents& contents,
                                 const Surroundings& surroundings, std::ostream& out, std::ostream& err) {
    db::Logbook logbook = openToWrite(file_, surroundings);
    if (contents.records.shelves.facts.isInvented && !logbook.shelves().facts.isInvented) {
        err << filled(tr("The folder holds invented records and %1 does not; import them into a logbook of their own."),
                      {file_})
            << '\n';
        return Refused;
    }
    findTakenCodes(logbook, contents);
    if (!contents.faults.empty()) {
        printFaults(contents.faults, contents.moreFaults ? -1 : 0, isJson_, out, err);
        return Refused;
    }
    return answer(addTo(logbook, std::move(contents.records), folder_, false), imported, out, err);
}

int ImportCommand::answer(const core::Result<db::Changes>& done, const Imported& imported, std::ostream& out,
                          std::ostream& err) const {
    if (!done) {
        err << linesOf(done.error()) << tr("Nothing was imported.") << '\n';
        return Refused;
    }
    printImported(imported, isJson_, out);
    return Done;
}

}  // namespace console
