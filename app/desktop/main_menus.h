// SPDX-License-Identifier: MIT
// The main window's menus and shortcuts. Undo and redo take their words from the logbook's history; what can't be done now is grey.
#pragma once

#include <QList>
#include <QObject>
#include <functional>

class QAction;
class QMenu;

namespace desktop {

class MainWindow;

class MainMenus : public QObject {
    Q_OBJECT

  public:
    explicit MainMenus(MainWindow& window);

  private:
    using Doing = std::function<void()>;
    QAction* add(QMenu* menu, const QString& name, const QString& text, const QString& keys, Doing doing);
    void addLogbook();
    void addRecord();
    void addEdit();
    void addView();
    void addLooks(QMenu* view);
    void addHelp();
    void showCautionSheet();
    void showSeasonReview();
    void fillRecent();
    void refresh();

    MainWindow& window_;
    QMenu* recent_{};
    QAction* undo_{};
    QAction* redo_{};
    QAction* print_{};
    QAction* back_{};
    QAction* forward_{};
    QList<QAction*> needsLogbook_;
    QList<QAction*> needsWriting_;
};

}  // namespace desktop
