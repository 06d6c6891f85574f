// SPDX-License-Identifier: MIT
#include "app/desktop/losses/losses_parts.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "app/desktop/figures/figure_panel.h"
#include "app/desktop/losses/losses_model.h"
#include "app/desktop/losses/unusual_panel.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/workspace.h"
#include "app/plot/goes_with_figure.h"
#include "app/plot/loss_by_month_figure.h"
#include "app/plot/loss_by_station_figure.h"
#include "app/plot/loss_pareto_figure.h"
#include "app/plot/strike_chart_figure.h"
#include "app/report/losses_words.h"
#include "app/report/methods/notes.h"

namespace desktop {

LossesParts::LossesParts(LossesModel& model, const PageContext& context, QWidget* parent)
    : QScrollArea(parent), model_(model), context_(context) {
    setObjectName(QStringLiteral("lossesScroll"));
    setAccessibleName(tr("Losses, in words and figures"));
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    auto* content = new QWidget;
    auto* layout = new QVBoxLayout(content);
    layout->setContentsMargins(0, 0, fontMetrics().height() / 2, 0);
    layout->setSpacing(fontMetrics().height() / 2);
    layout->addWidget(inWords_ = answerLabel(QStringLiteral("lossesInWords")));
    layout->addWidget(covered_ = quietLabel(QStringLiteral("lossesCovered")));
    layout->addWidget(unusual_ = new UnusualPanel);
    addHeading(tr("Lost to what, when and where"), *layout);
    pareto_ = addFigure(QStringLiteral("lossPareto"), *layout);
    months_ = addFigure(QStringLiteral("lossByMonth"), *layout);
    stations_ = addFigure(QStringLiteral("lossByStation"), *layout);
    addHeading(tr("Batch by batch: has the strike rate turned?"), *layout);
    addChartChooser(*layout);
    chartWords_ = addWords(QStringLiteral("lossChartWords"), *layout);
    chart_ = addFigure(QStringLiteral("lossChart"), *layout);
    addHeading(tr("What went with rooting"), *layout);
    goesWithWords_ = addWords(QStringLiteral("lossGoesWithWords"), *layout);
    goesWith_ = addFigure(QStringLiteral("lossGoesWith"), *layout);
    layout->addStretch();
    setWidget(content);
    connect(unusual_, &UnusualPanel::said, this, &LossesParts::said);
    connect(unusual_, &UnusualPanel::batchWanted, this, &LossesParts::batchWanted);
    connect(unusual_, &UnusualPanel::suspectsWanted, this, &LossesParts::suspectsWanted);
}

FigurePanel* LossesParts::addFigure(const QString& name, QVBoxLayout& layout) {
    auto* panel = new FigurePanel(name, context_);
    connect(panel, &FigurePanel::said, this, &LossesParts::said);
    layout.addWidget(panel);
    return panel;
}

QLabel* LossesParts::addWords(const QString& name, QVBoxLayout& layout) {
    auto* words = new QLabel;
    words->setObjectName(name);
    words->setTextFormat(Qt::PlainText);
    words->setWordWrap(true);
    words->setTextInteractionFlags(Qt::TextSelectableByMouse);
    layout.addWidget(words);
    return words;
}

void LossesParts::addHeading(const QString& text, QVBoxLayout& layout) {
    QLabel* heading = largeLabel({}, 1.15);
    heading->setText(text);
    heading->setWordWrap(true);
    layout.addSpacing(fontMetrics().height() / 2);
    layout.addWidget(heading);
}

void LossesParts::addChartChooser(QVBoxLayout& layout) {
    chartChoice_ = new QComboBox;
    chartChoice_->setObjectName(QStringLiteral("lossChartOf"));
    chartChoice_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    chartChoice_->setMinimumContentsLength(40);
    connect(chartChoice_, &QComboBox::activated, &model_, &LossesModel::chooseChart);
    auto* caption = new QLabel(tr("&Chart of"));
    caption->setBuddy(chartChoice_);
    chartRow_ = new QWidget;
    auto* row = new QHBoxLayout(chartRow_);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(caption);
    row->addWidget(chartChoice_);
    row->addStretch();
    layout.addWidget(chartRow_);
}

void LossesParts::showAnswer() {
    const auto answer = model_.view().answer;
    if (answer == nullptr) return;
    inWords_->setText(QString::fromStdString(answer->losses.inWords));
    covered_->setText(report::coveredText(answer->losses));
    unusual_->show(*answer, context_.workspace.shelves());
    pareto_->setFigure(plot::lossParetoFigure(answer->losses), report::notesOnLosses(answer->losses));
    months_->setFigure(plot::lossByMonthFigure(answer->losses), report::notesOnLossesByMonth(answer->losses));
    stations_->setFigure(plot::lossByStationFigure(answer->losses), report::notesOnLossesByStation(answer->losses));
    goesWithWords_->setText(report::goesWithText(answer->goesWith));
    goesWith_->setFigure(plot::goesWithFigure(answer->goesWith, answer->losses.level),
                         report::notesOnGoesWith(answer->goesWith, answer->losses.level));
    // Where there is no regression the words say why; an empty picture would only take room.
    goesWith_->setVisible(!answer->goesWith.associations.empty());
    fillCharts();
}

void LossesParts::fillCharts() {
    const LossesView& view = model_.view();
    chartChoice_->clear();
    for (const report::ChartChoice& choice : view.answer->charts)
        chartChoice_->addItem(report::chartName(choice, context_.workspace.shelves()));
    chartChoice_->setCurrentIndex(chartChoice_->count() == 0 ? -1 : view.chart);
    chartRow_->setVisible(chartChoice_->count() > 0);
}

void LossesParts::showChart() {
    const LossesView& view = model_.view();
    if (view.isCharting) return;  // what stood there stays until the other is there
    chart_->setVisible(view.strikeChart != nullptr);
    if (view.strikeChart == nullptr) {
        chartWords_->setText(tr("A chart needs two batches of one plant by one method."));
        return chart_->setFigure(nullptr);
    }
    const int batches = view.answer->charts[static_cast<std::size_t>(view.chart)].batches;
    chartWords_->setText(report::chartText(*view.strikeChart, batches));
    chart_->setFigure(plot::strikeChartFigure(view.strikeChart->chart, {}, view.strikeChart->turn),
                      report::notesOnChart(view.strikeChart->chart, view.strikeChart->turn));
}

}  // namespace desktop
