// SPDX-License-Identifier: MIT
// Every page and every dialog in the middle of its work: the scenes that the manual has pictures of.
#pragma once

#include <functional>

#include "tests/desktop/whole/whole_window.h"

namespace whole {

/// Answers yes to everything, so that what was typed in a scene can be dropped.
class AgreeingPrompts : public desktop::Prompts {
  public:
    [[nodiscard]] bool confirm(QWidget*, const desktop::Question&) override { return true; }
    [[nodiscard]] QString pickFileToOpen(QWidget*, const desktop::FileWish&) override { return {}; }
    [[nodiscard]] QStringList pickFilesToOpen(QWidget*, const desktop::FileWish&) override { return {}; }
    [[nodiscard]] QString pickFileToSave(QWidget*, const desktop::FileWish&) override { return {}; }
    [[nodiscard]] QString pickFolder(QWidget*, const desktop::FileWish&) override { return {}; }
    [[nodiscard]] QString askForText(QWidget*, const QString&, const QString&, const QString&) override { return {}; }
};

/// `top` is the dialog, or the window where a page is in front.
using Visit = std::function<void(const QString& name, QWidget& top)>;

void visitPages(desktop::MainWindow& window, const Visit& visit);
void visitDialogs(desktop::MainWindow& window, const Visit& visit);
/// What stands there without records, and without a logbook; the logbook is closed afterwards.
void visitBeginnings(desktop::MainWindow& window, const Visit& visit);

}  // namespace whole
