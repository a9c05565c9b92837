#include "tests/bench/tunebooks.h"

#include "core/files/abc/read.h"
#include "core/files/textfile.h"

#include <algorithm>

namespace fs = std::filesystem;

std::vector<tune::Tune> tunesIn(fs::path const& folder, int& unread)
{
    std::vector<fs::path> books;
    for (auto const& entry : fs::directory_iterator(folder))
        if (entry.path().extension() == ".abc") books.push_back(entry.path());
    std::sort(books.begin(), books.end());
    std::vector<tune::Tune> tunes;
    for (fs::path const& book : books) {
        auto const text = files::readTextFile(book);
        auto const entries = text ? files::abcTunes(*text)
                                  : base::Result<std::vector<files::AbcEntry>>(text.error());
        if (!entries) {
            ++unread;
            continue;
        }
        for (files::AbcEntry const& entry : *entries) {
            auto tune = files::readAbc(*text, entry, book.filename().string());
            if (tune && tune::hasNotes(*tune))
                tunes.push_back(*std::move(tune));
            else
                ++unread;
        }
    }
    return tunes;
}
