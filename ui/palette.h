#pragma once

#include <cmath>
#include <cstdint>

namespace ui {

// A colour as the screen mixes it, each part 0 to 255.
struct Rgb {
    std::uint8_t red = 0, green = 0, blue = 0;
    friend constexpr bool operator==(Rgb const&, Rgb const&) = default;
};
constexpr Rgb rgb(unsigned hex)
{
    return {static_cast<std::uint8_t>(hex >> 16U), static_cast<std::uint8_t>(hex >> 8U),
            static_cast<std::uint8_t>(hex)};
}

// Relative luminance and contrast ratio of two colours, as WCAG 2.1 defines them.
inline double luminance(Rgb colour)
{
    auto const linear = [](std::uint8_t part) {
        double const share = part / 255.0;
        return share <= 0.03928 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) +
           0.0722 * linear(colour.blue);
}
inline double contrast(Rgb a, Rgb b)
{
    double const la = luminance(a);
    double const lb = luminance(b);
    return ((la > lb ? la : lb) + 0.05) / ((la > lb ? lb : la) + 0.05);
}

// Willow green on warm paper by day, willow green on wet bark by night. Every colour that the
// workbench paints with is one of these.
struct Palette {
    bool dark = false;
    double leastOpacity = 0; // of what is painted faintly elsewhere
    // grounds, from the furthest back to the nearest
    Rgb paper;    // behind everything
    Rgb sunk;     // behind the string bank, grooves
    Rgb card;     // cards, fields, the side panel
    Rgb raised;   // menus, buttons
    Rgb leafWash; // what is chosen
    Rgb warnWash; // behind a message
    Rgb edge;     // outlines that only separate
    Rgb rule;     // outlines of things that can be pressed (3:1 and more)
    // writing
    Rgb ink;
    Rgb quiet;
    Rgb warnInk;
    // hands
    Rgb leaf;   // the left hand, and everything chosen
    Rgb onLeaf; // writing on it
    Rgb amber;  // the right hand: the tune
    Rgb onAmber;
    // strings
    Rgb red;    // C
    Rgb blue;   // F
    Rgb string; // all others
    Rgb wood;   // neck and soundboard
};

inline constexpr Palette dayPalette{
    .dark = false,
    .paper = rgb(0xF6F3EB),
    .sunk = rgb(0xEFEBE0),
    .card = rgb(0xFFFDF8),
    .raised = rgb(0xFFFFFF),
    .leafWash = rgb(0xE3EFE6),
    .warnWash = rgb(0xFBEFD8),
    .edge = rgb(0xDDD7C8),
    .rule = rgb(0x8B8A7D),
    .ink = rgb(0x22303A),
    .quiet = rgb(0x56626A),
    .warnInk = rgb(0x6E4506),
    .leaf = rgb(0x2A7353),
    .onLeaf = rgb(0xFFFFFF),
    .amber = rgb(0x9C610F),
    .onAmber = rgb(0xFFFFFF),
    .red = rgb(0xB3382B),
    .blue = rgb(0x2B4C9B),
    .string = rgb(0xA39C89),
    .wood = rgb(0xD9C7A4),
};

inline constexpr Palette nightPalette{
    .dark = true,
    .paper = rgb(0x1A211F),
    .sunk = rgb(0x161C1A),
    .card = rgb(0x232C29),
    .raised = rgb(0x2A3431),
    .leafWash = rgb(0x224036),
    .warnWash = rgb(0x40331C),
    .edge = rgb(0x3A4642),
    .rule = rgb(0x7F8C86),
    .ink = rgb(0xECEAE0),
    .quiet = rgb(0xA8B4AE),
    .warnInk = rgb(0xF2D49A),
    .leaf = rgb(0x6FC39A),
    .onLeaf = rgb(0x10201A),
    .amber = rgb(0xE0A24C),
    .onAmber = rgb(0x241803),
    .red = rgb(0xF2938A),
    .blue = rgb(0x93B3F5),
    .string = rgb(0x7E8780),
    .wood = rgb(0x5A4A33),
};

// For eyes that need it: writing at 7 to 1 and more, nothing faint.
inline constexpr Palette strongDayPalette{
    .dark = false,
    .leastOpacity = 0.9,
    .paper = rgb(0xFFFFFF),
    .sunk = rgb(0xFFFFFF),
    .card = rgb(0xFFFFFF),
    .raised = rgb(0xFFFFFF),
    .leafWash = rgb(0xD6F0DF),
    .warnWash = rgb(0xFFE9B8),
    .edge = rgb(0x8C8C8C),
    .rule = rgb(0x000000),
    .ink = rgb(0x000000),
    .quiet = rgb(0x1E1E1E),
    .warnInk = rgb(0x3D2600),
    .leaf = rgb(0x004D2E),
    .onLeaf = rgb(0xFFFFFF),
    .amber = rgb(0x6B3D00),
    .onAmber = rgb(0xFFFFFF),
    .red = rgb(0x9B0000),
    .blue = rgb(0x00227A),
    .string = rgb(0x5C5C5C),
    .wood = rgb(0xB08A4A),
};

inline constexpr Palette strongNightPalette{
    .dark = true,
    .leastOpacity = 0.9,
    .paper = rgb(0x000000),
    .sunk = rgb(0x000000),
    .card = rgb(0x000000),
    .raised = rgb(0x111111),
    .leafWash = rgb(0x00391F),
    .warnWash = rgb(0x3A2A00),
    .edge = rgb(0x6E6E6E),
    .rule = rgb(0xFFFFFF),
    .ink = rgb(0xFFFFFF),
    .quiet = rgb(0xE6E6E6),
    .warnInk = rgb(0xFFE08A),
    .leaf = rgb(0x7CFFB8),
    .onLeaf = rgb(0x000000),
    .amber = rgb(0xFFB84D),
    .onAmber = rgb(0x000000),
    .red = rgb(0xFF9E94),
    .blue = rgb(0xA6C1FF),
    .string = rgb(0xB0B0B0),
    .wood = rgb(0x8A7448),
};

} // namespace ui
