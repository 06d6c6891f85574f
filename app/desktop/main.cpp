// SPDX-License-Identifier: MIT
// strikebook: opens the window.
#include <QApplication>
#include <QCommandLineParser>
#include <QTimer>
#include <chrono>
#include <cstdio>

#include "app/desktop/logbook/logbook_commands.h"
#include "app/desktop/look/appearance.h"
#include "app/desktop/main_window.h"
#include "app/desktop/memory.h"
#include "app/desktop/pictures/pictures.h"
#include "app/desktop/prompts.h"
#include "app/desktop/settings/number_format.h"
#include "app/desktop/workspace.h"

namespace {

std::chrono::sys_seconds now() {
    return std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
}

/// Whatever a page reads may meet a full disk or a damaged file; here the last net leads to the bar at the foot.
class Application : public QApplication {
  public:
    using QApplication::QApplication;
    void setWorkspace(desktop::Workspace* workspace) { workspace_ = workspace; }

    bool notify(QObject* receiver, QEvent* event) override {
        if (!workspace_) return QApplication::notify(receiver, event);
        bool isHandled = true;
        workspace_->attemptWithout([&] { isHandled = QApplication::notify(receiver, event); });
        return isHandled;
    }

  private:
    desktop::Workspace* workspace_{};
};

struct Wishes {
    QString logbook;
    QString pictures;  // folder; empty: none
    bool closesWhenShown{};
    std::optional<desktop::Theme> theme;
};

Wishes wishesFrom(const QApplication& application) {
    QCommandLineParser parser;
    parser.setApplicationDescription(
        QCoreApplication::translate("main", "A logbook for people who multiply plants from cuttings."));
    parser.addHelpOption();
    parser.addVersionOption();
    const QCommandLineOption theme(
        "theme", QCoreApplication::translate("main", "The look for this run: system, light, dark or contrast."),
        "look");
    const QCommandLineOption pictures(
        "pictures",
        QCoreApplication::translate("main",
                                    "Writes pictures of every page and dialog of LOGBOOK into FOLDER, then ends."),
        "FOLDER");
    const QCommandLineOption closing(
        "close-when-shown",
        QCoreApplication::translate("main", "Ends as soon as the first page stands on the screen; for timing."));
    parser.addOptions({theme, pictures, closing});
    parser.addPositionalArgument(
        "logbook", QCoreApplication::translate("main", "The logbook to open; else the last one."), "[LOGBOOK]");
    parser.process(application);
    Wishes wishes{.logbook = parser.positionalArguments().value(0),
                  .pictures = parser.value(pictures),
                  .closesWhenShown = parser.isSet(closing),
                  .theme = {}};
    if (parser.isSet(theme)) {
        wishes.theme = desktop::themeFrom(parser.value(theme));
        if (!wishes.theme || parser.positionalArguments().size() > 1) parser.showHelp(2);
    }
    if (parser.isSet(pictures) && wishes.logbook.isEmpty()) parser.showHelp(2);
    return wishes;
}

}  // namespace

int main(int argc, char* argv[]) {
    Application application(argc, argv);
    QCoreApplication::setApplicationName("strikebook");
    QCoreApplication::setApplicationVersion(STRIKEBOOK_VERSION);
    const Wishes wishes = wishesFrom(application);

    desktop::Memory memory(desktop::memoryFiles());
    desktop::wearNumberFormat(memory.numberFormat());
    desktop::SystemTheme system(QApplication::palette());
    desktop::Appearance appearance(application, memory, system);
    if (wishes.theme) appearance.wear(*wishes.theme);
    desktop::Workspace workspace(now, qEnvironmentVariable("USER").toStdString());
    desktop::DialogPrompts prompts;
    application.setWorkspace(&workspace);

    int status = 0;
    {
        desktop::MainWindow window({.context = {workspace, prompts},
                                    .memory = memory,
                                    .appearance = appearance,
                                    .pages = desktop::pageEntries(),
                                    .tasks = desktop::taskEntries()});
        const QString logbook = wishes.logbook.isEmpty() ? memory.lastLogbook() : wishes.logbook;
        if (!logbook.isEmpty()) window.commands().openFile(logbook);
        window.show();
        if (wishes.closesWhenShown) {
            QApplication::processEvents();
            window.repaint();
        } else if (wishes.pictures.isEmpty()) {
            system.listen();
            status = QApplication::exec();
        } else {
            // While the program runs as ever: what waits for the event loop would never come without one.
            QTimer::singleShot(0, &window, [&] {
                const bool isTaken =
                    workspace.hasLogbook() && desktop::takePictures(window, appearance, wishes.pictures);
                if (!isTaken) std::fprintf(stderr, "%s\n", qPrintable(workspace.openingFault()));
                QApplication::exit(isTaken ? 0 : 1);
            });
            status = QApplication::exec();
        }
    }
    application.setWorkspace(nullptr);
    return status;
}
