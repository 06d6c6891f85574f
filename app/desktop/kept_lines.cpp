// SPDX-License-Identifier: MIT
#include "app/desktop/kept_lines.h"

#include <algorithm>
#include <iterator>
#include <tuple>

namespace desktop {

namespace {

bool comesBefore(const core::BatchLine& one, const core::BatchLine& other) {
    return std::tie(one.batch.stuckOn, one.batch.code) < std::tie(other.batch.stuckOn, other.batch.code);
}

}  // namespace

const std::vector<core::BatchLine>& KeptLines::of(const db::Logbook& logbook) {
    // From some hundreds on, one query over all is quicker than one for each.
    constexpr std::size_t mostReadSingly = 500;
    if (!lines_ || touched_.size() > mostReadSingly) {
        lines_ = logbook.batchLines();
        touched_.clear();
    } else if (!touched_.empty()) {
        bringUpToDate(logbook);
    }
    return *lines_;
}

void KeptLines::bringUpToDate(const db::Logbook& logbook) {
    const std::vector<core::BatchLine> read = logbook.batchLinesOf({touched_.begin(), touched_.end()});
    std::erase_if(*lines_, [this](const core::BatchLine& line) { return touched_.contains(line.batch.id); });
    std::vector<core::BatchLine> merged;
    merged.reserve(lines_->size() + read.size());
    std::merge(std::make_move_iterator(lines_->begin()), std::make_move_iterator(lines_->end()), read.begin(),
               read.end(), std::back_inserter(merged), comesBefore);
    lines_ = std::move(merged);
    touched_.clear();
}

void KeptLines::touch(const std::vector<core::BatchId>& batches) {
    if (lines_) touched_.insert(batches.begin(), batches.end());
}

void KeptLines::forget() {
    lines_.reset();
    touched_.clear();
}

}  // namespace desktop
