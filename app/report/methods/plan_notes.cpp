// SPDX-License-Identifier: MIT
// How many to stick.
#include <cmath>

#include "app/report/methods/note_numbers.h"
#include "app/report/methods/notes.h"
#include "core/comparison/english.h"
#include "stats/planning/predictive_count.h"

namespace report {

std::vector<MethodNote> notesOnPlan(const core::HowMany& answer, const core::PastRecords& records) {
    // Without a rooted cutting of one's own the steps of the page lead nowhere: no known rate to begin with.
    if (!answer.stick || records.rooted == 0) return {};
    const core::HowManyQuestion& question = answer.question;
    const double rate = static_cast<double>(records.rooted) / records.assessed;
    const stats::CountToStick known = stats::countForKnownRate(question.wanted, rate, question.assurance);
    const stats::CountToStick unknown =
        stats::countForPastRecords(question.wanted, records.rooted, records.assessed, question.assurance);
    if (!known.count || !unknown.count) return {};
    MethodNote note{QStringLiteral("how_many_to_stick"), {}};
    Numbers& numbers = note.numbers;
    putCount(numbers, QStringLiteral("wanted"), question.wanted);
    putCount(numbers, QStringLiteral("rooted"), records.rooted);
    putCount(numbers, QStringLiteral("unrooted"), records.assessed - records.rooted);
    putCount(numbers, QStringLiteral("assessed"), records.assessed);
    putCount(numbers, QStringLiteral("naive"), static_cast<int>(std::ceil(question.wanted / rate)));
    put(numbers, QStringLiteral("assurance"), question.assurance, 3);
    put(numbers, QStringLiteral("rate"), rate);
    putCount(numbers, QStringLiteral("known"), *known.count);
    put(numbers, QStringLiteral("known_chance"), *known.achieved);
    putCount(numbers, QStringLiteral("count"), *unknown.count);
    put(numbers, QStringLiteral("chance"), *unknown.achieved);
    putCount(numbers, QStringLiteral("usable"), core::perHundred(question.pottedLive * question.rootedInTime));
    put(numbers, QStringLiteral("prior_rooted"), records.past.prior.successes, 1);
    put(numbers, QStringLiteral("prior"), records.past.prior.successes + records.past.prior.failures, 1);
    putCount(numbers, QStringLiteral("tray"), question.traySize);
    put(numbers, QStringLiteral("correlation"), records.correlation, 3);
    putCount(numbers, QStringLiteral("spread_count"), *answer.stick);
    put(numbers, QStringLiteral("spread_chance"), *answer.achieved);
    return {note};
}

}  // namespace report
