// SPDX-License-Identifier: MIT
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>
#include <random>

#include "tests/console/console_runner.h"
#include "tests/db/exchange/exchange_folder.h"
#include "tests/support/reference_cases.h"

namespace {

using support::run;
using testing::HasSubstr;

constexpr int lookEvery = 7;
constexpr int horizon = 28;

/// What one batch came to, look by look, every seven days until somebody stopped looking.
struct Watched {
    std::string code, method, station, species;
    int stuck{};
    std::vector<int> rooted, lost, withdrawn;  // new at each look
};

std::vector<Watched> watchedBatches(std::uint32_t seed) {
    std::mt19937 random(seed);
    const auto below = [&random](int count) { return static_cast<int>(random() % static_cast<std::uint32_t>(count)); };
    std::vector<Watched> batches;
    for (int i = 0; i < 16; ++i) {
        Watched batch{.code = "W" + std::to_string(i),
                      .method = i % 2 == 0 ? "media tray" : "aerated water",
                      .station = "place " + std::to_string(i % 4),
                      .species = i % 3 == 0 ? "Hebe albicans" : "Deutzia gracilis",
                      .stuck = 10 + below(30),
                      .rooted = {},
                      .lost = {},
                      .withdrawn = {}};
        int left = batch.stuck;
        const int looks = 2 + below(5);  // some were last seen on day 14, some on day 42
        for (int look = 0; look < looks; ++look)
            for (std::vector<int>* fate : {&batch.rooted, &batch.lost, &batch.withdrawn}) {
                fate->push_back(below(left / (fate == &batch.withdrawn ? 8 : 3) + 1));
                left -= fate->back();
            }
        batches.push_back(batch);
    }
    return batches;
}

/// 2026-01-05 and so many days.
std::string dayText(int days) {
    return core::isoText(core::addDays(*core::dateFromIso("2026-01-05"), days));
}

void writeTables(const support::TemporaryFolder& folder, const std::vector<Watched>& batches) {
    std::string batchRows = "batch,stuck_on,species,method,station,stuck\r\n",
                checkRows = "batch,checked_on,rooted,lost,withdrawn\r\n";
    for (const Watched& batch : batches) {
        batchRows += batch.code + "," + dayText(0) + "," + batch.species + "," + batch.method + "," + batch.station +
                     "," + std::to_string(batch.stuck) + "\r\n";
        for (std::size_t look = 0; look < batch.rooted.size(); ++look)
            checkRows += batch.code + "," + dayText(lookEvery * static_cast<int>(look + 1)) + "," +
                         std::to_string(batch.rooted[look]) + "," + std::to_string(batch.lost[look]) + "," +
                         std::to_string(batch.withdrawn[look]) + "\r\n";
    }
    folder.write("batches.csv", batchRows);
    folder.write("checks.csv", checkRows);
}

/// One arm's figures from first principles: since all looks fall on common days, the estimate is the product-limit one. At each look those
/// still watched either root, are lost or go on; who is withdrawn or not looked at again goes no further.
struct Expected {
    int stuck{}, rooted{}, lost{}, withdrawn{}, assessed{};
    std::map<int, double> rootedByDay, lostByDay;
};

Expected expectedOf(const std::vector<Watched>& batches, const std::string& method) {
    Expected arm;
    std::map<int, double> watched, rooted, lost;
    for (const Watched& batch : batches) {
        if (batch.method != method) continue;
        arm.stuck += batch.stuck;
        int left = batch.stuck;
        for (std::size_t look = 0; look < batch.rooted.size(); ++look) {
            const int day = lookEvery * static_cast<int>(look + 1);
            watched[day] += left;
            rooted[day] += batch.rooted[look];
            lost[day] += batch.lost[look];
            left -= batch.rooted[look] + batch.lost[look];
            // Seen unrooted on the very day, and withdrawn then or not: it had not rooted by then.
            if (day == horizon) arm.assessed += left;
            left -= batch.withdrawn[look];
            if (day > horizon) continue;
            arm.rooted += batch.rooted[look];
            arm.lost += batch.lost[look];
            arm.withdrawn += batch.withdrawn[look];
        }
    }
    arm.assessed += arm.rooted + arm.lost;
    double going = 1, rootedShare = 0, lostShare = 0;
    for (const auto& [day, count] : watched) {
        rootedShare += count > 0 ? going * rooted[day] / count : 0;
        lostShare += count > 0 ? going * lost[day] / count : 0;
        going *= count > 0 ? 1 - (rooted[day] + lost[day]) / count : 1;
        arm.rootedByDay[day] = rootedShare;
        arm.lostByDay[day] = lostShare;
    }
    return arm;
}

void expectShares(const nlohmann::json& got, const std::map<int, double>& wanted) {
    int compared = 0;
    for (const nlohmann::json& each : got) {
        const auto found = wanted.find(static_cast<int>(each["day"].get<double>()));
        if (found == wanted.end()) continue;
        EXPECT_NEAR(each["share"].get<double>(), found->second, 1e-6) << "day " << found->first;
        ++compared;
    }
    EXPECT_GE(compared, 4);
}

TEST(CompareCommand, AgreesWithFirstPrinciplesOnAnImportedFolder) {
    for (std::uint32_t seed = 1; seed <= 5; ++seed) {
        SCOPED_TRACE(seed);
        const support::TemporaryFolder folder;
        const std::vector<Watched> batches = watchedBatches(seed);
        writeTables(folder, batches);
        const support::TemporaryFolder place;
        const std::string log = place / "bench.strikebook";
        ASSERT_EQ(run({"import", log, folder.path()}).status, 0);
        const nlohmann::json json =
            run({"compare", log, "--by", "method", "--at-day", std::to_string(horizon), "--json"}).json();
        ASSERT_EQ(json["arms"].size(), 2U);
        for (const nlohmann::json& arm : json["arms"]) {
            const Expected expected = expectedOf(batches, arm["name"]);
            SCOPED_TRACE(arm["name"]);
            EXPECT_EQ(arm["batches"], 8);
            EXPECT_EQ(arm["stations"], 2);
            EXPECT_EQ(arm["stuck"], expected.stuck);
            EXPECT_EQ(arm["rooted"], expected.rooted);
            EXPECT_EQ(arm["lost"], expected.lost);
            EXPECT_EQ(arm["withdrawn"], expected.withdrawn);
            EXPECT_EQ(arm["undecided"], expected.stuck - expected.rooted - expected.lost - expected.withdrawn);
            EXPECT_EQ(arm["assessed"], expected.assessed);
            EXPECT_NEAR(arm["rate"].get<double>(), static_cast<double>(expected.rooted) / expected.assessed, 1e-12);
            EXPECT_TRUE(arm["with_spread"].is_object());  // eight batches an arm
            expectShares(arm["share_rooted_by_day"], expected.rootedByDay);
            expectShares(arm["share_lost_by_day"], expected.lostByDay);
        }
    }
}

class PlumExample : public testing::Test {
  protected:
    void SetUp() override {
        const support::Ran ran =
            run({"import", log, std::string(STRIKEBOOK_SOURCE_DIR) + "/resources/examples/bartlett_1935_plum"});
        ASSERT_EQ(ran.status, 0) << ran.err;
    }

    /// The pooled figures against the reference's, by its names.
    static void expectPooled(const nlohmann::json& pooled, const std::string& suffix) {
        for (const support::ReferenceCase& each :
             support::referenceCases({"mh_odds_ratio", "mh_risk_difference", "cmh_test", "breslow_day"})) {
            if (!each.id.ends_with(suffix)) continue;
            SCOPED_TRACE(each.id);
            const auto expect = [&](const char* name, const char* field) {
                each.expectNear(field, support::numberIn(pooled[name]), each.expected[field]);
            };
            if (each.method == "mh_odds_ratio") {
                expect("odds_ratio", "estimate");
                expect("odds_ratio_low", "lower");
                expect("odds_ratio_high", "upper");
            } else if (each.method == "mh_risk_difference") {
                expect("risk_difference", "estimate");
                expect("risk_difference_low", "lower");
                expect("risk_difference_high", "upper");
            } else {
                expect(each.method == "cmh_test" ? "cmh_p" : "agreement_p",
                       each.method == "cmh_test" ? "p" : "p_tarone");
            }
        }
    }

    support::TemporaryFolder folder;
    std::string log = folder / "plum.strikebook";
};

TEST_F(PlumExample, GivesThePublishedFigures) {
    const nlohmann::json json = run({"compare", log, "--by", "treatment", "--json"}).json();
    ASSERT_EQ(json["pairs"].size(), 1U);
    const nlohmann::json& pair = json["pairs"][0];
    EXPECT_EQ(pair["first"], "planted at once");
    EXPECT_EQ(pair["second"], "planted in spring");
    EXPECT_EQ(json["arms"][0]["rooted"], 156 + 107);
    EXPECT_EQ(json["arms"][1]["rooted"], 84 + 31);
    EXPECT_NEAR(pair["pooled"]["odds_ratio"].get<double>(), 4.177, 0.0005);
    EXPECT_NEAR(pair["pooled"]["agreement_p"].get<double>(), 0.1318, 0.00005);
    expectPooled(pair["pooled"], "plum-by-length");
}

TEST_F(PlumExample, TellsPeopleTheSameAndWhereItIsFrom) {
    const std::string out = run({"compare", log, "--by", "treatment"}).out;
    EXPECT_THAT(out, HasSubstr("(263 of 480)"));
    EXPECT_THAT(out, HasSubstr("4.18 (3.13 to 5.57)"));
    EXPECT_THAT(out, HasSubstr("Bartlett MS (1935)"));
}

TEST_F(PlumExample, ComparesKindsOfCuttingToo) {
    const nlohmann::json json = run({"compare", log, "--by", "cutting", "--json"}).json();
    EXPECT_EQ(json["factor"], "cutting");
    EXPECT_EQ(json["arms"][0]["rooted"].get<int>() + json["arms"][1]["rooted"].get<int>(), 378);
}

TEST(CompareCommand, KeepsItsPromiseOfNames) {
    const support::TemporaryFolder folder;
    const std::string log = folder / "demo.strikebook";
    ASSERT_EQ(run({"demo", log}).status, 0);
    const support::Ran ran = run({"compare", log, "--by", "method", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.out.find("nan"), std::string::npos);
    const nlohmann::json json = ran.json();
    const auto expectNames = [](const nlohmann::json& object, const std::vector<const char*>& names) {
        for (const char* name : names)
            EXPECT_TRUE(object.contains(name)) << name << " in " << object.dump().substr(0, 200);
    };
    expectNames(json, {"factor", "at_day", "level", "arms", "pairs", "spread", "cautions", "in_words"});
    expectNames(json["spread"], {"icc", "design_effect", "batches"});
    for (const nlohmann::json& arm : json["arms"]) {
        expectNames(arm, {"name", "batches", "stations", "stuck", "rooted", "lost", "withdrawn", "undecided",
                          "assessed", "rate", "curve_share", "as_counted", "with_spread", "share_rooted_by_day",
                          "share_lost_by_day", "days_to_root"});
        expectNames(arm["as_counted"], {"low", "high"});
        expectNames(arm["share_rooted_by_day"][0], {"day", "share"});
        expectNames(arm["days_to_root"], {"of_stuck", "of_rooted", "p50_interval"});
        for (const char* of : {"of_stuck", "of_rooted"})
            expectNames(arm["days_to_root"][of], {"p25", "p50", "p75", "p90"});
        expectNames(arm["days_to_root"]["of_rooted"]["p50"], {"after", "by"});
        EXPECT_EQ(arm["stuck"].get<int>(), arm["rooted"].get<int>() + arm["lost"].get<int>() +
                                               arm["withdrawn"].get<int>() + arm["undecided"].get<int>());
    }
    const nlohmann::json& pair = json["pairs"][0];
    expectNames(pair, {"first", "second", "difference", "risk_ratio", "odds_ratio", "p", "probability_first_better",
                       "curves_p", "by_species", "pooled"});
    expectNames(pair["difference"], {"value", "newcombe", "miettinen_nurminen"});
    expectNames(pair["risk_ratio"], {"value", "koopman"});
    expectNames(pair["odds_ratio"], {"conditional", "exact"});
    expectNames(pair["p"], {"fisher", "fisher_mid", "boschloo", "barnard"});
    expectNames(pair["by_species"][0], {"species", "first", "second", "difference", "low", "high"});
    expectNames(pair["pooled"], {"odds_ratio", "odds_ratio_low", "odds_ratio_high", "risk_difference",
                                 "risk_difference_low", "risk_difference_high", "cmh_p", "agreement_p"});
}

TEST(CompareCommand, GivesTheSameAnswerTwice) {
    const support::TemporaryFolder folder;
    const std::string log = folder / "demo.strikebook";
    ASSERT_EQ(run({"demo", log, "--batches", "20"}).status, 0);
    EXPECT_EQ(run({"compare", log, "--json"}).out, run({"compare", log, "--json"}).out);
}

TEST(CompareCommand, ChoosesAPlantByAnyOfItsNames) {
    const support::TemporaryFolder folder;
    const std::string log = folder / "demo.strikebook";
    ASSERT_EQ(run({"demo", log}).status, 0);
    const int all = run({"compare", log, "--json"}).json()["arms"][0]["stuck"];
    const nlohmann::json one = run({"compare", log, "--species", "Hebe albicans", "--json"}).json();
    EXPECT_LT(one["arms"][0]["stuck"].get<int>(), all);
    EXPECT_EQ(one["pairs"][0]["by_species"].size(), 1U);
    const support::Ran none = run({"compare", log, "--species", "Quercus robur"});
    EXPECT_EQ(none.status, 1);
    EXPECT_THAT(none.err, HasSubstr("There is no plant \"Quercus robur\""));
}

TEST(CompareCommand, AsksWhichOfSeveralCultivarsIsMeant) {
    const support::TemporaryFolder folder;
    folder.write(
        "batches.csv",
        "batch,stuck_on,species,cultivar,method,stuck\r\nA1,2026-03-02,Hebe albicans,Red Edge,media tray,24\r\n"
        "A2,2026-03-02,Hebe albicans,Sussex Carpet,media tray,24\r\n");
    folder.write("checks.csv", "batch,checked_on,rooted\r\n");
    const support::TemporaryFolder place;
    const std::string log = place / "bench.strikebook";
    ASSERT_EQ(run({"import", log, folder.path()}).status, 0);
    const support::Ran ran = run({"compare", log, "--species", "Hebe albicans"});
    EXPECT_EQ(ran.status, 1);
    EXPECT_THAT(ran.err, HasSubstr("Hebe albicans 'Red Edge', Hebe albicans 'Sussex Carpet'"));
    EXPECT_EQ(run({"compare", log, "--species", "Hebe albicans 'Red Edge'"}).status, 0);
}

TEST(CompareCommand, SaysWhatIsAllowed) {
    const support::TemporaryFolder folder;
    const std::string log = folder / "bench.strikebook";
    ASSERT_EQ(run({"create", log}).status, 0);
    EXPECT_THAT(run({"compare", log, "--by", "colour"}).err,
                HasSubstr("--by is \"colour\"; method, treatment, medium or cutting is allowed."));
    EXPECT_THAT(run({"compare", log, "--at-day", "0"}).err, HasSubstr("--at-day is \"0\""));
    EXPECT_THAT(run({"compare", log, "--level", "1.0"}).err, HasSubstr("--level is \"1.0\""));
    EXPECT_EQ(run({"compare", log, "--level", "1.0"}).status, 2);
}

}  // namespace
