// SPDX-License-Identifier: MIT
#include "app/report/whole_page.h"

#include <QBuffer>
#include <QPageLayout>
#include <QPagedPaintDevice>
#include <QPdfWriter>

namespace report {

void useWholePage(QPagedPaintDevice& device) {
    QPageLayout layout = device.pageLayout();
    layout.setMode(QPageLayout::FullPageMode);
    layout.setMargins({0, 0, 0, 0});
    device.setPageLayout(layout);
}

QByteArray wholePagePdf(const QPageSize& page, const QString& title,
                        const std::function<void(QPagedPaintDevice&)>& paint) {
    constexpr int dotsAnInch = 600;
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setTitle(title);
        writer.setCreator(QStringLiteral("Strikebook " STRIKEBOOK_VERSION));
        writer.setResolution(dotsAnInch);
        writer.setPageSize(page);
        paint(writer);
    }
    return buffer.data();
}

}  // namespace report
