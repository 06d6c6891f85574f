// SPDX-License-Identifier: MIT
#include "app/desktop/trials/trial_power_panel.h"

#include <QLabel>
#include <QVBoxLayout>
#include <chrono>
#include <cmath>

#include "app/desktop/figures/figure_panel.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/trials/trial_records.h"
#include "app/desktop/workspace.h"
#include "app/plot/chance_figure.h"
#include "app/plot/number_text.h"
#include "app/report/methods/notes.h"

namespace desktop {

namespace {

using namespace std::chrono_literals;
constexpr auto untilAsked = 250ms;
constexpr int mostAsked = 300;  // per arm; more takes seconds to work out, and few stick more

core::TrialPowerQuestion questionOf(const TrialDraft& draft, const TrialRecords& records, double expected) {
    return {.measure = draft.trial.measure,
            .expected = expected,
            .margin = draft.trial.margin.value_or(0),
            .level = records.shelves().facts.level,
            .arms = static_cast<int>(draft.trial.arms.size()),
            .correlation = records.spread().correlation,
            .batchesPerArm = draft.batchesPerArm(),
            .mostPerArm = mostAsked};
}

plot::ChanceCurve curveOf(const core::TrialPower& power) {
    const double points = 100 * power.question.margin;
    const QString margin = plot::decimalText(points, std::abs(points - std::round(points)) < 1e-9 ? 0 : 1);
    const bool isAsGood = power.question.measure == core::TrialMeasure::AsGoodAs;
    plot::ChanceCurve curve{
        .sentence = isAsGood
                        ? TrialPowerPanel::tr("Cuttings per arm and the chance of showing \u201cas good as, within %1 "
                                              "of 100\u201d")
                              .arg(margin)
                        : TrialPowerPanel::tr("Cuttings per arm and the chance of finding a difference of %1 of 100")
                              .arg(margin),
        .method =
            TrialPowerPanel::tr("Exact, over every outcome of both arms; batches that share luck count for less."),
        .numberCaption = TrialPowerPanel::tr("cuttings per arm"),
        .chanceCaption = TrialPowerPanel::tr("chance"),
        .points = {},
        .wanted = 0.8,
        .answer = power.perArmFor80,
        .nothing = {}};
    for (const core::PowerOfNumber& point : power.curve) curve.points.push_back({point.perArm, point.power});
    return curve;
}

}  // namespace

TrialPowerPanel::TrialPowerPanel(const PageContext& context, QWidget* parent)
    : QWidget(parent),
      context_(context),
      answer_(answerLabel(QStringLiteral("powerAnswer"))),
      planned_(new QLabel),
      restsOn_(quietLabel(QStringLiteral("powerRestsOn"))),
      warning_(cautionLabel(QStringLiteral("powerWarning"))),
      curve_(new FigurePanel(QStringLiteral("powerCurve"), context)) {
    planned_->setObjectName(QStringLiteral("powerOfPlanned"));
    planned_->setWordWrap(true);
    typing_.setSingleShot(true);
    typing_.setInterval(untilAsked);
    curve_->setMinimumHeight(fontMetrics().height() * 14);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    for (QWidget* part : std::initializer_list<QWidget*>{answer_, planned_, warning_, curve_, restsOn_})
        layout->addWidget(part);
    answer_->setText(tr("How many cuttings an arm needs stands here as soon as it can be said."));
    connect(&typing_, &QTimer::timeout, this, &TrialPowerPanel::start);
    connect(curve_, &FigurePanel::said, this, &TrialPowerPanel::said);
}

void TrialPowerPanel::ask(TrialDraft draft) {
    draft_ = std::move(draft);
    isAnswered_ = false;
    sums_.stop();
    typing_.start();
}

void TrialPowerPanel::start() {
    if (records_ != nullptr) return workOut();
    if (!context_.workspace.hasLogbook()) return;
    reading_.ask([](const db::Logbook& logbook, std::stop_token) { return TrialRecords::read(logbook); },
                 [this](std::shared_ptr<const TrialRecords> records) {
                     records_ = std::move(records);
                     workOut();
                 });
}

void TrialPowerPanel::workOut() {
    sums_.ask(
        [records = records_, draft = draft_](std::stop_token stop) {
            auto answer = std::make_shared<Answer>();
            answer->expected = core::expectedRateOf(draft.trial, draft.plants(), records->shelves(), records->batches(),
                                                    records->spread());
            const core::TrialPowerQuestion question =
                questionOf(draft, *records, draft.expected.value_or(answer->expected.rate));
            answer->power = core::trialPower(question, stop);
            if (answer->power && draft.trial.perArm && *draft.trial.perArm >= 1 &&
                *draft.trial.perArm <= question.mostPerArm)
                answer->ofPlanned = core::powerOf(question, *draft.trial.perArm);
            return std::shared_ptr<const Answer>(answer);
        },
        [this](const std::shared_ptr<const Answer>& answer) { tell(*answer); });
}

void TrialPowerPanel::tell(const Answer& answer) {
    isAnswered_ = true;
    if (!answer.power) {
        answer_->setText(sentencesOf(answer.power.error()));
        planned_->clear();
        showCautions(*warning_, {});
        return curve_->setFigure(nullptr);
    }
    answer_->setText(QString::fromStdString(answer.power->answerInWords));
    planned_->setText(answer.ofPlanned
                          ? tr("With %1 per arm the chance is %2.", "24 cuttings, 63 in 100")
                                .arg(plot::cuttingsText(*draft_.trial.perArm), plot::chanceText(*answer.ofPlanned))
                          : QString());
    planned_->setVisible(answer.ofPlanned.has_value());
    showCautions(*warning_, answer.power->warning.empty() ? std::vector<std::string>()
                                                          : std::vector<std::string>{answer.power->warning});
    restsOn_->setText(draft_.expected ? tr("Reckoned with the share that you expect.")
                                      : QString::fromStdString(answer.expected.inWords));
    curve_->setFigure(plot::chanceFigure(curveOf(*answer.power)), report::notesOnPower(*answer.power));
}

}  // namespace desktop
