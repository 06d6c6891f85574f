// SPDX-License-Identifier: MIT
// How many to stick, and how many per arm.
#include "app/report/methods/notes.h"
#include "tests/report/methods/method_examples.h"

namespace examples {
namespace {

constexpr int tray = 20;
constexpr double correlation = 0.1;

report::MethodNote countNote() {
    const std::vector<core::BatchCount> batches{{.code = "B260014C", .rooted = 14, .assessed = 20},
                                                {.code = "B260021D", .rooted = 17, .assessed = 20},
                                                {.code = "B260035F", .rooted = 11, .assessed = 20}};
    const core::PastRecords records = core::pastRecordsOf(batches);
    const auto answer =
        core::howManyToStick({.wanted = 40, .assurance = 0.9, .pottedLive = 0.95, .traySize = tray}, records);
    return report::notesOnPlan(answer.value(), records).front();
}

report::MethodNote powerNote() {
    const auto power =
        core::trialPower({.expected = 0.5, .margin = 0.3, .correlation = correlation, .batchesPerArm = 6});
    return report::notesOnPower(power.value()).front();
}

}  // namespace

std::vector<report::MethodNote> notesOfPlans() {
    return {countNote(), powerNote()};
}

}  // namespace examples
