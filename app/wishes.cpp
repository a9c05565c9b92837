#include "app/wishes.h"

#include "core/base/words.h"
#include "core/files/tables/patternfile.h"
#include "core/files/textfile.h"
#include "core/pattern/own.h"
#include "core/proposal/asked.h"
#include "core/proposal/formed.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cstdlib>

namespace app {

namespace {

using base::Fault;
using base::FaultCode;
using base::Result;

struct AskedLock {
    int bar = 1;
    std::optional<int> beat;
    std::string pattern;
};

std::optional<int> wholeNumber(std::string_view text)
{
    int value = 0;
    auto const [stop, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || stop != text.data() + text.size()) return std::nullopt;
    return value;
}

// "5=1-5-10", "5.3=1-5-10".
Result<AskedLock> askedFrom(std::string const& text)
{
    Fault const unclear{
        FaultCode::BadCall, "--lock",
        base::say("{}; write BAR=PATTERN or BAR.BEAT=PATTERN, such as 5.3=1-5-10", text)};
    auto const equals = text.find('=');
    if (equals == std::string::npos || equals + 1 == text.size()) return unclear;
    std::string const place = text.substr(0, equals);
    auto const dot = place.find('.');
    auto const bar = wholeNumber(place.substr(0, dot));
    if (!bar || *bar < 0) return unclear;
    AskedLock asked{*bar, std::nullopt, text.substr(equals + 1)};
    if (dot != std::string::npos) {
        asked.beat = wholeNumber(place.substr(dot + 1));
        if (!asked.beat || *asked.beat < 1) return unclear;
    }
    return asked;
}

// Where a pattern was written, in front of the place in it.
Fault saidAt(std::string const& where, Fault fault)
{
    fault.place = where + (fault.place.empty() ? "" : ", " + fault.place);
    return fault;
}

// Adds a typed pattern to the book; the name under which the book has it.
Result<std::string> added(pattern::PatternBook& book, std::string const& text,
                          std::string const& where)
{
    if (pattern::named(book, text) != nullptr || text == "rest") return text;
    auto own = pattern::ownPatternFrom(text);
    if (!own) return saidAt(where + " \"" + text + "\"", own.error());
    pattern::WithOwn with = pattern::withOwn(std::move(book), *std::move(own));
    book = std::move(with.book);
    return with.name;
}

std::optional<Fault> addFile(pattern::PatternBook& book, std::string const& file)
{
    auto const text = files::readTextFile(file);
    if (!text) return text.error();
    auto own = files::readPatternFile(*text, file);
    if (!own) return own.error();
    for (pattern::Pattern& p : *own)
        book = pattern::withOwn(std::move(book), std::move(p)).book;
    return std::nullopt;
}

std::optional<Fault> turn(proposal::Brief& brief, std::string const& text,
                          files::Tables const& tables)
{
    auto const equals = text.find('=');
    auto const percent =
        equals == std::string::npos ? std::nullopt : wholeNumber(text.substr(equals + 1));
    if (!percent || *percent < 0 || *percent > arrange::sliderMost)
        return Fault{FaultCode::BadCall, "--slider",
                     base::say("{}; write SLIDER=PERCENT from 0 to {}, such as ease=150", text,
                               arrange::sliderMost)};
    auto const slider = files::sliderFrom(tables, text.substr(0, equals));
    if (!slider) return slider.error();
    brief.sliders = arrange::withSlider(std::move(brief.sliders), *slider, *percent);
    return std::nullopt;
}

int barsOf(std::string const& text, int now)
{
    if (text.empty()) return now;
    return text == "none" ? 0 : std::atoi(text.c_str());
}

// "once", the id of a form, or manners one after another.
Result<std::vector<proposal::TimeManner>> timesOf(std::vector<std::string> const& names,
                                                  files::Tables const& tables)
{
    std::vector<proposal::TimeManner> times;
    if (names.size() == 1) {
        if (names.front() == "once") return times;
        auto const form =
            std::ranges::find(tables.forms, names.front(), &proposal::NamedForm::id);
        if (form != tables.forms.end()) return form->times;
    }
    if (names.size() > proposal::mostTimes)
        return Fault{FaultCode::BadCall, "--form",
                     base::say("a tune is played {} times at most", proposal::mostTimes)};
    for (std::string const& name : names) {
        auto manner = files::timeMannerFrom(tables, name);
        if (!manner) return manner.error();
        times.push_back(*std::move(manner));
    }
    return times;
}

} // namespace

Result<pattern::PatternBook> withWishes(pattern::PatternBook book, Wishes const& wishes)
{
    for (std::string const& file : wishes.patternFiles)
        if (auto const fault = addFile(book, file)) return *fault;
    for (std::string const& text : wishes.patterns)
        if (auto const name = added(book, text, "--pattern"); !name) return name.error();
    return book;
}

Result<proposal::Brief> withWishes(proposal::Brief brief, Wishes const& wishes,
                                   files::Tables const& tables)
{
    auto book = withWishes(std::move(brief.book), wishes);
    if (!book) return book.error();
    brief.book = *std::move(book);
    for (std::string const& text : wishes.locks) {
        auto const asked = askedFrom(text);
        if (!asked) return asked.error();
        if (auto const name = added(brief.book, asked->pattern, "--lock"); !name)
            return name.error();
    }
    for (std::string const& text : wishes.sliders)
        if (auto const fault = turn(brief, text, tables)) return *fault;
    if (wishes.setting) brief.take = *wishes.setting;
    proposal::Form form = brief.form;
    form.introduction = barsOf(wishes.introduction, form.introduction);
    form.ending = barsOf(wishes.ending, form.ending);
    if (!wishes.form.empty()) {
        auto times = timesOf(wishes.form, tables);
        if (!times) return times.error();
        form.times = *std::move(times);
    }
    if (!(form == brief.form)) brief = proposal::withForm(std::move(brief), std::move(form));
    return brief;
}

Result<proposal::Proposal> proposalFor(proposal::Brief const& brief, Wishes const& wishes)
{
    auto proposal = proposal::propose(brief);
    if (!proposal) return proposal;
    for (std::string const& text : wishes.locks) {
        auto asked = askedFrom(text);
        if (!asked) return asked.error();
        // Known by now, if only under the name that the book has for it.
        pattern::PatternBook known = proposal->brief.book;
        auto const name = added(known, asked->pattern, "--lock");
        if (!name) return name.error();
        auto const places = proposal::positionsAt(*proposal, asked->bar, asked->beat);
        if (places.empty())
            return Fault{FaultCode::BadCall, "--lock " + text,
                         base::said("there is no chord at that bar and beat")};
        for (arrange::PositionIndex const place : places) {
            proposal = proposal::withPattern(*std::move(proposal), place, *name);
            if (!proposal) return proposal;
        }
    }
    return proposal;
}

} // namespace app
