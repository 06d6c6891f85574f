// SPDX-License-Identifier: MIT
// An icon from an SVG drawn in black, painted in the colour that text has in the application's palette at that moment,
// so that one drawing serves light, dark and high contrast, and follows when the look changes.
#pragma once

#include <QIconEngine>
#include <QString>

namespace desktop {

class DrawnIcon : public QIconEngine {
  public:
    explicit DrawnIcon(QString file) : file_(std::move(file)) {}

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State state) override;
    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override;
    QPixmap scaledPixmap(const QSize& size, QIcon::Mode mode, QIcon::State state, qreal scale) override;
    [[nodiscard]] QIconEngine* clone() const override { return new DrawnIcon(file_); }

  private:
    QString file_;
};

}  // namespace desktop
