// SPDX-License-Identifier: MIT
#include "tests/support/chance_values.h"

namespace support {

int pick(Chance& chance, int count) {
    return static_cast<int>(chance() % static_cast<unsigned>(count));
}

std::string someName(Chance& chance) {
    static constexpr const char* names[] = {"north bench", "old tub", "Hetty's", "u\xC3\xA4 \"quoted\", comma",
                                            "line",        ""};
    const int which = pick(chance, 12);
    return which < 6 ? names[which] : "number " + std::to_string(pick(chance, 100000));
}

core::Date someDay(Chance& chance, core::Date today) {
    return core::addDays(today, -pick(chance, 300) + 3);
}

core::BatchId someBatch(const db::Logbook& logbook, Chance& chance) {
    return some(logbook.batchLines(), chance).batch.id;
}

}  // namespace support
