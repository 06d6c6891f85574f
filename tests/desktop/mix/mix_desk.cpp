// SPDX-License-Identifier: MIT
#include "tests/desktop/mix/mix_desk.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QStackedWidget>

#include "app/desktop/widgets/fault_label.h"
#include "db/actions/shelf_actions.h"

namespace mixing {

using pages::named;

MixDesk::MixDesk()
    : memory_(std::make_unique<desktop::Memory>(
          desktop::MemoryFiles{folder_.filePath("settings.ini"), folder_.filePath("state.ini")})) {
    openPage();
}

void MixDesk::openPage() {
    page_.reset();
    desktop::PageContext remembering = context();
    remembering.memory = memory_.get();
    page_ = std::make_unique<desktop::MixPage>(remembering);
    pages::show(*page_);
    page_->activated();
}

void MixDesk::ask(const QString& question) {
    const std::vector<desktop::MixQuestion> all = desktop::mixQuestions();
    for (std::size_t number = 0; number < all.size(); ++number)
        if (all[number].word == question) {
            named<QListWidget>(*page_, "mixQuestions").setCurrentRow(static_cast<int>(number));
            return;
        }
    FAIL() << "there is no question " << question.toStdString();
}

desktop::MixView& MixDesk::view() const {
    return *qobject_cast<desktop::MixView*>(page_->findChild<QStackedWidget*>()->currentWidget());
}

QLineEdit& MixDesk::field(const char* name) const {
    return named<QLineEdit>(view(), (std::string("mix_") + name).c_str());
}

void MixDesk::fill(const char* name, const QString& text) {
    field(name).setFocus();
    field(name).selectAll();
    QTest::keyClick(&field(name), Qt::Key_Backspace);
    QTest::keyClicks(&field(name), text);
}

void MixDesk::choose(const char* name, const QString& word) {
    auto& box = named<QComboBox>(view(), (std::string("mix_") + name).c_str());
    ASSERT_GE(box.findData(word), 0) << word.toStdString();
    box.setCurrentIndex(box.findData(word));
}

void MixDesk::fillCells(const std::vector<std::pair<QString, QString>>& cells) {
    for (const auto& [name, text] : cells) {
        auto* edit = view().findChild<QLineEdit*>(name);
        ASSERT_NE(edit, nullptr) << name.toStdString();
        edit->clear();
        QTest::keyClicks(edit, text);
    }
}

std::string MixDesk::words(const char* label) const {
    const auto& found = named<QLabel>(view(), label);
    return found.isVisible() ? found.text().toStdString() : std::string();
}

std::string MixDesk::taken(int row) const {
    const auto* label = view().findChild<QLabel*>(QStringLiteral("mixAmount_%1_1").arg(row));
    return label && label->isVisible() ? label->text().toStdString() : "nothing";
}

QStringList MixDesk::faults() const {
    QStringList faults;
    for (const desktop::FaultLabel* label : view().findChildren<desktop::FaultLabel*>())
        if (label->isVisible()) faults << label->fault();
    return faults;
}

void MixDesk::useUnits(const core::DisplayUnits& units) {
    core::LogbookFacts facts = workspace_.shelves().facts;
    facts.units = units;
    ASSERT_TRUE(workspace_.run([&](db::Logbook& logbook) { return db::keep(logbook, facts); }).isDone);
}

void MixDesk::fillFeed() {
    fill("water", "0.3");
    fill("full", "2.4");
    fillCells({{"mixPart1", "A"}, {"mixDose1", "1.2"}});
    for (QPushButton* button : view().findChildren<QPushButton*>())
        if (button->text() == QStringLiteral("&Another part")) button->click();
    fillCells({{"mixPart2", "B"}, {"mixDose2", "1.2"}});
}

support::HorticultureCheck reference(const std::string& function, const std::string& id) {
    for (const support::HorticultureCheck& check : support::horticultureChecks({function}))
        if (check.id == id) return check;
    throw std::logic_error("no check " + id);
}

}  // namespace mixing
