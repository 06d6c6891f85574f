// SPDX-License-Identifier: MIT
// The answer of the head-to-head page, in the order in which a grower asks: which and by how much, how sure, how fast, for which plants;
// and all figures behind it.
#pragma once

#include <QStackedWidget>

#include "app/desktop/page.h"

class QComboBox;
class QLabel;
class QPushButton;
class QTableView;
class QVBoxLayout;

namespace core {
struct Comparison;
}

namespace desktop {

class ArmTableModel;
class FigurePanel;
class HeadToHeadModel;
class PairTable;
class RecordsParts;

class ComparisonView : public QStackedWidget {
    Q_OBJECT

  public:
    ComparisonView(HeadToHeadModel& model, const PageContext& context, QWidget* parent = nullptr);

  signals:
    void said(const QString& sentence);
    void sessionWanted();

  private:
    QWidget* makeAnswer(const PageContext& context);
    QWidget* makeEmpty();
    QTableView* makeTable(const QString& name, const QString& accessibleName);
    FigurePanel* makeFigure(const QString& name, const PageContext& context);
    void addPairChooser(QVBoxLayout& layout);
    void addAllFigures(QVBoxLayout& layout);
    void showView();
    void showEmpty(const QString& title, const QString& text, bool offersSession);
    void showAnswer(const core::Comparison& comparison);
    void fillPairs(const core::Comparison& comparison);
    void showPair();

    HeadToHeadModel& model_;
    ArmTableModel* arms_;
    std::shared_ptr<const core::Comparison> shown_;
    QLabel* inWords_{};
    QLabel* cautions_{};
    QTableView* armTable_{};
    QWidget* pairRow_{};
    QComboBox* pair_{};
    QLabel* several_{};
    FigurePanel *rates_{}, *difference_{}, *curves_{}, *speed_{}, *forest_{};
    RecordsParts* records_{};
    QPushButton* allFigures_{};
    PairTable* pairTable_{};
    QLabel *emptyTitle_{}, *emptyText_{};
    QPushButton* emptyButton_{};
};

}  // namespace desktop
