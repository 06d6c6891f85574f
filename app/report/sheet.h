// SPDX-License-Identifier: MIT
// A print-out as a value: what it says, not how it is laid out. Makers build it, plainText() shows it to tests and
// terminals, pdf.h paints it.
#pragma once

#include <QDateTime>
#include <QString>
#include <QStringList>
#include <memory>
#include <variant>
#include <vector>

#include "app/plot/figure.h"

namespace report {

struct Heading {
    QString text;
};

enum class Tone { Plain, Answer, Caution, Quiet };

struct Paragraph {
    QString text;
    Tone tone{Tone::Plain};
};

struct Fact {
    QString label;
    QString value;
    bool isPlantName{};  // botanical part in italics
};

struct Facts {
    std::vector<Fact> facts;
};

enum class Align { Left, Right };

struct Table {
    QString title;
    QStringList headings;
    std::vector<Align> aligned;  // as long as the headings
    std::vector<QStringList> rows;
    bool mayBeShortened{};            // the middle is left out, with a sentence, where the sheet must fit one page
    int plantColumn{-1};              // whose cells are plant names
    bool breaksPlantNames{};          // over two lines where they are long: botanical name, cultivar
    std::vector<int> wholeColumns{};  // never broken or elided: codes
    std::vector<int> penColumns{};    // left empty, as boxes to write in
    int restColumn{-1};               // takes what is left of the width
    int mostCellLines{};              // 0: as many as the sheet allows
};

struct Picture {
    std::shared_ptr<const plot::Figure> figure;
    double heightInMillimetres{70};
    bool mayBeOnlyItsSentence{};  // where the sheet must fit one page
};

struct SignatureLine {
    QStringList labels;  // "Date", "Signature"
};

using Block = std::variant<Heading, Paragraph, Facts, Table, Picture, SignatureLine>;

struct Sheet {
    QString title;
    QString subtitle;
    QString grower;
    QString logbook;
    QDateTime printedAt;
    bool isInvented{};   // marked on every page
    QString citation;    // where published records come from; empty for the grower's own
    bool fitsOnePage{};  // shortened until it does
    std::vector<Block> blocks;
};

}  // namespace report
