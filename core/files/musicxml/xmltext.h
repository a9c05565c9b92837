#pragma once

#include <pugixml.hpp>

#include <cstdint>
#include <string>
#include <string_view>

// Small helps for writing XML. For the .cpp files of this folder.
namespace files::xml {

inline void addText(pugi::xml_node parent, char const* name, std::string_view text)
{
    parent.append_child(name).text().set(std::string(text).c_str());
}

inline void addNumber(pugi::xml_node parent, char const* name, std::int64_t number)
{
    addText(parent, name, std::to_string(number));
}

// A document that begins with its declaration: XML 1.0 in UTF-8.
inline pugi::xml_document declared()
{
    pugi::xml_document document;
    pugi::xml_node declaration = document.append_child(pugi::node_declaration);
    declaration.append_attribute("version") = "1.0";
    declaration.append_attribute("encoding") = "UTF-8";
    return document;
}

inline std::string textOf(pugi::xml_document const& document)
{
    struct Text final : pugi::xml_writer {
        std::string text;
        void write(void const* bytes, std::size_t count) override
        {
            text.append(static_cast<char const*>(bytes), count);
        }
    } out;
    document.save(out, " ");
    return std::move(out.text);
}

} // namespace files::xml
