// SPDX-License-Identifier: MIT
// The part of MainWindow that goes places: pages, things found, the way back.
#include <QApplication>
#include <QFontMetrics>
#include <QHBoxLayout>
#include <QLabel>
#include <QScopedValueRollback>
#include <QScrollArea>
#include <QStackedWidget>
#include <QToolButton>
#include <algorithm>

#include "app/desktop/find/find_field.h"
#include "app/desktop/find/finder.h"
#include "app/desktop/find/stray_letters.h"
#include "app/desktop/look/appearance.h"
#include "app/desktop/look/look.h"
#include "app/desktop/main_window.h"
#include "app/desktop/page_list.h"
#include "app/desktop/widgets/message_bar.h"
#include "app/desktop/workspace.h"

namespace desktop {

namespace {

QToolButton* wayButton(const QString& name, const QString& iconName, const QString& text, QWidget* parent) {
    auto* button = new QToolButton(parent);
    button->setObjectName(name);
    button->setAutoRaise(true);
    button->setIcon(icon(iconName));
    button->setAccessibleName(text);
    return button;
}

}  // namespace

QWidget* MainWindow::makeHead() {
    auto* head = new QWidget(this);
    makeWay(head);
    makeFind(head);
    auto* label = new QLabel(tr("Find"), head);
    label->setBuddy(find_);
    auto* layout = new QHBoxLayout(head);
    layout->setContentsMargins(fontMetrics().height() / 2, fontMetrics().height() / 4, fontMetrics().height() / 2, 0);
    layout->addWidget(back_);
    layout->addWidget(forward_);
    layout->addSpacing(fontMetrics().height() / 2);
    layout->addWidget(label);
    layout->addWidget(find_, 1);
    return head;
}

void MainWindow::makeWay(QWidget* head) {
    // Where one reads from right to left, what was before lies at the right.
    const bool isMirrored = isRightToLeft();
    back_ = wayButton("wayBack", isMirrored ? "forward" : "back", tr("Back"), head);
    back_->setToolTip(
        tr("Back to what was in front before (%1)").arg(QKeySequence("Alt+Left").toString(QKeySequence::NativeText)));
    forward_ = wayButton("wayForward", isMirrored ? "back" : "forward", tr("Forward"), head);
    forward_->setToolTip(tr("Forward again (%1)").arg(QKeySequence("Alt+Right").toString(QKeySequence::NativeText)));
    connect(back_, &QToolButton::clicked, this, &MainWindow::goBack);
    connect(forward_, &QToolButton::clicked, this, &MainWindow::goForward);
    connect(this, &MainWindow::situationChanged, this, [this] {
        back_->setEnabled(hasWayBack());
        forward_->setEnabled(hasWayForward());
    });
    const auto fitSigns = [this] {
        const int size = QFontMetrics(QApplication::font()).height() * 5 / 4;
        for (QToolButton* button : {back_, forward_}) button->setIconSize(QSize(size, size));
    };
    fitSigns();
    connect(&parts_.appearance, &Appearance::changed, head, fitSigns);
}

void MainWindow::makeFind(QWidget* head) {
    auto* finder = new Finder(parts_.context.workspace, parts_.pages, parts_.tasks, this);
    find_ = new FindField(*finder, head);
    find_->setToolTip(tr("Finds by any part of a name or code (%1). A scanned label opens its batch.")
                          .arg(QKeySequence("Ctrl+K").toString(QKeySequence::NativeText)));
    connect(find_, &FindField::chosen, this, &MainWindow::open);
    connect(find_, &FindField::notFound, this,
            [this](const QString& sentence) { bar_->say(sentence, MessageBar::Tone::Fault); });
    connect(find_, &FindField::left, this, [this] {
        if (Page* page = currentPage()) page->activated();
    });
}

void MainWindow::catchStrayLetters() {
    new StrayLetters(*this, [this](const QString& letter) {
        if (parts_.context.workspace.hasLogbook()) find_->startWith(letter);
    });
}

void MainWindow::findSomething() {
    if (parts_.context.workspace.hasLogbook()) find_->enter();
}

void MainWindow::open(const FoundThing& thing) {
    bar_->hushSaid();
    if (thing.kind == FindKind::Task) {
        if (Page* page = currentPage()) page->activated();
        startTask(thing.task);
    } else {
        goTo(thing.place);
    }
}

void MainWindow::showPage(int number) {
    if (number < 0 || number >= list_->count() || !parts_.context.workspace.hasLogbook()) return;
    bringToFront(number);
    noteWhere();
}

void MainWindow::bringToFront(int number) {
    front_ = builtPage(number);
    pages_->setCurrentWidget(built_[static_cast<std::size_t>(number)].frame);
    const QSignalBlocker quiet(list_);
    list_->setCurrentRow(number);
    if (isVisible()) front_->activated();
}

int MainWindow::numberFor(const Place& place) const {
    const auto found = std::ranges::find_if(parts_.pages, [&](const PageEntry& page) {
        return place.page.isEmpty() ? std::ranges::find(page.shows, place.kind) != page.shows.end()
                                    : page.name == place.page;
    });
    return found == parts_.pages.end() ? -1 : static_cast<int>(found - parts_.pages.begin());
}

bool MainWindow::goTo(const Place& place) {
    const int number = numberFor(place);
    if (number < 0 || !parts_.context.workspace.hasLogbook() || !builtPage(number)->showPlace(place)) return false;
    bringToFront(number);
    noteWhere();
    return true;
}

void MainWindow::noteWhere() {
    if (!isRetracing_) {
        Place here = front_->place();
        here.page = parts_.pages[static_cast<std::size_t>(list_->currentRow())].name;
        trail_.visit(here);
    }
    emit situationChanged();
}

void MainWindow::goBack() {
    const QScopedValueRollback retracing(isRetracing_, true);
    trail_.back([this](const Place& place) { return goTo(place); });
    emit situationChanged();
}

void MainWindow::goForward() {
    const QScopedValueRollback retracing(isRetracing_, true);
    trail_.forward([this](const Place& place) { return goTo(place); });
    emit situationChanged();
}

}  // namespace desktop
