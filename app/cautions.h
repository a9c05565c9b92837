#pragma once

#include "core/harp/harp.h"

#include <QObject>

namespace ui {
class Session;
class Workbench;
} // namespace ui

namespace app {

class Preferences;

// Tells the usual cautions where they matter, each once ever: before strings are tuned otherwise,
// where a shape is wide for a small hand, and where a level asks for speed.
class Cautions final : public QObject {
    Q_OBJECT
public:
    Cautions(Preferences& preferences, ui::Workbench& workbench, ui::Session& session);

private:
    void look();
    void tellOnce(QString const& caution, QString const& words);

    Preferences& m_preferences;
    ui::Workbench& m_workbench;
    ui::Session& m_session;
    harp::Harp m_harp; // as it was looked at last
};

// Whether the same strings are tuned to other pitches.
bool isRetuned(harp::Harp const& from, harp::Harp const& to);

} // namespace app
