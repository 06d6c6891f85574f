// SPDX-License-Identifier: MIT
#include "app/plot/batch_strip_photos.h"

#include <QCoreApplication>
#include <algorithm>
#include <utility>

#include "app/plot/canvas.h"
#include "app/plot/empty_picture.h"

namespace plot {
namespace {

constexpr double kUnderPhoto = 2.4;  // ems: the day, the caption
constexpr double kBetweenPhotos = 1.0;

class PhotosFigure : public Figure {
    Q_DECLARE_TR_FUNCTIONS(PhotosFigure)

  public:
    explicit PhotosFigure(std::vector<ShownPhoto> photos) : photos_(std::move(photos)) {
        if (photos_.size() > 2) photos_.resize(2);
    }

    QString sentence() const override {
        if (photos_.empty()) return tr("No photos");
        if (photos_.size() == 1) return withCaption(photos_.front());
        return tr("Before and after: %1; %2").arg(withCaption(photos_.front()), withCaption(photos_.back()));
    }

    QString method() const override { return {}; }

    FigureTable table() const override {
        FigureTable table{.title = sentence(), .headings = {tr("Day"), tr("Caption")}, .rows = {}};
        for (const ShownPhoto& photo : photos_) table.rows.push_back({photo.day, photo.caption});
        return table;
    }

    QSizeF sizeInEms() const override { return {54, 26}; }

  private:
    static QString withCaption(const ShownPhoto& photo) {
        return photo.caption.isEmpty() ? photo.day : tr("%1 (%2)", "a day, a caption").arg(photo.day, photo.caption);
    }

    // One factor for both, so that what looks larger is larger in the pictures too.
    void draw(Canvas& canvas, const QRectF& area) const override {
        if (photos_.empty()) return drawEmptyPicture(canvas, area, tr("There are no photos of this batch."));
        const double em = canvas.em(), gap = photos_.size() > 1 ? kBetweenPhotos * em : 0;
        const double width = (area.width() - gap) / static_cast<double>(photos_.size());
        const double height = std::max(2 * em, area.height() - kUnderPhoto * em);
        double factor = 1e9;
        for (const ShownPhoto& photo : photos_)
            factor = std::min(
                {factor, width / std::max(1, photo.image.width()), height / std::max(1, photo.image.height())});
        double left = area.left();
        for (const ShownPhoto& photo : photos_) {
            const QSizeF size = QSizeF(photo.image.size()) * factor;
            canvas.image({left, area.top(), size.width(), size.height()}, photo.image);
            const QRectF line(left, area.top() + size.height() + 0.2 * em, width, em);
            canvas.line(line, Qt::AlignLeft | Qt::AlignTop, photo.day, canvas.palette().text, Type::Bold);
            canvas.line(line.translated(0, 1.1 * em), Qt::AlignLeft | Qt::AlignTop, photo.caption,
                        canvas.palette().text, Type::Small);
            left += width + gap;
        }
    }

    std::vector<ShownPhoto> photos_;
};

}  // namespace

std::shared_ptr<const Figure> photosFigure(std::vector<ShownPhoto> photos) {
    return std::make_shared<PhotosFigure>(std::move(photos));
}

}  // namespace plot
