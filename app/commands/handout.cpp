#include "core/sheet/papers/handout.h"
#include "app/commands/verbs.h"
#include "app/exitstatus.h"
#include "app/options.h"
#include "app/outputs.h"
#include "app/sharedfolder.h"
#include "core/files/tables/tables.h"
#include "ui/paint/sheetfonts.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <cstdio>

namespace app {

namespace {

struct HandoutCall {
    std::vector<std::string> outputs;
    std::vector<std::string> patterns{"1-5-8"};
    std::vector<std::string> meters;
    std::string key = "G";
    sheet::SheetStyle style;
    ArrangeOptions options; // of these the harp, hand, level and words
};

base::Result<std::vector<pattern::Pattern>> patternsNamed(std::vector<std::string> const& names,
                                                          pattern::PatternBook const& book)
{
    std::vector<pattern::Pattern> patterns;
    for (std::string const& name : names) {
        auto const known = std::ranges::find(book.patterns, name, &pattern::Pattern::name);
        if (known != book.patterns.end()) {
            patterns.push_back(*known);
            continue;
        }
        auto own = pattern::patternFrom(name);
        if (!own) return own.error();
        patterns.push_back(*std::move(own));
    }
    return patterns;
}

base::Result<std::vector<music::Meter>> metersNamed(std::vector<std::string> const& texts)
{
    std::vector<music::Meter> meters;
    for (std::string const& text : texts) {
        music::Meter meter;
        char rest = 0;
        bool const read =
            std::sscanf(text.c_str(), "%d/%d%c", &meter.beats, &meter.unit, &rest) == 2;
        bool const unit = meter.unit == 2 || meter.unit == 4 || meter.unit == 8;
        if (!read || !unit || meter.beats < 2 || meter.beats > 12)
            return base::Fault{base::FaultCode::BadCall, "--meters",
                               text + "; write meters such as 4/4,6/8"};
        meters.push_back(meter);
    }
    return meters;
}

base::Result<sheet::HandoutWish> wishOf(HandoutCall const& call, files::Tables const& tables)
{
    auto brief = briefFor(tune::Tune{}, call.options, tables);
    if (!brief) return brief.error();
    auto const key = music::keyFrom(call.key);
    if (!key) return base::Fault{base::FaultCode::BadCall, "--key", call.key};
    auto patterns = patternsNamed(call.patterns, tables.book);
    if (!patterns) return patterns.error();
    auto meters = metersNamed(call.meters);
    if (!meters) return meters.error();
    return sheet::HandoutWish{
        brief->harp, brief->hand,          brief->level,       tables.book,
        *key,        *std::move(patterns), *std::move(meters), worded({}, call.options.words)};
}

ExitStatus handout(HandoutCall const& call)
{
    auto tables = files::readTables(sharedFolder());
    if (!tables) return refuse(tables.error());
    auto font = ui::musicFont();
    if (!font) return refuse(font.error());
    auto wish = wishOf(call, *tables);
    if (!wish) return refuse(wish.error());
    auto document = sheet::handout(*wish, *font, call.style);
    if (!document) return refuse(document.error());
    auto written = writePages(*document, call.outputs);
    return written ? Fine : refuse(written.error());
}

} // namespace

void declareHandout(CLI::App& program, int& status)
{
    auto call = std::make_shared<HandoutCall>();
    CLI::App* verb = program.add_subcommand(
        "handout", "a page for each of some patterns: strings, music, bars to practise");
    verb->add_option("-o,--output", call->outputs, "what to write: .pdf .svg .png")->required();
    verb->add_option("--key", call->key, "the key, such as G or Ador");
    verb->add_option("--patterns", call->patterns,
                     "patterns, such as 1-5-8,1-5-8-9; own ones with fingers in brackets")
        ->delimiter(',');
    verb->add_option("--meters", call->meters, "meters, such as 4/4,6/8, for the usual two")
        ->delimiter(',');
    verb->add_option("--harp", call->options.harp, "harp by its id, such as floor34");
    verb->add_option("--tuning", call->options.tuning,
                     "key of the open strings: Eb, F, C, Bb, Ab");
    verb->add_option("--levers", call->options.levers,
                     "which strings have levers: full, CFB, CF, F, none");
    verb->add_option("--hand", call->options.hand, "small, medium, large, child7 or child10");
    verb->add_option("--level", call->options.level, "1 beginner to 5 advanced")
        ->check(CLI::Range(1, 5));
    declarePaper(*verb, call->style.paper);
    declare(*verb, call->options.words);
    verb->callback([call, &status] { status = handout(*call); });
}

} // namespace app
