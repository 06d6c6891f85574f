// SPDX-License-Identifier: MIT
// One day's cutting work on one screen: day, who and a note once, then a grid with one row a batch. Everything is saved as one action.
// Closing it without saving loses nothing: what was typed stands there again the next time.
#pragma once

#include <QDialog>
#include <memory>

#include "app/desktop/page.h"

namespace desktop {

class SessionModel;

class SessionDialog : public QDialog {
    Q_OBJECT

  public:
    explicit SessionDialog(const PageContext& context, QWidget* parent = nullptr);
    ~SessionDialog() override;

    [[nodiscard]] SessionModel& model() { return *model_; }

  signals:
    /// What was done, with the codes that were given, for the bar at the foot.
    void said(const QString& sentence);

  private:
    class Parts;

    PageContext context_;
    SessionModel* model_;
    std::unique_ptr<Parts> parts_;
};

}  // namespace desktop
