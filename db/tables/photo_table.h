// SPDX-License-Identifier: MIT
// Rows of the table photos: all SQL about it is here.
#pragma once

#include <optional>
#include <vector>

#include "core/batch/photo.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::PhotoRecord& photo);
/// Day and caption; the picture stays. False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::Photo& photo);
[[nodiscard]] bool deleteRow(Connection& connection, core::PhotoId id);
void deletePhotosOf(Connection& connection, core::BatchId batch);
[[nodiscard]] std::optional<core::Photo> photoIn(Connection& connection, core::PhotoId id);
/// Without the pictures, by day.
[[nodiscard]] std::vector<core::Photo> photosOf(Connection& connection, core::BatchId batch);
[[nodiscard]] std::vector<core::Photo> allPhotos(Connection& connection);
/// Empty: there is no such photo.
[[nodiscard]] core::ImageBytes imageOf(Connection& connection, core::PhotoId photo);

}  // namespace db
