// SPDX-License-Identifier: MIT
#include "tests/db/exchange/random_conditions.h"

#include <array>

namespace support {

std::string RandomConditions::text() {
    constexpr std::array awkward = {"plain",       "=1+1",         "'quoted",    "a,b;c\td",
                                    "says \"no\"", "Grün & Söhne", "12 g\n3 mL", "ends with a line\n"};
    return awkward[static_cast<std::size_t>(below(awkward.size()))];
}

core::KeptMix RandomConditions::mix() {
    constexpr std::array cautions = {"", "acids", "growth regulators\nacids", "edible crops\nadvice\n"};
    return {.id = {++id_},
            .madeAt = std::chrono::sys_days(std::chrono::year(2025) / 3 / 1) + std::chrono::seconds(below(20'000'000)),
            .kind = core::allMixKinds[static_cast<std::size_t>(below(static_cast<int>(core::allMixKinds.size())))],
            .title = "mix, number " + std::to_string(below(3)),
            .amounts = text(),
            .workings = below(2) == 0 ? std::string() : text(),
            .cautions = cautions[static_cast<std::size_t>(below(cautions.size()))]};
}

void RandomConditions::writeBands(core::Shelves& shelves) {
    for (const core::BandQuantity quantity : core::allBandQuantities())
        for (const core::Stage stage : core::allStages) {
            if (below(4) != 0) continue;
            const core::QuantityFacts& facts = core::factsOf(quantity);
            const double width = facts.high - facts.low;
            core::OwnBand band{.id = {++id_}, .stage = stage, .quantity = quantity, .note = text()};
            if (below(2) == 0)
                band.plant =
                    shelves.plants[static_cast<std::size_t>(below(static_cast<int>(shelves.plants.size())))].id;
            const int ends = below(3);
            if (ends != 1) band.low = facts.low + width * below(500) / 999.0;
            if (ends != 2) band.high = facts.high - width * below(499) / 999.0;
            shelves.ownBands.push_back(std::move(band));
        }
}

void RandomConditions::writeLogger(core::Records& records) {
    for (const core::Station& station : records.shelves.stations)
        for (const core::Quantity quantity : core::allQuantities)
            for (int day = 0; day < 3 && below(3) == 0; ++day) {
                core::LoggerDay logged{.station = station.id,
                                       .quantity = quantity,
                                       .day = core::Date{std::chrono::year(2025) / 5 / (1 + 2 * day)}};
                const core::QuantityFacts& facts = core::factsOf(quantity);
                for (int second = below(9000); second < core::secondsInADay; second += 1 + below(9000))
                    logged.samples.push_back(
                        {.second = second, .value = facts.low + (facts.high - facts.low) * below(1000) / 999.0});
                records.loggerDays.push_back(std::move(logged));
            }
    for (int count = below(3); count > 0; --count)
        records.loggerFormats.push_back({.id = {++id_},
                                         .name = "logger " + std::to_string(count),
                                         .header = text(),
                                         .mapping = R"({"at": 0, "value": [1, "C"]})"});
}

void RandomConditions::write(core::Records& records) {
    for (const core::Session& session : records.sessions)
        for (int count = below(3); count > 0; --count) {
            records.mixes.push_back(mix());
            records.mixes.back().session = session.id;
        }
    for (const core::Care& care : records.care)
        for (int count = below(3); count > 0; --count) {
            records.mixes.push_back(mix());
            records.mixes.back().care = care.id;
        }
    writeBands(records.shelves);
    writeLogger(records);
}

}  // namespace support
