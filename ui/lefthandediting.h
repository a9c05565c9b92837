#pragma once

#include "ui/actions.h"
#include "ui/lefthandcopy.h"
#include "ui/session.h"

#include <QObject>

#include <functional>
#include <optional>

namespace ui {

// What is done with left hands that are there: copied, pasted, swapped, used wherever a chord
// or a bar comes again, and several of them chosen together. Joins the actions for it to the
// session.
class LeftHandEditing final : public QObject {
    Q_OBJECT
public:
    // `passage` answers the bars that are marked to be heard, if any.
    LeftHandEditing(Session& session, Actions const& actions,
                    std::function<std::optional<Passage>()> passage, QObject* parent);

    void forget();           // what was copied: another tune
    void enable(bool ready); // the actions; not ready: no tune is shown

signals:
    void told(QString const& sentence); // it could not be done, or not everywhere
    void done(QString const& sentence);

private:
    void copy();
    void paste();
    void swap();
    void useAtEvery(Like like);
    void chooseAll();
    void chooseLikeBars();
    void nextLikeBar();
    void lay(Laying const& laying, QString const& step, QString const& sentence);
    bool ready() const;
    tune::BarIndex selectedBar() const;
    LikeBars likeBars();

    Session& m_session;
    Actions const& m_actions;
    std::function<std::optional<Passage>()> m_passage;
    std::optional<CopiedHand> m_copied;
};

} // namespace ui
