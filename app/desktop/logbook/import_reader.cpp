// SPDX-License-Identifier: MIT
#include "app/desktop/logbook/import_reader.h"

#include <QMetaObject>
#include <utility>

namespace desktop {

void ImportReader::start(const std::filesystem::path& folder, core::Date today) {
    std::packaged_task<db::FolderContents(std::stop_token)> reading(
        [folder, today](std::stop_token stopToken) { return db::readFolder(folder, today, std::move(stopToken)); });
    contents_ = reading.get_future();
    thread_ = std::jthread([this, reading = std::move(reading)](std::stop_token stopToken) mutable {
        reading(std::move(stopToken));
        QMetaObject::invokeMethod(this, &ImportReader::finished, Qt::QueuedConnection);
    });
}

}  // namespace desktop
