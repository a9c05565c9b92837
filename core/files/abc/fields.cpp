#include "core/files/abc/fields.h"

#include "core/files/abc/text.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstdlib>

namespace files {

namespace {

using music::Key;
using music::Letter;
using music::Mode;
using music::Rational;

std::optional<long> wholeNumber(std::string_view text)
{
    constexpr std::size_t mostDigits = 9;
    if (text.empty() || text.size() > mostDigits) return std::nullopt;
    long value = 0;
    char const* const from = text.data();
    char const* const end = from + text.size();
    auto const [stop, error] = std::from_chars(from, end, value);
    if (error != std::errc{} || stop != end || value < 0) return std::nullopt;
    return value;
}

std::vector<std::string_view> words(std::string_view text)
{
    std::vector<std::string_view> out;
    for (text = trimmed(text); !text.empty(); text = trimmed(text)) {
        std::size_t const end = std::min(text.find_first_of(" \t"), text.size());
        out.push_back(text.substr(0, end));
        text.remove_prefix(end);
    }
    return out;
}

std::string lowerCase(std::string_view text)
{
    std::string out(text);
    for (char& c : out)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return out;
}

std::array<int, 7> altersOf(int signature)
{
    std::array<int, 7> alter{};
    for (Letter letter : music::allLetters)
        alter[static_cast<std::size_t>(index(letter))] = alterIn(signature, letter);
    return alter;
}

int difference(std::array<int, 7> const& a, std::array<int, 7> const& b)
{
    int sum = 0;
    for (std::size_t i = 0; i < a.size(); ++i) sum += std::abs(a[i] - b[i]);
    return sum;
}

// The mode on this tonic whose signature is nearest; the major first among equals.
Key nearestKey(music::PitchName tonic, std::array<int, 7> const& alter)
{
    Key best{tonic, Mode::Ionian};
    for (Mode mode : music::allModes) {
        Key const key{tonic, mode};
        if (difference(altersOf(signature(key)), alter) <
            difference(altersOf(signature(best)), alter))
            best = key;
    }
    return best;
}

constexpr std::string_view accidentals = "^_=";

// "^f", "__b", "=c", and several run together.
bool changeSignature(std::string_view text, std::array<int, 7>& alter)
{
    while (!text.empty()) {
        std::size_t const letterAt = text.find_first_not_of(accidentals);
        if (letterAt == 0 || letterAt == std::string_view::npos) return false;
        auto const name = music::pitchNameFrom(text.substr(letterAt, 1));
        if (!name) return false;
        int change = 0;
        for (char c : text.substr(0, letterAt)) change += c == '^' ? 1 : c == '_' ? -1 : 0;
        alter[static_cast<std::size_t>(index(name->letter))] = std::clamp(change, -2, 2);
        text.remove_prefix(letterAt + 1);
    }
    return true;
}

// Clefs and other properties of the staff, which change no note here.
bool isStaffWord(std::string_view word)
{
    constexpr std::array clefs{"treble", "bass", "alto", "tenor", "perc", "none", "clef"};
    std::string const lower = lowerCase(word);
    return lower.find('=') != std::string::npos ||
           std::any_of(clefs.begin(), clefs.end(),
                       [&lower](std::string_view clef) { return lower.starts_with(clef); });
}

int octaveProperty(std::string_view word)
{
    constexpr std::string_view name = "octave=";
    constexpr long most = 4;
    if (!word.starts_with(name)) return 0;
    std::string_view number = word.substr(name.size());
    bool const down = number.starts_with('-');
    if (down || number.starts_with('+')) number.remove_prefix(1);
    auto const value = wholeNumber(number);
    if (!value || *value > most) return 0;
    return static_cast<int>(down ? -*value : *value);
}

// A clef with an 8 above or below: the notes are heard an octave from where they stand
// (ABC 2.1, section 4.6).
int clefOctave(std::string_view word)
{
    if (!isStaffWord(word) ||
        (word.find('=') != std::string_view::npos && !lowerCase(word).starts_with("clef=")))
        return 0;
    return word.ends_with("-8") ? -1 : word.ends_with("+8") ? 1 : 0;
}

// "GM" is G major; elsewhere the case of a mode does not matter.
std::optional<Key> keyOfWord(std::string_view word)
{
    if (word.size() > 1 && word.back() == 'M' &&
        word.find_first_not_of("ABCDEFG#bM") == std::string_view::npos)
        word.remove_suffix(1);
    return music::keyFrom(word);
}

// Accidentals that stand right behind the key, as in "D=c", become a word of their own.
void partFromKey(std::vector<std::string_view>& rest)
{
    if (rest.empty()) return;
    std::string_view const first = rest[0];
    std::size_t const at = first.find_first_of(accidentals);
    if (at == 0 || at == std::string_view::npos) return;
    std::array<int, 7> unused{};
    if (!keyOfWord(first.substr(0, at)) || !changeSignature(first.substr(at), unused)) return;
    rest[0] = first.substr(0, at);
    rest.insert(rest.begin() + 1, first.substr(at));
}

struct Named {
    std::string_view word;
    Key key;
    int signature;
};
// Keys without a tonic. The pipes' scale is A mixolydian; HP writes no signature, Hp writes it.
constexpr std::array namedKeys{
    Named{"none", {{Letter::C, 0}, Mode::Ionian}, 0},
    Named{"HP", {{Letter::A, 0}, Mode::Mixolydian}, 0},
    Named{"Hp", {{Letter::A, 0}, Mode::Mixolydian}, 2},
};

// The key itself at the front of the words, which are taken off. None when it is no key.
std::optional<AbcKey> takeKey(std::vector<std::string_view>& rest)
{
    if (rest.empty() || isStaffWord(rest[0])) {
        if (!rest.empty() && lowerCase(rest[0]) == "none") rest.erase(rest.begin());
        return AbcKey{namedKeys[0].key, altersOf(0), 0};
    }
    std::string_view const first = rest[0];
    rest.erase(rest.begin());
    for (Named const& named : namedKeys)
        if (first == named.word) return AbcKey{named.key, altersOf(named.signature), 0};

    auto key = keyOfWord(first);
    if (!key) return std::nullopt;
    bool const tonicOnly = music::pitchNameFrom(first).has_value();
    if (tonicOnly && !rest.empty() && lowerCase(rest[0]) == "exp") {
        rest.erase(rest.begin());
        return AbcKey{*key, altersOf(0), 0};
    }
    if (tonicOnly && !rest.empty()) {
        std::string const joined = std::string(first) + ' ' + std::string(rest[0]);
        if (auto const withMode = music::keyFrom(joined)) {
            key = withMode;
            rest.erase(rest.begin());
        }
    }
    return AbcKey{*key, altersOf(signature(*key)), 0};
}

std::optional<long> sumOf(std::string_view text)
{
    long sum = 0;
    for (;;) {
        std::size_t const plus = text.find('+');
        auto const term = wholeNumber(trimmed(text.substr(0, plus)));
        if (!term) return std::nullopt;
        sum += *term;
        if (plus == std::string_view::npos) return sum;
        text.remove_prefix(plus + 1);
    }
}

std::optional<double> beatsPerMinute(std::string_view text)
{
    constexpr double least = 5;
    constexpr double most = 1000;
    auto const dot = text.find('.');
    auto const wholes = wholeNumber(trimmed(text.substr(0, dot)));
    if (!wholes) return std::nullopt;
    double value = static_cast<double>(*wholes);
    if (dot != std::string_view::npos) {
        std::string_view const digits = trimmed(text.substr(dot + 1));
        auto const parts = wholeNumber(digits);
        if (!parts) return std::nullopt;
        value +=
            static_cast<double>(*parts) / std::pow(10.0, static_cast<double>(digits.size()));
    }
    return value >= least && value <= most ? std::optional(value) : std::nullopt;
}

constexpr long largestTempoTerm = 64;

// "1/4", "3/8", or old "C" and "C3": so many unit lengths.
std::optional<Rational> beatFrom(std::string_view word, Rational unitLength)
{
    if (word.starts_with('C')) {
        if (word.size() == 1) return unitLength;
        auto const times = wholeNumber(word.substr(1));
        if (!times || *times < 1 || *times > largestTempoTerm) return std::nullopt;
        return unitLength * Rational(*times);
    }
    auto const fraction = fractionFrom(word);
    if (!fraction || fraction->numerator < 1 || fraction->denominator < 1) return std::nullopt;
    if (fraction->numerator > largestTempoTerm || fraction->denominator > largestTempoTerm)
        return std::nullopt;
    return Rational(fraction->numerator, fraction->denominator);
}

std::optional<Rational> beatSum(std::string_view text, Rational unitLength)
{
    constexpr std::size_t mostTerms = 8;
    auto const terms = words(text);
    if (terms.empty() || terms.size() > mostTerms) return std::nullopt;
    Rational sum;
    for (std::string_view term : terms) {
        auto const beat = beatFrom(term, unitLength);
        if (!beat) return std::nullopt;
        sum += *beat;
    }
    return sum;
}

// Takes the texts in quotes out of a tempo.
std::string withoutQuotes(std::string_view text, std::string& quoted)
{
    std::string out;
    bool inside = false;
    for (char c : text) {
        if (c == '"')
            inside = !inside;
        else
            (inside ? quoted : out) += c;
    }
    return out;
}

// A part order, read letter by letter; brackets nest and are counted.
class PartOrder {
public:
    explicit PartOrder(std::string_view text) : m_text(text) {}

    std::optional<std::vector<std::string>> read()
    {
        auto order = sequence(0);
        if (!order || m_at != m_text.size() || order->empty()) return std::nullopt;
        return order;
    }

private:
    using Names = std::vector<std::string>;
    static constexpr std::size_t mostParts = 500;
    static constexpr int deepest = 8;

    std::optional<Names> sequence(int depth)
    {
        Names names;
        while (m_at < m_text.size() && m_text[m_at] != ')') {
            char const c = m_text[m_at++];
            if (c == ' ' || c == '.' || c == '\t' || c == '*' || c == '"') continue;
            Names item;
            if (c == '(') {
                if (depth == deepest) return std::nullopt;
                auto inner = sequence(depth + 1);
                if (!inner || m_at == m_text.size()) return std::nullopt;
                ++m_at; // the closing bracket
                item = *std::move(inner);
            } else if ((c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z')) {
                item = {std::string(1, c)};
            } else {
                return std::nullopt;
            }
            if (!appendTimes(names, item, count())) return std::nullopt;
        }
        return names;
    }

    long count()
    {
        std::size_t const from = m_at;
        while (m_at < m_text.size() && m_text[m_at] >= '0' && m_text[m_at] <= '9') ++m_at;
        if (from == m_at) return 1;
        return wholeNumber(m_text.substr(from, m_at - from)).value_or(0);
    }

    static bool appendTimes(Names& names, Names const& item, long times)
    {
        if (times < 1 ||
            item.size() * static_cast<std::size_t>(times) + names.size() > mostParts)
            return false;
        for (long i = 0; i < times; ++i) names.insert(names.end(), item.begin(), item.end());
        return true;
    }

    std::string_view m_text;
    std::size_t m_at = 0;
};

} // namespace

std::optional<Fraction> fractionFrom(std::string_view text)
{
    std::size_t const stroke = text.find('/');
    auto const numerator = wholeNumber(trimmed(text.substr(0, stroke)));
    if (!numerator) return std::nullopt;
    if (stroke == std::string_view::npos) return Fraction{*numerator, 1};
    auto const denominator = wholeNumber(trimmed(text.substr(stroke + 1)));
    if (!denominator || *denominator == 0) return std::nullopt;
    return Fraction{*numerator, *denominator};
}

std::optional<AbcKey> abcKey(std::string_view text)
{
    auto rest = words(text);
    partFromKey(rest);
    auto key = takeKey(rest);
    if (!key) return std::nullopt;
    bool const listed = lowerCase(text).find("exp") != std::string::npos;
    for (std::string_view word : rest) {
        if (isStaffWord(word) && word.find_first_of(accidentals) != 0) {
            key->octave += octaveProperty(word) + clefOctave(word);
            continue;
        }
        if (!changeSignature(word, key->alter)) return std::nullopt;
    }
    if (listed) key->key = nearestKey(key->key.tonic, key->alter);
    return key;
}

std::optional<int> abcVoiceOctave(std::string_view properties)
{
    std::optional<int> octaves;
    for (std::string_view const word : words(properties))
        if (int const more = octaveProperty(word) + clefOctave(word); more != 0)
            octaves = octaves.value_or(0) + more;
    return octaves;
}

std::optional<AbcMeter> abcMeter(std::string_view text)
{
    constexpr long mostBeats = 64;
    text = trimmed(text);
    if (text == "none") return AbcMeter{};
    if (text == "C") return AbcMeter{music::Meter{4, 4, true}};
    if (text == "C|") return AbcMeter{music::Meter{2, 2, true}};
    std::size_t const stroke = text.find('/');
    if (stroke == std::string_view::npos) return std::nullopt;
    std::string_view beatsText = trimmed(text.substr(0, stroke));
    if (beatsText.starts_with('(') && beatsText.ends_with(')'))
        beatsText = beatsText.substr(1, beatsText.size() - 2);
    auto const beats = sumOf(beatsText);
    auto const unit = wholeNumber(trimmed(text.substr(stroke + 1)));
    if (!beats || !unit || *beats < 1 || *beats > mostBeats) return std::nullopt;
    if (*unit < 1 || *unit > mostBeats || (*unit & (*unit - 1)) != 0) return std::nullopt;
    return AbcMeter{music::Meter{static_cast<int>(*beats), static_cast<int>(*unit), false}};
}

std::optional<Rational> abcUnitLength(std::string_view text)
{
    constexpr Rational shortest{1, 512};
    constexpr Rational longest{8};
    auto const fraction = fractionFrom(trimmed(text));
    if (!fraction) return std::nullopt;
    Rational const length(fraction->numerator, fraction->denominator);
    if (length.denominator() > 512 || length < shortest || length > longest)
        return std::nullopt;
    return length;
}

Rational usualUnitLength(AbcMeter const& meter)
{
    bool const small = meter.meter && barLength(*meter.meter).wholes < Rational(3, 4);
    return small ? Rational(1, 16) : Rational(1, 8);
}

std::optional<AbcTempo> abcTempo(std::string_view text, Rational unitLength)
{
    AbcTempo out;
    std::string const numbers = withoutQuotes(text, out.words);
    std::string_view const bare = trimmed(numbers);
    if (bare.empty()) return out.words.empty() ? std::nullopt : std::optional(out);
    std::size_t const equals = bare.find('=');
    bool const hasBeat = equals != std::string_view::npos;
    auto const beat =
        hasBeat ? beatSum(bare.substr(0, equals), unitLength) : std::optional(unitLength);
    auto const rate = beatsPerMinute(trimmed(hasBeat ? bare.substr(equals + 1) : bare));
    if (!beat || !rate) return std::nullopt;
    out.tempo = tune::Tempo{music::Length{*beat}, *rate};
    return out;
}

std::optional<std::vector<std::string>> abcPartOrder(std::string_view text)
{
    return PartOrder(trimmed(text)).read();
}

bool abcPartName(std::string_view text)
{
    std::size_t const end = std::min(text.find(' '), text.size());
    std::string_view const first = text.substr(0, end);
    if (first.empty() || first[0] < 'A' || first[0] > 'Z') return false;
    bool const plain = std::all_of(first.begin(), first.end(), [](char c) {
        return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || c == '\'' ||
               (c >= '0' && c <= '9');
    });
    return plain && (first.size() <= 2 || end == text.size());
}

} // namespace files
