// SPDX-License-Identifier: MIT
// A sheet on paper: PDF or a printer. Black on white whatever the desktop looks like. Needs a QGuiApplication.
#pragma once

#include <QString>

class QPagedPaintDevice;

namespace report {

struct Sheet;

enum class Paper { A4, Letter };

/// "A4" or "Letter" as the logbook has it; anything else is A4.
[[nodiscard]] Paper paperFrom(const QString& word);
/// Title set, fonts embedded, text searchable; whole or not at all. Throws db::LogbookError when the file can't be
/// written.
void writePdf(const Sheet& sheet, const QString& file, Paper paper);
/// On the device's own page size; margins are ours. For printers and their preview.
void printTo(const Sheet& sheet, QPagedPaintDevice& device);
[[nodiscard]] int pageCount(const Sheet& sheet, Paper paper);

}  // namespace report
