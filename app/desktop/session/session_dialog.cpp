// SPDX-License-Identifier: MIT
#include "app/desktop/session/session_dialog.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QItemSelectionModel>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/desktop/look/look.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/session/new_station_dialog.h"
#include "app/desktop/session/saved_session.h"
#include "app/desktop/session/session_grid.h"
#include "app/desktop/session/session_minding.h"
#include "app/desktop/session/session_model.h"
#include "app/desktop/session/split_dialog.h"
#include "app/desktop/session/treatment_dialog.h"
#include "app/desktop/widgets/date_edit.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/widgets/wrapping_row.h"
#include "app/desktop/workspace.h"

namespace desktop {

/// What stands on the dialog, and what its buttons do.
class SessionDialog::Parts {
  public:
    Parts(SessionDialog& dialog, const PageContext& context, SessionModel& model)
        : dialog_(dialog), context_(context), model_(model) {
        auto* entry = new QWidget;
        auto* layout = new QVBoxLayout(entry);
        layout->setContentsMargins(0, 0, 0, 0);
        layout->addWidget(makeLeftovers());
        layout->addLayout(makeHeader());
        layout->addWidget(dayFault_ = new FaultLabel);
        layout->addLayout(makeTools());
        layout->addWidget(grid_ = new SessionGrid(model), 1);
        layout->addWidget(cellFault_ = new FaultLabel);
        layout->addWidget(headerFault_ = new FaultLabel);
        layout->addWidget(new SessionMinding(model));
        layout->addWidget(room_ = quietLabel(QStringLiteral("room")));
        layout->addWidget(notes_ = quietLabel(QStringLiteral("notes")));
        layout->addWidget(keys_ = quietLabel(QStringLiteral("keys")));
        layout->addLayout(makeFoot());
        keys_->setText(SessionGrid::keysText());
        auto* whole = new QVBoxLayout(&dialog);
        whole->addWidget(pages_ = new QStackedWidget);
        pages_->addWidget(entry);
        pages_->addWidget(saved_ = new SavedSession(context_));
        connect();
        show();
        grid_->goTo(0, 0);
    }

  private:
    static QString tr(const char* text, const char* comment = nullptr, int count = -1) {
        return SessionDialog::tr(text, comment, count);
    }

    QPushButton* makeButton(const QString& text, const QString& name) {
        auto* button = new QPushButton(text);
        button->setObjectName(name);
        button->setAutoDefault(false);  // Enter belongs to the grid
        return button;
    }

    QWidget* makeLeftovers() {
        leftovers_ = new QWidget;
        auto* row = new QHBoxLayout(leftovers_);
        row->setContentsMargins(0, 0, 0, 0);
        row->addWidget(new QLabel(tr("You began this session earlier and have not saved it yet.")), 1);
        row->addWidget(afresh_ = makeButton(tr("Start &afresh"), QStringLiteral("startAfresh")));
        return leftovers_;
    }

    QHBoxLayout* makeHeader() {
        day_ = new DateEdit(context_.workspace.today());
        day_->line()->setObjectName(QStringLiteral("sessionDay"));
        day_->line()->setAccessibleName(tr("Day"));
        day_->setDate(model_.sheet().day);
        worker_ = new QLineEdit(model_.sheet().worker);
        worker_->setObjectName(QStringLiteral("sessionWorker"));
        note_ = new QLineEdit(model_.sheet().note);
        note_->setObjectName(QStringLiteral("sessionNote"));
        auto* row = new QHBoxLayout;
        const auto addField = [row](const QString& caption, QWidget* field, QWidget* buddy, int stretch) {
            auto* label = new QLabel(caption);
            label->setBuddy(buddy);
            row->addWidget(label);
            row->addWidget(field, stretch);
            row->addSpacing(field->fontMetrics().averageCharWidth() * 2);
        };
        addField(tr("&Day"), day_, day_->line(), 0);
        addField(tr("&Who"), worker_, worker_, 1);
        addField(tr("N&ote"), note_, note_, 3);
        return row;
    }

    WrappingRow* makeTools() {
        auto* row = new WrappingRow;
        row->addWidget(split_ = makeButton(tr("Split by &chance\u2026"), QStringLiteral("splitByChance")));
        row->addWidget(join_ = makeButton(tr("&Join again"), QStringLiteral("joinAgain")));
        row->addWidget(last_ = makeButton(tr("Start from &last session"), QStringLiteral("startFromLast")));
        last_->setToolTip(
            tr("The same plants, stations and counts, dated today; nothing of it is saved until you accept it"));
        row->addWidget(acceptAll_ = makeButton(QString(), QStringLiteral("acceptAll")));
        row->pushToEnd();
        row->addWidget(station_ = makeButton(tr("New s&tation\u2026"), QStringLiteral("newStation")));
        row->addWidget(treatment_ = makeButton(tr("New t&reatment\u2026"), QStringLiteral("newTreatment")));
        row->addWidget(remove_ = makeButton(tr("Remo&ve row"), QStringLiteral("removeRow")));
        remove_->setToolTip(tr("Ctrl+Delete"));
        return row;
    }

    QHBoxLayout* makeFoot() {
        sums_ = new QLabel;
        sums_->setObjectName(QStringLiteral("sums"));
        auto* close = makeButton(tr("Close"), QStringLiteral("closeSession"));
        save_ = makeButton(tr("&Save session"), QStringLiteral("saveSession"));
        save_->setToolTip(tr("Ctrl+Return"));
        QObject::connect(close, &QPushButton::clicked, &dialog_, &QDialog::reject);
        auto* row = new QHBoxLayout;
        row->addWidget(sums_, 1);
        row->addWidget(save_);
        row->addWidget(close);
        return row;
    }

    void connect() {
        const auto onClick = [this](QPushButton* button, void (Parts::*act)()) {
            QObject::connect(button, &QPushButton::clicked, &dialog_, [this, act] { (this->*act)(); });
        };
        onClick(afresh_, &Parts::startAfresh);
        onClick(split_, &Parts::split);
        onClick(last_, &Parts::startFromLast);
        onClick(acceptAll_, &Parts::acceptAll);
        onClick(join_, &Parts::join);
        onClick(station_, &Parts::describeStation);
        onClick(treatment_, &Parts::describeTreatment);
        onClick(save_, &Parts::save);
        QObject::connect(remove_, &QPushButton::clicked, grid_, &SessionGrid::removeCurrentRow);
        QObject::connect(saved_, &SavedSession::closeWanted, &dialog_, &QDialog::accept);
        for (const auto key : {Qt::Key_Return, Qt::Key_Enter}) {
            auto* shortcut = new QShortcut(QKeySequence(Qt::CTRL | key), &dialog_);
            QObject::connect(shortcut, &QShortcut::activated, &dialog_, [this] { save(); });
        }
        QObject::connect(day_, &DateEdit::dateChanged, &dialog_, [this] { model_.setDay(day_->date()); });
        QObject::connect(worker_, &QLineEdit::textEdited, &model_, &SessionModel::setWorker);
        QObject::connect(note_, &QLineEdit::textEdited, &model_, &SessionModel::setNote);
        QObject::connect(&model_, &SessionModel::viewChanged, &dialog_, [this] { show(); });
        QObject::connect(grid_->selectionModel(), &QItemSelectionModel::currentChanged, &dialog_,
                         [this] { showCell(); });
    }

    void show() {
        const SessionView& view = model_.view();
        leftovers_->setVisible(view.hasLeftovers);
        const bool isDayTyped = day_->hasFocus() || day_->line()->hasFocus();
        dayFault_->setFault(isDayTyped && !day_->date() ? QString() : day_->date() ? view.dayFault : day_->fault());
        headerFault_->setFault(view.headerFault);
        sums_->setText(view.sums);
        room_->setText(view.room);
        room_->setVisible(!view.room.isEmpty());
        last_->setVisible(view.canStartFromLast && view.offered == 0);
        acceptAll_->setVisible(view.offered > 1);
        acceptAll_->setText(tr("Ta&ke all %n offered rows", nullptr, view.offered));
        notes_->setText(view.notes.join(QLatin1Char('\n')));
        notes_->setVisible(!view.notes.isEmpty());
        showCell();
    }

    void showCell() {
        const QModelIndex cell = grid_->currentIndex();
        const QString fault = cell.data(SessionGridModel::FaultRole).toString();
        const auto first = model_.firstFault();
        cellFault_->setFault(!fault.isEmpty() || !first ? fault
                                                        : tr("Row %1: %2").arg(first->row + 1).arg(first->sentence));
        const bool isSplit = cell.isValid() && model_.grid()->row(cell.row()).split >= 0;
        split_->setVisible(!isSplit);
        join_->setVisible(isSplit);
    }

    void startAfresh() {
        model_.startAfresh();
        day_->setDate(model_.sheet().day);
        note_->clear();
        grid_->goTo(0, 0);
    }

    void startFromLast() {
        model_.startFromLast();
        grid_->goTo(0, 0);
    }
    void acceptAll() {
        model_.grid()->acceptAll();
        grid_->goTo(0, static_cast<int>(SessionColumn::Count));
    }

    int currentRow() const { return std::max(0, grid_->currentIndex().row()); }

    void split() {
        QString why;
        const auto question = model_.splitQuestion(currentRow(), why);
        if (!question) return cellFault_->setFault(why);
        auto* dialog = new SplitDialog(model_, *question, context_, &dialog_);
        dialog->setAttribute(Qt::WA_DeleteOnClose);
        QObject::connect(dialog, &SplitDialog::splitWanted, &dialog_, [this](int row, const SplitByChance& wanted) {
            model_.grid()->split(row, wanted);
            grid_->goTo(row, static_cast<int>(SessionColumn::Medium));
        });
        dialog->open();
    }

    void join() {
        const int row = currentRow();
        model_.grid()->join(model_.grid()->row(row).split);
        grid_->goTo(std::min(row, model_.grid()->rowCount() - 1), static_cast<int>(SessionColumn::Count));
    }

    /// The dialog begins with what was typed, when that is what the logbook doesn't know.
    template <class Describing>
    void describe(SessionColumn column, const void* known) {
        auto* dialog = new Describing(model_, known != nullptr ? QString() : typedIn(column), &dialog_);
        dialog->setAttribute(Qt::WA_DeleteOnClose);
        QObject::connect(dialog, &Describing::described, &dialog_, [this, column](const QString& name) {
            const QModelIndex cell = model_.grid()->index(currentRow(), static_cast<int>(column));
            model_.grid()->setData(cell, name);
            grid_->goTo(cell.row(), cell.column());
            grid_->goRight();  // as Enter would: what was described stands there
        });
        dialog->open();
    }

    QString typedIn(SessionColumn column) const { return model_.grid()->row(currentRow()).at(column); }

    void describeStation() {
        describe<NewStationDialog>(SessionColumn::Station, model_.names().station(typedIn(SessionColumn::Station)));
    }

    void describeTreatment() {
        describe<TreatmentDialog>(SessionColumn::Treatment,
                                  model_.names().treatment(typedIn(SessionColumn::Treatment)));
    }

    void save() {
        if (pages_->currentWidget() == saved_) return;
        grid_->setFocus();  // ends typing in a cell, so that what stands in it counts
        const SessionSaved saved = model_.save();
        if (saved.isDone) {
            emit dialog_.said(saved.sentence);
            pages_->setCurrentWidget(saved_);
            return saved_->show(saved);
        }
        if (!day_->date() || !model_.view().dayFault.isEmpty()) return day_->line()->setFocus();
        if (const auto first = model_.firstFault()) grid_->goTo(first->row, static_cast<int>(first->column));
    }

    SessionDialog& dialog_;
    PageContext context_;
    SessionModel& model_;
    QWidget* leftovers_{};
    DateEdit* day_{};
    QLineEdit* worker_{};
    QLineEdit* note_{};
    SessionGrid* grid_{};
    FaultLabel* dayFault_{};
    FaultLabel* cellFault_{};
    FaultLabel* headerFault_{};
    QStackedWidget* pages_{};
    SavedSession* saved_{};
    QLabel* room_{};
    QLabel* notes_{};
    QLabel* keys_{};
    QLabel* sums_{};
    QPushButton *afresh_{}, *split_{}, *join_{}, *last_{}, *acceptAll_{}, *station_{}, *treatment_{}, *remove_{},
        *save_{};
};

SessionDialog::SessionDialog(const PageContext& context, QWidget* parent)
    : QDialog(parent), context_(context), model_(new SessionModel(context.workspace, this)) {
    setObjectName(QStringLiteral("sessionDialog"));
    setWindowTitle(tr("New session"));
    parts_ = std::make_unique<Parts>(*this, context_, *model_);
    const int em = fontMetrics().height();
    resize(em * 80, em * 36);
}

SessionDialog::~SessionDialog() = default;

}  // namespace desktop
