// SPDX-License-Identifier: MIT
// Reads much of the logbook away from the window's thread, through a connection of its own. A newer question stops the older. What goes wrong
// is said at the foot of the window like everything else.
//
//   ReadBeside<std::vector<core::BatchRecord>> reading{workspace, this};
//   reading.ask([](const db::Logbook& logbook, std::stop_token) { return logbook.batchRecords(); }, [this](auto records) { ... }, ...);
#pragma once

#include <functional>
#include <future>
#include <memory>
#include <optional>
#include <utility>

#include "app/desktop/background/latest_answer.h"
#include "app/desktop/workspace.h"

namespace desktop {

/// A member of `receiver`, as LatestAnswer is.
template <class Answer>
class ReadBeside {
  public:
    using Read = std::function<Answer(const db::Logbook&, std::stop_token)>;
    using Take = std::function<void(Answer)>;
    using Fail = std::function<void()>;

    ReadBeside(Workspace& workspace, QObject* receiver) : workspace_(workspace), reading_(receiver) {}

    /// A logbook in memory is read at once, before this returns. Contract: the workspace has a logbook.
    void ask(Read read, Take take, Fail fail = {}) {
        reading_.stop();
        std::shared_ptr<const db::Logbook> beside;
        std::optional<Answer> atOnce;
        const bool isOpen = workspace_.attempt([&](db::Logbook& logbook) {
            if (auto other = logbook.beside())
                beside = std::make_shared<const db::Logbook>(std::move(*other));
            else
                atOnce = read(logbook, {});
        });
        if (atOnce) return take(std::move(*atOnce));
        if (!isOpen) return fail ? fail() : void();
        reading_.ask(
            [beside = std::move(beside), read = std::move(read)](std::stop_token stop) {
                std::packaged_task<Answer()> task([&] { return read(*beside, stop); });
                task();
                return std::make_shared<std::future<Answer>>(task.get_future());
            },
            [this, take = std::move(take), fail = std::move(fail)](const WhatWasRead& whatWasRead) {
                tell(*whatWasRead, take, fail);
            });
    }
    void stop() { reading_.stop(); }

  private:
    using WhatWasRead = std::shared_ptr<std::future<Answer>>;

    void tell(std::future<Answer>& read, const Take& take, const Fail& fail) {
        std::optional<Answer> answer;
        workspace_.attemptWithout([&] { answer = read.get(); });
        if (answer)
            take(std::move(*answer));
        else if (fail)
            fail();
    }

    Workspace& workspace_;
    LatestAnswer<WhatWasRead> reading_;
};

}  // namespace desktop
