#include "app/keeping/leftbehind.h"

#include "core/files/textfile.h"

#include <QLockFile>

#include <algorithm>
#include <system_error>
#include <utility>

namespace app {

namespace fs = std::filesystem;

std::string lockOf(fs::path const& file) { return file.string() + ".lock"; }

std::vector<LeftBehind> leftBehind(fs::path const& folder, std::vector<std::string>* unreadable)
{
    std::vector<LeftBehind> out;
    std::error_code failed;
    for (fs::directory_iterator it(folder, failed), end; !failed && it != end;
         it.increment(failed)) {
        if (it->path().extension() != unsavedEnding) continue;
        auto claim = std::make_shared<QLockFile>(QString::fromStdString(lockOf(it->path())));
        claim->setStaleLockTime(0);
        if (!claim->tryLock()) continue; // of a program that lives
        fs::remove(it->path().string() + ".part", failed); // a write that was cut off
        failed.clear();
        auto const text = files::readTextFile(it->path());
        if (!text) continue; // saved and taken away in this moment
        if (auto unsaved = files::readUnsaved(*text, it->path().string()))
            out.push_back({it->path(), *std::move(unsaved), std::move(claim)});
        else if (unreadable)
            unreadable->push_back(it->path().string());
    }
    std::ranges::sort(out, [](LeftBehind const& a, LeftBehind const& b) {
        return a.unsaved.changed > b.unsaved.changed;
    });
    return out;
}

void dropLeftBehind(LeftBehind const& left)
{
    std::error_code failed;
    fs::remove(left.file, failed);
    left.claim->unlock();
}

} // namespace app
