#include "core/base/words.h"

#include "core/base/spoken.h"

#include <algorithm>
#include <locale>
#include <optional>
#include <set>
#include <utility>

namespace base {

namespace {

Catalogue& inUse()
{
    static Catalogue catalogue;
    return catalogue;
}

// English as it is shown: without the word before a bar that tells meanings apart.
std::string_view shown(std::string_view english)
{
    std::size_t const bar = english.find('|');
    if (bar == std::string_view::npos || bar == 0) return english;
    bool const isMark = std::all_of(english.begin(), english.begin() + static_cast<long>(bar),
                                    [](char c) { return c >= 'a' && c <= 'z'; });
    return isMark ? english.substr(bar + 1) : english;
}

std::vector<std::string> const* formsOf(std::string_view english)
{
    auto const& sayings = inUse().sayings;
    auto const found = sayings.find(english);
    return found == sayings.end() || found->second.empty() ? nullptr : &found->second;
}

// The values that a text names, each as "number:form"; none where its braces do not match.
std::optional<std::set<std::string>> valuesIn(std::string_view text)
{
    std::set<std::string> out;
    int next = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        bool const twice = i + 1 < text.size() && text[i + 1] == text[i];
        if (text[i] == '}') {
            if (!twice) return std::nullopt;
            ++i;
            continue;
        }
        if (text[i] != '{') continue;
        if (twice) {
            ++i;
            continue;
        }
        std::size_t const end = text.find('}', i);
        if (end == std::string_view::npos) return std::nullopt;
        std::string const inside(text.substr(i + 1, end - i - 1));
        std::size_t const colon = std::min(inside.find(':'), inside.size());
        if (!std::ranges::all_of(inside.substr(0, colon),
                                 [](char c) { return c >= '0' && c <= '9'; }))
            return std::nullopt; // words in braces
        std::string form = inside.substr(colon);
        std::erase(form, 'L');
        out.insert((colon > 0 ? inside.substr(0, colon) : std::to_string(next++)) + form);
        i = end;
    }
    return out;
}

// Numbers with the language's own decimal point and no signs between thousands.
class Point : public std::numpunct<char> {
public:
    explicit Point(char point) : m_point(point) {}

protected:
    char do_decimal_point() const override { return m_point; }
    std::string do_grouping() const override { return {}; }

private:
    char m_point;
};

} // namespace

void speakBy(Catalogue catalogue)
{
    std::erase_if(catalogue.sayings, [](auto const& row) {
        return !std::ranges::all_of(row.second, [&](std::string const& form) {
            return haveSameValues(row.first, form) ||
                   (row.second.size() > 1 && valuesIn(form)); // the count may be a word
        });
    });
    inUse() = std::move(catalogue);
}

bool haveSameValues(std::string_view english, std::string_view translation)
{
    auto const wanted = valuesIn(english);
    return !wanted || wanted == valuesIn(translation);
}

std::string_view wordsFor(std::string_view english)
{
    auto const* forms = formsOf(english);
    return forms ? std::string_view(forms->front()) : shown(english);
}

bool isSaid(std::string_view english) { return formsOf(english) != nullptr; }

std::string saidWith(std::string_view english, fmt::format_args values)
{
    std::string_view const text = wordsFor(english);
    if (inUse().decimalPoint == '.') return fmt::vformat(text, values);
    return fmt::vformat(std::locale(std::locale::classic(), new Point(inUse().decimalPoint)),
                        text, values);
}

std::string_view formFor(long long count, std::string_view one, std::string_view others)
{
    auto const* forms = formsOf(others);
    if (!forms) return shown(count == 1 ? one : others);
    return count == 1 ? forms->front() : forms->back();
}

} // namespace base
