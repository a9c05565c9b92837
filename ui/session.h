#pragma once

#include "ui/engine.h"
#include "ui/likeshapes.h"

#include "core/base/fault.h"
#include "core/learning/choice.h"
#include "core/proposal/proposal.h"
#include "core/tune/pagewords.h"

#include <QObject>
#include <QStringList>
#include <QUndoStack>

#include <optional>
#include <vector>

namespace ui {

// The open document: the brief, the latest answer to it, what is selected, and every step back.
// Each edit makes a new Brief and asks the engine; the old one is kept for undo. No file access
// and no scoring.
class Session final : public QObject {
    Q_OBJECT
public:
    // `standing` holds the harp, hand, level, book and weights that opened tunes are met with;
    // its tune is not looked at.
    Session(Engine engine, proposal::Brief standing, QObject* parent = nullptr);

    // What new tunes are met with: the harp, hand, level, manner, right hand and habit of key that
    // the arranger chose last. A saved brief that is opened leaves them as they are.
    proposal::Brief const& standing() const { return m_standing; }

    // What is known of the arranger's taste, by manner and level: new tunes are arranged by it,
    // and the open one where it takes another manner or level. Nothing until it is set.
    using Taste = std::function<arrange::Leaning(std::string const& manner, int level)>;
    void setTaste(Taste taste) { m_taste = std::move(taste); }

    // Open a tune for the standing harp and hand, or a whole saved brief. When it is refused
    // the document that was open stays.
    bool open(tune::Tune tune);
    bool open(proposal::Brief brief);
    bool isOpen() const { return m_proposal.has_value(); }

    proposal::Brief const& brief() const { return m_brief; }
    // Only while isOpen().
    proposal::Proposal const& proposal() const { return *m_proposal; }
    arrange::Arrangement const& arrangement() const { return m_proposal->arrangement; }

    // The selected position; none while nothing is open or the tune has no position.
    std::optional<arrange::PositionIndex> selected() const { return m_selected; }
    // The bar of the tune as read that the selected position stands in: that of an
    // introduction, say, is among the tune's last; and the other way round, the bar of the
    // arrangement that one of the tune stands in, in the time through that is selected.
    tune::BarIndex writtenBar() const;
    tune::BarIndex arrangedBar(tune::BarIndex written) const;
    // Positions that are chosen together, in order, the selected one among them; edits of
    // shapes are for all of them. Only the selected one while no others are chosen.
    std::vector<arrange::PositionIndex> chosen() const;
    // Variants of the selected position, least regret first.
    std::vector<proposal::Variant> const& variants() const { return m_variants; }
    // The candidate looked at for the selected position: the chosen one until another is
    // shown.
    std::optional<arrange::CandidateIndex> shown() const;
    bool looksElsewhere() const; // shown() is not the chosen one
    // The arrangement with the shown candidate in its place.
    arrange::Arrangement shownArrangement() const;
    // What makes the arrangement with that way round a snag, to be heard; it makes none where
    // that cannot be. It owns what it looks at: for another thread.
    std::function<std::optional<arrange::Arrangement>()> trial(std::size_t snag,
                                                               tune::Way way) const;
    // The same with another brief, in the key that is played now.
    std::function<std::optional<arrange::Arrangement>()> trial(proposal::Brief asked) const;
    // What looks for another key, tempo or level that leaves fewer snags. The same.
    using WholeTuneSearch =
        std::function<std::vector<proposal::WholeTuneWay>(std::function<bool()> const& wanted)>;
    WholeTuneSearch wholeTuneSearch() const;
    // Keys for the open tune on its harp, best first.
    std::vector<levers::KeyFit> keyFits() const { return m_engine.keyFits(m_brief); }
    // The same, each solved in full: takes longer.
    std::vector<proposal::RankedKey> rankedKeys() const { return m_engine.rankedKeys(m_brief); }

    QUndoStack& undoStack() { return m_undo; }

public slots:
    void select(arrange::PositionIndex position); // alone
    void selectBar(tune::BarIndex bar); // its first chord, where none of it is selected
    void chooseTogether(std::vector<arrange::PositionIndex> positions);
    // Together with those that are chosen, or no longer.
    void toggleChosen(arrange::PositionIndex position);
    void show(arrange::CandidateIndex candidate);

    // Edits. Each answers whether it was done; a refusal is told by refused().
    // Locks it at the selected position and solves again; where several are chosen, what is
    // most like it at each of them.
    bool choose(arrange::CandidateIndex candidate);
    bool chooseRanked(int rank); // the rank-th variant, 0 the first
    bool chooseAll(std::vector<ShapeAt> const& shapes, QString const& text); // as one step
    // A way round a snag, an index into Proposal::snags: for it alone or for all alike; and what
    // was decided about it taken back.
    bool takeSnagWay(std::size_t snag, tune::Way way, bool alike);
    bool letSnagChange(std::size_t snag);
    bool takeForWholeTune(proposal::WholeTuneWay const& way); // found for what is open now
    bool lockShown();
    bool unlock();
    bool unlockAll();
    bool leaveEmpty();
    bool setHarp(harp::Harp harp);
    bool setHand(harp::HandModel hand);
    bool setLevel(harp::Level level); // the same bars and key where the level allows them
    bool setStyle(arrange::Weights weights);
    bool setLeaning(arrange::Leaning const& leaning);
    bool setKey(proposal::KeyWish key);
    bool setTempo(std::optional<double> quartersPerMinute);
    bool setPasses(proposal::Passes passes);
    bool setForm(proposal::Form form);
    // How the lever of a string stands before playing, where the tune does not play it.
    bool wishLever(harp::StringIndex string, harp::Lever lever);
    // A way out that was offered(): an edit of the open document, or the opening of the tune
    // that was refused.
    bool take(proposal::Remedy const& remedy);
    // Harp, hand and level at once: the same tune for another player.
    bool setPlayer(harp::Harp harp, harp::HandModel hand, harp::Level level,
                   QString const& text);
    // The whole brief of another time, as one step that undo takes back.
    bool goBackTo(proposal::Brief brief, QString const& text);
    bool setWords(tune::PageWords words); // on the page
    bool setRightHand(proposal::RightHand right);
    bool setFinger(arrange::SetFinger const& finger);
    bool freeFinger(arrange::SetFinger const& finger); // its number is not looked at
    // A pattern of the arranger's own, locked at the selected position; it joins the book.
    bool usePattern(pattern::Pattern own);
    bool addPattern(pattern::Pattern own); // to the book, without a lock
    // Steps of one slider that follow each other are one edit.
    bool setSlider(arrange::Slider const& slider, int percent);
    bool resetSliders();
    // The next clearly different take of the whole tune; after the last one the best again.
    bool anotherTake();
    bool bestTake();

signals:
    void opened();           // another document; changed() follows
    // The answer; selectionChanged() follows where a tune is open.
    void changed();
    void chose(learning::Choice const& choice); // a shape was taken; before undo takes it back
    void selectionChanged(); // the position, the shown candidate or the variants
    void standingChanged();
    void turnedAway(QString const& title); // before refused(): this tune cannot be opened
    void refused(base::Fault const& fault);
    void offered(std::vector<proposal::Remedy> const& remedies); // after refused(): what helps
    void relevelled(int level, QStringList const& changes); // sentences: what is changed
    void noticed(QString const& sentence); // done, but the arranger should know

private:
    class Edit;

    base::Result<proposal::Proposal> answered(proposal::Brief const& next) const;
    base::Result<proposal::Proposal> relocked(proposal::Proposal proposal,
                                              std::vector<proposal::Lock> const& locks) const;
    proposal::Brief withoutLocksAt(arrange::PositionIndex position) const;
    proposal::Brief withoutFingerAt(arrange::SetFinger const& finger) const;
    void placeHandsAfresh(arrange::Arrangement& arrangement) const;
    void tellOfWaitingLocks();
    bool become(proposal::Brief next, QString const& text, int kind = -1);
    arrange::Leaning tasteFor(proposal::Brief const& brief) const;
    void refuse(base::Fault const& fault, proposal::Brief const& brief);
    void step(proposal::Proposal answer, QString const& text);
    void step(proposal::Brief next, proposal::Proposal answer, QString const& text,
              int kind = -1);
    template<typename T>
    bool wish(T proposal::Brief::* member, T value, QString const& text);
    void restore(proposal::Brief brief, std::optional<arrange::PositionIndex> where);
    void follow(proposal::Brief const& from, proposal::Brief const& to);
    void take(proposal::Brief brief, proposal::Proposal proposal);
    void look();
    bool severalChosen() const { return m_chosen.size() > 1; }
    bool chooseEverywhere(std::vector<ShapeAt> const& shapes, QString const& text);
    QString placeName(arrange::PositionIndex position) const;

    Engine m_engine;
    Taste m_taste;
    proposal::Brief m_standing;
    proposal::Brief m_brief;
    std::optional<proposal::Proposal> m_proposal;
    std::optional<arrange::PositionIndex> m_selected;
    // Two or more, the selected among them; else none.
    std::vector<arrange::PositionIndex> m_chosen;
    std::optional<arrange::CandidateIndex> m_shown; // none: the chosen candidate
    std::vector<proposal::Variant> m_variants;
    QUndoStack m_undo;
    bool m_following = true;     // edits change what is standing
    bool m_offersToOpen = false; // the last offer was for a document that is not open
};

} // namespace ui
