#include "app/input.h"

#include "app/mending.h"
#include "core/base/named.h"
#include "core/base/words.h"
#include "core/files/abc/write.h"
#include "core/files/midi/read.h"
#include "core/files/musicxml/read.h"
#include "core/files/textfile.h"
#include "core/files/work/document.h"
#include "core/proposal/relevel.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <charconv>
#include <filesystem>
#include <iostream>
#include <iterator>

namespace app {

namespace {

std::string endingOf(std::string const& file)
{
    std::string ending = std::filesystem::path(file).extension().string();
    std::ranges::transform(ending, ending.begin(),
                           [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return ending;
}

enum class InputKind { Abc, Saved, Score, Midi };

constexpr auto endings = std::to_array<base::Named<InputKind>>({
    {".abc", InputKind::Abc},
    {".txt", InputKind::Abc},
    {".sallow", InputKind::Saved},
    {".musicxml", InputKind::Score},
    {".xml", InputKind::Score},
    {".mxl", InputKind::Score},
    {".mid", InputKind::Midi},
    {".midi", InputKind::Midi},
});

std::optional<InputKind> kindOf(std::string const& file)
{
    if (file == "-") return InputKind::Abc;
    return base::valueNamed(endings, endingOf(file));
}

base::Result<std::string> bytesOf(std::string const& file)
{
    if (file == "-")
        return std::string(std::istreambuf_iterator<char>(std::cin),
                           std::istreambuf_iterator<char>());
    std::error_code failed;
    if (!kindOf(file) && std::filesystem::exists(file, failed))
        return base::Fault{base::FaultCode::UnknownFileKind, file,
                           base::said("it reads .abc .musicxml .xml .mxl .mid .sallow")};
    return files::readTextFile(file);
}

} // namespace

bool canOpen(std::string const& file) { return kindOf(file).has_value(); }

base::Result<Book> openBook(std::string const& file, files::Tables const& tables)
{
    auto bytes = bytesOf(file);
    if (!bytes) return bytes.error();
    Book book{file == "-" ? base::said("standard input") : file, *std::move(bytes), {}, {}, {}};
    InputKind const kind = kindOf(file).value_or(InputKind::Abc);
    if (kind == InputKind::Saved) {
        auto work = files::readDocument(book.text, tables, file);
        if (!work) return work.error();
        book.text = work->abc;
        book.saved = std::move(work->brief);
    }
    if (kind == InputKind::Score || kind == InputKind::Midi) {
        auto tune = kind == InputKind::Midi ? files::readMidi(book.text, file)
                                            : files::readMusicXml(book.text, file);
        if (!tune) return tune.error();
        book.text = files::abcOfTune(*tune);
        book.score = *std::move(tune);
    }
    auto entries = files::abcTunes(book.text);
    if (!entries) {
        base::Fault fault = entries.error();
        fault.place = fault.place.empty() ? book.name : book.name + ", " + fault.place;
        return fault;
    }
    book.entries = *std::move(entries);
    return book;
}

base::Result<std::vector<files::AbcEntry>> chosenTunes(Book const& book,
                                                       std::string const& which)
{
    if (which == "all") return book.entries;
    if (which == "first") return std::vector{book.entries.front()};
    int wanted = 0;
    auto const [stop, error] =
        std::from_chars(which.data(), which.data() + which.size(), wanted);
    if (error != std::errc{} || stop != which.data() + which.size())
        return base::Fault{base::FaultCode::BadCall, "--tune", which};
    auto const named = std::find_if(book.entries.begin(), book.entries.end(),
                                    [wanted](auto const& e) { return e.number == wanted; });
    if (named != book.entries.end()) return std::vector{*named};
    if (wanted >= 1 && wanted <= static_cast<int>(book.entries.size()))
        return std::vector{book.entries[static_cast<std::size_t>(wanted - 1)]};
    return base::Fault{base::FaultCode::NoSuchTune, book.name, which};
}

base::Result<tune::Tune> readTune(Book const& book, files::AbcEntry const& entry)
{
    if (book.score) return *book.score;
    return files::readAbc(book.text, entry, book.name);
}

base::Result<proposal::Brief> readBrief(Book const& book, files::AbcEntry const& entry,
                                        ArrangeOptions const& options,
                                        files::Tables const& tables)
{
    if (book.saved) {
        ArrangeOptions usual;
        usual.tune = options.tune;
        usual.wishes = options.wishes;
        usual.mend = options.mend;
        usual.words = options.words;
        usual.level = options.level; // another level may be asked for
        if (options != usual)
            return base::Fault{
                base::FaultCode::BadCall, book.name,
                base::said("a saved arrangement has its own harp, hand and key, so leave "
                           "these options out (--level is allowed)")};
        proposal::Brief brief = *book.saved;
        brief.tune =
            tune::withWords(brief.tune, worded(tune::pageWords(brief.tune), options.words));
        return withWishes(std::move(brief), options.wishes, tables);
    }
    auto tune = readTune(book, entry);
    if (!tune) return tune.error();
    return briefFor(*std::move(tune), options, tables);
}

base::Result<proposal::Proposal> madeFor(Book const& book, proposal::Brief const& brief,
                                         ArrangeOptions const& options,
                                         files::Tables const& tables)
{
    auto made = proposeOrMend(brief, options, tables);
    if (!made || !book.saved || !options.level || *options.level == brief.level.number)
        return made;
    auto level = files::levelFrom(tables, *options.level);
    if (!level) return level.error();
    auto fitted = proposal::atLevel(*made, *level);
    if (!fitted) return fitted.error();
    for (std::string const& change : fitted->changes)
        std::cerr << "sallow: " << base::said("changed: ") << change << '\n';
    return std::move(fitted->proposal);
}

} // namespace app
