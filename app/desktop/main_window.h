// SPDX-License-Identifier: MIT
// The one window: the list of pages at the left, a page at the right, a bar for what was just done at the foot. It knows pages and tasks by
// the lists it is given and nothing of what is in them.
#pragma once

#include <QMainWindow>
#include <vector>

#include "app/desktop/registry.h"

class QDialog;
class QLabel;
class QStackedWidget;

namespace db {
struct Changes;
}

namespace desktop {

class Appearance;
class FirstRunPage;
class LogbookCommands;
class MainMenus;
class Memory;
class MessageBar;
class PageList;

struct WindowParts {
    PageContext context;
    Memory& memory;
    Appearance& appearance;
    std::vector<PageEntry> pages;
    std::vector<TaskEntry> tasks;
};

class MainWindow : public QMainWindow {
    Q_OBJECT

  public:
    explicit MainWindow(WindowParts parts);
    ~MainWindow() override;

    [[nodiscard]] LogbookCommands& commands() { return *commands_; }
    [[nodiscard]] const WindowParts& parts() const { return parts_; }
    [[nodiscard]] MessageBar& bar() { return *bar_; }

    void showPage(int number);
    /// The page in front; nullptr while no logbook is open.
    [[nodiscard]] Page* currentPage() const;
    QDialog* startTask(const QString& name);
    void showBatch(core::BatchId batch);
    void printPage();
    void undo();
    void redo();
    void togglePageList();
    void toggleFullScreen();

  public slots:
    void say(const QString& sentence);

  signals:
    /// Something that menus depend on may have changed: logbook, page, history.
    void situationChanged();

  protected:
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;
    void closeEvent(QCloseEvent* event) override;

  private:
    QWidget* makeCentre();
    void makeStatusBar();
    void makeFirstRun();
    void connectWorkspace();
    Page* builtPage(int number);
    void showSituation();
    void showAccess();
    void showSaved(const db::Changes& changes);
    void showOpeningFault(const QString& file, const QString& sentence);

    WindowParts parts_;
    LogbookCommands* commands_;
    PageList* list_{};
    QStackedWidget* stack_{};
    QStackedWidget* pages_{};
    std::vector<Page*> built_;  // nullptr: not visited yet
    FirstRunPage* firstRun_{};
    QLabel* invented_{};
    MessageBar* bar_{};
    QLabel* saved_{};
    QLabel* place_{};
    QString faultyFile_;  // the logbook that could not be opened
    MainMenus* menus_{};
};

}  // namespace desktop
