// SPDX-License-Identifier: MIT
#include "app/desktop/names/text_labels.h"

#include <QEvent>
#include <QGuiApplication>
#include <functional>

#include "app/desktop/look/look.h"

namespace desktop {

namespace {

/// Takes its colours anew whenever the desktop turns light or dark.
class LookingLabel : public QLabel {
  public:
    explicit LookingLabel(std::function<void(QLabel&)> dress) : dress_(std::move(dress)) { dressUp(); }

  protected:
    void changeEvent(QEvent* event) override {
        QLabel::changeEvent(event);
        if (event->type() == QEvent::ApplicationPaletteChange || event->type() == QEvent::ParentChange) dressUp();
    }

  private:
    void dressUp() {
        setPalette({});
        dress_(*this);
    }

    std::function<void(QLabel&)> dress_;
};

void makeQuiet(QLabel& label) {
    QPalette quiet = QGuiApplication::palette();  // the label's own still is the old one when the look has just changed
    quiet.setColor(QPalette::WindowText, quietColour(quiet));
    label.setPalette(quiet);
}

void makeCautious(QLabel& label) {
    QPalette marked = QGuiApplication::palette();
    marked.setColor(QPalette::Window, noteBackground(marked));
    label.setPalette(marked);
    label.setAutoFillBackground(true);
}

}  // namespace

QLabel* largeLabel(const QString& name, double times) {
    auto* label = new QLabel;
    label->setObjectName(name);
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    QFont large = label->font();
    large.setPointSizeF(large.pointSizeF() * times);
    large.setBold(true);
    label->setFont(large);
    return label;
}

QLabel* answerLabel(const QString& name) {
    QLabel* label = largeLabel(name, 1.15);
    QFont plain = label->font();
    plain.setBold(false);
    label->setFont(plain);
    label->setWordWrap(true);
    return label;
}

QLabel* quietLabel(const QString& name) {
    auto* label = new LookingLabel(makeQuiet);
    label->setObjectName(name);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

QLabel* quietLabelSaying(const QString& text) {
    QLabel* label = quietLabel({});
    label->setWordWrap(false);
    label->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    label->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Expanding);  // so that it stands beside the first line
    label->setText(text);
    return label;
}

QLabel* cautionLabel(const QString& name) {
    auto* label = new LookingLabel(makeCautious);
    label->setObjectName(name);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    label->setMargin(label->fontMetrics().height() / 2);
    label->hide();
    return label;
}

void showCautions(QLabel& label, const std::vector<std::string>& cautions) {
    QStringList lines;
    if (cautions.size() == 1)
        lines.append(QLabel::tr("Caution: %1").arg(QString::fromStdString(cautions.front())));
    else if (!cautions.empty())
        lines.append(QLabel::tr("Cautions"));
    if (cautions.size() > 1)
        for (const std::string& caution : cautions)
            lines.append(QStringLiteral("\u2013 ") + QString::fromStdString(caution));
    label.setText(lines.join(QLatin1Char('\n')));
    label.setVisible(!lines.isEmpty());
}

QString sentencesOf(const core::Refusals& refusals) {
    QStringList sentences;
    for (const core::Refusal& refusal : refusals) sentences.append(QString::fromStdString(refusal.sentence));
    return sentences.join(QLatin1Char(' '));
}

}  // namespace desktop
