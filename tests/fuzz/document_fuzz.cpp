#include "core/files/work/document.h"
#include "core/proposal/proposal.h"
#include "core/proposal/rules.h"
#include "tests/fuzz/outside.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

// A saved arrangement: whatever the bytes are, the reader comes back with work or a fault. What it
// gives is saved and read as the same, and where it is short it is arranged.
extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* bytes, std::size_t size)
{
    std::string_view const text(reinterpret_cast<char const*>(bytes), size);
    auto const work = files::readDocument(text, fuzz::tables(), "fuzz");
    if (!work) return 0;
    std::string const saved = files::documentText(*work, fuzz::tables());
    auto const again = files::readDocument(saved, fuzz::tables(), "again");
    fuzz::demand(static_cast<bool>(again), "what was saved can be read");
    fuzz::demand(files::documentText(*again, fuzz::tables()) == saved,
                 "what is saved again is the same");
    if (work->brief.tune.bars.size() > 4) return 0;
    auto const proposal = proposal::propose(work->brief);
    if (!proposal) return 0;
    for (std::string const& broken :
         proposal::brokenRules(proposal->arrangement, proposal->brief.book))
        fuzz::demand(false, broken);
    return 0;
}
