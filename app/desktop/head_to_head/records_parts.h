// SPDX-License-Identifier: MIT
// What a comparison's records say beyond the arms: a series of doses each, and what went with rooting; words first, then the figure.
#pragma once

#include <QWidget>
#include <memory>
#include <vector>

#include "app/desktop/page.h"
#include "app/report/methods/method_note.h"

class QLabel;
class QVBoxLayout;

namespace core {
struct Comparison;
}
namespace plot {
class Figure;
}

namespace desktop {

class FigurePanel;

class RecordsParts : public QWidget {
    Q_OBJECT

  public:
    explicit RecordsParts(const PageContext& context, QWidget* parent = nullptr);

    void show(const core::Comparison& comparison);
    using QWidget::show;

  signals:
    void said(const QString& sentence);

  private:
    struct Part {
        QLabel* words{};
        FigurePanel* figure{};
    };

    Part makePart(const QString& name);
    static void fill(const Part& part, const QString& words, std::shared_ptr<const plot::Figure> figure,
                     std::vector<report::MethodNote> notes);

    PageContext context_;
    QVBoxLayout* layout_{};
    QVBoxLayout* doseLayout_{};
    std::vector<Part> doses_;  // those beyond the series that are shown are hidden
    Part goesWith_;
};

}  // namespace desktop
