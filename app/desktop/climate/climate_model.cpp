// SPDX-License-Identifier: MIT
#include "app/desktop/climate/climate_model.h"

#include <algorithm>

#include "app/desktop/climate/climate_choices.h"
#include "app/desktop/printing/printed_at.h"
#include "app/desktop/workspace.h"
#include "app/plot/climate_figure.h"
#include "app/report/climate_sheet.h"

namespace desktop {

namespace {

constexpr std::chrono::days week{7}, month{30};
constexpr int lastWeek = 1;  // among the spans: what is shown at first

template <class Choices>
int withinList(int place, const Choices& choices) {
    return place < static_cast<int>(choices.size()) ? place : 0;
}

template <class Choices>
const auto* chosenOf(int place, const Choices& choices) {
    const bool isThere = place >= 0 && place < static_cast<int>(choices.size());
    return isThere ? &choices[static_cast<std::size_t>(place)] : nullptr;
}

}  // namespace

ClimateModel::ClimateModel(Workspace& workspace, QObject* parent) : QObject(parent), workspace_(workspace) {
    connect(&workspace_, &Workspace::logbookChanged, this, &ClimateModel::forget);
    connect(&workspace_, &Workspace::logbookReplaced, this, &ClimateModel::startAfresh);
    view_.span = lastWeek;
}

core::StationId ClimateModel::station() const {
    const StationChoice* chosen = chosenOf(view_.station, view_.stations);
    return chosen == nullptr ? core::StationId{} : chosen->station;
}

void ClimateModel::chooseStation(int place) {
    if (place == view_.station || chosenOf(place, view_.stations) == nullptr) return;
    view_.station = place;
    view_.band = 0;
    // What is counted from a batch of the other station is gone.
    const SpanChoice* span = chosenOf(view_.span, view_.spans);
    if (span != nullptr && span->batch.isSet()) view_.span = lastWeek;
    view_.parts.clear();
    readChoices();
    ask();
}

void ClimateModel::chooseSpan(int place) {
    const SpanChoice* chosen = chosenOf(place, view_.spans);
    if (place == view_.span || chosen == nullptr) return;
    view_.span = place;
    // Since a batch was stuck: beside its own bands.
    for (std::size_t i = 0; i < view_.bands.size(); ++i)
        if (chosen->batch.isSet() && view_.bands[i].batch == chosen->batch) view_.band = static_cast<int>(i);
    emit choicesChanged();
    ask();
}

void ClimateModel::chooseBands(int place) {
    if (place == view_.band || chosenOf(place, view_.bands) == nullptr) return;
    view_.band = place;
    ask();
}

void ClimateModel::setWatched(bool isWatched) {
    isWatched_ = isWatched;
    if (!isWatched_ || !isStale_) return;
    readStations();
    ask();
}

void ClimateModel::forget() {
    reading_.stop();
    isStale_ = true;
    setWatched(isWatched_);
}

void ClimateModel::startAfresh() {
    view_ = {};
    view_.span = lastWeek;
    forget();
}

void ClimateModel::readStations() {
    const core::StationId before = station();
    view_.stations = workspace_.hasLogbook() ? stationChoices(workspace_.shelves()) : std::vector<StationChoice>();
    const auto same = std::ranges::find(view_.stations, before, &StationChoice::station);
    view_.station = same == view_.stations.end() ? 0 : static_cast<int>(same - view_.stations.begin());
    readChoices();
}

void ClimateModel::readChoices() {
    view_.spans.clear();
    view_.bands.clear();
    if (workspace_.hasLogbook() && station().isSet()) {
        const auto batches = batchesAt(station(), workspace_.batchLines());
        view_.spans = spanChoices(batches, workspace_.shelves());
        view_.bands = bandsChoices(batches, workspace_.shelves());
    }
    view_.span = withinList(view_.span, view_.spans);
    view_.band = withinList(view_.band, view_.bands);
    emit choicesChanged();
}

plot::ChartsQuestion ClimateModel::question() const {
    // What was read this very moment is part of it.
    const core::Moment now = workspace_.clock()() + std::chrono::seconds{1};
    plot::ChartsQuestion question{.station = station(), .from = {}, .to = now, .batch = {}, .stage = {}};
    if (const BandsChoice* bands = chosenOf(view_.band, view_.bands)) {
        question.batch = bands->batch;
        question.stage = bands->stage;
    }
    const SpanChoice* span = chosenOf(view_.span, view_.spans);
    if (span == nullptr) return question;
    if (span->span == ClimateSpan::LastDay) question.from = now - std::chrono::days{1};
    if (span->span == ClimateSpan::LastWeek) question.from = now - week;
    if (span->span == ClimateSpan::LastMonth) question.from = now - month;
    if (span->span == ClimateSpan::SinceSticking)
        for (const core::BatchLine& line : workspace_.batchLines())
            if (line.batch.id == span->batch) question.from = plot::dayStart(line.batch.stuckOn);
    return question;
}

void ClimateModel::ask() {
    isStale_ = false;
    reading_.stop();
    view_.fault.clear();
    view_.isWorking = workspace_.hasLogbook() && station().isSet();
    if (!view_.isWorking) {
        view_.parts.clear();
        emit viewChanged();
        return;
    }
    auto shelves = std::make_shared<const core::Shelves>(workspace_.shelves());
    reading_.ask(
        [shelves, question = question()](const db::Logbook& logbook, const std::stop_token& stop) {
            auto answer = std::make_shared<Answer>();
            for (plot::ClimateChart& chart : plot::stationCharts(logbook, *shelves, question)) {
                if (stop.stop_requested()) break;
                const QString words = wordsOn(chart, question.to);
                const core::ClimateQuantity quantity = chart.quantity;
                answer->parts.push_back({quantity, words, plot::climateFigure(std::move(chart))});
            }
            return std::shared_ptr<const Answer>(answer);
        },
        [this](const std::shared_ptr<const Answer>& answer) { tell(answer); },
        [this] {
            view_.isWorking = false;
            view_.parts.clear();
            view_.fault = tr("The readings could not be read.");
            emit viewChanged();
        });
    emit viewChanged();
}

void ClimateModel::tell(const std::shared_ptr<const Answer>& answer) {
    view_.isWorking = false;
    view_.parts = answer->parts;
    emit viewChanged();
}

std::shared_ptr<const report::Sheet> ClimateModel::sheet() const {
    if (view_.parts.empty() || view_.isWorking) return nullptr;
    report::ClimatePaper paper;
    paper.station = view_.stations[static_cast<std::size_t>(view_.station)].name;
    if (const SpanChoice* span = chosenOf(view_.span, view_.spans)) paper.span = span->name;
    if (const BandsChoice* bands = chosenOf(view_.band, view_.bands)) paper.bands = bands->name;
    for (const ClimatePart& part : view_.parts) paper.parts.push_back({part.words, part.figure});
    return std::make_shared<const report::Sheet>(
        report::climateSheet(paper, workspace_.shelves(), printedAt(workspace_)));
}

}  // namespace desktop
