// SPDX-License-Identifier: MIT
// A look hole by hole at one batch, or at all open batches of a station. Nothing is saved before the end; then the whole look is one action
// and one undo. Esc leaves everything as it was; what was marked stands there again the next time.
#pragma once

#include <QDialog>

#include "app/desktop/page.h"

class QCheckBox;
class QComboBox;
class QHBoxLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QStackedWidget;
class QVBoxLayout;

namespace desktop {

class DateEdit;
class FaultLabel;
class MarkButtons;
class PositionLookModel;
class PositionMarkView;

class PositionLookDialog : public QDialog {
    Q_OBJECT

  public:
    /// Begins with the batch whose page is in front in `parent`, else with the station where a look is most due.
    explicit PositionLookDialog(const PageContext& context, QWidget* parent = nullptr);
    PositionLookDialog(const PageContext& context, core::BatchId batch, QWidget* parent = nullptr);
    PositionLookDialog(const PageContext& context, core::StationId station, QWidget* parent = nullptr);

    [[nodiscard]] PositionLookModel& model() const { return *model_; }
    /// Where the batch has no positions yet, giving it some comes first.
    void beginWithPlaces();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void begin(core::StationId station, core::BatchId batch);
    void build();
    QHBoxLayout* makeHead();
    QWidget* makeLeftovers();
    QWidget* makeMap();
    QWidget* makeSide();
    QWidget* makeNothing();
    QVBoxLayout* makeFoot();
    void connectParts();
    void fillStations(core::StationId chosen);
    void fillBatches(core::BatchId chosen);
    void look();
    void showView();
    void jump();
    void place();
    void describeLayout();
    void printMap();
    void save();

    PageContext context_;
    PositionLookModel* model_;
    QComboBox* stations_{};
    QComboBox* batches_{};
    DateEdit* day_{};
    FaultLabel* dayFault_{};
    QWidget* leftovers_{};
    QStackedWidget* pages_{};
    PositionMarkView* view_{};
    MarkButtons* buttons_{};
    QLineEdit* jump_{};
    FaultLabel* jumpFault_{};
    QCheckBox* wasCounted_{};
    QLabel* reminder_{};
    QCheckBox* looksAtAll_{};
    QLabel* why_{};
    QPushButton* place_{};
    QPushButton* describe_{};
    QLineEdit* note_{};
    QLabel* counts_{};
    FaultLabel* fault_{};
    QPushButton* takeBack_{};
    QPushButton* print_{};
    QPushButton* save_{};
};

/// Opens the dialog in front of `parent`.
void lookHoleByHole(const PageContext& context, core::BatchId batch, QWidget* parent);
void lookHoleByHole(const PageContext& context, core::StationId station, QWidget* parent);

}  // namespace desktop
