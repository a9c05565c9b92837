#pragma once

#include <QDialog>
#include <QString>
#include <QStringList>

#include <vector>

class QCheckBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QListWidget;
class QProgressBar;
class QPushButton;

namespace ui {

// Where a trouble is.
struct BatchPlace {
    QString file{};
    int number = 0; // X:, 0 where the whole file is meant
    int bar = 0;    // as it is counted on the page; 0: none is named
};

// A folder of tunes in, papers out: what is wanted, how far it is, and what could not be done.
// Who owns it does the work.
class BatchDialog final : public QDialog {
    Q_OBJECT
public:
    // `forWhom`: harp, hand and level in words.
    BatchDialog(QString const& from, QString const& forWhom, QWidget* parent = nullptr);

    QString from() const;
    QString into() const;
    QStringList kinds() const; // "pdf" ...
    bool leavesWhatIsThere() const;

    void started();
    void reached(int done, int all);
    // Files in the folder are named in the list without it.
    void addTrouble(QString const& words, BatchPlace const& place);
    void ended(QString const& words);
    int troubles() const;

signals:
    void startClicked();
    void cancelClicked();
    void placeWanted(BatchPlace const& place);

protected:
    void reject() override; // while it runs: asks the work to stop

private:
    void enable();
    QLineEdit* folderRow(QFormLayout* form, QString const& words, QString const& title);

    QLineEdit* m_from;
    QLineEdit* m_into;
    QList<QCheckBox*> m_kinds;
    QCheckBox* m_leave;
    QProgressBar* m_progress;
    QLabel* m_words;
    QListWidget* m_troubles;
    std::vector<BatchPlace> m_places; // of the troubles
    QPushButton* m_start;
    bool m_running = false;
};

} // namespace ui
