// SPDX-License-Identifier: MIT
#include "app/logger/text_source.h"

#include <algorithm>
#include <string_view>

#include "app/logger/logger_words.h"
#include "core/units/entered_text.h"
#include "db/logbook_error.h"

namespace logger {

namespace {

constexpr std::size_t pieceSize = 1 << 16;
constexpr std::string_view markOfUtf8 = "\xEF\xBB\xBF", markOfUtf16Le = "\xFF\xFE", markOfUtf16Be = "\xFE\xFF";

std::ifstream openedFile(const std::filesystem::path& file) {
    std::error_code ignored;  // a folder opens, but nothing can be read from it
    std::ifstream in(file, std::ios::binary);
    if (!in || std::filesystem::is_directory(file, ignored))
        throw db::LogbookError(
            LoggerWords::tr("The file %1 can't be read; check that it is there and that you may read it.")
                .arg(QString::fromStdString(file.string()))
                .toStdString());
    return in;
}

bool readPiece(std::ifstream& in, std::string& piece) {
    piece.resize(pieceSize);
    in.read(piece.data(), static_cast<std::streamsize>(pieceSize));
    piece.resize(static_cast<std::size_t>(in.gcount()));
    return !piece.empty();
}

/// Where the last letter of the piece begins if the piece may end within it; else its size.
std::size_t endOfWholeLetters(std::string_view piece) {
    constexpr std::size_t longestLetter = 4;
    for (std::size_t back = 1; back <= std::min(longestLetter, piece.size()); ++back) {
        const auto byte = static_cast<unsigned char>(piece[piece.size() - back]);
        if (byte >= 0xC0) return piece.size() - back;
        if (byte < 0x80) break;
    }
    return piece.size();
}

bool isUtf8Throughout(std::ifstream& in, std::string piece) {
    std::string rest;
    do {
        piece.insert(0, rest);
        const std::size_t end = endOfWholeLetters(piece);
        if (!core::isValidUtf8(std::string_view(piece).substr(0, end))) return false;
        rest = piece.substr(end);
    } while (readPiece(in, piece));
    return core::isValidUtf8(rest);
}

/// Western text in UTF-16 has a zero in every other byte.
bool hasZeros(std::string_view piece, std::size_t from) {
    std::size_t zeros = 0, seen = 0;
    for (std::size_t at = from; at < piece.size(); at += 2, ++seen) zeros += piece[at] == '\0' ? 1U : 0U;
    return seen > 0 && zeros * 2 > seen;
}

QStringConverter::Encoding ofQt(Encoding encoding) {
    switch (encoding) {
        case Encoding::Utf16Le:
            return QStringConverter::Utf16LE;
        case Encoding::Utf16Be:
            return QStringConverter::Utf16BE;
        case Encoding::Latin1:
            return QStringConverter::Latin1;
        case Encoding::Utf8:
            break;
    }
    return QStringConverter::Utf8;
}

}  // namespace

std::string nameOf(Encoding encoding) {
    switch (encoding) {
        case Encoding::Utf16Le:
        case Encoding::Utf16Be:
            return "UTF-16";
        case Encoding::Latin1:
            return "Latin-1";
        case Encoding::Utf8:
            break;
    }
    return "UTF-8";
}

Encoding encodingOf(const std::filesystem::path& file) {
    std::ifstream in = openedFile(file);
    std::string piece;
    readPiece(in, piece);
    if (piece.starts_with(markOfUtf8)) return Encoding::Utf8;
    if (piece.starts_with(markOfUtf16Le)) return Encoding::Utf16Le;
    if (piece.starts_with(markOfUtf16Be)) return Encoding::Utf16Be;
    if (hasZeros(piece, 1)) return Encoding::Utf16Le;
    if (hasZeros(piece, 0)) return Encoding::Utf16Be;
    return isUtf8Throughout(in, std::move(piece)) ? Encoding::Utf8 : Encoding::Latin1;
}

TextFile::TextFile(const std::filesystem::path& file, Encoding encoding)
    : in_(openedFile(file)), isUtf8_(encoding == Encoding::Utf8), decoder_(ofQt(encoding)), text_(this) {
    std::error_code ignored;  // then there is no progress to tell
    size_ = std::filesystem::file_size(file, ignored);
    if (ignored) size_ = 0;
}

double TextFile::shareRead() const {
    return size_ == 0 ? 0 : std::min(1.0, static_cast<double>(read_) / static_cast<double>(size_));
}

/// Decoding takes the byte order mark away; that of UTF-8 is the row reader's to pass over.
TextFile::int_type TextFile::underflow() {
    do {
        if (!readPiece(in_, bytes_)) return traits_type::eof();
        read_ += bytes_.size();
        if (isUtf8_)
            piece_.swap(bytes_);
        else
            piece_ = QString(decoder_.decode(QByteArrayView(bytes_))).toStdString();
    } while (piece_.empty());
    setg(piece_.data(), piece_.data(), piece_.data() + piece_.size());
    return traits_type::to_int_type(piece_.front());
}

}  // namespace logger
