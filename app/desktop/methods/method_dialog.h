// SPDX-License-Identifier: MIT
// "How is this worked out?": the pages of the methods behind a figure, with its own numbers in and how exact they are. Opens beside the
// work and never asks anything.
#pragma once

#include <QDialog>
#include <vector>

#include "app/report/methods/method_note.h"

class QListWidget;
class QTextBrowser;

namespace desktop {

class MethodDialog : public QDialog {
    Q_OBJECT

  public:
    /// Domain: at least one note. Shows the note of `page` first, or the first one.
    explicit MethodDialog(std::vector<report::MethodNote> notes, const QString& page = {}, QWidget* parent = nullptr);

    [[nodiscard]] QString shownText() const;

  private:
    void build();
    void showNote(int row);
    void copy();

    std::vector<report::MethodNote> notes_;
    QListWidget* titles_{};
    QTextBrowser* text_{};
};

/// Opens it; it deletes itself when closed. Nothing happens without notes.
void showMethods(std::vector<report::MethodNote> notes, const QString& page, QWidget* parent);

}  // namespace desktop
