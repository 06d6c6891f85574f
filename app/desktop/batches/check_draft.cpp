// SPDX-License-Identifier: MIT
#include "app/desktop/batches/check_draft.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/plot/number_text.h"
#include "core/units/number_entry.h"

namespace desktop {

namespace {

QString sayInCheck(const char* text) {
    return QCoreApplication::translate("CheckDraft", text);
}

int countIn(const core::Check& check, const CheckField& field) {
    if (field.kind == CheckField::Kind::Rooted) return check.rooted;
    if (field.kind == CheckField::Kind::Withdrawn) return check.withdrawn;
    for (const core::Loss& loss : check.losses)
        if (loss.cause == field.cause) return loss.count;
    return 0;
}

std::vector<CheckField> fieldsFor(const core::BatchRecord& record, const core::Shelves& shelves) {
    std::vector<CheckField> fields{
        {.name = sayInCheck("Rooted"), .cause = {}, .kind = CheckField::Kind::Rooted, .typed = {}},
        {.name = sayInCheck("Withdrawn"), .cause = {}, .kind = CheckField::Kind::Withdrawn, .typed = {}}};
    for (const core::LossCause& cause : shelves.lossCauses) {
        const bool isUsed = std::any_of(record.checks.begin(), record.checks.end(), [&](const core::Check& check) {
            return std::any_of(check.losses.begin(), check.losses.end(),
                               [&](const core::Loss& loss) { return loss.cause == cause.id; });
        });
        if (!cause.isRetired || isUsed)
            fields.push_back({.name = sayInCheck("Lost (%1)").arg(QString::fromStdString(cause.name)),
                              .cause = cause.id,
                              .kind = CheckField::Kind::Lost,
                              .typed = {}});
    }
    fields.push_back(
        {.name = sayInCheck("Lost (cause not known)"), .cause = {}, .kind = CheckField::Kind::Lost, .typed = {}});
    return fields;
}

}  // namespace

CheckDraft CheckDraft::of(const core::BatchRecord& record, const core::Shelves& shelves, const core::Check* edited,
                          core::Date day) {
    CheckDraft draft;
    draft.record = record;
    draft.fields = fieldsFor(record, shelves);
    draft.check.batch = record.batch.id;
    draft.check.checkedOn = day;
    if (edited == nullptr) return draft;
    draft.check = *edited;
    for (CheckField& field : draft.fields)
        if (const int count = countIn(*edited, field); count > 0) field.typed = QString::number(count);
    std::erase_if(draft.record.checks, [id = edited->id](const core::Check& check) { return check.id == id; });
    return draft;
}

int CheckDraft::before(const CheckField& field) const {
    int count = 0;
    for (const core::Check& other : record.checks)
        if (other.checkedOn < check.checkedOn) count += countIn(other, field);
    return count;
}

std::optional<int> CheckDraft::newCount(const CheckField& field) const {
    if (field.typed.trimmed().isEmpty()) return 0;
    const auto count = core::countFrom(field.typed.toStdString());
    if (!count) return {};
    if (countsAre == CountsAre::New) return count;
    const int more = *count - before(field);
    return more < 0 ? std::nullopt : std::optional(more);
}

QString CheckDraft::fault(const CheckField& field) const {
    if (newCount(field)) return {};
    const auto count = core::countFrom(field.typed.toStdString());
    if (!count)
        return sayInCheck("%1 is \u201c%2\u201d: it has to be a whole number, 0 or more.")
            .arg(field.name, field.typed.trimmed());
    return sayInCheck("%1 in all is %2, but there were %3 before this look; %3 or more is allowed.")
        .arg(field.name)
        .arg(*count)
        .arg(before(field));
}

QString CheckDraft::otherWay(const CheckField& field) const {
    const auto more = newCount(field);
    if (!more) return {};
    if (countsAre == CountsAre::New) return sayInCheck("%1 in all").arg(plot::countText(before(field) + *more));
    return sayInCheck("+%1 new").arg(plot::countText(*more));
}

void CheckDraft::say(CountsAre how) {
    if (how == countsAre) return;
    std::vector<std::optional<int>> counts;
    for (const CheckField& field : fields) counts.push_back(newCount(field));
    countsAre = how;
    for (std::size_t i = 0; i < fields.size(); ++i) {
        if (!counts[i]) continue;  // what can't be read stays as it was typed
        const int count = *counts[i] + (how == CountsAre::InAll ? before(fields[i]) : 0);
        fields[i].typed = count == 0 ? QString() : QString::number(count);
    }
}

QString CheckDraft::inWords() const {
    std::vector<core::Check> checks = record.checks;
    checks.push_back(result());
    const core::Tally after = core::tallyOf(record.batch, checks, check.checkedOn);
    return sayInCheck("After this look: %1 rooted, %2 lost, %3 withdrawn, %4 undecided of %5.")
        .arg(after.rooted)
        .arg(after.lost)
        .arg(after.withdrawn)
        .arg(after.undecided())
        .arg(after.stuck);
}

core::Check CheckDraft::result() const {
    core::Check made = check;
    made.losses.clear();
    for (const CheckField& field : fields) {
        const int count = newCount(field).value_or(0);
        if (field.kind == CheckField::Kind::Rooted) made.rooted = count;
        if (field.kind == CheckField::Kind::Withdrawn) made.withdrawn = count;
        if (field.kind == CheckField::Kind::Lost && count > 0)
            made.losses.push_back({.cause = field.cause, .count = count});
    }
    return made;
}

}  // namespace desktop
