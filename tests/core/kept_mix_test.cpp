// SPDX-License-Identifier: MIT
#include "core/mixing/kept_mix.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using namespace std::chrono_literals;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

const core::Moment mixedAt = std::chrono::sys_days(2026y / 6 / 30) + 10h;

core::KeptMix tubMix() {
    return {.madeAt = mixedAt,
            .kind = core::MixKind::Nutrient,
            .title = "12 L at 1.2 mS/cm",
            .amounts = "14.4 g of salts\n12 L of water",
            .workings = "strength = 0.5",
            .cautions = "acids\nadvice",
            .care = {5}};
}

std::vector<std::string> mixSentences(const core::KeptMix& mix) {
    std::vector<std::string> sentences;
    for (const core::Refusal& refusal : core::faultsIn(mix, mixedAt)) sentences.push_back(refusal.sentence);
    return sentences;
}

TEST(KeptMixRules, PassARecipe) {
    EXPECT_THAT(mixSentences(tubMix()), IsEmpty());
    core::KeptMix plain = tubMix();
    plain.workings.clear();
    plain.cautions.clear();
    EXPECT_THAT(mixSentences(plain), IsEmpty());
}

TEST(KeptMixRules, WantATitleAndAmounts) {
    core::KeptMix mix = tubMix();
    mix.title = " ";
    mix.amounts = "\n";
    EXPECT_THAT(mixSentences(mix), ElementsAre(HasSubstr("Title is blank"), HasSubstr("Amounts is blank")));
    mix = tubMix();
    mix.amounts = std::string(80'001, 'x');
    EXPECT_THAT(mixSentences(mix), ElementsAre(HasSubstr("Amounts has 80001 characters")));
}

TEST(KeptMixRules, KnowEveryCautionByItsName) {
    core::KeptMix mix = tubMix();
    mix.cautions = "acids\nmoonlight";
    EXPECT_THAT(mixSentences(mix),
                ElementsAre("Cautions has \"moonlight\"; names of known cautions, one a line, are allowed."));
    mix.cautions = "acids\n\nadvice";
    EXPECT_EQ(mixSentences(mix).size(), 1U);
}

TEST(KeptMixRules, WantASessionOrCareAndAMomentThatHasBeen) {
    core::KeptMix mix = tubMix();
    mix.session = {3};
    EXPECT_THAT(mixSentences(mix), ElementsAre(HasSubstr("Kept with is a session and care")));
    mix.session = {};
    mix.care = {};
    EXPECT_THAT(mixSentences(mix), ElementsAre(HasSubstr("Kept with is nothing")));
    mix = tubMix();
    mix.madeAt = mixedAt + 6min;
    EXPECT_THAT(mixSentences(mix), ElementsAre("Made at is 2026-06-30T10:06:00Z; 1800-01-01 to now is allowed."));
}

TEST(KeptMixKinds, ReadBackByTheirWord) {
    for (const core::MixKind kind : core::allMixKinds) EXPECT_EQ(core::mixKindFrom(core::wordFor(kind)), kind);
    EXPECT_FALSE(core::mixKindFrom("potion"));
}

}  // namespace
