#pragma once

#include "core/base/marked.h"

#include <fmt/format.h>

#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace base {

// Every sentence that a reader sees is written in English where it is said, with places for its
// values as fmt has them; this English is also its name in the catalogue of another language.
// Where one English word has two meanings ("second": a finger, a degree), a small word and a
// bar before it tell them apart ("finger|second"); they are not shown.
//
// The language in use is the one thing here that is not handed over as a value: it is set once,
// before anything is said and before any thread begins, and nothing but wording depends on it.

// What is said in a language instead of the English: the English, and its forms. Sentences with
// a count have two, for one and for other counts, and go by the English for other counts.
struct Catalogue {
    std::map<std::string, std::vector<std::string>, std::less<>> sayings;
    char decimalPoint = '.'; // of numbers whose place says so: {0:.1Lf}
};

// Says everything by this catalogue from now on; what it lacks stays English. A translation
// whose places are not those of the English is passed over.
void speakBy(Catalogue catalogue);

// A translation may put the values in another order, by number ({1}), but must name each value
// that the English names, in the same form but for the L of a number.
bool haveSameValues(std::string_view english, std::string_view translation);

// Words without values, or the words of a row of a table. As long as the catalogue or the
// argument.
std::string_view wordsFor(std::string_view english);
inline std::string said(std::string_view english) { return std::string(wordsFor(english)); }

std::string saidWith(std::string_view english, fmt::format_args values);

// A sentence with values, which are words of the same language already.
template<typename... Value>
std::string say(fmt::format_string<Value...> english, Value&&... values)
{
    fmt::string_view const text = english;
    return saidWith({text.data(), text.size()}, fmt::make_format_args(values...));
}

// Which of the two is said of a count; the count is its first value ({} or {0}).
std::string_view formFor(long long count, std::string_view one, std::string_view others);

template<typename... Value>
std::string sayCount(long long count, std::string_view one, std::string_view others,
                     Value const&... values)
{
    return fmt::vformat(formFor(count, one, others), fmt::make_format_args(count, values...));
}

} // namespace base
