// SPDX-License-Identifier: MIT
// What is printed of a plant and what the logbook's own batches show. The records are read beside the window, once until something changes;
// the sums run on copies. No widgets.
#pragma once

#include <QObject>
#include <memory>
#include <vector>

#include "app/desktop/background/read_beside.h"
#include "core/planning/plant_facts.h"

namespace desktop {

class Workspace;

class PlantFactsModel : public QObject {
    Q_OBJECT

  public:
    explicit PlantFactsModel(Workspace& workspace, QObject* parent = nullptr);

    /// told() follows, with nothing of an unset plant or one that is gone.
    void show(core::PlantId plant);
    /// Nobody looks: the sums wait until somebody does.
    void setWatched(bool isWatched);
    /// nullptr while it is not known yet.
    [[nodiscard]] const core::PlantFacts* facts() const { return facts_.get(); }

  signals:
    void told();

  private:
    struct Copies;

    void forget();
    void work();
    void readCopies();
    void sum();

    Workspace& workspace_;
    core::PlantId plant_;
    std::shared_ptr<const core::PlantFacts> facts_;
    std::shared_ptr<const Copies> copies_;
    bool isReading_{};
    bool isWatched_{};
    bool isStale_{true};
    ReadBeside<std::vector<core::BatchRecord>> reading_{workspace_, this};
    LatestAnswer<std::shared_ptr<const core::PlantFacts>> sums_{this};
};

}  // namespace desktop
