// SPDX-License-Identifier: MIT
// A row that goes on below where there is no room for all of it: buttons and fields on narrow screens and with large text. Widgets keep
// their order, so that Tab goes as the eye does.
#pragma once

#include <QLayout>
#include <QList>

namespace desktop {

class WrappingRow : public QLayout {
  public:
    explicit WrappingRow(QWidget* parent = nullptr);
    ~WrappingRow() override;

    void insertWidget(int place, QWidget* widget);
    /// The widget added next, and those after it, go to the end of the line while all fit into one.
    void pushToEnd() { pushedFrom_ = count(); }

    void addItem(QLayoutItem* item) override;
    [[nodiscard]] int count() const override { return static_cast<int>(items_.size()); }
    [[nodiscard]] QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;     // all in one line
    [[nodiscard]] QSize minimumSize() const override;  // the widest alone
    void setGeometry(const QRect& rect) override;

  private:
    struct Line {
        QList<QLayoutItem*> items;
        int width{};  // with what is between them
        int height{};
    };
    [[nodiscard]] QList<Line> linesIn(int width) const;
    void place(const Line& line, const QRect& room, int pushed) const;
    [[nodiscard]] int gap() const;

    QList<QLayoutItem*> items_;
    int pushedFrom_{-1};
};

}  // namespace desktop
