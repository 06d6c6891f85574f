// SPDX-License-Identifier: MIT
#include "tests/desktop/help/key_stages.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QClipboard>
#include <QDialog>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QTabWidget>
#include <QTest>
#include <QTreeView>

#include "app/desktop/pictures/dialog_scene.h"
#include "app/desktop/pictures/drawn_photos.h"
#include "app/desktop/positions/position_map_model.h"
#include "app/desktop/positions/position_mark_view.h"
#include "app/desktop/shelves/shelf_list.h"
#include "app/desktop/shelves/shelf_view.h"
#include "app/desktop/widgets/date_edit.h"
#include "app/desktop/workspace.h"
#include "db/actions/event_actions.h"
#include "db/actions/price_actions.h"
#include "db/actions/shelf_actions.h"
#include "tests/desktop/whole/whole_window.h"

namespace help {

namespace {

using desktop::MainWindow;

QWidget* focused(QWidget* widget) {
    if (widget == nullptr) return nullptr;
    widget->setFocus(Qt::OtherFocusReason);
    whole::settle();
    return QApplication::focusWidget();
}

QDialog* scene(MainWindow& window, const QString& name) {
    for (const desktop::DialogScene& each : desktop::dialogScenes())
        if (each.name == name) return each.open(window);
    return nullptr;
}

QWidget* inScene(MainWindow& window, const QString& name, const char* widget) {
    const QDialog* dialog = scene(window, name);
    whole::settle();
    return dialog == nullptr ? nullptr : focused(dialog->findChild<QWidget*>(QLatin1String(widget)));
}

QAbstractItemView* view(MainWindow& window, const char* name) {
    auto* found = window.findChild<QAbstractItemView*>(QLatin1String(name));
    if (found != nullptr && found->model()->rowCount() > 0) found->setCurrentIndex(found->model()->index(0, 0));
    return found;
}

QWidget* bench(MainWindow& window) {
    window.showPage(0);
    auto* due = window.findChild<QTreeView*>("benchDue");
    if (due != nullptr) due->setCurrentIndex(due->model()->index(0, 0, due->model()->index(0, 0)));
    return focused(due);
}

QWidget* find(MainWindow& window) {
    window.showPage(0);
    window.findSomething();
    auto* field = window.findChild<QLineEdit*>("findField");
    field->setText("a");
    emit field->textEdited("a");
    // Not at an end of the list, so that every way leads somewhere.
    for (int row = 0; row < 4; ++row) QTest::keyClick(field, Qt::Key_Down);
    return field;
}

QWidget* batchTable(MainWindow& window) {
    window.goTo({.page = "batches"});
    return focused(view(window, "batchTable"));
}

QWidget* filter(MainWindow& window) {
    window.goTo({.page = "batches"});
    auto* field = window.findChild<QLineEdit*>("batchFilter");
    field->setText("a");
    return focused(field);
}

QWidget* onePlantsBatches(MainWindow& window) {
    const core::Shelves& shelves = window.parts().context.workspace.shelves();
    window.goTo(desktop::placeOf(shelves.plants.front().id));
    return focused(view(window, "batchTable"));
}

QWidget* batch(MainWindow& window) {
    window.showBatch(desktop::batchInWork(window, true));
    return focused(window.findChild<QWidget*>("timeline"));
}

QWidget* batchWithAPictureCopied(MainWindow& window) {
    QImage picture(64, 48, QImage::Format_RGB32);
    picture.fill(Qt::darkGreen);
    QApplication::clipboard()->setImage(picture);
    return batch(window);
}

QWidget* timeline(MainWindow& window) {
    batch(window);
    auto* table = view(window, "timeline");
    table->setCurrentIndex(table->model()->index(table->model()->rowCount() - 1, 0));
    return focused(table);
}

QWidget* photos(MainWindow& window) {
    const core::BatchId shown = desktop::batchInWork(window, true);
    desktop::addDrawnPhotos(window.parts().context.workspace, shown);
    window.showBatch(shown);
    if (auto* tabs = window.findChild<QTabWidget*>("batchFigures")) tabs->setCurrentIndex(tabs->count() - 1);
    return focused(view(window, "photoList"));
}

QWidget* note(MainWindow& window) {
    batch(window);
    auto* edit = window.findChild<QPlainTextEdit*>("batchNote");
    focused(edit);
    for (QWidget* around = edit; around != nullptr; around = around->parentWidget())
        if (auto* area = qobject_cast<QScrollArea*>(around)) area->ensureWidgetVisible(edit);
    QTest::keyClicks(edit, QStringLiteral("x"));
    return edit;
}

QWidget* plans(MainWindow& window) {
    window.goTo({.page = "plan"});
    return focused(view(window, "planTable"));
}

QWidget* shelf(MainWindow& window) {
    window.goTo({.page = {}, .kind = desktop::Place::Kind::Shelf, .id = 0});
    return focused(view(window, "shelfTable"));
}

QWidget* prices(MainWindow& window) {
    constexpr int place = static_cast<int>(desktop::ShelfKind::Prices);
    desktop::Workspace& workspace = window.parts().context.workspace;
    const core::Price pump{
        .what = "pump", .from = core::addDays(workspace.today(), -9), .tenThousandths = 249'000, .lastsYears = 4};
    const auto keep = [&](db::Logbook& logbook) { return db::keep(logbook, pump, workspace.today()); };
    if (workspace.shelves().prices.empty() && !workspace.run(keep).isDone) return nullptr;
    window.goTo({.page = {}, .kind = desktop::Place::Kind::Shelf, .id = place});
    const auto* shown = window.findChild<desktop::ShelfView*>(desktop::allShelves()[place].word);
    auto* table = shown == nullptr ? nullptr : shown->findChild<QAbstractItemView*>("shelfTable");
    if (table != nullptr) table->setCurrentIndex(table->model()->index(0, 0));
    return focused(table);
}

/// In a field that has another after it, with something to keep.
QWidget* usualPrices(MainWindow& window) {
    QWidget* field = inScene(window, "usual_prices", "usual0Figure0");
    if (field != nullptr) QTest::keyClicks(field, QStringLiteral("5"));
    return field;
}

/// On one that was written down.
QWidget* sessionExpenses(MainWindow& window) {
    desktop::Workspace& workspace = window.parts().context.workspace;
    const core::BatchId shown = desktop::batchInWork(window, true);
    const core::Batch batch = workspace.logbook().batch(shown)->batch;
    const core::Expense fuel{.spentOn = batch.stuckOn, .what = "fuel", .hundredths = 900, .session = batch.session};
    const auto keep = [&](db::Logbook& logbook) { return db::keepExpense(logbook, fuel, workspace.today()); };
    if (!workspace.run(keep).isDone) return nullptr;
    return inScene(window, "session_facts", "sessionExpenses");
}

QWidget* day(MainWindow& window) {
    const QDialog* dialog = scene(window, desktop::task::session);
    auto* edit = dialog == nullptr ? nullptr : dialog->findChild<desktop::DateEdit*>();
    return edit == nullptr ? nullptr : focused(edit->line());
}

QWidget* map(MainWindow& window) {
    window.showPage(0);  // a batch in front would be the one that is looked at
    const QDialog* dialog = scene(window, desktop::task::holeByHole);
    auto* lid = dialog == nullptr ? nullptr : dialog->findChild<desktop::PositionMarkView*>();
    if (lid == nullptr || !lid->map().station().hasLayout()) return nullptr;
    focused(lid);
    lid->goToStart();
    QTest::keyClick(lid, Qt::Key_R);  // something to take back and to save
    for (int step = 0; step < 2; ++step) QTest::keyClick(lid, Qt::Key_Right, Qt::ControlModifier);
    QTest::keyClick(lid, Qt::Key_Down);  // from where every arrow leads on
    return lid;
}

/// In a row that has another above it.
QWidget* sessionRows(MainWindow& window) {
    QWidget* grid = inScene(window, "session_typed", "sessionGrid");
    if (grid != nullptr) QTest::keyClick(grid, Qt::Key_Down);
    return grid;
}

/// In the last row, where no other batch stands.
QWidget* places(MainWindow& window) {
    QWidget* map = inScene(window, "place_batch", "positionMap");
    for (int row = 0; map != nullptr && row < 26; ++row) QTest::keyClick(map, Qt::Key_Down);
    return map;
}

QWidget* settings(MainWindow& window) {
    desktop::Workspace& workspace = window.parts().context.workspace;
    core::LogbookFacts facts = workspace.shelves().facts;
    facts.grower = "Somebody else";
    if (!workspace.run([&](db::Logbook& logbook) { return db::keep(logbook, facts); }).isDone) return nullptr;
    return inScene(window, "settings", "settingsTabs");
}

}  // namespace

const std::map<QString, Stage>& stages() {
    static const std::map<QString, Stage> all{
        {"Everywhere", bench},
        {"Find", find},
        {"Filters above tables", filter},
        {"Tables", batchTable},
        {"Days", day},
        {"Bench", bench},
        {"Batches", batchTable},
        {"Batches, of one plant", onePlantsBatches},
        {"A batch", batch},
        {"A batch, a picture copied", batchWithAPictureCopied},
        {"A batch: timeline", timeline},
        {"A batch: photos", photos},
        {"A batch: note", note},
        {"Plan", plans},
        {"Shelves", shelf},
        {"Shelves, prices", prices},
        {"The usual prices", usualPrices},
        {"Expenses of a session", sessionExpenses},
        {"Round of checks", [](MainWindow& window) { return inScene(window, desktop::task::round, "roundTable"); }},
        {"New session", sessionRows},
        {"New reading",
         [](MainWindow& window) {
             scene(window, desktop::task::reading);
             whole::settle();
             return QApplication::focusWidget();
         }},
        {"Hole by hole", map},
        {"Positions of a batch", places},
        {"Settings", settings},
        {"Keyboard list", [](MainWindow& window) { return inScene(window, "keyboard", "keyboardSearch"); }}};
    return all;
}

Sight settledSight() {
    const auto look = [] {
        whole::settle();
        Sight sight{.focus = QApplication::focusWidget(),
                    .windows = {},
                    .pictures = {},
                    .copied = QApplication::clipboard()->text()};
        for (QWidget* top : QApplication::topLevelWidgets()) {
            if (!top->isVisible()) continue;
            sight.windows << top->metaObject()->className() + top->windowTitle();
            sight.pictures << top->grab().toImage();
        }
        return sight;
    };
    Sight before = look(), now = look();
    while (now != before) {
        before = now;
        now = look();
    }
    return now;
}

}  // namespace help
