#include "app/commands/verbs.h"
#include "app/exitstatus.h"
#include "app/input.h"
#include "app/options.h"
#include "app/shelf.h"
#include "core/files/keysjson.h"
#include "core/proposal/keyranking.h"

#include <CLI/CLI.hpp>

#include <iostream>
#include <map>

namespace app {

namespace {

struct KeysCall {
    std::string input;
    bool json = false;
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

ExitStatus keys(KeysCall const& call)
{
    auto tables = openShelf(call.options);
    if (!tables) return refuse(tables.error());
    auto book = openBook(call.input, *tables);
    if (!book) return refuse(book.error());
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
                     "an ABC or .sallow file, or - for ABC on standard input")
        ->required();
    verb->add_flag("--json", call->json, "as JSON");
    verb->add_option("--by", call->order,
                     "in which order: taken (as arrange takes them) or cost (of the left hand)")
        ->transform(CLI::CheckedTransformer(std::map<std::string, proposal::KeyOrder>{
            {"taken", proposal::KeyOrder::AsTaken}, {"cost", proposal::KeyOrder::ByCost}}));
    declare(*verb, call->options);
    verb->callback([call, &status] { status = keys(*call); });
}

} // namespace app
