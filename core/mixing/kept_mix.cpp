// SPDX-License-Identifier: MIT
#include "core/mixing/kept_mix.h"

#include <algorithm>

#include "core/field_faults.h"
#include "core/mixing/trade_cautions.h"

namespace core {

namespace {

constexpr int longestPart = 80'000;  // characters: all of it fits into one row of a table

void judgeCautions(const std::string& cautions, Refusals& faults) {
    if (auto fault = faultInLongText("Cautions", cautions, 0, longestPart)) return faults.push_back(std::move(*fault));
    for (std::size_t at = 0; at < cautions.size();) {
        const std::size_t end = std::min(cautions.find('\n', at), cautions.size());
        const std::string name = cautions.substr(at, end - at);
        if (std::ranges::find(allTradeCautions(), name, &TradeCaution::name) == allTradeCautions().end())
            faults.push_back(
                {"Cautions", quotable(name), "names of known cautions, one a line",
                 "Cautions has " + quotable(name) + "; names of known cautions, one a line, are allowed."});
        at = end + 1;
    }
}

}  // namespace

std::string_view wordFor(MixKind kind) {
    constexpr std::array<std::string_view, allMixKinds.size()> words{"nutrient",  "label", "tub",   "ph",
                                                                     "titration", "auxin", "medium"};
    return words[static_cast<std::size_t>(kind)];
}

std::optional<MixKind> mixKindFrom(std::string_view word) {
    for (const MixKind kind : allMixKinds)
        if (wordFor(kind) == word) return kind;
    return {};
}

Refusals faultsIn(const KeptMix& mix, Moment now) {
    constexpr Moment earliest = std::chrono::sys_days(std::chrono::year{1800} / 1 / 1);
    constexpr std::chrono::minutes leeway{5};  // as of readings: a clock may run a little fast
    Refusals faults;
    if (mix.madeAt < earliest || mix.madeAt > now + leeway)
        faults.push_back(outOfRange("Made at", isoText(mix.madeAt), "1800-01-01 to now"));
    collect(faults, faultInName("Title", mix.title));
    collect(faults, faultInLongText("Amounts", mix.amounts, 1, longestPart));
    collect(faults, faultInLongText("Workings", mix.workings, 0, longestPart));
    judgeCautions(mix.cautions, faults);
    if (mix.session.isSet() == mix.care.isSet())
        faults.push_back({"Kept with", mix.session.isSet() ? "a session and care" : "nothing",
                          "either a session or care of a station",
                          "Kept with is " + std::string(mix.session.isSet() ? "a session and care" : "nothing") +
                              "; either a session or care of a station is allowed."});
    return faults;
}

}  // namespace core
