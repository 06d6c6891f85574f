// SPDX-License-Identifier: MIT
#include "app/desktop/widgets/beside_or_below.h"

#include <QBoxLayout>
#include <QEvent>
#include <QScrollArea>
#include <QStyle>
#include <algorithm>

namespace desktop {

BesideOrBelow::BesideOrBelow(QWidget* parent)
    : QWidget(parent), layout_(new QBoxLayout(QBoxLayout::LeftToRight, this)) {
    layout_->setContentsMargins(0, 0, 0, 0);
}

void BesideOrBelow::add(QScrollArea& area, int share) {
    parts_.push_back({&area, share});
    layout_->addWidget(&area, share);
    area.widget()->installEventFilter(this);
    choose();
}

void BesideOrBelow::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    choose();
}

bool BesideOrBelow::eventFilter(QObject* watched, QEvent* event) {
    // What is in them may come to need more or less room.
    if (event->type() == QEvent::LayoutRequest) choose();
    return QWidget::eventFilter(watched, event);
}

void BesideOrBelow::choose() {
    layout_->setDirection(fitBeside() ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

bool BesideOrBelow::fitBeside() const {
    int shares = 0;
    for (const Part& part : parts_) shares += part.share;
    const int bar = style()->pixelMetric(QStyle::PM_ScrollBarExtent);
    const int room = width() - layout_->spacing() * static_cast<int>(parts_.size() - 1);
    return std::all_of(parts_.begin(), parts_.end(), [&](const Part& part) {
        return part.area->widget()->minimumSizeHint().width() + bar <= room * part.share / shares;
    });
}

}  // namespace desktop
