#include "core/harp/model.h"

#include "core/base/words.h"
#include "core/music/key.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>

namespace harp {

namespace {

base::Fault bad(std::string place, std::string detail)
{
    return {base::FaultCode::BadHarp, std::move(place), std::move(detail)};
}

bool isString(HarpModel const& model, StringIndex string)
{
    return string >= 0 && string < model.strings();
}

// "Aunt's harp, 29" becomes "aunt-s-harp-29".
std::string idFrom(std::string const& name)
{
    std::string id;
    for (char const c : name) {
        auto const byte = static_cast<unsigned char>(c);
        if (byte < 128 && std::isalnum(byte) != 0)
            id += static_cast<char>(std::tolower(byte));
        else if (!id.empty() && id.back() != '-')
            id += '-';
    }
    while (!id.empty() && id.back() == '-') id.pop_back();
    return id.empty() ? "own" : id;
}

template<typename T>
std::vector<T> shifted(std::vector<T> const& old, int by)
{
    std::vector<T> out;
    int const last = static_cast<int>(old.size()) - 1;
    for (int i = 0; i <= last; ++i)
        out.push_back(old[static_cast<std::size_t>(std::clamp(i + by, 0, last))]);
    return out;
}

template<typename T>
void resizeLikeLast(std::vector<T>& list, int size)
{
    T const last = list.empty() ? T{} : list.back();
    list.resize(static_cast<std::size_t>(size), last);
}

} // namespace

base::Result<Harp> harpOf(HarpModel const& model)
{
    int const strings = model.strings();
    if (strings < fewestStrings || strings > mostStrings)
        return bad("strings", base::say("{}; a harp may have {} to {}", strings, fewestStrings,
                                        mostStrings));
    if (model.gapsMm.size() != model.levers.size() ||
        model.wound.size() != model.levers.size())
        return bad("strings",
                   base::said("for each string say whether it has a lever, its spacing, and "
                              "whether it is wound"));
    if (model.name.empty()) return bad("name", base::said("the name is missing"));
    if (model.id.empty() || idFrom(model.id) != model.id)
        return bad("id", base::say("\"{}\" may have only small letters, figures and dashes",
                                   model.id));
    int const lowest = diatonicStep(model.lowest);
    constexpr music::Pitch low{music::Letter::C, 0, 1};
    constexpr music::Pitch high{music::Letter::G, 0, 7};
    if (lowest < diatonicStep(low) || lowest + strings - 1 > diatonicStep(high))
        return bad(base::said("lowest string"),
                   base::say("{} to {}; strings may go from {} to {}",
                             music::plain(music::naturalAt(lowest)),
                             music::plain(music::naturalAt(lowest + strings - 1)),
                             music::plain(low), music::plain(high)));
    int const signature = music::signature({model.tuning, music::Mode::Ionian});
    if (signature < -7 || signature > 7)
        return bad("tuning", base::say("{} has more than seven sharps or flats",
                                       music::plain(model.tuning)));
    HarpStrings all;
    for (int i = 0; i < strings; ++i) {
        auto const at = static_cast<std::size_t>(i);
        double const gap = model.gapsMm[at];
        if (!(gap >= leastGapMm && gap <= greatestGapMm))
            return bad(base::say("string {}", i + 1),
                       base::say("a spacing of {} mm; it may be {} to {}", gap, leastGapMm,
                                 greatestGapMm));
        music::Pitch open = music::naturalAt(lowest + i);
        open.alter = music::alterIn(signature, open.letter);
        all.push_back({open, model.levers[at], gap, model.wound[at]});
    }
    auto harp = Harp::make(model.id, model.name, model.tuning, std::move(all));
    if (!harp) return harp.error();
    return withNaming(*std::move(harp), model.naming);
}

HarpModel modelOf(Harp const& harp)
{
    HarpModel model{harp.id(), harp.name(), harp.string(0).open, harp.tuning(), {}, {}, {},
                    harp.naming()};
    model.lowest.alter = 0;
    for (HarpString const& string : harp.strings()) {
        model.levers.push_back(string.hasLever);
        model.gapsMm.push_back(string.gapMm);
        model.wound.push_back(string.wound);
    }
    return model;
}

HarpModel withName(HarpModel model, std::string name)
{
    model.id = idFrom(name);
    model.name = std::move(name);
    return model;
}

HarpModel withStrings(HarpModel model, int strings)
{
    int const size = std::max(0, strings);
    resizeLikeLast(model.levers, size);
    resizeLikeLast(model.gapsMm, size);
    resizeLikeLast(model.wound, size);
    return model;
}

HarpModel withLowest(HarpModel model, music::Pitch lowest)
{
    lowest.alter = 0;
    int const by = diatonicStep(lowest) - diatonicStep(model.lowest);
    // Levers often go by letters, so beyond the ends they follow the letter an octave away.
    std::vector<bool> levers;
    int const last = model.strings() - 1;
    for (int i = 0; i <= last; ++i) {
        int from = i + by;
        while (from < 0 && last >= 6) from += 7;
        while (from > last && last >= 6) from -= 7;
        levers.push_back(model.levers[static_cast<std::size_t>(std::clamp(from, 0, last))]);
    }
    model.levers = std::move(levers);
    model.gapsMm = shifted(model.gapsMm, by);
    model.wound = shifted(model.wound, by);
    model.lowest = lowest;
    return model;
}

HarpModel withTuning(HarpModel model, music::PitchName tuning)
{
    model.tuning = tuning;
    return model;
}

HarpModel withLever(HarpModel model, StringIndex string, bool has)
{
    if (isString(model, string)) model.levers[static_cast<std::size_t>(string)] = has;
    return model;
}

HarpModel withLevers(HarpModel model, std::vector<music::Letter> const& letters)
{
    for (int i = 0; i < model.strings(); ++i) {
        music::Letter const letter = music::naturalAt(diatonicStep(model.lowest) + i).letter;
        model.levers[static_cast<std::size_t>(i)] =
            std::find(letters.begin(), letters.end(), letter) != letters.end();
    }
    return model;
}

HarpModel withGap(HarpModel model, StringIndex string, double mm)
{
    if (isString(model, string)) model.gapsMm[static_cast<std::size_t>(string)] = mm;
    return model;
}

HarpModel withSpacing(HarpModel model, double lowestMm, double highestMm)
{
    int const last = std::max(1, model.strings() - 1);
    for (int i = 0; i < model.strings(); ++i)
        model.gapsMm[static_cast<std::size_t>(i)] =
            lowestMm + (highestMm - lowestMm) * i / last;
    return model;
}

HarpModel withWound(HarpModel model, int lowestStrings)
{
    for (int i = 0; i < model.strings(); ++i)
        model.wound[static_cast<std::size_t>(i)] = i < lowestStrings;
    return model;
}

int woundStrings(HarpModel const& model)
{
    auto const plain = std::find(model.wound.begin(), model.wound.end(), false);
    return static_cast<int>(plain - model.wound.begin());
}

} // namespace harp
