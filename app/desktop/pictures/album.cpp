// SPDX-License-Identifier: MIT
#include "app/desktop/pictures/album.h"

#include <QApplication>
#include <QDialog>
#include <QDir>
#include <QElapsedTimer>
#include <QPainter>
#include <QPixmap>
#include <QPointer>
#include <QScrollArea>
#include <QScrollBar>

#include "app/desktop/main_window.h"
#include "app/desktop/page.h"
#include "app/desktop/pictures/dialog_scene.h"

namespace desktop {

namespace {

constexpr int settleMilliseconds = 600;
constexpr QSize largestDialog(1200, 720);
constexpr QMargins around(32, 32, 32, 32);  // what is seen of the window beside a dialog
constexpr int smallestFile = 0;             // the encoder's "quality": how little it compresses

/// Long sums run in threads of their own and queue their answers.
void settle() {
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < settleMilliseconds) QApplication::processEvents(QEventLoop::AllEvents, 50);
}

/// The window; or the dialogs that stand over one another, with a little of the window: the innermost last.
QPixmap together(MainWindow& window, QWidget* innermost) {
    QPixmap picture = window.grab();
    QList<QWidget*> dialogs;
    for (QWidget* each = innermost; each != nullptr && each != &window;
         each = each->parentWidget() ? each->parentWidget()->window() : nullptr)
        dialogs.prepend(each);
    QRect shown;
    QPainter painter(&picture);
    for (QWidget* dialog : dialogs) {
        const QPixmap front = dialog->grab();
        const QPoint at((picture.width() - front.width()) / 2, (picture.height() - front.height()) / 2);
        painter.fillRect(picture.rect(), QColor(0, 0, 0, 90));
        painter.drawPixmap(at, front);
        painter.setPen(window.palette().color(QPalette::Shadow));
        painter.drawRect(QRect(at, front.size()).adjusted(-1, -1, 0, 0));
        shown |= QRect(at, front.size());
    }
    painter.end();
    return shown.isNull() ? picture : picture.copy(shown.marginsAdded(around) & picture.rect());
}

}  // namespace

Album::Album(MainWindow& window, const QString& folder, const QString& look)
    : Album(window, [&window, folder, look](const QString& name, QWidget* dialog) {
          settle();
          return together(window, dialog).save(QDir(folder).filePath(name + '_' + look + ".png"), "PNG", smallestFile);
      }) {}

Album::Album(MainWindow& window, Shutter shutter) : window_(window), shutter_(std::move(shutter)) {}

void Album::take(const QString& name, QWidget* dialog) {
    isWhole_ = shutter_(name, dialog) && isWhole_;
}

void Album::takeScene(const DialogScene& scene) {
    QDialog* dialog = scene.open(window_);
    if (!dialog) {
        qWarning("nothing opened for the picture %s", qUtf8Printable(scene.name));
        isWhole_ = false;
    } else {
        for (QWidget* each = dialog; each != nullptr && each != &window_;
             each = each->parentWidget() ? each->parentWidget()->window() : nullptr)
            each->resize(each->size().boundedTo(largestDialog));
        take(scene.name, dialog);
    }
    endScene(window_);
}

void Album::takePart(QWidget& page, const char* scrollArea, const char* part, const QString& name) {
    auto* scroll = page.findChild<QScrollArea*>(scrollArea);
    auto* widget = page.findChild<QWidget*>(part);
    if (!scroll || !widget) return;
    settle();
    scroll->verticalScrollBar()->setValue(widget->mapTo(scroll->widget(), QPoint()).y());
    take(name);
    scroll->verticalScrollBar()->setValue(0);
}

Page* Album::front(const char* name) {
    auto* page = window_.findChild<Page*>(name);
    return page && page->isVisible() ? page : nullptr;
}

}  // namespace desktop
