#include "ui/playedalong.h"

#include "ui/words.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QStringList>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>
#include <map>

namespace ui {

namespace {

using perform::Verdict;

constexpr double little = 0.15; // seconds

QString keyWords(arrange::Arrangement const& arrangement, harp::StringIndex string, int midi)
{
    for (harp::Lever const lever : {harp::Lever::Down, harp::Lever::Up}) {
        auto const pitch = harp::sounding(arrangement.harp.string(string), lever);
        if (music::midi(pitch) == midi) return QString::fromStdString(music::shown(pitch));
    }
    return QString::number(midi);
}

// Another key as the string that sounds it on this harp.
QString otherWords(arrange::Arrangement const& arrangement, int midi)
{
    for (harp::StringIndex const string : arrangement.harp.indices())
        for (harp::Lever const lever : {harp::Lever::Down, harp::Lever::Up}) {
            auto const pitch = harp::sounding(arrangement.harp.string(string), lever);
            if (music::midi(pitch) == midi)
                return QString::fromStdString(music::shown(pitch));
        }
    return PlayedDialog::tr("another string");
}

QString noteWords(arrange::Arrangement const& arrangement, perform::JudgedNote const& note)
{
    QString const key = keyWords(arrangement, note.wanted.string, note.wanted.midi);
    bool const slightly = std::abs(note.off) < little;
    switch (note.verdict) {
    case Verdict::Early:
        return (slightly ? PlayedDialog::tr("%1 a little early") : PlayedDialog::tr("%1 early"))
            .arg(key);
    case Verdict::Late:
        return (slightly ? PlayedDialog::tr("%1 a little late") : PlayedDialog::tr("%1 late"))
            .arg(key);
    case Verdict::WrongString:
        return PlayedDialog::tr("%1 for %2").arg(otherWords(arrangement, note.heard), key);
    case Verdict::Missed:
        return PlayedDialog::tr("%1 left out").arg(key);
    case Verdict::Right:
        break;
    }
    return {};
}

} // namespace

PlayedWords playedWords(arrange::Arrangement const& arrangement,
                        perform::Judgement const& judgement)
{
    std::map<tune::PlayedBarIndex, QStringList> ofBar;
    int right = 0;
    for (perform::JudgedNote const& note : judgement.notes) {
        if (note.verdict == Verdict::Right)
            ++right;
        else
            ofBar[note.playedBar].append(noteWords(arrangement, note));
    }
    for (perform::ExtraNote const& extra : judgement.extra)
        ofBar[extra.playedBar].append(
            PlayedDialog::tr("%1 as well").arg(otherWords(arrangement, extra.heard.midi)));
    PlayedWords words;
    auto const all = static_cast<int>(judgement.notes.size());
    if (all == 0)
        words.summary = PlayedDialog::tr("There was nothing to play here.");
    else if (ofBar.empty())
        words.summary = PlayedDialog::tr("Every note was in its place.");
    else if (right * 10 >= all * 9)
        words.summary = PlayedDialog::tr("%1 of %2 notes were in their place: nearly there.")
                            .arg(right)
                            .arg(all);
    else
        words.summary = PlayedDialog::tr("%1 of %2 notes were in their place. A slower tempo or "
                                         "fewer bars may help.")
                            .arg(right)
                            .arg(all);
    for (auto const& [bar, notes] : ofBar) {
        auto const& played = arrangement.playing.bars[bar];
        words.bars.push_back({bar, PlayedDialog::tr("%1: %2")
                                       .arg(barTitle(arrangement.tune, played.bar),
                                            notes.join(QStringLiteral(", ")))});
    }
    return words;
}

PlayedDialog::PlayedDialog(PlayedWords const& words, QWidget* parent) : QDialog(parent)
{
    setWindowTitle(tr("What you played"));
    setAttribute(Qt::WA_DeleteOnClose);
    auto* summary = new QLabel(words.summary, this);
    summary->setWordWrap(true);
    auto* list = new QListWidget(this);
    list->setAccessibleName(tr("Bars to look at"));
    list->setWordWrap(true);
    for (PlayedBarWords const& bar : words.bars) {
        auto* item = new QListWidgetItem(bar.words, list);
        item->setData(Qt::UserRole, bar.playedBar.value());
    }
    list->setVisible(!words.bars.empty());
    auto* kept = new QLabel(tr("Nothing of this is kept."), this);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    auto* column = new QVBoxLayout(this);
    column->addWidget(summary);
    column->addWidget(list);
    column->addWidget(kept);
    column->addWidget(buttons);
    setMinimumWidth(380);
    auto const choose = [this](QListWidgetItem* item) {
        emit barChosen(tune::PlayedBarIndex(item->data(Qt::UserRole).toInt()));
    };
    connect(list, &QListWidget::itemClicked, this, choose);
    connect(list, &QListWidget::itemActivated, this, choose);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

} // namespace ui
