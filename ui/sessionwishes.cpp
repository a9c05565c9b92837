#include "ui/session.h"

#include "core/proposal/relevel.h"

namespace ui {

using proposal::Brief;
using proposal::Proposal;

template<typename T>
bool Session::wish(T Brief::* member, T value, QString const& text)
{
    Brief next = m_brief;
    next.*member = std::move(value);
    return become(std::move(next), text);
}

arrange::Leaning Session::tasteFor(Brief const& brief) const
{
    return m_taste ? m_taste(brief.weights.style, brief.level.number) : arrange::Leaning();
}

bool Session::setHarp(harp::Harp harp)
{
    return wish(&Brief::harp, std::move(harp), tr("change of harp"));
}

bool Session::setHand(harp::HandModel hand)
{
    return wish(&Brief::hand, std::move(hand), tr("change of hand"));
}

bool Session::setLevel(harp::Level level)
{
    if (!isOpen()) {
        Brief next = m_brief;
        next.level = std::move(level);
        return become(std::move(next), {});
    }
    Proposal now = *m_proposal;
    Brief there = m_brief;
    there.level = level;
    now.brief.leaning = tasteFor(there);
    auto made = proposal::atLevel(now, level);
    if (!made) {
        emit refused(made.error());
        return false;
    }
    step(std::move(made->proposal), tr("level %1").arg(level.number));
    QStringList told;
    for (std::string const& change : made->changes) told << QString::fromStdString(change);
    emit relevelled(level.number, told);
    tellOfWaitingLocks();
    return true;
}

bool Session::setStyle(arrange::Weights weights)
{
    Brief next = m_brief;
    next.weights = std::move(weights);
    next.leaning = tasteFor(next);
    return become(std::move(next), tr("change of manner"));
}

bool Session::setLeaning(arrange::Leaning const& leaning)
{
    return wish(&Brief::leaning, leaning, tr("use of your taste"));
}

bool Session::setKey(proposal::KeyWish key)
{
    return wish(&Brief::key, key, tr("change of key"));
}

bool Session::setTempo(std::optional<double> quartersPerMinute)
{
    return wish(&Brief::quartersPerMinute, quartersPerMinute, tr("change of tempo"));
}

bool Session::setRightHand(proposal::RightHand right)
{
    return wish(&Brief::right, right, tr("change of the right hand"));
}

bool Session::setPasses(proposal::Passes passes)
{
    return wish(&Brief::passes, passes, tr("shapes on the repeats"));
}

bool Session::setForm(proposal::Form form)
{
    if (!isOpen() || form == m_brief.form) return isOpen();
    return become(withForm(m_brief, std::move(form)), tr("introduction and times through"));
}

tune::BarIndex Session::writtenBar() const
{
    if (!isOpen() || !m_selected) return 0;
    return proposal::writtenBar(m_brief, arrangement().positions[*m_selected].position.bar);
}

tune::BarIndex Session::arrangedBar(tune::BarIndex written) const
{
    if (m_brief.form.isPlain()) return written;
    auto const& bars = arrangement().tune.bars;
    int const time =
        m_selected ? bars[arrangement().positions[*m_selected].position.bar].time : 1;
    auto const from = proposal::formOf(m_brief).from;
    for (tune::BarIndex i = 0; i < from.size() && i < bars.size(); ++i)
        if (from[i].bar == written && bars[i].time == time && bars[i].role == tune::Role::Tune)
            return i;
    return written;
}

bool Session::setFinger(arrange::SetFinger const& finger)
{
    Brief next = withoutFingerAt(finger);
    next.fingers.push_back(finger);
    if (!become(std::move(next), tr("finger %1").arg(finger.finger))) return false;
    if (!m_proposal->unkeptFingers.empty())
        emit noticed(tr("The hand cannot be placed like that. The finger you chose will be "
                        "used when it can be."));
    return true;
}

bool Session::freeFinger(arrange::SetFinger const& finger)
{
    Brief next = withoutFingerAt(finger);
    if (next.fingers.size() == m_brief.fingers.size()) return false;
    return become(std::move(next), tr("finger as suggested"));
}

Brief Session::withoutFingerAt(arrange::SetFinger const& finger) const
{
    Brief next = m_brief;
    std::erase_if(next.fingers, [&](arrange::SetFinger set) {
        set.finger = finger.finger;
        return set == finger;
    });
    return next;
}

bool Session::wishLever(harp::StringIndex string, harp::Lever lever)
{
    if (!isOpen()) return false;
    harp::Harp const& harp = arrangement().harp;
    music::Pitch const open = harp.string(string).open;
    Brief next = m_brief;
    std::erase_if(next.leverWishes, [&](harp::LeverWish const& wish) {
        return wish.letter == open.letter && wish.octave == open.octave;
    });
    next.leverWishes.push_back({open.letter, open.octave, lever});
    QString const name = QString::fromStdString(harp::stringName(harp, string));
    return become(std::move(next), lever == harp::Lever::Up ? tr("lever of %1 up").arg(name)
                                                            : tr("lever of %1 down").arg(name));
}

bool Session::setPlayer(harp::Harp harp, harp::HandModel hand, harp::Level level,
                        QString const& text)
{
    Brief next = m_brief;
    next.harp = std::move(harp);
    next.hand = std::move(hand);
    next.level = std::move(level);
    return become(std::move(next), text);
}

bool Session::setWords(tune::PageWords words)
{
    if (tune::pageWords(m_brief.tune) == words) return true;
    Brief next = m_brief;
    next.tune = tune::withWords(std::move(next.tune), std::move(words));
    return become(std::move(next), tr("title and notes"));
}

bool Session::setSlider(arrange::Slider const& slider, int percent)
{
    Brief next = m_brief;
    next.sliders = arrange::withSlider(std::move(next.sliders), slider, percent);
    if (next.sliders == m_brief.sliders) return true;
    int const kind = static_cast<int>(qHash(QString::fromStdString(slider.id)) & 0x7fffffff);
    return become(std::move(next), tr("slider %1").arg(QString::fromStdString(slider.name)),
                  kind);
}

bool Session::resetSliders()
{
    if (m_brief.sliders.empty()) return true;
    Brief next = m_brief;
    next.sliders.clear();
    return become(std::move(next), tr("sliders to the middle"));
}

} // namespace ui
