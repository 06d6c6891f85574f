// SPDX-License-Identifier: MIT
// Every dialog on a screen of 1280 x 800 with text of up to twice the size: whole words, and no line that is read by scrolling sideways
// (WCAG 2.2: 1.4.4 text to 200 %).
#include "tests/desktop/whole/scenes.h"
#include "tests/desktop/whole/shown_texts.h"

namespace {

struct Agreed {
    whole::AgreeingPrompts agreeing;
};

class LargeText : private Agreed, public whole::Window, public testing::WithParamInterface<int> {
  protected:
    LargeText() : Window(&agreeing) { appearance_.setTextPercent(GetParam()); }
    ~LargeText() override { appearance_.setTextPercent(100); }
};

TEST_P(LargeText, IsReadWholeInEveryDialog) {
    whole::visitDialogs(*window_, [](const QString& name, QWidget& top) {
        SCOPED_TRACE(name.toStdString());
        EXPECT_EQ(whole::clippedTexts(top).join("\n").toStdString(), "");
        EXPECT_EQ(whole::scrolledSideways(top).join("\n").toStdString(), "");
    });
}

INSTANTIATE_TEST_SUITE_P(OfEverySize, LargeText, testing::Values(150, 200));

}  // namespace
