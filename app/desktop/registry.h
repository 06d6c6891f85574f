// SPDX-License-Identifier: MIT
// Which pages and tasks there are, in order: the one list from which the main window makes its page list, its menus and
// its shortcuts. registry.cpp is the one file that knows them all.
#pragma once

#include <QString>
#include <functional>
#include <vector>

#include "app/desktop/page.h"

class QDialog;

namespace desktop {

struct PageEntry {
    QString name;      // "bench": settings and pictures are kept under it
    QString title;     // as shown
    QString icon;      // resource name without path and ending: "bench" is :/icons/bench.svg
    QString shortcut;  // portable text: "Ctrl+1"
    std::function<Page*(const PageContext&, QWidget* parent)> make;
    std::vector<Place::Kind> shows{};  // things that it can put in front; the first page that names a kind is asked
};

/// A dialog for one piece of work, opened without blocking from a menu, a shortcut or a page. It deletes itself when it
/// closes.
struct TaskEntry {
    QString name;
    QString title;  // with mnemonic: "New &session"
    QString icon;
    QString shortcut;  // portable text: "Ctrl+N"
    std::function<QDialog*(const PageContext&, QWidget* parent)> make;
};

namespace task {
inline const QString round = QStringLiteral("round");
inline const QString session = QStringLiteral("session");
inline const QString holeByHole = QStringLiteral("hole_by_hole");
inline const QString reading = QStringLiteral("reading");
inline const QString logger = QStringLiteral("logger");
inline const QString papers = QStringLiteral("papers");
inline const QString drilling = QStringLiteral("drilling");
inline const QString station = QStringLiteral("station");
}  // namespace task

[[nodiscard]] std::vector<PageEntry> pageEntries();
[[nodiscard]] std::vector<TaskEntry> taskEntries();

}  // namespace desktop
