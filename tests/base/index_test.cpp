#include "core/base/index.h"
#include "core/base/list.h"
#include "core/base/row.h"

#include <catch2/catch.hpp>

#include <map>
#include <optional>
#include <stdexcept>
#include <string>

namespace {

struct Row;
struct Seat;
using RowIndex = base::Index<Row>;
using SeatIndex = base::Index<Seat>;
using Rows = base::List<RowIndex, std::string>;

template<class L, class I>
concept LeadsInto = requires(L list, I index) {
    list[index];
    list.at(index);
};
template<class A, class B>
concept Comparable = requires(A a, B b) { a == b; } || requires(A a, B b) { a < b; };
template<class A, class B>
concept Subtractable = requires(A a, B b) { a - b; };
template<class A, class B>
concept Addable = requires(A a, B b) { a + b; };
template<class To, class From>
concept MadeOf = requires(From from) { To(from); };

static_assert(LeadsInto<Rows, RowIndex>);
static_assert(!LeadsInto<Rows, SeatIndex>, "an index of another kind leads nowhere");
static_assert(!LeadsInto<Rows, std::size_t>, "a bare number is no index");
static_assert(LeadsInto<base::Row<int>, std::size_t>, "a row is counted by bare numbers");
static_assert(!LeadsInto<base::Row<int>, RowIndex>, "and no index of a list leads into it");
static_assert(Comparable<RowIndex, RowIndex>);
static_assert(Comparable<RowIndex, int>);
static_assert(!Comparable<RowIndex, SeatIndex>, "kinds are not compared");
static_assert(Subtractable<RowIndex, RowIndex> && Subtractable<RowIndex, int>);
static_assert(!Subtractable<RowIndex, SeatIndex>, "kinds have no distance");
static_assert(Addable<RowIndex, int>);
static_assert(!Addable<RowIndex, RowIndex>, "two places have no sum");
static_assert(!Addable<RowIndex, SeatIndex>);
static_assert(std::is_same_v<decltype(RowIndex(3) + 1), RowIndex>);
static_assert(std::is_same_v<decltype(RowIndex(3) - RowIndex(1)), int>);
static_assert(!std::is_convertible_v<RowIndex, SeatIndex>, "one kind does not become another");
static_assert(!std::is_constructible_v<bool, RowIndex>, "the first is an index like others");
static_assert(sizeof(RowIndex) == sizeof(int));

RowIndex after(RowIndex row) { return row + 1; }

} // namespace

TEST_CASE("An index counts from 0 and goes up and down in its kind", "[index]")
{
    RowIndex row;
    CHECK(row == 0);
    CHECK(++row == RowIndex(1));
    CHECK(row++ == 1);
    CHECK(row == 2);
    CHECK(--row == 1);
    row += 4;
    row -= 2;
    CHECK(row.value() == 3);
    CHECK(row + 2 - RowIndex(1) == 4);
    CHECK(row - 1 < row);
    CHECK(row > 2);
    CHECK(std::max(row, RowIndex(7)) == 7);
}

TEST_CASE("A number that is written is an index, one that is computed is named as one",
          "[index]")
{
    CHECK(after(4) == 5);
    int const computed = after(4);
    CHECK(after(RowIndex(computed)) == 6);
    std::map<RowIndex, std::string> names{{0, "first"}, {3, "last"}};
    CHECK(names.at(3) == "last");
    std::optional<RowIndex> chosen;
    CHECK(chosen != 3);
    chosen = after(2);
    CHECK(chosen == 3);
}

TEST_CASE("A list is read and written by its indices, and goes through them in order",
          "[index]")
{
    Rows rows{"a", "b", "c"};
    CHECK(rows.size() == 3);
    CHECK(rows[1] == "b");
    rows[after(1)] = "d";
    std::string all;
    for (RowIndex const row : rows.indices()) all += std::to_string(row) + rows[row];
    CHECK(all == "0a1b2d");
    CHECK(rows.beyond() == 3);
    CHECK(rows.holds(2));
    CHECK_FALSE(rows.holds(3));
    CHECK_FALSE(rows.holds(after(0) - 2));
    CHECK_THROWS_AS(rows.at(rows.beyond()), std::out_of_range);
    CHECK(rows.indexOf(std::ranges::find(rows, "d")) == 2);
    CHECK(*rows.from(1) == "b");
    CHECK(Rows{}.empty());
    for (RowIndex const row : Rows{}.indices()) FAIL("no list has row " << row);
}

TEST_CASE("A list grows, shrinks and is compared as its values are", "[index]")
{
    Rows rows(2, "x");
    rows.push_back("y");
    rows.emplace_back("z");
    CHECK(rows == Rows{"x", "x", "y", "z"});
    rows.insert(rows.from(1), "w");
    rows.erase(rows.begin());
    CHECK(rows == Rows{"w", "x", "y", "z"});
    rows.erase(rows.from(1), rows.from(3));
    CHECK(rows == Rows{"w", "z"});
    rows.pop_back();
    CHECK(rows.front() == "w");
    CHECK(rows.back() == "w");
    CHECK(rows != Rows(2, "w"));
    rows.resize(3);
    CHECK(rows[2].empty());
    CHECK(rows.values() == std::vector<std::string>{"w", "", ""});
    rows.clear();
    CHECK(rows.empty());
}

TEST_CASE("A stretch of indices that ends before it begins has none", "[index]")
{
    int count = 0;
    for (RowIndex row : base::Indices<RowIndex>(RowIndex(2), RowIndex(5))) count += row;
    CHECK(count == 2 + 3 + 4);
    for (RowIndex row : base::Indices<RowIndex>(RowIndex(5), RowIndex(2))) count += row;
    CHECK(count == 9);
}
