// SPDX-License-Identifier: MIT
#include "app/desktop/widgets/caution_strip.h"

#include <QAbstractTextDocumentLayout>
#include <QEvent>
#include <QTextCursor>
#include <QUrl>
#include <algorithm>
#include <cmath>

#include "app/desktop/look/look.h"

namespace desktop {

namespace {

constexpr int mostLines = 7;
const QString signName = QStringLiteral("fault");

QString firstLetterLarge(std::string_view words) {
    QString text = QString::fromUtf8(words);
    if (!text.isEmpty()) text[0] = text[0].toUpper();
    return text;
}

}  // namespace

CautionStrip::CautionStrip(std::vector<core::CautionTopic> topics, QWidget* parent)
    : QTextEdit(parent), topics_(std::move(topics)) {
    setObjectName(QStringLiteral("cautionStrip"));
    setAccessibleName(tr("What to mind"));
    setReadOnly(true);
    setTabChangesFocus(true);
    setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    document()->setDocumentMargin(fontMetrics().height() / 3.0);
    if (topics_.empty())
        hide();
    else
        write();
}

CautionStrip* CautionStrip::saying(std::vector<core::CautionTopic> topics) {
    return new CautionStrip(std::move(topics), nullptr);
}

void CautionStrip::mind(std::vector<core::CautionTopic> topics) {
    if (topics == topics_) return;
    topics_ = std::move(topics);
    write();
    setVisible(!topics_.empty());
}

void CautionStrip::write() {
    dressUp();
    clear();
    const int line = fontMetrics().height();
    document()->addResource(QTextDocument::ImageResource, QUrl(signName), icon(signName).pixmap(line, line));
    QTextImageFormat sign;
    sign.setName(signName);
    sign.setWidth(line);
    sign.setHeight(line);
    QTextCharFormat plain, bold;
    bold.setFontWeight(QFont::Bold);
    QTextCursor cursor(document());
    QStringList sources;
    for (const core::CautionTopic topic : topics_) {
        const core::TradeCaution& caution = core::tradeCaution(topic);
        if (!cursor.atStart()) cursor.insertBlock();
        cursor.insertImage(sign);
        cursor.insertText(QStringLiteral(" ") + firstLetterLarge(caution.name), bold);
        cursor.insertText(QStringLiteral(": ") + QString::fromUtf8(caution.text), plain);
        sources << tr("%1: %2", "a caution, where it comes from")
                       .arg(firstLetterLarge(caution.name), QString::fromUtf8(caution.source));
    }
    moveCursor(QTextCursor::Start);
    setToolTip(tr("Sources") + u'\n' + sources.join(u'\n'));
    fit();
}

void CautionStrip::dressUp() {
    isDressing_ = true;
    setPalette({});
    QPalette marked = palette();
    marked.setColor(QPalette::Base, noteBackground(marked));
    setPalette(marked);
    isDressing_ = false;
}

/// One that has all its words in sight is nothing for Tab to stop at.
void CautionStrip::fit() {
    const int most = fontMetrics().lineSpacing() * mostLines;
    document()->setTextWidth(std::max(1, viewport()->width()));
    const int wanted = static_cast<int>(std::ceil(document()->size().height()));
    setVerticalScrollBarPolicy(wanted > most ? Qt::ScrollBarAsNeeded : Qt::ScrollBarAlwaysOff);
    setFixedHeight(std::min(wanted, most) + 2 * frameWidth());
    setFocusPolicy(wanted > most ? Qt::StrongFocus : Qt::ClickFocus);
}

void CautionStrip::resizeEvent(QResizeEvent* event) {
    QTextEdit::resizeEvent(event);
    if (event->oldSize().width() != event->size().width()) fit();
}

void CautionStrip::changeEvent(QEvent* event) {
    QTextEdit::changeEvent(event);
    const bool isOfLook = event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange;
    if (isOfLook && !isDressing_ && !topics_.empty()) write();
}

}  // namespace desktop
