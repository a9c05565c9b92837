#pragma once

#include "core/proposal/proposal.h"

#include <map>
#include <ostream>
#include <set>
#include <string>
#include <string_view>

// What the arranger chose, counted over many tunes: what the taste tests ask about and what
// sallow_taste prints.
namespace tasting {

// Shapes chosen, and how often.
using Shapes = std::map<std::string, int>;

// Neighbours in playing that keep, vary or change the shape.
struct Keeping {
    int kept = 0;   // the same shape
    int family = 0; // another that begins alike
    int all = 0;
};

struct Tasting {
    int tunes = 0;
    int positions = 0;
    int refused = 0;
    Shapes inFullBars;
    Shapes inPartsOfBars;
    Shapes last;
    std::map<std::string, Shapes> byMeter; // "6/8 bar", "6/8 part"
    std::map<std::string, Shapes> byKey;   // "D major"
    Keeping inPhrases;                     // inside a part's phrases of four bars
    Keeping acrossPhrases;
    int lowThirds = 0;       // close thirds whose string sounds below C3
    int ofOneShape = 0;      // tunes with one shape in every bar
    std::size_t notes = 0;   // of the left hand, as written
    double seconds = 0;      // that the positions last, each once
    std::size_t strings = 0; // spanned, summed over positions that are not rests
    int sounding = 0;        // positions that are not rests
    int widest = 0;          // strings spanned by any shape
    std::set<std::string> shapes;
    std::size_t candidates = 0;

    double notesASecond() const { return static_cast<double>(notes) / seconds; }
    double meanStrings() const { return static_cast<double>(strings) / sounding; }
};

void add(Tasting& tasting, proposal::Proposal const& proposal);

// Per cent of all positions that one of the shapes has.
double share(Shapes const& shapes, std::initializer_list<std::string_view> names);
std::string commonest(Shapes const& shapes);
double keptShare(Keeping const& keeping);

// The table: shapes by place, meter and key, how long figures hold, and the measures.
void print(std::ostream& out, Tasting const& tasting);

// One tune's plan, a line for each position, with what came next.
void printPlan(std::ostream& out, std::string const& name, proposal::Proposal const& proposal);

} // namespace tasting
