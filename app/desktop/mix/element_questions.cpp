// SPDX-License-Identifier: MIT
// What is in the solution, from salts by their formula and from what is printed on a bag.
#include <QCoreApplication>

#include "app/desktop/mix/mix_parts.h"
#include "app/desktop/mix/mix_questions.h"
#include "app/report/mix_words.h"

namespace desktop {

namespace {

using Kind = MixField::Kind;

struct ElementWords {
    Q_DECLARE_TR_FUNCTIONS(desktop::MixQuestions)
};

void askElements(MixForm& form) {
    const QString volume = QString::fromUtf8(core::wordFor(form.units().volume));
    const QString perVolume = QStringLiteral("g/%1").arg(volume);
    QStringList salts;
    for (const std::string_view salt : core::usualSalts()) salts << QString::fromUtf8(salt);
    form.addRows({.name = "salts", .label = ElementWords::tr("&Salts"), .field = "Salts", .mayBeBlank = true},
                 {{.title = ElementWords::tr("formula"), .objectName = QStringLiteral("mixSalt"), .offers = salts},
                  {.title = ElementWords::tr("amount"),
                   .objectName = QStringLiteral("mixSaltAmount"),
                   .kind = RowsEdit::Kind::Number,
                   .unit = perVolume}},
                 ElementWords::tr("Another sa&lt"), ElementWords::tr("Salt"), 1);
    form.addNumber(Kind::PerVolume, {.name = "bag",
                                     .label = ElementWords::tr("Of a &bag"),
                                     .field = "Bag",
                                     .after = QStringLiteral("g/%1"),
                                     .mayBeBlank = true});
    form.addRows({.name = "label", .label = ElementWords::tr("Its &label"), .field = "Label", .mayBeBlank = true},
                 {{.title = ElementWords::tr("as printed"),
                   .objectName = QStringLiteral("mixLabel"),
                   .offers = {"N", "NO3", "NH4", "P2O5", "K2O", "CaO", "MgO", "SO3", "Fe", "B"}},
                  {.title = ElementWords::tr("share"),
                   .objectName = QStringLiteral("mixLabelShare"),
                   .kind = RowsEdit::Kind::Number,
                   .unit = QStringLiteral("%")}},
                 ElementWords::tr("Another fi&gure"), ElementWords::tr("Figure"));
}

/// The bag as its label has it, or why it can't be; nothing where there is none.
std::optional<core::Result<core::FeedIngredient>> bagOf(const MixForm& form) {
    const std::vector<QStringList> lines = form.lines("label");
    const std::optional<double> grams = form.given("bag");
    if (!grams || lines.empty()) return {};
    std::vector<core::LabelFigure> label;
    for (const QStringList& line : lines)
        label.push_back({.word = line[0].toStdString(), .percent = figureOf(line[1])});
    return core::labelIngredient(ElementWords::tr("the bag").toStdString(), *grams, label);
}

MixReply replyElements(MixForm& form) {
    core::Refusals faults;
    std::vector<core::FeedIngredient> ingredients;
    const auto take = [&](core::Result<core::FeedIngredient> ingredient, const char* field) {
        if (ingredient) return ingredients.push_back(std::move(*ingredient));
        for (core::Refusal fault : ingredient.error()) {
            fault.field = field;
            faults.push_back(std::move(fault));
        }
    };
    for (const QStringList& line : form.lines("salts"))
        if (!line[1].isEmpty())
            take(core::saltIngredient(line[0].toStdString(), core::shownVolume(figureOf(line[1]), form.units().volume)),
                 "Salts");
    if (auto bag = bagOf(form)) take(std::move(*bag), "Label");
    MixReply reply{.faults = form.faults(std::move(faults))};
    if (!reply.faults.empty() || ingredients.empty()) return reply;
    const core::Result<core::SolutionElements> solution = core::solutionElements(ingredients);
    if (solution)
        reply.answer = report::answerOf(*solution, form.units());
    else
        reply.faults = solution.error();
    return reply;
}

}  // namespace

std::vector<MixQuestion> elementQuestions() {
    return {{QStringLiteral("elements"), ElementWords::tr("What is in the solution"),
             ElementWords::tr("Elements in mg/L from salts by their formula and from what is printed on a bag, beside "
                              "what each stage is fed. Salts, or a bag with its label, or both."),
             askElements, replyElements}};
}

}  // namespace desktop
