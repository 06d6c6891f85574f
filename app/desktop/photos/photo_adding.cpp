// SPDX-License-Identifier: MIT
// How photos come to the wall: picked, pasted, dropped, made small away from the window's thread, then kept in one step.
#include <QLabel>
#include <QMimeData>
#include <QPushButton>
#include <QStandardPaths>
#include <QUrl>

#include "app/desktop/batches/batch_page_model.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/photos/photo_wall.h"
#include "app/desktop/prompts.h"
#include "app/desktop/widgets/fault_label.h"

namespace desktop {

void PhotoWall::pickFiles() {
    const QStringList files = context_.prompts.pickFilesToOpen(
        this, {.title = tr("Add photos"),
               .place = QStandardPaths::writableLocation(QStandardPaths::PicturesLocation),
               .filter = tr("Pictures (*.jpg *.jpeg *.png *.webp *.bmp *.tif *.tiff);;All files (*)"),
               .suffix = {}});
    std::vector<PhotoSource> sources;
    for (const QString& file : files) sources.push_back({.file = file, .image = {}});
    add(std::move(sources));
}

bool PhotoWall::holdsPhotos(const QMimeData& brought) {
    return brought.hasImage() || brought.hasUrls();
}

void PhotoWall::add(const QMimeData& brought) {
    std::vector<PhotoSource> sources;
    bool hasStrangers = false;
    // A program that copies a picture from a file offers both; the file knows the day.
    for (const QUrl& url : brought.urls()) {
        if (url.isLocalFile())
            sources.push_back({.file = url.toLocalFile(), .image = {}});
        else
            hasStrangers = true;
    }
    if (sources.empty() && brought.hasImage())
        sources.push_back({.file = {}, .image = qvariant_cast<QImage>(brought.imageData())});
    if (sources.empty()) {
        fault_->setFault(hasStrangers ? tr("Only pictures on this machine are taken; save it first, then add the file.")
                                      : tr("There is no picture in what was pasted."));
        emit wanted();
    }
    add(std::move(sources));
}

void PhotoWall::add(std::vector<PhotoSource> sources) {
    if (sources.empty() || !isWritable_ || !model_.hasBatch()) return;
    emit wanted();
    fault_->setFault({});
    for (PhotoSource& source : sources)
        pending_.push_back({{.id = {},
                             .batch = model_.view().record.batch.id,
                             .takenOn = model_.view().record.batch.stuckOn,
                             .caption = {}},
                            std::move(source)});
    adding_->setText(tr("Making %n photo(s) small enough\u2026", nullptr, static_cast<int>(pending_.size())));
    stop_->show();
    // What was still under way is asked for again with what is new.
    std::vector<PhotoSource> all;
    for (const Pending& pending : pending_) all.push_back(pending.source);
    imports_.ask(
        [all = std::move(all)](std::stop_token stop) {
            std::vector<ImportedPhoto> imported;
            for (const PhotoSource& source : all) {
                if (stop.stop_requested()) break;
                imported.push_back(importPhoto(source));
            }
            return imported;
        },
        [this](const std::vector<ImportedPhoto>& imported) { take(imported); });
}

void PhotoWall::take(const std::vector<ImportedPhoto>& imported) {
    std::vector<core::PhotoRecord> records;
    QStringList faults;
    for (std::size_t i = 0; i < imported.size() && i < pending_.size(); ++i) {
        if (imported[i].image.empty()) {
            faults << imported[i].fault;
            continue;
        }
        core::Photo photo = pending_[i].photo;
        // A camera's clock may be wrong: a day before sticking or after today is not taken from it.
        const std::optional<core::Date> taken = imported[i].takenOn;
        photo.takenOn = taken && *taken >= photo.takenOn && *taken <= model_.today() ? *taken : model_.today();
        records.push_back({photo, imported[i].image});
    }
    stopAdding();
    if (!records.empty()) {
        const Outcome outcome = model_.add(std::move(records));
        if (!outcome.refusals.empty()) faults << sentencesOf(outcome.refusals);
    }
    fault_->setFault(faults.join(QLatin1Char('\n')));
}

void PhotoWall::stopAdding() {
    imports_.stop();
    pending_.clear();
    adding_->clear();
    stop_->hide();
}

}  // namespace desktop
