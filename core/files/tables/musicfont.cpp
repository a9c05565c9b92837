#include "core/files/jsonline.h"
#include "core/files/tables/tables.h"
#include "core/sheet/glyphs.h"

#include <fmt/format.h>
#include "core/files/json.h"

namespace files {

namespace {

// Where in the metadata the reading has come to.
struct Spot {
    std::string part;
    std::string glyph;
};

base::Fault malformed(std::string const& place, std::string detail)
{
    return {base::FaultCode::TableMalformed, "music font metadata, " + place,
            std::move(detail)};
}

sheet::Point point(Json const& pair) { return {pair.at(0), pair.at(1)}; }

// Calls read(code, value) for each glyph of ours that a part of the metadata tells of.
template<typename Read>
void forOurGlyphs(Json const& metadata, Spot& spot, char const* part, Read read)
{
    spot = {part, ""};
    Json const& all = metadata.at(part);
    for (sheet::glyph::Named const& ours : sheet::glyph::all) {
        auto const found = all.find(ours.name);
        if (found == all.end()) continue;
        spot.glyph = ours.name;
        read(ours.code, *found);
    }
}

sheet::MusicFont fontOf(Json const& metadata, Spot& spot)
{
    sheet::MusicFont font;
    font.name = metadata.at("fontName");
    forOurGlyphs(metadata, spot, "glyphBBoxes", [&](char32_t code, Json const& box) {
        sheet::Point const leftBottom = point(box.at("bBoxSW"));
        sheet::Point const rightTop = point(box.at("bBoxNE"));
        font.boxes[code] = {leftBottom.x, leftBottom.y, rightTop.x, rightTop.y};
    });
    forOurGlyphs(metadata, spot, "glyphAdvanceWidths",
                 [&](char32_t code, Json const& width) { font.advances[code] = width; });
    forOurGlyphs(metadata, spot, "glyphsWithAnchors", [&](char32_t code, Json const& anchors) {
        for (auto const& anchor : anchors.items())
            font.anchors[code][anchor.key()] = point(anchor.value());
    });
    spot = {"engravingDefaults", ""};
    for (auto const& setting : metadata.at("engravingDefaults").items())
        if (setting.value().is_number()) font.engraving[setting.key()] = setting.value();
    return font;
}

} // namespace

base::Result<sheet::MusicFont> musicFontFrom(std::string_view json)
{
    Spot spot{"fontName", ""};
    try {
        return fontOf(Json::parse(json), spot);
    } catch (Json::parse_error const& error) {
        return malformed(fmt::format("line {}", lineOfByte(json, error.byte)),
                         "no JSON from here on");
    } catch (Json::exception const&) {
        return malformed(spot.part, spot.glyph);
    }
}

} // namespace files
