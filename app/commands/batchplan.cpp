#include "app/commands/batchplan.h"

#include "core/base/words.h"

#include <algorithm>
#include <iostream>

namespace app {

namespace {

namespace fs = std::filesystem;
using base::Fault;
using base::FaultCode;
using base::Result;

struct Found {
    fs::path file;
    fs::path folder; // below the input, for its outputs
};

bool isSame(fs::path const& a, fs::path const& b)
{
    std::error_code failed;
    return fs::equivalent(a, b, failed) && !failed;
}

// What can be opened in a folder and its subfolders, by name; the folder that is saved in is
// passed over, unless it is the input itself. Links to folders are not followed.
Result<std::vector<Found>> filesIn(fs::path const& input, fs::path const& output)
{
    std::error_code failed;
    fs::file_status const status = fs::status(input, failed);
    if (!fs::is_directory(status)) return std::vector{Found{input, {}}};
    std::vector<Found> found;
    fs::recursive_directory_iterator at(input, failed);
    if (failed) return Fault{FaultCode::FileUnreadable, input.string(), {}};
    for (fs::recursive_directory_iterator const end{}; at != end; at.increment(failed)) {
        if (failed) break;
        std::error_code odd;
        fs::path const path = at->path();
        if (at->is_directory(odd)) {
            if (isSame(path, output)) at.disable_recursion_pending();
            std::error_code shut;
            if (fs::directory_iterator(path, shut); shut) {
                std::cerr << "sallow: " << base::said("note: ") << path.string()
                          << base::said(": this folder cannot be read and is left out\n");
                at.disable_recursion_pending();
            }
            continue;
        }
        if (path.extension() != ".txt" && canOpen(path.string()))
            found.push_back({path, path.parent_path().lexically_relative(input)});
    }
    std::ranges::sort(found, {}, &Found::file);
    if (found.empty())
        return Fault{
            FaultCode::NoTune, input.string(),
            base::said(
                "the folder holds no .abc, .musicxml, .xml, .mxl, .mid or .sallow file")};
    return found;
}

} // namespace

std::string placeOf(BatchTune const& tune)
{
    return tune.book->name + ", X:" + std::to_string(tune.entry.number) + ", \"" +
           tune.entry.title + '"';
}

Result<BatchPlan> batchPlan(Call const& call, files::Tables const& tables)
{
    fs::path const output = call.outputs.front();
    auto const found = filesIn(call.input, output);
    if (!found) return found.error();
    OutputNames names = namesFor(call);
    for (Found const& one : *found) names.keep(one.file);
    bool const alone = found->size() == 1 && found->front().file == fs::path(call.input);

    BatchPlan plan;
    for (Found const& one : *found) {
        auto opened = openBook(one.file.string(), tables);
        if (!opened) {
            if (alone) return opened.error();
            plan.unread.push_back(opened.error());
            continue;
        }
        auto const book = std::make_shared<Book const>(*std::move(opened));
        fs::path const folder =
            one.folder.empty() || one.folder == "." ? output : output / one.folder;
        if (plan.folders.empty() || plan.folders.back() != folder.string())
            plan.folders.push_back(folder.string());
        for (files::AbcEntry const& entry : book->entries) {
            BatchTune tune{book, entry, one.file, {}};
            for (std::string const& kind : call.batch.kinds) {
                auto const made = outputFor(numbered(
                    (folder / (one.file.stem().string() + '.' + kind)).string(), entry.number));
                if (!made) return made.error();
                tune.outputs.push_back(*made);
            }
            auto named = claimed(std::move(tune.outputs), names);
            if (!named) return named.error();
            tune.outputs = *std::move(named);
            plan.tunes.push_back(std::move(tune));
        }
    }
    return plan;
}

std::string wishesOf(Call const& call)
{
    // The words but for those that only share the work out.
    std::string text = "sallow " SALLOW_VERSION "\n";
    for (std::size_t i = 0; i < call.words.size(); ++i) {
        std::string const& word = call.words[i];
        if (word == "--resume" || word == "--tell" || word.starts_with("--jobs=") ||
            word.starts_with("--part="))
            continue;
        if (word == "--jobs" || word == "--part")
            ++i;
        else
            text += word + '\n';
    }
    return text;
}

} // namespace app
