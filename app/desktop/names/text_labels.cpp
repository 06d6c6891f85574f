// SPDX-License-Identifier: MIT
#include "app/desktop/names/text_labels.h"

#include <QApplication>
#include <QEvent>
#include <functional>

#include "app/desktop/look/look.h"

namespace desktop {

namespace {

/// Takes its colours anew whenever the desktop turns light or dark. It sets the one role that it changes and no other: a label
/// whose every role is its own is never told that the palette around it has changed.
class LookingLabel : public QLabel {
  public:
    using Dress = std::function<QPalette(const QPalette& around)>;
    explicit LookingLabel(Dress dress) : dress_(std::move(dress)) { dressUp(); }

  protected:
    void changeEvent(QEvent* event) override {
        QLabel::changeEvent(event);
        if (event->type() == QEvent::PaletteChange || event->type() == QEvent::ParentChange) dressUp();
    }

  private:
    void dressUp() {
        if (isDressing_) return;
        isDressing_ = true;
        setPalette({});
        setPalette(dress_(palette()));
        isDressing_ = false;
    }

    Dress dress_;
    bool isDressing_{};
};

/// Larger than the text around it by a factor, also after the text size was changed.
class EnlargedLabel : public QLabel {
  public:
    EnlargedLabel(double times, bool isBold) : times_(times), isBold_(isBold) {
        setTextFormat(Qt::PlainText);
        setTextInteractionFlags(Qt::TextSelectableByMouse);
        enlarge();
    }

  protected:
    // A label with a size of its own isn't told that the text size has changed; what it stands on is.
    void changeEvent(QEvent* event) override {
        QLabel::changeEvent(event);
        if (event->type() == QEvent::ParentChange && parentWidget() != nullptr)
            parentWidget()->installEventFilter(this);
    }
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::FontChange) enlarge();
        return QLabel::eventFilter(watched, event);
    }

  private:
    void enlarge() {
        QFont large = QApplication::font();
        large.setPointSizeF(large.pointSizeF() * times_);
        large.setBold(isBold_);
        if (large != font()) setFont(large);
    }

    double times_;
    bool isBold_;
};

QPalette quietly(const QPalette& around) {
    QPalette quiet;
    quiet.setColor(QPalette::WindowText, quietColour(around));
    return quiet;
}

QPalette cautiously(const QPalette& around) {
    QPalette marked;
    marked.setColor(QPalette::Window, noteBackground(around));
    return marked;
}

}  // namespace

QLabel* largeLabel(const QString& name, double times) {
    auto* label = new EnlargedLabel(times, true);
    label->setObjectName(name);
    return label;
}

QLabel* answerLabel(const QString& name) {
    auto* label = new EnlargedLabel(1.15, false);
    label->setObjectName(name);
    label->setWordWrap(true);
    return label;
}

QLabel* quietLabel(const QString& name) {
    auto* label = new LookingLabel(quietly);
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
    auto* label = new LookingLabel(cautiously);
    label->setAutoFillBackground(true);
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
