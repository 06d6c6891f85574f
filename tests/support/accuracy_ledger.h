// SPDX-License-Identifier: MIT
// Proofs that a statistics function is right, gathered while the tests run. Each test program of stats leaves its rows in the build folder;
// tests/house/accuracy_test.cpp puts them together as docs/statistics/accuracy.md. prove() only notes: the test asserts for itself.
#pragma once

#include <string>
#include <string_view>

namespace support {

struct Proof {
    std::string_view function;  // as declared: "wilsonInterval"
    std::string_view
        source;  // where the case comes from: "Newcombe (1998), Stat. Med. 17, 857-872, table I", "random tables, n <= 12"
    std::string_view
        independent;  // how it was computed otherwise: "printed to four decimals", "full enumeration", "R 4.2 survival"
};

/// Notes one comparison. The error kept is |got - want|, divided by |want| where that is above 1; both infinite alike counts as 0.
void prove(const Proof& proof, double got, double want);

/// Notes a comparison whose error was measured otherwise.
void proveWithin(const Proof& proof, double error);

}  // namespace support
