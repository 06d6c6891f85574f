// SPDX-License-Identifier: MIT
// Every check of the reference data that concerns mixing, and its tables.
#include <gtest/gtest.h>

#include <functional>
#include <map>

#include "core/mixing/auxin_mix.h"
#include "core/mixing/carbonate.h"
#include "core/mixing/elements.h"
#include "core/mixing/feeding_bands.h"
#include "core/mixing/medium_mix.h"
#include "core/mixing/nutrient_dose.h"
#include "core/mixing/reagent.h"
#include "core/mixing/tub.h"
#include "core/units/display_units.h"
#include "tests/support/horticulture_checks.h"

namespace {

using nlohmann::json;
using support::HorticultureCheck;
using MixAnswer = std::function<json(const HorticultureCheck&)>;

core::AuxinKind kindNamed(const std::string& name) {
    return core::auxinFrom(name.starts_with("K-") ? name.substr(2) : name).value();
}

core::AuxinForm formNamed(const std::string& name) {
    return name.starts_with("K-") ? core::AuxinForm::Salt : core::AuxinForm::Acid;
}

json doseOfOnePart(const HorticultureCheck& check, const std::string& full, core::AmountUnit unit) {
    return core::nutrientDose({.litres = check.number("volume_L"),
                               .targetEc = check.number("ec_target"),
                               .waterEc = check.number("ec_base"),
                               .fullEc = check.number("ec_full"),
                               .parts = {{.name = "A", .fullPerLitre = check.number(full), .unit = unit}}})
        .value()
        .parts.front()
        .amount.exact;
}

json learntFullDose(const HorticultureCheck& check) {
    return core::learnNutrient({.litres = check.number("volume_L"),
                                .readEc = check.number("ec_read"),
                                .waterEc = check.number("ec_base"),
                                .fullEc = check.number("ec_full"),
                                .parts = {{.name = "A", .fullPerLitre = check.number("g_each")}}})
        .value()
        .parts.front()
        .fullPerLitre.value();
}

json waterToAdd(const HorticultureCheck& check) {
    return core::diluteTub({.litres = check.number("volume_L"),
                            .ec = check.number("ec_now"),
                            .targetEc = check.number("ec_target"),
                            .waterEc = check.number("ec_base")})
        .value()
        .add.exact;
}

json ppmOf(const core::SolutionElements& solution) {
    json ppm;
    for (const core::ElementAmount& element : solution.elements) ppm[element.symbol] = element.milligramsPerLitre;
    return ppm;
}

json ppmFromRecipe(const HorticultureCheck& check) {
    std::vector<core::FeedIngredient> ingredients;
    for (const auto& [formula, grams] : check.inputs.at("g_per_L").items()) {
        ingredients.push_back(core::saltIngredient(formula, grams).value());
        const double millimoles = check.inputs.at("mmol_per_L").at(formula);
        EXPECT_NEAR(millimoles * core::molarMass(formula).value() / 1000, grams.get<double>(), 0.00006) << formula;
    }
    return ppmOf(core::solutionElements(ingredients).value());
}

/// "N_pct" or "P2O5_pct" among the inputs.
json ppmFromLabel(const HorticultureCheck& check) {
    std::vector<core::LabelFigure> label;
    for (const auto& [input, percent] : check.inputs.items())
        if (input.ends_with("_pct")) label.push_back({.word = input.substr(0, input.size() - 4), .percent = percent});
    const std::vector<core::FeedIngredient> bag{core::labelIngredient("bag", check.number("g_per_L"), label).value()};
    return ppmOf(core::solutionElements(bag).value());
}

core::Reagent sulfuric93() {
    return {.kind = core::ReagentKind::Sulfuric, .percent = 93, .kilogramsPerLitre = 1.835};
}

/// mL of an acid in 100 US gallons for so many mg/L of alkalinity as CaCO3, all of its protons given.
double millilitresIn100Gallons(double milligramsPerLitre) {
    const double litres = core::storedVolume(100, core::VolumeUnit::UsGallons);
    const double protons = core::effectiveProtons(core::ReagentKind::Sulfuric, 6).value();
    return core::alkalinityFromCalciumCarbonate(milligramsPerLitre).value() * litres /
           (core::millimolesPerUnit(sulfuric93()).value() * protons);
}

json stockDilution(const HorticultureCheck& check) {
    const core::WorkingSolution solution =
        core::thinStock({.stock = {.milligramsPerLitre = check.number("c_stock_ppm")},
                         .wanted = {.milligramsPerLitre = check.number("c_final_ppm")},
                         .millilitres = check.number("v_final_mL")})
            .value();
    return {{"stock_mL", solution.stock.exact}, {"diluent_mL", solution.diluent.exact}};
}

json powderGrams(const HorticultureCheck& check) {
    return core::weighPowder({.kind = kindNamed(check.word("compound")),
                              .powder = formNamed(check.word("compound")),
                              .purityPercent = check.number("purity_pct"),
                              .wanted = {.milligramsPerLitre = check.number("ppm_acid_equivalent")},
                              .millilitres = check.number("volume_mL")})
        .value()
        .powder.exact;
}

json mediumLitres(const HorticultureCheck& check) {
    core::MediumQuestion question{.litres = check.number("final_L"), .lossPercent = check.number("shrink_pct")};
    for (const json& part : check.inputs.at("parts"))
        question.components.push_back({.name = "component", .parts = part});
    json litres = json::array();
    const core::MixedMedium mixed = core::mixMedium(question).value();
    for (const core::ComponentAmount& component : mixed.components) litres.push_back(component.amount.exact);
    return litres;
}

json cellVolume(const HorticultureCheck& check) {
    const json& top = check.inputs.at("top_mm");
    const json& bottom = check.inputs.at("bottom_mm");
    return core::cellMillilitres({.topAcross = top[0],
                                  .topAlong = top[1],
                                  .bottomAcross = bottom[0],
                                  .bottomAlong = bottom[1],
                                  .depth = check.number("depth_mm")})
        .value();
}

json roundCellVolume(const HorticultureCheck& check) {
    const double top = check.number("top_d_mm"), bottom = check.number("bottom_d_mm");
    return core::cellMillilitres({.topAcross = top,
                                  .topAlong = top,
                                  .bottomAcross = bottom,
                                  .bottomAlong = bottom,
                                  .depth = check.number("depth_mm"),
                                  .isRound = true})
        .value();
}

using Answers = std::map<std::string, MixAnswer>;

Answers feedAnswers() {
    return {
        {"nutrient_dose_g_each_part",
         [](const auto& check) { return doseOfOnePart(check, "full_g_per_L", core::AmountUnit::Grams); }},
        {"nutrient_dose_mL_single",
         [](const auto& check) { return doseOfOnePart(check, "full_mL_per_L", core::AmountUnit::Millilitres); }},
        {"full_dose_from_reading_g_per_L", learntFullDose},
        {"water_to_add_L", waterToAdd},
        {"blend_ec",
         [](const auto& check) {
             return core::blendedEc(check.number("v1_L"), check.number("ec1"), check.number("v2_L"),
                                    check.number("ec2"))
                 .value();
         }},
        {"oxide_to_element_factor",
         [](const auto& check) { return core::labelFactor(check.word("oxide")).value().factor; }},
        {"ppm_from_recipe", ppmFromRecipe},
        {"ppm_from_label", ppmFromLabel},
        {"ppm_from_element_pct", ppmFromLabel},
        {"g_per_L_for_ppm",
         [](const auto& check) {
             return core::gramsPerLitreFor(check.number("ppm"), check.number("element_pct")).value();
         }},
    };
}

Answers phAnswers() {
    return {
        {"acid_needed_meqL_closed",
         [](const auto& check) {
             return core::acidForShift(check.number("alk_meqL"), check.number("pH_from"), check.number("pH_to"))
                 .value();
         }},
        {"alkalinity_meqL",
         [](const auto& check) { return core::alkalinityFromCalciumCarbonate(check.number("mgL_CaCO3")).value(); }},
        {"ph_in_equilibrium_with_air",
         [](const auto& check) { return core::phInAir(check.number("alk_meqL"), check.number("pco2_atm")).value(); }},
        {"alkalinity_left_in_equilibrium_with_air_meqL",
         [](const auto& check) { return core::alkalinityInAir(check.number("pH"), check.number("pco2_atm")).value(); }},
        {"effective_protons",
         [](const auto& check) {
             return core::effectiveProtons(core::reagentFrom(check.word("acid")).value(), check.number("pH")).value();
         }},
        {"acid_mL",
         [](const auto& check) {
             return check.number("meqL") * check.number("volume_L") /
                    (check.number("mol_per_L") * check.number("effective_protons"));
         }},
        {"acid_mL_per_100_US_gal",
         [](const auto& check) {
             return millilitresIn100Gallons(check.number("alk_from_ppm") - check.number("alk_to_ppm"));
         }},
        {"ppm_alk_per_floz_per_100gal",
         [](const auto&) { return 29.5735295625 / millilitresIn100Gallons(1); }},  // 1 US fluid ounce: a gallon / 128
    };
}

Answers auxinAndMediumAnswers() {
    return {
        {"molar_mass",
         [](const auto& check) {
             return core::molarMassOf(kindNamed(check.word("auxin")), formNamed(check.word("auxin")));
         }},
        {"acid_equivalent_fraction",
         [](const auto& check) { return core::acidEquivalent(kindNamed(check.word("salt"))); }},
        {"ppm_from_percent",
         [](const auto& check) { return core::milligramsFromPercent(check.number("percent")).value(); }},
        {"stock_dilution_mL", stockDilution},
        {"powder_g", powderGrams},
        {"acid_ppm_from_salt_ppm",
         [](const auto& check) {
             return core::countedAs(core::AuxinForm::Acid, kindNamed(check.word("salt")),
                                    {.milligramsPerLitre = check.number("ppm"), .form = core::AuxinForm::Salt})
                 .value()
                 .milligramsPerLitre;
         }},
        {"dip_volume_mL",
         [](const auto& check) {
             return core::dipNeeded({.cuttings = check.inputs.at("cuttings"),
                                     .millilitresEach = check.number("mL_per_cutting"),
                                     .leastMillilitres = check.number("minimum_mL")})
                 .value()
                 .amount.exact;
         }},
        {"media_component_L", mediumLitres},
        {"cell_mL", cellVolume},
        {"cell_mL_round", roundCellVolume},
        {"tray_L",
         [](const auto& check) {
             return core::trayLitres(1, check.inputs.at("cells"), check.number("cell_mL")).value();
         }},
        {"air_filled_porosity_pct",
         [](const auto& check) {
             return core::airFilledPorosity(check.number("container_mL"), check.number("drained_mL")).value();
         }},
        {"water_holding_pct",
         [](const auto& check) {
             return core::waterHeld(check.number("container_mL"), check.number("wet_g"), check.number("dry_g")).value();
         }},
    };
}

const Answers& mixAnswers() {
    static const Answers answers = [] {
        Answers all = feedAnswers();
        all.merge(phAnswers());
        all.merge(auxinAndMediumAnswers());
        return all;
    }();
    return answers;
}

std::set<std::string> mixFunctions() {
    std::set<std::string> functions;
    for (const auto& [function, answer] : mixAnswers()) functions.insert(function);
    return functions;
}

class MixingArithmetic : public testing::TestWithParam<HorticultureCheck> {};

TEST_P(MixingArithmetic, GivesTheReferenceValue) {
    GetParam().expect(mixAnswers().at(GetParam().function)(GetParam()));
}

INSTANTIATE_TEST_SUITE_P(Horticulture, MixingArithmetic, testing::ValuesIn(support::horticultureChecks(mixFunctions())),
                         support::nameOfCheck);

TEST(HorticultureChecks, AreAllLookedAtHereOrWithTheClimateOrTheRecords) {
    // ../records_reference_test.cpp
    const std::set<std::string> records{"wilson_95",         "clopper_pearson_95",
                                        "cuttings_to_stick", "cuttings_per_treatment_80pct_power",
                                        "start_for_finish",  "energy_kWh",
                                        "batch_cost",        "unit_cost",
                                        "break_even_strike", "capital_per_batch_zero_batches",
                                        "latest_stick_date", "first_check_date"};
    const std::set<std::string> climate{"saturation_vapour_pressure_kPa",
                                        "vpd_air_kPa",
                                        "vpd_leaf_kPa",
                                        "dew_point_C",
                                        "rh_for_vpd_pct",
                                        "dli_mol",
                                        "ppfd_for_dli_umol",
                                        "do_saturation_mgL",
                                        "pressure_atm_from_altitude",
                                        "do_percent_saturation",
                                        "ec_at_25",
                                        "ppm_scales",
                                        "ec_from_ppm"};
    for (const json& check : support::horticulture().at("checks")) {
        const std::string function = check.at("function");
        EXPECT_TRUE(climate.contains(function) || records.contains(function) || mixAnswers().contains(function))
            << function;
    }
}

TEST(MixingTables, SaltsHaveTheMassesAndSharesOfTheReference) {
    for (const json& row : support::horticulture()["nutrients"]["salts"]) {
        const std::string formula = row["formula"];
        EXPECT_EQ(std::ranges::count(core::usualSalts(), std::string_view(formula)), 1) << formula;
        EXPECT_NEAR(core::molarMass(formula).value(), row["molar_mass"].get<double>(), 0.0015) << formula;
        const auto shares = core::elementSharesOf(formula).value();
        for (const auto& [symbol, percent] : row["element_pct"].items()) {
            const auto found = std::ranges::find(shares, symbol, &core::ElementShare::symbol);
            ASSERT_NE(found, shares.end()) << formula << ' ' << symbol;
            EXPECT_NEAR(100 * found->share, percent.get<double>(), 0.0015) << formula << ' ' << symbol;
        }
    }
    EXPECT_EQ(core::usualSalts().size(), support::horticulture()["nutrients"]["salts"].size());
}

TEST(MixingTables, AtomicMassesAreThoseOfTheReference) {
    for (const auto& [symbol, mass] : support::horticulture()["nutrients"]["atomic_masses"].items())
        EXPECT_EQ(core::atomicMass(symbol), mass.get<double>()) << symbol;
}

TEST(MixingTables, KnownSolutionsAreThoseOfTheReference) {
    const json& nutrients = support::horticulture()["nutrients"];
    const json wanted{{"Hoagland no. 1", nutrients["hoagland_1"]["ppm_published"]},
                      {"Hoagland no. 2", nutrients["hoagland_2"]["ppm_computed"]},
                      {"Steiner", nutrients["steiner"]["ppm_computed"]}};
    ASSERT_EQ(core::knownSolutions().size(), wanted.size());
    for (const core::KnownSolution& known : core::knownSolutions())
        EXPECT_EQ(ppmOf({.elements = known.elements}), wanted.at(std::string(known.name))) << known.name;
}

TEST(MixingTables, FeedingBandsAreThoseOfTheReference) {
    std::size_t place = 0;
    for (const json& band : support::horticulture()["ec"]["bands"]) {
        if (band["use"] == "pH of solution") continue;
        ASSERT_LT(place, core::feedingBands().size());
        const core::FeedingBand& ours = core::feedingBands()[place++];
        EXPECT_EQ(ours.stage, band["use"].get<std::string>());
        EXPECT_EQ(ours.low, band["low"].get<double>());
        EXPECT_EQ(ours.high, band["high"].get<double>());
        EXPECT_EQ(ours.source, "common practice, no source");
    }
    EXPECT_EQ(place, core::feedingBands().size());
}

TEST(MixingTables, AcidsHaveTheStrengthsOfTheReference) {
    const json& acids = support::horticulture()["ph"]["acids"];
    ASSERT_EQ(core::stockReagents().size(), acids.size());
    for (std::size_t i = 0; i < acids.size(); ++i) {
        const core::Reagent& reagent = core::stockReagents()[i].reagent;
        EXPECT_TRUE(acids[i]["acid"].get<std::string>().starts_with(core::factsOf(reagent.kind).word));
        EXPECT_EQ(reagent.percent, acids[i]["strength_pct_w"].get<double>());
        EXPECT_NEAR(core::molarMass(core::factsOf(reagent.kind).formula).value(), acids[i]["molar_mass"].get<double>(),
                    0.0025);
        EXPECT_NEAR(core::millimolesPerUnit(reagent).value(), acids[i]["mol_per_L"].get<double>(), 0.0015);
        if (reagent.kilogramsPerLitre) {
            EXPECT_EQ(*reagent.kilogramsPerLitre, acids[i]["density_kg_L"].get<double>());
        }
        EXPECT_FALSE(core::stockReagents()[i].source.empty());
    }
}

TEST(MixingTables, AuxinRangesAreThoseOfTheReference) {
    const json& ranges = support::horticulture()["auxin"]["ranges"];
    ASSERT_EQ(core::auxinRanges().size(), ranges.size());
    for (std::size_t i = 0; i < ranges.size(); ++i) {
        const core::AuxinRange& ours = core::auxinRanges()[i];
        EXPECT_EQ(ours.wood, ranges[i]["wood"].get<std::string>());
        EXPECT_EQ(ours.way, ranges[i]["method"].get<std::string>());
        EXPECT_EQ(ours.low, ranges[i]["low"].get<double>());
        EXPECT_EQ(ours.high, ranges[i]["high"].get<double>());
        EXPECT_EQ(ours.source == core::commonPractice, ranges[i]["how"] == "P");
    }
}

TEST(MixingTables, MediumBandsAreThoseOfTheReference) {
    const std::map<std::string, std::string_view> names{
        {"air_filled_porosity_pct", "air"}, {"water_holding_pct", "water"}, {"mixing_shrink_pct", "loss in mixing"}};
    const json& bands = support::horticulture()["media"]["bands"];
    ASSERT_EQ(core::mediumBands().size(), bands.size());
    for (std::size_t i = 0; i < bands.size(); ++i) {
        EXPECT_EQ(core::mediumBands()[i].quantity, names.at(bands[i]["quantity"]));
        EXPECT_EQ(core::mediumBands()[i].low, bands[i]["low"].get<double>());
        EXPECT_EQ(core::mediumBands()[i].high, bands[i]["high"].get<double>());
        EXPECT_FALSE(core::mediumBands()[i].source.empty());
    }
}

TEST(TradeCautions, HaveTheTopicsOfTheReferenceInWordsOfOurOwn) {
    const json& cautions = support::horticulture()["cautions"];
    ASSERT_EQ(core::allTradeCautions().size(), cautions.size());
    for (std::size_t i = 0; i < cautions.size(); ++i) {
        const core::TradeCaution& ours = core::allTradeCautions()[i];
        EXPECT_EQ(ours.name, cautions[i]["topic"].get<std::string>());
        EXPECT_NE(ours.text, cautions[i]["text"].get<std::string>()) << ours.name;
        EXPECT_FALSE(ours.source.empty()) << ours.name;
        EXPECT_EQ(&core::tradeCaution(ours.topic), &ours);
        if (cautions[i]["how"] == "P") {
            EXPECT_EQ(ours.source, core::commonPractice) << ours.name;
        }
    }
    for (const char* first : {"label", "safety data sheet", "local rules", "licensed people"})
        EXPECT_NE(core::tradeCaution(core::CautionTopic::Advice).text.find(first), std::string_view::npos) << first;
}

}  // namespace
