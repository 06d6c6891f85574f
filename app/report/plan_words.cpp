// SPDX-License-Identifier: MIT
#include "app/report/plan_words.h"

#include <QCoreApplication>

#include "app/plot/chance_figure.h"
#include "app/plot/number_text.h"

namespace report {

namespace {

struct InPlanWords {
    Q_DECLARE_TR_FUNCTIONS(PlanWords)
};

QString sentencesOfRefusals(const core::Refusals& refusals) {
    QStringList sentences;
    for (const core::Refusal& refusal : refusals) sentences << QString::fromStdString(refusal.sentence);
    return sentences.join(u' ');
}

void addSentence(QStringList& list, const std::string& sentence) {
    if (!sentence.empty()) list << QString::fromStdString(sentence);
}

void addWhen(PlanWords& words, const core::Result<core::When>& when) {
    if (!when) {
        words.when = sentencesOfRefusals(when.error());
        return;
    }
    words.when = QString::fromStdString(when->answerInWords);
    if (!when->warning.empty()) words.cautions.push_back(when->warning);
    for (const core::PlanDay& day : when->days)
        words.days << InPlanWords::tr("%1: %2", "day, what to do")
                          .arg(plot::dateText(day.on), QString::fromStdString(day.what));
}

}  // namespace

PlanWords planWords(const core::PlanAnswer& answer, const core::PlanFit* fit) {
    PlanWords words;
    if (answer.howMany) {
        words.answer = QString::fromStdString(answer.howMany->answerInWords);
        addSentence(words.restsOn, answer.howMany->trayMoreInWords);
        addSentence(words.restsOn, answer.howMany->recordsInWords);
        if (!answer.howMany->warning.empty()) words.cautions.push_back(answer.howMany->warning);
    } else {
        words.answer = sentencesOfRefusals(answer.howMany.error());
    }
    if (answer.when) addWhen(words, *answer.when);
    if (answer.when) addSentence(words.restsOn, answer.rooting.inWords);
    if (fit != nullptr) {
        if (fit->fits)
            addSentence(words.restsOn, fit->inWords);
        else
            words.cautions.push_back(fit->inWords);
    }
    return words;
}

std::shared_ptr<const plot::Figure> planCurve(const core::PlanAnswer& answer) {
    plot::ChanceCurve curve{.sentence = {},
                            .method = {},
                            .numberCaption = InPlanWords::tr("cuttings stuck"),
                            .chanceCaption = {},
                            .points = {},
                            .wanted = answer.plan.assurance,
                            .answer = {},
                            .nothing = InPlanWords::tr("There is no number to draw.")};
    curve.chanceCaption =
        InPlanWords::tr("chance of %1 or more", "a number of plants").arg(plot::plantsText(answer.plan.wanted));
    if (!answer.howMany) {
        curve.sentence = sentencesOfRefusals(answer.howMany.error());
        return plot::chanceFigure(std::move(curve));
    }
    curve.sentence = QString::fromStdString(answer.howMany->answerInWords);
    curve.method =
        answer.records.assessed > 0
            ? InPlanWords::tr("Beta-binomial, trays of %1 that differ; rests on %2 (%3 rooted of %4 assessed).")
                  .arg(plot::countText(answer.howMany->question.traySize),
                       plot::batchesText(static_cast<int>(answer.records.batches.size())),
                       plot::countText(answer.records.rooted), plot::countText(answer.records.assessed))
            : InPlanWords::tr("Beta-binomial, trays of %1 that differ; no batch of one's own to rest on.")
                  .arg(plot::countText(answer.howMany->question.traySize));
    for (const core::StuckChance& point : answer.howMany->curve) curve.points.push_back({point.stuck, point.chance});
    curve.answer = answer.howMany->stick;
    return plot::chanceFigure(std::move(curve));
}

}  // namespace report
