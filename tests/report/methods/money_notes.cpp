// SPDX-License-Identifier: MIT
// What plants cost, and what was lost.
#include "app/report/methods/notes.h"
#include "tests/core/money_examples.h"
#include "tests/report/methods/method_examples.h"
#include "tests/support/builders.h"

namespace examples {

core::Worth worthOfTubs(core::PlantId plant) {
    core::Records records = support::recordsOf(methodSeason());
    records.shelves = methodShelves();
    records.shelves.prices = {ownedBy(lasting("tub and pump", 60, 3), support::aeratedWater),
                              ownedBy(lasting("heated bench", 240, 5), support::mediaTray),
                              ownedBy(usedUp("solution", 1.20, 1, core::PriceBasis::Batch), support::aeratedWater),
                              ownedBy(usedUp("mix", 3, 1, core::PriceBasis::Batch), support::mediaTray),
                              usedUp("gel", 8, 200, core::PriceBasis::Cutting),
                              hourOfWork(12),
                              workTime("sticking", 30, core::PriceBasis::Batch)};
    core::WorthQuestion question{.plant = plant};
    question.methods = {support::aeratedWater, support::mediaTray};
    question.worthOfADay = 0.02;
    return worthOf(records, question);
}

core::Losses lossesOfTubs() {
    using support::aBatch;
    const std::vector<core::BatchRecord> batches{
        aBatch().stuck(24).looked(14, {.rooted = 6, .lost = 2, .cause = support::driedOut}).looked(28, {10, 3}),
        aBatch().stuck(20).looked(14, {.lost = 9, .cause = support::driedOut}).looked(28, {5, 2}),
        aBatch().stuck(24).looked(14, {8, 1}).looked(40, {.rooted = 7, .lost = 4, .cause = support::driedOut}),
        aBatch().stuck(18).looked(14, {6}).looked(28, {9, 1}),
        aBatch().at(support::benchWest).stuck(20).looked(28, {14, 2})};
    return core::lossesOver(batches, support::someShelves(), {});
}

std::vector<report::MethodNote> notesOfMoneyAndLosses() {
    const core::Worth ofBothPlants = worthOfTubs(), ofHebe = worthOfTubs(support::hebe);
    const core::Losses losses = lossesOfTubs();
    return {report::notesOnCosts(ofHebe, ofHebe.methods).front(), report::notesOnWorth(ofBothPlants, 0).front(),
            report::notesOnPayOff(ofBothPlants, 0).front(), report::notesOnLosses(losses).front(),
            report::notesOnLossesByMonth(losses).front()};
}

}  // namespace examples
