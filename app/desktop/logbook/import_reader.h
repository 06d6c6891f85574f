// SPDX-License-Identifier: MIT
// Reads an exchange folder away from the window's thread. What goes wrong in there comes out of contents(), in the window's thread, where it
// is caught like everything else.
#pragma once

#include <QObject>
#include <filesystem>
#include <future>
#include <stop_token>
#include <thread>

#include "db/exchange/import_folder.h"

namespace desktop {

class ImportReader : public QObject {
    Q_OBJECT

  public:
    using QObject::QObject;

    void start(const std::filesystem::path& folder, core::Date today);
    void stop() { thread_.request_stop(); }
    /// Once, after finished(). Throws what reading threw.
    [[nodiscard]] db::FolderContents contents() { return contents_.get(); }

  signals:
    void finished();

  private:
    std::future<db::FolderContents> contents_;
    std::jthread thread_;  // last, so that it has ended before anything else of ours does
};

}  // namespace desktop
