<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE">
<context>
    <name>pipward::desktop</name>
    <message>
        <source>Could not write %1: %2. Choose another folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder for sheets and other files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Orchard books (*.gpkg);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Orchard books (*.gpkg)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Files (%1);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pipward::desktop::BloomChart</name>
    <message>
        <source>Bloom of each accession this season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No bloom to show yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: full bloom %2, most likely between %3 and %4; first flowers %5, over by %6.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pipward::desktop::ExpressionFunctions</name>
    <message>
        <source>Median day of full bloom of a tree or an accession, by the last season plan of the book. Without a name: of the feature at hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole days until the median day of full bloom of a tree or an accession, counted from a day or from today; negative afterwards.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where a tree stands, in words: block, row and position.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seed parent and pollen parent of a tree or an accession.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pipward::desktop::OperationTask</name>
    <message>
        <source>Stopped.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pipward::desktop::Plugin</name>
    <message>
        <source>Orchard map and bloom planner for a fruit breeder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Orchard</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pipward::desktop::Provider</name>
    <message>
        <source>Pipward: orchard map and bloom planner</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pipward::desktop::SeasonPanel</name>
    <message>
        <source>Season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outlook of the crosses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cross</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Orchard books (*.gpkg);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose an orchard book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day to look from: nothing observed later is used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plans the season anew and puts the results into the book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a book and a day, then plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crosses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planning …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No book is chosen. Choose the .gpkg file of your orchard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No plan was made.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pipward::desktop::TaskTree</name>
    <message>
        <source>Too late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2, one flower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2, %3 flowers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work that is due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is due.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pipward::library</name>
    <message>
        <source>12/04/2026 or 12.4.2026</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2026-04-12 or 20260412</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>4/12/2026</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A file of daily minima and maxima: CSV of most kinds, or GHCN-Daily.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A line to print under the sheet&apos;s title.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A store in which less pollen than this would germinate is not planned on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accession</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Added</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As in the goal: an accession or a blend.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bias</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bloom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bloom forecast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bloom notes of the accession&apos;s own that the need rests on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bloom windows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chance that live, compatible pollen is on hand while the flowers can take it, 0 to 1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chill and heat day by day, summed since the first day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chill by the Dynamic Model.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chill by the Utah model; warm hours take away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chill portions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chilling hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code of the cross goal.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Codes of the cross goals it serves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coefficient of kinship of the parents: the inbreeding of a seedling.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Column of the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Column of the maximum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Column of the minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Column of the station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Confidence</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coordinate system</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counts chill and heat day by day at a station, by every clock in use: chilling hours, Utah units, chill portions, growing degree-days and growing degree-hours. Nothing is written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cross</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut-off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day and month of full bloom at the station, the mean of the model over the past seasons.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day until which the pollen is needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days before bloom that the forecast was issued; unknown where the weather was known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days of the book that now hold the file&apos;s temperatures.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days of the book that were left as they were.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days that the book did not have.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days with both temperatures in the file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Degree-days, mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Degree-days, sine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Degree-days, triangle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Degree-hours, ASYMCUR</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Degree-hours, linear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Donor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each cross goal by each way of having the pollen, with the odds and the reasons.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End of bloom (BBCH 69): as likely earlier as later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End of bloom (BBCH 69): one chance in ten to be earlier.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End of bloom (BBCH 69): one chance in ten to be later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End of bloom, early</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End of bloom, late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End of bloom, median</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Errors of each way of foretelling full bloom on seasons that it had not seen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Field work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First bloom (BBCH 60): as likely earlier as later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First bloom (BBCH 60): one chance in ten to be earlier.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First bloom (BBCH 60): one chance in ten to be later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First bloom, early</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First bloom, late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First bloom, median</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First day that the seed parent can be worked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First day to do it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First day to gather balloon flowers, or to cut the branch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit bloom needs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flowers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flowers at this tree.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flowers of the donor to be gathered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flowers of the seed parent to be worked for the wanted seedlings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flowers served</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flowers that the pollen of one donor flower serves at full germination.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flowers to gather</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flowers to gather.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flowers to work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For crosses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Foretells first bloom, full bloom and end of bloom of every living tree this season, with the odds: from the temperatures so far, the forecast days in the book, and every past season&apos;s remainder as one way that the spring may go on. Trees higher up the slope bloom later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fruit set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full bloom (BBCH 65): as likely earlier as later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full bloom (BBCH 65): one chance in ten to be earlier.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full bloom (BBCH 65): one chance in ten to be later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full bloom, early</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full bloom, late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full bloom, median</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full-bloom days scored, one an accession and season.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gather from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gather to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Growing degree-days from a single sine wave.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Growing degree-days from a single triangle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Growing degree-days from the day&apos;s mean; unknown where the mean method has no such cut-off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Growing degree-hours above 4.5 degrees C, no more above 25.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Growing degree-hours on the asymmetric curve.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Highest temperature of the day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours between 0 and 7.2 degrees C.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How soon it must be done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How sure the wanted number of seedlings is to be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the days are written; found out from the file where not given.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the pollen comes to be on hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How well bloom is foretold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Imported weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inside 80 % window</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its amount</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep until</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kinship</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Known from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last day that the seed parent can be worked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last day to do it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last safe day at the stated risk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last safe day to gather at the stated risk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Learn from so many seasons only, as a young orchard would; from all but one where not given.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Learns from the bloom notes and the temperatures of past seasons what each accession needs before it blooms. Accessions with few notes lean on the orchard&apos;s mean; those without any borrow from their parents or from it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lowest temperature of the day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MAE</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Makes an empty orchard book: a GeoPackage with every table, its closed lists, names for people and descriptions, ready to be filled in with any GIS.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Maximum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean absolute error.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean of foretold less observed: above zero is too late.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean sound seeds in a fruit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Method</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Model</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Need, sd</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Orchard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order of the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outlook of crosses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outlook of the crosses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Per accession</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pollen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pollen lot in hand that this way uses.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pollen parent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pollen per flower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pollen to gather, branches to cut, lots to test: by last safe day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pollen work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RMSE</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raw pollen needed, anther dust included.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raw pollen of one donor flower, anther dust included.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raw pollen that they should give.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reads the whole book and tells everything that is wrong, doubtful or impossible in it: where it stands and what to do about it. Errors prevent results, warnings weaken them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replace existing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replaced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rest, sd</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Risk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Root mean square error.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S-alleles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Score true forecasts as well, issued so many days before bloom.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scored</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Season clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Season of use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Season plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Season, sd</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seasons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seasons foretold without having been seen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seasons learnt from; unknown where all but the one foretold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seasons with notes of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seed parent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seed to seedling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seeds per fruit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of days foretold within 3 days, 0 to 1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of days foretold within 5 days, 0 to 1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of observed days inside the p10 to p90 window; 0.8 is right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of sound seeds that become seedlings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of worked flowers that set fruit, where the book has too few counts of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Skill of bloom forecasts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Standard deviation of full bloom by what is not known of the need.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Standard deviation of full bloom that is the accession&apos;s alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Standard deviation of full bloom that the whole orchard shares in a season.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Station in the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sunrise to sunset.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Takes the daily lowest and highest temperatures of a station from a file into the book, and tells how it understood the file. What the file does not make plain is asked for, never guessed; days that the book has already are left alone unless told otherwise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tells for every cross goal of the season whether its pollen can be on hand while the seed parent&apos;s flowers take it, by each way of having it, with dates, amounts, S-alleles, kinship and the reasons.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tells how well each way of foretelling full bloom does on this orchard: every past season is left out in turn, foretold from the others and compared with what was noted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The accession whose flowers are worked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The accession whose pollen it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The accession whose pollen it is: the pollen parent, or a member of the blend.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The accession.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The accession; unknown where all are scored together.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bloom season of the goal.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bloom season that the pollen is for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The chance of being too late that a deadline may leave.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The column.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coordinate system of its layers, such as EPSG:25832: one in metres for your region is best.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day that sums begin on; the season&apos;s first, 1 October in the north, where not given.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day the forecast looks from.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day the plan looks from.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day to look from: nothing observed later is used, so any past day can be repeated.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day; sums stand at its end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The donor tree; unknown where the donor has no living tree.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file&apos;s first day with both temperatures.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file&apos;s last day with both temperatures.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The fitted need of each accession before it blooms.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The header of the column with the day&apos;s highest temperature, where it is not recognised.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The header of the column with the day&apos;s lowest temperature, where it is not recognised.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The header of the column with the day, where it is not recognised.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The header of the column with the station, where it is not recognised.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last day; the last one known up to as-of where not given.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lower threshold of the degree-days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The main job: learns from past springs, foretells this one, weighs every wanted cross and lists the pollen work and the field work with last safe days. Replaces the result tables of the book in one step and makes a sheet to print.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The one-number structure that counts most in the method.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The orchard book: the path of a GeoPackage, or PG:... for a PostGIS database.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The orchard&apos;s name on the sheet; the book&apos;s file name where not given.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The outlook in one word.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The path of the GeoPackage to make; nothing may be there yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The reasons, in sentences.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The row, by the name that people know it by.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same, 1 January being 1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The seed parent&apos;s tree.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The stage foretold: full bloom.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The station of the book that the days belong to; its only one where it is not named.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The station of the book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The table or file it was found in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tree&apos;s label; unknown for an accession without a living tree.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The unit of the temperatures; found out from the header and the values where not given.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The upper threshold of the degree-days, looked at only with a cut-off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The way of foretelling full bloom.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The way of foretelling that was fitted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The way of foretelling, and where the accession&apos;s need is known from.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The way of foretelling.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The weather station to use; the one with the most days where it is not named.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The weather station.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The year of bloom.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Training seasons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unchanged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Upper threshold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Urgency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usable germination</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual full bloom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual full bloom, day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Utah units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variance of seeds per fruit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variance of the sound seeds in a fruit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warnings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weightiest structure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What each accession needs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What heat above the upper threshold is worth.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is to be done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is wrong, as a sentence.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What stands there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What that structure asks of this accession.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to do about it, as a sentence.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was found in the book, and what to do about it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was taken from the file into the book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What weakens this forecast.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When each living tree will bloom this season, with the odds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the pollen waits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the temperatures come from.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether days that the book already has take the file&apos;s temperatures; a forecast always gives way to what was measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether each accession gets scores of its own besides those of all together.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether its need comes from its own notes or was borrowed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether the results replace the book&apos;s result tables; no leaves the book untouched.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether the style lets the donor&apos;s pollen through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether this is the best of the ways, the one that the plan follows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether this is the method that forecasts use.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which pollen to bring.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which station to take, where the file holds several.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Within 3 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Within 5 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work at the seed parents: bagging, pollinating, unbagging, by first day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write to the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a chill threshold, then heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above it nothing develops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above it the rate falls as fast as it rose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above it the rate stays at its highest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>degree-days from a fixed day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>degrees Celsius</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>degrees Fahrenheit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>error, warning or note.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>forecast by a weather service</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured at the station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no upper threshold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tenths of a degree Celsius</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the average of several heat and chill models</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the long-run mean day, whatever the weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the one that did best on the orchard&apos;s own past seasons</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
