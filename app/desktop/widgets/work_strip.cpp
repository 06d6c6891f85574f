// SPDX-License-Identifier: MIT
#include "app/desktop/widgets/work_strip.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <chrono>

namespace desktop {

WorkStrip::WorkStrip(const QString& name, QWidget* parent) : QWidget(parent) {
    using namespace std::chrono_literals;
    constexpr auto blink = 200ms;
    slow_.setObjectName(QStringLiteral("untilProgress"));
    slow_.setSingleShot(true);
    slow_.setInterval(blink);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(makeProgress(name));
    row->addWidget(makeStopped());
    connect(&slow_, &QTimer::timeout, this, [this] { progress_->setVisible(isWorking_); });
}

QWidget* WorkStrip::stopButton() const {
    return stop_;
}

QWidget* WorkStrip::goOnButton() const {
    return goOn_;
}

QWidget* WorkStrip::makeProgress(const QString& name) {
    progress_ = new QWidget;
    progress_->setObjectName(QStringLiteral("progress"));
    auto* bar = new QProgressBar;
    bar->setRange(0, 0);
    bar->setTextVisible(false);
    bar->setAccessibleName(name);
    bar->setMaximumWidth(fontMetrics().averageCharWidth() * 20);
    words_ = new QLabel;
    words_->setObjectName(QStringLiteral("progressWords"));
    stop_ = new QPushButton(tr("St&op"));
    stop_->setObjectName(QStringLiteral("stopWork"));
    connect(stop_, &QPushButton::clicked, this, [this] {
        emit stopWanted();
        goOn_->setFocus(Qt::OtherFocusReason);
    });
    auto* row = new QHBoxLayout(progress_);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(words_);
    row->addWidget(bar);
    row->addWidget(stop_);
    progress_->hide();
    return progress_;
}

QWidget* WorkStrip::makeStopped() {
    stopped_ = new QWidget;
    stopped_->setObjectName(QStringLiteral("stopped"));
    goOn_ = new QPushButton(tr("&Work it out"));
    goOn_->setObjectName(QStringLiteral("workItOut"));
    connect(goOn_, &QPushButton::clicked, this, &WorkStrip::goOnWanted);
    auto* row = new QHBoxLayout(stopped_);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(new QLabel(tr("Stopped: what is asked here is not worked out.")));
    row->addWidget(goOn_);
    stopped_->hide();
    return stopped_;
}

void WorkStrip::showWork(const WorkState& state) {
    isWorking_ = state.isWorking;
    stopped_->setVisible(state.isStopped);
    words_->setText(state.isReading ? tr("Reading the records") : tr("Working it out"));
    if (isWorking_ && !progress_->isVisibleTo(this) && !slow_.isActive()) slow_.start();
    if (isWorking_) return;
    slow_.stop();
    progress_->hide();
}

}  // namespace desktop
