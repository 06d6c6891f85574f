// SPDX-License-Identifier: MIT
#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <ctime>
#include <iostream>

#include "app/console/console.h"

namespace {

core::Date todayHere() {
    const std::time_t now = std::time(nullptr);
    std::tm local{};
    localtime_r(&now, &local);
    return core::Date{std::chrono::year{local.tm_year + 1900},
                      std::chrono::month{static_cast<unsigned>(local.tm_mon + 1)},
                      std::chrono::day{static_cast<unsigned>(local.tm_mday)}};
}

std::string userName() {
    const char* name = std::getenv("USER");
    return name == nullptr ? std::string() : name;
}

}  // namespace

int main(int count, char** words) {
    const console::Surroundings surroundings{
        .today = todayHere(),
        .clock = [] { return std::chrono::time_point_cast<std::chrono::seconds>(std::chrono::system_clock::now()); },
        .author = userName()};
    const int status =
        console::runConsole({words + std::min(count, 1), words + count}, surroundings, std::cout, std::cerr);
    std::cout.flush();
    // An answer that could not be written whole, on a full disk or into a closed pipe, is no answer.
    return std::cout.good() ? status : console::Refused;
}
