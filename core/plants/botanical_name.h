// SPDX-License-Identifier: MIT
// A botanical name taken apart: genus, sign of a hybrid, species, rank below it, cultivar or group; and put together again as it was typed.
// It checks how a name is built, not whether anybody has published it.
//
//   const auto name = core::botanicalNameFrom("Mentha ×piperita 'Chocolate'");   // genus Mentha, hybrid species piperita, cultivar Chocolate
//
// Source    International Code of Nomenclature for algae, fungi, and plants (Shenzhen Code, 2018), articles 20 to 24 and H.1 to H.5;
//           International Code of Nomenclature for Cultivated Plants, 9th edition (2016); both from memory.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace core {

struct BotanicalName {
    std::string genusMark;  // "×", "× ", "x ", of a graft-chimaera "+" or "+ ": as written, with its blank; empty: none
    std::string genus;
    std::string speciesMark;   // "×", "× " or "x "; empty: none
    std::string species;       // epithet; empty: the genus, or all of it
    std::string undetermined;  // "sp." or "spp." in the place of an epithet
    std::string
        rank;  // "subsp.", "var.", "f.", of a genus "subg.", "sect." and so on as written, with notho- before it for a hybrid; empty: none
    std::string ofRank;       // the epithet of that rank: with a capital below a genus, without below a species
    std::string otherParent;  // of a hybrid's formula, what stands behind its ×: "alba"
    std::string parentsMark;  // "×" or "x" of a formula
    std::string author;       // told by its full stop, bracket or &: "Spenn."; names are kept without
    std::string group;        // of cultivars: "Lacecap", written "Lacecap Group"
    std::string cultivar;     // without its quotes
    bool hasCurlyQuotes{};    // around the cultivar

    bool operator==(const BotanicalName&) const = default;
};

/// Absent for what is not built like one, such as a trade name: that stays as it was typed. Blanks between words don't matter; letters do: a
/// genus has a capital, an epithet none.
[[nodiscard]] std::optional<BotanicalName> botanicalNameFrom(std::string_view text);
/// As it was typed, one blank between words.
[[nodiscard]] std::string textOf(const BotanicalName& name);
/// "genus Prunus, species laurocerasus, variety schipkaensis"
[[nodiscard]] std::string inWords(const BotanicalName& name);

/// A stretch of a name that is set in one type.
struct NameStretch {
    std::string text;
    bool isItalic{};

    bool operator==(const NameStretch&) const = default;
};

/// Genus and epithets italic; signs, ranks, authors, groups and cultivars upright. Joined they are textOf().
[[nodiscard]] std::vector<NameStretch> stretchesOf(const BotanicalName& name);

}  // namespace core
