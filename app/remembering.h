#pragma once

#include "app/desk.h"
#include "app/preferences.h"

#include <QObject>
#include <QTimer>

namespace app {

class Players;

// Carries what the arranger does into the preferences as she does it, so that it is there at the
// next start however this one ends, and back again.
class Remembering final : public QObject {
    Q_OBJECT
public:
    Remembering(Desk const& desk, Players& players);

    void keepNow(); // at the end

private:
    void fillRecent();
    void keepPlace();

    Desk m_desk;
    QString m_tune; // the open one's name in the preferences
    bool m_practised = false; // what is set for practice has changed since it was kept
    QTimer m_soon;  // places change with every key; they are written when she pauses
};

} // namespace app
