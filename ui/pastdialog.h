#pragma once

#include <QDialog>
#include <QString>

#include <optional>
#include <vector>

class QListWidget;

namespace ui {

// One piece of work as it was at some time: what it is, and what else is known of it.
struct PastWork {
    QString words;  // "The Basket by the Weir · today at 21:04"
    QString detail; // lines below
};

// Work from before to choose from: what was left unsaved, or earlier versions of what is open.
class PastDialog final : public QDialog {
    Q_OBJECT
public:
    enum class Answer { Later, Open, ThrowAway };

    // `throwAway` is the label of a third button; empty: there is none.
    PastDialog(QString const& title, QString const& heading, std::vector<PastWork> const& works,
               QString const& open, QString const& later, QString const& throwAway,
               QWidget* parent = nullptr);

    Answer answer() const { return m_answer; }
    int chosen() const; // index into the works

private:
    QListWidget* m_works;
    Answer m_answer = Answer::Later;
};

// "today at 21:04", "yesterday at 9:30", "12 March at 18:22", from a time in ISO 8601.
QString whenWords(QString const& isoTime);

} // namespace ui
