// SPDX-License-Identifier: MIT
#include "app/desktop/session/session_model.h"

#include <algorithm>
#include <random>

#include "app/desktop/session/last_session.h"
#include "app/desktop/session/unfinished_session.h"
#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"
#include "core/units/entered_text.h"
#include "core/units/number_entry.h"

namespace desktop {

SessionModel::SessionModel(Workspace& workspace, QObject* parent)
    : QObject(parent),
      workspace_(workspace),
      sheet_(UnfinishedSession::of(workspace).sheet),
      grid_(new SessionGridModel(sheet_, this)),
      drawSeed_([] { return static_cast<std::uint32_t>(std::random_device{}()); }),
      stations_(workspace) {
    view_.hasLeftovers = !sheet_.isBlank() && sheet_.batches() > 0;
    if (!view_.hasLeftovers) startRows();
    grid_->setLookup(
        {.methodOf = [this](const QString& station) { return methodOf(station); },
         .usualMediumOf =
             [this](const QString& typed) {
                 const NameBook book = names();
                 const core::Station* station = book.station(typed);
                 return station == nullptr ? QString() : stations_.usualMediumOf(station->id);
             },
         .stockPlantFor = [this](const QString& before, const QString& plant,
                                 const QString& mother) { return stockPlantFor(before, plant, mother); },
         .understood = [this](SessionColumn column, const QString& typed) { return understood(column, typed); }});
    connect(grid_, &SessionGridModel::edited, this, &SessionModel::judge);
    judge();
}

NameBook SessionModel::names() const {
    return {workspace_.shelves(), sheet_.made};
}

QString SessionModel::stockPlantFor(const QString& before, const QString& plant, const QString& mother) const {
    const NameBook book = names();
    const core::Plant* old = book.plant(before);
    const bool isOfOld = old != nullptr && book.stockPlant(mother, old->id) != nullptr;
    if (!mother.trimmed().isEmpty() && !isOfOld) return mother;  // typed for the new plant
    const core::Plant* now = book.plant(plant);
    const QStringList own = now == nullptr ? QStringList() : book.stockPlants(now->id);
    return own.size() == 1 ? own.front() : QString();
}

QStringList SessionModel::offersFor(const QModelIndex& cell) const {
    const NameBook book = names();
    switch (static_cast<SessionColumn>(cell.column())) {
        case SessionColumn::Plant:
            return book.plants();
        case SessionColumn::StockPlant: {
            const core::Plant* plant = book.plant(grid_->row(cell.row()).at(SessionColumn::Plant));
            return plant == nullptr ? QStringList() : book.stockPlants(plant->id);
        }
        case SessionColumn::CuttingKind:
            return book.cuttingKinds();
        case SessionColumn::Treatment:
            return book.treatments();
        case SessionColumn::Station:
            return book.stations();
        case SessionColumn::Medium:
            return book.media();
        case SessionColumn::Method:
        case SessionColumn::Count:
        case SessionColumn::Positions:
        case SessionColumn::Note:
            break;
    }
    return {};
}

void SessionModel::setDay(std::optional<core::Date> day) {
    if (sheet_.day == day) return;
    sheet_.day = day;
    judge();
}

void SessionModel::setWorker(const QString& worker) {
    sheet_.worker = worker;
    judge();
}

void SessionModel::setNote(const QString& note) {
    sheet_.note = note;
    judge();
}

void SessionModel::startAfresh() {
    showsBlanks_ = false;
    sheet_.licences.clear();
    view_.hasLeftovers = false;
    sheet_.day = workspace_.today();
    grid_->startAfresh();
}

void SessionModel::startFromLast() {
    std::vector<SessionRow> rows = rowsOfLastSession(workspace_);
    if (!rows.empty()) grid_->offer(std::move(rows));
}

QString SessionModel::describe(core::Station station, const QString& method) {
    const QString name = QString::fromStdString(station.name).simplified();
    station.name = name.toStdString();
    if (const auto refusal = core::faultInName(tr("Name").toStdString(), station.name))
        return QString::fromStdString(refusal->sentence);
    if (names().station(name) != nullptr)
        return tr("There is a station \u201c%1\u201d already; give this one another name.").arg(name);
    if (const auto refusal = core::faultInName(tr("Method").toStdString(), method.simplified().toStdString()))
        return QString::fromStdString(refusal->sentence);
    const NameBook book = names();
    if (const core::Method* known = book.method(method)) {
        station.method = known->id;
    } else {
        station.method = {db::newId()};
        sheet_.made.methods.push_back(
            {.id = station.method, .name = method.simplified().toStdString(), .isRetired = false});
    }
    const auto& stations = book.shelves().stations;
    for (const core::Station& other : stations)
        station.walkingOrder = std::max(station.walkingOrder, other.walkingOrder + 1);
    station.id = {db::newId()};
    sheet_.made.stations.push_back(std::move(station));
    judge();
    return {};
}

QString SessionModel::describe(core::Treatment treatment) {
    const QString name = QString::fromStdString(treatment.name).simplified();
    treatment.name = name.toStdString();
    if (const auto refusal = core::faultInName(tr("Name").toStdString(), treatment.name))
        return QString::fromStdString(refusal->sentence);
    if (names().treatment(name) != nullptr)
        return tr("There is a treatment \u201c%1\u201d already; give this one another name.").arg(name);
    treatment.id = {db::newId()};
    sheet_.made.treatments.push_back(std::move(treatment));
    judge();
    return {};
}

std::optional<SplitQuestion> SessionModel::splitQuestion(int row, QString& why) const {
    const SessionRow& cells = grid_->row(row);
    const auto count = core::countFrom(cells.at(SessionColumn::Count).toStdString());
    if (cells.split >= 0) {
        why = tr("Row %1 is part of a split already; join it again first.").arg(row + 1);
        return {};
    }
    if (cells.at(SessionColumn::Plant).trimmed().isEmpty() || !count || *count < 2 || *count > 100'000) {
        why = tr("Row %1 can't be split yet: it needs a plant, and 2 or more cuttings in Stuck.").arg(row + 1);
        return {};
    }
    const NameBook book = names();
    const core::Plant* plant = book.plant(cells.at(SessionColumn::Plant));
    const int usual = plant == nullptr ? 0 : plant->usualRootingDaysHigh.value_or(0);
    const QString day = plot::dateText(sheet_.day.value_or(workspace_.today()));
    const QString name = tr("%1, %2", "name of a trial: plant, day").arg(cells.at(SessionColumn::Plant), day);
    QString free = name;
    for (int number = 2; !faultInTrialName(free).isEmpty(); ++number) free = tr("%1 (%2)").arg(name).arg(number);
    return SplitQuestion{.row = row,
                         .plant = cells.at(SessionColumn::Plant),
                         .cuttings = *count,
                         .station = cells.at(SessionColumn::Station),
                         .treatment = cells.at(SessionColumn::Treatment),
                         .stations = book.stations(),
                         .treatments = book.treatments(),
                         .trialName = free,
                         .horizonDay = usual > 0 ? usual : book.shelves().facts.horizonDay,
                         .seed = drawSeed_()};
}

QString SessionModel::faultInTrialName(const QString& name) const {
    if (const auto refusal = core::faultInName(tr("Name of the trial").toStdString(), name.simplified().toStdString()))
        return QString::fromStdString(refusal->sentence);
    const auto isSame = [&](const core::Trial& trial) {
        return QString::fromStdString(trial.name).compare(name.simplified(), Qt::CaseInsensitive) == 0;
    };
    const auto& trials = workspace_.shelves().trials;
    bool isTaken = std::any_of(trials.begin(), trials.end(), isSame);
    for (const SplitByChance& split : sheet_.splits) isTaken |= !split.isJoined && isSame(split.trial);
    return isTaken ? tr("There is a trial \u201c%1\u201d already; give this one another name.").arg(name.simplified())
                   : QString();
}

QString SessionModel::methodOf(const QString& station) const {
    const NameBook book = names();
    const core::Station* known = book.station(station);
    const core::Method* method = known == nullptr ? nullptr : core::find(book.shelves().methods, known->method);
    return method == nullptr ? QString() : QString::fromStdString(method->name);
}

SessionSaved SessionModel::save() {
    showsBlanks_ = true;
    judge();
    SessionReading reading = read();
    if (!reading.isClean()) return {};
    if (reading.draft.batches.empty()) {
        view_.headerFault = tr("There is no batch to save yet: fill in a row.");
        emit viewChanged();
        return {};
    }
    SessionSaved saved{.isDone = true, .sentence = {}, .session = {}, .batches = {}};
    const Outcome outcome = workspace_.run([&](db::Logbook& logbook) -> core::Result<db::Changes> {
        auto done = db::stickSession(logbook, std::move(reading.draft), workspace_.today());
        if (!done) return core::refused(std::move(done.error()));
        saved.batches = done->batches;
        saved.session = done->session;
        return done->changes;
    });
    if (!outcome.isDone) {
        QStringList sentences;
        for (const core::Refusal& refusal : outcome.refusals)
            sentences.append(QString::fromStdString(refusal.sentence));
        view_.headerFault = sentences.join(QLatin1Char(' '));
        emit viewChanged();
        return {};
    }
    startAfresh();
    saved.sentence = sentenceFor(saved.batches);
    return saved;
}

std::optional<CellFault> SessionModel::firstFault() const {
    const auto& faults = grid_->faults();
    const auto first = std::min_element(faults.begin(), faults.end(), [](const CellFault& one, const CellFault& other) {
        return std::pair(one.row, one.column) < std::pair(other.row, other.column);
    });
    return first == faults.end() ? std::nullopt : std::optional(*first);
}

void SessionModel::startRows() {
    sheet_.day = workspace_.today();
    const std::vector<core::Session> sessions = workspace_.logbook().sessions();
    if (sheet_.worker.isEmpty() && !sessions.empty()) sheet_.worker = QString::fromStdString(sessions.back().worker);
}

SessionReading SessionModel::read() {
    SessionReading reading = readSession(sheet_, workspace_.shelves(), workspace_.today());
    grid_->setFilled(stations_.place(sheet_, names().shelves(), reading));
    view_.licences = takeLicences(reading);
    return reading;
}

void SessionModel::judge() {
    const SessionReading reading = read();
    std::vector<CellFault> shown = reading.faults;
    if (!showsBlanks_) std::erase_if(shown, [](const CellFault& fault) { return fault.isBlank; });
    grid_->setFaults(std::move(shown));
    int cuttings = 0;
    for (const core::Batch& batch : reading.draft.batches) cuttings += batch.stuck;
    const int batches = static_cast<int>(reading.draft.batches.size());
    view_.sums = tr("%1, %2", "3 batches, 72 cuttings").arg(plot::batchesText(batches), plot::cuttingsText(cuttings));
    const core::Shelves all = names().shelves();
    view_.room = stations_.roomText(reading, all);
    view_.notes = stations_.fullStations(reading, all);
    view_.offered = grid_->offeredRows();
    view_.canStartFromLast = sheet_.batches() == 0 && !workspace_.batchLines().empty();
    if (!reading.news.isEmpty())
        view_.notes.append(tr("New, and added with the session: %1.").arg(reading.news.join(tr(", "))));
    mind(reading, all);
    view_.dayFault = reading.dayFault;
    view_.headerFault = reading.headerFault;
    emit viewChanged();
}

QString SessionModel::understood(SessionColumn column, const QString& typed) const {
    const QString text = typed.simplified();
    if (column == SessionColumn::Note || column == SessionColumn::Positions || text.isEmpty()) return typed.trimmed();
    const NameBook book = names();
    if (column == SessionColumn::Plant) {
        const core::Plant* plant = book.plant(text);
        return plant == nullptr ? text : QString::fromStdString(core::fullName(*plant));
    }
    if (column != SessionColumn::Station && column != SessionColumn::Treatment) return text;
    QStringList meant;
    for (const QString& name : column == SessionColumn::Station ? book.stations() : book.treatments()) {
        if (name.compare(text, Qt::CaseInsensitive) == 0) return name;
        if (name.startsWith(text, Qt::CaseInsensitive)) meant.append(name);
    }
    return meant.size() == 1 ? meant.front() : text;
}

QString SessionModel::sentenceFor(const std::vector<core::Batch>& batches) const {
    QStringList codes;
    for (const core::Batch& batch : batches) codes.append(QString::fromStdString(batch.code));
    if (codes.size() > 6) codes = {tr("%1 to %2").arg(codes.front(), codes.back())};
    return tr("%1 stuck: %2.", "3 batches stuck: codes")
        .arg(plot::batchesText(static_cast<int>(batches.size())), codes.join(tr(", ")));
}

}  // namespace desktop
