// SPDX-License-Identifier: MIT
#include "app/desktop/bench/empty_bench.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/desktop/look/look.h"

namespace desktop {

EmptyBench::EmptyBench(QWidget* parent) : QWidget(parent) {
    auto* words =
        new QLabel(tr("This page shows each morning which batches want a look, and what stands in your tubs and trays. "
                      "Nothing is written down yet. "
                      "Begin with a session: what you stuck today, where, and how many."),
                   this);
    words->setObjectName("benchEmpty");
    words->setWordWrap(true);
    words->setMinimumWidth(words->fontMetrics().averageCharWidth() * 40);
    words->setMaximumWidth(words->fontMetrics().averageCharWidth() * 70);
    session_ = makeButton("session", tr("Write down the &first session"), "benchFirstSession");
    session_->setDefault(true);
    station_ = makeButton("station", tr("Describe a &tub or tray"), "benchFirstStation");
    tables_ = makeButton("tables", tr("Bring in ta&bles"), "benchFirstTables");
    connect(session_, &QPushButton::clicked, this, &EmptyBench::sessionWanted);
    connect(station_, &QPushButton::clicked, this, &EmptyBench::stationWanted);
    connect(tables_, &QPushButton::clicked, this, &EmptyBench::tablesWanted);
    auto* column = new QVBoxLayout;
    column->addStretch(1);
    column->addWidget(words);
    column->addSpacing(fontMetrics().height());
    for (QPushButton* button : {session_, station_, tables_}) column->addWidget(button);
    column->addStretch(2);
    auto* layout = new QHBoxLayout(this);
    layout->addStretch(1);
    layout->addLayout(column);
    layout->addStretch(1);
}

QPushButton* EmptyBench::makeButton(const QString& iconName, const QString& text, const QString& name) {
    auto* button = new QPushButton(icon(iconName), text, this);
    button->setObjectName(name);
    button->setMinimumHeight(button->fontMetrics().height() * 2);
    return button;
}

void EmptyBench::setWritable(bool isWritable) {
    for (QPushButton* button : {session_, station_, tables_}) button->setEnabled(isWritable);
}

void EmptyBench::focusFirst() {
    session_->setFocus();
}

}  // namespace desktop
