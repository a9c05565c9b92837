#pragma once

#include "core/arrange/arrangement.h"
#include "core/harp/levers.h"

#include <QObject>

namespace ui {

class Listening;
class Session;
class StringBank;
class Transport;

// What the string bank shows of the open tune now: levers and fingers of what is selected or
// sounds, and where the left hand goes next. What is plucked and turned there goes to the
// session and to the sound.
class StringsNow final : public QObject {
    Q_OBJECT
public:
    StringsNow(Session& session, Listening const& listening, Transport const& transport,
               StringBank& bank, QObject* parent);

    void show(bool ready);                    // not ready: no tune is shown
    void showLevers();                        // as they stand now
    void positionPlaying(arrange::PlayedPositionIndex playedPosition);
    void playbackStopped();
    void awaitStrings(QString const& names); // that are to be played now; empty: no longer
    void pluckPitch(int midi); // the string that sounds this key as the levers stand, if any

signals:
    void pluckRequested(harp::StringIndex string, int midi);
    void told(QString const& sentence);
    void done(QString const& sentence);

private:
    void showFingers(arrange::Arrangement const& arrangement, arrange::PositionIndex position);
    void pluck(harp::StringIndex string);
    void turnLever(harp::StringIndex string, harp::Lever to);
    harp::LeverSetting leversNow() const;

    Session& m_session;
    Listening const& m_listening;
    Transport const& m_transport;
    StringBank& m_bank;
    bool m_ready = false;
};

} // namespace ui
