#include "ui/menutyping.h"

#include <QElapsedTimer>
#include <QKeyEvent>
#include <QMenu>
#include <QTimer>

namespace ui {

namespace {

// Digits that follow each other within a second are one number.
class Typing final : public QObject {
public:
    explicit Typing(QMenu& menu) : QObject(&menu), m_menu(menu) { menu.installEventFilter(this); }

    bool eventFilter(QObject* watched, QEvent* event) override
    {
        if (event->type() == QEvent::Show) {
            m_digits.clear();
            // Whoever fills the menu may do so while it is about to show.
            QTimer::singleShot(0, this, [this] { goToCurrent(); });
        }
        if (event->type() == QEvent::KeyPress) {
            auto const* key = static_cast<QKeyEvent*>(event);
            if (key->text().size() == 1 && key->text().front().isDigit()) {
                take(key->text());
                return true;
            }
        }
        return QObject::eventFilter(watched, event);
    }

private:
    void goToCurrent()
    {
        for (QAction* action : m_menu.actions())
            if (action->isCheckable() && action->isChecked() && action->isEnabled())
                return m_menu.setActiveAction(action);
    }

    void take(QString const& digit)
    {
        constexpr int oneNumber = 1000; // milliseconds
        if (m_since.isValid() && m_since.elapsed() > oneNumber) m_digits.clear();
        m_since.start();
        m_digits += digit;
        QList<QAction*> found;
        for (QAction* action : m_menu.actions())
            if (action->isEnabled() && numberBegins(action->text(), m_digits)) found << action;
        if (found.isEmpty()) {
            m_digits.clear();
            return;
        }
        m_menu.setActiveAction(found.front());
        if (found.size() > 1 || found.front()->menu()) return;
        m_menu.close();
        found.front()->trigger();
    }

    QMenu& m_menu;
    QString m_digits;
    QElapsedTimer m_since;
};

} // namespace

bool numberBegins(QString const& words, QString const& digits)
{
    for (qsizetype i = 0; i < words.size(); ++i) {
        bool const begins = words[i].isDigit() && (i == 0 || !words[i - 1].isDigit());
        if (begins && words.mid(i).startsWith(digits)) return true;
    }
    return false;
}

void takeTyping(QMenu& menu) { new Typing(menu); }

} // namespace ui
