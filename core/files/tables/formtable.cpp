#include "core/files/tables/formtable.h"

#include "core/files/json.h"

#include <algorithm>

namespace files {

namespace {

using table::Node;
using table::Row;

// {"fullness": 150}: sliders turned, those in the middle left out.
std::vector<arrange::Turned> turnedBy(Node const& node, Tables const& tables)
{
    Row row(node);
    std::vector<arrange::Turned> out;
    for (arrange::Slider const& slider : tables.sliders)
        if (row.has(slider.id))
            out = arrange::withSlider(std::move(out), slider,
                                      table::whole(row[slider.id], 0, arrange::sliderMost));
    row.done();
    return out;
}

proposal::RightHand rightOf(Node const& node)
{
    std::string const name = table::text(node);
    if (name == "bare") return proposal::RightHand::Bare;
    if (name == "closes") return proposal::RightHand::Closes;
    if (name != "full") node.refuse("bare, closes or full, not " + name);
    return proposal::RightHand::Full;
}

// What a manner pays for notes that it does not want.
struct Prices {
    int noteTooMany = 0;
    int loneString = 0;
};

proposal::TimeManner mannerFrom(Node const& node, Tables const& tables, Prices const& prices)
{
    Row row(node);
    proposal::TimeManner manner{table::text(row["id"]), table::words(row["name"]),
                                turnedBy(row["sliders"], tables),
                                turnedBy(row["second_strain"], tables)};
    if (row.has("right")) manner.right = rightOf(row["right"]);
    if (row.has("octave")) manner.octave = table::whole(row["octave"], -1, 1);
    if (row.has("most_notes")) {
        manner.mostNotes = table::whole(row["most_notes"], 1, 12);
        manner.noteTooMany = prices.noteTooMany;
    }
    if (row.has("pairs_to_level")) {
        manner.pairsTo = table::whole(row["pairs_to_level"], 1, 5);
        manner.loneString = prices.loneString;
    }
    row.done();
    return manner;
}

proposal::NamedForm formFrom(Node const& node, Tables const& tables)
{
    Row row(node);
    proposal::NamedForm form{table::text(row["id"]), table::words(row["name"]), {}};
    for (Node const& time : table::list(row["times"])) {
        auto const manner =
            std::ranges::find(tables.timeManners, table::text(time), &proposal::TimeManner::id);
        if (manner == tables.timeManners.end()) time.refuse("no manner: " + table::text(time));
        form.times.push_back(*manner);
    }
    row.done();
    if (form.times.size() > proposal::mostTimes) node.refuse("too many times");
    return form;
}

} // namespace

void readForms(Row& file, Tables& tables)
{
    constexpr int dearest = 100'000;
    Prices const prices{table::whole(file["note_too_many"], 0, dearest),
                        table::whole(file["lone_string"], 0, dearest)};
    table::Names manners;
    for (Node const& node : table::list(file["manners"])) {
        tables.timeManners.push_back(mannerFrom(node, tables, prices));
        manners.add(node, tables.timeManners.back().id);
    }
    table::Names forms;
    for (Node const& node : table::list(file["forms"])) {
        tables.forms.push_back(formFrom(node, tables));
        forms.add(node, tables.forms.back().id);
    }
}

} // namespace files
