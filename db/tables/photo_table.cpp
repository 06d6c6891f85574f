// SPDX-License-Identifier: MIT
#include "db/tables/photo_table.h"

#include "db/tables/sql_text.h"

namespace db {

namespace {

constexpr const char* insertPhoto = R"(
    INSERT INTO photos (id, batch_id, taken_on, caption, image)
    VALUES (?1, ?2, ?3, ?4, ?5))";
constexpr const char* updatePhoto = "UPDATE photos SET batch_id = ?2, taken_on = ?3, caption = ?4 WHERE id = ?1";
constexpr const char* deletePhotoRow = "DELETE FROM photos WHERE id = ?1";
constexpr const char* deletePhotosOfBatch = "DELETE FROM photos WHERE batch_id = ?1";
constexpr char photoColumns[] = "SELECT id, batch_id, taken_on, caption FROM photos";
constexpr auto selectPhotoRow = joined(photoColumns, " WHERE id = ?1");
constexpr auto selectPhotos = joined(photoColumns, " ORDER BY taken_on, id");
constexpr auto selectPhotosOf = joined(photoColumns, " WHERE batch_id = ?1 ORDER BY taken_on, id");
constexpr const char* selectImage = "SELECT image FROM photos WHERE id = ?1";

core::Photo photoFrom(const Query& row) {
    return {.id = row.id<core::PhotoId>(0),
            .batch = row.id<core::BatchId>(1),
            .takenOn = row.date(2),
            .caption = row.text(3)};
}

}  // namespace

void insertRow(Connection& connection, const core::PhotoRecord& record) {
    const core::Photo& photo = record.photo;
    connection.run(insertPhoto, photo.id, photo.batch, photo.takenOn, photo.caption, record.image);
}

bool updateRow(Connection& connection, const core::Photo& photo) {
    return connection.run(updatePhoto, photo.id, photo.batch, photo.takenOn, photo.caption) == 1;
}

bool deleteRow(Connection& connection, core::PhotoId id) {
    return connection.run(deletePhotoRow, id) == 1;
}

void deletePhotosOf(Connection& connection, core::BatchId batch) {
    connection.run(deletePhotosOfBatch, batch);
}

std::optional<core::Photo> photoIn(Connection& connection, core::PhotoId id) {
    Query row = connection.query(selectPhotoRow.data(), id);
    if (!row.step()) return std::nullopt;
    return photoFrom(row);
}

std::vector<core::Photo> photosOf(Connection& connection, core::BatchId batch) {
    std::vector<core::Photo> all;
    for (Query row = connection.query(selectPhotosOf.data(), batch); row.step();) all.push_back(photoFrom(row));
    return all;
}

std::vector<core::Photo> allPhotos(Connection& connection) {
    std::vector<core::Photo> all;
    for (Query row = connection.query(selectPhotos.data()); row.step();) all.push_back(photoFrom(row));
    return all;
}

core::ImageBytes imageOf(Connection& connection, core::PhotoId photo) {
    Query row = connection.query(selectImage, photo);
    return row.step() ? row.blob(0) : core::ImageBytes{};
}

}  // namespace db
