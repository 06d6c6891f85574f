// SPDX-License-Identifier: MIT
#include "app/desktop/background/waiting_dialog.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QMetaObject>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>
#include <utility>

#include "app/desktop/workspace.h"

namespace desktop {

namespace {

constexpr int millisecondsUntilShown = 200;

}  // namespace

WaitingDialog::WaitingDialog(Workspace& workspace, const QString& title, const QString& sentence, QWidget* parent)
    : QDialog(parent), workspace_(workspace) {
    setObjectName("waitingDialog");
    setWindowTitle(title);
    setModal(true);
    build(sentence);
    slow_.setSingleShot(true);
    slow_.setInterval(millisecondsUntilShown);
    connect(&slow_, &QTimer::timeout, this, &QDialog::open);
}

void WaitingDialog::build(const QString& sentence) {
    sentence_ = new QLabel(sentence, this);
    sentence_->setObjectName("waitingSentence");
    sentence_->setWordWrap(true);
    bar_ = new QProgressBar(this);
    bar_->setObjectName("waitingBar");
    bar_->setAccessibleName(tr("How much of it is done"));
    bar_->setRange(0, 100);
    cancel_ = new QPushButton(tr("Cancel"), this);
    cancel_->setObjectName("waitingCancel");
    connect(cancel_, &QPushButton::clicked, this, &WaitingDialog::reject);
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    buttons->addWidget(cancel_);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(sentence_);
    layout->addWidget(bar_);
    layout->addLayout(buttons);
    setMinimumWidth(fontMetrics().averageCharWidth() * 60);
}

void WaitingDialog::start(Work work) {
    slow_.start();
    std::packaged_task<bool(std::stop_token)> task([this, work = std::move(work)](std::stop_token stop) {
        return work({.stop = std::move(stop), .tell = [this](double share) { tellShare(share); }});
    });
    answer_ = task.get_future();
    thread_ = std::jthread([this, task = std::move(task)](std::stop_token stop) mutable {
        task(std::move(stop));
        QMetaObject::invokeMethod(this, &WaitingDialog::end, Qt::QueuedConnection);
    });
}

void WaitingDialog::tellShare(double share) {
    const int percent = static_cast<int>(share * 100);
    if (percentTold_.exchange(percent) == percent) return;
    QMetaObject::invokeMethod(
        bar_, [this, percent] { bar_->setValue(percent); }, Qt::QueuedConnection);
}

void WaitingDialog::reject() {
    thread_.request_stop();
    cancel_->setEnabled(false);
    sentence_->setText(tr("Stopping \u2026"));
}

void WaitingDialog::end() {
    slow_.stop();
    bool isDone = false;
    workspace_.attemptWithout([&] { isDone = answer_.get(); });
    done(isDone ? Accepted : Rejected);
}

}  // namespace desktop
