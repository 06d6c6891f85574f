// SPDX-License-Identifier: MIT
#include "app/plot/figure_table.h"

namespace plot {
namespace {

// A tab or a line end inside a cell would make two of it.
QString oneCell(QString text) {
    return text.replace(u'\t', u' ').replace(u'\r', u' ').replace(u'\n', u' ');
}

bool isNumberText(const QString& text) {
    bool isNumber = false;
    text.toDouble(&isNumber);
    return isNumber;
}

// Spreadsheets run what begins with one of these; a plain number such as -3 stays a number.
QString guarded(const QString& text) {
    static const QString risky = QStringLiteral("=+-@\t\r\n");
    return !text.isEmpty() && risky.contains(text.front()) && !isNumberText(text) ? u'\'' + text : text;
}

QString csvCell(const QString& text) {
    QString cell = guarded(text);
    const bool needsQuotes =
        cell.contains(u',') || cell.contains(u'"') || cell.contains(u'\n') || cell.contains(u'\r') || cell != text;
    if (!needsQuotes) return cell;
    return u'"' + cell.replace(u'"', QStringLiteral("\"\"")) + u'"';
}

QString tabLine(const QStringList& cells) {
    QStringList clean;
    for (const QString& cell : cells) clean << oneCell(cell);
    return clean.join(u'\t') + u'\n';
}

QByteArray csvLine(const QStringList& cells) {
    QStringList written;
    for (const QString& cell : cells) written << csvCell(cell);
    return (written.join(u',') + QStringLiteral("\r\n")).toUtf8();
}

}  // namespace

QString tabText(const FigureTable& table) {
    QString text = tabLine(table.headings);
    for (const QStringList& row : table.rows) text += tabLine(row);
    return text;
}

QByteArray csvText(const FigureTable& table) {
    QByteArray text = csvLine(table.headings);
    for (const QStringList& row : table.rows) text += csvLine(row);
    return text;
}

}  // namespace plot
