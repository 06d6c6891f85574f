// SPDX-License-Identifier: MIT
#include "app/desktop/background/latest_answer.h"

#include <QObject>
#include <condition_variable>
#include <latch>
#include <mutex>

#include "tests/desktop/pages/desk.h"

namespace {

/// Runs until it is told to stop.
int untilStopped(std::stop_token stop) {
    std::mutex mutex;
    std::condition_variable_any told;
    std::unique_lock lock(mutex);
    told.wait(lock, stop, [] { return false; });
    return -1;
}

}  // namespace

TEST(LatestAnswer, StopsTheOlderQuestionAndTellsOnlyTheNewer) {
    QObject receiver;
    std::vector<int> told;
    desktop::LatestAnswer<int> answers(&receiver);
    const auto tell = [&](int answer) { told.push_back(answer); };
    answers.ask(untilStopped, tell);
    EXPECT_TRUE(answers.isWorking());
    answers.ask([](std::stop_token) { return 7; }, tell);
    ASSERT_TRUE(pages::comesTrue([&] { return !told.empty(); }));
    EXPECT_EQ(told, std::vector<int>{7});
    EXPECT_FALSE(answers.isWorking());
}

TEST(LatestAnswer, ASlowAnswerIsThrownAwayWhenItWasWithdrawn) {
    QObject receiver;
    int told = 0;
    std::latch finished(1);
    {
        desktop::LatestAnswer<int> answers(&receiver);
        answers.ask([&](std::stop_token) { return finished.count_down(), 1; }, [&](int) { ++told; });
        finished.wait();
        answers.stop();
        QCoreApplication::processEvents();
    }
    EXPECT_EQ(told, 0);
}

TEST(LatestAnswer, EndsItsThreadsWhenItGoes) {
    QObject receiver;
    {
        desktop::LatestAnswer<int> answers(&receiver);
        answers.ask(untilStopped, [](int) {});
    }
    SUCCEED() << "it did not wait for ever";
}
