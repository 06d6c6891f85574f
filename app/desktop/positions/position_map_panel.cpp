// SPDX-License-Identifier: MIT
#include "app/desktop/positions/position_map_panel.h"

#include <QItemSelectionModel>
#include <QLabel>
#include <QVBoxLayout>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/positions/position_map_model.h"
#include "app/desktop/positions/position_map_view.h"

namespace desktop {

PositionMapPanel::PositionMapPanel(PositionMapModel& model, QWidget* parent)
    : PositionMapPanel(new PositionMapView(model), parent) {}

PositionMapPanel::PositionMapPanel(PositionMapView* view, QWidget* parent)
    : QWidget(parent), view_(view), words_(new QLabel(this)), legend_(quietLabel(QStringLiteral("positionLegend"))) {
    build();
}

void PositionMapPanel::build() {
    words_->setObjectName(QStringLiteral("positionWords"));
    words_->setTextFormat(Qt::PlainText);
    words_->setWordWrap(true);
    words_->setMinimumHeight(fontMetrics().height());
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(view_, 1);
    layout->addWidget(words_);
    layout->addWidget(legend_);
    connect(view_->selectionModel(), &QItemSelectionModel::currentChanged, this, &PositionMapPanel::showWords);
    connect(&view_->map(), &QAbstractItemModel::dataChanged, this, &PositionMapPanel::showWords);
    connect(&view_->map(), &QAbstractItemModel::modelReset, this, &PositionMapPanel::showWords);
    connect(&view_->map(), &QAbstractItemModel::dataChanged, this, &PositionMapPanel::showLegend);
    connect(&view_->map(), &QAbstractItemModel::modelReset, this, &PositionMapPanel::showLegend);
    legend_->setWordWrap(true);
    showWords();
    showLegend();
}

void PositionMapPanel::showWords() {
    const QModelIndex current = view_->currentIndex();
    words_->setText(current.isValid()
                        ? view_->map().wordsFor(PositionMapModel::positionOf(current))
                        : tr("Click a position, or go there with the arrow keys, to read what it holds."));
}

void PositionMapPanel::setLegendShown(bool isShown) {
    legend_->setVisible(isShown);
}

void PositionMapPanel::showLegend() {
    QStringList letters;
    for (const MarkKey& key : view_->map().keys())
        if (key.mark.cause.isSet() && !key.letter.isNull())
            letters << tr("%1 %2", "letter, cause of loss").arg(key.letter).arg(key.name);
    legend_->setText(
        tr("Ring: undecided. Filled, R: rooted. Crossed: lost, with the letter of its cause (%1; L not known). "
           "Half filled, W: withdrawn. The number is the day it was found. Small: another batch; a dot: "
           "free; a bar: blocked.")
            .arg(letters.join(tr(", ", "between letters"))));
}

}  // namespace desktop
