// SPDX-License-Identifier: MIT
// One page of the main window. The window builds it on its first visit, shows its title, and passes wishes between
// pages; it knows nothing of what is in it. A page connects to Workspace::logbookChanged and logbookReplaced itself.
// Letters typed where nobody wants them go to Find: a widget that takes letters as commands accepts their
// QEvent::ShortcutOverride, as fields do.
#pragma once

#include <QString>
#include <QWidget>
#include <memory>

#include "app/desktop/place.h"
#include "core/id.h"

namespace report {
struct Sheet;
}

namespace desktop {

class Memory;
class Workspace;
class Prompts;

/// What every page and dialog is made from.
struct PageContext {
    Workspace& workspace;
    Prompts& prompts;
    Memory* memory{};  // how tables were left; nullptr: nothing is remembered
};

class Page : public QWidget {
    Q_OBJECT

  public:
    using QWidget::QWidget;

    /// The page has come to the front; also called when a logbook was opened while it is in front. Put the focus where
    /// work begins.
    virtual void activated() {}
    /// Shows what `place` names on this page; its whole self for Place::Kind::Page. False when there is no such thing any more.
    virtual bool showPlace(const Place& place) { return place.kind == Place::Kind::Page; }
    /// What showPlace() would take to come back to what is in front now. The window fills in the page's name.
    [[nodiscard]] virtual Place place() const { return {}; }
    /// What File > Print prints and previews now; nullptr when there is nothing. The window shows it
    /// (printing/print_preview.h).
    [[nodiscard]] virtual std::shared_ptr<const report::Sheet> sheet() const { return nullptr; }
    /// Ctrl+F: put the focus into the page's filter, if it has one.
    virtual void focusFilter() {}

  signals:
    /// Show this batch, wherever batches are shown.
    void batchWanted(core::BatchId batch);
    /// The same for anything else that has a place.
    void placeWanted(const Place& place);
    /// place() answers differently from now on.
    void placeChanged();
    /// Open a task of the registry by its name: task::round, task::session.
    void taskWanted(const QString& name);
    /// Bring in a folder of tables.
    void tablesWanted();
    /// A sentence for the bar at the foot that needs no undo button, e.g. "Copied 12 rows."
    void said(const QString& sentence);
    /// sheet() may answer differently from now on.
    void sheetChanged();
};

}  // namespace desktop
