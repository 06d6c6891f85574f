// SPDX-License-Identifier: MIT
// Nutrient for a volume, and what a reading tells.
#include <QCoreApplication>
#include <limits>

#include "app/desktop/mix/mix_parts.h"
#include "app/desktop/mix/mix_questions.h"
#include "app/report/mix_words.h"
#include "core/units/number_entry.h"

namespace desktop {

namespace {

using Kind = MixField::Kind;

struct FeedWords {
    Q_DECLARE_TR_FUNCTIONS(desktop::MixQuestions)
};

void askNutrient(MixForm& form) {
    form.addNumber(Kind::Volume, {"volume", FeedWords::tr("&Volume"), "Volume"});
    form.addNumber(Kind::Ec, {"target", FeedWords::tr("EC &wanted"), "EC wanted"});
    addWaterEc(form);
    addFullEc(form);
    addFeedParts(form);
    form.addScale();
    form.addSyringe();
}

MixReply replyNutrient(MixForm& form) {
    const core::NutrientQuestion question{.litres = form.number("volume"),
                                          .targetEc = form.number("target"),
                                          .waterEc = form.number("water"),
                                          .fullEc = form.number("full"),
                                          .parts = feedPartsOf(form),
                                          .tools = form.tools()};
    return replyTo<core::NutrientQuestion, core::NutrientDose>(form, question, core::faultsIn(question, form.units()),
                                                               core::nutrientDose, report::answerOf);
}

void askReading(MixForm& form) {
    form.addNumber(Kind::Volume, {"volume", FeedWords::tr("&Volume"), "Volume"});
    form.addNumber(Kind::Ec, {"read", FeedWords::tr("EC &read"), "EC read"});
    addWaterEc(form);
    addFullEc(form, true);
    form.addRows(
        {"went_in", FeedWords::tr("Went &in"), "Parts"},
        {{.title = FeedWords::tr("part"), .objectName = QStringLiteral("mixPart")},
         {.title = FeedWords::tr("amount"), .objectName = QStringLiteral("mixAmount"), .kind = RowsEdit::Kind::Number},
         {.title = FeedWords::tr("unit"),
          .objectName = QStringLiteral("mixUnit"),
          .kind = RowsEdit::Kind::Choice,
          .offers = {QStringLiteral("g"), QStringLiteral("mL")}}},
        FeedWords::tr("&Another part"), FeedWords::tr("Part"));
    const core::NutrientReading usual;
    form.addNumber(Kind::Ec, {"meter", FeedWords::tr("&Meter, steps of"), "Step of the meter", {}, true},
                   usual.meterStep);
}

MixReply replyReading(MixForm& form) {
    core::NutrientReading question{.litres = form.number("volume"),
                                   .readEc = form.number("read"),
                                   .waterEc = form.number("water"),
                                   .fullEc = form.given("full"),
                                   .meterStep = form.number("meter")};
    for (const QStringList& line : form.lines("went_in"))
        question.parts.push_back(
            {.name = line[0].toStdString(),
             .fullPerLitre = figureOf(line[1]),
             .unit = line[2] == QStringLiteral("mL") ? core::AmountUnit::Millilitres : core::AmountUnit::Grams});
    return replyTo<core::NutrientReading, core::LearntNutrient>(form, question, core::faultsIn(question, form.units()),
                                                                core::learnNutrient, report::answerOf);
}

}  // namespace

double figureOf(const QString& typed) {
    return core::numberFrom(typed.toStdString()).value_or(std::numeric_limits<double>::quiet_NaN());
}

void addWaterEc(MixForm& form) {
    form.addNumber(Kind::Ec, {"water", FeedWords::tr("EC of the wa&ter"), "EC of the water", {}, true});
}

void addFullEc(MixForm& form, bool mayBeBlank) {
    form.addNumber(Kind::Ec, {.name = "full",
                              .label = FeedWords::tr("EC at &full strength"),
                              .field = "EC at full strength",
                              .isShared = true,
                              .mayBeBlank = mayBeBlank});
}

void addFeedParts(MixForm& form) {
    const QString volume = QString::fromUtf8(core::wordFor(form.units().volume));
    form.addRows(
        {"parts", FeedWords::tr("&Parts, dose at full strength"), "Parts", {}, true},
        {{.title = FeedWords::tr("part"), .objectName = QStringLiteral("mixPart")},
         {.title = FeedWords::tr("full dose"), .objectName = QStringLiteral("mixDose"), .kind = RowsEdit::Kind::Number},
         {.title = FeedWords::tr("unit"),
          .objectName = QStringLiteral("mixUnit"),
          .kind = RowsEdit::Kind::Choice,
          .offers = {QStringLiteral("g/%1").arg(volume), QStringLiteral("mL/%1").arg(volume)}}},
        FeedWords::tr("&Another part"), FeedWords::tr("Part"), 1);
}

std::vector<core::FeedPart> feedPartsOf(const MixForm& form) {
    std::vector<core::FeedPart> parts;
    for (const QStringList& line : form.lines("parts"))
        parts.push_back({.name = line[0].toStdString(),
                         .fullPerLitre = core::shownVolume(figureOf(line[1]), form.units().volume),
                         .unit = line[2].startsWith(QStringLiteral("mL")) ? core::AmountUnit::Millilitres
                                                                          : core::AmountUnit::Grams});
    return parts;
}

std::vector<MixQuestion> feedQuestions() {
    return {{QStringLiteral("nutrient"), FeedWords::tr("Nutrient for a tub"),
             FeedWords::tr("How much of the feed makes so much water so strong. The label gives the full dose; its EC "
                           "is on the label too, or you read it once."),
             askNutrient, replyNutrient},
            {QStringLiteral("reading"), FeedWords::tr("What a reading tells"),
             FeedWords::tr("You weighed nutrient in and read the mix: what is its full dose, what does it add?"),
             askReading, replyReading}};
}

}  // namespace desktop
