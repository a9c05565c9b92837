#pragma once

#include <nlohmann/json_fwd.hpp>

#include <set>
#include <string>
#include <vector>

// Reading the tables of shared/ value by value, so that what cannot be used is refused with its
// place. For the readers of core/files only.
namespace files::table {

// What cannot be used in a table. Thrown by the functions below and caught where the file is
// opened: it ends the reading of the table and becomes a Fault with file and line.
struct Damage {
    std::string pointer; // where it stands, as a JSON pointer
    std::string detail;
};

// A value of a table and where it stands.
struct Node {
    nlohmann::json const* value;
    std::string pointer;

    [[noreturn]] void refuse(std::string detail) const;
};

std::string text(Node const& node);
std::string words(Node const& node); // text for the reader, in the language in use
double number(Node const& node, double least, double most);
int whole(Node const& node, int least, int most);
bool yesOrNo(Node const& node);
std::vector<Node> list(Node const& node); // not empty

// An object whose keys are all known. What has not been asked for by the time of done() is
// refused.
class Row {
public:
    explicit Row(Node node);

    bool has(std::string const& key) const;
    Node operator[](std::string const& key);
    void done() const;

private:
    Node m_node;
    std::set<std::string> m_asked;
};

// Refuses the second of two entries that go by the same name.
class Names {
public:
    void add(Node const& node, std::string name);

private:
    std::set<std::string> m_seen;
};

} // namespace files::table
