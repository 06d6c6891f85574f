// SPDX-License-Identifier: MIT
// Which station's climate over which span beside whose bands, and what is known of it. Read and worked out in the background; a newer
// question stops the older. No widgets.
#pragma once

#include <QObject>
#include <QString>
#include <memory>
#include <vector>

#include "app/desktop/background/read_beside.h"
#include "app/plot/climate_chart.h"
#include "app/plot/station_charts.h"

namespace plot {
class Figure;
}
namespace report {
struct Sheet;
}

namespace desktop {

class Workspace;

enum class ClimateSpan { LastDay, LastWeek, LastMonth, SinceSticking, All };

struct SpanChoice {
    ClimateSpan span{};
    core::BatchId batch{};  // of SinceSticking
    QString name;
};

struct BandsChoice {
    core::BatchId batch{};
    core::Stage stage{};  // where no batch is named
    QString name;
};

struct StationChoice {
    core::StationId station{};
    QString name;
};

/// One quantity, ready to show: its figure is drawn anew on each surface, its words stay.
struct ClimatePart {
    core::ClimateQuantity quantity{};
    QString words;  // newest figure and its age, hours outside, share covered, n, the bands
    std::shared_ptr<const plot::Figure> figure;
};

struct ClimateView {
    std::vector<StationChoice> stations;  // in walking order
    std::vector<SpanChoice> spans;
    std::vector<BandsChoice> bands;
    int station{};  // the chosen one of each, by its place in the list
    int span{};
    int band{};
    std::vector<ClimatePart> parts;
    bool isWorking{};
    QString fault;
};

class ClimateModel : public QObject {
    Q_OBJECT

  public:
    explicit ClimateModel(Workspace& workspace, QObject* parent = nullptr);

    [[nodiscard]] const ClimateView& view() const { return view_; }
    /// Unset where there is none.
    [[nodiscard]] core::StationId station() const;
    void chooseStation(int place);
    void chooseSpan(int place);
    void chooseBands(int place);
    /// Nobody looks: changes of the logbook wait until somebody does.
    void setWatched(bool isWatched);
    [[nodiscard]] std::shared_ptr<const report::Sheet> sheet() const;

  signals:
    void choicesChanged();
    void viewChanged();

  private:
    struct Answer {
        std::vector<ClimatePart> parts;
    };

    void forget();
    void startAfresh();
    void readStations();
    void readChoices();
    [[nodiscard]] plot::ChartsQuestion question() const;
    void ask();
    void tell(const std::shared_ptr<const Answer>& answer);

    Workspace& workspace_;
    ClimateView view_;
    bool isWatched_{};
    bool isStale_{true};
    ReadBeside<std::shared_ptr<const Answer>> reading_{workspace_, this};
};

}  // namespace desktop
