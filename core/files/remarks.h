#pragma once

#include "core/base/words.h"
#include "core/tune/tune.h"

#include <set>
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

    // For what needs saying only the first time.
    void addOnce(tune::Place place, std::string const& what, std::string const& did)
    {
        if (m_once.insert(what).second) add(place, what, did);
    }

private:
    std::vector<tune::Remark>& m_said;
    std::set<std::string> m_once;
};

} // namespace files
