#include "core/files/tables/tastetable.h"

#include "core/arrange/tastefigures.h"
#include "core/tune/ways.h"

#include <array>
#include <map>

namespace files {

namespace {

using table::Node;
using table::Row;

constexpr int greatest = 1'000'000;

void readFigure(Node const& node, int& figure)
{
    figure = table::whole(node, -greatest, greatest);
}

void readFigure(Node const& node, arrange::Points& figure)
{
    figure = table::whole(node, -greatest, greatest);
}

void readFigure(Node const& node, double& figure) { figure = table::number(node, 0, greatest); }

template<typename T, std::size_t count>
void readFigure(Node const& node, std::array<T, count>& figures)
{
    std::vector<Node> const items = table::list(node);
    if (items.size() != count)
        node.refuse(std::to_string(count) + " figures are wanted, not " +
                    std::to_string(items.size()));
    for (std::size_t i = 0; i < count; ++i) readFigure(items[i], figures[i]);
}

// The groups of a table, each opened once.
class Groups {
public:
    explicit Groups(Row& table) : m_table(table) {}

    Row& operator[](std::string const& name)
    {
        auto const found = m_rows.find(name);
        if (found != m_rows.end()) return found->second;
        return m_rows.emplace(name, Row(m_table[name])).first->second;
    }
    void done() const
    {
        for (auto const& [name, row] : m_rows) row.done();
    }

private:
    Row& m_table;
    std::map<std::string, Row> m_rows;
};

// Figures of a style that are its own.
void readOwnTaste(Row table, arrange::Taste& taste)
{
    Groups groups(table);
    arrange::eachFigure(
        taste, [&](std::string_view inGroup, std::string_view figureName, auto& figure) {
            std::string const group(inGroup), name(figureName);
            if (table.has(group) && groups[group].has(name))
                readFigure(groups[group][name], figure);
        });
    groups.done();
    table.done();
}

} // namespace

void readTaste(Row& table, arrange::Taste& taste)
{
    Groups groups(table);
    arrange::eachFigure(taste,
                        [&](std::string_view group, std::string_view name, auto& figure) {
                            readFigure(groups[std::string(group)][std::string(name)], figure);
                        });
    groups.done();
}

std::vector<arrange::FigurePull> readFigurePulls(table::Node const& node)
{
    constexpr int whole1000 = 1000;
    Row pulledAt(node);
    Groups groups(pulledAt);
    std::vector<arrange::FigurePull> pulls;
    arrange::Taste const names{};
    arrange::eachFigure(
        names, [&](std::string_view inGroup, std::string_view figureName, auto const&) {
            std::string const group(inGroup), name(figureName);
            if (pulledAt.has(group) && groups[group].has(name))
                pulls.push_back(
                    {group, name, table::whole(groups[group][name], -whole1000, whole1000)});
        });
    groups.done();
    pulledAt.done();
    return pulls;
}

void readWayPrices(Row& file, tune::WayPrices& prices)
{
    auto const readRow = [](Node const& node, tune::WayRow& figures) {
        Row row(node);
        for (std::size_t way = 0; way < tune::noteWays; ++way)
            readFigure(row[std::string(wayId(static_cast<tune::Way>(way)))], figures[way]);
        row.done();
    };
    readFigure(file["least"], prices.least);
    readFigure(file["grace_left_out"], prices.graceLeftOut);
    readFigure(file["plucked_again_seconds"], prices.pluckedAgainSeconds);
    Row functions(file["functions"]);
    for (std::size_t f = 0; f < tune::noteFunctions; ++f)
        readRow(functions[std::string(functionId(static_cast<tune::NoteFunction>(f)))],
                prices.byFunction[f]);
    functions.done();
    Row added(file["circumstances"]);
    for (std::size_t c = 0; c < tune::circumstances; ++c)
        readRow(added[std::string(circumstanceId(static_cast<tune::Circumstance>(c)))],
                prices.added[c]);
    added.done();
}

void readStyles(Row& file, arrange::Taste const& usual, tune::WayPrices const& ways,
                std::vector<arrange::Weights>& styles)
{
    table::Names names;
    constexpr int greatestWeight = 100'000;
    for (Node const& node : table::list(file["styles"])) {
        Row row(node);
        arrange::Weights style{
            table::text(row["id"]), table::words(row["name"]), {}, usual, ways};
        Row weights(row["weights"]);
        for (std::size_t i = 0; i < arrange::termCount; ++i) {
            auto const term = termName(static_cast<arrange::Term>(i));
            style.byTerm[i] = table::whole(weights[std::string(term)], 0, greatestWeight);
        }
        weights.done();
        if (row.has("taste")) readOwnTaste(Row(row["taste"]), style.taste);
        row.done();
        names.add(node, style.style);
        styles.push_back(std::move(style));
    }
}

} // namespace files
