// SPDX-License-Identifier: MIT
// Long work on whole files that somebody waits for: runs away from the window's thread, shows how far it is, and can be called off. Shown
// only when the work takes longer than a blink. Accepted when it is done; rejected when it was called off or the world failed, which is
// said at the foot of the window.
#pragma once

#include <QDialog>
#include <QTimer>
#include <atomic>
#include <functional>
#include <future>
#include <thread>

#include "db/safekeeping/waiting.h"

class QLabel;
class QProgressBar;
class QPushButton;

namespace desktop {

class Workspace;

class WaitingDialog : public QDialog {
    Q_OBJECT

  public:
    /// Runs on a thread of its own. False: it was called off and has left nothing behind.
    using Work = std::function<bool(const db::Waiting&)>;

    WaitingDialog(Workspace& workspace, const QString& title, const QString& sentence, QWidget* parent = nullptr);

    /// Once. What it reads and writes has to outlive the dialog, or be its own.
    void start(Work work);
    /// Calls the work off; the dialog closes when it has ended.
    void reject() override;

  private:
    void build(const QString& sentence);
    void tellShare(double share);
    void end();

    Workspace& workspace_;
    QLabel* sentence_{};
    QProgressBar* bar_{};
    QPushButton* cancel_{};
    QTimer slow_;
    std::atomic<int> percentTold_{};
    std::future<bool> answer_;
    std::jthread thread_;  // last, so that it has ended before anything else of ours does
};

}  // namespace desktop
