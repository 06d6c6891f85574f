// SPDX-License-Identifier: MIT
#include "app/desktop/photos/photo_wall.h"

#include <QClipboard>
#include <QDropEvent>
#include <QGuiApplication>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QMimeData>
#include <QPushButton>
#include <QTabWidget>
#include <QUrl>

#include "app/desktop/batches/batches_page.h"
#include "app/desktop/figures/figure_panel.h"
#include "app/desktop/photos/photo_facts_dialog.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/plot/figure_view.h"
#include "tests/desktop/pages/desk.h"
#include "tests/support/scratch_folder.h"

namespace {

using pages::named;
using pages::press;

class Photos : public pages::Desk {
  protected:
    Photos() {
        fill(support::recordsOf({support::aBatch().code("B260001A").looked(14, {.rooted = 9})}));
        page_ = std::make_unique<desktop::BatchesPage>(context());
        pages::show(*page_);
        page_->showBatch(logbook().batchWithCode("B260001A"));
    }

    QString picture(const char* name, int width = 400, int height = 300, QColor colour = Qt::darkGreen) {
        QImage image(width, height, QImage::Format_RGB32);
        image.fill(colour);
        const QString file = QString::fromStdString((folder_ / name).string());
        EXPECT_TRUE(image.save(file));
        return file;
    }

    void drop(const QStringList& files) {
        QMimeData data;
        QList<QUrl> urls;
        for (const QString& file : files) urls << QUrl::fromLocalFile(file);
        data.setUrls(urls);
        auto& target = named<QWidget>(*page_, "batchPage");
        QDragEnterEvent enter(QPoint(10, 10), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(&target, &enter);
        EXPECT_TRUE(enter.isAccepted());
        QDropEvent event(QPointF(10, 10), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(&target, &event);
    }

    std::vector<core::Photo> photos() { return logbook().photos(logbook().batchWithCode("B260001A")); }
    bool hasPhotos(std::size_t count) {
        return pages::comesTrue([&] { return photos().size() == count; });
    }
    QListView& list() { return named<QListView>(*page_, "photoList"); }
    desktop::FigurePanel& pair() { return named<desktop::FigurePanel>(*page_, "photoPair"); }
    QString fault() { return named<desktop::FaultLabel>(*page_, "photoFault").fault(); }

    support::ScratchFolder folder_;
    std::unique_ptr<desktop::BatchesPage> page_;
};

TEST_F(Photos, ComeFromSeveralFilesAtOnceInOneStep) {
    prompts_.willPickFilesToOpen({picture("one.png"), picture("two.jpg")});
    named<QPushButton>(*page_, "newPhoto").click();
    ASSERT_TRUE(hasPhotos(2));
    EXPECT_EQ(photos()[0].takenOn, support::today());
    EXPECT_EQ(list().model()->rowCount(), 2);
    EXPECT_TRUE(workspace_.undo());
    EXPECT_TRUE(photos().empty());
    EXPECT_EQ(list().model()->rowCount(), 0);
}

TEST_F(Photos, ComeByDropAndShowThemselves) {
    drop({picture("one.png")});
    ASSERT_TRUE(hasPhotos(1));
    EXPECT_EQ(named<QTabWidget>(*page_, "batchFigures").currentWidget(), &named<QWidget>(*page_, "photoWall"));
    EXPECT_TRUE(pair().isVisible());
}

TEST_F(Photos, ComeByPaste) {
    QImage image(320, 200, QImage::Format_RGB32);
    image.fill(Qt::green);
    QGuiApplication::clipboard()->setImage(image);
    page_->activated();
    press(Qt::Key_V, Qt::ControlModifier);
    ASSERT_TRUE(hasPhotos(1));
    QGuiApplication::clipboard()->clear();
}

TEST_F(Photos, RefusesAPasteWithoutAPictureInASentence) {
    QGuiApplication::clipboard()->setText(QStringLiteral("roots on five"));
    page_->activated();
    press(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(fault(), QStringLiteral("There is no picture in what was pasted."));
    QGuiApplication::clipboard()->clear();
}

TEST_F(Photos, KeepsTheGoodOnesAndNamesTheBrokenOne) {
    const std::string broken = (folder_ / "broken.png").string();
    support::writeContent(broken, support::contentOf(picture("whole.png").toStdString()).substr(0, 60));
    drop({picture("one.png"), QString::fromStdString(broken)});
    ASSERT_TRUE(hasPhotos(1));
    ASSERT_TRUE(pages::comesTrue([&] { return !fault().isEmpty(); }));
    EXPECT_TRUE(fault().contains(QStringLiteral("broken.png"))) << fault().toStdString();
}

TEST_F(Photos, AreKeptSmallAndUnderNoNameFromOutside) {
    drop({picture("my garden.png", 3000, 2000)});
    ASSERT_TRUE(hasPhotos(1));
    const core::ImageBytes bytes = logbook().photoImage(photos()[0].id);
    const QByteArray data(reinterpret_cast<const char*>(bytes.data()), static_cast<qsizetype>(bytes.size()));
    EXPECT_EQ(QImage::fromData(data).width(), 1600);
    EXPECT_FALSE(data.contains("my garden"));
    EXPECT_EQ(photos()[0].caption, "");
}

TEST_F(Photos, StandSideBySideWithTheDayUnderEach) {
    drop({picture("one.png"), picture("two.png")});
    ASSERT_TRUE(hasPhotos(2));
    list().selectAll();
    EXPECT_TRUE(pair().view()->accessibleName().startsWith(QStringLiteral("Before and after: day 120, 30 June 2026")))
        << pair().view()->accessibleName().toStdString();
    list().setFocus();
    press(Qt::Key_Return);
    auto* large = pages::opened<QDialog>(*page_);
    ASSERT_NE(large, nullptr);
    EXPECT_EQ(large->objectName(), QStringLiteral("largePhotoDialog"));
    large->close();
}

TEST_F(Photos, TakeACaptionAndADay) {
    drop({picture("one.png")});
    ASSERT_TRUE(hasPhotos(1));
    list().setFocus();
    press(Qt::Key_F2);
    auto* dialog = pages::opened<desktop::PhotoFactsDialog>(*page_);
    ASSERT_NE(dialog, nullptr);
    named<QLineEdit>(*dialog, "photoCaption").setText(QStringLiteral("first roots"));
    named<QLineEdit>(*dialog, "photoDay").setText(QStringLiteral("2026-01-01"));
    named<QPushButton>(*dialog, "savePhotoFacts").click();
    EXPECT_TRUE(dialog->isVisible());  // before sticking: refused in place
    named<QLineEdit>(*dialog, "photoDay").setText(QStringLiteral("2026-03-16"));
    named<QPushButton>(*dialog, "savePhotoFacts").click();
    EXPECT_EQ(photos()[0].caption, "first roots");
    EXPECT_EQ(photos()[0].takenOn, core::dateFromIso("2026-03-16"));
    EXPECT_EQ(list().model()->index(0, 0).data(Qt::AccessibleTextRole).toString(),
              QStringLiteral("first roots, day 14, 16 March 2026"));
    EXPECT_TRUE(workspace_.undo());
    EXPECT_EQ(photos()[0].caption, "");
}

TEST_F(Photos, AreDeletedAtOnceAndUndoBringsThemBack) {
    drop({picture("one.png")});
    ASSERT_TRUE(hasPhotos(1));
    const core::ImageBytes before = logbook().photoImage(photos()[0].id);
    list().setFocus();
    press(Qt::Key_Delete);
    EXPECT_TRUE(photos().empty());
    EXPECT_TRUE(workspace_.undo());
    ASSERT_EQ(photos().size(), 1U);
    EXPECT_EQ(logbook().photoImage(photos()[0].id), before);
}

TEST_F(Photos, StopsAddingOnRequestAndLeavesNothingBehind) {
    QStringList files;
    for (int i = 0; i < 20; ++i) files << picture(("p" + std::to_string(i) + ".png").c_str(), 1500, 1500);
    drop(files);
    named<QPushButton>(*page_, "stopAddingPhotos").click();
    QCoreApplication::processEvents();
    EXPECT_TRUE(photos().empty());
}

}  // namespace
