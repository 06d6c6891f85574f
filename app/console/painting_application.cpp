// SPDX-License-Identifier: MIT
#include "app/console/painting_application.h"

#include <QGuiApplication>
#include <iostream>

#include "app/console/arguments.h"
#include "app/console/words.h"

namespace console {

namespace {

/// The error stream is for what a person should read: not for Qt's remarks on a machine without a desktop session.
void sayOnlyWhatIsGrave(QtMsgType type, const QMessageLogContext&, const QString& words) {
    if (type == QtCriticalMsg || type == QtFatalMsg) std::cerr << words.toStdString() << '\n';
}

}  // namespace

PaintingApplication::PaintingApplication() {
    if (QGuiApplication::instance() != nullptr) return;
    // Asked for even where there is a display: nothing is shown, and a display that refuses us must not matter.
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QtMessageHandler usual = qInstallMessageHandler(sayOnlyWhatIsGrave);
    application_ = std::make_unique<QGuiApplication>(count_, words_);
    qInstallMessageHandler(usual);
}

PaintingApplication::~PaintingApplication() = default;

QDateTime momentFrom(const db::Clock& clock) {
    return QDateTime::fromSecsSinceEpoch(clock().time_since_epoch().count());
}

void requirePdfName(const std::string& file, const std::string& option) {
    if (!file.ends_with(".pdf") && !file.ends_with(".PDF"))
        throw WrongArgument(filled(tr("%1 is %2; a file whose name ends in .pdf is allowed."), {option, shown(file)}));
}

}  // namespace console
