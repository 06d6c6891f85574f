// SPDX-License-Identifier: MIT
// Print-outs that measure: they use the page up to its edges, in millimetres from its corner. Inside report only.
#pragma once

#include <QByteArray>
#include <QPageSize>
#include <QString>
#include <functional>

class QPagedPaintDevice;

namespace report {

void useWholePage(QPagedPaintDevice& device);
/// 600 dots an inch.
[[nodiscard]] QByteArray wholePagePdf(const QPageSize& page, const QString& title,
                                      const std::function<void(QPagedPaintDevice&)>& paint);

}  // namespace report
