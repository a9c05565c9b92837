#include "core/files/tables/tablerow.h"

#include "core/base/words.h"
#include "core/files/json.h"
#include <fmt/format.h>

namespace files::table {

void Node::refuse(std::string detail) const { throw Damage{pointer, std::move(detail)}; }

std::string text(Node const& node)
{
    if (!node.value->is_string() || node.value->get_ref<std::string const&>().empty())
        node.refuse(base::say("words are wanted, not {}", node.value->dump()));
    return node.value->get<std::string>();
}

std::string words(Node const& node) { return base::said(text(node)); }

double number(Node const& node, double least, double most)
{
    if (!node.value->is_number())
        node.refuse(base::say("a number is wanted, not {}", node.value->dump()));
    double const value = node.value->get<double>();
    if (!(value >= least && value <= most))
        node.refuse(base::say("{} is not between {} and {}", value, least, most));
    return value;
}

int whole(Node const& node, int least, int most)
{
    if (!node.value->is_number_integer())
        node.refuse(base::say("a whole number is wanted, not {}", node.value->dump()));
    return static_cast<int>(number(node, least, most));
}

bool yesOrNo(Node const& node)
{
    if (!node.value->is_boolean())
        node.refuse(base::say("true or false is wanted, not {}", node.value->dump()));
    return node.value->get<bool>();
}

std::vector<Node> list(Node const& node)
{
    if (!node.value->is_array() || node.value->empty())
        node.refuse(base::say("a list is wanted, not {}", node.value->dump()));
    std::vector<Node> items;
    for (std::size_t i = 0; i < node.value->size(); ++i)
        items.push_back({&node.value->at(i), fmt::format("{}/{}", node.pointer, i)});
    return items;
}

Row::Row(Node node) : m_node(std::move(node))
{
    if (!m_node.value->is_object()) m_node.refuse(base::said("an entry in braces is wanted"));
}

bool Row::has(std::string const& key) const { return m_node.value->contains(key); }

Node Row::operator[](std::string const& key)
{
    auto const found = m_node.value->find(key);
    if (found == m_node.value->end()) m_node.refuse(base::say("\"{}\" is missing", key));
    m_asked.insert(key);
    return {&*found, m_node.pointer + '/' + key};
}

void Row::done() const
{
    for (auto const& item : m_node.value->items())
        if (!m_asked.contains(item.key()))
            throw Damage{m_node.pointer + '/' + item.key(),
                         base::say("\"{}\" is not known here", item.key())};
}

void Names::add(Node const& node, std::string name)
{
    if (!m_seen.insert(name).second)
        node.refuse(base::say("{} stands here a second time", name));
}

} // namespace files::table
