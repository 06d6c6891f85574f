// SPDX-License-Identifier: MIT
#include "app/desktop/pictures/pictures.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QDir>
#include <QElapsedTimer>
#include <QPainter>
#include <QPixmap>
#include <QScrollArea>
#include <QScrollBar>
#include <QTabWidget>
#include <functional>

#include "app/desktop/logbook/logbook_commands.h"
#include "app/desktop/look/appearance.h"
#include "app/desktop/main_window.h"
#include "app/desktop/page.h"
#include "app/desktop/workspace.h"
#include "core/comparison/comparison.h"

namespace desktop {

namespace {

constexpr int settleMilliseconds = 1500;

/// Long sums run in threads of their own and queue their answers.
void settle() {
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < settleMilliseconds) QApplication::processEvents(QEventLoop::AllEvents, 50);
}

void waitFor(const std::function<bool()>& claim) {
    constexpr int mostMilliseconds = 60'000;
    QElapsedTimer timer;
    timer.start();
    while (!claim() && timer.elapsed() < mostMilliseconds) QApplication::processEvents(QEventLoop::AllEvents, 50);
}

/// The window with the dialog where a person would see it.
QPixmap together(MainWindow& window, QWidget* dialog) {
    QPixmap picture = window.grab();
    if (!dialog) return picture;
    const QPixmap front = dialog->grab();
    const QPoint at((picture.width() - front.width()) / 2, (picture.height() - front.height()) / 2);
    QPainter painter(&picture);
    painter.fillRect(picture.rect(), QColor(0, 0, 0, 90));
    painter.drawPixmap(at, front);
    painter.setPen(window.palette().color(QPalette::Shadow));
    painter.drawRect(QRect(at, front.size()).adjusted(-1, -1, 0, 0));
    return picture;
}

class Album {
  public:
    Album(MainWindow& window, QString folder, QString look)
        : window_(window), folder_(std::move(folder)), look_(std::move(look)) {}

    void take(const QString& name, QWidget* dialog = nullptr) {
        settle();
        isWhole_ = together(window_, dialog).save(QDir(folder_).filePath(name + '_' + look_ + ".png")) && isWhole_;
    }

    void takePages() {
        const std::vector<PageEntry>& pages = window_.parts().pages;
        for (int number = 0; number < static_cast<int>(pages.size()); ++number) {
            window_.showPage(number);
            waitForHeadToHead();
            take(pages[static_cast<std::size_t>(number)].name);
            takeHeadToHead();
        }
        takeOneBatch();
        window_.showPage(0);
    }

    /// As it looks in the middle of the work: an entry of each sort, the third one refused.
    static void typeSomeEntries(QDialog& dialog) {
        auto* table = dialog.findChild<QAbstractItemView*>("roundTable");
        if (!table) return;
        int row = 0;
        for (const char* entry : {"*", "+1-1r", "99", "+2/potted on", "+1.", "-1d"}) {
            const QModelIndex cell = table->model()->index(row++, table->currentIndex().column());
            if (cell.isValid()) table->model()->setData(cell, QString(entry));
        }
        table->setCurrentIndex(table->model()->index(2, table->currentIndex().column()));
    }

    void takeTasks() {
        for (const TaskEntry& task : window_.parts().tasks)
            if (QDialog* dialog = window_.startTask(task.name)) {
                dialog->resize(dialog->size().boundedTo(QSize(1200, 720)));
                typeSomeEntries(*dialog);
                take(task.name, dialog);
                dialog->hide();
                dialog->deleteLater();
            }
    }

    void takePrint() {
        window_.printPage();
        if (QWidget* dialog = QApplication::activeModalWidget()) {
            dialog->resize(dialog->size().boundedTo(QSize(1200, 720)));
            take("print", dialog);
            dialog->close();
        }
    }

    [[nodiscard]] bool isWhole() const { return isWhole_; }

  private:
    /// What stands further down on the page, with the part in question on top.
    void takeHeadToHead() {
        Page* page = headToHead();
        if (!page) return;
        takePart(*page, "speedFigure", "head_to_head_speed");
        takeRecords(*page);
        if (auto* all = page->findChild<QAbstractButton*>("allFigures")) {
            all->setChecked(true);
            takePart(*page, "allFigures", "head_to_head_figures");
            all->setChecked(false);
        }
        takeMethod(*page);
        auto* factor = page->findChild<QComboBox*>("factor");
        if (!factor) return;
        factor->setCurrentIndex(factor->findData(static_cast<int>(core::Factor::Treatment)));
        waitForHeadToHead();
        takePart(*page, "doseFigure1Words", "head_to_head_doses");
        factor->setCurrentIndex(0);
        waitForHeadToHead();
    }

    /// Where it is in front.
    Page* headToHead() {
        auto* page = window_.findChild<Page*>("headToHeadPage");
        return page && page->isVisible() ? page : nullptr;
    }

    void waitForHeadToHead() {
        if (Page* page = headToHead()) waitFor([page] { return page->sheet() != nullptr; });
    }

    /// Of the first plant whose records are many enough to tell what went with rooting.
    void takeRecords(Page& page) {
        auto* plants = page.findChild<QComboBox*>("plant");
        auto* figure = page.findChild<QWidget*>("goesWithFigure");
        if (!plants || !figure) return;
        for (int plant = 0; plant < plants->count() && figure->isHidden(); ++plant) {
            plants->setCurrentIndex(plant);
            waitForHeadToHead();
        }
        takePart(page, "goesWithFigureWords", "head_to_head_records");
        plants->setCurrentIndex(0);
        waitForHeadToHead();
    }

    void takePart(Page& page, const char* part, const QString& name) {
        auto* scroll = page.findChild<QScrollArea*>("answerScroll");
        auto* widget = page.findChild<QWidget*>(part);
        if (!scroll || !widget) return;
        settle();
        scroll->verticalScrollBar()->setValue(widget->mapTo(scroll->widget(), QPoint()).y());
        take(name);
        scroll->verticalScrollBar()->setValue(0);
    }

    void takeMethod(Page& page) {
        auto* how = page.findChild<QAbstractButton*>("differenceFigureWorkedOut");
        if (!how) return;
        how->click();
        if (auto* dialog = page.findChild<QDialog*>("methodDialog")) {
            dialog->resize(dialog->size().boundedTo(QSize(1200, 720)));
            take("method", dialog);
            dialog->close();
        }
    }

    void takeOneBatch() {
        std::vector<core::BatchLine> lines;
        window_.parts().context.workspace.attempt([&](db::Logbook& logbook) { lines = logbook.batchLines(); });
        if (lines.empty()) return;
        window_.showBatch(lines[lines.size() / 2].batch.id);
        take("batch");
        if (auto* figures = window_.findChild<QTabWidget*>("batchFigures")) {
            figures->setCurrentIndex(1);
            take("batch_chart");
            figures->setCurrentIndex(0);
        }
        takePrint();
    }

    MainWindow& window_;
    QString folder_;
    QString look_;
    bool isWhole_{true};
};

}  // namespace

bool takePictures(MainWindow& window, Appearance& appearance, const QString& folder) {
    if (!QDir().mkpath(folder)) return false;
    bool isWhole = true;
    const QString file = QString::fromStdString(window.parts().context.workspace.logbook().file().string());
    for (const Theme theme : {Theme::Light, Theme::Dark}) {
        appearance.wear(theme);
        window.resize(1280, 800);
        Album album(window, folder, wordFor(theme));
        album.takePages();
        album.takeTasks();
        window.parts().context.workspace.close();
        album.take("first_run");
        isWhole = window.commands().openFile(file) && album.isWhole() && isWhole;
    }
    return isWhole;
}

}  // namespace desktop
