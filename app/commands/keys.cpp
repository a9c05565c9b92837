#include "app/cli/job.h"
#include "app/commands/verbs.h"
#include "app/progress.h"
#include "core/base/words.h"
#include "core/files/keysjson.h"
#include "core/proposal/keyranking.h"
#include "core/proposal/keywish.h"
#include "core/proposal/tuneset.h"

#include <cstdlib>
#include <iostream>

namespace app {

namespace {

std::string movedWords(levers::KeyFit const& fit)
{
    if (fit.moved.semitones == 0) return {};
    std::string const sign = fit.moved.semitones > 0 ? "+" : "";
    bool const one = std::abs(fit.moved.semitones) == 1;
    return base::said(" (transposed by ") + sign + std::to_string(fit.moved.semitones) +
           (one ? base::said(" semitone)") : base::said(" semitones)"));
}

void say(harp::Harp const& harp, std::vector<proposal::RankedKey> const& keys)
{
    int place = 0;
    for (proposal::RankedKey const& key : keys) {
        if (!key.possible()) {
            std::cout << "-  " << music::shown(key.fit.key) << movedWords(key.fit) << ": "
                      << key.reason << '\n';
            continue;
        }
        std::cout << ++place << ". " << music::shown(key.fit.key) << movedWords(key.fit) << ": "
                  << key.reason << '\n'
                  << "   " << harp::setupLine(harp, key.fit.setup) << " (" << key.leversRaised
                  << base::said(" levers up)\n");
    }
}

// A set: its tunes by number, in the order and keys that turn the fewest levers.
ExitStatus keysOfSet(Job const& job)
{
    auto const briefs = wishedOfAll(job);
    if (!briefs) return refuse(briefs.error());
    auto const plan = proposal::setOf(*briefs, job.call.several.anyOrder
                                                   ? levers::SetOrder::Free
                                                   : levers::SetOrder::AsGiven);
    if (!plan) return refuse(plan.error());
    harp::Harp const& harp = briefs->front().harp;
    if (job.call.json) {
        std::cout << files::setJson(harp, *briefs, *plan) << '\n';
        return Fine;
    }
    int place = 0;
    for (levers::SetStep const& step : *plan) {
        if (place > 0) std::cout << "   " << levers::changesInWords(harp, step) << '\n';
        std::cout << ++place << ". " << (*briefs)[static_cast<std::size_t>(step.tune)].tune.title
                  << ": " << step.fit.reason << '\n'
                  << "   " << harp::setupLine(harp, step.fit.setup) << '\n';
    }
    return Fine;
}

} // namespace

ExitStatus keys(Call const& call)
{
    auto const job = jobOf(call);
    if (!job) return refuse(job.error());
    if (!call.several.set.empty()) return keysOfSet(*job);
    for (files::AbcEntry const& entry : job->entries) {
        auto const brief = wished(*job, entry);
        if (!brief) return refuse(brief.error());
        if (auto fault = proposal::tooLong(brief->tune)) {
            fault->place = placeOf(job->book, brief->tune);
            return refuse(*fault);
        }
        Waiting waiting(base::said("comparing keys"));
        auto const keys =
            proposal::rankedKeys(*brief, call.keyOrder, [&](std::size_t done, std::size_t all) {
                waiting.reached(done, all);
            });
        waiting.end();
        if (call.json)
            std::cout << files::keysJson(brief->harp, keys) << '\n';
        else
            say(brief->harp, keys);
    }
    return Fine;
}

} // namespace app
