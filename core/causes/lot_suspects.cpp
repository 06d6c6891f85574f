// SPDX-License-Identifier: MIT
// The bottle of hormone and the bag of medium that were in use.
#include "core/causes/suspect_search.h"
#include "core/comparison/english.h"

namespace core {

namespace {

/// Mixed hormone is kept about a year where it is cool and dark, a bag of medium about two (common practice, no source).
constexpr int oldHormoneDays = 365;
constexpr int oldMediumDays = 730;
/// How much more an old lot is suspected than one whose age says nothing.
constexpr double weightOfAge = 2;

struct LotWords {
    const char* name;
    int oldFrom;
    const char* change;
    std::optional<TrialProposal> (*propose)(const Batch& batch, const Shelves& shelves, int horizonDay);
};
constexpr LotWords ofHormone{"old hormone, ", oldHormoneDays,
                             "Open or mix a fresh lot of the hormone, and write down its day.", proposeNewHormone};
constexpr LotWords ofMedium{"old medium, ", oldMediumDays, "Open a fresh bag of the medium, and write down its day.",
                            proposeNewMedium};

std::string nameOfLot(const Lot& lot, const std::string& owner, bool isOld, const LotWords& words) {
    return (isOld ? words.name : "") + ("lot " + lot.name) + " of \u201c" + owner + "\u201d";
}

template <class Owner>
void addLot(const SuspectSearch& search, const std::string& ownerName, Owner Batch::*owner, const LotWords& words,
            std::vector<Candidate>& candidates) {
    const Batch& own = search.own();
    const std::vector<Lot>& lots = search.records.shelves.lots;
    const Lot* lot = lotInUse(lots, own.*owner, own.stuckOn);
    if (lot == nullptr) return;
    const int age = lot->madeOn ? daysBetween(*lot->madeOn, own.stuckOn) : 0;
    const bool isOld = age >= words.oldFrom;
    Candidate candidate{.kind = SuspectKind::Lot, .name = nameOfLot(*lot, ownerName, isOld, words)};
    int ofSameOwner = 0;
    candidate.others = othersThat(search.around, [&](const BatchAround& other) {
        if (other.batch().*owner != own.*owner) return false;
        ++ofSameOwner;
        return lotInUse(lots, own.*owner, other.batch().stuckOn) == lot;
    });
    if (isOld) {
        candidate.weight = weightOfAge;
        candidate.speaksFor.push_back("The lot was " + counted(age, "day", "days") + " old on the day of sticking.");
    }
    candidate.speaksFor.push_back("The batch was stuck with lot " + lot->name + ", in use since " +
                                  isoText(lot->usedFrom) + ".");
    if (lot->madeOn && !isOld)
        candidate.speaksAgainst.push_back("The lot was " + counted(age, "day", "days") + " old, which isn't much.");
    if (ofSameOwner == static_cast<int>(candidate.others.size()))
        candidate.speaksAgainst.push_back(
            "No batch with another lot of it is among those considered, so the lot can't be "
            "told from what it is a lot of.");
    candidate.changeNextTime = words.change;
    candidate.trial = words.propose(own, search.records.shelves, search.trialDay());
    candidates.push_back(std::move(candidate));
}

}  // namespace

void addLots(const SuspectSearch& search, std::vector<Candidate>& candidates) {
    const Shelves& shelves = search.records.shelves;
    if (const Treatment* treatment = find(shelves.treatments, search.own().treatment))
        addLot(search, treatment->name, &Batch::treatment, ofHormone, candidates);
    if (const Medium* medium = find(shelves.media, search.own().medium))
        addLot(search, medium->name, &Batch::medium, ofMedium, candidates);
}

}  // namespace core
