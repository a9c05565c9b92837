#include "core/files/catalogue.h"

#include <pugixml.hpp>

#include <string>

namespace files {

base::Result<base::Catalogue> catalogueFrom(std::string_view ts)
{
    pugi::xml_document document;
    auto const read = document.load_buffer(
        ts.data(), ts.size(), (pugi::parse_default | pugi::parse_ws_pcdata) & ~pugi::parse_eol);
    pugi::xml_node const root = document.child("TS");
    if (!read || !root)
        return base::Fault{base::FaultCode::Malformed, "", "not a Qt Linguist file"};
    base::Catalogue out;
    // Languages that write a comma in numbers; what we have so far.
    if (std::string_view(root.attribute("language").value()).starts_with("de"))
        out.decimalPoint = ',';
    for (pugi::xml_node context : root.children("context"))
        for (pugi::xml_node message : context.children("message")) {
            pugi::xml_node const translation = message.child("translation");
            if (translation.attribute("type")) continue; // unfinished, vanished, obsolete
            std::string key = message.child("source").text().get();
            if (std::string_view const comment = message.child("comment").text().get();
                !comment.empty())
                key = std::string(comment).append(1, '|').append(key);
            std::vector<std::string> forms;
            for (pugi::xml_node form : translation.children("numerusform"))
                forms.emplace_back(form.text().get());
            if (forms.empty()) forms.emplace_back(translation.text().get());
            if (!forms.front().empty()) out.sayings.emplace(std::move(key), std::move(forms));
        }
    return out;
}

} // namespace files
