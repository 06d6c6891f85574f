// SPDX-License-Identifier: MIT
#include "app/desktop/positions/mark_buttons.h"

#include <QEvent>
#include <QPainter>
#include <QPixmap>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/names/mnemonic.h"
#include "app/plot/palette.h"
#include "app/plot/position_map.h"

namespace desktop {

namespace {

// Wide enough for a wet finger also where the text is small.
constexpr int leastButton = 32;

plot::PlaceState stateOf(const Mark& mark) {
    if (!mark.outcome) return plot::PlaceState::Undecided;
    if (*mark.outcome == core::Outcome::Rooted) return plot::PlaceState::Rooted;
    return *mark.outcome == core::Outcome::Lost ? plot::PlaceState::Lost : plot::PlaceState::Withdrawn;
}

}  // namespace

MarkButtons::MarkButtons(std::vector<MarkKey> keys, QWidget* parent) : QWidget(parent), keys_(std::move(keys)) {
    setObjectName(QStringLiteral("markButtons"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(fontMetrics().height() / 4);
    for (const MarkKey& key : keys_) {
        const QString letter = key.letter.isNull() ? QString() : QString(key.letter);
        const QString name = asMenuText(key.name);
        auto* button =
            new QPushButton(letter.isEmpty() ? name : tr("%1  %2", "letter, what it marks").arg(letter, name), this);
        button->setObjectName(QStringLiteral("mark_") + (letter.isEmpty() ? key.name : letter));
        button->setToolTip(
            letter.isEmpty()
                ? tr("Marks the selected positions %1 and steps on.").arg(key.name)
                : tr("Marks the selected positions %1 and steps on; the key %2 does the same.").arg(key.name, letter));
        button->setAutoDefault(false);
        // A press must not take the keys away from the map.
        button->setFocusPolicy(Qt::TabFocus);
        connect(button, &QPushButton::clicked, this, [this, mark = key.mark] { emit pressed(mark); });
        layout->addWidget(button);
        buttons_.push_back(button);
    }
    layout->addStretch();
    draw();
}

void MarkButtons::setRound(bool isRound) {
    isRound_ = isRound;
    draw();
}

void MarkButtons::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) draw();
}

void MarkButtons::draw() {
    const int side = std::max(leastButton - 8, fontMetrics().height() * 3 / 2);
    const plot::Palette& colours = plot::paletteFor(palette());
    for (std::size_t i = 0; i < buttons_.size(); ++i) {
        const Mark& mark = keys_[i].mark;
        QPixmap pixmap(QSize(side, side) * devicePixelRatioF());
        pixmap.setDevicePixelRatio(devicePixelRatioF());
        pixmap.fill(Qt::transparent);
        QPainter painter(&pixmap);
        painter.setFont(font());
        painter.setRenderHint(QPainter::Antialiasing);
        plot::drawPlace(painter, QRectF(0, 0, side, side),
                        {.state = stateOf(mark), .letter = mark.outcome ? letterFor(keys_, mark) : QString()}, isRound_,
                        colours);
        painter.end();
        buttons_[i]->setIcon(QIcon(pixmap));
        buttons_[i]->setIconSize(QSize(side, side));
        buttons_[i]->setMinimumHeight(std::max(leastButton, fontMetrics().height() * 2));
    }
}

}  // namespace desktop
