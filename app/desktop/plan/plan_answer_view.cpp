// SPDX-License-Identifier: MIT
#include "app/desktop/plan/plan_answer_view.h"

#include <QBoxLayout>
#include <QLabel>

#include "app/desktop/figures/figure_panel.h"
#include "app/desktop/names/text_labels.h"
#include "app/report/methods/notes.h"
#include "app/report/plan_words.h"

namespace desktop {

namespace {

constexpr int sideBySideFrom = 95;  // average letters of width

QLabel* wrapped(const QString& name) {
    auto* label = new QLabel;
    label->setObjectName(name);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

}  // namespace

PlanAnswerView::PlanAnswerView(const PageContext& context, QWidget* parent)
    : QScrollArea(parent),
      sides_(new QBoxLayout(QBoxLayout::LeftToRight)),
      answer_(answerLabel(QStringLiteral("planInWords"))),
      when_(wrapped(QStringLiteral("planWhen"))),
      days_(wrapped(QStringLiteral("planDays"))),
      restsOn_(quietLabel(QStringLiteral("planRestsOn"))),
      cautions_(cautionLabel(QStringLiteral("planCautions"))),
      curve_(new FigurePanel(QStringLiteral("planCurve"), context)) {
    setObjectName(QStringLiteral("planAnswerScroll"));
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    auto* words = new QVBoxLayout;
    words->setSpacing(fontMetrics().height() / 2);
    for (QWidget* each : std::initializer_list<QWidget*>{answer_, when_, cautions_, days_, restsOn_})
        words->addWidget(each);
    words->addStretch(1);
    curve_->setMinimumHeight(fontMetrics().height() * 15);
    sides_->addLayout(words, 2);
    sides_->addWidget(curve_, 3);
    auto* content = new QWidget;
    content->setLayout(sides_);
    setWidget(content);
    clear();
    connect(curve_, &FigurePanel::said, this, &PlanAnswerView::said);
}

void PlanAnswerView::show(const core::PlanAnswer& answer, const core::PlanFit* fit) {
    const report::PlanWords words = report::planWords(answer, fit);
    answer_->setText(words.answer);
    answer_->show();
    when_->setText(words.when);
    when_->setVisible(!words.when.isEmpty());
    showCautions(*cautions_, words.cautions);
    days_->setText(words.days.join(u'\n'));
    days_->setVisible(!words.days.isEmpty());
    restsOn_->setText(words.restsOn.join(u'\n'));
    restsOn_->show();
    curve_->setFigure(report::planCurve(answer), answer.howMany ? report::notesOnPlan(*answer.howMany, answer.records)
                                                                : std::vector<report::MethodNote>());
}

void PlanAnswerView::clear() {
    // Nothing empty is left for Tab to stop at.
    for (QLabel* label : {answer_, when_, days_, restsOn_}) {
        label->clear();
        label->hide();
    }
    showCautions(*cautions_, {});
    curve_->setFigure(nullptr);
}

void PlanAnswerView::resizeEvent(QResizeEvent* event) {
    const bool isWide = width() >= fontMetrics().averageCharWidth() * sideBySideFrom;
    sides_->setDirection(isWide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    QScrollArea::resizeEvent(event);
}

}  // namespace desktop
