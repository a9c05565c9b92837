#pragma once

#include "ui/aside.h"

#include "core/arrange/arrangement.h"
#include "core/proposal/remedies.h"

#include <QObject>
#include <QPoint>

#include <functional>
#include <optional>
#include <vector>

namespace ui {

class Session;
class SnagCard;
class StringBank;
class TuneGrid;

// The snags of the open tune: marked where they are, and the card on which a way round one is
// heard and taken.
class SnagEditing final : public QObject {
    Q_OBJECT
public:
    SnagEditing(Session& session, TuneGrid& grid, StringBank& bank, QWidget* window);

    void show(bool ready); // the marks; not ready: no tune is shown
    void forget();         // what was looked for: the arrangement is another

signals:
    void done(QString const& sentence);
    // Bars of the tune in another way, and nothing kept.
    void hearWanted(arrange::Arrangement const& arrangement,
                    tune::PlayedBarIndex firstPlayedBar, tune::PlayedBarIndex lastPlayedBar);

private:
    void open(int snag, QPoint const& where);
    void hearWay(int way);
    void takeWay(int way, bool alike);
    void takeForWholeTune(int which);
    void arrangeAnew(std::function<void()> const& edit);
    void lookForWholeTune();
    void tellWholeTune();

    Session& m_session;
    TuneGrid& m_grid;
    StringBank& m_bank;
    SnagCard* m_card;
    bool m_ready = false;
    std::size_t m_snag = 0; // of the card: index into Proposal::snags
    Aside* m_trial;         // of a way round a snag, to be heard
    Aside* m_search;        // for what helps in the whole tune
    std::optional<std::vector<proposal::WholeTuneWay>> m_wholeTune; // found for what is open
};

} // namespace ui
