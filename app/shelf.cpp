#include "app/shelf.h"

#include "app/keeping/userfolder.h"
#include "app/sharedfolder.h"
#include "core/files/tables/harpbook.h"
#include "core/files/textfile.h"

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

} // namespace

fs::path ownHarpsFile() { return userFolder() / "harps.json"; }

base::Result<files::Tables> openShelf()
{
    auto tables = files::readTables(sharedFolder());
    if (!tables || !fs::exists(ownHarpsFile())) return tables;
    if (auto own = harpsOf(ownHarpsFile()))
        tables->ownHarps = *std::move(own);
    else
        std::cerr << "sallow: note: " << base::sentence(own.error()) << '\n';
    return tables;
}

base::Result<files::Tables> openShelf(ArrangeOptions const& options)
{
    auto tables = openShelf();
    if (!tables || options.harpFile.empty()) return tables;
    auto harps = harpsOf(options.harpFile);
    if (!harps) return harps.error();
    for (harp::HarpModel& harp : *harps)
        tables->ownHarps = files::withHarp(std::move(tables->ownHarps), std::move(harp));
    return tables;
}

base::Result<base::Done> keepHarp(harp::HarpModel const& harp)
{
    fs::path const file = ownHarpsFile();
    std::vector<harp::HarpModel> harps;
    if (fs::exists(file)) {
        auto known = harpsOf(file);
        if (!known) return known.error();
        harps = *std::move(known);
    }
    std::error_code made;
    if (file.has_parent_path()) fs::create_directories(file.parent_path(), made);
    if (made)
        return base::Fault{base::FaultCode::CannotWrite, file.string(), made.message()};
    return files::writeWhole(file,
                             files::harpBookText(files::withHarp(std::move(harps), harp)));
}

} // namespace app
