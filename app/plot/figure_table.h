// SPDX-License-Identifier: MIT
// The very figures that a picture shows, as a table: beside it on the screen, on the clipboard, in a CSV file.
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <vector>

namespace plot {

struct FigureTable {
    QString title;
    QStringList headings;
    std::vector<QStringList> rows;  // each as long as the headings

    bool operator==(const FigureTable&) const = default;
};

/// Tab-separated with a line of headings: pastes into a spreadsheet.
[[nodiscard]] QString tabText(const FigureTable& table);
/// RFC 4180 in UTF-8, CRLF; text that a spreadsheet would run as a formula gets a leading apostrophe.
[[nodiscard]] QByteArray csvText(const FigureTable& table);

}  // namespace plot
