// SPDX-License-Identifier: MIT
// What is said about logger files is translated in one place. Inside logger only.
#pragma once

#include <QCoreApplication>
#include <QString>

namespace logger {

struct LoggerWords {
    Q_DECLARE_TR_FUNCTIONS(LoggerWords)
};

}  // namespace logger
