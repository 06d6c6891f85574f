// SPDX-License-Identifier: MIT
#include <QStringList>
#include <algorithm>
#include <cmath>

#include "app/report/methods/note_numbers.h"
#include "app/report/methods/notes.h"
#include "app/report/methods/pair_numbers.h"

namespace report {
namespace {

using Strata = std::vector<core::StratumCounts>;

bool canTell(const core::StratumCounts& stratum) {
    const int rooted = stratum.firstRooted + stratum.secondRooted;
    return rooted > 0 && rooted < stratum.firstAssessed + stratum.secondAssessed;
}

// Those with two cuttings or more: one cutting alone has no variance, and R would divide by it.
Strata withSeveralCuttings(const Strata& strata) {
    Strata kept;
    std::copy_if(strata.begin(), strata.end(), std::back_inserter(kept),
                 [](const core::StratumCounts& stratum) { return stratum.firstAssessed + stratum.secondAssessed > 1; });
    return kept;
}

QString strataInWords(const Strata& strata) {
    constexpr std::size_t most = 12;
    QStringList words;
    for (const core::StratumCounts& stratum : std::span(strata).first(std::min(most, strata.size())))
        words << QStringLiteral("%1 %2/%3 against %4/%5")
                     .arg(named(stratum.name))
                     .arg(stratum.firstRooted)
                     .arg(stratum.firstAssessed)
                     .arg(stratum.secondRooted)
                     .arg(stratum.secondAssessed);
    if (strata.size() > most) words << QStringLiteral("and %1 more").arg(strata.size() - most);
    return words.join(QStringLiteral("; "));
}

MethodNote strataNote(const QString& page, const ComparedPair& compared, const Strata& strata) {
    MethodNote note = pairNote(page, compared);
    std::vector<int> rooted1, assessed1, rooted2, assessed2;
    for (const core::StratumCounts& stratum : strata) {
        rooted1.push_back(stratum.firstRooted);
        assessed1.push_back(stratum.firstAssessed);
        rooted2.push_back(stratum.secondRooted);
        assessed2.push_back(stratum.secondAssessed);
    }
    note.numbers[QStringLiteral("strata")] = strata.size() == 1
                                                 ? QStringLiteral("One plant or block")
                                                 : QStringLiteral("%1 plants or blocks").arg(strata.size());
    note.numbers[QStringLiteral("counts")] = strataInWords(strata);
    note.numbers[QStringLiteral("a_r")] = listForR(rooted1);
    note.numbers[QStringLiteral("n1_r")] = listForR(assessed1);
    note.numbers[QStringLiteral("c_r")] = listForR(rooted2);
    note.numbers[QStringLiteral("n2_r")] = listForR(assessed2);
    return note;
}

}  // namespace

std::vector<MethodNote> notesOnPlants(const core::Comparison& comparison, int pair) {
    if (pair < 0 || pair >= std::ssize(comparison.pairs)) return {};
    const ComparedPair compared = comparedPair(comparison, pair);
    const core::Pooled& pooled = compared.pair.pooled;
    std::vector<MethodNote> notes;
    Strata telling;
    std::copy_if(pooled.counts.begin(), pooled.counts.end(), std::back_inserter(telling), canTell);
    // 0 and infinite have no interval but "anything".
    if (pooled.oddsRatio && *pooled.oddsRatio > 0 && std::isfinite(*pooled.oddsRatio)) {
        MethodNote note = strataNote(QStringLiteral("pooled_over_plants"), compared, telling);
        put(note.numbers, QStringLiteral("odds_ratio"), *pooled.oddsRatio, 2);
        putLimits(note.numbers, pooled.oddsRatioLimits, 2);
        notes.push_back(std::move(note));
    }
    if (pooled.riskDifference) {
        MethodNote note = strataNote(QStringLiteral("pooled_difference"), compared, pooled.counts);
        put(note.numbers, QStringLiteral("difference"), *pooled.riskDifference);
        putLimits(note.numbers, pooled.riskDifferenceLimits);
        notes.push_back(std::move(note));
    }
    if (!telling.empty()) {
        MethodNote note =
            strataNote(QStringLiteral("difference_within_plants"), compared, withSeveralCuttings(pooled.counts));
        putP(note.numbers, QStringLiteral("p"), pooled.cmhP);
        notes.push_back(std::move(note));
    }
    if (pooled.agreementP) {
        MethodNote note = strataNote(QStringLiteral("do_plants_agree"), compared, telling);
        putCount(note.numbers, QStringLiteral("degrees"), static_cast<int>(telling.size()) - 1);
        putP(note.numbers, QStringLiteral("p"), *pooled.agreementP);
        notes.push_back(std::move(note));
    }
    return notes;
}

}  // namespace report
