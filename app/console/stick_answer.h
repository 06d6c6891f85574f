// SPDX-License-Identifier: MIT
// What `stick` answers, as a value: how many, when, and on what it rests; as text and for machines.
#pragma once

#include <optional>
#include <ostream>
#include <string>

#include "app/console/json_text.h"
#include "core/planning/how_many.h"
#include "core/planning/when.h"

namespace console {

struct StickAnswer {
    std::string basis;                      // "rate", "past", "logbook" or "reference"
    core::HowMany howMany;                  // the answer
    std::optional<core::PastRecords> past;  // absent for a known rate
    std::optional<core::HowMany> inTrays;   // of plain counts: the same in trays that differ as usual
    std::optional<core::When> when;         // with a day
    std::string calendar;                   // the file written; empty: none
};

[[nodiscard]] Json jsonOf(const StickAnswer& answer);
void printText(const StickAnswer& answer, std::ostream& out);

}  // namespace console
