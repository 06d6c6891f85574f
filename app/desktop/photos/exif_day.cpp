// SPDX-License-Identifier: MIT
#include "app/desktop/photos/exif_day.h"

#include <QByteArrayView>
#include <string>

namespace desktop {

namespace {

constexpr int entrySize = 12;
constexpr quint32 dateTimeTag = 0x0132;
constexpr quint32 exifFolderTag = 0x8769;
constexpr quint32 originalTag = 0x9003;

/// Every read is checked against the end: a file may say anything of itself.
class Tiff {
  public:
    explicit Tiff(QByteArrayView bytes) : bytes_(bytes), isLittle_(bytes.startsWith("II")) {}

    [[nodiscard]] bool isTiff() const { return (isLittle_ || bytes_.startsWith("MM")) && number(2, 2) == 42U; }
    [[nodiscard]] std::optional<quint32> firstFolder() const { return number(4, 4); }

    /// Where the value of `tag` stands in the folder at `folder`, or the value itself where it fits.
    [[nodiscard]] std::optional<quint32> valueOf(quint32 folder, quint32 tag) const {
        const std::optional<quint32> count = number(folder, 2);
        if (!count) return {};
        for (quint32 entry = 0; entry < *count; ++entry) {
            const qint64 at = qint64{folder} + 2 + qint64{entry} * entrySize;
            const std::optional<quint32> found = number(at, 2);
            if (!found) return {};
            if (*found == tag) return number(at + 8, 4);
        }
        return {};
    }

    /// "2026:03:14 10:42:05": the day of it.
    [[nodiscard]] std::optional<core::Date> dayAt(quint32 at) const {
        constexpr qsizetype length = 10;
        if (qint64{at} + length > bytes_.size()) return {};
        std::string text = bytes_.sliced(at, length).toByteArray().toStdString();
        for (char& letter : text)
            if (letter == ':') letter = '-';
        return core::dateFromIso(text);
    }

  private:
    [[nodiscard]] std::optional<quint32> number(qint64 at, int size) const {
        if (at < 0 || at + size > bytes_.size()) return {};
        quint32 number = 0;
        for (int i = 0; i < size; ++i) {
            const qint64 place = isLittle_ ? at + size - 1 - i : at + i;
            number = (number << 8U) | static_cast<quint8>(bytes_[static_cast<qsizetype>(place)]);
        }
        return number;
    }

    QByteArrayView bytes_;
    bool isLittle_;
};

std::optional<core::Date> dayIn(const Tiff& tiff) {
    const std::optional<quint32> first = tiff.isTiff() ? tiff.firstFolder() : std::nullopt;
    if (!first) return {};
    if (const auto folder = tiff.valueOf(*first, exifFolderTag))
        if (const auto at = tiff.valueOf(*folder, originalTag))
            if (const auto day = tiff.dayAt(*at)) return day;
    const auto at = tiff.valueOf(*first, dateTimeTag);
    return at ? tiff.dayAt(*at) : std::nullopt;
}

}  // namespace

std::optional<core::Date> exifDay(const QByteArray& jpeg) {
    constexpr qsizetype headSize = 6;  // "Exif", two zero bytes
    if (!jpeg.startsWith("\xFF\xD8")) return {};
    const qsizetype head = jpeg.indexOf(QByteArray("Exif\0\0", headSize));
    if (head < 0) return {};
    return dayIn(Tiff(QByteArrayView(jpeg).sliced(head + headSize)));
}

}  // namespace desktop
