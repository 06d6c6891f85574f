// SPDX-License-Identifier: MIT
#include "app/desktop/positions/position_look_model.h"

#include <algorithm>

#include "app/desktop/positions/kept_marks.h"
#include "app/desktop/positions/position_map_model.h"
#include "app/plot/number_text.h"
#include "db/actions/look_actions.h"

namespace desktop {

PositionLookModel::PositionLookModel(Workspace& workspace, QObject* parent)
    : QObject(parent), workspace_(workspace), map_(new PositionMapModel(workspace, this)), day_(workspace.today()) {}

void PositionLookModel::lookAt(core::StationId station, core::BatchId batch) {
    station_ = station;
    batch_ = batch;
    before_.clear();
    here_ = openBatchesAt(workspace_, station, batch);
    std::vector<core::BatchRecord> looked;
    for (const core::BatchRecord& record : here_)
        if (!record.batch.positions.empty() && (!batch.isSet() || record.batch.id == batch)) looked.push_back(record);
    look_ = PositionLook(std::move(looked), day_);
    look_.setLooksAtAll(looksAtAll_);
    look_.setMarks(KeptMarks::of(workspace_).at(station));
    view_.hasLeftovers =
        std::ranges::any_of(look_.marks(), [&](const auto& each) { return look_.canMark(each.first); });
    show();
}

void PositionLookModel::setDay(core::Date day) {
    day_ = day;
    look_.setDay(day);
    show();
}

void PositionLookModel::setNote(const QString& note) {
    look_.setNote(note.trimmed().toStdString());
    show();
}

void PositionLookModel::setLooksAtAll(bool looksAtAll) {
    looksAtAll_ = looksAtAll;
    look_.setLooksAtAll(looksAtAll);
    show();
}

void PositionLookModel::mark(const std::vector<core::Position>& positions, const Mark& mark, bool goesOn) {
    const LookMarks before = look_.marks();
    const bool wentAllTheWay = look_.mark(positions, {.mark = mark, .wasCounted = wasCounted_});
    if (look_.marks() != before) {
        if (!goesOn || before_.empty()) before_.push_back(before);
        keepMarks();
        show();
    }
    if (!wentAllTheWay)
        emit refused(
            tr("No earlier check counts another one like that without its place. Untick \u201ccounted before\u201d to "
               "mark what is new."));
}

void PositionLookModel::takeBack() {
    if (before_.empty()) return;
    look_.setMarks(std::move(before_.back()));
    before_.pop_back();
    keepMarks();
    show();
}

void PositionLookModel::startAfresh() {
    LookMarks marks = look_.marks();
    std::erase_if(marks, [&](const auto& each) { return look_.canMark(each.first); });
    before_.push_back(look_.marks());
    look_.setMarks(std::move(marks));
    view_.hasLeftovers = false;
    keepMarks();
    show();
}

void PositionLookModel::keepMarks() {
    KeptMarks::of(workspace_).keep(station_, look_.marks());
}

void PositionLookModel::show() {
    showMap();
    const core::Station* station = core::find(workspace_.shelves().stations, station_);
    view_.lacksLayout = station != nullptr && !station->hasLayout();
    view_.isWholeStation = !batch_.isSet();
    view_.why = look_.batches().empty() ? whyNot(station) : QString();
    view_.canBePlaced = look_.batches().empty() && batch_.isSet() && station != nullptr && station->hasLayout();
    view_.counts = look_.batches().empty() ? QString() : countsText();
    view_.hasUnplaced = std::ranges::any_of(look_.batches(), [&](const core::BatchRecord& record) {
        return !PositionLook({record}, day_).unplacedBefore().empty();
    });
    view_.reminder = reminderText();
    const core::Refusals faults = look_.faults(workspace_.shelves(), workspace_.today());
    view_.fault = faults.empty() ? QString() : QString::fromStdString(faults.front().sentence);
    emit viewChanged();
}

void PositionLookModel::showMap() {
    const core::Station* station = core::find(workspace_.shelves().stations, station_);
    std::vector<core::BatchRecord> records = look_.outcome();
    for (const core::BatchRecord& record : here_)
        if (std::ranges::none_of(records, [&](const auto& each) { return each.batch.id == record.batch.id; }))
            records.push_back(record);
    map_->show(station == nullptr ? core::Station{} : *station, records, batch_, look_.decidedNow());
}

QString PositionLookModel::whyNot(const core::Station* station) const {
    if (station == nullptr && !batch_.isSet())
        return tr("There is nothing to look at yet: no station has an open batch.");
    if (station == nullptr) return tr("This batch has no station, so there is no map to look at.");
    const QString name = QString::fromStdString(station->name);
    if (!station->hasLayout())
        return tr("The positions of %1 are not described yet: how many rows, and how many in a row.").arg(name);
    if (batch_.isSet())
        return tr("Nobody has written down yet where at %1 the cuttings of this batch stand.").arg(name);
    return tr("No open batch at %1 says where its cuttings stand. Choose one above to give it positions.").arg(name);
}

QString PositionLookModel::countsText() const {
    const LookSums sums = look_.sums();
    const auto part = [](const QString& words, int count, int more) {
        const QString text = words.arg(plot::countText(count));
        return more > 0 ? tr("%1 (+%2)", "12 rooted; how many of them are new").arg(text, plot::countText(more)) : text;
    };
    QStringList parts{part(tr("%1 rooted"), sums.rooted, sums.newRooted), part(tr("%1 lost"), sums.lost, sums.newLost)};
    if (sums.withdrawn > 0) parts << part(tr("%1 withdrawn"), sums.withdrawn, sums.newWithdrawn);
    parts << tr("%1 undecided").arg(plot::countText(sums.undecided));
    return parts.join(tr(", ", "between counts"));
}

QString PositionLookModel::reminderText() const {
    QStringList sentences;
    QStringList codes;
    for (const core::BatchRecord& record : here_)
        if (record.batch.positions.empty()) codes << QString::fromStdString(record.batch.code);
    if (!batch_.isSet() && !codes.isEmpty() && !look_.batches().empty())
        sentences << tr("Not on the map, since nobody has written down where they stand: %1.")
                         .arg(codes.join(tr(", ", "between codes")));
    QStringList parts;
    for (const Unplaced& unplaced : look_.unplacedBefore()) {
        const std::vector<MarkKey>& keys = map_->keys();
        const auto key = std::ranges::find(keys, unplaced.mark, &MarkKey::mark);
        const QString count = plot::countText(unplaced.count);
        if (unplaced.mark.cause.isSet())
            parts << (key == keys.end() ? tr("%1 lost").arg(count) : tr("%1 lost (%2)").arg(count, key->name));
        else
            parts << tr("%1 %2", "count, state").arg(count, key->name);
    }
    if (!parts.isEmpty())
        sentences
            << tr("Counted before without saying where: %1. Tick \u201ccounted before\u201d to show where these are; "
                  "other marks are new.")
                   .arg(parts.join(tr(", ", "between counts")));
    return sentences.join(QLatin1Char(' '));
}

Outcome PositionLookModel::save() {
    const core::Date today = workspace_.today();
    const std::vector<core::Check> checks = look_.checks();
    Outcome outcome = workspace_.run([&](db::Logbook& logbook) { return db::recordLook(logbook, checks, today); });
    if (!outcome.isDone) return outcome;
    LookMarks marks = look_.marks();
    std::erase_if(marks, [&](const auto& each) { return look_.canMark(each.first); });
    KeptMarks::of(workspace_).keep(station_, std::move(marks));
    return outcome;
}

}  // namespace desktop
