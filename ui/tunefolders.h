#pragma once

#include <QDialog>
#include <QStringList>

class QLabel;
class QListWidget;
class QPlainTextEdit;
class QPushButton;

namespace ui {

// The folders that the list of tunes is made of, and what could not be read in them.
class TuneFolders final : public QDialog {
    Q_OBJECT
public:
    explicit TuneFolders(QWidget* parent = nullptr);

    // `passedOver`: texts that are no tunes.
    void setFolders(QStringList const& folders, QStringList const& troubles, int passedOver);

signals:
    void folderAdded(QString const& folder);
    void folderRemoved(QString const& folder);

private:
    void askForFolder();

    QListWidget* m_folders;
    QPushButton* m_remove;
    QLabel* m_heading; // of the troubles
    QPlainTextEdit* m_troubles;
};

} // namespace ui
