#pragma once

#include "core/base/words.h"
#include "core/tune/tune.h"

#include <map>
#include <string>
#include <utility>

namespace files {

// What the reader noticed. A damaged file could fill a book with remarks: the first hundred are
// kept, and then only that there were more.
class Remarks {
public:
    explicit Remarks(std::vector<tune::Remark>& said) : m_said(said) {}

    void add(tune::Place place, std::string what, std::string did)
    {
        constexpr std::size_t most = 100;
        if (m_said.size() < most)
            m_said.push_back({place, std::move(what), std::move(did)});
        else if (m_said.size() == most)
            m_said.push_back(
                {place, base::said("there is more like this"), base::said("not listed")});
    }

    // For what needs saying only the first time, with how often it came in the end.
    void addOnce(tune::Place place, std::string const& what, std::string const& did)
    {
        auto const [once, isNew] = m_once.try_emplace(what, Once{m_said.size(), 0});
        ++once->second.times;
        if (isNew) add(place, what, did);
    }

    // When all is read: adds to what came more than once how often it did.
    void count()
    {
        for (auto const& [what, once] : m_once)
            if (once.times > 1 && once.at < m_said.size() && m_said[once.at].what == what)
                m_said[once.at].what += base::say(" ({} times)", once.times);
        m_once.clear();
    }

private:
    struct Once {
        std::size_t at = 0; // index of its remark
        int times = 0;
    };
    std::vector<tune::Remark>& m_said;
    std::map<std::string, Once> m_once;
};

} // namespace files
