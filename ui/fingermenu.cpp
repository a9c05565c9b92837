#include "ui/fingermenu.h"

#include "ui/session.h"

#include <QCoreApplication>
#include <QMenu>

#include <algorithm>

namespace ui {

namespace {

using arrange::HandNote;

QString tr(char const* text) { return QCoreApplication::translate("FingerMenu", text); }

// The notes of the selected position the first time it is played, of both hands.
std::vector<HandNote> notesOf(arrange::Arrangement const& arrangement,
                              arrange::PositionIndex position)
{
    arrange::Position const& where = arrangement.positions[position].position;
    arrange::Occurrence const& first = where.played.front();
    std::vector<HandNote> out;
    for (HandNote const& note : arrange::handNotes(arrangement))
        if (note.playedBar == first.playedBar && note.at >= first.at &&
            note.at < first.at + where.span)
            out.push_back(note);
    return out;
}

arrange::SetFinger placeOf(arrange::Arrangement const& arrangement,
                           std::vector<HandNote> const& notes, HandNote const& note)
{
    tune::PlayedBar const& bar = arrangement.playing.bars[note.playedBar];
    auto const below = std::count_if(notes.begin(), notes.end(), [&](HandNote const& other) {
        return other.hand == note.hand && other.at == note.at && other.string < note.string;
    });
    return {note.hand,  bar.bar, note.at - bar.at, bar.pass, static_cast<int>(below),
            note.finger};
}

bool isSet(Session const& session, arrange::SetFinger const& finger)
{
    auto const& set = session.brief().fingers;
    return std::find(set.begin(), set.end(), finger) != set.end();
}

void addNote(QMenu& menu, Session& session, arrange::SetFinger const& now, HandNote const& note)
{
    bool const set = isSet(session, now);
    QString const words =
        (note.hand == harp::Side::Left ? tr("Left  %1  %2%3") : tr("Right  %1  %2%3"))
            .arg(QString::fromStdString(music::shown(note.pitch)))
            .arg(note.finger)
            .arg(set ? tr(", set") : QString());
    QMenu* choice = menu.addMenu(words);
    for (int finger = 1; finger <= harp::fingers; ++finger) {
        arrange::SetFinger wanted = now;
        wanted.finger = finger;
        QAction* action =
            choice->addAction(finger == 1 ? tr("1  thumb") : QString::number(finger));
        action->setCheckable(true);
        action->setChecked(finger == now.finger);
        QObject::connect(action, &QAction::triggered, &session,
                         [&session, wanted] { session.setFinger(wanted); });
    }
    choice->addSeparator();
    QAction* proposed = choice->addAction(tr("As suggested"));
    proposed->setEnabled(set);
    QObject::connect(proposed, &QAction::triggered, &session,
                     [&session, now] { session.freeFinger(now); });
}

} // namespace

void addFingerMenu(QMenu& menu, Session& session)
{
    if (!session.isOpen() || !session.selected()) return;
    arrange::Arrangement const& arrangement = session.arrangement();
    std::vector<HandNote> const notes = notesOf(arrangement, *session.selected());
    QMenu* fingers = menu.addMenu(tr("Fingering"));
    fingers->setObjectName(QStringLiteral("fingers"));
    fingers->setEnabled(!notes.empty());
    for (harp::Side const hand : {harp::Side::Left, harp::Side::Right})
        for (HandNote const& note : notes)
            if (note.hand == hand)
                addNote(*fingers, session, placeOf(arrangement, notes, note), note);
}

} // namespace ui
