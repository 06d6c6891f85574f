// SPDX-License-Identifier: MIT
// docs/statistics/methods are the pages that the window opens, with the numbers of one invented example. STRIKEBOOK_APPROVE=1 writes them.
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QStringList>
#include <set>

#include "tests/report/methods/method_examples.h"

namespace {

const QString docs = QStringLiteral(STRIKEBOOK_SOURCE_DIR "/docs/statistics/");

QString contentsOf(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return QString::fromUtf8(file.readAll());
}

QString linksToAccuracy(const QString& page) {
    QStringList links;
    for (const QString& function : report::functionsBehind(page))
        links << QStringLiteral("[%1](../accuracy.md#%2)").arg(function, function.toLower());
    if (links.isEmpty()) return {};
    return QStringLiteral("\n**How exact.** %1.\n").arg(links.join(QStringLiteral(", ")));
}

// As it stands in the docs: marked as invented below its title, with links to how exact it is below.
QString docsPage(const report::MethodNote& note) {
    const QString text = report::methodText(note);
    const auto endOfTitle = text.indexOf(u'\n') + 1;
    return text.left(endOfTitle) +
           QStringLiteral(
               "\n*The numbers on this page are those of an invented example. In the program the same page opens with "
               "your "
               "own from \"How is this worked out?\".*\n") +
           text.mid(endOfTitle) + linksToAccuracy(note.page);
}

std::vector<report::MethodNote> everyPage() {
    std::vector<report::MethodNote> all = examples::notesOfFigures();
    for (report::MethodNote& note : examples::notesOfPlans()) all.push_back(std::move(note));
    for (report::MethodNote& note : examples::notesOfMoneyAndLosses()) all.push_back(std::move(note));
    return all;
}

TEST(MethodsInTheDocs, AreThePagesThatTheWindowOpens) {
    for (const report::MethodNote& note : everyPage()) {
        const QString path = docs + QStringLiteral("methods/") + note.page + QStringLiteral(".md");
        const QString page = docsPage(note);
        if (qEnvironmentVariableIntValue("STRIKEBOOK_APPROVE") == 1) {
            QDir().mkpath(docs + QStringLiteral("methods"));
            QFile file(path);
            ASSERT_TRUE(file.open(QIODevice::WriteOnly));
            file.write(page.toUtf8());
            continue;
        }
        EXPECT_EQ(contentsOf(path).toStdString(), page.toStdString())
            << note.page.toStdString() << ": STRIKEBOOK_APPROVE=1 accepts the change";
    }
}

TEST(MethodsInTheDocs, HoldNoPageThatNoTemplateIsBehind) {
    std::set<QString> pages;
    for (const report::MethodNote& note : everyPage()) pages.insert(note.page + QStringLiteral(".md"));
    for (const QString& file : QDir(docs + QStringLiteral("methods")).entryList({QStringLiteral("*.md")}))
        EXPECT_TRUE(pages.contains(file)) << file.toStdString();
}

TEST(MethodsInTheDocs, AreAllInTheIndex) {
    const QString index = contentsOf(docs + QStringLiteral("methods.md"));
    for (const report::MethodNote& note : everyPage())
        EXPECT_EQ(index.count(QStringLiteral("](methods/%1.md)").arg(note.page)), 1) << note.page.toStdString();
}

TEST(MethodsInTheDocs, EveryTemplateIsReachable) {
    std::set<QString> reached;
    for (const report::MethodNote& note : everyPage()) reached.insert(note.page + QStringLiteral(".md"));
    const QDir templates(QStringLiteral(STRIKEBOOK_SOURCE_DIR "/resources/methods"));
    for (const QString& file : templates.entryList({QStringLiteral("*.md")}))
        EXPECT_TRUE(reached.contains(file)) << file.toStdString() << " belongs to no figure";
}

}  // namespace
