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

MessageBar::MessageBar(QWidget* parent) : QFrame(parent), button_(new QPushButton(this)) {
    setObjectName("messageBar");
    said_ = makeLine("messageSaid");
    offered_ = makeLine("messageText");
    setFrameShape(QFrame::NoFrame);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Window);
    button_->setObjectName("messageButton");
    button_->setAutoDefault(false);
    connect(button_, &QPushButton::clicked, this, &MessageBar::act);
    auto* close = new QToolButton(this);
    close->setObjectName("messageClose");
    close->setAutoRaise(true);
    close->setIcon(icon("close"));
    close->setAccessibleName(tr("Close this message"));
    close->setToolTip(tr("Close this message"));
    connect(close, &QToolButton::clicked, this, &MessageBar::hush);

    offered_.row->layout()->addWidget(button_);
    auto* lines = new QVBoxLayout;
    lines->addWidget(said_.row);
    lines->addWidget(offered_.row);
    auto* layout = new QHBoxLayout(this);
    layout->addLayout(lines, 1);
    layout->addWidget(close, 0, Qt::AlignTop);
    hide();
}

MessageBar::Line MessageBar::makeLine(const QString& name) {
    Line line{.row = new QWidget(this), .sign = new QLabel(this), .text = new QLabel(this)};
    line.text->setObjectName(name);
    line.text->setWordWrap(true);
    line.text->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* layout = new QHBoxLayout(line.row);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(line.sign);
    layout->addWidget(line.text, 1);
    line.row->hide();
    return line;
}

void MessageBar::put(const Line& line, const QString& sentence) {
    line.text->setText(sentence);
    line.row->setVisible(!sentence.isEmpty());
}

void MessageBar::say(const QString& sentence, Tone tone) {
    tone_ = tone;
    put(said_, sentence);
    announce(sentence);
}

void MessageBar::offer(const QString& sentence, const QString& verb, std::function<void()> action) {
    put(said_, {});
    put(offered_, sentence);
    button_->setText(verb);
    action_ = std::move(action);
    announce(sentence);
}

void MessageBar::act() {
    // The action may put another message here, so this one goes first.
    const std::function<void()> action = std::exchange(action_, nullptr);
    hush();
    if (action) action();
}

void MessageBar::announce(const QString& sentence) {
    colour();
    setAccessibleName(sentence);
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
    said_.text->setPalette({});
    QPalette own;
    own.setColor(QPalette::Window, noteBackground(palette()));
    setPalette(own);
    QPalette fault;
    fault.setColor(QPalette::WindowText, faultColour(palette()));
    if (tone_ == Tone::Fault) said_.text->setPalette(fault);
    said_.sign->setPixmap(icon(tone_ == Tone::Fault ? "fault" : "done").pixmap(fontMetrics().height()));
    offered_.sign->setPixmap(icon("done").pixmap(fontMetrics().height()));
    isColouring_ = false;
}

void MessageBar::hushSaid() {
    put(said_, {});
    setVisible(!offered_.row->isHidden());
}

void MessageBar::hush() {
    action_ = nullptr;
    put(offered_, {});
    hushSaid();
}

QString MessageBar::sentence() const {
    QStringList sentences;
    for (const Line* line : {&said_, &offered_})
        if (!isHidden() && !line->row->isHidden()) sentences.append(line->text->text());
    return sentences.join(u' ');
}

}  // namespace desktop
