// SPDX-License-Identifier: MIT
// Looks in the background, plant by plant, for open batches that do worse than the grower's earlier ones. What was found of a plant is
// kept until a batch of that plant changes.
#pragma once

#include <QObject>
#include <deque>
#include <unordered_map>
#include <vector>

#include "app/desktop/background/latest_answer.h"
#include "app/desktop/background/read_beside.h"
#include "core/comparison/behind.h"

namespace db {
struct Changes;
}

namespace desktop {

class Workspace;

class BehindSearch : public QObject {
    Q_OBJECT

  public:
    explicit BehindSearch(Workspace& workspace, QObject* parent = nullptr);

    /// The rarest first.
    [[nodiscard]] std::vector<core::BehindThePast> found() const;
    [[nodiscard]] bool isLooking() const { return isLooking_; }

  signals:
    /// found() or isLooking() answers differently from now on.
    void foundChanged();

  private:
    void startAfresh();
    void lookAgain(const db::Changes& changes);
    void look(core::PlantId plant);
    void goOn();
    [[nodiscard]] std::vector<core::BatchId> newestOf(core::PlantId plant) const;
    void workOut(core::PlantId plant, std::vector<core::BatchRecord> records);
    void keep(core::PlantId plant, const std::vector<core::BehindThePast>& behind);

    Workspace& workspace_;
    std::deque<core::PlantId> waiting_;
    std::unordered_map<core::PlantId, std::vector<core::BehindThePast>> found_;
    bool isLooking_{};
    ReadBeside<std::vector<core::BatchRecord>> reading_{workspace_, this};
    LatestAnswer<std::vector<core::BehindThePast>> sums_{this};
};

}  // namespace desktop
