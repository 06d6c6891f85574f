// SPDX-License-Identifier: MIT
// The answer beside the fields: what to measure out, large enough to read at arm's length, what rounding does to it, what to mind, how it was
// worked out, what to compare it with.
#pragma once

#include <QWidget>

#include "app/desktop/mix/mix_questions.h"

class QGridLayout;
class QLabel;
class QVBoxLayout;

namespace desktop {

class LidView;

class MixAnswerView : public QWidget {
    Q_OBJECT

  public:
    explicit MixAnswerView(QWidget* parent = nullptr);

    void show(const MixReply& reply);
    /// What stands there while there is no answer.
    void showHint(const QString& hint);

  private:
    void showAmounts(const std::vector<report::MixAmount>& amounts);
    void showTables(const std::vector<report::Table>& tables);
    void clear();

    QLabel* hint_;
    QLabel* title_;
    QGridLayout* amounts_;
    QLabel* results_;
    QLabel* cautions_;
    QLabel* remarks_;
    LidView* lid_;
    QLabel* workingsHead_;
    QLabel* sumsIn_;
    QLabel* workings_;
    QVBoxLayout* tables_;
    std::vector<QLabel*> amountLabels_;
    std::vector<QWidget*> tableWidgets_;
};

}  // namespace desktop
