// SPDX-License-Identifier: MIT
#include "app/desktop/session/session_minding.h"

#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include "app/desktop/session/session_model.h"
#include "app/desktop/widgets/caution_strip.h"

namespace desktop {

namespace {

constexpr int longestLicence = 200;  // as lines of text may be

}  // namespace

SessionMinding::SessionMinding(SessionModel& model, QWidget* parent)
    : QWidget(parent), model_(model), strip_(new CautionStrip), form_(new QFormLayout) {
    setObjectName(QStringLiteral("sessionMinding"));
    form_->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form_->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(form_);
    layout->addWidget(strip_);
    connect(&model_, &SessionModel::viewChanged, this, &SessionMinding::show);
    show();
}

void SessionMinding::show() {
    const SessionView& view = model_.view();
    strip_->mind(view.cautions);
    std::vector<core::PlantId> plants;
    for (const AskedLicence& licence : view.licences) plants.push_back(licence.plant);
    if (plants != asked_) {
        asked_ = std::move(plants);
        askForLicences();
    }
    for (std::size_t i = 0; i < licences_.size(); ++i)
        if (!licences_[i]->hasFocus() && licences_[i]->text() != view.licences[i].text)
            licences_[i]->setText(view.licences[i].text);
    setVisible(!view.cautions.empty() || !asked_.empty());
}

void SessionMinding::askForLicences() {
    while (form_->rowCount() > 0) form_->removeRow(0);
    licences_.clear();
    for (const AskedLicence& licence : model_.view().licences) {
        auto* edit = new QLineEdit(licence.text);
        edit->setObjectName(QStringLiteral("sessionLicence"));
        edit->setMaxLength(longestLicence);
        edit->setPlaceholderText(tr("may be left empty; then the batch says that none is written down"));
        connect(edit, &QLineEdit::textEdited, this,
                [this, plant = licence.plant](const QString& text) { model_.setLicence(plant, text); });
        auto* label = new QLabel(tr("Licence or permission for %1").arg(licence.name));
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
        label->setBuddy(edit);
        form_->addRow(label, edit);
        licences_.push_back(edit);
    }
}

}  // namespace desktop
