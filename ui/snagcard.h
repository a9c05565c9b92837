#pragma once

#include <QFrame>
#include <QString>

#include <vector>

class QButtonGroup;
class QVBoxLayout;

namespace ui {

class Button;

// A snag as it is told: what cannot be had, and the ways round it, the best first.
struct SnagTold {
    QString title; // "Bar 11 · D♯5"
    QString why;
    struct Way {
        QString words;
        QString score; // "score 1.2", of the whole way
        bool taken = false;
        friend bool operator==(Way const&, Way const&) = default;
    };
    std::vector<Way> ways;
    int alike = 1;        // snags that are alike, this one included
    bool decided = false; // by the arranger
};

// The ways round a snag over the lane it is in: each can be heard in its place, and one is taken
// for this snag alone or for all that are alike. Arrow keys go from way to way, Space lets you
// hear, Enter takes, Esc closes.
class SnagCard final : public QFrame {
    Q_OBJECT
public:
    explicit SnagCard(QWidget* parent = nullptr);

    void tell(SnagTold const& told);
    void openAt(QPoint const& where); // on the screen
    int marked() const;               // the way that is gone to

signals:
    void hearClicked(int way);
    void wayChosen(int way, bool alike);
    void letChooseClicked();  // what was decided is taken back
    void wholeTuneClicked(); // ways that change all of the tune

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void go(int way);

    SnagTold m_told;
    QVBoxLayout* m_column;
    QWidget* m_body = nullptr;
    QButtonGroup* m_ways = nullptr;
};

} // namespace ui
