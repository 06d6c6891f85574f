// SPDX-License-Identifier: MIT
#include "app/report/check_sheet.h"

#include "app/report/pdf.h"
#include "app/report/plain_text.h"
#include "gtest/gtest.h"
#include "tests/report/golden.h"
#include "tests/report/sheet_examples.h"

namespace {

core::DueBatch dueAt(core::StationId station, const std::string& code, int rooted) {
    core::DueBatch due;
    due.line.batch = examples::batchChecked(0).batch;
    due.line.batch.code = code;
    due.line.batch.station = station;
    due.line.tally = {.stuck = 24, .rooted = rooted, .lost = 1, .withdrawn = 0, .lastCheckedOn = {}};
    due.dueOn = *core::dateFromIso("2026-04-04");
    return due;
}

core::Shelves twoStations() {
    core::Shelves shelves = examples::smallShelves();
    core::Station tub = shelves.stations.front();
    tub.id = {44};
    tub.name = "tub by the door";
    shelves.stations.push_back(tub);
    core::LossCause driedOut = shelves.lossCauses.front();
    driedOut.id = {9}, driedOut.name = "dried out", driedOut.key = 'd';
    core::LossCause retired = driedOut;
    retired.id = {10}, retired.name = "eaten", retired.key = 'e', retired.isRetired = true;
    shelves.lossCauses.push_back(driedOut);
    shelves.lossCauses.push_back(retired);
    return shelves;
}

}  // namespace

TEST(CheckSheet, GoesFromStationToStationWithBoxesForAPencil) {
    const std::vector<core::DueBatch> due{dueAt({4}, "B260001C", 9), dueAt({4}, "B260002D", 0),
                                          dueAt({44}, "B260003E", 23), dueAt({}, "B260004F", 2)};
    examples::expectGolden(report::plainText(report::checkSheet(due, *core::dateFromIso("2026-04-11"), twoStations(),
                                                                examples::printedAt())),
                           "check_sheet");
}

TEST(CheckSheet, SaysSoWhenNothingIsDue) {
    const QString text = report::plainText(
        report::checkSheet({}, *core::dateFromIso("2026-04-11"), twoStations(), examples::printedAt()));
    EXPECT_TRUE(text.contains("Nothing is due.")) << text.toStdString();
}

TEST(CheckSheet, PutsAFullRoundOnAFewPages) {
    std::vector<core::DueBatch> due;
    for (int number = 0; number < 60; ++number) due.push_back(dueAt({4}, "B26" + std::to_string(1000 + number), 3));
    const report::Sheet sheet =
        report::checkSheet(due, *core::dateFromIso("2026-04-11"), twoStations(), examples::printedAt());
    for (const report::Paper paper : {report::Paper::A4, report::Paper::Letter}) {
        EXPECT_GE(report::pageCount(sheet, paper), 2);
        EXPECT_LE(report::pageCount(sheet, paper), 3);
    }
}
