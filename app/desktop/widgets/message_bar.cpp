// SPDX-License-Identifier: MIT
#include "app/desktop/widgets/message_bar.h"

#include <QAccessible>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QToolButton>
#include <utility>

#include "app/desktop/look/look.h"

namespace desktop {

MessageBar::MessageBar(QWidget* parent)
    : QFrame(parent), sign_(new QLabel(this)), text_(new QLabel(this)), button_(new QPushButton(this)) {
    setObjectName("messageBar");
    setFrameShape(QFrame::NoFrame);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Window);
    text_->setObjectName("messageText");
    text_->setWordWrap(true);
    text_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    button_->setObjectName("messageButton");
    button_->setAutoDefault(false);

    auto* close = new QToolButton(this);
    close->setObjectName("messageClose");
    close->setAutoRaise(true);
    close->setIcon(icon("close"));
    close->setAccessibleName(tr("Close this message"));
    close->setToolTip(tr("Close this message"));
    connect(close, &QToolButton::clicked, this, &MessageBar::hush);
    connect(button_, &QPushButton::clicked, this, [this] {
        // The action may put another message here, so this one goes first.
        const std::function<void()> action = std::exchange(action_, nullptr);
        hide();
        if (action) action();
    });

    auto* layout = new QHBoxLayout(this);
    layout->addWidget(sign_);
    layout->addWidget(text_, 1);
    layout->addWidget(button_);
    layout->addWidget(close);
    hide();
}

void MessageBar::say(const QString& sentence, Tone tone) {
    offer(sentence, {}, nullptr, tone);
}

void MessageBar::offer(const QString& sentence, const QString& verb, std::function<void()> action, Tone tone) {
    tone_ = tone;
    colour();
    text_->setText(sentence);
    setAccessibleName(sentence);
    button_->setText(verb);
    button_->setVisible(!verb.isEmpty());
    action_ = std::move(action);
    show();
    QAccessibleEvent spoken(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&spoken);
}

void MessageBar::changeEvent(QEvent* event) {
    QFrame::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) colour();
}

void MessageBar::colour() {
    if (isColouring_) return;
    isColouring_ = true;
    // Only the roles that differ: with every role its own, the bar would never hear of another look.
    setPalette({});
    QPalette own;
    own.setColor(QPalette::Window, noteBackground(palette()));
    if (tone_ == Tone::Fault) own.setColor(QPalette::WindowText, faultColour(palette()));
    setPalette(own);
    sign_->setPixmap(icon(tone_ == Tone::Fault ? "fault" : "done").pixmap(fontMetrics().height()));
    isColouring_ = false;
}

void MessageBar::hush() {
    action_ = nullptr;
    hide();
}

QString MessageBar::sentence() const {
    return isHidden() ? QString() : text_->text();
}

}  // namespace desktop
