#include "app/cli/job.h"
#include "app/cli/stop.h"
#include "app/commands/batchplan.h"
#include "app/commands/verbs.h"
#include "app/language.h"
#include "app/mending.h"
#include "app/progress.h"
#include "app/shelf.h"
#include "core/base/named.h"
#include "core/base/words.h"
#include "core/files/draft.h"
#include "core/files/textfile.h"

#include <QProcess>

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <memory>

#include <sys/prctl.h>

#include <csignal>

namespace app {

namespace {

namespace fs = std::filesystem;

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
                           base::say("{}; write K/N, such as 2/4", text)};
    return Part{static_cast<std::size_t>(which - 1), static_cast<std::size_t>(of)};
}

// How a tune of the batch came out.
enum class End { Saved, Kept, Missing, NotWritten };
constexpr auto endNames = std::to_array<base::Named<End>>({
    {"saved", End::Saved},
    {"kept", End::Kept},
    {"missing", End::Missing},
    {"not-written", End::NotWritten},
});

// Since when outputs are of this call's wishes: the time of a small file in the folder that holds
// them. Another call's wishes are written over it, so that what is older is made anew.
class Record {
public:
    // Fault: CannotWrite.
    static base::Result<Record> of(Call const& call)
    {
        fs::path const file = fs::path(call.outputs.front()) / ".sallow-batch";
        std::string const wishes = wishesOf(call);
        auto const before = files::readTextFile(file);
        if (!call.batch.resume || !before || *before != wishes) {
            if (call.batch.resume && before)
                std::cerr << "sallow: "
                          << base::said(
                                 "note: the folder was filled with other options, so all is "
                                 "made again\n");
            auto const written = files::writeWhole(file, wishes);
            if (!written) return written.error();
        }
        std::error_code failed;
        return Record(fs::last_write_time(file, failed));
    }

    // Whether an earlier call has saved the tune like this already: whole, with the same wishes,
    // and after the file that it is from was changed.
    bool has(BatchTune const& tune, SoundWish const& sound) const
    {
        std::error_code failed;
        auto const changed = fs::last_write_time(tune.file, failed);
        auto const stands = [&](std::string const& path) {
            std::error_code odd;
            auto const saved = fs::last_write_time(path, odd);
            return !odd && saved >= m_since && saved >= changed &&
                   fs::file_size(path, odd) > 0 && !odd;
        };
        return std::ranges::all_of(tune.outputs, [&](Output const& output) {
            return std::ranges::all_of(filesOf(output, sound), stands);
        });
    }

private:
    explicit Record(fs::file_time_type since) : m_since(since) {}
    fs::file_time_type m_since;
};

base::Result<base::Done> arrangeTune(BatchTune const& tune, Call const& call,
                                     files::Tables const& tables, SoundWish const& sound)
{
    auto brief = readBrief(*tune.book, tune.entry, call.options, tables);
    if (!brief) return brief.error();
    auto proposal = madeFor(*tune.book, *brief, call.options, tables);
    if (!proposal) {
        base::Fault fault = proposal.error();
        fault.place = placeOf(tune) + (fault.place.empty() ? "" : ", " + fault.place);
        return fault;
    }
    for (std::string const& snag : proposal::snagSentences(*proposal))
        std::cerr << "sallow: " << base::said("note: ") << placeOf(tune) << ": " << snag
                  << '\n';
    return writeOutputs({*proposal, files::ownText(tune.book->text, tune.entry), tables},
                        tune.outputs, SheetKind::Arrangement, call.style, sound);
}

// What all tunes came to; says it at the end.
class Tally {
public:
    explicit Tally(BatchPlan const& plan) : m_unread(plan.unread.size()) {}

    void count(End end) { ++m_counts[static_cast<std::size_t>(end)]; }

    ExitStatus sayAll(std::size_t asked) const
    {
        std::size_t const missing = counted(End::Missing);
        std::size_t const unwritten = counted(End::NotWritten);
        std::cerr << "sallow: " << asked
                  << (asked == 1 ? base::said(" tune: ") : base::said(" tunes: "))
                  << counted(End::Saved) << base::said(" saved");
        if (counted(End::Kept) > 0)
            std::cerr << ", " << counted(End::Kept) << base::said(" kept from before");
        if (missing > 0)
            std::cerr << ", " << missing << base::said(" missing for their own sake");
        if (unwritten > 0) std::cerr << ", " << unwritten << base::said(" not saved");
        if (m_unread > 0)
            std::cerr << "; " << m_unread
                      << (m_unread == 1 ? base::said(" file") : base::said(" files"))
                      << base::said(" could not be read");
        std::cerr << '\n';
        if (unwritten > 0) return CannotWriteOut;
        return missing + m_unread > 0 ? CannotArrange : Fine;
    }

private:
    std::size_t counted(End end) const { return m_counts[static_cast<std::size_t>(end)]; }

    std::size_t m_unread;
    std::array<std::size_t, endNames.size()> m_counts{};
};

// Ends as the signal would have ended it, so that whoever started the program sees it. A worker
// leaves the words to the one that started it.
ExitStatus stopped(Call const& call)
{
    if (!call.batch.tell)
        std::cerr << "sallow: "
                  << base::said(
                         "stopped; what is saved is whole, and --resume goes on from there\n");
    std::raise(cli::stopAsked()); // the second time it ends the program
    return Fine;
}

ExitStatus arrangeAll(BatchPlan const& plan, Call const& call, Part part,
                      files::Tables const& tables, SoundWish const& sound)
{
    auto const record = Record::of(call);
    if (!record) return refuse(record.error());
    Tally tally(plan);
    std::size_t asked = 0;
    {
        Progress progress(plan.tunes.size(), call.batch.tell);
        for (std::size_t i = part.which; i < plan.tunes.size(); i += part.of, ++asked) {
            if (cli::stopAsked() != 0) return stopped(call);
            BatchTune const& tune = plan.tunes[i];
            End end = End::Kept;
            if (!(call.batch.resume && record->has(tune, sound))) {
                auto const done = arrangeTune(tune, call, tables, sound);
                end = done                                         ? End::Saved
                      : refuse(done.error()) == CannotWriteOut ? End::NotWritten
                                                                   : End::Missing;
            }
            tally.count(end);
            if (call.batch.tell)
                std::cout << i + 1 << ' ' << base::nameOf(endNames, end) << ' ' << placeOf(tune)
                          << std::endl;
            progress.reached(i + 1);
        }
    }
    return tally.sayAll(asked);
}

// One process for each job, each with its own part of the plan; each tells what it has done. A
// process that ends before its time leaves its tunes missing, which is said of each.
ExitStatus inProcesses(BatchPlan const& plan, Call const& call)
{
    QStringList words{QStringLiteral("batch"), QStringLiteral("--language"),
                      QString::fromStdString(languageSpoken())};
    for (std::size_t i = 0; i < call.words.size(); ++i) {
        if (call.words[i] == "--jobs")
            ++i;
        else if (!call.words[i].starts_with("--jobs=") && call.words[i] != "--tell")
            words << QString::fromStdString(call.words[i]);
    }
    words << QStringLiteral("--tell");
    std::error_code failed;
    QString const self =
        QString::fromStdString(fs::read_symlink("/proc/self/exe", failed).string());
    std::vector<std::unique_ptr<QProcess>> jobs;
    for (int job = 1; job <= call.batch.jobs; ++job) {
        auto process = std::make_unique<QProcess>();
        process->setProcessChannelMode(QProcess::ForwardedErrorChannel);
        // A worker ends with the one that started it, however that ends.
        process->setChildProcessModifier([] { ::prctl(PR_SET_PDEATHSIG, SIGTERM); });
        process->start(self, words + QStringList{QStringLiteral("--part"),
                                                 QStringLiteral("%1/%2").arg(job).arg(
                                                     call.batch.jobs)});
        jobs.push_back(std::move(process));
    }
    Tally tally(plan);
    std::vector<bool> told(plan.tunes.size());
    std::size_t done = 0;
    {
        Progress progress(plan.tunes.size());
        auto const hear = [&](QProcess& process) {
            while (process.canReadLine()) {
                std::string const line = process.readLine().toStdString();
                if (call.batch.tell) std::cout << line << std::flush;
                std::size_t const number = std::strtoul(line.c_str(), nullptr, 10);
                if (number < 1 || number > told.size() || told[number - 1]) continue;
                for (auto const& known : endNames)
                    if (line.find(' ' + std::string(known.name) + ' ') ==
                        line.find(' ')) {
                        told[number - 1] = true;
                        tally.count(known.value);
                    }
                progress.reached(++done);
            }
        };
        for (bool running = true; running;) {
            running = false;
            for (auto const& process : jobs) {
                bool const ended = process->state() == QProcess::NotRunning ||
                                   process->waitForFinished(50);
                hear(*process);
                running = running || !ended;
            }
            if (cli::stopAsked() != 0) {
                for (auto const& process : jobs) process->terminate();
                for (auto const& process : jobs) process->waitForFinished(-1);
                return stopped(call);
            }
        }
    }
    for (std::size_t i = 0; i < told.size(); ++i) {
        if (told[i]) continue;
        tally.count(End::NotWritten);
        std::cerr
            << "sallow: " << placeOf(plan.tunes[i])
            << base::said(
                   ": this was not saved, because the process that was to do it ended early; "
                   "--resume makes up for it\n");
    }
    return tally.sayAll(plan.tunes.size());
}

} // namespace

ExitStatus batch(Call const& call)
{
    auto const part = partFrom(call.batch.part);
    if (!part) return refuse(part.error());
    if (call.batch.jobs > 1 && !call.batch.part.empty())
        return refuse(
            {base::FaultCode::BadCall, "--part", base::said("not together with --jobs")});
    if (call.outputs.size() > 1)
        return refuse(
            {base::FaultCode::BadCall, "-o", base::said("a batch saves in one folder")});
    std::vector<Output> kinds;
    for (std::string const& kind : call.batch.kinds) {
        auto output = outputFor("tune." + kind);
        if (!output) return refuse(output.error());
        kinds.push_back(*std::move(output));
    }
    auto const tables = openShelf(call.options);
    if (!tables) return refuse(tables.error());
    auto const sound = soundOf(call, *tables, kinds);
    if (!sound) return refuse(sound.error());
    // Words that are off are told once, before any tune.
    if (auto const any = briefFor(tune::Tune{}, call.options, *tables); !any)
        return refuse(any.error());
    auto const plan = batchPlan(call, *tables);
    if (!plan) return refuse(plan.error());
    bool const worker = !call.batch.part.empty() && call.batch.tell;
    for (base::Fault const& fault : plan->unread)
        if (!worker) refuse(fault);
    for (std::string const& folder : plan->folders) {
        std::error_code failed;
        fs::create_directories(folder, failed);
        if (failed)
            return refuse({base::FaultCode::CannotWrite, folder,
                           files::systemWords(failed.value())});
        if (!worker) files::sweepDrafts(folder);
    }
    cli::listenForStop();
    if (call.batch.jobs > 1 && plan->tunes.size() > 1) return inProcesses(*plan, call);
    return arrangeAll(*plan, call, *part, *tables, *sound);
}

} // namespace app
