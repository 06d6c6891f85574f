// SPDX-License-Identifier: MIT
// A text as the dark and light modules of a QR code, level H: a third of it may be dirt. A batch code of ours fits version 1, 21 modules.
#pragma once

#include <QPainterPath>
#include <QPointF>
#include <QString>
#include <vector>

namespace report {

struct QrCode {
    int side{};              // modules, without the quiet zone
    std::vector<bool> dark;  // row by row

    [[nodiscard]] bool isDark(int row, int column) const {
        return dark[static_cast<std::size_t>(row) * static_cast<std::size_t>(side) + static_cast<std::size_t>(column)];
    }
    bool operator==(const QrCode&) const = default;
};

inline constexpr int quietModules = 4;  // ISO/IEC 18004 asks for four light modules on every side

/// No modules for a text that no QR code holds, or none at all. `version`, 1 to 40, is the least; one that is too small grows by itself.
[[nodiscard]] QrCode qrCodeOf(const QString& text, int version = 1);
/// All dark modules as one path, so that no seams show between them. `module` is the side of one; paint it without antialiasing.
[[nodiscard]] QPainterPath pathOf(const QrCode& code, const QPointF& topLeft, double module);

}  // namespace report
