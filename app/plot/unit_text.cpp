// SPDX-License-Identifier: MIT
#include "app/plot/unit_text.h"

#include <QCoreApplication>

#include "app/plot/number_text.h"

namespace plot {
namespace {

struct UnitText {
    Q_DECLARE_TR_FUNCTIONS(UnitText)
};

}  // namespace

QString lengthUnitText(core::LengthUnit unit) {
    return QString::fromUtf8(core::wordFor(unit));
}

QString lengthText(double millimetres, core::LengthUnit unit) {
    //: a length and its unit
    return UnitText::tr("%1 %2", "10 mm").arg(amountText(core::shownLength(millimetres, unit)), lengthUnitText(unit));
}

QString rootLengthText(const core::LogbookFacts& facts) {
    return lengthText(facts.rootLengthMillimetres, facts.units.length);
}

}  // namespace plot
