// SPDX-License-Identifier: MIT
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/mixing/trade_cautions.h"
#include "tests/console/console_runner.h"
#include "tests/db/exchange/exchange_folder.h"

namespace {

using support::run;
using testing::AllOf;
using testing::ContainsRegex;
using testing::HasSubstr;
using testing::Not;

std::vector<std::string> nutrient(const std::vector<std::string>& more = {}) {
    std::vector<std::string> words{"mix", "nutrient", "--volume", "20",     "--target", "1.0",  "--water",
                                   "0.3", "--full",   "2.4",      "--part", "A=1.2",    "B=1.2"};
    words.insert(words.end(), more.begin(), more.end());
    return words;
}

const std::vector<std::string> hardWater{"mix",        "ph",  "--volume",    "20",   "--alkalinity", "2",
                                         "--ph",       "7.5", "--target-ph", "6.0",  "--with",       "phosphoric",
                                         "--strength", "75",  "--density",   "1.573"};

std::vector<std::string> with(std::vector<std::string> words, const std::vector<std::string>& more) {
    words.insert(words.end(), more.begin(), more.end());
    return words;
}

struct WrongLine {
    std::vector<std::string> words;
    const char* says;
};

void expectWrongUse(const std::vector<WrongLine>& lines) {
    for (const WrongLine& line : lines) {
        const support::Ran ran = run(line.words);
        EXPECT_EQ(ran.status, 2) << line.says;
        EXPECT_THAT(ran.err, HasSubstr(line.says));
        EXPECT_EQ(ran.out, "") << line.says;
    }
}

TEST(MixCommand, WeighsNutrientForATub) {
    const nlohmann::json json = run(nutrient({"--json"})).json();
    EXPECT_NEAR(json["parts"][0]["exact"].get<double>(), 7, 1e-9);
    EXPECT_EQ(json["parts"][1]["name"], "B");
    EXPECT_NEAR(json["ec_as_measured"]["high"].get<double>(), 1.0, 1e-9);
    EXPECT_EQ(json["notes"]["workings"][0]["with_numbers"], "(1 - 0.3) / 2.4 = 0.2917");
    EXPECT_EQ(json["notes"]["cautions"][0]["topic"], "concentrates");
    const std::string out = run(nutrient()).out;
    EXPECT_THAT(out, HasSubstr("7.0 g"));
    EXPECT_THAT(out, HasSubstr("0.2917 x 1.2 g/L x 20 L = 7 g"));
    EXPECT_THAT(out, HasSubstr("Source: common practice, no source"));
    EXPECT_THAT(out, HasSubstr("cuttings once rooted"));
    EXPECT_THAT(out, HasSubstr(std::string(core::tradeCaution(core::CautionTopic::Advice).text)));
}

TEST(MixCommand, IsTheSameMixInGallonsAndOtherScalesOfEc) {
    const nlohmann::json litres = run(nutrient({"--json"})).json();
    const nlohmann::json gallons =
        run({"mix", "nutrient", "--volume", "5.283441047162969gal", "--target", "1000uS/cm", "--water", "150ppm500",
             "--full", "1680 ppm700", "--part", "A=1.2g", "B=1.2g", "--json"})
            .json();
    EXPECT_NEAR(gallons["parts"][0]["exact"].get<double>(), litres["parts"][0]["exact"].get<double>(), 1e-9);
}

TEST(MixCommand, LearnsANutrientFromAReading) {
    const std::vector<std::string> words{"mix",     "reading", "--volume", "20",  "--read", "1.0",
                                         "--water", "0.3",     "--full",   "2.4", "--part", "A=10"};
    EXPECT_NEAR(run(with(words, {"--json"})).json()["parts"][0]["full_per_litre"].get<double>(), 1.7143, 1e-4);
    EXPECT_THAT(run(words).out, HasSubstr("A: full dose 1.71 g/L"));
    EXPECT_THAT(run(words).out, HasSubstr("30 % too low"));
    const nlohmann::json without = run({"mix", "reading", "--volume", "20", "--read", "0.35", "--water", "0.3",
                                        "--full", "2.4", "--part", "A=10", "--json"})
                                       .json();
    EXPECT_EQ(without["parts"][0]["high"], "Infinity");
}

TEST(MixCommand, AddsUpElementsOfSaltsAndABag) {
    const std::vector<std::string> words{"mix",   "elements", "--salt", "Ca(NO3)2.4H2O=0.5", "KNO3=0.2", "--bag",
                                         "A=0.5", "--label",  "N=5",    "P2O5=11",           "K2O=26"};
    const nlohmann::json json = run(with(words, {"--json"})).json();
    EXPECT_NEAR(json["mg_per_litre"]["P"].get<double>(), 24.0, 0.05);
    EXPECT_NEAR(json["mg_per_litre"]["Ca"].get<double>(), 84.86, 0.01);
    const std::string out = run(words).out;
    EXPECT_THAT(out, HasSubstr("Hoagland no. 1"));
    EXPECT_THAT(out, HasSubstr("fruiting plants"));
}

TEST(MixCommand, DilutesAndTopsUpATub) {
    const nlohmann::json thinner =
        run({"mix", "dilute", "--volume", "20", "--now", "1.4", "--target", "1.0", "--water", "0.2", "--json"}).json();
    EXPECT_NEAR(thinner["add"]["exact"].get<double>(), 10, 1e-9);
    EXPECT_NEAR(thinner["replace"]["exact"].get<double>(), 20 * 0.4 / 1.2, 1e-9);
    EXPECT_THAT(run({"mix", "dilute", "--volume", "20", "--now", "1.4", "--target", "1.0", "--water", "0.2"}).out,
                AllOf(HasSubstr("water to add"), HasSubstr("10.0 L"), HasSubstr("Added to, it comes to EC 1 mS/cm")));
    const nlohmann::json full = run({"mix", "topup", "--volume", "10", "--filled", "20", "--now", "0.8", "--target",
                                     "1.0", "--water", "0.2", "--full", "2.4", "--part", "A=1.2", "--json"})
                                    .json();
    EXPECT_NEAR(full["parts"][0]["exact"].get<double>(), 5, 1e-9);
    EXPECT_NEAR(full["ec_with_water_alone"].get<double>(), 0.5, 1e-9);
}

TEST(MixCommand, ShiftsPhWithAFirstDoseAndACeiling) {
    const nlohmann::json json = run(with(hardWater, {"--json"})).json();
    EXPECT_NEAR(json["first"]["amount"]["exact"].get<double>(), 2.105, 0.01);
    EXPECT_NEAR(json["ceiling"]["meq_per_litre"].get<double>(), 2, 1e-9);
    EXPECT_NEAR(json["ph_untreated_bubbled"].get<double>(), 8.485, 0.01);
    const std::string out = run(hardWater).out;
    EXPECT_THAT(out, HasSubstr("start with"));
    EXPECT_THAT(out, HasSubstr("ceiling"));
    EXPECT_THAT(out, HasSubstr("Plummer and Busenberg (1982)"));
    EXPECT_THAT(out, HasSubstr("never water into acid"));
    std::vector<std::string> asCarbonate = with(hardWater, {"--json"});
    asCarbonate[5] = "100.086ppm";
    EXPECT_NEAR(run(asCarbonate).json()["alkalinity"].get<double>(), 2, 1e-6);
}

TEST(MixCommand, ScalesATitration) {
    const std::vector<std::string> words{"mix",    "titration", "--sample", "1",       "--volume",    "20",
                                         "--step", "0=7.6",     "0.4=6.8",  "0.8=6.2", "--target-ph", "6.5"};
    EXPECT_NEAR(run(with(words, {"--json"})).json()["amount"]["exact"].get<double>(), 12, 1e-9);
    EXPECT_THAT(run(words).out, HasSubstr("pH 6.5 for 20 L, by titration"));
    EXPECT_THAT(run(words).out, HasSubstr("12.0 mL"));
}

TEST(MixCommand, MixesMediumForTrays) {
    const std::vector<std::string> words{"mix",           "medium", "--trays", "1",      "--cells",  "60",
                                         "--cell-volume", "44",     "--part",  "coir=1", "perlite=1"};
    const nlohmann::json json = run(with(words, {"--json"})).json();
    EXPECT_NEAR(json["components"][0]["exact"].get<double>(), 2.64 / 2 / 0.85, 1e-9);
    EXPECT_THAT(run(words).out, HasSubstr("1.6 L"));
    EXPECT_THAT(run(words).out, HasSubstr("mould and dust"));
}

TEST(MixCommand, PrintsAMixingCardWithItsCautions) {
    const support::TemporaryFolder folder;
    const std::string file = (folder / "card.pdf").string();
    const support::Ran ran = run(nutrient({"--card", file, "--paper", "Letter"}));
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("Printed the mixing card to " + file));
    EXPECT_TRUE(std::filesystem::file_size(file) > 1000);
    EXPECT_EQ(run(with({"auxin", "dip", "--cuttings", "40", "--json"}, {"--card", file})).json()["card"], file);
    expectWrongUse({{nutrient({"--card", "card.txt"}), "--card is \"card.txt\"; a file whose name ends in .pdf"},
                    {nutrient({"--card", file, "--paper", "A3"}), "--paper is \"A3\"; A4 or Letter is allowed."},
                    {{"auxin", "ranges", "--card", file}, "--card doesn't belong to auxin ranges"}});
}

TEST(MixCommand, SaysWhatIsWrongAndWhatIsAllowed) {
    expectWrongUse(
        {{{"mix"}, "QUESTION is missing"},
         {{"mix", "tea"}, "There is no question \"tea\"; known are nutrient, reading"},
         {{"mix", "nutrient", "--volume", "20"}, "--target is missing"},
         {nutrient({"--ph", "6"}), "--ph doesn't belong to mix nutrient, which takes --volume"},
         {nutrient({"--scale", "0"}), "Step of the scale is 0; 0.001 to 1000 g is allowed."},
         {nutrient({"--scale", "x"}), "--scale is \"x\"; a number is allowed"},
         {{"mix", "dilute", "--volume", "20pints", "--now", "1", "--target", "0.5", "--water", "0"},
          "a number with the unit L, gal is allowed"},
         {{"mix", "dilute", "--volume", "20", "--now", "1", "--target", "1.5", "--water", "0"},
          "EC wanted is 1.5 mS/cm; more than the 0 of the water and less than the 1 of the tub is allowed."},
         {{"mix", "nutrient", "--volume", "20", "--target", "1", "--water", "0", "--full", "2", "--part", "1.2"},
          "--part is \"1.2\"; a name, a sign of equality"},
         {{"mix", "nutrient", "--volume", "-1", "--target", "99", "--water", "0", "--full", "2", "--part", "A=1"},
          "Volume is -1; more than 0 and up to 100000 L is allowed.\nEC wanted is 99"},
         {{"mix", "elements", "--salt", "sugar=1"}, "a chemical formula"},
         {{"mix", "elements", "--label", "N=5"}, "--label needs --bag"},
         {{"mix", "elements"}, "--salt or --bag with --label is missing"},
         {with(hardWater, {"--with", "vinegar"}), "given twice"},
         {{"mix", "ph", "--volume", "20", "--alkalinity", "2x", "--ph", "7", "--target-ph", "6", "--with", "citric"},
          "--alkalinity is \"2x\""},
         {{"mix", "ph", "--volume", "20", "--alkalinity", "2", "--ph", "7", "--target-ph", "6", "--with", "vinegar"},
          "--with is \"vinegar\"; known are phosphoric, nitric"},
         {{"mix", "medium", "--volume", "3", "--trays", "1", "--part", "coir=1"}, "one is needed, and no more"},
         {{"mix", "medium", "--volume", "3", "--part", "coir=0"}, "Parts of \"coir\" is 0"}});
}

TEST(AuxinCommand, ThinsWeighsAndPours) {
    const nlohmann::json thin =
        run({"auxin", "thin", "--stock", "1%", "--wanted", "2000", "--volume", "100", "--json"}).json();
    EXPECT_NEAR(thin["stock"]["exact"].get<double>(), 20, 1e-9);
    EXPECT_NEAR(thin["as_measured"]["mg_per_litre"].get<double>(), 2000, 1e-9);
    const nlohmann::json weigh =
        run({"auxin", "weigh", "--wanted", "3000", "--volume", "100", "--powder-is", "salt", "--json"}).json();
    EXPECT_NEAR(weigh["powder"]["exact"].get<double>(), 0.3562, 0.0005);
    EXPECT_THAT(run({"auxin", "weigh", "--wanted", "3000", "--volume", "100", "--powder-is", "salt"}).out,
                ContainsRegex("powder of K-IBA +0.4 g +0.356 g"));
    EXPECT_THAT(run({"auxin", "dip", "--cuttings", "40"}).out, ContainsRegex("to pour out +20.0 mL"));
    EXPECT_THAT(run({"auxin", "talc", "--powder", "0.8%", "--wanted", "0.3%", "--grams", "40"}).out,
                ContainsRegex("powder that is there +15.0 g"));
}

TEST(AuxinCommand, ShowsItsCautionsAndThatHormoneAges) {
    for (const std::vector<std::string>& words : std::vector<std::vector<std::string>>{
             {"auxin", "thin", "--stock", "10000", "--wanted", "2000", "--volume", "100"},
             {"auxin", "dip", "--cuttings", "4"}}) {
        const std::string out = run(words).out;
        for (const char* topic : {"growth regulators", "edible crops", "hormone hygiene", "advice"})
            EXPECT_THAT(out, HasSubstr(topic));
        EXPECT_THAT(out, HasSubstr("ages in the bottle"));
    }
}

TEST(AuxinCommand, CountsSaltAsAcidAndListsRanges) {
    const nlohmann::json json = run({"auxin", "convert", "--strength", "10000", "--is", "salt", "--json"}).json();
    EXPECT_NEAR(json["the_same"]["mg_per_litre"].get<double>(), 8421.7, 0.5);
    EXPECT_EQ(json["the_same"]["counted_as"], "acid");
    EXPECT_THAT(run({"auxin", "convert", "--auxin", "naa", "--strength", "0.1%"}).out, HasSubstr("1000 mg/L NAA"));
    EXPECT_THAT(run({"auxin", "ranges"}).out, HasSubstr("semi-ripe"));
    EXPECT_EQ(run({"auxin", "ranges", "--json"}).json()["ranges"].size(), 8U);
}

TEST(AuxinCommand, SaysWhatIsWrongAndWhatIsAllowed) {
    expectWrongUse(
        {{{"auxin", "sniff"}, "known are thin, weigh, talc, dip, convert, ranges"},
         {{"auxin", "thin", "--stock", "1000", "--wanted", "2000", "--volume", "100"},
          "up to the stock's 1000 mg/L IBA"},
         {{"auxin", "thin", "--auxin", "2,4-D", "--stock", "1000", "--wanted", "20", "--volume", "100"},
          "IBA, NAA or IAA"},
         {{"auxin", "thin", "--stock", "1000", "--stock-is", "base", "--wanted", "20", "--volume", "100"},
          "--stock-is is \"base\"; acid or salt is allowed."},
         {{"auxin", "thin", "--stock", "11%", "--wanted", "20", "--volume", "100"},
          "Strength is 11; 0 to 10 % is allowed."},
         {{"auxin", "dip", "--cuttings", "0"}, "--cuttings is \"0\"; a whole number from 1 to 100000"},
         {{"auxin", "dip", "--cuttings", "4", "--grams", "3"}, "--grams doesn't belong to auxin dip"},
         {{"auxin", "ranges", "--grams", "3"}, "--grams doesn't belong to auxin ranges, which takes none of them"}});
}

TEST(ClimateCommand, TellsWhatReadingsMean) {
    const nlohmann::json vapour =
        run({"climate", "vapour", "--air", "68F", "--humidity", "60", "--leaf", "18", "--json"}).json();
    EXPECT_NEAR(vapour["air_vpd_kpa"].get<double>(), 0.9353, 0.0005);
    EXPECT_NEAR(vapour["dew_point_c"].get<double>(), 12.004, 0.01);
    EXPECT_THAT(run({"climate", "vapour", "--air", "22", "--humidity", "99", "--leaf", "20"}).out,
                HasSubstr("dew forms on it"));
    EXPECT_THAT(run({"climate", "vapour", "--air", "22", "--humidity", "0"}).out, Not(HasSubstr("Dew point")));
    EXPECT_THAT(run({"climate", "humidity", "--air", "20", "--deficit", "0.3"}).out, HasSubstr("87.17 %"));
    EXPECT_THAT(run({"climate", "ec", "--ec", "1278uS/cm", "--water", "20"}).out, HasSubstr("1.413 mS/cm"));
    const nlohmann::json oxygen =
        run({"climate", "oxygen", "--water", "24", "--altitude", "1000", "--oxygen", "6", "--json"}).json();
    EXPECT_NEAR(oxygen["percent_of_saturation"].get<double>(), 80.66, 0.05);
    EXPECT_THAT(run({"climate", "oxygen", "--water", "20", "--oxygen", "12"}).out, HasSubstr("a fault of the meter"));
    EXPECT_THAT(run({"climate", "oxygen", "--water", "20", "--oxygen", "5"}).out, HasSubstr("80 or more is the aim"));
    EXPECT_THAT(run({"climate", "degree-days", "--low", "12", "--high", "24", "--base", "10"}).out,
                HasSubstr("8 C days"));
}

TEST(ClimateCommand, AddsUpTheLightOfADay) {
    EXPECT_THAT(run({"climate", "light", "--light", "60", "--hours", "16"}).out, HasSubstr("3.456 mol/m2"));
    EXPECT_THAT(run({"climate", "light", "--daily", "10", "--hours", "16"}).out, HasSubstr("173.6 umol/m2/s"));
    const std::vector<std::string> words{"climate",   "light",     "--reading", "06:00=0",
                                         "08:00=100", "10:00=100", "15:00=100", "16:00=100"};
    const nlohmann::json json = run(with(words, {"--json"})).json();
    EXPECT_NEAR(json["dli_mol"].get<double>(), (100 + 200 + 100) * 3600 / 1e6, 1e-9);
    EXPECT_EQ(json["hours_covered"], 5.0);
    EXPECT_EQ(json["gaps"].size(), 3U);
    EXPECT_THAT(run(words).out, HasSubstr("Nothing is known from 10:00 for 5 h"));
    EXPECT_NEAR(run(with(words, {"--gap", "6", "--json"})).json()["dli_mol"].get<double>(), 900 * 3600 / 1e6, 1e-9);
    EXPECT_NEAR(run({"climate", "degree-days", "--base", "50F", "--reading", "00:00=20", "12:00=68F", "24:00=20",
                     "--gap", "13", "--json"})
                    .json()["degree_days"]
                    .get<double>(),
                10, 1e-9);
}

TEST(ClimateCommand, SaysWhatIsWrongAndWhatIsAllowed) {
    expectWrongUse(
        {{{"climate", "vapour", "--air", "20", "--humidity", "120"},
          "Relative humidity is 120; 0 to 100 % is allowed."},
         {{"climate", "vapour", "--air", "20K", "--humidity", "50"}, "a number with the unit C, F is allowed"},
         {{"climate", "oxygen", "--water", "20", "--altitude", "1", "--pressure", "1"}, "no more than one is allowed"},
         {{"climate", "light", "--reading", "25:00=1"}, "has the time \"25:00\"; 00:00 to 24:00"},
         {{"climate", "light", "--reading", "xx:00=1"}, "has the time \"xx:00\""},
         {{"climate", "light", "--reading", "10:00=1", "09:00=1"}, "earlier than the one before it"},
         {{"climate", "light", "--reading", "10:00=-1"}, "Light at"},
         {{"climate", "light", "--reading", "10:00=1F"}, "its unit is not known here"},
         {{"climate", "light", "--reading", "10:00=1", "--gap", "-1"}, "Longest gap is 0 s"},
         {{"climate", "light", "--hours", "3"}, "--light is missing"},
         {{"climate", "ec", "--ec", "1", "--water", "20", "--slope", "1"}, "Change per degree is 1"}});
}

TEST(ClimateCommand, NamesTheSourceOfEveryFigure) {
    for (const std::vector<std::string>& words : std::vector<std::vector<std::string>>{
             {"climate", "vapour", "--air", "20", "--humidity", "60"},
             {"climate", "light", "--light", "60", "--hours", "16"},
             {"climate", "oxygen", "--water", "20"},
             {"climate", "ec", "--ec", "1", "--water", "20"},
             {"climate", "degree-days", "--low", "12", "--high", "24", "--base", "10"}})
        EXPECT_THAT(run(words).out, HasSubstr("Source: ")) << words[1];
}

}  // namespace
