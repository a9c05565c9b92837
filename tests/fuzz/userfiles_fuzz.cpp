#include "core/files/work/player.h"
#include "core/files/work/tastefile.h"
#include "core/files/work/tuneindex.h"
#include "core/files/work/unsaved.h"
#include "core/learning/learn.h"
#include "tests/fuzz/outside.h"

#include <cstddef>
#include <cstdint>
#include <string_view>

namespace {

proposal::Brief standing()
{
    files::Tables const& t = fuzz::tables();
    return {{},       *files::harpFrom(t, "floor34"), t.hands.front(), t.levels.front(), t.book,
            t.styles.front()};
}

} // namespace

// The other files of the user's folder: taste, pupils, unsaved work, the list of tunes, and what new
// tunes are met with. Each is read or refused, and what is read is written and read the same.
extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* bytes, std::size_t size)
{
    std::string_view const text(reinterpret_cast<char const*>(bytes), size);
    if (auto const taste = files::readTaste(text, "fuzz")) {
        std::string const saved = files::tasteText(*taste);
        auto const again = files::readTaste(saved, "again");
        fuzz::demand(again && files::tasteText(*again) == saved, "taste is kept");
    }
    if (auto const pupils = files::readPupils(text, fuzz::tables(), "fuzz")) {
        std::string const saved = files::pupilsText(pupils->players, fuzz::tables());
        auto const again = files::readPupils(saved, fuzz::tables(), "again");
        fuzz::demand(again && files::pupilsText(again->players, fuzz::tables()) == saved,
                     "pupils are kept");
    }
    if (auto const unsaved = files::readUnsaved(text, "fuzz")) {
        std::string const saved = files::unsavedText(*unsaved);
        auto const again = files::readUnsaved(saved, "again");
        fuzz::demand(again && files::unsavedText(*again) == saved, "unsaved work is kept");
    }
    if (auto const index = files::readTuneIndex(text, "fuzz")) {
        auto const again = files::readTuneIndex(files::tuneIndexText(*index), "again");
        fuzz::demand(again && *again == *index, "the index of tunes is kept");
    }
    if (auto const tunes = files::readTunes(text, "fuzz")) {
        std::string const saved = files::tunesText(*tunes);
        auto const again = files::readTunes(saved, "again");
        fuzz::demand(again && files::tunesText(*again) == saved, "the list of tunes is kept");
    }
    static proposal::Brief const usual = standing();
    std::string const known =
        files::standingText(files::withStanding(usual, text, fuzz::tables()), fuzz::tables());
    fuzz::demand(files::standingText(files::withStanding(usual, known, fuzz::tables()),
                                     fuzz::tables()) == known,
                 "what new tunes are met with is kept");
    return 0;
}
