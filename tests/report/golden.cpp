// SPDX-License-Identifier: MIT
#include "tests/report/golden.h"

#include <QFile>

#include "gtest/gtest.h"

namespace examples {

void expectGolden(const QString& text, const std::string& name) {
    QFile file(QStringLiteral(STRIKEBOOK_SOURCE_DIR "/tests/data/golden/") + QString::fromStdString(name) +
               QStringLiteral(".txt"));
    if (qEnvironmentVariableIntValue("STRIKEBOOK_APPROVE") == 1) {
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text.toUtf8());
        return;
    }
    ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << name << ": run once with STRIKEBOOK_APPROVE=1 and read the new file";
    EXPECT_EQ(text.toStdString(), file.readAll().toStdString()) << name << ": STRIKEBOOK_APPROVE=1 accepts the change";
}

}  // namespace examples
