// SPDX-License-Identifier: MIT
// main() of every test program with windows or figures: offscreen, no home folder, a fixed locale, and each warning of Qt's is a failure.
#include <QApplication>
#include <QLocale>
#include <QMessageLogContext>
#include <QStandardPaths>
#include <QString>
#include <QTemporaryDir>
#include <cstdio>
#include <ostream>

#include "gtest/gtest.h"

namespace {

// Qt's own test macros fail in silence under GoogleTest, and so would its warnings.
void reportMessage(QtMsgType kind, const QMessageLogContext& context, const QString& text) {
    if (kind == QtDebugMsg || kind == QtInfoMsg) {
        std::fprintf(stderr, "%s\n", qPrintable(text));
        return;
    }
    // The offscreen platform stacks no windows, hints no sizes and grabs no keyboard, and says so each time.
    if (text.startsWith(QLatin1String("This plugin does not support"))) return;
    ADD_FAILURE() << "Qt says: " << text.toStdString() << " [" << (context.category ? context.category : "") << "]";
}

}  // namespace

int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    const QTemporaryDir runtimeFolder;
    if (qEnvironmentVariableIsEmpty("XDG_RUNTIME_DIR")) qputenv("XDG_RUNTIME_DIR", runtimeFolder.path().toUtf8());
    QStandardPaths::setTestModeEnabled(true);
    testing::InitGoogleTest(&argc, argv);
    QApplication application(argc, argv);
    QApplication::setStyle(QStringLiteral("Fusion"));
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    qInstallMessageHandler(reportMessage);
    const int failures = RUN_ALL_TESTS();
    qInstallMessageHandler(nullptr);
    return failures;
}
