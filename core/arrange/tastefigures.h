#pragma once

#include "core/arrange/taste.h"

namespace arrange {

// Tells every figure as see(group, name, figure), by the names of shared/taste.json. `taste` is
// a Taste or a Taste const.
template<typename T, typename See>
void eachFigure(T& taste, See see)
{
    auto& reach = taste.reach;
    see("reach", "point_every_mm", reach.pointEveryMm);
    see("reach", "in_block", reach.inBlock);
    see("reach", "in_roll", reach.inRoll);
    see("reach", "one_by_one", reach.oneByOne);

    auto& rate = taste.rate;
    see("rate", "easy_share", rate.easyShare);
    see("rate", "at_the_limit", rate.atTheLimit);
    see("rate", "crosses_at_leisure", rate.crossesAtLeisure);
    see("rate", "crosses_at_once", rate.crossesAtOnce);

    auto& chordFit = taste.chordFit;
    see("chord_fit", "foreignness", chordFit.foreignness);
    see("chord_fit", "inverted", chordFit.inverted);
    see("chord_fit", "six_four", chordFit.sixFour);
    see("chord_fit", "strange_bass", chordFit.strangeBass);
    see("chord_fit", "over_bass", chordFit.overBass);
    see("chord_fit", "by_strength", chordFit.byStrength);

    auto& quality = taste.quality;
    see("quality", "third_missed", quality.thirdMissed);
    see("quality", "long_third_missed", quality.longThirdMissed);
    see("quality", "ninth_without_third", quality.ninthWithoutThird);
    see("quality", "root_missed", quality.rootMissed);
    see("quality", "wrong_third", quality.wrongThird);
    see("quality", "wrong_fifth", quality.wrongFifth);
    see("quality", "wrong_seventh", quality.wrongSeventh);
    see("quality", "seventh_off_scale", quality.seventhOffScale);
    see("quality", "by_strength", quality.byStrength);

    auto& clash = taste.melodyClash;
    see("melody_clash", "points_each", clash.pointsEach);
    see("melody_clash", "chord_tone_share", clash.chordToneShare);
    see("melody_clash", "by_octaves", clash.byOctaves);
    see("melody_clash", "by_strength", clash.byStrength);

    auto& company = taste.melodyCompany;
    see("melody_company", "by_interval_class", company.byIntervalClass);
    see("melody_company", "same_way", company.sameWay);
    see("melody_company", "holds_still", company.holdsStill);

    auto& collision = taste.collision;
    see("collision", "crowded", collision.crowded);
    see("collision", "tune_takes_string", collision.tuneTakesString);
    see("collision", "tune_comes_close", collision.tuneComesClose);
    see("collision", "string_shared", collision.stringShared);
    see("collision", "shared_seconds", collision.sharedSeconds);

    auto& mud = taste.mud;
    see("mud", "clear", mud.clear);
    see("mud", "point_every", mud.pointEvery);

    auto& meterFit = taste.meterFit;
    see("meter_fit", "first_beat_missing", meterFit.firstBeatMissing);
    see("meter_fit", "strong_beat_empty", meterFit.strongBeatEmpty);
    see("meter_fit", "beat_empty", meterFit.beatEmpty);
    see("meter_fit", "pulse_empty", meterFit.pulseEmpty);
    see("meter_fit", "upbeat_struck", meterFit.upbeatStruck);

    auto& activity = taste.activity;
    see("activity", "busy_notes_a_beat", activity.busyNotesABeat);
    see("activity", "held_notes_a_beat", activity.heldNotesABeat);
    see("activity", "extra_note", activity.extraNote);
    see("activity", "stillness", activity.stillness);

    auto& levers = taste.levers;
    see("levers", "needs_flip", levers.needsFlip);
    see("levers", "cannot_be_had", levers.cannotBeHad);
    see("levers", "hurried", levers.hurried);
    see("levers", "unhurried_seconds", levers.unhurriedSeconds);

    auto& cadence = taste.cadence;
    see("cadence", "open_end", cadence.openEnd);
    see("cadence", "coloured", cadence.coloured);
    see("cadence", "not_on_root", cadence.notOnRoot);
    see("cadence", "inverted", cadence.inverted);
    see("cadence", "no_octave", cadence.noOctave);
    see("cadence", "block", cadence.block);
    see("cadence", "stirs", cadence.stirs);
    see("cadence", "rests", cadence.rests);
    see("cadence", "part_share", cadence.partShare);
    see("cadence", "high_above", cadence.highAbove);
    see("cadence", "high", cadence.high);
    see("cadence", "no_breath", cadence.noBreath);
    see("cadence", "breath_slow", cadence.breathSlow);
    see("cadence", "ends_without_third", cadence.endsWithoutThird);
    see("cadence", "ends_unrolled", cadence.endsUnrolled);
    see("cadence", "ends_broken", cadence.endsBroken);
    see("cadence", "rolls_dance", cadence.rollsDance);

    auto& liking = taste.liking;
    see("liking", "lowest_home", liking.lowestHome);
    see("liking", "highest_home", liking.highestHome);
    see("liking", "lowest_best", liking.lowestBest);
    see("liking", "highest_best", liking.highestBest);
    see("liking", "lowest_third", liking.lowestThird);
    see("liking", "outside_home", liking.outsideHome);
    see("liking", "outside_best", liking.outsideBest);
    see("liking", "rests", liking.rests);
    see("liking", "missing_note", liking.missingNote);
    see("liking", "missing_richness", liking.missingRichness);
    see("liking", "extra_note", liking.extraNote);
    see("liking", "block", liking.block);
    see("liking", "no_fifth", liking.noFifth);
    see("liking", "bare_root", liking.bareRoot);
    see("liking", "turn", liking.turn);
    see("liking", "returns", liking.returns);
    see("liking", "low_closed_third", liking.lowClosedThird);
    see("liking", "close_degree", liking.closeDegree);
    see("liking", "high_degree", liking.highDegree);
    see("liking", "most_notes", liking.mostNotes);
    see("liking", "unhurried_seconds", liking.unhurriedSeconds);
    see("liking", "by_pattern_level", liking.byPatternLevel);

    auto& passes = taste.passes;
    see("passes", "fewer_at_first", passes.fewerAtFirst);
    see("passes", "more_at_last", passes.moreAtLast);
    see("passes", "note_too_many", passes.noteTooMany);
    see("passes", "note_too_few", passes.noteTooFew);

    auto& travel = taste.travel;
    see("travel", "points_a_bit", travel.pointsABit);
    see("travel", "easy_share", travel.easyShare);
    see("travel", "allowed_share", travel.allowedShare);
    see("travel", "led_share", travel.ledShare);

    auto& link = taste.link;
    see("link", "nothing_shared", link.nothingShared);
    see("link", "one_shared", link.oneShared);
    see("link", "plucked_while_loud", link.pluckedWhileLoud);
    see("link", "loud", link.loud);

    auto& ringClash = taste.ringClash;
    see("ring_clash", "usual", ringClash.usual);
    see("ring_clash", "point_every", ringClash.pointEvery);
    see("ring_clash", "inaudible", ringClash.inaudible);

    auto& thumb = taste.thumbLine;
    see("thumb_line", "free_strings", thumb.freeStrings);
    see("thumb_line", "string_beyond", thumb.stringBeyond);
    see("thumb_line", "leads_by_same", thumb.leadsBySame);
    see("thumb_line", "leads_nowhere", thumb.leadsNowhere);
    see("thumb_line", "seventh_hangs", thumb.seventhHangs);
    see("thumb_line", "seventh_leads", thumb.seventhLeads);
    see("thumb_line", "ninth_hangs", thumb.ninthHangs);

    see("bass_line", "by_strings", taste.bassLine.byStrings);
    see("bass_line", "step_leaps", taste.bassLine.stepLeaps);
    see("bass_line", "six_four_leaps", taste.bassLine.sixFourLeaps);

    auto& variety = taste.variety;
    see("variety", "same_again", variety.sameAgain);
    see("variety", "keeps", variety.keeps);
    see("variety", "varies", variety.varies);
    see("variety", "changes", variety.changes);
    see("variety", "other_pulse", variety.otherPulse);
    see("variety", "drops_out", variety.dropsOut);
    see("variety", "other_rhythm", variety.otherRhythm);
    see("variety", "change", variety.change);
    see("variety", "renewal", variety.renewal);
    see("variety", "in_bar", variety.inBar);
    see("variety", "unlike_phrase", variety.unlikePhrase);
    see("variety", "unlike_bar", variety.unlikeBar);
}

} // namespace arrange
