#pragma once

#include "app/desk.h"
#include "core/harp/harp.h"

#include <QObject>

namespace app {

// Tells the usual cautions where they matter, each once ever: before strings are tuned otherwise,
// where a shape is wide for a small hand, and where a level asks for speed.
class Cautions final : public QObject {
    Q_OBJECT
public:
    explicit Cautions(Desk const& desk);

private:
    void look();
    void tellOnce(QString const& caution, QString const& words);

    Desk m_desk;
    harp::Harp m_harp; // as it was looked at last
};

// Whether the same strings are tuned to other pitches.
bool isRetuned(harp::Harp const& from, harp::Harp const& to);

} // namespace app
