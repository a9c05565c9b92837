// The one place that includes the library which splits the words of a call. What is said about
// them is said here, too, so that no library's wording reaches the reader.
#include "app/cli/parse.h"

#include "app/cli/nearest.h"
#include "core/base/words.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <list>

namespace cli {

namespace {

constexpr char const* about = base::marked(
    "Sallow arranges lead sheets for the lever harp. Without a command it opens the workbench: "
    "sallow [FILE...]");

// The long name of an option, "--output" of "-o,--output".
std::string shownName(Option const& option)
{
    auto const comma = option.name.rfind(',');
    return comma == std::string::npos ? option.name : option.name.substr(comma + 1);
}

bool isWord(Option const& option) { return option.name.front() != '-'; }

std::string lower(std::string text)
{
    std::ranges::transform(text, text.begin(),
                           [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return text;
}

template<typename Number>
std::optional<Number> numberFrom(std::string const& text)
{
    Number value{};
    auto const [stop, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || stop != text.data() + text.size()) return std::nullopt;
    if constexpr (std::is_floating_point_v<Number>)
        if (!std::isfinite(value)) return std::nullopt;
    return value;
}

// Puts written words into an option's target. What is off with them: none if all is well.
class Taker {
public:
    Taker(Option const& option, std::vector<std::string> const& written)
        : m_option(option), m_written(written)
    {}

    std::optional<std::string> operator()(bool* target) const
    {
        *target = true;
        return std::nullopt;
    }
    std::optional<std::string> operator()(std::vector<std::string>* target) const
    {
        target->clear();
        for (std::string const& word : m_written) {
            std::size_t from = 0;
            while (m_option.rule.commas && word.find(',', from) != std::string::npos) {
                std::size_t const comma = word.find(',', from);
                target->push_back(word.substr(from, comma - from));
                from = comma + 1;
            }
            target->push_back(word.substr(from));
        }
        return std::nullopt;
    }
    std::optional<std::string> operator()(std::string* target) const { return word(*target); }
    std::optional<std::string> operator()(std::optional<std::string>* target) const
    {
        return word(target->emplace());
    }
    std::optional<std::string>
    operator()(std::function<void(std::string const&)> const& put) const
    {
        std::string taken;
        auto off = word(taken);
        if (!off) put(taken);
        return off;
    }
    std::optional<std::string> operator()(int* target) const { return number(*target); }
    std::optional<std::string> operator()(double* target) const { return number(*target); }
    std::optional<std::string> operator()(std::optional<int>* target) const
    {
        return number(target->emplace());
    }
    std::optional<std::string> operator()(std::optional<double>* target) const
    {
        return number(target->emplace());
    }

private:
    std::string off(std::string const& what) const
    {
        return fmt::format("{}: {}", shownName(m_option), what);
    }
    std::optional<std::string> once() const
    {
        if (m_written.size() < 2) return std::nullopt;
        return off(base::said("it is given more than once; give it once"));
    }
    std::optional<std::string> word(std::string& target) const
    {
        if (auto again = once()) return again;
        target = m_written.front();
        auto const& known = m_option.rule.oneOf;
        if (known.empty()) return std::nullopt;
        target = lower(target);
        if (std::ranges::find(known, target) != known.end()) return std::nullopt;
        auto const near = nearestWord(target, known);
        return off(base::say("there is no \"{}\"; choose one of {{{}}}{}", m_written.front(),
                             fmt::join(known, ","),
                             near ? base::say(" (did you mean {}?)", *near) : ""));
    }
    template<typename Number>
    std::optional<std::string> number(Number& target) const
    {
        if (auto again = once()) return again;
        std::string const& text = m_written.front();
        auto const read = numberFrom<Number>(text);
        auto const& range = m_option.rule.range;
        if (read && (!range || (static_cast<double>(*read) >= range->first &&
                                static_cast<double>(*read) <= range->second))) {
            target = *read;
            return std::nullopt;
        }
        std::string const kind =
            std::is_integral_v<Number> ? base::said("a whole number") : base::said("a number");
        std::string const wanted =
            range ? base::say("{} from {:g} to {:g}", kind, range->first, range->second) : kind;
        return off(base::say("this must be {}, not \"{}\"", wanted, text));
    }

    Option const& m_option;
    std::vector<std::string> const& m_written;
};

// A verb's options as the library knows them, and what it has collected for each.
struct Declared {
    Options options;
    std::list<std::vector<std::string>> written; // by option
    std::vector<CLI::Option*> known;
};

std::string valueName(Option const& option)
{
    if (!option.rule.oneOf.empty()) return "NAME";
    if (std::holds_alternative<int*>(option.target) ||
        std::holds_alternative<std::optional<int>*>(option.target) ||
        std::holds_alternative<double*>(option.target) ||
        std::holds_alternative<std::optional<double>*>(option.target))
        return "NUMBER";
    return option.rule.commas ? "WORD,..." : "WORD";
}

Declared declareAll(CLI::App& program, app::Verb const& verb, app::Call& call)
{
    Declared declared;
    for (app::Group const& group : verb.groups)
        std::ranges::move(group(call), std::back_inserter(declared.options));
    for (Option const& option : declared.options) {
        if (std::holds_alternative<bool*>(option.target)) {
            declared.written.emplace_back();
            std::string const help = base::said(option.help);
            declared.known.push_back(program.add_flag(option.name, help));
            continue;
        }
        auto& words = declared.written.emplace_back();
        CLI::Option* const known =
            program.add_option(option.name, words, base::said(option.help));
        // Each takes the one word after it; repeated, they are collected.
        known->expected(1)->take_all()->option_text(isWord(option) ? " " : valueName(option));
        declared.known.push_back(known);
    }
    return declared;
}

std::string seeHelp(app::Verb const& verb)
{
    return base::say("; see sallow {} --help", verb.name);
}

// What is said of words that no option takes.
std::string unexpected(app::Verb const& verb, Options const& options, std::string const& word)
{
    std::string const name = word.substr(0, word.find('='));
    if (!name.starts_with('-') || name == "-")
        return base::say("\"{}\": {} takes no further word here{}", word, verb.name,
                         seeHelp(verb));
    std::vector<std::string> names;
    for (Option const& option : options)
        if (!isWord(option)) names.push_back(shownName(option));
    auto const near = nearestWord(name, names);
    return base::say("{}: {} has no such option{}{}", name, verb.name,
                     near ? base::say("; did you mean {}?", *near) : "", seeHelp(verb));
}

Parsed wordsOff(std::string what) { return {nullptr, std::move(what), true}; }

Parsed parseVerb(std::vector<std::string> words, app::Verb const& verb, app::Call& call)
{
    CLI::App program(base::said(verb.does), "sallow " + std::string(verb.name));
    program.allow_extras();
    Declared const declared = declareAll(program, verb, call);
    std::ranges::reverse(words); // as the library takes them
    try {
        program.parse(words);
    } catch (CLI::CallForHelp const&) {
        return {nullptr, program.help(), false};
    } catch (CLI::ArgumentMismatch const& error) {
        std::string const what = error.what();
        return wordsOff(base::say("{}: a word must follow it{}", what.substr(0, what.find(':')),
                                  seeHelp(verb)));
    } catch (CLI::ParseError const&) {
        return wordsOff(base::said("the words cannot be understood") + seeHelp(verb));
    }
    if (auto const extra = program.remaining(); !extra.empty())
        return wordsOff(unexpected(verb, declared.options, extra.front()));
    auto written = declared.written.begin();
    for (std::size_t i = 0; i < declared.options.size(); ++i, ++written) {
        Option const& option = declared.options[i];
        if (declared.known[i]->count() == 0) {
            if (!option.rule.required) continue;
            return wordsOff(base::say("{} needs {}{}", verb.name,
                                      isWord(option) ? option.name : shownName(option),
                                      seeHelp(verb)));
        }
        if (auto off = std::visit(Taker(option, *written), option.target))
            return wordsOff(*off + seeHelp(verb));
    }
    return {&verb, {}, false};
}

std::string overview(std::span<app::Verb const> verbs)
{
    std::string text =
        base::say("{}\n\nUsage: sallow COMMAND [WORDS...]\n\nCommands:\n", base::said(about));
    for (app::Verb const& verb : verbs)
        text += fmt::format("  {:<10}{}\n", verb.name, base::said(verb.does));
    return text + base::said("\nsallow COMMAND --help says more of each; --language de says it in German.\n");
}

} // namespace

Parsed parse(std::vector<std::string> const& words, std::span<app::Verb const> verbs,
             app::Call& call)
{
    std::string const first = words.empty() ? "--help" : words.front();
    if (first == "--help" || first == "-h") return {nullptr, overview(verbs), false};
    if (first == "--version") return {nullptr, "sallow " SALLOW_VERSION "\n", false};
    auto const verb = std::ranges::find(verbs, first, &app::Verb::name);
    if (verb != verbs.end()) {
        call.words.assign(words.begin() + 1, words.end());
        return parseVerb(call.words, *verb, call);
    }
    if (first.starts_with('-'))
        return wordsOff(base::say("{}: there is no such option; see sallow --help", first));
    std::vector<std::string> names;
    for (app::Verb const& known : verbs) names.emplace_back(known.name);
    if (auto const near = nearestWord(first, names))
        return wordsOff(
            base::say("{}: there is no such command or file; did you mean {}?", first, *near));
    return wordsOff(base::say("{}: there is no such command or file; the commands are {}",
                              first, fmt::join(names, ", ")));
}

} // namespace cli
