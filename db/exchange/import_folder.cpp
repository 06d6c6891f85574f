// SPDX-License-Identifier: MIT
#include "db/exchange/import_folder.h"

#include <algorithm>

#include "core/units/entered_text.h"
#include "db/exchange/data_package.h"
#include "db/exchange/exchange_tables.h"
#include "db/exchange/folder_batches.h"
#include "db/exchange/folder_conditions.h"
#include "db/exchange/folder_events.h"
#include "db/exchange/folder_money.h"
#include "db/exchange/folder_shelves.h"
#include "db/exchange/folder_trials.h"

namespace db {

namespace {

bool isOurTable(const std::filesystem::path& file) {
    return std::ranges::any_of(exchangeTables(), [&](const ExchangeTable& table) { return file.stem() == table.name; });
}

/// A table whose name we don't know is most likely one of ours with a letter wrong; to pass over it would lose what is in it.
void findStrangeTables(const std::filesystem::path& folder, FaultList& faults) {
    std::error_code unreadable;
    std::vector<std::string> strange;
    for (const auto& entry : std::filesystem::directory_iterator(folder, unreadable))
        if (entry.path().extension() == ".csv" && !isOurTable(entry.path()))
            strange.push_back(entry.path().filename().string());
    if (unreadable)
        faults.add({.file = core::isValidUtf8(folder.string()) ? folder.string() : "the folder",
                    .row = 0,
                    .column = {},
                    .reason = "This is no folder that can be read; name one that has batches.csv and checks.csv."});
    std::ranges::sort(strange);
    for (const std::string& name : strange)
        faults.add({.file = core::isValidUtf8(name) ? name : core::quotable(name),
                    .row = 0,
                    .column = {},
                    .reason = "No table of this name is known here; rename it, or take it out of the folder."});
}

std::vector<ImportFault> inOrder(std::vector<ImportFault> faults) {
    const auto place = [](const ImportFault& fault) {
        const auto tables = exchangeTables();
        const auto isIts = [&](const ExchangeTable& table) { return fault.file == std::string(table.name) + ".csv"; };
        return std::pair(std::ranges::find_if(tables, isIts) - tables.begin(), fault.row);
    };
    std::ranges::stable_sort(faults, {}, place);
    return faults;
}

}  // namespace

FolderContents readFolder(const std::filesystem::path& folder, core::Date today, std::stop_token stop) {
    FaultList faults;
    findStrangeTables(folder, faults);
    FolderContents contents;
    if (std::error_code ignored; std::filesystem::is_directory(folder, ignored)) {
        const DataPackage package = readDataPackage(folder / "datapackage.json");
        if (package.fault) faults.add({.file = "datapackage.json", .row = 0, .column = {}, .reason = *package.fault});
        FolderShelves shelves;
        FolderBatches batches;
        contents.hasFacts = readShelves(folder, shelves, faults, stop);
        if (!contents.hasFacts) {
            shelves.shelves.facts.name = package.title;
            shelves.shelves.facts.citation = package.citation;
        }
        readSessions(folder, batches, today, faults, stop);
        readBatches(folder, shelves, batches, today, faults, stop);
        readChecks(folder, shelves, batches, today, faults, stop);
        readFindings(folder, shelves, batches, faults, stop);
        readTrialParts(folder, shelves, batches, faults, stop);
        readPlans(folder, shelves, faults, stop);
        if (faults.isEmpty()) judgePositions(shelves, batches, faults);
        readEvents(folder, shelves, batches, today, contents.records, faults, stop);
        readMoney(folder, shelves, batches, today, contents.records, faults, stop);
        readConditions(folder, shelves, batches, today, contents.records, faults, stop);
        contents.batchRows = std::move(batches.rows);
        contents.records.shelves = std::move(shelves.shelves);
        contents.records.sessions = std::move(batches.sessions);
        contents.records.batches = std::move(batches.batches);
    }
    contents.faults = inOrder(faults.faults());
    contents.moreFaults = faults.isOver();
    return contents;
}

}  // namespace db
