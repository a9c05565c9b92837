#pragma once

#include "app/preferences.h"

#include <QObject>
#include <QTimer>

namespace files {
struct Tables;
}
namespace ui {
class Session;
class Workbench;
} // namespace ui

namespace app {

class Filing;
class Players;

// Carries what the arranger does into the preferences as she does it, so that it is there at the
// next start however this one ends, and back again.
class Remembering final : public QObject {
    Q_OBJECT
public:
    Remembering(Preferences& preferences, ui::Workbench& workbench, ui::Session& session,
                Filing& filing, Players& players, files::Tables const& tables);

    void keepNow(); // at the end

private:
    void fillRecent();
    void keepPlace();

    Preferences& m_preferences;
    ui::Workbench& m_workbench;
    ui::Session& m_session;
    Filing& m_filing;
    QString m_tune; // the open one's name in the preferences
    bool m_practised = false; // what is set for practice has changed since it was kept
    QTimer m_soon;  // places change with every key; they are written when she pauses
};

} // namespace app
