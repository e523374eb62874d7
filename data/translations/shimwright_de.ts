<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>DataSection</name>
    <message>
        <source>To another laptop, in three steps</source>
        <translation>Auf einen anderen Laptop, in drei Schritten</translation>
    </message>
    <message>
        <source>1  Here: choose a folder on a stick as the folder for backups, and back up now. The folder photos beside the backup belongs to it.</source>
        <translation>1  Hier: einen Ordner auf einem Stick als Ordner für Sicherungen wählen und jetzt sichern. Der Ordner photos neben der Sicherung gehört dazu.</translation>
    </message>
    <message>
        <source>2  There: install Shimwright, start it, and begin your own workshop. What you enter is replaced by what comes.</source>
        <translation>2  Dort: Shimwright installieren, starten und eine eigene Werkstatt beginnen. Was dabei eingegeben wird, ersetzt danach das Mitgebrachte.</translation>
    </message>
    <message>
        <source>3  There, on this page: look at the backup on the stick and go back to it. From then on enter nothing here any more.</source>
        <translation>3  Dort, auf dieser Seite: die Sicherung auf dem Stick ansehen und zu ihr zurückgehen. Ab dann hier nichts mehr eingeben.</translation>
    </message>
</context>
<context>
    <name>QLabel</name>
    <message>
        <source>demonstration values</source>
        <translation>Demonstrationswerte</translation>
    </message>
</context>
<context>
    <name>bench</name>
    <message>
        <source>chassis %1</source>
        <translation>Fahrgestell %1</translation>
    </message>
    <message>
        <source>VIN ends %1</source>
        <translation>FIN endet auf %1</translation>
    </message>
    <message>
        <source>Choose a photo</source>
        <translation>Ein Foto wählen</translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png)</source>
        <translation>Fotos (*.jpg *.jpeg *.png)</translation>
    </message>
    <message>
        <source>within</source>
        <translation>innerhalb</translation>
    </message>
    <message>
        <source>too small</source>
        <translation>zu klein</translation>
    </message>
    <message>
        <source>too large</source>
        <translation>zu groß</translation>
    </message>
    <message>
        <source>on limit</source>
        <translation>an der Grenze</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>gemischt</translation>
    </message>
    <message>
        <source>to do</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>in work</source>
        <translation>in Arbeit</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>held</source>
        <translation>angehalten</translation>
    </message>
    <message>
        <source>deviation</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>unproven</source>
        <translation>nachzuprüfen</translation>
    </message>
    <message>
        <source>not required</source>
        <translation>nicht nötig</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>morgen</translation>
    </message>
    <message>
        <source>in %1 days</source>
        <translation>in %1 Tagen</translation>
    </message>
    <message>
        <source>Calibration overdue since %1.</source>
        <translation>Kalibrierung überfällig seit %1.</translation>
    </message>
    <message>
        <source>Calibration due %1, %2.</source>
        <translation>Kalibrierung fällig am %1, %2.</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message>
        <source>No open job waits for a shim of this tray.</source>
        <translation>Kein offener Auftrag wartet auf eine Passscheibe aus diesem Sortiment.</translation>
    </message>
    <message>
        <source>One open job may want a shim of this tray.</source>
        <translation>Ein offener Auftrag braucht vielleicht eine Passscheibe aus diesem Sortiment.</translation>
    </message>
    <message>
        <source>%1 open jobs may want a shim of this tray.</source>
        <translation>%1 offene Aufträge brauchen vielleicht eine Passscheibe aus diesem Sortiment.</translation>
    </message>
    <message>
        <source>None left of %1.</source>
        <translation>Keine mehr da von %1.</translation>
    </message>
    <message>
        <source>One left of %1.</source>
        <translation>Nur noch eine da von %1.</translation>
    </message>
    <message>
        <source>Tray %1</source>
        <translation>Sortiment %1</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Sicherung</translation>
    </message>
    <message>
        <source>The last verified backup is %1 days old. Look under Workshop what keeps it.</source>
        <translation>Die letzte geprüfte Sicherung ist %1 Tage alt. Unter Werkstatt nachsehen, woran es liegt.</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>mean of %1</source>
        <translation>Mittel aus %1</translation>
    </message>
    <message>
        <source>less reference</source>
        <translation>weniger Bezug</translation>
    </message>
    <message>
        <source>stamp</source>
        <translation>Prägung</translation>
    </message>
    <message>
        <source>shim wanted, mm (95 %)</source>
        <translation>Passscheibe gesucht, mm (95&#xa0;%)</translation>
    </message>
    <message>
        <source>%1 from the border to %2. </source>
        <translation>%1 bis zur Grenze nach %2. </translation>
    </message>
    <message>
        <source>The places differ by %1, allowed %2.</source>
        <translation>Die Stellen weichen um %1 voneinander ab, erlaubt %2.</translation>
    </message>
    <message>
        <source>plus</source>
        <translation>plus</translation>
    </message>
    <message>
        <source>minus</source>
        <translation>minus</translation>
    </message>
    <message>
        <source>%1, no shim of the tray</source>
        <translation>%1, keine Passscheibe des Sortiments</translation>
    </message>
    <message>
        <source>With %1 it would be %2 instead of %3.</source>
        <translation>Mit %1 wäre es %2 statt %3.</translation>
    </message>
    <message>
        <source>Tilted: the places differ too much</source>
        <translation>Schief: die Stellen weichen zu weit voneinander ab</translation>
    </message>
    <message>
        <source>This sum cannot be</source>
        <translation>Diese Rechnung kann nicht stimmen</translation>
    </message>
    <message>
        <source>Outside the tray</source>
        <translation>Außerhalb des Sortiments</translation>
    </message>
    <message>
        <source>A size is missing in the tray</source>
        <translation>Im Sortiment fehlt ein Maß</translation>
    </message>
    <message>
        <source>On the border of two sizes</source>
        <translation>An der Grenze zweier Maße</translation>
    </message>
    <message>
        <source>The sum</source>
        <translation>Die Rechnung</translation>
    </message>
    <message>
        <source>still open</source>
        <translation>noch offen</translation>
    </message>
    <message>
        <source>parked</source>
        <translation>zurückgestellt</translation>
    </message>
    <message>
        <source>The odometer stands lower than before.</source>
        <translation>Der Kilometerstand ist niedriger als beim letzten Mal.</translation>
    </message>
    <message>
        <source>Job %1 noted %2. Read it once more; another instrument may be fitted.</source>
        <translation>Auftrag %1 nennt %2. Noch einmal ablesen; vielleicht ist ein anderes Instrument eingebaut.</translation>
    </message>
    <message>
        <source>Second pack in %1 km.</source>
        <translation>Zweites Paket innerhalb von %1 km.</translation>
    </message>
    <message>
        <source>Look for a cause first: seals, levers, pivot, flywheel, control unit.</source>
        <translation>Zuerst eine Ursache suchen: Dichtringe, Hebel, Lagerung, Schwungrad, Steuergerät.</translation>
    </message>
    <message>
        <source>Job %1</source>
        <translation>Auftrag %1</translation>
    </message>
    <message>
        <source>pack renewed</source>
        <translation>Paket erneuert</translation>
    </message>
    <message>
        <source>large</source>
        <translation>groß</translation>
    </message>
    <message>
        <source>small</source>
        <translation>klein</translation>
    </message>
    <message>
        <source>shims %1</source>
        <translation>Passscheiben %1</translation>
    </message>
    <message>
        <source>lower</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>upper</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>final float %1 mm</source>
        <translation>Lüftspiel zuletzt %1 mm</translation>
    </message>
    <message>
        <source>float %1 mm so far</source>
        <translation>Lüftspiel bisher %1 mm</translation>
    </message>
    <message>
        <source>teach-in at attempt %1</source>
        <translation>angelernt im Versuch %1</translation>
    </message>
    <message>
        <source>Job %1 of this vehicle is not finished.</source>
        <translation>Auftrag %1 dieses Fahrzeugs ist nicht abgeschlossen.</translation>
    </message>
    <message>
        <source>Take it up on the bench if this is the same work.</source>
        <translation>An der Werkbank wieder aufnehmen, wenn es dieselbe Arbeit ist.</translation>
    </message>
    <message>
        <source>limits %1 to %2 mm</source>
        <translation>Grenzen %1 bis %2 mm</translation>
    </message>
    <message>
        <source> If the float stays: fit %1, expected %2 ± %3 mm (95 %), %4 to be inside at every spot.</source>
        <translation> Bleibt das Lüftspiel: %1 einlegen, erwartet %2 ± %3 mm (95&#xa0;%), %4 an jedem Messpunkt innerhalb.</translation>
    </message>
    <message>
        <source>spec sheet and %1 pairs of this workshop</source>
        <translation>Datenblatt und %1 Wertepaare dieser Werkstatt</translation>
    </message>
    <message>
        <source>spec sheet</source>
        <translation>Datenblatt</translation>
    </message>
    <message>
        <source>%1 pairs of this workshop</source>
        <translation>%1 Wertepaare dieser Werkstatt</translation>
    </message>
    <message>
        <source> 1.00 mm of shim moves this float %1 ± %2 mm (95 %, %3).</source>
        <translation> 1.00 mm Passscheibe ändert dieses Lüftspiel um %1 ± %2 mm (95&#xa0;%, %3).</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Zero was lost</source>
        <translation>Null ging verloren</translation>
    </message>
    <message>
        <source>Kept, not judged</source>
        <translation>Gespeichert, nicht bewertet</translation>
    </message>
    <message>
        <source>A question first</source>
        <translation>Zuerst eine Frage</translation>
    </message>
    <message>
        <source>%1 as found</source>
        <translation>%1 wie vorgefunden</translation>
    </message>
    <message>
        <source>%1, for information</source>
        <translation>%1, zur Kenntnis</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>The shim stays</source>
        <translation>Die Passscheibe bleibt</translation>
    </message>
    <message>
        <source>Seat the large bearing again, then measure once more</source>
        <translation>Das große Lager zuerst neu setzen, dann noch einmal messen</translation>
    </message>
    <message>
        <source>Measure each spot once more</source>
        <translation>Jeden Messpunkt noch einmal messen</translation>
    </message>
    <message>
        <source>Take the pack off and fit %1</source>
        <translation>Paket abnehmen und %1 einlegen</translation>
    </message>
    <message>
        <source>Take the pack off, fit %1, one step, and measure again</source>
        <translation>Paket abnehmen, %1 einlegen, ein Schritt, und wieder messen</translation>
    </message>
    <message>
        <source>On the limit: you decide</source>
        <translation>An der Grenze: selbst entscheiden</translation>
    </message>
    <message>
        <source>Set zero and measure again</source>
        <translation>Null einstellen und wieder messen</translation>
    </message>
    <message>
        <source>Kept: it is compared with the float after the work</source>
        <translation>Gespeichert: wird mit dem Lüftspiel nach der Arbeit verglichen</translation>
    </message>
    <message>
        <source>No shim is known under this disc</source>
        <translation>Unter dieser Scheibe ist keine Passscheibe bekannt</translation>
    </message>
    <message>
        <source>Answer the question first</source>
        <translation>Zuerst die Frage beantworten</translation>
    </message>
    <message>
        <source>The trials still say otherwise; it was seated again and the float stayed. </source>
        <translation>Die Proben sagen noch immer etwas anderes; es wurde neu gesetzt und das Lüftspiel blieb. </translation>
    </message>
    <message>
        <source>Spread %1 mm, allowed %2 mm</source>
        <translation>Streuung %1 mm, erlaubt %2 mm</translation>
    </message>
    <message>
        <source> Each spot ± %1 mm (95 %).</source>
        <translation> Jeder Messpunkt ± %1 mm (95&#xa0;%).</translation>
    </message>
    <message>
        <source>Lifted is the higher reading while the dial runs forward.</source>
        <translation>Angehoben ist der höhere Wert, solange die Messuhr vorwärts läuft.</translation>
    </message>
    <message>
        <source>Count whole turns: one turn of %1 is %2 mm.</source>
        <translation>Ganze Umdrehungen zählen: eine Umdrehung von %1 sind %2 mm.</translation>
    </message>
    <message>
        <source>%1, trial %2</source>
        <translation>%1, Probe %2</translation>
    </message>
    <message>
        <source>less than 1 in 100 from the start</source>
        <translation>von Anfang an unter 1 von 100</translation>
    </message>
    <message>
        <source>ruled out by trial %1</source>
        <translation>ausgeschlossen durch Probe %1</translation>
    </message>
    <message>
        <source>ruled out by trials %1</source>
        <translation>ausgeschlossen durch die Proben %1</translation>
    </message>
    <message>
        <source>not in the tray</source>
        <translation>nicht im Sortiment</translation>
    </message>
    <message>
        <source>measured %1</source>
        <translation>gemessen %1</translation>
    </message>
    <message>
        <source>none left in the tray</source>
        <translation>keine mehr im Sortiment</translation>
    </message>
    <message>
        <source>%1 in the tray</source>
        <translation>%1 im Sortiment</translation>
    </message>
    <message>
        <source>About %1 trials left; from the thickest down it would be %2.</source>
        <translation>Noch etwa %1 Proben; von der dicksten abwärts wären es %2.</translation>
    </message>
    <message>
        <source>trial %1 (%2 %3)</source>
        <translation>Probe %1 (%2 %3)</translation>
    </message>
    <message>
        <source>No seat fits both %1 and %2. </source>
        <translation>Kein Sitz passt zu beiden: %1 und %2. </translation>
    </message>
    <message>
        <source>try the next shim</source>
        <translation>nächste Passscheibe probieren</translation>
    </message>
    <message>
        <source>take the shim</source>
        <translation>Passscheibe nehmen</translation>
    </message>
    <message>
        <source>the trials contradict each other</source>
        <translation>die Proben widersprechen sich</translation>
    </message>
    <message>
        <source>no shim of the tray fits</source>
        <translation>keine Passscheibe des Sortiments passt</translation>
    </message>
    <message>
        <source>the places differ too much</source>
        <translation>die Stellen weichen zu weit voneinander ab</translation>
    </message>
    <message>
        <source>the depths cannot be right</source>
        <translation>die Tiefen können nicht stimmen</translation>
    </message>
    <message>
        <source>a size is missing in the tray</source>
        <translation>im Sortiment fehlt ein Maß</translation>
    </message>
    <message>
        <source>between two shims: choose one</source>
        <translation>zwischen zwei Passscheiben: eine wählen</translation>
    </message>
    <message>
        <source>a question is open</source>
        <translation>eine Frage ist offen</translation>
    </message>
    <message>
        <source>set zero again and measure</source>
        <translation>Null neu einstellen und messen</translation>
    </message>
    <message>
        <source>measure again</source>
        <translation>noch einmal messen</translation>
    </message>
    <message>
        <source>seat it again</source>
        <translation>neu setzen</translation>
    </message>
    <message>
        <source>change the shim</source>
        <translation>Passscheibe wechseln</translation>
    </message>
    <message>
        <source>on the limit: decide</source>
        <translation>an der Grenze: entscheiden</translation>
    </message>
    <message>
        <source>for information</source>
        <translation>zur Kenntnis</translation>
    </message>
    <message>
        <source>on the limit</source>
        <translation>an der Grenze</translation>
    </message>
    <message>
        <source>the counts differ</source>
        <translation>die Zahlen stimmen nicht überein</translation>
    </message>
    <message>
        <source>not accepted</source>
        <translation>nicht angenommen</translation>
    </message>
    <message>
        <source>answered “%1”</source>
        <translation>geantwortet „%1“</translation>
    </message>
    <message>
        <source> · parked today</source>
        <translation> · heute zurückgestellt</translation>
    </message>
    <message>
        <source> · parked for 1 day</source>
        <translation> · seit 1 Tag zurückgestellt</translation>
    </message>
    <message>
        <source> · parked for %1 days</source>
        <translation> · seit %1 Tagen zurückgestellt</translation>
    </message>
    <message>
        <source>waits for: %1</source>
        <translation>wartet auf: %1</translation>
    </message>
    <message>
        <source>, was due %1</source>
        <translation>, war fällig am %1</translation>
    </message>
    <message>
        <source>, due %1</source>
        <translation>, fällig am %1</translation>
    </message>
    <message>
        <source>once more after the pause: %1</source>
        <translation>nach der Pause noch einmal: %1</translation>
    </message>
    <message>
        <source>unit %1</source>
        <translation>Getriebe %1</translation>
    </message>
    <message>
        <source>not in order</source>
        <translation>nicht in Ordnung</translation>
    </message>
    <message>
        <source>not completed</source>
        <translation>nicht abgeschlossen</translation>
    </message>
    <message>
        <source>chassis ends %1</source>
        <translation>Fahrgestell endet auf %1</translation>
    </message>
    <message>
        <source>nothing left to do</source>
        <translation>nichts mehr zu tun</translation>
    </message>
    <message>
        <source>This job cannot be read</source>
        <translation>Dieser Auftrag ist nicht lesbar</translation>
    </message>
    <message>
        <source>“{0}” came in, but this step asks for no value.</source>
        <translation>„{0}“ kam herein, aber dieser Schritt fragt nach keinem Wert.</translation>
    </message>
    <message>
        <source>large bearing</source>
        <translation>großes Lager</translation>
    </message>
    <message>
        <source>small bearing</source>
        <translation>kleines Lager</translation>
    </message>
    <message>
        <source>lower disc</source>
        <translation>untere Scheibe</translation>
    </message>
    <message>
        <source>upper disc</source>
        <translation>obere Scheibe</translation>
    </message>
    <message>
        <source>tight</source>
        <translation>eng</translation>
    </message>
    <message>
        <source>snug</source>
        <translation>saugend</translation>
    </message>
    <message>
        <source>loose</source>
        <translation>locker</translation>
    </message>
    <message>
        <source>better than 99 in 100</source>
        <translation>über 99 von 100</translation>
    </message>
    <message>
        <source>less than 1 in 100</source>
        <translation>unter 1 von 100</translation>
    </message>
    <message>
        <source>%1 in 100</source>
        <translation>%1 von 100</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Pressings of this pack so far: %1; the spec sheet allows %2.</source>
        <translation>Dieses Paket wurde bisher %1-mal aufgepresst; das Datenblatt erlaubt %2.</translation>
    </message>
    <message>
        <source>To do again: %1.</source>
        <translation>Noch einmal zu tun: %1.</translation>
    </message>
    <message>
        <source>Renewed again: %1.</source>
        <translation>Wieder zu erneuern: %1.</translation>
    </message>
    <message>
        <source>No earlier job on this gearbox type has words here: write them.</source>
        <translation>Kein früherer Auftrag an diesem Getriebetyp hat hier Worte: selbst schreiben.</translation>
    </message>
    <message>
        <source>%1 for %2</source>
        <translation>%1 statt %2</translation>
    </message>
    <message>
        <source>Take plain letters</source>
        <translation>Einfache Buchstaben nehmen</translation>
    </message>
    <message>
        <source>Take %1</source>
        <translation>%1 nehmen</translation>
    </message>
    <message>
        <source>in order</source>
        <translation>in Ordnung</translation>
    </message>
    <message>
        <source>not in order: %1</source>
        <translation>nicht in Ordnung: %1</translation>
    </message>
    <message>
        <source>a photo</source>
        <translation>ein Foto</translation>
    </message>
    <message>
        <source>spot %1: %2</source>
        <translation>Messpunkt %1: %2</translation>
    </message>
    <message>
        <source>measured again</source>
        <translation>noch einmal gemessen</translation>
    </message>
    <message>
        <source>right as it stands</source>
        <translation>stimmt so</translation>
    </message>
    <message>
        <source>%1 taken</source>
        <translation>%1 genommen</translation>
    </message>
    <message>
        <source>completed</source>
        <translation>abgeschlossen</translation>
    </message>
    <message>
        <source>aborted</source>
        <translation>abgebrochen</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>unterschrieben</translation>
    </message>
    <message>
        <source>left with reason: %1</source>
        <translation>mit Grund gelassen: %1</translation>
    </message>
    <message>
        <source>not required: %1</source>
        <translation>nicht nötig: %1</translation>
    </message>
    <message>
        <source>lower float</source>
        <translation>Lüftspiel unten</translation>
    </message>
    <message>
        <source>upper float</source>
        <translation>Lüftspiel oben</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Notiz: %1</translation>
    </message>
    <message>
        <source>Job opened</source>
        <translation>Auftrag geöffnet</translation>
    </message>
    <message>
        <source>Parked, waiting for %1</source>
        <translation>Zurückgestellt, wartet auf %1</translation>
    </message>
    <message>
        <source>Taken up again</source>
        <translation>Wieder aufgenommen</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Assembly %1 begun</source>
        <translation>Montage %1 begonnen</translation>
    </message>
    <message>
        <source>Sealed</source>
        <translation>Versiegelt</translation>
    </message>
    <message>
        <source>Added after sealing: %1</source>
        <translation>Nach dem Versiegeln nachgetragen: %1</translation>
    </message>
    <message>
        <source>Something taken back</source>
        <translation>Etwas zurückgenommen</translation>
    </message>
    <message>
        <source>%1 × %2, number %3</source>
        <translation>%1 × %2, Nummer %3</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>not equal</source>
        <translation>nicht gleich</translation>
    </message>
    <message>
        <source>by %1 %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Dial gauge</source>
        <translation>Messuhr</translation>
    </message>
    <message>
        <source>Depth gauge</source>
        <translation>Tiefenmaß</translation>
    </message>
    <message>
        <source>Micrometer</source>
        <translation>Messschraube</translation>
    </message>
    <message>
        <source>Torque wrench</source>
        <translation>Drehmomentschlüssel</translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation>Thermometer</translation>
    </message>
    <message>
        <source>Multimeter</source>
        <translation>Multimeter</translation>
    </message>
    <message>
        <source>Pressure gauge</source>
        <translation>Manometer</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Waage</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>d MMM HH:mm</source>
        <translation>d. MMM HH:mm</translation>
    </message>
    <message>
        <source>%1 (one-time: renewed at every assembly)</source>
        <translation>%1 (Einmalteil: bei jeder Montage erneuert)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Seat the small bearing again, then measure once more</source>
        <translation>Das kleine Lager zuerst neu setzen, dann noch einmal messen</translation>
    </message>
    <message>
        <source>shim, large bearing</source>
        <translation>Passscheibe, großes Lager</translation>
    </message>
    <message>
        <source>shim, small bearing</source>
        <translation>Passscheibe, kleines Lager</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 oder %2</translation>
    </message>
    <message>
        <source>Mixed: %1 to %2</source>
        <translation>Gemischt: %1 bis %2</translation>
    </message>
    <message>
        <source>Look at seating and parts</source>
        <translation>Sitz und Teile ansehen</translation>
    </message>
    <message>
        <source>No verified backup is known. Make one under Workshop, Data and backup.</source>
        <translation>Keine geprüfte Sicherung bekannt. Unter Werkstatt, Daten und Sicherung eine anlegen.</translation>
    </message>
    <message>
        <source>renewing the pack</source>
        <translation>Paket wird erneuert</translation>
    </message>
    <message>
        <source>; the float is largest at %1° clockwise from spot 1, tilt %2 mm.</source>
        <translation>; am größten ist das Spiel bei %1° im Uhrzeigersinn ab Messpunkt 1, Neigung %2 mm.</translation>
    </message>
    <message>
        <source> That no shim of the tray fits: %1 in 100.</source>
        <translation> Dass keine Passscheibe des Sortiments passt: %1 von 100.</translation>
    </message>
    <message>
        <source>VIN %1</source>
        <translation>FIN %1</translation>
    </message>
    <message>
        <source>: no tilt beyond what the readings are uncertain by.</source>
        <translation>: keine Neigung über die Unsicherheit der Ablesungen hinaus.</translation>
    </message>
</context>
<context>
    <name>cli</name>
    <message>
        <source>This option is given twice: give it once.</source>
        <translation>Diese Option steht zweimal da: einmal angeben.</translation>
    </message>
    <message>
        <source>This command has no such option: see its --help.</source>
        <translation>Diesen Befehl gibt es nicht mit dieser Option: siehe --help.</translation>
    </message>
    <message>
        <source>This option needs a value after it.</source>
        <translation>Nach dieser Option fehlt ein Wert.</translation>
    </message>
    <message>
        <source>This command takes another number of words: see its --help.</source>
        <translation>Dieser Befehl braucht eine andere Zahl von Wörtern: siehe --help.</translation>
    </message>
    <message>
        <source>This command needs this option: see its --help.</source>
        <translation>Dieser Befehl braucht diese Option: siehe --help.</translation>
    </message>
    <message>
        <source>A whole number from {0} to {1} is needed here.</source>
        <translation>Hier gehört eine ganze Zahl von {0} bis {1} hin.</translation>
    </message>
    <message>
        <source>This store holds jobs already: name a new file.</source>
        <translation>Dieser Datenbestand enthält schon Aufträge: eine neue Datei nennen.</translation>
    </message>
    <message>
        <source>This file cannot be read: look whether it is there and may be read.</source>
        <translation>Diese Datei ist nicht lesbar: nachsehen, ob sie da ist und gelesen werden darf.</translation>
    </message>
    <message>
        <source>This file is larger than 64 MiB: it is none of ours.</source>
        <translation>Diese Datei ist größer als 64 MiB: sie ist keine von uns.</translation>
    </message>
    <message>
        <source>This file broke off while it was read: look at the disk.</source>
        <translation>Diese Datei brach beim Lesen ab: die Platte prüfen.</translation>
    </message>
    <message>
        <source>“{0}” is no paper size here: write a4 or letter.</source>
        <translation>„{0}“ ist hier kein Papierformat: a4 oder letter schreiben.</translation>
    </message>
    <message>
        <source>This file cannot be written: look at the folder and the space on the disk.</source>
        <translation>Diese Datei lässt sich nicht schreiben: Ordner und Platz auf der Platte prüfen.</translation>
    </message>
    <message>
        <source>“{0}” is no kind of instrument: see the list in docs/formats/script.md.</source>
        <translation>„{0}“ ist keine Art von Messmittel: siehe die Liste in docs/formats/script.md.</translation>
    </message>
    <message>
        <source>A tray has at most {0} shims, this one has {1}: shorten it.</source>
        <translation>Ein Sortiment hat höchstens {0} Passscheiben, dieses hat {1}: kürzen.</translation>
    </message>
    <message>
        <source>This is no script: its format must be “shimwright.script”.</source>
        <translation>Das ist kein Skript: sein Format muss „shimwright.script“ sein.</translation>
    </message>
    <message>
        <source>This script was made for a newer version of the program: bring the program up to date.</source>
        <translation>Dieses Skript ist für eine neuere Version des Programms: das Programm aktualisieren.</translation>
    </message>
    <message>
        <source>“{0}” is not among the people of this script: add the person.</source>
        <translation>„{0}“ gehört nicht zu den Personen dieses Skripts: die Person hinzufügen.</translation>
    </message>
    <message>
        <source>“{0}” is not among the instruments of this script: add the instrument.</source>
        <translation>„{0}“ gehört nicht zu den Messmitteln dieses Skripts: das Messmittel hinzufügen.</translation>
    </message>
    <message>
        <source>“{0}” is no time: write it as in 2026-11-24T10:58+00:00.</source>
        <translation>„{0}“ ist keine Zeit: wie 2026-11-24T10:58+00:00 schreiben.</translation>
    </message>
    <message>
        <source>“{0}” cannot be expected: write accepted or refused.</source>
        <translation>„{0}“ kann man nicht erwarten: accepted oder refused schreiben.</translation>
    </message>
    <message>
        <source>A text is expected here: put it in quotes.</source>
        <translation>Hier gehört ein Text hin: in Anführungszeichen setzen.</translation>
    </message>
    <message>
        <source>A spot is a number from 1 to 9.</source>
        <translation>Ein Messpunkt ist eine Zahl von 1 bis 9.</translation>
    </message>
    <message>
        <source>“{0}” is not known here: see docs/formats/script.md.</source>
        <translation>„{0}“ ist hier nicht bekannt: siehe docs/formats/script.md.</translation>
    </message>
    <message>
        <source>“{0}” is no side: write lower or upper.</source>
        <translation>„{0}“ ist keine Seite: lower oder upper schreiben.</translation>
    </message>
    <message>
        <source>A command needs its name here, in quotes: see docs/formats/script.md.</source>
        <translation>Ein Befehl braucht hier seinen Namen in Anführungszeichen: siehe docs/formats/script.md.</translation>
    </message>
    <message>
        <source>There is no command “{0}”: see the list in docs/formats/script.md.</source>
        <translation>Einen Befehl „{0}“ gibt es nicht: siehe die Liste in docs/formats/script.md.</translation>
    </message>
    <message>
        <source>There is no such sheet; there are {0}.</source>
        <translation>Diesen Plan oder dieses Blatt gibt es nicht; es gibt {0}.</translation>
    </message>
    <message>
        <source>This store can only be looked at.</source>
        <translation>Dieser Datenbestand ist nur zum Ansehen.</translation>
    </message>
    <message>
        <source>There is no job of this number in the store: find it by its vehicle.</source>
        <translation>Im Datenbestand gibt es keinen Auftrag mit dieser Nummer: über sein Fahrzeug suchen.</translation>
    </message>
    <message>
        <source>Several jobs have this number: name one by its id, which “find” shows.</source>
        <translation>Mehrere Aufträge haben diese Nummer: einen mit seiner Kennung nennen, die „find“ zeigt.</translation>
    </message>
    <message>
        <source>One thing at a time, and an end needs its day: see its --help.</source>
        <translation>Eins nach dem anderen, und ein Ende braucht seinen Tag: siehe --help.</translation>
    </message>
    <message>
        <source>This person is not in the workshop&apos;s list: write the name or the initials.</source>
        <translation>Diese Person steht nicht in der Liste der Werkstatt: Namen oder Kürzel schreiben.</translation>
    </message>
    <message>
        <source>The PIN is read from standard input: give it there.</source>
        <translation>Die PIN wird von der Standardeingabe gelesen: dort eingeben.</translation>
    </message>
    <message>
        <source>This store is in order, so no backup was put in its place.</source>
        <translation>Dieser Datenbestand ist in Ordnung, deshalb trat keine Sicherung an seine Stelle.</translation>
    </message>
    <message>
        <source>There is no whole backup of this store in {0}: name another folder.</source>
        <translation>In {0} liegt keine heile Sicherung dieses Datenbestands: einen anderen Ordner nennen.</translation>
    </message>
    <message>
        <source>“{0}” is no day: write it as 2026-11-24.</source>
        <translation>„{0}“ ist kein Tag: so schreiben wie 2026-11-24.</translation>
    </message>
    <message>
        <source>The last day lies before the first: change the two.</source>
        <translation>Der letzte Tag liegt vor dem ersten: die beiden tauschen.</translation>
    </message>
    <message>
        <source>There is no job of this vehicle in the store; look at its number again.</source>
        <translation>Im Datenbestand gibt es keinen Auftrag dieses Fahrzeugs; seine Nummer noch einmal ansehen.</translation>
    </message>
    <message>
        <source>Say where the measurements go: --csv OUT, --json OUT or both.</source>
        <translation>Angeben, wohin die Messwerte gehen: --csv OUT, --json OUT oder beides.</translation>
    </message>
    <message>
        <source>“{0}” is no whole number from 0 on.</source>
        <translation>„{0}“ ist keine ganze Zahl ab 0.</translation>
    </message>
    <message>
        <source>Name a signed file, or a store and a job or a code: see its --help.</source>
        <translation>Eine unterschriebene Datei nennen, oder einen Datenbestand und einen Auftrag oder Code: siehe --help.</translation>
    </message>
    <message>
        <source>Something other than an older record lies there and is not written over; choose another name.</source>
        <translation>Dort liegt etwas anderes als ein älteres Protokoll, das nicht überschrieben wird; wählen Sie einen anderen Namen.</translation>
    </message>
    <message>
        <source>“-” is no place for a file: name one.</source>
        <translation>„-“ ist kein Ort für eine Datei: Nennen Sie einen.</translation>
    </message>
    <message>
        <source>This place is named twice; choose one for each file.</source>
        <translation>Dieser Ort ist zweimal genannt; wählen Sie für jede Datei einen.</translation>
    </message>
    <message>
        <source>Say what the record is wanted as: --pdf, --json, --slip or --summary.</source>
        <translation>Sagen Sie, als was das Protokoll gewünscht ist: --pdf, --json, --slip oder --summary.</translation>
    </message>
    <message>
        <source>This tray has no shims: list them, or leave the tray out.</source>
        <translation>Dieses Sortiment hat keine Scheiben: Führen Sie sie auf oder lassen Sie das Sortiment weg.</translation>
    </message>
    <message>
        <source>This text holds the character U+0000, which no text may: take it out.</source>
        <translation>Dieser Text enthält das Zeichen U+0000, das in keinem Text stehen darf: Nehmen Sie es heraus.</translation>
    </message>
    <message>
        <source>“{0}” stands here twice: take one away.</source>
        <translation>„{0}“ steht hier zweimal: Nehmen Sie eines weg.</translation>
    </message>
    <message>
        <source>The job sheet has no step “{0}”: name one of its steps.</source>
        <translation>Der Arbeitsplan hat keinen Schritt „{0}“: Nennen Sie einen seiner Schritte.</translation>
    </message>
    <message>
        <source>There is no photo “{0}” beside the script: put it there.</source>
        <translation>Neben dem Skript liegt kein Foto „{0}“: Legen Sie es dorthin.</translation>
    </message>
    <message>
        <source>The job sheet does not speak “{0}”: name one of its languages.</source>
        <translation>Den Arbeitsplan gibt es nicht auf „{0}“: Nennen Sie eine seiner Sprachen.</translation>
    </message>
    <message>
        <source>This script has no commands: add some.</source>
        <translation>Dieses Skript hat keine Befehle: Fügen Sie welche hinzu.</translation>
    </message>
    <message>
        <source>The spec sheet has no tray “{0}”: name it as it stands there.</source>
        <translation>Das Datenblatt hat kein Sortiment „{0}“: Nennen Sie es, wie es dort steht.</translation>
    </message>
</context>
<context>
    <name>job</name>
    <message>
        <source>No shim is named: look at the numbers and choose one yourself, with reason.</source>
        <translation>Keine Passscheibe ist genannt: die Zahlen ansehen und selbst eine wählen, mit Grund.</translation>
    </message>
    <message>
        <source>{0} is the best the feel can tell ({1} in 100): more trials of the same shims would not decide it.</source>
        <translation>Mehr als {0} verrät das Gefühl nicht ({1} von 100): weitere Proben mit denselben Passscheiben würden nichts entscheiden.</translation>
    </message>
    <message>
        <source>{0} fits ({1} in 100), but nothing thicker was felt tight: a thicker one may go in.</source>
        <translation>{0} passt ({1} von 100), aber keine dickere war eng: eine dickere geht vielleicht noch hinein.</translation>
    </message>
    <message>
        <source>{0} is the one: {1} in 100 by the trials.</source>
        <translation>{0} ist die richtige: {1} von 100 nach den Proben.</translation>
    </message>
    <message>
        <source>Try {0}.</source>
        <translation>{0} probieren.</translation>
    </message>
    <message>
        <source>Try {0}: about {1} trials left.</source>
        <translation>{0} probieren: noch etwa {1} Proben.</translation>
    </message>
    <message>
        <source>The dial ran backwards. If it does so in this set-up, confirm; else set it up anew.</source>
        <translation>Die Messuhr lief rückwärts. Ist das bei diesem Aufbau so, bestätigen; sonst neu aufbauen.</translation>
    </message>
    <message>
        <source>Fit {0}.</source>
        <translation>{0} einlegen.</translation>
    </message>
    <message>
        <source>Fit {0}: expected float {1} ± {2} mm (95 %), {3} in 100 to be inside the limits at every spot.</source>
        <translation>{0} einlegen: erwartetes Lüftspiel {1} ± {2} mm (95&#xa0;%), {3} von 100 an jedem Messpunkt innerhalb der Grenzen.</translation>
    </message>
    <message>
        <source>{0} mm lies on the border between {1} and {2}: measure again, or choose one.</source>
        <translation>{0} mm liegt an der Grenze zwischen {1} und {2}: noch einmal messen oder eine wählen.</translation>
    </message>
    <message>
        <source>Fit {0}, one step, and measure again: how much a shim moves this float is not known well enough.</source>
        <translation>{0} einlegen, ein Schritt, und wieder messen: wie stark eine Passscheibe dieses Lüftspiel ändert, ist nicht gut genug bekannt.</translation>
    </message>
    <message>
        <source>{0} would be the one, but it is not in the tray: put one in, or take another.</source>
        <translation>{0} wäre die richtige, ist aber nicht im Sortiment: eine hineinlegen oder eine andere nehmen.</translation>
    </message>
    <message>
        <source>Kept, but not judged: no shim is chosen for the {0}. Choose it, or measure the one taken out, then measure once more.</source>
        <translation>Gespeichert, aber nicht bewertet: noch keine Passscheibe gewählt ({0}). Eine wählen oder die ausgebaute messen, dann noch einmal messen.</translation>
    </message>
    <message>
        <source>Even the thinnest shim is too thick. Look at seating, lever and parts.</source>
        <translation>Auch die dünnste Passscheibe ist zu dick. Sitz, Hebel und Teile prüfen.</translation>
    </message>
    <message>
        <source>Even the thickest shim is too thin. Look at seating, lever and parts.</source>
        <translation>Auch die dickste Passscheibe ist zu dünn. Sitz, Hebel und Teile prüfen.</translation>
    </message>
    <message>
        <source>Two trials contradict each other. Seat the bearing and try both shims again, or take back the wrong one.</source>
        <translation>Zwei Proben widersprechen sich. Das Lager neu setzen und beide Passscheiben noch einmal probieren, oder die falsche zurücknehmen.</translation>
    </message>
    <message>
        <source>The depths differ by {0} mm, allowed {1} mm: the bearing or the straightedge is tilted. Seat it and measure again.</source>
        <translation>Die Tiefen weichen um {0} mm voneinander ab, erlaubt {1} mm: das Lager oder das Lineal liegt schief. Setzen und noch einmal messen.</translation>
    </message>
    <message>
        <source>{0} mm of shim cannot be: look for a wrong sign, constant or reference.</source>
        <translation>Eine Passscheibe von {0} mm kann nicht sein: nach falschem Vorzeichen, Konstante oder Bezug suchen.</translation>
    </message>
    <message>
        <source>{0} mm lies outside the tray. Measure again, then look at the parts.</source>
        <translation>{0} mm liegt außerhalb des Sortiments. Noch einmal messen, dann die Teile prüfen.</translation>
    </message>
    <message>
        <source>{0} mm is wanted; {1} is the nearest and lies far from it. Choose with reason.</source>
        <translation>Gesucht sind {0} mm; am nächsten ist {1}, und das liegt weit weg. Mit Grund wählen.</translation>
    </message>
    <message>
        <source>{0} mm is wanted and no shim of the tray is near it. Choose with reason.</source>
        <translation>Gesucht sind {0} mm, und keine Passscheibe des Sortiments liegt in der Nähe. Mit Grund wählen.</translation>
    </message>
    <message>
        <source>Fit {0}: {1} mm is wanted.</source>
        <translation>{0} einlegen: gesucht sind {1} mm.</translation>
    </message>
    <message>
        <source>Floats of both signs: zero was lost. Set the dial to zero and measure again.</source>
        <translation>Lüftspiele mit beiden Vorzeichen: Null ging verloren. Messuhr auf Null stellen und noch einmal messen.</translation>
    </message>
    <message>
        <source>Measure each spot once more: the runs so far do not decide it.</source>
        <translation>Jeden Messpunkt noch einmal messen: die bisherigen Durchgänge entscheiden es nicht.</translation>
    </message>
    <message>
        <source>Trials and float disagree: both cannot be right with {0} fitted. Seat the {1} again and measure once more before the pack comes off.</source>
        <translation>Proben und Lüftspiel widersprechen sich: mit {0} kann nicht beides stimmen. Das Lager zuerst neu setzen ({1}) und noch einmal messen, bevor das Paket abgenommen wird.</translation>
    </message>
    <message>
        <source>The spots differ by {0} mm, allowed {1} mm: a seat or a tilt, no shim cures it. Seat the {2} again and measure once more.</source>
        <translation>Die Messpunkte weichen um {0} mm voneinander ab, erlaubt {1} mm: das ist Sitz oder Neigung, keine Passscheibe hilft. Das Lager zuerst neu setzen ({2}) und noch einmal messen.</translation>
    </message>
    <message>
        <source>Free within {0} to {1} mm at every spot: {2} stays.</source>
        <translation>An jedem Messpunkt frei, {0} bis {1} mm: {2} bleibt.</translation>
    </message>
    <message>
        <source>On the limit, and more runs will not decide it: change the shim, or accept with reason.</source>
        <translation>An der Grenze, und weitere Durchgänge entscheiden es nicht: Passscheibe wechseln oder mit Grund annehmen.</translation>
    </message>
    <message>
        <source>Float as found, for information.</source>
        <translation>Lüftspiel wie vorgefunden, zur Kenntnis.</translation>
    </message>
    <message>
        <source>No shim of the tray brings this disc within its limits. Look at seating and parts.</source>
        <translation>Keine Passscheibe des Sortiments bringt diese Scheibe in ihre Grenzen. Sitz und Teile prüfen.</translation>
    </message>
    <message>
        <source>An entry of the kind {0}, version {1}, was written by a newer program; open this job with the newer program.</source>
        <translation>Ein Eintrag der Art {0}, Version {1}, stammt von einem neueren Programm; diesen Auftrag mit dem neueren Programm öffnen.</translation>
    </message>
    <message>
        <source>A stored entry is not readable any more; check the store.</source>
        <translation>Ein gespeicherter Eintrag ist nicht mehr lesbar; den Datenbestand prüfen.</translation>
    </message>
    <message>
        <source>A field is missing in this stored entry; check the store.</source>
        <translation>In diesem gespeicherten Eintrag fehlt ein Feld; den Datenbestand prüfen.</translation>
    </message>
    <message>
        <source>A field stands twice in this stored entry; check the store.</source>
        <translation>In diesem gespeicherten Eintrag steht ein Feld zweimal; den Datenbestand prüfen.</translation>
    </message>
    <message>
        <source>A field of this stored entry is not known; check the store.</source>
        <translation>Ein Feld dieses gespeicherten Eintrags ist nicht bekannt; den Datenbestand prüfen.</translation>
    </message>
    <message>
        <source>A value in this stored entry is not of its kind; check the store.</source>
        <translation>Ein Wert in diesem gespeicherten Eintrag ist von falscher Art; den Datenbestand prüfen.</translation>
    </message>
    <message>
        <source>Nobody is at the bench: say who works first.</source>
        <translation>Niemand ist an der Werkbank: zuerst angeben, wer arbeitet.</translation>
    </message>
    <message>
        <source>This job is open already: begin another for another vehicle.</source>
        <translation>Dieser Auftrag ist schon offen: für ein anderes Fahrzeug einen anderen beginnen.</translation>
    </message>
    <message>
        <source>There is no job yet: open one first.</source>
        <translation>Es gibt noch keinen Auftrag: zuerst einen öffnen.</translation>
    </message>
    <message>
        <source>This job is signed and closed: nothing in it changes any more.</source>
        <translation>Dieser Auftrag ist unterschrieben und abgeschlossen: nichts darin ändert sich mehr.</translation>
    </message>
    <message>
        <source>This job is parked, waiting for {0}: take it up first.</source>
        <translation>Dieser Auftrag ist zurückgestellt und wartet auf {0}: zuerst wieder aufnehmen.</translation>
    </message>
    <message>
        <source>The job was changed after this signature: the technician signs again.</source>
        <translation>Der Auftrag wurde nach dieser Unterschrift geändert: der Techniker unterschreibt noch einmal.</translation>
    </message>
    <message>
        <source>Say in a few words what is not in order.</source>
        <translation>In wenigen Worten sagen, was nicht in Ordnung ist.</translation>
    </message>
    <message>
        <source>“{0}” is none of the answers of “{1}”: choose one of those shown.</source>
        <translation>„{0}“ ist keine der Antworten auf „{1}“: eine der gezeigten wählen.</translation>
    </message>
    <message>
        <source>Nothing is written here yet: write it, or leave the step open.</source>
        <translation>Hier ist noch nichts geschrieben: etwas schreiben oder den Schritt offen lassen.</translation>
    </message>
    <message>
        <source>“{0}” is no part of this step: choose one of those listed.</source>
        <translation>„{0}“ ist kein Teil dieses Schritts: eines der aufgeführten wählen.</translation>
    </message>
    <message>
        <source>The number of parts must be from 1 to 1000.</source>
        <translation>Die Zahl der Teile muss zwischen 1 und 1000 liegen.</translation>
    </message>
    <message>
        <source>“{0}” is still missing from the list of what was renewed: add it, or go on with a reason.</source>
        <translation>„{0}“ fehlt noch in der Liste des Erneuerten: hinzufügen oder mit Grund weitergehen.</translation>
    </message>
    <message>
        <source>This photo cannot be kept: it must be a picture of at most 20 MB.</source>
        <translation>Dieses Foto lässt sich nicht speichern: es muss ein Bild von höchstens 20 MB sein.</translation>
    </message>
    <message>
        <source>“{0}” asks nothing that could be confirmed so: look at what it asks.</source>
        <translation>„{0}“ fragt nichts, was sich so bestätigen ließe: die Frage dort ansehen.</translation>
    </message>
    <message>
        <source>There are spots 1 to {0}: choose one of them.</source>
        <translation>Es gibt die Messpunkte 1 bis {0}: einen davon wählen.</translation>
    </message>
    <message>
        <source>The method of this gearbox has no float as found: leave “{0}” out, not measured, because the spec sheet does not allow it.</source>
        <translation>Das Verfahren dieses Getriebes kennt kein Lüftspiel wie vorgefunden: „{0}“ auslassen, nicht gemessen, weil das Datenblatt es nicht erlaubt.</translation>
    </message>
    <message>
        <source>Zero came back at {0} mm, more than a division off: discard this run, set zero and lift again.</source>
        <translation>Null kam bei {0} mm zurück, mehr als ein Teilstrich daneben: diesen Durchgang verwerfen, Null einstellen und noch einmal anheben.</translation>
    </message>
    <message>
        <source>Nothing is measured here yet: there is nothing to measure again, begin with spot 1.</source>
        <translation>Hier ist noch nichts gemessen: es gibt nichts noch einmal zu messen, mit Messpunkt 1 beginnen.</translation>
    </message>
    <message>
        <source>The job needs a number: give it one.</source>
        <translation>Der Auftrag braucht eine Nummer: eine angeben.</translation>
    </message>
    <message>
        <source>“{0}” is no date: write year-month-day, as in 2019-04-30.</source>
        <translation>„{0}“ ist kein Datum: Jahr-Monat-Tag schreiben, wie 2019-04-30.</translation>
    </message>
    <message>
        <source>Not yet: {0} is not accepted. Answer it, or go on with a reason there.</source>
        <translation>Noch nicht: {0} ist nicht angenommen. Dort antworten oder mit Grund weitergehen.</translation>
    </message>
    <message>
        <source>The technician signs first: there is nothing to check before.</source>
        <translation>Zuerst unterschreibt der Techniker: vorher gibt es nichts zu prüfen.</translation>
    </message>
    <message>
        <source>The checker is a second person: hand over, or go on with a reason.</source>
        <translation>Der Prüfer ist eine zweite Person: übergeben oder mit Grund weitergehen.</translation>
    </message>
    <message>
        <source>The technician&apos;s signature cannot be left out: sign the job.</source>
        <translation>Die Unterschrift des Technikers kann nicht fehlen: den Auftrag unterschreiben.</translation>
    </message>
    <message>
        <source>“{0}” is required on this sheet: answer it, or go on with a reason.</source>
        <translation>„{0}“ ist auf diesem Arbeitsplan nötig: antworten oder mit Grund weitergehen.</translation>
    </message>
    <message>
        <source>The note is empty: write it first.</source>
        <translation>Die Notiz ist leer: zuerst schreiben.</translation>
    </message>
    <message>
        <source>The job sheet has no such step: look at its list of steps.</source>
        <translation>Der Arbeitsplan hat diesen Schritt nicht: in seiner Schrittliste nachsehen.</translation>
    </message>
    <message>
        <source>Say what the job waits for, so that the next person knows.</source>
        <translation>Angeben, worauf der Auftrag wartet, damit die nächste Person es weiß.</translation>
    </message>
    <message>
        <source>This job is not parked: go on with its next step.</source>
        <translation>Dieser Auftrag ist nicht zurückgestellt: mit seinem nächsten Schritt weitermachen.</translation>
    </message>
    <message>
        <source>Say which other person takes the job over.</source>
        <translation>Angeben, welche andere Person den Auftrag übernimmt.</translation>
    </message>
    <message>
        <source>This assembly has not begun yet: the shim can be changed at its own step.</source>
        <translation>Diese Montage hat noch nicht begonnen: die Passscheibe lässt sich bei ihrem eigenen Schritt wechseln.</translation>
    </message>
    <message>
        <source>There is no such entry, or it was taken back already: look at the job&apos;s list.</source>
        <translation>Diesen Eintrag gibt es nicht, oder er wurde schon zurückgenommen: in der Liste des Auftrags nachsehen.</translation>
    </message>
    <message>
        <source>This entry cannot be taken back: take back the answer or reading that is wrong.</source>
        <translation>Dieser Eintrag lässt sich nicht zurücknehmen: die falsche Antwort oder den falschen Messwert zurücknehmen.</translation>
    </message>
    <message>
        <source>Entries of this assembly stand on it: take those back first.</source>
        <translation>Einträge dieser Montage stehen darauf: zuerst diese zurücknehmen.</translation>
    </message>
    <message>
        <source>A stamp has a sign: read plus or minus on the pack and enter it with the number.</source>
        <translation>Eine Prägung hat ein Vorzeichen: Plus oder Minus am Paket ablesen und mit der Zahl eingeben.</translation>
    </message>
    <message>
        <source>“{0}” asks for no such reading, or for it only once: look at its fields.</source>
        <translation>„{0}“ fragt nicht nach diesem Messwert oder nur einmal nach ihm: die Felder ansehen.</translation>
    </message>
    <message>
        <source>Nothing was entered: enter a reading, or leave the step open.</source>
        <translation>Es ist nichts eingegeben: einen Messwert eingeben oder den Schritt offen lassen.</translation>
    </message>
    <message>
        <source>A completed teach-in has a value after it: read it and enter it.</source>
        <translation>Nach abgeschlossenem Anlernen gibt es einen Wert: ablesen und eingeben.</translation>
    </message>
    <message>
        <source>Say why the teach-in broke off, with its code if it shows one.</source>
        <translation>Angeben, warum das Anlernen abbrach, mit dem Code, falls einer angezeigt wird.</translation>
    </message>
    <message>
        <source>The tray of the {0} has no shim {1}: choose one of its sizes.</source>
        <translation>Im Sortiment ({0}) gibt es keine Passscheibe {1}: eines seiner Maße wählen.</translation>
    </message>
    <message>
        <source>The stamp on the new pack is needed: 0 is a value, blank is not.</source>
        <translation>Die Prägung am neuen Paket wird gebraucht: 0 ist ein Wert, leer ist keiner.</translation>
    </message>
    <message>
        <source>Depths at {0} places are needed, {1} are there: measure the others too.</source>
        <translation>Tiefen an {0} Stellen sind nötig, {1} sind da: auch die anderen messen.</translation>
    </message>
    <message>
        <source>{0} is not the shim that was advised: say why it is taken, or choose the advised one.</source>
        <translation>{0} ist nicht die empfohlene Passscheibe: angeben, warum sie genommen wird, oder die empfohlene wählen.</translation>
    </message>
    <message>
        <source>“{0}” is not asked on this gearbox: its spec sheet finds the shim another way.</source>
        <translation>„{0}“ wird bei diesem Getriebe nicht gefragt: sein Datenblatt findet die Passscheibe auf anderem Weg.</translation>
    </message>
    <message>
        <source>“{0}” comes first: answer it, or go on with a reason there.</source>
        <translation>Zuerst kommt „{0}“: antworten oder dort mit Grund weitergehen.</translation>
    </message>
    <message>
        <source>“{0}” is answered with {1}: answer it so.</source>
        <translation>Antwort auf „{0}“: {1}. So antworten.</translation>
    </message>
    <message>
        <source>A reason is needed here: say it in a few words.</source>
        <translation>Hier ist ein Grund nötig: in wenigen Worten sagen.</translation>
    </message>
    <message>
        <source>Say which instrument read this: a {0} of the workshop&apos;s list.</source>
        <translation>Angeben, womit gemessen wurde ({0}): ein Messmittel aus der Liste der Werkstatt.</translation>
    </message>
    <message>
        <source>{0} is a {1}, and this is read with a {2}: choose another.</source>
        <translation>{0}: das ist die Art {1}, hier wird anders gemessen ({2}). Ein anderes Messmittel wählen.</translation>
    </message>
    <message>
        <source>{0} mm was read where about {1} mm was expected: a whole turn of the dial ({2} mm) may have been missed. Look at the turn counter and measure again, or confirm.</source>
        <translation>{0} mm wurden abgelesen, erwartet waren etwa {1} mm: vielleicht fehlt eine ganze Umdrehung der Messuhr ({2} mm). Den Umdrehungszähler ansehen und noch einmal messen, oder bestätigen.</translation>
    </message>
    <message>
        <source>The shim taken out measured {0} mm, this one has {1} mm: more than one step apart. Look at seating and parts again, or confirm.</source>
        <translation>Die ausgebaute Passscheibe maß {0} mm, diese hat {1} mm: mehr als ein Schritt Unterschied. Sitz und Teile noch einmal prüfen, oder bestätigen.</translation>
    </message>
    <message>
        <source>{0} mm is not the shim chosen ({1}, {2} mm). Measure the shim that lies on this bearing&apos;s place again, or confirm.</source>
        <translation>{0} mm ist nicht die gewählte Passscheibe ({1}, {2} mm). Die Passscheibe, die am Platz dieses Lagers liegt, noch einmal messen, oder bestätigen.</translation>
    </message>
    <message>
        <source>The stamp was read as {0} mm when the pack was unpacked and is {1} mm here. Read it on the pack again, or confirm.</source>
        <translation>Die Prägung wurde beim Auspacken des Pakets als {0} mm gelesen, hier steht {1} mm. Am Paket noch einmal ablesen, oder bestätigen.</translation>
    </message>
    <message>
        <source>Job {0} left pack {1} in this vehicle; this one is {2}. Its floats as found are no wear of that pack. Read the serial again, or confirm.</source>
        <translation>Auftrag {0} ließ Paket {1} in diesem Fahrzeug; dieses ist {2}. Sein Lüftspiel wie vorgefunden ist kein Verschleiß jenes Pakets. Die Seriennummer noch einmal lesen, oder bestätigen.</translation>
    </message>
    <message>
        <source>Job {0} left this disc with {1} mm, now it has {2} mm: wear only adds. It may be another pack. Look at its serial, or confirm.</source>
        <translation>Auftrag {0} ließ diese Scheibe mit {1} mm, jetzt hat sie {2} mm: Verschleiß kommt nur hinzu. Vielleicht ist es ein anderes Paket. Seine Seriennummer ansehen, oder bestätigen.</translation>
    </message>
    <message>
        <source>Both discs are off, opposite ways: the large and the small shim may lie in each other&apos;s place ({0} and {1} mm). Look at both when the pack is off, or confirm.</source>
        <translation>Beide Scheiben liegen daneben, in entgegengesetzter Richtung: vielleicht sind große und kleine Passscheibe vertauscht ({0} und {1} mm). Beide ansehen, wenn das Paket ab ist, oder bestätigen.</translation>
    </message>
    <message>
        <source>{0} was typed without a decimal mark: was {1} meant? Enter it again, or confirm.</source>
        <translation>{0} wurde ohne Komma eingegeben: war {1} gemeint? Neu eingeben oder bestätigen.</translation>
    </message>
    <message>
        <source>This job is sealed: it takes addenda only, each signed by who writes it.</source>
        <translation>Dieser Auftrag ist versiegelt: er nimmt nur Nachträge an, jeder unterschrieben von dem, der ihn schreibt.</translation>
    </message>
    <message>
        <source>What was signed has no digest of its own: report this fault.</source>
        <translation>Das Unterschriebene hat keinen eigenen Prüfwert: diesen Fehler melden.</translation>
    </message>
    <message>
        <source>A job is sealed by those who signed it: the technician, then the checker.</source>
        <translation>Einen Auftrag versiegeln die, die ihn unterschrieben haben: der Techniker, dann der Prüfer.</translation>
    </message>
    <message>
        <source>This job is not sealed: enter it in the job itself.</source>
        <translation>Dieser Auftrag ist nicht versiegelt: im Auftrag selbst eintragen.</translation>
    </message>
    <message>
        <source>The addendum is empty: write what is to be added.</source>
        <translation>Der Nachtrag ist leer: schreiben, was hinzukommt.</translation>
    </message>
    <message>
        <source>“{0}”: sign, or leave it out with a reason.</source>
        <translation>„{0}“: unterschreiben oder mit Grund auslassen.</translation>
    </message>
    <message>
        <source>“{0}” is a hold point: answer it, or go on with a reason there.</source>
        <translation>„{0}“ ist ein Haltepunkt: antworten oder dort mit Grund weitergehen.</translation>
    </message>
    <message>
        <source>“{0}” was not done: the record says so.</source>
        <translation>„{0}“ wurde nicht getan: das Protokoll sagt es so.</translation>
    </message>
    <message>
        <source>“{0}” is not as it should be: answer it anew, or say why it stays.</source>
        <translation>„{0}“ ist nicht, wie es sein soll: neu antworten oder sagen, warum es bleibt.</translation>
    </message>
    <message>
        <source>“{0}” asks something: say yes to it, or enter it anew.</source>
        <translation>„{0}“ hat eine Frage: bestätigen oder neu eingeben.</translation>
    </message>
    <message>
        <source>“{0}” may have moved while the job lay still: prove it again.</source>
        <translation>„{0}“ kann sich verändert haben, während der Auftrag lag: noch einmal prüfen.</translation>
    </message>
    <message>
        <source>These floats may be of another unit than the one taken ({0}). Enter them again with their unit, or confirm that they are right.</source>
        <translation>Diese Lüftspiele haben vielleicht eine andere Einheit als die angenommene ({0}). Mit ihrer Einheit neu eingeben oder bestätigen, dass sie stimmen.</translation>
    </message>
    <message>
        <source>Not judged: the tray or an instrument has what nothing can be reckoned with, as two shims that measure alike, or an uncertainty or resolution of 0. Put it right in the workshop&apos;s lists, then measure once more.</source>
        <translation>Nicht bewertet: Mit dem Sortiment oder einem Messmittel lässt sich nicht rechnen, etwa zwei gleich dicke Passscheiben oder eine Unsicherheit oder Auflösung von 0. In den Listen der Werkstatt richtigstellen, dann noch einmal messen.</translation>
    </message>
    <message>
        <source>This has {0} characters, at most {1} are kept: say it in fewer.</source>
        <translation>Das hat {0} Zeichen, höchstens {1} werden aufbewahrt: bitte kürzer fassen.</translation>
    </message>
    <message>
        <source>There is a line break or another character in this that does not print: write it without.</source>
        <translation>Darin steht ein Zeilenumbruch oder ein anderes Zeichen, das nicht druckt: bitte ohne schreiben.</translation>
    </message>
</context>
<context>
    <name>json</name>
    <message>
        <source>This is nested too deeply to be stored; report this fault.</source>
        <translation>Das ist zu tief verschachtelt, um gespeichert zu werden; diesen Fehler melden.</translation>
    </message>
    <message>
        <source>Only whole numbers are stored here, in the smallest unit; report this fault.</source>
        <translation>Hier werden nur ganze Zahlen gespeichert, in der kleinsten Einheit; diesen Fehler melden.</translation>
    </message>
    <message>
        <source>This number is too large to be stored exactly; report this fault.</source>
        <translation>Diese Zahl ist zu groß, um genau gespeichert zu werden; diesen Fehler melden.</translation>
    </message>
    <message>
        <source>This text is not UTF-8; enter it again.</source>
        <translation>Dieser Text ist nicht UTF-8; neu eingeben.</translation>
    </message>
    <message>
        <source>A name of a field is not plain ASCII; report this fault.</source>
        <translation>Ein Feldname ist nicht reines ASCII; diesen Fehler melden.</translation>
    </message>
    <message>
        <source>An object in braces { } has to stand here.</source>
        <translation>Hier muss ein Objekt in geschweiften Klammern { } stehen.</translation>
    </message>
    <message>
        <source>This field is not known here; remove it or correct its name.</source>
        <translation>Dieses Feld ist hier nicht bekannt; entfernen oder seinen Namen berichtigen.</translation>
    </message>
    <message>
        <source>This field stands here twice; remove one of the two.</source>
        <translation>Dieses Feld steht hier zweimal; eines von beiden entfernen.</translation>
    </message>
    <message>
        <source>This field is missing; add it.</source>
        <translation>Dieses Feld fehlt; hinzufügen.</translation>
    </message>
    <message>
        <source>A text in quotation marks has to stand here.</source>
        <translation>Hier muss ein Text in Anführungszeichen stehen.</translation>
    </message>
    <message>
        <source>Either true or false has to stand here.</source>
        <translation>Hier muss true oder false stehen.</translation>
    </message>
    <message>
        <source>A whole number without quotation marks has to stand here.</source>
        <translation>Hier muss eine ganze Zahl ohne Anführungszeichen stehen.</translation>
    </message>
    <message>
        <source>A whole number from {0} to {1} has to stand here.</source>
        <translation>Hier muss eine ganze Zahl von {0} bis {1} stehen.</translation>
    </message>
    <message>
        <source>A list in brackets [ ] has to stand here.</source>
        <translation>Hier muss eine Liste in eckigen Klammern [ ] stehen.</translation>
    </message>
    <message>
        <source>Line {0}, column {1}: lists and objects are nested too deeply; this is not a file of this program.</source>
        <translation>Zeile {0}, Spalte {1}: Listen und Objekte sind zu tief verschachtelt; das ist keine Datei dieses Programms.</translation>
    </message>
    <message>
        <source>The text has {0} bytes, more than the {1} that are read; this is not a file of this program.</source>
        <translation>Der Text hat {0} Bytes, gelesen werden höchstens {1}; das ist keine Datei dieses Programms.</translation>
    </message>
    <message>
        <source>Line {0}, column {1}: this backslash sequence is not allowed; correct it.</source>
        <translation>Zeile {0}, Spalte {1}: diese Folge mit Rückstrich ist nicht erlaubt; berichtigen.</translation>
    </message>
    <message>
        <source>Line {0}, column {1}: a text is not closed; put the missing quotation mark at its end.</source>
        <translation>Zeile {0}, Spalte {1}: ein Text ist nicht geschlossen; das fehlende Anführungszeichen ans Ende setzen.</translation>
    </message>
    <message>
        <source>Line {0}, column {1}: this character is not UTF-8; save the file as UTF-8.</source>
        <translation>Zeile {0}, Spalte {1}: dieses Zeichen ist nicht UTF-8; die Datei als UTF-8 speichern.</translation>
    </message>
    <message>
        <source>Line {0}, column {1}: a number is written wrongly; write it like 12 or -0.5, with a point.</source>
        <translation>Zeile {0}, Spalte {1}: eine Zahl ist falsch geschrieben; wie 12 oder -0.5 schreiben, mit Punkt.</translation>
    </message>
    <message>
        <source>Line {0}, column {1}: the text ends too early; take a complete copy of it.</source>
        <translation>Zeile {0}, Spalte {1}: der Text endet zu früh; eine vollständige Kopie nehmen.</translation>
    </message>
    <message>
        <source>Line {0}, column {1}: this does not belong here; correct the text so that it is JSON.</source>
        <translation>Zeile {0}, Spalte {1}: das gehört nicht hierher; den Text so berichtigen, dass er JSON ist.</translation>
    </message>
</context>
<context>
    <name>past</name>
    <message>
        <source>The printer does not take the pages. Look at the printer, or save the record as PDF.</source>
        <translation>Der Drucker nimmt die Seiten nicht an. Den Drucker prüfen oder das Protokoll als PDF speichern.</translation>
    </message>
    <message>
        <source>Record of job %1</source>
        <translation>Protokoll zu Auftrag %1</translation>
    </message>
    <message>
        <source>Save the record as PDF</source>
        <translation>Protokoll als PDF speichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Slip of job %1</source>
        <translation>Zettel zu Auftrag %1</translation>
    </message>
    <message>
        <source>Save the measurements</source>
        <translation>Messwerte speichern</translation>
    </message>
    <message>
        <source>Measurements (*.csv *.json)</source>
        <translation>Messwerte (*.csv *.json)</translation>
    </message>
</context>
<context>
    <name>print</name>
    <message>
        <source>A font built into the program cannot be read; install the program anew.</source>
        <translation>Eine eingebaute Schrift des Programms ist nicht lesbar; das Programm neu installieren.</translation>
    </message>
    <message>
        <source>The record cannot be written here ({0}); choose another folder or make room.</source>
        <translation>Das Protokoll lässt sich hier nicht schreiben ({0}); einen anderen Ordner wählen oder Platz schaffen.</translation>
    </message>
    <message>
        <source>Something other than a PDF lies there and is not written over; choose another name.</source>
        <translation>Dort liegt etwas anderes als ein PDF, das nicht überschrieben wird; wählen Sie einen anderen Namen.</translation>
    </message>
</context>
<context>
    <name>quantity</name>
    <message>
        <source>This is not a number; type digits with at most one comma or point.</source>
        <translation>Das ist keine Zahl; Ziffern mit höchstens einem Komma oder Punkt eingeben.</translation>
    </message>
    <message>
        <source>The number is not finished; type the missing digits.</source>
        <translation>Die Zahl ist nicht zu Ende; die fehlenden Ziffern eingeben.</translation>
    </message>
    <message>
        <source>Nothing is entered yet; type a number.</source>
        <translation>Noch ist nichts eingegeben; eine Zahl eingeben.</translation>
    </message>
    <message>
        <source>There are two decimal marks; type only one, and none between thousands.</source>
        <translation>Es stehen zwei Dezimalzeichen da; nur eines eingeben, und keines zwischen Tausendern.</translation>
    </message>
    <message>
        <source>There is a space between the digits; type the number without it.</source>
        <translation>Zwischen den Ziffern steht ein Leerzeichen; die Zahl ohne eingeben.</translation>
    </message>
    <message>
        <source>This unit does not fit here; leave it out or type one of: {0}.</source>
        <translation>Diese Einheit passt hier nicht; weglassen oder eine davon eingeben: {0}.</translation>
    </message>
    <message>
        <source>Only a whole number fits here; leave out the decimals.</source>
        <translation>Hier passt nur eine ganze Zahl; die Nachkommastellen weglassen.</translation>
    </message>
    <message>
        <source>That is finer than can be kept; in {0}, type no more decimals than {1}.</source>
        <translation>Das ist feiner, als gespeichert werden kann; in {0} höchstens so viele Nachkommastellen: {1}.</translation>
    </message>
    <message>
        <source>The number has to be smaller than {0}; check the decimal mark.</source>
        <translation>Die Zahl muss kleiner als {0} sein; das Komma prüfen.</translation>
    </message>
    <message>
        <source>The number cannot be less than {0}; check the sign.</source>
        <translation>Die Zahl kann nicht kleiner als {0} sein; das Vorzeichen prüfen.</translation>
    </message>
</context>
<context>
    <name>record</name>
    <message>
        <source>In order / not in order, because ______________________________________</source>
        <translation>In Ordnung / nicht in Ordnung, weil ____________________________________</translation>
    </message>
    <message>
        <source>Further attempts ____________  ____________</source>
        <translation>Weitere Versuche ____________  ____________</translation>
    </message>
    <message>
        <source>Number ____________________  batch ____________________</source>
        <translation>Nummer ____________________  Charge ____________________</translation>
    </message>
    <message>
        <source>Shim taken ____________ mm</source>
        <translation>Genommene Passscheibe ____________ mm</translation>
    </message>
    <message>
        <source>Spot {0}: rest ________ lifted ________ zero after ________</source>
        <translation>Messpunkt {0}: Ruhe ________ angehoben ________ Null danach ________</translation>
    </message>
    <message>
        <source>, before</source>
        <translation>, vorher</translation>
    </message>
    <message>
        <source>, after</source>
        <translation>, nachher</translation>
    </message>
    <message>
        <source>Name ______________________  time ______________  ______________________</source>
        <translation>Name ______________________  Zeit ______________  ______________________</translation>
    </message>
    <message>
        <source> (hold point)</source>
        <translation> (Haltepunkt)</translation>
    </message>
    <message>
        <source>Caution: {0} {1}</source>
        <translation>Achtung: {0} {1}</translation>
    </message>
    <message>
        <source>Job ______________</source>
        <translation>Auftrag ______________</translation>
    </message>
    <message>
        <source>DEMONSTRATION VALUES</source>
        <translation>DEMONSTRATIONSWERTE</translation>
    </message>
    <message>
        <source>Vehicle number ______________________________  odometer ______________  gearbox ______________________</source>
        <translation>Fahrzeugnummer ______________________________  Kilometerstand ______________  Getriebe ______________________</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>in order</source>
        <translation>in Ordnung</translation>
    </message>
    <message>
        <source>not in order: {0}</source>
        <translation>nicht in Ordnung: {0}</translation>
    </message>
    <message>
        <source>not required: {0}</source>
        <translation>nicht nötig: {0}</translation>
    </message>
    <message>
        <source>parked, waits for {0}, due {1}</source>
        <translation>zurückgestellt, wartet auf {0}, fällig am {1}</translation>
    </message>
    <message>
        <source>parked, waits for {0}</source>
        <translation>zurückgestellt, wartet auf {0}</translation>
    </message>
    <message>
        <source>taken up</source>
        <translation>wieder aufgenommen</translation>
    </message>
    <message>
        <source>taken up; asked again: {0}</source>
        <translation>wieder aufgenommen; noch einmal gefragt: {0}</translation>
    </message>
    <message>
        <source>handed over to {0}</source>
        <translation>übergeben an {0}</translation>
    </message>
    <message>
        <source>note at “{0}”: {1}</source>
        <translation>Notiz bei „{0}“: {1}</translation>
    </message>
    <message>
        <source>note: {0}</source>
        <translation>Notiz: {0}</translation>
    </message>
    <message>
        <source>large bearing&apos;s shim</source>
        <translation>Passscheibe des großen Lagers</translation>
    </message>
    <message>
        <source>small bearing&apos;s shim</source>
        <translation>Passscheibe des kleinen Lagers</translation>
    </message>
    <message>
        <source>no shim</source>
        <translation>keine Passscheibe</translation>
    </message>
    <message>
        <source>pack off again, assembly {0} begun, to change: {1}; “{2}”</source>
        <translation>Paket wieder ab, Montage {0} begonnen, zu wechseln: {1}; „{2}“</translation>
    </message>
    <message>
        <source>“{0}”, asked: {1} Confirmed as it stands: “{2}”</source>
        <translation>„{0}“, gefragt: {1} Bestätigt, wie es steht: „{2}“</translation>
    </message>
    <message>
        <source>{0}, assembly {1}</source>
        <translation>{0}, Montage {1}</translation>
    </message>
    <message>
        <source>{0} to {1}</source>
        <translation>{0} bis {1}</translation>
    </message>
    <message>
        <source>Answers; hold points in bold</source>
        <translation>Antworten; Haltepunkte fett</translation>
    </message>
    <message>
        <source>One other step done or in order.</source>
        <translation>Ein weiterer Schritt erledigt oder in Ordnung.</translation>
    </message>
    <message>
        <source>{0} other steps done or in order.</source>
        <translation>{0} weitere Schritte erledigt oder in Ordnung.</translation>
    </message>
    <message>
        <source>The clock had been set back before entry {0}; the order is that of the entries, not of the clock.</source>
        <translation>Vor Eintrag {0} war die Uhr zurückgestellt worden; die Reihenfolge ist die der Einträge, nicht die der Uhr.</translation>
    </message>
    <message>
        <source>Course of the job</source>
        <translation>Verlauf des Auftrags</translation>
    </message>
    <message>
        <source>{0}{1} (entered by {2}), taken back by {3}: “{4}”.</source>
        <translation>{0}{1} (eingegeben von {2}), zurückgenommen von {3}: „{4}“.</translation>
    </message>
    <message>
        <source>Taken back</source>
        <translation>Zurückgenommen</translation>
    </message>
    <message>
        <source>{0}: {1} ({2})</source>
        <translation>{0}: {1} ({2})</translation>
    </message>
    <message>
        <source>Values of the spec sheet worked to, nothing judged by them</source>
        <translation>Werte des Datenblatts, nach denen gearbeitet und nichts bewertet wird</translation>
    </message>
    <message>
        <source>{0}: {1}{2}, file {3}…</source>
        <translation>{0}: {1}{2}, Datei {3}…</translation>
    </message>
    <message>
        <source>Photos, kept with the job</source>
        <translation>Fotos, beim Auftrag gespeichert</translation>
    </message>
    <message>
        <source>{0}: left out by {1}, “{2}”.</source>
        <translation>{0}: ausgelassen von {1}, „{2}“.</translation>
    </message>
    <message>
        <source>{0}: accepted by {1}, “{2}”.</source>
        <translation>{0}: angenommen von {1}, „{2}“.</translation>
    </message>
    <message>
        <source>, assembly {0}</source>
        <translation>, Montage {0}</translation>
    </message>
    <message>
        <source>{0} disc, assembly {1}, series {2}: trials and float did not agree ({3}). {4}</source>
        <translation>{0} Scheibe, Montage {1}, Messreihe {2}: Proben und Lüftspiel stimmten nicht überein ({3}). {4}</translation>
    </message>
    <message>
        <source>{0}: not measured, left out by {1}, “{2}”.</source>
        <translation>{0}: nicht gemessen, ausgelassen von {1}, „{2}“.</translation>
    </message>
    <message>
        <source>{0}: not measured, not required: “{2}”, {1}.</source>
        <translation>{0}: nicht gemessen, nicht nötig: „{2}“, {1}.</translation>
    </message>
    <message>
        <source>Deviations</source>
        <translation>Abweichungen</translation>
    </message>
    <message>
        <source>Trials against float</source>
        <translation>Proben gegen Lüftspiel</translation>
    </message>
    <message>
        <source>Not measured</source>
        <translation>Nicht gemessen</translation>
    </message>
    <message>
        <source>No reason given: {0}.</source>
        <translation>Kein Grund angegeben: {0}.</translation>
    </message>
    <message>
        <source>So far: {0}.</source>
        <translation>Bisher: {0}.</translation>
    </message>
    <message>
        <source>Job opened</source>
        <translation>Auftrag geöffnet</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>In order</source>
        <translation>In Ordnung</translation>
    </message>
    <message>
        <source>Not in order: {0}</source>
        <translation>Nicht in Ordnung: {0}</translation>
    </message>
    <message>
        <source>{0}, number {1}, quantity {2} {3}</source>
        <translation>{0}, Nummer {1}, Menge {2} {3}</translation>
    </message>
    <message>
        <source>Photo {0}</source>
        <translation>Foto {0}</translation>
    </message>
    <message>
        <source>Shim {0} {1}</source>
        <translation>Passscheibe {0} {1}</translation>
    </message>
    <message>
        <source>Depths {0}, reference {1}</source>
        <translation>Tiefen {0}, Bezug {1}</translation>
    </message>
    <message>
        <source>Stamp {0}</source>
        <translation>Prägung {0}</translation>
    </message>
    <message>
        <source>Spot {0}: rest {1}, lifted {2}</source>
        <translation>Messpunkt {0}: Ruhe {1}, angehoben {2}</translation>
    </message>
    <message>
        <source>Zero after {0}</source>
        <translation>Null danach {0}</translation>
    </message>
    <message>
        <source>Series {0} begun</source>
        <translation>Messreihe {0} begonnen</translation>
    </message>
    <message>
        <source>Confirmed as it stands: {0}</source>
        <translation>Bestätigt, wie es steht: {0}</translation>
    </message>
    <message>
        <source>Shim {0} chosen</source>
        <translation>Passscheibe {0} gewählt</translation>
    </message>
    <message>
        <source>Teach-in, attempt {0}</source>
        <translation>Anlernen, Versuch {0}</translation>
    </message>
    <message>
        <source>{0} before {1}</source>
        <translation>{0} vorher {1}</translation>
    </message>
    <message>
        <source>{0} after {1}</source>
        <translation>{0} nachher {1}</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Unterschrieben</translation>
    </message>
    <message>
        <source>Deviation: {0}</source>
        <translation>Abweichung: {0}</translation>
    </message>
    <message>
        <source>Not required: {0}</source>
        <translation>Nicht nötig: {0}</translation>
    </message>
    <message>
        <source>Note: {0}</source>
        <translation>Notiz: {0}</translation>
    </message>
    <message>
        <source>Parked: {0}</source>
        <translation>Zurückgestellt: {0}</translation>
    </message>
    <message>
        <source>Taken up</source>
        <translation>Wieder aufgenommen</translation>
    </message>
    <message>
        <source>Handed over to {0}</source>
        <translation>Übergeben an {0}</translation>
    </message>
    <message>
        <source>Assembly {0} begun: {1}</source>
        <translation>Montage {0} begonnen: {1}</translation>
    </message>
    <message>
        <source>{0} as found</source>
        <translation>{0} wie vorgefunden</translation>
    </message>
    <message>
        <source>, seated again</source>
        <translation>, neu gesetzt</translation>
    </message>
    <message>
        <source>, measured again</source>
        <translation>, noch einmal gemessen</translation>
    </message>
    <message>
        <source>, runs 1 to {0}</source>
        <translation>, Durchgänge 1 bis {0}</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>as before</source>
        <translation>wie zuvor</translation>
    </message>
    <message>
        <source>for information</source>
        <translation>zur Kenntnis</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>nicht bewertet</translation>
    </message>
    <message>
        <source>Disc, assembly</source>
        <translation>Scheibe, Montage</translation>
    </message>
    <message>
        <source>Spot {0}</source>
        <translation>Messpunkt {0}</translation>
    </message>
    <message>
        <source>Spread</source>
        <translation>Streuung</translation>
    </message>
    <message>
        <source>± (95 %)</source>
        <translation>± (95&#xa0;%)</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Bewertung</translation>
    </message>
    <message>
        <source>Instrument, by, time</source>
        <translation>Messmittel, wer, Zeit</translation>
    </message>
    <message>
        <source>limits {0} to {1}, spread at most {2}</source>
        <translation>Grenzen {0} bis {1}, Streuung höchstens {2}</translation>
    </message>
    <message>
        <source>Float, mm</source>
        <translation>Lüftspiel, mm</translation>
    </message>
    <message>
        <source>lower {0}; upper {1}</source>
        <translation>unten {0}; oben {1}</translation>
    </message>
    <message>
        <source>not looked at</source>
        <translation>nicht angesehen</translation>
    </message>
    <message>
        <source>Float, every run as entered, mm: rest to lifted (zero after)</source>
        <translation>Lüftspiel, jeder Durchgang wie eingegeben, mm: Ruhe bis angehoben (Null danach)</translation>
    </message>
    <message>
        <source>{0} disc, {1}</source>
        <translation>{0} Scheibe, {1}</translation>
    </message>
    <message>
        <source>Entry {0} is missing; entry {1} stands in its place.</source>
        <translation>Eintrag {0} fehlt; an seiner Stelle steht Eintrag {1}.</translation>
    </message>
    <message>
        <source>This entry does not follow the one before it; one of the two was changed after it was written.</source>
        <translation>Dieser Eintrag folgt nicht auf den davor; einer der beiden wurde nach dem Schreiben geändert.</translation>
    </message>
    <message>
        <source>This entry was changed after it was written.</source>
        <translation>Dieser Eintrag wurde nach dem Schreiben geändert.</translation>
    </message>
    <message>
        <source>Clutch pack job record</source>
        <translation>Protokoll zum Kupplungspaket</translation>
    </message>
    <message>
        <source>Job {0}</source>
        <translation>Auftrag {0}</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>erased</source>
        <translation>gelöscht</translation>
    </message>
    <message>
        <source>“{0}”</source>
        <translation>„{0}“</translation>
    </message>
    <message>
        <source>Chassis no.</source>
        <translation>Fahrgestellnr.</translation>
    </message>
    <message>
        <source>No VIN because</source>
        <translation>Keine FIN, weil</translation>
    </message>
    <message>
        <source>VIN</source>
        <translation>FIN</translation>
    </message>
    <message>
        <source>odometer not read</source>
        <translation>Kilometerstand nicht abgelesen</translation>
    </message>
    <message>
        <source>Plate, odometer</source>
        <translation>Kennzeichen, Kilometerstand</translation>
    </message>
    <message>
        <source>unit {0}</source>
        <translation>Getriebe {0}</translation>
    </message>
    <message>
        <source>serial {0}</source>
        <translation>Seriennummer {0}</translation>
    </message>
    <message>
        <source>built {0}</source>
        <translation>gebaut {0}</translation>
    </message>
    <message>
        <source>Gearbox</source>
        <translation>Getriebe</translation>
    </message>
    <message>
        <source>spec sheet {0}, issue {1}</source>
        <translation>Datenblatt {0}, Ausgabe {1}</translation>
    </message>
    <message>
        <source>demonstration values</source>
        <translation>Demonstrationswerte</translation>
    </message>
    <message>
        <source>reference {0}</source>
        <translation>Zeichen {0}</translation>
    </message>
    <message>
        <source>Received</source>
        <translation>Angenommen</translation>
    </message>
    <message>
        <source>Complaint</source>
        <translation>Beanstandung</translation>
    </message>
    <message>
        <source>Limits from</source>
        <translation>Grenzen aus</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>below</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>{0} · page {1} of {2}</source>
        <translation>{0} · Seite {1} von {2}</translation>
    </message>
    <message>
        <source>equal</source>
        <translation>gleich</translation>
    </message>
    <message>
        <source>attempt {0} of {1}</source>
        <translation>Versuch {0} von {1}</translation>
    </message>
    <message>
        <source>attempt {0}</source>
        <translation>Versuch {0}</translation>
    </message>
    <message>
        <source>entered again below</source>
        <translation>unten neu eingegeben</translation>
    </message>
    <message>
        <source> (calibration overdue)</source>
        <translation> (Kalibrierung überfällig)</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Assembly</source>
        <translation>Montage</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>Other readings</source>
        <translation>Weitere Messwerte</translation>
    </message>
    <message>
        <source>Readings without a limit</source>
        <translation>Messwerte ohne Grenze</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Batch or serial</source>
        <translation>Charge oder Seriennummer</translation>
    </message>
    <message>
        <source>By, time</source>
        <translation>Wer, Zeit</translation>
    </message>
    <message>
        <source>Qty</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Renewed</source>
        <translation>Erneuert</translation>
    </message>
    <message>
        <source>Attempt</source>
        <translation>Versuch</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Nachher</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>nicht abgelesen</translation>
    </message>
    <message>
        <source>completed</source>
        <translation>abgeschlossen</translation>
    </message>
    <message>
        <source>not completed</source>
        <translation>nicht abgeschlossen</translation>
    </message>
    <message>
        <source>Teach-in, every attempt</source>
        <translation>Anlernen, jeder Versuch</translation>
    </message>
    <message>
        <source>{0} disc free within limits at the {1} assembly.</source>
        <translation>{0} Scheibe frei, innerhalb der Grenzen, {1} Montage.</translation>
    </message>
    <message>
        <source>{0} disc free close to its limit at the {1} assembly.</source>
        <translation>{0} Scheibe frei, nahe an ihrer Grenze, {1} Montage.</translation>
    </message>
    <message>
        <source>{0} disc {1} at the {2} assembly, accepted with a reason, below.</source>
        <translation>{0} Scheibe {1}, {2} Montage, mit Grund angenommen, siehe unten.</translation>
    </message>
    <message>
        <source>{0} disc not free within limits at the {1} assembly: {2}.</source>
        <translation>{0} Scheibe nicht frei innerhalb der Grenzen, {1} Montage: {2}.</translation>
    </message>
    <message>
        <source>{0} disc measured at the {1} assembly, not judged.</source>
        <translation>{0} Scheibe gemessen, {1} Montage, nicht bewertet.</translation>
    </message>
    <message>
        <source>Float of the {0} disc not measured.</source>
        <translation>Lüftspiel nicht gemessen: Scheibe {0}.</translation>
    </message>
    <message>
        <source>lower</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>upper</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>Both discs free within limits at the {0} assembly.</source>
        <translation>Beide Scheiben frei, innerhalb der Grenzen, {0} Montage.</translation>
    </message>
    <message>
        <source>Large bearing shim {0}, small bearing shim {1}.</source>
        <translation>Passscheibe am großen Lager {0}, am kleinen Lager {1}.</translation>
    </message>
    <message>
        <source>Large bearing shim {0}.</source>
        <translation>Passscheibe am großen Lager {0}.</translation>
    </message>
    <message>
        <source>No shim on record for the large bearing.</source>
        <translation>Für das große Lager ist keine Passscheibe festgehalten.</translation>
    </message>
    <message>
        <source>Small bearing shim {0}.</source>
        <translation>Passscheibe am kleinen Lager {0}.</translation>
    </message>
    <message>
        <source>No shim on record for the small bearing.</source>
        <translation>Für das kleine Lager ist keine Passscheibe festgehalten.</translation>
    </message>
    <message>
        <source>Teach-in completed, road test passed.</source>
        <translation>Anlernen abgeschlossen, Probefahrt bestanden.</translation>
    </message>
    <message>
        <source>Teach-in completed.</source>
        <translation>Anlernen abgeschlossen.</translation>
    </message>
    <message>
        <source>Teach-in not done.</source>
        <translation>Nicht angelernt.</translation>
    </message>
    <message>
        <source>Teach-in not completed.</source>
        <translation>Anlernen nicht abgeschlossen.</translation>
    </message>
    <message>
        <source>Road test passed.</source>
        <translation>Probefahrt bestanden.</translation>
    </message>
    <message>
        <source>Road test not passed.</source>
        <translation>Probefahrt nicht bestanden.</translation>
    </message>
    <message>
        <source>Road test not done.</source>
        <translation>Keine Probefahrt.</translation>
    </message>
    <message>
        <source>No deviation.</source>
        <translation>Keine Abweichung.</translation>
    </message>
    <message>
        <source>One deviation, below.</source>
        <translation>Eine Abweichung, siehe unten.</translation>
    </message>
    <message>
        <source>{0} deviations, below.</source>
        <translation>{0} Abweichungen, siehe unten.</translation>
    </message>
    <message>
        <source>This job was never opened.</source>
        <translation>Dieser Auftrag wurde nie geöffnet.</translation>
    </message>
    <message>
        <source>Open job: not finished; next is “{0}”.</source>
        <translation>Offener Auftrag: nicht abgeschlossen; als Nächstes „{0}“.</translation>
    </message>
    <message>
        <source>Open job: not finished.</source>
        <translation>Offener Auftrag: nicht abgeschlossen.</translation>
    </message>
    <message>
        <source>by depth, details below</source>
        <translation>nach Tiefenmaß, Einzelheiten unten</translation>
    </message>
    <message>
        <source>by depth, measured {0} times, details below</source>
        <translation>nach Tiefenmaß, {0}-mal gemessen, Einzelheiten unten</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>keine gewählt</translation>
    </message>
    <message>
        <source>chosen on the gauge trials</source>
        <translation>nach den Proben mit der Lehre gewählt</translation>
    </message>
    <message>
        <source>chosen on the depths</source>
        <translation>nach den Tiefen gewählt</translation>
    </message>
    <message>
        <source>chosen on the float</source>
        <translation>nach dem Lüftspiel gewählt</translation>
    </message>
    <message>
        <source>chosen by hand</source>
        <translation>von Hand gewählt</translation>
    </message>
    <message>
        <source>{0} bearing, assembly {1}: shim {2}, in the tray {3} mm, {4}, {5}.</source>
        <translation>{0} Lager, Montage {1}: Passscheibe {2}, im Sortiment {3} mm, {4}, {5}.</translation>
    </message>
    <message>
        <source>Chance that it is the best fitting one: {0} %.</source>
        <translation>Wahrscheinlichkeit, dass sie am besten passt: {0}&#xa0;%.</translation>
    </message>
    <message>
        <source>Reason: “{0}”.</source>
        <translation>Grund: „{0}“.</translation>
    </message>
    <message>
        <source>Advice then: {0}</source>
        <translation>Rat damals: {0}</translation>
    </message>
    <message>
        <source>{0} bearing, assembly {1}: depths {2}; reference {3}; {4}; {5}.</source>
        <translation>{0} Lager, Montage {1}: Tiefen {2}; Bezug {3}; {4}; {5}.</translation>
    </message>
    <message>
        <source>stamp on the pack {0}</source>
        <translation>Prägung am Paket {0}</translation>
    </message>
    <message>
        <source>no stamp used</source>
        <translation>keine Prägung verwendet</translation>
    </message>
    <message>
        <source>Bearing</source>
        <translation>Lager</translation>
    </message>
    <message>
        <source>Trials, in order</source>
        <translation>Proben, der Reihe nach</translation>
    </message>
    <message>
        <source>Fitted</source>
        <translation>Eingelegt</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Taken out of the vehicle</source>
        <translation>Aus dem Fahrzeug ausgebaut</translation>
    </message>
    <message>
        <source>Shims, mm</source>
        <translation>Passscheiben, mm</translation>
    </message>
    <message>
        <source>How the shims were found</source>
        <translation>Wie die Passscheiben gefunden wurden</translation>
    </message>
    <message>
        <source>not sealed:</source>
        <translation>nicht versiegelt:</translation>
    </message>
    <message>
        <source>draft</source>
        <translation>Entwurf</translation>
    </message>
    <message>
        <source>Not sealed: a draft that may still change.</source>
        <translation>Nicht versiegelt: ein Entwurf, der sich noch ändern kann.</translation>
    </message>
    <message>
        <source>Limits and values are demonstration values: never work to them on a vehicle; the vehicle maker&apos;s service information and local rules hold.</source>
        <translation>Grenzen und Werte sind Demonstrationswerte: nie an einem Fahrzeug danach arbeiten; es gelten die Serviceangaben des Fahrzeugherstellers und die örtlichen Vorschriften.</translation>
    </message>
    <message>
        <source>The vehicle maker&apos;s service information and local rules hold.</source>
        <translation>Es gelten die Serviceangaben des Fahrzeugherstellers und die örtlichen Vorschriften.</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Kunde</translation>
    </message>
    <message>
        <source>after the trials {0}</source>
        <translation>nach den Proben {0}</translation>
    </message>
    <message>
        <source>from the depths {0}</source>
        <translation>aus den Tiefen {0}</translation>
    </message>
    <message>
        <source>without trials or depths</source>
        <translation>ohne Proben oder Tiefen</translation>
    </message>
    <message>
        <source>{0} bearing, assembly {1}</source>
        <translation>{0} Lager, Montage {1}</translation>
    </message>
    <message>
        <source>{0}: no shim chosen yet, {1}.</source>
        <translation>{0}: noch keine Passscheibe gewählt, {1}.</translation>
    </message>
    <message>
        <source>{0}: shim {1}, {2}.</source>
        <translation>{0}: Passscheibe {1}, {2}.</translation>
    </message>
    <message>
        <source>Reason given: “{0}”.</source>
        <translation>Angegebener Grund: „{0}“.</translation>
    </message>
    <message>
        <source>{0} disc as found</source>
        <translation>{0} Scheibe wie vorgefunden</translation>
    </message>
    <message>
        <source>{0} disc, assembly {1}, series {2}</source>
        <translation>{0} Scheibe, Montage {1}, Messreihe {2}</translation>
    </message>
    <message>
        <source>{0}: float not judged.</source>
        <translation>{0}: Lüftspiel nicht bewertet.</translation>
    </message>
    <message>
        <source>{0}: mean float {1} mm</source>
        <translation>{0}: mittleres Lüftspiel {1} mm</translation>
    </message>
    <message>
        <source>Deviation at “{0}”: “{1}”.</source>
        <translation>Abweichung bei „{0}“: „{1}“.</translation>
    </message>
    <message>
        <source>Not measured: {0}.</source>
        <translation>Nicht gemessen: {0}.</translation>
    </message>
    <message>
        <source>Limits and values are demonstration values.</source>
        <translation>Grenzen und Werte sind Demonstrationswerte.</translation>
    </message>
    <message>
        <source>Jan</source>
        <translation>Jan.</translation>
    </message>
    <message>
        <source>Feb</source>
        <translation>Feb.</translation>
    </message>
    <message>
        <source>Mar</source>
        <translation>März</translation>
    </message>
    <message>
        <source>Apr</source>
        <translation>Apr.</translation>
    </message>
    <message>
        <source>May</source>
        <translation>Mai</translation>
    </message>
    <message>
        <source>Jun</source>
        <translation>Juni</translation>
    </message>
    <message>
        <source>Jul</source>
        <translation>Juli</translation>
    </message>
    <message>
        <source>Aug</source>
        <translation>Aug.</translation>
    </message>
    <message>
        <source>Sep</source>
        <translation>Sept.</translation>
    </message>
    <message>
        <source>Oct</source>
        <translation>Okt.</translation>
    </message>
    <message>
        <source>Nov</source>
        <translation>Nov.</translation>
    </message>
    <message>
        <source>Dec</source>
        <translation>Dez.</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>keine Grenze</translation>
    </message>
    <message>
        <source>within</source>
        <translation>innerhalb</translation>
    </message>
    <message>
        <source>too small</source>
        <translation>zu klein</translation>
    </message>
    <message>
        <source>too large</source>
        <translation>zu groß</translation>
    </message>
    <message>
        <source>on limit</source>
        <translation>an der Grenze</translation>
    </message>
    <message>
        <source>not equal</source>
        <translation>nicht gleich</translation>
    </message>
    <message>
        <source>tight</source>
        <translation>eng</translation>
    </message>
    <message>
        <source>snug</source>
        <translation>saugend</translation>
    </message>
    <message>
        <source>loose</source>
        <translation>locker</translation>
    </message>
    <message>
        <source>Large</source>
        <translation>Großes</translation>
    </message>
    <message>
        <source>Small</source>
        <translation>Kleines</translation>
    </message>
    <message>
        <source>Lower</source>
        <translation>Untere</translation>
    </message>
    <message>
        <source>Upper</source>
        <translation>Obere</translation>
    </message>
    <message>
        <source>first</source>
        <translation>erste</translation>
    </message>
    <message>
        <source>second</source>
        <translation>zweite</translation>
    </message>
    <message>
        <source>third</source>
        <translation>dritte</translation>
    </message>
    <message>
        <source>fourth</source>
        <translation>vierte</translation>
    </message>
    <message>
        <source>fifth</source>
        <translation>fünfte</translation>
    </message>
    <message>
        <source>no. {0}</source>
        <translation>Nr. {0}</translation>
    </message>
    <message>
        <source>Technician</source>
        <translation>Techniker</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation>Geprüft von</translation>
    </message>
    <message>
        <source>at most {0}</source>
        <translation>höchstens {0}</translation>
    </message>
    <message>
        <source>at least {0}</source>
        <translation>mindestens {0}</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>gemischt</translation>
    </message>
    <message>
        <source>{0}. {1}, {2}, {3}.</source>
        <translation>{0}. {1}, {2}, {3}.</translation>
    </message>
    <message>
        <source>Reason: </source>
        <translation>Grund: </translation>
    </message>
    <message>
        <source>Signed, seal </source>
        <translation>Unterschrieben, Siegel </translation>
    </message>
    <message>
        <source>Addenda, after the sealed record</source>
        <translation>Nachträge, nach dem versiegelten Protokoll</translation>
    </message>
    <message>
        <source>Shim ________ tight / snug / loose · Shim ________ tight / snug / loose</source>
        <translation>Passscheibe ________ eng / saugend / locker · Passscheibe ________ eng / saugend / locker</translation>
    </message>
    <message>
        <source>Depths ____________  ____________ mm · reference ____________ mm</source>
        <translation>Tiefen ____________  ____________ mm · Bezug ____________ mm</translation>
    </message>
    <message>
        <source>Stamp, with its sign ____________ mm · shim taken ____________ mm</source>
        <translation>Prägung, mit Vorzeichen ____________ mm · genommene Passscheibe ____________ mm</translation>
    </message>
    <message>
        <source>Attempts ______ · code and reason of an abort ____________________</source>
        <translation>Versuche ______ · Code und Grund eines Abbruchs ____________________</translation>
    </message>
    <message>
        <source>Sealed</source>
        <translation>Versiegelt</translation>
    </message>
    <message>
        <source>Addendum: {0}</source>
        <translation>Nachtrag: {0}</translation>
    </message>
    <message>
        <source> · reprint</source>
        <translation> · Nachdruck</translation>
    </message>
    <message>
        <source>The PIN was wrong {0} times: try again in {1} seconds; nothing is lost.</source>
        <translation>Die PIN war {0}-mal falsch: in {1} Sekunden noch einmal versuchen; nichts geht verloren.</translation>
    </message>
    <message>
        <source>What was signed is not in the form this program writes: it was changed.</source>
        <translation>Das Unterschriebene hat nicht die Form, die dieses Programm schreibt: es wurde geändert.</translation>
    </message>
    <message>
        <source>This is no code of a sealed record of this program.</source>
        <translation>Das ist kein Code eines versiegelten Protokolls dieses Programms.</translation>
    </message>
    <message>
        <source>This code is not as it was printed: it was changed.</source>
        <translation>Dieser Code ist nicht, wie er gedruckt wurde: er wurde geändert.</translation>
    </message>
    <message>
        <source>This is no seal as it is printed: compare it symbol by symbol.</source>
        <translation>Das ist kein Siegel, wie es gedruckt wird: Zeichen für Zeichen vergleichen.</translation>
    </message>
    <message>
        <source>Reprint: printed again after it was sealed.</source>
        <translation>Nachdruck: nach dem Versiegeln noch einmal gedruckt.</translation>
    </message>
    <message>
        <source>One addendum stands at the end.</source>
        <translation>Am Ende steht ein Nachtrag.</translation>
    </message>
    <message>
        <source>{0} addenda stand at the end.</source>
        <translation>Am Ende stehen {0} Nachträge.</translation>
    </message>
    <message>
        <source>Sealed {0} as</source>
        <translation>Versiegelt {0} als</translation>
    </message>
    <message>
        <source>This is no signed record of this program, or its beginning was changed.</source>
        <translation>Das ist kein unterschriebenes Protokoll dieses Programms, oder sein Anfang wurde geändert.</translation>
    </message>
    <message>
        <source>This signed record was written by a newer program: check it with that.</source>
        <translation>Dieses unterschriebene Protokoll stammt von einem neueren Programm: mit diesem prüfen.</translation>
    </message>
    <message>
        <source>This file is not byte for byte as it was written: it was changed.</source>
        <translation>Diese Datei ist nicht Byte für Byte, wie sie geschrieben wurde: sie wurde geändert.</translation>
    </message>
    <message>
        <source>This was changed after it was signed.</source>
        <translation>Das wurde nach der Unterschrift geändert.</translation>
    </message>
    <message>
        <source>This is whole, but signed with a key that is not known here.</source>
        <translation>Das ist heil, aber mit einem Schlüssel unterschrieben, der hier nicht bekannt ist.</translation>
    </message>
    <message>
        <source>This is whole, but signed with a key that was no longer valid, from {0} on.</source>
        <translation>Das ist heil, aber mit einem Schlüssel unterschrieben, der nicht mehr gültig war, von {0} an.</translation>
    </message>
    <message>
        <source>There is too little memory to look at the PIN: close other programs.</source>
        <translation>Zum Prüfen der PIN ist zu wenig Speicher frei: andere Programme schließen.</translation>
    </message>
    <message>
        <source>The key of this person is damaged: check the store, or make a new key.</source>
        <translation>Der Schlüssel dieser Person ist beschädigt: den Datenbestand prüfen oder einen neuen Schlüssel anlegen.</translation>
    </message>
    <message>
        <source>A PIN has 4 to 12 digits and nothing else.</source>
        <translation>Eine PIN hat 4 bis 12 Ziffern und sonst nichts.</translation>
    </message>
    <message>
        <source>This is not the PIN of this person: type it again.</source>
        <translation>Das ist nicht die PIN dieser Person: neu eingeben.</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source> to </source>
        <translation> bis </translation>
    </message>
    <message>
        <source>, overdue</source>
        <translation>, überfällig</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Messmittel</translation>
    </message>
    <message>
        <source>Resolution</source>
        <translation>Auflösung</translation>
    </message>
    <message>
        <source>Permissible error</source>
        <translation>Fehlergrenze</translation>
    </message>
    <message>
        <source>Repeatability</source>
        <translation>Wiederholbarkeit</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation>Kalibriert</translation>
    </message>
    <message>
        <source>Instruments as they were</source>
        <translation>Messmittel, wie sie waren</translation>
    </message>
    <message>
        <source>Spec sheet</source>
        <translation>Datenblatt</translation>
    </message>
    <message>
        <source>{0}, issue {1}</source>
        <translation>{0}, Ausgabe {1}</translation>
    </message>
    <message>
        <source>Odometer</source>
        <translation>Kilometerstand</translation>
    </message>
    <message>
        <source>Shim fitted, {0}</source>
        <translation>Passscheibe eingebaut, {0}</translation>
    </message>
    <message>
        <source>Float as found, {0}, spot {1}</source>
        <translation>Lüftspiel wie vorgefunden, {0}, Messpunkt {1}</translation>
    </message>
    <message>
        <source>Float, {0}, spot {1}</source>
        <translation>Lüftspiel, {0}, Messpunkt {1}</translation>
    </message>
    <message>
        <source>Float as found, {0}, mean</source>
        <translation>Lüftspiel wie vorgefunden, {0}, Mittelwert</translation>
    </message>
    <message>
        <source>Float, {0}, mean</source>
        <translation>Lüftspiel, {0}, Mittelwert</translation>
    </message>
    <message>
        <source>Depth, {0}: {1}</source>
        <translation>Tiefe, {0}: {1}</translation>
    </message>
    <message>
        <source>{0}: {1}, before</source>
        <translation>{0}: {1}, vorher</translation>
    </message>
    <message>
        <source>{0} of {1}, batch {2}</source>
        <translation>{0} von {1}, Charge {2}</translation>
    </message>
    <message>
        <source>Its file is missing or was changed, and is not shown.</source>
        <translation>Die Datei fehlt oder wurde verändert und wird nicht gezeigt.</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>{0} mm, {1}</source>
        <translation>{0} mm, {1}</translation>
    </message>
    <message>
        <source>{0} × {1}, {2}</source>
        <translation>{0} × {1}, {2}</translation>
    </message>
    <message>
        <source>Finished: nothing is left to do but to seal the record.</source>
        <translation>Fertig: nur das Protokoll ist noch zu versiegeln.</translation>
    </message>
    <message>
        <source>In work.</source>
        <translation>In Arbeit.</translation>
    </message>
    <message>
        <source>Parked, waiting for {0}.</source>
        <translation>Zurückgestellt, wartet auf {0}.</translation>
    </message>
    <message>
        <source>Parked, waiting for {0}, due {1}.</source>
        <translation>Zurückgestellt, wartet auf {0}, fällig {1}.</translation>
    </message>
    <message>
        <source>At the bench: {0}.</source>
        <translation>An der Werkbank: {0}.</translation>
    </message>
    <message>
        <source>Last: {0}</source>
        <translation>Zuletzt: {0}</translation>
    </message>
    <message>
        <source>{0}: {1}{2}</source>
        <translation>{0}: {1}{2}</translation>
    </message>
    <message>
        <source>no shim chosen</source>
        <translation>keine Passscheibe gewählt</translation>
    </message>
    <message>
        <source>shim {0}</source>
        <translation>Passscheibe {0}</translation>
    </message>
    <message>
        <source>float not measured yet</source>
        <translation>Lüftspiel noch nicht gemessen</translation>
    </message>
    <message>
        <source>float {0}</source>
        <translation>Lüftspiel {0}</translation>
    </message>
    <message>
        <source>{0} bearing, {1} disc: {2}, {3}</source>
        <translation>{0} Lager, {1} Scheibe: {2}, {3}</translation>
    </message>
    <message>
        <source>Next shift</source>
        <translation>Nächste Schicht</translation>
    </message>
    <message>
        <source>gearbox {0}</source>
        <translation>Getriebe {0}</translation>
    </message>
    <message>
        <source>assembly {0}</source>
        <translation>Montage {0}</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Look again first: it may have moved</source>
        <translation>Zuerst nachsehen: es kann sich bewegt haben</translation>
    </message>
    <message>
        <source>To decide</source>
        <translation>Zu entscheiden</translation>
    </message>
    <message>
        <source>How it stands</source>
        <translation>Wie es steht</translation>
    </message>
    <message>
        <source>In the gearbox now</source>
        <translation>Jetzt im Getriebe</translation>
    </message>
    <message>
        <source>Parts still to renew</source>
        <translation>Noch zu erneuernde Teile</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>This slip is no record: what counts stands in the job. Read the cautions of a step there before going on.</source>
        <translation>Dieser Zettel ist kein Protokoll: es gilt, was im Auftrag steht. Vor dem Weiterarbeiten dort die Warnungen des Schritts lesen.</translation>
    </message>
    <message>
        <source>Pack {0}, {1}: {2} mm final in job {3}, {4} mm as found in job {5} after {6} km.</source>
        <translation>Paket {0}, {1}: {2} mm am Ende von Auftrag {3}, {4} mm wie vorgefunden in Auftrag {5} nach {6} km.</translation>
    </message>
    <message>
        <source>Pack {0}, {1}: {2} mm final in job {3}, {4} mm as found in job {5}; over which distance is not known.</source>
        <translation>Paket {0}, {1}: {2} mm am Ende von Auftrag {3}, {4} mm wie vorgefunden in Auftrag {5}; über welche Strecke, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>How uncertain both were was not kept, so nothing is said of the difference.</source>
        <translation>Wie unsicher beide waren, wurde nicht gespeichert; über den Unterschied wird nichts gesagt.</translation>
    </message>
    <message>
        <source>The difference of {0} mm cannot be told apart from none: it is known to ± {1} mm (95 %).</source>
        <translation>Der Unterschied von {0} mm ist von keinem nicht zu unterscheiden: er ist auf ± {1} mm bekannt (95 %).</translation>
    </message>
    <message>
        <source>That is {0} mm more, ± {1} mm (95 %).</source>
        <translation>Das sind {0} mm mehr, ± {1} mm (95 %).</translation>
    </message>
    <message>
        <source>That is {0} mm less, ± {1} mm (95 %). Wear only adds: look at the serial and at both measurements.</source>
        <translation>Das sind {0} mm weniger, ± {1} mm (95 %). Verschleiß wächst nur: die Seriennummer und beide Messungen ansehen.</translation>
    </message>
    <message>
        <source> · the seal does not hold</source>
        <translation> · das Siegel hält nicht</translation>
    </message>
    <message>
        <source> · sealed with a key not known here</source>
        <translation> · mit einem hier unbekannten Schlüssel versiegelt</translation>
    </message>
    <message>
        <source>Finished and sealed: nothing is left to do.</source>
        <translation>Fertig und versiegelt: nichts bleibt zu tun.</translation>
    </message>
    <message>
        <source>The seal of {0} does not hold: changed after it was signed: {1}.</source>
        <translation>Das Siegel vom {0} hält nicht: nach dem Unterschreiben geändert: {1}.</translation>
    </message>
    <message>
        <source>The key of {0} is not known here, or was no longer valid then.</source>
        <translation>Der Schlüssel von {0} ist hier nicht bekannt oder galt damals nicht mehr.</translation>
    </message>
    <message>
        <source>the seal</source>
        <translation>das Siegel</translation>
    </message>
    <message>
        <source>does not hold</source>
        <translation>hält nicht</translation>
    </message>
    <message>
        <source>Two signatures are of one person or one key: a seal is of two.</source>
        <translation>Zwei Unterschriften sind von einer Person oder einem Schlüssel: ein Siegel ist von zweien.</translation>
    </message>
</context>
<context>
    <name>sheet</name>
    <message>
        <source>&apos;{0}&apos; is not known here; write one of: {1}.</source>
        <translation>„{0}“ ist hier nicht bekannt; eines davon schreiben: {1}.</translation>
    </message>
    <message>
        <source>&apos;{0}&apos; cannot be a name here; use 1 to 40 small letters, digits and hyphens.</source>
        <translation>„{0}“ kann hier kein Name sein; 1 bis 40 Kleinbuchstaben, Ziffern und Bindestriche verwenden.</translation>
    </message>
    <message>
        <source>&apos;{0}&apos; is no UUID; write one in small letters, like 0198f0c0-5a00-7a11-8d01-0000000000aa.</source>
        <translation>„{0}“ ist keine UUID; in Kleinbuchstaben schreiben, wie 0198f0c0-5a00-7a11-8d01-0000000000aa.</translation>
    </message>
    <message>
        <source>The list has {0} entries, at least {1} are needed; add what is missing.</source>
        <translation>Die Liste hat {0} Einträge, nötig sind mindestens {1}; das Fehlende hinzufügen.</translation>
    </message>
    <message>
        <source>The list has {0} entries, at most {1} are read; shorten it.</source>
        <translation>Die Liste hat {0} Einträge, gelesen werden höchstens {1}; kürzen.</translation>
    </message>
    <message>
        <source>This file is a &apos;{0}&apos;, not a &apos;{1}&apos;; choose another file.</source>
        <translation>Diese Datei ist „{0}“, nicht „{1}“; eine andere Datei wählen.</translation>
    </message>
    <message>
        <source>This file was made for a newer version of the program; update the program.</source>
        <translation>Diese Datei ist für eine neuere Version des Programms; das Programm aktualisieren.</translation>
    </message>
    <message>
        <source>The step is judged by the limit &apos;{0}&apos;, which the spec sheet {1}, issue {2}, does not have; add it there.</source>
        <translation>Den Schritt bewertet die Grenze „{0}“, die das Datenblatt {1}, Ausgabe {2}, nicht hat; dort hinzufügen.</translation>
    </message>
    <message>
        <source>The limit &apos;{0}&apos; of the spec sheet {1}, issue {2}, is in another kind of unit than this step reads; correct one of the two.</source>
        <translation>Die Grenze „{0}“ des Datenblatts {1}, Ausgabe {2}, hat eine andere Art von Einheit, als dieser Schritt misst; eine der beiden berichtigen.</translation>
    </message>
    <message>
        <source>The limit &apos;{0}&apos; of the spec sheet {1}, issue {2}, counts attempts and needs a &apos;most&apos; of 1 or more; correct it there.</source>
        <translation>Die Grenze „{0}“ des Datenblatts {1}, Ausgabe {2}, zählt Versuche und braucht ein „most“ von 1 oder mehr; dort berichtigen.</translation>
    </message>
    <message>
        <source>The step needs the part &apos;{0}&apos;, which the spec sheet {1}, issue {2}, does not list; add it there.</source>
        <translation>Der Schritt braucht das Teil „{0}“, das im Datenblatt {1}, Ausgabe {2}, nicht steht; dort hinzufügen.</translation>
    </message>
    <message>
        <source>The spec sheet {0}, issue {1}, finds this shim by {2}, and the job sheet only by {3}; choose another of the two.</source>
        <translation>Das Datenblatt {0}, Ausgabe {1}, findet diese Passscheibe durch {2}, der Arbeitsplan nur durch {3}; eines der beiden anders wählen.</translation>
    </message>
    <message>
        <source>The upper limit has to be larger than the lower one; correct the two.</source>
        <translation>Die obere Grenze muss größer sein als die untere; beide berichtigen.</translation>
    </message>
    <message>
        <source>The target lies outside the limits; correct it, or write null for the middle.</source>
        <translation>Das Ziel liegt außerhalb der Grenzen; berichtigen, oder null für die Mitte schreiben.</translation>
    </message>
    <message>
        <source>An angle from 0 to below 360 in quotation marks has to stand here, like &quot;120&quot;.</source>
        <translation>Hier muss ein Winkel von 0 bis unter 360 in Anführungszeichen stehen, wie &quot;120&quot;.</translation>
    </message>
    <message>
        <source>The angle {0} stands here twice; each spot needs its own.</source>
        <translation>Der Winkel {0} steht hier zweimal; jeder Messpunkt braucht seinen eigenen.</translation>
    </message>
    <message>
        <source>The step &apos;{0}&apos; needs a side, lower or upper; add it.</source>
        <translation>Der Schritt „{0}“ braucht eine Seite, lower oder upper; hinzufügen.</translation>
    </message>
    <message>
        <source>The role &apos;{0}&apos; is for a step of the kind &apos;check&apos; or &apos;choose&apos;; correct role or kind.</source>
        <translation>Die Rolle „{0}“ ist für einen Schritt der Art „check“ oder „choose“; Rolle oder Art berichtigen.</translation>
    </message>
    <message>
        <source>The role &apos;{0}&apos; is for a step of the kind &apos;text&apos;; correct role or kind.</source>
        <translation>Die Rolle „{0}“ ist für einen Schritt der Art „text“; Rolle oder Art berichtigen.</translation>
    </message>
    <message>
        <source>The role &apos;{0}&apos; is for a step of the kind &apos;read&apos; with a length named &apos;{1}&apos;; add that channel.</source>
        <translation>Die Rolle „{0}“ ist für einen Schritt der Art „read“ mit einer Länge namens „{1}“; diesen Kanal hinzufügen.</translation>
    </message>
    <message>
        <source>A step of the kind &apos;{0}&apos; cannot be only for &apos;{1}&apos;; correct one of the two.</source>
        <translation>Ein Schritt der Art „{0}“ kann nicht nur für „{1}“ sein; eines von beiden berichtigen.</translation>
    </message>
    <message>
        <source>There is no step &apos;{0}&apos; in this sheet; correct the name.</source>
        <translation>In diesem Plan gibt es keinen Schritt „{0}“; den Namen berichtigen.</translation>
    </message>
    <message>
        <source>The step &apos;{0}&apos; does not come after this one; name a later step.</source>
        <translation>Der Schritt „{0}“ kommt nicht nach diesem; einen späteren Schritt nennen.</translation>
    </message>
    <message>
        <source>The step &apos;{0}&apos; reads no &apos;{1}&apos;; correct the name.</source>
        <translation>Der Schritt „{0}“ misst kein „{1}“; den Namen berichtigen.</translation>
    </message>
    <message>
        <source>The step &apos;{0}&apos; does not come before this one; name an earlier step.</source>
        <translation>Der Schritt „{0}“ kommt nicht vor diesem; einen früheren Schritt nennen.</translation>
    </message>
    <message>
        <source>&apos;{0}&apos; of the step &apos;{1}&apos; is read in another kind of unit; the two cannot be equal.</source>
        <translation>„{0}“ des Schritts „{1}“ wird in einer anderen Art von Einheit gemessen; beide können nicht gleich sein.</translation>
    </message>
    <message>
        <source>Another step is named &apos;{0}&apos; already; give this one its own name.</source>
        <translation>Ein anderer Schritt heißt schon „{0}“; diesem einen eigenen Namen geben.</translation>
    </message>
    <message>
        <source>Another step has the role &apos;{0}&apos; for this side already; remove one of the two.</source>
        <translation>Ein anderer Schritt hat die Rolle „{0}“ für diese Seite schon; einen von beiden entfernen.</translation>
    </message>
    <message>
        <source>Another step of the kind &apos;{0}&apos; is there for this side already; remove one of the two.</source>
        <translation>Ein anderer Schritt der Art „{0}“ ist für diese Seite schon da; einen von beiden entfernen.</translation>
    </message>
    <message>
        <source>Another stage is named &apos;{0}&apos; already; give this one its own name.</source>
        <translation>Ein anderer Abschnitt heißt schon „{0}“; diesem einen eigenen Namen geben.</translation>
    </message>
    <message>
        <source>The last step has to be one of the kind &apos;sign&apos;, since signing closes the job; add it.</source>
        <translation>Der letzte Schritt muss von der Art „sign“ sein, denn die Unterschrift schließt den Auftrag; hinzufügen.</translation>
    </message>
    <message>
        <source>A number from {0} to {1} has to stand here.</source>
        <translation>Hier muss eine Zahl von {0} bis {1} stehen.</translation>
    </message>
    <message>
        <source>The number is not in the unit of this field; write it in {0}.</source>
        <translation>Die Zahl steht nicht in der Einheit dieses Feldes; in {0} schreiben.</translation>
    </message>
    <message>
        <source>&apos;{0}&apos; is no number of up to six decimals below 10000; write it like 0.003.</source>
        <translation>„{0}“ ist keine Zahl mit bis zu sechs Nachkommastellen unter 10000; wie 0.003 schreiben.</translation>
    </message>
    <message>
        <source>&apos;{0}&apos; is no unit known here; write it like mm, N·m or °C, or leave it empty for pieces.</source>
        <translation>„{0}“ ist hier keine bekannte Einheit; wie mm, N·m oder °C schreiben, oder für Stück leer lassen.</translation>
    </message>
    <message>
        <source>A shim is named as it is marked, with 1 to 16 plain letters, digits and signs.</source>
        <translation>Eine Passscheibe heißt, wie sie beschriftet ist: 1 bis 16 einfache Buchstaben, Ziffern und Zeichen.</translation>
    </message>
    <message>
        <source>The shim &apos;{0}&apos; stands in this tray twice; remove one of the two.</source>
        <translation>Die Passscheibe „{0}“ steht zweimal in diesem Sortiment; eine von beiden entfernen.</translation>
    </message>
    <message>
        <source>Another shim of this tray is as thick as &apos;{0}&apos;; correct one of the two.</source>
        <translation>Eine andere Passscheibe dieses Sortiments ist so dick wie „{0}“; eine von beiden berichtigen.</translation>
    </message>
    <message>
        <source>The range ends before it begins; exchange its two ends.</source>
        <translation>Der Bereich endet, bevor er beginnt; seine beiden Enden tauschen.</translation>
    </message>
    <message>
        <source>The range begins before the one above it ends; put them in order, thin to thick.</source>
        <translation>Der Bereich beginnt, bevor der darüber endet; ordnen, von dünn nach dick.</translation>
    </message>
    <message>
        <source>There is no shim &apos;{0}&apos; in this side&apos;s tray; correct the name.</source>
        <translation>Im Sortiment dieser Seite gibt es keine Passscheibe „{0}“; den Namen berichtigen.</translation>
    </message>
    <message>
        <source>The shim of this side is found by &apos;{0}&apos;, so this section is needed; add it.</source>
        <translation>Die Passscheibe dieser Seite wird durch „{0}“ gefunden, deshalb ist dieser Abschnitt nötig; hinzufügen.</translation>
    </message>
    <message>
        <source>The shim of this side is found by &apos;{0}&apos;; remove this section or correct the method.</source>
        <translation>Die Passscheibe dieser Seite wird durch „{0}“ gefunden; diesen Abschnitt entfernen oder das Verfahren berichtigen.</translation>
    </message>
    <message>
        <source>A limit needs &apos;least&apos; or &apos;most&apos; or both; add what holds.</source>
        <translation>Eine Grenze braucht „least“ oder „most“ oder beides; hinzufügen, was gilt.</translation>
    </message>
    <message>
        <source>The upper limit has to be at least the lower one; correct the two.</source>
        <translation>Die obere Grenze muss mindestens die untere sein; beide berichtigen.</translation>
    </message>
    <message>
        <source>&apos;{0}&apos; cannot be a name here; use 1 to 40 small letters, digits and underscores.</source>
        <translation>„{0}“ kann hier kein Name sein; 1 bis 40 Kleinbuchstaben, Ziffern und Unterstriche verwenden.</translation>
    </message>
    <message>
        <source>The name &apos;{0}&apos; stands here twice; remove one of the two.</source>
        <translation>Der Name „{0}“ steht hier zweimal; eines von beiden entfernen.</translation>
    </message>
    <message>
        <source>An object in braces { } has to stand here.</source>
        <translation>Hier muss ein Objekt in geschweiften Klammern { } stehen.</translation>
    </message>
    <message>
        <source>The name &apos;{0}&apos; stands in this list twice; give one of the two another name.</source>
        <translation>Der Name „{0}“ steht zweimal in dieser Liste; einem von beiden einen anderen Namen geben.</translation>
    </message>
    <message>
        <source>A step of the kind &apos;{0}&apos; has no such field; remove it or correct the kind.</source>
        <translation>Ein Schritt der Art „{0}“ hat dieses Feld nicht; entfernen oder die Art berichtigen.</translation>
    </message>
    <message>
        <source>A step of the kind &apos;{0}&apos; needs this field; add it.</source>
        <translation>Ein Schritt der Art „{0}“ braucht dieses Feld; hinzufügen.</translation>
    </message>
    <message>
        <source>&apos;{0}&apos; cannot be the name of a limit; use 1 to 40 small letters, digits and underscores.</source>
        <translation>„{0}“ kann nicht der Name einer Grenze sein; 1 bis 40 Kleinbuchstaben, Ziffern und Unterstriche verwenden.</translation>
    </message>
    <message>
        <source>Such an instrument does not read this unit; correct the instrument or the unit.</source>
        <translation>Ein solches Messmittel misst diese Einheit nicht; Messmittel oder Einheit berichtigen.</translation>
    </message>
    <message>
        <source>The name of a part in the spec sheet has to stand here, like &quot;pack-ring&quot;.</source>
        <translation>Hier muss der Name eines Teils aus dem Datenblatt stehen, wie &quot;pack-ring&quot;.</translation>
    </message>
    <message>
        <source>No choice is accepted, so the step could never be passed; accept one at least.</source>
        <translation>Keine Auswahl wird angenommen, der Schritt wäre nie zu schaffen; mindestens eine annehmen.</translation>
    </message>
    <message>
        <source>&apos;{0}&apos; is no kind of step; docs/formats/job-sheet.md lists the kinds.</source>
        <translation>„{0}“ ist keine Art von Schritt; docs/formats/job-sheet.md führt die Arten auf.</translation>
    </message>
    <message>
        <source>The text is blank; write something, or remove it.</source>
        <translation>Der Text ist leer; etwas schreiben oder ihn entfernen.</translation>
    </message>
    <message>
        <source>The text holds a line break or another control character; remove it.</source>
        <translation>Der Text enthält einen Zeilenumbruch oder ein anderes Steuerzeichen; entfernen.</translation>
    </message>
    <message>
        <source>The text has {0} characters, at most {1} are read; shorten it.</source>
        <translation>Der Text hat {0} Zeichen, gelesen werden höchstens {1}; kürzen.</translation>
    </message>
    <message>
        <source>&apos;{0}&apos; is no language; write its two or three small letters, like en or de.</source>
        <translation>„{0}“ ist keine Sprache; ihre zwei oder drei Kleinbuchstaben schreiben, wie en oder de.</translation>
    </message>
    <message>
        <source>This language stands here twice; remove one of the two.</source>
        <translation>Diese Sprache steht hier zweimal; eine von beiden entfernen.</translation>
    </message>
    <message>
        <source>A text in quotation marks has to stand here.</source>
        <translation>Hier muss ein Text in Anführungszeichen stehen.</translation>
    </message>
    <message>
        <source>Texts by language have to stand here, like { &quot;en&quot;: &quot;Press on&quot; }.</source>
        <translation>Hier müssen Texte nach Sprachen stehen, wie { &quot;en&quot;: &quot;Press on&quot; }.</translation>
    </message>
    <message>
        <source>The English text is missing; add it, other languages are translations of it.</source>
        <translation>Der englische Text fehlt; hinzufügen, andere Sprachen übersetzen ihn.</translation>
    </message>
    <message>
        <source>The name &apos;{0}&apos; stands here twice; give one of the two another name.</source>
        <translation>Der Name „{0}“ steht hier zweimal; einem von beiden einen anderen Namen geben.</translation>
    </message>
    <message>
        <source>The sizes have to run from thin to thick in steps above 0, at most {0} of them.</source>
        <translation>Die Maße müssen von dünn nach dick laufen, in Schritten über 0, höchstens {0}.</translation>
    </message>
    <message>
        <source>This is still to be filled in.</source>
        <translation>Das ist noch auszufüllen.</translation>
    </message>
    <message>
        <source>Fill in the lower or the upper limit, or both.</source>
        <translation>Die untere oder die obere Grenze ausfüllen, oder beide.</translation>
    </message>
    <message>
        <source>A whole number has to stand here.</source>
        <translation>Hier muss eine ganze Zahl stehen.</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>From (blank: as the sheet)</source>
        <translation>Quelle (leer: wie das Blatt)</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>to do</source>
        <translation>zu tun</translation>
    </message>
    <message>
        <source>to check: in order or not</source>
        <translation>zu prüfen: in Ordnung oder nicht</translation>
    </message>
    <message>
        <source>a choice</source>
        <translation>eine Auswahl</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>a peak: an event, never measured again</source>
        <translation>ein Spitzenwert: ein Ereignis, nie wieder gemessen</translation>
    </message>
    <message>
        <source>parts fitted</source>
        <translation>eingebaute Teile</translation>
    </message>
    <message>
        <source>photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>a few words</source>
        <translation>wenige Worte</translation>
    </message>
    <message>
        <source>gauge trials</source>
        <translation>Proben mit der Lehre</translation>
    </message>
    <message>
        <source>depths</source>
        <translation>Tiefen</translation>
    </message>
    <message>
        <source>float of a disc</source>
        <translation>Lüftspiel einer Scheibe</translation>
    </message>
    <message>
        <source>teach-in</source>
        <translation>Anlernen</translation>
    </message>
    <message>
        <source>a signature</source>
        <translation>eine Unterschrift</translation>
    </message>
    <message>
        <source>Short name of the reading</source>
        <translation>Kurzname des Messwerts</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Limit of the spec sheet that judges it (blank: none)</source>
        <translation>Grenze des Datenblatts, die ihn bewertet (leer: keine)</translation>
    </message>
    <message>
        <source>Read with</source>
        <translation>Gemessen mit</translation>
    </message>
    <message>
        <source>Needs its sign typed</source>
        <translation>Vorzeichen muss eingegeben werden</translation>
    </message>
    <message>
        <source>Reading {0}</source>
        <translation>Messwert {0}</translation>
    </message>
    <message>
        <source>Add a reading</source>
        <translation>Messwert hinzufügen</translation>
    </message>
    <message>
        <source>The reading</source>
        <translation>Der Messwert</translation>
    </message>
    <message>
        <source>Limit of the spec sheet that counts the attempts (blank: none)</source>
        <translation>Grenze des Datenblatts, die Versuche zählt (leer: keine)</translation>
    </message>
    <message>
        <source>Choice {0}</source>
        <translation>Auswahl {0}</translation>
    </message>
    <message>
        <source>Short name</source>
        <translation>Kurzname</translation>
    </message>
    <message>
        <source>Words of the choice</source>
        <translation>Worte der Auswahl</translation>
    </message>
    <message>
        <source>Add a choice</source>
        <translation>Auswahl hinzufügen</translation>
    </message>
    <message>
        <source>Parts of the spec sheet</source>
        <translation>Teile des Datenblatts</translation>
    </message>
    <message>
        <source>Name of the part</source>
        <translation>Name des Teils</translation>
    </message>
    <message>
        <source>Add a part</source>
        <translation>Teil hinzufügen</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Achtung</translation>
    </message>
    <message>
        <source>What can hurt</source>
        <translation>Was verletzen kann</translation>
    </message>
    <message>
        <source>What keeps from it</source>
        <translation>Was davor schützt</translation>
    </message>
    <message>
        <source>Add a caution</source>
        <translation>Achtung hinzufügen</translation>
    </message>
    <message>
        <source>Hold point: the job does not go past it</source>
        <translation>Haltepunkt: der Auftrag geht nicht daran vorbei</translation>
    </message>
    <message>
        <source>May be answered “not required, because …”</source>
        <translation>Darf mit „nicht nötig, weil …“ beantwortet werden</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Only where the shim is found by</source>
        <translation>Nur wo die Passscheibe gefunden wird durch</translation>
    </message>
    <message>
        <source>Asked again</source>
        <translation>Noch einmal gefragt</translation>
    </message>
    <message>
        <source>Unproven until that later step is passed (blank: never)</source>
        <translation>Nachzuprüfen, bis jener spätere Schritt durch ist (leer: nie)</translation>
    </message>
    <message>
        <source>What the answer means to the job</source>
        <translation>Was die Antwort für den Auftrag bedeutet</translation>
    </message>
    <message>
        <source>Part of the drawing in hand</source>
        <translation>Teil der Zeichnung, um den es geht</translation>
    </message>
    <message>
        <source>Photos at least (blank: one)</source>
        <translation>Fotos mindestens (leer: eines)</translation>
    </message>
    <message>
        <source>On the old pack, for information</source>
        <translation>Am alten Paket, zur Kenntnis</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Unterschrieben von</translation>
    </message>
    <message>
        <source>The step</source>
        <translation>Der Schritt</translation>
    </message>
    <message>
        <source>Short name, the same over all issues</source>
        <translation>Kurzname, derselbe in allen Ausgaben</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>What to do, in a few words</source>
        <translation>Was zu tun ist, in wenigen Worten</translation>
    </message>
    <message>
        <source>Instruction (may be blank)</source>
        <translation>Anweisung (darf leer bleiben)</translation>
    </message>
    <message>
        <source>The stage</source>
        <translation>Der Abschnitt</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>Add a step</source>
        <translation>Schritt hinzufügen</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>The sheet</source>
        <translation>Das Blatt</translation>
    </message>
    <message>
        <source>Languages beside English, as in “de fr”</source>
        <translation>Sprachen neben Englisch, wie „de fr“</translation>
    </message>
    <message>
        <source>Add a stage</source>
        <translation>Abschnitt hinzufügen</translation>
    </message>
    <message>
        <source>Say first who is at the bench: a check has a name.</source>
        <translation>Zuerst angeben, wer an der Werkbank ist: eine Prüfung hat einen Namen.</translation>
    </message>
    <message>
        <source>Who entered a sheet checks it on a later day, with fresh eyes; another person can check it today.</source>
        <translation>Wer ein Blatt eingegeben hat, prüft es an einem späteren Tag, mit frischen Augen; eine andere Person kann es heute prüfen.</translation>
    </message>
    <message>
        <source>Gearbox type, as people name it</source>
        <translation>Getriebetyp, wie man ihn nennt</translation>
    </message>
    <message>
        <source>What the sheet is for</source>
        <translation>Wofür das Blatt ist</translation>
    </message>
    <message>
        <source>From: which service information, edition, date</source>
        <translation>Quelle: welche Serviceangaben, Auflage, Datum</translation>
    </message>
    <message>
        <source>Shim and tray</source>
        <translation>Passscheibe und Sortiment</translation>
    </message>
    <message>
        <source>Shim found by</source>
        <translation>Passscheibe gefunden durch</translation>
    </message>
    <message>
        <source>Name of the tray</source>
        <translation>Name des Sortiments</translation>
    </message>
    <message>
        <source>Sizes in the tray</source>
        <translation>Maße im Sortiment</translation>
    </message>
    <message>
        <source>Marked</source>
        <translation>Gezeichnet</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Standard uncertainty</source>
        <translation>Standardunsicherheit</translation>
    </message>
    <message>
        <source>Add a size</source>
        <translation>Maß hinzufügen</translation>
    </message>
    <message>
        <source>Gauge trials</source>
        <translation>Proben mit der Lehre</translation>
    </message>
    <message>
        <source>Snug band: how far below the seat a shim still feels snug</source>
        <translation>Bereich saugend: wie weit unter dem Sitz eine Passscheibe noch saugend ist</translation>
    </message>
    <message>
        <source>Feel, standard uncertainty</source>
        <translation>Gefühl, Standardunsicherheit</translation>
    </message>
    <message>
        <source>Order of the trials</source>
        <translation>Reihenfolge der Proben</translation>
    </message>
    <message>
        <source>fewest trials</source>
        <translation>möglichst wenige</translation>
    </message>
    <message>
        <source>thick to thin</source>
        <translation>dick nach dünn</translation>
    </message>
    <message>
        <source>Seat known beforehand</source>
        <translation>Sitz, vorher bekannt</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>Standard deviation</source>
        <translation>Standardabweichung</translation>
    </message>
    <message>
        <source>Constants added to the depth</source>
        <translation>Zur Tiefe addierte Konstanten</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>Added; with a minus it is taken away</source>
        <translation>Wird addiert; mit Minus abgezogen</translation>
    </message>
    <message>
        <source>Add a constant</source>
        <translation>Konstante hinzufügen</translation>
    </message>
    <message>
        <source>Which thickness wanted gives which shim</source>
        <translation>Welche gesuchte Dicke welche Passscheibe ergibt</translation>
    </message>
    <message>
        <source>From thickness</source>
        <translation>Von Dicke</translation>
    </message>
    <message>
        <source>To thickness</source>
        <translation>Bis Dicke</translation>
    </message>
    <message>
        <source>Shim</source>
        <translation>Passscheibe</translation>
    </message>
    <message>
        <source>Add a range of the shim table</source>
        <translation>Passscheibenbereich hinzufügen</translation>
    </message>
    <message>
        <source>Depths</source>
        <translation>Tiefen</translation>
    </message>
    <message>
        <source>Opposite places measured</source>
        <translation>Gemessene gegenüberliegende Stellen</translation>
    </message>
    <message>
        <source>Deviation stamped on the new pack is added</source>
        <translation>Am neuen Paket geprägte Maßabweichung wird addiert</translation>
    </message>
    <message>
        <source>Largest spread over the places</source>
        <translation>Größte Streuung über die Stellen</translation>
    </message>
    <message>
        <source>Depth reading, standard uncertainty</source>
        <translation>Tiefenmessung, Standardunsicherheit</translation>
    </message>
    <message>
        <source>Float</source>
        <translation>Lüftspiel</translation>
    </message>
    <message>
        <source>Float, at least</source>
        <translation>Lüftspiel, mindestens</translation>
    </message>
    <message>
        <source>Float, at most</source>
        <translation>Lüftspiel, höchstens</translation>
    </message>
    <message>
        <source>Float aimed at (blank: the middle)</source>
        <translation>Angestrebtes Lüftspiel (leer: die Mitte)</translation>
    </message>
    <message>
        <source>Largest spread over the spots</source>
        <translation>Größte Streuung über die Messpunkte</translation>
    </message>
    <message>
        <source>Repeatability, standard uncertainty</source>
        <translation>Wiederholbarkeit, Standardunsicherheit</translation>
    </message>
    <message>
        <source>Guard factor: standard uncertainties kept from a limit</source>
        <translation>Schutzfaktor: Standardunsicherheiten Abstand zur Grenze</translation>
    </message>
    <message>
        <source>Float of other jobs, standard uncertainty</source>
        <translation>Lüftspiel anderer Aufträge, Standardunsicherheit</translation>
    </message>
    <message>
        <source>Runs at each spot, at least</source>
        <translation>Durchgänge je Messpunkt, mindestens</translation>
    </message>
    <message>
        <source>Float as found can be measured</source>
        <translation>Lüftspiel wie vorgefunden messbar</translation>
    </message>
    <message>
        <source>Spots</source>
        <translation>Messpunkte</translation>
    </message>
    <message>
        <source>Spot at</source>
        <translation>Messpunkt bei</translation>
    </message>
    <message>
        <source>Add a spot</source>
        <translation>Messpunkt hinzufügen</translation>
    </message>
    <message>
        <source>Float lost per mm of shim</source>
        <translation>Lüftspielverlust je mm Passscheibe</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>Name the job sheet has for it</source>
        <translation>Name, den der Arbeitsplan dafür hat</translation>
    </message>
    <message>
        <source>At least (blank: no limit)</source>
        <translation>Mindestens (leer: keine Grenze)</translation>
    </message>
    <message>
        <source>At most (blank: no limit)</source>
        <translation>Höchstens (leer: keine Grenze)</translation>
    </message>
    <message>
        <source>Add a limit</source>
        <translation>Grenze hinzufügen</translation>
    </message>
    <message>
        <source>Values to work to</source>
        <translation>Werte, nach denen gearbeitet wird</translation>
    </message>
    <message>
        <source>Work to, with unit</source>
        <translation>Arbeiten nach, mit Einheit</translation>
    </message>
    <message>
        <source>Add a value to work to</source>
        <translation>Arbeitswert hinzufügen</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Part number</source>
        <translation>Teilenummer</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Renewed at every assembly</source>
        <translation>Bei jeder Montage erneuert</translation>
    </message>
    <message>
        <source>Lower, large bearing</source>
        <translation>Unten, großes Lager</translation>
    </message>
    <message>
        <source>Upper, small bearing</source>
        <translation>Oben, kleines Lager</translation>
    </message>
    <message>
        <source>“{0}” was taken away; put it back, or say why it may go.</source>
        <translation>„{0}“ wurde weggenommen; zurücklegen oder sagen, warum es wegfallen darf.</translation>
    </message>
    <message>
        <source>Taken away: why?</source>
        <translation>Weggenommen: warum?</translation>
    </message>
    <message>
        <source>Why it may go; this stays in the history</source>
        <translation>Warum es wegfallen darf; das bleibt in der Geschichte</translation>
    </message>
    <message>
        <source>Caution at “{0}”: {1}</source>
        <translation>Achtung bei „{0}“: {1}</translation>
    </message>
    <message>
        <source>Hold point “{0}”: {1}</source>
        <translation>Haltepunkt „{0}“: {1}</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>This file cannot be read; choose it again.</source>
        <translation>Diese Datei ist nicht lesbar; noch einmal wählen.</translation>
    </message>
    <message>
        <source>This file is too large for a sheet; choose another.</source>
        <translation>Diese Datei ist zu groß für ein Blatt; eine andere wählen.</translation>
    </message>
    <message>
        <source>The file could not be written; look at the folder and its space.</source>
        <translation>Die Datei ließ sich nicht schreiben; Ordner und Platz prüfen.</translation>
    </message>
    <message>
        <source>In steps of</source>
        <translation>In Schritten von</translation>
    </message>
    <message>
        <source>Order of the steps</source>
        <translation>Reihenfolge der Schritte</translation>
    </message>
    <message>
        <source>Stands after</source>
        <translation>Steht nach</translation>
    </message>
    <message>
        <source>Passes the step</source>
        <translation>Überholt den Schritt</translation>
    </message>
    <message>
        <source>Add what is known of the seat</source>
        <translation>Eintragen, was vom Sitz bekannt ist</translation>
    </message>
    <message>
        <source>Add the float lost per mm of shim</source>
        <translation>Lüftspiel je mm Scheibe eintragen</translation>
    </message>
    <message>
        <source>The steps do not come out at the last size; change the step or one of the sizes.</source>
        <translation>Die Schritte gehen bei der letzten Größe nicht auf; die Schrittweite oder eine der Größen ändern.</translation>
    </message>
    <message>
        <source>At {0} the file has something else than a sheet has there, so no form can be drawn of it; choose another file.</source>
        <translation>Bei {0} hat die Datei etwas anderes, als dort hingehört, deshalb lässt sich kein Formular daraus zeigen; eine andere Datei wählen.</translation>
    </message>
    <message>
        <source>&apos;{0}&apos; is no field of a sheet; take it out of the file.</source>
        <translation>„{0}“ ist kein Feld eines Blatts; aus der Datei herausnehmen.</translation>
    </message>
    <message>
        <source>This file does not say that it is a sheet; choose one that was saved as a sheet.</source>
        <translation>Diese Datei sagt nicht, dass sie ein Blatt ist; eine wählen, die als Blatt gespeichert wurde.</translation>
    </message>
    <message>
        <source>“{0}” is unproven until “{1}”, so it has to come before it; move the other of the two first, or change what it says.</source>
        <translation>„{0}“ ist nachzuprüfen, bis „{1}“ durch ist, muss also davor stehen; zuerst den anderen der beiden verschieben oder die Angabe ändern.</translation>
    </message>
    <message>
        <source>“{0}” has to equal a reading of “{1}”, so it has to come after it; move the other of the two first, or change what it says.</source>
        <translation>„{0}“ muss einem Messwert von „{1}“ gleichen, muss also danach stehen; zuerst den anderen der beiden verschieben oder die Angabe ändern.</translation>
    </message>
    <message>
        <source>The signature closes the job, so it has to be the last step; leave it at the end.</source>
        <translation>Die Unterschrift schließt den Auftrag ab und muss der letzte Schritt sein; sie am Ende lassen.</translation>
    </message>
    <message>
        <source>A stage has one step at least, and “{0}” is the only one here; add another step to this stage first.</source>
        <translation>Ein Abschnitt hat mindestens einen Schritt, und „{0}“ ist hier der einzige; diesem Abschnitt zuerst einen weiteren Schritt hinzufügen.</translation>
    </message>
    <message>
        <source>A stage has at most {0} steps, and that one has as many already; take one out of it first.</source>
        <translation>Ein Abschnitt hat höchstens {0} Schritte, und jener hat schon so viele; zuerst einen herausnehmen.</translation>
    </message>
    <message>
        <source>Has to equal the reading of that earlier step (both blank: none)</source>
        <translation>Muss dem Messwert jenes früheren Schritts gleichen (beides leer: keinem)</translation>
    </message>
    <message>
        <source>Short name of that reading</source>
        <translation>Kurzname jenes Messwerts</translation>
    </message>
    <message>
        <source>That sheet has no stage “{0}”; choose one of its stages.</source>
        <translation>Jener Arbeitsplan hat keinen Abschnitt „{0}“; einen seiner Abschnitte wählen.</translation>
    </message>
    <message>
        <source>A sheet has at most {0} stages, and this one has as many already; take one out first.</source>
        <translation>Ein Arbeitsplan hat höchstens {0} Abschnitte, und dieser hat schon so viele; zuerst einen herausnehmen.</translation>
    </message>
</context>
<context>
    <name>shell</name>
    <message>
        <source>The demonstration jobs are missing from this program: install it again.</source>
        <translation>Die Demonstrationsaufträge fehlen in diesem Programm: neu installieren.</translation>
    </message>
    <message>
        <source>The demonstration cannot be laid there: look whether something else has its name, then try again.</source>
        <translation>Die Demonstration lässt sich dort nicht anlegen: nachsehen, ob etwas anderes ihren Namen hat, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png)</source>
        <translation>Fotos (*.jpg *.jpeg *.png)</translation>
    </message>
    <message>
        <source>Another new job is typed here and not opened yet: open it, or cancel it, then begin this one.</source>
        <translation>Hier ist schon ein anderer neuer Auftrag eingegeben und noch nicht geöffnet: öffnen oder abbrechen, dann diesen beginnen.</translation>
    </message>
    <message>
        <source>--demo has a store of its own: leave out --demo, or leave out --store.</source>
        <translation>--demo hat einen eigenen Datenbestand: --demo weglassen, oder --store weglassen.</translation>
    </message>
    <message>
        <source>The demonstration is open in another window; close it there first.</source>
        <translation>Die Demonstration ist in einem anderen Fenster offen; zuerst dort schließen.</translation>
    </message>
    <message>
        <source>Another workshop than the demonstration lies there: nothing was deleted.</source>
        <translation>Dort liegt eine andere Werkstatt als die Demonstration: nichts wurde gelöscht.</translation>
    </message>
    <message>
        <source>This workshop&apos;s own store lies in that folder: nothing was deleted.</source>
        <translation>Der Datenbestand dieser Werkstatt liegt in jenem Ordner: nichts wurde gelöscht.</translation>
    </message>
    <message>
        <source>Not all of the demonstration could be deleted: look whether a program has one of its files open, then try again.</source>
        <translation>Die Demonstration ließ sich nicht ganz löschen: nachsehen, ob ein Programm eine ihrer Dateien offen hat, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>inch</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>N·m</source>
        <translation>N·m</translation>
    </message>
    <message>
        <source>lbf·ft</source>
        <translation>lbf·ft</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
</context>
<context>
    <name>shim</name>
    <message>
        <source>There is nothing to advise on; add gauge_fit, depth or float.</source>
        <translation>Es gibt nichts zu raten; gauge_fit, depth oder float hinzufügen.</translation>
    </message>
    <message>
        <source>A name in this case is not UTF-8 text; enter it again.</source>
        <translation>Ein Name in diesem Fall ist kein UTF-8-Text; neu eingeben.</translation>
    </message>
    <message>
        <source>Enter the deviation marked on the pack; 0 is a value, blank is not.</source>
        <translation>Die auf dem Paket geprägte Maßabweichung eingeben; 0 ist ein Wert, leer ist keiner.</translation>
    </message>
    <message>
        <source>This bin begins before the one above it ends; put them in order.</source>
        <translation>Diese Stufe beginnt, bevor die darüber endet; ordnen.</translation>
    </message>
    <message>
        <source>This bin ends before it begins; exchange its two ends.</source>
        <translation>Diese Stufe endet, bevor sie beginnt; ihre beiden Enden tauschen.</translation>
    </message>
    <message>
        <source>A number without quotation marks has to stand here.</source>
        <translation>Hier muss eine Zahl ohne Anführungszeichen stehen.</translation>
    </message>
    <message>
        <source>This number has to be below 10000 in size.</source>
        <translation>Diese Zahl muss dem Betrag nach unter 10000 liegen.</translation>
    </message>
    <message>
        <source>This has to be more than 0.</source>
        <translation>Das muss größer als 0 sein.</translation>
    </message>
    <message>
        <source>This must not be below 0.</source>
        <translation>Das darf nicht unter 0 liegen.</translation>
    </message>
    <message>
        <source>This has to be at least {0}.</source>
        <translation>Das muss mindestens {0} sein.</translation>
    </message>
    <message>
        <source>A length has to be a whole number of micrometres; give three decimals at most.</source>
        <translation>Eine Länge muss eine ganze Zahl von Mikrometern sein; höchstens drei Nachkommastellen angeben.</translation>
    </message>
    <message>
        <source>This list must not be empty.</source>
        <translation>Diese Liste darf nicht leer sein.</translation>
    </message>
    <message>
        <source>Two lengths have to stand here, the lower limit first.</source>
        <translation>Hier müssen zwei Längen stehen, die untere Grenze zuerst.</translation>
    </message>
    <message>
        <source>The lower limit has to be below the upper one.</source>
        <translation>Die untere Grenze muss unter der oberen liegen.</translation>
    </message>
    <message>
        <source>The target has to lie within the limits.</source>
        <translation>Das Ziel muss innerhalb der Grenzen liegen.</translation>
    </message>
    <message>
        <source>Measure at three spots or more, at three different angles.</source>
        <translation>An drei oder mehr Punkten messen, unter drei verschiedenen Winkeln.</translation>
    </message>
    <message>
        <source>One of tight, snug or loose has to stand here.</source>
        <translation>Hier muss tight, snug oder loose stehen.</translation>
    </message>
    <message>
        <source>Either fewest or thick_to_thin has to stand here.</source>
        <translation>Hier muss fewest oder thick_to_thin stehen.</translation>
    </message>
    <message>
        <source>Another shim of this tray has the same name; give each its own.</source>
        <translation>Eine andere Passscheibe dieses Sortiments hat denselben Namen; jeder einen eigenen geben.</translation>
    </message>
    <message>
        <source>Another shim of this tray has the same thickness; keep one of them.</source>
        <translation>Eine andere Passscheibe dieses Sortiments hat dieselbe Dicke; eine davon behalten.</translation>
    </message>
    <message>
        <source>No shim of the tray has this name; choose one that is in it.</source>
        <translation>Keine Passscheibe des Sortiments hat diesen Namen; eine wählen, die darin ist.</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::AnswerPage</name>
    <message>
        <source>kept: %1, %2</source>
        <translation>gespeichert: %1, %2</translation>
    </message>
    <message>
        <source>. It may have moved since: look again and answer again.</source>
        <translation>. Es kann sich seither verändert haben: noch einmal ansehen und neu antworten.</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::AskBox</name>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>In your words</source>
        <translation>In eigenen Worten</translation>
    </message>
    <message>
        <source>Park job</source>
        <translation>Auftrag zurückstellen</translation>
    </message>
    <message>
        <source>What does it wait for?</source>
        <translation>Worauf wartet er?</translation>
    </message>
    <message>
        <source>Still to be fitted, for an order:</source>
        <translation>Noch einzubauen, für eine Bestellung:</translation>
    </message>
    <message>
        <source>Copy the list</source>
        <translation>Liste kopieren</translation>
    </message>
    <message>
        <source>Until when (may stay blank)</source>
        <translation>Bis wann (darf leer bleiben)</translation>
    </message>
    <message>
        <source>year-month-day</source>
        <translation>Jahr-Monat-Tag</translation>
    </message>
    <message>
        <source>Ctrl Enter</source>
        <translation>Strg Enter</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::CheckPage</name>
    <message>
        <source>In order</source>
        <translation>In Ordnung</translation>
    </message>
    <message>
        <source>Not in order</source>
        <translation>Nicht in Ordnung</translation>
    </message>
    <message>
        <source>What you saw: needed where it is not in order</source>
        <translation>Was zu sehen war: nötig, wo es nicht in Ordnung ist</translation>
    </message>
    <message>
        <source>Say whether it is in order; the words are kept with the answer.</source>
        <translation>Angeben, ob es in Ordnung ist; die Worte werden mit der Antwort gespeichert.</translation>
    </message>
    <message>
        <source>key 1</source>
        <translation>Taste 1</translation>
    </message>
    <message>
        <source>key 2</source>
        <translation>Taste 2</translation>
    </message>
    <message>
        <source>Say in a few words what is not in order, then press Enter.</source>
        <translation>In wenigen Worten sagen, was nicht in Ordnung ist, dann Enter drücken.</translation>
    </message>
    <message>
        <source>Answer with key 1 or key 2.</source>
        <translation>Antwort mit Taste 1 oder 2.</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::ChoosePage</name>
    <message>
        <source>key %1</source>
        <translation>Taste %1</translation>
    </message>
    <message>
        <source>Answer with a key from 1 to %1.</source>
        <translation>Antwort mit einer Taste von 1 bis %1.</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::DepthCard</name>
    <message>
        <source>The sum</source>
        <translation>Die Rechnung</translation>
    </message>
    <message>
        <source>The sum of the depths kept before</source>
        <translation>Die Rechnung mit den vorher gespeicherten Tiefen</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::DepthPage</name>
    <message>
        <source>Reference</source>
        <translation>Bezug</translation>
    </message>
    <message>
        <source>Depth gauge</source>
        <translation>Tiefenmaß</translation>
    </message>
    <message>
        <source>One place more</source>
        <translation>Eine Stelle mehr</translation>
    </message>
    <message>
        <source>Depth, place %1</source>
        <translation>Tiefe, Stelle %1</translation>
    </message>
    <message>
        <source>Type each value and press Enter; the sum follows.</source>
        <translation>Jeden Wert eingeben und Enter drücken; dann folgt die Summe.</translation>
    </message>
    <message>
        <source>Read it on the pack again.</source>
        <translation>Am Paket noch einmal ablesen.</translation>
    </message>
    <message>
        <source>0.0 stamped is a value; leave nothing blank.</source>
        <translation>Geprägt 0.0 ist ein Wert; nichts leer lassen.</translation>
    </message>
    <message>
        <source>%1, by depth</source>
        <translation>%1, nach Tiefenmaß</translation>
    </message>
    <message>
        <source>Fit %1</source>
        <translation>%1 einlegen</translation>
    </message>
    <message>
        <source>%1, taken</source>
        <translation>%1, genommen</translation>
    </message>
    <message>
        <source>On the border</source>
        <translation>An der Grenze</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 oder %2</translation>
    </message>
    <message>
        <source>Tilted</source>
        <translation>Schief</translation>
    </message>
    <message>
        <source>measure again, %1</source>
        <translation>noch einmal messen, %1</translation>
    </message>
    <message>
        <source>Cannot be</source>
        <translation>Kann nicht sein</translation>
    </message>
    <message>
        <source>Outside the tray</source>
        <translation>Außerhalb des Sortiments</translation>
    </message>
    <message>
        <source>No size near</source>
        <translation>Kein Maß in der Nähe</translation>
    </message>
    <message>
        <source>Keep the depths</source>
        <translation>Tiefen speichern</translation>
    </message>
    <message>
        <source>Another shim</source>
        <translation>Andere Passscheibe</translation>
    </message>
    <message>
        <source>Take %1</source>
        <translation>%1 nehmen</translation>
    </message>
    <message>
        <source>Take %1 with reason...</source>
        <translation>%1 mit Grund nehmen...</translation>
    </message>
    <message>
        <source>Which shim is taken in place of it?</source>
        <translation>Welche Passscheibe wird stattdessen genommen?</translation>
    </message>
    <message>
        <source>%1 is not the shim the depths advise: why is it taken?</source>
        <translation>%1 ist nicht die Passscheibe, die aus den Tiefen folgt: warum wird sie genommen?</translation>
    </message>
    <message>
        <source>Take %1 for this reason</source>
        <translation>%1 aus diesem Grund nehmen</translation>
    </message>
    <message>
        <source>Measure again</source>
        <translation>Noch einmal messen</translation>
    </message>
    <message>
        <source>Stamp on the new pack, %1, mm</source>
        <translation>Prägung am neuen Paket, %1, mm</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::DoPage</name>
    <message>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>Done. Ctrl Enter goes on.</source>
        <translation>Erledigt. Strg Enter geht weiter.</translation>
    </message>
    <message>
        <source>When it is done: Ctrl Enter.</source>
        <translation>Wenn es getan ist: Strg Enter.</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::FloatEntry</name>
    <message>
        <source>Spot %1</source>
        <translation>Messpunkt %1</translation>
    </message>
    <message>
        <source>Dial gauge</source>
        <translation>Messuhr</translation>
    </message>
    <message>
        <source>At rest</source>
        <translation>In Ruhe</translation>
    </message>
    <message>
        <source>Lifted</source>
        <translation>Angehoben</translation>
    </message>
    <message>
        <source>Zero after</source>
        <translation>Null danach</translation>
    </message>
    <message>
        <source>Spot %1, run %2 of %3</source>
        <translation>Messpunkt %1, Durchgang %2 von %3</translation>
    </message>
    <message>
        <source>Spot %1, run %2</source>
        <translation>Messpunkt %1, Durchgang %2</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::FloatPage</name>
    <message>
        <source>Not measured as found</source>
        <translation>Vorher nicht gemessen</translation>
    </message>
    <message>
        <source>The method of this gearbox has no float as found: leave the step out with that reason.</source>
        <translation>Das Verfahren dieses Getriebes kennt kein Lüftspiel wie vorgefunden: den Schritt mit diesem Grund auslassen.</translation>
    </message>
    <message>
        <source> Measured before: %1.</source>
        <translation> Vorher gemessen: %1.</translation>
    </message>
    <message>
        <source>Lift at spot %1</source>
        <translation>An Messpunkt %1 anheben</translation>
    </message>
    <message>
        <source>Hide all shims</source>
        <translation>Alle Passscheiben ausblenden</translation>
    </message>
    <message>
        <source>All shims and chances</source>
        <translation>Alle Passscheiben und Aussichten</translation>
    </message>
    <message>
        <source>Keep this run</source>
        <translation>Durchgang speichern</translation>
    </message>
    <message>
        <source>Measure again</source>
        <translation>Noch einmal messen</translation>
    </message>
    <message>
        <source>Seated again: measure</source>
        <translation>Neu gesetzt: messen</translation>
    </message>
    <message>
        <source>Seat again</source>
        <translation>Neu setzen</translation>
    </message>
    <message>
        <source>Change the shim</source>
        <translation>Passscheibe wechseln</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Trials and float disagree: a bearing that is not home would do the same. </source>
        <translation>Proben und Lüftspiel widersprechen sich: ein Lager, das nicht richtig sitzt, bewirkt dasselbe. </translation>
    </message>
    <message>
        <source>Which shim goes under the %1?</source>
        <translation>Welche Passscheibe wird eingelegt (%1)?</translation>
    </message>
    <message>
        <source>%1 in place of %2</source>
        <translation>%1 statt %2</translation>
    </message>
    <message>
        <source>float %1: %2</source>
        <translation>Lüftspiel %1: %2</translation>
    </message>
    <message>
        <source>%1 against the advice: why does the pack come off?</source>
        <translation>%1 gegen den Rat: warum kommt das Paket ab?</translation>
    </message>
    <message>
        <source>Take the pack off for this reason</source>
        <translation>Paket aus diesem Grund abnehmen</translation>
    </message>
    <message>
        <source>Measure spot %1 again</source>
        <translation>Messpunkt %1 noch einmal messen</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::FloatTable</name>
    <message>
        <source>Spot</source>
        <translation>Messpunkt</translation>
    </message>
    <message>
        <source>Run %1</source>
        <translation>Durchgang %1</translation>
    </message>
    <message>
        <source>Float</source>
        <translation>Lüftspiel</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Bewertung</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::FootBar</name>
    <message>
        <source>Ctrl Enter</source>
        <translation>Strg Enter</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::GaugeFitPage</name>
    <message>
        <source>Tight</source>
        <translation>Eng</translation>
    </message>
    <message>
        <source>will not enter · key 1</source>
        <translation>geht nicht hinein · Taste 1</translation>
    </message>
    <message>
        <source>Snug</source>
        <translation>Saugend</translation>
    </message>
    <message>
        <source>enters with drag · key 2</source>
        <translation>geht schwer hinein · Taste 2</translation>
    </message>
    <message>
        <source>Loose</source>
        <translation>Locker</translation>
    </message>
    <message>
        <source>has play · key 3</source>
        <translation>hat Spiel · Taste 3</translation>
    </message>
    <message>
        <source>Two trials cannot both be right</source>
        <translation>Zwei Proben können nicht beide stimmen</translation>
    </message>
    <message>
        <source>Press a shim below to try it again.</source>
        <translation>Unten auf eine Passscheibe drücken, um sie noch einmal zu probieren.</translation>
    </message>
    <message>
        <source>Take back trial %1</source>
        <translation>Probe %1 zurücknehmen</translation>
    </message>
    <message>
        <source>The tray begins too thick</source>
        <translation>Das Sortiment beginnt zu dick</translation>
    </message>
    <message>
        <source>The tray ends too thin</source>
        <translation>Das Sortiment endet zu dünn</translation>
    </message>
    <message>
        <source>A wrong trial would do the same: try the last shim once more.</source>
        <translation>Eine falsche Probe bewirkt dasselbe: die letzte Passscheibe noch einmal probieren.</translation>
    </message>
    <message>
        <source>The float asks for %1</source>
        <translation>Das Lüftspiel verlangt %1</translation>
    </message>
    <message>
        <source>It was measured in the assembly before. Try %1 first, or take it as it is.</source>
        <translation>Gemessen in der Montage davor. Zuerst %1 probieren, oder sie so nehmen.</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>genommen</translation>
    </message>
    <message>
        <source>fit this one</source>
        <translation>diese einlegen</translation>
    </message>
    <message>
        <source>try this one</source>
        <translation>diese probieren</translation>
    </message>
    <message>
        <source>How does the gauge go in with %1?</source>
        <translation>Wie geht die Lehre mit %1 hinein?</translation>
    </message>
    <message>
        <source>Fit %1</source>
        <translation>%1 einlegen</translation>
    </message>
    <message>
        <source>%1, taken</source>
        <translation>%1, genommen</translation>
    </message>
    <message>
        <source>Try %1</source>
        <translation>%1 probieren</translation>
    </message>
    <message>
        <source>%1, trial %2</source>
        <translation>%1, Probe %2</translation>
    </message>
    <message>
        <source>%1, by the trials</source>
        <translation>%1, nach den Proben</translation>
    </message>
    <message>
        <source>Trials contradict</source>
        <translation>Proben widersprechen sich</translation>
    </message>
    <message>
        <source>Tray too thick</source>
        <translation>Sortiment zu dick</translation>
    </message>
    <message>
        <source>Tray too thin</source>
        <translation>Sortiment zu dünn</translation>
    </message>
    <message>
        <source>Another shim</source>
        <translation>Andere Passscheibe</translation>
    </message>
    <message>
        <source>Take %1</source>
        <translation>%1 nehmen</translation>
    </message>
    <message>
        <source>Take %1 with reason...</source>
        <translation>%1 mit Grund nehmen...</translation>
    </message>
    <message>
        <source>%1 is not the shim the trials advise: why is it taken?</source>
        <translation>%1 ist nicht die Passscheibe, die aus den Proben folgt: warum wird sie genommen?</translation>
    </message>
    <message>
        <source>Take %1 for this reason</source>
        <translation>%1 aus diesem Grund nehmen</translation>
    </message>
    <message>
        <source>trial taken back at the bench</source>
        <translation>Probe an der Werkbank zurückgenommen</translation>
    </message>
    <message>
        <source>Which shim is tried?</source>
        <translation>Welche Passscheibe wird probiert?</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::GearboxChoice</name>
    <message>
        <source>Choose the gearbox type</source>
        <translation>Getriebetyp wählen</translation>
    </message>
    <message>
        <source>%1, issue %2</source>
        <translation>%1, Ausgabe %2</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::HomePage</name>
    <message>
        <source>On the bench</source>
        <translation>An der Werkbank</translation>
    </message>
    <message>
        <source>New job</source>
        <translation>Neuer Auftrag</translation>
    </message>
    <message>
        <source>Ctrl N</source>
        <translation>Strg N</translation>
    </message>
    <message>
        <source>Find a vehicle</source>
        <translation>Fahrzeug suchen</translation>
    </message>
    <message>
        <source>VIN, plate, job, or scan</source>
        <translation>FIN, Kennzeichen, Auftrag</translation>
    </message>
    <message>
        <source>Before you start</source>
        <translation>Vor dem Anfangen</translation>
    </message>
    <message>
        <source>No job is open. Begin one with New job, or find a vehicle that was here before.</source>
        <translation>Kein Auftrag ist offen. Einen neuen Auftrag beginnen, oder ein Fahrzeug suchen, das schon hier war.</translation>
    </message>
    <message>
        <source>%1 more jobs are open: find them under Past jobs.</source>
        <translation>%1 weitere Aufträge sind offen: unter Frühere Aufträge zu finden.</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>Ansehen</translation>
    </message>
    <message>
        <source>Take up</source>
        <translation>Wieder aufnehmen</translation>
    </message>
    <message>
        <source>job %1</source>
        <translation>Auftrag %1</translation>
    </message>
    <message>
        <source>Nothing: instruments, trays and backup are as they should be.</source>
        <translation>Nichts: Messmittel, Sortimente und Sicherung sind, wie sie sein sollen.</translation>
    </message>
    <message>
        <source>Every entry is on disk before it shows as saved.</source>
        <translation>Jeder Eintrag liegt auf der Platte, bevor er als gespeichert erscheint.</translation>
    </message>
    <message>
        <source>Last verified backup: %1.</source>
        <translation>Letzte geprüfte Sicherung: %1.</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::InstrumentBox</name>
    <message>
        <source>overdue since %1</source>
        <translation>überfällig seit %1</translation>
    </message>
    <message>
        <source>calibrated to %1</source>
        <translation>kalibriert bis %1</translation>
    </message>
    <message>
        <source>no instrument</source>
        <translation>kein Messmittel</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::JobPage</name>
    <message>
        <source>Job %1</source>
        <translation>Auftrag %1</translation>
    </message>
    <message>
        <source>assembly %1</source>
        <translation>Montage %1</translation>
    </message>
    <message>
        <source>Spec sheet %1, issue %2</source>
        <translation>Datenblatt %1, Ausgabe %2</translation>
    </message>
    <message>
        <source>Show the record</source>
        <translation>Protokoll zeigen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>More...</source>
        <translation>Mehr...</translation>
    </message>
    <message>
        <source>Go on with reason...</source>
        <translation>Weiter mit Grund...</translation>
    </message>
    <message>
        <source>Park job</source>
        <translation>Zurückstellen</translation>
    </message>
    <message>
        <source>Not required...</source>
        <translation>Nicht nötig...</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>A note for this step</source>
        <translation>Notiz zu diesem Schritt</translation>
    </message>
    <message>
        <source>Keep the note</source>
        <translation>Notiz speichern</translation>
    </message>
    <message>
        <source>Go on against the sheet: why? The reason stands on the record with your name.</source>
        <translation>Gegen den Arbeitsplan weitergehen: warum? Der Grund steht mit Namen im Protokoll.</translation>
    </message>
    <message>
        <source>Go on with this reason</source>
        <translation>Aus diesem Grund weitergehen</translation>
    </message>
    <message>
        <source>Not required in this job: why?</source>
        <translation>In diesem Auftrag nicht nötig: warum?</translation>
    </message>
    <message>
        <source>Not required for this reason</source>
        <translation>Aus diesem Grund nicht nötig</translation>
    </message>
    <message>
        <source>Leave this step out, with reason</source>
        <translation>Diesen Schritt auslassen, mit Grund</translation>
    </message>
    <message>
        <source>Take an entry of this step back</source>
        <translation>Eintrag dieses Schritts zurücknehmen</translation>
    </message>
    <message>
        <source>Hand the job over</source>
        <translation>Auftrag übergeben</translation>
    </message>
    <message>
        <source>Hours per stage</source>
        <translation>Stunden je Abschnitt</translation>
    </message>
    <message>
        <source>Keypad for gloves (F4)</source>
        <translation>Ziffernblock für Handschuhe (F4)</translation>
    </message>
    <message>
        <source>Strip over the whole window (F2)</source>
        <translation>Anzeige über das ganze Fenster (F2)</translation>
    </message>
    <message>
        <source>The record so far</source>
        <translation>Das Protokoll bis jetzt</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>%1: %2 h %3 min</source>
        <translation>%1: %2 h %3 min</translation>
    </message>
    <message>
        <source>Hours per stage, by the times of the entries. Pauses of more than two hours do not count.</source>
        <translation>Stunden je Abschnitt, nach den Zeiten der Einträge. Pausen über zwei Stunden zählen nicht.</translation>
    </message>
    <message>
        <source>Entry %1, %2, %3: %4</source>
        <translation>Eintrag %1, %2, %3: %4</translation>
    </message>
    <message>
        <source>Take entry %1 back: why? It stays on the record, struck through.</source>
        <translation>Eintrag %1 zurücknehmen: warum? Er bleibt durchgestrichen im Protokoll.</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Nothing is kept for this step yet.</source>
        <translation>Für diesen Schritt ist noch nichts gespeichert.</translation>
    </message>
    <message>
        <source>Which entry is taken back?</source>
        <translation>Welcher Eintrag wird zurückgenommen?</translation>
    </message>
    <message>
        <source>What should %1 know?</source>
        <translation>Was soll %1 wissen?</translation>
    </message>
    <message>
        <source>Who goes on with this job?</source>
        <translation>Wer macht mit diesem Auftrag weiter?</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Achtung</translation>
    </message>
    <message>
        <source>%1 steps may have moved while the job lay and are asked again.</source>
        <translation>%1 Schritte können sich verändert haben, während der Auftrag lag, und werden noch einmal gefragt.</translation>
    </message>
    <message>
        <source>Parked, waiting for %1</source>
        <translation>Zurückgestellt, wartet auf %1</translation>
    </message>
    <message>
        <source>Take up</source>
        <translation>Wieder aufnehmen</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Last: %1 · %2 · %3</source>
        <translation>Zuletzt: %1 · %2 · %3</translation>
    </message>
    <message>
        <source>parked</source>
        <translation>zurückgestellt</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Als Nächstes: %1</translation>
    </message>
    <message>
        <source>Parts to order, to copy</source>
        <translation>Zu bestellende Teile, zum Kopieren</translation>
    </message>
    <message>
        <source>Every part of this job is fitted.</source>
        <translation>Jedes Teil dieses Auftrags ist eingebaut.</translation>
    </message>
    <message>
        <source>Still to be fitted, for an order:</source>
        <translation>Noch einzubauen, für eine Bestellung:</translation>
    </message>
    <message>
        <source>Copy the list</source>
        <translation>Liste kopieren</translation>
    </message>
    <message>
        <source>Sealed, %1</source>
        <translation>Versiegelt, %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>Look again: %1</source>
        <translation>Noch einmal ansehen: %1</translation>
    </message>
    <message>
        <source>One step may have moved while the job lay and is asked again.</source>
        <translation>Ein Schritt kann sich verändert haben, während der Auftrag lag, und wird noch einmal gefragt.</translation>
    </message>
    <message>
        <source>F2 goes back</source>
        <translation>F2 führt zurück</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::NewJobForm</name>
    <message>
        <source>Plate</source>
        <translation>Kennzeichen</translation>
    </message>
    <message>
        <source>Odometer</source>
        <translation>Kilometerstand</translation>
    </message>
    <message>
        <source>Complaint, in the customer&apos;s words</source>
        <translation>Beanstandung, in den Worten des Kunden</translation>
    </message>
    <message>
        <source>Gearbox type and spec sheet</source>
        <translation>Getriebetyp und Datenblatt</translation>
    </message>
    <message>
        <source>Gearbox serial</source>
        <translation>Seriennr. Getriebe</translation>
    </message>
    <message>
        <source>Build date</source>
        <translation>Baudatum</translation>
    </message>
    <message>
        <source>year-month-day</source>
        <translation>Jahr-Monat-Tag</translation>
    </message>
    <message>
        <source>Customer reference</source>
        <translation>Zeichen des Kunden</translation>
    </message>
    <message>
        <source>There is no spec sheet in this workshop: add one under Workshop.</source>
        <translation>In dieser Werkstatt gibt es kein Datenblatt: unter Werkstatt eines hinzufügen.</translation>
    </message>
    <message>
        <source>plate</source>
        <translation>Kennzeichen</translation>
    </message>
    <message>
        <source>gearbox type</source>
        <translation>Getriebetyp</translation>
    </message>
    <message>
        <source>gearbox serial</source>
        <translation>Seriennummer des Getriebes</translation>
    </message>
    <message>
        <source>build date</source>
        <translation>Baudatum</translation>
    </message>
    <message>
        <source>Choose the gearbox type: its spec sheet holds the limits of this job.</source>
        <translation>Den Getriebetyp wählen: sein Datenblatt enthält die Grenzen dieses Auftrags.</translation>
    </message>
    <message>
        <source>Job sheet</source>
        <translation>Arbeitsplan</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::NewJobPage</name>
    <message>
        <source>New job</source>
        <translation>Neuer Auftrag</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Go on typing</source>
        <translation>Weiter eingeben</translation>
    </message>
    <message>
        <source>Ctrl Enter</source>
        <translation>Strg Enter</translation>
    </message>
    <message>
        <source>Open job %1</source>
        <translation>Auftrag %1 öffnen</translation>
    </message>
    <message>
        <source>This workshop is open for looking only: no job can be opened.</source>
        <translation>Diese Werkstatt ist nur zum Ansehen offen: es lässt sich kein Auftrag öffnen.</translation>
    </message>
    <message>
        <source>Filled in from job %1: %2. Change what is different.</source>
        <translation>Aus Auftrag %1 übernommen: %2. Ändern, was anders ist.</translation>
    </message>
    <message>
        <source>This vehicle was here before</source>
        <translation>Dieses Fahrzeug war schon hier</translation>
    </message>
    <message>
        <source>This vehicle was not here before.</source>
        <translation>Dieses Fahrzeug war noch nicht hier.</translation>
    </message>
    <message>
        <source>Older jobs of this vehicle under Past jobs: %1.</source>
        <translation>Ältere Aufträge dieses Fahrzeugs unter Frühere Aufträge: %1.</translation>
    </message>
    <message>
        <source>What is typed here is kept nowhere else.</source>
        <translation>Was hier eingegeben ist, liegt sonst nirgends.</translation>
    </message>
    <message>
        <source>%1, issue %2</source>
        <translation>%1, Ausgabe %2</translation>
    </message>
    <message>
        <source>Not offered before it is checked under Workshop: %1.</source>
        <translation>Erst nach der Prüfung unter Werkstatt wählbar: %1.</translation>
    </message>
    <message>
        <source>There is no job sheet in this workshop that was checked: add or check one under Workshop.</source>
        <translation>In dieser Werkstatt gibt es keinen geprüften Arbeitsplan: unter Werkstatt einen hinzufügen oder prüfen.</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::PackPanel</name>
    <message>
        <source>Where you are</source>
        <translation>Wo die Arbeit steht</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::PartPage</name>
    <message>
        <source>, batch %1</source>
        <translation>, Charge %1</translation>
    </message>
    <message>
        <source>Batch or serial, if it has one</source>
        <translation>Charge/Seriennr., falls da</translation>
    </message>
    <message>
        <source>kept: %1, %2</source>
        <translation>gespeichert: %1, %2</translation>
    </message>
    <message>
        <source>Key 1: it is renewed. A scan is the batch.</source>
        <translation>Taste 1: erneuert. Ein Scan ist die Charge.</translation>
    </message>
    <message>
        <source>Keys 1 to %1: that one is renewed. A scan is the batch.</source>
        <translation>Tasten 1 bis %1: erneuert. Ein Scan ist die Charge.</translation>
    </message>
    <message>
        <source>Tick what is renewed and keep it, or clear ticks and fields.</source>
        <translation>Was erneuert ist, abhaken und speichern, oder Haken und Felder leeren.</translation>
    </message>
    <message>
        <source>one-time: renewed at every assembly</source>
        <translation>Einmalteil: bei jedem Zusammenbau erneuert</translation>
    </message>
    <message>
        <source>Number %1, quantity %2</source>
        <translation>Nummer %1, Anzahl %2</translation>
    </message>
    <message>
        <source>Another number</source>
        <translation>Andere Nummer</translation>
    </message>
    <message>
        <source>Another quantity</source>
        <translation>Andere Anzahl</translation>
    </message>
    <message>
        <source>Renewed, and kept</source>
        <translation>Erneuert, gespeichert</translation>
    </message>
    <message>
        <source>Renewed: ticked</source>
        <translation>Erneuert: abgehakt</translation>
    </message>
    <message>
        <source>Tick when renewed</source>
        <translation>Abhaken, wenn erneuert</translation>
    </message>
    <message>
        <source>Keep what is ticked</source>
        <translation>Abgehaktes speichern</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::PeakPage</name>
    <message>
        <source>Back off and inspect</source>
        <translation>Zurückfahren und nachsehen</translation>
    </message>
    <message>
        <source>Attempts</source>
        <translation>Versuche</translation>
    </message>
    <message>
        <source>The force has gone through the parts already: a second attempt would read lower and hide it. Find what was in the way and put it right before the next one. That will be attempt %1, and %2 stays on the record.</source>
        <translation>Die Kraft ging schon durch die Teile: ein zweiter Versuch zeigt weniger und verdeckt es. Suchen, was im Weg war, und es vor dem nächsten beheben. Das wird Versuch %1, und %2 bleibt im Protokoll.</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>, with %1</source>
        <translation>, mit %1</translation>
    </message>
    <message>
        <source>, assembly %1</source>
        <translation>, Montage %1</translation>
    </message>
    <message>
        <source>. The spec sheet has at most %1 attempts.</source>
        <translation>. Das Datenblatt erlaubt höchstens %1 Versuche.</translation>
    </message>
    <message>
        <source>attempt %1, at most %2</source>
        <translation>Versuch %1, höchstens %2</translation>
    </message>
    <message>
        <source>Keep the reading</source>
        <translation>Messwert speichern</translation>
    </message>
    <message>
        <source>Keep as attempt %1</source>
        <translation>Als Versuch %1 speichern</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::PhotoPage</name>
    <message>
        <source>What the next photo shows (may be blank)</source>
        <translation>Was das nächste Foto zeigt (darf leer bleiben)</translation>
    </message>
    <message>
        <source>The words belong to the next photo: choose it, or clear them.</source>
        <translation>Die Worte gehören zum nächsten Foto: es wählen, oder die Worte löschen.</translation>
    </message>
    <message>
        <source>Choose one more picture file</source>
        <translation>Noch eine Bilddatei wählen</translation>
    </message>
    <message>
        <source>%1 of at least %2 kept</source>
        <translation>%1 von mindestens %2 gespeichert</translation>
    </message>
    <message>
        <source>picture missing</source>
        <translation>Bild fehlt</translation>
    </message>
    <message>
        <source>Newest from the camera: press one to keep it</source>
        <translation>Neueste von der Kamera: drücken zum Speichern</translation>
    </message>
    <message>
        <source>Choose a picture file</source>
        <translation>Eine Bilddatei wählen</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::PromiseTable</name>
    <message>
        <source>Shim</source>
        <translation>Passscheibe</translation>
    </message>
    <message>
        <source>Float expected, mm (95 %)</source>
        <translation>Erwartetes Lüftspiel, mm (95&#xa0;%)</translation>
    </message>
    <message>
        <source>Within at every spot</source>
        <translation>Innerhalb an jedem Messpunkt</translation>
    </message>
    <message>
        <source>advised, fitted now</source>
        <translation>empfohlen, jetzt eingelegt</translation>
    </message>
    <message>
        <source>advised</source>
        <translation>empfohlen</translation>
    </message>
    <message>
        <source>fitted now</source>
        <translation>jetzt eingelegt</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::QuestionBox</name>
    <message>
        <source>It is right as it stands</source>
        <translation>Es stimmt so</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::ReadingFields</name>
    <message>
        <source>taken as %1</source>
        <translation>verstanden als %1</translation>
    </message>
    <message>
        <source>Compared with “%1”.</source>
        <translation>Verglichen mit „%1“.</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::ReadingPage</name>
    <message>
        <source>kept: %1, %2</source>
        <translation>gespeichert: %1, %2</translation>
    </message>
    <message>
        <source>Keep the reading</source>
        <translation>Messwert speichern</translation>
    </message>
    <message>
        <source>Keep the readings</source>
        <translation>Messwerte speichern</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::SheetList</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::ShimChoice</name>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::SignPage</name>
    <message>
        <source>Signing says that the job is as its entries have it. The seal over the whole record comes later: it is made with a PIN when the record is sealed.</source>
        <translation>Die Unterschrift sagt, dass der Auftrag ist, wie seine Einträge es sagen. Das Siegel über das ganze Protokoll kommt später: mit einer PIN, wenn das Protokoll versiegelt wird.</translation>
    </message>
    <message>
        <source>%1 signs as checker</source>
        <translation>%1 unterschreibt als Prüfer</translation>
    </message>
    <message>
        <source>%1 signs as technician</source>
        <translation>%1 unterschreibt als Techniker</translation>
    </message>
    <message>
        <source>Sign as checker</source>
        <translation>Als Prüfer unterschreiben</translation>
    </message>
    <message>
        <source>Sign as technician</source>
        <translation>Als Techniker unterschreiben</translation>
    </message>
    <message>
        <source>Signed. Ctrl Enter goes on.</source>
        <translation>Unterschrieben. Strg Enter geht weiter.</translation>
    </message>
    <message>
        <source>To sign: Ctrl Enter.</source>
        <translation>Unterschreiben: Strg Enter.</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::SignedField</name>
    <message>
        <source>minus</source>
        <translation>minus</translation>
    </message>
    <message>
        <source>plus</source>
        <translation>plus</translation>
    </message>
    <message>
        <source>Minus or plus? Read it on the pack.</source>
        <translation>Minus oder plus? Am Paket ablesen.</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::TeachInPage</name>
    <message>
        <source>Say how the teach-in went; the values are kept with the answer.</source>
        <translation>Angeben, wie das Anlernen ausging; die Werte werden mit der Antwort gespeichert.</translation>
    </message>
    <message>
        <source>Attempts</source>
        <translation>Versuche</translation>
    </message>
    <message>
        <source>%1 before</source>
        <translation>%1 vorher</translation>
    </message>
    <message>
        <source>%1 after</source>
        <translation>%1 nachher</translation>
    </message>
    <message>
        <source>Completed</source>
        <translation>Abgeschlossen</translation>
    </message>
    <message>
        <source>key 1</source>
        <translation>Taste 1</translation>
    </message>
    <message>
        <source>Aborted</source>
        <translation>Abgebrochen</translation>
    </message>
    <message>
        <source>key 2</source>
        <translation>Taste 2</translation>
    </message>
    <message>
        <source>If aborted: code shown</source>
        <translation>Bei Abbruch: angezeigter Code</translation>
    </message>
    <message>
        <source>If aborted: why it broke off</source>
        <translation>Bei Abbruch: warum</translation>
    </message>
    <message>
        <source>completed</source>
        <translation>abgeschlossen</translation>
    </message>
    <message>
        <source>aborted</source>
        <translation>abgebrochen</translation>
    </message>
    <message>
        <source>, code %1</source>
        <translation>, Code %1</translation>
    </message>
    <message>
        <source> before %1</source>
        <translation> vorher %1</translation>
    </message>
    <message>
        <source> after %1</source>
        <translation> nachher %1</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>Completed: key 1. Aborted: key 2.</source>
        <translation>Abgeschlossen: Taste 1. Abgebrochen: Taste 2.</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::TextPage</name>
    <message>
        <source>Serial, as it stands on the part</source>
        <translation>Seriennummer, wie sie auf dem Teil steht</translation>
    </message>
    <message>
        <source>In your words</source>
        <translation>In eigenen Worten</translation>
    </message>
    <message>
        <source>Write the kept words again</source>
        <translation>Die gespeicherten Worte neu schreiben</translation>
    </message>
    <message>
        <source>kept: %1, %2</source>
        <translation>gespeichert: %1, %2</translation>
    </message>
    <message>
        <source>Same as last job (F6)</source>
        <translation>Wie beim letzten Auftrag (F6)</translation>
    </message>
    <message>
        <source>Keep the serial</source>
        <translation>Seriennummer speichern</translation>
    </message>
    <message>
        <source>Keep the words</source>
        <translation>Worte speichern</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::UnsentBox</name>
    <message>
        <source>Typed and not kept yet</source>
        <translation>Eingegeben und noch nicht gespeichert</translation>
    </message>
    <message>
        <source>Clear what is typed</source>
        <translation>Eingabe löschen</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::VehicleEntry</name>
    <message>
        <source>It is no VIN</source>
        <translation>Es ist keine FIN</translation>
    </message>
    <message>
        <source>Why it is no VIN</source>
        <translation>Warum es keine FIN ist</translation>
    </message>
    <message>
        <source>Chassis number</source>
        <translation>Fahrgestellnummer</translation>
    </message>
    <message>
        <source>VIN</source>
        <translation>FIN</translation>
    </message>
    <message>
        <source>VIN · %1 of 17 characters</source>
        <translation>FIN · %1 von 17 Zeichen</translation>
    </message>
</context>
<context>
    <name>shimwright::past::CodeCard</name>
    <message>
        <source>Whole and ours: sealed by %1.</source>
        <translation>Unversehrt und von uns: versiegelt von %1.</translation>
    </message>
    <message>
        <source>Whole, but the key of %1 is marked as no longer valid.</source>
        <translation>Unversehrt, aber der Schlüssel von %1 gilt nicht mehr.</translation>
    </message>
    <message>
        <source>Whole, but sealed with a key that this workshop does not know.</source>
        <translation>Unversehrt, aber mit einem Schlüssel versiegelt, den diese Werkstatt nicht kennt.</translation>
    </message>
    <message>
        <source>no shim</source>
        <translation>keine Passscheibe</translation>
    </message>
    <message>
        <source>shim %1, float not measured</source>
        <translation>Passscheibe %1, Lüftspiel nicht gemessen</translation>
    </message>
    <message>
        <source>shim %1, float %2</source>
        <translation>Passscheibe %1, Lüftspiel %2</translation>
    </message>
    <message>
        <source>Hold the paper beside it: a number that differs there was altered.</source>
        <translation>Das Papier daneben halten: eine Zahl, die dort anders ist, wurde geändert.</translation>
    </message>
    <message>
        <source>Vehicle</source>
        <translation>Fahrzeug</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Lower disc, large bearing</source>
        <translation>Untere Scheibe, großes Lager</translation>
    </message>
    <message>
        <source>Upper disc, small bearing</source>
        <translation>Obere Scheibe, kleines Lager</translation>
    </message>
    <message>
        <source>Seal</source>
        <translation>Siegel</translation>
    </message>
    <message>
        <source>Signed by %1: %2</source>
        <translation>Unterschrieben von %1: %2</translation>
    </message>
    <message>
        <source>no shim, float %1</source>
        <translation>keine Passscheibe, Lüftspiel %1</translation>
    </message>
</context>
<context>
    <name>shimwright::past::FloatChart</name>
    <message>
        <source>as found</source>
        <translation>wie vorgefunden</translation>
    </message>
    <message>
        <source>final</source>
        <translation>am Ende</translation>
    </message>
    <message>
        <source>No float was judged yet.</source>
        <translation>Noch kein Lüftspiel wurde bewertet.</translation>
    </message>
    <message>
        <source>so far</source>
        <translation>bisher</translation>
    </message>
    <message>
        <source>job %1, %2: %3 %4, limits %5 to %6, %7</source>
        <translation>Auftrag %1, %2: %3 %4, Grenzen %5 bis %6, %7</translation>
    </message>
</context>
<context>
    <name>shimwright::past::JobComparison</name>
    <message>
        <source>Job %1, %2</source>
        <translation>Auftrag %1, %2</translation>
    </message>
    <message>
        <source>not there</source>
        <translation>nicht da</translation>
    </message>
    <message>
        <source>differs</source>
        <translation>verschieden</translation>
    </message>
    <message>
        <source>Only what differs</source>
        <translation>Nur, was verschieden ist</translation>
    </message>
    <message>
        <source>All readings</source>
        <translation>Alle Messwerte</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Früher</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>%1 of %2 readings differ</source>
        <translation>%1 von %2 Messwerten sind verschieden</translation>
    </message>
</context>
<context>
    <name>shimwright::past::JobRow</name>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>parked</source>
        <translation>zurückgestellt</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>abgeschlossen</translation>
    </message>
    <message>
        <source>VIN</source>
        <translation>FIN</translation>
    </message>
    <message>
        <source>plate</source>
        <translation>Kennzeichen</translation>
    </message>
    <message>
        <source>job number</source>
        <translation>Auftragsnummer</translation>
    </message>
    <message>
        <source>customer reference</source>
        <translation>Zeichen des Kunden</translation>
    </message>
    <message>
        <source>gearbox serial</source>
        <translation>Seriennummer des Getriebes</translation>
    </message>
    <message>
        <source>pack serial</source>
        <translation>Seriennummer des Pakets</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Job %1</source>
        <translation>Auftrag %1</translation>
    </message>
    <message>
        <source>found in: %1</source>
        <translation>gefunden in: %1</translation>
    </message>
    <message>
        <source>waits for %1</source>
        <translation>wartet auf %1</translation>
    </message>
    <message>
        <source>unit %1</source>
        <translation>Getriebe %1</translation>
    </message>
    <message>
        <source>exact</source>
        <translation>genau</translation>
    </message>
    <message>
        <source>one character differs</source>
        <translation>ein Zeichen anders</translation>
    </message>
    <message>
        <source>no plate given</source>
        <translation>kein Kennzeichen angegeben</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>zurückgenommen</translation>
    </message>
    <message>
        <source>two characters swapped</source>
        <translation>zwei Zeichen vertauscht</translation>
    </message>
</context>
<context>
    <name>shimwright::past::LifeRow</name>
    <message>
        <source>as found</source>
        <translation>wie vorgefunden</translation>
    </message>
    <message>
        <source>final float</source>
        <translation>am Ende</translation>
    </message>
    <message>
        <source>float so far</source>
        <translation>bisher</translation>
    </message>
    <message>
        <source>lower</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>upper</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>not measured as found</source>
        <translation>wie vorgefunden nicht gemessen</translation>
    </message>
    <message>
        <source>no float yet</source>
        <translation>noch kein Lüftspiel</translation>
    </message>
    <message>
        <source>float as found: %1</source>
        <translation>Lüftspiel wie vorgefunden: %1</translation>
    </message>
    <message>
        <source>final float: %1</source>
        <translation>Lüftspiel am Ende: %1</translation>
    </message>
    <message>
        <source>float so far: %1</source>
        <translation>Lüftspiel bisher: %1</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>unterschrieben</translation>
    </message>
    <message>
        <source>signed, 1 addendum</source>
        <translation>unterschrieben, 1 Nachtrag</translation>
    </message>
    <message>
        <source>signed, %1 addenda</source>
        <translation>unterschrieben, %1 Nachträge</translation>
    </message>
    <message>
        <source>waits for %1</source>
        <translation>wartet auf %1</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>gemischt</translation>
    </message>
    <message>
        <source>Job %1</source>
        <translation>Auftrag %1</translation>
    </message>
    <message>
        <source>shims large %1, small %2</source>
        <translation>Passscheiben groß %1, klein %2</translation>
    </message>
    <message>
        <source>shims</source>
        <translation>Passscheiben</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Disc</source>
        <translation>Scheibe</translation>
    </message>
    <message>
        <source>Float (%1)</source>
        <translation>Lüftspiel (%1)</translation>
    </message>
    <message>
        <source>± 95 %</source>
        <translation>± 95 %</translation>
    </message>
    <message>
        <source>Limits (%1)</source>
        <translation>Grenzen (%1)</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Bewertung</translation>
    </message>
    <message>
        <source>final</source>
        <translation>am Ende</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Unit %1</source>
        <translation>Getriebe %1</translation>
    </message>
    <message>
        <source>model year by its code %1</source>
        <translation>Modelljahr nach seinem Zeichen %1</translation>
    </message>
    <message>
        <source>check digit fits</source>
        <translation>Prüfziffer passt</translation>
    </message>
    <message>
        <source>check digit does not fit</source>
        <translation>Prüfziffer passt nicht</translation>
    </message>
    <message>
        <source>1 job</source>
        <translation>1 Auftrag</translation>
    </message>
    <message>
        <source>%1 jobs</source>
        <translation>%1 Aufträge</translation>
    </message>
    <message>
        <source>the seal does not hold</source>
        <translation>das Siegel hält nicht</translation>
    </message>
    <message>
        <source>signed with a key not known here</source>
        <translation>mit einem hier unbekannten Schlüssel unterschrieben</translation>
    </message>
    <message>
        <source>so far</source>
        <translation>bisher</translation>
    </message>
</context>
<context>
    <name>shimwright::past::PageColumn</name>
    <message>
        <source>Pages of the record</source>
        <translation>Seiten des Protokolls</translation>
    </message>
</context>
<context>
    <name>shimwright::past::PastJobs</name>
    <message>
        <source>Search past jobs</source>
        <translation>Frühere Aufträge suchen</translation>
    </message>
    <message>
        <source>There is no job in this workshop yet.</source>
        <translation>In dieser Werkstatt gibt es noch keinen Auftrag.</translation>
    </message>
    <message>
        <source>The latest jobs</source>
        <translation>Die letzten Aufträge</translation>
    </message>
    <message>
        <source>No job has this. Try fewer characters, or the end of the VIN.</source>
        <translation>Kein Auftrag gefunden. Weniger Zeichen versuchen, oder das Ende der FIN.</translation>
    </message>
    <message>
        <source>The first %1 jobs that have it; type more to narrow them down</source>
        <translation>Die ersten %1 gefundenen Aufträge; mehr eingeben, um einzugrenzen</translation>
    </message>
    <message>
        <source>1 job has it</source>
        <translation>1 Auftrag gefunden</translation>
    </message>
    <message>
        <source>%1 jobs have it</source>
        <translation>%1 Aufträge gefunden</translation>
    </message>
    <message>
        <source>New job for it</source>
        <translation>Neuer Auftrag für dieses Fahrzeug</translation>
    </message>
    <message>
        <source>Take up</source>
        <translation>Wieder aufnehmen</translation>
    </message>
    <message>
        <source>Job %1</source>
        <translation>Auftrag %1</translation>
    </message>
    <message>
        <source>Choose a signed record</source>
        <translation>Unterschriebenes Protokoll wählen</translation>
    </message>
    <message>
        <source>Signed records (*.signed.json)</source>
        <translation>Unterschriebene Protokolle (*.signed.json)</translation>
    </message>
    <message>
        <source>Check a signed file</source>
        <translation>Unterschriebene Datei prüfen</translation>
    </message>
    <message>
        <source>End or any part of a VIN, plate, job number, customer reference or serial; or scan the code of a record.</source>
        <translation>Ende oder Teil von FIN, Kennzeichen, Auftragsnummer, Kundennummer oder Seriennummer; oder den Code eines Protokolls scannen.</translation>
    </message>
    <message>
        <source>%1: the first %2 of %3 jobs</source>
        <translation>%1: die ersten %2 von %3 Aufträgen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>This does not hold:</source>
        <translation>Das hält der Prüfung nicht stand:</translation>
    </message>
    <message>
        <source>What was signed</source>
        <translation>Was unterschrieben wurde</translation>
    </message>
    <message>
        <source>Vehicle</source>
        <translation>Fahrzeug</translation>
    </message>
    <message>
        <source>Show more</source>
        <translation>Mehr zeigen</translation>
    </message>
    <message>
        <source>No job has exactly this. Jobs that come close: %1</source>
        <translation>Kein Auftrag hat genau das. Aufträge, die nahekommen: %1</translation>
    </message>
</context>
<context>
    <name>shimwright::past::RecordView</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Page up</source>
        <translation>Seite zurück</translation>
    </message>
    <message>
        <source>Page down</source>
        <translation>Seite vor</translation>
    </message>
    <message>
        <source>Fit width</source>
        <translation>Seitenbreite</translation>
    </message>
    <message>
        <source>100 %</source>
        <translation>100&#xa0;%</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Als PDF speichern</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Record of job %1</source>
        <translation>Protokoll zu Auftrag %1</translation>
    </message>
    <message>
        <source>Writing page %1 of %2</source>
        <translation>Seite %1 von %2 wird geschrieben</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Gespeichert: %1</translation>
    </message>
    <message>
        <source>Stopped: nothing was written.</source>
        <translation>Angehalten: nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>Printing page %1 of %2</source>
        <translation>Seite %1 von %2 wird gedruckt</translation>
    </message>
    <message>
        <source>Handed to the printer.</source>
        <translation>An den Drucker übergeben.</translation>
    </message>
    <message>
        <source>Stopped. Pages the printer had already may still come out.</source>
        <translation>Angehalten. Seiten, die der Drucker schon hatte, kommen vielleicht noch heraus.</translation>
    </message>
    <message>
        <source>record-%1</source>
        <translation>protokoll-%1</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>With photos</source>
        <translation>Mit Fotos</translation>
    </message>
    <message>
        <source>Shift slip</source>
        <translation>Schichtzettel</translation>
    </message>
    <message>
        <source>The photos are being read.</source>
        <translation>Die Fotos werden gelesen.</translation>
    </message>
</context>
<context>
    <name>shimwright::past::SealBox</name>
    <message>
        <source>Not sealed yet: this has to be decided first.</source>
        <translation>Noch nicht versiegelt: das ist zuerst zu entscheiden.</translation>
    </message>
    <message>
        <source>PIN of %1</source>
        <translation>PIN von %1</translation>
    </message>
    <message>
        <source>The same once more</source>
        <translation>Noch einmal dieselbe</translation>
    </message>
    <message>
        <source>Seal the record: nothing in it can be changed after that, only added to, with a signature.</source>
        <translation>Das Protokoll versiegeln: danach lässt sich nichts darin ändern, nur mit Unterschrift etwas nachtragen.</translation>
    </message>
    <message>
        <source>Sign and seal</source>
        <translation>Unterschreiben und versiegeln</translation>
    </message>
    <message>
        <source>Sealed. Whole, and signed with keys of this workshop.</source>
        <translation>Versiegelt. Unversehrt und unterschrieben mit Schlüsseln dieser Werkstatt.</translation>
    </message>
    <message>
        <source>Add to it</source>
        <translation>Nachtragen</translation>
    </message>
    <message>
        <source>Why is something added?</source>
        <translation>Warum wird etwas nachgetragen?</translation>
    </message>
    <message>
        <source>What is added</source>
        <translation>Was nachgetragen wird</translation>
    </message>
    <message>
        <source>Sign the addition</source>
        <translation>Nachtrag unterschreiben</translation>
    </message>
    <message>
        <source>The two PINs of %1 differ: type both again.</source>
        <translation>Die beiden PINs von %1 sind verschieden: beide neu eingeben.</translation>
    </message>
    <message>
        <source>Signed and sealed.</source>
        <translation>Unterschrieben und versiegelt.</translation>
    </message>
    <message>
        <source>Somebody else is at the bench now: begin the addition anew.</source>
        <translation>Jetzt ist jemand anders an der Werkbank: den Nachtrag neu beginnen.</translation>
    </message>
    <message>
        <source>Added and signed.</source>
        <translation>Nachgetragen und unterschrieben.</translation>
    </message>
    <message>
        <source>Its file could not be written: %1</source>
        <translation>Die Datei dazu ließ sich nicht schreiben: %1</translation>
    </message>
    <message>
        <source>No folder for backups is set, so no file of it was written.</source>
        <translation>Es ist kein Ordner für Sicherungen eingestellt, deshalb wurde keine Datei davon geschrieben.</translation>
    </message>
    <message>
        <source>Its file: %1</source>
        <translation>Die Datei dazu: %1</translation>
    </message>
    <message>
        <source>The key of %1 has ended: give a new PIN under People in the workshop.</source>
        <translation>Der Schlüssel von %1 gilt nicht mehr: in der Werkstatt unter Personen eine neue PIN vergeben.</translation>
    </message>
    <message>
        <source>Sealed. Whether the seal holds is being looked at.</source>
        <translation>Versiegelt. Es wird nachgesehen, ob das Siegel hält.</translation>
    </message>
    <message>
        <source>Signing: this takes a moment.</source>
        <translation>Es wird unterschrieben: das dauert einen Augenblick.</translation>
    </message>
    <message>
        <source>First PIN of %1</source>
        <translation>Erste PIN von %1</translation>
    </message>
    <message>
        <source>4 to 12 digits</source>
        <translation>4 bis 12 Ziffern</translation>
    </message>
</context>
<context>
    <name>shimwright::past::VehiclePage</name>
    <message>
        <source>Writing job %1 of %2</source>
        <translation>Auftrag %1 von %2 wird geschrieben</translation>
    </message>
    <message>
        <source>Stopped: nothing was written.</source>
        <translation>Angehalten: nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Compare two jobs</source>
        <translation>Zwei Aufträge vergleichen</translation>
    </message>
    <message>
        <source>New job for it</source>
        <translation>Neuer Auftrag dazu</translation>
    </message>
    <message>
        <source>Each job with the large bearing and the lower disc before the stroke, the small and the upper behind.</source>
        <translation>Bei jedem Auftrag stehen das große Lager und die untere Scheibe vor dem Strich, das kleine und die obere dahinter.</translation>
    </message>
    <message>
        <source>Older jobs that are not shown here: %1. The past jobs find them by the VIN.</source>
        <translation>Ältere Aufträge, die hier nicht stehen: %1. Unter Frühere Aufträge sind sie über die FIN zu finden.</translation>
    </message>
    <message>
        <source>Float of the lower disc over the vehicle&apos;s life</source>
        <translation>Lüftspiel der unteren Scheibe</translation>
    </message>
    <message>
        <source>Float of the upper disc over the vehicle&apos;s life</source>
        <translation>Lüftspiel der oberen Scheibe</translation>
    </message>
    <message>
        <source>The same in numbers</source>
        <translation>Dasselbe in Zahlen</translation>
    </message>
    <message>
        <source>Every measurement as a file</source>
        <translation>Alle Messwerte als Datei</translation>
    </message>
    <message>
        <source>For a spreadsheet or another program. Plate and customer reference are in it unless they were erased.</source>
        <translation>Für eine Tabelle oder ein anderes Programm. Kennzeichen und Kundenzeichen sind darin, sofern sie nicht gelöscht wurden.</translation>
    </message>
    <message>
        <source>Save as CSV</source>
        <translation>Als CSV speichern</translation>
    </message>
    <message>
        <source>Save as JSON</source>
        <translation>Als JSON speichern</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Wear</source>
        <translation>Verschleiß</translation>
    </message>
    <message>
        <source>No pack was measured both when it was fitted and as it was found later.</source>
        <translation>Kein Paket wurde sowohl beim Einbau als auch später wie vorgefunden gemessen.</translation>
    </message>
    <message>
        <source>The whole life</source>
        <translation>Alle Aufträge</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Gespeichert: %1</translation>
    </message>
    <message>
        <source>The jobs of this vehicle are being read.</source>
        <translation>Die Aufträge dieses Fahrzeugs werden gelesen.</translation>
    </message>
</context>
<context>
    <name>shimwright::shell::FirstPage</name>
    <message>
        <source>Shimwright</source>
        <translation>Shimwright</translation>
    </message>
    <message>
        <source>Shims, floats and records for the dry clutch pack of a dual-clutch gearbox.</source>
        <translation>Passscheiben, Lüftspiele und Protokolle für das trockene Kupplungspaket eines Doppelkupplungsgetriebes.</translation>
    </message>
    <message>
        <source>Try the demonstration workshop</source>
        <translation>Demonstrationswerkstatt ausprobieren</translation>
    </message>
    <message>
        <source>A made-up workshop with jobs in work. It lies in a folder of its own and never mixes with yours.</source>
        <translation>Eine erfundene Werkstatt mit Aufträgen in Arbeit. Sie liegt in einem eigenen Ordner und vermischt sich nie mit der echten.</translation>
    </message>
    <message>
        <source>Job sheet and spec sheets come with the program; their limits are demonstration values until your own are entered.</source>
        <translation>Arbeitsplan und Datenblätter kommen mit dem Programm; ihre Grenzen sind Demonstrationswerte, bis eigene eingegeben sind.</translation>
    </message>
    <message>
        <source>Name of the workshop</source>
        <translation>Name der Werkstatt</translation>
    </message>
    <message>
        <source>Address, as on the record</source>
        <translation>Anschrift, wie im Protokoll</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>It will lie here: %1</source>
        <translation>Er wird hier liegen: %1</translation>
    </message>
    <message>
        <source>%1: nothing is written here yet.</source>
        <translation>%1: hier ist noch nichts geschrieben.</translation>
    </message>
    <message>
        <source>Choose a logo for the record</source>
        <translation>Logo für das Protokoll wählen</translation>
    </message>
    <message>
        <source>none; it can come later</source>
        <translation>keines; es kann später kommen</translation>
    </message>
    <message>
        <source>On this machine</source>
        <translation>Auf diesem Rechner</translation>
    </message>
    <message>
        <source>Language of the window</source>
        <translation>Sprache des Fensters</translation>
    </message>
    <message>
        <source>Lengths are shown and typed in</source>
        <translation>Längen anzeigen und eingeben in</translation>
    </message>
    <message>
        <source>Torques are shown and typed in</source>
        <translation>Drehmomente anzeigen und eingeben in</translation>
    </message>
    <message>
        <source>Paper of records</source>
        <translation>Papier der Protokolle</translation>
    </message>
    <message>
        <source>Nobody is at work here yet. Enter who is; all else of this workshop stays as it is.</source>
        <translation>Hier arbeitet noch niemand. Eingeben, wer hier arbeitet; alles andere dieser Werkstatt bleibt, wie es ist.</translation>
    </message>
    <message>
        <source>All of it can be changed later in the settings.</source>
        <translation>Alles kann später in den Einstellungen geändert werden.</translation>
    </message>
    <message>
        <source>To look around</source>
        <translation>Zum Umsehen</translation>
    </message>
    <message>
        <source>Name of the first person</source>
        <translation>Name der ersten Person</translation>
    </message>
    <message>
        <source>Begin this workshop</source>
        <translation>Diese Werkstatt beginnen</translation>
    </message>
    <message>
        <source>Remove the logo</source>
        <translation>Logo entfernen</translation>
    </message>
    <message>
        <source>Your own workshop</source>
        <translation>Die eigene Werkstatt</translation>
    </message>
</context>
<context>
    <name>shimwright::shell::HindrancePage</name>
    <message>
        <source>The store does not open</source>
        <translation>Der Datenbestand lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Noch einmal versuchen</translation>
    </message>
    <message>
        <source>Open for looking only</source>
        <translation>Nur zum Ansehen öffnen</translation>
    </message>
    <message>
        <source>Break the lock of a program that is gone</source>
        <translation>Sperre eines Programms aufheben, das weg ist</translation>
    </message>
    <message>
        <source>That program is gone: break its lock</source>
        <translation>Jenes Programm ist weg: Sperre aufheben</translation>
    </message>
    <message>
        <source>Somebody</source>
        <translation>Jemand</translation>
    </message>
    <message>
        <source>%1, on %2, since %3</source>
        <translation>%1, auf dem Rechner %2, seit %3</translation>
    </message>
    <message>
        <source>Program number %1 holds the lock. Ask there first: where two programs write in one store, entries are lost. Break the lock only where that program or its machine is gone.</source>
        <translation>Programm Nummer %1 hält die Sperre. Zuerst dort fragen: wo zwei Programme in einen Datenbestand schreiben, gehen Einträge verloren. Die Sperre nur aufheben, wenn jenes Programm oder sein Rechner weg ist.</translation>
    </message>
    <message>
        <source>The last backup</source>
        <translation>Die letzte Sicherung</translation>
    </message>
    <message>
        <source>Put this backup in its place</source>
        <translation>Diese Sicherung an seine Stelle setzen</translation>
    </message>
    <message>
        <source>Looking for the last whole backup in %1.</source>
        <translation>Die letzte heile Sicherung in %1 wird gesucht.</translation>
    </message>
    <message>
        <source>The damaged store is kept as a file beside it.</source>
        <translation>Der beschädigte Datenbestand bleibt als Datei daneben erhalten.</translation>
    </message>
    <message>
        <source>There is no whole backup of this store in %1. Bring the folder of your backups back, and try again; keep the damaged file as it is.</source>
        <translation>In %1 ist keine heile Sicherung dieses Datenbestands. Den Ordner der Sicherungen zurückbringen und noch einmal versuchen; die beschädigte Datei so lassen, wie sie ist.</translation>
    </message>
    <message>
        <source>The backup was not put there. %1</source>
        <translation>Die Sicherung wurde nicht dorthin gelegt. %1</translation>
    </message>
    <message>
        <source>Leave the lock</source>
        <translation>Sperre lassen</translation>
    </message>
</context>
<context>
    <name>shimwright::shell::MainWindow</name>
    <message>
        <source>This store is open for looking only: nothing can be entered.</source>
        <translation>Dieser Datenbestand ist nur zum Ansehen offen: nichts lässt sich eingeben.</translation>
    </message>
    <message>
        <source>What is typed here is not saved yet: mend it, or empty the field.</source>
        <translation>Was hier eingegeben ist, ist noch nicht gespeichert: berichtigen oder das Feld leeren.</translation>
    </message>
    <message>
        <source>The backup is being made and checked.</source>
        <translation>Die Sicherung wird angelegt und geprüft.</translation>
    </message>
    <message>
        <source>The backup was not made. %1</source>
        <translation>Die Sicherung kam nicht zustande. %1</translation>
    </message>
    <message>
        <source>Close without it</source>
        <translation>Ohne sie schließen</translation>
    </message>
</context>
<context>
    <name>shimwright::shell::Notices</name>
    <message>
        <source>Understood</source>
        <translation>Verstanden</translation>
    </message>
</context>
<context>
    <name>shimwright::shell::PersonRow</name>
    <message>
        <source>Who is at the bench</source>
        <translation>Wer an der Werkbank ist</translation>
    </message>
    <message>
        <source>Who is at the bench?</source>
        <translation>Wer ist an der Werkbank?</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
</context>
<context>
    <name>shimwright::shell::PhotoWatch</name>
    <message>
        <source>Photos that are gone from the folder of photos: %1. They are of job %2.</source>
        <translation>Fotos, die im Fotoordner fehlen: %1. Sie gehören zu Auftrag %2.</translation>
    </message>
    <message>
        <source>Bring them back from the backup</source>
        <translation>Aus der Sicherung zurückholen</translation>
    </message>
    <message>
        <source>Photos that are back: %1. None is missing now.</source>
        <translation>Fotos, die wieder da sind: %1. Jetzt fehlt keines.</translation>
    </message>
    <message>
        <source>Photos that are back: %1. Not in the backup either: %2.</source>
        <translation>Fotos, die wieder da sind: %1. Auch nicht in der Sicherung: %2.</translation>
    </message>
</context>
<context>
    <name>shimwright::shell::Program</name>
    <message>
        <source>This picture cannot be read; choose it again.</source>
        <translation>Dieses Bild ist nicht lesbar; noch einmal wählen.</translation>
    </message>
    <message>
        <source>The backup is being put in the place of the damaged store</source>
        <translation>Die Sicherung wird an die Stelle des beschädigten Datenbestands gesetzt</translation>
    </message>
    <message>
        <source>This is the last whole backup. The damaged store is kept: %1</source>
        <translation>Das ist die letzte heile Sicherung. Der beschädigte Datenbestand ist erhalten: %1</translation>
    </message>
    <message>
        <source>The store is going back to the backup</source>
        <translation>Der Datenbestand geht auf die Sicherung zurück</translation>
    </message>
    <message>
        <source>This is the backup. Jobs: %1, entries found equal one by one: %2. What was here before is kept: %3</source>
        <translation>Das ist die Sicherung. Aufträge: %1, einzeln als gleich befundene Einträge: %2. Was vorher hier war, ist erhalten: %3</translation>
    </message>
    <message>
        <source>Photos that are gone: %1.</source>
        <translation>Fotos, die fehlen: %1.</translation>
    </message>
</context>
<context>
    <name>shimwright::shell::SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Aussehen</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Brightness</source>
        <translation>Helligkeit</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Language of the window</source>
        <translation>Sprache des Fensters</translation>
    </message>
    <message>
        <source>At the bench</source>
        <translation>An der Werkbank</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Aus</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Ein</translation>
    </message>
    <message>
        <source>A tone when a reading is saved</source>
        <translation>Ein Ton, wenn ein Messwert gespeichert ist</translation>
    </message>
    <message>
        <source>Folder the camera puts its photos in</source>
        <translation>Ordner, in den die Kamera ihre Fotos legt</translation>
    </message>
    <message>
        <source>Choose the camera&apos;s folder</source>
        <translation>Ordner der Kamera wählen</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Sicherung</translation>
    </message>
    <message>
        <source>Once a day, by itself. A folder on another disk also helps when this one breaks.</source>
        <translation>Einmal am Tag, von selbst. Ein Ordner auf einer anderen Platte hilft auch, wenn diese kaputtgeht.</translation>
    </message>
    <message>
        <source>Choose the backup folder</source>
        <translation>Sicherungsordner wählen</translation>
    </message>
    <message>
        <source>Back up now</source>
        <translation>Jetzt sichern</translation>
    </message>
    <message>
        <source>Store</source>
        <translation>Datenbestand</translation>
    </message>
    <message>
        <source>Open this workshop&apos;s own store</source>
        <translation>Datenbestand dieser Werkstatt öffnen</translation>
    </message>
    <message>
        <source>Open the demonstration workshop</source>
        <translation>Demonstrationswerkstatt öffnen</translation>
    </message>
    <message>
        <source>none chosen yet</source>
        <translation>noch keiner gewählt</translation>
    </message>
    <message>
        <source>Folder: %1</source>
        <translation>Ordner: %1</translation>
    </message>
    <message>
        <source>Last verified backup: %1</source>
        <translation>Letzte geprüfte Sicherung: %1</translation>
    </message>
    <message>
        <source>No verified backup yet.</source>
        <translation>Noch keine geprüfte Sicherung.</translation>
    </message>
    <message>
        <source>Lengths are shown and typed in</source>
        <translation>Längen anzeigen und eingeben in</translation>
    </message>
    <message>
        <source>Torques are shown and typed in</source>
        <translation>Drehmomente anzeigen und eingeben in</translation>
    </message>
    <message>
        <source>Paper of records</source>
        <translation>Papier der Protokolle</translation>
    </message>
    <message>
        <source>Delete the demonstration workshop</source>
        <translation>Demonstrationswerkstatt löschen</translation>
    </message>
    <message>
        <source>What was tried in it goes too; this workshop&apos;s own store is not touched.</source>
        <translation>Was darin ausprobiert wurde, geht mit; der Datenbestand dieser Werkstatt bleibt unberührt.</translation>
    </message>
    <message>
        <source>Delete it</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>The demonstration is deleted; it can be made anew at any time.</source>
        <translation>Die Demonstration ist gelöscht; sie lässt sich jederzeit neu anlegen.</translation>
    </message>
    <message>
        <source>The size takes effect at the next start.</source>
        <translation>Die Größe gilt ab dem nächsten Start.</translation>
    </message>
    <message>
        <source>The window shows it once it comes up anew.</source>
        <translation>Das Fenster zeigt es, sobald es neu aufgeht.</translation>
    </message>
    <message>
        <source>Let it come up now</source>
        <translation>Jetzt neu öffnen</translation>
    </message>
</context>
<context>
    <name>shimwright::shell::TopBar</name>
    <message>
        <source>to the bench</source>
        <translation>zur Werkbank</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Werkbank</translation>
    </message>
    <message>
        <source>Past jobs</source>
        <translation>Frühere Aufträge</translation>
    </message>
    <message>
        <source>Workshop</source>
        <translation>Werkstatt</translation>
    </message>
    <message>
        <source>demo workshop</source>
        <translation>Demo-Werkstatt</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>At the bench: nobody</source>
        <translation>An der Werkbank: niemand</translation>
    </message>
    <message>
        <source>At the bench: %1</source>
        <translation>An der Werkbank: %1</translation>
    </message>
    <message>
        <source>demo</source>
        <translation>Demo</translation>
    </message>
</context>
<context>
    <name>shimwright::shell::WaitPage</name>
    <message>
        <source>Progress</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <source>Leave the machine on until this is done. What was in the store before is kept.</source>
        <translation>Das Gerät anlassen, bis das getan ist. Was vorher im Datenbestand war, bleibt erhalten.</translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::DiscView</name>
    <message>
        <source>spot %1: to be measured now</source>
        <translation>Messpunkt %1: jetzt zu messen</translation>
    </message>
    <message>
        <source>spot %1: %2</source>
        <translation>Messpunkt %1: %2</translation>
    </message>
    <message>
        <source>stands highest at %1 degrees from the top, clockwise</source>
        <translation>steht am höchsten bei %1 Grad von oben, im Uhrzeigersinn</translation>
    </message>
    <message>
        <source>Disc from above</source>
        <translation>Scheibe von oben</translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::Keypad</name>
    <message>
        <source>delete</source>
        <translation>löschen</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>minus</source>
        <translation>minus</translation>
    </message>
    <message>
        <source>decimal comma</source>
        <translation>Komma</translation>
    </message>
    <message>
        <source>Keypad</source>
        <translation>Ziffernblock</translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::LimitStrip</name>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>spot %1: %2</source>
        <translation>Messpunkt %1: %2</translation>
    </message>
    <message>
        <source>spot %1: %2 %3</source>
        <translation>Messpunkt %1: %2 %3</translation>
    </message>
    <message>
        <source>Limits %1 to %2 mm</source>
        <translation>Grenzen %1 bis %2 mm</translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::PackDrawing</name>
    <message>
        <source>large bearing</source>
        <translation>großes Lager</translation>
    </message>
    <message>
        <source>small bearing</source>
        <translation>kleines Lager</translation>
    </message>
    <message>
        <source>shim of the large bearing</source>
        <translation>Passscheibe des großen Lagers</translation>
    </message>
    <message>
        <source>shim of the small bearing</source>
        <translation>Passscheibe des kleinen Lagers</translation>
    </message>
    <message>
        <source>large lever</source>
        <translation>großer Hebel</translation>
    </message>
    <message>
        <source>small lever</source>
        <translation>kleiner Hebel</translation>
    </message>
    <message>
        <source>pack</source>
        <translation>Paket</translation>
    </message>
    <message>
        <source>ring of the pack</source>
        <translation>Ring des Pakets</translation>
    </message>
    <message>
        <source>hub</source>
        <translation>Nabe</translation>
    </message>
    <message>
        <source>ring of the hub</source>
        <translation>Ring der Nabe</translation>
    </message>
    <message>
        <source>lower disc</source>
        <translation>untere Scheibe</translation>
    </message>
    <message>
        <source>upper disc</source>
        <translation>obere Scheibe</translation>
    </message>
    <message>
        <source>shafts</source>
        <translation>Wellen</translation>
    </message>
    <message>
        <source>housing</source>
        <translation>Gehäuse</translation>
    </message>
    <message>
        <source>Half section of the pack</source>
        <translation>Halbschnitt des Pakets</translation>
    </message>
    <message>
        <source>Half section of the pack, in hand: %1</source>
        <translation>Halbschnitt des Pakets, gerade dran: %1</translation>
    </message>
    <message>
        <source>Not to scale; shims drawn thicker than they are</source>
        <translation>Nicht maßstäblich; Passscheiben dicker gezeichnet, als sie sind</translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::ShimRowButton</name>
    <message>
        <source>ruled out</source>
        <translation>ausgeschlossen</translation>
    </message>
    <message>
        <source>contradicted</source>
        <translation>widersprochen</translation>
    </message>
    <message>
        <source>picked</source>
        <translation>ausgewählt</translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::ShimRows</name>
    <message>
        <source>Shims, thick to thin</source>
        <translation>Passscheiben, dick nach dünn</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1: ruled out</source>
        <translation>%1: ausgeschlossen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 in 100 together</source>
        <translation>%1: zusammen %2 von 100</translation>
    </message>
    <message>
        <source>%1: less than 1 in 100</source>
        <translation>%1: unter 1 von 100</translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::SizeScale</name>
    <message>
        <source>Sizes</source>
        <translation>Maße</translation>
    </message>
    <message>
        <source>%1 chosen</source>
        <translation>%1 gewählt</translation>
    </message>
    <message>
        <source>%1 possible</source>
        <translation>%1 möglich</translation>
    </message>
    <message>
        <source>wanted %1 mm</source>
        <translation>gesucht %1 mm</translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::StageBar</name>
    <message>
        <source>%1 of %2 stages done</source>
        <translation>%1 von %2 Abschnitten erledigt</translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::Strip</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::BackupCard</name>
    <message>
        <source>Backup</source>
        <translation>Sicherung</translation>
    </message>
    <message>
        <source>Back up now</source>
        <translation>Jetzt sichern</translation>
    </message>
    <message>
        <source>Choose another folder</source>
        <translation>Anderen Ordner wählen</translation>
    </message>
    <message>
        <source>Choose a folder for backups, on a second disk or a share.</source>
        <translation>Einen Ordner für Sicherungen wählen, auf einer zweiten Platte oder Freigabe.</translation>
    </message>
    <message>
        <source>Folder: %1</source>
        <translation>Ordner: %1</translation>
    </message>
    <message>
        <source>It lies on the same disk as the store: choose one on a second disk or a share.</source>
        <translation>Er liegt auf derselben Platte wie der Datenbestand: einen auf einer zweiten Platte oder Freigabe wählen.</translation>
    </message>
    <message>
        <source>Last verified backup: %1, %2</source>
        <translation>Letzte geprüfte Sicherung: %1, %2</translation>
    </message>
    <message>
        <source>The backup is being made.</source>
        <translation>Die Sicherung entsteht gerade.</translation>
    </message>
    <message>
        <source>Backup made and checked. Entries: %1, photos: %2.</source>
        <translation>Sicherung angelegt und geprüft. Einträge: %1, Fotos: %2.</translation>
    </message>
    <message>
        <source>The file of before, with what the store has no more, is kept: %1</source>
        <translation>Die Datei von vorher, mit dem, was der Datenbestand nicht mehr hat, ist erhalten: %1</translation>
    </message>
    <message>
        <source>Photos that are gone, and so not in it: %1.</source>
        <translation>Fotos, die fehlen und deshalb nicht darin sind: %1.</translation>
    </message>
    <message>
        <source>No verified backup yet.</source>
        <translation>Noch keine geprüfte Sicherung.</translation>
    </message>
    <message>
        <source>A backup is made by itself every day, checked before it takes its name, and kept for a week: one file for each day of the week. The file from before each update of the store is kept for good. Jobs go on meanwhile.</source>
        <translation>Eine Sicherung entsteht jeden Tag von selbst, wird geprüft, bevor sie ihren Namen bekommt, und eine Woche lang aufgehoben: eine Datei für jeden Wochentag. Die Datei von vor jeder Erneuerung des Datenbestands bleibt für immer. Die Arbeit geht derweil weiter.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::DataSection</name>
    <message>
        <source>Data and backup</source>
        <translation>Daten und Sicherung</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::FiguresCard</name>
    <message>
        <source>Last 12 months</source>
        <translation>Letzte 12 Monate</translation>
    </message>
    <message>
        <source>Last 3 years</source>
        <translation>Letzte 3 Jahre</translation>
    </message>
    <message>
        <source>All jobs</source>
        <translation>Alle Aufträge</translation>
    </message>
    <message>
        <source>A vehicle is back soon within:</source>
        <translation>Bald wieder da ist ein Fahrzeug innerhalb von:</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Strecke</translation>
    </message>
    <message>
        <source>The figures are being read.</source>
        <translation>Die Zahlen werden gelesen.</translation>
    </message>
    <message>
        <source>Jobs of which time</source>
        <translation>Aufträge aus welcher Zeit</translation>
    </message>
    <message>
        <source>Time, in days</source>
        <translation>Zeit in Tagen</translation>
    </message>
    <message>
        <source>Show the figures</source>
        <translation>Zahlen zeigen</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::FiguresSection</name>
    <message>
        <source>MMM yyyy</source>
        <translation>MMM yyyy</translation>
    </message>
    <message>
        <source>large bearing</source>
        <translation>großes Lager</translation>
    </message>
    <message>
        <source>small bearing</source>
        <translation>kleines Lager</translation>
    </message>
    <message>
        <source>Figures of the workshop</source>
        <translation>Zahlen der Werkstatt</translation>
    </message>
    <message>
        <source>Jobs a month</source>
        <translation>Aufträge im Monat</translation>
    </message>
    <message>
        <source>No job was opened in this time.</source>
        <translation>In dieser Zeit wurde kein Auftrag eröffnet.</translation>
    </message>
    <message>
        <source>A second assembly</source>
        <translation>Eine zweite Montage</translation>
    </message>
    <message>
        <source>Of the jobs in which a shim was chosen.</source>
        <translation>Von den Aufträgen, in denen eine Passscheibe gewählt wurde.</translation>
    </message>
    <message>
        <source>Pack off again</source>
        <translation>Paket wieder herunter</translation>
    </message>
    <message>
        <source>%1 of %2, %3 %</source>
        <translation>%1 von %2, %3 %</translation>
    </message>
    <message>
        <source>Trials for a shim</source>
        <translation>Proben für eine Passscheibe</translation>
    </message>
    <message>
        <source>No shim was found by trials in this time.</source>
        <translation>In dieser Zeit wurde keine Passscheibe durch Proben gefunden.</translation>
    </message>
    <message>
        <source>%1 on average, for %2 shims.</source>
        <translation>%1 im Mittel, für %2 Passscheiben.</translation>
    </message>
    <message>
        <source>1 trial</source>
        <translation>1 Probe</translation>
    </message>
    <message>
        <source>%1 trials</source>
        <translation>%1 Proben</translation>
    </message>
    <message>
        <source>Shims most used</source>
        <translation>Meistgebrauchte Passscheiben</translation>
    </message>
    <message>
        <source>Those that were left in the vehicle; the first %1.</source>
        <translation>Die im Fahrzeug geblieben sind; die ersten %1.</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>Vehicles that were back soon</source>
        <translation>Fahrzeuge, die bald wieder da waren</translation>
    </message>
    <message>
        <source>From another workshop, in none of the figures</source>
        <translation>Aus einer anderen Werkstatt, in keiner der Zahlen</translation>
    </message>
    <message>
        <source>%1: there is no such job in this time.</source>
        <translation>%1: In dieser Zeit gibt es keinen solchen Auftrag.</translation>
    </message>
    <message>
        <source>Counted from the last job before on the same vehicle, also one from before this time.</source>
        <translation>Gezählt ab dem letzten Auftrag davor am selben Fahrzeug, auch einem von vor dieser Zeit.</translation>
    </message>
    <message>
        <source>Back within the distance and the days</source>
        <translation>Zurück innerhalb von Strecke und Tagen</translation>
    </message>
    <message>
        <source>Back within the days, distance not known</source>
        <translation>Zurück innerhalb der Tage, Strecke unbekannt</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::FormCard</name>
    <message>
        <source>Ctrl Enter</source>
        <translation>Strg Enter</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::InstrumentForm</name>
    <message>
        <source>resolution %1</source>
        <translation>Auflösung %1</translation>
    </message>
    <message>
        <source>permissible error ±&#xa0;%1</source>
        <translation>Fehlergrenze ±&#xa0;%1</translation>
    </message>
    <message>
        <source>repeatability %1</source>
        <translation>Wiederholbarkeit %1</translation>
    </message>
    <message>
        <source>out of use</source>
        <translation>außer Gebrauch</translation>
    </message>
    <message>
        <source>no date of calibration kept</source>
        <translation>kein Kalibrierdatum hinterlegt</translation>
    </message>
    <message>
        <source>calibrated to %1</source>
        <translation>kalibriert bis %1</translation>
    </message>
    <message>
        <source>calibration due: calibrated to %1</source>
        <translation>Kalibrierung fällig: kalibriert bis %1</translation>
    </message>
    <message>
        <source>calibration overdue since %1</source>
        <translation>Kalibrierung überfällig seit %1</translation>
    </message>
    <message>
        <source>One more: %1</source>
        <translation>Eins mehr: %1</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Name, as it is called at the bench</source>
        <translation>Name, wie es an der Werkbank heißt</translation>
    </message>
    <message>
        <source>Resolution</source>
        <translation>Auflösung</translation>
    </message>
    <message>
        <source>Permissible error, ±</source>
        <translation>Fehlergrenze, ±</translation>
    </message>
    <message>
        <source>Calibrated on (year-month-day)</source>
        <translation>Kalibriert am (Jahr-Monat-Tag)</translation>
    </message>
    <message>
        <source>Calibrated to, this day included</source>
        <translation>Kalibriert bis einschließlich</translation>
    </message>
    <message>
        <source>Repeatability %1, tested %2</source>
        <translation>Wiederholbarkeit %1, geprüft %2</translation>
    </message>
    <message>
        <source>Repeatability: not tested; the spec sheet&apos;s stands for it.</source>
        <translation>Wiederholbarkeit: nicht geprüft; es gilt die des Datenblatts.</translation>
    </message>
    <message>
        <source>Repeat test</source>
        <translation>Wiederholprobe</translation>
    </message>
    <message>
        <source>In use</source>
        <translation>In Gebrauch</translation>
    </message>
    <message>
        <source>One turn of the hand</source>
        <translation>Eine Zeigerumdrehung</translation>
    </message>
    <message>
        <source>Blank: not known.</source>
        <translation>Leer: nicht bekannt.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::InstrumentsSection</name>
    <message>
        <source>Set up as for a float, at one marked spot. Set zero, lift until it stops, read, let down. Enter the lift; do it ten times, by the same hand.</source>
        <translation>Aufbauen wie für ein Lüftspiel, an einem markierten Messpunkt. Null einstellen, anheben bis zum Anschlag, ablesen, ablassen. Den Hub eingeben; zehnmal, von derselben Hand.</translation>
    </message>
    <message>
        <source>Measure one depth at one marked place, lifting the gauge off each time. Ten times.</source>
        <translation>Eine Tiefe an einer markierten Stelle messen, das Tiefenmaß jedes Mal abheben. Zehnmal.</translation>
    </message>
    <message>
        <source>Measure one shim at one marked place, opening the micrometer each time. Ten times.</source>
        <translation>Eine Passscheibe an einer markierten Stelle messen, die Messschraube jedes Mal öffnen. Zehnmal.</translation>
    </message>
    <message>
        <source>Release it on the tester at one setting and enter what the tester shows. Ten times.</source>
        <translation>Auf dem Prüfgerät bei einer Einstellung auslösen und eingeben, was das Prüfgerät zeigt. Zehnmal.</translation>
    </message>
    <message>
        <source>Read the same thing again and again while nothing changes. Ten times.</source>
        <translation>Dasselbe immer wieder ablesen, während sich nichts ändert. Zehnmal.</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Messmittel</translation>
    </message>
    <message>
        <source>Kind of instrument</source>
        <translation>Art des Messmittels</translation>
    </message>
    <message>
        <source>Keep this first, or leave it as it was.</source>
        <translation>Zuerst speichern oder abbrechen.</translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>Gespeichert.</translation>
    </message>
    <message>
        <source>Repeat test of %1</source>
        <translation>Wiederholprobe mit %1</translation>
    </message>
    <message>
        <source>Kept: readings with %1 carry this from now on.</source>
        <translation>Gespeichert: Messwerte mit %1 tragen das ab jetzt.</translation>
    </message>
    <message>
        <source>Add an instrument</source>
        <translation>Messgerät hinzufügen</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::JobFileCard</name>
    <message>
        <source>A job for another workshop</source>
        <translation>Ein Auftrag für eine andere Werkstatt</translation>
    </message>
    <message>
        <source>A whole job goes into one file: entries, sheets, seal, and photos as they were taken, with the place where the camera wrote it down. Personal texts are in it unless they were erased.</source>
        <translation>Ein ganzer Auftrag geht in eine Datei: Einträge, Arbeitsplan und Datenblatt, Siegel und Fotos, wie sie aufgenommen wurden, mit dem Ort, falls die Kamera ihn notiert hat. Persönliche Texte sind darin, wenn sie nicht gelöscht wurden.</translation>
    </message>
    <message>
        <source>Job number</source>
        <translation>Auftragsnummer</translation>
    </message>
    <message>
        <source>Write the job to a file</source>
        <translation>Auftrag in Datei schreiben</translation>
    </message>
    <message>
        <source>Take in a job from a file</source>
        <translation>Auftrag aus Datei aufnehmen</translation>
    </message>
    <message>
        <source>There is no job of this number in the store: look at the number again.</source>
        <translation>Kein Auftrag dieser Nummer im Datenbestand: die Nummer noch einmal ansehen.</translation>
    </message>
    <message>
        <source>The job is being written.</source>
        <translation>Der Auftrag wird geschrieben.</translation>
    </message>
    <message>
        <source>Written and read again: %1</source>
        <translation>Geschrieben und wieder gelesen: %1</translation>
    </message>
    <message>
        <source>The file is being looked through.</source>
        <translation>Die Datei wird durchgesehen.</translation>
    </message>
    <message>
        <source>Job %1 is here already, with all its entries.</source>
        <translation>Auftrag %1 ist schon hier, mit allen Einträgen.</translation>
    </message>
    <message>
        <source>Job %1 was taken in: %2 entries, %3 photos.</source>
        <translation>Auftrag %1 wurde aufgenommen: %2 Einträge, %3 Fotos.</translation>
    </message>
    <message>
        <source>Job %1 went on: %2 entries were added to the %3 that are here.</source>
        <translation>Auftrag %1 ging weiter: %2 Einträge kamen zu den %3 hier dazu.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::OwnSection</name>
    <message>
        <source>This workshop</source>
        <translation>Diese Werkstatt</translation>
    </message>
    <message>
        <source>As it stands on every record</source>
        <translation>Wie sie in jedem Protokoll steht</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Address, on one line</source>
        <translation>Anschrift, in einer Zeile</translation>
    </message>
    <message>
        <source>Choose a logo</source>
        <translation>Logo wählen</translation>
    </message>
    <message>
        <source>The logo</source>
        <translation>Das Logo</translation>
    </message>
    <message>
        <source>No logo is chosen</source>
        <translation>Kein Logo gewählt</translation>
    </message>
    <message>
        <source>This picture cannot be read; choose it again.</source>
        <translation>Dieses Bild ist nicht lesbar; noch einmal wählen.</translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>Gespeichert.</translation>
    </message>
    <message>
        <source>Logo for the head of the record: PNG or JPEG, at most 500 kB. It is printed on white paper.</source>
        <translation>Logo für den Kopf des Protokolls: PNG oder JPEG, höchstens 500 kB. Gedruckt wird es auf weißes Papier.</translation>
    </message>
    <message>
        <source>Remove the logo</source>
        <translation>Logo entfernen</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::PeopleSection</name>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Enter a person</source>
        <translation>Person eintragen</translation>
    </message>
    <message>
        <source>Keep this first, or leave it as it was.</source>
        <translation>Zuerst speichern oder abbrechen.</translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>Gespeichert.</translation>
    </message>
    <message>
        <source>Feel of %1 with the gauge</source>
        <translation>Gefühl von %1 mit der Lehre</translation>
    </message>
    <message>
        <source>Seat and load one bearing and leave it so. Offer shims in any order, eyes away from their marks, and find the thickest that still lets the gauge in. Enter its thickness; begin anew, ten times. </source>
        <translation>Ein Lager setzen, belasten und so lassen. Passscheiben in beliebiger Reihenfolge probieren, ohne auf die Zeichen zu sehen, und die dickste finden, die die Lehre noch hineinlässt. Ihre Dicke eingeben; neu beginnen, zehnmal. </translation>
    </message>
    <message>
        <source>Kept: trials by %1 are reckoned with this feel from now on.</source>
        <translation>Gespeichert: Proben von %1 werden ab jetzt mit diesem Gefühl gerechnet.</translation>
    </message>
    <message>
        <source>The key of %1 is ended.</source>
        <translation>Der Schlüssel von %1 ist beendet.</translation>
    </message>
    <message>
        <source>Kept: %1 signs with the new PIN from now on.</source>
        <translation>Gespeichert: %1 unterschreibt ab jetzt mit der neuen PIN.</translation>
    </message>
    <message>
        <source>The PIN is being kept: this takes a moment.</source>
        <translation>Die PIN wird gespeichert: das dauert einen Augenblick.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::PeriodExportCard</name>
    <message>
        <source>Every measurement of this time as a file</source>
        <translation>Alle Messwerte dieser Zeit als Datei</translation>
    </message>
    <message>
        <source>For a spreadsheet or another program. Plate and customer reference are in it unless they were erased.</source>
        <translation>Für eine Tabelle oder ein anderes Programm. Kennzeichen und Kundenzeichen sind darin, sofern sie nicht gelöscht wurden.</translation>
    </message>
    <message>
        <source>Save as CSV</source>
        <translation>Als CSV speichern</translation>
    </message>
    <message>
        <source>Save as JSON</source>
        <translation>Als JSON speichern</translation>
    </message>
    <message>
        <source>The measurements are being written.</source>
        <translation>Die Messwerte werden geschrieben.</translation>
    </message>
    <message>
        <source>%1 in: %2</source>
        <translation>%1 in: %2</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::PersonForm</name>
    <message>
        <source>checker</source>
        <translation>Prüfer</translation>
    </message>
    <message>
        <source>technician</source>
        <translation>Techniker</translation>
    </message>
    <message>
        <source>signs with a PIN</source>
        <translation>unterschreibt mit PIN</translation>
    </message>
    <message>
        <source>no PIN yet</source>
        <translation>noch keine PIN</translation>
    </message>
    <message>
        <source>feel %1</source>
        <translation>Gefühl %1</translation>
    </message>
    <message>
        <source>left %1</source>
        <translation>ausgeschieden %1</translation>
    </message>
    <message>
        <source>no longer here</source>
        <translation>nicht mehr hier</translation>
    </message>
    <message>
        <source>A person more</source>
        <translation>Eine Person mehr</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>Technician</source>
        <translation>Techniker</translation>
    </message>
    <message>
        <source>Checker</source>
        <translation>Prüfer</translation>
    </message>
    <message>
        <source>Left on (year-month-day); blank: at work here</source>
        <translation>Ausgeschieden am (Jahr-Monat-Tag); leer: arbeitet hier</translation>
    </message>
    <message>
        <source>No longer here; the day is not known. Keeping this with a blank day puts the person back at work.</source>
        <translation>Nicht mehr hier; der Tag ist nicht bekannt. Mit leerem Tag speichern heißt: die Person arbeitet wieder hier.</translation>
    </message>
    <message>
        <source>Feel with the gauge: %1, tested %2</source>
        <translation>Gefühl mit der Lehre: %1, geprüft %2</translation>
    </message>
    <message>
        <source>Feel with the gauge: not tested; the spec sheet&apos;s stands for it.</source>
        <translation>Gefühl mit der Lehre: nicht geprüft; es gilt das des Datenblatts.</translation>
    </message>
    <message>
        <source>Test the feel</source>
        <translation>Gefühl prüfen</translation>
    </message>
    <message>
        <source>key ended</source>
        <translation>Schlüssel beendet</translation>
    </message>
    <message>
        <source>Give a PIN</source>
        <translation>PIN geben</translation>
    </message>
    <message>
        <source>Change the PIN</source>
        <translation>PIN ändern</translation>
    </message>
    <message>
        <source>PIN forgotten</source>
        <translation>PIN vergessen</translation>
    </message>
    <message>
        <source>End the key</source>
        <translation>Schlüssel beenden</translation>
    </message>
    <message>
        <source>Make a new key</source>
        <translation>Neuen Schlüssel anlegen</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::PinCard</name>
    <message>
        <source>First PIN of %1</source>
        <translation>Erste PIN von %1</translation>
    </message>
    <message>
        <source>Another PIN for %1</source>
        <translation>Andere PIN für %1</translation>
    </message>
    <message>
        <source>%1 has forgotten the PIN</source>
        <translation>%1 hat die PIN vergessen</translation>
    </message>
    <message>
        <source>End the key of %1</source>
        <translation>Schlüssel von %1 beenden</translation>
    </message>
    <message>
        <source>It is asked for nothing but signing. Who knows it signs in this name.</source>
        <translation>Sie wird nur zum Unterschreiben verlangt. Wer sie kennt, unterschreibt in diesem Namen.</translation>
    </message>
    <message>
        <source>The key stays the same, and so does everything it signed.</source>
        <translation>Der Schlüssel bleibt derselbe, und alles, was er unterschrieben hat.</translation>
    </message>
    <message>
        <source>A new key is made. What the old one signed stays valid; it signs nothing any more, and no PIN opens it again.</source>
        <translation>Ein neuer Schlüssel entsteht. Was der alte unterschrieben hat, gilt weiter; er unterschreibt nichts mehr, und keine PIN öffnet ihn wieder.</translation>
    </message>
    <message>
        <source>For a key that others may know. What it signed before that day stays valid, what it signs from then on does not. This cannot be taken back; to sign again, make a new key afterwards.</source>
        <translation>Für einen Schlüssel, den andere kennen könnten. Was er vor diesem Tag unterschrieben hat, gilt weiter; was er von da an unterschreibt, gilt nicht. Das lässt sich nicht zurücknehmen; um wieder zu unterschreiben, danach einen neuen Schlüssel anlegen.</translation>
    </message>
    <message>
        <source>End the key</source>
        <translation>Schlüssel beenden</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>The PIN of now</source>
        <translation>Die jetzige PIN</translation>
    </message>
    <message>
        <source>No longer valid from (year-month-day)</source>
        <translation>Gilt nicht mehr ab (Jahr-Monat-Tag)</translation>
    </message>
    <message>
        <source>New PIN, 4 to 12 digits</source>
        <translation>Neue PIN, 4 bis 12 Ziffern</translation>
    </message>
    <message>
        <source>The same once more</source>
        <translation>Noch einmal dieselbe</translation>
    </message>
    <message>
        <source>The two new PINs differ: type both again.</source>
        <translation>Die beiden neuen PINs unterscheiden sich: beide noch einmal eingeben.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::ReadingList</name>
    <message>
        <source>Take the last one away</source>
        <translation>Letzten wegnehmen</translation>
    </message>
    <message>
        <source>Enter adds it.</source>
        <translation>Enter fügt hinzu.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>No reading yet.</source>
        <translation>Noch kein Messwert.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::RepeatCard</name>
    <message>
        <source>Keep this</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Step from shim to shim</source>
        <translation>Schritt von Passscheibe zu Passscheibe</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>%1 more at least; ten are usual.</source>
        <translation>Noch mindestens %1; zehn sind üblich.</translation>
    </message>
    <message>
        <source>The step from shim to shim is missing.</source>
        <translation>Der Schritt von Passscheibe zu Passscheibe fehlt.</translation>
    </message>
    <message>
        <source>Feel %1 (standard uncertainty) from %2 readings; it may be wrong by about %3 %.</source>
        <translation>Gefühl %1 (Standardunsicherheit) aus %2 Messwerten; es kann um etwa %3&#xa0;% falsch sein.</translation>
    </message>
    <message>
        <source>Repeatability %1 (standard deviation) from %2 readings; it may be wrong by about %3 %.</source>
        <translation>Wiederholbarkeit %1 (Standardabweichung) aus %2 Messwerten; sie kann um etwa %3&#xa0;% falsch sein.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::RestoreCard</name>
    <message>
        <source>What is in the store now is kept as a file beside it. Every entry of the backup is compared, and the window opens again with it.</source>
        <translation>Was jetzt im Datenbestand ist, bleibt als Datei daneben erhalten. Jeder Eintrag der Sicherung wird verglichen, und das Fenster öffnet sich wieder mit ihr.</translation>
    </message>
    <message>
        <source>Look at a backup</source>
        <translation>Eine Sicherung ansehen</translation>
    </message>
    <message>
        <source>Go back to this backup</source>
        <translation>Auf diese Sicherung zurückgehen</translation>
    </message>
    <message>
        <source>Leave the store as it is</source>
        <translation>Den Datenbestand lassen, wie er ist</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>The backup is being looked at.</source>
        <translation>Die Sicherung wird angesehen.</translation>
    </message>
    <message>
        <source>Go back to a backup</source>
        <translation>Zurück auf eine Sicherung</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::SheetForm</name>
    <message>
        <source>Go on later</source>
        <translation>Später weiter</translation>
    </message>
    <message>
        <source>Throw the draft away</source>
        <translation>Entwurf verwerfen</translation>
    </message>
    <message>
        <source>Yes, throw it away</source>
        <translation>Ja, verwerfen</translation>
    </message>
    <message>
        <source>All that was filled in is lost then. Press again to be sure.</source>
        <translation>Alles Ausgefüllte ist dann verloren. Zur Sicherheit noch einmal drücken.</translation>
    </message>
    <message>
        <source>without a title yet</source>
        <translation>noch ohne Titel</translation>
    </message>
    <message>
        <source>%1 · %2 to fill in</source>
        <translation>%1 · %2 auszufüllen</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Nach oben</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Nach unten</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Herausnehmen</translation>
    </message>
    <message>
        <source>Keep as issue %1</source>
        <translation>Als Ausgabe %1 speichern</translation>
    </message>
    <message>
        <source>the first of them is in sight.</source>
        <translation>das erste davon ist zu sehen.</translation>
    </message>
    <message>
        <source>Not kept yet, %1 to be filled in or put right: %2</source>
        <translation>Noch nicht gespeichert, %1 auszufüllen oder zu berichtigen: %2</translation>
    </message>
    <message>
        <source>Section of the sheet</source>
        <translation>Bereich des Blatts</translation>
    </message>
    <message>
        <source>Next section</source>
        <translation>Nächster Bereich</translation>
    </message>
    <message>
        <source>It stands at the end already.</source>
        <translation>Es steht schon am Ende.</translation>
    </message>
    <message>
        <source>It stands in “%1” now.</source>
        <translation>Es steht jetzt in „%1“.</translation>
    </message>
    <message>
        <source>Taken over. What is to be put right is named at each section.</source>
        <translation>Übernommen. Was zu berichtigen ist, steht bei jedem Teil.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::SheetsSection</name>
    <message>
        <source>Job sheets</source>
        <translation>Arbeitspläne</translation>
    </message>
    <message>
        <source>Spec sheets</source>
        <translation>Datenblätter</translation>
    </message>
    <message>
        <source>New, from an empty sheet</source>
        <translation>Neu, aus leerem Blatt</translation>
    </message>
    <message>
        <source>Bring in a file</source>
        <translation>Datei hereinholen</translation>
    </message>
    <message>
        <source>Being written: %1</source>
        <translation>In Arbeit: %1</translation>
    </message>
    <message>
        <source>Go on writing</source>
        <translation>Weiterschreiben</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>Show steps</source>
        <translation>Schritte zeigen</translation>
    </message>
    <message>
        <source>Show values</source>
        <translation>Werte zeigen</translation>
    </message>
    <message>
        <source>All job sheets</source>
        <translation>Alle Arbeitspläne</translation>
    </message>
    <message>
        <source>All spec sheets</source>
        <translation>Alle Datenblätter</translation>
    </message>
    <message>
        <source>I compared every value: checked</source>
        <translation>Jeder Wert verglichen: geprüft</translation>
    </message>
    <message>
        <source>New issue</source>
        <translation>Neue Ausgabe</translation>
    </message>
    <message>
        <source>Copy under another name</source>
        <translation>Unter anderem Namen kopieren</translation>
    </message>
    <message>
        <source>Compare with issue %1</source>
        <translation>Mit Ausgabe %1 vergleichen</translation>
    </message>
    <message>
        <source>Save as a file</source>
        <translation>Als Datei speichern</translation>
    </message>
    <message>
        <source>Checked. Jobs can be opened on it now.</source>
        <translation>Geprüft. Aufträge lassen sich jetzt danach öffnen.</translation>
    </message>
    <message>
        <source>Checked, and said that the same person entered it. Jobs can be opened on it now.</source>
        <translation>Geprüft, mit dem Vermerk, dass dieselbe Person es eingegeben hat. Aufträge lassen sich jetzt danach öffnen.</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Geschrieben: %1</translation>
    </message>
    <message>
        <source>%1: issue %2 beside issue %3</source>
        <translation>%1: Ausgabe %2 neben Ausgabe %3</translation>
    </message>
    <message>
        <source>All %1 values are the same.</source>
        <translation>Alle %1 Werte sind gleich.</translation>
    </message>
    <message>
        <source>%1 values differ, %2 are the same.</source>
        <translation>%1 Werte sind verschieden, %2 gleich.</translation>
    </message>
    <message>
        <source>Back to issue %1</source>
        <translation>Zurück zu Ausgabe %1</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Issue %1</source>
        <translation>Ausgabe %1</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>not there</source>
        <translation>nicht da</translation>
    </message>
    <message>
        <source>Throw the draft away</source>
        <translation>Entwurf verwerfen</translation>
    </message>
    <message>
        <source>Yes, throw it away</source>
        <translation>Ja, verwerfen</translation>
    </message>
    <message>
        <source>All that was filled in is lost then. Press again to be sure.</source>
        <translation>Alles Ausgefüllte ist dann verloren. Zur Sicherheit noch einmal drücken.</translation>
    </message>
    <message>
        <source>Name in files: %1</source>
        <translation>Name in Dateien: %1</translation>
    </message>
    <message>
        <source>Save a blank sheet for paper (PDF)</source>
        <translation>Leeres Blatt sichern (PDF)</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::ShimForm</name>
    <message>
        <source>One more size</source>
        <translation>Ein Maß mehr</translation>
    </message>
    <message>
        <source>Shim %1</source>
        <translation>Passscheibe %1</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Mark on the shim</source>
        <translation>Zeichen auf der Passscheibe</translation>
    </message>
    <message>
        <source>Take this size out of the tray</source>
        <translation>Maß aus dem Sortiment nehmen</translation>
    </message>
    <message>
        <source>Micrometer</source>
        <translation>Messschraube</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Standard uncertainty</source>
        <translation>Standardunsicherheit</translation>
    </message>
    <message>
        <source>Counted now</source>
        <translation>Jetzt gezählt</translation>
    </message>
    <message>
        <source>Blank: not counted.</source>
        <translation>Leer: nicht gezählt.</translation>
    </message>
    <message>
        <source>Mean of %1: %2 ± %3 %4 (95 %)</source>
        <translation>Mittel aus %1: %2 ± %3 %4 (95&#xa0;%)</translation>
    </message>
    <message>
        <source>Without readings the thickness typed below stands.</source>
        <translation>Ohne Messwerte gilt die unten eingegebene Dicke.</translation>
    </message>
    <message>
        <source>A thickness with its uncertainty is needed, or readings with a micrometer.</source>
        <translation>Nötig ist eine Dicke mit ihrer Unsicherheit oder Messwerte mit einer Messschraube.</translation>
    </message>
    <message>
        <source>Order when so few are left</source>
        <translation>Nachbestellen bei höchstens</translation>
    </message>
    <message>
        <source>Blank: the count stays as it is, %1.</source>
        <translation>Leer: die Zahl bleibt, wie sie ist, %1.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::StageRow</name>
    <message>
        <source>Or take a stage over from another sheet:</source>
        <translation>Oder einen Abschnitt aus einem anderen Arbeitsplan übernehmen:</translation>
    </message>
    <message>
        <source>Sheet it is taken from</source>
        <translation>Arbeitsplan, aus dem er kommt</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>Stands before</source>
        <translation>Steht vor</translation>
    </message>
    <message>
        <source>It comes with its cautions and hold points, in the languages of this sheet. From a demonstration sheet it makes this sheet one too.</source>
        <translation>Er kommt mit seinen Achtung-Hinweisen und Haltepunkten, in den Sprachen dieses Plans. Aus einem Demonstrationsblatt macht er auch diesen zu einem.</translation>
    </message>
    <message>
        <source>Take the stage over</source>
        <translation>Abschnitt übernehmen</translation>
    </message>
    <message>
        <source>Choose a sheet and one of its stages first.</source>
        <translation>Zuerst einen Arbeitsplan und einen seiner Abschnitte wählen.</translation>
    </message>
    <message>
        <source>Add a stage to this sheet first: the one taken over stands before it.</source>
        <translation>Diesem Plan zuerst einen Abschnitt hinzufügen: der übernommene steht davor.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::StoreCard</name>
    <message>
        <source>The store</source>
        <translation>Der Datenbestand</translation>
    </message>
    <message>
        <source>The check goes through every entry, reading and photo and compares it with what was written. Jobs go on meanwhile.</source>
        <translation>Die Prüfung geht jeden Eintrag, jeden Messwert und jedes Foto durch und vergleicht sie mit dem, was geschrieben wurde. Die Arbeit geht derweil weiter.</translation>
    </message>
    <message>
        <source>Check the store</source>
        <translation>Den Datenbestand prüfen</translation>
    </message>
    <message>
        <source>1 job</source>
        <translation>1 Auftrag</translation>
    </message>
    <message>
        <source>%1 jobs</source>
        <translation>%1 Aufträge</translation>
    </message>
    <message>
        <source>%1, %2 with photos</source>
        <translation>%1, %2 mit Fotos</translation>
    </message>
    <message>
        <source>The store is being checked.</source>
        <translation>Der Datenbestand wird geprüft.</translation>
    </message>
    <message>
        <source>Sealed in another store: %1.</source>
        <translation>In einem anderen Datenbestand versiegelt: %1.</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 mehr</translation>
    </message>
    <message>
        <source>All is as it was written. Jobs: %1, entries: %2, photos: %3.</source>
        <translation>Alles ist, wie es geschrieben wurde. Aufträge: %1, Einträge: %2, Fotos: %3.</translation>
    </message>
    <message>
        <source>Not as it was written, in so many places: %1. Keep the store as it is, and look at your last backup.</source>
        <translation>Nicht, wie es geschrieben wurde, an so vielen Stellen: %1. Den Datenbestand lassen, wie er ist, und die letzte Sicherung ansehen.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::TrayRow</name>
    <message>
        <source>Or lay all sizes of the tray at once:</source>
        <translation>Oder alle Maße des Sortiments auf einmal anlegen:</translation>
    </message>
    <message>
        <source>Lay these sizes</source>
        <translation>Diese Maße anlegen</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::TraysSection</name>
    <message>
        <source>Shim trays</source>
        <translation>Sortimente</translation>
    </message>
    <message>
        <source>No tray is kept here yet: jobs take the sizes of their spec sheet.</source>
        <translation>Hier liegt noch kein Sortiment: die Aufträge nehmen die Maße ihres Datenblatts.</translation>
    </message>
    <message>
        <source>One more size in %1</source>
        <translation>Ein Maß mehr in %1</translation>
    </message>
    <message>
        <source>Begin the tray %1</source>
        <translation>Sortiment %1 beginnen</translation>
    </message>
    <message>
        <source>with the sizes of its spec sheet</source>
        <translation>mit den Maßen seines Datenblatts</translation>
    </message>
    <message>
        <source>The tray %1 is begun: measure and count its shims.</source>
        <translation>Das Sortiment %1 ist begonnen: seine Passscheiben messen und zählen.</translation>
    </message>
    <message>
        <source>Keep this first, or leave it as it was.</source>
        <translation>Zuerst speichern oder abbrechen.</translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>Gespeichert.</translation>
    </message>
    <message>
        <source>%1 is out of the tray; jobs that used it keep what they knew of it.</source>
        <translation>%1 ist aus dem Sortiment; Aufträge, die sie nutzten, behalten, was sie davon wussten.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::WordPick</name>
    <message>
        <source>choose</source>
        <translation>wählen</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::WorkCard</name>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <source>Stopping at the next step.</source>
        <translation>Hält beim nächsten Schritt an.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::WorkshopPage</name>
    <message>
        <source>Spec sheets</source>
        <translation>Datenblätter</translation>
    </message>
    <message>
        <source>Job sheets</source>
        <translation>Arbeitspläne</translation>
    </message>
    <message>
        <source>Shim trays</source>
        <translation>Sortimente</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Messmittel</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Data and backup</source>
        <translation>Daten und Sicherung</translation>
    </message>
    <message>
        <source>This workshop</source>
        <translation>Diese Werkstatt</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Zahlen</translation>
    </message>
</context>
<context>
    <name>store</name>
    <message>
        <source>The job went on elsewhere: entry {0} is due and not entry {1}; open the job again and enter this once more.</source>
        <translation>Der Auftrag ging anderswo weiter: fällig ist Eintrag {0} und nicht Eintrag {1}; den Auftrag neu öffnen und dies noch einmal eingeben.</translation>
    </message>
    <message>
        <source>A text in this has broken characters; enter it again.</source>
        <translation>Ein Text darin hat kaputte Zeichen; neu eingeben.</translation>
    </message>
    <message>
        <source>A job has to be opened before anything is entered in it.</source>
        <translation>Ein Auftrag muss geöffnet sein, bevor etwas darin eingegeben wird.</translation>
    </message>
    <message>
        <source>The job sheet or spec sheet of this job is not in the store; add it first.</source>
        <translation>Arbeitsplan oder Datenblatt dieses Auftrags fehlt im Datenbestand; zuerst hinzufügen.</translation>
    </message>
    <message>
        <source>Something other than an older backup of this store lies there and is not written over; choose another name.</source>
        <translation>Dort liegt etwas anderes als eine ältere Sicherung dieses Datenbestands und wird nicht überschrieben; einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>This job was stored and is gone.</source>
        <translation>Dieser Auftrag war gespeichert und ist weg.</translation>
    </message>
    <message>
        <source>Line {0} is missing in the list of chain heads.</source>
        <translation>In der Liste der Kettenenden fehlt Zeile {0}.</translation>
    </message>
    <message>
        <source>Line {0} of the list of chain heads was changed after it was written.</source>
        <translation>Zeile {0} der Liste der Kettenenden wurde nach dem Schreiben geändert.</translation>
    </message>
    <message>
        <source>This entry and perhaps others before it were stored and are gone.</source>
        <translation>Dieser Eintrag und vielleicht andere davor waren gespeichert und sind weg.</translation>
    </message>
    <message>
        <source>This entry was not stored by this program: the list of chain heads does not know it.</source>
        <translation>Diesen Eintrag hat nicht dieses Programm gespeichert: die Liste der Kettenenden kennt ihn nicht.</translation>
    </message>
    <message>
        <source>This entry is not the one that was stored in its place.</source>
        <translation>Dieser Eintrag ist nicht der, der an seiner Stelle gespeichert wurde.</translation>
    </message>
    <message>
        <source>A table, index or trigger of the store was changed, added or taken away.</source>
        <translation>Eine Tabelle, ein Index oder ein Auslöser des Datenbestands wurde geändert, hinzugefügt oder entfernt.</translation>
    </message>
    <message>
        <source>The issue {0} was changed after it was stored.</source>
        <translation>Die Ausgabe {0} wurde nach dem Speichern geändert.</translation>
    </message>
    <message>
        <source>A personal text of this job is gone; erasing would have left its place.</source>
        <translation>Ein persönlicher Text dieses Auftrags ist weg; ein Löschen hätte seine Stelle gelassen.</translation>
    </message>
    <message>
        <source>A personal text of this job was changed after it was stored.</source>
        <translation>Ein persönlicher Text dieses Auftrags wurde nach dem Speichern geändert.</translation>
    </message>
    <message>
        <source>The photo {0} is gone from the folder of photos.</source>
        <translation>Das Foto {0} fehlt im Ordner der Fotos.</translation>
    </message>
    <message>
        <source>The photo {0} was changed after it was taken.</source>
        <translation>Das Foto {0} wurde nach der Aufnahme geändert.</translation>
    </message>
    <message>
        <source>The file itself is damaged: {0}.</source>
        <translation>Die Datei selbst ist beschädigt: {0}.</translation>
    </message>
    <message>
        <source>What is kept in table {0} is not what follows from the entries.</source>
        <translation>Was in Tabelle {0} steht, folgt nicht aus den Einträgen.</translation>
    </message>
    <message>
        <source>This job does not begin with its opening, or its sheets are not to be read.</source>
        <translation>Dieser Auftrag beginnt nicht mit seinem Öffnen, oder seine Blätter sind nicht lesbar.</translation>
    </message>
    <message>
        <source>This program was put together with two different versions of SQLite and does not open a store; install it again.</source>
        <translation>Dieses Programm ist mit zwei verschiedenen Versionen von SQLite gebaut und öffnet keinen Datenbestand; neu installieren.</translation>
    </message>
    <message>
        <source>The disk could not be read or written, so this was not saved; look after the disk and make a backup.</source>
        <translation>Die Platte ließ sich nicht lesen oder beschreiben, deshalb wurde dies nicht gespeichert; nach der Platte sehen und eine Sicherung anlegen.</translation>
    </message>
    <message>
        <source>Another program holds the store just now; try again in a moment.</source>
        <translation>Ein anderes Programm hält gerade den Datenbestand; gleich noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The store can only be looked at here; nothing was saved.</source>
        <translation>Der Datenbestand ist hier nur zum Ansehen; nichts wurde gespeichert.</translation>
    </message>
    <message>
        <source>This file is not a store of this program.</source>
        <translation>Diese Datei ist kein Datenbestand dieses Programms.</translation>
    </message>
    <message>
        <source>The store is damaged; keep it as it is and go on with the latest backup.</source>
        <translation>Der Datenbestand ist beschädigt; lassen, wie er ist, und mit der letzten Sicherung weitermachen.</translation>
    </message>
    <message>
        <source>The store could not be opened; look whether its folder is there and may be written to.</source>
        <translation>Der Datenbestand ließ sich nicht öffnen; nachsehen, ob sein Ordner da ist und beschrieben werden darf.</translation>
    </message>
    <message>
        <source>This does not fit what is stored already, so it was not saved: {0}.</source>
        <translation>Das passt nicht zu dem, was schon gespeichert ist, und wurde deshalb nicht gespeichert: {0}.</translation>
    </message>
    <message>
        <source>This is too large to be stored.</source>
        <translation>Das ist zu groß, um gespeichert zu werden.</translation>
    </message>
    <message>
        <source>The store refused this, and nothing was saved: {0}. Report this fault.</source>
        <translation>Der Datenbestand nahm dies nicht an, und nichts wurde gespeichert: {0}. Diesen Fehler melden.</translation>
    </message>
    <message>
        <source>This could not be made; look whether the folder is there and may be written to.</source>
        <translation>Das ließ sich nicht anlegen; nachsehen, ob der Ordner da ist und beschrieben werden darf.</translation>
    </message>
    <message>
        <source>This could not be brought to the disk; look after the disk and try again.</source>
        <translation>Das ließ sich nicht auf die Platte bringen; nach der Platte sehen und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>This job is not in the store.</source>
        <translation>Dieser Auftrag ist nicht im Datenbestand.</translation>
    </message>
    <message>
        <source>Another program writes in this store; close it there first, or open the store for looking.</source>
        <translation>Ein anderes Programm schreibt in diesen Datenbestand; zuerst dort schließen, oder den Datenbestand zum Ansehen öffnen.</translation>
    </message>
    <message>
        <source>The store could not be taken for writing; look whether its folder is there and may be written to.</source>
        <translation>Der Datenbestand ließ sich nicht zum Schreiben nehmen; nachsehen, ob sein Ordner da ist und beschrieben werden darf.</translation>
    </message>
    <message>
        <source>Somebody else writes in this store by now; look again who it is.</source>
        <translation>Inzwischen schreibt jemand anders in diesen Datenbestand; noch einmal nachsehen, wer es ist.</translation>
    </message>
    <message>
        <source>This file is not a store of this program; choose another.</source>
        <translation>Diese Datei ist kein Datenbestand dieses Programms; eine andere wählen.</translation>
    </message>
    <message>
        <source>The end of this store is missing; keep it as it is and go on with the latest backup.</source>
        <translation>Das Ende dieses Datenbestands fehlt; lassen, wie er ist, und mit der letzten Sicherung weitermachen.</translation>
    </message>
    <message>
        <source>The whole path of the store is needed, from the top folder on.</source>
        <translation>Der ganze Pfad des Datenbestands ist nötig, vom obersten Ordner an.</translation>
    </message>
    <message>
        <source>This cannot be read; look whether it is a file and may be read by you.</source>
        <translation>Das ist nicht lesbar; nachsehen, ob es eine Datei ist und gelesen werden darf.</translation>
    </message>
    <message>
        <source>This disk cannot keep a store so that it survives a power cut; put the store on another one.</source>
        <translation>Diese Platte kann einen Datenbestand nicht so halten, dass er einen Stromausfall übersteht; auf eine andere legen.</translation>
    </message>
    <message>
        <source>This photo cannot be read; choose it again.</source>
        <translation>Dieses Foto ist nicht lesbar; noch einmal wählen.</translation>
    </message>
    <message>
        <source>This photo is larger than 20 MB; take it at a lower resolution.</source>
        <translation>Dieses Foto ist größer als 20 MB; mit geringerer Auflösung aufnehmen.</translation>
    </message>
    <message>
        <source>This is neither a JPEG nor a PNG photo; choose one that is.</source>
        <translation>Das ist weder ein JPEG- noch ein PNG-Foto; eines davon wählen.</translation>
    </message>
    <message>
        <source>This personal text is not in the store.</source>
        <translation>Dieser persönliche Text ist nicht im Datenbestand.</translation>
    </message>
    <message>
        <source>This issue of a sheet is not in the store; add it first.</source>
        <translation>Diese Ausgabe eines Blatts ist nicht im Datenbestand; zuerst hinzufügen.</translation>
    </message>
    <message>
        <source>Issue {0} of {1} is in the store with other values; give the changed sheet the next issue number.</source>
        <translation>Ausgabe {0} von {1} ist im Datenbestand mit anderen Werten; dem geänderten Blatt die nächste Ausgabenummer geben.</translation>
    </message>
    <message>
        <source>The id of this is not a UUID; report this fault.</source>
        <translation>Die Kennung ist keine UUID; diesen Fehler melden.</translation>
    </message>
    <message>
        <source>A name is needed; enter one.</source>
        <translation>Ein Name ist nötig; eingeben.</translation>
    </message>
    <message>
        <source>A tray has at most {0} shims, this one has {1}; take some out.</source>
        <translation>Ein Sortiment hat höchstens {0} Passscheiben, dieses hat {1}; einige herausnehmen.</translation>
    </message>
    <message>
        <source>Two letters or digits at least are needed to search.</source>
        <translation>Zum Suchen sind mindestens zwei Buchstaben oder Ziffern nötig.</translation>
    </message>
    <message>
        <source>This store lies on a network share and can only be looked at; copy it to a disk of this machine to write in it.</source>
        <translation>Dieser Datenbestand liegt auf einer Netzwerkfreigabe und ist nur zum Ansehen; zum Schreiben auf eine Platte dieses Rechners kopieren.</translation>
    </message>
    <message>
        <source>This store was written by a newer program and can only be looked at; write in it with the newer program.</source>
        <translation>Dieser Datenbestand stammt von einem neueren Programm und ist nur zum Ansehen; mit dem neueren Programm schreiben.</translation>
    </message>
    <message>
        <source>There is no store at this place; choose another.</source>
        <translation>An dieser Stelle gibt es keinen Datenbestand; eine andere wählen.</translation>
    </message>
    <message>
        <source>“{0}” is not as it was last entered here; look at it and enter it anew.</source>
        <translation>„{0}“ ist nicht, wie es hier zuletzt eingegeben wurde; ansehen und neu eingeben.</translation>
    </message>
    <message>
        <source>{0} was entered here and is gone.</source>
        <translation>{0} war hier eingegeben und ist weg.</translation>
    </message>
    <message>
        <source>This job was sealed and its seal is gone.</source>
        <translation>Dieser Auftrag war versiegelt, und sein Siegel ist weg.</translation>
    </message>
    <message>
        <source>The seal of this job does not hold: {0} was changed after it was signed.</source>
        <translation>Das Siegel dieses Auftrags hält nicht: {0} wurde nach der Unterschrift geändert.</translation>
    </message>
    <message>
        <source>What the store held when this job was sealed is gone or changed.</source>
        <translation>Was der Datenbestand enthielt, als dieser Auftrag versiegelt wurde, ist weg oder geändert.</translation>
    </message>
    <message>
        <source>The signed file cannot be written here: look at the folder and its space.</source>
        <translation>Die unterschriebene Datei lässt sich hier nicht schreiben: Ordner und Platz prüfen.</translation>
    </message>
    <message>
        <source>This record cannot be shown as it was sealed: it was changed, or sealed by another version of the program; see what “verify” says.</source>
        <translation>Dieses Protokoll lässt sich nicht zeigen, wie es versiegelt wurde: es wurde geändert oder von einer anderen Version des Programms versiegelt; nachsehen, was „verify“ sagt.</translation>
    </message>
    <message>
        <source>Entries of this sealed job are gone: run the check of the store.</source>
        <translation>Einträge dieses versiegelten Auftrags sind weg: den Datenbestand prüfen lassen.</translation>
    </message>
    <message>
        <source>This is erased, but its bytes stay in the log while another program reads the store; close that and erase once more.</source>
        <translation>Das ist gelöscht, aber seine Bytes bleiben im Journal, solange ein anderes Programm den Datenbestand liest; dieses schließen und noch einmal löschen.</translation>
    </message>
    <message>
        <source>There is no job of this vehicle in the store; look at its number again.</source>
        <translation>Im Datenbestand gibt es keinen Auftrag dieses Fahrzeugs; seine Nummer noch einmal ansehen.</translation>
    </message>
    <message>
        <source>This job is whole, but something the store held before it is gone or changed.</source>
        <translation>Dieser Auftrag ist heil, aber etwas, was der Datenbestand davor enthielt, ist weg oder geändert.</translation>
    </message>
    <message>
        <source>The seal of this job was changed in the store: take the signed file from the backup folder.</source>
        <translation>Das Siegel dieses Auftrags wurde im Datenbestand geändert: die unterschriebene Datei aus dem Sicherungsordner nehmen.</translation>
    </message>
    <message>
        <source>This job is not sealed: seal it first.</source>
        <translation>Dieser Auftrag ist nicht versiegelt: zuerst versiegeln.</translation>
    </message>
    <message>
        <source>This person has no PIN yet: set one, then sign.</source>
        <translation>Diese Person hat noch keine PIN: eine setzen, dann unterschreiben.</translation>
    </message>
    <message>
        <source>This person is not in the workshop&apos;s list: enter them first.</source>
        <translation>Diese Person steht nicht in der Liste der Werkstatt: zuerst eintragen.</translation>
    </message>
    <message>
        <source>This person has a PIN: change it with the old one, or say it is forgotten.</source>
        <translation>Diese Person hat eine PIN: mit der alten ändern, oder angeben, dass sie vergessen ist.</translation>
    </message>
    <message>
        <source>“{0}” is no date: write year-month-day, as in 2026-11-30.</source>
        <translation>„{0}“ ist kein Datum: Jahr-Monat-Tag schreiben, wie 2026-11-30.</translation>
    </message>
    <message>
        <source>This key is none of the workshop&apos;s: look at its list.</source>
        <translation>Dieser Schlüssel ist keiner der Werkstatt: in ihrer Liste nachsehen.</translation>
    </message>
    <message>
        <source>The key of this person is no longer valid: set a new PIN, then sign.</source>
        <translation>Der Schlüssel dieser Person ist nicht mehr gültig: eine neue PIN setzen, dann unterschreiben.</translation>
    </message>
    <message>
        <source>That the issue {0} was checked was not entered with this program.</source>
        <translation>Dass die Ausgabe {0} geprüft wurde, ist nicht mit diesem Programm eingetragen worden.</translation>
    </message>
    <message>
        <source>The check {0} of a sheet was entered and is gone.</source>
        <translation>Die Prüfung {0} eines Blatts war eingetragen und ist weg.</translation>
    </message>
    <message>
        <source>What the job sheet {0} lost is not as it was entered.</source>
        <translation>Was der Arbeitsplan {0} verlor, ist nicht, wie es eingetragen wurde.</translation>
    </message>
    <message>
        <source>This job does not begin with its opening: run the check of the store.</source>
        <translation>Dieser Auftrag beginnt nicht mit seinem Öffnen: den Datenbestand prüfen lassen.</translation>
    </message>
    <message>
        <source>{0} is a demonstration sheet and its issues stay so; enter a sheet with real values under another name.</source>
        <translation>{0} ist ein Demonstrationsblatt, und seine Ausgaben bleiben es; ein Blatt mit echten Werten unter anderem Namen eingeben.</translation>
    </message>
    <message>
        <source>{0}, issue {1}, was not checked yet; let a second person check it under Workshop before it is used on a job.</source>
        <translation>{0}, Ausgabe {1}, ist noch nicht geprüft; unter Werkstatt von einer zweiten Person prüfen lassen, bevor ein Auftrag danach geht.</translation>
    </message>
    <message>
        <source>This cannot be so small: look at it and enter it again.</source>
        <translation>Das kann nicht so klein sein: ansehen und neu eingeben.</translation>
    </message>
    <message>
        <source>{0} lies in this tray already; give the other one another mark.</source>
        <translation>{0} liegt schon in diesem Sortiment; der anderen ein anderes Zeichen geben.</translation>
    </message>
    <message>
        <source>A logo is a PNG or JPEG picture of at most 500 kB; choose another.</source>
        <translation>Ein Logo ist ein PNG- oder JPEG-Bild von höchstens 500 kB; ein anderes wählen.</translation>
    </message>
    <message>
        <source>Somebody else here has the initials {0}; take others.</source>
        <translation>Jemand anders hier hat das Kürzel {0}; ein anderes nehmen.</translation>
    </message>
    <message>
        <source>Initials are needed; enter them.</source>
        <translation>Ein Kürzel ist nötig; eingeben.</translation>
    </message>
    <message>
        <source>This draft is not in the store: it became an issue or was thrown away.</source>
        <translation>Dieser Entwurf ist nicht im Datenbestand: er wurde eine Ausgabe oder verworfen.</translation>
    </message>
    <message>
        <source>This photo of the job is gone or changed, so the job file would not be whole; run the check of the store.</source>
        <translation>Dieses Foto des Auftrags fehlt oder ist verändert, die Auftragsdatei wäre also nicht ganz; die Prüfung des Datenbestands laufen lassen.</translation>
    </message>
    <message>
        <source>Something other than an older file of this job lies there and is not written over; choose another name.</source>
        <translation>Dort liegt etwas anderes als eine ältere Datei dieses Auftrags und wird nicht überschrieben; einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>The export was stopped; no file was left.</source>
        <translation>Das Schreiben wurde angehalten; es blieb keine Datei.</translation>
    </message>
    <message>
        <source>The import was stopped; the store is as it was.</source>
        <translation>Die Aufnahme wurde angehalten; der Datenbestand ist, wie er war.</translation>
    </message>
    <message>
        <source>From entry {0} on this job went another way here than in the file, so it stays as it is; what the file has more can be noted by hand.</source>
        <translation>Ab Eintrag {0} ging dieser Auftrag hier anders weiter als in der Datei, er bleibt also, wie er ist; was die Datei mehr hat, lässt sich von Hand notieren.</translation>
    </message>
    <message>
        <source>“{0}” of the file is “{1}” here; the name here stays.</source>
        <translation>„{0}“ der Datei heißt hier „{1}“; der Name hier bleibt.</translation>
    </message>
    <message>
        <source>This job file does not hold together here, so nothing was taken from it: have it exported anew.</source>
        <translation>Diese Auftragsdatei passt hier nicht zusammen, darum wurde nichts daraus genommen: sie neu schreiben lassen.</translation>
    </message>
    <message>
        <source>Another job here has the number {0} as well: tell the two apart by vehicle and date.</source>
        <translation>Ein anderer Auftrag hier hat auch die Nummer {0}: die beiden nach Fahrzeug und Datum unterscheiden.</translation>
    </message>
    <message>
        <source>This is no job file of this program, or its beginning was changed.</source>
        <translation>Das ist keine Auftragsdatei dieses Programms, oder ihr Anfang wurde verändert.</translation>
    </message>
    <message>
        <source>This job file is not as it was written, its end may be missing: have it exported anew.</source>
        <translation>Diese Auftragsdatei ist nicht, wie sie geschrieben wurde, ihr Ende kann fehlen: sie neu schreiben lassen.</translation>
    </message>
    <message>
        <source>This stands twice in the job file; have it exported anew.</source>
        <translation>Das steht zweimal in der Auftragsdatei; sie neu schreiben lassen.</translation>
    </message>
    <message>
        <source>A text in quotation marks has to stand here.</source>
        <translation>Hier muss ein Text in Anführungszeichen stehen.</translation>
    </message>
    <message>
        <source>This job file was written by a newer program: take it in with that.</source>
        <translation>Diese Auftragsdatei stammt von einem neueren Programm: sie mit diesem aufnehmen.</translation>
    </message>
    <message>
        <source>This file cannot be read: look whether it is there and may be read.</source>
        <translation>Diese Datei ist nicht lesbar: nachsehen, ob sie da ist und gelesen werden darf.</translation>
    </message>
    <message>
        <source>This job file is larger than any of this program; have it looked at.</source>
        <translation>Diese Auftragsdatei ist größer als jede dieses Programms; sie ansehen lassen.</translation>
    </message>
    <message>
        <source>The copy of the backup does not hold the same entries as the backup, so it is not used; look after the disk.</source>
        <translation>Die Kopie der Sicherung hat nicht dieselben Einträge wie die Sicherung und wird darum nicht verwendet; nach der Platte sehen.</translation>
    </message>
    <message>
        <source>What is there could not be kept beside its place, so nothing was changed; look after the disk.</source>
        <translation>Was da ist, ließ sich nicht daneben aufheben, darum wurde nichts geändert; nach der Platte sehen.</translation>
    </message>
    <message>
        <source>This is a backup of another store, and there are jobs in this one: take single jobs in by their files, or begin a new store for the backup.</source>
        <translation>Das ist die Sicherung eines anderen Datenbestands, und in diesem sind Aufträge: einzelne Aufträge aus ihren Dateien aufnehmen, oder für die Sicherung einen neuen Datenbestand beginnen.</translation>
    </message>
    <message>
        <source>This is the store itself: choose a backup of it.</source>
        <translation>Das ist der Datenbestand selbst: eine Sicherung davon wählen.</translation>
    </message>
    <message>
        <source>This backup was written by a newer program: restore it with that.</source>
        <translation>Diese Sicherung stammt von einem neueren Programm: mit diesem darauf zurückgehen.</translation>
    </message>
    <message>
        <source>This job is whole and signed with keys known here; it was sealed in another store, and what that one held besides is not shown here.</source>
        <translation>Dieser Auftrag ist heil und mit hier bekannten Schlüsseln unterschrieben; er wurde in einem anderen Datenbestand versiegelt, und was jener sonst enthielt, ist hier nicht zu sehen.</translation>
    </message>
    <message>
        <source>Stopped: the figures were not read to their end.</source>
        <translation>Angehalten: die Zahlen wurden nicht zu Ende gelesen.</translation>
    </message>
    <message>
        <source>Something other than an older export of measurements lies there and is not written over; choose another name.</source>
        <translation>Dort liegt etwas anderes als ein älterer Export von Messwerten, und es wird nicht überschrieben; einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>“{0}” in this store is not as this program makes it, so it is not opened; keep it as it is and go on with the latest backup.</source>
        <translation>„{0}“ ist in diesem Datenbestand nicht so, wie dieses Programm es anlegt, darum wird er nicht geöffnet; lassen, wie er ist, und mit der letzten Sicherung weitermachen.</translation>
    </message>
    <message>
        <source>Another backup is being made in this folder just now; begin this one when it is done.</source>
        <translation>In diesem Ordner entsteht gerade eine andere Sicherung; diese beginnen, wenn jene fertig ist.</translation>
    </message>
    <message>
        <source>The copy is not as it should be and was thrown away; run the check of the store.</source>
        <translation>Die Kopie ist nicht, wie sie sein soll, und wurde verworfen; den Datenbestand prüfen lassen.</translation>
    </message>
    <message>
        <source>This was stopped before its end; nothing was changed.</source>
        <translation>Dies wurde vor seinem Ende angehalten; nichts wurde verändert.</translation>
    </message>
    <message>
        <source>The disk is full, so this was not saved; free some space and try again.</source>
        <translation>Die Platte ist voll, deshalb wurde dies nicht gespeichert; Platz schaffen und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>This job is not as it was written, so it is not handed on; run the check of the store.</source>
        <translation>Dieser Auftrag ist nicht, wie er geschrieben wurde, und wird darum nicht weitergegeben; den Datenbestand prüfen lassen.</translation>
    </message>
    <message>
        <source>This cannot be so large: look at it and enter it again.</source>
        <translation>So groß kann das nicht sein: nachsehen und neu eingeben.</translation>
    </message>
    <message>
        <source>Nothing is measured without uncertainty: enter the one of {0}, or readings with a micrometer.</source>
        <translation>Ohne Unsicherheit ist nichts gemessen: die von {0} eingeben, oder Messwerte mit einer Messschraube.</translation>
    </message>
    <message>
        <source>{0} and {1} measure alike: keep one of them here, with the count of both.</source>
        <translation>{0} und {1} sind gleich dick: hier eine davon behalten, mit der Anzahl beider.</translation>
    </message>
    <message>
        <source>{0} is the last person at work here: enter another one first.</source>
        <translation>{0} arbeitet hier als Letzte oder Letzter: zuerst jemand anderen eingeben.</translation>
    </message>
    <message>
        <source>Every instrument has a smallest step that it shows: enter that of {0}.</source>
        <translation>Jedes Messmittel hat einen kleinsten Schritt, den es anzeigt: den von {0} eingeben.</translation>
    </message>
    <message>
        <source>This backup is not whole, so it takes no place; choose an earlier one.</source>
        <translation>Diese Sicherung ist nicht heil und nimmt darum keinen Platz ein; eine frühere wählen.</translation>
    </message>
    <message>
        <source>This backup is empty, so it takes no place; choose another.</source>
        <translation>Diese Sicherung ist leer und nimmt darum keinen Platz ein; eine andere wählen.</translation>
    </message>
    <message>
        <source>The tables of this backup are not those of this program, so it takes no place; choose another.</source>
        <translation>Die Tabellen dieser Sicherung sind nicht die dieses Programms, sie nimmt darum keinen Platz ein; eine andere wählen.</translation>
    </message>
    <message>
        <source>The store could not be brought to version {0} and stays as it was; see that its disk has room and may be written to, then open it again.</source>
        <translation>Der Datenbestand ließ sich nicht auf Version {0} bringen und bleibt, wie er war; dafür sorgen, dass auf seiner Platte Platz ist und geschrieben werden darf, dann wieder öffnen.</translation>
    </message>
    <message>
        <source>This file cannot be read; choose it again.</source>
        <translation>Diese Datei ist nicht lesbar; noch einmal wählen.</translation>
    </message>
    <message>
        <source>This file is larger than 64 MiB: it is no signed record.</source>
        <translation>Diese Datei ist größer als 64 MiB: sie ist kein unterschriebenes Protokoll.</translation>
    </message>
    <message>
        <source>This is longer than a register keeps: say it in fewer words.</source>
        <translation>Das ist länger, als ein Verzeichnis aufbewahrt: bitte kürzer fassen.</translation>
    </message>
    <message>
        <source>This file is whole, but this store has other entries of the job, or fewer: run the check of the store.</source>
        <translation>Diese Datei ist heil, aber dieser Datenbestand hat andere Einträge des Auftrags, oder weniger: den Datenbestand prüfen.</translation>
    </message>
    <message>
        <source>This file is whole, but what was added to the job later is not in it: take the newer file, or open the record here.</source>
        <translation>Diese Datei ist heil, aber was später nachgetragen wurde, ist nicht darin: die neuere Datei nehmen oder das Protokoll hier öffnen.</translation>
    </message>
    <message>
        <source>What was sealed is whole, but something that came after it is gone or changed: look for a newer signed file in the backup folder.</source>
        <translation>Was versiegelt wurde, ist heil, aber etwas, das danach kam, fehlt oder wurde geändert: im Ordner der Sicherungen nach einer neueren unterschriebenen Datei sehen.</translation>
    </message>
    <message>
        <source>This key ends on {0} already, and an end is not put off: give an earlier day.</source>
        <translation>Dieser Schlüssel endet schon am {0}, und ein Ende wird nicht verschoben: einen früheren Tag angeben.</translation>
    </message>
    <message>
        <source>This was stopped; what was there before is there still.</source>
        <translation>Das wurde angehalten; was vorher da war, ist noch da.</translation>
    </message>
    <message>
        <source>Photos that are gone from this backup: {0}.</source>
        <translation>Fotos, die in dieser Sicherung fehlen: {0}.</translation>
    </message>
    <message>
        <source>The photos of this backup were left behind: bring its folder photos too, beside the backup.</source>
        <translation>Die Fotos dieser Sicherung sind zurückgeblieben: auch ihren Ordner photos mitbringen, neben die Sicherung.</translation>
    </message>
    <message>
        <source>Stopped: the jobs were not read to their end.</source>
        <translation>Angehalten: die Aufträge wurden nicht zu Ende gelesen.</translation>
    </message>
    <message>
        <source>{0} has had this store open on the computer {1} since {2}; close it there first, or open the store for looking.</source>
        <translation>{0} hat diesen Datenbestand auf dem Rechner {1} seit {2} offen; zuerst dort schließen, oder den Datenbestand zum Ansehen öffnen.</translation>
    </message>
    <message>
        <source>The backup {0} is whole; its last entry is of {1}. Jobs: {2}, entries: {3}. What was entered after that cannot be read from the damaged store any more.</source>
        <translation>Die Sicherung {0} ist heil; ihr letzter Eintrag ist von {1}. Aufträge: {2}, Einträge: {3}. Was danach eingetragen wurde, lässt sich im beschädigten Datenbestand nicht mehr lesen.</translation>
    </message>
    <message>
        <source>The backup {0} is whole; its last entry is of {1}. Jobs: {2}, entries: {3}. Entered after it, and then missing: {4} entries, in jobs: {5}.</source>
        <translation>Die Sicherung {0} ist heil; ihr letzter Eintrag ist von {1}. Aufträge: {2}, Einträge: {3}. Danach eingetragen und dann weg: {4} Einträge, in Aufträgen: {5}.</translation>
    </message>
    <message>
        <source>The backup {0} is whole; its last entry is of {1}. Jobs: {2}, entries: {3}. Nothing here was entered after it.</source>
        <translation>Die Sicherung {0} ist heil; ihr letzter Eintrag ist von {1}. Aufträge: {2}, Einträge: {3}. Hier wurde danach nichts eingetragen.</translation>
    </message>
    <message>
        <source>The backup {0} is whole; its last entry is of {1}. Jobs: {2}, entries: {3}. Entered after it: {4} entries, in jobs: {5}; they will only be in the file that is kept.</source>
        <translation>Die Sicherung {0} ist heil; ihr letzter Eintrag ist von {1}. Aufträge: {2}, Einträge: {3}. Danach eingetragen: {4} Einträge, in Aufträgen: {5}; sie sind dann nur in der Datei, die aufgehoben wird.</translation>
    </message>
    <message>
        <source>This photo is damaged, so the place where it was taken cannot be told from the rest and left out; choose another one or take it again.</source>
        <translation>Dieses Foto ist beschädigt, deshalb lässt sich der Ort der Aufnahme nicht vom Rest trennen und weglassen; wählen Sie ein anderes oder nehmen Sie es neu auf.</translation>
    </message>
</context>
<context>
    <name>vehicle</name>
    <message>
        <source>No chassis number is entered yet; type it.</source>
        <translation>Noch ist keine Fahrgestellnummer eingegeben; eingeben.</translation>
    </message>
    <message>
        <source>A chassis number has at most {0} characters; type only the number.</source>
        <translation>Eine Fahrgestellnummer hat höchstens {0} Zeichen; nur die Nummer eingeben.</translation>
    </message>
    <message>
        <source>The chassis number holds characters that cannot be printed; type it anew.</source>
        <translation>Die Fahrgestellnummer enthält Zeichen, die sich nicht drucken lassen; neu eingeben.</translation>
    </message>
    <message>
        <source>A number that is no full VIN needs a reason; say why.</source>
        <translation>Eine Nummer, die keine volle FIN ist, braucht einen Grund; angeben, warum.</translation>
    </message>
    <message>
        <source>The check digit does not fit, as on many vehicles whose maker does not use it; compare the number with the vehicle once more.</source>
        <translation>Die Prüfziffer passt nicht, wie bei vielen Fahrzeugen, deren Hersteller keine verwendet; die Nummer noch einmal mit dem Fahrzeug vergleichen.</translation>
    </message>
    <message>
        <source>A VIN has 17 characters and this one has {0}; compare it with the vehicle, or file it as a chassis number with a reason.</source>
        <translation>Eine FIN hat 17 Zeichen, diese hat {0}; mit dem Fahrzeug vergleichen, oder mit Grund als Fahrgestellnummer ablegen.</translation>
    </message>
    <message>
        <source>A VIN has only the digits and the letters A to Z without I, O and Q; is {0} meant?</source>
        <translation>Eine FIN hat nur Ziffern und die Buchstaben A bis Z ohne I, O und Q; ist {0} gemeint?</translation>
    </message>
    <message>
        <source>A VIN has only the digits and the letters A to Z without I, O and Q; compare it with the vehicle.</source>
        <translation>Eine FIN hat nur Ziffern und die Buchstaben A bis Z ohne I, O und Q; mit dem Fahrzeug vergleichen.</translation>
    </message>
    <message>
        <source>One character 17 times is no VIN; read the number from the vehicle.</source>
        <translation>17-mal dasselbe Zeichen ist keine FIN; die Nummer am Fahrzeug ablesen.</translation>
    </message>
</context>
<context>
    <name>widgets</name>
    <message>
        <source>d MMM yyyy, hh:mm</source>
        <translation>d. MMM yyyy, hh:mm</translation>
    </message>
</context>
<context>
    <name>word</name>
    <message>
        <source>large bearing</source>
        <translation>großes Lager</translation>
    </message>
    <message>
        <source>small bearing</source>
        <translation>kleines Lager</translation>
    </message>
    <message>
        <source>dial gauge</source>
        <translation>Messuhr</translation>
    </message>
    <message>
        <source>depth gauge</source>
        <translation>Tiefenmaß</translation>
    </message>
    <message>
        <source>micrometer</source>
        <translation>Messschraube</translation>
    </message>
    <message>
        <source>torque wrench</source>
        <translation>Drehmomentschlüssel</translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation>Thermometer</translation>
    </message>
    <message>
        <source>multimeter</source>
        <translation>Multimeter</translation>
    </message>
    <message>
        <source>pressure gauge</source>
        <translation>Manometer</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>Waage</translation>
    </message>
    <message>
        <source>“done”</source>
        <translation>„erledigt“</translation>
    </message>
    <message>
        <source>“in order” or a finding</source>
        <translation>„in Ordnung“ oder ein Befund</translation>
    </message>
    <message>
        <source>one of its choices</source>
        <translation>eine der Auswahlen</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>the highest reading</source>
        <translation>der höchste Messwert</translation>
    </message>
    <message>
        <source>the parts fitted</source>
        <translation>die eingebauten Teile</translation>
    </message>
    <message>
        <source>photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>words</source>
        <translation>Worte</translation>
    </message>
    <message>
        <source>trials with the gauge</source>
        <translation>Proben mit der Lehre</translation>
    </message>
    <message>
        <source>depths</source>
        <translation>Tiefen</translation>
    </message>
    <message>
        <source>lifts at its spots</source>
        <translation>Hübe an den Messpunkten</translation>
    </message>
    <message>
        <source>a teach-in</source>
        <translation>ein Anlernen</translation>
    </message>
    <message>
        <source>a signature</source>
        <translation>eine Unterschrift</translation>
    </message>
    <message>
        <source>gauge trials</source>
        <translation>Proben mit der Lehre</translation>
    </message>
    <message>
        <source>lower disc</source>
        <translation>untere Scheibe</translation>
    </message>
    <message>
        <source>upper disc</source>
        <translation>obere Scheibe</translation>
    </message>
</context>
<context>
    <name>workshop</name>
    <message>
        <source>Marked</source>
        <translation>Gezeichnet</translation>
    </message>
    <message>
        <source>Standard uncertainty, mm</source>
        <translation>Standardunsicherheit, mm</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>nicht gezählt</translation>
    </message>
    <message>
        <source>%1, issue %2</source>
        <translation>%1, Ausgabe %2</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Lower, large bearing</source>
        <translation>Unten, großes Lager</translation>
    </message>
    <message>
        <source>Upper, small bearing</source>
        <translation>Oben, kleines Lager</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Limits of readings</source>
        <translation>Grenzen der Messwerte</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>Values to work to</source>
        <translation>Werte, nach denen gearbeitet wird</translation>
    </message>
    <message>
        <source>Work to</source>
        <translation>Arbeiten nach</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Renewed</source>
        <translation>Erneuert</translation>
    </message>
    <message>
        <source>at every assembly</source>
        <translation>bei jeder Montage</translation>
    </message>
    <message>
        <source>once</source>
        <translation>einmal</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>Shim found by</source>
        <translation>Passscheibe gefunden durch</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>gauge fit</source>
        <translation>Lehre</translation>
    </message>
    <message>
        <source>Tray</source>
        <translation>Sortiment</translation>
    </message>
    <message>
        <source>%1, %2 sizes</source>
        <translation>%1, %2 Maße</translation>
    </message>
    <message>
        <source>Snug band</source>
        <translation>Bereich saugend</translation>
    </message>
    <message>
        <source>Feel, standard uncertainty</source>
        <translation>Gefühl, Standardunsicherheit</translation>
    </message>
    <message>
        <source>Order of the trials</source>
        <translation>Reihenfolge der Proben</translation>
    </message>
    <message>
        <source>thick to thin</source>
        <translation>dick nach dünn</translation>
    </message>
    <message>
        <source>fewest trials</source>
        <translation>möglichst wenige</translation>
    </message>
    <message>
        <source>Seat expected, mean and standard deviation</source>
        <translation>Erwarteter Sitz, Mittel und Standardabweichung</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Opposite places measured</source>
        <translation>Gemessene gegenüberliegende Stellen</translation>
    </message>
    <message>
        <source>Constants added</source>
        <translation>Addierte Konstanten</translation>
    </message>
    <message>
        <source>Stamp on the new pack used</source>
        <translation>Prägung am neuen Paket verwendet</translation>
    </message>
    <message>
        <source>Largest spread over the places</source>
        <translation>Größte Streuung über die Stellen</translation>
    </message>
    <message>
        <source>Depth reading, standard uncertainty</source>
        <translation>Tiefenmessung, Standardunsicherheit</translation>
    </message>
    <message>
        <source>Shim table</source>
        <translation>Passscheibentabelle</translation>
    </message>
    <message>
        <source>%1 ranges</source>
        <translation>%1 Bereiche</translation>
    </message>
    <message>
        <source>Float limits</source>
        <translation>Grenzen des Lüftspiels</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Float aimed at</source>
        <translation>Angestrebtes Lüftspiel</translation>
    </message>
    <message>
        <source>Largest spread over the spots</source>
        <translation>Größte Streuung über die Messpunkte</translation>
    </message>
    <message>
        <source>Spots, at angles of</source>
        <translation>Messpunkte, bei Winkeln von</translation>
    </message>
    <message>
        <source>Runs at each spot, at least</source>
        <translation>Durchgänge je Messpunkt, mindestens</translation>
    </message>
    <message>
        <source>Repeatability, standard uncertainty</source>
        <translation>Wiederholbarkeit, Standardunsicherheit</translation>
    </message>
    <message>
        <source>Guard factor</source>
        <translation>Schutzfaktor</translation>
    </message>
    <message>
        <source>Float lost per mm of shim, and its standard deviation</source>
        <translation>Lüftspielverlust je mm Passscheibe, mit Standardabweichung</translation>
    </message>
    <message>
        <source>Float of other jobs, standard uncertainty</source>
        <translation>Lüftspiel anderer Aufträge, Standardunsicherheit</translation>
    </message>
    <message>
        <source>Float as found can be measured</source>
        <translation>Lüftspiel wie vorgefunden messbar</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>Save the blank sheet as PDF</source>
        <translation>Leeres Blatt als PDF speichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Instruction</source>
        <translation>Anweisung</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>Hold point</source>
        <translation>Haltepunkt</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Achtung</translation>
    </message>
    <message>
        <source>hold point</source>
        <translation>Haltepunkt</translation>
    </message>
    <message>
        <source>Taken away against the issue before</source>
        <translation>Weggenommen gegenüber der Ausgabe davor</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Achtung: %1</translation>
    </message>
    <message>
        <source>Hold point: %1</source>
        <translation>Haltepunkt: %1</translation>
    </message>
    <message>
        <source>nobody named</source>
        <translation>niemand genannt</translation>
    </message>
    <message>
        <source>somebody not in the list</source>
        <translation>jemand, der nicht in der Liste steht</translation>
    </message>
    <message>
        <source>New sheet, without a name yet</source>
        <translation>Neues Blatt, noch ohne Namen</translation>
    </message>
    <message>
        <source>No job uses it yet.</source>
        <translation>Noch nutzt es kein Auftrag.</translation>
    </message>
    <message>
        <source>Used by 1 job, which is closed.</source>
        <translation>Genutzt von 1 Auftrag, abgeschlossen.</translation>
    </message>
    <message>
        <source>Used by 1 job, which is open.</source>
        <translation>Genutzt von 1 Auftrag, offen.</translation>
    </message>
    <message>
        <source>Used by %1 jobs, none of them open.</source>
        <translation>Genutzt von %1 Aufträgen, keiner davon offen.</translation>
    </message>
    <message>
        <source>Used by %1 jobs, %2 of them open.</source>
        <translation>Genutzt von %1 Aufträgen, davon %2 offen.</translation>
    </message>
    <message>
        <source>Came with the program</source>
        <translation>Kam mit dem Programm</translation>
    </message>
    <message>
        <source>Entered by %1</source>
        <translation>Eingegeben von %1</translation>
    </message>
    <message>
        <source>%1. A demonstration sheet needs no check, and jobs on it carry its mark.</source>
        <translation>%1. Ein Demonstrationsblatt braucht keine Prüfung, und Aufträge danach tragen sein Zeichen.</translation>
    </message>
    <message>
        <source>%1. Not checked yet: no job can be opened on it.</source>
        <translation>%1. Noch nicht geprüft: kein Auftrag lässt sich danach öffnen.</translation>
    </message>
    <message>
        <source>checked by %1 on %2</source>
        <translation>geprüft von %1 am %2</translation>
    </message>
    <message>
        <source>%1 (the same person, on a later day)</source>
        <translation>%1 (dieselbe Person, an einem späteren Tag)</translation>
    </message>
    <message>
        <source>%1, %2.</source>
        <translation>%1, %2.</translation>
    </message>
    <message>
        <source>Begun by %1, kept at each field.</source>
        <translation>Begonnen von %1, bei jedem Feld gespeichert.</translation>
    </message>
    <message>
        <source>%1 Everything is filled in.</source>
        <translation>%1 Alles ist ausgefüllt.</translation>
    </message>
    <message>
        <source>%1 One value is still to be filled in or put right.</source>
        <translation>%1 Ein Wert ist noch auszufüllen oder zu berichtigen.</translation>
    </message>
    <message>
        <source>%1 %2 values are still to be filled in or put right.</source>
        <translation>%1 %2 Werte sind noch auszufüllen oder zu berichtigen.</translation>
    </message>
    <message>
        <source>Sizes of the tray “%1”, %2</source>
        <translation>Maße des Sortiments „%1“, %2</translation>
    </message>
    <message>
        <source>Thickness, mm</source>
        <translation>Dicke, mm</translation>
    </message>
    <message>
        <source>large bearing</source>
        <translation>großes Lager</translation>
    </message>
    <message>
        <source>small bearing</source>
        <translation>kleines Lager</translation>
    </message>
    <message>
        <source>%1 in the tray</source>
        <translation>%1 im Sortiment</translation>
    </message>
    <message>
        <source>%1 left of %2 counted %3</source>
        <translation>%1 übrig von %2, gezählt %3</translation>
    </message>
    <message>
        <source>measured %1 ± %2 %3 (95 %)</source>
        <translation>gemessen %1 ± %2 %3 (95&#xa0;%)</translation>
    </message>
    <message>
        <source>by %1 readings</source>
        <translation>aus %1 Messwerten</translation>
    </message>
    <message>
        <source>order now: %1 or fewer</source>
        <translation>jetzt bestellen: %1 oder weniger</translation>
    </message>
    <message>
        <source>order at %1</source>
        <translation>bestellen bei %1</translation>
    </message>
    <message>
        <source>open jobs may want %1</source>
        <translation>offene Aufträge brauchen vielleicht %1</translation>
    </message>
    <message>
        <source>No open job has its shim from here still to come.</source>
        <translation>Kein offener Auftrag erwartet noch eine Passscheibe von hier.</translation>
    </message>
    <message>
        <source>Choose the file of a sheet</source>
        <translation>Datei eines Blatts wählen</translation>
    </message>
    <message>
        <source>Sheets (*.json)</source>
        <translation>Blätter (*.json)</translation>
    </message>
    <message>
        <source>Save the sheet as a file</source>
        <translation>Blatt als Datei speichern</translation>
    </message>
    <message>
        <source>Choose the backup</source>
        <translation>Die Sicherung wählen</translation>
    </message>
    <message>
        <source>Choose the file of the job</source>
        <translation>Die Datei des Auftrags wählen</translation>
    </message>
    <message>
        <source>Files of jobs (*.jsonl);;All files (*)</source>
        <translation>Auftragsdateien (*.jsonl);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Choose the folder for the file of the job</source>
        <translation>Den Ordner für die Auftragsdatei wählen</translation>
    </message>
    <message>
        <source>Choose the folder for backups</source>
        <translation>Den Ordner für Sicherungen wählen</translation>
    </message>
    <message>
        <source>Save the measurements</source>
        <translation>Messwerte speichern</translation>
    </message>
    <message>
        <source>Measurements (*.csv *.json)</source>
        <translation>Messwerte (*.csv *.json)</translation>
    </message>
    <message>
        <source>1 job</source>
        <translation>1 Auftrag</translation>
    </message>
    <message>
        <source>%1 jobs</source>
        <translation>%1 Aufträge</translation>
    </message>
    <message>
        <source>Open jobs that still take a shim from here: %1.</source>
        <translation>Offene Aufträge, die noch eine Passscheibe von hier nehmen: %1.</translation>
    </message>
    <message>
        <source>Jobs with no hint yet at its size: %1.</source>
        <translation>Aufträge noch ohne Anhalt für ihr Maß: %1.</translation>
    </message>
</context>
</TS>
