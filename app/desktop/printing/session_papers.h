// SPDX-License-Identifier: MIT
// Labels and session sheet of any session, also long after it was saved.
#pragma once

#include <QDialog>
#include <vector>

#include "app/desktop/page.h"
#include "core/batch/batch.h"
#include "core/batch/session.h"

class QComboBox;
class QPushButton;

namespace desktop {

class PrintPreview;

class SessionPapers : public QDialog {
    Q_OBJECT

  public:
    explicit SessionPapers(const PageContext& context, QWidget* parent = nullptr);

  signals:
    void said(const QString& sentence);

  private:
    void fill();
    [[nodiscard]] core::SessionId chosen() const;
    void printLabels();
    void printSheet();

    PageContext context_;
    QComboBox* session_{};
    QPushButton* labels_{};
    QPushButton* sheet_{};
};

/// The batches of a session, by code.
[[nodiscard]] std::vector<core::Batch> batchesOf(core::SessionId session, const Workspace& workspace);
/// Opens its preview without blocking; nothing when there is no such session.
PrintPreview* showSessionSheet(core::SessionId session, const PageContext& context, QWidget* parent);

}  // namespace desktop
