// SPDX-License-Identifier: MIT
#include "app/desktop/help/keyboard_dialog.h"

#include <QAction>
#include <QCoreApplication>
#include <QDialog>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <array>
#include <utility>

#include "app/desktop/names/mnemonic.h"

namespace desktop {

namespace {

QString inKeyboardList(const char* text) {
    return QCoreApplication::translate("desktop::KeyboardList", text);
}

/// Keys that belong to a table or a field and so to no menu.
constexpr std::array keysInPlace{
    std::pair{QT_TRANSLATE_NOOP("desktop::KeyboardList", "letters, digits"),
              QT_TRANSLATE_NOOP("desktop::KeyboardList",
                                "Where no field has the focus: begin to find; a scanned label opens its batch")},
    std::pair{QT_TRANSLATE_NOOP("desktop::KeyboardList", "Up, Down, Enter"),
              QT_TRANSLATE_NOOP("desktop::KeyboardList", "Find: choose in the list, open")},
    std::pair{QT_TRANSLATE_NOOP("desktop::KeyboardList", "Esc"),
              QT_TRANSLATE_NOOP("desktop::KeyboardList",
                                "Back out of the innermost thing; Find: clear it and go back to where the focus was")},
    std::pair{QT_TRANSLATE_NOOP("desktop::KeyboardList", "Tab"),
              QT_TRANSLATE_NOOP("desktop::KeyboardList", "Leave a table for what comes next")},
    std::pair{
        QT_TRANSLATE_NOOP("desktop::KeyboardList", "Enter"),
        QT_TRANSLATE_NOOP("desktop::KeyboardList", "Tables: open or change the row. Readings: go to the next field")},
    std::pair{QT_TRANSLATE_NOOP("desktop::KeyboardList", "F2"),
              QT_TRANSLATE_NOOP("desktop::KeyboardList", "Tables: change the row or cell")},
    std::pair{QT_TRANSLATE_NOOP("desktop::KeyboardList", "Delete"),
              QT_TRANSLATE_NOOP("desktop::KeyboardList",
                                "Checks and other entries, photos, shelves: delete. Session: empty the cell")},
    std::pair{QT_TRANSLATE_NOOP("desktop::KeyboardList", "Insert"),
              QT_TRANSLATE_NOOP("desktop::KeyboardList", "Shelves: a new row")},
    std::pair{QT_TRANSLATE_NOOP("desktop::KeyboardList", "Ctrl+C"),
              QT_TRANSLATE_NOOP("desktop::KeyboardList", "Tables: copy the rows with their headings")},
    std::pair{QT_TRANSLATE_NOOP("desktop::KeyboardList", "Ctrl+V"),
              QT_TRANSLATE_NOOP("desktop::KeyboardList", "Batch: add the photo that was copied")},
    std::pair{QT_TRANSLATE_NOOP("desktop::KeyboardList", "Shift+F10"),
              QT_TRANSLATE_NOOP("desktop::KeyboardList",
                                "Batches: the menu of columns. Map of positions: the list of states")},
    std::pair{QT_TRANSLATE_NOOP("desktop::KeyboardList", "Up, Down"),
              QT_TRANSLATE_NOOP("desktop::KeyboardList", "Date fields: one day on or back")},
    std::pair{QT_TRANSLATE_NOOP("desktop::KeyboardList", "Ctrl+Return"),
              QT_TRANSLATE_NOOP("desktop::KeyboardList", "Round, session and map of positions: save")},
    std::pair{QT_TRANSLATE_NOOP("desktop::KeyboardList", "12  =12  +3  -2  -2r  w2"),
              QT_TRANSLATE_NOOP("desktop::KeyboardList",
                                "Round: a plain number as the switch says, rooted in all, newly rooted, lost, lost "
                                "with its cause, withdrawn")},
    std::pair{QT_TRANSLATE_NOOP("desktop::KeyboardList", "*  Space  .  /"),
              QT_TRANSLATE_NOOP("desktop::KeyboardList", "Round: nothing new (both), close the batch, a note")},
    std::pair{QT_TRANSLATE_NOOP("desktop::KeyboardList", "\""),
              QT_TRANSLATE_NOOP("desktop::KeyboardList", "Session: as in the row above")},
    std::pair{QT_TRANSLATE_NOOP("desktop::KeyboardList", "Ctrl+Delete"),
              QT_TRANSLATE_NOOP("desktop::KeyboardList", "Session: take the row out")},
    std::pair{
        QT_TRANSLATE_NOOP("desktop::KeyboardList", "R  L  W  U"),
        QT_TRANSLATE_NOOP("desktop::KeyboardList",
                          "Map of positions: rooted, lost, withdrawn, undecided; a letter of a cause: lost to it")},
    std::pair{QT_TRANSLATE_NOOP("desktop::KeyboardList", "Arrows, Home, End"),
              QT_TRANSLATE_NOOP("desktop::KeyboardList",
                                "Map of positions: one on, ends of the row; with Shift select a block; Ctrl and an "
                                "arrow: the next undecided one")},
    std::pair{QT_TRANSLATE_NOOP("desktop::KeyboardList", "/"),
              QT_TRANSLATE_NOOP("desktop::KeyboardList", "Map of positions: go to a position by its name")},
};

void addKeys(QTableWidget* table, const QString& keys, const QString& what) {
    const int row = table->rowCount();
    table->insertRow(row);
    table->setItem(row, 0, new QTableWidgetItem(keys));
    table->setItem(row, 1, new QTableWidgetItem(what));
}

QTableWidget* keyTable(const QList<QAction*>& actions, QWidget* parent) {
    auto* table = new QTableWidget(0, 2, parent);
    table->setObjectName("keyboardTable");
    table->setAccessibleName(inKeyboardList("Keys"));
    table->setHorizontalHeaderLabels({inKeyboardList("Keys"), inKeyboardList("What they do")});
    for (const QAction* action : actions)
        addKeys(table, QKeySequence::listToString(action->shortcuts(), QKeySequence::NativeText),
                withoutMnemonic(action->text()));
    for (const auto& [keys, what] : keysInPlace) addKeys(table, inKeyboardList(keys), inKeyboardList(what));
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setTabKeyNavigation(false);
    table->setShowGrid(false);
    table->setWordWrap(false);
    table->verticalHeader()->hide();
    table->horizontalHeader()->setStretchLastSection(true);
    table->resizeColumnsToContents();
    return table;
}

void showMatches(QTableWidget* table, const QString& sought) {
    for (int row = 0; row < table->rowCount(); ++row) {
        const bool matches = table->item(row, 0)->text().contains(sought, Qt::CaseInsensitive) ||
                             table->item(row, 1)->text().contains(sought, Qt::CaseInsensitive);
        table->setRowHidden(row, !matches);
    }
}

}  // namespace

void showKeyboardList(const QList<QAction*>& actions, QWidget* window) {
    auto* dialog = new QDialog(window);
    dialog->setObjectName("keyboardDialog");
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setWindowTitle(inKeyboardList("Keyboard list"));
    auto* table = keyTable(actions, dialog);
    auto* filter = new QLineEdit(dialog);
    filter->setObjectName("keyboardFilter");
    auto* label = new QLabel(inKeyboardList("&Find"), dialog);
    label->setBuddy(filter);
    auto* close = new QPushButton(inKeyboardList("Close"), dialog);
    close->setObjectName("keyboardClose");
    QObject::connect(filter, &QLineEdit::textChanged, table,
                     [table](const QString& sought) { showMatches(table, sought); });
    QObject::connect(close, &QPushButton::clicked, dialog, &QDialog::accept);

    auto* top = new QHBoxLayout;
    top->addWidget(label);
    top->addWidget(filter);
    auto* layout = new QVBoxLayout(dialog);
    layout->addLayout(top);
    layout->addWidget(table);
    layout->addWidget(close, 0, Qt::AlignRight);
    dialog->resize(dialog->fontMetrics().averageCharWidth() * 110, dialog->fontMetrics().height() * 34);
    dialog->open();
}

}  // namespace desktop
