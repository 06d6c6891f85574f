// SPDX-License-Identifier: MIT
// Labels that wet hands have been at, read by a reader of others. A tenth of each symbol is smeared: a streak of half a millimetre across
// it and blots of 1 to 2 mm, where half of the contrast is gone, by a film of dirt or by dissolved ink.
#include <QDir>
#include <QImage>
#include <QPainter>
#include <QProcess>
#include <QTemporaryDir>
#include <cmath>
#include <numbers>

#include "app/report/labels.h"
#include "core/batch/batch_code.h"
#include "gtest/gtest.h"
#include "stats/numeric/seeded_random.h"
#include "tests/report/sheet_examples.h"

namespace {

using report::LabelStock;

constexpr double smearedShare = 0.1;
constexpr double streakWidth = 0.5;  // mm
constexpr double leastBlot = 1;      // mm across
constexpr double mostBlot = 2;
constexpr std::uint64_t smearSeed = 20260311;

std::vector<core::Batch> batchesToLabel(int count) {
    std::vector<core::Batch> batches;
    for (int number = 1; number <= count; ++number) {
        core::Batch batch = examples::batchChecked(0).batch;
        batch.code = core::batchCode(2026, number);
        batches.push_back(batch);
    }
    return batches;
}

std::vector<QImage> printedAtDots(const report::LabelPrint& print, int dots, const QTemporaryDir& folder) {
    report::writePdf(print, folder.filePath("labels.pdf"));
    QProcess process;
    process.start("pdftoppm", {"-r", QString::number(dots), "-gray", "-png", folder.filePath("labels.pdf"),
                               folder.filePath("page")});
    EXPECT_TRUE(process.waitForFinished());
    std::vector<QImage> pages;
    for (const QString& name : QDir(folder.path()).entryList({"page*.png"}, QDir::Files, QDir::Name))
        pages.push_back(QImage(folder.filePath(name)).convertToFormat(QImage::Format_Grayscale8));
    return pages;
}

QImage labelOf(const QImage& page, const QRectF& label, double dotsAMillimetre) {
    return page.copy(QRectF(label.topLeft() * dotsAMillimetre, label.size() * dotsAMillimetre).toRect());
}

bool isDarkColumn(const QImage& image, int x) {
    for (int y = 0; y < image.height(); ++y)
        if (image.constScanLine(y)[x] < 128) return true;
    return false;
}

/// The symbol: what is dark from the left edge of the label up to a gap of 1.5 mm.
QRect symbolBox(const QImage& label, double dotsAMillimetre) {
    int left = 0;
    while (left < label.width() && !isDarkColumn(label, left)) ++left;
    int right = left, blank = 0;
    for (int x = left; x < label.width() && blank < 1.5 * dotsAMillimetre; ++x) {
        blank = isDarkColumn(label, x) ? 0 : blank + 1;
        if (blank == 0) right = x;
    }
    QRect box;
    for (int y = 0; y < label.height(); ++y)
        for (int x = left; x <= right; ++x)
            if (label.constScanLine(y)[x] < 128) box |= QRect(x, y, 1, 1);
    return box;
}

class Smearer {
  public:
    Smearer(QImage& image, double dotsAMillimetre, stats::SeededRandom& random)
        : image_(image),
          box_(symbolBox(image, dotsAMillimetre)),
          dots_(dotsAMillimetre),
          random_(random),
          smeared_(image.size(), QImage::Format_Grayscale8) {
        smeared_.fill(0);
    }

    void smear() {
        const double turn = random_.uniform() * std::numbers::pi;
        const QPointF through = somewhere();
        paint([&](const QPointF& at) {
            const QPointF off = at - through;
            return std::abs(off.x() * std::sin(turn) - off.y() * std::cos(turn)) <= streakWidth / 2 * dots_;
        });
        while (count_ < smearedShare * box_.width() * box_.height()) {
            const double radius = (leastBlot + (mostBlot - leastBlot) * random_.uniform()) / 2 * dots_;
            const QPointF centre = somewhere();
            paint([&](const QPointF& at) { return std::hypot(at.x() - centre.x(), at.y() - centre.y()) <= radius; });
        }
    }

    /// With the light around it, but without the words beside it.
    [[nodiscard]] QImage symbol() const {
        const int quiet = static_cast<int>(1.5 * dots_);
        return image_.copy(box_.adjusted(-quiet, -quiet, quiet, quiet) & image_.rect());
    }
    [[nodiscard]] double share() const { return count_ / (1.0 * box_.width() * box_.height()); }

  private:
    QPointF somewhere() {
        return {box_.left() + random_.uniform() * box_.width(), box_.top() + random_.uniform() * box_.height()};
    }

    template <class IsIn>
    void paint(const IsIn& isIn) {
        const int film = random_.below(2) == 0 ? 0 : 255;
        for (int y = box_.top(); y <= box_.bottom(); ++y)
            for (int x = box_.left(); x <= box_.right(); ++x) {
                if (!isIn(QPointF(x, y)) || smeared_.scanLine(y)[x] != 0) continue;
                image_.scanLine(y)[x] = static_cast<uchar>((image_.scanLine(y)[x] + film) / 2);
                smeared_.scanLine(y)[x] = 1;
                ++count_;
            }
    }

    QImage& image_;
    QRect box_;
    double dots_;
    stats::SeededRandom& random_;
    QImage smeared_;
    int count_{};
};

QImage inBlackAndWhite(const QImage& image, int level) {
    QImage plain = image.convertToFormat(QImage::Format_Grayscale8);
    for (int y = 0; y < plain.height(); ++y)
        for (int x = 0; x < plain.width(); ++x) plain.scanLine(y)[x] = plain.scanLine(y)[x] > level ? 255 : 0;
    return plain;
}

/// As it lies before a hand that does not hold it straight.
QImage turned(const QImage& image, double degrees) {
    const int side = static_cast<int>(1.5 * std::max(image.width(), image.height()));
    QImage look(side, side, QImage::Format_Grayscale8);
    look.fill(Qt::white);
    QPainter painter(&look);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.translate(side / 2.0, side / 2.0);
    painter.rotate(degrees);
    painter.drawImage(QPointF(-image.width() / 2.0, -image.height() / 2.0), image);
    return look;
}

QImage resized(const QImage& image, double times) {
    return image.scaled((times * QSizeF(image.size())).toSize(), Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
}

QString readOnce(const QImage& look, const QTemporaryDir& folder) {
    const QString file = folder.filePath("look.png");
    EXPECT_TRUE(look.save(file));
    QProcess process;
    process.start("zbarimg", {"-q", "--raw", "-Sdisable", "-Sqrcode.enable", file});
    EXPECT_TRUE(process.waitForFinished());
    return QString::fromUtf8(process.readAllStandardOutput()).trimmed();
}

/// A scanner in the hand takes many looks until it has read: at any angle, sharp and a little out of focus, lighter and darker.
QString readBack(const QImage& image, const QTemporaryDir& folder) {
    if (const QString read = readOnce(image, folder); !read.isEmpty()) return read;
    std::vector<QImage> looks;
    for (const double degrees : {10.0, 20.0, 0.0, 30.0})
        for (const QImage& near : {resized(resized(image, 0.7), 2 / 0.7), resized(image, 2)})
            looks.push_back(turned(near, degrees));
    for (const QImage& look : looks)
        if (const QString read = readOnce(look, folder); !read.isEmpty()) return read;
    for (const QImage& look : looks)
        for (const int level : {80, 104, 128, 152, 176})
            if (const QString read = readOnce(inBlackAndWhite(look, level), folder); !read.isEmpty()) return read;
    return {};
}

/// How many of the sheet's labels are read, and of how many.
std::pair<int, int> readSmeared(const LabelStock& stock, int dots, stats::SeededRandom& random) {
    const QTemporaryDir folder;
    const int count = std::clamp(stock.perPage(), 20, 21);
    const std::vector<core::Batch> batches = batchesToLabel(count);
    const std::vector<QImage> pages =
        printedAtDots({.labels = report::labelsOf(batches, examples::smallShelves()), .stock = stock}, dots, folder);
    int read = 0;
    for (int number = 0; number < count; ++number) {
        const QImage& page = pages[static_cast<std::size_t>(number / stock.perPage())];
        QImage label = labelOf(page, stock.place(number), dots / 25.4);
        Smearer smearer(label, dots / 25.4, random);
        smearer.smear();
        EXPECT_GE(smearer.share(), smearedShare);
        const std::string said = readBack(smearer.symbol(), folder).toStdString();
        const std::string& code = batches[static_cast<std::size_t>(number)].code;
        EXPECT_TRUE(said.empty() || said == code) << said << " for " << code;
        read += said == code ? 1 : 0;
    }
    return {read, count};
}

// Measured with this seed: 103 of 103 at 300 dots an inch, 102 of 103 at 203; none is ever read as another batch.
void expectReadButForOneInAHundred(int dots) {
    stats::SeededRandom random(smearSeed);
    SCOPED_TRACE(testing::Message() << "seed " << smearSeed);
    int unread = 0, all = 0;
    for (const LabelStock& stock : report::labelStocks("A4")) {
        const auto [read, count] = readSmeared(stock, dots, random);
        unread += count - read;
        all += count;
        testing::Test::RecordProperty(stock.word.toStdString(), std::to_string(read) + " of " + std::to_string(count));
    }
    EXPECT_GE(all, 5 * 20);
    EXPECT_LE(unread, all / 100);
}

}  // namespace

TEST(SmearedLabels, AreReadAt300DotsAnInchButForOneInAHundred) {
    expectReadButForOneInAHundred(300);
}

TEST(SmearedLabels, AreReadAt203DotsAnInchButForOneInAHundred) {
    expectReadButForOneInAHundred(203);
}
