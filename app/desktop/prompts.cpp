// SPDX-License-Identifier: MIT
#include "app/desktop/prompts.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QInputDialog>
#include <QMessageBox>
#include <QPushButton>

namespace desktop {

namespace {

QStringList pickSome(QWidget* parent, const FileWish& wish, QFileDialog::AcceptMode acceptMode,
                     QFileDialog::FileMode fileMode) {
    QFileDialog dialog(parent, wish.title, wish.place, wish.filter);
    dialog.setAcceptMode(acceptMode);
    dialog.setFileMode(fileMode);
    dialog.setDefaultSuffix(wish.suffix);
    if (fileMode == QFileDialog::Directory) dialog.setOption(QFileDialog::ShowDirsOnly);
    // A new file never takes the place of an old one: the logbook's own code refuses that in a sentence.
    if (acceptMode == QFileDialog::AcceptSave) {
        dialog.setOption(QFileDialog::DontConfirmOverwrite);
        dialog.selectFile(wish.place);
    }
    return dialog.exec() == QDialog::Accepted ? dialog.selectedFiles() : QStringList();
}

QString pick(QWidget* parent, const FileWish& wish, QFileDialog::AcceptMode acceptMode,
             QFileDialog::FileMode fileMode) {
    return pickSome(parent, wish, acceptMode, fileMode).value(0);
}

}  // namespace

bool DialogPrompts::confirm(QWidget* parent, const Question& question) {
    QMessageBox box(QMessageBox::Question, question.title, question.sentence, QMessageBox::Cancel, parent);
    QPushButton* doIt = box.addButton(question.verb, QMessageBox::DestructiveRole);
    box.setDefaultButton(QMessageBox::Cancel);
    box.exec();
    return box.clickedButton() == doIt;
}

QString DialogPrompts::pickFileToOpen(QWidget* parent, const FileWish& wish) {
    return pick(parent, wish, QFileDialog::AcceptOpen, QFileDialog::ExistingFile);
}

QStringList DialogPrompts::pickFilesToOpen(QWidget* parent, const FileWish& wish) {
    return pickSome(parent, wish, QFileDialog::AcceptOpen, QFileDialog::ExistingFiles);
}

QString DialogPrompts::pickFileToSave(QWidget* parent, const FileWish& wish) {
    return pick(parent, wish, QFileDialog::AcceptSave, QFileDialog::AnyFile);
}

QString DialogPrompts::pickFolder(QWidget* parent, const FileWish& wish) {
    return pick(parent, wish, QFileDialog::AcceptOpen, QFileDialog::Directory);
}

QString DialogPrompts::askForText(QWidget* parent, const QString& title, const QString& label, const QString& before) {
    bool isAccepted = false;
    const QString text = QInputDialog::getText(parent, title, label, QLineEdit::Normal, before, &isAccepted);
    return isAccepted ? text : QString();
}

}  // namespace desktop
