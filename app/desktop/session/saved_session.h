// SPDX-License-Identifier: MIT
// What a session has become once it is saved: the codes that were given, to be written on labels or printed on them, and the session's sheet.
#pragma once

#include <QWidget>

#include "app/desktop/page.h"
#include "app/desktop/session/session_model.h"

class QLabel;
class QPushButton;
class QTableWidget;

namespace desktop {

class SavedSession : public QWidget {
    Q_OBJECT

  public:
    explicit SavedSession(const PageContext& context, QWidget* parent = nullptr);

    void show(const SessionSaved& saved);

  signals:
    void closeWanted();

  private:
    void fill();
    void printLabels();
    void printSheet();

    PageContext context_;
    SessionSaved saved_;
    QLabel* heading_{};
    QTableWidget* table_{};
    QPushButton* close_{};
};

}  // namespace desktop
