// SPDX-License-Identifier: MIT
// What commands that print need for their fonts: an application object, without a window, on any machine.
#pragma once

#include <QDateTime>
#include <memory>
#include <string>

#include "db/logbook.h"

class QGuiApplication;

namespace console {

/// Keep it until everything is written. Does nothing where there is one already.
class PaintingApplication {
  public:
    PaintingApplication();
    ~PaintingApplication();

  private:
    int count_{1};
    char name_[15]{"strikebook-cli"};
    char* words_[2]{name_, nullptr};
    std::unique_ptr<QGuiApplication> application_;
};

/// The moment that stands on a print-out.
[[nodiscard]] QDateTime momentFrom(const db::Clock& clock);
/// Throws WrongArgument unless the name ends in .pdf.
void requirePdfName(const std::string& file, const std::string& option = "--to");

}  // namespace console
