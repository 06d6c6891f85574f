// SPDX-License-Identifier: MIT
#include "app/report/qr_code.h"

#include <qrencode.h>

#include <memory>

namespace report {
namespace {

struct FreeQrCode {
    void operator()(QRcode* code) const { QRcode_free(code); }
};

constexpr unsigned char darkBit = 1;

}  // namespace

QrCode qrCodeOf(const QString& text, int version) {
    const QByteArray bytes = text.toUtf8();
    if (bytes.isEmpty() || bytes.contains('\0')) return {};
    constexpr int tellsCapitalsApart = 1;
    const std::unique_ptr<QRcode, FreeQrCode> encoded(
        QRcode_encodeString(bytes.constData(), version, QR_ECLEVEL_H, QR_MODE_8, tellsCapitalsApart));
    if (!encoded) return {};
    QrCode code{.side = encoded->width, .dark = {}};
    const int modules = code.side * code.side;
    code.dark.reserve(static_cast<std::size_t>(modules));
    for (int module = 0; module < modules; ++module) code.dark.push_back((encoded->data[module] & darkBit) != 0);
    return code;
}

QPainterPath pathOf(const QrCode& code, const QPointF& topLeft, double module) {
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    for (int row = 0; row < code.side; ++row)
        for (int column = 0; column < code.side; ++column) {
            int end = column;
            while (end < code.side && code.isDark(row, end)) ++end;
            if (end == column) continue;
            path.addRect(topLeft.x() + column * module, topLeft.y() + row * module, (end - column) * module, module);
            column = end;
        }
    return path;
}

}  // namespace report
