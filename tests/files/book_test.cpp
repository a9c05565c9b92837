#include "core/arrange/candidates.h"
#include "core/files/tables/tables.h"
#include "core/pattern/layout.h"
#include "tests/arrange/scenes.h"
#include "tests/places.h"

#include <catch2/catch.hpp>

namespace {

files::Tables const& tables()
{
    static files::Tables const read = *files::readTables(places::shared());
    return read;
}

// One bar of C under a long high note, at 50 crotchets a minute.
scenes::Example slowBar(music::Meter meter, int level)
{
    std::string const bar = text(barLength(meter).wholes);
    scenes::Example out = scenes::example("[C] A5:" + bar + " |", "C", meter);
    out.harp = *files::harpFrom(tables(), "floor34", "Eb");
    out.hand = *files::handFrom(tables(), "medium");
    out.level = *files::levelFrom(tables(), level);
    out.tempo.beatsPerMinute = 50;
    out.book = tables().book;
    return out;
}

// Whether a pattern can be played on any root of the harp, by any of its rhythms.
bool isPlayable(pattern::Pattern const& p, music::Meter meter)
{
    scenes::Example const bar = slowBar(meter, p.level);
    arrange::View const view = bar.view(0);
    for (pattern::Rhythm const& r :
         pattern::rhythmsFor(bar.book, p, meter, music::Length{barLength(meter)}))
        for (harp::StringIndex const root : bar.harp.indices())
            if (std::holds_alternative<arrange::Laid>(arrange::laidOn({p, r}, root, view)))
                return true;
    return false;
}

music::Meter meterOf(std::string const& written)
{
    auto const slash = written.find('/');
    return {std::stoi(written.substr(0, slash)), std::stoi(written.substr(slash + 1))};
}

} // namespace

TEST_CASE("Every pattern of the book can be played at its own level in each of its meters",
          "[tables]")
{
    for (pattern::Pattern const& p : tables().book.patterns) {
        std::vector<std::string> meters = p.meters;
        if (meters.empty()) meters = {"4/4", "3/4", "6/8"};
        for (std::string const& meter : meters) {
            CAPTURE(p.name, meter);
            CHECK(isPlayable(p, meterOf(meter)));
        }
    }
}
