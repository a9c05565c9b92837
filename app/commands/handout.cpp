#include "core/sheet/papers/handout.h"
#include "app/cli/job.h"
#include "app/commands/verbs.h"
#include "app/shelf.h"
#include "core/base/words.h"
#include "core/files/tables/tables.h"
#include "ui/paint/sheetfonts.h"

#include <algorithm>
#include <cstdio>

namespace app {

namespace {

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
                               base::say("{}; write time signatures such as 4/4,6/8", text)};
        meters.push_back(meter);
    }
    return meters;
}

base::Result<sheet::HandoutWish> wishOf(Call const& call, files::Tables const& tables)
{
    auto brief = briefFor(tune::Tune{}, call.options, tables);
    if (!brief) return brief.error();
    auto const key = music::keyFrom(call.handout.key);
    if (!key) return base::Fault{base::FaultCode::BadCall, "--key", call.handout.key};
    auto patterns = patternsNamed(call.handout.patterns, tables.book);
    if (!patterns) return patterns.error();
    auto meters = metersNamed(call.handout.meters);
    if (!meters) return meters.error();
    return sheet::HandoutWish{
        brief->harp, brief->hand,          brief->level,       tables.book,
        *key,        *std::move(patterns), *std::move(meters), worded({}, call.options.words)};
}

} // namespace

ExitStatus handout(Call const& call)
{
    OutputNames names = namesFor(call);
    auto const asked = pageOutputsOf(call);
    if (!asked) return refuse(asked.error());
    auto const outputs = claimed(*asked, names);
    if (!outputs) return refuse(outputs.error());
    auto tables = openShelf(call.options);
    if (!tables) return refuse(tables.error());
    auto font = ui::musicFont();
    if (!font) return refuse(font.error());
    auto wish = wishOf(call, *tables);
    if (!wish) return refuse(wish.error());
    auto document = sheet::handout(*wish, *font, call.style);
    if (!document) return refuse(document.error());
    auto written = writePages(*document, *outputs, &names);
    return written ? Fine : refuse(written.error());
}

} // namespace app
