#pragma once

#include "tests/sheet/boxes.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>
#include <vector>

// Counts what must not be on a page, by kind: marks beyond the margins, marks that lie on each
// other, stems off their noteheads' anchors, lines that are not filled.
namespace measure {

using Counts = std::map<std::string, int>;

inline void add(Counts& to, Counts const& from)
{
    for (auto const& [kind, count] : from) to[kind] += count;
}

struct Margins {
    double mm = 14;
    double braceMm = 6; // the brace hangs in the margin
};

// What a mark is to a reader.
enum class Sign {
    Head,
    Accidental,
    Dot,
    Flag,
    Rest,
    Finger,
    Label,
    Chord,
    Lever,
    Words,
    Bracket,
    Bead,  // of the string path
    Frame, // a side of a box of levers
    Tuplet,
    Other
};
inline char const* const signNames[] = {
    "notehead", "accidental", "dot",     "flag", "rest",      "finger", "label", "chord",
    "lever",    "words",      "bracket", "bead", "lever box", "tuplet", "other"};

inline bool between(char32_t code, char32_t first, char32_t last)
{
    return first <= code && code <= last;
}

// Inks of what belongs to a string where strings are coloured.
inline bool isString(sheet::Ink ink)
{
    return ink == sheet::Ink::Music || ink == sheet::Ink::RedString ||
           ink == sheet::Ink::BlueString;
}
// A letter in a notehead, or on a bead of the string path.
inline bool isLetter(sheet::Words const& words)
{
    return words.ink == sheet::Ink::Paper || isString(words.ink);
}

inline Sign signOf(sheet::Mark const& mark)
{
    namespace g = sheet::glyph;
    if (auto const* glyph = std::get_if<sheet::Glyph>(&mark.what)) {
        if (glyph->ink == sheet::Ink::Finger) return Sign::Finger;
        if (glyph->ink == sheet::Ink::Paper) return Sign::Other;
        if (isNotehead(glyph->code)) return Sign::Head;
        if (between(glyph->code, g::tuplet0, g::tuplet0 + 9)) return Sign::Tuplet;
        if (between(glyph->code, g::accidentalFlat, g::accidentalDoubleFlat))
            return Sign::Accidental;
        if (glyph->code == g::augmentationDot) return Sign::Dot;
        if (between(glyph->code, g::flag8thUp, g::flag64thDown)) return Sign::Flag;
        if (between(glyph->code, g::restDoubleWhole, g::rest64th)) return Sign::Rest;
        return Sign::Other;
    }
    if (auto const* words = std::get_if<sheet::Words>(&mark.what)) {
        if (isLetter(*words)) return Sign::Other;
        if (words->ink == sheet::Ink::PatternLabel) return Sign::Label;
        if (words->ink == sheet::Ink::Chord) return Sign::Chord;
        if (words->ink == sheet::Ink::Lever) return Sign::Lever;
        return Sign::Words;
    }
    if (auto const* ring = std::get_if<sheet::Circle>(&mark.what))
        return ring->thicknessMm > 0 && isString(ring->ink) ? Sign::Bead : Sign::Other;
    auto const* line = std::get_if<sheet::Line>(&mark.what);
    if (line && line->ink == sheet::Ink::Lever) return Sign::Frame;
    return line && line->ink == sheet::Ink::Finger ? Sign::Bracket : Sign::Other;
}

struct Placed {
    Sign sign;
    sheet::Box box;
};

inline std::vector<Placed> placedSigns(sheet::Page const& page, sheet::MusicFont const& font)
{
    std::vector<Placed> out;
    for (sheet::Mark const& mark : page.marks)
        if (Sign const sign = signOf(mark); sign != Sign::Other)
            out.push_back({sign, box(mark, font)});
    std::sort(out.begin(), out.end(),
              [](Placed const& a, Placed const& b) { return a.box.left < b.box.left; });
    return out;
}

inline bool overlap(sheet::Box a, sheet::Box b, double by)
{
    return a.left + by < b.right && b.left + by < a.right && a.top + by < b.bottom &&
           b.top + by < a.bottom;
}

// Pairs that touch by nature: a flag hangs by its own head, brackets meet each other.
inline bool belongTogether(Placed const& a, Placed const& b, double spaceMm)
{
    // Noteheads a second apart stand on both sides of one stem and share its width.
    if (a.sign == Sign::Head && b.sign == Sign::Head)
        return std::min(a.box.right, b.box.right) - std::max(a.box.left, b.box.left) <
               0.15 * spaceMm;
    auto const is = [&](Sign x, Sign y) {
        return (a.sign == x && b.sign == y) || (a.sign == y && b.sign == x);
    };
    if (is(Sign::Bracket, Sign::Bracket) || is(Sign::Bead, Sign::Bead) ||
        is(Sign::Frame, Sign::Frame) || is(Sign::Frame, Sign::Lever))
        return true;
    if (is(Sign::Flag, Sign::Head)) {
        sheet::Box const flag = a.sign == Sign::Flag ? a.box : b.box;
        sheet::Box const head = a.sign == Sign::Flag ? b.box : a.box;
        return flag.left < head.right + 0.2 * spaceMm && flag.left > head.left - 0.2 * spaceMm;
    }
    return false;
}

inline Counts overlaps(sheet::Page const& page, sheet::MusicFont const& font, double spaceMm)
{
    constexpr double byMm = 0.12; // boxes may touch
    Counts counts;
    std::vector<Placed> const signs = placedSigns(page, font);
    for (std::size_t i = 0; i < signs.size(); ++i)
        for (std::size_t j = i + 1; j < signs.size(); ++j) {
            if (signs[j].box.left > signs[i].box.right) break;
            if (!overlap(signs[i].box, signs[j].box, byMm)) continue;
            if (belongTogether(signs[i], signs[j], spaceMm)) continue;
            auto const [first, second] = std::minmax(signs[i].sign, signs[j].sign);
            ++counts[std::string(signNames[static_cast<int>(first)]) + " on " +
                     signNames[static_cast<int>(second)]];
        }
    // Ties and slurs, by points along them away from their ends.
    for (sheet::Bow const& bow : allOf<sheet::Bow>(page))
        for (Placed const& placed : signs) {
            if (placed.sign == Sign::Bracket || placed.box.left > bow.to.x ||
                placed.box.right < bow.from.x)
                continue;
            bool touched = false;
            for (int i = 4; i <= 16 && !touched; ++i) {
                sheet::Point const p = sheet::onBow(bow, i / 20.0);
                touched = p.x > placed.box.left + byMm && p.x < placed.box.right - byMm &&
                          p.y > placed.box.top + byMm && p.y < placed.box.bottom - byMm;
            }
            if (touched)
                ++counts[std::string("tie or slur through ") +
                         signNames[static_cast<int>(placed.sign)]];
        }
    return counts;
}

// Stems that run through what is not a note, and placing brackets across a bar line.
inline Counts linesThrough(sheet::Page const& page, sheet::MusicFont const& font,
                           double spaceMm)
{
    double const stem = font.engraving.at("stemThickness") * spaceMm;
    double const thin = font.engraving.at("thinBarlineThickness") * spaceMm;
    constexpr double byMm = 0.12;
    Counts counts;
    std::vector<Placed> const signs = placedSigns(page, font);
    for (sheet::Mark const& mark : page.marks) {
        auto const* line = std::get_if<sheet::Line>(&mark.what);
        if (!line || line->from.x != line->to.x || line->ink != sheet::Ink::Music) continue;
        bool const isStem = std::abs(line->thicknessMm - stem) < 1e-6;
        bool const isBarLine = std::abs(line->thicknessMm - thin) < 1e-6 &&
                               std::abs(line->to.y - line->from.y) > 3.9 * spaceMm;
        if (!isStem && !isBarLine) continue;
        sheet::Box const b = box(mark, font);
        for (Placed const& placed : signs) {
            if (placed.box.left + byMm > b.right || placed.box.right - byMm < b.left ||
                placed.box.top + byMm > b.bottom || placed.box.bottom - byMm < b.top)
                continue;
            bool const outsideNotes =
                placed.sign == Sign::Finger || placed.sign == Sign::Words ||
                placed.sign == Sign::Chord || placed.sign == Sign::Lever ||
                placed.sign == Sign::Label || placed.sign == Sign::Tuplet ||
                placed.sign == Sign::Frame || placed.sign == Sign::Bead;
            if (isStem && outsideNotes)
                ++counts[std::string("stem through ") +
                         signNames[static_cast<int>(placed.sign)]];
            if (isBarLine && placed.sign != Sign::Words && placed.sign != Sign::Other)
                ++counts[std::string("bar line through ") +
                         signNames[static_cast<int>(placed.sign)]];
        }
    }
    return counts;
}

inline int outside(sheet::Page const& page, sheet::MusicFont const& font, Margins margins)
{
    int count = 0;
    for (sheet::Mark const& mark : page.marks) {
        auto const* glyph = std::get_if<sheet::Glyph>(&mark.what);
        bool const brace = glyph && glyph->code == sheet::glyph::brace;
        double const left = margins.mm - (brace ? margins.braceMm : 0.3);
        sheet::Box const b = box(mark, font);
        if (b.left < left || b.right > page.widthMm - margins.mm + 0.6 ||
            b.top < margins.mm - 0.3 || b.bottom > page.heightMm - margins.mm + 0.6) {
            ++count;
        }
    }
    return count;
}

// SMuFL 1.4, glyphsWithAnchors: stemUpSE and stemDownNW.
inline int stemsOffAnchor(sheet::Page const& page, sheet::MusicFont const& font, double spaceMm)
{
    double const thickness = font.engraving.at("stemThickness");
    std::vector<sheet::Point> anchors; // middle of the stem at the head
    for (sheet::Glyph const& head : allOf<sheet::Glyph>(page)) {
        if (!isNotehead(head.code) || !font.anchors.count(head.code)) continue;
        double const s = head.staffSpaceMm;
        auto const& of = font.anchors.at(head.code);
        if (!of.count("stemUpSE")) continue;
        anchors.push_back({head.at.x + s * (of.at("stemUpSE").x - thickness / 2),
                           head.at.y - s * of.at("stemUpSE").y});
        anchors.push_back({head.at.x + s * (of.at("stemDownNW").x + thickness / 2),
                           head.at.y - s * of.at("stemDownNW").y});
    }
    int count = 0;
    for (sheet::Line const& line : allOf<sheet::Line>(page)) {
        bool const stem = line.from.x == line.to.x && line.ink == sheet::Ink::Music &&
                          std::abs(line.thicknessMm - thickness * spaceMm) < 1e-6;
        if (!stem) continue;
        if (std::none_of(anchors.begin(), anchors.end(), [&](sheet::Point p) {
                return std::abs(p.x - line.from.x) < 1e-6 && std::abs(p.y - line.from.y) < 1e-6;
            }))
            ++count;
    }
    return count;
}

// Staff lines that end before the right margin; those of the last system may.
inline int unfilledLines(sheet::Page const& page, bool lastPage, int staves, double marginMm)
{
    auto const lines = staffLines(page);
    int count = 0;
    std::size_t const mayBeShort = lastPage ? static_cast<std::size_t>(5 * staves) : 0;
    for (std::size_t i = 0; i + mayBeShort < lines.size(); ++i)
        if (std::abs(lines[i].to.x - (page.widthMm - marginMm)) > 0.05) ++count;
    return count;
}

// Bar lines that do not run from the top of a system's first staff to the foot of its last.
inline int barLinesAstray(sheet::Page const& page, sheet::MusicFont const& font, double spaceMm)
{
    double const thin = font.engraving.at("thinBarlineThickness") * spaceMm;
    double const overhang = font.engraving.at("staffLineThickness") * spaceMm / 2;
    std::vector<double> tops;
    std::vector<double> feet;
    auto const lines = staffLines(page);
    for (std::size_t i = 0; i + 4 < lines.size(); i += 5) {
        tops.push_back(lines[i].from.y - overhang);
        feet.push_back(lines[i + 4].from.y + overhang);
    }
    auto const has = [](std::vector<double> const& ys, double y) {
        return std::any_of(ys.begin(), ys.end(),
                           [y](double other) { return std::abs(other - y) < 1e-3; });
    };
    int count = 0;
    for (sheet::Line const& line : allOf<sheet::Line>(page)) {
        bool const upright = line.from.x == line.to.x && line.ink == sheet::Ink::Music &&
                             std::abs(line.thicknessMm - thin) < 1e-6 &&
                             line.to.y - line.from.y > 3.9 * spaceMm;
        if (upright && !(has(tops, line.from.y) && has(feet, line.to.y))) ++count;
    }
    return count;
}

// Between two lines of a staff.
inline double spaceMmOf(sheet::Page const& page)
{
    auto const lines = staffLines(page);
    return lines.size() < 2 ? 7.5 / 4 : lines[1].from.y - lines[0].from.y;
}

inline Counts violations(sheet::Document const& document, sheet::MusicFont const& font,
                         int staves, Margins margins = {})
{
    Counts counts;
    auto const count = [&counts](char const* kind, int found) {
        if (found > 0) counts[kind] += found;
    };
    for (std::size_t p = 0; p < document.pages.size(); ++p) {
        sheet::Page const& page = document.pages[p];
        double const spaceMm = spaceMmOf(page);
        bool const last = p + 1 == document.pages.size();
        add(counts, overlaps(page, font, spaceMm));
        add(counts, linesThrough(page, font, spaceMm));
        Margins own = margins;
        own.braceMm *= std::max(1.0, spaceMm / (sheet::usualStaffMm / 4));
        count("outside the margins", outside(page, font, own));
        count("stem off its anchor", stemsOffAnchor(page, font, spaceMm));
        count("staff line short of the margin", unfilledLines(page, last, staves, margins.mm));
        count("bar line astray", barLinesAstray(page, font, spaceMm));
    }
    return counts;
}

} // namespace measure
