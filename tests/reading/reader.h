#pragma once

#include <QObject>
#include <QStringList>

class QAccessibleInterface;
class QWidget;

// What a reader of the screen meets: names, roles, values and states as they are told, the
// place of the keyboard, and what is announced.
namespace reading {

// As it is read out: role, name, value, state, place in its list.
QString told(QAccessibleInterface const* thing);

// Everything in sight in a window, in its order, indented; of a long list the first three
// things and the chosen one.
QStringList tree(QWidget& window);

// Controls in sight that have no name, by class and place.
QStringList unnamed(QWidget& window);

// Hears the events of assistive technology while it lives; one at a time.
class Reader {
public:
    Reader();
    Reader(Reader const&) = delete;
    Reader& operator=(Reader const&) = delete;
    ~Reader();
    // What was read out since it was last asked.
    QStringList heard();
    // A folder whose name differs from run to run is told as "~".
    void hideFolder(QString const& path);
    void note(QString const& line);
    QString masked(QString text) const;

private:
    QMetaObject::Connection m_focus;
    QStringList m_lines;
    QString m_folder;
};

} // namespace reading
