// SPDX-License-Identifier: MIT
// A figure on a page, with what belongs to each: its figures as a table instead of the picture, copying and saving.
#pragma once

#include <QWidget>
#include <memory>
#include <vector>

#include "app/desktop/page.h"
#include "app/plot/save_figure.h"
#include "app/report/methods/method_note.h"

class QPushButton;
class QStackedWidget;
class QTableView;

namespace plot {
class Figure;
class FigureView;
}  // namespace plot

namespace desktop {

class FigureTableModel;

class FigurePanel : public QWidget {
    Q_OBJECT

  public:
    /// `fileName` is proposed when saving.
    FigurePanel(const QString& name, const PageContext& context, QWidget* parent = nullptr);

    /// `notes` say how it is worked out.
    void setFigure(std::shared_ptr<const plot::Figure> figure, std::vector<report::MethodNote> notes = {});
    void setFileName(const QString& fileName) { fileName_ = fileName; }
    [[nodiscard]] plot::FigureView* view() const { return view_; }
    [[nodiscard]] FigureTableModel* table() const { return table_; }
    void showTable(bool on);

  signals:
    void said(const QString& sentence);

  private:
    void build(const QString& name);
    QWidget* makeButtons(const QString& name);
    void copy();
    void save(plot::FigureFile kind);
    void setReady(bool isReady);

    PageContext context_;
    QString fileName_;
    plot::FigureView* view_{};
    FigureTableModel* table_;
    QStackedWidget* stack_{};
    QTableView* tableView_{};
    std::vector<report::MethodNote> notes_;
    QPushButton* workedOut_{};
    QPushButton* toggle_{};
    QPushButton* copy_{};
    QPushButton* save_{};
};

}  // namespace desktop
