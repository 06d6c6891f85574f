// SPDX-License-Identifier: MIT
// The round by mouse or finger: steps of one for the row under the cursor, a button for each cause of loss with its letter, and "nothing new".
// Whatever is pressed here stands in the row as if it had been typed.
#pragma once

#include <QString>
#include <QWidget>
#include <functional>
#include <vector>

class QLabel;
class QPushButton;

namespace desktop {

class RoundModel;
class WrappingRow;
class Workspace;

class RoundButtons : public QWidget {
    Q_OBJECT

  public:
    RoundButtons(RoundModel& model, const Workspace& workspace, QWidget* parent = nullptr);

    /// The row that the buttons act on; -1: none.
    void showRow(int row);

  signals:
    /// Before a button acts: what is being typed is to be taken first.
    void aboutToAct();
    /// A step that can't be, and why.
    void refused(const QString& sentence);
    /// Nothing new in this row: the round goes on to the next.
    void nothingNew();

  private:
    using Step = std::function<QString()>;

    QPushButton* makeButton(const QString& text, const QString& name, const QString& meaning);
    void addStepper(WrappingRow& row, const QString& caption, const QString& name, QLabel*& count,
                    const std::function<QString(int)>& step);
    WrappingRow* makeCauses(const Workspace& workspace);
    void act(const Step& step);
    void refresh();

    RoundModel& model_;
    int row_{-1};
    QLabel* batch_{};
    QPushButton* nothing_{};
    QLabel *rooted_{}, *lost_{}, *withdrawn_{};
    std::vector<QPushButton*> buttons_;
};

}  // namespace desktop
