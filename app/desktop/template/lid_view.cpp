// SPDX-License-Identifier: MIT
#include "app/desktop/template/lid_view.h"

#include <QPainter>
#include <algorithm>

#include "app/desktop/look/look.h"
#include "app/plot/position_map.h"

namespace desktop {

LidView::LidView(QWidget* parent) : QWidget(parent) {
    setLayoutDirection(Qt::LeftToRight);
    setMinimumSize(fontMetrics().height() * 14, fontMetrics().height() * 10);
}

QSize LidView::sizeHint() const {
    return {fontMetrics().height() * 30, fontMetrics().height() * 20};
}

void LidView::show(const core::Lid& lid, const core::LidLayout& layout, const QString& words) {
    lid_ = lid;
    layout_ = layout;
    setAccessibleName(tr("The lid"));
    setAccessibleDescription(words);
    update();
}

void LidView::paintEvent(QPaintEvent*) {
    if (layout_.across <= 0 || layout_.down <= 0) return;
    const double line = fontMetrics().height(), rim = 2;
    const double scale =
        std::min((width() - 2 * rim) / layout_.across, (height() - 2 * rim - 1.2 * line) / layout_.down);
    if (scale <= 0) return;
    const QSizeF size(layout_.across * scale, layout_.down * scale);
    const QRectF lid(QPointF((width() - size.width()) / 2, (height() - size.height() - 1.2 * line) / 2), size);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(edgeColour(palette()), 1.5));
    painter.setBrush(palette().base());
    if (lid_.isRound)
        painter.drawEllipse(lid);
    else
        painter.drawRect(lid);
    painter.setPen(QPen(palette().text(), 1.2));
    painter.setBrush(palette().window());
    QFont small = font();
    small.setPixelSize(std::max(1, static_cast<int>(std::min(0.42 * lid_.hole * scale, 0.9 * line))));
    painter.setFont(small);
    constexpr int readable = 7;  // pixels
    for (const core::LidHole& hole : layout_.holes) {
        const double radius = lid_.hole / 2 * scale;
        const QPointF centre = lid.topLeft() + QPointF(hole.across, hole.down) * scale;
        painter.drawEllipse(centre, radius, radius);
        if (small.pixelSize() >= readable)
            painter.drawText(QRectF(centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius), Qt::AlignCenter,
                             QString::fromStdString(core::nameOf(hole.position)));
    }
    painter.setFont(font());
    painter.setPen(quietColour(palette()));
    painter.drawText(QRectF(0, lid.bottom() + 0.1 * line, width(), 1.1 * line), Qt::AlignCenter,
                     QStringLiteral("\u25B2 ") + plot::frontWord());
}

}  // namespace desktop
