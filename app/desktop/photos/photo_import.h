// SPDX-License-Identifier: MIT
// A picture from outside becomes one that a logbook keeps: turned upright, at most 1600 pixels on its long side, a JPEG of less than
// 600 kB, and nothing of what the camera or a program wrote beside it. Plain functions that any thread may run.
#pragma once

#include <QImage>
#include <QString>
#include <optional>

#include "core/batch/photo.h"

namespace desktop {

inline constexpr int longestPhotoSide = 1600;           // pixels
inline constexpr qsizetype largestPhoto = 600'000;      // bytes
inline constexpr qint64 largestPhotoFile = 80'000'000;  // that is read at all

/// A file, or a picture itself where `file` is empty: from the clipboard.
struct PhotoSource {
    QString file;
    QImage image;
};

struct ImportedPhoto {
    core::ImageBytes image;             // empty: see fault
    std::optional<core::Date> takenOn;  // where the camera says so
    QString fault;                      // a sentence
};

[[nodiscard]] ImportedPhoto importPhoto(const PhotoSource& source);

}  // namespace desktop
