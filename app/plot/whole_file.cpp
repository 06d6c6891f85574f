// SPDX-License-Identifier: MIT
#include "app/plot/whole_file.h"

#include <QCoreApplication>
#include <QDir>
#include <QSaveFile>

#include "db/logbook_error.h"

namespace plot {
namespace {

[[noreturn]] void refuseFile(const QString& file, const QString& reason) {
    const QString sentence =
        QCoreApplication::translate("WholeFile",
                                    "The file %1 could not be written (%2). Choose another folder or make room there; "
                                    "nothing that was there before has changed.");
    throw db::LogbookError(sentence.arg(QDir::toNativeSeparators(file), reason).toStdString());
}

/// Where a disk takes less than it was given, Qt knows of no error.
QString reasonOf(const QSaveFile& target) {
    return target.error() == QFileDevice::NoError
               ? QCoreApplication::translate("WholeFile", "no room on the disk for all of it")
               : target.errorString();
}

}  // namespace

void writeWholeFile(const QString& file, const QByteArray& content) {
    QSaveFile target(file);
    if (!target.open(QIODevice::WriteOnly)) refuseFile(file, target.errorString());
    if (target.write(content) != content.size()) {
        const QString reason = reasonOf(target);
        target.cancelWriting();
        refuseFile(file, reason);
    }
    if (!target.commit()) refuseFile(file, reasonOf(target));
}

}  // namespace plot
