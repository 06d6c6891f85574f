// SPDX-License-Identifier: MIT
// Something that can be printed, whatever it is: how it paints itself, how it is written as a file, and on which paper.
#pragma once

#include <QPageSize>
#include <QString>
#include <functional>

class QPagedPaintDevice;

namespace desktop {

struct Printout {
    QString title;
    QString fileName;  // proposed when saving, without its ending
    std::function<void(QPagedPaintDevice&)> paint;
    std::function<void(const QString& file)> write;  // throws db::LogbookError
    std::function<QPageSize()> page;
};

}  // namespace desktop
