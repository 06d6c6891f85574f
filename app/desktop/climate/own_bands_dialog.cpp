// SPDX-License-Identifier: MIT
#include "app/desktop/climate/own_bands_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QTableView>
#include <QVBoxLayout>

#include "app/desktop/climate/own_bands_model.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/widgets/table_manners.h"
#include "app/desktop/workspace.h"

namespace desktop {

OwnBandsDialog::OwnBandsDialog(const PageContext& context, QWidget* parent)
    : QDialog(parent),
      context_(context),
      model_(new OwnBandsModel(context.workspace, this)),
      plant_(new QComboBox),
      table_(new QTableView),
      fault_(new FaultLabel) {
    setObjectName(QStringLiteral("ownBandsDialog"));
    setWindowTitle(tr("Own bands"));
    build();
    fillPlants();
    connect(plant_, &QComboBox::activated, this, [this] {
        model_->choosePlant(core::PlantId{plant_->currentData().toLongLong()});
        hasWarned_ = false;
    });
    connect(model_, &OwnBandsModel::judged, this, [this](const QString& sentence) {
        fault_->setFault(sentence);
        hasWarned_ = false;
    });
}

void OwnBandsDialog::build() {
    auto* hint = quietLabelSaying(
        tr("Type where your cuttings do well. A low alone or a high alone is enough; with both blank the trade's band "
           "holds. Each figure is kept at once."));
    plant_->setObjectName(QStringLiteral("ownBandsPlant"));
    plant_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    plant_->setMinimumContentsLength(30);
    auto* plantLabel = new QLabel(tr("&For"));
    plantLabel->setBuddy(plant_);
    auto* top = new QHBoxLayout;
    top->addWidget(plantLabel);
    top->addWidget(plant_);
    top->addStretch();
    table_->setObjectName(QStringLiteral("ownBandsTable"));
    table_->setAccessibleName(tr("Bands by stage and quantity"));
    table_->setModel(model_);
    giveTableManners(*table_);
    table_->setSelectionBehavior(QAbstractItemView::SelectItems);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setEditTriggers(QAbstractItemView::AnyKeyPressed | QAbstractItemView::EditKeyPressed |
                            QAbstractItemView::DoubleClicked | QAbstractItemView::SelectedClicked);
    table_->horizontalHeader()->setStretchLastSection(true);
    table_->resizeColumnsToContents();
    table_->setColumnWidth(OwnBandsModel::Note, fontMetrics().averageCharWidth() * 16);
    table_->setCurrentIndex(model_->index(0, OwnBandsModel::Low));
    // Before the buttons are made: else Tab leaves out one of them.
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(hint);
    layout->addLayout(top);
    layout->addWidget(table_, 1);
    layout->addWidget(fault_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    auto* remove = buttons->addButton(tr("&Trade's band again"), QDialogButtonBox::ActionRole);
    remove->setObjectName(QStringLiteral("ownBandsRemove"));
    remove->setToolTip(tr("Takes your own band of the chosen row away"));
    for (QAbstractButton* button : buttons->buttons()) static_cast<QPushButton*>(button)->setAutoDefault(false);
    connect(remove, &QPushButton::clicked, this, &OwnBandsDialog::removeChosen);
    connect(buttons, &QDialogButtonBox::rejected, this, &OwnBandsDialog::reject);
    layout->addWidget(buttons);
    const int em = fontMetrics().height();
    resize(QSize(em * 62, em * 36).boundedTo(screen()->availableSize() * 9 / 10));
    table_->setFocus();
}

void OwnBandsDialog::fillPlants() {
    plant_->addItem(tr("plants in general"), QVariant::fromValue<qlonglong>(0));
    if (!context_.workspace.hasLogbook()) return;
    for (const core::Plant& plant : context_.workspace.shelves().plants)
        if (!plant.isRetired)
            plant_->addItem(QString::fromStdString(core::fullName(plant)),
                            QVariant::fromValue<qlonglong>(plant.id.value));
}

void OwnBandsDialog::removeChosen() {
    if (const QModelIndex chosen = table_->currentIndex(); chosen.isValid()) model_->removeOwn(chosen.row());
}

void OwnBandsDialog::reject() {
    if (fault_->fault().isEmpty() || hasWarned_) return QDialog::reject();
    const QString before = fault_->fault();
    fault_->setFault(tr("%1 It is not kept; Esc again drops it.").arg(before));
    hasWarned_ = true;
}

}  // namespace desktop
