// SPDX-License-Identifier: MIT
// All batches of one plant with their checks, read a slice at a time: thousands of them would hold up the window.
#pragma once

#include <QObject>
#include <QTimer>
#include <functional>
#include <memory>
#include <vector>

#include "core/records.h"

namespace desktop {

class Workspace;

class PlantRecords : public QObject {
    Q_OBJECT

  public:
    using Records = std::shared_ptr<const std::vector<core::BatchRecord>>;
    using Tell = std::function<void(const Records&)>;

    explicit PlantRecords(Workspace& workspace, QObject* parent = nullptr);

    /// In order of date then code; a few are told of before ask() returns. A newer question takes the place of an older one. Whoever asks
    /// asks again when the logbook has changed.
    void ask(core::PlantId plant, Tell tell);
    void stop();

  private:
    void readOn();

    Workspace& workspace_;
    QTimer next_;
    std::vector<core::BatchId> waiting_;  // the next one last
    std::shared_ptr<std::vector<core::BatchRecord>> read_;
    Tell tell_;
};

}  // namespace desktop
