// SPDX-License-Identifier: MIT
#include "app/desktop/mix/mix_answer_view.h"

#include <QGridLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/template/lid_view.h"

namespace desktop {

namespace {

QLabel* mixWords(const QString& name) {
    auto* label = new QLabel;
    label->setObjectName(name);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

void saying(QLabel& label, const QString& words) {
    label.setText(words);
    label.setVisible(!words.isEmpty());
}

/// Not a table to work in: nothing for Tab to stop at.
QWidget* tableToRead(const report::Table& table) {
    auto* widget = new QWidget;
    widget->setObjectName(QStringLiteral("mixTable"));
    auto* grid = new QGridLayout(widget);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(widget->fontMetrics().height());
    const int columns = static_cast<int>(table.headings.size());
    auto* title = mixWords({});
    title->setText(table.title);
    if (table.title.isEmpty()) title->hide();
    grid->addWidget(title, 0, 0, 1, columns);
    for (int column = 0; column < columns; ++column) {
        const bool isRight = table.aligned[static_cast<std::size_t>(column)] == report::Align::Right;
        const Qt::Alignment alignment = (isRight ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignTop;
        auto* heading = quietLabel({});
        heading->setWordWrap(false);
        heading->setText(table.headings[column]);
        grid->addWidget(heading, 1, column, alignment);
        const bool isRest = column == table.restColumn;
        for (std::size_t row = 0; row < table.rows.size(); ++row) {
            auto* cell = isRest ? quietLabel({}) : mixWords({});
            cell->setWordWrap(isRest);
            cell->setText(table.rows[row][column]);
            grid->addWidget(cell, static_cast<int>(row) + 2, column, isRest ? Qt::Alignment() : alignment);
        }
    }
    grid->setColumnStretch(table.restColumn >= 0 ? table.restColumn : columns, 1);
    return widget;
}

}  // namespace

MixAnswerView::MixAnswerView(QWidget* parent)
    : QWidget(parent),
      hint_(quietLabel(QStringLiteral("mixHint"))),
      title_(largeLabel(QStringLiteral("mixTitle"), 1.2)),
      amounts_(new QGridLayout),
      results_(answerLabel(QStringLiteral("mixResults"))),
      cautions_(cautionLabel(QStringLiteral("mixCautions"))),
      remarks_(mixWords(QStringLiteral("mixRemarks"))),
      lid_(new LidView),
      workingsHead_(largeLabel(QStringLiteral("mixWorkingsHead"), 1.1)),
      sumsIn_(quietLabel(QStringLiteral("mixSumsIn"))),
      workings_(mixWords(QStringLiteral("mixWorkings"))),
      tables_(new QVBoxLayout) {
    title_->setWordWrap(true);
    workingsHead_->setText(tr("How it is worked out"));
    lid_->setObjectName(QStringLiteral("mixLid"));
    const int line = fontMetrics().height();
    amounts_->setHorizontalSpacing(line);
    amounts_->setColumnStretch(2, 1);
    tables_->setSpacing(line);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(line / 2);
    layout->addWidget(hint_);
    layout->addWidget(title_);
    layout->addLayout(amounts_);
    for (QWidget* each :
         std::initializer_list<QWidget*>{results_, cautions_, remarks_, lid_, workingsHead_, sumsIn_, workings_})
        layout->addWidget(each);
    layout->addLayout(tables_);
    layout->addStretch(1);
    clear();
}

void MixAnswerView::showAmounts(const std::vector<report::MixAmount>& amounts) {
    constexpr std::size_t columns = 3;
    while (amountLabels_.size() > amounts.size() * columns) {
        delete amountLabels_.back();
        amountLabels_.pop_back();
    }
    while (amountLabels_.size() < amounts.size() * columns) {
        const std::size_t at = amountLabels_.size(), column = at % columns;
        QLabel* label = column == 1 ? largeLabel({}, 1.6) : column == 0 ? mixWords({}) : quietLabel({});
        label->setObjectName(QStringLiteral("mixAmount_%1_%2").arg(at / columns).arg(column));
        label->setWordWrap(column != 1);
        if (column == 0) label->setMinimumWidth(fontMetrics().averageCharWidth() * 20);
        amounts_->addWidget(label, static_cast<int>(at / columns), static_cast<int>(column),
                            column == 1 ? Qt::AlignRight | Qt::AlignVCenter : Qt::Alignment());
        label->show();  // at once, not with the next turn of events
        amountLabels_.push_back(label);
    }
    for (std::size_t row = 0; row < amounts.size(); ++row) {
        amountLabels_[row * columns]->setText(amounts[row].what);
        amountLabels_[row * columns + 1]->setText(amounts[row].take);
        amountLabels_[row * columns + 2]->setText(
            tr("%1 worked out", "7.04 g, before it was rounded").arg(amounts[row].workedOut));
    }
}

void MixAnswerView::showTables(const std::vector<report::Table>& tables) {
    for (QWidget* widget : tableWidgets_) delete widget;
    tableWidgets_.clear();
    for (const report::Table& table : tables) {
        tableWidgets_.push_back(tableToRead(table));
        tables_->addWidget(tableWidgets_.back());
        tableWidgets_.back()->show();
    }
}

void MixAnswerView::clear() {
    for (QLabel* label : {title_, results_, cautions_, remarks_, sumsIn_, workings_}) saying(*label, {});
    workingsHead_->hide();
    lid_->hide();
    showAmounts({});
    showTables({});
}

void MixAnswerView::showHint(const QString& hint) {
    clear();
    saying(*hint_, hint);
}

void MixAnswerView::show(const MixReply& reply) {
    const report::MixAnswer& answer = *reply.answer;
    hint_->hide();
    saying(*title_, answer.title);
    showAmounts(answer.amounts);
    saying(*results_, answer.results.join(u'\n'));
    std::vector<std::string> cautions;
    for (const QString& caution : report::cautionsOf(answer)) cautions.push_back(caution.toStdString());
    showCautions(*cautions_, cautions);
    saying(*remarks_, report::remarksOf(answer).join(u'\n'));
    lid_->setVisible(reply.lid.has_value());
    if (reply.lid) lid_->show(reply.lid->lid, reply.lid->layout, reply.lid->words);
    workingsHead_->show();
    saying(*sumsIn_, answer.sumsIn);
    saying(*workings_, report::workingsOf(answer).join(QStringLiteral("\n\n")));
    showTables(answer.tables);
}

}  // namespace desktop
