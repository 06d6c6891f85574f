// SPDX-License-Identifier: MIT
// The small grammar of a round of checks, typed on the number pad with one hand:
//   12 rooted in all    +3 three more rooted    -2 two lost    -2r two lost to the cause with the key r    w2 two withdrawn
//   +3-1r both          * looked, nothing new   .  nothing left to wait for: close by hand       /words  a note, last
//   =12 rooted in all, also where the grower has plain numbers mean what is new
// Parts may be combined in any order but each of rooted, withdrawn and each cause once.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/batch/check.h"
#include "core/batch/loss_cause.h"
#include "core/batch/tally.h"
#include "core/result.h"

namespace core {

struct CheckEntry {
    int rooted{};  // new since the check before, also where the total was typed
    int withdrawn{};
    std::vector<Loss> losses{};
    std::string note{};
    bool closesBatch{};

    [[nodiscard]] int lost() const;
    bool operator==(const CheckEntry&) const = default;
};

/// What a number without a sign says of the rooted. With a sign it is always what is new, with = always the total.
enum class PlainNumber { InAll, New };

/// `before` is the batch's tally before this look (it turns a total into what is new). Refuses what it can't read and what exceeds the
/// undecided, with the reason in a sentence. `typed` must not be blank: blank means "not looked at", which is the caller's to know.
[[nodiscard]] Result<CheckEntry> checkEntryFrom(std::string_view typed, const Tally& before,
                                                std::span<const LossCause> causes,
                                                PlainNumber plain = PlainNumber::InAll);

/// The entry as one would type it, the same under either meaning of a plain number: "+3-1r/dry leaves", "*" when nothing is new. A cause
/// without a key is left out of it, its count is not.
[[nodiscard]] std::string entryText(const CheckEntry& entry, std::span<const LossCause> causes);

}  // namespace core
