// SPDX-License-Identifier: MIT
// The part of LogbookSettings that builds it.
#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/settings/logbook_settings.h"
#include "app/desktop/settings/root_length_edit.h"
#include "app/desktop/settings/unit_choices.h"
#include "app/desktop/widgets/count_edit.h"
#include "core/comparison/rate_interval.h"

namespace desktop {

namespace {

template <class Editor>
Editor* named(Editor* editor, const char* name) {
    editor->setObjectName(QString::fromLatin1(name));
    return editor;
}

QLineEdit* shortLine(const char* name, const QFontMetrics& metrics) {
    auto* edit = named(new QLineEdit, name);
    edit->setMaximumWidth(metrics.horizontalAdvance(QStringLiteral("0000000000")) + 2 * metrics.height());
    return edit;
}

}  // namespace

void LogbookSettings::addWho(QFormLayout& form) {
    name_ = named(new QLineEdit, "settingsName");
    grower_ = named(new QLineEdit, "settingsGrower");
    addLine(form, tr("&Name"), QStringLiteral("Name"), name_, &core::LogbookFacts::name);
    addLine(form, tr("&Grower"), QStringLiteral("Grower"), grower_, &core::LogbookFacts::grower,
            tr("as it stands on print-outs"));
}

void LogbookSettings::addUnits(QFormLayout& form) {
    temperature_ = named(new QComboBox, "settingsTemperature");
    ec_ = named(new QComboBox, "settingsEc");
    volume_ = named(new QComboBox, "settingsVolume");
    length_ = named(new QComboBox, "settingsLength");
    offerUnits(*temperature_, core::TemperatureUnit{});
    offerUnits(*ec_, core::EcUnit{});
    offerUnits(*volume_, core::VolumeUnit{});
    offerUnits(*length_, core::LengthUnit{});
    addRow(form, tr("&Temperature in"), QStringLiteral("Temperature"), temperature_);
    addRow(form, tr("&EC in"), QStringLiteral("EC"), ec_, tr("ppm: as your meter\u2019s scale says"));
    addRow(form, tr("&Volumes in"), QStringLiteral("Volume"), volume_);
    addRow(form, tr("&Lengths in"), QStringLiteral("Length"), length_);
    onChoice(*temperature_, [this](core::LogbookFacts& facts) {
        facts.units.temperature = unitIn<core::TemperatureUnit>(*temperature_);
    });
    onChoice(*ec_, [this](core::LogbookFacts& facts) { facts.units.ec = unitIn<core::EcUnit>(*ec_); });
    onChoice(*volume_, [this](core::LogbookFacts& facts) { facts.units.volume = unitIn<core::VolumeUnit>(*volume_); });
    onChoice(*length_, [this](core::LogbookFacts& facts) { facts.units.length = unitIn<core::LengthUnit>(*length_); });
    currency_ = shortLine("settingsCurrency", fontMetrics());
    connect(currency_, &QLineEdit::textEdited, currency_, [edit = currency_](const QString& typed) {
        const int at = edit->cursorPosition();
        edit->setText(typed.toUpper());
        edit->setCursorPosition(at);
        edit->setModified(true);
    });
    addLine(form, tr("C&urrency"), QStringLiteral("Currency"), currency_, &core::LogbookFacts::currency,
            tr("its three letters, such as EUR or USD"));
}

void LogbookSettings::addFigures(QFormLayout& form) {
    interval_ = named(new QComboBox, "settingsInterval");
    for (const core::RateInterval interval : core::everyRateInterval)
        interval_->addItem(QString::fromUtf8(core::nameOf(interval)), static_cast<int>(interval));
    addRow(form, tr("&Interval of a strike rate"), QStringLiteral("Interval"), interval_);
    onChoice(*interval_, [this](core::LogbookFacts& facts) {
        facts.interval = core::wordFor(static_cast<core::RateInterval>(interval_->currentData().toInt()));
    });
    intervalWords_ = quietLabel(QStringLiteral("settingsIntervalWords"));
    auto* how = named(new QPushButton(tr("&How is this worked out?")), "settingsIntervalHow");
    how->setAutoDefault(false);
    connect(how, &QPushButton::clicked, this, &LogbookSettings::explain);
    form.addRow(QString(), intervalWords_);
    form.addRow(QString(), how);
    level_ = shortLine("settingsLevel", fontMetrics());
    level_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    addRow(form, tr("Le&vel of every interval"), QStringLiteral("Level"), level_, tr("%"));
    takeFrom(*level_, [this] { takeLevel(); });
    levelWords_ = quietLabel(QStringLiteral("settingsLevelWords"));
    form.addRow(QString(), levelWords_);
}

void LogbookSettings::addRooted(QFormLayout& form) {
    rootLength_ = named(new RootLengthEdit, "settingsRootLength");
    addRow(form, tr("A root &counts from"), QStringLiteral("Root length in mm"), rootLength_);
    takeFrom(*rootLength_, [this] { takeRootLength(); });
    firstCheck_ = named(new CountEdit(1, 365), "settingsFirstCheck");
    checkEvery_ = named(new CountEdit(1, 365), "settingsCheckEvery");
    horizon_ = named(new CountEdit(1, 3650), "settingsHorizon");
    addDays(form, tr("&First look after"), QStringLiteral("Days to the first check"), firstCheck_,
            &core::LogbookFacts::firstCheckAfterDays, tr("days"));
    addDays(form, tr("Then a loo&k every"), QStringLiteral("Days between checks"), checkEvery_,
            &core::LogbookFacts::checkEveryDays, tr("days, where a plant or method has no schedule of its own"));
    addDays(form, tr("Methods are compared on &day"), QStringLiteral("Horizon day"), horizon_,
            &core::LogbookFacts::horizonDay, tr("after sticking, where a plant or trial sets no other"));
}

void LogbookSettings::addPaper(QFormLayout& form) {
    paper_ = named(new QComboBox, "settingsPaper");
    paper_->addItem(tr("A4"), QStringLiteral("A4"));
    paper_->addItem(tr("Letter"), QStringLiteral("Letter"));
    addRow(form, tr("&Paper"), QStringLiteral("Paper"), paper_);
    onChoice(*paper_,
             [this](core::LogbookFacts& facts) { facts.paper = paper_->currentData().toString().toStdString(); });
}

}  // namespace desktop
