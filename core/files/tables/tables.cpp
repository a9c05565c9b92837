#include "core/files/tables/tables.h"

#include "core/files/jsonline.h"
#include "core/files/tables/formtable.h"
#include "core/files/tables/harmonytable.h"
#include "core/files/tables/tablerow.h"
#include "core/files/tables/tastetable.h"
#include "core/files/textfile.h"
#include "core/tune/kind.h"

#include <fmt/format.h>
#include "core/files/json.h"

#include <algorithm>
#include <charconv>
#include <functional>
#include <set>

namespace files {

namespace {

using namespace table;
using music::Length;
using music::Rational;

// Every table says where its figures are from.
void readSources(Row& table)
{
    for (Node const& source : list(table["sources"])) text(source);
}

// A letter and octave; harps are tuned later, so that no sharp or flat belongs here.
music::Pitch naturalPitch(Node const& node)
{
    auto const pitch = music::pitchFrom(text(node));
    if (!pitch || pitch->alter != 0) node.refuse(text(node) + " is not a letter with an octave");
    return *pitch;
}

Rational fraction(Node const& node)
{
    std::string const written = text(node);
    char const* const end = written.data() + written.size();
    std::int64_t over = 0;
    std::int64_t under = 1;
    auto read = std::from_chars(written.data(), end, over);
    if (read.ec == std::errc() && read.ptr != end && *read.ptr == '/')
        read = std::from_chars(read.ptr + 1, end, under);
    bool const sound = read.ec == std::errc() && read.ptr == end && over >= 0 && under > 0 &&
                       over <= 1024 && under <= 1024;
    if (!sound) node.refuse(written + " is not a fraction of a whole note");
    return {over, under};
}

music::Meter meter(Node const& node)
{
    std::string const written = text(node);
    auto const slash = written.find('/');
    music::Meter m{0, 0};
    if (slash != std::string::npos) {
        std::from_chars(written.data(), written.data() + slash, m.beats);
        std::from_chars(written.data() + slash + 1, written.data() + written.size(), m.unit);
    }
    if (m.beats < 1 || m.unit < 1 || text(m) != written) node.refuse(written + " is not a time signature");
    return m;
}

void readHarps(Row& table, Tables& tables)
{
    for (Node const& node : list(table["spacing"])) {
        Row row(node);
        SpacingPoint const point{naturalPitch(row["note"]), number(row["gap_mm"], 5, 40)};
        row.done();
        if (!tables.spacing.empty() &&
            diatonicStep(point.pitch) >= diatonicStep(tables.spacing.back().pitch))
            node.refuse("spacing goes from high to low");
        tables.spacing.push_back(point);
    }
    if (tables.spacing.size() < 2) table["spacing"].refuse("two notes at least are wanted");
    tables.lowestPlain = naturalPitch(table["lowest_plain"]);
    Names names;
    for (Node const& node : list(table["harps"])) {
        Row row(node);
        HarpSize const size{text(row["id"]), words(row["name"]), naturalPitch(row["lowest"]),
                            naturalPitch(row["highest"])};
        row.done();
        names.add(node, size.id);
        if (diatonicStep(size.highest) <= diatonicStep(size.lowest))
            node.refuse("the highest string is below the lowest");
        tables.harps.push_back(size);
    }
}

LeverFit leverFit(Node const& node)
{
    Row row(node);
    LeverFit fit{text(row["id"]), words(row["name"]), {}};
    Node const letters = row["letters"];
    row.done();
    if (!letters.value->is_string()) letters.refuse("letters are wanted");
    for (char c : letters.value->get<std::string>()) {
        auto const name = music::pitchNameFrom(std::string_view(&c, 1));
        if (!name) letters.refuse(fmt::format("{} is not a letter of a string", c));
        fit.letters.push_back(name->letter);
    }
    return fit;
}

void readTunings(Row& table, Tables& tables)
{
    Names tunings;
    for (Node const& node : list(table["tunings"])) {
        Row row(node);
        std::string const id = text(row["id"]);
        std::string const name = words(row["name"]);
        row.done();
        tunings.add(node, id);
        auto const key = music::pitchNameFrom(id);
        if (!key) node.refuse(id + " is not a key");
        tables.tunings.push_back({id, *key, name});
    }
    Names fits;
    for (Node const& node : list(table["lever_fits"])) {
        tables.leverFits.push_back(leverFit(node));
        fits.add(node, tables.leverFits.back().id);
    }
}

harp::PairReach pairReach(Node const& node)
{
    Row row(node);
    Node const fingers = row["fingers"];
    harp::PairReach pair;
    pair.easyGaps = whole(row["easy_gaps"], 0, 20);
    pair.hardGaps = whole(row["hard_gaps"], pair.easyGaps, 20);
    row.done();
    std::string const written = text(fingers);
    bool const sound = written.size() == 3 && written[1] == '-' && written[0] <= '4' &&
                       written[0] > written[2] && written[2] >= '1';
    if (!sound) fingers.refuse(written + " is not a pair of fingers, the lower string's first");
    pair.low = written[0] - '0';
    pair.high = written[2] - '0';
    return pair;
}

void readHands(Row& table, Tables& tables)
{
    Names names;
    constexpr std::size_t pairsOfAHand = harp::fingers * (harp::fingers - 1) / 2;
    for (Node const& node : list(table["hands"])) {
        Row row(node);
        harp::HandModel hand{text(row["id"]), words(row["name"]), 0, 0, {}};
        hand.comfortMm = number(row["comfort_mm"], 30, 400);
        hand.limitMm = number(row["limit_mm"], hand.comfortMm, 400);
        Names pairs;
        for (Node const& pair : list(row["pairs"])) {
            hand.pairs.push_back(pairReach(pair));
            pairs.add(pair,
                      fmt::format("{}-{}", hand.pairs.back().low, hand.pairs.back().high));
        }
        if (hand.pairs.size() != pairsOfAHand)
            row["pairs"].refuse("each two of the four fingers have a reach");
        row.done();
        names.add(node, hand.id);
        tables.hands.push_back(std::move(hand));
    }
}

void readDifficulty(Row& table, Tables& tables)
{
    hands::DifficultyScale& scale = tables.difficulty;
    Node const reach = table["reach_strings"];
    std::vector<Node> const strings = list(reach);
    if (strings.size() != scale.reachStrings.size())
        reach.refuse("one number a level is wanted");
    double before = 0;
    for (std::size_t i = 0; i < strings.size(); ++i) {
        scale.reachStrings[i] = number(strings[i], before + 0.1, 30);
        before = scale.reachStrings[i];
    }
    scale.crossingLevel = number(table["crossing_level"], 0, 5);
    scale.hardestPart = number(table["hardest_part"], 0, 1);
    scale.hardestBars = number(table["hardest_bars"], 0.01, 1);
}

void readLevels(Row& table, Tables& tables)
{
    for (Node const& node : list(table["levels"])) {
        Row row(node);
        harp::Level level;
        int const next = static_cast<int>(tables.levels.size()) + 1;
        level.number = whole(row["number"], next, next);
        level.name = words(row["name"]);
        level.leftNotesPerSecond = number(row["left_notes_per_second"], 0.1, 50);
        level.rightNotesPerSecond = number(row["right_notes_per_second"], 0.1, 50);
        level.sameStringPerSecond = number(row["same_string_per_second"], 0.1, 50);
        level.octaveLeapSeconds = number(row["octave_leap_seconds"], 0, 10);
        level.leftStrings = whole(row["left_strings"], 1, 20);
        level.flips = yesOrNo(row["flips"]);
        level.rightFingers = whole(row["right_fingers"], 1, harp::fingers);
        level.crosses = yesOrNo(row["crosses"]);
        level.slides = yesOrNo(row["slides"]);
        level.flipFreeBeats = number(row["flip_free_beats"], 0, 16);
        level.flipFreeSeconds = number(row["flip_free_seconds"], 0, 10);
        row.done();
        tables.levels.push_back(std::move(level));
    }
}

// Thousandths of a point by which a pattern or rhythm may be less liked, or more.
constexpr int mostPenalty = 5000;

pattern::Pattern patternOf(Node const& node)
{
    Row row(node);
    std::string const degrees = text(row["degrees"]);
    auto read = pattern::patternFrom(fmt::format("{} ({})", degrees, text(row["fingers"])));
    if (!read) node.refuse(fmt::format("{}: {}", read.error().place, read.error().detail));
    pattern::Pattern p = *std::move(read);
    if (p.name != degrees) row["degrees"].refuse("is written " + p.name);
    p.level = whole(row["level"], 1, 5);
    if (row.has("meters"))
        for (Node const& m : list(row["meters"])) p.meters.push_back(text(meter(m)));
    if (row.has("lowest_root")) p.lowestRoot = midi(naturalPitch(row["lowest_root"]));
    if (row.has("penalty")) p.penalty = whole(row["penalty"], -mostPenalty, mostPenalty);
    p.feel = words(row["feel"]);
    row.done();
    return p;
}

void readPatterns(Row& table, Tables& tables)
{
    Names names;
    for (Node const& node : list(table["patterns"])) {
        tables.book.patterns.push_back(patternOf(node));
        names.add(node, tables.book.patterns.back().name);
    }
}

// "1", "2+3" or "all": notes of the pattern, counted from 1 in the file and from 0 here.
std::vector<int> playedNotes(Node const& node, int notes)
{
    std::string const written = text(node);
    std::vector<int> played;
    if (written == "all") {
        for (int i = 0; i < notes; ++i) played.push_back(i);
        return played;
    }
    char const* at = written.data();
    char const* const end = at + written.size();
    while (true) {
        int note = 0;
        auto const read = std::from_chars(at, end, note);
        bool const sound = read.ec == std::errc() && note >= 1 && note <= notes &&
                           (read.ptr == end || *read.ptr == '+');
        if (!sound) node.refuse(fmt::format("{} of {} notes", written, notes));
        played.push_back(note - 1);
        if (read.ptr == end) return played;
        at = read.ptr + 1;
    }
}

std::vector<Length> onsets(Node const& node)
{
    std::vector<Length> all;
    for (Node const& item : list(node)) {
        Length const at{fraction(item)};
        bool const inOrder = all.empty() ? at == Length{} : at > all.back();
        if (!inOrder) item.refuse("onsets rise from 0");
        all.push_back(at);
    }
    return all;
}

// {"waltz": -120}: what speaks for or against something in tunes of a kind.
std::vector<pattern::ForKind> likedByKind(Node const& node)
{
    std::vector<pattern::ForKind> out;
    Row row(node);
    for (tune::Kind const kind : tune::allKinds) {
        std::string const name(tune::kindName(kind));
        if (row.has(name)) out.push_back({name, whole(row[name], -mostPenalty, mostPenalty)});
    }
    row.done();
    return out;
}

// One row stands for each of its meters with each of its numbers of notes.
std::vector<pattern::Rhythm> rhythmsOf(Node const& node)
{
    Row row(node);
    std::string const name = text(row["name"]);
    std::vector<Length> const begins = onsets(row["onsets"]);
    std::vector<Node> const plays = list(row["plays"]);
    if (plays.size() != begins.size()) row["plays"].refuse("one for each onset is wanted");
    int const level = row.has("level") ? whole(row["level"], 1, 5) : 1;
    int const penalty =
        row.has("penalty") ? whole(row["penalty"], -mostPenalty, mostPenalty) : 0;
    std::vector<pattern::ForKind> const kinds =
        row.has("kinds") ? likedByKind(row["kinds"]) : std::vector<pattern::ForKind>{};
    std::vector<pattern::Rhythm> rhythms;
    for (Node const& meterNode : list(row["meters"]))
        for (Node const& notesNode : list(row["notes"])) {
            pattern::Rhythm r{name, meter(meterNode), {}, whole(notesNode, 1, 16), begins, {}};
            r.span = row.has("span") ? Length{fraction(row["span"])} : barLength(r.meter);
            if (r.onsets.back() >= r.span)
                row["onsets"].refuse("an onset is beyond the span");
            r.level = level;
            r.penalty = penalty;
            r.kinds = kinds;
            for (Node const& play : plays) r.plays.push_back(playedNotes(play, r.notes));
            rhythms.push_back(std::move(r));
        }
    row.done();
    return rhythms;
}

void readRhythms(Row& table, Tables& tables)
{
    Names names;
    for (Node const& node : list(table["rhythms"]))
        for (pattern::Rhythm& r : rhythmsOf(node)) {
            names.add(node, fmt::format("{} for {} notes in {} of {}", r.name, r.notes,
                                        text(r.span.wholes), text(r.meter)));
            tables.book.rhythms.push_back(std::move(r));
        }
    for (Node const& node : list(table["renamed"])) {
        Row row(node);
        std::string const before = text(row["name"]);
        names.add(node, before);
        tables.book.renamed[before] = text(row["now"]);
        row.done();
    }
}

// {"reach": 1000, "rate": -500}: pulls at the weights of terms.
std::vector<arrange::Pull> pullsOf(Node const& node)
{
    constexpr int whole1000 = 1000;
    Row row(node);
    std::vector<arrange::Pull> pulls;
    for (std::size_t i = 0; i < arrange::termCount; ++i) {
        auto const term = static_cast<arrange::Term>(i);
        std::string const name{termName(term)};
        if (row.has(name))
            pulls.push_back({term, whole(row[name], -whole1000, whole1000)});
    }
    row.done();
    return pulls;
}

void readSliders(Row& table, Tables& tables)
{
    Names names;
    for (Node const& node : list(table["sliders"])) {
        Row row(node);
        arrange::Slider slider{text(row["id"]), words(row["name"]), words(row["less"]),
                               words(row["more"]), pullsOf(row["weights"])};
        if (row.has("taste")) slider.figures = readFigurePulls(row["taste"]);
        row.done();
        names.add(node, slider.id);
        tables.sliders.push_back(std::move(slider));
    }
}

// Of a row whose member `kind` names the kind of dance.
tune::Kind kindIn(Row& row, Names& names)
{
    Node const node = row["kind"];
    std::string const kind = text(node);
    auto const* const found = std::ranges::find(tune::allKinds, kind, tune::kindName);
    if (found == tune::allKinds.end()) node.refuse("no kind of dance: " + kind);
    names.add(node, kind);
    return *found;
}

void readLilts(Row& table, Tables& tables)
{
    Names names;
    for (Node const& node : list(table["lilts"])) {
        Row row(node);
        tune::Kind const kind = kindIn(row, names);
        Node const ofNode = row["of"];
        std::string const of = text(ofNode);
        if (of != "pairs" && of != "threes") ofNode.refuse("pairs or threes, not " + of);
        perform::LiltWay way;
        way.of = of == "pairs" ? perform::LiltWay::Of::Pairs : perform::LiltWay::Of::Threes;
        way.most = whole(row["most_thousandths"], 334, 800) / 1000.0;
        way.usual = whole(row["usual"], 0, 100);
        row.done();
        tables.ways.lilts.push_back({kind, way});
    }
}

void readSlowings(Row& table, Tables& tables)
{
    Names names;
    tables.ways.toldTo = whole(table["told_to_percent"], 1, 99) / 100.0;
    for (Node const& node : list(table["slowings"])) {
        Row row(node);
        tune::Kind const kind = kindIn(row, names);
        perform::Slowing const most{whole(row["to_percent"], 20, 100) / 100.0,
                                    whole(row["beats"], 1, 16)};
        tables.ways.slowings.push_back({kind, most, whole(row["usual"], 0, 100)});
        row.done();
    }
}

void readTemperaments(Row& table, Tables& tables)
{
    Names names;
    for (Node const& node : list(table["temperaments"])) {
        Row row(node);
        perform::Temperament temperament{text(row["id"]), words(row["name"]), {}};
        Node const centsNode = row["millicents"];
        auto const cents = list(centsNode);
        if (cents.size() != temperament.cents.size()) centsNode.refuse("twelve, from C upwards");
        for (std::size_t i = 0; i < cents.size(); ++i)
            temperament.cents[i] = whole(cents[i], -50000, 50000) / 1000.0;
        row.done();
        names.add(node, temperament.id);
        tables.temperaments.push_back(std::move(temperament));
    }
}

base::Fault malformed(std::string const& file, int line, std::string detail)
{
    return {base::FaultCode::TableMalformed, fmt::format("{}, line {}", file, line),
            std::move(detail)};
}

using TableReader = std::function<void(Row&, Tables&)>;

// One file onto the tables; the fault when it cannot be used.
std::optional<base::Fault> readTable(std::filesystem::path const& folder,
                                     std::string const& file, TableReader const& read,
                                     Tables& tables)
{
    auto const json = readTextFile(folder / file);
    if (!json && json.error().code == base::FaultCode::FileEmpty)
        return malformed(file, 1, "nothing in it");
    if (!json) return base::Fault{base::FaultCode::TableMissing, json.error().place, ""};
    try {
        nlohmann::json const parsed = nlohmann::json::parse(*json);
        Row table(Node{&parsed, ""});
        readSources(table);
        read(table, tables);
        table.done();
    } catch (nlohmann::json::parse_error const& error) {
        return malformed(file, lineOfByte(*json, error.byte), "no JSON from here on");
    } catch (Damage const& damage) {
        return malformed(file, lineOf(*json, damage.pointer), damage.detail);
    }
    return std::nullopt;
}

} // namespace

base::Result<Tables> readTables(std::filesystem::path const& sharedFolder)
{
    Tables tables;
    arrange::Taste taste;
    tune::WayPrices ways;
    std::pair<char const*, TableReader> const files[] = {
        {"harps.json", readHarps},
        {"tunings.json", readTunings},
        {"hands.json", readHands},
        {"levels.json", readLevels},
        {"patterns.json", readPatterns},
        {"rhythms.json", readRhythms},
        {"taste.json", [&taste](Row& table, Tables&) { readTaste(table, taste); }},
        {"snags.json", [&ways](Row& table, Tables&) { readWayPrices(table, ways); }},
        {"weights.json",
         [&taste, &ways](Row& table, Tables& read) {
             readStyles(table, taste, ways, read.styles);
         }},
        {"sliders.json", readSliders},
        {"forms.json", readForms},
        {"difficulty.json", readDifficulty},
        {"lilts.json", readLilts},
        {"slowings.json", readSlowings},
        {"temperaments.json", readTemperaments},
        {"chordtable.json",
         [](Row& table, Tables& read) { readChordTable(table, read.harmony.chords); }},
        {"keytable.json",
         [](Row& table, Tables& read) { readKeyTable(table, read.harmony.keys); }}};
    for (auto const& [file, read] : files)
        if (auto const fault = readTable(sharedFolder, file, read, tables)) return *fault;
    return tables;
}

} // namespace files
