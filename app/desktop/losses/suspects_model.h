// SPDX-License-Identifier: MIT
// What may have gone wrong with one batch: read and worked out in the background, once more whenever the logbook has changed. No widgets.
#pragma once

#include <QObject>
#include <QString>
#include <memory>

#include "app/desktop/background/read_beside.h"
#include "core/causes/suspects.h"

namespace report {
struct Sheet;
}

namespace desktop {

class Workspace;

struct SuspectsView {
    QString code;
    QString plant;
    std::shared_ptr<const core::Suspects> suspects;  // what was known before stays until the answer is there
    bool isWorking{};
    QString fault;
};

class SuspectsModel : public QObject {
    Q_OBJECT

  public:
    SuspectsModel(core::BatchId batch, Workspace& workspace, QObject* parent = nullptr);

    [[nodiscard]] const SuspectsView& view() const { return view_; }
    /// Begins the work; the view changes at once and when the answer is there.
    void ask();
    [[nodiscard]] std::shared_ptr<const report::Sheet> sheet() const;

  signals:
    void viewChanged();

  private:
    using Answer = std::shared_ptr<const core::Suspects>;  // nullptr: the batch is gone

    void readNames();
    void tell(const Answer& answer);
    void fail(const QString& fault);

    core::BatchId batch_;
    Workspace& workspace_;
    SuspectsView view_;
    ReadBeside<Answer> reading_{workspace_, this};
};

}  // namespace desktop
