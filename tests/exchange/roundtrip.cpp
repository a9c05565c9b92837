#include "tests/exchange/roundtrip.h"

#include "core/arrange/unfold.h"
#include "core/files/musicxml/read.h"
#include "core/files/musicxml/write.h"
#include "tests/exchange/same.h"

#include <catch2/catch.hpp>

namespace roundtrip {

void checkMusicXml(arrange::Arrangement const& arrangement)
{
    using notation::Kind;
    for (Kind kind : {Kind::Arrangement, Kind::Patterns, Kind::Lead}) {
        auto read = files::readMusicXml(files::musicXml(arrangement, kind), "score");
        if (!read) FAIL(base::sentence(read.error()));
        tune::Tune back = *std::move(read);
        // The lead sheet keeps notes that gave way; the others say in words what is played.
        // Times through that differ are written out.
        arrange::Arrangement const printed =
            kind == Kind::Lead ? arrangement : arrange::asPrinted(arrangement);
        tune::Tune timed =
            kind == Kind::Lead ? arrange::writtenTune(arrangement) : printed.tune;
        timed.tempo = arrangement.tempo;
        for (arrange::GaveWay const& one : printed.gaveWay)
            std::erase_if(back.bars[one.bar].annotations, [&](tune::Annotation const& said) {
                return one.words.find(said.text) != std::string::npos ||
                       said.text.find(one.words) != std::string::npos;
            });
        CHECK(same::difference(same::sounding(timed), same::sounding(back),
                               {true, true, false}) == "");
    }
}

} // namespace roundtrip
