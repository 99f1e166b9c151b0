<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE">
<context>
    <name>pipward::desktop</name>
    <message>
        <source>Could not write %1: %2. Choose another folder.</source>
        <translation>%1 ließ sich nicht schreiben: %2. Bitte einen anderen Ordner wählen.</translation>
    </message>
    <message>
        <source>Folder for sheets and other files</source>
        <translation>Ordner für Saisonblatt und andere Dateien</translation>
    </message>
    <message>
        <source>Orchard books (*.gpkg);;All files (*)</source>
        <translation>Obstgartenbücher (*.gpkg);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Orchard books (*.gpkg)</source>
        <translation>Obstgartenbücher (*.gpkg)</translation>
    </message>
    <message>
        <source>Files (%1);;All files (*)</source>
        <translation>Dateien (%1);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>The plan is in the book, but not on this map.</source>
        <translation>Der Plan steht im Buch, aber nicht auf dieser Karte.</translation>
    </message>
    <message>
        <source>Open the book&apos;s map</source>
        <translation>Karte des Buchs öffnen</translation>
    </message>
    <message>
        <source>No layer of bloom windows is on the map. Plan the season, then open the orchard book from the menu.</source>
        <translation>Auf der Karte liegt kein Layer mit Blühfenstern. Bitte die Saison planen, dann das Obstgartenbuch über das Menü öffnen.</translation>
    </message>
    <message>
        <source>d MMM</source>
        <extracomment>day and month in Qt&apos;s notation: &quot;d MMM&quot; or &quot;d. MMM&quot;</extracomment>
        <translation>d. MMM</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation>d. MMM yyyy</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::BloomChart</name>
    <message>
        <source>Bloom of each accession this season</source>
        <translation>Blüte jeder Akzession in dieser Saison</translation>
    </message>
    <message>
        <source>No bloom to show yet.</source>
        <translation>Noch keine Blüte anzuzeigen.</translation>
    </message>
    <message>
        <source>%1: full bloom %2, most likely between %3 and %4; first flowers %5, over by %6.</source>
        <translation>%1: Vollblüte %2, am ehesten zwischen %3 und %4; erste Blüten %5, bis %6 verblüht.</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::BloomFields</name>
    <message>
        <source>not counted</source>
        <translation>nicht gezählt</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Stadium</translation>
    </message>
    <message>
        <source>Flowers open</source>
        <translation>Offene Blüten</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::BookOpener</name>
    <message>
        <source>Open an Orchard Book …</source>
        <translation>Obstgartenbuch öffnen …</translation>
    </message>
    <message>
        <source>Opens the map that is stored in an orchard book</source>
        <translation>Öffnet die Karte, die in einem Obstgartenbuch gespeichert ist</translation>
    </message>
    <message>
        <source>Choose an orchard book</source>
        <translation>Obstgartenbuch wählen</translation>
    </message>
    <message>
        <source>Orchard books (*.gpkg);;All files (*)</source>
        <translation>Obstgartenbücher (*.gpkg);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Orchard book</source>
        <translation>Obstgartenbuch</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::CardAction</name>
    <message>
        <source>Tree card</source>
        <translation>Baumkarte</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::ExpressionFunctions</name>
    <message>
        <source>Median day of full bloom of a tree or an accession, by the last season plan of the book. Without a name: of the feature at hand.</source>
        <translation>Tag der Vollblüte (Median) eines Baums oder einer Akzession nach dem letzten Saisonplan des Buchs. Ohne Namen: des aktuellen Objekts.</translation>
    </message>
    <message>
        <source>Whole days until the median day of full bloom of a tree or an accession, counted from a day or from today; negative afterwards.</source>
        <translation>Ganze Tage bis zur Vollblüte (Median) eines Baums oder einer Akzession, gezählt ab einem Tag oder ab heute; danach negativ.</translation>
    </message>
    <message>
        <source>Where a tree stands, in words: block, row and position.</source>
        <translation>Wo ein Baum steht, in Worten: Quartier, Reihe und Platz.</translation>
    </message>
    <message>
        <source>Seed parent and pollen parent of a tree or an accession.</source>
        <translation>Samenelter (Mutter) und Pollenelter (Vater) eines Baums oder einer Akzession.</translation>
    </message>
    <message>
        <source>Orchard</source>
        <translation>Obstgarten</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::FindBox</name>
    <message>
        <source>Find a tree</source>
        <translation>Baum suchen</translation>
    </message>
    <message>
        <source>A label, a tag, the code of a cross, &quot;A × B 17&quot;, an accession even if misspelt, row and position, or a word of a note.</source>
        <translation>Eine Bezeichnung, ein Etikett, das Kürzel einer Kreuzung, &quot;A × B 17&quot;, eine Akzession, auch falsch geschrieben, Reihe und Platz oder ein Wort aus einer Bemerkung.</translation>
    </message>
    <message>
        <source>Trees found</source>
        <translation>Gefundene Bäume</translation>
    </message>
    <message>
        <source>Choose an orchard book first.</source>
        <translation>Bitte zuerst ein Obstgartenbuch wählen.</translation>
    </message>
    <message>
        <source>Reading the book …</source>
        <translation>Buch wird gelesen …</translation>
    </message>
    <message>
        <source>The book has no trees yet.</source>
        <translation>Das Buch enthält noch keine Bäume.</translation>
    </message>
    <message>
        <source>Nothing is like this. The nearest names: %1</source>
        <translation>Nichts Ähnliches gefunden. Die nächstliegenden Namen: %1</translation>
    </message>
    <message>
        <source>removed %1</source>
        <translation>entfernt %1</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::FindDesk</name>
    <message>
        <source>Tree card</source>
        <translation>Baumkarte</translation>
    </message>
    <message>
        <source>This tree is not in the book yet. Save the edits first.</source>
        <translation>Dieser Baum steht noch nicht im Buch. Bitte zuerst die Änderungen speichern.</translation>
    </message>
    <message>
        <source>Tree</source>
        <translation>Baum</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::IndexTask</name>
    <message>
        <source>Gathering the trees&apos; names</source>
        <translation>Namen der Bäume werden gesammelt</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::NoteDesk</name>
    <message>
        <source>%1, BBCH %2, %3</source>
        <translation>%1, BBCH %2, %3</translation>
    </message>
    <message>
        <source>%1, tag %2, %3 flowers worked, %4</source>
        <translation>%1, Etikett %2, %3 Blüten bestäubt, %4</translation>
    </message>
    <message>
        <source>tag %1, %2 fruits picked, %3</source>
        <translation>Etikett %1, %2 Früchte gepflückt, %3</translation>
    </message>
    <message>
        <source>Reading the book</source>
        <translation>Buch wird gelesen</translation>
    </message>
    <message>
        <source>Noting</source>
        <translation>Notiz wird geschrieben</translation>
    </message>
    <message>
        <source>Taking back a note</source>
        <translation>Notiz wird zurückgenommen</translation>
    </message>
    <message>
        <source>Note at a tree</source>
        <translation>Am Baum notieren</translation>
    </message>
    <message>
        <source>Undo the last note</source>
        <translation>Letzte Notiz zurücknehmen</translation>
    </message>
    <message>
        <source>Note it again</source>
        <translation>Erneut notieren</translation>
    </message>
    <message>
        <source>Click a tree on the map and note its bloom, work or fruit.</source>
        <translation>Einen Baum auf der Karte anklicken und Blüte, Arbeit oder Früchte notieren.</translation>
    </message>
    <message>
        <source>Taken back: %1</source>
        <translation>Zurückgenommen: %1</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Noted</source>
        <translation>Notiert</translation>
    </message>
    <message>
        <source>Nothing was written: the layer “%1” is being edited. Save or cancel its edits, then note again.</source>
        <translation>Es wurde nichts geschrieben: Der Layer „%1“ wird gerade bearbeitet. Bitte die Änderungen speichern oder verwerfen, dann erneut notieren.</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::NoteForm</name>
    <message>
        <source>Bloom</source>
        <translation>Blüte</translation>
    </message>
    <message>
        <source>Pollination</source>
        <translation>Bestäubung</translation>
    </message>
    <message>
        <source>Pick</source>
        <translation>Ernte</translation>
    </message>
    <message>
        <source>Note it</source>
        <translation>Notieren</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>No tree</source>
        <translation>Kein Baum</translation>
    </message>
    <message>
        <source>Tree %1</source>
        <translation>Baum %1</translation>
    </message>
    <message>
        <source>Click a tree on the map.</source>
        <translation>Bitte einen Baum auf der Karte anklicken.</translation>
    </message>
    <message>
        <source>Reading the book …</source>
        <translation>Buch wird gelesen …</translation>
    </message>
    <message>
        <source>of no known accession</source>
        <translation>Akzession unbekannt</translation>
    </message>
    <message>
        <source>%1   %2, gathered %3</source>
        <translation>%1   %2, gesammelt %3</translation>
    </message>
    <message>
        <source>%1   %2 flowers, worked %3</source>
        <translation>%1   %2 Blüten, bestäubt %3</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::OperationTask</name>
    <message>
        <source>Stopped.</source>
        <translation>Abgebrochen.</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::PickFields</name>
    <message>
        <source>not counted</source>
        <translation>nicht gezählt</translation>
    </message>
    <message>
        <source>No tag hangs on this tree: note the pollination first.</source>
        <translation>An diesem Baum hängt kein Etikett: Bitte zuerst die Bestäubung notieren.</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>Fruits</source>
        <translation>Früchte</translation>
    </message>
    <message>
        <source>Sound seeds</source>
        <translation>Gut ausgebildete Samen</translation>
    </message>
    <message>
        <source>Empty seeds</source>
        <translation>Taube Samen</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::Plugin</name>
    <message>
        <source>Orchard map and bloom planner for a fruit breeder</source>
        <translation>Obstgartenkarte und Blühplaner für die Obstzüchtung</translation>
    </message>
    <message>
        <source>Orchard</source>
        <translation>Obstgarten</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::PollinationFields</name>
    <message>
        <source>Cross</source>
        <translation>Kreuzung</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>Flowers worked</source>
        <translation>Bestäubte Blüten</translation>
    </message>
    <message>
        <source>Pollen</source>
        <translation>Pollen</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>fresh, from no lot</source>
        <translation>frisch, aus keiner Partie</translation>
    </message>
    <message>
        <source>No cross of %1 has %2 as its seed parent.</source>
        <translation>Keine Kreuzung der Saison %1 hat %2 als Samenelter.</translation>
    </message>
    <message>
        <source>this tree</source>
        <translation>diesen Baum</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::Provider</name>
    <message>
        <source>Pipward: orchard map and bloom planner</source>
        <translation>Pipward: Obstgartenkarte und Blühplaner</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::SeasonPanel</name>
    <message>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>cannot work</source>
        <translation>nicht möglich</translation>
    </message>
    <message>
        <source>Outlook of the crosses</source>
        <translation>Aussichten der Kreuzungen</translation>
    </message>
    <message>
        <source>Cross</source>
        <translation>Kreuzung</translation>
    </message>
    <message>
        <source>Parents</source>
        <translation>Eltern</translation>
    </message>
    <message>
        <source>Best way</source>
        <translation>Bester Weg</translation>
    </message>
    <message>
        <source>Chance</source>
        <translation>Chance</translation>
    </message>
    <message>
        <source>Orchard books (*.gpkg);;All files (*)</source>
        <translation>Obstgartenbücher (*.gpkg);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Choose an orchard book</source>
        <translation>Obstgartenbuch wählen</translation>
    </message>
    <message>
        <source>The day to look from: nothing observed later is used.</source>
        <translation>Der Tag, auf dessen Stand gerechnet wird: Was später beobachtet wurde, bleibt außer Acht.</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Planen</translation>
    </message>
    <message>
        <source>Plans the season anew and puts the results into the book.</source>
        <translation>Plant die Saison neu und schreibt die Ergebnisse ins Buch.</translation>
    </message>
    <message>
        <source>Choose a book and a day, then plan.</source>
        <translation>Buch und Tag wählen, dann planen.</translation>
    </message>
    <message>
        <source>As of</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Kreuzungen</translation>
    </message>
    <message>
        <source>Planning …</source>
        <translation>Planung läuft …</translation>
    </message>
    <message>
        <source>No book is chosen. Choose the .gpkg file of your orchard.</source>
        <translation>Es ist kein Buch gewählt. Bitte die .gpkg-Datei des Obstgartens wählen.</translation>
    </message>
    <message>
        <source>No plan was made.</source>
        <translation>Es wurde kein Plan erstellt.</translation>
    </message>
    <message>
        <source>Unsaved edits are not in this plan (%1). Save them and plan again.</source>
        <translation>Nicht gespeicherte Änderungen fehlen in diesem Plan (%1). Bitte speichern und neu planen.</translation>
    </message>
    <message>
        <source>Play the bloom</source>
        <translation>Blüte abspielen</translation>
    </message>
    <message>
        <source>Lets the map play through the bloom, a day a step.</source>
        <translation>Spielt die Blüte auf der Karte ab, ein Tag je Schritt.</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::TaskTree</name>
    <message>
        <source>Too late</source>
        <translation>Zu spät</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>This week</source>
        <translation>Diese Woche</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>%1: %2, one flower</source>
        <translation>%1: %2, eine Blüte</translation>
    </message>
    <message>
        <source>%1: %2, %3 flowers</source>
        <translation>%1: %2, %3 Blüten</translation>
    </message>
    <message>
        <source>Work that is due</source>
        <translation>Anstehende Arbeit</translation>
    </message>
    <message>
        <source>Nothing is due.</source>
        <translation>Es steht nichts an.</translation>
    </message>
    <message>
        <source>no tree</source>
        <translation>kein Baum</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::TreeCard</name>
    <message>
        <source>%1, on %2</source>
        <translation>%1, auf %2</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>%1 km</source>
        <translation>%1 km</translation>
    </message>
    <message>
        <source>%1 %2 of where you are (%3°)</source>
        <translation>%1 %2 vom eigenen Standort (%3°)</translation>
    </message>
    <message>
        <source>%1 %2 of the map&apos;s middle (%3°)</source>
        <translation>%1 %2 von der Kartenmitte (%3°)</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>%1 (to %2 m)</source>
        <translation>%1 (auf %2 m genau)</translation>
    </message>
    <message>
        <source>No tree is chosen.</source>
        <translation>Es ist kein Baum gewählt.</translation>
    </message>
    <message>
        <source>Show on the map</source>
        <translation>Auf der Karte zeigen</translation>
    </message>
    <message>
        <source>Copy the place</source>
        <translation>Lage kopieren</translation>
    </message>
    <message>
        <source>Copies a link that telephones open on a map.</source>
        <translation>Kopiert einen Link, den Mobiltelefone auf einer Karte öffnen.</translation>
    </message>
    <message>
        <source>Stands in</source>
        <translation>Steht in</translation>
    </message>
    <message>
        <source>From here</source>
        <translation>Von hier</translation>
    </message>
    <message>
        <source>Accession</source>
        <translation>Akzession</translation>
    </message>
    <message>
        <source>Lineage</source>
        <translation>Abstammung</translation>
    </message>
    <message>
        <source>Planted</source>
        <translation>Gepflanzt</translation>
    </message>
    <message>
        <source>Removed</source>
        <translation>Entfernt</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lage</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::TreeLocator</name>
    <message>
        <source>Finds a tree from a label, a tag, a cross and number, an accession, row and position, or a note.</source>
        <translation>Findet einen Baum anhand von Bezeichnung, Etikett, Kreuzung und Nummer, Akzession, Reihe und Platz oder einer Bemerkung.</translation>
    </message>
    <message>
        <source>Trees of the orchard book</source>
        <translation>Bäume des Obstgartenbuchs</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::TreeTool</name>
    <message>
        <source>The map shows no trees of an orchard book. Add the layer “tree” of your book.</source>
        <translation>Die Karte zeigt keine Bäume eines Obstgartenbuchs. Bitte den Layer „tree“ des Buchs hinzufügen.</translation>
    </message>
    <message>
        <source>No tree is there. Click nearer to one, or zoom in.</source>
        <translation>Dort steht kein Baum. Bitte näher an einen Baum klicken oder hineinzoomen.</translation>
    </message>
</context>
<context>
    <name>pipward::library</name>
    <message>
        <source>12/04/2026 or 12.4.2026</source>
        <translation>12/04/2026 oder 12.4.2026</translation>
    </message>
    <message>
        <source>2026-04-12 or 20260412</source>
        <translation>2026-04-12 oder 20260412</translation>
    </message>
    <message>
        <source>4/12/2026</source>
        <translation>4/12/2026</translation>
    </message>
    <message>
        <source>A file of daily minima and maxima: CSV of most kinds, or GHCN-Daily.</source>
        <translation>Eine Datei mit täglichen Minima und Maxima: CSV in fast jeder Form oder GHCN-Daily.</translation>
    </message>
    <message>
        <source>A line to print under the sheet&apos;s title.</source>
        <translation>Eine Zeile, die unter dem Titel des Saisonblatts gedruckt wird.</translation>
    </message>
    <message>
        <source>A store in which less pollen than this would germinate is not planned on.</source>
        <translation>Ein Lager, in dem der keimfähige Anteil unter diesen Wert fiele, wird nicht eingeplant.</translation>
    </message>
    <message>
        <source>Accession</source>
        <translation>Akzession</translation>
    </message>
    <message>
        <source>Added</source>
        <translation>Hinzugefügt</translation>
    </message>
    <message>
        <source>As in the goal: an accession or a blend.</source>
        <translation>Wie im Kreuzungsziel: eine Akzession oder eine Pollenmischung.</translation>
    </message>
    <message>
        <source>As of</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Base</source>
        <translation>Basistemperatur</translation>
    </message>
    <message>
        <source>Best way</source>
        <translation>Bester Weg</translation>
    </message>
    <message>
        <source>Bias</source>
        <translation>Verzerrung</translation>
    </message>
    <message>
        <source>Bloom</source>
        <translation>Blüte</translation>
    </message>
    <message>
        <source>Bloom forecast</source>
        <translation>Blühvorhersage</translation>
    </message>
    <message>
        <source>Bloom notes of the accession&apos;s own that the need rests on.</source>
        <translation>Eigene Blühnotizen der Akzession, auf denen der Bedarf beruht.</translation>
    </message>
    <message>
        <source>Bloom windows</source>
        <translation>Blühfenster</translation>
    </message>
    <message>
        <source>Book</source>
        <translation>Buch</translation>
    </message>
    <message>
        <source>Chance</source>
        <translation>Chance</translation>
    </message>
    <message>
        <source>Chance that live, compatible pollen is on hand while the flowers can take it, 0 to 1.</source>
        <translation>Chance, dass keimfähiger, verträglicher Pollen bereitsteht, solange die Blüten ihn annehmen können, 0 bis 1.</translation>
    </message>
    <message>
        <source>Check book</source>
        <translation>Buch prüfen</translation>
    </message>
    <message>
        <source>Chill and heat day by day, summed since the first day.</source>
        <translation>Kälte und Wärme Tag für Tag, aufsummiert seit dem ersten Tag.</translation>
    </message>
    <message>
        <source>Chill by the Dynamic Model.</source>
        <translation>Kälte nach dem Dynamischen Modell.</translation>
    </message>
    <message>
        <source>Chill by the Utah model; warm hours take away.</source>
        <translation>Kälte nach dem Utah-Modell; warme Stunden werden abgezogen.</translation>
    </message>
    <message>
        <source>Chill portions</source>
        <translation>Kälteportionen</translation>
    </message>
    <message>
        <source>Chilling hours</source>
        <translation>Kältestunden</translation>
    </message>
    <message>
        <source>Chosen</source>
        <translation>Gewählt</translation>
    </message>
    <message>
        <source>Code of the cross goal.</source>
        <translation>Kürzel des Kreuzungsziels.</translation>
    </message>
    <message>
        <source>Codes of the cross goals it serves.</source>
        <translation>Kürzel der Kreuzungsziele, denen der Pollen dient.</translation>
    </message>
    <message>
        <source>Column of the day</source>
        <translation>Spalte mit dem Tag</translation>
    </message>
    <message>
        <source>Column of the maximum</source>
        <translation>Spalte mit dem Maximum</translation>
    </message>
    <message>
        <source>Column of the minimum</source>
        <translation>Spalte mit dem Minimum</translation>
    </message>
    <message>
        <source>Column of the station</source>
        <translation>Spalte mit der Station</translation>
    </message>
    <message>
        <source>Confidence</source>
        <translation>Sicherheit</translation>
    </message>
    <message>
        <source>Coordinate system</source>
        <translation>Koordinatenbezugssystem</translation>
    </message>
    <message>
        <source>Counts chill and heat day by day at a station, by every clock in use: chilling hours, Utah units, chill portions, growing degree-days and growing degree-hours. Nothing is written.</source>
        <translation>Zählt Kälte und Wärme an einer Station Tag für Tag nach allen gebräuchlichen Maßen: Kältestunden, Utah-Einheiten, Kälteportionen, Wachstumsgradtage und Wachstumsgradstunden. Es wird nichts geschrieben.</translation>
    </message>
    <message>
        <source>Cross</source>
        <translation>Kreuzung</translation>
    </message>
    <message>
        <source>Cut-off</source>
        <translation>Kappung</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Day and month of full bloom at the station, the mean of the model over the past seasons.</source>
        <translation>Tag und Monat der Vollblüte an der Station, Mittel des Modells über die vergangenen Saisons.</translation>
    </message>
    <message>
        <source>Day length</source>
        <translation>Tageslänge</translation>
    </message>
    <message>
        <source>Day until which the pollen is needed.</source>
        <translation>Tag, bis zu dem der Pollen gebraucht wird.</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>Days before bloom that the forecast was issued; unknown where the weather was known.</source>
        <translation>Wie viele Tage vor der Blüte die Vorhersage ausgegeben wurde; leer, wenn das Wetter bekannt war.</translation>
    </message>
    <message>
        <source>Days of the book that now hold the file&apos;s temperatures.</source>
        <translation>Tage des Buchs, die nun die Temperaturen der Datei haben.</translation>
    </message>
    <message>
        <source>Days of the book that were left as they were.</source>
        <translation>Tage des Buchs, die unverändert blieben.</translation>
    </message>
    <message>
        <source>Days that the book did not have.</source>
        <translation>Tage, die das Buch noch nicht hatte.</translation>
    </message>
    <message>
        <source>Days with both temperatures in the file.</source>
        <translation>Tage mit beiden Temperaturen in der Datei.</translation>
    </message>
    <message>
        <source>Degree-days, mean</source>
        <translation>Gradtage, Mittel</translation>
    </message>
    <message>
        <source>Degree-days, sine</source>
        <translation>Gradtage, Sinus</translation>
    </message>
    <message>
        <source>Degree-days, triangle</source>
        <translation>Gradtage, Dreieck</translation>
    </message>
    <message>
        <source>Degree-hours, ASYMCUR</source>
        <translation>Gradstunden, ASYMCUR</translation>
    </message>
    <message>
        <source>Degree-hours, linear</source>
        <translation>Gradstunden, linear</translation>
    </message>
    <message>
        <source>Donor</source>
        <translation>Pollenspender</translation>
    </message>
    <message>
        <source>Each cross goal by each way of having the pollen, with the odds and the reasons.</source>
        <translation>Jedes Kreuzungsziel mit jedem Weg zum Pollen, dazu Chance und Begründung.</translation>
    </message>
    <message>
        <source>End of bloom (BBCH 69): as likely earlier as later.</source>
        <translation>Ende der Blüte (BBCH 69): ebenso wahrscheinlich früher wie später.</translation>
    </message>
    <message>
        <source>End of bloom (BBCH 69): one chance in ten to be earlier.</source>
        <translation>Ende der Blüte (BBCH 69): in einem von zehn Fällen früher.</translation>
    </message>
    <message>
        <source>End of bloom (BBCH 69): one chance in ten to be later.</source>
        <translation>Ende der Blüte (BBCH 69): in einem von zehn Fällen später.</translation>
    </message>
    <message>
        <source>End of bloom, early</source>
        <translation>Ende der Blüte, früh</translation>
    </message>
    <message>
        <source>End of bloom, late</source>
        <translation>Ende der Blüte, spät</translation>
    </message>
    <message>
        <source>End of bloom, median</source>
        <translation>Ende der Blüte, Median</translation>
    </message>
    <message>
        <source>Errors of each way of foretelling full bloom on seasons that it had not seen.</source>
        <translation>Fehler jedes Verfahrens bei der Vorhersage der Vollblüte in Saisons, die es nicht kannte.</translation>
    </message>
    <message>
        <source>Field</source>
        <translation>Feld</translation>
    </message>
    <message>
        <source>Field work</source>
        <translation>Feldarbeit</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>First bloom (BBCH 60): as likely earlier as later.</source>
        <translation>Erste Blüten offen (BBCH 60): ebenso wahrscheinlich früher wie später.</translation>
    </message>
    <message>
        <source>First bloom (BBCH 60): one chance in ten to be earlier.</source>
        <translation>Erste Blüten offen (BBCH 60): in einem von zehn Fällen früher.</translation>
    </message>
    <message>
        <source>First bloom (BBCH 60): one chance in ten to be later.</source>
        <translation>Erste Blüten offen (BBCH 60): in einem von zehn Fällen später.</translation>
    </message>
    <message>
        <source>First bloom, early</source>
        <translation>Erste Blüten, früh</translation>
    </message>
    <message>
        <source>First bloom, late</source>
        <translation>Erste Blüten, spät</translation>
    </message>
    <message>
        <source>First bloom, median</source>
        <translation>Erste Blüten, Median</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Erster Tag</translation>
    </message>
    <message>
        <source>First day that the seed parent can be worked.</source>
        <translation>Erster Tag, an dem der Samenelter bestäubt werden kann.</translation>
    </message>
    <message>
        <source>First day to do it.</source>
        <translation>Erster Tag dafür.</translation>
    </message>
    <message>
        <source>First day to gather balloon flowers, or to cut the branch.</source>
        <translation>Erster Tag, um Blüten im Ballonstadium zu sammeln oder den Treibzweig zu schneiden.</translation>
    </message>
    <message>
        <source>Fit bloom needs</source>
        <translation>Blühbedarf ermitteln</translation>
    </message>
    <message>
        <source>Flowers</source>
        <translation>Blüten</translation>
    </message>
    <message>
        <source>Flowers at this tree.</source>
        <translation>Blüten an diesem Baum.</translation>
    </message>
    <message>
        <source>Flowers of the donor to be gathered.</source>
        <translation>Blüten des Pollenspenders, die zu sammeln sind.</translation>
    </message>
    <message>
        <source>Flowers of the seed parent to be worked for the wanted seedlings.</source>
        <translation>Blüten des Samenelters, die für die gewünschten Sämlinge zu bestäuben sind.</translation>
    </message>
    <message>
        <source>Flowers served</source>
        <translation>Blüten je Spenderblüte</translation>
    </message>
    <message>
        <source>Flowers that the pollen of one donor flower serves at full germination.</source>
        <translation>Zahl der Blüten, für die der Pollen einer Spenderblüte bei voller Keimung reicht.</translation>
    </message>
    <message>
        <source>Flowers to gather</source>
        <translation>Zu sammelnde Blüten</translation>
    </message>
    <message>
        <source>Flowers to gather.</source>
        <translation>Zu sammelnde Blüten.</translation>
    </message>
    <message>
        <source>Flowers to work</source>
        <translation>Zu bestäubende Blüten</translation>
    </message>
    <message>
        <source>For crosses</source>
        <translation>Für Kreuzungen</translation>
    </message>
    <message>
        <source>Foretells first bloom, full bloom and end of bloom of every living tree this season, with the odds: from the temperatures so far, the forecast days in the book, and every past season&apos;s remainder as one way that the spring may go on. Trees higher up the slope bloom later.</source>
        <translation>Sagt für jeden lebenden Baum erste Blüten, Vollblüte und Ende der Blüte in dieser Saison voraus, mit Wahrscheinlichkeiten: aus den bisherigen Temperaturen, den vorhergesagten Tagen im Buch und dem Rest jeder vergangenen Saison als einem möglichen weiteren Verlauf des Frühjahrs. Bäume weiter oben am Hang blühen später.</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Fruit set</source>
        <translation>Fruchtansatz</translation>
    </message>
    <message>
        <source>Full bloom (BBCH 65): as likely earlier as later.</source>
        <translation>Vollblüte (BBCH 65): ebenso wahrscheinlich früher wie später.</translation>
    </message>
    <message>
        <source>Full bloom (BBCH 65): one chance in ten to be earlier.</source>
        <translation>Vollblüte (BBCH 65): in einem von zehn Fällen früher.</translation>
    </message>
    <message>
        <source>Full bloom (BBCH 65): one chance in ten to be later.</source>
        <translation>Vollblüte (BBCH 65): in einem von zehn Fällen später.</translation>
    </message>
    <message>
        <source>Full bloom, early</source>
        <translation>Vollblüte, früh</translation>
    </message>
    <message>
        <source>Full bloom, late</source>
        <translation>Vollblüte, spät</translation>
    </message>
    <message>
        <source>Full bloom, median</source>
        <translation>Vollblüte, Median</translation>
    </message>
    <message>
        <source>Full-bloom days scored, one an accession and season.</source>
        <translation>Bewertete Tage der Vollblüte, einer je Akzession und Saison.</translation>
    </message>
    <message>
        <source>Gather from</source>
        <translation>Sammeln ab</translation>
    </message>
    <message>
        <source>Gather to</source>
        <translation>Sammeln bis</translation>
    </message>
    <message>
        <source>Growing degree-days from a single sine wave.</source>
        <translation>Wachstumsgradtage aus einer einfachen Sinuskurve.</translation>
    </message>
    <message>
        <source>Growing degree-days from a single triangle.</source>
        <translation>Wachstumsgradtage aus einem einfachen Dreieck.</translation>
    </message>
    <message>
        <source>Growing degree-days from the day&apos;s mean; unknown where the mean method has no such cut-off.</source>
        <translation>Wachstumsgradtage aus dem Tagesmittel; leer, wenn es diese Kappung beim Tagesmittel nicht gibt.</translation>
    </message>
    <message>
        <source>Growing degree-hours above 4.5 degrees C, no more above 25.</source>
        <translation>Wachstumsgradstunden über 4,5 °C; über 25 °C steigen sie nicht weiter.</translation>
    </message>
    <message>
        <source>Growing degree-hours on the asymmetric curve.</source>
        <translation>Wachstumsgradstunden nach der asymmetrischen Kurve.</translation>
    </message>
    <message>
        <source>Highest temperature of the day.</source>
        <translation>Höchste Temperatur des Tages.</translation>
    </message>
    <message>
        <source>Hours between 0 and 7.2 degrees C.</source>
        <translation>Stunden zwischen 0 und 7,2 °C.</translation>
    </message>
    <message>
        <source>How soon it must be done.</source>
        <translation>Wie bald es getan werden muss.</translation>
    </message>
    <message>
        <source>How sure the wanted number of seedlings is to be.</source>
        <translation>Wie sicher die gewünschte Zahl an Sämlingen erreicht werden soll.</translation>
    </message>
    <message>
        <source>How the days are written; found out from the file where not given.</source>
        <translation>Wie die Tage geschrieben sind; ohne Angabe aus der Datei ermittelt.</translation>
    </message>
    <message>
        <source>How the pollen comes to be on hand.</source>
        <translation>Auf welchem Weg der Pollen bereitsteht.</translation>
    </message>
    <message>
        <source>How well bloom is foretold</source>
        <translation>Wie gut die Blüte vorhergesagt wird</translation>
    </message>
    <message>
        <source>Import weather</source>
        <translation>Wetterdaten importieren</translation>
    </message>
    <message>
        <source>Imported weather</source>
        <translation>Importierte Wetterdaten</translation>
    </message>
    <message>
        <source>Inside 80 % window</source>
        <translation>Im 80-%-Fenster</translation>
    </message>
    <message>
        <source>Its amount</source>
        <translation>Wert des Ansatzes</translation>
    </message>
    <message>
        <source>Keep until</source>
        <translation>Aufbewahren bis</translation>
    </message>
    <message>
        <source>Kinship</source>
        <translation>Verwandtschaft</translation>
    </message>
    <message>
        <source>Known from</source>
        <translation>Bekannt aus</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Letzter Tag</translation>
    </message>
    <message>
        <source>Last day that the seed parent can be worked.</source>
        <translation>Letzter Tag, an dem der Samenelter bestäubt werden kann.</translation>
    </message>
    <message>
        <source>Last day to do it.</source>
        <translation>Letzter Tag dafür.</translation>
    </message>
    <message>
        <source>Last safe day at the stated risk.</source>
        <translation>Letzter sicherer Tag beim angegebenen Risiko.</translation>
    </message>
    <message>
        <source>Last safe day to gather at the stated risk.</source>
        <translation>Letzter sicherer Tag zum Sammeln beim angegebenen Risiko.</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation>Vorlauf</translation>
    </message>
    <message>
        <source>Leads</source>
        <translation>Vorläufe</translation>
    </message>
    <message>
        <source>Learn from so many seasons only, as a young orchard would; from all but one where not given.</source>
        <translation>Nur aus so vielen Saisons lernen, wie in einem jungen Obstgarten; ohne Angabe aus allen bis auf eine.</translation>
    </message>
    <message>
        <source>Learns from the bloom notes and the temperatures of past seasons what each accession needs before it blooms. Accessions with few notes lean on the orchard&apos;s mean; those without any borrow from their parents or from it.</source>
        <translation>Lernt aus den Blühnotizen und den Temperaturen vergangener Saisons, was jede Akzession braucht, bevor sie blüht. Akzessionen mit wenigen Notizen lehnen sich an das Mittel des Obstgartens an; solche ohne Notizen übernehmen den Bedarf ihrer Eltern oder dieses Mittel.</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Pollenpartie</translation>
    </message>
    <message>
        <source>Lowest temperature of the day.</source>
        <translation>Tiefste Temperatur des Tages.</translation>
    </message>
    <message>
        <source>MAE</source>
        <translation>MAE</translation>
    </message>
    <message>
        <source>Maximum</source>
        <translation>Maximum</translation>
    </message>
    <message>
        <source>Mean absolute error.</source>
        <translation>Mittlerer absoluter Fehler.</translation>
    </message>
    <message>
        <source>Mean of foretold less observed: above zero is too late.</source>
        <translation>Mittel aus vorhergesagt minus beobachtet: über null heißt zu spät.</translation>
    </message>
    <message>
        <source>Mean sound seeds in a fruit.</source>
        <translation>Mittlere Zahl gut ausgebildeter Samen in einer Frucht.</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>Minimum</source>
        <translation>Minimum</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modell</translation>
    </message>
    <message>
        <source>Need, sd</source>
        <translation>Bedarf, SD</translation>
    </message>
    <message>
        <source>New book</source>
        <translation>Neues Buch</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Notes of its own.</source>
        <translation>Eigene Notizen.</translation>
    </message>
    <message>
        <source>Notes used</source>
        <translation>Genutzte Notizen</translation>
    </message>
    <message>
        <source>Orchard</source>
        <translation>Obstgarten</translation>
    </message>
    <message>
        <source>Order of the day</source>
        <translation>Datumsformat</translation>
    </message>
    <message>
        <source>Outlook of crosses</source>
        <translation>Kreuzungsaussichten</translation>
    </message>
    <message>
        <source>Outlook of the crosses</source>
        <translation>Aussichten der Kreuzungen</translation>
    </message>
    <message>
        <source>Per accession</source>
        <translation>Je Akzession</translation>
    </message>
    <message>
        <source>Pollen</source>
        <translation>Pollen</translation>
    </message>
    <message>
        <source>Pollen lot in hand that this way uses.</source>
        <translation>Vorhandene Pollenpartie, die dieser Weg nutzt.</translation>
    </message>
    <message>
        <source>Pollen parent</source>
        <translation>Pollenelter (Vater)</translation>
    </message>
    <message>
        <source>Pollen per flower</source>
        <translation>Pollen je Blüte</translation>
    </message>
    <message>
        <source>Pollen to gather, branches to cut, lots to test: by last safe day.</source>
        <translation>Pollen sammeln, Zweige schneiden, Pollenpartien prüfen: nach dem letzten sicheren Tag geordnet.</translation>
    </message>
    <message>
        <source>Pollen work</source>
        <translation>Pollenarbeit</translation>
    </message>
    <message>
        <source>RMSE</source>
        <translation>RMSE</translation>
    </message>
    <message>
        <source>Raw pollen needed, anther dust included.</source>
        <translation>Benötigter Rohpollen, einschließlich Staubbeutelresten.</translation>
    </message>
    <message>
        <source>Raw pollen of one donor flower, anther dust included.</source>
        <translation>Rohpollen einer Spenderblüte, einschließlich Staubbeutelresten.</translation>
    </message>
    <message>
        <source>Raw pollen that they should give.</source>
        <translation>Rohpollen, den diese Blüten liefern sollten.</translation>
    </message>
    <message>
        <source>Reads the whole book and tells everything that is wrong, doubtful or impossible in it: where it stands and what to do about it. Errors prevent results, warnings weaken them.</source>
        <translation>Liest das ganze Buch und meldet alles, was darin falsch, zweifelhaft oder unmöglich ist: wo es steht und was zu tun ist. Fehler verhindern Ergebnisse, Warnungen machen sie unsicherer.</translation>
    </message>
    <message>
        <source>Replace existing</source>
        <translation>Vorhandene ersetzen</translation>
    </message>
    <message>
        <source>Replaced</source>
        <translation>Ersetzt</translation>
    </message>
    <message>
        <source>Rest, sd</source>
        <translation>Rest, SD</translation>
    </message>
    <message>
        <source>Risk</source>
        <translation>Risiko</translation>
    </message>
    <message>
        <source>Root mean square error.</source>
        <translation>Wurzel aus dem mittleren quadratischen Fehler.</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>S-alleles</source>
        <translation>S-Allele</translation>
    </message>
    <message>
        <source>Score true forecasts as well, issued so many days before bloom.</source>
        <translation>Auch echte Vorhersagen bewerten, ausgegeben so viele Tage vor der Blüte.</translation>
    </message>
    <message>
        <source>Scored</source>
        <translation>Bewertet</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>Season clock</source>
        <translation>Kälte- und Wärmesummen</translation>
    </message>
    <message>
        <source>Season of use</source>
        <translation>Saison der Nutzung</translation>
    </message>
    <message>
        <source>Season plan</source>
        <translation>Saisonplan</translation>
    </message>
    <message>
        <source>Season, sd</source>
        <translation>Saison, SD</translation>
    </message>
    <message>
        <source>Seasons</source>
        <translation>Saisons</translation>
    </message>
    <message>
        <source>Seasons foretold without having been seen.</source>
        <translation>Saisons, die ohne ihre eigenen Notizen vorhergesagt wurden.</translation>
    </message>
    <message>
        <source>Seasons learnt from; unknown where all but the one foretold.</source>
        <translation>Saisons, aus denen gelernt wurde; leer, wenn es alle außer der vorhergesagten waren.</translation>
    </message>
    <message>
        <source>Seasons with notes of its own.</source>
        <translation>Saisons mit eigenen Notizen.</translation>
    </message>
    <message>
        <source>Seed parent</source>
        <translation>Samenelter (Mutter)</translation>
    </message>
    <message>
        <source>Seed to seedling</source>
        <translation>Vom Samen zum Sämling</translation>
    </message>
    <message>
        <source>Seeds per fruit</source>
        <translation>Samen je Frucht</translation>
    </message>
    <message>
        <source>Share of days foretold within 3 days, 0 to 1.</source>
        <translation>Anteil der auf 3 Tage genau vorhergesagten Tage, 0 bis 1.</translation>
    </message>
    <message>
        <source>Share of days foretold within 5 days, 0 to 1.</source>
        <translation>Anteil der auf 5 Tage genau vorhergesagten Tage, 0 bis 1.</translation>
    </message>
    <message>
        <source>Share of observed days inside the p10 to p90 window; 0.8 is right.</source>
        <translation>Anteil der beobachteten Tage im Fenster von p10 bis p90; richtig ist 0,8.</translation>
    </message>
    <message>
        <source>Share of sound seeds that become seedlings.</source>
        <translation>Anteil der gut ausgebildeten Samen, aus denen Sämlinge werden.</translation>
    </message>
    <message>
        <source>Share of worked flowers that set fruit, where the book has too few counts of its own.</source>
        <translation>Anteil der bestäubten Blüten, die Frucht ansetzen; gilt, wenn das Buch zu wenige eigene Zählungen hat.</translation>
    </message>
    <message>
        <source>Skill of bloom forecasts</source>
        <translation>Güte der Blühvorhersagen</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Herkunft</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Stadium</translation>
    </message>
    <message>
        <source>Standard deviation of full bloom by what is not known of the need.</source>
        <translation>Standardabweichung der Vollblüte durch das, was vom Bedarf nicht bekannt ist.</translation>
    </message>
    <message>
        <source>Standard deviation of full bloom that is the accession&apos;s alone.</source>
        <translation>Standardabweichung der Vollblüte, die allein der Akzession eigen ist.</translation>
    </message>
    <message>
        <source>Standard deviation of full bloom that the whole orchard shares in a season.</source>
        <translation>Standardabweichung der Vollblüte, die der ganze Obstgarten in einer Saison gemeinsam hat.</translation>
    </message>
    <message>
        <source>Station</source>
        <translation>Station</translation>
    </message>
    <message>
        <source>Station in the file</source>
        <translation>Station in der Datei</translation>
    </message>
    <message>
        <source>Store</source>
        <translation>Lager</translation>
    </message>
    <message>
        <source>Sunrise to sunset.</source>
        <translation>Von Sonnenaufgang bis Sonnenuntergang.</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>Takes the daily lowest and highest temperatures of a station from a file into the book, and tells how it understood the file. What the file does not make plain is asked for, never guessed; days that the book has already are left alone unless told otherwise.</source>
        <translation>Übernimmt die täglichen Tiefst- und Höchsttemperaturen einer Station aus einer Datei ins Buch und meldet, wie die Datei verstanden wurde. Was aus der Datei nicht klar hervorgeht, wird erfragt, nie geraten; Tage, die das Buch schon hat, bleiben unverändert, wenn nichts anderes verlangt wird.</translation>
    </message>
    <message>
        <source>Tells for every cross goal of the season whether its pollen can be on hand while the seed parent&apos;s flowers take it, by each way of having it, with dates, amounts, S-alleles, kinship and the reasons.</source>
        <translation>Zeigt für jedes Kreuzungsziel der Saison, ob sein Pollen bereitstehen kann, solange die Blüten des Samenelters ihn annehmen: für jeden Weg zum Pollen, mit Tagen, Mengen, S-Allelen, Verwandtschaft und Begründung.</translation>
    </message>
    <message>
        <source>Tells how well each way of foretelling full bloom does on this orchard: every past season is left out in turn, foretold from the others and compared with what was noted.</source>
        <translation>Zeigt, wie gut jedes Verfahren die Vollblüte in diesem Obstgarten vorhersagt: Jede vergangene Saison wird der Reihe nach ausgelassen, aus den übrigen vorhergesagt und mit den Notizen verglichen.</translation>
    </message>
    <message>
        <source>The accession whose flowers are worked.</source>
        <translation>Die Akzession, deren Blüten bestäubt werden.</translation>
    </message>
    <message>
        <source>The accession whose pollen it is.</source>
        <translation>Die Akzession, von der der Pollen stammt.</translation>
    </message>
    <message>
        <source>The accession whose pollen it is: the pollen parent, or a member of the blend.</source>
        <translation>Die Akzession, von der der Pollen stammt: der Pollenelter oder ein Bestandteil der Pollenmischung.</translation>
    </message>
    <message>
        <source>The accession.</source>
        <translation>Die Akzession.</translation>
    </message>
    <message>
        <source>The accession; unknown where all are scored together.</source>
        <translation>Die Akzession; leer, wenn alle zusammen bewertet sind.</translation>
    </message>
    <message>
        <source>The bloom season of the goal.</source>
        <translation>Die Blühsaison des Kreuzungsziels.</translation>
    </message>
    <message>
        <source>The bloom season that the pollen is for.</source>
        <translation>Die Blühsaison, für die der Pollen bestimmt ist.</translation>
    </message>
    <message>
        <source>The chance of being too late that a deadline may leave.</source>
        <translation>Die Wahrscheinlichkeit, zu spät zu kommen, die eine Frist noch lassen darf.</translation>
    </message>
    <message>
        <source>The column.</source>
        <translation>Die Spalte.</translation>
    </message>
    <message>
        <source>The coordinate system of its layers, such as EPSG:25832: one in metres for your region is best.</source>
        <translation>Das Koordinatenbezugssystem der Layer des Buchs, etwa EPSG:25832: am besten eines in Metern für die eigene Gegend.</translation>
    </message>
    <message>
        <source>The day that sums begin on; the season&apos;s first, 1 October in the north, where not given.</source>
        <translation>Der Tag, an dem die Summen beginnen; ohne Angabe der erste der Saison, auf der Nordhalbkugel der 1. Oktober.</translation>
    </message>
    <message>
        <source>The day the forecast looks from.</source>
        <translation>Der Tag, auf dessen Stand die Vorhersage beruht.</translation>
    </message>
    <message>
        <source>The day the plan looks from.</source>
        <translation>Der Tag, auf dessen Stand der Plan beruht.</translation>
    </message>
    <message>
        <source>The day to look from: nothing observed later is used, so any past day can be repeated.</source>
        <translation>Der Tag, auf dessen Stand gerechnet wird: Was später beobachtet wurde, bleibt außer Acht; so lässt sich jeder vergangene Tag nachrechnen.</translation>
    </message>
    <message>
        <source>The day; sums stand at its end.</source>
        <translation>Der Tag; die Summen gelten für sein Ende.</translation>
    </message>
    <message>
        <source>The donor tree; unknown where the donor has no living tree.</source>
        <translation>Der Spenderbaum; leer, wenn der Pollenspender keinen lebenden Baum hat.</translation>
    </message>
    <message>
        <source>The file&apos;s first day with both temperatures.</source>
        <translation>Erster Tag der Datei mit beiden Temperaturen.</translation>
    </message>
    <message>
        <source>The file&apos;s last day with both temperatures.</source>
        <translation>Letzter Tag der Datei mit beiden Temperaturen.</translation>
    </message>
    <message>
        <source>The fitted need of each accession before it blooms.</source>
        <translation>Der ermittelte Bedarf jeder Akzession bis zur Blüte.</translation>
    </message>
    <message>
        <source>The header of the column with the day&apos;s highest temperature, where it is not recognised.</source>
        <translation>Überschrift der Spalte mit der höchsten Temperatur des Tages, falls sie nicht erkannt wird.</translation>
    </message>
    <message>
        <source>The header of the column with the day&apos;s lowest temperature, where it is not recognised.</source>
        <translation>Überschrift der Spalte mit der tiefsten Temperatur des Tages, falls sie nicht erkannt wird.</translation>
    </message>
    <message>
        <source>The header of the column with the day, where it is not recognised.</source>
        <translation>Überschrift der Spalte mit dem Tag, falls sie nicht erkannt wird.</translation>
    </message>
    <message>
        <source>The header of the column with the station, where it is not recognised.</source>
        <translation>Überschrift der Spalte mit der Station, falls sie nicht erkannt wird.</translation>
    </message>
    <message>
        <source>The last day; the last one known up to as-of where not given.</source>
        <translation>Der letzte Tag; ohne Angabe der letzte bekannte bis zum Stand.</translation>
    </message>
    <message>
        <source>The lower threshold of the degree-days.</source>
        <translation>Die untere Schwelle der Gradtage.</translation>
    </message>
    <message>
        <source>The main job: learns from past springs, foretells this one, weighs every wanted cross and lists the pollen work and the field work with last safe days. Replaces the result tables of the book in one step and makes a sheet to print.</source>
        <translation>Die Hauptaufgabe: lernt aus vergangenen Frühjahren, sagt dieses voraus, wägt jede gewünschte Kreuzung ab und listet Pollenarbeit und Feldarbeit mit den letzten sicheren Tagen auf. Ersetzt die Ergebnistabellen des Buchs in einem Schritt und erstellt ein Saisonblatt zum Drucken.</translation>
    </message>
    <message>
        <source>The one-number structure that counts most in the method.</source>
        <translation>Der Ansatz mit nur einem Kennwert, der im Verfahren am meisten zählt.</translation>
    </message>
    <message>
        <source>The orchard book: the path of a GeoPackage, or PG:... for a PostGIS database.</source>
        <translation>Das Obstgartenbuch: der Pfad eines GeoPackages oder PG:... für eine PostGIS-Datenbank.</translation>
    </message>
    <message>
        <source>The orchard&apos;s name on the sheet; the book&apos;s file name where not given.</source>
        <translation>Name des Obstgartens auf dem Saisonblatt; ohne Angabe der Dateiname des Buchs.</translation>
    </message>
    <message>
        <source>The outlook in one word.</source>
        <translation>Die Aussicht in einem Wort.</translation>
    </message>
    <message>
        <source>The path of the GeoPackage to make; nothing may be there yet.</source>
        <translation>Pfad des anzulegenden GeoPackages; dort darf noch nichts liegen.</translation>
    </message>
    <message>
        <source>The reasons, in sentences.</source>
        <translation>Die Gründe, in Sätzen.</translation>
    </message>
    <message>
        <source>The row, by the name that people know it by.</source>
        <translation>Die Zeile, mit dem Namen, unter dem man sie kennt.</translation>
    </message>
    <message>
        <source>The same, 1 January being 1.</source>
        <translation>Dasselbe als Tag im Jahr; der 1. Januar ist 1.</translation>
    </message>
    <message>
        <source>The seed parent&apos;s tree.</source>
        <translation>Der Baum des Samenelters.</translation>
    </message>
    <message>
        <source>The stage foretold: full bloom.</source>
        <translation>Das vorhergesagte Stadium: Vollblüte.</translation>
    </message>
    <message>
        <source>The station of the book that the days belong to; its only one where it is not named.</source>
        <translation>Die Station des Buchs, zu der die Tage gehören; ohne Angabe die einzige des Buchs.</translation>
    </message>
    <message>
        <source>The station of the book.</source>
        <translation>Die Station des Buchs.</translation>
    </message>
    <message>
        <source>The table or file it was found in.</source>
        <translation>Die Tabelle oder Datei, in der es gefunden wurde.</translation>
    </message>
    <message>
        <source>The tree&apos;s label; unknown for an accession without a living tree.</source>
        <translation>Die Bezeichnung des Baums; leer bei einer Akzession ohne lebenden Baum.</translation>
    </message>
    <message>
        <source>The unit of the temperatures; found out from the header and the values where not given.</source>
        <translation>Die Einheit der Temperaturen; ohne Angabe aus Überschrift und Werten ermittelt.</translation>
    </message>
    <message>
        <source>The upper threshold of the degree-days, looked at only with a cut-off.</source>
        <translation>Die obere Schwelle der Gradtage; zählt nur mit einer Kappung.</translation>
    </message>
    <message>
        <source>The way of foretelling full bloom.</source>
        <translation>Das Verfahren zur Vorhersage der Vollblüte.</translation>
    </message>
    <message>
        <source>The way of foretelling that was fitted.</source>
        <translation>Das Vorhersageverfahren, nach dem der Bedarf ermittelt wurde.</translation>
    </message>
    <message>
        <source>The way of foretelling, and where the accession&apos;s need is known from.</source>
        <translation>Das Vorhersageverfahren und die Herkunft des Bedarfs der Akzession.</translation>
    </message>
    <message>
        <source>The way of foretelling.</source>
        <translation>Das Vorhersageverfahren.</translation>
    </message>
    <message>
        <source>The weather station to use; the one with the most days where it is not named.</source>
        <translation>Die zu verwendende Wetterstation; ohne Angabe die mit den meisten Tagen.</translation>
    </message>
    <message>
        <source>The weather station.</source>
        <translation>Die Wetterstation.</translation>
    </message>
    <message>
        <source>The year of bloom.</source>
        <translation>Das Jahr der Blüte.</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Training seasons</source>
        <translation>Lernsaisons</translation>
    </message>
    <message>
        <source>Tree</source>
        <translation>Baum</translation>
    </message>
    <message>
        <source>Unchanged</source>
        <translation>Unverändert</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Upper threshold</source>
        <translation>Obere Schwelle</translation>
    </message>
    <message>
        <source>Urgency</source>
        <translation>Dringlichkeit</translation>
    </message>
    <message>
        <source>Usable germination</source>
        <translation>Mindestkeimung</translation>
    </message>
    <message>
        <source>Use from</source>
        <translation>Bestäuben ab</translation>
    </message>
    <message>
        <source>Use to</source>
        <translation>Bestäuben bis</translation>
    </message>
    <message>
        <source>Usual full bloom</source>
        <translation>Übliche Vollblüte</translation>
    </message>
    <message>
        <source>Usual full bloom, day</source>
        <translation>Übliche Vollblüte, Tag</translation>
    </message>
    <message>
        <source>Utah units</source>
        <translation>Utah-Einheiten</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Variance of seeds per fruit</source>
        <translation>Varianz der Samen je Frucht</translation>
    </message>
    <message>
        <source>Variance of the sound seeds in a fruit.</source>
        <translation>Varianz der Zahl gut ausgebildeter Samen in einer Frucht.</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Warnings</source>
        <translation>Warnungen</translation>
    </message>
    <message>
        <source>Way</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>Weightiest structure</source>
        <translation>Gewichtigster Ansatz</translation>
    </message>
    <message>
        <source>What each accession needs</source>
        <translation>Was jede Akzession braucht</translation>
    </message>
    <message>
        <source>What heat above the upper threshold is worth.</source>
        <translation>Was Wärme über der oberen Schwelle noch zählt.</translation>
    </message>
    <message>
        <source>What is to be done.</source>
        <translation>Was zu tun ist.</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Was nicht stimmt</translation>
    </message>
    <message>
        <source>What is wrong, as a sentence.</source>
        <translation>Was nicht stimmt, als Satz.</translation>
    </message>
    <message>
        <source>What stands there.</source>
        <translation>Was dort steht.</translation>
    </message>
    <message>
        <source>What that structure asks of this accession.</source>
        <translation>Wie viel dieser Ansatz von dieser Akzession verlangt.</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Abhilfe</translation>
    </message>
    <message>
        <source>What to do about it, as a sentence.</source>
        <translation>Was dagegen zu tun ist, als Satz.</translation>
    </message>
    <message>
        <source>What was found in the book, and what to do about it.</source>
        <translation>Was im Buch gefunden wurde und was zu tun ist.</translation>
    </message>
    <message>
        <source>What was taken from the file into the book.</source>
        <translation>Was aus der Datei ins Buch übernommen wurde.</translation>
    </message>
    <message>
        <source>What weakens this forecast.</source>
        <translation>Was diese Vorhersage unsicherer macht.</translation>
    </message>
    <message>
        <source>When each living tree will bloom this season, with the odds.</source>
        <translation>Wann jeder lebende Baum in dieser Saison blüht, mit Wahrscheinlichkeiten.</translation>
    </message>
    <message>
        <source>Where the pollen waits.</source>
        <translation>Wo der Pollen bis dahin lagert.</translation>
    </message>
    <message>
        <source>Where the temperatures come from.</source>
        <translation>Woher die Temperaturen stammen.</translation>
    </message>
    <message>
        <source>Whether days that the book already has take the file&apos;s temperatures; a forecast always gives way to what was measured.</source>
        <translation>Ob Tage, die das Buch schon hat, die Temperaturen der Datei erhalten; Vorhergesagtes weicht immer dem Gemessenen.</translation>
    </message>
    <message>
        <source>Whether each accession gets scores of its own besides those of all together.</source>
        <translation>Ob jede Akzession neben der Gesamtbewertung eine eigene Bewertung erhält.</translation>
    </message>
    <message>
        <source>Whether its need comes from its own notes or was borrowed.</source>
        <translation>Ob ihr Bedarf aus eigenen Notizen stammt oder übernommen wurde.</translation>
    </message>
    <message>
        <source>Whether the style lets the donor&apos;s pollen through.</source>
        <translation>Ob der Griffel den Pollen des Spenders durchlässt.</translation>
    </message>
    <message>
        <source>Whether this is the best of the ways, the one that the plan follows.</source>
        <translation>Ob dies der beste Weg ist, dem der Plan folgt.</translation>
    </message>
    <message>
        <source>Whether this is the method that forecasts use.</source>
        <translation>Ob die Vorhersagen dieses Verfahren nutzen.</translation>
    </message>
    <message>
        <source>Which pollen to bring.</source>
        <translation>Welcher Pollen mitzubringen ist.</translation>
    </message>
    <message>
        <source>Which station to take, where the file holds several.</source>
        <translation>Welche Station zu nehmen ist, wenn die Datei mehrere enthält.</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Begründung</translation>
    </message>
    <message>
        <source>Within 3 days</source>
        <translation>Auf 3 Tage genau</translation>
    </message>
    <message>
        <source>Within 5 days</source>
        <translation>Auf 5 Tage genau</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Work at the seed parents: bagging, pollinating, unbagging, by first day.</source>
        <translation>Arbeit an den Sameneltern: Eintüten, Bestäuben, Tüten abnehmen; nach dem ersten Tag geordnet.</translation>
    </message>
    <message>
        <source>Write to the book</source>
        <translation>Ins Buch schreiben</translation>
    </message>
    <message>
        <source>a chill threshold, then heat</source>
        <translation>erst eine Kälteschwelle, dann Wärme</translation>
    </message>
    <message>
        <source>above it nothing develops</source>
        <translation>darüber entwickelt sich nichts</translation>
    </message>
    <message>
        <source>above it the rate falls as fast as it rose</source>
        <translation>darüber fällt die Entwicklungsrate so schnell, wie sie stieg</translation>
    </message>
    <message>
        <source>above it the rate stays at its highest</source>
        <translation>darüber bleibt die Entwicklungsrate auf dem Höchstwert</translation>
    </message>
    <message>
        <source>degree-days from a fixed day</source>
        <translation>Gradtage ab einem festen Tag</translation>
    </message>
    <message>
        <source>degrees Celsius</source>
        <translation>Grad Celsius</translation>
    </message>
    <message>
        <source>degrees Fahrenheit</source>
        <translation>Grad Fahrenheit</translation>
    </message>
    <message>
        <source>error, warning or note.</source>
        <translation>Fehler, Warnung oder Hinweis.</translation>
    </message>
    <message>
        <source>forecast by a weather service</source>
        <translation>von einem Wetterdienst vorhergesagt</translation>
    </message>
    <message>
        <source>measured at the station</source>
        <translation>an der Station gemessen</translation>
    </message>
    <message>
        <source>no upper threshold</source>
        <translation>keine obere Schwelle</translation>
    </message>
    <message>
        <source>tenths of a degree Celsius</source>
        <translation>Zehntelgrad Celsius</translation>
    </message>
    <message>
        <source>the average of several heat and chill models</source>
        <translation>das Mittel mehrerer Wärme- und Kältemodelle</translation>
    </message>
    <message>
        <source>the long-run mean day, whatever the weather</source>
        <translation>der langjährige mittlere Tag, unabhängig vom Wetter</translation>
    </message>
    <message>
        <source>the one that did best on the orchard&apos;s own past seasons</source>
        <translation>das beste in den vergangenen Saisons des Obstgartens</translation>
    </message>
    <message>
        <source>00: dormant: scales closed and dark</source>
        <translation>00: Knospenruhe: Schuppen geschlossen und dunkel</translation>
    </message>
    <message>
        <source>01: leaf buds begin to swell</source>
        <translation>01: Blattknospen beginnen zu schwellen</translation>
    </message>
    <message>
        <source>03: leaf buds swollen: scales light, partly hairy</source>
        <translation>03: Blattknospen geschwollen: Schuppen hell, teils behaart</translation>
    </message>
    <message>
        <source>07: bud break: first green tips just seen</source>
        <translation>07: Knospenaufbruch: erste grüne Spitzen eben sichtbar</translation>
    </message>
    <message>
        <source>09: green leaf tips 5 mm out</source>
        <translation>09: grüne Blattspitzen 5 mm ausgetreten</translation>
    </message>
    <message>
        <source>1 for the tree that fits best.</source>
        <translation>1 für den Baum, der am besten passt.</translation>
    </message>
    <message>
        <source>10: mouse-ear: green tips 10 mm, leaves parting</source>
        <translation>10: Mausohr: grüne Spitzen 10 mm, Blätter spreizen sich ab</translation>
    </message>
    <message>
        <source>11: first leaves open</source>
        <translation>11: erste Blätter entfaltet</translation>
    </message>
    <message>
        <source>15: more leaves open, not full size</source>
        <translation>15: weitere Blätter entfaltet, noch nicht voll ausgewachsen</translation>
    </message>
    <message>
        <source>19: first leaves full size</source>
        <translation>19: erste Blätter voll ausgewachsen</translation>
    </message>
    <message>
        <source>31: shoot growth begins</source>
        <translation>31: Triebwachstum beginnt</translation>
    </message>
    <message>
        <source>32: shoots 20 % of final length</source>
        <translation>32: Triebe 20 % der Endlänge</translation>
    </message>
    <message>
        <source>33: shoots 30 % of final length</source>
        <translation>33: Triebe 30 % der Endlänge</translation>
    </message>
    <message>
        <source>34: shoots 40 % of final length</source>
        <translation>34: Triebe 40 % der Endlänge</translation>
    </message>
    <message>
        <source>35: shoots 50 % of final length</source>
        <translation>35: Triebe 50 % der Endlänge</translation>
    </message>
    <message>
        <source>36: shoots 60 % of final length</source>
        <translation>36: Triebe 60 % der Endlänge</translation>
    </message>
    <message>
        <source>37: shoots 70 % of final length</source>
        <translation>37: Triebe 70 % der Endlänge</translation>
    </message>
    <message>
        <source>38: shoots 80 % of final length</source>
        <translation>38: Triebe 80 % der Endlänge</translation>
    </message>
    <message>
        <source>39: shoots 90 % of final length</source>
        <translation>39: Triebe 90 % der Endlänge</translation>
    </message>
    <message>
        <source>51: flower buds swell</source>
        <translation>51: Blütenknospen schwellen</translation>
    </message>
    <message>
        <source>52: flower buds swollen</source>
        <translation>52: Blütenknospen geschwollen</translation>
    </message>
    <message>
        <source>53: bud burst: green tips around the flowers seen</source>
        <translation>53: Knospenaufbruch: grüne Spitzen um die Blüten sichtbar</translation>
    </message>
    <message>
        <source>54: mouse-ear on the flower bud</source>
        <translation>54: Mausohr an der Blütenknospe</translation>
    </message>
    <message>
        <source>55: flower buds visible, still closed</source>
        <translation>55: Blütenknospen sichtbar, noch geschlossen</translation>
    </message>
    <message>
        <source>56: green bud: flowers parting, closed</source>
        <translation>56: Grünknospe: Blüten trennen sich, geschlossen</translation>
    </message>
    <message>
        <source>57: pink bud: petals just seen</source>
        <translation>57: Rotknospe: Blütenblätter eben sichtbar</translation>
    </message>
    <message>
        <source>59: balloon: most flowers are hollow balls</source>
        <translation>59: Ballonstadium: die meisten Blüten sind hohle Bälle</translation>
    </message>
    <message>
        <source>60: first flowers open</source>
        <translation>60: erste Blüten offen</translation>
    </message>
    <message>
        <source>61: about 10 % of flowers open</source>
        <translation>61: etwa 10 % der Blüten offen</translation>
    </message>
    <message>
        <source>62: about 20 % of flowers open</source>
        <translation>62: etwa 20 % der Blüten offen</translation>
    </message>
    <message>
        <source>63: about 30 % of flowers open</source>
        <translation>63: etwa 30 % der Blüten offen</translation>
    </message>
    <message>
        <source>64: about 40 % of flowers open</source>
        <translation>64: etwa 40 % der Blüten offen</translation>
    </message>
    <message>
        <source>65: full bloom: half or more open, first petals fall</source>
        <translation>65: Vollblüte: mindestens die Hälfte offen, erste Blütenblätter fallen</translation>
    </message>
    <message>
        <source>67: fading: most petals fallen</source>
        <translation>67: abblühend: die meisten Blütenblätter abgefallen</translation>
    </message>
    <message>
        <source>69: end of bloom: all petals fallen</source>
        <translation>69: Ende der Blüte: alle Blütenblätter abgefallen</translation>
    </message>
    <message>
        <source>71: fruit to 10 mm, first drop</source>
        <translation>71: Früchte bis 10 mm, erster Fruchtfall</translation>
    </message>
    <message>
        <source>72: fruit to 20 mm</source>
        <translation>72: Früchte bis 20 mm</translation>
    </message>
    <message>
        <source>73: second fruit drop</source>
        <translation>73: zweiter Fruchtfall</translation>
    </message>
    <message>
        <source>74: fruit to 40 mm, still upright</source>
        <translation>74: Früchte bis 40 mm, noch aufrecht</translation>
    </message>
    <message>
        <source>75: fruit half of final size</source>
        <translation>75: Früchte halb ausgewachsen</translation>
    </message>
    <message>
        <source>76: fruit 60 % of final size</source>
        <translation>76: Früchte 60 % der Endgröße</translation>
    </message>
    <message>
        <source>77: fruit 70 % of final size</source>
        <translation>77: Früchte 70 % der Endgröße</translation>
    </message>
    <message>
        <source>78: fruit 80 % of final size</source>
        <translation>78: Früchte 80 % der Endgröße</translation>
    </message>
    <message>
        <source>79: fruit 90 % of final size</source>
        <translation>79: Früchte 90 % der Endgröße</translation>
    </message>
    <message>
        <source>81: ripening begins: first colour</source>
        <translation>81: Reifebeginn: erste Ausfärbung</translation>
    </message>
    <message>
        <source>85: colour deepens</source>
        <translation>85: Ausfärbung nimmt zu</translation>
    </message>
    <message>
        <source>87: ripe for picking</source>
        <translation>87: pflückreif</translation>
    </message>
    <message>
        <source>89: ripe for eating</source>
        <translation>89: genussreif</translation>
    </message>
    <message>
        <source>91: shoot growth ended, leaves green</source>
        <translation>91: Triebwachstum beendet, Laub grün</translation>
    </message>
    <message>
        <source>92: leaves begin to turn</source>
        <translation>92: Laub beginnt sich zu verfärben</translation>
    </message>
    <message>
        <source>93: leaf fall begins</source>
        <translation>93: Blattfall beginnt</translation>
    </message>
    <message>
        <source>95: half the leaves turned or fallen</source>
        <translation>95: Hälfte des Laubs verfärbt oder abgefallen</translation>
    </message>
    <message>
        <source>97: all leaves fallen</source>
        <translation>97: alle Blätter abgefallen</translation>
    </message>
    <message>
        <source>99: harvested and stored</source>
        <translation>99: geerntet und eingelagert</translation>
    </message>
    <message>
        <source>A geo: URI, which telephones open on a map (RFC 5870).</source>
        <translation>Ein geo:-URI, den Mobiltelefone auf einer Karte öffnen (RFC 5870).</translation>
    </message>
    <message>
        <source>Address</source>
        <translation>Standort</translation>
    </message>
    <message>
        <source>Anything worth keeping about it.</source>
        <translation>Alles, was sonst festzuhalten ist.</translation>
    </message>
    <message>
        <source>Bearing</source>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>Block</source>
        <translation>Quartier</translation>
    </message>
    <message>
        <source>Block, row and position in words.</source>
        <translation>Quartier, Reihe und Platz in Worten.</translation>
    </message>
    <message>
        <source>Coefficient of kinship of the parents: the inbreeding of a seedling; unknown where no parent of either is recorded.</source>
        <translation>Abstammungskoeffizient der Eltern: der Inzuchtkoeffizient eines Sämlings; leer, wenn von keinem der beiden ein Elter verzeichnet ist.</translation>
    </message>
    <message>
        <source>Cold at</source>
        <translation>Kälte bei</translation>
    </message>
    <message>
        <source>Cold from</source>
        <translation>Kälte ab</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Entfernung</translation>
    </message>
    <message>
        <source>Dress book</source>
        <translation>Buch gestalten</translation>
    </message>
    <message>
        <source>East of Greenwich, WGS 84.</source>
        <translation>Östlich von Greenwich, WGS 84.</translation>
    </message>
    <message>
        <source>Empty seeds</source>
        <translation>Taube Samen</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Eintrag</translation>
    </message>
    <message>
        <source>Find a tree</source>
        <translation>Baum suchen</translation>
    </message>
    <message>
        <source>Finds trees from any scrap of their record: a label or a part of it, a tag, a cross&apos;s code, &quot;A x B 17&quot; for the 17th seedling of a cross, an accession&apos;s name even misspelt, row and position, a word of a note. Case, accents, blanks and dashes do not matter. Removed trees are found too. Nothing is written.</source>
        <translation>Findet Bäume anhand jedes Bruchstücks ihrer Daten: eine Bezeichnung oder ein Teil davon, ein Etikett, das Kürzel einer Kreuzung, &quot;A x B 17&quot; für den 17. Sämling einer Kreuzung, der Name einer Akzession, auch falsch geschrieben, Reihe und Platz, ein Wort aus einer Bemerkung. Groß- und Kleinschreibung, Akzente, Leerzeichen und Striche spielen keine Rolle. Auch entfernte Bäume werden gefunden. Es wird nichts geschrieben.</translation>
    </message>
    <message>
        <source>Flat or hollow seeds found in them.</source>
        <translation>Flache oder hohle Samen, die darin gefunden wurden.</translation>
    </message>
    <message>
        <source>Flowers open</source>
        <translation>Offene Blüten</translation>
    </message>
    <message>
        <source>From tags</source>
        <translation>Von Etiketten</translation>
    </message>
    <message>
        <source>From the standpoint, clockwise from true north.</source>
        <translation>Vom Standpunkt aus, im Uhrzeigersinn von geografisch Nord.</translation>
    </message>
    <message>
        <source>From the standpoint, over the ground as on a map.</source>
        <translation>Vom Standpunkt aus, waagerecht gemessen wie auf einer Karte.</translation>
    </message>
    <message>
        <source>Fruits</source>
        <translation>Früchte</translation>
    </message>
    <message>
        <source>Full seeds found in them.</source>
        <translation>Volle Samen, die darin gefunden wurden.</translation>
    </message>
    <message>
        <source>Germinated</source>
        <translation>Gekeimt</translation>
    </message>
    <message>
        <source>Grains</source>
        <translation>Pollenkörner</translation>
    </message>
    <message>
        <source>How many of them have a tube.</source>
        <translation>Wie viele davon einen Pollenschlauch haben.</translation>
    </message>
    <message>
        <source>How many trees to tell at the most.</source>
        <translation>Wie viele Bäume höchstens genannt werden.</translation>
    </message>
    <message>
        <source>How well it fits, 0 to 1; 1 for a tree&apos;s own label.</source>
        <translation>Wie gut es passt, 0 bis 1; 1 für die eigene Bezeichnung eines Baums.</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Bezeichnung</translation>
    </message>
    <message>
        <source>Latitude</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Latitude and longitude of where you stand, as in 48.1340,9.3010: distances and bearings are told from there, and nearer trees come first among equals.</source>
        <translation>Breite und Länge des eigenen Standpunkts, etwa 48.1340,9.3010: Entfernungen und Richtungen gelten von dort aus, und bei gleich guten Treffern kommen nähere Bäume zuerst.</translation>
    </message>
    <message>
        <source>Layer or map</source>
        <translation>Layer oder Karte</translation>
    </message>
    <message>
        <source>Lineage</source>
        <translation>Abstammung</translation>
    </message>
    <message>
        <source>Longitude</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Makes an empty orchard book: a GeoPackage with every table, its closed lists, names for people and descriptions, ready to be filled in with any GIS. It is dressed at once: its layers have symbols, labels and forms, and a map of them is stored in it.</source>
        <translation>Legt ein leeres Obstgartenbuch an: ein GeoPackage mit allen Tabellen samt Auswahllisten, lesbaren Namen und Beschreibungen, das sich mit jedem GIS ausfüllen lässt. Es ist sofort fertig gestaltet: Seine Layer haben Symbole, Beschriftungen und Formulare, und eine Karte davon ist darin gespeichert.</translation>
    </message>
    <message>
        <source>Matched</source>
        <translation>Übereinstimmung</translation>
    </message>
    <message>
        <source>Medium</source>
        <translation>Substrat</translation>
    </message>
    <message>
        <source>Most trees</source>
        <translation>Höchstzahl Bäume</translation>
    </message>
    <message>
        <source>North of the equator, WGS 84.</source>
        <translation>Nördlich des Äquators, WGS 84.</translation>
    </message>
    <message>
        <source>Note bloom</source>
        <translation>Blüte notieren</translation>
    </message>
    <message>
        <source>Note pick</source>
        <translation>Ernte notieren</translation>
    </message>
    <message>
        <source>Note pollen test</source>
        <translation>Pollentest notieren</translation>
    </message>
    <message>
        <source>Note pollination</source>
        <translation>Bestäubung notieren</translation>
    </message>
    <message>
        <source>Note score</source>
        <translation>Bonitur notieren</translation>
    </message>
    <message>
        <source>Note seed lot</source>
        <translation>Saatgutpartie notieren</translation>
    </message>
    <message>
        <source>Note seed taken out</source>
        <translation>Samenentnahme notieren</translation>
    </message>
    <message>
        <source>Note sprouts</source>
        <translation>Keimung notieren</translation>
    </message>
    <message>
        <source>Observer</source>
        <translation>Beobachter</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>Pass</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>Place as a link</source>
        <translation>Lage als Link</translation>
    </message>
    <message>
        <source>Pollen lot</source>
        <translation>Pollenpartie</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>Rank</source>
        <translation>Rang</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Score</source>
        <translation>Bewertung</translation>
    </message>
    <message>
        <source>Scrap</source>
        <translation>Suchbegriff</translation>
    </message>
    <message>
        <source>Seed lot</source>
        <translation>Saatgutpartie</translation>
    </message>
    <message>
        <source>Seed parent × pollen parent, with their own parents where known.</source>
        <translation>Samenelter × Pollenelter, mit deren eigenen Eltern, soweit bekannt.</translation>
    </message>
    <message>
        <source>Seeds</source>
        <translation>Samen</translation>
    </message>
    <message>
        <source>Sound seeds</source>
        <translation>Gut ausgebildete Samen</translation>
    </message>
    <message>
        <source>Sprouted</source>
        <translation>Gekeimt</translation>
    </message>
    <message>
        <source>Standpoint</source>
        <translation>Standpunkt</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>Status</translation>
    </message>
    <message>
        <source>Styles and map</source>
        <translation>Stile und Karte</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>Take back a note</source>
        <translation>Notiz zurücknehmen</translation>
    </message>
    <message>
        <source>Takes back the last entry that was noted in the book, or the one that is named, if nobody changed it since and nothing refers to it. Run again, it takes back the one before.</source>
        <translation>Nimmt den zuletzt im Buch notierten Eintrag zurück oder den genannten, sofern ihn seither niemand geändert hat und nichts auf ihn verweist. Ein erneuter Aufruf nimmt den Eintrag davor zurück.</translation>
    </message>
    <message>
        <source>The accession, where no single tree was looked at.</source>
        <translation>Die Akzession, wenn kein einzelner Baum betrachtet wurde.</translation>
    </message>
    <message>
        <source>The code of the cross.</source>
        <translation>Das Kürzel der Kreuzung.</translation>
    </message>
    <message>
        <source>The code on the bag of seed.</source>
        <translation>Das Kürzel auf dem Samenbeutel.</translation>
    </message>
    <message>
        <source>The code on the vial.</source>
        <translation>Das Kürzel auf dem Röhrchen.</translation>
    </message>
    <message>
        <source>The day on which it was seen or done; the as-of day where it is not given.</source>
        <translation>Der Tag, an dem es beobachtet oder getan wurde; ohne Angabe der Stand.</translation>
    </message>
    <message>
        <source>The first day in the cold.</source>
        <translation>Der erste Tag in der Kälte.</translation>
    </message>
    <message>
        <source>The growth stage on the BBCH scale.</source>
        <translation>Das Entwicklungsstadium nach der BBCH-Skala.</translation>
    </message>
    <message>
        <source>The label on the tree&apos;s tag.</source>
        <translation>Die Bezeichnung auf dem Etikett des Baums.</translation>
    </message>
    <message>
        <source>The number of flowers worked.</source>
        <translation>Die Zahl der bestäubten Blüten.</translation>
    </message>
    <message>
        <source>The number of fruits picked.</source>
        <translation>Die Zahl der gepflückten Früchte.</translation>
    </message>
    <message>
        <source>The number of grains counted.</source>
        <translation>Die Zahl der ausgezählten Pollenkörner.</translation>
    </message>
    <message>
        <source>The number of seeds that have sprouted so far, all in all.</source>
        <translation>Die Zahl der bisher insgesamt gekeimten Samen.</translation>
    </message>
    <message>
        <source>The number of seeds.</source>
        <translation>Die Zahl der Samen.</translation>
    </message>
    <message>
        <source>The part of the flowers that have opened.</source>
        <translation>Der Anteil der Blüten, die sich geöffnet haben.</translation>
    </message>
    <message>
        <source>The part of the orchard.</source>
        <translation>Der Teil des Obstgartens.</translation>
    </message>
    <message>
        <source>The place in the row.</source>
        <translation>Der Platz in der Reihe.</translation>
    </message>
    <message>
        <source>The row within the block.</source>
        <translation>Die Reihe im Quartier.</translation>
    </message>
    <message>
        <source>The score, in the trait&apos;s own unit.</source>
        <translation>Der Wert, in der Einheit des Merkmals.</translation>
    </message>
    <message>
        <source>The tags whose fruit the seed came from, parted by blanks.</source>
        <translation>Die Etiketten, von deren Früchten die Samen stammen, durch Leerzeichen getrennt.</translation>
    </message>
    <message>
        <source>The temperature of the cold.</source>
        <translation>Die Temperatur der Kälte.</translation>
    </message>
    <message>
        <source>The trees that a scrap of a record leads to, best first.</source>
        <translation>Die Bäume, zu denen ein Bruchstück der Daten führt, die besten zuerst.</translation>
    </message>
    <message>
        <source>Trait</source>
        <translation>Merkmal</translation>
    </message>
    <message>
        <source>Treatment</source>
        <translation>Behandlung</translation>
    </message>
    <message>
        <source>Trees</source>
        <translation>Bäume</translation>
    </message>
    <message>
        <source>Trees found</source>
        <translation>Gefundene Bäume</translation>
    </message>
    <message>
        <source>What is known of the tree; left out, the trees nearest to at are told.</source>
        <translation>Was vom Baum bekannt ist; ohne Angabe werden die Bäume genannt, die dem Standpunkt am nächsten sind.</translation>
    </message>
    <message>
        <source>What of its record the scrap fits, and how many letters are off.</source>
        <translation>Zu welchen seiner Daten der Suchbegriff passt und wie viele Buchstaben abweichen.</translation>
    </message>
    <message>
        <source>What stands on the tag at the branch.</source>
        <translation>Was auf dem Etikett am Ast steht.</translation>
    </message>
    <message>
        <source>What stands on the tree&apos;s tag.</source>
        <translation>Was auf dem Etikett des Baums steht.</translation>
    </message>
    <message>
        <source>What the seed lies in.</source>
        <translation>Worin die Samen liegen.</translation>
    </message>
    <message>
        <source>What the tree is.</source>
        <translation>Was der Baum ist.</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>What was done to the seed.</source>
        <translation>Was mit den Samen gemacht wurde.</translation>
    </message>
    <message>
        <source>What was scored, always in the same word.</source>
        <translation>Was bewertet wurde, immer mit demselben Wort.</translation>
    </message>
    <message>
        <source>What was written for the desktop.</source>
        <translation>Was für die GIS-Oberfläche geschrieben wurde.</translation>
    </message>
    <message>
        <source>Whether it stands, or when it was removed and why.</source>
        <translation>Ob er steht oder wann und warum er entfernt wurde.</translation>
    </message>
    <message>
        <source>Which one to take back, by the name told when it was noted, such as bloom_note/412; the last where none is named.</source>
        <translation>Welcher Eintrag zurückzunehmen ist, mit dem beim Notieren genannten Namen, etwa bloom_note/412; ohne Angabe der letzte.</translation>
    </message>
    <message>
        <source>Which round on the same flowers it was.</source>
        <translation>Der wievielte Durchgang an denselben Blüten es war.</translation>
    </message>
    <message>
        <source>Who looked.</source>
        <translation>Wer beobachtet hat.</translation>
    </message>
    <message>
        <source>Writes down a bag of seed of one cross that is treated alike, on the day of its washing. Held against the book first: its tags must be of its cross, and it holds no more seed than their fruit.</source>
        <translation>Notiert einen Beutel einheitlich behandelter Samen einer Kreuzung am Tag des Auswaschens. Wird zuerst am Buch geprüft: Die Etiketten müssen zur Kreuzung gehören, und der Beutel enthält nicht mehr Samen als deren Früchte.</translation>
    </message>
    <message>
        <source>Writes down a germination test of stored pollen: what the lot can still do is then judged by it instead of by the handbook.</source>
        <translation>Notiert einen Keimtest von gelagertem Pollen: Was die Partie noch leisten kann, wird danach daran gemessen statt am Handbuch.</translation>
    </message>
    <message>
        <source>Writes down a score given to a tree for one trait: taste, size, scab. Held against the book first: the tree must be known and standing on that day.</source>
        <translation>Notiert die Bonitur eines Baums für ein Merkmal: Geschmack, Größe, Schorf. Wird zuerst am Buch geprüft: Der Baum muss bekannt sein und an diesem Tag stehen.</translation>
    </message>
    <message>
        <source>Writes down how many seeds of a lot have sprouted so far, those taken out included. Held against the book first: the count of a lot only grows, and never beyond its seeds.</source>
        <translation>Notiert, wie viele Samen einer Partie bisher gekeimt sind, einschließlich der entnommenen. Wird zuerst am Buch geprüft: Die Zahl einer Partie steigt nur und nie über ihre Samenzahl hinaus.</translation>
    </message>
    <message>
        <source>Writes down seeds that left a lot: potted, given away, rotten. Held against the book first: no more can leave a lot than it had.</source>
        <translation>Notiert Samen, die eine Partie verlassen haben: getopft, abgegeben, verfault. Wird zuerst am Buch geprüft: Einer Partie kann nicht mehr entnommen werden, als sie hatte.</translation>
    </message>
    <message>
        <source>Writes down the flowers worked on a branch, under the tag that is hung on it. Held against the book first: the tree must be of the cross&apos;s seed parent, the tag new, the pollen in hand by that day.</source>
        <translation>Notiert die an einem Ast bestäubten Blüten unter dem Etikett, das daran hängt. Wird zuerst am Buch geprüft: Der Baum muss vom Samenelter der Kreuzung sein, das Etikett neu und der Pollen an diesem Tag vorhanden.</translation>
    </message>
    <message>
        <source>Writes down the fruit picked from a tagged branch and, once it is cut, the seed in it. Held against the book first: fruit comes after its pollination, is no more than the flowers worked, and its seed must have had time to ripen.</source>
        <translation>Notiert die von einem etikettierten Ast gepflückten Früchte und, sobald sie aufgeschnitten sind, die Samen darin. Wird zuerst am Buch geprüft: Früchte kommen nach ihrer Bestäubung, sind nicht mehr als die bestäubten Blüten, und ihre Samen müssen Zeit zum Reifen gehabt haben.</translation>
    </message>
    <message>
        <source>Writes down the stage that a tree, or an accession as a whole, was seen in. The note is held against the book first: an unknown tree, a day to come, a stage that goes back.</source>
        <translation>Notiert das Stadium, in dem ein Baum oder eine Akzession als Ganzes beobachtet wurde. Die Notiz wird zuerst am Buch geprüft: ein unbekannter Baum, ein künftiger Tag, ein Stadium, das zurückgeht.</translation>
    </message>
    <message>
        <source>Writes into the book how it looks in a desktop: symbols, labels, forms and pick lists for every layer, and a map of them all, stored under the name Season map. What somebody changed since, and styles of one&apos;s own, are left alone.</source>
        <translation>Schreibt ins Buch, wie es im Desktop-GIS aussieht: Symbole, Beschriftungen, Formulare und Auswahllisten für jeden Layer sowie eine Karte von allen, gespeichert unter dem Namen Season map. Was seither jemand geändert hat, und eigene Stile bleiben unangetastet.</translation>
    </message>
    <message>
        <source>Written, as it was, or yours: changed by somebody and left alone.</source>
        <translation>Geschrieben, unverändert oder eigene Fassung: von jemandem geändert und belassen.</translation>
    </message>
    <message>
        <source>averaged</source>
        <translation>gemittelt</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>eintüten</translation>
    </message>
    <message>
        <source>chill then heat</source>
        <translation>Kälte, dann Wärme</translation>
    </message>
    <message>
        <source>cut branch</source>
        <translation>Treibzweig schneiden</translation>
    </message>
    <message>
        <source>deep freezer</source>
        <translation>Ultratiefkühler</translation>
    </message>
    <message>
        <source>degree-days</source>
        <translation>Gradtage</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>fraglich</translation>
    </message>
    <message>
        <source>fair</source>
        <translation>brauchbar</translation>
    </message>
    <message>
        <source>forced branch</source>
        <translation>Treibzweig</translation>
    </message>
    <message>
        <source>freezer</source>
        <translation>Gefrierschrank</translation>
    </message>
    <message>
        <source>gather</source>
        <translation>sammeln</translation>
    </message>
    <message>
        <source>good</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>impossible</source>
        <translation>unmöglich</translation>
    </message>
    <message>
        <source>kept from last year</source>
        <translation>vom Vorjahr gelagert</translation>
    </message>
    <message>
        <source>kept this spring</source>
        <translation>dieses Frühjahr gelagert</translation>
    </message>
    <message>
        <source>mean day</source>
        <translation>mittlerer Tag</translation>
    </message>
    <message>
        <source>mid-parent</source>
        <translation>Elternmittel</translation>
    </message>
    <message>
        <source>one parent</source>
        <translation>ein Elter</translation>
    </message>
    <message>
        <source>orchard mean</source>
        <translation>Mittel des Obstgartens</translation>
    </message>
    <message>
        <source>own notes</source>
        <translation>eigene Notizen</translation>
    </message>
    <message>
        <source>pollinate</source>
        <translation>bestäuben</translation>
    </message>
    <message>
        <source>refrigerator</source>
        <translation>Kühlschrank</translation>
    </message>
    <message>
        <source>room</source>
        <translation>Raumtemperatur</translation>
    </message>
    <message>
        <source>same day</source>
        <translation>am selben Tag</translation>
    </message>
    <message>
        <source>test lot</source>
        <translation>Pollenpartie prüfen</translation>
    </message>
    <message>
        <source>unbag</source>
        <translation>Tüten abnehmen</translation>
    </message>
    <message>
        <source>unlikely</source>
        <translation>unwahrscheinlich</translation>
    </message>
    <message>
        <source>Tree row</source>
        <translation>Reihe</translation>
    </message>
    <message>
        <source>east</source>
        <translation>östlich</translation>
    </message>
    <message>
        <source>north</source>
        <translation>nördlich</translation>
    </message>
    <message>
        <source>north-east</source>
        <translation>nordöstlich</translation>
    </message>
    <message>
        <source>north-west</source>
        <translation>nordwestlich</translation>
    </message>
    <message>
        <source>south</source>
        <translation>südlich</translation>
    </message>
    <message>
        <source>south-east</source>
        <translation>südöstlich</translation>
    </message>
    <message>
        <source>south-west</source>
        <translation>südwestlich</translation>
    </message>
    <message>
        <source>west</source>
        <translation>westlich</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>The layer whose style it is, by its title, or the name of the map.</source>
        <translation>Der Layer, dem der Stil gehört, mit seinem Titel, oder der Name der Karte.</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>degrees C</source>
        <translation>Grad C</translation>
    </message>
    <message>
        <source>flowers</source>
        <translation>Blüten</translation>
    </message>
    <message>
        <source>mg</source>
        <translation>mg</translation>
    </message>
    <message>
        <source>points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>seeds</source>
        <translation>Samen</translation>
    </message>
    <message>
        <source>seeds squared</source>
        <translation>Samen zum Quadrat</translation>
    </message>
    <message>
        <source>share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>1 for the first tree of the walk.</source>
        <translation>1 für den ersten Baum des Rundgangs.</translation>
    </message>
    <message>
        <source>1 for the likeliest.</source>
        <translation>1 für den wahrscheinlichsten.</translation>
    </message>
    <message>
        <source>1 for the question that would settle most.</source>
        <translation>1 für die Frage, die am meisten klären würde.</translation>
    </message>
    <message>
        <source>1 for the way to the first tree.</source>
        <translation>1 für den Weg zum ersten Baum.</translation>
    </message>
    <message>
        <source>A stretch of a row longer than this without a tree, not even a removed one, can be walked through; 0 where no row can.</source>
        <translation>Ein Stück einer Reihe, das länger als diese Angabe ohne Baum ist, auch ohne einen entfernten, lässt sich durchqueren; 0, wo keine Reihe durchquert werden kann.</translation>
    </message>
    <message>
        <source>A tree&apos;s label, or the end.</source>
        <translation>Bezeichnung eines Baums oder das Ende.</translation>
    </message>
    <message>
        <source>A tree&apos;s label, or the start.</source>
        <translation>Bezeichnung eines Baums oder der Start.</translation>
    </message>
    <message>
        <source>Accuracy of the receiver</source>
        <translation>Genauigkeit des Empfängers</translation>
    </message>
    <message>
        <source>Add the block</source>
        <translation>Quartier anlegen</translation>
    </message>
    <message>
        <source>Alley</source>
        <translation>Fahrgasse</translation>
    </message>
    <message>
        <source>Alternate direction</source>
        <translation>Richtung abwechseln</translation>
    </message>
    <message>
        <source>Answers</source>
        <translation>Antworten</translation>
    </message>
    <message>
        <source>Back to the start</source>
        <translation>Zurück zum Start</translation>
    </message>
    <message>
        <source>Column of the row</source>
        <translation>Spalte der Reihe</translation>
    </message>
    <message>
        <source>Coordinate system of the points</source>
        <translation>Koordinatensystem der Punkte</translation>
    </message>
    <message>
        <source>Decided</source>
        <translation>Entschieden</translation>
    </message>
    <message>
        <source>Direction of the numbering, clockwise from true north.</source>
        <translation>Richtung der Zählung, im Uhrzeigersinn ab geografisch Nord.</translation>
    </message>
    <message>
        <source>Distance from the row</source>
        <translation>Abstand von der Reihe</translation>
    </message>
    <message>
        <source>Distance from the trunk</source>
        <translation>Abstand vom Stamm</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>Every numbered place in the rows, and what stands there.</source>
        <translation>Jede nummerierte Position in den Reihen, und was dort steht.</translation>
    </message>
    <message>
        <source>Finds rows and positions of trees from their places on the map, however roughly measured: the trees of the book that have no row or position yet, or the points of a layer. Where the block has rows in the book, the trees are held against them; otherwise the rows are made out from the trees; spacing, row distance and bearing, where given, need only be rough. Gaps stay gaps. Each decision tells its distance and how sure it is; doubtful trees are listed and left open, never forced. Trees that have a number are never changed.</source>
        <translation>Findet Reihe und Position von Bäumen anhand ihrer Lage auf der Karte, wie grob auch immer gemessen: für die Bäume des Buchs, die noch keine Reihe oder Position haben, oder für die Punkte einer Ebene. Hat das Quartier im Buch Reihen, werden die Bäume mit diesen verglichen; sonst werden die Reihen aus den Bäumen erschlossen; Pflanzabstand, Reihenabstand und Richtung, soweit angegeben, müssen nur ungefähr stimmen. Lücken bleiben Lücken. Zu jeder Entscheidung werden Abstand und Sicherheit genannt; zweifelhafte Bäume werden aufgeführt und offen gelassen, nie erzwungen. Bäume, die eine Nummer haben, werden nie geändert.</translation>
    </message>
    <message>
        <source>First position</source>
        <translation>Erste Position</translation>
    </message>
    <message>
        <source>From one position to the next, over the ground.</source>
        <translation>Von einer Position zur nächsten, waagerecht gemessen.</translation>
    </message>
    <message>
        <source>From row to row, over the ground.</source>
        <translation>Von Reihe zu Reihe, waagerecht gemessen.</translation>
    </message>
    <message>
        <source>From the last</source>
        <translation>Vom letzten</translation>
    </message>
    <message>
        <source>From the receiver&apos;s place.</source>
        <translation>Vom Ort des Empfängers.</translation>
    </message>
    <message>
        <source>From there, clockwise from true north.</source>
        <translation>Von dort aus, im Uhrzeigersinn ab geografisch Nord.</translation>
    </message>
    <message>
        <source>Gap to walk through</source>
        <translation>Lücke zum Durchgehen</translation>
    </message>
    <message>
        <source>Headland</source>
        <translation>Vorgewende</translation>
    </message>
    <message>
        <source>How far along the row it lies from the position, positive in the direction of counting.</source>
        <translation>Wie weit längs der Reihe er von der Position entfernt liegt, positiv in Zählrichtung.</translation>
    </message>
    <message>
        <source>How far from the trunk you stand or hold the receiver, as such a radius.</source>
        <translation>In welchem Abstand vom Stamm man steht oder den Empfänger hält, als ein ebensolcher Radius.</translation>
    </message>
    <message>
        <source>How far from the trunks one walks; less where rows stand closer.</source>
        <translation>In welchem Abstand von den Stämmen gegangen wird; weniger, wo Reihen enger stehen.</translation>
    </message>
    <message>
        <source>How far it is.</source>
        <translation>Wie weit er entfernt ist.</translation>
    </message>
    <message>
        <source>How far the point lies from the row&apos;s line.</source>
        <translation>Wie weit der Punkt von der Linie der Reihe entfernt liegt.</translation>
    </message>
    <message>
        <source>How far the tree&apos;s point on the map lies from the position.</source>
        <translation>Wie weit der Punkt des Baums auf der Karte von der Position entfernt liegt.</translation>
    </message>
    <message>
        <source>How far the walk is up to here.</source>
        <translation>Wie lang der Weg bis hierher ist.</translation>
    </message>
    <message>
        <source>How far to walk from the stop before, or the start.</source>
        <translation>Wie weit es vom vorigen Halt oder vom Start zu gehen ist.</translation>
    </message>
    <message>
        <source>How likely it is that one stands there.</source>
        <translation>Wie wahrscheinlich es ist, dass man dort steht.</translation>
    </message>
    <message>
        <source>How likely the answer is yes.</source>
        <translation>Wie wahrscheinlich die Antwort Ja ist.</translation>
    </message>
    <message>
        <source>How likely you stand at a gap, against a standing tree at the same distance.</source>
        <translation>Wie wahrscheinlich man an einer Lücke steht, verglichen mit einem stehenden Baum in gleichem Abstand.</translation>
    </message>
    <message>
        <source>How many positions it has.</source>
        <translation>Wie viele Positionen sie hat.</translation>
    </message>
    <message>
        <source>How many positions; as many as there is room for where not given.</source>
        <translation>Wie viele Positionen; ohne Angabe so viele, wie Platz haben.</translation>
    </message>
    <message>
        <source>How many rows to lay beside one another, the given line being the first.</source>
        <translation>Wie viele Reihen nebeneinander anzulegen sind; die angegebene Linie ist die erste.</translation>
    </message>
    <message>
        <source>How much the answer tells, 0 to 1.</source>
        <translation>Wie viel die Antwort aussagt, 0 bis 1.</translation>
    </message>
    <message>
        <source>How sure a number must be; below it the tree is left open.</source>
        <translation>Wie sicher eine Nummer sein muss; darunter bleibt der Baum offen.</translation>
    </message>
    <message>
        <source>If no</source>
        <translation>Wenn nein</translation>
    </message>
    <message>
        <source>If yes</source>
        <translation>Wenn ja</translation>
    </message>
    <message>
        <source>Its number in the row.</source>
        <translation>Seine Nummer in der Reihe.</translation>
    </message>
    <message>
        <source>Keep to the alleys</source>
        <translation>In den Fahrgassen bleiben</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Schlüssel</translation>
    </message>
    <message>
        <source>Labels of the trees to visit, with commas between; all that fit the rest where left out.</source>
        <translation>Bezeichnungen der zu besuchenden Bäume, durch Kommas getrennt; ohne Angabe alle, auf die das Übrige zutrifft.</translation>
    </message>
    <message>
        <source>Last position</source>
        <translation>Letzte Position</translation>
    </message>
    <message>
        <source>Latitude and longitude of where you stand, as in 48.1340,9.3010.</source>
        <translation>Breite und Länge des Standorts, wie in 48.1340,9.3010.</translation>
    </message>
    <message>
        <source>Latitude of the first</source>
        <translation>Breite der ersten</translation>
    </message>
    <message>
        <source>Lay rows</source>
        <translation>Reihen anlegen</translation>
    </message>
    <message>
        <source>Layer</source>
        <translation>Ebene</translation>
    </message>
    <message>
        <source>Layer file</source>
        <translation>Ebenendatei</translation>
    </message>
    <message>
        <source>Lays out rows with numbered positions from surveyed points or drawn lines, or a whole block from one base line, and adds them to the book. The spacing is true on the ground to a centimetre, whatever the coordinate system. Rows that the book has are never changed. The positions of all rows, vacant, taken or reserved, are written as a layer. A layer file may hold a line a row, or two or more points a row.</source>
        <translation>Legt Reihen mit nummerierten Positionen aus eingemessenen Punkten oder gezeichneten Linien an, oder ein ganzes Quartier aus einer einzigen Grundlinie, und nimmt sie in das Buch auf. Der Pflanzabstand stimmt im Gelände auf einen Zentimeter, unabhängig vom Koordinatensystem. Reihen, die das Buch schon hat, werden nie geändert. Die Positionen aller Reihen, ob frei, besetzt oder vorgemerkt, werden als Ebene geschrieben. Eine Ebenendatei kann je Reihe eine Linie oder zwei und mehr Punkte enthalten.</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Longitude of the first</source>
        <translation>Länge der ersten</translation>
    </message>
    <message>
        <source>Number the trees</source>
        <translation>Bäume nummerieren</translation>
    </message>
    <message>
        <source>Number trees</source>
        <translation>Bäume nummerieren</translation>
    </message>
    <message>
        <source>Of the points or the file, as in EPSG:4326; the file&apos;s own, or the book&apos;s, where not given.</source>
        <translation>Der Punkte oder der Datei, wie in EPSG:4326; ohne Angabe das der Datei selbst oder das des Buchs.</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>Off its position</source>
        <translation>Abweichung von der Position</translation>
    </message>
    <message>
        <source>Off its row</source>
        <translation>Abweichung von der Reihe</translation>
    </message>
    <message>
        <source>On which side of the line the further rows lie, seen in its direction.</source>
        <translation>Auf welcher Seite der Linie die weiteren Reihen liegen, in Richtung der Linie gesehen.</translation>
    </message>
    <message>
        <source>Only trees at which the season&apos;s plan has something to do on this day.</source>
        <translation>Nur Bäume, an denen nach dem Plan der Saison an diesem Tag etwas zu tun ist.</translation>
    </message>
    <message>
        <source>Only trees at which the season&apos;s plan has something to do that is so urgent.</source>
        <translation>Nur Bäume, an denen nach dem Plan der Saison etwas so Dringendes zu tun ist.</translation>
    </message>
    <message>
        <source>Only trees of this accession.</source>
        <translation>Nur Bäume dieser Akzession.</translation>
    </message>
    <message>
        <source>Only trees of this block.</source>
        <translation>Nur Bäume dieses Quartiers.</translation>
    </message>
    <message>
        <source>Only trees that serve this purpose.</source>
        <translation>Nur Bäume, die diesem Zweck dienen.</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Reihenfolge</translation>
    </message>
    <message>
        <source>Order of a walk</source>
        <translation>Reihenfolge eines Rundgangs</translation>
    </message>
    <message>
        <source>Over the ground, from the first position to the last.</source>
        <translation>Waagerecht gemessen, von der ersten Position bis zur letzten.</translation>
    </message>
    <message>
        <source>Points of the row</source>
        <translation>Punkte der Reihe</translation>
    </message>
    <message>
        <source>Positions</source>
        <translation>Positionen</translation>
    </message>
    <message>
        <source>Positions a row</source>
        <translation>Positionen je Reihe</translation>
    </message>
    <message>
        <source>Probability</source>
        <translation>Wahrscheinlichkeit</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation>Zweck</translation>
    </message>
    <message>
        <source>Puts trees into an order to visit them in so that the walk is short: along the alleys, round the ends of rows only, each tree worked from whichever side is better. For up to twelve trees no order is shorter; for hundreds it is close to that. Returns the trees in order and the way as lines. Nothing is written.</source>
        <translation>Bringt Bäume in eine Reihenfolge, in der sie sich auf kurzem Weg besuchen lassen: durch die Fahrgassen, nur um die Enden der Reihen herum, jeder Baum von der günstigeren Seite aus bearbeitet. Für bis zu zwölf Bäume ist keine Reihenfolge kürzer; für Hunderte kommt sie dem nahe. Liefert die Bäume in dieser Reihenfolge und den Weg als Linien. Geschrieben wird nichts.</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Frage</translation>
    </message>
    <message>
        <source>Questions that settle it</source>
        <translation>Fragen, die es klären</translation>
    </message>
    <message>
        <source>Roughly, the direction in which positions are counted, clockwise from north; the rows&apos; northern one where not given.</source>
        <translation>Ungefähr die Richtung, in der die Positionen gezählt werden, im Uhrzeigersinn ab Nord; ohne Angabe die nördliche der Reihen.</translation>
    </message>
    <message>
        <source>Row and position of each tree as found from its place on the map, and how sure that is.</source>
        <translation>Reihe und Position jedes Baums, wie sie aus seiner Lage auf der Karte hervorgehen, und wie sicher das ist.</translation>
    </message>
    <message>
        <source>Row distance</source>
        <translation>Reihenabstand</translation>
    </message>
    <message>
        <source>Row positions</source>
        <translation>Positionen der Reihen</translation>
    </message>
    <message>
        <source>Rows</source>
        <translation>Reihen</translation>
    </message>
    <message>
        <source>Rows begin</source>
        <translation>Beginn der Reihen</translation>
    </message>
    <message>
        <source>Rows count to</source>
        <translation>Reihen zählen nach</translation>
    </message>
    <message>
        <source>Rows laid</source>
        <translation>Angelegte Reihen</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Spacing</source>
        <translation>Pflanzabstand</translation>
    </message>
    <message>
        <source>Standpoint in the book&apos;s grid</source>
        <translation>Standort im Koordinatensystem des Buchs</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Startpunkt</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Sureness</source>
        <translation>Sicherheit</translation>
    </message>
    <message>
        <source>Tasks of the day</source>
        <translation>Aufgaben des Tages</translation>
    </message>
    <message>
        <source>Tells at which tree you stand, from a receiver&apos;s place and its accuracy: every candidate with its probability, and the question that would settle it best, such as whether a tree stands at the next place of the row. Answers are taken in and weighed. Nothing is written.</source>
        <translation>Gibt an, an welchem Baum man steht, anhand des Orts eines Empfängers und dessen Genauigkeit: jeden in Frage kommenden mit seiner Wahrscheinlichkeit, dazu die Frage, die es am besten klären würde, etwa ob am nächsten Platz der Reihe ein Baum steht. Antworten werden aufgenommen und gewichtet. Geschrieben wird nichts.</translation>
    </message>
    <message>
        <source>That row and position are right.</source>
        <translation>Dass Reihe und Position stimmen.</translation>
    </message>
    <message>
        <source>The alley in which one stands.</source>
        <translation>Die Fahrgasse, in der man steht.</translation>
    </message>
    <message>
        <source>The block of the rows.</source>
        <translation>Das Quartier der Reihen.</translation>
    </message>
    <message>
        <source>The block that the row stands in.</source>
        <translation>Das Quartier, in dem die Reihe steht.</translation>
    </message>
    <message>
        <source>The block that was numbered.</source>
        <translation>Das Quartier, das nummeriert wurde.</translation>
    </message>
    <message>
        <source>The label of the tree that stands or is to stand there.</source>
        <translation>Die Bezeichnung des Baums, der dort steht oder stehen soll.</translation>
    </message>
    <message>
        <source>The layer to take, where the file has several.</source>
        <translation>Die zu verwendende Ebene, wenn die Datei mehrere hat.</translation>
    </message>
    <message>
        <source>The layer&apos;s column with the rows&apos; names, where it is not recognised.</source>
        <translation>Die Spalte der Ebene mit den Namen der Reihen, wenn sie nicht erkannt wird.</translation>
    </message>
    <message>
        <source>The likeliest after no.</source>
        <translation>Der wahrscheinlichste nach Nein.</translation>
    </message>
    <message>
        <source>The likeliest after yes.</source>
        <translation>Der wahrscheinlichste nach Ja.</translation>
    </message>
    <message>
        <source>The likeliest position in the row.</source>
        <translation>Die wahrscheinlichste Position in der Reihe.</translation>
    </message>
    <message>
        <source>The likeliest row, also where it is left open.</source>
        <translation>Die wahrscheinlichste Reihe, auch wo sie offen gelassen wird.</translation>
    </message>
    <message>
        <source>The name of the row, or of the first one, from which the others count on.</source>
        <translation>Der Name der Reihe oder der ersten, von der aus die anderen weiterzählen.</translation>
    </message>
    <message>
        <source>The number of its first position.</source>
        <translation>Die Nummer ihrer ersten Position.</translation>
    </message>
    <message>
        <source>The number of its last position.</source>
        <translation>Die Nummer ihrer letzten Position.</translation>
    </message>
    <message>
        <source>The number of the first position.</source>
        <translation>Die Nummer der ersten Position.</translation>
    </message>
    <message>
        <source>The question&apos;s name for the parameter answers.</source>
        <translation>Der Name der Frage für den Parameter Antworten.</translation>
    </message>
    <message>
        <source>The radius around the place that holds the true one 68 times in 100, as receivers and telephones tell it.</source>
        <translation>Der Radius um den Ort, in dem der wahre Ort in 68 von 100 Fällen liegt, wie ihn Empfänger und Telefone angeben.</translation>
    </message>
    <message>
        <source>The row&apos;s name within its block.</source>
        <translation>Der Name der Reihe innerhalb ihres Quartiers.</translation>
    </message>
    <message>
        <source>The rows that were laid out, each with its numbered positions.</source>
        <translation>Die angelegten Reihen, jede mit ihren nummerierten Positionen.</translation>
    </message>
    <message>
        <source>The same in the book&apos;s own coordinates, x and y, as in 522341.5,5331497.</source>
        <translation>Dasselbe in den Koordinaten des Buchs, x und y, wie in 522341.5,5331497.</translation>
    </message>
    <message>
        <source>The side of the row from which the tree is worked.</source>
        <translation>Die Seite der Reihe, von der aus der Baum bearbeitet wird.</translation>
    </message>
    <message>
        <source>The tree&apos;s label, or the point&apos;s name in its layer.</source>
        <translation>Die Bezeichnung des Baums oder der Name des Punkts in seiner Ebene.</translation>
    </message>
    <message>
        <source>The trees in the order in which to visit them.</source>
        <translation>Die Bäume in der Reihenfolge, in der sie zu besuchen sind.</translation>
    </message>
    <message>
        <source>The way from each stop to the next, along the alleys.</source>
        <translation>Der Weg von jedem Halt zum nächsten, durch die Fahrgassen.</translation>
    </message>
    <message>
        <source>To which side the rows count on, seen in the direction of the positions.</source>
        <translation>Nach welcher Seite die Reihen weiterzählen, in Richtung der Positionen gesehen.</translation>
    </message>
    <message>
        <source>Tree numbers</source>
        <translation>Baumnummern</translation>
    </message>
    <message>
        <source>Trees near by</source>
        <translation>Bäume in der Nähe</translation>
    </message>
    <message>
        <source>Two or more, east (longitude) first, as in &quot;522400 5331200, 522440 5331210&quot;, or well-known text; in the direction of the numbering.</source>
        <translation>Zwei oder mehr, Ost (Länge) zuerst, wie in &quot;522400 5331200, 522440 5331210&quot;, oder Well-known Text; in Richtung der Zählung.</translation>
    </message>
    <message>
        <source>Walk</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>Walked</source>
        <translation>Zurückgelegt</translation>
    </message>
    <message>
        <source>Way of the walk</source>
        <translation>Weg des Rundgangs</translation>
    </message>
    <message>
        <source>Weight of gaps</source>
        <translation>Gewicht von Lücken</translation>
    </message>
    <message>
        <source>What makes it doubtful; empty where it is decided.</source>
        <translation>Was ihn zweifelhaft macht; leer, wo entschieden ist.</translation>
    </message>
    <message>
        <source>What stands on the tree&apos;s tag; unknown at a place without a record.</source>
        <translation>Was auf dem Etikett des Baums steht; unbekannt an einem Platz ohne Eintrag.</translation>
    </message>
    <message>
        <source>What stays free at both ends of the line: the first position comes after it.</source>
        <translation>Was an beiden Enden der Linie frei bleibt: die erste Position kommt danach.</translation>
    </message>
    <message>
        <source>What the plan asks for there, where trees were chosen by their tasks.</source>
        <translation>Was der Plan dort verlangt, wenn Bäume nach ihren Aufgaben gewählt wurden.</translation>
    </message>
    <message>
        <source>What to look for to know which tree it is, the best question first.</source>
        <translation>Worauf zu achten ist, um den Baum zu erkennen, die beste Frage zuerst.</translation>
    </message>
    <message>
        <source>What to look for; answered by yes or no.</source>
        <translation>Worauf zu achten ist; mit Ja oder Nein zu beantworten.</translation>
    </message>
    <message>
        <source>What you saw: keys of questions with yes or no, as in tree-ahead=no; row-left=yes.</source>
        <translation>Was zu sehen war: Schlüssel von Fragen mit yes oder no, wie in tree-ahead=no; row-left=yes.</translation>
    </message>
    <message>
        <source>Where one may stand, the likeliest first.</source>
        <translation>Wo man stehen kann, das Wahrscheinlichste zuerst.</translation>
    </message>
    <message>
        <source>Where the counting of a row begins.</source>
        <translation>Wo die Zählung einer Reihe beginnt.</translation>
    </message>
    <message>
        <source>Where the walk begins: a gate as latitude and longitude, as in 48.1340,9.3010, or a tree&apos;s label; wherever is best where left out.</source>
        <translation>Wo der Rundgang beginnt: ein Tor als Breite und Länge, wie in 48.1340,9.3010, oder die Bezeichnung eines Baums; ohne Angabe, wo es am günstigsten ist.</translation>
    </message>
    <message>
        <source>Where the walk ends, written like the start; at its last tree where left out.</source>
        <translation>Wo der Rundgang endet, geschrieben wie der Start; ohne Angabe an seinem letzten Baum.</translation>
    </message>
    <message>
        <source>Whether a block that the book does not have is added, as a rectangle around its rows.</source>
        <translation>Ob ein Quartier, das das Buch nicht hat, angelegt wird, als Rechteck um seine Reihen.</translation>
    </message>
    <message>
        <source>Whether a tree stands there, or when and why it was removed.</source>
        <translation>Ob dort ein Baum steht, oder wann und warum er entfernt wurde.</translation>
    </message>
    <message>
        <source>Whether every second row is numbered from the other end.</source>
        <translation>Ob jede zweite Reihe vom anderen Ende aus nummeriert wird.</translation>
    </message>
    <message>
        <source>Whether rows bar the way; no for trees without wires or hedges between them.</source>
        <translation>Ob Reihen den Weg versperren; Nein für Bäume ohne Drähte oder Hecken dazwischen.</translation>
    </message>
    <message>
        <source>Whether that is sure enough to be numbered.</source>
        <translation>Ob das für eine Nummer sicher genug ist.</translation>
    </message>
    <message>
        <source>Whether the book&apos;s trees get block, row and position where they are sure enough; otherwise they are only shown.</source>
        <translation>Ob die Bäume des Buchs Quartier, Reihe und Position erhalten, wo diese sicher genug sind; sonst werden sie nur angezeigt.</translation>
    </message>
    <message>
        <source>Whether the walk ends where it began.</source>
        <translation>Ob der Rundgang dort endet, wo er begonnen hat.</translation>
    </message>
    <message>
        <source>Which tree is this?</source>
        <translation>Welcher Baum ist das?</translation>
    </message>
    <message>
        <source>Why open</source>
        <translation>Warum offen</translation>
    </message>
    <message>
        <source>Worth</source>
        <translation>Aussagewert</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>a seedling under test</source>
        <translation>ein Sämling in Prüfung</translation>
    </message>
    <message>
        <source>any other tree</source>
        <translation>jeder andere Baum</translation>
    </message>
    <message>
        <source>at its own first tree</source>
        <translation>an ihrem eigenen ersten Baum</translation>
    </message>
    <message>
        <source>at the block&apos;s common edge, also where first trees are missing</source>
        <translation>am gemeinsamen Rand des Quartiers, auch wo erste Bäume fehlen</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>Grad</translation>
    </message>
    <message>
        <source>kept as a parent of crosses</source>
        <translation>als Elter von Kreuzungen gehalten</translation>
    </message>
    <message>
        <source>kept to pollinate its neighbours</source>
        <translation>zur Bestäubung der Nachbarn gehalten</translation>
    </message>
    <message>
        <source>later</source>
        <translation>später</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>of 1</source>
        <translation>von 1</translation>
    </message>
    <message>
        <source>of a tree&apos;s</source>
        <translation>von dem eines Baums</translation>
    </message>
    <message>
        <source>taken: a tree stands there; reserved: one is to be planted; vacant: none.</source>
        <translation>besetzt: ein Baum steht dort; vorgemerkt: einer soll gepflanzt werden; frei: keiner.</translation>
    </message>
    <message>
        <source>this week</source>
        <translation>diese Woche</translation>
    </message>
    <message>
        <source>to the left of the line</source>
        <translation>links der Linie</translation>
    </message>
    <message>
        <source>to the right of the line</source>
        <translation>rechts der Linie</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>too late</source>
        <translation>zu spät</translation>
    </message>
    <message>
        <source>A tree&apos;s accession, as the book writes it.</source>
        <translation>Die Akzession eines Baums, wie das Buch sie schreibt.</translation>
    </message>
    <message>
        <source>A tree&apos;s position in the row.</source>
        <translation>Der Platz eines Baums in der Reihe.</translation>
    </message>
    <message>
        <source>A tree&apos;s row within the block.</source>
        <translation>Die Reihe eines Baums im Quartier.</translation>
    </message>
    <message>
        <source>Accuracy</source>
        <translation>Genauigkeit</translation>
    </message>
    <message>
        <source>Add accessions</source>
        <translation>Akzessionen anlegen</translation>
    </message>
    <message>
        <source>Add rows and blocks</source>
        <translation>Reihen und Quartiere anlegen</translation>
    </message>
    <message>
        <source>Adopt a layer</source>
        <translation>Ebene übernehmen</translation>
    </message>
    <message>
        <source>Chill need</source>
        <translation>Kältebedarf</translation>
    </message>
    <message>
        <source>Elevation</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Exchange the coordinates</source>
        <translation>Koordinaten vertauschen</translation>
    </message>
    <message>
        <source>Feature</source>
        <translation>Objekt</translation>
    </message>
    <message>
        <source>Features</source>
        <translation>Objekte</translation>
    </message>
    <message>
        <source>Features that have a value.</source>
        <translation>Objekte, die einen Wert haben.</translation>
    </message>
    <message>
        <source>Fields</source>
        <translation>Felder</translation>
    </message>
    <message>
        <source>File of fields</source>
        <translation>Datei der Felder</translation>
    </message>
    <message>
        <source>Goes to</source>
        <translation>Kommt nach</translation>
    </message>
    <message>
        <source>Guessed by</source>
        <translation>Erkannt an</translation>
    </message>
    <message>
        <source>How that was found.</source>
        <translation>Woran das erkannt wurde.</translation>
    </message>
    <message>
        <source>Its label or name in the book.</source>
        <translation>Seine Bezeichnung oder sein Name im Buch.</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Kind of the accessions</source>
        <translation>Art der Akzessionen</translation>
    </message>
    <message>
        <source>Known</source>
        <translation>Bekannt</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Of accessions of which the layer does not tell it: apple, pear or a botanical name.</source>
        <translation>Von Akzessionen, bei denen die Ebene es nicht sagt: Apfel, Birne (apple, pear) oder ein botanischer Name.</translation>
    </message>
    <message>
        <source>Of the layer, as in EPSG:25832, where it does not tell itself.</source>
        <translation>Der Ebene, wie EPSG:25832, wo sie es nicht selbst sagt.</translation>
    </message>
    <message>
        <source>Place: east or longitude</source>
        <translation>Ort: Ostwert oder geografische Länge</translation>
    </message>
    <message>
        <source>Place: north or latitude</source>
        <translation>Ort: Nordwert oder geografische Breite</translation>
    </message>
    <message>
        <source>Placed by</source>
        <translation>Verortet durch</translation>
    </message>
    <message>
        <source>Planted on</source>
        <translation>Gepflanzt am</translation>
    </message>
    <message>
        <source>Ploidy</source>
        <translation>Ploidie</translation>
    </message>
    <message>
        <source>Protected until</source>
        <translation>Geschützt bis</translation>
    </message>
    <message>
        <source>Removed on</source>
        <translation>Gerodet am</translation>
    </message>
    <message>
        <source>Rootstock</source>
        <translation>Unterlage</translation>
    </message>
    <message>
        <source>Same place</source>
        <translation>Selber Ort</translation>
    </message>
    <message>
        <source>Samples</source>
        <translation>Beispiele</translation>
    </message>
    <message>
        <source>Seed ripe after</source>
        <translation>Samen reif nach</translation>
    </message>
    <message>
        <source>Some of its values.</source>
        <translation>Einige seiner Werte.</translation>
    </message>
    <message>
        <source>Species</source>
        <translation>Botanische Art</translation>
    </message>
    <message>
        <source>Species of the accessions</source>
        <translation>Botanische Art der Akzessionen</translation>
    </message>
    <message>
        <source>Taken instead</source>
        <translation>Stattdessen</translation>
    </message>
    <message>
        <source>Takes your own layer of trees, accessions, rows or blocks into the book. Its fields are guessed from their names and values and shown with what would happen to every row; nothing is written until you say so. Then everything is added at once, or nothing where an error stands in the way. What the book has is never changed, your layer neither.</source>
        <translation>Nimmt Ihre eigene Ebene von Bäumen, Akzessionen, Reihen oder Quartieren ins Buch auf. Ihre Felder werden an Namen und Werten erkannt und gezeigt, zusammen mit dem, was mit jeder Zeile geschähe; geschrieben wird erst, wenn Sie es sagen. Dann kommt alles auf einmal dazu, oder nichts, wenn ein Fehler im Weg steht. Was im Buch steht, wird nie geändert, Ihre Ebene auch nicht.</translation>
    </message>
    <message>
        <source>The block of rows or trees that do not name theirs.</source>
        <translation>Das Quartier von Reihen oder Bäumen, die keines nennen.</translation>
    </message>
    <message>
        <source>The block that it stands in.</source>
        <translation>Das Quartier, in dem er steht.</translation>
    </message>
    <message>
        <source>The column of the book; empty where it is not taken.</source>
        <translation>Die Spalte des Buchs; leer, wo das Feld nicht übernommen wird.</translation>
    </message>
    <message>
        <source>The field of the layer.</source>
        <translation>Das Feld der Ebene.</translation>
    </message>
    <message>
        <source>The field that the column is taken from instead.</source>
        <translation>Das Feld, aus dem die Spalte stattdessen kommt.</translation>
    </message>
    <message>
        <source>The reason, where it is not simply added.</source>
        <translation>Der Grund, wo es nicht einfach dazukommt.</translation>
    </message>
    <message>
        <source>The row of the layer, by its number.</source>
        <translation>Die Zeile der Ebene, mit ihrer Nummer.</translation>
    </message>
    <message>
        <source>The same as a file of two columns, as mapping.csv that every run makes.</source>
        <translation>Dasselbe als Datei mit zwei Spalten, wie mapping.csv, die jeder Lauf anlegt.</translation>
    </message>
    <message>
        <source>The word that its name was taken for.</source>
        <translation>Das Wort, für das sein Name gehalten wurde.</translation>
    </message>
    <message>
        <source>Unreadable</source>
        <translation>Unlesbar</translation>
    </message>
    <message>
        <source>Values that the column cannot hold.</source>
        <translation>Werte, die in die Spalte nicht passen.</translation>
    </message>
    <message>
        <source>What becomes of each feature of the layer.</source>
        <translation>Was aus jedem Objekt der Ebene wird.</translation>
    </message>
    <message>
        <source>What happens</source>
        <translation>Was geschieht</translation>
    </message>
    <message>
        <source>What it holds</source>
        <translation>Was sie enthält</translation>
    </message>
    <message>
        <source>What sort accessions are of which the layer does not tell it.</source>
        <translation>Welcher Art Akzessionen sind, bei denen die Ebene es nicht sagt.</translation>
    </message>
    <message>
        <source>What the rows of the layer are; seen from its geometry and fields where not given.</source>
        <translation>Was die Zeilen der Ebene sind; sonst aus Geometrie und Feldern ersehen.</translation>
    </message>
    <message>
        <source>What trees are kept for of which the layer does not tell it; other where not given.</source>
        <translation>Wofür Bäume da sind, bei denen die Ebene es nicht sagt; ohne Angabe Sonstiges.</translation>
    </message>
    <message>
        <source>What writing does with it.</source>
        <translation>Was beim Schreiben damit geschieht.</translation>
    </message>
    <message>
        <source>Where each field of the layer goes in the book.</source>
        <translation>Wohin jedes Feld der Ebene im Buch kommt.</translation>
    </message>
    <message>
        <source>Where fields go, where that is not guessed right: &quot;FIELD=column; FIELD2=-&quot;, - for nowhere.</source>
        <translation>Wohin Felder kommen, wo das nicht richtig erkannt ist: &quot;FELD=Spalte; FELD2=-&quot;, - für nirgendwohin.</translation>
    </message>
    <message>
        <source>Whether accessions that trees name and the book lacks are added.</source>
        <translation>Ob Akzessionen angelegt werden, die Bäume nennen und die im Buch fehlen.</translation>
    </message>
    <message>
        <source>Whether blocks and rows that trees name and the book lacks are added, drawn through their trees.</source>
        <translation>Ob Quartiere und Reihen angelegt werden, die Bäume nennen und die im Buch fehlen, durch ihre Bäume gezeichnet.</translation>
    </message>
    <message>
        <source>Whether the layer has its two coordinates the wrong way round.</source>
        <translation>Ob in der Ebene die beiden Koordinaten vertauscht sind.</translation>
    </message>
    <message>
        <source>Within which a tree of the same label is taken for the book&apos;s own; the transformation&apos;s accuracy comes on top.</source>
        <translation>Entfernung, bis zu der ein Baum mit derselben Bezeichnung für den des Buchs gilt; die Genauigkeit der Umrechnung kommt hinzu.</translation>
    </message>
    <message>
        <source>Word</source>
        <translation>Wort</translation>
    </message>
    <message>
        <source>a named variety</source>
        <translation>eine benannte Sorte</translation>
    </message>
    <message>
        <source>a seedling chosen and kept by grafting</source>
        <translation>ein ausgelesener Sämling, durch Veredeln erhalten</translation>
    </message>
    <message>
        <source>a single seedling</source>
        <translation>ein einzelner Sämling</translation>
    </message>
    <message>
        <source>a wild species or type of it</source>
        <translation>eine Wildart oder eine Form von ihr</translation>
    </message>
    <message>
        <source>added</source>
        <translation>kommt dazu</translation>
    </message>
    <message>
        <source>areas, a block each</source>
        <translation>Flächen, je ein Quartier</translation>
    </message>
    <message>
        <source>as you said</source>
        <translation>wie angegeben</translation>
    </message>
    <message>
        <source>goes nowhere</source>
        <translation>kommt nirgendwohin</translation>
    </message>
    <message>
        <source>in the book already</source>
        <translation>schon im Buch</translation>
    </message>
    <message>
        <source>its values are accessions of the book</source>
        <translation>seine Werte sind Akzessionen des Buchs</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>lines, a tree row each</source>
        <translation>Linien, je eine Baumreihe</translation>
    </message>
    <message>
        <source>name cut short</source>
        <translation>Name abgeschnitten</translation>
    </message>
    <message>
        <source>name some letters off</source>
        <translation>Name um Buchstaben daneben</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>points, a tree each</source>
        <translation>Punkte, je ein Baum</translation>
    </message>
    <message>
        <source>refused</source>
        <translation>abgelehnt</translation>
    </message>
    <message>
        <source>same name</source>
        <translation>gleicher Name</translation>
    </message>
    <message>
        <source>trade word</source>
        <translation>Fachwort</translation>
    </message>
    <message>
        <source>varieties and selections, without a place</source>
        <translation>Sorten und Zuchtklone, ohne Ort</translation>
    </message>
    <message>
        <source>A layer in any usual format: GeoPackage, Shapefile, GeoJSON, CSV with coordinates; or PG:... for a PostGIS database.</source>
        <translation>Eine Ebene in jedem üblichen Format: GeoPackage, Shapefile, GeoJSON, CSV mit Koordinaten; oder PG:... für eine PostGIS-Datenbank.</translation>
    </message>
    <message>
        <source>Coordinate system of the layer</source>
        <translation>Koordinatensystem der Ebene</translation>
    </message>
    <message>
        <source>In block</source>
        <translation>Im Quartier</translation>
    </message>
    <message>
        <source>Purpose of the trees</source>
        <translation>Zweck der Bäume</translation>
    </message>
    <message>
        <source>Whether what comes out is written to the book; no leaves the book untouched.</source>
        <translation>Ob das Ergebnis ins Buch geschrieben wird; nein lässt das Buch unberührt.</translation>
    </message>
</context>
</TS>
