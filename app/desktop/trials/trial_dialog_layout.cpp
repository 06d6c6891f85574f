// SPDX-License-Identifier: MIT
// The fields of the planning of a trial, and what stands beside them.
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <random>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/shelves/form_parts.h"
#include "app/desktop/trials/check_list.h"
#include "app/desktop/trials/trial_dialog.h"
#include "app/desktop/trials/trial_map_panel.h"
#include "app/desktop/trials/trial_power_panel.h"
#include "app/desktop/widgets/beside_or_below.h"
#include "app/desktop/widgets/count_edit.h"
#include "app/plot/number_text.h"
#include "app/report/trial_words.h"
#include "core/batch/batch_rules.h"
#include "core/trial/station_advice.h"
#include "core/trial/trial_rules.h"

namespace desktop {

namespace {

constexpr int latestHorizonDay = 3650;
constexpr double ofAHundred = 100;

std::string pointsShown(std::optional<double> share) {
    if (!share) return {};
    const double points = ofAHundred * *share;
    return plot::decimalText(points, std::abs(points - std::round(points)) < 1e-9 ? 0 : 1).toStdString();
}

template <class Choice, class Words>
void offerAll(QComboBox& box, std::initializer_list<Choice> choices, Choice chosen, const Words& words) {
    for (const Choice choice : choices) box.addItem(words(choice), static_cast<int>(choice));
    box.setCurrentIndex(box.findData(static_cast<int>(chosen)));
}

}  // namespace

TrialDialog::TrialDialog(QWidget* parent, const PageContext& context, const QString& title)
    : ThingForm(&context.prompts, title, parent),
      context_(context),
      shelves_(context.workspace.shelves()),
      rooms_(roomsNow(context.workspace)),
      drawSeed_([] { return static_cast<std::uint32_t>(std::random_device{}()); }) {
    setObjectName(QStringLiteral("trialDialog"));
}

TrialDialog::TrialDialog(const PageContext& context, core::TrialId trial, QWidget* parent)
    : TrialDialog(parent, context, trial.isSet() ? tr("Deal again") : tr("Plan a trial")) {
    const core::Trial* known = core::find(shelves_.trials, trial);
    start_ = known == nullptr ? freshDraft(shelves_, rooms_) : draftOf(*known, rooms_);
    isNameTheirs_ = known != nullptr;
    areStationsTheirs_ = !start_.layout.stations.empty() && known != nullptr;
    build();
}

TrialDialog* TrialDialog::proposing(const PageContext& context, core::TrialProposal proposal, QWidget* parent) {
    auto* dialog = new TrialDialog(parent, context, tr("Plan a trial"));
    const core::Shelves& made = dialog->made_;
    makeReady(proposal, dialog->made_);
    const auto append = [](auto& shelf, const auto& more) { shelf.insert(shelf.end(), more.begin(), more.end()); };
    append(dialog->shelves_.methods, made.methods);
    append(dialog->shelves_.treatments, made.treatments);
    append(dialog->shelves_.media, made.media);
    dialog->start_ = draftOf(proposal, dialog->shelves_, dialog->rooms_);
    dialog->isNameTheirs_ = true;
    dialog->areStationsTheirs_ = true;
    dialog->build();
    return dialog;
}

void TrialDialog::build() {
    addWhat();
    addHowJudged();
    addWhere();
    addBlocks();
    addTicks();
    QScrollArea* side = makeSide();
    side->setParent(this);  // before the buttons, so that Tab comes to it first
    finish(start_.trial.id.isSet() ? tr("&Save what is dealt") : tr("&Save trial"), QStringLiteral("saveTrial"),
           {.judge = [this] { return judged(); }, .keep = [this] { return write(); }});
    setAside(side);
    name_->setFocus();
    name_->selectAll();
}

void TrialDialog::addWhat() {
    const core::Trial& trial = start_.trial;
    name_ = addLine({tr("&Name"), "Name", QStringLiteral("trialName")}, trial.name);
    connect(name_, &QLineEdit::textEdited, this, [this] { isNameTheirs_ = !name_->text().trimmed().isEmpty(); });
    question_ = addNote({tr("&Question"), "Question", QStringLiteral("trialQuestion")}, trial.question);
    question_->setMaximumHeight(fontMetrics().height() * 4);
    factor_ = addChoice({tr("Arms &differ in"), "Factor", QStringLiteral("trialFactor")});
    using enum core::Factor;
    offerAll(*factor_, {Method, Treatment, Medium, CuttingKind}, trial.factor.value_or(Method), report::factorWords);
    arms_ = new CheckList;
    arms_->setAccessibleName(tr("Arms"));
    addEditor({tr("&Arms"), "Arms", QStringLiteral("trialArms")}, arms_);
    fillArms(factor());
    connect(factor_, &QComboBox::currentIndexChanged, this, [this] {
        fillArms(factor());
        followName();
        fillStations();
        changed("Factor");
    });
    connect(arms_, &CheckList::tickedChanged, this, [this] {
        followName();
        fillStations();
        changed("Arms");
    });
}

void TrialDialog::addHowJudged() {
    const core::Trial& trial = start_.trial;
    horizon_ = addCount({tr("&Horizon day"), "Horizon day", QStringLiteral("trialHorizon"),
                         tr("days after sticking, set before looking")},
                        trial.horizonDay, 1, latestHorizonDay);
    measure_ = addChoice({tr("&What counts"), "Measure", QStringLiteral("trialMeasure")});
    offerAll(*measure_, {core::TrialMeasure::MoreRooted, core::TrialMeasure::AsGoodAs}, trial.measure,
             [](core::TrialMeasure measure) {
                 return measure == core::TrialMeasure::MoreRooted ? tr("more rooted") : tr("as good as, within");
             });
    margin_ = addLine({tr("Difference that &matters"), "Margin", QStringLiteral("trialMargin"), tr("of 100")},
                      pointsShown(trial.margin));
    expected_ = addLine({tr("Ex&pected of the first arm"), "Expected", QStringLiteral("trialExpected"),
                         tr("of 100; blank: as on record")},
                        {});
    perArm_ =
        addCount({tr("&Cuttings per arm"), "Per arm", QStringLiteral("trialPerArm")}, trial.perArm, 1, core::mostStuck);
    connect(measure_, &QComboBox::currentIndexChanged, this, [this] { changed("Measure"); });
    connect(horizon_, &QLineEdit::textEdited, this, [this] { changed("Horizon day"); });
    connect(margin_, &QLineEdit::textEdited, this, [this] { changed("Margin"); });
    connect(expected_, &QLineEdit::textEdited, this, [this] { changed("Expected"); });
    connect(perArm_, &QLineEdit::textEdited, this, [this] { changed("Per arm"); });
}

void TrialDialog::addWhere() {
    stations_ = new CheckList;
    stations_->setAccessibleName(tr("Stations"));
    addEditor({tr("S&tations"), "Stations", QStringLiteral("trialStations")}, stations_);
    std::vector<ThingToTick> things;
    for (const core::StationRoom& room : rooms_) {
        const core::Method* method = core::find(shelves_.methods, room.method);
        const QString where = QString::fromStdString(room.name);
        const QString how = method == nullptr ? QString() : QString::fromStdString(method->name);
        things.push_back(
            {room.station.value,
             room.columns == 0
                 ? tr("%1 (%2), positions not described", "station, method").arg(where, how)
                 : tr("%1 (%2), %3 free", "station, method, number").arg(where, how, plot::countText(room.places))});
    }
    std::vector<std::int64_t> ticked;
    for (const core::StationRoom& room : start_.layout.stations) ticked.push_back(room.station.value);
    stations_->setThings(things, ticked);
    connect(stations_, &CheckList::tickedChanged, this, [this] {
        areStationsTheirs_ = true;
        changed("Stations");
    });
    sessions_ =
        addCount({tr("Sess&ions"), "Sessions", QStringLiteral("trialSessions"), tr("days on which it is stuck")},
                 start_.layout.sessions, 1, core::mostSessions);
    connect(sessions_, &QLineEdit::textEdited, this, [this] { changed("Sessions"); });
}

void TrialDialog::addBlocks() {
    blockedBy_ = addChoice({tr("&Blocks"), "Blocked by", QStringLiteral("trialBlockedBy")});
    using enum core::BlockedBy;
    offerAll(*blockedBy_, {Nothing, Plant, StockPlant, Session, StationSide}, start_.trial.blockedBy,
             report::blockWords);
    plant_ = addChoice({tr("Cuttings &of"), "Plants", QStringLiteral("trialPlant")});
    const auto plants = start_.plants();
    fillChoice(*plant_, shelves_.plants, plants.size() == 1 ? plants.front() : core::PlantId{},
               tr("said when it is stuck"));
    blocks_ = new CheckList;
    blocks_->setAccessibleName(tr("Plants of the blocks"));
    addEditor({tr("P&lants of the blocks"), "Blocks", QStringLiteral("trialBlocks")}, blocks_);
    fillBlocks();
    connect(plant_, &QComboBox::currentIndexChanged, this, [this] { changed("Blocks"); });
    connect(blocks_, &CheckList::tickedChanged, this, [this] { changed("Blocks"); });
    connect(blockedBy_, &QComboBox::currentIndexChanged, this, [this] {
        fillBlocks();
        changed("Blocked by");
    });
}

void TrialDialog::addTicks() {
    crossed_ =
        addTick(tr("C&ross methods over between sessions"), QStringLiteral("trialCrossed"), start_.trial.isCrossedOver);
    crossed_->setToolTip(tr("Each station has each method in turn, session by session"));
    cleared_ = addTick(tr("Stations are cleared between sessions"), QStringLiteral("trialCleared"), false);
    blinded_ = addTick(tr("Do not tell arms apart before the hori&zon"), QStringLiteral("trialBlinded"),
                       start_.trial.isBlinded);
    note_ = addNote({tr("Not&e"), "Note", QStringLiteral("trialNote")}, start_.trial.note);
    note_->setMaximumHeight(fontMetrics().height() * 4);
    for (QCheckBox* tick : {crossed_, cleared_, blinded_})
        connect(tick, &QCheckBox::toggled, this, [this] { changed("Crossed over"); });
}

void TrialDialog::fillArms(core::Factor factor) {
    std::vector<ThingToTick> things;
    std::vector<std::int64_t> ticked;
    const auto arms = armsToChooseFrom(factor, start_.trial, shelves_);
    for (const core::TrialArm& arm : arms)
        things.push_back({idOf(arm), QString::fromStdString(core::nameOf(arm, factor, shelves_))});
    if (factor == start_.trial.factor)
        for (const core::TrialArm& arm : start_.trial.arms) ticked.push_back(idOf(arm));
    arms_->setThings(things, ticked);
}

void TrialDialog::fillBlocks() {
    const bool isByMother = blockedBy() == core::BlockedBy::StockPlant;
    const bool isByPlants = isByMother || blockedBy() == core::BlockedBy::Plant;
    std::vector<ThingToTick> things;
    for (const core::Plant& plant : shelves_.plants) {
        const QString name = QString::fromStdString(core::fullName(plant));
        if (!isByMother && !plant.isRetired) things.push_back({plant.id.value, name});
        for (const core::StockPlant& mother : shelves_.stockPlants)
            if (isByMother && mother.plant == plant.id && !mother.isRetired)
                things.push_back({mother.id.value,
                                  tr("%1, %2", "plant, stock plant").arg(name, QString::fromStdString(mother.label))});
    }
    std::vector<std::int64_t> ticked;
    for (const core::TrialBlock& block : start_.layout.blocks)
        ticked.push_back(isByMother ? block.stockPlant.value : block.plant.value);
    blocks_->setThings(isByPlants ? things : std::vector<ThingToTick>(), ticked);
    blocks_->setEnabled(isByPlants);
    plant_->setEnabled(!isByPlants);
}

/// Stations follow the arms until somebody has ticked one.
void TrialDialog::fillStations() {
    if (stations_ == nullptr || areStationsTheirs_) return;
    const QSignalBlocker quiet(stations_);
    const auto usual = usualStations(draft().trial, rooms_);
    for (const core::StationRoom& room : rooms_)
        stations_->tick(room.station.value, std::ranges::find(usual, room.station) != usual.end());
}

void TrialDialog::followName() {
    if (!isNameTheirs_ && stations_ != nullptr)
        name_->setText(QString::fromStdString(proposedName(draft().trial, shelves_)));
}

QScrollArea* TrialDialog::makeSide() {
    power_ = new TrialPowerPanel(context_);
    map_ = new TrialMapPanel(context_);
    advice_ = cautionLabel(QStringLiteral("trialAdvice"));
    dealt_ = quietLabel(QStringLiteral("trialDealt"));
    deal_ = new QPushButton;
    deal_->setObjectName(QStringLiteral("dealByChance"));
    deal_->setAutoDefault(false);
    auto* content = new QWidget;
    auto* layout = new QVBoxLayout(content);
    layout->addWidget(advice_);
    layout->addWidget(power_);
    layout->addWidget(deal_, 0, Qt::AlignLeft);
    layout->addWidget(dealt_);
    layout->addWidget(map_);
    layout->addStretch();
    auto* scroll = new QScrollArea;
    scroll->setObjectName(QStringLiteral("trialSide"));
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(content);
    connect(deal_, &QPushButton::clicked, this, &TrialDialog::deal);
    connect(power_, &TrialPowerPanel::said, this, &TrialDialog::said);
    connect(map_, &TrialMapPanel::said, this, &TrialDialog::said);
    return scroll;
}

/// The form on the left, what it leads to on the right, or below it.
void TrialDialog::setAside(QScrollArea* side) {
    auto* rows = qobject_cast<QVBoxLayout*>(layout());
    auto* form = qobject_cast<QScrollArea*>(rows->itemAt(0)->widget());
    rows->removeWidget(form);
    auto* sides = new BesideOrBelow;
    rows->insertWidget(0, sides, 1);
    sides->add(*form, 3);
    sides->add(*side, 4);
    const TrialDraft now = draft();
    power_->ask(now);
    showCautions(*advice_, core::stationAdvice(now.trial, now.layout, shelves_));
    showDeal();
    resize(fontMetrics().height() * 80, fontMetrics().height() * 46);
}

}  // namespace desktop
