// SPDX-License-Identifier: MIT
#include "app/desktop/history/history_model.h"

#include <QDateTime>
#include <QFont>
#include <QGuiApplication>
#include <QLocale>

#include "app/desktop/look/look.h"

namespace desktop {

namespace {

using db::HistoryEntry;

QString localTime(const std::string& utc) {
    const QDateTime moment = QDateTime::fromString(QString::fromStdString(utc), Qt::ISODate);
    return QLocale().toString(moment.toLocalTime(), QLocale::ShortFormat);
}

}  // namespace

void HistoryModel::show(std::vector<db::HistoryEntry> entries) {
    beginResetModel();
    entries_ = std::move(entries);
    endResetModel();
}

int HistoryModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(entries_.size());
}

int HistoryModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant HistoryModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const HistoryEntry& entry = entries_[static_cast<std::size_t>(index.row())];
    const bool isQuiet = entry.isUndone || entry.kind != HistoryEntry::Kind::Action;
    if (role == Qt::ForegroundRole && isQuiet) return quietColour(QGuiApplication::palette());
    if (role == Qt::FontRole && entry.isUndone && index.column() == What) {
        QFont struck;
        struck.setStrikeOut(true);
        return struck;
    }
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    const QString words = QString::fromStdString(entry.words);
    switch (index.column()) {
        case When:
            return localTime(entry.at);
        case Who:
            return QString::fromStdString(entry.author);
        case What:
            if (entry.kind == HistoryEntry::Kind::Undo) return tr("Taken back: %1").arg(words);
            if (entry.kind == HistoryEntry::Kind::Redo) return tr("Done again: %1").arg(words);
            return words;
        case State:
            if (entry.isUndone) return entry.canBeRedone ? tr("taken back; next to do again") : tr("taken back");
            return entry.canBeUndone ? tr("next to take back") : QString();
        default:
            return {};
    }
}

QVariant HistoryModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
        case When:
            return tr("When");
        case Who:
            return tr("Who");
        case What:
            return tr("What");
        case State:
            return tr("State");
        default:
            return {};
    }
}

}  // namespace desktop
