#include "core/tune/pagewords.h"

#include <utility>

namespace tune {

PageWords pageWords(Tune const& tune)
{
    return {tune.title,    tune.composer,  tune.origin, tune.source,
            tune.arranger, tune.copyright, tune.notes};
}

Tune withWords(Tune tune, PageWords words)
{
    tune.title = std::move(words.title);
    tune.composer = std::move(words.composer);
    tune.origin = std::move(words.origin);
    tune.source = std::move(words.source);
    tune.arranger = std::move(words.arranger);
    tune.copyright = std::move(words.copyright);
    tune.notes = std::move(words.notes);
    return tune;
}

} // namespace tune
