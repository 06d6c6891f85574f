// SPDX-License-Identifier: MIT
#include "app/desktop/find/find_field.h"

#include <QApplication>
#include <QFrame>
#include <QKeyEvent>
#include <QLabel>
#include <QListView>
#include <QRegularExpression>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/find/find_model.h"
#include "app/desktop/find/find_row_delegate.h"
#include "app/desktop/find/finder.h"
#include "app/plot/number_text.h"
#include "core/batch/batch_code.h"

namespace desktop {

namespace {

constexpr int mostRowsSeen = 14;

/// Looks like one of our own codes, with the right check letter or not.
bool isShapedLikeACode(const QString& text) {
    static const QRegularExpression shape(QStringLiteral("^B\\d{6}[A-Z]$"));
    return shape.match(text).hasMatch();
}

}  // namespace

FindField::FindField(Finder& finder, QWidget* parent)
    : QLineEdit(parent), finder_(finder), model_(new FindModel(this)) {
    setObjectName("findField");
    setPlaceholderText(tr("a batch, plant, station or page"));
    setClearButtonEnabled(true);
    makeList();
    connect(this, &QLineEdit::textChanged, this, &FindField::find);
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget* old, QWidget* now) {
        if (now == this && old && old->window() == window()) before_ = old;
    });
}

void FindField::makeList() {
    popup_ = new QFrame(window());
    popup_->setObjectName("findPopup");
    popup_->setFrameShape(QFrame::Box);
    popup_->setAutoFillBackground(true);
    popup_->setBackgroundRole(QPalette::Base);
    popup_->hide();
    list_ = new QListView(popup_);
    list_->setObjectName("findList");
    list_->setAccessibleName(tr("Found"));
    list_->setModel(model_);
    list_->setItemDelegate(new FindRowDelegate(list_));
    list_->setFrameShape(QFrame::NoFrame);
    list_->setFocusPolicy(Qt::NoFocus);
    list_->setUniformItemSizes(true);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    count_ = new QLabel(popup_);
    count_->setObjectName("findCount");
    count_->setWordWrap(true);
    count_->setMargin(fontMetrics().height() / 4);
    auto* layout = new QVBoxLayout(popup_);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(list_, 1);
    layout->addWidget(count_);
    connect(list_, &QListView::clicked, this, [this](const QModelIndex& index) { open(index.row()); });
    window()->installEventFilter(this);
}

void FindField::enter() {
    setFocus(Qt::ShortcutFocusReason);
    selectAll();
}

void FindField::startWith(const QString& letter) {
    setFocus(Qt::OtherFocusReason);
    setText(letter);
}

void FindField::find() {
    isRowChosen_ = false;
    model_->show(finder_.find(text()));
    if (text().trimmed().isEmpty() || !hasFocus()) return hideList();
    showList();
}

void FindField::showList() {
    count_->setText(countText());
    count_->setVisible(!count_->text().isEmpty());
    list_->setVisible(model_->rowCount() > 0);
    list_->setCurrentIndex(model_->index(0));
    placeList();
    popup_->show();
    popup_->raise();
    tellCurrent();
}

QString FindField::countText() const {
    const int shown = model_->rowCount();
    const int total = model_->answer().total;
    if (shown == 0) return tr("Nothing has \u201c%1\u201d in its name or code.").arg(text().simplified());
    if (shown == total) return {};
    return tr("%1 more are not shown: another letter or word narrows it down.").arg(plot::countText(total - shown));
}

void FindField::hideList() {
    popup_->hide();
    setAccessibleDescription({});
}

void FindField::placeList() {
    const int em = fontMetrics().height();
    const QWidget* within = popup_->parentWidget();
    const QPoint below = mapTo(within, QPoint(0, height()));
    const int width = std::min(std::max(this->width(), em * 46), within->width());
    const int rows = std::min(model_->rowCount(), mostRowsSeen);
    const int words = count_->isHidden() ? 0 : count_->heightForWidth(width - 2 * popup_->frameWidth());
    const int edges = 2 * popup_->frameWidth();
    const int wanted = rows * (rows > 0 ? list_->sizeHintForRow(0) : 0) + words + edges;
    const int left = isRightToLeft() ? below.x() + this->width() - width : below.x();
    popup_->setGeometry(std::clamp(left, 0, within->width() - width), below.y(), width,
                        std::min(wanted, within->height() - below.y()));
}

void FindField::tellCurrent() {
    // The keys are in the field, so it is the field that tells a screen reader where the list stands.
    const int row = list_->currentIndex().row();
    const FoundThing* thing = model_->at(row);
    setAccessibleDescription(
        thing ? tr("%1 of %2: %3")
                    .arg(plot::countText(row + 1), plot::countText(model_->rowCount()), FindModel::inWords(*thing))
              : count_->text());
}

void FindField::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Escape:
            return leave();
        case Qt::Key_Return:
        case Qt::Key_Enter:
            return accept();
        case Qt::Key_Up:
        case Qt::Key_Down:
        case Qt::Key_PageUp:
        case Qt::Key_PageDown: {
            if (popup_->isHidden() && !text().trimmed().isEmpty()) return showList();
            isRowChosen_ = true;
            QApplication::sendEvent(list_, event);
            return tellCurrent();
        }
        default:
            return QLineEdit::keyPressEvent(event);
    }
}

void FindField::accept() {
    const QString typed = text().simplified();
    if (typed.isEmpty()) return;
    const int row = std::max(0, list_->currentIndex().row());
    const FoundThing* thing = model_->at(row);
    // A scanned code that is not in the logbook must not open what merely mentions it.
    const bool isUnknownCode = isShapedLikeACode(typed.toUpper()) && !isRowChosen_ && thing && !thing->isExact;
    if (thing && !isUnknownCode) return open(row);
    emit notFound(notFoundText());
    selectAll();
}

QString FindField::notFoundText() const {
    const QString typed = text().simplified();
    const QString code = typed.toUpper();
    if (!isShapedLikeACode(code))
        return tr("Read \u201c%1\u201d: nothing in this logbook has that in its name or code.").arg(typed);
    if (core::isBatchCode(code.toStdString())) return tr("Read %1: no batch of this logbook has that code.").arg(code);
    return tr("Read %1: that is no batch code, its last letter does not fit. Some of it was misread; scan or type it "
              "again.")
        .arg(code);
}

void FindField::open(int row) {
    const FoundThing* found = model_->at(row);
    if (!found) return;
    const FoundThing thing = *found;
    clear();
    hideList();
    emit chosen(thing);
}

void FindField::leave() {
    clear();
    hideList();
    if (before_ && before_->isVisible() && before_->isEnabled())
        before_->setFocus(Qt::OtherFocusReason);
    else
        emit left();
}

void FindField::focusInEvent(QFocusEvent* event) {
    QLineEdit::focusInEvent(event);
    if (!text().trimmed().isEmpty()) find();
}

void FindField::focusOutEvent(QFocusEvent* event) {
    QLineEdit::focusOutEvent(event);
    hideList();
}

bool FindField::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize && !popup_->isHidden()) placeList();
    return QLineEdit::eventFilter(watched, event);
}

}  // namespace desktop
