// SPDX-License-Identifier: MIT
#include "app/desktop/climate/own_bands_model.h"

#include "app/desktop/look/look.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/workspace.h"
#include "app/plot/climate_text.h"
#include "core/climate/own_band_rules.h"
#include "core/units/entered_text.h"
#include "core/units/number_entry.h"
#include "db/actions/band_actions.h"

namespace desktop {

OwnBandsModel::OwnBandsModel(Workspace& workspace, QObject* parent)
    : QAbstractTableModel(parent), workspace_(workspace) {
    for (const core::Stage stage : core::allStages)
        for (const core::BandQuantity quantity : core::allBandQuantities()) rows_.push_back({stage, quantity});
    connect(&workspace_, &Workspace::logbookChanged, this, &OwnBandsModel::refresh);
    connect(&workspace_, &Workspace::logbookReplaced, this, &OwnBandsModel::refresh);
}

void OwnBandsModel::refresh() {
    emit dataChanged(index(0, 0), index(rowCount() - 1, Columns - 1));
}

void OwnBandsModel::choosePlant(core::PlantId plant) {
    beginResetModel();
    plant_ = plant;
    typed_.clear();
    endResetModel();
    emit judged({});
}

int OwnBandsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int OwnBandsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : Columns;
}

const core::OwnBand* OwnBandsModel::ownOf(const Row& row) const {
    if (!workspace_.hasLogbook()) return nullptr;
    return core::ownBandOf(workspace_.shelves(), row.stage, row.quantity, plant_);
}

QString OwnBandsModel::ownText(const Row& row, int column) const {
    const core::OwnBand* own = ownOf(row);
    if (own == nullptr) return {};
    if (column == Note) return QString::fromStdString(own->note);
    const std::optional<double>& end = column == Low ? own->low : own->high;
    return end ? plot::climateNumber(*end, core::climateQuantityOf(row.quantity), workspace_.shelves().facts.units)
               : QString();
}

QString OwnBandsModel::textAt(int row, int column) const {
    const Row& shown = rows_[static_cast<std::size_t>(row)];
    if (const auto typed = typed_.find({row, column}); typed != typed_.end()) return typed->second.text;
    const core::ClimateQuantity quantity = core::climateQuantityOf(shown.quantity);
    if (column == StageName) return plot::stageName(shown.stage);
    if (column == QuantityName) return plot::climateName(quantity);
    if (column == Low || column == High || column == Note) return ownText(shown, column);
    if (!workspace_.hasLogbook()) return {};
    const core::Shelves& shelves = workspace_.shelves();
    const auto band = core::bandFor(shelves, plant_, shown.stage, quantity);
    if (!band) return column == Good ? tr("nothing is said") : QString();
    if (column == Good) return plot::bandText(band->band, quantity, shelves.facts.units);
    if (column == Owner) return plot::ownerText(band->owner);
    return plot::bandSource(*band);
}

QVariant OwnBandsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const QString fault = faultAt(index);
    switch (role) {
        case Qt::DisplayRole:
        case Qt::EditRole:
            return textAt(index.row(), index.column());
        case Qt::ToolTipRole:
            return fault.isEmpty() ? textAt(index.row(), index.column()) : fault;
        case Qt::AccessibleDescriptionRole:
            return fault;
        case Qt::DecorationRole:
            return fault.isEmpty() ? QVariant() : QVariant(icon(QStringLiteral("fault")));
        case Qt::TextAlignmentRole:
            return index.column() == Low || index.column() == High ? QVariant(Qt::AlignRight | Qt::AlignVCenter)
                                                                   : QVariant();
        default:
            return {};
    }
}

QVariant OwnBandsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
        case StageName:
            return tr("Stage");
        case QuantityName:
            return tr("Quantity");
        case Good:
            return tr("Good now");
        case Owner:
            return tr("Whose");
        case Low:
            return tr("Own low");
        case High:
            return tr("Own high");
        case Note:
            return tr("Own note");
        default:
            return tr("Source");
    }
}

Qt::ItemFlags OwnBandsModel::flags(const QModelIndex& index) const {
    const bool isOwn = index.column() == Low || index.column() == High || index.column() == Note;
    const Qt::ItemFlags all = QAbstractTableModel::flags(index);
    return isOwn && workspace_.hasLogbook() && !workspace_.isReadOnly() ? all | Qt::ItemIsEditable : all;
}

QString OwnBandsModel::faultAt(const QModelIndex& index) const {
    const auto typed = typed_.find({index.row(), index.column()});
    return typed == typed_.end() ? QString() : typed->second.fault;
}

OwnBandsModel::End OwnBandsModel::endFrom(const QString& text, const Row& row, int column) const {
    if (text.trimmed().isEmpty()) return {};
    const core::DisplayUnits& units = workspace_.shelves().facts.units;
    const core::ClimateQuantity quantity = core::climateQuantityOf(row.quantity);
    const core::QuantityFacts& facts = core::factsOf(row.quantity);
    const QString name = column == Low ? tr("Own low") : tr("Own high");
    const QString allowed =
        tr("%1 to %2")
            .arg(plot::climateNumber(facts.low, quantity, units), plot::climateText(facts.high, quantity, units));
    const std::optional<double> shown = core::numberFrom(text.toStdString());
    if (!shown)
        return {{}, tr("%1 is \u201c%2\u201d; a number from %3 is allowed.").arg(name, text.trimmed(), allowed)};
    const double stored = plot::storedClimate(*shown, quantity, units);
    if (stored < facts.low || stored > facts.high)
        return {{}, tr("%1 is %2; %3 is allowed.").arg(name, text.trimmed(), allowed)};
    return {stored, {}};
}

bool OwnBandsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || !(flags(index) & Qt::ItemIsEditable)) return false;
    const QString text = value.toString();
    if (text == textAt(index.row(), index.column())) return true;
    typed_[{index.row(), index.column()}] = {text, {}};
    const bool isKept = keep(index.row());
    refresh();
    return isKept;
}

void OwnBandsModel::mark(int row, int column, const QString& fault) {
    Typed& typed = typed_[{row, column}];
    if (typed.text.isEmpty() && typed.fault.isEmpty())
        typed.text = ownText(rows_[static_cast<std::size_t>(row)], column);
    typed.fault = fault;
    emit judged(fault);
}

bool OwnBandsModel::keep(int row) {
    const Row& shown = rows_[static_cast<std::size_t>(row)];
    const End low = endFrom(textAt(row, Low), shown, Low), high = endFrom(textAt(row, High), shown, High);
    for (const int column : {Low, High}) {
        const QString& fault = column == Low ? low.fault : high.fault;
        if (!fault.isEmpty()) {
            mark(row, column, fault);
            return false;
        }
    }
    if (low.stored && high.stored && *low.stored > *high.stored) {
        mark(row, typed_.contains({row, High}) ? High : Low,
             tr("Own low is %1 and own high is %2; the low can be no higher than the high.")
                 .arg(textAt(row, Low), textAt(row, High)));
        return false;
    }
    const QString note = textAt(row, Note);
    const core::OwnBand* own = ownOf(shown);
    if (!low.stored && !high.stored) {
        if (own == nullptr && note.trimmed().isEmpty())
            return typed_.erase({row, Low}), typed_.erase({row, High}), true;
        if (own != nullptr) return removeOwn(row);
        mark(row, Note, tr("Own note stands alone; a low, a high or both belong to it."));
        return false;
    }
    const core::OwnBand band{.id = {},
                             .stage = shown.stage,
                             .quantity = shown.quantity,
                             .plant = plant_,
                             .low = low.stored,
                             .high = high.stored,
                             .note = note.trimmed().toStdString()};
    const Outcome outcome = workspace_.run([&](db::Logbook& logbook) { return db::setOwnBand(logbook, band); });
    if (!outcome.isDone) {
        mark(row, outcome.refusals.empty() || outcome.refusals.front().field != "Note" ? Low : Note,
             sentencesOf(outcome.refusals));
        return false;
    }
    for (const int column : {Low, High, Note}) typed_.erase({row, column});
    emit judged({});
    return true;
}

bool OwnBandsModel::removeOwn(int row) {
    for (const int column : {Low, High, Note}) typed_.erase({row, column});
    const core::OwnBand* own = ownOf(rows_[static_cast<std::size_t>(row)]);
    if (own == nullptr) return false;
    const core::OwnBandId id = own->id;
    const Outcome outcome = workspace_.run([&](db::Logbook& logbook) { return db::removeOwnBand(logbook, id); });
    emit judged(sentencesOf(outcome.refusals));
    return outcome.isDone;
}

}  // namespace desktop
