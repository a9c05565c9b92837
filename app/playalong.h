#pragma once

#include "core/perform/course.h"
#include "core/perform/playalong.h"
#include "ui/audition.h"

#include <QObject>
#include <QPointer>
#include <QTimer>

#include <optional>
#include <vector>

namespace sound {
class Player;
}
namespace ui {
class PlayedDialog;
class Workbench;
} // namespace ui

namespace app {

// Listens while she plays along, and tells afterwards what was in its place. Either the passage
// is heard in time, or it goes on only when the right strings were played.
class PlayAlong final : public QObject {
    Q_OBJECT
public:
    PlayAlong(ui::Workbench& workbench, sound::Player& player);

    // A passage begins. Whether it waits for her, so that the player is not to play it.
    bool begin(ui::Audition const& audition, perform::Course const& course);
    // The same bars in another way, in the middle.
    void change(perform::Course const& course);
    void hear(int midi); // a key of her instrument
    void stop();         // when she asks for it

private:
    struct Take {
        int round = 0;
        perform::Heard heard;
    };

    void ended();
    void tell(perform::Judgement const& judgement);
    void await();
    void playOthers(perform::Seconds from, perform::Seconds to);

    ui::Workbench& m_workbench;
    sound::Player& m_player;
    std::optional<ui::Audition> m_audition; // while it listens
    perform::Course m_course;
    perform::Mine m_mine;
    std::vector<Take> m_takes;
    std::optional<perform::Waiting> m_waiting;
    perform::Schedule m_whole;    // both hands, of what waits
    perform::Judgement m_waited;  // what was tried where it waited
    QPointer<ui::PlayedDialog> m_told;
};

} // namespace app
