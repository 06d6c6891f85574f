// SPDX-License-Identifier: MIT
// Something that can be printed, whatever it is: how it paints itself, how it is written as a file, and on which paper.
#pragma once

#include <QPageSize>
#include <QString>
#include <functional>

#include "app/report/pdf.h"

class QPagedPaintDevice;

namespace desktop {

struct Printout {
    QString title;
    QString fileName;  // proposed when saving, without its ending
    std::function<void(QPagedPaintDevice&)> paint;
    std::function<void(const QString& file)> write;  // throws db::LogbookError
    std::function<QPageSize()> page;
};

/// The same of something that prints on either paper; the person chooses.
struct PaperPrintout {
    QString title;
    QString fileName;
    std::function<void(QPagedPaintDevice&, report::Paper)> paint;
    std::function<void(const QString& file, report::Paper)> write;  // throws db::LogbookError
};

}  // namespace desktop
