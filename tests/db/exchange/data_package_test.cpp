// SPDX-License-Identifier: MIT
#include "db/exchange/data_package.h"

#include <gtest/gtest.h>

#include <fstream>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>

#include "db/exchange/exchange_tables.h"
#include "tests/db/exchange/exchange_folder.h"

namespace {

nlohmann::json packageOf(const std::string& name) {
    std::ostringstream out;
    db::writeDataPackage(out, support::factsOf(name));
    return nlohmann::json::parse(out.str());
}

TEST(DataPackage, DescribesEveryTableAndColumn) {
    const nlohmann::json package = packageOf("Bench");
    EXPECT_EQ(package["profile"], "tabular-data-package");
    EXPECT_EQ(package["title"], "Bench");
    ASSERT_EQ(package["resources"].size(), db::exchangeTables().size());
    for (std::size_t i = 0; i < db::exchangeTables().size(); ++i) {
        const db::ExchangeTable& table = db::exchangeTables()[i];
        const nlohmann::json& resource = package["resources"][i];
        EXPECT_EQ(resource["path"], std::string(table.name) + ".csv");
        ASSERT_EQ(resource["schema"]["fields"].size(), table.columns.size());
        for (std::size_t j = 0; j < table.columns.size(); ++j)
            EXPECT_EQ(resource["schema"]["fields"][j]["name"], std::string(table.columns[j].name));
    }
}

TEST(DataPackage, PointsOnlyAtColumnsThatAreThere) {
    const nlohmann::json package = packageOf("Bench");
    std::set<std::string> columns;
    for (const nlohmann::json& resource : package["resources"])
        for (const nlohmann::json& field : resource["schema"]["fields"])
            columns.insert(resource["name"].get<std::string>() + "." + field["name"].get<std::string>());
    const auto expectThere = [&](const std::string& table, const nlohmann::json& names) {
        for (const nlohmann::json& name : names.is_array() ? names : nlohmann::json::array({names}))
            EXPECT_TRUE(columns.contains(table + "." + name.get<std::string>())) << table << " " << name;
    };
    int references = 0;
    for (const nlohmann::json& resource : package["resources"]) {
        const nlohmann::json& schema = resource["schema"];
        if (schema.contains("primaryKey")) expectThere(resource["name"], schema["primaryKey"]);
        if (!schema.contains("foreignKeys")) continue;
        for (const nlohmann::json& key : schema["foreignKeys"]) {
            ++references;
            expectThere(resource["name"], key["fields"]);
            expectThere(key["reference"]["resource"], key["reference"]["fields"]);
        }
    }
    EXPECT_EQ(references, 41);
}

TEST(DataPackage, CarriesTheCitation) {
    const support::TemporaryFolder folder;
    std::ofstream out(folder / "datapackage.json");
    core::LogbookFacts facts = support::factsOf("Bench");
    facts.citation = "Somebody (1935)";
    db::writeDataPackage(out, facts);
    out.close();
    const db::DataPackage read = db::readDataPackage(folder / "datapackage.json");
    EXPECT_EQ(read.title, "Bench");
    EXPECT_EQ(read.citation, "Somebody (1935)");
    EXPECT_FALSE(read.fault);
}

TEST(DataPackage, IsNotNeeded) {
    const support::TemporaryFolder folder;
    EXPECT_FALSE(db::readDataPackage(folder / "datapackage.json").fault);
}

TEST(DataPackage, RefusesWhatIsNoJsonAndWhatIsNewer) {
    const support::TemporaryFolder folder;
    for (const char* broken : {"", "{", "[1]", "{\"a\":", "\xFF", "{\"strikebook\": {\"exchange_version\": 6}}"}) {
        folder.write("datapackage.json", broken);
        EXPECT_TRUE(db::readDataPackage(folder / "datapackage.json").fault) << broken;
    }
    for (const char* sound :
         {"{}", "{\"strikebook\": 5}", "{\"title\": 5, \"sources\": 3}", "{\"strikebook\": {\"exchange_version\": 1}}",
          "{\"strikebook\": {\"exchange_version\": 2}}", "{\"strikebook\": {\"exchange_version\": 3}}",
          "{\"strikebook\": {\"exchange_version\": 4}}", "{\"strikebook\": {\"exchange_version\": 5}}"}) {
        folder.write("datapackage.json", sound);
        EXPECT_FALSE(db::readDataPackage(folder / "datapackage.json").fault) << sound;
    }
}

TEST(DataPackage, SurvivesDeepNesting) {
    const support::TemporaryFolder folder;
    folder.write("datapackage.json", "{\"a\":" + std::string(400'000, '['));
    EXPECT_TRUE(db::readDataPackage(folder / "datapackage.json").fault);
}

}  // namespace
