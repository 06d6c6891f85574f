// SPDX-License-Identifier: MIT
// Shows a print-out as its pages before it goes anywhere: what can be chosen about it, save as PDF, print. Never blocks.
#pragma once

#include <QDialog>
#include <memory>

#include "app/desktop/page.h"
#include "app/desktop/printing/printout.h"
#include "app/report/pdf.h"

class QComboBox;
class QLabel;
class QPrinter;
class QPrintPreviewWidget;
class QPushButton;

namespace desktop {

class PrintPreview : public QDialog {
    Q_OBJECT

  public:
    /// `fileName` is proposed when saving: "B260047K" becomes "B260047K.pdf".
    PrintPreview(std::shared_ptr<const report::Sheet> sheet, const QString& fileName, const PageContext& context,
                 QWidget* parent = nullptr);
    PrintPreview(PaperPrintout printout, const PageContext& context, QWidget* parent = nullptr);
    /// Anything else that prints, with `choices` at the head of the window; call refresh() when one was made.
    PrintPreview(Printout printout, QWidget* choices, const PageContext& context, QWidget* parent = nullptr);
    ~PrintPreview() override;

    [[nodiscard]] report::Paper paper() const;  // where it can be chosen
    void refresh();

  protected:
    void showEvent(QShowEvent* event) override;

  signals:
    void said(const QString& sentence);

  private:
    void build(QWidget* choices);
    QWidget* makeBar(QWidget* choices);
    QWidget* makePaperChoice();
    QWidget* makePaging();
    void turnTo(int page);
    void showPaging();
    void savePdf();
    void print();

    PageContext context_;
    Printout printout_;
    std::unique_ptr<QPrinter> printer_;
    QPrintPreviewWidget* pages_{};
    QComboBox* paper_{};
    QPushButton* save_{};
    QWidget* paging_{};
    QLabel* pageNumber_{};
    QPushButton* earlier_{};
    QPushButton* later_{};
};

/// Opens it without blocking; it deletes itself when it closes.
PrintPreview* showPrintPreview(std::shared_ptr<const report::Sheet> sheet, const QString& fileName,
                               const PageContext& context, QWidget* parent);
PrintPreview* showPrintPreview(PaperPrintout printout, const PageContext& context, QWidget* parent);

}  // namespace desktop
