#include "core/files/abc/read.h"

#include "core/base/words.h"
#include "core/files/abc/bars.h"
#include "core/files/abc/fields.h"
#include "core/files/abc/quoted.h"
#include "core/files/abc/text.h"
#include "core/files/tidy.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <utility>

namespace files {

namespace {

using base::Fault;
using base::FaultCode;
using base::Result;
using music::Rational;
using tune::Place;

constexpr std::size_t mostTextFields = 200; // of one kind
constexpr std::size_t longestText = 10 * mostTextFields;

// Music may begin like a field: "G:|". No field's text begins with a bar line.
bool isFieldLineInMusic(std::string_view line)
{
    return isFieldLine(line) && (line.size() == 2 || (line[2] != '|' && line[2] != ':'));
}

std::string named(std::string const& file, Place place)
{
    std::string out = file;
    if (!out.empty()) out += ", ";
    out += base::say("line {}", place.line);
    if (place.column > 0) out += base::said("line|, column ") + std::to_string(place.column);
    return out;
}

bool areCapitals(std::string_view text)
{
    return std::all_of(text.begin(), text.end(), [](char c) { return c >= 'A' && c <= 'Z'; });
}

bool isOrderOfParts(std::string_view text) { return text.size() > 1 && areCapitals(text); }

// Reads one tune, line by line.
class AbcReader {
public:
    // `voice`: the one that is the tune; none: the first.
    explicit AbcReader(std::string const& file, std::optional<std::string> voice = {},
                       Rests rests = Rests::NotAlone)
        : m_file(file), m_rests(rests), m_tuneVoice(std::move(voice))
    {}

    Result<tune::Tune> read(std::string_view text, AbcEntry const& entry)
    {
        m_tune.number = entry.number;
        readFileHeader(text.substr(0, entry.from));
        m_inFileHeader = m_inText = false;
        Lines lines(text.substr(entry.from, entry.to - entry.from), entry.line);
        while (auto const raw = lines.next()) {
            line(asUtf8(lineText(*raw, lines.number())), lines.number());
            if (m_fault) return *m_fault;
        }
        takeUnder();
        if (m_fault) return *m_fault;
        if (!m_inBody)
            return Fault{FaultCode::NoTune, named(m_file, {entry.line, 0}),
                         base::said("no K: line")};
        return finished(entry);
    }

    // The voices that are not the tune, and what is left out with each.
    struct OtherVoice {
        std::string name;
        Place place;
        int notes = 0;
        int chords = 0;
        Place firstChord;
    };
    std::vector<OtherVoice> const& otherVoices() const { return m_others; }

private:
    // Fields at the head of the file, up to its first empty line, hold for every tune of it.
    void readFileHeader(std::string_view head)
    {
        Lines lines(head);
        while (auto const raw = lines.next()) {
            std::string_view const text = lineText(*raw, lines.number());
            if (trimmed(text).empty() || text.starts_with("X:")) return;
            bool const isField = isFieldLine(text) && !text.starts_with("K:");
            if (isField || text.starts_with("%%")) line(asUtf8(text), lines.number());
        }
    }

    Result<tune::Tune> finished(AbcEntry const& entry)
    {
        m_tune.bars = m_bars.finish();
        bool const enough = m_rests == Rests::Allowed ? !m_tune.bars.empty() : hasNotes(m_tune);
        if (!enough)
            return Fault{FaultCode::NoNotes, named(m_file, {entry.line, 0}), m_tune.title};
        m_tune.key = m_tune.bars.front().key;
        m_tune.meter = m_tune.bars.front().meter;
        if (m_meterMissing)
            m_remarks.add(
                {entry.line, 0}, base::said("the tune has no time signature"),
                base::say("the bar lines stay as written, and the beats are counted in {}",
                          text(m_tune.meter)));
        settlePartOrder(entry);
        remarkOnVoices();
        remarkOnJump(m_tune, m_remarks);
        m_remarks.count();
        return std::move(m_tune);
    }

    void line(std::string const& whole, int number)
    {
        m_line = number;
        if (whole.starts_with("%%")) return instruction(std::string_view(whole).substr(2));
        if (m_inText) return pageText(whole);
        std::string_view const text = withoutComment(whole);
        if (trimmed(text).empty()) return;
        bool const isField = m_inBody ? isFieldLineInMusic(text) : isFieldLine(text);
        if (isField) return field(text[0], text.substr(2), {number, 1}, Where::OwnLine);
        if (m_inBody) music(text);
    }

    // Words of the page between the lines (ABC 2.1, section 11.4.2): remarks of the writer.
    void pageText(std::string_view text)
    {
        std::string words = textString(trimmed(withoutComment(text)));
        if (m_inFileHeader || words.empty() || m_tune.notes.size() >= mostTextFields) return;
        m_tune.notes.push_back(std::move(words));
    }

    // A line that ends in a backslash goes on with the next line of music; what stands under it
    // (w:, s:) is for both.
    void music(std::string_view text)
    {
        takeUnder();
        m_bars.breakBeam();
        bool const goesOn = std::exchange(m_lineGoesOn, trimmed(text).ends_with('\\'));
        if (!goesOn) m_bars.beginLine();
        LineScanner scanner(text, m_symbols);
        while (auto const sign = scanner.next()) {
            Place const place{m_line, scanner.column()};
            if (auto const* inside = std::get_if<sign::Field>(&*sign)) {
                field(inside->letter, inside->text, place, Where::Inline);
            } else {
                noteVoice();
                if (!listening()) passOver(*sign, place);
                check(m_bars.take(*sign, place), place);
            }
            if (m_fault) return;
        }
    }

    // Counts what the voice at hand, which is not the tune, has.
    void passOver(sign::Any const& sign, Place place)
    {
        OtherVoice& other = otherVoice(place);
        if (std::holds_alternative<sign::Note>(sign) ||
            std::holds_alternative<sign::Chord>(sign))
            ++other.notes;
        auto const* const quoted = std::get_if<sign::Quoted>(&sign);
        if (quoted == nullptr || quoted->text.empty()) return;
        if (!std::holds_alternative<music::Chord>(quotedMeaning(quoted->text))) return;
        if (other.chords++ == 0) other.firstChord = place;
    }

    OtherVoice& otherVoice(Place place)
    {
        auto const found = std::ranges::find(m_others, m_voice, &OtherVoice::name);
        if (found != m_others.end()) return *found;
        m_others.push_back({m_voice, place, 0, 0, {}});
        return m_others.back();
    }

    void remarkOnVoices()
    {
        if (m_others.empty()) return;
        int notes = 0;
        for (OtherVoice const& other : m_others) notes += other.notes;
        m_remarks.add(
            m_others.front().place, base::say("the tune has {} voices", m_others.size() + 1),
            base::sayCount(notes, "{} note of the others is left out; voice {} is read",
                           "{} notes of the others are left out; voice {} is read",
                           textString(m_tuneVoice.value_or("1"))));
    }

    enum class Where { OwnLine, Inline };

    void field(char letter, std::string_view raw, Place place, Where where)
    {
        std::string_view const text = trimmed(raw);
        if (letter == '+') return goOn(text, place);
        takeUnder();
        m_goesOn = nullptr;
        switch (letter) {
        case 'K':
            return key(text, place);
        case 'M':
            return meter(text, place);
        case 'L':
            return unitLength(text, place);
        case 'Q':
            return tempo(text, place);
        case 'P':
            // On a line of its own it stands for all voices.
            if (where == Where::Inline && !listening()) return;
            return part(text, place);
        case 'V':
            return voice(text, place);
        case 'U':
            if (!addSymbol(m_symbols, text)) unread('U', text, place);
            return;
        case 'I':
            return instruction(text);
        case 'm':
            m_remarks.addOnce(place, base::say("{}: lines cannot be used", letter),
                              base::said("left out"));
            return;
        case 'Y':
            // Not of the standard: an old folk tune collection keeps the order of parts here.
            if (!m_inBody) m_order = orderFrom(text);
            return;
        default:
            break;
        }
        if ((letter == 'w' || letter == 's') && where == Where::OwnLine && m_inBody)
            m_under = Under{letter, std::string(text), place};
        else if (where == Where::OwnLine)
            textField(letter, textString(text));
        else if (letter != 'r' && letter != 'R' && letter != 'N' && letter != 'T')
            check(m_bars.take(sign::Field{letter, std::string(text)}, place), place);
    }

    // "+:" goes on with the field on the line before (ABC 2.1, section 3.3).
    void goOn(std::string_view text, Place place)
    {
        if (m_under) {
            if (m_under->text.size() < longestText) m_under->text += ' ' + std::string(text);
            return;
        }
        if (m_goesOn == nullptr)
            return m_remarks.addOnce(place,
                                     base::said("+: lines behind fields that are not of text"),
                                     base::said("left out"));
        if (m_goesOn->size() < longestText) *m_goesOn += ' ' + textString(text);
    }

    // The words or symbols under the line before, when nothing goes on with them.
    void takeUnder()
    {
        auto const under = std::exchange(m_under, std::nullopt);
        if (!under) return;
        check(under->letter == 'w' ? m_bars.addVerse(under->text, under->place)
                                   : m_bars.addSymbols(under->text, under->place),
              under->place);
    }

    void textField(char letter, std::string text)
    {
        m_goesOn = &m_unshown;
        auto const keep = [this, &text](std::vector<std::string>& list) {
            if (list.size() >= mostTextFields) return;
            list.push_back(std::move(text));
            m_goesOn = &list.back();
        };
        auto const join = [this, &text](std::string& kept) {
            if (kept.size() >= longestText) return;
            kept += (kept.empty() ? "" : ", ") + text;
            m_goesOn = &kept;
        };
        switch (letter) {
        case 'T':
            if (m_tune.title.empty())
                join(m_tune.title);
            else
                keep(m_tune.otherTitles);
            break;
        case 'C':
            join(m_tune.composer);
            break;
        case 'O':
            join(m_tune.origin);
            break;
        case 'S':
            join(m_tune.source);
            break;
        case 'R':
            if (m_tune.rhythm.empty()) m_tune.rhythm = std::move(text);
            break;
        case 'N':
            keep(m_tune.notes);
            break;
        case 'W':
            keep(m_tune.words);
            break;
        default:
            break; // sources and the like, which no lead sheet here shows
        }
    }

    void key(std::string_view text, Place place)
    {
        if (!listening()) return;
        bool const first = !m_inBody;
        if (text.empty() && !first) return unread('K', text, place);
        auto const key = abcKey(text);
        if (!key) return refuse(FaultCode::BadKey, place, text);
        m_bars.setKey(*key);
        if (first) beginBody(place);
    }

    // The K: line ends the head of the tune; what it left open is settled now.
    void beginBody(Place place)
    {
        m_inBody = true;
        m_meterMissing = !m_meter.meter;
        check(m_bars.setMeter(m_meter, place), place);
        if (!m_unit) m_unit = usualUnitLength(m_meter);
        m_bars.setUnitLength(*m_unit);
        if (m_tempoText) takeTempo(*m_tempoText, m_tempoPlace);
    }

    void meter(std::string_view text, Place place)
    {
        if (m_inBody && !listening()) return;
        auto const meter = abcMeter(text);
        if (!meter) return refuse(FaultCode::BadMeter, place, text);
        if (!m_inBody) {
            m_meter = *meter;
            return;
        }
        m_meterMissing = m_meterMissing && !meter->meter;
        check(m_bars.setMeter(*meter, place), place);
    }

    void unitLength(std::string_view text, Place place)
    {
        if (m_inBody && !listening()) return;
        auto const length = abcUnitLength(text);
        if (!length) return refuse(FaultCode::BadLength, place, text);
        m_unit = length;
        if (m_inBody) m_bars.setUnitLength(*length);
    }

    void tempo(std::string_view text, Place place)
    {
        if (!m_inBody) {
            m_tempoText = text;
            m_tempoPlace = place;
        } else if (m_tune.tempo) {
            m_remarks.addOnce(place, base::said("the tempo changes inside the tune"),
                              base::said("the first tempo is used throughout"));
        } else {
            takeTempo(std::string(text), place);
        }
    }

    void takeTempo(std::string const& text, Place place)
    {
        auto const tempo = abcTempo(text, *m_unit);
        if (!tempo)
            return m_remarks.add(place, base::say("Q:{} is not a tempo", shortened(text)),
                                 base::said("the usual tempo is used"));
        m_tune.tempo = tempo->tempo;
        if (!tempo->words.empty()) m_bars.addWords(tempo->words);
    }

    static std::vector<std::string> orderFrom(std::string_view text)
    {
        auto order = abcPartOrder(text);
        return order ? *std::move(order) : std::vector<std::string>{};
    }

    void part(std::string_view text, Place place)
    {
        if (!m_inBody) {
            m_order = orderFrom(text);
            if (m_order.empty()) unread('P', text, place);
            if (m_order.size() == 1) m_bars.setPart(m_order.front(), place);
        } else if (isOrderOfParts(text)) {
            m_orderInBody = orderFrom(text);
        } else if (abcPartName(text)) {
            m_bars.setPart(textString(text), place);
        } else {
            m_bars.addWords(text);
        }
    }

    // The first voice is the tune.
    void voice(std::string_view text, Place place)
    {
        constexpr std::size_t longestName = 100;
        std::size_t const end = std::min({text.find_first_of(" \t"), text.size(), longestName});
        std::string const name(text.substr(0, end));
        if (!m_tuneVoice) m_tuneVoice = name;
        if (name == *m_tuneVoice) {
            if (auto const octave = abcVoiceOctave(text.substr(end)))
                m_bars.setVoiceOctave(*octave);
        }
        if (m_inBody) m_voice = name;
        m_bars.setListening(listening());
        if (!listening()) otherVoice(place);
    }

    bool listening() const { return m_voice.empty() || m_voice == m_tuneVoice; }

    // Music before any V: belongs to the first voice.
    void noteVoice()
    {
        if (!m_tuneVoice) m_tuneVoice = "1";
    }

    void instruction(std::string_view text)
    {
        constexpr std::string_view name = "propagate-accidentals";
        text = trimmed(text);
        if (m_inText || text.starts_with("begintext")) {
            bool const begins = !std::exchange(m_inText, !text.starts_with("endtext"));
            if (m_inText && !begins) pageText(text);
            return;
        }
        for (std::string_view const words : {"text", "center"})
            if (text.starts_with(words) && text.size() > words.size() &&
                trimmed(text.substr(words.size(), 1)).empty())
                return pageText(text.substr(words.size()));
        if (!text.starts_with(name)) return;
        std::string_view const value = trimmed(text.substr(name.size()));
        if (value.starts_with("not")) m_bars.setPropagation(Propagation::NoteOnly);
        if (value.starts_with("octave")) m_bars.setPropagation(Propagation::OwnOctave);
        if (value.starts_with("pitch")) m_bars.setPropagation(Propagation::EveryOctave);
    }

    bool isMarked(std::string const& part) const
    {
        return std::any_of(m_tune.bars.begin(), m_tune.bars.end(),
                           [&part](tune::Bar const& bar) { return bar.part == part; });
    }

    // An order is kept when the tune marks its parts. "P:AAB" between notes is an order when it
    // names parts that are marked elsewhere.
    void settlePartOrder(AbcEntry const& entry)
    {
        if (m_order.size() == 1) m_order.clear(); // the name of the first part
        if (m_order.empty()) m_order = m_orderInBody;
        if (m_order.empty()) return;
        auto const marked = [this](std::string const& part) { return isMarked(part); };
        if (std::none_of(m_order.begin(), m_order.end(), marked))
            return m_remarks.add(
                {entry.line, 0},
                base::said("the tune gives an order of parts but marks no parts"),
                base::said("the order is ignored"));
        if (!std::all_of(m_order.begin(), m_order.end(), marked))
            m_remarks.add({entry.line, 0},
                          base::said("the order names parts that are nowhere marked"),
                          base::said("they are skipped"));
        std::copy_if(m_order.begin(), m_order.end(), std::back_inserter(m_tune.partOrder),
                     marked);
    }

    static std::string shortened(std::string_view text)
    {
        constexpr std::size_t most = 40;
        return textString(text.substr(0, most));
    }

    void unread(char letter, std::string_view text, Place place)
    {
        m_remarks.add(place, base::say("{}:{} cannot be understood", letter, shortened(text)),
                      base::said("left out"));
    }

    void refuse(FaultCode code, Place place, std::string_view text)
    {
        // In the head of the file a field speaks of no tune yet; there it is left out.
        if (m_inFileHeader) return;
        m_fault = Fault{code, named(m_file, place), shortened(text)};
    }

    void check(AbcOutcome const& outcome, Place place)
    {
        if (outcome) m_fault = Fault{outcome->code, named(m_file, place), outcome->detail};
    }

    std::string const& m_file;
    Rests m_rests;
    tune::Tune m_tune;
    Remarks m_remarks{m_tune.said};
    AbcBars m_bars{m_remarks};
    Symbols m_symbols = usualSymbols();
    std::optional<Fault> m_fault;

    // A line w: or s: that the next may go on with.
    struct Under {
        char letter = 'w';
        std::string text;
        Place place;
    };
    std::optional<Under> m_under;
    bool m_lineGoesOn = false; // the line of music before ended in a backslash
    bool m_inText = false;     // between %%begintext and %%endtext
    std::vector<OtherVoice> m_others;

    std::string* m_goesOn = nullptr; // the text that a line +: would go on with
    std::string m_unshown;           // stands for the text of fields that are not kept

    bool m_inFileHeader = true;
    bool m_inBody = false;
    int m_line = 1;
    AbcMeter m_meter;
    bool m_meterMissing = false;
    std::optional<Rational> m_unit;
    std::optional<std::string> m_tempoText;
    Place m_tempoPlace;
    std::vector<std::string> m_order; // of parts, as the head of the tune has it
    std::vector<std::string> m_orderInBody;
    std::optional<std::string> m_tuneVoice;
    std::string m_voice; // the one the lines at hand belong to; empty: none was named
};

} // namespace

namespace {

// The chords of one voice over another, bar by bar where their bars are as long, else by the
// time from the start. How many found no place.
int putChords(tune::Bars const& from, tune::Bars& over)
{
    bool const alike =
        std::equal(from.begin(), from.end(), over.begin(), over.end(),
                   [](tune::Bar const& a, tune::Bar const& b) { return a.length == b.length; });
    base::List<tune::BarIndex, Rational> starts;
    Rational end;
    for (tune::Bar const& bar : over) {
        starts.push_back(end);
        end += bar.length.wholes;
    }
    int homeless = 0;
    Rational began;
    for (tune::BarIndex const i : from.indices()) {
        for (tune::ChordMark mark : from[i].chords) {
            tune::BarIndex bar = i;
            if (!alike) {
                Rational const at = began + mark.at.wholes;
                bar = starts.indexOf(std::upper_bound(starts.begin(), starts.end(), at)) - 1;
                mark.at = {at - starts[bar]};
            }
            if (mark.at < over[bar].length)
                over[bar].chords.push_back(std::move(mark));
            else
                ++homeless;
        }
        began += from[i].length.wholes;
    }
    return homeless;
}

} // namespace

Result<tune::Tune> readAbc(std::string_view bytes, AbcEntry const& entry,
                           std::string const& file, Rests rests)
{
    AbcText const text(bytes);
    AbcReader reader(file, {}, rests);
    auto tune = reader.read(text.view(), entry);
    if (!tune) return tune;
    bool const bare = !hasChords(*tune);
    Remarks remarks(tune->said);
    for (auto const& other : reader.otherVoices()) {
        if (other.chords == 0) continue;
        std::string did = base::said("left out");
        if (bare && !hasChords(*tune)) {
            auto const second =
                AbcReader(file, other.name, Rests::Allowed).read(text.view(), entry);
            if (!second) return second;
            int const homeless = putChords(second->bars, tune->bars);
            did =
                homeless == 0
                    ? base::said("put over the tune")
                    : base::sayCount(homeless,
                                     "put over the tune, but for {} that stands behind its end",
                                     "put over the tune, but for {} that stand behind its end");
        }
        remarks.add(other.firstChord,
                    base::sayCount(other.chords, "{} chord symbol stands over voice {} alone",
                                   "{} chord symbols stand over voice {} alone",
                                   textString(other.name)),
                    did);
    }
    return tune;
}

Result<tune::Tune> readAbcVoice(std::string_view bytes, AbcEntry const& entry,
                                std::string const& voice, std::string const& file)
{
    AbcText const text(bytes);
    return AbcReader(file, voice).read(text.view(), entry);
}

} // namespace files
