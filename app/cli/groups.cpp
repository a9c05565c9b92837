#include "app/cli/groups.h"

namespace app {

using cli::choice;
using cli::Options;
using cli::Rule;

namespace {

Rule oneOf(std::vector<std::string> names) { return {std::move(names), {}, false, false}; }
Rule from(double least, double most) { return {{}, {{least, most}}, false, false}; }

Rule const needed{{}, {}, true, false};
Rule const listed{{}, {}, false, true};

constexpr char const* readable =
    "an ABC, MusicXML, MIDI or .sallow file, or - for ABC on standard input";

} // namespace

Options tuneInput(Call& call) { return {{"IN", &call.input, readable, needed}}; }

Options batchInput(Call& call)
{
    return {{"IN", &call.input,
             "an ABC, MusicXML, MIDI or .sallow file, or a folder of them with its subfolders",
             needed}};
}

Options checkInput(Call& call) { return {{"FILE", &call.input, readable, needed}}; }

Options tunesInput(Call& call)
{
    return {
        {"IN", &call.input,
         "a tunebook, or a folder of ABC, MusicXML, MIDI and .sallow files with its subfolders",
         needed}};
}

Options findOptions(Call& call)
{
    FindOptions& o = call.find;
    return {
        {"--words", &o.words,
         "only tunes that have these words in title, kind, key, time signature or file name"},
        {"--kind", &o.kind, "only tunes of this kind, such as jig or waltz"},
        {"--key", &o.key, "only tunes in this key, such as G or Ador"},
        {"--meter", &o.meter, "only tunes in this time signature, such as 6/8"},
        {"--notes", &o.notes,
         "only tunes that begin with these notes, in any key, the most alike first: letters, "
         "as in 'g a b d', or degrees, as in '1 2 3 5'"},
        {"--arranged", &o.arranged,
         "only tunes that are arranged already, or are not: yes or no", oneOf({"yes", "no"})}};
}

Options anyOutputs(Call& call)
{
    return {{"-o,--output", &call.outputs,
             "file to save; its ending sets the type: .pdf .svg .png .musicxml .mxl .abc .mid "
             ".wav .flac .ogg .txt .html .plan.json .sallow; may be repeated",
             needed}};
}

Options pageOutputs(Call& call)
{
    return {{"-o,--output", &call.outputs,
             "file to save; its ending sets the type: .pdf .svg .png; may be repeated", needed}};
}

Options latticeOutput(Call& call)
{
    return {{"-o,--output", &call.outputs,
             "file to save: JSON, or plain numbers if the name ends in .bin", needed}};
}

Options pictureOutput(Call& call)
{
    return {{"-o,--output", &call.outputs, "file to save, .png", needed}};
}

Options folderOutput(Call& call)
{
    return {{"-o,--output", &call.outputs, "the folder to save in", needed}};
}

Options asJson(Call& call) { return {{"--json", &call.json, "as JSON"}}; }

Options tuneOptions(Call& call)
{
    return {{"--tune", &call.options.tune,
             "which tune: its X: number, its place in the tunebook, or all"}};
}

Options harpOptions(Call& call)
{
    ArrangeOptions& o = call.options;
    return {{"--harp", &o.harp, "which harp, such as floor34 or lap26"},
            {"--tuning", &o.tuning, "tuning with all levers down: Eb, F, C, Bb or Ab"},
            {"--levers", &o.levers, "which strings have levers: full, CFB, CF, F, none"}};
}

Options ownHarpOptions(Call& call)
{
    return {{"--harp-file", &call.options.harpFile,
             "a file of harps of your own, as the harp editor saves them"}};
}

Options namingOptions(Call& call)
{
    return {{"--names", &call.options.names,
             "how strings are named: usual, scientific, harp (octaves) or number",
             oneOf({"usual", "scientific", "harp", "number"})}};
}

Options playerOptions(Call& call)
{
    ArrangeOptions& o = call.options;
    return {{"--hand", &o.hand, "size of the hand: small, medium, large, child10 or child7"},
            {"--level", &o.level,
             "the player's level, 1 (beginner) to 5 (advanced); a saved arrangement is changed "
             "to fit it",
             from(1, 5)}};
}

Options tuneWishes(Call& call)
{
    ArrangeOptions& o = call.options;
    return {{"--tempo", &o.tempo, "beats a minute", from(10, 400)},
            {"--chords", &o.chords,
             "keep: use the written chord symbols; suggest: find them again from the notes; auto: "
             "find them where the tune, or a strain of it, has none",
             oneOf({"keep", "suggest", "auto"})},
            {"--passes", &o.passes,
             "shapes on the repeats: written (the same every time through) or varied",
             oneOf({"written", "varied"})}};
}

Options formOptions(Call& call)
{
    Wishes& o = call.options.wishes;
    return {{"--introduction", &o.introduction,
             "bars of the tune's last phrase before it: 2, 4 or none",
             oneOf({"2", "4", "none"})},
            {"--ending", &o.ending, "bars of the tune's last phrase after it: 2, 4 or none",
             oneOf({"2", "4", "none"})},
            {"--form", &o.form,
             "how the tune goes each time through, such as bare,plain,fuller: bare, plain, "
             "fuller, high (an octave higher), low, back (as at first); or twice, three, four, "
             "five for a form of so many times, once for none",
             listed}};
}

Options keyOptions(Call& call)
{
    return {{"--key", &call.options.key,
             "a key such as G or Ador; best: the best key for this harp; asis: the key as "
             "written"}};
}

Options mendOptions(Call& call)
{
    return {{"--mend", &call.options.mend,
             "what to do about a snag, a note or chord that the harp cannot give as written: any "
             "(each in its best way), no (stop and say what would help), or one way for all: "
             "plain, held, leave-out, octave, left-lightened, slower, key or level",
             oneOf({"any", "no", "plain", "held", "leave-out", "octave", "left-lightened",
                    "slower", "key", "level"})}};
}

Options rightHandOptions(Call& call)
{
    return {{"--right", &call.options.right,
             "the right hand: bare (the tune alone), closes (with a third, sixth or octave "
             "below where phrases end), full (also on strong beats)",
             oneOf({"bare", "closes", "full"})}};
}

Options mannerOptions(Call& call)
{
    ArrangeOptions& o = call.options;
    return {{"--manner", &o.manner, "manner of the left hand: plain, flowing, open, full, drone or ostinato"},
            {"--slider", &o.wishes.sliders,
             "SLIDER=PERCENT from 0 to 200, such as ease=150; 100 is the middle; the sliders "
             "are fullness, ease, colour, sameness and movement"}};
}

Options ownPatternOptions(Call& call)
{
    Wishes& wishes = call.options.wishes;
    return {{"--pattern", &wishes.patterns,
             "your own pattern, such as \"1 5 8 10 8\" or \"1-5-8 (4-3-1)\"; use + for notes "
             "plucked together, ~ for a roll, and low5 for the fifth below the root"},
            {"--patterns", &wishes.patternFiles, "a file of patterns of your own"}};
}

Options keptShapeOptions(Call& call)
{
    return {{"--lock", &call.options.wishes.locks,
             "keep a pattern at a chord: BAR=PATTERN or BAR.BEAT=PATTERN; \"rest\" for no left "
             "hand"}};
}

Options settingOptions(Call& call)
{
    return {{"--setting", &call.options.wishes.setting,
             "which setting: 0 the best, 1 a clearly different one, 2 the next, and so on",
             from(0, 20)}};
}

Options titleOptions(Call& call)
{
    WordOptions& o = call.options.words;
    return {{"--title", &o.title, "title to print instead of the tune's own"},
            {"--copyright", &o.copyright, "the copyright line, word for word"}};
}

Options creditOptions(Call& call)
{
    WordOptions& o = call.options.words;
    return {{"--composer", &o.composer, "composer on the page"},
            {"--arranger", &o.arranger, "arranger on the page"}};
}

Options sourceOptions(Call& call)
{
    return {{"--source", &call.options.words.source,
             "where the tune is from, printed at the foot"}};
}

Options noteOptions(Call& call)
{
    return {{"--note", &call.options.words.notes,
             "a remark for the player, printed after the music; may be repeated"}};
}

Options paperOptions(Call& call)
{
    return {choice("--paper", call.style.paper,
                   {{"a4", sheet::Paper::A4}, {"letter", sheet::Paper::Letter}},
                   "a4 or letter")};
}

Options printSizeOptions(Call& call)
{
    return {
        choice("--print-size", call.style.staffMm,
               {{"normal", sheet::usualStaffMm},
                {"large", sheet::largeStaffMm},
                {"huge", sheet::hugeStaffMm}},
               "normal, large or huge"),
        {"--coloured", &call.style.helps.coloured,
         "notes on C strings red and on F strings blue, with their letters"},
        {"--note-names", &call.style.helps.noteNames, "the letter of each note in its head"},
        {"--string-path", &call.style.helps.stringPath,
         "under the staff, the strings of the left hand one after another, for players who "
         "do not read music"},
        choice("--brackets", call.style.placings,
               {{"all", sheet::Placings::All},
                {"helpful", sheet::Placings::Helpful},
                {"none", sheet::Placings::None}},
               "brackets over what is placed together: all, none, or helpful, where a shape is "
               "new, crosses or jumps")};
}

Options resolutionOptions(Call& call)
{
    return {
        {"--resolution", &call.resolution,
         "PNG: a file a page, numbered where there are several, in this many dots an inch, 50 "
         "to 600; without it all pages are one picture at 150",
         from(50, 600)}};
}

Options sheetOptions(Call& call)
{
    return {choice("--sheet", call.sheet,
                   {{"arrangement", SheetKind::Arrangement},
                    {"pattern", SheetKind::Pattern},
                    {"lead", SheetKind::Lead}},
                   "which sheet to draw: arrangement, pattern or lead")};
}

Options soundOptions(Call& call)
{
    SoundOptions& o = call.sound;
    return {{"--at", &o.at,
             "sound files: how fast, 25% to 150% of the tempo; the arrangement stays the same"},
            {"--passage", &o.passage, "sound files: bars FIRST-LAST, such as 5-8"},
            {"--hands", &o.hands,
             "sound files: left, right, both, or tune: the right hand without added notes",
             oneOf({"left", "right", "both", "tune"})},
            {"--balance", &o.balance,
             "sound files: -100 to 100; above 0 the left hand is softer, below the right",
             from(-100, 100)},
            {"--bar-before", &o.barBefore, "sound files: the bar before the passage first"},
            {"--count-in", &o.countIn, "sound files: clicks before the first bar"},
            {"--click", &o.click, "sound files: a click on every beat"},
            {"--times", &o.times, "sound files: how often it is played, without a gap",
             from(1, 100)},
            {"--steps", &o.steps,
             "sound files: faster round by round, FROM-TO/BYxTIMES in per cent of the tempo, "
             "such as 60-100/5x2"},
            {"--roll", &o.roll,
             "sound files: milliseconds between two strings of a rolled chord", from(20, 120)},
            {"--lilt", &o.lilt,
             "sound files: how uneven the beats of a dance are, 0 to 100 %: the swing of a "
             "hornpipe, the long first quaver of a jig",
             from(0, 100)},
            {"--slowing", &o.slowing,
             "how much the tune slows at its end, 0 to 100 %: an air to half its tempo, a "
             "dance hardly; left out, airs, waltzes and marches slow and dances go on in time; "
             "sheets say rit.",
             from(0, 100)},
            {"--practice", &o.pack,
             "sound files: four for each, both hands, left and right alone (all slow, as --at "
             "says, else 60%) and both at the tempo"},
            {"--pitch", &o.pitch, "sound files: what A4 is tuned to, in Hz", from(430, 450)},
            {"--temperament", &o.temperament,
             "sound files: equal, meantone, pythagorean, well, or cents by note such as "
             "E=-14,B=-12"},
            {"--halo", &o.halo,
             "sound files: how much the strings that nobody plucks answer, 0 to 100 %",
             from(0, 100)},
            {"--font", &o.font, "sound files: a General MIDI sound font (.sf2)"}};
}

Options setOptions(Call& call)
{
    SeveralOptions& o = call.several;
    return {{"--set", &o.set,
             "tunes of a set, such as 1,3,2, in the keys that need the fewest lever flips "
             "between them; pages, sound and MIDI go into one file",
             listed},
            {"--any-order", &o.anyOrder,
             "with --set: in the order that needs the fewest lever flips"}};
}

Options levelsOptions(Call& call)
{
    return {{"--levels", &call.several.levels,
             "several levels with the same bars on each line, such as 1-5; pages go into one "
             "file, other types into a file each"}};
}

Options keyOrderOptions(Call& call)
{
    return {choice("--by", call.keyOrder,
                   {{"taken", proposal::KeyOrder::AsTaken},
                    {"cost", proposal::KeyOrder::ByCost}},
                   "order of the list: taken (as \"arrange\" would choose) or cost (left-hand "
                   "score, lowest first)")};
}

Options batchOptions(Call& call)
{
    BatchOptions& o = call.batch;
    return {{"--to", &o.kinds, "file types to save, such as pdf,mid,plan.json", listed},
            {"--jobs", &o.jobs, "how many processes share the work", from(1, 64)},
            {"--part", &o.part, "K/N: only every Nth tune, from the Kth on"},
            {"--resume", &o.resume, "skip what has been saved already with the same options"},
            {"--tell", &o.tell,
             "a line on standard output for each tune as it is done: saved, kept or missing"}};
}

Options pictureOptions(Call& call)
{
    PictureOptions& o = call.picture;
    return {{"--view", &o.view, "grid, sheet, bank or workbench",
             oneOf({"grid", "sheet", "bank", "workbench"})},
            {"--size", &o.size, "WIDTHxHEIGHT in pixels"},
            {"--scale", &o.scale, "how many times larger to draw it, 1 to 4", from(1, 4)},
            {"--theme", &o.theme,
             "light or dark, or strong-light or strong-dark of high contrast",
             oneOf({"light", "dark", "strong-light", "strong-dark"})}};
}

Options handoutOptions(Call& call)
{
    HandoutOptions& o = call.handout;
    return {{"--key", &o.key, "the key, such as G or Ador"},
            {"--patterns", &o.patterns,
             "patterns, such as 1-5-8,1-5-8-9; your own may have fingers in brackets", listed},
            {"--meters", &o.meters,
             "time signatures, such as 4/4,6/8, instead of the usual two", listed}};
}

} // namespace app
