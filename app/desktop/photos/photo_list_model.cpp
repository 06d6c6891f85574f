// SPDX-License-Identifier: MIT
#include "app/desktop/photos/photo_list_model.h"

#include <QBuffer>
#include <QImageReader>
#include <algorithm>

#include "app/plot/number_text.h"

namespace desktop {

PhotoListModel::PhotoListModel(ReadImage read, int side, QObject* parent)
    : QAbstractListModel(parent), read_(std::move(read)), side_(side) {}

void PhotoListModel::show(std::vector<core::Photo> photos, core::Date stuckOn) {
    beginResetModel();
    photos_ = std::move(photos);
    stuckOn_ = stuckOn;
    // A photo's pixels never change: only those that are gone are forgotten.
    std::erase_if(thumbnails_, [this](const auto& kept) { return rowOf(core::PhotoId{kept.first}) < 0; });
    endResetModel();
}

const core::Photo* PhotoListModel::photoAt(int row) const {
    return row < 0 || row >= rowCount() ? nullptr : &photos_[static_cast<std::size_t>(row)];
}

int PhotoListModel::rowOf(core::PhotoId photo) const {
    const auto found = std::ranges::find(photos_, photo, &core::Photo::id);
    return found == photos_.end() ? -1 : static_cast<int>(found - photos_.begin());
}

int PhotoListModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(photos_.size());
}

QVariant PhotoListModel::data(const QModelIndex& index, int role) const {
    const core::Photo* photo = photoAt(index.row());
    if (photo == nullptr) return {};
    switch (role) {
        case Qt::DisplayRole:
            return dayText(*photo);
        case Qt::DecorationRole:
            return thumbnail(*photo);
        case Qt::ToolTipRole:
        case Qt::AccessibleTextRole:
            return words(*photo);
        default:
            return {};
    }
}

QString PhotoListModel::dayText(const core::Photo& photo) const {
    return tr("day %1", "of a photo").arg(plot::countText(core::daysBetween(stuckOn_, photo.takenOn)));
}

QString PhotoListModel::words(const core::Photo& photo) const {
    const QString when = tr("%1, %2", "day 14, 28 March 2026").arg(dayText(photo), plot::dateText(photo.takenOn));
    if (photo.caption.empty()) return tr("photo, %1").arg(when);
    return tr("%1, %2", "caption, day").arg(QString::fromStdString(photo.caption), when);
}

const QPixmap& PhotoListModel::thumbnail(const core::Photo& photo) const {
    const auto found = thumbnails_.find(photo.id.value);
    if (found != thumbnails_.end()) return found->second;
    const core::ImageBytes bytes = read_(photo.id);
    QByteArray data(reinterpret_cast<const char*>(bytes.data()), static_cast<qsizetype>(bytes.size()));
    QBuffer buffer(&data);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer);
    const QSize size = reader.size();
    if (!size.isEmpty()) reader.setScaledSize(size.scaled(side_, side_, Qt::KeepAspectRatio).expandedTo({1, 1}));
    return thumbnails_[photo.id.value] = QPixmap::fromImage(reader.read());
}

}  // namespace desktop
