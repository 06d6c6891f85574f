// SPDX-License-Identifier: MIT
#include "app/report/several_arms_words.h"

#include <QCoreApplication>

#include "app/plot/number_text.h"

namespace report {
namespace {

struct SeveralArmsWords {
    Q_DECLARE_TR_FUNCTIONS(SeveralArmsWords)
};

constexpr double kLeastExpected = 5;  // Cochran's rule of thumb for the chi-square

}  // namespace

QString severalArmsText(const core::SeveralArms& several) {
    QString text =
        SeveralArmsWords::tr("Are all %1 arms alike? On batch rates: %2. As counted: %3 (chi-square).")
            .arg(plot::countText(several.arms),
                 several.batchRatesP
                     ? SeveralArmsWords::tr("%1 (analysis of variance)").arg(plot::pText(*several.batchRatesP))
                     : SeveralArmsWords::tr("it takes three batches in each arm to say"),
                 plot::pText(several.chiSquareP));
    if (several.smallestExpected < kLeastExpected)
        text += u' ' + SeveralArmsWords::tr("Some counts are small, so the chi-square is rough.");
    return text;
}

}  // namespace report
