// SPDX-License-Identifier: MIT
// The form that every page has.
#include "app/report/methods/method_note.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>
#include <QStringList>
#include <limits>
#include <set>
#include <stdexcept>

#include "app/report/methods/note_numbers.h"

namespace {

QStringList pages() {
    QStringList names;
    const QDir folder(QStringLiteral(STRIKEBOOK_SOURCE_DIR "/resources/methods"));
    for (const QString& file : folder.entryList({QStringLiteral("*.md")})) names << file.chopped(3);
    return names;
}

QString templateOf(const QString& page) {
    QFile file(QStringLiteral(STRIKEBOOK_SOURCE_DIR "/resources/methods/%1.md").arg(page));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return QString::fromUtf8(file.readAll());
}

std::set<QString> functionsOfStats() {
    static const QRegularExpression declaration(QStringLiteral("^\\[\\[nodiscard\\]\\] [^(]*?(\\w+)\\("),
                                                QRegularExpression::MultilineOption);
    std::set<QString> functions;
    for (QDirIterator headers(QStringLiteral(STRIKEBOOK_SOURCE_DIR "/stats"), {QStringLiteral("*.h")}, QDir::Files,
                              QDirIterator::Subdirectories);
         headers.hasNext();) {
        QFile header(headers.next());
        EXPECT_TRUE(header.open(QIODevice::ReadOnly));
        const QString text = QString::fromUtf8(header.readAll());
        for (auto found = declaration.globalMatch(text); found.hasNext();) functions.insert(found.next().captured(1));
    }
    return functions;
}

TEST(MethodPages, HaveATitleAndEverySection) {
    for (const QString& page : pages()) {
        const QString text = templateOf(page);
        EXPECT_TRUE(text.startsWith(QStringLiteral("# "))) << page.toStdString();
        EXPECT_FALSE(report::methodTitle(page).isEmpty()) << page.toStdString();
        for (const char* section :
             {"**What it is.**", "**When it is used.**", "**What it assumes.**", "**Worked out here.**", "**Source.**"})
            EXPECT_EQ(text.count(QString::fromLatin1(section)), 1) << page.toStdString() << ": " << section;
        // The verdict is an order of questions; the tests that it asks have pages of their own.
        EXPECT_EQ(text.count(QStringLiteral("```r\n")), page == QLatin1String("verdict") ? 0 : 1) << page.toStdString();
    }
}

TEST(MethodPages, NameFunctionsThatExist) {
    const std::set<QString> known = functionsOfStats();
    ASSERT_TRUE(known.contains(QStringLiteral("wilsonInterval")));
    for (const QString& page : pages())
        for (const QString& function : report::functionsBehind(page))
            EXPECT_TRUE(known.contains(function)) << page.toStdString() << " names " << function.toStdString();
}

// A rate is a count divided by another: no statistics function is behind these two.
TEST(MethodPages, NameTheFunctionsBehindThem) {
    const std::set<QString> plainCounts{QStringLiteral("strike_rate"), QStringLiteral("strike_rate_so_far")};
    for (const QString& page : pages())
        EXPECT_EQ(report::functionsBehind(page).isEmpty(), plainCounts.contains(page)) << page.toStdString();
}

TEST(MethodPages, AreAllBuiltIn) {
    for (const QString& page : pages())
        EXPECT_TRUE(QFile::exists(QStringLiteral(":/methods/%1.md").arg(page)) || !report::methodTitle(page).isEmpty());
}

TEST(MethodNote, ABraceWithoutANumberIsAMistakeOfOurs) {
    EXPECT_THROW((void)report::methodText({QStringLiteral("wilson_interval"), {}}), std::logic_error);
    EXPECT_THROW((void)report::methodText({QStringLiteral("no_such_page"), {}}), std::logic_error);
}

TEST(NoteNumbers, AreWrittenForPeopleAndForR) {
    report::Numbers numbers;
    report::put(numbers, QStringLiteral("rate"), -0.12345);
    EXPECT_EQ(numbers[QStringLiteral("rate")], QStringLiteral("\u22120.1235"));
    EXPECT_EQ(numbers[QStringLiteral("rate_r")], QStringLiteral("-0.1235"));
    report::put(numbers, QStringLiteral("ratio"), std::numeric_limits<double>::infinity(), 2);
    EXPECT_EQ(numbers[QStringLiteral("ratio")], QStringLiteral("\u221e"));
    EXPECT_EQ(numbers[QStringLiteral("ratio_r")], QStringLiteral("Inf"));
    report::putP(numbers, QStringLiteral("p"), 3e-7);
    EXPECT_EQ(numbers[QStringLiteral("p")], QStringLiteral("p < 0.0001"));
    EXPECT_EQ(numbers[QStringLiteral("p_r")], QStringLiteral("0.0000"));
}

TEST(NoteNumbers, ListsAreLinesOfRAndNoLongerThanAPage) {
    EXPECT_EQ(report::listForR(std::vector<int>{14, 11}), QStringLiteral("c(14, 11)"));
    EXPECT_EQ(report::listForR(std::vector<double>{0.5, HUGE_VAL}), QStringLiteral("c(0.5, Inf)"));
    const QString folded = report::listForR(std::vector<int>(100, 1234));
    for (const QString& line : folded.split(u'\n')) EXPECT_LT(line.size(), 130);
    EXPECT_TRUE(report::listForR(std::vector<int>(2000, 1)).startsWith(QStringLiteral("scan(")));
}

TEST(NoteNumbers, ANameIsNotTakenForMarkdown) {
    EXPECT_EQ(report::named("gel *strong* [2]"), QStringLiteral("gel \\*strong\\* \\[2\\]"));
}

}  // namespace
