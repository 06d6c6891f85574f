// SPDX-License-Identifier: MIT
// strikebook-cli import LOG FOLDER: all of an exchange folder, or nothing.
#pragma once

#include <optional>

#include "app/console/command.h"
#include "core/result.h"
#include "db/exchange/import_folder.h"

namespace console {

/// What the answer tells.
struct Imported {
    std::string logbook;
    bool isNew{};
    std::size_t sessions{};
    std::size_t batches{};
    std::size_t checks{};
};

class ImportCommand : public Command {
  public:
    [[nodiscard]] std::string name() const override;
    [[nodiscard]] std::string summary() const override;
    void declare(Options& options) override;
    int run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) override;

  private:
    int importIntoNew(const Imported& imported, db::FolderContents& contents, const Surroundings& surroundings,
                      std::ostream& out, std::ostream& err);
    int importIntoOld(const Imported& imported, db::FolderContents& contents, const Surroundings& surroundings,
                      std::ostream& out, std::ostream& err);
    int answer(const core::Result<db::Changes>& done, const Imported& imported, std::ostream& out,
               std::ostream& err) const;

    std::string file_;
    std::string folder_;
    bool isJson_{};
};

}  // namespace console
