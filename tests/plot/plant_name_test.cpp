// SPDX-License-Identifier: MIT
#include "app/plot/plant_name.h"

#include "gtest/gtest.h"

namespace {

std::string marked(const QString& name) {
    std::string text;
    for (const plot::NamePart& part : plot::partsOfPlantName(name))
        text += part.isItalic ? "_" + part.text.toStdString() + "_" : part.text.toStdString();
    return text;
}

}  // namespace

TEST(PlantName, SetsCultivarsUpright) {
    EXPECT_EQ(marked("Lavandula angustifolia 'Hafod Blue'"), "_Lavandula angustifolia_ 'Hafod Blue'");
}

TEST(PlantName, SetsHybridSignAndRanksUpright) {
    EXPECT_EQ(marked("Mentha × piperita"), "_Mentha _× _piperita_");
    EXPECT_EQ(marked("Acer rubrum var. trilobum"), "_Acer rubrum _var. _trilobum_");
}

TEST(PlantName, GivesTheNameBackWhenJoined) {
    for (const char* name : {"", "Ficus carica", "a  b", "Rosa 'A' 'B'", "'only cultivar'"}) {
        QString joined;
        for (const plot::NamePart& part : plot::partsOfPlantName(name)) joined += part.text;
        EXPECT_EQ(joined.toStdString(), name);
    }
}
