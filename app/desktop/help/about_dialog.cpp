// SPDX-License-Identifier: MIT
#include "app/desktop/help/about_dialog.h"

#include <QCoreApplication>
#include <QMessageBox>

#include "app/desktop/look/look.h"

namespace desktop {

namespace {

QString inAbout(const char* text) {
    return QCoreApplication::translate("desktop::About", text);
}

}  // namespace

void showAbout(QWidget* window) {
    auto* box = new QMessageBox(window);
    box->setObjectName("aboutDialog");
    box->setAttribute(Qt::WA_DeleteOnClose);
    box->setWindowTitle(inAbout("About Strikebook"));
    box->setIconPixmap(QIcon(":/icons/strikebook.svg").pixmap(window->fontMetrics().height() * 4));
    box->setText(inAbout("Strikebook %1").arg(STRIKEBOOK_VERSION));
    box->setInformativeText(inAbout("A logbook for people who multiply plants from cuttings.\n\n"
                                    "MIT licence. Built with Qt %1 (LGPL 3), SQLite (public domain), SQLiteCpp (MIT), "
                                    "Boost (Boost Software License) and "
                                    "Eigen (MPL 2).\n\n"
                                    "Every figure names its method. docs/statistics says where each method comes from "
                                    "and how closely it was checked "
                                    "against published values.")
                                .arg(qVersion()));
    box->open();
}

}  // namespace desktop
