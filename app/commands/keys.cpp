#include "app/commands/verbs.h"
#include "app/exitstatus.h"
#include "app/input.h"
#include "app/options.h"
#include "app/shelf.h"
#include "core/files/keysjson.h"
#include "core/levers/keyfit.h"

#include <CLI/CLI.hpp>

#include <iostream>

namespace app {

namespace {

struct KeysCall {
    std::string input;
    bool json = false;
    ArrangeOptions options;
};

void say(harp::Harp const& harp, std::vector<levers::KeyFit> const& fits)
{
    int place = 0;
    for (levers::KeyFit const& fit : fits) {
        if (!fit.possible) continue;
        std::cout << ++place << ". " << music::shown(fit.key);
        if (fit.moved.semitones != 0)
            std::cout << " (moved by " << std::showpos << fit.moved.semitones << std::noshowpos
                      << " semitones)";
        std::cout << ": " << fit.reason << '\n';
        std::string const setup = harp::setupLine(harp, fit.setup);
        if (!setup.empty()) std::cout << "   " << setup << '\n';
    }
    for (levers::KeyFit const& fit : fits)
        if (!fit.possible && fit.why)
            std::cout << "-  " << music::shown(fit.key) << " (moved by " << std::showpos
                      << fit.moved.semitones << std::noshowpos
                      << " semitones): " << base::sentence(*fit.why) << '\n';
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
        auto const fits =
            levers::keyFits(brief->tune, brief->harp, tune::tempoOf(brief->tune), brief->level);
        if (call.json)
            std::cout << files::keysJson(brief->harp, fits) << '\n';
        else
            say(brief->harp, fits);
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
    declare(*verb, call->options);
    verb->callback([call, &status] { status = keys(*call); });
}

} // namespace app
