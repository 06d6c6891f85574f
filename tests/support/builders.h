// SPDX-License-Identifier: MIT
// Records for tests, with what doesn't matter out of sight:
//
//     const core::BatchRecord batch = aBatch().stuck(24).looked(7, {.rooted = 3, .lost = 1}).looked(14, {.rooted = 9});
//     const core::Records logbook = recordsOf({batch, aBatch().at(support::benchWest)});
#pragma once

#include <string>
#include <vector>

#include "core/records.h"

namespace support {

// On the shelves of someShelves().
inline constexpr core::PlantId hebe{101};     // usually rooted by day 35
inline constexpr core::PlantId deutzia{102};  // 'Nikko', protected; usually rooted by day 28
inline constexpr core::StockPlantId hebeByTheGate{201};
inline constexpr core::StockPlantId deutziaInThePotYard{202};
inline constexpr core::MethodId aeratedWater{301};
inline constexpr core::MethodId mediaTray{302};
inline constexpr core::StationId tubNorth{401};
inline constexpr core::StationId tubSouth{402};
inline constexpr core::StationId benchWest{403};
inline constexpr core::StationId benchEast{404};
inline constexpr core::MediumId coirMix{501};
inline constexpr core::TreatmentId nothing{601};
inline constexpr core::TreatmentId weakGel{602};
inline constexpr core::CuttingKindId stemTip{701};
inline constexpr core::CuttingKindId nodal{702};
inline constexpr core::LossCauseId rotted{801};
inline constexpr core::LossCauseId driedOut{802};
inline constexpr core::TrialId tubOrTray{901};  // horizon day 28, dealt by chance

/// The starting shelves with ids, and the things named above.
[[nodiscard]] core::Shelves someShelves();

/// The day on which batches are stuck when a test doesn't say: 2026-03-02.
[[nodiscard]] core::Date stickingDay();
/// Late enough for every look that a test makes: 2026-06-30.
[[nodiscard]] core::Date today();

/// What one look found that is new.
struct Seen {
    int rooted{};
    int lost{};  // to `cause`
    int withdrawn{};
    core::LossCauseId cause{rotted};
};

/// A batch of 24 hebe cuttings in the north tub. Every call gives a batch with an id and a code of its own.
class BatchBuilder {
  public:
    BatchBuilder();

    BatchBuilder& stuck(int count);
    BatchBuilder& stuckOn(core::Date day);  // before looked() and closed(), which count from it
    BatchBuilder& code(std::string code);
    BatchBuilder& of(core::PlantId plant);      // with its stock plant
    BatchBuilder& at(core::StationId station);  // with its method
    BatchBuilder& treated(core::TreatmentId treatment);
    BatchBuilder& in(core::MediumId medium);
    BatchBuilder& cut(core::CuttingKindId kind);
    BatchBuilder& block(std::string block);  // of tubOrTray
    BatchBuilder& looked(int afterDays, Seen seen = {});
    BatchBuilder& standing(const std::string& positions);  // and so many stuck
    /// At the last look, of its counts. Of a loss: to `rotted`.
    BatchBuilder& foundAt(const std::string& positions, core::Outcome outcome);
    BatchBuilder& closed(int afterDays, std::string reason = "The room was needed.");

    [[nodiscard]] core::BatchRecord build() const { return record_; }
    operator core::BatchRecord() const { return record_; }  // NOLINT: reads as the batch that it is

  private:
    core::BatchRecord record_;
};

[[nodiscard]] BatchBuilder aBatch();

/// A check that stands alone, for rules that judge one.
[[nodiscard]] core::Check aCheck(core::Date day, Seen seen = {});

/// A whole logbook: someShelves(), the batches, and a session for each day on which one was stuck.
[[nodiscard]] core::Records recordsOf(std::vector<core::BatchRecord> batches);

}  // namespace support
