#include "app/commands/verbs.h"
#include "app/exitstatus.h"
#include "app/input.h"
#include "app/namedchoice.h"
#include "app/options.h"
#include "app/shelf.h"
#include "core/files/keysjson.h"
#include "core/proposal/keyranking.h"
#include "core/proposal/tuneset.h"

#include <CLI/CLI.hpp>

#include <iostream>
#include <map>

namespace app {

namespace {

struct KeysCall {
    std::string input;
    bool json = false;
    std::vector<std::string> set; // tunes of a set, instead of one tune
    bool anyOrder = false;
    proposal::KeyOrder order = proposal::KeyOrder::AsTaken;
    ArrangeOptions options;
};

std::string movedWords(levers::KeyFit const& fit)
{
    if (fit.moved.semitones == 0) return {};
    std::string const sign = fit.moved.semitones > 0 ? "+" : "";
    return " (moved by " + sign + std::to_string(fit.moved.semitones) + " semitones)";
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
                  << "   " << harp::setupLine(harp, key.fit.setup) << " ("
                  << key.leversRaised << " levers up)\n";
    }
}

// A set: its tunes by number, in the order and keys that turn the fewest levers.
ExitStatus keysOfSet(KeysCall const& call, Book const& book, files::Tables const& tables)
{
    std::vector<proposal::Brief> briefs;
    for (std::string const& number : call.set) {
        auto entry = chosenTunes(book, number);
        if (!entry) return refuse(entry.error());
        auto brief = readBrief(book, entry->front(), call.options, tables);
        if (!brief) return refuse(brief.error());
        briefs.push_back(*std::move(brief));
    }
    auto const plan = proposal::setOf(
        briefs, call.anyOrder ? levers::SetOrder::Free : levers::SetOrder::AsGiven);
    if (!plan) return refuse(plan.error());
    harp::Harp const& harp = briefs.front().harp;
    if (call.json) {
        std::cout << files::setJson(harp, briefs, *plan) << '\n';
        return Fine;
    }
    int place = 0;
    for (levers::SetStep const& step : *plan) {
        if (place > 0) std::cout << "   " << levers::changesInWords(harp, step) << '\n';
        std::cout << ++place << ". " << briefs[static_cast<std::size_t>(step.tune)].tune.title
                  << ": " << step.fit.reason << '\n'
                  << "   " << harp::setupLine(harp, step.fit.setup) << '\n';
    }
    return Fine;
}

ExitStatus keys(KeysCall const& call)
{
    auto tables = openShelf(call.options);
    if (!tables) return refuse(tables.error());
    auto book = openBook(call.input, *tables);
    if (!book) return refuse(book.error());
    if (!call.set.empty()) return keysOfSet(call, *book, *tables);
    auto entries = chosenTunes(*book, call.options.tune);
    if (!entries) return refuse(entries.error());
    for (files::AbcEntry const& entry : *entries) {
        auto brief = readBrief(*book, entry, call.options, *tables);
        if (!brief) return refuse(brief.error());
        auto const keys = proposal::rankedKeys(*brief, call.order);
        if (call.json)
            std::cout << files::keysJson(brief->harp, keys) << '\n';
        else
            say(brief->harp, keys);
    }
    return Fine;
}

} // namespace

void declareKeys(CLI::App& program, int& status)
{
    auto call = std::make_shared<KeysCall>();
    CLI::App* verb =
        program.add_subcommand("keys", "rank the keys and set-ups for a tune on a harp");
    verb->add_option("IN", call->input,
                     "an ABC, MusicXML, MIDI or .sallow file, or - for ABC on standard input")
        ->required();
    verb->add_flag("--json", call->json, "as JSON");
    verb->add_option("--set", call->set,
                     "tunes of a set, such as 1,3,2: the set-up of each, the levers turned "
                     "between them, and keys that need the fewest")
        ->delimiter(',');
    verb->add_flag("--any-order", call->anyOrder,
                   "with --set: also the order that needs the fewest");
    takesName<proposal::KeyOrder>(
        verb->add_option("--by", call->order,
                         "in which order: taken (as arrange takes them) or cost (of the left "
                         "hand)"),
        {{"taken", proposal::KeyOrder::AsTaken}, {"cost", proposal::KeyOrder::ByCost}});
    declare(*verb, call->options);
    verb->callback([call, &status] { status = keys(*call); });
}

} // namespace app
