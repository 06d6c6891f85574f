// SPDX-License-Identifier: MIT
#include "db/tables/sample_blob.h"

#include <bit>
#include <limits>

namespace db {

namespace {

static_assert(std::numeric_limits<double>::is_iec559 && sizeof(double) == 8);

template <class Number>
void putLittleEndian(std::uint8_t* at, Number number) {
    for (std::size_t i = 0; i < sizeof number; ++i) at[i] = static_cast<std::uint8_t>(number >> (8 * i));
}

template <class Number>
Number takeLittleEndian(const std::uint8_t* at) {
    Number number = 0;
    for (std::size_t i = 0; i < sizeof number; ++i) number |= static_cast<Number>(at[i]) << (8 * i);
    return number;
}

}  // namespace

std::vector<std::uint8_t> blobOf(std::span<const core::Sample> samples) {
    std::vector<std::uint8_t> blob(samples.size() * bytesOfSample);
    std::uint8_t* at = blob.data();
    for (const core::Sample& sample : samples) {
        putLittleEndian(at, static_cast<std::uint32_t>(sample.second));
        putLittleEndian(at + 4, std::bit_cast<std::uint64_t>(sample.value));
        at += bytesOfSample;
    }
    return blob;
}

std::optional<std::vector<core::Sample>> samplesFrom(std::span<const std::uint8_t> blob) {
    if (blob.size() % bytesOfSample != 0) return {};
    std::vector<core::Sample> samples(blob.size() / bytesOfSample);
    const std::uint8_t* at = blob.data();
    for (core::Sample& sample : samples) {
        // A second that no int holds becomes one that no day has.
        const auto second = takeLittleEndian<std::uint32_t>(at);
        sample.second = second < core::secondsInADay ? static_cast<int>(second) : core::secondsInADay;
        sample.value = std::bit_cast<double>(takeLittleEndian<std::uint64_t>(at + 4));
        at += bytesOfSample;
    }
    return samples;
}

}  // namespace db
