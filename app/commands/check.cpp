#include "core/files/check.h"
#include "app/commands/verbs.h"
#include "app/exitstatus.h"
#include "app/input.h"
#include "app/shelf.h"

#include <CLI/CLI.hpp>

#include <iostream>

namespace app {

namespace {

std::string placeText(tune::Place place)
{
    if (place.line <= 0) return {};
    return "line " + std::to_string(place.line) + ", column " + std::to_string(place.column) +
           ": ";
}

void say(tune::Tune const& tune)
{
    std::cout << "X:" << tune.number << ' ' << tune.title << ": " << tune.bars.size()
              << " bars, " << music::shown(tune.key) << ", " << music::text(tune.meter) << '\n';
    for (tune::Remark const& remark : tune.said)
        std::cout << "  " << placeText(remark.place) << remark.what << "; " << remark.did
                  << '\n';
}

ExitStatus check(std::string const& file, bool json)
{
    auto tables = openShelf();
    if (!tables) return refuse(tables.error());
    auto book = openBook(file, *tables);
    if (!book) return refuse(book.error());
    ExitStatus status = Fine;
    for (files::AbcEntry const& entry : book->entries) {
        auto tune = readTune(*book, entry);
        if (!tune) {
            status = refuse(tune.error());
        } else if (json) {
            std::cout << files::checkLine(*tune) << '\n';
        } else {
            say(*tune);
        }
    }
    return status;
}

} // namespace

void declareCheck(CLI::App& program, int& status)
{
    struct CheckCall {
        std::string input;
        bool json = false;
    };
    auto call = std::make_shared<CheckCall>();
    CLI::App* verb = program.add_subcommand(
        "check", "read a file and report everything wrong with it; write nothing");
    verb->add_option("FILE", call->input,
                     "an ABC, MusicXML, MIDI or .sallow file, or - for ABC on standard input")
        ->required();
    verb->add_flag("--json", call->json, "one JSON object a line for each tune");
    verb->callback([call, &status] { status = check(call->input, call->json); });
}

} // namespace app
