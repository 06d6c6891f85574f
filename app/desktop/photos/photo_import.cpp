// SPDX-License-Identifier: MIT
#include "app/desktop/photos/photo_import.h"

#include <QBuffer>
#include <QColorSpace>
#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QImageReader>
#include <QImageWriter>
#include <QLocale>
#include <QPainter>
#include <algorithm>

#include "app/desktop/photos/exif_day.h"

namespace desktop {

namespace {

struct PhotoWords {
    Q_DECLARE_TR_FUNCTIONS(PhotoImport)
};

constexpr qint64 mostPixels = 120'000'000;  // of a picture that is opened at all
constexpr int mostMegabytes = 512;          // that reading may take: four bytes a pixel
constexpr qint64 headOfFile = 65'536;

QSize scaledDown(const QSize& size) {
    if (std::max(size.width(), size.height()) <= longestPhotoSide) return size;
    return size.scaled(longestPhotoSide, longestPhotoSide, Qt::KeepAspectRatio).expandedTo({1, 1});
}

/// A new picture with nothing but the pixels: texts, colour profiles and the like stay behind. What was transparent becomes white.
QImage onlyPixels(QImage image) {
    if (image.colorSpace().isValid()) image.convertToColorSpace(QColorSpace::SRgb);
    const QSize size = scaledDown(image.size());
    if (size != image.size()) image = image.scaled(size, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    QImage plain(image.size(), QImage::Format_RGB32);
    plain.fill(Qt::white);
    QPainter(&plain).drawImage(0, 0, image);
    return plain;
}

QByteArray jpegOf(const QImage& image, int quality) {
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    QImageWriter writer(&buffer, "jpeg");
    writer.setQuality(quality);
    return writer.write(image) ? buffer.data() : QByteArray();
}

/// As fine as fits; a picture of pure noise loses pixels too.
QByteArray smallEnough(QImage image) {
    constexpr int finest = 88, coarsest = 48, step = 8;
    while (true) {
        for (int quality = finest; quality >= coarsest; quality -= step) {
            QByteArray jpeg = jpegOf(image, quality);
            if (jpeg.size() < largestPhoto) return jpeg;
        }
        image = image.scaled(image.size() * 3 / 4, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    }
}

ImportedPhoto refused(const QString& sentence) {
    return {.image = {}, .takenOn = {}, .fault = sentence};
}

ImportedPhoto fromImage(const QImage& image) {
    const QByteArray jpeg = smallEnough(onlyPixels(image));
    if (jpeg.isEmpty()) return refused(PhotoWords::tr("The picture can't be written as a JPEG on this machine."));
    return {.image = core::ImageBytes(jpeg.begin(), jpeg.end()), .takenOn = {}, .fault = {}};
}

ImportedPhoto fromFile(const QString& name) {
    const QString shortName = QFileInfo(name).fileName();
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly)) return refused(PhotoWords::tr("%1 can't be read.").arg(shortName));
    if (file.size() > largestPhotoFile)
        return refused(PhotoWords::tr("%1 is %2; pictures of up to %3 are taken.")
                           .arg(shortName, QLocale().formattedDataSize(file.size()),
                                QLocale().formattedDataSize(largestPhotoFile)));
    const QByteArray head = file.peek(headOfFile);
    QImageReader::setAllocationLimit(mostMegabytes);
    QImageReader reader(&file);
    reader.setAutoTransform(true);
    reader.setDecideFormatFromContent(true);
    const QSize size = reader.size();
    if (!reader.canRead() || size.isEmpty())
        return refused(
            PhotoWords::tr("%1 is no picture that can be read; JPEG, PNG and the like are taken.").arg(shortName));
    if (qint64{size.width()} * size.height() > mostPixels)
        return refused(PhotoWords::tr("%1 has %2 million pixels; up to %3 million are taken.")
                           .arg(shortName)
                           .arg(qint64{size.width()} * size.height() / 1'000'000)
                           .arg(mostPixels / 1'000'000));
    // A JPEG is scaled while it is read: twice the size wanted keeps the smoothing good.
    const QSize wanted = scaledDown(size) * 2;
    if (reader.format() == "jpeg" && wanted.width() < size.width()) reader.setScaledSize(wanted);
    const QImage image = reader.read();
    if (image.isNull())
        return refused(
            PhotoWords::tr("%1 is broken: the picture ends early or holds what is no picture.").arg(shortName));
    ImportedPhoto photo = fromImage(image);
    photo.takenOn = exifDay(head);
    return photo;
}

}  // namespace

ImportedPhoto importPhoto(const PhotoSource& source) {
    if (!source.file.isEmpty()) return fromFile(source.file);
    if (source.image.isNull()) return refused(PhotoWords::tr("There is no picture on the clipboard."));
    return fromImage(source.image);
}

}  // namespace desktop
