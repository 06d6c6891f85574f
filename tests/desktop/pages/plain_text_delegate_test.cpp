// SPDX-License-Identifier: MIT
#include "app/desktop/names/plain_text_delegate.h"

#include <QApplication>
#include <QHeaderView>
#include <QImage>
#include <QPainter>
#include <QStandardItemModel>
#include <QTableView>

#include "app/desktop/look/edged_style.h"
#include "app/desktop/look/look.h"
#include "app/desktop/names/cell_text.h"
#include "app/desktop/names/plant_name_delegate.h"
#include "app/desktop/widgets/table_manners.h"
#include "gtest/gtest.h"

namespace {

constexpr int rightOfDrawn = 2;

struct DrawnCase {
    const char* name;
    desktop::Theme theme;
    Qt::LayoutDirection direction;
    int width;  // of a column: all of the words, or not
    int points;
};

/// A table of names and figures, with a row that is chosen and has the focus; as the batches have it.
class DrawnTable {
  public:
    explicit DrawnTable(const DrawnCase& drawn) {
        for (int row = 0; row < 6; ++row)
            model_.appendRow({item("B26004" + QString::number(row)), item("Salvia microphylla"),
                              item(QString::number(17 * row), Qt::AlignRight), item(QString())});
        table_.setStyle(&style_);
        table_.setModel(&model_);
        table_.setPalette(desktop::paletteFor(drawn.theme));
        table_.setLayoutDirection(drawn.direction);
        QFont font = table_.font();
        font.setPointSize(drawn.points);
        table_.setFont(font);
        desktop::giveTableManners(table_);
        for (int column = 0; column < model_.columnCount(); ++column) table_.setColumnWidth(column, drawn.width);
        table_.resize(4 * drawn.width, 300);
        table_.show();
        QApplication::setActiveWindow(&table_);
        table_.setFocus();
        table_.setCurrentIndex(model_.index(2, 0));
        table_.setCurrentIndex(model_.index(3, rightOfDrawn));
    }

    QImage withPlain() { return drawnBy(new desktop::PlainTextDelegate(-1, &table_)); }
    QImage withStyle() { return drawnBy(new QStyledItemDelegate(&table_)); }
    QTableView& table() { return table_; }

  private:
    static QStandardItem* item(const QString& text, Qt::Alignment side = Qt::AlignLeft) {
        auto* made = new QStandardItem(text);
        made->setData(QVariant::fromValue(side | Qt::AlignVCenter), Qt::TextAlignmentRole);
        return made;
    }
    QImage drawnBy(QAbstractItemDelegate* delegate) {
        table_.setItemDelegate(delegate);
        return table_.viewport()->grab().toImage();
    }

    desktop::EdgedStyle style_;
    QStandardItemModel model_;
    QTableView table_;
};

class PlainTextCells : public testing::TestWithParam<DrawnCase> {};

TEST_P(PlainTextCells, LookAsTheStyleDrawsThem) {
    DrawnTable drawn(GetParam());
    EXPECT_EQ(drawn.withPlain(), drawn.withStyle());
    EXPECT_EQ(drawn.withPlain(), drawn.withStyle()) << "the second time, from what was kept";
    drawn.table().clearFocus();
    EXPECT_EQ(drawn.withPlain(), drawn.withStyle()) << "without the focus";
    drawn.table().setEnabled(false);
    EXPECT_EQ(drawn.withPlain(), drawn.withStyle()) << "disabled";
}

INSTANTIATE_TEST_SUITE_P(InEveryLook, PlainTextCells,
                         testing::Values(DrawnCase{"light", desktop::Theme::Light, Qt::LeftToRight, 160, 10},
                                         DrawnCase{"dark", desktop::Theme::Dark, Qt::LeftToRight, 160, 10},
                                         DrawnCase{"contrast", desktop::Theme::HighContrast, Qt::LeftToRight, 160, 10},
                                         DrawnCase{"large", desktop::Theme::Light, Qt::LeftToRight, 320, 20},
                                         DrawnCase{"narrow", desktop::Theme::Light, Qt::LeftToRight, 50, 10},
                                         DrawnCase{"fromTheRight", desktop::Theme::Light, Qt::RightToLeft, 160, 10},
                                         DrawnCase{"narrowFromTheRight", desktop::Theme::Dark, Qt::RightToLeft, 50,
                                                   10}),
                         [](const auto& drawn) { return std::string(drawn.param.name); });

QImage drawnName(Qt::LayoutDirection direction, int width, const QString& name) {
    QImage image(width, 24, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setLayoutDirection(direction);
    QStyleOptionViewItem option;
    option.direction = direction;
    option.palette = desktop::paletteFor(desktop::Theme::Light);
    option.state = QStyle::State_Enabled | QStyle::State_Active;
    desktop::drawPlantNameIn(image.rect(), painter, option, name);
    return image;
}

int firstInk(const QImage& image) {
    for (int x = 0; x < image.width(); ++x)
        for (int y = 0; y < image.height(); ++y)
            if (image.pixelColor(x, y) != Qt::white) return x;
    return image.width();
}

TEST(PlantNames, ReadTheSameWhereTheTableIsReadFromTheRight) {
    const QString name = QStringLiteral("Weigela florida 'Fennow Ember'");
    constexpr int room = 400;
    const QImage fromLeft = drawnName(Qt::LeftToRight, room, name);
    const QImage fromRight = drawnName(Qt::RightToLeft, room, name);
    const int moved = firstInk(fromRight) - firstInk(fromLeft);
    EXPECT_GT(moved, 0) << "stands at the right";
    EXPECT_EQ(fromRight.copy(moved, 0, room - moved, 24), fromLeft.copy(0, 0, room - moved, 24));
    EXPECT_EQ(drawnName(Qt::RightToLeft, 60, name), drawnName(Qt::LeftToRight, 60, name)) << "shortened";
}

TEST(CellText, HasOneLineWhateverItHolds) {
    QImage image(200, 60, QImage::Format_RGB32);
    QPainter painter(&image);
    const auto drawn = [&](const QString& text) {
        image.fill(Qt::white);
        desktop::drawCellText(painter, image.rect(), Qt::AlignLeft, Qt::LeftToRight, text);
        return image.copy();
    };
    EXPECT_EQ(drawn(QStringLiteral("one\ntwo")), drawn(QStringLiteral("one two")));
    EXPECT_EQ(firstInk(drawn(QString())), image.width());
}

}  // namespace
