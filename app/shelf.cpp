#include "app/shelf.h"

#include "app/keeping/userfolder.h"
#include "app/sharedfolder.h"
#include "core/base/words.h"
#include "core/files/draft.h"
#include "core/files/tables/harpbook.h"
#include "core/files/textfile.h"

#include <algorithm>
#include <iostream>

namespace app {

namespace fs = std::filesystem;

namespace {

base::Result<std::vector<harp::HarpModel>> harpsOf(fs::path const& file)
{
    auto const text = files::readTextFile(file);
    if (!text) return text.error();
    return files::readHarpBook(*text, file.string());
}

// A harp of the user's own under the id of one of the program's would hide it, or be hidden.
bool isOfTheProgram(files::Tables const& tables, std::string const& id)
{
    return std::ranges::any_of(tables.harps, [&id](auto const& row) { return row.id == id; });
}

base::Fault idTaken(fs::path const& file, std::string const& id)
{
    return {base::FaultCode::BadHarp, file.string(),
            base::say("\"{}\" is the id of one of Sallow's own harps: give yours another", id)};
}

void addOwn(files::Tables& tables, harp::HarpModel harp)
{
    if (isOfTheProgram(tables, harp.id))
        std::cerr << "sallow: " << base::said("note: ")
                  << base::sentence(idTaken(ownHarpsFile(), harp.id)) << '\n';
    else
        tables.ownHarps = files::withHarp(std::move(tables.ownHarps), std::move(harp));
}

} // namespace

fs::path ownHarpsFile() { return userFolder() / "harps.json"; }

base::Result<files::Tables> openShelf()
{
    auto tables = files::readTables(sharedFolder());
    if (!tables) return tables;
    // What is not there is no fault; what is there but cannot be read is told.
    auto own = harpsOf(ownHarpsFile());
    if (!own && own.error().code == base::FaultCode::FileMissing) return tables;
    if (own)
        for (harp::HarpModel& harp : *own) addOwn(*tables, std::move(harp));
    else
        std::cerr << "sallow: " << base::said("note: ") << base::sentence(own.error()) << '\n';
    return tables;
}

base::Result<files::Tables> openShelf(ArrangeOptions const& options)
{
    auto tables = openShelf();
    if (!tables || options.harpFile.empty()) return tables;
    auto harps = harpsOf(options.harpFile);
    if (!harps) return harps.error();
    for (harp::HarpModel& harp : *harps) {
        if (isOfTheProgram(*tables, harp.id)) return idTaken(options.harpFile, harp.id);
        tables->ownHarps = files::withHarp(std::move(tables->ownHarps), std::move(harp));
    }
    return tables;
}

base::Result<base::Done> keepHarp(harp::HarpModel const& harp)
{
    fs::path const file = ownHarpsFile();
    std::vector<harp::HarpModel> harps;
    auto known = harpsOf(file);
    if (known)
        harps = *std::move(known);
    else if (known.error().code != base::FaultCode::FileMissing)
        return known.error();
    std::error_code made;
    if (file.has_parent_path()) fs::create_directories(file.parent_path(), made);
    if (made)
        return base::Fault{base::FaultCode::CannotWrite, file.string(), files::systemWords(made.value())};
    return files::writeWhole(file,
                             files::harpBookText(files::withHarp(std::move(harps), harp)));
}

} // namespace app
