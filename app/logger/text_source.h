// SPDX-License-Identifier: MIT
// The text of a logger's file as UTF-8, whatever it is written in, piece by piece: a file of a gigabyte takes no more room than a small one.
//
//   TextFile file{path, encoding};
//   db::CsvReader reader{file.text(), ';'};
#pragma once

#include <QStringDecoder>
#include <atomic>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <istream>
#include <streambuf>
#include <string>

namespace logger {

enum class Encoding { Utf8, Utf16Le, Utf16Be, Latin1 };

/// "UTF-8", "UTF-16": as people call it.
[[nodiscard]] std::string nameOf(Encoding encoding);

/// By its byte order mark; without one UTF-16 by its many zero bytes, UTF-8 where the whole file is valid as such, else Latin-1. Throws
/// db::LogbookError where the file can't be read.
[[nodiscard]] Encoding encodingOf(const std::filesystem::path& file);

class TextFile : private std::streambuf {
  public:
    /// Throws db::LogbookError where the file can't be opened.
    TextFile(const std::filesystem::path& file, Encoding encoding);

    [[nodiscard]] std::istream& text() { return text_; }
    /// Of the file's bytes, from 0 to 1.
    [[nodiscard]] double shareRead() const;

  private:
    int_type underflow() override;

    std::ifstream in_;
    std::uint64_t size_{};
    std::uint64_t read_{};
    bool isUtf8_;
    QStringDecoder decoder_;
    std::string bytes_;
    std::string piece_;  // of the text
    std::istream text_;
};

}  // namespace logger
