// SPDX-License-Identifier: MIT
// Long sums away from the window's thread. A newer question stops the older one, whose answer is thrown away. The work gets copies
// of plain values and a stop token, never the logbook: SQLite stays on the window's thread.
#pragma once

#include <QMetaObject>
#include <QObject>
#include <atomic>
#include <functional>
#include <memory>
#include <stop_token>
#include <thread>
#include <utility>
#include <vector>

namespace desktop {

/// A member of `receiver`, in whose thread the answers arrive. Ending it stops and waits for whatever still runs.
template <class Answer>
class LatestAnswer {
  public:
    using Work = std::function<Answer(std::stop_token)>;
    using Tell = std::function<void(const Answer&)>;

    explicit LatestAnswer(QObject* receiver) : receiver_(receiver) {}
    LatestAnswer(const LatestAnswer&) = delete;
    LatestAnswer& operator=(const LatestAnswer&) = delete;

    void ask(Work work, Tell tell) {
        stop();
        const int number = ++asked_;
        isWorking_ = true;
        auto isOver = std::make_shared<std::atomic<bool>>(false);
        running_.push_back({isOver, std::jthread([this, number, isOver, work = std::move(work),
                                                  tell = std::move(tell)](std::stop_token stopToken) {
                                auto answer = std::make_shared<const Answer>(work(stopToken));
                                QMetaObject::invokeMethod(
                                    receiver_, [this, number, answer, tell] { deliver(number, *answer, tell); },
                                    Qt::QueuedConnection);
                                *isOver = true;
                            })});
    }

    /// The question asked last is withdrawn; its answer never arrives.
    void stop() {
        isWorking_ = false;
        ++asked_;
        std::erase_if(running_, [](const Running& running) { return running.isOver->load(); });
        for (Running& running : running_) running.thread.request_stop();
    }

    [[nodiscard]] bool isWorking() const { return isWorking_; }

  private:
    struct Running {
        std::shared_ptr<std::atomic<bool>> isOver;
        std::jthread thread;
    };

    void deliver(int number, const Answer& answer, const Tell& tell) {
        if (number != asked_) return;
        isWorking_ = false;
        tell(answer);
    }

    QObject* receiver_;
    int asked_{};
    bool isWorking_{};
    std::vector<Running> running_;
};

}  // namespace desktop
