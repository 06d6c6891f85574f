// SPDX-License-Identifier: MIT
// The answer of the Worth it page: the verdict in words, what the prices don't hold, the figures of the methods, what would turn the answer,
// when things are paid for, by plant, what stood empty.
#pragma once

#include <QStackedWidget>
#include <memory>

#include "app/desktop/page.h"

class QLabel;
class QPushButton;
class QTableView;
class QVBoxLayout;

namespace core {
struct Worth;
struct WorthOfPair;
}  // namespace core
namespace plot {
struct FigureTable;
}

namespace desktop {

class FigurePanel;
class FigureTableModel;
class MissingPrices;
class WorthItModel;

class WorthItView : public QStackedWidget {
    Q_OBJECT

  public:
    WorthItView(WorthItModel& model, const PageContext& context, QWidget* parent = nullptr);

  signals:
    void said(const QString& sentence);
    void sessionWanted();
    void pricesWanted();

  private:
    struct WorthTable {
        QTableView* view{};
        FigureTableModel* model{};
    };

    QWidget* makeAnswer(const PageContext& context);
    void addRest(QVBoxLayout& layout);
    QWidget* makeEmpty();
    WorthTable makeTable(const QString& name, const QString& accessibleName);
    FigurePanel* makeFigure(const QString& name, const PageContext& context);
    static QLabel* makeWords(const QString& name);
    static void fill(const WorthTable& table, plot::FigureTable figures, int columnsOfWords);

    void showState();
    void showWorth(const core::Worth& worth);
    void showPair(const core::WorthOfPair& pair, double level);
    void showPayOff();
    void hidePair();
    /// One button: of a session or of prices; none where `text` is empty.
    void showEmpty(const QString& title, const QString& text, bool leadsToPrices = false);

    WorthItModel& model_;
    std::shared_ptr<const core::Worth> shown_;
    int shownPair_{-1};
    QLabel *headline_{}, *inWords_{}, *cautions_{};
    MissingPrices* missing_{};
    WorthTable methods_, byPlant_, stoodEmpty_;
    FigurePanel *parts_{}, *plane_{}, *payOff_{}, *plantParts_{};
    QLabel *plantHeading_{}, *stoodEmptyHeading_{};
    QLabel *emptyTitle_{}, *emptyText_{};
    QPushButton *session_{}, *prices_{};
};

}  // namespace desktop
