#include "core/files/patternsjson.h"

#include "core/files/json.h"

namespace files {

std::string patternsJson(pattern::PatternBook const& book)
{
    Json list = Json::array();
    for (pattern::Pattern const& pattern : book.patterns) {
        Json degrees = Json::array();
        Json fingers = Json::array();
        for (pattern::PatternNote const& note : pattern.notes) {
            degrees.push_back(note.degree);
            fingers.push_back(note.finger);
        }
        list.push_back({{"name", pattern.name},
                        {"degrees", degrees},
                        {"fingers", fingers},
                        {"together", pattern.together},
                        {"rolls", pattern.rolls},
                        {"always_rolled", pattern.spread},
                        {"own", pattern.own},
                        {"level", pattern.level},
                        {"strings", stringsSpanned(pattern)},
                        {"meters", pattern.meters},
                        {"feel", pattern.feel}});
    }
    return list.dump(2);
}

} // namespace files
