// SPDX-License-Identifier: MIT
// Records one check after another in the logbook that it is given, with a count after potting for each, and acknowledges each of them on
// its standard output, once the verb has returned. kill_test.cpp starts it and kills it.
#include <unistd.h>

#include <iostream>

#include "db/actions/check_actions.h"
#include "db/actions/event_actions.h"

namespace {

bool acknowledge(const std::string& what) {
    const std::string acknowledged = what + '\n';
    return ::write(STDOUT_FILENO, acknowledged.data(), acknowledged.size()) >= 0;
}

}  // namespace

int main(int argc, char** argv) {
    using namespace std::chrono;
    if (argc != 2) return 2;
    try {
        auto logbook = db::Logbook::open(
            argv[1], {.clock = [] { return time_point_cast<seconds>(system_clock::now()); }, .author = "kill"});
        const core::Date today{year(2026), month(3), day(14)};
        for (const core::BatchLine& line : logbook.batchLines()) {
            core::Date day = line.tally.lastCheckedOn.value_or(line.batch.stuckOn);
            for (int looks = 0; looks < 50; ++looks) {
                day = core::addDays(day, 1);
                core::Check check;
                check.batch = line.batch.id;
                check.checkedOn = day;
                check.rooted = 1;
                check.losses.push_back({.cause = {}, .count = 1});
                if (!db::recordChecks(logbook, {{.check = check, .closesBatch = false, .closeReason = {}}}, today))
                    return 1;
                if (!acknowledge(line.batch.code + ' ' + core::isoText(day))) return 1;
                if (!db::keepPotting(logbook, {.batch = line.batch.id, .countedOn = day, .potted = 1}, today)) return 1;
                if (!acknowledge(line.batch.code + ' ' + core::isoText(day) + " potted")) return 1;
            }
        }
    } catch (const db::LogbookError& error) {
        std::cerr << error.what() << '\n';
        return 1;
    }
    return 0;
}
