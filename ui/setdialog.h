#pragma once

#include "ui/bookdialog.h"

#include <QDialog>
#include <QString>
#include <QStringList>

#include <vector>

class QCheckBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QListWidgetItem;
class QPushButton;

namespace ui {

// A set is put together: tunes of the open tunebook in an order, a title, and what is made of
// them. Who owns it does the work.
class SetDialog final : public QDialog {
    Q_OBJECT
public:
    static constexpr int mostTunes = 6; // of a set

    // `forWhom`: harp, hand and level in words; `into`: the folder that is offered; `current`:
    // the row of the open tune, with which the set begins.
    SetDialog(std::vector<BookTune> tunes, QString const& forWhom, QString const& into,
              int current, QWidget* parent = nullptr);

    QList<int> numbers() const; // X: of the tunes of the set, in its order
    QString title() const;      // empty: that of the tunes
    bool anyOrder() const;
    QStringList files() const; // what is made, by whole names

    void started();
    void addNote(QString const& words); // what is flipped, and what could not be done
    void ended(QString const& words);

signals:
    void startClicked();
    void cancelClicked();

protected:
    void reject() override; // while it runs: asks the work to stop
    bool eventFilter(QObject* watched, QEvent* event) override; // keys of the search field

private:
    void add(int row);
    void addCurrent();
    void changed(); // the set is another one: what was said of it is wiped
    void step(int by, int from);
    void takeOut();
    void move(int by);
    void narrow(QString const& words);
    void chooseFile();
    void enable();

    std::vector<BookTune> m_all;
    QLineEdit* m_words;
    QListWidget* m_tunes; // of the tunebook
    QListWidget* m_set;
    QLineEdit* m_title;
    QCheckBox* m_anyOrder;
    QList<QCheckBox*> m_kinds;
    QLineEdit* m_into;
    QListWidget* m_notes;
    QLabel* m_state;
    QPushButton* m_addButton;
    QPushButton* m_outButton;
    QPushButton* m_upButton;
    QPushButton* m_downButton;
    QPushButton* m_start;
    bool m_running = false;
};

} // namespace ui
