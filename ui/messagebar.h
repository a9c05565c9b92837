#pragma once

#include <QStringList>
#include <QTime>
#include <QWidget>

#include <vector>

class QDialog;
class QVBoxLayout;

namespace ui {

class Button;

// Quiet rows for what went wrong or should be known, with its place and remedy, the newest
// first. Each row keeps its own look and stays until it is dismissed; what went well goes by
// itself after a while. Everything told since the start can be read again in a list.
class MessageBar final : public QWidget {
    Q_OBJECT
public:
    explicit MessageBar(QWidget* parent = nullptr);

    enum class Tone { Notice, Done }; // something to know, or something that went well

    struct Message {
        int number = 0;
        Tone tone = Tone::Notice;
        QString about; // the file or tune it is of; may be empty
        QString words;
        QTime at;
        bool shown = true;
    };

    // Answers the message's number. What stands there already word for word is not told twice.
    int tell(QString const& words, Tone tone = Tone::Notice, QString const& about = {});
    // Of the newest that is shown; empty where none is.
    QString words() const;
    // What may be done about the newest, as buttons under its words.
    void offer(QStringList const& choices);
    QStringList choices() const;
    // Choices hold only until the document changes.
    void withdrawChoices();

    std::vector<Message> const& kept() const { return m_kept; } // oldest first
    int shownCount() const;

    // Everything told, the newest first.
    void openList();

public slots:
    void dismiss();    // the newest
    void dismissAll(); // all that are of a tune or went well; they stay in the list

signals:
    void choiceClicked(int choice); // index into choices()

private:
    class Row;

    Row* rowOf(int number) const;
    Row* newest() const;
    void remove(int number);
    void arrange();

    std::vector<Message> m_kept;
    std::vector<Row*> m_rows; // shown, the newest first
    QVBoxLayout* m_column;
    Button* m_more;
    QDialog* m_list = nullptr;
};

} // namespace ui
