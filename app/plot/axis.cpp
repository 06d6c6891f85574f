// SPDX-License-Identifier: MIT
#include "app/plot/axis.h"

#include <algorithm>
#include <cmath>
#include <initializer_list>

namespace plot {

std::vector<int> weekTicks(int last, int most) {
    int step = 7;
    while (last / step + 1 > std::max(2, most)) step *= 2;
    std::vector<int> ticks;
    for (int day = 0; day <= last; day += step) ticks.push_back(day);
    return ticks;
}

int lastTickFor(int day) {
    return std::max(7, (day + 6) / 7 * 7);
}

std::vector<double> shareTicks(double high, int most) {
    for (const double step : {0.25, 0.5})
        if (high / step + 1 <= most) {
            std::vector<double> ticks;
            for (int i = 0; i * step <= high + 1e-9; ++i) ticks.push_back(i * step);
            return ticks;
        }
    return {0.0, high};
}

std::vector<double> differenceTicks(double low, double high, int most) {
    for (const double step : {0.05, 0.1, 0.2, 0.25, 0.5, 1.0}) {
        const int first = static_cast<int>(std::ceil(low / step - 1e-9)),
                  last = static_cast<int>(std::floor(high / step + 1e-9));
        if (last - first + 1 > std::max(3, most)) continue;
        std::vector<double> ticks;
        for (int i = first; i <= last; ++i) ticks.push_back(i * step);
        return ticks;
    }
    return {low, 0.0, high};
}

std::vector<int> countTicks(int low, int high, int most) {
    const auto stepsIn = [&](int step) { return (high - low) / step + 1; };
    int step = 1;
    for (int times = 0; stepsIn(step) > std::max(2, most); ++times) step = times % 3 == 1 ? step / 2 * 5 : step * 2;
    std::vector<int> ticks;
    const int first = (low + step - 1) / step * step;
    for (int tick = first; tick <= high; tick += step) ticks.push_back(tick);
    return ticks;
}

std::vector<double> amountTicks(double high, int most) {
    constexpr double hair = 1e-9;
    const int power = static_cast<int>(std::floor(std::log10(high / std::max(1, most))));
    for (int decade = power;; ++decade)
        for (const double times : {1.0, 2.0, 5.0}) {
            const double step = times * std::pow(10, decade);
            const int steps = static_cast<int>(std::floor(high / step + hair));
            if (steps > std::max(1, most)) continue;
            std::vector<double> ticks;
            for (int i = 0; i <= steps; ++i) ticks.push_back(i * step);
            return ticks;
        }
}

std::vector<double> ratioTicks(double low, double high, int most) {
    constexpr double hair = 1e-9;
    const auto first = static_cast<int>(std::floor(std::log10(low) + hair)),
               last = static_cast<int>(std::ceil(std::log10(high) - hair));
    const auto ticksOf = [&](std::initializer_list<double> steps, int decades) {
        std::vector<double> ticks;
        for (int power = first - (first % decades + decades) % decades; power <= last; power += decades)
            for (const double step : steps) {
                const double tick = step * std::pow(10, power);
                if (tick >= low * (1 - hair) && tick <= high * (1 + hair)) ticks.push_back(tick);
            }
        return ticks;
    };
    const auto fits = [most](const std::vector<double>& ticks) { return std::ssize(ticks) <= std::max(3, most); };
    for (const std::vector<double>& ticks : {ticksOf({1, 2, 5}, 1), ticksOf({1, 3}, 1), ticksOf({1}, 1)})
        if (fits(ticks)) return ticks;
    for (int decades = 2;; ++decades)
        if (const std::vector<double> ticks = ticksOf({1}, decades); fits(ticks)) return ticks;
}

}  // namespace plot
