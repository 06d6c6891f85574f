// SPDX-License-Identifier: MIT
// The photos of the batch that is shown: small pictures in a row, the chosen one below, or two chosen ones side by side at the same scale.
// Photos come from files, from the clipboard or by drop; they are made small enough away from the window's thread.
#pragma once

#include <QWidget>
#include <memory>
#include <vector>

#include "app/desktop/background/latest_answer.h"
#include "app/desktop/page.h"
#include "app/desktop/photos/photo_import.h"

class QLabel;
class QListView;
class QMimeData;
class QPushButton;

namespace plot {
class Figure;
}

namespace desktop {

class BatchPageModel;
class FaultLabel;
class FigurePanel;
class PhotoListModel;

class PhotoWall : public QWidget {
    Q_OBJECT

  public:
    PhotoWall(BatchPageModel& model, const PageContext& context, QWidget* parent = nullptr);

    /// What the model has now; the chosen photos stay chosen where they are still there.
    void show(bool isWritable);
    void choose(core::PhotoId photo);
    void pickFiles();
    /// Whether there is anything in it that may be a photo.
    [[nodiscard]] static bool holdsPhotos(const QMimeData& brought);
    /// From the clipboard or a drop.
    void add(const QMimeData& brought);
    void editFacts(core::PhotoId photo);
    void remove(core::PhotoId photo);

  signals:
    void said(const QString& sentence);
    /// Photos are being added: show them.
    void wanted();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    struct Pending {
        core::Photo photo;  // of which batch
        PhotoSource source;
    };

    void build();
    QWidget* makeButtons();
    void add(std::vector<PhotoSource> sources);
    void take(const std::vector<ImportedPhoto>& imported);
    void stopAdding();
    void showChosen();
    void showLarge();
    [[nodiscard]] std::vector<core::Photo> chosen() const;
    [[nodiscard]] std::shared_ptr<const plot::Figure> figureOf(const std::vector<core::Photo>& photos) const;

    BatchPageModel& model_;
    PageContext context_;
    PhotoListModel* photos_{};
    QListView* list_{};
    QLabel* caption_{};
    QLabel* adding_{};
    FaultLabel* fault_{};
    FigurePanel* pair_{};
    QPushButton *add_{}, *large_{}, *facts_{}, *remove_{}, *stop_{};
    std::vector<Pending> pending_;
    bool isWritable_{};
    LatestAnswer<std::vector<ImportedPhoto>> imports_{this};
};

}  // namespace desktop
