<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>DataSection</name>
    <message>
        <source>To another laptop, in three steps</source>
        <translation>Vers un autre ordinateur, en trois étapes</translation>
    </message>
    <message>
        <source>1  Here: choose a folder on a stick as the folder for backups, and back up now. The folder photos beside the backup belongs to it.</source>
        <translation>1  Ici&#xa0;: choisir un dossier sur une clé comme dossier des sauvegardes, et sauvegarder maintenant. Le dossier photos à côté de la sauvegarde en fait partie.</translation>
    </message>
    <message>
        <source>2  There: install Shimwright, start it, and begin your own workshop. What you enter is replaced by what comes.</source>
        <translation>2  Là-bas&#xa0;: installer Shimwright, le démarrer et commencer un atelier. Ce qui y est saisi sera remplacé par ce qui arrive.</translation>
    </message>
    <message>
        <source>3  There, on this page: look at the backup on the stick and go back to it. From then on enter nothing here any more.</source>
        <translation>3  Là-bas, sur cette page&#xa0;: regarder la sauvegarde de la clé et y revenir. À partir de là, ne plus rien saisir ici.</translation>
    </message>
</context>
<context>
    <name>QLabel</name>
    <message>
        <source>demonstration values</source>
        <translation>valeurs de démonstration</translation>
    </message>
</context>
<context>
    <name>bench</name>
    <message>
        <source>chassis %1</source>
        <translation>châssis %1</translation>
    </message>
    <message>
        <source>VIN ends %1</source>
        <translation>VIN finissant par %1</translation>
    </message>
    <message>
        <source>Choose a photo</source>
        <translation>Choisir une photo</translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png)</source>
        <translation>Photos (*.jpg *.jpeg *.png)</translation>
    </message>
    <message>
        <source>within</source>
        <translation>dans les limites</translation>
    </message>
    <message>
        <source>too small</source>
        <translation>trop petit</translation>
    </message>
    <message>
        <source>too large</source>
        <translation>trop grand</translation>
    </message>
    <message>
        <source>on limit</source>
        <translation>à la limite</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>mixte</translation>
    </message>
    <message>
        <source>to do</source>
        <translation>à faire</translation>
    </message>
    <message>
        <source>in work</source>
        <translation>en cours</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fait</translation>
    </message>
    <message>
        <source>held</source>
        <translation>bloqué</translation>
    </message>
    <message>
        <source>deviation</source>
        <translation>dérogation</translation>
    </message>
    <message>
        <source>unproven</source>
        <translation>à revérifier</translation>
    </message>
    <message>
        <source>not required</source>
        <translation>non requis</translation>
    </message>
    <message>
        <source>today</source>
        <translation>aujourd’hui</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>demain</translation>
    </message>
    <message>
        <source>in %1 days</source>
        <translation>dans %1 jours</translation>
    </message>
    <message>
        <source>Calibration overdue since %1.</source>
        <translation>Étalonnage en retard depuis le %1.</translation>
    </message>
    <message>
        <source>Calibration due %1, %2.</source>
        <translation>Étalonnage à faire le %1, %2.</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 et %2 autres</translation>
    </message>
    <message>
        <source>No open job waits for a shim of this tray.</source>
        <translation>Aucune intervention ouverte n’attend une cale de cet assortiment.</translation>
    </message>
    <message>
        <source>One open job may want a shim of this tray.</source>
        <translation>Une intervention ouverte aura peut-être besoin d’une cale de cet assortiment.</translation>
    </message>
    <message>
        <source>%1 open jobs may want a shim of this tray.</source>
        <translation>%1 interventions ouvertes auront peut-être besoin d’une cale de cet assortiment.</translation>
    </message>
    <message>
        <source>None left of %1.</source>
        <translation>Plus aucune de %1.</translation>
    </message>
    <message>
        <source>One left of %1.</source>
        <translation>Plus qu’une de %1.</translation>
    </message>
    <message>
        <source>Tray %1</source>
        <translation>Assortiment %1</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Sauvegarde</translation>
    </message>
    <message>
        <source>The last verified backup is %1 days old. Look under Workshop what keeps it.</source>
        <translation>La dernière sauvegarde vérifiée date de %1 jours. Voir sous Atelier ce qui l’empêche.</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 et %2</translation>
    </message>
    <message>
        <source>mean of %1</source>
        <translation>moyenne de %1</translation>
    </message>
    <message>
        <source>less reference</source>
        <translation>moins la référence</translation>
    </message>
    <message>
        <source>stamp</source>
        <translation>marquage</translation>
    </message>
    <message>
        <source>shim wanted, mm (95 %)</source>
        <translation>cale cherchée, mm (95&#xa0;%)</translation>
    </message>
    <message>
        <source>%1 from the border to %2. </source>
        <translation>%1 jusqu’à la limite vers %2. </translation>
    </message>
    <message>
        <source>The places differ by %1, allowed %2.</source>
        <translation>Les endroits diffèrent de %1, permis %2.</translation>
    </message>
    <message>
        <source>plus</source>
        <translation>plus</translation>
    </message>
    <message>
        <source>minus</source>
        <translation>moins</translation>
    </message>
    <message>
        <source>%1, no shim of the tray</source>
        <translation>%1, aucune cale de l’assortiment</translation>
    </message>
    <message>
        <source>With %1 it would be %2 instead of %3.</source>
        <translation>Avec %1 ce serait %2 au lieu de %3.</translation>
    </message>
    <message>
        <source>Tilted: the places differ too much</source>
        <translation>De travers&#xa0;: les endroits diffèrent trop</translation>
    </message>
    <message>
        <source>This sum cannot be</source>
        <translation>Ce calcul est impossible</translation>
    </message>
    <message>
        <source>Outside the tray</source>
        <translation>Hors de l’assortiment</translation>
    </message>
    <message>
        <source>A size is missing in the tray</source>
        <translation>Il manque une taille dans l’assortiment</translation>
    </message>
    <message>
        <source>On the border of two sizes</source>
        <translation>À la limite entre deux tailles</translation>
    </message>
    <message>
        <source>The sum</source>
        <translation>Le calcul</translation>
    </message>
    <message>
        <source>still open</source>
        <translation>encore ouverte</translation>
    </message>
    <message>
        <source>parked</source>
        <translation>en attente</translation>
    </message>
    <message>
        <source>The odometer stands lower than before.</source>
        <translation>Le kilométrage est plus bas qu’avant.</translation>
    </message>
    <message>
        <source>Job %1 noted %2. Read it once more; another instrument may be fitted.</source>
        <translation>L’intervention %1 indique %2. Relire encore une fois&#xa0;; un autre compteur est peut-être monté.</translation>
    </message>
    <message>
        <source>Second pack in %1 km.</source>
        <translation>Deuxième bloc en %1 km.</translation>
    </message>
    <message>
        <source>Look for a cause first: seals, levers, pivot, flywheel, control unit.</source>
        <translation>Chercher d’abord une cause&#xa0;: joints, leviers, pivot, volant moteur, calculateur.</translation>
    </message>
    <message>
        <source>Job %1</source>
        <translation>Intervention %1</translation>
    </message>
    <message>
        <source>pack renewed</source>
        <translation>bloc remplacé</translation>
    </message>
    <message>
        <source>large</source>
        <translation>grande</translation>
    </message>
    <message>
        <source>small</source>
        <translation>petite</translation>
    </message>
    <message>
        <source>shims %1</source>
        <translation>cales %1</translation>
    </message>
    <message>
        <source>lower</source>
        <translation>disque inférieur</translation>
    </message>
    <message>
        <source>upper</source>
        <translation>disque supérieur</translation>
    </message>
    <message>
        <source>final float %1 mm</source>
        <translation>jeu final&#xa0;: %1 mm</translation>
    </message>
    <message>
        <source>float %1 mm so far</source>
        <translation>jeu jusqu’ici&#xa0;: %1 mm</translation>
    </message>
    <message>
        <source>teach-in at attempt %1</source>
        <translation>apprentissage à la tentative %1</translation>
    </message>
    <message>
        <source>Job %1 of this vehicle is not finished.</source>
        <translation>L’intervention %1 de ce véhicule n’est pas clôturée.</translation>
    </message>
    <message>
        <source>Take it up on the bench if this is the same work.</source>
        <translation>La reprendre à l’établi si c’est le même travail.</translation>
    </message>
    <message>
        <source>limits %1 to %2 mm</source>
        <translation>limites %1 à %2 mm</translation>
    </message>
    <message>
        <source> If the float stays: fit %1, expected %2 ± %3 mm (95 %), %4 to be inside at every spot.</source>
        <translation> Si le jeu reste&#xa0;: poser %1, attendu %2 ± %3 mm (95&#xa0;%), %4 d’être dans les limites à chaque point.</translation>
    </message>
    <message>
        <source>spec sheet and %1 pairs of this workshop</source>
        <translation>fiche technique et %1 paires de cet atelier</translation>
    </message>
    <message>
        <source>spec sheet</source>
        <translation>fiche technique</translation>
    </message>
    <message>
        <source>%1 pairs of this workshop</source>
        <translation>%1 paires de cet atelier</translation>
    </message>
    <message>
        <source> 1.00 mm of shim moves this float %1 ± %2 mm (95 %, %3).</source>
        <translation> 1.00 mm de cale change ce jeu de %1 ± %2 mm (95&#xa0;%, %3).</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Zero was lost</source>
        <translation>Le zéro est perdu</translation>
    </message>
    <message>
        <source>Kept, not judged</source>
        <translation>Enregistré, non jugé</translation>
    </message>
    <message>
        <source>A question first</source>
        <translation>D’abord une question</translation>
    </message>
    <message>
        <source>%1 as found</source>
        <translation>%1 à l’arrivée</translation>
    </message>
    <message>
        <source>%1, for information</source>
        <translation>%1, pour information</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>The shim stays</source>
        <translation>La cale reste</translation>
    </message>
    <message>
        <source>Seat the large bearing again, then measure once more</source>
        <translation>Remettre la grande butée en place, puis remesurer</translation>
    </message>
    <message>
        <source>Measure each spot once more</source>
        <translation>Mesurer chaque point encore une fois</translation>
    </message>
    <message>
        <source>Take the pack off and fit %1</source>
        <translation>Déposer le bloc et poser %1</translation>
    </message>
    <message>
        <source>Take the pack off, fit %1, one step, and measure again</source>
        <translation>Déposer le bloc, poser %1, un pas, et mesurer à nouveau</translation>
    </message>
    <message>
        <source>On the limit: you decide</source>
        <translation>À la limite&#xa0;: décider soi-même</translation>
    </message>
    <message>
        <source>Set zero and measure again</source>
        <translation>Régler le zéro et mesurer à nouveau</translation>
    </message>
    <message>
        <source>Kept: it is compared with the float after the work</source>
        <translation>Enregistré&#xa0;: sera comparé au jeu après le travail</translation>
    </message>
    <message>
        <source>No shim is known under this disc</source>
        <translation>Aucune cale n’est connue sous ce disque</translation>
    </message>
    <message>
        <source>Answer the question first</source>
        <translation>Répondre d’abord à la question</translation>
    </message>
    <message>
        <source>The trials still say otherwise; it was seated again and the float stayed. </source>
        <translation>Les essais disent toujours autre chose&#xa0;; la butée a été remise en place et le jeu est resté. </translation>
    </message>
    <message>
        <source>Spread %1 mm, allowed %2 mm</source>
        <translation>Dispersion %1 mm, permise %2 mm</translation>
    </message>
    <message>
        <source> Each spot ± %1 mm (95 %).</source>
        <translation> Chaque point ± %1 mm (95&#xa0;%).</translation>
    </message>
    <message>
        <source>Lifted is the higher reading while the dial runs forward.</source>
        <translation>Levé est la valeur la plus haute tant que le comparateur tourne en avant.</translation>
    </message>
    <message>
        <source>Count whole turns: one turn of %1 is %2 mm.</source>
        <translation>Compter les tours entiers&#xa0;: un tour de %1 vaut %2 mm.</translation>
    </message>
    <message>
        <source>%1, trial %2</source>
        <translation>%1, essai %2</translation>
    </message>
    <message>
        <source>less than 1 in 100 from the start</source>
        <translation>moins de 1 sur 100 dès le début</translation>
    </message>
    <message>
        <source>ruled out by trial %1</source>
        <translation>exclusion par l’essai %1</translation>
    </message>
    <message>
        <source>ruled out by trials %1</source>
        <translation>exclusion par les essais %1</translation>
    </message>
    <message>
        <source>not in the tray</source>
        <translation>pas dans l’assortiment</translation>
    </message>
    <message>
        <source>measured %1</source>
        <translation>mesurée %1</translation>
    </message>
    <message>
        <source>none left in the tray</source>
        <translation>plus aucune dans l’assortiment</translation>
    </message>
    <message>
        <source>%1 in the tray</source>
        <translation>%1 dans l’assortiment</translation>
    </message>
    <message>
        <source>About %1 trials left; from the thickest down it would be %2.</source>
        <translation>Encore environ %1 essais&#xa0;; en partant de la plus épaisse ce serait %2.</translation>
    </message>
    <message>
        <source>trial %1 (%2 %3)</source>
        <translation>l’essai %1 (%2 %3)</translation>
    </message>
    <message>
        <source>No seat fits both %1 and %2. </source>
        <translation>Aucune assise ne convient à %1 et à %2. </translation>
    </message>
    <message>
        <source>try the next shim</source>
        <translation>essayer la cale suivante</translation>
    </message>
    <message>
        <source>take the shim</source>
        <translation>prendre la cale</translation>
    </message>
    <message>
        <source>the trials contradict each other</source>
        <translation>les essais se contredisent</translation>
    </message>
    <message>
        <source>no shim of the tray fits</source>
        <translation>aucune cale de l’assortiment ne convient</translation>
    </message>
    <message>
        <source>the places differ too much</source>
        <translation>les endroits diffèrent trop</translation>
    </message>
    <message>
        <source>the depths cannot be right</source>
        <translation>les profondeurs sont impossibles</translation>
    </message>
    <message>
        <source>a size is missing in the tray</source>
        <translation>il manque une taille dans l’assortiment</translation>
    </message>
    <message>
        <source>between two shims: choose one</source>
        <translation>entre deux cales&#xa0;: en choisir une</translation>
    </message>
    <message>
        <source>a question is open</source>
        <translation>une question est ouverte</translation>
    </message>
    <message>
        <source>set zero again and measure</source>
        <translation>régler le zéro et mesurer</translation>
    </message>
    <message>
        <source>measure again</source>
        <translation>mesurer à nouveau</translation>
    </message>
    <message>
        <source>seat it again</source>
        <translation>remettre en place</translation>
    </message>
    <message>
        <source>change the shim</source>
        <translation>changer la cale</translation>
    </message>
    <message>
        <source>on the limit: decide</source>
        <translation>à la limite&#xa0;: décider</translation>
    </message>
    <message>
        <source>for information</source>
        <translation>pour information</translation>
    </message>
    <message>
        <source>on the limit</source>
        <translation>à la limite</translation>
    </message>
    <message>
        <source>the counts differ</source>
        <translation>les comptes diffèrent</translation>
    </message>
    <message>
        <source>not accepted</source>
        <translation>non accepté</translation>
    </message>
    <message>
        <source>answered “%1”</source>
        <translation>répondu «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source> · parked today</source>
        <translation> · en attente depuis aujourd’hui</translation>
    </message>
    <message>
        <source> · parked for 1 day</source>
        <translation> · en attente depuis 1 jour</translation>
    </message>
    <message>
        <source> · parked for %1 days</source>
        <translation> · en attente depuis %1 jours</translation>
    </message>
    <message>
        <source>waits for: %1</source>
        <translation>attend&#xa0;: %1</translation>
    </message>
    <message>
        <source>, was due %1</source>
        <translation>, prévu le %1, dépassé</translation>
    </message>
    <message>
        <source>, due %1</source>
        <translation>, prévu le %1</translation>
    </message>
    <message>
        <source>once more after the pause: %1</source>
        <translation>encore une fois après la pause&#xa0;: %1</translation>
    </message>
    <message>
        <source>unit %1</source>
        <translation>boîte %1</translation>
    </message>
    <message>
        <source>not in order</source>
        <translation>non conforme</translation>
    </message>
    <message>
        <source>not completed</source>
        <translation>non terminé</translation>
    </message>
    <message>
        <source>chassis ends %1</source>
        <translation>châssis finissant par %1</translation>
    </message>
    <message>
        <source>nothing left to do</source>
        <translation>plus rien à faire</translation>
    </message>
    <message>
        <source>This job cannot be read</source>
        <translation>Cette intervention ne peut pas être lue</translation>
    </message>
    <message>
        <source>“{0}” came in, but this step asks for no value.</source>
        <translation>«&#xa0;{0}&#xa0;» est arrivé, mais cette étape ne demande aucune valeur.</translation>
    </message>
    <message>
        <source>large bearing</source>
        <translation>grande butée</translation>
    </message>
    <message>
        <source>small bearing</source>
        <translation>petite butée</translation>
    </message>
    <message>
        <source>lower disc</source>
        <translation>disque inférieur</translation>
    </message>
    <message>
        <source>upper disc</source>
        <translation>disque supérieur</translation>
    </message>
    <message>
        <source>tight</source>
        <translation>serré</translation>
    </message>
    <message>
        <source>snug</source>
        <translation>ajusté</translation>
    </message>
    <message>
        <source>loose</source>
        <translation>libre</translation>
    </message>
    <message>
        <source>better than 99 in 100</source>
        <translation>plus de 99 sur 100</translation>
    </message>
    <message>
        <source>less than 1 in 100</source>
        <translation>moins de 1 sur 100</translation>
    </message>
    <message>
        <source>%1 in 100</source>
        <translation>%1 sur 100</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Pressings of this pack so far: %1; the spec sheet allows %2.</source>
        <translation>Emmanchements de ce bloc jusqu’ici&#xa0;: %1&#xa0;; la fiche technique en permet %2.</translation>
    </message>
    <message>
        <source>To do again: %1.</source>
        <translation>À refaire&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Renewed again: %1.</source>
        <translation>À remplacer à nouveau&#xa0;: %1.</translation>
    </message>
    <message>
        <source>No earlier job on this gearbox type has words here: write them.</source>
        <translation>Aucune intervention passée sur ce type de boîte n’a de texte ici&#xa0;: l’écrire.</translation>
    </message>
    <message>
        <source>%1 for %2</source>
        <translation>%1 pour %2</translation>
    </message>
    <message>
        <source>Take plain letters</source>
        <translation>Prendre les lettres simples</translation>
    </message>
    <message>
        <source>Take %1</source>
        <translation>Prendre %1</translation>
    </message>
    <message>
        <source>in order</source>
        <translation>conforme</translation>
    </message>
    <message>
        <source>not in order: %1</source>
        <translation>non conforme&#xa0;: %1</translation>
    </message>
    <message>
        <source>a photo</source>
        <translation>une photo</translation>
    </message>
    <message>
        <source>spot %1: %2</source>
        <translation>point %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>measured again</source>
        <translation>mesuré à nouveau</translation>
    </message>
    <message>
        <source>right as it stands</source>
        <translation>correct ainsi</translation>
    </message>
    <message>
        <source>%1 taken</source>
        <translation>%1 prise</translation>
    </message>
    <message>
        <source>completed</source>
        <translation>terminé</translation>
    </message>
    <message>
        <source>aborted</source>
        <translation>interrompu</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>signé</translation>
    </message>
    <message>
        <source>left with reason: %1</source>
        <translation>laissé avec motif&#xa0;: %1</translation>
    </message>
    <message>
        <source>not required: %1</source>
        <translation>non requis&#xa0;: %1</translation>
    </message>
    <message>
        <source>lower float</source>
        <translation>jeu, disque inf.</translation>
    </message>
    <message>
        <source>upper float</source>
        <translation>jeu, disque sup.</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Note&#xa0;: %1</translation>
    </message>
    <message>
        <source>Job opened</source>
        <translation>Intervention ouverte</translation>
    </message>
    <message>
        <source>Parked, waiting for %1</source>
        <translation>En attente de %1</translation>
    </message>
    <message>
        <source>Taken up again</source>
        <translation>Reprise</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Transmise</translation>
    </message>
    <message>
        <source>Assembly %1 begun</source>
        <translation>Montage %1 commencé</translation>
    </message>
    <message>
        <source>Sealed</source>
        <translation>Scellé</translation>
    </message>
    <message>
        <source>Added after sealing: %1</source>
        <translation>Ajouté après le scellement&#xa0;: %1</translation>
    </message>
    <message>
        <source>Something taken back</source>
        <translation>Quelque chose de retiré</translation>
    </message>
    <message>
        <source>%1 × %2, number %3</source>
        <translation>%1 × %2, numéro %3</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>au plus %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>au moins %1</translation>
    </message>
    <message>
        <source>not equal</source>
        <translation>inégal</translation>
    </message>
    <message>
        <source>by %1 %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Dial gauge</source>
        <translation>Comparateur</translation>
    </message>
    <message>
        <source>Depth gauge</source>
        <translation>Jauge de profondeur</translation>
    </message>
    <message>
        <source>Micrometer</source>
        <translation>Micromètre</translation>
    </message>
    <message>
        <source>Torque wrench</source>
        <translation>Clé dynamométrique</translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation>Thermomètre</translation>
    </message>
    <message>
        <source>Multimeter</source>
        <translation>Multimètre</translation>
    </message>
    <message>
        <source>Pressure gauge</source>
        <translation>Manomètre</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Balance</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation>d MMM yyyy</translation>
    </message>
    <message>
        <source>d MMM HH:mm</source>
        <translation>d MMM HH:mm</translation>
    </message>
    <message>
        <source>%1 (one-time: renewed at every assembly)</source>
        <translation>%1 (à usage unique&#xa0;: remplacée à chaque montage)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Seat the small bearing again, then measure once more</source>
        <translation>Remettre la petite butée en place, puis remesurer</translation>
    </message>
    <message>
        <source>shim, large bearing</source>
        <translation>cale, grande butée</translation>
    </message>
    <message>
        <source>shim, small bearing</source>
        <translation>cale, petite butée</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 ou %2</translation>
    </message>
    <message>
        <source>Mixed: %1 to %2</source>
        <translation>Mixte&#xa0;: %1 à %2</translation>
    </message>
    <message>
        <source>Look at seating and parts</source>
        <translation>Regarder l’assise et les pièces</translation>
    </message>
    <message>
        <source>No verified backup is known. Make one under Workshop, Data and backup.</source>
        <translation>Aucune sauvegarde vérifiée n’est connue. En faire une sous Atelier, Données et sauvegarde.</translation>
    </message>
    <message>
        <source>renewing the pack</source>
        <translation>remplacement du bloc en cours</translation>
    </message>
    <message>
        <source>; the float is largest at %1° clockwise from spot 1, tilt %2 mm.</source>
        <translation>&#xa0;; le jeu est le plus grand à %1° dans le sens horaire depuis le point 1, inclinaison %2 mm.</translation>
    </message>
    <message>
        <source> That no shim of the tray fits: %1 in 100.</source>
        <translation> Qu’aucune cale de l’assortiment ne convienne&#xa0;: %1 sur 100.</translation>
    </message>
    <message>
        <source>VIN %1</source>
        <translation>VIN %1</translation>
    </message>
    <message>
        <source>: no tilt beyond what the readings are uncertain by.</source>
        <translation>: pas d’inclinaison au-delà de l’incertitude des lectures.</translation>
    </message>
</context>
<context>
    <name>cli</name>
    <message>
        <source>This option is given twice: give it once.</source>
        <translation>Cette option est donnée deux fois&#xa0;: la donner une seule fois.</translation>
    </message>
    <message>
        <source>This command has no such option: see its --help.</source>
        <translation>Cette commande n’a pas cette option&#xa0;: voir son --help.</translation>
    </message>
    <message>
        <source>This option needs a value after it.</source>
        <translation>Il faut une valeur après cette option.</translation>
    </message>
    <message>
        <source>This command takes another number of words: see its --help.</source>
        <translation>Cette commande demande un autre nombre de mots&#xa0;: voir son --help.</translation>
    </message>
    <message>
        <source>This command needs this option: see its --help.</source>
        <translation>Cette commande a besoin de cette option&#xa0;: voir son --help.</translation>
    </message>
    <message>
        <source>A whole number from {0} to {1} is needed here.</source>
        <translation>Il faut ici un nombre entier de {0} à {1}.</translation>
    </message>
    <message>
        <source>This store holds jobs already: name a new file.</source>
        <translation>Cette base contient déjà des interventions&#xa0;: nommer un nouveau fichier.</translation>
    </message>
    <message>
        <source>This file cannot be read: look whether it is there and may be read.</source>
        <translation>Ce fichier ne peut pas être lu&#xa0;: vérifier qu’il est là et que la lecture est permise.</translation>
    </message>
    <message>
        <source>This file is larger than 64 MiB: it is none of ours.</source>
        <translation>Ce fichier dépasse 64 MiB&#xa0;: il n’est pas des nôtres.</translation>
    </message>
    <message>
        <source>This file broke off while it was read: look at the disk.</source>
        <translation>La lecture de ce fichier s’est interrompue&#xa0;: contrôler le disque.</translation>
    </message>
    <message>
        <source>“{0}” is no paper size here: write a4 or letter.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas un format de papier ici&#xa0;: écrire a4 ou letter.</translation>
    </message>
    <message>
        <source>This file cannot be written: look at the folder and the space on the disk.</source>
        <translation>Ce fichier ne peut pas être écrit&#xa0;: contrôler le dossier et la place sur le disque.</translation>
    </message>
    <message>
        <source>“{0}” is no kind of instrument: see the list in docs/formats/script.md.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas un type d’instrument&#xa0;: voir la liste dans docs/formats/script.md.</translation>
    </message>
    <message>
        <source>A tray has at most {0} shims, this one has {1}: shorten it.</source>
        <translation>Un assortiment a au plus {0} cales, celui-ci en a {1}&#xa0;: le raccourcir.</translation>
    </message>
    <message>
        <source>This is no script: its format must be “shimwright.script”.</source>
        <translation>Ce n’est pas un script&#xa0;: son format doit être «&#xa0;shimwright.script&#xa0;».</translation>
    </message>
    <message>
        <source>This script was made for a newer version of the program: bring the program up to date.</source>
        <translation>Ce script est fait pour une version plus récente du programme&#xa0;: mettre le programme à jour.</translation>
    </message>
    <message>
        <source>“{0}” is not among the people of this script: add the person.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas parmi les personnes de ce script&#xa0;: ajouter la personne.</translation>
    </message>
    <message>
        <source>“{0}” is not among the instruments of this script: add the instrument.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas parmi les instruments de ce script&#xa0;: ajouter l’instrument.</translation>
    </message>
    <message>
        <source>“{0}” is no time: write it as in 2026-11-24T10:58+00:00.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas une heure&#xa0;: l’écrire comme 2026-11-24T10:58+00:00.</translation>
    </message>
    <message>
        <source>“{0}” cannot be expected: write accepted or refused.</source>
        <translation>«&#xa0;{0}&#xa0;» ne peut pas être attendu&#xa0;: écrire accepted ou refused.</translation>
    </message>
    <message>
        <source>A text is expected here: put it in quotes.</source>
        <translation>Il faut ici un texte&#xa0;: le mettre entre guillemets.</translation>
    </message>
    <message>
        <source>A spot is a number from 1 to 9.</source>
        <translation>Un point est un nombre de 1 à 9.</translation>
    </message>
    <message>
        <source>“{0}” is not known here: see docs/formats/script.md.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas connu ici&#xa0;: voir docs/formats/script.md.</translation>
    </message>
    <message>
        <source>“{0}” is no side: write lower or upper.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas un côté&#xa0;: écrire lower ou upper.</translation>
    </message>
    <message>
        <source>A command needs its name here, in quotes: see docs/formats/script.md.</source>
        <translation>Une commande a besoin ici de son nom entre guillemets&#xa0;: voir docs/formats/script.md.</translation>
    </message>
    <message>
        <source>There is no command “{0}”: see the list in docs/formats/script.md.</source>
        <translation>Il n’y a pas de commande «&#xa0;{0}&#xa0;»&#xa0;: voir la liste dans docs/formats/script.md.</translation>
    </message>
    <message>
        <source>There is no such sheet; there are {0}.</source>
        <translation>Cette fiche n’existe pas&#xa0;; il y a {0}.</translation>
    </message>
    <message>
        <source>This store can only be looked at.</source>
        <translation>Cette base est en lecture seule.</translation>
    </message>
    <message>
        <source>There is no job of this number in the store: find it by its vehicle.</source>
        <translation>Aucune intervention de la base n’a ce numéro&#xa0;: la chercher par son véhicule.</translation>
    </message>
    <message>
        <source>Several jobs have this number: name one by its id, which “find” shows.</source>
        <translation>Plusieurs interventions ont ce numéro&#xa0;: en nommer une par son identifiant, que «&#xa0;find&#xa0;» montre.</translation>
    </message>
    <message>
        <source>One thing at a time, and an end needs its day: see its --help.</source>
        <translation>Une chose à la fois, et une fin a besoin de son jour&#xa0;: voir son --help.</translation>
    </message>
    <message>
        <source>This person is not in the workshop&apos;s list: write the name or the initials.</source>
        <translation>Cette personne n’est pas dans la liste de l’atelier&#xa0;: écrire le nom ou les initiales.</translation>
    </message>
    <message>
        <source>The PIN is read from standard input: give it there.</source>
        <translation>Le code PIN est lu sur l’entrée standard&#xa0;: le donner là.</translation>
    </message>
    <message>
        <source>This store is in order, so no backup was put in its place.</source>
        <translation>Cette base est en ordre, donc aucune sauvegarde n’a été mise à sa place.</translation>
    </message>
    <message>
        <source>There is no whole backup of this store in {0}: name another folder.</source>
        <translation>Il n’y a pas de sauvegarde intacte de cette base dans {0}&#xa0;: nommer un autre dossier.</translation>
    </message>
    <message>
        <source>“{0}” is no day: write it as 2026-11-24.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas un jour&#xa0;: l’écrire comme 2026-11-24.</translation>
    </message>
    <message>
        <source>The last day lies before the first: change the two.</source>
        <translation>Le dernier jour précède le premier&#xa0;: échanger les deux.</translation>
    </message>
    <message>
        <source>There is no job of this vehicle in the store; look at its number again.</source>
        <translation>Il n’y a pas d’intervention de ce véhicule dans la base&#xa0;; revoir son numéro.</translation>
    </message>
    <message>
        <source>Say where the measurements go: --csv OUT, --json OUT or both.</source>
        <translation>Indiquer où vont les mesures&#xa0;: --csv OUT, --json OUT ou les deux.</translation>
    </message>
    <message>
        <source>“{0}” is no whole number from 0 on.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas un nombre entier à partir de 0.</translation>
    </message>
    <message>
        <source>Name a signed file, or a store and a job or a code: see its --help.</source>
        <translation>Nommer un fichier signé, ou une base et une intervention ou un code&#xa0;: voir --help.</translation>
    </message>
    <message>
        <source>Something other than an older record lies there and is not written over; choose another name.</source>
        <translation>Autre chose qu&apos;un ancien rapport se trouve là et n&apos;est pas écrasé&#xa0;; choisissez un autre nom.</translation>
    </message>
    <message>
        <source>“-” is no place for a file: name one.</source>
        <translation>«&#xa0;-&#xa0;» n&apos;est pas un emplacement de fichier&#xa0;: nommez-en un.</translation>
    </message>
    <message>
        <source>This place is named twice; choose one for each file.</source>
        <translation>Cet emplacement est nommé deux fois&#xa0;; choisissez-en un par fichier.</translation>
    </message>
    <message>
        <source>Say what the record is wanted as: --pdf, --json, --slip or --summary.</source>
        <translation>Dites sous quelle forme le rapport est voulu&#xa0;: --pdf, --json, --slip ou --summary.</translation>
    </message>
    <message>
        <source>This tray has no shims: list them, or leave the tray out.</source>
        <translation>Cet assortiment n&apos;a pas de cales&#xa0;: listez-les, ou omettez l&apos;assortiment.</translation>
    </message>
    <message>
        <source>This text holds the character U+0000, which no text may: take it out.</source>
        <translation>Ce texte contient le caractère U+0000, qu&apos;aucun texte ne peut contenir&#xa0;: retirez-le.</translation>
    </message>
    <message>
        <source>“{0}” stands here twice: take one away.</source>
        <translation>«&#xa0;{0}&#xa0;» figure ici deux fois&#xa0;: enlevez-en un.</translation>
    </message>
    <message>
        <source>The job sheet has no step “{0}”: name one of its steps.</source>
        <translation>La fiche de travail n&apos;a pas d&apos;étape «&#xa0;{0}&#xa0;»&#xa0;: nommez une de ses étapes.</translation>
    </message>
    <message>
        <source>There is no photo “{0}” beside the script: put it there.</source>
        <translation>Il n&apos;y a pas de photo «&#xa0;{0}&#xa0;» à côté du script&#xa0;: mettez-la là.</translation>
    </message>
    <message>
        <source>The job sheet does not speak “{0}”: name one of its languages.</source>
        <translation>La fiche de travail n&apos;existe pas en «&#xa0;{0}&#xa0;»&#xa0;: nommez une de ses langues.</translation>
    </message>
    <message>
        <source>This script has no commands: add some.</source>
        <translation>Ce script n&apos;a pas de commandes&#xa0;: ajoutez-en.</translation>
    </message>
    <message>
        <source>The spec sheet has no tray “{0}”: name it as it stands there.</source>
        <translation>La fiche technique n&apos;a pas d&apos;assortiment «&#xa0;{0}&#xa0;»&#xa0;: nommez-le tel qu&apos;il y figure.</translation>
    </message>
</context>
<context>
    <name>job</name>
    <message>
        <source>No shim is named: look at the numbers and choose one yourself, with reason.</source>
        <translation>Aucune cale n’est nommée&#xa0;: regarder les chiffres et en choisir une soi-même, avec motif.</translation>
    </message>
    <message>
        <source>{0} is the best the feel can tell ({1} in 100): more trials of the same shims would not decide it.</source>
        <translation>{0} est le mieux que le toucher puisse dire ({1} sur 100)&#xa0;: d’autres essais des mêmes cales ne décideraient rien.</translation>
    </message>
    <message>
        <source>{0} fits ({1} in 100), but nothing thicker was felt tight: a thicker one may go in.</source>
        <translation>{0} convient ({1} sur 100), mais aucune plus épaisse n’a été sentie serrée&#xa0;: une plus épaisse entre peut-être.</translation>
    </message>
    <message>
        <source>{0} is the one: {1} in 100 by the trials.</source>
        <translation>{0} est la bonne&#xa0;: {1} sur 100 d’après les essais.</translation>
    </message>
    <message>
        <source>Try {0}.</source>
        <translation>Essayer {0}.</translation>
    </message>
    <message>
        <source>Try {0}: about {1} trials left.</source>
        <translation>Essayer {0}&#xa0;: encore environ {1} essais.</translation>
    </message>
    <message>
        <source>The dial ran backwards. If it does so in this set-up, confirm; else set it up anew.</source>
        <translation>Le comparateur a tourné en arrière. Si c’est normal dans ce montage, confirmer&#xa0;; sinon refaire le montage.</translation>
    </message>
    <message>
        <source>Fit {0}.</source>
        <translation>Poser {0}.</translation>
    </message>
    <message>
        <source>Fit {0}: expected float {1} ± {2} mm (95 %), {3} in 100 to be inside the limits at every spot.</source>
        <translation>Poser {0}&#xa0;: jeu attendu {1} ± {2} mm (95&#xa0;%), {3} sur 100 d’être dans les limites à chaque point.</translation>
    </message>
    <message>
        <source>{0} mm lies on the border between {1} and {2}: measure again, or choose one.</source>
        <translation>{0} mm est à la limite entre {1} et {2}&#xa0;: mesurer à nouveau, ou en choisir une.</translation>
    </message>
    <message>
        <source>Fit {0}, one step, and measure again: how much a shim moves this float is not known well enough.</source>
        <translation>Poser {0}, un pas, et mesurer à nouveau&#xa0;: on ne sait pas assez bien combien une cale change ce jeu.</translation>
    </message>
    <message>
        <source>{0} would be the one, but it is not in the tray: put one in, or take another.</source>
        <translation>{0} serait la bonne, mais elle n’est pas dans l’assortiment&#xa0;: en ajouter une, ou en prendre une autre.</translation>
    </message>
    <message>
        <source>Kept, but not judged: no shim is chosen for the {0}. Choose it, or measure the one taken out, then measure once more.</source>
        <translation>Enregistré, mais non jugé&#xa0;: aucune cale n’est choisie ({0}). La choisir, ou mesurer celle déposée, puis mesurer encore une fois.</translation>
    </message>
    <message>
        <source>Even the thinnest shim is too thick. Look at seating, lever and parts.</source>
        <translation>Même la cale la plus mince est trop épaisse. Contrôler l’assise, le levier et les pièces.</translation>
    </message>
    <message>
        <source>Even the thickest shim is too thin. Look at seating, lever and parts.</source>
        <translation>Même la cale la plus épaisse est trop mince. Contrôler l’assise, le levier et les pièces.</translation>
    </message>
    <message>
        <source>Two trials contradict each other. Seat the bearing and try both shims again, or take back the wrong one.</source>
        <translation>Deux essais se contredisent. Remettre la butée en place et essayer encore les deux cales, ou retirer l’essai faux.</translation>
    </message>
    <message>
        <source>The depths differ by {0} mm, allowed {1} mm: the bearing or the straightedge is tilted. Seat it and measure again.</source>
        <translation>Les profondeurs diffèrent de {0} mm, permis {1} mm&#xa0;: la butée ou la règle est de travers. La mettre en place et mesurer à nouveau.</translation>
    </message>
    <message>
        <source>{0} mm of shim cannot be: look for a wrong sign, constant or reference.</source>
        <translation>Une cale de {0} mm est impossible&#xa0;: chercher un signe, une constante ou une référence fausse.</translation>
    </message>
    <message>
        <source>{0} mm lies outside the tray. Measure again, then look at the parts.</source>
        <translation>{0} mm est hors de l’assortiment. Mesurer à nouveau, puis contrôler les pièces.</translation>
    </message>
    <message>
        <source>{0} mm is wanted; {1} is the nearest and lies far from it. Choose with reason.</source>
        <translation>Il faut {0} mm&#xa0;; {1} est la plus proche et en est loin. Choisir avec motif.</translation>
    </message>
    <message>
        <source>{0} mm is wanted and no shim of the tray is near it. Choose with reason.</source>
        <translation>Il faut {0} mm et aucune cale de l’assortiment n’en est proche. Choisir avec motif.</translation>
    </message>
    <message>
        <source>Fit {0}: {1} mm is wanted.</source>
        <translation>Poser {0}&#xa0;: il faut {1} mm.</translation>
    </message>
    <message>
        <source>Floats of both signs: zero was lost. Set the dial to zero and measure again.</source>
        <translation>Jeux des deux signes&#xa0;: le zéro est perdu. Régler le comparateur à zéro et mesurer à nouveau.</translation>
    </message>
    <message>
        <source>Measure each spot once more: the runs so far do not decide it.</source>
        <translation>Mesurer chaque point encore une fois&#xa0;: les relevés jusqu’ici ne décident pas.</translation>
    </message>
    <message>
        <source>Trials and float disagree: both cannot be right with {0} fitted. Seat the {1} again and measure once more before the pack comes off.</source>
        <translation>Les essais et le jeu se contredisent&#xa0;: avec {0} les deux ne peuvent pas être vrais. Remettre la butée en place ({1}) et mesurer encore une fois avant de déposer le bloc.</translation>
    </message>
    <message>
        <source>The spots differ by {0} mm, allowed {1} mm: a seat or a tilt, no shim cures it. Seat the {2} again and measure once more.</source>
        <translation>Les points diffèrent de {0} mm, permis {1} mm&#xa0;: c’est l’assise ou une inclinaison, aucune cale n’y remédie. Remettre la butée en place ({2}) et mesurer encore une fois.</translation>
    </message>
    <message>
        <source>Free within {0} to {1} mm at every spot: {2} stays.</source>
        <translation>Libre entre {0} et {1} mm à chaque point&#xa0;: {2} reste.</translation>
    </message>
    <message>
        <source>On the limit, and more runs will not decide it: change the shim, or accept with reason.</source>
        <translation>À la limite, et d’autres relevés ne décideront pas&#xa0;: changer la cale, ou accepter avec motif.</translation>
    </message>
    <message>
        <source>Float as found, for information.</source>
        <translation>Jeu à l’arrivée, pour information.</translation>
    </message>
    <message>
        <source>No shim of the tray brings this disc within its limits. Look at seating and parts.</source>
        <translation>Aucune cale de l’assortiment n’amène ce disque dans ses limites. Contrôler l’assise et les pièces.</translation>
    </message>
    <message>
        <source>An entry of the kind {0}, version {1}, was written by a newer program; open this job with the newer program.</source>
        <translation>Une entrée du type {0}, version {1}, vient d’un programme plus récent&#xa0;; ouvrir cette intervention avec le programme plus récent.</translation>
    </message>
    <message>
        <source>A stored entry is not readable any more; check the store.</source>
        <translation>Une entrée enregistrée n’est plus lisible&#xa0;; contrôler la base.</translation>
    </message>
    <message>
        <source>A field is missing in this stored entry; check the store.</source>
        <translation>Il manque un champ dans cette entrée enregistrée&#xa0;; contrôler la base.</translation>
    </message>
    <message>
        <source>A field stands twice in this stored entry; check the store.</source>
        <translation>Un champ est deux fois dans cette entrée enregistrée&#xa0;; contrôler la base.</translation>
    </message>
    <message>
        <source>A field of this stored entry is not known; check the store.</source>
        <translation>Un champ de cette entrée enregistrée n’est pas connu&#xa0;; contrôler la base.</translation>
    </message>
    <message>
        <source>A value in this stored entry is not of its kind; check the store.</source>
        <translation>Une valeur de cette entrée enregistrée n’est pas du bon type&#xa0;; contrôler la base.</translation>
    </message>
    <message>
        <source>Nobody is at the bench: say who works first.</source>
        <translation>Personne n’est à l’établi&#xa0;: dire d’abord qui travaille.</translation>
    </message>
    <message>
        <source>This job is open already: begin another for another vehicle.</source>
        <translation>Cette intervention est déjà ouverte&#xa0;: en commencer une autre pour un autre véhicule.</translation>
    </message>
    <message>
        <source>There is no job yet: open one first.</source>
        <translation>Il n’y a pas encore d’intervention&#xa0;: en ouvrir une d’abord.</translation>
    </message>
    <message>
        <source>This job is signed and closed: nothing in it changes any more.</source>
        <translation>Cette intervention est signée et clôturée&#xa0;: plus rien n’y change.</translation>
    </message>
    <message>
        <source>This job is parked, waiting for {0}: take it up first.</source>
        <translation>Cette intervention est en attente de {0}&#xa0;: la reprendre d’abord.</translation>
    </message>
    <message>
        <source>The job was changed after this signature: the technician signs again.</source>
        <translation>L’intervention a changé après cette signature&#xa0;: le technicien signe à nouveau.</translation>
    </message>
    <message>
        <source>Say in a few words what is not in order.</source>
        <translation>Dire en quelques mots ce qui n’est pas conforme.</translation>
    </message>
    <message>
        <source>“{0}” is none of the answers of “{1}”: choose one of those shown.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas une des réponses de «&#xa0;{1}&#xa0;»&#xa0;: choisir une de celles affichées.</translation>
    </message>
    <message>
        <source>Nothing is written here yet: write it, or leave the step open.</source>
        <translation>Rien n’est encore écrit ici&#xa0;: l’écrire, ou laisser l’étape ouverte.</translation>
    </message>
    <message>
        <source>“{0}” is no part of this step: choose one of those listed.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas une pièce de cette étape&#xa0;: choisir une de celles de la liste.</translation>
    </message>
    <message>
        <source>The number of parts must be from 1 to 1000.</source>
        <translation>Le nombre de pièces doit être de 1 à 1000.</translation>
    </message>
    <message>
        <source>“{0}” is still missing from the list of what was renewed: add it, or go on with a reason.</source>
        <translation>«&#xa0;{0}&#xa0;» manque encore dans la liste des pièces remplacées&#xa0;: l’ajouter, ou continuer avec motif.</translation>
    </message>
    <message>
        <source>This photo cannot be kept: it must be a picture of at most 20 MB.</source>
        <translation>Cette photo ne peut pas être enregistrée&#xa0;: il faut une image de 20 MB au plus.</translation>
    </message>
    <message>
        <source>“{0}” asks nothing that could be confirmed so: look at what it asks.</source>
        <translation>«&#xa0;{0}&#xa0;» ne demande rien qui se confirme ainsi&#xa0;: regarder ce qui y est demandé.</translation>
    </message>
    <message>
        <source>There are spots 1 to {0}: choose one of them.</source>
        <translation>Il y a les points 1 à {0}&#xa0;: en choisir un.</translation>
    </message>
    <message>
        <source>The method of this gearbox has no float as found: leave “{0}” out, not measured, because the spec sheet does not allow it.</source>
        <translation>La méthode de cette boîte n’a pas de jeu à l’arrivée&#xa0;: laisser «&#xa0;{0}&#xa0;» de côté, non mesuré, parce que la fiche technique ne le permet pas.</translation>
    </message>
    <message>
        <source>Zero came back at {0} mm, more than a division off: discard this run, set zero and lift again.</source>
        <translation>Le zéro est revenu à {0} mm, plus d’une division à côté&#xa0;: rejeter ce relevé, régler le zéro et lever à nouveau.</translation>
    </message>
    <message>
        <source>Nothing is measured here yet: there is nothing to measure again, begin with spot 1.</source>
        <translation>Rien n’est encore mesuré ici&#xa0;: il n’y a rien à mesurer à nouveau, commencer par le point 1.</translation>
    </message>
    <message>
        <source>The job needs a number: give it one.</source>
        <translation>L’intervention a besoin d’un numéro&#xa0;: lui en donner un.</translation>
    </message>
    <message>
        <source>“{0}” is no date: write year-month-day, as in 2019-04-30.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas une date&#xa0;: écrire année-mois-jour, comme 2019-04-30.</translation>
    </message>
    <message>
        <source>Not yet: {0} is not accepted. Answer it, or go on with a reason there.</source>
        <translation>Pas encore&#xa0;: {0} n’est pas accepté. Y répondre, ou y continuer avec motif.</translation>
    </message>
    <message>
        <source>The technician signs first: there is nothing to check before.</source>
        <translation>Le technicien signe d’abord&#xa0;: avant, il n’y a rien à contrôler.</translation>
    </message>
    <message>
        <source>The checker is a second person: hand over, or go on with a reason.</source>
        <translation>Le contrôleur est une deuxième personne&#xa0;: transmettre, ou continuer avec motif.</translation>
    </message>
    <message>
        <source>The technician&apos;s signature cannot be left out: sign the job.</source>
        <translation>La signature du technicien ne peut pas manquer&#xa0;: signer l’intervention.</translation>
    </message>
    <message>
        <source>“{0}” is required on this sheet: answer it, or go on with a reason.</source>
        <translation>«&#xa0;{0}&#xa0;» est requis sur cette fiche de travail&#xa0;: y répondre, ou continuer avec motif.</translation>
    </message>
    <message>
        <source>The note is empty: write it first.</source>
        <translation>La note est vide&#xa0;: l’écrire d’abord.</translation>
    </message>
    <message>
        <source>The job sheet has no such step: look at its list of steps.</source>
        <translation>La fiche de travail n’a pas cette étape&#xa0;: voir sa liste d’étapes.</translation>
    </message>
    <message>
        <source>Say what the job waits for, so that the next person knows.</source>
        <translation>Dire ce que l’intervention attend, pour que la personne suivante le sache.</translation>
    </message>
    <message>
        <source>This job is not parked: go on with its next step.</source>
        <translation>Cette intervention n’est pas en attente&#xa0;: continuer par son étape suivante.</translation>
    </message>
    <message>
        <source>Say which other person takes the job over.</source>
        <translation>Dire quelle autre personne prend l’intervention.</translation>
    </message>
    <message>
        <source>This assembly has not begun yet: the shim can be changed at its own step.</source>
        <translation>Ce montage n’a pas encore commencé&#xa0;: la cale se change à sa propre étape.</translation>
    </message>
    <message>
        <source>There is no such entry, or it was taken back already: look at the job&apos;s list.</source>
        <translation>Cette entrée n’existe pas, ou elle a déjà été retirée&#xa0;: voir la liste de l’intervention.</translation>
    </message>
    <message>
        <source>This entry cannot be taken back: take back the answer or reading that is wrong.</source>
        <translation>Cette entrée ne peut pas être retirée&#xa0;: retirer la réponse ou la mesure fausse.</translation>
    </message>
    <message>
        <source>Entries of this assembly stand on it: take those back first.</source>
        <translation>Des entrées de ce montage s’appuient dessus&#xa0;: retirer d’abord celles-là.</translation>
    </message>
    <message>
        <source>A stamp has a sign: read plus or minus on the pack and enter it with the number.</source>
        <translation>Un marquage a un signe&#xa0;: lire plus ou moins sur le bloc et le saisir avec le nombre.</translation>
    </message>
    <message>
        <source>“{0}” asks for no such reading, or for it only once: look at its fields.</source>
        <translation>«&#xa0;{0}&#xa0;» ne demande pas cette mesure, ou une seule fois&#xa0;: regarder ses champs.</translation>
    </message>
    <message>
        <source>Nothing was entered: enter a reading, or leave the step open.</source>
        <translation>Rien n’a été saisi&#xa0;: saisir une mesure, ou laisser l’étape ouverte.</translation>
    </message>
    <message>
        <source>A completed teach-in has a value after it: read it and enter it.</source>
        <translation>Un apprentissage terminé laisse une valeur&#xa0;: la lire et la saisir.</translation>
    </message>
    <message>
        <source>Say why the teach-in broke off, with its code if it shows one.</source>
        <translation>Dire pourquoi l’apprentissage s’est interrompu, avec son code s’il en affiche un.</translation>
    </message>
    <message>
        <source>The tray of the {0} has no shim {1}: choose one of its sizes.</source>
        <translation>L’assortiment ({0}) n’a pas de cale {1}&#xa0;: choisir une de ses tailles.</translation>
    </message>
    <message>
        <source>The stamp on the new pack is needed: 0 is a value, blank is not.</source>
        <translation>Le marquage du bloc neuf est nécessaire&#xa0;: 0 est une valeur, vide n’en est pas une.</translation>
    </message>
    <message>
        <source>Depths at {0} places are needed, {1} are there: measure the others too.</source>
        <translation>Il faut des profondeurs à {0} endroits, il y en a {1}&#xa0;: mesurer aussi les autres.</translation>
    </message>
    <message>
        <source>{0} is not the shim that was advised: say why it is taken, or choose the advised one.</source>
        <translation>{0} n’est pas la cale conseillée&#xa0;: dire pourquoi elle est prise, ou choisir la conseillée.</translation>
    </message>
    <message>
        <source>“{0}” is not asked on this gearbox: its spec sheet finds the shim another way.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas demandé sur cette boîte&#xa0;: sa fiche technique trouve la cale autrement.</translation>
    </message>
    <message>
        <source>“{0}” comes first: answer it, or go on with a reason there.</source>
        <translation>«&#xa0;{0}&#xa0;» vient d’abord&#xa0;: y répondre, ou y continuer avec motif.</translation>
    </message>
    <message>
        <source>“{0}” is answered with {1}: answer it so.</source>
        <translation>Réponse à «&#xa0;{0}&#xa0;»&#xa0;: {1}. Répondre ainsi.</translation>
    </message>
    <message>
        <source>A reason is needed here: say it in a few words.</source>
        <translation>Il faut un motif ici&#xa0;: le dire en quelques mots.</translation>
    </message>
    <message>
        <source>Say which instrument read this: a {0} of the workshop&apos;s list.</source>
        <translation>Dire quel instrument a mesuré ceci ({0})&#xa0;: un de la liste de l’atelier.</translation>
    </message>
    <message>
        <source>{0} is a {1}, and this is read with a {2}: choose another.</source>
        <translation>{0}&#xa0;: c’est le type {1}, et ceci se mesure autrement ({2}). En choisir un autre.</translation>
    </message>
    <message>
        <source>{0} mm was read where about {1} mm was expected: a whole turn of the dial ({2} mm) may have been missed. Look at the turn counter and measure again, or confirm.</source>
        <translation>{0} mm ont été lus alors qu’environ {1} mm étaient attendus&#xa0;: un tour entier du comparateur ({2} mm) a pu être oublié. Regarder le compte-tours et mesurer à nouveau, ou confirmer.</translation>
    </message>
    <message>
        <source>The shim taken out measured {0} mm, this one has {1} mm: more than one step apart. Look at seating and parts again, or confirm.</source>
        <translation>La cale déposée mesurait {0} mm, celle-ci a {1} mm&#xa0;: plus d’un pas d’écart. Contrôler encore l’assise et les pièces, ou confirmer.</translation>
    </message>
    <message>
        <source>{0} mm is not the shim chosen ({1}, {2} mm). Measure the shim that lies on this bearing&apos;s place again, or confirm.</source>
        <translation>{0} mm n’est pas la cale choisie ({1}, {2} mm). Mesurer encore la cale posée à la place de cette butée, ou confirmer.</translation>
    </message>
    <message>
        <source>The stamp was read as {0} mm when the pack was unpacked and is {1} mm here. Read it on the pack again, or confirm.</source>
        <translation>Le marquage a été lu {0} mm au déballage du bloc et vaut {1} mm ici. Le relire sur le bloc, ou confirmer.</translation>
    </message>
    <message>
        <source>Job {0} left pack {1} in this vehicle; this one is {2}. Its floats as found are no wear of that pack. Read the serial again, or confirm.</source>
        <translation>L’intervention {0} a laissé le bloc {1} dans ce véhicule&#xa0;; celui-ci est {2}. Ses jeux à l’arrivée ne sont pas l’usure de ce bloc-là. Relire le numéro de série, ou confirmer.</translation>
    </message>
    <message>
        <source>Job {0} left this disc with {1} mm, now it has {2} mm: wear only adds. It may be another pack. Look at its serial, or confirm.</source>
        <translation>L’intervention {0} a laissé ce disque à {1} mm, il a maintenant {2} mm&#xa0;: l’usure ne fait qu’ajouter. C’est peut-être un autre bloc. Regarder son numéro de série, ou confirmer.</translation>
    </message>
    <message>
        <source>Both discs are off, opposite ways: the large and the small shim may lie in each other&apos;s place ({0} and {1} mm). Look at both when the pack is off, or confirm.</source>
        <translation>Les deux disques sont hors limites, en sens opposé&#xa0;: la grande et la petite cale sont peut-être interverties ({0} et {1} mm). Regarder les deux quand le bloc est déposé, ou confirmer.</translation>
    </message>
    <message>
        <source>{0} was typed without a decimal mark: was {1} meant? Enter it again, or confirm.</source>
        <translation>{0} a été saisi sans virgule&#xa0;: fallait-il {1}&#xa0;? Saisir à nouveau, ou confirmer.</translation>
    </message>
    <message>
        <source>This job is sealed: it takes addenda only, each signed by who writes it.</source>
        <translation>Cette intervention est scellée&#xa0;: elle n’accepte que des additifs, chacun signé par son auteur.</translation>
    </message>
    <message>
        <source>What was signed has no digest of its own: report this fault.</source>
        <translation>Ce qui a été signé n’a pas d’empreinte&#xa0;: signaler ce défaut.</translation>
    </message>
    <message>
        <source>A job is sealed by those who signed it: the technician, then the checker.</source>
        <translation>Une intervention est scellée par ceux qui l’ont signée&#xa0;: le technicien, puis le contrôleur.</translation>
    </message>
    <message>
        <source>This job is not sealed: enter it in the job itself.</source>
        <translation>Cette intervention n’est pas scellée&#xa0;: le saisir dans l’intervention même.</translation>
    </message>
    <message>
        <source>The addendum is empty: write what is to be added.</source>
        <translation>L’additif est vide&#xa0;: écrire ce qui est ajouté.</translation>
    </message>
    <message>
        <source>“{0}”: sign, or leave it out with a reason.</source>
        <translation>«&#xa0;{0}&#xa0;»&#xa0;: signer, ou laisser de côté avec motif.</translation>
    </message>
    <message>
        <source>“{0}” is a hold point: answer it, or go on with a reason there.</source>
        <translation>«&#xa0;{0}&#xa0;» est un point d’arrêt&#xa0;: y répondre, ou y continuer avec motif.</translation>
    </message>
    <message>
        <source>“{0}” was not done: the record says so.</source>
        <translation>«&#xa0;{0}&#xa0;» n’a pas été fait&#xa0;: le rapport le dit.</translation>
    </message>
    <message>
        <source>“{0}” is not as it should be: answer it anew, or say why it stays.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas comme il faut&#xa0;: répondre à nouveau, ou dire pourquoi cela reste.</translation>
    </message>
    <message>
        <source>“{0}” asks something: say yes to it, or enter it anew.</source>
        <translation>«&#xa0;{0}&#xa0;» pose une question&#xa0;: la confirmer, ou saisir à nouveau.</translation>
    </message>
    <message>
        <source>“{0}” may have moved while the job lay still: prove it again.</source>
        <translation>«&#xa0;{0}&#xa0;» a pu bouger pendant l’attente&#xa0;: le vérifier à nouveau.</translation>
    </message>
    <message>
        <source>These floats may be of another unit than the one taken ({0}). Enter them again with their unit, or confirm that they are right.</source>
        <translation>Ces jeux sont peut-être dans une autre unité que celle retenue ({0}). Les saisir à nouveau avec leur unité, ou confirmer qu’ils sont justes.</translation>
    </message>
    <message>
        <source>Not judged: the tray or an instrument has what nothing can be reckoned with, as two shims that measure alike, or an uncertainty or resolution of 0. Put it right in the workshop&apos;s lists, then measure once more.</source>
        <translation>Non évalué&#xa0;: l’assortiment ou un instrument a de quoi rendre tout calcul impossible, comme deux cales de même épaisseur, ou une incertitude ou une résolution de 0. Le corriger dans les listes de l’atelier, puis mesurer encore une fois.</translation>
    </message>
    <message>
        <source>This has {0} characters, at most {1} are kept: say it in fewer.</source>
        <translation>Ce texte a {0} caractères, {1} au plus sont conservés&#xa0;: l’écrire plus court.</translation>
    </message>
    <message>
        <source>There is a line break or another character in this that does not print: write it without.</source>
        <translation>Il y a là un saut de ligne ou un autre caractère qui ne s’imprime pas&#xa0;: l’écrire sans.</translation>
    </message>
</context>
<context>
    <name>json</name>
    <message>
        <source>This is nested too deeply to be stored; report this fault.</source>
        <translation>L’imbrication est trop profonde pour être enregistrée&#xa0;; signaler ce défaut.</translation>
    </message>
    <message>
        <source>Only whole numbers are stored here, in the smallest unit; report this fault.</source>
        <translation>Seuls des nombres entiers sont enregistrés ici, dans la plus petite unité&#xa0;; signaler ce défaut.</translation>
    </message>
    <message>
        <source>This number is too large to be stored exactly; report this fault.</source>
        <translation>Ce nombre est trop grand pour être enregistré exactement&#xa0;; signaler ce défaut.</translation>
    </message>
    <message>
        <source>This text is not UTF-8; enter it again.</source>
        <translation>Ce texte n’est pas en UTF-8&#xa0;; le saisir à nouveau.</translation>
    </message>
    <message>
        <source>A name of a field is not plain ASCII; report this fault.</source>
        <translation>Un nom de champ n’est pas en ASCII simple&#xa0;; signaler ce défaut.</translation>
    </message>
    <message>
        <source>An object in braces { } has to stand here.</source>
        <translation>Il faut ici un objet entre accolades { }.</translation>
    </message>
    <message>
        <source>This field is not known here; remove it or correct its name.</source>
        <translation>Ce champ n’est pas connu ici&#xa0;; l’enlever ou corriger son nom.</translation>
    </message>
    <message>
        <source>This field stands here twice; remove one of the two.</source>
        <translation>Ce champ est deux fois ici&#xa0;; enlever l’un des deux.</translation>
    </message>
    <message>
        <source>This field is missing; add it.</source>
        <translation>Ce champ manque&#xa0;; l’ajouter.</translation>
    </message>
    <message>
        <source>A text in quotation marks has to stand here.</source>
        <translation>Il faut ici un texte entre guillemets.</translation>
    </message>
    <message>
        <source>Either true or false has to stand here.</source>
        <translation>Il faut ici true ou false.</translation>
    </message>
    <message>
        <source>A whole number without quotation marks has to stand here.</source>
        <translation>Il faut ici un nombre entier sans guillemets.</translation>
    </message>
    <message>
        <source>A whole number from {0} to {1} has to stand here.</source>
        <translation>Il faut ici un nombre entier de {0} à {1}.</translation>
    </message>
    <message>
        <source>A list in brackets [ ] has to stand here.</source>
        <translation>Il faut ici une liste entre crochets [ ].</translation>
    </message>
    <message>
        <source>Line {0}, column {1}: lists and objects are nested too deeply; this is not a file of this program.</source>
        <translation>Ligne {0}, colonne {1}&#xa0;: listes et objets sont trop imbriqués&#xa0;; ce n’est pas un fichier de ce programme.</translation>
    </message>
    <message>
        <source>The text has {0} bytes, more than the {1} that are read; this is not a file of this program.</source>
        <translation>Le texte a {0} octets, plus que les {1} qui sont lus&#xa0;; ce n’est pas un fichier de ce programme.</translation>
    </message>
    <message>
        <source>Line {0}, column {1}: this backslash sequence is not allowed; correct it.</source>
        <translation>Ligne {0}, colonne {1}&#xa0;: cette suite avec barre inversée n’est pas permise&#xa0;; la corriger.</translation>
    </message>
    <message>
        <source>Line {0}, column {1}: a text is not closed; put the missing quotation mark at its end.</source>
        <translation>Ligne {0}, colonne {1}&#xa0;: un texte n’est pas fermé&#xa0;; mettre le guillemet manquant à sa fin.</translation>
    </message>
    <message>
        <source>Line {0}, column {1}: this character is not UTF-8; save the file as UTF-8.</source>
        <translation>Ligne {0}, colonne {1}&#xa0;: ce caractère n’est pas en UTF-8&#xa0;; enregistrer le fichier en UTF-8.</translation>
    </message>
    <message>
        <source>Line {0}, column {1}: a number is written wrongly; write it like 12 or -0.5, with a point.</source>
        <translation>Ligne {0}, colonne {1}&#xa0;: un nombre est mal écrit&#xa0;; l’écrire comme 12 ou -0.5, avec un point.</translation>
    </message>
    <message>
        <source>Line {0}, column {1}: the text ends too early; take a complete copy of it.</source>
        <translation>Ligne {0}, colonne {1}&#xa0;: le texte finit trop tôt&#xa0;; en prendre une copie complète.</translation>
    </message>
    <message>
        <source>Line {0}, column {1}: this does not belong here; correct the text so that it is JSON.</source>
        <translation>Ligne {0}, colonne {1}&#xa0;: ceci n’a pas sa place ici&#xa0;; corriger le texte pour qu’il soit du JSON.</translation>
    </message>
</context>
<context>
    <name>past</name>
    <message>
        <source>The printer does not take the pages. Look at the printer, or save the record as PDF.</source>
        <translation>L’imprimante ne prend pas les pages. La contrôler, ou enregistrer le rapport en PDF.</translation>
    </message>
    <message>
        <source>Record of job %1</source>
        <translation>Rapport de l’intervention %1</translation>
    </message>
    <message>
        <source>Save the record as PDF</source>
        <translation>Enregistrer le rapport en PDF</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Slip of job %1</source>
        <translation>Fiche de relève de l’intervention %1</translation>
    </message>
    <message>
        <source>Save the measurements</source>
        <translation>Enregistrer les mesures</translation>
    </message>
    <message>
        <source>Measurements (*.csv *.json)</source>
        <translation>Mesures (*.csv *.json)</translation>
    </message>
</context>
<context>
    <name>print</name>
    <message>
        <source>A font built into the program cannot be read; install the program anew.</source>
        <translation>Une police intégrée au programme ne peut pas être lue&#xa0;; réinstaller le programme.</translation>
    </message>
    <message>
        <source>The record cannot be written here ({0}); choose another folder or make room.</source>
        <translation>Le rapport ne peut pas être écrit ici ({0})&#xa0;; choisir un autre dossier ou faire de la place.</translation>
    </message>
    <message>
        <source>Something other than a PDF lies there and is not written over; choose another name.</source>
        <translation>Autre chose qu&apos;un PDF se trouve là et n&apos;est pas écrasé&#xa0;; choisissez un autre nom.</translation>
    </message>
</context>
<context>
    <name>quantity</name>
    <message>
        <source>This is not a number; type digits with at most one comma or point.</source>
        <translation>Ce n’est pas un nombre&#xa0;; taper des chiffres avec au plus une virgule ou un point.</translation>
    </message>
    <message>
        <source>The number is not finished; type the missing digits.</source>
        <translation>Le nombre n’est pas fini&#xa0;; taper les chiffres manquants.</translation>
    </message>
    <message>
        <source>Nothing is entered yet; type a number.</source>
        <translation>Rien n’est encore saisi&#xa0;; taper un nombre.</translation>
    </message>
    <message>
        <source>There are two decimal marks; type only one, and none between thousands.</source>
        <translation>Il y a deux signes décimaux&#xa0;; n’en taper qu’un, et aucun entre les milliers.</translation>
    </message>
    <message>
        <source>There is a space between the digits; type the number without it.</source>
        <translation>Il y a une espace entre les chiffres&#xa0;; taper le nombre sans elle.</translation>
    </message>
    <message>
        <source>This unit does not fit here; leave it out or type one of: {0}.</source>
        <translation>Cette unité ne convient pas ici&#xa0;; l’omettre ou en taper une de&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>Only a whole number fits here; leave out the decimals.</source>
        <translation>Seul un nombre entier convient ici&#xa0;; omettre les décimales.</translation>
    </message>
    <message>
        <source>That is finer than can be kept; in {0}, type no more decimals than {1}.</source>
        <translation>C’est plus fin que ce qui peut être enregistré&#xa0;; en {0}, taper au plus ce nombre de décimales&#xa0;: {1}.</translation>
    </message>
    <message>
        <source>The number has to be smaller than {0}; check the decimal mark.</source>
        <translation>Le nombre doit être plus petit que {0}&#xa0;; contrôler la virgule.</translation>
    </message>
    <message>
        <source>The number cannot be less than {0}; check the sign.</source>
        <translation>Le nombre ne peut pas être inférieur à {0}&#xa0;; contrôler le signe.</translation>
    </message>
</context>
<context>
    <name>record</name>
    <message>
        <source>In order / not in order, because ______________________________________</source>
        <translation>Conforme / non conforme, parce que ____________________________________</translation>
    </message>
    <message>
        <source>Further attempts ____________  ____________</source>
        <translation>Autres tentatives ____________  ____________</translation>
    </message>
    <message>
        <source>Number ____________________  batch ____________________</source>
        <translation>Numéro ____________________  lot ____________________</translation>
    </message>
    <message>
        <source>Shim taken ____________ mm</source>
        <translation>Cale prise ____________ mm</translation>
    </message>
    <message>
        <source>Spot {0}: rest ________ lifted ________ zero after ________</source>
        <translation>Point {0}&#xa0;: repos ________ levé ________ zéro après ________</translation>
    </message>
    <message>
        <source>, before</source>
        <translation>, avant</translation>
    </message>
    <message>
        <source>, after</source>
        <translation>, après</translation>
    </message>
    <message>
        <source>Name ______________________  time ______________  ______________________</source>
        <translation>Nom ______________________  heure ______________  ______________________</translation>
    </message>
    <message>
        <source> (hold point)</source>
        <translation> (point d’arrêt)</translation>
    </message>
    <message>
        <source>Caution: {0} {1}</source>
        <translation>Attention&#xa0;: {0} {1}</translation>
    </message>
    <message>
        <source>Job ______________</source>
        <translation>Intervention ______________</translation>
    </message>
    <message>
        <source>DEMONSTRATION VALUES</source>
        <translation>VALEURS DE DÉMONSTRATION</translation>
    </message>
    <message>
        <source>Vehicle number ______________________________  odometer ______________  gearbox ______________________</source>
        <translation>Numéro du véhicule ______________________________  kilométrage ______________  boîte ______________________</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fait</translation>
    </message>
    <message>
        <source>in order</source>
        <translation>conforme</translation>
    </message>
    <message>
        <source>not in order: {0}</source>
        <translation>non conforme&#xa0;: {0}</translation>
    </message>
    <message>
        <source>not required: {0}</source>
        <translation>non requis&#xa0;: {0}</translation>
    </message>
    <message>
        <source>parked, waits for {0}, due {1}</source>
        <translation>en attente de {0}, prévu le {1}</translation>
    </message>
    <message>
        <source>parked, waits for {0}</source>
        <translation>en attente de {0}</translation>
    </message>
    <message>
        <source>taken up</source>
        <translation>reprise</translation>
    </message>
    <message>
        <source>taken up; asked again: {0}</source>
        <translation>reprise&#xa0;; demandé à nouveau&#xa0;: {0}</translation>
    </message>
    <message>
        <source>handed over to {0}</source>
        <translation>transmise à {0}</translation>
    </message>
    <message>
        <source>note at “{0}”: {1}</source>
        <translation>note à «&#xa0;{0}&#xa0;»&#xa0;: {1}</translation>
    </message>
    <message>
        <source>note: {0}</source>
        <translation>note&#xa0;: {0}</translation>
    </message>
    <message>
        <source>large bearing&apos;s shim</source>
        <translation>cale de la grande butée</translation>
    </message>
    <message>
        <source>small bearing&apos;s shim</source>
        <translation>cale de la petite butée</translation>
    </message>
    <message>
        <source>no shim</source>
        <translation>aucune cale</translation>
    </message>
    <message>
        <source>pack off again, assembly {0} begun, to change: {1}; “{2}”</source>
        <translation>bloc déposé à nouveau, montage {0} commencé, à changer&#xa0;: {1}&#xa0;; «&#xa0;{2}&#xa0;»</translation>
    </message>
    <message>
        <source>“{0}”, asked: {1} Confirmed as it stands: “{2}”</source>
        <translation>«&#xa0;{0}&#xa0;», demandé&#xa0;: {1} Confirmé tel quel&#xa0;: «&#xa0;{2}&#xa0;»</translation>
    </message>
    <message>
        <source>{0}, assembly {1}</source>
        <translation>{0}, montage {1}</translation>
    </message>
    <message>
        <source>{0} to {1}</source>
        <translation>{0} à {1}</translation>
    </message>
    <message>
        <source>Answers; hold points in bold</source>
        <translation>Réponses&#xa0;; points d’arrêt en gras</translation>
    </message>
    <message>
        <source>One other step done or in order.</source>
        <translation>Une autre étape faite ou conforme.</translation>
    </message>
    <message>
        <source>{0} other steps done or in order.</source>
        <translation>{0} autres étapes faites ou conformes.</translation>
    </message>
    <message>
        <source>The clock had been set back before entry {0}; the order is that of the entries, not of the clock.</source>
        <translation>L’horloge avait été reculée avant l’entrée {0}&#xa0;; l’ordre est celui des entrées, non celui de l’horloge.</translation>
    </message>
    <message>
        <source>Course of the job</source>
        <translation>Déroulement de l’intervention</translation>
    </message>
    <message>
        <source>{0}{1} (entered by {2}), taken back by {3}: “{4}”.</source>
        <translation>{0}{1} (saisi par {2}), retiré par {3}&#xa0;: «&#xa0;{4}&#xa0;».</translation>
    </message>
    <message>
        <source>Taken back</source>
        <translation>Retiré</translation>
    </message>
    <message>
        <source>{0}: {1} ({2})</source>
        <translation>{0}&#xa0;: {1} ({2})</translation>
    </message>
    <message>
        <source>Values of the spec sheet worked to, nothing judged by them</source>
        <translation>Valeurs de travail de la fiche technique, rien n’est jugé d’après elles</translation>
    </message>
    <message>
        <source>{0}: {1}{2}, file {3}…</source>
        <translation>{0}&#xa0;: {1}{2}, fichier {3}…</translation>
    </message>
    <message>
        <source>Photos, kept with the job</source>
        <translation>Photos, gardées avec l’intervention</translation>
    </message>
    <message>
        <source>{0}: left out by {1}, “{2}”.</source>
        <translation>{0}&#xa0;: laissé de côté par {1}, «&#xa0;{2}&#xa0;».</translation>
    </message>
    <message>
        <source>{0}: accepted by {1}, “{2}”.</source>
        <translation>{0}&#xa0;: accepté par {1}, «&#xa0;{2}&#xa0;».</translation>
    </message>
    <message>
        <source>, assembly {0}</source>
        <translation>, montage {0}</translation>
    </message>
    <message>
        <source>{0} disc, assembly {1}, series {2}: trials and float did not agree ({3}). {4}</source>
        <translation>Disque ({0}), montage {1}, série {2}&#xa0;: les essais et le jeu ne s’accordaient pas ({3}). {4}</translation>
    </message>
    <message>
        <source>{0}: not measured, left out by {1}, “{2}”.</source>
        <translation>{0}&#xa0;: non mesuré, laissé de côté par {1}, «&#xa0;{2}&#xa0;».</translation>
    </message>
    <message>
        <source>{0}: not measured, not required: “{2}”, {1}.</source>
        <translation>{0}&#xa0;: non mesuré, non requis&#xa0;: «&#xa0;{2}&#xa0;», {1}.</translation>
    </message>
    <message>
        <source>Deviations</source>
        <translation>Dérogations</translation>
    </message>
    <message>
        <source>Trials against float</source>
        <translation>Essais contre jeu</translation>
    </message>
    <message>
        <source>Not measured</source>
        <translation>Non mesuré</translation>
    </message>
    <message>
        <source>No reason given: {0}.</source>
        <translation>Sans motif&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>So far: {0}.</source>
        <translation>Jusqu’ici&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>Job opened</source>
        <translation>Intervention ouverte</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fait</translation>
    </message>
    <message>
        <source>In order</source>
        <translation>Conforme</translation>
    </message>
    <message>
        <source>Not in order: {0}</source>
        <translation>Non conforme&#xa0;: {0}</translation>
    </message>
    <message>
        <source>{0}, number {1}, quantity {2} {3}</source>
        <translation>{0}, numéro {1}, quantité {2} {3}</translation>
    </message>
    <message>
        <source>Photo {0}</source>
        <translation>Photo {0}</translation>
    </message>
    <message>
        <source>Shim {0} {1}</source>
        <translation>Cale {0} {1}</translation>
    </message>
    <message>
        <source>Depths {0}, reference {1}</source>
        <translation>Profondeurs {0}, référence {1}</translation>
    </message>
    <message>
        <source>Stamp {0}</source>
        <translation>Marquage {0}</translation>
    </message>
    <message>
        <source>Spot {0}: rest {1}, lifted {2}</source>
        <translation>Point {0}&#xa0;: repos {1}, levé {2}</translation>
    </message>
    <message>
        <source>Zero after {0}</source>
        <translation>Zéro après {0}</translation>
    </message>
    <message>
        <source>Series {0} begun</source>
        <translation>Série {0} commencée</translation>
    </message>
    <message>
        <source>Confirmed as it stands: {0}</source>
        <translation>Confirmé ainsi&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Shim {0} chosen</source>
        <translation>Cale {0} choisie</translation>
    </message>
    <message>
        <source>Teach-in, attempt {0}</source>
        <translation>Apprentissage, tentative {0}</translation>
    </message>
    <message>
        <source>{0} before {1}</source>
        <translation>{0} avant {1}</translation>
    </message>
    <message>
        <source>{0} after {1}</source>
        <translation>{0} après {1}</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Signé</translation>
    </message>
    <message>
        <source>Deviation: {0}</source>
        <translation>Dérogation&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Not required: {0}</source>
        <translation>Non requis&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Note: {0}</source>
        <translation>Note&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Parked: {0}</source>
        <translation>En attente&#xa0;: {0}</translation>
    </message>
    <message>
        <source>Taken up</source>
        <translation>Reprise</translation>
    </message>
    <message>
        <source>Handed over to {0}</source>
        <translation>Transmise à {0}</translation>
    </message>
    <message>
        <source>Assembly {0} begun: {1}</source>
        <translation>Montage {0} commencé&#xa0;: {1}</translation>
    </message>
    <message>
        <source>{0} as found</source>
        <translation>{0} à l’arrivée</translation>
    </message>
    <message>
        <source>, seated again</source>
        <translation>, remise en place</translation>
    </message>
    <message>
        <source>, measured again</source>
        <translation>, mesuré à nouveau</translation>
    </message>
    <message>
        <source>, runs 1 to {0}</source>
        <translation>, relevés 1 à {0}</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>non mesuré</translation>
    </message>
    <message>
        <source>as before</source>
        <translation>comme avant</translation>
    </message>
    <message>
        <source>for information</source>
        <translation>pour information</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>non jugé</translation>
    </message>
    <message>
        <source>Disc, assembly</source>
        <translation>Disque, montage</translation>
    </message>
    <message>
        <source>Spot {0}</source>
        <translation>Point {0}</translation>
    </message>
    <message>
        <source>Spread</source>
        <translation>Dispersion</translation>
    </message>
    <message>
        <source>± (95 %)</source>
        <translation>± (95&#xa0;%)</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Verdict</translation>
    </message>
    <message>
        <source>Instrument, by, time</source>
        <translation>Instrument, par, heure</translation>
    </message>
    <message>
        <source>limits {0} to {1}, spread at most {2}</source>
        <translation>limites {0} à {1}, dispersion au plus {2}</translation>
    </message>
    <message>
        <source>Float, mm</source>
        <translation>Jeu, mm</translation>
    </message>
    <message>
        <source>lower {0}; upper {1}</source>
        <translation>inférieur {0}&#xa0;; supérieur {1}</translation>
    </message>
    <message>
        <source>not looked at</source>
        <translation>non regardé</translation>
    </message>
    <message>
        <source>Float, every run as entered, mm: rest to lifted (zero after)</source>
        <translation>Jeu, chaque relevé tel que saisi, mm&#xa0;: repos à levé (zéro après)</translation>
    </message>
    <message>
        <source>{0} disc, {1}</source>
        <translation>Disque ({0}), {1}</translation>
    </message>
    <message>
        <source>Entry {0} is missing; entry {1} stands in its place.</source>
        <translation>L’entrée {0} manque&#xa0;; l’entrée {1} est à sa place.</translation>
    </message>
    <message>
        <source>This entry does not follow the one before it; one of the two was changed after it was written.</source>
        <translation>Cette entrée ne suit pas la précédente&#xa0;; l’une des deux a été changée après coup.</translation>
    </message>
    <message>
        <source>This entry was changed after it was written.</source>
        <translation>Cette entrée a été changée après coup.</translation>
    </message>
    <message>
        <source>Clutch pack job record</source>
        <translation>Rapport d’intervention, bloc d’embrayage</translation>
    </message>
    <message>
        <source>Job {0}</source>
        <translation>Intervention {0}</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>non indiqué</translation>
    </message>
    <message>
        <source>erased</source>
        <translation>effacé</translation>
    </message>
    <message>
        <source>“{0}”</source>
        <translation>«&#xa0;{0}&#xa0;»</translation>
    </message>
    <message>
        <source>Chassis no.</source>
        <translation>N° de châssis</translation>
    </message>
    <message>
        <source>No VIN because</source>
        <translation>Pas de VIN, parce que</translation>
    </message>
    <message>
        <source>VIN</source>
        <translation>VIN</translation>
    </message>
    <message>
        <source>odometer not read</source>
        <translation>kilométrage non relevé</translation>
    </message>
    <message>
        <source>Plate, odometer</source>
        <translation>Immatriculation, kilométrage</translation>
    </message>
    <message>
        <source>unit {0}</source>
        <translation>boîte {0}</translation>
    </message>
    <message>
        <source>serial {0}</source>
        <translation>n° de série {0}</translation>
    </message>
    <message>
        <source>built {0}</source>
        <translation>construite {0}</translation>
    </message>
    <message>
        <source>Gearbox</source>
        <translation>Boîte</translation>
    </message>
    <message>
        <source>spec sheet {0}, issue {1}</source>
        <translation>fiche technique {0}, édition {1}</translation>
    </message>
    <message>
        <source>demonstration values</source>
        <translation>valeurs de démonstration</translation>
    </message>
    <message>
        <source>reference {0}</source>
        <translation>référence {0}</translation>
    </message>
    <message>
        <source>Received</source>
        <translation>Reçu</translation>
    </message>
    <message>
        <source>Complaint</source>
        <translation>Défaut signalé</translation>
    </message>
    <message>
        <source>Limits from</source>
        <translation>Limites de</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Résultat</translation>
    </message>
    <message>
        <source>below</source>
        <translation>ci-dessous</translation>
    </message>
    <message>
        <source>{0} · page {1} of {2}</source>
        <translation>{0} · page {1} sur {2}</translation>
    </message>
    <message>
        <source>equal</source>
        <translation>égal</translation>
    </message>
    <message>
        <source>attempt {0} of {1}</source>
        <translation>tentative {0} sur {1}</translation>
    </message>
    <message>
        <source>attempt {0}</source>
        <translation>tentative {0}</translation>
    </message>
    <message>
        <source>entered again below</source>
        <translation>saisi à nouveau ci-dessous</translation>
    </message>
    <message>
        <source> (calibration overdue)</source>
        <translation> (étalonnage en retard)</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Étape</translation>
    </message>
    <message>
        <source>Assembly</source>
        <translation>Montage</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Mesure</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Limite</translation>
    </message>
    <message>
        <source>Other readings</source>
        <translation>Autres mesures</translation>
    </message>
    <message>
        <source>Readings without a limit</source>
        <translation>Mesures sans limite</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Numéro</translation>
    </message>
    <message>
        <source>Batch or serial</source>
        <translation>Lot ou n° de série</translation>
    </message>
    <message>
        <source>By, time</source>
        <translation>Par, heure</translation>
    </message>
    <message>
        <source>Qty</source>
        <translation>Qté</translation>
    </message>
    <message>
        <source>Renewed</source>
        <translation>Remplacé</translation>
    </message>
    <message>
        <source>Attempt</source>
        <translation>Tentative</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valeur</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Avant</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Après</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>non relevé</translation>
    </message>
    <message>
        <source>completed</source>
        <translation>terminé</translation>
    </message>
    <message>
        <source>not completed</source>
        <translation>non terminé</translation>
    </message>
    <message>
        <source>Teach-in, every attempt</source>
        <translation>Apprentissage, chaque tentative</translation>
    </message>
    <message>
        <source>{0} disc free within limits at the {1} assembly.</source>
        <translation>Disque ({0}) libre dans les limites, {1} montage.</translation>
    </message>
    <message>
        <source>{0} disc free close to its limit at the {1} assembly.</source>
        <translation>Disque ({0}) libre près de sa limite, {1} montage.</translation>
    </message>
    <message>
        <source>{0} disc {1} at the {2} assembly, accepted with a reason, below.</source>
        <translation>Disque ({0}) {1}, {2} montage, accepté avec motif, ci-dessous.</translation>
    </message>
    <message>
        <source>{0} disc not free within limits at the {1} assembly: {2}.</source>
        <translation>Disque ({0}) non libre dans les limites, {1} montage&#xa0;: {2}.</translation>
    </message>
    <message>
        <source>{0} disc measured at the {1} assembly, not judged.</source>
        <translation>Disque ({0}) mesuré, {1} montage, non jugé.</translation>
    </message>
    <message>
        <source>Float of the {0} disc not measured.</source>
        <translation>Jeu non mesuré&#xa0;: disque {0}.</translation>
    </message>
    <message>
        <source>lower</source>
        <translation>inférieur</translation>
    </message>
    <message>
        <source>upper</source>
        <translation>supérieur</translation>
    </message>
    <message>
        <source>Both discs free within limits at the {0} assembly.</source>
        <translation>Les deux disques libres dans les limites, {0} montage.</translation>
    </message>
    <message>
        <source>Large bearing shim {0}, small bearing shim {1}.</source>
        <translation>Cale de la grande butée {0}, de la petite butée {1}.</translation>
    </message>
    <message>
        <source>Large bearing shim {0}.</source>
        <translation>Cale de la grande butée {0}.</translation>
    </message>
    <message>
        <source>No shim on record for the large bearing.</source>
        <translation>Aucune cale notée pour la grande butée.</translation>
    </message>
    <message>
        <source>Small bearing shim {0}.</source>
        <translation>Cale de la petite butée {0}.</translation>
    </message>
    <message>
        <source>No shim on record for the small bearing.</source>
        <translation>Aucune cale notée pour la petite butée.</translation>
    </message>
    <message>
        <source>Teach-in completed, road test passed.</source>
        <translation>Apprentissage terminé, essai sur route réussi.</translation>
    </message>
    <message>
        <source>Teach-in completed.</source>
        <translation>Apprentissage terminé.</translation>
    </message>
    <message>
        <source>Teach-in not done.</source>
        <translation>Apprentissage non fait.</translation>
    </message>
    <message>
        <source>Teach-in not completed.</source>
        <translation>Apprentissage non terminé.</translation>
    </message>
    <message>
        <source>Road test passed.</source>
        <translation>Essai sur route réussi.</translation>
    </message>
    <message>
        <source>Road test not passed.</source>
        <translation>Essai sur route non réussi.</translation>
    </message>
    <message>
        <source>Road test not done.</source>
        <translation>Essai sur route non fait.</translation>
    </message>
    <message>
        <source>No deviation.</source>
        <translation>Aucune dérogation.</translation>
    </message>
    <message>
        <source>One deviation, below.</source>
        <translation>Une dérogation, ci-dessous.</translation>
    </message>
    <message>
        <source>{0} deviations, below.</source>
        <translation>{0} dérogations, ci-dessous.</translation>
    </message>
    <message>
        <source>This job was never opened.</source>
        <translation>Cette intervention n’a jamais été ouverte.</translation>
    </message>
    <message>
        <source>Open job: not finished; next is “{0}”.</source>
        <translation>Intervention ouverte&#xa0;: non clôturée&#xa0;; ensuite «&#xa0;{0}&#xa0;».</translation>
    </message>
    <message>
        <source>Open job: not finished.</source>
        <translation>Intervention ouverte&#xa0;: non clôturée.</translation>
    </message>
    <message>
        <source>by depth, details below</source>
        <translation>par profondeurs, détails ci-dessous</translation>
    </message>
    <message>
        <source>by depth, measured {0} times, details below</source>
        <translation>par profondeurs, mesuré {0} fois, détails ci-dessous</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>aucune choisie</translation>
    </message>
    <message>
        <source>chosen on the gauge trials</source>
        <translation>choisie d’après les essais au calibre</translation>
    </message>
    <message>
        <source>chosen on the depths</source>
        <translation>choisie d’après les profondeurs</translation>
    </message>
    <message>
        <source>chosen on the float</source>
        <translation>choisie d’après le jeu</translation>
    </message>
    <message>
        <source>chosen by hand</source>
        <translation>choisie à la main</translation>
    </message>
    <message>
        <source>{0} bearing, assembly {1}: shim {2}, in the tray {3} mm, {4}, {5}.</source>
        <translation>{0} butée, montage {1}&#xa0;: cale {2}, dans l’assortiment {3} mm, {4}, {5}.</translation>
    </message>
    <message>
        <source>Chance that it is the best fitting one: {0} %.</source>
        <translation>Probabilité qu’elle convienne le mieux&#xa0;: {0}&#xa0;%.</translation>
    </message>
    <message>
        <source>Reason: “{0}”.</source>
        <translation>Motif&#xa0;: «&#xa0;{0}&#xa0;».</translation>
    </message>
    <message>
        <source>Advice then: {0}</source>
        <translation>Conseil d’alors&#xa0;: {0}</translation>
    </message>
    <message>
        <source>{0} bearing, assembly {1}: depths {2}; reference {3}; {4}; {5}.</source>
        <translation>{0} butée, montage {1}&#xa0;: profondeurs {2}&#xa0;; référence {3}&#xa0;; {4}&#xa0;; {5}.</translation>
    </message>
    <message>
        <source>stamp on the pack {0}</source>
        <translation>marquage du bloc {0}</translation>
    </message>
    <message>
        <source>no stamp used</source>
        <translation>aucun marquage utilisé</translation>
    </message>
    <message>
        <source>Bearing</source>
        <translation>Butée</translation>
    </message>
    <message>
        <source>Trials, in order</source>
        <translation>Essais, dans l’ordre</translation>
    </message>
    <message>
        <source>Fitted</source>
        <translation>Posée</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Mesurée</translation>
    </message>
    <message>
        <source>Taken out of the vehicle</source>
        <translation>Déposée du véhicule</translation>
    </message>
    <message>
        <source>Shims, mm</source>
        <translation>Cales, mm</translation>
    </message>
    <message>
        <source>How the shims were found</source>
        <translation>Comment les cales ont été trouvées</translation>
    </message>
    <message>
        <source>not sealed:</source>
        <translation>non scellé&#xa0;:</translation>
    </message>
    <message>
        <source>draft</source>
        <translation>brouillon</translation>
    </message>
    <message>
        <source>Not sealed: a draft that may still change.</source>
        <translation>Non scellé&#xa0;: un brouillon qui peut encore changer.</translation>
    </message>
    <message>
        <source>Limits and values are demonstration values: never work to them on a vehicle; the vehicle maker&apos;s service information and local rules hold.</source>
        <translation>Limites et valeurs sont des valeurs de démonstration&#xa0;: ne jamais travailler d’après elles sur un véhicule&#xa0;; les informations de service du constructeur et les règles locales font foi.</translation>
    </message>
    <message>
        <source>The vehicle maker&apos;s service information and local rules hold.</source>
        <translation>Les informations de service du constructeur et les règles locales font foi.</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Client</translation>
    </message>
    <message>
        <source>after the trials {0}</source>
        <translation>après les essais {0}</translation>
    </message>
    <message>
        <source>from the depths {0}</source>
        <translation>des profondeurs {0}</translation>
    </message>
    <message>
        <source>without trials or depths</source>
        <translation>sans essais ni profondeurs</translation>
    </message>
    <message>
        <source>{0} bearing, assembly {1}</source>
        <translation>{0} butée, montage {1}</translation>
    </message>
    <message>
        <source>{0}: no shim chosen yet, {1}.</source>
        <translation>{0}&#xa0;: aucune cale encore choisie, {1}.</translation>
    </message>
    <message>
        <source>{0}: shim {1}, {2}.</source>
        <translation>{0}&#xa0;: cale {1}, {2}.</translation>
    </message>
    <message>
        <source>Reason given: “{0}”.</source>
        <translation>Motif donné&#xa0;: «&#xa0;{0}&#xa0;».</translation>
    </message>
    <message>
        <source>{0} disc as found</source>
        <translation>Disque ({0}) à l’arrivée</translation>
    </message>
    <message>
        <source>{0} disc, assembly {1}, series {2}</source>
        <translation>Disque ({0}), montage {1}, série {2}</translation>
    </message>
    <message>
        <source>{0}: float not judged.</source>
        <translation>{0}&#xa0;: jeu non jugé.</translation>
    </message>
    <message>
        <source>{0}: mean float {1} mm</source>
        <translation>{0}&#xa0;: jeu moyen {1} mm</translation>
    </message>
    <message>
        <source>Deviation at “{0}”: “{1}”.</source>
        <translation>Dérogation à «&#xa0;{0}&#xa0;»&#xa0;: «&#xa0;{1}&#xa0;».</translation>
    </message>
    <message>
        <source>Not measured: {0}.</source>
        <translation>Non mesuré&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>Limits and values are demonstration values.</source>
        <translation>Limites et valeurs sont des valeurs de démonstration.</translation>
    </message>
    <message>
        <source>Jan</source>
        <translation>janv.</translation>
    </message>
    <message>
        <source>Feb</source>
        <translation>févr.</translation>
    </message>
    <message>
        <source>Mar</source>
        <translation>mars</translation>
    </message>
    <message>
        <source>Apr</source>
        <translation>avr.</translation>
    </message>
    <message>
        <source>May</source>
        <translation>mai</translation>
    </message>
    <message>
        <source>Jun</source>
        <translation>juin</translation>
    </message>
    <message>
        <source>Jul</source>
        <translation>juil.</translation>
    </message>
    <message>
        <source>Aug</source>
        <translation>août</translation>
    </message>
    <message>
        <source>Sep</source>
        <translation>sept.</translation>
    </message>
    <message>
        <source>Oct</source>
        <translation>oct.</translation>
    </message>
    <message>
        <source>Nov</source>
        <translation>nov.</translation>
    </message>
    <message>
        <source>Dec</source>
        <translation>déc.</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>sans limite</translation>
    </message>
    <message>
        <source>within</source>
        <translation>dans les limites</translation>
    </message>
    <message>
        <source>too small</source>
        <translation>trop petit</translation>
    </message>
    <message>
        <source>too large</source>
        <translation>trop grand</translation>
    </message>
    <message>
        <source>on limit</source>
        <translation>à la limite</translation>
    </message>
    <message>
        <source>not equal</source>
        <translation>inégal</translation>
    </message>
    <message>
        <source>tight</source>
        <translation>serré</translation>
    </message>
    <message>
        <source>snug</source>
        <translation>ajusté</translation>
    </message>
    <message>
        <source>loose</source>
        <translation>libre</translation>
    </message>
    <message>
        <source>Large</source>
        <translation>Grande</translation>
    </message>
    <message>
        <source>Small</source>
        <translation>Petite</translation>
    </message>
    <message>
        <source>Lower</source>
        <translation>Inférieur</translation>
    </message>
    <message>
        <source>Upper</source>
        <translation>Supérieur</translation>
    </message>
    <message>
        <source>first</source>
        <translation>premier</translation>
    </message>
    <message>
        <source>second</source>
        <translation>deuxième</translation>
    </message>
    <message>
        <source>third</source>
        <translation>troisième</translation>
    </message>
    <message>
        <source>fourth</source>
        <translation>quatrième</translation>
    </message>
    <message>
        <source>fifth</source>
        <translation>cinquième</translation>
    </message>
    <message>
        <source>no. {0}</source>
        <translation>n° {0}</translation>
    </message>
    <message>
        <source>Technician</source>
        <translation>Technicien</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation>Contrôlé par</translation>
    </message>
    <message>
        <source>at most {0}</source>
        <translation>au plus {0}</translation>
    </message>
    <message>
        <source>at least {0}</source>
        <translation>au moins {0}</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>mixte</translation>
    </message>
    <message>
        <source>{0}. {1}, {2}, {3}.</source>
        <translation>{0}. {1}, {2}, {3}.</translation>
    </message>
    <message>
        <source>Reason: </source>
        <translation>Motif&#xa0;: </translation>
    </message>
    <message>
        <source>Signed, seal </source>
        <translation>Signé, sceau </translation>
    </message>
    <message>
        <source>Addenda, after the sealed record</source>
        <translation>Additifs, après le rapport scellé</translation>
    </message>
    <message>
        <source>Shim ________ tight / snug / loose · Shim ________ tight / snug / loose</source>
        <translation>Cale ________ serré / ajusté / libre · Cale ________ serré / ajusté / libre</translation>
    </message>
    <message>
        <source>Depths ____________  ____________ mm · reference ____________ mm</source>
        <translation>Profondeurs ____________  ____________ mm · référence ____________ mm</translation>
    </message>
    <message>
        <source>Stamp, with its sign ____________ mm · shim taken ____________ mm</source>
        <translation>Marquage, avec son signe ____________ mm · cale prise ____________ mm</translation>
    </message>
    <message>
        <source>Attempts ______ · code and reason of an abort ____________________</source>
        <translation>Tentatives ______ · code et motif d’une interruption ____________________</translation>
    </message>
    <message>
        <source>Sealed</source>
        <translation>Scellé</translation>
    </message>
    <message>
        <source>Addendum: {0}</source>
        <translation>Additif&#xa0;: {0}</translation>
    </message>
    <message>
        <source> · reprint</source>
        <translation> · réimpression</translation>
    </message>
    <message>
        <source>The PIN was wrong {0} times: try again in {1} seconds; nothing is lost.</source>
        <translation>Le code PIN était faux {0} fois&#xa0;: réessayer dans {1} secondes&#xa0;; rien n’est perdu.</translation>
    </message>
    <message>
        <source>What was signed is not in the form this program writes: it was changed.</source>
        <translation>Ce qui a été signé n’a pas la forme que ce programme écrit&#xa0;: il a été changé.</translation>
    </message>
    <message>
        <source>This is no code of a sealed record of this program.</source>
        <translation>Ce n’est pas un code d’un rapport scellé de ce programme.</translation>
    </message>
    <message>
        <source>This code is not as it was printed: it was changed.</source>
        <translation>Ce code n’est pas comme il a été imprimé&#xa0;: il a été changé.</translation>
    </message>
    <message>
        <source>This is no seal as it is printed: compare it symbol by symbol.</source>
        <translation>Ce n’est pas un sceau tel qu’imprimé&#xa0;: le comparer signe par signe.</translation>
    </message>
    <message>
        <source>Reprint: printed again after it was sealed.</source>
        <translation>Réimpression&#xa0;: imprimé à nouveau après le scellement.</translation>
    </message>
    <message>
        <source>One addendum stands at the end.</source>
        <translation>Un additif se trouve à la fin.</translation>
    </message>
    <message>
        <source>{0} addenda stand at the end.</source>
        <translation>{0} additifs se trouvent à la fin.</translation>
    </message>
    <message>
        <source>Sealed {0} as</source>
        <translation>Scellé {0} comme</translation>
    </message>
    <message>
        <source>This is no signed record of this program, or its beginning was changed.</source>
        <translation>Ce n’est pas un rapport signé de ce programme, ou son début a été changé.</translation>
    </message>
    <message>
        <source>This signed record was written by a newer program: check it with that.</source>
        <translation>Ce rapport signé vient d’un programme plus récent&#xa0;: le vérifier avec celui-ci.</translation>
    </message>
    <message>
        <source>This file is not byte for byte as it was written: it was changed.</source>
        <translation>Ce fichier n’est pas octet pour octet tel qu’il a été écrit&#xa0;: il a été changé.</translation>
    </message>
    <message>
        <source>This was changed after it was signed.</source>
        <translation>Ceci a été changé après la signature.</translation>
    </message>
    <message>
        <source>This is whole, but signed with a key that is not known here.</source>
        <translation>Ceci est intact, mais signé avec une clé qui n’est pas connue ici.</translation>
    </message>
    <message>
        <source>This is whole, but signed with a key that was no longer valid, from {0} on.</source>
        <translation>Ceci est intact, mais signé avec une clé qui n’était plus valable, à partir de {0}.</translation>
    </message>
    <message>
        <source>There is too little memory to look at the PIN: close other programs.</source>
        <translation>Il y a trop peu de mémoire pour vérifier le code PIN&#xa0;: fermer d’autres programmes.</translation>
    </message>
    <message>
        <source>The key of this person is damaged: check the store, or make a new key.</source>
        <translation>La clé de cette personne est abîmée&#xa0;: contrôler la base, ou faire une nouvelle clé.</translation>
    </message>
    <message>
        <source>A PIN has 4 to 12 digits and nothing else.</source>
        <translation>Un code PIN a de 4 à 12 chiffres et rien d’autre.</translation>
    </message>
    <message>
        <source>This is not the PIN of this person: type it again.</source>
        <translation>Ce n’est pas le code PIN de cette personne&#xa0;: le taper à nouveau.</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation>non testé</translation>
    </message>
    <message>
        <source> to </source>
        <translation> à </translation>
    </message>
    <message>
        <source>, overdue</source>
        <translation>, en retard</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrument</translation>
    </message>
    <message>
        <source>Resolution</source>
        <translation>Résolution</translation>
    </message>
    <message>
        <source>Permissible error</source>
        <translation>Erreur admise</translation>
    </message>
    <message>
        <source>Repeatability</source>
        <translation>Répétabilité</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation>Étalonné</translation>
    </message>
    <message>
        <source>Instruments as they were</source>
        <translation>Instruments tels qu’ils étaient</translation>
    </message>
    <message>
        <source>Spec sheet</source>
        <translation>Fiche technique</translation>
    </message>
    <message>
        <source>{0}, issue {1}</source>
        <translation>{0}, édition {1}</translation>
    </message>
    <message>
        <source>Odometer</source>
        <translation>Kilométrage</translation>
    </message>
    <message>
        <source>Shim fitted, {0}</source>
        <translation>Cale montée, {0}</translation>
    </message>
    <message>
        <source>Float as found, {0}, spot {1}</source>
        <translation>Jeu à l’arrivée, {0}, point {1}</translation>
    </message>
    <message>
        <source>Float, {0}, spot {1}</source>
        <translation>Jeu, {0}, point {1}</translation>
    </message>
    <message>
        <source>Float as found, {0}, mean</source>
        <translation>Jeu à l’arrivée, {0}, moyenne</translation>
    </message>
    <message>
        <source>Float, {0}, mean</source>
        <translation>Jeu, {0}, moyenne</translation>
    </message>
    <message>
        <source>Depth, {0}: {1}</source>
        <translation>Profondeur, {0}&#xa0;: {1}</translation>
    </message>
    <message>
        <source>{0}: {1}, before</source>
        <translation>{0}&#xa0;: {1}, avant</translation>
    </message>
    <message>
        <source>{0} of {1}, batch {2}</source>
        <translation>{0} de {1}, lot {2}</translation>
    </message>
    <message>
        <source>Its file is missing or was changed, and is not shown.</source>
        <translation>Son fichier manque ou a été modifié, et n’est pas montré.</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
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
        <translation>Terminé&#xa0;: il ne reste qu’à sceller le rapport.</translation>
    </message>
    <message>
        <source>In work.</source>
        <translation>En cours.</translation>
    </message>
    <message>
        <source>Parked, waiting for {0}.</source>
        <translation>En attente de {0}.</translation>
    </message>
    <message>
        <source>Parked, waiting for {0}, due {1}.</source>
        <translation>En attente de {0}, prévu le {1}.</translation>
    </message>
    <message>
        <source>At the bench: {0}.</source>
        <translation>À l’établi&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>Last: {0}</source>
        <translation>Dernière entrée&#xa0;: {0}</translation>
    </message>
    <message>
        <source>{0}: {1}{2}</source>
        <translation>{0}&#xa0;: {1}{2}</translation>
    </message>
    <message>
        <source>no shim chosen</source>
        <translation>aucune cale choisie</translation>
    </message>
    <message>
        <source>shim {0}</source>
        <translation>cale {0}</translation>
    </message>
    <message>
        <source>float not measured yet</source>
        <translation>jeu pas encore mesuré</translation>
    </message>
    <message>
        <source>float {0}</source>
        <translation>jeu {0}</translation>
    </message>
    <message>
        <source>{0} bearing, {1} disc: {2}, {3}</source>
        <translation>{0} butée, {1} disque&#xa0;: {2}, {3}</translation>
    </message>
    <message>
        <source>Next shift</source>
        <translation>Équipe suivante</translation>
    </message>
    <message>
        <source>gearbox {0}</source>
        <translation>boîte {0}</translation>
    </message>
    <message>
        <source>assembly {0}</source>
        <translation>montage {0}</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Ensuite</translation>
    </message>
    <message>
        <source>Look again first: it may have moved</source>
        <translation>Vérifier d’abord&#xa0;: cela a pu bouger</translation>
    </message>
    <message>
        <source>To decide</source>
        <translation>À décider</translation>
    </message>
    <message>
        <source>How it stands</source>
        <translation>Où cela en est</translation>
    </message>
    <message>
        <source>In the gearbox now</source>
        <translation>Dans la boîte à présent</translation>
    </message>
    <message>
        <source>Parts still to renew</source>
        <translation>Pièces encore à remplacer</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notes</translation>
    </message>
    <message>
        <source>This slip is no record: what counts stands in the job. Read the cautions of a step there before going on.</source>
        <translation>Cette fiche n’est pas un rapport&#xa0;: ce qui vaut est dans l’intervention. Y lire les mises en garde de l’étape avant de continuer.</translation>
    </message>
    <message>
        <source>Pack {0}, {1}: {2} mm final in job {3}, {4} mm as found in job {5} after {6} km.</source>
        <translation>Bloc {0}, {1}&#xa0;: {2} mm à la fin de l’intervention {3}, {4} mm à l’arrivée de l’intervention {5}, après {6} km.</translation>
    </message>
    <message>
        <source>Pack {0}, {1}: {2} mm final in job {3}, {4} mm as found in job {5}; over which distance is not known.</source>
        <translation>Bloc {0}, {1}&#xa0;: {2} mm à la fin de l’intervention {3}, {4} mm à l’arrivée de l’intervention {5}&#xa0;; la distance n’est pas connue.</translation>
    </message>
    <message>
        <source>How uncertain both were was not kept, so nothing is said of the difference.</source>
        <translation>L’incertitude des deux n’a pas été enregistrée&#xa0;; rien n’est dit de la différence.</translation>
    </message>
    <message>
        <source>The difference of {0} mm cannot be told apart from none: it is known to ± {1} mm (95 %).</source>
        <translation>La différence de {0} mm ne se distingue pas de zéro&#xa0;: elle est connue à ± {1} mm (95 %).</translation>
    </message>
    <message>
        <source>That is {0} mm more, ± {1} mm (95 %).</source>
        <translation>C’est {0} mm de plus, ± {1} mm (95 %).</translation>
    </message>
    <message>
        <source>That is {0} mm less, ± {1} mm (95 %). Wear only adds: look at the serial and at both measurements.</source>
        <translation>C’est {0} mm de moins, ± {1} mm (95 %). L’usure ne fait qu’augmenter&#xa0;: regarder le numéro de série et les deux mesures.</translation>
    </message>
    <message>
        <source> · the seal does not hold</source>
        <translation> · le sceau ne tient pas</translation>
    </message>
    <message>
        <source> · sealed with a key not known here</source>
        <translation> · scellé avec une clé inconnue ici</translation>
    </message>
    <message>
        <source>Finished and sealed: nothing is left to do.</source>
        <translation>Terminé et scellé&#xa0;: il ne reste rien à faire.</translation>
    </message>
    <message>
        <source>The seal of {0} does not hold: changed after it was signed: {1}.</source>
        <translation>Le sceau du {0} ne tient pas&#xa0;: changé après la signature&#xa0;: {1}.</translation>
    </message>
    <message>
        <source>The key of {0} is not known here, or was no longer valid then.</source>
        <translation>La clé de {0} n’est pas connue ici, ou n’était plus valable alors.</translation>
    </message>
    <message>
        <source>the seal</source>
        <translation>le sceau</translation>
    </message>
    <message>
        <source>does not hold</source>
        <translation>ne tient pas</translation>
    </message>
    <message>
        <source>Two signatures are of one person or one key: a seal is of two.</source>
        <translation>Deux signatures sont d’une même personne ou d’une même clé&#xa0;: un sceau est de deux.</translation>
    </message>
</context>
<context>
    <name>sheet</name>
    <message>
        <source>&apos;{0}&apos; is not known here; write one of: {1}.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas connu ici&#xa0;; écrire l’un de&#xa0;: {1}.</translation>
    </message>
    <message>
        <source>&apos;{0}&apos; cannot be a name here; use 1 to 40 small letters, digits and hyphens.</source>
        <translation>«&#xa0;{0}&#xa0;» ne peut pas être un nom ici&#xa0;; utiliser de 1 à 40 minuscules, chiffres et traits d’union.</translation>
    </message>
    <message>
        <source>&apos;{0}&apos; is no UUID; write one in small letters, like 0198f0c0-5a00-7a11-8d01-0000000000aa.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas un UUID&#xa0;; en écrire un en minuscules, comme 0198f0c0-5a00-7a11-8d01-0000000000aa.</translation>
    </message>
    <message>
        <source>The list has {0} entries, at least {1} are needed; add what is missing.</source>
        <translation>La liste a {0} entrées, il en faut au moins {1}&#xa0;; ajouter ce qui manque.</translation>
    </message>
    <message>
        <source>The list has {0} entries, at most {1} are read; shorten it.</source>
        <translation>La liste a {0} entrées, au plus {1} sont lues&#xa0;; la raccourcir.</translation>
    </message>
    <message>
        <source>This file is a &apos;{0}&apos;, not a &apos;{1}&apos;; choose another file.</source>
        <translation>Ce fichier est un «&#xa0;{0}&#xa0;», pas un «&#xa0;{1}&#xa0;»&#xa0;; choisir un autre fichier.</translation>
    </message>
    <message>
        <source>This file was made for a newer version of the program; update the program.</source>
        <translation>Ce fichier est fait pour une version plus récente du programme&#xa0;; mettre le programme à jour.</translation>
    </message>
    <message>
        <source>The step is judged by the limit &apos;{0}&apos;, which the spec sheet {1}, issue {2}, does not have; add it there.</source>
        <translation>L’étape est jugée par la limite «&#xa0;{0}&#xa0;», que la fiche technique {1}, édition {2}, n’a pas&#xa0;; l’y ajouter.</translation>
    </message>
    <message>
        <source>The limit &apos;{0}&apos; of the spec sheet {1}, issue {2}, is in another kind of unit than this step reads; correct one of the two.</source>
        <translation>La limite «&#xa0;{0}&#xa0;» de la fiche technique {1}, édition {2}, est d’un autre type d’unité que ce que cette étape mesure&#xa0;; corriger l’une des deux.</translation>
    </message>
    <message>
        <source>The limit &apos;{0}&apos; of the spec sheet {1}, issue {2}, counts attempts and needs a &apos;most&apos; of 1 or more; correct it there.</source>
        <translation>La limite «&#xa0;{0}&#xa0;» de la fiche technique {1}, édition {2}, compte des tentatives et a besoin d’un «&#xa0;most&#xa0;» de 1 ou plus&#xa0;; la corriger là.</translation>
    </message>
    <message>
        <source>The step needs the part &apos;{0}&apos;, which the spec sheet {1}, issue {2}, does not list; add it there.</source>
        <translation>L’étape a besoin de la pièce «&#xa0;{0}&#xa0;», que la fiche technique {1}, édition {2}, ne liste pas&#xa0;; l’y ajouter.</translation>
    </message>
    <message>
        <source>The spec sheet {0}, issue {1}, finds this shim by {2}, and the job sheet only by {3}; choose another of the two.</source>
        <translation>La fiche technique {0}, édition {1}, trouve cette cale par {2}, et la fiche de travail seulement par {3}&#xa0;; changer l’une des deux.</translation>
    </message>
    <message>
        <source>The upper limit has to be larger than the lower one; correct the two.</source>
        <translation>La limite supérieure doit être plus grande que l’inférieure&#xa0;; corriger les deux.</translation>
    </message>
    <message>
        <source>The target lies outside the limits; correct it, or write null for the middle.</source>
        <translation>La cible est hors des limites&#xa0;; la corriger, ou écrire null pour le milieu.</translation>
    </message>
    <message>
        <source>An angle from 0 to below 360 in quotation marks has to stand here, like &quot;120&quot;.</source>
        <translation>Il faut ici un angle de 0 à moins de 360 entre guillemets, comme &quot;120&quot;.</translation>
    </message>
    <message>
        <source>The angle {0} stands here twice; each spot needs its own.</source>
        <translation>L’angle {0} est deux fois ici&#xa0;; chaque point a besoin du sien.</translation>
    </message>
    <message>
        <source>The step &apos;{0}&apos; needs a side, lower or upper; add it.</source>
        <translation>L’étape «&#xa0;{0}&#xa0;» a besoin d’un côté, lower ou upper&#xa0;; l’ajouter.</translation>
    </message>
    <message>
        <source>The role &apos;{0}&apos; is for a step of the kind &apos;check&apos; or &apos;choose&apos;; correct role or kind.</source>
        <translation>Le rôle «&#xa0;{0}&#xa0;» est pour une étape du type «&#xa0;check&#xa0;» ou «&#xa0;choose&#xa0;»&#xa0;; corriger le rôle ou le type.</translation>
    </message>
    <message>
        <source>The role &apos;{0}&apos; is for a step of the kind &apos;text&apos;; correct role or kind.</source>
        <translation>Le rôle «&#xa0;{0}&#xa0;» est pour une étape du type «&#xa0;text&#xa0;»&#xa0;; corriger le rôle ou le type.</translation>
    </message>
    <message>
        <source>The role &apos;{0}&apos; is for a step of the kind &apos;read&apos; with a length named &apos;{1}&apos;; add that channel.</source>
        <translation>Le rôle «&#xa0;{0}&#xa0;» est pour une étape du type «&#xa0;read&#xa0;» avec une longueur nommée «&#xa0;{1}&#xa0;»&#xa0;; ajouter ce canal.</translation>
    </message>
    <message>
        <source>A step of the kind &apos;{0}&apos; cannot be only for &apos;{1}&apos;; correct one of the two.</source>
        <translation>Une étape du type «&#xa0;{0}&#xa0;» ne peut pas être seulement pour «&#xa0;{1}&#xa0;»&#xa0;; corriger l’un des deux.</translation>
    </message>
    <message>
        <source>There is no step &apos;{0}&apos; in this sheet; correct the name.</source>
        <translation>Il n’y a pas d’étape «&#xa0;{0}&#xa0;» dans cette fiche&#xa0;; corriger le nom.</translation>
    </message>
    <message>
        <source>The step &apos;{0}&apos; does not come after this one; name a later step.</source>
        <translation>L’étape «&#xa0;{0}&#xa0;» ne vient pas après celle-ci&#xa0;; nommer une étape suivante.</translation>
    </message>
    <message>
        <source>The step &apos;{0}&apos; reads no &apos;{1}&apos;; correct the name.</source>
        <translation>L’étape «&#xa0;{0}&#xa0;» ne mesure pas de «&#xa0;{1}&#xa0;»&#xa0;; corriger le nom.</translation>
    </message>
    <message>
        <source>The step &apos;{0}&apos; does not come before this one; name an earlier step.</source>
        <translation>L’étape «&#xa0;{0}&#xa0;» ne vient pas avant celle-ci&#xa0;; nommer une étape précédente.</translation>
    </message>
    <message>
        <source>&apos;{0}&apos; of the step &apos;{1}&apos; is read in another kind of unit; the two cannot be equal.</source>
        <translation>«&#xa0;{0}&#xa0;» de l’étape «&#xa0;{1}&#xa0;» se mesure dans un autre type d’unité&#xa0;; les deux ne peuvent pas être égaux.</translation>
    </message>
    <message>
        <source>Another step is named &apos;{0}&apos; already; give this one its own name.</source>
        <translation>Une autre étape se nomme déjà «&#xa0;{0}&#xa0;»&#xa0;; donner à celle-ci un nom à elle.</translation>
    </message>
    <message>
        <source>Another step has the role &apos;{0}&apos; for this side already; remove one of the two.</source>
        <translation>Une autre étape a déjà le rôle «&#xa0;{0}&#xa0;» pour ce côté&#xa0;; enlever l’une des deux.</translation>
    </message>
    <message>
        <source>Another step of the kind &apos;{0}&apos; is there for this side already; remove one of the two.</source>
        <translation>Une autre étape du type «&#xa0;{0}&#xa0;» est déjà là pour ce côté&#xa0;; enlever l’une des deux.</translation>
    </message>
    <message>
        <source>Another stage is named &apos;{0}&apos; already; give this one its own name.</source>
        <translation>Une autre phase se nomme déjà «&#xa0;{0}&#xa0;»&#xa0;; donner à celle-ci un nom à elle.</translation>
    </message>
    <message>
        <source>The last step has to be one of the kind &apos;sign&apos;, since signing closes the job; add it.</source>
        <translation>La dernière étape doit être du type «&#xa0;sign&#xa0;», car la signature clôture l’intervention&#xa0;; l’ajouter.</translation>
    </message>
    <message>
        <source>A number from {0} to {1} has to stand here.</source>
        <translation>Il faut ici un nombre de {0} à {1}.</translation>
    </message>
    <message>
        <source>The number is not in the unit of this field; write it in {0}.</source>
        <translation>Le nombre n’est pas dans l’unité de ce champ&#xa0;; l’écrire en {0}.</translation>
    </message>
    <message>
        <source>&apos;{0}&apos; is no number of up to six decimals below 10000; write it like 0.003.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas un nombre d’au plus six décimales sous 10000&#xa0;; l’écrire comme 0.003.</translation>
    </message>
    <message>
        <source>&apos;{0}&apos; is no unit known here; write it like mm, N·m or °C, or leave it empty for pieces.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas une unité connue ici&#xa0;; l’écrire comme mm, N·m ou °C, ou laisser vide pour des pièces.</translation>
    </message>
    <message>
        <source>A shim is named as it is marked, with 1 to 16 plain letters, digits and signs.</source>
        <translation>Une cale se nomme comme elle est marquée, avec 1 à 16 lettres, chiffres et signes simples.</translation>
    </message>
    <message>
        <source>The shim &apos;{0}&apos; stands in this tray twice; remove one of the two.</source>
        <translation>La cale «&#xa0;{0}&#xa0;» est deux fois dans cet assortiment&#xa0;; enlever l’une des deux.</translation>
    </message>
    <message>
        <source>Another shim of this tray is as thick as &apos;{0}&apos;; correct one of the two.</source>
        <translation>Une autre cale de cet assortiment est aussi épaisse que «&#xa0;{0}&#xa0;»&#xa0;; corriger l’une des deux.</translation>
    </message>
    <message>
        <source>The range ends before it begins; exchange its two ends.</source>
        <translation>La plage finit avant de commencer&#xa0;; échanger ses deux bouts.</translation>
    </message>
    <message>
        <source>The range begins before the one above it ends; put them in order, thin to thick.</source>
        <translation>La plage commence avant la fin de celle du dessus&#xa0;; les mettre en ordre, de mince à épais.</translation>
    </message>
    <message>
        <source>There is no shim &apos;{0}&apos; in this side&apos;s tray; correct the name.</source>
        <translation>Il n’y a pas de cale «&#xa0;{0}&#xa0;» dans l’assortiment de ce côté&#xa0;; corriger le nom.</translation>
    </message>
    <message>
        <source>The shim of this side is found by &apos;{0}&apos;, so this section is needed; add it.</source>
        <translation>La cale de ce côté se trouve par «&#xa0;{0}&#xa0;», cette section est donc nécessaire&#xa0;; l’ajouter.</translation>
    </message>
    <message>
        <source>The shim of this side is found by &apos;{0}&apos;; remove this section or correct the method.</source>
        <translation>La cale de ce côté se trouve par «&#xa0;{0}&#xa0;»&#xa0;; enlever cette section ou corriger la méthode.</translation>
    </message>
    <message>
        <source>A limit needs &apos;least&apos; or &apos;most&apos; or both; add what holds.</source>
        <translation>Une limite a besoin de «&#xa0;least&#xa0;», de «&#xa0;most&#xa0;» ou des deux&#xa0;; ajouter ce qui vaut.</translation>
    </message>
    <message>
        <source>The upper limit has to be at least the lower one; correct the two.</source>
        <translation>La limite supérieure doit être au moins l’inférieure&#xa0;; corriger les deux.</translation>
    </message>
    <message>
        <source>&apos;{0}&apos; cannot be a name here; use 1 to 40 small letters, digits and underscores.</source>
        <translation>«&#xa0;{0}&#xa0;» ne peut pas être un nom ici&#xa0;; utiliser de 1 à 40 minuscules, chiffres et tirets bas.</translation>
    </message>
    <message>
        <source>The name &apos;{0}&apos; stands here twice; remove one of the two.</source>
        <translation>Le nom «&#xa0;{0}&#xa0;» est deux fois ici&#xa0;; enlever l’un des deux.</translation>
    </message>
    <message>
        <source>An object in braces { } has to stand here.</source>
        <translation>Il faut ici un objet entre accolades { }.</translation>
    </message>
    <message>
        <source>The name &apos;{0}&apos; stands in this list twice; give one of the two another name.</source>
        <translation>Le nom «&#xa0;{0}&#xa0;» est deux fois dans cette liste&#xa0;; donner un autre nom à l’un des deux.</translation>
    </message>
    <message>
        <source>A step of the kind &apos;{0}&apos; has no such field; remove it or correct the kind.</source>
        <translation>Une étape du type «&#xa0;{0}&#xa0;» n’a pas ce champ&#xa0;; l’enlever ou corriger le type.</translation>
    </message>
    <message>
        <source>A step of the kind &apos;{0}&apos; needs this field; add it.</source>
        <translation>Une étape du type «&#xa0;{0}&#xa0;» a besoin de ce champ&#xa0;; l’ajouter.</translation>
    </message>
    <message>
        <source>&apos;{0}&apos; cannot be the name of a limit; use 1 to 40 small letters, digits and underscores.</source>
        <translation>«&#xa0;{0}&#xa0;» ne peut pas être le nom d’une limite&#xa0;; utiliser de 1 à 40 minuscules, chiffres et tirets bas.</translation>
    </message>
    <message>
        <source>Such an instrument does not read this unit; correct the instrument or the unit.</source>
        <translation>Un tel instrument ne mesure pas cette unité&#xa0;; corriger l’instrument ou l’unité.</translation>
    </message>
    <message>
        <source>The name of a part in the spec sheet has to stand here, like &quot;pack-ring&quot;.</source>
        <translation>Il faut ici le nom d’une pièce de la fiche technique, comme &quot;pack-ring&quot;.</translation>
    </message>
    <message>
        <source>No choice is accepted, so the step could never be passed; accept one at least.</source>
        <translation>Aucun choix n’est accepté, l’étape ne pourrait jamais être passée&#xa0;; en accepter au moins un.</translation>
    </message>
    <message>
        <source>&apos;{0}&apos; is no kind of step; docs/formats/job-sheet.md lists the kinds.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas un type d’étape&#xa0;; docs/formats/job-sheet.md donne la liste des types.</translation>
    </message>
    <message>
        <source>The text is blank; write something, or remove it.</source>
        <translation>Le texte est vide&#xa0;; écrire quelque chose, ou l’enlever.</translation>
    </message>
    <message>
        <source>The text holds a line break or another control character; remove it.</source>
        <translation>Le texte contient un saut de ligne ou un autre caractère de commande&#xa0;; l’enlever.</translation>
    </message>
    <message>
        <source>The text has {0} characters, at most {1} are read; shorten it.</source>
        <translation>Le texte a {0} caractères, au plus {1} sont lus&#xa0;; le raccourcir.</translation>
    </message>
    <message>
        <source>&apos;{0}&apos; is no language; write its two or three small letters, like en or de.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas une langue&#xa0;; écrire ses deux ou trois minuscules, comme en ou de.</translation>
    </message>
    <message>
        <source>This language stands here twice; remove one of the two.</source>
        <translation>Cette langue est deux fois ici&#xa0;; enlever l’une des deux.</translation>
    </message>
    <message>
        <source>A text in quotation marks has to stand here.</source>
        <translation>Il faut ici un texte entre guillemets.</translation>
    </message>
    <message>
        <source>Texts by language have to stand here, like { &quot;en&quot;: &quot;Press on&quot; }.</source>
        <translation>Il faut ici des textes par langue, comme { &quot;en&quot;: &quot;Press on&quot; }.</translation>
    </message>
    <message>
        <source>The English text is missing; add it, other languages are translations of it.</source>
        <translation>Le texte anglais manque&#xa0;; l’ajouter, les autres langues en sont des traductions.</translation>
    </message>
    <message>
        <source>The name &apos;{0}&apos; stands here twice; give one of the two another name.</source>
        <translation>Le nom «&#xa0;{0}&#xa0;» est deux fois ici&#xa0;; donner un autre nom à l’un des deux.</translation>
    </message>
    <message>
        <source>The sizes have to run from thin to thick in steps above 0, at most {0} of them.</source>
        <translation>Les tailles doivent aller de mince à épais par pas supérieurs à 0, au plus {0}.</translation>
    </message>
    <message>
        <source>This is still to be filled in.</source>
        <translation>Ceci est encore à remplir.</translation>
    </message>
    <message>
        <source>Fill in the lower or the upper limit, or both.</source>
        <translation>Remplir la limite inférieure ou supérieure, ou les deux.</translation>
    </message>
    <message>
        <source>A whole number has to stand here.</source>
        <translation>Il faut ici un nombre entier.</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation>pièces</translation>
    </message>
    <message>
        <source>From (blank: as the sheet)</source>
        <translation>Source (vide&#xa0;: comme la fiche)</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucune</translation>
    </message>
    <message>
        <source>to do</source>
        <translation>à faire</translation>
    </message>
    <message>
        <source>to check: in order or not</source>
        <translation>à contrôler&#xa0;: conforme ou non</translation>
    </message>
    <message>
        <source>a choice</source>
        <translation>un choix</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>mesures</translation>
    </message>
    <message>
        <source>a peak: an event, never measured again</source>
        <translation>une valeur maximale&#xa0;: un événement, jamais remesuré</translation>
    </message>
    <message>
        <source>parts fitted</source>
        <translation>pièces montées</translation>
    </message>
    <message>
        <source>photos</source>
        <translation>photos</translation>
    </message>
    <message>
        <source>a few words</source>
        <translation>quelques mots</translation>
    </message>
    <message>
        <source>gauge trials</source>
        <translation>essais au calibre</translation>
    </message>
    <message>
        <source>depths</source>
        <translation>profondeurs</translation>
    </message>
    <message>
        <source>float of a disc</source>
        <translation>jeu d’un disque</translation>
    </message>
    <message>
        <source>teach-in</source>
        <translation>apprentissage</translation>
    </message>
    <message>
        <source>a signature</source>
        <translation>une signature</translation>
    </message>
    <message>
        <source>Short name of the reading</source>
        <translation>Nom court de la mesure</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Mesure</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unité</translation>
    </message>
    <message>
        <source>Limit of the spec sheet that judges it (blank: none)</source>
        <translation>Limite de la fiche technique qui la juge (vide&#xa0;: aucune)</translation>
    </message>
    <message>
        <source>Read with</source>
        <translation>Mesuré avec</translation>
    </message>
    <message>
        <source>Needs its sign typed</source>
        <translation>Le signe doit être saisi</translation>
    </message>
    <message>
        <source>Reading {0}</source>
        <translation>Mesure {0}</translation>
    </message>
    <message>
        <source>Add a reading</source>
        <translation>Ajouter une mesure</translation>
    </message>
    <message>
        <source>The reading</source>
        <translation>La mesure</translation>
    </message>
    <message>
        <source>Limit of the spec sheet that counts the attempts (blank: none)</source>
        <translation>Limite de la fiche technique qui compte les tentatives (vide&#xa0;: aucune)</translation>
    </message>
    <message>
        <source>Choice {0}</source>
        <translation>Choix {0}</translation>
    </message>
    <message>
        <source>Short name</source>
        <translation>Nom court</translation>
    </message>
    <message>
        <source>Words of the choice</source>
        <translation>Texte du choix</translation>
    </message>
    <message>
        <source>Add a choice</source>
        <translation>Ajouter un choix</translation>
    </message>
    <message>
        <source>Parts of the spec sheet</source>
        <translation>Pièces de la fiche technique</translation>
    </message>
    <message>
        <source>Name of the part</source>
        <translation>Nom de la pièce</translation>
    </message>
    <message>
        <source>Add a part</source>
        <translation>Ajouter une pièce</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Attention</translation>
    </message>
    <message>
        <source>What can hurt</source>
        <translation>Ce qui peut blesser</translation>
    </message>
    <message>
        <source>What keeps from it</source>
        <translation>Ce qui en protège</translation>
    </message>
    <message>
        <source>Add a caution</source>
        <translation>Ajouter une mise en garde</translation>
    </message>
    <message>
        <source>Hold point: the job does not go past it</source>
        <translation>Point d’arrêt&#xa0;: l’intervention ne le dépasse pas</translation>
    </message>
    <message>
        <source>May be answered “not required, because …”</source>
        <translation>Peut être répondu «&#xa0;non requis, parce que …&#xa0;»</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Côté</translation>
    </message>
    <message>
        <source>Only where the shim is found by</source>
        <translation>Seulement où la cale est trouvée par</translation>
    </message>
    <message>
        <source>Asked again</source>
        <translation>Demandé à nouveau</translation>
    </message>
    <message>
        <source>Unproven until that later step is passed (blank: never)</source>
        <translation>À revérifier jusqu’à cette étape ultérieure (vide&#xa0;: jamais)</translation>
    </message>
    <message>
        <source>What the answer means to the job</source>
        <translation>Ce que la réponse signifie pour l’intervention</translation>
    </message>
    <message>
        <source>Part of the drawing in hand</source>
        <translation>Partie du dessin en main</translation>
    </message>
    <message>
        <source>Photos at least (blank: one)</source>
        <translation>Photos au moins (vide&#xa0;: une)</translation>
    </message>
    <message>
        <source>On the old pack, for information</source>
        <translation>Sur l’ancien bloc, pour information</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Signé par</translation>
    </message>
    <message>
        <source>The step</source>
        <translation>L’étape</translation>
    </message>
    <message>
        <source>Short name, the same over all issues</source>
        <translation>Nom court, le même dans toutes les éditions</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Type</translation>
    </message>
    <message>
        <source>What to do, in a few words</source>
        <translation>Ce qu’il faut faire, en quelques mots</translation>
    </message>
    <message>
        <source>Instruction (may be blank)</source>
        <translation>Consigne (peut rester vide)</translation>
    </message>
    <message>
        <source>The stage</source>
        <translation>La phase</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titre</translation>
    </message>
    <message>
        <source>Add a step</source>
        <translation>Ajouter une étape</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Fiche</translation>
    </message>
    <message>
        <source>The sheet</source>
        <translation>La fiche</translation>
    </message>
    <message>
        <source>Languages beside English, as in “de fr”</source>
        <translation>Langues en plus de l’anglais, comme «&#xa0;de fr&#xa0;»</translation>
    </message>
    <message>
        <source>Add a stage</source>
        <translation>Ajouter une phase</translation>
    </message>
    <message>
        <source>Say first who is at the bench: a check has a name.</source>
        <translation>Dire d’abord qui est à l’établi&#xa0;: un contrôle a un nom.</translation>
    </message>
    <message>
        <source>Who entered a sheet checks it on a later day, with fresh eyes; another person can check it today.</source>
        <translation>Qui a saisi une fiche la contrôle un autre jour, l’œil frais&#xa0;; une autre personne peut la contrôler aujourd’hui.</translation>
    </message>
    <message>
        <source>Gearbox type, as people name it</source>
        <translation>Type de boîte, tel qu’on le nomme</translation>
    </message>
    <message>
        <source>What the sheet is for</source>
        <translation>À quoi sert la fiche</translation>
    </message>
    <message>
        <source>From: which service information, edition, date</source>
        <translation>Source&#xa0;: quelle information de service, édition, date</translation>
    </message>
    <message>
        <source>Shim and tray</source>
        <translation>Cale et assortiment</translation>
    </message>
    <message>
        <source>Shim found by</source>
        <translation>Cale trouvée par</translation>
    </message>
    <message>
        <source>Name of the tray</source>
        <translation>Nom de l’assortiment</translation>
    </message>
    <message>
        <source>Sizes in the tray</source>
        <translation>Tailles dans l’assortiment</translation>
    </message>
    <message>
        <source>Marked</source>
        <translation>Marquée</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Épaisseur</translation>
    </message>
    <message>
        <source>Standard uncertainty</source>
        <translation>Incertitude type</translation>
    </message>
    <message>
        <source>Add a size</source>
        <translation>Ajouter une taille</translation>
    </message>
    <message>
        <source>Gauge trials</source>
        <translation>Essais au calibre</translation>
    </message>
    <message>
        <source>Snug band: how far below the seat a shim still feels snug</source>
        <translation>Plage «&#xa0;ajusté&#xa0;»&#xa0;: jusqu’où sous l’assise une cale se sent encore ajustée</translation>
    </message>
    <message>
        <source>Feel, standard uncertainty</source>
        <translation>Toucher, incertitude type</translation>
    </message>
    <message>
        <source>Order of the trials</source>
        <translation>Ordre des essais</translation>
    </message>
    <message>
        <source>fewest trials</source>
        <translation>le moins d’essais</translation>
    </message>
    <message>
        <source>thick to thin</source>
        <translation>d’épais à mince</translation>
    </message>
    <message>
        <source>Seat known beforehand</source>
        <translation>Assise connue d’avance</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Moyenne</translation>
    </message>
    <message>
        <source>Standard deviation</source>
        <translation>Écart type</translation>
    </message>
    <message>
        <source>Constants added to the depth</source>
        <translation>Constantes ajoutées à la profondeur</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Ce que c’est</translation>
    </message>
    <message>
        <source>Added; with a minus it is taken away</source>
        <translation>Ajouté&#xa0;; avec un moins, retranché</translation>
    </message>
    <message>
        <source>Add a constant</source>
        <translation>Ajouter une constante</translation>
    </message>
    <message>
        <source>Which thickness wanted gives which shim</source>
        <translation>Quelle épaisseur cherchée donne quelle cale</translation>
    </message>
    <message>
        <source>From thickness</source>
        <translation>De l’épaisseur</translation>
    </message>
    <message>
        <source>To thickness</source>
        <translation>À l’épaisseur</translation>
    </message>
    <message>
        <source>Shim</source>
        <translation>Cale</translation>
    </message>
    <message>
        <source>Add a range of the shim table</source>
        <translation>Ajouter une plage de la table des cales</translation>
    </message>
    <message>
        <source>Depths</source>
        <translation>Profondeurs</translation>
    </message>
    <message>
        <source>Opposite places measured</source>
        <translation>Endroits opposés mesurés</translation>
    </message>
    <message>
        <source>Deviation stamped on the new pack is added</source>
        <translation>L’écart marqué sur le bloc neuf est ajouté</translation>
    </message>
    <message>
        <source>Largest spread over the places</source>
        <translation>Plus grande dispersion entre endroits</translation>
    </message>
    <message>
        <source>Depth reading, standard uncertainty</source>
        <translation>Mesure de profondeur, incertitude type</translation>
    </message>
    <message>
        <source>Float</source>
        <translation>Jeu</translation>
    </message>
    <message>
        <source>Float, at least</source>
        <translation>Jeu, au moins</translation>
    </message>
    <message>
        <source>Float, at most</source>
        <translation>Jeu, au plus</translation>
    </message>
    <message>
        <source>Float aimed at (blank: the middle)</source>
        <translation>Jeu visé (vide&#xa0;: le milieu)</translation>
    </message>
    <message>
        <source>Largest spread over the spots</source>
        <translation>Plus grande dispersion entre points</translation>
    </message>
    <message>
        <source>Repeatability, standard uncertainty</source>
        <translation>Répétabilité, incertitude type</translation>
    </message>
    <message>
        <source>Guard factor: standard uncertainties kept from a limit</source>
        <translation>Facteur de garde&#xa0;: incertitudes types gardées d’une limite</translation>
    </message>
    <message>
        <source>Float of other jobs, standard uncertainty</source>
        <translation>Jeu d’autres interventions, incertitude type</translation>
    </message>
    <message>
        <source>Runs at each spot, at least</source>
        <translation>Relevés à chaque point, au moins</translation>
    </message>
    <message>
        <source>Float as found can be measured</source>
        <translation>Jeu à l’arrivée mesurable</translation>
    </message>
    <message>
        <source>Spots</source>
        <translation>Points</translation>
    </message>
    <message>
        <source>Spot at</source>
        <translation>Point à</translation>
    </message>
    <message>
        <source>Add a spot</source>
        <translation>Ajouter un point</translation>
    </message>
    <message>
        <source>Float lost per mm of shim</source>
        <translation>Jeu perdu par mm de cale</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Limites</translation>
    </message>
    <message>
        <source>Name the job sheet has for it</source>
        <translation>Nom que lui donne la fiche de travail</translation>
    </message>
    <message>
        <source>At least (blank: no limit)</source>
        <translation>Au moins (vide&#xa0;: sans limite)</translation>
    </message>
    <message>
        <source>At most (blank: no limit)</source>
        <translation>Au plus (vide&#xa0;: sans limite)</translation>
    </message>
    <message>
        <source>Add a limit</source>
        <translation>Ajouter une limite</translation>
    </message>
    <message>
        <source>Values to work to</source>
        <translation>Valeurs de travail</translation>
    </message>
    <message>
        <source>Work to, with unit</source>
        <translation>Travailler à, avec unité</translation>
    </message>
    <message>
        <source>Add a value to work to</source>
        <translation>Ajouter une valeur de travail</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>Part number</source>
        <translation>Numéro de pièce</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Quantité</translation>
    </message>
    <message>
        <source>Renewed at every assembly</source>
        <translation>Remplacé à chaque montage</translation>
    </message>
    <message>
        <source>Lower, large bearing</source>
        <translation>Inférieur, grande butée</translation>
    </message>
    <message>
        <source>Upper, small bearing</source>
        <translation>Supérieur, petite butée</translation>
    </message>
    <message>
        <source>“{0}” was taken away; put it back, or say why it may go.</source>
        <translation>«&#xa0;{0}&#xa0;» a été enlevé&#xa0;; le remettre, ou dire pourquoi il peut partir.</translation>
    </message>
    <message>
        <source>Taken away: why?</source>
        <translation>Enlevé&#xa0;: pourquoi&#xa0;?</translation>
    </message>
    <message>
        <source>Why it may go; this stays in the history</source>
        <translation>Pourquoi cela peut partir&#xa0;; ceci reste dans l’historique</translation>
    </message>
    <message>
        <source>Caution at “{0}”: {1}</source>
        <translation>Mise en garde à «&#xa0;{0}&#xa0;»&#xa0;: {1}</translation>
    </message>
    <message>
        <source>Hold point “{0}”: {1}</source>
        <translation>Point d’arrêt «&#xa0;{0}&#xa0;»&#xa0;: {1}</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>This file cannot be read; choose it again.</source>
        <translation>Ce fichier ne peut pas être lu&#xa0;; le choisir à nouveau.</translation>
    </message>
    <message>
        <source>This file is too large for a sheet; choose another.</source>
        <translation>Ce fichier est trop grand pour une fiche&#xa0;; en choisir un autre.</translation>
    </message>
    <message>
        <source>The file could not be written; look at the folder and its space.</source>
        <translation>Le fichier n’a pas pu être écrit&#xa0;; contrôler le dossier et sa place.</translation>
    </message>
    <message>
        <source>In steps of</source>
        <translation>Par pas de</translation>
    </message>
    <message>
        <source>Order of the steps</source>
        <translation>Ordre des étapes</translation>
    </message>
    <message>
        <source>Stands after</source>
        <translation>Vient après</translation>
    </message>
    <message>
        <source>Passes the step</source>
        <translation>Dépasse l’étape</translation>
    </message>
    <message>
        <source>Add what is known of the seat</source>
        <translation>Ajouter ce qui est connu de l’assise</translation>
    </message>
    <message>
        <source>Add the float lost per mm of shim</source>
        <translation>Ajouter le jeu perdu par mm de cale</translation>
    </message>
    <message>
        <source>The steps do not come out at the last size; change the step or one of the sizes.</source>
        <translation>Les pas ne tombent pas sur la dernière taille&#xa0;; changer le pas ou l’une des tailles.</translation>
    </message>
    <message>
        <source>At {0} the file has something else than a sheet has there, so no form can be drawn of it; choose another file.</source>
        <translation>À {0} le fichier contient autre chose que ce qu’une fiche a là, donc aucun formulaire ne peut en être montré&#xa0;; choisir un autre fichier.</translation>
    </message>
    <message>
        <source>&apos;{0}&apos; is no field of a sheet; take it out of the file.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas un champ d’une fiche&#xa0;; l’enlever du fichier.</translation>
    </message>
    <message>
        <source>This file does not say that it is a sheet; choose one that was saved as a sheet.</source>
        <translation>Ce fichier ne dit pas qu’il est une fiche&#xa0;; en choisir un qui a été enregistré comme fiche.</translation>
    </message>
    <message>
        <source>“{0}” is unproven until “{1}”, so it has to come before it; move the other of the two first, or change what it says.</source>
        <translation>«&#xa0;{0}&#xa0;» est à revérifier jusqu’à ce que «&#xa0;{1}&#xa0;» soit passé, et doit donc venir avant&#xa0;; déplacer d’abord l’autre des deux, ou changer cette indication.</translation>
    </message>
    <message>
        <source>“{0}” has to equal a reading of “{1}”, so it has to come after it; move the other of the two first, or change what it says.</source>
        <translation>«&#xa0;{0}&#xa0;» doit égaler une mesure de «&#xa0;{1}&#xa0;», il doit donc venir après&#xa0;; déplacer d’abord l’autre des deux, ou changer cette indication.</translation>
    </message>
    <message>
        <source>The signature closes the job, so it has to be the last step; leave it at the end.</source>
        <translation>La signature clôt le travail et doit être la dernière étape&#xa0;; la laisser à la fin.</translation>
    </message>
    <message>
        <source>A stage has one step at least, and “{0}” is the only one here; add another step to this stage first.</source>
        <translation>Une phase a au moins une étape, et «&#xa0;{0}&#xa0;» est ici la seule&#xa0;; ajouter d’abord une autre étape à cette phase.</translation>
    </message>
    <message>
        <source>A stage has at most {0} steps, and that one has as many already; take one out of it first.</source>
        <translation>Une phase a {0} étapes au plus, et celle-là en a déjà autant&#xa0;; en retirer une d’abord.</translation>
    </message>
    <message>
        <source>Has to equal the reading of that earlier step (both blank: none)</source>
        <translation>Doit égaler la mesure de cette étape antérieure (les deux vides&#xa0;: aucune)</translation>
    </message>
    <message>
        <source>Short name of that reading</source>
        <translation>Nom court de cette mesure</translation>
    </message>
    <message>
        <source>That sheet has no stage “{0}”; choose one of its stages.</source>
        <translation>Cette fiche n’a pas de phase «&#xa0;{0}&#xa0;»&#xa0;; choisir l’une de ses phases.</translation>
    </message>
    <message>
        <source>A sheet has at most {0} stages, and this one has as many already; take one out first.</source>
        <translation>Une fiche a {0} phases au plus, et celle-ci en a déjà autant&#xa0;; en retirer une d’abord.</translation>
    </message>
</context>
<context>
    <name>shell</name>
    <message>
        <source>The demonstration jobs are missing from this program: install it again.</source>
        <translation>Les interventions de démonstration manquent dans ce programme&#xa0;: le réinstaller.</translation>
    </message>
    <message>
        <source>The demonstration cannot be laid there: look whether something else has its name, then try again.</source>
        <translation>La démonstration ne peut pas être placée là&#xa0;: voir si autre chose porte son nom, puis réessayer.</translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png)</source>
        <translation>Photos (*.jpg *.jpeg *.png)</translation>
    </message>
    <message>
        <source>Another new job is typed here and not opened yet: open it, or cancel it, then begin this one.</source>
        <translation>Une autre nouvelle intervention est saisie ici et pas encore ouverte&#xa0;: l’ouvrir ou l’annuler, puis commencer celle-ci.</translation>
    </message>
    <message>
        <source>--demo has a store of its own: leave out --demo, or leave out --store.</source>
        <translation>--demo a sa propre base&#xa0;: omettre --demo, ou omettre --store.</translation>
    </message>
    <message>
        <source>The demonstration is open in another window; close it there first.</source>
        <translation>La démonstration est ouverte dans une autre fenêtre&#xa0;; la fermer d’abord là-bas.</translation>
    </message>
    <message>
        <source>Another workshop than the demonstration lies there: nothing was deleted.</source>
        <translation>Un autre atelier que la démonstration se trouve là&#xa0;: rien n’a été supprimé.</translation>
    </message>
    <message>
        <source>This workshop&apos;s own store lies in that folder: nothing was deleted.</source>
        <translation>La base de cet atelier se trouve dans ce dossier&#xa0;: rien n’a été supprimé.</translation>
    </message>
    <message>
        <source>Not all of the demonstration could be deleted: look whether a program has one of its files open, then try again.</source>
        <translation>La démonstration n’a pas pu être supprimée en entier&#xa0;: voir si un programme a un de ses fichiers ouvert, puis réessayer.</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>inch</source>
        <translation>pouce</translation>
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
        <translation>Il n’y a rien à conseiller&#xa0;; ajouter gauge_fit, depth ou float.</translation>
    </message>
    <message>
        <source>A name in this case is not UTF-8 text; enter it again.</source>
        <translation>Un nom dans ce cas n’est pas un texte UTF-8&#xa0;; le saisir à nouveau.</translation>
    </message>
    <message>
        <source>Enter the deviation marked on the pack; 0 is a value, blank is not.</source>
        <translation>Saisir l’écart marqué sur le bloc&#xa0;; 0 est une valeur, vide n’en est pas une.</translation>
    </message>
    <message>
        <source>This bin begins before the one above it ends; put them in order.</source>
        <translation>Cette classe commence avant la fin de celle du dessus&#xa0;; les mettre en ordre.</translation>
    </message>
    <message>
        <source>This bin ends before it begins; exchange its two ends.</source>
        <translation>Cette classe finit avant de commencer&#xa0;; échanger ses deux bouts.</translation>
    </message>
    <message>
        <source>A number without quotation marks has to stand here.</source>
        <translation>Il faut ici un nombre sans guillemets.</translation>
    </message>
    <message>
        <source>This number has to be below 10000 in size.</source>
        <translation>Ce nombre doit être en valeur absolue sous 10000.</translation>
    </message>
    <message>
        <source>This has to be more than 0.</source>
        <translation>Ceci doit être plus grand que 0.</translation>
    </message>
    <message>
        <source>This must not be below 0.</source>
        <translation>Ceci ne doit pas être sous 0.</translation>
    </message>
    <message>
        <source>This has to be at least {0}.</source>
        <translation>Ceci doit être au moins {0}.</translation>
    </message>
    <message>
        <source>A length has to be a whole number of micrometres; give three decimals at most.</source>
        <translation>Une longueur doit être un nombre entier de micromètres&#xa0;; donner au plus trois décimales.</translation>
    </message>
    <message>
        <source>This list must not be empty.</source>
        <translation>Cette liste ne doit pas être vide.</translation>
    </message>
    <message>
        <source>Two lengths have to stand here, the lower limit first.</source>
        <translation>Il faut ici deux longueurs, la limite inférieure d’abord.</translation>
    </message>
    <message>
        <source>The lower limit has to be below the upper one.</source>
        <translation>La limite inférieure doit être sous la supérieure.</translation>
    </message>
    <message>
        <source>The target has to lie within the limits.</source>
        <translation>La cible doit être dans les limites.</translation>
    </message>
    <message>
        <source>Measure at three spots or more, at three different angles.</source>
        <translation>Mesurer à trois points ou plus, à trois angles différents.</translation>
    </message>
    <message>
        <source>One of tight, snug or loose has to stand here.</source>
        <translation>Il faut ici tight, snug ou loose.</translation>
    </message>
    <message>
        <source>Either fewest or thick_to_thin has to stand here.</source>
        <translation>Il faut ici fewest ou thick_to_thin.</translation>
    </message>
    <message>
        <source>Another shim of this tray has the same name; give each its own.</source>
        <translation>Une autre cale de cet assortiment a le même nom&#xa0;; donner à chacune le sien.</translation>
    </message>
    <message>
        <source>Another shim of this tray has the same thickness; keep one of them.</source>
        <translation>Une autre cale de cet assortiment a la même épaisseur&#xa0;; en garder une.</translation>
    </message>
    <message>
        <source>No shim of the tray has this name; choose one that is in it.</source>
        <translation>Aucune cale de l’assortiment n’a ce nom&#xa0;; en choisir une qui y est.</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::AnswerPage</name>
    <message>
        <source>kept: %1, %2</source>
        <translation>enregistré&#xa0;: %1, %2</translation>
    </message>
    <message>
        <source>. It may have moved since: look again and answer again.</source>
        <translation>. Cela a pu bouger depuis&#xa0;: regarder et répondre à nouveau.</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::AskBox</name>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>In your words</source>
        <translation>En quelques mots</translation>
    </message>
    <message>
        <source>Park job</source>
        <translation>Mettre en attente</translation>
    </message>
    <message>
        <source>What does it wait for?</source>
        <translation>Qu’attend-elle&#xa0;?</translation>
    </message>
    <message>
        <source>Still to be fitted, for an order:</source>
        <translation>Encore à monter, pour une commande&#xa0;:</translation>
    </message>
    <message>
        <source>Copy the list</source>
        <translation>Copier la liste</translation>
    </message>
    <message>
        <source>Until when (may stay blank)</source>
        <translation>Jusqu’à quand (peut rester vide)</translation>
    </message>
    <message>
        <source>year-month-day</source>
        <translation>année-mois-jour</translation>
    </message>
    <message>
        <source>Ctrl Enter</source>
        <translation>Ctrl Entrée</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::CheckPage</name>
    <message>
        <source>In order</source>
        <translation>Conforme</translation>
    </message>
    <message>
        <source>Not in order</source>
        <translation>Non conforme</translation>
    </message>
    <message>
        <source>What you saw: needed where it is not in order</source>
        <translation>Ce qui a été vu&#xa0;: nécessaire si non conforme</translation>
    </message>
    <message>
        <source>Say whether it is in order; the words are kept with the answer.</source>
        <translation>Dire si c’est conforme&#xa0;; les mots sont enregistrés avec la réponse.</translation>
    </message>
    <message>
        <source>key 1</source>
        <translation>touche 1</translation>
    </message>
    <message>
        <source>key 2</source>
        <translation>touche 2</translation>
    </message>
    <message>
        <source>Say in a few words what is not in order, then press Enter.</source>
        <translation>Dire en quelques mots ce qui n’est pas conforme, puis appuyer sur Entrée.</translation>
    </message>
    <message>
        <source>Answer with key 1 or key 2.</source>
        <translation>Répondre par la touche 1 ou 2.</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::ChoosePage</name>
    <message>
        <source>key %1</source>
        <translation>touche %1</translation>
    </message>
    <message>
        <source>Answer with a key from 1 to %1.</source>
        <translation>Répondre par une touche de 1 à %1.</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::DepthCard</name>
    <message>
        <source>The sum</source>
        <translation>Le calcul</translation>
    </message>
    <message>
        <source>The sum of the depths kept before</source>
        <translation>Le calcul des profondeurs enregistrées avant</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::DepthPage</name>
    <message>
        <source>Reference</source>
        <translation>Référence</translation>
    </message>
    <message>
        <source>Depth gauge</source>
        <translation>Jauge de profondeur</translation>
    </message>
    <message>
        <source>One place more</source>
        <translation>Un endroit de plus</translation>
    </message>
    <message>
        <source>Depth, place %1</source>
        <translation>Profondeur %1</translation>
    </message>
    <message>
        <source>Type each value and press Enter; the sum follows.</source>
        <translation>Saisir chaque valeur et appuyer sur Entrée&#xa0;; la somme suit.</translation>
    </message>
    <message>
        <source>Read it on the pack again.</source>
        <translation>Le relire sur le bloc.</translation>
    </message>
    <message>
        <source>0.0 stamped is a value; leave nothing blank.</source>
        <translation>0.0 marqué est une valeur&#xa0;; ne rien laisser vide.</translation>
    </message>
    <message>
        <source>%1, by depth</source>
        <translation>%1, par profondeur</translation>
    </message>
    <message>
        <source>Fit %1</source>
        <translation>Poser %1</translation>
    </message>
    <message>
        <source>%1, taken</source>
        <translation>%1, prise</translation>
    </message>
    <message>
        <source>On the border</source>
        <translation>À la limite</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 ou %2</translation>
    </message>
    <message>
        <source>Tilted</source>
        <translation>De travers</translation>
    </message>
    <message>
        <source>measure again, %1</source>
        <translation>mesurer à nouveau, %1</translation>
    </message>
    <message>
        <source>Cannot be</source>
        <translation>Impossible</translation>
    </message>
    <message>
        <source>Outside the tray</source>
        <translation>Hors de l’assortiment</translation>
    </message>
    <message>
        <source>No size near</source>
        <translation>Aucune taille proche</translation>
    </message>
    <message>
        <source>Keep the depths</source>
        <translation>Enregistrer les profondeurs</translation>
    </message>
    <message>
        <source>Another shim</source>
        <translation>Une autre cale</translation>
    </message>
    <message>
        <source>Take %1</source>
        <translation>Prendre %1</translation>
    </message>
    <message>
        <source>Take %1 with reason...</source>
        <translation>Prendre %1 avec motif...</translation>
    </message>
    <message>
        <source>Which shim is taken in place of it?</source>
        <translation>Quelle cale est prise à sa place&#xa0;?</translation>
    </message>
    <message>
        <source>%1 is not the shim the depths advise: why is it taken?</source>
        <translation>%1 n’est pas la cale que les profondeurs conseillent&#xa0;: pourquoi est-elle prise&#xa0;?</translation>
    </message>
    <message>
        <source>Take %1 for this reason</source>
        <translation>Prendre %1 pour ce motif</translation>
    </message>
    <message>
        <source>Measure again</source>
        <translation>Mesurer à nouveau</translation>
    </message>
    <message>
        <source>Stamp on the new pack, %1, mm</source>
        <translation>Marquage du bloc neuf, %1, mm</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::DoPage</name>
    <message>
        <source>Done</source>
        <translation>Fait</translation>
    </message>
    <message>
        <source>Done. Ctrl Enter goes on.</source>
        <translation>Fait. Ctrl Entrée continue.</translation>
    </message>
    <message>
        <source>When it is done: Ctrl Enter.</source>
        <translation>Une fois fait&#xa0;: Ctrl Entrée.</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::FloatEntry</name>
    <message>
        <source>Spot %1</source>
        <translation>Point %1</translation>
    </message>
    <message>
        <source>Dial gauge</source>
        <translation>Comparateur</translation>
    </message>
    <message>
        <source>At rest</source>
        <translation>Au repos</translation>
    </message>
    <message>
        <source>Lifted</source>
        <translation>Levé</translation>
    </message>
    <message>
        <source>Zero after</source>
        <translation>Zéro après</translation>
    </message>
    <message>
        <source>Spot %1, run %2 of %3</source>
        <translation>Point %1, relevé %2 sur %3</translation>
    </message>
    <message>
        <source>Spot %1, run %2</source>
        <translation>Point %1, relevé %2</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::FloatPage</name>
    <message>
        <source>Not measured as found</source>
        <translation>Non mesuré à l’arrivée</translation>
    </message>
    <message>
        <source>The method of this gearbox has no float as found: leave the step out with that reason.</source>
        <translation>La méthode de cette boîte n’a pas de jeu à l’arrivée&#xa0;: laisser l’étape de côté avec ce motif.</translation>
    </message>
    <message>
        <source> Measured before: %1.</source>
        <translation> Mesuré avant&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Lift at spot %1</source>
        <translation>Lever au point %1</translation>
    </message>
    <message>
        <source>Hide all shims</source>
        <translation>Masquer toutes les cales</translation>
    </message>
    <message>
        <source>All shims and chances</source>
        <translation>Toutes les cales et leurs chances</translation>
    </message>
    <message>
        <source>Keep this run</source>
        <translation>Enregistrer ce relevé</translation>
    </message>
    <message>
        <source>Measure again</source>
        <translation>Mesurer à nouveau</translation>
    </message>
    <message>
        <source>Seated again: measure</source>
        <translation>Remise en place&#xa0;: mesurer</translation>
    </message>
    <message>
        <source>Seat again</source>
        <translation>Remettre la butée en place</translation>
    </message>
    <message>
        <source>Change the shim</source>
        <translation>Changer la cale</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuer</translation>
    </message>
    <message>
        <source>Trials and float disagree: a bearing that is not home would do the same. </source>
        <translation>Les essais et le jeu se contredisent&#xa0;: une butée mal en place ferait de même. </translation>
    </message>
    <message>
        <source>Which shim goes under the %1?</source>
        <translation>Quelle cale est posée (%1)&#xa0;?</translation>
    </message>
    <message>
        <source>%1 in place of %2</source>
        <translation>%1 au lieu de %2</translation>
    </message>
    <message>
        <source>float %1: %2</source>
        <translation>jeu %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 against the advice: why does the pack come off?</source>
        <translation>%1 contre le conseil&#xa0;: pourquoi le bloc est-il déposé&#xa0;?</translation>
    </message>
    <message>
        <source>Take the pack off for this reason</source>
        <translation>Déposer le bloc pour ce motif</translation>
    </message>
    <message>
        <source>Measure spot %1 again</source>
        <translation>Mesurer à nouveau le point %1</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::FloatTable</name>
    <message>
        <source>Spot</source>
        <translation>Point</translation>
    </message>
    <message>
        <source>Run %1</source>
        <translation>Relevé %1</translation>
    </message>
    <message>
        <source>Float</source>
        <translation>Jeu</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Verdict</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::FootBar</name>
    <message>
        <source>Ctrl Enter</source>
        <translation>Ctrl Entrée</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::GaugeFitPage</name>
    <message>
        <source>Tight</source>
        <translation>Serré</translation>
    </message>
    <message>
        <source>will not enter · key 1</source>
        <translation>n’entre pas · touche 1</translation>
    </message>
    <message>
        <source>Snug</source>
        <translation>Ajusté</translation>
    </message>
    <message>
        <source>enters with drag · key 2</source>
        <translation>entre en frottant · touche 2</translation>
    </message>
    <message>
        <source>Loose</source>
        <translation>Libre</translation>
    </message>
    <message>
        <source>has play · key 3</source>
        <translation>a du jeu · touche 3</translation>
    </message>
    <message>
        <source>Two trials cannot both be right</source>
        <translation>Deux essais ne peuvent pas être vrais tous les deux</translation>
    </message>
    <message>
        <source>Press a shim below to try it again.</source>
        <translation>Appuyer sur une cale ci-dessous pour l’essayer à nouveau.</translation>
    </message>
    <message>
        <source>Take back trial %1</source>
        <translation>Retirer l’essai %1</translation>
    </message>
    <message>
        <source>The tray begins too thick</source>
        <translation>L’assortiment commence trop épais</translation>
    </message>
    <message>
        <source>The tray ends too thin</source>
        <translation>L’assortiment finit trop mince</translation>
    </message>
    <message>
        <source>A wrong trial would do the same: try the last shim once more.</source>
        <translation>Un essai faux ferait de même&#xa0;: essayer encore une fois la dernière cale.</translation>
    </message>
    <message>
        <source>The float asks for %1</source>
        <translation>Le jeu demande %1</translation>
    </message>
    <message>
        <source>It was measured in the assembly before. Try %1 first, or take it as it is.</source>
        <translation>Il a été mesuré au montage précédent. Essayer %1 d’abord, ou la prendre telle quelle.</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>prise</translation>
    </message>
    <message>
        <source>fit this one</source>
        <translation>poser celle-ci</translation>
    </message>
    <message>
        <source>try this one</source>
        <translation>essayer celle-ci</translation>
    </message>
    <message>
        <source>How does the gauge go in with %1?</source>
        <translation>Comment entre le calibre avec %1&#xa0;?</translation>
    </message>
    <message>
        <source>Fit %1</source>
        <translation>Poser %1</translation>
    </message>
    <message>
        <source>%1, taken</source>
        <translation>%1, prise</translation>
    </message>
    <message>
        <source>Try %1</source>
        <translation>Essayer %1</translation>
    </message>
    <message>
        <source>%1, trial %2</source>
        <translation>%1, essai %2</translation>
    </message>
    <message>
        <source>%1, by the trials</source>
        <translation>%1, d’après les essais</translation>
    </message>
    <message>
        <source>Trials contradict</source>
        <translation>Essais contradictoires</translation>
    </message>
    <message>
        <source>Tray too thick</source>
        <translation>Assortiment trop épais</translation>
    </message>
    <message>
        <source>Tray too thin</source>
        <translation>Assortiment trop mince</translation>
    </message>
    <message>
        <source>Another shim</source>
        <translation>Une autre cale</translation>
    </message>
    <message>
        <source>Take %1</source>
        <translation>Prendre %1</translation>
    </message>
    <message>
        <source>Take %1 with reason...</source>
        <translation>Prendre %1 avec motif...</translation>
    </message>
    <message>
        <source>%1 is not the shim the trials advise: why is it taken?</source>
        <translation>%1 n’est pas la cale que les essais conseillent&#xa0;: pourquoi est-elle prise&#xa0;?</translation>
    </message>
    <message>
        <source>Take %1 for this reason</source>
        <translation>Prendre %1 pour ce motif</translation>
    </message>
    <message>
        <source>trial taken back at the bench</source>
        <translation>essai retiré à l’établi</translation>
    </message>
    <message>
        <source>Which shim is tried?</source>
        <translation>Quelle cale est essayée&#xa0;?</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::GearboxChoice</name>
    <message>
        <source>Choose the gearbox type</source>
        <translation>Choisir le type de boîte</translation>
    </message>
    <message>
        <source>%1, issue %2</source>
        <translation>%1, édition %2</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::HomePage</name>
    <message>
        <source>On the bench</source>
        <translation>À l’établi</translation>
    </message>
    <message>
        <source>New job</source>
        <translation>Nouvelle intervention</translation>
    </message>
    <message>
        <source>Ctrl N</source>
        <translation>Ctrl N</translation>
    </message>
    <message>
        <source>Find a vehicle</source>
        <translation>Chercher un véhicule</translation>
    </message>
    <message>
        <source>VIN, plate, job, or scan</source>
        <translation>VIN, immatriculation, n°</translation>
    </message>
    <message>
        <source>Before you start</source>
        <translation>Avant de commencer</translation>
    </message>
    <message>
        <source>No job is open. Begin one with New job, or find a vehicle that was here before.</source>
        <translation>Aucune intervention n’est ouverte. En commencer une nouvelle, ou chercher un véhicule déjà venu.</translation>
    </message>
    <message>
        <source>%1 more jobs are open: find them under Past jobs.</source>
        <translation>%1 autres interventions sont ouvertes&#xa0;: les trouver sous Interventions passées.</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>La regarder</translation>
    </message>
    <message>
        <source>Take up</source>
        <translation>Reprendre</translation>
    </message>
    <message>
        <source>job %1</source>
        <translation>intervention %1</translation>
    </message>
    <message>
        <source>Nothing: instruments, trays and backup are as they should be.</source>
        <translation>Rien&#xa0;: instruments, assortiments et sauvegarde sont comme il faut.</translation>
    </message>
    <message>
        <source>Every entry is on disk before it shows as saved.</source>
        <translation>Chaque entrée est sur le disque avant de paraître enregistrée.</translation>
    </message>
    <message>
        <source>Last verified backup: %1.</source>
        <translation>Dernière sauvegarde vérifiée&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::InstrumentBox</name>
    <message>
        <source>overdue since %1</source>
        <translation>en retard depuis le %1</translation>
    </message>
    <message>
        <source>calibrated to %1</source>
        <translation>étalonné jusqu’au %1</translation>
    </message>
    <message>
        <source>no instrument</source>
        <translation>aucun instrument</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::JobPage</name>
    <message>
        <source>Job %1</source>
        <translation>Intervention %1</translation>
    </message>
    <message>
        <source>assembly %1</source>
        <translation>montage %1</translation>
    </message>
    <message>
        <source>Spec sheet %1, issue %2</source>
        <translation>Fiche technique %1, édition %2</translation>
    </message>
    <message>
        <source>Show the record</source>
        <translation>Montrer le rapport</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Photo</translation>
    </message>
    <message>
        <source>More...</source>
        <translation>Autres...</translation>
    </message>
    <message>
        <source>Go on with reason...</source>
        <translation>Continuer avec motif...</translation>
    </message>
    <message>
        <source>Park job</source>
        <translation>Mettre en attente</translation>
    </message>
    <message>
        <source>Not required...</source>
        <translation>Non requis...</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Suivant</translation>
    </message>
    <message>
        <source>A note for this step</source>
        <translation>Note pour cette étape</translation>
    </message>
    <message>
        <source>Keep the note</source>
        <translation>Enregistrer la note</translation>
    </message>
    <message>
        <source>Go on against the sheet: why? The reason stands on the record with your name.</source>
        <translation>Continuer contre la fiche de travail&#xa0;: pourquoi&#xa0;? Le motif figure au rapport avec le nom.</translation>
    </message>
    <message>
        <source>Go on with this reason</source>
        <translation>Continuer pour ce motif</translation>
    </message>
    <message>
        <source>Not required in this job: why?</source>
        <translation>Non requis dans cette intervention&#xa0;: pourquoi&#xa0;?</translation>
    </message>
    <message>
        <source>Not required for this reason</source>
        <translation>Non requis pour ce motif</translation>
    </message>
    <message>
        <source>Leave this step out, with reason</source>
        <translation>Laisser cette étape de côté, avec motif</translation>
    </message>
    <message>
        <source>Take an entry of this step back</source>
        <translation>Retirer une entrée de cette étape</translation>
    </message>
    <message>
        <source>Hand the job over</source>
        <translation>Transmettre l’intervention</translation>
    </message>
    <message>
        <source>Hours per stage</source>
        <translation>Heures par phase</translation>
    </message>
    <message>
        <source>Keypad for gloves (F4)</source>
        <translation>Pavé numérique pour gants (F4)</translation>
    </message>
    <message>
        <source>Strip over the whole window (F2)</source>
        <translation>Bandeau sur toute la fenêtre (F2)</translation>
    </message>
    <message>
        <source>The record so far</source>
        <translation>Le rapport jusqu’ici</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Autres</translation>
    </message>
    <message>
        <source>%1: %2 h %3 min</source>
        <translation>%1&#xa0;: %2 h %3 min</translation>
    </message>
    <message>
        <source>Hours per stage, by the times of the entries. Pauses of more than two hours do not count.</source>
        <translation>Heures par phase, d’après les heures des entrées. Les pauses de plus de deux heures ne comptent pas.</translation>
    </message>
    <message>
        <source>Entry %1, %2, %3: %4</source>
        <translation>Entrée %1, %2, %3&#xa0;: %4</translation>
    </message>
    <message>
        <source>Take entry %1 back: why? It stays on the record, struck through.</source>
        <translation>Retirer l’entrée %1&#xa0;: pourquoi&#xa0;? Elle reste au rapport, barrée.</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>La retirer</translation>
    </message>
    <message>
        <source>Nothing is kept for this step yet.</source>
        <translation>Rien n’est encore enregistré pour cette étape.</translation>
    </message>
    <message>
        <source>Which entry is taken back?</source>
        <translation>Quelle entrée est retirée&#xa0;?</translation>
    </message>
    <message>
        <source>What should %1 know?</source>
        <translation>Que doit savoir %1&#xa0;?</translation>
    </message>
    <message>
        <source>Who goes on with this job?</source>
        <translation>Qui continue cette intervention&#xa0;?</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Attention</translation>
    </message>
    <message>
        <source>%1 steps may have moved while the job lay and are asked again.</source>
        <translation>%1 étapes ont pu bouger pendant l’attente et sont demandées à nouveau.</translation>
    </message>
    <message>
        <source>Parked, waiting for %1</source>
        <translation>En attente de %1</translation>
    </message>
    <message>
        <source>Take up</source>
        <translation>Reprendre</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuer</translation>
    </message>
    <message>
        <source>Last: %1 · %2 · %3</source>
        <translation>Dernière entrée&#xa0;: %1 · %2 · %3</translation>
    </message>
    <message>
        <source>parked</source>
        <translation>en attente</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Ensuite&#xa0;: %1</translation>
    </message>
    <message>
        <source>Parts to order, to copy</source>
        <translation>Pièces à commander, à copier</translation>
    </message>
    <message>
        <source>Every part of this job is fitted.</source>
        <translation>Toutes les pièces de cette intervention sont montées.</translation>
    </message>
    <message>
        <source>Still to be fitted, for an order:</source>
        <translation>Encore à monter, pour une commande&#xa0;:</translation>
    </message>
    <message>
        <source>Copy the list</source>
        <translation>Copier la liste</translation>
    </message>
    <message>
        <source>Sealed, %1</source>
        <translation>Scellée, %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>par %1</translation>
    </message>
    <message>
        <source>Look again: %1</source>
        <translation>Revoir&#xa0;: %1</translation>
    </message>
    <message>
        <source>One step may have moved while the job lay and is asked again.</source>
        <translation>Une étape a pu bouger pendant l’attente et est demandée à nouveau.</translation>
    </message>
    <message>
        <source>F2 goes back</source>
        <translation>F2 pour revenir</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::NewJobForm</name>
    <message>
        <source>Plate</source>
        <translation>Immatriculation</translation>
    </message>
    <message>
        <source>Odometer</source>
        <translation>Kilométrage</translation>
    </message>
    <message>
        <source>Complaint, in the customer&apos;s words</source>
        <translation>Défaut signalé, dans les mots du client</translation>
    </message>
    <message>
        <source>Gearbox type and spec sheet</source>
        <translation>Type de boîte et fiche technique</translation>
    </message>
    <message>
        <source>Gearbox serial</source>
        <translation>N° de série, boîte</translation>
    </message>
    <message>
        <source>Build date</source>
        <translation>Date de construction</translation>
    </message>
    <message>
        <source>year-month-day</source>
        <translation>année-mois-jour</translation>
    </message>
    <message>
        <source>Customer reference</source>
        <translation>Référence du client</translation>
    </message>
    <message>
        <source>There is no spec sheet in this workshop: add one under Workshop.</source>
        <translation>Il n’y a pas de fiche technique dans cet atelier&#xa0;: en ajouter une sous Atelier.</translation>
    </message>
    <message>
        <source>plate</source>
        <translation>immatriculation</translation>
    </message>
    <message>
        <source>gearbox type</source>
        <translation>type de boîte</translation>
    </message>
    <message>
        <source>gearbox serial</source>
        <translation>n° de série de la boîte</translation>
    </message>
    <message>
        <source>build date</source>
        <translation>date de construction</translation>
    </message>
    <message>
        <source>Choose the gearbox type: its spec sheet holds the limits of this job.</source>
        <translation>Choisir le type de boîte&#xa0;: sa fiche technique porte les limites de cette intervention.</translation>
    </message>
    <message>
        <source>Job sheet</source>
        <translation>Fiche de travail</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::NewJobPage</name>
    <message>
        <source>New job</source>
        <translation>Nouvelle intervention</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>Jeter la saisie</translation>
    </message>
    <message>
        <source>Go on typing</source>
        <translation>Continuer la saisie</translation>
    </message>
    <message>
        <source>Ctrl Enter</source>
        <translation>Ctrl Entrée</translation>
    </message>
    <message>
        <source>Open job %1</source>
        <translation>Ouvrir l’intervention %1</translation>
    </message>
    <message>
        <source>This workshop is open for looking only: no job can be opened.</source>
        <translation>Cet atelier est ouvert en lecture seule&#xa0;: aucune intervention ne peut être ouverte.</translation>
    </message>
    <message>
        <source>Filled in from job %1: %2. Change what is different.</source>
        <translation>Repris de l’intervention %1&#xa0;: %2. Changer ce qui diffère.</translation>
    </message>
    <message>
        <source>This vehicle was here before</source>
        <translation>Ce véhicule est déjà venu</translation>
    </message>
    <message>
        <source>This vehicle was not here before.</source>
        <translation>Ce véhicule n’est jamais venu.</translation>
    </message>
    <message>
        <source>Older jobs of this vehicle under Past jobs: %1.</source>
        <translation>Interventions plus anciennes de ce véhicule sous Interventions passées&#xa0;: %1.</translation>
    </message>
    <message>
        <source>What is typed here is kept nowhere else.</source>
        <translation>Ce qui est saisi ici n’est gardé nulle part ailleurs.</translation>
    </message>
    <message>
        <source>%1, issue %2</source>
        <translation>%1, édition %2</translation>
    </message>
    <message>
        <source>Not offered before it is checked under Workshop: %1.</source>
        <translation>Proposée seulement après contrôle sous Atelier&#xa0;: %1.</translation>
    </message>
    <message>
        <source>There is no job sheet in this workshop that was checked: add or check one under Workshop.</source>
        <translation>Il n’y a pas de fiche de travail contrôlée dans cet atelier&#xa0;: en ajouter ou en contrôler une sous Atelier.</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::PackPanel</name>
    <message>
        <source>Where you are</source>
        <translation>Où en est le travail</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::PartPage</name>
    <message>
        <source>, batch %1</source>
        <translation>, lot %1</translation>
    </message>
    <message>
        <source>Batch or serial, if it has one</source>
        <translation>Lot ou n° de série, si présent</translation>
    </message>
    <message>
        <source>kept: %1, %2</source>
        <translation>enregistré&#xa0;: %1, %2</translation>
    </message>
    <message>
        <source>Key 1: it is renewed. A scan is the batch.</source>
        <translation>Touche 1&#xa0;: remplacé. Un scan est le lot.</translation>
    </message>
    <message>
        <source>Keys 1 to %1: that one is renewed. A scan is the batch.</source>
        <translation>Touches 1 à %1&#xa0;: remplacé. Un scan est le lot.</translation>
    </message>
    <message>
        <source>Tick what is renewed and keep it, or clear ticks and fields.</source>
        <translation>Cocher ce qui est remplacé et l’enregistrer, ou effacer coches et champs.</translation>
    </message>
    <message>
        <source>one-time: renewed at every assembly</source>
        <translation>usage unique&#xa0;: remplacé à chaque montage</translation>
    </message>
    <message>
        <source>Number %1, quantity %2</source>
        <translation>Numéro %1, quantité %2</translation>
    </message>
    <message>
        <source>Another number</source>
        <translation>Autre numéro</translation>
    </message>
    <message>
        <source>Another quantity</source>
        <translation>Autre quantité</translation>
    </message>
    <message>
        <source>Renewed, and kept</source>
        <translation>Remplacé, enregistré</translation>
    </message>
    <message>
        <source>Renewed: ticked</source>
        <translation>Remplacé&#xa0;: coché</translation>
    </message>
    <message>
        <source>Tick when renewed</source>
        <translation>Cocher si remplacé</translation>
    </message>
    <message>
        <source>Keep what is ticked</source>
        <translation>Enregistrer les cochés</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::PeakPage</name>
    <message>
        <source>Back off and inspect</source>
        <translation>Reculer et contrôler</translation>
    </message>
    <message>
        <source>Attempts</source>
        <translation>Tentatives</translation>
    </message>
    <message>
        <source>The force has gone through the parts already: a second attempt would read lower and hide it. Find what was in the way and put it right before the next one. That will be attempt %1, and %2 stays on the record.</source>
        <translation>L’effort a déjà traversé les pièces&#xa0;: une deuxième tentative donnerait moins et le cacherait. Chercher ce qui gênait et y remédier avant la suivante. Ce sera la tentative %1, et %2 reste au rapport.</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1&#xa0;: %2, %3</translation>
    </message>
    <message>
        <source>, with %1</source>
        <translation>, avec %1</translation>
    </message>
    <message>
        <source>, assembly %1</source>
        <translation>, montage %1</translation>
    </message>
    <message>
        <source>. The spec sheet has at most %1 attempts.</source>
        <translation>. La fiche technique permet au plus %1 tentatives.</translation>
    </message>
    <message>
        <source>attempt %1, at most %2</source>
        <translation>tentative %1, au plus %2</translation>
    </message>
    <message>
        <source>Keep the reading</source>
        <translation>Enregistrer la mesure</translation>
    </message>
    <message>
        <source>Keep as attempt %1</source>
        <translation>Enregistrer la tentative %1</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::PhotoPage</name>
    <message>
        <source>What the next photo shows (may be blank)</source>
        <translation>Ce que montre la photo suivante (peut rester vide)</translation>
    </message>
    <message>
        <source>The words belong to the next photo: choose it, or clear them.</source>
        <translation>Les mots vont avec la photo suivante&#xa0;: la choisir, ou les effacer.</translation>
    </message>
    <message>
        <source>Choose one more picture file</source>
        <translation>Choisir encore un fichier image</translation>
    </message>
    <message>
        <source>%1 of at least %2 kept</source>
        <translation>%1 sur au moins %2 enregistrées</translation>
    </message>
    <message>
        <source>picture missing</source>
        <translation>image absente</translation>
    </message>
    <message>
        <source>Newest from the camera: press one to keep it</source>
        <translation>Dernières de l’appareil&#xa0;: appuyer sur une pour l’enregistrer</translation>
    </message>
    <message>
        <source>Choose a picture file</source>
        <translation>Choisir un fichier image</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::PromiseTable</name>
    <message>
        <source>Shim</source>
        <translation>Cale</translation>
    </message>
    <message>
        <source>Float expected, mm (95 %)</source>
        <translation>Jeu attendu, mm (95&#xa0;%)</translation>
    </message>
    <message>
        <source>Within at every spot</source>
        <translation>Dans les limites à chaque point</translation>
    </message>
    <message>
        <source>advised, fitted now</source>
        <translation>conseillée, posée actuellement</translation>
    </message>
    <message>
        <source>advised</source>
        <translation>conseillée</translation>
    </message>
    <message>
        <source>fitted now</source>
        <translation>posée actuellement</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::QuestionBox</name>
    <message>
        <source>It is right as it stands</source>
        <translation>C’est correct ainsi</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::ReadingFields</name>
    <message>
        <source>taken as %1</source>
        <translation>compris comme %1</translation>
    </message>
    <message>
        <source>Compared with “%1”.</source>
        <translation>Comparé à «&#xa0;%1&#xa0;».</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::ReadingPage</name>
    <message>
        <source>kept: %1, %2</source>
        <translation>enregistré&#xa0;: %1, %2</translation>
    </message>
    <message>
        <source>Keep the reading</source>
        <translation>Enregistrer la mesure</translation>
    </message>
    <message>
        <source>Keep the readings</source>
        <translation>Enregistrer les mesures</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::SheetList</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::ShimChoice</name>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::SignPage</name>
    <message>
        <source>Signing says that the job is as its entries have it. The seal over the whole record comes later: it is made with a PIN when the record is sealed.</source>
        <translation>Signer dit que l’intervention est comme ses entrées la décrivent. Le sceau sur tout le rapport vient plus tard&#xa0;: avec un code PIN, quand le rapport est scellé.</translation>
    </message>
    <message>
        <source>%1 signs as checker</source>
        <translation>%1 signe comme contrôleur</translation>
    </message>
    <message>
        <source>%1 signs as technician</source>
        <translation>%1 signe comme technicien</translation>
    </message>
    <message>
        <source>Sign as checker</source>
        <translation>Signer comme contrôleur</translation>
    </message>
    <message>
        <source>Sign as technician</source>
        <translation>Signer comme technicien</translation>
    </message>
    <message>
        <source>Signed. Ctrl Enter goes on.</source>
        <translation>Signé. Ctrl Entrée continue.</translation>
    </message>
    <message>
        <source>To sign: Ctrl Enter.</source>
        <translation>Pour signer&#xa0;: Ctrl Entrée.</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::SignedField</name>
    <message>
        <source>minus</source>
        <translation>moins</translation>
    </message>
    <message>
        <source>plus</source>
        <translation>plus</translation>
    </message>
    <message>
        <source>Minus or plus? Read it on the pack.</source>
        <translation>Moins ou plus&#xa0;? Le lire sur le bloc.</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::TeachInPage</name>
    <message>
        <source>Say how the teach-in went; the values are kept with the answer.</source>
        <translation>Dire comment l’apprentissage s’est passé&#xa0;; les valeurs sont enregistrées avec la réponse.</translation>
    </message>
    <message>
        <source>Attempts</source>
        <translation>Tentatives</translation>
    </message>
    <message>
        <source>%1 before</source>
        <translation>%1 avant</translation>
    </message>
    <message>
        <source>%1 after</source>
        <translation>%1 après</translation>
    </message>
    <message>
        <source>Completed</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>key 1</source>
        <translation>touche 1</translation>
    </message>
    <message>
        <source>Aborted</source>
        <translation>Interrompu</translation>
    </message>
    <message>
        <source>key 2</source>
        <translation>touche 2</translation>
    </message>
    <message>
        <source>If aborted: code shown</source>
        <translation>Si interrompu&#xa0;: code affiché</translation>
    </message>
    <message>
        <source>If aborted: why it broke off</source>
        <translation>Si interrompu&#xa0;: pourquoi</translation>
    </message>
    <message>
        <source>completed</source>
        <translation>terminé</translation>
    </message>
    <message>
        <source>aborted</source>
        <translation>interrompu</translation>
    </message>
    <message>
        <source>, code %1</source>
        <translation>, code %1</translation>
    </message>
    <message>
        <source> before %1</source>
        <translation> avant %1</translation>
    </message>
    <message>
        <source> after %1</source>
        <translation> après %1</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1&#xa0;: %2, %3</translation>
    </message>
    <message>
        <source>Completed: key 1. Aborted: key 2.</source>
        <translation>Terminé&#xa0;: touche 1. Interrompu&#xa0;: touche 2.</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::TextPage</name>
    <message>
        <source>Serial, as it stands on the part</source>
        <translation>N° de série, tel qu’il figure sur la pièce</translation>
    </message>
    <message>
        <source>In your words</source>
        <translation>En quelques mots</translation>
    </message>
    <message>
        <source>Write the kept words again</source>
        <translation>Réécrire le texte enregistré</translation>
    </message>
    <message>
        <source>kept: %1, %2</source>
        <translation>enregistré&#xa0;: %1, %2</translation>
    </message>
    <message>
        <source>Same as last job (F6)</source>
        <translation>Comme à la dernière intervention (F6)</translation>
    </message>
    <message>
        <source>Keep the serial</source>
        <translation>Enregistrer le n° de série</translation>
    </message>
    <message>
        <source>Keep the words</source>
        <translation>Enregistrer le texte</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::UnsentBox</name>
    <message>
        <source>Typed and not kept yet</source>
        <translation>Saisi et pas encore enregistré</translation>
    </message>
    <message>
        <source>Clear what is typed</source>
        <translation>Effacer la saisie</translation>
    </message>
</context>
<context>
    <name>shimwright::bench::VehicleEntry</name>
    <message>
        <source>It is no VIN</source>
        <translation>Ce n’est pas un VIN</translation>
    </message>
    <message>
        <source>Why it is no VIN</source>
        <translation>Pourquoi ce n’est pas un VIN</translation>
    </message>
    <message>
        <source>Chassis number</source>
        <translation>Numéro de châssis</translation>
    </message>
    <message>
        <source>VIN</source>
        <translation>VIN</translation>
    </message>
    <message>
        <source>VIN · %1 of 17 characters</source>
        <translation>VIN · %1 caractères sur 17</translation>
    </message>
</context>
<context>
    <name>shimwright::past::CodeCard</name>
    <message>
        <source>Whole and ours: sealed by %1.</source>
        <translation>Intact et de chez nous&#xa0;: scellé par %1.</translation>
    </message>
    <message>
        <source>Whole, but the key of %1 is marked as no longer valid.</source>
        <translation>Intact, mais la clé de %1 n’est plus valable.</translation>
    </message>
    <message>
        <source>Whole, but sealed with a key that this workshop does not know.</source>
        <translation>Intact, mais scellé avec une clé que cet atelier ne connaît pas.</translation>
    </message>
    <message>
        <source>no shim</source>
        <translation>aucune cale</translation>
    </message>
    <message>
        <source>shim %1, float not measured</source>
        <translation>cale %1, jeu non mesuré</translation>
    </message>
    <message>
        <source>shim %1, float %2</source>
        <translation>cale %1, jeu %2</translation>
    </message>
    <message>
        <source>Hold the paper beside it: a number that differs there was altered.</source>
        <translation>Tenir le papier à côté&#xa0;: un nombre qui y diffère a été modifié.</translation>
    </message>
    <message>
        <source>Vehicle</source>
        <translation>Véhicule</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Intervention</translation>
    </message>
    <message>
        <source>Lower disc, large bearing</source>
        <translation>Disque inférieur, grande butée</translation>
    </message>
    <message>
        <source>Upper disc, small bearing</source>
        <translation>Disque supérieur, petite butée</translation>
    </message>
    <message>
        <source>Seal</source>
        <translation>Sceau</translation>
    </message>
    <message>
        <source>Signed by %1: %2</source>
        <translation>Signé par %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>no shim, float %1</source>
        <translation>aucune cale, jeu %1</translation>
    </message>
</context>
<context>
    <name>shimwright::past::FloatChart</name>
    <message>
        <source>as found</source>
        <translation>à l’arrivée</translation>
    </message>
    <message>
        <source>final</source>
        <translation>à la fin</translation>
    </message>
    <message>
        <source>No float was judged yet.</source>
        <translation>Aucun jeu n’a encore été jugé.</translation>
    </message>
    <message>
        <source>so far</source>
        <translation>jusqu’ici</translation>
    </message>
    <message>
        <source>job %1, %2: %3 %4, limits %5 to %6, %7</source>
        <translation>travail %1, %2&#xa0;: %3 %4, limites %5 à %6, %7</translation>
    </message>
</context>
<context>
    <name>shimwright::past::JobComparison</name>
    <message>
        <source>Job %1, %2</source>
        <translation>Intervention %1, %2</translation>
    </message>
    <message>
        <source>not there</source>
        <translation>absent</translation>
    </message>
    <message>
        <source>differs</source>
        <translation>différent</translation>
    </message>
    <message>
        <source>Only what differs</source>
        <translation>Seulement ce qui diffère</translation>
    </message>
    <message>
        <source>All readings</source>
        <translation>Toutes les mesures</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Plus tôt</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Plus tard</translation>
    </message>
    <message>
        <source>%1 of %2 readings differ</source>
        <translation>%1 mesures sur %2 diffèrent</translation>
    </message>
</context>
<context>
    <name>shimwright::past::JobRow</name>
    <message>
        <source>open</source>
        <translation>ouverte</translation>
    </message>
    <message>
        <source>parked</source>
        <translation>en attente</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>clôturée</translation>
    </message>
    <message>
        <source>VIN</source>
        <translation>VIN</translation>
    </message>
    <message>
        <source>plate</source>
        <translation>immatriculation</translation>
    </message>
    <message>
        <source>job number</source>
        <translation>numéro d’intervention</translation>
    </message>
    <message>
        <source>customer reference</source>
        <translation>référence du client</translation>
    </message>
    <message>
        <source>gearbox serial</source>
        <translation>n° de série de la boîte</translation>
    </message>
    <message>
        <source>pack serial</source>
        <translation>n° de série du bloc</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>lot</translation>
    </message>
    <message>
        <source>Job %1</source>
        <translation>Intervention %1</translation>
    </message>
    <message>
        <source>found in: %1</source>
        <translation>trouvé dans&#xa0;: %1</translation>
    </message>
    <message>
        <source>waits for %1</source>
        <translation>attend %1</translation>
    </message>
    <message>
        <source>unit %1</source>
        <translation>boîte %1</translation>
    </message>
    <message>
        <source>exact</source>
        <translation>exact</translation>
    </message>
    <message>
        <source>one character differs</source>
        <translation>un caractère diffère</translation>
    </message>
    <message>
        <source>no plate given</source>
        <translation>immatriculation non indiquée</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation>d MMM yyyy</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>retiré</translation>
    </message>
    <message>
        <source>two characters swapped</source>
        <translation>deux caractères intervertis</translation>
    </message>
</context>
<context>
    <name>shimwright::past::LifeRow</name>
    <message>
        <source>as found</source>
        <translation>à l’arrivée</translation>
    </message>
    <message>
        <source>final float</source>
        <translation>à la fin</translation>
    </message>
    <message>
        <source>float so far</source>
        <translation>jusqu’ici</translation>
    </message>
    <message>
        <source>lower</source>
        <translation>inférieur</translation>
    </message>
    <message>
        <source>upper</source>
        <translation>supérieur</translation>
    </message>
    <message>
        <source>not measured as found</source>
        <translation>non mesuré à l’arrivée</translation>
    </message>
    <message>
        <source>no float yet</source>
        <translation>pas encore de jeu</translation>
    </message>
    <message>
        <source>float as found: %1</source>
        <translation>jeu à l’arrivée&#xa0;: %1</translation>
    </message>
    <message>
        <source>final float: %1</source>
        <translation>jeu à la fin&#xa0;: %1</translation>
    </message>
    <message>
        <source>float so far: %1</source>
        <translation>jeu jusqu’ici&#xa0;: %1</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>signé</translation>
    </message>
    <message>
        <source>signed, 1 addendum</source>
        <translation>signé, 1 additif</translation>
    </message>
    <message>
        <source>signed, %1 addenda</source>
        <translation>signé, %1 additifs</translation>
    </message>
    <message>
        <source>waits for %1</source>
        <translation>attend %1</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>mixte</translation>
    </message>
    <message>
        <source>Job %1</source>
        <translation>Intervention %1</translation>
    </message>
    <message>
        <source>shims large %1, small %2</source>
        <translation>cales grande %1, petite %2</translation>
    </message>
    <message>
        <source>shims</source>
        <translation>cales</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Intervention</translation>
    </message>
    <message>
        <source>Disc</source>
        <translation>Disque</translation>
    </message>
    <message>
        <source>Float (%1)</source>
        <translation>Jeu (%1)</translation>
    </message>
    <message>
        <source>± 95 %</source>
        <translation>± 95 %</translation>
    </message>
    <message>
        <source>Limits (%1)</source>
        <translation>Limites (%1)</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Verdict</translation>
    </message>
    <message>
        <source>final</source>
        <translation>à la fin</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>Unit %1</source>
        <translation>Boîte %1</translation>
    </message>
    <message>
        <source>model year by its code %1</source>
        <translation>année-modèle selon son code %1</translation>
    </message>
    <message>
        <source>check digit fits</source>
        <translation>chiffre de contrôle juste</translation>
    </message>
    <message>
        <source>check digit does not fit</source>
        <translation>chiffre de contrôle faux</translation>
    </message>
    <message>
        <source>1 job</source>
        <translation>1 intervention</translation>
    </message>
    <message>
        <source>%1 jobs</source>
        <translation>%1 interventions</translation>
    </message>
    <message>
        <source>the seal does not hold</source>
        <translation>le sceau ne tient pas</translation>
    </message>
    <message>
        <source>signed with a key not known here</source>
        <translation>signé avec une clé inconnue ici</translation>
    </message>
    <message>
        <source>so far</source>
        <translation>jusqu’ici</translation>
    </message>
</context>
<context>
    <name>shimwright::past::PageColumn</name>
    <message>
        <source>Pages of the record</source>
        <translation>Pages du rapport</translation>
    </message>
</context>
<context>
    <name>shimwright::past::PastJobs</name>
    <message>
        <source>Search past jobs</source>
        <translation>Chercher dans les interventions passées</translation>
    </message>
    <message>
        <source>There is no job in this workshop yet.</source>
        <translation>Il n’y a pas encore d’intervention dans cet atelier.</translation>
    </message>
    <message>
        <source>The latest jobs</source>
        <translation>Les dernières interventions</translation>
    </message>
    <message>
        <source>No job has this. Try fewer characters, or the end of the VIN.</source>
        <translation>Aucune intervention trouvée. Essayer moins de caractères, ou la fin du VIN.</translation>
    </message>
    <message>
        <source>The first %1 jobs that have it; type more to narrow them down</source>
        <translation>Les %1 premières interventions trouvées&#xa0;; en taper plus pour réduire</translation>
    </message>
    <message>
        <source>1 job has it</source>
        <translation>1 intervention trouvée</translation>
    </message>
    <message>
        <source>%1 jobs have it</source>
        <translation>%1 interventions trouvées</translation>
    </message>
    <message>
        <source>New job for it</source>
        <translation>Nouvelle intervention</translation>
    </message>
    <message>
        <source>Take up</source>
        <translation>Reprendre</translation>
    </message>
    <message>
        <source>Job %1</source>
        <translation>Intervention %1</translation>
    </message>
    <message>
        <source>Choose a signed record</source>
        <translation>Choisir un rapport signé</translation>
    </message>
    <message>
        <source>Signed records (*.signed.json)</source>
        <translation>Rapports signés (*.signed.json)</translation>
    </message>
    <message>
        <source>Check a signed file</source>
        <translation>Vérifier un fichier signé</translation>
    </message>
    <message>
        <source>End or any part of a VIN, plate, job number, customer reference or serial; or scan the code of a record.</source>
        <translation>Fin ou partie d’un VIN, d’une immatriculation, d’un numéro d’intervention, d’une référence client ou de série&#xa0;; ou lire le code d’un rapport.</translation>
    </message>
    <message>
        <source>%1: the first %2 of %3 jobs</source>
        <translation>%1&#xa0;: les %2 premières de %3 interventions</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>This does not hold:</source>
        <translation>Ceci ne résiste pas à la vérification&#xa0;:</translation>
    </message>
    <message>
        <source>What was signed</source>
        <translation>Ce qui a été signé</translation>
    </message>
    <message>
        <source>Vehicle</source>
        <translation>Véhicule</translation>
    </message>
    <message>
        <source>Show more</source>
        <translation>En montrer plus</translation>
    </message>
    <message>
        <source>No job has exactly this. Jobs that come close: %1</source>
        <translation>Aucun travail n’a exactement cela. Travaux qui s’en approchent&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>shimwright::past::RecordView</name>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Page up</source>
        <translation>Page précédente</translation>
    </message>
    <message>
        <source>Page down</source>
        <translation>Page suivante</translation>
    </message>
    <message>
        <source>Fit width</source>
        <translation>Largeur</translation>
    </message>
    <message>
        <source>100 %</source>
        <translation>100&#xa0;%</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimer</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Enregistrer en PDF</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Record of job %1</source>
        <translation>Rapport de l’intervention %1</translation>
    </message>
    <message>
        <source>Writing page %1 of %2</source>
        <translation>Écriture de la page %1 sur %2</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Enregistré&#xa0;: %1</translation>
    </message>
    <message>
        <source>Stopped: nothing was written.</source>
        <translation>Arrêté&#xa0;: rien n’a été écrit.</translation>
    </message>
    <message>
        <source>Printing page %1 of %2</source>
        <translation>Impression de la page %1 sur %2</translation>
    </message>
    <message>
        <source>Handed to the printer.</source>
        <translation>Transmis à l’imprimante.</translation>
    </message>
    <message>
        <source>Stopped. Pages the printer had already may still come out.</source>
        <translation>Arrêté. Des pages que l’imprimante avait déjà peuvent encore sortir.</translation>
    </message>
    <message>
        <source>record-%1</source>
        <translation>rapport-%1</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>page %1 sur %2</translation>
    </message>
    <message>
        <source>With photos</source>
        <translation>Avec photos</translation>
    </message>
    <message>
        <source>Shift slip</source>
        <translation>Fiche de relève</translation>
    </message>
    <message>
        <source>The photos are being read.</source>
        <translation>Lecture des photos en cours.</translation>
    </message>
</context>
<context>
    <name>shimwright::past::SealBox</name>
    <message>
        <source>Not sealed yet: this has to be decided first.</source>
        <translation>Pas encore scellé&#xa0;: ceci est d’abord à décider.</translation>
    </message>
    <message>
        <source>PIN of %1</source>
        <translation>Code PIN de %1</translation>
    </message>
    <message>
        <source>The same once more</source>
        <translation>Le même encore une fois</translation>
    </message>
    <message>
        <source>Seal the record: nothing in it can be changed after that, only added to, with a signature.</source>
        <translation>Sceller le rapport&#xa0;: après, rien n’y peut être changé, seulement ajouté, avec une signature.</translation>
    </message>
    <message>
        <source>Sign and seal</source>
        <translation>Signer et sceller</translation>
    </message>
    <message>
        <source>Sealed. Whole, and signed with keys of this workshop.</source>
        <translation>Scellé. Intact, et signé avec des clés de cet atelier.</translation>
    </message>
    <message>
        <source>Add to it</source>
        <translation>Y ajouter</translation>
    </message>
    <message>
        <source>Why is something added?</source>
        <translation>Pourquoi ajouter quelque chose&#xa0;?</translation>
    </message>
    <message>
        <source>What is added</source>
        <translation>Ce qui est ajouté</translation>
    </message>
    <message>
        <source>Sign the addition</source>
        <translation>Signer l’additif</translation>
    </message>
    <message>
        <source>The two PINs of %1 differ: type both again.</source>
        <translation>Les deux codes PIN de %1 diffèrent&#xa0;: taper les deux à nouveau.</translation>
    </message>
    <message>
        <source>Signed and sealed.</source>
        <translation>Signé et scellé.</translation>
    </message>
    <message>
        <source>Somebody else is at the bench now: begin the addition anew.</source>
        <translation>Quelqu’un d’autre est maintenant à l’établi&#xa0;: recommencer l’additif.</translation>
    </message>
    <message>
        <source>Added and signed.</source>
        <translation>Ajouté et signé.</translation>
    </message>
    <message>
        <source>Its file could not be written: %1</source>
        <translation>Son fichier n’a pas pu être écrit&#xa0;: %1</translation>
    </message>
    <message>
        <source>No folder for backups is set, so no file of it was written.</source>
        <translation>Aucun dossier de sauvegarde n’est réglé, donc aucun fichier n’en a été écrit.</translation>
    </message>
    <message>
        <source>Its file: %1</source>
        <translation>Son fichier&#xa0;: %1</translation>
    </message>
    <message>
        <source>The key of %1 has ended: give a new PIN under People in the workshop.</source>
        <translation>La clé de %1 n’est plus valable&#xa0;: donner un nouveau code PIN sous Personnes dans l’atelier.</translation>
    </message>
    <message>
        <source>Sealed. Whether the seal holds is being looked at.</source>
        <translation>Scellé. Vérification du sceau en cours.</translation>
    </message>
    <message>
        <source>Signing: this takes a moment.</source>
        <translation>Signature en cours&#xa0;: un instant.</translation>
    </message>
    <message>
        <source>First PIN of %1</source>
        <translation>Premier code PIN de %1</translation>
    </message>
    <message>
        <source>4 to 12 digits</source>
        <translation>4 à 12 chiffres</translation>
    </message>
</context>
<context>
    <name>shimwright::past::VehiclePage</name>
    <message>
        <source>Writing job %1 of %2</source>
        <translation>Écriture de l’intervention %1 sur %2</translation>
    </message>
    <message>
        <source>Stopped: nothing was written.</source>
        <translation>Arrêté&#xa0;: rien n’a été écrit.</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Compare two jobs</source>
        <translation>Comparer deux interventions</translation>
    </message>
    <message>
        <source>New job for it</source>
        <translation>Nouvelle pour lui</translation>
    </message>
    <message>
        <source>Each job with the large bearing and the lower disc before the stroke, the small and the upper behind.</source>
        <translation>Pour chaque intervention, la grande butée et le disque inférieur avant la barre, la petite et le supérieur après.</translation>
    </message>
    <message>
        <source>Older jobs that are not shown here: %1. The past jobs find them by the VIN.</source>
        <translation>Interventions plus anciennes qui ne sont pas ici&#xa0;: %1. Les interventions passées les trouvent par le VIN.</translation>
    </message>
    <message>
        <source>Float of the lower disc over the vehicle&apos;s life</source>
        <translation>Jeu du disque inférieur</translation>
    </message>
    <message>
        <source>Float of the upper disc over the vehicle&apos;s life</source>
        <translation>Jeu du disque supérieur</translation>
    </message>
    <message>
        <source>The same in numbers</source>
        <translation>Le même en chiffres</translation>
    </message>
    <message>
        <source>Every measurement as a file</source>
        <translation>Toutes les mesures dans un fichier</translation>
    </message>
    <message>
        <source>For a spreadsheet or another program. Plate and customer reference are in it unless they were erased.</source>
        <translation>Pour un tableur ou un autre programme. L’immatriculation et la référence client y sont, sauf si elles ont été effacées.</translation>
    </message>
    <message>
        <source>Save as CSV</source>
        <translation>Enregistrer en CSV</translation>
    </message>
    <message>
        <source>Save as JSON</source>
        <translation>Enregistrer en JSON</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Wear</source>
        <translation>Usure</translation>
    </message>
    <message>
        <source>No pack was measured both when it was fitted and as it was found later.</source>
        <translation>Aucun bloc n’a été mesuré à la fois au montage et, plus tard, à l’arrivée.</translation>
    </message>
    <message>
        <source>The whole life</source>
        <translation>Toutes les interventions</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Enregistré&#xa0;: %1</translation>
    </message>
    <message>
        <source>The jobs of this vehicle are being read.</source>
        <translation>Lecture des interventions de ce véhicule en cours.</translation>
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
        <translation>Cales, jeux et rapports pour le bloc d’embrayage à sec d’une boîte à double embrayage.</translation>
    </message>
    <message>
        <source>Try the demonstration workshop</source>
        <translation>Essayer l’atelier de démonstration</translation>
    </message>
    <message>
        <source>A made-up workshop with jobs in work. It lies in a folder of its own and never mixes with yours.</source>
        <translation>Un atelier inventé avec des interventions en cours. Il est dans son propre dossier et ne se mêle jamais au vrai.</translation>
    </message>
    <message>
        <source>Job sheet and spec sheets come with the program; their limits are demonstration values until your own are entered.</source>
        <translation>La fiche de travail et les fiches techniques viennent avec le programme&#xa0;; leurs limites sont des valeurs de démonstration jusqu’à la saisie de celles de l’atelier.</translation>
    </message>
    <message>
        <source>Name of the workshop</source>
        <translation>Nom de l’atelier</translation>
    </message>
    <message>
        <source>Address, as on the record</source>
        <translation>Adresse, telle qu’au rapport</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Initiales</translation>
    </message>
    <message>
        <source>It will lie here: %1</source>
        <translation>Elle sera ici&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: nothing is written here yet.</source>
        <translation>%1&#xa0;: rien n’est encore écrit ici.</translation>
    </message>
    <message>
        <source>Choose a logo for the record</source>
        <translation>Choisir un logo pour le rapport</translation>
    </message>
    <message>
        <source>none; it can come later</source>
        <translation>aucun&#xa0;; il peut venir plus tard</translation>
    </message>
    <message>
        <source>On this machine</source>
        <translation>Sur cette machine</translation>
    </message>
    <message>
        <source>Language of the window</source>
        <translation>Langue de la fenêtre</translation>
    </message>
    <message>
        <source>Lengths are shown and typed in</source>
        <translation>Longueurs affichées et saisies en</translation>
    </message>
    <message>
        <source>Torques are shown and typed in</source>
        <translation>Couples affichés et saisis en</translation>
    </message>
    <message>
        <source>Paper of records</source>
        <translation>Papier des rapports</translation>
    </message>
    <message>
        <source>Nobody is at work here yet. Enter who is; all else of this workshop stays as it is.</source>
        <translation>Personne ne travaille encore ici. Saisir qui y travaille&#xa0;; tout le reste de cet atelier reste comme il est.</translation>
    </message>
    <message>
        <source>All of it can be changed later in the settings.</source>
        <translation>Tout peut être changé plus tard dans les réglages.</translation>
    </message>
    <message>
        <source>To look around</source>
        <translation>Pour se faire une idée</translation>
    </message>
    <message>
        <source>Name of the first person</source>
        <translation>Nom de la première personne</translation>
    </message>
    <message>
        <source>Begin this workshop</source>
        <translation>Commencer cet atelier</translation>
    </message>
    <message>
        <source>Remove the logo</source>
        <translation>Retirer le logo</translation>
    </message>
    <message>
        <source>Your own workshop</source>
        <translation>Votre propre atelier</translation>
    </message>
</context>
<context>
    <name>shimwright::shell::HindrancePage</name>
    <message>
        <source>The store does not open</source>
        <translation>La base ne s’ouvre pas</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Réessayer</translation>
    </message>
    <message>
        <source>Open for looking only</source>
        <translation>Ouvrir en lecture seule</translation>
    </message>
    <message>
        <source>Break the lock of a program that is gone</source>
        <translation>Forcer le verrou d’un programme qui n’est plus là</translation>
    </message>
    <message>
        <source>That program is gone: break its lock</source>
        <translation>Ce programme n’est plus là&#xa0;: forcer son verrou</translation>
    </message>
    <message>
        <source>Somebody</source>
        <translation>Quelqu’un</translation>
    </message>
    <message>
        <source>%1, on %2, since %3</source>
        <translation>%1, sur %2, depuis %3</translation>
    </message>
    <message>
        <source>Program number %1 holds the lock. Ask there first: where two programs write in one store, entries are lost. Break the lock only where that program or its machine is gone.</source>
        <translation>Le programme numéro %1 tient le verrou. Y demander d’abord&#xa0;: quand deux programmes écrivent dans une base, des entrées se perdent. Ne forcer le verrou que si ce programme ou sa machine n’est plus là.</translation>
    </message>
    <message>
        <source>The last backup</source>
        <translation>La dernière sauvegarde</translation>
    </message>
    <message>
        <source>Put this backup in its place</source>
        <translation>Mettre cette sauvegarde à sa place</translation>
    </message>
    <message>
        <source>Looking for the last whole backup in %1.</source>
        <translation>Recherche de la dernière sauvegarde intacte dans %1.</translation>
    </message>
    <message>
        <source>The damaged store is kept as a file beside it.</source>
        <translation>La base endommagée est gardée comme fichier à côté.</translation>
    </message>
    <message>
        <source>There is no whole backup of this store in %1. Bring the folder of your backups back, and try again; keep the damaged file as it is.</source>
        <translation>Aucune sauvegarde intacte de cette base dans %1. Rapporter le dossier des sauvegardes et réessayer&#xa0;; garder le fichier endommagé tel quel.</translation>
    </message>
    <message>
        <source>The backup was not put there. %1</source>
        <translation>La sauvegarde n’y a pas été mise. %1</translation>
    </message>
    <message>
        <source>Leave the lock</source>
        <translation>Laisser le verrou</translation>
    </message>
</context>
<context>
    <name>shimwright::shell::MainWindow</name>
    <message>
        <source>This store is open for looking only: nothing can be entered.</source>
        <translation>Cette base est ouverte en lecture seule&#xa0;: rien ne peut être saisi.</translation>
    </message>
    <message>
        <source>What is typed here is not saved yet: mend it, or empty the field.</source>
        <translation>Ce qui est saisi ici n’est pas encore enregistré&#xa0;: le corriger, ou vider le champ.</translation>
    </message>
    <message>
        <source>The backup is being made and checked.</source>
        <translation>La sauvegarde est en cours, puis vérifiée.</translation>
    </message>
    <message>
        <source>The backup was not made. %1</source>
        <translation>La sauvegarde n’a pas été faite. %1</translation>
    </message>
    <message>
        <source>Close without it</source>
        <translation>Fermer sans cela</translation>
    </message>
</context>
<context>
    <name>shimwright::shell::Notices</name>
    <message>
        <source>Understood</source>
        <translation>Compris</translation>
    </message>
</context>
<context>
    <name>shimwright::shell::PersonRow</name>
    <message>
        <source>Who is at the bench</source>
        <translation>Qui est à l’établi</translation>
    </message>
    <message>
        <source>Who is at the bench?</source>
        <translation>Qui est à l’établi&#xa0;?</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Échap</translation>
    </message>
</context>
<context>
    <name>shimwright::shell::PhotoWatch</name>
    <message>
        <source>Photos that are gone from the folder of photos: %1. They are of job %2.</source>
        <translation>Photos qui manquent dans le dossier des photos&#xa0;: %1. Elles sont du travail %2.</translation>
    </message>
    <message>
        <source>Bring them back from the backup</source>
        <translation>Les reprendre de la sauvegarde</translation>
    </message>
    <message>
        <source>Photos that are back: %1. None is missing now.</source>
        <translation>Photos revenues&#xa0;: %1. Il n’en manque plus aucune.</translation>
    </message>
    <message>
        <source>Photos that are back: %1. Not in the backup either: %2.</source>
        <translation>Photos revenues&#xa0;: %1. Absentes aussi de la sauvegarde&#xa0;: %2.</translation>
    </message>
</context>
<context>
    <name>shimwright::shell::Program</name>
    <message>
        <source>This picture cannot be read; choose it again.</source>
        <translation>Cette image ne peut pas être lue&#xa0;; la choisir à nouveau.</translation>
    </message>
    <message>
        <source>The backup is being put in the place of the damaged store</source>
        <translation>La sauvegarde prend la place de la base endommagée</translation>
    </message>
    <message>
        <source>This is the last whole backup. The damaged store is kept: %1</source>
        <translation>C’est la dernière sauvegarde intacte. La base endommagée est gardée&#xa0;: %1</translation>
    </message>
    <message>
        <source>The store is going back to the backup</source>
        <translation>La base revient à la sauvegarde</translation>
    </message>
    <message>
        <source>This is the backup. Jobs: %1, entries found equal one by one: %2. What was here before is kept: %3</source>
        <translation>Ceci est la sauvegarde. Interventions&#xa0;: %1, entrées trouvées égales une à une&#xa0;: %2. Ce qui était ici avant est gardé&#xa0;: %3</translation>
    </message>
    <message>
        <source>Photos that are gone: %1.</source>
        <translation>Photos manquantes&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>shimwright::shell::SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Aspect</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Clair</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Sombre</translation>
    </message>
    <message>
        <source>Brightness</source>
        <translation>Luminosité</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Taille</translation>
    </message>
    <message>
        <source>Language of the window</source>
        <translation>Langue de la fenêtre</translation>
    </message>
    <message>
        <source>At the bench</source>
        <translation>À l’établi</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Non</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Oui</translation>
    </message>
    <message>
        <source>A tone when a reading is saved</source>
        <translation>Un son quand une mesure est enregistrée</translation>
    </message>
    <message>
        <source>Folder the camera puts its photos in</source>
        <translation>Dossier où l’appareil met ses photos</translation>
    </message>
    <message>
        <source>Choose the camera&apos;s folder</source>
        <translation>Choisir le dossier de l’appareil</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Sauvegarde</translation>
    </message>
    <message>
        <source>Once a day, by itself. A folder on another disk also helps when this one breaks.</source>
        <translation>Une fois par jour, d’elle-même. Un dossier sur un autre disque aide aussi quand celui-ci casse.</translation>
    </message>
    <message>
        <source>Choose the backup folder</source>
        <translation>Choisir le dossier de sauvegarde</translation>
    </message>
    <message>
        <source>Back up now</source>
        <translation>Sauvegarder maintenant</translation>
    </message>
    <message>
        <source>Store</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>Open this workshop&apos;s own store</source>
        <translation>Ouvrir la base de cet atelier</translation>
    </message>
    <message>
        <source>Open the demonstration workshop</source>
        <translation>Ouvrir l’atelier de démonstration</translation>
    </message>
    <message>
        <source>none chosen yet</source>
        <translation>aucun encore choisi</translation>
    </message>
    <message>
        <source>Folder: %1</source>
        <translation>Dossier&#xa0;: %1</translation>
    </message>
    <message>
        <source>Last verified backup: %1</source>
        <translation>Dernière sauvegarde vérifiée&#xa0;: %1</translation>
    </message>
    <message>
        <source>No verified backup yet.</source>
        <translation>Pas encore de sauvegarde vérifiée.</translation>
    </message>
    <message>
        <source>Lengths are shown and typed in</source>
        <translation>Longueurs affichées et saisies en</translation>
    </message>
    <message>
        <source>Torques are shown and typed in</source>
        <translation>Couples affichés et saisis en</translation>
    </message>
    <message>
        <source>Paper of records</source>
        <translation>Papier des rapports</translation>
    </message>
    <message>
        <source>Delete the demonstration workshop</source>
        <translation>Supprimer l’atelier de démonstration</translation>
    </message>
    <message>
        <source>What was tried in it goes too; this workshop&apos;s own store is not touched.</source>
        <translation>Ce qui y a été essayé part aussi&#xa0;; la base de cet atelier n’est pas touchée.</translation>
    </message>
    <message>
        <source>Delete it</source>
        <translation>Supprimer</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>The demonstration is deleted; it can be made anew at any time.</source>
        <translation>La démonstration est supprimée&#xa0;; elle peut être refaite à tout moment.</translation>
    </message>
    <message>
        <source>The size takes effect at the next start.</source>
        <translation>La taille prend effet au prochain démarrage.</translation>
    </message>
    <message>
        <source>The window shows it once it comes up anew.</source>
        <translation>La fenêtre l&apos;affiche dès qu&apos;elle s&apos;ouvre à nouveau.</translation>
    </message>
    <message>
        <source>Let it come up now</source>
        <translation>La rouvrir maintenant</translation>
    </message>
</context>
<context>
    <name>shimwright::shell::TopBar</name>
    <message>
        <source>to the bench</source>
        <translation>à l’établi</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Établi</translation>
    </message>
    <message>
        <source>Past jobs</source>
        <translation>Interventions passées</translation>
    </message>
    <message>
        <source>Workshop</source>
        <translation>Atelier</translation>
    </message>
    <message>
        <source>demo workshop</source>
        <translation>atelier de démo</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>At the bench: nobody</source>
        <translation>À l’établi&#xa0;: personne</translation>
    </message>
    <message>
        <source>At the bench: %1</source>
        <translation>À l’établi&#xa0;: %1</translation>
    </message>
    <message>
        <source>demo</source>
        <translation>démo</translation>
    </message>
</context>
<context>
    <name>shimwright::shell::WaitPage</name>
    <message>
        <source>Progress</source>
        <translation>Avancement</translation>
    </message>
    <message>
        <source>Leave the machine on until this is done. What was in the store before is kept.</source>
        <translation>Laisser la machine allumée jusqu’à la fin. Ce qui était dans la base avant est gardé.</translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::DiscView</name>
    <message>
        <source>spot %1: to be measured now</source>
        <translation>point %1&#xa0;: à mesurer maintenant</translation>
    </message>
    <message>
        <source>spot %1: %2</source>
        <translation>point %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>stands highest at %1 degrees from the top, clockwise</source>
        <translation>le plus haut à %1 degrés depuis le haut, sens horaire</translation>
    </message>
    <message>
        <source>Disc from above</source>
        <translation>Disque vu de dessus</translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::Keypad</name>
    <message>
        <source>delete</source>
        <translation>effacer</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>minus</source>
        <translation>moins</translation>
    </message>
    <message>
        <source>decimal comma</source>
        <translation>virgule</translation>
    </message>
    <message>
        <source>Keypad</source>
        <translation>Pavé numérique</translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::LimitStrip</name>
    <message>
        <source>Limits</source>
        <translation>Limites</translation>
    </message>
    <message>
        <source>spot %1: %2</source>
        <translation>point %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>spot %1: %2 %3</source>
        <translation>point %1&#xa0;: %2 %3</translation>
    </message>
    <message>
        <source>Limits %1 to %2 mm</source>
        <translation>Limites %1 à %2 mm</translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::PackDrawing</name>
    <message>
        <source>large bearing</source>
        <translation>grande butée</translation>
    </message>
    <message>
        <source>small bearing</source>
        <translation>petite butée</translation>
    </message>
    <message>
        <source>shim of the large bearing</source>
        <translation>cale de la grande butée</translation>
    </message>
    <message>
        <source>shim of the small bearing</source>
        <translation>cale de la petite butée</translation>
    </message>
    <message>
        <source>large lever</source>
        <translation>grand levier</translation>
    </message>
    <message>
        <source>small lever</source>
        <translation>petit levier</translation>
    </message>
    <message>
        <source>pack</source>
        <translation>bloc</translation>
    </message>
    <message>
        <source>ring of the pack</source>
        <translation>circlip du bloc</translation>
    </message>
    <message>
        <source>hub</source>
        <translation>moyeu</translation>
    </message>
    <message>
        <source>ring of the hub</source>
        <translation>circlip du moyeu</translation>
    </message>
    <message>
        <source>lower disc</source>
        <translation>disque inférieur</translation>
    </message>
    <message>
        <source>upper disc</source>
        <translation>disque supérieur</translation>
    </message>
    <message>
        <source>shafts</source>
        <translation>arbres</translation>
    </message>
    <message>
        <source>housing</source>
        <translation>carter</translation>
    </message>
    <message>
        <source>Half section of the pack</source>
        <translation>Demi-coupe du bloc</translation>
    </message>
    <message>
        <source>Half section of the pack, in hand: %1</source>
        <translation>Demi-coupe du bloc, en main&#xa0;: %1</translation>
    </message>
    <message>
        <source>Not to scale; shims drawn thicker than they are</source>
        <translation>Pas à l’échelle&#xa0;; cales dessinées plus épaisses qu’elles ne sont</translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::ShimRowButton</name>
    <message>
        <source>ruled out</source>
        <translation>exclue</translation>
    </message>
    <message>
        <source>contradicted</source>
        <translation>contredite</translation>
    </message>
    <message>
        <source>picked</source>
        <translation>choisie</translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::ShimRows</name>
    <message>
        <source>Shims, thick to thin</source>
        <translation>Cales, d’épais à mince</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1: ruled out</source>
        <translation>%1&#xa0;: exclues</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: %2 in 100 together</source>
        <translation>%1&#xa0;: %2 sur 100 ensemble</translation>
    </message>
    <message>
        <source>%1: less than 1 in 100</source>
        <translation>%1&#xa0;: moins de 1 sur 100</translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::SizeScale</name>
    <message>
        <source>Sizes</source>
        <translation>Tailles</translation>
    </message>
    <message>
        <source>%1 chosen</source>
        <translation>%1 choisie</translation>
    </message>
    <message>
        <source>%1 possible</source>
        <translation>%1 possible</translation>
    </message>
    <message>
        <source>wanted %1 mm</source>
        <translation>cherchée %1 mm</translation>
    </message>
</context>
<context>
    <name>shimwright::widgets::StageBar</name>
    <message>
        <source>%1 of %2 stages done</source>
        <translation>%1 phases faites sur %2</translation>
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
        <translation>Sauvegarde</translation>
    </message>
    <message>
        <source>Back up now</source>
        <translation>Sauvegarder maintenant</translation>
    </message>
    <message>
        <source>Choose another folder</source>
        <translation>Choisir un autre dossier</translation>
    </message>
    <message>
        <source>Choose a folder for backups, on a second disk or a share.</source>
        <translation>Choisir un dossier pour les sauvegardes, sur un second disque ou un partage.</translation>
    </message>
    <message>
        <source>Folder: %1</source>
        <translation>Dossier&#xa0;: %1</translation>
    </message>
    <message>
        <source>It lies on the same disk as the store: choose one on a second disk or a share.</source>
        <translation>Il est sur le même disque que la base&#xa0;: en choisir un sur un second disque ou un partage.</translation>
    </message>
    <message>
        <source>Last verified backup: %1, %2</source>
        <translation>Dernière sauvegarde contrôlée&#xa0;: %1, %2</translation>
    </message>
    <message>
        <source>The backup is being made.</source>
        <translation>La sauvegarde est en cours.</translation>
    </message>
    <message>
        <source>Backup made and checked. Entries: %1, photos: %2.</source>
        <translation>Sauvegarde faite et contrôlée. Entrées&#xa0;: %1, photos&#xa0;: %2.</translation>
    </message>
    <message>
        <source>The file of before, with what the store has no more, is kept: %1</source>
        <translation>Le fichier d’avant, avec ce que la base n’a plus, est gardé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Photos that are gone, and so not in it: %1.</source>
        <translation>Photos manquantes, donc absentes d’elle&#xa0;: %1.</translation>
    </message>
    <message>
        <source>No verified backup yet.</source>
        <translation>Pas encore de sauvegarde vérifiée.</translation>
    </message>
    <message>
        <source>A backup is made by itself every day, checked before it takes its name, and kept for a week: one file for each day of the week. The file from before each update of the store is kept for good. Jobs go on meanwhile.</source>
        <translation>Une sauvegarde se fait d’elle-même chaque jour, est contrôlée avant de prendre son nom, et gardée une semaine&#xa0;: un fichier par jour de la semaine. Le fichier d’avant chaque mise à jour de la base est gardé pour toujours. Le travail continue pendant ce temps.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::DataSection</name>
    <message>
        <source>Data and backup</source>
        <translation>Données et sauvegarde</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::FiguresCard</name>
    <message>
        <source>Last 12 months</source>
        <translation>12 derniers mois</translation>
    </message>
    <message>
        <source>Last 3 years</source>
        <translation>3 dernières années</translation>
    </message>
    <message>
        <source>All jobs</source>
        <translation>Toutes</translation>
    </message>
    <message>
        <source>A vehicle is back soon within:</source>
        <translation>Un véhicule revient vite en moins de&#xa0;:</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Distance</translation>
    </message>
    <message>
        <source>The figures are being read.</source>
        <translation>Les chiffres sont en cours de lecture.</translation>
    </message>
    <message>
        <source>Jobs of which time</source>
        <translation>Interventions de quelle période</translation>
    </message>
    <message>
        <source>Time, in days</source>
        <translation>Durée en jours</translation>
    </message>
    <message>
        <source>Show the figures</source>
        <translation>Montrer les chiffres</translation>
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
        <translation>grande butée</translation>
    </message>
    <message>
        <source>small bearing</source>
        <translation>petite butée</translation>
    </message>
    <message>
        <source>Figures of the workshop</source>
        <translation>Chiffres de l’atelier</translation>
    </message>
    <message>
        <source>Jobs a month</source>
        <translation>Interventions par mois</translation>
    </message>
    <message>
        <source>No job was opened in this time.</source>
        <translation>Aucune intervention n’a été ouverte pendant cette période.</translation>
    </message>
    <message>
        <source>A second assembly</source>
        <translation>Un deuxième montage</translation>
    </message>
    <message>
        <source>Of the jobs in which a shim was chosen.</source>
        <translation>Des interventions où une cale a été choisie.</translation>
    </message>
    <message>
        <source>Pack off again</source>
        <translation>Bloc redéposé</translation>
    </message>
    <message>
        <source>%1 of %2, %3 %</source>
        <translation>%1 sur %2, %3 %</translation>
    </message>
    <message>
        <source>Trials for a shim</source>
        <translation>Essais pour une cale</translation>
    </message>
    <message>
        <source>No shim was found by trials in this time.</source>
        <translation>Aucune cale n’a été trouvée par essais pendant cette période.</translation>
    </message>
    <message>
        <source>%1 on average, for %2 shims.</source>
        <translation>%1 en moyenne, pour %2 cales.</translation>
    </message>
    <message>
        <source>1 trial</source>
        <translation>1 essai</translation>
    </message>
    <message>
        <source>%1 trials</source>
        <translation>%1 essais</translation>
    </message>
    <message>
        <source>Shims most used</source>
        <translation>Cales les plus utilisées</translation>
    </message>
    <message>
        <source>Those that were left in the vehicle; the first %1.</source>
        <translation>Celles qui sont restées dans le véhicule&#xa0;; les %1 premières.</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>Vehicles that were back soon</source>
        <translation>Véhicules vite revenus</translation>
    </message>
    <message>
        <source>From another workshop, in none of the figures</source>
        <translation>D’un autre atelier, dans aucun des chiffres</translation>
    </message>
    <message>
        <source>%1: there is no such job in this time.</source>
        <translation>%1&#xa0;: il n’y a pas d’intervention de ce genre dans cette période.</translation>
    </message>
    <message>
        <source>Counted from the last job before on the same vehicle, also one from before this time.</source>
        <translation>Compté depuis l’intervention précédente sur le même véhicule, même d’avant cette période.</translation>
    </message>
    <message>
        <source>Back within the distance and the days</source>
        <translation>Revenus en moins que la distance et les jours</translation>
    </message>
    <message>
        <source>Back within the days, distance not known</source>
        <translation>Revenus en moins que les jours, distance inconnue</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::FormCard</name>
    <message>
        <source>Ctrl Enter</source>
        <translation>Ctrl Entrée</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::InstrumentForm</name>
    <message>
        <source>resolution %1</source>
        <translation>résolution %1</translation>
    </message>
    <message>
        <source>permissible error ±&#xa0;%1</source>
        <translation>erreur admise ±&#xa0;%1</translation>
    </message>
    <message>
        <source>repeatability %1</source>
        <translation>répétabilité %1</translation>
    </message>
    <message>
        <source>out of use</source>
        <translation>hors service</translation>
    </message>
    <message>
        <source>no date of calibration kept</source>
        <translation>aucune date d’étalonnage notée</translation>
    </message>
    <message>
        <source>calibrated to %1</source>
        <translation>étalonné jusqu’au %1</translation>
    </message>
    <message>
        <source>calibration due: calibrated to %1</source>
        <translation>étalonnage à faire&#xa0;: étalonné jusqu’au %1</translation>
    </message>
    <message>
        <source>calibration overdue since %1</source>
        <translation>étalonnage en retard depuis le %1</translation>
    </message>
    <message>
        <source>One more: %1</source>
        <translation>Un de plus&#xa0;: %1</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Name, as it is called at the bench</source>
        <translation>Nom, comme on l’appelle à l’établi</translation>
    </message>
    <message>
        <source>Resolution</source>
        <translation>Résolution</translation>
    </message>
    <message>
        <source>Permissible error, ±</source>
        <translation>Erreur admise, ±</translation>
    </message>
    <message>
        <source>Calibrated on (year-month-day)</source>
        <translation>Étalonné le (année-mois-jour)</translation>
    </message>
    <message>
        <source>Calibrated to, this day included</source>
        <translation>Étalonné jusqu’à ce jour compris</translation>
    </message>
    <message>
        <source>Repeatability %1, tested %2</source>
        <translation>Répétabilité %1, testée %2</translation>
    </message>
    <message>
        <source>Repeatability: not tested; the spec sheet&apos;s stands for it.</source>
        <translation>Répétabilité&#xa0;: non testée&#xa0;; celle de la fiche technique en tient lieu.</translation>
    </message>
    <message>
        <source>Repeat test</source>
        <translation>Test de répétition</translation>
    </message>
    <message>
        <source>In use</source>
        <translation>En service</translation>
    </message>
    <message>
        <source>One turn of the hand</source>
        <translation>Un tour d’aiguille</translation>
    </message>
    <message>
        <source>Blank: not known.</source>
        <translation>Vide&#xa0;: inconnu.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::InstrumentsSection</name>
    <message>
        <source>Set up as for a float, at one marked spot. Set zero, lift until it stops, read, let down. Enter the lift; do it ten times, by the same hand.</source>
        <translation>Monter comme pour un jeu, à un point marqué. Régler le zéro, lever jusqu’à l’arrêt, lire, laisser redescendre. Saisir la levée&#xa0;; dix fois, de la même main.</translation>
    </message>
    <message>
        <source>Measure one depth at one marked place, lifting the gauge off each time. Ten times.</source>
        <translation>Mesurer une profondeur à un endroit marqué, en relevant la jauge chaque fois. Dix fois.</translation>
    </message>
    <message>
        <source>Measure one shim at one marked place, opening the micrometer each time. Ten times.</source>
        <translation>Mesurer une cale à un endroit marqué, en ouvrant le micromètre chaque fois. Dix fois.</translation>
    </message>
    <message>
        <source>Release it on the tester at one setting and enter what the tester shows. Ten times.</source>
        <translation>La déclencher sur le testeur à un réglage et saisir ce que le testeur montre. Dix fois.</translation>
    </message>
    <message>
        <source>Read the same thing again and again while nothing changes. Ten times.</source>
        <translation>Lire la même chose encore et encore sans que rien ne change. Dix fois.</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instruments</translation>
    </message>
    <message>
        <source>Kind of instrument</source>
        <translation>Type d’instrument</translation>
    </message>
    <message>
        <source>Keep this first, or leave it as it was.</source>
        <translation>L’enregistrer d’abord, ou annuler.</translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>Enregistré.</translation>
    </message>
    <message>
        <source>Repeat test of %1</source>
        <translation>Test de répétition de %1</translation>
    </message>
    <message>
        <source>Kept: readings with %1 carry this from now on.</source>
        <translation>Enregistré&#xa0;: les mesures avec %1 en tiennent compte désormais.</translation>
    </message>
    <message>
        <source>Add an instrument</source>
        <translation>Ajouter un instrument</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::JobFileCard</name>
    <message>
        <source>A job for another workshop</source>
        <translation>Une intervention pour un autre atelier</translation>
    </message>
    <message>
        <source>A whole job goes into one file: entries, sheets, seal, and photos as they were taken, with the place where the camera wrote it down. Personal texts are in it unless they were erased.</source>
        <translation>Une intervention entière va dans un fichier&#xa0;: entrées, fiches, sceau et photos telles qu’elles ont été prises, avec le lieu si l’appareil l’a noté. Les textes personnels y sont, sauf s’ils ont été effacés.</translation>
    </message>
    <message>
        <source>Job number</source>
        <translation>Numéro d’intervention</translation>
    </message>
    <message>
        <source>Write the job to a file</source>
        <translation>Écrire l’intervention dans un fichier</translation>
    </message>
    <message>
        <source>Take in a job from a file</source>
        <translation>Prendre une intervention d’un fichier</translation>
    </message>
    <message>
        <source>There is no job of this number in the store: look at the number again.</source>
        <translation>Aucune intervention de ce numéro dans la base&#xa0;: revoir le numéro.</translation>
    </message>
    <message>
        <source>The job is being written.</source>
        <translation>L’intervention est en cours d’écriture.</translation>
    </message>
    <message>
        <source>Written and read again: %1</source>
        <translation>Écrit et relu&#xa0;: %1</translation>
    </message>
    <message>
        <source>The file is being looked through.</source>
        <translation>Le fichier est en cours d’examen.</translation>
    </message>
    <message>
        <source>Job %1 is here already, with all its entries.</source>
        <translation>L’intervention %1 est déjà ici, avec toutes ses entrées.</translation>
    </message>
    <message>
        <source>Job %1 was taken in: %2 entries, %3 photos.</source>
        <translation>L’intervention %1 a été prise&#xa0;: %2 entrées, %3 photos.</translation>
    </message>
    <message>
        <source>Job %1 went on: %2 entries were added to the %3 that are here.</source>
        <translation>L’intervention %1 a continué&#xa0;: %2 entrées s’ajoutent aux %3 d’ici.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::OwnSection</name>
    <message>
        <source>This workshop</source>
        <translation>Cet atelier</translation>
    </message>
    <message>
        <source>As it stands on every record</source>
        <translation>Tel qu’il figure sur chaque rapport</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Address, on one line</source>
        <translation>Adresse, sur une ligne</translation>
    </message>
    <message>
        <source>Choose a logo</source>
        <translation>Choisir un logo</translation>
    </message>
    <message>
        <source>The logo</source>
        <translation>Le logo</translation>
    </message>
    <message>
        <source>No logo is chosen</source>
        <translation>Aucun logo choisi</translation>
    </message>
    <message>
        <source>This picture cannot be read; choose it again.</source>
        <translation>Cette image ne peut pas être lue&#xa0;; la choisir à nouveau.</translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>Enregistré.</translation>
    </message>
    <message>
        <source>Logo for the head of the record: PNG or JPEG, at most 500 kB. It is printed on white paper.</source>
        <translation>Logo pour l’en-tête du rapport&#xa0;: PNG ou JPEG, au plus 500 kB. Il s’imprime sur du papier blanc.</translation>
    </message>
    <message>
        <source>Remove the logo</source>
        <translation>Retirer le logo</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::PeopleSection</name>
    <message>
        <source>People</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>Enter a person</source>
        <translation>Saisir une personne</translation>
    </message>
    <message>
        <source>Keep this first, or leave it as it was.</source>
        <translation>L’enregistrer d’abord, ou annuler.</translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>Enregistré.</translation>
    </message>
    <message>
        <source>Feel of %1 with the gauge</source>
        <translation>Toucher de %1 au calibre</translation>
    </message>
    <message>
        <source>Seat and load one bearing and leave it so. Offer shims in any order, eyes away from their marks, and find the thickest that still lets the gauge in. Enter its thickness; begin anew, ten times. </source>
        <translation>Mettre une butée en place, la charger et la laisser ainsi. Essayer des cales dans n’importe quel ordre, sans regarder leurs marques, et trouver la plus épaisse qui laisse encore entrer le calibre. Saisir son épaisseur&#xa0;; recommencer, dix fois. </translation>
    </message>
    <message>
        <source>Kept: trials by %1 are reckoned with this feel from now on.</source>
        <translation>Enregistré&#xa0;: les essais de %1 sont calculés avec ce toucher désormais.</translation>
    </message>
    <message>
        <source>The key of %1 is ended.</source>
        <translation>La clé de %1 est close.</translation>
    </message>
    <message>
        <source>Kept: %1 signs with the new PIN from now on.</source>
        <translation>Enregistré&#xa0;: %1 signe désormais avec le nouveau code.</translation>
    </message>
    <message>
        <source>The PIN is being kept: this takes a moment.</source>
        <translation>Enregistrement du code PIN en cours&#xa0;: un instant.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::PeriodExportCard</name>
    <message>
        <source>Every measurement of this time as a file</source>
        <translation>Toutes les mesures de cette période dans un fichier</translation>
    </message>
    <message>
        <source>For a spreadsheet or another program. Plate and customer reference are in it unless they were erased.</source>
        <translation>Pour un tableur ou un autre programme. L’immatriculation et la référence client y sont, sauf si elles ont été effacées.</translation>
    </message>
    <message>
        <source>Save as CSV</source>
        <translation>Enregistrer en CSV</translation>
    </message>
    <message>
        <source>Save as JSON</source>
        <translation>Enregistrer en JSON</translation>
    </message>
    <message>
        <source>The measurements are being written.</source>
        <translation>Les mesures sont en cours d’écriture.</translation>
    </message>
    <message>
        <source>%1 in: %2</source>
        <translation>%1 dans&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::PersonForm</name>
    <message>
        <source>checker</source>
        <translation>contrôleur</translation>
    </message>
    <message>
        <source>technician</source>
        <translation>technicien</translation>
    </message>
    <message>
        <source>signs with a PIN</source>
        <translation>signe avec un code PIN</translation>
    </message>
    <message>
        <source>no PIN yet</source>
        <translation>pas encore de code PIN</translation>
    </message>
    <message>
        <source>feel %1</source>
        <translation>toucher %1</translation>
    </message>
    <message>
        <source>left %1</source>
        <translation>parti le %1</translation>
    </message>
    <message>
        <source>no longer here</source>
        <translation>plus ici</translation>
    </message>
    <message>
        <source>A person more</source>
        <translation>Une personne de plus</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Initiales</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rôle</translation>
    </message>
    <message>
        <source>Technician</source>
        <translation>Technicien</translation>
    </message>
    <message>
        <source>Checker</source>
        <translation>Contrôleur</translation>
    </message>
    <message>
        <source>Left on (year-month-day); blank: at work here</source>
        <translation>Parti le (année-mois-jour)&#xa0;; vide&#xa0;: travaille ici</translation>
    </message>
    <message>
        <source>No longer here; the day is not known. Keeping this with a blank day puts the person back at work.</source>
        <translation>Plus ici&#xa0;; le jour n’est pas connu. Enregistrer avec un jour vide remet la personne au travail.</translation>
    </message>
    <message>
        <source>Feel with the gauge: %1, tested %2</source>
        <translation>Toucher au calibre&#xa0;: %1, testé %2</translation>
    </message>
    <message>
        <source>Feel with the gauge: not tested; the spec sheet&apos;s stands for it.</source>
        <translation>Toucher au calibre&#xa0;: non testé&#xa0;; celui de la fiche technique en tient lieu.</translation>
    </message>
    <message>
        <source>Test the feel</source>
        <translation>Tester le toucher</translation>
    </message>
    <message>
        <source>key ended</source>
        <translation>clé close</translation>
    </message>
    <message>
        <source>Give a PIN</source>
        <translation>Donner un code PIN</translation>
    </message>
    <message>
        <source>Change the PIN</source>
        <translation>Changer le code PIN</translation>
    </message>
    <message>
        <source>PIN forgotten</source>
        <translation>Code PIN oublié</translation>
    </message>
    <message>
        <source>End the key</source>
        <translation>Clore la clé</translation>
    </message>
    <message>
        <source>Make a new key</source>
        <translation>Créer une nouvelle clé</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::PinCard</name>
    <message>
        <source>First PIN of %1</source>
        <translation>Premier code PIN de %1</translation>
    </message>
    <message>
        <source>Another PIN for %1</source>
        <translation>Autre code PIN pour %1</translation>
    </message>
    <message>
        <source>%1 has forgotten the PIN</source>
        <translation>%1 a oublié le code PIN</translation>
    </message>
    <message>
        <source>End the key of %1</source>
        <translation>Clore la clé de %1</translation>
    </message>
    <message>
        <source>It is asked for nothing but signing. Who knows it signs in this name.</source>
        <translation>Il n’est demandé que pour signer. Qui le connaît signe en ce nom.</translation>
    </message>
    <message>
        <source>The key stays the same, and so does everything it signed.</source>
        <translation>La clé reste la même, et tout ce qu’elle a signé aussi.</translation>
    </message>
    <message>
        <source>A new key is made. What the old one signed stays valid; it signs nothing any more, and no PIN opens it again.</source>
        <translation>Une nouvelle clé est créée. Ce que l’ancienne a signé reste valable&#xa0;; elle ne signe plus rien, et aucun code ne l’ouvre plus.</translation>
    </message>
    <message>
        <source>For a key that others may know. What it signed before that day stays valid, what it signs from then on does not. This cannot be taken back; to sign again, make a new key afterwards.</source>
        <translation>Pour une clé que d’autres peuvent connaître. Ce qu’elle a signé avant ce jour reste valable, ce qu’elle signe ensuite ne l’est pas. Cela ne peut être annulé&#xa0;; pour signer de nouveau, créer ensuite une nouvelle clé.</translation>
    </message>
    <message>
        <source>End the key</source>
        <translation>Clore la clé</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>The PIN of now</source>
        <translation>Le code PIN actuel</translation>
    </message>
    <message>
        <source>No longer valid from (year-month-day)</source>
        <translation>Plus valable à partir du (année-mois-jour)</translation>
    </message>
    <message>
        <source>New PIN, 4 to 12 digits</source>
        <translation>Nouveau code PIN, 4 à 12 chiffres</translation>
    </message>
    <message>
        <source>The same once more</source>
        <translation>Le même encore une fois</translation>
    </message>
    <message>
        <source>The two new PINs differ: type both again.</source>
        <translation>Les deux nouveaux codes diffèrent&#xa0;: saisir les deux à nouveau.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::ReadingList</name>
    <message>
        <source>Take the last one away</source>
        <translation>Enlever la dernière</translation>
    </message>
    <message>
        <source>Enter adds it.</source>
        <translation>Entrée l’ajoute.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>No reading yet.</source>
        <translation>Aucune mesure encore.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::RepeatCard</name>
    <message>
        <source>Keep this</source>
        <translation>Enregistrer ceci</translation>
    </message>
    <message>
        <source>Step from shim to shim</source>
        <translation>Pas d’une cale à l’autre</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Mesure</translation>
    </message>
    <message>
        <source>%1 more at least; ten are usual.</source>
        <translation>Encore %1 au moins&#xa0;; dix sont d’usage.</translation>
    </message>
    <message>
        <source>The step from shim to shim is missing.</source>
        <translation>Il manque le pas d’une cale à l’autre.</translation>
    </message>
    <message>
        <source>Feel %1 (standard uncertainty) from %2 readings; it may be wrong by about %3 %.</source>
        <translation>Toucher %1 (incertitude type) sur %2 mesures&#xa0;; il peut être faux de %3&#xa0;% environ.</translation>
    </message>
    <message>
        <source>Repeatability %1 (standard deviation) from %2 readings; it may be wrong by about %3 %.</source>
        <translation>Répétabilité %1 (écart type) sur %2 mesures&#xa0;; elle peut être fausse de %3&#xa0;% environ.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::RestoreCard</name>
    <message>
        <source>What is in the store now is kept as a file beside it. Every entry of the backup is compared, and the window opens again with it.</source>
        <translation>Ce qui est maintenant dans la base est gardé comme fichier à côté. Chaque entrée de la sauvegarde est comparée, et la fenêtre se rouvre avec elle.</translation>
    </message>
    <message>
        <source>Look at a backup</source>
        <translation>Regarder une sauvegarde</translation>
    </message>
    <message>
        <source>Go back to this backup</source>
        <translation>Revenir à cette sauvegarde</translation>
    </message>
    <message>
        <source>Leave the store as it is</source>
        <translation>Laisser la base telle quelle</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>Rien n’a été changé.</translation>
    </message>
    <message>
        <source>The backup is being looked at.</source>
        <translation>La sauvegarde est en cours d’examen.</translation>
    </message>
    <message>
        <source>Go back to a backup</source>
        <translation>Revenir à une sauvegarde</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::SheetForm</name>
    <message>
        <source>Go on later</source>
        <translation>Continuer plus tard</translation>
    </message>
    <message>
        <source>Throw the draft away</source>
        <translation>Jeter le brouillon</translation>
    </message>
    <message>
        <source>Yes, throw it away</source>
        <translation>Oui, le jeter</translation>
    </message>
    <message>
        <source>All that was filled in is lost then. Press again to be sure.</source>
        <translation>Tout ce qui a été rempli est alors perdu. Appuyer encore pour confirmer.</translation>
    </message>
    <message>
        <source>without a title yet</source>
        <translation>encore sans titre</translation>
    </message>
    <message>
        <source>%1 · %2 to fill in</source>
        <translation>%1 · %2 à remplir</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Monter</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Descendre</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Keep as issue %1</source>
        <translation>Enregistrer comme édition %1</translation>
    </message>
    <message>
        <source>the first of them is in sight.</source>
        <translation>le premier est en vue.</translation>
    </message>
    <message>
        <source>Not kept yet, %1 to be filled in or put right: %2</source>
        <translation>Pas encore enregistré, %1 à remplir ou à corriger&#xa0;: %2</translation>
    </message>
    <message>
        <source>Section of the sheet</source>
        <translation>Section de la fiche</translation>
    </message>
    <message>
        <source>Next section</source>
        <translation>Section suivante</translation>
    </message>
    <message>
        <source>It stands at the end already.</source>
        <translation>C’est déjà au bout.</translation>
    </message>
    <message>
        <source>It stands in “%1” now.</source>
        <translation>C’est maintenant dans «&#xa0;%1&#xa0;».</translation>
    </message>
    <message>
        <source>Taken over. What is to be put right is named at each section.</source>
        <translation>Repris. Ce qui est à corriger est indiqué à chaque partie.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::SheetsSection</name>
    <message>
        <source>Job sheets</source>
        <translation>Fiches de travail</translation>
    </message>
    <message>
        <source>Spec sheets</source>
        <translation>Fiches techniques</translation>
    </message>
    <message>
        <source>New, from an empty sheet</source>
        <translation>Nouvelle, à partir d’une fiche vide</translation>
    </message>
    <message>
        <source>Bring in a file</source>
        <translation>Importer un fichier</translation>
    </message>
    <message>
        <source>Being written: %1</source>
        <translation>En cours d’écriture&#xa0;: %1</translation>
    </message>
    <message>
        <source>Go on writing</source>
        <translation>Continuer l’écriture</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Source&#xa0;: %1</translation>
    </message>
    <message>
        <source>Show steps</source>
        <translation>Montrer les étapes</translation>
    </message>
    <message>
        <source>Show values</source>
        <translation>Montrer les valeurs</translation>
    </message>
    <message>
        <source>All job sheets</source>
        <translation>Toutes les fiches de travail</translation>
    </message>
    <message>
        <source>All spec sheets</source>
        <translation>Toutes les fiches techniques</translation>
    </message>
    <message>
        <source>I compared every value: checked</source>
        <translation>Chaque valeur comparée&#xa0;: contrôlée</translation>
    </message>
    <message>
        <source>New issue</source>
        <translation>Nouvelle édition</translation>
    </message>
    <message>
        <source>Copy under another name</source>
        <translation>Copier sous un autre nom</translation>
    </message>
    <message>
        <source>Compare with issue %1</source>
        <translation>Comparer à l’édition %1</translation>
    </message>
    <message>
        <source>Save as a file</source>
        <translation>Enregistrer en fichier</translation>
    </message>
    <message>
        <source>Checked. Jobs can be opened on it now.</source>
        <translation>Contrôlée. Des interventions peuvent maintenant l’utiliser.</translation>
    </message>
    <message>
        <source>Checked, and said that the same person entered it. Jobs can be opened on it now.</source>
        <translation>Contrôlée, avec mention que la même personne l’a saisie. Des interventions peuvent maintenant l’utiliser.</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Écrit&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: issue %2 beside issue %3</source>
        <translation>%1&#xa0;: édition %2 à côté de l’édition %3</translation>
    </message>
    <message>
        <source>All %1 values are the same.</source>
        <translation>Les %1 valeurs sont les mêmes.</translation>
    </message>
    <message>
        <source>%1 values differ, %2 are the same.</source>
        <translation>%1 valeurs diffèrent, %2 sont les mêmes.</translation>
    </message>
    <message>
        <source>Back to issue %1</source>
        <translation>Retour à l’édition %1</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valeur</translation>
    </message>
    <message>
        <source>Issue %1</source>
        <translation>Édition %1</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unité</translation>
    </message>
    <message>
        <source>not there</source>
        <translation>absent</translation>
    </message>
    <message>
        <source>Throw the draft away</source>
        <translation>Jeter le brouillon</translation>
    </message>
    <message>
        <source>Yes, throw it away</source>
        <translation>Oui, le jeter</translation>
    </message>
    <message>
        <source>All that was filled in is lost then. Press again to be sure.</source>
        <translation>Tout ce qui a été rempli est alors perdu. Appuyer encore pour confirmer.</translation>
    </message>
    <message>
        <source>Name in files: %1</source>
        <translation>Nom dans les fichiers&#xa0;: %1</translation>
    </message>
    <message>
        <source>Save a blank sheet for paper (PDF)</source>
        <translation>Fiche vierge pour papier (PDF)</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::ShimForm</name>
    <message>
        <source>One more size</source>
        <translation>Une taille de plus</translation>
    </message>
    <message>
        <source>Shim %1</source>
        <translation>Cale %1</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Mark on the shim</source>
        <translation>Marque sur la cale</translation>
    </message>
    <message>
        <source>Take this size out of the tray</source>
        <translation>Retirer cette taille de l’assortiment</translation>
    </message>
    <message>
        <source>Micrometer</source>
        <translation>Micromètre</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Mesure</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Épaisseur</translation>
    </message>
    <message>
        <source>Standard uncertainty</source>
        <translation>Incertitude type</translation>
    </message>
    <message>
        <source>Counted now</source>
        <translation>Compté maintenant</translation>
    </message>
    <message>
        <source>Blank: not counted.</source>
        <translation>Vide&#xa0;: non compté.</translation>
    </message>
    <message>
        <source>Mean of %1: %2 ± %3 %4 (95 %)</source>
        <translation>Moyenne de %1&#xa0;: %2 ± %3 %4 (95&#xa0;%)</translation>
    </message>
    <message>
        <source>Without readings the thickness typed below stands.</source>
        <translation>Sans mesures, l’épaisseur saisie ci-dessous vaut.</translation>
    </message>
    <message>
        <source>A thickness with its uncertainty is needed, or readings with a micrometer.</source>
        <translation>Il faut une épaisseur avec son incertitude, ou des mesures au micromètre.</translation>
    </message>
    <message>
        <source>Order when so few are left</source>
        <translation>Commander à ce nombre ou moins</translation>
    </message>
    <message>
        <source>Blank: the count stays as it is, %1.</source>
        <translation>Vide&#xa0;: le compte reste tel quel, %1.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::StageRow</name>
    <message>
        <source>Or take a stage over from another sheet:</source>
        <translation>Ou reprendre une phase d’une autre fiche&#xa0;:</translation>
    </message>
    <message>
        <source>Sheet it is taken from</source>
        <translation>Fiche d’où elle vient</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Phase</translation>
    </message>
    <message>
        <source>Stands before</source>
        <translation>Se place avant</translation>
    </message>
    <message>
        <source>It comes with its cautions and hold points, in the languages of this sheet. From a demonstration sheet it makes this sheet one too.</source>
        <translation>Elle vient avec ses mises en garde et ses points d’arrêt, dans les langues de cette fiche. Venue d’une fiche de démonstration, elle fait de celle-ci une fiche de démonstration.</translation>
    </message>
    <message>
        <source>Take the stage over</source>
        <translation>Reprendre la phase</translation>
    </message>
    <message>
        <source>Choose a sheet and one of its stages first.</source>
        <translation>Choisir d’abord une fiche et l’une de ses phases.</translation>
    </message>
    <message>
        <source>Add a stage to this sheet first: the one taken over stands before it.</source>
        <translation>Ajouter d’abord une phase à cette fiche&#xa0;: celle qui est reprise se place avant.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::StoreCard</name>
    <message>
        <source>The store</source>
        <translation>La base</translation>
    </message>
    <message>
        <source>The check goes through every entry, reading and photo and compares it with what was written. Jobs go on meanwhile.</source>
        <translation>Le contrôle parcourt chaque entrée, chaque mesure et chaque photo et les compare à ce qui a été écrit. Le travail continue pendant ce temps.</translation>
    </message>
    <message>
        <source>Check the store</source>
        <translation>Contrôler la base</translation>
    </message>
    <message>
        <source>1 job</source>
        <translation>1 intervention</translation>
    </message>
    <message>
        <source>%1 jobs</source>
        <translation>%1 interventions</translation>
    </message>
    <message>
        <source>%1, %2 with photos</source>
        <translation>%1, %2 avec les photos</translation>
    </message>
    <message>
        <source>The store is being checked.</source>
        <translation>La base est en cours de contrôle.</translation>
    </message>
    <message>
        <source>Sealed in another store: %1.</source>
        <translation>Scellées dans une autre base&#xa0;: %1.</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>et %1 de plus</translation>
    </message>
    <message>
        <source>All is as it was written. Jobs: %1, entries: %2, photos: %3.</source>
        <translation>Tout est comme cela a été écrit. Interventions&#xa0;: %1, entrées&#xa0;: %2, photos&#xa0;: %3.</translation>
    </message>
    <message>
        <source>Not as it was written, in so many places: %1. Keep the store as it is, and look at your last backup.</source>
        <translation>Pas comme cela a été écrit, en autant d’endroits&#xa0;: %1. Garder la base comme elle est, et regarder la dernière sauvegarde.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::TrayRow</name>
    <message>
        <source>Or lay all sizes of the tray at once:</source>
        <translation>Ou poser toutes les tailles de l’assortiment d’un coup&#xa0;:</translation>
    </message>
    <message>
        <source>Lay these sizes</source>
        <translation>Poser ces tailles</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::TraysSection</name>
    <message>
        <source>Shim trays</source>
        <translation>Assortiments</translation>
    </message>
    <message>
        <source>No tray is kept here yet: jobs take the sizes of their spec sheet.</source>
        <translation>Aucun assortiment n’est encore tenu ici&#xa0;: les interventions prennent les tailles de leur fiche technique.</translation>
    </message>
    <message>
        <source>One more size in %1</source>
        <translation>Une taille de plus dans %1</translation>
    </message>
    <message>
        <source>Begin the tray %1</source>
        <translation>Commencer l’assortiment %1</translation>
    </message>
    <message>
        <source>with the sizes of its spec sheet</source>
        <translation>avec les tailles de sa fiche technique</translation>
    </message>
    <message>
        <source>The tray %1 is begun: measure and count its shims.</source>
        <translation>L’assortiment %1 est commencé&#xa0;: mesurer et compter ses cales.</translation>
    </message>
    <message>
        <source>Keep this first, or leave it as it was.</source>
        <translation>L’enregistrer d’abord, ou annuler.</translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>Enregistré.</translation>
    </message>
    <message>
        <source>%1 is out of the tray; jobs that used it keep what they knew of it.</source>
        <translation>%1 est retirée de l’assortiment&#xa0;; les interventions qui l’utilisaient gardent ce qu’elles en savaient.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::WordPick</name>
    <message>
        <source>choose</source>
        <translation>choisir</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::WorkCard</name>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Avancement</translation>
    </message>
    <message>
        <source>Stopping at the next step.</source>
        <translation>S’arrête à la prochaine étape.</translation>
    </message>
</context>
<context>
    <name>shimwright::workshop::WorkshopPage</name>
    <message>
        <source>Spec sheets</source>
        <translation>Fiches techniques</translation>
    </message>
    <message>
        <source>Job sheets</source>
        <translation>Fiches de travail</translation>
    </message>
    <message>
        <source>Shim trays</source>
        <translation>Assortiments</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instruments</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>Data and backup</source>
        <translation>Données et sauvegarde</translation>
    </message>
    <message>
        <source>This workshop</source>
        <translation>Cet atelier</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Chiffres</translation>
    </message>
</context>
<context>
    <name>store</name>
    <message>
        <source>The job went on elsewhere: entry {0} is due and not entry {1}; open the job again and enter this once more.</source>
        <translation>L’intervention a continué ailleurs&#xa0;: l’entrée {0} est due et non l’entrée {1}&#xa0;; ouvrir à nouveau l’intervention et saisir ceci encore une fois.</translation>
    </message>
    <message>
        <source>A text in this has broken characters; enter it again.</source>
        <translation>Un texte y a des caractères abîmés&#xa0;; le saisir à nouveau.</translation>
    </message>
    <message>
        <source>A job has to be opened before anything is entered in it.</source>
        <translation>Une intervention doit être ouverte avant d’y saisir quelque chose.</translation>
    </message>
    <message>
        <source>The job sheet or spec sheet of this job is not in the store; add it first.</source>
        <translation>La fiche de travail ou la fiche technique de cette intervention n’est pas dans la base&#xa0;; l’ajouter d’abord.</translation>
    </message>
    <message>
        <source>Something other than an older backup of this store lies there and is not written over; choose another name.</source>
        <translation>Il y a là autre chose qu’une sauvegarde plus ancienne de cette base, et cela n’est pas écrasé&#xa0;; choisir un autre nom.</translation>
    </message>
    <message>
        <source>This job was stored and is gone.</source>
        <translation>Cette intervention était enregistrée et a disparu.</translation>
    </message>
    <message>
        <source>Line {0} is missing in the list of chain heads.</source>
        <translation>La ligne {0} manque dans la liste des têtes de chaîne.</translation>
    </message>
    <message>
        <source>Line {0} of the list of chain heads was changed after it was written.</source>
        <translation>La ligne {0} de la liste des têtes de chaîne a été changée après coup.</translation>
    </message>
    <message>
        <source>This entry and perhaps others before it were stored and are gone.</source>
        <translation>Cette entrée et peut-être d’autres avant elle étaient enregistrées et ont disparu.</translation>
    </message>
    <message>
        <source>This entry was not stored by this program: the list of chain heads does not know it.</source>
        <translation>Cette entrée n’a pas été enregistrée par ce programme&#xa0;: la liste des têtes de chaîne ne la connaît pas.</translation>
    </message>
    <message>
        <source>This entry is not the one that was stored in its place.</source>
        <translation>Cette entrée n’est pas celle qui a été enregistrée à sa place.</translation>
    </message>
    <message>
        <source>A table, index or trigger of the store was changed, added or taken away.</source>
        <translation>Une table, un index ou un déclencheur de la base a été changé, ajouté ou enlevé.</translation>
    </message>
    <message>
        <source>The issue {0} was changed after it was stored.</source>
        <translation>L’édition {0} a été changée après son enregistrement.</translation>
    </message>
    <message>
        <source>A personal text of this job is gone; erasing would have left its place.</source>
        <translation>Un texte personnel de cette intervention a disparu&#xa0;; un effacement aurait laissé sa place.</translation>
    </message>
    <message>
        <source>A personal text of this job was changed after it was stored.</source>
        <translation>Un texte personnel de cette intervention a été changé après son enregistrement.</translation>
    </message>
    <message>
        <source>The photo {0} is gone from the folder of photos.</source>
        <translation>La photo {0} a disparu du dossier des photos.</translation>
    </message>
    <message>
        <source>The photo {0} was changed after it was taken.</source>
        <translation>La photo {0} a été changée après la prise de vue.</translation>
    </message>
    <message>
        <source>The file itself is damaged: {0}.</source>
        <translation>Le fichier même est abîmé&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>What is kept in table {0} is not what follows from the entries.</source>
        <translation>Ce que contient la table {0} ne découle pas des entrées.</translation>
    </message>
    <message>
        <source>This job does not begin with its opening, or its sheets are not to be read.</source>
        <translation>Cette intervention ne commence pas par son ouverture, ou ses fiches ne sont pas lisibles.</translation>
    </message>
    <message>
        <source>This program was put together with two different versions of SQLite and does not open a store; install it again.</source>
        <translation>Ce programme est assemblé avec deux versions différentes de SQLite et n’ouvre aucune base&#xa0;; le réinstaller.</translation>
    </message>
    <message>
        <source>The disk could not be read or written, so this was not saved; look after the disk and make a backup.</source>
        <translation>Le disque n’a pas pu être lu ou écrit, donc ceci n’a pas été enregistré&#xa0;; contrôler le disque et faire une sauvegarde.</translation>
    </message>
    <message>
        <source>Another program holds the store just now; try again in a moment.</source>
        <translation>Un autre programme tient la base en ce moment&#xa0;; réessayer dans un instant.</translation>
    </message>
    <message>
        <source>The store can only be looked at here; nothing was saved.</source>
        <translation>La base est ici en lecture seule&#xa0;; rien n’a été enregistré.</translation>
    </message>
    <message>
        <source>This file is not a store of this program.</source>
        <translation>Ce fichier n’est pas une base de ce programme.</translation>
    </message>
    <message>
        <source>The store is damaged; keep it as it is and go on with the latest backup.</source>
        <translation>La base est abîmée&#xa0;; la laisser telle quelle et continuer avec la dernière sauvegarde.</translation>
    </message>
    <message>
        <source>The store could not be opened; look whether its folder is there and may be written to.</source>
        <translation>La base n’a pas pu être ouverte&#xa0;; vérifier que son dossier est là et que l’écriture y est permise.</translation>
    </message>
    <message>
        <source>This does not fit what is stored already, so it was not saved: {0}.</source>
        <translation>Ceci ne s’accorde pas avec ce qui est déjà enregistré, donc n’a pas été enregistré&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>This is too large to be stored.</source>
        <translation>Ceci est trop grand pour être enregistré.</translation>
    </message>
    <message>
        <source>The store refused this, and nothing was saved: {0}. Report this fault.</source>
        <translation>La base a refusé ceci, et rien n’a été enregistré&#xa0;: {0}. Signaler ce défaut.</translation>
    </message>
    <message>
        <source>This could not be made; look whether the folder is there and may be written to.</source>
        <translation>Ceci n’a pas pu être créé&#xa0;; vérifier que le dossier est là et que l’écriture y est permise.</translation>
    </message>
    <message>
        <source>This could not be brought to the disk; look after the disk and try again.</source>
        <translation>Ceci n’a pas pu être porté sur le disque&#xa0;; contrôler le disque et réessayer.</translation>
    </message>
    <message>
        <source>This job is not in the store.</source>
        <translation>Cette intervention n’est pas dans la base.</translation>
    </message>
    <message>
        <source>Another program writes in this store; close it there first, or open the store for looking.</source>
        <translation>Un autre programme écrit dans cette base&#xa0;; la fermer d’abord là-bas, ou l’ouvrir en lecture seule.</translation>
    </message>
    <message>
        <source>The store could not be taken for writing; look whether its folder is there and may be written to.</source>
        <translation>La base n’a pas pu être prise en écriture&#xa0;; vérifier que son dossier est là et que l’écriture y est permise.</translation>
    </message>
    <message>
        <source>Somebody else writes in this store by now; look again who it is.</source>
        <translation>Quelqu’un d’autre écrit désormais dans cette base&#xa0;; regarder encore qui c’est.</translation>
    </message>
    <message>
        <source>This file is not a store of this program; choose another.</source>
        <translation>Ce fichier n’est pas une base de ce programme&#xa0;; en choisir un autre.</translation>
    </message>
    <message>
        <source>The end of this store is missing; keep it as it is and go on with the latest backup.</source>
        <translation>La fin de cette base manque&#xa0;; la laisser telle quelle et continuer avec la dernière sauvegarde.</translation>
    </message>
    <message>
        <source>The whole path of the store is needed, from the top folder on.</source>
        <translation>Il faut le chemin complet de la base, depuis le dossier le plus haut.</translation>
    </message>
    <message>
        <source>This cannot be read; look whether it is a file and may be read by you.</source>
        <translation>Ceci ne peut pas être lu&#xa0;; vérifier que c’est un fichier et que la lecture est permise.</translation>
    </message>
    <message>
        <source>This disk cannot keep a store so that it survives a power cut; put the store on another one.</source>
        <translation>Ce disque ne peut pas garder une base qui survive à une coupure de courant&#xa0;; la mettre sur un autre.</translation>
    </message>
    <message>
        <source>This photo cannot be read; choose it again.</source>
        <translation>Cette photo ne peut pas être lue&#xa0;; la choisir à nouveau.</translation>
    </message>
    <message>
        <source>This photo is larger than 20 MB; take it at a lower resolution.</source>
        <translation>Cette photo dépasse 20 MB&#xa0;; la prendre en résolution plus basse.</translation>
    </message>
    <message>
        <source>This is neither a JPEG nor a PNG photo; choose one that is.</source>
        <translation>Ce n’est ni une photo JPEG ni une photo PNG&#xa0;; en choisir une qui le soit.</translation>
    </message>
    <message>
        <source>This personal text is not in the store.</source>
        <translation>Ce texte personnel n’est pas dans la base.</translation>
    </message>
    <message>
        <source>This issue of a sheet is not in the store; add it first.</source>
        <translation>Cette édition d’une fiche n’est pas dans la base&#xa0;; l’ajouter d’abord.</translation>
    </message>
    <message>
        <source>Issue {0} of {1} is in the store with other values; give the changed sheet the next issue number.</source>
        <translation>L’édition {0} de {1} est dans la base avec d’autres valeurs&#xa0;; donner à la fiche changée le numéro d’édition suivant.</translation>
    </message>
    <message>
        <source>The id of this is not a UUID; report this fault.</source>
        <translation>L’identifiant n’est pas un UUID&#xa0;; signaler ce défaut.</translation>
    </message>
    <message>
        <source>A name is needed; enter one.</source>
        <translation>Il faut un nom&#xa0;; en saisir un.</translation>
    </message>
    <message>
        <source>A tray has at most {0} shims, this one has {1}; take some out.</source>
        <translation>Un assortiment a au plus {0} cales, celui-ci en a {1}&#xa0;; en enlever.</translation>
    </message>
    <message>
        <source>Two letters or digits at least are needed to search.</source>
        <translation>Il faut au moins deux lettres ou chiffres pour chercher.</translation>
    </message>
    <message>
        <source>This store lies on a network share and can only be looked at; copy it to a disk of this machine to write in it.</source>
        <translation>Cette base est sur un partage réseau et reste en lecture seule&#xa0;; la copier sur un disque de cette machine pour y écrire.</translation>
    </message>
    <message>
        <source>This store was written by a newer program and can only be looked at; write in it with the newer program.</source>
        <translation>Cette base vient d’un programme plus récent et reste en lecture seule&#xa0;; y écrire avec le programme plus récent.</translation>
    </message>
    <message>
        <source>There is no store at this place; choose another.</source>
        <translation>Il n’y a pas de base à cet endroit&#xa0;; en choisir un autre.</translation>
    </message>
    <message>
        <source>“{0}” is not as it was last entered here; look at it and enter it anew.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas comme saisi ici la dernière fois&#xa0;; le regarder et le saisir à nouveau.</translation>
    </message>
    <message>
        <source>{0} was entered here and is gone.</source>
        <translation>{0} était saisi ici et a disparu.</translation>
    </message>
    <message>
        <source>This job was sealed and its seal is gone.</source>
        <translation>Cette intervention était scellée et son sceau a disparu.</translation>
    </message>
    <message>
        <source>The seal of this job does not hold: {0} was changed after it was signed.</source>
        <translation>Le sceau de cette intervention ne tient pas&#xa0;: {0} a été changé après la signature.</translation>
    </message>
    <message>
        <source>What the store held when this job was sealed is gone or changed.</source>
        <translation>Ce que la base contenait quand cette intervention a été scellée a disparu ou changé.</translation>
    </message>
    <message>
        <source>The signed file cannot be written here: look at the folder and its space.</source>
        <translation>Le fichier signé ne peut pas être écrit ici&#xa0;: contrôler le dossier et sa place.</translation>
    </message>
    <message>
        <source>This record cannot be shown as it was sealed: it was changed, or sealed by another version of the program; see what “verify” says.</source>
        <translation>Ce rapport ne peut pas être montré tel qu’il a été scellé&#xa0;: il a été changé, ou scellé par une autre version du programme&#xa0;; voir ce que dit «&#xa0;verify&#xa0;».</translation>
    </message>
    <message>
        <source>Entries of this sealed job are gone: run the check of the store.</source>
        <translation>Des entrées de cette intervention scellée ont disparu&#xa0;: lancer le contrôle de la base.</translation>
    </message>
    <message>
        <source>This is erased, but its bytes stay in the log while another program reads the store; close that and erase once more.</source>
        <translation>Ceci est effacé, mais ses octets restent au journal tant qu’un autre programme lit la base&#xa0;; le fermer et effacer encore une fois.</translation>
    </message>
    <message>
        <source>There is no job of this vehicle in the store; look at its number again.</source>
        <translation>Il n’y a pas d’intervention de ce véhicule dans la base&#xa0;; revoir son numéro.</translation>
    </message>
    <message>
        <source>This job is whole, but something the store held before it is gone or changed.</source>
        <translation>Cette intervention est intacte, mais quelque chose que la base contenait avant elle a disparu ou changé.</translation>
    </message>
    <message>
        <source>The seal of this job was changed in the store: take the signed file from the backup folder.</source>
        <translation>Le sceau de cette intervention a été changé dans la base&#xa0;: prendre le fichier signé dans le dossier de sauvegarde.</translation>
    </message>
    <message>
        <source>This job is not sealed: seal it first.</source>
        <translation>Cette intervention n’est pas scellée&#xa0;: la sceller d’abord.</translation>
    </message>
    <message>
        <source>This person has no PIN yet: set one, then sign.</source>
        <translation>Cette personne n’a pas encore de code PIN&#xa0;: en mettre un, puis signer.</translation>
    </message>
    <message>
        <source>This person is not in the workshop&apos;s list: enter them first.</source>
        <translation>Cette personne n’est pas dans la liste de l’atelier&#xa0;: l’y saisir d’abord.</translation>
    </message>
    <message>
        <source>This person has a PIN: change it with the old one, or say it is forgotten.</source>
        <translation>Cette personne a un code PIN&#xa0;: le changer avec l’ancien, ou dire qu’il est oublié.</translation>
    </message>
    <message>
        <source>“{0}” is no date: write year-month-day, as in 2026-11-30.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas une date&#xa0;: écrire année-mois-jour, comme 2026-11-30.</translation>
    </message>
    <message>
        <source>This key is none of the workshop&apos;s: look at its list.</source>
        <translation>Cette clé n’est pas une de l’atelier&#xa0;: voir sa liste.</translation>
    </message>
    <message>
        <source>The key of this person is no longer valid: set a new PIN, then sign.</source>
        <translation>La clé de cette personne n’est plus valable&#xa0;: mettre un nouveau code PIN, puis signer.</translation>
    </message>
    <message>
        <source>That the issue {0} was checked was not entered with this program.</source>
        <translation>Le contrôle de l’édition {0} n’a pas été saisi avec ce programme.</translation>
    </message>
    <message>
        <source>The check {0} of a sheet was entered and is gone.</source>
        <translation>Le contrôle {0} d’une fiche était saisi et a disparu.</translation>
    </message>
    <message>
        <source>What the job sheet {0} lost is not as it was entered.</source>
        <translation>Ce que la fiche de travail {0} a perdu n’est pas comme saisi.</translation>
    </message>
    <message>
        <source>This job does not begin with its opening: run the check of the store.</source>
        <translation>Cette intervention ne commence pas par son ouverture&#xa0;: lancer le contrôle de la base.</translation>
    </message>
    <message>
        <source>{0} is a demonstration sheet and its issues stay so; enter a sheet with real values under another name.</source>
        <translation>{0} est une fiche de démonstration et ses éditions le restent&#xa0;; saisir une fiche aux valeurs réelles sous un autre nom.</translation>
    </message>
    <message>
        <source>{0}, issue {1}, was not checked yet; let a second person check it under Workshop before it is used on a job.</source>
        <translation>{0}, édition {1}, n’est pas encore contrôlée&#xa0;; la faire contrôler sous Atelier par une deuxième personne avant de l’utiliser.</translation>
    </message>
    <message>
        <source>This cannot be so small: look at it and enter it again.</source>
        <translation>Ceci ne peut pas être si petit&#xa0;: le regarder et le saisir à nouveau.</translation>
    </message>
    <message>
        <source>{0} lies in this tray already; give the other one another mark.</source>
        <translation>{0} est déjà dans cet assortiment&#xa0;; donner une autre marque à l’autre.</translation>
    </message>
    <message>
        <source>A logo is a PNG or JPEG picture of at most 500 kB; choose another.</source>
        <translation>Un logo est une image PNG ou JPEG d’au plus 500 kB&#xa0;; en choisir une autre.</translation>
    </message>
    <message>
        <source>Somebody else here has the initials {0}; take others.</source>
        <translation>Quelqu’un d’autre ici a les initiales {0}&#xa0;; en prendre d’autres.</translation>
    </message>
    <message>
        <source>Initials are needed; enter them.</source>
        <translation>Il faut des initiales&#xa0;; les saisir.</translation>
    </message>
    <message>
        <source>This draft is not in the store: it became an issue or was thrown away.</source>
        <translation>Ce brouillon n’est pas dans la base&#xa0;: il est devenu une édition ou a été jeté.</translation>
    </message>
    <message>
        <source>This photo of the job is gone or changed, so the job file would not be whole; run the check of the store.</source>
        <translation>Cette photo de l’intervention a disparu ou changé, le fichier ne serait donc pas entier&#xa0;; lancer le contrôle de la base.</translation>
    </message>
    <message>
        <source>Something other than an older file of this job lies there and is not written over; choose another name.</source>
        <translation>Il y a là autre chose qu’un fichier plus ancien de cette intervention, et cela n’est pas écrasé&#xa0;; choisir un autre nom.</translation>
    </message>
    <message>
        <source>The export was stopped; no file was left.</source>
        <translation>L’écriture a été arrêtée&#xa0;; aucun fichier n’est resté.</translation>
    </message>
    <message>
        <source>The import was stopped; the store is as it was.</source>
        <translation>La prise a été arrêtée&#xa0;; la base est comme avant.</translation>
    </message>
    <message>
        <source>From entry {0} on this job went another way here than in the file, so it stays as it is; what the file has more can be noted by hand.</source>
        <translation>À partir de l’entrée {0}, cette intervention a continué autrement ici que dans le fichier, elle reste donc comme elle est&#xa0;; ce que le fichier a de plus peut être noté à la main.</translation>
    </message>
    <message>
        <source>“{0}” of the file is “{1}” here; the name here stays.</source>
        <translation>«&#xa0;{0}&#xa0;» du fichier est «&#xa0;{1}&#xa0;» ici&#xa0;; le nom d’ici reste.</translation>
    </message>
    <message>
        <source>This job file does not hold together here, so nothing was taken from it: have it exported anew.</source>
        <translation>Ce fichier d’intervention n’est pas cohérent ici, rien n’en a donc été pris&#xa0;: le faire écrire à nouveau.</translation>
    </message>
    <message>
        <source>Another job here has the number {0} as well: tell the two apart by vehicle and date.</source>
        <translation>Une autre intervention ici a aussi le numéro {0}&#xa0;: distinguer les deux par le véhicule et la date.</translation>
    </message>
    <message>
        <source>This is no job file of this program, or its beginning was changed.</source>
        <translation>Ce n’est pas un fichier d’intervention de ce programme, ou son début a été changé.</translation>
    </message>
    <message>
        <source>This job file is not as it was written, its end may be missing: have it exported anew.</source>
        <translation>Ce fichier d’intervention n’est pas comme il a été écrit, sa fin peut manquer&#xa0;: le faire écrire à nouveau.</translation>
    </message>
    <message>
        <source>This stands twice in the job file; have it exported anew.</source>
        <translation>Ceci est deux fois dans le fichier d’intervention&#xa0;; le faire écrire à nouveau.</translation>
    </message>
    <message>
        <source>A text in quotation marks has to stand here.</source>
        <translation>Un texte entre guillemets doit se trouver ici.</translation>
    </message>
    <message>
        <source>This job file was written by a newer program: take it in with that.</source>
        <translation>Ce fichier d’intervention vient d’un programme plus récent&#xa0;: le prendre avec celui-ci.</translation>
    </message>
    <message>
        <source>This file cannot be read: look whether it is there and may be read.</source>
        <translation>Ce fichier n’est pas lisible&#xa0;: vérifier qu’il est là et peut être lu.</translation>
    </message>
    <message>
        <source>This job file is larger than any of this program; have it looked at.</source>
        <translation>Ce fichier d’intervention est plus grand que tous ceux de ce programme&#xa0;; le faire examiner.</translation>
    </message>
    <message>
        <source>The copy of the backup does not hold the same entries as the backup, so it is not used; look after the disk.</source>
        <translation>La copie de la sauvegarde n’a pas les mêmes entrées que la sauvegarde, elle n’est donc pas utilisée&#xa0;; vérifier le disque.</translation>
    </message>
    <message>
        <source>What is there could not be kept beside its place, so nothing was changed; look after the disk.</source>
        <translation>Ce qui est là n’a pas pu être gardé à côté, rien n’a donc été changé&#xa0;; vérifier le disque.</translation>
    </message>
    <message>
        <source>This is a backup of another store, and there are jobs in this one: take single jobs in by their files, or begin a new store for the backup.</source>
        <translation>C’est la sauvegarde d’une autre base, et il y a des interventions dans celle-ci&#xa0;: prendre les interventions une à une par leurs fichiers, ou commencer une nouvelle base pour la sauvegarde.</translation>
    </message>
    <message>
        <source>This is the store itself: choose a backup of it.</source>
        <translation>C’est la base elle-même&#xa0;: en choisir une sauvegarde.</translation>
    </message>
    <message>
        <source>This backup was written by a newer program: restore it with that.</source>
        <translation>Cette sauvegarde vient d’un programme plus récent&#xa0;: y revenir avec celui-ci.</translation>
    </message>
    <message>
        <source>This job is whole and signed with keys known here; it was sealed in another store, and what that one held besides is not shown here.</source>
        <translation>Cette intervention est intacte et signée de clés connues ici&#xa0;; elle a été scellée dans une autre base, et ce que celle-là contenait d’autre n’est pas montré ici.</translation>
    </message>
    <message>
        <source>Stopped: the figures were not read to their end.</source>
        <translation>Arrêté&#xa0;: les chiffres n’ont pas été lus jusqu’au bout.</translation>
    </message>
    <message>
        <source>Something other than an older export of measurements lies there and is not written over; choose another name.</source>
        <translation>Il y a là autre chose qu’un ancien export de mesures, qui n’est pas remplacé&#xa0;; choisir un autre nom.</translation>
    </message>
    <message>
        <source>“{0}” in this store is not as this program makes it, so it is not opened; keep it as it is and go on with the latest backup.</source>
        <translation>«&#xa0;{0}&#xa0;» n’est pas dans cette base comme ce programme le fait, elle n’est donc pas ouverte&#xa0;; la laisser telle quelle et continuer avec la dernière sauvegarde.</translation>
    </message>
    <message>
        <source>Another backup is being made in this folder just now; begin this one when it is done.</source>
        <translation>Une autre sauvegarde se fait en ce moment dans ce dossier&#xa0;; commencer celle-ci quand elle sera finie.</translation>
    </message>
    <message>
        <source>The copy is not as it should be and was thrown away; run the check of the store.</source>
        <translation>La copie n’est pas comme il faut et a été jetée&#xa0;; lancer le contrôle de la base.</translation>
    </message>
    <message>
        <source>This was stopped before its end; nothing was changed.</source>
        <translation>Ceci a été arrêté avant la fin&#xa0;; rien n’a été changé.</translation>
    </message>
    <message>
        <source>The disk is full, so this was not saved; free some space and try again.</source>
        <translation>Le disque est plein, donc ceci n’a pas été enregistré&#xa0;; libérer de la place et réessayer.</translation>
    </message>
    <message>
        <source>This job is not as it was written, so it is not handed on; run the check of the store.</source>
        <translation>Cette intervention n’est pas comme elle a été écrite, elle n’est donc pas transmise&#xa0;; lancer le contrôle de la base.</translation>
    </message>
    <message>
        <source>This cannot be so large: look at it and enter it again.</source>
        <translation>Cela ne peut pas être si grand&#xa0;: vérifier et saisir à nouveau.</translation>
    </message>
    <message>
        <source>Nothing is measured without uncertainty: enter the one of {0}, or readings with a micrometer.</source>
        <translation>Rien n’est mesuré sans incertitude&#xa0;: saisir celle de {0}, ou des mesures au micromètre.</translation>
    </message>
    <message>
        <source>{0} and {1} measure alike: keep one of them here, with the count of both.</source>
        <translation>{0} et {1} ont la même épaisseur&#xa0;: n’en garder ici qu’une, avec le nombre des deux.</translation>
    </message>
    <message>
        <source>{0} is the last person at work here: enter another one first.</source>
        <translation>{0} est la dernière personne au travail ici&#xa0;: en saisir d’abord une autre.</translation>
    </message>
    <message>
        <source>Every instrument has a smallest step that it shows: enter that of {0}.</source>
        <translation>Tout instrument a un plus petit pas qu’il affiche&#xa0;: saisir celui de {0}.</translation>
    </message>
    <message>
        <source>This backup is not whole, so it takes no place; choose an earlier one.</source>
        <translation>Cette sauvegarde n’est pas intacte et ne prend donc pas la place&#xa0;; en choisir une plus ancienne.</translation>
    </message>
    <message>
        <source>This backup is empty, so it takes no place; choose another.</source>
        <translation>Cette sauvegarde est vide et ne prend donc pas la place&#xa0;; en choisir une autre.</translation>
    </message>
    <message>
        <source>The tables of this backup are not those of this program, so it takes no place; choose another.</source>
        <translation>Les tables de cette sauvegarde ne sont pas celles de ce programme, elle ne prend donc pas la place&#xa0;; en choisir une autre.</translation>
    </message>
    <message>
        <source>The store could not be brought to version {0} and stays as it was; see that its disk has room and may be written to, then open it again.</source>
        <translation>La base n’a pas pu être portée à la version {0} et reste comme elle était&#xa0;; veiller à ce que son disque ait de la place et soit accessible en écriture, puis l’ouvrir à nouveau.</translation>
    </message>
    <message>
        <source>This file cannot be read; choose it again.</source>
        <translation>Ce fichier ne peut être lu&#xa0;; le choisir à nouveau.</translation>
    </message>
    <message>
        <source>This file is larger than 64 MiB: it is no signed record.</source>
        <translation>Ce fichier dépasse 64 Mio&#xa0;: ce n’est pas un rapport signé.</translation>
    </message>
    <message>
        <source>This is longer than a register keeps: say it in fewer words.</source>
        <translation>C’est plus long que ce qu’un registre conserve&#xa0;: l’écrire plus court.</translation>
    </message>
    <message>
        <source>This file is whole, but this store has other entries of the job, or fewer: run the check of the store.</source>
        <translation>Ce fichier est intact, mais cette base a d’autres entrées de l’intervention, ou moins&#xa0;: contrôler la base.</translation>
    </message>
    <message>
        <source>This file is whole, but what was added to the job later is not in it: take the newer file, or open the record here.</source>
        <translation>Ce fichier est intact, mais ce qui a été ajouté plus tard n’y est pas&#xa0;: prendre le fichier plus récent, ou ouvrir le rapport ici.</translation>
    </message>
    <message>
        <source>What was sealed is whole, but something that came after it is gone or changed: look for a newer signed file in the backup folder.</source>
        <translation>Ce qui a été scellé est intact, mais quelque chose venu après manque ou a été changé&#xa0;: chercher un fichier signé plus récent dans le dossier des sauvegardes.</translation>
    </message>
    <message>
        <source>This key ends on {0} already, and an end is not put off: give an earlier day.</source>
        <translation>Cette clé se termine déjà le {0}, et une fin n’est pas repoussée&#xa0;: donner un jour plus tôt.</translation>
    </message>
    <message>
        <source>This was stopped; what was there before is there still.</source>
        <translation>Cela a été arrêté&#xa0;; ce qui était là auparavant y est encore.</translation>
    </message>
    <message>
        <source>Photos that are gone from this backup: {0}.</source>
        <translation>Photos manquantes dans cette sauvegarde&#xa0;: {0}.</translation>
    </message>
    <message>
        <source>The photos of this backup were left behind: bring its folder photos too, beside the backup.</source>
        <translation>Les photos de cette sauvegarde sont restées en arrière&#xa0;: apporter aussi son dossier photos, à côté de la sauvegarde.</translation>
    </message>
    <message>
        <source>Stopped: the jobs were not read to their end.</source>
        <translation>Arrêté&#xa0;: les interventions n’ont pas été lues jusqu’au bout.</translation>
    </message>
    <message>
        <source>{0} has had this store open on the computer {1} since {2}; close it there first, or open the store for looking.</source>
        <translation>{0} a cette base ouverte sur l’ordinateur {1} depuis {2}&#xa0;; la fermer d’abord là-bas, ou l’ouvrir en lecture seule.</translation>
    </message>
    <message>
        <source>The backup {0} is whole; its last entry is of {1}. Jobs: {2}, entries: {3}. What was entered after that cannot be read from the damaged store any more.</source>
        <translation>La sauvegarde {0} est intacte&#xa0;; sa dernière entrée est du {1}. Interventions&#xa0;: {2}, entrées&#xa0;: {3}. Ce qui a été saisi après ne se lit plus dans la base abîmée.</translation>
    </message>
    <message>
        <source>The backup {0} is whole; its last entry is of {1}. Jobs: {2}, entries: {3}. Entered after it, and then missing: {4} entries, in jobs: {5}.</source>
        <translation>La sauvegarde {0} est intacte&#xa0;; sa dernière entrée est du {1}. Interventions&#xa0;: {2}, entrées&#xa0;: {3}. Saisi après, et qui manquerait&#xa0;: {4} entrées, en interventions&#xa0;: {5}.</translation>
    </message>
    <message>
        <source>The backup {0} is whole; its last entry is of {1}. Jobs: {2}, entries: {3}. Nothing here was entered after it.</source>
        <translation>La sauvegarde {0} est intacte&#xa0;; sa dernière entrée est du {1}. Interventions&#xa0;: {2}, entrées&#xa0;: {3}. Rien ici n’a été saisi après.</translation>
    </message>
    <message>
        <source>The backup {0} is whole; its last entry is of {1}. Jobs: {2}, entries: {3}. Entered after it: {4} entries, in jobs: {5}; they will only be in the file that is kept.</source>
        <translation>La sauvegarde {0} est intacte&#xa0;; sa dernière entrée est du {1}. Interventions&#xa0;: {2}, entrées&#xa0;: {3}. Saisi après&#xa0;: {4} entrées, en interventions&#xa0;: {5}&#xa0;; elles ne seront que dans le fichier gardé.</translation>
    </message>
    <message>
        <source>This photo is damaged, so the place where it was taken cannot be told from the rest and left out; choose another one or take it again.</source>
        <translation>Cette photo est endommagée&#xa0;: le lieu de la prise de vue ne peut pas être distingué du reste et laissé de côté&#xa0;; choisissez-en une autre ou reprenez-la.</translation>
    </message>
</context>
<context>
    <name>vehicle</name>
    <message>
        <source>No chassis number is entered yet; type it.</source>
        <translation>Aucun numéro de châssis n’est encore saisi&#xa0;; le taper.</translation>
    </message>
    <message>
        <source>A chassis number has at most {0} characters; type only the number.</source>
        <translation>Un numéro de châssis a au plus {0} caractères&#xa0;; ne taper que le numéro.</translation>
    </message>
    <message>
        <source>The chassis number holds characters that cannot be printed; type it anew.</source>
        <translation>Le numéro de châssis contient des caractères non imprimables&#xa0;; le taper à nouveau.</translation>
    </message>
    <message>
        <source>A number that is no full VIN needs a reason; say why.</source>
        <translation>Un numéro qui n’est pas un VIN complet a besoin d’un motif&#xa0;; dire pourquoi.</translation>
    </message>
    <message>
        <source>The check digit does not fit, as on many vehicles whose maker does not use it; compare the number with the vehicle once more.</source>
        <translation>Le chiffre de contrôle ne convient pas, comme sur beaucoup de véhicules dont le constructeur ne l’utilise pas&#xa0;; comparer encore une fois le numéro au véhicule.</translation>
    </message>
    <message>
        <source>A VIN has 17 characters and this one has {0}; compare it with the vehicle, or file it as a chassis number with a reason.</source>
        <translation>Un VIN a 17 caractères et celui-ci en a {0}&#xa0;; le comparer au véhicule, ou le classer comme numéro de châssis avec motif.</translation>
    </message>
    <message>
        <source>A VIN has only the digits and the letters A to Z without I, O and Q; is {0} meant?</source>
        <translation>Un VIN n’a que des chiffres et les lettres A à Z sans I, O ni Q&#xa0;; faut-il {0}&#xa0;?</translation>
    </message>
    <message>
        <source>A VIN has only the digits and the letters A to Z without I, O and Q; compare it with the vehicle.</source>
        <translation>Un VIN n’a que des chiffres et les lettres A à Z sans I, O ni Q&#xa0;; le comparer au véhicule.</translation>
    </message>
    <message>
        <source>One character 17 times is no VIN; read the number from the vehicle.</source>
        <translation>17 fois le même caractère n’est pas un VIN&#xa0;; lire le numéro sur le véhicule.</translation>
    </message>
</context>
<context>
    <name>widgets</name>
    <message>
        <source>d MMM yyyy, hh:mm</source>
        <translation>d MMM yyyy, hh:mm</translation>
    </message>
</context>
<context>
    <name>word</name>
    <message>
        <source>large bearing</source>
        <translation>grande butée</translation>
    </message>
    <message>
        <source>small bearing</source>
        <translation>petite butée</translation>
    </message>
    <message>
        <source>dial gauge</source>
        <translation>comparateur</translation>
    </message>
    <message>
        <source>depth gauge</source>
        <translation>jauge de profondeur</translation>
    </message>
    <message>
        <source>micrometer</source>
        <translation>micromètre</translation>
    </message>
    <message>
        <source>torque wrench</source>
        <translation>clé dynamométrique</translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation>thermomètre</translation>
    </message>
    <message>
        <source>multimeter</source>
        <translation>multimètre</translation>
    </message>
    <message>
        <source>pressure gauge</source>
        <translation>manomètre</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>balance</translation>
    </message>
    <message>
        <source>“done”</source>
        <translation>«&#xa0;fait&#xa0;»</translation>
    </message>
    <message>
        <source>“in order” or a finding</source>
        <translation>«&#xa0;conforme&#xa0;» ou un constat</translation>
    </message>
    <message>
        <source>one of its choices</source>
        <translation>un de ses choix</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>mesures</translation>
    </message>
    <message>
        <source>the highest reading</source>
        <translation>la mesure la plus haute</translation>
    </message>
    <message>
        <source>the parts fitted</source>
        <translation>les pièces montées</translation>
    </message>
    <message>
        <source>photos</source>
        <translation>photos</translation>
    </message>
    <message>
        <source>words</source>
        <translation>des mots</translation>
    </message>
    <message>
        <source>trials with the gauge</source>
        <translation>essais au calibre</translation>
    </message>
    <message>
        <source>depths</source>
        <translation>profondeurs</translation>
    </message>
    <message>
        <source>lifts at its spots</source>
        <translation>levées à ses points</translation>
    </message>
    <message>
        <source>a teach-in</source>
        <translation>un apprentissage</translation>
    </message>
    <message>
        <source>a signature</source>
        <translation>une signature</translation>
    </message>
    <message>
        <source>gauge trials</source>
        <translation>essais au calibre</translation>
    </message>
    <message>
        <source>lower disc</source>
        <translation>disque inférieur</translation>
    </message>
    <message>
        <source>upper disc</source>
        <translation>disque supérieur</translation>
    </message>
</context>
<context>
    <name>workshop</name>
    <message>
        <source>Marked</source>
        <translation>Marquée</translation>
    </message>
    <message>
        <source>Standard uncertainty, mm</source>
        <translation>Incertitude type, mm</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>non compté</translation>
    </message>
    <message>
        <source>%1, issue %2</source>
        <translation>%1, édition %2</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valeur</translation>
    </message>
    <message>
        <source>Lower, large bearing</source>
        <translation>Inférieur, grande butée</translation>
    </message>
    <message>
        <source>Upper, small bearing</source>
        <translation>Supérieur, petite butée</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unité</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Source</translation>
    </message>
    <message>
        <source>Limits of readings</source>
        <translation>Limites des mesures</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Mesure</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Limite</translation>
    </message>
    <message>
        <source>Values to work to</source>
        <translation>Valeurs de travail</translation>
    </message>
    <message>
        <source>Work to</source>
        <translation>Travailler à</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Numéro</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Quantité</translation>
    </message>
    <message>
        <source>Renewed</source>
        <translation>Remplacé</translation>
    </message>
    <message>
        <source>at every assembly</source>
        <translation>à chaque montage</translation>
    </message>
    <message>
        <source>once</source>
        <translation>une fois</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>Shim found by</source>
        <translation>Cale trouvée par</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>profondeur</translation>
    </message>
    <message>
        <source>gauge fit</source>
        <translation>calibre</translation>
    </message>
    <message>
        <source>Tray</source>
        <translation>Assortiment</translation>
    </message>
    <message>
        <source>%1, %2 sizes</source>
        <translation>%1, %2 tailles</translation>
    </message>
    <message>
        <source>Snug band</source>
        <translation>Plage «&#xa0;ajusté&#xa0;»</translation>
    </message>
    <message>
        <source>Feel, standard uncertainty</source>
        <translation>Toucher, incertitude type</translation>
    </message>
    <message>
        <source>Order of the trials</source>
        <translation>Ordre des essais</translation>
    </message>
    <message>
        <source>thick to thin</source>
        <translation>d’épais à mince</translation>
    </message>
    <message>
        <source>fewest trials</source>
        <translation>le moins d’essais</translation>
    </message>
    <message>
        <source>Seat expected, mean and standard deviation</source>
        <translation>Assise attendue, moyenne et écart type</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Opposite places measured</source>
        <translation>Endroits opposés mesurés</translation>
    </message>
    <message>
        <source>Constants added</source>
        <translation>Constantes ajoutées</translation>
    </message>
    <message>
        <source>Stamp on the new pack used</source>
        <translation>Marquage du bloc neuf utilisé</translation>
    </message>
    <message>
        <source>Largest spread over the places</source>
        <translation>Plus grande dispersion entre endroits</translation>
    </message>
    <message>
        <source>Depth reading, standard uncertainty</source>
        <translation>Mesure de profondeur, incertitude type</translation>
    </message>
    <message>
        <source>Shim table</source>
        <translation>Table des cales</translation>
    </message>
    <message>
        <source>%1 ranges</source>
        <translation>%1 plages</translation>
    </message>
    <message>
        <source>Float limits</source>
        <translation>Limites du jeu</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>Float aimed at</source>
        <translation>Jeu visé</translation>
    </message>
    <message>
        <source>Largest spread over the spots</source>
        <translation>Plus grande dispersion entre points</translation>
    </message>
    <message>
        <source>Spots, at angles of</source>
        <translation>Points, aux angles de</translation>
    </message>
    <message>
        <source>Runs at each spot, at least</source>
        <translation>Relevés à chaque point, au moins</translation>
    </message>
    <message>
        <source>Repeatability, standard uncertainty</source>
        <translation>Répétabilité, incertitude type</translation>
    </message>
    <message>
        <source>Guard factor</source>
        <translation>Facteur de garde</translation>
    </message>
    <message>
        <source>Float lost per mm of shim, and its standard deviation</source>
        <translation>Jeu perdu par mm de cale, et son écart type</translation>
    </message>
    <message>
        <source>Float of other jobs, standard uncertainty</source>
        <translation>Jeu d’autres interventions, incertitude type</translation>
    </message>
    <message>
        <source>Float as found can be measured</source>
        <translation>Jeu à l’arrivée mesurable</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>au moins %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>au plus %1</translation>
    </message>
    <message>
        <source>Save the blank sheet as PDF</source>
        <translation>Enregistrer la fiche vierge en PDF</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation>d MMM yyyy</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Étape</translation>
    </message>
    <message>
        <source>Instruction</source>
        <translation>Consigne</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Limites</translation>
    </message>
    <message>
        <source>Hold point</source>
        <translation>Point d’arrêt</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Mises en garde</translation>
    </message>
    <message>
        <source>hold point</source>
        <translation>point d’arrêt</translation>
    </message>
    <message>
        <source>Taken away against the issue before</source>
        <translation>Enlevé par rapport à l’édition précédente</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Mise en garde&#xa0;: %1</translation>
    </message>
    <message>
        <source>Hold point: %1</source>
        <translation>Point d’arrêt&#xa0;: %1</translation>
    </message>
    <message>
        <source>nobody named</source>
        <translation>personne de nommé</translation>
    </message>
    <message>
        <source>somebody not in the list</source>
        <translation>quelqu’un hors de la liste</translation>
    </message>
    <message>
        <source>New sheet, without a name yet</source>
        <translation>Nouvelle fiche, encore sans nom</translation>
    </message>
    <message>
        <source>No job uses it yet.</source>
        <translation>Aucune intervention ne l’utilise encore.</translation>
    </message>
    <message>
        <source>Used by 1 job, which is closed.</source>
        <translation>Utilisée par 1 intervention, clôturée.</translation>
    </message>
    <message>
        <source>Used by 1 job, which is open.</source>
        <translation>Utilisée par 1 intervention, ouverte.</translation>
    </message>
    <message>
        <source>Used by %1 jobs, none of them open.</source>
        <translation>Utilisée par %1 interventions, aucune ouverte.</translation>
    </message>
    <message>
        <source>Used by %1 jobs, %2 of them open.</source>
        <translation>Utilisée par %1 interventions, dont %2 ouvertes.</translation>
    </message>
    <message>
        <source>Came with the program</source>
        <translation>Venue avec le programme</translation>
    </message>
    <message>
        <source>Entered by %1</source>
        <translation>Saisie par %1</translation>
    </message>
    <message>
        <source>%1. A demonstration sheet needs no check, and jobs on it carry its mark.</source>
        <translation>%1. Une fiche de démonstration n’a pas besoin de contrôle, et les interventions qui l’utilisent portent sa marque.</translation>
    </message>
    <message>
        <source>%1. Not checked yet: no job can be opened on it.</source>
        <translation>%1. Pas encore contrôlée&#xa0;: aucune intervention ne peut l’utiliser.</translation>
    </message>
    <message>
        <source>checked by %1 on %2</source>
        <translation>contrôlée par %1 le %2</translation>
    </message>
    <message>
        <source>%1 (the same person, on a later day)</source>
        <translation>%1 (la même personne, un autre jour)</translation>
    </message>
    <message>
        <source>%1, %2.</source>
        <translation>%1, %2.</translation>
    </message>
    <message>
        <source>Begun by %1, kept at each field.</source>
        <translation>Commencée par %1, enregistrée à chaque champ.</translation>
    </message>
    <message>
        <source>%1 Everything is filled in.</source>
        <translation>%1 Tout est rempli.</translation>
    </message>
    <message>
        <source>%1 One value is still to be filled in or put right.</source>
        <translation>%1 Une valeur reste à remplir ou à corriger.</translation>
    </message>
    <message>
        <source>%1 %2 values are still to be filled in or put right.</source>
        <translation>%1 %2 valeurs restent à remplir ou à corriger.</translation>
    </message>
    <message>
        <source>Sizes of the tray “%1”, %2</source>
        <translation>Tailles de l’assortiment «&#xa0;%1&#xa0;», %2</translation>
    </message>
    <message>
        <source>Thickness, mm</source>
        <translation>Épaisseur, mm</translation>
    </message>
    <message>
        <source>large bearing</source>
        <translation>grande butée</translation>
    </message>
    <message>
        <source>small bearing</source>
        <translation>petite butée</translation>
    </message>
    <message>
        <source>%1 in the tray</source>
        <translation>%1 dans l’assortiment</translation>
    </message>
    <message>
        <source>%1 left of %2 counted %3</source>
        <translation>%1 restantes sur %2, comptées %3</translation>
    </message>
    <message>
        <source>measured %1 ± %2 %3 (95 %)</source>
        <translation>mesurée %1 ± %2 %3 (95&#xa0;%)</translation>
    </message>
    <message>
        <source>by %1 readings</source>
        <translation>sur %1 mesures</translation>
    </message>
    <message>
        <source>order now: %1 or fewer</source>
        <translation>commander maintenant&#xa0;: %1 ou moins</translation>
    </message>
    <message>
        <source>order at %1</source>
        <translation>commander à %1</translation>
    </message>
    <message>
        <source>open jobs may want %1</source>
        <translation>des interventions ouvertes auront peut-être besoin de %1</translation>
    </message>
    <message>
        <source>No open job has its shim from here still to come.</source>
        <translation>Aucune intervention ouverte n’attend encore sa cale d’ici.</translation>
    </message>
    <message>
        <source>Choose the file of a sheet</source>
        <translation>Choisir le fichier d’une fiche</translation>
    </message>
    <message>
        <source>Sheets (*.json)</source>
        <translation>Fiches (*.json)</translation>
    </message>
    <message>
        <source>Save the sheet as a file</source>
        <translation>Enregistrer la fiche dans un fichier</translation>
    </message>
    <message>
        <source>Choose the backup</source>
        <translation>Choisir la sauvegarde</translation>
    </message>
    <message>
        <source>Choose the file of the job</source>
        <translation>Choisir le fichier de l’intervention</translation>
    </message>
    <message>
        <source>Files of jobs (*.jsonl);;All files (*)</source>
        <translation>Fichiers d’intervention (*.jsonl);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Choose the folder for the file of the job</source>
        <translation>Choisir le dossier pour le fichier de l’intervention</translation>
    </message>
    <message>
        <source>Choose the folder for backups</source>
        <translation>Choisir le dossier des sauvegardes</translation>
    </message>
    <message>
        <source>Save the measurements</source>
        <translation>Enregistrer les mesures</translation>
    </message>
    <message>
        <source>Measurements (*.csv *.json)</source>
        <translation>Mesures (*.csv *.json)</translation>
    </message>
    <message>
        <source>1 job</source>
        <translation>1 intervention</translation>
    </message>
    <message>
        <source>%1 jobs</source>
        <translation>%1 interventions</translation>
    </message>
    <message>
        <source>Open jobs that still take a shim from here: %1.</source>
        <translation>Interventions ouvertes qui prendront encore une cale d’ici&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Jobs with no hint yet at its size: %1.</source>
        <translation>Interventions sans indice encore de sa taille&#xa0;: %1.</translation>
    </message>
</context>
</TS>
