#include "app/savetrouble.h"

#include "core/base/words.h"
#include "core/files/draft.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>

#include <cerrno>

namespace app {

namespace {

QString tr(char const* text) { return QCoreApplication::translate("SaveTrouble", text); }

} // namespace

// writeWhole says in words what the system refuses.
WriteTrouble troubleOf(base::Fault const& fault)
{
    auto const says = [&](int code) { return fault.detail == files::systemWords(code); };
    if (fault.detail == base::said(files::writeProtectedWords) || says(EACCES) || says(EPERM) ||
        says(EROFS))
        return WriteTrouble::ReadOnly;
    if (says(ENOSPC) || says(EDQUOT) || says(EFBIG)) return WriteTrouble::Full;
    if (says(ENOENT) || says(ENOTDIR) || says(ENODEV) || says(ENXIO) || says(EIO) ||
        says(ESTALE))
        return WriteTrouble::Gone;
    return WriteTrouble::Other;
}

QString troubleWords(base::Fault const& fault, QString const& path)
{
    QString const name = QFileInfo(path).fileName();
    switch (troubleOf(fault)) {
    case WriteTrouble::ReadOnly:
        return tr("“%1” cannot be changed: the file, its folder or the disk is read-only.").arg(name);
    case WriteTrouble::Full:
        return tr("“%1” cannot be saved: the disk is full. Make room and try again, or save it on "
                  "another disk.")
            .arg(name);
    case WriteTrouble::Gone:
        return tr("“%1” cannot be saved: its folder is not there. If it is on a disk that was "
                  "taken out, put it back and try again, or save it elsewhere.")
            .arg(name);
    case WriteTrouble::Other:
        break;
    }
    return tr("“%1” cannot be saved (%2).").arg(name, QString::fromStdString(fault.detail));
}

AfterTrouble askAfterTrouble(QWidget* over, base::Fault const& fault, QString const& path)
{
    QMessageBox box(QMessageBox::Warning, tr("Not saved"), troubleWords(fault, path),
                    QMessageBox::NoButton, over);
    box.setInformativeText(tr("Your work is still here, and what was saved before is as it was."));
    QPushButton* const elsewhere = box.addButton(tr("Save as…"), QMessageBox::AcceptRole);
    QPushButton* const again = box.addButton(tr("Try again"), QMessageBox::ActionRole);
    box.addButton(QMessageBox::Cancel);
    box.setDefaultButton(elsewhere);
    box.exec();
    if (box.clickedButton() == elsewhere) return AfterTrouble::SaveElsewhere;
    if (box.clickedButton() == again) return AfterTrouble::TryAgain;
    return AfterTrouble::Cancel;
}

AfterChange askAfterChange(QWidget* over, QString const& path)
{
    QMessageBox box(QMessageBox::Warning, tr("Changed by another program"),
                    tr("“%1” was changed by another program after you opened it.")
                        .arg(QFileInfo(path).fileName()),
                    QMessageBox::NoButton, over);
    box.setInformativeText(
        tr("If you replace it, the other version is kept under “Go back to…”."));
    QPushButton* const elsewhere = box.addButton(tr("Save as…"), QMessageBox::AcceptRole);
    QPushButton* const replace = box.addButton(tr("Replace"), QMessageBox::DestructiveRole);
    box.addButton(QMessageBox::Cancel);
    box.setDefaultButton(elsewhere);
    box.exec();
    if (box.clickedButton() == elsewhere) return AfterChange::SaveElsewhere;
    if (box.clickedButton() == replace) return AfterChange::Replace;
    return AfterChange::Cancel;
}

} // namespace app
