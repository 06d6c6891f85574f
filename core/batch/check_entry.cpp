// SPDX-License-Identifier: MIT
#include "core/batch/check_entry.h"

#include <algorithm>
#include <cassert>
#include <optional>

#include "core/batch/count_sum.h"
#include "core/units/entered_text.h"
#include "core/units/number_entry.h"
#include "core/units/range_text.h"

namespace core {

namespace {

constexpr std::string_view digitCharacters = "0123456789";
constexpr const char* grammar = "12, +3, =12, -2, -2r, w2, * , . or /words";

char lowerCase(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

/// Reads one entry from left to right. Keeps the first fault and stops there, since what follows an unreadable part
/// means nothing.
class EntryReader {
  public:
    EntryReader(std::string_view typed, const Tally& before, std::span<const LossCause> causes, PlainNumber plain)
        : typed_(typed), rest_(typed), before_(before), causes_(causes), plain_(plain) {}

    Result<CheckEntry> read() {
        while (!fault_ && skipBlanks()) readPart();
        if (!fault_) judge();
        if (fault_) return refused({*fault_});
        entry_.rooted = newlyRooted();
        entry_.withdrawn = withdrawn_.value_or(0);
        return entry_;
    }

  private:
    bool skipBlanks() {
        rest_.remove_prefix(std::min(rest_.find_first_not_of(' '), rest_.size()));
        return !rest_.empty();
    }

    void readPart() {
        const char first = lowerCase(rest_.front());
        if (digitCharacters.find(first) != std::string_view::npos) return readRooted(plain_);
        rest_.remove_prefix(1);
        switch (first) {
            case '+':
                return readRooted(PlainNumber::New);
            case '=':
                return readRooted(PlainNumber::InAll);
            case 'w':
                return readOnce("Withdrawn", withdrawn_, false);
            case '-':
                return readLoss();
            case '*':
                looked_ = true;
                return;
            case '.':
                entry_.closesBatch = true;
                return;
            case '/':
                return readNote();
            default:
                refuse("Entry", quotable(typed_), grammar,
                       "Entry is " + quotable(typed_) + ", which can't be read; " + grammar + " is allowed.");
        }
    }

    std::optional<int> readCount(const std::string& field) {
        const std::size_t length = std::min(rest_.find_first_not_of(digitCharacters), rest_.size());
        const std::string_view digits = rest_.substr(0, length);
        rest_.remove_prefix(length);
        const std::optional<int> count = countFrom(digits);
        const std::string allowed = rangeText(0, before_.undecided());
        if (digits.empty())
            refuse(field, quotable(typed_), allowed,
                   field + " has no number in " + quotable(typed_) + "; " + allowed + " is allowed.");
        else if (!count)
            refuse(field, std::string(digits), allowed,
                   field + " is " + quotable(digits) + ", which is too large; " + allowed + " is allowed.");
        return count;
    }

    void readRooted(PlainNumber meaning) {
        if (meaning == PlainNumber::InAll) return readOnce("Rooted", rootedInAll_, newRooted_.has_value());
        readOnce("Rooted", newRooted_, rootedInAll_.has_value());
    }

    void readOnce(const std::string& field, std::optional<int>& count, bool isGivenOtherwise) {
        const bool isSecond = count.has_value() || isGivenOtherwise;
        count = readCount(field);
        if (isSecond) refuseSecond(field);
    }

    void readLoss() {
        const std::optional<int> count = readCount("Lost");
        if (!count) return;
        LossCauseId cause{};
        if (!rest_.empty() && lowerCase(rest_.front()) >= 'a' && lowerCase(rest_.front()) <= 'z' &&
            lowerCase(rest_.front()) != 'w') {
            const char key = lowerCase(rest_.front());
            rest_.remove_prefix(1);
            const auto known = std::ranges::find_if(
                causes_, [key](const LossCause& each) { return each.key == key && !each.isRetired; });
            if (known == causes_.end()) return refuseCause(key);
            cause = known->id;
        }
        if (std::ranges::any_of(entry_.losses, [cause](const Loss& loss) { return loss.cause == cause; }))
            return refuseSecond(cause.isSet() ? "Lost to one cause" : "Lost without a cause");
        // Zero is written down as what it is: nothing lost.
        if (*count > 0) entry_.losses.push_back({.cause = cause, .count = *count});
    }

    void readNote() {
        const std::size_t first = std::min(rest_.find_first_not_of(' '), rest_.size());
        entry_.note = std::string(rest_.substr(first));
        entry_.note.erase(entry_.note.find_last_not_of(' ') + 1);
        rest_ = {};
        if (!fault_) fault_ = faultInNote("Note", entry_.note);
    }

    [[nodiscard]] int newlyRooted() const {
        if (rootedInAll_) return *rootedInAll_ - before_.rooted;
        return newRooted_.value_or(0);
    }

    void judge() {
        const int undecided = std::max(0, before_.undecided());
        if (looked_ && (newlyRooted() != 0 || withdrawn_.value_or(0) != 0 || !entry_.losses.empty()))
            return refuse("Entry", quotable(typed_), "* alone",
                          "Entry is " + quotable(typed_) +
                              ", but * says that nothing is new; * alone or counts without * is allowed.");
        if (rootedInAll_) {
            judgeCount("Rooted in all", *rootedInAll_, before_.rooted, before_.rooted + undecided, undecided);
        } else {
            judgeCount("Rooted", newRooted_.value_or(0), 0, undecided, undecided);
        }
        const int afterRooted = undecided - std::clamp(newlyRooted(), 0, undecided);
        judgeCount("Lost", entry_.lost(), 0, afterRooted, afterRooted);
        const int afterLost = afterRooted - std::clamp(entry_.lost(), 0, afterRooted);
        judgeCount("Withdrawn", withdrawn_.value_or(0), 0, afterLost, afterLost);
    }

    void judgeCount(const std::string& field, int count, int low, int high, int left) {
        if (count >= low && count <= high) return;
        const std::string allowed = rangeText(low, high);
        const std::string reason = count < low ? std::to_string(low) + " had rooted before"
                                               : "only " + std::to_string(left) + " of the " +
                                                     std::to_string(before_.stuck) + " cuttings are left undecided";
        refuse(field, std::to_string(count), allowed,
               field + " is " + std::to_string(count) + ", but " + reason + "; " + allowed + " is allowed.");
    }

    void refuseSecond(const std::string& field) {
        refuse(field, quotable(typed_), "once",
               field + " is given twice in " + quotable(typed_) + "; once is allowed.");
    }

    void refuseCause(char key) {
        std::string known;
        for (const LossCause& cause : causes_)
            if (cause.key != '\0' && !cause.isRetired)
                known += (known.empty() ? "" : ", ") + std::string(1, cause.key) + " " + cause.name;
        const std::string allowed = known.empty() ? "no letter" : known;
        refuse("Cause", std::string(1, key), allowed,
               "Cause is " + std::string(1, key) + ", which stands for no cause of loss; " + allowed + " is allowed.");
    }

    void refuse(std::string field, std::string value, std::string allowed, std::string sentence) {
        if (fault_) return;
        fault_ = Refusal{std::move(field), std::move(value), std::move(allowed), std::move(sentence)};
    }

    std::string_view typed_;
    std::string_view rest_;
    const Tally& before_;
    std::span<const LossCause> causes_;
    PlainNumber plain_;
    std::optional<int> rootedInAll_;
    std::optional<int> newRooted_;
    std::optional<int> withdrawn_;
    bool looked_{};
    CheckEntry entry_;
    std::optional<Refusal> fault_;
};

}  // namespace

int CheckEntry::lost() const {
    int sum = 0;
    for (const Loss& loss : losses) sum = countSum(sum, loss.count);
    return sum;
}

Result<CheckEntry> checkEntryFrom(std::string_view typed, const Tally& before, std::span<const LossCause> causes,
                                  PlainNumber plain) {
    assert(!isBlank(typed));
    return EntryReader(typed, before, causes, plain).read();
}

std::string entryText(const CheckEntry& entry, std::span<const LossCause> causes) {
    std::string text;
    if (entry.rooted > 0) text += "+" + std::to_string(entry.rooted);
    for (const Loss& loss : entry.losses) {
        text += "-" + std::to_string(loss.count);
        const auto known = std::ranges::find(causes, loss.cause, &LossCause::id);
        if (loss.cause.isSet() && known != causes.end() && known->key != '\0') text += known->key;
    }
    if (entry.withdrawn > 0) text += "w" + std::to_string(entry.withdrawn);
    if (entry.closesBatch) text += ".";
    if (text.empty() && entry.note.empty()) text = "*";
    if (!entry.note.empty()) text += "/" + entry.note;
    return text;
}

}  // namespace core
