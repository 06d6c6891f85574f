// SPDX-License-Identifier: MIT
// Planning a trial: what is asked, what differs, how it is judged, where it is to stand. Beside it what the number per arm is worth, what the
// stations can't answer, and once chance has dealt, the map. Saving writes the trial with what was dealt as one action.
#pragma once

#include <QDialog>
#include <cstdint>
#include <functional>
#include <optional>

#include "app/desktop/shelves/thing_form.h"
#include "app/desktop/trials/trial_draft.h"

class QComboBox;
class QPushButton;
class QScrollArea;

namespace desktop {

class CheckList;
class TrialMapPanel;
class TrialPowerPanel;

class TrialDialog : public ThingForm {
    Q_OBJECT

  public:
    using SeedSource = std::function<std::uint32_t()>;

    /// An unset id: a new one, begun like the last. Else that one is dealt again; nothing of it may be stuck.
    explicit TrialDialog(const PageContext& context, core::TrialId trial = {}, QWidget* parent = nullptr);
    /// A new one as it was proposed, ready to be saved; what it needs on the shelves is added with it, as one step to undo.
    [[nodiscard]] static TrialDialog* proposing(const PageContext& context, core::TrialProposal proposal,
                                                QWidget* parent = nullptr);
    /// Where chance comes from; the machine's own source unless a test says otherwise.
    void setSeedSource(SeedSource source) { drawSeed_ = std::move(source); }

    [[nodiscard]] TrialDraft draft() const;

  signals:
    void said(const QString& sentence);
    void planned(core::TrialId trial);

  private:
    TrialDialog(QWidget* parent, const PageContext& context, const QString& title);
    void build();
    void addWhat();
    void addHowJudged();
    void addWhere();
    void addBlocks();
    void addTicks();
    void fillArms(core::Factor factor);
    void fillBlocks();
    void fillStations();
    void followName();
    void setAside(QScrollArea* side);
    QScrollArea* makeSide();
    void changed(const char* field);
    void deal();
    void showDeal();
    [[nodiscard]] core::Refusals judged();
    [[nodiscard]] core::Shelves madeFor(const core::Trial& trial) const;
    [[nodiscard]] Outcome write();
    [[nodiscard]] core::Refusals faultsOfTyping() const;
    void readBlocks(TrialDraft& draft) const;
    [[nodiscard]] core::Factor factor() const;
    [[nodiscard]] core::BlockedBy blockedBy() const;

    PageContext context_;
    core::Shelves made_;     // what the trial needs and the logbook lacks
    core::Shelves shelves_;  // the logbook's, with that
    std::vector<core::StationRoom> rooms_;
    TrialDraft start_;
    SeedSource drawSeed_;
    std::optional<std::uint32_t> seed_;  // drawn: the map shows what it deals
    bool isNameTheirs_{};                // typed by somebody: it follows the arms no more
    bool areStationsTheirs_{};
    QLineEdit *name_{}, *margin_{}, *expected_{};
    QPlainTextEdit *question_{}, *note_{};
    QComboBox *factor_{}, *blockedBy_{}, *plant_{}, *measure_{};
    CheckList *arms_{}, *blocks_{}, *stations_{};
    CountEdit *horizon_{}, *perArm_{}, *sessions_{};
    QCheckBox *crossed_{}, *cleared_{}, *blinded_{};
    TrialPowerPanel* power_{};
    TrialMapPanel* map_{};
    QLabel *advice_{}, *dealt_{};
    QPushButton* deal_{};
};

}  // namespace desktop
