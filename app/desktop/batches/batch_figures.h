// SPDX-License-Identifier: MIT
// The pictures of a batch, one tab each: its strip, its curve beside the grower's own past, its place among other batches, its photos,
// and where its cuttings stand.
#pragma once

#include <QTabWidget>

#include "app/desktop/page.h"

namespace desktop {

class BatchConditions;
class BatchMap;
class BatchPageModel;
class FigurePanel;
class PhotoWall;

class BatchFigures : public QTabWidget {
    Q_OBJECT

  public:
    BatchFigures(BatchPageModel& model, const PageContext& context, QWidget* parent = nullptr);

    /// Another batch: every tab shows its picture, not its figures.
    void start();
    void showPictures();  // those that take sums
    void showPhotos(bool isWritable);
    void showMap(bool isWritable);
    void bringPhotosToFront();
    [[nodiscard]] PhotoWall* photos() const { return photos_; }

  signals:
    void said(const QString& sentence);

  private:
    BatchPageModel& model_;
    FigurePanel *strip_, *curve_, *chart_;
    PhotoWall* photos_;
    BatchConditions* conditions_;
    BatchMap* map_;
};

}  // namespace desktop
