// SPDX-License-Identifier: MIT
#include "app/desktop/shelves/figure_and_unit.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <algorithm>

namespace desktop {

FigureAndUnit::FigureAndUnit(const QString& name, const QString& objectName, const std::vector<Unit>& units,
                             QWidget* parent)
    : QWidget(parent), line_(new QLineEdit), unit_(new QComboBox) {
    setObjectName(objectName + QStringLiteral("Field"));
    line_->setObjectName(objectName);
    line_->setAccessibleName(name);
    line_->setAlignment(Qt::AlignRight);
    line_->setMaxLength(20);
    line_->setMaximumWidth(fontMetrics().horizontalAdvance(QStringLiteral("0000000000")) + 2 * fontMetrics().height());
    unit_->setObjectName(objectName + QStringLiteral("Unit"));
    unit_->setAccessibleName(tr("%1: of what", "Lasts").arg(name));
    unit_->setAccessibleDescription(unit_->accessibleName());  // the name of a combo box is what it shows
    for (const Unit& unit : units) unit_->addItem(unit.text, unit.value);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(line_);
    row->addWidget(unit_);
    row->addStretch(1);
    setFocusProxy(line_);
    connect(line_, &QLineEdit::textEdited, this, &FigureAndUnit::edited);
    connect(unit_, &QComboBox::currentIndexChanged, this, &FigureAndUnit::edited);
}

void FigureAndUnit::set(const QString& figure, int unit) {
    line_->setText(figure);
    unit_->setCurrentIndex(std::max(0, unit_->findData(unit)));
}

QString FigureAndUnit::figure() const {
    return line_->text();
}

int FigureAndUnit::unit() const {
    return unit_->currentData().toInt();
}

}  // namespace desktop
