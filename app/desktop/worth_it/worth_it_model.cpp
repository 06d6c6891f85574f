// SPDX-License-Identifier: MIT
#include "app/desktop/worth_it/worth_it_model.h"

#include <algorithm>
#include <set>
#include <unordered_set>
#include <utility>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/printing/printed_at.h"
#include "app/desktop/workspace.h"
#include "app/report/logbook_costs.h"
#include "app/report/worth_sheet.h"

namespace desktop {

namespace {

std::optional<double> priceOfADayOn(core::Date day, const std::vector<core::Price>& prices) {
    const auto found = std::ranges::find_if(prices, [&](const core::Price& price) {
        return price.kind == core::PriceKind::DaySooner && core::holdsOn(day, price, prices);
    });
    if (found == prices.end()) return {};
    constexpr double parts = 10'000;  // of a whole one
    return static_cast<double>(found->tenThousandths) / parts;
}

bool isPairOf(const core::WorthOfPair& pair, core::MethodId one, core::MethodId other) {
    return (pair.dear.method == one && pair.cheap.method == other) ||
           (pair.dear.method == other && pair.cheap.method == one);
}

}  // namespace

WorthItModel::WorthItModel(Workspace& workspace, QObject* parent) : QObject(parent), workspace_(workspace) {
    connect(&workspace_, &Workspace::logbookChanged, this, &WorthItModel::forget);
    connect(&workspace_, &Workspace::logbookReplaced, this, &WorthItModel::startAfresh);
}

bool WorthItModel::hasLogbook() const {
    return workspace_.hasLogbook();
}

const core::Shelves& WorthItModel::shelves() const {
    return workspace_.shelves();
}

const core::WorthOfPair& WorthItModel::pair() const {
    return state_.worth->pairs[static_cast<std::size_t>(state_.pair)];
}

void WorthItModel::choosePlant(core::PlantId plant) {
    question_.plant = plant;
    ask();
}

void WorthItModel::chooseYear(int year) {
    using namespace std::chrono;
    year_ = year;
    question_.from.reset();
    question_.to.reset();
    if (year != 0) {
        question_.from = core::Date{std::chrono::year{year}, January, day{1}};
        question_.to = core::Date{std::chrono::year{year}, December, day{31}};
    }
    ask();
}

void WorthItModel::setWorthOfADay(std::optional<double> amount) {
    if (question_.worthOfADay == amount) return;
    question_.worthOfADay = amount;
    ask();
}

void WorthItModel::chooseFirst(core::MethodId method) {
    if (method == second_) second_ = first_;
    first_ = method;
    findPair();
    emit stateChanged();
}

void WorthItModel::chooseSecond(core::MethodId method) {
    if (method == first_) first_ = second_;
    second_ = method;
    findPair();
    emit stateChanged();
}

void WorthItModel::setWatched(bool isWatched) {
    isWatched_ = isWatched;
    if (isWatched_ && isStale_) ask();
}

void WorthItModel::stop() {
    if (!state_.isWorking) return;
    reading_.stop();
    sums_.stop();
    state_.isWorking = false;
    state_.isReading = false;
    state_.isStopped = true;
    emit stateChanged();
}

void WorthItModel::workItOut() {
    ask();
}

void WorthItModel::startAfresh() {
    // What stands there is of another logbook, or of one that somebody else has changed.
    state_.worth.reset();
    state_.pair = -1;
    state_.payOff.reset();
    state_.fault.clear();
    forget();
}

void WorthItModel::forget() {
    reading_.stop();
    sums_.stop();
    payingOff_.stop();
    copies_.reset();
    isStale_ = true;
    if (isWatched_) ask();
}

void WorthItModel::ask() {
    isStale_ = false;
    sums_.stop();
    if (!workspace_.hasLogbook()) {
        reading_.stop();
        state_ = {};
        emit stateChanged();
        return;
    }
    state_.isWorking = true;
    state_.isStopped = false;
    if (copies_ == nullptr)
        readRecords();
    else
        workOut();
    emit stateChanged();
}

void WorthItModel::readRecords() {
    state_.isReading = true;
    reading_.ask(
        [today = workspace_.today()](const db::Logbook& logbook, const std::stop_token& stop) {
            WhatIsRead read{.records = logbook.batchRecords(), .pottings = logbook.allPottings(), .costs = {}};
            read.costs = report::costsOfLogbook(logbook, read.records, today, stop);
            return read;
        },
        [this](WhatIsRead read) { takeRecords(std::move(read)); }, [this] { fail(); });
}

void WorthItModel::takeRecords(WhatIsRead read) {
    state_.isReading = false;
    copies_ = std::make_shared<const Copies>(workspace_.shelves(), std::move(read));
    readChoices();
    workOut();
    emit stateChanged();
}

void WorthItModel::readChoices() {
    std::unordered_set<core::PlantId> plants;
    std::set<int, std::greater<>> years;
    for (const core::BatchRecord& record : copies_->read.records) {
        plants.insert(record.batch.plant);
        years.insert(static_cast<int>(record.batch.stuckOn.year()));
    }
    state_.plants.clear();
    for (const core::Plant& plant : copies_->shelves.plants)
        if (plants.contains(plant.id))
            state_.plants.push_back({plant.id, QString::fromStdString(core::fullName(plant))});
    state_.years.assign(years.begin(), years.end());
    state_.hasBatches = !copies_->read.records.empty();
    state_.isAnythingPriced = copies_->read.costs.isAnythingPriced;
    state_.priceOfADay = priceOfADayOn(workspace_.today(), copies_->shelves.prices);
    // What was asked for may be gone by an undo or with another logbook.
    if (!plants.contains(question_.plant)) question_.plant = {};
    if (!years.contains(year_)) {
        year_ = 0;
        question_.from.reset();
        question_.to.reset();
    }
}

void WorthItModel::fail() {
    state_.isWorking = false;
    state_.isReading = false;
    state_.worth.reset();
    state_.pair = -1;
    state_.fault = tr("The records could not be read.");
    emit stateChanged();
}

void WorthItModel::workOut() {
    sums_.ask(
        [copies = copies_, question = question_, today = workspace_.today()](std::stop_token stop) {
            return core::worthIt(question,
                                 {.shelves = copies->shelves,
                                  .batches = copies->read.records,
                                  .pottings = copies->read.pottings,
                                  .costs = copies->read.costs,
                                  .today = today},
                                 stop);
        },
        [this](const core::Result<core::Worth>& answer) { tell(answer); });
}

void WorthItModel::tell(const core::Result<core::Worth>& answer) {
    state_.isWorking = false;
    state_.fault.clear();
    state_.worth.reset();
    state_.horizon.clear();
    state_.methods.clear();
    if (answer) {
        state_.worth = std::make_shared<const core::Worth>(*answer);
        state_.horizon =
            tr("Decided at day %1: %2.").arg(answer->horizonDay).arg(QString::fromStdString(answer->horizonReason));
        for (const core::WorthOfMethod& method : answer->methods)
            state_.methods.push_back({method.method, QString::fromStdString(method.name)});
    } else {
        state_.fault = sentencesOf(answer.error());
    }
    findPair();
    emit stateChanged();
}

void WorthItModel::findPair() {
    state_.pair = -1;
    if (state_.worth != nullptr && !state_.worth->pairs.empty()) {
        const std::vector<core::WorthOfPair>& pairs = state_.worth->pairs;
        const auto found =
            std::ranges::find_if(pairs, [this](const auto& pair) { return isPairOf(pair, first_, second_); });
        state_.pair = found == pairs.end() ? 0 : static_cast<int>(found - pairs.begin());
        if (found == pairs.end()) first_ = pair().dear.method, second_ = pair().cheap.method;
    }
    askForPayOff();
}

void WorthItModel::askForPayOff() {
    payingOff_.stop();
    state_.payOff.reset();
    if (state_.pair < 0 || !pair().breakEven) return;
    payingOff_.ask([worth = state_.worth, number = static_cast<std::size_t>(state_.pair)](
                       std::stop_token stop) { return core::payOffCurve(worth->pairs[number], worth->level, stop); },
                   [this](const std::vector<core::ChanceAfter>& curve) {
                       state_.payOff = std::make_shared<const std::vector<core::ChanceAfter>>(curve);
                       emit stateChanged();
                   });
}

std::shared_ptr<const report::Sheet> WorthItModel::sheet() const {
    if (state_.worth == nullptr || state_.isWorking || state_.isStopped || !state_.isAnythingPriced) return nullptr;
    if (state_.pair >= 0 && pair().breakEven && state_.payOff == nullptr) return nullptr;
    const std::vector<core::ChanceAfter> none;
    return std::make_shared<const report::Sheet>(report::worthSheet(*state_.worth, state_.pair,
                                                                    state_.payOff ? *state_.payOff : none,
                                                                    workspace_.shelves(), printedAt(workspace_)));
}

}  // namespace desktop
