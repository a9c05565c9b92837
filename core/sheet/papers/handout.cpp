#include "core/sheet/papers/handout.h"

#include "core/base/words.h"
#include "core/sheet/cautions.h"
#include "core/sheet/papers/papers.h"
#include "core/sheet/papers/stringband.h"
#include "core/sheet/shapes.h"
#include "core/sheet/words.h"

#include <algorithm>
#include <array>
#include <span>

namespace sheet {

using pattern::Pattern;

namespace {

// Heights of the em in spaces.
constexpr double nameHeight = 4.4;
constexpr double titleHeight = 2.6;
constexpr double lineHeight = 1.75;
constexpr double sectionHeight = 1.8;
constexpr double footHeight = 1.3;

constexpr double betweenSections = 2.4;
constexpr double betweenLines = 1.6;
constexpr double leastGap = 1.2;     // between two pictures
constexpr double largestScale = 1.4; // of pictures
constexpr double leastScale = 0.95;
constexpr int shapeBars = 6;
constexpr int practiceBars = 4; // to a line
constexpr int mostEmptyStaves = 6;
constexpr double emptyGap = 5.5;

struct Section {
    Pen pen;
    double height = 0;
};

Section sectionHeading(MusicFont const& font, std::string const& text, double width)
{
    Section section{Pen(font), sectionHeight + 0.7};
    double const baseline = 0.74 * sectionHeight;
    section.pen.words(text, {0, baseline}, sectionHeight, Face::SansBold);
    double const left = widthOf(text, Face::SansBold, sectionHeight) + 1.0;
    section.pen.line({left, baseline - 0.35}, {width, baseline - 0.35}, 0.08, Ink::Quiet);
    return section;
}

// One page being written.
class HandoutPage {
public:
    HandoutPage(Papers& papers, HandoutWish const& wish, Pattern const& pattern)
        : m_papers(papers), m_wish(wish),
          m_pattern(pattern), m_exercise{wish.harp, wish.hand, wish.level, wish.book, wish.key},
          m_triads(triadsOf(wish.key))
    {}

    base::Result<base::Done> write()
    {
        auto const meters = m_wish.meters.empty() ? handoutMeters(m_pattern) : m_wish.meters;
        std::vector<arrange::Arrangement> shapes;
        for (music::Meter meter : meters) {
            auto made = exerciseOf(m_exercise, m_pattern, meter, chords());
            if (!made) return made.error();
            shapes.push_back(*std::move(made));
        }
        auto practice =
            exerciseOf(m_exercise, m_pattern, meters.front(), practiceChords(m_triads));
        if (!practice) return practice.error();

        m_papers.newPage();
        addHead(shapes.front());
        addShapes(shapes.front());
        for (std::size_t i = 0; i < meters.size(); ++i)
            addMusic(exerciseScore(shapes[i]),
                     i == 0 ? base::say("The pattern in {}", music::text(meters[i]))
                            : base::say("The same in {}", music::text(meters[i])),
                     shapeBars);
        addMusic(exerciseScore(*practice), base::said("Eight bars to practise"), practiceBars);
        addEmptyStaves();
        return base::Done{};
    }

private:
    MusicFont const& font() const { return m_papers.font(); }
    double width() const { return m_papers.width(); }

    std::vector<music::Chord> chords() const
    {
        std::vector<music::Chord> chords;
        for (Triad const& triad : m_triads) chords.push_back(triad.chord);
        return chords;
    }
    std::string numeralOf(music::Chord const& chord) const
    {
        auto const found = std::find_if(m_triads.begin(), m_triads.end(),
                                        [&](Triad const& t) { return t.chord == chord; });
        return found == m_triads.end() ? std::string{} : found->numeral;
    }

    void addHead(arrange::Arrangement const& shapes)
    {
        Pen pen(font());
        double y = 0;
        if (std::string const& title = m_wish.words.title; !title.empty()) {
            y += 0.74 * titleHeight;
            pen.words(title, {width() / 2, y}, titleHeight, Face::Bold, Anchor::Centre);
            y += 0.9;
        }
        y += 0.74 * nameHeight;
        pen.words(m_pattern.name, {0, y}, nameHeight, Face::SansBold, Anchor::Left,
                  Ink::PatternLabel);
        double const beside = widthOf(m_pattern.name, Face::SansBold, nameHeight) + 1.6;
        pen.words(base::say("fingers {}", fingersCaption(shapes.positions.front().voicing)),
                  {beside, y}, lineHeight, Face::Sans, Anchor::Left, Ink::Quiet);
        pen.words(music::shown(m_wish.key), {width(), y}, titleHeight, Face::Bold,
                  Anchor::Right);
        for (std::string const& line :
             wrapped(m_pattern.feel, Face::Italic, lineHeight, width())) {
            y += 1.3 * lineHeight;
            pen.words(line, {0, y}, lineHeight, Face::Italic);
        }
        for (std::string const& note : m_wish.words.notes)
            for (std::string const& line : wrapped(note, Face::Roman, lineHeight, width())) {
                y += 1.3 * lineHeight;
                pen.words(line, {0, y}, lineHeight, Face::Roman);
            }
        m_papers.add(pen, y + 0.4, 0);

        Pen band(font());
        double const height =
            drawStringBand(band, stringBand(shapes, shapes.positions.front().voicing), width());
        m_papers.add(band, height, 1.8);
    }

    // The shape on every chord: in one row, or in two where the width would make it too small.
    void addShapes(arrange::Arrangement const& shapes)
    {
        std::vector<ShapePicture> pictures;
        int fingers = 2; // on one picture
        for (arrange::ArrangedPosition const& on : shapes.positions) {
            ShapePicture picture =
                shapeOn(shapes.harp, shapes.levers, on.voicing, on.position.played.front().at);
            picture.title = music::shown(on.position.chord);
            picture.ofChord = true;
            picture.caption = numeralOf(on.position.chord);
            fingers = std::max(fingers, static_cast<int>(picture.dots.size()));
            pictures.push_back(std::move(picture));
        }
        Section heading =
            sectionHeading(font(), base::said("On the chords of the key"), width());
        double y = heading.height;
        std::span<ShapePicture const> const all = pictures;
        if (scaleFor(all, fingers) >= leastScale) {
            y += drawRow(heading.pen, all, fingers, y);
        } else {
            std::size_t const half = (all.size() + 1) / 2;
            y += drawRow(heading.pen, all.first(half), fingers, y) + betweenLines;
            y += drawRow(heading.pen, all.subspan(half), fingers, y);
        }
        m_papers.add(heading.pen, y, betweenSections);
    }

    static double widthOfAll(std::span<ShapePicture const> pictures, int fingers)
    {
        double sum = 0;
        for (ShapePicture const& picture : pictures)
            sum += shapePictureBox(picture, fingers).right;
        return sum;
    }

    double scaleFor(std::span<ShapePicture const> pictures, int fingers) const
    {
        double const gaps = static_cast<double>(pictures.size()) - 1;
        return std::min(largestScale,
                        (width() - gaps * leastGap) / widthOfAll(pictures, fingers));
    }

    // Answers the height.
    double drawRow(Pen& pen, std::span<ShapePicture const> pictures, int fingers,
                   double y) const
    {
        double const scale = scaleFor(pictures, fingers);
        double const taken = widthOfAll(pictures, fingers) * scale;
        double const gaps = static_cast<double>(pictures.size()) - 1;
        double const gap = gaps > 0 ? std::min(4.5, (width() - taken) / gaps) : 0.0;
        double x = (width() - taken - gaps * gap) / 2;
        double height = 0;
        for (ShapePicture const& picture : pictures) {
            Box const box = shapePictureBox(picture, fingers, scale);
            drawShapePicture(pen, picture, {x, y}, fingers, scale);
            x += box.right + gap;
            height = std::max(height, box.bottom);
        }
        return height;
    }

    void addMusic(Score const& score, std::string const& heading, int barsToALine)
    {
        Section const head = sectionHeading(font(), heading, width());
        auto const lines = musicLines(score, font(), width(), barsToALine);
        m_papers.add(head.pen, head.height, betweenSections, lines.front().height);
        bool first = true;
        for (MusicLine const& line : lines) {
            m_papers.add(line.pen, line.height, first ? 0 : betweenLines);
            first = false;
        }
    }

    void addEmptyStaves()
    {
        Section head = sectionHeading(font(), base::said("Write your own"), width());
        double const room = m_papers.room() - betweenSections - head.height - 1.5;
        int const fitting = static_cast<int>((room + emptyGap) / (4 + emptyGap));
        if (fitting < 1) return;
        Pen staves(font());
        double const height =
            drawEmptyStaves(staves, std::min(fitting, mostEmptyStaves), emptyGap, width());
        m_papers.add(head.pen, head.height, betweenSections, height);
        m_papers.add(staves, height, 1.5);
    }

    Papers& m_papers;
    HandoutWish const& m_wish;
    Pattern const& m_pattern;
    Exercise m_exercise;
    std::vector<Triad> m_triads;
};

double drawHandoutFoot(Pen& pen, HandoutWish const& wish, double width)
{
    std::vector<std::pair<std::string, Ink>> lines{{base::said(care), Ink::Caution}};
    if (!wish.words.copyright.empty()) lines.emplace_back(wish.words.copyright, Ink::Words);
    double y = 0;
    for (auto line = lines.rbegin(); line != lines.rend(); ++line) {
        double const needed = widthOf(line->first, Face::Italic, footHeight);
        double const height = needed <= width ? footHeight : footHeight * width / needed;
        pen.words(line->first, {width / 2, y}, height, Face::Italic, Anchor::Centre,
                  line->second);
        y -= 1.35 * footHeight;
    }
    return -y + 1.0;
}

} // namespace

std::vector<music::Meter> handoutMeters(Pattern const& pattern)
{
    constexpr std::array usual{music::Meter{4, 4}, music::Meter{6, 8},  music::Meter{3, 4},
                               music::Meter{2, 4}, music::Meter{12, 8}, music::Meter{9, 8}};
    std::vector<music::Meter> meters;
    for (music::Meter meter : usual)
        if (meters.size() < 2 && pattern::suits(pattern, meter)) meters.push_back(meter);
    if (meters.empty()) meters.push_back(usual.front());
    return meters;
}

std::vector<music::Chord> practiceChords(std::vector<Triad> const& triads)
{
    constexpr std::array<std::size_t, 8> order{0, 3, 1, 2, 0, 4, 2, 0};
    std::vector<music::Chord> chords;
    for (std::size_t index : order) chords.push_back(triads[index % triads.size()].chord);
    return chords;
}

base::Result<Document> handout(HandoutWish const& wish, MusicFont const& font,
                               SheetStyle const& style)
{
    Papers papers(font, style);
    Pen foot(font);
    double const footRoom = drawHandoutFoot(foot, wish, papers.width());
    papers.setFoot(std::move(foot), footRoom);
    std::string names;
    for (Pattern const& pattern : wish.patterns) {
        auto written = HandoutPage(papers, wish, pattern).write();
        if (!written) return written.error();
        names += (names.empty() ? "" : ", ") + pattern.name;
    }
    std::string const title = wish.words.title.empty()
                                  ? base::say("{} in {}", names, music::shown(wish.key))
                                  : wish.words.title;
    return std::move(papers).document(title, wish.words.arranger);
}

} // namespace sheet
