// SPDX-License-Identifier: MIT
// strikebook-cli print LOG --to FILE.pdf with --batch CODE, --round, --session DATE, --map WHERE or --trial NAME: a summary, a check sheet, a
// session sheet, a map of positions, a trial's report; with --season YEAR a season's review. And print --template, which needs no logbook: a
// lid to drill.
#pragma once

#include <optional>

#include "app/console/command.h"
#include "app/console/drilling_options.h"
#include "app/console/season_options.h"
#include "app/report/sheet.h"
#include "core/units/days.h"
#include "db/logbook.h"

namespace console {

class PrintCommand : public Command {
  public:
    [[nodiscard]] std::string name() const override;
    [[nodiscard]] std::string summary() const override;
    void declare(Options& options) override;
    int run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) override;

  private:
    [[nodiscard]] std::optional<report::Sheet> batchSheet(const db::Logbook& logbook, const Surroundings& surroundings,
                                                          std::ostream& err) const;
    [[nodiscard]] std::optional<report::Sheet> roundSheet(const db::Logbook& logbook,
                                                          const Surroundings& surroundings) const;
    [[nodiscard]] std::optional<report::Sheet> sessionSheet(const db::Logbook& logbook, core::Date day,
                                                            const Surroundings& surroundings, std::ostream& err) const;
    [[nodiscard]] std::optional<report::Sheet> mapSheet(const db::Logbook& logbook, const Surroundings& surroundings,
                                                        std::ostream& err) const;
    [[nodiscard]] int printTemplate(report::DrillingTemplate drilling, const Surroundings& surroundings,
                                    std::ostream& out) const;
    [[nodiscard]] int printSeason(const core::ReviewQuestion& season, const db::Logbook& logbook,
                                  const Surroundings& surroundings, std::ostream& out) const;
    void requireOneThing() const;
    void say(const report::Sheet& sheet, std::ostream& out) const;

    std::string file_;
    std::optional<std::string> code_;
    std::optional<std::string> session_;
    bool isRound_{};
    std::optional<std::string> map_;
    std::optional<std::string> trial_;
    std::optional<std::string> trialMap_;
    SeasonOptions seasonOptions_;
    DrillingOptions drilling_;
    std::optional<std::string> to_;
    std::optional<std::string> paper_;
    bool isJson_{};
};

}  // namespace console
