// SPDX-License-Identifier: MIT
// The season review as it stands on the command line: --season 2026, or --from DATE --until DATE.
#pragma once

#include <optional>
#include <string>

#include "app/console/json_text.h"
#include "app/console/options.h"
#include "app/console/surroundings.h"
#include "app/report/sheet.h"
#include "core/review/season_review.h"

namespace console {

class SeasonOptions {
  public:
    void declare(Options& options);
    [[nodiscard]] bool isWanted() const { return season_ || from_ || until_; }
    /// Nothing where it isn't wanted. Throws WrongArgument when a year or a day can't be read, or when both ways are mixed or half given.
    [[nodiscard]] std::optional<core::ReviewQuestion> read() const;

  private:
    std::optional<std::string> season_;
    std::optional<std::string> from_;
    std::optional<std::string> until_;
};

/// Refused is said by throwing WrongArgument.
[[nodiscard]] core::SeasonReview seasonReviewOf(const core::ReviewQuestion& question, const db::Logbook& logbook,
                                                const Surroundings& surroundings);
/// The sums, the best method of each plant and what to try next.
[[nodiscard]] Json jsonOf(const core::SeasonReview& review);

}  // namespace console
