// SPDX-License-Identifier: MIT
#include "app/report/methods/method_note.h"

#include <QCoreApplication>
#include <QFile>
#include <QLocale>
#include <QRegularExpression>
#include <cmath>
#include <stdexcept>

// The macro must be called outside of any namespace; without it a static library's resources are left out by the linker.
static void loadMethodResource() {
    Q_INIT_RESOURCE(methods);
}

namespace report {
namespace {

QString resourceText(const QString& file) {
    [[maybe_unused]] static const bool isLoaded = (loadMethodResource(), true);
    QFile resource(QStringLiteral(":/methods/") + file);
    if (!resource.open(QIODevice::ReadOnly))
        throw std::logic_error("there is no page " + file.toStdString() + " among the methods");
    return QString::fromUtf8(resource.readAll());
}

QString pageText(const QString& page) {
    return resourceText(page + QStringLiteral(".md"));
}

constexpr QLatin1String functionsLine{"Functions: "};

}  // namespace

QString methodTitle(const QString& page) {
    const QString text = pageText(page);
    return text.section(u'\n', 0, 0).mid(2);
}

QString methodText(const MethodNote& note) {
    static const QRegularExpression braces(QStringLiteral("\\{([a-z][a-z0-9_]*)\\}"));
    const QString page = pageText(note.page);
    QString text;
    qsizetype at = 0;
    for (auto places = braces.globalMatch(page); places.hasNext();) {
        const QRegularExpressionMatch place = places.next();
        const auto number = note.numbers.find(place.captured(1));
        if (number == note.numbers.end())
            throw std::logic_error("the page " + note.page.toStdString() + " wants the number " +
                                   place.captured(1).toStdString());
        text += page.mid(at, place.capturedStart() - at) + number->second;
        at = place.capturedEnd();
    }
    text += page.mid(at);
    return text.left(text.lastIndexOf(functionsLine)).trimmed() + u'\n';
}

QString sharedLinesOfR(const QString& name) {
    return resourceText(name + QStringLiteral(".r")).section(u'\n', 1).trimmed();  // without the licence's line
}

QStringList functionsBehind(const QString& page) {
    const QString text = pageText(page);
    const auto at = text.lastIndexOf(functionsLine);
    if (at < 0) return {};
    return text.mid(at + functionsLine.size()).trimmed().split(QStringLiteral(", "), Qt::SkipEmptyParts);
}

QString accuracyOf(const QString& function) {
    const QString page = resourceText(QStringLiteral("accuracy.md"));
    const auto at = page.indexOf(QStringLiteral("### %1\n").arg(function));
    if (at < 0) return {};
    static const QRegularExpression nextHeading(QStringLiteral("\n##"));
    const auto end = page.indexOf(nextHeading, at + 4);
    return page.mid(at, end < 0 ? -1 : end - at).trimmed() + u'\n';
}

QString workedOut(const MethodNote& note) {
    QString text = methodText(note);
    QString accuracy;
    for (const QString& function : functionsBehind(note.page))
        if (const QString found = accuracyOf(function); !found.isEmpty()) accuracy += u'\n' + found;
    if (accuracy.isEmpty()) return text;
    return text + QStringLiteral("\n## %1\n").arg(QCoreApplication::translate("MethodNote", "How exact is it?")) +
           accuracy;
}

QString forR(double value) {
    if (std::isinf(value)) return value > 0 ? QStringLiteral("Inf") : QStringLiteral("-Inf");
    return QLocale::c().toString(value, 'g', QLocale::FloatingPointShortest);
}

}  // namespace report
