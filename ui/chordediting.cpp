#include "ui/chordediting.h"

#include "core/tune/chordedits.h"
#include "core/tune/playing.h"
#include "ui/passage.h"
#include "ui/session.h"

#include <QAction>
#include <QCoreApplication>
#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>
#include <QUndoStack>

#include <algorithm>

namespace ui {

namespace {

using music::Chord;
using music::Interval;
using music::Length;
using tune::ChordOrigin;
using tune::ChordPlace;
using tune::Tune;

QString tr(char const* text) { return QCoreApplication::translate("ChordEditing", text); }

tune::BarIndex selectedBar(Session const& session) { return session.writtenBar(); }

// The tune with the chord at a place thought away, so that the finder looks there again and
// keeps all others.
Tune openAt(Tune tune, ChordPlace place)
{
    auto const here = chordHere(tune, place);
    if (here && here->from.at != place.at) tune = withChordSplit(std::move(tune), place);
    for (tune::ChordMark& mark : tune.bars[place.bar].chords)
        if (mark.at == place.at) mark.written = tune::foundWord;
    return tune;
}

std::vector<harmony::Likely> likelyAt(harmony::Learned const& learned, Tune const& tune,
                                      ChordPlace place, Interval moved)
{
    harmony::ChordWishes wishes;
    wishes.keepWritten = true;
    auto const found = suggestChords(learned, openAt(tune, place), wishes);
    for (harmony::FoundChord const& chord : found.chords) {
        if (chord.unit.bar != place.bar || place.at < chord.unit.at ||
            place.at >= chord.unit.at + chord.unit.length)
            continue;
        std::vector<harmony::Likely> likely = chord.likely;
        for (harmony::Likely& one : likely) one.chord = transposed(one.chord, moved);
        return likely;
    }
    return {};
}

bool become(Session& session, Tune tune, QString const& text)
{
    proposal::Brief next = session.brief();
    next.tune = std::move(tune);
    return session.goBackTo(std::move(next), text);
}

bool hasWritten(Tune const& tune)
{
    return std::any_of(tune.bars.begin(), tune.bars.end(), [](tune::Bar const& bar) {
        return std::any_of(bar.chords.begin(), bar.chords.end(), [](tune::ChordMark const& m) {
            return originOf(m) == ChordOrigin::Written;
        });
    });
}

// "Am · Am G · Am": the chords of the first bars.
QString chordWords(Tune const& tune, Interval moved)
{
    constexpr int mostBars = 16;
    QStringList bars;
    auto const spans = chordSpans(tune);
    for (tune::BarIndex i = 0; i < tune.bars.size() && bars.size() < mostBars; ++i) {
        QStringList chords;
        for (tune::ChordSpan const& span : spans)
            if (span.bar == i && span.pass.value_or(1) == 1)
                chords << QString::fromStdString(shown(transposed(span.chord, moved)));
        if (!chords.isEmpty()) bars << chords.join(QLatin1Char(' '));
    }
    return bars.join(QStringLiteral(" · "));
}

int otherBars(Tune const& a, Tune const& b)
{
    auto const inBar = [](Tune const& tune) {
        base::List<tune::BarIndex, std::vector<tune::ChordSpan>> out(tune.bars.size(), {});
        for (tune::ChordSpan const& span : chordSpans(tune)) out[span.bar].push_back(span);
        return out;
    };
    auto const first = inBar(a);
    auto const second = inBar(b);
    int count = 0;
    for (tune::BarIndex const i : first.indices()) count += first[i] != second[i];
    return count;
}

Tune chordedAnew(Session const& session, harmony::Learned const& learned, harmony::Way way,
                 bool keepWritten)
{
    harmony::ChordWishes wishes;
    wishes.way = way;
    wishes.keepWritten = keepWritten;
    return withFoundChords(learned, session.brief().tune, wishes);
}

// These bars of the tune with other chords, the first time they are played.
void hearTune(Session const& session, Tune tune, Passage bars, HearTrial const& hear)
{
    proposal::Brief asked = session.brief();
    asked.tune = std::move(tune);
    auto const made = session.trial(std::move(asked))();
    if (!made) return;
    if (auto const played = playedPassage(made->playing, bars))
        hear(*made, played->first, played->last);
}

} // namespace

std::vector<ChordBeat> chordBeats(Session const& session, harmony::Learned const& learned)
{
    std::vector<ChordBeat> beats;
    if (!session.isOpen() || !session.selected()) return beats;
    Tune const& tune = session.brief().tune;
    Interval const moved = session.proposal().moved;
    tune::BarIndex const bar = selectedBar(session);
    tune::Bar const& written = tune.bars[bar];
    std::vector<Length> places;
    for (Length at; at < written.length; at = at + beatLength(written.meter))
        places.push_back(at);
    for (tune::ChordMark const& mark : written.chords) places.push_back(mark.at);
    std::sort(places.begin(), places.end());
    places.erase(std::unique(places.begin(), places.end()), places.end());

    for (Length at : places) {
        ChordBeat beat;
        beat.at = at;
        music::Rational const number = at / beatLength(written.meter) + music::Rational(1);
        QString const name =
            number.denominator() == 1
                ? tr("beat %1").arg(number.numerator())
                : tr("beat %1 and a half").arg(static_cast<int>(floorOf(number)));
        auto const here = chordHere(tune, {bar, at});
        if (here) {
            beat.chord = transposed(here->chord, moved);
            beat.begins = here->from.at == at && here->begins;
        }
        QString const chord =
            beat.chord ? QString::fromStdString(shown(*beat.chord)) : QString();
        QString origin;
        if (here && here->origin == ChordOrigin::Found) origin = tr(", found");
        if (here && here->origin == ChordOrigin::Set) origin = tr(", set by you");
        beat.name = !beat.chord    ? tr("%1, no chord").arg(name)
                    : beat.begins ? tr("%1: %2 begins%3").arg(name, chord, origin)
                                  : tr("%1: %2 goes on%3").arg(name, chord, origin);
        beat.likely = likelyAt(learned, tune, {bar, at}, moved);
        beats.push_back(std::move(beat));
    }
    return beats;
}

std::size_t selectedBeat(Session const& session, std::vector<ChordBeat> const& beats)
{
    arrange::PositionIndex const position = *session.selected();
    Length const at = session.arrangement().positions[position].position.at;
    for (std::size_t i = 0; i < beats.size(); ++i)
        if (beats[i].at == at) return i;
    return 0;
}

bool editChord(Session& session, std::vector<ChordBeat> const& beats, ChordWish const& wish)
{
    if (!session.isOpen() || !session.selected() || wish.beat >= beats.size()) return false;
    Tune const& tune = session.brief().tune;
    tune::BarIndex const bar = selectedBar(session);
    ChordPlace const place{bar, beats[wish.beat].at};
    QString const where = QString::fromStdString(tune::barName(tune, bar));
    Length const beat = beatLength(tune.bars[bar].meter);
    switch (wish.what) {
    case ChordWish::What::Set: {
        Chord const chord = transposed(wish.chord, opposite(session.proposal().moved));
        QString const name = QString::fromStdString(shown(wish.chord));
        return become(session,
                      wish.everywhere ? withChordEverywhere(tune, place, chord)
                                      : withChord(tune, place, chord),
                      tr("%1 in %2").arg(name, where));
    }
    case ChordWish::What::TakeOut:
        return become(session, withoutChord(tune, place), tr("chord taken out of %1").arg(where));
    case ChordWish::What::Split:
        return become(session, withChordSplit(tune, place),
                      tr("chord plucked again in %1").arg(where));
    case ChordWish::What::Earlier:
    case ChordWish::What::Later: {
        bool const later = wish.what == ChordWish::What::Later;
        auto moved = withChangeMoved(tune, place, later ? beat : Length{} - beat);
        if (!moved) {
            emit session.noticed(tr("Another chord is in the way, or the tune ends there."));
            return false;
        }
        return become(session, *std::move(moved),
                      (later ? tr("chord later in %1") : tr("chord earlier in %1")).arg(where));
    }
    }
    return false;
}

std::vector<ChordWayRow> chordWayRows(Session const& session, harmony::Learned const& learned,
                                      bool keepWritten)
{
    std::vector<ChordWayRow> rows;
    std::vector<Tune> tunes;
    for (harmony::Way way : harmony::allWays) {
        Tune tune = chordedAnew(session, learned, way, keepWritten);
        if (std::ranges::any_of(tunes, [&tune](Tune const& t) { return !otherBars(t, tune); }))
            continue;
        rows.push_back({way, chordWords(tune, session.proposal().moved),
                        otherBars(session.brief().tune, tune)});
        tunes.push_back(std::move(tune));
    }
    return rows;
}

bool takeChordWay(Session& session, harmony::Learned const& learned, harmony::Way way,
                  bool keepWritten)
{
    std::string_view const name = harmony::wayName(way);
    return become(session, chordedAnew(session, learned, way, keepWritten),
                  tr("chords: %1")
                      .arg(QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()))));
}

void askForChord(Session& session, harmony::Learned const& learned, HearTrial const& hear,
                 QWidget* parent)
{
    if (!session.isOpen() || !session.selected()) return;
    auto const beats = chordBeats(session, learned);
    if (beats.empty()) return;
    Tune const& tune = session.brief().tune;
    tune::BarIndex const bar = selectedBar(session);
    ChordEditor editor(QString::fromStdString(tune::barName(tune, bar)), beats,
                       selectedBeat(session, beats),
                       static_cast<int>(barsAlike(tune, bar).size()), parent);
    QObject::connect(&editor, &ChordEditor::hearWanted, &editor, [&](ChordWish const& wish) {
        ChordPlace const place{bar, beats[wish.beat].at};
        Chord const chord = transposed(wish.chord, opposite(session.proposal().moved));
        hearTune(session, withChord(session.brief().tune, place, chord), {bar, bar}, hear);
    });
    if (editor.exec() == QDialog::Accepted) editChord(session, beats, editor.wish());
}

void askForChordWay(Session& session, harmony::Learned const& learned, HearTrial const& hear,
                    QWidget* parent)
{
    if (!session.isOpen()) return;
    QString key;
    if (auto const found = foundKey(learned.keys, session.brief().tune)) {
        harmony::LikelyKey best = found->likely.front();
        key = tr("From its notes the tune as written is in %1 (%2 % sure).")
                  .arg(QString::fromStdString(shown(best.key)))
                  .arg(qRound(100 * best.probability));
    }
    ChordWays ways([&session, &learned](bool keep) { return chordWayRows(session, learned, keep); },
                   key, hasWritten(session.brief().tune), parent);
    QObject::connect(&ways, &ChordWays::hearWanted, &ways, [&] {
        constexpr int barsHeard = 8;
        auto const from = session.selected() ? selectedBar(session) : tune::BarIndex(0);
        auto const last = session.brief().tune.bars.beyond() - 1;
        hearTune(session, chordedAnew(session, learned, ways.way(), ways.keepsWritten()),
                 {from, std::min(from + barsHeard - 1, last)}, hear);
    });
    if (ways.exec() == QDialog::Accepted)
        takeChordWay(session, learned, ways.way(), ways.keepsWritten());
}

ChordMenu::ChordMenu(QMainWindow& window, Session& session, harmony::Learned const& learned)
    : QObject(&window), m_session(session), m_learned(learned),
      m_chord(new QAction(tr("&Chord here…"), &window)),
      m_takeOut(new QAction(tr("&Take this chord out"), &window)),
      m_earlier(new QAction(tr("A beat &earlier"), &window)),
      m_later(new QAction(tr("A beat &later"), &window)),
      m_copy(new QAction(tr("C&opy these chords"), &window)),
      m_paste(new QAction(tr("&Paste the chords here"), &window)),
      m_ways(new QAction(tr("Chords for the &whole tune…"), &window))
{
    m_chord->setShortcut(Qt::Key_C);
    m_ways->setShortcut(Qt::SHIFT | Qt::Key_C);
    auto* menu = new QMenu(tr("&Chords"), &window);
    menu->addActions({m_chord, m_takeOut, m_earlier, m_later});
    menu->addSeparator();
    menu->addActions({m_copy, m_paste});
    menu->addSeparator();
    menu->addAction(m_ways);
    constexpr qsizetype behindEdit = 2;
    QList<QAction*> const menus = window.menuBar()->actions();
    window.menuBar()->insertMenu(menus.size() > behindEdit ? menus[behindEdit] : nullptr, menu);

    HearTrial const hear = [this](arrange::Arrangement const& trial, tune::PlayedBarIndex first,
                                  tune::PlayedBarIndex last) {
        emit hearWanted(trial, first, last);
    };
    connect(m_chord, &QAction::triggered, this, [this, hear, &window] {
        askForChord(m_session, m_learned, hear, &window);
        emit hearEnded();
    });
    connect(m_ways, &QAction::triggered, this, [this, hear, &window] {
        askForChordWay(m_session, m_learned, hear, &window);
        emit hearEnded();
    });
    connect(m_takeOut, &QAction::triggered, this, [this] { edit(ChordWish::What::TakeOut); });
    connect(m_earlier, &QAction::triggered, this, [this] { edit(ChordWish::What::Earlier); });
    connect(m_later, &QAction::triggered, this, [this] { edit(ChordWish::What::Later); });
    connect(m_copy, &QAction::triggered, this, &ChordMenu::copyChords);
    connect(m_paste, &QAction::triggered, this, &ChordMenu::pasteChords);
    connect(&session, &Session::changed, this, &ChordMenu::enable);
    connect(&session, &Session::selectionChanged, this, &ChordMenu::enable);
    enable();
}

void ChordMenu::enable()
{
    bool const open = m_session.isOpen();
    for (QAction* action : {m_chord, m_takeOut, m_earlier, m_later, m_copy})
        action->setEnabled(open && m_session.selected());
    m_paste->setEnabled(m_copy->isEnabled() && !m_copied.empty());
    m_ways->setEnabled(open);
}

void ChordMenu::edit(ChordWish::What what)
{
    auto const beats = chordBeats(m_session, m_learned);
    if (beats.empty()) return;
    ChordWish wish;
    wish.what = what;
    wish.beat = selectedBeat(m_session, beats);
    editChord(m_session, beats, wish);
}

void ChordMenu::copyChords()
{
    if (!m_session.isOpen() || !m_session.selected()) return;
    tune::BarIndex const bar = selectedBar(m_session);
    Passage const bars = m_passage().value_or(Passage{bar, bar});
    Tune const tune = transposed(m_session.brief().tune, m_session.proposal().moved);
    m_copied = tune::chordRow(tune, bars.firstBar, bars.lastBar);
    enable();
    QString const first = QString::fromStdString(barName(tune, bars.firstBar));
    emit done(
        bars.firstBar == bars.lastBar
            ? tr("The chords of %1 are copied. Choose another bar to paste them.").arg(first)
            : tr("The chords of %1 to %2 are copied. Choose another bar to paste them.")
                  .arg(first, QString::fromStdString(barName(tune, bars.lastBar))));
}

void ChordMenu::pasteChords()
{
    if (!m_session.isOpen() || !m_session.selected() || m_copied.empty()) return;
    Interval const back = opposite(m_session.proposal().moved);
    tune::ChordRow row = m_copied;
    for (auto& bar : row)
        for (tune::ChordMark& mark : bar) mark.chord = transposed(mark.chord, back);
    tune::BarIndex const bar = selectedBar(m_session);
    Tune const& tune = m_session.brief().tune;
    become(m_session, withChordRow(tune, bar, row),
           tr("chords pasted from %1 on").arg(QString::fromStdString(barName(tune, bar))));
}

} // namespace ui
