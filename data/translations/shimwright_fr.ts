<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>QLabel</name>
    <message>
        <source>demonstration values</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bench</name>
    <message>
        <source>chassis %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>VIN ends %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>within</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too small</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too large</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mixed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deviation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unproven</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not required</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>snug</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in order: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spot %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right as it stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>completed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>aborted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left with reason: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not required: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in %1 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibration overdue since %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibration due %1, %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No open job waits for a shim of this tray.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One open job may want a shim of this tray.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 open jobs may want a shim of this tray.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None left of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One left of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tray %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No verified backup is known. Make one under Workshop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last verified backup is %1 days old. Look under Workshop what keeps it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>less reference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shim wanted, mm (95 %)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 from the border to %2. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The places differ by %1, allowed %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>minus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, no shim of the tray</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With %1 it would be %2 instead of %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tilted: the places differ too much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This sum cannot be</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outside the tray</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A size is missing in the tray</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the border of two sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>still open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>parked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The odometer stands lower than before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job %1 noted %2. Read it once more; another instrument may be fitted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second pack in %1 km.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for a cause first: seals, levers, pivot, flywheel, control unit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pack renewed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>large</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>small</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shims %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>upper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>final float %1 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>float %1 mm so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>teach-in at attempt %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job %1 of this vehicle is not finished.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it up on the bench if this is the same work.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limits %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> If the float stays: fit %1, expected %2 ± %3 mm (95 %), %4 to be inside at every spot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spec sheet and %1 pairs of this workshop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spec sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 pairs of this workshop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> 1.00 mm of shim moves this float %1 ± %2 mm (95 %, %3).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zero was lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept, not judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A question first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 as found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, for information</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shim stays</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seat the %1 again, then measure once more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure each spot once more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the pack off and fit %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the pack off, fit %1, one step, and measure again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the limit: you decide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No shim of the tray cures this</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set zero and measure again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept: it is compared with the float after the work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No shim is known under this disc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answer the question first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The trials still say otherwise; it was seated again and the float stayed. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spread %1, allowed %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; the disc stands highest at %1°, tilt %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>: no tilt.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> Each spot ± %1 mm (95 %).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lifted is the higher reading while the dial runs forward.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count whole turns: one turn of %1 is %2 mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, trial %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>less than 1 in 100 from the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ruled out by trial %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ruled out by trials %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in the tray</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none left in the tray</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in the tray</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About %1 trials left; from the thickest down it would be %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trial %1 (%2 %3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No seat fits both %1 and %2. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>try the next shim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take the shim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the trials contradict each other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no shim of the tray fits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the places differ too much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the depths cannot be right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a size is missing in the tray</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>between two shims: choose one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a question is open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set zero again and measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measure again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seat it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change the shim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the limit: decide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for information</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the counts differ</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not accepted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>answered “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> · parked today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> · parked for 1 day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> · parked for %1 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>waits for: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, was due %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, due %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>once more after the pause: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unit %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not completed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chassis ends %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing left to do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This job cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” came in, but this step asks for no value.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>large bearing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>small bearing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lower float</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>upper float</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parked, waiting for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken up again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assembly %1 begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sealed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Added after sealing: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 × %2, number %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lower disc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>upper disc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>better than 99 in 100</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>less than 1 in 100</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in 100</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too small and too large</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not equal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dial gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Micrometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Torque wrench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Multimeter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressure gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressings of this pack so far: %1; the spec sheet allows %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To do again: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Renewed again: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No earlier job on this gearbox type has words here: write them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 for %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take plain letters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>cli</name>
    <message>
        <source>This option is given twice: give it once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This command has no such option: see its --help.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This option needs a value after it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This command takes another number of words: see its --help.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This command needs this option: see its --help.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A whole number from {0} to {1} is needed here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This store holds jobs already: name a new file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file cannot be read: look whether it is there and may be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file is larger than 64 MiB: it is none of ours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file broke off while it was read: look at the disk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is no paper size here: write a4 or letter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file cannot be written: look at the folder and the space on the disk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is no kind of instrument: see the list in docs/formats/script.md.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tray has at most {0} shims, this one has {1}: shorten it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is no script: its format must be “shimwright.script”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This script was made for a newer version of the program: bring the program up to date.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is not among the people of this script: add the person.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is not among the instruments of this script: add the instrument.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is no time: write it as in 2026-11-24T10:58+00:00.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” cannot be expected: write accepted or refused.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A text is expected here: put it in quotes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A spot is a number from 1 to 9.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is not known here: see docs/formats/script.md.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is no side: write lower or upper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A command needs its name here, in quotes: see docs/formats/script.md.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no command “{0}”: see the list in docs/formats/script.md.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such sheet; there are {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This store can only be looked at.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no job of this number in the store: find it by its vehicle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Several jobs have this number: name one by its id, which “find” shows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One thing at a time, and an end needs its day: see its --help.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This person is not in the workshop&apos;s list: write the name or the initials.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The PIN is read from standard input: give it there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This store is in order, so no backup was put in its place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no whole backup of this store in {0}: name another folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name a signed file, or a store and a job: see its --help.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>job</name>
    <message>
        <source>No shim is named: look at the numbers and choose one yourself, with reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is the best the feel can tell ({1} in 100): more trials of the same shims would not decide it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} fits ({1} in 100), but nothing thicker was felt tight: a thicker one may go in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is the one: {1} in 100 by the trials.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try {0}: about {1} trials left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dial ran backwards. If it does so in this set-up, confirm; else set it up anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These floats may not be millimetres ({0}). Enter them again in mm, or confirm that they are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit {0}: expected float {1} ± {2} mm (95 %), {3} in 100 to be inside the limits at every spot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} mm lies on the border between {1} and {2}: measure again, or choose one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit {0}, one step, and measure again: how much a shim moves this float is not known well enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} would be the one, but it is not in the tray: put one in, or take another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept, but not judged: no shim is chosen for the {0}. Choose it, or measure the one taken out, then measure once more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Even the thinnest shim is too thick. Look at seating, lever and parts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Even the thickest shim is too thin. Look at seating, lever and parts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two trials contradict each other. Seat the bearing and try both shims again, or take back the wrong one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The depths differ by {0} mm, allowed {1} mm: the bearing or the straightedge is tilted. Seat it and measure again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} mm of shim cannot be: look for a wrong sign, constant or reference.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} mm lies outside the tray. Measure again, then look at the parts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} mm is wanted; {1} is the nearest and lies far from it. Choose with reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} mm is wanted and no shim of the tray is near it. Choose with reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit {0}: {1} mm is wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floats of both signs: zero was lost. Set the dial to zero and measure again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure each spot once more: the runs so far do not decide it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trials and float disagree: both cannot be right with {0} fitted. Seat the {1} again and measure once more before the pack comes off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The spots differ by {0} mm, allowed {1} mm: a seat or a tilt, no shim cures it. Seat the {2} again and measure once more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free within {0} to {1} mm at every spot: {2} stays.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the limit, and more runs will not decide it: change the shim, or accept with reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Float as found, for information.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No shim of the tray brings this disc within its limits. Look at seating and parts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An entry of the kind {0}, version {1}, was written by a newer program; open this job with the newer program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A stored entry is not readable any more; check the store.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A field is missing in this stored entry; check the store.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A field stands twice in this stored entry; check the store.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A field of this stored entry is not known; check the store.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A value in this stored entry is not of its kind; check the store.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is at the bench: say who works first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This job is open already: begin another for another vehicle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no job yet: open one first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This job is signed and closed: nothing in it changes any more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This job is parked, waiting for {0}: take it up first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The job was changed after this signature: the technician signs again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say in a few words what is not in order.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is none of the answers of “{1}”: choose one of those shown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is written here yet: write it, or leave the step open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is no part of this step: choose one of those listed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The number of parts must be from 1 to 1000.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is still missing from the list of what was renewed: add it, or go on with a reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This photo cannot be kept: it must be a picture of at most 20 MB.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” asks nothing that could be confirmed so: look at what it asks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are spots 1 to {0}: choose one of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The method of this gearbox has no float as found: leave “{0}” out, not measured, because the spec sheet does not allow it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zero came back at {0} mm, more than a division off: discard this run, set zero and lift again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is measured here yet: there is nothing to measure again, begin with spot 1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The job needs a number: give it one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is no date: write year-month-day, as in 2019-04-30.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not yet: {0} is not accepted. Answer it, or go on with a reason there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The technician signs first: there is nothing to check before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The checker is a second person: hand over, or go on with a reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The technician&apos;s signature cannot be left out: sign the job.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is required on this sheet: answer it, or go on with a reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The note is empty: write it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The job sheet has no such step: look at its list of steps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say what the job waits for, so that the next person knows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This job is not parked: go on with its next step.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say which other person takes the job over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This assembly has not begun yet: the shim can be changed at its own step.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such entry, or it was taken back already: look at the job&apos;s list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This entry cannot be taken back: take back the answer or reading that is wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entries of this assembly stand on it: take those back first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A stamp has a sign: read plus or minus on the pack and enter it with the number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” asks for no such reading, or for it only once: look at its fields.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was entered: enter a reading, or leave the step open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A completed teach-in has a value after it: read it and enter it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say why the teach-in broke off, with its code if it shows one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tray of the {0} has no shim {1}: choose one of its sizes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The stamp on the new pack is needed: 0 is a value, blank is not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depths at {0} places are needed, {1} are there: measure the others too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is not the shim that was advised: say why it is taken, or choose the advised one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is not asked on this gearbox: its spec sheet finds the shim another way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” comes first: answer it, or go on with a reason there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is answered with {1}: answer it so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A reason is needed here: say it in a few words.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say which instrument read this: a {0} of the workshop&apos;s list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is a {1}, and this is read with a {2}: choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} mm was read where about {1} mm was expected: a whole turn of the dial ({2} mm) may have been missed. Look at the turn counter and measure again, or confirm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shim taken out measured {0} mm, this one has {1} mm: more than one step apart. Look at seating and parts again, or confirm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} mm is not the shim chosen ({1}, {2} mm). Measure the shim that lies on this bearing&apos;s place again, or confirm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The stamp was read as {0} mm when the pack was unpacked and is {1} mm here. Read it on the pack again, or confirm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job {0} left pack {1} in this vehicle; this one is {2}. Its floats as found are no wear of that pack. Read the serial again, or confirm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job {0} left this disc with {1} mm, now it has {2} mm: wear only adds. It may be another pack. Look at its serial, or confirm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both discs are off, opposite ways: the large and the small shim may lie in each other&apos;s place ({0} and {1} mm). Look at both when the pack is off, or confirm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} was typed without a decimal mark: was {1} meant? Enter it again, or confirm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This job is sealed: it takes addenda only, each signed by who writes it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was signed has no digest of its own: report this fault.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A job is sealed by those who signed it: the technician, then the checker.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This job is not sealed: enter it in the job itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The addendum is empty: write what is to be added.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}”: sign, or leave it out with a reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is a hold point: answer it, or go on with a reason there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” was not done: the record says so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is not as it should be: answer it anew, or say why it stays.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” asks something: say yes to it, or enter it anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” may have moved while the job lay still: prove it again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>json</name>
    <message>
        <source>This is nested too deeply to be stored; report this fault.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only whole numbers are stored here, in the smallest unit; report this fault.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This number is too large to be stored exactly; report this fault.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This text is not UTF-8; enter it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A name of a field is not plain ASCII; report this fault.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An object in braces { } has to stand here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This field is not known here; remove it or correct its name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This field stands here twice; remove one of the two.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This field is missing; add it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A text in quotation marks has to stand here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Either true or false has to stand here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A whole number without quotation marks has to stand here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A whole number from {0} to {1} has to stand here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A list in brackets [ ] has to stand here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line {0}, column {1}: lists and objects are nested too deeply; this is not a file of this program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The text has {0} bytes, more than the {1} that are read; this is not a file of this program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line {0}, column {1}: this backslash sequence is not allowed; correct it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line {0}, column {1}: a text is not closed; put the missing quotation mark at its end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line {0}, column {1}: this character is not UTF-8; save the file as UTF-8.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line {0}, column {1}: a number is written wrongly; write it like 12 or -0.5, with a point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line {0}, column {1}: the text ends too early; take a complete copy of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line {0}, column {1}: this does not belong here; correct the text so that it is JSON.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>past</name>
    <message>
        <source>The printer does not take the pages. Look at the printer, or save the record as PDF.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record of job %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the record as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>print</name>
    <message>
        <source>A font built into the program cannot be read; install the program anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record cannot be written here ({0}); choose another folder or make room.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>quantity</name>
    <message>
        <source>This is not a number; type digits with at most one comma or point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The number is not finished; type the missing digits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is entered yet; type a number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are two decimal marks; type only one, and none between thousands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is a space between the digits; type the number without it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This unit does not fit here; leave it out or type one of: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only a whole number fits here; leave out the decimals.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is finer than can be kept; in {0}, type no more decimals than {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The number has to be smaller than {0}; check the decimal mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The number cannot be less than {0}; check the sign.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>record</name>
    <message>
        <source>In order / not in order, because ______________________________________</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Further attempts ____________  ____________</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number ____________________  batch ____________________</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shim taken ____________ mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spot {0}: rest ________ lifted ________ zero after ________</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name ______________________  time ______________  ______________________</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (hold point)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution: {0} {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job ______________</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>DEMONSTRATION VALUES</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vehicle number ______________________________  odometer ______________  gearbox ______________________</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in order: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not required: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>parked, waits for {0}, due {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>parked, waits for {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken up; asked again: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>handed over to {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note at “{0}”: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>large bearing&apos;s shim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>small bearing&apos;s shim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no shim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pack off again, assembly {0} begun, to change: {1}; “{2}”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}”, asked: {1} Confirmed as it stands: “{2}”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, assembly {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} to {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answers; hold points in bold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One other step done or in order.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} other steps done or in order.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The clock had been set back before entry {0}; the order is that of the entries, not of the clock.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Course of the job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}{1} (entered by {2}), taken back by {3}: “{4}”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: {1} ({2})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Values of the spec sheet worked to, nothing judged by them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: {1}{2}, file {3}…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos, kept with the job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: left out by {1}, “{2}”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: accepted by {1}, “{2}”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, assembly {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} disc, assembly {1}, series {2}: trials and float did not agree ({3}). {4}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: not measured, left out by {1}, “{2}”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: not measured, not required: “{2}”, {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deviations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trials against float</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No reason given: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So far: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not in order: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, number {1}, quantity {2} {3}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shim {0} {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depths {0}, reference {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stamp {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spot {0}: rest {1}, lifted {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zero after {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Series {0} begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Confirmed as it stands: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shim {0} chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teach-in, attempt {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} before {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} after {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deviation: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not required: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parked: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handed over to {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assembly {0} begun: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} as found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, seated again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, measured again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, runs 1 to {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for information</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Disc, assembly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spot {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>± (95 %)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instrument, by, time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limits {0} to {1}, spread at most {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Float, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lower {0}; upper {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Float, every run as entered, mm: rest to lifted (zero after)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} disc, {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entry {0} is missing; entry {1} stands in its place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This entry does not follow the one before it; one of the two was changed after it was written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This entry was changed after it was written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clutch pack job record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>erased</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chassis no.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No VIN because</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>VIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>odometer not read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plate, odometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unit {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>serial {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>built {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gearbox</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spec sheet {0}, issue {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>demonstration values</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reference {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Received</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Complaint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Result</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} · page {1} of {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>equal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>attempt {0} of {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>attempt {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>entered again below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (calibration overdue)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assembly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings without a limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch or serial</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By, time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Qty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Renewed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Attempt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>completed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not completed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teach-in, every attempt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} disc free within limits at the {1} assembly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} disc free close to its limit at the {1} assembly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} disc {1} at the {2} assembly, accepted with a reason, below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} disc not free within limits at the {1} assembly: {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} disc measured at the {1} assembly, not judged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Float of the {0} disc not measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>upper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both discs free within limits at the {0} assembly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Large bearing shim {0}, small bearing shim {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Large bearing shim {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No shim on record for the large bearing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Small bearing shim {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No shim on record for the small bearing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teach-in completed, road test passed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teach-in completed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teach-in not done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teach-in not completed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Road test passed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Road test not passed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Road test not done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No deviation.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One deviation, below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} deviations, below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This job was never opened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open job: not finished; next is “{0}”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open job: not finished.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by depth, details below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by depth, measured {0} times, details below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chosen on the gauge trials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chosen on the depths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chosen on the float</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chosen by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} bearing, assembly {1}: shim {2}, in the tray {3} mm, {4}, {5}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chance that it is the best fitting one: {0} %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason: “{0}”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Advice then: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} bearing, assembly {1}: depths {2}; reference {3}; {4}; {5}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stamp on the pack {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no stamp used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bearing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trials, in order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken out of the vehicle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shims, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the shims were found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not sealed:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>draft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not sealed: a draft that may still change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits and values are demonstration values: never work to them on a vehicle; the vehicle maker&apos;s service information and local rules hold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The vehicle maker&apos;s service information and local rules hold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Customer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after the trials {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the depths {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>without trials or depths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} bearing, assembly {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: no shim chosen yet, {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: shim {1}, {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason given: “{0}”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} disc as found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} disc, assembly {1}, series {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: float not judged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: mean float {1} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deviation at “{0}”: “{1}”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not measured: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits and values are demonstration values.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Apr</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jul</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Aug</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Oct</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nov</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dec</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>within</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too small</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too large</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not equal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>snug</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Large</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Small</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Upper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>second</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>third</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fourth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fifth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no. {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Technician</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mixed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}. {1}, {2}, {3}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason: </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed, seal </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Addenda, after the sealed record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shim ________ tight / snug / loose · Shim ________ tight / snug / loose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depths ____________  ____________ mm · reference ____________ mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stamp, with its sign ____________ mm · shim taken ____________ mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Attempts ______ · code and reason of an abort ____________________</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sealed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Addendum: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> · reprint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The PIN was wrong {0} times: try again in {1} seconds; nothing is lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was signed is not in the form this program writes: it was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is no code of a sealed record of this program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This code is not as it was printed: it was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is no seal as it is printed: compare it symbol by symbol.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reprint: printed again after it was sealed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One addendum stands at the end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} addenda stand at the end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sealed {0} as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is no signed record of this program, or its beginning was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This signed record was written by a newer program: check it with that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file is not byte for byte as it was written: it was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This was changed after it was signed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is whole, but signed with a key that is not known here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is whole, but signed with a key that was no longer valid, from {0} on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is too little memory to look at the PIN: close other programs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The key of this person is damaged: check the store, or make a new key.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A PIN has 4 to 12 digits and nothing else.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is not the PIN of this person: type it again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>sheet</name>
    <message>
        <source>&apos;{0}&apos; is not known here; write one of: {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&apos;{0}&apos; cannot be a name here; use 1 to 40 small letters, digits and hyphens.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&apos;{0}&apos; is no UUID; write one in small letters, like 0198f0c0-5a00-7a11-8d01-0000000000aa.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The list has {0} entries, at least {1} are needed; add what is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The list has {0} entries, at most {1} are read; shorten it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file is a &apos;{0}&apos;, not a &apos;{1}&apos;; choose another file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file was made for a newer version of the program; update the program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The step is judged by the limit &apos;{0}&apos;, which the spec sheet {1}, issue {2}, does not have; add it there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The limit &apos;{0}&apos; of the spec sheet {1}, issue {2}, is in another kind of unit than this step reads; correct one of the two.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The limit &apos;{0}&apos; of the spec sheet {1}, issue {2}, counts attempts and needs a &apos;most&apos; of 1 or more; correct it there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The step needs the part &apos;{0}&apos;, which the spec sheet {1}, issue {2}, does not list; add it there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The spec sheet {0}, issue {1}, finds this shim by {2}, and the job sheet only by {3}; choose another of the two.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The upper limit has to be larger than the lower one; correct the two.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The target lies outside the limits; correct it, or write null for the middle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An angle from 0 to below 360 in quotation marks has to stand here, like &quot;120&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The angle {0} stands here twice; each spot needs its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The step &apos;{0}&apos; needs a side, lower or upper; add it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The role &apos;{0}&apos; is for a step of the kind &apos;check&apos; or &apos;choose&apos;; correct role or kind.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The role &apos;{0}&apos; is for a step of the kind &apos;text&apos;; correct role or kind.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The role &apos;{0}&apos; is for a step of the kind &apos;read&apos; with a length named &apos;{1}&apos;; add that channel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A step of the kind &apos;{0}&apos; cannot be only for &apos;{1}&apos;; correct one of the two.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no step &apos;{0}&apos; in this sheet; correct the name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The step &apos;{0}&apos; does not come after this one; name a later step.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The step &apos;{0}&apos; reads no &apos;{1}&apos;; correct the name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The step &apos;{0}&apos; does not come before this one; name an earlier step.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&apos;{0}&apos; of the step &apos;{1}&apos; is read in another kind of unit; the two cannot be equal.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another step is named &apos;{0}&apos; already; give this one its own name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another step has the role &apos;{0}&apos; for this side already; remove one of the two.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another step of the kind &apos;{0}&apos; is there for this side already; remove one of the two.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another stage is named &apos;{0}&apos; already; give this one its own name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last step has to be one of the kind &apos;sign&apos;, since signing closes the job; add it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A number from {0} to {1} has to stand here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The number is not in the unit of this field; write it in {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&apos;{0}&apos; is no number of up to six decimals below 10000; write it like 0.003.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&apos;{0}&apos; is no unit known here; write it like mm, N·m or °C, or leave it empty for pieces.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A shim is named as it is marked, with 1 to 16 plain letters, digits and signs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shim &apos;{0}&apos; stands in this tray twice; remove one of the two.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another shim of this tray is as thick as &apos;{0}&apos;; correct one of the two.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The range ends before it begins; exchange its two ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The range begins before the one above it ends; put them in order, thin to thick.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no shim &apos;{0}&apos; in this side&apos;s tray; correct the name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shim of this side is found by &apos;{0}&apos;, so this section is needed; add it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shim of this side is found by &apos;{0}&apos;; remove this section or correct the method.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A limit needs &apos;least&apos; or &apos;most&apos; or both; add what holds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The upper limit has to be at least the lower one; correct the two.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&apos;{0}&apos; cannot be a name here; use 1 to 40 small letters, digits and underscores.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The name &apos;{0}&apos; stands here twice; remove one of the two.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An object in braces { } has to stand here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The name &apos;{0}&apos; stands in this list twice; give one of the two another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A step of the kind &apos;{0}&apos; has no such field; remove it or correct the kind.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A step of the kind &apos;{0}&apos; needs this field; add it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&apos;{0}&apos; cannot be the name of a limit; use 1 to 40 small letters, digits and underscores.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Such an instrument does not read this unit; correct the instrument or the unit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The name of a part in the spec sheet has to stand here, like &quot;pack-ring&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No choice is accepted, so the step could never be passed; accept one at least.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&apos;{0}&apos; is no kind of step; docs/formats/job-sheet.md lists the kinds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The text is blank; write something, or remove it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The text holds a line break or another control character; remove it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The text has {0} characters, at most {1} are read; shorten it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&apos;{0}&apos; is no language; write its two or three small letters, like en or de.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This language stands here twice; remove one of the two.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A text in quotation marks has to stand here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Texts by language have to stand here, like { &quot;en&quot;: &quot;Press on&quot; }.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The English text is missing; add it, other languages are translations of it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shell</name>
    <message>
        <source>The demonstration jobs are missing from this program: install it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The demonstration cannot be laid there: look whether something else has its name, then try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another new job is typed here and not opened yet: open it, or cancel it, then begin this one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>--demo has a store of its own: leave out --demo, or leave out --store.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shim</name>
    <message>
        <source>There is nothing to advise on; add gauge_fit, depth or float.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A name in this case is not UTF-8 text; enter it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter the deviation marked on the pack; 0 is a value, blank is not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This bin begins before the one above it ends; put them in order.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This bin ends before it begins; exchange its two ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A number without quotation marks has to stand here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This number has to be below 10000 in size.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This has to be more than 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This must not be below 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This has to be at least {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A length has to be a whole number of micrometres; give three decimals at most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This list must not be empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two lengths have to stand here, the lower limit first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lower limit has to be below the upper one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The target has to lie within the limits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure at three spots or more, at three different angles.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One of tight, snug or loose has to stand here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Either fewest or thick_to_thin has to stand here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another shim of this tray has the same name; give each its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another shim of this tray has the same thickness; keep one of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No shim of the tray has this name; choose one that is in it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::AnswerPage</name>
    <message>
        <source>kept: %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>. It may have moved since: look again and answer again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::AskBox</name>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In your words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Park this job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What does it wait for?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Still to be fitted, for an order:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Park the job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Until when (may stay blank)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>year-month-day</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::CheckPage</name>
    <message>
        <source>In order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not in order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you saw: needed where it is not in order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say whether it is in order; the words are kept with the answer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>key 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>key 2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say in a few words what is not in order, then press Enter.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::ChoosePage</name>
    <message>
        <source>key %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::DepthCard</name>
    <message>
        <source>The sum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sum of the depths kept before</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::DepthPage</name>
    <message>
        <source>Reference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stamp on the new pack, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One place more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth, place %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the depths, then the reference: the sum is made when they are kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read it on the pack again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0.0 stamped is a value; leave nothing blank.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, by depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the border</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tilted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measure again, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot be</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outside the tray</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No size near</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the depths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another shim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take %1 with reason...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which shim is taken in place of it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not the shim the depths advise: why is it taken?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take %1 for this reason</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::DoPage</name>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::FloatEntry</name>
    <message>
        <source>Spot %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dial gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lifted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zero after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spot %1, run %2 of %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spot %1, run %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::FloatPage</name>
    <message>
        <source>Not measured as found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The method of this gearbox has no float as found: leave the step out with that reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> Measured before: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lift at spot %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hide all shims</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All shims and chances</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep this run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seated again: measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seat again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the shim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trials and float disagree: a bearing that is not home would do the same. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which shim goes under the %1?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in place of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>float %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 against the advice: why does the pack come off?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the pack off for this reason</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::FloatTable</name>
    <message>
        <source>Spot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Float</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::FootBar</name>
    <message>
        <source>Ctrl Enter</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::GaugeFitPage</name>
    <message>
        <source>Tight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>will not enter · key 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Snug</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>enters with drag · key 2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>has play · key 3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two trials cannot both be right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press a shim below to try it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take back trial %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tray begins too thick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tray ends too thin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A wrong trial would do the same: try the last shim once more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The float asks for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was measured in the assembly before. Try %1 first, or take it as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fit this one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>try this one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How does the gauge go in with %1?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, trial %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, by the trials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trials contradict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tray too thick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tray too thin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another shim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take %1 with reason...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not the shim the trials advise: why is it taken?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take %1 for this reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trial taken back at the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which shim is tried?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::GearboxChoice</name>
    <message>
        <source>Choose the gearbox type</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, issue %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::HomePage</name>
    <message>
        <source>On the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl N</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a vehicle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>VIN, plate, job, or scan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before you start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No job is open. Begin one with New job, or find a vehicle that was here before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 more jobs are open: find them under Past jobs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>job %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing: instruments, trays and backup are as they should be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every entry is on disk before it shows as saved. Last verified backup: %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::InstrumentBox</name>
    <message>
        <source>overdue since %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>good to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no instrument</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::JobPage</name>
    <message>
        <source>Job %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>assembly %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spec sheet %1, issue %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on with reason...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Park job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not required...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A note for this step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on against the sheet: why? The reason stands on the record with your name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on with this reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not required in this job: why?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not required for this reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave this step out, with reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take an entry of this step back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand the job over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours per stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Park the job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keypad for gloves (F4)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strip over the whole window (F2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 h %3 min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours per stage, by the times of the entries. Pauses of more than two hours do not count.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entry %1, %2, %3: %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take entry %1 back: why? It stays on the record, struck through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is kept for this step yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which entry is taken back?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What should %1 know?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who goes on with this job?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May have moved while the job lay, so it is asked again: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parked, waiting for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last: %1, %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>parked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::NewJobForm</name>
    <message>
        <source>Plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Odometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Complaint, in the customer&apos;s words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gearbox type and spec sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gearbox serial</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Build date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>year-month-day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Customer reference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no spec sheet in this workshop: add one under Workshop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gearbox type</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gearbox serial</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>build date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the gearbox type: its spec sheet holds the limits of this job.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::NewJobPage</name>
    <message>
        <source>New job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on typing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open job %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This workshop is open for looking only: no job can be opened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled in from job %1: %2. Change what is different.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This vehicle was here before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This vehicle was not here before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Older jobs of this vehicle under Past jobs: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is typed here is kept nowhere else.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no job sheet in this workshop: add one under Workshop.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::PackPanel</name>
    <message>
        <source>Where you are</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::PartPage</name>
    <message>
        <source>, batch %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A field that is left blank is as the spec sheet has it, as shown pale in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the parts, or clear the fields.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>renewed at every assembly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch or serial, if it has one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept: %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Renewed: keep it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Renewed: keep them</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::PeakPage</name>
    <message>
        <source>Back off and inspect</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Attempts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The force has gone through the parts already: a second attempt would read lower and hide it. Find what was in the way and put it right before the next one. That will be attempt %1, and %2 stays on the record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, with %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, assembly %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>. The spec sheet has at most %1 attempts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>attempt %1, at most %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep as attempt %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::PhotoPage</name>
    <message>
        <source>What the next photo shows (may be blank)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The words belong to the next photo: choose it, or clear them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose one more picture file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of at least %2 kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>picture missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Newest from the camera: press one to keep it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a picture file</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::PromiseTable</name>
    <message>
        <source>Shim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Float expected, mm (95 %)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Within at every spot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>advised, fitted now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>advised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fitted now</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::QuestionBox</name>
    <message>
        <source>It is right as it stands</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::ReadingFields</name>
    <message>
        <source>taken as %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compared with “%1”.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::ReadingPage</name>
    <message>
        <source>kept: %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the readings</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::SheetList</name>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::ShimChoice</name>
    <message>
        <source>Leave it as it is</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::SignPage</name>
    <message>
        <source>Signing says that the job is as its entries have it. The seal over the whole record comes later: it is made with a PIN when the record is sealed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 signs as checker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 signs as technician</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign as checker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign as technician</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::SignedField</name>
    <message>
        <source>minus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minus or plus? Read it on the pack.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::TeachInPage</name>
    <message>
        <source>Say how the teach-in went; the values are kept with the answer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Attempts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Completed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>key 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Aborted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>key 2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If aborted: code shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If aborted: why it broke off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>completed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>aborted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, code %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> before %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> after %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::TextPage</name>
    <message>
        <source>Serial, as it stands on the part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In your words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the kept words again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept: %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Same as last job (F6)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the serial</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the words</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::UnsentBox</name>
    <message>
        <source>Typed and not kept yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear what is typed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::bench::VehicleEntry</name>
    <message>
        <source>It is no VIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why it is no VIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chassis number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>VIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>VIN · %1 of 17 characters</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::past::JobRow</name>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>parked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vehicle number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>job number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>customer reference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gearbox serial</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pack serial</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>found in: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>waits for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unit %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>exact</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one character differs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no plate given</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::past::PageColumn</name>
    <message>
        <source>Pages of the record</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::past::PastJobs</name>
    <message>
        <source>Search past jobs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End or any part of a VIN, plate, job number, customer reference or serial.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no job in this workshop yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The latest jobs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No job has this. Try fewer characters, or the end of the vehicle number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first %1 jobs that have it; type more to narrow them down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 job has it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 jobs have it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New job for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::past::RecordView</name>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>100 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record of job %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped: nothing was written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printing page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handed to the printer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped. Pages the printer had already may still come out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>record-%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::past::SealBox</name>
    <message>
        <source>Not sealed yet: this has to be decided first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PIN of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First PIN of %1, 4 to 12 digits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same once more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seal the record: nothing in it can be changed after that, only added to, with a signature.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign and seal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sealed. Whole, and signed with keys of this workshop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add to it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why is something added?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is added</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign the addition</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two PINs of %1 differ: type both again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed and sealed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody else is at the bench now: begin the addition anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Added and signed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its file could not be written: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No folder for backups is set, so no file of it was written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its file: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::shell::FirstPage</name>
    <message>
        <source>Shimwright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shims, floats and records for the dry clutch pack of a dual-clutch gearbox.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try the demonstration workshop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A made-up workshop with jobs in work. It lies in a folder of its own and never mixes with yours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin this workshop&apos;s own store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job sheet and spec sheets come with the program; their limits are demonstration values until your own are entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the workshop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Address, as on the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First person: name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin the store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It will lie here: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: nothing is written here yet.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::shell::HindrancePage</name>
    <message>
        <source>The store does not open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open for looking only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Break the lock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That program is gone: break its lock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, on %2, since %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Program number %1 holds the lock. Ask there first: where two programs write in one store, entries are lost. Break the lock only where that program or its machine is gone.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::shell::MainWindow</name>
    <message>
        <source>This store is open for looking only: nothing can be entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is typed here is not saved yet: mend it, or empty the field.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The backup is being made and checked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The backup was not made. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close without it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::shell::Notices</name>
    <message>
        <source>Understood</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::shell::PersonRow</name>
    <message>
        <source>Who is at the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who is at the bench?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Esc</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::shell::SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brightness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language of the window</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This takes effect at the next start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tone when a reading is saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder the camera puts its photos in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the camera&apos;s folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Once a day, by itself. A folder on another disk also helps when this one breaks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the backup folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back up now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open this workshop&apos;s own store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the demonstration workshop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none chosen yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last verified backup: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No verified backup yet.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::shell::TopBar</name>
    <message>
        <source>to the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Past jobs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Workshop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>demo workshop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the bench: nobody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the bench: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>demo</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::DiscView</name>
    <message>
        <source>spot %1: to be measured now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spot %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stands highest at %1 degrees from the top, clockwise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Disc from above</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::Keypad</name>
    <message>
        <source>back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>minus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>decimal comma</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keypad</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::LimitStrip</name>
    <message>
        <source>Limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spot %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spot %1: %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits %1 to %2 mm</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::PackDrawing</name>
    <message>
        <source>large bearing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>small bearing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shim of the large bearing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shim of the small bearing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>large lever</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>small lever</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ring of the pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hub</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ring of the hub</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lower disc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>upper disc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shafts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>housing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Half section of the pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Half section of the pack, in hand: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not to scale; shims drawn thicker than they are</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::ShimRowButton</name>
    <message>
        <source>ruled out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>contradicted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>picked</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::ShimRows</name>
    <message>
        <source>Shims, thick to thin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: ruled out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 in 100 together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: less than 1 in 100</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::SizeScale</name>
    <message>
        <source>Sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 possible</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wanted %1 mm</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::StageBar</name>
    <message>
        <source>%1 of %2 stages done</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::Strip</name>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::DataSection</name>
    <message>
        <source>Stopping at the next step.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Data and backup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No backup was made from here yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep backups on another disk. Jobs go on while one is made; it is checked before it takes its name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back up now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Progress of the backup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 jobs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last backup: %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The backup is being made.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backup made and checked: %1 entries, %2 photos.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::WorkshopPage</name>
    <message>
        <source>Spec sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shim trays</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>People</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Data and backup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>store</name>
    <message>
        <source>The job went on elsewhere: entry {0} is due and not entry {1}; open the job again and enter this once more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A text in this has broken characters; enter it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A job has to be opened before anything is entered in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The job sheet or spec sheet of this job is not in the store; add it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something other than an older backup of this store lies there and is not written over; choose another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The backup was stopped; the one before it is still there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This photo is gone or changed, so the backup would not be whole; run the check of the store.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The copy is not as it should be and was thrown away: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This job was stored and is gone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line {0} is missing in the list of chain heads.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line {0} of the list of chain heads was changed after it was written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This entry and perhaps others before it were stored and are gone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This entry was not stored by this program: the list of chain heads does not know it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This entry is not the one that was stored in its place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A table, index or trigger of the store was changed, added or taken away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The issue {0} was changed after it was stored.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A personal text of this job is gone; erasing would have left its place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A personal text of this job was changed after it was stored.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The photo {0} is gone from the folder of photos.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The photo {0} was changed after it was taken.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file itself is damaged: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is kept in table {0} is not what follows from the entries.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This job does not begin with its opening, or its sheets are not to be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This program was put together with two different versions of SQLite and does not open a store; install it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The copy is not as it should be and was thrown away: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The disk is full, so this was not saved; free some space and enter it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The disk could not be read or written, so this was not saved; look after the disk and make a backup.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another program holds the store just now; try again in a moment.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The store can only be looked at here; nothing was saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file is not a store of this program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The store is damaged; keep it as it is and go on with the latest backup.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The store could not be opened; look whether its folder is there and may be written to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This does not fit what is stored already, so it was not saved: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is too large to be stored.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The store refused this, and nothing was saved: {0}. Report this fault.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This could not be made; look whether the folder is there and may be written to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This could not be brought to the disk; look after the disk and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This job is not in the store.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another program writes in this store; close it there first, or open the store for looking.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} writes in this store on {1} since {2}; close it there first, or open the store for looking.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The store could not be taken for writing; look whether its folder is there and may be written to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody else writes in this store by now; look again who it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file is not a store of this program; choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The end of this store is missing; keep it as it is and go on with the latest backup.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole path of the store is needed, from the top folder on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This cannot be read; look whether it is a file and may be read by you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This disk cannot keep a store so that it survives a power cut; put the store on another one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This photo cannot be read; choose it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This photo is larger than 20 MB; take it at a lower resolution.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is neither a JPEG nor a PNG photo; choose one that is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This personal text is not in the store.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This issue of a sheet is not in the store; add it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Issue {0} of {1} is in the store with other values; give the changed sheet the next issue number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The id of this is not a UUID; report this fault.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A name is needed; enter one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tray has at most {0} shims, this one has {1}; take some out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The store could not be brought to version {0} and stays as it was: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two letters or digits at least are needed to search.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This store lies on a network share and can only be looked at; copy it to a disk of this machine to write in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This store was written by a newer program and can only be looked at; write in it with the newer program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no store at this place; choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is not as it was last entered here; look at it and enter it anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} was entered here and is gone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This job was sealed and its seal is gone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The seal of this job does not hold: {0} was changed after it was signed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the store held when this job was sealed is gone or changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The signed file cannot be written here: look at the folder and its space.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This record cannot be shown as it was sealed: it was changed, or sealed by another version of the program; see what “verify” says.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entries of this sealed job are gone: run the check of the store.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is erased, but its bytes stay in the log while another program reads the store; close that and erase once more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no job of this vehicle in the store; look at its number again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The damaged store could not be kept beside its place, so nothing was changed; look whether the disk is full.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The backup {0} is whole and goes to {1}: {2} jobs, {3} entries. What came after it the damaged store does not show any more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The backup {0} is whole and goes to {1}: {2} jobs, {3} entries. {4} entries in {5} jobs came after it and would be missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This job is whole, but something the store held before it is gone or changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The seal of this job was changed in the store: take the signed file from the backup folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This job is not sealed: seal it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This person has no PIN yet: set one, then sign.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This person is not in the workshop&apos;s list: enter them first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This person has a PIN: change it with the old one, or say it is forgotten.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is no date: write year-month-day, as in 2026-11-30.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This key is none of the workshop&apos;s: look at its list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The key of this person is no longer valid: set a new PIN, then sign.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>vehicle</name>
    <message>
        <source>No chassis number is entered yet; type it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A chassis number has at most {0} characters; type only the number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The chassis number holds characters that cannot be printed; type it anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A number that is no full vehicle number needs a reason; say why.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The check digit does not fit, as on many vehicles whose maker does not use it; compare the number with the vehicle once more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A vehicle number has 17 characters and this one has {0}; compare it with the vehicle, or file it as a chassis number with a reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A vehicle number has only the digits and the letters A to Z without I, O and Q; is {0} meant?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A vehicle number has only the digits and the letters A to Z without I, O and Q; compare it with the vehicle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One character 17 times is no vehicle number; read the number from the vehicle.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>word</name>
    <message>
        <source>large bearing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>small bearing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dial gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depth gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>micrometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>torque wrench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>multimeter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressure gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“done”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“in order” or a finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one of its choices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the highest reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the parts fitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trials with the gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lifts at its spots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a teach-in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gauge trials</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>workshop</name>
    <message>
        <source>no date kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overdue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Standard uncertainty, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the tray</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, issue %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 stages, %2 steps; short name %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as a blank sheet of paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>People</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signs with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At work here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a PIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no PIN yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no longer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Resolution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Permissible error</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibrated to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shim trays</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No tray is kept here yet: jobs take the sizes of their spec sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show values</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower, large bearing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Upper, small bearing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits of readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Values to work to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Renewed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at every assembly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spec sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All spec sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. Source: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shim found by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gauge fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tray</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Snug band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feel, standard uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order of the trials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thick to thin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fewest trials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seat expected, mean and standard deviation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opposite places measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Constants added</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stamp on the new pack used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Largest spread over the places</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth reading, standard uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shim table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ranges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Float limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Float aimed at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Largest spread over the spots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spots, at angles of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Runs at each spot, at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repeatability, standard uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guard factor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Float lost per mm of shim, and its standard deviation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Float of other jobs, standard uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Float as found can be measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the folder for the backup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the blank sheet as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
