// SPDX-License-Identifier: MIT
#include "core/treatment/treatment.h"

#include "core/units/figure_text.h"

namespace core {

namespace {

std::string auxinText(const Auxin& auxin, Carrier carrier) {
    const std::string form = auxin.form == AuxinForm::Salt ? " (salt)" : "";
    const std::string unit = carrier == Carrier::Powder ? " mg/kg" : " mg/L";
    return auxin.name + form + " " + figureText(auxin.milligramsPerLitre) + unit;
}

}  // namespace

std::string description(const Treatment& treatment) {
    std::string text;
    for (const Auxin& auxin : treatment.auxins) {
        if (!text.empty()) text += " + ";
        text += auxinText(auxin, treatment.carrier);
    }
    const auto add = [&text](std::string_view part) {
        if (!text.empty()) text += ", ";
        text += part;
    };
    if (treatment.carrier != Carrier::None) add(wordFor(treatment.carrier));
    if (treatment.seconds > 0) add(std::to_string(treatment.seconds) + " s");
    if (treatment.isWounded) add("wounded");
    return text.empty() ? "none" : text;
}

std::string_view wordFor(Carrier carrier) {
    switch (carrier) {
        case Carrier::None:
            return "none";
        case Carrier::Gel:
            return "gel";
        case Carrier::Powder:
            return "powder";
        case Carrier::LiquidDip:
            return "liquid dip";
    }
    return "none";
}

std::string_view wordFor(AuxinForm form) {
    switch (form) {
        case AuxinForm::Acid:
            return "acid";
        case AuxinForm::Salt:
            return "salt";
    }
    return "acid";
}

}  // namespace core
