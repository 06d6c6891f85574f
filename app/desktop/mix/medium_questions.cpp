// SPDX-License-Identifier: MIT
// Medium for trays, and the collar holes of a lid.
#include <QCoreApplication>

#include "app/desktop/mix/mix_parts.h"
#include "app/desktop/mix/mix_questions.h"
#include "app/report/drilling_template.h"
#include "app/report/mix_words.h"

namespace desktop {

namespace {

using Kind = MixField::Kind;

struct MediumWords {
    Q_DECLARE_TR_FUNCTIONS(desktop::MixQuestions)
};

void askMedium(MixForm& form) {
    form.addChoice(
        {"for", MediumWords::tr("Enough &for"), "Enough for"},
        {{QStringLiteral("trays"), MediumWords::tr("trays")}, {QStringLiteral("volume"), MediumWords::tr("a volume")}});
    form.addNumber(Kind::Volume, {"volume", MediumWords::tr("&Volume once mixed"), "Volume"});
    form.addNumber(Kind::Count, {"trays", MediumWords::tr("&Trays"), "Trays"});
    form.addNumber(Kind::Count, {"cells", MediumWords::tr("&Cells of a tray"), "Cells of a tray"});
    form.addNumber(Kind::Figure,
                   {"cell", MediumWords::tr("Volume of a c&ell"), "Volume of a cell", MediumWords::tr("mL")});
    form.addRows({"components", MediumWords::tr("&Parts"), "Components"},
                 {{.title = MediumWords::tr("component"),
                   .objectName = QStringLiteral("mixComponent"),
                   .offers = {MediumWords::tr("peat"), MediumWords::tr("coir"), MediumWords::tr("perlite"),
                              MediumWords::tr("vermiculite"), MediumWords::tr("bark"), MediumWords::tr("sand")}},
                  {.title = MediumWords::tr("parts"),
                   .objectName = QStringLiteral("mixComponentParts"),
                   .kind = RowsEdit::Kind::Number}},
                 MediumWords::tr("&Another component"), MediumWords::tr("Component"));
    const core::MediumQuestion usual;
    form.addNumber(
        Kind::Figure,
        {"loss", MediumWords::tr("&Loss in mixing"), "Loss in mixing", MediumWords::tr("%; 10 to 20 is usual")},
        usual.lossPercent);
    form.addJug();
}

MixReply replyMedium(MixForm& form) {
    const bool isByTrays = form.chosen("for") == QStringLiteral("trays");
    form.showField("volume", !isByTrays);
    for (const char* name : {"trays", "cells", "cell"}) form.showField(name, isByTrays);
    core::MediumQuestion question{
        .litres = form.number("volume"), .lossPercent = form.number("loss"), .tools = form.tools()};
    core::Refusals faults;
    if (isByTrays) {
        const core::Result<double> litres =
            core::trayLitres(form.count("trays"), form.count("cells"), form.number("cell"));
        question.litres = litres.value_or(1);  // only where it isn't asked for: the faults say why
        if (!litres) faults = litres.error();
    }
    for (const QStringList& line : form.lines("components"))
        question.components.push_back({.name = line[0].toStdString(), .parts = figureOf(line[1])});
    for (core::Refusal& fault : core::faultsIn(question, form.units())) faults.push_back(std::move(fault));
    return replyTo<core::MediumQuestion, core::MixedMedium>(form, question, std::move(faults), core::mixMedium,
                                                            report::answerOf);
}

void askLid(MixForm& form) {
    // A collar of 44 mm (1 3/4 in) is the usual one; the rest is to begin with (common practice, no source).
    constexpr double length = 600, width = 400, hole = 44, web = 20, edge = 20;
    form.addChoice(
        {"shape", MediumWords::tr("&Shape"), "Shape"},
        {{QStringLiteral("box"), MediumWords::tr("rectangular")}, {QStringLiteral("round"), MediumWords::tr("round")}});
    form.addNumber(Kind::Length, {"length", MediumWords::tr("&Length"), "Length"}, length);
    form.addNumber(Kind::Length, {"width", MediumWords::tr("&Width"), "Width"}, width);
    form.addNumber(Kind::Length, {"diameter", MediumWords::tr("D&iameter"), "Diameter"}, width);
    form.addNumber(Kind::Length, {"hole", MediumWords::tr("&Hole"), "Hole"}, hole);
    form.addNumber(Kind::Length, {"web", MediumWords::tr("We&b between holes"), "Web"}, web);
    form.addNumber(Kind::Length, {"edge", MediumWords::tr("E&dge to hole"), "Edge"}, edge);
}

MixReply replyLid(MixForm& form) {
    const bool isRound = form.chosen("shape") == QStringLiteral("round");
    form.showField("length", !isRound);
    form.showField("width", !isRound);
    form.showField("diameter", isRound);
    const core::Lid lid{.isRound = isRound,
                        .length = form.number(isRound ? "diameter" : "length"),
                        .width = form.number("width"),
                        .hole = form.number("hole"),
                        .web = form.number("web"),
                        .edge = form.number("edge")};
    MixReply reply{.faults = form.faults(core::faultsIn(lid, form.units().length))};
    if (!reply.faults.empty() || !form.missing().isEmpty()) return reply;
    const core::Result<core::LidHoles> holes = core::lidHoles(lid, form.units().length);
    if (!holes) return {.faults = holes.error()};
    reply.answer = report::answerOf(*holes, form.units());
    reply.lid = DrawnLid{lid, holes->better(), report::holesText(lid, holes->better(), form.units().length)};
    return reply;
}

}  // namespace

std::vector<MixQuestion> mediumQuestions() {
    return {{QStringLiteral("medium"), MediumWords::tr("Medium by parts"),
             MediumWords::tr("How much of each component, with what is lost when fine fills coarse."), askMedium,
             replyMedium}};
}

std::vector<MixQuestion> lidQuestions() {
    return {{QStringLiteral("lid"), MediumWords::tr("Collar holes in a lid"),
             MediumWords::tr("How many holes a lid holds in square and in staggered rows."), askLid, replyLid}};
}

}  // namespace desktop
