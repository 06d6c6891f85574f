// SPDX-License-Identifier: MIT
#include "app/desktop/review/season_review_dialog.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>
#include <set>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/printing/print_preview.h"
#include "app/desktop/printing/printed_at.h"
#include "app/desktop/widgets/date_edit.h"
#include "app/desktop/workspace.h"
#include "app/report/season_review_records.h"
#include "app/report/season_review_sheet.h"

namespace desktop {

namespace {

// What a choice stands for: a year, or one of these.
constexpr int twelveMonths = -1, ownSpan = -2;

core::ReviewQuestion spanOf(int choice, core::Date today) {
    using std::chrono::January, std::chrono::December;
    if (choice == twelveMonths) {
        core::Date yearAgo = today - std::chrono::years(1);
        if (!yearAgo.ok()) yearAgo = yearAgo.year() / yearAgo.month() / std::chrono::last;
        return {.from = core::addDays(yearAgo, 1), .until = today};
    }
    const std::chrono::year year(choice);
    return {.from = year / January / 1, .until = year / December / 31};
}

}  // namespace

SeasonReviewDialog::SeasonReviewDialog(const PageContext& context, QWidget* parent)
    : QDialog(parent), context_(context), today_(context.workspace.today()), reading_(context.workspace, this) {
    setObjectName(QStringLiteral("seasonReviewDialog"));
    setWindowTitle(tr("Season review"));
    span_ = new QComboBox(this);
    span_->setObjectName(QStringLiteral("reviewSpan"));
    fillSpans();
    build();
    takeSpan();
    setWorking(false);
    connect(span_, &QComboBox::currentIndexChanged, this, &SeasonReviewDialog::takeSpan);
    span_->setFocus();
}

void SeasonReviewDialog::fillSpans() {
    std::set<int, std::greater<>> years{static_cast<int>(today_.year())};
    for (const core::BatchLine& line : context_.workspace.batchLines())
        years.insert(static_cast<int>(line.batch.stuckOn.year()));
    for (const int year : years) span_->addItem(QString::number(year), year);
    span_->insertItem(1, tr("The last 12 months"), twelveMonths);
    span_->insertItem(2, tr("From one day to another"), ownSpan);
    span_->setCurrentIndex(span_->findData(static_cast<int>(today_.year())));
}

QWidget* SeasonReviewDialog::makeDays() {
    auto* days = new QWidget(this);
    auto* form = new QFormLayout(days);
    form->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const QString& text, const QString& name, const QString& field, DateEdit*& edit,
                         FaultLabel*& fault) {
        edit = new DateEdit(today_, days);
        edit->line()->setObjectName(name);
        fault = new FaultLabel(days);
        auto* label = new QLabel(text, days);
        label->setBuddy(edit->line());
        form->addRow(label, edit);
        form->addRow(QString(), fault);
        marks_.add(field, edit->line(), fault);
        connect(edit, &DateEdit::dateChanged, this, [this] { marks_.clear(); });
    };
    auto* spanLabel = new QLabel(tr("&Season"), days);
    spanLabel->setBuddy(span_);
    form->addRow(spanLabel, span_);
    add(tr("&From"), QStringLiteral("reviewFrom"), QStringLiteral("From"), from_, fromFault_);
    add(tr("&Until"), QStringLiteral("reviewUntil"), QStringLiteral("Until"), until_, untilFault_);
    return days;
}

void SeasonReviewDialog::build() {
    auto* what = quietLabelSaying(
        tr("What was stuck in these days and what became of it, the best method of each plant and how sure that is, "
           "what was learned, what it cost and what to try next: two to four pages to print or to save."));
    what->setWordWrap(true);
    state_ = answerLabel(QStringLiteral("reviewState"));
    state_->setWordWrap(true);
    bar_ = new QProgressBar(this);
    bar_->setObjectName(QStringLiteral("reviewBar"));
    bar_->setAccessibleName(tr("How much of the review is worked out"));
    bar_->setRange(0, 100);
    for (QWidget* comesAndGoes : {static_cast<QWidget*>(bar_), static_cast<QWidget*>(state_)}) {
        QSizePolicy policy = comesAndGoes->sizePolicy();
        policy.setRetainSizeWhenHidden(true);
        comesAndGoes->setSizePolicy(policy);
    }
    review_ = new QPushButton(tr("Show the &review…"), this);
    review_->setObjectName(QStringLiteral("showReview"));
    review_->setDefault(true);
    cancel_ = new QPushButton(this);
    cancel_->setObjectName(QStringLiteral("reviewCancel"));
    cancel_->setAutoDefault(false);
    connect(review_, &QPushButton::clicked, this, &SeasonReviewDialog::work);
    connect(cancel_, &QPushButton::clicked, this, &SeasonReviewDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(what);
    layout->addWidget(makeDays());
    layout->addWidget(state_);
    layout->addWidget(bar_);
    layout->addStretch(1);
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    buttons->addWidget(review_);
    buttons->addWidget(cancel_);
    layout->addLayout(buttons);
    setMinimumWidth(fontMetrics().averageCharWidth() * 64);
}

void SeasonReviewDialog::takeSpan() {
    const int choice = span_->currentData().toInt();
    marks_.clear();
    state_->clear();
    for (DateEdit* edit : {from_, until_}) edit->setEnabled(choice == ownSpan);
    if (choice == ownSpan) return from_->line()->setFocus();
    const core::ReviewQuestion span = spanOf(choice, today_);
    from_->setDate(span.from);
    until_->setDate(span.until);
}

std::optional<core::ReviewQuestion> SeasonReviewDialog::question() {
    core::Refusals faults;
    for (const auto& [field, edit] : {std::pair("From", from_), std::pair("Until", until_)})
        if (!edit->date())
            faults.push_back({.field = field,
                              .value = edit->line()->text().toStdString(),
                              .allowed = {},
                              .sentence = edit->fault().toStdString()});
    if (!marks_.show(faults)) return {};
    return core::ReviewQuestion{.from = *from_->date(), .until = *until_->date()};
}

void SeasonReviewDialog::work() {
    const std::optional<core::ReviewQuestion> asked = question();
    if (!asked || isWorking_) return;
    percentTold_ = -1;
    setWorking(true);
    reading_.ask(
        [this, asked = *asked, today = today_](const db::Logbook& logbook, const std::stop_token& stop) -> Answer {
            const report::SeasonRecords records = report::seasonRecordsOf(logbook, today);
            auto review = core::seasonReview(asked, records.view(), stop, [this](double share) { tellShare(share); });
            return std::make_shared<const Reviewed>(records.shelves, std::move(review));
        },
        [this](const Answer& answer) { show(*answer); }, [this] { setWorking(false); });
}

/// Called on the thread that works; what is told too late is told to nobody, since the bar is gone only after that thread.
void SeasonReviewDialog::tellShare(double share) {
    const int percent = static_cast<int>(share * 100);
    if (percentTold_.exchange(percent) == percent) return;
    QMetaObject::invokeMethod(
        bar_, [this, percent] { bar_->setValue(percent); }, Qt::QueuedConnection);
}

void SeasonReviewDialog::setWorking(bool isWorking) {
    isWorking_ = isWorking;
    bar_->setVisible(isWorking);
    bar_->setValue(0);
    review_->setEnabled(!isWorking);
    span_->setEnabled(!isWorking);
    for (DateEdit* edit : {from_, until_}) edit->setEnabled(!isWorking && span_->currentData().toInt() == ownSpan);
    state_->setText(isWorking ? tr("Working it out …") : QString());
    state_->setVisible(isWorking);
    cancel_->setText(isWorking ? tr("&Cancel") : tr("&Close"));
    if (isWorking) cancel_->setFocus();
}

void SeasonReviewDialog::show(const Reviewed& reviewed) {
    setWorking(false);
    review_->setFocus();
    if (!reviewed.review) {
        marks_.show(reviewed.review.error());
        return;
    }
    const core::SeasonReview& review = *reviewed.review;
    if (review.counts.batches == 0) {
        state_->setText(QString::fromStdString(review.inWords));
        state_->setVisible(true);
        return;
    }
    auto sheet = std::make_shared<const report::Sheet>(
        report::seasonReviewSheet(review, reviewed.shelves, printedAt(context_.workspace)));
    const PrintPreview* preview = showPrintPreview(sheet, sheet->title, context_, this);
    connect(preview, &PrintPreview::said, this, &SeasonReviewDialog::said);
    emit reviewShown();
}

void SeasonReviewDialog::reject() {
    if (!isWorking_) return QDialog::reject();
    reading_.stop();
    setWorking(false);
    state_->setText(tr("Called off."));
    state_->setVisible(true);
    review_->setFocus();
}

}  // namespace desktop
