// SPDX-License-Identifier: MIT
// What a form remembers from one time to the next.
#include <QComboBox>

#include "app/desktop/memory.h"
#include "app/desktop/mix/mix_form.h"
#include "core/units/number_entry.h"

namespace desktop {

namespace {

/// Lines of rows as text: the unit of volume, then a line each, fields parted by tabs.
QString rowsText(const std::vector<QStringList>& lines, core::VolumeUnit unit) {
    QStringList all{QString::fromUtf8(core::wordFor(unit))};
    for (const QStringList& line : lines) all << line.join(u'\t');
    return all.join(u'\n');
}

/// What was typed for one unit of volume as it is for another.
QString inOtherVolume(const QString& typed, core::VolumeUnit from, core::VolumeUnit to) {
    const std::optional<double> figure = core::numberFrom(typed.toStdString());
    if (!figure || from == to) return typed;
    return typedText(core::storedVolume(core::shownVolume(*figure, from), to));
}

}  // namespace

QString MixForm::memoryName(const Entry& entry) const {
    const QString name = QString::fromLatin1(entry.text.name);
    return entry.text.isShared ? QStringLiteral("mix/all/%1").arg(name)
                               : QStringLiteral("mix/%1/%2").arg(question_, name);
}

QString MixForm::keptIn(const Entry& entry) const {
    if (entry.number) return entry.number->kept();
    if (entry.choice) return entry.choice->currentData().toString();
    return rowsText(entry.rows->lines(), units_.volume);
}

void MixForm::remember(const Entry& entry) {
    if (isRecalling_) return;
    if (context_.memory) context_.memory->setChoice(memoryName(entry), keptIn(entry));
    emit changed();
}

void MixForm::restoreRows(const Entry& entry, const QString& kept) {
    QStringList lines = kept.split(u'\n');
    const std::optional<core::VolumeUnit> unit = core::volumeUnitFrom(lines.takeFirst().toStdString());
    if (!unit || kept == keptIn(entry)) return;
    std::vector<QStringList> rows;
    for (const QString& line : lines) {
        QStringList texts = line.split(u'\t');
        if (texts.size() != static_cast<qsizetype>(entry.fields.size())) continue;
        if (entry.perVolume >= 0) texts[entry.perVolume] = inOtherVolume(texts[entry.perVolume], *unit, units_.volume);
        const QString before = u'/' + QString::fromUtf8(core::wordFor(*unit));
        const QString now = u'/' + QString::fromUtf8(core::wordFor(units_.volume));
        for (std::size_t column = 0; column < entry.fields.size(); ++column)
            if (entry.fields[column].kind == RowsEdit::Kind::Choice)
                texts[static_cast<qsizetype>(column)].replace(before, now);
        rows.push_back(texts);
    }
    entry.rows->setLines(rows);
}

void MixForm::restoreInto(const Entry& entry, const QString& kept) {
    if (entry.number && kept != entry.number->kept()) entry.number->restore(kept);
    if (entry.choice)
        if (const int index = entry.choice->findData(kept); index >= 0) entry.choice->setCurrentIndex(index);
    if (entry.rows) restoreRows(entry, kept);
}

void MixForm::recall() {
    if (context_.memory == nullptr) return;
    isRecalling_ = true;
    for (const Entry& each : entries_)
        if (const QString kept = context_.memory->choice(memoryName(each)); !kept.isEmpty()) restoreInto(each, kept);
    isRecalling_ = false;
    emit changed();
}

QMap<QString, QString> MixForm::kept() const {
    QMap<QString, QString> all;
    for (const Entry& each : entries_) all.insert(QString::fromLatin1(each.text.name), keptIn(each));
    return all;
}

void MixForm::restore(const QMap<QString, QString>& kept) {
    isRecalling_ = true;
    for (const Entry& each : entries_)
        if (const auto text = kept.constFind(QString::fromLatin1(each.text.name)); text != kept.cend())
            restoreInto(each, *text);
    isRecalling_ = false;
    emit changed();
}

}  // namespace desktop
