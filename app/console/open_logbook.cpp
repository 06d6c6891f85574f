// SPDX-License-Identifier: MIT
#include "app/console/open_logbook.h"

#include "core/units/entered_text.h"

namespace console {

namespace {

db::OpenOptions optionsFor(const Surroundings& surroundings, db::Access access) {
    return {.clock = surroundings.clock, .author = surroundings.author, .access = access, .asWindow = false};
}

/// Takes a file that we made away again, unless all went well.
class FileInTheMaking {
  public:
    explicit FileInTheMaking(std::filesystem::path file) : file_(std::move(file)) {}
    FileInTheMaking(const FileInTheMaking&) = delete;
    FileInTheMaking& operator=(const FileInTheMaking&) = delete;
    ~FileInTheMaking() {
        std::error_code ignored;
        if (!isKept_) std::filesystem::remove(file_, ignored);
    }
    void keep() { isKept_ = true; }

  private:
    std::filesystem::path file_;
    bool isKept_{};
};

}  // namespace

db::Logbook openToRead(const std::string& file, const Surroundings& surroundings) {
    return db::Logbook::open(file, optionsFor(surroundings, db::Access::ReadOnly));
}

db::Logbook openToWrite(const std::string& file, const Surroundings& surroundings) {
    return db::Logbook::open(file, optionsFor(surroundings, db::Access::ReadWrite));
}

core::Result<db::Changes> createAndFill(const std::string& file, const core::LogbookFacts& facts,
                                        const Surroundings& surroundings,
                                        const std::function<core::Result<db::Changes>(db::Logbook&)>& fill) {
    db::Logbook logbook = db::Logbook::create(file, facts, optionsFor(surroundings, db::Access::ReadWrite));
    FileInTheMaking making(file);  // after create(), which refuses a file that is there
    core::Result<db::Changes> filled = fill(logbook);
    if (filled) making.keep();
    return filled;
}

std::string nameFromFile(const std::string& file) {
    const std::string stem = std::filesystem::path(file).stem().string();
    return core::faultInName("Name", stem) ? "Logbook" : stem;
}

}  // namespace console
