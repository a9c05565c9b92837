#pragma once

#include <QDialog>
#include <QString>
#include <QStringList>

class QCheckBox;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace ui {

// What is learned of the arranger's taste, as it is told.
struct TasteTold {
    bool on = true;
    QString heading;       // "Plain, level 3"
    QString standing;      // how much was learned from how many choices
    QStringList sentences; // what it is
    bool canUse = false;   // the open tune is not arranged by it yet
    bool any = false;      // something is kept, of whatever manner and level
};

// Shows what Sallow has learned from the shapes that were taken, and lets the arranger switch
// it off, use it on the open tune, save it to a file and have all of it forgotten.
class TasteDialog final : public QDialog {
    Q_OBJECT
public:
    explicit TasteDialog(QWidget* parent = nullptr);
    void tell(TasteTold const& told);

signals:
    void switched(bool on);
    void useClicked();
    void saveClicked();
    void forgetClicked(); // asked and meant

private:
    void askForget();

    QCheckBox* m_on;
    QLabel* m_heading;
    QLabel* m_standing;
    QLabel* m_sentences;
    QPushButton* m_use;
    QPushButton* m_save;
    QPushButton* m_forget;
};

} // namespace ui
