// SPDX-License-Identifier: MIT
// What the command line says of a logger's file, as a mapping: which columns hold what, in words such as "Water temp=Tub north:solution_temperature:F".
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "app/console/options.h"
#include "app/logger/file_look.h"
#include "core/records.h"

namespace console {

class LoggerOptions {
  public:
    void declare(Options& options);

    /// Any of those that say what is what.
    [[nodiscard]] bool areGiven() const;
    /// What the file's guess has, with what is said of it put over. Only the columns that are named have values. Throws WrongArgument.
    [[nodiscard]] core::LoggerMapping mappingFor(const logger::FileLook& look, const std::filesystem::path& file,
                                                 const core::Shelves& shelves) const;
    /// --zone, --twice and --blanks-are-no-reading, which may differ from file to file, over what was remembered.
    void putOver(core::LoggerMapping& mapping) const;

  private:
    void setTime(core::LoggerMapping& mapping, const logger::FileForm& form) const;
    void setForms(core::LoggerMapping& mapping, const logger::FileForm& form, const std::filesystem::path& file) const;

    std::vector<std::string> time_;
    std::vector<std::string> columns_;
    std::optional<std::string> zone_;
    std::optional<std::string> order_;
    std::optional<std::string> decimal_;
    std::optional<std::string> twice_;
    bool blanksAreNoReading_{};
};

/// The options that say what `mapping` says, ready to be typed.
[[nodiscard]] std::string optionsSaying(const core::LoggerMapping& mapping, const logger::FileForm& form,
                                        const core::Shelves& shelves);

}  // namespace console
