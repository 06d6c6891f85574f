// SPDX-License-Identifier: MIT
// The day on which a camera says that it took a picture. Nothing else is read from what a camera writes beside a picture.
#pragma once

#include <QByteArray>
#include <optional>

#include "core/units/days.h"

namespace desktop {

/// `jpeg`: the beginning of the file, 64 KiB are enough. Nothing where there is no such day, or none that can be read.
/// Source: CIPA DC-008 (Exif), tags 0x9003 DateTimeOriginal, 0x8769 Exif IFD and 0x0132 DateTime; TIFF 6.0; from memory.
[[nodiscard]] std::optional<core::Date> exifDay(const QByteArray& jpeg);

}  // namespace desktop
