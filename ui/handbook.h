#pragma once

#include <QDialog>
#include <QStringList>

class QListWidget;
class QTextBrowser;

namespace ui {

// The handbook: one page a job, in a window that stays beside the workbench. The pages are the
// files NN-name.md of a folder, in the order of their numbers; the first line is the title.
class Handbook final : public QDialog {
    Q_OBJECT
public:
    Handbook(QString folder, QWidget* parent);

    void openPage(int page);
    int pages() const { return static_cast<int>(m_files.size()); }

private:
    QString m_folder;
    QStringList m_files;
    QListWidget* m_titles;
    QTextBrowser* m_text;
};

} // namespace ui
