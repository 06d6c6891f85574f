// SPDX-License-Identifier: MIT
#include "app/console/mix_command.h"

#include <array>

#include "app/console/arguments.h"
#include "app/console/mix_output.h"
#include "app/console/mix_questions.h"
#include "app/console/words.h"

namespace console {

namespace {

constexpr std::array mixOptions = std::to_array<QuestionOption>({
    {"--volume", "V", "of the tub or the mix, in L or with its unit: 20, 5.3gal"},
    {"--filled", "V", "topup: what it is filled up to"},
    {"--target", "EC", "EC wanted, in mS/cm or with its unit: 1.0, 500ppm500"},
    {"--water", "EC", "EC of the water alone"},
    {"--full", "EC", "EC that full strength adds to pure water"},
    {"--now", "EC", "EC of what is in the tub"},
    {"--read", "EC", "reading: EC of the mixture"},
    {"--meter-step", "EC", "reading: smallest step of the meter (0.1)"},
    {"--part", "NAME=DOSE...",
     "full dose in a litre (nutrient, topup), what went in (reading), such as A=1.2 or B=4mL; medium: parts, coir=3",
     true},
    {"--salt", "FORMULA=G...", "elements: g/L of a salt, such as KNO3=0.5", true},
    {"--bag", "NAME=G", "elements: g/L of a bag with --label"},
    {"--label", "WORD=PERCENT...", "elements: what is printed on the bag, such as N=5 P2O5=11", true},
    {"--alkalinity", "A", "of the water in meq/L, or mg/L as CaCO3: 100ppm"},
    {"--ph", "PH", "pH now"},
    {"--target-ph", "PH", "pH wanted"},
    {"--with", "REAGENT", "phosphoric, nitric, sulfuric, citric, hydroxide, bicarbonate or carbonate"},
    {"--strength", "PERCENT", "of the reagent, by weight (100)"},
    {"--density", "D", "of a liquid reagent, in kg/L; without it, it is a solid"},
    {"--sample", "V", "titration: the jug that was tried"},
    {"--step", "ML=PH...", "titration: mL gone in altogether and the pH then, such as 0=7.6 0.5=6.7", true},
    {"--diluted-to", "ML", "titration: 1 mL of the bottle was made up to this (1)"},
    {"--trays", "N", "medium: or so many trays"},
    {"--cells", "N", "medium: of so many cells"},
    {"--cell-volume", "ML", "medium: of so many mL"},
    {"--loss", "PERCENT", "medium: lost in mixing (15)"},
    scaleOption,
    syringeOption,
    jugOption,
    cardOption,
    paperOption,
});

const std::vector<Question>& mixQuestions() {
    static const std::vector<Question> questions{
        {"nutrient",
         answerNutrient,
         {"--volume", "--target", "--water", "--full", "--part", "--scale", "--syringe", "--card", "--paper"}},
        {"reading",
         answerReading,
         {"--volume", "--read", "--water", "--full", "--part", "--meter-step", "--card", "--paper"}},
        {"elements", answerElements, {"--salt", "--bag", "--label", "--card", "--paper"}},
        {"dilute", answerDilution, {"--volume", "--now", "--target", "--water", "--jug", "--card", "--paper"}},
        {"topup",
         answerTopUp,
         {"--volume", "--filled", "--now", "--target", "--water", "--full", "--part", "--scale", "--syringe", "--jug",
          "--card", "--paper"}},
        {"ph",
         answerPh,
         {"--volume", "--alkalinity", "--ph", "--target-ph", "--with", "--strength", "--density", "--scale",
          "--syringe", "--card", "--paper"}},
        {"titration",
         answerTitration,
         {"--volume", "--sample", "--step", "--target-ph", "--diluted-to", "--syringe", "--card", "--paper"}},
        {"medium",
         answerMedium,
         {"--volume", "--trays", "--cells", "--cell-volume", "--part", "--loss", "--jug", "--card", "--paper"}}};
    return questions;
}

}  // namespace

std::string MixCommand::name() const {
    return "mix";
}

std::string MixCommand::summary() const {
    return tr("nutrient, elements, dilution, pH, medium: how much of what, with the formula and its source");
}

void MixCommand::declare(Options& options) {
    options.argument("QUESTION", tr("nutrient, reading, elements, dilute, topup, ph, titration or medium"), question_);
    options_.declare(options, mixOptions);
    options.flag("--json", tr("for machines"), isJson_);
}

int MixCommand::run(const Surroundings& surroundings, std::ostream& out, std::ostream&) {
    answerQuestion(name(), question_, mixQuestions(), options_,
                   {.isJson = isJson_, .out = out, .surroundings = &surroundings});
    return Done;
}

}  // namespace console
