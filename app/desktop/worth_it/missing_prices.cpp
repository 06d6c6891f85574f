// SPDX-License-Identifier: MIT
#include "app/desktop/worth_it/missing_prices.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/names/text_labels.h"

namespace desktop {

namespace {

constexpr int mostLines = 4;  // more say the same of other days

}  // namespace

MissingPrices::MissingPrices(QWidget* parent) : QWidget(parent), more_(quietLabel(QStringLiteral("missingMore"))) {
    setObjectName(QStringLiteral("missingPrices"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    for (int line = 0; line < mostLines; ++line) addLine();
    layout->addWidget(more_);
    hide();
}

void MissingPrices::addLine() {
    Line line;
    line.row = new QWidget;
    line.sentence = new QLabel;
    line.sentence->setObjectName(QStringLiteral("missingSentence"));
    line.sentence->setTextFormat(Qt::PlainText);
    line.sentence->setWordWrap(true);
    line.sentence->setTextInteractionFlags(Qt::TextSelectableByMouse);
    line.button = new QPushButton(tr("To the prices"));
    line.button->setObjectName(QStringLiteral("missingButton"));
    connect(line.button, &QPushButton::clicked, this, &MissingPrices::pricesWanted);
    auto* row = new QHBoxLayout(line.row);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(line.sentence, 1);
    row->addWidget(line.button, 0, Qt::AlignTop);
    layout()->addWidget(line.row);
    lines_.push_back(line);
}

void MissingPrices::showSentences(const std::vector<std::string>& sentences) {
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        const bool isThere = i < sentences.size();
        lines_[i].row->setVisible(isThere);
        if (!isThere) continue;
        lines_[i].sentence->setText(QString::fromStdString(sentences[i]));
        lines_[i].button->setAccessibleDescription(lines_[i].sentence->text());
    }
    const int more = static_cast<int>(sentences.size()) - mostLines;
    more_->setVisible(more > 0);
    if (more > 0) more_->setText(tr("and %n more that the prices don\u2019t hold", nullptr, more));
    setVisible(!sentences.empty());
}

}  // namespace desktop
