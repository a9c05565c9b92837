#pragma once

#include <QFrame>
#include <QString>
#include <QStringList>

#include <optional>
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
        QString place; // "best", "nearly as good"
        QString score; // "score 1.2, lower is better"
        bool taken = false;
        friend bool operator==(Way const&, Way const&) = default;
    };
    std::vector<Way> ways;
    int alike = 1;        // snags that are alike, this one included
    bool decided = false; // by the arranger
    bool choice = true;   // else there is nothing to choose from
};

// The ways round a snag over the lane it is in: each can be heard in its place, and one is taken
// for this snag alone or for all that are alike. Below, what helps in the whole tune, as soon as
// that is known. Arrow keys go from way to way, Space lets you hear, Enter takes for all alike,
// Shift+Enter for this one, Tab goes to the buttons, Esc closes.
class SnagCard final : public QFrame {
    Q_OBJECT
public:
    explicit SnagCard(QWidget* parent = nullptr);

    void tell(SnagTold const& told);
    void openAt(QPoint const& where); // on the screen
    int marked() const;               // the way that is gone to
    // The way that is being worked out, to be heard; none: no longer any.
    void setWaiting(std::optional<int> way);
    // What helps in the whole tune, in sentences; none: it is still looked for.
    void setWholeTune(std::optional<QStringList> const& sentences);

signals:
    void hearClicked(int way);
    void wayChosen(int way, bool alike);
    void letChooseClicked(); // what was decided is taken back
    void wholeTuneChosen(int sentence);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void go(int way);
    void choose(bool alike);
    void addWays(QVBoxLayout* column);
    void addButtons(QVBoxLayout* column);
    void fit();

    SnagTold m_told;
    QVBoxLayout* m_column;
    QWidget* m_body = nullptr;
    QWidget* m_whole = nullptr; // in the body
    QButtonGroup* m_ways = nullptr;
    std::vector<Button*> m_hear; // one for each way
    QPoint m_where;              // what it is opened at
};

} // namespace ui
