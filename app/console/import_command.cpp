// SPDX-License-Identifier: MIT
#include "app/console/import_command.h"

#include "app/console/json_text.h"
#include "app/console/open_logbook.h"
#include "app/console/words.h"
#include "app/plot/number_text.h"
#include "db/actions/records_actions.h"
#include "db/exchange/import_folder.h"

namespace console {

namespace {

struct Imported {
    std::string logbook;
    bool isNew{};
    std::size_t sessions{};
    std::size_t batches{};
    std::size_t checks{};
};

std::string placeOf(const db::ImportFault& fault) {
    std::string place = fault.file;
    if (fault.row > 0) place += filled(tr(", row %1"), {std::to_string(fault.row)});
    if (!fault.column.empty()) place += filled(tr(", column %1"), {fault.column});
    return place;
}

void printFaults(const db::FolderContents& contents, bool isJson, std::ostream& out, std::ostream& err) {
    if (isJson) {
        Json json = {{"imported", false}, {"faults", Json::array()}, {"more_faults", contents.moreFaults}};
        for (const db::ImportFault& fault : contents.faults)
            json["faults"].push_back(
                {{"file", fault.file}, {"row", fault.row}, {"column", fault.column}, {"reason", fault.reason}});
        return print(json, out);
    }
    for (const db::ImportFault& fault : contents.faults) err << placeOf(fault) << ": " << fault.reason << '\n';
    if (contents.moreFaults) err << tr("And more; these are the first.") << '\n';
    err << tr("Nothing was imported.") << '\n';
}

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
        printFaults(contents, isJson_, out, err);
        return Refused;
    }
    Imported imported{.logbook = file_,
                      .isNew = !std::filesystem::exists(file_),
                      .sessions = contents.records.sessions.size(),
                      .batches = contents.records.batches.size(),
                      .checks = 0};
    for (const core::BatchRecord& record : contents.records.batches) imported.checks += record.checks.size();
    core::LogbookFacts& facts = contents.records.shelves.facts;
    const bool areInvented = facts.isInvented;
    if (facts.name.empty()) facts.name = nameFromFile(file_);
    core::Result<db::Changes> done;
    if (imported.isNew) {
        done = createAndFill(file_, facts, surroundings, [&](db::Logbook& logbook) {
            return addTo(logbook, std::move(contents.records), folder_, true);
        });
    } else {
        db::Logbook logbook = openToWrite(file_, surroundings);
        if (areInvented && !logbook.shelves().facts.isInvented) {
            err << filled(tr("The folder holds invented records and %1 does not; import them into a logbook of their "
                             "own."),
                          {file_})
                << '\n';
            return Refused;
        }
        done = addTo(logbook, std::move(contents.records), folder_, false);
    }
    if (!done) {
        err << linesOf(done.error()) << tr("Nothing was imported.") << '\n';
        return Refused;
    }
    printImported(imported, isJson_, out);
    return Done;
}

}  // namespace console
