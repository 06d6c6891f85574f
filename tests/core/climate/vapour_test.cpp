// SPDX-License-Identifier: MIT
#include "core/climate/vapour.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "core/climate/climate_workings.h"
#include "core/climate/dissolved_oxygen.h"
#include "core/climate/ec_at_25.h"

namespace {

using testing::HasSubstr;

constexpr double nan = std::numeric_limits<double>::quiet_NaN();

TEST(VapourDeficit, IsNothingInSaturatedAirAndWholeInDryAir) {
    EXPECT_EQ(core::airVapourDeficit(18, 100).value(), 0);
    EXPECT_EQ(core::airVapourDeficit(18, 0).value(), core::saturationVapourPressure(18).value());
}

TEST(VapourDeficit, IsTheSameOverALeafAsWarmAsTheAir) {
    for (double celsius = -30; celsius <= 60; celsius += 0.5)
        for (double humidity = 0; humidity <= 100; humidity += 5)
            EXPECT_NEAR(core::leafVapourDeficit(celsius, humidity, celsius).value(),
                        core::airVapourDeficit(celsius, humidity).value(), 1e-12);
}

TEST(VapourDeficit, IsBelowNothingWhereDewFormsOnALeaf) {
    EXPECT_LT(core::leafVapourDeficit(22, 99, 20).value(), 0);
}

TEST(DewPoint, IsWhereTheAirIsSaturated) {
    for (double celsius = -30; celsius <= 60; celsius += 0.5)
        for (double humidity = 5; humidity <= 100; humidity += 5) {
            const double dew = core::dewPoint(celsius, humidity).value();
            if (dew < -30) continue;  // as cold as the equation goes
            EXPECT_NEAR(core::saturationVapourPressure(dew).value(),
                        core::saturationVapourPressure(celsius).value() * humidity / 100, 1e-9);
        }
}

TEST(HumidityForDeficit, GoesThereAndBack) {
    for (double celsius = -30; celsius <= 60; celsius += 0.5)
        for (double humidity = 0; humidity <= 100; humidity += 2.5)
            EXPECT_NEAR(core::humidityForDeficit(celsius, core::airVapourDeficit(celsius, humidity).value()).value(),
                        humidity, 1e-9);
}

TEST(EcAt25, GoesThereAndBack) {
    for (double celsius = 0; celsius <= 50; celsius += 0.5)
        for (double ec = 0; ec <= 20; ec += 0.25)
            EXPECT_NEAR(core::ecAt25(core::ecAtTemperature(ec, celsius).value(), celsius).value(), ec, 1e-9);
}

TEST(OxygenSaturation, FallsWithWarmthAndWithHeight) {
    for (double celsius = 0; celsius < 40; celsius += 1)
        EXPECT_GT(core::oxygenSaturation(celsius).value(), core::oxygenSaturation(celsius + 1).value());
    for (double metres = -500; metres < 5000; metres += 100)
        EXPECT_GT(core::pressureAtAltitude(metres).value(), core::pressureAtAltitude(metres + 100).value());
}

TEST(ClimateFigures, RefuseWhatIsOutsideTheirDomainWithASentence) {
    const auto sentence = [](const core::Result<double>& result) {
        return result ? std::string("not refused") : result.error().front().sentence;
    };
    EXPECT_EQ(sentence(core::airVapourDeficit(20, 101)), "Relative humidity is 101; 0 to 100 % is allowed.");
    EXPECT_EQ(sentence(core::airVapourDeficit(61, 50)), "Air temperature is 61; -30 to 60 C is allowed.");
    EXPECT_THAT(sentence(core::airVapourDeficit(nan, 50)), HasSubstr("Air temperature is not a number"));
    EXPECT_THAT(sentence(core::leafVapourDeficit(20, 50, -31)), HasSubstr("Leaf temperature is -31"));
    EXPECT_EQ(sentence(core::dewPoint(20, 0)), "Relative humidity is 0; 1 to 100 % is allowed.");
    EXPECT_EQ(sentence(core::humidityForDeficit(20, 3)), "Vapour pressure deficit is 3; 0 to 2.338 kPa is allowed.");
    EXPECT_EQ(sentence(core::saturationVapourPressure(-31)), "Temperature is -31; -30 to 60 C is allowed.");
    EXPECT_EQ(sentence(core::oxygenSaturation(41)), "Water temperature is 41; 0 to 40 C is allowed.");
    EXPECT_EQ(sentence(core::oxygenSaturation(20, 0.4)), "Air pressure is 0.4; 0.5 to 1.1 atm is allowed.");
    EXPECT_EQ(sentence(core::oxygenPercent(51, 20)), "Dissolved oxygen is 51; 0 to 50 mg/L is allowed.");
    EXPECT_EQ(sentence(core::pressureAtAltitude(9000)), "Altitude is 9000; -500 to 5000 m is allowed.");
    EXPECT_EQ(sentence(core::ecAt25(-1, 20)), "EC is -1; 0 to 1000000 is allowed.");
    EXPECT_EQ(sentence(core::ecAt25(1, 55)), "Water temperature is 55; 0 to 50 C is allowed.");
    EXPECT_EQ(sentence(core::ecAt25(1, 20, 0.2)), "Change per degree is 0.2; 0 to 0.04 is allowed.");
    EXPECT_THAT(sentence(core::ecAt25(1, 0, 0.04)), HasSubstr("less at this temperature"));
    const auto both = core::airVapourDeficit(99, 200);
    EXPECT_EQ(both.error().size(), 2U);
}

TEST(ClimateWorkings, PutTheNumbersInAndNameTheSource) {
    const core::Working dew = core::dewPointWorking(20, 60);
    EXPECT_EQ(dew.withNumbers, "vapour pressure 1.403 kPa: 12 C");
    EXPECT_THAT(dew.source, HasSubstr("FAO Irrigation and Drainage Paper 56"));
    EXPECT_EQ(core::airDeficitWorking(20, 60).withNumbers,
              "0.6108 exp(17.27 x 20 / (20 + 237.3)) x (1 - 0.6) = 0.9353 kPa");
    EXPECT_THAT(core::leafDeficitWorking(24, 80, 22).withNumbers, HasSubstr("= 0.2568 kPa"));
    EXPECT_THAT(core::humidityWorking(20, 0.3).withNumbers, HasSubstr("= 87.17 %"));
    EXPECT_EQ(core::dailyLightWorking(60, 16).withNumbers, "60 x 16 x 3600 / 1000000 = 3.456 mol/m2");
    EXPECT_EQ(core::lightForDailyWorking(10, 16).withNumbers, "10 x 1000000 / (16 x 3600) = 173.6 umol/m2/s");
    EXPECT_THAT(core::pressureWorking(500).withNumbers, HasSubstr("= 0.94213 atm"));
    EXPECT_EQ(core::oxygenWorking(20, 1).withNumbers, "20 C, 1 atm: 9.092 mg/L");
    EXPECT_EQ(core::oxygenPercentWorking(8, 20, 1).withNumbers, "100 x 8 / 9.092 = 87.99 %");
    EXPECT_EQ(core::ecAt25Working(1278, 20, 0.0191).withNumbers, "1278 / (1 + 0.0191 x (20 - 25)) = 1413");
    EXPECT_EQ(core::degreeDaysWorking(12, 24, 10).withNumbers, "(12 + 24) / 2 - 10 = 8 C days");
}

TEST(BriefText, HasDigitsThatCountAndNeverAPowerOfTen) {
    EXPECT_EQ(core::briefText(0.29166667), "0.2917");
    EXPECT_EQ(core::briefText(100000), "100000");
    EXPECT_EQ(core::briefText(0.0054321, 3), "0.00543");
    EXPECT_EQ(core::briefText(7), "7");
    EXPECT_EQ(core::briefText(0), "0");
    EXPECT_EQ(core::briefText(-2.50), "-2.5");
    EXPECT_EQ(core::briefText(9.99996), "10");
    EXPECT_EQ(core::briefText(1e300).size(), 301U);
    EXPECT_EQ(core::briefText(1e-300), "0");
    EXPECT_EQ(core::briefText(-1e-300), "0");
    EXPECT_EQ(core::briefText(nan), "not a number");
    EXPECT_EQ(core::briefPercent(0.1234), "12 %");
}

}  // namespace
