// SPDX-License-Identifier: MIT
#include "app/desktop/settings/settings_dialog.h"

#include <QDialogButtonBox>
#include <QPushButton>
#include <QScrollArea>
#include <QShortcut>
#include <QTabWidget>
#include <QVBoxLayout>

#include "app/desktop/settings/logbook_settings.h"
#include "app/desktop/settings/machine_settings.h"
#include "app/desktop/workspace.h"

namespace desktop {

namespace {

QWidget* scrolled(QWidget* content) {
    auto* frame = new QScrollArea;
    frame->setWidgetResizable(true);
    frame->setFrameShape(QFrame::NoFrame);
    frame->setFocusPolicy(Qt::NoFocus);
    frame->setWidget(content);
    return frame;
}

}  // namespace

SettingsDialog::SettingsDialog(const PageContext& context, Appearance& appearance, QWidget* parent)
    : QDialog(parent), logbook_(new LogbookSettings(context)), tabs_(new QTabWidget) {
    setObjectName(QStringLiteral("settingsDialog"));
    setWindowTitle(tr("Settings"));
    tabs_->setObjectName(QStringLiteral("settingsTabs"));
    tabs_->addTab(scrolled(logbook_), tr("This logboo&k"));
    tabs_->addTab(scrolled(new MachineSettings(context, appearance)), tr("This co&mputer"));
    if (!context.workspace.hasLogbook()) tabs_->setCurrentIndex(1);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    buttons->button(QDialogButtonBox::Close)->setAutoDefault(false);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(tabs_, 1);
    layout->addWidget(buttons);
    // What the menu of the window behind would do; in a field its own typing goes back first.
    Workspace& workspace = context.workspace;
    connect(new QShortcut(QKeySequence("Ctrl+Z"), this), &QShortcut::activated, this,
            [&workspace] { workspace.undo(); });
    for (const char* keys : {"Ctrl+Shift+Z", "Ctrl+Y"})
        connect(new QShortcut(QKeySequence(keys), this), &QShortcut::activated, this,
                [&workspace] { workspace.redo(); });
    resize(fontMetrics().averageCharWidth() * 100, fontMetrics().height() * 42);
}

void SettingsDialog::done(int result) {
    logbook_->finishTyping();
    QDialog::done(result);
}

void showSettings(const PageContext& context, Appearance& appearance, QWidget* window) {
    auto* dialog = window->findChild<SettingsDialog*>(QString(), Qt::FindDirectChildrenOnly);
    if (!dialog) {
        dialog = new SettingsDialog(context, appearance, window);
        dialog->setAttribute(Qt::WA_DeleteOnClose);
    }
    dialog->show();  // one that is only hidden comes back, too
    dialog->raise();
    dialog->activateWindow();
}

}  // namespace desktop
