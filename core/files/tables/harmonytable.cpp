#include "core/files/tables/harmonytable.h"

#include "core/files/json.h"

#include <limits>
#include <string>

namespace files {

namespace {

using table::Node;

// Rows of so many whole numbers each, one behind the other.
std::vector<std::int16_t> numbers(Node const& node, std::size_t rows, std::size_t columns)
{
    std::vector<std::int16_t> out;
    out.reserve(rows * columns);
    std::vector<Node> const list = table::list(node);
    if (list.size() != rows)
        node.refuse(std::to_string(rows) + " rows are wanted, not " +
                    std::to_string(list.size()));
    for (Node const& row : list) {
        if (!row.value->is_array() || row.value->size() != columns)
            row.refuse(std::to_string(columns) + " numbers are wanted");
        for (nlohmann::json const& number : *row.value) {
            constexpr int most = std::numeric_limits<std::int16_t>::max();
            if (!number.is_number_integer() || number.get<std::int64_t>() > most ||
                number.get<std::int64_t>() < -most)
                row.refuse("whole numbers below 32,768 are wanted");
            out.push_back(number.get<std::int16_t>());
        }
    }
    return out;
}

} // namespace

void readChordTable(table::Row& file, harmony::ChordTable& learned)
{
    learned.degrees.clear();
    for (Node const& node : table::list(file["degrees"])) {
        auto const degree = harmony::degreeFrom(table::text(node));
        if (!degree) node.refuse(table::text(node) + " is not a degree");
        learned.degrees.push_back(*degree);
    }
    std::size_t const degrees = learned.degrees.size();
    learned.weights = numbers(file["weights"], harmony::featureCount, degrees);
    learned.transitions =
        numbers(file["transitions"], harmony::phrasePlaces * degrees, degrees);
}

void readKeyTable(table::Row& file, harmony::KeyTable& learned)
{
    constexpr std::size_t degrees = 12;
    learned.weights = numbers(file["weights"], harmony::keyTableSize / degrees, degrees);
}

} // namespace files
