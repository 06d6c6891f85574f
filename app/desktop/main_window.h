// SPDX-License-Identifier: MIT
// The one window: the list of pages at the left, a page at the right, a bar for what was just done at the foot. It knows pages and tasks by
// the lists it is given and nothing of what is in them.
#pragma once

#include <QMainWindow>
#include <vector>

#include "app/desktop/find/trail.h"
#include "app/desktop/registry.h"

class QDialog;
class QLabel;
class QScrollArea;
class QStackedWidget;
class QToolButton;

namespace db {
struct Changes;
}

namespace desktop {

class Appearance;
class FindField;
class FirstRunPage;
class LogbookCommands;
class MainMenus;
class Memory;
class MessageBar;
class PageList;
struct FoundThing;

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
    /// False, and nothing is changed, when there is no such page or thing.
    bool goTo(const Place& place);
    void showBatch(core::BatchId batch) { goTo(placeOf(batch)); }
    void goBack();
    void goForward();
    [[nodiscard]] bool hasWayBack() const { return trail_.hasBack(); }
    [[nodiscard]] bool hasWayForward() const { return trail_.hasForward(); }
    void findSomething();
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
    struct BuiltPage {
        Page* page{};  // nullptr: not visited yet
        QScrollArea* frame{};
    };

    QWidget* makeCentre();
    QWidget* makeHead();
    void makeWay(QWidget* head);
    void makeFind(QWidget* head);
    void catchStrayLetters();
    void makeStatusBar();
    void makeFirstRun();
    void connectWorkspace();
    Page* builtPage(int number);
    [[nodiscard]] int numberFor(const Place& place) const;
    void bringToFront(int number);
    void noteWhere();
    void open(const FoundThing& thing);
    void showSituation();
    void showAccess();
    void showSaved(const db::Changes& changes);
    void showOpeningFault(const QString& file, const QString& sentence);

    WindowParts parts_;
    LogbookCommands* commands_;
    PageList* list_{};
    QStackedWidget* stack_{};
    QStackedWidget* pages_{};
    std::vector<BuiltPage> built_;
    Page* front_{};
    Trail trail_;
    bool isRetracing_{};
    QString fileOfTrail_;
    QWidget* head_{};
    QToolButton *back_{}, *forward_{};
    FindField* find_{};
    FirstRunPage* firstRun_{};
    QLabel* invented_{};
    MessageBar* bar_{};
    QLabel* saved_{};
    QLabel* place_{};
    QString faultyFile_;  // the logbook that could not be opened
    MainMenus* menus_{};
};

}  // namespace desktop
