#pragma once

#include "tests/places.h"

#include <catch2/catch.hpp>

#include <fstream>
#include <map>
#include <optional>
#include <string>
#include <vector>

// The collected facts of the trade, tables beside the project on a developer's machine.
namespace trade {

using Row = std::map<std::string, std::string>; // cells by column

// Cells of one line; a cell in double quotes may hold commas.
inline std::vector<std::string> cells(std::string const& line)
{
    std::vector<std::string> all(1);
    bool quoted = false;
    for (char c : line) {
        if (c == '"')
            quoted = !quoted;
        else if (c == ',' && !quoted)
            all.emplace_back();
        else if (c != '\r')
            all.back() += c;
    }
    return all;
}

// Rows of a table; none where it is absent, and then the test says that it is skipped.
inline std::optional<std::vector<Row>> table(std::string const& name)
{
    std::ifstream in(places::outside() + "/trade/" + name);
    if (!in) {
        WARN("SKIPPED: the trade's table " + name + " is absent");
        return std::nullopt;
    }
    std::string line;
    std::getline(in, line);
    std::vector<std::string> const columns = cells(line);
    std::vector<Row> rows;
    while (std::getline(in, line)) {
        std::vector<std::string> const values = cells(line);
        REQUIRE(values.size() == columns.size());
        rows.emplace_back();
        for (std::size_t i = 0; i < columns.size(); ++i) rows.back()[columns[i]] = values[i];
    }
    return rows;
}

} // namespace trade
