#pragma once

#include <QStringList>
#include <QWidget>

class QLabel;

namespace ui {

class Button;

// What a choice changed elsewhere, in words, with a way back. Hidden while nothing followed.
class FollowedBox final : public QWidget {
    Q_OBJECT
public:
    explicit FollowedBox(QWidget* parent = nullptr);

    void setLines(QStringList const& lines);
    void setLow(bool low); // one line alone, where there is little room
    QStringList const& lines() const { return m_lines; }
    Button* onlyThisButton() const { return m_onlyThis; }
    Button* letFollowButton() const { return m_letFollow; }
    int heightFor(int width) const; // 0 while hidden

signals:
    void onlyThisClicked();  // the rest as it was
    void letFollowClicked(); // seen, and well
    void resized();

private:
    void tellFew();

    QStringList m_lines;
    bool m_low = false;
    QLabel* m_heading;
    QLabel* m_words;
    Button* m_onlyThis;
    Button* m_letFollow;
};

} // namespace ui
