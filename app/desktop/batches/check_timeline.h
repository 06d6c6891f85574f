// SPDX-License-Identifier: MIT
// The checks of the batch that is shown, in order of day: record one, correct one, delete one.
#pragma once

#include <QWidget>

class QLabel;
class QPushButton;
class QTableView;

namespace desktop {

class BatchPageModel;
class CheckTableModel;

class CheckTimeline : public QWidget {
    Q_OBJECT

  public:
    explicit CheckTimeline(BatchPageModel& model, QWidget* parent = nullptr);

    /// What the model has now; the current row is kept where it is still there.
    void show(bool isWritable);
    void chooseNewest();
    void focusTable();
    /// Opens the dialog for a look of today: a new check, or the one that today has already.
    void record();

  signals:
    void said(const QString& sentence);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void build();
    void edit();
    void remove();

    BatchPageModel& model_;
    CheckTableModel* checks_;
    QLabel* caption_{};
    QTableView* table_{};
    QPushButton* edit_{};
    QPushButton* remove_{};
    bool isWritable_{};
};

}  // namespace desktop
