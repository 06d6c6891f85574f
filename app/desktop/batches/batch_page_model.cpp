// SPDX-License-Identifier: MIT
#include "app/desktop/batches/batch_page_model.h"

#include <algorithm>

#include "app/desktop/batches/stuck_words.h"
#include "app/desktop/printing/printed_at.h"
#include "app/plot/local_time.h"
#include "app/plot/number_text.h"
#include "app/report/batch_summary_sheet.h"
#include "core/batch/licence.h"
#include "db/actions/check_actions.h"
#include "db/actions/event_actions.h"
#include "db/actions/mix_actions.h"
#include "db/actions/session_actions.h"

namespace desktop {

namespace {

template <class Thing, class ThingId>
QString shelfName(const std::vector<Thing>& things, ThingId id) {
    const Thing* thing = core::find(things, id);
    return thing == nullptr ? QString() : QString::fromStdString(thing->name);
}

}  // namespace

BatchPageModel::BatchPageModel(Workspace& workspace, QObject* parent) : QObject(parent), workspace_(workspace) {
    connect(&workspace_, &Workspace::logbookChanged, this, &BatchPageModel::refresh);
    connect(&workspace_, &Workspace::logbookReplaced, this, &BatchPageModel::refresh);
}

bool BatchPageModel::show(core::BatchId batch) {
    clear();
    batch_ = batch;
    refresh();
    return hasBatch();
}

void BatchPageModel::clear() {
    batch_ = {};
    past_.stop();
    sums_.stop();
    costs_.stop();
    view_.reset();
}

void BatchPageModel::refresh() {
    if (!batch_.isSet()) return;
    std::optional<core::BatchRecord> record;
    if (workspace_.hasLogbook()) record = workspace_.logbook().batch(batch_);
    if (!record) {
        clear();
        emit gone();
        return;
    }
    // After an edit the old sums stay on the screen until the new ones are there.
    auto before = view_ ? view_->summary : nullptr;
    auto costBefore = view_ ? std::move(view_->cost) : std::nullopt;
    view_.emplace();
    printed_.reset();
    view_->record = std::move(*record);
    view_->summary = std::move(before);
    view_->cost = std::move(costBefore);
    const std::vector<core::Session> sessions = workspace_.logbook().sessions();
    if (const core::Session* session = core::find(sessions, view_->record.batch.session)) view_->session = *session;
    view_->life = plot::batchLifeOf(workspace_.logbook(), view_->record, workspace_.shelves(), workspace_.today());
    view_->mixes = mixesOf(view_->record.batch, view_->life.until);
    describe();
    emit viewChanged();
    askForSummary();
    askForCost();
}

std::vector<core::KeptMix> BatchPageModel::mixesOf(const core::Batch& batch, core::Date until) const {
    std::vector<core::KeptMix> mixes = workspace_.logbook().mixes(batch.session);
    if (!batch.station.isSet()) return mixes;
    const core::Moment from = plot::momentOf(batch.stuckOn, 0), end = plot::momentOf(core::addDays(until, 1), 0);
    for (core::KeptMix& mix : workspace_.logbook().mixesAt(batch.station, from, end)) mixes.push_back(std::move(mix));
    std::ranges::stable_sort(mixes, {}, &core::KeptMix::madeAt);
    return mixes;
}

void BatchPageModel::describe() {
    const core::Batch& batch = view_->record.batch;
    const core::Shelves& shelves = workspace_.shelves();
    const core::Tally tally = core::tallyOf(batch, view_->record.checks);
    view_->code = QString::fromStdString(batch.code);
    const core::Plant* plant = core::find(shelves.plants, batch.plant);
    if (plant != nullptr) view_->plant = QString::fromStdString(core::fullName(*plant));
    view_->isClosedByHand = batch.closedOn.has_value();
    view_->hasUndecided = tally.undecided() > 0;
    view_->state =
        !core::isClosed(batch, tally) ? tr("open")
        : batch.closedOn
            ? tr("closed on %1: %2").arg(plot::dateText(*batch.closedOn), QString::fromStdString(batch.closeReason))
            : tr("closed: nothing undecided");
    addFact(tr("Stuck"), tr("%1 on %2", "24 cuttings on 3 March 2026")
                             .arg(plot::cuttingsText(batch.stuck), plot::dateText(batch.stuckOn)));
    addFact(tr("By"), QString::fromStdString(view_->session.worker));
    addFact(tr("Method"), shelfName(shelves.methods, batch.method));
    addFact(tr("Station"), shelfName(shelves.stations, batch.station));
    const core::StockPlant* stock = core::find(shelves.stockPlants, batch.stockPlant);
    addFact(tr("Stock plant"), stock == nullptr ? QString() : QString::fromStdString(stock->label));
    addFact(tr("Kind of cutting"), shelfName(shelves.cuttingKinds, batch.cuttingKind));
    addFact(tr("Treatment"), treatmentText(batch, shelves));
    addFact(tr("Medium"), mediumText(batch, shelves));
    const core::PottedTally potted = core::pottedTallyOf(view_->life.pottings);
    if (potted.potted > 0)
        addFact(tr("Potted on"),
                tr("%1 usable", "89 % (8 of 9)").arg(plot::percentText(potted.usable(), potted.potted)));
    addFact(tr("Trial"), shelfName(shelves.trials, batch.trial));
    addFact(tr("Note of the session"), QString::fromStdString(view_->session.note));
    addFact(tr("Licence"),
            QString::fromStdString(batch.licence.empty() ? core::licenceInWords(batch, shelves) : batch.licence));
    view_->strikeRate = plot::percentText(tally.rooted, tally.stuck);
    describeCost();
}

void BatchPageModel::addFact(const QString& name, const QString& text) {
    if (!text.trimmed().isEmpty()) view_->facts.push_back({name, text});
}

void BatchPageModel::askForSummary() {
    auto record = std::make_shared<const core::BatchRecord>(view_->record);
    past_.ask(record->batch.plant, [this, record](const PlantRecords::Records& past) {
        auto shelves = std::make_shared<const core::Shelves>(workspace_.shelves());
        const core::Date today = workspace_.today();
        sums_.ask(
            [=](std::stop_token) {
                return std::make_shared<const core::BatchSummary>(core::summaryOf(*record, *shelves, *past, today));
            },
            [this](const std::shared_ptr<const core::BatchSummary>& summary) { tellSummary(summary); });
    });
}

void BatchPageModel::tellSummary(std::shared_ptr<const core::BatchSummary> summary) {
    view_->summary = std::move(summary);
    const core::BatchSummary& sums = *view_->summary;
    view_->strikeRate = tr("%1; %2 interval %3", "75 % (18 of 24); 95 % interval 55 to 88 %")
                            .arg(plot::percentText(sums.tally.rooted, sums.tally.stuck),
                                 plot::levelText(workspace_.shelves().facts.level), plot::limitsText(sums.asCounted));
    view_->past = tr("no earlier batch of this plant by this method yet");
    if (sums.past.batches > 0 && sums.past.rate)
        view_->past = tr("%1 by %2, in %3 stuck before this one", "71 % (84 of 118) by day 28, in 6 batches")
                          .arg(plot::percentText(*sums.past.rate, sums.past.rooted, sums.past.assessed),
                               plot::dayText(sums.past.horizonDay), plot::batchesText(sums.past.batches));
    QStringList losses;
    for (const core::LossByCause& loss : sums.losses)
        losses.append(tr("%1 (%2)", "rot (3)").arg(QString::fromStdString(loss.cause), plot::countText(loss.count)));
    view_->losses = losses.isEmpty() ? tr("none") : losses.join(tr(", "));
    emit summaryChanged();
}

std::shared_ptr<const report::Sheet> BatchPageModel::sheet() const {
    if (!view_ || !view_->summary || !view_->isCostKnown) return nullptr;
    return std::make_shared<const report::Sheet>(report::batchSummarySheet(
        view_->record, view_->session, *view_->summary, workspace_.shelves(), printedAt(workspace_), printedEvents()));
}

const report::BatchEvents& BatchPageModel::printedEvents() const {
    // The window asks for the sheet whenever something changes: the photos are read once.
    if (!printed_) {
        auto events = std::make_shared<report::BatchEvents>(report::batchEventsOf(
            workspace_.logbook(), view_->record, workspace_.shelves(), workspace_.today(), now()));
        events->cost = view_->cost;
        printed_ = std::move(events);
    }
    return *printed_;
}

Outcome BatchPageModel::record(const core::Check& check) {
    return workspace_.run([&](db::Logbook& logbook) {
        return db::recordChecks(logbook, {{.check = check, .closesBatch = false, .closeReason = {}}},
                                workspace_.today());
    });
}

Outcome BatchPageModel::change(const core::Check& check) {
    return workspace_.run([&](db::Logbook& logbook) { return db::changeCheck(logbook, check, workspace_.today()); });
}

Outcome BatchPageModel::remove(core::CheckId check) {
    return workspace_.run([&](db::Logbook& logbook) { return db::deleteCheck(logbook, check); });
}

Outcome BatchPageModel::change(const core::Batch& batch) {
    return workspace_.run([&](db::Logbook& logbook) { return db::changeBatch(logbook, batch, workspace_.today()); });
}

Outcome BatchPageModel::change(const core::Session& session) {
    return workspace_.run(
        [&](db::Logbook& logbook) { return db::changeSession(logbook, session, workspace_.today()); });
}

Outcome BatchPageModel::change(const core::Session& session, const core::Expense& work) {
    return workspace_.run(
        [&](db::Logbook& logbook) { return db::changeSession(logbook, session, work, workspace_.today()); });
}

Outcome BatchPageModel::close(core::Date on, const QString& reason) {
    return workspace_.run([&](db::Logbook& logbook) {
        return db::closeBatch(logbook, batch_, on, reason.simplified().toStdString(), workspace_.today());
    });
}

Outcome BatchPageModel::reopen() {
    return workspace_.run([&](db::Logbook& logbook) { return db::reopenBatch(logbook, batch_); });
}

Outcome BatchPageModel::remove() {
    return workspace_.run([&](db::Logbook& logbook) { return db::deleteBatch(logbook, batch_); });
}

Outcome BatchPageModel::keepNote(const QString& note) {
    core::Batch batch = view_->record.batch;
    batch.note = note.trimmed().toStdString();
    return change(batch);
}

Outcome BatchPageModel::keep(const db::StationVisit& visit) {
    return workspace_.run([&](db::Logbook& logbook) { return db::keepVisit(logbook, visit, now()); });
}

Outcome BatchPageModel::remove(const core::Care& care) {
    return workspace_.run([&](db::Logbook& logbook) { return db::deleteCare(logbook, care); });
}

Outcome BatchPageModel::remove(core::KeptMixId mix) {
    return workspace_.run([&](db::Logbook& logbook) { return db::remove(logbook, mix); });
}

Outcome BatchPageModel::keep(const core::Expense& expense) {
    return workspace_.run([&](db::Logbook& logbook) { return db::keepExpense(logbook, expense, workspace_.today()); });
}

Outcome BatchPageModel::remove(const core::Expense& expense) {
    return workspace_.run([&](db::Logbook& logbook) { return db::deleteExpense(logbook, expense); });
}

Outcome BatchPageModel::keep(const core::Potting& potting) {
    return workspace_.run([&](db::Logbook& logbook) { return db::keepPotting(logbook, potting, workspace_.today()); });
}

Outcome BatchPageModel::remove(const core::Potting& potting) {
    return workspace_.run([&](db::Logbook& logbook) { return db::deletePotting(logbook, potting); });
}

Outcome BatchPageModel::add(std::vector<core::PhotoRecord> photos) {
    return workspace_.run(
        [&](db::Logbook& logbook) { return db::addPhotos(logbook, std::move(photos), workspace_.today()); });
}

Outcome BatchPageModel::change(const core::Photo& photo) {
    return workspace_.run([&](db::Logbook& logbook) { return db::changePhoto(logbook, photo, workspace_.today()); });
}

Outcome BatchPageModel::remove(const core::Photo& photo) {
    return workspace_.run([&](db::Logbook& logbook) { return db::deletePhoto(logbook, photo); });
}

core::ImageBytes BatchPageModel::imageOf(core::PhotoId photo) const {
    return workspace_.logbook().photoImage(photo);
}

int BatchPageModel::batchesOfSession() const {
    const std::vector<core::BatchLine>& lines = workspace_.batchLines();
    return static_cast<int>(std::count_if(lines.begin(), lines.end(), [this](const core::BatchLine& line) {
        return line.batch.session == view_->session.id;
    }));
}

}  // namespace desktop
