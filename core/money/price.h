// SPDX-License-Identifier: MIT
// What a thing costs from a day on: a pump that lasts for years, a bag that is used up, watts, a tariff, minutes of work. Old batches keep
// the prices of their own days.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "core/id.h"
#include "core/units/days.h"

namespace core {

enum class PriceKind {
    Lasting,      // a tub, a pump, a lamp: its price is spread straight-line over the years or batches that it lasts
    UsedUp,       // medium, hormone, nutrient, labels: a pack and how many cuttings, batches or sessions it does for
    Electricity,  // what draws power: watts, hours a day and the share of these hours that it really draws them
    Tariff,       // of a kWh
    WorkTime,     // minutes that each session, check, care, batch or cutting takes
    HourOfWork,   // what an hour is worth to the grower; it may be nothing
    DaySooner     // what it is worth to have one rooted plant a day sooner
};

inline constexpr std::array allPriceKinds{PriceKind::Lasting,  PriceKind::UsedUp,   PriceKind::Electricity,
                                          PriceKind::Tariff,   PriceKind::WorkTime, PriceKind::HourOfWork,
                                          PriceKind::DaySooner};

/// Of what a pack does for so many, or of what each takes so many minutes.
enum class PriceBasis { Cutting, Batch, Session, Check, Care };

inline constexpr std::array allPriceBases{PriceBasis::Cutting, PriceBasis::Batch, PriceBasis::Session,
                                          PriceBasis::Check, PriceBasis::Care};

inline constexpr std::int64_t mostTenThousandths = 10'000'000'000'000;  // a thousand million

struct Price {
    PriceId id{};
    PriceKind kind{PriceKind::Lasting};
    std::string what{};  // "air pump"
    // Whose it is; at most one is set, none: the whole bench's.
    MethodId method{};
    StationId station{};
    MediumId medium{};
    TreatmentId treatment{};
    Date from{};                    // the first day on which it holds
    std::optional<Date> until{};    // the last; nothing: until the next of its name, or still
    std::int64_t tenThousandths{};  // of the logbook's currency: of the thing, the pack, the kWh, the hour, the day
    std::optional<double> lastsYears{};  // Lasting: this or lastsFor
    std::optional<double> lastsFor{};    // Lasting: batches; UsedUp: so many of `basis`
    PriceBasis basis{PriceBasis::Batch};
    double watts{};
    double hoursADay{};
    double duty{1};
    double minutes{};
    std::string note{};

    bool operator==(const Price&) const = default;
};

/// In files: "lasting", "used up", "electricity", "tariff", "work time", "hour of work", "day sooner".
[[nodiscard]] std::string_view wordFor(PriceKind kind);
[[nodiscard]] std::optional<PriceKind> priceKindFrom(std::string_view word);
/// In files and for people: "cutting", "batch", "session", "check", "care".
[[nodiscard]] std::string_view wordFor(PriceBasis basis);
[[nodiscard]] std::optional<PriceBasis> priceBasisFrom(std::string_view word);

/// Work time and what draws power have none: an hour of work and a kWh have.
[[nodiscard]] bool hasAmount(PriceKind kind);
/// Without the figures that its kind doesn't ask for: those as in a fresh price.
[[nodiscard]] Price tidied(Price price);

/// Same kind, owner, basis and name, whatever the case of its letters: the later of two takes over from the earlier.
[[nodiscard]] bool isSamePriced(const Price& one, const Price& other);
/// The last day on which it holds among `all`: its own, or the day before the next of its name. Nothing: it holds still.
[[nodiscard]] std::optional<Date> lastDayOf(const Price& price, std::span<const Price> all);
[[nodiscard]] bool holdsOn(Date day, const Price& price, std::span<const Price> all);

}  // namespace core
