// SPDX-License-Identifier: MIT
#include "app/desktop/pictures/drawn_photos.h"

#include <QImage>
#include <QPainter>
#include <QPainterPath>

#include "app/desktop/photos/photo_import.h"
#include "app/desktop/workspace.h"
#include "db/actions/event_actions.h"

namespace desktop {

namespace {

constexpr QSize drawnSize(1200, 900);

void drawLeaf(QPainter& painter, QPointF from, double length, double angle) {
    painter.save();
    painter.translate(from);
    painter.rotate(angle);
    QPainterPath leaf;
    leaf.quadTo(length / 2, -length / 3, length, 0);
    leaf.quadTo(length / 2, length / 3, 0, 0);
    painter.drawPath(leaf);
    painter.restore();
}

/// A stem with leaves through a lid; roots below it as many as there have been time for.
void drawCutting(QPainter& painter, double x, int roots) {
    constexpr double lid = 520, top = 170, end = 690;
    painter.setPen(QPen(QColor(0x5d, 0x6b, 0x3a), 14, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(QPointF(x, top), QPointF(x, end));
    painter.setPen(Qt::NoPen);
    painter.setBrush(QColor(0x4f, 0x8a, 0x45));
    for (int pair = 0; pair < 4; ++pair) {
        const QPointF node(x, top + 20 + pair * 75);
        drawLeaf(painter, node, 110 - pair * 8, -35);
        drawLeaf(painter, node, 110 - pair * 8, 215);
    }
    painter.setPen(QPen(QColor(0xf2, 0xec, 0xdc), 5, Qt::SolidLine, Qt::RoundCap));
    for (int root = 0; root < roots; ++root) {
        const double side = root % 2 == 0 ? 1 : -1;
        QPainterPath path(QPointF(x, end - 15.0 * root));
        path.quadTo(x + side * 40, end + 30, x + side * (30 + 9 * root), end + 60 + 14 * (root % 3));
        painter.setBrush(Qt::NoBrush);
        painter.drawPath(path);
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(QColor(0x33, 0x36, 0x3a));
    painter.drawEllipse(QPointF(x, lid), 60, 16);
}

QImage drawnTub(int roots) {
    QImage image(drawnSize, QImage::Format_RGB32);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(image.rect(), QColor(0xd9, 0xdc, 0xd2));
    painter.fillRect(QRect(0, 520, drawnSize.width(), drawnSize.height() - 520), QColor(0x7d, 0x9a, 0xa6));
    painter.fillRect(QRect(0, 505, drawnSize.width(), 30), QColor(0x46, 0x4a, 0x50));
    for (int cutting = 0; cutting < 4; ++cutting)
        drawCutting(painter, 210.0 + cutting * 260, roots * (cutting % 3 + 1));
    return image;
}

}  // namespace

void addDrawnPhotos(Workspace& workspace, core::BatchId batch) {
    core::Date stuckOn{};
    for (const core::BatchLine& line : workspace.batchLines())
        if (line.batch.id == batch) stuckOn = line.batch.stuckOn;
    bool hasPhotos = false;
    workspace.attempt([&](db::Logbook& logbook) { hasPhotos = !logbook.photos(batch).empty(); });
    if (hasPhotos) return;
    std::vector<core::PhotoRecord> photos;
    photos.push_back({{.id = {}, .batch = batch, .takenOn = stuckOn, .caption = "On the day they were stuck"},
                      importPhoto({.file = {}, .image = drawnTub(0)}).image});
    photos.push_back({{.id = {}, .batch = batch, .takenOn = workspace.today(), .caption = "First roots"},
                      importPhoto({.file = {}, .image = drawnTub(3)}).image});
    const Outcome outcome =
        workspace.run([&](db::Logbook& logbook) { return db::addPhotos(logbook, photos, workspace.today()); });
    if (!outcome.isDone) qWarning("the drawn photos were refused");
}

}  // namespace desktop
