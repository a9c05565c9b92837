#include "tests/reference/latticenumbers.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <limits>
#include <random>
#include <sstream>

namespace reference {

namespace {

namespace fs = std::filesystem;

// A folder of its own that is taken away again.
class Folder {
public:
    Folder() : m_path(fs::temp_directory_path() / ("sallow-cbc-" + suffix()))
    {
        fs::create_directories(m_path);
    }
    ~Folder()
    {
        std::error_code ignored;
        fs::remove_all(m_path, ignored);
    }
    Folder(Folder const&) = delete;
    Folder& operator=(Folder const&) = delete;
    fs::path file(char const* name) const { return m_path / name; }

private:
    static std::string suffix()
    {
        std::random_device source;
        return std::to_string(source()) + "-" + std::to_string(source());
    }
    fs::path m_path;
};

std::string x(std::size_t position, std::size_t a)
{
    return "x_" + std::to_string(position) + "_" + std::to_string(a);
}

std::string y(std::size_t position, std::size_t a, std::size_t b)
{
    return "y_" + std::to_string(position) + "_" + std::to_string(a) + "_" + std::to_string(b);
}

void writeTerm(std::ostream& out, Cost cost, std::string const& name)
{
    if (cost != 0) out << (cost < 0 ? " - " : " + ") << std::abs(cost) << ' ' << name << '\n';
}

// CPLEX-LP text, with the model of the project's science notes: minimise own and pair costs;
// one candidate a position; flow out of a candidate, and into it, equals its choice.
void writeProgram(std::ostream& out, LatticeNumbers const& n)
{
    out << "Minimize\n obj:\n";
    for (std::size_t i = 0; i < n.own.size(); ++i)
        for (std::size_t a = 0; a < n.own[i].size(); ++a) writeTerm(out, n.own[i][a], x(i, a));
    for (std::size_t i = 0; i < n.pairs.size(); ++i)
        for (std::size_t a = 0; a < n.own[i].size(); ++a)
            for (std::size_t b = 0; b < n.own[i + 1].size(); ++b)
                writeTerm(out, n.pairs[i][a][b], y(i, a, b));
    out << "Subject To\n";
    for (std::size_t i = 0; i < n.own.size(); ++i) {
        for (std::size_t a = 0; a < n.own[i].size(); ++a) out << " + " << x(i, a) << '\n';
        out << " = 1\n";
        if (n.locked[i]) out << x(i, static_cast<std::size_t>(*n.locked[i])) << " = 1\n";
    }
    for (std::size_t i = 0; i < n.pairs.size(); ++i) {
        for (std::size_t a = 0; a < n.own[i].size(); ++a) {
            for (std::size_t b = 0; b < n.own[i + 1].size(); ++b)
                out << " + " << y(i, a, b) << '\n';
            out << " - " << x(i, a) << " = 0\n";
        }
        for (std::size_t b = 0; b < n.own[i + 1].size(); ++b) {
            for (std::size_t a = 0; a < n.own[i].size(); ++a)
                out << " + " << y(i, a, b) << '\n';
            out << " - " << x(i + 1, b) << " = 0\n";
        }
    }
    out << "Binaries\n";
    for (std::size_t i = 0; i < n.own.size(); ++i)
        for (std::size_t a = 0; a < n.own[i].size(); ++a) out << x(i, a) << '\n';
    out << "End\n";
}

// Lines of cbc's solution: "  12 x_3_4   1   0", beneath a first line that says "Optimal".
std::optional<std::vector<int>> readChoice(std::istream& in, std::size_t positions)
{
    std::string line;
    if (!std::getline(in, line) || line.rfind("Optimal", 0) != 0) return std::nullopt;
    std::vector<int> choice(positions, -1);
    while (std::getline(in, line)) {
        std::istringstream words(line);
        std::string number;
        std::string name;
        double value = 0;
        if (!(words >> number >> name >> value) || name.rfind("x_", 0) != 0 || value < 0.5)
            continue;
        std::size_t const split = name.find('_', 2);
        choice.at(std::stoul(name.substr(2, split - 2))) = std::stoi(name.substr(split + 1));
    }
    return choice;
}

} // namespace

LatticeNumbers latticeNumbers(std::string const& latticeJson)
{
    auto const json = nlohmann::json::parse(latticeJson);
    LatticeNumbers out;
    for (auto const& position : json.at("positions")) {
        std::vector<Cost> costs;
        std::vector<Cost> regrets;
        for (auto const& candidate : position.at("candidates")) {
            costs.push_back(candidate.at("cost").get<Cost>());
            regrets.push_back(candidate.at("regret").get<Cost>());
        }
        out.own.push_back(costs);
        out.regrets.push_back(regrets);
        auto const& locked = position.at("locked");
        out.locked.push_back(locked.is_null() ? std::nullopt
                                              : std::optional<int>(locked.get<int>()));
    }
    out.pairs = json.at("pairs").get<decltype(out.pairs)>();
    out.bestChoice = json.at("best").at("choice").get<std::vector<int>>();
    out.bestCost = json.at("best").at("cost").get<Cost>();
    return out;
}

namespace {

class Reader {
public:
    explicit Reader(std::string const& bytes) : m_bytes(bytes) {}
    bool good() const { return m_good; }
    bool atEnd() const { return m_at == m_bytes.size(); }
    std::string text(std::size_t length)
    {
        std::string const out = m_bytes.substr(std::min(m_at, m_bytes.size()), length);
        m_at += length;
        m_good = m_good && m_at <= m_bytes.size();
        return out;
    }
    std::uint64_t whole(std::size_t length)
    {
        std::uint64_t out = 0;
        std::string const bytes = text(length);
        for (std::size_t i = bytes.size(); i-- > 0;)
            out = out << 8U | static_cast<unsigned char>(bytes[i]);
        return out;
    }
    std::size_t count() { return static_cast<std::size_t>(whole(4)); }
    Cost small() { return static_cast<std::int32_t>(static_cast<std::uint32_t>(whole(4))); }
    Cost large() { return static_cast<std::int64_t>(whole(8)); }

private:
    std::string const& m_bytes;
    std::size_t m_at = 0;
    bool m_good = true;
};

std::vector<std::vector<Cost>> tableFrom(Reader& in, std::size_t rows, std::size_t columns)
{
    std::size_t const width = in.count();
    Cost const base = in.small();
    Cost const far = in.small();
    std::vector<std::vector<Cost>> table(rows, std::vector<Cost>(columns));
    for (auto& row : table)
        for (Cost& cost : row) {
            if (width == 4) {
                cost = in.small();
                continue;
            }
            Cost const number = static_cast<Cost>(in.whole(2));
            cost = number == 0xFFFF ? far : base + number;
        }
    return table;
}

} // namespace

LatticeNumbers latticeNumbersOfBinary(std::string const& bytes)
{
    Reader in(bytes);
    LatticeNumbers out;
    if (in.text(8) != "SALLOWLT" || in.count() != 1) return {};
    std::size_t const positions = in.count();
    for (std::size_t i = 0; i < positions && in.good(); ++i) {
        std::size_t const candidates = in.count();
        std::uint64_t const lock = in.whole(4);
        out.locked.push_back(lock == 0xFFFFFFFF ? std::nullopt
                                                : std::optional(static_cast<int>(lock)));
        if (candidates > bytes.size()) return {};
        for (std::vector<std::vector<Cost>>* list : {&out.own, &out.regrets}) {
            list->emplace_back();
            for (std::size_t c = 0; c < candidates; ++c) list->back().push_back(in.large());
        }
    }
    for (std::size_t i = 0; i + 1 < out.own.size() && in.good(); ++i)
        out.pairs.push_back(tableFrom(in, out.own[i].size(), out.own[i + 1].size()));
    std::size_t const choices = in.count();
    for (std::size_t k = 0; k < choices && in.good(); ++k) {
        Cost const cost = in.large();
        std::vector<int> choice;
        for (std::size_t i = 0; i < positions && in.good(); ++i)
            choice.push_back(static_cast<int>(in.count()));
        if (k > 0) continue;
        out.bestCost = cost;
        out.bestChoice = std::move(choice);
    }
    if (!in.good() || !in.atEnd()) return {};
    return out;
}

Cost costOf(LatticeNumbers const& numbers, std::vector<int> const& choice)
{
    Cost cost = 0;
    for (std::size_t i = 0; i < choice.size(); ++i) {
        auto const b = static_cast<std::size_t>(choice[i]);
        cost += numbers.own.at(i).at(b);
        if (i > 0)
            cost += numbers.pairs.at(i - 1).at(static_cast<std::size_t>(choice[i - 1])).at(b);
    }
    return cost;
}

Cost leastByTryingAll(LatticeNumbers const& numbers)
{
    Cost least = std::numeric_limits<Cost>::max();
    std::vector<int> choice(numbers.own.size(), 0);
    for (bool more = true; more;) {
        bool keepsLocks = true;
        for (std::size_t i = 0; i < choice.size(); ++i)
            keepsLocks = keepsLocks && (!numbers.locked[i] || *numbers.locked[i] == choice[i]);
        if (keepsLocks) least = std::min(least, costOf(numbers, choice));
        more = false;
        for (std::size_t i = 0; i < choice.size() && !more; ++i) {
            more = ++choice[i] < static_cast<int>(numbers.own[i].size());
            if (!more) choice[i] = 0;
        }
    }
    return least;
}

PlainSolution plainlySolved(LatticeNumbers const& numbers)
{
    auto const& own = numbers.own;
    std::size_t const count = own.size();
    auto upTo = own;
    for (std::size_t i = 1; i < count; ++i)
        for (std::size_t b = 0; b < own[i].size(); ++b) {
            Cost least = std::numeric_limits<Cost>::max();
            for (std::size_t a = 0; a < own[i - 1].size(); ++a)
                least = std::min(least, upTo[i - 1][a] + numbers.pairs[i - 1][a][b]);
            upTo[i][b] += least;
        }
    std::vector<std::vector<Cost>> after(count);
    after.back().assign(own.back().size(), 0);
    for (std::size_t i = count - 1; i-- > 0;)
        for (std::size_t a = 0; a < own[i].size(); ++a) {
            Cost least = std::numeric_limits<Cost>::max();
            for (std::size_t b = 0; b < own[i + 1].size(); ++b)
                least =
                    std::min(least, numbers.pairs[i][a][b] + own[i + 1][b] + after[i + 1][b]);
            after[i].push_back(least);
        }
    PlainSolution out;
    out.least = *std::min_element(upTo.back().begin(), upTo.back().end());
    out.regrets = upTo;
    for (std::size_t i = 0; i < count; ++i)
        for (std::size_t a = 0; a < own[i].size(); ++a)
            out.regrets[i][a] += after[i][a] - out.least;
    return out;
}

bool cbcIsThere() { return std::system("cbc -quit > /dev/null 2>&1") == 0; }

std::optional<std::vector<int>> choiceByCbc(LatticeNumbers const& numbers)
{
    Folder const folder;
    fs::path const program = folder.file("lattice.lp");
    fs::path const solution = folder.file("solution.txt");
    {
        std::ofstream out(program);
        writeProgram(out, numbers);
    }
    std::string const call = "cbc '" + program.string() + "' solve solution '" +
                             solution.string() + "' > /dev/null 2>&1";
    if (std::system(call.c_str()) != 0) return std::nullopt;
    std::ifstream in(solution);
    return readChoice(in, numbers.own.size());
}

} // namespace reference
