// SPDX-License-Identifier: MIT
#include "tests/calibration/simulation.h"

#include <algorithm>
#include <atomic>
#include <mutex>
#include <thread>
#include <vector>

namespace calibration {
namespace {

constexpr int seasonsInAPiece = 20;

/// So many seasons of one study, judged by one thread.
struct Piece {
    std::size_t study{};
    int first{};
    int count{};
    double cost{};
};

std::vector<Piece> piecesOf(std::span<const Study> studies, const SimulationOptions& options) {
    std::vector<Piece> pieces;
    for (std::size_t study = 0; study < studies.size(); ++study) {
        const int seasons = options.seasons * studies[study].seasonsForOne;
        for (int first = 0; first < seasons; first += seasonsInAPiece) {
            const int count = std::min(seasonsInAPiece, seasons - first);
            pieces.push_back({.study = study, .first = first, .count = count, .cost = count * studies[study].cost});
        }
    }
    return pieces;
}

// Every season has a stream of its own, so that it doesn't matter which thread takes it, and when.
stats::SeededRandom streamOf(std::uint64_t seed, std::size_t study, int season) {
    const std::uint64_t place = (static_cast<std::uint64_t>(study) << 32U) + static_cast<std::uint64_t>(season);
    return stats::SeededRandom(stats::SeededRandom(seed).next() ^ stats::SeededRandom(place).next());
}

Tally judged(const Study& study, const Piece& piece, std::uint64_t seed) {
    Tally tally;
    for (int season = piece.first; season < piece.first + piece.count; ++season) {
        stats::SeededRandom random = streamOf(seed, piece.study, season);
        study.judge(season, random, tally);
    }
    return tally;
}

}  // namespace

std::optional<Tally> simulate(std::span<const Study> studies, const SimulationOptions& options,
                              const Progress& progress) {
    const std::vector<Piece> pieces = piecesOf(studies, options);
    double costOfAll = 0, costDone = 0;
    for (const Piece& piece : pieces) costOfAll += piece.cost;
    std::vector<Tally> tallies(pieces.size());
    std::atomic<std::size_t> next = 0;
    std::mutex mutex;
    std::atomic<bool> isEnded = progress && !progress(0);
    const auto work = [&] {
        for (std::size_t i = next++; i < pieces.size() && !isEnded; i = next++) {
            tallies[i] = judged(studies[pieces[i].study], pieces[i], options.seed);
            const std::lock_guard lock(mutex);
            costDone += pieces[i].cost;
            if (progress && !progress(costDone / costOfAll)) isEnded = true;
        }
    };
    {
        std::vector<std::jthread> threads;
        for (int thread = 1; thread < options.threads; ++thread) threads.emplace_back(work);
        work();
    }
    if (isEnded) return std::nullopt;
    // Put together in one order: sums of rounded numbers depend on it.
    Tally all;
    for (const Tally& tally : tallies) all.merge(tally);
    return all;
}

}  // namespace calibration
