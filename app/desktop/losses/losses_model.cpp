// SPDX-License-Identifier: MIT
#include "app/desktop/losses/losses_model.h"

#include <algorithm>

#include "app/desktop/printing/printed_at.h"
#include "app/desktop/workspace.h"
#include "app/plot/strike_chart_figure.h"
#include "app/report/losses_sheet.h"
#include "app/report/losses_words.h"

namespace desktop {

namespace {

template <class Choices>
bool isAmong(int place, const Choices& choices) {
    return place >= 0 && place < static_cast<int>(choices.size());
}

template <class Choices>
const auto& chosenIn(int place, const Choices& choices) {
    return choices[static_cast<std::size_t>(place)];
}

}  // namespace

LossesModel::LossesModel(Workspace& workspace, QObject* parent) : QObject(parent), workspace_(workspace) {
    connect(&workspace_, &Workspace::logbookChanged, this, &LossesModel::forget);
    connect(&workspace_, &Workspace::logbookReplaced, this, &LossesModel::startAfresh);
}

void LossesModel::chooseSpan(int place) {
    if (place == view_.span || !isAmong(place, view_.spans)) return;
    view_.span = place;
    ask();
}

void LossesModel::choosePlant(int place) {
    if (place == view_.plant || !isAmong(place, view_.plants)) return;
    view_.plant = place;
    view_.chart = 0;
    ask();
}

void LossesModel::chooseMethod(int place) {
    if (place == view_.method || !isAmong(place, view_.methods)) return;
    view_.method = place;
    view_.chart = 0;
    ask();
}

void LossesModel::chooseChart(int place) {
    if (view_.answer == nullptr || place == view_.chart || !isAmong(place, view_.answer->charts)) return;
    view_.chart = place;
    drawChart();
}

void LossesModel::setWatched(bool isWatched) {
    isWatched_ = isWatched;
    if (!isWatched_ || !isStale_) return;
    readChoices();
    ask();
}

void LossesModel::forget() {
    reading_.stop();
    sums_.stop();
    charting_.stop();
    records_.reset();
    isStale_ = true;
    setWatched(isWatched_);
}

void LossesModel::startAfresh() {
    // What stands there is of another logbook, or of one that somebody else has changed.
    view_.answer.reset();
    view_.strikeChart.reset();
    view_.fault.clear();
    forget();
}

void LossesModel::readChoices() {
    const core::LossQuestion before = question();
    view_.spans = lossesSpans(workspace_.today());
    view_.plants.clear();
    view_.methods.clear();
    if (workspace_.hasLogbook()) {
        view_.plants = plantsWithBatches(workspace_.shelves(), workspace_.batchLines());
        view_.methods = methodsWithBatches(workspace_.shelves(), workspace_.batchLines());
    }
    keepChosen(before.plant, before.method);
    emit choicesChanged();
}

/// What was asked for may be gone by an undo or with another logbook.
void LossesModel::keepChosen(core::PlantId plant, core::MethodId method) {
    const auto ofPlant = std::ranges::find(view_.plants, plant, &LossesPlantChoice::plant);
    view_.plant = ofPlant == view_.plants.end() ? 0 : static_cast<int>(ofPlant - view_.plants.begin());
    const auto ofMethod = std::ranges::find(view_.methods, method, &LossesMethodChoice::method);
    view_.method = ofMethod == view_.methods.end() ? 0 : static_cast<int>(ofMethod - view_.methods.begin());
}

core::LossQuestion LossesModel::question() const {
    core::LossQuestion question;
    if (isAmong(view_.span, view_.spans))
        question.from = firstDayOf(chosenIn(view_.span, view_.spans).span, workspace_.today());
    if (question.from) question.until = workspace_.today();
    if (isAmong(view_.plant, view_.plants)) question.plant = chosenIn(view_.plant, view_.plants).plant;
    if (isAmong(view_.method, view_.methods)) question.method = chosenIn(view_.method, view_.methods).method;
    return question;
}

void LossesModel::ask() {
    isStale_ = false;
    sums_.stop();
    charting_.stop();
    view_.isCharting = false;
    view_.fault.clear();
    view_.isWorking = workspace_.hasLogbook() && !workspace_.batchLines().empty();
    if (!view_.isWorking) {
        view_.answer.reset();
        view_.strikeChart.reset();
    } else if (records_ != nullptr) {
        workOut();
    } else {
        reading_.ask(
            [](const db::Logbook& logbook, const std::stop_token&) {
                return std::make_shared<const report::LossesRecords>(report::lossesRecordsOf(logbook));
            },
            [this](Records records) {
                records_ = std::move(records);
                workOut();
            },
            [this] { fail(); });
    }
    emit viewChanged();
}

void LossesModel::workOut() {
    sums_.ask(
        [records = records_, question = question()](const std::stop_token& stop) {
            return std::make_shared<const report::LossesAnswer>(report::lossesAnswerOf(*records, question, stop));
        },
        [this](const Answer& answer) { tell(answer); });
}

void LossesModel::tell(const Answer& answer) {
    view_.isWorking = false;
    view_.answer = answer;
    if (!isAmong(view_.chart, answer->charts)) view_.chart = 0;
    drawChart();
    emit viewChanged();
}

void LossesModel::drawChart() {
    charting_.stop();
    view_.isCharting = isAmong(view_.chart, view_.answer->charts);
    if (!view_.isCharting) {
        view_.strikeChart.reset();
        emit chartChanged();
        return;
    }
    charting_.ask(
        [records = records_, choice = chosenIn(view_.chart, view_.answer->charts)](const std::stop_token&) {
            return std::make_shared<const report::BatchChart>(report::chartOf(*records, choice));
        },
        [this](const Chart& chart) {
            view_.isCharting = false;
            view_.strikeChart = chart;
            emit chartChanged();
        });
    emit chartChanged();
}

void LossesModel::fail() {
    view_.isWorking = false;
    view_.answer.reset();
    view_.strikeChart.reset();
    view_.fault = tr("The records could not be read.");
    emit viewChanged();
}

std::shared_ptr<const report::Sheet> LossesModel::sheet() const {
    if (view_.answer == nullptr || view_.isWorking || view_.isCharting) return nullptr;
    report::LossesPaper paper;
    paper.span = chosenIn(view_.span, view_.spans).name;
    if (view_.strikeChart != nullptr) {
        paper.chart = chosenIn(view_.chart, view_.answer->charts);
        paper.chartWords = report::chartText(*view_.strikeChart, paper.chart->batches);
        paper.chartFigure = plot::strikeChartFigure(view_.strikeChart->chart, {}, view_.strikeChart->turn);
    }
    return std::make_shared<const report::Sheet>(
        report::lossesSheet(*view_.answer, paper, workspace_.shelves(), printedAt(workspace_)));
}

}  // namespace desktop
