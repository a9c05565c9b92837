#pragma once

#include "core/collection/listing.h"
#include "core/tune/tune.h"

#include <QDialog>
#include <QElapsedTimer>
#include <QPointer>
#include <QStringList>
#include <QTimer>

#include <functional>
#include <optional>
#include <vector>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;

namespace ui {

class TuneFolders;
class TuneRows;

// The list of all of the harper's tunes, to find one in: by words, kind, key, time, by its
// first notes, typed or played, and whether she has arranged it. Shows what it is given and
// says what she wants opened; it stays as she left it.
class TuneFinder final : public QDialog {
    Q_OBJECT
public:
    explicit TuneFinder(QWidget* parent = nullptr);

    // Reads the tune of a row, for a look at how it begins; none where it cannot be read.
    using Reader = std::function<std::optional<tune::Tune>(collection::Row const&)>;
    void setReader(Reader reader) { m_read = std::move(reader); }
    void setRows(std::vector<collection::Row> rows);
    void setFolders(QStringList const& folders, QStringList const& troubles, int passedOver);
    void setReading(int done, int all); // files; 0 of 0: all is read

    void begin();        // is shown, with the words to be typed over
    void play(int midi); // a key of an instrument: one of the first notes
    TuneRows const& rows() const { return *m_rows; }
    std::optional<collection::Row> chosen() const;
    void openFolders();

signals:
    void openWanted(collection::Row const& row);
    void folderAdded(QString const& folder);
    void folderRemoved(QString const& folder);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void place();
    void fillChoices();
    void narrow();
    void preview();
    void tellState();
    void open();
    collection::Wish wish() const;

    TuneRows* m_rows;
    QLineEdit* m_words;
    QLineEdit* m_notes;
    QComboBox* m_kind;
    QComboBox* m_key;
    QComboBox* m_time;
    QComboBox* m_arranged;
    QLabel* m_count;
    QLabel* m_said; // of the first notes
    QTableView* m_list;
    QLabel* m_beginning;
    QLabel* m_state;
    QPushButton* m_open;
    QPointer<TuneFolders> m_foldersDialog;
    Reader m_read;
    std::vector<int> m_played; // keys; empty: what is typed counts
    QElapsedTimer m_sincePlayed;
    QTimer m_soon; // the look waits until the arrow keys rest
    QStringList m_folders;
    QStringList m_troubles;
    int m_passedOver = 0;
    int m_done = 0; // files of
    int m_all = 0;
};

} // namespace ui
