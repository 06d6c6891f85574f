// SPDX-License-Identifier: MIT
#include "app/desktop/help/keyboard_dialog.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMenuBar>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

#include "app/desktop/names/text_labels.h"
#include "app/plot/number_text.h"

namespace desktop {

KeyboardDialog::KeyboardDialog(std::vector<KeyLine> lines, QWidget* parent)
    : QDialog(parent),
      lines_(std::move(lines)),
      search_(new QLineEdit(this)),
      list_(new QTreeWidget(this)),
      count_(quietLabel(QStringLiteral("keyboardCount"))) {
    setObjectName(QStringLiteral("keyboardDialog"));
    setWindowTitle(tr("Keyboard list"));
    build();
    fill();
    showMatches();
    resize(fontMetrics().averageCharWidth() * 110, fontMetrics().height() * 34);
}

void KeyboardDialog::build() {
    search_->setObjectName(QStringLiteral("keyboardSearch"));
    search_->setClearButtonEnabled(true);
    search_->installEventFilter(this);
    connect(search_, &QLineEdit::textChanged, this, &KeyboardDialog::showMatches);
    auto* label = new QLabel(tr("&Search keys and what they do"), this);
    label->setBuddy(search_);
    list_->setObjectName(QStringLiteral("keyboardTable"));
    list_->setAccessibleName(tr("Keys"));
    list_->setHeaderLabels({tr("Keys"), tr("What they do")});
    list_->setRootIsDecorated(false);
    list_->setItemsExpandable(false);
    list_->setAllColumnsShowFocus(true);
    list_->setTabKeyNavigation(false);
    list_->installEventFilter(this);
    auto* close = new QPushButton(tr("&Close"), this);
    close->setObjectName(QStringLiteral("keyboardClose"));
    close->setAutoDefault(false);  // Enter in the search leads to the list
    connect(close, &QPushButton::clicked, this, &QDialog::accept);

    auto* top = new QHBoxLayout;
    top->addWidget(label);
    top->addWidget(search_, 1);
    auto* foot = new QHBoxLayout;
    foot->addWidget(count_, 1);
    foot->addWidget(close);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(top);
    layout->addWidget(list_, 1);
    layout->addLayout(foot);
}

void KeyboardDialog::fill() {
    QTreeWidgetItem* place = nullptr;
    for (const KeyLine& line : lines_) {
        if (place == nullptr || place->text(0) != line.place) {
            place = new QTreeWidgetItem(list_, {line.place});
            QFont bold = list_->font();
            bold.setBold(true);
            place->setFont(0, bold);
            place->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
            place->setFirstColumnSpanned(true);
            place->setExpanded(true);
        }
        auto* item = new QTreeWidgetItem(place, {line.keys, line.what});
        for (const int column : {0, 1}) item->setToolTip(column, item->text(column));
    }
    list_->resizeColumnToContents(0);
}

void KeyboardDialog::showMatches() {
    int shown = 0;
    auto line = lines_.cbegin();
    for (int place = 0; place < list_->topLevelItemCount(); ++place) {
        QTreeWidgetItem* group = list_->topLevelItem(place);
        int inGroup = 0;
        for (int row = 0; row < group->childCount(); ++row, ++line) {
            const bool isShown = matches(*line, search_->text());
            group->child(row)->setHidden(!isShown);
            inGroup += isShown ? 1 : 0;
        }
        group->setHidden(inGroup == 0);
        shown += inGroup;
    }
    const QString all = plot::countText(static_cast<int>(lines_.size()));
    count_->setText(shown == 0 ? tr("No key does that. Esc clears the search.")
                               : tr("%1 of %2 lines").arg(plot::countText(shown), all));
}

void KeyboardDialog::goToList() {
    for (QTreeWidgetItem* item = list_->topLevelItem(0); item != nullptr; item = list_->itemBelow(item))
        if (item->parent() != nullptr && !item->isHidden()) {
            list_->setCurrentItem(item);
            break;
        }
    list_->setFocus(Qt::OtherFocusReason);
}

bool KeyboardDialog::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return QDialog::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (watched == search_ && (key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Down)) {
        goToList();
        return true;
    }
    if (key == Qt::Key_Escape && !search_->text().isEmpty()) {
        search_->clear();
        search_->setFocus(Qt::OtherFocusReason);
        return true;
    }
    return QDialog::eventFilter(watched, event);
}

void showKeyboardList(const QMenuBar& menus, QWidget* window) {
    auto* dialog = new KeyboardDialog(keyLines(menus), window);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

}  // namespace desktop
