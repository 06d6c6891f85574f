// SPDX-License-Identifier: MIT
// Compares a text with tests/data/golden/<name>.txt. STRIKEBOOK_APPROVE=1 writes the file instead.
#pragma once

#include <QString>
#include <string>

namespace examples {

void expectGolden(const QString& text, const std::string& name);

}  // namespace examples
