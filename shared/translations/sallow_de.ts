<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>core</name>
    <message>
        <source>This is the only shape that can be played here, because the tune is too low or the hand has no time.</source>
        <translation>Nur dieser Griff ist hier spielbar, weil die Melodie zu tief liegt oder die Hand keine Zeit hat.</translation>
    </message>
    <message>
        <source>{} up from {} is wider than your hand holds comfortably, so it has to be rolled.</source>
        <translation>{} über {} ist weiter, als Ihre Hand bequem greift, und muss daher arpeggiert werden.</translation>
    </message>
    <message>
        <source>{} from {} stretches the hand.</source>
        <translation>{} über {} spreizt die Hand.</translation>
    </message>
    <message>
        <source>The {}'s {} clashes with the tune's {} {}.</source>
        <translation>{1} ({0}) reibt sich mit {2} der Melodie {3}.</translation>
    </message>
    <message>
        <source>The {} is only {} from the tune {}, so the hands are crowded.</source>
        <translation>Zwischen linker Hand ({0}) und Melodie ist {2} nur {1} Abstand; die Hände haben wenig Platz.</translation>
    </message>
    <message>
        <source>two strings</source>
        <translation>zwei Saiten</translation>
    </message>
    <message>
        <source>one string</source>
        <translation>eine Saite</translation>
    </message>
    <message>
        <source>The tune comes down to the left hand's {} {}.</source>
        <translation>Die Melodie kommt {1} bis zum {0} der linken Hand herunter.</translation>
    </message>
    <message>
        <source>{} and {} ring together so low that they sound muddy.</source>
        <translation>{} und {} klingen so tief zusammen mulmig.</translation>
    </message>
    <message>
        <source>The left hand has nothing on beat 1.</source>
        <translation>Die linke Hand spielt nichts auf Zählzeit 1.</translation>
    </message>
    <message>
        <source>It leaves a beat empty in both hands.</source>
        <translation>Eine Zählzeit bleibt in beiden Händen leer.</translation>
    </message>
    <message>
        <source>The tune is already busy here, and this adds more notes.</source>
        <translation>Die Melodie ist hier schon bewegt, und dieser Griff fügt weitere Noten hinzu.</translation>
    </message>
    <message>
        <source>The tune holds a long note here, and this does little under it.</source>
        <translation>Die Melodie hält hier einen langen Ton, und dieser Griff tut wenig darunter.</translation>
    </message>
    <message>
        <source>an octave</source>
        <translation>eine Oktave</translation>
    </message>
    <message>
        <source>a third</source>
        <translation>eine Terz</translation>
    </message>
    <message>
        <source>a sixth</source>
        <translation>eine Sexte</translation>
    </message>
    <message>
        <source>The {}'s {} makes {} with the tune's {} {}</source>
        <translation>{1} ({0}) bildet {4} {2} mit {3} der Melodie</translation>
    </message>
    <message>
        <source>{}, which sounds empty.</source>
        <translation>{}; das klingt leer.</translation>
    </message>
    <message>
        <source>It moves in the same direction as the tune, which sounds thinner than moving the other way.</source>
        <translation>Er bewegt sich in dieselbe Richtung wie die Melodie; das klingt dünner als Gegenbewegung.</translation>
    </message>
    <message>
        <source>It moves in the opposite direction to the tune, so both hands are heard.</source>
        <translation>Er bewegt sich gegen die Melodie, sodass man beide Hände hört.</translation>
    </message>
    <message>
        <source>tune</source>
        <comment>end</comment>
        <translation>das Stück</translation>
    </message>
    <message>
        <source>part</source>
        <comment>end</comment>
        <translation>der Teil</translation>
    </message>
    <message>
        <source>The {} ends here, and there is no bass note.</source>
        <translation>Hier endet {}, und es fehlt ein Basston.</translation>
    </message>
    <message>
        <source>The {} ends here, and the {} makes it sound unfinished.</source>
        <translation>Hier endet {}, und {} lässt es unfertig klingen.</translation>
    </message>
    <message>
        <source>The {} ends here, and this goes on moving instead of coming to rest on the root.</source>
        <translation>Hier endet {}, aber der Griff läuft weiter, statt auf dem Grundton zur Ruhe zu kommen.</translation>
    </message>
    <message>
        <source>It already has many notes the first time, so later times have little to add.</source>
        <translation>Er hat schon im ersten Durchgang viele Noten; spätere Durchgänge können kaum etwas hinzufügen.</translation>
    </message>
    <message>
        <source>It has few notes for time {} of {}.</source>
        <translation>Er hat wenige Noten für Durchgang {} von {}.</translation>
    </message>
    <message>
        <source>It has few notes the first time, so later times can have more.</source>
        <translation>Er hat im ersten Durchgang wenige Noten; spätere können mehr haben.</translation>
    </message>
    <message>
        <source>It has more notes than the time before, which suits time {} of {}.</source>
        <translation>Er hat mehr Noten als im Durchgang davor; das passt zu Durchgang {} von {}.</translation>
    </message>
    <message>
        <source>The left hand plays nothing here.</source>
        <translation>Die linke Hand spielt hier nichts.</translation>
    </message>
    <message>
        <source>It starts as high as {}, so there is little bass.</source>
        <translation>Er beginnt erst bei {}, daher ist wenig Bass da.</translation>
    </message>
    <message>
        <source>Its lowest note, {}, is very low.</source>
        <translation>Sein tiefster Ton {} ist sehr tief.</translation>
    </message>
    <message>
        <source>It has only one or two different notes, and there is time for more.</source>
        <translation>Er hat nur einen oder zwei verschiedene Töne, und für mehr wäre Zeit.</translation>
    </message>
    <message>
        <source>Plucked together, it sounds heavier than the same notes one after another.</source>
        <translation>Zusammen gezupft klingt er schwerer als dieselben Töne nacheinander.</translation>
    </message>
    <message>
        <source>It is less simple than a plain 1-5-8.</source>
        <translation>Er ist weniger einfach als ein schlichtes 1-5-8.</translation>
    </message>
    <message>
        <source>The left hand rests so that it can flip a lever to {}.</source>
        <translation>Die linke Hand pausiert, damit sie eine Klappe auf {} umlegen kann.</translation>
    </message>
    <message>
        <source>The left hand rests and leaves the tune alone.</source>
        <translation>Die linke Hand pausiert und lässt die Melodie allein.</translation>
    </message>
    <message>
        <source>The lowest note is the {} of the chord, {}.</source>
        <translation>Der tiefste Ton {1} ist {0} des Akkords.</translation>
    </message>
    <message>
        <source>{} is not a note of {}: it adds colour.</source>
        <translation>{} gehört nicht zu {}: Das gibt Farbe.</translation>
    </message>
    <message>
        <source>{} adds the {} above {}.</source>
        <translation>{0} fügt {1} über {2} hinzu.</translation>
    </message>
    <message>
        <source>One low note, {}: simple and safe.</source>
        <translation>Ein einziger tiefer Ton, {}: einfach und sicher.</translation>
    </message>
    <message>
        <source>{} and its octave: a firm bass.</source>
        <translation>{} mit Oktave: ein fester Bass.</translation>
    </message>
    <message>
        <source>An open fifth on {}: simple, with no third.</source>
        <translation>Eine leere Quinte auf {}: einfach, ohne Terz.</translation>
    </message>
    <message>
        <source>An open fifth and octave on {}: no third, so it fits major and minor.</source>
        <translation>Leere Quinte und Oktave auf {}: ohne Terz, passt also zu Dur und Moll.</translation>
    </message>
    <message>
        <source>Only roots and fifths, from {} up: no third.</source>
        <translation>Nur Grundtöne und Quinten ab {}: ohne Terz.</translation>
    </message>
    <message>
        <source>The left hand has to hurry at this tempo.</source>
        <translation>In diesem Tempo muss sich die linke Hand beeilen.</translation>
    </message>
    <message>
        <source>The tune is heard alone, so nothing can get in its way.</source>
        <translation>Die Melodie ist allein zu hören; nichts kann ihr in die Quere kommen.</translation>
    </message>
    <message>
        <source>It is within easy reach of your hand.</source>
        <translation>Er liegt bequem in der Hand.</translation>
    </message>
    <message>
        <source>The left hand has time for it.</source>
        <translation>Die linke Hand hat genug Zeit dafür.</translation>
    </message>
    <message>
        <source>None of its notes clashes with the tune.</source>
        <translation>Keiner seiner Töne reibt sich mit der Melodie.</translation>
    </message>
    <message>
        <source>It keeps clear of the right hand.</source>
        <translation>Er bleibt der rechten Hand fern.</translation>
    </message>
    <message>
        <source>From {} it rings clear.</source>
        <translation>Ab {} klingt er klar.</translation>
    </message>
    <message>
        <source>It fills the beats on which the tune has no note.</source>
        <translation>Er füllt die Zählzeiten, auf denen die Melodie keine Note hat.</translation>
    </message>
    <message>
        <source>The tune is busy here, and this stays simple.</source>
        <translation>Die Melodie ist hier bewegt, und dieser Griff bleibt einfach.</translation>
    </message>
    <message>
        <source>The tune holds a long note here, and this keeps the beat going.</source>
        <translation>Die Melodie hält hier einen langen Ton, und dieser Griff hält den Puls in Gang.</translation>
    </message>
    <message>
        <source>It needs no lever flip, and leaves time for the flips that the tune needs.</source>
        <translation>Er braucht keinen Klappenwechsel und lässt Zeit für die, die die Melodie braucht.</translation>
    </message>
    <message>
        <source>It brings the {} to a clear end.</source>
        <translation>Er führt klar zum Schluss: Hier endet {}.</translation>
    </message>
    <message>
        <source>It is a familiar pattern at a good height on the harp.</source>
        <translation>Es ist ein vertrautes Muster in guter Lage auf der Harfe.</translation>
    </message>
    <message>
        <source>The left hand has only a short way to move.</source>
        <translation>Die linke Hand hat nur einen kurzen Weg.</translation>
    </message>
    <message>
        <source>The strings still ringing go well with it.</source>
        <translation>Die noch klingenden Saiten passen gut dazu.</translation>
    </message>
    <message>
        <source>The third, {}, is high above {}, so it sounds clear.</source>
        <translation>Die Terz {} liegt hoch über {} und klingt daher klar.</translation>
    </message>
    <message>
        <source>Only notes of {}, from {} up.</source>
        <translation>Nur Töne von {}, ab {} aufwärts.</translation>
    </message>
    <message>
        <source>diminished</source>
        <comment>fifth</comment>
        <translation>vermindert</translation>
    </message>
    <message>
        <source>augmented</source>
        <comment>fifth</comment>
        <translation>übermäßig</translation>
    </message>
    <message>
        <source>The {} sounds {}, which is not a note of {}.</source>
        <translation>{0} klingt als {1}, das nicht zu {2} gehört.</translation>
    </message>
    <message>
        <source>Its lowest note is not the bass note that the chord symbol asks for.</source>
        <translation>Sein tiefster Ton ist nicht der Basston, den das Akkordsymbol verlangt.</translation>
    </message>
    <message>
        <source>Every note belongs to {}.</source>
        <translation>Jeder Ton gehört zu {}.</translation>
    </message>
    <message>
        <source>It has fewer notes outside {}.</source>
        <translation>Er hat weniger Töne, die nicht zu {} gehören.</translation>
    </message>
    <message>
        <source>{} is the wrong third for {}.</source>
        <translation>{} ist die falsche Terz für {}.</translation>
    </message>
    <message>
        <source>With the levers as they are, the fifth, {}, is {}, which is not the fifth of {}.</source>
        <translation>Bei dieser Klappenstellung ist die Quinte {0} {1}; das ist nicht die Quinte von {2}.</translation>
    </message>
    <message>
        <source>{} is the wrong seventh for {}.</source>
        <translation>{} ist die falsche Septime für {}.</translation>
    </message>
    <message>
        <source>The seventh, {}, is neither in {} nor in the key.</source>
        <translation>Die Septime {} gehört weder zu {} noch zur Tonart.</translation>
    </message>
    <message>
        <source>Neither hand plays the third of the chord.</source>
        <translation>Keine Hand spielt die Terz des Akkords.</translation>
    </message>
    <message>
        <source>It has the third of the chord, {}.</source>
        <translation>Er enthält die Terz des Akkords, {}.</translation>
    </message>
    <message>
        <source>It has no wrong note for {}.</source>
        <translation>Er hat keinen falschen Ton für {}.</translation>
    </message>
    <message>
        <source>It would need a lever flip from {} to {}.</source>
        <translation>Dafür müsste eine Klappe von {} auf {} umgelegt werden.</translation>
    </message>
    <message>
        <source>The string of {} gives no note of {}, whether its lever is up or down.</source>
        <translation>Die Saite von {} gibt keinen Ton von {}, weder mit Klappe oben noch unten.</translation>
    </message>
    <message>
        <source>It leaves the left hand little time to flip a lever.</source>
        <translation>Er lässt der linken Hand wenig Zeit, eine Klappe umzulegen.</translation>
    </message>
    <message>
        <source>thumb</source>
        <translation>Daumen</translation>
    </message>
    <message>
        <source>second finger</source>
        <translation>2. Finger</translation>
    </message>
    <message>
        <source>third finger</source>
        <translation>3. Finger</translation>
    </message>
    <message>
        <source>fourth finger</source>
        <translation>4. Finger</translation>
    </message>
    <message>
        <source>a unison</source>
        <translation>eine Prime</translation>
    </message>
    <message>
        <source>a second</source>
        <translation>eine Sekunde</translation>
    </message>
    <message>
        <source>a fourth</source>
        <translation>eine Quarte</translation>
    </message>
    <message>
        <source>a fifth</source>
        <translation>eine Quinte</translation>
    </message>
    <message>
        <source>a seventh</source>
        <translation>eine Septime</translation>
    </message>
    <message>
        <source>a ninth</source>
        <translation>eine None</translation>
    </message>
    <message>
        <source>a tenth</source>
        <translation>eine Dezime</translation>
    </message>
    <message>
        <source>an eleventh</source>
        <translation>eine Undezime</translation>
    </message>
    <message>
        <source>a twelfth</source>
        <translation>eine Duodezime</translation>
    </message>
    <message>
        <source>a reach of {} strings</source>
        <translation>eine Weite von {} Saiten</translation>
    </message>
    <message>
        <source>root</source>
        <comment>degree</comment>
        <translation>der Grundton</translation>
    </message>
    <message>
        <source>second</source>
        <comment>degree</comment>
        <translation>die Sekunde</translation>
    </message>
    <message>
        <source>third</source>
        <comment>degree</comment>
        <translation>die Terz</translation>
    </message>
    <message>
        <source>fourth</source>
        <comment>degree</comment>
        <translation>die Quarte</translation>
    </message>
    <message>
        <source>fifth</source>
        <comment>degree</comment>
        <translation>die Quinte</translation>
    </message>
    <message>
        <source>sixth</source>
        <comment>degree</comment>
        <translation>die Sexte</translation>
    </message>
    <message>
        <source>seventh</source>
        <comment>degree</comment>
        <translation>die Septime</translation>
    </message>
    <message>
        <source>octave</source>
        <comment>degree</comment>
        <translation>die Oktave</translation>
    </message>
    <message>
        <source>ninth</source>
        <comment>degree</comment>
        <translation>die None</translation>
    </message>
    <message>
        <source>tenth</source>
        <comment>degree</comment>
        <translation>die Dezime</translation>
    </message>
    <message>
        <source>eleventh</source>
        <comment>degree</comment>
        <translation>die Undezime</translation>
    </message>
    <message>
        <source>twelfth</source>
        <comment>degree</comment>
        <translation>die Duodezime</translation>
    </message>
    <message>
        <source>on beat {}</source>
        <translation>auf Zählzeit {}</translation>
    </message>
    <message>
        <source>after beat {}</source>
        <translation>nach Zählzeit {}</translation>
    </message>
    <message>
        <source>from the shape before</source>
        <translation>vom vorigen Griff her</translation>
    </message>
    <message>
        <source>to the shape after</source>
        <translation>zum nächsten Griff hin</translation>
    </message>
    <message>
        <source>The left hand has a long way to move from {} to {} and on to {}.</source>
        <translation>Die linke Hand hat einen weiten Weg von {} nach {} und weiter nach {}.</translation>
    </message>
    <message>
        <source>The left hand has a long way to move to {}.</source>
        <translation>Die linke Hand hat einen weiten Weg nach {}.</translation>
    </message>
    <message>
        <source>The left hand has a long way to move from {}.</source>
        <translation>Die linke Hand hat einen weiten Weg von {} her.</translation>
    </message>
    <message>
        <source>The strings still ringing from {} clash with it.</source>
        <translation>Die von {} noch klingenden Saiten reiben sich damit.</translation>
    </message>
    <message>
        <source>It rings on into {} and clashes with it.</source>
        <translation>Er klingt in {} hinein und reibt sich damit.</translation>
    </message>
    <message>
        <source>It clashes with the strings still ringing from the bars around it.</source>
        <translation>Er reibt sich mit den Saiten, die aus den Nachbartakten noch klingen.</translation>
    </message>
    <message>
        <source>It goes otherwise than {}, which has the same tune and chord.</source>
        <translation>Er geht anders als {}, obwohl Melodie und Akkord dort gleich sind.</translation>
    </message>
    <message>
        <source>The left hand stops in the middle of the phrase.</source>
        <translation>Die linke Hand setzt mitten in der Phrase aus.</translation>
    </message>
    <message>
        <source>It is the same pattern as the one before.</source>
        <translation>Es ist dasselbe Muster wie davor.</translation>
    </message>
    <message>
        <source>It is the same pattern as the one after.</source>
        <translation>Es ist dasselbe Muster wie danach.</translation>
    </message>
    <message>
        <source>Its notes are faster or slower than those of the shapes before and after.</source>
        <translation>Seine Noten sind schneller oder langsamer als die der Griffe davor und danach.</translation>
    </message>
    <message>
        <source>It goes as {} does, which has the same tune and chord.</source>
        <translation>Er geht wie {}, wo Melodie und Akkord gleich sind.</translation>
    </message>
    <message>
        <source>It is the same pattern as the one next to it, so the phrase moves evenly.</source>
        <translation>Es ist dasselbe Muster wie nebenan, so läuft die Phrase gleichmäßig.</translation>
    </message>
    <message>
        <source>It makes a change from the {} before it.</source>
        <translation>Er bringt Abwechslung nach dem {} davor.</translation>
    </message>
    <message>
        <source>It makes a change before the {} that follows.</source>
        <translation>Er bringt Abwechslung vor dem {}, das folgt.</translation>
    </message>
    <message>
        <source>It keeps the left hand moving.</source>
        <translation>Er hält die linke Hand in Bewegung.</translation>
    </message>
    <message>
        <source>{} is plucked again while it is still ringing loudly.</source>
        <translation>{} wird wieder gezupft, während die Saite noch laut klingt.</translation>
    </message>
    <message>
        <source>It shares no string with the shapes before and after, so every finger has to be placed again.</source>
        <translation>Er hat keine Saite mit den Griffen davor und danach gemeinsam; jeder Finger muss neu gesetzt werden.</translation>
    </message>
    <message>
        <source>{} is also in the shape before or after, so the hand can stay in place.</source>
        <translation>{} kommt auch im Griff davor oder danach vor, so kann die Hand liegen bleiben.</translation>
    </message>
    <message>
        <source>It plucks no string that is still ringing.</source>
        <translation>Er zupft keine Saite, die noch klingt.</translation>
    </message>
    <message>
        <source>The top note, {}, is a jump {}.</source>
        <translation>Der höchste Ton {0} ist ein Sprung {1}.</translation>
    </message>
    <message>
        <source>Its last note is not next to a string of the next chord.</source>
        <translation>Sein letzter Ton liegt nicht neben einer Saite des nächsten Akkords.</translation>
    </message>
    <message>
        <source>Its last note, {}, leads by step into the next chord.</source>
        <translation>Sein letzter Ton {} führt schrittweise in den nächsten Akkord.</translation>
    </message>
    <message>
        <source>The top note, {}, is close to the top notes before and after.</source>
        <translation>Der höchste Ton {} liegt nah bei den höchsten Tönen davor und danach.</translation>
    </message>
    <message>
        <source>The lowest note, {}, is a jump {}.</source>
        <translation>Der tiefste Ton {0} ist ein Sprung {1}.</translation>
    </message>
    <message>
        <source>Its last note, {}, leads the bass by step to the next chord.</source>
        <translation>Sein letzter Ton, {}, führt den Bass schrittweise zum nächsten Akkord.</translation>
    </message>
    <message>
        <source>The lowest note moves by step: {}.</source>
        <translation>Der tiefste Ton geht schrittweise: {}.</translation>
    </message>
    <message>
        <source>The lowest note moves only a little: {}.</source>
        <translation>Der tiefste Ton bewegt sich nur wenig: {}.</translation>
    </message>
    <message>
        <source>second time</source>
        <translation>2. Durchgang</translation>
    </message>
    <message>
        <source>third time</source>
        <translation>3. Durchgang</translation>
    </message>
    <message>
        <source>time {}</source>
        <translation>Durchgang {}</translation>
    </message>
    <message>
        <source>a string that the harp does not have</source>
        <translation>eine Saite, die die Harfe nicht hat</translation>
    </message>
    <message numerus="yes">
        <source>it needs {} strings below {}, the lowest string of this harp</source>
        <translation><numerusform>er braucht {0} Saite unter {1}, der tiefsten Saite dieser Harfe</numerusform><numerusform>er braucht {0} Saiten unter {1}, der tiefsten Saite dieser Harfe</numerusform></translation>
    </message>
    <message numerus="yes">
        <source>it needs {} strings above {}, the highest string of this harp</source>
        <translation><numerusform>er braucht {0} Saite über {1}, der höchsten Saite dieser Harfe</numerusform><numerusform>er braucht {0} Saiten über {1}, der höchsten Saite dieser Harfe</numerusform></translation>
    </message>
    <message>
        <source>one of its strings sounds {}, depending on the time through</source>
        <translation>eine seiner Saiten klingt je nach Durchgang als {}</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source>{}, its notes are faster than {:.2g} a second, the limit for the left hand at level {}</source>
        <translation>{0} sind seine Noten schneller als {1:.2Lg} in der Sekunde, die Grenze der linken Hand auf Niveau {2}</translation>
    </message>
    <message>
        <source>from {} to {} {} is {:.0f} mm, more than this hand can reach, and there is no time to move the hand</source>
        <translation>{2} sind es von {0} bis {1} {3:.0f} mm; so weit greift diese Hand nicht, und zum Versetzen fehlt die Zeit</translation>
    </message>
    <message>
        <source>choose a narrower shape or a larger harp</source>
        <translation>wählen Sie einen engeren Griff oder eine größere Harfe</translation>
    </message>
    <message>
        <source>its lowest note would be {}, where notes so close together sound muddy</source>
        <translation>sein tiefster Ton wäre {}, wo so eng liegende Töne mulmig klingen</translation>
    </message>
    <message>
        <source>choose an open pattern such as 1-5-8</source>
        <translation>wählen Sie ein offenes Muster wie 1-5-8</translation>
    </message>
    <message>
        <source>with the levers as they are, the string of its root sounds {}</source>
        <translation>bei dieser Klappenstellung klingt die Saite seines Grundtons als {}</translation>
    </message>
    <message>
        <source>choose another key, another tuning or another chord</source>
        <translation>wählen Sie eine andere Tonart, eine andere Stimmung oder einen anderen Akkord</translation>
    </message>
    <message>
        <source>allow different shapes on the repeats</source>
        <translation>erlauben Sie andere Griffe bei den Wiederholungen</translation>
    </message>
    <message>
        <source>{}, the tune is on {}, a string that this shape needs</source>
        <translation>{0} liegt die Melodie auf {1}, einer Saite, die dieser Griff braucht</translation>
    </message>
    <message>
        <source>choose a narrower shape or a higher key</source>
        <translation>wählen Sie einen engeren Griff oder eine höhere Tonart</translation>
    </message>
    <message>
        <source>{}, it would pluck {}, above the tune's {}, so the hands would cross</source>
        <translation>{0} würde er {1} zupfen, über {2} der Melodie; die Hände würden sich kreuzen</translation>
    </message>
    <message>
        <source>play slower, or choose a higher level or a pattern with fewer notes</source>
        <translation>spielen Sie langsamer, oder wählen Sie ein höheres Niveau oder ein Muster mit weniger Noten</translation>
    </message>
    <message>
        <source>{}, the {} string is plucked again sooner than level {} allows</source>
        <translation>{0} wird die Saite {1} früher wieder gezupft, als Niveau {2} erlaubt</translation>
    </message>
    <message>
        <source>play slower or choose a higher level</source>
        <translation>spielen Sie langsamer, oder wählen Sie ein höheres Niveau</translation>
    </message>
    <message>
        <source>choose a narrower shape, or pluck its notes one after another</source>
        <translation>wählen Sie einen engeren Griff, oder zupfen Sie seine Töne nacheinander</translation>
    </message>
    <message>
        <source>play slower or choose a narrower shape</source>
        <translation>spielen Sie langsamer, oder wählen Sie einen engeren Griff</translation>
    </message>
    <message>
        <source>{}, the left hand is flipping the lever of {}</source>
        <translation>{0} legt die linke Hand gerade die Klappe von {1} um</translation>
    </message>
    <message>
        <source>choose a shape that begins later or has fewer notes</source>
        <translation>wählen Sie einen Griff, der später beginnt oder weniger Noten hat</translation>
    </message>
    <message>
        <source>the lever of {} is flipped {}, while its note is still needed</source>
        <translation>die Klappe von {0} wird {1} umgelegt, während ihr Ton noch gebraucht wird</translation>
    </message>
    <message>
        <source>choose a shape without that string</source>
        <translation>wählen Sie einen Griff ohne diese Saite</translation>
    </message>
    <message>
        <source>it spans {} strings, and level {} allows {}</source>
        <translation>er umfasst {} Saiten, und Niveau {} erlaubt {}</translation>
    </message>
    <message>
        <source>choose a higher level</source>
        <translation>wählen Sie ein höheres Niveau</translation>
    </message>
    <message>
        <source>it is a level {} pattern, and your level is {}</source>
        <translation>es ist ein Muster von Niveau {}, und Ihr Niveau ist {}</translation>
    </message>
    <message>
        <source>the pattern book gives it for {}, and this bar is in {}</source>
        <translation>in der Mustersammlung steht es für {}, und dieser Takt ist ein {}</translation>
    </message>
    <message>
        <source>write it as your own pattern, which may be used in any metre</source>
        <translation>schreiben Sie es als eigenes Muster, das in jeder Taktart gilt</translation>
    </message>
    <message>
        <source>it has {} notes, and this chord has room for {}</source>
        <translation>er hat {} Noten, und bei diesem Akkord ist Platz für {}</translation>
    </message>
    <message>
        <source>choose a shorter pattern, or write your own</source>
        <translation>wählen Sie ein kürzeres Muster, oder schreiben Sie ein eigenes</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>diese Datei gibt es nicht</translation>
    </message>
    <message>
        <source>check the name and the folder</source>
        <translation>prüfen Sie Namen und Ordner</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>die Datei ist nicht lesbar</translation>
    </message>
    <message>
        <source>check that it is a file, not a folder, and that you are allowed to read it</source>
        <translation>prüfen Sie, ob es eine Datei ist, kein Ordner, und ob Sie sie lesen dürfen</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>die Datei ist leer</translation>
    </message>
    <message>
        <source>save the tune again and open the new file</source>
        <translation>speichern Sie das Stück noch einmal, und öffnen Sie die neue Datei</translation>
    </message>
    <message>
        <source>this is not a text file</source>
        <translation>das ist keine Textdatei</translation>
    </message>
    <message>
        <source>give an ABC file, saved as plain text</source>
        <translation>nehmen Sie eine ABC-Datei, als reiner Text gespeichert</translation>
    </message>
    <message>
        <source>the file is too large for a tunebook</source>
        <translation>die Datei ist zu groß für eine Sammlung</translation>
    </message>
    <message>
        <source>split it into smaller tunebooks</source>
        <translation>teilen Sie sie in kleinere Sammlungen</translation>
    </message>
    <message>
        <source>there is no tune in this file</source>
        <translation>in dieser Datei ist kein Stück</translation>
    </message>
    <message>
        <source>each tune needs a line X:1 at its start and a line K: for its key</source>
        <translation>jedes Stück braucht am Anfang eine Zeile X:1 und eine Zeile K: für seine Tonart</translation>
    </message>
    <message>
        <source>the tunebook has no tune with this number</source>
        <translation>die Sammlung hat kein Stück mit dieser Nummer</translation>
    </message>
    <message>
        <source>give the number of its X: line, or its place in the book</source>
        <translation>nennen Sie die Nummer seiner X:-Zeile oder seinen Platz in der Sammlung</translation>
    </message>
    <message>
        <source>the tune has no notes</source>
        <translation>das Stück hat keine Noten</translation>
    </message>
    <message>
        <source>the tune is too long</source>
        <translation>das Stück ist zu lang</translation>
    </message>
    <message>
        <source>split it, or correct its lengths</source>
        <translation>teilen Sie es, oder berichtigen Sie seine Längen</translation>
    </message>
    <message>
        <source>this line cannot be read</source>
        <translation>diese Zeile ist nicht lesbar</translation>
    </message>
    <message>
        <source>correct the line or take it out</source>
        <translation>berichtigen oder entfernen Sie die Zeile</translation>
    </message>
    <message>
        <source>the key cannot be understood</source>
        <translation>die Tonart ist nicht verständlich</translation>
    </message>
    <message>
        <source>write K: with a note name and, where needed, a mode, such as K:Ador</source>
        <translation>schreiben Sie K: mit einem Tonnamen und, wo nötig, einem Modus, etwa K:Ador</translation>
    </message>
    <message>
        <source>the time signature cannot be read</source>
        <translation>die Taktart ist nicht lesbar</translation>
    </message>
    <message>
        <source>write M: with two numbers, such as M:6/8</source>
        <translation>schreiben Sie M: mit zwei Zahlen, etwa M:6/8</translation>
    </message>
    <message>
        <source>the length cannot be understood</source>
        <translation>die Länge ist nicht verständlich</translation>
    </message>
    <message>
        <source>write a fraction of a whole note, such as 1/8</source>
        <translation>schreiben Sie einen Bruchteil einer ganzen Note, etwa 1/8</translation>
    </message>
    <message>
        <source>this is not a note</source>
        <translation>das ist keine Note</translation>
    </message>
    <message>
        <source>correct or remove it</source>
        <translation>berichtigen oder entfernen Sie sie</translation>
    </message>
    <message>
        <source>the tuplet cannot be understood</source>
        <translation>die Notengruppe ist nicht verständlich</translation>
    </message>
    <message>
        <source>write (3 before three notes, or (p:q:r for p notes in the time of q, over the next r notes</source>
        <translation>schreiben Sie (3 vor drei Noten, oder (p:q:r für p Noten in der Zeit von q, über die nächsten r Noten</translation>
    </message>
    <message>
        <source>this chord symbol cannot be read</source>
        <translation>dieses Akkordsymbol ist nicht lesbar</translation>
    </message>
    <message>
        <source>write a root and a kind, such as G, Em7 or D/F#</source>
        <translation>schreiben Sie Grundton und Art, etwa G, Em7 oder D/F#</translation>
    </message>
    <message>
        <source>the repeat signs do not match</source>
        <translation>die Wiederholungszeichen passen nicht zusammen</translation>
    </message>
    <message>
        <source>pair the repeat signs, and number the time bars 1, 2 and so on</source>
        <translation>setzen Sie die Wiederholungszeichen paarweise, und zählen Sie die Klammern 1, 2 und so weiter</translation>
    </message>
    <message>
        <source>the time signature changes inside a bar</source>
        <translation>die Taktart wechselt mitten im Takt</translation>
    </message>
    <message>
        <source>put the change at a bar line</source>
        <translation>setzen Sie den Wechsel an einen Taktstrich</translation>
    </message>
    <message>
        <source>Sallow cannot use this type of file</source>
        <translation>diesen Dateityp kann Sallow nicht verwenden</translation>
    </message>
    <message>
        <source>use a file name with one of these endings</source>
        <translation>nehmen Sie einen Dateinamen mit einer dieser Endungen</translation>
    </message>
    <message>
        <source>the file is damaged</source>
        <translation>die Datei ist beschädigt</translation>
    </message>
    <message>
        <source>correct it there, or save the file again from the program it came from</source>
        <translation>berichtigen Sie sie dort, oder speichern Sie sie aus ihrem Programm noch einmal</translation>
    </message>
    <message>
        <source>there is no MusicXML music in this file</source>
        <translation>in dieser Datei sind keine MusicXML-Noten</translation>
    </message>
    <message>
        <source>export the music as MusicXML, or use another file</source>
        <translation>exportieren Sie die Noten als MusicXML, oder nehmen Sie eine andere Datei</translation>
    </message>
    <message>
        <source>the file has a value that cannot be right</source>
        <translation>die Datei enthält einen Wert, der nicht stimmen kann</translation>
    </message>
    <message>
        <source>correct it, or export the music again from the program it came from</source>
        <translation>berichtigen Sie ihn, oder exportieren Sie die Noten aus ihrem Programm noch einmal</translation>
    </message>
    <message>
        <source>the file cannot be written</source>
        <translation>die Datei kann nicht geschrieben werden</translation>
    </message>
    <message>
        <source>check that the folder exists, that you may write to it and that the disk has room</source>
        <translation>prüfen Sie, ob es den Ordner gibt, ob Sie darin schreiben dürfen und ob der Datenträger Platz hat</translation>
    </message>
    <message>
        <source>one of Sallow's own data files is missing</source>
        <translation>eine eigene Datendatei von Sallow fehlt</translation>
    </message>
    <message>
        <source>install Sallow again, or set SALLOW_SHARED to its shared folder</source>
        <translation>installieren Sie Sallow neu, oder setzen Sie SALLOW_SHARED auf seinen Ordner shared</translation>
    </message>
    <message>
        <source>one of Sallow's own data files is damaged</source>
        <translation>eine eigene Datendatei von Sallow ist beschädigt</translation>
    </message>
    <message>
        <source>correct it there, or install Sallow again</source>
        <translation>berichtigen Sie sie dort, oder installieren Sie Sallow neu</translation>
    </message>
    <message>
        <source>the strings are out of order</source>
        <translation>die Saiten sind nicht in der Reihe</translation>
    </message>
    <message>
        <source>each string is one letter above the one before</source>
        <translation>jede Saite liegt einen Tonbuchstaben über der vorigen</translation>
    </message>
    <message>
        <source>this description does not fit a lever harp</source>
        <translation>diese Beschreibung passt nicht zu einer Hakenharfe</translation>
    </message>
    <message>
        <source>correct its number of strings, pitch or spacing</source>
        <translation>berichtigen Sie Saitenzahl, Tonhöhe oder Abstand</translation>
    </message>
    <message>
        <source>there is no harp of this name</source>
        <translation>eine Harfe dieses Namens gibt es nicht</translation>
    </message>
    <message>
        <source>choose one of those listed</source>
        <translation>wählen Sie aus der Liste</translation>
    </message>
    <message>
        <source>there is no tuning or lever fitting of this name</source>
        <translation>eine Stimmung oder Klappenausstattung dieses Namens gibt es nicht</translation>
    </message>
    <message>
        <source>there is no hand or level of this name</source>
        <translation>eine Hand oder ein Niveau dieses Namens gibt es nicht</translation>
    </message>
    <message>
        <source>there is no manner of this name</source>
        <translation>einen Stil dieses Namens gibt es nicht</translation>
    </message>
    <message>
        <source>there is no slider of this name</source>
        <translation>einen Regler dieses Namens gibt es nicht</translation>
    </message>
    <message>
        <source>the harp's tuning and levers cannot give this key</source>
        <translation>Stimmung und Klappen der Harfe ergeben diese Tonart nicht</translation>
    </message>
    <message>
        <source>choose another key, or another tuning if the harp's maker allows it</source>
        <translation>wählen Sie eine andere Tonart, oder eine andere Stimmung, wenn sie für die Harfe erlaubt ist</translation>
    </message>
    <message>
        <source>the harp has no string for a note of the tune</source>
        <translation>für einen Ton der Melodie hat die Harfe keine Saite</translation>
    </message>
    <message>
        <source>use a larger harp or another key</source>
        <translation>nehmen Sie eine größere Harfe oder eine andere Tonart</translation>
    </message>
    <message>
        <source>there is no time to flip the lever</source>
        <translation>es fehlt die Zeit, die Klappe umzulegen</translation>
    </message>
    <message>
        <source>try a slower tempo, a higher level or another key, or leave out the note with the accidental</source>
        <translation>versuchen Sie ein langsameres Tempo, ein höheres Niveau oder eine andere Tonart, oder lassen Sie den Ton mit dem Vorzeichen weg</translation>
    </message>
    <message>
        <source>this is not a pattern</source>
        <translation>das ist kein Muster</translation>
    </message>
    <message>
        <source>write degrees joined by dashes, such as 1-5-8; use + for notes plucked together, ~ for a roll, and low5 for the fifth below the root</source>
        <translation>schreiben Sie Tonstufen mit Strichen dazwischen, etwa 1-5-8; + für zusammen gezupfte Töne, ~ für ein Arpeggio, low5 für die Quinte unter dem Grundton</translation>
    </message>
    <message>
        <source>the pattern is too long</source>
        <translation>das Muster ist zu lang</translation>
    </message>
    <message>
        <source>write at most eight notes, or spread them over two chords</source>
        <translation>schreiben Sie höchstens acht Töne, oder verteilen Sie sie auf zwei Akkorde</translation>
    </message>
    <message>
        <source>the hand cannot be placed with these fingers</source>
        <translation>mit diesen Fingern lässt sich die Hand nicht setzen</translation>
    </message>
    <message>
        <source>the thumb (1) goes on the highest string and finger 4 on the lowest; write u after a finger that crosses under and o after one that crosses over, or leave the fingers out to get the usual ones</source>
        <translation>der Daumen (1) gehört auf die höchste Saite, Finger 4 auf die tiefste; schreiben Sie u nach einem Finger, der untersetzt, und o nach einem, der übersetzt, oder lassen Sie die Finger weg, dann gelten die üblichen</translation>
    </message>
    <message>
        <source>the pattern book has no such pattern</source>
        <translation>die Mustersammlung hat dieses Muster nicht</translation>
    </message>
    <message>
        <source>choose one from the pattern book, or write your own</source>
        <translation>wählen Sie eines aus der Sammlung, oder schreiben Sie ein eigenes</translation>
    </message>
    <message>
        <source>the tune has no chord symbols</source>
        <translation>das Stück hat keine Akkordsymbole</translation>
    </message>
    <message>
        <source>write chord symbols into the tune; in ABC, &quot;G&quot; before a note</source>
        <translation>schreiben Sie Akkordsymbole in das Stück; in ABC &quot;G&quot; vor eine Note</translation>
    </message>
    <message>
        <source>the left hand cannot play anything here</source>
        <translation>die linke Hand kann hier nichts spielen</translation>
    </message>
    <message>
        <source>try a slower tempo, a higher level, a larger hand or harp, or another key</source>
        <translation>versuchen Sie ein langsameres Tempo, ein höheres Niveau, eine größere Hand oder Harfe oder eine andere Tonart</translation>
    </message>
    <message>
        <source>the shape you chose cannot be kept here</source>
        <translation>der gewählte Griff kann hier nicht bleiben</translation>
    </message>
    <message>
        <source>choose another shape, or let this one change</source>
        <translation>wählen Sie einen anderen Griff, oder geben Sie diesen frei</translation>
    </message>
    <message>
        <source>the pattern cannot be played here</source>
        <translation>das Muster ist hier nicht spielbar</translation>
    </message>
    <message>
        <source>no sound font was found</source>
        <translation>es wurde keine Klangdatei gefunden</translation>
    </message>
    <message>
        <source>install one, or name it with the SALLOW_SOUNDFONT variable</source>
        <translation>installieren Sie eine, oder nennen Sie sie in der Variablen SALLOW_SOUNDFONT</translation>
    </message>
    <message>
        <source>the sound output cannot be opened</source>
        <translation>die Klangausgabe lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>connect one; you can still save sound files without it</source>
        <translation>schließen Sie eine an; Klangdateien können Sie auch ohne speichern</translation>
    </message>
    <message>
        <source>the MIDI keyboard cannot be opened</source>
        <translation>das MIDI-Keyboard lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>connect it, close other programs that use it, and choose it again</source>
        <translation>schließen Sie es an, beenden Sie andere Programme, die es verwenden, und wählen Sie es noch einmal</translation>
    </message>
    <message>
        <source>this is not understood</source>
        <translation>das ist nicht verständlich</translation>
    </message>
    <message>
        <source>see --help</source>
        <translation>siehe --help</translation>
    </message>
    <message>
        <source>something is wrong</source>
        <translation>etwas stimmt nicht</translation>
    </message>
    <message>
        <source>see the documentation</source>
        <translation>siehe Handbuch</translation>
    </message>
    <message>
        <source>there is no bar line before the new time signature</source>
        <translation>vor der neuen Taktart fehlt ein Taktstrich</translation>
    </message>
    <message>
        <source>one is added</source>
        <translation>einer wird ergänzt</translation>
    </message>
    <message>
        <source>there is no bar line before the new part</source>
        <translation>vor dem neuen Teil fehlt ein Taktstrich</translation>
    </message>
    <message>
        <source>the bar is split here</source>
        <translation>der Takt wird hier geteilt</translation>
    </message>
    <message>
        <source>more notes together than one hand can play</source>
        <translation>mehr Töne zugleich, als eine Hand spielen kann</translation>
    </message>
    <message>
        <source>only the lowest are used</source>
        <translation>nur die tiefsten werden verwendet</translation>
    </message>
    <message>
        <source>a triplet or other tuplet begins before the last one is complete</source>
        <translation>eine Triole oder ähnliche Gruppe beginnt, bevor die vorige vollständig ist</translation>
    </message>
    <message>
        <source>the last is cut short</source>
        <translation>die vorige wird gekürzt</translation>
    </message>
    <message>
        <source>there is no note before &gt; or &lt;</source>
        <translation>vor &gt; oder &lt; steht keine Note</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>weggelassen</translation>
    </message>
    <message>
        <source>more than three &gt; or &lt; together</source>
        <translation>mehr als drei &gt; oder &lt; nacheinander</translation>
    </message>
    <message>
        <source>read as three</source>
        <translation>als drei gelesen</translation>
    </message>
    <message>
        <source>there is no note before the tie</source>
        <translation>vor dem Haltebogen steht keine Note</translation>
    </message>
    <message>
        <source>the tune begins with a later time bar</source>
        <translation>das Stück beginnt mit einer späteren Klammer</translation>
    </message>
    <message>
        <source>left as written</source>
        <translation>so belassen</translation>
    </message>
    <message>
        <source>a bar has a second line of notes (&amp;)</source>
        <translation>ein Takt hat eine zweite Notenzeile (&amp;)</translation>
    </message>
    <message>
        <source>only the first is used</source>
        <translation>nur das Erste wird verwendet</translation>
    </message>
    <message>
        <source>&quot;{}&quot; means nothing here</source>
        <translation>„{}“ bedeutet hier nichts</translation>
    </message>
    <message>
        <source>a note beyond the highest or lowest octave</source>
        <translation>eine Note jenseits der höchsten oder tiefsten Oktave</translation>
    </message>
    <message>
        <source>accidentals of less than a semitone</source>
        <translation>Vorzeichen von weniger als einem Halbton</translation>
    </message>
    <message>
        <source>read as whole semitones</source>
        <translation>als ganze Halbtöne gelesen</translation>
    </message>
    <message>
        <source>a note has no length</source>
        <translation>eine Note hat keine Länge</translation>
    </message>
    <message>
        <source>there are more than two chord symbols over one note</source>
        <translation>über einer Note stehen mehr als zwei Akkordsymbole</translation>
    </message>
    <message>
        <source>only two are used</source>
        <translation>nur zwei werden verwendet</translation>
    </message>
    <message>
        <source>a bar line stands inside a tuplet</source>
        <translation>ein Taktstrich steht in einer Triole oder ähnlichen Gruppe</translation>
    </message>
    <message>
        <source>the tuplet goes on behind it</source>
        <translation>die Gruppe geht dahinter weiter</translation>
    </message>
    <message>
        <source>a repeat ends before the first note</source>
        <translation>eine Wiederholung endet vor der ersten Note</translation>
    </message>
    <message>
        <source>more syllables than notes</source>
        <translation>mehr Silben als Noten</translation>
    </message>
    <message>
        <source>the last are left out</source>
        <translation>die letzten werden weggelassen</translation>
    </message>
    <message>
        <source>column {}</source>
        <translation>Spalte {}</translation>
    </message>
    <message>
        <source>a second bar</source>
        <translation>ein zweiter Takt</translation>
    </message>
    <message>
        <source>no K: line</source>
        <translation>keine Zeile K:</translation>
    </message>
    <message>
        <source>the tune has no time signature</source>
        <translation>das Stück hat keine Taktart</translation>
    </message>
    <message>
        <source>the bar lines stay as written, and the beats are counted in {}</source>
        <translation>die Taktstriche bleiben wie geschrieben, und gezählt wird in {}</translation>
    </message>
    <message>
        <source>{}: lines cannot be used</source>
        <translation>{}:-Zeilen können nicht verwendet werden</translation>
    </message>
    <message>
        <source>+: lines behind fields that are not of text</source>
        <translation>+:-Zeilen nach Feldern, die keinen Text enthalten</translation>
    </message>
    <message>
        <source>the tempo changes inside the tune</source>
        <translation>das Tempo wechselt im Stück</translation>
    </message>
    <message>
        <source>the tempo falls towards the end</source>
        <translation>gegen Ende wird das Tempo langsamer</translation>
    </message>
    <message>
        <source>the first tempo is that of the tune</source>
        <translation>das Tempo des Stücks ist das erste</translation>
    </message>
    <message>
        <source>the first tempo is used throughout</source>
        <translation>durchgehend gilt das erste Tempo</translation>
    </message>
    <message>
        <source>Q:{} is not a tempo</source>
        <translation>Q:{} ist kein Tempo</translation>
    </message>
    <message>
        <source>the usual tempo is used</source>
        <translation>es gilt das übliche Tempo</translation>
    </message>
    <message>
        <source>the tune gives an order of parts but marks no parts</source>
        <translation>das Stück nennt eine Reihenfolge der Teile, kennzeichnet aber keine Teile</translation>
    </message>
    <message>
        <source>the order is ignored</source>
        <translation>die Reihenfolge wird nicht beachtet</translation>
    </message>
    <message>
        <source>the order names parts that are nowhere marked</source>
        <translation>die Reihenfolge nennt Teile, die nirgends gekennzeichnet sind</translation>
    </message>
    <message>
        <source>they are skipped</source>
        <translation>sie werden übersprungen</translation>
    </message>
    <message>
        <source>{}:{} cannot be understood</source>
        <translation>{}:{} ist nicht verständlich</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>der Datenträger ist voll</translation>
    </message>
    <message>
        <source>your share of the disk is full</source>
        <translation>Ihr Anteil am Datenträger ist voll</translation>
    </message>
    <message>
        <source>the file would be larger than is allowed here</source>
        <translation>die Datei wäre größer, als hier erlaubt ist</translation>
    </message>
    <message>
        <source>you may not write there</source>
        <translation>dort dürfen Sie nicht schreiben</translation>
    </message>
    <message>
        <source>the disk can only be read</source>
        <translation>der Datenträger kann nur gelesen werden</translation>
    </message>
    <message>
        <source>there is no such folder</source>
        <translation>diesen Ordner gibt es nicht</translation>
    </message>
    <message>
        <source>a part of its path is not a folder</source>
        <translation>ein Teil des Pfades ist kein Ordner</translation>
    </message>
    <message>
        <source>there is a folder of that name</source>
        <translation>es gibt einen Ordner dieses Namens</translation>
    </message>
    <message>
        <source>the name is too long</source>
        <translation>der Name ist zu lang</translation>
    </message>
    <message>
        <source>its links lead round in a circle</source>
        <translation>die Verknüpfungen führen im Kreis</translation>
    </message>
    <message>
        <source>the disk does not answer as it should</source>
        <translation>der Datenträger antwortet nicht richtig</translation>
    </message>
    <message>
        <source>too many files are open</source>
        <translation>es sind zu viele Dateien offen</translation>
    </message>
    <message>
        <source>another program is running it</source>
        <translation>ein anderes Programm führt sie gerade aus</translation>
    </message>
    <message>
        <source>the system refuses it, number {}</source>
        <translation>das System verweigert es, Nummer {}</translation>
    </message>
    <message>
        <source>it is write-protected</source>
        <translation>sie ist schreibgeschützt</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is missing</source>
        <translation>„{}“ fehlt</translation>
    </message>
    <message>
        <source>a list is too short</source>
        <translation>eine Liste ist zu kurz</translation>
    </message>
    <message>
        <source>text</source>
        <comment>json</comment>
        <translation>Text</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>eine Liste</translation>
    </message>
    <message>
        <source>a group of members</source>
        <translation>eine Gruppe von Einträgen</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>wahr oder falsch</translation>
    </message>
    <message>
        <source>nothing</source>
        <comment>json</comment>
        <translation>nichts</translation>
    </message>
    <message>
        <source>a number</source>
        <comment>json</comment>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a value must be {}, not {}</source>
        <translation>ein Wert muss {} sein, nicht {}</translation>
    </message>
    <message>
        <source>a value is not what it must be</source>
        <translation>ein Wert ist nicht, was er sein muss</translation>
    </message>
    <message>
        <source>read as well as possible</source>
        <translation>so gut wie möglich gelesen</translation>
    </message>
    <message>
        <source>the file has {} voices</source>
        <translation>die Datei hat {} Stimmen</translation>
    </message>
    <message>
        <source>number {} is read as the tune</source>
        <translation>Nummer {} wird als Melodie gelesen</translation>
    </message>
    <message>
        <source>the file has no key</source>
        <translation>die Datei hat keine Tonart</translation>
    </message>
    <message>
        <source>notes are spelt as in C major</source>
        <translation>die Noten werden wie in C-Dur geschrieben</translation>
    </message>
    <message>
        <source>the file has no time signature</source>
        <translation>die Datei hat keine Taktart</translation>
    </message>
    <message>
        <source>the bars are in 4/4</source>
        <translation>die Takte sind 4/4-Takte</translation>
    </message>
    <message>
        <source>some notes are a little off the beat</source>
        <translation>einige Noten liegen etwas neben dem Schlag</translation>
    </message>
    <message>
        <source>moved to the nearest part of the beat</source>
        <translation>auf den nächsten Teil der Zählzeit verschoben</translation>
    </message>
    <message>
        <source>notes of the tune overlap</source>
        <translation>Noten der Melodie überlappen sich</translation>
    </message>
    <message>
        <source>each is cut short where the next begins, and only the highest note of a large chord is used</source>
        <translation>jede wird gekürzt, wo die nächste beginnt; von einem großen Akkord gilt nur der höchste Ton</translation>
    </message>
    <message>
        <source>some texts in the file are chord symbols</source>
        <translation>einige Texte in der Datei sind Akkordsymbole</translation>
    </message>
    <message>
        <source>used as chords</source>
        <translation>als Akkorde verwendet</translation>
    </message>
    <message>
        <source>a track has no end</source>
        <translation>eine Spur hat kein Ende</translation>
    </message>
    <message>
        <source>notes are never switched off</source>
        <translation>Noten werden nie beendet</translation>
    </message>
    <message>
        <source>a time signature makes no sense</source>
        <translation>eine Taktart ergibt keinen Sinn</translation>
    </message>
    <message>
        <source>byte {}</source>
        <translation>Byte {}</translation>
    </message>
    <message>
        <source>this is not a MIDI file</source>
        <translation>das ist keine MIDI-Datei</translation>
    </message>
    <message>
        <source>the start of the file is incomplete</source>
        <translation>der Anfang der Datei ist unvollständig</translation>
    </message>
    <message>
        <source>times are counted in film frames</source>
        <translation>die Zeiten sind in Filmbildern gezählt</translation>
    </message>
    <message>
        <source>division 0</source>
        <translation>Teilung 0</translation>
    </message>
    <message>
        <source>the MIDI format is not 0, 1 or 2</source>
        <translation>das MIDI-Format ist nicht 0, 1 oder 2</translation>
    </message>
    <message>
        <source>a track is cut off</source>
        <translation>eine Spur ist abgeschnitten</translation>
    </message>
    <message>
        <source>in track {}</source>
        <translation>in Spur {}</translation>
    </message>
    <message>
        <source>an element is missing</source>
        <translation>ein Element fehlt</translation>
    </message>
    <message>
        <source>the key signature is not a usual one</source>
        <translation>die Vorzeichnung ist keine übliche</translation>
    </message>
    <message>
        <source>read as the usual one with the same number of sharps or flats</source>
        <translation>als die übliche mit ebenso vielen Kreuzen oder Been gelesen</translation>
    </message>
    <message>
        <source>the key does not say major or minor</source>
        <translation>die Tonart sagt nicht, ob Dur oder Moll</translation>
    </message>
    <message>
        <source>read as major</source>
        <translation>als Dur gelesen</translation>
    </message>
    <message>
        <source>the key changes inside a bar</source>
        <translation>die Tonart wechselt mitten im Takt</translation>
    </message>
    <message>
        <source>counted from the next bar on</source>
        <translation>ab dem nächsten Takt gezählt</translation>
    </message>
    <message>
        <source>the part is written for a transposing instrument</source>
        <translation>die Stimme ist für ein transponierendes Instrument geschrieben</translation>
    </message>
    <message>
        <source>read as it sounds</source>
        <translation>klingend gelesen</translation>
    </message>
    <message>
        <source>a tuplet of impossible numbers</source>
        <translation>eine Triole oder ähnliche Gruppe mit unmöglichen Zahlen</translation>
    </message>
    <message>
        <source>its notes last as long as they are counted</source>
        <translation>ihre Noten dauern so lange, wie sie gezählt sind</translation>
    </message>
    <message>
        <source>a note without length</source>
        <translation>eine Note ohne Länge</translation>
    </message>
    <message>
        <source>accidentals beyond a double sharp or flat</source>
        <translation>Vorzeichen über Doppelkreuz oder Doppel-b hinaus</translation>
    </message>
    <message>
        <source>read as double ones</source>
        <translation>als doppelte gelesen</translation>
    </message>
    <message>
        <source>a chord has no first note</source>
        <translation>ein Akkord hat keine erste Note</translation>
    </message>
    <message>
        <source>read as a note of its own</source>
        <translation>als eigene Note gelesen</translation>
    </message>
    <message>
        <source>notes without pitch</source>
        <translation>Noten ohne Tonhöhe</translation>
    </message>
    <message>
        <source>read as rests</source>
        <translation>als Pausen gelesen</translation>
    </message>
    <message>
        <source>the file goes back beyond the start of the bar</source>
        <translation>die Datei geht hinter den Taktanfang zurück</translation>
    </message>
    <message>
        <source>read from the start of the bar</source>
        <translation>ab dem Taktanfang gelesen</translation>
    </message>
    <message>
        <source>the music has fingering</source>
        <translation>die Noten haben einen Fingersatz</translation>
    </message>
    <message>
        <source>kept for the lead sheet; an arrangement works out its own</source>
        <translation>für das Leadsheet behalten; ein Arrangement ermittelt seinen eigenen</translation>
    </message>
    <message>
        <source>a chord symbol has no root</source>
        <translation>ein Akkordsymbol hat keinen Grundton</translation>
    </message>
    <message>
        <source>the chord kind {} is not known</source>
        <translation>die Akkordart {} ist nicht bekannt</translation>
    </message>
    <message>
        <source>the chord kind {} with its degrees is not known</source>
        <translation>die Akkordart {} mit ihren Tonstufen ist nicht bekannt</translation>
    </message>
    <message>
        <source>read without them</source>
        <translation>ohne sie gelesen</translation>
    </message>
    <message>
        <source>a chord symbol cannot be read</source>
        <translation>ein Akkordsymbol ist nicht lesbar</translation>
    </message>
    <message>
        <source>the metronome mark is not a tempo</source>
        <translation>die Metronomangabe ist kein Tempo</translation>
    </message>
    <message>
        <source>the tempo of the sound is none</source>
        <translation>das Tempo der Klangangabe ist keines</translation>
    </message>
    <message>
        <source>it is passed over</source>
        <translation>sie wird übergangen</translation>
    </message>
    <message>
        <source>a repeat inside a bar</source>
        <translation>eine Wiederholung mitten im Takt</translation>
    </message>
    <message>
        <source>a time bar has no number</source>
        <translation>eine Klammer hat keine Nummer</translation>
    </message>
    <message>
        <source>notes of one voice overlap</source>
        <translation>Noten einer Stimme überlappen sich</translation>
    </message>
    <message>
        <source>the later ones are cut or left out</source>
        <translation>die späteren werden gekürzt oder weggelassen</translation>
    </message>
    <message>
        <source>there are two chord symbols in one place</source>
        <translation>an einer Stelle stehen zwei Akkordsymbole</translation>
    </message>
    <message>
        <source>{} is encrypted</source>
        <translation>{} ist verschlüsselt</translation>
    </message>
    <message>
        <source>{} cannot be unpacked</source>
        <translation>{} lässt sich nicht entpacken</translation>
    </message>
    <message>
        <source>there is no {} in it</source>
        <translation>{} ist nicht darin</translation>
    </message>
    <message>
        <source>its list of contents names no music</source>
        <translation>ihr Inhaltsverzeichnis nennt keine Noten</translation>
    </message>
    <message>
        <source>its list of contents points outside the file: {}</source>
        <translation>ihr Inhaltsverzeichnis zeigt aus der Datei hinaus: {}</translation>
    </message>
    <message>
        <source>part {}</source>
        <comment>file</comment>
        <translation>Stimme {}</translation>
    </message>
    <message>
        <source>the part &quot;{}&quot;</source>
        <translation>die Stimme „{}“</translation>
    </message>
    <message>
        <source>the music has {} parts</source>
        <translation>die Noten haben {} Stimmen</translation>
    </message>
    <message>
        <source>{} is read as the tune</source>
        <translation>{} wird als Melodie gelesen</translation>
    </message>
    <message>
        <source>the part has {} staves</source>
        <translation>die Stimme hat {} Systeme</translation>
    </message>
    <message>
        <source>the tune is read from staff {}</source>
        <translation>die Melodie wird aus System {} gelesen</translation>
    </message>
    <message>
        <source>the staff has {} voices</source>
        <translation>das System hat {} Stimmen</translation>
    </message>
    <message>
        <source>voice {} is read as the tune</source>
        <translation>Stimme {} wird als Melodie gelesen</translation>
    </message>
    <message>
        <source>measure {}</source>
        <translation>Takt {}</translation>
    </message>
    <message>
        <source>{} (level {:.1f})</source>
        <translation>{} (Niveau {:.1Lf})</translation>
    </message>
    <message>
        <source>there is more like this</source>
        <translation>es gibt mehr davon</translation>
    </message>
    <message>
        <source>not listed</source>
        <translation>nicht aufgeführt</translation>
    </message>
    <message>
        <source> sharp </source>
        <translation> Kreuz </translation>
    </message>
    <message>
        <source> flat </source>
        <translation> b </translation>
    </message>
    <message>
        <source> natural </source>
        <translation> Auflösung </translation>
    </message>
    <message>
        <source>breve</source>
        <translation>Doppelganze</translation>
    </message>
    <message>
        <source>semibreve</source>
        <translation>Ganze</translation>
    </message>
    <message>
        <source>minim</source>
        <translation>Halbe</translation>
    </message>
    <message>
        <source>crotchet</source>
        <translation>Viertel</translation>
    </message>
    <message>
        <source>quaver</source>
        <translation>Achtel</translation>
    </message>
    <message>
        <source>semiquaver</source>
        <translation>Sechzehntel</translation>
    </message>
    <message>
        <source>demisemiquaver</source>
        <translation>Zweiunddreißigstel</translation>
    </message>
    <message>
        <source>hemidemisemiquaver</source>
        <translation>Vierundsechzigstel</translation>
    </message>
    <message>
        <source>dotted {}</source>
        <translation>punktierte {}</translation>
    </message>
    <message>
        <source>double dotted {}</source>
        <translation>doppelt punktierte {}</translation>
    </message>
    <message>
        <source>second</source>
        <comment>finger</comment>
        <translation>zweiter</translation>
    </message>
    <message>
        <source>third</source>
        <comment>finger</comment>
        <translation>dritter</translation>
    </message>
    <message>
        <source>fourth</source>
        <comment>finger</comment>
        <translation>vierter</translation>
    </message>
    <message>
        <source>fifth</source>
        <comment>finger</comment>
        <translation>fünfter</translation>
    </message>
    <message>
        <source>rest for the bar</source>
        <translation>ganzer Takt Pause</translation>
    </message>
    <message>
        <source>rest, {}</source>
        <translation>Pause, {}</translation>
    </message>
    <message>
        <source>{} held on, {}</source>
        <translation>{} ausgehalten, {}</translation>
    </message>
    <message>
        <source>, crossing under</source>
        <translation>, untergesetzt</translation>
    </message>
    <message>
        <source>triplet, </source>
        <translation>Triole, </translation>
    </message>
    <message>
        <source>{} in the time of {}, </source>
        <translation>{} in der Zeit von {}, </translation>
    </message>
    <message>
        <source>, the triplet ends</source>
        <translation>, die Triole endet</translation>
    </message>
    <message>
        <source>, the group ends</source>
        <translation>, die Gruppe endet</translation>
    </message>
    <message>
        <source> rolled</source>
        <translation> arpeggiert</translation>
    </message>
    <message>
        <source> together</source>
        <translation> zusammen</translation>
    </message>
    <message>
        <source>, after the grace notes</source>
        <translation>, nach den Vorschlagsnoten</translation>
    </message>
    <message>
        <source>, after the grace note</source>
        <translation>, nach der Vorschlagsnote</translation>
    </message>
    <message>
        <source>, with a pause</source>
        <translation>, mit Fermate</translation>
    </message>
    <message>
        <source>staccato</source>
        <translation>staccato</translation>
    </message>
    <message>
        <source>accent</source>
        <translation>Akzent</translation>
    </message>
    <message>
        <source>trill</source>
        <translation>Triller</translation>
    </message>
    <message>
        <source>turn</source>
        <translation>Doppelschlag</translation>
    </message>
    <message>
        <source>harmonic</source>
        <translation>Flageolett</translation>
    </message>
    <message>
        <source>, one note taken by the right hand</source>
        <translation>, ein Ton von der rechten Hand</translation>
    </message>
    <message>
        <source>first</source>
        <comment>time</comment>
        <translation>ersten</translation>
    </message>
    <message>
        <source>second</source>
        <comment>time</comment>
        <translation>zweiten</translation>
    </message>
    <message>
        <source>third</source>
        <comment>time</comment>
        <translation>dritten</translation>
    </message>
    <message>
        <source>fourth</source>
        <comment>time</comment>
        <translation>vierten</translation>
    </message>
    <message>
        <source>{}th</source>
        <translation>{}.</translation>
    </message>
    <message>
        <source>The key is now {}</source>
        <translation>Die Tonart ist jetzt {}</translation>
    </message>
    <message>
        <source>The time signature is now {}</source>
        <translation>Die Taktart ist jetzt {}</translation>
    </message>
    <message>
        <source>A repeat begins</source>
        <translation>Eine Wiederholung beginnt</translation>
    </message>
    <message>
        <source>The {} time only</source>
        <translation>Nur im {} Durchgang</translation>
    </message>
    <message>
        <source>rit. last time</source>
        <translation>rit. beim letzten Mal</translation>
    </message>
    <message>
        <source>Slow down from here to the end</source>
        <translation>Ab hier bis zum Schluss langsamer werden</translation>
    </message>
    <message>
        <source>Slow down from beat {} to the end</source>
        <translation>Ab Schlag {} bis zum Schluss langsamer werden</translation>
    </message>
    <message>
        <source>The last time, slow down from here to the end</source>
        <translation>Beim letzten Mal ab hier bis zum Schluss langsamer werden</translation>
    </message>
    <message>
        <source>The last time, slow down from beat {} to the end</source>
        <translation>Beim letzten Mal ab Schlag {} bis zum Schluss langsamer werden</translation>
    </message>
    <message>
        <source>Above the bar: {}</source>
        <translation>Über dem Takt: {}</translation>
    </message>
    <message>
        <source>For the levers: {}</source>
        <translation>Wegen der Klappen: {}</translation>
    </message>
    <message>
        <source>{} goes on</source>
        <translation>{} klingt weiter</translation>
    </message>
    <message>
        <source>Loudness: {}</source>
        <translation>Lautstärke: {}</translation>
    </message>
    <message>
        <source>{} with the left hand on beat {}</source>
        <translation>{} mit der linken Hand auf Zählzeit {}</translation>
    </message>
    <message>
        <source>{} with the left hand after beat {}</source>
        <translation>{} mit der linken Hand nach Zählzeit {}</translation>
    </message>
    <message>
        <source>{} with the right hand on beat {}</source>
        <translation>{} mit der rechten Hand auf Zählzeit {}</translation>
    </message>
    <message>
        <source>{} with the right hand after beat {}</source>
        <translation>{} mit der rechten Hand nach Zählzeit {}</translation>
    </message>
    <message>
        <source>Levers: {}</source>
        <translation>Klappen: {}</translation>
    </message>
    <message>
        <source>Right hand: </source>
        <translation>Rechte Hand: </translation>
    </message>
    <message>
        <source>, then </source>
        <translation>, dann </translation>
    </message>
    <message>
        <source>Left hand</source>
        <translation>Linke Hand</translation>
    </message>
    <message>
        <source>Pattern {}</source>
        <translation>Muster {}</translation>
    </message>
    <message>
        <source>Repeat, {} times in all</source>
        <translation>Wiederholung, insgesamt {}-mal</translation>
    </message>
    <message>
        <source>Repeat</source>
        <comment>bar</comment>
        <translation>Wiederholung</translation>
    </message>
    <message>
        <source>{} {}s a minute</source>
        <translation>{} {} pro Minute</translation>
    </message>
    <message>
        <source>By </source>
        <translation>Von </translation>
    </message>
    <message>
        <source>Arranged by </source>
        <translation>Arrangiert von </translation>
    </message>
    <message>
        <source>{} strings, level {}.</source>
        <translation>{} Saiten, Niveau {}.</translation>
    </message>
    <message>
        <source>Fingers: thumb, second, third, fourth. Notes are named with their octave: C 4 is middle C.</source>
        <translation>Finger: Daumen, zweiter, dritter, vierter. Die Töne heißen international (B ist der Ton unter C) und tragen ihre Oktave: C 4 ist das eingestrichene C.</translation>
    </message>
    <message>
        <source>Bar {}</source>
        <translation>Takt {}</translation>
    </message>
    <message>
        <source>Pick-up</source>
        <translation>Auftakt</translation>
    </message>
    <message>
        <source>Source: {}</source>
        <translation>Quelle: {}</translation>
    </message>
    <message>
        <source>Part {}</source>
        <translation>Teil {}</translation>
    </message>
    <message>
        <source>en-GB</source>
        <translation>de</translation>
    </message>
    <message>
        <source>there is no string {}</source>
        <translation>eine Saite {} gibt es nicht</translation>
    </message>
    <message>
        <source>this is not a file of harps</source>
        <translation>das ist keine Datei mit Harfen</translation>
    </message>
    <message>
        <source>it was saved by a newer version of Sallow</source>
        <translation>sie wurde von einer neueren Sallow-Version gespeichert</translation>
    </message>
    <message>
        <source>{} stands here a second time</source>
        <translation>{} steht hier ein zweites Mal</translation>
    </message>
    <message>
        <source>a letter and an octave are needed, such as C2</source>
        <translation>nötig sind Buchstabe und Oktave, etwa C2</translation>
    </message>
    <message numerus="yes">
        <source>{} strings</source>
        <translation><numerusform>{} Saite</numerusform><numerusform>{} Saiten</numerusform></translation>
    </message>
    <message>
        <source>this is not a file of patterns</source>
        <translation>das ist keine Datei mit Mustern</translation>
    </message>
    <message>
        <source>words are wanted, not {}</source>
        <translation>hier muss Text stehen, nicht {}</translation>
    </message>
    <message>
        <source>a number is wanted, not {}</source>
        <translation>hier muss eine Zahl stehen, nicht {}</translation>
    </message>
    <message>
        <source>{} is not between {} and {}</source>
        <translation>{} liegt nicht zwischen {} und {}</translation>
    </message>
    <message>
        <source>a whole number is wanted, not {}</source>
        <translation>hier muss eine ganze Zahl stehen, nicht {}</translation>
    </message>
    <message>
        <source>true or false is wanted, not {}</source>
        <translation>hier muss wahr oder falsch stehen, nicht {}</translation>
    </message>
    <message>
        <source>a list is wanted, not {}</source>
        <translation>hier muss eine Liste stehen, nicht {}</translation>
    </message>
    <message>
        <source>an entry in braces is wanted</source>
        <translation>hier muss ein Eintrag in geschweiften Klammern stehen</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is not known here</source>
        <translation>„{}“ ist hier nicht bekannt</translation>
    </message>
    <message>
        <source>{} bars have notes for {}, where the time signature asks for {}</source>
        <translation>{} Takte enthalten Noten für {}, die Taktart verlangt {}</translation>
    </message>
    <message>
        <source>bar {} has notes for {}, where the time signature asks for {}</source>
        <translation>Takt {} enthält Noten für {}, die Taktart verlangt {}</translation>
    </message>
    <message>
        <source>where to go on after the D.C. or D.S. of {} is not clear</source>
        <translation>wohin es nach dem D.C. oder D.S. von {} weitergeht, ist nicht klar</translation>
    </message>
    <message>
        <source>the tune is played straight through</source>
        <translation>das Stück wird gerade durchgespielt</translation>
    </message>
    <message>
        <source>known: {}</source>
        <translation>bekannt: {}</translation>
    </message>
    <message>
        <source>level {}</source>
        <translation>Niveau {}</translation>
    </message>
    <message>
        <source>levels go from 1 to {}</source>
        <translation>die Niveaus gehen von 1 bis {}</translation>
    </message>
    <message>
        <source>, the tune in it</source>
        <translation>, das Stück darin</translation>
    </message>
    <message>
        <source>this is not a saved arrangement</source>
        <translation>das ist kein gespeichertes Arrangement</translation>
    </message>
    <message>
        <source>a newer Sallow saved it: open it with that one, or install the newer one here</source>
        <translation>eine neuere Sallow-Version hat es gespeichert: öffnen Sie es damit, oder installieren Sie hier die neuere</translation>
    </message>
    <message>
        <source>this is not a list of pupils</source>
        <translation>das ist keine Schülerliste</translation>
    </message>
    <message>
        <source>a choice names a shape that was not offered</source>
        <translation>eine Wahl nennt einen Griff, der nicht angeboten war</translation>
    </message>
    <message>
        <source>left hand: {:.1f} notes a second</source>
        <translation>linke Hand: {:.1Lf} Noten pro Sekunde</translation>
    </message>
    <message>
        <source>right hand: {:.1f} notes a second</source>
        <translation>rechte Hand: {:.1Lf} Noten pro Sekunde</translation>
    </message>
    <message>
        <source>left hand: string {} plucked again after {:.2f} s</source>
        <translation>linke Hand: Saite {} nach {:.2Lf} s wieder gezupft</translation>
    </message>
    <message>
        <source>right hand: string {} plucked again after {:.2f} s</source>
        <translation>rechte Hand: Saite {} nach {:.2Lf} s wieder gezupft</translation>
    </message>
    <message>
        <source>left hand: a shape {} strings wide</source>
        <translation>linke Hand: ein Griff über {} Saiten</translation>
    </message>
    <message>
        <source>left hand: {} is a level {} pattern</source>
        <translation>linke Hand: {} ist ein Muster von Niveau {}</translation>
    </message>
    <message>
        <source>left hand: moves {} strings down in {:.1f} s</source>
        <translation>linke Hand: geht {} Saiten abwärts in {:.1Lf} s</translation>
    </message>
    <message>
        <source>left hand: moves {} strings up in {:.1f} s</source>
        <translation>linke Hand: geht {} Saiten aufwärts in {:.1Lf} s</translation>
    </message>
    <message>
        <source>right hand: finger {} crosses under finger {}</source>
        <translation>rechte Hand: Finger {} setzt unter Finger {} hindurch</translation>
    </message>
    <message>
        <source>right hand: finger {} crosses over finger {}</source>
        <translation>rechte Hand: Finger {} setzt über Finger {}</translation>
    </message>
    <message>
        <source>a lever flip in {:.1f} beats</source>
        <translation>ein Klappenwechsel in {:.1Lf} Schlägen</translation>
    </message>
    <message>
        <source>roll upwards, and let finger 4 go as the thumb reaches its string</source>
        <translation>aufwärts arpeggieren; Finger 4 loslassen, wenn der Daumen seine Saite erreicht</translation>
    </message>
    <message>
        <source>let finger 4 go as the thumb reaches its string</source>
        <translation>Finger 4 loslassen, wenn der Daumen seine Saite erreicht</translation>
    </message>
    <message>
        <source>play the left hand's highest note</source>
        <translation>den höchsten Ton der linken Hand übernehmen</translation>
    </message>
    <message>
        <source>finger {} instead of {}: {}</source>
        <translation>Finger {} statt {}: {}</translation>
    </message>
    <message>
        <source>you chose it</source>
        <translation>von Ihnen gewählt</translation>
    </message>
    <message>
        <source>it goes with the finger you chose next to it</source>
        <translation>er passt zu dem Finger, den Sie daneben gewählt haben</translation>
    </message>
    <message>
        <source>finger {} has just played on string {}</source>
        <translation>Finger {} hat gerade auf Saite {} gespielt</translation>
    </message>
    <message>
        <source>fingers {} and {} would lie {} strings apart</source>
        <translation>die Finger {} und {} lägen {} Saiten auseinander</translation>
    </message>
    <message>
        <source>this way the hand does not have to be placed again</source>
        <translation>so muss die Hand nicht neu gesetzt werden</translation>
    </message>
    <message>
        <source>Usual</source>
        <translation>Üblich</translation>
    </message>
    <message>
        <source>as most players would</source>
        <translation>wie die meisten spielen würden</translation>
    </message>
    <message>
        <source>Plainer</source>
        <translation>Schlichter</translation>
    </message>
    <message>
        <source>fewer chords, fewer changes</source>
        <translation>weniger Akkorde, weniger Wechsel</translation>
    </message>
    <message>
        <source>Richer</source>
        <translation>Reicher</translation>
    </message>
    <message>
        <source>sevenths at closes, a moving bass</source>
        <translation>Septakkorde an Schlüssen, ein bewegter Bass</translation>
    </message>
    <message>
        <source>fifths, the mode unsaid</source>
        <translation>Quinten, Dur oder Moll bleibt offen</translation>
    </message>
    <message>
        <source>Drone</source>
        <translation>Bordun</translation>
    </message>
    <message>
        <source>one open fifth under all</source>
        <translation>eine leere Quinte unter allem</translation>
    </message>
    <message>
        <source>third</source>
        <comment>mode</comment>
        <translation>Terz</translation>
    </message>
    <message>
        <source>sixth</source>
        <comment>mode</comment>
        <translation>Sexte</translation>
    </message>
    <message>
        <source>seventh</source>
        <comment>mode</comment>
        <translation>Septime</translation>
    </message>
    <message>
        <source>its {} both {} and {}</source>
        <translation>seine {} ist {} und {}</translation>
    </message>
    <message>
        <source>its {} {}</source>
        <translation>seine {} ist {}</translation>
    </message>
    <message>
        <source>it has no {}</source>
        <translation>es hat keine {}</translation>
    </message>
    <message>
        <source>it ends on {}</source>
        <translation>es endet auf {}</translation>
    </message>
    <message>
        <source>it does not end at home</source>
        <translation>es endet nicht auf dem Grundton</translation>
    </message>
    <message>
        <source>it says {}, but from its notes it is {}: {}</source>
        <translation>angegeben ist {}, den Noten nach ist es {}: {}</translation>
    </message>
    <message>
        <source>the tune rests here</source>
        <translation>die Melodie pausiert hier</translation>
    </message>
    <message>
        <source>holds no note of the tune here</source>
        <translation>enthält hier keinen Ton der Melodie</translation>
    </message>
    <message>
        <source>holds every note of the tune here</source>
        <translation>enthält hier jeden Ton der Melodie</translation>
    </message>
    <message>
        <source>holds {} of the tune</source>
        <translation>enthält {} der Melodie</translation>
    </message>
    <message>
        <source>; the strain comes home</source>
        <translation>; der Teil kommt zum Grundton heim</translation>
    </message>
    <message>
        <source>; the phrase stays open half-way</source>
        <translation>; die Phrase bleibt auf halbem Weg offen</translation>
    </message>
    <message>
        <source>; leads to {}</source>
        <translation>; führt zu {}</translation>
    </message>
    <message>
        <source>; stays with the chord before</source>
        <translation>; bleibt beim Akkord davor</translation>
    </message>
    <message>
        <source>; a tone below home</source>
        <translation>; ein Ganzton unter dem Grundton</translation>
    </message>
    <message>
        <source>; the fourth above home</source>
        <translation>; die Quarte über dem Grundton</translation>
    </message>
    <message>
        <source>string {}</source>
        <translation>Saite {}</translation>
    </message>
    <message>
        <source>no strings at all</source>
        <translation>überhaupt keine Saiten</translation>
    </message>
    <message>
        <source>gap of {} mm</source>
        <translation>Abstand von {} mm</translation>
    </message>
    <message>
        <source>{} after {}</source>
        <translation>{} nach {}</translation>
    </message>
    <message>
        <source>{}{} (string {})</source>
        <translation>{}{} (Saite {})</translation>
    </message>
    <message>
        <source>{}, string {} from the top</source>
        <translation>{}, Saite {} von oben</translation>
    </message>
    <message>
        <source>{} (string {})</source>
        <translation>{} (Saite {})</translation>
    </message>
    <message>
        <source>and a lever cannot lower a string</source>
        <translation>und eine Klappe kann eine Saite nicht tiefer machen</translation>
    </message>
    <message>
        <source>and a lever raises a string by only one semitone</source>
        <translation>und eine Klappe erhöht eine Saite nur um einen Halbton</translation>
    </message>
    <message>
        <source>and that string has no lever</source>
        <translation>und diese Saite hat keine Klappe</translation>
    </message>
    <message>
        <source>needs {} on {}, {}</source>
        <translation>braucht {} auf {}, {}</translation>
    </message>
    <message>
        <source>{} (string {} from the top)</source>
        <translation>{} (Saite {} von oben)</translation>
    </message>
    <message>
        <source>{} but not {}</source>
        <translation>{}, aber nicht {}</translation>
    </message>
    <message>
        <source>only {}</source>
        <translation>nur {}</translation>
    </message>
    <message>
        <source>All levers down</source>
        <translation>Alle Klappen unten</translation>
    </message>
    <message>
        <source>Set levers: {}</source>
        <translation>Klappen stellen: {}</translation>
    </message>
    <message>
        <source>{}; a harp may have {} to {}</source>
        <translation>{}; eine Harfe kann {} bis {} haben</translation>
    </message>
    <message>
        <source>for each string say whether it has a lever, its spacing, and whether it is wound</source>
        <translation>geben Sie für jede Saite an, ob sie eine Klappe hat, ihren Abstand und ob sie umsponnen ist</translation>
    </message>
    <message>
        <source>the name is missing</source>
        <translation>der Name fehlt</translation>
    </message>
    <message>
        <source>&quot;{}&quot; may have only small letters, figures and dashes</source>
        <translation>„{}“ darf nur Kleinbuchstaben, Ziffern und Bindestriche enthalten</translation>
    </message>
    <message>
        <source>lowest string</source>
        <translation>tiefste Saite</translation>
    </message>
    <message>
        <source>{} to {}; strings may go from {} to {}</source>
        <translation>{} bis {}; Saiten können von {} bis {} gehen</translation>
    </message>
    <message>
        <source>{} has more than seven sharps or flats</source>
        <translation>{} hat mehr als sieben Kreuze oder Been</translation>
    </message>
    <message>
        <source>a spacing of {} mm; it may be {} to {}</source>
        <translation>ein Abstand von {} mm; möglich sind {} bis {}</translation>
    </message>
    <message>
        <source>small stretches</source>
        <translation>kleine Spreizungen</translation>
    </message>
    <message>
        <source>having time for each note</source>
        <translation>Zeit für jede Note</translation>
    </message>
    <message>
        <source>notes of the chord</source>
        <translation>Akkordtöne</translation>
    </message>
    <message>
        <source>a clear third</source>
        <translation>eine klare Terz</translation>
    </message>
    <message>
        <source>keeping out of the tune's way</source>
        <translation>Abstand zur Melodie</translation>
    </message>
    <message>
        <source>thirds and sixths with the tune</source>
        <translation>Terzen und Sexten mit der Melodie</translation>
    </message>
    <message>
        <source>room between the hands</source>
        <translation>Platz zwischen den Händen</translation>
    </message>
    <message>
        <source>clear low notes</source>
        <translation>klare tiefe Töne</translation>
    </message>
    <message>
        <source>rhythms that fit the beat</source>
        <translation>Rhythmen, die zum Takt passen</translation>
    </message>
    <message>
        <source>movement where the tune rests</source>
        <translation>Bewegung, wo die Melodie ruht</translation>
    </message>
    <message>
        <source>few lever flips</source>
        <translation>wenige Klappenwechsel</translation>
    </message>
    <message>
        <source>plain closes</source>
        <translation>schlichte Schlüsse</translation>
    </message>
    <message>
        <source>familiar patterns</source>
        <translation>vertraute Muster</translation>
    </message>
    <message>
        <source>a fuller second time through</source>
        <translation>einen volleren zweiten Durchgang</translation>
    </message>
    <message>
        <source>small moves of the hand</source>
        <translation>kleine Bewegungen der Hand</translation>
    </message>
    <message>
        <source>strings that the hand can keep</source>
        <translation>Saiten, auf denen die Hand bleiben kann</translation>
    </message>
    <message>
        <source>strings that still ring</source>
        <translation>noch klingende Saiten</translation>
    </message>
    <message>
        <source>the line of the top notes</source>
        <translation>die Linie der höchsten Töne</translation>
    </message>
    <message>
        <source>the line of the bass</source>
        <translation>die Linie des Basses</translation>
    </message>
    <message>
        <source>keeping to one pattern</source>
        <translation>das Bleiben bei einem Muster</translation>
    </message>
    <message>
        <source>waltzes</source>
        <translation>Walzern</translation>
    </message>
    <message>
        <source>jigs</source>
        <translation>Jigs</translation>
    </message>
    <message>
        <source>single jigs</source>
        <translation>Single Jigs</translation>
    </message>
    <message>
        <source>slip jigs</source>
        <translation>Slip Jigs</translation>
    </message>
    <message>
        <source>reels</source>
        <translation>Reels</translation>
    </message>
    <message>
        <source>hornpipes</source>
        <translation>Hornpipes</translation>
    </message>
    <message>
        <source>polkas</source>
        <translation>Polkas</translation>
    </message>
    <message>
        <source>marches</source>
        <translation>Märschen</translation>
    </message>
    <message>
        <source>strathspeys</source>
        <translation>Strathspeys</translation>
    </message>
    <message>
        <source>airs</source>
        <translation>Airs</translation>
    </message>
    <message>
        <source>mazurkas</source>
        <translation>Mazurken</translation>
    </message>
    <message>
        <source>triple hornpipes</source>
        <translation>Triple Hornpipes</translation>
    </message>
    <message>
        <source>other tunes</source>
        <translation>anderen Stücken</translation>
    </message>
    <message>
        <source>a rest</source>
        <translation>eine Pause</translation>
    </message>
    <message>
        <source>In {} you take {} where {} is suggested: {} of {} times.</source>
        <translation>Bei {0} nehmen Sie {1}, wo {2} vorgeschlagen ist: {3} von {4} Malen.</translation>
    </message>
    <message>
        <source>You care more about {} than the manner does: {:.1f} times as much.</source>
        <translation>Ihnen ist wichtiger als dem Stil: {0} ({1:.1Lf}-mal so viel).</translation>
    </message>
    <message>
        <source>You care less about {} than the manner does: {:.0f} % as much.</source>
        <translation>Ihnen ist weniger wichtig als dem Stil: {0} ({1:.0f} % davon).</translation>
    </message>
    <message>
        <source>{} so far. From {} on, Sallow looks for what they have in common.</source>
        <translation>Bisher {}. Ab {} sucht Sallow, was ihnen gemeinsam ist.</translation>
    </message>
    <message numerus="yes">
        <source>{} choices</source>
        <translation><numerusform>{} Wahl</numerusform><numerusform>{} Wahlen</numerusform></translation>
    </message>
    <message>
        <source>{} choices so far. They show no taste of their own yet: the manner as it is would have got {} of them right.</source>
        <translation>Bisher {} Wahlen. Sie zeigen noch keinen eigenen Geschmack: Der Stil, wie er ist, hätte {} davon richtig getroffen.</translation>
    </message>
    <message>
        <source>Going by your other choices, Sallow would have got {} of {} right; by the manner as it is, {}.</source>
        <translation>Nach Ihren anderen Wahlen hätte Sallow {} von {} richtig getroffen; nach dem Stil, wie er ist, {}.</translation>
    </message>
    <message>
        <source>a semitone</source>
        <translation>einen Halbton</translation>
    </message>
    <message>
        <source>a tone</source>
        <translation>einen Ganzton</translation>
    </message>
    <message>
        <source>a minor third</source>
        <translation>eine kleine Terz</translation>
    </message>
    <message>
        <source>a major third</source>
        <translation>eine große Terz</translation>
    </message>
    <message>
        <source>a tritone</source>
        <translation>einen Tritonus</translation>
    </message>
    <message>
        <source>a minor sixth</source>
        <translation>eine kleine Sexte</translation>
    </message>
    <message>
        <source>a major sixth</source>
        <translation>eine große Sexte</translation>
    </message>
    <message>
        <source>a minor seventh</source>
        <translation>eine kleine Septime</translation>
    </message>
    <message>
        <source>a major seventh</source>
        <translation>eine große Septime</translation>
    </message>
    <message>
        <source>as written</source>
        <translation>wie geschrieben</translation>
    </message>
    <message>
        <source>as written, respelt</source>
        <translation>wie geschrieben, anders notiert</translation>
    </message>
    <message>
        <source> and an octave</source>
        <translation> und eine Oktave</translation>
    </message>
    <message>
        <source>{} higher</source>
        <translation>{} höher</translation>
    </message>
    <message>
        <source>{} lower</source>
        <translation>{} tiefer</translation>
    </message>
    <message>
        <source>{}, {}: {}{} while playing, {} below the tune{}</source>
        <translation>{}, {}: {}{} beim Spielen, {} unter der Melodie{}</translation>
    </message>
    <message numerus="yes">
        <source>{} snags, </source>
        <translation><numerusform>{} Hürde, </numerusform><numerusform>{} Hürden, </numerusform></translation>
    </message>
    <message>
        <source>no lever flips</source>
        <translation>kein Klappenwechsel</translation>
    </message>
    <message numerus="yes">
        <source>{} lever flips</source>
        <translation><numerusform>{} Klappenwechsel</numerusform><numerusform>{} Klappenwechsel</numerusform></translation>
    </message>
    <message>
        <source>no strings</source>
        <translation>keine Saiten</translation>
    </message>
    <message>
        <source>, fewer than the left hand needs</source>
        <translation>, weniger, als die linke Hand braucht</translation>
    </message>
    <message>
        <source>so many levers are flipped near here that there is no time for the lever of {}</source>
        <translation>hier in der Nähe werden so viele Klappen umgelegt, dass für die von {} keine Zeit bleibt</translation>
    </message>
    <message>
        <source>{}, time {}</source>
        <translation>{}, Durchgang {}</translation>
    </message>
    <message>
        <source>up</source>
        <comment>lever</comment>
        <translation>oben</translation>
    </message>
    <message>
        <source>down</source>
        <comment>lever</comment>
        <translation>unten</translation>
    </message>
    <message>
        <source>; it is flipped {} in {} by the left hand</source>
        <translation>; sie wird in {1} von der linken Hand nach {0} umgelegt</translation>
    </message>
    <message>
        <source>; it is flipped {} in {} by the right hand</source>
        <translation>; sie wird in {1} von der rechten Hand nach {0} umgelegt</translation>
    </message>
    <message>
        <source>, {} in {} by the left hand</source>
        <translation>, in {1} von der linken Hand nach {0}</translation>
    </message>
    <message>
        <source>, {} in {} by the right hand</source>
        <translation>, in {1} von der rechten Hand nach {0}</translation>
    </message>
    <message>
        <source>, and {} more times</source>
        <translation>und noch {}-mal</translation>
    </message>
    <message>
        <source>{} has no lever.</source>
        <translation>{} hat keine Klappe.</translation>
    </message>
    <message>
        <source>The tune does not use {}, so its lever, now {} at the start, may be set to suit the left hand.</source>
        <translation>Die Melodie braucht {0} nicht; die Klappe, zu Beginn {1}, kann sich daher nach der linken Hand richten.</translation>
    </message>
    <message>
        <source>The tune first uses {} in {}, as {}, so its lever is {} at the start{}.</source>
        <translation>Die Melodie braucht {0} zuerst in {1}, als {2}; die Klappe ist daher zu Beginn {3}{4}.</translation>
    </message>
    <message>
        <source>{}, the harp goes from {} to {}</source>
        <translation>{}, die Harfe geht von {} bis {}</translation>
    </message>
    <message>
        <source>no string gives {}: the string of that letter gives {} and {}</source>
        <translation>keine Saite gibt {}: die Saite dieses Buchstabens gibt {} und {}</translation>
    </message>
    <message>
        <source>no string gives {}: the string of that letter gives {} only, as it has no lever</source>
        <translation>keine Saite gibt {}: die Saite dieses Buchstabens gibt nur {}, weil sie keine Klappe hat</translation>
    </message>
    <message>
        <source>; {} would be slow enough</source>
        <translation>; {} wären langsam genug</translation>
    </message>
    <message>
        <source>{} and {} together, both on string {}</source>
        <translation>{} und {} zugleich, beide auf Saite {}</translation>
    </message>
    <message>
        <source>{} after {}, both on string {}</source>
        <translation>{} nach {}, beide auf Saite {}</translation>
    </message>
    <message>
        <source>{}; at level {} no lever is flipped while playing</source>
        <translation>{}; auf Niveau {} wird beim Spielen keine Klappe umgelegt</translation>
    </message>
    <message>
        <source>{:.2g} beats or {:.2f} s</source>
        <translation>{:.2Lg} Schläge oder {:.2Lf} s</translation>
    </message>
    <message>
        <source>{}, with at most {} between them; level {} needs {}{}</source>
        <translation>{}, dazwischen höchstens {}; Niveau {} braucht {}{}</translation>
    </message>
    <message>
        <source>Leave the levers as they are</source>
        <translation>Die Klappen bleiben, wie sie sind</translation>
    </message>
    <message>
        <source> (lever up) on </source>
        <translation> (Klappe oben) auf </translation>
    </message>
    <message>
        <source> (lever down) on </source>
        <translation> (Klappe unten) auf </translation>
    </message>
    <message numerus="yes">
        <source>Flip {} levers, about {:.0f} s: {}</source>
        <translation><numerusform>{} Klappe umlegen, etwa {:.0f} s: {}</numerusform><numerusform>{} Klappen umlegen, etwa {:.0f} s: {}</numerusform></translation>
    </message>
    <message>
        <source>major</source>
        <translation>Dur</translation>
    </message>
    <message>
        <source>dorian</source>
        <translation>dorisch</translation>
    </message>
    <message>
        <source>phrygian</source>
        <translation>phrygisch</translation>
    </message>
    <message>
        <source>lydian</source>
        <translation>lydisch</translation>
    </message>
    <message>
        <source>mixolydian</source>
        <translation>mixolydisch</translation>
    </message>
    <message>
        <source>minor</source>
        <translation>Moll</translation>
    </message>
    <message>
        <source>locrian</source>
        <translation>lokrisch</translation>
    </message>
    <message>
        <source>{} major</source>
        <translation>{}-Dur</translation>
    </message>
    <message>
        <source>{} dorian</source>
        <translation>{} dorisch</translation>
    </message>
    <message>
        <source>{} phrygian</source>
        <translation>{} phrygisch</translation>
    </message>
    <message>
        <source>{} lydian</source>
        <translation>{} lydisch</translation>
    </message>
    <message>
        <source>{} mixolydian</source>
        <translation>{} mixolydisch</translation>
    </message>
    <message>
        <source>{} minor</source>
        <translation>{}-Moll</translation>
    </message>
    <message>
        <source>{} locrian</source>
        <translation>{} lokrisch</translation>
    </message>
    <message>
        <source>th</source>
        <comment>ordinal</comment>
        <translation>.</translation>
    </message>
    <message>
        <source>st</source>
        <comment>ordinal</comment>
        <translation>.</translation>
    </message>
    <message>
        <source>nd</source>
        <comment>ordinal</comment>
        <translation>.</translation>
    </message>
    <message>
        <source>rd</source>
        <comment>ordinal</comment>
        <translation>.</translation>
    </message>
    <message>
        <source>{} time</source>
        <translation>{} Durchgang</translation>
    </message>
    <message>
        <source>first note</source>
        <translation>erste Note</translation>
    </message>
    <message>
        <source>on the beats</source>
        <translation>auf den Zählzeiten</translation>
    </message>
    <message>
        <source>even notes, then ring</source>
        <translation>gleichmäßig, dann klingen lassen</translation>
    </message>
    <message>
        <source>{}, after a flip</source>
        <translation>{}, nach einem Klappenwechsel</translation>
    </message>
    <message>
        <source>first {} notes</source>
        <translation>die ersten {} Noten</translation>
    </message>
    <message>
        <source>note {}</source>
        <translation>Note {}</translation>
    </message>
    <message>
        <source>finger {} on degree {} after finger {} on degree {}</source>
        <translation>Finger {} auf Tonstufe {} nach Finger {} auf Tonstufe {}</translation>
    </message>
    <message>
        <source>{} notes</source>
        <translation>{} Noten</translation>
    </message>
    <message>
        <source>Your own.</source>
        <translation>Ihr eigenes.</translation>
    </message>
    <message>
        <source>after the fingers</source>
        <translation>nach den Fingern</translation>
    </message>
    <message>
        <source>{}; write {}or cents by note, such as E=-14,B=-12</source>
        <translation>{}; schreiben Sie {}oder Cent je Ton, etwa E=-14,B=-12</translation>
    </message>
    <message>
        <source>{}, beat {}, {} over {}</source>
        <translation>{}, Zählzeit {}, {} über {}</translation>
    </message>
    <message>
        <source>the hand has no time to move between this and the shapes you kept: let one of them change, or play slower</source>
        <translation>zwischen diesem und den behaltenen Griffen hat die Hand keine Zeit: geben Sie einen davon frei, oder spielen Sie langsamer</translation>
    </message>
    <message>
        <source>another pattern in the pattern book has the same notes here: choose that one</source>
        <translation>ein anderes Muster der Sammlung hat hier dieselben Töne: wählen Sie dieses</translation>
    </message>
    <message>
        <source>pick-up</source>
        <translation>Auftakt</translation>
    </message>
    <message>
        <source>bars {} and in {} more places</source>
        <translation>T. {} und {} weitere Stellen</translation>
    </message>
    <message>
        <source>bars {}</source>
        <translation>T. {}</translation>
    </message>
    <message>
        <source>bars {} and {}</source>
        <translation>T. {} und {}</translation>
    </message>
    <message>
        <source>too many notes would have to be left out</source>
        <translation>es müssten zu viele Noten wegfallen</translation>
    </message>
    <message numerus="yes">
        <source>{} notes would have to be left out</source>
        <translation><numerusform>{} Note müsste wegfallen</numerusform><numerusform>{} Noten müssten wegfallen</numerusform></translation>
    </message>
    <message>
        <source>; it asks for far more flips, or notes played otherwise, than the best key</source>
        <translation>; sie verlangt weit mehr Klappenwechsel oder anders gespielte Noten als die beste Tonart</translation>
    </message>
    <message>
        <source>, the lowest of all the keys</source>
        <translation>, die niedrigste aller Tonarten</translation>
    </message>
    <message>
        <source>{}; left-hand score {:.2f} a chord, lower is better{}</source>
        <translation>{}; Wertung der linken Hand {:.2Lf} je Akkord, niedriger ist besser{}</translation>
    </message>
    <message>
        <source>no string of this harp sounds {}</source>
        <translation>keine Saite dieser Harfe klingt als {}</translation>
    </message>
    <message>
        <source>{} is beyond the strings of this harp</source>
        <translation>{} liegt außerhalb der Saiten dieser Harfe</translation>
    </message>
    <message>
        <source>{} is played otherwise</source>
        <translation>{} wird anders gespielt</translation>
    </message>
    <message>
        <source>{} and {} share a string, and level {} flips no levers while playing</source>
        <translation>{} und {} teilen sich eine Saite, und auf Niveau {} werden beim Spielen keine Klappen umgelegt</translation>
    </message>
    <message>
        <source>there is no time to flip the lever between {} and {} ({:.2f} s; level {} needs {:.2f} s)</source>
        <translation>zwischen {} und {} fehlt die Zeit, die Klappe umzulegen ({:.2Lf} s; Niveau {} braucht {:.2Lf} s)</translation>
    </message>
    <message>
        <source>no hand is free to flip the lever between {} and {}</source>
        <translation>zwischen {} und {} ist keine Hand frei, die Klappe umzulegen</translation>
    </message>
    <message>
        <source>played plain, as {}</source>
        <translation>ohne Vorzeichen, als {}</translation>
    </message>
    <message>
        <source>left out, the note before rings on</source>
        <translation>weggelassen, der Ton davor klingt weiter</translation>
    </message>
    <message>
        <source>the left hand rests</source>
        <translation>die linke Hand pausiert</translation>
    </message>
    <message>
        <source>played in another octave, as {}</source>
        <translation>in einer anderen Oktave, als {}</translation>
    </message>
    <message>
        <source>played on the string beside it</source>
        <translation>auf der Saite daneben</translation>
    </message>
    <message>
        <source>as written, the left hand rests for its flip</source>
        <translation>wie geschrieben, die linke Hand pausiert für den Klappenwechsel</translation>
    </message>
    <message>
        <source>as written, with one low note in the left hand before the flip</source>
        <translation>wie geschrieben, mit einem tiefen Ton der linken Hand vor dem Klappenwechsel</translation>
    </message>
    <message>
        <source>as written, at a slower tempo</source>
        <translation>wie geschrieben, in langsamerem Tempo</translation>
    </message>
    <message>
        <source>in another key</source>
        <translation>in einer anderen Tonart</translation>
    </message>
    <message>
        <source>as written, at a higher level</source>
        <translation>wie geschrieben, auf höherem Niveau</translation>
    </message>
    <message>
        <source>{}{}, because {}.</source>
        <translation>{}{}: {}.</translation>
    </message>
    <message>
        <source> (you chose it)</source>
        <translation> (von Ihnen gewählt)</translation>
    </message>
    <message>
        <source>chord {}</source>
        <translation>Akkord {}</translation>
    </message>
    <message>
        <source>Setting {}: another shape on {} of {} chords; its score is {:.1f} higher than the best (lower is better).</source>
        <translation>Fassung {}: ein anderer Griff bei {} von {} Akkorden; die Wertung ist um {:.1Lf} höher als bei der besten (niedriger ist besser).</translation>
    </message>
    <message>
        <source>{}{} from {}</source>
        <translation>{}{} ab {}</translation>
    </message>
    <message>
        <source>{}: {} becomes {}.</source>
        <translation>{}: {} wird zu {}.</translation>
    </message>
    <message>
        <source>no lever is flipped while playing</source>
        <translation>beim Spielen wird keine Klappe umgelegt</translation>
    </message>
    <message numerus="yes">
        <source>there are {} lever flips while playing</source>
        <translation><numerusform>beim Spielen wird eine Klappe umgelegt</numerusform><numerusform>beim Spielen wird {}-mal eine Klappe umgelegt</numerusform></translation>
    </message>
    <message>
        <source>The key changes from {} to {}.</source>
        <translation>Die Tonart wechselt von {} nach {}.</translation>
    </message>
    <message>
        <source>the same ({})</source>
        <translation>dasselbe ({})</translation>
    </message>
    <message>
        <source>Now {}.</source>
        <translation>Nun gilt: {}.</translation>
    </message>
    <message>
        <source>The right hand adds notes in {} places; before, it was {}.</source>
        <translation>Die rechte Hand fügt an {} Stellen Töne hinzu; vorher waren es {}.</translation>
    </message>
    <message>
        <source>{} and {}</source>
        <translation>{} und {}</translation>
    </message>
    <message>
        <source>note</source>
        <comment>remedy</comment>
        <translation>Note</translation>
    </message>
    <message>
        <source>the pick-up</source>
        <translation>dem Auftakt</translation>
    </message>
    <message>
        <source>the {} in bar {}</source>
        <translation>{} in Takt {}</translation>
    </message>
    <message>
        <source>the {} in bars {}</source>
        <translation>{} in T. {}</translation>
    </message>
    <message>
        <source>{} an octave higher</source>
        <translation>{} eine Oktave höher</translation>
    </message>
    <message>
        <source>{} an octave lower</source>
        <translation>{} eine Oktave tiefer</translation>
    </message>
    <message>
        <source>Play {}.</source>
        <translation>Spielen Sie {}.</translation>
    </message>
    <message>
        <source>where it is written</source>
        <translation>wo es geschrieben steht</translation>
    </message>
    <message>
        <source>{} semitones higher</source>
        <translation>{} Halbtöne höher</translation>
    </message>
    <message>
        <source>{} semitones lower</source>
        <translation>{} Halbtöne tiefer</translation>
    </message>
    <message>
        <source>Play it in {}, {}.</source>
        <translation>Spielen Sie es in {}, {}.</translation>
    </message>
    <message>
        <source>Leave out {}.</source>
        <translation>Lassen Sie {} weg.</translation>
    </message>
    <message>
        <source>Play {} without the accidental.</source>
        <translation>Spielen Sie {} ohne Vorzeichen.</translation>
    </message>
    <message>
        <source>Play it at {}.</source>
        <translation>Spielen Sie es mit {}.</translation>
    </message>
    <message>
        <source>Arrange it for level {} ({}).</source>
        <translation>Arrangieren Sie es für Niveau {} ({}).</translation>
    </message>
    <message>
        <source>it flips a lever in the time of {}</source>
        <translation>sie legt während {} eine Klappe um</translation>
    </message>
    <message>
        <source>the tune goes down to string {} here, and </source>
        <translation>die Melodie geht hier bis Saite {} hinunter, und </translation>
    </message>
    <message>
        <source>no shape for {} fits below the tune for {} at level {}</source>
        <translation>kein Griff für {0} passt unter die Melodie ({1}, Niveau {2})</translation>
    </message>
    <message>
        <source>the lever can only be flipped in {}</source>
        <translation>die Klappe kann nur in {} umgelegt werden</translation>
    </message>
    <message>
        <source>{} as written, the left hand rests for its flip</source>
        <translation>{} wie geschrieben, die linke Hand pausiert für den Klappenwechsel</translation>
    </message>
    <message>
        <source>the left hand rests, because {}</source>
        <translation>die linke Hand pausiert: {}</translation>
    </message>
    <message>
        <source>no snag is left</source>
        <translation>keine Hürde bleibt</translation>
    </message>
    <message numerus="yes">
        <source>{} snags are left</source>
        <translation><numerusform>{} Hürde bleibt</numerusform><numerusform>{} Hürden bleiben</numerusform></translation>
    </message>
    <message numerus="yes">
        <source>{} of {} snags are left</source>
        <translation><numerusform>{} von {} Hürden bleibt</numerusform><numerusform>{} von {} Hürden bleiben</numerusform></translation>
    </message>
    <message>
        <source>At {}: {}.</source>
        <translation>Mit {}: {}.</translation>
    </message>
    <message>
        <source>At level {}, {}: {}.</source>
        <translation>Auf Niveau {}, {}: {}.</translation>
    </message>
    <message>
        <source>In {}: {}.</source>
        <translation>In {}: {}.</translation>
    </message>
    <message>
        <source>a set has 1 to {} tunes</source>
        <translation>ein Set hat 1 bis {} Stücke</translation>
    </message>
    <message>
        <source>The file</source>
        <translation>Die Datei</translation>
    </message>
    <message>
        <source>Line {}</source>
        <translation>Zeile {}</translation>
    </message>
    <message>
        <source>Line {}, column {}</source>
        <translation>Zeile {}, Spalte {}</translation>
    </message>
    <message>
        <source> (and {} more like it)</source>
        <translation> (und {} weitere dieser Art)</translation>
    </message>
    <message>
        <source>The tune is {}, and transposing cannot make it {}, so it is now in {}.</source>
        <translation>Das Stück ist {}, und durch Transponieren wird es nicht {}; es steht nun in {}.</translation>
    </message>
    <message>
        <source>The tune gives no tempo, so {} is used, a good speed for learning this kind of tune.</source>
        <translation>Das Stück gibt kein Tempo an; es gelten {}, ein gutes Tempo, um ein solches Stück zu lernen.</translation>
    </message>
    <message>
        <source>The {} that you kept in {} cannot be played now, so the best other shape is used there.</source>
        <translation>{} in {}, das Sie behalten wollten, ist jetzt nicht spielbar; dort steht der beste andere Griff.</translation>
    </message>
    <message>
        <source>bar {}, which the tune no longer has</source>
        <translation>Takt {}, den das Stück nicht mehr hat</translation>
    </message>
    <message>
        <source>A finger that you chose in {} cannot be used now, so another is used there until it can.</source>
        <translation>Ein von Ihnen gewählter Finger in {} ist jetzt nicht möglich; solange gilt dort ein anderer.</translation>
    </message>
    <message>
        <source>From {} to {} the left hand has no time to move between the shapes you kept; let one of them change.</source>
        <translation>Von {} bis {} hat die linke Hand keine Zeit, zwischen den behaltenen Griffen zu wechseln; geben Sie einen davon frei.</translation>
    </message>
    <message>
        <source>As chosen: {}</source>
        <translation>Wie gewählt: {}</translation>
    </message>
    <message>
        <source>The tune has no chord symbols: the left hand plays over a drone of its key until you give it chords.</source>
        <translation>Das Stück hat keine Akkordsymbole: Die linke Hand spielt einen Bordun der Tonart, bis Sie ihm Akkorde geben.</translation>
    </message>
    <message>
        <source>A grace note in {} is left out, because there is no time to flip its lever.</source>
        <translation>Eine Vorschlagsnote in {} fällt weg, weil die Zeit für den Klappenwechsel fehlt.</translation>
    </message>
    <message>
        <source>The lever of {} is set as the tune needs it, not as you asked.</source>
        <translation>Die Klappe von {} steht so, wie die Melodie sie braucht, nicht wie gewünscht.</translation>
    </message>
    <message>
        <source>The left hand rests in {} to flip a lever. A slower tempo, a higher level or another key may help.</source>
        <translation>Die linke Hand pausiert in {}, um eine Klappe umzulegen. Ein langsameres Tempo, ein höheres Niveau oder eine andere Tonart kann helfen.</translation>
    </message>
    <message>
        <source>There is nothing the left hand can play in {}, so it rests there. A slower tempo, a higher level, a larger hand or harp, or another key may help.</source>
        <translation>In {} kann die linke Hand nichts spielen und pausiert. Ein langsameres Tempo, ein höheres Niveau, eine größere Hand oder Harfe oder eine andere Tonart kann helfen.</translation>
    </message>
    <message>
        <source>There is no chord symbol for {}, so the left hand rests there.</source>
        <translation>Für {} gibt es kein Akkordsymbol; die linke Hand pausiert dort.</translation>
    </message>
    <message>
        <source>The tune goes down to {} in {}, which leaves the left hand less than an octave below it.</source>
        <translation>Die Melodie geht in {1} bis {0} hinunter; der linken Hand bleibt darunter weniger als eine Oktave.</translation>
    </message>
    <message>
        <source>The tune itself has {:.1f} notes a second, more than the {:.1f} of level {}; try {}.</source>
        <translation>Die Melodie selbst hat {:.1Lf} Noten pro Sekunde, mehr als die {:.1Lf} von Niveau {}; versuchen Sie {}.</translation>
    </message>
    <message>
        <source>The left hand holds a tenth {} times in the {} bars up to {}. If your hand tires, choose narrower shapes there and ask your teacher. If anything hurts, stop; ask your teacher, and see a doctor or physiotherapist.</source>
        <translation>Die linke Hand hält {0}-mal eine Dezime in den {1} Takten bis {2}. Wenn Ihre Hand ermüdet, wählen Sie dort engere Griffe, und fragen Sie im Unterricht nach. Wenn etwas schmerzt, hören Sie auf; fragen Sie im Unterricht nach, und suchen Sie ärztlichen oder physiotherapeutischen Rat.</translation>
    </message>
    <message>
        <source>The left hand plays near its limit for more than {} bars without a rest, up to {}. Simpler shapes or a slower tempo will rest it; ask your teacher. If anything hurts, stop; ask your teacher, and see a doctor or physiotherapist.</source>
        <translation>Die linke Hand spielt mehr als {} Takte ohne Pause nahe an ihrer Grenze, bis {}. Einfachere Griffe oder ein langsameres Tempo entlasten sie; fragen Sie im Unterricht nach. Wenn etwas schmerzt, hören Sie auf; fragen Sie im Unterricht nach, und suchen Sie ärztlichen oder physiotherapeutischen Rat.</translation>
    </message>
    <message>
        <source>The right hand plays near its limit for more than {} bars without a rest, up to {}. A pause between parts or a slower tempo will rest it; ask your teacher. If anything hurts, stop; ask your teacher, and see a doctor or physiotherapist.</source>
        <translation>Die rechte Hand spielt mehr als {} Takte ohne Pause nahe an ihrer Grenze, bis {}. Eine Pause zwischen den Teilen oder ein langsameres Tempo entlastet sie; fragen Sie im Unterricht nach. Wenn etwas schmerzt, hören Sie auf; fragen Sie im Unterricht nach, und suchen Sie ärztlichen oder physiotherapeutischen Rat.</translation>
    </message>
    <message>
        <source>The left hand jumps an octave on every beat up to {}. Close and relax the hand between the jumps; ask your teacher. If anything hurts, stop; ask your teacher, and see a doctor or physiotherapist.</source>
        <translation>Die linke Hand springt bis {} auf jeder Zählzeit um eine Oktave. Schließen und lockern Sie die Hand zwischen den Sprüngen; fragen Sie im Unterricht nach. Wenn etwas schmerzt, hören Sie auf; fragen Sie im Unterricht nach, und suchen Sie ärztlichen oder physiotherapeutischen Rat.</translation>
    </message>
    <message>
        <source>Where a shape is wide, let the low finger go as the thumb reaches its string; with a smaller hand, roll it or leave out the top note.</source>
        <translation>Bei weiten Griffen den tiefen Finger loslassen, wenn der Daumen seine Saite erreicht; mit kleiner Hand arpeggieren oder den höchsten Ton weglassen.</translation>
    </message>
    <message>
        <source>Damp the string with a fingertip before you flip its lever.</source>
        <translation>Die Saite mit der Fingerspitze dämpfen, bevor die Klappe umgelegt wird.</translation>
    </message>
    <message>
        <source>Keep your hands relaxed and rest before they tire. If anything hurts, stop, and see your teacher, a doctor or a physiotherapist.</source>
        <translation>Halten Sie die Hände locker, und ruhen Sie aus, bevor sie ermüden. Wenn etwas schmerzt, hören Sie auf, und suchen Sie Rat im Unterricht, ärztlich oder physiotherapeutisch.</translation>
    </message>
    <message>
        <source>{} of {}</source>
        <translation>{} von {}</translation>
    </message>
    <message>
        <source>arr. {}</source>
        <translation>Arr. {}</translation>
    </message>
    <message>
        <source>Patterns in this arrangement</source>
        <translation>Muster in diesem Arrangement</translation>
    </message>
    <message>
        <source>1.  Place all the fingers of the shape before you pluck: look once, then feel the strings.</source>
        <translation>1.  Alle Finger des Griffs setzen, bevor Sie zupfen: einmal hinsehen, dann die Saiten fühlen.</translation>
    </message>
    <message>
        <source>2.  Check that your hand is relaxed: thumb high, wrist and shoulder loose, no finger pressing.</source>
        <translation>2.  Prüfen, ob die Hand locker ist: Daumen hoch, Handgelenk und Schulter frei, kein Finger drückt.</translation>
    </message>
    <message>
        <source>3.  Roll the shape from low to high, closing each finger into the palm; then pluck it together.</source>
        <translation>3.  Den Griff von tief nach hoch arpeggieren, jeden Finger in die Handfläche schließen; dann zusammen zupfen.</translation>
    </message>
    <message>
        <source>4.  Come off and move on: place the next shape in good time.</source>
        <translation>4.  Abheben und weitergehen: den nächsten Griff rechtzeitig setzen.</translation>
    </message>
    <message>
        <source>bars </source>
        <translation>Takte </translation>
    </message>
    <message>
        <source> · rolled only</source>
        <translation> · nur arpeggiert</translation>
    </message>
    <message>
        <source>rest</source>
        <comment>steps</comment>
        <translation>Pause</translation>
    </message>
    <message>
        <source>hands down</source>
        <translation>Hände sinken lassen</translation>
    </message>
    <message>
        <source>left-hand placing drill · level {}</source>
        <translation>Setzübung für die linke Hand · Niveau {}</translation>
    </message>
    <message>
        <source>Steps up to the tempo: move on when a step has gone easily three times; if it will not, go back one. The beats a minute are under each step. Rest for five minutes in every half hour.</source>
        <translation>Stufenweise zum Tempo: weitergehen, wenn eine Stufe dreimal leicht gelungen ist; gelingt sie nicht, eine zurück. Die Schläge pro Minute stehen unter jeder Stufe. In jeder halben Stunde fünf Minuten ausruhen.</translation>
    </message>
    <message>
        <source>the pattern {}</source>
        <translation>das Muster {}</translation>
    </message>
    <message>
        <source>it is wider than this harp</source>
        <translation>es ist weiter als diese Harfe</translation>
    </message>
    <message>
        <source>The pattern in {}</source>
        <translation>Das Muster im {}</translation>
    </message>
    <message>
        <source>The same in {}</source>
        <translation>Dasselbe im {}</translation>
    </message>
    <message>
        <source>Eight bars to practise</source>
        <translation>Acht Takte zum Üben</translation>
    </message>
    <message>
        <source>fingers {}</source>
        <translation>Finger {}</translation>
    </message>
    <message>
        <source>On the chords of the key</source>
        <translation>Auf den Akkorden der Tonart</translation>
    </message>
    <message>
        <source>Write your own</source>
        <translation>Selbst schreiben</translation>
    </message>
    <message>
        <source>{} in {}</source>
        <translation>{} in {}</translation>
    </message>
    <message>
        <source>Level {}</source>
        <translation>Niveau {}</translation>
    </message>
    <message>
        <source>{} strings · {} tuning · level {}</source>
        <translation>{} Saiten · Stimmung {} · Niveau {}</translation>
    </message>
    <message>
        <source>The sign “{}” (bar {}) is not drawn.</source>
        <translation>Das Zeichen „{}“ (Takt {}) wird nicht gezeichnet.</translation>
    </message>
    <message>
        <source>Bars </source>
        <translation>Takte </translation>
    </message>
    <message>
        <source>Bar </source>
        <translation>Takt </translation>
    </message>
    <message>
        <source>The pick-up</source>
        <translation>Der Auftakt</translation>
    </message>
    <message>
        <source> and others</source>
        <translation> und weitere</translation>
    </message>
    <message>
        <source>left hand: </source>
        <translation>linke Hand: </translation>
    </message>
    <message>
        <source>right hand: </source>
        <translation>rechte Hand: </translation>
    </message>
    <message>
        <source>* And {} more like these.</source>
        <translation>* Und {} weitere dieser Art.</translation>
    </message>
    <message>
        <source>the grace note {} in {}</source>
        <translation>die Vorschlagsnote {} in {}</translation>
    </message>
    <message>
        <source>the {} in {}</source>
        <translation>der Ton {} in {}</translation>
    </message>
    <message>
        <source>{} is played an octave higher.</source>
        <translation>{} wird eine Oktave höher gespielt.</translation>
    </message>
    <message>
        <source>{} is played an octave lower.</source>
        <translation>{} wird eine Oktave tiefer gespielt.</translation>
    </message>
    <message>
        <source>{} is left out.</source>
        <translation>{} fällt weg.</translation>
    </message>
    <message>
        <source>{} gives way: the note before rings on through it.</source>
        <translation>{} weicht: Der Ton davor klingt hindurch.</translation>
    </message>
    <message>
        <source>{} is played as {}, the other pitch of its string.</source>
        <translation>{} wird als {} gespielt, der andere Ton dieser Saite.</translation>
    </message>
    <message>
        <source>{} is played as {}, without its accidental.</source>
        <translation>{} wird als {} gespielt, ohne Vorzeichen.</translation>
    </message>
    <message>
        <source>too long by {}</source>
        <translation>um {} zu lang</translation>
    </message>
    <message>
        <source>too short by {}</source>
        <translation>um {} zu kurz</translation>
    </message>
    <message>
        <source> in {}</source>
        <translation> in {}</translation>
    </message>
    <message>
        <source>rest</source>
        <comment>edit</comment>
        <translation>Pause</translation>
    </message>
    <message>
        <source>tie</source>
        <comment>edit</comment>
        <translation>Haltebogen</translation>
    </message>
    <message>
        <source>grace notes</source>
        <translation>Vorschlagsnoten</translation>
    </message>
    <message>
        <source>note taken out</source>
        <translation>Note entfernt</translation>
    </message>
    <message>
        <source>rest taken out</source>
        <translation>Pause entfernt</translation>
    </message>
    <message>
        <source>{} of a whole note</source>
        <translation>{} einer ganzen Note</translation>
    </message>
    <message>
        <source>dotted minims</source>
        <translation>punktierte Halbe</translation>
    </message>
    <message>
        <source>minims</source>
        <translation>Halbe</translation>
    </message>
    <message>
        <source>dotted crotchets</source>
        <translation>punktierte Viertel</translation>
    </message>
    <message>
        <source>crotchets</source>
        <translation>Viertel</translation>
    </message>
    <message>
        <source>dotted quavers</source>
        <translation>punktierte Achtel</translation>
    </message>
    <message>
        <source>quavers</source>
        <translation>Achtel</translation>
    </message>
    <message>
        <source>{} {} a minute</source>
        <translation>{} {} pro Minute</translation>
    </message>
    <message>
        <source>the pick-up bar</source>
        <translation>Auftakt</translation>
    </message>
    <message>
        <source>the pick-up after bar {}</source>
        <translation>Auftakt nach Takt {}</translation>
    </message>
    <message>
        <source>bar {}</source>
        <translation>Takt {}</translation>
    </message>
    <message>
        <source>{} bars, at most {}</source>
        <translation>{} Takte, höchstens {}</translation>
    </message>
    <message>
        <source>{} notes, at most {}</source>
        <translation>{} Noten, höchstens {}</translation>
    </message>
    <message>
        <source>{} notes in one bar, at most {}</source>
        <translation>{} Noten in einem Takt, höchstens {}</translation>
    </message>
    <message>
        <source>{} chords, at most {}</source>
        <translation>{} Akkorde, höchstens {}</translation>
    </message>
    <message>
        <source>its first part ends on {}</source>
        <translation>sein erster Teil endet auf {}</translation>
    </message>
    <message>
        <source>a part of it ends on {}</source>
        <translation>ein Teil endet auf {}</translation>
    </message>
    <message>
        <source>a part of it begins on {}</source>
        <translation>ein Teil beginnt auf {}</translation>
    </message>
    <message>
        <source>{} rises to {}</source>
        <translation>{} steigt zu {}</translation>
    </message>
    <message>
        <source>write its melody first, then open it again</source>
        <translation>schreiben Sie erst seine Melodie und öffnen Sie es dann neu</translation>
    </message>
    <message>
        <source>it is not as it was written</source>
        <translation>sie ist nicht so, wie sie geschrieben wurde</translation>
    </message>
    <message>
        <source>{}, line {}</source>
        <translation>{}, Zeile {}</translation>
    </message>
    <message>
        <source>it ends, or closes a part, before all is closed</source>
        <translation>sie endet oder schließt einen Teil, bevor alles geschlossen ist</translation>
    </message>
    <message>
        <source>there is no score in it</source>
        <translation>es ist keine Partitur darin</translation>
    </message>
    <message>
        <source>a part begins or ends in the middle of a word</source>
        <translation>ein Teil beginnt oder endet mitten in einem Wort</translation>
    </message>
    <message>
        <source>a value has no quotation marks round it</source>
        <translation>um einen Wert fehlen die Anführungszeichen</translation>
    </message>
    <message>
        <source>its first lines or a remark are cut off</source>
        <translation>die ersten Zeilen oder eine Bemerkung sind abgeschnitten</translation>
    </message>
    <message>
        <source>a text in it is cut off</source>
        <translation>ein Text darin ist abgeschnitten</translation>
    </message>
    <message>
        <source>it is too large to read</source>
        <translation>sie ist zum Lesen zu groß</translation>
    </message>
    <message>
        <source>Flip {} (about {:.0f} s)</source>
        <translation>Umlegen: {} (etwa {:.0f} s)</translation>
    </message>
    <message>
        <source>Next: {}; {}</source>
        <translation>Danach: {}; {}</translation>
    </message>
    <message>
        <source>Tune {} of {}</source>
        <translation>Stück {} von {}</translation>
    </message>
    <message>
        <source>Tune {} of {}.</source>
        <translation>Stück {} von {}.</translation>
    </message>
    <message>
        <source>Before this tune: {}.</source>
        <translation>Vor diesem Stück: {}.</translation>
    </message>
    <message>
        <source>Next: {}. {}.</source>
        <translation>Danach: {}. {}.</translation>
    </message>
    <message>
        <source>page {}</source>
        <translation>Seite {}</translation>
    </message>
    <message>
        <source>pages {}–{}</source>
        <translation>Seiten {}–{}</translation>
    </message>
    <message>
        <source>{} tunes · {} strings · {} tuning · level {}</source>
        <translation>{} Stücke · {} Saiten · Stimmung {} · Niveau {}</translation>
    </message>
    <message>
        <source>This page is empty so that “{}” lies open on two pages.</source>
        <translation>Diese Seite ist leer, damit „{}“ aufgeschlagen auf zwei Seiten liegt.</translation>
    </message>
    <message>
        <source>up</source>
        <comment>flip</comment>
        <translation>nach oben</translation>
    </message>
    <message>
        <source>down</source>
        <comment>flip</comment>
        <translation>nach unten</translation>
    </message>
    <message>
        <source>L.H.</source>
        <translation>l. H.</translation>
    </message>
    <message>
        <source>R.H.</source>
        <translation>r. H.</translation>
    </message>
    <message>
        <source>the pick-up of the introduction</source>
        <translation>der Auftakt der Einleitung</translation>
    </message>
    <message>
        <source>bar {} of the introduction</source>
        <translation>Takt {} der Einleitung</translation>
    </message>
    <message>
        <source>bar {}, time {}</source>
        <translation>Takt {}, {}. Durchgang</translation>
    </message>
    <message>
        <source>Introduction</source>
        <translation>Einleitung</translation>
    </message>
    <message>
        <source>Ending</source>
        <translation>Schluss</translation>
    </message>
    <message>
        <source>First time</source>
        <translation>Erster Durchgang</translation>
    </message>
    <message>
        <source>Second time</source>
        <translation>Zweiter Durchgang</translation>
    </message>
    <message>
        <source>Third time</source>
        <translation>Dritter Durchgang</translation>
    </message>
    <message>
        <source>Time {}</source>
        <translation>{}. Durchgang</translation>
    </message>
    <message>
        <source>introduction</source>
        <translation>Einleitung</translation>
    </message>
    <message>
        <source>Before the tune</source>
        <translation>Vor der Melodie</translation>
    </message>
    <message>
        <source>Time {} is played in the octave it is written in, because the harp has no room for it in the other one.</source>
        <translation>Durchgang {} wird in der geschriebenen Oktave gespielt, weil die Harfe in der anderen keinen Platz für ihn hat.</translation>
    </message>
    <message>
        <source>a time through the tune cannot be played in this manner</source>
        <translation>so lässt sich ein Durchgang durch das Stück nicht spielen</translation>
    </message>
    <message>
        <source> ({} times)</source>
        <translation> ({}-mal)</translation>
    </message>
    <message>
        <source>a chord symbol stands over the second line of notes (&amp;)</source>
        <translation>ein Akkordsymbol steht über der zweiten Notenzeile (&amp;)</translation>
    </message>
    <message>
        <source>a line s: has something else than chord symbols, words and marks in their signs</source>
        <translation>eine Zeile s: enthält anderes als Akkordsymbole, Wörter und Zeichen in ihren Anführungen</translation>
    </message>
    <message>
        <source>more symbols than notes</source>
        <translation>mehr Zeichen als Noten</translation>
    </message>
    <message>
        <source>a chord symbol stands behind the last note</source>
        <translation>ein Akkordsymbol steht hinter der letzten Note</translation>
    </message>
    <message>
        <source>the tune has {} voices</source>
        <translation>das Stück hat {} Stimmen</translation>
    </message>
    <message numerus="yes">
        <source>{} notes of the others are left out; voice {} is read</source>
        <translation><numerusform>{} Note der anderen ist weggelassen; Stimme {} wird gelesen</numerusform><numerusform>{} Noten der anderen sind weggelassen; Stimme {} wird gelesen</numerusform></translation>
    </message>
    <message>
        <source>put over the tune</source>
        <translation>über die Melodie gesetzt</translation>
    </message>
    <message numerus="yes">
        <source>put over the tune, but for {} that stand behind its end</source>
        <translation><numerusform>über die Melodie gesetzt, bis auf {}, das hinter ihrem Ende steht</numerusform><numerusform>über die Melodie gesetzt, bis auf {}, die hinter ihrem Ende stehen</numerusform></translation>
    </message>
    <message numerus="yes">
        <source>{} chord symbols stand over voice {} alone</source>
        <translation><numerusform>{} Akkordsymbol steht nur über Stimme {}</numerusform><numerusform>{} Akkordsymbole stehen nur über Stimme {}</numerusform></translation>
    </message>
    <message>
        <source>fret diagrams at chord symbols</source>
        <translation>Griffbilder an Akkordsymbolen</translation>
    </message>
    <message>
        <source>a chord symbol has a second chord</source>
        <translation>ein Akkordsymbol hat einen zweiten Akkord</translation>
    </message>
    <message>
        <source>a bar is only the sign to repeat the bar before</source>
        <translation>ein Takt ist nur das Zeichen, den vorigen zu wiederholen</translation>
    </message>
    <message>
        <source>its notes are written out</source>
        <translation>seine Noten sind ausgeschrieben</translation>
    </message>
    <message>
        <source>a great many grace notes before one note</source>
        <translation>sehr viele Vorschlagnoten vor einer Note</translation>
    </message>
    <message>
        <source>small notes that another part plays (cue notes)</source>
        <translation>kleine Noten, die eine andere Partie spielt (Stichnoten)</translation>
    </message>
    <message>
        <source>strokes for a rhythm instead of notes</source>
        <translation>Striche für einen Rhythmus statt Noten</translation>
    </message>
    <message>
        <source>more verses than fit under a tune</source>
        <translation>mehr Strophen, als unter eine Melodie passen</translation>
    </message>
    <message>
        <source>the sign {} at a note</source>
        <translation>das Zeichen {} an einer Note</translation>
    </message>
    <message>
        <source>the sign {} over or under the staff</source>
        <translation>das Zeichen {} über oder unter dem System</translation>
    </message>
    <message>
        <source>words below the staff</source>
        <translation>Wörter unter dem System</translation>
    </message>
    <message>
        <source>figures of a bass (figured bass)</source>
        <translation>Ziffern eines Basses (Generalbass)</translation>
    </message>
    <message>
        <source>Words: {}</source>
        <translation>Text: {}</translation>
    </message>
    <message numerus="yes">
        <source>the tempo changes {} times</source>
        <translation><numerusform>das Tempo wechselt {}-mal</numerusform><numerusform>das Tempo wechselt {}-mal</numerusform></translation>
    </message>
    <message numerus="yes">
        <source>{} syllables are sung where no note begins</source>
        <translation><numerusform>{} Silbe wird gesungen, wo keine Note beginnt</numerusform><numerusform>{} Silben werden gesungen, wo keine Note beginnt</numerusform></translation>
    </message>
    <message>
        <source>notes are printed an octave from where they sound</source>
        <translation>Noten sind eine Oktave neben ihrem Klang gedruckt</translation>
    </message>
    <message>
        <source>read as they sound</source>
        <translation>so gelesen, wie sie klingen</translation>
    </message>
    <message>
        <source>a slur ends that has not begun</source>
        <translation>ein Bogen endet, der nicht begonnen hat</translation>
    </message>
    <message>
        <source>this is not a key; write one such as G, Em or Ador</source>
        <translation>das ist keine Tonart; schreiben Sie eine wie G, Em oder Ador</translation>
    </message>
    <message>
        <source>this is not a time signature; write one such as 6/8</source>
        <translation>das ist keine Taktart; schreiben Sie eine wie 6/8</translation>
    </message>
    <message>
        <source>these are not notes; write letters, such as g a b d, or degrees, such as 1 2 3 5</source>
        <translation>das sind keine Noten; schreiben Sie Buchstaben wie g a b d oder Stufen wie 1 2 3 5</translation>
    </message>
    <message>
        <source>an arrangement</source>
        <translation>ein Arrangement</translation>
    </message>
    <message>
        <source>arranged: {}</source>
        <translation>arrangiert: {}</translation>
    </message>
    <message>
        <source>a tunebook, or a folder of ABC, MusicXML, MIDI and .sallow files with its subfolders</source>
        <translation>eine Stückesammlung oder ein Ordner mit ABC-, MusicXML-, MIDI- und .sallow-Dateien samt Unterordnern</translation>
    </message>
    <message>
        <source>list the tunes of a tunebook or a folder, or find some of them: title, kind, key, time signature, bars, and whether they have chords and are arranged</source>
        <translation>die Stücke einer Sammlung oder eines Ordners aufzählen oder einige davon finden: Titel, Art, Tonart, Taktart, Takte, und ob sie Akkorde haben und arrangiert sind</translation>
    </message>
    <message>
        <source>only tunes that have these words in title, kind, key, time signature or file name</source>
        <translation>nur Stücke, die diese Wörter in Titel, Art, Tonart, Taktart oder Dateinamen haben</translation>
    </message>
    <message>
        <source>only tunes of this kind, such as jig or waltz</source>
        <translation>nur Stücke dieser Art, etwa jig oder waltz</translation>
    </message>
    <message>
        <source>only tunes in this key, such as G or Ador</source>
        <translation>nur Stücke in dieser Tonart, etwa G oder Ador</translation>
    </message>
    <message>
        <source>only tunes in this time signature, such as 6/8</source>
        <translation>nur Stücke in dieser Taktart, etwa 6/8</translation>
    </message>
    <message>
        <source>only tunes that begin with these notes, in any key, the most alike first: letters, as in &apos;g a b d&apos;, or degrees, as in &apos;1 2 3 5&apos;</source>
        <translation>nur Stücke, die mit diesen Noten beginnen, in jeder Tonart, die ähnlichsten zuerst: Buchstaben wie in &apos;g a b d&apos; oder Stufen wie in &apos;1 2 3 5&apos;</translation>
    </message>
    <message>
        <source>only tunes that are arranged already, or are not: yes or no</source>
        <translation>nur Stücke, die schon arrangiert sind oder es nicht sind: yes oder no</translation>
    </message>
    <message>
        <source>waltz</source>
        <comment>kind</comment>
        <translation>Walzer</translation>
    </message>
    <message>
        <source>jig</source>
        <comment>kind</comment>
        <translation>Jig</translation>
    </message>
    <message>
        <source>single jig</source>
        <comment>kind</comment>
        <translation>Single Jig</translation>
    </message>
    <message>
        <source>slip jig</source>
        <comment>kind</comment>
        <translation>Slip Jig</translation>
    </message>
    <message>
        <source>reel</source>
        <comment>kind</comment>
        <translation>Reel</translation>
    </message>
    <message>
        <source>hornpipe</source>
        <comment>kind</comment>
        <translation>Hornpipe</translation>
    </message>
    <message>
        <source>polka</source>
        <comment>kind</comment>
        <translation>Polka</translation>
    </message>
    <message>
        <source>march</source>
        <comment>kind</comment>
        <translation>Marsch</translation>
    </message>
    <message>
        <source>strathspey</source>
        <comment>kind</comment>
        <translation>Strathspey</translation>
    </message>
    <message>
        <source>air</source>
        <comment>kind</comment>
        <translation>Air</translation>
    </message>
    <message>
        <source>mazurka</source>
        <comment>kind</comment>
        <translation>Mazurka</translation>
    </message>
    <message>
        <source>triple hornpipe</source>
        <comment>kind</comment>
        <translation>Triple Hornpipe</translation>
    </message>
    <message>
        <source>other</source>
        <comment>kind</comment>
        <translation>anderes</translation>
    </message>
    <message>
        <source>double jig</source>
        <comment>kind</comment>
        <translation>Double Jig</translation>
    </message>
    <message>
        <source>hop jig</source>
        <comment>kind</comment>
        <translation>Hop Jig</translation>
    </message>
    <message>
        <source>slide</source>
        <comment>kind</comment>
        <translation>Slide</translation>
    </message>
    <message>
        <source>slow air</source>
        <comment>kind</comment>
        <translation>langsames Air</translation>
    </message>
    <message>
        <source>schottische</source>
        <comment>kind</comment>
        <translation>Schottisch</translation>
    </message>
    <message>
        <source>barndance</source>
        <comment>kind</comment>
        <translation>Barndance</translation>
    </message>
    <message>
        <source>lament</source>
        <comment>kind</comment>
        <translation>Klage</translation>
    </message>
    <message>
        <source>lullaby</source>
        <comment>kind</comment>
        <translation>Wiegenlied</translation>
    </message>
    <message>
        <source>song</source>
        <comment>kind</comment>
        <translation>Lied</translation>
    </message>
    <message>
        <source>carol</source>
        <comment>kind</comment>
        <translation>Weihnachtslied</translation>
    </message>
    <message>
        <source>hymn</source>
        <comment>kind</comment>
        <translation>Kirchenlied</translation>
    </message>
</context>
<context>
    <name>shared</name>
    <message>
        <source>medium hand</source>
        <translation>mittlere Hand</translation>
    </message>
    <message>
        <source>small hand</source>
        <translation>kleine Hand</translation>
    </message>
    <message>
        <source>large hand</source>
        <translation>große Hand</translation>
    </message>
    <message>
        <source>ten-year-old's hand</source>
        <translation>Hand einer Zehnjährigen</translation>
    </message>
    <message>
        <source>seven-year-old's hand</source>
        <translation>Hand einer Siebenjährigen</translation>
    </message>
    <message>
        <source>Lap harp, 22 strings</source>
        <translation>Schoßharfe, 22 Saiten</translation>
    </message>
    <message>
        <source>Lap harp, 26 strings</source>
        <translation>Schoßharfe, 26 Saiten</translation>
    </message>
    <message>
        <source>Small harp, 27 strings</source>
        <translation>Kleine Harfe, 27 Saiten</translation>
    </message>
    <message>
        <source>Floor harp, 29 strings from A</source>
        <translation>Standharfe, 29 Saiten ab A</translation>
    </message>
    <message>
        <source>Floor harp, 29 strings from G</source>
        <translation>Standharfe, 29 Saiten ab G</translation>
    </message>
    <message>
        <source>Floor harp, 30 strings from G</source>
        <translation>Standharfe, 30 Saiten ab G</translation>
    </message>
    <message>
        <source>Floor harp, 30 strings from F</source>
        <translation>Standharfe, 30 Saiten ab F</translation>
    </message>
    <message>
        <source>Floor harp, 33 strings</source>
        <translation>Standharfe, 33 Saiten</translation>
    </message>
    <message>
        <source>Floor harp, 34 strings</source>
        <translation>Standharfe, 34 Saiten</translation>
    </message>
    <message>
        <source>Floor harp, 36 strings from A</source>
        <translation>Standharfe, 36 Saiten ab A</translation>
    </message>
    <message>
        <source>Floor harp, 36 strings from C</source>
        <translation>Standharfe, 36 Saiten ab C</translation>
    </message>
    <message>
        <source>Floor harp, 38 strings from A</source>
        <translation>Standharfe, 38 Saiten ab A</translation>
    </message>
    <message>
        <source>Floor harp, 38 strings from G</source>
        <translation>Standharfe, 38 Saiten ab G</translation>
    </message>
    <message>
        <source>beginner</source>
        <translation>Anfang</translation>
    </message>
    <message>
        <source>improver</source>
        <translation>Grundlagen</translation>
    </message>
    <message>
        <source>intermediate</source>
        <translation>Mittelstufe</translation>
    </message>
    <message>
        <source>upper intermediate</source>
        <translation>obere Mittelstufe</translation>
    </message>
    <message>
        <source>advanced</source>
        <translation>fortgeschritten</translation>
    </message>
    <message>
        <source>The root alone, once or twice a bar: simple, and right for a slow, sad air.</source>
        <translation>Nur der Grundton, ein- oder zweimal im Takt: einfach und richtig für ein langsames, trauriges Air.</translation>
    </message>
    <message>
        <source>An open fifth without a third, so it fits any mode: the first two-note pattern to learn.</source>
        <translation>Eine leere Quinte ohne Terz, passt also zu jedem Modus: das erste Muster mit zwei Tönen.</translation>
    </message>
    <message>
        <source>A firm bass in octaves, for marches and endings.</source>
        <translation>Ein fester Bass in Oktaven, für Märsche und Schlüsse.</translation>
    </message>
    <message>
        <source>The pattern to start from: it has no third, so it fits every mode, and it sounds clear from about G2 up.</source>
        <translation>Das Muster zum Anfangen: ohne Terz, passt also zu jedem Modus, und klingt ab etwa G2 klar.</translation>
    </message>
    <message>
        <source>Rocks up and back: for lullabies and easy hornpipes.</source>
        <translation>Wiegt auf und zurück: für Wiegenlieder und leichte Hornpipes.</translation>
    </message>
    <message>
        <source>Jumps up an octave and comes back to the fifth: for a waltz in three even beats.</source>
        <translation>Springt eine Oktave hinauf und kommt zur Quinte zurück: für einen Walzer mit drei gleichen Schlägen.</translation>
    </message>
    <message>
        <source>Goes up to the octave, then down to the seventh that the levers give, which leads into the next chord.</source>
        <translation>Hinauf zur Oktave, dann hinunter zur Septime, die die Klappen geben; sie führt in den nächsten Akkord.</translation>
    </message>
    <message>
        <source>Moves down by step from the octave: a second tune under a long note.</source>
        <translation>Geht von der Oktave schrittweise hinunter: eine zweite Melodie unter einem langen Ton.</translation>
    </message>
    <message>
        <source>Ends on the ninth, which sounds light and leads into the next bar.</source>
        <translation>Endet auf der None; das klingt leicht und führt in den nächsten Takt.</translation>
    </message>
    <message>
        <source>A ninth in place of the octave: open, and a little sad.</source>
        <translation>Eine None anstelle der Oktave: offen und ein wenig traurig.</translation>
    </message>
    <message>
        <source>Climbs by step from the octave to the third, with the thumb on the top note.</source>
        <translation>Steigt schrittweise von der Oktave zur Terz, mit dem Daumen auf dem höchsten Ton.</translation>
    </message>
    <message>
        <source>The third is high enough to sound clear, not muddy: a good sound for airs.</source>
        <translation>Die Terz liegt hoch genug, um klar zu klingen: ein schöner Klang für Airs.</translation>
    </message>
    <message>
        <source>Goes up to the high third and comes down to the ninth.</source>
        <translation>Hinauf zur hohen Terz und hinunter zur None.</translation>
    </message>
    <message>
        <source>Goes up to the high third and comes down by step to the octave.</source>
        <translation>Hinauf zur hohen Terz und schrittweise hinunter zur Oktave.</translation>
    </message>
    <message>
        <source>Climbs on past the third: it needs an octave of room below the tune.</source>
        <translation>Steigt über die Terz hinaus: braucht eine Oktave Platz unter der Melodie.</translation>
    </message>
    <message>
        <source>A wide broken chord for slow music: let the low fingers go as the thumb reaches its string.</source>
        <translation>Ein weiter gebrochener Akkord für langsame Musik: die tiefen Finger loslassen, wenn der Daumen seine Saite erreicht.</translation>
    </message>
    <message>
        <source>Goes up to the high third and comes to rest on the octave.</source>
        <translation>Hinauf zur hohen Terz und zur Ruhe auf der Oktave.</translation>
    </message>
    <message>
        <source>A seventh without the third: bluesy on the first chord of the key, warm on the second.</source>
        <translation>Eine Septime ohne Terz: bluesig auf der ersten Stufe der Tonart, warm auf der zweiten.</translation>
    </message>
    <message>
        <source>A close triad, full but short. Use it from C3 up: lower down it sounds muddy.</source>
        <translation>Ein enger Dreiklang, voll, aber kurz. Ab C3 verwenden: Tiefer klingt er mulmig.</translation>
    </message>
    <message>
        <source>A full close chord, plucked together or rolled, for endings from C3 up.</source>
        <translation>Ein voller enger Akkord, zusammen oder arpeggiert, für Schlüsse ab C3.</translation>
    </message>
    <message>
        <source>An open chord as wide as a tenth, one note after another, for airs and endings.</source>
        <translation>Ein offener Akkord bis zur Dezime, Ton für Ton, für Airs und Schlüsse.</translation>
    </message>
    <message>
        <source>A very open chord without a third, rolled up to close an air.</source>
        <translation>Ein sehr weiter Akkord ohne Terz, aufwärts arpeggiert, um ein Air zu schließen.</translation>
    </message>
    <message>
        <source>The third is the lowest note: good for a bass that is moving on to another chord.</source>
        <translation>Die Terz ist der tiefste Ton: gut für einen Bass, der zu einem anderen Akkord weitergeht.</translation>
    </message>
    <message>
        <source>The fifth is the lowest note, so the bass can stay where it is while the chord changes.</source>
        <translation>Die Quinte ist der tiefste Ton; der Bass kann liegen bleiben, während der Akkord wechselt.</translation>
    </message>
    <message>
        <source>Root, then the fifth below it: the alternating bass of polkas and hornpipes.</source>
        <translation>Grundton, dann die Quinte darunter: der Wechselbass von Polkas und Hornpipes.</translation>
    </message>
    <message>
        <source>Bass note, then chord: gives a dance lift without being heavy.</source>
        <translation>Basston, dann Akkord: gibt Tanzschwung, ohne schwer zu sein.</translation>
    </message>
    <message>
        <source>Up and back again, the same for several bars whatever the tune does.</source>
        <translation>Auf und wieder zurück, mehrere Takte lang gleich, was immer die Melodie tut.</translation>
    </message>
    <message>
        <source>A drone of two strings, like the pipes, plucked again every bar or two.</source>
        <translation>Ein Bordun auf zwei Saiten wie beim Dudelsack, alle ein, zwei Takte neu gezupft.</translation>
    </message>
    <message>
        <source>An octave plucked together: a firm bass, once on each beat.</source>
        <translation>Eine Oktave zusammen gezupft: ein fester Bass, einmal auf jeder Zählzeit.</translation>
    </message>
    <message>
        <source>1-5-8 plucked together, for when there is no time to break it.</source>
        <translation>1-5-8 zusammen gezupft, wenn keine Zeit zum Brechen ist.</translation>
    </message>
    <message>
        <source>An open triad rolled up to its tenth, for an air.</source>
        <translation>Ein offener Dreiklang, bis zur Dezime arpeggiert, für ein Air.</translation>
    </message>
    <message>
        <source>A chord for endings with the third on top, rolled from low to high.</source>
        <translation>Ein Schlussakkord mit der Terz oben, von tief nach hoch arpeggiert.</translation>
    </message>
    <message>
        <source>The default shape rolled up: it closes an air without committing to a third.</source>
        <translation>Der Grundgriff, aufwärts arpeggiert: schließt ein Air, ohne sich auf eine Terz festzulegen.</translation>
    </message>
    <message>
        <source>The open triad rolled up to its third: the close of a harp air.</source>
        <translation>Der offene Dreiklang, bis zur Terz arpeggiert: der Schluss eines Harfen-Airs.</translation>
    </message>
    <message>
        <source>The whole open chord rolled from low to high: a broad ending.</source>
        <translation>Der ganze offene Akkord, von tief nach hoch arpeggiert: ein breiter Schluss.</translation>
    </message>
    <message>
        <source>Three quavers on each beat of a jig; finger 4 has to be placed again on every beat, so not too fast.</source>
        <translation>Drei Achtel auf jedem Schlag einer Jig; Finger 4 muss auf jedem Schlag neu gesetzt werden, also nicht zu schnell.</translation>
    </message>
    <message>
        <source>One placing a bar, up to the ninth and back: flows at dance speed.</source>
        <translation>Einmal setzen im Takt, hinauf zur None und zurück: fließt im Tanztempo.</translation>
    </message>
    <message>
        <source>One placing a bar, up to the high third and back.</source>
        <translation>Einmal setzen im Takt, hinauf zur hohen Terz und zurück.</translation>
    </message>
    <message>
        <source>Bass note, chord, chord, one on each beat of a slip jig.</source>
        <translation>Basston, Akkord, Akkord, je einer auf jedem Schlag einer Slip Jig.</translation>
    </message>
    <message>
        <source>Comes back from the fifth to the third, which leads the bass up to a chord a fourth higher.</source>
        <translation>Kommt von der Quinte zur Terz zurück, die den Bass zu einem Akkord eine Quarte höher führt.</translation>
    </message>
    <message>
        <source>The bass walks up from the root by step, towards a chord a fourth higher: once or twice in a tune.</source>
        <translation>Der Bass geht vom Grundton schrittweise hinauf, auf einen Akkord eine Quarte höher zu: ein- oder zweimal im Stück.</translation>
    </message>
    <message>
        <source>Steady crotchets under a tune with Scotch snaps: the left hand stays even.</source>
        <translation>Ruhige Viertel unter einer Melodie mit Scotch Snaps: Die linke Hand bleibt gleichmäßig.</translation>
    </message>
    <message>
        <source>once a bar</source>
        <translation>einmal im Takt</translation>
    </message>
    <message>
        <source>on each beat</source>
        <translation>auf jeder Zählzeit</translation>
    </message>
    <message>
        <source>twice a bar</source>
        <translation>zweimal im Takt</translation>
    </message>
    <message>
        <source>one a beat</source>
        <translation>eine je Zählzeit</translation>
    </message>
    <message>
        <source>one on each half bar</source>
        <translation>eine je halbem Takt</translation>
    </message>
    <message>
        <source>to and fro</source>
        <translation>hin und her</translation>
    </message>
    <message>
        <source>two beats, then ring</source>
        <translation>zwei Schläge, dann klingen lassen</translation>
    </message>
    <message>
        <source>bass, then the top note twice</source>
        <translation>Bass, dann zweimal der höchste Ton</translation>
    </message>
    <message>
        <source>long and short</source>
        <translation>lang und kurz</translation>
    </message>
    <message>
        <source>two minims, then ring</source>
        <translation>zwei Halbe, dann klingen lassen</translation>
    </message>
    <message>
        <source>on beats 1 and 4</source>
        <translation>auf Zählzeit 1 und 4</translation>
    </message>
    <message>
        <source>held for the bar</source>
        <translation>den Takt über gehalten</translation>
    </message>
    <message>
        <source>together on each beat</source>
        <translation>zusammen auf jeder Zählzeit</translation>
    </message>
    <message>
        <source>together on each half bar</source>
        <translation>zusammen auf jedem halben Takt</translation>
    </message>
    <message>
        <source>quavers, then ring</source>
        <translation>Achtel, dann klingen lassen</translation>
    </message>
    <message>
        <source>bass and chord</source>
        <translation>Bass und Akkord</translation>
    </message>
    <message>
        <source>first, second and last</source>
        <translation>erster, zweiter und letzter Schlag</translation>
    </message>
    <message>
        <source>crotchets, then ring</source>
        <translation>Viertel, dann klingen lassen</translation>
    </message>
    <message>
        <source>rocking</source>
        <translation>wiegend</translation>
    </message>
    <message>
        <source>bass and chord twice</source>
        <translation>Bass und Akkord, zweimal</translation>
    </message>
    <message>
        <source>four quavers and a minim</source>
        <translation>vier Achtel und eine Halbe</translation>
    </message>
    <message>
        <source>two minims</source>
        <translation>zwei Halbe</translation>
    </message>
    <message>
        <source>bass and two chords</source>
        <translation>Bass und zwei Akkorde</translation>
    </message>
    <message>
        <source>bass and chord, then ring</source>
        <translation>Bass und Akkord, dann klingen lassen</translation>
    </message>
    <message>
        <source>two quavers last</source>
        <translation>zwei Achtel am Schluss</translation>
    </message>
    <message>
        <source>two quavers, then crotchets</source>
        <translation>zwei Achtel, dann Viertel</translation>
    </message>
    <message>
        <source>there and back</source>
        <translation>hin und zurück</translation>
    </message>
    <message>
        <source>quavers on each beat</source>
        <translation>Achtel auf jeder Zählzeit</translation>
    </message>
    <message>
        <source>bass, then chord</source>
        <translation>Bass, dann Akkord</translation>
    </message>
    <message>
        <source>bass and chord on each beat</source>
        <translation>Bass und Akkord auf jeder Zählzeit</translation>
    </message>
    <message>
        <source>long and short twice</source>
        <translation>lang und kurz, zweimal</translation>
    </message>
    <message>
        <source>three notes, then one</source>
        <translation>drei Noten, dann eine</translation>
    </message>
    <message>
        <source>five quavers, then ring</source>
        <translation>fünf Achtel, dann klingen lassen</translation>
    </message>
    <message>
        <source>quavers, last on the third beat</source>
        <translation>Achtel, die letzte auf dem dritten Schlag</translation>
    </message>
    <message>
        <source>one a beat, then ring</source>
        <translation>eine je Zählzeit, dann klingen lassen</translation>
    </message>
    <message>
        <source>two crotchets, then minims</source>
        <translation>zwei Viertel, dann Halbe</translation>
    </message>
    <message>
        <source>crotchets, last one long</source>
        <translation>Viertel, die letzte lang</translation>
    </message>
    <message>
        <source>three and two</source>
        <translation>drei und zwei</translation>
    </message>
    <message>
        <source>three notes, twice</source>
        <translation>drei Noten, zweimal</translation>
    </message>
    <message>
        <source>off the beat</source>
        <translation>zwischen den Zählzeiten</translation>
    </message>
    <message>
        <source>minim, then crotchets</source>
        <translation>eine Halbe, dann Viertel</translation>
    </message>
    <message>
        <source>one a beat, then a quaver</source>
        <translation>einer auf jeder Zählzeit, dann eine Achtel</translation>
    </message>
    <message>
        <source>bass, chord, chord with lift</source>
        <translation>Bass, Akkord, Akkord mit Schwung</translation>
    </message>
    <message>
        <source>up and back</source>
        <translation>auf und zurück</translation>
    </message>
    <message>
        <source>long and short, then ring</source>
        <translation>lang und kurz, dann klingen lassen</translation>
    </message>
    <message>
        <source>once</source>
        <translation>einmal</translation>
    </message>
    <message>
        <source>even</source>
        <translation>gleichmäßig</translation>
    </message>
    <message>
        <source>held</source>
        <translation>gehalten</translation>
    </message>
    <message>
        <source>first two notes</source>
        <translation>die ersten zwei Noten</translation>
    </message>
    <message>
        <source>first three notes</source>
        <translation>die ersten drei Noten</translation>
    </message>
    <message>
        <source>Fullness</source>
        <translation>Fülle</translation>
    </message>
    <message>
        <source>few notes</source>
        <translation>wenige Töne</translation>
    </message>
    <message>
        <source>many notes</source>
        <translation>viele Töne</translation>
    </message>
    <message>
        <source>Ease</source>
        <translation>Leichtigkeit</translation>
    </message>
    <message>
        <source>no special care</source>
        <translation>keine besondere Rücksicht</translation>
    </message>
    <message>
        <source>easy for the hand</source>
        <translation>leicht für die Hand</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>only notes of the chord</source>
        <translation>nur Akkordtöne</translation>
    </message>
    <message>
        <source>sixths, sevenths, ninths</source>
        <translation>Sexten, Septimen, Nonen</translation>
    </message>
    <message>
        <source>Sameness</source>
        <translation>Gleichmaß</translation>
    </message>
    <message>
        <source>changes often</source>
        <translation>oft wechselnd</translation>
    </message>
    <message>
        <source>same pattern for longer</source>
        <translation>länger dasselbe Muster</translation>
    </message>
    <message>
        <source>Movement of the bass</source>
        <translation>Bewegung im Bass</translation>
    </message>
    <message>
        <source>roots, wherever they lie</source>
        <translation>Grundtöne, wo immer sie liegen</translation>
    </message>
    <message>
        <source>a bass that walks</source>
        <translation>ein Bass, der schreitet</translation>
    </message>
    <message>
        <source>Equal</source>
        <translation>Gleichstufig</translation>
    </message>
    <message>
        <source>Quarter-comma meantone</source>
        <translation>Mitteltönig (Viertelkomma)</translation>
    </message>
    <message>
        <source>Pythagorean</source>
        <translation>Pythagoreisch</translation>
    </message>
    <message>
        <source>Well-tempered, four narrow fifths</source>
        <translation>Wohltemperiert, vier enge Quinten</translation>
    </message>
    <message>
        <source>E flat</source>
        <translation>E♭</translation>
    </message>
    <message>
        <source>A flat</source>
        <translation>A♭</translation>
    </message>
    <message>
        <source>B flat</source>
        <translation>B♭</translation>
    </message>
    <message>
        <source>C</source>
        <translation>C</translation>
    </message>
    <message>
        <source>levers on every string</source>
        <translation>Klappen auf allen Saiten</translation>
    </message>
    <message>
        <source>levers on the C and F strings</source>
        <translation>Klappen auf den C- und F-Saiten</translation>
    </message>
    <message>
        <source>levers on the C, F and B strings</source>
        <translation>Klappen auf den C-, F- und B-Saiten</translation>
    </message>
    <message>
        <source>levers on the F strings</source>
        <translation>Klappen auf den F-Saiten</translation>
    </message>
    <message>
        <source>no levers</source>
        <translation>keine Klappen</translation>
    </message>
    <message>
        <source>Plain: few notes, with time between them, easy to place</source>
        <translation>Schlicht: wenige Töne mit Zeit dazwischen, leicht zu setzen</translation>
    </message>
    <message>
        <source>Flowing: broken chords that keep moving</source>
        <translation>Fließend: gebrochene Akkorde, die in Bewegung bleiben</translation>
    </message>
    <message>
        <source>Open: wide shapes with tenths and clear bass notes</source>
        <translation>Weit: weite Griffe mit Dezimen und klaren Basstönen</translation>
    </message>
    <message>
        <source>Full: as many notes as your level and hand allow</source>
        <translation>Voll: so viele Töne, wie Niveau und Hand erlauben</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>schlicht</translation>
    </message>
    <message>
        <source>plain</source>
        <translation>einfach</translation>
    </message>
    <message>
        <source>fuller</source>
        <translation>voller</translation>
    </message>
    <message>
        <source>as at first</source>
        <translation>wie am Anfang</translation>
    </message>
    <message>
        <source>Twice: plain, then fuller</source>
        <translation>Zweimal: einfach, dann voller</translation>
    </message>
    <message>
        <source>Three times: bare, plain, fuller</source>
        <translation>Dreimal: schlicht, einfach, voller</translation>
    </message>
    <message>
        <source>Four times: bare, plain, an octave higher, fuller</source>
        <translation>Viermal: schlicht, einfach, eine Oktave höher, voller</translation>
    </message>
    <message>
        <source>Five times: bare, plain, fuller, an octave higher, as at first</source>
        <translation>Fünfmal: schlicht, einfach, voller, eine Oktave höher, wie am Anfang</translation>
    </message>
    <message>
        <source>Drone: an open fifth that rings on, as under the pipes</source>
        <translation>Bordun: eine leere Quinte, die weiterklingt, wie unter der Sackpfeife</translation>
    </message>
    <message>
        <source>Ostinato: one figure held over each strain</source>
        <translation>Ostinato: eine Figur, die jeden Teil hindurch bleibt</translation>
    </message>
</context>
<context>
    <name>ui</name>
    <message>
        <source>&amp;New tune…</source>
        <translation>Neues &amp;Stück…</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Another &amp;tune of this tunebook…</source>
        <translation>&amp;Anderes Stück dieser Sammlung…</translation>
    </message>
    <message>
        <source>Ne&amp;xt tune of this tunebook</source>
        <translation>Nächstes Stück &amp;dieser Sammlung</translation>
    </message>
    <message>
        <source>Pre&amp;vious tune of this tunebook</source>
        <translation>&amp;Voriges Stück dieser Sammlung</translation>
    </message>
    <message>
        <source>Open &amp;demo tune</source>
        <translation>Demostück &amp;öffnen</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>Spei&amp;chern</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>S&amp;peichern unter…</translation>
    </message>
    <message>
        <source>&amp;Go back to…</source>
        <translation>Z&amp;urückgehen zu…</translation>
    </message>
    <message>
        <source>Work left &amp;unsaved…</source>
        <translation>Un&amp;gespeicherte Arbeit…</translation>
    </message>
    <message>
        <source>&amp;Export…</source>
        <translation>E&amp;xportieren…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>D&amp;rucken…</translation>
    </message>
    <message>
        <source>T&amp;itle and notes…</source>
        <translation>&amp;Titel und Anmerkungen…</translation>
    </message>
    <message>
        <source>Pattern &amp;handout…</source>
        <translation>Arbeitsblatt &amp;zu Mustern…</translation>
    </message>
    <message>
        <source>Export &amp;levels…</source>
        <translation>&amp;Niveaus exportieren…</translation>
    </message>
    <message>
        <source>A &amp;folder of tunes…</source>
        <translation>&amp;Ein Ordner voller Stücke…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>Paste a &amp;tune (ABC)</source>
        <translation>S&amp;tück einfügen (ABC)</translation>
    </message>
    <message>
        <source>&amp;Copy the left hand</source>
        <translation>&amp;Linke Hand kopieren</translation>
    </message>
    <message>
        <source>&amp;Paste the left hand</source>
        <translation>Linke Hand &amp;einfügen</translation>
    </message>
    <message>
        <source>S&amp;wap with the copied bar</source>
        <translation>&amp;Mit dem kopierten Takt tauschen</translation>
    </message>
    <message>
        <source>Use at every chor&amp;d like this</source>
        <translation>Bei &amp;jedem solchen Akkord verwenden</translation>
    </message>
    <message>
        <source>Use wherever the &amp;bar comes again</source>
        <translation>&amp;Überall verwenden, wo der Takt wiederkehrt</translation>
    </message>
    <message>
        <source>Use at every cl&amp;ose</source>
        <translation>&amp;Bei jedem Schluss verwenden</translation>
    </message>
    <message>
        <source>Choose all c&amp;hords together</source>
        <translation>Alle Akkorde &amp;zusammen wählen</translation>
    </message>
    <message>
        <source>Choo&amp;se every bar like this</source>
        <translation>Alle glei&amp;chen Takte wählen</translation>
    </message>
    <message>
        <source>Go to the next bar like this</source>
        <translation>Zum nächsten gleichen Takt</translation>
    </message>
    <message>
        <source>Let the rest &amp;follow</source>
        <translation>Den Rest f&amp;olgen lassen</translation>
    </message>
    <message>
        <source>&amp;Your taste…</source>
        <translation>I&amp;hr Geschmack…</translation>
    </message>
    <message>
        <source>&amp;Messages</source>
        <translation>&amp;Meldungen</translation>
    </message>
    <message>
        <source>String &amp;bank</source>
        <translation>Sa&amp;itenbild</translation>
    </message>
    <message>
        <source>S&amp;hapes</source>
        <translation>&amp;Griffe</translation>
    </message>
    <message>
        <source>String bank at the &amp;top</source>
        <translation>S&amp;aitenbild oben</translation>
    </message>
    <message>
        <source>Shapes on the le&amp;ft</source>
        <translation>Griffe &amp;links</translation>
    </message>
    <message>
        <source>Without &amp;panes</source>
        <translation>Ohne &amp;Seitenfelder</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>W&amp;iederherstellen</translation>
    </message>
    <message>
        <source>H&amp;istory…</source>
        <translation>&amp;Verlauf…</translation>
    </message>
    <message>
        <source>&amp;Keep this shape</source>
        <translation>Diese&amp;n Griff behalten</translation>
    </message>
    <message>
        <source>&amp;Let this shape change</source>
        <translation>Diesen &amp;Griff freigeben</translation>
    </message>
    <message>
        <source>Let &amp;all shapes change</source>
        <translation>&amp;Alle Griffe freigeben</translation>
    </message>
    <message>
        <source>Left hand r&amp;ests here</source>
        <translation>Linke Hand &amp;pausiert hier</translation>
    </message>
    <message>
        <source>A&amp;nother setting of the whole tune</source>
        <translation>Andere Fassung des ganzen &amp;Stücks</translation>
    </message>
    <message>
        <source>The best settin&amp;g</source>
        <translation>Die beste Fass&amp;ung</translation>
    </message>
    <message>
        <source>&amp;Vary the shapes on repeats</source>
        <translation>Griffe bei &amp;Wiederholungen variieren</translation>
    </message>
    <message>
        <source>Arrange for the te&amp;mpo you hear</source>
        <translation>Für &amp;das gehörte Tempo arrangieren</translation>
    </message>
    <message>
        <source>Arrange for the tune's own tempo</source>
        <translation>Für das eigene Tempo des Stücks arrangieren</translation>
    </message>
    <message>
        <source>Hear the whole t&amp;une, or stop</source>
        <translation>Ganzes Stück anhören &amp;oder anhalten</translation>
    </message>
    <message>
        <source>Hear on from h&amp;ere</source>
        <translation>A&amp;b hier anhören</translation>
    </message>
    <message>
        <source>Hear this &amp;bar</source>
        <translation>&amp;Diesen Takt anhören</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>Anhalt&amp;en</translation>
    </message>
    <message>
        <source>Only this &amp;phrase</source>
        <translation>Nur diese &amp;Phrase</translation>
    </message>
    <message>
        <source>Only this par&amp;t</source>
        <translation>&amp;Nur diesen Teil</translation>
    </message>
    <message>
        <source>The bar bef&amp;ore as well</source>
        <translation>Auch den &amp;Takt davor</translation>
    </message>
    <message>
        <source>Clic&amp;k on every beat</source>
        <translation>&amp;Klick auf jeder Zählzeit</translation>
    </message>
    <message>
        <source>Faster by &amp;itself</source>
        <translation>&amp;Von selbst schneller</translation>
    </message>
    <message>
        <source>T&amp;ype the tempo</source>
        <translation>Te&amp;mpo eintippen</translation>
    </message>
    <message>
        <source>&amp;More for practice…</source>
        <translation>Mehr zum &amp;Üben…</translation>
    </message>
    <message>
        <source>Save sou&amp;nd files…</source>
        <translation>Klangdateien &amp;speichern…</translation>
    </message>
    <message>
        <source>&amp;Harp sound and MIDI…</source>
        <translation>&amp;Harfenklang und MIDI…</translation>
    </message>
    <message>
        <source>P&amp;lay it with me</source>
        <translation>Mit mir &amp;zusammen spielen</translation>
    </message>
    <message>
        <source>Hear it between its neighbours</source>
        <translation>Zwischen den Nachbarn anhören</translation>
    </message>
    <message>
        <source>Remember this as A</source>
        <translation>Als A merken</translation>
    </message>
    <message>
        <source>Compare A an&amp;d B</source>
        <translation>A &amp;und B vergleichen</translation>
    </message>
    <message>
        <source>Go back to A</source>
        <translation>Zurück zu A</translation>
    </message>
    <message>
        <source>A&amp;gain</source>
        <translation>W&amp;iederholen</translation>
    </message>
    <message>
        <source>&amp;Count-in</source>
        <translation>Einz&amp;ähler</translation>
    </message>
    <message>
        <source>Le&amp;ft hand</source>
        <translation>&amp;Linke Hand</translation>
    </message>
    <message>
        <source>&amp;Right hand</source>
        <translation>&amp;Rechte Hand</translation>
    </message>
    <message>
        <source>F&amp;aster</source>
        <translation>S&amp;chneller</translation>
    </message>
    <message>
        <source>Slo&amp;wer</source>
        <translation>Lan&amp;gsamer</translation>
    </message>
    <message>
        <source>&amp;Grid</source>
        <translation>&amp;Raster</translation>
    </message>
    <message>
        <source>&amp;Sheet</source>
        <translation>&amp;Blatt</translation>
    </message>
    <message>
        <source>&amp;Next pane</source>
        <translation>&amp;Nächstes Feld</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>H&amp;ell</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <source>High &amp;contrast, light</source>
        <translation>H&amp;oher Kontrast, hell</translation>
    </message>
    <message>
        <source>High contrast, da&amp;rk</source>
        <translation>Hoher &amp;Kontrast, dunkel</translation>
    </message>
    <message>
        <source>&amp;Handbook</source>
        <translation>&amp;Handbuch</translation>
    </message>
    <message>
        <source>&amp;Keyboard shortcuts</source>
        <translation>&amp;Tastenkürzel</translation>
    </message>
    <message>
        <source>&amp;Care of hands and harp</source>
        <translation>&amp;Schonung von Händen und Harfe</translation>
    </message>
    <message>
        <source>&amp;About Sallow</source>
        <translation>&amp;Über Sallow</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>Zu&amp;letzt geöffnet</translation>
    </message>
    <message>
        <source>&amp;Pupil</source>
        <translation>Schü&amp;ler</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Hear</source>
        <translation>An&amp;hören</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>He&amp;lp</source>
        <translation>Hil&amp;fe</translation>
    </message>
    <message>
        <source>&amp;Leave papers that are there already</source>
        <translation>&amp;Vorhandene Blätter nicht neu machen</translation>
    </message>
    <message>
        <source>A folder of tunes</source>
        <translation>Ein Ordner voller Stücke</translation>
    </message>
    <message>
        <source>&amp;Tunes in</source>
        <translation>&amp;Stücke in</translation>
    </message>
    <message>
        <source>Folder of tunes</source>
        <translation>Ordner mit Stücken</translation>
    </message>
    <message>
        <source>&amp;Papers into</source>
        <translation>&amp;Blätter nach</translation>
    </message>
    <message>
        <source>Folder for the papers</source>
        <translation>Ordner für die Blätter</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>Sheet (PDF)</source>
        <translation>Blatt (PDF)</translation>
    </message>
    <message>
        <source>MIDI</source>
        <translation>MIDI</translation>
    </message>
    <message>
        <source>MusicXML</source>
        <translation>MusicXML</translation>
    </message>
    <message>
        <source>Sound</source>
        <translation>Klang</translation>
    </message>
    <message>
        <source>Arrangement</source>
        <translation>Arrangement</translation>
    </message>
    <message>
        <source>Make</source>
        <translation>Erstellen</translation>
    </message>
    <message>
        <source>What could not be done</source>
        <translation>Was nicht möglich war</translation>
    </message>
    <message>
        <source>Enter or a double click opens the tune</source>
        <translation>Eingabetaste oder Doppelklick öffnet das Stück</translation>
    </message>
    <message>
        <source>&amp;Start</source>
        <translation>&amp;Start</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Wählen…</translation>
    </message>
    <message>
        <source>&amp;Cancel</source>
        <translation>&amp;Abbrechen</translation>
    </message>
    <message>
        <source>Arranging …</source>
        <translation>Wird arrangiert …</translation>
    </message>
    <message>
        <source>%1 of %2 tunes</source>
        <translation>%1 von %2 Stücken</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>nicht lesbar</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Tonart</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Takt</translation>
    </message>
    <message>
        <source>Bars</source>
        <translation>Takte</translation>
    </message>
    <message>
        <source>Chords</source>
        <translation>Akkorde</translation>
    </message>
    <message>
        <source>Tunes of “%1”</source>
        <translation>Stücke aus „%1“</translation>
    </message>
    <message>
        <source>Part of a title, a kind, a key or a number</source>
        <translation>Teil eines Titels, Art, Tonart oder Nummer</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>Tunes</source>
        <translation>Stücke</translation>
    </message>
    <message>
        <source>How the tune begins</source>
        <translation>Wie das Stück beginnt</translation>
    </message>
    <message>
        <source>%1 tunes</source>
        <translation>%1 Stücke</translation>
    </message>
    <message>
        <source>This tune cannot be read. %1</source>
        <translation>Dieses Stück ist nicht lesbar. %1</translation>
    </message>
    <message>
        <source>Best for tune and harp</source>
        <translation>Am besten für Stück und Harfe</translation>
    </message>
    <message>
        <source>As written</source>
        <translation>Wie geschrieben</translation>
    </message>
    <message>
        <source>Keys of this harp, best first</source>
        <translation>Tonarten dieser Harfe, beste zuerst</translation>
    </message>
    <message>
        <source>   1 lever flip</source>
        <translation>   1 Klappenwechsel</translation>
    </message>
    <message>
        <source>   %1 lever flips</source>
        <translation>   %1 Klappenwechsel</translation>
    </message>
    <message>
        <source>Compare keys…</source>
        <translation>Tonarten vergleichen…</translation>
    </message>
    <message>
        <source>My harps</source>
        <translation>Meine Harfen</translation>
    </message>
    <message>
        <source>Describe your harp…</source>
        <translation>Ihre Harfe beschreiben…</translation>
    </message>
    <message>
        <source>Tuned in</source>
        <translation>Gestimmt in</translation>
    </message>
    <message>
        <source>Levers</source>
        <translation>Klappen</translation>
    </message>
    <message>
        <source>Strings named</source>
        <translation>Saitennamen</translation>
    </message>
    <message>
        <source>as on printed harp music</source>
        <translation>wie in gedruckten Harfennoten</translation>
    </message>
    <message>
        <source>middle C is C4</source>
        <translation>eingestrichenes C heißt C4</translation>
    </message>
    <message>
        <source>middle C is 4C (harp octaves)</source>
        <translation>eingestrichenes C heißt 4C (Harfenoktaven)</translation>
    </message>
    <message>
        <source>numbered from the top</source>
        <translation>von oben gezählt</translation>
    </message>
    <message>
        <source>The right hand plays</source>
        <translation>Die rechte Hand spielt</translation>
    </message>
    <message>
        <source>The tune alone</source>
        <translation>Nur die Melodie</translation>
    </message>
    <message>
        <source>The tune, with a note below it where phrases end</source>
        <translation>Die Melodie, mit einem Ton darunter am Phrasenende</translation>
    </message>
    <message>
        <source>The tune, with notes below it on strong beats and where phrases end</source>
        <translation>Die Melodie, mit Tönen darunter auf betonten Zählzeiten und am Phrasenende</translation>
    </message>
    <message>
        <source>beat %1</source>
        <translation>Zählzeit %1</translation>
    </message>
    <message>
        <source>beat %1 and a half</source>
        <translation>Zählzeit %1 und</translation>
    </message>
    <message>
        <source>, found</source>
        <translation>, gefunden</translation>
    </message>
    <message>
        <source>, set by you</source>
        <translation>, von Ihnen gesetzt</translation>
    </message>
    <message>
        <source>%1, no chord</source>
        <translation>%1, kein Akkord</translation>
    </message>
    <message>
        <source>%1: %2 begins%3</source>
        <translation>%1: %2 beginnt%3</translation>
    </message>
    <message>
        <source>%1: %2 goes on%3</source>
        <translation>%1: %2 gilt weiter%3</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>chord taken out of %1</source>
        <translation>Akkord entfernt in %1</translation>
    </message>
    <message>
        <source>chord plucked again in %1</source>
        <translation>Akkord neu gezupft in %1</translation>
    </message>
    <message>
        <source>Another chord is in the way, or the tune ends there.</source>
        <translation>Ein anderer Akkord ist im Weg, oder das Stück endet dort.</translation>
    </message>
    <message>
        <source>chord later in %1</source>
        <translation>Akkord später in %1</translation>
    </message>
    <message>
        <source>chord earlier in %1</source>
        <translation>Akkord früher in %1</translation>
    </message>
    <message>
        <source>chords: %1</source>
        <translation>Akkorde: %1</translation>
    </message>
    <message>
        <source>From its notes the tune as written is in %1 (%2 % sure).</source>
        <translation>Den Noten nach steht das geschriebene Stück in %1 (%2 % sicher).</translation>
    </message>
    <message>
        <source>&amp;Chord here…</source>
        <translation>&amp;Akkord hier…</translation>
    </message>
    <message>
        <source>&amp;Take this chord out</source>
        <translation>Diesen Akkord &amp;entfernen</translation>
    </message>
    <message>
        <source>A beat &amp;earlier</source>
        <translation>Eine Zählzeit &amp;früher</translation>
    </message>
    <message>
        <source>A beat &amp;later</source>
        <translation>Eine Zählzeit &amp;später</translation>
    </message>
    <message>
        <source>Chords for the &amp;whole tune…</source>
        <translation>Akkorde für das &amp;ganze Stück…</translation>
    </message>
    <message>
        <source>&amp;Chords</source>
        <translation>A&amp;kkorde</translation>
    </message>
    <message>
        <source>No chord: the left hand rests.</source>
        <translation>Kein Akkord: Die linke Hand pausiert.</translation>
    </message>
    <message>
        <source>Reads as %1: %2</source>
        <translation>Gelesen als %1: %2</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Setzen</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Pluck again</source>
        <translation>Neu zupfen</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Früher</translation>
    </message>
    <message>
        <source>Chord in %1</source>
        <translation>Akkord in %1</translation>
    </message>
    <message>
        <source>Where the chord begins</source>
        <translation>Wo der Akkord beginnt</translation>
    </message>
    <message>
        <source>Am7, D/F♯, N.C. ...</source>
        <translation>Am7, D/F♯, N.C. …</translation>
    </message>
    <message>
        <source>Chord</source>
        <translation>Akkord</translation>
    </message>
    <message>
        <source>Likely chords here</source>
        <translation>Wahrscheinliche Akkorde hier</translation>
    </message>
    <message>
        <source>In all %1 bars with the same notes</source>
        <translation>In allen %1 Takten mit denselben Noten</translation>
    </message>
    <message>
        <source>This chord from this beat on (Enter)</source>
        <translation>Dieser Akkord ab dieser Zählzeit (Eingabetaste)</translation>
    </message>
    <message>
        <source>The chord before goes on</source>
        <translation>Der Akkord davor gilt weiter</translation>
    </message>
    <message>
        <source>The same chord is plucked again from this beat on</source>
        <translation>Derselbe Akkord wird ab dieser Zählzeit neu gezupft</translation>
    </message>
    <message>
        <source>The change comes a beat earlier</source>
        <translation>Der Wechsel kommt eine Zählzeit früher</translation>
    </message>
    <message>
        <source>The change comes a beat later</source>
        <translation>Der Wechsel kommt eine Zählzeit später</translation>
    </message>
    <message>
        <source>Likely here</source>
        <translation>Hier wahrscheinlich</translation>
    </message>
    <message>
        <source>Type a chord, or choose one below.</source>
        <translation>Schreiben Sie einen Akkord, oder wählen Sie unten einen.</translation>
    </message>
    <message>
        <source>%1 bars differ</source>
        <translation>%1 Takte anders</translation>
    </message>
    <message>
        <source>1 bar differs</source>
        <translation>1 Takt anders</translation>
    </message>
    <message>
        <source>&amp;Paste the chords here</source>
        <translation>Akkorde &amp;hier einfügen</translation>
    </message>
    <message>
        <source>C&amp;opy these chords</source>
        <translation>Diese Akkorde &amp;kopieren</translation>
    </message>
    <message>
        <source>Chords were found from the notes. Chords, Chords for the whole tune (Shift+C) shows other ways to put them.</source>
        <translation>Aus den Noten wurden Akkorde gefunden. Akkorde, Akkorde für das ganze Stück (Umschalt+C) zeigt andere Möglichkeiten.</translation>
    </message>
    <message>
        <source>Print (Ctrl+P, or Enter)</source>
        <translation>Drucken (Strg+P oder Eingabe)</translation>
    </message>
    <message>
        <source>Some bars of the tune in this way (Ctrl+Space); nothing is kept</source>
        <translation>Einige Takte des Stücks auf diese Weise (Strg+Leertaste); nichts wird behalten</translation>
    </message>
    <message>
        <source>The bar with this chord (Ctrl+Space); nothing is kept</source>
        <translation>Der Takt mit diesem Akkord (Strg+Leertaste); nichts wird behalten</translation>
    </message>
    <message>
        <source>The chords of %1 are copied. Choose another bar to paste them.</source>
        <translation>Die Akkorde von %1 sind kopiert. Wählen Sie einen anderen Takt, um sie einzufügen.</translation>
    </message>
    <message>
        <source>The chords of %1 to %2 are copied. Choose another bar to paste them.</source>
        <translation>Die Akkorde von %1 bis %2 sind kopiert. Wählen Sie einen anderen Takt, um sie einzufügen.</translation>
    </message>
    <message>
        <source>The chords that were found follow the new notes.</source>
        <translation>Die gefundenen Akkorde folgen den neuen Noten.</translation>
    </message>
    <message>
        <source>chords found from the notes</source>
        <translation>Akkorde aus den Noten gefunden</translation>
    </message>
    <message>
        <source>chords pasted from %1 on</source>
        <translation>Akkorde eingefügt ab %1</translation>
    </message>
    <message>
        <source>rarely</source>
        <translation>selten</translation>
    </message>
    <message>
        <source>as now</source>
        <translation>wie jetzt</translation>
    </message>
    <message>
        <source>Keep the chords that the file has</source>
        <translation>Die Akkorde der Datei behalten</translation>
    </message>
    <message>
        <source>Chords for the whole tune</source>
        <translation>Akkorde für das ganze Stück</translation>
    </message>
    <message>
        <source>Chords you set stay; the rest follow. %1</source>
        <translation>Von Ihnen gesetzte Akkorde bleiben; der Rest folgt. %1</translation>
    </message>
    <message>
        <source>Ways to put chords to the tune</source>
        <translation>Arten, das Stück mit Akkorden zu versehen</translation>
    </message>
    <message>
        <source>Use</source>
        <translation>Verwenden</translation>
    </message>
    <message>
        <source>Left  %1  %2%3</source>
        <translation>Links  %1  %2%3</translation>
    </message>
    <message>
        <source>Right  %1  %2%3</source>
        <translation>Rechts  %1  %2%3</translation>
    </message>
    <message>
        <source>, set</source>
        <translation>, gesetzt</translation>
    </message>
    <message>
        <source>1  thumb</source>
        <translation>1  Daumen</translation>
    </message>
    <message>
        <source>As suggested</source>
        <translation>Wie vorgeschlagen</translation>
    </message>
    <message>
        <source>Fingering</source>
        <translation>Fingersatz</translation>
    </message>
    <message>
        <source>%1: %2 where %3 was</source>
        <translation>%1: %2, vorher %3</translation>
    </message>
    <message>
        <source>%1: %2 from %3 where it was from %4</source>
        <translation>%1: %2 ab %3, vorher ab %4</translation>
    </message>
    <message>
        <source>%1: %2, %3 where it was %4</source>
        <translation>%1: %2, %3, vorher %4</translation>
    </message>
    <message>
        <source>%1: %2 played another way</source>
        <translation>%1: %2 anders gespielt</translation>
    </message>
    <message>
        <source>What followed</source>
        <translation>Was folgte</translation>
    </message>
    <message>
        <source>Only this one</source>
        <translation>Nur dieser</translation>
    </message>
    <message>
        <source>Let it follow</source>
        <translation>Folgen lassen</translation>
    </message>
    <message>
        <source>The other chords keep the shapes they had</source>
        <translation>Die anderen Akkorde behalten ihre bisherigen Griffe</translation>
    </message>
    <message>
        <source>The changes stay, and their marks go</source>
        <translation>Die Änderungen bleiben, ihre Markierungen verschwinden</translation>
    </message>
    <message>
        <source>What followed: %1</source>
        <translation>Was folgte: %1</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>What followed (1 of %1)</source>
        <translation>Was folgte (1 von %1)</translation>
    </message>
    <message>
        <source>Handbook</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>The handbook's pages are not beside the program. Install Sallow again.</source>
        <translation>Die Seiten des Handbuchs liegen nicht beim Programm. Installieren Sie Sallow neu.</translation>
    </message>
    <message>
        <source>P&amp;rint…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>Pattern handout</source>
        <translation>Arbeitsblatt zu Mustern</translation>
    </message>
    <message>
        <source>Patterns</source>
        <translation>Muster</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>&amp;Key</source>
        <translation>&amp;Tonart</translation>
    </message>
    <message>
        <source>&amp;Title</source>
        <translation>T&amp;itel</translation>
    </message>
    <message>
        <source>&amp;Patterns, one page each</source>
        <translation>&amp;Muster, je eine Seite</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source> mm</source>
        <translation> mm</translation>
    </message>
    <message>
        <source>Spacing at the lowest string</source>
        <translation>Abstand an der tiefsten Saite</translation>
    </message>
    <message>
        <source>Spacing at the highest string</source>
        <translation>Abstand an der höchsten Saite</translation>
    </message>
    <message>
        <source>Describe your harp</source>
        <translation>Ihre Harfe beschreiben</translation>
    </message>
    <message>
        <source>Your harp</source>
        <translation>Ihre Harfe</translation>
    </message>
    <message>
        <source>%1: click to add or remove its lever</source>
        <translation>%1: klicken, um die Klappe anzubringen oder zu entfernen</translation>
    </message>
    <message>
        <source>Click a string to add or remove its lever. Describe the harp as it is now. Ask its maker before you retune it, change strings or add levers: the strings and soundboard are built for one tension.</source>
        <translation>Klicken Sie eine Saite an, um ihre Klappe anzubringen oder zu entfernen. Beschreiben Sie die Harfe, wie sie jetzt ist. Fragen Sie die Harfenbauerin oder den Harfenbauer, bevor Sie umstimmen, Saiten wechseln oder Klappen anbringen: Saiten und Decke sind für eine bestimmte Spannung gebaut.</translation>
    </message>
    <message>
        <source>Use once</source>
        <translation>Einmal verwenden</translation>
    </message>
    <message>
        <source>Save as my harp</source>
        <translation>Als meine Harfe speichern</translation>
    </message>
    <message>
        <source>Name of the harp</source>
        <translation>Name der Harfe</translation>
    </message>
    <message>
        <source>Number of strings</source>
        <translation>Anzahl der Saiten</translation>
    </message>
    <message>
        <source>Lowest string</source>
        <translation>Tiefste Saite</translation>
    </message>
    <message>
        <source>Tuning with all levers down</source>
        <translation>Stimmung mit allen Klappen unten</translation>
    </message>
    <message>
        <source>Wound strings</source>
        <translation>Umsponnene Saiten</translation>
    </message>
    <message>
        <source> lowest</source>
        <translation> tiefste</translation>
    </message>
    <message>
        <source>Names of strings</source>
        <translation>Namen der Saiten</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Strings</source>
        <translation>Saiten</translation>
    </message>
    <message>
        <source>Lowest</source>
        <translation>Tiefste</translation>
    </message>
    <message>
        <source>Spacing, low</source>
        <translation>Abstand, tief</translation>
    </message>
    <message>
        <source>Spacing, high</source>
        <translation>Abstand, hoch</translation>
    </message>
    <message>
        <source>Wound</source>
        <translation>Umsponnen</translation>
    </message>
    <message>
        <source>Levers on</source>
        <translation>Klappen auf</translation>
    </message>
    <message>
        <source>all strings</source>
        <translation>allen Saiten</translation>
    </message>
    <message>
        <source>C, F and B</source>
        <translation>C, F und B</translation>
    </message>
    <message>
        <source>C and F</source>
        <translation>C und F</translation>
    </message>
    <message>
        <source>F</source>
        <translation>F</translation>
    </message>
    <message>
        <source>Levers on: %1</source>
        <translation>Klappen auf: %1</translation>
    </message>
    <message>
        <source>%1 to %2, %3 levers</source>
        <translation>%1 bis %2, %3 Klappen</translation>
    </message>
    <message>
        <source>%1 (not plugged in)</source>
        <translation>%1 (nicht angeschlossen)</translation>
    </message>
    <message>
        <source>Harp sound and MIDI</source>
        <translation>Harfenklang und MIDI</translation>
    </message>
    <message>
        <source>None is installed</source>
        <translation>Keine ist installiert</translation>
    </message>
    <message>
        <source>As usual: %1</source>
        <translation>Wie üblich: %1</translation>
    </message>
    <message>
        <source>Any General MIDI sound font (.sf2) with a harp; each of its keys is measured and tuned</source>
        <translation>Jede General-MIDI-Klangdatei (.sf2) mit einer Harfe; jede ihrer Tasten wird gemessen und gestimmt</translation>
    </message>
    <message>
        <source> Hz</source>
        <translation> Hz</translation>
    </message>
    <message>
        <source>A above middle C</source>
        <translation>A über dem eingestrichenen C</translation>
    </message>
    <message>
        <source>Temperament</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Your own, in cents</source>
        <translation>Eigene, in Cent</translation>
    </message>
    <message>
        <source>Cents by note</source>
        <translation>Cent je Ton</translation>
    </message>
    <message>
        <source>such as E=-14,B=-12</source>
        <translation>etwa E=-14,B=-12</translation>
    </message>
    <message>
        <source>Cents above equal temperament, note by note</source>
        <translation>Cent über der gleichstufigen Stimmung, Ton für Ton</translation>
    </message>
    <message>
        <source>How much other strings answer</source>
        <translation>Wie stark andere Saiten mitklingen</translation>
    </message>
    <message>
        <source>How much the strings that nobody plucked answer</source>
        <translation>Wie stark die nicht gezupften Saiten mitklingen</translation>
    </message>
    <message>
        <source>MIDI in</source>
        <translation>MIDI-Eingang</translation>
    </message>
    <message>
        <source>MIDI out</source>
        <translation>MIDI-Ausgang</translation>
    </message>
    <message>
        <source>Its keys pluck strings, write notes and are listened to when you play along</source>
        <translation>Seine Tasten zupfen Saiten und schreiben Noten; beim Mitspielen hört das Programm ihnen zu</translation>
    </message>
    <message>
        <source>Plays what you hear: the right hand on channel 1, the left on 2, with the timing clock</source>
        <translation>Spielt, was Sie anhören: die rechte Hand auf Kanal 1, die linke auf 2, mit Taktgeber</translation>
    </message>
    <message>
        <source>&amp;Other font…</source>
        <translation>&amp;Andere Klangdatei…</translation>
    </message>
    <message>
        <source>&amp;Test note</source>
        <translation>&amp;Probeton</translation>
    </message>
    <message>
        <source>Sound &amp;font</source>
        <translation>&amp;Klangdatei</translation>
    </message>
    <message>
        <source>&amp;A above middle C</source>
        <translation>&amp;A über dem eingestrichenen C</translation>
    </message>
    <message>
        <source>T&amp;emperament</source>
        <translation>&amp;Temperatur</translation>
    </message>
    <message>
        <source>Ot&amp;her strings answer</source>
        <translation>Andere Saiten &amp;klingen mit</translation>
    </message>
    <message>
        <source>MIDI &amp;in</source>
        <translation>MIDI-&amp;Eingang</translation>
    </message>
    <message>
        <source>&amp;MIDI out</source>
        <translation>&amp;MIDI-Ausgang</translation>
    </message>
    <message>
        <source>The first that is plugged in</source>
        <translation>Der erste, der angeschlossen ist</translation>
    </message>
    <message>
        <source>The first there is: %1</source>
        <translation>Der erste vorhandene: %1</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keiner</translation>
    </message>
    <message>
        <source>The key the tune is played in (Alt+1)</source>
        <translation>Die Tonart, in der das Stück gespielt wird (Alt+1)</translation>
    </message>
    <message>
        <source>Harp</source>
        <translation>Harfe</translation>
    </message>
    <message>
        <source>Size, tuning and levers of the harp (Alt+2)</source>
        <translation>Größe, Stimmung und Klappen der Harfe (Alt+2)</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>Hand</translation>
    </message>
    <message>
        <source>How far the hand reaches (Alt+3)</source>
        <translation>Wie weit die Hand greift (Alt+3)</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Niveau</translation>
    </message>
    <message>
        <source>How experienced the player is (Alt+4)</source>
        <translation>Wie erfahren Sie spielen (Alt+4)</translation>
    </message>
    <message>
        <source>Manner</source>
        <translation>Stil</translation>
    </message>
    <message>
        <source>What kind of left hand you prefer (Alt+5)</source>
        <translation>Welche Art linker Hand Sie bevorzugen (Alt+5)</translation>
    </message>
    <message>
        <source>Grid</source>
        <translation>Raster</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>The tune on the strings, a lane for each phrase (Ctrl+1)</source>
        <translation>Die Melodie auf den Saiten, eine Zeile je Phrase (Strg+1)</translation>
    </message>
    <message>
        <source>The sheet as it is printed (Ctrl+2)</source>
        <translation>Das Blatt, wie es gedruckt wird (Strg+2)</translation>
    </message>
    <message>
        <source>In the tune grid</source>
        <translation>Im Melodieraster</translation>
    </message>
    <message>
        <source>Arrow keys, Home, End</source>
        <translation>Pfeiltasten, Pos1, Ende</translation>
    </message>
    <message>
        <source>choose a chord</source>
        <translation>einen Akkord wählen</translation>
    </message>
    <message>
        <source>1 to 9</source>
        <translation>1 bis 9</translation>
    </message>
    <message>
        <source>use and keep the shape with that number</source>
        <translation>den Griff mit dieser Nummer verwenden und behalten</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingabetaste</translation>
    </message>
    <message>
        <source>go to the shapes</source>
        <translation>zu den Griffen</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <source>hear the bar, or the passage</source>
        <translation>den Takt oder den Abschnitt anhören</translation>
    </message>
    <message>
        <source>Shift and arrow keys</source>
        <translation>Umschalt und Pfeiltasten</translation>
    </message>
    <message>
        <source>choose a passage, as dragging or Shift and a click do; Esc lets it go</source>
        <translation>einen Abschnitt wählen, wie Ziehen oder Umschalt und Klick; Esc hebt ihn auf</translation>
    </message>
    <message>
        <source>Ctrl and a click, Alt and arrow keys</source>
        <translation>Strg und Klick, Alt und Pfeiltasten</translation>
    </message>
    <message>
        <source>choose another chord as well: what you do is done to all of them</source>
        <translation>einen weiteren Akkord wählen: Was Sie tun, gilt für alle</translation>
    </message>
    <message>
        <source>S</source>
        <translation>S</translation>
    </message>
    <message>
        <source>the ways round a snag in this bar</source>
        <translation>die Auswege aus einer Hürde in diesem Takt</translation>
    </message>
    <message>
        <source>In the shapes</source>
        <translation>Bei den Griffen</translation>
    </message>
    <message>
        <source>Up, Down, Page keys</source>
        <translation>Auf, Ab, Bildtasten</translation>
    </message>
    <message>
        <source>look at a shape</source>
        <translation>einen Griff ansehen</translation>
    </message>
    <message>
        <source>hear it</source>
        <translation>ihn anhören</translation>
    </message>
    <message>
        <source>use it and keep it</source>
        <translation>ihn verwenden und behalten</translation>
    </message>
    <message>
        <source>Left, Esc</source>
        <translation>Links, Esc</translation>
    </message>
    <message>
        <source>back to the grid</source>
        <translation>zurück zum Raster</translation>
    </message>
    <message>
        <source>While you change notes</source>
        <translation>Beim Ändern der Noten</translation>
    </message>
    <message>
        <source>a to g, z</source>
        <translation>a bis g, z</translation>
    </message>
    <message>
        <source>a note, nearest to the one before; a rest</source>
        <translation>eine Note, der vorigen am nächsten; eine Pause</translation>
    </message>
    <message>
        <source>1 to 9, / * .</source>
        <translation>1 bis 9, / * .</translation>
    </message>
    <message>
        <source>length in quavers; half, double, dotted</source>
        <translation>Länge in Achteln; halb, doppelt, punktiert</translation>
    </message>
    <message>
        <source>' and ,</source>
        <translation>' und ,</translation>
    </message>
    <message>
        <source>an octave higher, lower</source>
        <translation>eine Oktave höher, tiefer</translation>
    </message>
    <message>
        <source>sharp, flat, natural: before the letter</source>
        <translation>Kreuz, b, Auflösung: vor dem Buchstaben</translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation>Auf, Ab</translation>
    </message>
    <message>
        <source>by a string; with Shift a semitone, with Ctrl an octave</source>
        <translation>um eine Saite; mit Umschalt um einen Halbton, mit Strg um eine Oktave</translation>
    </message>
    <message>
        <source>tie; triplet; grace notes</source>
        <translation>Haltebogen; Triole; Vorschlagsnoten</translation>
    </message>
    <message>
        <source>Del, Backspace</source>
        <translation>Entf, Rücktaste</translation>
    </message>
    <message>
        <source>a note becomes a rest, a rest is taken out</source>
        <translation>eine Note wird zur Pause, eine Pause wird entfernt</translation>
    </message>
    <message>
        <source>Enter, Page keys</source>
        <translation>Eingabe, Bildtasten</translation>
    </message>
    <message>
        <source>next bar, other bars</source>
        <translation>nächster Takt, andere Takte</translation>
    </message>
    <message>
        <source>F2, Esc</source>
        <translation>F2, Esc</translation>
    </message>
    <message>
        <source>In the string bank</source>
        <translation>Im Saitenbild</translation>
    </message>
    <message>
        <source>Left, Right</source>
        <translation>Links, Rechts</translation>
    </message>
    <message>
        <source>choose a string; Page keys move by an octave</source>
        <translation>eine Saite wählen; die Bildtasten gehen um eine Oktave</translation>
    </message>
    <message>
        <source>pluck it</source>
        <translation>sie zupfen</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>Überall</translation>
    </message>
    <message>
        <source>Alt+1 to Alt+5</source>
        <translation>Alt+1 bis Alt+5</translation>
    </message>
    <message>
        <source>key, harp, hand, level, manner</source>
        <translation>Tonart, Harfe, Hand, Niveau, Stil</translation>
    </message>
    <message>
        <source>Keyboard shortcuts</source>
        <translation>Tastenkürzel</translation>
    </message>
    <message>
        <source>Care of hands and harp</source>
        <translation>Schonung von Händen und Harfe</translation>
    </message>
    <message>
        <source>Your hands</source>
        <translation>Ihre Hände</translation>
    </message>
    <message>
        <source>Reach: the shapes you are offered fit the measurements of the hand you chose. If a shape pulls, it is too wide for you, whatever the screen says: choose a smaller hand, roll the shape, or take one string off it.</source>
        <translation>Spannweite: Die angebotenen Griffe richten sich nach den Maßen der gewählten Hand. Wenn ein Griff zieht, ist er für Sie zu weit, was immer der Bildschirm sagt: Wählen Sie eine kleinere Hand, arpeggieren Sie den Griff, oder lassen Sie eine Saite weg.</translation>
    </message>
    <message>
        <source>Tension: relax after every group, keep your shoulders down and do not hold a stretch. Holding a tenth more than four times in eight bars, playing near your top speed for long, and jumping an octave on every beat tire any hand; the line at the foot of the window says where.</source>
        <translation>Spannung: Lockern Sie nach jeder Gruppe, lassen Sie die Schultern unten, und halten Sie keine Spreizung fest. Mehr als vier Dezimen in acht Takten, langes Spiel nahe am Höchsttempo und Oktavsprünge auf jeder Zählzeit ermüden jede Hand; die Zeile unten im Fenster sagt, wo.</translation>
    </message>
    <message>
        <source>Breaks: rest for five minutes after every 25 to 30 minutes. Warm up, and begin slowly. Sit with forearms level, feet flat and shoulders down.</source>
        <translation>Pausen: Ruhen Sie nach je 25 bis 30 Minuten fünf Minuten aus. Spielen Sie sich ein, und beginnen Sie langsam. Sitzen Sie mit waagerechten Unterarmen, flach stehenden Füßen und gesenkten Schultern.</translation>
    </message>
    <message>
        <source>Your teacher comes first: the fingering and shapes here are only suggestions. If you feel pain, numbness or weakness, stop, and see a doctor or physiotherapist. Sallow cannot judge your hand.</source>
        <translation>Der Unterricht geht vor: Fingersätze und Griffe sind hier nur Vorschläge. Bei Schmerz, Taubheit oder Schwäche hören Sie auf, und suchen Sie ärztlichen oder physiotherapeutischen Rat. Sallow kann Ihre Hand nicht beurteilen.</translation>
    </message>
    <message>
        <source>Sallow assumes that your strings are made for the tuning you choose. Tuning a string higher than its maker intended can break it or damage the soundboard, so ask the maker before you retune a harp.</source>
        <translation>Sallow nimmt an, dass Ihre Saiten für die gewählte Stimmung gemacht sind. Eine Saite höher zu stimmen als vorgesehen kann sie reißen lassen oder die Decke beschädigen; fragen Sie vor dem Umstimmen die Harfenbauerin oder den Harfenbauer.</translation>
    </message>
    <message>
        <source>Levers on wound strings are stiff. If a lever has to be forced, stop and ask the harp's maker.</source>
        <translation>Klappen auf umsponnenen Saiten gehen schwer. Muss eine Klappe mit Gewalt bewegt werden, hören Sie auf, und fragen Sie die Harfenbauerin oder den Harfenbauer.</translation>
    </message>
    <message>
        <source>About Sallow</source>
        <translation>Über Sallow</translation>
    </message>
    <message>
        <source>Sallow</source>
        <translation>Sallow</translation>
    </message>
    <message>
        <source>A workbench for arranging tunes for the lever harp: from a lead sheet it makes a left hand that you can play, hear and print.</source>
        <translation>Eine Werkbank zum Arrangieren für die Hakenharfe: Aus einem Leadsheet entsteht eine linke Hand, die Sie spielen, anhören und drucken können.</translation>
    </message>
    <message>
        <source>Version %1</source>
        <translation>Version %1</translation>
    </message>
    <message>
        <source>The sallow is the willow that old harps were carved from.</source>
        <translation>Die Salweide (englisch sallow) ist die Weide, aus der alte Harfen geschnitzt wurden.</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Each line is the tune after that step. Choose one to go back to it; the later ones stay until you change something else.</source>
        <translation>Jede Zeile ist das Stück nach diesem Schritt. Wählen Sie eine, um dorthin zurückzugehen; die späteren bleiben, bis Sie etwas anderes ändern.</translation>
    </message>
    <message>
        <source>As it was opened</source>
        <translation>Wie geöffnet</translation>
    </message>
    <message>
        <source>Keys for this tune</source>
        <translation>Tonarten für dieses Stück</translation>
    </message>
    <message>
        <source>Keys, best first</source>
        <translation>Tonarten, beste zuerst</translation>
    </message>
    <message>
        <source>Rank</source>
        <translation>Rang</translation>
    </message>
    <message>
        <source>Levers set before playing</source>
        <translation>Klappen vor dem Spiel</translation>
    </message>
    <message>
        <source>Lever flips</source>
        <translation>Klappenwechsel</translation>
    </message>
    <message>
        <source>Strings below the tune</source>
        <translation>Saiten darunter</translation>
    </message>
    <message>
        <source>Score a chord (lower is better)</source>
        <translation>Wertung je Akkord</translation>
    </message>
    <message>
        <source>Use this key</source>
        <translation>Diese Tonart verwenden</translation>
    </message>
    <message>
        <source>Choose a key to see why it has this rank.</source>
        <translation>Wählen Sie eine Tonart, um zu sehen, warum sie diesen Rang hat.</translation>
    </message>
    <message>
        <source>followed</source>
        <translation>gefolgt</translation>
    </message>
    <message>
        <source>1 chord</source>
        <translation>1 Akkord</translation>
    </message>
    <message>
        <source>%1 chords</source>
        <translation>%1 Akkorde</translation>
    </message>
    <message>
        <source> One shape cannot be played there.</source>
        <translation> Ein Griff ist dort nicht spielbar.</translation>
    </message>
    <message>
        <source> %1 shapes cannot be played there.</source>
        <translation> %1 Griffe sind dort nicht spielbar.</translation>
    </message>
    <message>
        <source> One shape is left over: no chord begins in its place.</source>
        <translation> Ein Griff bleibt übrig: An seiner Stelle beginnt kein Akkord.</translation>
    </message>
    <message>
        <source> %1 shapes are left over: no chord begins in their places.</source>
        <translation> %1 Griffe bleiben übrig: An ihren Stellen beginnt kein Akkord.</translation>
    </message>
    <message>
        <source>The left hand of %1 is copied. Select the chord where it is to begin, then paste.</source>
        <translation>Die linke Hand von %1 ist kopiert. Wählen Sie den Akkord, wo sie beginnen soll, und fügen Sie sie ein.</translation>
    </message>
    <message>
        <source>Nothing of the copy fits there.</source>
        <translation>Nichts von der Kopie passt dort.</translation>
    </message>
    <message>
        <source> Undo takes it back.</source>
        <translation> Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>%1 cannot be played at %2.</source>
        <translation>%1 ist bei %2 nicht spielbar.</translation>
    </message>
    <message>
        <source>There is no chord in these bars.</source>
        <translation>In diesen Takten gibt es keinen Akkord.</translation>
    </message>
    <message>
        <source>left hand pasted</source>
        <translation>linke Hand eingefügt</translation>
    </message>
    <message>
        <source>The left hand is pasted over %1.</source>
        <translation>Die linke Hand ist über %1 eingefügt.</translation>
    </message>
    <message>
        <source>The tune has been changed since. Copy the left hand again.</source>
        <translation>Das Stück wurde inzwischen geändert. Kopieren Sie die linke Hand noch einmal.</translation>
    </message>
    <message>
        <source>What was copied and what it is to be swapped with overlap. Select a chord further away.</source>
        <translation>Das Kopierte und das, womit getauscht werden soll, überschneiden sich. Wählen Sie einen weiter entfernten Akkord.</translation>
    </message>
    <message>
        <source>The shapes of %1 and %2 cannot be swapped: one of them cannot be played in the other's place.</source>
        <translation>Die Griffe von %1 und %2 lassen sich nicht tauschen: Einer davon ist an der Stelle des anderen nicht spielbar.</translation>
    </message>
    <message>
        <source>%1 and %2 swapped</source>
        <translation>%1 und %2 getauscht</translation>
    </message>
    <message>
        <source>The left hands from %1 and from %2 are swapped.</source>
        <translation>Die linken Hände von %1 und von %2 sind getauscht.</translation>
    </message>
    <message>
        <source>bar like this</source>
        <translation>gleiche Takt</translation>
    </message>
    <message>
        <source>close</source>
        <translation>Schluss</translation>
    </message>
    <message>
        <source>There is no other %1 as long as this one that can have %2.</source>
        <translation>Kein anderer %1 von dieser Länge kann %2 haben.</translation>
    </message>
    <message>
        <source>There is no other %1 that can have %2.</source>
        <translation>Kein anderer %1 kann %2 haben.</translation>
    </message>
    <message>
        <source>“%1” at every %2</source>
        <translation>„%1“: jeder %2</translation>
    </message>
    <message>
        <source>%1 is kept here and in one more place. Undo takes it back.</source>
        <translation>%1 ist hier und an einer weiteren Stelle behalten. Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>%1 is kept here and in %2 more places. Undo takes it back.</source>
        <translation>%1 ist hier und an %2 weiteren Stellen behalten. Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>No other bar has these chords.</source>
        <translation>Kein anderer Takt hat diese Akkorde.</translation>
    </message>
    <message>
        <source>%1 bars have the same tune and chords. They are chosen together.</source>
        <translation>%1 Takte haben dieselbe Melodie und dieselben Akkorde. Sie sind zusammen gewählt.</translation>
    </message>
    <message>
        <source>%1 bars have the same chords, under other notes. They are chosen together.</source>
        <translation>%1 Takte haben dieselben Akkorde unter anderen Noten. Sie sind zusammen gewählt.</translation>
    </message>
    <message>
        <source>Strings write</source>
        <translation>Saiten schreiben</translation>
    </message>
    <message>
        <source>Triplet</source>
        <translation>Triole</translation>
    </message>
    <message>
        <source>Grace</source>
        <translation>Vorschlag</translation>
    </message>
    <message>
        <source>Dot</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>half as long again (.)</source>
        <translation>um die Hälfte länger (.)</translation>
    </message>
    <message>
        <source>the next three notes in the time of two: ( and three letters</source>
        <translation>die nächsten drei Noten in der Zeit von zweien: ( und drei Buchstaben</translation>
    </message>
    <message>
        <source>the next letters are grace notes: { letters }</source>
        <translation>die nächsten Buchstaben sind Vorschlagsnoten: { Buchstaben }</translation>
    </message>
    <message>
        <source>Rest</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>a rest of this length (z)</source>
        <translation>eine Pause dieser Länge (z)</translation>
    </message>
    <message>
        <source>Tie</source>
        <translation>Bogen</translation>
    </message>
    <message>
        <source>to the next note of the same pitch (-)</source>
        <translation>zur nächsten Note gleicher Höhe (-)</translation>
    </message>
    <message>
        <source>Bar +</source>
        <translation>Takt +</translation>
    </message>
    <message>
        <source>a bar of rest after this one</source>
        <translation>ein Takt Pause nach diesem</translation>
    </message>
    <message>
        <source>Bar −</source>
        <translation>Takt −</translation>
    </message>
    <message>
        <source>take this bar out</source>
        <translation>diesen Takt entfernen</translation>
    </message>
    <message>
        <source>1st, 2nd time</source>
        <translation>Klammer 1, 2</translation>
    </message>
    <message>
        <source>this bar the first time, a copy of it the second time</source>
        <translation>dieser Takt beim ersten Mal, eine Kopie davon beim zweiten</translation>
    </message>
    <message>
        <source>A string that you click, or a key of a MIDI keyboard, is written here</source>
        <translation>Eine angeklickte Saite oder eine Taste eines MIDI-Keyboards wird hier geschrieben</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Close this pane (Esc)</source>
        <translation>Dieses Feld schließen (Esc)</translation>
    </message>
    <message>
        <source>A&amp;BC of this bar</source>
        <translation>A&amp;BC dieses Takts</translation>
    </message>
    <message>
        <source>Change the text and press Enter. Lengths count quavers.</source>
        <translation>Ändern Sie den Text, und drücken Sie die Eingabetaste. Längen zählen Achtel.</translation>
    </message>
    <message>
        <source>a–g write, z rests · 1 2 3 4 6 8 length, / half, . dot · ' and , octave · ^ _ = before a letter · arrow keys: move, and a string up or down (Ctrl octave, Shift semitone) · - tie · ( triplet · Del, Backspace · Enter next bar · Space hear</source>
        <translation>a–g schreiben, z Pausen · 1 2 3 4 6 8 Länge, / halb, . Punkt · ' und , Oktave · ^ _ = vor einem Buchstaben · Pfeiltasten: gehen, und eine Saite auf oder ab (Strg Oktave, Umschalt Halbton) · - Haltebogen · ( Triole · Entf, Rücktaste · Eingabe nächster Takt · Leertaste anhören</translation>
    </message>
    <message>
        <source>notes in {}</source>
        <translation>Noten in {}</translation>
    </message>
    <message>
        <source>this bar is %1</source>
        <translation>dieser Takt ist %1</translation>
    </message>
    <message>
        <source>next: %1</source>
        <translation>als Nächstes: %1</translation>
    </message>
    <message>
        <source>, sharp</source>
        <translation>, Kreuz</translation>
    </message>
    <message>
        <source>, flat</source>
        <translation>, b</translation>
    </message>
    <message>
        <source>, natural</source>
        <translation>, Auflösung</translation>
    </message>
    <message>
        <source>, as grace notes</source>
        <translation>, als Vorschlagsnoten</translation>
    </message>
    <message>
        <source>, with grace notes</source>
        <translation>, mit Vorschlagsnoten</translation>
    </message>
    <message>
        <source>, first of a triplet</source>
        <translation>, erste einer Triole</translation>
    </message>
    <message>
        <source>, tied to</source>
        <translation>, gebunden an</translation>
    </message>
    <message>
        <source>Notes of the bar</source>
        <translation>Noten des Takts</translation>
    </message>
    <message>
        <source>Dismiss the message</source>
        <translation>Die Meldung schließen</translation>
    </message>
    <message>
        <source>Dismiss (Esc)</source>
        <translation>Schließen (Esc)</translation>
    </message>
    <message>
        <source>Message: %1</source>
        <translation>Meldung: %1</translation>
    </message>
    <message>
        <source>All messages</source>
        <translation>Alle Meldungen</translation>
    </message>
    <message>
        <source>Everything told since the start (Ctrl+Shift+L)</source>
        <translation>Alles, was seit dem Start gemeldet wurde (Strg+Umschalt+L)</translation>
    </message>
    <message>
        <source>1 more message</source>
        <translation>1 weitere Meldung</translation>
    </message>
    <message>
        <source>%1 more messages</source>
        <translation>%1 weitere Meldungen</translation>
    </message>
    <message>
        <source>Messages</source>
        <translation>Meldungen</translation>
    </message>
    <message>
        <source>Nothing has been told yet.</source>
        <translation>Noch wurde nichts gemeldet.</translation>
    </message>
    <message>
        <source>New tune</source>
        <translation>Neues Stück</translation>
    </message>
    <message>
        <source>what the tune is called</source>
        <translation>wie das Stück heißt</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Art</translation>
    </message>
    <message>
        <source>K&amp;ey</source>
        <translation>&amp;Tonart</translation>
    </message>
    <message>
        <source>Time &amp;signature</source>
        <translation>Takta&amp;rt</translation>
    </message>
    <message>
        <source>&amp;Bars</source>
        <translation>Ta&amp;kte</translation>
    </message>
    <message>
        <source>&amp;Pick-up</source>
        <translation>A&amp;uftakt</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Beginnen</translation>
    </message>
    <message>
        <source>A time signature is two numbers, such as 6/8.</source>
        <translation>Eine Taktart besteht aus zwei Zahlen, etwa 6/8.</translation>
    </message>
    <message>
        <source>A pick-up is shorter than a bar. Choose a shorter one.</source>
        <translation>Ein Auftakt ist kürzer als ein Takt. Wählen Sie einen kürzeren.</translation>
    </message>
    <message>
        <source>&amp;Tune</source>
        <translation>&amp;Stück</translation>
    </message>
    <message>
        <source>Change &amp;notes</source>
        <translation>Noten &amp;ändern</translation>
    </message>
    <message>
        <source>&amp;Key, time and kind…</source>
        <translation>Tonart, &amp;Taktart und Art…</translation>
    </message>
    <message>
        <source>A bar &amp;before this one</source>
        <translation>Ein Takt &amp;vor diesem</translation>
    </message>
    <message>
        <source>A bar &amp;after this one</source>
        <translation>Ein Takt &amp;nach diesem</translation>
    </message>
    <message>
        <source>Take this bar &amp;out</source>
        <translation>Diesen Takt ent&amp;fernen</translation>
    </message>
    <message>
        <source>&amp;Repeat this part or passage</source>
        <translation>Diesen Teil oder Abschnitt &amp;wiederholen</translation>
    </message>
    <message>
        <source>No repea&amp;t here</source>
        <translation>&amp;Keine Wiederholung hier</translation>
    </message>
    <message>
        <source>&amp;1st-time and 2nd-time bar here</source>
        <translation>&amp;1. und 2. Klammer hier</translation>
    </message>
    <message>
        <source>&amp;Part begins here…</source>
        <translation>Teil &amp;beginnt hier…</translation>
    </message>
    <message>
        <source>An octave &amp;higher</source>
        <translation>Eine Oktave &amp;höher</translation>
    </message>
    <message>
        <source>An octave &amp;lower</source>
        <translation>Eine &amp;Oktave tiefer</translation>
    </message>
    <message>
        <source>a bar more at %1</source>
        <translation>ein Takt mehr bei %1</translation>
    </message>
    <message>
        <source>A tune needs at least one bar.</source>
        <translation>Ein Stück braucht mindestens einen Takt.</translation>
    </message>
    <message>
        <source>%1 taken out</source>
        <translation>%1 entfernt</translation>
    </message>
    <message>
        <source>repeat from %1 to %2</source>
        <translation>Wiederholung von %1 bis %2</translation>
    </message>
    <message>
        <source>no repeat from %1 to %2</source>
        <translation>keine Wiederholung von %1 bis %2</translation>
    </message>
    <message>
        <source>There are time bars here already, or no bar is left before them. Choose the last bar of a part.</source>
        <translation>Hier gibt es schon Klammern, oder davor bleibt kein Takt. Wählen Sie den letzten Takt eines Teils.</translation>
    </message>
    <message>
        <source>1st-time and 2nd-time bar at %1</source>
        <translation>1. und 2. Klammer bei %1</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>The part that begins with %1 (none: empty)</source>
        <translation>Der Teil, der mit %1 beginnt (keiner: leer)</translation>
    </message>
    <message>
        <source>A part is named by a letter, such as A, or B2.</source>
        <translation>Ein Teil heißt nach einem Buchstaben, etwa A oder B2.</translation>
    </message>
    <message>
        <source>no part at %1</source>
        <translation>kein Teil bei %1</translation>
    </message>
    <message>
        <source>part %1 at %2</source>
        <translation>Teil %1 bei %2</translation>
    </message>
    <message>
        <source>an octave higher</source>
        <translation>eine Oktave höher</translation>
    </message>
    <message>
        <source>an octave lower</source>
        <translation>eine Oktave tiefer</translation>
    </message>
    <message>
        <source>key, time and kind</source>
        <translation>Tonart, Taktart und Art</translation>
    </message>
    <message>
        <source>Open another…</source>
        <translation>Andere öffnen…</translation>
    </message>
    <message>
        <source>Back to the open tune</source>
        <translation>Zurück zum offenen Stück</translation>
    </message>
    <message>
        <source>Show the tune that is open (Esc)</source>
        <translation>Das offene Stück zeigen (Esc)</translation>
    </message>
    <message>
        <source>Another file (Ctrl+O)</source>
        <translation>Eine andere Datei (Strg+O)</translation>
    </message>
    <message>
        <source>“%1” could not be opened</source>
        <translation>„%1“ konnte nicht geöffnet werden</translation>
    </message>
    <message>
        <source>The message above says why.</source>
        <translation>Die Meldung oben sagt, warum.</translation>
    </message>
    <message>
        <source>The message above says why. “%1” is still open, as you left it.</source>
        <translation>Die Meldung oben sagt, warum. „%1“ ist noch offen, wie Sie es verlassen haben.</translation>
    </message>
    <message>
        <source>Back to “%1”</source>
        <translation>Zurück zu „%1“</translation>
    </message>
    <message>
        <source>Read as %1, fingers %2, for level %3 and above.</source>
        <translation>Gelesen als %1, Finger %2, ab Niveau %3.</translation>
    </message>
    <message>
        <source>Use here</source>
        <translation>Hier verwenden</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Your own pattern: 1 5 8 10 8</source>
        <translation>Ihr eigenes Muster: 1 5 8 10 8</translation>
    </message>
    <message>
        <source>Your own pattern</source>
        <translation>Ihr eigenes Muster</translation>
    </message>
    <message>
        <source>Write degrees counted up from the root: 1 5 8 10 8. Join notes with + to pluck them together or with ~ to roll them; low5 is the fifth below the root. You may add fingers in brackets: 1-5-8 (4-3-1).</source>
        <translation>Schreiben Sie Tonstufen, vom Grundton aufwärts gezählt: 1 5 8 10 8. Mit + verbundene Töne werden zusammen gezupft, mit ~ verbundene arpeggiert; low5 ist die Quinte unter dem Grundton. Finger können in Klammern folgen: 1-5-8 (4-3-1).</translation>
    </message>
    <message>
        <source>Use this pattern at the chosen chord and keep it there (Enter)</source>
        <translation>Dieses Muster beim gewählten Akkord verwenden und behalten (Eingabetaste)</translation>
    </message>
    <message>
        <source>Save this pattern in your pattern book, for every tune</source>
        <translation>Dieses Muster für alle Stücke in Ihrer Mustersammlung speichern</translation>
    </message>
    <message>
        <source>Previous page</source>
        <translation>Vorige Seite</translation>
    </message>
    <message>
        <source>Page Up</source>
        <translation>Bild auf</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Nächste Seite</translation>
    </message>
    <message>
        <source>Page Down</source>
        <translation>Bild ab</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Kleiner</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Größer</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>As wide as the view</source>
        <translation>So breit wie die Ansicht</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>The whole page</source>
        <translation>Die ganze Seite</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>The printed sheet. Left and Right go from chord to chord.</source>
        <translation>Das gedruckte Blatt. Links und Rechts gehen von Akkord zu Akkord.</translation>
    </message>
    <message>
        <source>Pattern sheet</source>
        <translation>Musterblatt</translation>
    </message>
    <message>
        <source>Lead sheet</source>
        <translation>Leadsheet</translation>
    </message>
    <message>
        <source>Placing drill</source>
        <translation>Setzübung</translation>
    </message>
    <message>
        <source>Arrangement sheet</source>
        <translation>Arrangement-Blatt</translation>
    </message>
    <message>
        <source>today at %1</source>
        <translation>heute um %1</translation>
    </message>
    <message>
        <source>yesterday at %1</source>
        <translation>gestern um %1</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 um %2</translation>
    </message>
    <message>
        <source>another string</source>
        <translation>eine andere Saite</translation>
    </message>
    <message>
        <source>%1 a little early</source>
        <translation>%1 etwas zu früh</translation>
    </message>
    <message>
        <source>%1 early</source>
        <translation>%1 zu früh</translation>
    </message>
    <message>
        <source>%1 a little late</source>
        <translation>%1 etwas zu spät</translation>
    </message>
    <message>
        <source>%1 late</source>
        <translation>%1 zu spät</translation>
    </message>
    <message>
        <source>%1 for %2</source>
        <translation>%1 statt %2</translation>
    </message>
    <message>
        <source>%1 left out</source>
        <translation>%1 ausgelassen</translation>
    </message>
    <message>
        <source>%1 as well</source>
        <translation>%1 zusätzlich</translation>
    </message>
    <message>
        <source>There was nothing to play here.</source>
        <translation>Hier gab es nichts zu spielen.</translation>
    </message>
    <message>
        <source>Every note was in its place.</source>
        <translation>Jede Note war an ihrem Platz.</translation>
    </message>
    <message>
        <source>%1 of %2 notes were in their place: nearly there.</source>
        <translation>%1 von %2 Noten waren an ihrem Platz: fast geschafft.</translation>
    </message>
    <message>
        <source>%1 of %2 notes were in their place. A slower tempo or fewer bars may help.</source>
        <translation>%1 von %2 Noten waren an ihrem Platz. Ein langsameres Tempo oder weniger Takte können helfen.</translation>
    </message>
    <message>
        <source>What you played</source>
        <translation>Was Sie gespielt haben</translation>
    </message>
    <message>
        <source>Bars to look at</source>
        <translation>Takte zum Ansehen</translation>
    </message>
    <message>
        <source>Nothing of this is kept.</source>
        <translation>Nichts davon wird aufbewahrt.</translation>
    </message>
    <message>
        <source>The bar &amp;before as well</source>
        <translation>Auch den Takt da&amp;vor</translation>
    </message>
    <message>
        <source>A &amp;click on every beat</source>
        <translation>&amp;Klick auf jeder Zählzeit</translation>
    </message>
    <message>
        <source>&amp;Faster by itself, time after time</source>
        <translation>Von selbst &amp;schneller, Mal für Mal</translation>
    </message>
    <message>
        <source>&amp;Wait for me before each time round</source>
        <translation>Vor jedem Durchgang auf mich &amp;warten</translation>
    </message>
    <message>
        <source>The &amp;tune alone in the right hand</source>
        <translation>Rechts nur die &amp;Melodie</translation>
    </message>
    <message>
        <source>&amp;Play it with me: listen to my MIDI harp or keyboard</source>
        <translation>Mit mir &amp;zusammen spielen: meiner MIDI-Harfe oder meinem Keyboard zuhören</translation>
    </message>
    <message>
        <source>&amp;Go on only at the right strings</source>
        <translation>Nur bei den &amp;richtigen Saiten weitergehen</translation>
    </message>
    <message>
        <source>Practice</source>
        <translation>Üben</translation>
    </message>
    <message>
        <source>Before a passage, the first time round (Ctrl+Shift+K)</source>
        <translation>Vor einem Abschnitt, beim ersten Mal (Strg+Umschalt+K)</translation>
    </message>
    <message>
        <source>The first beat of the bar is louder (M)</source>
        <translation>Die erste Zählzeit des Takts ist lauter (M)</translation>
    </message>
    <message>
        <source>A passage that is played again and again steps up by itself</source>
        <translation>Ein wiederholt gespielter Abschnitt wird von selbst schneller</translation>
    </message>
    <message>
        <source>From, per cent</source>
        <translation>Von, Prozent</translation>
    </message>
    <message>
        <source>To, per cent</source>
        <translation>Bis, Prozent</translation>
    </message>
    <message>
        <source>By, per cent</source>
        <translation>Um, Prozent</translation>
    </message>
    <message>
        <source> times</source>
        <translation>-mal</translation>
    </message>
    <message>
        <source>Every, times round</source>
        <translation>Alle, Durchgänge</translation>
    </message>
    <message>
        <source>It stops after each time; Space plays the next, one step faster</source>
        <translation>Hält nach jedem Mal an; die Leertaste spielt das nächste, eine Stufe schneller</translation>
    </message>
    <message>
        <source>Without the notes that were added below it</source>
        <translation>Ohne die Töne, die darunter hinzugefügt wurden</translation>
    </message>
    <message>
        <source>What came early or late, what was another string and what was left out is told afterwards, bar by bar (Y)</source>
        <translation>Was zu früh oder zu spät kam, was eine andere Saite war und was fehlte, wird hinterher Takt für Takt gesagt (Y)</translation>
    </message>
    <message>
        <source>The hand that is not heard is yours; if both are heard, both are yours</source>
        <translation>Die Hand, die nicht zu hören ist, spielen Sie; sind beide zu hören, spielen Sie beide</translation>
    </message>
    <message>
        <source>Balance of the hands</source>
        <translation>Balance der Hände</translation>
    </message>
    <message>
        <source>Above 0 the left hand is softer, below 0 the right</source>
        <translation>Über 0 ist die linke Hand leiser, unter 0 die rechte</translation>
    </message>
    <message>
        <source>Swing</source>
        <translation>Swing</translation>
    </message>
    <message>
        <source>Time between two strings of a rolled chord</source>
        <translation>Zeit zwischen zwei Saiten eines arpeggierten Akkords</translation>
    </message>
    <message>
        <source>%1 ms</source>
        <translation>%1 ms</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>by</source>
        <translation>um</translation>
    </message>
    <message>
        <source>every</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>&amp;Roll</source>
        <translation>A&amp;rpeggio</translation>
    </message>
    <message>
        <source>Bala&amp;nce</source>
        <translation>Bala&amp;nce</translation>
    </message>
    <message>
        <source>Slowing at the end</source>
        <translation>Langsamer am Ende</translation>
    </message>
    <message>
        <source>Sl&amp;owing at the end</source>
        <translation>Langsamer am En&amp;de</translation>
    </message>
    <message>
        <source>0 % in time to the last note; 100 %: as far as tunes of its kind go, an air to half its tempo. The sheet says rit. Not while it goes round and round</source>
        <translation>0 % im Tempo bis zum letzten Ton; 100 %: so weit, wie Stücke seiner Art gehen, ein Air bis zum halben Tempo. Auf dem Blatt steht rit. Nicht, solange es wiederholt wird</translation>
    </message>
    <message>
        <source>&amp;Swing</source>
        <translation>&amp;Swing</translation>
    </message>
    <message>
        <source>One of the chosen chords cannot have it and stays as it was.</source>
        <translation>Einer der gewählten Akkorde kann ihn nicht haben und bleibt, wie er war.</translation>
    </message>
    <message>
        <source>%1 of the chosen chords cannot have it and stay as they were.</source>
        <translation>%1 der gewählten Akkorde können ihn nicht haben und bleiben, wie sie waren.</translation>
    </message>
    <message>
        <source>bar %1</source>
        <translation>Takt %1</translation>
    </message>
    <message>
        <source>left hand rests in %1 places</source>
        <translation>linke Hand pausiert an %1 Stellen</translation>
    </message>
    <message>
        <source>“%1” in %2 places</source>
        <translation>„%1“ an %2 Stellen</translation>
    </message>
    <message>
        <source>left hand rests in %1</source>
        <translation>linke Hand pausiert in %1</translation>
    </message>
    <message>
        <source>“%1” in %2</source>
        <translation>„%1“ in %2</translation>
    </message>
    <message>
        <source>a way round snags that are alike</source>
        <translation>ein Ausweg aus gleichen Hürden</translation>
    </message>
    <message>
        <source>a way round a snag</source>
        <translation>ein Ausweg aus einer Hürde</translation>
    </message>
    <message>
        <source>That cannot be had here: %1.</source>
        <translation>Das geht hier nicht: %1.</translation>
    </message>
    <message>
        <source>let a snag change</source>
        <translation>eine Hürde freigegeben</translation>
    </message>
    <message>
        <source>change of key</source>
        <translation>Wechsel der Tonart</translation>
    </message>
    <message>
        <source>change of level</source>
        <translation>Wechsel des Niveaus</translation>
    </message>
    <message>
        <source>change of tempo</source>
        <translation>Wechsel des Tempos</translation>
    </message>
    <message>
        <source>%1 shapes kept</source>
        <translation>%1 Griffe behalten</translation>
    </message>
    <message>
        <source>let %1 change</source>
        <translation>%1 freigegeben</translation>
    </message>
    <message>
        <source>let %1 shapes change</source>
        <translation>%1 Griffe freigegeben</translation>
    </message>
    <message>
        <source>let all shapes change</source>
        <translation>alle Griffe freigegeben</translation>
    </message>
    <message>
        <source>The left hand cannot rest in %1, because a rest is not among the shapes there.</source>
        <translation>Die linke Hand kann in %1 nicht pausieren, weil eine Pause dort nicht unter den Griffen ist.</translation>
    </message>
    <message>
        <source>change of harp</source>
        <translation>Wechsel der Harfe</translation>
    </message>
    <message>
        <source>change of hand</source>
        <translation>Wechsel der Hand</translation>
    </message>
    <message>
        <source>level %1</source>
        <translation>Niveau %1</translation>
    </message>
    <message>
        <source>change of manner</source>
        <translation>Wechsel des Stils</translation>
    </message>
    <message>
        <source>use of your taste</source>
        <translation>Ihr Geschmack verwendet</translation>
    </message>
    <message>
        <source>change of the right hand</source>
        <translation>Wechsel der rechten Hand</translation>
    </message>
    <message>
        <source>finger %1</source>
        <translation>Finger %1</translation>
    </message>
    <message>
        <source>The hand cannot be placed like that. The finger you chose will be used when it can be.</source>
        <translation>So kann die Hand nicht gesetzt werden. Der gewählte Finger wird verwendet, sobald es geht.</translation>
    </message>
    <message>
        <source>finger as suggested</source>
        <translation>Finger wie vorgeschlagen</translation>
    </message>
    <message>
        <source>shapes on the repeats</source>
        <translation>Griffe bei den Wiederholungen</translation>
    </message>
    <message>
        <source>lever of %1 up</source>
        <translation>Klappe von %1 oben</translation>
    </message>
    <message>
        <source>lever of %1 down</source>
        <translation>Klappe von %1 unten</translation>
    </message>
    <message>
        <source>title and notes</source>
        <translation>Titel und Anmerkungen</translation>
    </message>
    <message>
        <source>your own pattern %1</source>
        <translation>Ihr eigenes Muster %1</translation>
    </message>
    <message>
        <source>slider %1</source>
        <translation>Regler %1</translation>
    </message>
    <message>
        <source>sliders to the middle</source>
        <translation>Regler zur Mitte</translation>
    </message>
    <message>
        <source>There are no more settings that are clearly different, so this is the best one again.</source>
        <translation>Es gibt keine weiteren deutlich anderen Fassungen; dies ist wieder die beste.</translation>
    </message>
    <message>
        <source>another setting</source>
        <translation>andere Fassung</translation>
    </message>
    <message>
        <source>the best setting</source>
        <translation>die beste Fassung</translation>
    </message>
    <message>
        <source>One shape that you kept cannot be played now. It will come back when it can be played.</source>
        <translation>Ein behaltener Griff ist jetzt nicht spielbar. Er kommt zurück, wenn er spielbar ist.</translation>
    </message>
    <message>
        <source>%1 shapes that you kept cannot be played now. They will come back when they can be played.</source>
        <translation>%1 behaltene Griffe sind jetzt nicht spielbar. Sie kommen zurück, wenn sie spielbar sind.</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>Which sheet is shown, exported and printed</source>
        <translation>Welches Blatt gezeigt, exportiert und gedruckt wird</translation>
    </message>
    <message>
        <source>Size of the paper</source>
        <translation>Papiergröße</translation>
    </message>
    <message>
        <source>Title and notes…</source>
        <translation>Titel…</translation>
    </message>
    <message>
        <source>Title, composer, source and notes</source>
        <translation>Titel, Komponist, Quelle und Anmerkungen</translation>
    </message>
    <message>
        <source>Export…</source>
        <translation>Exportieren…</translation>
    </message>
    <message>
        <source>Export this sheet</source>
        <translation>Dieses Blatt exportieren</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Print this sheet</source>
        <translation>Dieses Blatt drucken</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>All to the middle</source>
        <translation>Alle zur Mitte</translation>
    </message>
    <message>
        <source>%1: from “%2” to “%3”</source>
        <translation>%1: von „%2“ bis „%3“</translation>
    </message>
    <message>
        <source>Ways round a snag</source>
        <translation>Auswege aus einer Hürde</translation>
    </message>
    <message>
        <source>%1 · now</source>
        <translation>%1 · jetzt</translation>
    </message>
    <message>
        <source>Hear</source>
        <translation>Anhören</translation>
    </message>
    <message>
        <source>Hear: %1</source>
        <translation>Anhören: %1</translation>
    </message>
    <message>
        <source>Hear the bar so; nothing is changed (Space)</source>
        <translation>Den Takt so anhören; nichts ändert sich (Leertaste)</translation>
    </message>
    <message>
        <source>For this one</source>
        <translation>Für diese</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Wählen</translation>
    </message>
    <message>
        <source>Only here (Shift+Enter)</source>
        <translation>Nur hier (Umschalt+Eingabe)</translation>
    </message>
    <message>
        <source>Take this way (Enter)</source>
        <translation>Diesen Ausweg nehmen (Eingabetaste)</translation>
    </message>
    <message>
        <source>For all %1 alike</source>
        <translation>Für alle %1 gleichen</translation>
    </message>
    <message>
        <source>Wherever the tune has the same notes (Enter)</source>
        <translation>Überall, wo die Melodie dieselben Noten hat (Eingabetaste)</translation>
    </message>
    <message>
        <source>Let change</source>
        <translation>Freigeben</translation>
    </message>
    <message>
        <source>Sallow may choose again</source>
        <translation>Sallow darf wieder wählen</translation>
    </message>
    <message>
        <source>In the whole tune</source>
        <translation>Im ganzen Stück</translation>
    </message>
    <message>
        <source>Trying other keys, tempos and levels…</source>
        <translation>Andere Tonarten, Tempi und Niveaus werden versucht…</translation>
    </message>
    <message>
        <source>No other key, tempo or level leaves fewer snags.</source>
        <translation>Keine andere Tonart, kein anderes Tempo oder Niveau lässt weniger Hürden.</translation>
    </message>
    <message>
        <source>Choose: %1</source>
        <translation>Wählen: %1</translation>
    </message>
    <message>
        <source>Arrange the whole tune so; undo takes it back</source>
        <translation>Das ganze Stück so arrangieren; Rückgängig nimmt es zurück</translation>
    </message>
    <message>
        <source>Faster &amp;by itself</source>
        <translation>Von &amp;selbst schneller</translation>
    </message>
    <message>
        <source>Faster &amp;by itself: %1</source>
        <translation>Von &amp;selbst schneller: %1</translation>
    </message>
    <message>
        <source>Sound files</source>
        <translation>Klangdateien</translation>
    </message>
    <message>
        <source>One file</source>
        <translation>Eine Datei</translation>
    </message>
    <message>
        <source>A practice pack of four files</source>
        <translation>Ein Übungspaket aus vier Dateien</translation>
    </message>
    <message>
        <source>A pack holds both hands, the left and the right alone, all slow, and both hands at the tempo</source>
        <translation>Ein Paket enthält beide Hände, die linke und die rechte allein, alle langsam, und beide Hände im Tempo</translation>
    </message>
    <message>
        <source>First bar</source>
        <translation>Erster Takt</translation>
    </message>
    <message>
        <source>Last bar</source>
        <translation>Letzter Takt</translation>
    </message>
    <message>
        <source>Both hands</source>
        <translation>Beide Hände</translation>
    </message>
    <message>
        <source>Right hand</source>
        <translation>Rechte Hand</translation>
    </message>
    <message>
        <source>As it is set under Practice</source>
        <translation>Wie unter Üben eingestellt</translation>
    </message>
    <message>
        <source>WAV</source>
        <translation>WAV</translation>
    </message>
    <message>
        <source>FLAC, smaller</source>
        <translation>FLAC, kleiner</translation>
    </message>
    <message>
        <source>OGG, smallest</source>
        <translation>OGG, am kleinsten</translation>
    </message>
    <message>
        <source>&amp;Make</source>
        <translation>&amp;Erstellen</translation>
    </message>
    <message>
        <source>&amp;Tempo</source>
        <translation>&amp;Tempo</translation>
    </message>
    <message>
        <source>&amp;Hands</source>
        <translation>&amp;Hände</translation>
    </message>
    <message>
        <source>Tim&amp;es</source>
        <translation>&amp;Wie oft</translation>
    </message>
    <message>
        <source>&amp;File type</source>
        <translation>&amp;Dateityp</translation>
    </message>
    <message>
        <source>&amp;Save…</source>
        <translation>&amp;Speichern…</translation>
    </message>
    <message>
        <source>Playing it into the file …</source>
        <translation>Wird in die Datei gespielt …</translation>
    </message>
    <message>
        <source>1 thing to check</source>
        <translation>1 Hinweis</translation>
    </message>
    <message>
        <source>%1 things to check</source>
        <translation>%1 Hinweise</translation>
    </message>
    <message>
        <source>String bank</source>
        <translation>Saitenbild</translation>
    </message>
    <message>
        <source>The strings of the harp, low to high. Left and Right choose a string, Space sounds it, Up and Down flip its lever.</source>
        <translation>Die Saiten der Harfe, tief nach hoch. Links und Rechts wählen eine Saite, die Leertaste lässt sie klingen, Auf und Ab legen ihre Klappe um.</translation>
    </message>
    <message>
        <source>Lever of %1: click to flip it</source>
        <translation>Klappe von %1: klicken zum Umlegen</translation>
    </message>
    <message>
        <source>player's side, low to high</source>
        <translation>von der Spielseite, tief nach hoch</translation>
    </message>
    <message>
        <source>, lever up</source>
        <translation>, Klappe oben</translation>
    </message>
    <message>
        <source>, left hand, finger %1</source>
        <translation>, linke Hand, Finger %1</translation>
    </message>
    <message>
        <source>, right hand, finger %1</source>
        <translation>, rechte Hand, Finger %1</translation>
    </message>
    <message>
        <source>, next: left hand, finger %1</source>
        <translation>, als Nächstes: linke Hand, Finger %1</translation>
    </message>
    <message>
        <source>&amp;Learn from the shapes I choose</source>
        <translation>Aus den Griffen &amp;lernen, die ich wähle</translation>
    </message>
    <message>
        <source>Your taste</source>
        <translation>Ihr Geschmack</translation>
    </message>
    <message>
        <source>Sallow remembers which shape you take where it suggested another, for each manner and level, and arranges new tunes by it. A tune that is open stays as it is. All of it stays on this machine.</source>
        <translation>Sallow merkt sich für jeden Stil und jedes Niveau, welchen Griff Sie nehmen, wo ein anderer vorgeschlagen war, und arrangiert neue Stücke danach. Ein offenes Stück bleibt, wie es ist. Alles bleibt auf diesem Rechner.</translation>
    </message>
    <message>
        <source>&amp;Use on this tune</source>
        <translation>Auf dieses Stück an&amp;wenden</translation>
    </message>
    <message>
        <source>&amp;Save to a file…</source>
        <translation>In eine Datei &amp;speichern…</translation>
    </message>
    <message>
        <source>&amp;Forget all…</source>
        <translation>Alles &amp;vergessen…</translation>
    </message>
    <message>
        <source>Arrange the open tune by your taste; undo takes it back</source>
        <translation>Das offene Stück nach Ihrem Geschmack arrangieren; Rückgängig nimmt es zurück</translation>
    </message>
    <message>
        <source>A copy of what is remembered, to keep or to look at</source>
        <translation>Eine Kopie des Gemerkten, zum Aufheben oder Ansehen</translation>
    </message>
    <message>
        <source>Forget your taste?</source>
        <translation>Ihren Geschmack vergessen?</translation>
    </message>
    <message>
        <source>All choices that Sallow has remembered are forgotten, of every manner and level. This cannot be undone. Tunes stay as they are.</source>
        <translation>Alle Wahlen, die Sallow sich gemerkt hat, werden vergessen, für jeden Stil und jedes Niveau. Das lässt sich nicht rückgängig machen. Die Stücke bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>Forget all</source>
        <translation>Alles vergessen</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Type it, or use the arrow keys or the wheel. Enter goes back to the music (Ctrl+G)</source>
        <translation>Eintippen, oder Pfeiltasten oder Mausrad. Die Eingabetaste führt zu den Noten zurück (Strg+G)</translation>
    </message>
    <message>
        <source>Tempo in beats a minute</source>
        <translation>Tempo in Schlägen pro Minute</translation>
    </message>
    <message>
        <source>Tempo in per cent of the arrangement's own</source>
        <translation>Tempo in Prozent des eigenen Tempos des Arrangements</translation>
    </message>
    <message>
        <source>Tempo %1, %2 %</source>
        <translation>Tempo %1, %2 %</translation>
    </message>
    <message>
        <source>Whole tune</source>
        <translation>Ganzes Stück</translation>
    </message>
    <message>
        <source>Hear bar</source>
        <translation>Takt anhören</translation>
    </message>
    <message>
        <source>From here</source>
        <translation>Ab hier</translation>
    </message>
    <message>
        <source>Again</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Tempo</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <source>Count-in</source>
        <translation>Einzähler</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>Hear the tune from the beginning, or stop (Ctrl+Space)</source>
        <translation>Das Stück von Anfang an anhören oder anhalten (Strg+Leertaste)</translation>
    </message>
    <message>
        <source>Hear the bar of the chosen chord (Space in the grid)</source>
        <translation>Den Takt des gewählten Akkords anhören (Leertaste im Raster)</translation>
    </message>
    <message>
        <source>Hear on from the chosen bar (Shift+Space)</source>
        <translation>Ab dem gewählten Takt anhören (Umschalt+Leertaste)</translation>
    </message>
    <message>
        <source>When it ends, start again (Ctrl+R)</source>
        <translation>Am Ende wieder von vorn (Strg+R)</translation>
    </message>
    <message>
        <source>Slower or faster</source>
        <translation>Langsamer oder schneller</translation>
    </message>
    <message>
        <source>25 to 150 % of the arrangement's tempo (Ctrl+Up, Ctrl+Down)</source>
        <translation>25 bis 150 % vom Tempo des Arrangements (Strg+Auf, Strg+Ab)</translation>
    </message>
    <message>
        <source>A bar of clicks before (Ctrl+K)</source>
        <translation>Vorher ein Takt Klicks (Strg+K)</translation>
    </message>
    <message>
        <source>Hear the left hand</source>
        <translation>Die linke Hand anhören</translation>
    </message>
    <message>
        <source>Hear the left hand (Ctrl+Left)</source>
        <translation>Die linke Hand anhören (Strg+Links)</translation>
    </message>
    <message>
        <source>Hear the right hand</source>
        <translation>Die rechte Hand anhören</translation>
    </message>
    <message>
        <source>Hear the right hand (Ctrl+Right)</source>
        <translation>Die rechte Hand anhören (Strg+Rechts)</translation>
    </message>
    <message>
        <source>Hear the other of two settings, at the same beat (X)</source>
        <translation>Die andere von zwei Fassungen anhören, auf derselben Zählzeit (X)</translation>
    </message>
    <message>
        <source>A bar before, a click, faster by itself, swing, rolls (Ctrl+J)</source>
        <translation>Ein Takt davor, Klick, von selbst schneller, Swing, Arpeggio (Strg+J)</translation>
    </message>
    <message>
        <source>Hear %1</source>
        <translation>%1 anhören</translation>
    </message>
    <message>
        <source>Hear the passage (Space in the grid, Esc lets it go)</source>
        <translation>Den Abschnitt anhören (Leertaste im Raster, Esc hebt ihn auf)</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Hearing A</source>
        <translation>A ist zu hören</translation>
    </message>
    <message>
        <source>Hearing B</source>
        <translation>B ist zu hören</translation>
    </message>
    <message>
        <source>A is heard; hear B</source>
        <translation>A ist zu hören; B anhören</translation>
    </message>
    <message>
        <source>B is heard; hear A</source>
        <translation>B ist zu hören; A anhören</translation>
    </message>
    <message>
        <source>The notes go to the new key</source>
        <translation>Die Noten gehen in die neue Tonart</translation>
    </message>
    <message>
        <source>The bar lines move to fit</source>
        <translation>Die Taktstriche rücken zurecht</translation>
    </message>
    <message>
        <source>Key, time and kind</source>
        <translation>Tonart, Taktart und Art</translation>
    </message>
    <message>
        <source>Otherwise the letters stay and only the signature changes.</source>
        <translation>Sonst bleiben die Buchstaben, und nur die Vorzeichnung ändert sich.</translation>
    </message>
    <message>
        <source>The notes follow one another as before. Otherwise each bar keeps its notes, and those that do not fit are marked.</source>
        <translation>Die Noten folgen einander wie bisher. Sonst behält jeder Takt seine Noten, und was nicht passt, wird markiert.</translation>
    </message>
    <message>
        <source>as usual for its kind</source>
        <translation>wie für seine Art üblich</translation>
    </message>
    <message>
        <source> beats a minute</source>
        <translation> Schläge pro Minute</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Bars with notes stay as they are; those that do not fit are marked.</source>
        <translation>Takte mit Noten bleiben, wie sie sind; was nicht passt, wird markiert.</translation>
    </message>
    <message>
        <source>A triplet would lie across a bar line, so the bars stay as they are; those that do not fit are marked.</source>
        <translation>Eine Triole läge über einem Taktstrich, daher bleiben die Takte, wie sie sind; was nicht passt, wird markiert.</translation>
    </message>
    <message>
        <source>Notes across a new bar line are tied. Repeats and parts stay where they are.</source>
        <translation>Noten über einem neuen Taktstrich werden gebunden. Wiederholungen und Teile bleiben, wo sie sind.</translation>
    </message>
    <message>
        <source>The notes move with the home note. For another mode only the signature changes, and notes without an accidental follow it.</source>
        <translation>Die Noten wandern mit dem Grundton. Für einen anderen Modus ändert sich nur die Vorzeichnung, und Noten ohne Vorzeichen folgen ihr.</translation>
    </message>
    <message>
        <source>Home note</source>
        <translation>Grundton</translation>
    </message>
    <message>
        <source>Mode</source>
        <translation>Modus</translation>
    </message>
    <message>
        <source>1 quaver</source>
        <translation>1 Achtel</translation>
    </message>
    <message>
        <source>1 crotchet</source>
        <translation>1 Viertel</translation>
    </message>
    <message>
        <source>%1 crotchets</source>
        <translation>%1 Viertel</translation>
    </message>
    <message>
        <source>%1 quavers</source>
        <translation>%1 Achtel</translation>
    </message>
    <message>
        <source>Tune grid</source>
        <translation>Melodieraster</translation>
    </message>
    <message>
        <source>The tune on its strings, a lane for each phrase. Arrow keys choose a chord, Enter goes to its shapes, Space lets you hear the bar.</source>
        <translation>Die Melodie auf ihren Saiten, eine Zeile je Phrase. Pfeiltasten wählen einen Akkord, die Eingabetaste geht zu seinen Griffen, die Leertaste lässt den Takt hören.</translation>
    </message>
    <message>
        <source>3 times</source>
        <translation>3-mal</translation>
    </message>
    <message>
        <source>twice</source>
        <translation>2-mal</translation>
    </message>
    <message>
        <source>%1 times</source>
        <translation>%1-mal</translation>
    </message>
    <message>
        <source>%1 too long</source>
        <translation>%1 zu lang</translation>
    </message>
    <message>
        <source>%1 too short</source>
        <translation>%1 zu kurz</translation>
    </message>
    <message>
        <source>1st time</source>
        <translation>1. Mal</translation>
    </message>
    <message>
        <source>2nd time</source>
        <translation>2. Mal</translation>
    </message>
    <message>
        <source>3rd time</source>
        <translation>3. Mal</translation>
    </message>
    <message>
        <source>time %1</source>
        <translation>%1. Mal</translation>
    </message>
    <message>
        <source>%1: difficulty %2</source>
        <translation>%1: Schwierigkeit %2</translation>
    </message>
    <message>
        <source>
This bar is %1.</source>
        <translation>
Dieser Takt ist %1.</translation>
    </message>
    <message>
        <source>, kept</source>
        <translation>, behalten</translation>
    </message>
    <message>
        <source>, followed</source>
        <translation>, gefolgt</translation>
    </message>
    <message>
        <source>, bar %1</source>
        <translation>, Takt %1</translation>
    </message>
    <message>
        <source>, snag: %1</source>
        <translation>, Hürde: %1</translation>
    </message>
    <message>
        <source>, chosen with others</source>
        <translation>, mit anderen gewählt</translation>
    </message>
    <message>
        <source>Shapes</source>
        <translation>Griffe</translation>
    </message>
    <message>
        <source>Left-hand shapes for the chosen chord, best first. Up and Down move through them, Space sounds one, Enter keeps it.</source>
        <translation>Griffe der linken Hand für den gewählten Akkord, beste zuerst. Auf und Ab gehen hindurch, die Leertaste lässt einen klingen, die Eingabetaste behält ihn.</translation>
    </message>
    <message>
        <source> Kept.</source>
        <translation> Behalten.</translation>
    </message>
    <message>
        <source>Let it change</source>
        <translation>Freigeben</translation>
    </message>
    <message>
        <source>Why not the others?</source>
        <translation>Warum nicht andere?</translation>
    </message>
    <message>
        <source>The patterns in the pattern book that cannot be played here, and why</source>
        <translation>Die Muster der Sammlung, die hier nicht spielbar sind, und warum</translation>
    </message>
    <message>
        <source>Open a lead sheet…</source>
        <translation>Ein Leadsheet öffnen…</translation>
    </message>
    <message>
        <source>Write a new tune…</source>
        <translation>Ein neues Stück schreiben…</translation>
    </message>
    <message>
        <source>Open the demo tune</source>
        <translation>Das Demostück öffnen</translation>
    </message>
    <message>
        <source>Bars of rest to write the notes in (Ctrl+N)</source>
        <translation>Takte voller Pausen, in die Sie die Noten schreiben (Strg+N)</translation>
    </message>
    <message>
        <source>A tune with chord symbols (Ctrl+O)</source>
        <translation>Ein Stück mit Akkordsymbolen (Strg+O)</translation>
    </message>
    <message>
        <source>A tune made for trying things out (Ctrl+D)</source>
        <translation>Ein Stück zum Ausprobieren (Strg+D)</translation>
    </message>
    <message>
        <source>What does my left hand do?</source>
        <translation>Was spielt meine linke Hand?</translation>
    </message>
    <message>
        <source>Open a tune with chord symbols, or drop its file here. For every chord you get left-hand shapes that your hand can play on your harp, best first.</source>
        <translation>Öffnen Sie ein Stück mit Akkordsymbolen, oder ziehen Sie seine Datei hierher. Zu jedem Akkord erhalten Sie Griffe, die Ihre linke Hand auf Ihrer Harfe spielen kann, beste zuerst.</translation>
    </message>
    <message>
        <source>Patterns that cannot be played here</source>
        <translation>Hier nicht spielbare Muster</translation>
    </message>
    <message>
        <source>Every pattern in the pattern book can be played here.</source>
        <translation>Jedes Muster der Sammlung ist hier spielbar.</translation>
    </message>
    <message>
        <source>a thirteenth</source>
        <translation>eine Tredezime</translation>
    </message>
    <message>
        <source>a fourteenth</source>
        <translation>eine Quartdezime</translation>
    </message>
    <message>
        <source>two octaves</source>
        <translation>zwei Oktaven</translation>
    </message>
    <message>
        <source>%1 strings</source>
        <translation>%1 Saiten</translation>
    </message>
    <message>
        <source>as good as the best</source>
        <translation>so gut wie der beste</translation>
    </message>
    <message>
        <source>nearly as good</source>
        <translation>fast so gut</translation>
    </message>
    <message>
        <source>less good</source>
        <translation>weniger gut</translation>
    </message>
    <message>
        <source>much less good</source>
        <translation>viel weniger gut</translation>
    </message>
    <message>
        <source>far from the best</source>
        <translation>weit vom besten</translation>
    </message>
    <message>
        <source>best</source>
        <translation>der beste</translation>
    </message>
    <message>
        <source>Bar %1</source>
        <translation>Takt %1</translation>
    </message>
    <message>
        <source>Pick-up bar</source>
        <translation>Auftakt</translation>
    </message>
    <message>
        <source>first time</source>
        <translation>erstes Mal</translation>
    </message>
    <message>
        <source>Bars %1–%2</source>
        <translation>Takte %1–%2</translation>
    </message>
    <message>
        <source>%1 strings · %2</source>
        <translation>%1 Saiten · %2</translation>
    </message>
    <message>
        <source> hand</source>
        <translation> Hand</translation>
    </message>
    <message>
        <source>all down</source>
        <translation>alle unten</translation>
    </message>
    <message>
        <source>%1 · string %2 from the bottom, %3 from the top · harp octave %4</source>
        <translation>%1 · Saite %2 von unten, %3 von oben · Harfenoktave %4</translation>
    </message>
    <message>
        <source>left hand rests</source>
        <translation>linke Hand pausiert</translation>
    </message>
    <message>
        <source>&amp;Composer</source>
        <translation>&amp;Komponist</translation>
    </message>
    <message>
        <source>&amp;From (place)</source>
        <translation>&amp;Woher (Ort)</translation>
    </message>
    <message>
        <source>&amp;Source</source>
        <translation>&amp;Quelle</translation>
    </message>
    <message>
        <source>&amp;Arranger</source>
        <translation>&amp;Arrangement</translation>
    </message>
    <message>
        <source>Copyright &amp;line</source>
        <translation>Urhebe&amp;rzeile</translation>
    </message>
    <message>
        <source>&amp;Notes for the
player</source>
        <translation>&amp;Anmerkungen
für die Spielenden</translation>
    </message>
    <message>
        <source>exactly as it should be printed at the foot</source>
        <translation>genau so, wie es am Fuß gedruckt werden soll</translation>
    </message>
    <message>
        <source>one paragraph on each line, printed after the music</source>
        <translation>ein Absatz je Zeile, nach den Noten gedruckt</translation>
    </message>
    <message>
        <source>An empty field prints nothing. The file you opened is not changed; these words are saved with your arrangement.</source>
        <translation>Ein leeres Feld druckt nichts. Die geöffnete Datei ändert sich nicht; diese Angaben werden mit Ihrem Arrangement gespeichert.</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Rückgängig: %1</translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation>W&amp;iederherstellen: %1</translation>
    </message>
    <message>
        <source>For %1.</source>
        <translation>Für %1.</translation>
    </message>
    <message>
        <source>This computer</source>
        <translation>Dieser Computer</translation>
    </message>
    <message>
        <source>Nothing changes at level %1.</source>
        <translation>Auf Niveau %1 ändert sich nichts.</translation>
    </message>
    <message>
        <source>Arranged for level %1.</source>
        <translation>Für Niveau %1 arrangiert.</translation>
    </message>
    <message>
        <source>And %1 more.</source>
        <translation>Und %1 weitere.</translation>
    </message>
    <message>
        <source>could not be opened</source>
        <translation>konnte nicht geöffnet werden</translation>
    </message>
    <message>
        <source>no tune is open</source>
        <translation>kein Stück ist offen</translation>
    </message>
    <message>
        <source>levers up: %1</source>
        <translation>Klappen oben: %1</translation>
    </message>
    <message>
        <source>1 lever flip</source>
        <translation>1 Klappenwechsel</translation>
    </message>
    <message>
        <source>%1 lever flips</source>
        <translation>%1 Klappenwechsel</translation>
    </message>
    <message>
        <source>difficulty %1</source>
        <translation>Schwierigkeit %1</translation>
    </message>
    <message>
        <source>%1[*] – Sallow</source>
        <translation>%1[*] – Sallow</translation>
    </message>
    <message>
        <source>for the chord you choose</source>
        <translation>für den gewählten Akkord</translation>
    </message>
    <message>
        <source>root %1</source>
        <translation>Grundton %1</translation>
    </message>
    <message>
        <source>rolled</source>
        <translation>arpeggiert</translation>
    </message>
    <message>
        <source>No chords</source>
        <translation>Keine Akkorde</translation>
    </message>
    <message>
        <source>%1 shapes, best first</source>
        <translation>%1 Griffe, beste vorn</translation>
    </message>
    <message>
        <source>for this and one more chord</source>
        <translation>für diesen und einen weiteren Akkord</translation>
    </message>
    <message>
        <source>for this and %1 more chords</source>
        <translation>für diesen und %1 weitere Akkorde</translation>
    </message>
    <message>
        <source>score %1, lower is better</source>
        <translation>Wertung %1, niedriger ist besser</translation>
    </message>
    <message>
        <source>the rest as it was</source>
        <translation>der Rest wie vorher</translation>
    </message>
    <message>
        <source>%1 · left hand</source>
        <translation>%1 · linke Hand</translation>
    </message>
    <message>
        <source>%1 · right hand</source>
        <translation>%1 · rechte Hand</translation>
    </message>
    <message>
        <source>Open a tune to begin.</source>
        <translation>Öffnen Sie ein Stück, um zu beginnen.</translation>
    </message>
    <message>
        <source>Score %1, lower is better</source>
        <translation>Wertung %1, niedriger ist besser</translation>
    </message>
    <message>
        <source>1 shape kept</source>
        <translation>1 Griff behalten</translation>
    </message>
    <message>
        <source>looking at another shape: %1</source>
        <translation>Blick auf einen anderen Griff: %1</translation>
    </message>
    <message>
        <source>%1 shapes can be played here</source>
        <translation>%1 Griffe sind hier spielbar</translation>
    </message>
    <message>
        <source>%1: lever %2 at the start. The left hand has been arranged again; Undo takes this back.</source>
        <translation>%1: Klappe zu Beginn %2. Die linke Hand ist neu arrangiert; Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>up</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>down</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>Now: %1</source>
        <translation>Jetzt: %1</translation>
    </message>
    <message>
        <source>This setting is A. Change what you like, then X lets you hear A and B by turns.</source>
        <translation>Diese Fassung ist A. Ändern Sie, was Sie möchten; dann lässt X abwechselnd A und B hören.</translation>
    </message>
    <message>
        <source>There is nothing to compare yet: look at another shape, or remember this setting as A (Shift+X) and change it.</source>
        <translation>Es gibt noch nichts zu vergleichen: Sehen Sie einen anderen Griff an, oder merken Sie sich diese Fassung als A (Umschalt+X), und ändern Sie sie.</translation>
    </message>
    <message>
        <source>A has other bars than the tune has now; it cannot be compared.</source>
        <translation>A hat andere Takte als das Stück jetzt; es lässt sich nicht vergleichen.</translation>
    </message>
    <message>
        <source>back to A</source>
        <translation>zurück zu A</translation>
    </message>
    <message>
        <source>&amp;Lilt</source>
        <translation>Sch&amp;wung</translation>
    </message>
    <message>
        <source>0 % as written; 100 %: the first of two lasts twice as long as the second</source>
        <translation>0 % wie geschrieben; 100 %: die erste von zweien doppelt so lang wie die zweite</translation>
    </message>
    <message>
        <source>0 % as written; 100 %: the first of three as a dotted quaver, the second as a semiquaver</source>
        <translation>0 % wie geschrieben; 100 %: die erste von dreien als punktierte Achtel, die zweite als Sechzehntel</translation>
    </message>
    <message>
        <source>1 note</source>
        <translation>1 Note</translation>
    </message>
    <message>
        <source>%1 notes</source>
        <translation>%1 Noten</translation>
    </message>
    <message>
        <source>1 text file has no tune in it and is left out.</source>
        <translation>In 1 Textdatei ist kein Stück; sie bleibt weg.</translation>
    </message>
    <message>
        <source>%1 text files have no tune in them and are left out.</source>
        <translation>In %1 Textdateien ist kein Stück; sie bleiben weg.</translation>
    </message>
    <message>
        <source>Everything could be read.</source>
        <translation>Alles konnte gelesen werden.</translation>
    </message>
    <message>
        <source>1 thing could &amp;not be read:</source>
        <translation>1 Eintrag konnte &amp;nicht gelesen werden:</translation>
    </message>
    <message>
        <source>%1 things could &amp;not be read:</source>
        <translation>%1 Einträge konnten &amp;nicht gelesen werden:</translation>
    </message>
    <message>
        <source>%1 things could not be read: Folders (Alt+F) lists them.</source>
        <translation>%1 Einträge konnten nicht gelesen werden: Unter „Ordner“ (Alt+O) stehen sie.</translation>
    </message>
    <message>
        <source>1 triplet</source>
        <translation>1 Triole</translation>
    </message>
    <message>
        <source>%1 triplets</source>
        <translation>%1 Triolen</translation>
    </message>
    <message>
        <source>%1 under others left out</source>
        <translation>%1 unter anderen Noten weggelassen</translation>
    </message>
    <message>
        <source>%1s a minute</source>
        <translation>%1 pro Minute</translation>
    </message>
    <message>
        <source>&amp;Add</source>
        <translation>Hin&amp;zufügen</translation>
    </message>
    <message>
        <source>Take o&amp;ut</source>
        <translation>Heraus&amp;nehmen</translation>
    </message>
    <message>
        <source>&amp;Earlier</source>
        <translation>Nach &amp;vorn</translation>
    </message>
    <message>
        <source>&amp;Later</source>
        <translation>Nach &amp;hinten</translation>
    </message>
    <message>
        <source>&amp;Tunes of this tunebook</source>
        <translation>S&amp;tücke dieser Sammlung</translation>
    </message>
    <message>
        <source>The &amp;set, in the order of playing</source>
        <translation>Das S&amp;et in Spielreihenfolge</translation>
    </message>
    <message>
        <source>Put them in the &amp;order that needs the fewest lever flips</source>
        <translation>In die &amp;Reihenfolge mit den wenigsten Klappenwechseln bringen</translation>
    </message>
    <message>
        <source>A set of tunes</source>
        <translation>Ein Set</translation>
    </message>
    <message>
        <source>Part of a title, kind or key</source>
        <translation>Teil von Titel, Art oder Tonart</translation>
    </message>
    <message>
        <source>Find a tune</source>
        <translation>Stück suchen</translation>
    </message>
    <message>
        <source>Tune %1</source>
        <translation>Stück %1</translation>
    </message>
    <message>
        <source>The titles of the tunes</source>
        <translation>Die Titel der Stücke</translation>
    </message>
    <message>
        <source>T&amp;itle of the set</source>
        <translation>T&amp;itel des Sets</translation>
    </message>
    <message>
        <source>Words (HTML)</source>
        <translation>Text (HTML)</translation>
    </message>
    <message>
        <source>/Set</source>
        <translation>/Set</translation>
    </message>
    <message>
        <source>Save as</source>
        <translation>Speichern als</translation>
    </message>
    <message>
        <source>Save the set as</source>
        <translation>Set speichern als</translation>
    </message>
    <message>
        <source>Levers and things to check</source>
        <translation>Klappen und Hinweise</translation>
    </message>
    <message>
        <source>&amp;Make the set</source>
        <translation>Set &amp;machen</translation>
    </message>
    <message>
        <source>A set has 2 to %1 tunes.</source>
        <translation>Ein Set hat 2 bis %1 Stücke.</translation>
    </message>
    <message>
        <source>A set has at most %1 tunes.</source>
        <translation>Ein Set hat höchstens %1 Stücke.</translation>
    </message>
    <message>
        <source>The tunes are being arranged…</source>
        <translation>Die Stücke werden arrangiert…</translation>
    </message>
    <message>
        <source>&amp;Make a set of tunes…</source>
        <translation>Ein Set &amp;machen…</translation>
    </message>
    <message>
        <source>&amp;Your tunes…</source>
        <translation>&amp;Ihre Stücke…</translation>
    </message>
    <message>
        <source>&amp;Take out of the list</source>
        <translation>Aus der &amp;Liste nehmen</translation>
    </message>
    <message>
        <source>&amp;Add a folder…</source>
        <translation>Ordner &amp;hinzufügen…</translation>
    </message>
    <message>
        <source>Folders</source>
        <translation>Ordner</translation>
    </message>
    <message>
        <source>Folders of your tunes</source>
        <translation>Ordner Ihrer Stücke</translation>
    </message>
    <message>
        <source>Every tune in these &amp;folders, and in the folders inside them, is in the list. The files stay as they are.</source>
        <translation>Alle Stücke in diesen &amp;Ordnern und in den Ordnern darin stehen in der Liste. Die Dateien bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>What could not be read</source>
        <translation>Was nicht gelesen werden konnte</translation>
    </message>
    <message>
        <source>Your tunes</source>
        <translation>Ihre Stücke</translation>
    </message>
    <message>
        <source>part of a title, a kind, a key, a file</source>
        <translation>Teil eines Titels, einer Art, Tonart oder Datei</translation>
    </message>
    <message>
        <source>&amp;Search</source>
        <translation>&amp;Suchen</translation>
    </message>
    <message>
        <source>g a b d, or degrees 1 2 3 5, or play them</source>
        <translation>g a b d, oder Tonstufen 1 2 3 5, oder spielen</translation>
    </message>
    <message>
        <source>The notes that the tune begins with, in any key and rhythm. Letters or degrees, or keys of your MIDI harp or keyboard; after a pause of three seconds a key begins again.</source>
        <translation>Die Töne, mit denen das Stück beginnt, in beliebiger Tonart und beliebigem Rhythmus. Buchstaben oder Tonstufen, oder Tasten Ihrer MIDI-Harfe oder Ihres Keyboards; nach drei Sekunden Pause beginnt eine Taste neu.</translation>
    </message>
    <message>
        <source>First notes</source>
        <translation>Erste Töne</translation>
    </message>
    <message>
        <source>First &amp;notes</source>
        <translation>Erste &amp;Töne</translation>
    </message>
    <message>
        <source>Arranged or not</source>
        <translation>Arrangiert oder nicht</translation>
    </message>
    <message>
        <source>Arranged</source>
        <translation>Arrangiert</translation>
    </message>
    <message>
        <source>Not arranged yet</source>
        <translation>Noch nicht arrangiert</translation>
    </message>
    <message>
        <source>Time signature</source>
        <translation>Taktart</translation>
    </message>
    <message>
        <source>&amp;Folders…</source>
        <translation>&amp;Ordner…</translation>
    </message>
    <message>
        <source>All kinds</source>
        <translation>Alle Arten</translation>
    </message>
    <message>
        <source>All keys</source>
        <translation>Alle Tonarten</translation>
    </message>
    <message>
        <source>All time signatures</source>
        <translation>Alle Taktarten</translation>
    </message>
    <message>
        <source>First notes are letters from a to g, such as g a b d, or degrees from 1 to 8, such as 1 2 3 5.</source>
        <translation>Erste Töne sind Buchstaben von a bis g, etwa g a b d, oder Tonstufen von 1 bis 8, etwa 1 2 3 5.</translation>
    </message>
    <message>
        <source>1 tune</source>
        <translation>1 Stück</translation>
    </message>
    <message>
        <source>This file is not there any more, or has changed.</source>
        <translation>Diese Datei gibt es nicht mehr, oder sie hat sich geändert.</translation>
    </message>
    <message>
        <source>Choose the folders where your tunes are: press Folders (Alt+F).</source>
        <translation>Wählen Sie die Ordner, in denen Ihre Stücke liegen: Drücken Sie „Ordner“ (Alt+O).</translation>
    </message>
    <message>
        <source>Reading: %1 of %2 files</source>
        <translation>Gelesen: %1 von %2 Dateien</translation>
    </message>
    <message>
        <source>arrangement</source>
        <translation>Arrangement</translation>
    </message>
    <message>
        <source>arranged</source>
        <translation>arrangiert</translation>
    </message>
    <message>
        <source>Arranged in %1</source>
        <translation>Arrangiert in %1</translation>
    </message>
    <message>
        <source>Last opened</source>
        <translation>Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Listen…</source>
        <translation>Hören Sie zu…</translation>
    </message>
    <message>
        <source>Count-in: %1</source>
        <translation>Einzähler: %1</translation>
    </message>
    <message>
        <source>Play. %1 so far.</source>
        <translation>Spielen Sie. Bisher %1.</translation>
    </message>
    <message>
        <source>A bar is counted in, then play from %1. Notes just before it are the pick-up.</source>
        <translation>Ein Takt wird eingezählt, dann spielen Sie ab %1. Töne kurz davor sind der Auftakt.</translation>
    </message>
    <message>
        <source>No note arrived. Connect a MIDI harp or keyboard and choose it in the menu Hear, Harp sound and MIDI; then start again.</source>
        <translation>Es kam kein Ton an. Schließen Sie eine MIDI-Harfe oder ein Keyboard an und wählen Sie es im Menü „Anhören“ unter „Harfenklang und MIDI“; beginnen Sie dann neu.</translation>
    </message>
    <message>
        <source>Played: %1. It is shown below and is not in the tune yet.</source>
        <translation>Gespielt: %1. Das steht unten und ist noch nicht im Stück.</translation>
    </message>
    <message>
        <source>notes played in time</source>
        <translation>im Takt eingespielte Noten</translation>
    </message>
    <message>
        <source>Play again</source>
        <translation>Neu spielen</translation>
    </message>
    <message>
        <source>Play notes in time</source>
        <translation>Noten im Takt einspielen</translation>
    </message>
    <message>
        <source>Play notes in t&amp;ime…</source>
        <translation>Noten &amp;im Takt einspielen…</translation>
    </message>
    <message>
        <source>Beats a minute</source>
        <translation>Schläge pro Minute</translation>
    </message>
    <message>
        <source>R</source>
        <translation>R</translation>
    </message>
    <message>
        <source>Start (Enter)</source>
        <translation>Beginnen (Eingabe)</translation>
    </message>
    <message>
        <source>Stop (Enter)</source>
        <translation>Anhalten (Eingabe)</translation>
    </message>
    <message>
        <source>Keep it (Enter)</source>
        <translation>Behalten (Eingabe)</translation>
    </message>
    <message>
        <source>Play it &amp;in…</source>
        <translation>&amp;Einspielen…</translation>
    </message>
    <message>
        <source>Play the notes on a MIDI harp or keyboard, in time with clicks</source>
        <translation>Die Noten auf einer MIDI-Harfe oder einem Keyboard zum Klick einspielen</translation>
    </message>
    <message>
        <source>Te&amp;mpo, beats a minute</source>
        <translation>Te&amp;mpo, Schläge pro Minute</translation>
    </message>
    <message>
        <source>usual for its kind</source>
        <translation>üblich für seine Art</translation>
    </message>
    <message>
        <source>&amp;Normal print</source>
        <translation>&amp;Normaldruck</translation>
    </message>
    <message>
        <source>&amp;Large print</source>
        <translation>&amp;Großdruck</translation>
    </message>
    <message>
        <source>&amp;Huge print</source>
        <translation>&amp;Riesendruck</translation>
    </message>
    <message>
        <source>Normal print</source>
        <translation>Normaldruck</translation>
    </message>
    <message>
        <source>Large print</source>
        <translation>Großdruck</translation>
    </message>
    <message>
        <source>Huge print</source>
        <translation>Riesendruck</translation>
    </message>
    <message>
        <source>with help</source>
        <translation>mit Hilfen</translation>
    </message>
    <message>
        <source>&amp;Beginner's paper</source>
        <translation>&amp;Blatt für Anfänger</translation>
    </message>
    <message>
        <source>Beginner's paper</source>
        <translation>Blatt für Anfänger</translation>
    </message>
    <message>
        <source>&amp;Red C and blue F strings</source>
        <translation>Rote &amp;C- und blaue F-Saiten</translation>
    </message>
    <message>
        <source>Note n&amp;ames in the heads</source>
        <translation>N&amp;otennamen in den Köpfen</translation>
    </message>
    <message>
        <source>&amp;String path under the staff</source>
        <translation>&amp;Saitenfolge unter dem System</translation>
    </message>
    <message>
        <source>&amp;Every placing bracket</source>
        <translation>&amp;Alle Setzklammern</translation>
    </message>
    <message>
        <source>&amp;Placing brackets where they help</source>
        <translation>Setzklammern, &amp;wo sie helfen</translation>
    </message>
    <message>
        <source>N&amp;o placing brackets</source>
        <translation>&amp;Keine Setzklammern</translation>
    </message>
    <message>
        <source>Size of the notes, colours, letters and brackets</source>
        <translation>Größe der Noten, Farben, Buchstaben und Klammern</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <translation>d. MMMM</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <translation>d. MMMM yyyy</translation>
    </message>
    <message>
        <source>none</source>
        <comment>pickup</comment>
        <translation>keiner</translation>
    </message>
    <message>
        <source>none</source>
        <comment>title</comment>
        <translation>keiner</translation>
    </message>
    <message>
        <source>Introduction and times through</source>
        <translation>Einleitung und Durchgänge</translation>
    </message>
    <message>
        <source>introduction and times through</source>
        <translation>Einleitung und Durchgänge</translation>
    </message>
    <message>
        <source>No introduction</source>
        <translation>Keine Einleitung</translation>
    </message>
    <message>
        <source>Its last two bars as an introduction</source>
        <translation>Ihre letzten zwei Takte als Einleitung</translation>
    </message>
    <message>
        <source>Its last four bars as an introduction</source>
        <translation>Ihre letzten vier Takte als Einleitung</translation>
    </message>
    <message>
        <source>After the tune</source>
        <translation>Nach der Melodie</translation>
    </message>
    <message>
        <source>No ending</source>
        <translation>Kein Schluss</translation>
    </message>
    <message>
        <source>Its last two bars again as an ending</source>
        <translation>Ihre letzten zwei Takte noch einmal als Schluss</translation>
    </message>
    <message>
        <source>Its last four bars again as an ending</source>
        <translation>Ihre letzten vier Takte noch einmal als Schluss</translation>
    </message>
    <message>
        <source>Through the tune</source>
        <translation>Durch das Stück</translation>
    </message>
    <message>
        <source>Once</source>
        <translation>Einmal</translation>
    </message>
    <message>
        <source>One time more</source>
        <translation>Noch ein Durchgang</translation>
    </message>
    <message>
        <source>Bar %1, time %2</source>
        <translation>Takt %1, %2. Durchgang</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>ending</source>
        <translation>Schluss</translation>
    </message>
    <message>
        <source>the introduction</source>
        <translation>der Einleitung</translation>
    </message>
    <message>
        <source>%1, kept</source>
        <translation>%1, behalten</translation>
    </message>
    <message>
        <source>1 other chord has a new shape</source>
        <translation>1 anderer Akkord hat einen neuen Griff</translation>
    </message>
    <message>
        <source>%1 other chords have new shapes</source>
        <translation>%1 andere Akkorde haben neue Griffe</translation>
    </message>
    <message>
        <source>Nothing is left to check</source>
        <translation>Es gibt keine Hinweise mehr</translation>
    </message>
    <message>
        <source>String bank, %1</source>
        <translation>Saitenbild, %1</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Less m&amp;otion</source>
        <translation>Weniger Beweg&amp;ung</translation>
    </message>
    <message>
        <source>&amp;First steps</source>
        <translation>&amp;Erste Schritte</translation>
    </message>
    <message>
        <source>Next step</source>
        <translation>Nächster Schritt</translation>
    </message>
    <message>
        <source>No more steps</source>
        <translation>Keine weiteren Schritte</translation>
    </message>
    <message>
        <source>They are in the menu Help (Esc)</source>
        <translation>Sie stehen im Menü Hilfe (Esc)</translation>
    </message>
    <message>
        <source>Open a tune with chord symbols (Ctrl+O), or the demo tune (Ctrl+D).</source>
        <translation>Öffnen Sie ein Stück mit Akkordsymbolen (Strg+O) oder das Beispielstück (Strg+D).</translation>
    </message>
    <message>
        <source>Choose a chord with the arrow keys. 1 to 9 keeps one of its shapes, the best first, and Space lets you hear the bar.</source>
        <translation>Wählen Sie mit den Pfeiltasten einen Akkord. 1 bis 9 behält einen seiner Griffe, der beste zuerst, und die Leertaste lässt Sie den Takt hören.</translation>
    </message>
    <message>
        <source>Ctrl+2 shows the sheet and Ctrl+P prints it. F1 opens the handbook.</source>
        <translation>Strg+2 zeigt das Blatt, Strg+P druckt es. F1 öffnet das Handbuch.</translation>
    </message>
    <message>
        <source>First steps, %1 of %2: %3</source>
        <translation>Erste Schritte, %1 von %2: %3</translation>
    </message>
    <message>
        <source>Tunes of the book</source>
        <translation>Stücke der Sammlung</translation>
    </message>
    <message>
        <source>Tunes of the set, in their order</source>
        <translation>Stücke des Sets in ihrer Reihenfolge</translation>
    </message>
    <message>
        <source>Size on the screen</source>
        <translation>Größe auf dem Bildschirm</translation>
    </message>
    <message>
        <source>Files done</source>
        <translation>Fertige Dateien</translation>
    </message>
    <message>
        <source>Sound written</source>
        <translation>Geschriebener Klang</translation>
    </message>
    <message>
        <source>, without a lever</source>
        <translation>, ohne Klappe</translation>
    </message>
    <message>
        <source>, lever down</source>
        <translation>, Klappe unten</translation>
    </message>
</context>
<context>
    <name>app</name>
    <message>
        <source>%1, %2 hand, level %3</source>
        <translation>%1, %2 Hand, Niveau %3</translation>
    </message>
    <message>
        <source>Stopped. The papers made so far are whole; start again with “Leave papers that are there already” to go on.</source>
        <translation>Angehalten. Die bisherigen Blätter sind vollständig; mit „Vorhandene Blätter nicht neu machen“ geht es weiter.</translation>
    </message>
    <message>
        <source>The work could not be started.</source>
        <translation>Die Arbeit konnte nicht begonnen werden.</translation>
    </message>
    <message>
        <source>Done, with 1 thing to check.</source>
        <translation>Fertig, mit 1 Hinweis.</translation>
    </message>
    <message>
        <source>Done. The papers are in %1.</source>
        <translation>Fertig. Die Blätter sind in %1.</translation>
    </message>
    <message>
        <source>Done, with %1 things to check.</source>
        <translation>Fertig, mit %1 Hinweisen.</translation>
    </message>
    <message>
        <source>If anything hurts, stop; ask your teacher, and see a doctor or physiotherapist.</source>
        <translation>Wenn etwas schmerzt, hören Sie auf; fragen Sie im Unterricht nach, und suchen Sie ärztlichen oder physiotherapeutischen Rat.</translation>
    </message>
    <message>
        <source>Before you tune strings up or down, ask the harp's maker: strings can break, and not every harp bears every tuning.</source>
        <translation>Fragen Sie vor dem Höher- oder Tieferstimmen die Harfenbauerin oder den Harfenbauer: Saiten können reißen, und nicht jede Harfe verträgt jede Stimmung.</translation>
    </message>
    <message>
        <source>There are wide shapes for a small hand here. Roll them or choose smaller ones, and do not hold a stretch.</source>
        <translation>Hier gibt es weite Griffe für eine kleine Hand. Arpeggieren Sie sie, oder wählen Sie kleinere, und halten Sie keine Spreizung fest.</translation>
    </message>
    <message>
        <source>From level %1 on shapes change quickly. Begin slowly, and rest your hands for five minutes in every half hour.</source>
        <translation>Ab Niveau %1 wechseln die Griffe schnell. Beginnen Sie langsam, und ruhen Sie in jeder halben Stunde fünf Minuten aus.</translation>
    </message>
    <message>
        <source>chords are found from its notes, in {}</source>
        <translation>aus den Noten werden Akkorde gefunden, in {}</translation>
    </message>
    <message>
        <source>; the least sure is {} in {}</source>
        <translation>; am unsichersten ist {} in {}</translation>
    </message>
    <message>
        <source>the chords as written are set aside</source>
        <translation>die geschriebenen Akkorde bleiben beiseite</translation>
    </message>
    <message>
        <source>the tune has no chords</source>
        <translation>das Stück hat keine Akkorde</translation>
    </message>
    <message>
        <source>the last bar has no chord, and the one before it does not close</source>
        <translation>der letzte Takt hat keinen Akkord, und der davor schließt nicht</translation>
    </message>
    <message>
        <source>{} is put there</source>
        <translation>{} wird dort gesetzt</translation>
    </message>
    <message>
        <source>{} to {} have no chords</source>
        <translation>{} bis {} ohne Akkorde</translation>
    </message>
    <message>
        <source>chords for them are found from the notes</source>
        <translation>Akkorde dafür werden aus den Noten gefunden</translation>
    </message>
    <message>
        <source>an ABC, MusicXML, MIDI or .sallow file, or - for ABC on standard input</source>
        <translation>eine ABC-, MusicXML-, MIDI- oder .sallow-Datei, oder - für ABC von der Standardeingabe</translation>
    </message>
    <message>
        <source>an ABC, MusicXML, MIDI or .sallow file, or a folder of them with its subfolders</source>
        <translation>eine ABC-, MusicXML-, MIDI- oder .sallow-Datei, oder ein Ordner damit samt Unterordnern</translation>
    </message>
    <message>
        <source>file to save; its ending sets the type: .pdf .svg .png .musicxml .mxl .abc .mid .wav .flac .ogg .txt .html .plan.json .sallow; may be repeated</source>
        <translation>zu speichernde Datei; die Endung bestimmt den Typ: .pdf .svg .png .musicxml .mxl .abc .mid .wav .flac .ogg .txt .html .plan.json .sallow; mehrfach möglich</translation>
    </message>
    <message>
        <source>file to save; its ending sets the type: .pdf .svg .png; may be repeated</source>
        <translation>zu speichernde Datei; die Endung bestimmt den Typ: .pdf .svg .png; mehrfach möglich</translation>
    </message>
    <message>
        <source>file to save: JSON, or plain numbers if the name ends in .bin</source>
        <translation>zu speichernde Datei: JSON, oder reine Zahlen, wenn der Name auf .bin endet</translation>
    </message>
    <message>
        <source>file to save, .png</source>
        <translation>zu speichernde Datei, .png</translation>
    </message>
    <message>
        <source>the folder to save in</source>
        <translation>der Ordner, in dem gespeichert wird</translation>
    </message>
    <message>
        <source>as JSON</source>
        <translation>als JSON</translation>
    </message>
    <message>
        <source>which tune: its X: number, its place in the tunebook, or all</source>
        <translation>welches Stück: seine X:-Nummer, sein Platz in der Sammlung oder all</translation>
    </message>
    <message>
        <source>which harp, such as floor34 or lap26</source>
        <translation>welche Harfe, etwa floor34 oder lap26</translation>
    </message>
    <message>
        <source>tuning with all levers down: Eb, F, C, Bb or Ab</source>
        <translation>Stimmung mit allen Klappen unten: Eb, F, C, Bb oder Ab</translation>
    </message>
    <message>
        <source>which strings have levers: full, CFB, CF, F, none</source>
        <translation>welche Saiten Klappen haben: full, CFB, CF, F, none</translation>
    </message>
    <message>
        <source>a file of harps of your own, as the harp editor saves them</source>
        <translation>eine Datei mit eigenen Harfen, wie der Harfeneditor sie speichert</translation>
    </message>
    <message>
        <source>how strings are named: usual, scientific, harp (octaves) or number</source>
        <translation>wie Saiten heißen: usual, scientific, harp (Oktaven) oder number</translation>
    </message>
    <message>
        <source>size of the hand: small, medium, large, child10 or child7</source>
        <translation>Größe der Hand: small, medium, large, child10 oder child7</translation>
    </message>
    <message>
        <source>the player's level, 1 (beginner) to 5 (advanced); a saved arrangement is changed to fit it</source>
        <translation>das Niveau, 1 (Anfang) bis 5 (fortgeschritten); ein gespeichertes Arrangement wird ihm angepasst</translation>
    </message>
    <message>
        <source>beats a minute</source>
        <translation>Schläge pro Minute</translation>
    </message>
    <message>
        <source>keep: use the written chord symbols; suggest: find them again from the notes; auto: find them where the tune, or a strain of it, has none</source>
        <translation>keep: die geschriebenen Akkordsymbole; suggest: aus den Noten neu finden; auto: finden, wo das Stück oder ein Teil keine hat</translation>
    </message>
    <message>
        <source>shapes on the repeats: written (the same every time through) or varied</source>
        <translation>Griffe bei Wiederholungen: written (in jedem Durchgang gleich) oder varied</translation>
    </message>
    <message>
        <source>a key such as G or Ador; best: the best key for this harp; asis: the key as written</source>
        <translation>eine Tonart wie G oder Ador; best: die beste für diese Harfe; asis: wie geschrieben</translation>
    </message>
    <message>
        <source>what to do about a snag, a note or chord that the harp cannot give as written: any (each in its best way), no (stop and say what would help), or one way for all: plain, held, leave-out, octave, left-lightened, slower, key or level</source>
        <translation>was mit einer Hürde geschieht, einem Ton oder Akkord, den die Harfe nicht wie geschrieben geben kann: any (jede auf ihre beste Art), no (anhalten und sagen, was hilft) oder eine Art für alle: plain, held, leave-out, octave, left-lightened, slower, key oder level</translation>
    </message>
    <message>
        <source>the right hand: bare (the tune alone), closes (with a third, sixth or octave below where phrases end), full (also on strong beats)</source>
        <translation>die rechte Hand: bare (nur die Melodie), closes (mit Terz, Sexte oder Oktave darunter am Phrasenende), full (auch auf betonten Zählzeiten)</translation>
    </message>
    <message>
        <source>manner of the left hand: plain, flowing, open, full, drone or ostinato</source>
        <translation>Stil der linken Hand: plain, flowing, open, full, drone oder ostinato</translation>
    </message>
    <message>
        <source>SLIDER=PERCENT from 0 to 200, such as ease=150; 100 is the middle; the sliders are fullness, ease, colour, sameness and movement</source>
        <translation>REGLER=PROZENT von 0 bis 200, etwa ease=150; 100 ist die Mitte; die Regler sind fullness, ease, colour, sameness und movement</translation>
    </message>
    <message>
        <source>your own pattern, such as &quot;1 5 8 10 8&quot; or &quot;1-5-8 (4-3-1)&quot;; use + for notes plucked together, ~ for a roll, and low5 for the fifth below the root</source>
        <translation>ein eigenes Muster, etwa &quot;1 5 8 10 8&quot; oder &quot;1-5-8 (4-3-1)&quot;; + für zusammen gezupfte Töne, ~ für ein Arpeggio, low5 für die Quinte unter dem Grundton</translation>
    </message>
    <message>
        <source>a file of patterns of your own</source>
        <translation>eine Datei mit eigenen Mustern</translation>
    </message>
    <message>
        <source>keep a pattern at a chord: BAR=PATTERN or BAR.BEAT=PATTERN; &quot;rest&quot; for no left hand</source>
        <translation>ein Muster bei einem Akkord behalten: TAKT=MUSTER oder TAKT.ZÄHLZEIT=MUSTER; &quot;rest&quot; für keine linke Hand</translation>
    </message>
    <message>
        <source>which setting: 0 the best, 1 a clearly different one, 2 the next, and so on</source>
        <translation>welche Fassung: 0 die beste, 1 eine deutlich andere, 2 die nächste und so weiter</translation>
    </message>
    <message>
        <source>title to print instead of the tune's own</source>
        <translation>zu druckender Titel anstelle des eigenen</translation>
    </message>
    <message>
        <source>the copyright line, word for word</source>
        <translation>die Urheberzeile, Wort für Wort</translation>
    </message>
    <message>
        <source>composer on the page</source>
        <translation>Komponist auf dem Blatt</translation>
    </message>
    <message>
        <source>arranger on the page</source>
        <translation>Arrangeur auf dem Blatt</translation>
    </message>
    <message>
        <source>where the tune is from, printed at the foot</source>
        <translation>woher das Stück stammt, am Fuß gedruckt</translation>
    </message>
    <message>
        <source>a remark for the player, printed after the music; may be repeated</source>
        <translation>eine Anmerkung für die Spielenden, nach den Noten gedruckt; mehrfach möglich</translation>
    </message>
    <message>
        <source>a4 or letter</source>
        <translation>a4 oder letter</translation>
    </message>
    <message>
        <source>which sheet to draw: arrangement, pattern or lead</source>
        <translation>welches Blatt: arrangement, pattern oder lead</translation>
    </message>
    <message>
        <source>sound files: how fast, 25% to 150% of the tempo; the arrangement stays the same</source>
        <translation>Klangdateien: wie schnell, 25% bis 150% des Tempos; das Arrangement bleibt gleich</translation>
    </message>
    <message>
        <source>sound files: bars FIRST-LAST, such as 5-8</source>
        <translation>Klangdateien: Takte VON-BIS, etwa 5-8</translation>
    </message>
    <message>
        <source>sound files: left, right, both, or tune: the right hand without added notes</source>
        <translation>Klangdateien: left, right, both oder tune: die rechte Hand ohne hinzugefügte Töne</translation>
    </message>
    <message>
        <source>sound files: -100 to 100; above 0 the left hand is softer, below the right</source>
        <translation>Klangdateien: -100 bis 100; über 0 ist die linke Hand leiser, darunter die rechte</translation>
    </message>
    <message>
        <source>sound files: the bar before the passage first</source>
        <translation>Klangdateien: zuerst der Takt vor dem Abschnitt</translation>
    </message>
    <message>
        <source>sound files: clicks before the first bar</source>
        <translation>Klangdateien: Klicks vor dem ersten Takt</translation>
    </message>
    <message>
        <source>sound files: a click on every beat</source>
        <translation>Klangdateien: ein Klick auf jeder Zählzeit</translation>
    </message>
    <message>
        <source>sound files: how often it is played, without a gap</source>
        <translation>Klangdateien: wie oft gespielt wird, ohne Lücke</translation>
    </message>
    <message>
        <source>sound files: faster round by round, FROM-TO/BYxTIMES in per cent of the tempo, such as 60-100/5x2</source>
        <translation>Klangdateien: von Durchgang zu Durchgang schneller, VON-BIS/UMxMALE in Prozent des Tempos, etwa 60-100/5x2</translation>
    </message>
    <message>
        <source>sound files: milliseconds between two strings of a rolled chord</source>
        <translation>Klangdateien: Millisekunden zwischen zwei Saiten eines arpeggierten Akkords</translation>
    </message>
    <message>
        <source>sound files: how uneven the beats of a dance are, 0 to 100 %: the swing of a hornpipe, the long first quaver of a jig</source>
        <translation>Klangdateien: wie ungleich die Schläge eines Tanzes sind, 0 bis 100 %: der Swing einer Hornpipe, das lange erste Achtel einer Jig</translation>
    </message>
    <message>
        <source>how much the tune slows at its end, 0 to 100 %: an air to half its tempo, a dance hardly; left out, airs, waltzes and marches slow and dances go on in time; sheets say rit.</source>
        <translation>wie viel langsamer das Stück am Ende wird, 0 bis 100 %: ein Air bis zum halben Tempo, ein Tanz kaum; ohne diese Angabe werden Airs, Walzer und Märsche langsamer, und Tänze bleiben im Takt; auf dem Blatt steht rit.</translation>
    </message>
    <message>
        <source>sound files: four for each, both hands, left and right alone (all slow, as --at says, else 60%) and both at the tempo</source>
        <translation>Klangdateien: je vier, beide Hände, links und rechts allein (alle langsam, wie --at sagt, sonst 60%) und beide im Tempo</translation>
    </message>
    <message>
        <source>sound files: what A4 is tuned to, in Hz</source>
        <translation>Klangdateien: wie hoch A4 gestimmt ist, in Hz</translation>
    </message>
    <message>
        <source>sound files: equal, meantone, pythagorean, well, or cents by note such as E=-14,B=-12</source>
        <translation>Klangdateien: equal, meantone, pythagorean, well oder Cent je Ton wie E=-14,B=-12</translation>
    </message>
    <message>
        <source>sound files: how much the strings that nobody plucks answer, 0 to 100 %</source>
        <translation>Klangdateien: wie stark nicht gezupfte Saiten mitklingen, 0 bis 100 %</translation>
    </message>
    <message>
        <source>sound files: a General MIDI sound font (.sf2)</source>
        <translation>Klangdateien: eine General-MIDI-Klangdatei (.sf2)</translation>
    </message>
    <message>
        <source>with --set: in the order that needs the fewest lever flips</source>
        <translation>mit --set: in der Reihenfolge mit den wenigsten Klappenwechseln</translation>
    </message>
    <message>
        <source>several levels with the same bars on each line, such as 1-5; pages go into one file, other types into a file each</source>
        <translation>mehrere Niveaus mit denselben Takten in jeder Zeile, etwa 1-5; Seiten in eine Datei, andere Typen in je eine</translation>
    </message>
    <message>
        <source>order of the list: taken (as &quot;arrange&quot; would choose) or cost (left-hand score, lowest first)</source>
        <translation>Reihenfolge der Liste: taken (wie &quot;arrange&quot; wählen würde) oder cost (Wertung der linken Hand, niedrigste zuerst)</translation>
    </message>
    <message>
        <source>file types to save, such as pdf,mid,plan.json</source>
        <translation>zu speichernde Dateitypen, etwa pdf,mid,plan.json</translation>
    </message>
    <message>
        <source>how many processes share the work</source>
        <translation>wie viele Prozesse sich die Arbeit teilen</translation>
    </message>
    <message>
        <source>K/N: only every Nth tune, from the Kth on</source>
        <translation>K/N: nur jedes N-te Stück, ab dem K-ten</translation>
    </message>
    <message>
        <source>skip what has been saved already with the same options</source>
        <translation>überspringen, was mit denselben Optionen schon gespeichert ist</translation>
    </message>
    <message>
        <source>a line on standard output for each tune as it is done: saved, kept or missing</source>
        <translation>eine Zeile auf der Standardausgabe je fertigem Stück: saved, kept oder missing</translation>
    </message>
    <message>
        <source>grid, sheet, bank or workbench</source>
        <translation>grid, sheet, bank oder workbench</translation>
    </message>
    <message>
        <source>WIDTHxHEIGHT in pixels</source>
        <translation>BREITExHÖHE in Pixeln</translation>
    </message>
    <message>
        <source>how many times larger to draw it, 1 to 4</source>
        <translation>wie viel größer gezeichnet wird, 1 bis 4</translation>
    </message>
    <message>
        <source>light or dark, or strong-light or strong-dark of high contrast</source>
        <translation>light oder dark, oder strong-light oder strong-dark mit hohem Kontrast</translation>
    </message>
    <message>
        <source>the key, such as G or Ador</source>
        <translation>die Tonart, etwa G oder Ador</translation>
    </message>
    <message>
        <source>patterns, such as 1-5-8,1-5-8-9; your own may have fingers in brackets</source>
        <translation>Muster, etwa 1-5-8,1-5-8-9; eigene können Finger in Klammern haben</translation>
    </message>
    <message>
        <source>time signatures, such as 4/4,6/8, instead of the usual two</source>
        <translation>Taktarten, etwa 4/4,6/8, statt der zwei üblichen</translation>
    </message>
    <message>
        <source>this takes one tune at a time</source>
        <translation>hier geht immer nur ein Stück</translation>
    </message>
    <message>
        <source>note: </source>
        <translation>Hinweis: </translation>
    </message>
    <message>
        <source>note: the last clearly different setting is number </source>
        <translation>Hinweis: die letzte deutlich andere Fassung ist Nummer </translation>
    </message>
    <message>
        <source>it says itself how fast and how often; leave out --at, --times and --practice</source>
        <translation>es bestimmt selbst, wie schnell und wie oft; lassen Sie --at, --times und --practice weg</translation>
    </message>
    <message>
        <source>it is for sound, MIDI files and sheets with both hands or patterns, and none is asked for</source>
        <translation>es gilt für Klang, MIDI-Dateien und Blätter mit beiden Händen oder Mustern, und nichts davon ist verlangt</translation>
    </message>
    <message>
        <source>--at, --passage, --hands, --balance, --bar-before, --count-in, --click, --times, --steps, --roll, --lilt, --pitch, --temperament, --halo, --font and --practice are for .wav, .flac and .ogg, and none is asked for</source>
        <translation>--at, --passage, --hands, --balance, --bar-before, --count-in, --click, --times, --steps, --roll, --lilt, --pitch, --temperament, --halo, --font und --practice gelten für .wav, .flac und .ogg, und keine ist verlangt</translation>
    </message>
    <message>
        <source>Sallow arranges lead sheets for the lever harp. Without a command it opens the workbench: sallow [FILE...]</source>
        <translation>Sallow arrangiert Leadsheets für die Hakenharfe. Ohne Befehl öffnet es die Werkbank: sallow [DATEI...]</translation>
    </message>
    <message>
        <source>it is given more than once; give it once</source>
        <translation>es ist mehrfach angegeben; geben Sie es einmal an</translation>
    </message>
    <message>
        <source>there is no &quot;{}&quot;; choose one of {{{}}}{}</source>
        <translation>„{}“ gibt es nicht; wählen Sie aus {{{}}}{}</translation>
    </message>
    <message>
        <source> (did you mean {}?)</source>
        <translation> (meinten Sie {}?)</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>eine ganze Zahl</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>{} from {:g} to {:g}</source>
        <translation>{} von {:g} bis {:g}</translation>
    </message>
    <message>
        <source>this must be {}, not &quot;{}&quot;</source>
        <translation>dies muss {} sein, nicht „{}“</translation>
    </message>
    <message>
        <source>; see sallow {} --help</source>
        <translation>; siehe sallow {} --help</translation>
    </message>
    <message>
        <source>&quot;{}&quot;: {} takes no further word here{}</source>
        <translation>„{}“: {} nimmt hier kein weiteres Wort an{}</translation>
    </message>
    <message>
        <source>{}: {} has no such option{}{}</source>
        <translation>{}: {} hat keine solche Option{}{}</translation>
    </message>
    <message>
        <source>; did you mean {}?</source>
        <translation>; meinten Sie {}?</translation>
    </message>
    <message>
        <source>{}: a word must follow it{}</source>
        <translation>{}: danach muss ein Wort folgen{}</translation>
    </message>
    <message>
        <source>the words cannot be understood</source>
        <translation>der Aufruf ist nicht verständlich</translation>
    </message>
    <message>
        <source>{} needs {}{}</source>
        <translation>{} braucht {}{}</translation>
    </message>
    <message>
        <source>{}

Usage: sallow COMMAND [WORDS...]

Commands:
</source>
        <translation>{}

Aufruf: sallow BEFEHL [WÖRTER...]

Befehle:
</translation>
    </message>
    <message>
        <source>
sallow COMMAND --help says more of each; --language de says it in German.
</source>
        <translation>
sallow BEFEHL --help sagt jeweils mehr; --language en sagt es auf Englisch.
</translation>
    </message>
    <message>
        <source>{}: there is no such option; see sallow --help</source>
        <translation>{}: diese Option gibt es nicht; siehe sallow --help</translation>
    </message>
    <message>
        <source>{}: there is no such command or file; did you mean {}?</source>
        <translation>{}: diesen Befehl oder diese Datei gibt es nicht; meinten Sie {}?</translation>
    </message>
    <message>
        <source>{}: there is no such command or file; the commands are {}</source>
        <translation>{}: diesen Befehl oder diese Datei gibt es nicht; die Befehle sind {}</translation>
    </message>
    <message>
        <source>{}; write K/N, such as 2/4</source>
        <translation>{}; schreiben Sie K/N, etwa 2/4</translation>
    </message>
    <message>
        <source>note: the folder was filled with other options, so all is made again
</source>
        <translation>Hinweis: der Ordner wurde mit anderen Optionen gefüllt, daher wird alles neu gemacht
</translation>
    </message>
    <message>
        <source> tune: </source>
        <translation> Stück: </translation>
    </message>
    <message>
        <source> tunes: </source>
        <translation> Stücke: </translation>
    </message>
    <message>
        <source> saved</source>
        <translation> gespeichert</translation>
    </message>
    <message>
        <source> kept from before</source>
        <translation> von vorher behalten</translation>
    </message>
    <message>
        <source> missing for their own sake</source>
        <translation> fehlen aus eigenem Grund</translation>
    </message>
    <message>
        <source> not saved</source>
        <translation> nicht gespeichert</translation>
    </message>
    <message>
        <source> file</source>
        <translation> Datei</translation>
    </message>
    <message>
        <source> files</source>
        <translation> Dateien</translation>
    </message>
    <message>
        <source> could not be read</source>
        <translation> nicht lesbar</translation>
    </message>
    <message>
        <source>stopped; what is saved is whole, and --resume goes on from there
</source>
        <translation>angehalten; was gespeichert ist, ist vollständig, und --resume macht dort weiter
</translation>
    </message>
    <message>
        <source>: this was not saved, because the process that was to do it ended early; --resume makes up for it
</source>
        <translation>: dies wurde nicht gespeichert, weil der zuständige Prozess vorzeitig endete; --resume holt es nach
</translation>
    </message>
    <message>
        <source>not together with --jobs</source>
        <translation>nicht zusammen mit --jobs</translation>
    </message>
    <message>
        <source>a batch saves in one folder</source>
        <translation>ein Stapel wird in einem Ordner gespeichert</translation>
    </message>
    <message>
        <source>: this folder cannot be read and is left out
</source>
        <translation>: dieser Ordner ist nicht lesbar und bleibt weg
</translation>
    </message>
    <message>
        <source>the folder holds no .abc, .musicxml, .xml, .mxl, .mid or .sallow file</source>
        <translation>im Ordner ist keine .abc-, .musicxml-, .xml-, .mxl-, .mid- oder .sallow-Datei</translation>
    </message>
    <message>
        <source>line {}</source>
        <translation>Zeile {}</translation>
    </message>
    <message>
        <source>, column </source>
        <comment>line</comment>
        <translation>, Spalte </translation>
    </message>
    <message>
        <source> bars, </source>
        <translation> Takte, </translation>
    </message>
    <message>
        <source>  from its notes: {}, {:.0f} % sure; {}
</source>
        <translation>  den Noten nach: {}, {:.0f} % sicher; {}
</translation>
    </message>
    <message>
        <source>; change K: if you agree
</source>
        <translation>; ändern Sie K:, wenn Sie zustimmen
</translation>
    </message>
    <message>
        <source>standard output</source>
        <translation>Standardausgabe</translation>
    </message>
    <message>
        <source>{}; write time signatures such as 4/4,6/8</source>
        <translation>{}; schreiben Sie Taktarten wie 4/4,6/8</translation>
    </message>
    <message>
        <source> (transposed by </source>
        <translation> (transponiert um </translation>
    </message>
    <message>
        <source> semitone)</source>
        <translation> Halbton)</translation>
    </message>
    <message>
        <source> semitones)</source>
        <translation> Halbtöne)</translation>
    </message>
    <message>
        <source> levers up)
</source>
        <translation> Klappen oben)
</translation>
    </message>
    <message>
        <source>comparing keys</source>
        <translation>Tonarten werden verglichen</translation>
    </message>
    <message>
        <source>{}; write levels such as 1-5 or 1,3,5</source>
        <translation>{}; schreiben Sie Niveaus wie 1-5 oder 1,3,5</translation>
    </message>
    <message>
        <source>note: this level is left out: </source>
        <translation>Hinweis: dieses Niveau bleibt weg: </translation>
    </message>
    <message>
        <source>note: level </source>
        <translation>Hinweis: Niveau </translation>
    </message>
    <message>
        <source>{}; write WIDTHxHEIGHT in pixels, 100x50 to 8000x8000</source>
        <translation>{}; schreiben Sie BREITExHÖHE in Pixeln, 100x50 bis 8000x8000</translation>
    </message>
    <message>
        <source>a picture is a .png</source>
        <translation>ein Bild ist eine .png-Datei</translation>
    </message>
    <message>
        <source>{}{:&lt;40} cannot be read: {}
</source>
        <translation>{}{:&lt;40} nicht lesbar: {}
</translation>
    </message>
    <message>
        <source>bar</source>
        <comment>count</comment>
        <translation>Takt</translation>
    </message>
    <message>
        <source>bars</source>
        <comment>count</comment>
        <translation>Takte</translation>
    </message>
    <message>
        <source>chords</source>
        <translation>Akkorde</translation>
    </message>
    <message>
        <source>no chords</source>
        <translation>keine Akkorde</translation>
    </message>
    <message>
        <source>arrange a tune and save it as sheet, sound or data</source>
        <translation>ein Stück arrangieren und als Blatt, Klang oder Daten speichern</translation>
    </message>
    <message>
        <source>arrange every tune of a tunebook, or of all the tunebooks in a folder</source>
        <translation>jedes Stück einer Sammlung oder aller Sammlungen eines Ordners arrangieren</translation>
    </message>
    <message>
        <source>save every chord, shape and score that was compared</source>
        <translation>alle Akkorde, Griffe und Wertungen speichern, die verglichen wurden</translation>
    </message>
    <message>
        <source>list the keys for a tune on a harp, best first, with the levers to set</source>
        <translation>die Tonarten für ein Stück auf einer Harfe auflisten, beste zuerst, mit den zu stellenden Klappen</translation>
    </message>
    <message>
        <source>list the pattern book, with your own patterns</source>
        <translation>die Mustersammlung auflisten, mit Ihren eigenen Mustern</translation>
    </message>
    <message>
        <source>make a pattern handout: a page for each pattern, with strings, music and bars to practise</source>
        <translation>ein Arbeitsblatt zu Mustern machen: je Muster eine Seite mit Saiten, Noten und Übungstakten</translation>
    </message>
    <message>
        <source>make a placing drill: the tune's left-hand shapes in order, to place, roll and come off</source>
        <translation>eine Setzübung machen: die Griffe der linken Hand der Reihe nach, zum Setzen, Arpeggieren und Abheben</translation>
    </message>
    <message>
        <source>save a picture of the workbench as PNG</source>
        <translation>ein Bild der Werkbank als PNG speichern</translation>
    </message>
    <message>
        <source>read a file and report every problem in it; save nothing</source>
        <translation>eine Datei lesen und jedes Problem darin melden; nichts speichern</translation>
    </message>
    <message>
        <source>Open a tune</source>
        <translation>Ein Stück öffnen</translation>
    </message>
    <message>
        <source>Tunes and arrangements (*.abc *.ABC *.txt *.musicxml *.xml *.mxl *.mid *.sallow);;All files (*)</source>
        <translation>Stücke und Arrangements (*.abc *.ABC *.txt *.musicxml *.xml *.mxl *.mid *.sallow);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>new tune</source>
        <translation>neues Stück</translation>
    </message>
    <message>
        <source>the clipboard</source>
        <translation>die Zwischenablage</translation>
    </message>
    <message>
        <source>There is no text on the clipboard.</source>
        <translation>In der Zwischenablage ist kein Text.</translation>
    </message>
    <message>
        <source>pasted</source>
        <translation>eingefügt</translation>
    </message>
    <message>
        <source>Passed over: %1</source>
        <translation>Übergangen: %1</translation>
    </message>
    <message>
        <source>This is the last tune of the tunebook.</source>
        <translation>Dies ist das letzte Stück der Sammlung.</translation>
    </message>
    <message>
        <source>This is the first tune of the tunebook.</source>
        <translation>Dies ist das erste Stück der Sammlung.</translation>
    </message>
    <message>
        <source>“%1” is open in another window. Here it is a copy: saving asks for a new name.</source>
        <translation>„%1“ ist in einem anderen Fenster offen. Hier ist es eine Kopie: Beim Speichern wird nach einem neuen Namen gefragt.</translation>
    </message>
    <message>
        <source>Your changes cannot be kept aside, so save often: %1.</source>
        <translation>Ihre Änderungen können nicht gesichert werden, speichern Sie daher oft: %1.</translation>
    </message>
    <message>
        <source>“%1” was changed by another program. Saving asks before it replaces that; to see it, open the file again.</source>
        <translation>„%1“ wurde von einem anderen Programm geändert. Vor dem Ersetzen wird gefragt; um die Änderung zu sehen, öffnen Sie die Datei noch einmal.</translation>
    </message>
    <message>
        <source>Saved %1</source>
        <translation>%1 gespeichert</translation>
    </message>
    <message>
        <source>Not saved, %1</source>
        <translation>Nicht gespeichert, %1</translation>
    </message>
    <message>
        <source>%1 · level %2 · %3</source>
        <translation>%1 · Niveau %2 · %3</translation>
    </message>
    <message>
        <source>1 chord kept</source>
        <translation>1 Akkord behalten</translation>
    </message>
    <message>
        <source>%1 chords kept</source>
        <translation>%1 Akkorde behalten</translation>
    </message>
    <message>
        <source>There is no earlier version of this tune.</source>
        <translation>Es gibt keine frühere Version dieses Stücks.</translation>
    </message>
    <message>
        <source>Go back to</source>
        <translation>Zurückgehen zu</translation>
    </message>
    <message>
        <source>The last versions of “%1”, the newest first. You can undo going back.</source>
        <translation>Die letzten Versionen von „%1“, neueste zuerst. Das Zurückgehen lässt sich rückgängig machen.</translation>
    </message>
    <message>
        <source>Go back</source>
        <translation>Zurückgehen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>going back</source>
        <translation>Zurückgehen</translation>
    </message>
    <message>
        <source>%1 steps before</source>
        <translation>%1 Schritte davor</translation>
    </message>
    <message>
        <source>%1 · changed %2</source>
        <translation>%1 · geändert %2</translation>
    </message>
    <message>
        <source>Untitled</source>
        <translation>Ohne Titel</translation>
    </message>
    <message>
        <source>Not saved: %1</source>
        <translation>Nicht gespeichert: %1</translation>
    </message>
    <message>
        <source>Work left unsaved</source>
        <translation>Ungespeicherte Arbeit</translation>
    </message>
    <message>
        <source>Sallow stopped before this was saved. Open it to go on where you were.</source>
        <translation>Sallow wurde beendet, bevor dies gespeichert war. Öffnen Sie es, um dort weiterzumachen.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>Throw away</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>“%1” is open as it was %2. It is not saved yet.</source>
        <translation>„%1“ ist offen, wie es %2 war. Es ist noch nicht gespeichert.</translation>
    </message>
    <message>
        <source>Save the arrangement</source>
        <translation>Das Arrangement speichern</translation>
    </message>
    <message>
        <source>Arrangements (*.sallow)</source>
        <translation>Arrangements (*.sallow)</translation>
    </message>
    <message>
        <source>“%1” is open in another window: choose another name.</source>
        <translation>„%1“ ist in einem anderen Fenster offen: Wählen Sie einen anderen Namen.</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Gespeichert: %1</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Ungespeicherte Änderungen</translation>
    </message>
    <message>
        <source>Keep the changes to “%1”?</source>
        <translation>Die Änderungen an „%1“ behalten?</translation>
    </message>
    <message>
        <source>Export the arrangement</source>
        <translation>Das Arrangement exportieren</translation>
    </message>
    <message>
        <source>Sheet (*.pdf *.svg *.png);;Sound (*.wav *.flac *.ogg);;Music for other programs (*.musicxml *.mxl *.abc);;MIDI (*.mid);;Arrangement as data (*.plan.json)</source>
        <translation>Blatt (*.pdf *.svg *.png);;Klang (*.wav *.flac *.ogg);;Noten für andere Programme (*.musicxml *.mxl *.abc);;MIDI (*.mid);;Arrangement als Daten (*.plan.json)</translation>
    </message>
    <message>
        <source>Exported: %1</source>
        <translation>Exportiert: %1</translation>
    </message>
    <message>
        <source>Export levels</source>
        <translation>Niveaus exportieren</translation>
    </message>
    <message>
        <source>Level &amp;%1</source>
        <translation>Niveau &amp;%1</translation>
    </message>
    <message>
        <source>, levels</source>
        <translation>, Niveaus</translation>
    </message>
    <message>
        <source>Sheets (*.pdf *.svg *.png)</source>
        <translation>Blätter (*.pdf *.svg *.png)</translation>
    </message>
    <message>
        <source>Export the handout</source>
        <translation>Das Arbeitsblatt exportieren</translation>
    </message>
    <message>
        <source>Pages (*.pdf *.svg *.png)</source>
        <translation>Seiten (*.pdf *.svg *.png)</translation>
    </message>
    <message>
        <source>The sound device is there again.</source>
        <translation>Das Klanggerät ist wieder da.</translation>
    </message>
    <message>
        <source>The sound device is gone. Strings still light; connect it again and it is heard again, or save a sound file.</source>
        <translation>Das Klanggerät ist weg. Die Saiten leuchten weiter; schließen Sie es wieder an, dann ist es wieder zu hören, oder speichern Sie eine Klangdatei.</translation>
    </message>
    <message>
        <source>%1 is gone; it is played on again when it is back.</source>
        <translation>%1 ist weg; sobald es zurück ist, wird wieder darauf gespielt.</translation>
    </message>
    <message>
        <source>Sound font</source>
        <translation>Klangdatei</translation>
    </message>
    <message>
        <source>Sound fonts (*.sf2)</source>
        <translation>Klangdateien (*.sf2)</translation>
    </message>
    <message>
        <source>it reads .abc .musicxml .xml .mxl .mid .sallow</source>
        <translation>gelesen werden .abc .musicxml .xml .mxl .mid .sallow</translation>
    </message>
    <message>
        <source>standard input</source>
        <translation>Standardeingabe</translation>
    </message>
    <message>
        <source>a saved arrangement has its own harp, hand and key, so leave these options out (--level is allowed)</source>
        <translation>ein gespeichertes Arrangement hat eigene Harfe, Hand und Tonart; lassen Sie diese Optionen weg (--level ist erlaubt)</translation>
    </message>
    <message>
        <source>changed: </source>
        <translation>geändert: </translation>
    </message>
    <message>
        <source>there is no language &quot;{}&quot;; choose one of {}</source>
        <translation>die Sprache „{}“ gibt es nicht; wählen Sie aus {}</translation>
    </message>
    <message>
        <source>Lang&amp;uage</source>
        <translation>Sprac&amp;he</translation>
    </message>
    <message>
        <source>The language changes when Sallow is started again.</source>
        <translation>Die Sprache wechselt, wenn Sallow neu gestartet wird.</translation>
    </message>
    <message>
        <source>As the s&amp;ystem</source>
        <translation>&amp;Wie das System</translation>
    </message>
    <message>
        <source>{}: the workbench takes files only, all else is chosen in its window; for options use sallow arrange, see sallow --help</source>
        <translation>{}: die Werkbank nimmt nur Dateien an, alles andere wird im Fenster gewählt; für Optionen dient sallow arrange, siehe sallow --help</translation>
    </message>
    <message>
        <source>something went wrong inside Sallow ({}); no file was changed by halves</source>
        <translation>in Sallow ist etwas schiefgegangen ({}); keine Datei wurde halb geändert</translation>
    </message>
    <message>
        <source>note: to get round a snag: </source>
        <translation>Hinweis: um eine Hürde zu umgehen: </translation>
    </message>
    <message>
        <source>this would help (--mend </source>
        <translation>dies würde helfen (--mend </translation>
    </message>
    <message>
        <source>this would replace a file that is being read: give the output another name</source>
        <translation>dies würde eine gelesene Datei ersetzen: geben Sie der Ausgabe einen anderen Namen</translation>
    </message>
    <message>
        <source> is saved as </source>
        <translation> wird gespeichert als </translation>
    </message>
    <message>
        <source>, because another file of this call has that name
</source>
        <translation>, weil eine andere Datei dieses Aufrufs so heißt
</translation>
    </message>
    <message>
        <source>it writes .pdf .svg .png .musicxml .mxl .abc .mid .wav .flac .ogg .txt .html .plan.json .sallow</source>
        <translation>geschrieben werden .pdf .svg .png .musicxml .mxl .abc .mid .wav .flac .ogg .txt .html .plan.json .sallow</translation>
    </message>
    <message>
        <source>pages are written as .pdf, .svg or .png</source>
        <translation>Seiten werden als .pdf, .svg oder .png geschrieben</translation>
    </message>
    <message>
        <source>&amp;Yourself  (%1)</source>
        <translation>&amp;Sie selbst  (%1)</translation>
    </message>
    <message>
        <source>&amp;Add a pupil…</source>
        <translation>Schüler &amp;hinzufügen…</translation>
    </message>
    <message>
        <source>&amp;Give %1 what is chosen now</source>
        <translation>%1 das jetzt Gewählte &amp;geben</translation>
    </message>
    <message>
        <source>&amp;Remove %1…</source>
        <translation>%1 &amp;entfernen…</translation>
    </message>
    <message>
        <source>&amp;Name the pupil on papers</source>
        <translation>&amp;Namen auf Blätter drucken</translation>
    </message>
    <message>
        <source>for yourself</source>
        <translation>für Sie selbst</translation>
    </message>
    <message>
        <source>for %1</source>
        <translation>für %1</translation>
    </message>
    <message>
        <source>Add a pupil</source>
        <translation>Schüler hinzufügen</translation>
    </message>
    <message>
        <source>Name of the pupil, for whom you have chosen
%1.
The list stays on this machine.</source>
        <translation>Name der Schülerin oder des Schülers, für den Sie dies gewählt haben:
%1.
Die Liste bleibt auf diesem Rechner.</translation>
    </message>
    <message>
        <source>%1 is in the list of pupils.</source>
        <translation>%1 ist in der Schülerliste.</translation>
    </message>
    <message>
        <source>%1 has %2 from now on.</source>
        <translation>%1 hat ab jetzt %2.</translation>
    </message>
    <message>
        <source>Remove a pupil</source>
        <translation>Schüler entfernen</translation>
    </message>
    <message>
        <source>Take %1 out of the list? Saved arrangements stay as they are.</source>
        <translation>%1 aus der Liste nehmen? Gespeicherte Arrangements bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source> of </source>
        <translation> von </translation>
    </message>
    <message>
        <source> tunes
</source>
        <translation> Stücken
</translation>
    </message>
    <message>
        <source> s (Ctrl-C stops it)</source>
        <translation> s (Strg-C hält an)</translation>
    </message>
    <message>
        <source>, for %1</source>
        <translation>, für %1</translation>
    </message>
    <message>
        <source>Clear this list</source>
        <translation>Diese Liste leeren</translation>
    </message>
    <message>
        <source>taken back: %1</source>
        <translation>zurückgenommen: %1</translation>
    </message>
    <message>
        <source>“%1” cannot be changed: the file, its folder or the disk is read-only.</source>
        <translation>„%1“ kann nicht geändert werden: Die Datei, ihr Ordner oder der Datenträger ist schreibgeschützt.</translation>
    </message>
    <message>
        <source>“%1” cannot be saved: the disk is full. Make room and try again, or save it on another disk.</source>
        <translation>„%1“ kann nicht gespeichert werden: Der Datenträger ist voll. Schaffen Sie Platz, und versuchen Sie es noch einmal, oder speichern Sie anderswo.</translation>
    </message>
    <message>
        <source>“%1” cannot be saved: its folder is not there. If it is on a disk that was taken out, put it back and try again, or save it elsewhere.</source>
        <translation>„%1“ kann nicht gespeichert werden: Der Ordner ist nicht da. Liegt er auf einem entfernten Datenträger, schließen Sie diesen wieder an, und versuchen Sie es noch einmal, oder speichern Sie anderswo.</translation>
    </message>
    <message>
        <source>“%1” cannot be saved (%2).</source>
        <translation>„%1“ kann nicht gespeichert werden (%2).</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>Nicht gespeichert</translation>
    </message>
    <message>
        <source>Your work is still here, and what was saved before is as it was.</source>
        <translation>Ihre Arbeit ist noch hier, und was vorher gespeichert war, ist unverändert.</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation>Speichern unter…</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Noch einmal versuchen</translation>
    </message>
    <message>
        <source>Changed by another program</source>
        <translation>Von einem anderen Programm geändert</translation>
    </message>
    <message>
        <source>“%1” was changed by another program after you opened it.</source>
        <translation>„%1“ wurde von einem anderen Programm geändert, nachdem Sie es geöffnet hatten.</translation>
    </message>
    <message>
        <source>If you replace it, the other version is kept under “Go back to…”.</source>
        <translation>Wenn Sie es ersetzen, bleibt die andere Version unter „Zurückgehen zu…“ erhalten.</translation>
    </message>
    <message>
        <source>Replace</source>
        <translation>Ersetzen</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is the id of one of Sallow's own harps: give yours another</source>
        <translation>„{}“ ist die Kennung einer Harfe von Sallow: geben Sie Ihrer eine andere</translation>
    </message>
    <message>
        <source>it is not there</source>
        <translation>sie ist nicht da</translation>
    </message>
    <message>
        <source>it cannot be read</source>
        <translation>sie ist nicht lesbar</translation>
    </message>
    <message>
        <source>the tune alone</source>
        <translation>nur die Melodie</translation>
    </message>
    <message>
        <source>right hand</source>
        <translation>rechte Hand</translation>
    </message>
    <message>
        <source>left hand</source>
        <translation>linke Hand</translation>
    </message>
    <message>
        <source>both hands</source>
        <translation>beide Hände</translation>
    </message>
    <message>
        <source> to </source>
        <comment>tempo</comment>
        <translation> bis </translation>
    </message>
    <message>
        <source>, bars </source>
        <translation>, Takte </translation>
    </message>
    <message>
        <source>%1 to %2 % by %3, each %4 times</source>
        <translation>%1 bis %2 % um %3, je %4-mal</translation>
    </message>
    <message>
        <source>Stopped. What was written whole stays; the rest is not there.</source>
        <translation>Angehalten. Was vollständig geschrieben ist, bleibt; der Rest fehlt.</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>Exportieren</translation>
    </message>
    <message>
        <source>Export as PNG</source>
        <translation>Als PNG exportieren</translation>
    </message>
    <message>
        <source>&amp;All pages in one picture</source>
        <translation>&amp;Alle Seiten in einem Bild</translation>
    </message>
    <message>
        <source>150 is enough for a screen, 300 for most printers</source>
        <translation>150 genügen für einen Bildschirm, 300 für die meisten Drucker</translation>
    </message>
    <message>
        <source>One below the other, 150 dots an inch</source>
        <translation>Untereinander, 150 Punkte je Zoll</translation>
    </message>
    <message>
        <source>&amp;Dots an inch</source>
        <translation>&amp;Punkte je Zoll</translation>
    </message>
    <message>
        <source>Makes “%1”.</source>
        <translation>Ergibt „%1“.</translation>
    </message>
    <message>
        <source>Makes a file a page: “%1” to “%2”.</source>
        <translation>Ergibt eine Datei je Seite: „%1“ bis „%2“.</translation>
    </message>
    <message>
        <source>Already there and replaced: %1.</source>
        <translation>Schon vorhanden und ersetzt: %1.</translation>
    </message>
    <message>
        <source>Save sound files</source>
        <translation>Klangdateien speichern</translation>
    </message>
    <message>
        <source>Sound (*%1)</source>
        <translation>Klang (*%1)</translation>
    </message>
    <message>
        <source>Saved: four files beside %1</source>
        <translation>Gespeichert: vier Dateien neben %1</translation>
    </message>
    <message>
        <source>{}; write 25% to 150%, such as 60%</source>
        <translation>{}; schreiben Sie 25% bis 150%, etwa 60%</translation>
    </message>
    <message>
        <source>{}; write FIRST-LAST, such as 5-8, or one bar</source>
        <translation>{}; schreiben Sie VON-BIS, etwa 5-8, oder einen Takt</translation>
    </message>
    <message>
        <source>{}; write FROM-TO/BY or FROM-TO/BYxTIMES, such as 60-100/5x2, with a tempo of 25 to 150, a step of 1 to 50 and 1 to 20 times</source>
        <translation>{}; schreiben Sie VON-BIS/UM oder VON-BIS/UMxMALE, etwa 60-100/5x2, mit einem Tempo von 25 bis 150, einer Stufe von 1 bis 50 und 1 bis 20 Malen</translation>
    </message>
    <message>
        <source>; &quot;{}&quot; has no such bars</source>
        <translation>; „{}“ hat diese Takte nicht</translation>
    </message>
    <message>
        <source>Manner %1, level %2</source>
        <translation>Stil %1, Niveau %2</translation>
    </message>
    <message>
        <source>Save what is remembered of your taste</source>
        <translation>Speichern, was von Ihrem Geschmack gemerkt ist</translation>
    </message>
    <message>
        <source>JSON (*.json)</source>
        <translation>JSON (*.json)</translation>
    </message>
    <message>
        <source>there is no screen for the workbench; use a command that needs no window, such as: sallow arrange TUNE.abc -o TUNE.pdf</source>
        <translation>für die Werkbank ist kein Bildschirm da; verwenden Sie einen Befehl ohne Fenster, etwa: sallow arrange STÜCK.abc -o STÜCK.pdf</translation>
    </message>
    <message>
        <source>%1 is saved in your pattern book.</source>
        <translation>%1 ist in Ihrer Mustersammlung gespeichert.</translation>
    </message>
    <message>
        <source>Saved among your harps: %1</source>
        <translation>Unter Ihren Harfen gespeichert: %1</translation>
    </message>
    <message>
        <source>{}; write BAR=PATTERN or BAR.BEAT=PATTERN, such as 5.3=1-5-10</source>
        <translation>{}; schreiben Sie TAKT=MUSTER oder TAKT.ZÄHLZEIT=MUSTER, etwa 5.3=1-5-10</translation>
    </message>
    <message>
        <source>{}; write SLIDER=PERCENT from 0 to {}, such as ease=150</source>
        <translation>{}; schreiben Sie REGLER=PROZENT von 0 bis {}, etwa ease=150</translation>
    </message>
    <message>
        <source>there is no chord at that bar and beat</source>
        <translation>in diesem Takt auf dieser Zählzeit ist kein Akkord</translation>
    </message>
    <message>
        <source>A set is made of tunes of one tunebook. Open a tunebook with two or more tunes first.</source>
        <translation>Ein Set besteht aus Stücken einer Sammlung. Öffnen Sie erst eine Sammlung mit zwei oder mehr Stücken.</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Fertig: %1</translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation>Angehalten.</translation>
    </message>
    <message>
        <source>The set could not be made.</source>
        <translation>Das Set konnte nicht gemacht werden.</translation>
    </message>
    <message>
        <source>The list of your tunes was damaged (%1), so your tunes are read again.</source>
        <translation>Die Liste Ihrer Stücke war beschädigt (%1); Ihre Stücke werden daher neu gelesen.</translation>
    </message>
    <message>
        <source>PNG: a file a page, numbered where there are several, in this many dots an inch, 50 to 600; without it all pages are one picture at 150</source>
        <translation>PNG: eine Datei je Seite, nummeriert, wo es mehrere sind, mit so vielen Punkten je Zoll, 50 bis 600; ohne sie sind alle Seiten ein Bild mit 150</translation>
    </message>
    <message>
        <source>it is for .png, and none is asked for</source>
        <translation>sie gilt für .png, und keine ist verlangt</translation>
    </message>
    <message>
        <source>normal, large or huge</source>
        <translation>normal, large oder huge</translation>
    </message>
    <message>
        <source>notes on C strings red and on F strings blue, with their letters</source>
        <translation>Noten auf C-Saiten rot und auf F-Saiten blau, mit ihren Buchstaben</translation>
    </message>
    <message>
        <source>the letter of each note in its head</source>
        <translation>den Buchstaben jeder Note in ihrem Kopf</translation>
    </message>
    <message>
        <source>under the staff, the strings of the left hand one after another, for players who do not read music</source>
        <translation>unter dem System die Saiten der linken Hand nacheinander, für alle, die keine Noten lesen</translation>
    </message>
    <message>
        <source>brackets over what is placed together: all, none, or helpful, where a shape is new, crosses or jumps</source>
        <translation>Klammern über dem, was zusammen gesetzt wird: all (alle), none (keine) oder helpful, wo ein Griff neu ist, unter- oder übersetzt oder springt</translation>
    </message>
    <message>
        <source>tunes of a set, such as 1,3,2, in the keys that need the fewest lever flips between them; pages, sound and MIDI go into one file</source>
        <translation>Stücke eines Sets, etwa 1,3,2, in den Tonarten mit den wenigsten Klappenwechseln dazwischen; Seiten, Klang und MIDI kommen in eine Datei</translation>
    </message>
    <message>
        <source>stopped; what is saved is whole</source>
        <translation>angehalten; was gespeichert ist, ist vollständig</translation>
    </message>
    <message>
        <source>note: before &quot;{}&quot;: {}</source>
        <translation>Hinweis: vor „{}“: {}</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>Klang</translation>
    </message>
    <message>
        <source>bars of the tune's last phrase before it: 2, 4 or none</source>
        <translation>Takte der letzten Phrase vor dem Stück: 2, 4 oder none (keine)</translation>
    </message>
    <message>
        <source>bars of the tune's last phrase after it: 2, 4 or none</source>
        <translation>Takte der letzten Phrase nach dem Stück: 2, 4 oder none (keine)</translation>
    </message>
    <message>
        <source>how the tune goes each time through, such as bare,plain,fuller: bare, plain, fuller, high (an octave higher), low, back (as at first); or twice, three, four, five for a form of so many times, once for none</source>
        <translation>wie das Stück in jedem Durchgang gespielt wird, etwa bare,plain,fuller: bare (schlicht), plain (einfach), fuller (voller), high (eine Oktave höher), low (tiefer), back (wie am Anfang); oder twice, three, four, five für eine Form mit so vielen Durchgängen, once für keine</translation>
    </message>
    <message>
        <source>a tune is played {} times at most</source>
        <translation>ein Stück wird höchstens {}-mal gespielt</translation>
    </message>
</context>
<context>
    <name>Qt</name>
    <message>
        <source>OK</source>
        <translation>OK</translation>
    </message>
    <message>
        <source>&amp;OK</source>
        <translation>&amp;OK</translation>
    </message>
    <message>
        <source>&amp;Yes</source>
        <translation>&amp;Ja</translation>
    </message>
    <message>
        <source>&amp;No</source>
        <translation>&amp;Nein</translation>
    </message>
    <message>
        <source>Retry</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Discard</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Don't Save</source>
        <translation>Nicht speichern</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>Apply</source>
        <translation>Anwenden</translation>
    </message>
    <message>
        <source>Reset</source>
        <translation>Zurücksetzen</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>&amp;Ausschneiden</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation>&amp;Einfügen</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Select All</source>
        <translation>Alles auswählen</translation>
    </message>
    <message>
        <source>&amp;Select All</source>
        <translation>&amp;Alles auswählen</translation>
    </message>
    <message>
        <source>&amp;Step up</source>
        <translation>&amp;Erhöhen</translation>
    </message>
    <message>
        <source>Step &amp;down</source>
        <translation>&amp;Verringern</translation>
    </message>
    <message>
        <source>Copy &amp;Link Location</source>
        <translation>&amp;Linkadresse kopieren</translation>
    </message>
    <message>
        <source>Look in:</source>
        <translation>Suchen in:</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Forward</source>
        <translation>Vorwärts</translation>
    </message>
    <message>
        <source>Go forward</source>
        <translation>Vorwärtsgehen</translation>
    </message>
    <message>
        <source>Parent Directory</source>
        <translation>Übergeordneter Ordner</translation>
    </message>
    <message>
        <source>Go to the parent directory</source>
        <translation>Zum übergeordneten Ordner</translation>
    </message>
    <message>
        <source>Create New Folder</source>
        <translation>Neuen Ordner anlegen</translation>
    </message>
    <message>
        <source>Create a New Folder</source>
        <translation>Einen neuen Ordner anlegen</translation>
    </message>
    <message>
        <source>List View</source>
        <translation>Liste</translation>
    </message>
    <message>
        <source>Change to list view mode</source>
        <translation>Als Liste zeigen</translation>
    </message>
    <message>
        <source>Detail View</source>
        <translation>Einzelheiten</translation>
    </message>
    <message>
        <source>Change to detail view mode</source>
        <translation>Mit Einzelheiten zeigen</translation>
    </message>
    <message>
        <source>Files of type:</source>
        <translation>Dateityp:</translation>
    </message>
    <message>
        <source>Directory:</source>
        <translation>Ordner:</translation>
    </message>
    <message>
        <source>File &amp;name:</source>
        <translation>Datei&amp;name:</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>Ö&amp;ffnen</translation>
    </message>
    <message>
        <source>&amp;Choose</source>
        <translation>&amp;Auswählen</translation>
    </message>
    <message>
        <source>&amp;Rename</source>
        <translation>&amp;Umbenennen</translation>
    </message>
    <message>
        <source>&amp;Delete</source>
        <translation>&amp;Löschen</translation>
    </message>
    <message>
        <source>Show &amp;hidden files</source>
        <translation>&amp;Verborgene Dateien zeigen</translation>
    </message>
    <message>
        <source>&amp;New Folder</source>
        <translation>&amp;Neuer Ordner</translation>
    </message>
    <message>
        <source>New Folder</source>
        <translation>Neuer Ordner</translation>
    </message>
    <message>
        <source>All Files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>%1 already exists.
Do you want to replace it?</source>
        <translation>%1 gibt es schon.
Soll es ersetzt werden?</translation>
    </message>
    <message>
        <source>%1
File not found.
Please verify the correct file name was given.</source>
        <translation>%1
Die Datei gibt es nicht.
Prüfen Sie den Dateinamen.</translation>
    </message>
    <message>
        <source>%1
Directory not found.
Please verify the correct directory name was given.</source>
        <translation>%1
Den Ordner gibt es nicht.
Prüfen Sie den Namen.</translation>
    </message>
    <message>
        <source>Save As</source>
        <translation>Speichern unter</translation>
    </message>
    <message>
        <source>Computer</source>
        <translation>Computer</translation>
    </message>
    <message>
        <source>Drive</source>
        <translation>Laufwerk</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Ordner</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Typ</translation>
    </message>
    <message>
        <source>Date Modified</source>
        <translation>Geändert am</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>&amp;Print</source>
        <translation>&amp;Drucken</translation>
    </message>
    <message>
        <source>Printer</source>
        <translation>Drucker</translation>
    </message>
    <message>
        <source>&amp;Name:</source>
        <translation>&amp;Name:</translation>
    </message>
    <message>
        <source>P&amp;roperties</source>
        <translation>&amp;Eigenschaften</translation>
    </message>
    <message>
        <source>Location:</source>
        <translation>Ort:</translation>
    </message>
    <message>
        <source>Preview</source>
        <translation>Vorschau</translation>
    </message>
    <message>
        <source>Type:</source>
        <translation>Typ:</translation>
    </message>
    <message>
        <source>Output &amp;file:</source>
        <translation>Ausgabe&amp;datei:</translation>
    </message>
    <message>
        <source>Print range</source>
        <translation>Druckbereich</translation>
    </message>
    <message>
        <source>Print all</source>
        <translation>Alles drucken</translation>
    </message>
    <message>
        <source>Pages from</source>
        <translation>Seiten von</translation>
    </message>
    <message>
        <source>Selection</source>
        <translation>Auswahl</translation>
    </message>
    <message>
        <source>Current Page</source>
        <translation>Diese Seite</translation>
    </message>
    <message>
        <source>Output Settings</source>
        <translation>Ausgabe</translation>
    </message>
    <message>
        <source>Copies:</source>
        <translation>Exemplare:</translation>
    </message>
    <message>
        <source>Copies</source>
        <translation>Exemplare</translation>
    </message>
    <message>
        <source>Collate</source>
        <translation>Sortieren</translation>
    </message>
    <message>
        <source>Reverse</source>
        <translation>Umgekehrt</translation>
    </message>
    <message>
        <source>Options</source>
        <translation>Optionen</translation>
    </message>
    <message>
        <source>Color Mode</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>Color</source>
        <translation>Farbig</translation>
    </message>
    <message>
        <source>Grayscale</source>
        <translation>Graustufen</translation>
    </message>
    <message>
        <source>Duplex Printing</source>
        <translation>Beidseitig</translation>
    </message>
    <message>
        <source>Long side</source>
        <translation>Lange Seite</translation>
    </message>
    <message>
        <source>Short side</source>
        <translation>Kurze Seite</translation>
    </message>
    <message>
        <source>&amp;Options &gt;&gt;</source>
        <translation>&amp;Optionen &gt;&gt;</translation>
    </message>
    <message>
        <source>&amp;Options &lt;&lt;</source>
        <translation>&amp;Optionen &lt;&lt;</translation>
    </message>
    <message>
        <source>Print to File (PDF)</source>
        <translation>In Datei drucken (PDF)</translation>
    </message>
    <message>
        <source>Ctrl</source>
        <translation>Strg</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Umschalt</translation>
    </message>
    <message>
        <source>Alt</source>
        <translation>Alt</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Entf</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>Home</source>
        <translation>Pos1</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>PgUp</source>
        <translation>Bild auf</translation>
    </message>
    <message>
        <source>PgDown</source>
        <translation>Bild ab</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Auf</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Ab</translation>
    </message>
    <message>
        <source>Backspace</source>
        <translation>Rücktaste</translation>
    </message>
    <message>
        <source>Ins</source>
        <translation>Einfg</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
</context>
</TS>
