// SPDX-License-Identifier: MIT
#include "app/desktop/memory.h"

#include <QTemporaryDir>

#include "gtest/gtest.h"

namespace {

class MemoryInAFolder : public testing::Test {
  protected:
    [[nodiscard]] desktop::Memory memory() const {
        return desktop::Memory({folder_.filePath("s.ini"), folder_.filePath("w.ini")});
    }
    QTemporaryDir folder_;
};

TEST_F(MemoryInAFolder, StartsWithTheSystemsLookAndNoLogbook) {
    EXPECT_EQ(memory().theme(), desktop::Theme::System);
    EXPECT_EQ(memory().textPercent(), 100);
    EXPECT_EQ(memory().lastLogbook(), "");
    EXPECT_TRUE(memory().recentLogbooks().isEmpty());
}

TEST_F(MemoryInAFolder, RemembersFromOneStartToTheNext) {
    {
        desktop::Memory before = memory();
        before.setTheme(desktop::Theme::Dark);
        before.setTextPercent(150);
        before.setLastLogbook("/a.strikebook");
        before.setShape("main_window", "shape");
    }
    EXPECT_EQ(memory().theme(), desktop::Theme::Dark);
    EXPECT_EQ(memory().textPercent(), 150);
    EXPECT_EQ(memory().lastLogbook(), "/a.strikebook");
    EXPECT_EQ(memory().shape("main_window"), "shape");
}

TEST_F(MemoryInAFolder, KeepsTenRecentLogbooksNewestFirstEachOnce) {
    desktop::Memory memory({folder_.filePath("s.ini"), folder_.filePath("w.ini")});
    for (int number = 0; number < 12; ++number) memory.addRecentLogbook(QString::number(number));
    memory.addRecentLogbook("5");
    EXPECT_EQ(memory.recentLogbooks(), QStringList({"5", "11", "10", "9", "8", "7", "6", "4", "3", "2"}));
}

TEST_F(MemoryInAFolder, TakesASpoiltTextSizeIntoRange) {
    {
        QSettings settings(folder_.filePath("s.ini"), QSettings::IniFormat);
        settings.setValue("look/text_percent", 9000);
    }
    EXPECT_EQ(memory().textPercent(), 200);
}

}  // namespace
