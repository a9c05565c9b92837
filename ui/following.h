#pragma once

#include "ui/followed.h"

#include <QObject>

#include <optional>

class QAction;

namespace ui {

class FollowedBox;
class Session;
class TuneGrid;

// What the arrangement changed elsewhere when the arranger kept a shape: shown until she has
// looked there, and taken back where she wants only what she kept.
class Following final : public QObject {
    Q_OBJECT
public:
    // `letFollow` says whether other chords may change when one is kept.
    Following(Session& session, TuneGrid& grid, FollowedBox& box, QAction const& letFollow,
              QObject* parent);

    void forget();         // another tune
    void note();           // the arrangement is another than at the last note
    void see();            // the position that is selected now
    void show(bool ready); // not ready: no tune is shown

private:
    void keepOnlyThis();

    Session& m_session;
    TuneGrid& m_grid;
    FollowedBox& m_box;
    QAction const& m_letFollow;
    bool m_ready = false;
    std::optional<ShapesThen> m_then; // before the latest change
    std::vector<Followed> m_followed; // not yet seen
};

} // namespace ui
