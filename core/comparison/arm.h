// SPDX-License-Identifier: MIT
// One arm of a comparison: all batches that share a method, treatment, medium or kind of cutting, counted at the horizon, with their
// rooted-by-day curves.
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace core {

struct Limits {
    double low{};
    double high{};
};

/// Between two checks: after the one, by the other.
struct DayRange {
    double after{};
    double by{};
};

struct DayShare {
    double day{};
    double share{};              // has happened by then, of those stuck
    std::optional<Limits> band;  // whole-batch bootstrap; absent with a single batch
};

/// What was counted, nothing estimated: the rows under the rooted-by-day curve.
struct LookCounts {
    int day{};
    int waiting{};  // on the station, neither rooted nor lost after that day's look
    int rooted{};   // so far
    int lost{};     // so far
};

/// So many cuttings rooted or were lost after the one day and by the other, or were last seen undecided on day `after`.
struct KnownDays {
    enum class Fate { Undecided, Rooted, Lost };
    double after{};
    double by{};  // infinite where undecided
    Fate fate{};
    int cuttings{};
};

/// A share of those stuck to which it happened after the one day and by the other.
struct CurveStep {
    double after{};
    double by{};
    double share{};
};

/// What the curves were worked out from, and the steps that they are made of.
struct CurveMakeup {
    std::vector<KnownDays> known;
    std::vector<CurveStep> rooted;
    std::vector<CurveStep> lost;
};

struct DaysToRoot {
    std::optional<DayRange> p25, p50, p75, p90;  // absent: not reached
    std::optional<Limits> p50Interval;           // absent: fewer than two batches, or not reached in enough replicates
};

/// One smooth curve: who roots, and how fast.
struct FittedSpeed {
    std::string shape;                         // "log-normal", "log-logistic", "Weibull"
    double rootingShare{};                     // of those stuck, in the end; 1 where the records set no bound
    std::optional<Limits> rootingShareLimits;  // absent at 1
    double medianDay{};                        // of those that root
    Limits medianDayLimits;
    bool isByBatch{};  // the limits allow for the spread between batches
    double akaike{};   // the smaller, the better the shape fits
};

struct RootingSpeed {
    std::vector<FittedSpeed> fits;  // best first
    std::string whyNot;             // why there is none; empty otherwise
};

struct LossByCause {
    std::string cause;  // "cause not known" where none was given
    int count{};
};

/// What one batch adds at the horizon.
struct BatchCount {
    std::string code;
    int rooted{};
    int assessed{};
};

struct Arm {
    std::string name;  // of the method, treatment, ...; "not recorded" where there was none
    int batches{};
    int stations{};
    int stuck{};
    int rooted{};  // these four at the horizon, and they add up to stuck
    int lost{};
    int withdrawn{};
    int undecided{};
    int assessed{};                     // fate at the horizon known
    std::optional<double> rate;         // rooted / assessed; absent when nothing is assessed
    std::optional<Limits> asCounted;    // by the interval chosen
    std::optional<Limits> withSpread;   // tray_interval over batches; absent with one batch
    bool isSpreadBorrowed{};            // all or none rooted: by the spread of the whole logbook, see borrowSpread()
    std::optional<double> curveShare;   // rooted by the horizon, read off the curve between its looks
    std::vector<BatchCount> counted;    // batches of which any cutting is assessed
    std::vector<DayShare> rootedByDay;  // on each day on which somebody looked
    std::vector<DayShare> lostByDay;
    std::vector<int>
        stillWatched;  // for each of rootedByDay: cuttings not yet decided or withdrawn after that day's look
    std::vector<LookCounts> looks;  // one for each of rootedByDay, over all batches of the arm
    CurveMakeup makeup;
    DaysToRoot ofStuck;
    DaysToRoot ofRooted;
    RootingSpeed speed;
    std::vector<LossByCause> losses;  // most first
};

}  // namespace core
