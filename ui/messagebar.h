#pragma once

#include <QWidget>

class QLabel;
class QGridLayout;

namespace ui {

class Button;

// A quiet bar for what went wrong or should be known, with its place and remedy. It stays until
// it is dismissed or the next message comes; nothing waits for it.
class MessageBar final : public QWidget {
    Q_OBJECT
public:
    explicit MessageBar(QWidget* parent = nullptr);

    enum class Tone { Notice, Done }; // something to know, or something that went well

    void tell(QString const& words, Tone tone = Tone::Notice);
    QString words() const;
    // What may be done about it, as buttons under the words, until the next message.
    void offer(QStringList const& choices);
    QStringList choices() const;

public slots:
    void dismiss();

signals:
    void choiceClicked(int choice); // index into choices()

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Tone m_tone = Tone::Notice;
    QLabel* m_words;
    Button* m_close;
    QWidget* m_offer;
    QGridLayout* m_choices;
};

} // namespace ui
