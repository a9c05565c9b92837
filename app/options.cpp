#include "app/options.h"

#include "app/chording.h"
#include "app/namedchoice.h"

#include <CLI/CLI.hpp>

#include <map>

namespace app {

void declare(CLI::App& verb, ArrangeOptions& options)
{
    verb.add_option("--tune", options.tune, "X: number or place in the book, or all");
    verb.add_option("--harp", options.harp, "harp by its id, such as floor34");
    verb.add_option("--harp-file", options.harpFile,
                    "a file of harps of your own, as the harp editor saves them");
    verb.add_option("--names", options.names,
                    "how strings are named: usual, scientific, harp (octaves) or number")
        ->check(CLI::IsMember({"usual", "scientific", "harp", "number"}));
    verb.add_option("--tuning", options.tuning, "key of the open strings: Eb, F, C, Bb, Ab");
    verb.add_option("--levers", options.levers,
                    "which strings have levers: full, CFB, CF, F, none");
    verb.add_option("--hand", options.hand, "small, medium, large, child7 or child10");
    verb.add_option("--level", options.level,
                    "1 beginner to 5 advanced; a saved arrangement is made to fit it")
        ->check(CLI::Range(1, 5));
    verb.add_option("--key", options.key, "a key such as G or Ador, best, or asis");
    verb.add_option("--style", options.style, "style of the left hand by its id");
    verb.add_option("--tempo", options.tempo, "beats a minute")->check(CLI::Range(10.0, 400.0));
    verb.add_option("--chords", options.chords,
                    "keep what is written; suggest: found anew from the notes; auto: found "
                    "where the tune has none")
        ->check(CLI::IsMember({"keep", "suggest", "auto"}));
    verb.add_option("--passes", options.passes, "repeats as written, or varied")
        ->check(CLI::IsMember({"written", "varied"}));
    declare(verb, options.wishes);
    verb.add_option("--mend", options.mend,
                    "what to do about a snag, a note or chord that the harp cannot give as "
                    "written: any (each in its best way), no (refuse and say what would help), "
                    "or one way for all: plain, held, leave-out, octave, left-lightened, slower, "
                    "key or level")
        ->check(CLI::IsMember({"no", "any", "plain", "held", "leave-out", "octave",
                               "left-lightened", "slower", "key", "level"}));
    verb.add_option("--right", options.right,
                    "the right hand: bare (the tune alone), closes (with a third, sixth or "
                    "octave below where phrases close), full (on strong beats, too)")
        ->check(CLI::IsMember({"bare", "closes", "full"}));
    declare(verb, options.words);
}

void declare(CLI::App& verb, WordOptions& options)
{
    verb.add_option("--title", options.title, "title on the page, for the tune's own");
    verb.add_option("--composer", options.composer, "composer on the page");
    verb.add_option("--source", options.source, "where the tune is from, at the foot");
    verb.add_option("--arranger", options.arranger, "arranger on the page");
    verb.add_option("--copyright", options.copyright, "the copyright line, word for word");
    verb.add_option("--note", options.notes,
                    "a remark for the player, printed after the music; may be repeated")
        ->take_all();
}

tune::PageWords worded(tune::PageWords words, WordOptions const& options)
{
    if (options.title) words.title = *options.title;
    if (options.composer) words.composer = *options.composer;
    if (options.source) words.source = *options.source;
    if (options.arranger) words.arranger = *options.arranger;
    if (options.copyright) words.copyright = *options.copyright;
    if (!options.notes.empty()) words.notes = options.notes;
    return words;
}

void declarePaper(CLI::App& verb, sheet::Paper& paper)
{
    takesName<sheet::Paper>(verb.add_option("--paper", paper, "a4 or letter"),
                            {{"a4", sheet::Paper::A4}, {"letter", sheet::Paper::Letter}});
}

namespace {

// The harp asked for; of a file with one harp that one.
std::string harpWished(ArrangeOptions const& options, files::Tables const& tables)
{
    if (!options.harp.empty()) return options.harp;
    if (!options.harpFile.empty() && !tables.ownHarps.empty()) return tables.ownHarps.back().id;
    return "floor34";
}

base::Result<proposal::KeyWish> keyWish(std::string const& text)
{
    if (text == "best") return proposal::KeyWish{proposal::BestKey{}};
    if (text == "asis") return proposal::KeyWish{proposal::AsWritten{}};
    if (auto const key = music::keyFrom(text)) return proposal::KeyWish{*key};
    return base::Fault{base::FaultCode::BadCall, "--key", text};
}

constexpr int usualLevel = 3;

proposal::RightHand rightHand(std::string const& text)
{
    if (text == "closes") return proposal::RightHand::Closes;
    return text == "full" ? proposal::RightHand::Full : proposal::RightHand::Bare;
}

} // namespace

void declare(CLI::App& verb, sheet::SheetStyle& style)
{
    declarePaper(verb, style.paper);
    takesName<double>(verb.add_option("--print-size", style.staffMm, "normal or large"),
                      {{"normal", sheet::usualStaffMm}, {"large", sheet::largeStaffMm}});
}

base::Result<proposal::Brief> briefFor(tune::Tune tune, ArrangeOptions const& options,
                                       files::Tables const& tables)
{
    tune = chorded(std::move(tune), options.chords, tables);
    auto harp =
        files::harpFrom(tables, harpWished(options, tables), options.tuning, options.levers);
    if (!harp) return harp.error();
    if (auto const naming = harp::namingFrom(options.names);
        naming && *naming != harp::Naming::Usual)
        harp = withNaming(*std::move(harp), *naming);
    auto hand = files::handFrom(tables, options.hand);
    if (!hand) return hand.error();
    auto level = files::levelFrom(tables, options.level.value_or(usualLevel));
    if (!level) return level.error();
    auto style = files::styleFrom(tables, options.style.empty() ? tables.styles.front().style
                                                                : options.style);
    if (!style) return style.error();
    auto key = keyWish(options.key);
    if (!key) return key.error();

    tune = tune::withWords(tune, worded(tune::pageWords(tune), options.words));
    std::optional<double> quarters;
    if (options.tempo)
        quarters = *options.tempo * 4 * music::beatLength(tune.meter).wholes.toDouble();

    proposal::Brief brief{.tune = std::move(tune),
                          .harp = *std::move(harp),
                          .hand = *std::move(hand),
                          .level = *std::move(level),
                          .book = tables.book,
                          .weights = *std::move(style),
                          .key = *std::move(key),
                          .quartersPerMinute = quarters,
                          .passes = options.passes == "varied" ? proposal::Passes::Varied
                                                               : proposal::Passes::Written,
                          .locks = {},
                          .right = rightHand(options.right)};
    return withWishes(std::move(brief), options.wishes, tables);
}

} // namespace app
