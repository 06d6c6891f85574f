// SPDX-License-Identifier: MIT
#include "app/desktop/photos/photo_import.h"

#include <QBuffer>
#include <QImageReader>
#include <QRandomGenerator>

#include "app/desktop/photos/exif_day.h"
#include "gtest/gtest.h"
#include "tests/support/scratch_folder.h"

namespace {

QByteArray bytesOf(const desktop::ImportedPhoto& photo) {
    return {reinterpret_cast<const char*>(photo.image.data()), static_cast<qsizetype>(photo.image.size())};
}

QImage imageOf(const desktop::ImportedPhoto& photo) {
    return QImage::fromData(bytesOf(photo));
}

QImage leaf(int width, int height) {
    QImage image(width, height, QImage::Format_RGB32);
    image.fill(QColor(60, 120, 70));
    for (int x = 0; x < width / 4; ++x)
        for (int y = 0; y < height / 4; ++y) image.setPixelColor(x, y, Qt::red);  // marks the upper left corner
    return image;
}

void append16(QByteArray& to, int number) {
    to.append(static_cast<char>(number / 256)).append(static_cast<char>(number % 256));
}

/// A JPEG with an Exif part as a camera writes it: a day, and which way up.
QByteArray fromCamera(const QImage& image, const char* day, int orientation) {
    QByteArray jpeg;
    QBuffer buffer(&jpeg);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "jpeg", 90);
    QByteArray tiff("MM\0*\0\0\0\x08", 8);
    append16(tiff, 2);
    tiff.append(QByteArray::fromHex("0112000300000001"));
    append16(tiff, orientation);
    append16(tiff, 0);
    tiff.append(QByteArray::fromHex("87690004000000010000002600000000"));
    append16(tiff, 1);
    tiff.append(QByteArray::fromHex("90030002000000140000003800000000"));
    tiff.append(day).append(" 10:42:05").append('\0');
    QByteArray part("Exif\0\0", 6);
    part.append(tiff);
    QByteArray head("\xFF\xD8\xFF\xE1");
    append16(head, static_cast<int>(part.size()) + 2);
    return head + part + jpeg.mid(2);
}

class PhotoImport : public testing::Test {
  protected:
    desktop::ImportedPhoto imported(const QByteArray& content, const char* name = "picture.jpg") {
        support::writeContent(folder_ / name, content.toStdString());
        return desktop::importPhoto({.file = QString::fromStdString((folder_ / name).string()), .image = {}});
    }

    support::ScratchFolder folder_;
};

TEST_F(PhotoImport, ScalesDownToSixteenHundredPixels) {
    const desktop::ImportedPhoto photo = desktop::importPhoto({.file = {}, .image = leaf(4000, 3000)});
    EXPECT_EQ(imageOf(photo).size(), QSize(1600, 1200));
    EXPECT_LT(photo.image.size(), 600'000U);
}

TEST_F(PhotoImport, NeverScalesUp) {
    EXPECT_EQ(imageOf(desktop::importPhoto({.file = {}, .image = leaf(300, 200)})).size(), QSize(300, 200));
}

TEST_F(PhotoImport, MakesEvenPureNoiseSmallEnough) {
    QImage noise(1600, 1600, QImage::Format_RGB32);
    QRandomGenerator dice(1);
    for (int y = 0; y < noise.height(); ++y)
        dice.fillRange(reinterpret_cast<quint32*>(noise.scanLine(y)), noise.width());
    const desktop::ImportedPhoto photo = desktop::importPhoto({.file = {}, .image = noise});
    EXPECT_LT(photo.image.size(), 600'000U);
    EXPECT_FALSE(imageOf(photo).isNull());
}

TEST_F(PhotoImport, TurnsAPictureAsTheCameraHeldIt) {
    constexpr int turnedRight = 6;
    const desktop::ImportedPhoto photo = imported(fromCamera(leaf(400, 200), "2026:03:14", turnedRight));
    ASSERT_EQ(photo.fault, QString());
    const QImage image = imageOf(photo);
    EXPECT_EQ(image.size(), QSize(200, 400));
    EXPECT_GT(image.pixelColor(190, 10).red(), 200);  // the corner has moved
}

TEST_F(PhotoImport, TakesTheDayFromTheCameraAndLeavesTheRestBehind) {
    const desktop::ImportedPhoto photo = imported(fromCamera(leaf(400, 200), "2026:03:14", 1));
    EXPECT_EQ(photo.takenOn, core::dateFromIso("2026-03-14"));
    EXPECT_FALSE(bytesOf(photo).contains("Exif"));
    EXPECT_FALSE(bytesOf(photo).contains("2026:03:14"));
}

TEST_F(PhotoImport, LeavesTheTextsOfAPngBehind) {
    QImage image = leaf(100, 100);
    image.setText(QStringLiteral("Comment"), QStringLiteral("a garden in the north"));
    const std::string file = (folder_ / "p.png").string();
    ASSERT_TRUE(image.save(QString::fromStdString(file)));
    const desktop::ImportedPhoto photo = desktop::importPhoto({.file = QString::fromStdString(file), .image = {}});
    ASSERT_FALSE(photo.image.empty());
    EXPECT_FALSE(bytesOf(photo).contains("garden"));
}

TEST_F(PhotoImport, RefusesWhatIsNoPicture) {
    const desktop::ImportedPhoto photo = imported("Leaves were yellow.", "notes.jpg");
    EXPECT_TRUE(photo.image.empty());
    EXPECT_TRUE(photo.fault.startsWith(QStringLiteral("notes.jpg is no picture"))) << photo.fault.toStdString();
}

TEST_F(PhotoImport, RefusesAFileThatIsNotThere) {
    EXPECT_TRUE(desktop::importPhoto({.file = QStringLiteral("/nowhere/x.jpg"), .image = {}})
                    .fault.contains(QStringLiteral("can't be read")));
}

TEST_F(PhotoImport, RefusesAPictureOfFarTooManyPixels) {
    // The head of a PNG of 40000 by 40000 pixels, and nothing behind it.
    QByteArray png = QByteArray::fromHex("89504e470d0a1a0a0000000d4948445200009c4000009c400802000000");
    png.append(QByteArray::fromHex("b2f8bd7f"));
    const desktop::ImportedPhoto photo = imported(png, "huge.png");
    EXPECT_TRUE(photo.image.empty());
    EXPECT_FALSE(photo.fault.isEmpty());
}

TEST_F(PhotoImport, SurvivesExifThatPointsAnywhere) {
    const QByteArray sound = fromCamera(leaf(40, 20), "2026:03:14", 1);
    QRandomGenerator dice(7);
    for (int round = 0; round < 2000; ++round) {
        QByteArray broken = sound.left(200);
        for (int change = 0; change < 4; ++change)
            broken[static_cast<qsizetype>(dice.bounded(12, 120))] = static_cast<char>(dice.bounded(256));
        (void)desktop::exifDay(broken.left(dice.bounded(200)));
    }
    EXPECT_EQ(desktop::exifDay(sound), core::dateFromIso("2026-03-14"));
}

}  // namespace
