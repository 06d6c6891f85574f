// SPDX-License-Identifier: MIT
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

#include "tests/console/console_runner.h"
#include "tests/support/reference_cases.h"

namespace {

using support::run;
using testing::HasSubstr;

std::string armText(int rooted, int stuck) {
    return std::to_string(rooted) + "/" + std::to_string(stuck);
}

std::vector<std::string> namesIn(const nlohmann::json& object) {
    std::vector<std::string> names;
    for (const auto& [name, value] : object.items()) names.push_back(name);
    return names;
}

/// The reference's two arms and level, where the case has them.
nlohmann::json pairOf(const support::ReferenceCase& each) {
    std::vector<std::string> words = {"rates", armText(each.count("x1"), each.count("n1")),
                                      armText(each.count("x2"), each.count("n2")), "--json"};
    if (each.inputs.contains("conf")) {
        words.push_back("--level");
        words.push_back(each.inputs["conf"].dump());
    }
    const support::Ran ran = run(words);
    EXPECT_EQ(ran.status, 0) << ran.err;
    return ran.json()["pairs"][0];
}

void expectFigure(const nlohmann::json& got, const nlohmann::json& want, double tolerance) {
    const auto wanted = support::numberIn(want), given = support::numberIn(got);
    ASSERT_EQ(given.has_value(), wanted.has_value()) << got << " instead of " << want;
    if (!wanted) return;
    if (std::isinf(*wanted))
        EXPECT_EQ(*given, *wanted);
    else
        EXPECT_NEAR(*given, *wanted, tolerance * std::max(1.0, std::abs(*wanted)));
}

TEST(RatesCommand, GivesTheReferencesExactTests) {
    for (const support::ReferenceCase& each : support::referenceCases({"boschloo"})) {
        SCOPED_TRACE(each.id);
        if (each.expected.contains("p_central"))
            expectFigure(pairOf(each)["p"]["boschloo"], each.expected["p_central"], 1e-5);
    }
    for (const support::ReferenceCase& each : support::referenceCases({"barnard"})) {
        SCOPED_TRACE(each.id);
        if (each.expected.contains("p_two_sided"))
            expectFigure(pairOf(each)["p"]["barnard"], each.expected["p_two_sided"], 1e-5);
    }
    for (const support::ReferenceCase& each : support::referenceCases({"fisher_midp"})) {
        SCOPED_TRACE(each.id);
        if (each.expected.contains("midp_minlike"))
            expectFigure(pairOf(each)["p"]["fisher_mid"], each.expected["midp_minlike"], 1e-5);
    }
}

TEST(RatesCommand, GivesTheReferencesDifferencesAndRatios) {
    for (const support::ReferenceCase& each : support::referenceCases({"or_fisher"})) {
        SCOPED_TRACE(each.id);
        const nlohmann::json pair = pairOf(each);
        expectFigure(pair["odds_ratio"]["conditional"], each.expected["estimate"], 1e-6);
        expectFigure(pair["odds_ratio"]["exact"]["low"], each.expected["lower"], 1e-6);
        expectFigure(pair["odds_ratio"]["exact"]["high"], each.expected["upper"], 1e-6);
    }
    for (const support::ReferenceCase& each : support::referenceCases({"diff_newcombe", "diff_score"})) {
        SCOPED_TRACE(each.id);
        if (each.flag("cc") || (each.method == "diff_score" && !each.flag("bias"))) continue;
        const nlohmann::json difference = pairOf(each)["difference"];
        const nlohmann::json& interval = difference[each.method == "diff_score" ? "miettinen_nurminen" : "newcombe"];
        expectFigure(difference["value"], each.expected["estimate"], 1e-6);
        expectFigure(interval["low"], each.expected["lower"], 1e-6);
        expectFigure(interval["high"], each.expected["upper"], 1e-6);
    }
    for (const support::ReferenceCase& each : support::referenceCases({"rr_score"})) {
        SCOPED_TRACE(each.id);
        if (each.flag("bias")) continue;
        const nlohmann::json ratio = pairOf(each)["risk_ratio"];
        expectFigure(ratio["value"], each.expected["estimate"], 1e-6);
        expectFigure(ratio["koopman"]["low"], each.expected["lower"], 1e-6);
        expectFigure(ratio["koopman"]["high"], each.expected["upper"], 1e-6);
    }
    for (const support::ReferenceCase& each : support::referenceCases({"prob_greater"})) {
        SCOPED_TRACE(each.id);
        expectFigure(pairOf(each)["probability_first_better"], each.expected.begin().value(), 1e-6);
    }
}

TEST(RatesCommand, KeepsItsPromiseOfNames) {
    const nlohmann::json json = run({"rates", "18/24", "11/24", "--json"}).json();
    const nlohmann::json& arm = json["arms"][0];
    const nlohmann::json& pair = json["pairs"][0];
    EXPECT_THAT(namesIn(json), testing::UnorderedElementsAre("level", "arms", "pairs"));
    EXPECT_EQ(arm["rooted"], 18);
    EXPECT_EQ(arm["stuck"], 24);
    EXPECT_EQ(arm["rate"], 0.75);
    for (const char* name : {"wilson", "wilson_continuity", "clopper_pearson", "jeffreys", "agresti_coull"}) {
        EXPECT_TRUE(arm["intervals"][name]["low"].is_number()) << name;
        EXPECT_TRUE(arm["intervals"][name]["high"].is_number()) << name;
    }
    EXPECT_EQ(pair["first"], 0);
    EXPECT_EQ(pair["second"], 1);
    for (const auto& [group, names] :
         std::map<std::string, std::vector<std::string>>{{"difference", {"value", "newcombe", "miettinen_nurminen"}},
                                                         {"risk_ratio", {"value", "koopman"}},
                                                         {"odds_ratio", {"conditional", "exact"}},
                                                         {"p", {"fisher", "fisher_mid", "boschloo", "barnard"}}})
        EXPECT_THAT(namesIn(pair[group]), testing::UnorderedElementsAreArray(names));
    EXPECT_TRUE(pair["probability_first_better"].is_number());
}

TEST(RatesCommand, ComparesEveryTwoOfSeveralArms) {
    const nlohmann::json json = run({"rates", "1/9", "2/9", "3/9", "4/9", "--json"}).json();
    EXPECT_EQ(json["arms"].size(), 4U);
    EXPECT_EQ(json["pairs"].size(), 6U);
    EXPECT_EQ(json["pairs"][5]["first"], 2);
    EXPECT_EQ(json["pairs"][5]["second"], 3);
}

TEST(RatesCommand, SaysWhatIsUndefinedOfEmptyArms) {
    const nlohmann::json json = run({"rates", "0/0", "3/5", "--json"}).json();
    EXPECT_TRUE(json["arms"][0]["rate"].is_null());
    EXPECT_EQ(json["arms"][0]["intervals"]["wilson"]["high"], 1.0);
    const nlohmann::json& pair = json["pairs"][0];
    EXPECT_TRUE(pair["difference"]["value"].is_null());
    EXPECT_EQ(pair["difference"]["newcombe"]["low"], -1.0);
    EXPECT_TRUE(pair["risk_ratio"]["value"].is_null());
    EXPECT_EQ(pair["risk_ratio"]["koopman"]["high"], "Infinity");
    EXPECT_EQ(pair["odds_ratio"]["exact"]["high"], "Infinity");
    EXPECT_EQ(pair["p"]["fisher"], 1.0);
}

TEST(RatesCommand, NeverPrintsNotANumber) {
    const std::vector<std::string> arms = {"0/0", "0/1", "1/1", "0/7", "7/7", "3/7", "150/300", "300/300", "0/300"};
    for (const std::string& first : arms)
        for (const std::string& second : arms) {
            const support::Ran ran = run({"rates", first, second, "--json"});
            ASSERT_EQ(ran.status, 0);
            EXPECT_EQ(ran.out.find("nan"), std::string::npos) << first << " " << second;
            EXPECT_TRUE(ran.json()["pairs"][0]["p"]["boschloo"].is_number()) << first << " " << second;
        }
}

TEST(RatesCommand, LeavesOutTestsThatWouldTakeTooLong) {
    const nlohmann::json json = run({"rates", "400000/900000", "500000/1000000", "--json"}).json();
    EXPECT_TRUE(json["pairs"][0]["p"]["boschloo"].is_null());
    EXPECT_TRUE(json["pairs"][0]["p"]["fisher"].is_number());
    EXPECT_THAT(run({"rates", "400000/900000", "500000/1000000"}).out, HasSubstr("left out"));
}

TEST(RatesCommand, TellsPeopleWithCountsAndIntervals) {
    const std::string out = run({"rates", "18/24", "11/24"}).out;
    EXPECT_THAT(out, HasSubstr("(18 of 24)"));
    EXPECT_THAT(out, HasSubstr("29 more of 100; 1 to 53 more fit these counts"));
    EXPECT_THAT(out, HasSubstr("shared one tub or tray"));
}

TEST(RatesCommand, SaysWhichArgumentIsWrongAndWhatIsAllowed) {
    struct Case {
        std::vector<std::string> words;
        const char* says;
    };
    const Case cases[] = {{{"rates", "25/24", "11/24"}, "The arm \"25/24\""},
                          {{"rates", "18/24", "-1/24"}, "\"-1/24\""},
                          {{"rates", "18", "11/24"}, "The arm \"18\""},
                          {{"rates", "18/", "11/24"}, "The arm \"18/\""},
                          {{"rates", "1.5/3", "11/24"}, "The arm \"1.5/3\""},
                          {{"rates", "18/24/3", "11/24"}, "The arm \"18/24/3\""},
                          {{"rates", "\xFF/3", "11/24"}, "The arm \"?/3\""},
                          {{"rates", "1/1000001", "11/24"}, "STUCK from 0 to 1000000"},
                          {{"rates", "18/24"}, "two or more"},
                          {{"rates"}, "ROOTED/STUCK is missing"},
                          {{"rates", "18/24", "11/24", "--level", "1"}, "--level is \"1\""},
                          {{"rates", "18/24", "11/24", "--level", "-0.5"}, "--level is \"-0.5\""},
                          {{"rates", "18/24", "11/24", "--level", "nan"}, "between 0 and 1"},
                          {{"rates", "18/24", "11/24", "--level"}, "--level needs a value"},
                          {{"rates", "18/24", "11/24", "--levle", "0.9"}, "\"--levle\" is not known"}};
    for (const Case& each : cases) {
        const support::Ran ran = run(each.words);
        EXPECT_EQ(ran.status, 2) << each.says;
        EXPECT_THAT(ran.err, HasSubstr(each.says));
        EXPECT_THAT(ran.err, HasSubstr("Use: strikebook-cli rates"));
        EXPECT_EQ(ran.out, "");
    }
}

}  // namespace
