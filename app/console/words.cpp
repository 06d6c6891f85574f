// SPDX-License-Identifier: MIT
#include "app/console/words.h"

#include <QCoreApplication>
#include <vector>

#include "core/units/entered_text.h"

namespace console {

std::string tr(const char* sentence) {
    return QCoreApplication::translate("console", sentence).toStdString();
}

std::string filled(const std::string& sentence, std::initializer_list<std::string> values) {
    const std::vector<std::string> list(values);
    std::string text;
    for (std::size_t i = 0; i < sentence.size(); ++i) {
        const bool isPlace =
            sentence[i] == '%' && i + 1 < sentence.size() && sentence[i + 1] >= '1' && sentence[i + 1] <= '9';
        const std::size_t value = isPlace ? static_cast<std::size_t>(sentence[i + 1] - '1') : list.size();
        if (value < list.size()) {
            text += list[value];
            ++i;
        } else {
            text += sentence[i];
        }
    }
    return text;
}

std::string linesOf(const core::Refusals& refusals) {
    std::string lines;
    for (const core::Refusal& refusal : refusals) lines += refusal.sentence + "\n";
    return lines;
}

std::string shown(std::string_view text) {
    return core::quotable(text);
}

}  // namespace console
