#include "core/files/jsonwords.h"

namespace files {

std::string jsonWords(int id, std::string_view said)
{
    constexpr int noSuchKey = 403;
    constexpr int otherType = 302;
    constexpr int outOfRange = 401;
    if (id == noSuchKey) {
        // "... key 'harp' not found"
        auto const from = said.find('\'');
        auto const to = said.rfind('\'');
        if (from != std::string_view::npos && to > from)
            return "\"" + std::string(said.substr(from + 1, to - from - 1)) + "\" is missing";
    }
    if (id == outOfRange) return "a list is too short";
    // "[...] type must be string, but is number"
    constexpr std::string_view must = "type must be ";
    auto const at = said.find(must);
    auto const comma = said.find(", but is ");
    if (id == otherType && at != std::string_view::npos && comma != std::string_view::npos) {
        auto const word = [](std::string_view type) {
            if (type == "string") return std::string("text");
            if (type == "array") return std::string("a list");
            if (type == "object") return std::string("a group of members");
            if (type == "boolean") return std::string("true or false");
            if (type == "null") return std::string("nothing");
            return "a " + std::string(type);
        };
        return "a value must be " + word(said.substr(at + must.size(), comma - at - must.size())) +
               ", not " + word(said.substr(comma + std::string_view(", but is ").size()));
    }
    return "a value is not what it must be";
}

} // namespace files
