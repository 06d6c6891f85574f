// SPDX-License-Identifier: MIT
#include "tests/desktop/whole/shown_texts.h"

#include <QAbstractButton>
#include <QAction>
#include <QComboBox>
#include <QGroupBox>
#include <QHeaderView>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QPainter>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QScrollArea>
#include <QStyle>
#include <QTabBar>
#include <QTextDocumentFragment>
#include <algorithm>
#include <functional>

#include "app/desktop/names/mnemonic.h"
#include "core/comparison/rate_interval.h"

namespace whole {

namespace {

class Collector {
  public:
    void add(const QWidget& widget, const char* which, const QString& text) {
        if (text.trimmed().isEmpty()) return;
        QStringList within;
        for (const QWidget* each = &widget; each != nullptr; each = each->parentWidget()) within << each->objectName();
        texts_.push_back({called(widget) + ' ' + which, seen(text), within});
    }

    void addAll(const QWidget& widget) {
        add(widget, "tooltip", widget.toolTip());
        add(widget, "name", widget.accessibleName());
        add(widget, "description", widget.accessibleDescription());
        if (widget.isWindow()) add(widget, "title", widget.windowTitle());
        if (const auto* label = qobject_cast<const QLabel*>(&widget)) add(widget, "text", label->text());
        if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) add(widget, "text", button->text());
        if (const auto* box = qobject_cast<const QGroupBox*>(&widget)) add(widget, "title", box->title());
        if (const auto* line = qobject_cast<const QLineEdit*>(&widget)) add(widget, "hint", line->placeholderText());
        if (const auto* note = qobject_cast<const QPlainTextEdit*>(&widget))
            add(widget, "hint", note->placeholderText());
        if (const auto* choice = qobject_cast<const QComboBox*>(&widget))
            for (int item = 0; item < choice->count(); ++item) add(widget, "item", choice->itemText(item));
        if (const auto* tabs = qobject_cast<const QTabBar*>(&widget))
            for (int tab = 0; tab < tabs->count(); ++tab) add(widget, "tab", tabs->tabText(tab));
        if (const auto* head = qobject_cast<const QHeaderView*>(&widget)) addHeading(*head);
        if (const auto* menu = qobject_cast<const QMenu*>(&widget)) addActions(*menu);
    }

    void addActions(const QMenu& menu) {
        for (const QAction* action : menu.actions()) add(menu, "action", action->text());
    }

    [[nodiscard]] std::vector<ShownText> take() { return std::move(texts_); }

  private:
    static QString seen(const QString& text) {
        if (Qt::mightBeRichText(text)) return QTextDocumentFragment::fromHtml(text).toPlainText();
        return desktop::withoutMnemonic(text);
    }

    void addHeading(const QHeaderView& head) {
        if (head.model() == nullptr) return;
        for (int section = 0; section < head.count(); ++section)
            for (const int role : {static_cast<int>(Qt::DisplayRole), static_cast<int>(Qt::ToolTipRole)})
                add(head, "heading", head.model()->headerData(section, head.orientation(), role).toString());
    }

    std::vector<ShownText> texts_;
};

/// As far as the style draws to the right, which may be more than the label was measured for.
int drawnWidth(const QLabel& label) {
    const int room = 2 * label.sizeHint().width();
    QImage image(room, label.height(), QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    painter.setFont(label.font());
    label.style()->drawItemText(&painter, image.rect(), Qt::AlignLeft | Qt::AlignVCenter | Qt::TextShowMnemonic,
                                label.palette(), true, label.text(), QPalette::WindowText);
    for (int x = room; x > 0; --x)
        for (int y = 0; y < image.height(); ++y)
            if (qAlpha(image.pixel(x - 1, y)) > 0) return x;
    return 0;
}

/// Text that the widget shows in full at this size, or has no room for.
bool isClipped(const QWidget& widget) {
    if (const auto* label = qobject_cast<const QLabel*>(&widget)) {
        if (label->text().isEmpty() || !label->pixmap(Qt::ReturnByValue).isNull()) return false;
        if (label->wordWrap()) return label->heightForWidth(label->width()) > label->height();
        if (label->sizeHint().width() > label->width() || label->sizeHint().height() > label->height()) return true;
        return label->buddy() != nullptr && drawnWidth(*label) > label->contentsRect().width();
    }
    if (const auto* push = qobject_cast<const QPushButton*>(&widget)) {
        // Its own hint is never less than a word's room, also for a sign.
        const int icon = push->icon().isNull() ? 0 : push->iconSize().width();
        return push->fontMetrics().size(Qt::TextShowMnemonic, push->text()).width() + icon > push->width();
    }
    if (const auto* button = qobject_cast<const QAbstractButton*>(&widget))
        return !button->text().isEmpty() && button->minimumSizeHint().width() > button->width();
    if (const auto* box = qobject_cast<const QGroupBox*>(&widget)) return box->minimumSizeHint().width() > box->width();
    return false;
}

QString textOf(const QWidget& widget) {
    for (const char* property : {"text", "title"})
        if (const QString text = widget.property(property).toString(); !text.isEmpty()) return text;
    return {};
}

std::vector<QWidget*> seenWidgets(QWidget& top) {
    std::vector<QWidget*> seen;
    if (top.isVisible()) seen.push_back(&top);
    for (QWidget* widget : top.findChildren<QWidget*>())
        if (widget->window() == top.window() && widget->isVisible()) seen.push_back(widget);
    return seen;
}

}  // namespace

QString called(const QWidget& widget) {
    return QStringLiteral("%1 \"%2\"").arg(widget.metaObject()->className(), widget.objectName());
}

std::vector<ShownText> shownTexts(QWidget& top) {
    Collector collector;
    for (const QWidget* widget : seenWidgets(top)) collector.addAll(*widget);
    for (const QMenu* menu : top.findChildren<QMenu*>()) collector.addActions(*menu);
    return collector.take();
}

QStringList clippedTexts(QWidget& top) {
    QStringList clipped;
    for (const QWidget* widget : seenWidgets(top))
        if (isClipped(*widget))
            clipped << QStringLiteral("%1 (%2 of %3 wide): %4")
                           .arg(called(*widget))
                           .arg(widget->width())
                           .arg(widget->sizeHint().width())
                           .arg(textOf(*widget).left(60));
    return clipped;
}

QStringList scrolledSideways(QWidget& top) {
    QStringList wide;
    for (const QWidget* widget : seenWidgets(top)) {
        const auto* area = qobject_cast<const QScrollArea*>(widget);
        if (area == nullptr || area->widget() == nullptr) continue;
        const int seen = area->viewport()->width();
        if (area->widget()->width() > seen)
            wide << QStringLiteral("%1: %2 of %3 seen").arg(called(*area)).arg(seen).arg(area->widget()->width());
    }
    return wide;
}

namespace {

void addOfShelves(const core::Shelves& shelves, const std::function<void(const std::string&)>& add) {
    for (const std::string* fact : {&shelves.facts.name, &shelves.facts.grower, &shelves.facts.currency}) add(*fact);
    for (const core::Plant& plant : shelves.plants)
        for (const std::string& part : {core::fullName(plant), plant.botanicalName, plant.cultivar, plant.commonName})
            add(part);
    for (const core::Medium& medium : shelves.media) {
        add(medium.name);
        add(core::recipe(medium));
    }
    for (const core::Treatment& treatment : shelves.treatments) {
        add(treatment.name);
        add(core::description(treatment));
    }
    for (const core::StockPlant& stock : shelves.stockPlants) add(stock.label);
    for (const core::Method& method : shelves.methods) add(method.name);
    for (const core::Station& station : shelves.stations) add(station.name);
    for (const core::CuttingKind& kind : shelves.cuttingKinds) add(kind.name);
    for (const core::LossCause& cause : shelves.lossCauses) add(cause.name);
    for (const core::Trial& trial : shelves.trials) add(trial.name);
    for (const core::CheckSchedule& schedule : shelves.checkSchedules) add(schedule.name);
}

}  // namespace

QStringList namesIn(const core::Records& records) {
    QStringList names;
    const auto add = [&](const std::string& name) { names << QString::fromStdString(name); };
    addOfShelves(records.shelves, add);
    for (const core::Price& price : records.shelves.prices) add(price.what), add(price.note);
    for (const core::Lot& lot : records.shelves.lots) add(lot.name), add(lot.note);
    for (const core::Expense& expense : records.expenses) add(expense.what);
    for (const core::Potting& potting : records.pottings) add(potting.note);
    for (const core::Session& session : records.sessions) add(session.note);
    for (const core::BatchRecord& record : records.batches) add(record.batch.note);
    for (const core::PhotoRecord& record : records.photos) add(record.photo.caption);
    for (const core::RateInterval interval : core::everyRateInterval) add(std::string(core::nameOf(interval)));
    names.removeAll(QString());
    std::ranges::sort(names, std::ranges::greater(), &QString::size);
    return names;
}

QString without(QString text, const QStringList& names) {
    for (const QString& name : names)
        if (text.contains(name, Qt::CaseInsensitive))
            text.remove(QRegularExpression("(?<![\\p{L}])" + QRegularExpression::escape(name) + "(?![\\p{L}])",
                                           QRegularExpression::CaseInsensitiveOption));
    return text;
}

}  // namespace whole
