// SPDX-License-Identifier: MIT
#include "app/plot/figure_view.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QEvent>
#include <QFontInfo>
#include <QFontMetricsF>
#include <QHelpEvent>
#include <QMenu>
#include <QMimeData>
#include <QPainter>
#include <QToolTip>
#include <cmath>
#include <utility>

#include "app/plot/canvas.h"
#include "app/plot/empty_picture.h"
#include "app/plot/figure_font.h"
#include "app/plot/palette.h"

namespace plot {
namespace {

constexpr double kMargin = 0.6;  // ems
constexpr QSizeF kLeastEms(34, 20);
constexpr QSizeF kUsualEms(54, 26);

// Screen readers hear "chart" and the figure's sentence instead of a nameless filler.
QAccessibleInterface* accessibleFigure(const QString& className, QObject* object) {
    if (className != QLatin1String("plot::FigureView")) return nullptr;
    return new QAccessibleWidget(qobject_cast<QWidget*>(object), QAccessible::Chart);
}

QFont viewFont(const QWidget& widget) {
    return figureFont(QFontInfo(widget.font()).pointSizeF());
}

double viewEm(const QWidget& widget) {
    return QFontMetricsF(viewFont(widget), &widget).height();
}

}  // namespace

FigureView::FigureView(QWidget* parent) : QWidget(parent), emptyText_(tr("Nothing to show yet.")) {
    // Installing the same factory twice does nothing.
    QAccessible::installFactory(accessibleFigure);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    // A time axis runs from left to right in every language.
    setLayoutDirection(Qt::LeftToRight);
    tellAccessibility();
}

void FigureView::setFigure(std::shared_ptr<const Figure> figure) {
    figure_ = std::move(figure);
    drawing_ = {};
    tellAccessibility();
    updateGeometry();
    update();
}

void FigureView::setEmptyText(const QString& text) {
    emptyText_ = text;
    tellAccessibility();
    update();
}

void FigureView::tellAccessibility() {
    setAccessibleName(figure_ ? figure_->sentence() : emptyText_);
    setAccessibleDescription(figure_ ? figure_->method() : QString());
}

QSize FigureView::sizeHint() const {
    return ((figure_ ? figure_->sizeInEms() : kUsualEms) * viewEm(*this)).toSize();
}

QSize FigureView::minimumSizeHint() const {
    const QSizeF least = figure_ ? kLeastEms.boundedTo(figure_->sizeInEms()) : kLeastEms;
    return (least * viewEm(*this)).toSize();
}

QString FigureView::hintAt(const QPoint& place) const {
    // The last ones drawn lie on top and are the more particular ones: an elided text within a row.
    QString text;
    double smallest = 0;
    for (const Hint& hint : drawing_.hints) {
        const double size = hint.area.width() * hint.area.height();
        if (!hint.area.contains(place) || (!text.isEmpty() && size >= smallest)) continue;
        text = hint.text;
        smallest = size;
    }
    return text;
}

std::unique_ptr<QMenu> FigureView::makeMenu() {
    auto menu = std::make_unique<QMenu>(this);
    const auto add = [&](const QString& words, const char* name, auto&& act) {
        QAction* action = menu->addAction(words, this, std::forward<decltype(act)>(act));
        action->setObjectName(QLatin1String(name));
        action->setEnabled(figure_ != nullptr);
    };
    add(tr("&Copy picture"), "copyPicture", &FigureView::copyPicture);
    add(tr("Copy &figures"), "copyTable", &FigureView::copyTable);
    add(tr("S&how figures"), "showTable", &FigureView::tableRequested);
    menu->addSeparator();
    const auto saving = [this](FigureFile kind) { return [this, kind] { emit saveRequested(kind); }; };
    add(tr("Save as &PDF…"), "savePdf", saving(FigureFile::Pdf));
    add(tr("Save as &SVG…"), "saveSvg", saving(FigureFile::Svg));
    add(tr("Save as P&NG…"), "savePng", saving(FigureFile::Png));
    add(tr("Save figures as CS&V…"), "saveCsv", saving(FigureFile::Csv));
    return menu;
}

void FigureView::copyPicture() {
    if (!figure_) return;
    auto picture = std::make_unique<QMimeData>();
    constexpr double dotsAPixel = 2;
    picture->setImageData(
        figureImage(*figure_, (figure_->sizeInEms() * viewEm(*this)).toSize(), dotsAPixel, Palette::onPaper()));
    picture->setData(QStringLiteral("image/svg+xml"), figureBytes(*figure_, FigureFile::Svg));
    QApplication::clipboard()->setMimeData(picture.release());
}

void FigureView::copyTable() {
    if (figure_) QApplication::clipboard()->setText(tabText(figure_->table()));
}

void FigureView::saveAs(const QString& file, FigureFile kind) {
    if (figure_) saveFigure(*figure_, file, kind);
}

bool FigureView::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const QString text = hintAt(help->pos());
    if (text.isEmpty())
        QToolTip::hideText();
    else
        QToolTip::showText(help->globalPos(), text, this);
    return true;
}

void FigureView::paintEvent(QPaintEvent*) {
    const Palette& colors = paletteFor(palette());
    QPainter painter(this);
    painter.fillRect(rect(), colors.paper);
    painter.setFont(viewFont(*this));
    const double em = viewEm(*this), margin = kMargin * em;
    const QRectF area = QRectF(rect()).adjusted(margin, margin, -margin, -margin);
    if (figure_) {
        drawing_ = figure_->paint(painter, area, colors);
    } else {
        Canvas canvas(painter, colors);
        drawEmptyPicture(canvas, area, emptyText_);
        drawing_ = canvas.takeDrawing();
    }
    if (!hasFocus()) return;
    painter.setPen(QPen(colors.look(0).line, std::max(2.0, 0.12 * em)));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
}

void FigureView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) updateGeometry();
    if (event->type() == QEvent::FontChange || event->type() == QEvent::PaletteChange) update();
}

void FigureView::contextMenuEvent(QContextMenuEvent* event) {
    QMenu* menu = makeMenu().release();  // deletes itself when closed
    menu->setAttribute(Qt::WA_DeleteOnClose);
    menu->popup(event->reason() == QContextMenuEvent::Keyboard ? mapToGlobal(rect().center()) : event->globalPos());
}

}  // namespace plot
