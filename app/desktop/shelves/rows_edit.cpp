// SPDX-License-Identifier: MIT
#include "app/desktop/shelves/rows_edit.h"

#include <QComboBox>
#include <QCompleter>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/look/look.h"

namespace desktop {

RowsEdit::RowsEdit(std::vector<Field> fields, const QString& addText, const QString& lineText, QWidget* parent)
    : QWidget(parent),
      fields_(std::move(fields)),
      lineText_(lineText),
      grid_(new QGridLayout),
      add_(new QPushButton(addText)) {
    add_->setAutoDefault(false);
    for (std::size_t number = 0; number < fields_.size(); ++number) {
        titles_.push_back(new QLabel(fields_[number].title));
        grid_->addWidget(titles_.back(), 0, static_cast<int>(2 * number));
    }
    grid_->setColumnStretch(0, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(grid_);
    layout->addWidget(add_, 0, Qt::AlignLeft);
    connect(add_, &QPushButton::clicked, this, [this] {
        addLine(QStringList(static_cast<qsizetype>(fields_.size())));
        lines_.back().editors.front()->setFocus(Qt::OtherFocusReason);
        emit changed();
    });
}

void RowsEdit::setLines(const std::vector<QStringList>& lines) {
    // Lines that are there are written over: new ones would come last for Tab, after all that stands below.
    const QSignalBlocker quiet(this);
    while (lines_.size() > std::max<std::size_t>(lines.size(), 1)) takeAway(lines_.back().others.back());
    if (lines_.empty()) addLine(QStringList(static_cast<qsizetype>(fields_.size())));
    for (std::size_t number = 0; number < std::max<std::size_t>(lines.size(), 1); ++number) {
        const QStringList texts = number < lines.size() ? lines[number] : QStringList();
        if (number == lines_.size()) addLine(texts);
        for (std::size_t field = 0; field < fields_.size(); ++field)
            write(lines_[number].editors[field], texts.value(static_cast<qsizetype>(field)));
    }
}

QWidget* RowsEdit::makeEditor(const Field& field, const QString& text) {
    if (field.kind == Kind::Choice) {
        auto* box = new QComboBox;
        box->addItems(field.offers);
        box->setCurrentIndex(std::max(0, box->findText(text)));
        connect(box, &QComboBox::currentIndexChanged, this, &RowsEdit::changed);
        return box;
    }
    auto* edit = new QLineEdit(text);
    if (field.kind == Kind::Number) {
        edit->setAlignment(Qt::AlignRight);
        edit->setMaximumWidth(fontMetrics().horizontalAdvance(QStringLiteral("0000000000")) +
                              2 * fontMetrics().height());
    } else if (!field.offers.isEmpty()) {
        auto* completer = new QCompleter(field.offers, edit);
        completer->setCaseSensitivity(Qt::CaseInsensitive);
        edit->setCompleter(completer);
    }
    connect(edit, &QLineEdit::textChanged, this, &RowsEdit::changed);
    return edit;
}

void RowsEdit::addLine(const QStringList& texts) {
    Line line;
    const int row = nextRow_++;
    QWidget* before = lines_.empty() ? nullptr : lines_.back().others.back();
    for (std::size_t number = 0; number < fields_.size(); ++number) {
        const int column = static_cast<int>(2 * number);
        QWidget* editor = makeEditor(fields_[number], texts.value(static_cast<qsizetype>(number)));
        grid_->addWidget(editor, row, column);
        line.editors.push_back(editor);
        if (!fields_[number].unit.isEmpty()) {
            line.others.push_back(new QLabel(fields_[number].unit));
            grid_->addWidget(line.others.back(), row, column + 1);
        }
        if (before) setTabOrder(before, editor);
        before = editor;
    }
    auto* away = new QToolButton;
    away->setIcon(icon(QStringLiteral("close")));
    away->setAutoRaise(true);
    connect(away, &QToolButton::clicked, this, [this, away] {
        takeAway(away);
        emit changed();
    });
    grid_->addWidget(away, row, static_cast<int>(2 * fields_.size()));
    setTabOrder(before, away);
    setTabOrder(away, add_);
    line.others.push_back(away);
    lines_.push_back(std::move(line));
    nameLines();
}

void RowsEdit::takeAway(const QWidget* button) {
    const auto gone = std::ranges::find_if(
        lines_, [button](const Line& line) { return !line.others.empty() && line.others.back() == button; });
    if (gone == lines_.end()) return;
    for (QWidget* widget : gone->editors) widget->deleteLater();
    for (QWidget* widget : gone->others) {
        widget->hide();
        widget->deleteLater();
    }
    for (QWidget* widget : gone->editors) widget->hide();
    lines_.erase(gone);
    nameLines();
    add_->setFocus(Qt::OtherFocusReason);
}

void RowsEdit::nameLines() {
    setFocusProxy(lines_.empty() ? add_ : lines_.front().editors.front());
    for (std::size_t field = 0; field < fields_.size(); ++field)
        titles_[field]->setBuddy(lines_.empty() ? nullptr : lines_.front().editors[field]);
    for (std::size_t row = 0; row < lines_.size(); ++row) {
        const QString number = QString::number(row + 1);
        for (std::size_t field = 0; field < fields_.size(); ++field) {
            QWidget* editor = lines_[row].editors[field];
            editor->setObjectName(fields_[field].objectName + number);
            const QString name = tr("%1 %2: %3", "Component 2: parts").arg(lineText_, number, fields_[field].title);
            editor->setAccessibleName(name);
            editor->setAccessibleDescription(name);  // the name of a combo box is what it shows
        }
        QWidget* away = lines_[row].others.back();
        away->setObjectName(fields_.front().objectName + QStringLiteral("Away") + number);
        away->setAccessibleName(tr("Take %1 %2 away", "Component 2").arg(lineText_, number));
        away->setToolTip(away->accessibleName());
    }
}

QString RowsEdit::textIn(const QWidget* editor) {
    if (const auto* box = qobject_cast<const QComboBox*>(editor)) return box->currentText();
    const auto* edit = qobject_cast<const QLineEdit*>(editor);
    return edit ? edit->text().simplified() : QString();
}

void RowsEdit::write(QWidget* editor, const QString& text) {
    if (auto* box = qobject_cast<QComboBox*>(editor)) box->setCurrentIndex(std::max(0, box->findText(text)));
    if (auto* edit = qobject_cast<QLineEdit*>(editor)) edit->setText(text);
}

std::vector<QStringList> RowsEdit::lines() const {
    std::vector<QStringList> all;
    for (const Line& line : lines_) {
        QStringList texts;
        bool isBlank = true;
        for (std::size_t field = 0; field < fields_.size(); ++field) {
            texts << textIn(line.editors[field]);
            if (fields_[field].kind != Kind::Choice && !texts.back().isEmpty()) isBlank = false;
        }
        if (!isBlank) all.push_back(std::move(texts));
    }
    return all;
}

}  // namespace desktop
