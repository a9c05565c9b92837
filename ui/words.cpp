#include "ui/words.h"

#include "core/notation/words.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <set>

namespace ui {

namespace {

QString tr(char const* text, char const* comment = nullptr, int n = -1)
{
    return QCoreApplication::translate("Words", text, comment, n);
}

QString fromCore(std::string const& text) { return QString::fromStdString(text); }

QString capital(QString text)
{
    if (!text.isEmpty()) text[0] = text[0].toUpper();
    return text;
}

} // namespace

QString reachWords(int strings)
{
    static constexpr std::array names{
        QT_TRANSLATE_NOOP("Words", "one string"),   QT_TRANSLATE_NOOP("Words", "a second"),
        QT_TRANSLATE_NOOP("Words", "a third"),      QT_TRANSLATE_NOOP("Words", "a fourth"),
        QT_TRANSLATE_NOOP("Words", "a fifth"),      QT_TRANSLATE_NOOP("Words", "a sixth"),
        QT_TRANSLATE_NOOP("Words", "a seventh"),    QT_TRANSLATE_NOOP("Words", "an octave"),
        QT_TRANSLATE_NOOP("Words", "a ninth"),      QT_TRANSLATE_NOOP("Words", "a tenth"),
        QT_TRANSLATE_NOOP("Words", "an eleventh"),  QT_TRANSLATE_NOOP("Words", "a twelfth"),
        QT_TRANSLATE_NOOP("Words", "a thirteenth"), QT_TRANSLATE_NOOP("Words", "a fourteenth"),
        QT_TRANSLATE_NOOP("Words", "two octaves")};
    QString count = tr("%1 strings").arg(strings);
    auto const index = static_cast<std::size_t>(strings - 1);
    if (strings < 1 || index >= names.size()) return count;
    return tr(names[index]) + QStringLiteral(" · ") + count;
}

QString regretWords(arrange::Points regret)
{
    struct Word {
        arrange::Points below;
        char const* text;
    };
    static constexpr std::array words{
        Word{1, QT_TRANSLATE_NOOP("Words", "as good as the best")},
        Word{1000, QT_TRANSLATE_NOOP("Words", "nearly as good")},
        Word{3000, QT_TRANSLATE_NOOP("Words", "less good")},
        Word{8000, QT_TRANSLATE_NOOP("Words", "much less good")}};
    for (Word const& word : words)
        if (regret < word.below) return tr(word.text);
    return tr("far from the best");
}

QString wayPlaceWords(int dearer)
{
    struct Word {
        int below;
        char const* text;
    };
    // A flip weighs ten, a note played plain a hundred or more (shared/snags.json).
    static constexpr std::array words{Word{1, QT_TRANSLATE_NOOP("Words", "best")},
                                      Word{60, QT_TRANSLATE_NOOP("Words", "nearly as good")},
                                      Word{200, QT_TRANSLATE_NOOP("Words", "less good")},
                                      Word{400, QT_TRANSLATE_NOOP("Words", "much less good")}};
    for (Word const& word : words)
        if (dearer < word.below) return tr(word.text);
    return tr("far from the best");
}

double regretShare(arrange::Points regret)
{
    return 3000.0 / (3000.0 + static_cast<double>(std::max<arrange::Points>(0, regret)));
}

QString barTitle(tune::Tune const& tune, tune::BarIndex bar)
{
    tune::Bar const& here = tune.bars[bar];
    if (here.role == tune::Role::Introduction) return tr("Introduction");
    if (here.number <= 0) return tr("Pick-up bar");
    return tune.bars.back().time == 1 ? tr("Bar %1").arg(here.number)
                                      : tr("Bar %1, time %2").arg(here.number).arg(here.time);
}

QString formWords(tune::Tune const& tune, tune::BarIndex bar)
{
    tune::Bar const& here = tune.bars[bar];
    tune::Bar const* before = bar > 0 ? &tune.bars[bar - 1] : nullptr;
    if (before != nullptr && before->role == here.role && before->time == here.time) return {};
    if (here.role == tune::Role::Introduction) return tr("introduction");
    if (here.role == tune::Role::Ending) return tr("ending");
    return tune.bars.back().time > 1 ? tr("time %1").arg(here.time) : QString();
}

QString passWords(arrange::Arrangement const& arrangement, arrange::PositionIndex position)
{
    auto const& where = arrangement.positions[position].position;
    std::set<int> mine;
    for (auto const& played : where.played) mine.insert(played.pass);
    std::set<int> all;
    for (auto const& played : arrangement.playing.bars)
        if (played.bar == where.bar) all.insert(played.pass);
    if (mine == all || mine.empty()) return {};
    switch (*mine.begin()) {
    case 1:
        return tr("first time");
    case 2:
        return tr("second time");
    default:
        return tr("time %1").arg(*mine.begin());
    }
}

QString passageWords(tune::Tune const& tune, Passage passage)
{
    if (passage.firstBar == passage.lastBar) return barTitle(tune, passage.firstBar);
    tune::Bar const& from = tune.bars[passage.firstBar];
    tune::Bar const& to = tune.bars[passage.lastBar];
    if (from.role != tune::Role::Tune || to.role != tune::Role::Tune || from.time != to.time)
        return tr("%1 to %2")
            .arg(barTitle(tune, passage.firstBar), barTitle(tune, passage.lastBar));
    int const first = from.number;
    int const last = to.number;
    return tr("Bars %1–%2").arg(first).arg(last);
}

QString positionTitle(arrange::Arrangement const& arrangement, arrange::PositionIndex position)
{
    auto const& where = arrangement.positions[position].position;
    QString title = barTitle(arrangement.tune, where.bar) + QStringLiteral(" · ") +
                    fromCore(music::shown(where.chord));
    QString const pass = passWords(arrangement, position);
    if (!pass.isEmpty()) title += QStringLiteral(" · ") + pass;
    return title;
}

QString harpWords(harp::Harp const& harp)
{
    return tr("%1 strings · %2").arg(harp.count()).arg(fromCore(music::shown(harp.tuning())));
}

QString handWords(harp::HandModel const& hand)
{
    QString words = fromCore(hand.name);
    QString const noun = tr(" hand");
    if (words.endsWith(noun)) words.chop(noun.size());
    return words;
}

QString styleWords(arrange::Weights const& weights)
{
    return fromCore(weights.name).section(QLatin1Char(':'), 0, 0);
}

QString setupWords(harp::Harp const& harp, harp::LeverSetting const& setup)
{
    // The first letter to be raised is the next sharp, or the flat nearest to going.
    int const next = music::signature({harp.tuning(), music::Mode::Ionian}) + 7;
    QString words;
    for (int place = next; place < next + 7; ++place) {
        music::Letter const letter = music::orderOfSharps[static_cast<std::size_t>(place % 7)];
        int up = 0;
        int all = 0;
        music::Pitch raised;
        for (harp::StringIndex const i : harp.indices()) {
            if (harp.string(i).open.letter != letter) continue;
            ++all;
            if (setup[i] != harp::Lever::Up) continue;
            ++up;
            raised = sounding(harp.string(i), harp::Lever::Up);
        }
        if (up == 0) continue;
        QString name = fromCore(music::shown(music::nameOf(raised)));
        if (raised.alter == 0) name += QChar(0x266E);
        if (up < all) name = QLatin1Char('(') + name + QLatin1Char(')');
        words += (words.isEmpty() ? QString() : QStringLiteral(" ")) + name;
    }
    return words.isEmpty() ? tr("all down") : words;
}

QString stringWords(harp::Harp const& harp, harp::StringIndex string, music::Pitch sounding)
{
    return tr("%1 · string %2 from the bottom, %3 from the top · harp octave %4")
        .arg(fromCore(music::shown(sounding)))
        .arg(string + 1)
        .arg(harp.count() - string)
        .arg(harp::harpOctave(harp.string(string).open));
}

QString faultWords(base::Fault const& fault)
{
    base::Wording const wording = base::wording(fault.code);
    auto const view = [](std::string_view text) {
        return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
    };
    QString text = fromCore(fault.place);
    if (!text.isEmpty()) text += QStringLiteral(": ");
    text += view(wording.wrong);
    if (!fault.detail.empty()) text += QStringLiteral(" (%1)").arg(fromCore(fault.detail));
    // The name of a file stays as it is.
    bool const file = text.section(QLatin1Char(' '), 0, 0).contains(QLatin1Char('.'));
    return (file ? text : capital(text)) + QStringLiteral(". ") + capital(view(wording.remedy)) +
           QStringLiteral(".");
}

QString patternWords(arrange::Voicing const& voicing)
{
    return voicing.notes.empty() ? tr("left hand rests")
                                 : fromCore(notation::patternWords(voicing));
}

} // namespace ui
