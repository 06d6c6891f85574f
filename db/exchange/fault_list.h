// SPDX-License-Identifier: MIT
// Collects what is wrong with a folder, up to a number that a person can still read.
#pragma once

#include <string>
#include <vector>

#include "db/exchange/import_folder.h"

namespace db {

class FaultList {
  public:
    static constexpr std::size_t most = 100;

    void add(ImportFault fault) {
        if (faults_.size() < most)
            faults_.push_back(std::move(fault));
        else
            hasMore_ = true;
    }

    [[nodiscard]] bool isEmpty() const { return faults_.empty(); }
    /// There is no use in looking for more.
    [[nodiscard]] bool isOver() const { return hasMore_; }
    [[nodiscard]] const std::vector<ImportFault>& faults() const { return faults_; }

  private:
    std::vector<ImportFault> faults_;
    bool hasMore_{};
};

}  // namespace db
