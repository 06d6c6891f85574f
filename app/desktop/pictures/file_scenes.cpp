// SPDX-License-Identifier: MIT
// Dialogs about the logbook as a file.
#include <QDialog>
#include <QDir>
#include <QFile>
#include <QLineEdit>
#include <QTemporaryDir>
#include <memory>

#include "app/desktop/logbook/import_dialog.h"
#include "app/desktop/logbook/logbook_commands.h"
#include "app/desktop/logbook/restore_dialog.h"
#include "app/desktop/main_window.h"
#include "app/desktop/pictures/dialog_scene.h"
#include "app/desktop/printing/print_preview.h"
#include "app/desktop/review/season_review_dialog.h"
#include "app/desktop/workspace.h"
#include "core/units/days.h"
#include "db/exchange/export_folder.h"

namespace desktop {

namespace {

/// The cells of a row of CSV as they stand there; commas between quotes part nothing.
QList<QByteArray> cellsOf(const QByteArray& row) {
    QList<QByteArray> cells{{}};
    bool isQuoted = false;
    for (const char c : row) {
        if (c == '"') isQuoted = !isQuoted;
        if (c == ',' && !isQuoted)
            cells.append(QByteArray());
        else
            cells.back().append(c);
    }
    return cells;
}

/// Puts `text` into a column of some rows of a table.
void spoil(const QString& file, const QByteArray& column, const QByteArray& text, std::initializer_list<int> rows) {
    QFile table(file);
    if (!table.open(QIODevice::ReadWrite)) return;
    QList<QByteArray> lines = table.readAll().split('\n');
    const qsizetype place = cellsOf(lines.front().trimmed()).indexOf(column);
    for (const int row : rows) {
        if (place < 0 || row >= lines.size()) continue;
        QList<QByteArray> cells = cellsOf(lines[row]);
        if (place < cells.size()) cells[place] = text;
        lines[row] = cells.join(',');
    }
    table.resize(0);
    table.write(lines.join('\n'));
}

/// In a folder of nobody's: the pictures are the same wherever they are taken.
QDialog* openNewLogbook(MainWindow& window) {
    QDialog* dialog = broughtBy([&] { window.commands().makeNew(); });
    auto* file = dialog == nullptr ? nullptr : dialog->findChild<QLineEdit*>("logbookFile");
    if (file) file->setText(QStringLiteral("/home/rowan/Documents/My cuttings.strikebook"));
    return dialog;
}

QDialog* openImport(MainWindow& window, bool isSpoilt) {
    const auto place = std::make_shared<QTemporaryDir>();
    const QString folder = QDir(place->path()).filePath("Willow Lane tables");
    const PageContext& context = window.parts().context;
    if (!context.workspace.attempt([&](db::Logbook& logbook) { db::exportFolder(logbook, folder.toStdString()); }))
        return nullptr;
    if (isSpoilt) {
        spoil(QDir(folder).filePath("checks.csv"), "checked_on", "31 February", {4, 19});
        spoil(QDir(folder).filePath("batches.csv"), "stuck", "a dozen", {7});
        spoil(QDir(folder).filePath("batches.csv"), "stuck", "-4", {11, 30});
    }
    auto* dialog = new ImportDialog(context, folder, &window);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    QObject::connect(dialog, &QObject::destroyed, [place] {});  // the folder stays as long as the dialog does
    dialog->open();
    const auto* progress = dialog->findChild<QWidget*>("importProgress");
    waitFor([progress] { return progress == nullptr || progress->isHidden(); });
    return dialog;
}

QDialog* openRestore(MainWindow& window) {
    const Workspace& workspace = window.parts().context.workspace;
    std::vector<db::BackupFile> backups;
    for (const int daysAgo : {0, 1, 3, 7, 14}) {
        const std::string day = core::isoText(core::addDays(workspace.today(), -daysAgo));
        backups.push_back({.file = "Willow Lane " + day + ".strikebook", .madeAt = day + "T07:42:05Z"});
    }
    auto* dialog = new RestoreDialog(std::move(backups), &window);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
    return dialog;
}

SeasonReviewDialog* openSeasonReview(MainWindow& window) {
    auto* dialog = new SeasonReviewDialog(window.parts().context, &window);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
    return dialog;
}

QDialog* openSeasonReviewPages(MainWindow& window) {
    SeasonReviewDialog* dialog = openSeasonReview(window);
    press(*dialog, "showReview");
    waitFor([dialog] { return !dialog->isWorking(); });
    return dialog->findChild<PrintPreview*>();
}

}  // namespace

std::vector<DialogScene> fileScenes() {
    return {{"new_logbook", openNewLogbook},
            {"import", [](MainWindow& window) { return openImport(window, false); }},
            {"import_faults", [](MainWindow& window) { return openImport(window, true); }},
            {"restore", openRestore},
            {"season_review", [](MainWindow& window) -> QDialog* { return openSeasonReview(window); }},
            {"season_review_pages", openSeasonReviewPages}};
}

}  // namespace desktop
