// SPDX-License-Identifier: MIT
#include "tests/support/scratch_folder.h"

#include <stdlib.h>
#include <unistd.h>

#include <algorithm>
#include <fstream>
#include <sstream>
#include <stdexcept>

namespace support {

namespace {

/// In memory where there is such a place: syncing a real disk hundreds of times takes minutes when the machine is busy.
std::filesystem::path quickestFolder() {
    const std::filesystem::path memory = "/dev/shm";
    return ::access(memory.c_str(), W_OK) == 0 ? memory : std::filesystem::temp_directory_path();
}

}  // namespace

ScratchFolder::ScratchFolder() {
    std::string name =
        (quickestFolder() / ("strikebook-test-" + std::string(6, 'X'))).string();  // what mkdtemp() fills in
    if (::mkdtemp(name.data()) == nullptr) throw std::runtime_error("no scratch folder");
    path_ = name;
}

ScratchFolder::~ScratchFolder() {
    std::error_code left;  // what can't be removed is left to the system's own tidying
    std::filesystem::permissions(path_, std::filesystem::perms::owner_all, left);
    std::filesystem::remove_all(path_, left);
}

std::vector<std::string> ScratchFolder::names() const {
    std::vector<std::string> all;
    for (const auto& entry : std::filesystem::directory_iterator(path_))
        all.push_back(entry.path().filename().string());
    std::sort(all.begin(), all.end());
    return all;
}

std::string contentOf(const std::filesystem::path& file) {
    std::ifstream stream(file, std::ios::binary);
    std::ostringstream content;
    content << stream.rdbuf();
    return content.str();
}

void writeContent(const std::filesystem::path& file, const std::string& content) {
    std::ofstream(file, std::ios::binary | std::ios::trunc) << content;
}

}  // namespace support
