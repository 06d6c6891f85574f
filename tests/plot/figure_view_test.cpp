// SPDX-License-Identifier: MIT
#include "app/plot/figure_view.h"

#include <QAccessible>
#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QFile>
#include <QImage>
#include <QMenu>
#include <QMimeData>
#include <QTemporaryDir>

#include "app/plot/palette.h"
#include "app/plot/rooted_by_day_figure.h"
#include "gtest/gtest.h"
#include "tests/plot/comparison_examples.h"

namespace {

std::shared_ptr<const plot::Figure> curves() {
    return plot::rootedByDayFigure(examples::twoMethods());
}

}  // namespace

TEST(FigureView, TellsScreenReadersItsSentenceAsAChart) {
    plot::FigureView view;
    view.setFigure(curves());
    QAccessibleInterface* accessible = QAccessible::queryAccessibleInterface(&view);
    ASSERT_NE(accessible, nullptr);
    EXPECT_EQ(accessible->role(), QAccessible::Chart);
    EXPECT_EQ(accessible->text(QAccessible::Name), curves()->sentence());
    EXPECT_EQ(accessible->text(QAccessible::Description), curves()->method());
}

TEST(FigureView, SaysWhatWouldBeHereWhileThereIsNoFigure) {
    plot::FigureView view;
    view.setEmptyText("Choose two methods.");
    EXPECT_EQ(view.accessibleName(), "Choose two methods.");
    view.resize(600, 300);
    EXPECT_FALSE(view.grab().isNull());
    const auto menu = view.makeMenu();
    for (const QAction* action : menu->actions()) EXPECT_TRUE(action->isSeparator() || !action->isEnabled());
}

TEST(FigureView, FollowsTheDesktopsPalette) {
    plot::FigureView view;
    view.setFigure(curves());
    view.resize(600, 300);
    const QColor ink(30, 32, 34), chalk(225, 225, 220);
    view.setPalette(QPalette(chalk, ink, Qt::gray, ink, Qt::gray, chalk, ink));
    EXPECT_EQ(view.grab().toImage().pixelColor(2, 2), plot::Palette::dark().paper);
    view.setPalette(QPalette(ink, chalk, chalk, Qt::gray, Qt::gray, ink, chalk));
    EXPECT_EQ(view.grab().toImage().pixelColor(2, 2), plot::Palette::light().paper);
}

TEST(FigureView, TellsTheFiguresNearTheMouse) {
    plot::FigureView view;
    view.setFigure(curves());
    view.resize(900, 600);
    EXPECT_FALSE(view.grab().isNull());
    EXPECT_TRUE(view.hintAt({450, 250}).contains("media tray")) << view.hintAt({450, 250}).toStdString();
    EXPECT_TRUE(view.hintAt({5, 5}).isEmpty());
}

TEST(FigureView, CopiesPictureAndFigures) {
    plot::FigureView view;
    view.setFigure(curves());
    view.copyTable();
    EXPECT_TRUE(QApplication::clipboard()->text().startsWith("Arm\tStuck\tDay"));
    view.copyPicture();
    EXPECT_FALSE(QApplication::clipboard()->image().isNull());
    EXPECT_TRUE(QApplication::clipboard()->mimeData()->hasFormat("image/svg+xml"));
}

TEST(FigureView, SavesEachKindAndAsksItsOwnerWhere) {
    const QTemporaryDir folder;
    plot::FigureView view;
    view.setFigure(curves());
    std::vector<plot::FigureFile> asked;
    QObject::connect(&view, &plot::FigureView::saveRequested, [&](plot::FigureFile kind) { asked.push_back(kind); });
    const auto menu = view.makeMenu();
    for (const char* name : {"savePdf", "saveSvg", "savePng", "saveCsv"}) {
        auto* action = menu->findChild<QAction*>(name);
        ASSERT_NE(action, nullptr) << name;
        action->trigger();
    }
    ASSERT_EQ(asked.size(), 4U);
    for (const plot::FigureFile kind : asked) {
        const QString file = folder.filePath("figure." + plot::extensionOf(kind));
        view.saveAs(file, kind);
        EXPECT_GT(QFile(file).size(), 100) << file.toStdString();
    }
}

TEST(FigureView, CanBeReachedByTheKeyboardAndGrowsWithTheFont) {
    plot::FigureView view;
    EXPECT_EQ(view.focusPolicy(), Qt::StrongFocus);
    const QSize before = view.minimumSizeHint();
    QFont font = view.font();
    font.setPointSizeF(2 * font.pointSizeF());
    view.setFont(font);
    EXPECT_NEAR(view.minimumSizeHint().width(), 2 * before.width(), 0.1 * before.width());
}
