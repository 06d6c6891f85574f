// SPDX-License-Identifier: MIT
// All settings on two tabs: what belongs to the logbook, and what belongs to this computer. Stands beside the work and never asks anything:
// each setting acts at once.
#pragma once

#include <QDialog>

#include "app/desktop/page.h"

class QTabWidget;

namespace desktop {

class Appearance;
class LogbookSettings;

class SettingsDialog : public QDialog {
    Q_OBJECT

  public:
    SettingsDialog(const PageContext& context, Appearance& appearance, QWidget* parent = nullptr);

    void done(int result) override;

  private:
    LogbookSettings* logbook_;
    QTabWidget* tabs_;
};

/// Opens it, or raises the one that is open already.
void showSettings(const PageContext& context, Appearance& appearance, QWidget* window);

}  // namespace desktop
