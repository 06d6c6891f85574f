// SPDX-License-Identifier: MIT
#include "app/desktop/mix/mix_form.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <algorithm>
#include <limits>

#include "app/desktop/memory.h"
#include "app/desktop/names/mnemonic.h"
#include "app/desktop/workspace.h"
#include "core/units/number_entry.h"

namespace desktop {

namespace {

/// Falls out of every range that core knows, so that nothing is concluded from it.
constexpr double notThere = std::numeric_limits<double>::quiet_NaN();

}  // namespace

MixForm::MixForm(const PageContext& context, const QString& question, QWidget* parent)
    : QWidget(parent),
      context_(context),
      question_(question),
      units_(context.workspace.hasLogbook() ? context.workspace.shelves().facts.units : core::DisplayUnits{}),
      layout_(new QFormLayout(this)) {
    setObjectName(QStringLiteral("mixForm"));
    layout_->setContentsMargins(0, 0, 0, 0);
    layout_->setRowWrapPolicy(QFormLayout::WrapLongRows);
}

QWidget* MixForm::addRow(Entry entry, QWidget* editor, QWidget* row) {
    entry.label = withoutMnemonic(entry.text.label);
    editor->setObjectName(QStringLiteral("mix_%1").arg(QLatin1String(entry.text.name)));
    if (!entry.rows) editor->setAccessibleName(entry.label);  // its label stands outside its row
    auto* label = new QLabel(entry.text.label, this);
    label->setBuddy(editor);
    auto* fault = new FaultLabel(this);
    layout_->addRow(label, row);
    layout_->addRow(fault);
    marks_.add(QString::fromLatin1(entry.text.field), editor, fault);
    if (entry.rows) marks_.setRest(fault);
    entry.parts = {label, row};
    entries_.push_back(std::move(entry));
    return row;
}

void MixForm::addNumber(MixField::Kind kind, const MixFieldText& text, std::optional<double> first) {
    auto* field = new MixField(kind, units_, this);
    if (first) field->setStored(*first);
    QString after = field->unit();
    if (kind == MixField::Kind::PerVolume) after = text.after.arg(QString::fromUtf8(core::wordFor(units_.volume)));
    if (after.isEmpty() || kind == MixField::Kind::Auxin) after = text.after.isEmpty() ? after : text.after;
    auto* row = new QWidget(this);
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    line->addWidget(field);
    line->addWidget(new QLabel(after, row), 1);
    Entry made{.text = text, .label = {}, .number = field, .fields = {}, .lineText = {}, .parts = {}};
    addRow(std::move(made), field, row);
    const std::size_t at = entries_.size() - 1;
    connect(field, &QLineEdit::textChanged, this, [this, at] { remember(entries_[at]); });
}

void MixForm::addChoice(const MixFieldText& text, const std::vector<MixOffer>& offers) {
    auto* box = new QComboBox(this);
    for (const MixOffer& offer : offers) box->addItem(offer.text, offer.word);
    Entry made{.text = text, .label = {}, .choice = box, .fields = {}, .lineText = {}, .parts = {}};
    addRow(std::move(made), box, box);
    const std::size_t at = entries_.size() - 1;
    connect(box, &QComboBox::currentIndexChanged, this, [this, at] { remember(entries_[at]); });
}

void MixForm::addRows(const MixFieldText& text, const std::vector<RowsEdit::Field>& fields, const QString& addText,
                      const QString& lineText, int perVolume) {
    auto* rows = new RowsEdit(fields, addText, lineText, this);
    rows->setLines({});
    Entry made{.text = text,
               .label = {},
               .rows = rows,
               .fields = fields,
               .lineText = lineText,
               .perVolume = perVolume,
               .parts = {}};
    addRow(std::move(made), rows, rows);
    const std::size_t at = entries_.size() - 1;
    connect(rows, &RowsEdit::changed, this, [this, at] { remember(entries_[at]); });
}

void MixForm::addScale() {
    addNumber(MixField::Kind::Figure, {"scale", tr("S&cale, steps of"), "Step of the scale", tr("g"), true},
              core::MeasuringTools{}.scale);
}

void MixForm::addSyringe() {
    addNumber(MixField::Kind::Figure, {"syringe", tr("S&yringe, steps of"), "Step of the syringe", tr("mL"), true},
              core::MeasuringTools{}.syringe);
}

void MixForm::addJug() {
    addNumber(MixField::Kind::Volume, {"jug", tr("&Jug, steps of"), "Step of the jug", {}, true},
              core::storedVolume(core::MeasuringTools{}.jug, units_.volume));
}

const MixForm::Entry& MixForm::entry(const char* name) const {
    const auto found = std::ranges::find_if(
        entries_, [name](const Entry& each) { return QLatin1String(each.text.name) == QLatin1String(name); });
    Q_ASSERT(found != entries_.end());
    return *found;
}

double MixForm::number(const char* name) const {
    return given(name).value_or(notThere);
}

int MixForm::count(const char* name) const {
    return static_cast<int>(given(name).value_or(0));
}

std::optional<double> MixForm::given(const char* name) const {
    return entry(name).isShown ? entry(name).number->stored() : std::nullopt;
}

QString MixForm::chosen(const char* name) const {
    return entry(name).choice->currentData().toString();
}

std::vector<QStringList> MixForm::lines(const char* name) const {
    return entry(name).rows->lines();
}

core::MeasuringTools MixForm::tools() const {
    core::MeasuringTools tools;
    for (const Entry& each : entries_) {
        const QLatin1String name(each.text.name);
        double* step = name == QLatin1String("scale")     ? &tools.scale
                       : name == QLatin1String("syringe") ? &tools.syringe
                       : name == QLatin1String("jug")     ? &tools.jug
                                                          : nullptr;
        if (step) *step = each.number->stored().value_or(notThere);
    }
    return tools;
}

void MixForm::showField(const char* name, bool isShown) {
    for (Entry& each : entries_) {
        if (QLatin1String(each.text.name) != QLatin1String(name)) continue;
        each.isShown = isShown;
        for (QWidget* part : each.parts) part->setVisible(isShown);
    }
}

void MixForm::addRowFaults(core::Refusals& faults, const Entry& entry) const {
    int line = 0;
    for (const QStringList& texts : entry.rows->lines()) {
        ++line;
        for (std::size_t column = 0; column < entry.fields.size(); ++column) {
            const QString text = texts[static_cast<qsizetype>(column)];
            if (entry.fields[column].kind != RowsEdit::Kind::Number || text.isEmpty() ||
                core::numberFrom(text.toStdString()))
                continue;
            faults.push_back(
                {.field = entry.text.field,
                 .value = text.toStdString(),
                 .allowed = {},
                 .sentence =
                     tr("%1 %2, %3, is \u201c%4\u201d; a number is allowed, such as 1.2.", "Part 2, full dose, is x")
                         .arg(entry.lineText, QString::number(line), entry.fields[column].title, text)
                         .toStdString()});
        }
    }
}

core::Refusals MixForm::faults(core::Refusals ofCore) const {
    core::Refusals faults;
    bool areRowsWhole = true;
    for (const Entry& each : entries_) {
        if (!each.isShown) continue;
        if (each.rows) addRowFaults(faults, each);
        if (each.number) {
            if (const QString sentence = each.number->fault(each.label); !sentence.isEmpty())
                faults.push_back({.field = each.text.field,
                                  .value = each.number->text().toStdString(),
                                  .allowed = {},
                                  .sentence = sentence.toStdString()});
        }
    }
    areRowsWhole = faults.empty() && missing().isEmpty();
    for (core::Refusal& fault : ofCore) {
        const auto stands = [&fault](const Entry& each) { return fault.field == each.text.field; };
        const auto field = std::ranges::find_if(entries_, stands);
        const bool isOfRows = field == entries_.end() || field->rows;
        const bool isTyped = !isOfRows && field->isShown && field->number && field->number->stored();
        const bool isChosen = !isOfRows && field->choice && areRowsWhole;
        if (isTyped || isChosen || (isOfRows && areRowsWhole)) faults.push_back(std::move(fault));
    }
    return faults;
}

QStringList MixForm::missing() const {
    QStringList missing;
    for (const Entry& each : entries_) {
        if (!each.isShown || each.text.mayBeBlank) continue;
        if (each.number && each.number->isBlank()) missing << each.label;
        if (!each.rows) continue;
        const std::vector<QStringList> all = each.rows->lines();
        const auto hasBlank = [](const QStringList& line) { return line.contains(QString()); };
        if (all.size() < each.text.leastLines || std::ranges::any_of(all, hasBlank)) missing << each.label;
    }
    return missing;
}

void MixForm::mark(const core::Refusals& faults) {
    marks_.mark(faults);
}

void MixForm::begin() {
    if (entries_.empty()) return;
    const Entry& first = entries_.front();
    if (first.number) {
        first.number->setFocus(Qt::OtherFocusReason);
        first.number->selectAll();
    } else if (first.choice) {
        first.choice->setFocus(Qt::OtherFocusReason);
    } else {
        first.rows->setFocus(Qt::OtherFocusReason);
    }
}

}  // namespace desktop
