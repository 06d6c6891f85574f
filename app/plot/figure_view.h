// SPDX-License-Identifier: MIT
// Shows a figure in a window: follows light and dark, tells the figures near the mouse, offers copying and saving in
// its context menu (also by the Menu key), and tells screen readers the figure's sentence. It asks no questions: where
// to save is its owner's to ask.
#pragma once

#include <QPoint>
#include <QSize>
#include <QString>
#include <QWidget>
#include <memory>

#include "app/plot/figure.h"
#include "app/plot/save_figure.h"

class QMenu;

namespace plot {

class FigureView : public QWidget {
    Q_OBJECT

  public:
    explicit FigureView(QWidget* parent = nullptr);

    /// nullptr: shows the empty text.
    void setFigure(std::shared_ptr<const Figure> figure);
    [[nodiscard]] std::shared_ptr<const Figure> figure() const { return figure_; }
    /// What would be here, and why it isn't.
    void setEmptyText(const QString& text);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    /// The figures near a place in the widget; empty where there are none.
    [[nodiscard]] QString hintAt(const QPoint& place) const;
    /// What the context menu holds; the caller owns it.
    [[nodiscard]] std::unique_ptr<QMenu> makeMenu();

  public slots:
    void copyPicture();
    void copyTable();
    /// Throws db::LogbookError as saveFigure() does.
    void saveAs(const QString& file, plot::FigureFile kind);

  signals:
    /// Chosen in the menu: ask for a file, then call saveAs().
    void saveRequested(plot::FigureFile kind);
    /// Chosen in the menu: show figure()->table() beside the picture.
    void tableRequested();

  protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;

  private:
    void tellAccessibility();

    std::shared_ptr<const Figure> figure_;
    Drawing drawing_;
    QString emptyText_;
};

}  // namespace plot
