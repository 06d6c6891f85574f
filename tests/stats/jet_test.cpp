// SPDX-License-Identifier: MIT
#include "stats/numeric/jet.h"

#include <gtest/gtest.h>

#include <boost/math/differentiation/autodiff.hpp>
#include <cmath>

#include "stats/numeric/seeded_random.h"
#include "stats/time_to_event/speed_likelihood.h"

namespace {

using stats::Jet;

// Every operator at least once, in a form that Boost's automatic differentiation knows too.
template <class Number>
Number mixed(const Number& x, const Number& y) {
    using std::exp, std::log, std::sqrt;
    Number sum = x * y / (2.0 + x * x) - exp(-y) + log(3.0 + x) * sqrt(1.0 + y * y);
    sum += y;
    return sum / (1.0 + exp(x - y));
}

TEST(Jet, AgreesWithBoostsAutomaticDifferentiation) {
    stats::SeededRandom random(31);
    for (int run = 0; run < 200; ++run) {
        const double x = 2 * random.uniform(), y = 2 * random.uniform() - 1;
        const Jet<2> jet = mixed(Jet<2>::variable(x, 0), Jet<2>::variable(y, 1));
        const auto variables = boost::math::differentiation::make_ftuple<double, 2, 2>(x, y);
        const auto boosts = mixed(std::get<0>(variables) + 0 * std::get<1>(variables),
                                  std::get<1>(variables) + 0 * std::get<0>(variables));
        const auto near = [](double got, double want) { EXPECT_NEAR(got, want, 1e-12 * (1 + std::abs(want))); };
        near(jet.value(), boosts.derivative(0, 0));
        near(jet.gradient(0), boosts.derivative(1, 0));
        near(jet.gradient(1), boosts.derivative(0, 1));
        near(jet.hessian(0, 0), boosts.derivative(2, 0));
        near(jet.hessian(0, 1), boosts.derivative(1, 1));
        near(jet.hessian(1, 0), boosts.derivative(1, 1));
        near(jet.hessian(1, 1), boosts.derivative(0, 2));
    }
}

// Central differences of values, improved twice: about eleven digits of the slope and eight of the bend.
template <class Function>
void expectAsByDifferences(const Function& function, double x) {
    const auto value = [&function](double at) { return function(Jet<1>(at)).value(); };
    const Jet<1> jet = function(Jet<1>::variable(x, 0));
    const auto improved = [](auto rough, double h) {
        const double a = rough(h), b = rough(h / 2), c = rough(h / 4);
        return (64 * c - 20 * b + a) / 45;
    };
    const double slope = improved([&](double h) { return (value(x + h) - value(x - h)) / (2 * h); }, 4e-3);
    const double bend =
        improved([&](double h) { return (value(x + h) - 2 * value(x) + value(x - h)) / (h * h); }, 2e-2);
    EXPECT_NEAR(jet.gradient(0), slope, 1e-10 * (1 + std::abs(slope)) + 1e-11 * std::abs(jet.value())) << x;
    EXPECT_NEAR(jet.hessian(0, 0), bend, 1e-8 * (1 + std::abs(bend)) + 1e-9 * std::abs(jet.value())) << x;
}

TEST(Jet, AgreesWithFiniteDifferences) {
    for (const double x : {-6.0, -1.3, -0.2, 0.4, 2.7, 7.0}) {
        expectAsByDifferences([](const Jet<1>& j) { return exp(j); }, x);
        expectAsByDifferences([](const Jet<1>& j) { return expm1(j); }, x);
        expectAsByDifferences([](const Jet<1>& j) { return log1p(exp(j)); }, x);
        expectAsByDifferences([](const Jet<1>& j) { return log1pExp(j); }, x);
        expectAsByDifferences([](const Jet<1>& j) { return log1mExp(exp(j)); }, x);
        expectAsByDifferences([](const Jet<1>& j) { return logNormalCdf(j); }, x);
        expectAsByDifferences([](const Jet<1>& j) { return 1.0 / (1.0 + j * j); }, x);
    }
    expectAsByDifferences([](const Jet<1>& j) { return logNormalCdf(j); }, -19.99);
    expectAsByDifferences([](const Jet<1>& j) { return logNormalCdf(j); }, -20.01);
    expectAsByDifferences([](const Jet<1>& j) { return log(j) * sqrt(j); }, 3.7);
}

TEST(Jet, KeepsItsDigitsWherePlainFormulasLoseThem) {
    // log(1 - exp(-x)) is log x - x / 2 near 0, and -exp(-x) far out.
    EXPECT_NEAR(log1mExp(Jet<1>(1e-15)).value(), std::log(1e-15), 1e-14);
    EXPECT_NEAR(log1mExp(Jet<1>(50)).value() / -std::exp(-50), 1, 1e-14);
    EXPECT_NEAR(log1pExp(Jet<1>(-50)).value() / std::exp(-50), 1, 1e-14);
    EXPECT_EQ(log1pExp(Jet<1>(800)).value(), 800);
    EXPECT_EQ(log1pExp(Jet<1>::variable(-800, 0)).gradient(0), 0);
}

TEST(LogNormalCdf, AgreesWithValuesOfOtherSoftware) {
    // SciPy 1.10.1, special.log_ndtr.
    const std::pair<double, double> table[] = {{-40.0, -804.6084420137538},
                                               {-20.0, -203.91715537109724},
                                               {-5.0, -15.06499839398872},
                                               {0.0, -0.6931471805599453},
                                               {3.0, -0.0013508099647481923}};
    for (const auto& [z, want] : table) EXPECT_NEAR(stats::logNormalCdfAt(z).value, want, 1e-13 * std::abs(want));
    // Far out the slope nears -z and the bend -1.
    EXPECT_NEAR(stats::logNormalCdfAt(-1e8).slope, 1e8, 1e-4);
    EXPECT_NEAR(stats::logNormalCdfAt(-1e8).bend, -1, 1e-14);
}

TEST(SpeedLikelihood, SharesOfNeighbouringIntervalsAddUp) {
    // In parts that no tail can swallow: log P(a < W <= b) for z out to 30 on both sides.
    for (const stats::SpeedShape shape :
         {stats::SpeedShape::Weibull, stats::SpeedShape::LogNormal, stats::SpeedShape::LogLogistic}) {
        for (const double a : {-30.0, -12.0, -3.0, 0.2, 1.0}) {
            const double b = a + 0.3, c = a + 0.8;
            const auto log = [shape](double low, double high) {
                return logShareBetween(shape, Jet<1>(low), Jet<1>(high)).value();
            };
            EXPECT_NEAR(log(a, c), log(a, b) + std::log1p(std::exp(log(b, c) - log(a, b))), 1e-10) << a;
            const double below = logShareBy(shape, Jet<1>(a)).value(), above = logShareAfter(shape, Jet<1>(c)).value();
            EXPECT_NEAR(std::exp(below) + std::exp(log(a, c)) + std::exp(above), 1, 1e-14);
            // The density is the slope of the share.
            const double density = logDensity(shape, Jet<1>(a)).value();
            EXPECT_NEAR(log(a - 5e-5, a + 5e-5) - std::log(1e-4), density, 2e-6);
        }
    }
}

}  // namespace
