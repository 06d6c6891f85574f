// SPDX-License-Identifier: MIT
#include "core/comparison/english.h"

#include <cmath>

namespace core {

std::string counted(int count, std::string_view one, std::string_view many) {
    return std::to_string(count) + " " + std::string(count == 1 ? one : many);
}

std::string factorInWords(Factor factor) {
    return factor == Factor::CuttingKind ? "kind of cutting" : std::string(wordFor(factor));
}

std::string nameInWords(Factor factor, const std::string& name) {
    return factor == Factor::Method ? name : "\u201c" + name + "\u201d";
}

int perHundred(double share) {
    return static_cast<int>(std::lround(100 * share));
}

std::string levelWords(double level) {
    const long tenths = std::lround(1000 * level);
    std::string words = std::to_string(tenths / 10);
    if (tenths % 10 != 0) words += "." + std::to_string(tenths % 10);
    return words + " %";
}

std::string moreOrFewer(double low, double high) {
    const int from = perHundred(low), to = perHundred(high);
    if (from == to && from == 0) return "hardly any difference";
    if (from > 0) return "anything from " + std::to_string(from) + " to " + std::to_string(to) + " more";
    if (to < 0) return "anything from " + std::to_string(-to) + " to " + std::to_string(-from) + " fewer";
    const std::string fewest = from == 0 ? "no difference" : std::to_string(-from) + " fewer";
    const std::string most = to == 0 ? "no difference" : std::to_string(to) + " more";
    return "anything from " + fewest + " to " + most;
}

std::string listed(std::span<const std::string> names) {
    std::string words;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (i > 0) words += i + 1 == names.size() ? " and " : ", ";
        words += names[i];
    }
    return words;
}

int roundedUp(int count) {
    const int step = count < 20 ? 1 : count < 100 ? 5 : count < 500 ? 10 : 50;
    return (count + step - 1) / step * step;
}

}  // namespace core
