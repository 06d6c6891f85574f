// SPDX-License-Identifier: MIT
// One page of the main window. The window builds it on its first visit, shows its title, and passes wishes between
// pages; it knows nothing of what is in it. A page connects to Workspace::logbookChanged and logbookReplaced itself.
#pragma once

#include <QString>
#include <QWidget>
#include <memory>

#include "core/id.h"

namespace report {
struct Sheet;
}

namespace desktop {

class Workspace;
class Prompts;

/// What every page and dialog is made from.
struct PageContext {
    Workspace& workspace;
    Prompts& prompts;
};

class Page : public QWidget {
    Q_OBJECT

  public:
    using QWidget::QWidget;

    /// The page has come to the front; also called when a logbook was opened while it is in front. Put the focus where
    /// work begins.
    virtual void activated() {}
    /// Only asked of the page that shows batches (PageEntry::showsBatches).
    virtual void showBatch(core::BatchId) {}
    /// What File > Print prints and previews now; nullptr when there is nothing. The window shows it
    /// (printing/print_preview.h).
    [[nodiscard]] virtual std::shared_ptr<const report::Sheet> sheet() const { return nullptr; }
    /// Ctrl+F: put the focus into the page's filter, if it has one.
    virtual void focusFilter() {}

  signals:
    /// Show this batch on the page that shows batches.
    void batchWanted(core::BatchId batch);
    /// Open a task of the registry by its name: task::round, task::session.
    void taskWanted(const QString& name);
    /// A sentence for the bar at the foot that needs no undo button, e.g. "Copied 12 rows."
    void said(const QString& sentence);
    /// sheet() may answer differently from now on.
    void sheetChanged();
};

}  // namespace desktop
