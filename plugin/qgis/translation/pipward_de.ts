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
        <translation>Zuchtbücher (*.gpkg);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Orchard books (*.gpkg)</source>
        <translation>Zuchtbücher (*.gpkg)</translation>
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
        <translation>Auf der Karte liegt kein Layer mit Blühfenstern. Bitte die Saison planen, dann das Zuchtbuch über das Menü öffnen.</translation>
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
    <message>
        <source>Sheet</source>
        <translation>Blatt</translation>
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
        <source>%1: full bloom %2, 80 % prediction interval %3 to %4; first bloom %5, end of bloom %6.</source>
        <translation>%1: Vollblüte %2, 80-%-Vorhersageintervall %3 bis %4; Blühbeginn %5, Blühende %6.</translation>
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
        <translation>Zuchtbuch öffnen …</translation>
    </message>
    <message>
        <source>Opens the map that is stored in an orchard book</source>
        <translation>Öffnet die Karte, die in einem Zuchtbuch gespeichert ist</translation>
    </message>
    <message>
        <source>Choose an orchard book</source>
        <translation>Zuchtbuch wählen</translation>
    </message>
    <message>
        <source>Orchard books (*.gpkg);;All files (*)</source>
        <translation>Zuchtbücher (*.gpkg);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Orchard book</source>
        <translation>Zuchtbuch</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::CardAction</name>
    <message>
        <source>Tree record</source>
        <translation>Baumdaten</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::ExpressionFunctions</name>
    <message>
        <source>Median date of full bloom of a tree or an accession, by the last season plan of the book. Without a name: of the current feature.</source>
        <translation>Tag der Vollblüte (Median) eines Baums oder einer Akzession nach dem letzten Saisonplan des Buchs. Ohne Namen: des aktuellen Objekts.</translation>
    </message>
    <message>
        <source>Days until the median date of full bloom of a tree or an accession, counted from a day or from today; negative afterwards.</source>
        <translation>Ganze Tage bis zur Vollblüte (Median) eines Baums oder einer Akzession, gezählt ab einem Tag oder ab heute; danach negativ.</translation>
    </message>
    <message>
        <source>Where a tree stands, in words: block, row and position.</source>
        <translation>Adresse eines Baums in Worten: Quartier, Reihe und Position.</translation>
    </message>
    <message>
        <source>Seed parent and pollen parent of a tree or an accession.</source>
        <translation>Mutter (Samenelter) und Vater (Pollenelter) eines Baums oder einer Akzession.</translation>
    </message>
    <message>
        <source>Orchard</source>
        <translation>Obstanlage</translation>
    </message>
    <message>
        <source>This layer is of no orchard book, and none is chosen in the season panel.</source>
        <translation>Dieser Layer gehört zu keinem Zuchtbuch, und im Bedienfeld Saison ist keines gewählt.</translation>
    </message>
    <message>
        <source>The orchard book %1 is still being read: try again.</source>
        <translation>Das Zuchtbuch %1 wird noch gelesen: bitte noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The orchard book %1 cannot be read.</source>
        <translation>Das Zuchtbuch %1 lässt sich nicht lesen.</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::FindBox</name>
    <message>
        <source>Find a tree</source>
        <translation>Baum suchen</translation>
    </message>
    <message>
        <source>A label, a tag, the code of a cross, &quot;A × B 17&quot;, an accession even if misspelt, row and position, or a word of a remark.</source>
        <translation>Ein Etikett, ein Anhänger, das Kürzel einer Kreuzung, „A × B 17“, eine Akzession, auch falsch geschrieben, Reihe und Position oder ein Wort aus einer Bemerkung.</translation>
    </message>
    <message>
        <source>Trees found</source>
        <translation>Gefundene Bäume</translation>
    </message>
    <message>
        <source>Choose an orchard book first.</source>
        <translation>Bitte zuerst ein Zuchtbuch wählen.</translation>
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
        <source>Nothing matches. The nearest names: %1</source>
        <translation>Nichts Ähnliches gefunden. Die nächstliegenden Namen: %1</translation>
    </message>
    <message>
        <source>removed %1</source>
        <translation>gerodet %1</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::FindDesk</name>
    <message>
        <source>Tree record</source>
        <translation>Baumdaten</translation>
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
        <source>Pedigree</source>
        <translation>Abstammung</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::HarvestFields</name>
    <message>
        <source>not counted</source>
        <translation>nicht gezählt</translation>
    </message>
    <message>
        <source>This tree has no tag: record the pollination first.</source>
        <translation>Dieser Baum hat keinen Anhänger: Bitte zuerst die Bestäubung erfassen.</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Anhänger</translation>
    </message>
    <message>
        <source>Fruits</source>
        <translation>Früchte</translation>
    </message>
    <message>
        <source>Sound seeds</source>
        <translation>Volle Samen</translation>
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
    <name>pipward::desktop::IndexTask</name>
    <message>
        <source>Collecting the trees&apos; names</source>
        <translation>Namen der Bäume werden gesammelt</translation>
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
    <name>pipward::desktop::PedigreeWindow</name>
    <message>
        <source>Pedigree of %1</source>
        <translation>Abstammung von %1</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Als PDF speichern…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Als PDF speichern</translation>
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
    <name>pipward::desktop::Plugin</name>
    <message>
        <source>Orchard map and bloom planner for a fruit breeder</source>
        <translation>Obstanlagenkarte und Blühplaner für die Obstzüchtung</translation>
    </message>
    <message>
        <source>Orchard</source>
        <translation>Obstanlage</translation>
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
        <translation>Anhänger</translation>
    </message>
    <message>
        <source>Flowers pollinated</source>
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
        <translation>Keine Kreuzung der Saison %1 hat %2 als Mutter.</translation>
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
        <translation>Pipward: Obstanlagenkarte und Blühplaner</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::RecordDesk</name>
    <message>
        <source>%1, BBCH %2, %3</source>
        <translation>%1, BBCH %2, %3</translation>
    </message>
    <message>
        <source>%1, tag %2, %3 flowers pollinated, %4</source>
        <translation>%1, Anhänger %2, %3 Blüten bestäubt, %4</translation>
    </message>
    <message>
        <source>tag %1, %2 fruits harvested, %3</source>
        <translation>Anhänger %1, %2 Früchte geerntet, %3</translation>
    </message>
    <message>
        <source>Reading the book</source>
        <translation>Buch wird gelesen</translation>
    </message>
    <message>
        <source>Writing the record</source>
        <translation>Eintrag wird geschrieben</translation>
    </message>
    <message>
        <source>Undoing a record</source>
        <translation>Eintrag wird zurückgenommen</translation>
    </message>
    <message>
        <source>Record at a tree</source>
        <translation>Am Baum erfassen</translation>
    </message>
    <message>
        <source>Undo the last record</source>
        <translation>Letzten Eintrag zurücknehmen</translation>
    </message>
    <message>
        <source>Record it again</source>
        <translation>Erneut erfassen</translation>
    </message>
    <message>
        <source>Click a tree on the map and record its bloom, pollination or harvest.</source>
        <translation>Einen Baum auf der Karte anklicken und Blüte, Bestäubung oder Ernte erfassen.</translation>
    </message>
    <message>
        <source>Undone: %1</source>
        <translation>Zurückgenommen: %1</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Erfassen</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Recorded</source>
        <translation>Erfasst</translation>
    </message>
    <message>
        <source>Nothing was written: the layer “%1” is being edited. Save or cancel its edits, then record again.</source>
        <translation>Es wurde nichts geschrieben: Der Layer „%1“ wird gerade bearbeitet. Bitte die Änderungen speichern oder verwerfen, dann erneut erfassen.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::RecordForm</name>
    <message>
        <source>Bloom</source>
        <translation>Blüte</translation>
    </message>
    <message>
        <source>Pollination</source>
        <translation>Bestäubung</translation>
    </message>
    <message>
        <source>Harvest</source>
        <translation>Ernte</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Erfassen</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
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
        <source>%1   %2, collected %3</source>
        <translation>%1   %2, gesammelt %3</translation>
    </message>
    <message>
        <source>%1   %2 flowers, pollinated %3</source>
        <translation>%1   %2 Blüten, bestäubt %3</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::SeasonPanel</name>
    <message>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>not possible</source>
        <translation>nicht möglich</translation>
    </message>
    <message>
        <source>Cross outlook</source>
        <translation>Kreuzungsaussichten</translation>
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
        <source>Probability</source>
        <translation>Wahrscheinlichkeit</translation>
    </message>
    <message>
        <source>Orchard books (*.gpkg);;All files (*)</source>
        <translation>Zuchtbücher (*.gpkg);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Choose an orchard book</source>
        <translation>Zuchtbuch wählen</translation>
    </message>
    <message>
        <source>Reference date: nothing observed later is used.</source>
        <translation>Der Stichtag: Was später beobachtet wurde, bleibt außer Acht.</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Planen</translation>
    </message>
    <message>
        <source>Plans the season again and writes the results into the book.</source>
        <translation>Plant die Saison neu und schreibt die Ergebnisse ins Buch.</translation>
    </message>
    <message>
        <source>Choose a book and a day, then plan.</source>
        <translation>Buch und Tag wählen, dann planen.</translation>
    </message>
    <message>
        <source>As of</source>
        <translation>Stichtag</translation>
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
        <translation>Es ist kein Buch gewählt. Bitte die .gpkg-Datei der Obstanlage wählen.</translation>
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
        <source>Plays the bloom on the map, one day per step.</source>
        <translation>Spielt die Blüte auf der Karte ab, ein Tag je Schritt.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Stops playing and shows the map as it was.</source>
        <translation>Hält an und zeigt die Karte wie zuvor.</translation>
    </message>
    <message>
        <source>There is no such file: %1</source>
        <translation>Diese Datei gibt es nicht: %1</translation>
    </message>
    <message>
        <source>Reading the book</source>
        <translation>Das Buch wird gelesen</translation>
    </message>
    <message>
        <source>The plan in the book, as of %1.</source>
        <translation>Der Plan im Buch, Stichtag %1.</translation>
    </message>
    <message>
        <source>%1 may not be written: the plan is shown here and stands nowhere else.</source>
        <translation>%1 darf nicht geschrieben werden: Der Plan wird nur hier gezeigt und steht sonst nirgends.</translation>
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
        <source>%1 %2 of your position (%3°)</source>
        <translation>%1 %2 von der eigenen Position (%3°)</translation>
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
        <source>%1 (± %2 m)</source>
        <translation>%1 (± %2 m)</translation>
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
        <source>Copy location</source>
        <translation>Lage kopieren</translation>
    </message>
    <message>
        <source>Copies a link that opens on a telephone&apos;s map.</source>
        <translation>Kopiert einen Link, den Mobiltelefone auf einer Karte öffnen.</translation>
    </message>
    <message>
        <source>Address</source>
        <translation>Adresse</translation>
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
        <source>Pedigree</source>
        <translation>Abstammung</translation>
    </message>
    <message>
        <source>Planted</source>
        <translation>Gepflanzt</translation>
    </message>
    <message>
        <source>Removed</source>
        <translation>Gerodet</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Location</source>
        <translation>Lage</translation>
    </message>
    <message>
        <source>Draws its ancestors and its descendants.</source>
        <translation>Zeichnet Vorfahren und Nachkommen.</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Erfassen</translation>
    </message>
    <message>
        <source>Records what is seen or done at this tree.</source>
        <translation>Erfasst, was an diesem Baum zu sehen ist oder getan wird.</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::TreeLocator</name>
    <message>
        <source>Finds a tree by label, tag, cross and number, accession, row and position, or a remark.</source>
        <translation>Findet einen Baum anhand von Etikett, Anhänger, Kreuzung und Nummer, Akzession, Reihe und Position oder einer Bemerkung.</translation>
    </message>
    <message>
        <source>Trees of the orchard book</source>
        <translation>Bäume des Zuchtbuchs</translation>
    </message>
</context>
<context>
    <name>pipward::desktop::TreeTool</name>
    <message>
        <source>The map shows no trees of an orchard book. Add the layer “tree” of your book.</source>
        <translation>Die Karte zeigt keine Bäume eines Zuchtbuchs. Bitte den Layer „tree“ des Buchs hinzufügen.</translation>
    </message>
    <message>
        <source>There is no tree here. Click nearer to one, or zoom in.</source>
        <translation>Dort steht kein Baum. Bitte näher an einen Baum klicken oder hineinzoomen.</translation>
    </message>
</context>
<context>
    <name>pipward::library</name>
    <message>
        <source>A layer in any usual format: GeoPackage, Shapefile, GeoJSON, CSV with coordinates; or PG:... for a PostGIS database.</source>
        <translation>Ein Layer in jedem üblichen Format: GeoPackage, Shapefile, GeoJSON, CSV mit Koordinaten; oder PG:... für eine PostGIS-Datenbank.</translation>
    </message>
    <message>
        <source>Coordinate system of the layer</source>
        <translation>Koordinatenbezugssystem des Layers</translation>
    </message>
    <message>
        <source>In block</source>
        <translation>Im Quartier</translation>
    </message>
    <message>
        <source>Move its corners on the map, or draw it again.</source>
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
        <source>Whether the result is written to the book; without it the book stays as it is.</source>
        <translation>Ob das Ergebnis ins Buch geschrieben wird; sonst bleibt das Buch unverändert.</translation>
    </message>
    <message>
        <source>1 for the first label that is printed.</source>
        <translation>1 für das erste gedruckte Etikett.</translation>
    </message>
    <message>
        <source>101.6 x 50.8 mm, 2 x 5 on Letter</source>
        <translation>101,6 × 50,8 mm, 2 × 5 auf Letter</translation>
    </message>
    <message>
        <source>105 x 74 mm, 2 x 4 on A4</source>
        <translation>105 × 74 mm, 2 × 4 auf A4</translation>
    </message>
    <message>
        <source>48.5 x 25.4 mm, 4 x 10 on A4</source>
        <translation>48,5 × 25,4 mm, 4 × 10 auf A4</translation>
    </message>
    <message>
        <source>63.5 x 38.1 mm, 3 x 7 on A4</source>
        <translation>63,5 × 38,1 mm, 3 × 7 auf A4</translation>
    </message>
    <message>
        <source>66.7 x 25.4 mm, 3 x 10 on Letter</source>
        <translation>66,7 × 25,4 mm, 3 × 10 auf Letter</translation>
    </message>
    <message>
        <source>70 x 37 mm, 3 x 8 on A4</source>
        <translation>70 × 37 mm, 3 × 8 auf A4</translation>
    </message>
    <message>
        <source>99.1 x 67.7 mm, 2 x 4 on A4</source>
        <translation>99,1 × 67,7 mm, 2 × 4 auf A4</translation>
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
        <source>Code content</source>
        <translation>Inhalt des Codes</translation>
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
        <source>Module size of the code</source>
        <translation>Modulgröße des Codes</translation>
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
        <source>Side of one module of the QR code.</source>
        <translation>Seitenlänge eines Moduls des QR-Codes.</translation>
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
        <source>Labels of the trees, separated by commas; all that meet the other conditions where left out.</source>
        <translation>Etiketten der Bäume, durch Kommas getrennt; ohne Angabe alle, auf die das Übrige zutrifft.</translation>
    </message>
    <message>
        <source>Left margin</source>
        <translation>Linker Rand</translation>
    </message>
    <message>
        <source>Letter, 8.5 x 11 inches</source>
        <translation>Letter, 8,5 × 11 Zoll</translation>
    </message>
    <message>
        <source>Letters on tags</source>
        <translation>Buchstaben auf Anhängern</translation>
    </message>
    <message>
        <source>Makes a PDF map of a block or of the whole orchard at a round scale: trees by purpose in shape and colour, rows and positions with their numbers, scale bar and north arrow, on several pages with an overview where one page would be too small. It also makes a GPX and a KML file, so that a hand-held GNSS receiver or a telephone leads to the trees. Nothing is written to the book.</source>
        <translation>Macht eine Karte eines Quartiers oder der ganzen Anlage als PDF in rundem Maßstab: Bäume nach Zweck in Form und Farbe, Reihen und Positionen mit ihren Nummern, Maßstabsleiste und Nordpfeil, auf mehreren Seiten mit Übersicht, wo eine Seite zu klein wäre. Dazu eine GPX- und eine KML-Datei, mit denen ein GNSS-Handempfänger oder ein Telefon zu den Bäumen führt. Ins Buch wird nichts geschrieben.</translation>
    </message>
    <message>
        <source>Makes a PDF of tree labels, of tags for the pollinated flowers of a season&apos;s crosses, or of blank tags, in true millimetres on sheets or rolls. A label shows the tree&apos;s label, its accession and parents, its address, the year of planting and a QR code. Text that is too long is made smaller and wrapped, never cut. Nothing is written to the book.</source>
        <translation>Macht ein PDF mit Baumetiketten, mit Anhängern für die bestäubten Blüten der Kreuzungen einer Saison oder mit leeren Anhängern, in echten Millimetern auf Bögen oder Rollen. Ein Baumetikett zeigt Etikett, Akzession und Eltern, Adresse, Pflanzjahr und einen QR-Code. Zu langer Text wird verkleinert und umbrochen, nie abgeschnitten. Ins Buch wird nichts geschrieben.</translation>
    </message>
    <message>
        <source>Field map</source>
        <translation>Feldkarte</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>For crosses: their season; that of the reference date where left out.</source>
        <translation>Bei Kreuzungen: ihre Saison; ohne Angabe die des Stichtags.</translation>
    </message>
    <message>
        <source>For crosses: whether every tag has a code of its own, with the next free letter.</source>
        <translation>Bei Kreuzungen: ob jeder Anhänger einen eigenen Code hat, mit dem nächsten freien Buchstaben.</translation>
    </message>
    <message>
        <source>Scale denominator, 250 for 1:250; the largest scale at which everything can be read where left out.</source>
        <translation>Nenner des Maßstabs, 250 für 1:250; ohne Angabe der größte Maßstab, bei dem alles lesbar ist.</translation>
    </message>
    <message>
        <source>Scale denominator: 250 for 1:250.</source>
        <translation>Nenner des Maßstabs: 250 für 1:250.</translation>
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
        <translation>Seiten der Karte</translation>
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
        <translation>Gerodete Bäume</translation>
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
        <source>Text</source>
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
        <source>Sheet format by its dimensions; the options for dimensions override single values.</source>
        <translation>Bogenformat nach seinen Maßen; die Optionen für Maße ersetzen einzelne Werte.</translation>
    </message>
    <message>
        <source>Order of the trees&apos; labels.</source>
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
        <translation>Die Seiten der Karte.</translation>
    </message>
    <message>
        <source>Page size; portrait or landscape is chosen by the program.</source>
        <translation>Seitengröße; Hoch- oder Querformat wählt das Programm.</translation>
    </message>
    <message>
        <source>Upper margin</source>
        <translation>Oberer Rand</translation>
    </message>
    <message>
        <source>What the labels are for.</source>
        <translation>Wofür die Etiketten sind.</translation>
    </message>
    <message>
        <source>Text below.</source>
        <translation>Text darunter.</translation>
    </message>
    <message>
        <source>Main text.</source>
        <translation>Haupttext.</translation>
    </message>
    <message>
        <source>Content of the QR code.</source>
        <translation>Inhalt des QR-Codes.</translation>
    </message>
    <message>
        <source>Content of the QR code on a label; on the tag of a cross it is the tag&apos;s code.</source>
        <translation>Inhalt des QR-Codes auf einem Etikett; auf dem Anhänger einer Kreuzung ist es dessen Code.</translation>
    </message>
    <message>
        <source>First free label on a partly used sheet, row by row from the upper left.</source>
        <translation>Erstes freies Etikett auf einem angebrochenen Bogen, Zeile für Zeile von links oben.</translation>
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
        <source>Whether the GNSS files contain a walk along the alleys to all trees.</source>
        <translation>Ob die Dateien für GNSS-Empfänger einen Rundgang durch die Fahrgassen zu allen Bäumen enthalten.</translation>
    </message>
    <message>
        <source>Whether the map is turned so that rows lie across the page; north is up otherwise.</source>
        <translation>Ob der Plan so gedreht wird, dass die Reihen quer liegen; sonst ist Norden oben.</translation>
    </message>
    <message>
        <source>Whether positions of removed trees are drawn.</source>
        <translation>Ob Positionen gerodeter Bäume gezeichnet werden.</translation>
    </message>
    <message>
        <source>Number of the label on the page, row by row from the upper left.</source>
        <translation>Nummer des Etiketts auf der Seite, Zeile für Zeile von links oben.</translation>
    </message>
    <message>
        <source>a label for each tree</source>
        <translation>ein Etikett für jeden Baum</translation>
    </message>
    <message>
        <source>a roll of 100 x 50 mm labels</source>
        <translation>eine Rolle mit Etiketten 100 × 50 mm</translation>
    </message>
    <message>
        <source>a roll of 57 x 32 mm labels</source>
        <translation>eine Rolle mit Etiketten 57 × 32 mm</translation>
    </message>
    <message>
        <source>a roll of 89 x 36 mm labels</source>
        <translation>eine Rolle mit Etiketten 89 × 36 mm</translation>
    </message>
    <message>
        <source>as in the book</source>
        <translation>wie im Buch</translation>
    </message>
    <message>
        <source>by block, row and position</source>
        <translation>nach Quartier, Reihe und Position</translation>
    </message>
    <message>
        <source>by label</source>
        <translation>nach Etikett</translation>
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
        <source>the dimensions given by the other options</source>
        <translation>die Maße, die die anderen Angaben nennen</translation>
    </message>
    <message>
        <source>the label as plain text</source>
        <translation>das Etikett als reiner Text</translation>
    </message>
    <message>
        <source>the same, every second row from its far end, as in walking order</source>
        <translation>ebenso, jede zweite Reihe vom anderen Ende her, wie beim Rundgang</translation>
    </message>
    <message>
        <source>the tree&apos;s location as a geo: link that opens on a telephone&apos;s map</source>
        <translation>die Lage des Baums als geo:-Link, den Mobiltelefone auf einer Karte öffnen</translation>
    </message>
    <message>
        <source>A tree&apos;s accession, as the book writes it.</source>
        <translation>Die Akzession eines Baums, wie das Buch sie schreibt.</translation>
    </message>
    <message>
        <source>A tree&apos;s position in the row.</source>
        <translation>Die Position eines Baums in der Reihe.</translation>
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
        <source>Import a layer</source>
        <translation>Layer importieren</translation>
    </message>
    <message>
        <source>Swap the coordinates</source>
        <translation>Koordinaten tauschen</translation>
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
        <source>Features with a value.</source>
        <translation>Objekte, die einen Wert haben.</translation>
    </message>
    <message>
        <source>Field mapping</source>
        <translation>Feldzuordnung</translation>
    </message>
    <message>
        <source>Field mapping file</source>
        <translation>Datei der Feldzuordnung</translation>
    </message>
    <message>
        <source>Target column</source>
        <translation>Zielspalte</translation>
    </message>
    <message>
        <source>Recognised by</source>
        <translation>Erkannt an</translation>
    </message>
    <message>
        <source>How it was recognised.</source>
        <translation>Woran sie erkannt wurde.</translation>
    </message>
    <message>
        <source>Its label or name in the book.</source>
        <translation>Etikett oder Name im Buch.</translation>
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
        <source>For accessions for which the layer does not give it: apple, pear or a botanical name.</source>
        <translation>Für Akzessionen, zu denen der Layer sie nicht angibt: Apfel, Birne (apple, pear) oder ein botanischer Name.</translation>
    </message>
    <message>
        <source>Location: easting or longitude</source>
        <translation>Lage: Ostwert oder geografische Länge</translation>
    </message>
    <message>
        <source>Location: northing or latitude</source>
        <translation>Lage: Nordwert oder geografische Breite</translation>
    </message>
    <message>
        <source>Same location</source>
        <translation>Gleiche Lage</translation>
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
        <source>Imported instead</source>
        <translation>Stattdessen importiert</translation>
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
        <source>The column of the book; empty where the field is not imported.</source>
        <translation>Die Spalte des Buchs; leer, wenn das Feld nicht importiert wird.</translation>
    </message>
    <message>
        <source>The field of the layer.</source>
        <translation>Das Feld des Layers.</translation>
    </message>
    <message>
        <source>The field that the column is imported from instead.</source>
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
        <source>The same as a file of two columns, like the mapping.csv that every run writes.</source>
        <translation>Dasselbe als Datei mit zwei Spalten, wie mapping.csv, die jeder Lauf anlegt.</translation>
    </message>
    <message>
        <source>The word recognised in its name.</source>
        <translation>Das in seinem Namen erkannte Wort.</translation>
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
        <source>What happens to each feature of the layer.</source>
        <translation>Was mit jedem Objekt des Layers geschieht.</translation>
    </message>
    <message>
        <source>What happens</source>
        <translation>Was geschieht</translation>
    </message>
    <message>
        <source>Content</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>Kind of the accessions for which the layer does not give it.</source>
        <translation>Art der Akzessionen, zu denen der Layer sie nicht angibt.</translation>
    </message>
    <message>
        <source>What the features of the layer are; recognised by geometry and fields where not given.</source>
        <translation>Was die Objekte des Layers sind; ohne Angabe an Geometrie und Feldern erkannt.</translation>
    </message>
    <message>
        <source>Purpose of the trees for which the layer does not give it; other where not given.</source>
        <translation>Zweck der Bäume, zu denen der Layer ihn nicht angibt; ohne Angabe Sonstiges.</translation>
    </message>
    <message>
        <source>What writing does with it.</source>
        <translation>Was beim Schreiben damit geschieht.</translation>
    </message>
    <message>
        <source>Column of the book for each field of the layer.</source>
        <translation>Spalte des Buchs für jedes Feld des Layers.</translation>
    </message>
    <message>
        <source>Columns for fields that were not recognised correctly: &quot;FIELD=column; FIELD2=-&quot;, with - for none.</source>
        <translation>Spalten für Felder, die nicht richtig erkannt wurden: &quot;FELD=Spalte; FELD2=-&quot;, mit - für keine.</translation>
    </message>
    <message>
        <source>Whether accessions that trees name and the book does not have are added.</source>
        <translation>Ob Akzessionen angelegt werden, die Bäume nennen und die im Buch fehlen.</translation>
    </message>
    <message>
        <source>Whether blocks and rows that trees name and the book does not have are added, drawn through their trees.</source>
        <translation>Ob Quartiere und Reihen angelegt werden, die Bäume nennen und die im Buch fehlen, durch ihre Bäume gezeichnet.</translation>
    </message>
    <message>
        <source>Whether the layer has its two coordinates swapped.</source>
        <translation>Ob im Layer die beiden Koordinaten vertauscht sind.</translation>
    </message>
    <message>
        <source>Distance within which a tree of the same label counts as the same tree; the accuracy of the transformation is added.</source>
        <translation>Entfernung, bis zu der ein Baum mit demselben Etikett als derselbe gilt; die Genauigkeit der Transformation kommt hinzu.</translation>
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
        <source>areas, one per block</source>
        <translation>Flächen, je ein Quartier</translation>
    </message>
    <message>
        <source>as given</source>
        <translation>wie angegeben</translation>
    </message>
    <message>
        <source>not imported</source>
        <translation>nicht importiert</translation>
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
        <source>lines, one per tree row</source>
        <translation>Linien, je eine Baumreihe</translation>
    </message>
    <message>
        <source>truncated name</source>
        <translation>gekürzter Name</translation>
    </message>
    <message>
        <source>similar name</source>
        <translation>ähnlicher Name</translation>
    </message>
    <message>
        <source>points, one per tree</source>
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
        <source>trade term</source>
        <translation>Fachwort</translation>
    </message>
    <message>
        <source>cultivars and selections, without a location</source>
        <translation>Sorten und Zuchtklone, ohne Lage</translation>
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
        <source>A subtitle for the sheet.</source>
        <translation>Ein Untertitel für das Blatt.</translation>
    </message>
    <message>
        <source>Stores in which the germination of the pollen would fall below this are not used.</source>
        <translation>Lager, in denen die Keimfähigkeit des Pollens unter diesen Wert fiele, werden nicht eingeplant.</translation>
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
        <translation>Stichtag</translation>
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
        <source>Bloom observations of the accession itself that its requirement rests on.</source>
        <translation>Eigene Blühbeobachtungen der Akzession, auf denen ihr Bedarf beruht.</translation>
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
        <source>Probability</source>
        <translation>Wahrscheinlichkeit</translation>
    </message>
    <message>
        <source>Probability that viable, compatible pollen is available while the stigmas are receptive.</source>
        <translation>Wahrscheinlichkeit, dass keimfähiger, verträglicher Pollen verfügbar ist, solange die Narben empfängnisfähig sind.</translation>
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
        <source>Chill by the Utah model; warm hours subtract.</source>
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
        <source>Sums chill and heat day by day at a station, by every usual model: chilling hours, Utah units, chill portions, growing degree-days and growing degree-hours.</source>
        <translation>Summiert Kälte und Wärme an einer Station Tag für Tag nach allen gebräuchlichen Modellen: Kältestunden, Utah-Einheiten, Kälteportionen, Wachstumsgradtage und Wachstumsgradstunden.</translation>
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
        <source>Mean day and month of full bloom at the station, by the model over the past seasons.</source>
        <translation>Mittlerer Tag und Monat der Vollblüte an der Station, nach dem Modell über die vergangenen Saisons.</translation>
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
        <source>Each cross goal by each way to obtain the pollen, with probabilities and reasons.</source>
        <translation>Jedes Kreuzungsziel mit jedem Weg zum Pollen, mit Wahrscheinlichkeiten und Begründung.</translation>
    </message>
    <message>
        <source>End of bloom (BBCH 69): median.</source>
        <translation>Blühende (BBCH 69): Median.</translation>
    </message>
    <message>
        <source>End of bloom (BBCH 69): 10th percentile.</source>
        <translation>Blühende (BBCH 69): 10. Perzentil.</translation>
    </message>
    <message>
        <source>End of bloom (BBCH 69): 90th percentile.</source>
        <translation>Blühende (BBCH 69): 90. Perzentil.</translation>
    </message>
    <message>
        <source>End of bloom, early</source>
        <translation>Blühende, früh</translation>
    </message>
    <message>
        <source>End of bloom, late</source>
        <translation>Blühende, spät</translation>
    </message>
    <message>
        <source>End of bloom, median</source>
        <translation>Blühende, Median</translation>
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
        <source>First bloom (BBCH 60): median.</source>
        <translation>Blühbeginn (BBCH 60): Median.</translation>
    </message>
    <message>
        <source>First bloom (BBCH 60): 10th percentile.</source>
        <translation>Blühbeginn (BBCH 60): 10. Perzentil.</translation>
    </message>
    <message>
        <source>First bloom (BBCH 60): 90th percentile.</source>
        <translation>Blühbeginn (BBCH 60): 90. Perzentil.</translation>
    </message>
    <message>
        <source>First bloom, early</source>
        <translation>Blühbeginn, früh</translation>
    </message>
    <message>
        <source>First bloom, late</source>
        <translation>Blühbeginn, spät</translation>
    </message>
    <message>
        <source>First bloom, median</source>
        <translation>Blühbeginn, Median</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Erster Tag</translation>
    </message>
    <message>
        <source>First day on which the seed parent can be pollinated.</source>
        <translation>Erster Tag, an dem die Mutter bestäubt werden kann.</translation>
    </message>
    <message>
        <source>First day to do it.</source>
        <translation>Erster Tag dafür.</translation>
    </message>
    <message>
        <source>First day to collect flowers at balloon stage, or to cut the branch.</source>
        <translation>Erster Tag, um Blüten im Ballonstadium zu sammeln oder den Treibzweig zu schneiden.</translation>
    </message>
    <message>
        <source>Fit chill and heat requirements</source>
        <translation>Kälte- und Wärmebedarf schätzen</translation>
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
        <source>Flowers of the donor to be collected.</source>
        <translation>Blüten des Pollenspenders, die zu sammeln sind.</translation>
    </message>
    <message>
        <source>Flowers of the seed parent to be pollinated for the wanted seedlings.</source>
        <translation>Blüten der Mutter, die für die gewünschten Sämlinge zu bestäuben sind.</translation>
    </message>
    <message>
        <source>Flowers per donor flower</source>
        <translation>Blüten je Spenderblüte</translation>
    </message>
    <message>
        <source>Flowers that can be pollinated with the pollen of one donor flower at full germination.</source>
        <translation>Blüten, die sich mit dem Pollen einer Spenderblüte bei voller Keimfähigkeit bestäuben lassen.</translation>
    </message>
    <message>
        <source>Flowers to collect</source>
        <translation>Zu sammelnde Blüten</translation>
    </message>
    <message>
        <source>Flowers to collect.</source>
        <translation>Zu sammelnde Blüten.</translation>
    </message>
    <message>
        <source>Flowers to pollinate</source>
        <translation>Zu bestäubende Blüten</translation>
    </message>
    <message>
        <source>For crosses</source>
        <translation>Für Kreuzungen</translation>
    </message>
    <message>
        <source>Forecasts first bloom, full bloom and end of bloom of every living tree this season, with 80 % prediction intervals: from the temperatures so far, the forecast days in the book, and the rest of every past season as a member of an ensemble. Trees higher up the slope bloom later.</source>
        <translation>Sagt für jeden lebenden Baum Blühbeginn, Vollblüte und Blühende in dieser Saison voraus, mit 80-%-Vorhersageintervallen: aus den bisherigen Temperaturen, den vorhergesagten Tagen im Buch und dem Rest jeder vergangenen Saison als Mitglied eines Ensembles. Bäume weiter oben am Hang blühen später.</translation>
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
        <source>Full bloom (BBCH 65): median.</source>
        <translation>Vollblüte (BBCH 65): Median.</translation>
    </message>
    <message>
        <source>Full bloom (BBCH 65): 10th percentile.</source>
        <translation>Vollblüte (BBCH 65): 10. Perzentil.</translation>
    </message>
    <message>
        <source>Full bloom (BBCH 65): 90th percentile.</source>
        <translation>Vollblüte (BBCH 65): 90. Perzentil.</translation>
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
        <source>Collect from</source>
        <translation>Sammeln ab</translation>
    </message>
    <message>
        <source>Collect to</source>
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
        <source>Growing degree-hours above 4.5 °C, no more above 25.</source>
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
        <source>Hours between 0 and 7.2 °C.</source>
        <translation>Stunden zwischen 0 und 7,2 °C.</translation>
    </message>
    <message>
        <source>How soon it must be done.</source>
        <translation>Wie bald es getan werden muss.</translation>
    </message>
    <message>
        <source>Probability with which the wanted number of seedlings is to be reached.</source>
        <translation>Wahrscheinlichkeit, mit der die gewünschte Zahl an Sämlingen erreicht werden soll.</translation>
    </message>
    <message>
        <source>Date format of the file; recognised from the file where not given.</source>
        <translation>Datumsformat der Datei; ohne Angabe aus der Datei erkannt.</translation>
    </message>
    <message>
        <source>How the pollen is obtained.</source>
        <translation>Auf welchem Weg der Pollen gewonnen wird.</translation>
    </message>
    <message>
        <source>Bloom forecast skill</source>
        <translation>Güte der Blühvorhersage</translation>
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
        <source>Coverage of the 80 % interval</source>
        <translation>Abdeckung des 80-%-Intervalls</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Bedarfswert</translation>
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
        <source>Source of the requirement</source>
        <translation>Herkunft des Bedarfs</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Letzter Tag</translation>
    </message>
    <message>
        <source>Last day to do it.</source>
        <translation>Letzter Tag dafür.</translation>
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
        <source>Number of seasons to fit on, as in a young orchard; all but one where not given.</source>
        <translation>Zahl der Saisons zur Anpassung, wie in einer jungen Obstanlage; ohne Angabe alle bis auf eine.</translation>
    </message>
    <message>
        <source>Fits the chill and heat requirement of each accession to the bloom observations and the temperatures of past seasons. Accessions with few observations are shrunk towards the orchard&apos;s mean; those without any take their parents&apos; or the orchard&apos;s mean.</source>
        <translation>Schätzt den Kälte- und Wärmebedarf jeder Akzession aus den Blühbeobachtungen und den Temperaturen vergangener Saisons. Akzessionen mit wenigen Beobachtungen werden zum Mittel der Obstanlage hin gezogen; solche ohne Beobachtungen übernehmen das Mittel ihrer Eltern oder der Obstanlage.</translation>
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
        <source>Mean of forecast minus observed: above zero is too late.</source>
        <translation>Mittel aus Vorhersage minus Beobachtung: über null heißt zu spät.</translation>
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
        <source>SD of the requirement</source>
        <translation>SD des Bedarfs</translation>
    </message>
    <message>
        <source>New book</source>
        <translation>Neues Buch</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Observations</source>
        <translation>Beobachtungen</translation>
    </message>
    <message>
        <source>Observations of its own.</source>
        <translation>Eigene Beobachtungen.</translation>
    </message>
    <message>
        <source>Observations used</source>
        <translation>Genutzte Beobachtungen</translation>
    </message>
    <message>
        <source>Orchard</source>
        <translation>Obstanlage</translation>
    </message>
    <message>
        <source>Date format</source>
        <translation>Datumsformat</translation>
    </message>
    <message>
        <source>Cross outlook</source>
        <translation>Kreuzungsaussichten</translation>
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
        <source>Pollen lot in stock that this way uses.</source>
        <translation>Vorhandene Pollenpartie, die dieser Weg nutzt.</translation>
    </message>
    <message>
        <source>Pollen parent</source>
        <translation>Vater (Pollenelter)</translation>
    </message>
    <message>
        <source>Pollen per flower</source>
        <translation>Pollen je Blüte</translation>
    </message>
    <message>
        <source>Pollen to collect, branches to cut, lots to test: by last safe day.</source>
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
        <source>Expected yield of raw pollen.</source>
        <translation>Erwarteter Ertrag an Rohpollen.</translation>
    </message>
    <message>
        <source>Reads the whole book and reports everything that is wrong, doubtful or impossible in it: where it is and what to do about it. Errors prevent results, warnings weaken them.</source>
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
        <source>SD of the rest</source>
        <translation>SD des Rests</translation>
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
        <source>Score true forecasts as well, issued this many days before bloom.</source>
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
        <source>Chill and heat sums</source>
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
        <source>SD of the season</source>
        <translation>SD der Saison</translation>
    </message>
    <message>
        <source>Seasons</source>
        <translation>Saisons</translation>
    </message>
    <message>
        <source>Seasons forecast without having been used in the fit.</source>
        <translation>Vorhergesagte Saisons, die nicht zur Anpassung dienten.</translation>
    </message>
    <message>
        <source>Seasons used in the fit; unknown where all but the one forecast.</source>
        <translation>Saisons der Anpassung; leer, wenn alle außer der vorhergesagten.</translation>
    </message>
    <message>
        <source>Seasons with observations of its own.</source>
        <translation>Saisons mit eigenen Beobachtungen.</translation>
    </message>
    <message>
        <source>Seed parent</source>
        <translation>Mutter (Samenelter)</translation>
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
        <source>Share of days forecast within 3 days.</source>
        <translation>Anteil der auf 3 Tage genau vorhergesagten Tage.</translation>
    </message>
    <message>
        <source>Share of days forecast within 5 days.</source>
        <translation>Anteil der auf 5 Tage genau vorhergesagten Tage.</translation>
    </message>
    <message>
        <source>Share of observed days inside the 80 % prediction interval, p10 to p90; 0.8 is right.</source>
        <translation>Anteil der beobachteten Tage im 80-%-Vorhersageintervall von p10 bis p90; richtig ist 0,8.</translation>
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
        <source>Standard deviation of full bloom due to the uncertainty of the requirement.</source>
        <translation>Standardabweichung der Vollblüte durch die Unsicherheit des Bedarfs.</translation>
    </message>
    <message>
        <source>Standard deviation of full bloom that is specific to the accession.</source>
        <translation>Standardabweichung der Vollblüte, die der Akzession eigen ist.</translation>
    </message>
    <message>
        <source>Standard deviation of full bloom that all accessions of a season share.</source>
        <translation>Standardabweichung der Vollblüte, die alle Akzessionen einer Saison gemeinsam haben.</translation>
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
        <source>Imports daily minimum and maximum temperatures of a station from a file into the book, and shows how the file was read. What the file does not make clear is asked for, never guessed; days that the book has already stay as they are unless replace-existing is given.</source>
        <translation>Importiert tägliche Tiefst- und Höchsttemperaturen einer Station aus einer Datei ins Buch und zeigt, wie die Datei gelesen wurde. Was aus der Datei nicht klar hervorgeht, wird erfragt, nie geraten; Tage, die das Buch schon hat, bleiben unverändert, außer mit replace-existing.</translation>
    </message>
    <message>
        <source>Shows for every cross goal of the season whether its pollen can be available while the seed parent&apos;s flowers are receptive, by each way to obtain it, with dates, amounts, S-alleles, kinship and the reasons.</source>
        <translation>Zeigt für jedes Kreuzungsziel der Saison, ob sein Pollen verfügbar sein kann, solange die Blüten der Mutter empfängnisfähig sind: für jeden Weg zum Pollen, mit Tagen, Mengen, S-Allelen, Verwandtschaft und Begründung.</translation>
    </message>
    <message>
        <source>The accession whose flowers are pollinated.</source>
        <translation>Die Akzession, deren Blüten bestäubt werden.</translation>
    </message>
    <message>
        <source>The accession whose pollen it is.</source>
        <translation>Die Akzession, von der der Pollen stammt.</translation>
    </message>
    <message>
        <source>The accession whose pollen it is: the pollen parent, or a member of the blend.</source>
        <translation>Die Akzession, von der der Pollen stammt: der Vater oder ein Bestandteil der Pollenmischung.</translation>
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
        <source>Accepted risk of missing a deadline.</source>
        <translation>Akzeptiertes Risiko, eine Frist zu verpassen.</translation>
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
        <source>First day of the sums; the season&apos;s first, 1 October in the northern hemisphere, where not given.</source>
        <translation>Erster Tag der Summen; ohne Angabe der erste der Saison, auf der Nordhalbkugel der 1. Oktober.</translation>
    </message>
    <message>
        <source>Reference date of the forecast.</source>
        <translation>Stichtag der Vorhersage.</translation>
    </message>
    <message>
        <source>Reference date of the plan.</source>
        <translation>Stichtag des Plans.</translation>
    </message>
    <message>
        <source>Reference date: nothing observed later is used, so any past date can be repeated.</source>
        <translation>Der Stichtag: Was später beobachtet wurde, bleibt außer Acht; so lässt sich jeder vergangene Tag nachrechnen.</translation>
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
        <source>The fitted chill and heat requirement of each accession.</source>
        <translation>Der geschätzte Kälte- und Wärmebedarf jeder Akzession.</translation>
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
        <source>The last day; the last one known up to the reference date where not given.</source>
        <translation>Der letzte Tag; ohne Angabe der letzte bekannte bis zum Stichtag.</translation>
    </message>
    <message>
        <source>The lower threshold of the degree-days.</source>
        <translation>Die untere Schwelle der Gradtage.</translation>
    </message>
    <message>
        <source>The main operation: fits on past springs, forecasts this one, assesses every wanted cross and lists the pollen work and the field work with last safe days. Replaces the result tables of the book in one step and makes a sheet to print.</source>
        <translation>Die Hauptaufgabe: lernt aus vergangenen Frühjahren, sagt dieses voraus, beurteilt jede gewünschte Kreuzung und listet Pollenarbeit und Feldarbeit mit den letzten sicheren Tagen auf. Ersetzt die Ergebnistabellen des Buchs in einem Schritt und erstellt ein Saisonblatt zum Drucken.</translation>
    </message>
    <message>
        <source>The one-parameter model structure with the highest weight in the method.</source>
        <translation>Der Ein-Parameter-Ansatz mit dem höchsten Gewicht im Verfahren.</translation>
    </message>
    <message>
        <source>The orchard book: the path of a GeoPackage, or PG:... for a PostGIS database.</source>
        <translation>Das Zuchtbuch: der Pfad eines GeoPackages oder PG:... für eine PostGIS-Datenbank.</translation>
    </message>
    <message>
        <source>The orchard&apos;s name on the sheet; the book&apos;s file name where not given.</source>
        <translation>Name der Obstanlage auf dem Saisonblatt; ohne Angabe der Dateiname des Buchs.</translation>
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
        <source>The same as day of year, 1 January being 1.</source>
        <translation>Dasselbe als Tag im Jahr; der 1. Januar ist 1.</translation>
    </message>
    <message>
        <source>The seed parent&apos;s tree.</source>
        <translation>Der Baum der Mutter.</translation>
    </message>
    <message>
        <source>The forecast stage: full bloom.</source>
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
        <translation>Das Etikett des Baums; leer bei einer Akzession ohne lebenden Baum.</translation>
    </message>
    <message>
        <source>The unit of the temperatures; found out from the header and the values where not given.</source>
        <translation>Die Einheit der Temperaturen; ohne Angabe aus Überschrift und Werten ermittelt.</translation>
    </message>
    <message>
        <source>The upper threshold of the degree-days, used only with a cut-off.</source>
        <translation>Die obere Schwelle der Gradtage; zählt nur mit einer Kappung.</translation>
    </message>
    <message>
        <source>The forecast method for full bloom.</source>
        <translation>Das Verfahren zur Vorhersage der Vollblüte.</translation>
    </message>
    <message>
        <source>The forecast method that was fitted.</source>
        <translation>Das angepasste Vorhersageverfahren.</translation>
    </message>
    <message>
        <source>The forecast method, and the source of the accession&apos;s requirement.</source>
        <translation>Das Vorhersageverfahren und die Herkunft des Bedarfs der Akzession.</translation>
    </message>
    <message>
        <source>The forecast method.</source>
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
        <translation>Mindestkeimfähigkeit</translation>
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
        <translation>Varianz der Zahl voller Samen in einer Frucht.</translation>
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
        <source>Highest-weighted structure</source>
        <translation>Ansatz mit höchstem Gewicht</translation>
    </message>
    <message>
        <source>Chill and heat requirements</source>
        <translation>Kälte- und Wärmebedarf</translation>
    </message>
    <message>
        <source>How heat above the upper threshold counts.</source>
        <translation>Wie Wärme über der oberen Schwelle zählt.</translation>
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
        <source>The value there.</source>
        <translation>Der dort eingetragene Wert.</translation>
    </message>
    <message>
        <source>Requirement of this accession in that structure.</source>
        <translation>Bedarf der Akzession in diesem Ansatz.</translation>
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
        <source>What was imported from the file into the book.</source>
        <translation>Was aus der Datei ins Buch übernommen wurde.</translation>
    </message>
    <message>
        <source>What weakens this forecast.</source>
        <translation>Was diese Vorhersage unsicherer macht.</translation>
    </message>
    <message>
        <source>When each living tree will bloom this season, with 80 % prediction intervals.</source>
        <translation>Wann jeder lebende Baum in dieser Saison blüht, mit 80-%-Vorhersageintervallen.</translation>
    </message>
    <message>
        <source>Where the pollen is stored until then.</source>
        <translation>Wo der Pollen bis dahin lagert.</translation>
    </message>
    <message>
        <source>Where the temperatures come from.</source>
        <translation>Woher die Temperaturen stammen.</translation>
    </message>
    <message>
        <source>Whether days that the book already has are replaced by the file&apos;s; a forecast is always replaced by an observation.</source>
        <translation>Ob Tage, die das Buch schon hat, durch die der Datei ersetzt werden; eine Vorhersage wird immer durch eine Messung ersetzt.</translation>
    </message>
    <message>
        <source>Whether each accession gets scores of its own besides those of all together.</source>
        <translation>Ob jede Akzession neben der Gesamtbewertung eine eigene Bewertung erhält.</translation>
    </message>
    <message>
        <source>Whether its requirement comes from its own observations, from its parents or from the orchard&apos;s mean.</source>
        <translation>Ob ihr Bedarf aus eigenen Beobachtungen, von den Eltern oder aus dem Mittel der Obstanlage stammt.</translation>
    </message>
    <message>
        <source>Compatibility of the donor&apos;s pollen with the style, by the S-alleles.</source>
        <translation>Verträglichkeit des Spenderpollens mit dem Griffel, nach den S-Allelen.</translation>
    </message>
    <message>
        <source>Whether this is the best way, the one that the plan follows.</source>
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
        <translation>Arbeit an den Mutterbäumen: Eintüten, Bestäuben, Tüten abnehmen; nach dem ersten Tag geordnet.</translation>
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
        <source>error, warning or notice.</source>
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
        <source>the long-term mean date, whatever the weather</source>
        <translation>das langjährige mittlere Datum, unabhängig vom Wetter</translation>
    </message>
    <message>
        <source>the one with the best skill in the orchard&apos;s own past seasons</source>
        <translation>das mit der besten Güte in den vergangenen Saisons der Obstanlage</translation>
    </message>
    <message>
        <source>00: dormant: scales closed and dark</source>
        <translation>00: Knospenruhe: Schuppen geschlossen und dunkel</translation>
    </message>
    <message>
        <source>01: leaf buds begin to swell</source>
        <translation>01: Beginn des Knospenschwellens (Blattknospen)</translation>
    </message>
    <message>
        <source>03: leaf buds swollen: scales light, partly hairy</source>
        <translation>03: Ende des Knospenschwellens: Schuppen hell, teils behaart</translation>
    </message>
    <message>
        <source>07: bud break: first green tips just seen</source>
        <translation>07: Knospenaufbruch: erste grüne Blattspitzen gerade sichtbar</translation>
    </message>
    <message>
        <source>09: green leaf tips 5 mm out</source>
        <translation>09: grüne Blattspitzen 5 mm über den Schuppen</translation>
    </message>
    <message>
        <source>1 for the best match.</source>
        <translation>1 für den besten Treffer.</translation>
    </message>
    <message>
        <source>10: mouse-ear: green tips 10 mm, leaves parting</source>
        <translation>10: Mausohrstadium: grüne Blattspitzen 10 mm, erste Blätter spreizen sich ab</translation>
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
        <translation>31: Beginn des Triebwachstums</translation>
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
        <translation>51: Knospenschwellen (Blütenknospen)</translation>
    </message>
    <message>
        <source>52: flower buds swollen</source>
        <translation>52: Ende des Knospenschwellens (Blütenknospen)</translation>
    </message>
    <message>
        <source>53: bud burst: green tips around the flowers seen</source>
        <translation>53: Knospenaufbruch: grüne Blattspitzen, die die Blüten umhüllen, sichtbar</translation>
    </message>
    <message>
        <source>54: mouse-ear on the flower bud</source>
        <translation>54: Mausohrstadium an der Blütenknospe</translation>
    </message>
    <message>
        <source>55: flower buds visible, still closed</source>
        <translation>55: Blütenknospen sichtbar, noch geschlossen</translation>
    </message>
    <message>
        <source>56: green bud: flowers parting, closed</source>
        <translation>56: Grünknospenstadium: einzelne Blüten trennen sich, noch geschlossen</translation>
    </message>
    <message>
        <source>57: pink bud: petals just seen</source>
        <translation>57: Rotknospenstadium: Blütenblätter gerade sichtbar</translation>
    </message>
    <message>
        <source>59: balloon: most flowers are hollow balls</source>
        <translation>59: Ballonstadium: die meisten Blüten als geschlossener Ballon</translation>
    </message>
    <message>
        <source>60: first flowers open</source>
        <translation>60: Blühbeginn: erste Blüten offen</translation>
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
        <translation>67: abgehende Blüte: die meisten Blütenblätter abgefallen</translation>
    </message>
    <message>
        <source>69: end of bloom: all petals fallen</source>
        <translation>69: Blühende: alle Blütenblätter abgefallen</translation>
    </message>
    <message>
        <source>71: fruit to 10 mm, first drop</source>
        <translation>71: Früchte bis 10 mm, Nachblütefall</translation>
    </message>
    <message>
        <source>72: fruit to 20 mm</source>
        <translation>72: Früchte bis 20 mm</translation>
    </message>
    <message>
        <source>73: second fruit drop</source>
        <translation>73: zweiter Fruchtfall (Junifall)</translation>
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
        <translation>81: Beginn der Fruchtreife: erste Ausfärbung</translation>
    </message>
    <message>
        <source>85: colour deepens</source>
        <translation>85: fortgeschrittene Fruchtreife: Ausfärbung nimmt zu</translation>
    </message>
    <message>
        <source>87: ripe for picking</source>
        <translation>87: Pflückreife</translation>
    </message>
    <message>
        <source>89: ripe for eating</source>
        <translation>89: Genussreife</translation>
    </message>
    <message>
        <source>91: shoot growth ended, leaves green</source>
        <translation>91: Triebwachstum abgeschlossen, Laub noch grün</translation>
    </message>
    <message>
        <source>92: leaves begin to turn</source>
        <translation>92: Beginn der Laubverfärbung</translation>
    </message>
    <message>
        <source>93: leaf fall begins</source>
        <translation>93: Beginn des Blattfalls</translation>
    </message>
    <message>
        <source>95: half the leaves turned or fallen</source>
        <translation>95: Hälfte der Blätter verfärbt oder abgefallen</translation>
    </message>
    <message>
        <source>97: all leaves fallen</source>
        <translation>97: Ende des Blattfalls</translation>
    </message>
    <message>
        <source>99: harvested and stored</source>
        <translation>99: Erntegut, eingelagert</translation>
    </message>
    <message>
        <source>A geo: URI, which opens on a telephone&apos;s map (RFC 5870).</source>
        <translation>Ein geo:-URI, den Mobiltelefone auf einer Karte öffnen (RFC 5870).</translation>
    </message>
    <message>
        <source>Address</source>
        <translation>Adresse</translation>
    </message>
    <message>
        <source>Anything worth keeping about this row.</source>
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
        <translation>Quartier, Reihe und Position in Worten.</translation>
    </message>
    <message>
        <source>Coefficient of kinship of the parents: the inbreeding of a seedling; unknown where no parent of either is recorded.</source>
        <translation>Verwandtschaftskoeffizient der Eltern: der Inzuchtkoeffizient eines Sämlings; leer, wenn von keinem der beiden ein Elter eingetragen ist.</translation>
    </message>
    <message>
        <source>Stratified at</source>
        <translation>Stratifiziert bei</translation>
    </message>
    <message>
        <source>Stratified from</source>
        <translation>Stratifiziert ab</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Entfernung</translation>
    </message>
    <message>
        <source>Map style</source>
        <translation>Kartenstil</translation>
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
        <source>Flowers open</source>
        <translation>Offene Blüten</translation>
    </message>
    <message>
        <source>From tags</source>
        <translation>Von Anhängern</translation>
    </message>
    <message>
        <source>From your position, clockwise from true north.</source>
        <translation>Von der eigenen Position aus, im Uhrzeigersinn von geografisch Nord.</translation>
    </message>
    <message>
        <source>From your position, horizontal.</source>
        <translation>Von der eigenen Position aus, waagerecht gemessen.</translation>
    </message>
    <message>
        <source>Fruits</source>
        <translation>Früchte</translation>
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
        <source>Maximum number of trees to show.</source>
        <translation>Höchstzahl gezeigter Bäume.</translation>
    </message>
    <message>
        <source>Quality of the match; 1 for a tree&apos;s own label.</source>
        <translation>Güte des Treffers; 1 für das Etikett des Baums selbst.</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>Latitude</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Latitude and longitude of your position, as in 48.1340,9.3010: distances and bearings are given from there, and nearer trees come first among equal matches.</source>
        <translation>Breite und Länge der eigenen Position, etwa 48.1340,9.3010: Entfernungen und Richtungen gelten von dort aus, und bei gleich guten Treffern kommen nähere Bäume zuerst.</translation>
    </message>
    <message>
        <source>Layer or map</source>
        <translation>Layer oder Karte</translation>
    </message>
    <message>
        <source>Pedigree</source>
        <translation>Abstammung</translation>
    </message>
    <message>
        <source>Longitude</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Makes an empty orchard book: a GeoPackage with every table, its value lists, aliases and descriptions, ready to be filled in with any GIS. It is styled at once: its layers have symbols, labels and forms, and a map of them is stored in it.</source>
        <translation>Legt ein leeres Zuchtbuch an: ein GeoPackage mit allen Tabellen samt Wertelisten, Aliasnamen und Beschreibungen, das sich mit jedem GIS ausfüllen lässt. Es ist sofort gestaltet: Seine Layer haben Symbole, Beschriftungen und Formulare, und eine Karte davon ist darin gespeichert.</translation>
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
        <source>Maximum number of trees</source>
        <translation>Höchstzahl Bäume</translation>
    </message>
    <message>
        <source>North of the equator, WGS 84.</source>
        <translation>Nördlich des Äquators, WGS 84.</translation>
    </message>
    <message>
        <source>Record bloom</source>
        <translation>Blüte erfassen</translation>
    </message>
    <message>
        <source>Record harvest</source>
        <translation>Ernte erfassen</translation>
    </message>
    <message>
        <source>Record pollen test</source>
        <translation>Pollenkeimtest erfassen</translation>
    </message>
    <message>
        <source>Record pollination</source>
        <translation>Bestäubung erfassen</translation>
    </message>
    <message>
        <source>Record trait score</source>
        <translation>Bonitur erfassen</translation>
    </message>
    <message>
        <source>Record seed lot</source>
        <translation>Saatgutpartie erfassen</translation>
    </message>
    <message>
        <source>Record seed withdrawal</source>
        <translation>Saatgutentnahme erfassen</translation>
    </message>
    <message>
        <source>Record germination</source>
        <translation>Keimung erfassen</translation>
    </message>
    <message>
        <source>Observer</source>
        <translation>Beobachter</translation>
    </message>
    <message>
        <source>Pass</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>Location as a link</source>
        <translation>Lage als Link</translation>
    </message>
    <message>
        <source>Pollen lot</source>
        <translation>Pollenpartie</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Position</translation>
    </message>
    <message>
        <source>Rank</source>
        <translation>Rang</translation>
    </message>
    <message>
        <source>Score</source>
        <translation>Bonitur</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Suche</translation>
    </message>
    <message>
        <source>Seed lot</source>
        <translation>Saatgutpartie</translation>
    </message>
    <message>
        <source>Seed parent × pollen parent, with their own parents where known.</source>
        <translation>Mutter × Vater, mit deren eigenen Eltern, soweit bekannt.</translation>
    </message>
    <message>
        <source>Seeds</source>
        <translation>Samen</translation>
    </message>
    <message>
        <source>Sound seeds</source>
        <translation>Volle Samen</translation>
    </message>
    <message>
        <source>Your position</source>
        <translation>Eigene Position</translation>
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
        <translation>Anhänger</translation>
    </message>
    <message>
        <source>Undo a record</source>
        <translation>Eintrag zurücknehmen</translation>
    </message>
    <message>
        <source>The accession, where no single tree was observed.</source>
        <translation>Die Akzession, wenn kein einzelner Baum beobachtet wurde.</translation>
    </message>
    <message>
        <source>Code on the vial.</source>
        <translation>Das Kürzel auf dem Röhrchen.</translation>
    </message>
    <message>
        <source>Date of the observation or of the work; the reference date where not given.</source>
        <translation>Datum der Beobachtung oder der Arbeit; ohne Angabe der Stichtag.</translation>
    </message>
    <message>
        <source>First day of stratification.</source>
        <translation>Erster Tag der Stratifikation.</translation>
    </message>
    <message>
        <source>The tree&apos;s label.</source>
        <translation>Das Etikett des Baums.</translation>
    </message>
    <message>
        <source>Number of flowers pollinated.</source>
        <translation>Zahl der bestäubten Blüten.</translation>
    </message>
    <message>
        <source>The part of the orchard.</source>
        <translation>Der Teil der Obstanlage.</translation>
    </message>
    <message>
        <source>Position in the row.</source>
        <translation>Die Position in der Reihe.</translation>
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
        <source>The trees that match, best first.</source>
        <translation>Die passenden Bäume, die besten zuerst.</translation>
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
        <source>Any part of the tree&apos;s record; left out, the trees nearest to your position are shown.</source>
        <translation>Ein beliebiger Teil der Daten des Baums; ohne Angabe werden die Bäume gezeigt, die der eigenen Position am nächsten sind.</translation>
    </message>
    <message>
        <source>Which part of its record matches, and how many letters differ.</source>
        <translation>Welcher Teil seiner Daten passt und wie viele Buchstaben abweichen.</translation>
    </message>
    <message>
        <source>Medium that the seed is in.</source>
        <translation>Substrat, in dem die Samen liegen.</translation>
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
        <source>The trait, always in the same word.</source>
        <translation>Das Merkmal, immer mit demselben Wort.</translation>
    </message>
    <message>
        <source>What was written for the desktop.</source>
        <translation>Was für die GIS-Oberfläche geschrieben wurde.</translation>
    </message>
    <message>
        <source>Standing, or removed when and why.</source>
        <translation>Ob er steht oder wann und warum er gerodet wurde.</translation>
    </message>
    <message>
        <source>Record to undo, by the name shown when it was written, such as bloom_observation/412; the last one where none is named.</source>
        <translation>Der zurückzunehmende Eintrag, mit dem beim Erfassen gezeigten Namen, etwa bloom_observation/412; ohne Angabe der letzte.</translation>
    </message>
    <message>
        <source>Observer.</source>
        <translation>Beobachter.</translation>
    </message>
    <message>
        <source>Records a lot of seed of one cross that is treated alike, on the day of its washing. It is checked against the book first: its tags must belong to its cross, and it has no more seed than their fruit.</source>
        <translation>Erfasst eine Partie einheitlich behandelter Samen einer Kreuzung am Tag des Auswaschens. Sie wird zuerst am Buch geprüft: Die Anhänger müssen zur Kreuzung gehören, und die Partie enthält nicht mehr Samen als deren Früchte.</translation>
    </message>
    <message>
        <source>Records a germination test of stored pollen: the viability of the lot is then estimated from it instead of from published figures.</source>
        <translation>Erfasst einen Keimtest von gelagertem Pollen: Die Keimfähigkeit der Partie wird danach daraus statt aus veröffentlichten Zahlen geschätzt.</translation>
    </message>
    <message>
        <source>Records a score given to a tree for one trait: taste, size, scab. It is checked against the book first: the tree must be known and standing on that day.</source>
        <translation>Erfasst die Bonitur eines Baums für ein Merkmal: Geschmack, Größe, Schorf. Sie wird zuerst am Buch geprüft: Der Baum muss bekannt sein und an diesem Tag stehen.</translation>
    </message>
    <message>
        <source>Records how many seeds of a lot have germinated so far, those withdrawn included. It is checked against the book first: the count of a lot only grows, and never beyond its seeds.</source>
        <translation>Erfasst, wie viele Samen einer Partie bisher gekeimt sind, einschließlich der entnommenen. Wird zuerst am Buch geprüft: Die Zahl einer Partie steigt nur und nie über ihre Samenzahl hinaus.</translation>
    </message>
    <message>
        <source>Records seeds withdrawn from a lot: potted, given away, rotten. It is checked against the book first: no more can be withdrawn from a lot than it had.</source>
        <translation>Erfasst Samen, die einer Partie entnommen wurden: getopft, abgegeben, verfault. Wird zuerst am Buch geprüft: Einer Partie kann nicht mehr entnommen werden, als sie hatte.</translation>
    </message>
    <message>
        <source>Records the fruit harvested from a tagged branch and, once it is cut, the seed in it. It is checked against the book first: fruit comes after its pollination, is no more than the flowers pollinated, and its seed must have had time to ripen.</source>
        <translation>Erfasst die von einem Zweig mit Anhänger geernteten Früchte und, sobald sie aufgeschnitten sind, die Samen darin. Wird zuerst am Buch geprüft: Früchte kommen nach ihrer Bestäubung, sind nicht mehr als die bestäubten Blüten, und ihre Samen müssen Zeit zum Reifen gehabt haben.</translation>
    </message>
    <message>
        <source>Records the BBCH stage of a tree, or of an accession as a whole. The observation is checked against the book first: an unknown tree, a date in the future, a stage that goes back.</source>
        <translation>Erfasst das BBCH-Stadium eines Baums oder einer Akzession als Ganzes. Die Beobachtung wird zuerst am Buch geprüft: ein unbekannter Baum, ein künftiger Tag, ein Stadium, das zurückgeht.</translation>
    </message>
    <message>
        <source>Writes the map style into the book: symbols, labels, forms and value lists for every layer, and a map of them all, stored under the name Season map. Styles that were changed since, and styles of your own, stay as they are.</source>
        <translation>Schreibt den Kartenstil ins Buch: Symbole, Beschriftungen, Formulare und Wertelisten für jeden Layer sowie eine Karte von allen, gespeichert unter dem Namen Season map. Stile, die seither geändert wurden, und eigene Stile bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>Written, unchanged, or your own: changed since and kept.</source>
        <translation>Geschrieben, unverändert oder eigene Fassung: seither geändert und behalten.</translation>
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
        <source>collect</source>
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
        <source>stored from last year</source>
        <translation>vom Vorjahr gelagert</translation>
    </message>
    <message>
        <source>stored this spring</source>
        <translation>dieses Frühjahr gelagert</translation>
    </message>
    <message>
        <source>mean date</source>
        <translation>mittleres Datum</translation>
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
        <translation>Mittel der Obstanlage</translation>
    </message>
    <message>
        <source>own observations</source>
        <translation>eigene Beobachtungen</translation>
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
        <source>d</source>
        <translation>d</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
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
        <source>seeds²</source>
        <translation>Samen²</translation>
    </message>
    <message>
        <source>0 to 1</source>
        <translation>0 bis 1</translation>
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
        <source>Length of a gap in a row, without even a removed tree, through which one can walk; 0 where no row can be crossed.</source>
        <translation>Länge einer Lücke in einer Reihe, auch ohne gerodete Bäume, durch die man gehen kann; 0, wo keine Reihe durchquert werden kann.</translation>
    </message>
    <message>
        <source>A tree&apos;s label, or the end.</source>
        <translation>Etikett eines Baums oder das Ende.</translation>
    </message>
    <message>
        <source>A tree&apos;s label, or the start.</source>
        <translation>Etikett eines Baums oder der Startpunkt.</translation>
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
        <translation>Koordinatenbezugssystem der Punkte</translation>
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
        <source>Every numbered position in the rows, and its state.</source>
        <translation>Jede nummerierte Position in den Reihen und ihr Zustand.</translation>
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
        <source>From the last stop</source>
        <translation>Vom letzten Halt</translation>
    </message>
    <message>
        <source>From the receiver&apos;s position.</source>
        <translation>Von der Position des Empfängers.</translation>
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
        <source>Offset from the position along the row, positive in the direction of numbering.</source>
        <translation>Abstand von der Position längs der Reihe, positiv in Zählrichtung.</translation>
    </message>
    <message>
        <source>Distance from the trunk at which you stand or hold the receiver, as a 68 % radius.</source>
        <translation>Abstand vom Stamm, in dem man steht oder den Empfänger hält, als 68-%-Radius.</translation>
    </message>
    <message>
        <source>Walking distance from the trunks; less where rows stand closer.</source>
        <translation>Abstand von den Stämmen beim Gehen; weniger, wo Reihen enger stehen.</translation>
    </message>
    <message>
        <source>Distance.</source>
        <translation>Entfernung.</translation>
    </message>
    <message>
        <source>Offset of the point from the row&apos;s line.</source>
        <translation>Abstand des Punkts von der Linie der Reihe.</translation>
    </message>
    <message>
        <source>Offset of the tree&apos;s point on the map from the position.</source>
        <translation>Abstand des Punkts des Baums auf der Karte von der Position.</translation>
    </message>
    <message>
        <source>Length of the walk up to here.</source>
        <translation>Länge des Rundgangs bis hierher.</translation>
    </message>
    <message>
        <source>Walking distance from the previous stop, or the start.</source>
        <translation>Gehstrecke vom vorigen Halt oder vom Startpunkt.</translation>
    </message>
    <message>
        <source>Probability that you stand there.</source>
        <translation>Wahrscheinlichkeit, dass man dort steht.</translation>
    </message>
    <message>
        <source>Probability that the answer is yes.</source>
        <translation>Wahrscheinlichkeit, dass die Antwort Ja ist.</translation>
    </message>
    <message>
        <source>Weight of a gap relative to a standing tree at the same distance.</source>
        <translation>Gewicht einer Lücke im Verhältnis zu einem stehenden Baum in gleichem Abstand.</translation>
    </message>
    <message>
        <source>Number of positions.</source>
        <translation>Zahl der Positionen.</translation>
    </message>
    <message>
        <source>Number of positions; as many as fit where not given.</source>
        <translation>Zahl der Positionen; ohne Angabe so viele, wie Platz haben.</translation>
    </message>
    <message>
        <source>Number of parallel rows, the given line being the first.</source>
        <translation>Zahl der parallelen Reihen; die angegebene Linie ist die erste.</translation>
    </message>
    <message>
        <source>Expected information of the answer.</source>
        <translation>Erwartete Information der Antwort.</translation>
    </message>
    <message>
        <source>Least probability of a number; below it the tree is left open.</source>
        <translation>Mindestwahrscheinlichkeit einer Nummer; darunter bleibt der Baum offen.</translation>
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
        <source>Latitude and longitude of your position, as in 48.1340,9.3010.</source>
        <translation>Breite und Länge der eigenen Position, wie in 48.1340,9.3010.</translation>
    </message>
    <message>
        <source>Lay rows</source>
        <translation>Reihen anlegen</translation>
    </message>
    <message>
        <source>Layer</source>
        <translation>Layer</translation>
    </message>
    <message>
        <source>Layer file</source>
        <translation>Layerdatei</translation>
    </message>
    <message>
        <source>Lays out rows with numbered positions from surveyed points or drawn lines, or a whole block from one base line; with write they are added to the book. The spacing is true on the ground to a centimetre, whatever the coordinate system. Rows that the book has are never changed. The positions of all rows, vacant, taken or reserved, are written as a layer. A layer file may have one line per row, or two or more points per row.</source>
        <translation>Legt Reihen mit nummerierten Positionen aus eingemessenen Punkten oder gezeichneten Linien an, oder ein ganzes Quartier aus einer einzigen Grundlinie; mit write kommen sie ins Buch. Der Pflanzabstand stimmt im Gelände auf einen Zentimeter, unabhängig vom Koordinatenbezugssystem. Reihen, die das Buch schon hat, werden nie geändert. Die Positionen aller Reihen, ob frei, besetzt oder vorgemerkt, werden als Layer geschrieben. Eine Layerdatei kann je Reihe eine Linie oder zwei und mehr Punkte enthalten.</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
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
        <source>Offset</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>Offset from the position</source>
        <translation>Abstand von der Position</translation>
    </message>
    <message>
        <source>Offset from the row</source>
        <translation>Abstand von der Reihe</translation>
    </message>
    <message>
        <source>On which side of the line the further rows lie, seen in its direction.</source>
        <translation>Auf welcher Seite der Linie die weiteren Reihen liegen, in Richtung der Linie gesehen.</translation>
    </message>
    <message>
        <source>Only trees with tasks of the season plan on this day.</source>
        <translation>Nur Bäume mit Aufgaben des Saisonplans an diesem Tag.</translation>
    </message>
    <message>
        <source>Only trees with tasks of the season plan of this urgency.</source>
        <translation>Nur Bäume mit Aufgaben des Saisonplans von dieser Dringlichkeit.</translation>
    </message>
    <message>
        <source>Only trees of these accessions, separated by commas.</source>
        <translation>Nur Bäume dieser Akzessionen, durch Kommas getrennt.</translation>
    </message>
    <message>
        <source>Only trees of this block.</source>
        <translation>Nur Bäume dieses Quartiers.</translation>
    </message>
    <message>
        <source>Only trees of this purpose.</source>
        <translation>Nur Bäume mit diesem Zweck.</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Reihenfolge</translation>
    </message>
    <message>
        <source>Walking order</source>
        <translation>Reihenfolge des Rundgangs</translation>
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
        <source>Positions per row</source>
        <translation>Positionen je Reihe</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation>Zweck</translation>
    </message>
    <message>
        <source>Orders trees for a short walk: along the alleys, round the ends of rows only, each tree reached from the better side. For up to twelve trees the order is the shortest; for hundreds it is close to that. Returns the trees in order and the way as lines. Nothing is written.</source>
        <translation>Bringt Bäume in die Reihenfolge eines kurzen Rundgangs: durch die Fahrgassen, nur um die Enden der Reihen herum, jeder Baum von der günstigeren Seite aus. Für bis zu zwölf Bäume ist die Reihenfolge die kürzeste; für Hunderte kommt sie dem nahe. Liefert die Bäume in dieser Reihenfolge und den Weg als Linien. Geschrieben wird nichts.</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Frage</translation>
    </message>
    <message>
        <source>Questions to identify the tree</source>
        <translation>Fragen zur Bestimmung des Baums</translation>
    </message>
    <message>
        <source>Roughly, the direction in which positions are counted, clockwise from north; the rows&apos; northern one where not given.</source>
        <translation>Ungefähr die Richtung, in der die Positionen gezählt werden, im Uhrzeigersinn ab Nord; ohne Angabe die nördliche der Reihen.</translation>
    </message>
    <message>
        <source>Row and position of each tree as found from its location on the map, with their probability.</source>
        <translation>Reihe und Position jedes Baums, wie sie aus seiner Lage auf der Karte hervorgehen, mit ihrer Wahrscheinlichkeit.</translation>
    </message>
    <message>
        <source>Row distance</source>
        <translation>Reihenabstand</translation>
    </message>
    <message>
        <source>Row positions</source>
        <translation>Reihenpositionen</translation>
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
        <source>Direction of row numbers</source>
        <translation>Zählrichtung der Reihen</translation>
    </message>
    <message>
        <source>New rows</source>
        <translation>Neue Reihen</translation>
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
        <source>Your position in the book&apos;s coordinates</source>
        <translation>Eigene Position in Koordinaten des Buchs</translation>
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
        <source>Least probability</source>
        <translation>Mindestwahrscheinlichkeit</translation>
    </message>
    <message>
        <source>Tasks on</source>
        <translation>Aufgaben am</translation>
    </message>
    <message>
        <source>Shows at which tree you stand, from a receiver&apos;s position and its accuracy: every candidate with its probability, and the question with the highest information, such as whether a tree stands at the next position of the row. Answers update the probabilities. Nothing is written.</source>
        <translation>Zeigt, an welchem Baum man steht, anhand der Position eines Empfängers und deren Genauigkeit: jeden in Frage kommenden mit seiner Wahrscheinlichkeit, dazu die aufschlussreichste Frage, etwa ob an der nächsten Position der Reihe ein Baum steht. Antworten ändern die Wahrscheinlichkeiten. Geschrieben wird nichts.</translation>
    </message>
    <message>
        <source>Probability that row and position are right.</source>
        <translation>Wahrscheinlichkeit, dass Reihe und Position stimmen.</translation>
    </message>
    <message>
        <source>The alley of the stop.</source>
        <translation>Die Fahrgasse des Halts.</translation>
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
        <translation>Das Etikett des Baums, der dort steht oder stehen soll.</translation>
    </message>
    <message>
        <source>The layer to import, where the file has several.</source>
        <translation>Der zu importierende Layer, wenn die Datei mehrere hat.</translation>
    </message>
    <message>
        <source>The layer&apos;s column with the rows&apos; names, where it is not recognised.</source>
        <translation>Die Spalte des Layers mit den Namen der Reihen, wenn sie nicht erkannt wird.</translation>
    </message>
    <message>
        <source>Most likely tree after no.</source>
        <translation>Wahrscheinlichster Baum nach Nein.</translation>
    </message>
    <message>
        <source>Most likely tree after yes.</source>
        <translation>Wahrscheinlichster Baum nach Ja.</translation>
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
        <source>Radius of 68 % probability around the position, as receivers and telephones show it.</source>
        <translation>Radius um die Position mit 68 % Wahrscheinlichkeit, wie ihn Empfänger und Telefone anzeigen.</translation>
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
        <source>The side of the row from which the tree is reached.</source>
        <translation>Die Seite der Reihe, von der aus der Baum erreicht wird.</translation>
    </message>
    <message>
        <source>The tree&apos;s label, or the point&apos;s name in its layer.</source>
        <translation>Das Etikett des Baums oder der Name des Punkts in seinem Layer.</translation>
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
        <source>Side to which the row numbers increase, seen in the direction of the positions.</source>
        <translation>Seite, nach der die Reihennummern steigen, in Richtung der Positionen gesehen.</translation>
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
        <translation>Zwei oder mehr, Ost (Länge) zuerst, wie in „522400 5331200, 522440 5331210“, oder Well-known Text; in Richtung der Zählung.</translation>
    </message>
    <message>
        <source>Walk</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>Walked</source>
        <translation>Gegangen</translation>
    </message>
    <message>
        <source>Route of the walk</source>
        <translation>Weg des Rundgangs</translation>
    </message>
    <message>
        <source>Weight of gaps</source>
        <translation>Gewicht von Lücken</translation>
    </message>
    <message>
        <source>Reason of the doubt; empty where decided.</source>
        <translation>Grund des Zweifels; leer, wo entschieden ist.</translation>
    </message>
    <message>
        <source>The tree&apos;s label; unknown at a position without a record.</source>
        <translation>Das Etikett des Baums; leer an einer Position ohne Eintrag.</translation>
    </message>
    <message>
        <source>Free length at both ends of the line, before the first position.</source>
        <translation>Freie Länge an beiden Enden der Linie, vor der ersten Position.</translation>
    </message>
    <message>
        <source>Tasks of the plan, where trees were chosen by their tasks.</source>
        <translation>Aufgaben des Plans, wenn Bäume nach ihren Aufgaben gewählt wurden.</translation>
    </message>
    <message>
        <source>What to check to identify the tree, the best question first.</source>
        <translation>Was zu prüfen ist, um den Baum zu bestimmen, die beste Frage zuerst.</translation>
    </message>
    <message>
        <source>What to check; answered by yes or no.</source>
        <translation>Was zu prüfen ist; mit Ja oder Nein zu beantworten.</translation>
    </message>
    <message>
        <source>Answers to the questions by their keys, as in tree-ahead=no; row-left=yes.</source>
        <translation>Antworten auf die Fragen mit deren Schlüsseln, wie in tree-ahead=no; row-left=yes.</translation>
    </message>
    <message>
        <source>Possible positions, the most likely first.</source>
        <translation>Mögliche Positionen, die wahrscheinlichste zuerst.</translation>
    </message>
    <message>
        <source>Where the counting of a row begins.</source>
        <translation>Wo die Zählung einer Reihe beginnt.</translation>
    </message>
    <message>
        <source>Start of the walk: latitude and longitude, as in 48.1340,9.3010, or a tree&apos;s label; wherever is best where left out.</source>
        <translation>Startpunkt des Rundgangs: Breite und Länge, wie in 48.1340,9.3010, oder das Etikett eines Baums; ohne Angabe, wo es am günstigsten ist.</translation>
    </message>
    <message>
        <source>End of the walk, written like the start; at its last tree where left out.</source>
        <translation>Ende des Rundgangs, geschrieben wie der Startpunkt; ohne Angabe an seinem letzten Baum.</translation>
    </message>
    <message>
        <source>Whether a block that the book does not have is added, as a rectangle around its rows.</source>
        <translation>Ob ein Quartier, das das Buch nicht hat, angelegt wird, als Rechteck um seine Reihen.</translation>
    </message>
    <message>
        <source>Whether a tree stands there, or when and why it was removed.</source>
        <translation>Ob dort ein Baum steht, oder wann und warum er gerodet wurde.</translation>
    </message>
    <message>
        <source>Whether every second row is numbered from the other end.</source>
        <translation>Ob jede zweite Reihe vom anderen Ende aus nummeriert wird.</translation>
    </message>
    <message>
        <source>Whether rows block the way; no for trees without wires or hedges between them.</source>
        <translation>Ob Reihen den Weg versperren; nein für Bäume ohne Drähte oder Hecken dazwischen.</translation>
    </message>
    <message>
        <source>Whether that is certain enough to be numbered.</source>
        <translation>Ob das für eine Nummer sicher genug ist.</translation>
    </message>
    <message>
        <source>Whether the walk ends where it began.</source>
        <translation>Ob der Rundgang dort endet, wo er begonnen hat.</translation>
    </message>
    <message>
        <source>Tree at this position</source>
        <translation>Baum an dieser Position</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Information</source>
        <translation>Information</translation>
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
        <source>°</source>
        <translation>°</translation>
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
        <source>of a tree&apos;s weight</source>
        <translation>vom Gewicht eines Baums</translation>
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
        <source>1 accession forecast</source>
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
        <source>1 observation</source>
        <translation>1 Beobachtung</translation>
    </message>
    <message>
        <source>1 observation of this season is not used in the fit: its weather is not complete yet.</source>
        <translation>1 Beobachtung dieser Saison bleibt bei der Anpassung außer Acht: Das Wetter der Saison ist noch nicht vollständig.</translation>
    </message>
    <message>
        <source>1 observation of this season is not used in the fit: its weather is not complete.</source>
        <translation>1 Beobachtung dieser Saison bleibt bei der Anpassung außer Acht: Das Wetter der Saison ist nicht vollständig.</translation>
    </message>
    <message>
        <source>1 past season</source>
        <translation>1 vergangenen Saison</translation>
    </message>
    <message>
        <source>1 pollen task, the first by {}.</source>
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
        <source>1 tree, {:.0f} m walk</source>
        <translation>1 Baum, {} m Rundgang</translation>
    </message>
    <message>
        <source>1 warning</source>
        <translation>1 Warnung</translation>
    </message>
    <message>
        <source>80 % interval</source>
        <translation>80-%-Intervall</translation>
    </message>
    <message>
        <source>80 % prediction interval (8 springs in 10) {} to {}</source>
        <translation>80-%-Vorhersageintervall (8 von 10 Frühjahren) {} bis {}</translation>
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
        <source>A day in the future of {} cannot have been observed.</source>
        <translation>Ein Tag nach dem {} kann noch nicht beobachtet worden sein.</translation>
    </message>
    <message>
        <source>An estimate: no bloom observations of {}.</source>
        <translation>Eine Schätzung: Es fehlen Blühbeobachtungen von {}.</translation>
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
        <source>A test in which no grains were counted shows nothing.</source>
        <translation>Eine Prüfung, bei der keine Körner gezählt wurden, sagt nichts.</translation>
    </message>
    <message>
        <source>A tripod on firm ground, never the top steps, three points of contact, the pollen kit not in the climbing hand. Stay down in wind and near wires.</source>
        <translation>Eine dreibeinige Leiter auf festem Boden, nie die obersten Stufen, immer drei Kontaktpunkte, das Bestäubungszeug nicht in der Hand, die beim Steigen hält. Bei Wind und nahe an Leitungen unten bleiben.</translation>
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
        <source>Add a station with its location and elevation.</source>
        <translation>Eine Station mit Lage und Höhe hinzufügen.</translation>
    </message>
    <message>
        <source>Add bloom observations (stage 51 to 69) of past springs and the station&apos;s days of those springs.</source>
        <translation>Blühbeobachtungen (Stadium 51 bis 69) vergangener Frühjahre und die Tage der Station aus diesen Frühjahren hinzufügen.</translation>
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
        <source>Add the station first, with its location and elevation.</source>
        <translation>Zuerst die Station mit Lage und Höhe hinzufügen.</translation>
    </message>
    <message>
        <source>Add the station or correct the name.</source>
        <translation>Die Station hinzufügen oder den Namen berichtigen.</translation>
    </message>
    <message>
        <source>Add the station&apos;s days from 1 October (in the south 1 April) to the end of bloom.</source>
        <translation>Die Tage der Station vom 1. Oktober (im Süden 1. April) bis zum Blühende hinzufügen.</translation>
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
        <source>Add them; docs/book.md lists their types.</source>
        <translation>Hinzufügen; docs/book.md nennt ihre Typen.</translation>
    </message>
    <message>
        <source>After {} the risk of being too late is above {}.</source>
        <translation>Nach {} liegt das Risiko, zu spät zu kommen, über {}.</translation>
    </message>
    <message>
        <source>All flowers are pollinated already ({}).</source>
        <translation>Alle Blüten sind schon bestäubt ({}).</translation>
    </message>
    <message>
        <source>Allergy.</source>
        <translation>Allergie.</translation>
    </message>
    <message>
        <source>An accession is its own ancestor: each is recorded as an offspring of the next.</source>
        <translation>Eine Akzession ist ihr eigener Vorfahr: Jede ist als Nachkomme der nächsten eingetragen.</translation>
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
        <translation>Stichtag {} · {}</translation>
    </message>
    <message>
        <source>Check: {} So far {}</source>
        <translation>Zu prüfen: {} Bisher {}</translation>
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
        <source>Bag closed clusters before the first flower opens (not before {} in 9 springs in 10).</source>
        <translation>Geschlossene Blütenbüschel eintüten, bevor sich die erste Blüte öffnet (in 9 von 10 Frühjahren nicht vor {}).</translation>
    </message>
    <message>
        <source>Bag the blossom of {}</source>
        <translation>Die Blüten von {} eintüten</translation>
    </message>
    <message>
        <source>The balloon stage of {} has been over since about {}.</source>
        <translation>Das Ballonstadium von {} ist seit etwa {} vorbei.</translation>
    </message>
    <message>
        <source>The balloon stage of {} is over this spring: no pollen can be stored for {}.</source>
        <translation>Das Ballonstadium von {} ist in diesem Frühjahr vorbei: Für {} lässt sich kein Pollen mehr lagern.</translation>
    </message>
    <message>
        <source>Best way and probability</source>
        <translation>Bester Weg und Wahrscheinlichkeit</translation>
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
        <translation>Blühende</translation>
    </message>
    <message>
        <source>Bloom observation</source>
        <translation>Blühbeobachtung</translation>
    </message>
    <message>
        <source>Bloom observations</source>
        <translation>Blühbeobachtungen</translation>
    </message>
    <message>
        <source>Bloom observations of one season only.</source>
        <translation>Blühbeobachtungen aus nur einer Saison.</translation>
    </message>
    <message>
        <source>The prediction intervals stay wide; record bloom each spring and they will narrow.</source>
        <translation>Die Vorhersageintervalle bleiben weit; mit Beobachtungen aus jedem Frühjahr werden sie enger.</translation>
    </message>
    <message>
        <source>Bloom {}, forecast of {}</source>
        <translation>Blüte {}, Vorhersage vom {}</translation>
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
        <source>Budwood, and in places pollen and seed, can carry disease and may need a permit, a health certificate or quarantine. Record donor, date and permit of everything received.</source>
        <translation>Edelreiser, stellenweise auch Pollen und Samen, können Krankheiten tragen und eine Genehmigung, ein Gesundheitszeugnis oder Quarantäne brauchen. Zu allem, was hereinkommt, Herkunft, Datum und Genehmigung festhalten.</translation>
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
        <source>All members of the blend have a share of zero.</source>
        <translation>Alle Bestandteile der Mischung haben den Anteil null.</translation>
    </message>
    <message>
        <source>Calendar year of the bloom.</source>
        <translation>Kalenderjahr der Blüte.</translation>
    </message>
    <message>
        <source>Check host, port, database name, user and password, and that PostGIS is there.</source>
        <translation>Rechner, Port, Datenbankname, Benutzer und Passwort prüfen, und ob PostGIS vorhanden ist.</translation>
    </message>
    <message>
        <source>Check its temperatures: perhaps they are in degrees Fahrenheit or of another place; then import them again.</source>
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
        <translation>Datum und Stadium prüfen; eine zweite Blüte im Herbst lässt man besser weg.</translation>
    </message>
    <message>
        <source>Check the date and the stage; the observation is not used.</source>
        <translation>Datum und Stadium prüfen; die Beobachtung wird nicht verwendet.</translation>
    </message>
    <message>
        <source>Check the date, the stage and the tree.</source>
        <translation>Datum, Stadium und Baum prüfen.</translation>
    </message>
    <message>
        <source>Check the date, the stage and the tree; until then the observation has little weight in the fit.</source>
        <translation>Datum, Stadium und Baum prüfen; bis dahin hat die Beobachtung in der Anpassung wenig Gewicht.</translation>
    </message>
    <message>
        <source>Check the date.</source>
        <translation>Das Datum prüfen.</translation>
    </message>
    <message>
        <source>Check the dates, the stages and the tree of both observations.</source>
        <translation>Daten, Stadien und Baum beider Beobachtungen prüfen.</translation>
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
        <source>Check the number of its position, its location on the map, and the row&apos;s line.</source>
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
        <source>Chill requirement</source>
        <translation>Kältebedarf</translation>
    </message>
    <message>
        <source>Choose a block, an accession or fewer labels.</source>
        <translation>Ein Quartier, eine Akzession oder weniger Etiketten wählen.</translation>
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
        <translation>Die Kürzel gehen von {} bis {}, mit Lücken; die nächsten sind {} und {}.</translation>
    </message>
    <message>
        <source>Codes run from {} to {}, with gaps; the nearest is {}.</source>
        <translation>Die Kürzel gehen von {} bis {}, mit Lücken; das nächste ist {}.</translation>
    </message>
    <message>
        <source>Stratified to</source>
        <translation>Stratifiziert bis</translation>
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
        <translation>Eine Position berichtigen oder beim älteren Baum das Datum der Rodung eintragen.</translation>
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
        <source>Count again, or record the fruit first.</source>
        <translation>Neu zählen oder zuerst die Früchte erfassen.</translation>
    </message>
    <message>
        <source>Count again.</source>
        <translation>Neu zählen.</translation>
    </message>
    <message>
        <source>Count all seeds germinated so far, with one count per day.</source>
        <translation>Alle bisher gekeimten Samen zählen, mit einer Zählung je Tag.</translation>
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
        <source>Summing chill and heat</source>
        <translation>Kälte und Wärme werden summiert</translation>
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
        <source>Cut a branch of {} for forcing</source>
        <translation>Einen Zweig von {} zum Treiben schneiden</translation>
    </message>
    <message>
        <source>Cut branches from {} to {} and force them in water at about 20 °C: about {} until the anthers open, then {} of drying. Yields pollen in about {} of cases.</source>
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
        <source>Date of harvest.</source>
        <translation>Datum der Ernte.</translation>
    </message>
    <message>
        <source>Date of the count.</source>
        <translation>Datum der Zählung.</translation>
    </message>
    <message>
        <source>Date of observation.</source>
        <translation>Datum der Beobachtung.</translation>
    </message>
    <message>
        <source>Date of the score.</source>
        <translation>Datum der Bonitur.</translation>
    </message>
    <message>
        <source>Date of the test.</source>
        <translation>Datum der Prüfung.</translation>
    </message>
    <message>
        <source>Date of the pollination.</source>
        <translation>Datum der Bestäubung.</translation>
    </message>
    <message>
        <source>Date on which the flowers were collected.</source>
        <translation>Datum, an dem die Blüten gesammelt wurden.</translation>
    </message>
    <message>
        <source>Date of the withdrawal.</source>
        <translation>Datum der Entnahme.</translation>
    </message>
    <message>
        <source>Days are written {}, {}.</source>
        <translation>Tage sind geschrieben als {}, {}.</translation>
    </message>
    <message>
        <source>Dates of {} are approximate, from the bloom order of {}.</source>
        <translation>Daten für {} sind ungefähr, nach der Blühfolge von {}.</translation>
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
        <source>To do now</source>
        <translation>Jetzt zu tun</translation>
    </message>
    <message>
        <source>Does a tree stand at the next position of this row to the {}?</source>
        <translation>Steht an der nächsten Position dieser Reihe, {} von hier, ein Baum?</translation>
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
        <source>Draw it again.</source>
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
        <source>Styling its layers</source>
        <translation>Layer werden gestaltet</translation>
    </message>
    <message>
        <source>Writing the map style</source>
        <translation>Der Kartenstil wird geschrieben</translation>
    </message>
    <message>
        <source>Dried pollen of {} is available about {} after the last receptive flower of {} ({}).</source>
        <translation>Getrockneter Pollen von {} ist erst etwa {} nach der letzten empfängnisfähigen Blüte von {} verfügbar ({}).</translation>
    </message>
    <message>
        <source>Dry for a day or two and use within three days.</source>
        <translation>Ein bis zwei Tage trocknen und innerhalb von drei Tagen verwenden.</translation>
    </message>
    <message>
        <source>Dry for a day or two, store in {} until {}, for {}.</source>
        <translation>Ein bis zwei Tage trocknen, {} bis {} lagern, für {}.</translation>
    </message>
    <message>
        <source>Dry for a day or two, store in {} until {}.</source>
        <translation>Ein bis zwei Tage trocknen, {} bis {} lagern.</translation>
    </message>
    <message>
        <source>Easting and northing are swapped: the other way round it lies among the book&apos;s locations.</source>
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
        <source>Restore it from a backup, or remove it and make a book with book-new.</source>
        <translation>Aus einer Sicherung wiederherstellen, oder entfernen und mit book-new ein Buch anlegen.</translation>
    </message>
    <message>
        <source>Get the file again.</source>
        <translation>Die Datei erneut beschaffen.</translation>
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
        <source>Fill it in, or restore its rows from a backup.</source>
        <translation>Ausfüllen oder die Zeilen aus einer Sicherung wiederherstellen.</translation>
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
        <translation>Blühbeginn</translation>
    </message>
    <message>
        <source>First flowers may be open since {}: bag only clusters that are still closed.</source>
        <translation>Erste Blüten können seit {} offen sein: Nur noch geschlossene Blütenbüschel eintüten.</translation>
    </message>
    <message>
        <source>Fitting the requirements</source>
        <translation>Der Bedarf wird ermittelt</translation>
    </message>
    <message>
        <source>Flowers of {} have not been receptive since about {}.</source>
        <translation>Blüten von {} sind seit etwa {} nicht mehr empfängnisfähig.</translation>
    </message>
    <message>
        <source>Flowers are receptive from about {} to {}: medians, still too uncertain for a safe day.</source>
        <translation>Blüten sind etwa von {} bis {} empfängnisfähig: Mediane, noch zu unsicher für einen sicheren Tag.</translation>
    </message>
    <message>
        <source>Flowers are receptive from about {}; after {} the risk of being too late is above {}.</source>
        <translation>Blüten sind etwa ab {} empfängnisfähig; nach {} liegt das Risiko, zu spät zu kommen, über {}.</translation>
    </message>
    <message>
        <source>Forecasting past seasons</source>
        <translation>Vergangene Saisons werden vorhergesagt</translation>
    </message>
    <message>
        <source>Forecasting this season</source>
        <translation>Diese Saison wird vorhergesagt</translation>
    </message>
    <message>
        <source>Issued 1 day before bloom, forecasts of past seasons were within 3 days in {} and within 5 days in {}; the mean error was {:.1f} days.</source>
        <translation>1 Tag vor der Blüte ausgegeben, lagen Vorhersagen vergangener Saisons in {} auf 3 Tage und in {} auf 5 Tage richtig; der mittlere Fehler war {} Tage.</translation>
    </message>
    <message>
        <source>Issued {} days before bloom, forecasts of past seasons were within 3 days in {} and within 5 days in {}; the mean error was {:.1f} days.</source>
        <translation>{} Tage vor der Blüte ausgegeben, lagen Vorhersagen vergangener Saisons in {} auf 3 Tage und in {} auf 5 Tage richtig; der mittlere Fehler war {} Tage.</translation>
    </message>
    <message>
        <source>Fresh pollen of {} ends about {} before the first flower of {} is receptive ({}): it must be stored.</source>
        <translation>Frischer Pollen von {} endet etwa {}, bevor die erste Blüte von {} empfängnisfähig ist ({}): Er muss gelagert werden.</translation>
    </message>
    <message>
        <source>Fresh pollen of {} is available about {} to {}; {} is receptive about {} to {}.</source>
        <translation>Frischer Pollen von {} ist etwa von {} bis {} verfügbar; {} ist etwa von {} bis {} empfängnisfähig.</translation>
    </message>
    <message>
        <source>Fri</source>
        <translation>Fr</translation>
    </message>
    <message>
        <source>From its own observations. Box: 80 % prediction interval of full bloom (8 springs in 10); tick: its median; thin line: first bloom to end of bloom, medians.</source>
        <translation>Nach eigenen Beobachtungen. Kasten: 80-%-Vorhersageintervall der Vollblüte (8 von 10 Frühjahren); Strich: ihr Median; dünne Linie: Blühbeginn bis Blühende, Mediane.</translation>
    </message>
    <message>
        <source>From {} to {} at {}: {:.1f} chill portions, {:.0f} growing degree hours.</source>
        <translation>Von {} bis {} an der Station {}: {} Kälteportionen, {} Wachstumsgradstunden.</translation>
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
        <source>Full bloom is over by the model (since {}) but no observation of this spring says so.</source>
        <translation>Nach dem Modell ist die Vollblüte vorbei (seit {}), aber keine Beobachtung dieses Frühjahrs sagt es.</translation>
    </message>
    <message>
        <source>Collect at balloon stage by {}, dry for a day or two, store in {} until {}: about {} should germinate then.</source>
        <translation>Im Ballonstadium bis {} sammeln, ein bis zwei Tage trocknen, {} bis {} lagern: Dann sollten etwa {} keimen.</translation>
    </message>
    <message>
        <source>Collect at balloon stage by {}, dry for a day or two, use within {} of collecting.</source>
        <translation>Im Ballonstadium bis {} sammeln, ein bis zwei Tage trocknen, höchstens {} nach dem Sammeln verwenden.</translation>
    </message>
    <message>
        <source>Collect balloon-stage flowers of {}</source>
        <translation>Blüten im Ballonstadium sammeln von {}</translation>
    </message>
    <message>
        <source>Collect pollen</source>
        <translation>Pollen sammeln</translation>
    </message>
    <message>
        <source>Collect pollen of {} by {} this spring and freeze it: the cross can then be made next year.</source>
        <translation>Pollen von {} in diesem Frühjahr bis {} sammeln und einfrieren: Dann ist die Kreuzung im nächsten Jahr möglich.</translation>
    </message>
    <message>
        <source>Collect this spring by {}, dry for a day or two, freeze: about {} should germinate in {}.</source>
        <translation>In diesem Frühjahr bis {} sammeln, ein bis zwei Tage trocknen, einfrieren: Etwa {} sollten {} keimen.</translation>
    </message>
    <message>
        <source>Collected on</source>
        <translation>Gesammelt am</translation>
    </message>
    <message>
        <source>Collecting names</source>
        <translation>Namen werden gesammelt</translation>
    </message>
    <message>
        <source>Give 24 hourly readings for each day.</source>
        <translation>Für jeden Tag 24 Stundenwerte angeben.</translation>
    </message>
    <message>
        <source>Give a base below the upper threshold.</source>
        <translation>Eine Basistemperatur unter der oberen Schwelle angeben.</translation>
    </message>
    <message>
        <source>Give a first row that ends in a number, as in 1 or B01.</source>
        <translation>Eine erste Reihe angeben, die auf eine Zahl endet, wie in 1 oder B01.</translation>
    </message>
    <message>
        <source>Give a header line and one line per day.</source>
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
        <source>Give a position in the orchard or at its gate.</source>
        <translation>Eine Position in der Obstanlage oder an ihrem Tor angeben.</translation>
    </message>
    <message>
        <source>Give a part of the tree&apos;s record with search, or a position with at.</source>
        <translation>Mit search einen Teil der Daten des Baums oder mit at eine Position angeben.</translation>
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
        <source>Give each day&apos;s minimum and maximum, one line per day.</source>
        <translation>Das Minimum und Maximum jedes Tages angeben, eine Zeile je Tag.</translation>
    </message>
    <message>
        <source>Give each row a name of its own within its block.</source>
        <translation>Jeder Reihe innerhalb ihres Quartiers einen eigenen Namen geben.</translation>
    </message>
    <message>
        <source>Give either at, as in 48.1340,9.3010, or at-grid, as in 522341.5,5331497.</source>
        <translation>Entweder at angeben, wie in 48.1340,9.3010, oder at-grid, wie in 522341.5,5331497.</translation>
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
        <source>Give it a point: day length depends on its latitude.</source>
        <translation>Einen Punkt geben: Von seiner Breite hängt die Tageslänge ab.</translation>
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
        <source>Give its points in the order of the row.</source>
        <translation>Die Punkte in der Reihenfolge der Reihe angeben.</translation>
    </message>
    <message>
        <source>Give labels with trees, or choose by accessions, block, purpose, tasks-on or urgency.</source>
        <translation>Mit trees Etiketten angeben oder nach accessions, block, purpose, tasks-on oder urgency wählen.</translation>
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
        <source>Give the accession that was observed; the observation is not used.</source>
        <translation>Die beobachtete Akzession angeben; die Beobachtung wird nicht verwendet.</translation>
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
        <translation>Die Punkte der Reihe oder eine Layerdatei mit Linien oder Punkten angeben.</translation>
    </message>
    <message>
        <source>Give the spacing, measure the trees more exactly, or lay the rows with row-lay first.</source>
        <translation>Den Pflanzabstand angeben, die Bäume genauer einmessen oder zuerst die Reihen mit row-lay anlegen.</translation>
    </message>
    <message>
        <source>Give two or more points at different locations.</source>
        <translation>Zwei oder mehr Punkte an verschiedenen Orten angeben.</translation>
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
        <source>Semi-compatible: the style accepts {} of the pollen, so bring more.</source>
        <translation>Halb verträglich (semikompatibel): Der Griffel nimmt {} des Pollens an, also mehr davon mitbringen.</translation>
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
        <source>Matched with the block&apos;s rows in the book; the points deviate by about {:.2f} m across and {:.2f} m along.</source>
        <translation>Den Reihen des Quartiers im Buch zugeordnet; die Punkte weichen etwa {} m quer und {} m längs ab.</translation>
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
        <source>Number of seedlings wanted.</source>
        <translation>Zahl der gewünschten Sämlinge.</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Wie viel</translation>
    </message>
    <message>
        <source>Certainty</source>
        <translation>Sicherheit</translation>
    </message>
    <message>
        <source>Certainty of the forecast</source>
        <translation>Sicherheit der Vorhersage</translation>
    </message>
    <message>
        <source>Forecast skill in past seasons was not measured for this sheet.</source>
        <translation>Die Güte der Vorhersage in vergangenen Saisons wurde für dieses Blatt nicht gemessen.</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>If it is damaged, restore it from a backup.</source>
        <translation>Wenn sie beschädigt ist, aus einer Sicherung wiederherstellen.</translation>
    </message>
    <message>
        <source>If the file is damaged, restore it from a backup.</source>
        <translation>Wenn die Datei beschädigt ist, aus einer Sicherung wiederherstellen.</translation>
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
        <translation>Die Temperaturen der Station ab {} mit weather-import importieren oder einen Stichtag (as-of) innerhalb der Tage des Buchs angeben.</translation>
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
        <source>In {} of the calculated springs it is too cold for seed set.</source>
        <translation>In {} der berechneten Frühjahre ist es für den Samenansatz zu kalt.</translation>
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
        <source>It has no location on the map to be numbered by.</source>
        <translation>Er hat keine Lage auf der Karte, nach der er zu nummerieren wäre.</translation>
    </message>
    <message>
        <source>It has no location on the map, or one that cannot be read.</source>
        <translation>Es fehlt die Lage auf der Karte, oder sie ist nicht lesbar.</translation>
    </message>
    <message>
        <source>It has no location on the map.</source>
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
        <source>The accession of this tree is not known, so its bloom cannot be forecast.</source>
        <translation>Die Akzession dieses Baums ist nicht bekannt, daher lässt sich seine Blüte nicht vorhersagen.</translation>
    </message>
    <message>
        <source>It lies {:.0f} km from everything else in the book.</source>
        <translation>Es liegt {} km von allem anderen im Buch entfernt.</translation>
    </message>
    <message>
        <source>It has none.</source>
        <translation>Es hat keinen.</translation>
    </message>
    <message>
        <source>It is enough for {} of {} flowers; the rest by the way &quot;{}&quot;.</source>
        <translation>Sie reicht für {} von {} Blüten; die übrigen auf dem Weg „{}“.</translation>
    </message>
    <message>
        <source>It is enough for {} of {} flowers; the rest cannot be obtained in another way.</source>
        <translation>Sie reicht für {} von {} Blüten; für die übrigen gibt es keinen anderen Weg.</translation>
    </message>
    <message>
        <source>It was changed since it was written and counts as yours; it was kept.</source>
        <translation>Er wurde seit dem Schreiben geändert und gilt als eigener; er blieb unverändert.</translation>
    </message>
    <message>
        <source>It was left out.</source>
        <translation>Es wurde weggelassen.</translation>
    </message>
    <message>
        <source>Its 80 % interval contained the day in {} (80 would be exact).</source>
        <translation>Sein 80-%-Intervall enthielt den Tag in {} (80 wären genau richtig).</translation>
    </message>
    <message>
        <source>Its columns are: {}.</source>
        <translation>Vorhandene Spalten: {}.</translation>
    </message>
    <message>
        <source>Its number is left open: {}.</source>
        <translation>Seine Nummer bleibt offen: {}.</translation>
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
        <source>Store in</source>
        <translation>Lagern in</translation>
    </message>
    <message>
        <source>Keep one of the two.</source>
        <translation>Eines der beiden behalten.</translation>
    </message>
    <message>
        <source>Keep the right one of the two, or name the column of the stations (option station-column).</source>
        <translation>Das Richtige der beiden behalten oder die Spalte der Stationen nennen (Option station-column).</translation>
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
        <source>Latitude and longitude are swapped: the other way round it lies among the book&apos;s locations.</source>
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
        <source>Leave station-in-file out, or name the column with the option station-column.</source>
        <translation>station-in-file weglassen oder mit der Option station-column die Spalte nennen.</translation>
    </message>
    <message>
        <source>Store the fruit until its seeds are brown, or correct the date.</source>
        <translation>Die Früchte lagern, bis die Samen braun sind, oder das Datum berichtigen.</translation>
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
        <source>Check, and undo the wrong record.</source>
        <translation>Nachsehen und den falschen Eintrag zurücknehmen.</translation>
    </message>
    <message>
        <source>Check it in a GIS and remove it there, if it is wrong.</source>
        <translation>Im GIS prüfen und dort entfernen, wenn sie falsch ist.</translation>
    </message>
    <message>
        <source>Check it in the field and fill in its row and position, or survey it again.</source>
        <translation>Im Feld prüfen und Reihe und Position eintragen oder den Baum neu einmessen.</translation>
    </message>
    <message>
        <source>Search for it with tree-find.</source>
        <translation>Mit tree-find danach suchen.</translation>
    </message>
    <message>
        <source>Searching</source>
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
        <source>Lot {}, collected {}, in {}: about {} should germinate on {} (never tested).</source>
        <translation>Partie {}, gesammelt {}, gelagert {}: Etwa {} sollten am {} keimen (nie geprüft).</translation>
    </message>
    <message>
        <source>Lot {}, collected {}, in {}: about {} should germinate on {} (tested {}).</source>
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
        <source>Made the empty book {} in {}. Fill in its trees, accessions, station and bloom observations in any GIS, then import the weather.</source>
        <translation>Das leere Buch {} wurde in {} angelegt. Jetzt in einem GIS Bäume, Akzessionen, Station und Blühbeobachtungen eintragen, dann das Wetter importieren.</translation>
    </message>
    <message>
        <source>Make a book with book-new and copy these layers into its tables.</source>
        <translation>Mit book-new ein Buch anlegen und diese Layer in seine Tabellen kopieren.</translation>
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
        <source>Observed or forecast.</source>
        <translation>Gemessen oder vorhergesagt.</translation>
    </message>
    <message>
        <source>Medians; full bloom with its 80 % prediction interval (8 springs in 10)</source>
        <translation>Mediane; Vollblüte mit 80-%-Vorhersageintervall (8 von 10 Frühjahren)</translation>
    </message>
    <message>
        <source>Member</source>
        <translation>Bestandteil</translation>
    </message>
    <message>
        <source>Correct the lines named first, then read the file again.</source>
        <translation>Zuerst die genannten Zeilen berichtigen, dann die Datei erneut lesen.</translation>
    </message>
    <message>
        <source>Method: {}. Each of {} was left out in turn and forecast from the others ({}):</source>
        <translation>Verfahren: {}. Jede der {} wurde der Reihe nach ausgelassen und aus den anderen vorhergesagt ({}):</translation>
    </message>
    <message>
        <source>Mon</source>
        <translation>Mo</translation>
    </message>
    <message>
        <source>More fruits were harvested than the {} flowers pollinated.</source>
        <translation>Es wurden mehr Früchte geerntet als die {} bestäubten Blüten.</translation>
    </message>
    <message>
        <source>More grains germinated than the {} counted.</source>
        <translation>Es keimten mehr Körner als die {} gezählten.</translation>
    </message>
    <message>
        <source>More seeds were withdrawn than the {} of the lot.</source>
        <translation>Es wurden mehr Samen entnommen als die {} der Partie.</translation>
    </message>
    <message>
        <source>More seeds germinated than the {} of lot {}.</source>
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
        <translation>Einen Layer mit Linien oder Punkten nennen.</translation>
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
        <source>Name of the accession, as on labels.</source>
        <translation>Name der Akzession, wie auf Etiketten.</translation>
    </message>
    <message>
        <source>Name of the blend.</source>
        <translation>Name der Pollenmischung.</translation>
    </message>
    <message>
        <source>Name of the block, as it is called.</source>
        <translation>Name des Quartiers, wie es genannt wird.</translation>
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
        <source>Name the .gpkg file of the book, or restore it from a backup.</source>
        <translation>Die .gpkg-Datei des Buchs nennen oder aus einer Sicherung wiederherstellen.</translation>
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
        <source>Name them with the options t-min-column and t-max-column.</source>
        <translation>Mit den Optionen t-min-column und t-max-column nennen.</translation>
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
        <source>No bloom observations of its own or of its parents: forecast at the orchard&apos;s mean.</source>
        <translation>Keine eigenen Blühbeobachtungen und keine der Eltern: vorhergesagt nach dem Mittel der Obstanlage.</translation>
    </message>
    <message>
        <source>No bloom observations of its own: forecast between its one known parent and the orchard&apos;s mean.</source>
        <translation>Keine eigenen Blühbeobachtungen: vorhergesagt zwischen dem einen bekannten Elter und dem Mittel der Obstanlage.</translation>
    </message>
    <message>
        <source>No bloom observations of its own: forecast between its parents.</source>
        <translation>Keine eigenen Blühbeobachtungen: vorhergesagt zwischen den Eltern.</translation>
    </message>
    <message>
        <source>No bloom window could be forecast. It needs trees with an accession, weather and at least one bloom observation.</source>
        <translation>Es ließ sich kein Blühfenster vorhersagen. Dafür braucht es Bäume mit Akzession, Wetter und mindestens eine Blühbeobachtung.</translation>
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
        <source>No regular rows can be detected among the trees.</source>
        <translation>Zwischen den Bäumen sind keine gleichmäßigen Reihen zu erkennen.</translation>
    </message>
    <message>
        <source>No regular spacing can be detected along the rows.</source>
        <translation>Längs der Reihen ist kein gleichmäßiger Pflanzabstand zu erkennen.</translation>
    </message>
    <message>
        <source>No flowers were pollinated.</source>
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
        <translation>Das Buch hat keinen lebenden Baum der Mutter.</translation>
    </message>
    <message>
        <source>No lot of {} from an earlier year in stock on {}.</source>
        <translation>Keine Partie von {} aus einem früheren Jahr vorhanden, Stichtag {}.</translation>
    </message>
    <message>
        <source>No method was chosen: too few seasons could be scored.</source>
        <translation>Es wurde kein Verfahren gewählt: Zu wenige Saisons ließen sich bewerten.</translation>
    </message>
    <message>
        <source>No orchard&apos;s air is this cold or hot; the day is left out.</source>
        <translation>So kalt oder heiß ist die Luft in keiner Obstanlage; der Tag wird ausgelassen.</translation>
    </message>
    <message>
        <source>No past season is complete, so nothing can replace the days to come.</source>
        <translation>Keine vergangene Saison ist vollständig, daher lassen sich die kommenden Tage nicht ersetzen.</translation>
    </message>
    <message>
        <source>No pollen needs to be collected, forced or tested.</source>
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
        <source>There is no tree near this position.</source>
        <translation>In der Nähe dieser Position steht kein Baum.</translation>
    </message>
    <message>
        <source>No tree is within the accuracy: the most likely is {:.1f} m away.</source>
        <translation>Kein Baum liegt innerhalb der Genauigkeit: Der wahrscheinlichste ist {} m entfernt.</translation>
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
        <source>No usable bloom observations ({}): their bloom is forecast at the orchard&apos;s mean.</source>
        <translation>Keine brauchbaren Blühbeobachtungen ({}): Die Blüte wird nach dem Mittel der Obstanlage vorhergesagt.</translation>
    </message>
    <message>
        <source>No usable bloom observations ({}): their bloom is forecast between their one known parent&apos;s and the orchard&apos;s mean.</source>
        <translation>Keine brauchbaren Blühbeobachtungen ({}): Die Blüte wird zwischen der des einen bekannten Elters und dem Mittel der Obstanlage vorhergesagt.</translation>
    </message>
    <message>
        <source>No usable bloom observations ({}): their bloom is forecast between their parents&apos;.</source>
        <translation>Keine brauchbaren Blühbeobachtungen ({}): Die Blüte wird zwischen der der Eltern vorhergesagt.</translation>
    </message>
    <message>
        <source>No way round the rows leads there from the stop before it: the line goes straight.</source>
        <translation>Kein Weg um die Reihen führt vom vorigen Halt dorthin: Die Linie geht geradeaus.</translation>
    </message>
    <message>
        <source>No work is due at the seed parents.</source>
        <translation>An den Mutterbäumen steht keine Arbeit an.</translation>
    </message>
    <message>
        <source>Not needed: pollen comes in time without forcing.</source>
        <translation>Nicht nötig: Der Pollen kommt auch ohne Treiben rechtzeitig.</translation>
    </message>
    <message>
        <source>Not shown: one accession without bloom observations of its own and without a role in a wanted cross. The book&apos;s layer of bloom windows has it.</source>
        <translation>Nicht gezeigt: eine Akzession ohne eigene Blühbeobachtungen und ohne Rolle in einer gewünschten Kreuzung. Der Layer der Blühfenster im Buch enthält sie.</translation>
    </message>
    <message>
        <source>Not shown: {} accessions without bloom observations of their own and without a role in a wanted cross. The book&apos;s layer of bloom windows has them.</source>
        <translation>Nicht gezeigt: {} Akzessionen ohne eigene Blühbeobachtungen und ohne Rolle in einer gewünschten Kreuzung. Der Layer der Blühfenster im Buch enthält sie.</translation>
    </message>
    <message>
        <source>Record their bloom this spring.</source>
        <translation>Die Blüte in diesem Frühjahr erfassen.</translation>
    </message>
    <message>
        <source>Record what was seen on the day or before it; correct the date.</source>
        <translation>Erfassen, was an dem Tag oder davor zu sehen war; das Datum berichtigen.</translation>
    </message>
    <message>
        <source>Observed on</source>
        <translation>Beobachtet am</translation>
    </message>
    <message>
        <source>Nothing in the book matches &quot;{}&quot;.</source>
        <translation>Nichts im Buch ähnelt „{}“.</translation>
    </message>
    <message>
        <source>Nothing in the book spoke against this plan.</source>
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
        <source>Nothing needs to be undone.</source>
        <translation>Es ist nichts zurückzunehmen.</translation>
    </message>
    <message>
        <source>No trees to visit are given.</source>
        <translation>Es ist nicht gesagt, welche Bäume zu besuchen sind.</translation>
    </message>
    <message>
        <source>Nothing was changed. Check that there is room on the disk and that the file is intact (book-check).</source>
        <translation>Es wurde nichts geändert. Prüfen, ob Platz auf der Platte ist und ob die Datei unbeschädigt ist (book-check).</translation>
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
        <source>On many days the minimum lies above the maximum: the columns seem swapped.</source>
        <translation>An vielen Tagen liegt das Minimum über dem Maximum: Die Spalten scheinen vertauscht.</translation>
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
        <source>On {} of these days the lowest temperature is above the highest.</source>
        <translation>An {} dieser Tage liegt die tiefste Temperatur über der höchsten.</translation>
    </message>
    <message>
        <source>On {} {} had germinated; the count is cumulative.</source>
        <translation>Am {} waren {} gekeimt; gezählt wird kumulativ.</translation>
    </message>
    <message>
        <source>Exactly one position is needed.</source>
        <translation>Es braucht genau eine Positionsangabe.</translation>
    </message>
    <message>
        <source>Map styles can only be written to a GeoPackage, not to a database server.</source>
        <translation>Kartenstile lassen sich nur in ein GeoPackage schreiben, nicht auf einen Datenbankserver.</translation>
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
        <translation>In den Früchten seiner Anhänger wurden nur {} volle Samen gezählt.</translation>
    </message>
    <message>
        <source>Open the bag, pollinate every stigma, close it again; tag with cross, date and number of flowers.</source>
        <translation>Tüte öffnen, jede Narbe bestäuben, wieder schließen; Anhänger mit Kreuzung, Datum und Zahl der Blüten anbringen.</translation>
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
        <source>Not included: 1 goal of seasons other than {} and {}.</source>
        <translation>Nicht enthalten: 1 Kreuzungsziel anderer Saisons als {} und {}.</translation>
    </message>
    <message>
        <source>Not included: {} goals of seasons other than {} and {}.</source>
        <translation>Nicht enthalten: {} Kreuzungsziele anderer Saisons als {} und {}.</translation>
    </message>
    <message>
        <source>Perhaps it is a row of {} that could not be read: correct those first.</source>
        <translation>Vielleicht ist es eine Zeile in {}, die nicht gelesen werden konnte: Diese zuerst berichtigen.</translation>
    </message>
    <message>
        <source>Petals have fallen: remove the bags, count the fruit set.</source>
        <translation>Die Blütenblätter sind gefallen: Tüten abnehmen, Fruchtansatz zählen.</translation>
    </message>
    <message>
        <source>Harvest</source>
        <translation>Ernte</translation>
    </message>
    <message>
        <source>Collect closed flowers at balloon stage (BBCH 59).</source>
        <translation>Geschlossene Blüten im Ballonstadium sammeln (BBCH 59).</translation>
    </message>
    <message>
        <source>Choose one with the option station-in-file: {}.</source>
        <translation>Mit der Option station-in-file eine davon wählen: {}.</translation>
    </message>
    <message>
        <source>Harvested on</source>
        <translation>Geerntet am</translation>
    </message>
    <message>
        <source>Harvested {} days after pollination, but seed of {} is ripe after about {}.</source>
        <translation>{} Tage nach der Bestäubung geerntet, doch Samen von {} sind erst nach etwa {} reif.</translation>
    </message>
    <message>
        <source>Location</source>
        <translation>Lage</translation>
    </message>
    <message>
        <source>Placed by</source>
        <translation>Herkunft der Lage</translation>
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
        <translation>Pollenkeimtest</translation>
    </message>
    <message>
        <source>Pollen tests</source>
        <translation>Pollenkeimtests</translation>
    </message>
    <message>
        <source>Pollen work at the donor trees</source>
        <translation>Pollenarbeit an den Spenderbäumen</translation>
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
        <translation>Priorität</translation>
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
        <source>Remove the trigger, or copy the tables into a new book. Nothing was changed.</source>
        <translation>Den Trigger entfernen oder die Tabellen in ein neues Buch kopieren. Es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>Removed on</source>
        <translation>Gerodet am</translation>
    </message>
    <message>
        <source>Removed tree</source>
        <translation>Gerodeter Baum</translation>
    </message>
    <message>
        <source>Rename or remove all but one.</source>
        <translation>Alle bis auf eines umbenennen oder entfernen.</translation>
    </message>
    <message>
        <source>Rename that table.</source>
        <translation>Diese Tabelle umbenennen.</translation>
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
        <source>Give their coordinate system: for GNSS degrees, layer-crs EPSG:4326.</source>
        <translation>Ihr Koordinatenbezugssystem angeben: für GNSS-Grade layer-crs EPSG:4326.</translation>
    </message>
    <message>
        <source>Give it with the option {}.</source>
        <translation>Mit der Option {} angeben.</translation>
    </message>
    <message>
        <source>Say with the option date-format whether the day or the month comes first.</source>
        <translation>Mit der Option date-format angeben, ob der Tag oder der Monat vorn steht.</translation>
    </message>
    <message>
        <source>Scored on</source>
        <translation>Bonitiert am</translation>
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
        <translation>Saison {}, Stichtag {}</translation>
    </message>
    <message>
        <source>Season {} has only {} of {} days of weather from {} on.</source>
        <translation>Die Saison {} hat nur {} von {} Tagen mit Wetter ab dem {}.</translation>
    </message>
    <message>
        <source>Check the position, or give a larger accuracy-m.</source>
        <translation>Die Position prüfen oder ein größeres accuracy-m angeben.</translation>
    </message>
    <message>
        <source>Check the position; tree-find --at shows the nearest trees however far.</source>
        <translation>Die Position prüfen; tree-find --at zeigt die nächsten Bäume, wie weit sie auch sind.</translation>
    </message>
    <message>
        <source>Check on the map whether trees of different rows overlap.</source>
        <translation>Auf der Karte prüfen, ob sich Bäume verschiedener Reihen überlagern.</translation>
    </message>
    <message>
        <source>Seed lots</source>
        <translation>Saatgutpartien</translation>
    </message>
    <message>
        <source>Seed parent first, then the pollen parent. The last safe day is in bold.</source>
        <translation>Zuerst die Mutter, dann der Vater. Der letzte sichere Tag ist fett gedruckt.</translation>
    </message>
    <message>
        <source>Seed ripe after</source>
        <translation>Samen reif nach</translation>
    </message>
    <message>
        <source>Seed withdrawal</source>
        <translation>Saatgutentnahme</translation>
    </message>
    <message>
        <source>Seed × pollen parent</source>
        <translation>Mutter × Vater</translation>
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
        <source>Seeds germinated so far.</source>
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
        <translation>Kürzel der Kreuzung, wie auf Anhängern.</translation>
    </message>
    <message>
        <source>Shorten it, and keep the rest in a remark.</source>
        <translation>Kürzen und den Rest als Bemerkung führen.</translation>
    </message>
    <message>
        <source>If bloom overlaps: collect at balloon stage by {}, dry for a day or two, store in {} until {}: about {} should germinate then.</source>
        <translation>Falls sich die Blüte überlappt: im Ballonstadium bis {} sammeln, ein bis zwei Tage trocknen, {} bis {} lagern; dann sollten etwa {} keimen.</translation>
    </message>
    <message>
        <source>If bloom overlaps: collect at balloon stage by {}, dry for a day or two, use within {} of collecting.</source>
        <translation>Falls sich die Blüte überlappt: im Ballonstadium bis {} sammeln, ein bis zwei Tage trocknen, höchstens {} nach dem Sammeln verwenden.</translation>
    </message>
    <message>
        <source>Shown for the pollen that must be collected this spring. Dates of {} are approximate, from this spring&apos;s bloom order.</source>
        <translation>Gezeigt wegen des Pollens, der in diesem Frühjahr zu sammeln ist. Daten für {} sind ungefähr, nach der Blühfolge dieses Frühjahrs.</translation>
    </message>
    <message>
        <source>This is an implausible number of seedlings from one cross.</source>
        <translation>Das ist eine unplausible Zahl von Sämlingen aus einer Kreuzung.</translation>
    </message>
    <message>
        <source>Too many temperatures are implausible in {}: the unit seems wrong.</source>
        <translation>Zu viele Temperaturen sind in {} unplausibel: Die Einheit scheint falsch.</translation>
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
        <source>Germination count</source>
        <translation>Keimzählung</translation>
    </message>
    <message>
        <source>Germination counts</source>
        <translation>Keimzählungen</translation>
    </message>
    <message>
        <source>Stage {} on this day cannot belong to a spring&apos;s bloom.</source>
        <translation>Stadium {} an diesem Tag kann nicht zur Blüte eines Frühjahrs gehören.</translation>
    </message>
    <message>
        <source>Stage {} on {} comes after stage {}, observed on {} (fid {}).</source>
        <translation>Stadium {} am {} kommt nach Stadium {}, beobachtet am {} (fid {}).</translation>
    </message>
    <message>
        <source>Stage {} was observed on {}, and bloom does not go back.</source>
        <translation>Stadium {} wurde am {} beobachtet, und die Blüte läuft nicht zurück.</translation>
    </message>
    <message>
        <source>Stages 51 to 69 are used.</source>
        <translation>Verwendet werden die Stadien 51 bis 69.</translation>
    </message>
    <message>
        <source>Stages outside {} to {} are kept, but not used to forecast bloom.</source>
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
        <source>Station {} has no location on the map.</source>
        <translation>Station {} hat keine Lage auf der Karte.</translation>
    </message>
    <message>
        <source>Station {} has no temperatures on {}, and sums cannot leap over it.</source>
        <translation>Der Station {} fehlen die Temperaturen am {}; darüber hinweg lässt sich nicht summieren.</translation>
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
        <translation>Anhänger von {}: {}.</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Take keys from the table of questions of the same position.</source>
        <translation>Schlüssel aus der Tabelle der Fragen derselben Position nehmen.</translation>
    </message>
    <message>
        <source>Undo one of the two.</source>
        <translation>Eine der beiden zurücknehmen.</translation>
    </message>
    <message>
        <source>Remove the bags from {}</source>
        <translation>Die Tüten abnehmen von {}</translation>
    </message>
    <message>
        <source>Undo those first.</source>
        <translation>Diese zuerst zurücknehmen.</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Besetzt</translation>
    </message>
    <message>
        <source>Undoing the record</source>
        <translation>Eintrag wird zurückgenommen</translation>
    </message>
    <message>
        <source>Test the stored pollen of {}</source>
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
        <source>The accession is among its own ancestors: {}, each recorded as an offspring of the next.</source>
        <translation>Die Akzession gehört zu ihren eigenen Vorfahren: {}, jede als Nachkomme der nächsten eingetragen.</translation>
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
        <source>Its amount is not in the book: weigh it first.</source>
        <translation>Die Menge steht nicht im Buch: Zuerst wiegen.</translation>
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
        <source>The book has no bloom observations.</source>
        <translation>Das Buch hat keine Blühbeobachtungen.</translation>
    </message>
    <message>
        <source>The book has no cross goals for this season.</source>
        <translation>Das Buch hat für diese Saison keine Kreuzungsziele.</translation>
    </message>
    <message>
        <source>The book has no pollination tag of this name.</source>
        <translation>Das Buch hat keinen Bestäubungsanhänger dieses Namens.</translation>
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
        <source>The book has no tree with a location on the map.</source>
        <translation>Das Buch hat keinen Baum mit einer Lage auf der Karte.</translation>
    </message>
    <message>
        <source>The book has no tree with this label.</source>
        <translation>Das Buch hat keinen Baum mit diesem Etikett.</translation>
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
        <source>The book has no record to undo: nothing was changed.</source>
        <translation>Das Buch hat keinen Eintrag zum Zurücknehmen: Es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>The book has no such record to undo.</source>
        <translation>Das Buch hat keinen solchen Eintrag zum Zurücknehmen.</translation>
    </message>
    <message>
        <source>The book&apos;s, {}, was assumed; give layer-crs if it is another.</source>
        <translation>Es wurde das des Buchs angenommen, {}; layer-crs angeben, wenn es ein anderes ist.</translation>
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
        <source>The day occurs on an earlier line with other temperatures.</source>
        <translation>Der Tag steht schon in einer früheren Zeile mit anderen Temperaturen.</translation>
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
        <source>The date lies before the lot was collected, {}.</source>
        <translation>Das Datum liegt vor dem Sammeln der Partie, {}.</translation>
    </message>
    <message>
        <source>The day lies before the seed was washed, {}.</source>
        <translation>Der Tag liegt vor dem Waschen der Samen, {}.</translation>
    </message>
    <message>
        <source>The date lies before the stratification began, {}.</source>
        <translation>Das Datum liegt vor Beginn der Stratifikation, {}.</translation>
    </message>
    <message>
        <source>The day lies in the future of {}.</source>
        <translation>Der Tag liegt nach dem {}, in der Zukunft.</translation>
    </message>
    <message>
        <source>The day of planting lies in the future.</source>
        <translation>Der Pflanztag liegt in der Zukunft.</translation>
    </message>
    <message>
        <source>The day occurs twice with the same values; it is used once.</source>
        <translation>Der Tag kommt zweimal mit denselben Werten vor; er zählt einmal.</translation>
    </message>
    <message>
        <source>The reference date; later weather is not known.</source>
        <translation>Der Stichtag; das Wetter danach ist nicht bekannt.</translation>
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
        <source>The donors&apos; pollen is not available on the same day: pollinate some flowers with each, and tag them separately.</source>
        <translation>Der Pollen der Spender ist nicht am selben Tag verfügbar: Mit jedem einige Blüten bestäuben und mit eigenen Anhängern versehen.</translation>
    </message>
    <message>
        <source>The file cannot be opened as a layer.</source>
        <translation>Die Datei lässt sich nicht als Layer öffnen.</translation>
    </message>
    <message>
        <source>The file cannot be opened as a layer: {}.</source>
        <translation>Die Datei lässt sich nicht als Layer öffnen: {}.</translation>
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
        <translation>Die Datei hat keinen Layer {}.</translation>
    </message>
    <message>
        <source>The file has no layer.</source>
        <translation>Die Datei hat keinen Layer.</translation>
    </message>
    <message>
        <source>The file has several layers.</source>
        <translation>Die Datei hat mehrere Layer.</translation>
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
        <source>The file is damaged: get it again.</source>
        <translation>Die Datei ist beschädigt: Neu beschaffen.</translation>
    </message>
    <message>
        <source>The file is damaged: restore it from a backup.</source>
        <translation>Die Datei ist beschädigt: Aus einer Sicherung wiederherstellen.</translation>
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
        <source>The last safe day is in bold. See the cross below for another way before giving it up.</source>
        <translation>Der letzte sichere Tag ist fett gedruckt. Bei der Kreuzung weiter unten nach einem anderen Weg sehen, bevor sie aufgegeben wird.</translation>
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
        <translation>Der Layer ließ sich nur teilweise lesen: {}</translation>
    </message>
    <message>
        <source>The layer does not give its coordinate system.</source>
        <translation>Der Layer nennt sein Koordinatenbezugssystem nicht.</translation>
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
        <translation>Der Layer hat keinen Punkt und keine Linie.</translation>
    </message>
    <message>
        <source>The layer has no such column.</source>
        <translation>Der Layer hat keine solche Spalte.</translation>
    </message>
    <message>
        <source>The layer of trees is missing or has no coordinate system.</source>
        <translation>Der Layer der Bäume fehlt oder hat kein Koordinatenbezugssystem.</translation>
    </message>
    <message>
        <source>By its own metadata the layer is in {}.</source>
        <translation>Nach seinen eigenen Metadaten ist der Layer in {}.</translation>
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
        <source>The long-term mean date alone: within 3 days in {}, mean error {:.1f} days.</source>
        <translation>Das langjährige mittlere Datum allein: in {} auf 3 Tage richtig, mittlerer Fehler {} Tage.</translation>
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
        <source>The month is {:.1f} °C colder than the same month of other years.</source>
        <translation>Der Monat ist {} °C kälter als derselbe Monat anderer Jahre.</translation>
    </message>
    <message>
        <source>The month is {:.1f} °C warmer than the same month of other years.</source>
        <translation>Der Monat ist {} °C wärmer als derselbe Monat anderer Jahre.</translation>
    </message>
    <message>
        <source>The name has more than {} characters.</source>
        <translation>Der Name hat mehr als {} Zeichen.</translation>
    </message>
    <message>
        <source>The name has invisible characters, a line end perhaps.</source>
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
        <translation>Die nächstliegenden Etiketten sind: {}.</translation>
    </message>
    <message>
        <source>The nearest names are: {}.</source>
        <translation>Die nächstliegenden Namen sind: {}.</translation>
    </message>
    <message>
        <source>The observation lies about {} days after the book&apos;s other bloom observations; it is not used.</source>
        <translation>Die Beobachtung liegt etwa {} Tage nach den anderen Blühbeobachtungen des Buchs; sie wird nicht verwendet.</translation>
    </message>
    <message>
        <source>The observation lies about {} days before the book&apos;s other bloom observations; it is not used.</source>
        <translation>Die Beobachtung liegt etwa {} Tage vor den anderen Blühbeobachtungen des Buchs; sie wird nicht verwendet.</translation>
    </message>
    <message>
        <source>The observation lies in the future of {}; it is not used.</source>
        <translation>Die Beobachtung liegt nach dem {}, in der Zukunft; sie wird nicht verwendet.</translation>
    </message>
    <message>
        <source>The observation names neither a tree nor an accession.</source>
        <translation>Die Beobachtung nennt weder einen Baum noch eine Akzession.</translation>
    </message>
    <message>
        <source>By this observation full bloom of {} is {:.0f} days earlier than its other observations and the season&apos;s warmth suggest.</source>
        <translation>Nach dieser Beobachtung läge die Vollblüte von {} {} Tage früher, als die anderen Beobachtungen und die Wärme der Saison erwarten lassen.</translation>
    </message>
    <message>
        <source>By this observation full bloom of {} is {:.0f} days earlier than by the spring&apos;s other observations.</source>
        <translation>Nach dieser Beobachtung läge die Vollblüte von {} {} Tage früher als nach den anderen Beobachtungen des Frühjahrs.</translation>
    </message>
    <message>
        <source>By this observation full bloom of {} is {:.0f} days later than its other observations and the season&apos;s warmth suggest.</source>
        <translation>Nach dieser Beobachtung läge die Vollblüte von {} {} Tage später, als die anderen Beobachtungen und die Wärme der Saison erwarten lassen.</translation>
    </message>
    <message>
        <source>By this observation full bloom of {} is {:.0f} days later than by the spring&apos;s other observations.</source>
        <translation>Nach dieser Beobachtung läge die Vollblüte von {} {} Tage später als nach den anderen Beobachtungen des Frühjahrs.</translation>
    </message>
    <message>
        <source>The observed tree is not in the book, or has no accession.</source>
        <translation>Der beobachtete Baum steht nicht im Buch oder hat keine Akzession.</translation>
    </message>
    <message>
        <source>The observed tree {} is {}.</source>
        <translation>Der beobachtete Baum {} ist {}.</translation>
    </message>
    <message>
        <source>The observations cover too few seasons to tell a good model from a lucky one.</source>
        <translation>Die Beobachtungen umfassen zu wenige Saisons, um ein gutes Modell von einem Zufallstreffer zu unterscheiden.</translation>
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
        <translation>Das angegebene wurde verwendet; weglassen, um das des Layers selbst zu verwenden.</translation>
    </message>
    <message>
        <source>The other members of the blend take over its share.</source>
        <translation>Die anderen Bestandteile der Mischung übernehmen ihren Anteil.</translation>
    </message>
    <message>
        <source>The plan is made without kinship.</source>
        <translation>Der Plan entsteht ohne Angaben zur Verwandtschaft.</translation>
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
        <translation>Die Wiederbetretungsfrist auf dem Etikett des Mittels bindet alle, auch Imker, auch für den Anhänger an einer einzigen Blüte. Kein Insektizid auf offene Blüten. Jede Spritzung aufschreiben.</translation>
    </message>
    <message>
        <source>The weather record begins only on {}.</source>
        <translation>Die Wetterreihe beginnt erst am {}.</translation>
    </message>
    <message>
        <source>The weather record ends on {}.</source>
        <translation>Die Wetterreihe endet am {}.</translation>
    </message>
    <message>
        <source>The weather record has no observed day.</source>
        <translation>Die Wetterreihe enthält keinen beobachteten Tag.</translation>
    </message>
    <message>
        <source>The results are in the book; only its map style was not updated. Run book-style later.</source>
        <translation>Die Ergebnisse stehen im Buch; nur sein Kartenstil wurde nicht erneuert. Später book-style ausführen.</translation>
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
        <source>The row would have {:.0f} positions.</source>
        <translation>Die Reihe hätte {} Positionen.</translation>
    </message>
    <message>
        <source>The rows do not begin at a common edge, or are too few to show one: where first trees are missing the numbers cannot be known.</source>
        <translation>Die Reihen beginnen nicht an einem gemeinsamen Rand, oder es sind zu wenige, um einen zu zeigen: Wo erste Bäume fehlen, lassen sich die Nummern nicht wissen.</translation>
    </message>
    <message>
        <source>The rows run at {:.1f} degrees, {:.2f} m apart, with a tree every {:.3f} m; the points deviate by about {:.2f} m across and {:.2f} m along.</source>
        <translation>Die Reihen laufen in Richtung {} Grad, {} m auseinander, alle {} m ein Baum; die Punkte weichen etwa {} m quer und {} m längs ab.</translation>
    </message>
    <message>
        <source>The same in numbers</source>
        <translation>Dasselbe in Zahlen</translation>
    </message>
    <message>
        <source>The same was recorded already ({}).</source>
        <translation>Dasselbe wurde schon erfasst ({}).</translation>
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
        <translation>Die Mutter soll mit ihrem eigenen Pollen bestäubt werden.</translation>
    </message>
    <message>
        <source>Stratification began only on {}.</source>
        <translation>Die Stratifikation begann erst am {}.</translation>
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
        <source>The table has no integer primary key.</source>
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
        <translation>Der Anhänger gehört zur Kreuzung {}, die Partie zu {}.</translation>
    </message>
    <message>
        <source>The tag of the pollination.</source>
        <translation>Der Anhänger der Bestäubung.</translation>
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
        <translation>Der Baum ist {}, aber die Mutter von {} ist {}.</translation>
    </message>
    <message>
        <source>The tree scored.</source>
        <translation>Der bonitierte Baum.</translation>
    </message>
    <message>
        <source>The tree was removed before it was planted.</source>
        <translation>Der Baum wurde gerodet, bevor er gepflanzt war.</translation>
    </message>
    <message>
        <source>The tree pollinated, a tree of the seed parent.</source>
        <translation>Der bestäubte Baum, ein Baum der Mutter.</translation>
    </message>
    <message>
        <source>The trees have no coordinate system of the earth.</source>
        <translation>Die Bäume haben kein Koordinatenbezugssystem der Erde.</translation>
    </message>
    <message>
        <source>The trees stand in regular lines both ways: it is not clear which are the rows.</source>
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
        <source>The work lies about {} days after the book&apos;s other bloom observations.</source>
        <translation>Die Arbeit liegt etwa {} Tage nach den anderen Blühbeobachtungen des Buchs.</translation>
    </message>
    <message>
        <source>The work lies about {} days before the book&apos;s other bloom observations.</source>
        <translation>Die Arbeit liegt etwa {} Tage vor den anderen Blühbeobachtungen des Buchs.</translation>
    </message>
    <message>
        <source>The {} season ended on {}: nothing is left to forecast.</source>
        <translation>Die Saison {} endete am {}: Es ist nichts mehr vorherzusagen.</translation>
    </message>
    <message>
        <source>There are {} S-alleles but at most {} chromosome sets to carry them.</source>
        <translation>Es sind {} S-Allele, aber höchstens {} Chromosomensätze, die sie tragen können.</translation>
    </message>
    <message>
        <source>There are {} bloom observations of season {} but no weather for it.</source>
        <translation>Es gibt {} Blühbeobachtungen der Saison {}, aber kein Wetter dazu.</translation>
    </message>
    <message>
        <source>There are {} bloom observations of {} seasons without any weather.</source>
        <translation>Es gibt {} Blühbeobachtungen aus {} Saisons ganz ohne Wetter.</translation>
    </message>
    <message>
        <source>There is 1 bloom observation of season {} but no weather for it.</source>
        <translation>Es gibt 1 Blühbeobachtung der Saison {}, aber kein Wetter dazu.</translation>
    </message>
    <message>
        <source>There is a file of that name already.</source>
        <translation>Es gibt schon eine Datei dieses Namens.</translation>
    </message>
    <message>
        <source>There is no bloom observation in a season with weather, so no bloom model can be fitted.</source>
        <translation>Es gibt keine Blühbeobachtung in einer Saison mit Wetter, daher lässt sich kein Blühmodell anpassen.</translation>
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
        <source>There is nothing to search for.</source>
        <translation>Es ist nichts angegeben, wonach zu suchen wäre.</translation>
    </message>
    <message>
        <source>These are medians, still too uncertain for a safe day: watch the buds.</source>
        <translation>Das sind Mediane, noch zu unsicher für einen sicheren Tag: Die Knospen beobachten.</translation>
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
        <translation>Das ist weder das Etikett eines Baums noch Breite und Länge.</translation>
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
        <translation>Das ist kein Zuchtbuch: Es hat keine von dessen Tabellen. Es enthält {}.</translation>
    </message>
    <message>
        <source>This is no location on the earth in {}.</source>
        <translation>Das ist in {} kein Ort auf der Erde.</translation>
    </message>
    <message>
        <source>This is no location on the earth.</source>
        <translation>Das ist kein Ort auf der Erde.</translation>
    </message>
    <message>
        <source>This is no readable text, or it has more than 100000 characters.</source>
        <translation>Das ist kein lesbarer Text, oder er hat mehr als 100000 Zeichen.</translation>
    </message>
    <message>
        <source>This is no integer, or one too large for the column.</source>
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
        <source>This position is {} from the nearest tree.</source>
        <translation>Diese Position ist {} vom nächsten Baum entfernt.</translation>
    </message>
    <message>
        <source>This question is not asked at this position: the answer is not used.</source>
        <translation>Diese Frage wird an dieser Position nicht gestellt: Die Antwort zählt nicht.</translation>
    </message>
    <message>
        <source>This stage says too little about bloom and is not used to forecast it.</source>
        <translation>Dieses Stadium sagt zu wenig über die Blüte und dient nicht zu ihrer Vorhersage.</translation>
    </message>
    <message>
        <source>This table takes no entries.</source>
        <translation>Diese Tabelle nimmt keine Einträge an.</translation>
    </message>
    <message>
        <source>This tree has no location on the map.</source>
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
        <source>To get the one of Pipward too, keep yours under another name, delete this one and run book-style again.</source>
        <translation>Um auch den von Pipward zu bekommen, den eigenen unter anderem Namen behalten, diesen löschen und book-style erneut ausführen.</translation>
    </message>
    <message>
        <source>To see the one of Pipward, choose it among the layer&apos;s styles.</source>
        <translation>Um den von Pipward zu sehen, ihn unter den Stilen des Layers wählen.</translation>
    </message>
    <message>
        <source>To see the results without keeping them, set keep to no.</source>
        <translation>Um die Ergebnisse zu sehen, ohne sie zu behalten, keep auf no setzen.</translation>
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
        <source>Too cold while {} is open: pollen tubes would reach the ovules too late in every calculated spring.</source>
        <translation>Zu kalt, solange {} offen ist: Die Pollenschläuche kämen in jedem berechneten Frühjahr zu spät zu den Samenanlagen.</translation>
    </message>
    <message>
        <source>Too late</source>
        <translation>Zu spät</translation>
    </message>
    <message>
        <source>Undid {} in {}: {}.</source>
        <translation>{} aus {} zurückgenommen: {}.</translation>
    </message>
    <message>
        <source>Tools.</source>
        <translation>Werkzeuge.</translation>
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
        <translation>Baum {} wurde am {} gerodet.</translation>
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
        <source>Type it again: a name that looks the same will not be found.</source>
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
        <source>Used: {}, RMSE {:.1f} days in {} seasons left out of the fit, weather known.</source>
        <translation>Verwendet: {}, RMSE {} Tage in {} Saisons außerhalb der Anpassung, mit bekanntem Wetter.</translation>
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
        <source>Weather after {} is not known: one past season replaces it, so bloom is given as prediction intervals. Plan again after new weather or a bloom observation.</source>
        <translation>Das Wetter nach {} ist nicht bekannt: Eine vergangene Saison ersetzt es, daher steht die Blüte als Vorhersageintervall da. Nach neuem Wetter oder einer Blühbeobachtung neu planen.</translation>
    </message>
    <message>
        <source>Weather after {} is not known: {} past seasons replace it, so bloom is given as prediction intervals. Plan again after new weather or a bloom observation.</source>
        <translation>Das Wetter nach {} ist nicht bekannt: {} vergangene Saisons ersetzen es, daher steht die Blüte als Vorhersageintervall da. Nach neuem Wetter oder einer Blühbeobachtung neu planen.</translation>
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
        <source>Comparing the trees</source>
        <translation>Die Bäume werden verglichen</translation>
    </message>
    <message>
        <source>Kind of the accession.</source>
        <translation>Welcher Art die Akzession ist.</translation>
    </message>
    <message>
        <source>Code on the bag.</source>
        <translation>Kürzel auf dem Beutel.</translation>
    </message>
    <message>
        <source>Purpose of the tree.</source>
        <translation>Zweck des Baums.</translation>
    </message>
    <message>
        <source>What was scored.</source>
        <translation>Was bonitiert wurde.</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Where it is stored.</source>
        <translation>Wo sie gelagert ist.</translation>
    </message>
    <message>
        <source>While the season is under way its observations update its own forecast instead.</source>
        <translation>Solange die Saison läuft, gehen ihre Beobachtungen stattdessen in ihre eigene Vorhersage ein.</translation>
    </message>
    <message>
        <source>With the season&apos;s weather known, forecasts of past seasons were within 3 days in {} and within 5 days in {}; the mean error was {:.1f} days.</source>
        <translation>Bei bekanntem Wetter der Saison lagen Vorhersagen vergangener Saisons in {} auf 3 Tage und in {} auf 5 Tage richtig; der mittlere Fehler war {} Tage.</translation>
    </message>
    <message>
        <source>Work at the seed parents</source>
        <translation>Arbeit an den Mutterbäumen</translation>
    </message>
    <message>
        <source>Pollinate more flowers, or do not use it as a parent.</source>
        <translation>Mehr Blüten bestäuben oder sie nicht als Elter verwenden.</translation>
    </message>
    <message>
        <source>Pollinate</source>
        <translation>Bestäuben</translation>
    </message>
    <message>
        <source>Pollinated on</source>
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
        <source>Write an integer, or clear the cell.</source>
        <translation>Eine ganze Zahl schreiben oder die Zelle leeren.</translation>
    </message>
    <message>
        <source>Write an integer.</source>
        <translation>Eine ganze Zahl schreiben.</translation>
    </message>
    <message>
        <source>Record BBCH stages; without any, bloom cannot be forecast.</source>
        <translation>BBCH-Stadien erfassen; ohne sie lässt sich die Blüte nicht vorhersagen.</translation>
    </message>
    <message>
        <source>Write goals with the season&apos;s year.</source>
        <translation>Ziele mit dem Jahr der Saison schreiben.</translation>
    </message>
    <message>
        <source>Write it again as plain text (UTF-8), or clear the cell.</source>
        <translation>Als reinen Text (UTF-8) neu schreiben oder die Zelle leeren.</translation>
    </message>
    <message>
        <source>Write it again as plain text (UTF-8).</source>
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
        <source>estimated, to be measured</source>
        <translation>geschätzt, noch einzumessen</translation>
    </message>
    <message>
        <source>a list of integers</source>
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
        <translation>ein ausgelesener, durch Veredelung vermehrter Sämling</translation>
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
        <source>an integer</source>
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
        <translation>Ende des Blattfalls</translation>
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
        <translation>ein anderer Baum könnte an derselben Position stehen</translation>
    </message>
    <message>
        <source>as 1 day in 20 reaches {:.0f} or more, all in integers</source>
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
        <source>unchanged</source>
        <translation>unverändert</translation>
    </message>
    <message>
        <source>as line {} ({}) shows</source>
        <translation>wie Zeile {} ({}) zeigt</translation>
    </message>
    <message>
        <source>as of {}</source>
        <translation>Stichtag {}</translation>
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
        <source>at room temperature, about 20 °C</source>
        <translation>bei Raumtemperatur, etwa 20 °C</translation>
    </message>
    <message>
        <source>average of many chill and heat models</source>
        <translation>Mittel vieler Kälte- und Wärmemodelle</translation>
    </message>
    <message>
        <source>balloon: most flowers are hollow balls</source>
        <translation>Ballonstadium: die meisten Blüten als geschlossener Ballon</translation>
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
        <source>from both parents</source>
        <translation>von beiden Eltern</translation>
    </message>
    <message>
        <source>from one parent and the orchard</source>
        <translation>von einem Elter und der Obstanlage</translation>
    </message>
    <message>
        <source>from the orchard&apos;s mean</source>
        <translation>vom Mittel der Obstanlage</translation>
    </message>
    <message>
        <source>bud break: first green tips just seen</source>
        <translation>Knospenaufbruch: erste grüne Blattspitzen gerade sichtbar</translation>
    </message>
    <message>
        <source>bud burst: green tips around the flowers seen</source>
        <translation>Knospenaufbruch: grüne Blattspitzen, die die Blüten umhüllen, sichtbar</translation>
    </message>
    <message>
        <source>chill first, then heat</source>
        <translation>erst Kälte, dann Wärme</translation>
    </message>
    <message>
        <source>chill requirement</source>
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
        <source>stratified at</source>
        <translation>stratifiziert bei</translation>
    </message>
    <message>
        <source>stratified from</source>
        <translation>stratifiziert ab</translation>
    </message>
    <message>
        <source>stratified to</source>
        <translation>stratifiziert bis</translation>
    </message>
    <message>
        <source>colour deepens</source>
        <translation>fortgeschrittene Fruchtreife: Ausfärbung nimmt zu</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>berechnet</translation>
    </message>
    <message>
        <source>computed from its row and position</source>
        <translation>aus Reihe und Position berechnet</translation>
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
        <source>°C d</source>
        <translation>°C d</translation>
    </message>
    <message>
        <source>°C h</source>
        <translation>°C h</translation>
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
        <translation>Knospenruhe: Schuppen geschlossen und dunkel</translation>
    </message>
    <message>
        <source>drawn on a map or picture</source>
        <translation>auf einer Karte oder einem Bild gezeichnet</translation>
    </message>
    <message>
        <source>dry at about -20 °C</source>
        <translation>trocken bei etwa -20 °C</translation>
    </message>
    <message>
        <source>dry at about -80 °C</source>
        <translation>trocken bei etwa -80 °C</translation>
    </message>
    <message>
        <source>dry at about 4 °C</source>
        <translation>trocken bei etwa 4 °C</translation>
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
        <translation>Blühende: alle Blütenblätter abgefallen</translation>
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
        <translation>abgehende Blüte: die meisten Blütenblätter abgefallen</translation>
    </message>
    <message>
        <source>first flowers open</source>
        <translation>Blühbeginn: erste Blüten offen</translation>
    </message>
    <message>
        <source>first leaves full size</source>
        <translation>erste Blätter voll ausgewachsen</translation>
    </message>
    <message>
        <source>first leaves open</source>
        <translation>erste Blätter entfaltet</translation>
    </message>
    <message>
        <source>first position</source>
        <translation>erste Position</translation>
    </message>
    <message>
        <source>flower buds swell</source>
        <translation>Knospenschwellen (Blütenknospen)</translation>
    </message>
    <message>
        <source>flower buds swollen</source>
        <translation>Ende des Knospenschwellens (Blütenknospen)</translation>
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
        <source>force a cut branch</source>
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
        <translation>von Anhängern</translation>
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
        <translation>Früchte halb ausgewachsen</translation>
    </message>
    <message>
        <source>fruit to 10 mm, first drop</source>
        <translation>Früchte bis 10 mm, Nachblütefall</translation>
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
        <translation>Vollblüte: mindestens die Hälfte offen, erste Blütenblätter fallen</translation>
    </message>
    <message>
        <source>fully compatible</source>
        <translation>voll verträglich</translation>
    </message>
    <message>
        <source>collect and use fresh, the same day</source>
        <translation>sammeln und frisch am selben Tag verwenden</translation>
    </message>
    <message>
        <source>collect this spring, dry and store</source>
        <translation>in diesem Frühjahr sammeln, trocknen und lagern</translation>
    </message>
    <message>
        <source>collect {}</source>
        <translation>{} sammeln</translation>
    </message>
    <message>
        <source>collected on</source>
        <translation>gesammelt am</translation>
    </message>
    <message>
        <source>collected this spring, freezer</source>
        <translation>in diesem Frühjahr gesammelt, Gefrierschrank</translation>
    </message>
    <message>
        <source>collected this spring, refrigerator</source>
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
        <translation>Grünknospenstadium: einzelne Blüten trennen sich, noch geschlossen</translation>
    </message>
    <message>
        <source>green leaf tips 5 mm out</source>
        <translation>grüne Blattspitzen 5 mm über den Schuppen</translation>
    </message>
    <message>
        <source>h</source>
        <translation>h</translation>
    </message>
    <message>
        <source>half the leaves turned or fallen</source>
        <translation>Hälfte der Blätter verfärbt oder abgefallen</translation>
    </message>
    <message>
        <source>semi-compatible</source>
        <translation>halb verträglich</translation>
    </message>
    <message>
        <source>harvested and stored</source>
        <translation>Erntegut, eingelagert</translation>
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
        <source>it is off its row</source>
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
        <translation>Etikett</translation>
    </message>
    <message>
        <source>label {}</source>
        <translation>Etikett {}</translation>
    </message>
    <message>
        <source>leaf buds begin to swell</source>
        <translation>Beginn des Knospenschwellens (Blattknospen)</translation>
    </message>
    <message>
        <source>leaf buds swollen: scales light, partly hairy</source>
        <translation>Ende des Knospenschwellens: Schuppen hell, teils behaart</translation>
    </message>
    <message>
        <source>leaf fall begins</source>
        <translation>Beginn des Blattfalls</translation>
    </message>
    <message>
        <source>leaves begin to turn</source>
        <translation>Beginn der Laubverfärbung</translation>
    </message>
    <message>
        <source>line</source>
        <translation>Linie</translation>
    </message>
    <message>
        <source>long-term mean date</source>
        <translation>langjähriges mittleres Datum</translation>
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
        <translation>weitere Blätter entfaltet, noch nicht voll ausgewachsen</translation>
    </message>
    <message>
        <source>more than one position is possible</source>
        <translation>mehr als eine Position ist möglich</translation>
    </message>
    <message>
        <source>mouse-ear on the flower bud</source>
        <translation>Mausohrstadium an der Blütenknospe</translation>
    </message>
    <message>
        <source>mouse-ear: green tips 10 mm, leaves parting</source>
        <translation>Mausohrstadium: grüne Blattspitzen 10 mm, erste Blätter spreizen sich ab</translation>
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
        <source>no kinship in the pedigree</source>
        <translation>keine Verwandtschaft in der Abstammung</translation>
    </message>
    <message>
        <source>no position is near</source>
        <translation>keine Position ist in der Nähe</translation>
    </message>
    <message>
        <source>no row is near</source>
        <translation>keine Reihe ist in der Nähe</translation>
    </message>
    <message>
        <source>no rows could be detected</source>
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
        <source>incompatible</source>
        <translation>unverträglich</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>unknown: S-alleles missing</source>
        <translation>unbekannt: S-Allele fehlen</translation>
    </message>
    <message>
        <source>notice</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>remark: {}</source>
        <translation>Bemerkung: {}</translation>
    </message>
    <message>
        <source>observed on</source>
        <translation>beobachtet am</translation>
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
        <source>over 95 %</source>
        <translation>über 95 %</translation>
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
        <source>harvested on</source>
        <translation>geerntet am</translation>
    </message>
    <message>
        <source>pink bud: petals just seen</source>
        <translation>Rotknospenstadium: Blütenblätter gerade sichtbar</translation>
    </message>
    <message>
        <source>location {}</source>
        <translation>Lage {}</translation>
    </message>
    <message>
        <source>placed by</source>
        <translation>Herkunft der Lage</translation>
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
        <source>pollen stored from last year</source>
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
        <translation>Vater</translation>
    </message>
    <message>
        <source>pollinate with {}</source>
        <translation>mit {} bestäuben</translation>
    </message>
    <message>
        <source>pollination tag</source>
        <translation>Bestäubungsanhänger</translation>
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
        <translation>Position</translation>
    </message>
    <message>
        <source>position {}</source>
        <translation>Position {}</translation>
    </message>
    <message>
        <source>position {} ({} of the row)</source>
        <translation>Position {} ({} in der Reihe)</translation>
    </message>
    <message>
        <source>priority</source>
        <translation>Priorität</translation>
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
        <translation>gerodet am</translation>
    </message>
    <message>
        <source>removed on {}</source>
        <translation>gerodet am {}</translation>
    </message>
    <message>
        <source>to be planted {}</source>
        <translation>wird gepflanzt {}</translation>
    </message>
    <message>
        <source>removed {}</source>
        <translation>gerodet {}</translation>
    </message>
    <message>
        <source>reserved</source>
        <translation>vorgemerkt</translation>
    </message>
    <message>
        <source>ripe for eating</source>
        <translation>Genussreife</translation>
    </message>
    <message>
        <source>ripe for picking</source>
        <translation>Pflückreife</translation>
    </message>
    <message>
        <source>ripening begins: first colour</source>
        <translation>Beginn der Fruchtreife: erste Ausfärbung</translation>
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
        <translation>Reihe {}, Position {}</translation>
    </message>
    <message>
        <source>score</source>
        <translation>Bonitur</translation>
    </message>
    <message>
        <source>scored on</source>
        <translation>bonitiert am</translation>
    </message>
    <message>
        <source>season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>second fruit drop</source>
        <translation>zweiter Fruchtfall (Junifall)</translation>
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
        <translation>Mutter</translation>
    </message>
    <message>
        <source>seed parent of cross {}</source>
        <translation>Mutter der Kreuzung {}</translation>
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
        <translation>Zuchtklon</translation>
    </message>
    <message>
        <source>shoot growth begins</source>
        <translation>Beginn des Triebwachstums</translation>
    </message>
    <message>
        <source>shoot growth ended, leaves green</source>
        <translation>Triebwachstum abgeschlossen, Laub noch grün</translation>
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
        <translation>volle Samen</translation>
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
        <translation>Anhänger</translation>
    </message>
    <message>
        <source>tag {}</source>
        <translation>Anhänger {}</translation>
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
        <translation>nach dem Buch steht er an Position {}</translation>
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
        <translation>der Pfad eines Zuchtbuchs</translation>
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
        <translation>nach dem Buch hat Baum {} diese Position</translation>
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
        <source>under 5 %</source>
        <translation>unter 5 %</translation>
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
        <source>integers separated by commas</source>
        <translation>ganze Zahlen, durch Kommas getrennt</translation>
    </message>
    <message>
        <source>pollinated for cross {}</source>
        <translation>bestäubt für Kreuzung {}</translation>
    </message>
    <message>
        <source>pollinated on</source>
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
        <source>your own, kept</source>
        <translation>eigene Fassung, behalten</translation>
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
        <translation>{} (vom Mittel der Obstanlage)</translation>
    </message>
    <message>
        <source>{} ({})</source>
        <translation>{} ({})</translation>
    </message>
    <message>
        <source>nothing that must be done today</source>
        <translation>nichts, was heute getan sein muss</translation>
    </message>
    <message>
        <source>{} ({} to {})</source>
        <translation>{} ({} bis {})</translation>
    </message>
    <message>
        <source>and {} more</source>
        <translation>und {} weitere</translation>
    </message>
    <message>
        <source>{} {}: {}</source>
        <translation>{} {}: {}</translation>
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
        <source>{} accessions forecast</source>
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
        <source>{} reaches balloon stage about {}; {} is receptive until about {}.</source>
        <translation>{} kommt etwa am {} ins Ballonstadium; {} ist bis etwa {} empfängnisfähig.</translation>
    </message>
    <message>
        <source>{} crosses: {}.</source>
        <translation>{} Kreuzungen: {}.</translation>
    </message>
    <message>
        <source>{} days</source>
        <translation>{} Tage</translation>
    </message>
    <message>
        <source>{} days in the future of {} cannot have been observed.</source>
        <translation>{} Tage nach dem {} können noch nicht beobachtet worden sein.</translation>
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
        <source>{} does not reach balloon stage in time.</source>
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
        <source>{} flowers are pollinated already, {} are left to do.</source>
        <translation>{} Blüten sind schon bestäubt, {} bleiben zu tun.</translation>
    </message>
    <message>
        <source>{} flowers on one tree are more than can be pollinated: add trees, or divide the cross between several springs.</source>
        <translation>{} Blüten an einem Baum sind mehr, als sich bestäuben lassen: Bäume hinzunehmen oder die Kreuzung auf mehrere Frühjahre verteilen.</translation>
    </message>
    <message>
        <source>{} flowers on {} trees are more than can be pollinated: add trees, or divide the cross between several springs.</source>
        <translation>{} Blüten an {} Bäumen sind mehr, als sich bestäuben lassen: Bäume hinzunehmen oder die Kreuzung auf mehrere Frühjahre verteilen.</translation>
    </message>
    <message>
        <source>{} flowers pollinated for {}, tag {}</source>
        <translation>{} Blüten bestäubt für {}, Anhänger {}</translation>
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
        <source>{} fruits cannot have {} seeds: ten each is usual, {} the maximum.</source>
        <translation>{} Früchte können keine {} Samen enthalten: Zehn je Frucht sind üblich, {} das Höchste.</translation>
    </message>
    <message>
        <source>{} has no living tree to seed this cross.</source>
        <translation>{} hat keinen lebenden Baum, der die Samen dieser Kreuzung tragen könnte.</translation>
    </message>
    <message>
        <source>{} has no living tree to collect pollen from.</source>
        <translation>{} hat keinen lebenden Baum, von dem sich Pollen sammeln ließe.</translation>
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
        <source>{} is triploid: most of its pollen is not viable.</source>
        <translation>{} ist triploid: Der meiste Pollen ist nicht keimfähig.</translation>
    </message>
    <message>
        <source>{} is {}, which is out of its range.</source>
        <translation>{} ist {} und liegt außerhalb der Grenzen.</translation>
    </message>
    <message>
        <source>{} m above the sea</source>
        <translation>{} m über dem Meer</translation>
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
        <source>{} requirements fitted ({}) to {} full-bloom dates in {} seasons.</source>
        <translation>{} Bedarfswerte geschätzt ({}) aus {} Vollblütedaten in {} Saisons.</translation>
    </message>
    <message>
        <source>{} no. {}</source>
        <translation>{} Nr. {}</translation>
    </message>
    <message>
        <source>{} observations</source>
        <translation>{} Beobachtungen</translation>
    </message>
    <message>
        <source>{} observations of this season are not used in the fit: its weather is not complete yet.</source>
        <translation>{} Beobachtungen dieser Saison bleiben bei der Anpassung außer Acht: Das Wetter der Saison ist noch nicht vollständig.</translation>
    </message>
    <message>
        <source>{} observations of this season are not used in the fit: its weather is not complete.</source>
        <translation>{} Beobachtungen dieser Saison bleiben bei der Anpassung außer Acht: Das Wetter der Saison ist nicht vollständig.</translation>
    </message>
    <message>
        <source>{} observations of {} seasons are not used in the fit: their weather is not complete.</source>
        <translation>{} Beobachtungen aus {} Saisons bleiben bei der Anpassung außer Acht: Das Wetter dieser Saisons ist nicht vollständig.</translation>
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
        <source>{} opens about {} after the last receptive flower of {} ({}).</source>
        <translation>{} öffnet etwa {} nach der letzten empfängnisfähigen Blüte von {} ({}).</translation>
    </message>
    <message>
        <source>{} past seasons</source>
        <translation>{} vergangenen Saisons</translation>
    </message>
    <message>
        <source>{} pollen tasks, the first by {}.</source>
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
        <source>{} is at balloon stage or beyond: there is nothing left to force.</source>
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
        <source>{} trees, {:.0f} m walk</source>
        <translation>{} Bäume, {} m Rundgang</translation>
    </message>
    <message>
        <source>{} warnings</source>
        <translation>{} Warnungen</translation>
    </message>
    <message>
        <source>{} written, {} unchanged, {} of your own kept.</source>
        <translation>{} geschrieben, {} unverändert, {} eigene behalten.</translation>
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
        <source>{}, 1 letter differs</source>
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
        <translation>{}, Reihe {}, Position {}</translation>
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
        <source>{}, {} letters differ</source>
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
        <source>{}. Written to {} as {}; record-undo reverts it.</source>
        <translation>{}. In {} geschrieben als {}; record-undo nimmt es zurück.</translation>
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
        <source>{}: full bloom from {} to {}, forecast by {}.</source>
        <translation>{}: Vollblüte von {} bis {}, Verfahren: {}.</translation>
    </message>
    <message>
        <source>{}: full bloom of all about {}, forecast by {}.</source>
        <translation>{}: Vollblüte aller etwa am {}, Verfahren: {}.</translation>
    </message>
    <message>
        <source>{}: full bloom {}, 80 % prediction interval {} to {}; first bloom {}, end of bloom {}</source>
        <translation>{}: Vollblüte {}, 80-%-Vorhersageintervall {} bis {}; Blühbeginn {}, Blühende {}</translation>
    </message>
    <message>
        <source>{}: no accession to forecast.</source>
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
        <source>{0} notice</source>
        <translation>{} Hinweis</translation>
    </message>
    <message>
        <source>{0} notices</source>
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
        <source>bloom observation</source>
        <translation>Blühbeobachtung</translation>
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
        <source>withdrawn on</source>
        <translation>Datum der Entnahme</translation>
    </message>
    <message>
        <source>open percent</source>
        <translation>offene Blüten (%)</translation>
    </message>
    <message>
        <source>pollen test</source>
        <translation>Pollenkeimtest</translation>
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
        <source>seed withdrawal</source>
        <translation>Saatgutentnahme</translation>
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
        <source>spacing m</source>
        <translation>Pflanzabstand (m)</translation>
    </message>
    <message>
        <source>germination count</source>
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
        <source>1 error prevents the import: nothing would be written.</source>
        <translation>1 Fehler verhindert den Import: Es würde nichts geschrieben.</translation>
    </message>
    <message>
        <source>1 feature is in the book already, at the same location.</source>
        <translation>1 Objekt ist schon im Buch, in gleicher Lage.</translation>
    </message>
    <message>
        <source>1 tree</source>
        <translation>1 Baum</translation>
    </message>
    <message>
        <source>1 tree in the GNSS files.</source>
        <translation>1 Baum in den GNSS-Dateien.</translation>
    </message>
    <message>
        <source>1 tree row</source>
        <translation>1 Baumreihe</translation>
    </message>
    <message>
        <source>1 value is only a year; the book needs a date.</source>
        <translation>1 Wert ist nur ein Jahr; das Buch braucht ein Datum.</translation>
    </message>
    <message>
        <source>50 mm: print at 100 %, then measure this line</source>
        <translation>50 mm: mit 100 % drucken, dann diese Linie nachmessen</translation>
    </message>
    <message>
        <source>A better transformation, accurate to {}, needs the file {}, which is not installed.</source>
        <translation>Eine bessere Transformation, Genauigkeit {}, braucht die Datei {}, die nicht installiert ist.</translation>
    </message>
    <message>
        <source>A check tree at every nth position; 0 for none.</source>
        <translation>Ein Vergleichsbaum an jeder n-ten Position; 0 für keinen.</translation>
    </message>
    <message>
        <source>A label of {:.1f} x {:.1f} mm is too small to print on.</source>
        <translation>Ein Etikett von {} × {} mm ist zu klein zum Bedrucken.</translation>
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
        <source>A new accession, but its name is very similar to &quot;{}&quot;.</source>
        <translation>Eine neue Akzession, aber ihr Name ist „{}“ sehr ähnlich.</translation>
    </message>
    <message>
        <source>A number of seedlings cannot be read.</source>
        <translation>Eine Zahl von Sämlingen ist nicht lesbar.</translation>
    </message>
    <message>
        <source>A custom sheet needs the size of its labels.</source>
        <translation>Ein eigenes Bogenformat braucht die Größe der Etiketten.</translation>
    </message>
    <message>
        <source>Added: {}.</source>
        <translation>Hinzugefügt: {}.</translation>
    </message>
    <message>
        <source>Import or lay the rows first, or let add-rows draw it through its trees.</source>
        <translation>Zuerst die Reihen importieren oder anlegen, oder die Reihe mit add-rows durch ihre Bäume ziehen lassen.</translation>
    </message>
    <message>
        <source>Import the layer of the blocks first, or let add-rows draw it around its trees.</source>
        <translation>Zuerst den Layer der Quartiere importieren oder das Quartier mit add-rows um seine Bäume ziehen lassen.</translation>
    </message>
    <message>
        <source>After that it is late.</source>
        <translation>Danach ist es zu spät.</translation>
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
        <source>Any number; the same number gives the same random order.</source>
        <translation>Eine beliebige Zahl; dieselbe Zahl gibt dieselbe zufällige Reihenfolge.</translation>
    </message>
    <message>
        <source>No difference in final germination, but {} germinated earlier than {}: half after {:.0f} and {:.0f} days (p = {:.2g}).</source>
        <translation>Kein Unterschied in der Endkeimung, aber {} keimte früher als {}: die Hälfte nach {} und {} Tagen (p = {}).</translation>
    </message>
    <message>
        <source>Choose a larger scale or larger paper.</source>
        <translation>Einen größeren Maßstab oder größeres Papier wählen.</translation>
    </message>
    <message>
        <source>Choose a larger scale, or number the trees: positions are shorter than labels.</source>
        <translation>Einen größeren Maßstab wählen oder die Bäume nummerieren: Positionsnummern sind kürzer als Etiketten.</translation>
    </message>
    <message>
        <source>Choose fewer, or tags without letters.</source>
        <translation>Weniger wählen oder Anhänger ohne Buchstaben.</translation>
    </message>
    <message>
        <source>Choose fewer, or record the germination first.</source>
        <translation>Weniger wählen oder zuerst die Keimung erfassen.</translation>
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
        <source>Both together: used in the season plan.</source>
        <translation>Beides zusammen: im Saisonplan verwendet.</translation>
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
        <source>CSV of the store&apos;s temperature log: date, time of day if there is one, degrees Celsius. Where it is not given, the temperature recorded with each lot is used.</source>
        <translation>CSV mit der Temperaturaufzeichnung des Lagers: Datum, Uhrzeit, falls vorhanden, Grad Celsius. Ohne Angabe gilt die bei jeder Partie erfasste Temperatur.</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>Kalender</translation>
    </message>
    <message>
        <source>Failed at</source>
        <translation>Gescheitert bei</translation>
    </message>
    <message>
        <source>Transformed from {} to {} by &quot;{}&quot;.</source>
        <translation>Von {} nach {} transformiert mit „{}“.</translation>
    </message>
    <message>
        <source>Check tree</source>
        <translation>Vergleichsbaum</translation>
    </message>
    <message>
        <source>Check tree every</source>
        <translation>Vergleichsbaum alle</translation>
    </message>
    <message>
        <source>Check some positions on the map.</source>
        <translation>Einige Positionen auf der Karte prüfen.</translation>
    </message>
    <message>
        <source>Check the coordinates and their system.</source>
        <translation>Die Koordinaten und ihr Bezugssystem prüfen.</translation>
    </message>
    <message>
        <source>Check them on the map, or transform the layer with better parameters first.</source>
        <translation>Auf der Karte prüfen oder den Layer zuerst mit besseren Parametern transformieren.</translation>
    </message>
    <message>
        <source>Check trees are wanted but not named.</source>
        <translation>Vergleichsbäume sind gewünscht, aber nicht genannt.</translation>
    </message>
    <message>
        <source>Choose a block, an accession or fewer copies.</source>
        <translation>Ein Quartier, eine Akzession oder weniger Exemplare wählen.</translation>
    </message>
    <message>
        <source>Choose a block, larger paper or a smaller scale; or check whether a tree is misplaced on the map.</source>
        <translation>Ein Quartier, größeres Papier oder einen kleineren Maßstab wählen; oder prüfen, ob ein Baum auf der Karte falsch liegt.</translation>
    </message>
    <message>
        <source>Choose a block.</source>
        <translation>Ein Quartier wählen.</translation>
    </message>
    <message>
        <source>Choose one of them, and give - to the other.</source>
        <translation>Eines davon wählen und dem anderen - geben.</translation>
    </message>
    <message>
        <source>Choose other trees, or give them locations on the map.</source>
        <translation>Andere Bäume wählen oder ihnen eine Lage auf der Karte geben.</translation>
    </message>
    <message>
        <source>Days so far</source>
        <translation>Tage bisher</translation>
    </message>
    <message>
        <source>Compares treatments of the seed of one cross as a germination trial: final germination, its time course, confidence intervals, and whether there are enough seeds for a conclusion. Draws the germination curves.</source>
        <translation>Vergleicht Behandlungen der Samen einer Kreuzung als Keimversuch: Endkeimung, zeitlicher Verlauf, Konfidenzintervalle und ob die Samenzahl für eine Aussage reicht. Zeichnet die Keimverläufe.</translation>
    </message>
    <message>
        <source>Comparing with the book</source>
        <translation>Vergleich mit dem Buch</translation>
    </message>
    <message>
        <source>Complete them, or import the years as a remark: map &quot;{}=remark&quot;.</source>
        <translation>Vervollständigen oder die Jahre als Bemerkung importieren: map &quot;{}=remark&quot;.</translation>
    </message>
    <message>
        <source>Correct it in the layer, or map the field to another column with map.</source>
        <translation>Im Layer berichtigen oder das Feld mit map einer anderen Spalte zuordnen.</translation>
    </message>
    <message>
        <source>Correct it, or let add-accessions add it.</source>
        <translation>Berichtigen oder mit add-accessions anlegen lassen.</translation>
    </message>
    <message>
        <source>Correct the margin, the gap, the height or the number of rows.</source>
        <translation>Rand, Abstand, Höhe oder Zahl der Zeilen berichtigen.</translation>
    </message>
    <message>
        <source>Correct the margin, the gap, the width or the number of columns.</source>
        <translation>Rand, Abstand, Breite oder Zahl der Spalten berichtigen.</translation>
    </message>
    <message>
        <source>Correct them, or leave that field out with map.</source>
        <translation>Berichtigen oder dieses Feld mit map weglassen.</translation>
    </message>
    <message>
        <source>Count from the upper left, row by row.</source>
        <translation>Von links oben zählen, Zeile für Zeile.</translation>
    </message>
    <message>
        <source>Count lots of one trial on the same days.</source>
        <translation>Partien eines Versuchs an denselben Tagen zählen.</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Gezählt</translation>
    </message>
    <message>
        <source>Sums the stratification of every seed lot, in effective days and in chill portions, from the store&apos;s temperature or a temperature log; flags warm spells and frost, and shows when each lot will be ready and by when to sow it.</source>
        <translation>Summiert die Stratifikation jeder Saatgutpartie, in wirksamen Tagen und in Kälteportionen, aus der Temperatur des Lagers oder einer Temperaturaufzeichnung; meldet Wärme und Frost und zeigt, wann jede Partie bereit ist und bis wann zu säen ist.</translation>
    </message>
    <message>
        <source>Cross {}</source>
        <translation>Kreuzung {}</translation>
    </message>
    <message>
        <source>Status of crosses</source>
        <translation>Stand der Kreuzungen</translation>
    </message>
    <message>
        <source>Cut branches of {} at {} to force</source>
        <translation>Zweige von {} bei {} zum Treiben schneiden</translation>
    </message>
    <message>
        <source>Date of washing.</source>
        <translation>Datum des Auswaschens.</translation>
    </message>
    <message>
        <source>Days of stratification that its species requires, minimum and full.</source>
        <translation>Tage der Stratifikation, die ihre Art braucht, Minimum und voll.</translation>
    </message>
    <message>
        <source>Effective days: full from 0.5 to 5 °C, partial up to 9.5, reduced by warm days.</source>
        <translation>Wirksame Tage: voll bei 0,5 bis 5 °C, anteilig bis 9,5, vermindert durch warme Tage.</translation>
    </message>
    <message>
        <source>Differences between trees are correct; compare with the elevations in the book.</source>
        <translation>Unterschiede zwischen Bäumen stimmen; mit den Höhen im Buch vergleichen.</translation>
    </message>
    <message>
        <source>Distances are those on the ground, level.</source>
        <translation>Entfernungen gelten am Boden, waagerecht gemessen.</translation>
    </message>
    <message>
        <source>Draw fewer at a time.</source>
        <translation>Weniger auf einmal zeichnen.</translation>
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
        <translation>Jede Saatgutpartie, die noch Samen hat, die älteste zuerst.</translation>
    </message>
    <message>
        <source>Every seedling with its number and its position, in planting order.</source>
        <translation>Jeder Sämling mit Nummer und Position, in der Reihenfolge des Pflanzens.</translation>
    </message>
    <message>
        <source>Every pair of treatments of a cross, and their difference.</source>
        <translation>Je zwei Behandlungen einer Kreuzung und ihr Unterschied.</translation>
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
        <source>Own and handbook figures</source>
        <translation>Eigene und Handbuchwerte</translation>
    </message>
    <message>
        <source>Fill it in, or remove the feature from the layer.</source>
        <translation>Ausfüllen oder das Objekt aus dem Layer entfernen.</translation>
    </message>
    <message>
        <source>First day.</source>
        <translation>Erster Tag.</translation>
    </message>
    <message>
        <source>First germination from</source>
        <translation>Erste Keimung ab</translation>
    </message>
    <message>
        <source>Flowers pollinated</source>
        <translation>Bestäubte Blüten</translation>
    </message>
    <message>
        <source>Follows every cross from the flowers pollinated to the seedlings standing, with the next task and what is late; shows the seed in stock and the orchard&apos;s own figures.</source>
        <translation>Verfolgt jede Kreuzung von den bestäubten Blüten bis zu den stehenden Sämlingen, mit der nächsten Arbeit und allem Verspäteten; zeigt den Saatgutbestand und die eigenen Zahlen.</translation>
    </message>
    <message>
        <source>Found in the fruit, else in the cross&apos;s lots.</source>
        <translation>In den Früchten gefunden, sonst in den Saatgutpartien der Kreuzung.</translation>
    </message>
    <message>
        <source>Frost from {} to {}, down to {:.1f} °C: check the seed.</source>
        <translation>Frost vom {} bis {}, bis {} °C: Samen prüfen.</translation>
    </message>
    <message>
        <source>Fruit was harvested and the book has no seed lot of it. Seed left long in warm fruit germinates less; open rotten fruit at once.</source>
        <translation>Früchte wurden geerntet, und das Buch hat keine Saatgutpartie davon. Lange in warmen Früchten gelassene Samen keimen schlechter; faule Früchte gleich öffnen.</translation>
    </message>
    <message>
        <source>Fruits per flowers, with the 95 % confidence interval.</source>
        <translation>Früchte je Blüten, mit 95-%-Konfidenzintervall.</translation>
    </message>
    <message>
        <source>Collect pollen of {} at {}: {}</source>
        <translation>Pollen von {} sammeln bei {}: {}</translation>
    </message>
    <message>
        <source>Give degrees Celsius, the first number of the line.</source>
        <translation>Grad Celsius angeben, als erste Zahl der Zeile.</translation>
    </message>
    <message>
        <source>Give each a name of its own.</source>
        <translation>Jedem einen eigenen Namen geben.</translation>
    </message>
    <message>
        <source>Give label-width and label-height, or choose one of the sheets.</source>
        <translation>label-width und label-height angeben oder einen der genannten Bögen wählen.</translation>
    </message>
    <message>
        <source>Give one of them another name; where they are the same and the layer is only less exact, raise same-location.</source>
        <translation>Einem davon einen anderen Namen geben; sind sie dasselbe und ist der Layer nur ungenauer, same-location erhöhen.</translation>
    </message>
    <message>
        <source>Half germinated after</source>
        <translation>Hälfte gekeimt nach</translation>
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
        <source>Germination by treatment and medium, cross by cross.</source>
        <translation>Keimung nach Behandlung und Substrat, Kreuzung für Kreuzung.</translation>
    </message>
    <message>
        <source>Arrangement of the families.</source>
        <translation>Anordnung der Familien.</translation>
    </message>
    <message>
        <source>Difference of the shares: p value of Fisher&apos;s exact test, adjusted for multiple comparisons (Holm).</source>
        <translation>Unterschied der Anteile: p-Wert des exakten Tests nach Fisher, korrigiert für multiple Vergleiche (Holm).</translation>
    </message>
    <message>
        <source>If all of them are, give swap-axes yes; else correct it in the layer.</source>
        <translation>Wenn es bei allen so ist, swap-axes yes angeben; sonst im Layer berichtigen.</translation>
    </message>
    <message>
        <source>If it is a mistake, correct it in the layer before writing.</source>
        <translation>Wenn es ein Versehen ist, vor dem Schreiben im Layer berichtigen.</translation>
    </message>
    <message>
        <source>If one was removed, enter the date; else correct a position.</source>
        <translation>Wenn einer gerodet ist, das Datum eintragen; sonst eine Position berichtigen.</translation>
    </message>
    <message>
        <source>If that difference is real, about {} seeds in each would show it with a power of 80 %.</source>
        <translation>Ist der Unterschied echt, zeigten ihn etwa {} Samen je Partie mit einer Teststärke von 80 %.</translation>
    </message>
    <message>
        <source>If they are the same, keep one; else make them more different.</source>
        <translation>Wenn sie dasselbe sind, eines behalten; sonst unterscheidbarer machen.</translation>
    </message>
    <message>
        <source>In the book already: {}; left out: {}.</source>
        <translation>Schon im Buch: {}; weggelassen: {}.</translation>
    </message>
    <message>
        <source>In stratification</source>
        <translation>In Stratifikation</translation>
    </message>
    <message>
        <source>In the row.</source>
        <translation>In der Reihe.</translation>
    </message>
    <message>
        <source>Order of planting, and of the trays.</source>
        <translation>Reihenfolge des Pflanzens und der Topfplatten.</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Initialen</translation>
    </message>
    <message>
        <source>Install a font for that script, then print again.</source>
        <translation>Eine Schriftart für diese Schrift installieren, dann erneut drucken.</translation>
    </message>
    <message>
        <source>Install it (Debian: fonts-dejavu-core).</source>
        <translation>Installieren (Debian: fonts-dejavu-core).</translation>
    </message>
    <message>
        <source>Install it for PROJ if positions are needed with this accuracy.</source>
        <translation>Für PROJ installieren, wenn die Positionen so genau gebraucht werden.</translation>
    </message>
    <message>
        <source>Number of parts into which the rows are divided, each with its share of every family, where mixed.</source>
        <translation>Zahl der Teile, in die die Reihen geteilt werden, jeder mit seinem Anteil an jeder Familie, wo gemischt.</translation>
    </message>
    <message>
        <source>It is imported without a geometry; draw it in the book.</source>
        <translation>Es wird ohne Geometrie importiert; im Buch nachzeichnen.</translation>
    </message>
    <message>
        <source>It differs from &quot;{}&quot; of the book only by capitals or spaces.</source>
        <translation>Es unterscheidet sich von „{}“ im Buch nur durch Großschreibung oder Leerzeichen.</translation>
    </message>
    <message>
        <source>It differs from &quot;{}&quot; of {} only by capitals or spaces.</source>
        <translation>Es unterscheidet sich von „{}“ in {} nur durch Großschreibung oder Leerzeichen.</translation>
    </message>
    <message>
        <source>It has no label.</source>
        <translation>Das Etikett fehlt.</translation>
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
        <source>It ignores the difference of the two datums: positions may be off by hundreds of metres.</source>
        <translation>Es lässt den Unterschied der beiden geodätischen Bezugssysteme außer Acht: Positionen können um Hunderte Meter danebenliegen.</translation>
    </message>
    <message>
        <source>It must be at least {:.0f} x {:.0f} mm.</source>
        <translation>Nötig sind mindestens {} × {} mm.</translation>
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
        <source>It counts as the same and is written as in the book.</source>
        <translation>Es gilt als dasselbe und wird wie im Buch geschrieben.</translation>
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
        <translation>Ihr Kürzel.</translation>
    </message>
    <message>
        <source>Its fields are listed in the table of fields.</source>
        <translation>Die Felder stehen in der Tabelle der Felder.</translation>
    </message>
    <message>
        <source>Only its outline is imported.</source>
        <translation>Nur der Umriss wird importiert.</translation>
    </message>
    <message>
        <source>Its trees disagree: {}.</source>
        <translation>Die zugehörigen Bäume widersprechen sich: {}.</translation>
    </message>
    <message>
        <source>Keep one, or give one of them another name.</source>
        <translation>Eines behalten oder einem davon einen anderen Namen geben.</translation>
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
        <translation>Mit row-lay weitere Reihen anlegen oder bei crosses weniger Sämlinge nennen.</translation>
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
        <source>Longitude and latitude were taken as WGS 84, EPSG:4326.</source>
        <translation>Länge und Breite wurden als WGS 84, EPSG:4326, gelesen.</translation>
    </message>
    <message>
        <source>Check germination of cross {}</source>
        <translation>Keimung der Kreuzung {} kontrollieren</translation>
    </message>
    <message>
        <source>Lot {} has been in stratification since {}: check germination from {} days on.</source>
        <translation>Partie {} ist seit {} in Stratifikation: ab {} Tagen Keimung kontrollieren.</translation>
    </message>
    <message>
        <source>Lot {} is not in stratification yet; it needs {} to {} days.</source>
        <translation>Partie {} ist noch nicht in Stratifikation; sie braucht {} bis {} Tage.</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Partien</translation>
    </message>
    <message>
        <source>Lower limit of the 95 % confidence interval of the share (Wilson).</source>
        <translation>Untergrenze des 95-%-Konfidenzintervalls des Anteils (Wilson).</translation>
    </message>
    <message>
        <source>Mean germination time</source>
        <translation>Mittlere Keimdauer</translation>
    </message>
    <message>
        <source>Mean germination time.</source>
        <translation>Mittlere Keimdauer.</translation>
    </message>
    <message>
        <source>Mean sound seeds in a fruit, before the orchard&apos;s own counts.</source>
        <translation>Mittlere Zahl voller Samen je Frucht, vor den eigenen Zählungen.</translation>
    </message>
    <message>
        <source>Germination was higher with {} than with {}: {} against {} (p = {:.2g}).</source>
        <translation>Die Keimung war mit {} höher als mit {}: {} gegen {} (p = {}).</translation>
    </message>
    <message>
        <source>Name another season, or enter the crosses first.</source>
        <translation>Eine andere Saison nennen oder zuerst die Kreuzungen eintragen.</translation>
    </message>
    <message>
        <source>Name it as in the trees&apos; remarks, without the word planting.</source>
        <translation>Wie in den Bemerkungen der Bäume nennen, ohne das Wort planting.</translation>
    </message>
    <message>
        <source>Name the accession of the check trees.</source>
        <translation>Die Akzession der Vergleichsbäume nennen.</translation>
    </message>
    <message>
        <source>Name their accession.</source>
        <translation>Ihre Akzession nennen.</translation>
    </message>
    <message>
        <source>Requirement</source>
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
        <source>No significant difference between {} and {}: {} against {} (p = {:.2g}).</source>
        <translation>Kein gesicherter Unterschied zwischen {} und {}: {} gegen {} (p = {}).</translation>
    </message>
    <message>
        <source>No field was recognised as the name.</source>
        <translation>Kein Feld wurde als Name erkannt.</translation>
    </message>
    <message>
        <source>No field was recognised as the trees&apos; label.</source>
        <translation>Kein Feld wurde als Etikett der Bäume erkannt.</translation>
    </message>
    <message>
        <source>No font on this machine has every character of this label: boxes with their numbers stand in their place.</source>
        <translation>Keine Schriftart auf diesem Rechner hat alle Zeichen dieses Etiketts: An ihrer Stelle stehen Kästchen mit ihren Nummern.</translation>
    </message>
    <message>
        <source>Record the first day when stratification begins.</source>
        <translation>Den ersten Tag der Stratifikation erfassen.</translation>
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
        <source>Nothing was written; with write these would be added: {}.</source>
        <translation>Es wurde nichts geschrieben; mit write kämen dazu: {}.</translation>
    </message>
    <message>
        <source>Of the crossing.</source>
        <translation>Der Kreuzung.</translation>
    </message>
    <message>
        <source>Share of the seeds that germinated.</source>
        <translation>Anteil der gekeimten Samen.</translation>
    </message>
    <message>
        <source>Of the tree.</source>
        <translation>Des Baums.</translation>
    </message>
    <message>
        <source>Number of them not removed.</source>
        <translation>Zahl der nicht gerodeten.</translation>
    </message>
    <message>
        <source>Number of them not germinated yet.</source>
        <translation>Zahl der noch nicht gekeimten.</translation>
    </message>
    <message>
        <source>Of {} the book says &quot;{}&quot;.</source>
        <translation>Zu {} steht im Buch „{}“.</translation>
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
        <source>Only these crosses, separated by commas; all where none is named.</source>
        <translation>Nur diese Kreuzungen, durch Kommas getrennt; ohne Angabe alle.</translation>
    </message>
    <message>
        <source>Only this row of the block; all its rows where none is named.</source>
        <translation>Nur diese Reihe des Quartiers; ohne Angabe alle.</translation>
    </message>
    <message>
        <source>Only {} seeds of cross {} germinated and have no position yet.</source>
        <translation>Nur {} Samen der Kreuzung {} sind gekeimt und noch ohne Position.</translation>
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
        <source>Harvest the fruit of cross {}</source>
        <translation>Früchte der Kreuzung {} ernten</translation>
    </message>
    <message>
        <source>Harvested.</source>
        <translation>Geerntet.</translation>
    </message>
    <message>
        <source>Planting plan for seedlings</source>
        <translation>Pflanzplan für Sämlinge</translation>
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
        <source>Plot size</source>
        <translation>Parzellengröße</translation>
    </message>
    <message>
        <source>Pollinate {} for cross {}: {}</source>
        <translation>{} für Kreuzung {} bestäuben: {}</translation>
    </message>
    <message>
        <source>Pot the germinated seed of cross {}</source>
        <translation>Gekeimte Samen der Kreuzung {} topfen</translation>
    </message>
    <message>
        <source>Print at 100 %, not fitted to the page, and measure one sheet of plain paper first.</source>
        <translation>Mit 100 % drucken, nicht an die Seite angepasst, und zuerst einen Bogen aus normalem Papier nachmessen.</translation>
    </message>
    <message>
        <source>Stratify the seed of cross {}</source>
        <translation>Samen der Kreuzung {} stratifizieren</translation>
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
        <source>Ready: sow it before radicles get long.</source>
        <translation>Bereit: säen, bevor die Keimwurzeln lang werden.</translation>
    </message>
    <message>
        <source>Save the layer again with the encoding UTF-8.</source>
        <translation>Den Layer mit der Kodierung UTF-8 neu speichern.</translation>
    </message>
    <message>
        <source>Give it for those with accession-kind: cultivar, selection, seedling, species or unknown.</source>
        <translation>Für diese mit accession-kind angeben: cultivar, selection, seedling, species oder unknown.</translation>
    </message>
    <message>
        <source>Give it for those with block.</source>
        <translation>Für diese mit block angeben.</translation>
    </message>
    <message>
        <source>Give it with accession-kind: cultivar, selection, seedling, species or unknown.</source>
        <translation>Mit accession-kind angeben: cultivar, selection, seedling, species oder unknown.</translation>
    </message>
    <message>
        <source>Give it with species, as in species apple; or fill it in later.</source>
        <translation>Mit species angeben, etwa species apple; oder später nachtragen.</translation>
    </message>
    <message>
        <source>Give it with date-format: day-month-year or month-day-year.</source>
        <translation>Mit date-format angeben: day-month-year oder month-day-year.</translation>
    </message>
    <message>
        <source>Give it with map; every value differs in: {}.</source>
        <translation>Mit map angeben; jeder Wert ist anders in: {}.</translation>
    </message>
    <message>
        <source>Give it, as in map &quot;FIELD=label&quot;.</source>
        <translation>Angeben, etwa map &quot;FELD=label&quot;.</translation>
    </message>
    <message>
        <source>Give layer-crs if they are in another system.</source>
        <translation>layer-crs angeben, wenn sie in einem anderen System sind.</translation>
    </message>
    <message>
        <source>Give the other field with map: x is easting or longitude, y northing or latitude.</source>
        <translation>Das andere Feld mit map angeben: x ist Ostwert oder Länge, y Nordwert oder Breite.</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation>Samen</translation>
    </message>
    <message>
        <source>Stratification</source>
        <translation>Stratifikation</translation>
    </message>
    <message>
        <source>Seed is ripe about {} days after full bloom, by the general rule: the book has no value for {}.</source>
        <translation>Samen ist etwa {} Tage nach der Vollblüte reif, nach der allgemeinen Regel: Für {} hat das Buch keinen Wert.</translation>
    </message>
    <message>
        <source>Seed of {} is ripe about {} days after full bloom.</source>
        <translation>Samen von {} ist etwa {} Tage nach der Vollblüte reif.</translation>
    </message>
    <message>
        <source>Seed in stock</source>
        <translation>Saatgutbestand</translation>
    </message>
    <message>
        <source>Seed parent first.</source>
        <translation>Mutter zuerst.</translation>
    </message>
    <message>
        <source>Seed treatments</source>
        <translation>Samenbehandlungen</translation>
    </message>
    <message>
        <source>Compare seed treatments</source>
        <translation>Samenbehandlungen vergleichen</translation>
    </message>
    <message>
        <source>Number of seedlings of a family side by side, where mixed.</source>
        <translation>Zahl der Sämlinge einer Familie nebeneinander, wo gemischt.</translation>
    </message>
    <message>
        <source>Seedlings with a numbered position.</source>
        <translation>Sämlinge mit einer nummerierten Position.</translation>
    </message>
    <message>
        <source>Seeds per treatment to show a difference of this size with a power of 80 %.</source>
        <translation>Samen je Behandlung, um einen Unterschied dieser Größe mit einer Teststärke von 80 % zu zeigen.</translation>
    </message>
    <message>
        <source>Seeds in them.</source>
        <translation>Samen darin.</translation>
    </message>
    <message>
        <source>Seeds that are still in the lot.</source>
        <translation>Samen, die noch in der Partie sind.</translation>
    </message>
    <message>
        <source>Number of seeds stratified.</source>
        <translation>Zahl der stratifizierten Samen.</translation>
    </message>
    <message>
        <source>Seeds needed</source>
        <translation>Benötigte Samen</translation>
    </message>
    <message>
        <source>Share of sound seeds that become seedlings, before the orchard&apos;s own germination counts.</source>
        <translation>Anteil voller Samen, die Sämlinge werden, vor den eigenen Keimzählungen.</translation>
    </message>
    <message>
        <source>Share of pollinated flowers that set fruit, before the orchard&apos;s own counts.</source>
        <translation>Anteil bestäubter Blüten, die Früchte ansetzen, vor den eigenen Zählungen.</translation>
    </message>
    <message>
        <source>Shorten it.</source>
        <translation>Kürzen.</translation>
    </message>
    <message>
        <source>Expected germination</source>
        <translation>Erwartete Keimung</translation>
    </message>
    <message>
        <source>Since washing, else since stratification began.</source>
        <translation>Seit dem Auswaschen, sonst seit Beginn der Stratifikation.</translation>
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
        <translation>In einzelne Objekte aufteilen, jedes mit eigenem Namen.</translation>
    </message>
    <message>
        <source>Germination of the stratified seeds, with its 95 % confidence interval.</source>
        <translation>Keimung der stratifizierten Samen, mit 95-%-Konfidenzintervall.</translation>
    </message>
    <message>
        <source>Germination</source>
        <translation>Keimung</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>Stehend</translation>
    </message>
    <message>
        <source>Standing of planted, with the 95 % confidence interval.</source>
        <translation>Stehende der gepflanzten, mit 95-%-Konfidenzintervall.</translation>
    </message>
    <message>
        <source>Survival</source>
        <translation>Überleben</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Take larger labels, or a shorter label for the tree.</source>
        <translation>Größere Etiketten oder einen kürzeren Etikettentext für den Baum wählen.</translation>
    </message>
    <message>
        <source>Take larger labels, or leave out the code or some of the text.</source>
        <translation>Größere Etiketten wählen oder den Code oder einen Teil des Textes weglassen.</translation>
    </message>
    <message>
        <source>Use larger labels, or a shorter code.</source>
        <translation>Größere Etiketten oder einen kürzeren Code wählen.</translation>
    </message>
    <message>
        <source>Undo that first, or leave the planting.</source>
        <translation>Das zuerst zurücknehmen oder die Pflanzung belassen.</translation>
    </message>
    <message>
        <source>Remove the bags from {}, cross {}</source>
        <translation>Tüten von {} abnehmen, Kreuzung {}</translation>
    </message>
    <message>
        <source>Remove the planting of that name from the book again, as a whole.</source>
        <translation>Die Pflanzung dieses Namens im Ganzen wieder aus dem Buch nehmen.</translation>
    </message>
    <message>
        <source>Unit of the figures.</source>
        <translation>Einheit der Werte.</translation>
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
        <translation>Der Balken ist {} mm lang: mit 100 % drucken und dann nachmessen.</translation>
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
        <translation>Im Buch steht ein Baum mit diesem Etikett, {} m entfernt.</translation>
    </message>
    <message>
        <source>The book has it already with another value: {}.</source>
        <translation>Das Buch hat es schon mit einem anderen Wert: {}.</translation>
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
        <translation>Das Buch schreibt es „{}“: nur Großbuchstaben oder Leerzeichen weichen ab, in 1 Objekt.</translation>
    </message>
    <message>
        <source>The book writes it &quot;{}&quot;: only capitals or spaces differ, in {} features.</source>
        <translation>Das Buch schreibt es „{}“: nur Großbuchstaben oder Leerzeichen weichen ab, in {} Objekten.</translation>
    </message>
    <message>
        <source>The book&apos;s value stays; correct it there if it is wrong.</source>
        <translation>Der Wert im Buch bleibt; dort berichtigen, wenn er falsch ist.</translation>
    </message>
    <message>
        <source>The book&apos;s values stay; correct them there if they are wrong.</source>
        <translation>Die Werte im Buch bleiben; dort berichtigen, wenn sie falsch sind.</translation>
    </message>
    <message>
        <source>The calendar&apos;s name; the book&apos;s file name where not given.</source>
        <translation>Der Name des Kalenders; ohne Angabe der Dateiname des Buchs.</translation>
    </message>
    <message>
        <source>The modules of the QR code are smaller than {:.2f} mm: many readers will not read it, and printers of 300 dots per inch smear it.</source>
        <translation>Die Module des QR-Codes sind kleiner als {} mm: Viele Lesegeräte erkennen ihn nicht, und Drucker mit 300 Punkten je Zoll verschmieren ihn.</translation>
    </message>
    <message>
        <source>The first may germinate: check every week.</source>
        <translation>Die ersten können keimen: jede Woche kontrollieren.</translation>
    </message>
    <message>
        <source>The font {} is not on this machine: another takes its place, and text is wider or narrower than it should be.</source>
        <translation>Die Schrift {} ist auf diesem Rechner nicht vorhanden: Eine andere tritt an ihre Stelle, und der Text wird breiter oder schmaler, als er sein sollte.</translation>
    </message>
    <message>
        <source>The handbook&apos;s figures, this orchard&apos;s own and those used.</source>
        <translation>Die Zahlen des Handbuchs, die eigenen und die verwendeten.</translation>
    </message>
    <message>
        <source>The heights of {} points are above the ellipsoid, not above sea level: some ten metres more or less in most places.</source>
        <translation>Die Höhen von {} Punkten sind Höhen über dem Ellipsoid, nicht über dem Meer: Das macht an den meisten Orten einige zehn Meter mehr oder weniger aus.</translation>
    </message>
    <message>
        <source>The label has invisible characters; on paper they are blanks or question marks, in the code they are unchanged.</source>
        <translation>Das Etikett hat unsichtbare Zeichen; auf Papier sind sie Leerstellen oder Fragezeichen, im Code bleiben sie unverändert.</translation>
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
        <source>The layer does not give the kind of every accession.</source>
        <translation>Der Layer gibt nicht für jede Akzession die Art an.</translation>
    </message>
    <message>
        <source>The layer does not give the block of every row.</source>
        <translation>Der Layer gibt nicht für jede Reihe das Quartier an.</translation>
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
        <source>The letters a to z are not enough for these tags: {} were made.</source>
        <translation>Die Buchstaben a bis z reichen für diese Anhänger nicht: {} wurden gemacht.</translation>
    </message>
    <message>
        <source>The log has no temperature.</source>
        <translation>Die Aufzeichnung enthält keinen Messwert.</translation>
    </message>
    <message>
        <source>By the book the lot is not in stratification yet.</source>
        <translation>Nach dem Buch ist die Partie noch nicht in Stratifikation.</translation>
    </message>
    <message>
        <source>Stratification of every lot so far, when it will be ready and by when to sow.</source>
        <translation>Bisherige Stratifikation jeder Partie, wann sie bereit ist und bis wann zu säen ist.</translation>
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
        <source>The planting&apos;s name, kept with each tree; the date where none is given.</source>
        <translation>Name der Pflanzung, der bei jedem Baum steht; ohne Angabe das Datum.</translation>
    </message>
    <message>
        <source>The point&apos;s height cannot be one above the sea.</source>
        <translation>Die Höhe des Punktes kann keine Höhe über dem Meer sein.</translation>
    </message>
    <message>
        <source>Difference of the time courses: p value of the log-rank test; only where both were counted on the same days.</source>
        <translation>Unterschied der Verläufe: p-Wert des Log-Rank-Tests; nur wo beide an denselben Tagen gezählt wurden.</translation>
    </message>
    <message>
        <source>The same temperatures by the Dynamic Model.</source>
        <translation>Dieselben Temperaturen nach dem Dynamischen Modell.</translation>
    </message>
    <message>
        <source>Days until half of the germinated seeds had germinated (Farooq et al. 2005).</source>
        <translation>Tage, bis die Hälfte der gekeimten Samen gekeimt war (Farooq et al. 2005).</translation>
    </message>
    <message>
        <source>The seed lots that had it.</source>
        <translation>Die Saatgutpartien, die sie hatten.</translation>
    </message>
    <message>
        <source>The sheet has {} labels only.</source>
        <translation>Der Bogen hat nur {} Etiketten.</translation>
    </message>
    <message>
        <source>The species is not known: the requirement of apple is assumed.</source>
        <translation>Die Art ist nicht bekannt: Angenommen ist der Bedarf von Apfel.</translation>
    </message>
    <message>
        <source>The step at which it is known to have failed.</source>
        <translation>Der Schritt, an dem sie nachweislich scheiterte.</translation>
    </message>
    <message>
        <source>The store&apos;s temperature is not known: {:.0f} °C is assumed.</source>
        <translation>Die Temperatur des Lagers ist nicht bekannt: Angenommen sind {} °C.</translation>
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
        <source>Give it a header line that names its fields, and one line per row.</source>
        <translation>Eine Kopfzeile mit den Namen der Felder geben und für jede Zeile des Layers eine Zeile.</translation>
    </message>
    <message>
        <source>Line {} heads the columns; what stands above it was passed over.</source>
        <translation>Zeile {} ist die Kopfzeile; was darüber steht, wurde übergangen.</translation>
    </message>
    <message>
        <source>Check that they were read correctly; if not, save the file in UTF-8.</source>
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
        <source>This is no well-known text of a location.</source>
        <translation>Das ist kein Well-known Text einer Lage.</translation>
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
        <translation>Der Text ist zu lang für einen QR-Code: Er bleibt ohne.</translation>
    </message>
    <message>
        <source>The tree has no geographic position: its code has its label instead.</source>
        <translation>Der Baum hat keine geografische Position: Sein Code enthält stattdessen sein Etikett.</translation>
    </message>
    <message>
        <source>The tree has no location on the map: it is left out.</source>
        <translation>Der Baum hat keine Lage auf der Karte: Er wird weggelassen.</translation>
    </message>
    <message>
        <source>The tree is not planted yet: it is left out.</source>
        <translation>Der Baum ist noch nicht gepflanzt: Er wird weggelassen.</translation>
    </message>
    <message>
        <source>The tree was removed: it is left out.</source>
        <translation>Der Baum wurde gerodet: Er wird weggelassen.</translation>
    </message>
    <message>
        <source>The tree&apos;s address.</source>
        <translation>Die Adresse des Baums.</translation>
    </message>
    <message>
        <source>The trees lie too far apart for a map that shows them one by one: it would need more than 200 pages.</source>
        <translation>Die Bäume liegen zu weit auseinander für eine Karte, die sie einzeln zeigt: Sie bräuchte mehr als 200 Seiten.</translation>
    </message>
    <message>
        <source>There is no tree to draw.</source>
        <translation>Es gibt keinen Baum zu zeichnen.</translation>
    </message>
    <message>
        <source>There is no transformation from {} to the book&apos;s coordinates.</source>
        <translation>Es gibt keine Transformation von {} zu den Koordinaten des Buchs.</translation>
    </message>
    <message>
        <source>Thermometer log</source>
        <translation>Aufzeichnung des Thermometers</translation>
    </message>
    <message>
        <source>They are not imported; the book&apos;s rows stay as they are.</source>
        <translation>Sie werden nicht importiert; die Zeilen im Buch bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>Thirty days later it will germinate in its bag.</source>
        <translation>Dreißig Tage später keimt der Samen im Beutel.</translation>
    </message>
    <message>
        <source>This is no field mapping.</source>
        <translation>Das ist keine Feldzuordnung.</translation>
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
        <source>This is no integer.</source>
        <translation>Das ist keine ganze Zahl.</translation>
    </message>
    <message>
        <source>This position cannot be drawn in the book&apos;s coordinates.</source>
        <translation>Diese Position lässt sich in den Koordinaten des Buchs nicht zeichnen.</translation>
    </message>
    <message>
        <source>To sow or give away</source>
        <translation>Zu säen oder abzugeben</translation>
    </message>
    <message>
        <source>Too few seeds to compare {} and {}: even all of one against none of the other would not be significant.</source>
        <translation>Zu wenige Samen für einen Vergleich von {} und {}: Selbst alle der einen gegen keinen der anderen wären nicht signifikant.</translation>
    </message>
    <message>
        <source>Undid {}: {} rows were removed from the book.</source>
        <translation>{} zurückgenommen: {} Zeilen sind aus dem Buch entfernt.</translation>
    </message>
    <message>
        <source>Transform the layer first.</source>
        <translation>Den Layer zuerst transformieren.</translation>
    </message>
    <message>
        <source>Comparison of treatments</source>
        <translation>Vergleich der Behandlungen</translation>
    </message>
    <message>
        <source>Tree {} of the book is at the same location.</source>
        <translation>Baum {} aus dem Buch steht an derselben Stelle.</translation>
    </message>
    <message>
        <source>Tree {} of the layer is at the same location.</source>
        <translation>Baum {} aus dem Layer steht an derselben Stelle.</translation>
    </message>
    <message>
        <source>Two fields are to go to the same column.</source>
        <translation>Zwei Felder sollen in dieselbe Spalte.</translation>
    </message>
    <message>
        <source>Type the label again in the book.</source>
        <translation>Das Etikett im Buch neu eintippen.</translation>
    </message>
    <message>
        <source>Unknown for a check tree.</source>
        <translation>Unbekannt bei einem Vergleichsbaum.</translation>
    </message>
    <message>
        <source>Upper limit of the interval.</source>
        <translation>Obergrenze des Intervalls.</translation>
    </message>
    <message>
        <source>Used</source>
        <translation>Verwendet</translation>
    </message>
    <message>
        <source>Warm from {} to {}, up to {:.1f} °C.</source>
        <translation>Warm vom {} bis {}, bis {} °C.</translation>
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
        <source>Status of every cross, step by step; what was not counted is unknown.</source>
        <translation>Stand jeder Kreuzung, Schritt für Schritt; was nicht gezählt wurde, ist leer.</translation>
    </message>
    <message>
        <source>What is to be done next.</source>
        <translation>Was als Nächstes zu tun ist.</translation>
    </message>
    <message>
        <source>The figure.</source>
        <translation>Die Größe.</translation>
    </message>
    <message>
        <source>What it is.</source>
        <translation>Was er ist.</translation>
    </message>
    <message>
        <source>Basis of the calculation.</source>
        <translation>Grundlage der Berechnung.</translation>
    </message>
    <message>
        <source>Medium.</source>
        <translation>Substrat.</translation>
    </message>
    <message>
        <source>Result in words.</source>
        <translation>Ergebnis in Worten.</translation>
    </message>
    <message>
        <source>The orchard&apos;s own figure; unknown where nothing was counted.</source>
        <translation>Der eigene Wert; leer, wo nichts gezählt wurde.</translation>
    </message>
    <message>
        <source>Treatment; unknown where none.</source>
        <translation>Behandlung; leer, wo keine.</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>State, and disturbances.</source>
        <translation>Zustand und Störungen.</translation>
    </message>
    <message>
        <source>Location.</source>
        <translation>Lage.</translation>
    </message>
    <message>
        <source>Whether completed and failed crosses are left out.</source>
        <translation>Ob abgeschlossene und gescheiterte Kreuzungen wegbleiben.</translation>
    </message>
    <message>
        <source>Whether lots that are no longer in stratification are shown as well.</source>
        <translation>Ob auch Partien gezeigt werden, deren Stratifikation beendet ist.</translation>
    </message>
    <message>
        <source>Whether that day is past.</source>
        <translation>Ob dieser Tag vorbei ist.</translation>
    </message>
    <message>
        <source>Whether the orchard&apos;s own counts of fruit, seed and germination update the figures below.</source>
        <translation>Ob die eigenen Zählungen von Früchten, Samen und Keimung die Werte darunter verändern.</translation>
    </message>
    <message>
        <source>Crosses, with the number of seedlings of each, as in 24-01=12; 24-02=8. All germinated seedlings without a position where none is named.</source>
        <translation>Kreuzungen, mit der Zahl der Sämlinge von jeder, wie in 24-01=12; 24-02=8. Ohne Angabe alle gekeimten Sämlinge ohne Position.</translation>
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
        <translation>FELD=Spalte schreiben; mit FELD2=- bleibt ein Feld weg.</translation>
    </message>
    <message>
        <source>Write dates as 2026-11-25; a time of day may follow.</source>
        <translation>Datumsangaben als 2026-11-25 schreiben; eine Uhrzeit darf folgen.</translation>
    </message>
    <message>
        <source>Write it as in 2026-04-12.</source>
        <translation>Wie in 2026-04-12 schreiben.</translation>
    </message>
    <message>
        <source>Write them all in one format; best as in 2026-04-12.</source>
        <translation>Alle in einer Form schreiben; am besten wie in 2026-04-12.</translation>
    </message>
    <message>
        <source>Write them as 24-01=12; 24-02=8, or 24-01 for all.</source>
        <translation>Als 24-01=12; 24-02=8 schreiben oder 24-01 für alle.</translation>
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
        <source>Own</source>
        <translation>Eigene</translation>
    </message>
    <message>
        <source>days since stratification began, else since washing</source>
        <translation>Tage seit Beginn der Stratifikation, sonst seit dem Auswaschen</translation>
    </message>
    <message>
        <source>each family as one group</source>
        <translation>jede Familie als eine Gruppe</translation>
    </message>
    <message>
        <source>families in short plots, in random order, alike in every part of the rows</source>
        <translation>Familien in kurzen Parzellen, in zufälliger Reihenfolge, in jedem Teil der Reihen gleich</translation>
    </message>
    <message>
        <source>fruit set of pollinated flowers</source>
        <translation>Fruchtansatz bestäubter Blüten</translation>
    </message>
    <message>
        <source>grid north</source>
        <translation>Gitternord</translation>
    </message>
    <message>
        <source>check germination</source>
        <translation>Keimung kontrollieren</translation>
    </message>
    <message>
        <source>no flower was pollinated</source>
        <translation>keine Blüte bestäubt</translation>
    </message>
    <message>
        <source>no fruit set</source>
        <translation>keine Frucht angesetzt</translation>
    </message>
    <message>
        <source>no seed stratified</source>
        <translation>kein Samen stratifiziert</translation>
    </message>
    <message>
        <source>no seed germinated</source>
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
        <source>harvest the fruit</source>
        <translation>Früchte ernten</translation>
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
        <source>pot the germinated seed</source>
        <translation>gekeimte Samen topfen</translation>
    </message>
    <message>
        <source>stratify the seed</source>
        <translation>Samen stratifizieren</translation>
    </message>
    <message>
        <source>sound seeds per fruit</source>
        <translation>volle Samen je Frucht</translation>
    </message>
    <message>
        <source>germination of seeds</source>
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
        <translation>{} „{}“, nicht „{}“</translation>
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
        <source>{} days without a temperature do not count.</source>
        <translation>{} Tage ohne Messwert zählen nicht.</translation>
    </message>
    <message>
        <source>{} errors prevent the import: nothing would be written.</source>
        <translation>{} Fehler verhindern den Import: Es würde nichts geschrieben.</translation>
    </message>
    <message>
        <source>{} features are in the book already, at the same location.</source>
        <translation>{} Objekte sind schon im Buch, in gleicher Lage.</translation>
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
        <translation>{} Etiketten zu {} × {} mm auf 1 Seite.</translation>
    </message>
    <message>
        <source>{} labels of {:g} x {:g} mm on {} pages.</source>
        <translation>{} Etiketten zu {} × {} mm auf {} Seiten.</translation>
    </message>
    <message>
        <source>{} lots in stratification, {} of them ready.</source>
        <translation>{} Partien in Stratifikation, davon {} bereit.</translation>
    </message>
    <message>
        <source>{} m</source>
        <translation>{} m</translation>
    </message>
    <message>
        <source>{} of {} germinated, {:.0f} to {:.0f} %</source>
        <translation>{} von {} gekeimt, {} bis {} %</translation>
    </message>
    <message>
        <source>{} or more</source>
        <translation>{} oder mehr</translation>
    </message>
    <message>
        <source>{} positions are needed and {} are vacant.</source>
        <translation>{} Positionen werden gebraucht und {} sind frei.</translation>
    </message>
    <message>
        <source>{} seeds germinated and none has a numbered position yet.</source>
        <translation>{} Samen keimten, und keiner hat schon eine nummerierte Position.</translation>
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
        <source>{} trees in the GNSS files.</source>
        <translation>{} Bäume in den GNSS-Dateien.</translation>
    </message>
    <message>
        <source>{} trees have no geographic position: they are missing in the GNSS files.</source>
        <translation>{} Bäume haben keine geografische Position: Sie fehlen in den GNSS-Dateien.</translation>
    </message>
    <message>
        <source>{} values are only a year; the book needs a date.</source>
        <translation>{} Werte sind nur ein Jahr; das Buch braucht ein Datum.</translation>
    </message>
    <message>
        <source>“{}”</source>
        <translation>„{}“</translation>
    </message>
    <message>
        <source>The time courses of {} and {} of cross {} are not compared: they were counted on different days, or too few seeds germinated.</source>
        <translation>Die Verläufe von {} und {} der Kreuzung {} werden nicht verglichen: Sie wurden an verschiedenen Tagen gezählt, oder zu wenige Samen keimten.</translation>
    </message>
    <message>
        <source>% of a descendant: expected genetic contribution of {}</source>
        <translation>% eines Nachkommen: erwarteter genetischer Anteil von {}</translation>
    </message>
    <message>
        <source>% of an ancestor: its expected genetic contribution to {}</source>
        <translation>% eines Vorfahren: sein erwarteter genetischer Anteil an {}</translation>
    </message>
    <message>
        <source>(see above)</source>
        <translation>(siehe oben)</translation>
    </message>
    <message>
        <source>1 accession is not listed: the scores have no information on it.</source>
        <translation>1 Akzession ist nicht aufgeführt: Die Bonituren sagen nichts über sie.</translation>
    </message>
    <message>
        <source>1 flower pollinated</source>
        <translation>1 Blüte bestäubt</translation>
    </message>
    <message>
        <source>1 for the highest value; where low scores are desired, read from the end.</source>
        <translation>1 für den höchsten Wert; wo niedrige Bonituren erwünscht sind, vom Ende her lesen.</translation>
    </message>
    <message>
        <source>1 line has an error: nothing would be written.</source>
        <translation>1 Zeile hat einen Fehler: Es würde nichts geschrieben.</translation>
    </message>
    <message>
        <source>1 task</source>
        <translation>1 Aufgabe</translation>
    </message>
    <message>
        <source>1 for the most promising.</source>
        <translation>1 für die aussichtsreichste.</translation>
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
        <source>1 tagged branch has fruit</source>
        <translation>1 Zweig mit Anhänger trägt Früchte</translation>
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
        <source>The column &quot;where&quot; is only for orientation; it is not read.</source>
        <translation>Die Spalte „where“ dient nur zur Orientierung; sie wird nicht gelesen.</translation>
    </message>
    <message>
        <source>A cross needs two parents.</source>
        <translation>Eine Kreuzung braucht zwei Eltern.</translation>
    </message>
    <message>
        <source>A cross cannot have the number {}.</source>
        <translation>Eine Kreuzung kann nicht die Nummer {} haben.</translation>
    </message>
    <message>
        <source>A parent has no name.</source>
        <translation>Ein Elter hat keinen Namen.</translation>
    </message>
    <message>
        <source>A sport: it has the parents of {}.</source>
        <translation>Eine Mutante: Sie hat die Eltern von {}.</translation>
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
        <translation>Akzessionen sind im Kreis als Mutanten voneinander eingetragen: {}.</translation>
    </message>
    <message>
        <source>Accessions of the whole book whose alleles do not fit their recorded parents.</source>
        <translation>Akzessionen des ganzen Buchs, deren Allele nicht zu den eingetragenen Eltern passen.</translation>
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
        <source>Add it, or give the date of such lines with date-if-blank.</source>
        <translation>Hinzufügen oder das Datum solcher Zeilen mit date-if-blank angeben.</translation>
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
        <translation>Allele des Vaters</translation>
    </message>
    <message>
        <source>Alleles of the seed parent</source>
        <translation>Allele der Mutter</translation>
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
        <translation>Eine Akzession ist als Mutante ihrer selbst eingetragen, jede als Mutante der nächsten.</translation>
    </message>
    <message>
        <source>Names of accessions or labels of trees, separated by commas; all parents where none is named.</source>
        <translation>Namen von Akzessionen oder Etiketten von Bäumen, durch Kommas getrennt; ohne Angabe alle Eltern.</translation>
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
        <source>As recorded.</source>
        <translation>Wie eingetragen.</translation>
    </message>
    <message>
        <source>As it would be written.</source>
        <translation>Wie es geschrieben würde.</translation>
    </message>
    <message>
        <source>As recorded: an accession or a blend.</source>
        <translation>Wie eingetragen: eine Akzession oder eine Pollenmischung.</translation>
    </message>
    <message>
        <source>Choose a trait that was scored.</source>
        <translation>Ein Merkmal angeben, für das es Bonituren gibt.</translation>
    </message>
    <message>
        <source>Set more generations down; the table of descendants has them all.</source>
        <translation>Mehr Generationen abwärts verlangen; die Tabelle der Nachkommen enthält alle.</translation>
    </message>
    <message>
        <source>Set more generations up.</source>
        <translation>Mehr Generationen aufwärts verlangen.</translation>
    </message>
    <message>
        <source>At the trees</source>
        <translation>An den Bäumen</translation>
    </message>
    <message>
        <source>At this tag: there cannot be more fruit.</source>
        <translation>An diesem Anhänger: Mehr Früchte kann es dort nicht geben.</translation>
    </message>
    <message>
        <source>Better than</source>
        <translation>Besser als</translation>
    </message>
    <message>
        <source>Two names without a cross between them.</source>
        <translation>Zwei Namen ohne Kreuzung dazwischen.</translation>
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
        <source>By a pollen blend, weighted by its shares.</source>
        <translation>Durch eine Pollenmischung, gewichtet nach deren Anteilen.</translation>
    </message>
    <message>
        <source>By its alleles it can only come from pollen that the style should have rejected.</source>
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
        <source>By the selection index, above the founders, in SD of the scores.</source>
        <translation>Nach dem Selektionsindex, über den Stammeltern, in SD der Bonituren.</translation>
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
        <source>Probability with field data</source>
        <translation>Wahrscheinlichkeit mit Felddaten</translation>
    </message>
    <message>
        <source>Check its parents and all three records; s_contradiction shows which allele is missing.</source>
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
        <source>Code of the cross; unknown where it is not in the book.</source>
        <translation>Kürzel der Kreuzung; leer, wenn es nicht im Buch steht.</translation>
    </message>
    <message>
        <source>Coefficient of inbreeding; unknown where it cannot be calculated.</source>
        <translation>Inzuchtkoeffizient; leer, wenn er sich nicht berechnen lässt.</translation>
    </message>
    <message>
        <source>Coefficient of kinship: the inbreeding of an offspring of the two; unknown where it cannot be calculated.</source>
        <translation>Verwandtschaftskoeffizient: die Inzucht eines Nachkommen der beiden; leer, wenn er sich nicht berechnen lässt.</translation>
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
        <source>Cross {}: harvest the fruit</source>
        <translation>Kreuzung {}: Früchte ernten</translation>
    </message>
    <message>
        <source>Crosses per parent</source>
        <translation>Kreuzungen je Elter</translation>
    </message>
    <message>
        <source>Pairs not suggested</source>
        <translation>Nicht vorgeschlagene Paare</translation>
    </message>
    <message>
        <source>Crosses to make, the most promising first.</source>
        <translation>Vorgeschlagene Kreuzungen, die aussichtsreichste zuerst.</translation>
    </message>
    <message>
        <source>Date of lines without one</source>
        <translation>Datum für Zeilen ohne Datum</translation>
    </message>
    <message>
        <source>Dates as in 2026-05-12. Decimals with a point or a comma, no separator of thousands.</source>
        <translation>Datum wie 2026-05-12. Dezimalzahlen mit Punkt oder Komma, keine Tausendertrennzeichen.</translation>
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
        <source>Standard error</source>
        <translation>Standardfehler</translation>
    </message>
    <message>
        <source>Concerns</source>
        <translation>Bedenken</translation>
    </message>
    <message>
        <source>Drawing the pedigree</source>
        <translation>Abstammung wird gezeichnet</translation>
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
        <source>Early cultivar: its fruit is ripe before its seed. Store it for two to four weeks before opening; open rotten fruit at once.</source>
        <translation>Frühe Sorte: Ihre Frucht ist vor dem Samen reif. Vor dem Öffnen zwei bis vier Wochen lagern; faule Früchte gleich öffnen.</translation>
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
        <source>Every standing seedling, and the years in which first fruiting is expected.</source>
        <translation>Jeder stehende Sämling und die Jahre, in denen die ersten Früchte zu erwarten sind.</translation>
    </message>
    <message>
        <source>Every pair of the accessions in both directions: compatibility by the alleles and by fruit set in the field.</source>
        <translation>Je zwei der Akzessionen in beiden Richtungen: Verträglichkeit nach den Allelen und nach dem Fruchtansatz im Feld.</translation>
    </message>
    <message>
        <source>Every pair of the accessions, the most closely related first.</source>
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
        <source>Expected genetic contribution to the descendant.</source>
        <translation>Erwarteter genetischer Anteil am Nachkommen.</translation>
    </message>
    <message>
        <source>Expected genetic contribution; the contributions of founders add up to 1.</source>
        <translation>Erwarteter genetischer Anteil; die Anteile der Stammeltern ergeben zusammen 1.</translation>
    </message>
    <message>
        <source>Expected: the pedigree has a pollen blend.</source>
        <translation>Erwartet: Die Abstammung enthält eine Pollenmischung.</translation>
    </message>
    <message>
        <source>Family</source>
        <translation>Familie</translation>
    </message>
    <message>
        <source>Longest path</source>
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
        <source>Fill it in, or give the date of such lines with date-if-blank.</source>
        <translation>Ausfüllen oder das Datum solcher Zeilen mit date-if-blank angeben.</translation>
    </message>
    <message>
        <source>First and last year of its scores.</source>
        <translation>Erstes und letztes Jahr seiner Bonituren.</translation>
    </message>
    <message>
        <source>First day at the flowers.</source>
        <translation>Erster Tag an den Blüten.</translation>
    </message>
    <message>
        <source>First day; unknown where any day is suitable.</source>
        <translation>Erster Tag; leer, wenn jeder Tag recht ist.</translation>
    </message>
    <message>
        <source>First fruiting</source>
        <translation>Erste Früchte</translation>
    </message>
    <message>
        <source>First fruiting and families</source>
        <translation>Erste Früchte und Familien</translation>
    </message>
    <message>
        <source>First year in which it may fruit.</source>
        <translation>Erstes Jahr, in dem er Früchte tragen kann.</translation>
    </message>
    <message>
        <source>Flowers to pollinate or to collect, pollen.</source>
        <translation>Zu bestäubende oder zu sammelnde Blüten, Pollen.</translation>
    </message>
    <message>
        <source>Following the pedigree</source>
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
        <source>From unknown parents.</source>
        <translation>Von unbekannten Eltern.</translation>
    </message>
    <message>
        <source>From sowing to the year given.</source>
        <translation>Von der Aussaat bis zum angegebenen Jahr.</translation>
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
        <translation>Von unbekannten Eltern: {} %.</translation>
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
        <source>Fruits of them; for pear only those with sound seed.</source>
        <translation>Früchte daraus; bei Birnen nur solche mit vollen Samen.</translation>
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
        <source>Full bloom {}, by the date of pollination.</source>
        <translation>Vollblüte {}, nach dem Datum der Bestäubung.</translation>
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
        <source>Generations back by the longest path.</source>
        <translation>Generationen zurück auf dem längsten Weg.</translation>
    </message>
    <message>
        <source>Generations back by the shortest path: 1 for a parent.</source>
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
        <source>Generations forward by the shortest path: 1 for an offspring.</source>
        <translation>Generationen abwärts auf dem kürzesten Weg: 1 für einen direkten Nachkommen.</translation>
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
        <source>Give it a header of descriptors and one line per accession.</source>
        <translation>Eine Kopfzeile mit Deskriptoren und je Akzession eine Zeile anlegen.</translation>
    </message>
    <message>
        <source>Give the file a header of descriptors; see passport-export.</source>
        <translation>Der Datei eine Kopfzeile mit Deskriptoren geben; siehe passport-export.</translation>
    </message>
    <message>
        <source>Give the name of an accession or the label of a tree as in the book.</source>
        <translation>Den Namen einer Akzession oder das Etikett eines Baums so angeben, wie sie im Buch stehen.</translation>
    </message>
    <message>
        <source>Give the traits with weights.</source>
        <translation>Die Merkmale mit weights angeben.</translation>
    </message>
    <message>
        <source>Give the tree its accession.</source>
        <translation>Dem Baum seine Akzession zuweisen.</translation>
    </message>
    <message>
        <source>Late cultivar: protect the fruit from frost, birds and wind, and harvest before a hard frost. Open fruit with a rotten core at once and keep its seed separate.</source>
        <translation>Späte Sorte: Früchte vor Frost, Vögeln und Wind schützen und vor strengem Frost ernten. Früchte mit faulem Kernhaus gleich öffnen und ihren Samen gesondert halten.</translation>
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
        <source>Give it a heading, or remove it.</source>
        <translation>Mit einer Überschrift versehen oder entfernen.</translation>
    </message>
    <message>
        <source>Heritability</source>
        <translation>Erblichkeit</translation>
    </message>
    <message>
        <source>Comparing alleles</source>
        <translation>Allele werden verglichen</translation>
    </message>
    <message>
        <source>Deviation from the founders&apos; mean; the offspring of two parents is expected at the mean of their values.</source>
        <translation>Abweichung vom Mittel der Stammeltern; die Nachkommen zweier Eltern werden im Mittel von deren Zuchtwerten erwartet.</translation>
    </message>
    <message>
        <source>An example.</source>
        <translation>Ein Beispiel.</translation>
    </message>
    <message>
        <source>Squared accuracy of the breeding value, 0 for none to 1 for perfect.</source>
        <translation>Quadrierte Genauigkeit des Zuchtwerts, 0 für keine bis 1 für volle.</translation>
    </message>
    <message>
        <source>Kinship of the parents is not known.</source>
        <translation>Die Verwandtschaft der Eltern ist nicht bekannt.</translation>
    </message>
    <message>
        <source>How the pollen can be obtained this spring.</source>
        <translation>Wie der Pollen in diesem Frühjahr zu bekommen wäre.</translation>
    </message>
    <message>
        <source>Scores of the seedlings of each family so far, trait by trait.</source>
        <translation>Bonituren der Sämlinge jeder Familie bisher, Merkmal für Merkmal.</translation>
    </message>
    <message>
        <source>Hydrogen peroxide.</source>
        <translation>Wasserstoffperoxid.</translation>
    </message>
    <message>
        <source>Import records</source>
        <translation>Erfassungsbogen importieren</translation>
    </message>
    <message>
        <source>In block {} these have their positions: {}. Print their labels with label-sheet and the map with field-map; undo removes them as a whole.</source>
        <translation>In Quartier {} haben diese ihre Positionen: {}. Ihre Etiketten mit label-sheet und die Karte mit field-map drucken; undo nimmt sie als Ganzes zurück.</translation>
    </message>
    <message>
        <source>In block {} these would have positions: {}; nothing was written.</source>
        <translation>In Quartier {} bekämen diese Positionen: {}; es wurde nichts geschrieben.</translation>
    </message>
    <message>
        <source>Number of pedigree paths to the ancestor.</source>
        <translation>Zahl der Abstammungswege zum Vorfahren.</translation>
    </message>
    <message>
        <source>Maximum number of crosses per parent.</source>
        <translation>Höchstzahl der Kreuzungen je Elter.</translation>
    </message>
    <message>
        <source>In walking order, about {:.0f} m along the alleys.</source>
        <translation>In der Reihenfolge des Rundgangs, etwa {} m durch die Fahrgassen.</translation>
    </message>
    <message>
        <source>In walking order, then the indoor work.</source>
        <translation>In der Reihenfolge des Rundgangs, dann die Arbeiten im Haus.</translation>
    </message>
    <message>
        <source>In walking order.</source>
        <translation>In der Reihenfolge des Rundgangs.</translation>
    </message>
    <message>
        <source>In which scores were made.</source>
        <translation>In denen Bonituren vergeben wurden.</translation>
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
        <source>It is a sport of {}, which has other parents or none: its own are not used.</source>
        <translation>Sie ist eine Mutante von {}, mit anderen oder ohne Eltern: Ihre eigenen Eltern bleiben außer Acht.</translation>
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
        <translation>Vater oder Pollenmischung.</translation>
    </message>
    <message>
        <source>Its seed parent.</source>
        <translation>Die Mutter.</translation>
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
        <source>Last day; unknown where there is none.</source>
        <translation>Letzter Tag; leer, wenn es keinen gibt.</translation>
    </message>
    <message>
        <source>Last safe day to collect it.</source>
        <translation>Letzter sicherer Tag, ihn zu sammeln.</translation>
    </message>
    <message>
        <source>Latest</source>
        <translation>Spätestens</translation>
    </message>
    <message>
        <source>Leave it out: the book has no scores.</source>
        <translation>Weglassen: Das Buch hat keine Bonituren.</translation>
    </message>
    <message>
        <source>Pedigree notation</source>
        <translation>Schreibweise der Abstammung</translation>
    </message>
    <message>
        <source>Line of the file.</source>
        <translation>Zeile der Datei.</translation>
    </message>
    <message>
        <source>Pedigree of {}</source>
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
        <source>Check for outlying scores.</source>
        <translation>Nach Ausreißern unter den Bonituren suchen.</translation>
    </message>
    <message>
        <source>Check whether it has flowers; correct the parent or the season if it cannot.</source>
        <translation>Nachsehen, ob er Blüten hat; den Elter oder die Saison berichtigen, wenn es nicht sein kann.</translation>
    </message>
    <message>
        <source>Make a sheet with record-template and fill it in.</source>
        <translation>Mit record-template einen Bogen anlegen und ausfüllen.</translation>
    </message>
    <message>
        <source>Make the names different, with the number behind perhaps.</source>
        <translation>Die Namen unterscheiden, etwa mit der Nummer dahinter.</translation>
    </message>
    <message>
        <source>Makes a sheet to be filled in outdoors or indoors, one record per line, with the expected lines: trees in walking order, tags whose fruit is awaited, lots with seed left. A second file explains its columns; record-import imports the filled sheet.</source>
        <translation>Legt einen Bogen an, der draußen oder im Haus auszufüllen ist, je Eintrag eine Zeile, mit den erwarteten Zeilen: Bäume in der Reihenfolge des Rundgangs, Anhänger, deren Früchte erwartet werden, Partien mit Restbestand. Eine zweite Datei erklärt die Spalten; record-import importiert den ausgefüllten Bogen.</translation>
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
        <source>Mean of its known kinships with the others of this list, sports left out: the lower, the less it is related to them.</source>
        <translation>Mittel der bekannten Verwandtschaften mit den anderen dieser Liste, ohne Mutanten: je niedriger, desto weniger verwandt.</translation>
    </message>
    <message>
        <source>Mean of that grandparent.</source>
        <translation>Mittel dieses Großelters.</translation>
    </message>
    <message>
        <source>Mean of the pollen parent; of a blend that of its scored members by their shares.</source>
        <translation>Mittel des Vaters; bei einer Pollenmischung das ihrer bonitierten Bestandteile nach Anteilen.</translation>
    </message>
    <message>
        <source>Mean of the seed parent.</source>
        <translation>Mittel der Mutter.</translation>
    </message>
    <message>
        <source>Mean over its trees, each tree&apos;s scores averaged first; in the trait&apos;s own unit.</source>
        <translation>Mittel über ihre Bäume, wobei die Bonituren jedes Baums zuerst gemittelt werden; in der Einheit des Merkmals.</translation>
    </message>
    <message>
        <source>Correct it in the spreadsheet, or type the value.</source>
        <translation>In der Tabellenkalkulation berichtigen oder den Wert eintippen.</translation>
    </message>
    <message>
        <source>Maximum kinship</source>
        <translation>Höchste Verwandtschaft</translation>
    </message>
    <message>
        <source>Name accessions as in the book.</source>
        <translation>Akzessionen wie im Buch nennen.</translation>
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
        <translation>Eine nennen, die selbst bonitiert ist oder deren Verwandte es sind.</translation>
    </message>
    <message>
        <source>Name the accession that it came from, or clear the field.</source>
        <translation>Die Akzession nennen, aus der sie hervorging, oder das Feld leeren.</translation>
    </message>
    <message>
        <source>Names of accessions or blends, or labels of trees, separated by commas; the parents of the season&apos;s crosses where left out.</source>
        <translation>Namen von Akzessionen oder Pollenmischungen oder Etiketten von Bäumen, durch Kommas getrennt; ohne Angabe die Eltern der Kreuzungen der Saison.</translation>
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
        <source>Neither the book nor the file has this parent of {}: it stays unknown.</source>
        <translation>Weder das Buch noch die Datei hat diesen Elter von {}: Er bleibt unbekannt.</translation>
    </message>
    <message>
        <source>Never with acids or ammonia; rinse the seed well.</source>
        <translation>Nie mit Säuren oder Ammoniak; den Samen gut spülen.</translation>
    </message>
    <message>
        <source>No parent is recorded.</source>
        <translation>Es ist kein Elter eingetragen.</translation>
    </message>
    <message>
        <source>No parent of either is recorded.</source>
        <translation>Von keiner der beiden ist ein Elter eingetragen.</translation>
    </message>
    <message>
        <source>No parent of its parents is recorded: assumed to be unrelated.</source>
        <translation>Zu ihren Eltern ist kein Elter eingetragen: Sie gelten als nicht verwandt.</translation>
    </message>
    <message>
        <source>No parent of {} is recorded.</source>
        <translation>Von {} ist kein Elter eingetragen.</translation>
    </message>
    <message>
        <source>No recorded parents are contradicted by alleles.</source>
        <translation>Keine eingetragenen Eltern widersprechen den Allelen.</translation>
    </message>
    <message>
        <source>No trait weights were given, so only kinship, alleles and bloom decide.</source>
        <translation>Es sind keine Merkmalsgewichte angegeben; so entscheiden allein Verwandtschaft, Allele und Blüte.</translation>
    </message>
    <message>
        <source>No tree was scored for this trait.</source>
        <translation>Kein Baum wurde auf dieses Merkmal bonitiert.</translation>
    </message>
    <message>
        <source>This trait was not scored.</source>
        <translation>Dieses Merkmal ist nicht bonitiert.</translation>
    </message>
    <message>
        <source>None of {} flowers set.</source>
        <translation>Keine von {} Blüten hat angesetzt.</translation>
    </message>
    <message>
        <source>Not significantly better than the next: the means differ by less than their standard error.</source>
        <translation>Nicht gesichert besser als die nächste: Die Mittel unterscheiden sich um weniger als ihren Standardfehler.</translation>
    </message>
    <message>
        <source>Not calculated: {} descends from one that is not diploid.</source>
        <translation>Nicht berechnet: {} stammt von einer nicht diploiden Akzession ab.</translation>
    </message>
    <message>
        <source>Not calculated: {} is not diploid.</source>
        <translation>Nicht berechnet: {} ist nicht diploid.</translation>
    </message>
    <message>
        <source>Records of this kind have no such column.</source>
        <translation>Einträge dieser Art haben keine solche Spalte.</translation>
    </message>
    <message>
        <source>No match: by the alleles of its parents the style rejects all this pollen.</source>
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
        <source>Nothing says in which traits the seedlings should be better.</source>
        <translation>Es ist nicht gesagt, in welchen Merkmalen die Sämlinge besser sein sollen.</translation>
    </message>
    <message>
        <source>No parent was scored.</source>
        <translation>Kein Elter wurde bonitiert.</translation>
    </message>
    <message>
        <source>Nothing was written; with write these accessions would be added: {}.</source>
        <translation>Es wurde nichts geschrieben; mit write kämen Akzessionen dazu: {}.</translation>
    </message>
    <message>
        <source>Nothing was written; with write these would be written: {}.</source>
        <translation>Es wurde nichts geschrieben; mit write würden geschrieben: {}.</translation>
    </message>
    <message>
        <source>Of a blend, those of all its members.</source>
        <translation>Bei einer Pollenmischung die aller Bestandteile.</translation>
    </message>
    <message>
        <source>In a compatible cross, with a mean set of {}, this has a probability below 1 in a million.</source>
        <translation>Bei einer verträglichen Kreuzung mit mittlerem Ansatz {} hat das eine Wahrscheinlichkeit unter 1 zu einer Million.</translation>
    </message>
    <message>
        <source>In a compatible cross, with a mean set of {}, this has a probability of 1 in {:.0f}.</source>
        <translation>Bei einer verträglichen Kreuzung mit mittlerem Ansatz {} hat das eine Wahrscheinlichkeit von 1 zu {}.</translation>
    </message>
    <message>
        <source>Number of days, from the reference date on.</source>
        <translation>Zahl der Tage, vom Stichtag an.</translation>
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
        <translation>Des Vaters</translation>
    </message>
    <message>
        <source>Of the seed parent</source>
        <translation>Der Mutter</translation>
    </message>
    <message>
        <source>Of the trees&apos; means.</source>
        <translation>Der Mittel der Bäume.</translation>
    </message>
    <message>
        <source>In the walk; unknown for fruit that is not ripe.</source>
        <translation>Im Rundgang; leer bei noch nicht reifen Früchten.</translation>
    </message>
    <message>
        <source>Of them with a score of this trait.</source>
        <translation>Von ihnen mit einer Bonitur dieses Merkmals.</translation>
    </message>
    <message>
        <source>For {} more the year of sowing is not known.</source>
        <translation>Bei {} weiteren ist das Jahr der Aussaat nicht bekannt.</translation>
    </message>
    <message>
        <source>Of {} pairs of {} parents {} are suggested.</source>
        <translation>Von {} Paaren aus {} Eltern sind {} vorgeschlagen.</translation>
    </message>
    <message>
        <source>Of {} seedlings at least {} should surpass {} with {:.0f} % confidence: the mean of the parents is {:.2f}, {} has {:.2f}.</source>
        <translation>Von {} Sämlingen sollten mindestens {} besser sein als {}, mit {} % Sicherheit: Das Mittel der Eltern ist {}, {} hat {}.</translation>
    </message>
    <message>
        <source>On a dwarfing stock about {} years sooner.</source>
        <translation>Auf schwach wachsender Unterlage etwa {} Jahre früher.</translation>
    </message>
    <message>
        <source>In both parents</source>
        <translation>In beiden Eltern</translation>
    </message>
    <message>
        <source>Indoors</source>
        <translation>Im Haus</translation>
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
        <source>One record per line. Lines that were not filled in are skipped.</source>
        <translation>Ein Eintrag je Zeile. Nicht ausgefüllte Zeilen werden übergangen.</translation>
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
        <source>One parent is not recorded: assumed to be unrelated to the other.</source>
        <translation>Ein Elter ist nicht eingetragen: Er gilt als nicht verwandt mit dem anderen.</translation>
    </message>
    <message>
        <source>Traits</source>
        <translation>Merkmale</translation>
    </message>
    <message>
        <source>Only integers are allowed; correct it.</source>
        <translation>Erlaubt sind nur ganze Zahlen; berichtigen.</translation>
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
        <translation>Eltern und Großeltern, bei denen es bonitiert wurde, und Eltern, bei denen nicht.</translation>
    </message>
    <message>
        <source>Parents that the alleles contradict</source>
        <translation>Eltern, denen die Allele widersprechen</translation>
    </message>
    <message>
        <source>Passport file</source>
        <translation>Passdatendatei</translation>
    </message>
    <message>
        <source>Passport data</source>
        <translation>Passdaten</translation>
    </message>
    <message>
        <source>Export passport data</source>
        <translation>Passdaten exportieren</translation>
    </message>
    <message>
        <source>Pear: {} years to the first fruit as a rule, {} to {} are known.</source>
        <translation>Birne: in der Regel {} Jahre bis zur ersten Frucht, bekannt sind {} bis {}.</translation>
    </message>
    <message>
        <source>Harvest from</source>
        <translation>Ernten ab</translation>
    </message>
    <message>
        <source>Harvest now, late, or from which day.</source>
        <translation>Jetzt ernten, verspätet, oder ab wann.</translation>
    </message>
    <message>
        <source>Harvest the fruit of cross {} at {}</source>
        <translation>Die Früchte der Kreuzung {} an {} ernten</translation>
    </message>
    <message>
        <source>Harvest to</source>
        <translation>Ernten bis</translation>
    </message>
    <message>
        <source>Harvest list</source>
        <translation>Ernteliste</translation>
    </message>
    <message>
        <source>Arithmetic mean.</source>
        <translation>Arithmetisches Mittel.</translation>
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
        <source>Compatible pollen</source>
        <translation>Verträglicher Pollen</translation>
    </message>
    <message>
        <source>Pollen parent&apos;s mean</source>
        <translation>Mittel des Vaters</translation>
    </message>
    <message>
        <source>Pollen parent&apos;s pollen parent</source>
        <translation>Vater des Vaters</translation>
    </message>
    <message>
        <source>Pollen parent&apos;s seed parent</source>
        <translation>Mutter des Vaters</translation>
    </message>
    <message>
        <source>Pollen, flowers, fruit or seed.</source>
        <translation>Pollen, Blüten, Früchte oder Samen.</translation>
    </message>
    <message>
        <source>Positions in the order of planting</source>
        <translation>Positionen in der Reihenfolge des Pflanzens</translation>
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
        <source>Ranks the possible crosses of the parents: expected mean and SD of their seedlings, how many to grow for the wanted ones, kinship of the parents, compatibility, whether bloom overlaps this spring and how the pollen can be obtained. Each number says what it rests on; each pair left out says why. Nothing is written.</source>
        <translation>Reiht die möglichen Kreuzungen der Eltern: erwartetes Mittel und SD ihrer Sämlinge, wie viele für die gewünschten zu ziehen sind, Verwandtschaft der Eltern, Verträglichkeit, ob sich die Blüte in diesem Frühjahr überlappt und wie der Pollen zu bekommen ist. Zu jeder Zahl steht, worauf sie beruht; zu jedem weggelassenen Paar, warum. Geschrieben wird nichts.</translation>
    </message>
    <message>
        <source>Reads accessions from a CSV file of multi-crop passport descriptors (FAO and Bioversity, V2.1) and shows what would happen to each line; with write they are added, all at once or not at all. Parents are taken from ANCEST where they are two known names. Descriptors without a column in the book are kept in the accession&apos;s remark. Existing accessions are never changed: differences are shown.</source>
        <translation>Liest Akzessionen aus einer CSV-Datei mit Multi-Crop-Passdatendeskriptoren (FAO und Bioversity, V2.1) und zeigt, was mit jeder Zeile geschähe; mit write werden sie angelegt, alle zugleich oder gar nicht. Eltern werden aus ANCEST übernommen, wenn dort zwei bekannte Namen stehen. Deskriptoren ohne Spalte im Buch kommen in die Bemerkung der Akzession. Vorhandene Akzessionen werden nie geändert: Unterschiede werden gezeigt.</translation>
    </message>
    <message>
        <source>Calculating the breeding values</source>
        <translation>Die Zuchtwerte werden berechnet</translation>
    </message>
    <message>
        <source>Calculating the kinship</source>
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
        <source>Save the sheet as CSV in UTF-8. Then &quot;record-import&quot; with {} shows what would be written.</source>
        <translation>Den Bogen als CSV in UTF-8 speichern. Dann zeigt „record-import“ mit {}, was geschrieben würde.</translation>
    </message>
    <message>
        <source>Give date-format if that is wrong.</source>
        <translation>date-format angeben, wenn das falsch ist.</translation>
    </message>
    <message>
        <source>Give date-format, or write it as in 2026-04-12.</source>
        <translation>date-format angeben oder wie in 2026-04-12 schreiben.</translation>
    </message>
    <message>
        <source>Give kind.</source>
        <translation>kind angeben.</translation>
    </message>
    <message>
        <source>Score more trees, or check the scores.</source>
        <translation>Mehr Bäume bonitieren oder die Bonituren prüfen.</translation>
    </message>
    <message>
        <source>Scores</source>
        <translation>Bonituren</translation>
    </message>
    <message>
        <source>Scores of its own trees.</source>
        <translation>Bonituren ihrer eigenen Bäume.</translation>
    </message>
    <message>
        <source>See book-check, and correct the wrong one of these parents.</source>
        <translation>In book-check nachsehen und den falschen dieser Eltern berichtigen.</translation>
    </message>
    <message>
        <source>Seed of cross {} germinated in {}.</source>
        <translation>Samen der Kreuzung {} keimten im Jahr {}.</translation>
    </message>
    <message>
        <source>Seed parent&apos;s mean</source>
        <translation>Mittel der Mutter</translation>
    </message>
    <message>
        <source>Seed parent&apos;s pollen parent</source>
        <translation>Vater der Mutter</translation>
    </message>
    <message>
        <source>Seed parent&apos;s seed parent</source>
        <translation>Mutter der Mutter</translation>
    </message>
    <message>
        <source>Seed ripe about {} days later, by the general rule: the book has no value for this seed parent.</source>
        <translation>Samen etwa {} Tage später reif, nach der allgemeinen Regel: Das Buch hat keinen Wert für diese Mutter.</translation>
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
        <source>Share of seedlings above the threshold.</source>
        <translation>Anteil der Sämlinge über der Schwelle.</translation>
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
        <source>SD of the seedlings</source>
        <translation>SD der Sämlinge</translation>
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
        <source>In planting order, from the upper left corner on.</source>
        <translation>In der Reihenfolge des Pflanzens, ab der linken oberen Ecke.</translation>
    </message>
    <message>
        <source>Share of compatible pollen; 0 means none expected, not none possible: incompatibility is not complete.</source>
        <translation>Anteil des verträglichen Pollens; 0 heißt: keiner zu erwarten, nicht: keiner möglich, denn Unverträglichkeit ist nicht vollständig.</translation>
    </message>
    <message>
        <source>Contributions of ancestors</source>
        <translation>Anteile der Vorfahren</translation>
    </message>
    <message>
        <source>Recording sheet</source>
        <translation>Erfassungsbogen</translation>
    </message>
    <message>
        <source>Should fruit this year</source>
        <translation>Sollte dieses Jahr fruchten</translation>
    </message>
    <message>
        <source>Shown in both parents: by {} and by {}.</source>
        <translation>In beiden Eltern gezeigt: von {} und von {}.</translation>
    </message>
    <message>
        <source>Maximum number of suggested crosses.</source>
        <translation>Höchstzahl vorgeschlagener Kreuzungen.</translation>
    </message>
    <message>
        <source>Least number of wanted seedlings to obtain.</source>
        <translation>Mindestzahl gewünschter Sämlinge.</translation>
    </message>
    <message>
        <source>Sown</source>
        <translation>Gesät</translation>
    </message>
    <message>
        <source>Sport of</source>
        <translation>Mutante von</translation>
    </message>
    <message>
        <source>SD</source>
        <translation>SD</translation>
    </message>
    <message>
        <source>Standard deviation of breeding values among the seedlings.</source>
        <translation>Standardabweichung der Zuchtwerte unter den Sämlingen.</translation>
    </message>
    <message>
        <source>Standard deviation between trees, where two or more.</source>
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
        <translation>Anhänger {}.</translation>
    </message>
    <message>
        <source>Tagged branches with fruit: those to harvest in walking order, then the others by date.</source>
        <translation>Zweige mit Anhänger und Früchten: zuerst die zu erntenden in der Reihenfolge des Rundgangs, dann die übrigen nach Datum.</translation>
    </message>
    <message>
        <source>Tags</source>
        <translation>Anhänger</translation>
    </message>
    <message>
        <source>Tags: {}.</source>
        <translation>Anhänger: {}.</translation>
    </message>
    <message>
        <source>Caution: {}</source>
        <translation>Vorsicht: {}</translation>
    </message>
    <message>
        <source>Choose fewer days.</source>
        <translation>Weniger Tage wählen.</translation>
    </message>
    <message>
        <source>Import passport data</source>
        <translation>Passdaten importieren</translation>
    </message>
    <message>
        <source>Use the first line of a sheet made with record-template, and give kind.</source>
        <translation>Die erste Zeile eines Bogens von record-template nehmen und kind angeben.</translation>
    </message>
    <message>
        <source>Combined with {}, of which it is a sport.</source>
        <translation>Zusammengefasst mit {}, deren Mutante sie ist.</translation>
    </message>
    <message>
        <source>Imports a filled recording sheet into the book, one record per line. Every line is checked against the book with the lines before it, and shown with what would happen to it; with write all lines are written at once, or none where one has an error, and one record-undo reverts them all. A sheet read again adds nothing twice.</source>
        <translation>Importiert einen ausgefüllten Erfassungsbogen ins Buch, je Eintrag eine Zeile. Jede Zeile wird am Buch samt den Zeilen davor geprüft und mit dem gezeigt, was mit ihr geschähe; mit write werden alle Zeilen zugleich geschrieben, oder keine, wenn eine einen Fehler hat, und ein record-undo nimmt sie alle zurück. Ein Bogen, der noch einmal gelesen wird, fügt nichts doppelt hinzu.</translation>
    </message>
    <message>
        <source>Undoes the last record written to the book, or the one that is named, if it was not changed since and nothing refers to it. The rows of one import belong together. Run again, it undoes the one before.</source>
        <translation>Nimmt den zuletzt ins Buch geschriebenen Eintrag zurück, oder den genannten, sofern er seither nicht geändert wurde und nichts auf ihn verweist. Die Zeilen eines Imports gehören zusammen. Erneut ausgeführt, nimmt es den davor zurück.</translation>
    </message>
    <message>
        <source>Estimates breeding values of a scored trait for each accession, from its own scores and those of all its relatives, corrected for seasons. Unknown parents count as founders, a blend as a mixture of its members; triploids and their descendants are left out. Where there are too few scores it says so.</source>
        <translation>Schätzt die Zuchtwerte eines bonitierten Merkmals für jede Akzession, aus ihren eigenen Bonituren und denen aller Verwandten, bereinigt um Unterschiede der Saisons. Unbekannte Eltern gelten als Stammeltern, eine Pollenmischung als Gemisch ihrer Bestandteile; Triploide und ihre Nachkommen sind ausgelassen. Wo es zu wenige Bonituren gibt, wird das gesagt.</translation>
    </message>
    <message>
        <source>Calculates for every pair of accessions how closely related they are by their recorded parents, and for each its inbreeding. Unknown parents count as unrelated, a blend as a mixture of its members, a sport as its original; triploids and their descendants are left out.</source>
        <translation>Berechnet für je zwei Akzessionen, wie nahe verwandt sie nach ihren eingetragenen Eltern sind, und für jede ihre Inzucht. Unbekannte Eltern gelten als nicht verwandt, eine Pollenmischung als Gemisch ihrer Bestandteile, eine Mutante als ihr Original; Triploide und ihre Nachkommen sind ausgelassen.</translation>
    </message>
    <message>
        <source>Shows for every pair of accessions whether they are compatible by their S-alleles, infers possible S-alleles where none were determined, and lists recorded parents that the alleles contradict. Evidence from alleles and from counts of pollinated flowers is kept separate.</source>
        <translation>Zeigt für je zwei Akzessionen, ob sie nach ihren S-Allelen verträglich sind, leitet mögliche S-Allele ab, wo keine bestimmt sind, und nennt eingetragene Eltern, denen die Allele widersprechen. Hinweise aus Allelen und aus Zählungen bestäubter Blüten stehen getrennt.</translation>
    </message>
    <message>
        <source>Shows the scored traits of the parents and grandparents of accessions: means over trees, with the number of trees and years. Blends are weighted by the shares of their scored members; what is unknown or was not scored is marked.</source>
        <translation>Zeigt die bonitierten Merkmale der Eltern und Großeltern von Akzessionen: Mittel über die Bäume, mit der Zahl der Bäume und Jahre. Pollenmischungen werden nach den Anteilen ihrer bonitierten Bestandteile gewichtet; was unbekannt oder nicht bonitiert ist, ist gekennzeichnet.</translation>
    </message>
    <message>
        <source>That contradicts the alleles: check both records, or foreign pollen came in.</source>
        <translation>Das widerspricht den Allelen: Beide Einträge ansehen, oder fremder Pollen kam hinein.</translation>
    </message>
    <message>
        <source>Probability that it succeeds this spring.</source>
        <translation>Wahrscheinlichkeit, dass es in diesem Frühjahr gelingt.</translation>
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
        <translation>Die Akzession ist als Mutante ihrer selbst eingetragen.</translation>
    </message>
    <message>
        <source>The accession that the wanted seedlings are to surpass; the best of the parents where none is named.</source>
        <translation>Die Akzession, die die gewünschten Sämlinge übertreffen sollen; ohne Angabe die beste unter den Eltern.</translation>
    </message>
    <message>
        <source>The accession whose flowers would be pollinated.</source>
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
        <source>The ancestor; unknown for parents that are not recorded.</source>
        <translation>Der Vorfahr; leer für nicht eingetragene Eltern.</translation>
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
        <source>The book has no column for {}: it is kept in the remark of {}.</source>
        <translation>Das Buch hat keine Spalte für {}: Es kommt in die Bemerkung von {}.</translation>
    </message>
    <message>
        <source>The book has no scores yet; record them with record-score.</source>
        <translation>Das Buch hat noch keine Bonituren; mit record-score erfassen.</translation>
    </message>
    <message>
        <source>The book has scores of: {}.</source>
        <translation>Das Buch hat Bonituren von: {}.</translation>
    </message>
    <message>
        <source>The book has {} with another value: {}.</source>
        <translation>Das Buch hat {} mit einem anderen Wert: {}.</translation>
    </message>
    <message>
        <source>The offspring.</source>
        <translation>Der Nachkomme.</translation>
    </message>
    <message>
        <source>The closest are {} and {}, {:.3f}.</source>
        <translation>Am nächsten sind {} und {}, {}.</translation>
    </message>
    <message>
        <source>The column {} is missing.</source>
        <translation>Die Spalte {} fehlt.</translation>
    </message>
    <message>
        <source>The columns fit several kinds of records.</source>
        <translation>Die Spalten passen zu mehreren Arten von Einträgen.</translation>
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
        <source>The day after the full requirement is met.</source>
        <translation>Der Tag, nachdem der volle Bedarf gedeckt ist.</translation>
    </message>
    <message>
        <source>The day after the minimum requirement is met.</source>
        <translation>Der Tag, nachdem der Mindestbedarf gedeckt ist.</translation>
    </message>
    <message>
        <source>Date of lines that have none; without it they are errors.</source>
        <translation>Datum der Zeilen, die keines haben; ohne Angabe sind sie Fehler.</translation>
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
        <translation>Vater oder Pollenmischung des Nachkommen.</translation>
    </message>
    <message>
        <source>The descendant&apos;s seed parent.</source>
        <translation>Mutter des Nachkommen.</translation>
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
        <source>The first line does not name the columns of records.</source>
        <translation>Die erste Zeile nennt nicht die Spalten von Einträgen.</translation>
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
        <source>Maximum kinship of two parents; 0.125 is that of half sibs.</source>
        <translation>Höchste Verwandtschaft zweier Eltern; 0,125 ist die von Halbgeschwistern.</translation>
    </message>
    <message>
        <source>The line has a remark, but no record; it is skipped.</source>
        <translation>Die Zeile hat eine Bemerkung, aber keinen Eintrag; sie wird übergangen.</translation>
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
        <source>The pedigree in breeders&apos; notation; further generations are left out.</source>
        <translation>Die Abstammung in der Schreibweise der Züchter; weitere Generationen sind weggelassen.</translation>
    </message>
    <message>
        <source>The line of the file, counted from 1.</source>
        <translation>Die Zeile der Datei, von 1 an gezählt.</translation>
    </message>
    <message>
        <source>The pedigree, seed parent first.</source>
        <translation>Die Abstammung, Mutter zuerst.</translation>
    </message>
    <message>
        <source>Names of accessions or labels of trees, separated by commas.</source>
        <translation>Namen von Akzessionen oder Etiketten von Bäumen, durch Kommas getrennt.</translation>
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
        <source>The page is full: choose larger paper, or draw the pedigree of one of the ancestors.</source>
        <translation>Die Seite ist voll: Größeres Papier wählen oder die Abstammung eines der Vorfahren zeichnen.</translation>
    </message>
    <message>
        <source>The page is full: choose larger paper; the table of descendants has them all.</source>
        <translation>Die Seite ist voll: Größeres Papier wählen; die Tabelle der Nachkommen hat sie alle.</translation>
    </message>
    <message>
        <source>The parent came from cross {} of {}: the earliest known first fruit is three years after sowing, in {}.</source>
        <translation>Der Elter stammt aus Kreuzung {} von {}: Die früheste bekannte erste Frucht kommt drei Jahre nach der Aussaat, im Jahr {}.</translation>
    </message>
    <message>
        <source>The parent is younger than its offspring: it came from cross {} of {}, and this cross is of {}.</source>
        <translation>Der Elter ist jünger als sein Nachkomme: Er stammt aus Kreuzung {} von {}, und diese Kreuzung ist von {}.</translation>
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
        <source>Narrow-sense heritability of a score of one season; an assumption, not an estimate.</source>
        <translation>Erblichkeit im engeren Sinn einer Bonitur einer Saison; eine Annahme, keine Schätzung.</translation>
    </message>
    <message>
        <source>Repeatability of the scores of an accession; the heritability and a quarter of the rest where not given.</source>
        <translation>Wiederholbarkeit der Bonituren einer Akzession; ohne Angabe die Erblichkeit und ein Viertel des Rests.</translation>
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
        <translation>Der Pollen oder die Saatgutpartie.</translation>
    </message>
    <message>
        <source>The repeatability is lower than the heritability, {}.</source>
        <translation>Die Wiederholbarkeit ist kleiner als die Erblichkeit, {}.</translation>
    </message>
    <message>
        <source>The same genes: one is a sport or clone of the other.</source>
        <translation>Dieselben Gene: Eine ist Mutante oder Klon der anderen.</translation>
    </message>
    <message>
        <source>The same once the counts of its crosses are weighed; unknown where none were counted.</source>
        <translation>Dasselbe, nachdem die Zählungen ihrer Kreuzungen gewichtet sind; unbekannt, wo keine gezählt wurden.</translation>
    </message>
    <message>
        <source>The scores of this tree are left out: its accession is not recorded.</source>
        <translation>Die Bonituren dieses Baums bleiben unberücksichtigt: Seine Akzession ist nicht eingetragen.</translation>
    </message>
    <message>
        <source>The scores have no information on this accession.</source>
        <translation>Die Bonituren sagen über diese Akzession nichts aus.</translation>
    </message>
    <message>
        <source>The seed is ripe even if the tree bloomed late.</source>
        <translation>Der Samen ist reif, auch wenn der Baum spät geblüht hat.</translation>
    </message>
    <message>
        <source>The sheet as comma, semicolon or tab separated text in UTF-8, as made by record-template.</source>
        <translation>Der Bogen als Text in UTF-8, mit Komma, Semikolon oder Tabulator getrennt, wie ihn record-template anlegt.</translation>
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
        <translation>Bonitiert wurden diese Merkmale: {}.</translation>
    </message>
    <message>
        <source>The tree with the highest value, which is not always the best.</source>
        <translation>Der Baum mit dem höchsten Wert, der nicht immer der beste ist.</translation>
    </message>
    <message>
        <source>The tree&apos;s; unknown for indoor work.</source>
        <translation>Die des Baums; leer bei Arbeit im Haus.</translation>
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
        <source>The weights cannot be read.</source>
        <translation>Die Gewichte sind nicht lesbar.</translation>
    </message>
    <message>
        <source>The work of a day or a week to print: the tasks at each tree in walking order, with address, tags, lot and amount, a box to tick and space for results; then the indoor work, and the cautions for this work.</source>
        <translation>Die Arbeit eines Tages oder einer Woche zum Drucken: die Aufgaben an jedem Baum in der Reihenfolge des Rundgangs, mit Adresse, Anhängern, Partie und Menge, einem Kästchen zum Abhaken und Platz für Ergebnisse; danach die Arbeit im Haus und die Warnhinweise zu dieser Arbeit.</translation>
    </message>
    <message>
        <source>The year.</source>
        <translation>Das Jahr.</translation>
    </message>
    <message>
        <source>The year; that of the reference date where not given.</source>
        <translation>Das Jahr; ohne Angabe das des Stichtags.</translation>
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
        <source>These are {} accessions; at most {} can be processed at once.</source>
        <translation>Das sind {} Akzessionen; höchstens {} lassen sich auf einmal verarbeiten.</translation>
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
        <translation>Die von {}, deren Mutante sie ist.</translation>
    </message>
    <message>
        <source>Three parents stand in one cross: put the first cross in parentheses.</source>
        <translation>Drei Eltern stehen in einer Kreuzung: Die erste Kreuzung in Klammern setzen.</translation>
    </message>
    <message>
        <source>Ties, and unknowns.</source>
        <translation>Gleichstände und was nicht bekannt ist.</translation>
    </message>
    <message>
        <source>To see the wanted number of them with the stated confidence.</source>
        <translation>Um die gewünschte Zahl davon mit der angegebenen Sicherheit zu sehen.</translation>
    </message>
    <message>
        <source>Too few scores: {} of {} diploid accessions up to {}. Breeding values need {} scores of {} accessions, otherwise they only reflect chance.</source>
        <translation>Zu wenige Bonituren: {} von {} diploiden Akzessionen bis {}. Zuchtwerte brauchen {} Bonituren von {} Akzessionen, sonst zeigen sie nur den Zufall.</translation>
    </message>
    <message>
        <source>Too young</source>
        <translation>Zu jung</translation>
    </message>
    <message>
        <source>Undid {} records of one import in {}: {} to {}.</source>
        <translation>{} Einträge eines Imports aus {} zurückgenommen: {} bis {}.</translation>
    </message>
    <message>
        <source>Traits of parents</source>
        <translation>Merkmale der Eltern</translation>
    </message>
    <message>
        <source>Traits of parents that were scored: {}.</source>
        <translation>Bonitierte Merkmale der Eltern: {}.</translation>
    </message>
    <message>
        <source>Traits whose means are shown in the boxes, separated by commas, or all; none where left out.</source>
        <translation>Merkmale, deren Mittel in den Kästen stehen, durch Kommas getrennt, oder all für alle; ohne Angabe keine.</translation>
    </message>
    <message>
        <source>Selection index: traits with their weights, as in taste=2; scab=-1; negative where low scores are desired.</source>
        <translation>Selektionsindex: Merkmale mit ihren Gewichten, wie in taste=2; scab=-1; negativ, wo niedrige Bonituren erwünscht sind.</translation>
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
        <translation>Ihre Bäume, die bonitiert wurden.</translation>
    </message>
    <message>
        <source>Trees scored</source>
        <translation>Bonitierte Bäume</translation>
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
        <source>Type it again.</source>
        <translation>Neu eintippen.</translation>
    </message>
    <message>
        <source>Unit: {}.</source>
        <translation>Einheit: {}.</translation>
    </message>
    <message>
        <source>Wanted seedlings</source>
        <translation>Gewünschte Sämlinge</translation>
    </message>
    <message>
        <source>Wanted ones</source>
        <translation>Gewünschte</translation>
    </message>
    <message>
        <source>Wanted seedlings exceed {}. Traits are assumed to be inherited independently, and the heritability is an assumption.</source>
        <translation>Gewünschte Sämlinge übertreffen {}. Angenommen ist, dass Merkmale unabhängig vererbt werden; auch die Erblichkeit ist eine Annahme.</translation>
    </message>
    <message>
        <source>Paths</source>
        <translation>Wege</translation>
    </message>
    <message>
        <source>What happens to each line of the file.</source>
        <translation>Was mit jeder Zeile der Datei geschieht.</translation>
    </message>
    <message>
        <source>What happens to it.</source>
        <translation>Was damit geschieht.</translation>
    </message>
    <message>
        <source>What happens to the line.</source>
        <translation>Was mit der Zeile geschieht.</translation>
    </message>
    <message>
        <source>What differs from the book, what is kept in the remark, what is unknown.</source>
        <translation>Was vom Buch abweicht, was in der Bemerkung steht, was unbekannt ist.</translation>
    </message>
    <message>
        <source>Estimated breeding value of each accession, the highest first.</source>
        <translation>Geschätzter Zuchtwert jeder Akzession, der höchste zuerst.</translation>
    </message>
    <message>
        <source>Content of each column of the sheet.</source>
        <translation>Inhalt jeder Spalte des Bogens.</translation>
    </message>
    <message>
        <source>What each is recorded to have, or may have by its parents.</source>
        <translation>Was für jede eingetragen ist oder was sie nach ihren Eltern haben kann.</translation>
    </message>
    <message>
        <source>Code of the tag.</source>
        <translation>Kürzel des Anhängers.</translation>
    </message>
    <message>
        <source>Tags at the branches.</source>
        <translation>Anhänger an den Zweigen.</translation>
    </message>
    <message>
        <source>The repeatability is at least the heritability.</source>
        <translation>Die Wiederholbarkeit ist mindestens die Erblichkeit.</translation>
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
        <source>Expected genetic contribution of each ancestor.</source>
        <translation>Erwarteter genetischer Anteil jedes Vorfahren.</translation>
    </message>
    <message>
        <source>What speaks against these parents.</source>
        <translation>Was gegen diese Eltern spricht.</translation>
    </message>
    <message>
        <source>Evidence of the alleles.</source>
        <translation>Aussage der Allele.</translation>
    </message>
    <message>
        <source>Basis of the probability.</source>
        <translation>Grundlage der Wahrscheinlichkeit.</translation>
    </message>
    <message>
        <source>Evidence of the counts.</source>
        <translation>Aussage der Zählungen.</translation>
    </message>
    <message>
        <source>Original of which the descendant is a sport or clone.</source>
        <translation>Original, dessen Mutante oder Klon der Nachkomme ist.</translation>
    </message>
    <message>
        <source>The record in words.</source>
        <translation>Der Eintrag in Worten.</translation>
    </message>
    <message>
        <source>Kind of the records of the sheet; record-import recognises it by the header where not given.</source>
        <translation>Art der Einträge des Bogens; ohne Angabe erkennt record-import sie an der Kopfzeile.</translation>
    </message>
    <message>
        <source>What the numbers rest on.</source>
        <translation>Worauf die Zahlen beruhen.</translation>
    </message>
    <message>
        <source>Relationship of the one to the other, by the nearest path.</source>
        <translation>Verwandtschaftsgrad der einen zur anderen, auf dem nächsten Weg.</translation>
    </message>
    <message>
        <source>Caution.</source>
        <translation>Vorsicht.</translation>
    </message>
    <message>
        <source>Caution for this task.</source>
        <translation>Vorsicht bei dieser Aufgabe.</translation>
    </message>
    <message>
        <source>What to write there.</source>
        <translation>Was dort einzutragen ist.</translation>
    </message>
    <message>
        <source>When first fruiting of every seedling is expected, by species, rootstock and year of sowing, so that the map shows where to look this year; and a summary of the scores of each family, trait by trait.</source>
        <translation>Wann bei jedem Sämling die ersten Früchte zu erwarten sind, nach Art, Unterlage und Jahr der Aussaat, damit die Karte zeigt, wo dieses Jahr nachzusehen ist; und eine Zusammenfassung der Bonituren jeder Familie, Merkmal für Merkmal.</translation>
    </message>
    <message>
        <source>When the fruit of every tagged branch can be harvested for its seed: from the tree&apos;s own full bloom, forecast or observed, and the days that its seed needs to ripen, which is often before the fruit is ripe for consumption. The fruit to harvest is listed in walking order, as a sheet to print.</source>
        <translation>Wann die Früchte an jedem Zweig mit Anhänger für ihre Samen geerntet werden können: nach der eigenen Vollblüte des Baums, vorhergesagt oder beobachtet, und den Tagen, die die Samen zum Reifen brauchen, oft vor der Genussreife der Frucht. Was zu ernten ist, steht in der Reihenfolge des Rundgangs, als Liste zum Drucken.</translation>
    </message>
    <message>
        <source>Where it was scored itself.</source>
        <translation>Wo er selbst bonitiert wurde.</translation>
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
        <source>Compatibility by the alleles.</source>
        <translation>Verträglichkeit nach den Allelen.</translation>
    </message>
    <message>
        <source>Whether the sheet has lines for the expected records.</source>
        <translation>Ob der Bogen Zeilen für die erwarteten Einträge hat.</translation>
    </message>
    <message>
        <source>Compatibility of the pollen with the style.</source>
        <translation>Verträglichkeit des Pollens mit dem Griffel.</translation>
    </message>
    <message>
        <source>Whether their bloom overlaps was not calculated.</source>
        <translation>Ob sich ihre Blüte überlappt, wurde nicht berechnet.</translation>
    </message>
    <message>
        <source>Suggest crosses</source>
        <translation>Kreuzungen vorschlagen</translation>
    </message>
    <message>
        <source>Scored traits of parents and grandparents.</source>
        <translation>Bonitierte Merkmale der Eltern und Großeltern.</translation>
    </message>
    <message>
        <source>The descendant.</source>
        <translation>Der Nachkomme.</translation>
    </message>
    <message>
        <source>Descendants of the accession, and its expected genetic contribution to them.</source>
        <translation>Nachkommen der Akzession und ihr erwarteter genetischer Anteil an ihnen.</translation>
    </message>
    <message>
        <source>Why it is not suggested.</source>
        <translation>Warum sie nicht vorgeschlagen wird.</translation>
    </message>
    <message>
        <source>Trait weights</source>
        <translation>Merkmalsgewichte</translation>
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
        <source>Pollinate from</source>
        <translation>Bestäuben ab</translation>
    </message>
    <message>
        <source>Work of the given days, in walking order.</source>
        <translation>Arbeit der angegebenen Tage, in der Reihenfolge des Rundgangs.</translation>
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
        <source>Flowers pollinated in this cross, where all its fruit was counted.</source>
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
        <translation>Schreibt die Akzessionen als CSV-Datei mit Multi-Crop-Passdatendeskriptoren (FAO und Bioversity, V2.1), wie Genbanken sie austauschen: Name, Gattung und Art, Status, Eltern, erste Pflanzung. Wofür der Standard keinen Deskriptor hat, etwa S-Allele, steht in REMARKS. Der Sammelort bleibt leer: Die Obstanlage ist nicht der Fundort einer Sorte.</translation>
    </message>
    <message>
        <source>Writing the passports</source>
        <translation>Passdaten werden geschrieben</translation>
    </message>
    <message>
        <source>Recorded</source>
        <translation>Eingetragen</translation>
    </message>
    <message>
        <source>Written to {}: {}; record-undo reverts all of it at once.</source>
        <translation>In {} geschrieben: {}; record-undo nimmt alles auf einmal zurück.</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <source>Expected year of first fruiting.</source>
        <translation>Jahr, in dem er erstmals fruchten sollte.</translation>
    </message>
    <message>
        <source>Year of sowing.</source>
        <translation>Jahr der Aussaat.</translation>
    </message>
    <message>
        <source>Year of its first recorded bloom or score.</source>
        <translation>Jahr der ersten erfassten Blüte oder Bonitur.</translation>
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
        <translation>ein Elter ist nicht diploid: wenige volle Samen und schwache Sämlinge</translation>
    </message>
    <message>
        <source>as scored</source>
        <translation>wie bonitiert</translation>
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
        <source>offspring by selfing</source>
        <translation>Nachkomme aus Selbstung</translation>
    </message>
    <message>
        <source>count, day</source>
        <translation>Zahl, Tag</translation>
    </message>
    <message>
        <source>flowers pollinated</source>
        <translation>bestäubte Blüten</translation>
    </message>
    <message>
        <source>flowers, tag, by whom</source>
        <translation>Blüten, Anhänger, von wem</translation>
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
        <source>fruit harvested</source>
        <translation>geerntete Früchte</translation>
    </message>
    <message>
        <source>fruit was expected</source>
        <translation>Frucht war erwartet</translation>
    </message>
    <message>
        <source>fruits, sound and empty seed</source>
        <translation>Früchte, volle und taube Samen</translation>
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
        <translation>Pollenkeimtests</translation>
    </message>
    <message>
        <source>grandparent</source>
        <translation>Großelter</translation>
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
        <source>in its remark: {}</source>
        <translation>in der Bemerkung: {}</translation>
    </message>
    <message>
        <source>in the blend, {:.3g} %</source>
        <translation>in der Pollenmischung, {} %</translation>
    </message>
    <message>
        <source>its ancestry is not two names</source>
        <translation>die Abstammung besteht nicht aus zwei Namen</translation>
    </message>
    <message>
        <source>its sport</source>
        <translation>Mutante davon</translation>
    </message>
    <message>
        <source>late</source>
        <translation>verspätet</translation>
    </message>
    <message>
        <source>late: harvest what is left at once</source>
        <translation>verspätet: sofort ernten, was noch hängt</translation>
    </message>
    <message>
        <source>harvest not before {}</source>
        <translation>nicht vor {} ernten</translation>
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
        <translation>kein Allel des Vaters</translation>
    </message>
    <message>
        <source>no allele of the seed parent</source>
        <translation>kein Allel der Mutter</translation>
    </message>
    <message>
        <source>none of them</source>
        <translation>keinem davon</translation>
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
        <source>not shown in both parents: {}</source>
        <translation>nicht in beiden Eltern gezeigt: {}</translation>
    </message>
    <message>
        <source>of two genera: apple and pear, for instance, give hardly any seedlings</source>
        <translation>aus zwei Gattungen: Apfel und Birne etwa geben kaum Sämlinge</translation>
    </message>
    <message>
        <source>only by pollen that the style rejects</source>
        <translation>nur durch Pollen, den der Griffel abweist</translation>
    </message>
    <message>
        <source>parent by selfing</source>
        <translation>Elter durch Selbstung</translation>
    </message>
    <message>
        <source>harvest from {} on</source>
        <translation>ab {} ernten</translation>
    </message>
    <message>
        <source>harvest now</source>
        <translation>jetzt ernten</translation>
    </message>
    <message>
        <source>pollen parent unknown</source>
        <translation>Vater unbekannt</translation>
    </message>
    <message>
        <source>possible offspring, by a blend</source>
        <translation>möglicher Nachkomme, über eine Pollenmischung</translation>
    </message>
    <message>
        <source>possible parent, by a blend</source>
        <translation>möglicher Elter, über eine Pollenmischung</translation>
    </message>
    <message>
        <source>recorded</source>
        <translation>eingetragen</translation>
    </message>
    <message>
        <source>related</source>
        <translation>verwandt</translation>
    </message>
    <message>
        <source>seed lots</source>
        <translation>Saatgutpartien</translation>
    </message>
    <message>
        <source>seed parent unknown</source>
        <translation>Mutter unbekannt</translation>
    </message>
    <message>
        <source>seed withdrawals</source>
        <translation>Saatgutentnahmen</translation>
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
        <translation>Mutante von</translation>
    </message>
    <message>
        <source>germination counts</source>
        <translation>Keimzählungen</translation>
    </message>
    <message>
        <source>stages of bloom</source>
        <translation>Blühstadien</translation>
    </message>
    <message>
        <source>the parents&apos; kinship is above {:.3f}</source>
        <translation>die Verwandtschaft der Eltern liegt über {}</translation>
    </message>
    <message>
        <source>the same S-alleles: no seed is to be expected, either way</source>
        <translation>dieselben S-Allele: in beiden Richtungen sind keine Samen zu erwarten</translation>
    </message>
    <message>
        <source>the same, or its sport</source>
        <translation>dieselbe oder ihre Mutante</translation>
    </message>
    <message>
        <source>the scores have no information on one parent</source>
        <translation>die Bonituren sagen über einen Elter nichts aus</translation>
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
        <translation>zum Vater</translation>
    </message>
    <message>
        <source>to the seed parent</source>
        <translation>zur Mutter</translation>
    </message>
    <message>
        <source>to its original</source>
        <translation>zum Original</translation>
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
        <translation>unbekannt {} %</translation>
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
        <translation>{} % von {}</translation>
    </message>
    <message>
        <source>{:g} or more</source>
        <translation>{} oder mehr</translation>
    </message>
    <message>
        <source>{:g} to {:g}</source>
        <translation>{} bis {}</translation>
    </message>
    <message>
        <source>{} (needed): {}</source>
        <translation>{} (nötig): {}</translation>
    </message>
    <message>
        <source>{} accessions are not listed: the scores have no information on them.</source>
        <translation>{} Akzessionen sind nicht aufgeführt: Die Bonituren sagen nichts über sie.</translation>
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
        <source>{} flowers pollinated</source>
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
        <source>{} lines have errors: nothing would be written.</source>
        <translation>{} Zeilen haben Fehler: Es würde nichts geschrieben.</translation>
    </message>
    <message>
        <source>{} not scored</source>
        <translation>{} nicht bonitiert</translation>
    </message>
    <message>
        <source>{} not scored, seen in: {}.</source>
        <translation>{} nicht bonitiert, gesehen bei: {}.</translation>
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
        <source>{} tasks</source>
        <translation>{} Aufgaben</translation>
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
        <source>{} seedlings standing: {} have bloomed; of the others {} should fruit in {}, {} may, {} are overdue, {} are too young.</source>
        <translation>{} stehende Sämlinge: {} haben geblüht; von den übrigen sollten {} im Jahr {} fruchten, {} können es, {} sind überfällig, {} sind zu jung.</translation>
    </message>
    <message>
        <source>{} is in {} better crosses already</source>
        <translation>{} steht schon in {} besseren Kreuzungen</translation>
    </message>
    <message>
        <source>{} tagged branches have fruit</source>
        <translation>{} Zweige mit Anhänger tragen Früchte</translation>
    </message>
    <message>
        <source>{} until {}</source>
        <translation>{} bis {}</translation>
    </message>
    <message>
        <source>{} {:.3g} (1 tree)</source>
        <translation>{} {} (1 Baum)</translation>
    </message>
    <message>
        <source>{} {:.3g} (blend, by its shares)</source>
        <translation>{} {} (Pollenmischung, nach ihren Anteilen)</translation>
    </message>
    <message>
        <source>{} {:.3g} ({} trees)</source>
        <translation>{} {} ({} Bäume)</translation>
    </message>
    <message>
        <source>{} {:.3g}, seen in: {}.</source>
        <translation>{} {}, gesehen bei: {}.</translation>
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
        <source>{}: {} scores of {} accessions in {}. Heritability {:.2f} and repeatability {:.2f} are assumptions; the reliabilities depend on them.</source>
        <translation>{}: {} Bonituren von {} Akzessionen in {}. Erblichkeit {} und Wiederholbarkeit {} sind Annahmen; von ihnen hängen die Sicherheiten ab.</translation>
    </message>
    <message>
        <source>{}; none is to be harvested yet.</source>
        <translation>{}; noch ist nichts zu ernten.</translation>
    </message>
    <message>
        <source>{}; {:.0f} m walk.</source>
        <translation>{}; {} m Rundgang.</translation>
    </message>
    <message>
        <source>{}; {} to harvest, {:.0f} m walk.</source>
        <translation>{}; {} zu ernten, {} m Rundgang.</translation>
    </message>
    <message>
        <source>…: more ancestors are known</source>
        <translation>…: weitere Vorfahren sind bekannt</translation>
    </message>
    <message>
        <source>◆, double edge: occurs more than once in the pedigree, drawn once</source>
        <translation>◆, doppelter Rand: kommt in der Abstammung mehrmals vor, einmal gezeichnet</translation>
    </message>
    <message>
        <source>1 cross</source>
        <translation>1 Kreuzung</translation>
    </message>
    <message>
        <source>1 has work due</source>
        <translation>1 mit anstehender Arbeit</translation>
    </message>
    <message>
        <source>Least distance</source>
        <translation>Mindestabstand</translation>
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
        <source>Least distance between two trees of a row, where its positions are closer; 0 for every vacant position.</source>
        <translation>Der kleinste Abstand zweier Bäume einer Reihe, wo ihre Positionen enger liegen; 0 für jede freie Position.</translation>
    </message>
    <message>
        <source>{} crosses</source>
        <translation>{} Kreuzungen</translation>
    </message>
    <message>
        <source>{} have work due</source>
        <translation>{} mit anstehender Arbeit</translation>
    </message>
    <message>
        <source>{}: {}, {} of it late. {}</source>
        <translation>{}: {}, davon {} zu spät. {}</translation>
    </message>
    <message>
        <source>Store the pollen {}.</source>
        <translation>Den Pollen lagern: {}.</translation>
    </message>
    <message>
        <source>Pollen: {}.</source>
        <translation>Pollen: {}.</translation>
    </message>
    <message>
        <source>Make a new book with book-new and copy its rows into it.</source>
        <translation>Mit book-new ein neues Buch anlegen und die Zeilen hineinkopieren.</translation>
    </message>
    <message>
        <source>This book does not say which version of the schema it is of.</source>
        <translation>Dieses Buch sagt nicht, von welcher Version des Schemas es ist.</translation>
    </message>
    <message>
        <source>This book is of schema version {}; this program knows version {}.</source>
        <translation>Dieses Buch ist von Schemaversion {}; dieses Programm kennt Version {}.</translation>
    </message>
    <message>
        <source>This book is of schema version {}; this program needs version {}.</source>
        <translation>Dieses Buch ist von Schemaversion {}; dieses Programm braucht Version {}.</translation>
    </message>
    <message>
        <source>Use a newer release of Pipward.</source>
        <translation>Eine neuere Version von Pipward verwenden.</translation>
    </message>
    <message>
        <source>Use the release of Pipward that made it, or copy its rows into a new book.</source>
        <translation>Die Version von Pipward verwenden, die es angelegt hat, oder die Zeilen in ein neues Buch kopieren.</translation>
    </message>
    <message>
        <source>Days of the book that stay as they are.</source>
        <translation>Tage des Buchs, die unverändert bleiben.</translation>
    </message>
    <message>
        <source>Days of the book that take the file&apos;s temperatures.</source>
        <translation>Tage des Buchs, die die Temperaturen der Datei erhalten.</translation>
    </message>
    <message>
        <source>{} Nothing was written; with write {} days would be added, {} replaced, {} left as they are.</source>
        <translation>{} Es wurde nichts geschrieben; mit write kämen {} Tage hinzu, {} würden ersetzt, {} blieben unverändert.</translation>
    </message>
    <message>
        <source>Keep the results</source>
        <translation>Ergebnisse behalten</translation>
    </message>
    <message>
        <source>Whether the result tables of the book are replaced; no only shows the results.</source>
        <translation>Ob die Ergebnistabellen des Buchs ersetzt werden; nein zeigt die Ergebnisse nur.</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Erfassung</translation>
    </message>
    <message>
        <source>Leave the file and the points out, or do not write.</source>
        <translation>Die Datei und die Punkte weglassen oder nicht schreiben.</translation>
    </message>
    <message>
        <source>Give the start with at.</source>
        <translation>Den Startpunkt mit at angeben.</translation>
    </message>
    <message>
        <source>Random seed</source>
        <translation>Startwert des Zufalls</translation>
    </message>
    <message>
        <source>{} rows of {} would be removed; nothing was written.</source>
        <translation>{} Zeilen von {} würden entfernt; es wurde nichts geschrieben.</translation>
    </message>
    <message>
        <source>Subtitle</source>
        <translation>Untertitel</translation>
    </message>
    <message>
        <source>Handbook figure, used as long as nothing was counted.</source>
        <translation>Handbuchwert; er gilt, solange nichts gezählt ist.</translation>
    </message>
    <message>
        <source>X-height</source>
        <translation>x-Höhe</translation>
    </message>
    <message>
        <source>X-height of its smallest text.</source>
        <translation>x-Höhe des kleinsten Textes.</translation>
    </message>
    <message>
        <source>a number from {} to {}</source>
        <translation>eine Zahl von {} bis {}</translation>
    </message>
    <message>
        <source>grandchild</source>
        <translation>Enkel</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>seeds sound</source>
        <translation>volle Samen</translation>
    </message>
    <message>
        <source>share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>stratification c</source>
        <translation>Stratifikation (°C)</translation>
    </message>
    <message>
        <source>A sport, blend or unknown parent on which the share depends.</source>
        <translation>Mutante, Pollenmischung oder unbekannter Elter, von denen der Anteil abhängt.</translation>
    </message>
    <message>
        <source>Dashed box: no observations of its own, estimated from its parents or the orchard&apos;s mean.</source>
        <translation>Gestrichelter Kasten: keine eigenen Beobachtungen, aus den Eltern oder dem Mittel der Obstanlage geschätzt.</translation>
    </message>
    <message>
        <source>On {} of these days stands a temperature that was never measured on earth.</source>
        <translation>An {} dieser Tage steht eine Temperatur, die auf der Erde nie gemessen wurde.</translation>
    </message>
    <message>
        <source>P value, shares</source>
        <translation>p-Wert, Anteile</translation>
    </message>
    <message>
        <source>P value, time course</source>
        <translation>p-Wert, Verlauf</translation>
    </message>
    <message>
        <source>Position on the page</source>
        <translation>Position auf der Seite</translation>
    </message>
    <message>
        <source>Remove the days if it stands for a missing value, or correct them; temperatures are in degrees Celsius.</source>
        <translation>Die Tage entfernen, wenn sie für einen fehlenden Wert steht, oder berichtigen; Temperaturen sind in Grad Celsius.</translation>
    </message>
    <message>
        <source>The row was changed after it was recorded; it was left as it is.</source>
        <translation>Die Zeile wurde nach dem Erfassen geändert; sie bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>The text fits only with an x-height below {:.1f} mm: hard to read.</source>
        <translation>Der Text passt nur mit einer x-Höhe unter {} mm: schwer zu lesen.</translation>
    </message>
    <message>
        <source>● own observations, and their number; ○&#xa0;estimated. Seed, pollen: its role in the wanted crosses. Dates on the axis are Mondays.</source>
        <translation>● eigene Beobachtungen und ihre Zahl; ○&#xa0;geschätzt. Samen, Pollen: die Rolle in den gewünschten Kreuzungen. Tage an der Achse sind Montage.</translation>
    </message>
    <message>
        <source>offspring</source>
        <translation>Nachkomme</translation>
    </message>
    <message>
        <source>1 germinated seed of lot {} is still in it, by the count of {}.</source>
        <translation>1 gekeimter Samen von Partie {} ist nach der Zählung vom {} noch darin.</translation>
    </message>
    <message>
        <source>1 more seedling has no numbered position yet.</source>
        <translation>1 weiterer Sämling hat noch keine nummerierte Position.</translation>
    </message>
    <message>
        <source>A tree whose number the answers differ in.</source>
        <translation>Ein Baum, in dessen Nummer sich die Antworten unterscheiden.</translation>
    </message>
    <message>
        <source>Accessions that may be crossed, separated by commas; every cultivar and selection with a living tree where none is named; all of them where the book has no trees.</source>
        <translation>Akzessionen, die gekreuzt werden dürfen, durch Kommas getrennt; ohne Angabe jede Sorte und jeder Zuchtklon mit einem lebenden Baum; alle, wenn das Buch keine Bäume hat.</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>Are {} and {} in the book&apos;s own system, {}?</source>
        <translation>Sind {} und {} im eigenen System des Buchs, {}?</translation>
    </message>
    <message>
        <source>Are {} and {} longitude and latitude, as GNSS receivers and telephones give them?</source>
        <translation>Sind {} und {} Länge und Breite, wie GNSS-Empfänger und Telefone sie angeben?</translation>
    </message>
    <message>
        <source>Assigns germinated seedlings to the vacant positions of a block: family by family, or mixed in random order with check trees between, none left out, row by row in walking order. With write, makes their accessions, with both parents, and their trees, and withdraws their seed from its lots; the whole planting can be undone.</source>
        <translation>Weist gekeimten Sämlingen die freien Positionen eines Quartiers zu: Familie für Familie oder zufällig gemischt mit Vergleichsbäumen dazwischen, lückenlos, Reihe für Reihe in der Folge des Rundgangs. Legt mit write ihre Akzessionen mit beiden Eltern und ihre Bäume an und entnimmt ihre Samen den Partien; die ganze Pflanzung lässt sich zurücknehmen.</translation>
    </message>
    <message>
        <source>Bias of the length</source>
        <translation>Verzerrung der Dauer</translation>
    </message>
    <message>
        <source>Botanical name, as &quot;Malus domestica&quot; or &quot;Pyrus communis&quot;.</source>
        <translation>Botanischer Name, etwa „Malus domestica“ oder „Pyrus communis“.</translation>
    </message>
    <message>
        <source>Brier score</source>
        <translation>Brier-Score</translation>
    </message>
    <message>
        <source>Brier score of the mean share</source>
        <translation>Brier-Score des mittleren Anteils</translation>
    </message>
    <message>
        <source>CRPS</source>
        <translation>CRPS</translation>
    </message>
    <message>
        <source>Check one tree in the field, and move the points or the rows.</source>
        <translation>Einen Baum im Feld prüfen und die Punkte oder die Reihen verschieben.</translation>
    </message>
    <message>
        <source>Check the bearing, or give the row distance as well.</source>
        <translation>Die Richtung prüfen oder auch den Reihenabstand angeben.</translation>
    </message>
    <message>
        <source>Check the coordinates and their system. If they are right, make a book with book-new in a system for that area.</source>
        <translation>Die Koordinaten und ihr System prüfen. Stimmen sie, mit book-new ein Buch in einem System für dieses Gebiet anlegen.</translation>
    </message>
    <message>
        <source>Check the numbers, or place the row in a GIS.</source>
        <translation>Die Zahlen prüfen oder die Zeile in einem GIS auf der Karte verorten.</translation>
    </message>
    <message>
        <source>Check the row distance and the bearing.</source>
        <translation>Den Reihenabstand und die Richtung prüfen.</translation>
    </message>
    <message>
        <source>Code of the cross; of bags without a tag only.</source>
        <translation>Kürzel der Kreuzung; nur bei Tüten ohne Anhänger.</translation>
    </message>
    <message>
        <source>Code on the tag at the branch; further passes on the branch have the same.</source>
        <translation>Kürzel auf dem Anhänger am Zweig; weitere Durchgänge am selben Zweig haben dasselbe.</translation>
    </message>
    <message>
        <source>Complete a row</source>
        <translation>Eine Zeile ergänzen</translation>
    </message>
    <message>
        <source>Complete rows</source>
        <translation>Zeilen ergänzen</translation>
    </message>
    <message>
        <source>Completes the row of a seed lot: the first day of stratification, its temperature and medium, later its last day. Only empty cells are filled, and record-undo empties them again.</source>
        <translation>Ergänzt die Zeile einer Saatgutpartie: den ersten Tag der Stratifikation, ihre Temperatur und ihr Substrat, später den letzten Tag. Nur leere Zellen werden gefüllt, und record-undo leert sie wieder.</translation>
    </message>
    <message>
        <source>Continuous ranked probability score: how far the whole forecast is from the observed day.</source>
        <translation>Continuous ranked probability score: wie weit die ganze Vorhersage vom beobachteten Tag entfernt ist.</translation>
    </message>
    <message>
        <source>Correct the parents or their species if a wide cross is not meant.</source>
        <translation>Die Eltern oder ihre Art berichtigen, wenn keine weite Kreuzung gemeint ist.</translation>
    </message>
    <message>
        <source>Correct the tree or the tag.</source>
        <translation>Den Baum oder den Anhänger berichtigen.</translation>
    </message>
    <message>
        <source>Correct tree and cross, or give the branch another tag.</source>
        <translation>Baum und Kreuzung berichtigen oder dem Zweig einen anderen Anhänger geben.</translation>
    </message>
    <message>
        <source>Cross goal</source>
        <translation>Kreuzungsziel</translation>
    </message>
    <message>
        <source>Date of planting.</source>
        <translation>Datum der Pflanzung.</translation>
    </message>
    <message>
        <source>Date of removal; unknown while it stands.</source>
        <translation>Datum der Rodung; leer, solange er steht.</translation>
    </message>
    <message>
        <source>Date of the work.</source>
        <translation>Datum der Arbeit.</translation>
    </message>
    <message>
        <source>Day on which none was left.</source>
        <translation>Tag, an dem nichts mehr übrig war.</translation>
    </message>
    <message>
        <source>Days from first bloom to end of bloom, forecast minus observed, where both were observed.</source>
        <translation>Tage vom Blühbeginn bis zum Blühende, Vorhersage minus Beobachtung, wo beide beobachtet wurden.</translation>
    </message>
    <message>
        <source>Days from full bloom until the seed is ripe for sowing.</source>
        <translation>Tage von der Vollblüte bis zur Saatreife der Samen.</translation>
    </message>
    <message>
        <source>Days of the year on which forecasts are made, as 02-15,03-01; where not given, from mid-February to mid-April, in the south half a year later.</source>
        <translation>Tage des Jahres, an denen vorhergesagt wird, etwa 02-15,03-01; ohne Angabe von Mitte Februar bis Mitte April, im Süden ein halbes Jahr später.</translation>
    </message>
    <message>
        <source>Done on</source>
        <translation>Erledigt am</translation>
    </message>
    <message>
        <source>Easting and northing are swapped: the other way round it lies in the area of use of the book&apos;s coordinate system.</source>
        <translation>Ost und Nord sind vertauscht: Anders herum liegt die Stelle im Geltungsbereich des Koordinatenbezugssystems des Buchs.</translation>
    </message>
    <message>
        <source>Empty rows</source>
        <translation>Leere Reihen</translation>
    </message>
    <message>
        <source>Enter each station in the table station of the book, and import its weather with weather-import. If they are trees all the same, say holds trees.</source>
        <translation>Jede Station in die Tabelle station des Buchs eintragen und ihr Wetter mit weather-import importieren. Sind es doch Bäume, holds trees angeben.</translation>
    </message>
    <message>
        <source>Errors of each forecast method for full bloom in seasons left out of the fit, which all others, later ones too, have entered.</source>
        <translation>Fehler jedes Vorhersageverfahrens für die Vollblüte in Saisons, die nicht zur Anpassung dienten; in sie gingen alle anderen ein, auch spätere.</translation>
    </message>
    <message>
        <source>Errors of each forecast method forward in time: each spring by what earlier springs taught, on a day of the calendar.</source>
        <translation>Fehler jedes Vorhersageverfahrens vorwärts in der Zeit: jedes Frühjahr nach dem, was frühere Frühjahre lehrten, an einem Tag des Kalenders.</translation>
    </message>
    <message>
        <source>Expected germination of the seed left, by handbook figures and the orchard&apos;s own counts; dry seed keeps about two years cold and sealed. Unknown once germination was counted: what is left then has not germinated so far.</source>
        <translation>Erwartete Keimung der übrigen Samen, nach Handbuch und eigenen Zählungen; trockener Samen hält kalt und luftdicht etwa zwei Jahre. Leer, sobald die Keimung gezählt wurde: Was dann übrig ist, ist bisher nicht gekeimt.</translation>
    </message>
    <message>
        <source>Finds rows and positions of trees from their locations on the map, however roughly measured: the trees of the book that have no row or position yet, or the points of a layer. Where the block has rows in the book, the trees are matched with them; otherwise the rows are detected from the trees; spacing, row distance and bearing, where given, need only be approximate. Gaps stay gaps. Rows may bend, fan out, be staggered and stand unevenly apart. Where two readings are likely what they differ in is left open, and one question is asked, with a picture of both answers; the answer is an option. Each decision comes with its distance and its probability; doubtful trees are listed and left open, never forced. With write the trees get their numbers; trees that have one are never changed.</source>
        <translation>Findet Reihe und Position von Bäumen anhand ihrer Lage auf der Karte, wie grob auch immer gemessen: für die Bäume des Buchs, die noch keine Reihe oder Position haben, oder für die Punkte eines Layers. Hat das Quartier im Buch Reihen, werden die Bäume diesen zugeordnet; sonst werden die Reihen aus den Bäumen erkannt; Pflanzabstand, Reihenabstand und Richtung, soweit angegeben, müssen nur ungefähr stimmen. Lücken bleiben Lücken. Reihen dürfen sich biegen, auffächern, versetzt und ungleich weit auseinander stehen. Sind zwei Lesarten wahrscheinlich, bleibt offen, worin sie sich unterscheiden, und es wird eine Frage gestellt, mit einem Bild beider Antworten; die Antwort ist eine Option. Zu jeder Entscheidung werden Abstand und Wahrscheinlichkeit genannt; zweifelhafte Bäume werden aufgeführt und offen gelassen, nie erzwungen. Mit write erhalten die Bäume ihre Nummern; Bäume, die eine haben, werden nie geändert.</translation>
    </message>
    <message>
        <source>Finds trees by any part of their record: a label or a part of it, a tag, the code of a cross or lot, &quot;A x B 17&quot; for the 17th seedling of a cross, the name of an accession even misspelt, block, row and position in words and in any order, rootstock and year of planting, a geo: link or coordinates, a word of a remark; also several of these together. Case, accents, blanks and dashes do not matter, and characters that look alike, such as O and 0, are taken for each other. Removed trees are found too. Nothing is written.</source>
        <translation>Findet Bäume anhand jedes Teils ihrer Daten: ein Etikett oder ein Teil davon, ein Anhänger, das Kürzel einer Kreuzung oder Partie, &quot;A x B 17&quot; für den 17. Sämling einer Kreuzung, der Name einer Akzession, auch falsch geschrieben, Quartier, Reihe und Position in Worten und beliebiger Folge, Unterlage und Pflanzjahr, ein geo:-Link oder Koordinaten, ein Wort aus einer Bemerkung; auch mehreres davon zusammen. Groß- und Kleinschreibung, Akzente, Leerzeichen und Striche spielen keine Rolle, und ähnliche Zeichen wie O und 0 gelten als gleich. Auch gerodete Bäume werden gefunden. Es wird nichts geschrieben.</translation>
    </message>
    <message>
        <source>First day in the new store.</source>
        <translation>Erster Tag im neuen Lager.</translation>
    </message>
    <message>
        <source>First season</source>
        <translation>Erste Saison</translation>
    </message>
    <message>
        <source>Flat or hollow seeds found.</source>
        <translation>Gefundene flache oder hohle Samen.</translation>
    </message>
    <message>
        <source>Forecasting past meetings</source>
        <translation>Vergangenes Zusammentreffen wird vorhergesagt</translation>
    </message>
    <message>
        <source>Forward in time</source>
        <translation>Vorwärts in der Zeit</translation>
    </message>
    <message>
        <source>Fruit set count</source>
        <translation>Fruchtansatzzählung</translation>
    </message>
    <message>
        <source>Fruit set counts</source>
        <translation>Fruchtansatzzählungen</translation>
    </message>
    <message>
        <source>Fruits set</source>
        <translation>Angesetzte Früchte</translation>
    </message>
    <message>
        <source>Full bloom of seasons left out</source>
        <translation>Vollblüte ausgelassener Saisons</translation>
    </message>
    <message>
        <source>Full seeds found.</source>
        <translation>Gefundene volle Samen.</translation>
    </message>
    <message>
        <source>Give a stage before 60, or the share that was open; until then it counts as not yet in bloom.</source>
        <translation>Ein Stadium vor 60 oder den geöffneten Anteil angeben; bis dahin zählt sie als noch nicht in Blüte.</translation>
    </message>
    <message>
        <source>Give both.</source>
        <translation>Beide angeben.</translation>
    </message>
    <message>
        <source>Give degrees with decimals: latitude -90 to 90, longitude -180 to 180.</source>
        <translation>Dezimalgrad angeben: Breite -90 bis 90, Länge -180 bis 180.</translation>
    </message>
    <message>
        <source>Give its tag, or the tree and the cross.</source>
        <translation>Seinen Anhänger angeben, oder den Baum und die Kreuzung.</translation>
    </message>
    <message>
        <source>Give the bearing in which positions count.</source>
        <translation>Die Richtung angeben, in der die Positionen zählen.</translation>
    </message>
    <message>
        <source>Give the spacing.</source>
        <translation>Den Pflanzabstand angeben.</translation>
    </message>
    <message>
        <source>Greatest probability in the row.</source>
        <translation>Größte Wahrscheinlichkeit in der Zeile.</translation>
    </message>
    <message>
        <source>Height above sea level; where unknown, the point&apos;s third coordinate, else the station&apos;s.</source>
        <translation>Höhe über dem Meer; wenn unbekannt, die dritte Koordinate des Punktes, sonst die der Station.</translation>
    </message>
    <message>
        <source>How far apart are the positions in a row?</source>
        <translation>Wie weit liegen die Positionen einer Reihe auseinander?</translation>
    </message>
    <message>
        <source>How its place on the map was found.</source>
        <translation>Wie seine Lage auf der Karte bestimmt wurde.</translation>
    </message>
    <message>
        <source>If they are, give layer-crs EPSG:4326; if they are in the book&apos;s own system, layer-crs book; else the code of their system.</source>
        <translation>Wenn ja, layer-crs EPSG:4326 angeben; sind sie im eigenen System des Buchs, layer-crs book; sonst den Code ihres Systems.</translation>
    </message>
    <message>
        <source>If they are, give layer-crs book; else the code of their system, as in EPSG:31467: it stands in the settings of the program or receiver that they come from.</source>
        <translation>Wenn ja, layer-crs book angeben; sonst den Code ihres Systems, etwa EPSG:31467: Er steht in den Einstellungen des Programms oder Empfängers, aus dem sie stammen.</translation>
    </message>
    <message>
        <source>Imports your own layer of trees, accessions, rows or blocks into the book. Its fields are recognised by their names and values and shown with what would happen to every feature; with write everything is added at once, or nothing if there is an error. Existing rows of the book are never changed, nor is your layer. record-undo undoes the whole import.</source>
        <translation>Importiert einen eigenen Layer mit Bäumen, Akzessionen, Reihen oder Quartieren ins Buch. Seine Felder werden an Namen und Werten erkannt und gezeigt, zusammen mit dem, was mit jedem Objekt geschähe; mit write kommt alles auf einmal dazu, bei einem Fehler nichts. Vorhandene Zeilen des Buchs werden nie geändert, der Layer auch nicht. record-undo nimmt den ganzen Import zurück.</translation>
    </message>
    <message>
        <source>Issued</source>
        <translation>Ausgegeben</translation>
    </message>
    <message>
        <source>Issued on</source>
        <translation>Ausgegeben am</translation>
    </message>
    <message>
        <source>It lies at latitude {:.4f}, longitude {:.4f}, outside of the area of use of the book&apos;s coordinate system, {}.</source>
        <translation>Die Stelle liegt auf Breite {}, Länge {}, außerhalb des Geltungsbereichs des Koordinatenbezugssystems des Buchs, {}.</translation>
    </message>
    <message>
        <source>Last day of stratification.</source>
        <translation>Letzter Tag der Stratifikation.</translation>
    </message>
    <message>
        <source>Last day on which plant breeders&apos; rights or a licence bind it.</source>
        <translation>Letzter Tag, an dem Sortenschutz oder eine Lizenz für sie gilt.</translation>
    </message>
    <message>
        <source>Latitude and longitude are swapped: the other way round it lies in the area of use of the book&apos;s coordinate system.</source>
        <translation>Breite und Länge sind vertauscht: Anders herum liegt die Stelle im Geltungsbereich des Koordinatenbezugssystems des Buchs.</translation>
    </message>
    <message>
        <source>Latitude and longitude go together.</source>
        <translation>Breite und Länge gehören zusammen.</translation>
    </message>
    <message>
        <source>Least probability in the row.</source>
        <translation>Kleinste Wahrscheinlichkeit in der Zeile.</translation>
    </message>
    <message>
        <source>Leave it out, or correct the row in a GIS.</source>
        <translation>Weglassen oder die Zeile in einem GIS berichtigen.</translation>
    </message>
    <message>
        <source>Likely error of its place.</source>
        <translation>Wahrscheinlicher Fehler seiner Lage.</translation>
    </message>
    <message>
        <source>Location: latitude and longitude</source>
        <translation>Lage: Breite und Länge</translation>
    </message>
    <message>
        <source>Look at it and record again what is still missing.</source>
        <translation>Nachsehen und erneut erfassen, was noch fehlt.</translation>
    </message>
    <message>
        <source>Makes a book of an older version of the schema one of this program&apos;s: tables and columns that it lacks are added, its rows stay. With write, a copy of the file is kept beside it first.</source>
        <translation>Bringt ein Buch einer älteren Schemaversion auf die dieses Programms: Fehlende Tabellen und Spalten kommen dazu, seine Zeilen bleiben. Mit write wird zuvor eine Kopie der Datei daneben abgelegt.</translation>
    </message>
    <message>
        <source>Mass of dry pollen.</source>
        <translation>Masse des trockenen Pollens.</translation>
    </message>
    <message>
        <source>Mean absolute error of the median.</source>
        <translation>Mittlerer absoluter Fehler des Medians.</translation>
    </message>
    <message>
        <source>Mean of the forecast probabilities.</source>
        <translation>Mittel der vorhergesagten Wahrscheinlichkeiten.</translation>
    </message>
    <message>
        <source>Mean probability</source>
        <translation>Mittlere Wahrscheinlichkeit</translation>
    </message>
    <message>
        <source>Mean square of the probability minus what came (1 or 0): 0 is perfect.</source>
        <translation>Mittleres Quadrat aus Wahrscheinlichkeit minus Ausgang (1 oder 0): 0 ist vollkommen.</translation>
    </message>
    <message>
        <source>Measure the trees more exactly, or lay the rows with row-lay first.</source>
        <translation>Die Bäume genauer einmessen oder zuerst die Reihen mit row-lay anlegen.</translation>
    </message>
    <message>
        <source>Member of a blend</source>
        <translation>Bestandteil einer Pollenmischung</translation>
    </message>
    <message>
        <source>Month and day on which the forecast was made.</source>
        <translation>Monat und Tag, an dem die Vorhersage gemacht wurde.</translation>
    </message>
    <message>
        <source>More fruits were counted than the {} flowers pollinated.</source>
        <translation>Es wurden mehr Früchte gezählt als die {} bestäubten Blüten.</translation>
    </message>
    <message>
        <source>Move of pollen</source>
        <translation>Pollenumlagerung</translation>
    </message>
    <message>
        <source>Move what lies there, and check that there is room.</source>
        <translation>Was dort liegt, verschieben und prüfen, ob genug Speicherplatz frei ist.</translation>
    </message>
    <message>
        <source>Moved on</source>
        <translation>Umgelagert am</translation>
    </message>
    <message>
        <source>Moves of pollen</source>
        <translation>Pollenumlagerungen</translation>
    </message>
    <message>
        <source>No copy of the book can be made here.</source>
        <translation>Hier lässt sich keine Kopie des Buchs anlegen.</translation>
    </message>
    <message>
        <source>No, it is an alley.</source>
        <translation>Nein, es ist eine Fahrgasse.</translation>
    </message>
    <message>
        <source>No, the edge turns: they begin there.</source>
        <translation>Nein, der Rand knickt ab: Sie beginnen dort.</translation>
    </message>
    <message>
        <source>Nothing need be recorded.</source>
        <translation>Es ist nichts zu erfassen.</translation>
    </message>
    <message>
        <source>Nothing tells the branch.</source>
        <translation>Nichts sagt, welcher Zweig es ist.</translation>
    </message>
    <message>
        <source>Number of chromosome sets.</source>
        <translation>Zahl der Chromosomensätze.</translation>
    </message>
    <message>
        <source>Number of flowers bagged, emasculated or on the cut branch.</source>
        <translation>Zahl der eingetüteten oder kastrierten Blüten oder der Blüten am geschnittenen Zweig.</translation>
    </message>
    <message>
        <source>Number of flowers collected.</source>
        <translation>Zahl der gesammelten Blüten.</translation>
    </message>
    <message>
        <source>Number of fruits that hang; 0 where none is left.</source>
        <translation>Zahl der hängenden Früchte; 0, wenn keine mehr da ist.</translation>
    </message>
    <message>
        <source>Observed days scored, one an accession and spring.</source>
        <translation>Bewertete beobachtete Tage, einer je Akzession und Frühjahr.</translation>
    </message>
    <message>
        <source>Observed share</source>
        <translation>Beobachteter Anteil</translation>
    </message>
    <message>
        <source>Of the layer, as in EPSG:25832, where the layer does not give it; book for the book&apos;s own, GNSS for degrees of a receiver.</source>
        <translation>Des Layers, etwa EPSG:25832, falls er es nicht selbst angibt; book für das eigene des Buchs, GNSS für Grade eines Empfängers.</translation>
    </message>
    <message>
        <source>One of its answers.</source>
        <translation>Eine der Antworten darauf.</translation>
    </message>
    <message>
        <source>Option</source>
        <translation>Option</translation>
    </message>
    <message>
        <source>Pairs</source>
        <translation>Paare</translation>
    </message>
    <message>
        <source>Pairs of accessions in springs in which both were observed.</source>
        <translation>Paare von Akzessionen in Frühjahren, in denen beide beobachtet wurden.</translation>
    </message>
    <message>
        <source>Part of the blend; unknown means equal parts.</source>
        <translation>Anteil an der Mischung; leer heißt gleiche Teile.</translation>
    </message>
    <message>
        <source>Position in the row, counted in its direction.</source>
        <translation>Position in der Reihe, in deren Richtung gezählt.</translation>
    </message>
    <message>
        <source>Probability, from</source>
        <translation>Wahrscheinlichkeit, von</translation>
    </message>
    <message>
        <source>Probability, to</source>
        <translation>Wahrscheinlichkeit, bis</translation>
    </message>
    <message>
        <source>Question about rows</source>
        <translation>Frage zu den Reihen</translation>
    </message>
    <message>
        <source>Record a new row instead.</source>
        <translation>Stattdessen eine neue Zeile erfassen.</translation>
    </message>
    <message>
        <source>Record a second pass on its own day, or give another branch another tag.</source>
        <translation>Einen zweiten Durchgang unter seinem eigenen Tag erfassen oder einem anderen Zweig einen anderen Anhänger geben.</translation>
    </message>
    <message>
        <source>Record accession</source>
        <translation>Akzession erfassen</translation>
    </message>
    <message>
        <source>Record cross goal</source>
        <translation>Kreuzungsziel erfassen</translation>
    </message>
    <message>
        <source>Record fruit set</source>
        <translation>Fruchtansatz erfassen</translation>
    </message>
    <message>
        <source>Record it as a whole first, or correct the name.</source>
        <translation>Zuerst als Ganzes erfassen oder den Namen berichtigen.</translation>
    </message>
    <message>
        <source>Record member of a blend</source>
        <translation>Bestandteil einer Pollenmischung erfassen</translation>
    </message>
    <message>
        <source>Record move of pollen</source>
        <translation>Pollenumlagerung erfassen</translation>
    </message>
    <message>
        <source>Record pollen lot</source>
        <translation>Pollenpartie erfassen</translation>
    </message>
    <message>
        <source>Record stratification</source>
        <translation>Stratifikation erfassen</translation>
    </message>
    <message>
        <source>Record trait</source>
        <translation>Merkmal erfassen</translation>
    </message>
    <message>
        <source>Record tree</source>
        <translation>Baum erfassen</translation>
    </message>
    <message>
        <source>Record weather station</source>
        <translation>Wetterstation erfassen</translation>
    </message>
    <message>
        <source>Record work at a branch</source>
        <translation>Zweigarbeit erfassen</translation>
    </message>
    <message>
        <source>Records a cross that is wanted in a season: parents, number of seedlings and priority.</source>
        <translation>Erfasst eine Kreuzung, die in einer Saison gewünscht ist: Eltern, Zahl der Sämlinge und Priorität.</translation>
    </message>
    <message>
        <source>Records a tree: accession, address, rootstock, day of planting and, where known, latitude and longitude. With complete, fills what the tree of that label lacks.</source>
        <translation>Erfasst einen Baum: Akzession, Adresse, Unterlage, Pflanztag und, soweit bekannt, Breite und Länge. Ergänzt mit complete, was dem Baum mit diesem Etikett fehlt.</translation>
    </message>
    <message>
        <source>Records a weather station with its height and its place, so that weather-import can bring its days.</source>
        <translation>Erfasst eine Wetterstation mit Höhe und Lage, damit weather-import ihre Tage bringen kann.</translation>
    </message>
    <message>
        <source>Records an accession: its kind, parents, S-alleles, species and what else is known. With complete, fills what the accession of that name lacks.</source>
        <translation>Erfasst eine Akzession: welcher Art sie ist, Eltern, S-Allele, botanische Art und was sonst bekannt ist. Ergänzt mit complete, was der Akzession dieses Namens fehlt.</translation>
    </message>
    <message>
        <source>Records how many fruits hang at a tagged branch after the June drop. Where none is left the tag is done: no harvest is waited for.</source>
        <translation>Erfasst, wie viele Früchte nach dem Junifall an einem Zweig mit Anhänger hängen. Ist keine mehr da, ist der Anhänger erledigt: Eine Ernte wird nicht mehr erwartet.</translation>
    </message>
    <message>
        <source>Records on which part of the tree a trait is scored: leaf, bloom, fruit or the whole tree. Only scores of flowers and fruit show that a seedling has bloomed.</source>
        <translation>Erfasst, an welchem Teil des Baums ein Merkmal bonitiert wird: Blatt, Blüte, Frucht oder ganzer Baum. Nur Bonituren von Blüten und Früchten zeigen, dass ein Sämling geblüht hat.</translation>
    </message>
    <message>
        <source>Records one member of a pollen blend with its share; a blend is made of as many such records as it has members.</source>
        <translation>Erfasst einen Bestandteil einer Pollenmischung mit seinem Anteil; eine Mischung besteht aus so vielen solchen Einträgen, wie sie Bestandteile hat.</translation>
    </message>
    <message>
        <source>Records pollen collected, under the code on its vial: donor, date, flowers, and the mass once it is dry. Pollen in stock is planned with, and what it covers is no longer to be collected.</source>
        <translation>Erfasst gesammelten Pollen unter dem Kürzel auf seinem Röhrchen: Pollenspender, Datum, Blüten und die Masse, sobald er trocken ist. Mit vorhandenem Pollen wird geplant, und was er abdeckt, ist nicht mehr zu sammeln.</translation>
    </message>
    <message>
        <source>Records that a pollen lot was brought to another store. From that day on its germination falls as it does there.</source>
        <translation>Erfasst, dass eine Pollenpartie in ein anderes Lager kam. Von diesem Tag an sinkt ihre Keimung so, wie sie es dort tut.</translation>
    </message>
    <message>
        <source>Records that flowers were bagged, emasculated or unbagged, a donor branch was cut, or the cut branch has come to bloom indoors: by the tag, or by tree and cross. The task is then done and out of the plan.</source>
        <translation>Erfasst, dass Blüten eingetütet oder kastriert wurden, Tüten abgenommen wurden, ein Zweig des Pollenspenders geschnitten wurde oder der Treibzweig im Haus blüht: über den Anhänger oder über Baum und Kreuzung. Die Aufgabe ist damit erledigt und nicht mehr im Plan.</translation>
    </message>
    <message>
        <source>Records the flowers pollinated on a branch, under the tag that is put on it. It is checked against the book first: the tree must be of the cross&apos;s seed parent, the pollen in stock on that day. A second pass over the branch goes under its tag.</source>
        <translation>Erfasst die an einem Zweig bestäubten Blüten unter dem Anhänger, den er bekommt. Wird zuerst am Buch geprüft: Der Baum muss von der Mutter der Kreuzung sein und der Pollen an diesem Tag vorhanden. Ein zweiter Durchgang am selben Zweig läuft unter dessen Anhänger.</translation>
    </message>
    <message>
        <source>Relative humidity in the store.</source>
        <translation>Relative Luftfeuchte im Lager.</translation>
    </message>
    <message>
        <source>Root mean square error of the median.</source>
        <translation>Wurzel aus dem mittleren quadratischen Fehler des Medians.</translation>
    </message>
    <message>
        <source>Rows of this table have no name of their own.</source>
        <translation>Die Zeilen dieser Tabelle haben keinen eigenen Namen.</translation>
    </message>
    <message>
        <source>Rows run into one another: the points are too rough to tell them apart.</source>
        <translation>Reihen laufen ineinander: Die Punkte sind zu ungenau, um sie zu unterscheiden.</translation>
    </message>
    <message>
        <source>Self-incompatibility alleles, as &quot;S2 S3&quot;.</source>
        <translation>Allele der Selbstunverträglichkeit, etwa „S2 S3“.</translation>
    </message>
    <message>
        <source>Share in which it came about.</source>
        <translation>Anteil, in dem es dazu kam.</translation>
    </message>
    <message>
        <source>Share of flowers that have opened.</source>
        <translation>Anteil der Blüten, die sich geöffnet haben.</translation>
    </message>
    <message>
        <source>Skill of the meeting probabilities</source>
        <translation>Vorhersagegüte für das Zusammentreffen</translation>
    </message>
    <message>
        <source>Some rows begin later than others: are trees missing there?</source>
        <translation>Einige Reihen beginnen später als andere: Fehlen dort Bäume?</translation>
    </message>
    <message>
        <source>Spacings change along the rows, and the points are too rough to tell how.</source>
        <translation>Die Pflanzabstände ändern sich entlang der Reihen, und die Punkte sind zu ungenau, um zu erkennen, wie.</translation>
    </message>
    <message>
        <source>Springs</source>
        <translation>Frühjahre</translation>
    </message>
    <message>
        <source>Springs forecast by what earlier springs taught.</source>
        <translation>Frühjahre, vorhergesagt nach dem, was frühere Frühjahre lehrten.</translation>
    </message>
    <message>
        <source>Task</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Temperature of stratification.</source>
        <translation>Temperatur der Stratifikation.</translation>
    </message>
    <message>
        <source>The accession or blend that gave the pollen.</source>
        <translation>Die Akzession oder Mischung, die den Pollen gab.</translation>
    </message>
    <message>
        <source>The accession that bore the seed.</source>
        <translation>Die Akzession, die die Samen trug.</translation>
    </message>
    <message>
        <source>The accession that it is a bud sport or a clone of: its genes are the same.</source>
        <translation>Die Akzession, deren Mutante oder Klon sie ist: Ihre Gene sind dieselben.</translation>
    </message>
    <message>
        <source>The accession, the species, or all together.</source>
        <translation>Die Akzession, die Art oder alle zusammen.</translation>
    </message>
    <message>
        <source>The first spring forecast forward in time; where not given, the sixth one with observations.</source>
        <translation>Das erste Frühjahr, das vorwärts in der Zeit vorhergesagt wird; ohne Angabe das sechste mit Beobachtungen.</translation>
    </message>
    <message>
        <source>The forecast stage: 60 first bloom, 65 full bloom, 69 end of bloom.</source>
        <translation>Das vorhergesagte Stadium: 60 Blühbeginn, 65 Vollblüte, 69 Blühende.</translation>
    </message>
    <message>
        <source>The lot moved.</source>
        <translation>Die umgelagerte Partie.</translation>
    </message>
    <message>
        <source>The new store.</source>
        <translation>Das neue Lager.</translation>
    </message>
    <message>
        <source>The observation says that no flower was open, but its stage says that some were.</source>
        <translation>Nach der Beobachtung war keine Blüte offen, nach ihrem Stadium aber einige.</translation>
    </message>
    <message>
        <source>The observed tree.</source>
        <translation>Der beobachtete Baum.</translation>
    </message>
    <message>
        <source>The option that gives this answer.</source>
        <translation>Die Option, die diese Antwort gibt.</translation>
    </message>
    <message>
        <source>The place cannot be carried into the book&apos;s coordinate system.</source>
        <translation>Die Lage lässt sich nicht in das Koordinatenbezugssystem des Buchs umrechnen.</translation>
    </message>
    <message>
        <source>The pollen used, where it came from a lot.</source>
        <translation>Der verwendete Pollen, wenn er aus einer Partie kam.</translation>
    </message>
    <message>
        <source>The position of this tree, were it so.</source>
        <translation>Die Position dieses Baums, wenn es so wäre.</translation>
    </message>
    <message>
        <source>The probability that two accessions meet against the share in which they did, forward in time.</source>
        <translation>Die Wahrscheinlichkeit, dass zwei Akzessionen zusammentreffen, neben dem Anteil, in dem sie es taten, vorwärts in der Zeit.</translation>
    </message>
    <message>
        <source>The question whose answer settles most.</source>
        <translation>Die Frage, deren Antwort am meisten klärt.</translation>
    </message>
    <message>
        <source>The row of this tree, were it so.</source>
        <translation>Die Reihe dieses Baums, wenn es so wäre.</translation>
    </message>
    <message>
        <source>The row runs at {:.1f} degrees, with a tree every {:.3f} m; the points deviate by about {:.2f} m across and {:.2f} m along.</source>
        <translation>Die Reihe läuft in Richtung {} Grad, alle {} m ein Baum; die Punkte weichen etwa {} m quer und {} m längs ab.</translation>
    </message>
    <message>
        <source>The row says all of this already.</source>
        <translation>All das steht schon in der Zeile.</translation>
    </message>
    <message>
        <source>The row says {} there already; only empty cells are filled.</source>
        <translation>In der Zeile steht dort schon {}; gefüllt werden nur leere Zellen.</translation>
    </message>
    <message>
        <source>The row was changed meanwhile.</source>
        <translation>Die Zeile wurde inzwischen geändert.</translation>
    </message>
    <message>
        <source>The rows run from west to east: it is not clear where they begin.</source>
        <translation>Die Reihen laufen von West nach Ost: Es ist nicht klar, wo sie beginnen.</translation>
    </message>
    <message>
        <source>The rows were found {:.2f} m apart, not as told.</source>
        <translation>Die Reihen liegen nach den Punkten {} m auseinander, nicht wie angegeben.</translation>
    </message>
    <message>
        <source>The rows would be {:.2f} m apart and their trees {:.2f} m: rather the rows run the other way.</source>
        <translation>Die Reihen lägen {} m auseinander und ihre Bäume {} m: Eher laufen die Reihen quer dazu.</translation>
    </message>
    <message>
        <source>The same, had the share over all pairs and springs been forecast every time.</source>
        <translation>Dasselbe, wenn jedes Mal der Anteil über alle Paare und Frühjahre vorhergesagt worden wäre.</translation>
    </message>
    <message>
        <source>The tag at the branch, once it has one.</source>
        <translation>Der Anhänger am Zweig, sobald er einen hat.</translation>
    </message>
    <message>
        <source>The tag hangs at {} for cross {}: a pass on another branch has a tag of its own.</source>
        <translation>Der Anhänger hängt an {} für Kreuzung {}: Ein Durchgang an einem anderen Zweig hat einen eigenen Anhänger.</translation>
    </message>
    <message>
        <source>The tag hangs at {}.</source>
        <translation>Der Anhänger hängt an {}.</translation>
    </message>
    <message>
        <source>The tag has a pollination of this day already.</source>
        <translation>Der Anhänger hat schon eine Bestäubung von diesem Tag.</translation>
    </message>
    <message>
        <source>The tags whose fruit it came from, separated by blanks.</source>
        <translation>Die Anhänger, von deren Früchten die Samen stammen, durch Leerzeichen getrennt.</translation>
    </message>
    <message>
        <source>The text has more than {} characters.</source>
        <translation>Der Text hat mehr als {} Zeichen.</translation>
    </message>
    <message>
        <source>The trait, in the word that the scores use.</source>
        <translation>Das Merkmal, mit dem Wort, das die Bonituren verwenden.</translation>
    </message>
    <message>
        <source>The tree of the branch; needed where it has no tag yet.</source>
        <translation>Der Baum des Zweigs; nötig, wenn er noch keinen Anhänger hat.</translation>
    </message>
    <message>
        <source>The trees stand {:.2f} m apart, or {:.2f} m with others between them.</source>
        <translation>Die Bäume stehen {} m auseinander, oder {} m mit anderen dazwischen.</translation>
    </message>
    <message>
        <source>There is no such place on earth.</source>
        <translation>Einen solchen Ort gibt es auf der Erde nicht.</translation>
    </message>
    <message>
        <source>There is room for a row without trees: does it have a number?</source>
        <translation>Es ist Raum für eine Reihe ohne Bäume: Hat sie eine Nummer?</translation>
    </message>
    <message>
        <source>These are not days of a year.</source>
        <translation>Das sind keine Tage eines Jahres.</translation>
    </message>
    <message>
        <source>They run at {:.0f} degrees.</source>
        <translation>Sie laufen in Richtung {} Grad.</translation>
    </message>
    <message>
        <source>They were numbered as if moved back. Check one tree in the field.</source>
        <translation>Sie wurden nummeriert, als wären sie zurückgeschoben. Einen Baum im Feld prüfen.</translation>
    </message>
    <message>
        <source>This is a table of weather stations, not of trees.</source>
        <translation>Das ist eine Tabelle von Wetterstationen, nicht von Bäumen.</translation>
    </message>
    <message>
        <source>Treatment of the seed: soaking, scarification ...</source>
        <translation>Behandlung der Samen: Einweichen, Anritzen ...</translation>
    </message>
    <message>
        <source>Trees that could be numbered with it.</source>
        <translation>Bäume, die sich damit nummerieren ließen.</translation>
    </message>
    <message>
        <source>Upgrade a book</source>
        <translation>Buch aktualisieren</translation>
    </message>
    <message>
        <source>Upgrade it with book-upgrade; a copy is made first.</source>
        <translation>Mit book-upgrade aktualisieren; zuvor wird eine Kopie angelegt.</translation>
    </message>
    <message>
        <source>What it is grafted on.</source>
        <translation>Worauf er veredelt ist.</translation>
    </message>
    <message>
        <source>What should be asked where two readings of the rows are likely, and the options that answer it.</source>
        <translation>Was zu fragen ist, wenn zwei Lesarten der Reihen wahrscheinlich sind, und die Optionen, die es beantworten.</translation>
    </message>
    <message>
        <source>What was done.</source>
        <translation>Was getan wurde.</translation>
    </message>
    <message>
        <source>Where it is scored; a score on flowers or fruit shows that the tree has bloomed.</source>
        <translation>Woran es bonitiert wird; eine Bonitur von Blüten oder Früchten zeigt, dass der Baum geblüht hat.</translation>
    </message>
    <message>
        <source>Whether a row without trees between others has a number.</source>
        <translation>Ob eine Reihe ohne Bäume zwischen anderen eine Nummer hat.</translation>
    </message>
    <message>
        <source>Whether lines complete rows that the book has, by their names; only empty cells are filled.</source>
        <translation>Ob Zeilen des Bogens vorhandene Zeilen des Buchs nach ihrem Namen ergänzen; nur leere Zellen werden gefüllt.</translation>
    </message>
    <message>
        <source>Whether the row of this name, which the book has, gets what it lacks; only empty cells are filled.</source>
        <translation>Ob die Zeile dieses Namens, die das Buch schon hat, erhält, was ihr fehlt; nur leere Zellen werden gefüllt.</translation>
    </message>
    <message>
        <source>Whether to forecast each past spring from earlier springs alone.</source>
        <translation>Ob jedes vergangene Frühjahr allein aus früheren Frühjahren vorhergesagt wird.</translation>
    </message>
    <message>
        <source>Whether to score the probabilities that two accessions meet as well.</source>
        <translation>Ob auch die Wahrscheinlichkeiten bewertet werden, dass zwei Akzessionen zusammentreffen.</translation>
    </message>
    <message>
        <source>Which round on the same flowers; the next one under its tag where it is not given.</source>
        <translation>Der wievielte Durchgang an denselben Blüten; ohne Angabe der nächste unter seinem Anhänger.</translation>
    </message>
    <message>
        <source>Which way do the rows run?</source>
        <translation>In welche Richtung laufen die Reihen?</translation>
    </message>
    <message>
        <source>Winter chill that its buds need, where it is known from elsewhere.</source>
        <translation>Winterkälte, die ihre Knospen brauchen, wenn sie von anderswo bekannt ist.</translation>
    </message>
    <message>
        <source>Work at a branch</source>
        <translation>Zweigarbeit</translation>
    </message>
    <message>
        <source>Work at branches</source>
        <translation>Zweigarbeiten</translation>
    </message>
    <message>
        <source>Write it as a plain number, or in degrees, minutes and seconds.</source>
        <translation>Als einfache Zahl oder in Grad, Minuten und Sekunden schreiben.</translation>
    </message>
    <message>
        <source>Write latitude and longitude, as in 48.1340, 9.3010.</source>
        <translation>Breite und Länge schreiben, etwa 48.1340, 9.3010.</translation>
    </message>
    <message>
        <source>Write month and day, with commas between: 02-15,03-01.</source>
        <translation>Monat und Tag schreiben, mit Kommas dazwischen: 02-15,03-01.</translation>
    </message>
    <message>
        <source>Yes, all rows count from one edge.</source>
        <translation>Ja, alle Reihen zählen von einem Rand aus.</translation>
    </message>
    <message>
        <source>Yes, it is a row.</source>
        <translation>Ja, es ist eine Reihe.</translation>
    </message>
    <message>
        <source>a row without trees has a number</source>
        <translation>eine Reihe ohne Bäume hat eine Nummer</translation>
    </message>
    <message>
        <source>a row without trees may lie before its row</source>
        <translation>vor seiner Reihe liegt vielleicht eine Reihe ohne Bäume</translation>
    </message>
    <message>
        <source>a wide gap is an alley</source>
        <translation>eine breite Lücke ist eine Fahrgasse</translation>
    </message>
    <message>
        <source>accessions</source>
        <translation>Akzessionen</translation>
    </message>
    <message>
        <source>anthers removed from closed flowers</source>
        <translation>Staubbeutel aus geschlossenen Blüten entfernt</translation>
    </message>
    <message>
        <source>at an edge that turns once, as at a cut corner, also where first trees are missing</source>
        <translation>an einem Rand, der einmal abknickt, wie an einer abgeschnittenen Ecke, auch wo erste Bäume fehlen</translation>
    </message>
    <message>
        <source>at the block&apos;s common edge where the trees show it; asked where they do not</source>
        <translation>am gemeinsamen Rand des Quartiers, wo die Bäume ihn zeigen; wo nicht, wird gefragt</translation>
    </message>
    <message>
        <source>bags removed</source>
        <translation>Tüten abgenommen</translation>
    </message>
    <message>
        <source>bags, emasculation, branches cut</source>
        <translation>Tüten, Kastration, geschnittene Zweige</translation>
    </message>
    <message>
        <source>bloom</source>
        <translation>Blüte</translation>
    </message>
    <message>
        <source>branch work</source>
        <translation>Zweigarbeit</translation>
    </message>
    <message>
        <source>closed flowers bagged</source>
        <translation>geschlossene Blüten eingetütet</translation>
    </message>
    <message>
        <source>cross goals</source>
        <translation>Kreuzungsziele</translation>
    </message>
    <message>
        <source>done on</source>
        <translation>erledigt am</translation>
    </message>
    <message>
        <source>donor branch cut, to be forced</source>
        <translation>Zweig des Pollenspenders zum Treiben geschnitten</translation>
    </message>
    <message>
        <source>emasculate</source>
        <translation>kastrieren</translation>
    </message>
    <message>
        <source>forced branch in bloom indoors</source>
        <translation>Treibzweig blüht im Haus</translation>
    </message>
    <message>
        <source>fresh pollen: in bloom together on two days or more</source>
        <translation>frischer Pollen: an mindestens zwei Tagen gemeinsam in Blüte</translation>
    </message>
    <message>
        <source>fruit counted on the tree</source>
        <translation>am Baum gezählte Früchte</translation>
    </message>
    <message>
        <source>fruit set</source>
        <translation>Fruchtansatz</translation>
    </message>
    <message>
        <source>fruits set</source>
        <translation>angesetzte Früchte</translation>
    </message>
    <message>
        <source>indoor bloom</source>
        <translation>Blüte im Haus</translation>
    </message>
    <message>
        <source>leaf</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>left open, and asked</source>
        <translation>bleibt offen und wird gefragt</translation>
    </message>
    <message>
        <source>mean date of the last 15 springs</source>
        <translation>mittleres Datum der letzten 15 Frühjahre</translation>
    </message>
    <message>
        <source>members of pollen blends</source>
        <translation>Bestandteile von Pollenmischungen</translation>
    </message>
    <message>
        <source>moved on</source>
        <translation>umgelagert am</translation>
    </message>
    <message>
        <source>pollen brought to another store</source>
        <translation>in ein anderes Lager gebrachter Pollen</translation>
    </message>
    <message>
        <source>pollen collected</source>
        <translation>gesammelter Pollen</translation>
    </message>
    <message>
        <source>pollen lot {}</source>
        <translation>Pollenpartie {}</translation>
    </message>
    <message>
        <source>pollen move</source>
        <translation>Pollenumlagerung</translation>
    </message>
    <message>
        <source>probability²</source>
        <translation>Wahrscheinlichkeit²</translation>
    </message>
    <message>
        <source>rootstock {}</source>
        <translation>Unterlage {}</translation>
    </message>
    <message>
        <source>scored on flowers</source>
        <translation>an Blüten bonitiert</translation>
    </message>
    <message>
        <source>scored on fruit</source>
        <translation>an Früchten bonitiert</translation>
    </message>
    <message>
        <source>scored on leaves or shoots</source>
        <translation>an Blättern oder Trieben bonitiert</translation>
    </message>
    <message>
        <source>scored on the tree as a whole</source>
        <translation>am ganzen Baum bonitiert</translation>
    </message>
    <message>
        <source>seed lot {}</source>
        <translation>Saatgutpartie {}</translation>
    </message>
    <message>
        <source>seed lots put into stratification</source>
        <translation>Saatgutpartien, deren Stratifikation beginnt</translation>
    </message>
    <message>
        <source>stored pollen: that of the first flowers dry before the other&apos;s bloom ends</source>
        <translation>gelagerter Pollen: Der Pollen der ersten Blüten ist trocken, bevor die Blüte der anderen Akzession endet</translation>
    </message>
    <message>
        <source>task</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>the mean date of the last 15 springs, whatever the weather</source>
        <translation>das mittlere Datum der letzten 15 Frühjahre, unabhängig vom Wetter</translation>
    </message>
    <message>
        <source>the points lie off the rows as a whole</source>
        <translation>die Punkte liegen alle zusammen neben den Reihen</translation>
    </message>
    <message>
        <source>the spacing changes before it: how many positions lie between is not clear</source>
        <translation>vor ihm ändert sich der Pflanzabstand: Wie viele Positionen dazwischen liegen, ist nicht klar</translation>
    </message>
    <message>
        <source>the trees of its row stand {:.2f} m apart, not as told</source>
        <translation>die Bäume seiner Reihe stehen {} m auseinander, nicht wie angegeben</translation>
    </message>
    <message>
        <source>traits that are scored</source>
        <translation>Merkmale, die bonitiert werden</translation>
    </message>
    <message>
        <source>trees</source>
        <translation>Bäume</translation>
    </message>
    <message>
        <source>weather stations</source>
        <translation>Wetterstationen</translation>
    </message>
    <message>
        <source>{:.2f} m, most of every second one empty.</source>
        <translation>{} m, von jeder zweiten sind die meisten leer.</translation>
    </message>
    <message>
        <source>{:.2f} m, with other trees between them.</source>
        <translation>{} m, mit anderen Bäumen dazwischen.</translation>
    </message>
    <message>
        <source>{} ({}) and {} ({}) are of different genera: hardly any seed is to be expected.</source>
        <translation>{} ({}) und {} ({}) sind aus verschiedenen Gattungen: Es sind kaum Samen zu erwarten.</translation>
    </message>
    <message>
        <source>{} germinated seeds of lot {} are still in it, by the count of {}.</source>
        <translation>{} gekeimte Samen von Partie {} sind nach der Zählung vom {} noch darin.</translation>
    </message>
    <message>
        <source>{} is of another genus ({}) than {} ({}): hardly any seed is to be expected.</source>
        <translation>{} ist aus einer anderen Gattung ({}) als {} ({}): Es sind kaum Samen zu erwarten.</translation>
    </message>
    <message>
        <source>{} is of schema version {} already: nothing was changed.</source>
        <translation>{} hat schon Schemaversion {}: Es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>{} is of schema version {} and would become one of version {}; nothing was written.</source>
        <translation>{} hat Schemaversion {} und erhielte Version {}; es wurde nichts geschrieben.</translation>
    </message>
    <message>
        <source>{} more seedlings have no numbered position yet.</source>
        <translation>{} weitere Sämlinge haben noch keine nummerierte Position.</translation>
    </message>
    <message>
        <source>{} was of schema version {} and is of version {} now.</source>
        <translation>{} hatte Schemaversion {} und hat jetzt Version {}.</translation>
    </message>
    <message>
        <source>{} was of schema version {} and is of version {} now. As it was it lies in {}.</source>
        <translation>{} hatte Schemaversion {} und hat jetzt Version {}. Der vorige Stand liegt in {}.</translation>
    </message>
    <message>
        <source>{}, completed: {}</source>
        <translation>{}, ergänzt: {}</translation>
    </message>
    <message>
        <source>Urgency of the cross: 1 is the most urgent.</source>
        <translation>Dringlichkeit der Kreuzung: 1 ist die dringendste.</translation>
    </message>
    <message>
        <source>Ask the owner of the database for the right to read or write that table. Nothing was changed.</source>
        <translation>Beim Eigentümer der Datenbank das Recht erfragen, diese Tabelle zu lesen oder zu schreiben. Es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>Fetch the file first and name it where it then lies.</source>
        <translation>Die Datei zuerst holen und dann den Ort angeben, an dem sie liegt.</translation>
    </message>
    <message>
        <source>Its location is stored in another coordinate system than that of the layer ({}).</source>
        <translation>Die Lage ist in einem anderen Koordinatenbezugssystem gespeichert als dem des Layers ({}).</translation>
    </message>
    <message>
        <source>Its map style was not updated: {}.</source>
        <translation>Der Kartenstil wurde nicht aktualisiert: {}.</translation>
    </message>
    <message>
        <source>Move it through a GIS that transforms it, or draw it again.</source>
        <translation>In einem GIS in das System des Layers umrechnen oder neu zeichnen.</translation>
    </message>
    <message>
        <source>Nothing was undone.</source>
        <translation>Es wurde nichts zurückgenommen.</translation>
    </message>
    <message>
        <source>Nothing was undone. Run it again to undo {}.</source>
        <translation>Es wurde nichts zurückgenommen. Erneut ausführen, um {} zurückzunehmen.</translation>
    </message>
    <message>
        <source>Rebuild the layer&apos;s spatial index in a GIS, or copy the table into a new book.</source>
        <translation>Den räumlichen Index des Layers in einem GIS neu aufbauen oder die Tabelle in ein neues Buch kopieren.</translation>
    </message>
    <message>
        <source>Remove it, or copy the tables into a new book. Nothing was changed.</source>
        <translation>Entfernen oder die Tabellen in ein neues Buch kopieren. Es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>Restore it from a backup, or copy what can still be read into a new book.</source>
        <translation>Aus einer Sicherung wiederherstellen oder, was noch lesbar ist, in ein neues Buch kopieren.</translation>
    </message>
    <message>
        <source>Restore it from a backup, or copy what can still be read into a new book. Do not write to it.</source>
        <translation>Aus einer Sicherung wiederherstellen oder, was noch lesbar ist, in ein neues Buch kopieren. Nicht in die Datei schreiben.</translation>
    </message>
    <message>
        <source>Save its content as a file and name that.</source>
        <translation>Den Inhalt als Datei speichern und diese angeben.</translation>
    </message>
    <message>
        <source>The file is damaged in one place.</source>
        <translation>Die Datei ist an einer Stelle beschädigt.</translation>
    </message>
    <message>
        <source>The file is damaged in {} places.</source>
        <translation>Die Datei ist an {} Stellen beschädigt.</translation>
    </message>
    <message>
        <source>The file is damaged, and nothing is written to it.</source>
        <translation>Die Datei ist beschädigt, und es wird nichts hineingeschrieben.</translation>
    </message>
    <message>
        <source>The last record was {} and is another one by now: somebody else has undone or written one meanwhile.</source>
        <translation>Der letzte Eintrag war {} und ist jetzt ein anderer: Jemand anderes hat inzwischen einen zurückgenommen oder geschrieben.</translation>
    </message>
    <message>
        <source>The results are in the book. Run book-style later.</source>
        <translation>Die Ergebnisse stehen im Buch. book-style später ausführen.</translation>
    </message>
    <message>
        <source>The spatial index of the table does not fit its rows: a map or a search may miss some of them, and writing may fail.</source>
        <translation>Der räumliche Index der Tabelle passt nicht zu ihren Zeilen: Einer Karte oder Suche können einige davon entgehen, und das Schreiben kann scheitern.</translation>
    </message>
    <message>
        <source>The table {} does not hold what was written to it: a trigger or a constraint that is not of this program drops or replaces rows.</source>
        <translation>Die Tabelle {} enthält nicht, was hineingeschrieben wurde: Ein Trigger oder eine Bedingung, die nicht von diesem Programm stammt, verwirft oder ersetzt Zeilen.</translation>
    </message>
    <message>
        <source>This is no file but a pipe or a device.</source>
        <translation>Das ist keine Datei, sondern eine Pipe oder ein Gerät.</translation>
    </message>
    <message>
        <source>This lies in the network, and no file is fetched from there.</source>
        <translation>Das liegt im Netzwerk, und von dort wird keine Datei geholt.</translation>
    </message>
    <message>
        <source>This user of the database may not do that: {}.</source>
        <translation>Dieser Benutzer der Datenbank darf das nicht: {}.</translation>
    </message>
    <message>
        <source>Name crosses by their codes.</source>
        <translation>Kreuzungen mit ihrem Kürzel nennen.</translation>
    </message>
    <message>
        <source>The book has no cross of this name.</source>
        <translation>Das Buch hat keine Kreuzung dieses Namens.</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Latitude of the first position</source>
        <translation>Breite der ersten Position</translation>
    </message>
    <message>
        <source>Longitude of the first position</source>
        <translation>Länge der ersten Position</translation>
    </message>
    <message>
        <source>Seeds of the lot when it was made.</source>
        <translation>Samen der Partie, als sie angelegt wurde.</translation>
    </message>
    <message>
        <source>Pedigrees</source>
        <translation>Abstammungen</translation>
    </message>
    <message>
        <source>Overdue</source>
        <translation>Überfällig</translation>
    </message>
    <message>
        <source>Last safe day is today</source>
        <translation>Letzter sicherer Tag ist heute</translation>
    </message>
    <message>
        <source>Last safe day within seven days</source>
        <translation>Letzter sicherer Tag innerhalb von sieben Tagen</translation>
    </message>
    <message>
        <source>Neither {} nor its parents or grandparents were scored.</source>
        <translation>Weder {} noch deren Eltern oder Großeltern sind bonitiert.</translation>
    </message>
    <message>
        <source>The accession whose ancestor it is.</source>
        <translation>Die Akzession, deren Vorfahr es ist.</translation>
    </message>
    <message>
        <source>The accession whose descendant it is.</source>
        <translation>Die Akzession, deren Nachkomme es ist.</translation>
    </message>
    <message>
        <source>The accession whose pedigree it is.</source>
        <translation>Die Akzession, deren Abstammung es ist.</translation>
    </message>
    <message>
        <source>Draws the pedigree of each accession, ancestors and descendants, on a page of its own, as SVG and PDF: the seed parent above the pollen parent, an ancestor that occurs more than once drawn once, blends with their members, unknown parents and sports as such. Writes the pedigree in breeders&apos; notation and lists the expected genetic contribution of each ancestor.</source>
        <translation>Zeichnet die Abstammung jeder Akzession, Vorfahren und Nachkommen, auf einer eigenen Seite als SVG und PDF: die Mutter über dem Vater, ein mehrfach vorkommender Vorfahr nur einmal, Pollenmischungen mit ihren Bestandteilen, unbekannte Eltern und Mutanten als solche. Schreibt die Abstammung in der Schreibweise der Züchter und nennt den erwarteten genetischen Anteil jedes Vorfahren.</translation>
    </message>
    <message>
        <source>Only these traits, separated by commas; all that were scored where left out.</source>
        <translation>Nur diese Merkmale, durch Kommas getrennt; ohne Angabe alle bonitierten.</translation>
    </message>
    <message>
        <source>1 missing day was filled from its neighbours.</source>
        <translation>1 fehlender Tag wurde aus seinen Nachbarn gefüllt.</translation>
    </message>
    <message>
        <source>{} missing days in short gaps were filled from their neighbours.</source>
        <translation>{} fehlende Tage in kurzen Lücken wurden aus ihren Nachbarn gefüllt.</translation>
    </message>
    <message>
        <source>The last day, {}, has no temperatures.</source>
        <translation>Dem letzten Tag, {}, fehlen Temperaturen.</translation>
    </message>
    <message>
        <source>The last {} days, up to {}, have no temperatures.</source>
        <translation>Den letzten {} Tagen, bis zum {}, fehlen Temperaturen.</translation>
    </message>
    <message>
        <source>1 value that failed a quality check of the file&apos;s keeper was rejected.</source>
        <translation>1 Wert, der eine Qualitätsprüfung des Herausgebers der Datei nicht bestand, wurde verworfen.</translation>
    </message>
    <message>
        <source>{} values that failed a quality check of the file&apos;s keeper were rejected.</source>
        <translation>{} Werte, die eine Qualitätsprüfung des Herausgebers der Datei nicht bestanden, wurden verworfen.</translation>
    </message>
    <message>
        <source>1 line without a reading was left out.</source>
        <translation>1 Zeile ohne Messwert wurde ausgelassen.</translation>
    </message>
    <message>
        <source>{} lines without a reading were left out, the first here.</source>
        <translation>{} Zeilen ohne Messwert wurden ausgelassen, die erste hier.</translation>
    </message>
    <message>
        <source>1 day with only one of the two extremes was left out.</source>
        <translation>1 Tag mit nur einem der beiden Extreme wurde ausgelassen.</translation>
    </message>
    <message>
        <source>{} days with only one of the two extremes were left out.</source>
        <translation>{} Tage mit nur einem der beiden Extreme wurden ausgelassen.</translation>
    </message>
    <message>
        <source>All points seem to lie 1 row on.</source>
        <translation>Alle Punkte scheinen um 1 Reihe zu weit zu liegen.</translation>
    </message>
    <message>
        <source>All points seem to lie {} rows on.</source>
        <translation>Alle Punkte scheinen um {} Reihen zu weit zu liegen.</translation>
    </message>
    <message>
        <source>All points seem to lie 1 row back.</source>
        <translation>Alle Punkte scheinen um 1 Reihe zurück zu liegen.</translation>
    </message>
    <message>
        <source>All points seem to lie {} rows back.</source>
        <translation>Alle Punkte scheinen um {} Reihen zurück zu liegen.</translation>
    </message>
    <message>
        <source>All points seem to lie 1 position on.</source>
        <translation>Alle Punkte scheinen um 1 Position zu weit zu liegen.</translation>
    </message>
    <message>
        <source>All points seem to lie {} positions on.</source>
        <translation>Alle Punkte scheinen um {} Positionen zu weit zu liegen.</translation>
    </message>
    <message>
        <source>All points seem to lie 1 position back.</source>
        <translation>Alle Punkte scheinen um 1 Position zurück zu liegen.</translation>
    </message>
    <message>
        <source>All points seem to lie {} positions back.</source>
        <translation>Alle Punkte scheinen um {} Positionen zurück zu liegen.</translation>
    </message>
    <message>
        <source>(median)</source>
        <translation>(Median)</translation>
    </message>
    <message>
        <source>A book on a server is backed up by the server.</source>
        <translation>Ein Buch auf einem Server wird vom Server gesichert.</translation>
    </message>
    <message>
        <source>A branch is cut: about {} in water at about 20 °C until the anthers open, then {} of drying. Yields pollen in about {} of cases.</source>
        <translation>Ein Zweig wird geschnitten: etwa {} in Wasser bei etwa 20 °C, bis sich die Staubbeutel öffnen, dann {} Trocknen. Gibt in etwa {} der Fälle Pollen.</translation>
    </message>
    <message>
        <source>A file of daily minima and maxima: CSV of most kinds, or GHCN-Daily (.csv, .dly).</source>
        <translation>Eine Datei mit täglichen Tiefst- und Höchstwerten: CSV der meisten Arten oder GHCN-Daily (.csv, .dly).</translation>
    </message>
    <message>
        <source>A probability of 80 % means: in 8 of 10 springs like this one, viable, compatible pollen is available while the stigmas are receptive. Fruit set and seed are counted in addition: the flower numbers assume that {} pollinated flowers set fruit, more or fewer by {:.0f} from cross to cross, {} seeds per fruit and that {} seeds become seedlings, and reach the wanted number in {} springs. A last safe day has a risk of {:.0f} % of being too late.</source>
        <translation>Eine Wahrscheinlichkeit von 80 % heißt: In 8 von 10 Frühjahren wie diesem ist keimfähiger, verträglicher Pollen da, solange die Narben empfänglich sind. Fruchtansatz und Samen kommen hinzu: Die Blütenzahlen nehmen an, dass {} der bestäubten Blüten Früchte ansetzen, von Kreuzung zu Kreuzung mehr oder weniger um {:.0f}, dass eine Frucht {} Samen hat und {} der Samen Sämlinge werden, und erreichen die gewünschte Zahl in {} Frühjahren. An einem letzten sicheren Tag besteht ein Risiko von {:.0f} %, zu spät zu kommen.</translation>
    </message>
    <message>
        <source>A second way, in case the first fails.</source>
        <translation>Ein zweiter Weg, falls der erste scheitert.</translation>
    </message>
    <message>
        <source>A second way, in case the first fails: it raises the probability from {} to {}, worth about {} of {} wanted seedlings, and costs {} flower buds on cut branches and fresh water every two days for about {}.</source>
        <translation>Ein zweiter Weg, falls der erste scheitert: Er hebt die Wahrscheinlichkeit von {} auf {}, bringt etwa {} von {} gewünschten Sämlingen und kostet {} Blütenknospen an geschnittenen Zweigen und frisches Wasser alle zwei Tage, etwa {} lang.</translation>
    </message>
    <message>
        <source>A temperature stays the same for days on {} occasions: the thermometer may be stuck.</source>
        <translation>Bei {} Gelegenheiten bleibt eine Temperatur tagelang gleich: Vielleicht hängt das Thermometer.</translation>
    </message>
    <message>
        <source>A temperature stays the same for {} days from here: the thermometer may be stuck.</source>
        <translation>Von hier an bleibt eine Temperatur {} Tage lang gleich: Vielleicht hängt das Thermometer.</translation>
    </message>
    <message>
        <source>Add those that were counted before, or correct one of the counts.</source>
        <translation>Die früher gezählten hinzurechnen oder eine der Zählungen berichtigen.</translation>
    </message>
    <message>
        <source>All trees lie far from every station; with its two coordinates exchanged a station would lie among them.</source>
        <translation>Alle Bäume liegen weit von jeder Station; mit vertauschten Koordinaten läge eine Station zwischen ihnen.</translation>
    </message>
    <message>
        <source>All trees lie {:.0f} km or more from every station, whose weather then says nothing of their bloom.</source>
        <translation>Alle Bäume liegen {:.0f} km oder weiter von jeder Station, deren Wetter dann nichts über ihre Blüte sagt.</translation>
    </message>
    <message>
        <source>Ask whoever keeps it, or dump its schema with the server&apos;s own tools.</source>
        <translation>Bei der Stelle nachfragen, die ihn betreut, oder sein Schema mit den Werkzeugen des Servers sichern.</translation>
    </message>
    <message>
        <source>Back up a book</source>
        <translation>Buch sichern</translation>
    </message>
    <message>
        <source>Balloon from</source>
        <translation>Ballonstadium ab</translation>
    </message>
    <message>
        <source>Balloon stage is likely from {} to {}, after the last safe day: in many springs this comes too late.</source>
        <translation>Das Ballonstadium ist vom {} bis {} zu erwarten, nach dem letzten sicheren Tag: In vielen Frühjahren kommt das zu spät.</translation>
    </message>
    <message>
        <source>Balloon stage is likely from {} to {}.</source>
        <translation>Das Ballonstadium ist vom {} bis {} zu erwarten.</translation>
    </message>
    <message>
        <source>Balloon to</source>
        <translation>Ballonstadium bis</translation>
    </message>
    <message>
        <source>Both temperatures are 0, unlike the days around: they seem to stand for a missing reading, and the day is left out.</source>
        <translation>Beide Temperaturen sind 0, anders als an den Tagen ringsum: Sie stehen wohl für einen fehlenden Wert, und der Tag wird ausgelassen.</translation>
    </message>
    <message>
        <source>Both temperatures are 0, unlike the days around: they seem to stand for a missing reading.</source>
        <translation>Beide Temperaturen sind 0, anders als an den Tagen ringsum: Sie stehen wohl für einen fehlenden Wert.</translation>
    </message>
    <message>
        <source>Both temperatures are 0: do they stand for a missing reading?</source>
        <translation>Beide Temperaturen sind 0: Stehen sie für einen fehlenden Wert?</translation>
    </message>
    <message>
        <source>Check it; correct it in the file if it is wrong, and import that again with replace-existing.</source>
        <translation>Bitte prüfen; wenn der Wert falsch ist, in der Datei berichtigen und diese mit replace-existing neu importieren.</translation>
    </message>
    <message>
        <source>Check its coordinates and their coordinate system: east (longitude, x) first, then north.</source>
        <translation>Koordinaten und Koordinatensystem prüfen: zuerst Ost (Länge, x), dann Nord.</translation>
    </message>
    <message>
        <source>Check the coordinates of the trees and of the stations, and their coordinate system.</source>
        <translation>Die Koordinaten der Bäume und der Stationen und ihr Koordinatensystem prüfen.</translation>
    </message>
    <message>
        <source>Check the height: metres above sea level.</source>
        <translation>Die Höhe prüfen: Meter über dem Meer.</translation>
    </message>
    <message>
        <source>Check them, and correct or remove what is wrong.</source>
        <translation>Bitte prüfen und berichtigen oder entfernen, was falsch ist.</translation>
    </message>
    <message>
        <source>Collect to: a median</source>
        <translation>Sammeln bis: ein Median</translation>
    </message>
    <message>
        <source>Copies the book as it stands at one moment to a new file, even while others work in it, with what is not yet in the file itself; then checks the copy. A file that is there already is never overwritten.</source>
        <translation>Kopiert das Buch, wie es in einem Augenblick dasteht, in eine neue Datei, auch während andere darin arbeiten, samt dem, was noch nicht in der Datei selbst steht; prüft dann die Kopie. Eine Datei, die es schon gibt, wird nie überschrieben.</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopie</translation>
    </message>
    <message>
        <source>Copy the file as it is, together with its &quot;-wal&quot; or &quot;-journal&quot;, and restore the last good backup.</source>
        <translation>Die Datei so kopieren, wie sie ist, zusammen mit ihrem „-wal“ oder „-journal“, und die letzte gute Sicherung zurückholen.</translation>
    </message>
    <message>
        <source>Copying the book</source>
        <translation>Das Buch wird kopiert</translation>
    </message>
    <message>
        <source>Correct a stage or a day.</source>
        <translation>Ein Stadium oder einen Tag berichtigen.</translation>
    </message>
    <message>
        <source>Day shift</source>
        <translation>Tagesversatz</translation>
    </message>
    <message>
        <source>Days to add to the dates of the file: 1 where they are stamped with the UTC time of the midnight at which the day begins at the station, 0 where they are right as they stand.</source>
        <translation>Tage, die zu den Daten der Datei hinzukommen: 1, wo sie mit der UTC-Zeit der Mitternacht gestempelt sind, mit der der Tag an der Station beginnt, 0, wo sie so stimmen, wie sie dastehen.</translation>
    </message>
    <message>
        <source>Draw it from its first position to its last.</source>
        <translation>Die Reihe von der ersten bis zur letzten Position zeichnen.</translation>
    </message>
    <message>
        <source>Flowers, crosses, fruits or seeds that it counted.</source>
        <translation>Blüten, Kreuzungen, Früchte oder Samen, die gezählt wurden.</translation>
    </message>
    <message>
        <source>From here on the temperatures seem to be in {}, before it in {}.</source>
        <translation>Von hier an scheinen die Temperaturen in {} zu stehen, davor in {}.</translation>
    </message>
    <message>
        <source>GHCN-Daily in its long form: elements TMIN and TMAX in tenths of a degree Celsius, as that form has it.</source>
        <translation>GHCN-Daily in seiner langen Form: Elemente TMIN und TMAX in Zehntelgrad Celsius, wie diese Form sie hat.</translation>
    </message>
    <message>
        <source>GHCN-Daily in lines of fixed width: elements TMIN and TMAX in tenths of a degree Celsius, as that form has it.</source>
        <translation>GHCN-Daily in Zeilen fester Breite: Elemente TMIN und TMAX in Zehntelgrad Celsius, wie diese Form sie hat.</translation>
    </message>
    <message>
        <source>Give at most {}.</source>
        <translation>Höchstens {} angeben.</translation>
    </message>
    <message>
        <source>If no program has it open, look for what was entered last; copy a book with book-backup, or after closing it everywhere.</source>
        <translation>Wenn kein Programm das Buch geöffnet hat, nachsehen, was zuletzt eingetragen wurde; ein Buch mit book-backup kopieren oder nachdem es überall geschlossen ist.</translation>
    </message>
    <message>
        <source>If nothing was measured, remove the days: short gaps are filled, long ones told.</source>
        <translation>Wenn nichts gemessen wurde, die Tage entfernen: Kurze Lücken werden gefüllt, lange gemeldet.</translation>
    </message>
    <message>
        <source>If so, leave the cells empty and import the file again with replace-existing.</source>
        <translation>Wenn ja, die Zellen leer lassen und die Datei mit replace-existing neu importieren.</translation>
    </message>
    <message>
        <source>If they are a forecast, import them from a file of their own with source forecast; else correct the dates.</source>
        <translation>Wenn es eine Vorhersage ist, die Tage aus einer eigenen Datei mit der Herkunft forecast importieren; sonst die Daten berichtigen.</translation>
    </message>
    <message>
        <source>Import them again with layer-crs EPSG:4326, or move them through a GIS.</source>
        <translation>Mit layer-crs EPSG:4326 neu importieren oder in einem GIS verschieben.</translation>
    </message>
    <message>
        <source>It is enough for {} of {} flowers; the rest from lot {}.</source>
        <translation>Die Partie reicht für {} von {} Blüten; der Rest aus Partie {}.</translation>
    </message>
    <message>
        <source>It lies at 0, 0: the coordinates were probably missing.</source>
        <translation>Die Lage ist 0, 0: Wahrscheinlich fehlten die Koordinaten.</translation>
    </message>
    <message>
        <source>It lies {:.0f} km from every other tree.</source>
        <translation>Der Baum liegt {:.0f} km von jedem anderen Baum.</translation>
    </message>
    <message>
        <source>It lies {:.0f} km from the other trees of block {}.</source>
        <translation>Der Baum liegt {:.0f} km von den anderen Bäumen des Quartiers {}.</translation>
    </message>
    <message>
        <source>It stands more than {:.0f} m above or below every station, whose weather then says nothing of its bloom.</source>
        <translation>Der Baum steht mehr als {:.0f} m über oder unter jeder Station, deren Wetter dann nichts über seine Blüte sagt.</translation>
    </message>
    <message>
        <source>Its two coordinates are exchanged: the other way round it lies among the other trees.</source>
        <translation>Die beiden Koordinaten sind vertauscht: Anders herum liegt der Baum zwischen den anderen Bäumen.</translation>
    </message>
    <message>
        <source>Its two coordinates are exchanged: the other way round it lies among the trees of its block.</source>
        <translation>Die beiden Koordinaten sind vertauscht: Anders herum liegt der Baum zwischen den Bäumen seines Quartiers.</translation>
    </message>
    <message>
        <source>Last safe day at the accepted risk, or a median where the next column says so.</source>
        <translation>Letzter sicherer Tag beim angenommenen Risiko oder ein Median, wo die nächste Spalte es sagt.</translation>
    </message>
    <message>
        <source>Last safe day on which the seed parent can be pollinated, or a median where the next column says so.</source>
        <translation>Letzter sicherer Tag, an dem der Samenelter bestäubt werden kann, oder ein Median, wo die nächste Spalte es sagt.</translation>
    </message>
    <message>
        <source>Last safe day to collect at the accepted risk, or a median where the next column says so.</source>
        <translation>Letzter sicherer Tag zum Sammeln beim angenommenen Risiko oder ein Median, wo die nächste Spalte es sagt.</translation>
    </message>
    <message>
        <source>Leave cells without a reading empty.</source>
        <translation>Zellen ohne Messwert leer lassen.</translation>
    </message>
    <message>
        <source>Leave out the days on which it was.</source>
        <translation>Die Tage auslassen, an denen das so war.</translation>
    </message>
    <message>
        <source>Median first day on which the donor stands at balloon stage.</source>
        <translation>Median des ersten Tages, an dem der Pollenspender im Ballonstadium steht.</translation>
    </message>
    <message>
        <source>Median first day on which the tree stands at balloon stage; unknown for a test.</source>
        <translation>Median des ersten Tages, an dem der Baum im Ballonstadium steht; unbekannt bei einem Test.</translation>
    </message>
    <message>
        <source>Median last day on which the donor stands at balloon stage.</source>
        <translation>Median des letzten Tages, an dem der Pollenspender im Ballonstadium steht.</translation>
    </message>
    <message>
        <source>Median last day on which the tree stands at balloon stage; unknown for a test.</source>
        <translation>Median des letzten Tages, an dem der Baum im Ballonstadium steht; unbekannt bei einem Test.</translation>
    </message>
    <message>
        <source>No seed is stratified at this temperature.</source>
        <translation>Bei dieser Temperatur wird kein Samen stratifiziert.</translation>
    </message>
    <message>
        <source>Nobody measured temperatures then; the line is left out.</source>
        <translation>Damals hat niemand Temperaturen gemessen; die Zeile wird ausgelassen.</translation>
    </message>
    <message>
        <source>On the same day the same tree has stage {} as well ({}).</source>
        <translation>Am selben Tag hat derselbe Baum auch das Stadium {} ({}).</translation>
    </message>
    <message>
        <source>On {} days a temperature is ten times what the days around have: it seems to have lost its decimal point.</source>
        <translation>An {} Tagen ist eine Temperatur das Zehnfache dessen, was die Tage ringsum haben: Sie scheint ihr Dezimalzeichen verloren zu haben.</translation>
    </message>
    <message>
        <source>On {} days a temperature lies far off those of the days around.</source>
        <translation>An {} Tagen liegt eine Temperatur weit ab von denen der Tage ringsum.</translation>
    </message>
    <message>
        <source>On {} days both temperatures are 0: they seem to stand for missing readings.</source>
        <translation>An {} Tagen sind beide Temperaturen 0: Sie stehen wohl für fehlende Werte.</translation>
    </message>
    <message>
        <source>On {} {} had germinated already: counts are of all since the start.</source>
        <translation>Am {} waren schon {} gekeimt: Gezählt werden alle seit Beginn.</translation>
    </message>
    <message>
        <source>Part the file here, and import each part with the option unit.</source>
        <translation>Die Datei hier teilen und jeden Teil mit der Option unit importieren.</translation>
    </message>
    <message>
        <source>Pollen of {} is stored for another cross anyway: it is collected once for both.</source>
        <translation>Pollen von {} wird ohnehin für eine andere Kreuzung gelagert: Er wird für beide auf einmal gesammelt.</translation>
    </message>
    <message>
        <source>Put it on the map where it stands.</source>
        <translation>Den Baum auf der Karte dorthin setzen, wo er steht.</translation>
    </message>
    <message>
        <source>Put them where they stand, or clear their locations until that is known.</source>
        <translation>Die Bäume dorthin setzen, wo sie stehen, oder ihre Lage leeren, bis sie bekannt ist.</translation>
    </message>
    <message>
        <source>Remove one of them, unless two scored the tree alike.</source>
        <translation>Eine davon entfernen, außer wenn zwei den Baum gleich bewertet haben.</translation>
    </message>
    <message>
        <source>Remove the wrong one.</source>
        <translation>Die falsche entfernen.</translation>
    </message>
    <message>
        <source>Say with the option day-shift how many days to add to the dates: 1 where the stamp is the midnight at which the day begins, 0 where the dates are right as they stand.</source>
        <translation>Mit der Option day-shift angeben, wie viele Tage zu den Daten hinzukommen: 1, wo der Stempel die Mitternacht ist, mit der der Tag beginnt, 0, wo die Daten so stimmen, wie sie dastehen.</translation>
    </message>
    <message>
        <source>Second way</source>
        <translation>Zweiter Weg</translation>
    </message>
    <message>
        <source>Spread of fruit set</source>
        <translation>Streuung des Fruchtansatzes</translation>
    </message>
    <message>
        <source>Standard deviation of fruit set from cross to cross, before the orchard&apos;s own counts.</source>
        <translation>Standardabweichung des Fruchtansatzes von Kreuzung zu Kreuzung, vor den eigenen Zählungen der Obstanlage.</translation>
    </message>
    <message>
        <source>Test stored pollen of {}, lot {}</source>
        <translation>Gelagerten Pollen von {} testen, Partie {}</translation>
    </message>
    <message>
        <source>Test the stored pollen of {}, lot {}</source>
        <translation>Den gelagerten Pollen von {} testen, Partie {}</translation>
    </message>
    <message>
        <source>The coordinates of {} are exchanged: the other way round they lie among the trees of their block.</source>
        <translation>Die Koordinaten von {} sind vertauscht: Anders herum liegen sie zwischen den Bäumen ihres Quartiers.</translation>
    </message>
    <message>
        <source>The copy does not pass the check of the file, and is not kept.</source>
        <translation>Die Kopie besteht die Prüfung der Datei nicht und wird nicht behalten.</translation>
    </message>
    <message>
        <source>The dates are days of UTC, as they are stamped.</source>
        <translation>Die Daten sind Tage nach UTC, so wie sie gestempelt sind.</translation>
    </message>
    <message>
        <source>The day on which the file is imported: days behind it can only be a forecast.</source>
        <translation>Der Tag, an dem die Datei importiert wird: Spätere Tage können nur eine Vorhersage sein.</translation>
    </message>
    <message>
        <source>The days are stamped with a time of UTC, which may belong to another day at the station: a midnight there is 22:00 or 23:00 of the day before in central Europe.</source>
        <translation>Die Tage sind mit einer UTC-Zeit gestempelt, die an der Station zu einem anderen Tag gehören kann: Mitternacht ist dort in Mitteleuropa 22:00 oder 23:00 des Vortags.</translation>
    </message>
    <message>
        <source>The file is damaged, and so would be its copy.</source>
        <translation>Die Datei ist beschädigt, und ihre Kopie wäre es auch.</translation>
    </message>
    <message>
        <source>The file was copied while another program had it open, or has it open now: its latest changes stand in a log of their own, and there is none beside it.</source>
        <translation>Die Datei wurde kopiert, während ein anderes Programm sie geöffnet hatte, oder ist gerade geöffnet: Ihre letzten Änderungen stehen in einem eigenen Protokoll, und daneben liegt keines.</translation>
    </message>
    <message>
        <source>The geometry has a coordinate that lies nowhere on the earth.</source>
        <translation>Die Geometrie hat eine Koordinate, die nirgends auf der Erde liegt.</translation>
    </message>
    <message>
        <source>The line of the row has no length.</source>
        <translation>Die Linie der Reihe hat keine Länge.</translation>
    </message>
    <message>
        <source>The line of the row is longer than {:.0f} km.</source>
        <translation>Die Linie der Reihe ist länger als {:.0f} km.</translation>
    </message>
    <message>
        <source>The lines of {} rows are longer than {:.0f} km.</source>
        <translation>Die Linien von {} Reihen sind länger als {:.0f} km.</translation>
    </message>
    <message>
        <source>The lines of {} rows have no length.</source>
        <translation>Die Linien von {} Reihen haben keine Länge.</translation>
    </message>
    <message>
        <source>The numbers of {} look like degrees, but {} counts metres.</source>
        <translation>Die Zahlen von {} sehen wie Grad aus, aber {} zählt Meter.</translation>
    </message>
    <message>
        <source>The observation is there twice, as {} as well.</source>
        <translation>Die Beobachtung steht zweimal da, auch als {}.</translation>
    </message>
    <message>
        <source>The path of the copy, ending with .gpkg; nothing may be there yet.</source>
        <translation>Der Pfad der Kopie mit der Endung .gpkg; dort darf noch nichts sein.</translation>
    </message>
    <message>
        <source>The pollen lot to test.</source>
        <translation>Die Pollenpartie, die zu testen ist.</translation>
    </message>
    <message>
        <source>The score is there twice, as {} as well.</source>
        <translation>Die Bewertung steht zweimal da, auch als {}.</translation>
    </message>
    <message>
        <source>The temperature is ten times what the days around have: it seems to have lost its decimal point, and the day is left out.</source>
        <translation>Die Temperatur ist das Zehnfache dessen, was die Tage ringsum haben: Sie scheint ihr Dezimalzeichen verloren zu haben, und der Tag wird ausgelassen.</translation>
    </message>
    <message>
        <source>The temperature is ten times what the days around have: it seems to have lost its decimal point.</source>
        <translation>Die Temperatur ist das Zehnfache dessen, was die Tage ringsum haben: Sie scheint ihr Dezimalzeichen verloren zu haben.</translation>
    </message>
    <message>
        <source>The temperature lies far off those of the days around.</source>
        <translation>Die Temperatur liegt weit ab von denen der Tage ringsum.</translation>
    </message>
    <message>
        <source>The temperature lies far off those of the days around; it was taken as it stands.</source>
        <translation>Die Temperatur liegt weit ab von denen der Tage ringsum; sie wurde übernommen, wie sie dasteht.</translation>
    </message>
    <message>
        <source>The tree goes back: on {} it had stage {} already ({}).</source>
        <translation>Der Baum geht zurück: Am {} hatte er schon das Stadium {} ({}).</translation>
    </message>
    <message>
        <source>This is the day that spreadsheets write for an empty cell.</source>
        <translation>Das ist der Tag, den Tabellenprogramme für eine leere Zelle schreiben.</translation>
    </message>
    <message>
        <source>To: a median</source>
        <translation>Bis: ein Median</translation>
    </message>
    <message>
        <source>Use to: a median</source>
        <translation>Verwenden bis: ein Median</translation>
    </message>
    <message>
        <source>Whether it is for a second way only, in case the first fails.</source>
        <translation>Ob es nur für einen zweiten Weg ist, falls der erste scheitert.</translation>
    </message>
    <message>
        <source>Whether the last day is a median, because it is too early in the year for a safe day.</source>
        <translation>Ob der letzte Tag ein Median ist, weil es für einen sicheren Tag noch zu früh im Jahr ist.</translation>
    </message>
    <message>
        <source>Whether the last day to collect is a median, because it is too early in the year for a safe day.</source>
        <translation>Ob der letzte Tag zum Sammeln ein Median ist, weil es für einen sicheren Tag noch zu früh im Jahr ist.</translation>
    </message>
    <message>
        <source>Whether the last day to pollinate is a median, because it is too early in the year for a safe day.</source>
        <translation>Ob der letzte Tag zum Bestäuben ein Median ist, weil es für einen sicheren Tag noch zu früh im Jahr ist.</translation>
    </message>
    <message>
        <source>Whether this is followed besides the best way, in case that fails.</source>
        <translation>Ob dies neben dem besten Weg verfolgt wird, falls dieser scheitert.</translation>
    </message>
    <message>
        <source>Write the temperature of the place where it lies, in degrees Celsius: about 1 to 10.</source>
        <translation>Die Temperatur des Ortes angeben, an dem er liegt, in Grad Celsius: etwa 1 bis 10.</translation>
    </message>
    <message>
        <source>Write the true day, or clear the cell.</source>
        <translation>Den wahren Tag angeben oder die Zelle leeren.</translation>
    </message>
    <message>
        <source>Write the true day.</source>
        <translation>Den wahren Tag angeben.</translation>
    </message>
    <message>
        <source>about {} (a median, no safe day yet)</source>
        <translation>etwa {} (ein Median, noch kein sicherer Tag)</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>fruit set of pollinated flowers, {}</source>
        <translation>Fruchtansatz bestäubter Blüten, {}</translation>
    </message>
    <message>
        <source>if that fails: {}</source>
        <translation>falls das scheitert: {}</translation>
    </message>
    <message>
        <source>second way</source>
        <translation>zweiter Weg</translation>
    </message>
    <message>
        <source>spread of fruit set between crosses</source>
        <translation>Streuung des Fruchtansatzes zwischen Kreuzungen</translation>
    </message>
    <message>
        <source>the trees of its row may stand {:.2f} m or {:.2f} m apart</source>
        <translation>die Bäume dieser Reihe können {:.2f} m oder {:.2f} m auseinander stehen</translation>
    </message>
    <message>
        <source>{} ({} to {}, a median)</source>
        <translation>{} ({} bis {}, ein Median)</translation>
    </message>
    <message>
        <source>{} different ones are more than can be scored in one run.</source>
        <translation>{} verschiedene sind mehr, als in einem Lauf bewertet werden können.</translation>
    </message>
    <message>
        <source>{} for 1 flower</source>
        <translation>{} für 1 Blüte</translation>
    </message>
    <message>
        <source>{} for {} flowers</source>
        <translation>{} für {} Blüten</translation>
    </message>
    <message>
        <source>{} have no location on the earth in {}.</source>
        <translation>{} haben in {} keine Lage auf der Erde.</translation>
    </message>
    <message>
        <source>{} lie at 0, 0: the coordinates were probably missing.</source>
        <translation>{} liegen bei 0, 0: Wahrscheinlich fehlten die Koordinaten.</translation>
    </message>
    <message>
        <source>{} lie up to {:.0f} km from the other trees of block {}.</source>
        <translation>{} liegen bis zu {:.0f} km von den anderen Bäumen des Quartiers {}.</translation>
    </message>
    <message>
        <source>{} stand more than {:.0f} m above or below every station, whose weather then says nothing of their bloom.</source>
        <translation>{} stehen mehr als {:.0f} m über oder unter jeder Station, deren Wetter dann nichts über ihre Blüte sagt.</translation>
    </message>
    <message>
        <source>{} trees stand at one and the same point.</source>
        <translation>{} Bäume stehen an ein und demselben Punkt.</translation>
    </message>
    <message>
        <source>{} was copied to {}: {} tables with {} rows, read back and found whole.</source>
        <translation>{} wurde nach {} kopiert: {} Tabellen mit {} Zeilen, zurückgelesen und vollständig gefunden.</translation>
    </message>
    <message>
        <source>, latitude {}, longitude {}</source>
        <translation>, Breite {}, Länge {}</translation>
    </message>
    <message>
        <source>1 label of {:g} x {:g} mm.</source>
        <translation>1 Etikett zu {} × {} mm.</translation>
    </message>
    <message>
        <source>Calendar made before</source>
        <translation>Früher erstellter Kalender</translation>
    </message>
    <message>
        <source>Name the file that field-calendar made before.</source>
        <translation>Bitte die Datei angeben, die field-calendar früher erstellt hat.</translation>
    </message>
    <message>
        <source>The file is no calendar (RFC 5545).</source>
        <translation>Die Datei ist kein Kalender (RFC 5545).</translation>
    </message>
    <message>
        <source>The file that was made before and is in your calendar: what was told there and is no longer to be done is cancelled.</source>
        <translation>Die Datei, die früher erstellt wurde und in Ihrem Kalender steht: Was dort angekündigt wurde und nicht mehr zu tun ist, wird abgesagt.</translation>
    </message>
    <message>
        <source>Writes the season&apos;s work and the seed work into a calendar file that any calendar can read: collecting pollen, bagging, pollinating, harvest, stratification, sowing, each with its span of days. Read again after a new plan, it moves the existing entries; with the file made before it cancels those that are gone.</source>
        <translation>Schreibt die Arbeiten der Saison und am Saatgut in eine Kalenderdatei, die jeder Kalender liest: Pollen sammeln, Eintüten, Bestäuben, Ernte, Stratifikation, Säen, jede mit ihrer Spanne von Tagen. Nach einem neuen Plan wieder eingelesen, verschiebt sie die vorhandenen Einträge; mit der früher erstellten Datei sagt sie ab, was entfallen ist.</translation>
    </message>
    <message>
        <source>No longer to be done, and cancelled: {}.</source>
        <translation>Nicht mehr zu tun und abgesagt: {}.</translation>
    </message>
    <message>
        <source>Appendix: where the observed days fell in the forecasts</source>
        <translation>Anhang: wo die beobachteten Tage in den Vorhersagen lagen</translation>
    </message>
    <message>
        <source>Bias, days</source>
        <translation>Bias, Tage</translation>
    </message>
    <message>
        <source>By {} observations of this spring (fid {}) full bloom of {} is {:.0f} days earlier than its other springs and the season&apos;s warmth suggest.</source>
        <translation>Nach {} Beobachtungen dieses Frühjahrs (fid {}) läge die Vollblüte von {} {} Tage früher, als die anderen Frühjahre und die Wärme der Saison erwarten lassen.</translation>
    </message>
    <message>
        <source>By {} observations of this spring (fid {}) full bloom of {} is {:.0f} days later than its other springs and the season&apos;s warmth suggest.</source>
        <translation>Nach {} Beobachtungen dieses Frühjahrs (fid {}) läge die Vollblüte von {} {} Tage später, als die anderen Frühjahre und die Wärme der Saison erwarten lassen.</translation>
    </message>
    <message>
        <source>CRPS, days</source>
        <translation>CRPS, Tage</translation>
    </message>
    <message>
        <source>Check the date, the stage and the tree: the spring&apos;s other observations agree.</source>
        <translation>Datum, Stadium und Baum prüfen: Die anderen Beobachtungen des Frühjahrs stimmen überein.</translation>
    </message>
    <message>
        <source>Each bar counts the observed days that fell in one tenth of the forecast, the earliest tenth on the left. Where the forecast is right the bars are even (dashed line); the grey band is the room that chance leaves with so many springs. High at both ends: the intervals are too narrow. High in the middle: too wide. High on the left: forecast too late; on the right: too early.</source>
        <translation>Jeder Balken zählt die beobachteten Tage, die in ein Zehntel der Vorhersage fielen, das früheste Zehntel links. Stimmt die Vorhersage, sind die Balken gleich hoch (gestrichelte Linie); das graue Band ist der Spielraum, den der Zufall bei so vielen Frühjahren lässt. An beiden Enden hoch: Die Intervalle sind zu eng. In der Mitte hoch: zu weit. Links hoch: zu spät vorhergesagt; rechts: zu früh.</translation>
    </message>
    <message>
        <source>End of bloom</source>
        <translation>Blühende</translation>
    </message>
    <message>
        <source>In which tenth of the forecast the observed day fell, forward in time: even where the forecast is right.</source>
        <translation>In welches Zehntel der Vorhersage der beobachtete Tag fiel, vorwärts in der Zeit: gleichmäßig, wo die Vorhersage stimmt.</translation>
    </message>
    <message>
        <source>Inside the 80 % interval</source>
        <translation>Im 80-%-Intervall</translation>
    </message>
    <message>
        <source>Method: {}. Each past spring was forecast from earlier springs alone, on days of the calendar, the weather after that day hidden. Bias above zero: forecast too late.</source>
        <translation>Verfahren: {}. Jedes vergangene Frühjahr wurde allein aus früheren vorhergesagt, an Tagen des Kalenders, das Wetter nach diesem Tag verdeckt. Bias über null: zu spät vorhergesagt.</translation>
    </message>
    <message>
        <source>No past spring could be forecast from earlier ones.</source>
        <translation>Kein vergangenes Frühjahr ließ sich aus früheren vorhersagen.</translation>
    </message>
    <message>
        <source>Observed days</source>
        <translation>Beobachtete Tage</translation>
    </message>
    <message>
        <source>Observed days that fell in this tenth of their forecasts.</source>
        <translation>Beobachtete Tage, die in dieses Zehntel ihrer Vorhersagen fielen.</translation>
    </message>
    <message>
        <source>Place of the observed days in their forecasts</source>
        <translation>Lage der beobachteten Tage in ihren Vorhersagen</translation>
    </message>
    <message>
        <source>Place, from</source>
        <translation>Lage, von</translation>
    </message>
    <message>
        <source>Place, to</source>
        <translation>Lage, bis</translation>
    </message>
    <message>
        <source>RMSE of the mean date of the last 15 springs</source>
        <translation>RMSE des mittleren Tags der letzten 15 Frühjahre</translation>
    </message>
    <message>
        <source>RMSE, days</source>
        <translation>RMSE, Tage</translation>
    </message>
    <message>
        <source>Share of the forecast&apos;s scenarios before the day.</source>
        <translation>Anteil der Szenarien der Vorhersage, die vor dem Tag liegen.</translation>
    </message>
    <message>
        <source>Shows how well each method forecasts bloom in this orchard: every past spring is forecast on days of the calendar from what was known by then and compared with the observations. Besides, every season is left out in turn and forecast from all others. Makes a sheet to print, in whose appendix the observed days stand within their forecasts.</source>
        <translation>Zeigt, wie gut jedes Verfahren die Blüte in dieser Obstanlage vorhersagt: Jedes vergangene Frühjahr wird an Tagen des Kalenders aus dem vorhergesagt, was bis dahin bekannt war, und mit den Beobachtungen verglichen. Außerdem wird jede Saison der Reihe nach ausgelassen und aus allen übrigen vorhergesagt. Macht ein Blatt zum Drucken, in dessen Anhang die beobachteten Tage innerhalb ihrer Vorhersagen stehen.</translation>
    </message>
    <message>
        <source>Stage {} on {} comes before stage {}, observed on {} (fid {}).</source>
        <translation>Stadium {} am {} kommt vor Stadium {}, beobachtet am {} (fid {}).</translation>
    </message>
    <message>
        <source>The species, or all together.</source>
        <translation>Die Art, oder alle zusammen.</translation>
    </message>
    <message>
        <source>The upper edge of the tenth.</source>
        <translation>Die obere Grenze des Zehntels.</translation>
    </message>
    <message>
        <source>Their share of all; 0.1 is right.</source>
        <translation>Ihr Anteil an allen; 0,1 ist richtig.</translation>
    </message>
    <message>
        <source>earlier</source>
        <translation>früher</translation>
    </message>
    <message>
        <source>{}, all accessions</source>
        <translation>{}, alle Akzessionen</translation>
    </message>
    <message>
        <source>As planned</source>
        <translation>Wie geplant</translation>
    </message>
    <message>
        <source>Changes of way</source>
        <translation>Wechsel des Weges</translation>
    </message>
    <message>
        <source>Crosses of all springs together.</source>
        <translation>Kreuzungen aller Frühjahre zusammen.</translation>
    </message>
    <message>
        <source>Days between looks</source>
        <translation>Tage zwischen den Durchsichten</translation>
    </message>
    <message>
        <source>Fixed calendar</source>
        <translation>Fester Kalender</translation>
    </message>
    <message>
        <source>Fresh only</source>
        <translation>Nur frisch</translation>
    </message>
    <message>
        <source>How often the plan said a probability of it, one a look and cross.</source>
        <translation>Wie oft der Plan eine Wahrscheinlichkeit davon nannte, eine je Durchsicht und Kreuzung.</translation>
    </message>
    <message>
        <source>Least probability in the row, of a tenth of the scale.</source>
        <translation>Kleinste Wahrscheinlichkeit der Zeile, eines Zehntels der Skala.</translation>
    </message>
    <message>
        <source>Mean of what the plan said.</source>
        <translation>Mittel dessen, was der Plan nannte.</translation>
    </message>
    <message>
        <source>No past spring has both observations of bloom, with others before it, and crosses whose parents stood then.</source>
        <translation>Kein vergangenes Frühjahr hat Blühbeobachtungen, frühere davor und Kreuzungen, deren Eltern damals standen.</translation>
    </message>
    <message>
        <source>Note bloom for some springs, or enter crosses of this season.</source>
        <translation>Notieren Sie die Blüte einiger Frühjahre oder tragen Sie Kreuzungen dieser Saison ein.</translation>
    </message>
    <message>
        <source>Observed</source>
        <translation>Beobachtet</translation>
    </message>
    <message>
        <source>Of hindsight</source>
        <translation>Gemessen an der Rückschau</translation>
    </message>
    <message>
        <source>Of the cross.</source>
        <translation>Der Kreuzung.</translation>
    </message>
    <message>
        <source>One row a cross of a replayed spring.</source>
        <translation>Eine Zeile je Kreuzung eines nachgespielten Frühjahrs.</translation>
    </message>
    <message>
        <source>Plan replay</source>
        <translation>Planrückspiel</translation>
    </message>
    <message>
        <source>Plan replay by cross</source>
        <translation>Planrückspiel nach Kreuzung</translation>
    </message>
    <message>
        <source>Planner</source>
        <translation>Planer</translation>
    </message>
    <message>
        <source>Probabilities of the replayed plans</source>
        <translation>Wahrscheinlichkeiten der nachgespielten Pläne</translation>
    </message>
    <message>
        <source>Replaying the spring of {}</source>
        <translation>Das Frühjahr {} wird nachgespielt</translation>
    </message>
    <message>
        <source>Said</source>
        <translation>Genannt</translation>
    </message>
    <message>
        <source>Seedlings wanted of each cross, times the share of its flowers that were pollinated in time.</source>
        <translation>Gewünschte Sämlinge jeder Kreuzung, mal dem Anteil ihrer Blüten, die rechtzeitig bearbeitet wurden.</translation>
    </message>
    <message>
        <source>Share in which the cross succeeded.</source>
        <translation>Anteil, in dem die Kreuzung gelang.</translation>
    </message>
    <message>
        <source>Share of the crosses of which nine flowers in ten were pollinated in time, with living pollen.</source>
        <translation>Anteil der Kreuzungen, von denen neun von zehn Blüten rechtzeitig mit lebendem Pollen bearbeitet wurden.</translation>
    </message>
    <message>
        <source>Share of the flowers pollinated in time, as planned.</source>
        <translation>Anteil der rechtzeitig bearbeiteten Blüten, wie geplant.</translation>
    </message>
    <message>
        <source>Shows what the season plan is worth in this orchard: this season&apos;s crosses are planned in every past spring, look by look, from what was known that day, and judged by what bloomed.</source>
        <translation>Zeigt, was der Saisonplan in diesem Obstgarten wert ist: Die Kreuzungen dieser Saison werden in jedem vergangenen Frühjahr geplant, Durchsicht für Durchsicht, aus dem, was an dem Tag bekannt war, und an dem gemessen, was blühte.</translation>
    </message>
    <message>
        <source>Spread of success</source>
        <translation>Streuung des Gelingens</translation>
    </message>
    <message>
        <source>Springs replayed.</source>
        <translation>Nachgespielte Frühjahre.</translation>
    </message>
    <message>
        <source>Standard deviation of that share from spring to spring.</source>
        <translation>Standardabweichung dieses Anteils von Frühjahr zu Frühjahr.</translation>
    </message>
    <message>
        <source>Success</source>
        <translation>Gelingen</translation>
    </message>
    <message>
        <source>The first spring replayed; where not given, the fourth one with observations.</source>
        <translation>Das erste nachgespielte Frühjahr; ohne Angabe das vierte mit Beobachtungen.</translation>
    </message>
    <message>
        <source>The plan is made again every so many days.</source>
        <translation>Der Plan wird alle so viele Tage neu gemacht.</translation>
    </message>
    <message>
        <source>The probability that the plan said of a cross against the share in which it succeeded.</source>
        <translation>Die Wahrscheinlichkeit, die der Plan für eine Kreuzung nannte, gegen den Anteil, in dem sie gelang.</translation>
    </message>
    <message>
        <source>The same on the usual days.</source>
        <translation>Dasselbe an den üblichen Tagen.</translation>
    </message>
    <message>
        <source>The same with fresh pollen only.</source>
        <translation>Dasselbe nur mit frischem Pollen.</translation>
    </message>
    <message>
        <source>The same, the spring known beforehand.</source>
        <translation>Dasselbe, das Frühjahr vorher bekannt.</translation>
    </message>
    <message>
        <source>The season plan lived through in past springs, beside other ways of working.</source>
        <translation>Der Saisonplan in vergangenen Frühjahren durchlebt, neben anderen Arbeitsweisen.</translation>
    </message>
    <message>
        <source>The spring replayed.</source>
        <translation>Das nachgespielte Frühjahr.</translation>
    </message>
    <message>
        <source>These seedlings over those with hindsight.</source>
        <translation>Diese Sämlinge geteilt durch die mit Rückschau.</translation>
    </message>
    <message>
        <source>Whether full bloom of all parents was noted; else the model with the weather known stands for it.</source>
        <translation>Ob die Vollblüte aller Eltern notiert wurde; sonst steht dafür das Modell mit bekanntem Wetter.</translation>
    </message>
    <message>
        <source>Whether work was first announced after its last day.</source>
        <translation>Ob Arbeit erst nach ihrem letzten Tag angekündigt wurde.</translation>
    </message>
    <message>
        <source>Who works the crosses.</source>
        <translation>Wer die Kreuzungen bearbeitet.</translation>
    </message>
    <message>
        <source>With hindsight</source>
        <translation>Mit Rückschau</translation>
    </message>
    <message>
        <source>by the plan of each look, from what was known that day</source>
        <translation>nach dem Plan jeder Durchsicht, aus dem, was an dem Tag bekannt war</translation>
    </message>
    <message>
        <source>by the same plan, the whole spring known beforehand</source>
        <translation>nach demselben Plan, das ganze Frühjahr vorher bekannt</translation>
    </message>
    <message>
        <source>on the usual days, whatever the spring</source>
        <translation>an den üblichen Tagen, wie auch das Frühjahr ist</translation>
    </message>
    <message>
        <source>with fresh pollen on the day it sheds, every day looked at</source>
        <translation>mit frischem Pollen am Tag, an dem er stäubt, jeden Tag nachgesehen</translation>
    </message>
    <message>
        <source>1 spring</source>
        <translation>1 Frühjahr</translation>
    </message>
    <message>
        <source>How often the plan changed the way of getting pollen before any was in hand.</source>
        <translation>Wie oft der Plan den Weg zum Pollen änderte, bevor welcher vorhanden war.</translation>
    </message>
    <message>
        <source>In {} the plan reached {:.0f} % of the seedlings that hindsight reaches. Crosses that changed their way: {:.0f} %. Crosses with work first announced after its last day: {}.</source>
        <translation>In {} erreichte der Plan {} % der Sämlinge, die man mit dem Wissen von danach erreicht. Kreuzungen, die ihren Weg änderten: {} %. Kreuzungen mit Arbeit, die erst nach ihrem letzten Tag angekündigt wurde: {}.</translation>
    </message>
    <message>
        <source>{} springs</source>
        <translation>{} Frühjahren</translation>
    </message>
    <message>
        <source>For want of room {} numbers of trees or names of rows and blocks are left out.</source>
        <translation>Aus Platzmangel sind {} Nummern von Bäumen oder Namen von Reihen und Blöcken weggelassen.</translation>
    </message>
</context>
</TS>
