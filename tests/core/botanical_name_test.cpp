// SPDX-License-Identifier: MIT
#include "core/plants/botanical_name.h"

#include <gtest/gtest.h>

#include <random>
#include <string>

#include "core/plants/plant_reference.h"

namespace {

using core::BotanicalName;

std::string readAs(std::string_view text) {
    const auto name = core::botanicalNameFrom(text);
    return name ? core::inWords(*name) : "as typed";
}

std::string setOut(std::string_view text) {
    const auto name = core::botanicalNameFrom(text);
    if (!name) return "as typed";
    std::string marked;
    for (const core::NameStretch& stretch : core::stretchesOf(*name))
        marked += stretch.isItalic ? "_" + stretch.text + "_" : stretch.text;
    return marked;
}

TEST(BotanicalName, IsTakenApartIntoGenusSpeciesAndRank) {
    EXPECT_EQ(readAs("Salvia rosmarinus"), "genus Salvia, species rosmarinus");
    EXPECT_EQ(readAs("Populus"), "genus Populus");
    EXPECT_EQ(readAs("Rosa sp."), "genus Rosa, species not determined");
    EXPECT_EQ(readAs("Syringa pubescens subsp. patula"), "genus Syringa, species pubescens, subspecies patula");
    EXPECT_EQ(readAs("Acer rubrum var. trilobum"), "genus Acer, species rubrum, variety trilobum");
    EXPECT_EQ(readAs("Fagus sylvatica f. purpurea"), "genus Fagus, species sylvatica, form purpurea");
    EXPECT_EQ(readAs("Rubus subg. Rubus"), "genus Rubus, subgenus Rubus");
    EXPECT_EQ(readAs("Arctostaphylos uva-ursi"), "genus Arctostaphylos, species uva-ursi");
    EXPECT_EQ(readAs("Isoëtes lacustris"), "genus Isoëtes, species lacustris");
    EXPECT_EQ(readAs("Salvia rosmarinus Spenn."), "genus Salvia, species rosmarinus, author Spenn.");
}

TEST(BotanicalName, KnowsHybridsHoweverTheirSignIsWritten) {
    EXPECT_EQ(readAs("×Cuprocyparis leylandii"), "hybrid genus Cuprocyparis, species leylandii");
    EXPECT_EQ(readAs("× Cuprocyparis leylandii"), "hybrid genus Cuprocyparis, species leylandii");
    for (const char* name : {"Mentha ×piperita", "Mentha × piperita", "Mentha x piperita"})
        EXPECT_EQ(readAs(name), "genus Mentha, hybrid species piperita") << name;
    EXPECT_EQ(readAs("Baptisia australis × alba"), "genus Baptisia, species australis, crossed with alba");
    EXPECT_EQ(readAs("Salvia officinalis × Salvia lavandulifolia"),
              "genus Salvia, species officinalis, crossed with Salvia lavandulifolia");
    EXPECT_EQ(readAs("Mentha ×piperita nothosubsp. citrata"),
              "genus Mentha, hybrid species piperita, hybrid subspecies citrata");
    EXPECT_EQ(readAs("+Laburnocytisus adamii"), "graft-chimaera Laburnocytisus, species adamii");
}

TEST(BotanicalName, KeepsCultivarsAndGroupsApart) {
    EXPECT_EQ(readAs("Rosa 'Peace'"), "genus Rosa, cultivar Peace");
    EXPECT_EQ(readAs("Lavandula angustifolia ‘Hidcote’"), "genus Lavandula, species angustifolia, cultivar Hidcote");
    EXPECT_EQ(readAs("Hydrangea macrophylla Lacecap Group"), "genus Hydrangea, species macrophylla, group Lacecap");
}

TEST(BotanicalName, LeavesWhatIsNotBuiltLikeOneAsItWasTyped) {
    for (const char* text : {"",
                             " ",
                             "×",
                             "x",
                             "rosemary",
                             "salvia rosmarinus",
                             "Salvia Rosmarinus",
                             "SALVIA",
                             "S. officinalis",
                             "Blue Lagoon",
                             "Flower Carpet Pink",
                             "Salvia rosmarinus Blue Lagoon",
                             "Salvia rosmarinus 'Blue",
                             "Salvia rosmarinus Blue'",
                             "'Blue Lagoon'",
                             "Rosa 'A' 'B'",
                             "Rosa ''",
                             "Salvia -a",
                             "Acer rubrum var.",
                             "Acer rubrum var. X",
                             "Acer var. trilobum",
                             "Salvia 2 rosmarinus",
                             "Rosa × ",
                             "Rosa × 7"})
        EXPECT_EQ(readAs(text), "as typed") << text;
}

TEST(BotanicalName, SetsGenusAndEpithetsItalicAndAllElseUpright) {
    EXPECT_EQ(setOut("×Cuprocyparis leylandii"), "×_Cuprocyparis leylandii_");
    EXPECT_EQ(setOut("Mentha ×piperita 'Chocolate'"), "_Mentha _×_piperita _'Chocolate'");
    EXPECT_EQ(setOut("Acer rubrum var. trilobum"), "_Acer rubrum _var. _trilobum_");
    EXPECT_EQ(setOut("Hydrangea macrophylla Lacecap Group"), "_Hydrangea macrophylla _Lacecap Group");
}

TEST(BotanicalName, ReadsEveryNameOfTheReferenceTable) {
    for (const core::PlantReference& row : core::plantReferences()) {
        const auto name = core::botanicalNameFrom(row.botanicalName);
        ASSERT_TRUE(name.has_value()) << row.botanicalName;
        EXPECT_EQ(core::textOf(*name), row.botanicalName);
    }
}

class NamesByChance {
  public:
    explicit NamesByChance(unsigned seed) : random_(seed) {}

    BotanicalName next() {
        BotanicalName name;
        name.genusMark = any({"", "", "", "×", "× ", "x ", "+", "+ "});
        name.genus = letters(1, 'A') + epithet();
        if (upTo(8) == 0) {
            name.undetermined = any({"sp.", "spp."});
        } else if (upTo(8) > 0) {
            name.speciesMark = any({"", "", "×", "× ", "x "});
            name.species = epithet();
        }
        if (!name.species.empty() && upTo(3) == 0) {
            name.rank = any({"subsp.", "ssp.", "convar.", "var.", "subvar.", "f.", "fo.", "subf.", "nothosubsp."});
            name.ofRank = epithet();
        }
        if (name.species.empty() && name.undetermined.empty()) {
            name.rank = any({"subg.", "sect.", "subsect.", "ser."});
            name.ofRank = letters(1, 'A') + epithet();
        }
        if (!name.species.empty() && upTo(6) == 0) {
            name.parentsMark = any({"×", "x"});
            name.otherParent = upTo(1) == 0 ? epithet() : letters(1, 'A') + epithet() + " " + epithet();
        }
        const int tail = upTo(6);
        if (tail == 0) name.author = any({"L.", "(L.) Druce", "Willd. ex Klotzsch", "W.Bull", "DC. & Lam."});
        if (tail == 1) name.group = any({"Lacecap", "Japanese Spring", "Gemmifera"});
        if (upTo(2) == 0) {
            name.cultivar = any({"Peace", "Blue Lagoon", "No. 5", "Élan", "Graham Thomas"});
            name.hasCurlyQuotes = upTo(1) == 0;
        }
        return name;
    }

    std::string nonsense() {
        std::string text;
        for (int word = upTo(5); word > 0; --word)
            text += any({"Salvia", "alba", "×", "×alba", "x",   "var.", "'", "'A'", "‘", "’",
                         "L.",     "(",    "+", "Group", "sp.", "\xC3", "é", "-",   " ", "\t"}) +
                    any({"", " "});
        return text;
    }

  private:
    int upTo(int most) { return std::uniform_int_distribution<int>(0, most)(random_); }
    std::string any(std::initializer_list<const char*> words) {
        return *(words.begin() + upTo(static_cast<int>(words.size()) - 1));
    }
    std::string letters(int count, char first) {
        std::string word;
        for (; count > 0; --count) word += static_cast<char>(first + upTo(25));
        return word;
    }
    std::string epithet() {
        std::string word = letters(2 + upTo(8), 'a');
        if (upTo(7) == 0) word += "-" + letters(2, 'a');
        return upTo(9) == 0 ? word + "ë" : word;
    }

    std::mt19937 random_;
};

TEST(BotanicalName, ComesBackFromItsTextWhateverItIsMadeOf) {
    const unsigned seed = std::random_device{}();
    RecordProperty("seed", std::to_string(seed));
    NamesByChance names(seed);
    for (int round = 0; round < 5000; ++round) {
        const BotanicalName made = names.next();
        const std::string text = core::textOf(made);
        const auto read = core::botanicalNameFrom(text);
        ASSERT_TRUE(read.has_value()) << text << "; seed " << seed;
        ASSERT_EQ(*read, made) << text << "; read as " << core::inWords(*read) << "; seed " << seed;
    }
}

TEST(BotanicalName, NeverChangesATextThatItReads) {
    const unsigned seed = std::random_device{}();
    RecordProperty("seed", std::to_string(seed));
    NamesByChance names(seed);
    for (int round = 0; round < 20'000; ++round) {
        const std::string text = names.nonsense();
        const auto read = core::botanicalNameFrom(text);
        if (!read) continue;
        const std::string again = core::textOf(*read);
        ASSERT_EQ(core::botanicalNameFrom(again), read) << text << "; seed " << seed;
        std::string bare, bareAgain;
        for (const char letter : text) bare += letter == ' ' || letter == '\t' ? "" : std::string(1, letter);
        for (const char letter : again) bareAgain += letter == ' ' ? "" : std::string(1, letter);
        ASSERT_EQ(bareAgain, bare) << text << "; seed " << seed;
    }
}

}  // namespace
