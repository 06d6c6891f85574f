// SPDX-License-Identifier: MIT
// What print and practice say of plants that are rooted from cuttings: when, how long, how many strike. Each figure names its source or says
// that it has none; what nobody has printed stays unknown. A grower's own records soon outweigh all of it.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace core {

/// How a figure was come by. PartlyRead: one end in a source, the other from memory or common practice.
enum class HowKnown { Unknown, Read, PartlyRead, FromMemory, CommonPractice };

/// Both ends may be known, one, or none.
struct ReferenceRange {
    std::optional<double> low{};
    std::optional<double> high{};
    HowKnown how{HowKnown::Unknown};
    std::string_view sources{};  // keys of referenceSource(), blanks between; none where it is common practice

    [[nodiscard]] bool isBand() const { return low && high; }
};

/// Days when roots were seen; the day on which an experiment was scored, by which roots had come but nobody knows since when; the trade's
/// usual range.
enum class DaysMeaning { Unknown, Seen, Scored, Usual };

/// Held in aerated or sprayed water, against mist over a solid medium.
enum class WaterCulture { Unknown, Better, Equal, Worse, Rooted, WellByPractice, PoorlyByPractice };

struct PlantReference {
    std::string_view botanicalName;  // without author; a hybrid has its ×
    std::string_view form;           // cultivar or group that the figures are of; empty: the plant as a whole
    std::string_view author;
    std::string_view commonName;
    std::string_view family;
    std::string_view cuttingKinds;  // commas between
    std::string_view season;
    DaysMeaning daysMeaning{};
    ReferenceRange days;    // to root
    ReferenceRange strike;  // of 100 stuck
    ReferenceRange auxin;   // mg/L; from 0: it roots without
    WaterCulture water{};
    std::string_view waterSources{};  // none where it is common practice
};

struct ReferenceSource {
    std::string_view key;
    std::string_view citation;
};

/// Every plant, by what growers call them: herbs, soft fruit and so on, one after another.
[[nodiscard]] const std::vector<PlantReference>& plantReferences();
/// Every source that a plant's figures name, in order of key.
[[nodiscard]] std::span<const ReferenceSource> referenceSources();
/// nullptr when there is none.
[[nodiscard]] const ReferenceSource* referenceSource(std::string_view key);

/// By botanical name; case, author and the sign of a hybrid (× or x) don't matter. Among several forms of a plant that of this cultivar is
/// taken, else the plant as a whole, else its only form. A species without figures of its own has those of its genus where the table
/// has it as a whole. nullptr when there is none, or several forms and nothing to choose by.
[[nodiscard]] const PlantReference* plantReferenceFor(std::string_view botanicalName, std::string_view cultivar = {});

/// "common practice, no source", "KREM", "from memory of DIRR", "ELHAAK, BIDAR, in part common practice", "unknown".
[[nodiscard]] std::string sourceWords(const ReferenceRange& range);
/// The keys one by one.
[[nodiscard]] std::vector<std::string_view> sourceKeys(std::string_view sources);

}  // namespace core
