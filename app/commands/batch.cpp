#include "app/commands/verbs.h"
#include "app/exitstatus.h"
#include "app/input.h"
#include "app/mending.h"
#include "app/options.h"
#include "app/outputs.h"
#include "app/progress.h"
#include "app/shelf.h"

#include <CLI/CLI.hpp>

#include <QCoreApplication>
#include <QProcess>

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <iostream>
#include <memory>

namespace app {

namespace {

namespace fs = std::filesystem;

struct BatchCall {
    std::string input;
    std::string folder;
    std::vector<std::string> kinds{"pdf"};
    int jobs = 1;
    std::string part; // "2/4": every fourth tune, from the second on
    bool resume = false;
    ArrangeOptions options;
    sheet::SheetStyle style;
};

struct Part {
    std::size_t which = 0; // from 0
    std::size_t of = 1;
};

base::Result<Part> partFrom(std::string const& text)
{
    if (text.empty()) return Part{};
    int which = 0;
    int of = 0;
    char rest = 0;
    bool const read = std::sscanf(text.c_str(), "%d/%d%c", &which, &of, &rest) == 2;
    if (!read || which < 1 || of < which)
        return base::Fault{base::FaultCode::BadCall, "--part",
                           text + "; write K/N, such as 2/4"};
    return Part{static_cast<std::size_t>(which - 1), static_cast<std::size_t>(of)};
}

// The files to arrange, in order of their names.
std::vector<std::string> filesIn(std::string const& input)
{
    std::error_code failed;
    if (!fs::is_directory(input, failed)) return {input};
    std::vector<std::string> files;
    for (fs::directory_entry const& entry : fs::directory_iterator(input, failed)) {
        std::string const file = entry.path().string();
        if (entry.path().extension() != ".txt" && canOpen(file)) files.push_back(file);
    }
    std::ranges::sort(files);
    return files;
}

std::vector<Output> outputsOf(BatchCall const& call, std::string const& file, int number)
{
    std::vector<Output> outputs;
    for (std::string const& kind : call.kinds) {
        std::string const name = fs::path(file).stem().string() + '.' + kind;
        auto output = outputFor(numbered((fs::path(call.folder) / name).string(), number));
        if (output) outputs.push_back(*std::move(output));
    }
    return outputs;
}

bool allThere(std::vector<Output> const& outputs)
{
    return std::ranges::all_of(outputs, [](Output const& o) { return fs::exists(o.path); });
}

base::Result<base::Done> arrangeOne(Book const& book, files::AbcEntry const& entry,
                                    BatchCall const& call, files::Tables const& tables,
                                    std::vector<Output> const& outputs)
{
    auto brief = readBrief(book, entry, call.options, tables);
    if (!brief) return brief.error();
    auto proposal = proposeOrMend(*brief, call.options, tables);
    if (!proposal) {
        base::Fault fault = proposal.error();
        fault.place = book.name + ", X:" + std::to_string(entry.number) +
                      (fault.place.empty() ? "" : ", " + fault.place);
        return fault;
    }
    for (std::string const& snag : proposal::snagSentences(*proposal))
        std::cerr << "sallow: note: " << book.name << ", X:" << entry.number << ": " << snag
                  << '\n';
    return writeOutputs({*proposal, files::ownText(book.text, entry), tables}, outputs,
                        SheetKind::Arrangement, call.style);
}

struct Work {
    std::shared_ptr<Book const> book;
    files::AbcEntry entry;
    std::string file;
};

// All tunes of all files; what cannot be opened is said and left out.
std::vector<Work> workIn(BatchCall const& call, files::Tables const& tables, ExitStatus& status)
{
    std::vector<Work> all;
    for (std::string const& file : filesIn(call.input)) {
        auto book = openBook(file, tables);
        if (!book) {
            status = refuse(book.error());
            continue;
        }
        auto const shared = std::make_shared<Book const>(*std::move(book));
        for (files::AbcEntry const& entry : shared->entries)
            all.push_back({shared, entry, file});
    }
    return all;
}

ExitStatus arrangeAll(BatchCall const& call, Part part, files::Tables const& tables)
{
    ExitStatus status = Fine;
    std::vector<Work> const all = workIn(call, tables, status);
    Progress progress(all.size());
    for (std::size_t i = part.which; i < all.size(); i += part.of) {
        Work const& work = all[i];
        auto const outputs = outputsOf(call, work.file, work.entry.number);
        if (!(call.resume && allThere(outputs))) {
            auto done = arrangeOne(*work.book, work.entry, call, tables, outputs);
            if (!done) {
                ExitStatus const one = refuse(done.error());
                if (status == Fine) status = one;
            }
        }
        progress.reached(i + 1);
    }
    return status;
}

// One process for each job, each with its own part of the work. The words of this call go on to
// them as they are.
ExitStatus inProcesses(BatchCall const& call)
{
    QStringList words = QCoreApplication::arguments().mid(1);
    auto const at = words.indexOf(QStringLiteral("--jobs"));
    if (at >= 0)
        words.remove(at, 2);
    else
        words.removeIf(
            [](QString const& w) { return w.startsWith(QStringLiteral("--jobs=")); });
    std::vector<std::unique_ptr<QProcess>> jobs;
    for (int job = 1; job <= call.jobs; ++job) {
        auto process = std::make_unique<QProcess>();
        process->setProcessChannelMode(QProcess::ForwardedChannels);
        process->start(QCoreApplication::applicationFilePath(),
                       words + QStringList{QStringLiteral("--part"),
                                           QStringLiteral("%1/%2").arg(job).arg(call.jobs)});
        jobs.push_back(std::move(process));
    }
    ExitStatus status = Fine;
    for (auto const& process : jobs) {
        process->waitForFinished(-1);
        if (status == Fine) status = static_cast<ExitStatus>(process->exitCode());
    }
    return status;
}

ExitStatus batch(BatchCall const& call)
{
    auto part = partFrom(call.part);
    if (!part) return refuse(part.error());
    if (call.jobs > 1 && !call.part.empty())
        return refuse({base::FaultCode::BadCall, "--part", "not together with --jobs"});
    for (std::string const& kind : call.kinds)
        if (auto output = outputFor("tune." + kind); !output) return refuse(output.error());
    std::error_code failed;
    fs::create_directories(call.folder, failed);
    if (failed) return refuse({base::FaultCode::CannotWrite, call.folder, failed.message()});
    if (call.jobs > 1) return inProcesses(call);
    auto tables = openShelf(call.options);
    if (!tables) return refuse(tables.error());
    return arrangeAll(call, *part, *tables);
}

} // namespace

void declareBatch(CLI::App& program, int& status)
{
    auto call = std::make_shared<BatchCall>();
    CLI::App* verb = program.add_subcommand(
        "batch", "arrange every tune of a book or of all books in a folder");
    verb->add_option("IN", call->input, "an ABC, MusicXML, MIDI or .sallow file, or a folder of them")
        ->required();
    verb->add_option("-o,--output", call->folder, "the folder to write to")->required();
    verb->add_option("--to", call->kinds, "kinds to write, such as pdf,mid,plan.json")
        ->delimiter(',');
    verb->add_option("--jobs", call->jobs, "how many processes share the work")
        ->check(CLI::Range(1, 64));
    verb->add_option("--part", call->part, "K/N: only every Nth tune, from the Kth on");
    verb->add_flag("--resume", call->resume, "leave out what has been written already");
    declare(*verb, call->style);
    declare(*verb, call->options);
    verb->callback([call, &status] { status = batch(*call); });
}

} // namespace app
