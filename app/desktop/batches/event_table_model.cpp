// SPDX-License-Identifier: MIT
#include "app/desktop/batches/event_table_model.h"

#include "app/plot/number_text.h"

namespace desktop {

namespace {

Qt::Alignment alignmentOf(int column) {
    const bool isNumber = column == EventTableModel::When || column == EventTableModel::Day ||
                          column == EventTableModel::RootedInAll || column == EventTableModel::Undecided;
    return (isNumber ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter;
}

}  // namespace

void EventTableModel::show(std::vector<BatchEvent> events, core::Date stuckOn) {
    beginResetModel();
    events_ = std::move(events);
    stuckOn_ = stuckOn;
    endResetModel();
}

const BatchEvent* EventTableModel::eventAt(int row) const {
    return row < 0 || row >= rowCount() ? nullptr : &events_[static_cast<std::size_t>(row)];
}

int EventTableModel::rowOf(const BatchEvent& event) const {
    for (int row = 0; row < rowCount(); ++row)
        if (eventAt(row)->isSameAs(event)) return row;
    return -1;
}

int EventTableModel::rowOf(EventKind kind, std::int64_t id) const {
    for (int row = 0; row < rowCount(); ++row)
        if (eventAt(row)->kind == kind && eventAt(row)->id == id) return row;
    return -1;
}

int EventTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(events_.size());
}

int EventTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columns;
}

QVariant EventTableModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    if (role == Qt::TextAlignmentRole) return QVariant::fromValue(alignmentOf(index.column()));
    const BatchEvent& event = *eventAt(index.row());
    if (role == Qt::DisplayRole) return textAt(event, index.column());
    if (role != Qt::ToolTipRole) return {};
    if (index.column() != When || event.time.isEmpty()) return textAt(event, index.column());
    return tr("%1, %2", "day, hour").arg(plot::dateText(event.day), event.time);
}

QString EventTableModel::textAt(const BatchEvent& event, int column) const {
    switch (column) {
        case When:
            return plot::shortDateText(event.day);
        case Day:
            return plot::countText(core::daysBetween(stuckOn_, event.day));
        case Event:
            return nameOf(event.kind);
        case What:
            return event.what;
        case RootedInAll:
            return event.after ? plot::countText(event.after->rooted) : QString();
        case Undecided:
            return event.after ? plot::countText(event.after->undecided()) : QString();
        case Note:
            return event.note;
        default:
            return {};
    }
}

QVariant EventTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) return QVariant::fromValue(alignmentOf(section));
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case When:
            return tr("Date");
        case Day:
            return tr("Day");
        case Event:
            return tr("Event");
        case What:
            return tr("What");
        case RootedInAll:
            return tr("Rooted in all");
        case Undecided:
            return tr("Undecided");
        case Note:
            return tr("Note");
        default:
            return {};
    }
}

}  // namespace desktop
