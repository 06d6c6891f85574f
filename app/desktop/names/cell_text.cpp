// SPDX-License-Identifier: MIT
#include "app/desktop/names/cell_text.h"

#include <QCache>
#include <QFontMetrics>
#include <QHash>
#include <QPainter>
#include <QStaticText>
#include <QTextOption>
#include <algorithm>

namespace desktop {

namespace {

constexpr int mostLines = 4096;  // some screens full

struct CellTextKey {
    QString text;
    QFont font;
    Qt::LayoutDirection direction;
    int room;  // what it is shortened to; 0: nothing

    bool operator==(const CellTextKey&) const = default;
};

size_t qHash(const CellTextKey& key, size_t seed) {
    // Fonts in a table differ in little, and a font's own hash takes longer than the text's.
    return qHashMulti(seed, key.text, key.font.italic(), static_cast<int>(key.direction), key.room);
}

QStaticText laidOut(const QString& text, const QFont& font, Qt::LayoutDirection direction) {
    QString line = text;
    line.replace(u'\n', u' ');
    QTextOption option(Qt::AlignLeft | Qt::AlignAbsolute);
    option.setTextDirection(direction);
    option.setWrapMode(QTextOption::ManualWrap);
    QStaticText laid(line);
    laid.setTextFormat(Qt::PlainText);
    laid.setTextOption(option);
    laid.setPerformanceHint(QStaticText::AggressiveCaching);
    laid.prepare({}, font);
    return laid;
}

/// Only the window's own thread draws.
QCache<CellTextKey, QStaticText>& keptLines() {
    static QCache<CellTextKey, QStaticText> kept(mostLines);
    return kept;
}

/// Valid until the next call.
const QStaticText& keptLine(const CellTextKey& key, const QString& shown) {
    if (const QStaticText* known = keptLines().object(key)) return *known;
    auto* laid = new QStaticText(laidOut(shown, key.font, key.direction));
    keptLines().insert(key, laid);
    return *laid;
}

}  // namespace

double cellTextWidth(const QFont& font, Qt::LayoutDirection direction, const QString& text) {
    return keptLine({text, font, direction, 0}, text).size().width();
}

DrawnText drawCellText(QPainter& painter, const QRect& place, Qt::Alignment alignment, Qt::LayoutDirection direction,
                       const QString& text) {
    if (text.isEmpty()) return {.width = 0, .isWhole = true};
    const QFont& font = painter.font();
    const QStaticText* line = &keptLine({text, font, direction, 0}, text);
    const bool isWhole = line->size().width() <= place.width();
    if (!isWhole) {
        const int room = std::max(place.width(), 1);
        const CellTextKey key{text, font, direction, room};
        line = keptLines().object(key);
        if (!line) line = &keptLine(key, QFontMetrics(font).elidedText(text, Qt::ElideRight, room));
    }
    const QSizeF size = line->size();
    const double left = alignment & Qt::AlignRight     ? place.x() + place.width() - size.width()
                        : alignment & Qt::AlignHCenter ? place.x() + (place.width() - size.width()) / 2
                                                       : place.x();
    const int top = place.y() + place.height() / 2 - static_cast<int>(size.height()) / 2;
    painter.drawStaticText(QPointF(left, top), *line);
    return {.width = size.width(), .isWhole = isWhole};
}

}  // namespace desktop
