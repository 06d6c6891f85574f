// SPDX-License-Identifier: MIT
// Writes a file whole or not at all: to a temporary name beside it, synced, then renamed over it.
#pragma once

#include <QByteArray>
#include <QString>

namespace plot {

/// Throws db::LogbookError with a sentence that names the file and why; an older file of that name is then still as it
/// was.
void writeWholeFile(const QString& file, const QByteArray& content);

}  // namespace plot
