// SPDX-License-Identifier: MIT
#include "app/desktop/settings/machine_settings.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QSlider>
#include <algorithm>

#include "app/desktop/look/appearance.h"
#include "app/desktop/memory.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/settings/number_format.h"
#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"

namespace desktop {

namespace {

constexpr int smallestText = 80;  // percent
constexpr int largestText = 200;
constexpr int textStep = 10;

}  // namespace

MachineSettings::MachineSettings(const PageContext& context, Appearance& appearance, QWidget* parent)
    : QWidget(parent), context_(context), appearance_(appearance) {
    setObjectName(QStringLiteral("machineSettings"));
    auto* form = new QFormLayout(this);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    addLook(*form);
    addNumbers(*form);
    addRound(*form);
    connect(&appearance_, &Appearance::changed, this, &MachineSettings::showLook);
    showLook();
    showExample();
}

void MachineSettings::addLook(QFormLayout& form) {
    theme_ = new QComboBox;
    theme_->setObjectName(QStringLiteral("settingsTheme"));
    theme_->addItem(tr("as the system"), static_cast<int>(Theme::System));
    theme_->addItem(tr("light"), static_cast<int>(Theme::Light));
    theme_->addItem(tr("dark"), static_cast<int>(Theme::Dark));
    theme_->addItem(tr("high contrast"), static_cast<int>(Theme::HighContrast));
    form.addRow(tr("&Look"), theme_);
    connect(theme_, &QComboBox::currentIndexChanged, this,
            [this] { appearance_.setTheme(static_cast<Theme>(theme_->currentData().toInt())); });

    text_ = new QSlider(Qt::Horizontal);
    text_->setObjectName(QStringLiteral("settingsText"));
    text_->setRange(smallestText / textStep, largestText / textStep);
    text_->setPageStep(1);
    text_->setTickPosition(QSlider::TicksBelow);
    text_->setTickInterval(1);
    textPercent_ = new QLabel;
    textPercent_->setObjectName(QStringLiteral("settingsTextPercent"));
    auto* label = new QLabel(tr("&Text size"));
    label->setBuddy(text_);
    auto* line = new QHBoxLayout;
    line->addWidget(text_, 1);
    line->addWidget(textPercent_);
    form.addRow(label, line);
    // While it is dragged every step would lay the whole window out anew.
    text_->setTracking(false);
    connect(text_, &QSlider::sliderMoved, this,
            [this](int steps) { textPercent_->setText(plot::shareText(steps * textStep / 100.0)); });
    connect(text_, &QSlider::valueChanged, this, [this](int steps) { appearance_.setTextPercent(steps * textStep); });
}

void MachineSettings::addNumbers(QFormLayout& form) {
    numbers_ = new QComboBox;
    numbers_->setObjectName(QStringLiteral("settingsNumbers"));
    numbers_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    numbers_->setMinimumContentsLength(30);
    numbers_->addItem(tr("as the system writes them"), QString());
    for (const NumberFormat& format : numberFormats()) numbers_->addItem(format.title, format.localeName);
    const QString worn = context_.memory ? context_.memory->numberFormat() : QString();
    numbers_->setCurrentIndex(std::max(0, numbers_->findData(worn)));
    form.addRow(tr("&Dates and numbers"), numbers_);
    example_ = quietLabel(QStringLiteral("settingsNumbersExample"));
    form.addRow(QString(), example_);
    connect(numbers_, &QComboBox::currentIndexChanged, this, [this] {
        const QString chosen = numbers_->currentData().toString();
        if (context_.memory) context_.memory->setNumberFormat(chosen);
        wearNumberFormat(chosen);
        showExample();
        showLook();
        context_.workspace.showAnew();
    });
}

void MachineSettings::addRound(QFormLayout& form) {
    round_ = new QComboBox;
    round_->setObjectName(QStringLiteral("settingsRound"));
    round_->addItem(tr("rooted in all, so far"), QStringLiteral("in all"));
    round_->addItem(tr("newly rooted since the last look"), QStringLiteral("new"));
    const QString kept = context_.memory ? context_.memory->choice(choice::plainNumber) : QString();
    round_->setCurrentIndex(std::max(0, round_->findData(kept)));
    form.addRow(tr("A plain number in a &round means"), round_);
    connect(round_, &QComboBox::currentIndexChanged, this, [this] {
        if (context_.memory) context_.memory->setChoice(choice::plainNumber, round_->currentData().toString());
    });
}

void MachineSettings::showLook() {
    const QSignalBlocker quietTheme(theme_);
    const QSignalBlocker quietText(text_);
    theme_->setCurrentIndex(theme_->findData(static_cast<int>(appearance_.theme())));
    text_->setValue(appearance_.textPercent() / textStep);
    textPercent_->setText(plot::shareText(appearance_.textPercent() / 100.0));
}

void MachineSettings::showExample() {
    example_->setText(tr("Such as: %1").arg(numberFormatExample()));
}

}  // namespace desktop
