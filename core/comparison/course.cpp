// SPDX-License-Identifier: MIT
#include "core/comparison/course.h"

#include <algorithm>
#include <limits>
#include <tuple>

namespace core {
namespace {

constexpr double noDayYet = std::numeric_limits<double>::infinity();

}  // namespace

std::vector<Look> looksOf(const BatchRecord& record, std::optional<Date> until) {
    std::vector<Look> looks;
    looks.reserve(record.checks.size());
    for (const Check& check : record.checks) {
        if (until && check.checkedOn > *until) continue;
        // A check before its batch can't be recorded; a damaged file could hold one.
        const int day = std::max(0, daysBetween(record.batch.stuckOn, check.checkedOn));
        looks.push_back({.day = day, .rooted = check.rooted, .lost = check.lost(), .withdrawn = check.withdrawn});
    }
    std::stable_sort(looks.begin(), looks.end(), [](const Look& a, const Look& b) { return a.day < b.day; });
    return looks;
}

HorizonFate fateAt(int horizonDay, int stuck, std::span<const Look> looks) {
    HorizonFate fate{.stuck = stuck};
    bool isLookedAtOnHorizon = false;
    int withdrawnOnHorizon = 0;
    const Look* firstAfter = nullptr;
    for (const Look& look : looks) {
        if (look.day > horizonDay) {
            firstAfter = &look;
            break;
        }
        fate.rooted += look.rooted;
        fate.lost += look.lost;
        fate.withdrawn += look.withdrawn;
        if (look.day == horizonDay) {
            isLookedAtOnHorizon = true;
            withdrawnOnHorizon += look.withdrawn;  // taken away unrooted on that very day
        }
    }
    fate.undecided = stuck - fate.rooted - fate.lost - fate.withdrawn;
    int seenUnrooted = 0;
    if (isLookedAtOnHorizon)
        seenUnrooted = fate.undecided;
    else if (firstAfter != nullptr)
        seenUnrooted = fate.undecided - firstAfter->rooted;
    fate.assessed = fate.rooted + fate.lost + withdrawnOnHorizon + std::max(0, seenUnrooted);
    return fate;
}

Course courseOf(const BatchRecord& record, int horizonDay, std::optional<Date> until) {
    Course course{.record = &record, .looks = looksOf(record, until), .fate = {}};
    course.fate = fateAt(horizonDay, record.batch.stuck, course.looks);
    return course;
}

std::vector<stats::Observation> observationsOf(const Course& course) {
    std::vector<stats::Observation> rows;
    int undecided = course.stuck();
    double before = 0;
    const auto add = [&rows](double after, double by, int cause, int count) {
        if (count > 0) rows.push_back({.after = after, .by = by, .cause = cause, .weight = static_cast<double>(count)});
    };
    for (const Look& look : course.looks) {
        add(before, look.day, 1, look.rooted);
        add(before, look.day, 2, look.lost);
        add(look.day, noDayYet, 0, look.withdrawn);
        undecided -= look.rooted + look.lost + look.withdrawn;
        before = look.day;
    }
    add(before, noDayYet, 0, undecided);
    return rows;
}

std::vector<stats::Observation> merged(std::vector<stats::Observation> rows) {
    const auto key = [](const stats::Observation& row) { return std::tuple(row.after, row.by, row.cause); };
    std::sort(rows.begin(), rows.end(), [&key](const auto& a, const auto& b) { return key(a) < key(b); });
    std::size_t kept = 0;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (kept > 0 && key(rows[kept - 1]) == key(rows[i]))
            rows[kept - 1].weight += rows[i].weight;
        else
            rows[kept++] = rows[i];
    }
    rows.resize(kept);
    return rows;
}

}  // namespace core
