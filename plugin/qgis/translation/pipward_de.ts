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
    <message>
        <source>Line</source>
        <translation>Abstammung</translation>
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
    <name>pipward::desktop::LineWindow</name>
    <message>
        <source>Line of %1</source>
        <translation>Abstammung von %1</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Als PDF sichern…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Als PDF sichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>%1 could not be written.</source>
        <translation>%1 ließ sich nicht schreiben.</translation>
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
    <message>
        <source>Line</source>
        <translation>Abstammung</translation>
    </message>
    <message>
        <source>Draws who it descends from and what descends from it.</source>
        <translation>Zeichnet, wovon er abstammt und was von ihm abstammt.</translation>
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
        <source>Move its corners on the map, or draw it anew.</source>
        <translation>Ecken auf der Karte verschieben oder neu zeichnen.</translation>
    </message>
    <message>
        <source>Purpose of the trees</source>
        <translation>Zweck der Bäume</translation>
    </message>
    <message>
        <source>The outline crosses or touches itself.</source>
        <translation>Der Umriss kreuzt oder berührt sich selbst.</translation>
    </message>
    <message>
        <source>The outline does not end where it begins.</source>
        <translation>Der Umriss endet nicht dort, wo er beginnt.</translation>
    </message>
    <message>
        <source>The outline has fewer than three corners.</source>
        <translation>Der Umriss hat weniger als drei Ecken.</translation>
    </message>
    <message>
        <source>Whether what comes out is written to the book; no leaves the book untouched.</source>
        <translation>Ob das Ergebnis ins Buch geschrieben wird; nein lässt das Buch unberührt.</translation>
    </message>
    <message>
        <source>1 for the first label that is printed.</source>
        <translation>1 für das erste gedruckte Etikett.</translation>
    </message>
    <message>
        <source>101.6 x 50.8 mm, 2 x 5 on Letter</source>
        <translation>101,6 x 50,8 mm, 2 x 5 auf Letter</translation>
    </message>
    <message>
        <source>105 x 74 mm, 2 x 4 on A4</source>
        <translation>105 x 74 mm, 2 x 4 auf A4</translation>
    </message>
    <message>
        <source>48.5 x 25.4 mm, 4 x 10 on A4</source>
        <translation>48,5 x 25,4 mm, 4 x 10 auf A4</translation>
    </message>
    <message>
        <source>63.5 x 38.1 mm, 3 x 7 on A4</source>
        <translation>63,5 x 38,1 mm, 3 x 7 auf A4</translation>
    </message>
    <message>
        <source>66.7 x 25.4 mm, 3 x 10 on Letter</source>
        <translation>66,7 x 25,4 mm, 3 x 10 auf Letter</translation>
    </message>
    <message>
        <source>70 x 37 mm, 3 x 8 on A4</source>
        <translation>70 x 37 mm, 3 x 8 auf A4</translation>
    </message>
    <message>
        <source>99.1 x 67.7 mm, 2 x 4 on A4</source>
        <translation>99,1 x 67,7 mm, 2 x 4 auf A4</translation>
    </message>
    <message>
        <source>A hole lies outside of the outline, or in another hole.</source>
        <translation>Ein Loch liegt außerhalb des Umrisses oder in einem anderen Loch.</translation>
    </message>
    <message>
        <source>A hole touches the outline so that the area falls apart.</source>
        <translation>Ein Loch berührt den Umriss so, dass die Fläche zerfällt.</translation>
    </message>
    <message>
        <source>A3, 297 x 420 mm</source>
        <translation>A3, 297 × 420 mm</translation>
    </message>
    <message>
        <source>A4, 210 x 297 mm</source>
        <translation>A4, 210 × 297 mm</translation>
    </message>
    <message>
        <source>Code says</source>
        <translation>Code sagt</translation>
    </message>
    <message>
        <source>Columns</source>
        <translation>Spalten</translation>
    </message>
    <message>
        <source>Copies</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>Dots of the code</source>
        <translation>Punkte des Codes</translation>
    </message>
    <message>
        <source>Every label that is printed, in the order of the sheets.</source>
        <translation>Jedes gedruckte Etikett, in der Reihenfolge der Bögen.</translation>
    </message>
    <message>
        <source>First label</source>
        <translation>Erstes Etikett</translation>
    </message>
    <message>
        <source>From a label to the next one below it.</source>
        <translation>Von einem Etikett zum nächsten darunter.</translation>
    </message>
    <message>
        <source>From a label to the next one beside it.</source>
        <translation>Von einem Etikett zum nächsten daneben.</translation>
    </message>
    <message>
        <source>From the page&apos;s edge to the first label.</source>
        <translation>Vom Rand der Seite bis zum ersten Etikett.</translation>
    </message>
    <message>
        <source>Gap between columns</source>
        <translation>Abstand der Spalten</translation>
    </message>
    <message>
        <source>Gap between rows</source>
        <translation>Abstand der Zeilen</translation>
    </message>
    <message>
        <source>How high a label is.</source>
        <translation>Wie hoch ein Etikett ist.</translation>
    </message>
    <message>
        <source>How high the page is.</source>
        <translation>Wie hoch die Seite ist.</translation>
    </message>
    <message>
        <source>How high the small letters of its smallest text are.</source>
        <translation>Wie hoch die Kleinbuchstaben seines kleinsten Textes sind.</translation>
    </message>
    <message>
        <source>How large one square of the QR code is.</source>
        <translation>Wie groß ein Quadrat des QR-Codes ist.</translation>
    </message>
    <message>
        <source>How many labels lie below each other.</source>
        <translation>Wie viele Etiketten untereinander liegen.</translation>
    </message>
    <message>
        <source>How many labels lie beside each other.</source>
        <translation>Wie viele Etiketten nebeneinander liegen.</translation>
    </message>
    <message>
        <source>How many trees it shows, those that its neighbours show as well counted.</source>
        <translation>Wie viele Bäume sie zeigt; solche, die auch Nachbarseiten zeigen, zählen mit.</translation>
    </message>
    <message>
        <source>How wide a label is.</source>
        <translation>Wie breit ein Etikett ist.</translation>
    </message>
    <message>
        <source>How wide the page is.</source>
        <translation>Wie breit die Seite ist.</translation>
    </message>
    <message>
        <source>Label height</source>
        <translation>Höhe des Etiketts</translation>
    </message>
    <message>
        <source>Label width</source>
        <translation>Breite des Etiketts</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>Labels and tags</source>
        <translation>Etiketten und Anhänger</translation>
    </message>
    <message>
        <source>Labels of</source>
        <translation>Etiketten für</translation>
    </message>
    <message>
        <source>Labels of each tree, tags of each cross, or sheets of blank tags.</source>
        <translation>Etiketten je Baum, Anhänger je Kreuzung oder Bögen leerer Anhänger.</translation>
    </message>
    <message>
        <source>Labels of the trees, with commas between; all that fit the rest where left out.</source>
        <translation>Bezeichnungen der Bäume, durch Kommas getrennt; ohne Angabe alle, auf die das Übrige zutrifft.</translation>
    </message>
    <message>
        <source>Left margin</source>
        <translation>Linker Rand</translation>
    </message>
    <message>
        <source>Letter, 8.5 x 11 inches</source>
        <translation>Letter, 8,5 x 11 Zoll</translation>
    </message>
    <message>
        <source>Letters on tags</source>
        <translation>Buchstaben auf Anhängern</translation>
    </message>
    <message>
        <source>Makes a PDF map of a block or of the whole orchard at a round scale: trees by purpose in shape and colour, rows and positions with their numbers, scale bar and north arrow, on several pages with an overview where one would be too small. It also makes a GPX and a KML file, so that a hand-held receiver or a telephone leads to the trees. Nothing is written to the book.</source>
        <translation>Macht einen Plan eines Quartiers oder der ganzen Anlage als PDF in rundem Maßstab: Bäume nach Zweck in Form und Farbe, Reihen und Plätze mit ihren Nummern, Maßstabsleiste und Nordpfeil, auf mehreren Seiten mit Übersicht, wo eine zu klein wäre. Dazu eine GPX- und eine KML-Datei, mit denen ein Handempfänger oder ein Telefon zu den Bäumen führt. Ins Buch wird nichts geschrieben.</translation>
    </message>
    <message>
        <source>Makes a PDF of labels for trees, of tags for the flowers of a season&apos;s crosses, or of tags to fill in by hand, in true millimetres on sheets or rolls. A label holds what stands on the tree, its accession and parents, its address, the year of planting and a QR code. Text that is too long is made smaller and wrapped, never cut. Nothing is written to the book.</source>
        <translation>Macht ein PDF mit Etiketten für Bäume, mit Anhängern für die Blüten der Kreuzungen einer Saison oder mit Anhängern zum Ausfüllen von Hand, in echten Millimetern auf Bögen oder Rollen. Auf einem Etikett stehen die Bezeichnung des Baums, Akzession und Eltern, Standort, Pflanzjahr und ein QR-Code. Zu langer Text wird verkleinert und umbrochen, nie abgeschnitten. Ins Buch wird nichts geschrieben.</translation>
    </message>
    <message>
        <source>Map for the field</source>
        <translation>Plan fürs Feld</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Of crosses: the year in which they bloom; that of the as-of day where left out.</source>
        <translation>Bei Kreuzungen: das Jahr, in dem sie blühen; ohne Angabe das des Stichtags.</translation>
    </message>
    <message>
        <source>Of crosses: whether every tag has a code of its own, with the next letter that is free.</source>
        <translation>Bei Kreuzungen: ob jeder Anhänger einen eigenen Code hat, mit dem nächsten freien Buchstaben.</translation>
    </message>
    <message>
        <source>One metre on paper is so many on the ground, 250 for 1:250; the largest at which everything can be read where left out.</source>
        <translation>Ein Meter auf dem Papier sind so viele am Boden, 250 für 1:250; ohne Angabe der größte Maßstab, bei dem alles zu lesen ist.</translation>
    </message>
    <message>
        <source>One metre on paper is so many on the ground.</source>
        <translation>Ein Meter auf dem Papier sind so viele am Boden.</translation>
    </message>
    <message>
        <source>Outline</source>
        <translation>Umriss</translation>
    </message>
    <message>
        <source>Overview</source>
        <translation>Übersicht</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Page height</source>
        <translation>Höhe der Seite</translation>
    </message>
    <message>
        <source>Page width</source>
        <translation>Breite der Seite</translation>
    </message>
    <message>
        <source>Pages of the map</source>
        <translation>Seiten des Plans</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>QR code</source>
        <translation>QR-Code</translation>
    </message>
    <message>
        <source>Removed trees</source>
        <translation>Entfernte Bäume</translation>
    </message>
    <message>
        <source>Rows across</source>
        <translation>Reihen quer</translation>
    </message>
    <message>
        <source>Rows of labels</source>
        <translation>Zeilen von Etiketten</translation>
    </message>
    <message>
        <source>Says</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Maßstab</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Bogen</translation>
    </message>
    <message>
        <source>Small letters</source>
        <translation>Kleinbuchstaben</translation>
    </message>
    <message>
        <source>The labels by their dimensions; the options of dimensions change what they name.</source>
        <translation>Die Etiketten nach ihren Maßen; die Angaben zu Maßen ändern, was sie nennen.</translation>
    </message>
    <message>
        <source>The order in which labels of trees come.</source>
        <translation>Die Reihenfolge der Etiketten von Bäumen.</translation>
    </message>
    <message>
        <source>The page of the file on which it stands.</source>
        <translation>Die Seite der Datei, auf der es steht.</translation>
    </message>
    <message>
        <source>The page of the file.</source>
        <translation>Die Seite der Datei.</translation>
    </message>
    <message>
        <source>The pages of the map.</source>
        <translation>Die Seiten des Plans.</translation>
    </message>
    <message>
        <source>The size of the pages; upright or on the side is chosen.</source>
        <translation>Die Größe der Seiten; hoch oder quer wird gewählt.</translation>
    </message>
    <message>
        <source>Upper margin</source>
        <translation>Oberer Rand</translation>
    </message>
    <message>
        <source>What gets labels.</source>
        <translation>Was Etiketten bekommt.</translation>
    </message>
    <message>
        <source>What stands below.</source>
        <translation>Was darunter steht.</translation>
    </message>
    <message>
        <source>What stands on it large.</source>
        <translation>Was groß darauf steht.</translation>
    </message>
    <message>
        <source>What the QR code carries.</source>
        <translation>Was der QR-Code enthält.</translation>
    </message>
    <message>
        <source>What the QR code on a label says; on the tag of a cross it is the tag&apos;s code.</source>
        <translation>Was der QR-Code auf einem Etikett sagt; auf dem Anhänger einer Kreuzung ist es der Code des Anhängers.</translation>
    </message>
    <message>
        <source>Where to begin on a sheet that is used in part, row by row from the upper left.</source>
        <translation>Wo auf einem angebrochenen Bogen zu beginnen ist, Zeile für Zeile von links oben.</translation>
    </message>
    <message>
        <source>Whether a thin line shows where to cut.</source>
        <translation>Ob eine dünne Linie zeigt, wo zu schneiden ist.</translation>
    </message>
    <message>
        <source>Whether it shows where the other pages lie.</source>
        <translation>Ob sie zeigt, wo die anderen Seiten liegen.</translation>
    </message>
    <message>
        <source>Whether the files for receivers hold a walk along the alleys to all the trees.</source>
        <translation>Ob die Dateien für Empfänger einen Gang durch die Gassen zu allen Bäumen enthalten.</translation>
    </message>
    <message>
        <source>Whether the map is turned so that rows lie across the page; north is up otherwise.</source>
        <translation>Ob der Plan so gedreht wird, dass die Reihen quer liegen; sonst ist Norden oben.</translation>
    </message>
    <message>
        <source>Whether the places of removed trees are drawn.</source>
        <translation>Ob die Plätze entfernter Bäume gezeichnet werden.</translation>
    </message>
    <message>
        <source>Which label of the page it is, row by row from the upper left.</source>
        <translation>Das wievielte Etikett der Seite es ist, Zeile für Zeile von links oben.</translation>
    </message>
    <message>
        <source>a label for each tree</source>
        <translation>ein Etikett für jeden Baum</translation>
    </message>
    <message>
        <source>a roll of 100 x 50 mm labels</source>
        <translation>eine Rolle mit Etiketten 100 x 50 mm</translation>
    </message>
    <message>
        <source>a roll of 57 x 32 mm labels</source>
        <translation>eine Rolle mit Etiketten 57 x 32 mm</translation>
    </message>
    <message>
        <source>a roll of 89 x 36 mm labels</source>
        <translation>eine Rolle mit Etiketten 89 x 36 mm</translation>
    </message>
    <message>
        <source>as in the book</source>
        <translation>wie im Buch</translation>
    </message>
    <message>
        <source>by block, row and position</source>
        <translation>nach Quartier, Reihe und Platz</translation>
    </message>
    <message>
        <source>by label</source>
        <translation>nach Bezeichnung</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>no code</source>
        <translation>kein Code</translation>
    </message>
    <message>
        <source>tags for the flowers of the season&apos;s crosses</source>
        <translation>Anhänger für die Blüten der Kreuzungen der Saison</translation>
    </message>
    <message>
        <source>tags to fill in by hand</source>
        <translation>Anhänger zum Ausfüllen von Hand</translation>
    </message>
    <message>
        <source>the dimensions that the other options give</source>
        <translation>die Maße, die die anderen Angaben nennen</translation>
    </message>
    <message>
        <source>the label as plain text</source>
        <translation>die Bezeichnung als schlichter Text</translation>
    </message>
    <message>
        <source>the same, every second row from its far end, as one walks</source>
        <translation>ebenso, jede zweite Reihe vom anderen Ende her, wie man geht</translation>
    </message>
    <message>
        <source>the tree&apos;s place as a geo: link that telephones open on a map</source>
        <translation>der Platz des Baums als geo:-Verweis, den Telefone auf einer Karte öffnen</translation>
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
        <source>Add accessions</source>
        <translation>Akzessionen anlegen</translation>
    </message>
    <message>
        <source>Add rows and blocks</source>
        <translation>Reihen und Quartiere anlegen</translation>
    </message>
    <message>
        <source>Adopt a layer</source>
        <translation>Layer übernehmen</translation>
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
        <source>Kind of the accessions</source>
        <translation>Art der Akzessionen</translation>
    </message>
    <message>
        <source>Known</source>
        <translation>Bekannt</translation>
    </message>
    <message>
        <source>Of accessions of which the layer does not tell it: apple, pear or a botanical name.</source>
        <translation>Von Akzessionen, bei denen der Layer es nicht sagt: Apfel, Birne (apple, pear) oder ein botanischer Name.</translation>
    </message>
    <message>
        <source>Of the layer, as in EPSG:25832, where it does not tell itself.</source>
        <translation>Des Layers, wie EPSG:25832, wo er es nicht selbst sagt.</translation>
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
        <source>Same place</source>
        <translation>Selber Ort</translation>
    </message>
    <message>
        <source>Samples</source>
        <translation>Beispiele</translation>
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
        <translation>Nimmt Ihren eigenen Layer von Bäumen, Akzessionen, Reihen oder Quartieren ins Buch auf. Seine Felder werden an Namen und Werten erkannt und gezeigt, zusammen mit dem, was mit jeder Zeile geschähe; geschrieben wird erst, wenn Sie es sagen. Dann kommt alles auf einmal dazu, oder nichts, wenn ein Fehler im Weg steht. Was im Buch steht, wird nie geändert, Ihr Layer auch nicht.</translation>
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
        <translation>Das Feld des Layers.</translation>
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
        <translation>Die Zeile des Layers, mit ihrer Nummer.</translation>
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
        <translation>Was aus jedem Objekt des Layers wird.</translation>
    </message>
    <message>
        <source>What happens</source>
        <translation>Was geschieht</translation>
    </message>
    <message>
        <source>What it holds</source>
        <translation>Was er enthält</translation>
    </message>
    <message>
        <source>What sort accessions are of which the layer does not tell it.</source>
        <translation>Welcher Art Akzessionen sind, bei denen der Layer es nicht sagt.</translation>
    </message>
    <message>
        <source>What the rows of the layer are; seen from its geometry and fields where not given.</source>
        <translation>Was die Zeilen des Layers sind; sonst aus Geometrie und Feldern ersehen.</translation>
    </message>
    <message>
        <source>What trees are kept for of which the layer does not tell it; other where not given.</source>
        <translation>Wofür Bäume da sind, bei denen der Layer es nicht sagt; ohne Angabe Sonstiges.</translation>
    </message>
    <message>
        <source>What writing does with it.</source>
        <translation>Was beim Schreiben damit geschieht.</translation>
    </message>
    <message>
        <source>Where each field of the layer goes in the book.</source>
        <translation>Wohin jedes Feld des Layers im Buch kommt.</translation>
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
        <translation>Ob im Layer die beiden Koordinaten vertauscht sind.</translation>
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
        <translation>Reihe</translation>
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
        <source>1 accession</source>
        <translation>1 Akzession</translation>
    </message>
    <message>
        <source>1 accession foretold</source>
        <translation>1 Akzession vorhergesagt</translation>
    </message>
    <message>
        <source>1 case</source>
        <translation>1 Fall</translation>
    </message>
    <message>
        <source>1 cross: {}.</source>
        <translation>1 Kreuzung: {}.</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 Tag</translation>
    </message>
    <message>
        <source>1 donor flower</source>
        <translation>1 Spenderblüte</translation>
    </message>
    <message>
        <source>1 field task</source>
        <translation>1 Feldarbeit</translation>
    </message>
    <message>
        <source>1 flower</source>
        <translation>1 Blüte</translation>
    </message>
    <message>
        <source>1 note</source>
        <translation>1 Notiz</translation>
    </message>
    <message>
        <source>1 note of this season is not learned from: its weather is not whole yet.</source>
        <translation>1 Notiz dieser Saison bleibt beim Anlernen außer Acht: Das Wetter der Saison ist noch nicht vollständig.</translation>
    </message>
    <message>
        <source>1 note of this season is not learned from: its weather is not whole.</source>
        <translation>1 Notiz dieser Saison bleibt beim Anlernen außer Acht: Das Wetter der Saison ist nicht vollständig.</translation>
    </message>
    <message>
        <source>1 past season</source>
        <translation>1 vergangenen Saison</translation>
    </message>
    <message>
        <source>1 piece of pollen work, the first by {}.</source>
        <translation>1 Pollenarbeit, die erste bis {}.</translation>
    </message>
    <message>
        <source>1 pollen task</source>
        <translation>1 Pollenarbeit</translation>
    </message>
    <message>
        <source>1 row with {} positions in block {} added.</source>
        <translation>1 Reihe mit {} Positionen in Quartier {} hinzugefügt.</translation>
    </message>
    <message>
        <source>1 row with {} positions in block {}: nothing was written.</source>
        <translation>1 Reihe mit {} Positionen in Quartier {}: Es wurde nichts geschrieben.</translation>
    </message>
    <message>
        <source>1 season</source>
        <translation>1 Saison</translation>
    </message>
    <message>
        <source>1 tree found: {}.</source>
        <translation>1 Baum gefunden: {}.</translation>
    </message>
    <message>
        <source>1 tree, {:.0f} m to walk</source>
        <translation>1 Baum, {} m zu gehen</translation>
    </message>
    <message>
        <source>1 warning</source>
        <translation>1 Warnung</translation>
    </message>
    <message>
        <source>8 in 10</source>
        <translation>8 von 10</translation>
    </message>
    <message>
        <source>8 springs in 10 from {} to {}</source>
        <translation>8 von 10 Frühjahren zwischen {} und {}</translation>
    </message>
    <message>
        <source>A blend and an accession have the same name.</source>
        <translation>Eine Pollenmischung und eine Akzession haben denselben Namen.</translation>
    </message>
    <message>
        <source>A block is laid from one base line; there are {} lines.</source>
        <translation>Ein Quartier wird von einer Grundlinie aus angelegt; es sind {} Linien.</translation>
    </message>
    <message>
        <source>A book&apos;s name ends with .gpkg.</source>
        <translation>Der Name eines Buchs endet auf .gpkg.</translation>
    </message>
    <message>
        <source>A branch of {} cannot be forced in time: the wood has its chill too late.</source>
        <translation>Ein Zweig von {} lässt sich nicht rechtzeitig treiben: Das Holz hat seine Kälte zu spät.</translation>
    </message>
    <message>
        <source>A branch of {} would have had to be cut by {}.</source>
        <translation>Ein Zweig von {} hätte bis {} geschnitten werden müssen.</translation>
    </message>
    <message>
        <source>A chance of 8 in 10 means: of ten springs such as this may become, in eight there is live, compatible pollen on hand while the flowers can take it. Fruit set and seed come on top: the flower counts reckon with {} worked flowers setting fruit, {} seeds a fruit and {} seeds becoming seedlings, and reach the wanted number in {} springs. A last safe day leaves {:.0f} chances in 100 of being too late.</source>
        <translation>Eine Chance von 8 in 10 heißt: Von zehn Frühjahren, wie dieses eines werden kann, steht in acht keimfähiger, verträglicher Pollen bereit, solange die Blüten ihn annehmen können. Fruchtansatz und Samen kommen hinzu: Die Blütenzahlen rechnen damit, dass {} bestäubten Blüten Frucht ansetzen, {} Samen in einer Frucht stecken und {} Samen zu Sämlingen werden, und erreichen die gewünschte Zahl in {} Frühjahren. Ein letzter sicherer Tag lässt {} Fälle in 100, in denen es zu spät ist.</translation>
    </message>
    <message>
        <source>A day in the future of {} cannot have been observed.</source>
        <translation>Ein Tag nach {} kann noch nicht beobachtet worden sein.</translation>
    </message>
    <message>
        <source>A guess: no bloom notes of {}.</source>
        <translation>Eine Schätzung: Es fehlen Blühnotizen von {}.</translation>
    </message>
    <message>
        <source>A parent is neither diploid nor triploid: no figures are known, so it counts as diploid.</source>
        <translation>Ein Elter ist weder diploid noch triploid: Dafür sind keine Zahlen bekannt, er zählt als diploid.</translation>
    </message>
    <message>
        <source>A parent is triploid: such crosses gave about {:.2g} % of the seedlings of diploids (Sato &amp; Kanbe 2007), so the flowers are scaled up and the outlook is doubtful at best.</source>
        <translation>Ein Elter ist triploid: Solche Kreuzungen gaben etwa {} % der Sämlinge diploider Eltern (Sato &amp; Kanbe 2007); die Zahl der Blüten ist entsprechend erhöht und die Aussicht bestenfalls fraglich.</translation>
    </message>
    <message>
        <source>A poor result leaves time for another way.</source>
        <translation>Ein schlechtes Ergebnis lässt noch Zeit für einen anderen Weg.</translation>
    </message>
    <message>
        <source>A program stopped while it was writing this book, and the book cannot be repaired where it lies because it cannot be written.</source>
        <translation>Ein Programm brach ab, während es dieses Buch schrieb, und das Buch lässt sich an seinem Ort nicht wiederherstellen, weil dort nicht geschrieben werden kann.</translation>
    </message>
    <message>
        <source>A quotation mark is opened here and never closed.</source>
        <translation>Hier beginnt ein Anführungszeichen, das nie geschlossen wird.</translation>
    </message>
    <message>
        <source>A row has not as many cells as the table has columns.</source>
        <translation>Eine Zeile hat nicht so viele Zellen, wie die Tabelle Spalten hat.</translation>
    </message>
    <message>
        <source>A season&apos;s sheet needs a season&apos;s plan.</source>
        <translation>Ein Saisonblatt braucht einen Saisonplan.</translation>
    </message>
    <message>
        <source>A style of yours is the layer&apos;s default and stays the default.</source>
        <translation>Ein eigener Stil ist der Standard des Layers und bleibt es.</translation>
    </message>
    <message>
        <source>A test in which no grains were counted tells nothing.</source>
        <translation>Eine Prüfung, bei der keine Körner gezählt wurden, sagt nichts.</translation>
    </message>
    <message>
        <source>A tripod on firm ground, never the top steps, three points of contact, the pollen kit not in the climbing hand. Stay down in wind and near wires.</source>
        <translation>Eine dreibeinige Leiter auf festem Boden, nie die obersten Stufen, drei Punkte mit Halt, den Pollen nicht in der Hand, die beim Steigen hält. Bei Wind und nahe an Leitungen unten bleiben.</translation>
    </message>
    <message>
        <source>A view stands where the table should be.</source>
        <translation>Wo die Tabelle sein sollte, steht eine Sicht (view).</translation>
    </message>
    <message>
        <source>Accessions</source>
        <translation>Akzessionen</translation>
    </message>
    <message>
        <source>Accuracy</source>
        <translation>Genauigkeit</translation>
    </message>
    <message>
        <source>Add a point with its name and elevation to the table station.</source>
        <translation>Der Tabelle station einen Punkt mit Namen und Höhe hinzufügen.</translation>
    </message>
    <message>
        <source>Add a station to the book first.</source>
        <translation>Zuerst dem Buch eine Station hinzufügen.</translation>
    </message>
    <message>
        <source>Add a station with its place and elevation.</source>
        <translation>Eine Station mit Lage und Höhe hinzufügen.</translation>
    </message>
    <message>
        <source>Add bloom notes (stage 51 to 69) of past springs and the station&apos;s days of those springs.</source>
        <translation>Blühnotizen (Stadium 51 bis 69) vergangener Frühjahre und die Tage der Station aus diesen Frühjahren hinzufügen.</translation>
    </message>
    <message>
        <source>Add it.</source>
        <translation>Hinzufügen.</translation>
    </message>
    <message>
        <source>Add the accession or the blend, or correct the name.</source>
        <translation>Die Akzession oder die Pollenmischung hinzufügen oder den Namen berichtigen.</translation>
    </message>
    <message>
        <source>Add the column.</source>
        <translation>Die Spalte hinzufügen.</translation>
    </message>
    <message>
        <source>Add the station first, with its place and elevation.</source>
        <translation>Zuerst die Station mit Lage und Höhe hinzufügen.</translation>
    </message>
    <message>
        <source>Add the station or correct the name.</source>
        <translation>Die Station hinzufügen oder den Namen berichtigen.</translation>
    </message>
    <message>
        <source>Add the station&apos;s days from 1 October (in the south 1 April) to the end of bloom.</source>
        <translation>Die Tage der Station vom 1. Oktober (im Süden 1. April) bis zum Ende der Blüte hinzufügen.</translation>
    </message>
    <message>
        <source>Add the station&apos;s days of at least one past season.</source>
        <translation>Die Tage der Station aus mindestens einer vergangenen Saison hinzufügen.</translation>
    </message>
    <message>
        <source>Add the {} to the book or correct the name.</source>
        <translation>Im Buch ergänzen ({}) oder den Namen berichtigen.</translation>
    </message>
    <message>
        <source>Add the {}, or correct the name.</source>
        <translation>Ergänzen ({}) oder den Namen berichtigen.</translation>
    </message>
    <message>
        <source>Add them; docs/book.md tells their types.</source>
        <translation>Hinzufügen; docs/book.md nennt ihre Typen.</translation>
    </message>
    <message>
        <source>After {} the risk of coming too late is above {}.</source>
        <translation>Nach {} liegt das Risiko, zu spät zu kommen, über {}.</translation>
    </message>
    <message>
        <source>All flowers are worked already ({}).</source>
        <translation>Alle Blüten sind schon bestäubt ({}).</translation>
    </message>
    <message>
        <source>Allergy.</source>
        <translation>Allergie.</translation>
    </message>
    <message>
        <source>An accession is its own ancestor: each is recorded as a child of the next.</source>
        <translation>Eine Akzession ist ihr eigener Vorfahr: Jede ist als Kind der nächsten eingetragen.</translation>
    </message>
    <message>
        <source>An accession whose pollen is in the blend.</source>
        <translation>Eine Akzession, deren Pollen in der Mischung ist.</translation>
    </message>
    <message>
        <source>An answer is neither yes nor no.</source>
        <translation>Eine Antwort ist weder Ja noch Nein.</translation>
    </message>
    <message>
        <source>Another program is writing this book and did not finish within {:g} s.</source>
        <translation>Ein anderes Programm schreibt dieses Buch und wurde innerhalb von {} s nicht fertig.</translation>
    </message>
    <message>
        <source>Another program is writing this book.</source>
        <translation>Ein anderes Programm schreibt gerade dieses Buch.</translation>
    </message>
    <message>
        <source>Apple seed holds 1 to 4 mg of amygdalin a gram, which gives off cyanide when crushed or chewed; pear seed holds it too. Never eat or grind it; keep it from children and animals.</source>
        <translation>Apfelkerne enthalten 1 bis 4 mg Amygdalin je Gramm, das beim Zerdrücken oder Zerkauen Blausäure abgibt; Birnenkerne enthalten es auch. Nie essen oder mahlen; von Kindern und Tieren fernhalten.</translation>
    </message>
    <message>
        <source>Apr</source>
        <translation>Apr</translation>
    </message>
    <message>
        <source>Are there at most {} trees after this one to the {} end of the row?</source>
        <translation>Stehen nach diesem Baum bis zum Ende der Reihe ({1}) höchstens noch {0} Bäume?</translation>
    </message>
    <message>
        <source>Arrhenius heat</source>
        <translation>Arrhenius-Wärme</translation>
    </message>
    <message>
        <source>As of {} · {}</source>
        <translation>Stand {} · {}</translation>
    </message>
    <message>
        <source>Ask yourself: {} As yet {}</source>
        <translation>Zur Klärung: {} Bisher {}</translation>
    </message>
    <message>
        <source>Aug</source>
        <translation>Aug</translation>
    </message>
    <message>
        <source>BBCH</source>
        <translation>BBCH</translation>
    </message>
    <message>
        <source>BBCH stage</source>
        <translation>BBCH-Stadium</translation>
    </message>
    <message>
        <source>Bag closed clusters before the first flower opens ({} at the earliest, nine springs in ten).</source>
        <translation>Geschlossene Büschel eintüten, bevor sich die erste Blüte öffnet (frühestens {}, in neun von zehn Frühjahren).</translation>
    </message>
    <message>
        <source>Bag the blossom of {}</source>
        <translation>Die Blüten von {} eintüten</translation>
    </message>
    <message>
        <source>Balloon flowers of {} are over since about {}.</source>
        <translation>Das Ballonstadium von {} ist seit etwa {} vorbei.</translation>
    </message>
    <message>
        <source>Balloon flowers of {} are over this spring: none can be kept for {}.</source>
        <translation>Das Ballonstadium von {} ist in diesem Frühjahr vorbei: Für {} lässt sich kein Pollen mehr aufheben.</translation>
    </message>
    <message>
        <source>Best way and chance</source>
        <translation>Bester Weg und Chance</translation>
    </message>
    <message>
        <source>Between cuts: 70 % isopropyl alcohol or 10 % household bleach. Bleach never meets acids or ammonia.</source>
        <translation>Zwischen den Schnitten: Isopropanol 70 % oder Haushaltsbleiche 10 %. Bleiche nie mit Säuren oder Ammoniak zusammenbringen.</translation>
    </message>
    <message>
        <source>Blend</source>
        <translation>Pollenmischung</translation>
    </message>
    <message>
        <source>Block {} has a row of this name already.</source>
        <translation>Quartier {} hat schon eine Reihe mit diesem Namen.</translation>
    </message>
    <message>
        <source>Block {} has no row of this name.</source>
        <translation>Quartier {} hat keine Reihe mit diesem Namen.</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Quartiere</translation>
    </message>
    <message>
        <source>Bloom end</source>
        <translation>Ende der Blüte</translation>
    </message>
    <message>
        <source>Bloom note</source>
        <translation>Blühnotiz</translation>
    </message>
    <message>
        <source>Bloom notes</source>
        <translation>Blühnotizen</translation>
    </message>
    <message>
        <source>Bloom notes of one season only.</source>
        <translation>Blühnotizen aus nur einer Saison.</translation>
    </message>
    <message>
        <source>Bloom windows are kept wide; note bloom each spring and they will narrow.</source>
        <translation>Die Blühfenster bleiben weit; mit Notizen aus jedem Frühjahr werden sie enger.</translation>
    </message>
    <message>
        <source>Bloom {} as foretold on {}</source>
        <translation>Blüte {}, vorhergesagt am {}</translation>
    </message>
    <message>
        <source>Breeding</source>
        <translation>Züchtung</translation>
    </message>
    <message>
        <source>Breeding from a protected variety is often allowed, selling what is essentially derived from it is not; patents, contracts and club terms can forbid either. Ask before crossing.</source>
        <translation>Mit einer geschützten Sorte zu züchten ist oft erlaubt, den Verkauf dessen, was im Wesentlichen von ihr abgeleitet ist, aber nicht; Patente, Verträge und Clubregeln können beides verbieten. Vor dem Kreuzen fragen.</translation>
    </message>
    <message>
        <source>Budwood, and in places pollen and seed, can carry disease and may need a permit, a health certificate or quarantine. Note giver, day and permit of all that comes in.</source>
        <translation>Edelreiser, stellenweise auch Pollen und Samen, können Krankheiten tragen und eine Genehmigung, ein Gesundheitszeugnis oder Quarantäne brauchen. Zu allem, was hereinkommt, Herkunft, Tag und Genehmigung notieren.</translation>
    </message>
    <message>
        <source>By first day. Browsers forget the ticks; the paper copy keeps them.</source>
        <translation>Nach dem ersten Tag geordnet. Browser vergessen die Haken, der Ausdruck behält sie.</translation>
    </message>
    <message>
        <source>By last safe day, which is in bold.</source>
        <translation>Nach dem letzten sicheren Tag geordnet, der fett gedruckt ist.</translation>
    </message>
    <message>
        <source>By their shares no member has a part in the blend.</source>
        <translation>Nach den Anteilen hat kein Bestandteil teil an der Mischung.</translation>
    </message>
    <message>
        <source>Calendar year of the bloom.</source>
        <translation>Kalenderjahr der Blüte.</translation>
    </message>
    <message>
        <source>Can be done now</source>
        <translation>Jetzt möglich</translation>
    </message>
    <message>
        <source>Check host, port, database name, user and password, and that PostGIS is there.</source>
        <translation>Rechner, Port, Datenbankname, Benutzer und Passwort prüfen, und ob PostGIS vorhanden ist.</translation>
    </message>
    <message>
        <source>Check it with book-check.</source>
        <translation>Mit book-check prüfen.</translation>
    </message>
    <message>
        <source>Check its temperatures: perhaps they are in degrees Fahrenheit or of another place; then import them anew.</source>
        <translation>Die Temperaturen prüfen: Vielleicht sind sie in Grad Fahrenheit oder von einem anderen Ort; dann neu importieren.</translation>
    </message>
    <message>
        <source>Check that it is the right file.</source>
        <translation>Prüfen, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <source>Check that the folder exists and may be written, and that there is room.</source>
        <translation>Prüfen, ob der Ordner vorhanden und beschreibbar ist und ob Platz ist.</translation>
    </message>
    <message>
        <source>Check that the user may create tables.</source>
        <translation>Prüfen, ob der Benutzer Tabellen anlegen darf.</translation>
    </message>
    <message>
        <source>Check that there is memory left, then try again.</source>
        <translation>Prüfen, ob noch Speicher frei ist, dann erneut versuchen.</translation>
    </message>
    <message>
        <source>Check that you may read it.</source>
        <translation>Prüfen, ob die Datei gelesen werden darf.</translation>
    </message>
    <message>
        <source>Check the book with book-check.</source>
        <translation>Das Buch mit book-check prüfen.</translation>
    </message>
    <message>
        <source>Check the columns: the options name them.</source>
        <translation>Die Spalten prüfen: Die Optionen benennen sie.</translation>
    </message>
    <message>
        <source>Check the coordinates and their coordinate system.</source>
        <translation>Die Koordinaten und ihr Koordinatenbezugssystem prüfen.</translation>
    </message>
    <message>
        <source>Check the coordinates and their coordinate system: east first, then north.</source>
        <translation>Die Koordinaten und ihr Koordinatenbezugssystem prüfen: erst nach Osten, dann nach Norden.</translation>
    </message>
    <message>
        <source>Check the date and the stage; a second bloom in autumn is better left out.</source>
        <translation>Tag und Stadium prüfen; eine zweite Blüte im Herbst lässt man besser weg.</translation>
    </message>
    <message>
        <source>Check the date and the stage; the note is not used.</source>
        <translation>Tag und Stadium prüfen; die Notiz wird nicht verwendet.</translation>
    </message>
    <message>
        <source>Check the date, the stage and the tree.</source>
        <translation>Tag, Stadium und Baum prüfen.</translation>
    </message>
    <message>
        <source>Check the date, the stage and the tree; until then the note counts for little in the fit.</source>
        <translation>Tag, Stadium und Baum prüfen; bis dahin zählt die Notiz beim Anlernen wenig.</translation>
    </message>
    <message>
        <source>Check the date.</source>
        <translation>Den Tag prüfen.</translation>
    </message>
    <message>
        <source>Check the dates, the stages and the tree of both notes.</source>
        <translation>Tage, Stadien und Baum beider Notizen prüfen.</translation>
    </message>
    <message>
        <source>Check the delimiter and the quotation marks.</source>
        <translation>Trennzeichen und Anführungszeichen prüfen.</translation>
    </message>
    <message>
        <source>Check the disk or the network share.</source>
        <translation>Die Platte oder die Netzfreigabe prüfen.</translation>
    </message>
    <message>
        <source>Check the licence before crossing.</source>
        <translation>Vor dem Kreuzen die Lizenz prüfen.</translation>
    </message>
    <message>
        <source>Check the name, or make a book with book-new.</source>
        <translation>Den Namen prüfen oder mit book-new ein Buch anlegen.</translation>
    </message>
    <message>
        <source>Check the number of its position, its place on the map, and the row&apos;s line.</source>
        <translation>Die Nummer der Position, die Lage auf der Karte und die Linie der Reihe prüfen.</translation>
    </message>
    <message>
        <source>Check the path.</source>
        <translation>Den Pfad prüfen.</translation>
    </message>
    <message>
        <source>Checking the book</source>
        <translation>Das Buch wird geprüft</translation>
    </message>
    <message>
        <source>Chill need</source>
        <translation>Kältebedarf</translation>
    </message>
    <message>
        <source>Choose a block, an accession or fewer labels.</source>
        <translation>Ein Quartier, eine Akzession oder weniger Bezeichnungen wählen.</translation>
    </message>
    <message>
        <source>Choose a station that measures temperature.</source>
        <translation>Eine Station wählen, die Temperatur misst.</translation>
    </message>
    <message>
        <source>Choose another name; a book is never overwritten.</source>
        <translation>Einen anderen Namen wählen; ein Buch wird nie überschrieben.</translation>
    </message>
    <message>
        <source>Choosing trees</source>
        <translation>Bäume werden ausgewählt</translation>
    </message>
    <message>
        <source>Clear it if it is not known, else fill it in.</source>
        <translation>Leeren, wenn es nicht bekannt ist, sonst ausfüllen.</translation>
    </message>
    <message>
        <source>Close it, or double it if it belongs to the text.</source>
        <translation>Schließen, oder verdoppeln, wenn es zum Text gehört.</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>Code of the cross.</source>
        <translation>Kürzel der Kreuzung.</translation>
    </message>
    <message>
        <source>Codes run from {} to {}, with gaps; the nearest are {} and {}.</source>
        <translation>Die Codes gehen von {} bis {}, mit Lücken; die nächsten sind {} und {}.</translation>
    </message>
    <message>
        <source>Codes run from {} to {}, with gaps; the nearest is {}.</source>
        <translation>Die Codes gehen von {} bis {}, mit Lücken; der nächste ist {}.</translation>
    </message>
    <message>
        <source>Cold to</source>
        <translation>Kälte bis</translation>
    </message>
    <message>
        <source>Columns: {}, minimum from &quot;{}&quot;, maximum from &quot;{}&quot;.</source>
        <translation>Spalten: {}, Minimum aus „{}“, Maximum aus „{}“.</translation>
    </message>
    <message>
        <source>Copy its rows into the table of a new book.</source>
        <translation>Die Zeilen in die Tabelle eines neuen Buchs kopieren.</translation>
    </message>
    <message>
        <source>Correct a position, or give the older tree its day of removal.</source>
        <translation>Eine Position berichtigen oder beim älteren Baum den Tag der Entfernung eintragen.</translation>
    </message>
    <message>
        <source>Correct it (there is: {}), or let add-block make it.</source>
        <translation>Berichtigen (vorhanden: {}) oder mit add-block anlegen lassen.</translation>
    </message>
    <message>
        <source>Correct it if selfing is not meant; most pome fruits set no seed by it.</source>
        <translation>Berichtigen, wenn keine Selbstung gemeint ist; die meisten Kernobstsorten setzen dabei keine Samen an.</translation>
    </message>
    <message>
        <source>Correct it if that is not meant.</source>
        <translation>Berichtigen, wenn es nicht so gemeint ist.</translation>
    </message>
    <message>
        <source>Correct it, or clear it if it is not known.</source>
        <translation>Berichtigen, oder leeren, wenn es nicht bekannt ist.</translation>
    </message>
    <message>
        <source>Correct it, or draw the block first.</source>
        <translation>Berichtigen oder zuerst das Quartier zeichnen.</translation>
    </message>
    <message>
        <source>Correct it, or leave the cell empty.</source>
        <translation>Berichtigen oder die Zelle leer lassen.</translation>
    </message>
    <message>
        <source>Correct it, or let add-block make it.</source>
        <translation>Berichtigen oder mit add-block anlegen lassen.</translation>
    </message>
    <message>
        <source>Correct it, or state the unit: the file was read in {}.</source>
        <translation>Berichtigen oder die Einheit angeben: Die Datei wurde in {} gelesen.</translation>
    </message>
    <message>
        <source>Correct it.</source>
        <translation>Berichtigen.</translation>
    </message>
    <message>
        <source>Correct one of the numbers.</source>
        <translation>Eine der Zahlen berichtigen.</translation>
    </message>
    <message>
        <source>Correct one of the two days.</source>
        <translation>Einen der beiden Tage berichtigen.</translation>
    </message>
    <message>
        <source>Correct one of the two numbers.</source>
        <translation>Eine der beiden Zahlen berichtigen.</translation>
    </message>
    <message>
        <source>Correct or clear one of these parents.</source>
        <translation>Einen dieser Eltern berichtigen oder leeren.</translation>
    </message>
    <message>
        <source>Correct or clear the wrong one of these parents.</source>
        <translation>Den falschen dieser Eltern berichtigen oder leeren.</translation>
    </message>
    <message>
        <source>Correct the alleles or the ploidy.</source>
        <translation>Die Allele oder die Ploidie berichtigen.</translation>
    </message>
    <message>
        <source>Correct the cross or the day, if one is wrong.</source>
        <translation>Die Kreuzung oder den Tag berichtigen, wenn eines davon falsch ist.</translation>
    </message>
    <message>
        <source>Correct the day if it is wrong.</source>
        <translation>Den Tag berichtigen, wenn er falsch ist.</translation>
    </message>
    <message>
        <source>Correct the day in the source.</source>
        <translation>Den Tag in der Quelle berichtigen.</translation>
    </message>
    <message>
        <source>Correct the day or remove it; temperatures are in degrees Celsius.</source>
        <translation>Den Tag berichtigen oder entfernen; Temperaturen sind in Grad Celsius.</translation>
    </message>
    <message>
        <source>Correct the day&apos;s two temperatures.</source>
        <translation>Die beiden Temperaturen des Tages berichtigen.</translation>
    </message>
    <message>
        <source>Correct the day, or mark it as a forecast.</source>
        <translation>Den Tag berichtigen oder als Vorhersage kennzeichnen.</translation>
    </message>
    <message>
        <source>Correct the day.</source>
        <translation>Den Tag berichtigen.</translation>
    </message>
    <message>
        <source>Correct the days, or mark them as a forecast.</source>
        <translation>Die Tage berichtigen oder als Vorhersage kennzeichnen.</translation>
    </message>
    <message>
        <source>Correct the lot or the cross.</source>
        <translation>Die Partie oder die Kreuzung berichtigen.</translation>
    </message>
    <message>
        <source>Correct the lot, or the day on which it was used up.</source>
        <translation>Die Partie berichtigen oder den Tag, an dem sie aufgebraucht war.</translation>
    </message>
    <message>
        <source>Correct the number if it has a digit too many.</source>
        <translation>Die Zahl berichtigen, wenn sie eine Ziffer zu viel hat.</translation>
    </message>
    <message>
        <source>Correct the number, the row&apos;s first position or its spacing, or draw the row longer.</source>
        <translation>Die Nummer, die erste Position der Reihe oder ihren Pflanzabstand berichtigen oder die Reihe länger zeichnen.</translation>
    </message>
    <message>
        <source>Correct the number.</source>
        <translation>Die Zahl berichtigen.</translation>
    </message>
    <message>
        <source>Correct the shares, or leave all of them out for equal parts.</source>
        <translation>Die Anteile berichtigen oder für gleiche Teile alle weglassen.</translation>
    </message>
    <message>
        <source>Correct the tree or the accession, or leave the accession out.</source>
        <translation>Den Baum oder die Akzession berichtigen oder die Akzession weglassen.</translation>
    </message>
    <message>
        <source>Correct the tree or the cross.</source>
        <translation>Den Baum oder die Kreuzung berichtigen.</translation>
    </message>
    <message>
        <source>Correct them; perhaps they are swapped.</source>
        <translation>Berichtigen; vielleicht sind sie vertauscht.</translation>
    </message>
    <message>
        <source>Count 100 or more, or remove the test.</source>
        <translation>100 oder mehr zählen oder die Prüfung entfernen.</translation>
    </message>
    <message>
        <source>Count again, or note the fruit first.</source>
        <translation>Neu zählen oder zuerst die Früchte notieren.</translation>
    </message>
    <message>
        <source>Count again.</source>
        <translation>Neu zählen.</translation>
    </message>
    <message>
        <source>Count all that ever sprouted, and one count a day.</source>
        <translation>Alle zählen, die bisher gekeimt sind, mit einer Zählung je Tag.</translation>
    </message>
    <message>
        <source>Count each row from its first tree with begin first_tree, or lay the rows with row-lay first.</source>
        <translation>Mit begin first_tree jede Reihe von ihrem ersten Baum an zählen oder zuerst die Reihen mit row-lay anlegen.</translation>
    </message>
    <message>
        <source>Counted on</source>
        <translation>Gezählt am</translation>
    </message>
    <message>
        <source>Counting chill and heat</source>
        <translation>Kälte und Wärme werden gezählt</translation>
    </message>
    <message>
        <source>Cross goals</source>
        <translation>Kreuzungsziele</translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation>Kreuzungen</translation>
    </message>
    <message>
        <source>Crosses wanted in {}</source>
        <translation>Für {} gewünschte Kreuzungen</translation>
    </message>
    <message>
        <source>Cut a branch of {}, to force indoors</source>
        <translation>Einen Zweig von {} schneiden, zum Treiben im Warmen</translation>
    </message>
    <message>
        <source>Cut branches from {} to {} and force them in water at about 20 C: about {} to open anthers, then {} of drying. Gives pollen in about {} of cases.</source>
        <translation>Zweige von {} bis {} schneiden und bei etwa 20 °C in Wasser treiben: etwa {} bis zum Öffnen der Staubbeutel, dann {} zum Trocknen. Gibt in etwa {} der Fälle Pollen.</translation>
    </message>
    <message>
        <source>Cut branches with as many flower buds; re-cut stems and change the water every two days.</source>
        <translation>Zweige mit ebenso vielen Blütenknospen schneiden; alle zwei Tage neu anschneiden und das Wasser wechseln.</translation>
    </message>
    <message>
        <source>Daily weather</source>
        <translation>Tageswetter</translation>
    </message>
    <message>
        <source>Dashed box: no notes of its own, borrowed from its parents or the orchard&apos;s mean.</source>
        <translation>Gestrichelter Kasten: keine eigenen Notizen, von den Eltern oder dem Mittel des Obstgartens übernommen.</translation>
    </message>
    <message>
        <source>Day of picking.</source>
        <translation>Tag der Ernte.</translation>
    </message>
    <message>
        <source>Day of the count.</source>
        <translation>Tag der Zählung.</translation>
    </message>
    <message>
        <source>Day of the look.</source>
        <translation>Tag der Beobachtung.</translation>
    </message>
    <message>
        <source>Day of the score.</source>
        <translation>Tag der Bewertung.</translation>
    </message>
    <message>
        <source>Day of the test.</source>
        <translation>Tag der Prüfung.</translation>
    </message>
    <message>
        <source>Day of the work.</source>
        <translation>Tag der Arbeit.</translation>
    </message>
    <message>
        <source>Day on which the flowers were gathered.</source>
        <translation>Tag, an dem die Blüten gesammelt wurden.</translation>
    </message>
    <message>
        <source>Day on which they left.</source>
        <translation>Tag, an dem sie entnommen wurden.</translation>
    </message>
    <message>
        <source>Days are written {}, {}.</source>
        <translation>Tage sind geschrieben als {}, {}.</translation>
    </message>
    <message>
        <source>Days of {} are a guide by the order of bloom of {}.</source>
        <translation>Tage für {} sind ein Anhalt nach der Blühfolge von {}.</translation>
    </message>
    <message>
        <source>Dec</source>
        <translation>Dez</translation>
    </message>
    <message>
        <source>Did you mean &quot;{}&quot;?</source>
        <translation>War „{}“ gemeint?</translation>
    </message>
    <message>
        <source>Did you mean &apos;{}&apos;?</source>
        <translation>War „{}“ gemeint?</translation>
    </message>
    <message>
        <source>Digitise the trees in a GIS, or copy a layer that you have into the table.</source>
        <translation>Die Bäume in einem GIS digitalisieren oder einen vorhandenen Layer in die Tabelle kopieren.</translation>
    </message>
    <message>
        <source>Distances are unknown: the trees have no coordinate system of the earth.</source>
        <translation>Abstände sind unbekannt: Die Bäume haben kein Koordinatenbezugssystem der Erde.</translation>
    </message>
    <message>
        <source>Do now</source>
        <translation>Jetzt zu tun</translation>
    </message>
    <message>
        <source>Does a tree stand at the next place of this row to the {}?</source>
        <translation>Steht am nächsten Platz dieser Reihe, {} von hier, ein Baum?</translation>
    </message>
    <message>
        <source>Does a tree stand here?</source>
        <translation>Steht hier ein Baum?</translation>
    </message>
    <message>
        <source>Does the label read {}?</source>
        <translation>Steht auf dem Etikett {}?</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>Done: {}</source>
        <translation>Erledigt: {}</translation>
    </message>
    <message>
        <source>Draw it anew.</source>
        <translation>Neu zeichnen.</translation>
    </message>
    <message>
        <source>Draw it longer, or take fewer positions, a shorter spacing or a smaller headland.</source>
        <translation>Länger zeichnen oder weniger Positionen, einen kleineren Pflanzabstand oder ein kleineres Vorgewende nehmen.</translation>
    </message>
    <message>
        <source>Draw it on the map.</source>
        <translation>Auf der Karte zeichnen.</translation>
    </message>
    <message>
        <source>Draw the row or correct its name.</source>
        <translation>Die Reihe zeichnen oder ihren Namen berichtigen.</translation>
    </message>
    <message>
        <source>Dressing its layers</source>
        <translation>Layer werden gestaltet</translation>
    </message>
    <message>
        <source>Dressing the book</source>
        <translation>Das Buch wird gestaltet</translation>
    </message>
    <message>
        <source>Dried pollen of {} comes about {} after the last flower of {} that can take it ({}).</source>
        <translation>Getrockneter Pollen von {} kommt etwa {} nach der letzten Blüte von {}, die ihn annehmen kann ({}).</translation>
    </message>
    <message>
        <source>Dry a day or two and use within three days.</source>
        <translation>Ein bis zwei Tage trocknen und innerhalb von drei Tagen verwenden.</translation>
    </message>
    <message>
        <source>Dry a day or two, keep in {} until {}, for {}.</source>
        <translation>Ein bis zwei Tage trocknen, {} bis {} aufbewahren, für {}.</translation>
    </message>
    <message>
        <source>Dry a day or two, keep in {} until {}.</source>
        <translation>Ein bis zwei Tage trocknen, {} bis {} aufbewahren.</translation>
    </message>
    <message>
        <source>East and north are exchanged: the other way round it lies among the book&apos;s places.</source>
        <translation>Ost und Nord sind vertauscht: Anders herum liegt die Stelle zwischen den Orten des Buchs.</translation>
    </message>
    <message>
        <source>Elevation</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Enter its tree, or correct the name.</source>
        <translation>Den Baum eintragen oder den Namen berichtigen.</translation>
    </message>
    <message>
        <source>Every S-allele of {} ({}) stands in {} ({}) too: expect no seed. Choose another donor.</source>
        <translation>Jedes S-Allel von {} ({}) steht auch in {} ({}): Keine Samen zu erwarten. Einen anderen Pollenspender wählen.</translation>
    </message>
    <message>
        <source>Every day of the file can be read with the day first and with the month first.</source>
        <translation>Jeder Tag der Datei lässt sich mit dem Tag zuerst und mit dem Monat zuerst lesen.</translation>
    </message>
    <message>
        <source>Feb</source>
        <translation>Feb</translation>
    </message>
    <message>
        <source>Fetch it from a backup, or remove it and make a book with book-new.</source>
        <translation>Aus einer Sicherung holen, oder entfernen und mit book-new ein Buch anlegen.</translation>
    </message>
    <message>
        <source>Fetch the file again.</source>
        <translation>Die Datei erneut holen.</translation>
    </message>
    <message>
        <source>Fill in its accession.</source>
        <translation>Die Akzession eintragen.</translation>
    </message>
    <message>
        <source>Fill in one of them.</source>
        <translation>Eines davon ausfüllen.</translation>
    </message>
    <message>
        <source>Fill it in, or fetch its rows from a backup.</source>
        <translation>Ausfüllen oder die Zeilen aus einer Sicherung holen.</translation>
    </message>
    <message>
        <source>Fill it in.</source>
        <translation>Ausfüllen.</translation>
    </message>
    <message>
        <source>Fire blight.</source>
        <translation>Feuerbrand.</translation>
    </message>
    <message>
        <source>First and end</source>
        <translation>Beginn und Ende</translation>
    </message>
    <message>
        <source>First bloom</source>
        <translation>Erste Blüten</translation>
    </message>
    <message>
        <source>First flowers may be open since {}: bag only clusters that are still closed.</source>
        <translation>Erste Blüten können seit {} offen sein: Nur Büschel eintüten, die noch geschlossen sind.</translation>
    </message>
    <message>
        <source>Fitting the needs</source>
        <translation>Der Bedarf wird ermittelt</translation>
    </message>
    <message>
        <source>Flowers of {} that can take pollen are over since about {}.</source>
        <translation>Blüten von {}, die Pollen annehmen können, sind seit etwa {} vorbei.</translation>
    </message>
    <message>
        <source>Flowers take pollen from about {} to {}: median days, too uncertain yet for a safe one.</source>
        <translation>Blüten nehmen etwa von {} bis {} Pollen an: mittlere Tage, noch zu unsicher für einen sicheren.</translation>
    </message>
    <message>
        <source>Flowers take pollen from about {}; after {} the risk of coming too late is above {}.</source>
        <translation>Blüten nehmen etwa ab {} Pollen an; nach {} liegt das Risiko, zu spät zu kommen, über {}.</translation>
    </message>
    <message>
        <source>Foretelling past seasons</source>
        <translation>Vergangene Saisons werden vorhergesagt</translation>
    </message>
    <message>
        <source>Foretelling this season</source>
        <translation>Diese Saison wird vorhergesagt</translation>
    </message>
    <message>
        <source>Foretold 1 day before bloom, it foretold past seasons within 3 days in {} and within 5 days in {}; it missed by {:.1f} days on average.</source>
        <translation>1 Tag vor der Blüte vorhergesagt, wurden vergangene Saisons in {} Fällen auf 3 Tage und in {} Fällen auf 5 Tage getroffen; im Mittel lag die Vorhersage {} Tage daneben.</translation>
    </message>
    <message>
        <source>Foretold {} days before bloom, it foretold past seasons within 3 days in {} and within 5 days in {}; it missed by {:.1f} days on average.</source>
        <translation>{} Tage vor der Blüte vorhergesagt, wurden vergangene Saisons in {} Fällen auf 3 Tage und in {} Fällen auf 5 Tage getroffen; im Mittel lag die Vorhersage {} Tage daneben.</translation>
    </message>
    <message>
        <source>Fresh pollen of {} ends about {} before the first flower of {} can take it ({}): it must be kept.</source>
        <translation>Frischer Pollen von {} endet etwa {}, bevor die erste Blüte von {} ihn annehmen kann ({}): Er muss gelagert werden.</translation>
    </message>
    <message>
        <source>Fresh pollen of {} is on hand about {} to {}; {} takes it about {} to {}.</source>
        <translation>Frischer Pollen von {} ist etwa von {} bis {} vorhanden; {} nimmt ihn etwa von {} bis {} an.</translation>
    </message>
    <message>
        <source>Fri</source>
        <translation>Fr</translation>
    </message>
    <message>
        <source>From its own notes. Box: full bloom falls in it 8 times in 10; tick: its median; thin line: first bloom to end of bloom, medians.</source>
        <translation>Nach eigenen Notizen. Kasten: Die Vollblüte fällt in 8 von 10 Fällen hinein; Strich: ihr Median; dünne Linie: erste Blüten bis Ende der Blüte, Mediane.</translation>
    </message>
    <message>
        <source>From {} to {} at {}: {:.1f} chill portions, {:.0f} growing degree hours.</source>
        <translation>Von {} bis {} an {}: {} Kälteportionen, {} Wachstumsgradstunden.</translation>
    </message>
    <message>
        <source>Fruit</source>
        <translation>Frucht</translation>
    </message>
    <message>
        <source>Full bloom</source>
        <translation>Vollblüte</translation>
    </message>
    <message>
        <source>Full bloom is past by the model (since {}) but no note of this spring says so.</source>
        <translation>Nach dem Modell ist die Vollblüte vorbei (seit {}), aber keine Notiz dieses Frühjahrs sagt es.</translation>
    </message>
    <message>
        <source>GHCN-Daily in its long form: elements TMIN and TMAX in tenths of a degree Celsius, as that form has it. Station in the file: {}.</source>
        <translation>GHCN-Daily in der langen Form: Elemente TMIN und TMAX in Zehntelgrad Celsius, wie es diese Form vorsieht. Station in der Datei: {}.</translation>
    </message>
    <message>
        <source>Gather at balloon by {}, dry a day or two, keep in {} until {}: about {} should germinate then.</source>
        <translation>Im Ballonstadium bis {} sammeln, ein bis zwei Tage trocknen, {} bis {} aufbewahren: Dann sollten etwa {} keimen.</translation>
    </message>
    <message>
        <source>Gather at balloon by {}, dry a day or two, use within {} of gathering.</source>
        <translation>Im Ballonstadium bis {} sammeln, ein bis zwei Tage trocknen, höchstens {} nach dem Sammeln verwenden.</translation>
    </message>
    <message>
        <source>Gather balloon flowers of {}</source>
        <translation>Blüten im Ballonstadium sammeln von {}</translation>
    </message>
    <message>
        <source>Gather pollen</source>
        <translation>Pollen sammeln</translation>
    </message>
    <message>
        <source>Gather pollen of {} by {} this spring and freeze it: the cross can then be made next year.</source>
        <translation>Pollen von {} in diesem Frühjahr bis {} sammeln und einfrieren: Dann ist die Kreuzung im nächsten Jahr möglich.</translation>
    </message>
    <message>
        <source>Gather this spring by {}, dry a day or two, freeze: about {} should germinate in {}.</source>
        <translation>In diesem Frühjahr bis {} sammeln, ein bis zwei Tage trocknen, einfrieren: Etwa {} sollten {} keimen.</translation>
    </message>
    <message>
        <source>Gathered on</source>
        <translation>Gesammelt am</translation>
    </message>
    <message>
        <source>Gathering names</source>
        <translation>Namen werden gesammelt</translation>
    </message>
    <message>
        <source>Give 24 hourly readings for each day.</source>
        <translation>Für jeden Tag 24 Stundenwerte angeben.</translation>
    </message>
    <message>
        <source>Give a base below the upper threshold.</source>
        <translation>Eine Basistemperatur unter der Kappung angeben.</translation>
    </message>
    <message>
        <source>Give a first row that ends in a number, as in 1 or B01.</source>
        <translation>Eine erste Reihe angeben, die auf eine Zahl endet, wie in 1 oder B01.</translation>
    </message>
    <message>
        <source>Give a header line and one line a day.</source>
        <translation>Eine Kopfzeile und eine Zeile je Tag angeben.</translation>
    </message>
    <message>
        <source>Give a higher upper-c.</source>
        <translation>Ein höheres upper-c angeben.</translation>
    </message>
    <message>
        <source>Give a last day that is not before the first.</source>
        <translation>Einen letzten Tag angeben, der nicht vor dem ersten liegt.</translation>
    </message>
    <message>
        <source>Give a place in the orchard or at its gate.</source>
        <translation>Einen Ort im Obstgarten oder an seinem Tor angeben.</translation>
    </message>
    <message>
        <source>Give a scrap of the tree&apos;s record, or a place with at.</source>
        <translation>Ein Bruchstück der Daten des Baums oder mit at einen Ort angeben.</translation>
    </message>
    <message>
        <source>Give an earlier day, or one from the start of the next season on.</source>
        <translation>Einen früheren Tag angeben oder einen ab dem Beginn der nächsten Saison.</translation>
    </message>
    <message>
        <source>Give another name; rows that are there are never overwritten.</source>
        <translation>Einen anderen Namen angeben; vorhandene Reihen werden nie überschrieben.</translation>
    </message>
    <message>
        <source>Give each day&apos;s minimum and maximum, one line a day.</source>
        <translation>Das Minimum und Maximum jedes Tages angeben, eine Zeile je Tag.</translation>
    </message>
    <message>
        <source>Give each row a name of its own within its block.</source>
        <translation>Jeder Reihe innerhalb ihres Quartiers einen eigenen Namen geben.</translation>
    </message>
    <message>
        <source>Give either here, as in 48.1340,9.3010, or grid, as in 522341.5,5331497.</source>
        <translation>Entweder here angeben, wie in 48.1340,9.3010, oder grid, wie in 522341.5,5331497.</translation>
    </message>
    <message>
        <source>Give from as well, or a later to.</source>
        <translation>Auch from angeben oder ein späteres to.</translation>
    </message>
    <message>
        <source>Give it a name like orchard.gpkg.</source>
        <translation>Einen Namen wie obstgarten.gpkg geben.</translation>
    </message>
    <message>
        <source>Give it a point: its latitude tells the length of the day.</source>
        <translation>Einen Punkt geben: Seine Breite sagt, wie lang der Tag ist.</translation>
    </message>
    <message>
        <source>Give it another name: each must be one row&apos;s alone.</source>
        <translation>Einen anderen Namen geben: Jeder darf nur einer Zeile gehören.</translation>
    </message>
    <message>
        <source>Give it one, for instance EPSG:32632.</source>
        <translation>Eines geben, zum Beispiel EPSG:32632.</translation>
    </message>
    <message>
        <source>Give its points in the order in which one passes them.</source>
        <translation>Die Punkte in der Reihenfolge angeben, in der man an ihnen vorbeikommt.</translation>
    </message>
    <message>
        <source>Give labels with trees, or choose by of-accession, of-block, purpose, tasks-on or urgency.</source>
        <translation>Mit trees Bezeichnungen angeben oder nach of-accession, of-block, purpose, tasks-on oder urgency wählen.</translation>
    </message>
    <message>
        <source>Give latitude and longitude in degrees, as in 48.1340,9.3010.</source>
        <translation>Breite und Länge in Grad angeben, wie in 48.1340,9.3010.</translation>
    </message>
    <message>
        <source>Give latitude and longitude instead, or draw the tree.</source>
        <translation>Stattdessen Breite und Länge angeben oder den Baum zeichnen.</translation>
    </message>
    <message>
        <source>Give one by its EPSG number, as in EPSG:4326.</source>
        <translation>Eines mit seiner EPSG-Nummer angeben, wie in EPSG:4326.</translation>
    </message>
    <message>
        <source>Give one by its EPSG number, for instance EPSG:32632.</source>
        <translation>Eines mit seiner EPSG-Nummer angeben, zum Beispiel EPSG:32632.</translation>
    </message>
    <message>
        <source>Give one cell for each column.</source>
        <translation>Für jede Spalte eine Zelle angeben.</translation>
    </message>
    <message>
        <source>Give one line, or leave rows out to lay each line as a row.</source>
        <translation>Eine Linie angeben, oder rows weglassen, um jede Linie als Reihe anzulegen.</translation>
    </message>
    <message>
        <source>Give one of the two.</source>
        <translation>Eines von beiden angeben.</translation>
    </message>
    <message>
        <source>Give the accession that was seen in bloom; the note is not used.</source>
        <translation>Die Akzession angeben, deren Blüte gesehen wurde; die Notiz wird nicht verwendet.</translation>
    </message>
    <message>
        <source>Give the days of one station only.</source>
        <translation>Nur die Tage einer Station angeben.</translation>
    </message>
    <message>
        <source>Give the distance from row to row in metres.</source>
        <translation>Den Abstand von Reihe zu Reihe in Metern angeben.</translation>
    </message>
    <message>
        <source>Give the east (longitude, x) first, then the north (latitude, y).</source>
        <translation>Erst nach Osten (Länge, x), dann nach Norden (Breite, y) angeben.</translation>
    </message>
    <message>
        <source>Give the geometry as well-known text of that kind.</source>
        <translation>Die Geometrie als Well-known Text dieser Art angeben.</translation>
    </message>
    <message>
        <source>Give the layer its coordinate system and put the station where it stands.</source>
        <translation>Dem Layer sein Koordinatenbezugssystem geben und die Station dorthin setzen, wo sie steht.</translation>
    </message>
    <message>
        <source>Give the layer its coordinate system.</source>
        <translation>Dem Layer sein Koordinatenbezugssystem geben.</translation>
    </message>
    <message>
        <source>Give the rough bearing of the rows.</source>
        <translation>Die ungefähre Richtung der Reihen angeben.</translation>
    </message>
    <message>
        <source>Give the row distance and the bearing, number one block at a time, or lay its rows with row-lay first.</source>
        <translation>Reihenabstand und Richtung angeben, ein Quartier nach dem anderen nummerieren oder zuerst mit row-lay seine Reihen anlegen.</translation>
    </message>
    <message>
        <source>Give the row&apos;s points, or a layer file with lines or points.</source>
        <translation>Die Punkte der Reihe oder eine Ebenendatei mit Linien oder Punkten angeben.</translation>
    </message>
    <message>
        <source>Give the spacing, measure the trees more exactly, or lay the rows with row-lay first.</source>
        <translation>Den Pflanzabstand angeben, die Bäume genauer einmessen oder zuerst die Reihen mit row-lay anlegen.</translation>
    </message>
    <message>
        <source>Give the start.</source>
        <translation>Den Start angeben.</translation>
    </message>
    <message>
        <source>Give two or more points that are not at the same place.</source>
        <translation>Zwei oder mehr Punkte angeben, die nicht am selben Ort liegen.</translation>
    </message>
    <message>
        <source>Give x and y in the book&apos;s own system, {}: first to the east, then to the north.</source>
        <translation>x und y im System des Buchs, {}, angeben: erst nach Osten, dann nach Norden.</translation>
    </message>
    <message>
        <source>Give x and y with a comma between, as in 522341.5,5331497.</source>
        <translation>x und y mit einem Komma dazwischen angeben, wie in 522341.5,5331497.</translation>
    </message>
    <message>
        <source>Give {}.</source>
        <translation>Anzugeben ist {}.</translation>
    </message>
    <message>
        <source>Grains counted.</source>
        <translation>Gezählte Körner.</translation>
    </message>
    <message>
        <source>Grains with a tube.</source>
        <translation>Körner mit Pollenschlauch.</translation>
    </message>
    <message>
        <source>Growth stage on the BBCH scale.</source>
        <translation>Entwicklungsstadium nach der BBCH-Skala.</translation>
    </message>
    <message>
        <source>Half compatible: the style takes {} of the pollen, so bring more.</source>
        <translation>Halb verträglich: Der Griffel nimmt {} des Pollens an, also mehr davon mitbringen.</translation>
    </message>
    <message>
        <source>Half of the highest temperatures lie above this, which no place on earth has in degrees Celsius: they look like {}.</source>
        <translation>Die Hälfte der Höchsttemperaturen liegt über diesem Wert, den in Grad Celsius kein Ort der Erde hat: Sie sehen aus wie {}.</translation>
    </message>
    <message>
        <source>Height of the station above sea level.</source>
        <translation>Höhe der Station über dem Meeresspiegel.</translation>
    </message>
    <message>
        <source>Held against the block&apos;s rows in the book; the points lie about {:.2f} m off across and {:.2f} m along.</source>
        <translation>Verglichen mit den Reihen des Quartiers im Buch; die Punkte liegen etwa {} m quer und {} m längs daneben.</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>Höchste</translation>
    </message>
    <message>
        <source>Highest air temperature of the day.</source>
        <translation>Höchste Lufttemperatur des Tages.</translation>
    </message>
    <message>
        <source>How it is known</source>
        <translation>Woher es bekannt ist</translation>
    </message>
    <message>
        <source>How many seedlings shall stand at the end.</source>
        <translation>Wie viele Sämlinge am Ende stehen sollen.</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Wie viel</translation>
    </message>
    <message>
        <source>How sure</source>
        <translation>Wie sicher</translation>
    </message>
    <message>
        <source>How sure is this</source>
        <translation>Wie sicher ist das</translation>
    </message>
    <message>
        <source>How well the forecast did in past seasons was not measured for this sheet.</source>
        <translation>Wie gut die Vorhersage in vergangenen Saisons war, wurde für dieses Blatt nicht gemessen.</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>If it is damaged, fetch it from a backup.</source>
        <translation>Wenn sie beschädigt ist, aus einer Sicherung holen.</translation>
    </message>
    <message>
        <source>If the file is damaged, fetch it from a backup.</source>
        <translation>Wenn die Datei beschädigt ist, aus einer Sicherung holen.</translation>
    </message>
    <message>
        <source>If they mean the same, write both alike; else make them more different.</source>
        <translation>Wenn sie dasselbe meinen, beide gleich schreiben; sonst unterscheidbarer machen.</translation>
    </message>
    <message>
        <source>Import daily temperatures with weather-import.</source>
        <translation>Tägliche Temperaturen mit weather-import importieren.</translation>
    </message>
    <message>
        <source>Import the latest temperatures of this station.</source>
        <translation>Die neuesten Temperaturen dieser Station importieren.</translation>
    </message>
    <message>
        <source>Import the missing days of this station if they exist.</source>
        <translation>Die fehlenden Tage dieser Station importieren, wenn es sie gibt.</translation>
    </message>
    <message>
        <source>Import the missing days of this station.</source>
        <translation>Die fehlenden Tage dieser Station importieren.</translation>
    </message>
    <message>
        <source>Import the missing days, or choose from and to on one side of it.</source>
        <translation>Die fehlenden Tage importieren oder from und to auf einer Seite davon wählen.</translation>
    </message>
    <message>
        <source>Import the missing days; a season with gaps counts for less or not at all.</source>
        <translation>Die fehlenden Tage importieren; eine Saison mit Lücken zählt weniger oder gar nicht.</translation>
    </message>
    <message>
        <source>Import the station&apos;s temperatures from {} on with weather-import, or give an as-of within the days that the book has.</source>
        <translation>Die Temperaturen der Station ab {} mit weather-import importieren oder einen Stand (as-of) innerhalb der Tage des Buchs angeben.</translation>
    </message>
    <message>
        <source>Import the weather of that winter and spring.</source>
        <translation>Das Wetter jenes Winters und Frühjahrs importieren.</translation>
    </message>
    <message>
        <source>Import the weather of those winters and springs.</source>
        <translation>Das Wetter jener Winter und Frühjahre importieren.</translation>
    </message>
    <message>
        <source>Import them again as degrees Fahrenheit.</source>
        <translation>Erneut als Grad Fahrenheit importieren.</translation>
    </message>
    <message>
        <source>Import them again in their unit, or turn them into degrees Celsius first.</source>
        <translation>Erneut in ihrer Einheit importieren oder zuerst in Grad Celsius umrechnen.</translation>
    </message>
    <message>
        <source>Import them again; perhaps the two columns are swapped.</source>
        <translation>Erneut importieren; vielleicht sind die beiden Spalten vertauscht.</translation>
    </message>
    <message>
        <source>Import them with weather-import.</source>
        <translation>Mit weather-import importieren.</translation>
    </message>
    <message>
        <source>In {} of the springs reckoned it is too cold to set seed.</source>
        <translation>In {} der gerechneten Frühjahre ist es zu kalt für Samenansatz.</translation>
    </message>
    <message>
        <source>Is the next tree of this row to the {} {}?</source>
        <translation>Ist der nächste Baum dieser Reihe, {} von hier, {}?</translation>
    </message>
    <message>
        <source>Is there another row beside this one to the {}?</source>
        <translation>Liegt {} neben dieser Reihe noch eine Reihe?</translation>
    </message>
    <message>
        <source>Is there no tree after this one to the {} end of the row?</source>
        <translation>Steht nach diesem Baum bis zum Ende der Reihe ({}) keiner mehr?</translation>
    </message>
    <message>
        <source>Is this tree {}?</source>
        <translation>Ist dieser Baum {}?</translation>
    </message>
    <message>
        <source>It differs from &quot;{}&quot; only by capitals or spaces.</source>
        <translation>Es unterscheidet sich von „{}“ nur durch Großbuchstaben oder Leerzeichen.</translation>
    </message>
    <message>
        <source>It grows fastest near 27 °C. Keep out of wet trees in warm bloom; wipe brush and scissors from tree to tree.</source>
        <translation>Er wächst am schnellsten nahe 27 °C. Bei warmer Blüte nasse Bäume meiden; Pinsel und Schere von Baum zu Baum abwischen.</translation>
    </message>
    <message>
        <source>It has a coordinate that is no finite number.</source>
        <translation>Eine Koordinate ist keine endliche Zahl.</translation>
    </message>
    <message>
        <source>It has no place on the map to be numbered by.</source>
        <translation>Er hat keine Lage auf der Karte, nach der er zu nummerieren wäre.</translation>
    </message>
    <message>
        <source>It has no place on the map, or one that cannot be read.</source>
        <translation>Es fehlt die Lage auf der Karte, oder sie ist nicht lesbar.</translation>
    </message>
    <message>
        <source>It has no place on the map.</source>
        <translation>Es fehlt die Lage auf der Karte.</translation>
    </message>
    <message>
        <source>It has: {}.</source>
        <translation>Es gibt: {}.</translation>
    </message>
    <message>
        <source>It is neither a point nor a line but {}.</source>
        <translation>Es ist weder ein Punkt noch eine Linie, sondern {}.</translation>
    </message>
    <message>
        <source>It is not known what this tree is, so its bloom cannot be foreseen.</source>
        <translation>Es ist nicht bekannt, was dieser Baum ist, daher lässt sich seine Blüte nicht vorhersehen.</translation>
    </message>
    <message>
        <source>It lies {:.0f} km from everything else in the book.</source>
        <translation>Es liegt {} km von allem anderen im Buch entfernt.</translation>
    </message>
    <message>
        <source>It remembers none.</source>
        <translation>Es merkt sich keine.</translation>
    </message>
    <message>
        <source>It serves {} of {} flowers; the rest by the way &quot;{}&quot;.</source>
        <translation>Sie reicht für {} von {} Blüten; die übrigen auf dem Weg „{}“.</translation>
    </message>
    <message>
        <source>It serves {} of {} flowers; the rest cannot be had by another way.</source>
        <translation>Sie reicht für {} von {} Blüten; für die übrigen gibt es keinen anderen Weg.</translation>
    </message>
    <message>
        <source>It was changed since it was written and is taken for yours; it was left alone.</source>
        <translation>Er wurde geändert, seit er geschrieben wurde, und gilt als eigener; er blieb unberührt.</translation>
    </message>
    <message>
        <source>It was left out.</source>
        <translation>Es wurde weggelassen.</translation>
    </message>
    <message>
        <source>Its 8-in-10 box held the day in {} (80 would be exact).</source>
        <translation>Sein Kasten „8 von 10“ enthielt den Tag in {} Fällen (80 wären genau richtig).</translation>
    </message>
    <message>
        <source>Its columns are: {}.</source>
        <translation>Vorhandene Spalten: {}.</translation>
    </message>
    <message>
        <source>Its number is left open: {}.</source>
        <translation>Die Nummer bleibt offen: {}.</translation>
    </message>
    <message>
        <source>Jan</source>
        <translation>Jan</translation>
    </message>
    <message>
        <source>Jul</source>
        <translation>Jul</translation>
    </message>
    <message>
        <source>Jun</source>
        <translation>Jun</translation>
    </message>
    <message>
        <source>Keep in</source>
        <translation>Lagern</translation>
    </message>
    <message>
        <source>Keep one of the two.</source>
        <translation>Eines der beiden behalten.</translation>
    </message>
    <message>
        <source>Keep the right one of the two, or name the column that tells the stations apart (option station_column).</source>
        <translation>Das richtige der beiden behalten oder die Spalte nennen, die die Stationen unterscheidet (Option station_column).</translation>
    </message>
    <message>
        <source>Keep the right one of the two.</source>
        <translation>Das richtige der beiden behalten.</translation>
    </message>
    <message>
        <source>Keep the rows in a table of this name.</source>
        <translation>Die Zeilen in einer Tabelle dieses Namens führen.</translation>
    </message>
    <message>
        <source>Keep the seed of each cross in a lot of its own.</source>
        <translation>Die Samen jeder Kreuzung in einer eigenen Partie halten.</translation>
    </message>
    <message>
        <source>Kelvin must be turned into degrees Celsius first.</source>
        <translation>Kelvin muss zuerst in Grad Celsius umgerechnet werden.</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Ladders.</source>
        <translation>Leitern.</translation>
    </message>
    <message>
        <source>Last safe day has passed</source>
        <translation>Letzter sicherer Tag ist vorbei</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>Latitude and longitude are exchanged: the other way round it lies among the book&apos;s places.</source>
        <translation>Breite und Länge sind vertauscht: Anders herum liegt die Stelle zwischen den Orten des Buchs.</translation>
    </message>
    <message>
        <source>Laying the rows</source>
        <translation>Reihen werden angelegt</translation>
    </message>
    <message>
        <source>Leave out either end or back.</source>
        <translation>Entweder end oder back weglassen.</translation>
    </message>
    <message>
        <source>Leave station_in_file out, or name the column with the option station_column.</source>
        <translation>station_in_file weglassen oder mit der Option station_column die Spalte nennen.</translation>
    </message>
    <message>
        <source>Leave the file and the points out, or set it to no.</source>
        <translation>Die Datei und die Punkte weglassen oder auf Nein setzen.</translation>
    </message>
    <message>
        <source>Leave the fruit in store until its pips are brown, or correct the day.</source>
        <translation>Die Früchte lagern, bis die Kerne braun sind, oder den Tag berichtigen.</translation>
    </message>
    <message>
        <source>Left open</source>
        <translation>Offen gelassen</translation>
    </message>
    <message>
        <source>Line {} can only have the day first and line {} only the month first.</source>
        <translation>In Zeile {} kann nur der Tag vorn stehen, in Zeile {} nur der Monat.</translation>
    </message>
    <message>
        <source>Look again, and take back the one that is wrong.</source>
        <translation>Noch einmal nachsehen und die falsche Notiz zurücknehmen.</translation>
    </message>
    <message>
        <source>Look at it in a GIS and remove it there, if it is wrong.</source>
        <translation>Im GIS ansehen und dort entfernen, wenn sie falsch ist.</translation>
    </message>
    <message>
        <source>Look at it in the field and fill in its row and position, or measure it anew.</source>
        <translation>Im Feld nachsehen und Reihe und Position eintragen oder den Baum neu einmessen.</translation>
    </message>
    <message>
        <source>Look for it with tree-find.</source>
        <translation>Mit tree-find danach suchen.</translation>
    </message>
    <message>
        <source>Looking</source>
        <translation>Suche läuft</translation>
    </message>
    <message>
        <source>Lot {} has no test since {}: sow 100 grains or more and count.</source>
        <translation>Partie {} ist seit {} nicht geprüft: 100 oder mehr Körner aussäen und zählen.</translation>
    </message>
    <message>
        <source>Lot {} has no test: sow 100 grains or more and count.</source>
        <translation>Partie {} ist nicht geprüft: 100 oder mehr Körner aussäen und zählen.</translation>
    </message>
    <message>
        <source>Lot {}, gathered {}, in {}: about {} should germinate on {} (never tested).</source>
        <translation>Partie {}, gesammelt {}, gelagert {}: Etwa {} sollten am {} keimen (nie geprüft).</translation>
    </message>
    <message>
        <source>Lot {}, gathered {}, in {}: about {} should germinate on {} (tested {}).</source>
        <translation>Partie {}, gesammelt {}, gelagert {}: Etwa {} sollten am {} keimen (geprüft {}).</translation>
    </message>
    <message>
        <source>Lowest</source>
        <translation>Tiefste</translation>
    </message>
    <message>
        <source>Lowest air temperature of the day.</source>
        <translation>Tiefste Lufttemperatur des Tages.</translation>
    </message>
    <message>
        <source>Made the empty book {} in {}. Fill in its trees, accessions, station and bloom notes in any GIS, then import the weather.</source>
        <translation>Das leere Buch {} wurde in {} angelegt. Jetzt in einem GIS Bäume, Akzessionen, Station und Blühnotizen eintragen, dann das Wetter importieren.</translation>
    </message>
    <message>
        <source>Make a book with book-new and copy these layers into its tables.</source>
        <translation>Mit book-new ein Buch anlegen und diese Layer in seine Tabellen kopieren.</translation>
    </message>
    <message>
        <source>Make a book with book-new.</source>
        <translation>Mit book-new ein Buch anlegen.</translation>
    </message>
    <message>
        <source>Make a new book with book-new and copy the tables into it.</source>
        <translation>Mit book-new ein neues Buch anlegen und die Tabellen hineinkopieren.</translation>
    </message>
    <message>
        <source>Make one with season-plan, then ask again.</source>
        <translation>Mit season-plan einen erstellen, dann erneut fragen.</translation>
    </message>
    <message>
        <source>Make the file and its folder writable, or copy the file together with its &quot;-journal&quot; or &quot;-wal&quot; to a folder that is.</source>
        <translation>Die Datei und ihren Ordner beschreibbar machen oder die Datei zusammen mit ihrem „-journal“ oder „-wal“ in einen beschreibbaren Ordner kopieren.</translation>
    </message>
    <message>
        <source>Make the file and its folder writable, or work on a copy. Nothing was changed.</source>
        <translation>Die Datei und ihren Ordner beschreibbar machen oder mit einer Kopie arbeiten. Es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>Make them more different.</source>
        <translation>Unterscheidbarer machen.</translation>
    </message>
    <message>
        <source>Making the book</source>
        <translation>Das Buch wird angelegt</translation>
    </message>
    <message>
        <source>Mar</source>
        <translation>Mär</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Match</source>
        <translation>Treffer</translation>
    </message>
    <message>
        <source>May</source>
        <translation>Mai</translation>
    </message>
    <message>
        <source>Measured or forecast.</source>
        <translation>Gemessen oder vorhergesagt.</translation>
    </message>
    <message>
        <source>Medians; full bloom falls 8 times in 10 within the span</source>
        <translation>Mediane; die Vollblüte fällt in 8 von 10 Fällen in die Spanne</translation>
    </message>
    <message>
        <source>Member</source>
        <translation>Bestandteil</translation>
    </message>
    <message>
        <source>Mend the lines named first, then read the file again.</source>
        <translation>Zuerst die genannten Zeilen berichtigen, dann die Datei erneut lesen.</translation>
    </message>
    <message>
        <source>Method: {}. Each of {} was left out in turn and foretold from the others ({}):</source>
        <translation>Verfahren: {}. Jede der {} wurde der Reihe nach ausgelassen und aus den anderen vorhergesagt ({}):</translation>
    </message>
    <message>
        <source>Mon</source>
        <translation>Mo</translation>
    </message>
    <message>
        <source>More fruits were picked than the {} flowers worked.</source>
        <translation>Es wurden mehr Früchte gepflückt, als die {} Blüten bestäubt wurden.</translation>
    </message>
    <message>
        <source>More grains germinated than the {} counted.</source>
        <translation>Es keimten mehr Körner als die {} gezählten.</translation>
    </message>
    <message>
        <source>More seeds left the lot than the {} that it had.</source>
        <translation>Es wurden mehr Samen entnommen als die {} der Partie.</translation>
    </message>
    <message>
        <source>More seeds sprouted than the {} of lot {}.</source>
        <translation>Es keimten mehr Samen als die {} der Partie {}.</translation>
    </message>
    <message>
        <source>More than one column could be the {}.</source>
        <translation>Mehr als eine Spalte kommt in Frage als: {}.</translation>
    </message>
    <message>
        <source>Moving material.</source>
        <translation>Pflanzgut bewegen.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Name a GeoPackage, a Shapefile, a GeoJSON or a CSV file with coordinates.</source>
        <translation>Ein GeoPackage, Shapefile, GeoJSON oder eine CSV-Datei mit Koordinaten nennen.</translation>
    </message>
    <message>
        <source>Name a file in it.</source>
        <translation>Eine Datei darin nennen.</translation>
    </message>
    <message>
        <source>Name a layer of lines or points.</source>
        <translation>Eine Ebene mit Linien oder Punkten nennen.</translation>
    </message>
    <message>
        <source>Name a table and a column of the book.</source>
        <translation>Eine Tabelle und eine Spalte des Buchs nennen.</translation>
    </message>
    <message>
        <source>Name a table of the book.</source>
        <translation>Eine Tabelle des Buchs nennen.</translation>
    </message>
    <message>
        <source>Name another with station.</source>
        <translation>Mit station eine andere nennen.</translation>
    </message>
    <message>
        <source>Name it with the option {}, or give the file a first line that names its columns: date, t_min, t_max.</source>
        <translation>Mit der Option {} nennen oder der Datei eine erste Zeile geben, die ihre Spalten benennt: date, t_min, t_max.</translation>
    </message>
    <message>
        <source>Name of the accession, as it stands on tags.</source>
        <translation>Name der Akzession, wie er auf Etiketten steht.</translation>
    </message>
    <message>
        <source>Name of the blend.</source>
        <translation>Name der Pollenmischung.</translation>
    </message>
    <message>
        <source>Name of the block, as people say it.</source>
        <translation>Name des Quartiers, wie man ihn sagt.</translation>
    </message>
    <message>
        <source>Name of the station.</source>
        <translation>Name der Station.</translation>
    </message>
    <message>
        <source>Name one of: {}.</source>
        <translation>Eines davon nennen: {}.</translation>
    </message>
    <message>
        <source>Name or number of the row within its block.</source>
        <translation>Name oder Nummer der Reihe innerhalb ihres Quartiers.</translation>
    </message>
    <message>
        <source>Name the .gpkg file in it.</source>
        <translation>Die .gpkg-Datei darin nennen.</translation>
    </message>
    <message>
        <source>Name the .gpkg file of the book, or fetch it from a backup.</source>
        <translation>Die .gpkg-Datei des Buchs nennen oder aus einer Sicherung holen.</translation>
    </message>
    <message>
        <source>Name the .gpkg file of the book, or make one with book-new and copy these layers into its tables.</source>
        <translation>Die .gpkg-Datei des Buchs nennen, oder mit book-new eines anlegen und diese Layer in seine Tabellen kopieren.</translation>
    </message>
    <message>
        <source>Name the block that the rows stand in.</source>
        <translation>Das Quartier nennen, in dem die Reihen stehen.</translation>
    </message>
    <message>
        <source>Name the block that the trees stand in.</source>
        <translation>Das Quartier nennen, in dem die Bäume stehen.</translation>
    </message>
    <message>
        <source>Name the column that holds the rows&apos; names.</source>
        <translation>Die Spalte nennen, in der die Namen der Reihen stehen.</translation>
    </message>
    <message>
        <source>Name the station with the option station.</source>
        <translation>Die Station mit der Option station nennen.</translation>
    </message>
    <message>
        <source>Name them with the options t_min_column and t_max_column.</source>
        <translation>Mit den Optionen t_min_column und t_max_column nennen.</translation>
    </message>
    <message>
        <source>Neither the file nor the request says which station this is.</source>
        <translation>Weder die Datei noch die Anfrage sagt, welche Station das ist.</translation>
    </message>
    <message>
        <source>No accession has a bloom window.</source>
        <translation>Keine Akzession hat ein Blühfenster.</translation>
    </message>
    <message>
        <source>No bloom notes of its own or of its parents: foretold at the orchard&apos;s mean.</source>
        <translation>Keine eigenen Blühnotizen und keine der Eltern: vorhergesagt nach dem Mittel des Obstgartens.</translation>
    </message>
    <message>
        <source>No bloom notes of its own: foretold between its one known parent and the orchard&apos;s mean.</source>
        <translation>Keine eigenen Blühnotizen: vorhergesagt zwischen dem einen bekannten Elter und dem Mittel des Obstgartens.</translation>
    </message>
    <message>
        <source>No bloom notes of its own: foretold between its parents.</source>
        <translation>Keine eigenen Blühnotizen: vorhergesagt zwischen den Eltern.</translation>
    </message>
    <message>
        <source>No bloom window could be foretold. It takes trees with an accession, weather and at least one bloom note.</source>
        <translation>Es ließ sich kein Blühfenster vorhersagen. Dafür braucht es Bäume mit Akzession, Wetter und mindestens eine Blühnotiz.</translation>
    </message>
    <message>
        <source>No column was recognised as the {}.</source>
        <translation>Keine Spalte wurde erkannt als: {}.</translation>
    </message>
    <message>
        <source>No cross is wanted in {}. Enter what you want as rows of cross_goal, then plan again.</source>
        <translation>Für {} ist keine Kreuzung gewünscht. Wünsche als Zeilen in cross_goal eintragen, dann neu planen.</translation>
    </message>
    <message>
        <source>No day of the file has both TMIN and TMAX.</source>
        <translation>Kein Tag der Datei hat TMIN und TMAX.</translation>
    </message>
    <message>
        <source>No day was read.</source>
        <translation>Es wurde kein Tag gelesen.</translation>
    </message>
    <message>
        <source>No errors; {}, {}.</source>
        <translation>Keine Fehler; {}, {}.</translation>
    </message>
    <message>
        <source>No even rows can be made out among the trees.</source>
        <translation>Zwischen den Bäumen sind keine gleichmäßigen Reihen zu erkennen.</translation>
    </message>
    <message>
        <source>No even spacing can be made out along the rows.</source>
        <translation>Längs der Reihen ist kein gleichmäßiger Pflanzabstand zu erkennen.</translation>
    </message>
    <message>
        <source>No flowers were worked.</source>
        <translation>Es wurden keine Blüten bestäubt.</translation>
    </message>
    <message>
        <source>No line of the file fits its header.</source>
        <translation>Keine Zeile der Datei passt zu ihrer Kopfzeile.</translation>
    </message>
    <message>
        <source>No line of the file has a day and both temperatures.</source>
        <translation>Keine Zeile der Datei hat einen Tag und beide Temperaturen.</translation>
    </message>
    <message>
        <source>No living tree of the seed parent is in the book.</source>
        <translation>Das Buch hat keinen lebenden Baum des Samenelters.</translation>
    </message>
    <message>
        <source>No lot of {} from an earlier year in hand on {}.</source>
        <translation>Keine Partie von {} aus einem früheren Jahr vorhanden, Stand {}.</translation>
    </message>
    <message>
        <source>No method was chosen: too few seasons could be scored.</source>
        <translation>Es wurde kein Verfahren gewählt: Zu wenige Saisons ließen sich bewerten.</translation>
    </message>
    <message>
        <source>No orchard&apos;s air is this cold or hot; the day is left out.</source>
        <translation>So kalt oder heiß ist die Luft in keinem Obstgarten; der Tag wird ausgelassen.</translation>
    </message>
    <message>
        <source>No past season is whole, so nothing can stand in for the days to come.</source>
        <translation>Keine vergangene Saison ist vollständig, daher kann nichts für die kommenden Tage einspringen.</translation>
    </message>
    <message>
        <source>No pollen needs to be gathered, forced or tested.</source>
        <translation>Es ist kein Pollen zu sammeln, zu treiben oder zu prüfen.</translation>
    </message>
    <message>
        <source>No pollen work.</source>
        <translation>Keine Pollenarbeit.</translation>
    </message>
    <message>
        <source>No such temperature was ever measured on earth.</source>
        <translation>Eine solche Temperatur wurde auf der Erde nie gemessen.</translation>
    </message>
    <message>
        <source>No temperatures for {} days from {} to {}; gaps of up to {} days are filled.</source>
        <translation>Keine Temperaturen für {} Tage von {} bis {}; Lücken bis {} Tage werden gefüllt.</translation>
    </message>
    <message>
        <source>No tree is anywhere near this place.</source>
        <translation>In der Nähe dieses Ortes steht kein Baum.</translation>
    </message>
    <message>
        <source>No tree is as near as the accuracy would have it: the likeliest is {:.1f} m away.</source>
        <translation>Kein Baum ist so nahe, wie es der Genauigkeit entspräche: Der wahrscheinlichste ist {} m entfernt.</translation>
    </message>
    <message>
        <source>No tree is near.</source>
        <translation>Kein Baum ist in der Nähe.</translation>
    </message>
    <message>
        <source>No tree is to be visited.</source>
        <translation>Es ist kein Baum zu besuchen.</translation>
    </message>
    <message>
        <source>No usable bloom notes ({}): their bloom is reckoned at the orchard&apos;s mean.</source>
        <translation>Keine brauchbaren Blühnotizen ({}): Die Blüte wird nach dem Mittel des Obstgartens gerechnet.</translation>
    </message>
    <message>
        <source>No usable bloom notes ({}): their bloom is reckoned between their one known parent&apos;s and the orchard&apos;s mean.</source>
        <translation>Keine brauchbaren Blühnotizen ({}): Die Blüte wird zwischen der des einen bekannten Elters und dem Mittel des Obstgartens gerechnet.</translation>
    </message>
    <message>
        <source>No usable bloom notes ({}): their bloom is reckoned between their parents&apos;.</source>
        <translation>Keine brauchbaren Blühnotizen ({}): Die Blüte wird zwischen der der Eltern gerechnet.</translation>
    </message>
    <message>
        <source>No way round the rows leads there from the stop before it: the line goes straight.</source>
        <translation>Kein Weg um die Reihen führt vom vorigen Halt dorthin: Die Linie geht geradeaus.</translation>
    </message>
    <message>
        <source>No work waits at the seed parents.</source>
        <translation>An den Sameneltern steht keine Arbeit an.</translation>
    </message>
    <message>
        <source>Not needed: pollen comes in time without forcing.</source>
        <translation>Nicht nötig: Der Pollen kommt auch ohne Treiben rechtzeitig.</translation>
    </message>
    <message>
        <source>Not shown: one accession without bloom notes of its own and without a part in a wanted cross. The book&apos;s layer of bloom windows has it.</source>
        <translation>Nicht gezeigt: eine Akzession ohne eigene Blühnotizen und ohne Anteil an einer gewünschten Kreuzung. Der Layer der Blühfenster im Buch enthält sie.</translation>
    </message>
    <message>
        <source>Not shown: {} accessions without bloom notes of their own and without a part in a wanted cross. The book&apos;s layer of bloom windows has them.</source>
        <translation>Nicht gezeigt: {} Akzessionen ohne eigene Blühnotizen und ohne Anteil an einer gewünschten Kreuzung. Der Layer der Blühfenster im Buch enthält sie.</translation>
    </message>
    <message>
        <source>Note their bloom this spring.</source>
        <translation>Die Blüte in diesem Frühjahr notieren.</translation>
    </message>
    <message>
        <source>Note what was seen on the day or before it; correct the day.</source>
        <translation>Notieren, was an dem Tag oder davor zu sehen war; den Tag berichtigen.</translation>
    </message>
    <message>
        <source>Noted on</source>
        <translation>Notiert am</translation>
    </message>
    <message>
        <source>Nothing in the book is like &quot;{}&quot;.</source>
        <translation>Nichts im Buch ähnelt „{}“.</translation>
    </message>
    <message>
        <source>Nothing in the book stood against this plan.</source>
        <translation>Nichts im Buch sprach gegen diesen Plan.</translation>
    </message>
    <message>
        <source>Nothing is due this week. Next:</source>
        <translation>Diese Woche steht nichts an. Als Nächstes:</translation>
    </message>
    <message>
        <source>Nothing is due.</source>
        <translation>Es steht nichts an.</translation>
    </message>
    <message>
        <source>Nothing is left in it for this cross.</source>
        <translation>Für diese Kreuzung ist nichts mehr darin.</translation>
    </message>
    <message>
        <source>Nothing is wrong with the book.</source>
        <translation>Mit dem Buch ist alles in Ordnung.</translation>
    </message>
    <message>
        <source>Nothing need be done.</source>
        <translation>Es ist nichts zu tun.</translation>
    </message>
    <message>
        <source>Nothing need be taken back.</source>
        <translation>Es ist nichts zurückzunehmen.</translation>
    </message>
    <message>
        <source>Nothing says which trees to visit.</source>
        <translation>Es ist nicht gesagt, welche Bäume zu besuchen sind.</translation>
    </message>
    <message>
        <source>Nothing was changed. Check that there is room on the disk and that the file is whole (book-check).</source>
        <translation>Es wurde nichts geändert. Prüfen, ob Platz auf der Platte ist und ob die Datei heil ist (book-check).</translation>
    </message>
    <message>
        <source>Nothing was found.</source>
        <translation>Es wurde nichts gefunden.</translation>
    </message>
    <message>
        <source>Nothing was written.</source>
        <translation>Es wurde nichts geschrieben.</translation>
    </message>
    <message>
        <source>Nov</source>
        <translation>Nov</translation>
    </message>
    <message>
        <source>Number of flowers worked.</source>
        <translation>Zahl der bestäubten Blüten.</translation>
    </message>
    <message>
        <source>Number of fruits.</source>
        <translation>Zahl der Früchte.</translation>
    </message>
    <message>
        <source>Number of seeds.</source>
        <translation>Zahl der Samen.</translation>
    </message>
    <message>
        <source>Numbering the trees</source>
        <translation>Bäume werden nummeriert</translation>
    </message>
    <message>
        <source>Oct</source>
        <translation>Okt</translation>
    </message>
    <message>
        <source>Of {} stations {} was used: it has the most days, {}.</source>
        <translation>Von {} Stationen wurde {} verwendet: Sie hat die meisten Tage, {}.</translation>
    </message>
    <message>
        <source>On so many days the minimum lies above the maximum that the columns seem swapped.</source>
        <translation>An so vielen Tagen liegt das Minimum über dem Maximum, dass die Spalten vertauscht scheinen.</translation>
    </message>
    <message>
        <source>On the map it stands {:.1f} m from its position in block {}, row {}.</source>
        <translation>Auf der Karte steht er {} m von seiner Position in Quartier {}, Reihe {} entfernt.</translation>
    </message>
    <message>
        <source>On this page</source>
        <translation>Auf dieser Seite</translation>
    </message>
    <message>
        <source>On {} of these days stands a temperature that was never measured on earth.</source>
        <translation>An {} dieser Tage steht eine Temperatur, die auf der Erde nie gemessen wurde.</translation>
    </message>
    <message>
        <source>On {} of these days the lowest temperature is above the highest.</source>
        <translation>An {} dieser Tage liegt die tiefste Temperatur über der höchsten.</translation>
    </message>
    <message>
        <source>On {} {} had sprouted; the count is of all so far.</source>
        <translation>Am {} waren {} gekeimt; gezählt werden alle bisherigen.</translation>
    </message>
    <message>
        <source>One place is needed, no more and no less.</source>
        <translation>Es braucht genau eine Ortsangabe, nicht mehr und nicht weniger.</translation>
    </message>
    <message>
        <source>Only a GeoPackage can be dressed, not a database server.</source>
        <translation>Nur ein GeoPackage lässt sich gestalten, kein Datenbankserver.</translation>
    </message>
    <message>
        <source>Only result tables are ever replaced.</source>
        <translation>Nur Ergebnistabellen werden ersetzt.</translation>
    </message>
    <message>
        <source>Only trees of the book can be given their numbers.</source>
        <translation>Nur Bäume des Buchs können ihre Nummern bekommen.</translation>
    </message>
    <message>
        <source>Only {} sound seeds were counted in the fruit of its tags.</source>
        <translation>In den Früchten seiner Etiketten wurden nur {} gut ausgebildete Samen gezählt.</translation>
    </message>
    <message>
        <source>Open the bag, touch every stigma, close it again; tag with cross, day and flowers.</source>
        <translation>Tüte öffnen, jede Narbe berühren, wieder schließen; Etikett mit Kreuzung, Tag und Zahl der Blüten anhängen.</translation>
    </message>
    <message>
        <source>Other accessions</source>
        <translation>Andere Akzessionen</translation>
    </message>
    <message>
        <source>Other tree</source>
        <translation>Anderer Baum</translation>
    </message>
    <message>
        <source>Other ways:</source>
        <translation>Andere Wege:</translation>
    </message>
    <message>
        <source>Parent</source>
        <translation>Elter</translation>
    </message>
    <message>
        <source>Parents are related like full sibs or closer: kinship {:.3g}.</source>
        <translation>Die Eltern sind wie Vollgeschwister oder enger verwandt: Verwandtschaft {}.</translation>
    </message>
    <message>
        <source>Parents are related like half sibs or closer: kinship {:.3g}.</source>
        <translation>Die Eltern sind wie Halbgeschwister oder enger verwandt: Verwandtschaft {}.</translation>
    </message>
    <message>
        <source>Parents of the wanted crosses</source>
        <translation>Eltern der gewünschten Kreuzungen</translation>
    </message>
    <message>
        <source>Passed over: 1 goal of seasons other than {} and {}.</source>
        <translation>Übergangen: 1 Kreuzungsziel anderer Saisons als {} und {}.</translation>
    </message>
    <message>
        <source>Passed over: {} goals of seasons other than {} and {}.</source>
        <translation>Übergangen: {} Kreuzungsziele anderer Saisons als {} und {}.</translation>
    </message>
    <message>
        <source>Perhaps it is a row of {} that could not be read: mend those first.</source>
        <translation>Vielleicht ist es eine Zeile in {}, die nicht gelesen werden konnte: Diese zuerst berichtigen.</translation>
    </message>
    <message>
        <source>Petals are down: take the bags off, count what has set.</source>
        <translation>Die Blütenblätter sind gefallen: Tüten abnehmen, Fruchtansatz zählen.</translation>
    </message>
    <message>
        <source>Pick</source>
        <translation>Ernte</translation>
    </message>
    <message>
        <source>Pick closed balloon flowers (BBCH 59).</source>
        <translation>Geschlossene Blüten im Ballonstadium pflücken (BBCH 59).</translation>
    </message>
    <message>
        <source>Pick one with the option station_in_file: {}.</source>
        <translation>Mit der Option station_in_file eine davon wählen: {}.</translation>
    </message>
    <message>
        <source>Picked on</source>
        <translation>Gepflückt am</translation>
    </message>
    <message>
        <source>Picked {} days after the work, but seed of {} is ripe after about {}.</source>
        <translation>{} Tage nach der Bestäubung gepflückt, doch Samen von {} sind erst nach etwa {} reif.</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lage</translation>
    </message>
    <message>
        <source>Placed by</source>
        <translation>Lage durch</translation>
    </message>
    <message>
        <source>Plan the season first.</source>
        <translation>Zuerst die Saison planen.</translation>
    </message>
    <message>
        <source>Planning the crosses</source>
        <translation>Kreuzungen werden geplant</translation>
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
        <source>Points and a file are given.</source>
        <translation>Es sind Punkte und eine Datei angegeben.</translation>
    </message>
    <message>
        <source>Pollen and carrier dust irritate: mask and glasses, no flame near carrier dust.</source>
        <translation>Pollen und Trägerstaub reizen: Maske und Brille tragen, keine Flamme nahe am Trägerstaub.</translation>
    </message>
    <message>
        <source>Pollen blends</source>
        <translation>Pollenmischungen</translation>
    </message>
    <message>
        <source>Pollen lots</source>
        <translation>Pollenpartien</translation>
    </message>
    <message>
        <source>Pollen test</source>
        <translation>Pollenprüfung</translation>
    </message>
    <message>
        <source>Pollen tests</source>
        <translation>Pollenprüfungen</translation>
    </message>
    <message>
        <source>Pollen work at the donor trees</source>
        <translation>Pollenarbeit an den Bäumen der Pollenspender</translation>
    </message>
    <message>
        <source>Pollinate {}, with {}</source>
        <translation>{} bestäuben, mit {}</translation>
    </message>
    <message>
        <source>Pollination</source>
        <translation>Bestäubung</translation>
    </message>
    <message>
        <source>Pollinations</source>
        <translation>Bestäubungen</translation>
    </message>
    <message>
        <source>Pollinizer</source>
        <translation>Befruchter</translation>
    </message>
    <message>
        <source>Positions are numbered up to {}: check the spacing and the coordinate system.</source>
        <translation>Positionen sind bis {} nummeriert: Pflanzabstand und Koordinatenbezugssystem prüfen.</translation>
    </message>
    <message>
        <source>Priority</source>
        <translation>Vorrang</translation>
    </message>
    <message>
        <source>Protected parents.</source>
        <translation>Geschützte Eltern.</translation>
    </message>
    <message>
        <source>Protected until</source>
        <translation>Geschützt bis</translation>
    </message>
    <message>
        <source>Put text that holds the delimiter between quotation marks.</source>
        <translation>Text, der das Trennzeichen enthält, in Anführungszeichen setzen.</translation>
    </message>
    <message>
        <source>Reading past seasons</source>
        <translation>Vergangene Saisons werden gelesen</translation>
    </message>
    <message>
        <source>Reading the book</source>
        <translation>Das Buch wird gelesen</translation>
    </message>
    <message>
        <source>Reading the file</source>
        <translation>Die Datei wird gelesen</translation>
    </message>
    <message>
        <source>Reading the file failed half-way.</source>
        <translation>Die Datei ließ sich nur zur Hälfte lesen.</translation>
    </message>
    <message>
        <source>Record tables</source>
        <translation>Tabellen der Aufzeichnungen</translation>
    </message>
    <message>
        <source>Remove all but one of each.</source>
        <translation>Von jedem alle bis auf eines entfernen.</translation>
    </message>
    <message>
        <source>Remove all but one.</source>
        <translation>Alle bis auf eines entfernen.</translation>
    </message>
    <message>
        <source>Remove the days if it is a sign for a missing value, or correct them; temperatures are in degrees Celsius.</source>
        <translation>Die Tage entfernen, wenn es ein Zeichen für fehlende Werte ist, oder berichtigen; Temperaturen sind in Grad Celsius.</translation>
    </message>
    <message>
        <source>Remove the trigger, or copy the tables into a new book. Nothing was changed.</source>
        <translation>Den Trigger entfernen oder die Tabellen in ein neues Buch kopieren. Es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>Removed on</source>
        <translation>Entfernt am</translation>
    </message>
    <message>
        <source>Removed tree</source>
        <translation>Entfernter Baum</translation>
    </message>
    <message>
        <source>Rename or remove all but one.</source>
        <translation>Alle bis auf eines umbenennen oder entfernen.</translation>
    </message>
    <message>
        <source>Rename that table.</source>
        <translation>Jene Tabelle umbenennen.</translation>
    </message>
    <message>
        <source>Rename the blend.</source>
        <translation>Die Pollenmischung umbenennen.</translation>
    </message>
    <message>
        <source>Reproject it to that of the trees.</source>
        <translation>In das der Bäume umprojizieren.</translation>
    </message>
    <message>
        <source>Reserved</source>
        <translation>Vorgemerkt</translation>
    </message>
    <message>
        <source>Rootstock</source>
        <translation>Unterlage</translation>
    </message>
    <message>
        <source>Row number</source>
        <translation>Nummer der Reihe</translation>
    </message>
    <message>
        <source>Row {}</source>
        <translation>Reihe {}</translation>
    </message>
    <message>
        <source>Row {} of block {} has no such position.</source>
        <translation>Reihe {} in Quartier {} hat keine solche Position.</translation>
    </message>
    <message>
        <source>Row, arrow to higher numbers</source>
        <translation>Reihe, Pfeil zu höheren Nummern</translation>
    </message>
    <message>
        <source>Rows are counted within blocks: fill in the block.</source>
        <translation>Reihen werden innerhalb der Quartiere gezählt: Das Quartier eintragen.</translation>
    </message>
    <message>
        <source>Rows of {} refer to {} by now; it was not touched.</source>
        <translation>Zeilen in {} verweisen inzwischen auf {}; es blieb unberührt.</translation>
    </message>
    <message>
        <source>Run it again. Nothing was changed.</source>
        <translation>Noch einmal ausführen. Es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>S-alleles of {} are not known: the style may refuse this pollen.</source>
        <translation>S-Allele von {} sind nicht bekannt: Der Griffel könnte diesen Pollen abweisen.</translation>
    </message>
    <message>
        <source>Sat</source>
        <translation>Sa</translation>
    </message>
    <message>
        <source>Save or cancel the edits there, then try again. Nothing was changed.</source>
        <translation>Die Änderungen dort speichern oder verwerfen, dann erneut versuchen. Es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>Say which system they are in: for GNSS degrees, points-crs EPSG:4326.</source>
        <translation>Angeben, in welchem System sie sind: für GNSS-Grade points-crs EPSG:4326.</translation>
    </message>
    <message>
        <source>Say which with the option {}.</source>
        <translation>Mit der Option {} angeben, welche.</translation>
    </message>
    <message>
        <source>Say with the option day_format whether the day or the month comes first.</source>
        <translation>Mit der Option day_format angeben, ob der Tag oder der Monat vorn steht.</translation>
    </message>
    <message>
        <source>Scored on</source>
        <translation>Bewertet am</translation>
    </message>
    <message>
        <source>Season map</source>
        <translation>Karte der Saison</translation>
    </message>
    <message>
        <source>Season plan {}</source>
        <translation>Saisonplan {}</translation>
    </message>
    <message>
        <source>Season {} as of {}</source>
        <translation>Saison {}, Stand {}</translation>
    </message>
    <message>
        <source>Season {} has only {} of {} days of weather from {} on.</source>
        <translation>Die Saison {} hat nur {} von {} Tagen mit Wetter ab dem {}.</translation>
    </message>
    <message>
        <source>See whether the place is right, or give a larger accuracy-m.</source>
        <translation>Prüfen, ob der Ort stimmt, oder ein größeres accuracy-m angeben.</translation>
    </message>
    <message>
        <source>See whether the place is right; tree-find --at tells the nearest trees however far.</source>
        <translation>Prüfen, ob der Ort stimmt; tree-find --at nennt die nächsten Bäume, wie weit sie auch sind.</translation>
    </message>
    <message>
        <source>See whether trees of different rows stand in each other&apos;s way on the map.</source>
        <translation>Prüfen, ob sich auf der Karte Bäume verschiedener Reihen im Weg stehen.</translation>
    </message>
    <message>
        <source>Seed lots</source>
        <translation>Saatgutpartien</translation>
    </message>
    <message>
        <source>Seed parent first, then the pollen parent. The last safe day is in bold.</source>
        <translation>Zuerst der Samenelter, dann der Pollenelter. Der letzte sichere Tag ist fett gedruckt.</translation>
    </message>
    <message>
        <source>Seed ripe after</source>
        <translation>Samen reif nach</translation>
    </message>
    <message>
        <source>Seed taken out</source>
        <translation>Samenentnahmen</translation>
    </message>
    <message>
        <source>Seed × pollen parent</source>
        <translation>Samen- × Pollenelter</translation>
    </message>
    <message>
        <source>Seedling</source>
        <translation>Sämling</translation>
    </message>
    <message>
        <source>Seedlings wanted</source>
        <translation>Gewünschte Sämlinge</translation>
    </message>
    <message>
        <source>Seeds are poisonous.</source>
        <translation>Kerne sind giftig.</translation>
    </message>
    <message>
        <source>Seeds sprouted so far.</source>
        <translation>Bisher gekeimte Samen.</translation>
    </message>
    <message>
        <source>Sep</source>
        <translation>Sep</translation>
    </message>
    <message>
        <source>Several rows need a distance between them.</source>
        <translation>Mehrere Reihen brauchen einen Abstand zwischen sich.</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>Short code of the cross, as on tags.</source>
        <translation>Kurzes Kürzel der Kreuzung, wie auf Etiketten.</translation>
    </message>
    <message>
        <source>Shorten it, and keep the rest in a note.</source>
        <translation>Kürzen und den Rest als Bemerkung führen.</translation>
    </message>
    <message>
        <source>Should they meet: gather at balloon by {}, dry a day or two, keep in {} until {}: about {} should germinate then.</source>
        <translation>Falls sie sich treffen: im Ballonstadium bis {} sammeln, ein bis zwei Tage trocknen, {} bis {} aufbewahren; dann sollten etwa {} keimen.</translation>
    </message>
    <message>
        <source>Should they meet: gather at balloon by {}, dry a day or two, use within {} of gathering.</source>
        <translation>Falls sie sich treffen: im Ballonstadium bis {} sammeln, ein bis zwei Tage trocknen, höchstens {} nach dem Sammeln verwenden.</translation>
    </message>
    <message>
        <source>Shown for the pollen that must be gathered this spring. Days of {} are a guide only, by this spring&apos;s order of bloom.</source>
        <translation>Gezeigt wegen des Pollens, der in diesem Frühjahr zu sammeln ist. Tage für {} sind nur ein Anhalt nach der Blühfolge dieses Frühjahrs.</translation>
    </message>
    <message>
        <source>So many seedlings are hardly wanted from one cross.</source>
        <translation>So viele Sämlinge sind kaum aus einer Kreuzung gewünscht.</translation>
    </message>
    <message>
        <source>So many temperatures are beyond belief in {} that the unit seems wrong.</source>
        <translation>So viele Temperaturen sind in {} unglaubhaft, dass die Einheit falsch scheint.</translation>
    </message>
    <message>
        <source>Some members of the blend have a share and some have none.</source>
        <translation>Einige Bestandteile der Mischung haben einen Anteil und andere keinen.</translation>
    </message>
    <message>
        <source>Sprays and bees.</source>
        <translation>Spritzmittel und Bienen.</translation>
    </message>
    <message>
        <source>Sprout count</source>
        <translation>Keimzählung</translation>
    </message>
    <message>
        <source>Sprout counts</source>
        <translation>Keimzählungen</translation>
    </message>
    <message>
        <source>Stage {} on this day cannot belong to a spring&apos;s bloom.</source>
        <translation>Stadium {} an diesem Tag kann nicht zur Blüte eines Frühjahrs gehören.</translation>
    </message>
    <message>
        <source>Stage {} on {} comes after stage {}, noted on {} (fid {}).</source>
        <translation>Stadium {} bei {} kommt nach Stadium {}, notiert am {} (fid {}).</translation>
    </message>
    <message>
        <source>Stage {} was noted on {}, and bloom does not go back.</source>
        <translation>Stadium {} wurde am {} notiert, und die Blüte läuft nicht zurück.</translation>
    </message>
    <message>
        <source>Stages 51 to 69 are used.</source>
        <translation>Verwendet werden die Stadien 51 bis 69.</translation>
    </message>
    <message>
        <source>Stages outside {} to {} are kept, but bloom is not foreseen by them.</source>
        <translation>Stadien außerhalb von {} bis {} bleiben stehen, dienen aber nicht zur Blühvorhersage.</translation>
    </message>
    <message>
        <source>State the right unit with the option unit.</source>
        <translation>Mit der Option unit die richtige Einheit angeben.</translation>
    </message>
    <message>
        <source>State the unit with the option unit: celsius, fahrenheit or tenths_celsius.</source>
        <translation>Mit der Option unit die Einheit angeben: celsius, fahrenheit oder tenths_celsius.</translation>
    </message>
    <message>
        <source>Station in the file: {}.</source>
        <translation>Station in der Datei: {}.</translation>
    </message>
    <message>
        <source>Station {}</source>
        <translation>Station {}</translation>
    </message>
    <message>
        <source>Station {} has no place on the map.</source>
        <translation>Station {} hat keine Lage auf der Karte.</translation>
    </message>
    <message>
        <source>Station {} has no temperatures on {}, and sums cannot leap over it.</source>
        <translation>Station {} hat am {} keine Temperaturen, und Summen können darüber nicht hinwegspringen.</translation>
    </message>
    <message>
        <source>Station {} has no temperatures.</source>
        <translation>Station {} hat keine Temperaturen.</translation>
    </message>
    <message>
        <source>Stopped as you asked.</source>
        <translation>Wie gewünscht abgebrochen.</translation>
    </message>
    <message>
        <source>Style the layers in the desktop and keep its project there.</source>
        <translation>Die Layer in der GIS-Oberfläche gestalten und deren Projekt dort speichern.</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>So</translation>
    </message>
    <message>
        <source>Tags of {}: {}.</source>
        <translation>Etiketten von {}: {}.</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Take keys from the table of questions of the same place.</source>
        <translation>Schlüssel aus der Tabelle der Fragen desselben Ortes nehmen.</translation>
    </message>
    <message>
        <source>Take one of the two back.</source>
        <translation>Eine der beiden zurücknehmen.</translation>
    </message>
    <message>
        <source>Take the bags off {}</source>
        <translation>Die Tüten abnehmen von {}</translation>
    </message>
    <message>
        <source>Take those back first.</source>
        <translation>Diese zuerst zurücknehmen.</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Besetzt</translation>
    </message>
    <message>
        <source>Taking it back</source>
        <translation>Notiz wird zurückgenommen</translation>
    </message>
    <message>
        <source>Test the kept pollen of {}</source>
        <translation>Den gelagerten Pollen prüfen von {}</translation>
    </message>
    <message>
        <source>Tested on</source>
        <translation>Geprüft am</translation>
    </message>
    <message>
        <source>That is less than the {} to plan on.</source>
        <translation>Das ist weniger als die {}, mit denen zu planen ist.</translation>
    </message>
    <message>
        <source>The GeoPackage cannot be opened.</source>
        <translation>Das GeoPackage lässt sich nicht öffnen.</translation>
    </message>
    <message>
        <source>The S-alleles cannot be read.</source>
        <translation>Die S-Allele sind nicht lesbar.</translation>
    </message>
    <message>
        <source>The accession is among its own ancestors: {}, each recorded as a child of the next.</source>
        <translation>Die Akzession gehört zu ihren eigenen Vorfahren: {}, jede als Kind der nächsten eingetragen.</translation>
    </message>
    <message>
        <source>The accession or blend that shall give the pollen.</source>
        <translation>Die Akzession oder Pollenmischung, die den Pollen geben soll.</translation>
    </message>
    <message>
        <source>The accession or blend that the pollen is of.</source>
        <translation>Die Akzession oder Pollenmischung, von der der Pollen ist.</translation>
    </message>
    <message>
        <source>The accession that shall bear the seed.</source>
        <translation>Die Akzession, die die Samen tragen soll.</translation>
    </message>
    <message>
        <source>The blend has this member more than once.</source>
        <translation>Die Mischung hat diesen Bestandteil mehr als einmal.</translation>
    </message>
    <message>
        <source>The block has no name.</source>
        <translation>Das Quartier hat keinen Namen.</translation>
    </message>
    <message>
        <source>The book cannot be made: {}.</source>
        <translation>Das Buch ließ sich nicht anlegen: {}.</translation>
    </message>
    <message>
        <source>The book could not be read: {}.</source>
        <translation>Das Buch ließ sich nicht lesen: {}.</translation>
    </message>
    <message>
        <source>The book could not be written: {}.</source>
        <translation>Das Buch ließ sich nicht schreiben: {}.</translation>
    </message>
    <message>
        <source>The book does not tell how much is in it: weigh it first.</source>
        <translation>Das Buch sagt nicht, wie viel darin ist: Zuerst wiegen.</translation>
    </message>
    <message>
        <source>The book has a row of this name already.</source>
        <translation>Das Buch hat schon eine Zeile dieses Namens.</translation>
    </message>
    <message>
        <source>The book has a table of this name that is not a result of ours; it was not touched.</source>
        <translation>Das Buch hat eine Tabelle dieses Namens, die kein Ergebnis von Pipward ist; sie blieb unberührt.</translation>
    </message>
    <message>
        <source>The book has a {} of this name already.</source>
        <translation>Das Buch hat unter diesem Namen schon einen Eintrag ({}).</translation>
    </message>
    <message>
        <source>The book has no block of this name.</source>
        <translation>Das Buch hat kein Quartier dieses Namens.</translation>
    </message>
    <message>
        <source>The book has no bloom notes.</source>
        <translation>Das Buch hat keine Blühnotizen.</translation>
    </message>
    <message>
        <source>The book has no cross goals for this season.</source>
        <translation>Das Buch hat für diese Saison keine Kreuzungsziele.</translation>
    </message>
    <message>
        <source>The book has no pollination tag of this name.</source>
        <translation>Das Buch hat kein Bestäubungsetikett dieses Namens.</translation>
    </message>
    <message>
        <source>The book has no station &apos;{}&apos;.</source>
        <translation>Das Buch hat keine Station „{}“.</translation>
    </message>
    <message>
        <source>The book has no station of this name, but {} days of weather.</source>
        <translation>Das Buch hat keine Station dieses Namens, aber {} Tage Wetter.</translation>
    </message>
    <message>
        <source>The book has no station of this name.</source>
        <translation>Das Buch hat keine Station dieses Namens.</translation>
    </message>
    <message>
        <source>The book has no such column.</source>
        <translation>Das Buch hat keine solche Spalte.</translation>
    </message>
    <message>
        <source>The book has no such parent, so nothing is known of its bloom.</source>
        <translation>Das Buch hat keinen solchen Elter, daher ist nichts über seine Blüte bekannt.</translation>
    </message>
    <message>
        <source>The book has no such table.</source>
        <translation>Das Buch hat keine solche Tabelle.</translation>
    </message>
    <message>
        <source>The book has no table {}.</source>
        <translation>Das Buch hat keine Tabelle {}.</translation>
    </message>
    <message>
        <source>The book has no temperatures of the {} season, which began on {}.</source>
        <translation>Das Buch hat keine Temperaturen der Saison {}, die am {} begann.</translation>
    </message>
    <message>
        <source>The book has no temperatures of the {} season, which began on {}; the last day known is {}.</source>
        <translation>Das Buch hat keine Temperaturen der Saison {}, die am {} begann; der letzte bekannte Tag ist {}.</translation>
    </message>
    <message>
        <source>The book has no tree with a place on the map.</source>
        <translation>Das Buch hat keinen Baum mit einer Lage auf der Karte.</translation>
    </message>
    <message>
        <source>The book has no tree with this label.</source>
        <translation>Das Buch hat keinen Baum mit dieser Bezeichnung.</translation>
    </message>
    <message>
        <source>The book has no trees yet.</source>
        <translation>Das Buch hat noch keine Bäume.</translation>
    </message>
    <message>
        <source>The book has no trees.</source>
        <translation>Das Buch hat keine Bäume.</translation>
    </message>
    <message>
        <source>The book has no weather station.</source>
        <translation>Das Buch hat keine Wetterstation.</translation>
    </message>
    <message>
        <source>The book has no weather.</source>
        <translation>Das Buch hat kein Wetter.</translation>
    </message>
    <message>
        <source>The book has no {} of this name.</source>
        <translation>Das Buch hat unter diesem Namen keinen Eintrag ({}).</translation>
    </message>
    <message>
        <source>The book has no {} of this name; {} rows of the table give it.</source>
        <translation>Das Buch hat unter diesem Namen keinen Eintrag ({}); {} Zeilen der Tabelle nennen ihn.</translation>
    </message>
    <message>
        <source>The book holds no plan of tasks.</source>
        <translation>Das Buch enthält keinen Plan mit Aufgaben.</translation>
    </message>
    <message>
        <source>The book may not be written.</source>
        <translation>Das Buch darf nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>The book remembers no entry: nothing was taken back.</source>
        <translation>Das Buch merkt sich keinen Eintrag: Es wurde nichts zurückgenommen.</translation>
    </message>
    <message>
        <source>The book remembers no such entry.</source>
        <translation>Das Buch merkt sich keinen solchen Eintrag.</translation>
    </message>
    <message>
        <source>The book&apos;s, {}, was taken; say which it is with points-crs.</source>
        <translation>Es wurde das des Buchs genommen, {}; mit points-crs angeben, welches es ist.</translation>
    </message>
    <message>
        <source>The column holds {}.</source>
        <translation>In die Spalte gehört {}.</translation>
    </message>
    <message>
        <source>The column must be given.</source>
        <translation>Die Spalte muss angegeben sein.</translation>
    </message>
    <message>
        <source>The cross is wanted in season {}, and this is {}.</source>
        <translation>Die Kreuzung ist für die Saison {} gewünscht, und jetzt ist {}.</translation>
    </message>
    <message>
        <source>The database does not answer.</source>
        <translation>Die Datenbank antwortet nicht.</translation>
    </message>
    <message>
        <source>The database has a table {} already.</source>
        <translation>Die Datenbank hat schon eine Tabelle {}.</translation>
    </message>
    <message>
        <source>The day already has another value of this element.</source>
        <translation>Der Tag hat schon einen anderen Wert dieses Elements.</translation>
    </message>
    <message>
        <source>The day already stands on an earlier line with other temperatures.</source>
        <translation>Der Tag steht schon mit anderen Temperaturen in einer früheren Zeile.</translation>
    </message>
    <message>
        <source>The day is given twice.</source>
        <translation>Der Tag ist doppelt angegeben.</translation>
    </message>
    <message>
        <source>The day is still to come on {}.</source>
        <translation>Der Tag liegt vom {} aus noch in der Zukunft.</translation>
    </message>
    <message>
        <source>The day lies before the flowers were pollinated, {}.</source>
        <translation>Der Tag liegt vor der Bestäubung der Blüten, {}.</translation>
    </message>
    <message>
        <source>The day lies before the lot was gathered, {}.</source>
        <translation>Der Tag liegt vor dem Sammeln der Partie, {}.</translation>
    </message>
    <message>
        <source>The day lies before the seed was washed, {}.</source>
        <translation>Der Tag liegt vor dem Waschen der Samen, {}.</translation>
    </message>
    <message>
        <source>The day lies before the seed went into the cold, {}.</source>
        <translation>Der Tag liegt, bevor die Samen in die Kälte kamen, {}.</translation>
    </message>
    <message>
        <source>The day lies in the future of {}.</source>
        <translation>Der Tag liegt nach {}, in der Zukunft.</translation>
    </message>
    <message>
        <source>The day of planting lies in the future.</source>
        <translation>Der Pflanztag liegt in der Zukunft.</translation>
    </message>
    <message>
        <source>The day stands twice alike; it is kept once.</source>
        <translation>Der Tag steht zweimal gleich da; er zählt einmal.</translation>
    </message>
    <message>
        <source>The day this was reckoned; later weather is not known yet.</source>
        <translation>Der Tag dieser Rechnung; das Wetter danach ist noch nicht bekannt.</translation>
    </message>
    <message>
        <source>The day&apos;s minimum lies above its maximum.</source>
        <translation>Das Minimum des Tages liegt über seinem Maximum.</translation>
    </message>
    <message>
        <source>The day&apos;s minimum lies above its maximum; the day is left out.</source>
        <translation>Das Minimum des Tages liegt über seinem Maximum; der Tag wird ausgelassen.</translation>
    </message>
    <message>
        <source>The day.</source>
        <translation>Der Tag.</translation>
    </message>
    <message>
        <source>The days are of more than one station.</source>
        <translation>Die Tage sind von mehr als einer Station.</translation>
    </message>
    <message>
        <source>The days carry clock times: this looks like an hourly file.</source>
        <translation>Die Tage tragen Uhrzeiten: Das sieht nach einer Datei mit Stundenwerten aus.</translation>
    </message>
    <message>
        <source>The days of this file cannot be read.</source>
        <translation>Die Tage dieser Datei sind nicht lesbar.</translation>
    </message>
    <message>
        <source>The donors&apos; pollen is not on hand on one day: work some flowers with each, and tag them apart.</source>
        <translation>Der Pollen der Spender ist nicht an einem Tag vorhanden: Mit jedem einige Blüten bestäuben und getrennt etikettieren.</translation>
    </message>
    <message>
        <source>The file cannot be opened as a layer.</source>
        <translation>Die Datei lässt sich nicht als Ebene öffnen.</translation>
    </message>
    <message>
        <source>The file cannot be opened as a layer: {}.</source>
        <translation>Die Datei lässt sich nicht als Ebene öffnen: {}.</translation>
    </message>
    <message>
        <source>The file cannot be opened.</source>
        <translation>Die Datei lässt sich nicht öffnen.</translation>
    </message>
    <message>
        <source>The file does not hold this station.</source>
        <translation>Die Datei enthält diese Station nicht.</translation>
    </message>
    <message>
        <source>The file has no column of stations.</source>
        <translation>Die Datei hat keine Spalte mit Stationen.</translation>
    </message>
    <message>
        <source>The file has no column of this name.</source>
        <translation>Die Datei hat keine Spalte dieses Namens.</translation>
    </message>
    <message>
        <source>The file has no data lines.</source>
        <translation>Die Datei hat keine Datenzeilen.</translation>
    </message>
    <message>
        <source>The file has no layer {}.</source>
        <translation>Die Datei hat keine Ebene {}.</translation>
    </message>
    <message>
        <source>The file has no layer.</source>
        <translation>Die Datei hat keine Ebene.</translation>
    </message>
    <message>
        <source>The file has several layers.</source>
        <translation>Die Datei hat mehrere Ebenen.</translation>
    </message>
    <message>
        <source>The file holds no day with both temperatures.</source>
        <translation>Die Datei enthält keinen Tag mit beiden Temperaturen.</translation>
    </message>
    <message>
        <source>The file holds {} stations.</source>
        <translation>Die Datei enthält {} Stationen.</translation>
    </message>
    <message>
        <source>The file is damaged: fetch it anew.</source>
        <translation>Die Datei ist beschädigt: Neu holen.</translation>
    </message>
    <message>
        <source>The file is damaged: fetch it from a backup.</source>
        <translation>Die Datei ist beschädigt: Aus einer Sicherung holen.</translation>
    </message>
    <message>
        <source>The file is empty (0 bytes).</source>
        <translation>Die Datei ist leer (0 Byte).</translation>
    </message>
    <message>
        <source>The file is larger than 200 MB.</source>
        <translation>Die Datei ist größer als 200 MB.</translation>
    </message>
    <message>
        <source>The first is {}.</source>
        <translation>Der erste ist {}.</translation>
    </message>
    <message>
        <source>The geometry has a coordinate that is no finite number.</source>
        <translation>Die Geometrie hat eine Koordinate, die keine endliche Zahl ist.</translation>
    </message>
    <message>
        <source>The geometry is no {}.</source>
        <translation>Die Geometrie ist nicht von der Art {}.</translation>
    </message>
    <message>
        <source>The last day, {}, is before the first, {}.</source>
        <translation>Der letzte Tag, {}, liegt vor dem ersten, {}.</translation>
    </message>
    <message>
        <source>The last is {}.</source>
        <translation>Der letzte ist {}.</translation>
    </message>
    <message>
        <source>The last safe day is in bold. Look at the cross below for another way before giving it up.</source>
        <translation>Der letzte sichere Tag ist fett gedruckt. Bei der Kreuzung weiter unten nach einem anderen Weg sehen, bevor sie aufgegeben wird.</translation>
    </message>
    <message>
        <source>The last {} day(s) to {} have no temperatures.</source>
        <translation>Den letzten {} Tagen bis {} fehlen Temperaturen.</translation>
    </message>
    <message>
        <source>The latest are: {}.</source>
        <translation>Die neuesten sind: {}.</translation>
    </message>
    <message>
        <source>The latitude of the station cannot be computed from its point.</source>
        <translation>Die Breite der Station lässt sich aus ihrem Punkt nicht berechnen.</translation>
    </message>
    <message>
        <source>The latitude of the station is unknown because the layer has no coordinate system of the earth.</source>
        <translation>Die Breite der Station ist unbekannt, weil der Layer kein Koordinatenbezugssystem der Erde hat.</translation>
    </message>
    <message>
        <source>The layer could be read only in part: {}</source>
        <translation>Die Ebene ließ sich nur teilweise lesen: {}</translation>
    </message>
    <message>
        <source>The layer does not tell its coordinate system.</source>
        <translation>Die Ebene nennt ihr Koordinatenbezugssystem nicht.</translation>
    </message>
    <message>
        <source>The layer has another coordinate system than the trees.</source>
        <translation>Der Layer hat ein anderes Koordinatenbezugssystem als die Bäume.</translation>
    </message>
    <message>
        <source>The layer has no known coordinate system.</source>
        <translation>Der Layer hat kein bekanntes Koordinatenbezugssystem.</translation>
    </message>
    <message>
        <source>The layer has no point and no line.</source>
        <translation>Die Ebene hat keinen Punkt und keine Linie.</translation>
    </message>
    <message>
        <source>The layer has no such column.</source>
        <translation>Die Ebene hat keine solche Spalte.</translation>
    </message>
    <message>
        <source>The layer of trees is missing or has no coordinate system.</source>
        <translation>Der Layer der Bäume fehlt oder hat kein Koordinatenbezugssystem.</translation>
    </message>
    <message>
        <source>The layer says of itself that it is in {}.</source>
        <translation>Die Ebene gibt an, in {} zu sein.</translation>
    </message>
    <message>
        <source>The line cannot be read; it is left out.</source>
        <translation>Die Zeile ist nicht lesbar; sie wird ausgelassen.</translation>
    </message>
    <message>
        <source>The line has not the {} fields of the header; it is left out.</source>
        <translation>Die Zeile hat nicht die {} Felder der Kopfzeile; sie wird ausgelassen.</translation>
    </message>
    <message>
        <source>The long-run mean day alone: within 3 days in {}, missed by {:.1f}.</source>
        <translation>Der langjährige mittlere Tag allein: in {} Fällen auf 3 Tage, {} Tage daneben.</translation>
    </message>
    <message>
        <source>The lot is pollen of {}, but the cross {} wants {}.</source>
        <translation>Die Partie ist Pollen von {}, aber die Kreuzung {} verlangt {}.</translation>
    </message>
    <message>
        <source>The lot tested.</source>
        <translation>Die geprüfte Partie.</translation>
    </message>
    <message>
        <source>The lot was used up on {}.</source>
        <translation>Die Partie war am {} aufgebraucht.</translation>
    </message>
    <message>
        <source>The lot.</source>
        <translation>Die Partie.</translation>
    </message>
    <message>
        <source>The lower threshold lies above the upper one.</source>
        <translation>Die untere Schwelle liegt über der oberen.</translation>
    </message>
    <message>
        <source>The lowest temperature is above the highest, {}.</source>
        <translation>Die tiefste Temperatur liegt über der höchsten, {}.</translation>
    </message>
    <message>
        <source>The lowest temperature is above the highest.</source>
        <translation>Die tiefste Temperatur liegt über der höchsten.</translation>
    </message>
    <message>
        <source>The month is {:.1f} degrees C colder than the same month of other years.</source>
        <translation>Der Monat ist {} °C kälter als derselbe Monat anderer Jahre.</translation>
    </message>
    <message>
        <source>The month is {:.1f} degrees C warmer than the same month of other years.</source>
        <translation>Der Monat ist {} °C wärmer als derselbe Monat anderer Jahre.</translation>
    </message>
    <message>
        <source>The name has more than {} characters.</source>
        <translation>Der Name hat mehr als {} Zeichen.</translation>
    </message>
    <message>
        <source>The name holds characters that are not seen, a line end perhaps.</source>
        <translation>Der Name enthält unsichtbare Zeichen, vielleicht ein Zeilenende.</translation>
    </message>
    <message>
        <source>The names of the further rows do not follow from it.</source>
        <translation>Die Namen der weiteren Reihen ergeben sich nicht daraus.</translation>
    </message>
    <message>
        <source>The names of the further rows do not follow from this one.</source>
        <translation>Die Namen der weiteren Reihen ergeben sich nicht aus diesem.</translation>
    </message>
    <message>
        <source>The nearest are {} and {} ({}).</source>
        <translation>Die nächsten sind {} und {} ({}).</translation>
    </message>
    <message>
        <source>The nearest are: {}.</source>
        <translation>Die nächsten sind: {}.</translation>
    </message>
    <message>
        <source>The nearest labels are: {}.</source>
        <translation>Die nächstliegenden Bezeichnungen sind: {}.</translation>
    </message>
    <message>
        <source>The nearest names are: {}.</source>
        <translation>Die nächstliegenden Namen sind: {}.</translation>
    </message>
    <message>
        <source>The note lies about {} days after the book&apos;s other notes of bloom; it is not used.</source>
        <translation>Die Notiz liegt etwa {} Tage nach den anderen Blühnotizen des Buchs; sie wird nicht verwendet.</translation>
    </message>
    <message>
        <source>The note lies about {} days before the book&apos;s other notes of bloom; it is not used.</source>
        <translation>Die Notiz liegt etwa {} Tage vor den anderen Blühnotizen des Buchs; sie wird nicht verwendet.</translation>
    </message>
    <message>
        <source>The note lies in the future of {}; it is not used.</source>
        <translation>Die Notiz liegt nach {}, in der Zukunft; sie wird nicht verwendet.</translation>
    </message>
    <message>
        <source>The note names neither a tree nor an accession.</source>
        <translation>Die Notiz nennt weder einen Baum noch eine Akzession.</translation>
    </message>
    <message>
        <source>The note puts full bloom of {} {:.0f} days earlier than its other notes and the season&apos;s warmth lead to expect.</source>
        <translation>Nach dieser Notiz läge die Vollblüte von {} {} Tage früher, als ihre anderen Notizen und die Wärme der Saison erwarten lassen.</translation>
    </message>
    <message>
        <source>The note puts full bloom of {} {:.0f} days earlier than the spring&apos;s other notes on it.</source>
        <translation>Nach dieser Notiz läge die Vollblüte von {} {} Tage früher als nach den anderen Notizen des Frühjahrs.</translation>
    </message>
    <message>
        <source>The note puts full bloom of {} {:.0f} days later than its other notes and the season&apos;s warmth lead to expect.</source>
        <translation>Nach dieser Notiz läge die Vollblüte von {} {} Tage später, als ihre anderen Notizen und die Wärme der Saison erwarten lassen.</translation>
    </message>
    <message>
        <source>The note puts full bloom of {} {:.0f} days later than the spring&apos;s other notes on it.</source>
        <translation>Nach dieser Notiz läge die Vollblüte von {} {} Tage später als nach den anderen Notizen des Frühjahrs.</translation>
    </message>
    <message>
        <source>The note&apos;s tree is not in the book, or has no accession.</source>
        <translation>Der Baum der Notiz steht nicht im Buch oder hat keine Akzession.</translation>
    </message>
    <message>
        <source>The note&apos;s tree {} is {}.</source>
        <translation>Der Baum der Notiz, {}, ist {}.</translation>
    </message>
    <message>
        <source>The notes cover too few seasons to tell a good model from a lucky one.</source>
        <translation>Die Notizen umfassen zu wenige Saisons, um ein gutes Modell von einem Zufallstreffer zu unterscheiden.</translation>
    </message>
    <message>
        <source>The number is below zero.</source>
        <translation>Die Zahl liegt unter null.</translation>
    </message>
    <message>
        <source>The number lies below {}.</source>
        <translation>Die Zahl liegt unter {}.</translation>
    </message>
    <message>
        <source>The number lies outside {} to {}.</source>
        <translation>Die Zahl liegt außerhalb von {} bis {}.</translation>
    </message>
    <message>
        <source>The one given was used; leave it out to use the layer&apos;s own.</source>
        <translation>Das angegebene wurde verwendet; weglassen, um das der Ebene selbst zu verwenden.</translation>
    </message>
    <message>
        <source>The other members of the blend take over its share.</source>
        <translation>Die anderen Bestandteile der Mischung übernehmen ihren Anteil.</translation>
    </message>
    <message>
        <source>The plan is made without kinship.</source>
        <translation>Der Plan entsteht ohne Verwandtschaft.</translation>
    </message>
    <message>
        <source>The product&apos;s label, your own authority, local codes and licensed or trained people come before anything on this page.</source>
        <translation>Das Etikett des Mittels, die zuständige Behörde, örtliche Vorschriften und zugelassene oder geschulte Leute gehen allem auf dieser Seite vor.</translation>
    </message>
    <message>
        <source>The project could not be packed: {}.</source>
        <translation>Das Projekt ließ sich nicht packen: {}.</translation>
    </message>
    <message>
        <source>The re-entry time on the label binds everyone, hive keepers too, even to tag one flower. No insecticide on open bloom. Write down every spray.</source>
        <translation>Die Wiederbetretungsfrist auf dem Etikett bindet alle, auch Imker, auch für das Etikettieren einer einzigen Blüte. Kein Insektizid auf offene Blüten. Jede Spritzung aufschreiben.</translation>
    </message>
    <message>
        <source>The record begins only on {}.</source>
        <translation>Die Aufzeichnung beginnt erst am {}.</translation>
    </message>
    <message>
        <source>The record ends on {}.</source>
        <translation>Die Aufzeichnung endet am {}.</translation>
    </message>
    <message>
        <source>The record holds no observed day.</source>
        <translation>Die Aufzeichnung enthält keinen beobachteten Tag.</translation>
    </message>
    <message>
        <source>The results are in the book; only its map is as it was. Run book-dress later.</source>
        <translation>Die Ergebnisse stehen im Buch; nur seine Karte ist, wie sie war. Später book-dress ausführen.</translation>
    </message>
    <message>
        <source>The row has no length.</source>
        <translation>Die Reihe hat keine Länge.</translation>
    </message>
    <message>
        <source>The row has not as many cells as the table columns.</source>
        <translation>Die Zeile hat nicht so viele Zellen, wie die Tabelle Spalten hat.</translation>
    </message>
    <message>
        <source>The row is not in the book any more.</source>
        <translation>Die Zeile steht nicht mehr im Buch.</translation>
    </message>
    <message>
        <source>The row is {:.2f} m long: between its headlands there is room for {:.0f} positions.</source>
        <translation>Die Reihe ist {} m lang: Zwischen ihren Vorgewenden ist Platz für {} Positionen.</translation>
    </message>
    <message>
        <source>The row turns back on itself, by {:.0f} degrees.</source>
        <translation>Die Reihe läuft auf sich selbst zurück, um {} Grad.</translation>
    </message>
    <message>
        <source>The row was changed or removed since the book was read.</source>
        <translation>Die Zeile wurde geändert oder entfernt, seit das Buch gelesen wurde.</translation>
    </message>
    <message>
        <source>The row was changed since it was noted; it was not touched.</source>
        <translation>Die Zeile wurde seit der Notiz geändert; sie blieb unberührt.</translation>
    </message>
    <message>
        <source>The row would have {:.0f} positions.</source>
        <translation>Die Reihe hätte {} Positionen.</translation>
    </message>
    <message>
        <source>The rows do not begin at a common edge, or are too few to show one: where first trees are missing the numbers cannot be known.</source>
        <translation>Die Reihen beginnen nicht an einem gemeinsamen Rand, oder es sind zu wenige, um einen zu zeigen: Wo erste Bäume fehlen, lassen sich die Nummern nicht wissen.</translation>
    </message>
    <message>
        <source>The rows run at {:.1f} degrees, {:.2f} m apart, with a tree every {:.3f} m; the points lie about {:.2f} m off across and {:.2f} m along.</source>
        <translation>Die Reihen laufen in Richtung {} Grad, {} m auseinander, alle {} m ein Baum; die Punkte liegen etwa {} m quer und {} m längs daneben.</translation>
    </message>
    <message>
        <source>The same in numbers</source>
        <translation>Dasselbe in Zahlen</translation>
    </message>
    <message>
        <source>The same was noted already ({}).</source>
        <translation>Dasselbe wurde schon notiert ({}).</translation>
    </message>
    <message>
        <source>The scale of pome fruit has no such stage.</source>
        <translation>Die Skala für Kernobst hat kein solches Stadium.</translation>
    </message>
    <message>
        <source>The scoring of the bloom methods was stopped.</source>
        <translation>Die Bewertung der Blühverfahren wurde abgebrochen.</translation>
    </message>
    <message>
        <source>The season is left out. {}</source>
        <translation>Die Saison wird ausgelassen. {}</translation>
    </message>
    <message>
        <source>The seed parent is to be pollinated with its own pollen.</source>
        <translation>Der Samenelter soll mit seinem eigenen Pollen bestäubt werden.</translation>
    </message>
    <message>
        <source>The seed went into the cold only on {}.</source>
        <translation>Die Samen kamen erst am {} in die Kälte.</translation>
    </message>
    <message>
        <source>The shares of the blend do not add up to 1.</source>
        <translation>Die Anteile der Mischung ergeben zusammen nicht 1.</translation>
    </message>
    <message>
        <source>The station has this day more than once.</source>
        <translation>Die Station hat diesen Tag mehr als einmal.</translation>
    </message>
    <message>
        <source>The station has {} of these days more than once.</source>
        <translation>Die Station hat {} dieser Tage mehr als einmal.</translation>
    </message>
    <message>
        <source>The station.</source>
        <translation>Die Station.</translation>
    </message>
    <message>
        <source>The table could be read only in part: {}.</source>
        <translation>Die Tabelle ließ sich nur teilweise lesen: {}.</translation>
    </message>
    <message>
        <source>The table could be read only in part: {}; the database says: {}.</source>
        <translation>Die Tabelle ließ sich nur teilweise lesen: {}; die Datenbank sagt: {}.</translation>
    </message>
    <message>
        <source>The table has a row of this name already.</source>
        <translation>Die Tabelle hat schon eine Zeile dieses Namens.</translation>
    </message>
    <message>
        <source>The table has no such column.</source>
        <translation>Die Tabelle hat keine solche Spalte.</translation>
    </message>
    <message>
        <source>The table has no whole-number primary key.</source>
        <translation>Die Tabelle hat keinen ganzzahligen Primärschlüssel.</translation>
    </message>
    <message>
        <source>The table holds geometries of the kind: {}.</source>
        <translation>Die Tabelle enthält Geometrien der Art: {}.</translation>
    </message>
    <message>
        <source>The table is empty, yet there are rows of {} that refer to it.</source>
        <translation>Die Tabelle ist leer, aber Zeilen in {} verweisen auf sie.</translation>
    </message>
    <message>
        <source>The table lacks columns that it needs; none of its rows was read.</source>
        <translation>Der Tabelle fehlen nötige Spalten; keine ihrer Zeilen wurde gelesen.</translation>
    </message>
    <message>
        <source>The table lacks columns; their values count as unknown.</source>
        <translation>Der Tabelle fehlen Spalten; deren Werte gelten als unbekannt.</translation>
    </message>
    <message>
        <source>The table {} carries a trigger &quot;{}&quot; that is not of the GeoPackage standard; it would change the book behind our back.</source>
        <translation>Die Tabelle {} trägt einen Trigger „{}“, der nicht zum GeoPackage-Standard gehört; er würde das Buch unbemerkt ändern.</translation>
    </message>
    <message>
        <source>The table {} has no column {}.</source>
        <translation>Die Tabelle {} hat keine Spalte {}.</translation>
    </message>
    <message>
        <source>The tag is of cross {}, the lot of {}.</source>
        <translation>Das Etikett gehört zur Kreuzung {}, die Partie zu {}.</translation>
    </message>
    <message>
        <source>The tag of the pollination.</source>
        <translation>Das Etikett der Bestäubung.</translation>
    </message>
    <message>
        <source>The temperatures are too high for Celsius and for Fahrenheit: perhaps they are tenths of a degree, or kelvin.</source>
        <translation>Die Temperaturen sind zu hoch für Celsius und für Fahrenheit: Vielleicht sind es Zehntelgrad oder Kelvin.</translation>
    </message>
    <message>
        <source>The temperatures of this short file could be Celsius or Fahrenheit.</source>
        <translation>Die Temperaturen dieser kurzen Datei könnten Celsius oder Fahrenheit sein.</translation>
    </message>
    <message>
        <source>The text is empty.</source>
        <translation>Der Text ist leer.</translation>
    </message>
    <message>
        <source>The tree has a row but no block.</source>
        <translation>Der Baum hat eine Reihe, aber kein Quartier.</translation>
    </message>
    <message>
        <source>The tree is {}, but the seed parent of {} is {}.</source>
        <translation>Der Baum ist {}, aber der Samenelter von {} ist {}.</translation>
    </message>
    <message>
        <source>The tree scored.</source>
        <translation>Der bewertete Baum.</translation>
    </message>
    <message>
        <source>The tree was removed before it was planted.</source>
        <translation>Der Baum wurde entfernt, bevor er gepflanzt war.</translation>
    </message>
    <message>
        <source>The tree worked, a tree of the seed parent.</source>
        <translation>Der bestäubte Baum, ein Baum des Samenelters.</translation>
    </message>
    <message>
        <source>The trees have no coordinate system of the earth.</source>
        <translation>Die Bäume haben kein Koordinatenbezugssystem der Erde.</translation>
    </message>
    <message>
        <source>The trees stand in even lines both ways: which are the rows is not clear.</source>
        <translation>Die Bäume stehen in beiden Richtungen in gleichmäßigen Linien: Welche davon die Reihen sind, ist nicht klar.</translation>
    </message>
    <message>
        <source>The value is missing.</source>
        <translation>Der Wert fehlt.</translation>
    </message>
    <message>
        <source>The walk cannot end in two places.</source>
        <translation>Der Rundgang kann nicht an zwei Orten enden.</translation>
    </message>
    <message>
        <source>The work lies about {} days after the book&apos;s other notes of bloom.</source>
        <translation>Die Arbeit liegt etwa {} Tage nach den anderen Blühnotizen des Buchs.</translation>
    </message>
    <message>
        <source>The work lies about {} days before the book&apos;s other notes of bloom.</source>
        <translation>Die Arbeit liegt etwa {} Tage vor den anderen Blühnotizen des Buchs.</translation>
    </message>
    <message>
        <source>The {} season ended on {}: nothing is left to foretell.</source>
        <translation>Die Saison {} endete am {}: Es ist nichts mehr vorherzusagen.</translation>
    </message>
    <message>
        <source>There are {} S-alleles but at most {} chromosome sets to carry them.</source>
        <translation>Es sind {} S-Allele, aber höchstens {} Chromosomensätze, die sie tragen können.</translation>
    </message>
    <message>
        <source>There are {} bloom notes of season {} but no weather for it.</source>
        <translation>Es gibt {} Blühnotizen der Saison {}, aber kein Wetter dazu.</translation>
    </message>
    <message>
        <source>There are {} bloom notes of {} seasons without any weather.</source>
        <translation>Es gibt {} Blühnotizen aus {} Saisons ganz ohne Wetter.</translation>
    </message>
    <message>
        <source>There is 1 bloom note of season {} but no weather for it.</source>
        <translation>Es gibt 1 Blühnotiz der Saison {}, aber kein Wetter dazu.</translation>
    </message>
    <message>
        <source>There is a file of that name already.</source>
        <translation>Es gibt schon eine Datei dieses Namens.</translation>
    </message>
    <message>
        <source>There is no bloom note in a season with weather, so nothing can be learned of bloom.</source>
        <translation>Es gibt keine Blühnotiz in einer Saison mit Wetter, daher lässt sich nichts über die Blüte lernen.</translation>
    </message>
    <message>
        <source>There is no cross goal of this season or the next: the plan is empty.</source>
        <translation>Es gibt kein Kreuzungsziel dieser oder der nächsten Saison: Der Plan ist leer.</translation>
    </message>
    <message>
        <source>There is no line to lay rows on.</source>
        <translation>Es gibt keine Linie, auf der Reihen anzulegen wären.</translation>
    </message>
    <message>
        <source>There is no start to come back to.</source>
        <translation>Es gibt keinen Start, zu dem zurückzukehren wäre.</translation>
    </message>
    <message>
        <source>There is no such file.</source>
        <translation>Es gibt keine solche Datei.</translation>
    </message>
    <message>
        <source>There is no tree to number in block {}.</source>
        <translation>In Quartier {} ist kein Baum zu nummerieren.</translation>
    </message>
    <message>
        <source>There is nothing to look for.</source>
        <translation>Es ist nichts angegeben, wonach zu suchen wäre.</translation>
    </message>
    <message>
        <source>These are median days, too uncertain yet for a safe one: watch the buds.</source>
        <translation>Das sind mittlere Tage, noch zu unsicher für einen sicheren: Die Knospen im Auge behalten.</translation>
    </message>
    <message>
        <source>These are not two coordinates.</source>
        <translation>Das sind keine zwei Koordinaten.</translation>
    </message>
    <message>
        <source>These do: {}.</source>
        <translation>Das trifft zu auf: {}.</translation>
    </message>
    <message>
        <source>These numbers look like degrees, but {} counts metres.</source>
        <translation>Diese Zahlen sehen nach Grad aus, aber {} zählt Meter.</translation>
    </message>
    <message>
        <source>This and {} more names of the column answer to no {} of the book.</source>
        <translation>Zu diesem und {} weiteren Namen der Spalte hat das Buch keinen Eintrag ({}).</translation>
    </message>
    <message>
        <source>This coordinate system is not known.</source>
        <translation>Dieses Koordinatenbezugssystem ist nicht bekannt.</translation>
    </message>
    <message>
        <source>This is a fault of the program; please report it.</source>
        <translation>Das ist ein Fehler des Programms; bitte melden.</translation>
    </message>
    <message>
        <source>This is a folder, not a book.</source>
        <translation>Das ist ein Ordner, kein Buch.</translation>
    </message>
    <message>
        <source>This is a folder, not a file.</source>
        <translation>Das ist ein Ordner, keine Datei.</translation>
    </message>
    <message>
        <source>This is neither a tree&apos;s label nor latitude and longitude.</source>
        <translation>Das ist weder die Bezeichnung eines Baums noch Breite und Länge.</translation>
    </message>
    <message>
        <source>This is neither yes nor no.</source>
        <translation>Das ist weder Ja noch Nein.</translation>
    </message>
    <message>
        <source>This is no GeoPackage but: {}.</source>
        <translation>Das ist kein GeoPackage, sondern: {}.</translation>
    </message>
    <message>
        <source>This is no GeoPackage: it is damaged, encrypted, or something else.</source>
        <translation>Das ist kein GeoPackage: Es ist beschädigt, verschlüsselt oder etwas anderes.</translation>
    </message>
    <message>
        <source>This is no day of the calendar.</source>
        <translation>Das ist kein Tag des Kalenders.</translation>
    </message>
    <message>
        <source>This is no known map or geographic coordinate system.</source>
        <translation>Das ist kein bekanntes Karten- oder geografisches Koordinatenbezugssystem.</translation>
    </message>
    <message>
        <source>This is no line and no list of points.</source>
        <translation>Das ist keine Linie und keine Liste von Punkten.</translation>
    </message>
    <message>
        <source>This is no number.</source>
        <translation>Das ist keine Zahl.</translation>
    </message>
    <message>
        <source>This is no orchard book: it has none of its tables. It holds {}.</source>
        <translation>Das ist kein Obstgartenbuch: Es hat keine von dessen Tabellen. Es enthält {}.</translation>
    </message>
    <message>
        <source>This is no place on the earth in {}.</source>
        <translation>Das ist in {} kein Ort auf der Erde.</translation>
    </message>
    <message>
        <source>This is no place on the earth.</source>
        <translation>Das ist kein Ort auf der Erde.</translation>
    </message>
    <message>
        <source>This is no readable text, or it has more than 100000 characters.</source>
        <translation>Das ist kein lesbarer Text, oder er hat mehr als 100000 Zeichen.</translation>
    </message>
    <message>
        <source>This is no whole number, or one too large for the column.</source>
        <translation>Das ist keine ganze Zahl oder eine zu große für die Spalte.</translation>
    </message>
    <message>
        <source>This is not a day of the calendar; the line is left out.</source>
        <translation>Das ist kein Tag des Kalenders; die Zeile wird ausgelassen.</translation>
    </message>
    <message>
        <source>This is not a finite number.</source>
        <translation>Das ist keine endliche Zahl.</translation>
    </message>
    <message>
        <source>This is not a temperature; the line is left out.</source>
        <translation>Das ist keine Temperatur; die Zeile wird ausgelassen.</translation>
    </message>
    <message>
        <source>This is not the name of a result table.</source>
        <translation>Das ist nicht der Name einer Ergebnistabelle.</translation>
    </message>
    <message>
        <source>This place is {} from the nearest tree.</source>
        <translation>Dieser Ort ist {} vom nächsten Baum entfernt.</translation>
    </message>
    <message>
        <source>This question is not asked at this place: the answer counts for nothing.</source>
        <translation>Diese Frage wird an diesem Ort nicht gestellt: Die Antwort zählt nicht.</translation>
    </message>
    <message>
        <source>This stage tells too little of bloom and is not used to foretell it.</source>
        <translation>Dieses Stadium sagt zu wenig über die Blüte und dient nicht zu ihrer Vorhersage.</translation>
    </message>
    <message>
        <source>This table takes no entries.</source>
        <translation>Diese Tabelle nimmt keine Einträge an.</translation>
    </message>
    <message>
        <source>This tree has no place on the map.</source>
        <translation>Dieser Baum hat keine Lage auf der Karte.</translation>
    </message>
    <message>
        <source>This value is none of those that the column allows.</source>
        <translation>Dieser Wert ist keiner von denen, die die Spalte zulässt.</translation>
    </message>
    <message>
        <source>This week</source>
        <translation>Diese Woche</translation>
    </message>
    <message>
        <source>Thu</source>
        <translation>Do</translation>
    </message>
    <message>
        <source>To get the one of Pipward too, keep yours under another name, delete this one and dress again.</source>
        <translation>Um auch den von Pipward zu bekommen, den eigenen unter anderem Namen behalten, diesen löschen und neu gestalten lassen.</translation>
    </message>
    <message>
        <source>To see the one of Pipward, choose it among the layer&apos;s styles.</source>
        <translation>Um den von Pipward zu sehen, ihn unter den Stilen des Layers wählen.</translation>
    </message>
    <message>
        <source>To see the results without keeping them, set write to no.</source>
        <translation>Um die Ergebnisse zu sehen, ohne sie zu behalten, write auf Nein setzen.</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Today&apos;s work</source>
        <translation>Arbeit von heute</translation>
    </message>
    <message>
        <source>Too cold while {} is open: pollen tubes would reach the ovules too late in every spring reckoned.</source>
        <translation>Zu kalt, solange {} offen ist: Die Pollenschläuche kämen in jedem gerechneten Frühjahr zu spät zu den Samenanlagen.</translation>
    </message>
    <message>
        <source>Too late</source>
        <translation>Zu spät</translation>
    </message>
    <message>
        <source>Took back {} from {}: {}.</source>
        <translation>{} aus {} zurückgenommen: {}.</translation>
    </message>
    <message>
        <source>Tools.</source>
        <translation>Werkzeug.</translation>
    </message>
    <message>
        <source>Trait score</source>
        <translation>Bonitur</translation>
    </message>
    <message>
        <source>Trait scores</source>
        <translation>Bonituren</translation>
    </message>
    <message>
        <source>Tree rows</source>
        <translation>Baumreihen</translation>
    </message>
    <message>
        <source>Tree {} stands at the same position of row {}.</source>
        <translation>Baum {} steht an derselben Position der Reihe {}.</translation>
    </message>
    <message>
        <source>Tree {} was planted only on {}.</source>
        <translation>Baum {} wurde erst am {} gepflanzt.</translation>
    </message>
    <message>
        <source>Tree {} was removed on {}.</source>
        <translation>Baum {} wurde am {} entfernt.</translation>
    </message>
    <message>
        <source>Trees that have a row and a position are left as they are.</source>
        <translation>Bäume, die Reihe und Position haben, bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>Try again in a moment.</source>
        <translation>Gleich noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Tue</source>
        <translation>Di</translation>
    </message>
    <message>
        <source>Two names differ only by capitals or spaces.</source>
        <translation>Zwei Namen unterscheiden sich nur durch Großbuchstaben oder Leerzeichen.</translation>
    </message>
    <message>
        <source>Two of the rows have this name.</source>
        <translation>Zwei der Reihen haben diesen Namen.</translation>
    </message>
    <message>
        <source>Type it anew: a name that looks the same will not be found.</source>
        <translation>Neu eintippen: Ein Name, der nur gleich aussieht, wird nicht gefunden.</translation>
    </message>
    <message>
        <source>Understanding the file</source>
        <translation>Die Datei wird ausgewertet</translation>
    </message>
    <message>
        <source>Unit: {}, {}.</source>
        <translation>Einheit: {}, {}.</translation>
    </message>
    <message>
        <source>Use an empty schema or database.</source>
        <translation>Ein leeres Schema oder eine leere Datenbank verwenden.</translation>
    </message>
    <message>
        <source>Use another name, or change the row that is there.</source>
        <translation>Einen anderen Namen verwenden oder die vorhandene Zeile ändern.</translation>
    </message>
    <message>
        <source>Use one of: {}.</source>
        <translation>Eines davon verwenden: {}.</translation>
    </message>
    <message>
        <source>Use the columns of the book&apos;s schema.</source>
        <translation>Die Spalten aus dem Schema des Buchs verwenden.</translation>
    </message>
    <message>
        <source>Use the columns of the schema.</source>
        <translation>Die Spalten des Schemas verwenden.</translation>
    </message>
    <message>
        <source>Used up on</source>
        <translation>Aufgebraucht am</translation>
    </message>
    <message>
        <source>Used: {}, off by {:.1f} days (RMSE) on {} seasons that it had not seen, weather known.</source>
        <translation>Verwendet: {}, um {} Tage daneben (RMSE) bei {} Saisons, die es nicht kannte, mit bekanntem Wetter.</translation>
    </message>
    <message>
        <source>Vacant</source>
        <translation>Frei</translation>
    </message>
    <message>
        <source>Walking</source>
        <translation>Rundgang wird geordnet</translation>
    </message>
    <message>
        <source>Wanted crosses and the best way to each</source>
        <translation>Gewünschte Kreuzungen und der beste Weg zu jeder</translation>
    </message>
    <message>
        <source>Wanted in {}</source>
        <translation>Für {} gewünscht</translation>
    </message>
    <message>
        <source>Washed on</source>
        <translation>Gewaschen am</translation>
    </message>
    <message>
        <source>Weather after {} is not known: one past season stands in for it, so bloom is given as spans of days. Plan again after new weather or a bloom note.</source>
        <translation>Das Wetter nach {} ist nicht bekannt: Eine vergangene Saison springt dafür ein, daher steht die Blüte als Spanne von Tagen da. Nach neuem Wetter oder einer Blühnotiz neu planen.</translation>
    </message>
    <message>
        <source>Weather after {} is not known: {} past seasons stand in for it, so bloom is given as spans of days. Plan again after new weather or a bloom note.</source>
        <translation>Das Wetter nach {} ist nicht bekannt: {} vergangene Saisons springen dafür ein, daher steht die Blüte als Spanne von Tagen da. Nach neuem Wetter oder einer Blühnotiz neu planen.</translation>
    </message>
    <message>
        <source>Weather station</source>
        <translation>Wetterstation</translation>
    </message>
    <message>
        <source>Weather stations</source>
        <translation>Wetterstationen</translation>
    </message>
    <message>
        <source>Wed</source>
        <translation>Mi</translation>
    </message>
    <message>
        <source>Weighing the trees</source>
        <translation>Die Bäume werden abgewogen</translation>
    </message>
    <message>
        <source>What sort of accession it is.</source>
        <translation>Welcher Art die Akzession ist.</translation>
    </message>
    <message>
        <source>What stands on the bag.</source>
        <translation>Was auf dem Beutel steht.</translation>
    </message>
    <message>
        <source>What stands on the vial.</source>
        <translation>Was auf dem Röhrchen steht.</translation>
    </message>
    <message>
        <source>What the tree is kept for.</source>
        <translation>Wofür der Baum gehalten wird.</translation>
    </message>
    <message>
        <source>What was scored.</source>
        <translation>Was bewertet wurde.</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Where it is kept.</source>
        <translation>Wo er gelagert ist.</translation>
    </message>
    <message>
        <source>While the season is under way its notes move its own forecast instead.</source>
        <translation>Solange die Saison läuft, verschieben ihre Notizen stattdessen deren eigene Vorhersage.</translation>
    </message>
    <message>
        <source>With the season&apos;s weather known, it foretold past seasons within 3 days in {} and within 5 days in {}; it missed by {:.1f} days on average.</source>
        <translation>Bei bekanntem Wetter der Saison wurden vergangene Saisons in {} Fällen auf 3 Tage und in {} Fällen auf 5 Tage getroffen; im Mittel lag die Vorhersage {} Tage daneben.</translation>
    </message>
    <message>
        <source>Within seven days</source>
        <translation>Innerhalb von sieben Tagen</translation>
    </message>
    <message>
        <source>Work at the seed parents</source>
        <translation>Arbeit an den Sameneltern</translation>
    </message>
    <message>
        <source>Work more flowers, or use it as neither parent.</source>
        <translation>Mehr Blüten bestäuben oder ihn in keiner Rolle als Elter verwenden.</translation>
    </message>
    <message>
        <source>Work the flowers</source>
        <translation>Blüten bestäuben</translation>
    </message>
    <message>
        <source>Worked on</source>
        <translation>Bestäubt am</translation>
    </message>
    <message>
        <source>Write 1 or 0, or clear the cell.</source>
        <translation>1 oder 0 schreiben oder die Zelle leeren.</translation>
    </message>
    <message>
        <source>Write 1 or 0.</source>
        <translation>1 oder 0 schreiben.</translation>
    </message>
    <message>
        <source>Write a number with a decimal point, or clear the cell.</source>
        <translation>Eine Zahl mit Dezimalpunkt schreiben oder die Zelle leeren.</translation>
    </message>
    <message>
        <source>Write a number with a decimal point.</source>
        <translation>Eine Zahl mit Dezimalpunkt schreiben.</translation>
    </message>
    <message>
        <source>Write a whole number, or clear the cell.</source>
        <translation>Eine ganze Zahl schreiben oder die Zelle leeren.</translation>
    </message>
    <message>
        <source>Write a whole number.</source>
        <translation>Eine ganze Zahl schreiben.</translation>
    </message>
    <message>
        <source>Write down the stages you see; without any, bloom cannot be foreseen.</source>
        <translation>Die beobachteten Stadien notieren; ohne sie lässt sich die Blüte nicht vorhersehen.</translation>
    </message>
    <message>
        <source>Write goals with the season&apos;s year.</source>
        <translation>Ziele mit dem Jahr der Saison schreiben.</translation>
    </message>
    <message>
        <source>Write it anew as plain text (UTF-8), or clear the cell.</source>
        <translation>Als reinen Text (UTF-8) neu schreiben oder die Zelle leeren.</translation>
    </message>
    <message>
        <source>Write it anew as plain text (UTF-8).</source>
        <translation>Als reinen Text (UTF-8) neu schreiben.</translation>
    </message>
    <message>
        <source>Write key=yes or key=no, with semicolons between.</source>
        <translation>Schlüssel=yes oder Schlüssel=no schreiben, mit Semikolon dazwischen.</translation>
    </message>
    <message>
        <source>Write one station at a time.</source>
        <translation>Eine Station nach der anderen schreiben.</translation>
    </message>
    <message>
        <source>Write the day as YYYY-MM-DD, for instance 2026-04-12, or clear the cell.</source>
        <translation>Den Tag als JJJJ-MM-TT schreiben, zum Beispiel 2026-04-12, oder die Zelle leeren.</translation>
    </message>
    <message>
        <source>Write the day as YYYY-MM-DD, for instance 2026-04-12.</source>
        <translation>Den Tag als JJJJ-MM-TT schreiben, zum Beispiel 2026-04-12.</translation>
    </message>
    <message>
        <source>Write the latitude first: {}.</source>
        <translation>Die Breite zuerst schreiben: {}.</translation>
    </message>
    <message>
        <source>Write the points as in &quot;522400 5331200, 522440 5331210&quot;, or well-known text.</source>
        <translation>Die Punkte schreiben wie in „522400 5331200, 522440 5331210“ oder als Well-known Text.</translation>
    </message>
    <message>
        <source>Write the shares, or leave all of them out for equal parts.</source>
        <translation>Die Anteile schreiben oder für gleiche Teile alle weglassen.</translation>
    </message>
    <message>
        <source>Write them as &quot;S2 S3&quot;.</source>
        <translation>Schreiben wie in „S2 S3“.</translation>
    </message>
    <message>
        <source>Write them as YYYY-MM-DD, with four digits for the year.</source>
        <translation>Als JJJJ-MM-TT schreiben, mit vier Ziffern für das Jahr.</translation>
    </message>
    <message>
        <source>Write {} or clear it.</source>
        <translation>Hierher gehört {}; sonst leeren.</translation>
    </message>
    <message>
        <source>Write {}.</source>
        <translation>Hierher gehört {}.</translation>
    </message>
    <message>
        <source>Writing the days</source>
        <translation>Die Tage werden geschrieben</translation>
    </message>
    <message>
        <source>Writing the numbers</source>
        <translation>Die Nummern werden geschrieben</translation>
    </message>
    <message>
        <source>Writing the results</source>
        <translation>Die Ergebnisse werden geschrieben</translation>
    </message>
    <message>
        <source>Writing the rows</source>
        <translation>Die Reihen werden geschrieben</translation>
    </message>
    <message>
        <source>a day</source>
        <translation>ein Tag</translation>
    </message>
    <message>
        <source>a day as YYYY-MM-DD</source>
        <translation>ein Tag als JJJJ-MM-TT</translation>
    </message>
    <message>
        <source>a guess, to be measured</source>
        <translation>eine Schätzung, die noch einzumessen ist</translation>
    </message>
    <message>
        <source>a list of whole numbers</source>
        <translation>eine Liste ganzer Zahlen</translation>
    </message>
    <message>
        <source>a named variety</source>
        <translation>eine benannte Sorte</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a path where no book is yet</source>
        <translation>ein Pfad, an dem noch kein Buch liegt</translation>
    </message>
    <message>
        <source>a room</source>
        <translation>bei Raumtemperatur</translation>
    </message>
    <message>
        <source>a seedling chosen and kept by grafting</source>
        <translation>ein ausgelesener, durch Veredeln erhaltener Sämling</translation>
    </message>
    <message>
        <source>a share</source>
        <translation>ein Anteil</translation>
    </message>
    <message>
        <source>a single seedling</source>
        <translation>ein einzelner Sämling</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>ein Text</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>eine ganze Zahl</translation>
    </message>
    <message>
        <source>a wild species or type of it</source>
        <translation>eine Wildart oder eine Form davon</translation>
    </message>
    <message>
        <source>about 10 % of flowers open</source>
        <translation>etwa 10 % der Blüten offen</translation>
    </message>
    <message>
        <source>about 20 % of flowers open</source>
        <translation>etwa 20 % der Blüten offen</translation>
    </message>
    <message>
        <source>about 30 % of flowers open</source>
        <translation>etwa 30 % der Blüten offen</translation>
    </message>
    <message>
        <source>about 40 % of flowers open</source>
        <translation>etwa 40 % der Blüten offen</translation>
    </message>
    <message>
        <source>accession</source>
        <translation>Akzession</translation>
    </message>
    <message>
        <source>accession not known</source>
        <translation>Akzession unbekannt</translation>
    </message>
    <message>
        <source>accession or blend</source>
        <translation>Akzession oder Pollenmischung</translation>
    </message>
    <message>
        <source>accession {}</source>
        <translation>Akzession {}</translation>
    </message>
    <message>
        <source>accuracy</source>
        <translation>Genauigkeit</translation>
    </message>
    <message>
        <source>all leaves fallen</source>
        <translation>alle Blätter abgefallen</translation>
    </message>
    <message>
        <source>and {} more in the tables below</source>
        <translation>und {} weitere in den Tabellen unten</translation>
    </message>
    <message>
        <source>and {} more; the run that made this sheet reports every one.</source>
        <translation>und {} weitere; der Lauf, der dieses Blatt erstellt hat, nennt sie alle.</translation>
    </message>
    <message>
        <source>another tree may stand at the same position</source>
        <translation>ein anderer Baum könnte am selben Platz stehen</translation>
    </message>
    <message>
        <source>as 1 day in 20 reaches {:.0f} or more, all in whole figures</source>
        <translation>denn 1 Tag von 20 erreicht {} oder mehr, lauter ganze Zahlen</translation>
    </message>
    <message>
        <source>as 1 day in 20 reaches {:.1f} or more; in Celsius no place is so hot</source>
        <translation>denn 1 Tag von 20 erreicht {} oder mehr; in Celsius ist es nirgends so heiß</translation>
    </message>
    <message>
        <source>as 19 days in 20 stay within {:.1f}; in Fahrenheit no summer is so cold</source>
        <translation>denn 19 von 20 Tagen bleiben bis {}; in Fahrenheit ist kein Sommer so kalt</translation>
    </message>
    <message>
        <source>as it was</source>
        <translation>unverändert</translation>
    </message>
    <message>
        <source>as line {} ({}) shows</source>
        <translation>wie Zeile {} ({}) zeigt</translation>
    </message>
    <message>
        <source>as of {}</source>
        <translation>Stand {}</translation>
    </message>
    <message>
        <source>as stated</source>
        <translation>wie angegeben</translation>
    </message>
    <message>
        <source>as the header says</source>
        <translation>wie die Kopfzeile sagt</translation>
    </message>
    <message>
        <source>at room temperature, about 20 degrees C</source>
        <translation>bei Raumtemperatur, etwa 20 Grad C</translation>
    </message>
    <message>
        <source>average of many chill-and-heat clocks</source>
        <translation>Mittel vieler Kälte-und-Wärme-Uhren</translation>
    </message>
    <message>
        <source>balloon: most flowers are hollow balls</source>
        <translation>Ballonstadium: die meisten Blüten sind hohle Kugeln</translation>
    </message>
    <message>
        <source>between row {} and row {} of block {}</source>
        <translation>zwischen Reihe {} und Reihe {} in Quartier {}</translation>
    </message>
    <message>
        <source>between rows {} and {}</source>
        <translation>zwischen den Reihen {} und {}</translation>
    </message>
    <message>
        <source>bits</source>
        <translation>Bit</translation>
    </message>
    <message>
        <source>blend</source>
        <translation>Pollenmischung</translation>
    </message>
    <message>
        <source>block</source>
        <translation>Quartier</translation>
    </message>
    <message>
        <source>block {}</source>
        <translation>Quartier {}</translation>
    </message>
    <message>
        <source>borrowed</source>
        <translation>übernommen</translation>
    </message>
    <message>
        <source>borrowed from both parents</source>
        <translation>von beiden Eltern übernommen</translation>
    </message>
    <message>
        <source>borrowed from one parent and the orchard</source>
        <translation>von einem Elter und dem Obstgarten übernommen</translation>
    </message>
    <message>
        <source>borrowed from the orchard&apos;s mean</source>
        <translation>vom Mittel des Obstgartens übernommen</translation>
    </message>
    <message>
        <source>bud break: first green tips just seen</source>
        <translation>Knospenaufbruch: erste grüne Spitzen eben sichtbar</translation>
    </message>
    <message>
        <source>bud burst: green tips around the flowers seen</source>
        <translation>Knospenaufbruch: grüne Spitzen um die Blüten sichtbar</translation>
    </message>
    <message>
        <source>chill first, then heat</source>
        <translation>erst Kälte, dann Wärme</translation>
    </message>
    <message>
        <source>chill need</source>
        <translation>Kältebedarf</translation>
    </message>
    <message>
        <source>chill portions</source>
        <translation>Kälteportionen</translation>
    </message>
    <message>
        <source>code</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>cold at</source>
        <translation>Kälte bei</translation>
    </message>
    <message>
        <source>cold from</source>
        <translation>Kälte ab</translation>
    </message>
    <message>
        <source>cold to</source>
        <translation>Kälte bis</translation>
    </message>
    <message>
        <source>colour deepens</source>
        <translation>Farbe wird kräftiger</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>berechnet</translation>
    </message>
    <message>
        <source>computed from its row and position</source>
        <translation>aus Reihe und Platz berechnet</translation>
    </message>
    <message>
        <source>counted on</source>
        <translation>gezählt am</translation>
    </message>
    <message>
        <source>cross</source>
        <translation>Kreuzung</translation>
    </message>
    <message>
        <source>cross {}</source>
        <translation>Kreuzung {}</translation>
    </message>
    <message>
        <source>cross {} on {}</source>
        <translation>Kreuzung {} an {}</translation>
    </message>
    <message>
        <source>cultivar</source>
        <translation>Sorte</translation>
    </message>
    <message>
        <source>cut branch of {}</source>
        <translation>Treibzweig schneiden von {}</translation>
    </message>
    <message>
        <source>d</source>
        <translation>d</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation>d. MMM yyyy</translation>
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
        <source>daily maximum</source>
        <translation>Tagesmaximum</translation>
    </message>
    <message>
        <source>daily minimum</source>
        <translation>Tagesminimum</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>day from &quot;{}&quot;</source>
        <translation>Tag aus „{}“</translation>
    </message>
    <message>
        <source>day from &quot;{}&quot;, &quot;{}&quot; and &quot;{}&quot;</source>
        <translation>Tag aus „{}“, „{}“ und „{}“</translation>
    </message>
    <message>
        <source>day of year</source>
        <translation>Tag im Jahr</translation>
    </message>
    <message>
        <source>day-month-year</source>
        <translation>Tag-Monat-Jahr</translation>
    </message>
    <message>
        <source>decided</source>
        <translation>entschieden</translation>
    </message>
    <message>
        <source>degrees C x days</source>
        <translation>Grad C x Tage</translation>
    </message>
    <message>
        <source>degrees C x hours</source>
        <translation>Grad C x Stunden</translation>
    </message>
    <message>
        <source>digitised</source>
        <translation>digitalisiert</translation>
    </message>
    <message>
        <source>diploid</source>
        <translation>diploid</translation>
    </message>
    <message>
        <source>donor</source>
        <translation>Pollenspender</translation>
    </message>
    <message>
        <source>donor {}</source>
        <translation>Pollenspender {}</translation>
    </message>
    <message>
        <source>dormant: scales closed and dark</source>
        <translation>Winterruhe: Schuppen geschlossen und dunkel</translation>
    </message>
    <message>
        <source>drawn on a map or picture</source>
        <translation>auf einer Karte oder einem Bild gezeichnet</translation>
    </message>
    <message>
        <source>dry at about -20 degrees C</source>
        <translation>trocken bei etwa -20 Grad C</translation>
    </message>
    <message>
        <source>dry at about -80 degrees C</source>
        <translation>trocken bei etwa -80 Grad C</translation>
    </message>
    <message>
        <source>dry at about 4 degrees C</source>
        <translation>trocken bei etwa 4 Grad C</translation>
    </message>
    <message>
        <source>elevation</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>empty seeds</source>
        <translation>taube Samen</translation>
    </message>
    <message>
        <source>en</source>
        <translation>de</translation>
    </message>
    <message>
        <source>end</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>end of bloom: all petals fallen</source>
        <translation>Ende der Blüte: alle Blütenblätter gefallen</translation>
    </message>
    <message>
        <source>error</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>estimated</source>
        <translation>geschätzt</translation>
    </message>
    <message>
        <source>fading: most petals fallen</source>
        <translation>Abblüte: die meisten Blütenblätter gefallen</translation>
    </message>
    <message>
        <source>first flowers open</source>
        <translation>erste Blüten offen</translation>
    </message>
    <message>
        <source>first leaves full size</source>
        <translation>erste Blätter voll entfaltet</translation>
    </message>
    <message>
        <source>first leaves open</source>
        <translation>erste Blätter offen</translation>
    </message>
    <message>
        <source>first position</source>
        <translation>erste Position</translation>
    </message>
    <message>
        <source>flower buds swell</source>
        <translation>Blütenknospen schwellen</translation>
    </message>
    <message>
        <source>flower buds swollen</source>
        <translation>Blütenknospen geschwollen</translation>
    </message>
    <message>
        <source>flower buds visible, still closed</source>
        <translation>Blütenknospen sichtbar, noch geschlossen</translation>
    </message>
    <message>
        <source>flowers open</source>
        <translation>offene Blüten</translation>
    </message>
    <message>
        <source>for spring {}</source>
        <translation>für das Frühjahr {}</translation>
    </message>
    <message>
        <source>for {}</source>
        <translation>für {}</translation>
    </message>
    <message>
        <source>force a cut branch indoors</source>
        <translation>einen geschnittenen Zweig im Warmen treiben</translation>
    </message>
    <message>
        <source>forecast</source>
        <translation>vorhergesagt</translation>
    </message>
    <message>
        <source>fresh</source>
        <translation>frisch</translation>
    </message>
    <message>
        <source>from a forced branch</source>
        <translation>von einem Treibzweig</translation>
    </message>
    <message>
        <source>from tags</source>
        <translation>von Etiketten</translation>
    </message>
    <message>
        <source>fruit 60 % of final size</source>
        <translation>Früchte 60 % der Endgröße</translation>
    </message>
    <message>
        <source>fruit 70 % of final size</source>
        <translation>Früchte 70 % der Endgröße</translation>
    </message>
    <message>
        <source>fruit 80 % of final size</source>
        <translation>Früchte 80 % der Endgröße</translation>
    </message>
    <message>
        <source>fruit 90 % of final size</source>
        <translation>Früchte 90 % der Endgröße</translation>
    </message>
    <message>
        <source>fruit half of final size</source>
        <translation>Früchte halb so groß wie am Ende</translation>
    </message>
    <message>
        <source>fruit to 10 mm, first drop</source>
        <translation>Früchte bis 10 mm, erster Fruchtfall</translation>
    </message>
    <message>
        <source>fruit to 20 mm</source>
        <translation>Früchte bis 20 mm</translation>
    </message>
    <message>
        <source>fruit to 40 mm, still upright</source>
        <translation>Früchte bis 40 mm, noch aufrecht</translation>
    </message>
    <message>
        <source>fruits</source>
        <translation>Früchte</translation>
    </message>
    <message>
        <source>full bloom about {}</source>
        <translation>Vollblüte etwa am {}</translation>
    </message>
    <message>
        <source>full bloom about {},</source>
        <translation>Vollblüte etwa am {},</translation>
    </message>
    <message>
        <source>full bloom: half or more open, first petals fall</source>
        <translation>Vollblüte: die Hälfte oder mehr offen, erste Blütenblätter fallen</translation>
    </message>
    <message>
        <source>full: all its pollen can grow</source>
        <translation>voll: aller Pollen kann wachsen</translation>
    </message>
    <message>
        <source>gather and use fresh, the same day</source>
        <translation>sammeln und frisch am selben Tag verwenden</translation>
    </message>
    <message>
        <source>gather this spring, dry and keep</source>
        <translation>in diesem Frühjahr sammeln, trocknen und lagern</translation>
    </message>
    <message>
        <source>gather {}</source>
        <translation>{} sammeln</translation>
    </message>
    <message>
        <source>gathered on</source>
        <translation>gesammelt am</translation>
    </message>
    <message>
        <source>gathered this spring, freezer</source>
        <translation>in diesem Frühjahr gesammelt, Gefrierschrank</translation>
    </message>
    <message>
        <source>gathered this spring, refrigerator</source>
        <translation>in diesem Frühjahr gesammelt, Kühlschrank</translation>
    </message>
    <message>
        <source>germinated</source>
        <translation>gekeimt</translation>
    </message>
    <message>
        <source>grains</source>
        <translation>Pollenkörner</translation>
    </message>
    <message>
        <source>green bud: flowers parting, closed</source>
        <translation>Grünknospe: Blüten lösen sich voneinander, geschlossen</translation>
    </message>
    <message>
        <source>green leaf tips 5 mm out</source>
        <translation>grüne Blattspitzen 5 mm weit heraus</translation>
    </message>
    <message>
        <source>h</source>
        <translation>h</translation>
    </message>
    <message>
        <source>half the leaves turned or fallen</source>
        <translation>die Hälfte der Blätter verfärbt oder abgefallen</translation>
    </message>
    <message>
        <source>half: part of its pollen can grow</source>
        <translation>halb: ein Teil des Pollens kann wachsen</translation>
    </message>
    <message>
        <source>harvested and stored</source>
        <translation>geerntet und gelagert</translation>
    </message>
    <message>
        <source>heat above 4 °C</source>
        <translation>Wärme über 4 °C</translation>
    </message>
    <message>
        <source>heat above 6 °C</source>
        <translation>Wärme über 6 °C</translation>
    </message>
    <message>
        <source>highest</source>
        <translation>höchste</translation>
    </message>
    <message>
        <source>humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>in deep freezer</source>
        <translation>im Ultratiefkühler</translation>
    </message>
    <message>
        <source>in freezer</source>
        <translation>im Gefrierschrank</translation>
    </message>
    <message>
        <source>in refrigerator</source>
        <translation>im Kühlschrank</translation>
    </message>
    <message>
        <source>in room</source>
        <translation>bei Raumtemperatur</translation>
    </message>
    <message>
        <source>it is not certain</source>
        <translation>es ist nicht sicher</translation>
    </message>
    <message>
        <source>it is not clear where its row begins</source>
        <translation>es ist nicht klar, wo seine Reihe beginnt</translation>
    </message>
    <message>
        <source>it stands off its row</source>
        <translation>er steht neben seiner Reihe</translation>
    </message>
    <message>
        <source>its row has too few trees</source>
        <translation>seine Reihe hat zu wenige Bäume</translation>
    </message>
    <message>
        <source>its rows cannot be gone through</source>
        <translation>seine Reihen lassen sich nicht durchgehen</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>kinship not known</source>
        <translation>Verwandtschaft nicht bekannt</translation>
    </message>
    <message>
        <source>kinship {:.3f}</source>
        <translation>Verwandtschaft {}</translation>
    </message>
    <message>
        <source>label</source>
        <translation>Bezeichnung</translation>
    </message>
    <message>
        <source>label {}</source>
        <translation>Bezeichnung {}</translation>
    </message>
    <message>
        <source>leaf buds begin to swell</source>
        <translation>Blattknospen beginnen zu schwellen</translation>
    </message>
    <message>
        <source>leaf buds swollen: scales light, partly hairy</source>
        <translation>Blattknospen geschwollen: Schuppen hell, teils behaart</translation>
    </message>
    <message>
        <source>leaf fall begins</source>
        <translation>Blattfall beginnt</translation>
    </message>
    <message>
        <source>leaves begin to turn</source>
        <translation>Blätter beginnen sich zu verfärben</translation>
    </message>
    <message>
        <source>line</source>
        <translation>Linie</translation>
    </message>
    <message>
        <source>long-run mean day</source>
        <translation>langjähriger mittlerer Tag</translation>
    </message>
    <message>
        <source>lot {}</source>
        <translation>Partie {}</translation>
    </message>
    <message>
        <source>lowest</source>
        <translation>tiefste</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>measured on the ground</source>
        <translation>vor Ort eingemessen</translation>
    </message>
    <message>
        <source>medium</source>
        <translation>Substrat</translation>
    </message>
    <message>
        <source>member</source>
        <translation>Bestandteil</translation>
    </message>
    <message>
        <source>month-day-year</source>
        <translation>Monat-Tag-Jahr</translation>
    </message>
    <message>
        <source>more leaves open, not full size</source>
        <translation>weitere Blätter offen, noch nicht voll entfaltet</translation>
    </message>
    <message>
        <source>more than one position is possible</source>
        <translation>mehr als ein Platz ist möglich</translation>
    </message>
    <message>
        <source>mouse-ear on the flower bud</source>
        <translation>Mausohrstadium an der Blütenknospe</translation>
    </message>
    <message>
        <source>mouse-ear: green tips 10 mm, leaves parting</source>
        <translation>Mausohrstadium: grüne Spitzen 10 mm, Blätter spreizen sich</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>nearest</source>
        <translation>am nächsten</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>no chance</source>
        <translation>keine Chance</translation>
    </message>
    <message>
        <source>no kinship in the pedigree</source>
        <translation>keine Verwandtschaft in der Abstammung</translation>
    </message>
    <message>
        <source>no position is near</source>
        <translation>kein Platz ist in der Nähe</translation>
    </message>
    <message>
        <source>no row is near</source>
        <translation>keine Reihe ist in der Nähe</translation>
    </message>
    <message>
        <source>no rows could be made out</source>
        <translation>es waren keine Reihen zu erkennen</translation>
    </message>
    <message>
        <source>no tree on record</source>
        <translation>kein Baum eingetragen</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>none: its pollen is refused</source>
        <translation>keine: der Pollen wird abgewiesen</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>not known: S-alleles missing</source>
        <translation>nicht bekannt: S-Allele fehlen</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>note: {}</source>
        <translation>Bemerkung: {}</translation>
    </message>
    <message>
        <source>noted on</source>
        <translation>notiert am</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>observed</source>
        <translation>beobachtet</translation>
    </message>
    <message>
        <source>observer</source>
        <translation>Beobachter</translation>
    </message>
    <message>
        <source>one of its words</source>
        <translation>eines der zugelassenen Wörter</translation>
    </message>
    <message>
        <source>one of: {}</source>
        <translation>eines von: {}</translation>
    </message>
    <message>
        <source>other</source>
        <translation>andere</translation>
    </message>
    <message>
        <source>outside of row {}</source>
        <translation>außerhalb von Reihe {}</translation>
    </message>
    <message>
        <source>over 19 in 20</source>
        <translation>über 19 in 20</translation>
    </message>
    <message>
        <source>parent</source>
        <translation>Elter</translation>
    </message>
    <message>
        <source>part of {}</source>
        <translation>Teil von {}</translation>
    </message>
    <message>
        <source>pass</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>picked on</source>
        <translation>gepflückt am</translation>
    </message>
    <message>
        <source>pink bud: petals just seen</source>
        <translation>Rotknospe: Blütenblätter eben sichtbar</translation>
    </message>
    <message>
        <source>place {}</source>
        <translation>Platz {}</translation>
    </message>
    <message>
        <source>placed by</source>
        <translation>Lage durch</translation>
    </message>
    <message>
        <source>planted on</source>
        <translation>gepflanzt am</translation>
    </message>
    <message>
        <source>ploidy</source>
        <translation>Ploidie</translation>
    </message>
    <message>
        <source>point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>pollen</source>
        <translation>Pollen</translation>
    </message>
    <message>
        <source>pollen kept from last year</source>
        <translation>Pollen vom Vorjahr</translation>
    </message>
    <message>
        <source>pollen lot</source>
        <translation>Pollenpartie</translation>
    </message>
    <message>
        <source>pollen of {}</source>
        <translation>Pollen von {}</translation>
    </message>
    <message>
        <source>pollen parent</source>
        <translation>Pollenelter</translation>
    </message>
    <message>
        <source>pollinate with {}</source>
        <translation>mit {} bestäuben</translation>
    </message>
    <message>
        <source>pollination tag</source>
        <translation>Bestäubungsetikett</translation>
    </message>
    <message>
        <source>pollinizer</source>
        <translation>Befruchter</translation>
    </message>
    <message>
        <source>polygon</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <source>position</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>position {}</source>
        <translation>Platz {}</translation>
    </message>
    <message>
        <source>position {} ({} of the row)</source>
        <translation>Platz {} ({} in der Reihe)</translation>
    </message>
    <message>
        <source>priority</source>
        <translation>Vorrang</translation>
    </message>
    <message>
        <source>protected until</source>
        <translation>geschützt bis</translation>
    </message>
    <message>
        <source>purpose</source>
        <translation>Zweck</translation>
    </message>
    <message>
        <source>removed on</source>
        <translation>entfernt am</translation>
    </message>
    <message>
        <source>removed on {}</source>
        <translation>entfernt am {}</translation>
    </message>
    <message>
        <source>to be planted {}</source>
        <translation>wird gepflanzt {}</translation>
    </message>
    <message>
        <source>removed {}</source>
        <translation>entfernt {}</translation>
    </message>
    <message>
        <source>reserved</source>
        <translation>vorgemerkt</translation>
    </message>
    <message>
        <source>ripe for eating</source>
        <translation>genussreif</translation>
    </message>
    <message>
        <source>ripe for picking</source>
        <translation>pflückreif</translation>
    </message>
    <message>
        <source>ripening begins: first colour</source>
        <translation>Reife beginnt: erste Farbe</translation>
    </message>
    <message>
        <source>rootstock</source>
        <translation>Unterlage</translation>
    </message>
    <message>
        <source>row</source>
        <translation>Reihe</translation>
    </message>
    <message>
        <source>row {}</source>
        <translation>Reihe {}</translation>
    </message>
    <message>
        <source>row {}, position {}</source>
        <translation>Reihe {}, Platz {}</translation>
    </message>
    <message>
        <source>score</source>
        <translation>Bewertung</translation>
    </message>
    <message>
        <source>scored on</source>
        <translation>bewertet am</translation>
    </message>
    <message>
        <source>season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>second fruit drop</source>
        <translation>zweiter Fruchtfall</translation>
    </message>
    <message>
        <source>seed</source>
        <translation>Samen</translation>
    </message>
    <message>
        <source>seed lot</source>
        <translation>Saatgutpartie</translation>
    </message>
    <message>
        <source>seed parent</source>
        <translation>Samenelter</translation>
    </message>
    <message>
        <source>seed parent of cross {}</source>
        <translation>Samenelter der Kreuzung {}</translation>
    </message>
    <message>
        <source>seed ripe after</source>
        <translation>Samen reif nach</translation>
    </message>
    <message>
        <source>seed, pollen</source>
        <translation>Samen, Pollen</translation>
    </message>
    <message>
        <source>seedling</source>
        <translation>Sämling</translation>
    </message>
    <message>
        <source>seedling of cross {}</source>
        <translation>Sämling der Kreuzung {}</translation>
    </message>
    <message>
        <source>seedling of {}</source>
        <translation>Sämling von {}</translation>
    </message>
    <message>
        <source>seedlings wanted</source>
        <translation>gewünschte Sämlinge</translation>
    </message>
    <message>
        <source>selection</source>
        <translation>Auslese</translation>
    </message>
    <message>
        <source>shoot growth begins</source>
        <translation>Triebwachstum beginnt</translation>
    </message>
    <message>
        <source>shoot growth ended, leaves green</source>
        <translation>Triebwachstum beendet, Blätter grün</translation>
    </message>
    <message>
        <source>shoots 20 % of final length</source>
        <translation>Triebe 20 % der Endlänge</translation>
    </message>
    <message>
        <source>shoots 30 % of final length</source>
        <translation>Triebe 30 % der Endlänge</translation>
    </message>
    <message>
        <source>shoots 40 % of final length</source>
        <translation>Triebe 40 % der Endlänge</translation>
    </message>
    <message>
        <source>shoots 50 % of final length</source>
        <translation>Triebe 50 % der Endlänge</translation>
    </message>
    <message>
        <source>shoots 60 % of final length</source>
        <translation>Triebe 60 % der Endlänge</translation>
    </message>
    <message>
        <source>shoots 70 % of final length</source>
        <translation>Triebe 70 % der Endlänge</translation>
    </message>
    <message>
        <source>shoots 80 % of final length</source>
        <translation>Triebe 80 % der Endlänge</translation>
    </message>
    <message>
        <source>shoots 90 % of final length</source>
        <translation>Triebe 90 % der Endlänge</translation>
    </message>
    <message>
        <source>sigmoid heat</source>
        <translation>Wärme nach Sigmoidkurve</translation>
    </message>
    <message>
        <source>sound seeds</source>
        <translation>gut ausgebildete Samen</translation>
    </message>
    <message>
        <source>source</source>
        <translation>Herkunft</translation>
    </message>
    <message>
        <source>spacing</source>
        <translation>Pflanzabstand</translation>
    </message>
    <message>
        <source>species</source>
        <translation>Wildart</translation>
    </message>
    <message>
        <source>sprouted</source>
        <translation>gekeimt</translation>
    </message>
    <message>
        <source>standing</source>
        <translation>steht</translation>
    </message>
    <message>
        <source>start</source>
        <translation>Startpunkt</translation>
    </message>
    <message>
        <source>station</source>
        <translation>Station</translation>
    </message>
    <message>
        <source>store</source>
        <translation>Lager</translation>
    </message>
    <message>
        <source>structure&apos;s own unit</source>
        <translation>eigene Einheit des Ansatzes</translation>
    </message>
    <message>
        <source>surveyed</source>
        <translation>eingemessen</translation>
    </message>
    <message>
        <source>tag</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>tag {}</source>
        <translation>Etikett {}</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>besetzt</translation>
    </message>
    <message>
        <source>tenths of a degree, or kelvin</source>
        <translation>Zehntelgrad oder Kelvin</translation>
    </message>
    <message>
        <source>tested on</source>
        <translation>geprüft am</translation>
    </message>
    <message>
        <source>tetraploid</source>
        <translation>tetraploid</translation>
    </message>
    <message>
        <source>text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>the archive cannot be read back</source>
        <translation>das Archiv lässt sich nicht zurücklesen</translation>
    </message>
    <message>
        <source>the archive was cut short</source>
        <translation>das Archiv ist abgeschnitten</translation>
    </message>
    <message>
        <source>the book has it at position {}</source>
        <translation>nach dem Buch steht er an Platz {}</translation>
    </message>
    <message>
        <source>the book has it in row {}</source>
        <translation>nach dem Buch steht er in Reihe {}</translation>
    </message>
    <message>
        <source>the deep freezer</source>
        <translation>im Ultratiefkühler</translation>
    </message>
    <message>
        <source>the freezer</source>
        <translation>im Gefrierschrank</translation>
    </message>
    <message>
        <source>the gap at {}</source>
        <translation>die Lücke bei {}</translation>
    </message>
    <message>
        <source>the path of a file</source>
        <translation>der Pfad einer Datei</translation>
    </message>
    <message>
        <source>the path of an orchard book</source>
        <translation>der Pfad eines Obstgartenbuchs</translation>
    </message>
    <message>
        <source>the refrigerator</source>
        <translation>im Kühlschrank</translation>
    </message>
    <message>
        <source>the year coming first</source>
        <translation>das Jahr steht vorn</translation>
    </message>
    <message>
        <source>to is before from.</source>
        <translation>to liegt vor from.</translation>
    </message>
    <message>
        <source>trait</source>
        <translation>Merkmal</translation>
    </message>
    <message>
        <source>treatment</source>
        <translation>Behandlung</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>Baum</translation>
    </message>
    <message>
        <source>tree {} has this position in the book</source>
        <translation>nach dem Buch hat Baum {} diesen Platz</translation>
    </message>
    <message>
        <source>tree {}, {} flowers</source>
        <translation>Baum {}, {} Blüten</translation>
    </message>
    <message>
        <source>triploid</source>
        <translation>triploid</translation>
    </message>
    <message>
        <source>under 1 in 20</source>
        <translation>unter 1 in 20</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>until {}</source>
        <translation>bis {}</translation>
    </message>
    <message>
        <source>upper-c is not above base-c.</source>
        <translation>upper-c liegt nicht über base-c.</translation>
    </message>
    <message>
        <source>used up on</source>
        <translation>aufgebraucht am</translation>
    </message>
    <message>
        <source>vacant</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>warning</source>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>washed on</source>
        <translation>gewaschen am</translation>
    </message>
    <message>
        <source>week of {}</source>
        <translation>Woche vom {}</translation>
    </message>
    <message>
        <source>whole numbers separated by commas</source>
        <translation>ganze Zahlen, durch Kommas getrennt</translation>
    </message>
    <message>
        <source>worked for cross {}</source>
        <translation>bestäubt für Kreuzung {}</translation>
    </message>
    <message>
        <source>worked on</source>
        <translation>bestäubt am</translation>
    </message>
    <message>
        <source>written</source>
        <translation>geschrieben</translation>
    </message>
    <message>
        <source>year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <source>year-month-day</source>
        <translation>Jahr-Monat-Tag</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>yes or no</source>
        <translation>Ja oder Nein</translation>
    </message>
    <message>
        <source>yours, left alone</source>
        <translation>eigene Fassung, belassen</translation>
    </message>
    <message>
        <source>{:.0f} % for {}, {:.1f} m to the {}.</source>
        <translation>{} % für {}, {} m {}.</translation>
    </message>
    <message>
        <source>{:.0f} of 100</source>
        <translation>{} von 100</translation>
    </message>
    <message>
        <source>{} (BBCH {})</source>
        <translation>{} (BBCH {})</translation>
    </message>
    <message>
        <source>{} (from its parents)</source>
        <translation>{} (von den Eltern)</translation>
    </message>
    <message>
        <source>{} (from one parent)</source>
        <translation>{} (von einem Elter)</translation>
    </message>
    <message>
        <source>{} (from the orchard&apos;s mean)</source>
        <translation>{} (vom Mittel des Obstgartens)</translation>
    </message>
    <message>
        <source>{} ({})</source>
        <translation>{} ({})</translation>
    </message>
    <message>
        <source>{} A gate is written as in 48.1340,9.3010.</source>
        <translation>{} Ein Tor wird geschrieben wie in 48.1340,9.3010.</translation>
    </message>
    <message>
        <source>{} Apr</source>
        <translation>{}. Apr</translation>
    </message>
    <message>
        <source>{} April {}</source>
        <translation>{}. April {}</translation>
    </message>
    <message>
        <source>{} Aug</source>
        <translation>{}. Aug</translation>
    </message>
    <message>
        <source>{} August {}</source>
        <translation>{}. August {}</translation>
    </message>
    <message>
        <source>{} Dec</source>
        <translation>{}. Dez</translation>
    </message>
    <message>
        <source>{} December {}</source>
        <translation>{}. Dezember {}</translation>
    </message>
    <message>
        <source>{} Did you mean &apos;{}&apos;?</source>
        <translation>{} War „{}“ gemeint?</translation>
    </message>
    <message>
        <source>{} Feb</source>
        <translation>{}. Feb</translation>
    </message>
    <message>
        <source>{} February {}</source>
        <translation>{}. Februar {}</translation>
    </message>
    <message>
        <source>{} It says: {}.</source>
        <translation>{} Die Meldung: {}.</translation>
    </message>
    <message>
        <source>{} Jan</source>
        <translation>{}. Jan</translation>
    </message>
    <message>
        <source>{} January {}</source>
        <translation>{}. Januar {}</translation>
    </message>
    <message>
        <source>{} Jul</source>
        <translation>{}. Jul</translation>
    </message>
    <message>
        <source>{} July {}</source>
        <translation>{}. Juli {}</translation>
    </message>
    <message>
        <source>{} Jun</source>
        <translation>{}. Jun</translation>
    </message>
    <message>
        <source>{} June {}</source>
        <translation>{}. Juni {}</translation>
    </message>
    <message>
        <source>{} Latitude and longitude seem to stand the wrong way round.</source>
        <translation>{} Breite und Länge scheinen vertauscht zu sein.</translation>
    </message>
    <message>
        <source>{} Mar</source>
        <translation>{}. Mär</translation>
    </message>
    <message>
        <source>{} March {}</source>
        <translation>{}. März {}</translation>
    </message>
    <message>
        <source>{} May</source>
        <translation>{}. Mai</translation>
    </message>
    <message>
        <source>{} May {}</source>
        <translation>{}. Mai {}</translation>
    </message>
    <message>
        <source>{} Nov</source>
        <translation>{}. Nov</translation>
    </message>
    <message>
        <source>{} November {}</source>
        <translation>{}. November {}</translation>
    </message>
    <message>
        <source>{} Oct</source>
        <translation>{}. Okt</translation>
    </message>
    <message>
        <source>{} October {}</source>
        <translation>{}. Oktober {}</translation>
    </message>
    <message>
        <source>{} Reload the layers that are open in a desktop.</source>
        <translation>{} Die in einer GIS-Oberfläche offenen Layer neu laden.</translation>
    </message>
    <message>
        <source>{} Sep</source>
        <translation>{}. Sep</translation>
    </message>
    <message>
        <source>{} September {}</source>
        <translation>{}. September {}</translation>
    </message>
    <message>
        <source>{} The book&apos;s rows have {} positions, {} taken.</source>
        <translation>{} Die Reihen des Buchs haben {} Positionen, {} davon besetzt.</translation>
    </message>
    <message>
        <source>{} accessions</source>
        <translation>{} Akzessionen</translation>
    </message>
    <message>
        <source>{} accessions foretold</source>
        <translation>{} Akzessionen vorhergesagt</translation>
    </message>
    <message>
        <source>{} and {}</source>
        <translation>{} und {}</translation>
    </message>
    <message>
        <source>{} and {} more</source>
        <translation>{} und {} weitere</translation>
    </message>
    <message>
        <source>{} blooms before the other trees of {}.</source>
        <translation>{} blüht vor den anderen Bäumen von {}.</translation>
    </message>
    <message>
        <source>{} cases</source>
        <translation>{} Fälle</translation>
    </message>
    <message>
        <source>{} comes to balloon about {}; {} takes pollen until about {}.</source>
        <translation>{} kommt etwa am {} ins Ballonstadium; {} nimmt bis etwa {} Pollen an.</translation>
    </message>
    <message>
        <source>{} crosses: {}.</source>
        <translation>{} Kreuzungen: {}.</translation>
    </message>
    <message>
        <source>{} day(s) with only one of the two extremes were left out.</source>
        <translation>{} Tage mit nur einem der beiden Extreme wurden ausgelassen.</translation>
    </message>
    <message>
        <source>{} days</source>
        <translation>{} Tage</translation>
    </message>
    <message>
        <source>{} days in the future of {} cannot have been observed.</source>
        <translation>{} Tage nach {} können noch nicht beobachtet worden sein.</translation>
    </message>
    <message>
        <source>{} days need {} hourly readings.</source>
        <translation>{} Tage brauchen {} Stundenwerte.</translation>
    </message>
    <message>
        <source>{} days were read, from {} to {}.</source>
        <translation>{} Tage wurden gelesen, von {} bis {}.</translation>
    </message>
    <message>
        <source>{} does not come to balloon in time.</source>
        <translation>{} kommt nicht rechtzeitig ins Ballonstadium.</translation>
    </message>
    <message>
        <source>{} donor flowers</source>
        <translation>{} Spenderblüten</translation>
    </message>
    <message>
        <source>{} field tasks</source>
        <translation>{} Feldarbeiten</translation>
    </message>
    <message>
        <source>{} flowers</source>
        <translation>{} Blüten</translation>
    </message>
    <message>
        <source>{} flowers are worked already, {} are left to do.</source>
        <translation>{} Blüten sind schon bestäubt, {} bleiben zu tun.</translation>
    </message>
    <message>
        <source>{} flowers on one tree are more than can be worked: add trees, or spread the cross over several springs.</source>
        <translation>{} Blüten an einem Baum sind mehr, als sich bestäuben lassen: Bäume hinzunehmen oder die Kreuzung auf mehrere Frühjahre verteilen.</translation>
    </message>
    <message>
        <source>{} flowers on {} trees are more than can be worked: add trees, or spread the cross over several springs.</source>
        <translation>{} Blüten an {} Bäumen sind mehr, als sich bestäuben lassen: Bäume hinzunehmen oder die Kreuzung auf mehrere Frühjahre verteilen.</translation>
    </message>
    <message>
        <source>{} flowers worked for {}, tag {}</source>
        <translation>{} Blüten bestäubt für {}, Etikett {}</translation>
    </message>
    <message>
        <source>{} for {}</source>
        <translation>{} für {}</translation>
    </message>
    <message>
        <source>{} from 1 February (south: 2 August)</source>
        <translation>{} ab 1. Februar (Süden: 2. August)</translation>
    </message>
    <message>
        <source>{} from 1 January (south: 2 July)</source>
        <translation>{} ab 1. Januar (Süden: 2. Juli)</translation>
    </message>
    <message>
        <source>{} from 1 March (south: 30 August)</source>
        <translation>{} ab 1. März (Süden: 30. August)</translation>
    </message>
    <message>
        <source>{} from 15 February (south: 16 August)</source>
        <translation>{} ab 15. Februar (Süden: 16. August)</translation>
    </message>
    <message>
        <source>{} from 15 January (south: 16 July)</source>
        <translation>{} ab 15. Januar (Süden: 16. Juli)</translation>
    </message>
    <message>
        <source>{} from {:.0f} chill portions</source>
        <translation>{} ab {} Kälteportionen</translation>
    </message>
    <message>
        <source>{} fruits do not hold {} seeds: ten each is usual, {} the most.</source>
        <translation>{} Früchte enthalten keine {} Samen: Zehn je Frucht sind üblich, {} das Höchste.</translation>
    </message>
    <message>
        <source>{} has no living tree to seed this cross.</source>
        <translation>{} hat keinen lebenden Baum, der die Samen dieser Kreuzung tragen könnte.</translation>
    </message>
    <message>
        <source>{} has no living tree to take pollen from.</source>
        <translation>{} hat keinen lebenden Baum, von dem Pollen zu nehmen wäre.</translation>
    </message>
    <message>
        <source>{} has no parameter &apos;{}&apos;.</source>
        <translation>{} hat keinen Parameter „{}“.</translation>
    </message>
    <message>
        <source>{} in 10</source>
        <translation>{} in 10</translation>
    </message>
    <message>
        <source>{} is missing.</source>
        <translation>{} fehlt.</translation>
    </message>
    <message>
        <source>{} is needed. {}</source>
        <translation>{} wird gebraucht. {}</translation>
    </message>
    <message>
        <source>{} is protected until {}.</source>
        <translation>{} ist geschützt bis {}.</translation>
    </message>
    <message>
        <source>{} is triploid: most of its pollen is bad.</source>
        <translation>{} ist triploid: Der meiste Pollen ist taub.</translation>
    </message>
    <message>
        <source>{} is {}, which is out of its range.</source>
        <translation>{} ist {} und liegt außerhalb der Grenzen.</translation>
    </message>
    <message>
        <source>{} line(s) without a reading were left out, the first here.</source>
        <translation>{} Zeilen ohne Messwert wurden ausgelassen, die erste hier.</translation>
    </message>
    <message>
        <source>{} m above the sea</source>
        <translation>{} m über dem Meer</translation>
    </message>
    <message>
        <source>{} missing day(s) in short gaps were filled from their neighbours.</source>
        <translation>{} fehlende Tage in kurzen Lücken wurden aus ihren Nachbarn gefüllt.</translation>
    </message>
    <message>
        <source>{} more</source>
        <translation>{} weitere</translation>
    </message>
    <message>
        <source>{} more lines like this: {}</source>
        <translation>{} weitere Zeilen wie diese: {}</translation>
    </message>
    <message>
        <source>{} needs fitted ({}) from {} full-bloom days in {} seasons.</source>
        <translation>{} Bedarfswerte ermittelt ({}) aus {} Tagen der Vollblüte in {} Saisons.</translation>
    </message>
    <message>
        <source>{} no. {}</source>
        <translation>{} Nr. {}</translation>
    </message>
    <message>
        <source>{} notes</source>
        <translation>{} Notizen</translation>
    </message>
    <message>
        <source>{} notes of this season are not learned from: its weather is not whole yet.</source>
        <translation>{} Notizen dieser Saison bleiben beim Anlernen außer Acht: Das Wetter der Saison ist noch nicht vollständig.</translation>
    </message>
    <message>
        <source>{} notes of this season are not learned from: its weather is not whole.</source>
        <translation>{} Notizen dieser Saison bleiben beim Anlernen außer Acht: Das Wetter der Saison ist nicht vollständig.</translation>
    </message>
    <message>
        <source>{} notes of {} seasons are not learned from: their weather is not whole.</source>
        <translation>{} Notizen aus {} Saisons bleiben beim Anlernen außer Acht: Das Wetter dieser Saisons ist nicht vollständig.</translation>
    </message>
    <message>
        <source>{} of {}</source>
        <translation>{}: {}</translation>
    </message>
    <message>
        <source>{} of {} rows</source>
        <translation>{} von {} Zeilen</translation>
    </message>
    <message>
        <source>{} of {} trees in {} rows can be numbered; nothing was written, {} left open.</source>
        <translation>{} von {} Bäumen in {} Reihen lassen sich nummerieren; es wurde nichts geschrieben, {} bleiben offen.</translation>
    </message>
    <message>
        <source>{} of {} trees in {} rows can be numbered; the trees were left as they are, {} left open.</source>
        <translation>{} von {} Bäumen in {} Reihen lassen sich nummerieren; die Bäume blieben, wie sie waren, {} bleiben offen.</translation>
    </message>
    <message>
        <source>{} of {} trees in {} rows were numbered in the book, {} left open.</source>
        <translation>{} von {} Bäumen in {} Reihen wurden im Buch nummeriert, {} bleiben offen.</translation>
    </message>
    <message>
        <source>{} on itself: the style refuses its own pollen, expect no seed.</source>
        <translation>{} auf sich selbst: Der Griffel weist eigenen Pollen ab, keine Samen zu erwarten.</translation>
    </message>
    <message>
        <source>{} opens about {} after the last flower of {} that can take pollen ({}).</source>
        <translation>{} öffnet etwa {} nach der letzten Blüte von {}, die Pollen annehmen kann ({}).</translation>
    </message>
    <message>
        <source>{} past seasons</source>
        <translation>{} vergangenen Saisons</translation>
    </message>
    <message>
        <source>{} pieces of pollen work, the first by {}.</source>
        <translation>{} Pollenarbeiten, die erste bis {}.</translation>
    </message>
    <message>
        <source>{} pollen</source>
        <translation>{} Pollen</translation>
    </message>
    <message>
        <source>{} pollen tasks</source>
        <translation>{} Pollenarbeiten</translation>
    </message>
    <message>
        <source>{} rows have this name; it must be one row&apos;s alone.</source>
        <translation>{} Zeilen haben diesen Namen; er darf nur einer Zeile gehören.</translation>
    </message>
    <message>
        <source>{} rows with {} positions in block {} added.</source>
        <translation>{} Reihen mit {} Positionen in Quartier {} hinzugefügt.</translation>
    </message>
    <message>
        <source>{} rows with {} positions in block {}: nothing was written.</source>
        <translation>{} Reihen mit {} Positionen in Quartier {}: Es wurde nichts geschrieben.</translation>
    </message>
    <message>
        <source>{} seasons</source>
        <translation>{} Saisons</translation>
    </message>
    <message>
        <source>{} stands at balloon or beyond: there is nothing left to force.</source>
        <translation>{} steht im Ballonstadium oder ist weiter: Es ist nichts mehr zu treiben.</translation>
    </message>
    <message>
        <source>{} to {}</source>
        <translation>{} bis {}</translation>
    </message>
    <message>
        <source>{} trees are too many for one walk; {} is the most.</source>
        <translation>{} Bäume sind zu viele für einen Rundgang; höchstens {}.</translation>
    </message>
    <message>
        <source>{} trees found; the best: {}.</source>
        <translation>{} Bäume gefunden; der beste: {}.</translation>
    </message>
    <message>
        <source>{} trees found; the nearest: {}.</source>
        <translation>{} Bäume gefunden; der nächste: {}.</translation>
    </message>
    <message>
        <source>{} trees, {:.0f} m to walk</source>
        <translation>{} Bäume, {} m zu gehen</translation>
    </message>
    <message>
        <source>{} value(s) that failed a quality check of the file&apos;s keeper were rejected.</source>
        <translation>{} Werte, die eine Qualitätsprüfung des Herausgebers der Datei nicht bestanden, wurden verworfen.</translation>
    </message>
    <message>
        <source>{} warnings</source>
        <translation>{} Warnungen</translation>
    </message>
    <message>
        <source>{} written, {} as they were, {} of yours left alone.</source>
        <translation>{} geschrieben, {} unverändert, {} eigene belassen.</translation>
    </message>
    <message>
        <source>{} {:.0f} %</source>
        <translation>{} {} %</translation>
    </message>
    <message>
        <source>{} {}</source>
        <translation>{} {}</translation>
    </message>
    <message>
        <source>{} {} ({})</source>
        <translation>{} {} ({})</translation>
    </message>
    <message>
        <source>{} {} days added, {} replaced, {} left as they were.</source>
        <translation>{} {} Tage hinzugefügt, {} ersetzt, {} unverändert.</translation>
    </message>
    <message>
        <source>{}, 1 letter off</source>
        <translation>{}, 1 Buchstabe weicht ab</translation>
    </message>
    <message>
        <source>{}, at most {}</source>
        <translation>{}, höchstens {}</translation>
    </message>
    <message>
        <source>{}, continued</source>
        <translation>{}, Fortsetzung</translation>
    </message>
    <message>
        <source>{}, no living tree on record</source>
        <translation>{}, kein lebender Baum eingetragen</translation>
    </message>
    <message>
        <source>{}, overlap {:.2f}</source>
        <translation>{}, Überlappung {}</translation>
    </message>
    <message>
        <source>{}, row {}</source>
        <translation>{}, Reihe {}</translation>
    </message>
    <message>
        <source>{}, row {}, position {}</source>
        <translation>{}, Reihe {}, Platz {}</translation>
    </message>
    <message>
        <source>{}, stage {}</source>
        <translation>{}, Stadium {}</translation>
    </message>
    <message>
        <source>{}, tree {}</source>
        <translation>{}, Baum {}</translation>
    </message>
    <message>
        <source>{}, {} % open</source>
        <translation>{}, {} % offen</translation>
    </message>
    <message>
        <source>{}, {} letters off</source>
        <translation>{}, {} Buchstaben weichen ab</translation>
    </message>
    <message>
        <source>{}, {} or more</source>
        <translation>{}, mindestens {}</translation>
    </message>
    <message>
        <source>{}, {} or more {}</source>
        <translation>{}, mindestens {} {}</translation>
    </message>
    <message>
        <source>{}, {} to {}</source>
        <translation>{}, {} bis {}</translation>
    </message>
    <message>
        <source>{}, {} to {}. Earliest median full bloom: {}, {}. Latest: {}, {}.</source>
        <translation>{}, {} bis {}. Früheste mittlere Vollblüte: {}, {}. Späteste: {}, {}.</translation>
    </message>
    <message>
        <source>{}.</source>
        <translation>{}.</translation>
    </message>
    <message>
        <source>{}. Written to {} as {}; note-undo takes it back.</source>
        <translation>{}. In {} geschrieben als {}; note-undo nimmt es zurück.</translation>
    </message>
    <message>
        <source>{}: &apos;{}&apos; is not {}.</source>
        <translation>{}: „{}“ passt nicht, gebraucht wird {}.</translation>
    </message>
    <message>
        <source>{}: from {:.15g} to {}.</source>
        <translation>{}: von {} bis {}.</translation>
    </message>
    <message>
        <source>{}: full bloom from {} to {}, foretold by {}.</source>
        <translation>{}: Vollblüte von {} bis {}, Verfahren: {}.</translation>
    </message>
    <message>
        <source>{}: full bloom of all about {}, foretold by {}.</source>
        <translation>{}: Vollblüte aller etwa am {}, Verfahren: {}.</translation>
    </message>
    <message>
        <source>{}: full bloom {}, between {} and {}; first bloom {}, end {}</source>
        <translation>{}: Vollblüte {}, zwischen {} und {}; erste Blüten {}, Ende {}</translation>
    </message>
    <message>
        <source>{}: no accession to foretell.</source>
        <translation>{}: keine Akzession vorherzusagen.</translation>
    </message>
    <message>
        <source>{}: no order is shorter.</source>
        <translation>{}: Keine Reihenfolge ist kürzer.</translation>
    </message>
    <message>
        <source>{}: there is no day {}.</source>
        <translation>{}: Einen Tag {} gibt es nicht.</translation>
    </message>
    <message>
        <source>{}: {}</source>
        <translation>{}: {}</translation>
    </message>
    <message>
        <source>{}nd</source>
        <translation>{}.</translation>
    </message>
    <message>
        <source>{}rd</source>
        <translation>{}.</translation>
    </message>
    <message>
        <source>{}st</source>
        <translation>{}.</translation>
    </message>
    <message>
        <source>{}th</source>
        <translation>{}.</translation>
    </message>
    <message>
        <source>● own notes, and how many; ○&#xa0;borrowed. Seed, pollen: its part in the wanted crosses. Days on the axis are Mondays.</source>
        <translation>● eigene Notizen und wie viele; ○&#xa0;übernommen. Samen, Pollen: die Rolle in den gewünschten Kreuzungen. Tage an der Achse sind Montage.</translation>
    </message>
    <message>
        <source>header</source>
        <translation>Kopfzeile</translation>
    </message>
    <message>
        <source>line {}</source>
        <translation>Zeile {}</translation>
    </message>
    <message>
        <source>row {0}</source>
        <translation>Zeile {}</translation>
    </message>
    <message>
        <source>season {}</source>
        <translation>Saison {}</translation>
    </message>
    <message>
        <source>{0} note</source>
        <translation>{} Hinweis</translation>
    </message>
    <message>
        <source>{0} notes</source>
        <translation>{} Hinweise</translation>
    </message>
    <message>
        <source>accuracy m</source>
        <translation>Genauigkeit (m)</translation>
    </message>
    <message>
        <source>bbch</source>
        <translation>BBCH-Stadium</translation>
    </message>
    <message>
        <source>bloom note</source>
        <translation>Blühnotiz</translation>
    </message>
    <message>
        <source>cold c</source>
        <translation>Kälte (°C)</translation>
    </message>
    <message>
        <source>cross goal</source>
        <translation>Kreuzungsziel</translation>
    </message>
    <message>
        <source>elevation m</source>
        <translation>Höhe (m)</translation>
    </message>
    <message>
        <source>fruit</source>
        <translation>Frucht</translation>
    </message>
    <message>
        <source>humidity percent</source>
        <translation>Luftfeuchte (%)</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>Partie</translation>
    </message>
    <message>
        <source>mass mg</source>
        <translation>Masse (mg)</translation>
    </message>
    <message>
        <source>on day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>open percent</source>
        <translation>offene Blüten (%)</translation>
    </message>
    <message>
        <source>pollen test</source>
        <translation>Pollenprüfung</translation>
    </message>
    <message>
        <source>pollination</source>
        <translation>Bestäubung</translation>
    </message>
    <message>
        <source>s alleles</source>
        <translation>S-Allele</translation>
    </message>
    <message>
        <source>seed out</source>
        <translation>Samenentnahme</translation>
    </message>
    <message>
        <source>seed ripe days</source>
        <translation>Samen reif nach Tagen</translation>
    </message>
    <message>
        <source>seeds empty</source>
        <translation>taube Samen</translation>
    </message>
    <message>
        <source>seeds sound</source>
        <translation>gut ausgebildete Samen</translation>
    </message>
    <message>
        <source>spacing m</source>
        <translation>Pflanzabstand (m)</translation>
    </message>
    <message>
        <source>sprout count</source>
        <translation>Keimzählung</translation>
    </message>
    <message>
        <source>t max c</source>
        <translation>Maximum (°C)</translation>
    </message>
    <message>
        <source>t min c</source>
        <translation>Minimum (°C)</translation>
    </message>
    <message>
        <source>trait score</source>
        <translation>Bonitur</translation>
    </message>
    <message>
        <source>tree row</source>
        <translation>Baumreihe</translation>
    </message>
    <message>
        <source>weather day</source>
        <translation>Wettertag</translation>
    </message>
    <message>
        <source>1 block</source>
        <translation>1 Quartier</translation>
    </message>
    <message>
        <source>1 error stands in the way: as it is, nothing would be written.</source>
        <translation>1 Fehler steht im Weg: So, wie es ist, würde nichts geschrieben.</translation>
    </message>
    <message>
        <source>1 feature is in the book already, at the same place.</source>
        <translation>1 Objekt steht schon im Buch, am selben Ort.</translation>
    </message>
    <message>
        <source>1 tree</source>
        <translation>1 Baum</translation>
    </message>
    <message>
        <source>1 tree for receivers.</source>
        <translation>1 Baum für Empfänger.</translation>
    </message>
    <message>
        <source>1 tree row</source>
        <translation>1 Baumreihe</translation>
    </message>
    <message>
        <source>1 value is a year alone; the book keeps days.</source>
        <translation>1 Wert ist nur ein Jahr; das Buch führt Tage.</translation>
    </message>
    <message>
        <source>50 mm: print at 100 %, then measure this line</source>
        <translation>50 mm: Druck mit 100 %, dann miss diese Linie nach</translation>
    </message>
    <message>
        <source>A better transformation, accurate to {}, wants the file {}, which is not installed.</source>
        <translation>Eine bessere Transformation, Genauigkeit {}, braucht die Datei {}, die nicht installiert ist.</translation>
    </message>
    <message>
        <source>A check tree at every so-manieth place; 0 for none.</source>
        <translation>Ein Vergleichsbaum an jedem so vielten Platz; 0 für keinen.</translation>
    </message>
    <message>
        <source>A label of {:.1f} x {:.1f} mm is too small to print on.</source>
        <translation>Ein Etikett von {} x {} mm ist zu klein zum Bedrucken.</translation>
    </message>
    <message>
        <source>A map at 1:{} on 1 page.</source>
        <translation>Eine Karte im Maßstab 1:{} auf 1 Seite.</translation>
    </message>
    <message>
        <source>A map at 1:{} on {} pages.</source>
        <translation>Eine Karte im Maßstab 1:{} auf {} Seiten.</translation>
    </message>
    <message>
        <source>A new accession, but its name is very near to &quot;{}&quot;.</source>
        <translation>Eine neue Akzession, aber ihr Name ist &quot;{}&quot; sehr ähnlich.</translation>
    </message>
    <message>
        <source>A number of seedlings cannot be read.</source>
        <translation>Eine Zahl von Sämlingen ist nicht lesbar.</translation>
    </message>
    <message>
        <source>A sheet of your own needs the size of its labels.</source>
        <translation>Für einen eigenen Etikettenbogen musst du die Größe der Etiketten angeben.</translation>
    </message>
    <message>
        <source>Added: {}.</source>
        <translation>Hinzugefügt: {}.</translation>
    </message>
    <message>
        <source>Adopt or lay the rows first, or let add-rows draw it through its trees.</source>
        <translation>Übernimm zuerst die Reihen oder lege sie an, oder lass add-rows die Reihe durch ihre Bäume ziehen.</translation>
    </message>
    <message>
        <source>Adopt the layer of the blocks first, or let add-rows draw it around its trees.</source>
        <translation>Übernimm zuerst den Layer der Quartiere, oder lass add-rows das Quartier um seine Bäume ziehen.</translation>
    </message>
    <message>
        <source>After that it is late.</source>
        <translation>Danach ist es zu spät dran.</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Alter</translation>
    </message>
    <message>
        <source>All lots</source>
        <translation>Alle Partien</translation>
    </message>
    <message>
        <source>Any number; the same one gives the same order again.</source>
        <translation>Eine beliebige Zahl; dieselbe gibt wieder dieselbe Folge.</translation>
    </message>
    <message>
        <source>As many sprouted in the end as far as can be told, but {} earlier than {}: half after {:.0f} and {:.0f} days (p = {:.2g}).</source>
        <translation>Am Ende keimten, soweit erkennbar, gleich viele, aber {} früher als {}: die Hälfte nach {} und {} Tagen (p = {}).</translation>
    </message>
    <message>
        <source>Ask for a larger scale or larger paper.</source>
        <translation>Nimm einen größeren Maßstab oder größeres Papier.</translation>
    </message>
    <message>
        <source>Ask for a larger scale, or number the trees: positions are shorter than labels.</source>
        <translation>Nimm einen größeren Maßstab, oder nummeriere die Bäume: Platznummern sind kürzer als Bezeichnungen.</translation>
    </message>
    <message>
        <source>Ask for fewer, or for tags without letters.</source>
        <translation>Nimm weniger, oder Anhänger ohne Buchstaben.</translation>
    </message>
    <message>
        <source>Ask for fewer, or note the sprouts first.</source>
        <translation>Nimm weniger oder notiere zuerst die Keime.</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>Mindestens</translation>
    </message>
    <message>
        <source>At most</source>
        <translation>Höchstens</translation>
    </message>
    <message>
        <source>At this scale neighbours are less than 3 mm apart: marks touch.</source>
        <translation>In diesem Maßstab liegen Nachbarn weniger als 3 mm auseinander: Die Zeichen berühren sich.</translation>
    </message>
    <message>
        <source>Bag flowers of {} for cross {}</source>
        <translation>Blüten von {} für Kreuzung {} eintüten</translation>
    </message>
    <message>
        <source>Block {} has no row of this name; trees that name it: {}.</source>
        <translation>Quartier {} hat keine Reihe dieses Namens; Bäume, die sie nennen: {}.</translation>
    </message>
    <message>
        <source>Both together: what the season plan reckons with.</source>
        <translation>Beides zusammen: womit der Saisonplan rechnet.</translation>
    </message>
    <message>
        <source>By the last count.</source>
        <translation>Nach der letzten Zählung.</translation>
    </message>
    <message>
        <source>By the last count; unknown before the first.</source>
        <translation>Nach der letzten Zählung; unbekannt vor der ersten.</translation>
    </message>
    <message>
        <source>By the last counts.</source>
        <translation>Nach den letzten Zählungen.</translation>
    </message>
    <message>
        <source>CSV of the store&apos;s readings: day, a time of day if there is one, degrees Celsius. Where it is not given, the temperature noted with each lot holds.</source>
        <translation>CSV der Messwerte des Lagers: Tag, Uhrzeit, falls vorhanden, Grad Celsius. Ohne sie gilt die zu jeder Partie notierte Temperatur.</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>Kalender</translation>
    </message>
    <message>
        <source>Came to nothing</source>
        <translation>Gescheitert</translation>
    </message>
    <message>
        <source>Carried from {} to {} by the transformation &quot;{}&quot;.</source>
        <translation>Umgerechnet von {} nach {} mit der Transformation &quot;{}&quot;.</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>Check every</source>
        <translation>Vergleich alle</translation>
    </message>
    <message>
        <source>Check some places on the map.</source>
        <translation>Prüfe einige Orte auf der Karte.</translation>
    </message>
    <message>
        <source>Check the coordinates and their system.</source>
        <translation>Prüfe die Koordinaten und ihr Bezugssystem.</translation>
    </message>
    <message>
        <source>Check them on the map, or transform the layer with better parameters first.</source>
        <translation>Prüfe sie auf der Karte, oder transformiere den Layer zuerst mit besseren Parametern.</translation>
    </message>
    <message>
        <source>Check trees are wanted but not named.</source>
        <translation>Vergleichsbäume sind gewünscht, aber nicht genannt.</translation>
    </message>
    <message>
        <source>Choose a block, an accession or fewer copies.</source>
        <translation>Wähle ein Quartier, eine Akzession oder weniger Exemplare.</translation>
    </message>
    <message>
        <source>Choose a block, larger paper or a smaller scale; or see whether a tree has strayed on the map.</source>
        <translation>Wähle ein Quartier, größeres Papier oder einen kleineren Maßstab; oder sieh nach, ob ein Baum auf der Karte weit abseits liegt.</translation>
    </message>
    <message>
        <source>Choose a block.</source>
        <translation>Wähle ein Quartier.</translation>
    </message>
    <message>
        <source>Choose one of them, and give - to the other.</source>
        <translation>Wähle eines davon, und gib dem anderen -.</translation>
    </message>
    <message>
        <source>Choose other trees, or give them places on the map.</source>
        <translation>Wähle andere Bäume, oder gib ihnen Orte auf der Karte.</translation>
    </message>
    <message>
        <source>Cold so far</source>
        <translation>Kälte bisher</translation>
    </message>
    <message>
        <source>Compares what was done to the seed of one cross as the trial that it is: how much sprouted, how soon, how sure that is, and whether the seeds are enough to say anything. Draws the courses.</source>
        <translation>Vergleicht, was mit dem Samen einer Kreuzung geschah, als den Versuch, der es ist: wie viel keimte, wie bald, wie sicher das ist und ob die Samen reichen, um etwas zu sagen. Zeichnet die Verläufe.</translation>
    </message>
    <message>
        <source>Comparing with the book</source>
        <translation>Vergleich mit dem Buch</translation>
    </message>
    <message>
        <source>Complete them, or let the years go to the note: map &quot;{}=note&quot;.</source>
        <translation>Vervollständige sie, oder lass die Jahre in die Bemerkung gehen: map &quot;{}=note&quot;.</translation>
    </message>
    <message>
        <source>Correct it in the layer, or let the field go elsewhere with map.</source>
        <translation>Berichtige es im Layer, oder leite das Feld mit map anderswohin.</translation>
    </message>
    <message>
        <source>Correct it, or let add-accessions add it.</source>
        <translation>Berichtige es, oder lass es von add-accessions hinzufügen.</translation>
    </message>
    <message>
        <source>Correct the margin, the gap, the height or the number of rows.</source>
        <translation>Berichtige den Rand, den Abstand, die Höhe oder die Zahl der Reihen.</translation>
    </message>
    <message>
        <source>Correct the margin, the gap, the width or the number of columns.</source>
        <translation>Berichtige den Rand, den Abstand, die Breite oder die Zahl der Spalten.</translation>
    </message>
    <message>
        <source>Correct them, or leave that field out with map.</source>
        <translation>Berichtige sie, oder lass dieses Feld mit map weg.</translation>
    </message>
    <message>
        <source>Count from the upper left, row by row.</source>
        <translation>Zähle von oben links, Reihe für Reihe.</translation>
    </message>
    <message>
        <source>Count lots of one trial on the same days.</source>
        <translation>Zähle Partien eines Versuchs an denselben Tagen.</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Gezählt</translation>
    </message>
    <message>
        <source>Counts the moist cold of every seed lot, in days that count and in chill portions, from the store&apos;s one temperature or a thermometer&apos;s log; flags warm spells and frost, and tells when each lot will be ready and by when to sow it.</source>
        <translation>Zählt die feuchte Kälte jeder Samenpartie, in Tagen, die zählen, und in Kälteportionen, aus der einen Temperatur des Lagers oder den Aufzeichnungen eines Thermometers; meldet Wärme und Frost und sagt, wann jede Partie bereit ist und bis wann zu säen ist.</translation>
    </message>
    <message>
        <source>Cross {}</source>
        <translation>Kreuzung {}</translation>
    </message>
    <message>
        <source>Crosses at a glance</source>
        <translation>Kreuzungen im Überblick</translation>
    </message>
    <message>
        <source>Cut branches of {} at {} to force</source>
        <translation>Zweige von {} bei {} zum Treiben schneiden</translation>
    </message>
    <message>
        <source>Day of washing.</source>
        <translation>Tag des Waschens.</translation>
    </message>
    <message>
        <source>Days of moist cold that its species needs, least and full.</source>
        <translation>Tage feuchter Kälte, die ihre Art braucht, mindestens und ganz.</translation>
    </message>
    <message>
        <source>Days that count: whole ones from 0.5 to 5 degrees C, parts up to 9.5, less for warm ones.</source>
        <translation>Tage, die zählen: ganze bei 0,5 bis 5 Grad C, Teile bis 9,5, Abzug für warme.</translation>
    </message>
    <message>
        <source>Days until half of those that sprouted had: the (N + 1) / 2 th.</source>
        <translation>Tage, bis die Hälfte der gekeimten gekeimt war: der (N + 1) / 2 te.</translation>
    </message>
    <message>
        <source>Differences between trees are right; compare with the heights that the book has.</source>
        <translation>Unterschiede zwischen Bäumen stimmen; vergleiche mit den Höhen, die im Buch stehen.</translation>
    </message>
    <message>
        <source>Distances are those on the ground, level.</source>
        <translation>Entfernungen gelten am Boden, waagerecht gemessen.</translation>
    </message>
    <message>
        <source>Draw fewer at a time.</source>
        <translation>Zeichne weniger auf einmal.</translation>
    </message>
    <message>
        <source>Drawing the map</source>
        <translation>Karte wird gezeichnet</translation>
    </message>
    <message>
        <source>Drawing the sheets</source>
        <translation>Bögen werden gezeichnet</translation>
    </message>
    <message>
        <source>Every day of the field can be read with the day first and with the month first.</source>
        <translation>Jeder Tag des Felds lässt sich mit dem Tag zuerst und mit dem Monat zuerst lesen.</translation>
    </message>
    <message>
        <source>Every seed lot that has seed left, the oldest first.</source>
        <translation>Jede Samenpartie, die noch Samen hat, die älteste zuerst.</translation>
    </message>
    <message>
        <source>Every seedling with its number and its place, in the order of planting.</source>
        <translation>Jeder Sämling mit Nummer und Platz, in der Folge des Pflanzens.</translation>
    </message>
    <message>
        <source>Every two treatments of a cross, and what can be said of them.</source>
        <translation>Je zwei Behandlungen einer Kreuzung und was sich über sie sagen lässt.</translation>
    </message>
    <message>
        <source>Families</source>
        <translation>Familien</translation>
    </message>
    <message>
        <source>Field calendar</source>
        <translation>Feldkalender</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Figures learned</source>
        <translation>Gelernte Zahlen</translation>
    </message>
    <message>
        <source>Fill it in, or remove the feature from the layer.</source>
        <translation>Fülle es aus, oder entferne das Objekt aus dem Layer.</translation>
    </message>
    <message>
        <source>First day for it.</source>
        <translation>Erster Tag dafür.</translation>
    </message>
    <message>
        <source>First day in the cold.</source>
        <translation>Erster Tag in der Kälte.</translation>
    </message>
    <message>
        <source>First day.</source>
        <translation>Erster Tag.</translation>
    </message>
    <message>
        <source>First sprouts from</source>
        <translation>Erste Keime ab</translation>
    </message>
    <message>
        <source>Flowers worked</source>
        <translation>Bestäubte Blüten</translation>
    </message>
    <message>
        <source>Flowers, fruits or seeds that it counted.</source>
        <translation>Blüten, Früchte oder Samen, die gezählt wurden.</translation>
    </message>
    <message>
        <source>Follows every cross from the flowers worked to the seedlings standing, with what is to be done next and what is late; tells the seed on hand and what this orchard&apos;s own counts teach.</source>
        <translation>Verfolgt jede Kreuzung von den bestäubten Blüten bis zu den stehenden Sämlingen, mit dem, was als Nächstes zu tun und was verspätet ist; nennt den vorhandenen Samen und was die eigenen Zählungen lehren.</translation>
    </message>
    <message>
        <source>For want of room {} numbers are left out.</source>
        <translation>Aus Platzmangel sind {} Nummern weggelassen.</translation>
    </message>
    <message>
        <source>Found in the fruit, else in the cross&apos;s lots.</source>
        <translation>In den Früchten gefunden, sonst in den Samenpartien der Kreuzung.</translation>
    </message>
    <message>
        <source>Frost from {} to {}, down to {:.1f} degrees C: look at the seed.</source>
        <translation>Frost vom {} bis {}, bis {} Grad C: Sieh dir den Samen an.</translation>
    </message>
    <message>
        <source>Fruit was picked and the book has no seed lot of it. Seed left long in warm fruit sprouts less; open rotten fruit at once.</source>
        <translation>Früchte wurden gepflückt, und das Buch hat keine Samenpartie davon. Lange in warmer Frucht gelassener Samen keimt schlechter; faule Früchte gleich öffnen.</translation>
    </message>
    <message>
        <source>Fruits of flowers, with the 95 % interval.</source>
        <translation>Früchte je Blüten, mit dem 95-%-Bereich.</translation>
    </message>
    <message>
        <source>Gather pollen of {} at {}: {}</source>
        <translation>Pollen von {} sammeln bei {}: {}</translation>
    </message>
    <message>
        <source>Give degrees Celsius, the first number of the line.</source>
        <translation>Gib Grad Celsius an, als erste Zahl der Zeile.</translation>
    </message>
    <message>
        <source>Give each a name of its own.</source>
        <translation>Gib jedem einen eigenen Namen.</translation>
    </message>
    <message>
        <source>Give label-width and label-height, or take one of the sheets named.</source>
        <translation>Gib label-width und label-height an, oder nimm einen der genannten Bögen.</translation>
    </message>
    <message>
        <source>Give one of them another name; where they are the same and the layer is only less exact, raise same-place.</source>
        <translation>Gib einem davon einen anderen Namen; sind sie dasselbe und ist der Layer nur ungenauer, erhöhe same-place.</translation>
    </message>
    <message>
        <source>Half after, Coolbear</source>
        <translation>Hälfte nach, Coolbear</translation>
    </message>
    <message>
        <source>Half after, Farooq</source>
        <translation>Hälfte nach, Farooq</translation>
    </message>
    <message>
        <source>Handbook</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>Here the day must come first ({}), but in {} the month: {}.</source>
        <translation>Hier muss der Tag zuerst kommen ({}), aber in {} der Monat: {}.</translation>
    </message>
    <message>
        <source>How each treatment and medium sprouted, cross by cross.</source>
        <translation>Wie jede Behandlung und jedes Substrat keimte, Kreuzung für Kreuzung.</translation>
    </message>
    <message>
        <source>How families stand.</source>
        <translation>Wie Familien stehen.</translation>
    </message>
    <message>
        <source>How often chance alone would part the shares as far: Fisher&apos;s exact test, made good for the number of pairs (Holm).</source>
        <translation>Wie oft der Zufall allein die Anteile so weit trennte: exakter Test nach Fisher, berichtigt für die Zahl der Paare (Holm).</translation>
    </message>
    <message>
        <source>If all of them are, give exchange-axes yes; else correct it in the layer.</source>
        <translation>Wenn es bei allen so ist, gib exchange-axes yes an; sonst berichtige es im Layer.</translation>
    </message>
    <message>
        <source>If it is a slip, correct it in the layer before writing.</source>
        <translation>Wenn es ein Versehen ist, berichtige es vor dem Schreiben im Layer.</translation>
    </message>
    <message>
        <source>If one went, give it its day of removal; else correct a place.</source>
        <translation>Wenn einer nicht mehr steht, trag ein, an welchem Tag er entfernt wurde; sonst berichtige einen Ort.</translation>
    </message>
    <message>
        <source>If that difference is real, about {} seeds in each would show it four times in five.</source>
        <translation>Ist der Unterschied echt, zeigten ihn etwa {} Samen je Partie in vier von fünf Fällen.</translation>
    </message>
    <message>
        <source>If they are the same, keep one; else make them more different.</source>
        <translation>Wenn sie dasselbe sind, behalte eines; sonst mach sie unterscheidbarer.</translation>
    </message>
    <message>
        <source>In the book already: {}; left out: {}.</source>
        <translation>Schon im Buch: {}; weggelassen: {}.</translation>
    </message>
    <message>
        <source>In the cold</source>
        <translation>In der Kälte</translation>
    </message>
    <message>
        <source>In the row.</source>
        <translation>In der Reihe.</translation>
    </message>
    <message>
        <source>In which one plants, and sets up the trays.</source>
        <translation>In der man pflanzt und die Topfplatten richtet.</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Initialen</translation>
    </message>
    <message>
        <source>Install a font of that writing, then print again.</source>
        <translation>Installiere eine Schriftart für diese Schrift, dann drucke noch einmal.</translation>
    </message>
    <message>
        <source>Install it (Debian: fonts-dejavu-core).</source>
        <translation>Installiere sie (Debian: fonts-dejavu-core).</translation>
    </message>
    <message>
        <source>Install it for PROJ if you need the places so accurately.</source>
        <translation>Installiere sie für PROJ, wenn du die Orte so genau brauchst.</translation>
    </message>
    <message>
        <source>Into so many parts the rows are cut, each with its share of every family, where mixed.</source>
        <translation>In so viele Teile werden die Reihen geteilt, jeder mit seinem Anteil an jeder Familie, wo gemischt.</translation>
    </message>
    <message>
        <source>It comes into the book without one; draw it there.</source>
        <translation>Die Geometrie fehlt dann im Buch; zeichne sie dort.</translation>
    </message>
    <message>
        <source>It differs from &quot;{}&quot; of the book only by capitals or spaces.</source>
        <translation>Es unterscheidet sich von &quot;{}&quot; im Buch nur durch Großschreibung oder Leerzeichen.</translation>
    </message>
    <message>
        <source>It differs from &quot;{}&quot; of {} only by capitals or spaces.</source>
        <translation>Es unterscheidet sich von &quot;{}&quot; in {} nur durch Großschreibung oder Leerzeichen.</translation>
    </message>
    <message>
        <source>It has no label.</source>
        <translation>Die Bezeichnung fehlt.</translation>
    </message>
    <message>
        <source>It has no name.</source>
        <translation>Der Name fehlt.</translation>
    </message>
    <message>
        <source>It has several parts, but one row stands in one place.</source>
        <translation>Es sind mehrere Teile, aber eine Reihe steht an einem Ort.</translation>
    </message>
    <message>
        <source>It has: {}; or - to leave the field out.</source>
        <translation>Vorhanden sind: {}; oder -, um das Feld wegzulassen.</translation>
    </message>
    <message>
        <source>It is a line.</source>
        <translation>Es ist eine Linie.</translation>
    </message>
    <message>
        <source>It is a point.</source>
        <translation>Es ist ein Punkt.</translation>
    </message>
    <message>
        <source>It is an area.</source>
        <translation>Es ist eine Fläche.</translation>
    </message>
    <message>
        <source>It is not known what kind of accession it is.</source>
        <translation>Es ist nicht bekannt, von welcher Art die Akzession ist.</translation>
    </message>
    <message>
        <source>It is not known whether the new accession is an apple or a pear.</source>
        <translation>Es ist nicht bekannt, ob die neue Akzession ein Apfel oder eine Birne ist.</translation>
    </message>
    <message>
        <source>It is not known whether {} new accessions are apples or pears.</source>
        <translation>Es ist nicht bekannt, ob {} neue Akzessionen Äpfel oder Birnen sind.</translation>
    </message>
    <message>
        <source>It leaves out how the two datums differ: places may be off by hundreds of metres.</source>
        <translation>Wie sich die beiden geodätischen Bezugssysteme unterscheiden, bleibt dabei außer Acht: Orte können um Hunderte Meter danebenliegen.</translation>
    </message>
    <message>
        <source>It must be at least {:.0f} x {:.0f} mm.</source>
        <translation>Nötig sind mindestens {} x {} mm.</translation>
    </message>
    <message>
        <source>It needs a header, then lines such as 2026-12-01 06:00,3.5.</source>
        <translation>Sie braucht eine Kopfzeile, dann Zeilen wie 2026-12-01 06:00,3.5.</translation>
    </message>
    <message>
        <source>It refers to {}, which is of this planting.</source>
        <translation>Es bezieht sich auf {} aus dieser Pflanzung.</translation>
    </message>
    <message>
        <source>It was taken for the same and is written as in the book.</source>
        <translation>Es wurde für dasselbe gehalten und wird wie im Buch geschrieben.</translation>
    </message>
    <message>
        <source>Its accession or blend.</source>
        <translation>Ihre Akzession oder Mischung.</translation>
    </message>
    <message>
        <source>Its accession.</source>
        <translation>Ihre Akzession.</translation>
    </message>
    <message>
        <source>Its accuracy is not known.</source>
        <translation>Die Genauigkeit ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Its accuracy is {}.</source>
        <translation>Die Genauigkeit ist {}.</translation>
    </message>
    <message>
        <source>Its code.</source>
        <translation>Ihr Code.</translation>
    </message>
    <message>
        <source>Its fields are listed in the table of fields.</source>
        <translation>Die Felder stehen in der Tabelle der Felder.</translation>
    </message>
    <message>
        <source>Its outline alone is taken.</source>
        <translation>Nur der Umriss wird übernommen.</translation>
    </message>
    <message>
        <source>Its trees say different things of it: {}.</source>
        <translation>Die zugehörigen Bäume sagen dazu Verschiedenes: {}.</translation>
    </message>
    <message>
        <source>Keep one, or give one of them another name.</source>
        <translation>Behalte eines, oder gib einem davon einen anderen Namen.</translation>
    </message>
    <message>
        <source>Last day.</source>
        <translation>Letzter Tag.</translation>
    </message>
    <message>
        <source>Late</source>
        <translation>Verspätet</translation>
    </message>
    <message>
        <source>Late for sowing.</source>
        <translation>Spät zum Säen.</translation>
    </message>
    <message>
        <source>Lay more rows with row-lay, or name fewer seedlings in crosses.</source>
        <translation>Lege mit row-lay weitere Reihen an oder nenne bei den Kreuzungen weniger Sämlinge.</translation>
    </message>
    <message>
        <source>Laying out the map</source>
        <translation>Karte wird eingeteilt</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Übrig</translation>
    </message>
    <message>
        <source>Longitude and latitude were taken for those of GNSS receivers, EPSG:4326.</source>
        <translation>Länge und Breite wurden für die von GNSS-Empfängern gehalten, EPSG:4326.</translation>
    </message>
    <message>
        <source>Look for sprouts of cross {}</source>
        <translation>Nach Keimen der Kreuzung {} sehen</translation>
    </message>
    <message>
        <source>Lot {} has been in the cold since {}: look for sprouts from {} days on.</source>
        <translation>Partie {} ist seit {} in der Kälte: ab {} Tagen nach Keimen sehen.</translation>
    </message>
    <message>
        <source>Lot {} is not in the cold yet; it needs {} to {} days there.</source>
        <translation>Partie {} ist noch nicht in der Kälte; sie braucht dort {} bis {} Tage.</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Partien</translation>
    </message>
    <message>
        <source>Lower end of the share&apos;s 95 % interval (Wilson).</source>
        <translation>Unteres Ende des 95-%-Bereichs des Anteils (Wilson).</translation>
    </message>
    <message>
        <source>Mean days</source>
        <translation>Mittlere Tage</translation>
    </message>
    <message>
        <source>Mean days to sprouting.</source>
        <translation>Mittlere Tage bis zur Keimung.</translation>
    </message>
    <message>
        <source>Mean sound seeds in a fruit, before the orchard&apos;s own counts.</source>
        <translation>Mittlere Zahl voller Samen je Frucht, vor den eigenen Zählungen.</translation>
    </message>
    <message>
        <source>More seed sprouted with {} than with {}: {} against {} (p = {:.2g}).</source>
        <translation>Mit {} keimte mehr Samen als mit {}: {} gegen {} (p = {}).</translation>
    </message>
    <message>
        <source>Name another season, or enter the crosses first.</source>
        <translation>Nenne eine andere Saison, oder trage zuerst die Kreuzungen ein.</translation>
    </message>
    <message>
        <source>Name crosses as they stand in the table of crosses.</source>
        <translation>Nenne Kreuzungen, wie sie in der Tabelle der Kreuzungen stehen.</translation>
    </message>
    <message>
        <source>Name it as it stands in the trees&apos; notes, without the word planting.</source>
        <translation>Nenne sie, wie sie in den Notizen der Bäume steht, ohne das Wort planting.</translation>
    </message>
    <message>
        <source>Name the accession that check trees are of.</source>
        <translation>Nenne die Akzession der Vergleichsbäume.</translation>
    </message>
    <message>
        <source>Name their accession.</source>
        <translation>Nenne ihre Akzession.</translation>
    </message>
    <message>
        <source>Need</source>
        <translation>Bedarf</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Als Nächstes</translation>
    </message>
    <message>
        <source>No cold store has this temperature.</source>
        <translation>Kein Kühllager hat diese Temperatur.</translation>
    </message>
    <message>
        <source>No difference between {} and {} can be told from these seeds: {} against {} (p = {:.2g}).</source>
        <translation>Ein Unterschied zwischen {} und {} ist an diesen Samen nicht zu erkennen: {} gegen {} (p = {}).</translation>
    </message>
    <message>
        <source>No field was recognised as the name.</source>
        <translation>Kein Feld wurde als Name erkannt.</translation>
    </message>
    <message>
        <source>No field was recognised as the trees&apos; label.</source>
        <translation>Kein Feld wurde als Bezeichnung der Bäume erkannt.</translation>
    </message>
    <message>
        <source>No font on this machine has every character of this label: boxes with their numbers stand in their place.</source>
        <translation>Keine Schriftart auf diesem Rechner hat alle Zeichen dieses Etiketts: An ihrer Stelle stehen Kästchen mit ihren Nummern.</translation>
    </message>
    <message>
        <source>Note the first day when it goes in.</source>
        <translation>Notiere den ersten Tag, wenn es hineinkommt.</translation>
    </message>
    <message>
        <source>Nothing is to be printed.</source>
        <translation>Es ist nichts zu drucken.</translation>
    </message>
    <message>
        <source>Nothing to compare: no cross has counted lots of two treatments or media.</source>
        <translation>Nichts zu vergleichen: Keine Kreuzung hat gezählte Partien zweier Behandlungen oder Substrate.</translation>
    </message>
    <message>
        <source>Nothing was written; write yes would add: {}.</source>
        <translation>Es wurde nichts geschrieben; write yes würde hinzufügen: {}.</translation>
    </message>
    <message>
        <source>Of the crossing.</source>
        <translation>Der Kreuzung.</translation>
    </message>
    <message>
        <source>Of the seed left, by the handbook and this orchard&apos;s own counts; dry seed keeps about two years cold and sealed.</source>
        <translation>Von den übrigen Samen, nach Handbuch und eigenen Zählungen; trockener Samen hält kalt und luftdicht etwa zwei Jahre.</translation>
    </message>
    <message>
        <source>Of the seeds that sprouted.</source>
        <translation>Der Samen, die keimten.</translation>
    </message>
    <message>
        <source>Of the tree.</source>
        <translation>Des Baumes.</translation>
    </message>
    <message>
        <source>Of them not removed.</source>
        <translation>Davon nicht gerodet.</translation>
    </message>
    <message>
        <source>Of them not sprouted yet.</source>
        <translation>Davon noch nicht gekeimt.</translation>
    </message>
    <message>
        <source>Of {} the book says &quot;{}&quot;.</source>
        <translation>Zu {} steht im Buch &quot;{}&quot;.</translation>
    </message>
    <message>
        <source>Once or twice; unknown where none are in the book.</source>
        <translation>Ein- oder zweimal; unbekannt, wo keine im Buch stehen.</translation>
    </message>
    <message>
        <source>One</source>
        <translation>Eine</translation>
    </message>
    <message>
        <source>Only this cross; all where none is named.</source>
        <translation>Nur diese Kreuzung; alle, wo keine genannt ist.</translation>
    </message>
    <message>
        <source>Only this row of it; all its rows where none is named.</source>
        <translation>Nur diese Reihe davon; alle, wo keine genannt ist.</translation>
    </message>
    <message>
        <source>Only {} seeds of cross {} sprouted and have no place yet.</source>
        <translation>Nur {} Samen der Kreuzung {} sind gekeimt und noch ohne Platz.</translation>
    </message>
    <message>
        <source>Open ones only</source>
        <translation>Nur offene</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Andere</translation>
    </message>
    <message>
        <source>Overview of pages 2 to {}</source>
        <translation>Übersicht der Seiten 2 bis {}</translation>
    </message>
    <message>
        <source>Own counts</source>
        <translation>Eigene Zählungen</translation>
    </message>
    <message>
        <source>Page {} of {}</source>
        <translation>Seite {} von {}</translation>
    </message>
    <message>
        <source>Parents</source>
        <translation>Eltern</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Pick the fruit of cross {}</source>
        <translation>Früchte der Kreuzung {} pflücken</translation>
    </message>
    <message>
        <source>Picked.</source>
        <translation>Gepflückt.</translation>
    </message>
    <message>
        <source>Places for seedlings</source>
        <translation>Plätze für Sämlinge</translation>
    </message>
    <message>
        <source>Plant</source>
        <translation>Pflanzen</translation>
    </message>
    <message>
        <source>Plant in</source>
        <translation>Pflanzen in</translation>
    </message>
    <message>
        <source>Plant the seedlings of cross {}</source>
        <translation>Sämlinge der Kreuzung {} pflanzen</translation>
    </message>
    <message>
        <source>Planted</source>
        <translation>Gepflanzt</translation>
    </message>
    <message>
        <source>Planting</source>
        <translation>Pflanzung</translation>
    </message>
    <message>
        <source>Planting list</source>
        <translation>Pflanzliste</translation>
    </message>
    <message>
        <source>Plot</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>Pollinate {} for cross {}: {}</source>
        <translation>{} für Kreuzung {} bestäuben: {}</translation>
    </message>
    <message>
        <source>Pot the sprouts of cross {}</source>
        <translation>Keimlinge der Kreuzung {} topfen</translation>
    </message>
    <message>
        <source>Print at 100 %, not fitted to the page, and measure one sheet of plain paper first.</source>
        <translation>Drucke mit 100 %, nicht an die Seite angepasst, und miss zuerst einen Bogen aus normalem Papier nach.</translation>
    </message>
    <message>
        <source>Put the seed of cross {} in the cold</source>
        <translation>Samen der Kreuzung {} in die Kälte legen</translation>
    </message>
    <message>
        <source>Puts the season&apos;s work and the seed&apos;s into a calendar file that any calendar can read: gathering, bagging, pollinating, picking, cold, sowing, each with its span of days. Read again after a new plan, it moves what is there already.</source>
        <translation>Legt die Arbeiten der Saison und am Samen in eine Kalenderdatei, die jeder Kalender liest: Sammeln, Eintüten, Bestäuben, Pflücken, Kälte, Säen, jede mit ihrer Spanne von Tagen. Nach einem neuen Plan wieder eingelesen, verschiebt sie, was schon da ist.</translation>
    </message>
    <message>
        <source>Reading the layer</source>
        <translation>Layer wird gelesen</translation>
    </message>
    <message>
        <source>Ready on</source>
        <translation>Bereit am</translation>
    </message>
    <message>
        <source>Ready: sow it, or sprouts break.</source>
        <translation>Bereit: säen, sonst brechen die Keime.</translation>
    </message>
    <message>
        <source>Save the layer anew with the encoding UTF-8.</source>
        <translation>Speichere den Layer neu mit der Kodierung UTF-8.</translation>
    </message>
    <message>
        <source>Say it for those with accession-kind: cultivar, selection, seedling, species or unknown.</source>
        <translation>Gib es für diese mit accession-kind an: cultivar, selection, seedling, species oder unknown.</translation>
    </message>
    <message>
        <source>Say it for those with in-block.</source>
        <translation>Gib es für diese mit in-block an.</translation>
    </message>
    <message>
        <source>Say it with accession-kind: cultivar, selection, seedling, species or unknown.</source>
        <translation>Gib es mit accession-kind an: cultivar, selection, seedling, species oder unknown.</translation>
    </message>
    <message>
        <source>Say it with species, as in species apple; or fill it in later.</source>
        <translation>Gib es mit species an, etwa species apple; oder trag es später nach.</translation>
    </message>
    <message>
        <source>Say which it is with day-format: day-month-year or month-day-year.</source>
        <translation>Gib mit day-format an, welches es ist: day-month-year oder month-day-year.</translation>
    </message>
    <message>
        <source>Say which it is with map; every value differs in: {}.</source>
        <translation>Gib mit map an, welches es ist; jeder Wert ist anders in: {}.</translation>
    </message>
    <message>
        <source>Say which it is, as in EPSG:25832; for GNSS degrees, EPSG:4326.</source>
        <translation>Gib an, welches es ist, etwa EPSG:25832; für GNSS-Grade EPSG:4326.</translation>
    </message>
    <message>
        <source>Say which it is, as in map &quot;FIELD=label&quot;.</source>
        <translation>Gib an, welches es ist, etwa map &quot;FIELD=label&quot;.</translation>
    </message>
    <message>
        <source>Say which system they are in: for GNSS degrees, layer-crs EPSG:4326.</source>
        <translation>Gib an, in welchem System sie sind: für GNSS-Grade layer-crs EPSG:4326.</translation>
    </message>
    <message>
        <source>Say with layer-crs if they are in another system.</source>
        <translation>Gib es mit layer-crs an, wenn sie in einem anderen System sind.</translation>
    </message>
    <message>
        <source>Say with map which field is the other: x is east or longitude, y north or latitude.</source>
        <translation>Gib mit map an, welches Feld die andere ist: x ist Ost oder Länge, y Nord oder Breite.</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation>Samen</translation>
    </message>
    <message>
        <source>Seed in the cold</source>
        <translation>Samen in der Kälte</translation>
    </message>
    <message>
        <source>Seed is ripe about {} days after full bloom, by the rule for all: the book does not tell it of {}.</source>
        <translation>Samen ist etwa {} Tage nach der Vollblüte reif, nach der Regel für alle: Von {} sagt das Buch es nicht.</translation>
    </message>
    <message>
        <source>Seed of {} is ripe about {} days after full bloom.</source>
        <translation>Samen von {} ist etwa {} Tage nach der Vollblüte reif.</translation>
    </message>
    <message>
        <source>Seed on hand</source>
        <translation>Vorhandener Samen</translation>
    </message>
    <message>
        <source>Seed parent first.</source>
        <translation>Samenelter zuerst.</translation>
    </message>
    <message>
        <source>Seed treatments</source>
        <translation>Samenbehandlungen</translation>
    </message>
    <message>
        <source>Seed treatments compared</source>
        <translation>Samenbehandlungen im Vergleich</translation>
    </message>
    <message>
        <source>Seedlings of a family side by side, where mixed.</source>
        <translation>Sämlinge einer Familie nebeneinander, wo gemischt.</translation>
    </message>
    <message>
        <source>Seedlings with a numbered place.</source>
        <translation>Sämlinge mit einem nummerierten Platz.</translation>
    </message>
    <message>
        <source>Seeds a fruit</source>
        <translation>Samen je Frucht</translation>
    </message>
    <message>
        <source>Seeds in each that would show a difference as large as this one four times in five.</source>
        <translation>Samen je Partie, die einen so großen Unterschied in vier von fünf Fällen zeigten.</translation>
    </message>
    <message>
        <source>Seeds in them.</source>
        <translation>Samen darin.</translation>
    </message>
    <message>
        <source>Seeds that have not left it.</source>
        <translation>Samen, die noch darin sind.</translation>
    </message>
    <message>
        <source>Seeds that lie or lay there.</source>
        <translation>Samen, die dort liegen oder lagen.</translation>
    </message>
    <message>
        <source>Seeds to settle</source>
        <translation>Samen zur Klärung</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>Share of sound seeds that become seedlings, before the orchard&apos;s own counts of sprouts.</source>
        <translation>Anteil voller Samen, die Sämlinge werden, vor den eigenen Zählungen der Keime.</translation>
    </message>
    <message>
        <source>Share of worked flowers that set fruit, before the orchard&apos;s own counts.</source>
        <translation>Anteil bestäubter Blüten, die Früchte ansetzen, vor den eigenen Zählungen.</translation>
    </message>
    <message>
        <source>Shorten it.</source>
        <translation>Mach es kürzer.</translation>
    </message>
    <message>
        <source>Should sprout</source>
        <translation>Sollten keimen</translation>
    </message>
    <message>
        <source>Since washing, else since it was put in the cold.</source>
        <translation>Seit dem Waschen, sonst seit Beginn der Kälte.</translation>
    </message>
    <message>
        <source>Sound ones.</source>
        <translation>Volle.</translation>
    </message>
    <message>
        <source>Sow by</source>
        <translation>Säen bis</translation>
    </message>
    <message>
        <source>Split it into features, each with a name of its own.</source>
        <translation>Teil es in einzelne Objekte auf, jedes mit eigenem Namen.</translation>
    </message>
    <message>
        <source>Sprouted of the seeds in the cold, with the 95 % interval.</source>
        <translation>Gekeimte der Samen in der Kälte, mit dem 95-%-Bereich.</translation>
    </message>
    <message>
        <source>Sprouting</source>
        <translation>Keimung</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>Stehend</translation>
    </message>
    <message>
        <source>Standing of planted, with the 95 % interval.</source>
        <translation>Stehende der gepflanzten, mit dem 95-%-Bereich.</translation>
    </message>
    <message>
        <source>Survival</source>
        <translation>Überleben</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Take larger labels, or a shorter label for the tree.</source>
        <translation>Nimm größere Etiketten oder eine kürzere Bezeichnung für den Baum.</translation>
    </message>
    <message>
        <source>Take larger labels, or leave out the code or some of the text.</source>
        <translation>Nimm größere Etiketten oder lass den Code oder einen Teil des Textes weg.</translation>
    </message>
    <message>
        <source>Take larger labels, or let the code say less.</source>
        <translation>Nimm größere Etiketten oder lass den Code weniger sagen.</translation>
    </message>
    <message>
        <source>Take that back first, or leave the planting.</source>
        <translation>Nimm das zuerst zurück oder lass die Pflanzung.</translation>
    </message>
    <message>
        <source>Take the bags off {}, cross {}</source>
        <translation>Tüten von {} abnehmen, Kreuzung {}</translation>
    </message>
    <message>
        <source>Take the planting of that name out of the book again, as a whole.</source>
        <translation>Die Pflanzung dieses Namens im Ganzen wieder aus dem Buch nehmen.</translation>
    </message>
    <message>
        <source>Test stored pollen of {}</source>
        <translation>Gelagerten Pollen von {} prüfen</translation>
    </message>
    <message>
        <source>That the figures are told in.</source>
        <translation>In der die Zahlen stehen.</translation>
    </message>
    <message>
        <source>The accession of the check trees.</source>
        <translation>Die Akzession der Vergleichsbäume.</translation>
    </message>
    <message>
        <source>The area has holes.</source>
        <translation>Die Fläche hat Löcher.</translation>
    </message>
    <message>
        <source>The bar is {:g} mm long: print at 100 %, then measure it.</source>
        <translation>Der Balken ist {} mm lang: Drucke mit 100 % und miss ihn dann nach.</translation>
    </message>
    <message>
        <source>The block to plant in.</source>
        <translation>Das Quartier, in das gepflanzt wird.</translation>
    </message>
    <message>
        <source>The book has a row of this name that begins {:.1f} m away.</source>
        <translation>Im Buch gibt es eine Reihe dieses Namens, die {} m entfernt beginnt.</translation>
    </message>
    <message>
        <source>The book has a tree of this label {:.1f} m away.</source>
        <translation>Im Buch gibt es einen Baum dieser Bezeichnung, {} m entfernt.</translation>
    </message>
    <message>
        <source>The book has it already and says otherwise: {}.</source>
        <translation>Das Buch hat es schon und sagt etwas anderes: {}.</translation>
    </message>
    <message>
        <source>The book has it already, with other values.</source>
        <translation>Das Buch hat es schon, mit anderen Werten.</translation>
    </message>
    <message>
        <source>The book has it already.</source>
        <translation>Das Buch hat es schon.</translation>
    </message>
    <message>
        <source>The book has no accession of this name; 1 tree names it.</source>
        <translation>Das Buch hat keine Akzession dieses Namens; 1 Baum nennt sie.</translation>
    </message>
    <message>
        <source>The book has no accession of this name; {} trees name it.</source>
        <translation>Das Buch hat keine Akzession dieses Namens; {} Bäume nennen sie.</translation>
    </message>
    <message>
        <source>The book has no cross {}.</source>
        <translation>Das Buch hat keine Kreuzung {}.</translation>
    </message>
    <message>
        <source>The book has no crosses of the season {}.</source>
        <translation>Das Buch hat keine Kreuzungen aus der Saison {}.</translation>
    </message>
    <message>
        <source>The book has no such accession.</source>
        <translation>Das Buch hat keine solche Akzession.</translation>
    </message>
    <message>
        <source>The book has no trees of this planting.</source>
        <translation>Das Buch hat keine Bäume dieser Pflanzung.</translation>
    </message>
    <message>
        <source>The book writes it &quot;{}&quot;: only capitals or spaces differ, in 1 feature.</source>
        <translation>Das Buch schreibt es &quot;{}&quot;: nur Großbuchstaben oder Leerzeichen weichen ab, in 1 Objekt.</translation>
    </message>
    <message>
        <source>The book writes it &quot;{}&quot;: only capitals or spaces differ, in {} features.</source>
        <translation>Das Buch schreibt es &quot;{}&quot;: nur Großbuchstaben oder Leerzeichen weichen ab, in {} Objekten.</translation>
    </message>
    <message>
        <source>The book&apos;s value stays; correct it there if it is wrong.</source>
        <translation>Der Wert im Buch bleibt; berichtige ihn dort, wenn er falsch ist.</translation>
    </message>
    <message>
        <source>The book&apos;s values stay; correct them there if they are wrong.</source>
        <translation>Die Werte im Buch bleiben; berichtige sie dort, wenn sie falsch sind.</translation>
    </message>
    <message>
        <source>The calendar&apos;s name; the book&apos;s file name where not given.</source>
        <translation>Der Name des Kalenders; der Dateiname des Buches, wo keiner gegeben ist.</translation>
    </message>
    <message>
        <source>The dots of the QR code are smaller than {:.2f} mm: many readers will miss it, and printers of 300 dots an inch smear it.</source>
        <translation>Die Punkte des QR-Codes sind kleiner als {} mm: viele Lesegeräte erkennen ihn nicht, und Drucker mit 300 Punkten je Zoll verschmieren ihn.</translation>
    </message>
    <message>
        <source>The first may sprout: look every week.</source>
        <translation>Die ersten können keimen: jede Woche nachsehen.</translation>
    </message>
    <message>
        <source>The font {} is not on this machine: another takes its place, and text is wider or narrower than it should be.</source>
        <translation>Die Schrift {} ist auf diesem Rechner nicht vorhanden: eine andere tritt an ihre Stelle, und der Text wird breiter oder schmaler, als er sein sollte.</translation>
    </message>
    <message>
        <source>The handbook&apos;s figures, this orchard&apos;s own and those used.</source>
        <translation>Die Zahlen des Handbuchs, die eigenen und die verwendeten.</translation>
    </message>
    <message>
        <source>The heights of {} points are counted from the ellipsoid, not from the sea: some ten metres more or less in most places.</source>
        <translation>Die Höhen von {} Punkten zählen ab dem Ellipsoid, nicht ab dem Meer: das macht an den meisten Orten einige zehn Meter mehr oder weniger aus.</translation>
    </message>
    <message>
        <source>The label holds characters that nobody sees; on paper they are blanks or question marks, in the code they stand as they are.</source>
        <translation>Die Bezeichnung enthält Zeichen, die niemand sieht; auf Papier sind sie Leerstellen oder Fragezeichen, im Code stehen sie so, wie sie sind.</translation>
    </message>
    <message>
        <source>The labels end {:.1f} mm from the left, but the page is {:.1f} mm wide.</source>
        <translation>Die Etiketten enden {} mm von links, aber die Seite ist nur {} mm breit.</translation>
    </message>
    <message>
        <source>The labels end {:.1f} mm from the top, but the page is {:.1f} mm high.</source>
        <translation>Die Etiketten enden {} mm von oben, aber die Seite ist nur {} mm hoch.</translation>
    </message>
    <message>
        <source>The layer does not tell of every accession what kind it is.</source>
        <translation>Der Layer sagt nicht bei jeder Akzession, welcher Art sie ist.</translation>
    </message>
    <message>
        <source>The layer does not tell of every row which block it is in.</source>
        <translation>Der Layer sagt nicht bei jeder Reihe, in welchem Quartier sie steht.</translation>
    </message>
    <message>
        <source>The layer has no field of this name.</source>
        <translation>Der Layer hat kein Feld dieses Namens.</translation>
    </message>
    <message>
        <source>The layer has one of the two coordinates only.</source>
        <translation>Der Layer hat nur eine der beiden Koordinaten.</translation>
    </message>
    <message>
        <source>The layer has this name twice: in {} as well.</source>
        <translation>Der Layer hat diesen Namen zweimal: auch in {}.</translation>
    </message>
    <message>
        <source>The layer has two fields of this name.</source>
        <translation>Der Layer hat zwei Felder dieses Namens.</translation>
    </message>
    <message>
        <source>The letters a to z do not suffice for so many tags: {} were made.</source>
        <translation>Die Buchstaben a bis z reichen für so viele Anhänger nicht: {} wurden gemacht.</translation>
    </message>
    <message>
        <source>The log holds no reading.</source>
        <translation>Die Aufzeichnung enthält keinen Messwert.</translation>
    </message>
    <message>
        <source>The lot is not in the cold yet, as far as the book tells.</source>
        <translation>Soweit das Buch weiß, ist die Partie noch nicht in der Kälte.</translation>
    </message>
    <message>
        <source>The moist cold that every lot has had, when it will be ready and by when to sow.</source>
        <translation>Die feuchte Kälte, die jede Partie hatte, wann sie bereit ist und bis wann zu säen ist.</translation>
    </message>
    <message>
        <source>The nearest in the book: {}.</source>
        <translation>Am nächsten im Buch: {}.</translation>
    </message>
    <message>
        <source>The one that did better, where one did.</source>
        <translation>Die bessere, wo eine besser war.</translation>
    </message>
    <message>
        <source>The other.</source>
        <translation>Die andere.</translation>
    </message>
    <message>
        <source>The pages cannot be drawn.</source>
        <translation>Die Seiten lassen sich nicht zeichnen.</translation>
    </message>
    <message>
        <source>The planting&apos;s name, kept with each tree; the day where none is given.</source>
        <translation>Der Name der Pflanzung, der bei jedem Baum steht; der Tag, wo keiner gegeben ist.</translation>
    </message>
    <message>
        <source>The point&apos;s height cannot be one above the sea.</source>
        <translation>Die Höhe des Punktes kann keine Höhe über dem Meer sein.</translation>
    </message>
    <message>
        <source>The same of the whole course: log-rank test; only where both were counted on the same days.</source>
        <translation>Dasselbe für den ganzen Verlauf: Log-Rank-Test; nur wo beide an denselben Tagen gezählt wurden.</translation>
    </message>
    <message>
        <source>The same readings by the Dynamic Model.</source>
        <translation>Dieselben Messwerte nach dem Dynamischen Modell.</translation>
    </message>
    <message>
        <source>The same: the N / 2 th.</source>
        <translation>Dasselbe: der N / 2 te.</translation>
    </message>
    <message>
        <source>The seed lots that had it.</source>
        <translation>Die Samenpartien, die sie hatten.</translation>
    </message>
    <message>
        <source>The sheet has {} labels only.</source>
        <translation>Der Bogen hat nur {} Etiketten.</translation>
    </message>
    <message>
        <source>The species is not known: an apple&apos;s need is taken.</source>
        <translation>Die Art ist nicht bekannt: Es gilt der Bedarf von Apfel.</translation>
    </message>
    <message>
        <source>The step at which it is known to have failed.</source>
        <translation>Der Schritt, an dem sie nachweislich scheiterte.</translation>
    </message>
    <message>
        <source>The store&apos;s temperature is not known: {:.0f} degrees C is taken.</source>
        <translation>Die Temperatur des Lagers ist nicht bekannt: Es gelten {} Grad C.</translation>
    </message>
    <message>
        <source>The text does not fit on a label of this size.</source>
        <translation>Der Text passt nicht auf ein Etikett dieser Größe.</translation>
    </message>
    <message>
        <source>The text has letters that are not UTF-8.</source>
        <translation>Der Text hat Zeichen, die nicht UTF-8 sind.</translation>
    </message>
    <message>
        <source>Correct it, or remove the column.</source>
        <translation>Berichtigen oder die Spalte entfernen.</translation>
    </message>
    <message>
        <source>Give it a first line that names its fields, and a line a row.</source>
        <translation>Eine erste Zeile mit den Namen der Felder geben und für jedes Objekt eine Zeile.</translation>
    </message>
    <message>
        <source>Line {} heads the columns; what stands above it was passed over.</source>
        <translation>Zeile {} ist die Kopfzeile; was darüber steht, wurde übergangen.</translation>
    </message>
    <message>
        <source>Look whether they came out right; if not, save the file in UTF-8.</source>
        <translation>Nachsehen, ob sie richtig gelesen sind; wenn nicht, die Datei in UTF-8 speichern.</translation>
    </message>
    <message>
        <source>Save the one that is meant in a workbook of its own, or as CSV in UTF-8.</source>
        <translation>Das gemeinte Blatt in einer eigenen Arbeitsmappe oder als CSV in UTF-8 speichern.</translation>
    </message>
    <message>
        <source>The file is in UTF-16, which spreadsheets call Unicode text, and was read so.</source>
        <translation>Die Datei ist in UTF-16, das Tabellenprogramme Unicode-Text nennen, und wurde so gelesen.</translation>
    </message>
    <message>
        <source>The file is marked as UTF-16, but damaged.</source>
        <translation>Die Datei ist als UTF-16 gekennzeichnet, aber beschädigt.</translation>
    </message>
    <message>
        <source>The file is not plain text, or damaged: a byte of zero stands here.</source>
        <translation>Die Datei ist kein reiner Text oder beschädigt: Hier steht ein Nullbyte.</translation>
    </message>
    <message>
        <source>The line holds letters that are not UTF-8, nor is the file in Windows-1252.</source>
        <translation>Die Zeile enthält Zeichen, die nicht UTF-8 sind, und die Datei ist auch nicht in Windows-1252.</translation>
    </message>
    <message>
        <source>The line holds letters that are not UTF-8: the file was read as Windows-1252.</source>
        <translation>Die Zeile enthält Zeichen, die nicht UTF-8 sind: Die Datei wurde als Windows-1252 gelesen.</translation>
    </message>
    <message>
        <source>The workbook has no sheet {}.</source>
        <translation>Die Arbeitsmappe hat kein Blatt {}.</translation>
    </message>
    <message>
        <source>The workbook has several sheets.</source>
        <translation>Die Arbeitsmappe hat mehrere Blätter.</translation>
    </message>
    <message>
        <source>This is a spreadsheet&apos;s workbook (.xlsx, .ods) or a packed file that cannot be read.</source>
        <translation>Das ist die Arbeitsmappe eines Tabellenprogramms (.xlsx, .ods) oder eine gepackte Datei, die sich nicht lesen lässt.</translation>
    </message>
    <message>
        <source>This is no well-known text of a place.</source>
        <translation>Das ist kein Well-known Text eines Ortes.</translation>
    </message>
    <message>
        <source>This line and {} more hold letters that are not UTF-8, nor is the file in Windows-1252.</source>
        <translation>Diese Zeile und {} weitere enthalten Zeichen, die nicht UTF-8 sind, und die Datei ist auch nicht in Windows-1252.</translation>
    </message>
    <message>
        <source>This line and {} more hold letters that are not UTF-8: the file was read as Windows-1252.</source>
        <translation>Diese Zeile und {} weitere enthalten Zeichen, die nicht UTF-8 sind: Die Datei wurde als Windows-1252 gelesen.</translation>
    </message>
    <message>
        <source>The text is too long for a QR code: it has none.</source>
        <translation>Der Text ist zu lang für einen QR-Code: es gibt keinen.</translation>
    </message>
    <message>
        <source>The tree has no place on the earth: its code says its label instead.</source>
        <translation>Der Baum hat keinen Ort auf der Erde: sein Code sagt stattdessen seine Bezeichnung.</translation>
    </message>
    <message>
        <source>The tree has no place on the map: it is left out.</source>
        <translation>Der Baum hat keinen Platz auf der Karte: er wird weggelassen.</translation>
    </message>
    <message>
        <source>The tree is not planted yet: it is left out.</source>
        <translation>Der Baum ist noch nicht gepflanzt: er wird weggelassen.</translation>
    </message>
    <message>
        <source>The tree was removed: it is left out.</source>
        <translation>Der Baum wurde entfernt: er wird weggelassen.</translation>
    </message>
    <message>
        <source>The tree&apos;s address.</source>
        <translation>Die Adresse des Baumes.</translation>
    </message>
    <message>
        <source>The trees lie too far apart for a map that shows them one by one: it would need more than 200 pages.</source>
        <translation>Die Bäume liegen zu weit auseinander für eine Karte, die sie einzeln zeigt: sie bräuchte mehr als 200 Seiten.</translation>
    </message>
    <message>
        <source>There is no tree to draw.</source>
        <translation>Es gibt keinen Baum zu zeichnen.</translation>
    </message>
    <message>
        <source>There is no way from {} to the book&apos;s coordinates.</source>
        <translation>Von {} führt kein Weg zu den Koordinaten des Buchs.</translation>
    </message>
    <message>
        <source>Thermometer log</source>
        <translation>Aufzeichnung des Thermometers</translation>
    </message>
    <message>
        <source>They are passed over; the book&apos;s rows stay as they are.</source>
        <translation>Sie werden übergangen; die Reihen im Buch bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>Thirty days later it will sprout in its bag.</source>
        <translation>Dreißig Tage später keimt er im Beutel.</translation>
    </message>
    <message>
        <source>This does not say where a field goes.</source>
        <translation>Das sagt nicht, wohin ein Feld kommt.</translation>
    </message>
    <message>
        <source>This is no coordinate.</source>
        <translation>Das ist keine Koordinate.</translation>
    </message>
    <message>
        <source>This is no day.</source>
        <translation>Das ist kein Tag.</translation>
    </message>
    <message>
        <source>This is no whole number.</source>
        <translation>Das ist keine ganze Zahl.</translation>
    </message>
    <message>
        <source>This place cannot be drawn in the book&apos;s coordinates.</source>
        <translation>Dieser Ort lässt sich in den Koordinaten des Buchs nicht zeichnen.</translation>
    </message>
    <message>
        <source>To fit, small letters are lower than {:.1f} mm: hard to read.</source>
        <translation>Damit alles passt, sind kleine Buchstaben niedriger als {} mm: schwer zu lesen.</translation>
    </message>
    <message>
        <source>To give or sow</source>
        <translation>Abzugeben oder zu säen</translation>
    </message>
    <message>
        <source>Too few seeds to tell anything of {} and {}: even all of one against none of the other could be chance.</source>
        <translation>Zu wenige Samen, um über {} und {} etwas zu sagen: Selbst alle der einen gegen keinen der anderen könnten Zufall sein.</translation>
    </message>
    <message>
        <source>Took back {}: {} rows are gone from the book.</source>
        <translation>{} zurückgenommen: {} Zeilen sind aus dem Buch entfernt.</translation>
    </message>
    <message>
        <source>Transform the layer first.</source>
        <translation>Rechne den Layer zuerst um.</translation>
    </message>
    <message>
        <source>Treatments compared</source>
        <translation>Behandlungen verglichen</translation>
    </message>
    <message>
        <source>Tree {} of the book stands on the same spot.</source>
        <translation>Baum {} aus dem Buch steht an derselben Stelle.</translation>
    </message>
    <message>
        <source>Tree {} of the layer stands on the same spot.</source>
        <translation>Baum {} aus dem Layer steht an derselben Stelle.</translation>
    </message>
    <message>
        <source>Two fields are to go to the same column.</source>
        <translation>Zwei Felder sollen in dieselbe Spalte.</translation>
    </message>
    <message>
        <source>Type the label anew in the book.</source>
        <translation>Tipp die Bezeichnung im Buch neu ein.</translation>
    </message>
    <message>
        <source>Unknown for a check tree.</source>
        <translation>Unbekannt bei einem Vergleichsbaum.</translation>
    </message>
    <message>
        <source>Upper end of it.</source>
        <translation>Sein oberes Ende.</translation>
    </message>
    <message>
        <source>Used</source>
        <translation>Verwendet</translation>
    </message>
    <message>
        <source>Warm from {} to {}, up to {:.1f} degrees C.</source>
        <translation>Warm vom {} bis {}, bis {} Grad C.</translation>
    </message>
    <message>
        <source>Wash the seed of cross {}</source>
        <translation>Samen der Kreuzung {} waschen</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>What became of every cross, step by step; a count that nobody made is unknown.</source>
        <translation>Was aus jeder Kreuzung wurde, Schritt für Schritt; was niemand zählte, ist unbekannt.</translation>
    </message>
    <message>
        <source>What is to be done next.</source>
        <translation>Was als Nächstes zu tun ist.</translation>
    </message>
    <message>
        <source>What it is of.</source>
        <translation>Wovon.</translation>
    </message>
    <message>
        <source>What it is.</source>
        <translation>Was er ist.</translation>
    </message>
    <message>
        <source>What that is reckoned from.</source>
        <translation>Woraus das berechnet ist.</translation>
    </message>
    <message>
        <source>What the seed lay in.</source>
        <translation>Worin der Samen lag.</translation>
    </message>
    <message>
        <source>What the seeds show, in plain words.</source>
        <translation>Was die Samen zeigen, in einfachen Worten.</translation>
    </message>
    <message>
        <source>What this orchard counted; unknown for nothing counted.</source>
        <translation>Was dieser Obstgarten zählte; unbekannt, wo nichts gezählt ist.</translation>
    </message>
    <message>
        <source>What was done to the seed; unknown for nothing.</source>
        <translation>Was mit dem Samen geschah; unbekannt für nichts.</translation>
    </message>
    <message>
        <source>When it was made.</source>
        <translation>Als es angelegt wurde.</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Where it stands, and what disturbed it.</source>
        <translation>Wo es steht und was störte.</translation>
    </message>
    <message>
        <source>Where it stands.</source>
        <translation>Wo er steht.</translation>
    </message>
    <message>
        <source>Where one begins.</source>
        <translation>Womit man beginnt.</translation>
    </message>
    <message>
        <source>Whether crosses that are done or came to nothing are left out.</source>
        <translation>Ob fertige und gescheiterte Kreuzungen wegbleiben.</translation>
    </message>
    <message>
        <source>Whether lots whose cold is over are told as well.</source>
        <translation>Ob auch Partien genannt werden, deren Kälte vorbei ist.</translation>
    </message>
    <message>
        <source>Whether that day is past.</source>
        <translation>Ob dieser Tag vorbei ist.</translation>
    </message>
    <message>
        <source>Whether this orchard&apos;s own counts of fruit, seed and sprouts move the figures below.</source>
        <translation>Ob die eigenen Zählungen von Früchten, Samen und Keimen die Zahlen darunter verändern.</translation>
    </message>
    <message>
        <source>Whether trees and accessions are made; otherwise the plan is only shown.</source>
        <translation>Ob Bäume und Akzessionen angelegt werden; sonst wird der Plan nur gezeigt.</translation>
    </message>
    <message>
        <source>Which, and how many of each, as in 24-01=12; 24-02=8. All seedlings that sprouted and have no place where none is named.</source>
        <translation>Welche, und wie viele von jeder, wie in 24-01=12; 24-02=8. Alle gekeimten ohne Platz, wo keine genannt ist.</translation>
    </message>
    <message>
        <source>Within the block.</source>
        <translation>Innerhalb des Quartiers.</translation>
    </message>
    <message>
        <source>Work to come, by its first day.</source>
        <translation>Kommende Arbeiten nach ihrem ersten Tag.</translation>
    </message>
    <message>
        <source>Write FIELD=column; FIELD2=- to leave a field out.</source>
        <translation>Schreib FIELD=column; mit FIELD2=- lässt du ein Feld weg.</translation>
    </message>
    <message>
        <source>Write days as 2026-11-25; a time of day may follow.</source>
        <translation>Schreibe Tage als 2026-11-25; eine Uhrzeit darf folgen.</translation>
    </message>
    <message>
        <source>Write it as a plain number.</source>
        <translation>Schreib es als einfache Zahl.</translation>
    </message>
    <message>
        <source>Write it as in 2026-04-12.</source>
        <translation>Schreib es wie 2026-04-12.</translation>
    </message>
    <message>
        <source>Write them all alike; best as in 2026-04-12.</source>
        <translation>Schreib sie alle gleich; am besten wie 2026-04-12.</translation>
    </message>
    <message>
        <source>Write them as 24-01=12; 24-02=8, or 24-01 for all.</source>
        <translation>Schreibe sie als 24-01=12; 24-02=8 oder 24-01 für alle.</translation>
    </message>
    <message>
        <source>Writing the labels</source>
        <translation>Etiketten werden geschrieben</translation>
    </message>
    <message>
        <source>Writing to the book</source>
        <translation>Ins Buch wird geschrieben</translation>
    </message>
    <message>
        <source>Yours</source>
        <translation>Eigene</translation>
    </message>
    <message>
        <source>as told</source>
        <translation>wie angegeben</translation>
    </message>
    <message>
        <source>days since the seed was put in the cold, else washed</source>
        <translation>Tage seit Beginn der Kälte, sonst seit dem Waschen</translation>
    </message>
    <message>
        <source>each family in one run</source>
        <translation>jede Familie am Stück</translation>
    </message>
    <message>
        <source>families in short plots, in chance order, alike in every part of the rows</source>
        <translation>Familien in kurzen Stücken, in zufälliger Folge, in jedem Teil der Reihen gleich</translation>
    </message>
    <message>
        <source>fruit set of worked flowers</source>
        <translation>Fruchtansatz bestäubter Blüten</translation>
    </message>
    <message>
        <source>grid north</source>
        <translation>Gitternord</translation>
    </message>
    <message>
        <source>look for sprouts</source>
        <translation>nach Keimen sehen</translation>
    </message>
    <message>
        <source>no flower was worked</source>
        <translation>keine Blüte bestäubt</translation>
    </message>
    <message>
        <source>no fruit set</source>
        <translation>keine Frucht angesetzt</translation>
    </message>
    <message>
        <source>no seed for the cold</source>
        <translation>kein Samen für die Kälte</translation>
    </message>
    <message>
        <source>no seed sprouted</source>
        <translation>kein Samen gekeimt</translation>
    </message>
    <message>
        <source>no seedling is left</source>
        <translation>kein Sämling steht mehr</translation>
    </message>
    <message>
        <source>no seedling was planted</source>
        <translation>kein Sämling gepflanzt</translation>
    </message>
    <message>
        <source>no sound seed</source>
        <translation>kein voller Samen</translation>
    </message>
    <message>
        <source>no treatment</source>
        <translation>keine Behandlung</translation>
    </message>
    <message>
        <source>pick the fruit</source>
        <translation>Früchte pflücken</translation>
    </message>
    <message>
        <source>plant the seedlings</source>
        <translation>Sämlinge pflanzen</translation>
    </message>
    <message>
        <source>planted {}</source>
        <translation>gepflanzt {}</translation>
    </message>
    <message>
        <source>portions</source>
        <translation>Portionen</translation>
    </message>
    <message>
        <source>pot the sprouts</source>
        <translation>Keimlinge topfen</translation>
    </message>
    <message>
        <source>put the seed in the cold</source>
        <translation>Samen in die Kälte legen</translation>
    </message>
    <message>
        <source>sound seeds a fruit</source>
        <translation>volle Samen je Frucht</translation>
    </message>
    <message>
        <source>sprouting of seeds</source>
        <translation>Keimung der Samen</translation>
    </message>
    <message>
        <source>true north</source>
        <translation>geografisch Nord</translation>
    </message>
    <message>
        <source>wash the seed</source>
        <translation>Samen waschen</translation>
    </message>
    <message>
        <source>{:.0f} %</source>
        <translation>{} %</translation>
    </message>
    <message>
        <source>{:.0f} % ({:.0f} to {:.0f})</source>
        <translation>{} % ({} bis {})</translation>
    </message>
    <message>
        <source>{:.0f} of {} days.</source>
        <translation>{} von {} Tagen.</translation>
    </message>
    <message>
        <source>{} &quot;{}&quot;, not &quot;{}&quot;</source>
        <translation>{} &quot;{}&quot;, nicht &quot;{}&quot;</translation>
    </message>
    <message>
        <source>{} (blend)</source>
        <translation>{} (Mischung)</translation>
    </message>
    <message>
        <source>{} blocks</source>
        <translation>{} Quartiere</translation>
    </message>
    <message>
        <source>{} days or spans of work are in the calendar.</source>
        <translation>{} Tage oder Spannen mit Arbeit stehen im Kalender.</translation>
    </message>
    <message>
        <source>{} days without a reading count nothing.</source>
        <translation>{} Tage ohne Messwert zählen nicht.</translation>
    </message>
    <message>
        <source>{} errors stand in the way: as it is, nothing would be written.</source>
        <translation>{} Fehler stehen im Weg: so, wie es ist, würde nichts geschrieben.</translation>
    </message>
    <message>
        <source>{} features are in the book already, at the same place.</source>
        <translation>{} Objekte sind schon im Buch, am selben Ort.</translation>
    </message>
    <message>
        <source>{} in {}</source>
        <translation>{} in {}</translation>
    </message>
    <message>
        <source>{} labels are too many for one file; {} is the most.</source>
        <translation>{} Etiketten sind zu viele für eine Datei; höchstens {} gehen.</translation>
    </message>
    <message>
        <source>{} labels of {:g} x {:g} mm on 1 page.</source>
        <translation>{} Etiketten zu {} x {} mm auf 1 Seite.</translation>
    </message>
    <message>
        <source>{} labels of {:g} x {:g} mm on {} pages.</source>
        <translation>{} Etiketten zu {} x {} mm auf {} Seiten.</translation>
    </message>
    <message>
        <source>{} lots in the cold, {} of them ready.</source>
        <translation>{} Partien in der Kälte, davon {} bereit.</translation>
    </message>
    <message>
        <source>{} m</source>
        <translation>{} m</translation>
    </message>
    <message>
        <source>{} of {} sprouted, {:.0f} to {:.0f} %</source>
        <translation>{} von {} gekeimt, {} bis {} %</translation>
    </message>
    <message>
        <source>{} or more</source>
        <translation>{} oder mehr</translation>
    </message>
    <message>
        <source>{} places are needed and {} are vacant.</source>
        <translation>{} Plätze werden gebraucht und {} sind frei.</translation>
    </message>
    <message>
        <source>{} seeds of lot {} had sprouted on {}, {} have left it.</source>
        <translation>{} Samen von Partie {} waren am {} gekeimt, {} haben sie verlassen.</translation>
    </message>
    <message>
        <source>{} seeds sprouted and none has a numbered place yet.</source>
        <translation>{} Samen keimten, und keiner hat schon einen nummerierten Platz.</translation>
    </message>
    <message>
        <source>{} tree rows</source>
        <translation>{} Baumreihen</translation>
    </message>
    <message>
        <source>{} trees</source>
        <translation>{} Bäume</translation>
    </message>
    <message>
        <source>{} trees are too many for one map; {} is the most.</source>
        <translation>{} Bäume sind zu viele für eine Karte; höchstens {} gehen.</translation>
    </message>
    <message>
        <source>{} trees for receivers.</source>
        <translation>{} Bäume für Empfänger.</translation>
    </message>
    <message>
        <source>{} trees have no place on the earth: receivers do not get them.</source>
        <translation>{} Bäume haben keinen Ort auf der Erde: Empfänger bekommen sie nicht.</translation>
    </message>
    <message>
        <source>{} values are a year alone; the book keeps days.</source>
        <translation>{} Werte sind nur ein Jahr; das Buch führt Tage.</translation>
    </message>
    <message>
        <source>“{}”</source>
        <translation>„{}“</translation>
    </message>
    <message>
        <source>Chance p, pace</source>
        <translation>Zufall p, Verlauf</translation>
    </message>
    <message>
        <source>Chance p, shares</source>
        <translation>Zufall p, Anteile</translation>
    </message>
    <message>
        <source>Gives sprouted seedlings numbered places in the vacant positions of a block: family by family or mixed in chance order with check trees between, none left out, row by row as one walks. Makes their accessions, with both parents, and their trees; the whole planting can be taken back.</source>
        <translation>Gibt gekeimten Sämlingen nummerierte Plätze an den freien Plätzen eines Quartiers: Familie für Familie oder zufällig gemischt mit Vergleichsbäumen dazwischen, ohne Lücke, Reihe für Reihe, wie man geht. Legt ihre Akzessionen mit beiden Eltern und ihre Bäume an; die ganze Pflanzung lässt sich zurücknehmen.</translation>
    </message>
    <message>
        <source>The courses of {} and {} of cross {} are not compared: they were counted on other days after their beginning, or too little sprouted.</source>
        <translation>Die Verläufe von {} und {} der Kreuzung {} werden nicht verglichen: Sie wurden an anderen Tagen nach ihrem Beginn gezählt, oder zu wenig keimte.</translation>
    </message>
    <message>
        <source>% of a descendant: expected part of its genes that came from {}</source>
        <translation>% eines Nachkommen: erwarteter Anteil seiner Gene, der von {} stammt</translation>
    </message>
    <message>
        <source>% of an ancestor: expected part of the genes of {} that came from it</source>
        <translation>% eines Vorfahren: erwarteter Anteil der Gene von {}, der von ihm stammt</translation>
    </message>
    <message>
        <source>(see above)</source>
        <translation>(siehe oben)</translation>
    </message>
    <message>
        <source>1 accession is not listed: the scores tell nothing of it.</source>
        <translation>1 Akzession ist nicht aufgeführt: Die Noten sagen nichts über sie.</translation>
    </message>
    <message>
        <source>1 flower worked</source>
        <translation>1 Blüte bestäubt</translation>
    </message>
    <message>
        <source>1 for the highest value; where a low score is the good one, read from the end.</source>
        <translation>1 für den höchsten Wert; wo eine niedrige Note die gute ist, vom Ende her lesen.</translation>
    </message>
    <message>
        <source>1 line is wrong: as it is, nothing would be written.</source>
        <translation>1 Zeile ist falsch: So, wie es ist, würde nichts geschrieben.</translation>
    </message>
    <message>
        <source>1 piece of work</source>
        <translation>1 Arbeit</translation>
    </message>
    <message>
        <source>1 promises most.</source>
        <translation>1 verspricht am meisten.</translation>
    </message>
    <message>
        <source>1 row</source>
        <translation>1 Zeile</translation>
    </message>
    <message>
        <source>1 seedling</source>
        <translation>1 Sämling</translation>
    </message>
    <message>
        <source>1 tagged branch bears fruit</source>
        <translation>1 etikettierter Zweig trägt Früchte</translation>
    </message>
    <message>
        <source>3 % at most, gloves and goggles, a dark bottle that can vent; never with bleach, vinegar or metals. Stronger is for trained users.</source>
        <translation>Höchstens 3 %, Handschuhe und Schutzbrille, dunkle Flasche, aus der Gas entweichen kann; nie mit Bleiche, Essig oder Metallen. Stärkeres nur für Geschulte.</translation>
    </message>
    <message>
        <source>A CSV file in UTF-8, with commas or semicolons, whose header names descriptors.</source>
        <translation>Eine CSV-Datei in UTF-8, mit Kommas oder Semikolons, deren Kopfzeile Deskriptoren nennt.</translation>
    </message>
    <message>
        <source>A column &quot;where&quot; only tells where to look; it is not read.</source>
        <translation>Eine Spalte &quot;where&quot; sagt nur, wo zu suchen ist; sie wird nicht gelesen.</translation>
    </message>
    <message>
        <source>A cross needs two parents.</source>
        <translation>Eine Kreuzung braucht zwei Eltern.</translation>
    </message>
    <message>
        <source>A cross of the number {} cannot be.</source>
        <translation>Eine Kreuzung mit der Nummer {} kann es nicht geben.</translation>
    </message>
    <message>
        <source>A parent has no name.</source>
        <translation>Ein Elter hat keinen Namen.</translation>
    </message>
    <message>
        <source>A sport: it has the parents of {}.</source>
        <translation>Ein Sport: Er hat die Eltern von {}.</translation>
    </message>
    <message>
        <source>A spreadsheet&apos;s error stands here instead of a value.</source>
        <translation>Hier steht ein Fehler der Tabellenkalkulation statt eines Werts.</translation>
    </message>
    <message>
        <source>A trait that each parent, or one of its own parents, must show, as in scab&lt;=3.</source>
        <translation>Ein Merkmal, das jeder Elter oder einer von dessen Eltern zeigen muss, etwa scab&lt;=3.</translation>
    </message>
    <message>
        <source>ACQDATE: when the first tree of it was planted, YYYYMMDD.</source>
        <translation>ACQDATE: wann der erste Baum davon gepflanzt wurde, YYYYMMDD.</translation>
    </message>
    <message>
        <source>ANCEST: its parents in Purdy notation.</source>
        <translation>ANCEST: die Eltern in Purdy-Schreibweise.</translation>
    </message>
    <message>
        <source>Accessions added: {}.</source>
        <translation>Hinzugefügte Akzessionen: {}.</translation>
    </message>
    <message>
        <source>Accessions are sports of each other in a circle: {}.</source>
        <translation>Akzessionen sind im Kreis als Sport voneinander eingetragen: {}.</translation>
    </message>
    <message>
        <source>Accessions of the whole book whose alleles do not fit their recorded parents.</source>
        <translation>Akzessionen des ganzen Buchs, deren Allele nicht zu den eingetragenen Eltern passen.</translation>
    </message>
    <message>
        <source>Accessions that may be crossed, with commas between; every cultivar and selection with a living tree where none is named.</source>
        <translation>Akzessionen, die gekreuzt werden dürfen, durch Kommas getrennt; ohne Angabe jede Sorte und Auslese mit einem lebenden Baum.</translation>
    </message>
    <message>
        <source>Acquired</source>
        <translation>Erworben</translation>
    </message>
    <message>
        <source>Add a line for it to the file, or the parent to the book first.</source>
        <translation>Der Datei eine Zeile dafür hinzufügen oder den Elter zuerst ins Buch eintragen.</translation>
    </message>
    <message>
        <source>Add it, or give the day of all lines with day-if-blank.</source>
        <translation>Hinzufügen oder den Tag aller Zeilen mit day-if-blank angeben.</translation>
    </message>
    <message>
        <source>Add it: {}</source>
        <translation>Hinzufügen: {}</translation>
    </message>
    <message>
        <source>After that drop, rot or theft is more likely than not.</source>
        <translation>Danach sind Fruchtfall, Fäulnis oder Diebstahl wahrscheinlicher als nicht.</translation>
    </message>
    <message>
        <source>After that year few seedlings are still without fruit.</source>
        <translation>Nach diesem Jahr sind nur noch wenige Sämlinge ohne Früchte.</translation>
    </message>
    <message>
        <source>All accessions of the book</source>
        <translation>Alle Akzessionen des Buchs</translation>
    </message>
    <message>
        <source>Alleles of the pollen parent</source>
        <translation>Allele des Pollenelters</translation>
    </message>
    <message>
        <source>Alleles of the seed parent</source>
        <translation>Allele des Samenelters</translation>
    </message>
    <message>
        <source>Allowed</source>
        <translation>Erlaubt</translation>
    </message>
    <message>
        <source>Allowed: {}.</source>
        <translation>Erlaubt: {}.</translation>
    </message>
    <message>
        <source>An accession is recorded as a sport of itself, each the sport of the next.</source>
        <translation>Eine Akzession ist als Sport ihrer selbst eingetragen, jede als Sport der nächsten.</translation>
    </message>
    <message>
        <source>An accession&apos;s name or a tree&apos;s label; everybody who is a parent where none is named.</source>
        <translation>Der Name einer Akzession oder die Bezeichnung eines Baums; ohne Angabe alle, die Eltern sind.</translation>
    </message>
    <message>
        <source>An accession.</source>
        <translation>Eine Akzession.</translation>
    </message>
    <message>
        <source>An earlier row has a {} of this name.</source>
        <translation>In einer früheren Zeile steht unter diesem Namen schon ein Eintrag ({}).</translation>
    </message>
    <message>
        <source>An earlier row says the same.</source>
        <translation>Eine frühere Zeile sagt dasselbe.</translation>
    </message>
    <message>
        <source>Ancestor</source>
        <translation>Vorfahr</translation>
    </message>
    <message>
        <source>Ancestors farther back than generation {} are not drawn: {}.</source>
        <translation>Vorfahren weiter zurück als Generation {} sind nicht gezeichnet: {}.</translation>
    </message>
    <message>
        <source>Ancestry</source>
        <translation>Abstammung</translation>
    </message>
    <message>
        <source>Another one.</source>
        <translation>Eine andere.</translation>
    </message>
    <message>
        <source>Apple: {} years to the first fruit as a rule, {} to {} are known.</source>
        <translation>Apfel: in der Regel {} Jahre bis zu den ersten Früchten, bekannt sind {} bis {}.</translation>
    </message>
    <message>
        <source>Apples with pears are left out.</source>
        <translation>Äpfel mit Birnen sind ausgelassen.</translation>
    </message>
    <message>
        <source>As it was noted.</source>
        <translation>Wie notiert.</translation>
    </message>
    <message>
        <source>As it would be written.</source>
        <translation>Wie es geschrieben würde.</translation>
    </message>
    <message>
        <source>As recorded.</source>
        <translation>Wie eingetragen.</translation>
    </message>
    <message>
        <source>As recorded: an accession or a blend.</source>
        <translation>Wie eingetragen: eine Akzession oder eine Pollenmischung.</translation>
    </message>
    <message>
        <source>Ask for a trait that was scored.</source>
        <translation>Ein Merkmal angeben, für das Noten vorliegen.</translation>
    </message>
    <message>
        <source>Ask for more generations down; the table of descendants has them all.</source>
        <translation>Mehr Generationen abwärts verlangen; die Tabelle der Nachkommen enthält alle.</translation>
    </message>
    <message>
        <source>Ask for more generations up.</source>
        <translation>Mehr Generationen aufwärts verlangen.</translation>
    </message>
    <message>
        <source>At the trees</source>
        <translation>An den Bäumen</translation>
    </message>
    <message>
        <source>At this tag: no more fruit can hang there.</source>
        <translation>An diesem Etikett: Mehr Früchte können dort nicht hängen.</translation>
    </message>
    <message>
        <source>Better than</source>
        <translation>Besser als</translation>
    </message>
    <message>
        <source>Between two names there is no cross.</source>
        <translation>Zwischen zwei Namen fehlt die Kreuzung.</translation>
    </message>
    <message>
        <source>Bleach.</source>
        <translation>Bleiche.</translation>
    </message>
    <message>
        <source>Both parents of a cross have doses: only one can be the recurrent parent.</source>
        <translation>Beide Eltern einer Kreuzung haben Dosen: Nur einer kann der Rückkreuzungselter sein.</translation>
    </message>
    <message>
        <source>Breeding value</source>
        <translation>Zuchtwert</translation>
    </message>
    <message>
        <source>Breeding values</source>
        <translation>Zuchtwerte</translation>
    </message>
    <message>
        <source>By a blend of pollen, reckoned with its shares.</source>
        <translation>Durch eine Pollenmischung, nach deren Anteilen gerechnet.</translation>
    </message>
    <message>
        <source>By its alleles it can only come of pollen that the style should have turned away.</source>
        <translation>Nach ihren Allelen kann sie nur aus Pollen stammen, den der Griffel hätte abweisen müssen.</translation>
    </message>
    <message>
        <source>By its parents&apos; alleles alone.</source>
        <translation>Allein nach den Allelen der Eltern.</translation>
    </message>
    <message>
        <source>By the parents&apos; alleles: {}.</source>
        <translation>Nach den Allelen der Eltern: {}.</translation>
    </message>
    <message>
        <source>By the wish, above the founders, in spreads of the scores.</source>
        <translation>Nach dem Wunsch, über den Stammeltern, in Streuungen der Noten.</translation>
    </message>
    <message>
        <source>Cells of a tray from left to right, for the map of trays; 0 for no trays.</source>
        <translation>Zellen einer Topfplatte von links nach rechts, für den Plan der Topfplatten; 0 für keine Topfplatten.</translation>
    </message>
    <message>
        <source>Cells of a tray from top to bottom.</source>
        <translation>Zellen einer Topfplatte von oben nach unten.</translation>
    </message>
    <message>
        <source>Chance with the field</source>
        <translation>Chance mit Feldzählung</translation>
    </message>
    <message>
        <source>Check its parents and all three records; s_contradiction tells which allele is missing.</source>
        <translation>Ihre Eltern und alle drei Einträge prüfen; s_contradiction nennt das fehlende Allel.</translation>
    </message>
    <message>
        <source>Clear its parents and write them with {}; or clear sport_of if it was raised from seed.</source>
        <translation>Ihre Eltern leeren und bei {} eintragen; oder sport_of leeren, wenn sie aus Samen gezogen wurde.</translation>
    </message>
    <message>
        <source>Clear the field of the one that was there first.</source>
        <translation>Das Feld bei derjenigen leeren, die zuerst da war.</translation>
    </message>
    <message>
        <source>Clear this field of the one that the others came from.</source>
        <translation>Dieses Feld bei derjenigen leeren, von der die anderen abstammen.</translation>
    </message>
    <message>
        <source>Code of the cross; unknown where the book does not tell it.</source>
        <translation>Kürzel der Kreuzung; leer, wenn das Buch es nicht nennt.</translation>
    </message>
    <message>
        <source>Coefficient of inbreeding, 0 to 1; unknown where it cannot be told.</source>
        <translation>Inzuchtkoeffizient, 0 bis 1; leer, wenn er sich nicht angeben lässt.</translation>
    </message>
    <message>
        <source>Coefficient of kinship, 0 to 1: the inbreeding that a child of the two would have; unknown where it cannot be told.</source>
        <translation>Verwandtschaftskoeffizient, 0 bis 1: die Inzucht, die ein Kind der beiden hätte; leer, wenn er sich nicht angeben lässt.</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Spalte</translation>
    </message>
    <message>
        <source>Column {} has cells, but no heading.</source>
        <translation>Spalte {} hat Zellen, aber keine Überschrift.</translation>
    </message>
    <message>
        <source>Columns of the sheet</source>
        <translation>Spalten des Blatts</translation>
    </message>
    <message>
        <source>Copy and paste the cells as values in the spreadsheet, or type the value.</source>
        <translation>Die Zellen in der Tabellenkalkulation kopieren und als Werte einfügen oder den Wert eintippen.</translation>
    </message>
    <message>
        <source>Correct the parent, or the day of planting.</source>
        <translation>Den Elter oder den Pflanztag berichtigen.</translation>
    </message>
    <message>
        <source>Correct the parent, the season of one of the crosses, or the parent&apos;s name.</source>
        <translation>Den Elter, die Saison einer der Kreuzungen oder den Namen des Elters berichtigen.</translation>
    </message>
    <message>
        <source>Correct the year or the month, if it is wrong.</source>
        <translation>Jahr oder Monat berichtigen, falls falsch.</translation>
    </message>
    <message>
        <source>Cross {} stands more than once, so that it cannot be seen which was made first.</source>
        <translation>Kreuzung {} steht mehrmals da, sodass nicht zu erkennen ist, welche zuerst gemacht wurde.</translation>
    </message>
    <message>
        <source>Cross {}: pick the fruit</source>
        <translation>Kreuzung {}: Früchte pflücken</translation>
    </message>
    <message>
        <source>Crosses a parent</source>
        <translation>Kreuzungen je Elter</translation>
    </message>
    <message>
        <source>Crosses left out</source>
        <translation>Ausgelassene Kreuzungen</translation>
    </message>
    <message>
        <source>Crosses to make, the most promising first.</source>
        <translation>Vorgeschlagene Kreuzungen, die aussichtsreichste zuerst.</translation>
    </message>
    <message>
        <source>Day of lines without one</source>
        <translation>Tag für Zeilen ohne Tag</translation>
    </message>
    <message>
        <source>Days as in 2026-05-12. Decimals with a point or a comma, thousands without anything.</source>
        <translation>Tage wie 2026-05-12. Dezimalzahlen mit Punkt oder Komma, Tausender ohne Trennzeichen.</translation>
    </message>
    <message>
        <source>Days from full bloom.</source>
        <translation>Tage ab der Vollblüte.</translation>
    </message>
    <message>
        <source>Descendant</source>
        <translation>Nachkomme</translation>
    </message>
    <message>
        <source>Descendants</source>
        <translation>Nachkommen</translation>
    </message>
    <message>
        <source>Descendants in the book: {}.</source>
        <translation>Nachkommen im Buch: {}.</translation>
    </message>
    <message>
        <source>Descendants of {}</source>
        <translation>Nachkommen von {}</translation>
    </message>
    <message>
        <source>Descendants that are not drawn: {}.</source>
        <translation>Nachkommen, die nicht gezeichnet sind: {}.</translation>
    </message>
    <message>
        <source>Did you mean {}?</source>
        <translation>War {} gemeint?</translation>
    </message>
    <message>
        <source>Did you mean {}? Rename it, or remove the column.</source>
        <translation>War {} gemeint? Umbenennen oder die Spalte entfernen.</translation>
    </message>
    <message>
        <source>Doubt</source>
        <translation>Unsicherheit</translation>
    </message>
    <message>
        <source>Doubts</source>
        <translation>Zweifel</translation>
    </message>
    <message>
        <source>Drawing the line</source>
        <translation>Abstammung wird gezeichnet</translation>
    </message>
    <message>
        <source>Draws who an accession descends from and what descends from it, as SVG and PDF on one page: the seed parent above the pollen parent, an ancestor that comes in more than once drawn once, blends with their members, unknown parents and sports as such. Writes the line in breeders&apos; notation and tells what part of the genes each ancestor is expected to have given.</source>
        <translation>Zeichnet auf einer Seite als SVG und PDF, von wem eine Akzession abstammt und was von ihr abstammt: der Samenelter über dem Pollenelter, ein mehrfach vorkommender Vorfahr nur einmal, Pollenmischungen mit ihren Bestandteilen, unbekannte Eltern und Sporte als solche. Schreibt die Abstammung in der Schreibweise der Züchter und nennt den Anteil der Gene, den jeder Vorfahr erwartungsgemäß gegeben hat.</translation>
    </message>
    <message>
        <source>Each of the accessions: how inbred it is itself.</source>
        <translation>Jede der Akzessionen: wie stark sie selbst ingezüchtet ist.</translation>
    </message>
    <message>
        <source>Earliest</source>
        <translation>Frühestens</translation>
    </message>
    <message>
        <source>Early fruit: it is ripe before its seed is full-grown. Let it stand two to four weeks before it is opened; open rotten fruit at once.</source>
        <translation>Frühe Frucht: Sie ist reif, bevor ihr Samen ausgewachsen ist. Vor dem Öffnen zwei bis vier Wochen liegen lassen; faule Früchte gleich öffnen.</translation>
    </message>
    <message>
        <source>Enter the accessions and their parents first.</source>
        <translation>Zuerst die Akzessionen und ihre Eltern eintragen.</translation>
    </message>
    <message>
        <source>Every other pair of the parents, and why.</source>
        <translation>Jedes andere Paar der Eltern und warum.</translation>
    </message>
    <message>
        <source>Every standing seedling, and the years in which it should first fruit.</source>
        <translation>Jeder stehende Sämling und die Jahre, in denen er erstmals Früchte tragen sollte.</translation>
    </message>
    <message>
        <source>Every two of the accessions both ways: what the alleles tell of the cross, and what the field does.</source>
        <translation>Je zwei der Akzessionen in beiden Richtungen: was die Allele zur Kreuzung sagen und was das Feld zeigt.</translation>
    </message>
    <message>
        <source>Every two of the accessions, the most closely related first.</source>
        <translation>Je zwei der Akzessionen, die am engsten verwandten zuerst.</translation>
    </message>
    <message>
        <source>Example</source>
        <translation>Beispiel</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Erwartet</translation>
    </message>
    <message>
        <source>Expected part of the descendant&apos;s genes that came from it.</source>
        <translation>Erwarteter Anteil der Gene des Nachkommen, der von ihr stammt.</translation>
    </message>
    <message>
        <source>Expected part of the genes that came from it; shares of those of whom no parent is known add up to 100.</source>
        <translation>Erwarteter Anteil der Gene, der von ihm stammt; die Anteile derer, von denen kein Elter bekannt ist, ergeben zusammen 100.</translation>
    </message>
    <message>
        <source>Expected: a pollen blend stands in the line.</source>
        <translation>Erwartet: In der Abstammung steht eine Pollenmischung.</translation>
    </message>
    <message>
        <source>Family</source>
        <translation>Familie</translation>
    </message>
    <message>
        <source>Farthest</source>
        <translation>Längster Weg</translation>
    </message>
    <message>
        <source>Fill in ACCENAME or ACCENUMB.</source>
        <translation>ACCENAME oder ACCENUMB ausfüllen.</translation>
    </message>
    <message>
        <source>Fill in beforehand</source>
        <translation>Vorab ausfüllen</translation>
    </message>
    <message>
        <source>Fill in the rest, or keep the remark elsewhere.</source>
        <translation>Den Rest ausfüllen oder die Bemerkung anderswo festhalten.</translation>
    </message>
    <message>
        <source>Fill it in, or give the day of such lines with day-if-blank.</source>
        <translation>Ausfüllen oder den Tag solcher Zeilen mit day-if-blank angeben.</translation>
    </message>
    <message>
        <source>First and last year of its scores.</source>
        <translation>Erstes und letztes Jahr seiner Noten.</translation>
    </message>
    <message>
        <source>First day at the flowers.</source>
        <translation>Erster Tag an den Blüten.</translation>
    </message>
    <message>
        <source>First day; unknown for any day.</source>
        <translation>Erster Tag; leer, wenn jeder Tag recht ist.</translation>
    </message>
    <message>
        <source>First fruit</source>
        <translation>Erste Früchte</translation>
    </message>
    <message>
        <source>First fruit and families</source>
        <translation>Erste Früchte und Familien</translation>
    </message>
    <message>
        <source>First year in which it may fruit.</source>
        <translation>Erstes Jahr, in dem er Früchte tragen kann.</translation>
    </message>
    <message>
        <source>Flowers to work or to gather, pollen.</source>
        <translation>Zu bestäubende oder zu sammelnde Blüten, Pollen.</translation>
    </message>
    <message>
        <source>Following the line</source>
        <translation>Abstammung wird verfolgt</translation>
    </message>
    <message>
        <source>Following the traits</source>
        <translation>Merkmale werden verfolgt</translation>
    </message>
    <message>
        <source>For that many seedlings.</source>
        <translation>Für so viele Sämlinge.</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>Founder</source>
        <translation>Stammelter</translation>
    </message>
    <message>
        <source>From its relatives only.</source>
        <translation>Nur aus ihren Verwandten.</translation>
    </message>
    <message>
        <source>From parents that are not known.</source>
        <translation>Von unbekannten Eltern.</translation>
    </message>
    <message>
        <source>From sowing to the year asked about.</source>
        <translation>Von der Aussaat bis zum gefragten Jahr.</translation>
    </message>
    <message>
        <source>From the alleles</source>
        <translation>Aus den Allelen</translation>
    </message>
    <message>
        <source>From the field</source>
        <translation>Aus dem Feld</translation>
    </message>
    <message>
        <source>From unknown parents: {:.3g} %.</source>
        <translation>Von unbekannten Eltern: {:.3g} %.</translation>
    </message>
    <message>
        <source>From what to what, where that is limited.</source>
        <translation>Von wo bis wo, falls begrenzt.</translation>
    </message>
    <message>
        <source>Fruit was expected</source>
        <translation>Früchte waren erwartet</translation>
    </message>
    <message>
        <source>Fruits of them, of a pear only such as had sound seed.</source>
        <translation>Früchte daraus, bei Birnen nur solche mit vollen Samen.</translation>
    </message>
    <message>
        <source>Full bloom from</source>
        <translation>Vollblüte ab</translation>
    </message>
    <message>
        <source>Full bloom to</source>
        <translation>Vollblüte bis</translation>
    </message>
    <message>
        <source>Full bloom {}, by the day of the work.</source>
        <translation>Vollblüte {}, nach dem Tag der Bestäubung.</translation>
    </message>
    <message>
        <source>Full bloom {}.</source>
        <translation>Vollblüte {}.</translation>
    </message>
    <message>
        <source>GENUS.</source>
        <translation>GENUS.</translation>
    </message>
    <message>
        <source>Generation</source>
        <translation>Generation</translation>
    </message>
    <message>
        <source>Generations back by the longest way.</source>
        <translation>Generationen zurück auf dem längsten Weg.</translation>
    </message>
    <message>
        <source>Generations back by the shortest way: 1 for a parent.</source>
        <translation>Generationen zurück auf dem kürzesten Weg: 1 für einen Elter.</translation>
    </message>
    <message>
        <source>Generations down</source>
        <translation>Generationen abwärts</translation>
    </message>
    <message>
        <source>Generations of ancestors to draw.</source>
        <translation>Zu zeichnende Generationen von Vorfahren.</translation>
    </message>
    <message>
        <source>Generations of descendants to draw.</source>
        <translation>Zu zeichnende Generationen von Nachkommen.</translation>
    </message>
    <message>
        <source>Generations on by the shortest way: 1 for a child.</source>
        <translation>Generationen abwärts auf dem kürzesten Weg: 1 für ein Kind.</translation>
    </message>
    <message>
        <source>Generations up</source>
        <translation>Generationen aufwärts</translation>
    </message>
    <message>
        <source>Genus</source>
        <translation>Gattung</translation>
    </message>
    <message>
        <source>Give it a header of descriptors and a line an accession.</source>
        <translation>Eine Kopfzeile mit Deskriptoren und je Akzession eine Zeile anlegen.</translation>
    </message>
    <message>
        <source>Give the file a header of descriptors; see passport-export.</source>
        <translation>Der Datei eine Kopfzeile mit Deskriptoren geben; siehe passport-export.</translation>
    </message>
    <message>
        <source>Give the name of an accession or the label of a tree as it stands in the book.</source>
        <translation>Den Namen einer Akzession oder die Bezeichnung eines Baums so angeben, wie sie im Buch stehen.</translation>
    </message>
    <message>
        <source>Give the traits with wish.</source>
        <translation>Die Merkmale mit wish angeben.</translation>
    </message>
    <message>
        <source>Give the tree its accession.</source>
        <translation>Dem Baum seine Akzession zuweisen.</translation>
    </message>
    <message>
        <source>Hangs late: guard it from frost, birds and wind, and pick before a hard frost. Open fruit with a rotten core at once and keep its seed apart.</source>
        <translation>Hängt lange: vor Frost, Vögeln und Wind schützen und vor strengem Frost pflücken. Früchte mit faulem Kernhaus gleich öffnen und ihren Samen gesondert halten.</translation>
    </message>
    <message>
        <source>Hardly a seedling surpasses {}: more than {} would have to be grown.</source>
        <translation>Kaum ein Sämling übertrifft {}: Mehr als {} müssten gezogen werden.</translation>
    </message>
    <message>
        <source>Has bloomed</source>
        <translation>Hat geblüht</translation>
    </message>
    <message>
        <source>Head it, or remove it.</source>
        <translation>Mit einer Überschrift versehen oder entfernen.</translation>
    </message>
    <message>
        <source>Heritability</source>
        <translation>Erblichkeit</translation>
    </message>
    <message>
        <source>Holding alleles against each other</source>
        <translation>Allele werden verglichen</translation>
    </message>
    <message>
        <source>How far above the founders it is in what it hands on; a child of two parents is expected at the mean of their values.</source>
        <translation>Wie weit sie in dem, was sie vererbt, über den Stammeltern liegt; ein Kind zweier Eltern wird im Mittel von deren Werten erwartet.</translation>
    </message>
    <message>
        <source>How it may look.</source>
        <translation>Wie es aussehen kann.</translation>
    </message>
    <message>
        <source>How much of the truth the value holds, 0 for nothing to 1 for all: the squared accuracy.</source>
        <translation>Wie viel von der Wahrheit der Wert enthält, 0 für nichts bis 1 für alles: die quadrierte Genauigkeit.</translation>
    </message>
    <message>
        <source>How related the parents are is not known.</source>
        <translation>Wie verwandt die Eltern sind, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>How the pollen would be had this spring.</source>
        <translation>Wie der Pollen in diesem Frühjahr zu bekommen wäre.</translation>
    </message>
    <message>
        <source>How the seedlings of each family have done so far, trait by trait.</source>
        <translation>Wie die Sämlinge jeder Familie bisher abgeschnitten haben, Merkmal für Merkmal.</translation>
    </message>
    <message>
        <source>Hydrogen peroxide.</source>
        <translation>Wasserstoffperoxid.</translation>
    </message>
    <message>
        <source>Import notes</source>
        <translation>Notizen einlesen</translation>
    </message>
    <message>
        <source>In block {} these have their places: {}. Print their labels with label-sheet and the map with field-map; undo takes them back as a whole.</source>
        <translation>In Quartier {} haben diese ihre Plätze: {}. Ihre Etiketten mit label-sheet und den Plan mit field-map drucken; undo nimmt sie als Ganzes zurück.</translation>
    </message>
    <message>
        <source>In block {} these would have places: {}; nothing was written.</source>
        <translation>In Quartier {} bekämen diese Plätze: {}; es wurde nichts geschrieben.</translation>
    </message>
    <message>
        <source>In how many ways it is an ancestor.</source>
        <translation>Auf wie vielen Wegen er Vorfahr ist.</translation>
    </message>
    <message>
        <source>In so many crosses one parent may stand, so that a favourite does not swamp the plan.</source>
        <translation>In so vielen Kreuzungen darf ein Elter stehen, damit kein Favorit den Plan beherrscht.</translation>
    </message>
    <message>
        <source>In walking order, about {:.0f} m along the alleys.</source>
        <translation>In der Folge des Rundgangs, etwa {:.0f} m durch die Fahrgassen.</translation>
    </message>
    <message>
        <source>In walking order, then the work on the bench.</source>
        <translation>In der Folge des Rundgangs, dann die Arbeiten am Tisch.</translation>
    </message>
    <message>
        <source>In walking order.</source>
        <translation>In der Folge des Rundgangs.</translation>
    </message>
    <message>
        <source>In which scores were made.</source>
        <translation>In denen Noten vergeben wurden.</translation>
    </message>
    <message>
        <source>Inbreeding</source>
        <translation>Inzucht</translation>
    </message>
    <message>
        <source>Institute</source>
        <translation>Institut</translation>
    </message>
    <message>
        <source>It is a sport of {}, which has other parents or none: its own are passed over.</source>
        <translation>Sie ist ein Sport von {}, mit anderen oder ohne Eltern: Ihre eigenen Eltern bleiben außer Acht.</translation>
    </message>
    <message>
        <source>It is kept as it stands.</source>
        <translation>Es bleibt, wie es ist.</translation>
    </message>
    <message>
        <source>It is not diploid: nothing is inferred.</source>
        <translation>Sie ist nicht diploid: Es wird nichts abgeleitet.</translation>
    </message>
    <message>
        <source>It is not recorded of which accession this tree is.</source>
        <translation>Es ist nicht eingetragen, von welcher Akzession dieser Baum ist.</translation>
    </message>
    <message>
        <source>It says the same as line {}.</source>
        <translation>Sie sagt dasselbe wie Zeile {}.</translation>
    </message>
    <message>
        <source>It says there: {}. Correct it there, or give this one another name.</source>
        <translation>Dort steht: {}. Dort berichtigen oder diesem hier einen anderen Namen geben.</translation>
    </message>
    <message>
        <source>It should be: {}.</source>
        <translation>Sie sollte lauten: {}.</translation>
    </message>
    <message>
        <source>Its alleles do not fit its recorded parents.</source>
        <translation>Ihre Allele passen nicht zu den eingetragenen Eltern.</translation>
    </message>
    <message>
        <source>Its code, or several.</source>
        <translation>Ihr Kürzel, oder mehrere.</translation>
    </message>
    <message>
        <source>Its kind becomes unknown; correct it in the book.</source>
        <translation>Die Art der Akzession wird unbekannt; im Buch berichtigen.</translation>
    </message>
    <message>
        <source>Its name in the book.</source>
        <translation>Der Name im Buch.</translation>
    </message>
    <message>
        <source>Its name.</source>
        <translation>Der Name.</translation>
    </message>
    <message>
        <source>Its pollen parent or blend.</source>
        <translation>Pollenelter oder Pollenmischung.</translation>
    </message>
    <message>
        <source>Its seed parent.</source>
        <translation>Der Samenelter.</translation>
    </message>
    <message>
        <source>Its tree {} was planted on {}, before its parent&apos;s cross {} of {} had borne seed.</source>
        <translation>Ihr Baum {} wurde am {} gepflanzt, bevor die Kreuzung ihres Elters, {} von {}, Samen getragen hatte.</translation>
    </message>
    <message>
        <source>Kinship and inbreeding</source>
        <translation>Verwandtschaft und Inzucht</translation>
    </message>
    <message>
        <source>Last day; unknown where nothing tells it.</source>
        <translation>Letzter Tag; leer, wenn nichts ihn angibt.</translation>
    </message>
    <message>
        <source>Last safe day to gather it.</source>
        <translation>Letzter sicherer Tag, ihn zu sammeln.</translation>
    </message>
    <message>
        <source>Latest</source>
        <translation>Spätestens</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>Kleinster Wert</translation>
    </message>
    <message>
        <source>Leave it out: the book has no scores.</source>
        <translation>Weglassen: Das Buch hat keine Noten.</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Abstammung</translation>
    </message>
    <message>
        <source>Line in one string</source>
        <translation>Abstammung in einer Zeile</translation>
    </message>
    <message>
        <source>Line of an accession</source>
        <translation>Abstammung einer Akzession</translation>
    </message>
    <message>
        <source>Line of the file.</source>
        <translation>Zeile der Datei.</translation>
    </message>
    <message>
        <source>Line of {}</source>
        <translation>Abstammung von {}</translation>
    </message>
    <message>
        <source>Line {} has the day first and line {} the month, so this may be {} or {}.</source>
        <translation>Zeile {} nennt zuerst den Tag und Zeile {} zuerst den Monat, dies kann also {} oder {} sein.</translation>
    </message>
    <message>
        <source>Lines of the file</source>
        <translation>Zeilen der Datei</translation>
    </message>
    <message>
        <source>Longer than most</source>
        <translation>Länger als die meisten</translation>
    </message>
    <message>
        <source>Look for scores that are far out of the way.</source>
        <translation>Nach Noten suchen, die weit aus der Reihe fallen.</translation>
    </message>
    <message>
        <source>Look whether it has flowers; correct the parent or the season if it cannot be.</source>
        <translation>Nachsehen, ob er Blüten hat; den Elter oder die Saison berichtigen, wenn es nicht sein kann.</translation>
    </message>
    <message>
        <source>Make a sheet with note-template and fill it in.</source>
        <translation>Mit note-template ein Blatt anlegen und ausfüllen.</translation>
    </message>
    <message>
        <source>Make the names different, with the number behind perhaps.</source>
        <translation>Die Namen unterscheiden, etwa mit der Nummer dahinter.</translation>
    </message>
    <message>
        <source>Makes a sheet to be filled in outdoors or at the bench, a note a line, with the lines that are likely: trees in the order of the walk, tags whose fruit is awaited, lots with seed left. A second file explains its columns; note-import takes the filled sheet in.</source>
        <translation>Legt ein Blatt an, das draußen oder am Tisch auszufüllen ist, je Notiz eine Zeile, mit den Zeilen, die wahrscheinlich gebraucht werden: Bäume in der Folge des Rundgangs, Etiketten, deren Früchte erwartet werden, Partien mit Restbestand an Samen. Eine zweite Datei erklärt die Spalten; note-import liest das ausgefüllte Blatt ein.</translation>
    </message>
    <message>
        <source>May fruit</source>
        <translation>Kann Früchte tragen</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>Mean kinship</source>
        <translation>Mittlere Verwandtschaft</translation>
    </message>
    <message>
        <source>Mean of its known kinships with the others of this list, sports left out: the lower, the fresher its blood.</source>
        <translation>Mittel der bekannten Verwandtschaften mit den anderen dieser Liste, ohne Sporte: je niedriger, desto frischer das Blut.</translation>
    </message>
    <message>
        <source>Mean of that grandparent.</source>
        <translation>Mittel dieses Großelters.</translation>
    </message>
    <message>
        <source>Mean of the pollen parent; of a blend that of its scored members by their shares.</source>
        <translation>Mittel des Pollenelters; bei einer Pollenmischung das ihrer benoteten Bestandteile nach Anteilen.</translation>
    </message>
    <message>
        <source>Mean of the seed parent.</source>
        <translation>Mittel des Samenelters.</translation>
    </message>
    <message>
        <source>Mean over its trees, each tree&apos;s scores taken together first; in the trait&apos;s own unit.</source>
        <translation>Mittel über ihre Bäume, wobei die Noten jedes Baums zuerst zusammengefasst werden; in der Einheit des Merkmals.</translation>
    </message>
    <message>
        <source>Mend it in the spreadsheet, or type the value.</source>
        <translation>In der Tabellenkalkulation berichtigen oder den Wert eintippen.</translation>
    </message>
    <message>
        <source>Mind</source>
        <translation>Beachten</translation>
    </message>
    <message>
        <source>Most</source>
        <translation>Größter Wert</translation>
    </message>
    <message>
        <source>Most kinship</source>
        <translation>Höchste Verwandtschaft</translation>
    </message>
    <message>
        <source>Name accessions as they stand in the book.</source>
        <translation>Akzessionen so nennen, wie sie im Buch stehen.</translation>
    </message>
    <message>
        <source>Name at least two accessions.</source>
        <translation>Mindestens zwei Akzessionen nennen.</translation>
    </message>
    <message>
        <source>Name fewer.</source>
        <translation>Weniger nennen.</translation>
    </message>
    <message>
        <source>Name its accession in the book.</source>
        <translation>Die Akzession im Buch angeben.</translation>
    </message>
    <message>
        <source>Name one that was scored, or whose relatives were.</source>
        <translation>Eine nennen, die selbst benotet ist oder deren Verwandte es sind.</translation>
    </message>
    <message>
        <source>Name the accession that it came from, or clear the field.</source>
        <translation>Die Akzession nennen, aus der sie hervorging, oder das Feld leeren.</translation>
    </message>
    <message>
        <source>Names of accessions or blends, or labels of trees, with commas between; the parents of the season&apos;s crosses where left out.</source>
        <translation>Namen von Akzessionen oder Pollenmischungen oder Bezeichnungen von Bäumen, durch Kommas getrennt; ohne Angabe die Eltern der Kreuzungen der Saison.</translation>
    </message>
    <message>
        <source>Needed</source>
        <translation>Nötig</translation>
    </message>
    <message>
        <source>Neither it nor its parents have alleles on record.</source>
        <translation>Weder sie noch ihre Eltern haben eingetragene Allele.</translation>
    </message>
    <message>
        <source>Neither it nor its parents or grandparents were scored.</source>
        <translation>Weder sie noch ihre Eltern oder Großeltern sind benotet.</translation>
    </message>
    <message>
        <source>Neither the book nor the file has this parent of {}: it is left open.</source>
        <translation>Weder das Buch noch die Datei hat diesen Elter von {}: Er bleibt offen.</translation>
    </message>
    <message>
        <source>Never with acids or ammonia; rinse the seed well.</source>
        <translation>Nie mit Säuren oder Ammoniak; den Samen gut spülen.</translation>
    </message>
    <message>
        <source>No parent is recorded.</source>
        <translation>Es ist kein Elter verzeichnet.</translation>
    </message>
    <message>
        <source>No parent of either is recorded.</source>
        <translation>Von keiner der beiden ist ein Elter verzeichnet.</translation>
    </message>
    <message>
        <source>No parent of its parents is recorded: taken as unrelated.</source>
        <translation>Zu ihren Eltern ist kein Elter verzeichnet: Sie gelten als nicht verwandt.</translation>
    </message>
    <message>
        <source>No parent of {} is recorded.</source>
        <translation>Von {} ist kein Elter verzeichnet.</translation>
    </message>
    <message>
        <source>No recorded parents are contradicted by alleles.</source>
        <translation>Keine verzeichneten Eltern widersprechen den Allelen.</translation>
    </message>
    <message>
        <source>No trait was wished for, so the parents&apos; blood, alleles and bloom alone decide.</source>
        <translation>Es ist kein Merkmal gewünscht; so entscheiden allein Blut, Allele und Blüte der Eltern.</translation>
    </message>
    <message>
        <source>No tree was scored for this trait.</source>
        <translation>Kein Baum wurde auf dieses Merkmal bewertet.</translation>
    </message>
    <message>
        <source>Nobody has scored this trait.</source>
        <translation>Dieses Merkmal hat niemand bewertet.</translation>
    </message>
    <message>
        <source>None of {} flowers set.</source>
        <translation>Keine von {} Blüten hat angesetzt.</translation>
    </message>
    <message>
        <source>Not for certain better than the next: the means differ by less than their doubt.</source>
        <translation>Nicht sicher besser als die nächste: Die Mittel unterscheiden sich um weniger als ihre Unsicherheit.</translation>
    </message>
    <message>
        <source>Not reckoned: {} comes of one that is not diploid.</source>
        <translation>Nicht berechnet: {} stammt von einer nicht diploiden Akzession ab.</translation>
    </message>
    <message>
        <source>Not reckoned: {} is not diploid.</source>
        <translation>Nicht berechnet: {} ist nicht diploid.</translation>
    </message>
    <message>
        <source>Notes of this kind have no such column.</source>
        <translation>Notizen dieser Art haben diese Spalte nicht.</translation>
    </message>
    <message>
        <source>Nothing fits: by the alleles of its parents the style turns all this pollen away.</source>
        <translation>Nichts passt: Nach den Allelen ihrer Eltern weist der Griffel diesen Pollen ganz ab.</translation>
    </message>
    <message>
        <source>Nothing is overwritten; change it in the book if the file is right.</source>
        <translation>Nichts wird überschrieben; im Buch ändern, wenn die Datei recht hat.</translation>
    </message>
    <message>
        <source>Nothing is to be done at the trees.</source>
        <translation>An den Bäumen ist nichts zu tun.</translation>
    </message>
    <message>
        <source>Nothing is to be done.</source>
        <translation>Es ist nichts zu tun.</translation>
    </message>
    <message>
        <source>Nothing says in what the seedlings should be better.</source>
        <translation>Nichts sagt, worin die Sämlinge besser sein sollen.</translation>
    </message>
    <message>
        <source>Nothing was scored of any parent.</source>
        <translation>Von keinem Elter wurde etwas bewertet.</translation>
    </message>
    <message>
        <source>Nothing was written; write yes would add accessions: {}.</source>
        <translation>Es wurde nichts geschrieben; mit write yes kämen Akzessionen dazu: {}.</translation>
    </message>
    <message>
        <source>Nothing was written; write yes would write: {}.</source>
        <translation>Es wurde nichts geschrieben; mit write yes würden geschrieben: {}.</translation>
    </message>
    <message>
        <source>Of a blend, those of all its members.</source>
        <translation>Bei einer Pollenmischung die aller Bestandteile.</translation>
    </message>
    <message>
        <source>Of a compatible cross, where {} set on the mean, chance would do that less than once in a million times.</source>
        <translation>Bei einer verträglichen Kreuzung, bei der im Mittel {} ansetzen, käme das durch Zufall seltener als einmal in einer Million Fällen vor.</translation>
    </message>
    <message>
        <source>Of a compatible cross, where {} set on the mean, chance would do that once in {:.0f} times.</source>
        <translation>Bei einer verträglichen Kreuzung, bei der im Mittel {} ansetzen, käme das durch Zufall einmal in {:.0f} Fällen vor.</translation>
    </message>
    <message>
        <source>Of how many days the work is wanted, from the as-of day on.</source>
        <translation>Für wie viele Tage, vom Stichtag an, die Arbeit gewünscht ist.</translation>
    </message>
    <message>
        <source>Of the family that were planted.</source>
        <translation>Gepflanzte Sämlinge der Familie.</translation>
    </message>
    <message>
        <source>Of the parents; their seedlings&apos; inbreeding.</source>
        <translation>Der Eltern; zugleich die Inzucht ihrer Sämlinge.</translation>
    </message>
    <message>
        <source>Of the pollen parent</source>
        <translation>Des Pollenelters</translation>
    </message>
    <message>
        <source>Of the seed parent</source>
        <translation>Des Samenelters</translation>
    </message>
    <message>
        <source>Of the trees&apos; means.</source>
        <translation>Der Mittel der Bäume.</translation>
    </message>
    <message>
        <source>Of the walk; unknown for fruit that must hang on.</source>
        <translation>Im Rundgang; leer bei Früchten, die noch hängen müssen.</translation>
    </message>
    <message>
        <source>Of them with a score of this trait.</source>
        <translation>Von ihnen mit einer Bewertung dieses Merkmals.</translation>
    </message>
    <message>
        <source>Of {} more nothing tells the year of sowing.</source>
        <translation>Bei {} weiteren sagt nichts das Jahr der Aussaat.</translation>
    </message>
    <message>
        <source>Of {} pairs of {} parents {} are suggested.</source>
        <translation>Von {} Paaren aus {} Eltern sind {} vorgeschlagen.</translation>
    </message>
    <message>
        <source>Of {} seedlings at least {} should surpass {} with {:.0f} % confidence: the mean of the parents is {:.2f}, {} has {:.2f}.</source>
        <translation>Von {} Sämlingen sollten mindestens {} besser sein als {}, mit {:.0f} % Sicherheit: Das Mittel der Eltern ist {:.2f}, {} hat {:.2f}.</translation>
    </message>
    <message>
        <source>On a dwarfing stock about {} years sooner.</source>
        <translation>Auf schwach wachsender Unterlage etwa {} Jahre früher.</translation>
    </message>
    <message>
        <source>On both sides</source>
        <translation>Auf beiden Seiten</translation>
    </message>
    <message>
        <source>On the bench</source>
        <translation>Am Arbeitstisch</translation>
    </message>
    <message>
        <source>One allele of each parent, of the pollen only such as the style lets through.</source>
        <translation>Von jedem Elter ein Allel, vom Pollen nur eines, das der Griffel durchlässt.</translation>
    </message>
    <message>
        <source>One allele of each parent; the blend is one pool of pollen.</source>
        <translation>Von jedem Elter ein Allel; die Pollenmischung gilt als ein gemeinsamer Vorrat an Pollen.</translation>
    </message>
    <message>
        <source>One note a line. Lines that nobody came to stay as they are: they are passed over.</source>
        <translation>Eine Notiz je Zeile. Zeilen, zu denen niemand kam, bleiben, wie sie sind: Sie werden übergangen.</translation>
    </message>
    <message>
        <source>One of its parents is not known.</source>
        <translation>Einer ihrer Eltern ist nicht bekannt.</translation>
    </message>
    <message>
        <source>One parent</source>
        <translation>Ein Elter</translation>
    </message>
    <message>
        <source>One parent is not recorded: taken as unrelated to the other.</source>
        <translation>Ein Elter ist nicht verzeichnet: Er gilt als nicht verwandt mit dem anderen.</translation>
    </message>
    <message>
        <source>Only these traits, with commas between; all where none is named.</source>
        <translation>Nur diese Merkmale, durch Kommas getrennt; ohne Angabe alle.</translation>
    </message>
    <message>
        <source>Only traits</source>
        <translation>Nur Merkmale</translation>
    </message>
    <message>
        <source>Only whole ones are counted; correct it.</source>
        <translation>Gezählt werden nur ganze; berichtigen.</translation>
    </message>
    <message>
        <source>Open it in the spreadsheet and save the sheet as CSV in UTF-8.</source>
        <translation>Die Datei in der Tabellenkalkulation öffnen und das Blatt als CSV in UTF-8 speichern.</translation>
    </message>
    <message>
        <source>Other parent</source>
        <translation>Anderer Elter</translation>
    </message>
    <message>
        <source>Over the trees, each by its own mean.</source>
        <translation>Über die Bäume, jeder mit seinem eigenen Mittel.</translation>
    </message>
    <message>
        <source>Own mean</source>
        <translation>Eigenes Mittel</translation>
    </message>
    <message>
        <source>P10 of the tree&apos;s full bloom.</source>
        <translation>P10 der Vollblüte des Baums.</translation>
    </message>
    <message>
        <source>P90 of the tree&apos;s full bloom.</source>
        <translation>P90 der Vollblüte des Baums.</translation>
    </message>
    <message>
        <source>Parents and grandparents in whom it was scored, and parents in whom it was not.</source>
        <translation>Eltern und Großeltern, bei denen es bewertet wurde, und Eltern, bei denen nicht.</translation>
    </message>
    <message>
        <source>Parents that the alleles contradict</source>
        <translation>Eltern, denen die Allele widersprechen</translation>
    </message>
    <message>
        <source>Passport file</source>
        <translation>Datei mit Passdaten</translation>
    </message>
    <message>
        <source>Passports</source>
        <translation>Passdaten</translation>
    </message>
    <message>
        <source>Passports of accessions</source>
        <translation>Passdaten der Akzessionen</translation>
    </message>
    <message>
        <source>Pear: {} years to the first fruit as a rule, {} to {} are known.</source>
        <translation>Birne: in der Regel {} Jahre bis zur ersten Frucht, bekannt sind {} bis {}.</translation>
    </message>
    <message>
        <source>Pick from</source>
        <translation>Pflücken ab</translation>
    </message>
    <message>
        <source>Pick now, late, or from when on.</source>
        <translation>Jetzt pflücken, zu spät, oder ab wann.</translation>
    </message>
    <message>
        <source>Pick the fruit of cross {} at {}</source>
        <translation>Die Früchte der Kreuzung {} an {} pflücken</translation>
    </message>
    <message>
        <source>Pick to</source>
        <translation>Pflücken bis</translation>
    </message>
    <message>
        <source>Picking list</source>
        <translation>Pflückliste</translation>
    </message>
    <message>
        <source>Plain mean of them.</source>
        <translation>Ihr einfaches Mittel.</translation>
    </message>
    <message>
        <source>Planting sheet, block {}</source>
        <translation>Pflanzblatt, Quartier {}</translation>
    </message>
    <message>
        <source>Pollen by</source>
        <translation>Pollen bis</translation>
    </message>
    <message>
        <source>Pollen let through</source>
        <translation>Durchgelassener Pollen</translation>
    </message>
    <message>
        <source>Pollen parent&apos;s mean</source>
        <translation>Mittel des Pollenelters</translation>
    </message>
    <message>
        <source>Pollen parent&apos;s pollen parent</source>
        <translation>Pollenelter des Pollenelters</translation>
    </message>
    <message>
        <source>Pollen parent&apos;s seed parent</source>
        <translation>Samenelter des Pollenelters</translation>
    </message>
    <message>
        <source>Pollen, flowers, fruit or seed.</source>
        <translation>Pollen, Blüten, Früchte oder Samen.</translation>
    </message>
    <message>
        <source>Positions in the order of planting</source>
        <translation>Plätze in der Folge des Pflanzens</translation>
    </message>
    <message>
        <source>Purdy notation</source>
        <translation>Schreibweise nach Purdy</translation>
    </message>
    <message>
        <source>Put quotes around a text that holds the separator, and do not part decimals with it.</source>
        <translation>Text, der das Trennzeichen enthält, in Anführungszeichen setzen und Dezimalstellen nicht damit abtrennen.</translation>
    </message>
    <message>
        <source>Quote fields that hold the delimiter.</source>
        <translation>Felder, die das Trennzeichen enthalten, in Anführungszeichen setzen.</translation>
    </message>
    <message>
        <source>Ranks the crosses that can be made of the parents: what their seedlings should be like and how far apart, how many to grow to see the wanted ones, how related the parents are, whether pollen passes, whether their blooms meet this spring and how the pollen would be had. Each number says what it rests on; what is left out says why. Nothing is written.</source>
        <translation>Reiht die Kreuzungen, die sich aus den Eltern machen lassen: wie ihre Sämlinge ausfallen sollten und wie weit sie streuen, wie viele zu ziehen sind, um die gewünschten zu sehen, wie verwandt die Eltern sind, ob der Pollen durchkommt, ob ihre Blüten in diesem Frühjahr zusammentreffen und wie der Pollen zu bekommen wäre. Zu jeder Zahl steht, worauf sie beruht; zu allem, was weggelassen ist, warum. Geschrieben wird nichts.</translation>
    </message>
    <message>
        <source>Reads accessions from a CSV file of multi-crop passport descriptors (FAO and Bioversity, V2.1) and shows what would become of each line; writes them when told so, all at once or not at all. Parents are taken from ANCEST where they are two known names. What the book has no place for is kept in the accession&apos;s note. What the book has is never changed: differences are told.</source>
        <translation>Liest Akzessionen aus einer CSV-Datei mit Multi-Crop-Passdatendeskriptoren (FAO und Bioversity, V2.1) und zeigt, was aus jeder Zeile würde; schreibt sie auf Verlangen, alle zugleich oder gar nicht. Eltern werden aus ANCEST übernommen, wenn dort zwei bekannte Namen stehen. Wofür das Buch keinen Platz hat, kommt in die Bemerkung der Akzession. Was im Buch steht, wird nie geändert: Unterschiede werden genannt.</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Reckoning the breeding values</source>
        <translation>Die Zuchtwerte werden berechnet</translation>
    </message>
    <message>
        <source>Reckoning the kinship</source>
        <translation>Die Verwandtschaft wird berechnet</translation>
    </message>
    <message>
        <source>Relationship</source>
        <translation>Verwandtschaftsgrad</translation>
    </message>
    <message>
        <source>Reliability</source>
        <translation>Sicherheit</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>Remove it, or rename it; the columns are: {}.</source>
        <translation>Entfernen oder umbenennen; die Spalten sind: {}.</translation>
    </message>
    <message>
        <source>Remove one of them, if it was written twice by mistake.</source>
        <translation>Eine davon entfernen, wenn sie versehentlich doppelt geschrieben wurde.</translation>
    </message>
    <message>
        <source>Remove one of them.</source>
        <translation>Eine davon entfernen.</translation>
    </message>
    <message>
        <source>Remove or rename one of them.</source>
        <translation>Eine davon entfernen oder umbenennen.</translation>
    </message>
    <message>
        <source>Rename the column if it is one.</source>
        <translation>Die Spalte umbenennen, wenn sie ein Deskriptor ist.</translation>
    </message>
    <message>
        <source>Repeatability</source>
        <translation>Wiederholbarkeit</translation>
    </message>
    <message>
        <source>S-allele match</source>
        <translation>Verträglichkeit nach S-Allelen</translation>
    </message>
    <message>
        <source>S-alleles and parentage</source>
        <translation>S-Allele und Elternschaft</translation>
    </message>
    <message>
        <source>S-alleles of the accessions</source>
        <translation>S-Allele der Akzessionen</translation>
    </message>
    <message>
        <source>SAMPSTAT: the code of its biological status.</source>
        <translation>SAMPSTAT: der Code ihres biologischen Status.</translation>
    </message>
    <message>
        <source>SPECIES.</source>
        <translation>SPECIES.</translation>
    </message>
    <message>
        <source>Save the sheet as CSV in UTF-8. Then &quot;note-import&quot; with {} shows what would be written.</source>
        <translation>Das Blatt als CSV in UTF-8 speichern. Dann zeigt &quot;note-import&quot; mit {}, was geschrieben würde.</translation>
    </message>
    <message>
        <source>Say otherwise with day-format, if that is wrong.</source>
        <translation>Mit day-format anders angeben, wenn das falsch ist.</translation>
    </message>
    <message>
        <source>Say with day-format which it is, or write it as in 2026-04-12.</source>
        <translation>Mit day-format angeben, was gilt, oder wie in 2026-04-12 schreiben.</translation>
    </message>
    <message>
        <source>Say with kind which it is.</source>
        <translation>Mit kind angeben, welche es ist.</translation>
    </message>
    <message>
        <source>Score more trees, or look at the scores themselves.</source>
        <translation>Mehr Bäume bewerten oder die Bewertungen selbst ansehen.</translation>
    </message>
    <message>
        <source>Scores</source>
        <translation>Bewertungen</translation>
    </message>
    <message>
        <source>Scores of its own trees.</source>
        <translation>Bewertungen ihrer eigenen Bäume.</translation>
    </message>
    <message>
        <source>See book-check, and correct the wrong one of these parents.</source>
        <translation>In book-check nachsehen und den falschen dieser Eltern berichtigen.</translation>
    </message>
    <message>
        <source>Seed of cross {} sprouted in {}.</source>
        <translation>Samen der Kreuzung {} keimten im Jahr {}.</translation>
    </message>
    <message>
        <source>Seed parent&apos;s mean</source>
        <translation>Mittel des Samenelters</translation>
    </message>
    <message>
        <source>Seed parent&apos;s pollen parent</source>
        <translation>Pollenelter des Samenelters</translation>
    </message>
    <message>
        <source>Seed parent&apos;s seed parent</source>
        <translation>Samenelter des Samenelters</translation>
    </message>
    <message>
        <source>Seed ripe about {} days later, the rule for all: the book has no days of its own for this seed parent.</source>
        <translation>Samen etwa {} Tage später reif, nach der Regel für alle: Das Buch hat für diesen Samenelter keine eigenen Tage.</translation>
    </message>
    <message>
        <source>Seed ripe about {} days later.</source>
        <translation>Samen etwa {} Tage später reif.</translation>
    </message>
    <message>
        <source>Seedlings</source>
        <translation>Sämlinge</translation>
    </message>
    <message>
        <source>Seedlings above the bar.</source>
        <translation>Sämlinge über der Schwelle.</translation>
    </message>
    <message>
        <source>Seedlings to grow</source>
        <translation>Zu ziehende Sämlinge</translation>
    </message>
    <message>
        <source>Seedlings too</source>
        <translation>Auch Sämlinge</translation>
    </message>
    <message>
        <source>Seedlings&apos; mean</source>
        <translation>Mittel der Sämlinge</translation>
    </message>
    <message>
        <source>Seedlings&apos; spread</source>
        <translation>Streuung der Sämlinge</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Gesehen</translation>
    </message>
    <message>
        <source>Seen in</source>
        <translation>Gesehen bei</translation>
    </message>
    <message>
        <source>Set up in the order of planting, from the upper left corner on.</source>
        <translation>In der Folge des Pflanzens aufgestellt, ab der linken oberen Ecke.</translation>
    </message>
    <message>
        <source>Share of the pollen, 0 to 1; 0 is none expected, not none possible: styles leak.</source>
        <translation>Anteil des Pollens, 0 bis 1; 0 heißt: keiner zu erwarten, nicht: keiner möglich. Griffel sind nicht dicht.</translation>
    </message>
    <message>
        <source>Shares of ancestors</source>
        <translation>Anteile der Vorfahren</translation>
    </message>
    <message>
        <source>Sheet for notes</source>
        <translation>Blatt für Notizen</translation>
    </message>
    <message>
        <source>Should fruit this year</source>
        <translation>Sollte dieses Jahr fruchten</translation>
    </message>
    <message>
        <source>Shown on both sides: by {} and by {}.</source>
        <translation>Auf beiden Seiten gezeigt: von {} und von {}.</translation>
    </message>
    <message>
        <source>So many crosses are suggested at the most.</source>
        <translation>Höchstens so viele Kreuzungen werden vorgeschlagen.</translation>
    </message>
    <message>
        <source>So many of the wanted seedlings are to be seen at least.</source>
        <translation>Mindestens so viele der gewünschten Sämlinge sollen zu sehen sein.</translation>
    </message>
    <message>
        <source>Sown</source>
        <translation>Gesät</translation>
    </message>
    <message>
        <source>Sport of</source>
        <translation>Sport von</translation>
    </message>
    <message>
        <source>Spread</source>
        <translation>Streuung</translation>
    </message>
    <message>
        <source>Standard deviation between them in what they hand on.</source>
        <translation>Standardabweichung zwischen ihnen in dem, was sie weitergeben.</translation>
    </message>
    <message>
        <source>Standard deviation between trees; of two or more.</source>
        <translation>Standardabweichung zwischen den Bäumen; ab zwei Bäumen.</translation>
    </message>
    <message>
        <source>Standard error of that mean.</source>
        <translation>Standardfehler dieses Mittels.</translation>
    </message>
    <message>
        <source>Suggested crosses</source>
        <translation>Vorgeschlagene Kreuzungen</translation>
    </message>
    <message>
        <source>Tag {}.</source>
        <translation>Etikett {}.</translation>
    </message>
    <message>
        <source>Tagged branches with fruit: those to pick in walking order, then the others by day.</source>
        <translation>Etikettierte Äste mit Früchten: zuerst die zu pflückenden in der Folge des Rundgangs, dann die übrigen nach Tagen.</translation>
    </message>
    <message>
        <source>Tags</source>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>Tags: {}.</source>
        <translation>Etiketten: {}.</translation>
    </message>
    <message>
        <source>Take care: {}</source>
        <translation>Vorsicht: {}</translation>
    </message>
    <message>
        <source>Take fewer days at a time.</source>
        <translation>Weniger Tage auf einmal nehmen.</translation>
    </message>
    <message>
        <source>Take in passports</source>
        <translation>Passdaten übernehmen</translation>
    </message>
    <message>
        <source>Take the first line of a sheet made with note-template, and say with kind what the lines are.</source>
        <translation>Die erste Zeile eines Blatts von note-template nehmen und mit kind angeben, was die Zeilen sind.</translation>
    </message>
    <message>
        <source>Taken together with {}, whose sport it is.</source>
        <translation>Zusammengefasst mit {}, deren Sport sie ist.</translation>
    </message>
    <message>
        <source>Takes a sheet that was filled in outdoors into the book, a note a line. Every line is judged against the book with the lines before it, and shown with what would become of it; nothing is written until you say so. Then all lines are written at once, or none where one is wrong, and one note-undo takes them all back. A sheet read again adds nothing twice.</source>
        <translation>Nimmt ein draußen ausgefülltes Blatt ins Buch auf, eine Notiz je Zeile. Jede Zeile wird am Buch samt den Zeilen davor geprüft und mit dem gezeigt, was aus ihr würde; geschrieben wird erst auf Verlangen. Dann werden alle Zeilen zugleich geschrieben, oder keine, wenn eine falsch ist, und ein note-undo nimmt sie alle zurück. Ein Blatt, das noch einmal gelesen wird, fügt nichts doppelt hinzu.</translation>
    </message>
    <message>
        <source>Takes back the last entry that was noted in the book, or the one that is named, if nobody changed it since and nothing refers to it. The rows of one import go together. Run again, it takes back the one before.</source>
        <translation>Nimmt den zuletzt ins Buch notierten Eintrag zurück, oder den genannten, sofern ihn seither niemand geändert hat und nichts auf ihn verweist. Die Zeilen eines Imports gehören zusammen. Erneut ausgeführt, nimmt es den davor zurück.</translation>
    </message>
    <message>
        <source>Tells of a scored trait what each accession is expected to hand on, from its own scores and those of all its relatives, with the seasons&apos; differences taken out. Unknown parents count as founders, a blend as a mixture of its members; triploids and what comes of them are left out. Where there are too few scores it says so.</source>
        <translation>Sagt zu einem bewerteten Merkmal, was jede Akzession voraussichtlich weitergibt, aus ihren eigenen Bewertungen und denen aller Verwandten, bereinigt um die Unterschiede der Saisons. Unbekannte Eltern gelten als Stammeltern, eine Pollenmischung als Gemisch ihrer Bestandteile; Triploide und was von ihnen abstammt sind ausgelassen. Wo es zu wenige Bewertungen gibt, wird das gesagt.</translation>
    </message>
    <message>
        <source>Tells of every two accessions how much blood they share by their recorded parents, what they are to each other, and how inbred each is itself. Unknown parents count as unrelated, a blend as a mixture of its members, a sport as its original; triploids and what comes of them are not reckoned.</source>
        <translation>Sagt zu je zwei Akzessionen, wie viel Blut sie nach ihren verzeichneten Eltern gemeinsam haben, was sie einander sind und wie ingezüchtet jede selbst ist. Unbekannte Eltern gelten als nicht verwandt, eine Pollenmischung als Gemisch ihrer Bestandteile, ein Sport als sein Original; Triploide und was von ihnen abstammt werden nicht berechnet.</translation>
    </message>
    <message>
        <source>Tells of every two accessions whether one&apos;s style lets the other&apos;s pollen through, what S-alleles those may have that nobody has determined, and which recorded parents the alleles contradict. What the alleles tell and what the counts of worked crosses tell stand apart.</source>
        <translation>Sagt zu je zwei Akzessionen, ob der Griffel der einen den Pollen der anderen durchlässt, welche S-Allele jene haben können, bei denen sie niemand bestimmt hat, und welchen verzeichneten Eltern die Allele widersprechen. Was die Allele sagen und was die Zählungen bestäubter Kreuzungen sagen, steht getrennt.</translation>
    </message>
    <message>
        <source>Tells which scored trait was seen in which parent and grandparent of an accession, or of all that are parents: means over trees, with how many trees and years. Blends are taken by the shares of their scored members, and what is unknown or was not scored is said.</source>
        <translation>Sagt, welches bewertete Merkmal bei welchem Elter und Großelter einer Akzession gesehen wurde, oder bei denen aller, die Eltern sind: Mittel über die Bäume, mit der Zahl der Bäume und Jahre. Pollenmischungen zählen nach den Anteilen ihrer bewerteten Bestandteile, und was unbekannt ist oder nicht bewertet wurde, wird genannt.</translation>
    </message>
    <message>
        <source>That is against the alleles: look at both records, or foreign pollen came in.</source>
        <translation>Das widerspricht den Allelen: Beide Einträge ansehen, oder fremder Pollen kam hinein.</translation>
    </message>
    <message>
        <source>That it works this spring.</source>
        <translation>Dass es in diesem Frühjahr gelingt.</translation>
    </message>
    <message>
        <source>The 1 flower did not set.</source>
        <translation>Die 1 Blüte hat nicht angesetzt.</translation>
    </message>
    <message>
        <source>The accession has no name: it is left out.</source>
        <translation>Die Akzession hat keinen Namen: Sie wird ausgelassen.</translation>
    </message>
    <message>
        <source>The accession is its own ancestor, or descends from one that is.</source>
        <translation>Die Akzession ist ihr eigener Vorfahr oder stammt von einer ab, die es ist.</translation>
    </message>
    <message>
        <source>The accession is recorded as a sport of itself.</source>
        <translation>Die Akzession ist als Sport ihrer selbst verzeichnet.</translation>
    </message>
    <message>
        <source>The accession that the wanted seedlings are to surpass; the best of the parents where none is named.</source>
        <translation>Die Akzession, die die gewünschten Sämlinge übertreffen sollen; ohne Angabe die beste unter den Eltern.</translation>
    </message>
    <message>
        <source>The accession whose flowers would be worked.</source>
        <translation>Die Akzession, deren Blüten bestäubt würden.</translation>
    </message>
    <message>
        <source>The accession whose pollen it would be.</source>
        <translation>Die Akzession, von der der Pollen käme.</translation>
    </message>
    <message>
        <source>The accessions of the file, with their main descriptors.</source>
        <translation>Die Akzessionen der Datei mit ihren wichtigsten Deskriptoren.</translation>
    </message>
    <message>
        <source>The alleles do not explain it: frost and dead pollen do that too.</source>
        <translation>Die Allele erklären es nicht: Frost und toter Pollen tun das auch.</translation>
    </message>
    <message>
        <source>The alleles of one of them are not known.</source>
        <translation>Die Allele der einen sind nicht bekannt.</translation>
    </message>
    <message>
        <source>The ancestor; unknown for parents that nobody noted.</source>
        <translation>Der Vorfahr; unbekannt für Eltern, die niemand notiert hat.</translation>
    </message>
    <message>
        <source>The better way round by bloom and pollen.</source>
        <translation>In der nach Blüte und Pollen besseren Richtung.</translation>
    </message>
    <message>
        <source>The book has it as {}.</source>
        <translation>Im Buch steht es als {}.</translation>
    </message>
    <message>
        <source>The book has its name only.</source>
        <translation>Das Buch hat nur ihren Namen.</translation>
    </message>
    <message>
        <source>The book has no accession and no tree of this name.</source>
        <translation>Das Buch hat keine Akzession und keinen Baum dieses Namens.</translation>
    </message>
    <message>
        <source>The book has no accession, blend or tree of this name.</source>
        <translation>Das Buch hat keine Akzession, keine Pollenmischung und keinen Baum dieses Namens.</translation>
    </message>
    <message>
        <source>The book has no accessions yet.</source>
        <translation>Das Buch hat noch keine Akzessionen.</translation>
    </message>
    <message>
        <source>The book has no place for {}: it is kept in the note of {}.</source>
        <translation>Das Buch hat keinen Platz für {}: Es kommt in die Bemerkung von {}.</translation>
    </message>
    <message>
        <source>The book has no scores yet; note them with note-score.</source>
        <translation>Das Buch hat noch keine Bewertungen; mit note-score notieren.</translation>
    </message>
    <message>
        <source>The book has scores of: {}.</source>
        <translation>Das Buch hat Bewertungen von: {}.</translation>
    </message>
    <message>
        <source>The book has {} with another value: {}.</source>
        <translation>Das Buch hat {} mit einem anderen Wert: {}.</translation>
    </message>
    <message>
        <source>The child.</source>
        <translation>Das Kind.</translation>
    </message>
    <message>
        <source>The closest are {} and {}, {:.3f}.</source>
        <translation>Am nächsten sind {} und {}, {:.3f}.</translation>
    </message>
    <message>
        <source>The column {} is missing.</source>
        <translation>Die Spalte {} fehlt.</translation>
    </message>
    <message>
        <source>The columns fit several kinds of notes.</source>
        <translation>Die Spalten passen zu mehreren Arten von Notizen.</translation>
    </message>
    <message>
        <source>The counts that were weighed.</source>
        <translation>Die berücksichtigten Zählungen.</translation>
    </message>
    <message>
        <source>The cross is not known; it was planted in {}.</source>
        <translation>Die Kreuzung ist nicht bekannt; gepflanzt im Jahr {}.</translation>
    </message>
    <message>
        <source>The cross is of {}, its seed was sown the year after.</source>
        <translation>Die Kreuzung ist von {}, ihr Samen wurde im Jahr darauf gesät.</translation>
    </message>
    <message>
        <source>The day after the full need is met.</source>
        <translation>Der Tag, nachdem der volle Bedarf gedeckt ist.</translation>
    </message>
    <message>
        <source>The day after the least need is met.</source>
        <translation>Der Tag, nachdem der Mindestbedarf gedeckt ist.</translation>
    </message>
    <message>
        <source>The day of lines that have none; without it they are wrong.</source>
        <translation>Der Tag der Zeilen, die keinen haben; ohne ihn sind sie falsch.</translation>
    </message>
    <message>
        <source>The days are read with the day first, as line {} shows.</source>
        <translation>Die Tage werden mit dem Tag zuerst gelesen, wie Zeile {} zeigt.</translation>
    </message>
    <message>
        <source>The days are read with the month first, as line {} shows.</source>
        <translation>Die Tage werden mit dem Monat zuerst gelesen, wie Zeile {} zeigt.</translation>
    </message>
    <message>
        <source>The descendant&apos;s pollen parent or blend.</source>
        <translation>Pollenelter oder Pollenmischung des Nachkommen.</translation>
    </message>
    <message>
        <source>The descendant&apos;s seed parent.</source>
        <translation>Samenelter des Nachkommen.</translation>
    </message>
    <message>
        <source>The descriptor has two columns.</source>
        <translation>Der Deskriptor hat zwei Spalten.</translation>
    </message>
    <message>
        <source>The doses of {} cannot be read.</source>
        <translation>Die Dosen von {} sind nicht lesbar.</translation>
    </message>
    <message>
        <source>The equations cannot be solved.</source>
        <translation>Die Gleichungen sind nicht lösbar.</translation>
    </message>
    <message>
        <source>The file is empty.</source>
        <translation>Die Datei ist leer.</translation>
    </message>
    <message>
        <source>The first line does not name the columns of notes.</source>
        <translation>Die erste Zeile nennt nicht die Spalten von Notizen.</translation>
    </message>
    <message>
        <source>The first {} accessions of the book</source>
        <translation>Die ersten {} Akzessionen des Buchs</translation>
    </message>
    <message>
        <source>The heading in the sheet.</source>
        <translation>Die Überschrift im Blatt.</translation>
    </message>
    <message>
        <source>The kinship of two parents that is still borne; 0.125 is that of half sibs.</source>
        <translation>Die Verwandtschaft zweier Eltern, die noch hingenommen wird; 0.125 ist die von Halbgeschwistern.</translation>
    </message>
    <message>
        <source>The line has a remark, but nothing to note; it is passed over.</source>
        <translation>Die Zeile hat eine Bemerkung, aber nichts zu notieren; sie wird übergangen.</translation>
    </message>
    <message>
        <source>The line has more cells than the header.</source>
        <translation>Die Zeile hat mehr Zellen als die Kopfzeile.</translation>
    </message>
    <message>
        <source>The line has more fields than the header.</source>
        <translation>Die Zeile hat mehr Felder als die Kopfzeile.</translation>
    </message>
    <message>
        <source>The line in the notations of breeders; generations that were not asked for are left out.</source>
        <translation>Die Abstammung in den Schreibweisen der Züchter; nicht verlangte Generationen sind weggelassen.</translation>
    </message>
    <message>
        <source>The line of the file, counted from 1.</source>
        <translation>Die Zeile der Datei, von 1 an gezählt.</translation>
    </message>
    <message>
        <source>The line, seed parent first.</source>
        <translation>Die Abstammung, Samenelter zuerst.</translation>
    </message>
    <message>
        <source>The name of an accession, or the label of a tree.</source>
        <translation>Der Name einer Akzession oder die Bezeichnung eines Baums.</translation>
    </message>
    <message>
        <source>The number is far too large.</source>
        <translation>Die Zahl ist viel zu groß.</translation>
    </message>
    <message>
        <source>The other lines are of about {}.</source>
        <translation>Die anderen Zeilen sind etwa vom {}.</translation>
    </message>
    <message>
        <source>The page holds no more: take larger paper, or draw the line of one of the ancestors.</source>
        <translation>Die Seite fasst nicht mehr: Größeres Papier nehmen oder die Abstammung eines der Vorfahren zeichnen.</translation>
    </message>
    <message>
        <source>The page holds no more: take larger paper; the table of descendants has them all.</source>
        <translation>Die Seite fasst nicht mehr: Größeres Papier nehmen; die Tabelle der Nachkommen hat sie alle.</translation>
    </message>
    <message>
        <source>The parent came from cross {} of {}: the earliest known first fruit is three years after sowing, in {}.</source>
        <translation>Der Elter stammt aus Kreuzung {} von {}: Die früheste bekannte erste Frucht kommt drei Jahre nach der Aussaat, im Jahr {}.</translation>
    </message>
    <message>
        <source>The parent is younger than its child: it came from cross {} of {}, and this cross is of {}.</source>
        <translation>Der Elter ist jünger als sein Kind: Er stammt aus Kreuzung {} von {}, und diese Kreuzung ist von {}.</translation>
    </message>
    <message>
        <source>The parents cannot be seen from this: they are left open.</source>
        <translation>Die Eltern sind daraus nicht zu erkennen: Sie bleiben offen.</translation>
    </message>
    <message>
        <source>The parents of 1 accession are contradicted by alleles.</source>
        <translation>Den Eltern von 1 Akzession widersprechen die Allele.</translation>
    </message>
    <message>
        <source>The parents of the crosses of {}</source>
        <translation>Die Eltern der Kreuzungen von {}</translation>
    </message>
    <message>
        <source>The parents of {} accessions are contradicted by alleles.</source>
        <translation>Den Eltern von {} Akzessionen widersprechen die Allele.</translation>
    </message>
    <message>
        <source>The part of the differences between scores of one season that is handed on to children; a judgement, not an estimate.</source>
        <translation>Der Teil der Unterschiede zwischen den Bewertungen einer Saison, der an die Nachkommen weitergegeben wird; eine Einschätzung, keine Schätzung aus Daten.</translation>
    </message>
    <message>
        <source>The part that comes back in every score of an accession; the heritability and a quarter of what it leaves where not given.</source>
        <translation>Der Teil, der in jeder Bewertung einer Akzession wiederkehrt; ohne Angabe die Erblichkeit und ein Viertel dessen, was sie übrig lässt.</translation>
    </message>
    <message>
        <source>The passport of 1 accession.</source>
        <translation>Die Passdaten von 1 Akzession.</translation>
    </message>
    <message>
        <source>The passports of {} accessions.</source>
        <translation>Die Passdaten von {} Akzessionen.</translation>
    </message>
    <message>
        <source>The point or comma may part thousands or decimals.</source>
        <translation>Der Punkt oder das Komma kann Tausender oder Dezimalstellen trennen.</translation>
    </message>
    <message>
        <source>The pollen or the seed lot.</source>
        <translation>Der Pollen oder die Samenpartie.</translation>
    </message>
    <message>
        <source>The repeatability is lower than the heritability, {}.</source>
        <translation>Die Wiederholbarkeit ist kleiner als die Erblichkeit, {}.</translation>
    </message>
    <message>
        <source>The same genes: one is a sport or clone of the other.</source>
        <translation>Dieselben Gene: Eine ist Sport oder Klon der anderen.</translation>
    </message>
    <message>
        <source>The same once the counts of its crosses are weighed; unknown where none were counted.</source>
        <translation>Dasselbe, nachdem die Zählungen ihrer Kreuzungen gewichtet sind; unbekannt, wo keine gezählt wurden.</translation>
    </message>
    <message>
        <source>The scores of this tree are left out: nobody wrote down which accession it is.</source>
        <translation>Die Bewertungen dieses Baums bleiben unberücksichtigt: Niemand hat notiert, welche Akzession er ist.</translation>
    </message>
    <message>
        <source>The scores tell nothing of this accession.</source>
        <translation>Die Bewertungen sagen über diese Akzession nichts aus.</translation>
    </message>
    <message>
        <source>The seed is ripe even if the tree bloomed late.</source>
        <translation>Der Samen ist reif, auch wenn der Baum spät geblüht hat.</translation>
    </message>
    <message>
        <source>The sheet as comma, semicolon or tab separated text in UTF-8, as note-template makes it.</source>
        <translation>Das Blatt als Text in UTF-8, mit Komma, Semikolon oder Tabulator getrennt, wie note-template es anlegt.</translation>
    </message>
    <message>
        <source>The sort of accession by its status.</source>
        <translation>Die Art der Akzession nach ihrem Status.</translation>
    </message>
    <message>
        <source>The standard has no descriptor of this name: it is left out.</source>
        <translation>Der Standard hat keinen Deskriptor dieses Namens: Er wird ausgelassen.</translation>
    </message>
    <message>
        <source>The standard has no status of this code.</source>
        <translation>Der Standard hat keinen Status mit diesem Code.</translation>
    </message>
    <message>
        <source>The traits that were scored are: {}.</source>
        <translation>Bewertet wurden diese Merkmale: {}.</translation>
    </message>
    <message>
        <source>The tree with the most, which is not always the best.</source>
        <translation>Der Baum mit dem höchsten Wert, der nicht immer der beste ist.</translation>
    </message>
    <message>
        <source>The tree&apos;s; unknown for work on the bench.</source>
        <translation>Die des Baums; unbekannt bei Arbeit am Arbeitstisch.</translation>
    </message>
    <message>
        <source>The unit of its numbers.</source>
        <translation>Die Einheit seiner Zahlen.</translation>
    </message>
    <message>
        <source>The way of writing.</source>
        <translation>Die Schreibweise.</translation>
    </message>
    <message>
        <source>The wish cannot be read.</source>
        <translation>Der Wunsch ist nicht lesbar.</translation>
    </message>
    <message>
        <source>The work of a day or a week to take along: what is to be done at which tree, in walking order, with the address, the tags, the lot and the amount, a box to tick and room to write down what came of it; then the work on the bench, and the cautions that go with just this work.</source>
        <translation>Die Arbeit eines Tages oder einer Woche zum Mitnehmen: was an welchem Baum zu tun ist, in der Reihenfolge des Rundgangs, mit Ort, Etiketten, Partie und Menge, einem Kästchen zum Abhaken und Platz zum Aufschreiben des Ergebnisses; danach die Arbeit am Arbeitstisch und die Warnhinweise zu genau dieser Arbeit.</translation>
    </message>
    <message>
        <source>The year asked about.</source>
        <translation>Das Jahr, nach dem gefragt ist.</translation>
    </message>
    <message>
        <source>The year asked about; that of the as-of day where none is given.</source>
        <translation>Das Jahr, nach dem gefragt ist; ohne Angabe das des Stichtags.</translation>
    </message>
    <message>
        <source>Their S-alleles are not both known.</source>
        <translation>Ihre S-Allele sind nicht beide bekannt.</translation>
    </message>
    <message>
        <source>There already: {}; not filled in: {}.</source>
        <translation>Schon vorhanden: {}; nicht ausgefüllt: {}.</translation>
    </message>
    <message>
        <source>There is neither a column ACCENAME nor a column ACCENUMB.</source>
        <translation>Es gibt weder eine Spalte ACCENAME noch eine Spalte ACCENUMB.</translation>
    </message>
    <message>
        <source>There is nothing to write.</source>
        <translation>Es gibt nichts zu schreiben.</translation>
    </message>
    <message>
        <source>These are {} accessions; at most {} can be asked for at once.</source>
        <translation>Das sind {} Akzessionen; höchstens {} lassen sich auf einmal abfragen.</translation>
    </message>
    <message>
        <source>This cannot be read.</source>
        <translation>Das ist nicht lesbar.</translation>
    </message>
    <message>
        <source>This is a formula, not a value.</source>
        <translation>Das ist eine Formel, kein Wert.</translation>
    </message>
    <message>
        <source>This is an old spreadsheet&apos;s workbook (.xls), not CSV.</source>
        <translation>Das ist eine alte Arbeitsmappe einer Tabellenkalkulation (.xls), kein CSV.</translation>
    </message>
    <message>
        <source>This is no code of an institute, as in AAA999.</source>
        <translation>Das ist kein Code einer Einrichtung wie AAA999.</translation>
    </message>
    <message>
        <source>This is no code of an institute.</source>
        <translation>Das ist kein Code einer Einrichtung.</translation>
    </message>
    <message>
        <source>This is no day as YYYYMMDD.</source>
        <translation>Das ist kein Tag in der Form YYYYMMDD.</translation>
    </message>
    <message>
        <source>Those of {}, whose sport it is.</source>
        <translation>Die von {}, deren Sport sie ist.</translation>
    </message>
    <message>
        <source>Three parents stand in one cross: put the first cross in parentheses.</source>
        <translation>Drei Eltern stehen in einer Kreuzung: Die erste Kreuzung in Klammern setzen.</translation>
    </message>
    <message>
        <source>Ties, and what is not known.</source>
        <translation>Gleichstände und was nicht bekannt ist.</translation>
    </message>
    <message>
        <source>To see the wanted number of them with the stated confidence.</source>
        <translation>Um die gewünschte Zahl davon mit der angegebenen Sicherheit zu sehen.</translation>
    </message>
    <message>
        <source>Too few scores: {} of {} diploid accessions up to {}. Breeding values need {} scores of {} accessions, or they tell of chance.</source>
        <translation>Zu wenige Bewertungen: {} von {} diploiden Akzessionen bis {}. Zuchtwerte brauchen {} Bewertungen von {} Akzessionen, sonst zeigen sie nur den Zufall.</translation>
    </message>
    <message>
        <source>Too young</source>
        <translation>Zu jung</translation>
    </message>
    <message>
        <source>Took back {} entries of one import from {}: {} to {}.</source>
        <translation>{} Einträge eines Imports aus {} zurückgenommen: {} bis {}.</translation>
    </message>
    <message>
        <source>Traits in the boxes</source>
        <translation>Merkmale in den Kästen</translation>
    </message>
    <message>
        <source>Traits of</source>
        <translation>Merkmale von</translation>
    </message>
    <message>
        <source>Traits of parents</source>
        <translation>Merkmale der Eltern</translation>
    </message>
    <message>
        <source>Traits of parents that were scored: {}.</source>
        <translation>Bewertete Merkmale der Eltern: {}.</translation>
    </message>
    <message>
        <source>Traits whose means stand in the boxes, with commas between, or all; none where left out.</source>
        <translation>Merkmale, deren Mittel in den Kästen stehen, durch Kommas getrennt, oder all für alle; ohne Angabe keine.</translation>
    </message>
    <message>
        <source>Traits with their weights, as in taste=2; scab=-1; below 0 where low scores are the good ones.</source>
        <translation>Merkmale mit ihren Gewichten, wie in taste=2; scab=-1; unter 0, wo niedrige Werte die guten sind.</translation>
    </message>
    <message>
        <source>Tray across</source>
        <translation>Topfplatte quer</translation>
    </message>
    <message>
        <source>Tray down</source>
        <translation>Topfplatte längs</translation>
    </message>
    <message>
        <source>Tray {}</source>
        <translation>Topfplatte {}</translation>
    </message>
    <message>
        <source>Trays</source>
        <translation>Topfplatten</translation>
    </message>
    <message>
        <source>Trees of it that were scored.</source>
        <translation>Ihre Bäume, die bewertet wurden.</translation>
    </message>
    <message>
        <source>Trees scored</source>
        <translation>Bewertete Bäume</translation>
    </message>
    <message>
        <source>Two columns are headed {}.</source>
        <translation>Zwei Spalten haben die Überschrift {}.</translation>
    </message>
    <message>
        <source>Two lines have this name; it must be one accession&apos;s alone.</source>
        <translation>Zwei Zeilen haben diesen Namen; er darf nur einer Akzession gehören.</translation>
    </message>
    <message>
        <source>Type it anew.</source>
        <translation>Neu eintippen.</translation>
    </message>
    <message>
        <source>Unit: {}.</source>
        <translation>Einheit: {}.</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>Gewünscht</translation>
    </message>
    <message>
        <source>Wanted ones</source>
        <translation>Gewünschte</translation>
    </message>
    <message>
        <source>Wanted seedlings surpass {}. Traits are taken as handed on independently of each other, and the heritability is a judgement.</source>
        <translation>Gewünschte Sämlinge übertreffen {}. Angenommen ist, dass Merkmale unabhängig voneinander weitergegeben werden; die Erblichkeit ist eine Einschätzung.</translation>
    </message>
    <message>
        <source>Ways</source>
        <translation>Wege</translation>
    </message>
    <message>
        <source>What becomes of each line of the file.</source>
        <translation>Was aus jeder Zeile der Datei wird.</translation>
    </message>
    <message>
        <source>What becomes of it.</source>
        <translation>Was daraus wird.</translation>
    </message>
    <message>
        <source>What becomes of the line.</source>
        <translation>Was aus der Zeile wird.</translation>
    </message>
    <message>
        <source>What differs from the book, what is kept in the note, what is open.</source>
        <translation>Was vom Buch abweicht, was in der Notiz bleibt, was offen ist.</translation>
    </message>
    <message>
        <source>What each accession is expected to hand on of a trait, the highest first.</source>
        <translation>Was jede Akzession von einem Merkmal voraussichtlich weitergibt, die höchste zuerst.</translation>
    </message>
    <message>
        <source>What each column of the sheet holds.</source>
        <translation>Was jede Spalte des Blatts enthält.</translation>
    </message>
    <message>
        <source>What each is recorded to have, or may have by its parents.</source>
        <translation>Was für jede verzeichnet ist oder was sie nach ihren Eltern haben kann.</translation>
    </message>
    <message>
        <source>What hangs at the branch.</source>
        <translation>Was am Ast hängt.</translation>
    </message>
    <message>
        <source>What hangs at the branches.</source>
        <translation>Was an den Ästen hängt.</translation>
    </message>
    <message>
        <source>What is handed on comes back in every score: give at least that.</source>
        <translation>Was weitergegeben wird, kehrt in jeder Bewertung wieder: mindestens so viel angeben.</translation>
    </message>
    <message>
        <source>What is wrong or doubtful about it, or where the book has it.</source>
        <translation>Was daran falsch oder zweifelhaft ist oder wo es im Buch steht.</translation>
    </message>
    <message>
        <source>What it has or may have; S? where one is not known.</source>
        <translation>Was sie hat oder haben kann; S? für ein unbekanntes.</translation>
    </message>
    <message>
        <source>What it is; unknown for a parent without a record.</source>
        <translation>Was sie ist; unbekannt bei einem Elter ohne Eintrag.</translation>
    </message>
    <message>
        <source>What part of the genes each ancestor is expected to have given.</source>
        <translation>Welchen Teil der Gene jeder Vorfahr voraussichtlich gegeben hat.</translation>
    </message>
    <message>
        <source>What speaks against these parents.</source>
        <translation>Was gegen diese Eltern spricht.</translation>
    </message>
    <message>
        <source>What the alleles tell.</source>
        <translation>Was die Allele sagen.</translation>
    </message>
    <message>
        <source>What the chance rests on.</source>
        <translation>Worauf die Chance beruht.</translation>
    </message>
    <message>
        <source>What the counts tell.</source>
        <translation>Was die Zählungen sagen.</translation>
    </message>
    <message>
        <source>What the descendant is a sport or clone of.</source>
        <translation>Wovon der Nachkomme ein Sport oder Klon ist.</translation>
    </message>
    <message>
        <source>What the line notes, in words.</source>
        <translation>Was die Zeile festhält, in Worten.</translation>
    </message>
    <message>
        <source>What the lines of the sheet note; note-import sees it from the header where it is not given.</source>
        <translation>Was die Zeilen des Blatts festhalten; ohne Angabe erkennt note-import es an der Kopfzeile.</translation>
    </message>
    <message>
        <source>What the numbers rest on.</source>
        <translation>Worauf die Zahlen beruhen.</translation>
    </message>
    <message>
        <source>What the one is to the other, by the nearest way.</source>
        <translation>Was die eine für die andere ist, auf dem nächsten Weg.</translation>
    </message>
    <message>
        <source>What to bear in mind.</source>
        <translation>Was zu bedenken ist.</translation>
    </message>
    <message>
        <source>What to know of it.</source>
        <translation>Was dazu zu wissen ist.</translation>
    </message>
    <message>
        <source>What to take care of at this very piece.</source>
        <translation>Worauf bei genau dieser Arbeit zu achten ist.</translation>
    </message>
    <message>
        <source>What to write there.</source>
        <translation>Was dort einzutragen ist.</translation>
    </message>
    <message>
        <source>When every seedling should first fruit, by its kind, its stock and the year in which it was sown, so that the map shows where to look this year; and what the fruit of each family has been like so far, trait by trait.</source>
        <translation>Wann jeder Sämling erstmals fruchten sollte, nach Art, Unterlage und Jahr der Aussaat, damit die Karte zeigt, wo dieses Jahr nachzusehen ist; und wie die Früchte jeder Familie bisher waren, Merkmal für Merkmal.</translation>
    </message>
    <message>
        <source>When the crossed fruit of every tagged branch may be picked for its seed: from the tree&apos;s own full bloom, foretold or noted, and the days that its seed needs to ripen, which is often before the fruit is ripe to eat. What is to be picked stands in walking order, as a sheet to take along.</source>
        <translation>Wann die Früchte der Kreuzung an jedem etikettierten Ast für ihre Samen gepflückt werden dürfen: nach der eigenen Vollblüte des Baums, vorhergesagt oder notiert, und den Tagen, die die Samen zum Reifen brauchen, oft vor der Genussreife der Frucht. Was zu pflücken ist, steht in der Reihenfolge des Rundgangs, als Liste zum Mitnehmen.</translation>
    </message>
    <message>
        <source>Where it was scored itself.</source>
        <translation>Wo er selbst bewertet wurde.</translation>
    </message>
    <message>
        <source>Where that is from.</source>
        <translation>Woher das stammt.</translation>
    </message>
    <message>
        <source>Whether a line that is filled in must have it.</source>
        <translation>Ob eine ausgefüllte Zeile das enthalten muss.</translation>
    </message>
    <message>
        <source>Whether it should fruit in that year.</source>
        <translation>Ob er in jenem Jahr fruchten sollte.</translation>
    </message>
    <message>
        <source>Whether no parent of it is known.</source>
        <translation>Ob von ihr kein Elter bekannt ist.</translation>
    </message>
    <message>
        <source>Whether single seedlings are written as well.</source>
        <translation>Ob auch einzelne Sämlinge geschrieben werden.</translation>
    </message>
    <message>
        <source>Whether the pollen can pass, by the alleles.</source>
        <translation>Ob der Pollen nach den Allelen durchkommen kann.</translation>
    </message>
    <message>
        <source>Whether the sheet has lines for what is likely to be noted.</source>
        <translation>Ob das Blatt Zeilen für das enthält, was voraussichtlich zu notieren ist.</translation>
    </message>
    <message>
        <source>Whether the style lets the pollen through.</source>
        <translation>Ob der Griffel den Pollen durchlässt.</translation>
    </message>
    <message>
        <source>Whether their blooms meet was not asked.</source>
        <translation>Ob ihre Blüten zusammentreffen, wurde nicht gefragt.</translation>
    </message>
    <message>
        <source>Which crosses to make</source>
        <translation>Welche Kreuzungen sich lohnen</translation>
    </message>
    <message>
        <source>Which scored trait was seen in which parent and grandparent.</source>
        <translation>Welches bewertete Merkmal bei welchem Elter und Großelter gesehen wurde.</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>Who descends from it.</source>
        <translation>Wer von ihr abstammt.</translation>
    </message>
    <message>
        <source>Who descends from the accession, and how much of it they have.</source>
        <translation>Wer von der Akzession abstammt und wie viel von ihr jeder hat.</translation>
    </message>
    <message>
        <source>Whose traits.</source>
        <translation>Wessen Merkmale.</translation>
    </message>
    <message>
        <source>Why it is not suggested.</source>
        <translation>Warum sie nicht vorgeschlagen wird.</translation>
    </message>
    <message>
        <source>Wish</source>
        <translation>Wunsch</translation>
    </message>
    <message>
        <source>With</source>
        <translation>Mit</translation>
    </message>
    <message>
        <source>With crosses in parentheses</source>
        <translation>Mit Kreuzungen in Klammern</translation>
    </message>
    <message>
        <source>With the day first this is {}, with the month first {}.</source>
        <translation>Mit dem Tag vorn ist das {}, mit dem Monat vorn {}.</translation>
    </message>
    <message>
        <source>Work at the trees, in walking order</source>
        <translation>Arbeit an den Bäumen, in der Reihenfolge des Rundgangs</translation>
    </message>
    <message>
        <source>Work from</source>
        <translation>Bestäuben ab</translation>
    </message>
    <message>
        <source>Work of the days asked for, in walking order.</source>
        <translation>Arbeit der gefragten Tage, in der Reihenfolge des Rundgangs.</translation>
    </message>
    <message>
        <source>Work sheet</source>
        <translation>Arbeitsblatt</translation>
    </message>
    <message>
        <source>Work with pollen and seed indoors</source>
        <translation>Arbeit mit Pollen und Samen im Haus</translation>
    </message>
    <message>
        <source>Worked in this cross, where all its fruit was counted.</source>
        <translation>In dieser Kreuzung bestäubt, soweit alle ihre Früchte gezählt wurden.</translation>
    </message>
    <message>
        <source>Write 19750612, or 197506-- and 1975---- where day or month are not known.</source>
        <translation>19750612 schreiben, oder 197506-- und 1975----, wo Tag oder Monat nicht bekannt sind.</translation>
    </message>
    <message>
        <source>Write a trait and a bound, as in taste&gt;=7 or scab&lt;=3.</source>
        <translation>Ein Merkmal und eine Grenze schreiben, wie in taste&gt;=7 oder scab&lt;=3.</translation>
    </message>
    <message>
        <source>Write figures alone, and anything else in a remark; leave the cell empty where nothing was counted.</source>
        <translation>Nur Ziffern schreiben, alles andere in eine Bemerkung; die Zelle leer lassen, wo nichts gezählt wurde.</translation>
    </message>
    <message>
        <source>Write figures with a decimal point or comma, and anything else in a remark.</source>
        <translation>Ziffern mit Dezimalpunkt oder Komma schreiben, alles andere in eine Bemerkung.</translation>
    </message>
    <message>
        <source>Write it as A/B or A x B, with a line of its own for each parent.</source>
        <translation>Als A/B oder A x B schreiben, mit einer eigenen Zeile für jeden Elter.</translation>
    </message>
    <message>
        <source>Write three capitals and three digits, as in AAA999, or leave it out.</source>
        <translation>Drei Großbuchstaben und drei Ziffern schreiben, wie in AAA999, oder weglassen.</translation>
    </message>
    <message>
        <source>Write traits with their weights, as in taste=2; scab=-1.</source>
        <translation>Merkmale mit ihren Gewichten schreiben, wie in taste=2; scab=-1.</translation>
    </message>
    <message>
        <source>Write {} without it, or the decimals in another number of figures.</source>
        <translation>{} ohne Trennzeichen schreiben oder mit einer anderen Zahl von Dezimalstellen.</translation>
    </message>
    <message>
        <source>Writes the accessions as a CSV file of multi-crop passport descriptors (FAO and Bioversity, V2.1), as genebanks exchange them: name, genus and species, status, parents, first planting. What the standard has no descriptor for, such as S-alleles, stands in REMARKS. The place of collecting is left empty: the orchard is not where a variety was found.</source>
        <translation>Schreibt die Akzessionen als CSV-Datei mit Multi-Crop-Passport-Deskriptoren (FAO und Bioversity, V2.1), wie Genbanken sie austauschen: Name, Gattung und Art, Status, Eltern, erste Pflanzung. Wofür der Standard keinen Deskriptor hat, etwa S-Allele, steht in REMARKS. Der Sammelort bleibt leer: Der Obstgarten ist nicht der Fundort einer Sorte.</translation>
    </message>
    <message>
        <source>Writing the passports</source>
        <translation>Passdaten werden geschrieben</translation>
    </message>
    <message>
        <source>Written down</source>
        <translation>Aufgeschrieben</translation>
    </message>
    <message>
        <source>Written to {}: {}; note-undo takes all of it back at once.</source>
        <translation>In {} geschrieben: {}; note-undo nimmt alles auf einmal zurück.</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <source>Year in which it should first fruit.</source>
        <translation>Jahr, in dem er erstmals fruchten sollte.</translation>
    </message>
    <message>
        <source>Year of sowing.</source>
        <translation>Jahr der Aussaat.</translation>
    </message>
    <message>
        <source>Year of the first bloom or score noted at it.</source>
        <translation>Jahr der ersten an ihm notierten Blüte oder Bewertung.</translation>
    </message>
    <message>
        <source>Years</source>
        <translation>Jahre</translation>
    </message>
    <message>
        <source>Your institute&apos;s code in FAO&apos;s list, as in AAA999; empty where you have none.</source>
        <translation>Code der eigenen Einrichtung in der Liste der FAO, wie in AAA999; leer, wo es keinen gibt.</translation>
    </message>
    <message>
        <source>a parent is not diploid: few sound seeds and weak seedlings</source>
        <translation>ein Elter ist nicht diploid: wenige gesunde Samen und schwache Sämlinge</translation>
    </message>
    <message>
        <source>as scored</source>
        <translation>wie bewertet</translation>
    </message>
    <message>
        <source>blend of pollen</source>
        <translation>Pollenmischung</translation>
    </message>
    <message>
        <source>by bloom and pollen it is {} this spring</source>
        <translation>nach Blüte und Pollen in diesem Frühjahr {}</translation>
    </message>
    <message>
        <source>by its pollen</source>
        <translation>über den Pollen</translation>
    </message>
    <message>
        <source>by its seed</source>
        <translation>über den Samen</translation>
    </message>
    <message>
        <source>check: {}</source>
        <translation>Vergleich: {}</translation>
    </message>
    <message>
        <source>child</source>
        <translation>Kind</translation>
    </message>
    <message>
        <source>child by selfing</source>
        <translation>Kind aus Selbstung</translation>
    </message>
    <message>
        <source>count, day</source>
        <translation>Zahl, Tag</translation>
    </message>
    <message>
        <source>flowers worked</source>
        <translation>bestäubte Blüten</translation>
    </message>
    <message>
        <source>flowers, tag, by whom</source>
        <translation>Blüten, Etikett, von wem</translation>
    </message>
    <message>
        <source>from its parents</source>
        <translation>von den Eltern</translation>
    </message>
    <message>
        <source>from {}</source>
        <translation>ab {}</translation>
    </message>
    <message>
        <source>fruit picked</source>
        <translation>gepflückte Früchte</translation>
    </message>
    <message>
        <source>fruit was expected</source>
        <translation>Frucht war erwartet</translation>
    </message>
    <message>
        <source>fruits, sound and empty seed</source>
        <translation>Früchte, gesunde und taube Samen</translation>
    </message>
    <message>
        <source>full</source>
        <translation>voll verträglich</translation>
    </message>
    <message>
        <source>full sibs</source>
        <translation>Vollgeschwister</translation>
    </message>
    <message>
        <source>further</source>
        <translation>weiter</translation>
    </message>
    <message>
        <source>germination tests of pollen</source>
        <translation>Keimtests von Pollen</translation>
    </message>
    <message>
        <source>grandchild</source>
        <translation>Enkel</translation>
    </message>
    <message>
        <source>grandparent</source>
        <translation>Großelter</translation>
    </message>
    <message>
        <source>half</source>
        <translation>halb verträglich</translation>
    </message>
    <message>
        <source>half sibs</source>
        <translation>Halbgeschwister</translation>
    </message>
    <message>
        <source>has bloomed</source>
        <translation>hat geblüht</translation>
    </message>
    <message>
        <source>in its note: {}</source>
        <translation>in der Notiz: {}</translation>
    </message>
    <message>
        <source>in the blend, {:.3g} %</source>
        <translation>in der Pollenmischung, {:.3g} %</translation>
    </message>
    <message>
        <source>its ancestry is not two names</source>
        <translation>die Abstammung besteht nicht aus zwei Namen</translation>
    </message>
    <message>
        <source>its sport</source>
        <translation>Sport davon</translation>
    </message>
    <message>
        <source>late</source>
        <translation>verspätet</translation>
    </message>
    <message>
        <source>late: pick at once what still hangs</source>
        <translation>verspätet: sofort pflücken, was noch hängt</translation>
    </message>
    <message>
        <source>let hang until {}</source>
        <translation>hängen lassen bis {}</translation>
    </message>
    <message>
        <source>longer than most</source>
        <translation>länger als die meisten</translation>
    </message>
    <message>
        <source>lot, flowers</source>
        <translation>Partie, Blüten</translation>
    </message>
    <message>
        <source>may fruit</source>
        <translation>kann fruchten</translation>
    </message>
    <message>
        <source>member of the blend</source>
        <translation>Bestandteil der Pollenmischung</translation>
    </message>
    <message>
        <source>no allele of the pollen parent</source>
        <translation>kein Allel des Pollenelters</translation>
    </message>
    <message>
        <source>no allele of the seed parent</source>
        <translation>kein Allel des Samenelters</translation>
    </message>
    <message>
        <source>nobody</source>
        <translation>keinem</translation>
    </message>
    <message>
        <source>not filled in</source>
        <translation>nicht ausgefüllt</translation>
    </message>
    <message>
        <source>not one allele of each parent</source>
        <translation>nicht von jedem Elter ein Allel</translation>
    </message>
    <message>
        <source>not related, as far as is known</source>
        <translation>nicht verwandt, soweit bekannt</translation>
    </message>
    <message>
        <source>not shown on both sides: {}</source>
        <translation>nicht auf beiden Seiten gezeigt: {}</translation>
    </message>
    <message>
        <source>of two genera: an apple and a pear, say, give no seedlings to count on</source>
        <translation>aus zwei Gattungen: Apfel und Birne etwa geben keine Sämlinge, mit denen zu rechnen ist</translation>
    </message>
    <message>
        <source>only by pollen that the style turns away</source>
        <translation>nur durch Pollen, den der Griffel abweist</translation>
    </message>
    <message>
        <source>parent by selfing</source>
        <translation>Elter durch Selbstung</translation>
    </message>
    <message>
        <source>pick from {} on</source>
        <translation>ab {} pflücken</translation>
    </message>
    <message>
        <source>pick now</source>
        <translation>jetzt pflücken</translation>
    </message>
    <message>
        <source>pollen parent unknown</source>
        <translation>Pollenelter unbekannt</translation>
    </message>
    <message>
        <source>possible child, by a blend</source>
        <translation>mögliches Kind, über eine Pollenmischung</translation>
    </message>
    <message>
        <source>possible parent, by a blend</source>
        <translation>möglicher Elter, über eine Pollenmischung</translation>
    </message>
    <message>
        <source>recorded</source>
        <translation>verzeichnet</translation>
    </message>
    <message>
        <source>related</source>
        <translation>verwandt</translation>
    </message>
    <message>
        <source>seed lots</source>
        <translation>Samenpartien</translation>
    </message>
    <message>
        <source>seed parent unknown</source>
        <translation>Samenelter unbekannt</translation>
    </message>
    <message>
        <source>seed taken out</source>
        <translation>entnommene Samen</translation>
    </message>
    <message>
        <source>should fruit this year</source>
        <translation>sollte dieses Jahr fruchten</translation>
    </message>
    <message>
        <source>sibs of one pollen blend</source>
        <translation>Geschwister aus einer Pollenmischung</translation>
    </message>
    <message>
        <source>sown {}, fruit expected {} ({} to {})</source>
        <translation>gesät {}, Frucht erwartet {} ({} bis {})</translation>
    </message>
    <message>
        <source>sport of</source>
        <translation>Sport von</translation>
    </message>
    <message>
        <source>spreads</source>
        <translation>Streuungen</translation>
    </message>
    <message>
        <source>sprout counts</source>
        <translation>Keimzählungen</translation>
    </message>
    <message>
        <source>stages of bloom</source>
        <translation>Blühstadien</translation>
    </message>
    <message>
        <source>the parents&apos; kinship is above {:.3f}</source>
        <translation>die Verwandtschaft der Eltern liegt über {:.3f}</translation>
    </message>
    <message>
        <source>the same S-alleles: no seed is to be expected, either way</source>
        <translation>dieselben S-Allele: in beiden Richtungen sind keine Samen zu erwarten</translation>
    </message>
    <message>
        <source>the same, or its sport</source>
        <translation>dieselbe oder ihr Sport</translation>
    </message>
    <message>
        <source>the scores tell nothing of one parent</source>
        <translation>die Bewertungen sagen über einen Elter nichts aus</translation>
    </message>
    <message>
        <source>there already</source>
        <translation>schon vorhanden</translation>
    </message>
    <message>
        <source>to a member of the blend</source>
        <translation>zu einem Bestandteil der Pollenmischung</translation>
    </message>
    <message>
        <source>to the pollen parent</source>
        <translation>zum Pollenelter</translation>
    </message>
    <message>
        <source>to the seed parent</source>
        <translation>zum Samenelter</translation>
    </message>
    <message>
        <source>to what it is a sport of</source>
        <translation>zu dem, wovon es ein Sport ist</translation>
    </message>
    <message>
        <source>too young</source>
        <translation>zu jung</translation>
    </message>
    <message>
        <source>trait scores</source>
        <translation>Bonituren</translation>
    </message>
    <message>
        <source>unknown {:.3g} %</source>
        <translation>unbekannt {:.3g} %</translation>
    </message>
    <message>
        <source>with {}</source>
        <translation>mit {}</translation>
    </message>
    <message>
        <source>would be written</source>
        <translation>würde geschrieben</translation>
    </message>
    <message>
        <source>wrong</source>
        <translation>falsch</translation>
    </message>
    <message>
        <source>years</source>
        <translation>Jahre</translation>
    </message>
    <message>
        <source>{:.3g} % of {}</source>
        <translation>{:.3g} % von {}</translation>
    </message>
    <message>
        <source>{:g} or more</source>
        <translation>{:g} oder mehr</translation>
    </message>
    <message>
        <source>{:g} to {:g}</source>
        <translation>{:g} bis {:g}</translation>
    </message>
    <message>
        <source>{} (needed): {}</source>
        <translation>{} (nötig): {}</translation>
    </message>
    <message>
        <source>{} accessions are not listed: the scores tell nothing of them.</source>
        <translation>{} Akzessionen sind nicht aufgeführt: Die Bewertungen sagen über sie nichts aus.</translation>
    </message>
    <message>
        <source>{} and 1 check tree</source>
        <translation>{} und 1 Vergleichsbaum</translation>
    </message>
    <message>
        <source>{} and {} check trees</source>
        <translation>{} und {} Vergleichsbäume</translation>
    </message>
    <message>
        <source>{} crosses promise more</source>
        <translation>{} Kreuzungen versprechen mehr</translation>
    </message>
    <message>
        <source>{} descends from 1 ancestor and is expected to have {}.</source>
        <translation>{} stammt von 1 Vorfahren ab und hat voraussichtlich {}.</translation>
    </message>
    <message>
        <source>{} descends from {} ancestors and is expected to have {}.</source>
        <translation>{} stammt von {} Vorfahren ab und hat voraussichtlich {}.</translation>
    </message>
    <message>
        <source>{} flowers worked</source>
        <translation>{} Blüten bestäubt</translation>
    </message>
    <message>
        <source>{} has 1 line to fill in.</source>
        <translation>{} hat 1 Zeile zum Ausfüllen.</translation>
    </message>
    <message>
        <source>{} has no lines yet.</source>
        <translation>{} hat noch keine Zeilen.</translation>
    </message>
    <message>
        <source>{} has {} lines to fill in.</source>
        <translation>{} hat {} Zeilen zum Ausfüllen.</translation>
    </message>
    <message>
        <source>{} is not known</source>
        <translation>{} ist nicht bekannt</translation>
    </message>
    <message>
        <source>{} lines are wrong: as it is, nothing would be written.</source>
        <translation>{} Zeilen sind falsch: So würde nichts geschrieben.</translation>
    </message>
    <message>
        <source>{} not scored</source>
        <translation>{} nicht bewertet</translation>
    </message>
    <message>
        <source>{} not scored, seen in: {}.</source>
        <translation>{} nicht bewertet, gesehen bei: {}.</translation>
    </message>
    <message>
        <source>{} of 1 flower set.</source>
        <translation>{} von 1 Blüte hat angesetzt.</translation>
    </message>
    <message>
        <source>{} of {} flowers set.</source>
        <translation>{} von {} Blüten haben angesetzt.</translation>
    </message>
    <message>
        <source>{} pieces of work</source>
        <translation>{} Arbeiten</translation>
    </message>
    <message>
        <source>{} rows</source>
        <translation>{} Zeilen</translation>
    </message>
    <message>
        <source>{} seedlings</source>
        <translation>{} Sämlinge</translation>
    </message>
    <message>
        <source>{} seedlings of 1 cross</source>
        <translation>{} Sämlinge aus 1 Kreuzung</translation>
    </message>
    <message>
        <source>{} seedlings of {} crosses</source>
        <translation>{} Sämlinge aus {} Kreuzungen</translation>
    </message>
    <message>
        <source>{} seedlings stand: {} have bloomed; of the others {} should fruit in {}, {} may, {} are waited for, {} too young.</source>
        <translation>{} Sämlinge stehen: {} haben geblüht; von den übrigen sollten {} im Jahr {} fruchten, {} können es, auf {} wird gewartet, {} sind zu jung.</translation>
    </message>
    <message>
        <source>{} stands in {} better crosses already</source>
        <translation>{} steht schon in {} besseren Kreuzungen</translation>
    </message>
    <message>
        <source>{} tagged branches bear fruit</source>
        <translation>{} etikettierte Äste tragen Früchte</translation>
    </message>
    <message>
        <source>{} until {}</source>
        <translation>{} bis {}</translation>
    </message>
    <message>
        <source>{} {:.3g} (1 tree)</source>
        <translation>{} {:.3g} (1 Baum)</translation>
    </message>
    <message>
        <source>{} {:.3g} (blend, by its shares)</source>
        <translation>{} {:.3g} (Pollenmischung, nach ihren Anteilen)</translation>
    </message>
    <message>
        <source>{} {:.3g} ({} trees)</source>
        <translation>{} {:.3g} ({} Bäume)</translation>
    </message>
    <message>
        <source>{} {:.3g}, seen in: {}.</source>
        <translation>{} {:.3g}, gesehen bei: {}.</translation>
    </message>
    <message>
        <source>{} × {}: {}</source>
        <translation>{} × {}: {}</translation>
    </message>
    <message>
        <source>{}, none at a tree.</source>
        <translation>{}, keine an einem Baum.</translation>
    </message>
    <message>
        <source>{}, {}</source>
        <translation>{}, {}</translation>
    </message>
    <message>
        <source>{}: kinship is known of {} of {} pairs.</source>
        <translation>{}: Verwandtschaft bei {} von {} Paaren bekannt.</translation>
    </message>
    <message>
        <source>{}: the match is known of {} of {} crosses.</source>
        <translation>{}: Verträglichkeit bei {} von {} Kreuzungen bekannt.</translation>
    </message>
    <message>
        <source>{}: {} in the file, {} in the book</source>
        <translation>{}: {} in der Datei, {} im Buch</translation>
    </message>
    <message>
        <source>{}: {} scores of {} accessions in {}. Heritability {:.2f} and repeatability {:.2f} are judgements; the reliabilities hang on them.</source>
        <translation>{}: {} Bewertungen von {} Akzessionen in {}. Erblichkeit {:.2f} und Wiederholbarkeit {:.2f} sind Einschätzungen; von ihnen hängen die Sicherheiten ab.</translation>
    </message>
    <message>
        <source>{}; none is to be picked yet.</source>
        <translation>{}; noch ist nichts zu pflücken.</translation>
    </message>
    <message>
        <source>{}; {:.0f} m to walk.</source>
        <translation>{}; {:.0f} m zu gehen.</translation>
    </message>
    <message>
        <source>{}; {} to pick, {:.0f} m to walk.</source>
        <translation>{}; {} zu pflücken, {:.0f} m zu gehen.</translation>
    </message>
    <message>
        <source>…: the line is known further</source>
        <translation>…: die Abstammung ist weiter bekannt</translation>
    </message>
    <message>
        <source>◆, double edge: stands in the line more than once, drawn once</source>
        <translation>◆, doppelter Rand: kommt in der Abstammung mehrmals vor, einmal gezeichnet</translation>
    </message>
    <message>
        <source>1 cross</source>
        <translation>1 Kreuzung</translation>
    </message>
    <message>
        <source>1 waits for work</source>
        <translation>1 wartet auf Arbeit</translation>
    </message>
    <message>
        <source>Apart</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>File line</source>
        <translation>Zeile der Datei</translation>
    </message>
    <message>
        <source>Seed is left in 1 lot.</source>
        <translation>Samen sind in 1 Partie übrig.</translation>
    </message>
    <message>
        <source>Seed is left in {} lots.</source>
        <translation>Samen sind in {} Partien übrig.</translation>
    </message>
    <message>
        <source>The least distance between two trees of a row, where its positions stand closer; 0 for every vacant position.</source>
        <translation>Der kleinste Abstand zweier Bäume einer Reihe, wo ihre Plätze enger liegen; 0 für jeden freien Platz.</translation>
    </message>
    <message>
        <source>{} crosses</source>
        <translation>{} Kreuzungen</translation>
    </message>
    <message>
        <source>{} wait for work</source>
        <translation>{} warten auf Arbeit</translation>
    </message>
    <message>
        <source>{}: {}, {} of it late. {}</source>
        <translation>{}: {}, davon {} zu spät. {}</translation>
    </message>
    <message>
        <source>Keep the pollen {}.</source>
        <translation>Den Pollen aufbewahren: {}.</translation>
    </message>
    <message>
        <source>Pollen: {}.</source>
        <translation>Pollen: {}.</translation>
    </message>
</context>
</TS>
