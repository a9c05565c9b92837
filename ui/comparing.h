#pragma once

#include "ui/actions.h"
#include "ui/compared.h"

#include "core/arrange/arrangement.h"
#include "core/proposal/brief.h"

#include <QObject>

#include <optional>

namespace ui {

class Session;
class Transport;

// Two settings of the open tune, to be heard by turns: A, which was remembered or is kept, and
// B, which is looked at. Joins the actions for it to the session.
class Comparing final : public QObject {
    Q_OBJECT
public:
    Comparing(Session& session, Actions const& actions, Transport& transport, QObject* parent);

    void enable(bool ready);            // the actions; not ready: no tune is shown
    void forget();                      // another tune: A too
    void lookAtB();                     // what is looked at now is B
    arrange::Arrangement heard() const; // the one of the two that is listened to
    void flip();                        // to the other

signals:
    void flipped(); // heard() is the other one
    void told(QString const& sentence);
    void done(QString const& sentence);

private:
    struct Setting {
        arrange::Arrangement arrangement;
        proposal::Brief brief;
    };

    void rememberA();
    void takeA();
    void show();
    arrange::Arrangement arrangementOf(Compared which) const;

    Session& m_session;
    Actions const& m_actions;
    Transport& m_transport;
    bool m_ready = false;
    std::optional<Setting> m_a;         // none: A is what is kept
    std::optional<Compared> m_compared; // which of the two is heard; none: nothing is compared
};

} // namespace ui
