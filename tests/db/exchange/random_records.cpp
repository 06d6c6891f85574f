// SPDX-License-Identifier: MIT
#include "tests/db/exchange/random_records.h"

#include <algorithm>
#include <array>
#include <map>
#include <random>

#include "core/batch/position_rules.h"
#include "tests/db/exchange/random_conditions.h"
#include "tests/db/exchange/random_money.h"

namespace support {

namespace {

/// What begins like a formula, has what tables are made of, or is not ASCII.
constexpr std::array awkwardTexts = {"plain",
                                     "=1+1",
                                     "+3",
                                     "-3",
                                     "@here",
                                     "'quoted",
                                     "''twice",
                                     "'=1",
                                     "a,b",
                                     "semi;colon",
                                     "says \"no\"",
                                     "\"",
                                     "Gruen & Soehne",
                                     "Grün & Söhne",
                                     "玫瑰",
                                     "two  blanks",
                                     " ends with blanks ",
                                     "#N/A",
                                     "1e5",
                                     "true",
                                     "2026-03-14",
                                     "a + b"};
constexpr std::array awkwardNotes = {"",
                                     "",
                                     "two\nlines",
                                     "two\r\nlines",
                                     "\ttab first",
                                     "\nline first",
                                     "\rreturn first",
                                     "ends with a line\n",
                                     "x,\"y\"\n,z"};

class RandomWriter {
  public:
    explicit RandomWriter(std::uint32_t seed) : engine_(seed) {}

    core::Records write() {
        writeFacts();
        writeSchedules();
        writePlants();
        writePlaces();
        writeRecipes();
        const int sessions = below(6);
        for (int i = 0; i < sessions; ++i) writeSession();
        for (const core::Station& station : records_.shelves.stations) writeRounds(station.id);
        for (const core::BatchRecord& record : records_.batches) writeBelongings(record.batch);
        for (core::Trial& trial : records_.shelves.trials)
            if (chance()) planTrial(trial);
        writePlans();
        RandomConditions(engine_, id_).write(records_);
        RandomMoney(engine_, id_).write(records_);
        return std::move(records_);
    }

  private:
    // Own draws from the engine: std's distributions differ between libraries.
    int below(int count) { return static_cast<int>(engine_() % static_cast<std::uint32_t>(count)); }
    bool chance() { return below(2) == 0; }
    std::int64_t nextId() { return ++id_; }
    /// Never the same twice, so it can be a name.
    std::string name() {
        return awkwardTexts[static_cast<std::size_t>(below(awkwardTexts.size()))] + std::string(" ") +
               std::to_string(++names_);
    }
    std::string text() { return chance() ? "" : awkwardTexts[static_cast<std::size_t>(below(awkwardTexts.size()))]; }
    std::string note() {
        return chance() ? text() : awkwardNotes[static_cast<std::size_t>(below(awkwardNotes.size()))];
    }
    double part() { return 1.0 + below(30) / 7.0; }

    template <class Thing>
    decltype(Thing::id) oneOf(const std::vector<Thing>& things, bool mayBeNone) {
        if (things.empty() || (mayBeNone && below(4) == 0)) return {};
        return things[static_cast<std::size_t>(below(static_cast<int>(things.size())))].id;
    }

    void writeFacts() {
        core::LogbookFacts& facts = records_.shelves.facts;
        facts = {.name = name(),
                 .grower = text(),
                 .rootLengthMillimetres = 1 + below(20),
                 .checkEveryDays = 1 + below(20),
                 .firstCheckAfterDays = 1 + below(20),
                 .horizonDay = 10 + below(90),
                 .level = 0.8 + below(19) / 100.0,
                 .paper = chance() ? "A4" : "Letter",
                 .isInvented = chance(),
                 .interval = chance() ? "wilson" : "clopper_pearson",
                 .units = {.temperature = static_cast<core::TemperatureUnit>(below(2)),
                           .ec = static_cast<core::EcUnit>(below(5)),
                           .volume = static_cast<core::VolumeUnit>(below(2)),
                           .length = static_cast<core::LengthUnit>(below(2))},
                 .currency = chance() ? "EUR" : "CHF",
                 .citation = note(),
                 .altitudeMetres = below(6000) - 430 / 3.0,
                 .degreeDayBase = below(500) / 10.0 - 10,
                 .falseAlarmRate = (1 + below(499)) / 1000.0};
    }

    void writeSchedules() {
        for (int count = below(3); count > 0; --count)
            records_.shelves.checkSchedules.push_back({.id = {nextId()},
                                                       .name = name(),
                                                       .firstAfterDays = 1 + below(30),
                                                       .everyDays = 1 + below(30),
                                                       .isRetired = chance()});
    }

    void writePlants() {
        core::Shelves& shelves = records_.shelves;
        const int count = 1 + below(5);
        for (int i = 0; i < count; ++i) {
            core::Plant plant{.id = {nextId()},
                              .botanicalName = name(),
                              .cultivar = text(),
                              .commonName = text(),
                              .isProtected = chance(),
                              .usualRootingDaysHigh = {},
                              .checkSchedule = oneOf(shelves.checkSchedules, true),
                              .note = note(),
                              .isRetired = chance()};
            if (chance()) plant.usualRootingDaysHigh = 1 + below(300);
            shelves.plants.push_back(plant);
            // The same species once more as a cultivar of its own.
            plant.id.value = nextId();
            plant.cultivar += " other";
            shelves.plants.push_back(plant);
            if (chance())
                shelves.stockPlants.push_back(
                    {.id = {nextId()}, .plant = plant.id, .label = name(), .note = note(), .isRetired = chance()});
        }
    }

    void writePlaces() {
        core::Shelves& shelves = records_.shelves;
        for (int i = 0; i < 3; ++i)
            shelves.methods.push_back({.id = {nextId()},
                                       .name = name(),
                                       .checkSchedule = oneOf(shelves.checkSchedules, true),
                                       .isRetired = chance()});
        const int count = below(5);
        for (int i = 0; i < count; ++i)
            shelves.stations.push_back({.id = {nextId()},
                                        .name = name(),
                                        .method = oneOf(shelves.methods, false),
                                        .rows = below(26),
                                        .columns = below(30),
                                        .walkingOrder = below(9),
                                        .note = note(),
                                        .isRetired = chance()});
        for (core::Station& station : shelves.stations) {
            station.isStaggered = chance();
            if (station.hasLayout() && chance())
                station.blocked = core::textOf(
                    {{below(station.rows), below(station.columns)}, {below(station.rows), below(station.columns)}});
        }
        const int kinds = below(4);
        for (int i = 0; i < kinds; ++i)
            shelves.cuttingKinds.push_back({.id = {nextId()}, .name = name(), .isRetired = chance()});
        const int causes = below(5);
        for (int i = 0; i < causes; ++i)
            shelves.lossCauses.push_back({.id = {nextId()},
                                          .name = name(),
                                          .key = chance() ? static_cast<char>('a' + i) : '\0',
                                          .isRetired = chance()});
        const int trials = below(3);
        for (int i = 0; i < trials; ++i) {
            core::Trial trial{.id = {nextId()}, .name = name(), .horizonDay = {}, .allocationSeed = {}, .note = note()};
            if (chance()) trial.horizonDay = 1 + below(90);
            if (chance()) trial.allocationSeed = static_cast<std::uint32_t>(engine_());
            shelves.trials.push_back(trial);
        }
    }

    void writeRecipes() {
        core::Shelves& shelves = records_.shelves;
        const int media = below(3);
        for (int i = 0; i < media; ++i) {
            core::Medium medium{
                .id = {nextId()}, .name = name(), .components = {}, .note = note(), .isRetired = chance()};
            const int parts = below(3);
            for (int j = 0; j < parts; ++j) medium.components.push_back({.name = name(), .parts = part()});
            shelves.media.push_back(medium);
        }
        const int treatments = below(4);
        for (int i = 0; i < treatments; ++i) {
            core::Treatment treatment{.id = {nextId()},
                                      .name = name(),
                                      .auxins = {},
                                      .carrier = static_cast<core::Carrier>(below(4)),
                                      .seconds = below(60),
                                      .isWounded = chance(),
                                      .note = note(),
                                      .isRetired = chance()};
            const int auxins = below(3);
            for (int j = 0; j < auxins; ++j)
                treatment.auxins.push_back({.name = name(),
                                            .form = chance() ? core::AuxinForm::Acid : core::AuxinForm::Salt,
                                            .milligramsPerLitre = below(5000) / 3.0});
            shelves.treatments.push_back(treatment);
        }
    }

    void writeSession() {
        using namespace std::chrono_literals;
        // Few days, so that several sessions fall on one.
        core::Session session{
            .id = {nextId()}, .date = core::addDays(2025y / 2 / 27, below(4)), .worker = text(), .note = note()};
        const int batches = below(5);
        for (int i = 0; i < batches; ++i) records_.batches.push_back(batchOf(session));
        records_.sessions.push_back(std::move(session));
    }

    core::BatchRecord batchOf(const core::Session& session) {
        const core::Shelves& shelves = records_.shelves;
        core::Batch batch{};
        batch.id.value = nextId();
        batch.code = "C" + std::to_string(++codes_) + (chance() ? "/x,y" : "");
        batch.session = session.id;
        batch.stuckOn = session.date;
        batch.plant = oneOf(shelves.plants, false);
        for (const core::StockPlant& mother : shelves.stockPlants)
            if (mother.plant == batch.plant && chance()) batch.stockPlant = mother.id;
        batch.method = oneOf(shelves.methods, false);
        batch.station = oneOf(shelves.stations, true);
        batch.medium = oneOf(shelves.media, true);
        batch.treatment = oneOf(shelves.treatments, true);
        batch.cuttingKind = oneOf(shelves.cuttingKinds, true);
        batch.trial = oneOf(shelves.trials, true);
        batch.stuck = 1 + below(60);
        batch.block = text();
        batch.note = note();
        batch.licence = text();
        std::vector<core::Position> positions = placesFor(batch);
        batch.positions = core::textOf(positions);
        core::BatchRecord record{.batch = batch, .checks = {}};
        writeChecks(record);
        if (!positions.empty()) find(record, std::move(positions));
        if (below(4) == 0) {
            record.batch.closedOn = core::addDays(session.date, 200);
            record.batch.closeReason = name();
        }
        return record;
    }

    /// Each position of a station once, since any of the batches may be open.
    std::vector<core::Position> placesFor(const core::Batch& batch) {
        const core::Station* station = core::find(records_.shelves.stations, batch.station);
        if (station == nullptr || chance()) return {};
        std::vector<core::HeldPosition>& taken = taken_[batch.station.value];
        auto places = core::freePositions(*station, taken, batch.stuck);
        if (static_cast<int>(places.size()) < batch.stuck) return {};
        for (const core::Position place : places) taken.push_back({place, batch.code});
        return places;
    }

    /// Some of what the checks count falls on positions.
    void find(core::BatchRecord& record, std::vector<core::Position> left) {
        for (core::Check& check : record.checks) {
            const auto found = [&](int count, core::Outcome outcome, core::LossCauseId cause) {
                for (; count > 0 && chance(); --count) {
                    check.findings.push_back({.position = left.back(), .outcome = outcome, .cause = cause});
                    left.pop_back();
                }
            };
            found(check.rooted, core::Outcome::Rooted, {});
            for (const core::Loss& loss : check.losses) found(loss.count, core::Outcome::Lost, loss.cause);
            found(check.withdrawn, core::Outcome::Withdrawn, {});
            std::ranges::sort(check.findings, {}, &core::Finding::position);
        }
    }

    core::Moment moment() {
        return std::chrono::sys_days(std::chrono::year(2025) / 3 / 1) + std::chrono::seconds(below(20'000'000));
    }

    void writeRounds(core::StationId station) {
        for (int count = below(6); count > 0; --count) {
            const core::Quantity quantity =
                core::allQuantities[static_cast<std::size_t>(below(static_cast<int>(core::allQuantities.size())))];
            const core::QuantityFacts& facts = core::factsOf(quantity);
            records_.readings.push_back({.id = {nextId()},
                                         .station = station,
                                         .quantity = quantity,
                                         .readAt = moment(),
                                         .value = facts.low + (facts.high - facts.low) * below(1000) / 999.0,
                                         .note = note()});
        }
        for (int count = below(4); count > 0; --count)
            records_.care.push_back({.id = {nextId()},
                                     .station = station,
                                     .doneAt = moment(),
                                     .kind = core::allCareKinds[static_cast<std::size_t>(below(8))],
                                     .note = name(),
                                     .litres = chance() ? std::optional<double>() : (1 + below(900)) / 7.0});
    }

    void writeBelongings(const core::Batch& batch) {
        for (int count = below(3); count > 0; --count)
            records_.expenses.push_back({.id = {nextId()},
                                         .batch = batch.id,
                                         .spentOn = core::addDays(batch.stuckOn, below(90)),
                                         .what = name(),
                                         .hundredths = below(100'000)});
        for (int count = below(3); count > 0; --count) {
            core::PhotoRecord record{.photo = {.id = {nextId()},
                                               .batch = batch.id,
                                               .takenOn = core::addDays(batch.stuckOn, below(90)),
                                               .caption = text()},
                                     .image = chance() ? core::ImageBytes{0xFF, 0xD8, 0xFF, 0xE0}
                                                       : core::ImageBytes{0x89, 'P', 'N', 'G', '\r'}};
            for (int bytes = below(3000); bytes > 0; --bytes)
                record.image.push_back(static_cast<std::uint8_t>(below(256)));
            records_.photos.push_back(std::move(record));
        }
    }

    core::TrialArm armOf(core::Factor factor, std::size_t number) {
        const core::Shelves& shelves = records_.shelves;
        core::TrialArm arm;
        if (factor == core::Factor::Method) arm.method = shelves.methods[number].id;
        if (factor == core::Factor::Treatment) arm.treatment = shelves.treatments[number].id;
        return arm;
    }

    /// Of methods, of which there are always three, or of treatments.
    void planTrial(core::Trial& trial) {
        const core::Shelves& shelves = records_.shelves;
        trial.question = note();
        trial.factor = chance() && shelves.treatments.size() > 1 ? core::Factor::Treatment : core::Factor::Method;
        trial.blockedBy = static_cast<core::BlockedBy>(below(4));
        trial.measure = static_cast<core::TrialMeasure>(below(2));
        trial.margin = (1 + below(98)) / 99.5;
        if (chance()) trial.perArm = 1 + below(90);
        trial.isBlinded = chance();
        trial.isCrossedOver = trial.factor == core::Factor::Method && chance();
        if (chance()) trial.setOn = core::Date{std::chrono::year(2025) / 2 / 27};
        trial.arms = {armOf(*trial.factor, 1), armOf(*trial.factor, 0)};
        for (int number = 1; number <= 6 && !shelves.stations.empty(); ++number) deal(trial, number);
        for (int changes = below(3); changes > 0; --changes)
            trial.changes.push_back({.changedOn = core::Date{std::chrono::year(2025) / 4 / 1},
                                     .what = name(),
                                     .was = note(),
                                     .became = note(),
                                     .reason = name()});
    }

    void deal(core::Trial& trial, int number) {
        const core::Shelves& shelves = records_.shelves;
        core::TrialBatch dealt{.number = 2 * number,
                               .session = 1 + below(3),
                               .station = oneOf(shelves.stations, false),
                               .block = text(),
                               .plant = oneOf(shelves.plants, true),
                               .stockPlant = {},
                               .arm = below(2),
                               .stuck = 1 + below(3),
                               .positions = "",
                               .batch = {}};
        for (const core::StockPlant& mother : shelves.stockPlants)
            if (mother.plant == dealt.plant && chance()) dealt.stockPlant = mother.id;
        if (dealt.stuck == 3 && chance()) dealt.positions = core::textOf({{1, number}, {1, number + 1}, {2, number}});
        if (!records_.batches.empty() && chance())
            dealt.batch =
                records_.batches[static_cast<std::size_t>(below(static_cast<int>(records_.batches.size())))].batch.id;
        trial.batches.push_back(std::move(dealt));
    }

    void writePlans() {
        const core::Shelves& shelves = records_.shelves;
        for (int count = below(4); count > 0; --count) {
            core::Plan plan{.id = {nextId()},
                            .plant = oneOf(shelves.plants, false),
                            .method = oneOf(shelves.methods, true),
                            .wanted = 1 + below(900),
                            .assurance = (1 + below(98)) / 99.5,
                            .pottedLivePercent = (1 + below(100)) / 1.01,
                            .hardeningDays = below(30),
                            .pottingDays = below(60),
                            .note = note()};
            if (chance()) plan.needBy = core::addDays(core::Date{std::chrono::year(2026) / 1 / 1}, below(300));
            records_.shelves.plans.push_back(plan);
        }
    }

    void writeChecks(core::BatchRecord& record) {
        int left = record.batch.stuck, day = 0;
        const int checks = below(6);
        for (int i = 0; i < checks; ++i) {
            core::Check check{.id = {nextId()},
                              .batch = record.batch.id,
                              .checkedOn = core::addDays(record.batch.stuckOn, day),
                              .rooted = 0,
                              .withdrawn = 0,
                              .losses = {},
                              .note = note()};
            const auto some = [&] {
                const int count = below(left / 3 + 1);
                left -= count;
                return count;
            };
            check.rooted = some();
            check.withdrawn = some();
            for (const core::LossCause& cause : records_.shelves.lossCauses)
                if (const int lost = chance() ? some() : 0; lost > 0)
                    check.losses.push_back({.cause = cause.id, .count = lost});
            if (const int lost = some(); lost > 0) check.losses.push_back({.cause = {}, .count = lost});
            record.checks.push_back(std::move(check));
            day += 1 + below(9);
        }
    }

    std::mt19937 engine_;
    core::Records records_;
    std::int64_t id_{};
    int names_{};
    int codes_{};
    std::map<std::int64_t, std::vector<core::HeldPosition>> taken_;  // by station
};

}  // namespace

core::Records randomRecords(std::uint32_t seed) {
    return RandomWriter(seed).write();
}

}  // namespace support
