// SPDX-License-Identifier: MIT
// The photos of a batch as a row of small pictures, each read when it is first seen.
#pragma once

#include <QAbstractListModel>
#include <QPixmap>
#include <functional>
#include <map>
#include <vector>

#include "core/batch/photo.h"

namespace desktop {

class PhotoListModel : public QAbstractListModel {
    Q_OBJECT

  public:
    using ReadImage = std::function<core::ImageBytes(core::PhotoId)>;

    PhotoListModel(ReadImage read, int side, QObject* parent = nullptr);

    void show(std::vector<core::Photo> photos, core::Date stuckOn);
    [[nodiscard]] const core::Photo* photoAt(int row) const;  // nullptr: no such row
    [[nodiscard]] int rowOf(core::PhotoId photo) const;       // -1: none

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;

  private:
    [[nodiscard]] QString dayText(const core::Photo& photo) const;
    [[nodiscard]] QString words(const core::Photo& photo) const;
    [[nodiscard]] const QPixmap& thumbnail(const core::Photo& photo) const;

    ReadImage read_;
    int side_;  // of a thumbnail, in pixels
    std::vector<core::Photo> photos_;
    core::Date stuckOn_{};
    mutable std::map<std::int64_t, QPixmap> thumbnails_;
};

}  // namespace desktop
