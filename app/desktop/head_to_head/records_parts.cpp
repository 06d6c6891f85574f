// SPDX-License-Identifier: MIT
#include "app/desktop/head_to_head/records_parts.h"

#include <QLabel>
#include <QVBoxLayout>
#include <utility>

#include "app/desktop/figures/figure_panel.h"
#include "app/plot/dose_figure.h"
#include "app/plot/goes_with_figure.h"
#include "app/report/losses_words.h"
#include "app/report/methods/notes.h"
#include "core/comparison/comparison.h"

namespace desktop {

namespace {

/// What is made later comes last to Tab; here it comes before `next`.
void tabBefore(const QWidget& next, const QWidget& part) {
    QWidget* before = next.previousInFocusChain();
    while (before != &next && (before->focusPolicy() & Qt::TabFocus) == 0) before = before->previousInFocusChain();
    for (QWidget* each : part.findChildren<QWidget*>())
        if ((each->focusPolicy() & Qt::TabFocus) != 0) {
            QWidget::setTabOrder(before, each);
            before = each;
        }
}

}  // namespace

RecordsParts::RecordsParts(const PageContext& context, QWidget* parent)
    : QWidget(parent), context_(context), layout_(new QVBoxLayout(this)), doseLayout_(new QVBoxLayout) {
    const int gap = fontMetrics().height() * 2 / 3;
    for (QVBoxLayout* layout : {layout_, doseLayout_}) {
        layout->setContentsMargins(0, 0, 0, 0);
        layout->setSpacing(gap);
    }
    layout_->addLayout(doseLayout_);
    goesWith_ = makePart(QStringLiteral("goesWithFigure"));
    layout_->addWidget(goesWith_.words);
    layout_->addWidget(goesWith_.figure);
}

RecordsParts::Part RecordsParts::makePart(const QString& name) {
    auto* words = new QLabel;
    words->setObjectName(name + QStringLiteral("Words"));
    words->setTextFormat(Qt::PlainText);
    words->setWordWrap(true);
    words->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* figure = new FigurePanel(name, context_);
    connect(figure, &FigurePanel::said, this, &RecordsParts::said);
    return {words, figure};
}

void RecordsParts::show(const core::Comparison& comparison) {
    while (doses_.size() < comparison.doses.size()) {
        doses_.push_back(makePart(QStringLiteral("doseFigure%1").arg(doses_.size() + 1)));
        doseLayout_->addWidget(doses_.back().words);
        doseLayout_->addWidget(doses_.back().figure);
        tabBefore(*goesWith_.words, *doses_.back().figure);
    }
    for (std::size_t i = 0; i < doses_.size(); ++i) {
        const bool isShown = i < comparison.doses.size();
        if (isShown) {
            const core::DoseSeries& series = comparison.doses[i];
            fill(doses_[i], QString::fromStdString(series.inWords), plot::doseFigure(series, comparison.level),
                 report::notesOnDoses(series, comparison.level));
        }
        doses_[i].words->setVisible(isShown);
        doses_[i].figure->setVisible(isShown);
    }
    const core::GoesWith& answer = comparison.goesWith;
    fill(goesWith_, report::goesWithText(answer), plot::goesWithFigure(answer, comparison.level),
         report::notesOnGoesWith(answer, comparison.level));
    // Where there is no regression the words say why; an empty picture would only take room.
    goesWith_.figure->setVisible(!answer.associations.empty());
}

void RecordsParts::fill(const Part& part, const QString& words, std::shared_ptr<const plot::Figure> figure,
                        std::vector<report::MethodNote> notes) {
    part.words->setText(words);
    part.words->setVisible(!words.isEmpty());
    part.figure->setFigure(std::move(figure), std::move(notes));
}

}  // namespace desktop
