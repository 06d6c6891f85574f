// SPDX-License-Identifier: MIT
#include "core/plants/plant_reference.h"

#include <algorithm>
#include <cctype>

#include "core/plants/reference/reference_rows.h"

namespace core {
namespace {

constexpr std::string_view hybridSign = "×";

std::vector<std::string_view> wordsOf(std::string_view text) {
    std::vector<std::string_view> words;
    while (true) {
        const std::size_t start = text.find_first_not_of(" \t");
        if (start == std::string_view::npos) return words;
        text.remove_prefix(start);
        const std::string_view word = text.substr(0, text.find_first_of(" \t"));
        words.push_back(word);
        text.remove_prefix(word.size());
    }
}

bool isSameIgnoringCase(std::string_view one, std::string_view other) {
    return std::ranges::equal(one, other,
                              [](unsigned char a, unsigned char b) { return std::tolower(a) == std::tolower(b); });
}

/// Words of a name without the signs of hybrids; a cultivar in quotes ends it.
std::vector<std::string_view> namePartsOf(std::string_view name) {
    name = name.substr(0, std::min(name.find('\''), name.find("‘")));
    std::vector<std::string_view> parts;
    for (std::string_view word : wordsOf(name)) {
        if (word.starts_with(hybridSign)) word.remove_prefix(hybridSign.size());
        if (!word.empty() && !isSameIgnoringCase(word, "x")) parts.push_back(word);
    }
    return parts;
}

bool isEpithet(std::string_view word) {
    return std::ranges::all_of(word, [](unsigned char letter) { return std::islower(letter) || letter == '-'; });
}

struct NameMatch {
    const PlantReference* row{};
    std::size_t parts{};  // words of its name
};

/// The row's name stands at the beginning of the name asked for, which may go on with an author.
std::optional<NameMatch> matchOf(const PlantReference& row, std::span<const std::string_view> asked) {
    const std::vector<std::string_view> own = namePartsOf(row.botanicalName);
    if (own.size() > asked.size()) return {};
    for (std::size_t i = 0; i < own.size(); ++i)
        if (!isSameIgnoringCase(own[i], asked[i])) return {};
    // Some form of a genus says nothing of another species.
    if (own.size() == 1 && !row.form.empty() && asked.size() > 1 && isEpithet(asked[1])) return {};
    return NameMatch{.row = &row, .parts = own.size()};
}

const PlantReference* chosenForm(std::span<const NameMatch> forms, std::string_view cultivar) {
    for (const NameMatch& each : forms)
        if (!cultivar.empty() && isSameIgnoringCase(each.row->form, cultivar)) return each.row;
    for (const NameMatch& each : forms)
        if (each.row->form.empty()) return each.row;
    return forms.size() == 1 ? forms.front().row : nullptr;
}

std::vector<PlantReference> allRows() {
    std::vector<PlantReference> rows;
    for (const auto part : {reference::herbs(), reference::herbaceousOrnamentals(), reference::houseplants(),
                            reference::softFruit(), reference::vegetables(), reference::woodyOrnamentals()})
        rows.insert(rows.end(), part.begin(), part.end());
    return rows;
}

std::string withCommas(std::string_view sources) {
    std::string words;
    for (const std::string_view key : wordsOf(sources)) words += (words.empty() ? "" : ", ") + std::string(key);
    return words;
}

}  // namespace

const std::vector<PlantReference>& plantReferences() {
    static const std::vector<PlantReference> rows = allRows();
    return rows;
}

const PlantReference* plantReferenceFor(std::string_view botanicalName, std::string_view cultivar) {
    const std::vector<std::string_view> asked = namePartsOf(botanicalName);
    if (asked.empty()) return nullptr;
    std::vector<NameMatch> best;
    for (const PlantReference& row : plantReferences()) {
        const std::optional<NameMatch> match = matchOf(row, asked);
        if (!match || (!best.empty() && match->parts < best.front().parts)) continue;
        if (!best.empty() && match->parts > best.front().parts) best.clear();
        best.push_back(*match);
    }
    return chosenForm(best, cultivar);
}

std::string sourceWords(const ReferenceRange& range) {
    switch (range.how) {
        case HowKnown::Unknown:
            return "unknown";
        case HowKnown::Read:
            return withCommas(range.sources);
        case HowKnown::PartlyRead:
            return withCommas(range.sources) + ", in part common practice";
        case HowKnown::FromMemory:
            return "from memory of " + withCommas(range.sources);
        case HowKnown::CommonPractice:
            return "common practice, no source";
    }
    return "unknown";
}

std::vector<std::string_view> sourceKeys(std::string_view sources) {
    return wordsOf(sources);
}

}  // namespace core
