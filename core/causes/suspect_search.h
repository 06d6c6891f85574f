// SPDX-License-Identifier: MIT
// Where suspects come from. Each source looks through the records for what the batch shared with others or lived through; what speaks for and
// against it is weighed afterwards, for all alike, in suspects.cpp. Only for the files of this folder.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "core/causes/batches_around.h"
#include "core/causes/suspects.h"

namespace core {

struct SuspectSearch {
    const Course& batch;
    int day{};  // on which batches of its plant are counted
    const RecordsForSuspects& records;
    const BatchesAround& around;
    const stats::SharedDrop& drop;

    [[nodiscard]] const Batch& own() const { return batch.record->batch; }
    /// The day on which a trial of its plant is decided, however early this batch came to its end.
    [[nodiscard]] int trialDay() const {
        return records.horizonDay.value_or(usualHorizonOf(own().plant, records.shelves));
    }
};

struct Candidate {
    SuspectKind kind{};
    std::string name{};
    std::vector<std::size_t> others{};         // of BatchesAround::batches
    std::vector<std::string> speaksFor{};      // what is on record of this batch itself; at least that it shares it
    std::vector<std::string> speaksAgainst{};  // what is known before anything is counted
    double weight{1};                          // among those of its kind
    std::optional<double> logRatio{};          // in place of that of `others`, where losses were recorded
    std::string changeNextTime{};
    std::optional<TrialProposal> trial{};
    std::string checkInstead{};
};

/// Indices of the batches around that do.
[[nodiscard]] std::vector<std::size_t> othersThat(const BatchesAround& around,
                                                  const std::function<bool(const BatchAround&)>& share);

void addConditions(const SuspectSearch& search, std::vector<Candidate>& candidates);
void addLossCauses(const SuspectSearch& search, std::vector<Candidate>& candidates);
void addLots(const SuspectSearch& search, std::vector<Candidate>& candidates);
void addCare(const SuspectSearch& search, std::vector<Candidate>& candidates);
/// Stock plant, station, session, worker, month.
void addCircumstances(const SuspectSearch& search, std::vector<Candidate>& candidates);

/// What was not on record and would have told more.
[[nodiscard]] std::vector<std::string> whatToRecord(const SuspectSearch& search);

}  // namespace core
