#include "app/options.h"

#include "app/chording.h"

namespace app {

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
    auto style = files::styleFrom(tables, options.manner.empty() ? tables.styles.front().style
                                                                 : options.manner);
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
