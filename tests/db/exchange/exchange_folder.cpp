// SPDX-License-Identifier: MIT
#include "tests/db/exchange/exchange_folder.h"

#include <unistd.h>

#include <fstream>
#include <sstream>

namespace support {

TemporaryFolder::TemporaryFolder() {
    static int number = 0;
    path_ = std::filesystem::path(STRIKEBOOK_BINARY_DIR) / "test_folders" /
            (std::to_string(::getpid()) + "-" + std::to_string(++number));
    std::filesystem::create_directories(path_);
}

TemporaryFolder::~TemporaryFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
}

void TemporaryFolder::write(std::string_view name, std::string_view content) const {
    std::ofstream(path_ / name, std::ios::binary) << content;
}

std::string TemporaryFolder::read(std::string_view name) const {
    std::ostringstream content;
    content << std::ifstream(path_ / name, std::ios::binary).rdbuf();
    return content.str();
}

core::LogbookFacts factsOf(const std::string& name) {
    core::LogbookFacts facts;
    facts.name = name;
    return facts;
}

std::string rows(const std::vector<std::string>& rows) {
    std::string text;
    for (const std::string& row : rows) text += row + "\r\n";
    return text;
}

}  // namespace support
