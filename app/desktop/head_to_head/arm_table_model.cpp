// SPDX-License-Identifier: MIT
#include "app/desktop/head_to_head/arm_table_model.h"

#include "app/plot/number_text.h"

namespace desktop {

namespace {

QString noneText() {
    return QStringLiteral("\u2013");
}

QString cellOf(const core::Arm& arm, int column) {
    switch (column) {
        case ArmTableModel::Name:
            return QString::fromStdString(arm.name);
        case ArmTableModel::Batches:
            return plot::countText(arm.batches);
        case ArmTableModel::Stations:
            return plot::countText(arm.stations);
        case ArmTableModel::Stuck:
            return plot::countText(arm.stuck);
        case ArmTableModel::Rooted:
            return plot::countText(arm.rooted);
        case ArmTableModel::Lost:
            return plot::countText(arm.lost);
        case ArmTableModel::Withdrawn:
            return plot::countText(arm.withdrawn);
        case ArmTableModel::Undecided:
            return plot::countText(arm.undecided);
        case ArmTableModel::Rate:
            return arm.rate ? plot::percentText(*arm.rate, arm.rooted, arm.assessed) : noneText();
        case ArmTableModel::AsCounted:
            return arm.asCounted ? plot::limitsText(*arm.asCounted) : noneText();
        case ArmTableModel::WithSpread:
            return arm.withSpread ? plot::limitsText(*arm.withSpread) : noneText();
        case ArmTableModel::HalfBy:
            return plot::dayRangeText(arm.ofStuck.p50);
        default:
            return {};
    }
}

}  // namespace

void ArmTableModel::show(std::vector<core::Arm> arms, core::RateInterval interval) {
    beginResetModel();
    arms_ = std::move(arms);
    intervalName_ = QString::fromUtf8(core::nameOf(interval));
    endResetModel();
}

int ArmTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(arms_.size());
}

int ArmTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columns;
}

QVariant ArmTableModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const core::Arm& arm = arms_[static_cast<std::size_t>(index.row())];
    if (role == Qt::DisplayRole) return cellOf(arm, index.column());
    if (role == Qt::ToolTipRole) {
        if (index.column() == WithSpread && !arm.withSpread)
            return tr("The spread between batches can't be seen here: it takes two batches or more.");
        if (index.column() == WithSpread && arm.isSpreadBorrowed)
            return tr("%1. All rooted, or none, so these batches show no spread: that of the whole logbook is used.")
                .arg(cellOf(arm, index.column()));
        return cellOf(arm, index.column());
    }
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(Qt::Alignment(index.column() == Name ? Qt::AlignLeft : Qt::AlignRight) |
                                   Qt::AlignVCenter);
    return {};
}

QVariant ArmTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(Qt::Alignment(section == Name ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
    if (role == Qt::ToolTipRole) {
        if (section == Rate) return tr("Rooted of those whose fate at the horizon day is known");
        if (section == AsCounted) return tr("The interval if every cutting had its own fate (%1)").arg(intervalName_);
        if (section == WithSpread) return tr("The interval allowing for the spread between batches");
        if (section == HalfBy) return tr("When half of those stuck had rooted: between which two looks");
    }
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case Name:
            return tr("Arm");
        case Batches:
            return tr("Batches");
        case Stations:
            return tr("Stations");
        case Stuck:
            return tr("Stuck");
        case Rooted:
            return tr("Rooted");
        case Lost:
            return tr("Lost");
        case Withdrawn:
            return tr("Withdrawn");
        case Undecided:
            return tr("Undecided");
        case Rate:
            return tr("Strike rate");
        case AsCounted:
            return tr("As counted");
        case WithSpread:
            return tr("With spread");
        case HalfBy:
            return tr("Half of stuck by");
        default:
            return {};
    }
}

}  // namespace desktop
