#pragma once

#include <QObject>
#include <QString>
#include <QStringList>

#include <vector>

class QWidget;

namespace ui {

class Announcer;
class Header;
class Session;

// What an edit changed, told to readers of the screen: the tune that is open now, the harp,
// hand, key and manner, the new shape and how many others follow it, and what is to be checked;
// and the place, where the keyboard is on none of the lists that tell it themselves.
class Announcing final : public QObject {
    Q_OBJECT
public:
    // All are to outlive it; the window is asked where the keyboard is.
    Announcing(Session& session, Header const& header, QWidget* window);

private:
    struct Known {
        QString title;
        std::vector<std::pair<QString, QString>> choices; // "Harp", "26 strings · C"
        QStringList shapes;                               // of each position
        std::vector<bool> kept;
        qsizetype toCheck = 0;
        int selected = -1;
    };
    Known known() const;
    void soon();
    void tell();
    QStringList changes(Known const& now) const;
    bool isToldByFocus() const;

    Session& m_session;
    Header const& m_header;
    QWidget* m_window;
    Announcer* m_announcer;
    Known m_known;
    bool m_waiting = false;
};

} // namespace ui
