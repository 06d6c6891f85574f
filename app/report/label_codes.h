// SPDX-License-Identifier: MIT
// Where the QR codes of a label stand. The same code is printed as often as there is room: dirt on one corner square ends a symbol, whatever
// its error correction, and a reader needs only one of them.
#pragma once

#include <QRectF>
#include <QSizeF>
#include <QString>
#include <vector>

#include "app/report/qr_code.h"

namespace report {

/// Side of a module: three dots of a printer of 203 dots an inch, the coarsest that prints labels.
inline constexpr double labelModule = 3 * 25.4 / 203;  // millimetres

struct LabelCodes {
    QrCode code;
    double module{};              // all lengths in millimetres
    std::vector<QPointF> places;  // top left module of each symbol, from the label's corner
    double width{};               // from the label's left edge, the light at the right included; 0: no symbol has room

    /// The symbol itself, without the light around it.
    [[nodiscard]] QRectF symbol(std::size_t number) const {
        return {places[number], QSizeF(code.side * module, code.side * module)};
    }
};

/// At the left of a label, in rows and columns with four light modules around each; the text keeps 26 mm and 43 % of the width or more. Version 2, where
/// the same dirt hits a smaller part than in version 1, unless only version 1 stands there twice.
[[nodiscard]] LabelCodes codesOn(const QString& text, const QSizeF& label, double module = labelModule);

}  // namespace report
