// SPDX-License-Identifier: MIT
#include "app/desktop/bench/empty_bench.h"

#include <QEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/desktop/look/look.h"

namespace desktop {

EmptyBench::EmptyBench(QWidget* parent) : QWidget(parent) {
    words_ =
        new QLabel(tr("This page shows each morning which batches want a look, and what stands in your tubs and trays. "
                      "Nothing is written down yet. "
                      "Begin with a session: what you stuck today, where, and how many."),
                   this);
    words_->setObjectName("benchEmpty");
    words_->setWordWrap(true);
    session_ = makeButton("session", tr("Write down the &first session"), "benchFirstSession");
    session_->setDefault(true);
    station_ = makeButton("station", tr("Describe a &tub or tray"), "benchFirstStation");
    tables_ = makeButton("tables", tr("Bring in ta&bles"), "benchFirstTables");
    connect(session_, &QPushButton::clicked, this, &EmptyBench::sessionWanted);
    connect(station_, &QPushButton::clicked, this, &EmptyBench::stationWanted);
    connect(tables_, &QPushButton::clicked, this, &EmptyBench::tablesWanted);
    auto* column = new QVBoxLayout;
    column->addStretch(1);
    column->addWidget(words_);
    column->addSpacing(fontMetrics().height());
    for (QPushButton* button : {session_, station_, tables_}) column->addWidget(button);
    column->addStretch(2);
    auto* layout = new QHBoxLayout(this);
    layout->addStretch(1);
    layout->addLayout(column);
    layout->addStretch(1);
    fit();
}

void EmptyBench::fit() {
    words_->setMinimumWidth(fontMetrics().averageCharWidth() * 40);
    words_->setMaximumWidth(fontMetrics().averageCharWidth() * 70);
    for (QPushButton* button : {session_, station_, tables_}) button->setMinimumHeight(fontMetrics().height() * 2);
}

void EmptyBench::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) fit();
}

QPushButton* EmptyBench::makeButton(const QString& iconName, const QString& text, const QString& name) {
    auto* button = new QPushButton(icon(iconName), text, this);
    button->setObjectName(name);
    return button;
}

void EmptyBench::setWritable(bool isWritable) {
    for (QPushButton* button : {session_, station_, tables_}) button->setEnabled(isWritable);
}

void EmptyBench::focusFirst() {
    session_->setFocus();
}

}  // namespace desktop
