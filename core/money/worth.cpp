// SPDX-License-Identifier: MIT
#include "core/money/worth.h"

namespace core {

std::string_view wordFor(WorthVerdict verdict) {
    switch (verdict) {
        case WorthVerdict::NothingPriced:
            return "nothing priced";
        case WorthVerdict::TooFew:
            return "too few";
        case WorthVerdict::CannotTellMethodFromStation:
            return "method or station";
        case WorthVerdict::CannotTellYet:
            return "cannot tell yet";
        case WorthVerdict::BetterAndCheaper:
            return "better and cheaper";
        case WorthVerdict::DearerPays:
            return "dearer pays";
        case WorthVerdict::CheaperPays:
            return "cheaper pays";
    }
    return "";
}

std::optional<double> TurningLine::dearRateFor(double cheapRate) const {
    const double each = cheap / cheapRate + shift;
    if (!(each > 0)) return {};
    const double rate = dear / each;
    return rate <= 1 ? std::optional(rate) : std::nullopt;
}

}  // namespace core
