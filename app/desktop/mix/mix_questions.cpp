// SPDX-License-Identifier: MIT
#include "app/desktop/mix/mix_questions.h"

namespace desktop {

std::vector<MixQuestion> mixQuestions() {
    std::vector<MixQuestion> all;
    for (const auto& ofSubject : {feedQuestions(), elementQuestions(), tubQuestions(), phQuestions(), auxinQuestions(),
                                  mediumQuestions(), lidQuestions()})
        all.insert(all.end(), ofSubject.begin(), ofSubject.end());
    return all;
}

}  // namespace desktop
