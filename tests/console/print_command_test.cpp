// SPDX-License-Identifier: MIT
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sstream>

#include "tests/console/console_runner.h"
#include "tests/db/exchange/exchange_folder.h"

namespace {

using support::run;
using testing::HasSubstr;

TEST(PrintCommand, WritesAPdfAndReplacesAnOlderOne) {
    const support::TemporaryFolder folder;
    const std::string log = folder / "demo.strikebook", pdf = folder / "batch.pdf";
    ASSERT_EQ(run({"demo", log, "--batches", "10"}).status, 0);
    ASSERT_EQ(run({"export", log, folder / "out"}).status, 0);
    const std::string batches = folder.read("out/batches.csv");
    const std::size_t start = batches.find("\r\n") + 2;
    const std::string code = batches.substr(start, batches.find(',', start) - start);
    folder.write("batch.pdf", "older");
    const support::Ran ran = run({"print", log, "--batch", code, "--to", pdf, "--paper", "Letter"});
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_TRUE(folder.read("batch.pdf").starts_with("%PDF-"));
    EXPECT_EQ(run({"print", log, "--batch", code, "--to", folder / "nowhere/batch.pdf"}).status, 1);
}

TEST(PrintCommand, SaysWhatIsWrong) {
    const support::TemporaryFolder folder;
    const std::string log = folder / "bench.strikebook", pdf = folder / "batch.pdf";
    ASSERT_EQ(run({"create", log}).status, 0);
    EXPECT_THAT(run({"print", log, "--to", pdf}).err,
                HasSubstr("Of --batch CODE, --round, --session DATE, --map WHERE, --trial NAME, --trial-map NAME, "
                          "--season YEAR (or --from DATE --until DATE) and --template one is needed"));
    EXPECT_THAT(run({"print", "--round", "--to", pdf}).err, HasSubstr("LOG is missing"));
    EXPECT_EQ(run({"print", log, "--round", "--template", "--to", pdf}).status, 2);
    EXPECT_THAT(run({"print", log, "--batch", "B1"}).err, HasSubstr("--to FILE.pdf is missing"));
    EXPECT_THAT(run({"print", log, "--batch", "B1", "--to", log}).err, HasSubstr("ends in .pdf"));
    EXPECT_THAT(run({"print", log, "--batch", "B1", "--to", pdf, "--paper", "A3"}).err, HasSubstr("A4 or Letter"));
    const support::Ran none = run({"print", log, "--batch", "B1", "--to", pdf});
    EXPECT_EQ(none.status, 1);
    EXPECT_THAT(none.err, HasSubstr("There is no batch \"B1\""));
    EXPECT_FALSE(std::filesystem::exists(pdf));
}

TEST(PrintSeason, OfAYearOrOfAnySpan) {
    const support::TemporaryFolder folder;
    const std::string log = folder / "demo.strikebook", pdf = folder / "season.pdf";
    ASSERT_EQ(run({"demo", log, "--batches", "30"}).status, 0);
    const support::Ran year = run({"print", log, "--season", "2026", "--to", pdf, "--json"});
    EXPECT_EQ(year.status, 0) << year.err;
    EXPECT_TRUE(folder.read("season.pdf").starts_with("%PDF-"));
    for (const char* key : {"\"pages\"", "\"from\": \"2026-01-01\"", "\"until\": \"2026-12-31\"", "\"stuck\"",
                            "\"how_sure\"", "\"with_spread\"", "\"try_next\""})
        EXPECT_THAT(year.out, HasSubstr(key));
    const support::Ran span = run({"print", log, "--from", "2025-01-01", "--until", "2026-12-31", "--to", pdf});
    EXPECT_EQ(span.status, 0) << span.err;
    EXPECT_THAT(span.out, HasSubstr("Printed Season review: "));
    EXPECT_THAT(span.out, HasSubstr("cuttings stuck in"));
    const support::Ran empty = run({"print", log, "--season", "1999", "--to", pdf});
    EXPECT_EQ(empty.status, 0) << empty.err;
    EXPECT_THAT(empty.out, HasSubstr("Nothing was stuck in this span"));
}

TEST(PrintSeason, SaysWhatIsWrongWithASpan) {
    const support::TemporaryFolder folder;
    const std::string log = folder / "bench.strikebook", pdf = folder / "season.pdf";
    ASSERT_EQ(run({"create", log}).status, 0);
    const auto said = [&](std::vector<std::string> span) {
        std::vector<std::string> words{"print", log, "--to", pdf};
        words.insert(words.end(), span.begin(), span.end());
        const support::Ran ran = run(words);
        EXPECT_EQ(ran.status, 2);
        return ran.err;
    };
    EXPECT_THAT(said({"--season", "last"}), HasSubstr("--season is \"last\""));
    EXPECT_THAT(said({"--season", "2026", "--from", "2026-01-01"}), HasSubstr("no more than one"));
    EXPECT_THAT(said({"--from", "2026-01-01"}), HasSubstr("needed both"));
    EXPECT_THAT(said({"--from", "2026-02-01", "--until", "2026-01-31"}), HasSubstr("--until is \"2026-01-31\""));
    EXPECT_THAT(said({"--season", "2026", "--round"}), HasSubstr("no more than one"));
    EXPECT_FALSE(std::filesystem::exists(pdf));
}

class PrintMap : public testing::Test {
  protected:
    PrintMap() {
        EXPECT_EQ(run({"demo", log_, "--batches", "20"}).status, 0);
        EXPECT_EQ(run({"export", log_, folder_ / "out"}).status, 0);
    }
    /// The first field of the table's first line whose text holds all of `needed`.
    [[nodiscard]] std::string firstOf(const std::string& table, const std::string& needed) const {
        std::istringstream lines(folder_.read("out/" + table));
        std::string line;
        while (std::getline(lines, line))
            if (line.find(needed) != std::string::npos) return line.substr(0, line.find(','));
        return {};
    }

    support::TemporaryFolder folder_;
    std::string log_ = folder_ / "demo.strikebook";
    std::string pdf_ = folder_ / "map.pdf";
};

TEST_F(PrintMap, OfAStationOrABatch) {
    const std::string code = firstOf("batches.csv", "A1-");
    ASSERT_FALSE(code.empty());
    const support::Ran batch = run({"print", log_, "--map", code, "--to", pdf_});
    EXPECT_EQ(batch.status, 0) << batch.err;
    EXPECT_THAT(batch.out, HasSubstr("Map of "));
    EXPECT_THAT(batch.out, HasSubstr("with batch " + code));
    EXPECT_TRUE(folder_.read("map.pdf").starts_with("%PDF-"));
    std::istringstream lines(folder_.read("out/stations.csv"));
    std::string line;
    std::getline(lines, line);
    std::getline(lines, line);
    const std::string station = line.substr(0, line.find(','));
    const support::Ran whole = run({"print", log_, "--map", station, "--to", pdf_, "--json"});
    ASSERT_EQ(whole.status, 0) << whole.err;
    EXPECT_EQ(whole.json()["map"], station);
}

TEST_F(PrintMap, SaysWhenThereIsNothingToMap) {
    const support::Ran none = run({"print", log_, "--map", "the moon", "--to", pdf_});
    EXPECT_EQ(none.status, 1);
    EXPECT_THAT(none.err, HasSubstr("There is no station and no batch \"the moon\""));
    EXPECT_FALSE(std::filesystem::exists(pdf_));
}

TEST(PrintTemplate, NeedsNoLogbook) {
    const support::TemporaryFolder folder;
    const std::string pdf = folder / "lid.pdf";
    const support::Ran ran = run({"print", "--template", "--lid", "600x400", "--hole", "44", "--web", "20", "--edge",
                                  "20", "--to", pdf, "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.json()["holes"], 51);
    EXPECT_EQ(ran.json()["pattern"], "staggered");
    EXPECT_EQ(ran.json()["square"], 45);
    EXPECT_EQ(ran.json()["staggered"], 51);
    EXPECT_TRUE(folder.read("lid.pdf").starts_with("%PDF-"));
    const support::Ran square = run({"print", "--template", "--lid", "600x400", "--hole", "44", "--web", "20", "--edge",
                                     "20", "--square", "--to", pdf, "--paper", "Letter"});
    ASSERT_EQ(square.status, 0) << square.err;
    EXPECT_THAT(square.out, HasSubstr("45 holes of 44 mm in square rows"));
    const support::Ran bucket = run(
        {"print", "--template", "--lid", "200", "--hole", "44", "--web", "10", "--edge", "10", "--to", pdf, "--json"});
    ASSERT_EQ(bucket.status, 0) << bucket.err;
    EXPECT_EQ(bucket.json()["holes"], 7);
    EXPECT_EQ(bucket.json()["pages"], 2);
}

TEST(PrintTemplate, TakesPaperAndUnitFromALogbook) {
    const support::TemporaryFolder folder;
    const std::string log = folder / "bench.strikebook", pdf = folder / "lid.pdf";
    ASSERT_EQ(run({"create", log}).status, 0);
    const support::Ran ran = run(
        {"print", log, "--template", "--lid", "300x200", "--hole", "44", "--web", "10", "--edge", "15", "--to", pdf});
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("15 holes of 44 mm in square rows"));
}

TEST(PrintTemplate, SaysWhatIsWrong) {
    const support::TemporaryFolder folder;
    const std::string pdf = folder / "lid.pdf";
    const auto fault = [&](const std::string& lid, const std::string& hole, std::vector<std::string> more) {
        std::vector<std::string> words{"print", "--template", "--lid", lid, "--hole", hole, "--to", pdf};
        words.insert(words.end(), more.begin(), more.end());
        const support::Ran ran = run(words);
        EXPECT_EQ(ran.status, 2);
        return ran.err;
    };
    const std::vector<std::string> rest{"--web", "6", "--edge", "20"};
    EXPECT_THAT(fault("600", "44", {"--web", "6"}), HasSubstr("--template needs --edge as well"));
    EXPECT_THAT(fault("600by400", "44", rest), HasSubstr("such as 600x400"));
    EXPECT_THAT(fault("600x", "44", rest), HasSubstr("such as 600x400"));
    EXPECT_THAT(fault("600x400", "wide", rest), HasSubstr("--hole is \"wide\""));
    EXPECT_THAT(fault("600x0", "44", rest), HasSubstr("Width is 0 mm; 20 to 3000 mm is allowed."));
    EXPECT_THAT(fault("60x60", "44", rest), HasSubstr("does not fit"));
    EXPECT_THAT(fault("600x400", "44", {"--web", "6", "--edge", "20", "--square", "--staggered"}),
                HasSubstr("Of --square and --staggered"));
    EXPECT_THAT(run({"print", "--round", "--lid", "600x400", "--to", pdf}).err, HasSubstr("belong to --template"));
    EXPECT_FALSE(std::filesystem::exists(pdf));
}

TEST(PrintCommand, PrintsATrialsReportByItsName) {
    const support::TemporaryFolder folder;
    const std::string log = folder / "demo.strikebook", pdf = folder / "trial.pdf";
    const std::string name = "Gel on germander";
    ASSERT_EQ(run({"demo", log, "--batches", "40"}).status, 0);
    const support::Ran ran = run({"print", log, "--trial", name, "--to", pdf});
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("Printed Trial: " + name));
    EXPECT_TRUE(folder.read("trial.pdf").starts_with("%PDF-"));
    EXPECT_EQ(run({"print", log, "--trial", name, "--to", pdf, "--json"}).json()["trial"], name);
    const support::Ran none = run({"print", log, "--trial", "No such trial", "--to", folder / "none.pdf"});
    EXPECT_EQ(none.status, 1);
    EXPECT_THAT(none.err, HasSubstr("There is no trial \"No such trial\""));
    EXPECT_FALSE(std::filesystem::exists(folder / "none.pdf"));
}

TEST(PrintCommand, PrintsWhichCuttingOfATrialGoesWhere) {
    const support::TemporaryFolder folder;
    const std::string log = folder / "demo.strikebook", pdf = folder / "map.pdf";
    const std::string name = "Gel on germander";
    ASSERT_EQ(run({"demo", log, "--batches", "40"}).status, 0);
    const support::Ran ran = run({"print", log, "--trial-map", name, "--to", pdf});
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_TRUE(folder.read("map.pdf").starts_with("%PDF-"));
    EXPECT_EQ(run({"print", log, "--trial-map", name, "--to", pdf, "--json"}).json()["trial_map"], name);
    const support::Ran none = run({"print", log, "--trial-map", "No such trial", "--to", folder / "none.pdf"});
    EXPECT_EQ(none.status, 1);
    EXPECT_THAT(none.err, HasSubstr("There is no trial \"No such trial\""));
    EXPECT_EQ(run({"print", log, "--trial-map", name, "--trial", name, "--to", pdf}).status, 2);
    EXPECT_FALSE(std::filesystem::exists(folder / "none.pdf"));
}

}  // namespace
