// SPDX-License-Identifier: MIT
#include "core/plants/plant_reference.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

namespace {

using core::HowKnown;
using core::PlantReference;
using core::ReferenceRange;

bool needsSource(HowKnown how) {
    return how == HowKnown::Read || how == HowKnown::PartlyRead || how == HowKnown::FromMemory;
}

/// What is wrong with how a figure is vouched for; empty: nothing.
std::string faultIn(const ReferenceRange& range) {
    const bool isThere = range.low || range.high;
    if (isThere == (range.how == HowKnown::Unknown)) return isThere ? "a figure from nowhere" : "a source of nothing";
    const auto keys = core::sourceKeys(range.sources);
    if (needsSource(range.how) == keys.empty()) return "source and kind don't agree";
    for (const auto key : keys)
        if (core::referenceSource(key) == nullptr) return "no such source: " + std::string(key);
    if (range.isBand() && *range.low > *range.high) return "the wrong way round";
    return {};
}

std::string faultInWater(const PlantReference& row) {
    using core::WaterCulture;
    const bool isRead = row.water == WaterCulture::Better || row.water == WaterCulture::Equal ||
                        row.water == WaterCulture::Worse || row.water == WaterCulture::Rooted;
    const auto keys = core::sourceKeys(row.waterSources);
    if (isRead == keys.empty()) return "source and kind don't agree";
    for (const auto key : keys)
        if (core::referenceSource(key) == nullptr) return "no such source: " + std::string(key);
    return {};
}

TEST(PlantReferences, HaveNoFigureWithoutASource) {
    ASSERT_GE(core::plantReferences().size(), 120U);
    for (const PlantReference& row : core::plantReferences()) {
        SCOPED_TRACE(std::string(row.botanicalName) + " " + std::string(row.form));
        EXPECT_EQ(faultIn(row.days), "");
        EXPECT_EQ(faultIn(row.strike), "");
        EXPECT_EQ(faultIn(row.auxin), "");
        EXPECT_EQ(faultInWater(row), "");
        EXPECT_EQ(row.daysMeaning == core::DaysMeaning::Unknown, row.days.how == HowKnown::Unknown);
    }
}

TEST(PlantReferences, AreRefusedByThatTestWhenAFigureHasNone) {
    EXPECT_NE(faultIn({.low = 20, .high = 30}), "");
    EXPECT_NE(faultIn({.low = 20, .high = 30, .how = HowKnown::Read}), "");
    EXPECT_NE(faultIn({.low = 20, .high = 30, .how = HowKnown::Read, .sources = "NOBODY1900"}), "");
    EXPECT_NE(faultIn({.low = 20, .high = 30, .how = HowKnown::CommonPractice, .sources = "KREM"}), "");
    EXPECT_NE(faultIn({.how = HowKnown::Read, .sources = "KREM"}), "");
    EXPECT_NE(faultIn({.low = 30, .high = 20, .how = HowKnown::CommonPractice}), "");
    EXPECT_EQ(faultIn({.low = 20, .high = 30, .how = HowKnown::CommonPractice}), "");
    EXPECT_EQ(faultIn({}), "");
}

TEST(PlantReferences, StayWithinWhatFiguresCanBe) {
    std::set<std::pair<std::string_view, std::string_view>> names;
    for (const PlantReference& row : core::plantReferences()) {
        SCOPED_TRACE(row.botanicalName);
        EXPECT_TRUE(names.insert({row.botanicalName, row.form}).second);
        EXPECT_FALSE(row.commonName.empty());
        EXPECT_FALSE(row.family.empty());
        EXPECT_FALSE(row.cuttingKinds.empty());
        EXPECT_FALSE(row.season.empty());
        for (const auto end : {row.strike.low, row.strike.high}) EXPECT_TRUE(!end || (*end >= 0 && *end <= 100));
        for (const auto end : {row.days.low, row.days.high}) EXPECT_TRUE(!end || (*end >= 1 && *end <= 365));
        for (const auto end : {row.auxin.low, row.auxin.high}) EXPECT_TRUE(!end || (*end >= 0 && *end <= 20'000));
    }
}

TEST(ReferenceSources, AreInOrderAndAllUsed) {
    std::set<std::string_view> used;
    for (const PlantReference& row : core::plantReferences())
        for (const auto sources : {row.days.sources, row.strike.sources, row.auxin.sources, row.waterSources})
            for (const auto key : core::sourceKeys(sources)) used.insert(key);
    const auto sources = core::referenceSources();
    EXPECT_TRUE(std::ranges::is_sorted(sources, {}, &core::ReferenceSource::key));
    EXPECT_EQ(sources.size(), used.size());
    for (const auto& source : sources) {
        EXPECT_TRUE(used.contains(source.key)) << source.key;
        EXPECT_FALSE(source.citation.empty());
    }
    EXPECT_EQ(core::referenceSource("NOBODY1900"), nullptr);
    EXPECT_EQ(core::referenceSource(""), nullptr);
}

std::string commonNameOf(std::string_view name, std::string_view cultivar = {}) {
    const PlantReference* row = core::plantReferenceFor(name, cultivar);
    return row == nullptr ? "none" : std::string(row->commonName);
}

TEST(PlantReferenceFor, FindsAPlantHoweverItsNameIsWritten) {
    for (const char* name : {"Salvia rosmarinus", "salvia ROSMARINUS", "Salvia rosmarinus Spenn.",
                             "  Salvia  rosmarinus ", "Salvia rosmarinus 'Blue Lagoon'"})
        EXPECT_EQ(commonNameOf(name), "rosemary") << name;
    EXPECT_EQ(commonNameOf("Salvia rosmarinus", "Blue Lagoon"), "rosemary");
    for (const char* name :
         {"Mentha × piperita", "Mentha x piperita L.", "Mentha ×piperita", "Mentha piperita", "mentha X piperita"})
        EXPECT_EQ(commonNameOf(name), "peppermint") << name;
    EXPECT_EQ(commonNameOf("Syringa pubescens subsp. patula"), "Manchurian lilac");
}

TEST(PlantReferenceFor, TakesTheFormThatIsMeant) {
    EXPECT_EQ(commonNameOf("Mentha suaveolens"), "apple mint");
    EXPECT_EQ(commonNameOf("Mentha suaveolens", "Variegata"), "pineapple mint");
    EXPECT_EQ(commonNameOf("Mentha suaveolens", "Bowles"), "apple mint");
    EXPECT_EQ(commonNameOf("Ilex crenata", "Convexa"), "Japanese holly");  // the only figures there are
    EXPECT_EQ(commonNameOf("Rosa"), "none");                               // several kinds and nothing to choose by
    EXPECT_EQ(commonNameOf("Rosa", "miniature"), "miniature rose");
    EXPECT_EQ(commonNameOf("Rosa x damascena"), "damask rose");
}

TEST(PlantReferenceFor, GoesUpToTheGenusOnlyWhereTheTableHasItAsAWhole) {
    EXPECT_EQ(commonNameOf("Salix viminalis"), "willow");
    EXPECT_EQ(commonNameOf("Populus tremula"), "none");  // the table has hybrid poplars
    EXPECT_EQ(commonNameOf("Populus L."), "poplar");
    EXPECT_EQ(commonNameOf("Rosa canina"), "none");
    EXPECT_EQ(commonNameOf("Salvia"), "none");
    EXPECT_EQ(commonNameOf("Mentha aquatica"), "none");
    EXPECT_EQ(commonNameOf("Baptisia australis"), "none");  // the table has a hybrid of it
    EXPECT_EQ(commonNameOf(""), "none");
    EXPECT_EQ(commonNameOf("× "), "none");
    EXPECT_EQ(commonNameOf("'Nikko'"), "none");
}

TEST(PlantReferenceFor, HasTheFiguresOfItsSources) {
    const PlantReference* lavender = core::plantReferenceFor("Lavandula angustifolia");
    ASSERT_NE(lavender, nullptr);
    EXPECT_EQ(lavender->strike.low, 80);
    EXPECT_EQ(lavender->strike.high, 90);
    EXPECT_EQ(core::sourceWords(lavender->strike), "KREM");
    EXPECT_EQ(core::sourceWords(lavender->days), "common practice, no source");
    const PlantReference* rosemary = core::plantReferenceFor("Salvia rosmarinus");
    EXPECT_EQ(core::sourceWords(rosemary->auxin), "ELHAAK, BIDAR, MAP_PT, GUDEVA, LYKO, in part common practice");
    const PlantReference* bay = core::plantReferenceFor("Laurus nobilis");
    EXPECT_EQ(core::sourceWords(bay->days), "from memory of DIRR");
    EXPECT_EQ(core::sourceWords(bay->strike), "unknown");
    const PlantReference* stoechas = core::plantReferenceFor("Lavandula stoechas");
    EXPECT_FALSE(stoechas->strike.low);  // only the best treatment was printed
    EXPECT_EQ(stoechas->strike.high, 70);
    EXPECT_EQ(core::plantReferenceFor("Lavandula dentata")->daysMeaning, core::DaysMeaning::Scored);
}

}  // namespace
