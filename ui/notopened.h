#pragma once

#include <QWidget>

class QLabel;

namespace ui {

class Button;

// What stands in the middle when a file or tune could not be opened, so that no other tune is
// taken for it. Why is told in the message above.
class NotOpened final : public QWidget {
    Q_OBJECT
public:
    explicit NotOpened(QWidget* parent = nullptr);

    // `still`: the tune that is open all the while; empty: none.
    void setWords(QString const& name, QString const& still);

signals:
    void backClicked();
    void openClicked();

private:
    QLabel* m_title;
    QLabel* m_words;
    Button* m_back;
    Button* m_open;
};

} // namespace ui
