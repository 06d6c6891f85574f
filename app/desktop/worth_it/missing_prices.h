// SPDX-License-Identifier: MIT
// What the sums don't hold though it was there, one sentence a line, each with a button that leads to the prices. Gone while nothing is missing.
#pragma once

#include <QWidget>
#include <string>
#include <vector>

class QLabel;
class QPushButton;

namespace desktop {

class MissingPrices : public QWidget {
    Q_OBJECT

  public:
    explicit MissingPrices(QWidget* parent = nullptr);

    void showSentences(const std::vector<std::string>& sentences);

  signals:
    void pricesWanted();

  private:
    struct Line {
        QWidget* row{};
        QLabel* sentence{};
        QPushButton* button{};
    };
    void addLine();

    std::vector<Line> lines_;  // those beyond the sentences are hidden
    QLabel* more_;
};

}  // namespace desktop
