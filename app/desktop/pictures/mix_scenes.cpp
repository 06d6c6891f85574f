// SPDX-License-Identifier: MIT
// Every question of the Mix page with figures in, as in the manual.
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QStackedWidget>
#include <vector>

#include "app/desktop/mix/mix_questions.h"
#include "app/desktop/page.h"
#include "app/desktop/pictures/album.h"
#include "app/desktop/pictures/scenes.h"

namespace desktop {

namespace {

struct FilledIn {
    const char* name;  // of the field, or the word of a choice behind it
    const char* text;
};

struct MixExample {
    const char* question;
    const char* lineButton;  // pressed once for a second line; empty: one line is enough
    std::vector<FilledIn> fields;
};

/// Invented figures in litres and mS/cm; some from the reference data on propagation.
const std::vector<MixExample>& mixExamples() {
    static const std::vector<MixExample> examples{
        {"nutrient",
         "&Another part",
         {{"mix_volume", "20"},
          {"mix_target", "1"},
          {"mix_water", "0.3"},
          {"mix_full", "2.4"},
          {"mixPart1", "A"},
          {"mixDose1", "1.2"},
          {"mixPart2", "B"},
          {"mixDose2", "1.2"}}},
        {"reading", "", {{"mix_volume", "20"}, {"mix_read", "1"}, {"mixPart1", "A"}, {"mixAmount1", "10"}}},
        {"elements",
         "",
         {{"mixSalt1", "KNO3"},
          {"mixSaltAmount1", "0.2"},
          {"mix_bag", "0.5"},
          {"mixLabel1", "P2O5"},
          {"mixLabelShare1", "11"}}},
        {"dilute", "", {{"mix_volume", "20"}, {"mix_now", "1.4"}, {"mix_target", "1"}, {"mix_water", "0.2"}}},
        {"topup", "", {{"mix_volume", "10"}, {"mix_now", "0.8"}, {"mix_filled", "20"}, {"mix_target", "1"}}},
        {"ph", "", {{"mix_volume", "20"}, {"mix_ph", "7.5"}, {"mix_target", "6"}, {"mix_alkalinity", "2"}}},
        {"titration",
         "&Another reading",
         {{"mix_volume", "20"},
          {"mix_target", "6.5"},
          {"mix_sample", "1"},
          {"mixStep1", "0"},
          {"mixStepPh1", "7.6"},
          {"mixStep2", "0.8"},
          {"mixStepPh2", "6.2"}}},
        {"thin", "", {{"mix_volume", "100"}, {"mix_wanted", "2000"}, {"mix_stock", "1%"}}},
        {"weigh", "", {{"mix_volume", "100"}, {"mix_wanted", "3000"}}},
        {"talc", "", {{"mix_grams", "40"}, {"mix_wanted", "0.3"}, {"mix_powder", "0.8"}}},
        {"dip", "", {{"mix_cuttings", "40"}}},
        {"convert", "", {{"mix_strength", "10000"}}},
        {"medium",
         "&Another component",
         {{"mix_trays", "2"},
          {"mix_cells", "60"},
          {"mix_cell", "44"},
          {"mixComponent1", "coir"},
          {"mixComponentParts1", "3"},
          {"mixComponent2", "perlite"},
          {"mixComponentParts2", "2"}}},
        {"lid", "", {}}};
    return examples;
}

void fillIn(QWidget& view, const MixExample& example) {
    for (QPushButton* button : view.findChildren<QPushButton*>())
        if (button->text() == QLatin1String(example.lineButton) &&
            !view.findChild<QLineEdit*>(QLatin1String(example.fields.back().name)))
            button->click();
    for (const FilledIn& field : example.fields)
        if (auto* edit = view.findChild<QLineEdit*>(QLatin1String(field.name)))
            edit->setText(QLatin1String(field.text));
}

}  // namespace

void takeMixes(Album& album) {
    Page* page = album.front("mixPage");
    auto* list = page ? page->findChild<QListWidget*>("mixQuestions") : nullptr;
    auto* stack = page ? page->findChild<QStackedWidget*>() : nullptr;
    if (!list || !stack) return;
    const std::vector<MixQuestion> questions = mixQuestions();
    for (std::size_t number = 0; number < questions.size(); ++number) {
        list->setCurrentRow(static_cast<int>(number));
        fillIn(*stack->currentWidget(), mixExamples()[number]);
        album.take(QStringLiteral("mix_%1").arg(questions[number].word));
    }
    list->setCurrentRow(0);
}

}  // namespace desktop
