// SPDX-License-Identifier: MIT
#include "app/desktop/mix/keep_mix_dialogs.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <algorithm>

#include "app/desktop/memory.h"
#include "app/desktop/readings/moment_edit.h"
#include "app/desktop/widgets/date_edit.h"
#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"
#include "app/plot/readings_text.h"
#include "db/actions/mix_actions.h"

namespace desktop {

namespace {

constexpr std::size_t mostSessionsOffered = 200;
const QString stationOfLastMix = QStringLiteral("mix/station");

std::vector<core::Session> newestSessions(const Workspace& workspace) {
    std::vector<core::Session> sessions = workspace.logbook().sessions();
    std::ranges::stable_sort(sessions, std::ranges::greater(), &core::Session::date);
    if (sessions.size() > mostSessionsOffered) sessions.resize(mostSessionsOffered);
    return sessions;
}

QLabel* titleOfMix(const core::KeptMix& mix) {
    auto* label = new QLabel(QString::fromStdString(mix.title));
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

/// Cancel, and the button that keeps it.
QDialogButtonBox* keepingButtons(QDialog& dialog, const QString& text, const char* name) {
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, &dialog);
    auto* keep = buttons->addButton(text, QDialogButtonBox::AcceptRole);
    keep->setObjectName(QString::fromLatin1(name));
    keep->setDefault(true);
    QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    return buttons;
}

}  // namespace

KeepWithSessionDialog::KeepWithSessionDialog(const PageContext& context, core::KeptMix mix, QWidget* parent)
    : QDialog(parent), workspace_(context.workspace), mix_(std::move(mix)), session_(new QComboBox) {
    setObjectName(QStringLiteral("keepWithSession"));
    setWindowTitle(tr("Keep with a session"));
    session_->setObjectName(QStringLiteral("mixSession"));
    for (const core::Session& session : newestSessions(workspace_)) {
        const QString day = session.date == workspace_.today() ? tr("today") : plot::dateText(session.date);
        const QString who = QString::fromStdString(session.worker);
        session_->addItem(who.isEmpty() ? day : tr("%1, %2", "day, who").arg(day, who),
                          QVariant::fromValue<qlonglong>(session.id.value));
    }
    auto* fault = new FaultLabel;
    marks_.setRest(fault);
    auto* form = new QFormLayout(this);
    form->addRow(tr("Mix"), titleOfMix(mix_));
    form->addRow(tr("&Session"), session_);
    form->addRow(fault);
    QDialogButtonBox* buttons = keepingButtons(*this, tr("Keep mix"), "keepMix");
    connect(buttons, &QDialogButtonBox::accepted, this, &KeepWithSessionDialog::keep);
    form->addRow(buttons);
    session_->setFocus();
}

void KeepWithSessionDialog::keep() {
    const core::Moment now = workspace_.clock()();
    mix_.madeAt = now;
    const core::SessionId session{session_->currentData().toLongLong()};
    const Outcome outcome =
        workspace_.run([&](db::Logbook& logbook) { return db::keepMix(logbook, session, mix_, now); });
    if (outcome.isDone) return accept();
    marks_.show(outcome.refusals);
}

KeepWithCareDialog::KeepWithCareDialog(const PageContext& context, core::KeptMix mix, std::optional<double> litres,
                                       QWidget* parent)
    : QDialog(parent),
      context_(context),
      mix_(std::move(mix)),
      station_(new QComboBox),
      kind_(new QComboBox),
      litres_(new MixField(MixField::Kind::Volume, context.workspace.shelves().facts.units)),
      at_(new MomentEdit(context.workspace.today(), context.workspace.clock()())),
      atFault_(new FaultLabel),
      litresFault_(new FaultLabel),
      note_(new QLineEdit) {
    setObjectName(QStringLiteral("keepWithCare"));
    setWindowTitle(tr("Write into the care of a station"));
    for (const core::Station& station : context.workspace.shelves().stations)
        if (!station.isRetired)
            station_->addItem(QString::fromStdString(station.name), QVariant::fromValue<qlonglong>(station.id.value));
    const QString last = context.memory ? context.memory->choice(stationOfLastMix) : QString();
    station_->setCurrentIndex(std::max(0, station_->findText(last)));
    for (const core::CareKind kind :
         {core::CareKind::ToppedUp, core::CareKind::SolutionChanged, core::CareKind::Sprayed, core::CareKind::Other})
        kind_->addItem(plot::careText(kind), static_cast<int>(kind));
    const bool isWhole = mix_.kind == core::MixKind::Nutrient;
    kind_->setCurrentIndex(isWhole ? 1 : 0);
    if (litres && *litres > 0) litres_->setStored(*litres);
    build();
    station_->setFocus();
}

void KeepWithCareDialog::build() {
    station_->setObjectName(QStringLiteral("mixStation"));
    kind_->setObjectName(QStringLiteral("mixCareKind"));
    litres_->setObjectName(QStringLiteral("mixLitres"));
    note_->setObjectName(QStringLiteral("mixCareNote"));
    auto* noteFault = new FaultLabel;
    marks_.add(QStringLiteral("Done at"), at_->day()->line(), atFault_);
    marks_.add(QStringLiteral("Litres"), litres_, litresFault_);
    marks_.add(QStringLiteral("Note"), note_, noteFault);
    marks_.setRest(noteFault);
    auto* volume = new QWidget;
    auto* row = new QHBoxLayout(volume);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(litres_);
    row->addWidget(new QLabel(tr("%1; blank: not known", "unit of volume").arg(litres_->unit())), 1);
    auto* volumeLabel = new QLabel(tr("&How much"));
    volumeLabel->setBuddy(litres_);
    auto* form = new QFormLayout(this);
    form->addRow(tr("Mix"), titleOfMix(mix_));
    form->addRow(tr("&Station"), station_);
    form->addRow(tr("&What"), kind_);
    form->addRow(volumeLabel, volume);
    form->addRow(litresFault_);
    form->addRow(tr("&Done at"), at_);
    form->addRow(atFault_);
    form->addRow(tr("N&ote"), note_);
    form->addRow(noteFault);
    QDialogButtonBox* buttons = keepingButtons(*this, tr("Write into care"), "keepMix");
    connect(buttons, &QDialogButtonBox::accepted, this, &KeepWithCareDialog::keep);
    form->addRow(buttons);
}

void KeepWithCareDialog::keep() {
    marks_.clear();
    const std::optional<core::Moment> at = at_->moment();
    if (!at) {
        atFault_->setFault(at_->fault());
        return at_->day()->line()->setFocus();
    }
    if (const QString fault = litres_->fault(tr("How much")); !fault.isEmpty()) {
        litresFault_->setFault(fault);
        return litres_->setFocus();
    }
    const core::Moment now = context_.workspace.clock()();
    mix_.madeAt = std::min(*at, now);
    core::Care care;
    care.station = {station_->currentData().toLongLong()};
    care.doneAt = *at;
    care.kind = static_cast<core::CareKind>(kind_->currentData().toInt());
    care.litres = litres_->stored();
    care.note = note_->text().trimmed().toStdString();
    const Outcome outcome =
        context_.workspace.run([&](db::Logbook& logbook) { return db::keepMixWithCare(logbook, care, mix_, now); });
    if (!outcome.isDone) {
        marks_.show(outcome.refusals);
        return;
    }
    if (context_.memory) context_.memory->setChoice(stationOfLastMix, station_->currentText());
    accept();
}

}  // namespace desktop
