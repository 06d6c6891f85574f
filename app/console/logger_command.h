// SPDX-License-Identifier: MIT
// strikebook-cli logger LOG FILE: the readings of a logger, all or nothing, by a format that is remembered or by what the command line says.
#pragma once

#include <optional>
#include <string>

#include "app/console/command.h"
#include "app/console/logger_options.h"
#include "app/logger/import_log.h"

namespace console {

class LoggerCommand : public Command {
  public:
    [[nodiscard]] std::string name() const override;
    [[nodiscard]] std::string summary() const override;
    void declare(Options& options) override;
    int run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) override;

  private:
    /// Nothing: `err` says why not.
    [[nodiscard]] std::optional<core::LoggerMapping> mappingOf(const logger::FileLook& look, const db::Logbook& logbook,
                                                               std::ostream& err);
    [[nodiscard]] std::optional<core::LoggerMapping> rememberedMapping(const logger::FileLook& look,
                                                                       const db::Logbook& logbook, std::ostream& err);
    int bringIn(db::Logbook& logbook, const logger::LogContents& contents,
                const std::optional<core::LoggerFormat>& remembered, core::Moment now, std::ostream& out,
                std::ostream& err) const;

    std::string file_;
    std::string log_;
    std::optional<std::string> format_;
    std::optional<std::string> remember_;
    LoggerOptions options_;
    bool isJson_{};
};

}  // namespace console
