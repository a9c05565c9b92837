#include "core/files/jsonwords.h"

#include "core/base/words.h"

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
            return base::say("\"{}\" is missing", said.substr(from + 1, to - from - 1));
    }
    if (id == outOfRange) return base::said("a list is too short");
    // "[...] type must be string, but is number"
    constexpr std::string_view must = "type must be ";
    auto const at = said.find(must);
    auto const comma = said.find(", but is ");
    if (id == otherType && at != std::string_view::npos && comma != std::string_view::npos) {
        auto const word = [](std::string_view type) {
            if (type == "string") return base::said("json|text");
            if (type == "array") return base::said("a list");
            if (type == "object") return base::said("a group of members");
            if (type == "boolean") return base::said("true or false");
            if (type == "null") return base::said("json|nothing");
            if (type == "number") return base::said("json|a number");
            return "a " + std::string(type);
        };
        return base::say("a value must be {}, not {}",
                         word(said.substr(at + must.size(), comma - at - must.size())),
                         word(said.substr(comma + std::string_view(", but is ").size())));
    }
    return base::said("a value is not what it must be");
}

} // namespace files
