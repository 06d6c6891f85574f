// SPDX-License-Identifier: MIT
#include "app/desktop/photos/photo_wall.h"

#include <QDialog>
#include <QItemSelectionModel>
#include <QKeyEvent>
#include <QLabel>
#include <QListView>
#include <QMimeData>
#include <QPushButton>
#include <QUrl>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/batches/batch_page_model.h"
#include "app/desktop/figures/figure_panel.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/photos/photo_facts_dialog.h"
#include "app/desktop/photos/photo_list_model.h"
#include "app/desktop/prompts.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/widgets/wrapping_row.h"
#include "app/plot/batch_strip_photos.h"
#include "app/plot/figure_view.h"
#include "app/plot/number_text.h"
#include "app/report/batch_summary_events.h"

namespace desktop {

namespace {

constexpr int thumbnailLines = 5;  // high, in lines of text

QString photosCounted(int count) {
    return count == 1 ? PhotoWall::tr("1 photo") : PhotoWall::tr("%n photos", nullptr, count);
}

}  // namespace

PhotoWall::PhotoWall(BatchPageModel& model, const PageContext& context, QWidget* parent)
    : QWidget(parent), model_(model), context_(context) {
    setObjectName(QStringLiteral("photoWall"));
    build();
}

void PhotoWall::build() {
    const int side = thumbnailLines * fontMetrics().height();
    photos_ = new PhotoListModel([this](core::PhotoId photo) { return model_.imageOf(photo); }, side, this);
    list_ = new QListView;
    list_->setObjectName(QStringLiteral("photoList"));
    list_->setAccessibleName(tr("Photos"));
    list_->setModel(photos_);
    list_->setViewMode(QListView::IconMode);
    list_->setFlow(QListView::LeftToRight);
    list_->setWrapping(false);
    list_->setMovement(QListView::Static);
    list_->setIconSize({side, side});
    list_->setSelectionMode(QAbstractItemView::ExtendedSelection);
    list_->setTabKeyNavigation(false);
    list_->setLayoutDirection(Qt::LeftToRight);  // a time axis
    list_->setFixedHeight(side + 4 * fontMetrics().height());
    list_->installEventFilter(this);
    connect(list_->selectionModel(), &QItemSelectionModel::selectionChanged, this, &PhotoWall::showChosen);
    connect(list_, &QListView::doubleClicked, this, &PhotoWall::showLarge);
    caption_ = new QLabel;
    caption_->setObjectName(QStringLiteral("photoWords"));
    caption_->setWordWrap(true);
    caption_->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    caption_->setBuddy(list_);
    fault_ = new FaultLabel;
    fault_->setObjectName(QStringLiteral("photoFault"));
    pair_ = new FigurePanel(QStringLiteral("photoPair"), context_);
    connect(pair_, &FigurePanel::said, this, &PhotoWall::said);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(makeButtons());
    layout->addWidget(caption_);
    layout->addWidget(fault_);
    layout->addWidget(list_);
    layout->addWidget(pair_, 1);
    layout->addStretch();
}

QWidget* PhotoWall::makeButtons() {
    auto* buttons = new QWidget;
    buttons->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    auto* row = new WrappingRow(buttons);
    const auto make = [&](const QString& text, const char* name, const QString& key, auto act) {
        auto* button = new QPushButton(text);
        button->setObjectName(QLatin1String(name));
        if (!key.isEmpty()) button->setToolTip(key);
        connect(button, &QPushButton::clicked, this, act);
        row->addWidget(button);
        return button;
    };
    const auto first = [this] {
        const std::vector<core::Photo> photos = chosen();
        return photos.empty() ? core::PhotoId{} : photos.front().id;
    };
    add_ = make(tr("Add photos\u2026"), "addPhotos", tr("Or drop them here, or paste with Ctrl+V"),
                [this] { pickFiles(); });
    large_ = make(tr("Large"), "largePhoto", tr("Enter"), [this] { showLarge(); });
    facts_ = make(tr("Caption and day\u2026"), "photoFacts", tr("F2"), [this, first] { editFacts(first()); });
    remove_ = make(tr("Delete photo"), "deletePhoto", tr("Delete"), [this, first] { remove(first()); });
    adding_ = quietLabel(QStringLiteral("addingPhotos"));
    adding_->setWordWrap(false);
    row->addWidget(adding_);
    stop_ = make(tr("Stop"), "stopAddingPhotos", {}, [this] { stopAdding(); });
    stop_->hide();
    return buttons;
}

void PhotoWall::show(bool isWritable) {
    isWritable_ = isWritable;
    const std::vector<core::Photo> before = chosen();
    const BatchView& view = model_.view();
    photos_->show(view.life.photos, view.record.batch.stuckOn);
    for (const core::Photo& photo : before)
        if (const int row = photos_->rowOf(photo.id); row >= 0)
            list_->selectionModel()->select(photos_->index(row), QItemSelectionModel::Select);
    if (chosen().empty() && photos_->rowCount() > 0) choose(photos_->photoAt(photos_->rowCount() - 1)->id);
    add_->setEnabled(isWritable);
    list_->setVisible(photos_->rowCount() > 0);
    caption_->setText(photos_->rowCount() == 0
                          ? tr("No photos of this batch yet. Add some from files, drop them here, or paste one with "
                               "Ctrl+V; they are kept in the logbook, scaled down.")
                          : tr("%1. Choose two (Ctrl+click, or Ctrl+arrow and Space) to see before and after side by "
                               "side.")
                                .arg(photosCounted(photos_->rowCount())));
    showChosen();
}

void PhotoWall::choose(core::PhotoId photo) {
    const int row = photos_->rowOf(photo);
    if (row >= 0) list_->setCurrentIndex(photos_->index(row));
}

std::vector<core::Photo> PhotoWall::chosen() const {
    std::vector<core::Photo> photos;
    QModelIndexList indexes = list_->selectionModel()->selectedIndexes();
    std::ranges::sort(indexes, {}, &QModelIndex::row);
    for (const QModelIndex& index : indexes)
        if (const core::Photo* photo = photos_->photoAt(index.row())) photos.push_back(*photo);
    return photos;
}

std::shared_ptr<const plot::Figure> PhotoWall::figureOf(const std::vector<core::Photo>& photos) const {
    std::vector<plot::ShownPhoto> shown;
    context_.workspace.attempt([&](db::Logbook& logbook) {
        for (const core::Photo& photo : photos)
            shown.push_back(report::shownPhoto(logbook, photo, model_.view().record.batch.stuckOn, longestPhotoSide));
    });
    return shown.empty() ? nullptr : plot::photosFigure(std::move(shown));
}

void PhotoWall::showChosen() {
    std::vector<core::Photo> photos = chosen();
    for (QPushButton* button : {facts_, remove_}) button->setEnabled(isWritable_ && photos.size() == 1);
    large_->setEnabled(!photos.empty());
    // Of more than two the first and the last: before and after.
    if (photos.size() > 2) photos = {photos.front(), photos.back()};
    pair_->setFileName(tr("%1 photos", "a file's name").arg(model_.hasBatch() ? model_.view().code : QString()));
    pair_->setFigure(figureOf(photos));
    pair_->setVisible(!photos.empty());
}

void PhotoWall::showLarge() {
    std::vector<core::Photo> photos = chosen();
    if (photos.empty()) return;
    if (photos.size() > 2) photos = {photos.front(), photos.back()};
    auto* dialog = new QDialog(this);
    dialog->setObjectName(QStringLiteral("largePhotoDialog"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    auto* view = new plot::FigureView;
    view->setObjectName(QStringLiteral("largePhotoView"));
    view->setFigure(figureOf(photos));
    dialog->setWindowTitle(view->accessibleName());
    auto* layout = new QVBoxLayout(dialog);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(view);
    dialog->resize(window()->size());
    dialog->open();
}

bool PhotoWall::eventFilter(QObject* watched, QEvent* event) {
    if (watched != list_ || event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
    const std::vector<core::Photo> photos = chosen();
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Return || key == Qt::Key_Enter)
        showLarge();
    else if (key == Qt::Key_F2 && photos.size() == 1)
        editFacts(photos.front().id);
    else if (key == Qt::Key_Delete && photos.size() == 1)
        remove(photos.front().id);
    else
        return QWidget::eventFilter(watched, event);
    return true;
}

void PhotoWall::editFacts(core::PhotoId id) {
    const core::Photo* photo = photos_->photoAt(photos_->rowOf(id));
    if (photo == nullptr || !isWritable_) return;
    auto* dialog = new PhotoFactsDialog(
        *photo, model_.view().record.batch.stuckOn, model_.today(),
        [this](const core::Photo& changed) { return model_.change(changed); }, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void PhotoWall::remove(core::PhotoId id) {
    const core::Photo* photo = photos_->photoAt(photos_->rowOf(id));
    if (photo == nullptr || !isWritable_) return;
    const Outcome outcome = model_.remove(core::Photo(*photo));
    if (!outcome.isDone && !outcome.refusals.empty()) emit said(sentencesOf(outcome.refusals));
}

}  // namespace desktop
