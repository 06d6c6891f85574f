// SPDX-License-Identifier: MIT
#include "app/desktop/settings/interval_words.h"

#include <QCoreApplication>
#include <cmath>

#include "app/plot/number_text.h"
#include "app/report/methods/notes.h"

namespace desktop {

namespace {

constexpr int exampleRooted = 18;
constexpr int exampleOf = 24;

struct IntervalWords {
    Q_DECLARE_TR_FUNCTIONS(desktop::IntervalWords)
};

core::Limits exampleLimits(core::RateInterval interval, double level) {
    return core::rateLimits(interval, exampleRooted, exampleOf, level);
}

}  // namespace

QString intervalWords(core::RateInterval interval) {
    switch (interval) {
        case core::RateInterval::Wilson:
            return IntervalWords::tr("Covers the true rate about as often as it says, also for few cuttings.");
        case core::RateInterval::WilsonContinuity:
            return IntervalWords::tr("Wilson\u2019s, made wider on purpose; covers at least as often for most rates.");
        case core::RateInterval::ClopperPearson:
            return IntervalWords::tr("Never covers less often than it says; wider than it has to be.");
        case core::RateInterval::Jeffreys:
            return IntervalWords::tr(
                "What to believe of the rate when nothing was known before; close to Wilson\u2019s.");
        case core::RateInterval::AgrestiCoull:
            return IntervalWords::tr("A rougher relative of Wilson\u2019s, a little wider; quick to do by hand.");
        case core::RateInterval::MidP:
            return IntervalWords::tr(
                "Clopper and Pearson\u2019s without most of its excess; covers about as often as it "
                "says.");
    }
    return {};
}

QString levelWords(double level) {
    // 99.9 % of 100 would be 100 again, and that is never promised.
    const int hundred = level > 0.99 ? 1000 : 100;
    return IntervalWords::tr("Of %1 such intervals about %2 hold the true rate.")
        .arg(plot::countText(hundred), plot::countText(static_cast<int>(std::lround(level * hundred))));
}

QString intervalExample(core::RateInterval interval, double level) {
    return IntervalWords::tr("%1 of %2 rooted gives %3.")
        .arg(plot::countText(exampleRooted), plot::countText(exampleOf),
             plot::limitsText(exampleLimits(interval, level)));
}

report::MethodNote intervalExampleNote(core::RateInterval interval, double level) {
    return report::noteOnInterval(interval, exampleRooted, exampleOf, level);
}

}  // namespace desktop
