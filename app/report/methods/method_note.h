// SPDX-License-Identifier: MIT
// "How is this worked out?": the page of the methods that belongs to a figure, with that figure's own numbers put in. The page is one text
// for the window, the command line and docs/statistics/methods, where the numbers are those of an invented example.
#pragma once

#include <QString>
#include <QStringList>
#include <map>
#include <span>

namespace report {

struct MethodNote {
    QString page;                        // "wilson_interval": resources/methods/wilson_interval.md
    std::map<QString, QString> numbers;  // by the names that stand in braces on the page: {rooted}
};

/// The first heading of the page.
[[nodiscard]] QString methodTitle(const QString& page);

/// The page in Markdown with the numbers in. Throws std::logic_error for a page that isn't there and for braces without a number: both
/// are mistakes of ours, found by the tests.
[[nodiscard]] QString methodText(const MethodNote& note);

/// Lines of R that several pages have in common, put in as one of their numbers: resources/methods/<name>.r.
[[nodiscard]] QString sharedLinesOfR(const QString& name);

/// The statistics functions named on the page's last line, "Functions: a, b".
[[nodiscard]] QStringList functionsBehind(const QString& page);

/// What docs/statistics/accuracy.md says of a function, in Markdown, heading included; empty for one that isn't there.
[[nodiscard]] QString accuracyOf(const QString& function);

/// The page and, below it, how exact the functions behind it are.
[[nodiscard]] QString workedOut(const MethodNote& note);

/// A number for a line of R: all its digits, a point as the mark.
[[nodiscard]] QString forR(double value);

}  // namespace report
