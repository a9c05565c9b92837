#include "core/files/work/document.h"

#include "core/base/named.h"
#include "core/base/words.h"
#include "core/files/abc/read.h"
#include "core/files/abc/text.h"
#include "core/files/abc/write.h"
#include "core/files/jsonreading.h"
#include "core/files/tables/patternfile.h"
#include "core/files/work/harpmember.h"
#include "core/music/typedchord.h"
#include "core/pattern/own.h"
#include "core/tune/chordorigin.h"
#include "core/tune/pagewords.h"

#include "core/files/json.h"
#include "core/files/work/form.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <optional>
#include <utility>

namespace files {

namespace {

using base::Fault;
using base::FaultCode;
using base::Result;

// 2: has a place for snags, origins of chords and what else is decided since; version 1 is read for
// ever, and what it lacks is as it was before.
constexpr int version = 2;

std::string keyText(proposal::KeyWish const& wish)
{
    if (std::holds_alternative<proposal::BestKey>(wish)) return "best";
    if (std::holds_alternative<proposal::AsWritten>(wish)) return "asis";
    return music::plain(std::get<music::Key>(wish));
}

Json lockMember(proposal::Lock const& lock)
{
    Json root = lock.root ? Json(music::plain(*lock.root)) : Json(nullptr);
    return {{"bar", lock.bar.value() + 1},
            {"at", music::text(lock.at.wholes)},
            {"pass", lock.pass},
            {"pattern", lock.voicing.pattern},
            {"rhythm", lock.voicing.rhythm},
            {"rolled", lock.voicing.rolled},
            {"root_string", lock.voicing.rootString.value() + 1},
            {"root", root}};
}

// The arranger's own patterns as she would type them, with what she noted of each.
Json ownPatternsMember(proposal::Brief const& brief)
{
    return Json::parse(patternFileText(pattern::ownPatterns(brief.book))).at("patterns");
}

Json slidersMember(proposal::Brief const& brief)
{
    Json out = Json::object();
    for (arrange::Turned const& t : brief.sliders) out[t.slider.id] = t.percent;
    return out;
}

Json formMember(proposal::Form const& form)
{
    Json times = Json::array();
    for (proposal::TimeManner const& time : form.times) times.push_back(time.id);
    return {{"introduction", form.introduction}, {"ending", form.ending}, {"times", times}};
}

Json leaningMember(arrange::Leaning const& leaning)
{
    Json out = Json::object();
    for (std::size_t t = 0; t < leaning.byTerm.size(); ++t)
        if (leaning.byTerm[t] != arrange::Leaning::even)
            out[std::string(arrange::termName(static_cast<arrange::Term>(t)))] =
                leaning.byTerm[t];
    return out;
}

constexpr auto rightHandNames = std::to_array<base::Named<proposal::RightHand>>({
    {"bare", proposal::RightHand::Bare},
    {"closes", proposal::RightHand::Closes},
    {"full", proposal::RightHand::Full},
});

Json fingerMember(arrange::SetFinger const& set)
{
    return {{"hand", set.hand == harp::Side::Left ? "left" : "right"},
            {"bar", set.bar.value() + 1},
            {"at", music::text(set.at.wholes)},
            {"pass", set.pass},
            {"voice", set.voice + 1},
            {"finger", set.finger}};
}

// What stands wrong in a document, for the one place that catches it.
struct Wrong {
    std::string pointer; // of the value
    std::string detail;
};

music::Rational rationalAt(Json const& value, std::string const& pointer)
{
    std::string const text = value.get<std::string>();
    char const* const end = text.data() + text.size();
    std::int64_t numerator = 0;
    std::int64_t denominator = 1;
    auto parsed = std::from_chars(text.data(), end, numerator);
    if (parsed.ec == std::errc{} && parsed.ptr != end && *parsed.ptr == '/')
        parsed = std::from_chars(parsed.ptr + 1, end, denominator);
    bool const good = parsed.ec == std::errc{} && parsed.ptr == end && denominator > 0 &&
                      denominator <= music::Rational::largestTerm && numerator >= 0 &&
                      numerator <= music::Rational::largestTerm;
    if (!good) throw Wrong{pointer, text};
    return {numerator, denominator};
}

Json changeMember(tune::NoteChange const& change)
{
    return {{"bar", change.place.bar.value() + 1},
            {"note", change.place.note.value() + 1},
            {"of_chord", change.place.ofChord + 1},
            {"grace", change.place.grace},
            {"change", std::string(tune::changeId(change.change))}};
}

Json snagMember(proposal::SnagChoice const& choice)
{
    return {{"bar", choice.place.bar.value() + 1},
            {"note", choice.place.note.value() + 1},
            {"of_chord", choice.place.ofChord + 1},
            {"way", std::string(tune::wayId(choice.way))},
            {"alike", choice.alike}};
}

Json wishMember(harp::LeverWish const& wish)
{
    return {{"string", music::plain(music::Pitch{wish.letter, 0, wish.octave})},
            {"up", wish.lever == harp::Lever::Up}};
}

tune::NoteChange changeFrom(Json const& member, std::string const& pointer)
{
    auto const change = tune::changeFrom(member.at("change").get<std::string>());
    if (!change) throw Wrong{pointer + "/change", member.at("change").get<std::string>()};
    return {{tune::BarIndex(member.at("bar").get<int>() - 1),
             tune::NoteIndex(member.at("note").get<int>() - 1),
             member.at("of_chord").get<int>() - 1, member.at("grace").get<bool>()},
            *change};
}

proposal::SnagChoice snagChoiceFrom(Json const& member, std::string const& pointer)
{
    auto const way = tune::wayFrom(member.at("way").get<std::string>());
    if (!way || static_cast<std::size_t>(*way) >= tune::noteWays)
        throw Wrong{pointer + "/way", member.at("way").get<std::string>()};
    return {{tune::BarIndex(member.at("bar").get<int>() - 1),
             tune::NoteIndex(member.at("note").get<int>() - 1),
             member.at("of_chord").get<int>() - 1, false},
            *way,
            member.at("alike").get<bool>()};
}

harp::LeverWish wishFrom(Json const& member, std::string const& pointer)
{
    auto const string = music::pitchFrom(member.at("string").get<std::string>());
    if (!string) throw Wrong{pointer + "/string", member.at("string").get<std::string>()};
    return {string->letter, string->octave,
            member.at("up").get<bool>() ? harp::Lever::Up : harp::Lever::Down};
}

proposal::KeyWish keyWish(std::string const& text)
{
    if (text == "best") return proposal::BestKey{};
    if (text == "asis") return proposal::AsWritten{};
    if (auto const key = music::keyFrom(text)) return *key;
    throw Wrong{"/key", text};
}

proposal::Lock lockFrom(Json const& member, std::string const& pointer,
                        pattern::PatternBook const& book)
{
    proposal::Lock lock;
    lock.bar = tune::BarIndex(member.at("bar").get<int>() - 1);
    lock.at = {rationalAt(member.at("at"), pointer + "/at")};
    lock.pass = member.at("pass").get<int>();
    lock.voicing.pattern = member.at("pattern").get<std::string>();
    // Names of degrees below the root have changed; older documents say "1--2" for "1-low5".
    if (auto const pattern = pattern::patternFrom(lock.voicing.pattern))
        if (lock.voicing.pattern.find('(') == std::string::npos)
            lock.voicing.pattern = pattern->name;
    lock.voicing.rhythm = member.at("rhythm").get<std::string>();
    if (auto const renamed = book.renamed.find(lock.voicing.rhythm);
        renamed != book.renamed.end())
        lock.voicing.rhythm = renamed->second;
    lock.voicing.rolled = member.at("rolled").get<bool>();
    lock.voicing.rootString = harp::StringIndex(member.at("root_string").get<int>() - 1);
    if (Json const& root = member.at("root"); !root.is_null()) {
        lock.root = music::pitchFrom(root.get<std::string>());
        if (!lock.root) throw Wrong{pointer + "/root", root.get<std::string>()};
    }
    return lock;
}

// Members that older documents do not have.
std::optional<Fault> takeOwnPatterns(Json const& json, std::string const& file,
                                     proposal::Brief& brief)
{
    if (!json.contains("own_patterns")) return std::nullopt;
    Json const list{{"sallow_patterns", 1}, {"patterns", json.at("own_patterns")}};
    auto own = readPatternFile(list.dump(), file);
    if (!own) return own.error();
    for (pattern::Pattern& p : *own)
        brief.book = pattern::withOwn(std::move(brief.book), std::move(p)).book;
    return std::nullopt;
}

void takeSliders(Json const& json, Tables const& tables, proposal::Brief& brief)
{
    if (!json.contains("sliders")) return;
    for (auto const& [id, percent] : json.at("sliders").items()) {
        auto const slider = sliderFrom(tables, id);
        if (!slider) throw Wrong{"/sliders/" + id, id};
        brief.sliders =
            arrange::withSlider(std::move(brief.sliders), *slider, percent.get<int>());
    }
}

void takeForm(Json const& json, Tables const& tables, proposal::Brief& brief)
{
    if (!json.contains("form")) return;
    Json const& form = json.at("form");
    auto const bars = [&form](char const* name) {
        int const count = form.value(name, 0);
        if (count != 0 && count != 2 && count != 4)
            throw Wrong{std::string("/form/") + name, std::to_string(count)};
        return count;
    };
    brief.form.introduction = bars("introduction");
    brief.form.ending = bars("ending");
    for (Json const& member : form.value("times", Json::array())) {
        std::string const id = member.get<std::string>();
        auto manner = timeMannerFrom(tables, id);
        if (!manner || brief.form.times.size() == proposal::mostTimes)
            throw Wrong{"/form/times/" + std::to_string(brief.form.times.size()), id};
        brief.form.times.push_back(*std::move(manner));
    }
}

void takeLeaning(Json const& json, proposal::Brief& brief)
{
    if (!json.contains("taste")) return;
    constexpr int most = 20 * arrange::Leaning::even;
    for (auto const& [name, factor] : json.at("taste").items()) {
        bool known = false;
        for (std::size_t t = 0; t < brief.leaning.byTerm.size(); ++t)
            if (name == arrange::termName(static_cast<arrange::Term>(t))) {
                brief.leaning.byTerm[t] = std::clamp(factor.get<int>(), 0, most);
                known = true;
            }
        if (!known) throw Wrong{"/taste/" + name, name};
    }
}

proposal::RightHand rightHandFrom(std::string const& text)
{
    if (auto const right = base::valueNamed(rightHandNames, text)) return *right;
    throw Wrong{"/right", text};
}

arrange::SetFinger fingerFrom(Json const& member, std::string const& pointer)
{
    arrange::SetFinger set;
    std::string const hand = member.at("hand").get<std::string>();
    if (hand != "left" && hand != "right") throw Wrong{pointer + "/hand", hand};
    set.hand = hand == "left" ? harp::Side::Left : harp::Side::Right;
    set.bar = tune::BarIndex(member.at("bar").get<int>() - 1);
    set.at = {rationalAt(member.at("at"), pointer + "/at")};
    set.pass = member.at("pass").get<int>();
    set.voice = member.at("voice").get<int>() - 1;
    set.finger = member.at("finger").get<int>();
    if (set.voice < 0) throw Wrong{pointer + "/voice", member.at("voice").dump()};
    if (set.finger < 1 || set.finger > harp::fingers)
        throw Wrong{pointer + "/finger", member.at("finger").dump()};
    return set;
}

constexpr std::array originNames{std::pair{"written", tune::ChordOrigin::Written},
                                 std::pair{"found", tune::ChordOrigin::Found},
                                 std::pair{"set", tune::ChordOrigin::Set}};
constexpr char const* noChordName = "none";

bool sameChords(tune::Tune const& a, tune::Tune const& b)
{
    return std::equal(a.bars.begin(), a.bars.end(), b.bars.begin(), b.bars.end(),
                      [](tune::Bar const& one, tune::Bar const& other) {
                          return one.chords == other.chords;
                      });
}

// A chord by the spelling that reads back as it.
std::string chordText(tune::ChordMark const& mark)
{
    if (music::isNoChord(mark.chord)) return noChordName;
    auto const asWritten = music::chordFrom(mark.written);
    return asWritten && *asWritten == mark.chord ? mark.written : music::plain(mark.chord);
}

// All chords of the tune, with where each comes from.
Json chordsMember(tune::Tune const& tune)
{
    Json out = Json::array();
    for (tune::BarIndex const bar : tune.bars.indices())
        for (tune::ChordMark const& mark : tune.bars[bar].chords) {
            Json member{{"bar", bar.value() + 1},
                        {"at", music::text(mark.at.wholes)},
                        {"chord", chordText(mark)}};
            for (auto const& [name, origin] : originNames)
                if (origin == tune::originOf(mark)) member["origin"] = name;
            if (mark.pass) member["pass"] = *mark.pass;
            out.push_back(std::move(member));
        }
    return out;
}

tune::ChordMark chordMarkFrom(Json const& member, std::string const& pointer)
{
    std::string const text = member.at("chord").get<std::string>();
    auto const chord = text == noChordName ? Result<music::Chord>(music::noChord())
                                           : music::chordFrom(text);
    if (!chord) throw Wrong{pointer + "/chord", text};
    std::string const from = member.at("origin").get<std::string>();
    auto const origin = std::ranges::find(
        originNames, from, [](auto const& named) { return std::string(named.first); });
    if (origin == originNames.end()) throw Wrong{pointer + "/origin", from};
    music::Length const at{rationalAt(member.at("at"), pointer + "/at")};
    tune::ChordMark mark = tune::chordMark(at, *chord, origin->second);
    if (origin->second == tune::ChordOrigin::Written && text != noChordName)
        mark.written = text;
    if (member.contains("pass")) mark.pass = member.at("pass").get<int>();
    return mark;
}

// Chords that are not those of the ABC: found, or changed by the arranger.
void takeChords(Json const& json, tune::Tune& tune)
{
    if (!json.contains("chords")) return;
    for (tune::Bar& bar : tune.bars) bar.chords.clear();
    std::size_t place = 0;
    for (Json const& member : json.at("chords")) {
        std::string const pointer = "/chords/" + std::to_string(place++);
        int const bar = member.at("bar").get<int>();
        if (bar < 1 || bar > tune.bars.size())
            throw Wrong{pointer + "/bar", std::to_string(bar)};
        tune.bars[tune::BarIndex(bar - 1)].chords.push_back(chordMarkFrom(member, pointer));
    }
}

Result<tune::Tune> tuneIn(std::string const& abc, std::string const& file)
{
    auto entries = abcTunes(abc);
    if (!entries) return entries.error();
    return readAbc(abc, entries->front(), file + base::said(", the tune in it"),
                   Rests::Allowed);
}

// What of a tune ABC alone holds in a document: not its chords and words, which have members of
// their own, nor where it was read.
tune::Tune musicOf(tune::Tune tune)
{
    tune = tune::withWords(std::move(tune), {});
    tune.said.clear();
    for (tune::Bar& bar : tune.bars) {
        bar.place = {};
        bar.chords.clear();
        for (tune::Note& note : bar.notes) note.place = {};
    }
    return tune;
}

// Lines of a tune's head that a Tune has no place for: area, book, discography, file, group,
// history, who typed it (ABC 2.1, section 3.1).
std::string unusedHeadOf(std::string const& abc)
{
    std::string out;
    bool goesOn = false; // the line before is one of them, and +: lines belong to it
    Lines lines(abc);
    while (auto const line = lines.next()) {
        if (line->starts_with("K:")) break;
        bool const field = line->size() > 1 && (*line)[1] == ':';
        bool const more = line->starts_with("+:");
        goesOn = field && (more ? goesOn
                                : std::string_view("ABDFGHZ").find(line->front()) !=
                                      std::string_view::npos);
        if (goesOn) out += std::string(*line) + '\n';
    }
    return out;
}

// The tune's own lines as long as they have its music; else what they have become. A chord
// would cut the note in whose midst it stands.
std::string abcText(SavedWork const& work)
{
    auto const written = tuneIn(work.abc, "");
    if (written && musicOf(*written) == musicOf(work.brief.tune)) return work.abc;
    tune::Tune bare = work.brief.tune;
    for (tune::Bar& bar : bare.bars) bar.chords.clear();
    std::string abc = abcOfTune(bare);
    if (std::size_t const meter = abc.find("\nM:"); meter != std::string::npos)
        abc.insert(meter + 1, unusedHeadOf(work.abc));
    return abc;
}

struct WordsRow {
    char const* name;
    std::string tune::PageWords::* words;
};
using Page = tune::PageWords;
constexpr std::array wordsRows{
    WordsRow{"title", &Page::title},       WordsRow{"composer", &Page::composer},
    WordsRow{"origin", &Page::origin},     WordsRow{"source", &Page::source},
    WordsRow{"arranger", &Page::arranger}, WordsRow{"copyright", &Page::copyright}};

Json wordsMember(tune::PageWords const& words)
{
    Json out = Json::object();
    for (WordsRow const& row : wordsRows) out[row.name] = words.*row.words;
    out["notes"] = words.notes;
    return out;
}

// What the arranger has worded anew; older files have no such member.
tune::PageWords wordsFrom(Json const& json, tune::PageWords words)
{
    auto const found = json.find("words");
    if (found == json.end()) return words;
    for (WordsRow const& row : wordsRows)
        if (found->contains(row.name))
            words.*row.words = found->at(row.name).get<std::string>();
    if (found->contains("notes"))
        words.notes = found->at("notes").get<std::vector<std::string>>();
    return words;
}

Result<SavedWork> workFrom(Json const& json, Tables const& tables, std::string const& file)
{
    if (int const form = json.at("sallow").get<int>(); form > version)
        return newerForm(file);
    else if (form < 1)
        throw Wrong{"/sallow", std::to_string(form)};
    std::string const abc = json.at("abc").get<std::string>();
    auto tune = tuneIn(abc, file);
    if (!tune) return tune.error();
    *tune = tune::withWords(*tune, wordsFrom(json, tune::pageWords(*tune)));
    takeChords(json, *tune);
    auto harp = harpIn(json.at("harp"), tables);
    if (!harp) return harp.error();
    auto hand = handFrom(tables, json.at("hand").get<std::string>());
    if (!hand) return hand.error();
    auto level = levelFrom(tables, json.at("level").get<int>());
    if (!level) return level.error();
    auto style = styleFrom(tables, json.at("style").get<std::string>());
    if (!style) return style.error();

    SavedWork work{abc,
                   {*std::move(tune), *std::move(harp), *std::move(hand), *std::move(level),
                    tables.book, *std::move(style)}};
    work.brief.key = keyWish(json.at("key").get<std::string>());
    if (Json const& tempo = json.at("tempo_qpm"); !tempo.is_null())
        work.brief.quartersPerMinute = tempo.get<double>();
    work.brief.passes = json.at("passes").get<std::string>() == "varied"
                            ? proposal::Passes::Varied
                            : proposal::Passes::Written;
    if (auto const fault = takeOwnPatterns(json, file, work.brief)) return *fault;
    takeSliders(json, tables, work.brief);
    takeForm(json, tables, work.brief);
    takeLeaning(json, work.brief);
    work.brief.take = json.value("take", 0);
    std::size_t place = 0;
    for (Json const& member : json.at("locks"))
        work.brief.locks.push_back(
            lockFrom(member, "/locks/" + std::to_string(place++), work.brief.book));
    // Members that older files do not have.
    if (json.contains("changes"))
        for (std::size_t i = 0; i < json.at("changes").size(); ++i)
            work.brief.changes.push_back(
                changeFrom(json.at("changes").at(i), "/changes/" + std::to_string(i)));
    place = 0;
    for (Json const& member : json.value("snags", Json::array()))
        work.brief.snagChoices.push_back(
            snagChoiceFrom(member, "/snags/" + std::to_string(place++)));
    if (json.contains("lever_wishes"))
        for (std::size_t i = 0; i < json.at("lever_wishes").size(); ++i)
            work.brief.leverWishes.push_back(
                wishFrom(json.at("lever_wishes").at(i), "/lever_wishes/" + std::to_string(i)));
    if (json.contains("right")) work.brief.right = rightHandFrom(json.at("right"));
    place = 0;
    for (Json const& member : json.value("fingers", Json::array()))
        work.brief.fingers.push_back(fingerFrom(member, "/fingers/" + std::to_string(place++)));
    return work;
}

} // namespace

std::string documentText(SavedWork const& work, Tables const& tables)
{
    proposal::Brief const& brief = work.brief;
    std::string const abc = abcText(work);
    Json locks = Json::array();
    for (proposal::Lock const& lock : brief.locks) locks.push_back(lockMember(lock));
    Json changes = Json::array();
    for (tune::NoteChange const& change : brief.changes)
        changes.push_back(changeMember(change));
    Json snags = Json::array();
    for (proposal::SnagChoice const& choice : brief.snagChoices)
        snags.push_back(snagMember(choice));
    Json wishes = Json::array();
    for (harp::LeverWish const& wish : brief.leverWishes) wishes.push_back(wishMember(wish));
    Json fingers = Json::array();
    for (arrange::SetFinger const& set : brief.fingers) fingers.push_back(fingerMember(set));
    Json const tempo = brief.quartersPerMinute ? Json(*brief.quartersPerMinute) : Json(nullptr);
    Json document{{"sallow", version},
                  {"title", brief.tune.title},
                  {"harp", harpIdsMember(brief.harp, tables)},
                  {"hand", brief.hand.id},
                  {"level", brief.level.number},
                  {"style", brief.weights.style},
                  {"key", keyText(brief.key)},
                  {"tempo_qpm", tempo},
                  {"passes", brief.passes == proposal::Passes::Varied ? "varied" : "written"},
                  {"sliders", slidersMember(brief)},
                  {"own_patterns", ownPatternsMember(brief)},
                  {"take", brief.take},
                  {"right", base::nameOf(rightHandNames, brief.right)},
                  {"locks", locks},
                  {"changes", changes},
                  {"snags", snags},
                  {"lever_wishes", wishes},
                  {"fingers", fingers},
                  {"abc", abc}};
    if (!brief.form.isPlain()) document["form"] = formMember(brief.form);
    if (!brief.leaning.isEven()) document["taste"] = leaningMember(brief.leaning);
    tune::PageWords const words = tune::pageWords(brief.tune);
    auto const written = tuneIn(abc, "");
    if (!written || tune::pageWords(*written) != words) document["words"] = wordsMember(words);
    if (!written || !sameChords(*written, brief.tune))
        document["chords"] = chordsMember(brief.tune);
    return document.dump(1, ' ', false, Json::error_handler_t::replace) + '\n';
}

Result<SavedWork> readDocument(std::string_view text, Tables const& tables,
                               std::string const& file)
{
    try {
        return readJson(text, file, base::said("this is not a saved arrangement"),
                        [&](Json const& json) { return workFrom(json, tables, file); });
    } catch (WrongHarp const& wrong) {
        return faultAt(text, file, wrong.pointer, wrong.detail);
    } catch (Wrong const& wrong) {
        return faultAt(text, file, wrong.pointer, wrong.detail);
    }
}

} // namespace files
