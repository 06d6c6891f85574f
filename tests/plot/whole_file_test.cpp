// SPDX-License-Identifier: MIT
#include "app/plot/whole_file.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include "db/logbook_error.h"
#include "gmock/gmock.h"
#include "gtest/gtest.h"

TEST(WholeFile, ReplacesAnOlderOne) {
    const QTemporaryDir folder;
    const QString file = folder.filePath("picture.svg");
    plot::writeWholeFile(file, "old");
    plot::writeWholeFile(file, "new");
    QFile read(file);
    ASSERT_TRUE(read.open(QIODevice::ReadOnly));
    EXPECT_EQ(read.readAll().toStdString(), "new");
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files).size(), 1) << "nothing temporary is left behind";
}

TEST(WholeFile, SaysInASentenceWhyItCouldNotBeWritten) {
    const QTemporaryDir folder;
    try {
        plot::writeWholeFile(folder.filePath("no such folder/picture.svg"), "content");
        FAIL() << "a folder that isn't there";
    } catch (const db::LogbookError& error) {
        EXPECT_THAT(error.what(), testing::HasSubstr("picture.svg could not be written"));
        EXPECT_THAT(error.what(), testing::HasSubstr("nothing that was there before has changed"));
    }
}
