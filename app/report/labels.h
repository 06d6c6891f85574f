// SPDX-License-Identifier: MIT
// Labels of batches, for sheets of stickers and for rolls: the code in plain and as a QR code, plant, treatment, day and count, so that a label
// tells what it must to who has no scanner.
#pragma once

#include <QPageSize>
#include <QRectF>
#include <QString>
#include <QStringList>
#include <span>
#include <vector>

#include "core/records.h"

class QPagedPaintDevice;

namespace report {

struct Label {
    QString code;
    QString plant;
    QString treatment;  // may be empty
    QString day;
    QString count;      // "24 cuttings"
    QString mark;       // "invented": records of a demo
    QString licence{};  // of a protected plant, or that none is written down

    bool operator==(const Label&) const = default;
};

/// A sheet or roll of labels. All lengths in millimetres.
struct LabelStock {
    QString word;  // for the command line and the settings: "a4-21"
    QString name;  // "63.5 × 38.1 mm, 21 on A4"
    QSizeF page;
    int columns{};
    int rows{};
    QSizeF label;
    QPointF first;  // of the first label, from the page's corner
    QSizeF pitch;   // from one label to the next

    [[nodiscard]] int perPage() const { return columns * rows; }
    /// Where the label with this number stands on its page, counted from 0 row by row.
    [[nodiscard]] QRectF place(int number) const;
};

/// All that can be printed on, the usual one for the logbook's paper first.
[[nodiscard]] std::vector<LabelStock> labelStocks(const std::string& paper);
/// "a4-21, a4-65, ..."
[[nodiscard]] QStringList stockWords();

[[nodiscard]] std::vector<Label> labelsOf(std::span<const core::Batch> batches, const core::Shelves& shelves);

/// Printers feed a little off: everything is moved by so many half millimetres, to the right and down.
struct LabelOffset {
    int right{};
    int down{};

    [[nodiscard]] QPointF millimetres() const { return {right * 0.5, down * 0.5}; }
    bool operator==(const LabelOffset&) const = default;
};

inline constexpr int mostHalfMillimetres = 20;  // of an offset, either way

/// What goes onto which paper. `start` is the first label that is still on the first sheet, from 1.
struct LabelPrint {
    std::vector<Label> labels;
    LabelStock stock;
    int start{1};
    LabelOffset offset{};

    [[nodiscard]] int pages() const;
};

[[nodiscard]] QPageSize pageSizeOf(const LabelStock& stock);
/// On the whole page, margins are the stock's own. Black on white.
void printTo(const LabelPrint& print, QPagedPaintDevice& device);
/// Whole or not at all. Throws db::LogbookError when the file can't be written.
void writePdf(const LabelPrint& print, const QString& file);

/// One page to find the offset by: the outlines of all labels where they would be printed, and at the first and the last a scale in half
/// millimetres, whose figures are the offset that would bring it to the label's edge.
struct LabelCalibration {
    LabelStock stock;
    LabelOffset offset{};
};

void printTo(const LabelCalibration& calibration, QPagedPaintDevice& device);
void writePdf(const LabelCalibration& calibration, const QString& file);

}  // namespace report
