// SPDX-License-Identifier: MIT
// The questions of the Mix page: what each asks for and what it answers. The sums are core's, the words report's.
#pragma once

#include <optional>
#include <vector>

#include "app/desktop/mix/mix_form.h"
#include "app/report/mix_answer.h"
#include "core/station/lid_layout.h"

namespace desktop {

struct DrawnLid {
    core::Lid lid{};
    core::LidLayout layout{};
    QString words{};
};

/// An answer; or what is wrong; or neither while something is still to fill in.
struct MixReply {
    std::optional<report::MixAnswer> answer{};
    core::Refusals faults{};
    std::optional<DrawnLid> lid{};
};

struct MixQuestion {
    QString word;   // "nutrient": as on the command line
    QString title;  // in the list
    QString asks;   // a sentence: what it is for
    void (*build)(MixForm& form);
    MixReply (*reply)(MixForm& form);
};

/// In the order of the list.
[[nodiscard]] std::vector<MixQuestion> mixQuestions();

// By subject, for mixQuestions().
[[nodiscard]] std::vector<MixQuestion> feedQuestions();
[[nodiscard]] std::vector<MixQuestion> elementQuestions();
[[nodiscard]] std::vector<MixQuestion> tubQuestions();
[[nodiscard]] std::vector<MixQuestion> phQuestions();
[[nodiscard]] std::vector<MixQuestion> auxinQuestions();
[[nodiscard]] std::vector<MixQuestion> mediumQuestions();
[[nodiscard]] std::vector<MixQuestion> lidQuestions();

/// What the form says against it, or nothing yet where something is missing, or the answer.
template <class Question, class Answer>
[[nodiscard]] MixReply replyTo(const MixForm& form, const Question& question, core::Refusals ofCore,
                               core::Result<Answer> (*answer)(const Question&),
                               report::MixAnswer (*inWords)(const Answer&, const core::DisplayUnits&)) {
    MixReply reply{.faults = form.faults(std::move(ofCore))};
    if (!reply.faults.empty() || !form.missing().isEmpty()) return reply;
    core::Result<Answer> found = answer(question);
    if (found)
        reply.answer = inWords(*found, form.units());
    else
        reply.faults = found.error();
    return reply;
}

}  // namespace desktop
