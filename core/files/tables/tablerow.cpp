#include "core/files/tables/tablerow.h"

#include <fmt/format.h>
#include "core/files/json.h"

namespace files::table {

void Node::refuse(std::string detail) const { throw Damage{pointer, std::move(detail)}; }

std::string text(Node const& node)
{
    if (!node.value->is_string() || node.value->get_ref<std::string const&>().empty())
        node.refuse("words are wanted, not " + node.value->dump());
    return node.value->get<std::string>();
}

double number(Node const& node, double least, double most)
{
    if (!node.value->is_number()) node.refuse("a number is wanted, not " + node.value->dump());
    double const value = node.value->get<double>();
    if (!(value >= least && value <= most))
        node.refuse(fmt::format("{} is not between {} and {}", value, least, most));
    return value;
}

int whole(Node const& node, int least, int most)
{
    if (!node.value->is_number_integer())
        node.refuse("a whole number is wanted, not " + node.value->dump());
    return static_cast<int>(number(node, least, most));
}

bool yesOrNo(Node const& node)
{
    if (!node.value->is_boolean())
        node.refuse("true or false is wanted, not " + node.value->dump());
    return node.value->get<bool>();
}

std::vector<Node> list(Node const& node)
{
    if (!node.value->is_array() || node.value->empty())
        node.refuse("a list is wanted, not " + node.value->dump());
    std::vector<Node> items;
    for (std::size_t i = 0; i < node.value->size(); ++i)
        items.push_back({&node.value->at(i), fmt::format("{}/{}", node.pointer, i)});
    return items;
}

Row::Row(Node node) : m_node(std::move(node))
{
    if (!m_node.value->is_object()) m_node.refuse("an entry in braces is wanted");
}

bool Row::has(std::string const& key) const { return m_node.value->contains(key); }

Node Row::operator[](std::string const& key)
{
    auto const found = m_node.value->find(key);
    if (found == m_node.value->end()) m_node.refuse(fmt::format("\"{}\" is missing", key));
    m_asked.insert(key);
    return {&*found, m_node.pointer + '/' + key};
}

void Row::done() const
{
    for (auto const& item : m_node.value->items())
        if (!m_asked.contains(item.key()))
            throw Damage{m_node.pointer + '/' + item.key(),
                         fmt::format("\"{}\" is not known here", item.key())};
}

void Names::add(Node const& node, std::string name)
{
    if (!m_seen.insert(name).second) node.refuse(name + " stands here a second time");
}

} // namespace files::table
