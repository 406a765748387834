<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Ask</name>
    <message>
        <source>Piece files (*.piece);;All files (*)</source>
        <translation>Möbeldateien (*.piece);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Photos (*.png *.jpg *.jpeg *.webp *.bmp)</source>
        <translation>Fotos (*.png *.jpg *.jpeg *.webp *.bmp)</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>Bay</name>
    <message>
        <source>Bay {key}</source>
        <translation>Fach {key}</translation>
    </message>
</context>
<context>
    <name>Board</name>
    <message>
        <source>{cut}, {face}, {deep} deep</source>
        <translation>{cut}, {face}, {deep} tief</translation>
    </message>
    <message>
        <source>{joint} with {other}, {held}</source>
        <translation>{joint} mit {other}, {held}</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Brett</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Thick</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Alike</source>
        <translation>Gleiche</translation>
    </message>
</context>
<context>
    <name>BoardView</name>
    <message>
        <source>The chosen board alone</source>
        <translation>Das gewählte Brett allein</translation>
    </message>
</context>
<context>
    <name>BoardsPanel</name>
    <message>
        <source>Boards of the piece</source>
        <translation>Bretter des Möbels</translation>
    </message>
    <message>
        <source>The board alone</source>
        <translation>Das Brett allein</translation>
    </message>
    <message>
        <source>As the router gets it</source>
        <translation>Wie die Fräse es bekommt</translation>
    </message>
    <message>
        <source>How the chosen board is shown</source>
        <translation>Wie das gewählte Brett gezeigt wird</translation>
    </message>
    <message>
        <source>The finished board, or what the router cuts and what it leaves</source>
        <translation>Das fertige Brett, oder was die Fräse schneidet und was sie stehen lässt</translation>
    </message>
    <message>
        <source>Choose a board to see it alone, with its cuts and joints.</source>
        <translation>Wählen Sie ein Brett, um es allein mit seinen Ausarbeitungen und Verbindungen zu sehen.</translation>
    </message>
    <message>
        <source>Cuts and joints of the chosen board</source>
        <translation>Ausarbeitungen und Verbindungen des gewählten Bretts</translation>
    </message>
    <message>
        <source>The router&apos;s file of {name} is being made…</source>
        <translation>Die Fräsdatei von {name} wird erstellt…</translation>
    </message>
    <message>
        <source>Setting {number}, {face} up</source>
        <translation>Aufspannung {number}, {face} oben</translation>
    </message>
    <message>
        <source>{deep} deep</source>
        <translation>{deep} tief</translation>
    </message>
    <message>
        <source>Nothing is left for another setting.</source>
        <translation>Für eine weitere Aufspannung bleibt nichts übrig.</translation>
    </message>
    <message>
        <source>Left for another setting or by hand</source>
        <translation>Bleibt für eine weitere Aufspannung oder von Hand</translation>
    </message>
    <message>
        <source>{volume} cm³ of wood</source>
        <translation>{volume} cm³ Holz</translation>
    </message>
</context>
<context>
    <name>Canvas</name>
    <message>
        <source>Drawing</source>
        <translation>Zeichnung</translation>
    </message>
    <message>
        <source>Front, side and plan of the piece. Tab goes from handle to handle, arrow keys move it, Enter types.</source>
        <translation>Vorderansicht, Seitenansicht und Grundriss des Möbels. Tab geht von Griff zu Griff, Pfeiltasten bewegen ihn, Eingabe öffnet das Maß.</translation>
    </message>
    <message>
        <source>{name}: {size}</source>
        <translation>{name}: {size}</translation>
    </message>
</context>
<context>
    <name>Choice</name>
    <message>
        <source>slant-desk</source>
        <translation>Schreibschrank mit Schräge</translation>
    </message>
    <message>
        <source>chest</source>
        <translation>Kommode</translation>
    </message>
    <message>
        <source>bookcase</source>
        <translation>Bücherschrank</translation>
    </message>
    <message>
        <source>lectern</source>
        <translation>Stehpult</translation>
    </message>
    <message>
        <source>free</source>
        <translation>frei</translation>
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
        <source>dovetail</source>
        <translation>gezinkt</translation>
    </message>
    <message>
        <source>housed</source>
        <translation>eingenutet</translation>
    </message>
    <message>
        <source>overhanging</source>
        <translation>überstehend</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>abgesetzt</translation>
    </message>
    <message>
        <source>through</source>
        <translation>durchgehend</translation>
    </message>
    <message>
        <source>clean-sides</source>
        <translation>halbverdeckt, Seiten glatt</translation>
    </message>
    <message>
        <source>clean-top</source>
        <translation>halbverdeckt, Deckplatte glatt</translation>
    </message>
    <message>
        <source>chamfer</source>
        <translation>Fase</translation>
    </message>
    <message>
        <source>ovolo</source>
        <translation>Viertelstab</translation>
    </message>
    <message>
        <source>cove</source>
        <translation>Hohlkehle</translation>
    </message>
    <message>
        <source>ogee</source>
        <translation>Karnies</translation>
    </message>
    <message>
        <source>reverse-ogee</source>
        <translation>verkehrter Karnies</translation>
    </message>
    <message>
        <source>on</source>
        <translation>auf der Schräge</translation>
    </message>
    <message>
        <source>rabbeted</source>
        <translation>eingefälzt</translation>
    </message>
    <message>
        <source>flush</source>
        <translation>bündig</translation>
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
        <source>solid</source>
        <translation>Massivholz</translation>
    </message>
    <message>
        <source>sheet</source>
        <translation>Platte</translation>
    </message>
    <message>
        <source>flat</source>
        <translation>liegend (Seitenbrett)</translation>
    </message>
    <message>
        <source>quarter</source>
        <translation>stehend (Riftbrett)</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
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
        <source>bottom</source>
        <translation>Unterboden</translation>
    </message>
    <message>
        <source>web-frame</source>
        <translation>Laufrahmen</translation>
    </message>
    <message>
        <source>shelf</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>pinned-shelf</source>
        <translation>Einlegeboden</translation>
    </message>
    <message>
        <source>rows</source>
        <translation>in Reihen</translation>
    </message>
    <message>
        <source>columns</source>
        <translation>in Spalten</translation>
    </message>
    <message>
        <source>equal</source>
        <translation>gleich</translation>
    </message>
    <message>
        <source>given</source>
        <translation>einzeln gegeben</translation>
    </message>
    <message>
        <source>step</source>
        <translation>stufenweise</translation>
    </message>
    <message>
        <source>ratio</source>
        <translation>im Verhältnis</translation>
    </message>
    <message>
        <source>drawer</source>
        <translation>Schubkasten</translation>
    </message>
    <message>
        <source>lid-supports</source>
        <translation>Klappenstützen</translation>
    </message>
    <message>
        <source>pigeonhole</source>
        <translation>Brieffächer</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ohne</translation>
    </message>
    <message>
        <source>inset</source>
        <translation>einliegend</translation>
    </message>
    <message>
        <source>lipped</source>
        <translation>überfälzt</translation>
    </message>
    <message>
        <source>overlay</source>
        <translation>aufgeschlagen</translation>
    </message>
    <message>
        <source>tongue</source>
        <translation>Feder</translation>
    </message>
    <message>
        <source>rabbet</source>
        <translation>Falz</translation>
    </message>
    <message>
        <source>knob</source>
        <translation>Knopf</translation>
    </message>
    <message>
        <source>pull</source>
        <translation>Griff</translation>
    </message>
    <message>
        <source>bars</source>
        <translation>Leisten</translation>
    </message>
    <message>
        <source>stays</source>
        <translation>Klappenhalter</translation>
    </message>
    <message>
        <source>plain</source>
        <translation>gerade</translation>
    </message>
    <message>
        <source>hollow</source>
        <translation>Kehle</translation>
    </message>
    <message>
        <source>spline</source>
        <translation>Feder</translation>
    </message>
    <message>
        <source>biscuits</source>
        <translation>Lamellen</translation>
    </message>
    <message>
        <source>panel</source>
        <translation>Platte</translation>
    </message>
    <message>
        <source>boards</source>
        <translation>Bretter</translation>
    </message>
    <message>
        <source>face</source>
        <translation>Bezugsfläche</translation>
    </message>
    <message>
        <source>back</source>
        <translation>Rückfläche</translation>
    </message>
    <message>
        <source>near</source>
        <translation>Bezugskante</translation>
    </message>
    <message>
        <source>far</source>
        <translation>ferne Kante</translation>
    </message>
    <message>
        <source>head</source>
        <translation>Kopfende</translation>
    </message>
    <message>
        <source>rectangle</source>
        <translation>Rechteck</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>above</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>below</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>front-to-back</source>
        <translation>von vorn nach hinten</translation>
    </message>
    <message>
        <source>side-to-side</source>
        <translation>von Seite zu Seite</translation>
    </message>
    <message>
        <source>level</source>
        <translation>waagrecht</translation>
    </message>
    <message>
        <source>R2010</source>
        <translation>R2010</translation>
    </message>
    <message>
        <source>R12</source>
        <translation>R12</translation>
    </message>
    <message>
        <source>straight</source>
        <translation>gerade</translation>
    </message>
    <message>
        <source>ball</source>
        <translation>Kugelkopf</translation>
    </message>
    <message>
        <source>vee</source>
        <translation>V-Fräser</translation>
    </message>
    <message>
        <source>drill</source>
        <translation>Bohrer</translation>
    </message>
    <message>
        <source>each</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>metre</source>
        <translation>Meter</translation>
    </message>
    <message>
        <source>foot</source>
        <translation>Fußende</translation>
    </message>
    <message>
        <source>board-foot</source>
        <translation>Board-foot</translation>
    </message>
    <message>
        <source>cubic-metre</source>
        <translation>Kubikmeter</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>Strichpunkt</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>Tabulator</translation>
    </message>
    <message>
        <source>square</source>
        <translation>eckig</translation>
    </message>
    <message>
        <source>front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>front-and-rear</source>
        <translation>vorn und hinten</translation>
    </message>
    <message>
        <source>round</source>
        <translation>rund</translation>
    </message>
    <message>
        <source>sliding</source>
        <translation>Gratzinkung</translation>
    </message>
    <message>
        <source>dado</source>
        <translation>Quernut</translation>
    </message>
    <message>
        <source>bead</source>
        <translation>Rundstab</translation>
    </message>
    <message>
        <source>mitred</source>
        <translation>auf Gehrung</translation>
    </message>
    <message>
        <source>mitred-both</source>
        <translation>beidseitig auf Gehrung</translation>
    </message>
    <message>
        <source>hinge</source>
        <translation>an der Bandkante</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>in der Mitte</translation>
    </message>
    <message>
        <source>frame</source>
        <translation>Blendrahmen</translation>
    </message>
    <message>
        <source>rails</source>
        <translation>Traversen</translation>
    </message>
    <message>
        <source>arch</source>
        <translation>Bogen</translation>
    </message>
    <message>
        <source>scallop</source>
        <translation>Muschelbogen</translation>
    </message>
    <message>
        <source>own</source>
        <translation>eigene Form</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>Wandplan</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>Werkbankmappe</translation>
    </message>
    <message>
        <source>iso</source>
        <translation>ISO</translation>
    </message>
    <message>
        <source>asme</source>
        <translation>ASME</translation>
    </message>
    <message>
        <source>first</source>
        <translation>Methode 1 (europäisch)</translation>
    </message>
    <message>
        <source>third</source>
        <translation>Methode 3 (amerikanisch)</translation>
    </message>
    <message>
        <source>point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>Komma</translation>
    </message>
    <message>
        <source>roll</source>
        <translation>Rolle</translation>
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
        <source>A3</source>
        <translation>A3</translation>
    </message>
    <message>
        <source>Tabloid</source>
        <translation>Tabloid</translation>
    </message>
    <message>
        <source>side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>Grundriss</translation>
    </message>
</context>
<context>
    <name>Command</name>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>New piece</source>
        <translation>Neues Möbel</translation>
    </message>
    <message>
        <source>Go back to the starting pieces.</source>
        <translation>Zurück zu den Ausgangsmöbeln.</translation>
    </message>
    <message>
        <source>Open…</source>
        <translation>Öffnen…</translation>
    </message>
    <message>
        <source>Open a piece file.</source>
        <translation>Eine Möbeldatei öffnen.</translation>
    </message>
    <message>
        <source>Save the piece to its file.</source>
        <translation>Das Möbel in seiner Datei speichern.</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation>Speichern unter…</translation>
    </message>
    <message>
        <source>Save the piece under another name.</source>
        <translation>Das Möbel unter anderem Namen speichern.</translation>
    </message>
    <message>
        <source>Write the package…</source>
        <translation>Mappe schreiben…</translation>
    </message>
    <message>
        <source>Write sheets, templates, drawing, router files and lists to a folder.</source>
        <translation>Blätter, Schablonen, Zeichnung, Fräsdateien und Listen in einen Ordner schreiben.</translation>
    </message>
    <message>
        <source>Write views as pictures…</source>
        <translation>Ansichten als Bilder schreiben…</translation>
    </message>
    <message>
        <source>Write each view as SVG and PNG to a folder.</source>
        <translation>Jede Ansicht als SVG und PNG in einen Ordner schreiben.</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Print sheets, or templates at true size.</source>
        <translation>Blätter drucken oder Schablonen in wahrer Größe.</translation>
    </message>
    <message>
        <source>Freeze a revision…</source>
        <translation>Änderungsstand einfrieren…</translation>
    </message>
    <message>
        <source>Keep in the file what a revision was made of, so that later changes are told.</source>
        <translation>In der Datei festhalten, woraus ein Änderungsstand bestand, damit spätere Änderungen gemeldet werden.</translation>
    </message>
    <message>
        <source>Shop and layouts</source>
        <translation>Werkstatt und Aufteilung</translation>
    </message>
    <message>
        <source>Cutters, saw, stock and offcuts of the shop; lay the piece out.</source>
        <translation>Fräser, Säge, Material und Reststücke der Werkstatt; das Möbel aufteilen.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close the window.</source>
        <translation>Das Fenster schließen.</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Take the last change back.</source>
        <translation>Die letzte Änderung zurücknehmen.</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Do it again.</source>
        <translation>Sie noch einmal ausführen.</translation>
    </message>
    <message>
        <source>One more drawer</source>
        <translation>Ein Schubkasten mehr</translation>
    </message>
    <message>
        <source>Add a drawer below the others.</source>
        <translation>Unter den anderen einen Schubkasten hinzufügen.</translation>
    </message>
    <message>
        <source>One drawer fewer</source>
        <translation>Ein Schubkasten weniger</translation>
    </message>
    <message>
        <source>Take the lowest drawer out.</source>
        <translation>Den untersten Schubkasten herausnehmen.</translation>
    </message>
    <message>
        <source>Keep as a variant…</source>
        <translation>Als Variante behalten…</translation>
    </message>
    <message>
        <source>Keep what differs from the saved file under a name.</source>
        <translation>Was sich von der gespeicherten Datei unterscheidet, unter einem Namen behalten.</translation>
    </message>
    <message>
        <source>Take this variant out</source>
        <translation>Diese Variante herausnehmen</translation>
    </message>
    <message>
        <source>Take the variant that is shown out of the file.</source>
        <translation>Die gezeigte Variante aus der Datei nehmen.</translation>
    </message>
    <message>
        <source>Lay a photo behind a view…</source>
        <translation>Foto hinter eine Ansicht legen…</translation>
    </message>
    <message>
        <source>Trace the proportions of an old piece from a photo.</source>
        <translation>Die Proportionen eines alten Möbels von einem Foto abnehmen.</translation>
    </message>
    <message>
        <source>Whole sheet</source>
        <translation>Ganzes Blatt</translation>
    </message>
    <message>
        <source>Show the whole sheet.</source>
        <translation>Das ganze Blatt zeigen.</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Größer</translation>
    </message>
    <message>
        <source>Show the sheet larger.</source>
        <translation>Das Blatt größer zeigen.</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Kleiner</translation>
    </message>
    <message>
        <source>Show the sheet smaller.</source>
        <translation>Das Blatt kleiner zeigen.</translation>
    </message>
    <message>
        <source>Hidden lines</source>
        <translation>Verdeckte Kanten</translation>
    </message>
    <message>
        <source>Show or leave out hidden lines.</source>
        <translation>Verdeckte Kanten zeigen oder weglassen.</translation>
    </message>
    <message>
        <source>Dimensions</source>
        <translation>Maße</translation>
    </message>
    <message>
        <source>Show or leave out dimensions.</source>
        <translation>Maße zeigen oder weglassen.</translation>
    </message>
    <message>
        <source>Dados</source>
        <translation>Nuten</translation>
    </message>
    <message>
        <source>Show where dados, grooves and rabbets run.</source>
        <translation>Zeigen, wo Quernuten, Nuten und Fälze laufen.</translation>
    </message>
    <message>
        <source>Lid swing</source>
        <translation>Klappenweg</translation>
    </message>
    <message>
        <source>Show the open lid and its way.</source>
        <translation>Die offene Klappe und ihren Weg zeigen.</translation>
    </message>
    <message>
        <source>Drawers drawn out</source>
        <translation>Kästen ausgezogen</translation>
    </message>
    <message>
        <source>Show drawers and supports drawn out.</source>
        <translation>Schubkästen und Stützen ausgezogen zeigen.</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Schnitt</translation>
    </message>
    <message>
        <source>Show the piece cut through its middle.</source>
        <translation>Das Möbel in der Mitte geschnitten zeigen.</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>Bild</translation>
    </message>
    <message>
        <source>Turn the piece in a window of its own, open its lid and drawers.</source>
        <translation>Das Möbel in einem eigenen Fenster drehen, Klappe und Schubkästen öffnen.</translation>
    </message>
    <message>
        <source>Two variants side by side</source>
        <translation>Zwei Varianten nebeneinander</translation>
    </message>
    <message>
        <source>Compare the piece with one of its variants.</source>
        <translation>Das Möbel mit einer seiner Varianten vergleichen.</translation>
    </message>
    <message>
        <source>Go to the drawing</source>
        <translation>Zur Zeichnung</translation>
    </message>
    <message>
        <source>Give the keyboard to the drawing.</source>
        <translation>Die Tastatur zur Zeichnung führen.</translation>
    </message>
    <message>
        <source>Go to the findings</source>
        <translation>Zu den Befunden</translation>
    </message>
    <message>
        <source>Give the keyboard to the list of findings.</source>
        <translation>Die Tastatur zur Liste der Befunde führen.</translation>
    </message>
    <message>
        <source>Go to the panels</source>
        <translation>Zu den Tafeln</translation>
    </message>
    <message>
        <source>Give the keyboard to the panels beside the drawing.</source>
        <translation>Die Tastatur zu den Tafeln neben der Zeichnung führen.</translation>
    </message>
    <message>
        <source>Language…</source>
        <translation>Sprache…</translation>
    </message>
    <message>
        <source>Choose the language of the window; the drawing keeps its own.</source>
        <translation>Die Sprache des Fensters wählen; die Zeichnung behält ihre eigene.</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Light words on a dark ground, for the evening.</source>
        <translation>Helle Schrift auf dunklem Grund, für den Abend.</translation>
    </message>
    <message>
        <source>The first ten minutes</source>
        <translation>Die ersten zehn Minuten</translation>
    </message>
    <message>
        <source>How to shape a piece and get it made.</source>
        <translation>Wie man ein Möbel formt und bauen lässt.</translation>
    </message>
</context>
<context>
    <name>CompareWindow</name>
    <message>
        <source>{name}: two variants</source>
        <translation>{name}: zwei Varianten</translation>
    </message>
    <message>
        <source>What differs</source>
        <translation>Was verschieden ist</translation>
    </message>
    <message>
        <source>Variant at the left</source>
        <translation>Variante links</translation>
    </message>
    <message>
        <source>Variant at the right</source>
        <translation>Variante rechts</translation>
    </message>
    <message>
        <source>as in the file</source>
        <translation>wie in der Datei</translation>
    </message>
    <message>
        <source>Nothing differs.</source>
        <translation>Nichts ist verschieden.</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>nicht gegeben</translation>
    </message>
    <message>
        <source>{input}: {left} → {right}</source>
        <translation>{input}: {left} → {right}</translation>
    </message>
</context>
<context>
    <name>ContactSheet</name>
    <message>
        <source>All pages</source>
        <translation>Alle Seiten</translation>
    </message>
</context>
<context>
    <name>Corner</name>
    <message>
        <source>lower left</source>
        <translation>unten links</translation>
    </message>
    <message>
        <source>lower right</source>
        <translation>unten rechts</translation>
    </message>
    <message>
        <source>upper right</source>
        <translation>oben rechts</translation>
    </message>
    <message>
        <source>upper left</source>
        <translation>oben links</translation>
    </message>
</context>
<context>
    <name>Crash</name>
    <message>
        <source>A copy of the piece is kept and offered at the next start</source>
        <translation>Eine Kopie des Möbels ist gesichert und wird beim nächsten Start angeboten</translation>
    </message>
    <message>
        <source>Save the piece under another name now</source>
        <translation>Speichern Sie das Möbel jetzt unter anderem Namen</translation>
    </message>
    <message>
        <source>Something went wrong inside the program ({kind}). {safe}; the details are in {file}.</source>
        <translation>Im Programm ist etwas schiefgegangen ({kind}). {safe}; Genaueres steht in {file}.</translation>
    </message>
</context>
<context>
    <name>Cut</name>
    <message>
        <source>rabbet</source>
        <translation>Falz</translation>
    </message>
    <message>
        <source>dado</source>
        <translation>Quernut</translation>
    </message>
    <message>
        <source>dovetail</source>
        <translation>Zinkung</translation>
    </message>
    <message>
        <source>bevel</source>
        <translation>Abschrägung</translation>
    </message>
    <message>
        <source>notch</source>
        <translation>Ausklinkung</translation>
    </message>
    <message>
        <source>relief</source>
        <translation>Freistich</translation>
    </message>
    <message>
        <source>groove</source>
        <translation>Nut</translation>
    </message>
    <message>
        <source>hinge-leaf</source>
        <translation>Bandlappen</translation>
    </message>
    <message>
        <source>hinge-barrel</source>
        <translation>Bandrolle</translation>
    </message>
    <message>
        <source>mortise</source>
        <translation>Zapfenloch</translation>
    </message>
    <message>
        <source>tenon</source>
        <translation>Zapfen</translation>
    </message>
    <message>
        <source>tongue</source>
        <translation>Feder</translation>
    </message>
    <message>
        <source>mitre</source>
        <translation>Gehrung</translation>
    </message>
    <message>
        <source>chamfer</source>
        <translation>Fase</translation>
    </message>
    <message>
        <source>v-groove</source>
        <translation>V-Nut</translation>
    </message>
    <message>
        <source>moulding</source>
        <translation>Profil</translation>
    </message>
    <message>
        <source>bore</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>slot</source>
        <translation>Langloch</translation>
    </message>
</context>
<context>
    <name>Division</name>
    <message>
        <source>Drawer {key}</source>
        <translation>Schubkasten {key}</translation>
    </message>
    <message>
        <source>Row {key}</source>
        <translation>Reihe {key}</translation>
    </message>
    <message>
        <source>Bay {key}</source>
        <translation>Fach {key}</translation>
    </message>
</context>
<context>
    <name>Doing</name>
    <message>
        <source>Give up</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>How far it has come</source>
        <translation>Wie weit es ist</translation>
    </message>
    <message>
        <source>Give up what is being written or printed</source>
        <translation>Abbrechen, was geschrieben oder gedruckt wird</translation>
    </message>
    <message>
        <source>Give it up; what was in the folder stays as it was</source>
        <translation>Abbrechen; was im Ordner war, bleibt, wie es war</translation>
    </message>
    <message>
        <source>Write the package to this folder</source>
        <translation>Die Mappe in diesen Ordner schreiben</translation>
    </message>
    <message>
        <source>Writing {name}</source>
        <translation>Geschrieben wird: {name}</translation>
    </message>
    <message>
        <source>Writing the package</source>
        <translation>Die Mappe wird geschrieben</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Show the folder</source>
        <translation>Ordner zeigen</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Noch einmal versuchen</translation>
    </message>
    <message>
        <source>Another folder</source>
        <translation>Anderer Ordner</translation>
    </message>
    <message>
        <source>The package is written</source>
        <translation>Die Mappe ist geschrieben</translation>
    </message>
    <message>
        <source>The package is not written</source>
        <translation>Die Mappe ist nicht geschrieben</translation>
    </message>
    <message>
        <source>The sheets are being drawn; the dialog comes when they are there.</source>
        <translation>Die Blätter werden gezeichnet; der Dialog kommt, sobald sie da sind.</translation>
    </message>
    <message>
        <source>Write the views as pictures to this folder</source>
        <translation>Die Ansichten als Bilder in diesen Ordner schreiben</translation>
    </message>
    <message>
        <source>Writing the views as SVG and PNG…</source>
        <translation>Die Ansichten werden als SVG und PNG geschrieben…</translation>
    </message>
    <message>
        <source>{count} pictures written to {folder}</source>
        <translation>{count} Bilder geschrieben nach {folder}</translation>
    </message>
    <message>
        <source>Templates at true size</source>
        <translation>Schablonen in wahrer Größe</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Blätter</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>What shall be printed?</source>
        <translation>Was soll gedruckt werden?</translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation>Nichts</translation>
    </message>
    <message>
        <source>Something is still being written; print when that is done.</source>
        <translation>Es wird noch etwas geschrieben; drucken Sie, wenn das fertig ist.</translation>
    </message>
    <message>
        <source>Printing page {page} of {pages}</source>
        <translation>Seite {page} von {pages} wird gedruckt</translation>
    </message>
    <message>
        <source>This system tells no folder for your own files: name a shop in the piece.</source>
        <translation>Dieses System nennt keinen Ordner für eigene Dateien: Nennen Sie im Möbel eine Werkstatt.</translation>
    </message>
    <message>
        <source>The file has no variants yet: change the piece, then keep it as a variant.</source>
        <translation>Die Datei hat noch keine Varianten: Ändern Sie das Möbel und behalten Sie es dann als Variante.</translation>
    </message>
    <message>
        <source>Keep as a variant</source>
        <translation>Als Variante behalten</translation>
    </message>
    <message>
        <source>What is it called?</source>
        <translation>Wie heißt sie?</translation>
    </message>
    <message>
        <source>Nothing differs from the saved file, so there is nothing to keep.</source>
        <translation>Nichts weicht von der gespeicherten Datei ab, also gibt es nichts zu behalten.</translation>
    </message>
    <message>
        <source>Take the variant out</source>
        <translation>Variante herausnehmen</translation>
    </message>
    <message>
        <source>Choose the variant first that is to be taken out.</source>
        <translation>Zuerst die Variante wählen, die herausgenommen werden soll.</translation>
    </message>
    <message>
        <source>Choose a photo</source>
        <translation>Ein Foto wählen</translation>
    </message>
    <message>
        <source>{name} can&apos;t be read as a picture.</source>
        <translation>{name} lässt sich nicht als Bild lesen.</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Wie das System</translation>
    </message>
    <message>
        <source>As it is</source>
        <translation>Wie es ist</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Which language shall the window speak?</source>
        <translation>Welche Sprache soll das Fenster sprechen?</translation>
    </message>
    <message>
        <source>The window speaks it from the next start on.</source>
        <translation>Das Fenster spricht sie ab dem nächsten Start.</translation>
    </message>
</context>
<context>
    <name>Drag</name>
    <message>
        <source>It can&apos;t be built so.</source>
        <translation>So lässt es sich nicht bauen.</translation>
    </message>
</context>
<context>
    <name>Entry</name>
    <message>
        <source>Size</source>
        <translation>Maß</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Setzen</translation>
    </message>
    <message>
        <source>Set this size</source>
        <translation>Dieses Maß setzen</translation>
    </message>
    <message>
        <source>Set this size (Enter)</source>
        <translation>Dieses Maß setzen (Eingabe)</translation>
    </message>
    <message>
        <source>Also a sum, or a part of another size: 1/2 of depth</source>
        <translation>Auch eine Summe oder ein Teil eines anderen Maßes: 1/2 von Tiefe</translation>
    </message>
    <message>
        <source>Go to {name}</source>
        <translation>Zu {name}</translation>
    </message>
    <message>
        <source>Show the input that this size follows from</source>
        <translation>Die Eingabe zeigen, aus der dieses Maß folgt</translation>
    </message>
    <message>
        <source>“{input}” ({table})</source>
        <translation>„{input}“ ({table})</translation>
    </message>
</context>
<context>
    <name>Explanation</name>
    <message>
        <source>the stock that it is made of, by its name</source>
        <translation>das Material, aus dem es ist, mit seinem Namen</translation>
    </message>
    <message>
        <source>which member is made of which stock</source>
        <translation>welches Teil aus welchem Material ist</translation>
    </message>
    <message>
        <source>Everything that a person decided about a piece.</source>
        <translation>Alles, was über ein Möbel entschieden ist.</translation>
    </message>
    <message>
        <source>what it is and what its drawings say about it.</source>
        <translation>was es ist und was seine Zeichnungen darüber sagen.</translation>
    </message>
    <message>
        <source>identification number on the title block</source>
        <translation>Sachnummer im Schriftfeld</translation>
    </message>
    <message>
        <source>legal owner of the drawing</source>
        <translation>Eigentümer der Zeichnung</translation>
    </message>
    <message>
        <source>shop file, by a path relative to the piece file</source>
        <translation>Werkstattdatei, als Pfad von der Möbeldatei aus</translation>
    </message>
    <message>
        <source>over finished outsides; height from the floor to the upper face of the top.</source>
        <translation>über die fertigen Außenflächen; die Höhe vom Boden bis zur Oberseite der Deckplatte.</translation>
    </message>
    <message>
        <source>over the sides&apos; outer faces</source>
        <translation>über die Außenflächen der Seiten</translation>
    </message>
    <message>
        <source>over the ends of an overhanging top; given in the place of the case&apos;s width</source>
        <translation>über die Enden einer überstehenden Deckplatte; anstelle der Korpusbreite angegeben</translation>
    </message>
    <message>
        <source>over the plinth; given in the place of the case&apos;s width</source>
        <translation>über den Sockel; anstelle der Korpusbreite angegeben</translation>
    </message>
    <message>
        <source>from the finished front plane to the sides&apos; rear edges</source>
        <translation>von der fertigen Vorderebene bis zu den Hinterkanten der Seiten</translation>
    </message>
    <message>
        <source>overhanging: the top lies over the sides, on a frame; not under a slant</source>
        <translation>überstehend: Die Deckplatte liegt auf einem Rahmen über den Seiten; nicht bei einer Schräge</translation>
    </message>
    <message>
        <source>of an overhanging top, in front and at both sides</source>
        <translation>einer überstehenden Deckplatte, vorn und an beiden Seiten</translation>
    </message>
    <message>
        <source>default: a third of the side&apos;s thickness</source>
        <translation>Vorgabe: ein Drittel der Seitendicke</translation>
    </message>
    <message>
        <source>how far behind the front plane a stopped dado ends</source>
        <translation>wie weit hinter der Vorderebene eine abgesetzte Quernut endet</translation>
    </message>
    <message>
        <source>how much wider than its guest a dado is</source>
        <translation>um wie viel eine Quernut breiter ist als der Boden darin</translation>
    </message>
    <message>
        <source>how far short of a dado&apos;s floor its guest ends</source>
        <translation>wie weit vor dem Nutgrund der Boden endet</translation>
    </message>
    <message>
        <source>from the writing surface down to the topmost drawer&apos;s opening; default from lid and front</source>
        <translation>von der Schreibfläche hinunter bis zum obersten Kastenfach; Vorgabe aus Klappe und Vorderstück</translation>
    </message>
    <message>
        <source>of rounded ends; default 3 mm, in inch pieces 3.175</source>
        <translation>runder Enden; Vorgabe 3 mm, bei Zollmöbeln 3,175</translation>
    </message>
    <message>
        <source>tails at each end of a dovetailed top; default from its depth</source>
        <translation>Schwalben an jedem Ende einer gezinkten Deckplatte; Vorgabe aus ihrer Tiefe</translation>
    </message>
    <message>
        <source>8 for 1:8; default 8, in softwood 6</source>
        <translation>8 für 1:8; Vorgabe 8, in Nadelholz 6</translation>
    </message>
    <message>
        <source>from tail to tail of a fixed template; the half pins then take what is left</source>
        <translation>von Schwalbe zu Schwalbe einer festen Schablone; die halben Zinken nehmen dann den Rest</translation>
    </message>
    <message>
        <source>half-blind ones show nothing on the sides, or nothing on the top</source>
        <translation>halbverdeckte zeigen an den Seiten nichts oder an der Deckplatte nichts</translation>
    </message>
    <message>
        <source>wood left before half-blind dovetails; default a quarter of that board, at least 4 mm</source>
        <translation>Holz, das vor halbverdeckten Zinken stehen bleibt; Vorgabe: ein Viertel dieses Bretts, mindestens 4 mm</translation>
    </message>
    <message>
        <source>moulding on an overhanging top&apos;s upper edges, in front and at both ends</source>
        <translation>Profil an den Oberkanten einer überstehenden Deckplatte, vorn und an beiden Enden</translation>
    </message>
    <message>
        <source>of that moulding; default 0.4 of the top</source>
        <translation>dieses Profils; Vorgabe 0,4 der Deckplatte</translation>
    </message>
    <message>
        <source>exactly one of `angle` and `top_depth`; writing surface and lid.</source>
        <translation>genau eines von Winkel und oberer Tiefe; Schreibfläche und Klappe.</translation>
    </message>
    <message>
        <source>from level, degrees</source>
        <translation>zur Waagerechten, Grad</translation>
    </message>
    <message>
        <source>height where the slant begins on an old piece, as measured</source>
        <translation>Höhe, in der die Schräge an einem alten Möbel beginnt, wie gemessen</translation>
    </message>
    <message>
        <source>between shelf and lid at the hinge line</source>
        <translation>zwischen Boden und Klappe an der Bandlinie</translation>
    </message>
    <message>
        <source>height of the pin over the writing surface</source>
        <translation>Höhe des Bandstifts über der Schreibfläche</translation>
    </message>
    <message>
        <source>how far the pin lies behind the front plane; default half the joint gap before it</source>
        <translation>wie weit der Bandstift hinter der Vorderebene liegt; Vorgabe: die halbe Fuge davor</translation>
    </message>
    <message>
        <source>species or sheet, as measured.</source>
        <translation>Holzart oder Platte, wie gemessen.</translation>
    </message>
    <message>
        <source>species or sheet, by its key in the trade tables</source>
        <translation>Holzart oder Platte, mit ihrem Schlüssel in den Tabellen</translation>
    </message>
    <message>
        <source>as measured</source>
        <translation>wie gemessen</translation>
    </message>
    <message>
        <source>change across the grain per 1 % of moisture, if measured</source>
        <translation>Schwindmaß quer zur Faser je 1 % Holzfeuchte, falls gemessen</translation>
    </message>
    <message>
        <source>kg/m³ at 12 % moisture, if weighed</source>
        <translation>kg/m³ bei 12 % Holzfeuchte, falls gewogen</translation>
    </message>
    <message>
        <source>modulus of elasticity along the grain, GPa, if stated</source>
        <translation>Elastizitätsmodul längs der Faser, GPa, falls angegeben</translation>
    </message>
    <message>
        <source>dressed widths of the boards at hand; a wider panel is glued up from them</source>
        <translation>gehobelte Breiten der vorhandenen Bretter; eine breitere Platte wird aus ihnen verleimt</translation>
    </message>
    <message>
        <source>allowance when buying, percent; default 15</source>
        <translation>Zuschlag beim Einkauf, Prozent; Vorgabe 15</translation>
    </message>
    <message>
        <source>size a sheet is sold in, by its key in the trade tables; default 4x8, in mm pieces 1220x2440</source>
        <translation>Handelsformat einer Platte, mit ihrem Schlüssel in den Tabellen; Vorgabe 4x8, bei mm-Möbeln 1220x2440</translation>
    </message>
    <message>
        <source>member to stock; the most exact name wins</source>
        <translation>Teil und sein Material; der genaueste Name gilt</translation>
    </message>
    <message>
        <source>a horizontal member; `top` from the floor, or none where it follows from others.</source>
        <translation>ein waagerechtes Teil; Oberkante vom Boden, oder keine, wo sie aus anderem folgt.</translation>
    </message>
    <message>
        <source>a clear space above a level, what divides it and what fills it.</source>
        <translation>ein lichter Raum über einer Ebene, was ihn teilt und was ihn füllt.</translation>
    </message>
    <message>
        <source>how an opening is divided; keys are given once and never used again for another.</source>
        <translation>wie ein Fach geteilt ist; Schlüssel werden einmal vergeben und nie für ein anderes wieder verwendet.</translation>
    </message>
    <message>
        <source>from the top down, or from the left</source>
        <translation>von oben nach unten oder von links</translation>
    </message>
    <message>
        <source>each row higher than the one above by this; default 20 mm, in inch pieces 3/4 in</source>
        <translation>um so viel ist jede Reihe höher als die darüber; Vorgabe 20 mm, bei Zollmöbeln 3/4 in</translation>
    </message>
    <message>
        <source>each row higher than the one above by this factor</source>
        <translation>um diesen Faktor ist jede Reihe höher als die darüber</translation>
    </message>
    <message>
        <source>clear heights in the order of the keys; one may be 0 for what is left</source>
        <translation>lichte Höhen in der Folge der Schlüssel; eine darf 0 sein und nimmt den Rest</translation>
    </message>
    <message>
        <source>choices for all drawers; tables below it, [drawer.KEY], are read into `each` by the reader.</source>
        <translation>gilt für alle Schubkästen; darunter steht, was für einzelne gilt.</translation>
    </message>
    <message>
        <source>overlay: before the case, screwed to the box&apos;s own front in slots</source>
        <translation>aufgeschlagen: vor dem Korpus, in Langlöchern an die eigene Front des Kastens geschraubt</translation>
    </message>
    <message>
        <source>0: no lip on the left edge</source>
        <translation>0: kein Überschlag an der linken Kante</translation>
    </message>
    <message>
        <source>0: no lip on the right edge</source>
        <translation>0: kein Überschlag an der rechten Kante</translation>
    </message>
    <message>
        <source>0: no lip on the upper edge</source>
        <translation>0: kein Überschlag an der Oberkante</translation>
    </message>
    <message>
        <source>0: no lip on the lower edge</source>
        <translation>0: kein Überschlag an der Unterkante</translation>
    </message>
    <message>
        <source>between front and sides: dovetail is half-blind, sliding a dovetail pushed in from below</source>
        <translation>zwischen Vorderstück und Seiten: Zinken sind halbverdeckt, eine Gratzinkung wird von unten eingeschoben</translation>
    </message>
    <message>
        <source>between back and sides: dovetail is through</source>
        <translation>zwischen Hinterstück und Seiten: Zinken sind offen</translation>
    </message>
    <message>
        <source>at each corner of the front; default from its height</source>
        <translation>an jeder Ecke des Vorderstücks; Vorgabe aus seiner Höhe</translation>
    </message>
    <message>
        <source>of the drawer&apos;s dovetails, 8 for 1:8; default 8, in softwood 6</source>
        <translation>der Zinken am Schubkasten, 8 für 1:8; Vorgabe 8, in Nadelholz 6</translation>
    </message>
    <message>
        <source>back lower than the sides; 0 to 6 mm is usual</source>
        <translation>Hinterstück niedriger als die Seiten; üblich sind 0 bis 6 mm</translation>
    </message>
    <message>
        <source>moulding round the front&apos;s face</source>
        <translation>Profil rund um die Ansicht des Vorderstücks</translation>
    </message>
    <message>
        <source>of that moulding; default from the edge&apos;s thickness</source>
        <translation>dieses Profils; Vorgabe aus der Dicke der Kante</translation>
    </message>
    <message>
        <source>or pulls, on each front; default one, over 450 mm two</source>
        <translation>oder Griffe auf jeder Front; sonst einer, über 450 mm zwei</translation>
    </message>
    <message>
        <source>what a drawer is drawn by</source>
        <translation>woran eine Schublade gezogen wird</translation>
    </message>
    <message>
        <source>of a knob; default from its front&apos;s height</source>
        <translation>eines Knopfs; sonst nach der Höhe seiner Front</translation>
    </message>
    <message>
        <source>how far a knob stands out; default by its size</source>
        <translation>wie weit ein Knopf vorsteht; sonst nach seiner Größe</translation>
    </message>
    <message>
        <source>from post to post of a pull; default 64 mm, in inch pieces 2 1/2 in</source>
        <translation>Lochabstand eines Griffs; sonst 64 mm, in Zollstücken 2 1/2 in</translation>
    </message>
    <message>
        <source>[drawer] for all, [drawer.KEY] for one of them.</source>
        <translation>für alle Schubkästen oder für einen von ihnen.</translation>
    </message>
    <message>
        <source>overlap of a lipped or overlay front, on each edge that has no other</source>
        <translation>Überschlag eines überfälzten oder aufgeschlagenen Vorderstücks, an jeder Kante ohne eigene Angabe</translation>
    </message>
    <message>
        <source>gap beside and below an inset front; above it the seasons are added</source>
        <translation>Fuge neben und unter einem einliegenden Vorderstück; darüber kommen die Jahreszeiten hinzu</translation>
    </message>
    <message>
        <source>how far the sides enter the front</source>
        <translation>wie weit die Seiten ins Vorderstück greifen</translation>
    </message>
    <message>
        <source>bottom groove over the box&apos;s lower edge</source>
        <translation>Bodennut über der Unterkante des Kastens</translation>
    </message>
    <message>
        <source>a panel, grain left to right, hinged on the writing shelf.</source>
        <translation>eine Platte, Faser von links nach rechts, an der Schreibplatte angeschlagen.</translation>
    </message>
    <message>
        <source>depth of a rabbeted lid&apos;s rabbet; default 0.4 of its thickness</source>
        <translation>Falztiefe einer eingefälzten Klappe; Vorgabe 0,4 ihrer Dicke</translation>
    </message>
    <message>
        <source>how far a rabbeted lid laps over the bevel; default 12 mm</source>
        <translation>wie weit eine eingefälzte Klappe über die Schräge greift; Vorgabe 12 mm</translation>
    </message>
    <message>
        <source>how far it laps over each side; default side&apos;s thickness less the reveal</source>
        <translation>wie weit sie über jede Seite greift; Vorgabe: Seitendicke weniger Sichtfuge</translation>
    </message>
    <message>
        <source>what shows of the top&apos;s bevel beside the lid</source>
        <translation>was von der Schräge der Deckplatte neben der Klappe zu sehen ist</translation>
    </message>
    <message>
        <source>at the upper end, from the seasons when not given</source>
        <translation>am oberen Ende, ohne Angabe aus den Jahreszeiten</translation>
    </message>
    <message>
        <source>bevel kept on the top&apos;s edge; follows from lip and reveal where the lid has them</source>
        <translation>Schräge, die an der Kante der Deckplatte bleibt; folgt aus Überschlag und Sichtfuge, wo die Klappe sie hat</translation>
    </message>
    <message>
        <source>breadboard caps at the panel&apos;s ends: square, or mitred at the free edge</source>
        <translation>Hirnleisten an den Enden der Platte: stumpf, oder an der freien Kante auf Gehrung</translation>
    </message>
    <message>
        <source>where square caps are glued to the panel; mitred ones are at their mitre</source>
        <translation>wo stumpfe Hirnleisten mit der Platte verleimt sind; solche auf Gehrung an ihrer Gehrung</translation>
    </message>
    <message>
        <source>least slant, degrees from level, that the lid&apos;s stays are made for; by their maker</source>
        <translation>kleinste Schräge, Grad zur Waagerechten, für die die Klappenhalter gemacht sind; vom Hersteller</translation>
    </message>
    <message>
        <source>from the pin to a stay&apos;s fixing on the lid; default half of the lid</source>
        <translation>vom Drehpunkt zur Befestigung eines Klappenhalters an der Klappe; Vorgabe die halbe Klappe</translation>
    </message>
    <message>
        <source>from the pin up to a stay&apos;s fixing on the side; default from the slant&apos;s rise</source>
        <translation>vom Drehpunkt hinauf zur Befestigung eines Klappenhalters an der Seite; Vorgabe aus der Höhe der Schräge</translation>
    </message>
    <message>
        <source>two sliding bars beside the topmost drawer, or metal stays in their place.</source>
        <translation>zwei ausziehbare Leisten neben dem obersten Schubkasten oder an ihrer Stelle Klappenhalter aus Metall.</translation>
    </message>
    <message>
        <source>stays: metal arms at the lid&apos;s ends; the topmost drawer is as wide as the others then</source>
        <translation>Klappenhalter: Arme aus Metall an den Enden der Klappe; der oberste Schubkasten ist dann so breit wie die anderen</translation>
    </message>
    <message>
        <source>each side of the bar; default 0.5 mm, beside a strip what that gains, too</source>
        <translation>an jeder Seite der Leiste; Vorgabe 0,5 mm, neben einer Leiste vor der Seite auch, was diese quillt</translation>
    </message>
    <message>
        <source>a mitred plinth wrapped round the case, its lower edge straight or shaped between feet.</source>
        <translation>ein auf Gehrung um den Korpus gelegter Sockel, seine Unterkante gerade oder zwischen Füßen geschweift.</translation>
    </message>
    <message>
        <source>plinth&apos;s lower edge: straight, or drawn once from a foot to the middle and mirrored</source>
        <translation>Unterkante des Sockels: gerade, oder einmal vom Fuß bis zur Mitte gezeichnet und gespiegelt</translation>
    </message>
    <message>
        <source>length of a shaped foot on the floor, from the plinth&apos;s corner; default covers its block</source>
        <translation>Länge eines geschweiften Fußes auf dem Boden, von der Sockelecke; sonst so, dass er seinen Klotz verdeckt</translation>
    </message>
    <message>
        <source>of the shaped edge between the feet; default 0.45 of the plinth</source>
        <translation>der geschweiften Kante zwischen den Füßen; sonst 0,45 des Sockels</translation>
    </message>
    <message>
        <source>own edge, threes of across, up, radius: lines from a foot&apos;s inner end, with tangent arcs</source>
        <translation>eigene Kante, je drei Werte quer, hoch, Radius: Linien vom inneren Ende eines Fußes, mit tangentialen Bögen</translation>
    </message>
    <message>
        <source>what strengthens the plinth&apos;s mitres; a spline&apos;s grain runs across the mitre</source>
        <translation>was die Gehrungen des Sockels verstärkt; die Faser einer Feder läuft quer zur Gehrung</translation>
    </message>
    <message>
        <source>moulding on the plinth&apos;s upper edge</source>
        <translation>Profil an der Oberkante des Sockels</translation>
    </message>
    <message>
        <source>of that moulding; default 0.4 of the plinth&apos;s boards</source>
        <translation>dieses Profils; sonst 0,4 der Sockelbretter</translation>
    </message>
    <message>
        <source>short blocks glued in behind the plinth, under the case</source>
        <translation>kurze Leimklötze hinter dem Sockel, unter dem Korpus</translation>
    </message>
    <message>
        <source>in the rear rabbets: plywood, shiplapped boards, or a frame with panels.</source>
        <translation>in den hinteren Fälzen: Sperrholz, überfälzte Bretter oder ein Rahmen mit Füllungen.</translation>
    </message>
    <message>
        <source>panel: plywood; boards: shiplapped, grain up; frame: with panels floating in grooves</source>
        <translation>Platte: Sperrholz; Bretter: überfälzt, Faser senkrecht; Rahmen: mit Füllungen, die in Nuten frei liegen</translation>
    </message>
    <message>
        <source>width that a shiplapped board covers, about</source>
        <translation>Breite, die ein überfälztes Brett etwa deckt</translation>
    </message>
    <message>
        <source>of shiplapped boards; default three times what one moves, at least 6 mm</source>
        <translation>überfälzter Bretter; sonst das Dreifache dessen, was eines arbeitet, mindestens 6 mm</translation>
    </message>
    <message>
        <source>between shiplapped boards at build; default what one gains and 0.5 mm</source>
        <translation>zwischen überfälzten Brettern beim Bau; sonst was eines quillt und 0,5 mm</translation>
    </message>
    <message>
        <source>width of a framed back&apos;s stiles, rails and muntins</source>
        <translation>Breite der Rahmenhölzer und Mittelstücke einer gerahmten Rückwand</translation>
    </message>
    <message>
        <source>of a framed back, beside each other; default by width</source>
        <translation>einer gerahmten Rückwand, nebeneinander; sonst nach der Breite</translation>
    </message>
    <message>
        <source>a face frame before the case&apos;s front edges, or a desk&apos;s thick rails; the case&apos;s depth is over it.</source>
        <translation>ein Blendrahmen vor den Vorderkanten des Korpus oder die dicken Traversen eines Schreibschranks; die Tiefe des Korpus zählt mit ihm.</translation>
    </message>
    <message>
        <source>frame: stiles and rails before an open case; rails: between a desk&apos;s drawers, with strips</source>
        <translation>Blendrahmen: Friese vor einem offenen Korpus; Traversen: zwischen den Schubkästen eines Schreibschranks, mit Leisten</translation>
    </message>
    <message>
        <source>height of the rails between drawers, over the opening below</source>
        <translation>Höhe der Traversen zwischen den Schubkästen, über dem Fach darunter</translation>
    </message>
    <message>
        <source>width of the strips down the sides&apos; front edges; default the side&apos;s thickness, 0: none</source>
        <translation>Breite der Leisten an den Vorderkanten der Seiten; Vorgabe: Seitendicke, 0: keine</translation>
    </message>
    <message>
        <source>height of the guides beside drawers and supports</source>
        <translation>Höhe der Streichleisten neben Schubkästen und Stützen</translation>
    </message>
    <message>
        <source>width of the kickers over drawers</source>
        <translation>Breite der Kippleisten über den Schubkästen</translation>
    </message>
    <message>
        <source>moulding on the step&apos;s upper edge</source>
        <translation>Profil an der Oberkante der Stufe</translation>
    </message>
    <message>
        <source>its middle: from the reference edge; else from the reference face</source>
        <translation>seine Mitte: von der Bezugskante; sonst von der Bezugsfläche</translation>
    </message>
    <message>
        <source>width of a cap</source>
        <translation>Breite einer Hirnleiste</translation>
    </message>
    <message>
        <source>of the piece, as it stands on the title block</source>
        <translation>des Möbels, wie er im Schriftfeld steht</translation>
    </message>
    <message>
        <source>what it is built as; each kind has members of its own</source>
        <translation>als was es gebaut wird; jede Art hat eigene Teile</translation>
    </message>
    <message>
        <source>of bare numbers in this file and of the drawings</source>
        <translation>für Zahlen ohne Einheit in dieser Datei und für die Zeichnungen</translation>
    </message>
    <message>
        <source>letter or number of the drawings&apos; state, on the title block</source>
        <translation>Buchstabe oder Nummer des Zeichnungsstands, im Schriftfeld</translation>
    </message>
    <message>
        <source>of issue, on the title block: 2026-03-02</source>
        <translation>der Ausgabe, im Schriftfeld: 2026-03-02</translation>
    </message>
    <message>
        <source>who drew it, on the title block</source>
        <translation>wer gezeichnet hat, im Schriftfeld</translation>
    </message>
    <message>
        <source>who approved it, on the title block</source>
        <translation>wer freigegeben hat, im Schriftfeld</translation>
    </message>
    <message>
        <source>from the floor to the upper face of the top</source>
        <translation>vom Fußboden bis zur Oberseite der Deckplatte</translation>
    </message>
    <message>
        <source>stopped: it ends behind the front edge and isn&apos;t seen there; through: it runs out</source>
        <translation>abgesetzt: sie endet hinter der Vorderkante und ist dort nicht zu sehen; durchgehend: sie läuft aus</translation>
    </message>
    <message>
        <source>from the floor to the surface that one writes on</source>
        <translation>vom Fußboden bis zur Fläche, auf der man schreibt</translation>
    </message>
    <message>
        <source>of the top&apos;s upper face, from the slant to the rear; given in the place of the angle</source>
        <translation>der Oberseite der Deckplatte, von der Schräge nach hinten; an Stelle des Winkels gegeben</translation>
    </message>
    <message>
        <source>how the shut lid lies: on the sides, with a rabbet between them, or flush between them</source>
        <translation>wie die geschlossene Klappe liegt: auf den Seiten, mit einem Falz zwischen ihnen oder bündig zwischen ihnen</translation>
    </message>
    <message>
        <source>the lid&apos;s edge that the hinges are at: lower as a desk has it, upper as a lectern has it</source>
        <translation>die Kante der Klappe mit den Bändern: unten wie am Schreibmöbel, oben wie am Pult</translation>
    </message>
    <message>
        <source>solid wood, or a sheet such as plywood</source>
        <translation>Massivholz oder eine Platte wie Sperrholz</translation>
    </message>
    <message>
        <source>rough thickness by the trade&apos;s name: 4/4</source>
        <translation>Rohdicke, wie sie im Handel heißt: 4/4</translation>
    </message>
    <message>
        <source>how the boards are sawn, which says how much they move</source>
        <translation>wie die Bretter geschnitten sind; danach richtet sich, wie sehr sie arbeiten</translation>
    </message>
    <message>
        <source>whether the thickness was measured on the wood at hand; no: it is what the yard calls it</source>
        <translation>ob die Dicke am Holz gemessen ist; nein: sie ist, was der Händler angibt</translation>
    </message>
    <message>
        <source>lost on each edge of a board at hand that is jointed</source>
        <translation>geht an jeder gefügten Kante eines vorhandenen Bretts verloren</translation>
    </message>
    <message>
        <source>why it is that much; printed with it</source>
        <translation>warum so viel; wird mitgedruckt</translation>
    </message>
    <message>
        <source>its parts may lie with their grain across the sheet: painted, or without grain</source>
        <translation>seine Teile dürfen quer zur Faser der Platte liegen: deckend gestrichen oder ohne Faser</translation>
    </message>
    <message>
        <source>what lies there: the bottom, a web frame under drawers, a shelf in dados, or a loose one on pins</source>
        <translation>was dort liegt: der Unterboden, ein Laufrahmen unter Schubkästen, ein Boden in Quernuten oder ein loser auf Bodenträgern</translation>
    </message>
    <message>
        <source>its upper face over the floor; without it levels share the room between their neighbours</source>
        <translation>seine Oberseite über dem Fußboden; ohne sie teilen sich Ebenen den Raum zwischen ihren Nachbarn</translation>
    </message>
    <message>
        <source>the level that it stands on</source>
        <translation>die Ebene, auf der es steht</translation>
    </message>
    <message>
        <source>rows under each other, or columns beside each other</source>
        <translation>Reihen untereinander oder Spalten nebeneinander</translation>
    </message>
    <message>
        <source>equal: all alike; step and ratio: each larger than the one before; given: by its sizes</source>
        <translation>gleich: alle gleich; stufenweise und im Verhältnis: jedes größer als das davor; einzeln gegeben: nach den Maßen</translation>
    </message>
    <message>
        <source>what it holds: drawers, the lid&apos;s supports, pigeonholes or nothing</source>
        <translation>was es enthält: Schubkästen, die Klappenstützen, kleine Fächer oder nichts</translation>
    </message>
    <message>
        <source>of the lip, from the front&apos;s face to its shoulder</source>
        <translation>des Überschlags, von der Schauseite des Vorderstücks bis zur Brüstung</translation>
    </message>
    <message>
        <source>between the box and its opening, each side</source>
        <translation>zwischen Kasten und Fach, je Seite</translation>
    </message>
    <message>
        <source>between the box and its opening, above; default from the seasons</source>
        <translation>zwischen Kasten und Fach, oben; Vorgabe aus den Jahreszeiten</translation>
    </message>
    <message>
        <source>between core or flush lid and the sides, each side; default 1 mm, or what its caps need</source>
        <translation>zwischen Kern oder bündiger Klappe und den Seiten, je Seite; Vorgabe 1 mm oder was ihre Hirnleisten brauchen</translation>
    </message>
    <message>
        <source>length of the tongue in a cap; default half its width</source>
        <translation>Länge der Feder in der Hirnleiste; Vorgabe: halbe Breite</translation>
    </message>
    <message>
        <source>from the writing face to the tongue, a third of the thickness; default in the middle</source>
        <translation>von der Schreibfläche bis zur Feder, ein Drittel der Dicke; Vorgabe: in der Mitte</translation>
    </message>
    <message>
        <source>how much deeper than the tongue a cap&apos;s groove is</source>
        <translation>um wie viel die Nut der Hirnleiste tiefer ist als die Feder lang</translation>
    </message>
    <message>
        <source>pegs in each cap; the one at the hinge edge is fast, others slotted</source>
        <translation>Holznägel je Hirnleiste; der an der Bandkante sitzt fest, die anderen im Langloch</translation>
    </message>
    <message>
        <source>diameter of a peg</source>
        <translation>Durchmesser eines Holznagels</translation>
    </message>
    <message>
        <source>how far the core&apos;s three rabbeted edges lean in at the writing face</source>
        <translation>wie weit sich die drei gefälzten Kanten des Kerns an der Schreibfläche nach innen neigen</translation>
    </message>
    <message>
        <source>moulding on the show face&apos;s three free edges</source>
        <translation>Profil an den drei freien Kanten der Ansichtsfläche</translation>
    </message>
    <message>
        <source>of that moulding; default a third of the lip or lid</source>
        <translation>dieses Profils; Vorgabe: ein Drittel von Überschlag oder Klappe</translation>
    </message>
    <message>
        <source>a lock let into the writing face, its bolt in the top&apos;s flat edge</source>
        <translation>ein in die Schreibfläche eingelassenes Schloss, sein Riegel in der flachen Kante der Deckplatte</translation>
    </message>
    <message>
        <source>of the lock&apos;s body, along the edge</source>
        <translation>des Schlosskastens, längs der Kante</translation>
    </message>
    <message>
        <source>of the lock&apos;s body, down from the core&apos;s edge</source>
        <translation>des Schlosskastens, von der Kante des Kerns hinunter</translation>
    </message>
    <message>
        <source>of the lock&apos;s body, into the writing face</source>
        <translation>des Schlosskastens, in die Schreibfläche hinein</translation>
    </message>
    <message>
        <source>from the core&apos;s edge down to the middle of the keyhole</source>
        <translation>von der Kante des Kerns bis zur Mitte des Schlüssellochs</translation>
    </message>
    <message>
        <source>how far the lock&apos;s bolt goes into the top</source>
        <translation>wie weit der Riegel des Schlosses in die Deckplatte greift</translation>
    </message>
    <message>
        <source>a lectern&apos;s ledge: how far it stands over the lid&apos;s outer face; default 12 mm</source>
        <translation>Buchleiste eines Pults: wie weit sie über die Außenfläche der Klappe steht; Vorgabe 12 mm</translation>
    </message>
    <message>
        <source>how many, along the lid&apos;s edge</source>
        <translation>wie viele, an der Kante der Klappe entlang</translation>
    </message>
    <message>
        <source>of one hinge, along the edge</source>
        <translation>eines Bands, an der Kante entlang</translation>
    </message>
    <message>
        <source>width of a leaf from the pin&apos;s centre</source>
        <translation>Breite eines Lappens von der Stiftmitte</translation>
    </message>
    <message>
        <source>of a leaf: how deep it is let in</source>
        <translation>eines Lappens: wie tief er eingelassen wird</translation>
    </message>
    <message>
        <source>over the bar; default from its seasons, at least 1 mm</source>
        <translation>über der Leiste; Vorgabe aus den Jahreszeiten, mindestens 1 mm</translation>
    </message>
    <message>
        <source>how far they pull out; default two thirds of the lid, a third kept inside</source>
        <translation>wie weit sie sich ausziehen lassen; Vorgabe: zwei Drittel der Klappe, ein Drittel bleibt drinnen</translation>
    </message>
    <message>
        <source>layers of its stock that a bar is glued up from, side by side</source>
        <translation>Lagen seines Materials, aus denen eine Leiste nebeneinander verleimt ist</translation>
    </message>
    <message>
        <source>a solid front on each bar, of the stock of support.head</source>
        <translation>ein massives Kopfstück an jeder Leiste, aus dem Material von support.head</translation>
    </message>
    <message>
        <source>depth of the dividers beside them; a guide stands behind each; default all the way back</source>
        <translation>Tiefe der Trennwände daneben; hinter jeder steht eine Streichleiste; Vorgabe: ganz nach hinten</translation>
    </message>
    <message>
        <source>a block on each bar that meets its divider&apos;s rear edge at full reach</source>
        <translation>ein Klotz an jeder Leiste, der bei vollem Auszug an die Hinterkante seiner Trennwand stößt</translation>
    </message>
    <message>
        <source>from the floor to the plinth&apos;s upper edge</source>
        <translation>vom Boden bis zur Oberkante des Sockels</translation>
    </message>
    <message>
        <source>plinth&apos;s lower edge over the floor; the foot blocks stand on it</source>
        <translation>Unterkante des Sockels über dem Boden; auf ihm stehen die Fußklötze</translation>
    </message>
    <message>
        <source>width of the foot blocks</source>
        <translation>Breite der Fußklötze</translation>
    </message>
    <message>
        <source>forward from the rear edge; default the back&apos;s thickness + 1</source>
        <translation>von der Hinterkante nach vorn; Vorgabe: Dicke der Rückwand + 1</translation>
    </message>
    <message>
        <source>into the side; default half its thickness</source>
        <translation>in die Seite hinein; Vorgabe: halbe Seitendicke</translation>
    </message>
    <message>
        <source>back smaller than its seat, each way</source>
        <translation>um so viel ist die Rückwand kleiner als ihr Falz, nach jeder Seite</translation>
    </message>
    <message>
        <source>the web frames that drawers run on.</source>
        <translation>die Laufrahmen, auf denen die Schubkästen laufen.</translation>
    </message>
    <message>
        <source>width of front and rear rails</source>
        <translation>Breite der vorderen und hinteren Traverse</translation>
    </message>
    <message>
        <source>width of rear rails; default as the front ones</source>
        <translation>Breite der hinteren Traversen; Vorgabe wie die vorderen</translation>
    </message>
    <message>
        <source>width of runners; default from what bears on them</source>
        <translation>Breite der Laufleisten; Vorgabe aus dem, was auf ihnen liegt</translation>
    </message>
    <message>
        <source>where the frames are glued to the sides; the rest is free to move with the seasons</source>
        <translation>wo die Rahmen an die Seiten geleimt sind; der Rest kann mit den Jahreszeiten arbeiten</translation>
    </message>
    <message>
        <source>length of the glued front tenon</source>
        <translation>Länge des geleimten vorderen Zapfens</translation>
    </message>
    <message>
        <source>round: tenons rounded to the mortises&apos; ends; square: the mortises&apos; corners are cleared</source>
        <translation>rund: Zapfen nach den Enden der Zapfenlöcher gerundet; eckig: die Ecken der Zapfenlöcher werden ausgestemmt</translation>
    </message>
    <message>
        <source>plywood panels in grooves of the frames, of the stock of frame.panel</source>
        <translation>Sperrholzfüllungen in Nuten der Laufrahmen, aus dem Material von frame.panel</translation>
    </message>
    <message>
        <source>a drawer wider than this has a runner under its middle; default none</source>
        <translation>ein breiterer Schubkasten als dieser hat eine Laufleiste unter seiner Mitte; Vorgabe: keine</translation>
    </message>
    <message>
        <source>a block on the front rail behind each drawer&apos;s front, so that it stops</source>
        <translation>ein Klotz auf der vorderen Traverse hinter jedem Vorderstück, damit es anschlägt</translation>
    </message>
    <message>
        <source>what loose shelves lie on: pins in rows of holes in both sides.</source>
        <translation>worauf Einlegeböden liegen: Bodenträger in Lochreihen beider Seiten.</translation>
    </message>
    <message>
        <source>from hole to hole; common practice</source>
        <translation>von Loch zu Loch; üblich</translation>
    </message>
    <message>
        <source>of a pin and its hole</source>
        <translation>eines Bodenträgers und seines Lochs</translation>
    </message>
    <message>
        <source>of a hole; 3 mm of the side are left at least</source>
        <translation>eines Lochs; mindestens 3 mm der Seite bleiben stehen</translation>
    </message>
    <message>
        <source>from the shelf&apos;s front and rear edge to the rows of holes</source>
        <translation>von Vorder- und Hinterkante des Bodens bis zu den Lochreihen</translation>
    </message>
    <message>
        <source>further holes over and under those that a shelf lies on</source>
        <translation>weitere Löcher über und unter denen, auf denen ein Boden liegt</translation>
    </message>
    <message>
        <source>a loose shelf shorter than the clear width by this; 2 to 3 mm</source>
        <translation>um so viel ist ein Einlegeboden kürzer als die lichte Breite; 2 bis 3 mm</translation>
    </message>
    <message>
        <source>width of the two stiles</source>
        <translation>Breite der beiden aufrechten Friese</translation>
    </message>
    <message>
        <source>width of the upper rail</source>
        <translation>Breite des oberen Querfrieses</translation>
    </message>
    <message>
        <source>width of the lower rail</source>
        <translation>Breite des unteren Querfrieses</translation>
    </message>
    <message>
        <source>of the stiles beyond the sides&apos; outer faces</source>
        <translation>der aufrechten Friese über die Außenflächen der Seiten</translation>
    </message>
    <message>
        <source>length of the rails&apos; tenons</source>
        <translation>Länge der Zapfen an den Querfriesen</translation>
    </message>
    <message>
        <source>a slant-desk&apos;s writing shelf, one board, or a rear one that laps over the front one.</source>
        <translation>die Schreibplatte eines Schreibschranks: ein Brett, oder ein hinteres, das über das vordere greift.</translation>
    </message>
    <message>
        <source>2: a rear board lapping over the front one, which carries the hinges</source>
        <translation>2: ein hinteres Brett, das über das vordere greift; das vordere trägt die Bänder</translation>
    </message>
    <message>
        <source>of the front board, from its front edge; default so that the step lies before compartments</source>
        <translation>des vorderen Bretts, von seiner Vorderkante; Vorgabe so, dass die Stufe vor der Inneneinteilung liegt</translation>
    </message>
    <message>
        <source>how far the rear board lies over the front one; default from the seasons, at least 12 mm</source>
        <translation>wie weit das hintere Brett auf dem vorderen liegt; Vorgabe aus den Jahreszeiten, mindestens 12 mm</translation>
    </message>
    <message>
        <source>of the rear board&apos;s upper face over the front one&apos;s; default half its thickness</source>
        <translation>der Oberseite des hinteren Bretts über der des vorderen; Vorgabe: halbe Dicke</translation>
    </message>
    <message>
        <source>of that moulding; default 0.4 of the step</source>
        <translation>dieses Profils; Vorgabe 0,4 der Stufe</translation>
    </message>
    <message>
        <source>partitions, small shelves and drawers, brackets and a back, behind a slant or in an opening.</source>
        <translation>Zwischenwände, kleine Böden und Kästchen, Bögen und eine Rückwand, hinter einer Schräge oder in einem Fach.</translation>
    </message>
    <message>
        <source>clear; bays without a width share what is left</source>
        <translation>licht; Felder ohne Breite teilen sich den Rest</translation>
    </message>
    <message>
        <source>clear heights under the shelves of every bay, from the lowest up</source>
        <translation>lichte Höhen unter den Böden jedes Felds, von unten nach oben</translation>
    </message>
    <message>
        <source>how many spaces, from the lowest up, have a drawer</source>
        <translation>wie viele Fächer, vom untersten an, ein Kästchen haben</translation>
    </message>
    <message>
        <source>at the head of every bay</source>
        <translation>oben in jedem Feld</translation>
    </message>
    <message>
        <source>how many, keyed 1, 2, ...; else the opening&apos;s columns</source>
        <translation>wie viele, mit den Schlüsseln 1, 2, …; sonst die Spalten des Fachs</translation>
    </message>
    <message>
        <source>how far behind the front plane their plumb front stands; default clear of the closed lid</source>
        <translation>wie weit ihre lotrechte Front hinter der Vorderebene steht; Vorgabe: frei von der geschlossenen Klappe</translation>
    </message>
    <message>
        <source>kept between them and the closed lid; common practice</source>
        <translation>bleibt zwischen ihnen und der geschlossenen Klappe; üblich</translation>
    </message>
    <message>
        <source>what stands proud of the lid&apos;s inner face: lock, leather, cup</source>
        <translation>was über die Innenseite der Klappe vorsteht: Schloss, Leder, Griffmuschel</translation>
    </message>
    <message>
        <source>how far a small drawer&apos;s knob stands out; it clears the lid, too</source>
        <translation>wie weit der Knopf eines Kästchens vorsteht; auch er bleibt frei von der Klappe</translation>
    </message>
    <message>
        <source>depth of the partitions&apos; grooves; default 4 mm, 3/16 in</source>
        <translation>Tiefe der Nuten für die Zwischenwände; Vorgabe 4 mm, 3/16 in</translation>
    </message>
    <message>
        <source>how far behind the front the partitions&apos; grooves stop</source>
        <translation>wie weit hinter der Front die Nuten der Zwischenwände enden</translation>
    </message>
    <message>
        <source>of the V joints&apos; points; default half the shelf&apos;s thickness, where the partition allows</source>
        <translation>der Spitzen der V-Verbindungen; Vorgabe: halbe Bodendicke, wo die Zwischenwand es zulässt</translation>
    </message>
    <message>
        <source>gap beside and below small drawers; the seasons are added above</source>
        <translation>Fuge neben und unter Kästchen; darüber kommen die Jahreszeiten hinzu</translation>
    </message>
    <message>
        <source>of the brackets at their ends</source>
        <translation>der Bögen an ihren Enden</translation>
    </message>
    <message>
        <source>of the brackets behind the partitions&apos; front edges</source>
        <translation>der Bögen hinter den Vorderkanten der Zwischenwände</translation>
    </message>
    <message>
        <source>own lower edge, from the end to the middle: across (0 to 1), up (0 to 1), bulge of what follows</source>
        <translation>eigene Unterkante, vom Ende zur Mitte: quer (0 bis 1), hoch (0 bis 1), Wölbung des Folgenden</translation>
    </message>
    <message>
        <source>a solid back in grooves; default behind a slant only</source>
        <translation>eine massive Rückwand in Nuten; Vorgabe nur hinter einer Schräge</translation>
    </message>
    <message>
        <source>one bay, counted from the left; what it leaves out is as for all bays.</source>
        <translation>ein Feld, von links gezählt; was es auslässt, gilt wie für alle Felder.</translation>
    </message>
    <message>
        <source>clear heights under each of its shelves, from the lowest up</source>
        <translation>lichte Höhen unter jedem seiner Böden, vom untersten an</translation>
    </message>
    <message>
        <source>at the head of the bay</source>
        <translation>oben im Feld</translation>
    </message>
    <message>
        <source>moisture of the wood when built and in the driest and wettest season; or the air that causes it.</source>
        <translation>Holzfeuchte beim Bau, in der trockensten und in der feuchtesten Jahreszeit; oder die Luft, die sie bewirkt.</translation>
    </message>
    <message>
        <source>moisture of the wood when the piece is built, percent</source>
        <translation>Holzfeuchte beim Bau, Prozent</translation>
    </message>
    <message>
        <source>moisture of the wood in the driest season, percent</source>
        <translation>Holzfeuchte in der trockensten Jahreszeit, Prozent</translation>
    </message>
    <message>
        <source>moisture of the wood in the wettest season, percent</source>
        <translation>Holzfeuchte in der feuchtesten Jahreszeit, Prozent</translation>
    </message>
    <message>
        <source>of the air, °C, where humidity is given</source>
        <translation>der Luft, °C, wo die Luftfeuchte gegeben ist</translation>
    </message>
    <message>
        <source>relative humidity of the shop&apos;s air; then `build` follows</source>
        <translation>relative Luftfeuchte der Werkstatt; dann folgt die Holzfeuchte beim Bau</translation>
    </message>
    <message>
        <source>relative humidity of the room&apos;s air in the driest season; then `dry` follows</source>
        <translation>relative Luftfeuchte des Raums in der trockensten Jahreszeit; dann folgt `dry`</translation>
    </message>
    <message>
        <source>relative humidity of the room&apos;s air in the wettest season; then `wet` follows</source>
        <translation>relative Luftfeuchte des Raums in der feuchtesten Jahreszeit; dann folgt `wet`</translation>
    </message>
    <message>
        <source>what the piece will carry, and whether it is held to a wall.</source>
        <translation>was das Möbel tragen wird und ob es an der Wand gehalten ist.</translation>
    </message>
    <message>
        <source>kg on each metre of a shelf; default books, 30 kg</source>
        <translation>kg auf jedem Meter Boden; Vorgabe: Bücher, 30 kg</translation>
    </message>
    <message>
        <source>kg in each cubic metre of a drawer; default 136 kg</source>
        <translation>kg in jedem Kubikmeter Schubkasten; Vorgabe 136 kg</translation>
    </message>
    <message>
        <source>kg that may hang on an open drawer or on the lid&apos;s edge; default a child of 27 kg</source>
        <translation>kg, die an einem offenen Schubkasten oder an der Klappe hängen können; Vorgabe: ein Kind von 27 kg</translation>
    </message>
    <message>
        <source>whether the piece will be fixed to a wall</source>
        <translation>ob das Möbel an der Wand befestigt wird</translation>
    </message>
    <message>
        <source>how the sheets look.</source>
        <translation>wie die Blätter aussehen.</translation>
    </message>
    <message>
        <source>wall: large sheets to hang up; bench: small ones to have at hand</source>
        <translation>Wandplan: große Blätter zum Aufhängen; Werkbankmappe: kleine zur Hand</translation>
    </message>
    <message>
        <source>A1, ARCH D, ...; default by style and set</source>
        <translation>A1, ARCH D, …; Vorgabe nach Norm und Ausführung</translation>
    </message>
    <message>
        <source>rules that the sheets follow; default ASME for inch pieces, else ISO</source>
        <translation>Regeln, denen die Blätter folgen; Vorgabe ASME für Möbel in Zoll, sonst ISO</translation>
    </message>
    <message>
        <source>where side and plan stand; default third angle for inch pieces, else first angle</source>
        <translation>wo Seite und Draufsicht stehen; Vorgabe Projektionsmethode 3 für Möbel in Zoll, sonst Methode 1</translation>
    </message>
    <message>
        <source>of the sheets, for the title block</source>
        <translation>der Blätter, für das Schriftfeld</translation>
    </message>
    <message>
        <source>sign in the figures of the sheets</source>
        <translation>Zeichen in den Zahlen der Blätter</translation>
    </message>
    <message>
        <source>of printed fractions: 2, 4, 8, 16, 32 or 64</source>
        <translation>gedruckter Brüche: 2, 4, 8, 16, 32 oder 64</translation>
    </message>
    <message>
        <source>whether sizes stand in the other unit as well</source>
        <translation>ob Maße auch in der anderen Einheit dastehen</translation>
    </message>
    <message>
        <source>smallest paper that the sheets may be printed on, with letters that can still be read</source>
        <translation>kleinstes Papier, auf das die Blätter gedruckt werden dürfen, mit noch lesbarer Schrift</translation>
    </message>
    <message>
        <source>that templates are tiled on; roll: each in one piece</source>
        <translation>auf das Schablonen verteilt werden; Rolle: jede am Stück</translation>
    </message>
    <message>
        <source>one board&apos;s own stock, grain words, note.</source>
        <translation>Material, Bezeichnung und Notiz eines einzelnen Bretts.</translation>
    </message>
    <message>
        <source>another stock than its member&apos;s, by its name</source>
        <translation>ein anderes Material als das seines Teils, mit seinem Namen</translation>
    </message>
    <message>
        <source>printed beside the board on its part sheet</source>
        <translation>steht auf dem Einzelteilblatt beim Brett</translation>
    </message>
    <message>
        <source>what the board is called on the sheets</source>
        <translation>wie das Brett auf den Blättern heißt</translation>
    </message>
    <message>
        <source>it may lie with its grain across the sheet; default as its stock says</source>
        <translation>es darf quer zur Faser der Platte liegen; Vorgabe wie sein Werkstoff</translation>
    </message>
    <message>
        <source>a person&apos;s own hole or notch in one board, with its reason.</source>
        <translation>ein eigenes Loch oder eine eigene Ausklinkung in einem Brett, mit seinem Grund.</translation>
    </message>
    <message>
        <source>id of the board</source>
        <translation>Name des Bretts</translation>
    </message>
    <message>
        <source>entered from: reference face or its back, an edge, or the reference end or the other</source>
        <translation>von welcher Seite: Bezugsfläche oder ihre Rückseite, eine Kante, oder das Bezugsende oder das andere</translation>
    </message>
    <message>
        <source>of the hole or notch</source>
        <translation>des Lochs oder der Ausklinkung</translation>
    </message>
    <message>
        <source>its middle: from the reference end; on an end, from the reference edge</source>
        <translation>seine Mitte: vom Bezugsende; an einem Ende von der Bezugskante</translation>
    </message>
    <message>
        <source>of a round one</source>
        <translation>eines runden</translation>
    </message>
    <message>
        <source>of a rectangle, in the way that `along` is measured</source>
        <translation>eines Rechtecks, in der Richtung, in der `along` gemessen wird</translation>
    </message>
    <message>
        <source>of a rectangle, in the way that `across` is measured</source>
        <translation>eines Rechtecks, in der Richtung, in der `across` gemessen wird</translation>
    </message>
    <message>
        <source>of a rectangle&apos;s corners</source>
        <translation>der Ecken eines Rechtecks</translation>
    </message>
    <message>
        <source>from that face; default through</source>
        <translation>von dieser Seite; sonst durch</translation>
    </message>
    <message>
        <source>what it is for; printed with it</source>
        <translation>wozu er dient; wird mitgedruckt</translation>
    </message>
    <message>
        <source>one fitting as it is at hand, by its id in the hardware list.</source>
        <translation>ein Beschlag, wie er zur Hand ist, mit seinem Namen aus der Beschlagliste.</translation>
    </message>
    <message>
        <source>of a screw; default the shortest that bites well</source>
        <translation>einer Schraube; sonst die kürzeste, die gut greift</translation>
    </message>
    <message>
        <source>a photo of an old piece behind a view, to trace its proportions.</source>
        <translation>ein Foto eines alten Möbels hinter einer Ansicht, um seine Proportionen abzunehmen.</translation>
    </message>
    <message>
        <source>the photo, by a path relative to the piece file</source>
        <translation>das Foto, als Pfad von der Möbeldatei aus</translation>
    </message>
    <message>
        <source>the view that it lies behind</source>
        <translation>die Ansicht, hinter der es liegt</translation>
    </message>
    <message>
        <source>x and y, pixels, of four points: lower left, lower right, upper right, upper left</source>
        <translation>x und y, Bildpunkte, von vier Punkten: unten links, unten rechts, oben rechts, oben links</translation>
    </message>
    <message>
        <source>from the left points to the right ones, on the piece</source>
        <translation>von den linken Punkten zu den rechten, am Möbel</translation>
    </message>
    <message>
        <source>from the lower points to the upper ones, on the piece</source>
        <translation>von den unteren Punkten zu den oberen, am Möbel</translation>
    </message>
    <message>
        <source>where the lower left point lies in the view, from the case&apos;s left or front</source>
        <translation>wo der Punkt unten links in der Ansicht liegt, von der linken Seite oder der Vorderseite des Korpus</translation>
    </message>
    <message>
        <source>and from the floor</source>
        <translation>und vom Boden</translation>
    </message>
    <message>
        <source>how much of the photo is faded out</source>
        <translation>wie weit das Foto verblasst ist</translation>
    </message>
    <message>
        <source>words on anything.</source>
        <translation>Worte zu irgendetwas.</translation>
    </message>
    <message>
        <source>what it is about: id of a board, a joint or an opening</source>
        <translation>worum es geht: Kennung eines Bretts, einer Verbindung oder eines Fachs</translation>
    </message>
    <message>
        <source>the words, as they are printed</source>
        <translation>die Worte, wie sie gedruckt werden</translation>
    </message>
    <message>
        <source>a finding that a person has looked at, with the reason.</source>
        <translation>ein Befund, den jemand angesehen hat, mit der Begründung.</translation>
    </message>
    <message>
        <source>of the finding, as the list of findings has it</source>
        <translation>des Befunds, wie die Liste der Befunde ihn hat</translation>
    </message>
    <message>
        <source>the board or place that is meant; all where nothing is said</source>
        <translation>das Brett oder die Stelle, die gemeint ist; alle, wo nichts gesagt ist</translation>
    </message>
    <message>
        <source>why it is all right here; printed with it</source>
        <translation>warum es hier in Ordnung ist; wird mitgedruckt</translation>
    </message>
    <message>
        <source>where a person wants a dimension to stand, whatever the sizes become.</source>
        <translation>wo jemand ein Maß stehen haben will, wie groß auch immer das Möbel wird.</translation>
    </message>
    <message>
        <source>the dimension: &quot;feature/feature@view&quot;</source>
        <translation>das Maß: &quot;Stelle/Stelle@Ansicht&quot;</translation>
    </message>
    <message>
        <source>of the view; default where it costs least</source>
        <translation>der Ansicht; ohne Angabe dort, wo es am wenigsten stört</translation>
    </message>
    <message>
        <source>1 for the row nearest to the view</source>
        <translation>1 für die Reihe, die der Ansicht am nächsten steht</translation>
    </message>
    <message>
        <source>how much further out its row stands, on paper</source>
        <translation>wie viel weiter außen seine Reihe steht, auf dem Papier</translation>
    </message>
    <message>
        <source>a dimension that a person wants besides those that are there.</source>
        <translation>ein Maß, das jemand außer den vorhandenen haben will.</translation>
    </message>
    <message>
        <source>the two features: &quot;feature/feature&quot;</source>
        <translation>die beiden Stellen: &quot;Stelle/Stelle&quot;</translation>
    </message>
    <message>
        <source>&quot;front&quot;, &quot;side&quot;, &quot;plan&quot;, &quot;section.A&quot;, &quot;detail.d1&quot;</source>
        <translation>&quot;front&quot; (vorn), &quot;side&quot; (Seite), &quot;plan&quot; (oben), &quot;section.A&quot; (Schnitt), &quot;detail.d1&quot;</translation>
    </message>
    <message>
        <source>a cutting plane moved, or one more.</source>
        <translation>eine verschobene Schnittebene oder eine weitere.</translation>
    </message>
    <message>
        <source>from the case&apos;s left side, the front plane or the floor</source>
        <translation>von der linken Seite des Korpus, der vorderen Ebene oder dem Boden</translation>
    </message>
    <message>
        <source>which way it runs; needed for a letter that isn&apos;t there yet</source>
        <translation>in welche Richtung sie läuft; nötig für einen Buchstaben, den es noch nicht gibt</translation>
    </message>
    <message>
        <source>frozen ones, the last one last</source>
        <translation>eingefrorene, die letzte zuletzt</translation>
    </message>
    <message>
        <source>what a revision froze, and what had been cut by then.</source>
        <translation>was ein Änderungsstand eingefroren hat und was bis dahin zugeschnitten war.</translation>
    </message>
    <message>
        <source>on which it was frozen</source>
        <translation>an dem er eingefroren wurde</translation>
    </message>
    <message>
        <source>what has changed, for the revision table</source>
        <translation>was sich geändert hat, für die Änderungsliste</translation>
    </message>
    <message>
        <source>a line a board: id, label, sizes, fingerprint; freezing writes it</source>
        <translation>eine Zeile je Brett: Kennung, Nummer, Maße, Prüfsumme; das Einfrieren schreibt sie</translation>
    </message>
    <message>
        <source>boards already cut, by id or label</source>
        <translation>schon zugeschnittene Bretter, mit Kennung oder Nummer</translation>
    </message>
    <message>
        <source>Everything that a shop file says.</source>
        <translation>Alles, was eine Werkstattdatei sagt.</translation>
    </message>
    <message>
        <source>whose it is; the unit of bare numbers in this file; the money that prices are in.</source>
        <translation>wem sie gehört; die Einheit bloßer Zahlen in dieser Datei; das Geld, in dem Preise stehen.</translation>
    </message>
    <message>
        <source>of the shop</source>
        <translation>der Werkstatt</translation>
    </message>
    <message>
        <source>of bare numbers in this file</source>
        <translation>für Zahlen ohne Einheit in dieser Datei</translation>
    </message>
    <message>
        <source>that prices are in: EUR, $</source>
        <translation>der Preise: EUR, $</translation>
    </message>
    <message>
        <source>what sawing costs in wood. Defaults are common practice.</source>
        <translation>was das Sägen an Holz kostet. Die Vorgaben sind üblich.</translation>
    </message>
    <message>
        <source>what the blade takes; measured in a cut, not read off the blade</source>
        <translation>was das Blatt wegnimmt; im Schnitt gemessen, nicht vom Blatt abgelesen</translation>
    </message>
    <message>
        <source>cut off each end of a board: checks, paint, out of square</source>
        <translation>von jedem Ende eines Bretts abgeschnitten: Risse, Farbe, nicht im Winkel</translation>
    </message>
    <message>
        <source>cut off each edge of a sheet before the first part</source>
        <translation>von jeder Kante einer Platte abgeschnitten, vor dem ersten Teil</translation>
    </message>
    <message>
        <source>lost on each edge of a board that is jointed</source>
        <translation>geht an jeder gefügten Kante eines Bretts verloren</translation>
    </message>
    <message>
        <source>a hand-held router and what its files for a machine shop should look like.</source>
        <translation>eine Handoberfräse, und wie die Dateien für einen Maschinenbetrieb aussehen sollen.</translation>
    </message>
    <message>
        <source>from the cutter&apos;s middle to the base&apos;s guiding edge</source>
        <translation>von der Fräsermitte bis zur Führungskante der Grundplatte</translation>
    </message>
    <message>
        <source>version of DXF that the machine shop reads</source>
        <translation>DXF-Version, die der Maschinenbetrieb liest</translation>
    </message>
    <message>
        <source>left on an outline for the finishing pass</source>
        <translation>bleibt am Umriss für den Schlichtgang stehen</translation>
    </message>
    <message>
        <source>from a sheet&apos;s edges to the first part of a nest</source>
        <translation>von den Plattenkanten bis zum ersten verschachtelten Teil</translation>
    </message>
    <message>
        <source>strips across a nested sheet for clamps and screws: from and to, from one end</source>
        <translation>Streifen quer über die Platte für Zwingen und Schrauben: von und bis, von einem Ende</translation>
    </message>
    <message>
        <source>score the layout of second settings instead of only noting it</source>
        <translation>zweite Aufspannungen anritzen, statt sie nur zu vermerken</translation>
    </message>
    <message>
        <source>asked for on outlines, more or less</source>
        <translation>auf Umrisse verlangt, mehr oder weniger</translation>
    </message>
    <message>
        <source>asked for on widths of pockets, more only</source>
        <translation>auf Breiten von Taschen verlangt, nur mehr</translation>
    </message>
    <message>
        <source>asked for on depths of pockets, more only</source>
        <translation>auf Tiefen von Taschen verlangt, nur mehr</translation>
    </message>
    <message>
        <source>asked for on places of holes, more or less</source>
        <translation>auf die Lage von Löchern verlangt, mehr oder weniger</translation>
    </message>
    <message>
        <source>narrower parts need tabs, a skin or other hold-down</source>
        <translation>schmalere Teile brauchen Stege, eine Haut oder andere Halterung</translation>
    </message>
    <message>
        <source>so do parts longer than so many widths</source>
        <translation>ebenso Teile, die länger als so viele Breiten sind</translation>
    </message>
    <message>
        <source>and parts smaller than a square of this side</source>
        <translation>und Teile, die kleiner als ein Quadrat dieser Seite sind</translation>
    </message>
    <message>
        <source>a router cutter or a drill.</source>
        <translation>ein Fräser oder ein Bohrer.</translation>
    </message>
    <message>
        <source>what its end is like</source>
        <translation>wie sein Ende geformt ist</translation>
    </message>
    <message>
        <source>how deep its edges cut</source>
        <translation>wie tief seine Schneiden reichen</translation>
    </message>
    <message>
        <source>it may enter straight down</source>
        <translation>er darf senkrecht eintauchen</translation>
    </message>
    <message>
        <source>of a vee&apos;s point, degrees; default 90</source>
        <translation>der Spitze eines V-Fräsers, Grad; Vorgabe 90</translation>
    </message>
    <message>
        <source>a guide collar for template work.</source>
        <translation>ein Kopierring für Schablonen.</translation>
    </message>
    <message>
        <source>diameter that runs along the template</source>
        <translation>Durchmesser, der an der Schablone entlangläuft</translation>
    </message>
    <message>
        <source>how far it stands out below the base</source>
        <translation>wie weit er unter der Grundplatte vorsteht</translation>
    </message>
    <message>
        <source>boards that the yard sells, rough by quarters or dressed; each width in each length.</source>
        <translation>Bretter, die der Holzhandel führt, sägerau nach Vierteln oder gehobelt; jede Breite in jeder Länge.</translation>
    </message>
    <message>
        <source>by its key in the trade tables; any where nothing is said</source>
        <translation>mit ihrem Schlüssel in den Tabellen; jede, wo nichts gesagt ist</translation>
    </message>
    <message>
        <source>rough thickness as sold: 4/4</source>
        <translation>sägeraue Dicke, wie verkauft: 4/4</translation>
    </message>
    <message>
        <source>of a dressed board, as measured</source>
        <translation>eines gehobelten Bretts, wie gemessen</translation>
    </message>
    <message>
        <source>the trade&apos;s name for a dressed board: &quot;1x8&quot;</source>
        <translation>der Handelsname eines gehobelten Bretts: „1x8“</translation>
    </message>
    <message>
        <source>that it has</source>
        <translation>die es dort gibt</translation>
    </message>
    <message>
        <source>of one, in the shop&apos;s money; where it is given the cheapest layout is sought</source>
        <translation>für eines, im Geld der Werkstatt; ist er gegeben, wird der billigste Schnittplan gesucht</translation>
    </message>
    <message>
        <source>what the price is for</source>
        <translation>wofür der Preis gilt</translation>
    </message>
    <message>
        <source>sheets that the yard sells; grain runs along the length.</source>
        <translation>Platten, die der Holzhandel führt; die Faser läuft der Länge nach.</translation>
    </message>
    <message>
        <source>plywood or panel, by its key in the trade tables; any where nothing is said</source>
        <translation>Sperrholz oder Platte, mit ihrem Schlüssel in den Tabellen; jede, wo nichts gesagt ist</translation>
    </message>
    <message>
        <source>any where nothing is said</source>
        <translation>jede, wo nichts gesagt ist</translation>
    </message>
    <message>
        <source>across the grain</source>
        <translation>quer zur Faser</translation>
    </message>
    <message>
        <source>along the grain</source>
        <translation>längs der Faser</translation>
    </message>
    <message>
        <source>of one sheet, in the shop&apos;s money</source>
        <translation>einer Platte, im Geld der Werkstatt</translation>
    </message>
    <message>
        <source>what lies in the rack; used before anything is bought.</source>
        <translation>was im Regal liegt; wird verwendet, bevor etwas gekauft wird.</translation>
    </message>
    <message>
        <source>by its key in the trade tables</source>
        <translation>mit ihrem Schlüssel aus den Tabellen</translation>
    </message>
    <message>
        <source>how many of that size there are</source>
        <translation>wie viele es in dieser Größe gibt</translation>
    </message>
    <message>
        <source>from and to, from one end: knots, checks, sapwood</source>
        <translation>von und bis, von einem Ende: Äste, Risse, Splint</translation>
    </message>
    <message>
        <source>what a line of the test page measured, along the feed and across it.</source>
        <translation>was eine Strecke der Prüfseite maß, längs und quer zum Papiervorschub.</translation>
    </message>
    <message>
        <source>as it should be</source>
        <translation>wie sie sein sollte</translation>
    </message>
    <message>
        <source>as it measured along the feed</source>
        <translation>wie sie längs zum Vorschub maß</translation>
    </message>
    <message>
        <source>as it measured across</source>
        <translation>wie sie quer dazu maß</translation>
    </message>
    <message>
        <source>what is added to finished sizes for rough ones. Defaults are common practice.</source>
        <translation>was zu Fertigmaßen für Rohmaße dazukommt. Die Vorgaben sind üblich.</translation>
    </message>
    <message>
        <source>of a single board: it is ripped and jointed once</source>
        <translation>eines einzelnen Bretts: es wird einmal besäumt und gefügt</translation>
    </message>
    <message>
        <source>of a single board: both ends are trimmed</source>
        <translation>eines einzelnen Bretts: beide Enden werden gekappt</translation>
    </message>
    <message>
        <source>of a glued-up panel: both edges are trimmed</source>
        <translation>einer verleimten Fläche: beide Kanten werden besäumt</translation>
    </message>
    <message>
        <source>of a glued-up panel&apos;s boards: their ends are uneven</source>
        <translation>der Bretter einer verleimten Fläche: ihre Enden liegen ungleich</translation>
    </message>
    <message>
        <source>of a sheet&apos;s part: sawn a little large, then trimmed clean</source>
        <translation>eines Plattenteils: etwas größer gesägt, dann sauber nachgeschnitten</translation>
    </message>
    <message>
        <source>how this shop likes things.</source>
        <translation>wie es diese Werkstatt gern hat.</translation>
    </message>
    <message>
        <source>between the fields of CSV lists</source>
        <translation>zwischen den Feldern von CSV-Listen</translation>
    </message>
    <message>
        <source>of the numbers in CSV lists</source>
        <translation>der Zahlen in CSV-Listen</translation>
    </message>
    <message>
        <source>allowance for solid wood where the piece states none, percent; default 15</source>
        <translation>Zuschlag für Massivholz, wo das Stück keinen nennt, Prozent; Vorgabe 15</translation>
    </message>
    <message>
        <source>allowance for sheets where the piece states none, percent; default 15</source>
        <translation>Zuschlag für Platten, wo das Stück keinen nennt, Prozent; Vorgabe 15</translation>
    </message>
    <message>
        <source>rough widths and lengths are rounded up to it; default 1 mm, in inch pieces 1/4 in</source>
        <translation>darauf werden Rohbreiten und Rohlängen aufgerundet; Vorgabe 1 mm, bei Zollstücken 1/4 in</translation>
    </message>
    <message>
        <source>that layouts and covering sheets print on: A4, Letter; default by the piece</source>
        <translation>auf dem Zuschnittpläne und Deckblätter gedruckt werden: A4, Letter; Vorgabe nach dem Stück</translation>
    </message>
    <message>
        <source>shorter ones aren&apos;t kept</source>
        <translation>kürzere werden nicht aufgehoben</translation>
    </message>
    <message>
        <source>narrower ones aren&apos;t kept</source>
        <translation>schmalere werden nicht aufgehoben</translation>
    </message>
    <message>
        <source>the one that templates are printed on, by its id</source>
        <translation>der, auf dem Schablonen gedruckt werden, mit seiner Kennung</translation>
    </message>
    <message>
        <source>width of the roll that templates are printed on; 36 in</source>
        <translation>Breite der Rolle, auf die Schablonen gedruckt werden; 36 in</translation>
    </message>
    <message>
        <source>of its width stays blank, both edges together</source>
        <translation>von ihrer Breite bleibt frei, beide Ränder zusammen</translation>
    </message>
</context>
<context>
    <name>Export</name>
    <message>
        <source>sheets</source>
        <translation>Blätter</translation>
    </message>
    <message>
        <source>templates</source>
        <translation>Schablonen</translation>
    </message>
    <message>
        <source>drawing</source>
        <translation>Zeichnung</translation>
    </message>
    <message>
        <source>cnc</source>
        <translation>Fräsdateien</translation>
    </message>
    <message>
        <source>lists</source>
        <translation>Listen</translation>
    </message>
</context>
<context>
    <name>Exporting</name>
    <message>
        <source>Given up; what was in the folder is as it was.</source>
        <translation>Abgebrochen; was im Ordner lag, ist wie zuvor.</translation>
    </message>
    <message>
        <source>The export ended without a word.</source>
        <translation>Das Schreiben endete ohne ein Wort.</translation>
    </message>
    <message>
        <source>The export can&apos;t be started: {program}</source>
        <translation>Das Schreiben lässt sich nicht starten: {program}</translation>
    </message>
</context>
<context>
    <name>Face</name>
    <message>
        <source>face</source>
        <translation>Bezugsfläche</translation>
    </message>
    <message>
        <source>head</source>
        <translation>Kopfende</translation>
    </message>
    <message>
        <source>foot</source>
        <translation>Fußende</translation>
    </message>
    <message>
        <source>back</source>
        <translation>Rückfläche</translation>
    </message>
    <message>
        <source>far</source>
        <translation>ferne Kante</translation>
    </message>
    <message>
        <source>near</source>
        <translation>Bezugskante</translation>
    </message>
</context>
<context>
    <name>FaultsPage</name>
    <message>
        <source>Faults of the file</source>
        <translation>Fehler der Datei</translation>
    </message>
    <message>
        <source>Text of the piece file</source>
        <translation>Text der Möbeldatei</translation>
    </message>
    <message>
        <source>Read it again</source>
        <translation>Neu lesen</translation>
    </message>
    <message>
        <source>Read the text again</source>
        <translation>Den Text neu lesen</translation>
    </message>
    <message>
        <source>Read the text as it stands here; undo brings back what was</source>
        <translation>Den Text lesen, wie er hier steht; Rückgängig bringt zurück, was war</translation>
    </message>
    <message>
        <source>{name} can&apos;t be shown yet. Put right what is listed; nothing has been changed.</source>
        <translation>{name} lässt sich noch nicht zeigen. Beheben Sie, was aufgeführt ist; es wurde nichts verändert.</translation>
    </message>
</context>
<context>
    <name>Figure</name>
    <message>
        <source>The last one takes what the others leave: change their sizes, or the case&apos;s.</source>
        <translation>Der letzte nimmt, was die anderen übrig lassen: Ändern Sie deren Maße oder die des Korpus.</translation>
    </message>
    <message>
        <source>all alike</source>
        <translation>alle gleich</translation>
    </message>
    <message>
        <source>each larger by a step</source>
        <translation>jeder um eine Stufe größer</translation>
    </message>
    <message>
        <source>each larger by a factor</source>
        <translation>jeder um einen Faktor größer</translation>
    </message>
    <message>
        <source>This size follows from the rule “{rule}”. Type here to give the sizes one by one instead.</source>
        <translation>Dieses Maß folgt aus der Regel „{rule}“. Tippen Sie hier, um die Maße stattdessen einzeln zu geben.</translation>
    </message>
    <message>
        <source>It follows from lid and drawer front. Type here to give it instead.</source>
        <translation>Es folgt aus Klappe und Vorderstück. Tippen Sie hier, um es stattdessen zu geben.</translation>
    </message>
    <message>
        <source>It shares the space between its neighbours. Type here to give it instead.</source>
        <translation>Es teilt sich den Raum zwischen seinen Nachbarn. Tippen Sie hier, um es stattdessen zu geben.</translation>
    </message>
    <message>
        <source>It follows from the levels. Type here to move the level above it.</source>
        <translation>Es folgt aus den Ebenen. Tippen Sie hier, um die Ebene darüber zu verschieben.</translation>
    </message>
    <message>
        <source>It takes what is left under the top: change the case&apos;s height, or the levels.</source>
        <translation>Es nimmt, was unter der Deckplatte übrig bleibt: Ändern Sie die Höhe des Korpus oder die Ebenen.</translation>
    </message>
    <message>
        <source>As wide as the support&apos;s stock and a clearance at each side.</source>
        <translation>So breit wie das Material der Stütze und an jeder Seite etwas Luft.</translation>
    </message>
    <message>
        <source>Bays without a width of their own share what is left. Type here to give this one.</source>
        <translation>Felder ohne eigene Breite teilen sich den Rest. Tippen Sie hier, um dieses zu geben.</translation>
    </message>
    <message>
        <source>The case&apos;s width follows from another one. Type here to give it instead.</source>
        <translation>Die Korpusbreite folgt aus einer anderen Breite. Hier tippen, um sie stattdessen anzugeben.</translation>
    </message>
    <message>
        <source>The top&apos;s depth follows from the slant&apos;s angle. Type here to give it instead of the angle.</source>
        <translation>Die Tiefe der Deckplatte folgt aus dem Winkel der Schräge. Tippen Sie hier, um sie anstelle des Winkels zu geben.</translation>
    </message>
    <message>
        <source>The angle follows from the top&apos;s depth. Type here to give it instead of the top&apos;s depth.</source>
        <translation>Der Winkel folgt aus der Tiefe der Deckplatte. Tippen Sie hier, um ihn anstelle dieser Tiefe zu geben.</translation>
    </message>
    <message>
        <source>Where the slant starts follows from the writing height, the lid&apos;s seat and the slant.</source>
        <translation>Wo die Schräge beginnt, folgt aus der Schreibhöhe, dem Sitz der Klappe und der Schräge.</translation>
    </message>
</context>
<context>
    <name>Filing</name>
    <message>
        <source>Open a piece</source>
        <translation>Ein Möbel öffnen</translation>
    </message>
    <message>
        <source>piece.piece</source>
        <translation>moebel.piece</translation>
    </message>
    <message>
        <source>Save the piece as</source>
        <translation>Das Möbel speichern unter</translation>
    </message>
    <message>
        <source>{name} is there already.</source>
        <translation>{name} gibt es schon.</translation>
    </message>
    <message>
        <source>Not saved yet</source>
        <translation>Noch nicht gespeichert</translation>
    </message>
    <message>
        <source>{name} has changes that are not saved.</source>
        <translation>{name} hat Änderungen, die nicht gespeichert sind.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Leave without saving</source>
        <translation>Ohne Speichern verlassen</translation>
    </message>
    <message>
        <source>Go back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>The program ended before {name} was saved. A copy of the work is there; the file itself is as it was.</source>
        <translation>Das Programm endete, bevor {name} gespeichert war. Eine Kopie der Arbeit ist da; die Datei selbst ist wie zuvor.</translation>
    </message>
    <message>
        <source>Work was kept</source>
        <translation>Arbeit wurde gesichert</translation>
    </message>
    <message>
        <source>Open the copy</source>
        <translation>Kopie öffnen</translation>
    </message>
    <message>
        <source>Throw the copy away</source>
        <translation>Kopie wegwerfen</translation>
    </message>
    <message>
        <source>Decide later</source>
        <translation>Später entscheiden</translation>
    </message>
    <message>
        <source>{name} couldn&apos;t be read here: writing over it loses what is in it.</source>
        <translation>{name} ließ sich hier nicht lesen: Überschreiben löscht, was darin steht.</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>Nicht gespeichert</translation>
    </message>
    <message>
        <source>Save in another place</source>
        <translation>Anderswo speichern</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Noch einmal versuchen</translation>
    </message>
    <message>
        <source>The file is another one</source>
        <translation>Die Datei ist eine andere</translation>
    </message>
    <message>
        <source>{name} was changed by another program since it was opened here.</source>
        <translation>{name} wurde von einem anderen Programm geändert, seit es hier geöffnet ist.</translation>
    </message>
    <message>
        <source>Write over it</source>
        <translation>Überschreiben</translation>
    </message>
    <message>
        <source>What you changed here isn&apos;t saved: reading it again gives that up.</source>
        <translation>Was Sie hier geändert haben, ist nicht gespeichert: Beim neuen Lesen geht es verloren.</translation>
    </message>
    <message>
        <source>The file has changed</source>
        <translation>Die Datei hat sich geändert</translation>
    </message>
    <message>
        <source>Another program changed {name}.</source>
        <translation>Ein anderes Programm hat {name} geändert.</translation>
    </message>
    <message>
        <source>Read it again</source>
        <translation>Neu lesen</translation>
    </message>
    <message>
        <source>Keep what is here</source>
        <translation>Behalten, was hier steht</translation>
    </message>
</context>
<context>
    <name>Finding</name>
    <message>
        <source>Line {line}</source>
        <translation>Zeile {line}</translation>
    </message>
    <message>
        <source>found {found}</source>
        <translation>gefunden: {found}</translation>
    </message>
    <message>
        <source>{message} (accepted: {reason})</source>
        <translation>{message} (hingenommen: {reason})</translation>
    </message>
    <message>
        <source>must be fixed</source>
        <translation>muss behoben werden</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
</context>
<context>
    <name>FindingsPanel</name>
    <message>
        <source>Findings, worst first</source>
        <translation>Befunde, die schlimmsten zuerst</translation>
    </message>
    <message>
        <source>Set the value that would mend it</source>
        <translation>Den Wert setzen, der es behebt</translation>
    </message>
    <message>
        <source>Show the input</source>
        <translation>Eingabe zeigen</translation>
    </message>
    <message>
        <source>Show the input that it speaks of</source>
        <translation>Die Eingabe zeigen, um die es geht</translation>
    </message>
    <message>
        <source>Accept with a reason</source>
        <translation>Mit Begründung hinnehmen</translation>
    </message>
    <message>
        <source>Accept this finding with a reason</source>
        <translation>Diesen Befund mit Begründung hinnehmen</translation>
    </message>
    <message>
        <source>Set {name} to {value}</source>
        <translation>{name} auf {value} setzen</translation>
    </message>
    <message>
        <source>Nothing found wrong</source>
        <translation>Kein Fehler gefunden</translation>
    </message>
    <message>
        <source>{worst} must be fixed, {rows} in all</source>
        <translation>{worst} zu beheben, {rows} insgesamt</translation>
    </message>
    <message>
        <source>{worst} must be fixed</source>
        <translation>{worst} zu beheben</translation>
    </message>
    <message>
        <source>Nothing must be fixed; {rows} to look at</source>
        <translation>Nichts ist zu beheben; {rows} zum Ansehen</translation>
    </message>
</context>
<context>
    <name>FormPanel</name>
    <message>
        <source>Find an input</source>
        <translation>Eingabe suchen</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>Add a stock, a note or another keyed table</source>
        <translation>Ein Material, eine Notiz oder eine andere Tabelle mit Schlüssel hinzufügen</translation>
    </message>
    <message>
        <source>Inputs of the piece</source>
        <translation>Eingaben des Möbels</translation>
    </message>
    <message>
        <source>Click a field to read what it means. An empty field keeps its default.</source>
        <translation>Klicken Sie in ein Feld, um zu lesen, was es bedeutet. Ein leeres Feld behält seine Vorgabe.</translation>
    </message>
    <message>
        <source>It must be given.</source>
        <translation>Es muss angegeben werden.</translation>
    </message>
    <message>
        <source>Left empty, it is worked out.</source>
        <translation>Leer gelassen wird es ausgerechnet.</translation>
    </message>
    <message>
        <source>Left empty: {default}.</source>
        <translation>Leer gelassen: {default}.</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Herausnehmen</translation>
    </message>
    <message>
        <source>Take {name} out of the file</source>
        <translation>{name} aus der Datei nehmen</translation>
    </message>
    <message>
        <source>worked out</source>
        <translation>ausgerechnet</translation>
    </message>
    <message>
        <source>default: {value}</source>
        <translation>Vorgabe: {value}</translation>
    </message>
</context>
<context>
    <name>Freeze</name>
    <message>
        <source>A revision is frozen of the file itself: choose “as in the file” first.</source>
        <translation>Eingefroren wird die Datei selbst: Wählen Sie erst „wie in der Datei“.</translation>
    </message>
    <message>
        <source>Freeze a revision</source>
        <translation>Änderungsstand einfrieren</translation>
    </message>
    <message>
        <source>What is the revision called? Later changes are told against it.</source>
        <translation>Wie heißt der Änderungsstand? Spätere Änderungen werden an ihm gemessen.</translation>
    </message>
    <message>
        <source>Which boards are cut already? Their labels, such as 3 7.1a; none if nothing is cut.</source>
        <translation>Welche Bretter sind schon zugeschnitten? Ihre Nummern, etwa 3 7.1a; keine, wenn nichts geschnitten ist.</translation>
    </message>
    <message>
        <source>Freeze revision {name}</source>
        <translation>Änderungsstand {name} einfrieren</translation>
    </message>
    <message>
        <source>Revision {name}: {count} boards frozen; save the file to keep it.</source>
        <translation>Änderungsstand {name}: {count} Bretter eingefroren; speichern Sie die Datei, um ihn zu behalten.</translation>
    </message>
</context>
<context>
    <name>Hand</name>
    <message>
        <source>moved by {by}</source>
        <translation>bewegt um {by}</translation>
    </message>
    <message>
        <source>Stops here: {why}</source>
        <translation>Hier ist Schluss: {why}</translation>
    </message>
</context>
<context>
    <name>Handle</name>
    <message>
        <source>half the depth</source>
        <translation>halbe Tiefe</translation>
    </message>
    <message>
        <source>a third of the depth</source>
        <translation>ein Drittel der Tiefe</translation>
    </message>
    <message>
        <source>The angle now follows from the top depth; it is no longer given.</source>
        <translation>Der Winkel folgt jetzt aus der oberen Tiefe; er ist nicht mehr gegeben.</translation>
    </message>
    <message>
        <source>{name} and {next} alike</source>
        <translation>{name} und {next} gleich</translation>
    </message>
    <message>
        <source>like {name}</source>
        <translation>wie {name}</translation>
    </message>
    <message>
        <source>The sizes are now given one by one; the rule no longer sets them.</source>
        <translation>Die Maße sind jetzt einzeln gegeben; die Regel bestimmt sie nicht mehr.</translation>
    </message>
    <message>
        <source>The rail&apos;s height is now given; it no longer follows from lid and front.</source>
        <translation>Die Höhe der Traverse ist jetzt gegeben; sie folgt nicht mehr aus Klappe und Vorderstück.</translation>
    </message>
    <message>
        <source>halfway</source>
        <translation>auf halbem Weg</translation>
    </message>
    <message>
        <source>The level&apos;s height is now given; it no longer follows from its neighbours.</source>
        <translation>Die Höhe der Ebene ist jetzt gegeben; sie folgt nicht mehr aus ihren Nachbarn.</translation>
    </message>
    <message>
        <source>all bays without a width alike</source>
        <translation>alle Felder ohne Breite gleich</translation>
    </message>
    <message>
        <source>The bay&apos;s width is now given; the bays without one share what is left.</source>
        <translation>Die Breite des Felds ist jetzt gegeben; die Felder ohne Breite teilen sich den Rest.</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>Begin</source>
        <translation>Anfangen</translation>
    </message>
    <message>
        <source>Choose one of the starting pieces. It is a whole desk already: every board, joint and drawer is there.</source>
        <translation>Wählen Sie eines der Ausgangsmöbel. Es ist schon ein ganzes Möbel: Jedes Brett, jede Verbindung, jeder Schubkasten ist da.</translation>
    </message>
    <message>
        <source>Shape it</source>
        <translation>Formen</translation>
    </message>
    <message>
        <source>Take hold of a green bar on the drawing and drag: width, height, depth, the slant, the writing height, the rails between drawers. The size runs along beside the pointer. It holds to whole steps, to equal drawers and to plain ratios; with Shift it goes in fine steps. Escape gives up. Where the piece can&apos;t be built any further, the drag stops and says why.</source>
        <translation>Fassen Sie auf der Zeichnung einen grünen Griff und ziehen Sie: Breite, Höhe, Tiefe, Schräge, Schreibhöhe, die Traversen zwischen den Schubkästen. Das Maß läuft neben dem Zeiger mit. Es rastet an ganzen Schritten, gleichen Schubkästen und einfachen Verhältnissen ein; mit Umschalt geht es in feinen Schritten. Escape bricht ab. Wo sich das Möbel nicht weiter bauen lässt, hält der Zug an und sagt, warum.</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Tippen</translation>
    </message>
    <message>
        <source>Click a dimension and type: 36 1/2, 800 mm, 31 1/2 + 3/4, or a part of another size such as 1/2 of depth. A dimension that follows from others says what drives it; typing into it takes the other one&apos;s place.</source>
        <translation>Klicken Sie ein Maß an und tippen Sie: 36 1/2, 800 mm, 31 1/2 + 3/4 oder einen Teil eines anderen Maßes wie 1/2 von Tiefe. Ein Maß, das aus anderen folgt, sagt, was es bestimmt; was Sie dort tippen, tritt an dessen Stelle.</translation>
    </message>
    <message>
        <source>Decide the rest</source>
        <translation>Den Rest entscheiden</translation>
    </message>
    <message>
        <source>Under Sizes stands every other choice: stocks, lid, drawers, plinth, seasons, sheets. Empty fields keep their defaults. A sketch shows what a word means.</source>
        <translation>Unter Maße steht alles Übrige: Material, Klappe, Schubkästen, Sockel, Jahreszeiten, Blätter. Leere Felder behalten ihre Vorgabe. Eine Skizze zeigt, was ein Wort bedeutet.</translation>
    </message>
    <message>
        <source>Look at the findings</source>
        <translation>Die Befunde ansehen</translation>
    </message>
    <message>
        <source>Under the drawing stands what must be fixed (filled), what to be careful about (half filled) and what to know (open). Choose one and its boards light up. Where there is a right value, one button sets it. What is all right in your case you accept with a reason.</source>
        <translation>Unter der Zeichnung steht, was behoben werden muss (gefüllt), wo Vorsicht gilt (halb gefüllt) und was man wissen sollte (offen). Wählen Sie einen Befund, und seine Bretter leuchten auf. Wo es einen richtigen Wert gibt, setzt ihn eine Taste. Was in Ihrem Fall in Ordnung ist, nehmen Sie mit Begründung hin.</translation>
    </message>
    <message>
        <source>Look at it from all sides</source>
        <translation>Von allen Seiten ansehen</translation>
    </message>
    <message>
        <source>Picture opens a window: turn the desk with the mouse, open lid and drawers. What runs into something is hatched.</source>
        <translation>Bild öffnet ein Fenster: Drehen Sie das Möbel mit der Maus, öffnen Sie Klappe und Schubkästen. Was irgendwo anstößt, ist schraffiert.</translation>
    </message>
    <message>
        <source>Get it made</source>
        <translation>Bauen</translation>
    </message>
    <message>
        <source>Sheets shows each page as it prints. Write the package puts sheets, full-size templates, drawings for the router, and lists into a folder. Print templates at 100 %, and measure the check line before you trust them.</source>
        <translation>Blätter zeigt jede Seite, wie sie gedruckt wird. Mappe schreiben legt Blätter, Schablonen in wahrer Größe, Zeichnungen für die Fräse und Listen in einen Ordner. Drucken Sie Schablonen mit 100 % und messen Sie die Prüfstrecke nach, bevor Sie ihnen trauen.</translation>
    </message>
    <message>
        <source>Set the sheets right</source>
        <translation>Die Blätter zurechtrücken</translation>
    </message>
    <message>
        <source>Show a sheet large and drag a figure to another side or row, or the end of a cutting plane&apos;s line to where it shall cut; draw from one edge to another for one more dimension. It stays so whatever the sizes become. Delete puts back what you chose.</source>
        <translation>Zeigen Sie ein Blatt groß und ziehen Sie eine Maßzahl auf eine andere Seite oder Reihe, oder das Ende einer Schnittlinie dorthin, wo geschnitten werden soll; ziehen Sie von einer Kante zu einer anderen für ein weiteres Maß. Es bleibt so, wie auch immer die Maße werden. Entf setzt zurück, was Sie gewählt haben.</translation>
    </message>
    <message>
        <source>Stay safe</source>
        <translation>Sicher bleiben</translation>
    </message>
    <message>
        <source>Nothing is lost: what isn&apos;t saved is kept aside every 20 seconds and offered at the next start. For blades, routers and finishes the machine&apos;s manual and your local rules come first.</source>
        <translation>Nichts geht verloren: Was nicht gespeichert ist, wird alle 20 Sekunden gesichert und beim nächsten Start angeboten. Bei Sägeblättern, Fräsen und Oberflächenmitteln gehen die Anleitung der Maschine und die örtlichen Vorschriften vor.</translation>
    </message>
</context>
<context>
    <name>HelpWindow</name>
    <message>
        <source>The first ten minutes</source>
        <translation>Die ersten zehn Minuten</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>Commands</source>
        <translation>Befehle</translation>
    </message>
</context>
<context>
    <name>Input</name>
    <message>
        <source>Format</source>
        <translation>Format</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Bezeichnung</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Revision</source>
        <translation>Änderungsstand</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Eigentümer</translation>
    </message>
    <message>
        <source>Drawn by</source>
        <translation>Gezeichnet von</translation>
    </message>
    <message>
        <source>Approved by</source>
        <translation>Freigegeben von</translation>
    </message>
    <message>
        <source>Shop</source>
        <translation>Werkstattdatei</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Top width</source>
        <translation>Breite der Deckplatte</translation>
    </message>
    <message>
        <source>Foot width</source>
        <translation>Breite am Fuß</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Top joint</source>
        <translation>Verbindung der Deckplatte</translation>
    </message>
    <message>
        <source>Overhang</source>
        <translation>Überstand</translation>
    </message>
    <message>
        <source>Dado</source>
        <translation>Quernut</translation>
    </message>
    <message>
        <source>Dado depth</source>
        <translation>Tiefe der Quernut</translation>
    </message>
    <message>
        <source>Dado stop</source>
        <translation>Absatz der Quernut</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Passung</translation>
    </message>
    <message>
        <source>Relief</source>
        <translation>Luft am Nutgrund</translation>
    </message>
    <message>
        <source>Top rail</source>
        <translation>Obere Traverse</translation>
    </message>
    <message>
        <source>Cutter radius</source>
        <translation>Fräserradius</translation>
    </message>
    <message>
        <source>Tails</source>
        <translation>Schwalben</translation>
    </message>
    <message>
        <source>Tail slope</source>
        <translation>Schwalbenschräge</translation>
    </message>
    <message>
        <source>Tail pitch</source>
        <translation>Schwalbenabstand</translation>
    </message>
    <message>
        <source>Dovetails</source>
        <translation>Zinkung</translation>
    </message>
    <message>
        <source>Dovetail lap</source>
        <translation>Deckholz der Zinkung</translation>
    </message>
    <message>
        <source>Top edge</source>
        <translation>Kante der Deckplatte</translation>
    </message>
    <message>
        <source>Top edge size</source>
        <translation>Größe des Kantenprofils</translation>
    </message>
    <message>
        <source>Writing height</source>
        <translation>Schreibhöhe</translation>
    </message>
    <message>
        <source>Angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>Top depth</source>
        <translation>Obere Tiefe</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Beginn</translation>
    </message>
    <message>
        <source>Seat</source>
        <translation>Sitz der Klappe</translation>
    </message>
    <message>
        <source>Hinge edge</source>
        <translation>Bandkante</translation>
    </message>
    <message>
        <source>Joint gap</source>
        <translation>Fuge</translation>
    </message>
    <message>
        <source>Pin above writing</source>
        <translation>Bandstift über der Schreibfläche</translation>
    </message>
    <message>
        <source>Pin behind front</source>
        <translation>Bandstift hinter der Vorderebene</translation>
    </message>
    <message>
        <source>Species</source>
        <translation>Holzart</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Nominal</source>
        <translation>Nennmaß</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Schnitt</translation>
    </message>
    <message>
        <source>Coefficient</source>
        <translation>Schwindmaß</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Rohdichte</translation>
    </message>
    <message>
        <source>Stiffness</source>
        <translation>Elastizitätsmodul</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Widths</source>
        <translation>Breiten</translation>
    </message>
    <message>
        <source>Jointing</source>
        <translation>Fügeverlust</translation>
    </message>
    <message>
        <source>Waste</source>
        <translation>Verschnitt</translation>
    </message>
    <message>
        <source>Waste reason</source>
        <translation>Grund des Verschnitts</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Plattenformat</translation>
    </message>
    <message>
        <source>Turn</source>
        <translation>Drehen</translation>
    </message>
    <message>
        <source>Member</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Oberkante</translation>
    </message>
    <message>
        <source>Above</source>
        <translation>Über</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Geteilt</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Schlüssel</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>Regel</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation>Verhältnis</translation>
    </message>
    <message>
        <source>Sizes</source>
        <translation>Maße</translation>
    </message>
    <message>
        <source>Fill</source>
        <translation>Füllung</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Vorderstück</translation>
    </message>
    <message>
        <source>Lip</source>
        <translation>Überschlag</translation>
    </message>
    <message>
        <source>Lip left</source>
        <translation>Überschlag links</translation>
    </message>
    <message>
        <source>Lip right</source>
        <translation>Überschlag rechts</translation>
    </message>
    <message>
        <source>Lip top</source>
        <translation>Überschlag oben</translation>
    </message>
    <message>
        <source>Lip bottom</source>
        <translation>Überschlag unten</translation>
    </message>
    <message>
        <source>Lip thickness</source>
        <translation>Dicke des Überschlags</translation>
    </message>
    <message>
        <source>Side clearance</source>
        <translation>Luft an den Seiten</translation>
    </message>
    <message>
        <source>Top clearance</source>
        <translation>Luft oben</translation>
    </message>
    <message>
        <source>Reveal</source>
        <translation>Sichtfuge</translation>
    </message>
    <message>
        <source>Front joint</source>
        <translation>Verbindung vorn</translation>
    </message>
    <message>
        <source>Back joint</source>
        <translation>Verbindung hinten</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Eingriff</translation>
    </message>
    <message>
        <source>Groove up</source>
        <translation>Nut über Unterkante</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>Absenkung</translation>
    </message>
    <message>
        <source>Edge</source>
        <translation>Kante</translation>
    </message>
    <message>
        <source>Edge size</source>
        <translation>Profilgröße</translation>
    </message>
    <message>
        <source>Knobs</source>
        <translation>Knöpfe</translation>
    </message>
    <message>
        <source>Handle</source>
        <translation>Griff</translation>
    </message>
    <message>
        <source>Knob diameter</source>
        <translation>Knopfdurchmesser</translation>
    </message>
    <message>
        <source>Knob projection</source>
        <translation>Knopfvorstand</translation>
    </message>
    <message>
        <source>Pull centres</source>
        <translation>Lochabstand</translation>
    </message>
    <message>
        <source>Rabbet</source>
        <translation>Falz</translation>
    </message>
    <message>
        <source>Lap</source>
        <translation>Überdeckung</translation>
    </message>
    <message>
        <source>Clearance</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Bevel</source>
        <translation>Abschrägung</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>Enden</translation>
    </message>
    <message>
        <source>Glue</source>
        <translation>Leim</translation>
    </message>
    <message>
        <source>Cap</source>
        <translation>Hirnleiste</translation>
    </message>
    <message>
        <source>Tongue</source>
        <translation>Feder</translation>
    </message>
    <message>
        <source>Tongue below</source>
        <translation>Feder unter</translation>
    </message>
    <message>
        <source>Groove room</source>
        <translation>Luft in der Nut</translation>
    </message>
    <message>
        <source>Pegs</source>
        <translation>Holznägel</translation>
    </message>
    <message>
        <source>Peg</source>
        <translation>Holznagel</translation>
    </message>
    <message>
        <source>Rabbet bevel</source>
        <translation>Falzneigung</translation>
    </message>
    <message>
        <source>Lock</source>
        <translation>Schloss</translation>
    </message>
    <message>
        <source>Lock width</source>
        <translation>Schlossbreite</translation>
    </message>
    <message>
        <source>Lock height</source>
        <translation>Schlosshöhe</translation>
    </message>
    <message>
        <source>Lock depth</source>
        <translation>Schlosstiefe</translation>
    </message>
    <message>
        <source>Keyhole</source>
        <translation>Schlüsselloch</translation>
    </message>
    <message>
        <source>Bolt</source>
        <translation>Riegel</translation>
    </message>
    <message>
        <source>Ledge</source>
        <translation>Buchleiste</translation>
    </message>
    <message>
        <source>Hinges</source>
        <translation>Bänder</translation>
    </message>
    <message>
        <source>Stay angle</source>
        <translation>Haltewinkel</translation>
    </message>
    <message>
        <source>Stay out</source>
        <translation>Halter auf der Klappe</translation>
    </message>
    <message>
        <source>Stay up</source>
        <translation>Halter an der Seite</translation>
    </message>
    <message>
        <source>Hinge length</source>
        <translation>Bandlänge</translation>
    </message>
    <message>
        <source>Hinge leaf</source>
        <translation>Bandlappen</translation>
    </message>
    <message>
        <source>Hinge thickness</source>
        <translation>Banddicke</translation>
    </message>
    <message>
        <source>Clearance above</source>
        <translation>Luft darüber</translation>
    </message>
    <message>
        <source>Reach</source>
        <translation>Auszug</translation>
    </message>
    <message>
        <source>Layers</source>
        <translation>Lagen</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Kopfstück</translation>
    </message>
    <message>
        <source>Divider</source>
        <translation>Trennwand</translation>
    </message>
    <message>
        <source>Foot gap</source>
        <translation>Bodenluft</translation>
    </message>
    <message>
        <source>Block</source>
        <translation>Fußklotz</translation>
    </message>
    <message>
        <source>Feet</source>
        <translation>Füße</translation>
    </message>
    <message>
        <source>Foot</source>
        <translation>Fuß</translation>
    </message>
    <message>
        <source>Rise</source>
        <translation>Höhe der Schweifung</translation>
    </message>
    <message>
        <source>Foot path</source>
        <translation>Fußlinie</translation>
    </message>
    <message>
        <source>Mitre</source>
        <translation>Gehrung</translation>
    </message>
    <message>
        <source>Glue blocks</source>
        <translation>Leimklötze</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Brett</translation>
    </message>
    <message>
        <source>Gap</source>
        <translation>Fuge</translation>
    </message>
    <message>
        <source>Panels</source>
        <translation>Füllungen</translation>
    </message>
    <message>
        <source>Rabbet depth</source>
        <translation>Falztiefe</translation>
    </message>
    <message>
        <source>Rabbet width</source>
        <translation>Falzbreite</translation>
    </message>
    <message>
        <source>Rail</source>
        <translation>Traverse</translation>
    </message>
    <message>
        <source>Rear rail</source>
        <translation>Hintere Traverse</translation>
    </message>
    <message>
        <source>Runner</source>
        <translation>Laufleiste</translation>
    </message>
    <message>
        <source>Fixing</source>
        <translation>Befestigung</translation>
    </message>
    <message>
        <source>Tenon</source>
        <translation>Zapfen</translation>
    </message>
    <message>
        <source>Mortise</source>
        <translation>Zapfenloch</translation>
    </message>
    <message>
        <source>Dust panels</source>
        <translation>Staubböden</translation>
    </message>
    <message>
        <source>Middle over</source>
        <translation>Mittelleiste ab</translation>
    </message>
    <message>
        <source>Stops</source>
        <translation>Anschläge</translation>
    </message>
    <message>
        <source>Pitch</source>
        <translation>Lochabstand</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>Setback</source>
        <translation>Randabstand</translation>
    </message>
    <message>
        <source>Spare</source>
        <translation>Weitere Löcher</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Spiel</translation>
    </message>
    <message>
        <source>Strip</source>
        <translation>Leiste</translation>
    </message>
    <message>
        <source>Guide</source>
        <translation>Streichleiste</translation>
    </message>
    <message>
        <source>Kicker</source>
        <translation>Kippleiste</translation>
    </message>
    <message>
        <source>Stile</source>
        <translation>Aufrechter Fries</translation>
    </message>
    <message>
        <source>Upper</source>
        <translation>Oben</translation>
    </message>
    <message>
        <source>Lower</source>
        <translation>Unten</translation>
    </message>
    <message>
        <source>Front depth</source>
        <translation>Vordere Tiefe</translation>
    </message>
    <message>
        <source>Shelves</source>
        <translation>Böden</translation>
    </message>
    <message>
        <source>Drawers</source>
        <translation>Schubkästen</translation>
    </message>
    <message>
        <source>Bracket</source>
        <translation>Bogen</translation>
    </message>
    <message>
        <source>Bays</source>
        <translation>Felder</translation>
    </message>
    <message>
        <source>Proud</source>
        <translation>Vorstand</translation>
    </message>
    <message>
        <source>Knob</source>
        <translation>Knopf</translation>
    </message>
    <message>
        <source>Groove</source>
        <translation>Nut</translation>
    </message>
    <message>
        <source>Face</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>Along</source>
        <translation>Längs</translation>
    </message>
    <message>
        <source>Radius</source>
        <translation>Radius</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Reihe</translation>
    </message>
    <message>
        <source>Offset</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>At</source>
        <translation>Bei</translation>
    </message>
    <message>
        <source>Cuts</source>
        <translation>Schneidet</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>Kerf</source>
        <translation>Schnittfuge</translation>
    </message>
    <message>
        <source>End trim</source>
        <translation>Endschnitt</translation>
    </message>
    <message>
        <source>Edge trim</source>
        <translation>Kantenschnitt</translation>
    </message>
    <message>
        <source>Edge loss</source>
        <translation>Kantenverlust</translation>
    </message>
    <message>
        <source>Base</source>
        <translation>Sockel</translation>
    </message>
    <message>
        <source>Allowance</source>
        <translation>Aufmaß</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Rand</translation>
    </message>
    <message>
        <source>Keep out</source>
        <translation>Freizuhalten</translation>
    </message>
    <message>
        <source>Marks</source>
        <translation>Anrisse</translation>
    </message>
    <message>
        <source>Outline tolerance</source>
        <translation>Toleranz des Umrisses</translation>
    </message>
    <message>
        <source>Width tolerance</source>
        <translation>Toleranz der Breite</translation>
    </message>
    <message>
        <source>Depth tolerance</source>
        <translation>Toleranz der Tiefe</translation>
    </message>
    <message>
        <source>Hole tolerance</source>
        <translation>Toleranz der Löcher</translation>
    </message>
    <message>
        <source>Narrow</source>
        <translation>Schmal</translation>
    </message>
    <message>
        <source>Slender</source>
        <translation>Schlank</translation>
    </message>
    <message>
        <source>Small</source>
        <translation>Klein</translation>
    </message>
    <message>
        <source>Cutting length</source>
        <translation>Schneidenlänge</translation>
    </message>
    <message>
        <source>Plunge</source>
        <translation>Taucht ein</translation>
    </message>
    <message>
        <source>Outside</source>
        <translation>Außendurchmesser</translation>
    </message>
    <message>
        <source>Quarters</source>
        <translation>Viertel</translation>
    </message>
    <message>
        <source>Lengths</source>
        <translation>Längen</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>Per</source>
        <translation>Je</translation>
    </message>
    <message>
        <source>Roll</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>Roll margin</source>
        <translation>Rand der Rolle</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Count</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>Defects</source>
        <translation>Fehlstellen</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Strecke</translation>
    </message>
    <message>
        <source>Feed</source>
        <translation>Längs</translation>
    </message>
    <message>
        <source>Across</source>
        <translation>Quer</translation>
    </message>
    <message>
        <source>DXF</source>
        <translation>DXF</translation>
    </message>
    <message>
        <source>Board width</source>
        <translation>Brettbreite</translation>
    </message>
    <message>
        <source>Board length</source>
        <translation>Brettlänge</translation>
    </message>
    <message>
        <source>Panel width</source>
        <translation>Flächenbreite</translation>
    </message>
    <message>
        <source>Panel length</source>
        <translation>Flächenlänge</translation>
    </message>
    <message>
        <source>Sheet width</source>
        <translation>Plattenbreite</translation>
    </message>
    <message>
        <source>Sheet length</source>
        <translation>Plattenlänge</translation>
    </message>
    <message>
        <source>Separator</source>
        <translation>Trennzeichen</translation>
    </message>
    <message>
        <source>Waste solid</source>
        <translation>Verschnitt Massivholz</translation>
    </message>
    <message>
        <source>Waste sheet</source>
        <translation>Verschnitt Platten</translation>
    </message>
    <message>
        <source>Rough step</source>
        <translation>Rohmaßschritt</translation>
    </message>
    <message>
        <source>Least offcut length</source>
        <translation>Kleinste Restlänge</translation>
    </message>
    <message>
        <source>Least offcut width</source>
        <translation>Kleinste Restbreite</translation>
    </message>
    <message>
        <source>Printer</source>
        <translation>Drucker</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Absatz</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Spitze</translation>
    </message>
    <message>
        <source>Bracket height</source>
        <translation>Bogenhöhe</translation>
    </message>
    <message>
        <source>Bracket setback</source>
        <translation>Bogenrücksprung</translation>
    </message>
    <message>
        <source>Bracket path</source>
        <translation>Bogenform</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Rückwand</translation>
    </message>
    <message>
        <source>Build</source>
        <translation>Beim Bau</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Trocken</translation>
    </message>
    <message>
        <source>Wet</source>
        <translation>Feucht</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Humidity build</source>
        <translation>Luftfeuchte beim Bau</translation>
    </message>
    <message>
        <source>Humidity dry</source>
        <translation>Luftfeuchte trocken</translation>
    </message>
    <message>
        <source>Humidity wet</source>
        <translation>Luftfeuchte feucht</translation>
    </message>
    <message>
        <source>Shelf</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>Hung</source>
        <translation>Angehängt</translation>
    </message>
    <message>
        <source>Anchored</source>
        <translation>An der Wand befestigt</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Ausführung</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Style</source>
        <translation>Norm</translation>
    </message>
    <message>
        <source>Projection</source>
        <translation>Projektion</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Decimal</source>
        <translation>Dezimalzeichen</translation>
    </message>
    <message>
        <source>Denominator</source>
        <translation>Nenner</translation>
    </message>
    <message>
        <source>Dual</source>
        <translation>Zweite Einheit</translation>
    </message>
    <message>
        <source>Smallest print</source>
        <translation>Kleinste Schrift</translation>
    </message>
    <message>
        <source>Template paper</source>
        <translation>Schablonenpapier</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Ansicht</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Oben</translation>
    </message>
    <message>
        <source>Fade</source>
        <translation>Verblassen</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Woran</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Kennwort</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Begründung</translation>
    </message>
    <message>
        <source>Boards</source>
        <translation>Bretter</translation>
    </message>
</context>
<context>
    <name>Joint</name>
    <message>
        <source>glued</source>
        <translation>geleimt</translation>
    </message>
    <message>
        <source>floats</source>
        <translation>lose</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>trocken</translation>
    </message>
    <message>
        <source>dado</source>
        <translation>Quernut</translation>
    </message>
    <message>
        <source>dovetail</source>
        <translation>Zinkung</translation>
    </message>
    <message>
        <source>butt</source>
        <translation>stumpf</translation>
    </message>
    <message>
        <source>mortise-and-tenon</source>
        <translation>Schlitz und Zapfen</translation>
    </message>
    <message>
        <source>groove</source>
        <translation>Nut</translation>
    </message>
    <message>
        <source>mitre</source>
        <translation>Gehrung</translation>
    </message>
    <message>
        <source>lap</source>
        <translation>Überblattung</translation>
    </message>
    <message>
        <source>v-housing</source>
        <translation>V-Nutverbindung</translation>
    </message>
    <message>
        <source>rabbet</source>
        <translation>Falz</translation>
    </message>
</context>
<context>
    <name>LayoutsPanel</name>
    <message>
        <source>Lay out</source>
        <translation>Aufteilen</translation>
    </message>
    <message>
        <source>Lay the piece out on this shop&apos;s boards and sheets</source>
        <translation>Das Möbel auf Bretter und Platten dieser Werkstatt aufteilen</translation>
    </message>
    <message>
        <source>Give up</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Give up laying out</source>
        <translation>Das Aufteilen abbrechen</translation>
    </message>
    <message>
        <source>Give up laying out; the layouts of before stay</source>
        <translation>Das Aufteilen abbrechen; die vorigen Pläne bleiben</translation>
    </message>
    <message>
        <source>Not laid out yet.</source>
        <translation>Noch nicht aufgeteilt.</translation>
    </message>
    <message>
        <source>Sheet of layouts</source>
        <translation>Zuschnittplan</translation>
    </message>
    <message>
        <source>The layouts as they print</source>
        <translation>Die Zuschnittpläne, wie sie gedruckt werden</translation>
    </message>
    <message>
        <source>What is to be bought</source>
        <translation>Was zu kaufen ist</translation>
    </message>
    <message>
        <source>The piece is being laid out…</source>
        <translation>Das Möbel wird aufgeteilt…</translation>
    </message>
    <message>
        <source>sheets to buy: {count}</source>
        <translation>Platten zu kaufen: {count}</translation>
    </message>
    <message>
        <source>boards to buy: {count}</source>
        <translation>Bretter zu kaufen: {count}</translation>
    </message>
    <message>
        <source>least possible: {count}</source>
        <translation>mindestens nötig: {count}</translation>
    </message>
    <message>
        <source>used from the rack: {count}</source>
        <translation>aus dem Regal verwendet: {count}</translation>
    </message>
    <message>
        <source>{cost} {unit}; no layout costs less than {bound}</source>
        <translation>{cost} {unit}; kein Plan kostet weniger als {bound}</translation>
    </message>
    <message>
        <source>{share} % of the wood used</source>
        <translation>{share} % des Holzes verwendet</translation>
    </message>
</context>
<context>
    <name>Motion</name>
    <message>
        <source>Drawer {key}</source>
        <translation>Schubkasten {key}</translation>
    </message>
    <message>
        <source>Support left</source>
        <translation>Stütze links</translation>
    </message>
    <message>
        <source>Support right</source>
        <translation>Stütze rechts</translation>
    </message>
    <message>
        <source>Lid</source>
        <translation>Klappe</translation>
    </message>
</context>
<context>
    <name>OpenPiece</name>
    <message>
        <source>new piece</source>
        <translation>neues Möbel</translation>
    </message>
</context>
<context>
    <name>PictureView</name>
    <message>
        <source>Picture of the piece</source>
        <translation>Bild des Möbels</translation>
    </message>
    <message>
        <source>Arrow keys turn it, plus and minus make it larger and smaller.</source>
        <translation>Pfeiltasten drehen es, Plus und Minus machen es größer und kleiner.</translation>
    </message>
</context>
<context>
    <name>PictureWindow</name>
    <message>
        <source>Picture</source>
        <translation>Bild</translation>
    </message>
    <message>
        <source>Shaded</source>
        <translation>Schattiert</translation>
    </message>
    <message>
        <source>Shut everything</source>
        <translation>Alles schließen</translation>
    </message>
    <message>
        <source>Shut the lid, push in every drawer and support</source>
        <translation>Die Klappe schließen, alle Schubkästen und Stützen einschieben</translation>
    </message>
    <message>
        <source>These run into each other: {boards}</source>
        <translation>Diese stoßen aneinander: {boards}</translation>
    </message>
    <message>
        <source>Open {name}</source>
        <translation>{name} öffnen</translation>
    </message>
</context>
<context>
    <name>PointPicker</name>
    <message>
        <source>Arrow keys move the mark, with Shift a little; Enter sets a point, or takes it up and puts it down.</source>
        <translation>Pfeiltasten bewegen die Marke, mit Umschalt ein wenig; Eingabe setzt einen Punkt, oder nimmt ihn auf und setzt ihn ab.</translation>
    </message>
    <message>
        <source>Photo: click the four points</source>
        <translation>Foto: die vier Punkte anklicken</translation>
    </message>
</context>
<context>
    <name>Printing</name>
    <message>
        <source>Printing was given up.</source>
        <translation>Das Drucken wurde abgebrochen.</translation>
    </message>
    <message>
        <source>This couldn&apos;t be printed: {why}</source>
        <translation>Das ließ sich nicht drucken: {why}</translation>
    </message>
    <message>
        <source>{count} pages are with the printer.</source>
        <translation>{count} Seiten sind beim Drucker.</translation>
    </message>
</context>
<context>
    <name>ProportionsPanel</name>
    <message>
        <source>Lay over the drawing</source>
        <translation>Über die Zeichnung legen</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>Overlay: {name}</source>
        <translation>Überlagerung: {name}</translation>
    </message>
    <message>
        <source>Ratios of the piece</source>
        <translation>Verhältnisse des Möbels</translation>
    </message>
    <message>
        <source>just {name}</source>
        <translation>genau {name}</translation>
    </message>
    <message>
        <source>{off} {way} {name}</source>
        <translation>{off} {way} {name}</translation>
    </message>
    <message>
        <source>over</source>
        <translation>über</translation>
    </message>
    <message>
        <source>under</source>
        <translation>unter</translation>
    </message>
    <message>
        <source>{more} higher, {times} times</source>
        <translation>{more} höher, {times}-mal</translation>
    </message>
    <message>
        <source>What the piece has</source>
        <translation>Was das Möbel hat</translation>
    </message>
    <message>
        <source>Each drawer opening over the one above it</source>
        <translation>Jedes Kastenfach gegen das darüber</translation>
    </message>
</context>
<context>
    <name>Ratio</name>
    <message>
        <source>width : height</source>
        <translation>Breite : Höhe</translation>
    </message>
    <message>
        <source>height : width</source>
        <translation>Höhe : Breite</translation>
    </message>
    <message>
        <source>depth : width</source>
        <translation>Tiefe : Breite</translation>
    </message>
    <message>
        <source>{name}, upright</source>
        <translation>{name}, hochkant</translation>
    </message>
    <message>
        <source>golden section</source>
        <translation>Goldener Schnitt</translation>
    </message>
    <message>
        <source>thirds</source>
        <translation>Drittel</translation>
    </message>
    <message>
        <source>graduated drawers</source>
        <translation>abgestufte Schubkästen</translation>
    </message>
    <message>
        <source>height : depth</source>
        <translation>Höhe : Tiefe</translation>
    </message>
    <message>
        <source>height : writing height</source>
        <translation>Höhe : Schreibhöhe</translation>
    </message>
    <message>
        <source>width : depth</source>
        <translation>Breite : Tiefe</translation>
    </message>
    <message>
        <source>width : writing height</source>
        <translation>Breite : Schreibhöhe</translation>
    </message>
    <message>
        <source>depth : height</source>
        <translation>Tiefe : Höhe</translation>
    </message>
    <message>
        <source>depth : writing height</source>
        <translation>Tiefe : Schreibhöhe</translation>
    </message>
    <message>
        <source>writing height : height</source>
        <translation>Schreibhöhe : Höhe</translation>
    </message>
    <message>
        <source>writing height : width</source>
        <translation>Schreibhöhe : Breite</translation>
    </message>
    <message>
        <source>writing height : depth</source>
        <translation>Schreibhöhe : Tiefe</translation>
    </message>
</context>
<context>
    <name>Recovery</name>
    <message>
        <source>a piece that was not saved yet</source>
        <translation>ein Möbel, das noch nicht gespeichert war</translation>
    </message>
</context>
<context>
    <name>Sentence</name>
    <message>
        <source>&quot;{0}&quot; in {1}</source>
        <translation>„{0}“ in {1}</translation>
    </message>
    <message>
        <source>&quot;{0}&quot;: expected an address such as case.width</source>
        <translation>„{0}“: erwartet wird eine Adresse wie case.width</translation>
    </message>
    <message>
        <source>({0} in the piece)</source>
        <translation>({0} im Möbel)</translation>
    </message>
    <message>
        <source>, between the sides only</source>
        <translation>, nur zwischen den Seiten</translation>
    </message>
    <message>
        <source>, corners square by chisel</source>
        <translation>, Ecken mit dem Stechbeitel eckig</translation>
    </message>
    <message>
        <source>, from {0} below it</source>
        <translation>, ab {0} darunter</translation>
    </message>
    <message>
        <source>, or {0}</source>
        <translation>, oder {0}</translation>
    </message>
    <message>
        <source>, turned about its long edge</source>
        <translation>, um die lange Kante gewendet</translation>
    </message>
    <message>
        <source>, {0} proud of the lid</source>
        <translation>, {0} vor der Klappe vorstehend</translation>
    </message>
    <message>
        <source>31 1/2 in</source>
        <translation>31 1/2 in</translation>
    </message>
    <message>
        <source>45°, V point into {0}, {1} cut</source>
        <translation>45°, V-Spitze in „{0}“, Schnitt {1}</translation>
    </message>
    <message>
        <source>; did you mean &quot;{0}&quot;?</source>
        <translation>; ist „{0}“ gemeint?</translation>
    </message>
    <message>
        <source>; did you mean {0}?</source>
        <translation>; ist {0} gemeint?</translation>
    </message>
    <message>
        <source>Alder, red</source>
        <translation>Roterle</translation>
    </message>
    <message>
        <source>Ash, European</source>
        <translation>Esche, europäisch</translation>
    </message>
    <message>
        <source>Ash, white</source>
        <translation>Weißesche</translation>
    </message>
    <message>
        <source>Baldcypress</source>
        <translation>Sumpfzypresse</translation>
    </message>
    <message>
        <source>Basswood, American</source>
        <translation>Linde, amerikanisch</translation>
    </message>
    <message>
        <source>Beech, American</source>
        <translation>Buche, amerikanisch</translation>
    </message>
    <message>
        <source>Beech, European</source>
        <translation>Rotbuche</translation>
    </message>
    <message>
        <source>Birch plywood</source>
        <translation>Birkensperrholz</translation>
    </message>
    <message>
        <source>Birch, European</source>
        <translation>Birke, europäisch</translation>
    </message>
    <message>
        <source>Birch, paper</source>
        <translation>Papierbirke</translation>
    </message>
    <message>
        <source>Birch, yellow</source>
        <translation>Gelbbirke</translation>
    </message>
    <message>
        <source>Boards within</source>
        <translation>Bretter im Inneren</translation>
    </message>
    <message>
        <source>Butternut</source>
        <translation>Butternuss</translation>
    </message>
    <message>
        <source>Cannot overwrite a value</source>
        <translation>ein Wert kann nicht überschrieben werden</translation>
    </message>
    <message>
        <source>Cedar, eastern red</source>
        <translation>Virginischer Wacholder</translation>
    </message>
    <message>
        <source>Cedar, western red</source>
        <translation>Riesenlebensbaum</translation>
    </message>
    <message>
        <source>Cherry, black</source>
        <translation>Kirsche, amerikanisch</translation>
    </message>
    <message>
        <source>Chestnut, American</source>
        <translation>Kastanie, amerikanisch</translation>
    </message>
    <message>
        <source>Cottonwood, eastern</source>
        <translation>Kanadische Pappel</translation>
    </message>
    <message>
        <source>Cover</source>
        <translation>Deckblatt</translation>
    </message>
    <message>
        <source>Cut list</source>
        <translation>Zuschnittliste</translation>
    </message>
    <message>
        <source>Cutting layouts</source>
        <translation>Schnittpläne</translation>
    </message>
    <message>
        <source>Details {0}</source>
        <translation>Einzelheiten {0}</translation>
    </message>
    <message>
        <source>Douglas-fir, coast</source>
        <translation>Douglasie</translation>
    </message>
    <message>
        <source>Elm, American</source>
        <translation>Ulme, amerikanisch</translation>
    </message>
    <message>
        <source>Elm, European</source>
        <translation>Ulme, europäisch</translation>
    </message>
    <message>
        <source>Exploded picture</source>
        <translation>Explosionsbild</translation>
    </message>
    <message>
        <source>Fir, silver</source>
        <translation>Weißtanne</translation>
    </message>
    <message>
        <source>Fir, white</source>
        <translation>Koloradotanne</translation>
    </message>
    <message>
        <source>General arrangement</source>
        <translation>Gesamtzeichnung</translation>
    </message>
    <message>
        <source>Hardboard</source>
        <translation>Hartfaserplatte</translation>
    </message>
    <message>
        <source>Hardwood plywood</source>
        <translation>Laubholzsperrholz</translation>
    </message>
    <message>
        <source>Hickory, pecan</source>
        <translation>Pekan-Hickory</translation>
    </message>
    <message>
        <source>Hickory, true</source>
        <translation>Hickory</translation>
    </message>
    <message>
        <source>Input should</source>
        <translation>die Eingabe muss sein</translation>
    </message>
    <message>
        <source>Is a folder</source>
        <translation>ist ein Ordner</translation>
    </message>
    <message>
        <source>Is write-protected</source>
        <translation>ist schreibgeschützt</translation>
    </message>
    <message>
        <source>It is outside {0}: {1}.</source>
        <translation>Außerhalb des Bereichs: {0}: {1}.</translation>
    </message>
    <message>
        <source>Its sizes are those of {0}, which doesn&apos;t count desks: {1}.</source>
        <translation>Von der Größe her fällt es darunter: {0}; Schreibmöbel zählen dort nicht mit: {1}.</translation>
    </message>
    <message>
        <source>Jig for {0}</source>
        <translation>Fräslehre für {0}</translation>
    </message>
    <message>
        <source>Joint schedule</source>
        <translation>Verbindungsliste</translation>
    </message>
    <message>
        <source>Larch, European</source>
        <translation>Lärche, europäisch</translation>
    </message>
    <message>
        <source>MDF</source>
        <translation>MDF</translation>
    </message>
    <message>
        <source>Mahogany, true</source>
        <translation>Mahagoni, echt</translation>
    </message>
    <message>
        <source>Maple, bigleaf</source>
        <translation>Großblättriger Ahorn</translation>
    </message>
    <message>
        <source>Maple, red</source>
        <translation>Rotahorn</translation>
    </message>
    <message>
        <source>Maple, silver</source>
        <translation>Silberahorn</translation>
    </message>
    <message>
        <source>Maple, sugar</source>
        <translation>Zuckerahorn</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Oak, European</source>
        <translation>Eiche, europäisch</translation>
    </message>
    <message>
        <source>Oak, red</source>
        <translation>Roteiche</translation>
    </message>
    <message>
        <source>Oak, white</source>
        <translation>Weißeiche</translation>
    </message>
    <message>
        <source>Order of assembly</source>
        <translation>Reihenfolge des Zusammenbaus</translation>
    </message>
    <message>
        <source>Order of cuts</source>
        <translation>Reihenfolge der Schnitte</translation>
    </message>
    <message>
        <source>Particleboard</source>
        <translation>Spanplatte</translation>
    </message>
    <message>
        <source>Parts: {0}</source>
        <translation>Einzelteile: {0}</translation>
    </message>
    <message>
        <source>Pine, Scots</source>
        <translation>Waldkiefer</translation>
    </message>
    <message>
        <source>Pine, eastern white</source>
        <translation>Weymouthskiefer</translation>
    </message>
    <message>
        <source>Pine, loblolly</source>
        <translation>Weihrauchkiefer</translation>
    </message>
    <message>
        <source>Pine, longleaf</source>
        <translation>Sumpfkiefer</translation>
    </message>
    <message>
        <source>Pine, ponderosa</source>
        <translation>Gelbkiefer</translation>
    </message>
    <message>
        <source>Pine, sugar</source>
        <translation>Zuckerkiefer</translation>
    </message>
    <message>
        <source>Pine, western white</source>
        <translation>Westliche Weymouthskiefer</translation>
    </message>
    <message>
        <source>Poplar, European</source>
        <translation>Pappel, europäisch</translation>
    </message>
    <message>
        <source>Profile of {0}</source>
        <translation>Profil von {0}</translation>
    </message>
    <message>
        <source>Redwood, old-growth</source>
        <translation>Küstenmammutbaum</translation>
    </message>
    <message>
        <source>Right would be (pin on the front plane, joint gap 0): writing surface lowered to {0}, all else held; or slant start raised by {1} with the angle held (top depth becomes {2})</source>
        <translation>Richtig wäre (Bandstift in der Vorderebene, Fuge 0): die Schreibfläche auf {0} gesenkt, alles andere bleibt; oder der Beginn der Schräge um {1} höher bei gleichem Winkel (die obere Tiefe wird {2})</translation>
    </message>
    <message>
        <source>Right would be a pin {0} in front of the front plane</source>
        <translation>Richtig wäre ein Bandstift {0} vor der Vorderebene</translation>
    </message>
    <message>
        <source>Rod: {0}</source>
        <translation>Brettriss: {0}</translation>
    </message>
    <message>
        <source>Sapele</source>
        <translation>Sapelli</translation>
    </message>
    <message>
        <source>Sassafras</source>
        <translation>Sassafras</translation>
    </message>
    <message>
        <source>Section {0}</source>
        <translation>Schnitt {0}</translation>
    </message>
    <message>
        <source>Sections {0}</source>
        <translation>Schnitte {0}</translation>
    </message>
    <message>
        <source>Softwood plywood</source>
        <translation>Nadelholzsperrholz</translation>
    </message>
    <message>
        <source>Sold as clothing storage it must pass {0}, tested on a block that imitates carpet: {1}.</source>
        <translation>Als Kleidermöbel verkauft muss es bestehen: {0}, geprüft auf einer Unterlage, die Teppich nachahmt: {1}.</translation>
    </message>
    <message>
        <source>Spruce, Norway</source>
        <translation>Fichte</translation>
    </message>
    <message>
        <source>Sweetgum</source>
        <translation>Amberbaum</translation>
    </message>
    <message>
        <source>Sycamore, American</source>
        <translation>Platane, amerikanisch</translation>
    </message>
    <message>
        <source>Teak</source>
        <translation>Teak</translation>
    </message>
    <message>
        <source>Template {0}</source>
        <translation>Schablone {0}</translation>
    </message>
    <message>
        <source>V points {0} deep leave {1} of partitions {2} thick; right would be {3}, or shelves stepped so that they don&apos;t meet</source>
        <translation>V-Spitzen {0} tief lassen {1} von Fachwänden, die {2} dick sind; richtig wäre {3}, oder versetzte Böden, deren Spitzen sich nicht treffen</translation>
    </message>
    <message>
        <source>Walnut, European</source>
        <translation>Nussbaum, europäisch</translation>
    </message>
    <message>
        <source>Walnut, black</source>
        <translation>Schwarznuss</translation>
    </message>
    <message>
        <source>What to buy</source>
        <translation>Einkauf</translation>
    </message>
    <message>
        <source>Yellow-poplar</source>
        <translation>Tulpenbaum</translation>
    </message>
    <message>
        <source>a back {0} high</source>
        <translation>ein Hinterstück {0} hoch</translation>
    </message>
    <message>
        <source>a bay that there isn&apos;t</source>
        <translation>ein Feld, das es nicht gibt</translation>
    </message>
    <message>
        <source>a bay {0} wide</source>
        <translation>ein Feld {0} breit</translation>
    </message>
    <message>
        <source>a blunt point {0} deep</source>
        <translation>eine stumpfe Spitze {0} tief</translation>
    </message>
    <message>
        <source>a board named {0} is laid twice</source>
        <translation>ein Brett namens {0} ist zweimal gelegt</translation>
    </message>
    <message>
        <source>a board of the back gains {0} by the wettest season and stands {1} off the next one: the back buckles, or pushes the sides apart; right would be back.gap {2} or more, and one fixing in each board</source>
        <translation>ein Brett der Rückwand wächst bis zur feuchtesten Zeit um {0} und steht {1} vom nächsten ab: die Rückwand wölbt sich oder drückt die Seiten auseinander; richtig wäre back.gap {2} oder mehr und eine Befestigung je Brett</translation>
    </message>
    <message>
        <source>a board of the back moves {0} over the seasons and laps the next one by {1}; right would be back.lap {2} or more, {3} times that</source>
        <translation>ein Brett der Rückwand arbeitet über die Jahreszeiten um {0} und überdeckt das nächste um {1}; richtig wäre back.lap {2} oder mehr, das {3}-fache davon</translation>
    </message>
    <message>
        <source>a box {0} high</source>
        <translation>ein Kasten {0} hoch</translation>
    </message>
    <message>
        <source>a box {0} long and {1} high</source>
        <translation>ein Kasten {0} lang und {1} hoch</translation>
    </message>
    <message>
        <source>a cell that there isn&apos;t</source>
        <translation>ein Fach, das es nicht gibt</translation>
    </message>
    <message>
        <source>a denominator of {0}; it is a power of two from 1 to {1}</source>
        <translation>ein Nenner von {0}; er ist eine Zweierpotenz von 1 bis {1}</translation>
    </message>
    <message>
        <source>a drawer</source>
        <translation>ein Schubkasten</translation>
    </message>
    <message>
        <source>a drawer on a web frame</source>
        <translation>ein Schubkasten auf einem Laufrahmen</translation>
    </message>
    <message>
        <source>a face frame</source>
        <translation>ein Blendrahmen</translation>
    </message>
    <message>
        <source>a face frame before drawers</source>
        <translation>ein Blendrahmen vor Schubkästen</translation>
    </message>
    <message>
        <source>a flat of {0} on the top&apos;s edge for its bolt</source>
        <translation>eine Fläche von {0} an der Kante der Deckplatte für den Riegel</translation>
    </message>
    <message>
        <source>a folder</source>
        <translation>ein Ordner</translation>
    </message>
    <message>
        <source>a foot of {0} is {1} long along the grain {2} over its end: such short grain breaks off; right would be {3} or more there, a lower rise, or a block glued behind it with its grain upright</source>
        <translation>ein Fuß von „{0}“ ist in Faserrichtung {1} lang, {2} über seinem Ende: so kurzes Holz bricht ab; richtig wären dort {3} oder mehr, eine niedrigere Schweifung oder ein dahinter geleimter Klotz mit stehender Faser</translation>
    </message>
    <message>
        <source>a full point</source>
        <translation>eine volle Spitze</translation>
    </message>
    <message>
        <source>a groove {0} wide is one pass of a {1} cutter: its width can&apos;t be tuned</source>
        <translation>eine Nut {0} breit ist ein einziger Gang eines Fräsers von {1}: ihre Breite lässt sich nicht nachstellen</translation>
    </message>
    <message>
        <source>a half pin</source>
        <translation>ein Halbzinken</translation>
    </message>
    <message>
        <source>a lectern</source>
        <translation>ein Stehpult</translation>
    </message>
    <message>
        <source>a length above 0</source>
        <translation>eine Länge über 0</translation>
    </message>
    <message>
        <source>a length here is zero or more</source>
        <translation>eine Länge ist hier null oder mehr</translation>
    </message>
    <message>
        <source>a length is at most {0} m ({1})</source>
        <translation>eine Länge ist höchstens {0} m ({1})</translation>
    </message>
    <message>
        <source>a length of 0 or more</source>
        <translation>eine Länge von 0 oder mehr</translation>
    </message>
    <message>
        <source>a length, a number or text such as &quot;{0}&quot;</source>
        <translation>eine Länge, eine Zahl oder Text wie &quot;{0}&quot;</translation>
    </message>
    <message>
        <source>a lid not flush</source>
        <translation>eine Klappe, die nicht bündig ist</translation>
    </message>
    <message>
        <source>a lid that shuts before them</source>
        <translation>eine Klappe, die davor schließt</translation>
    </message>
    <message>
        <source>a link of {0}; a chain&apos;s links are zero or more</source>
        <translation>ein Glied von {0}; die Glieder einer Kette sind null oder mehr</translation>
    </message>
    <message>
        <source>a lipped front</source>
        <translation>ein überfälztes Vorderstück</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>eine Liste</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a number above 0 and up to 1000</source>
        <translation>eine Zahl über 0 und bis 1000</translation>
    </message>
    <message>
        <source>a number beyond 1e30</source>
        <translation>eine Zahl jenseits von 1e30</translation>
    </message>
    <message>
        <source>a number is too long</source>
        <translation>eine Zahl ist zu lang</translation>
    </message>
    <message>
        <source>a number of thousands of figures</source>
        <translation>eine Zahl mit Tausenden von Ziffern</translation>
    </message>
    <message>
        <source>a percentage from 0 to 100</source>
        <translation>ein Prozentwert von 0 bis 100</translation>
    </message>
    <message>
        <source>a percentage, a number or text such as &quot;8 %&quot;</source>
        <translation>ein Prozentwert, eine Zahl oder Text wie &quot;8 %&quot;</translation>
    </message>
    <message>
        <source>a piece file</source>
        <translation>eine Möbeldatei</translation>
    </message>
    <message>
        <source>a piece with a slant</source>
        <translation>ein Möbel mit einer Schräge</translation>
    </message>
    <message>
        <source>a pin</source>
        <translation>ein Zinken</translation>
    </message>
    <message>
        <source>a pinned shelf</source>
        <translation>ein Einlegeboden</translation>
    </message>
    <message>
        <source>a pocket may run only {0} past the edge, other wood stands there; finish it by hand</source>
        <translation>eine Tasche darf nur {0} über die Kante hinauslaufen, dort steht anderes Holz; von Hand fertigmachen</translation>
    </message>
    <message>
        <source>a rabbet {0} deep leaves a lip of {1} of a lid {2} thick; right would be a rabbet of at most {3}</source>
        <translation>ein Falz {0} tief lässt eine Lippe von {1} an einer Klappe, die {2} dick ist; richtig wäre ein Falz von höchstens {3}</translation>
    </message>
    <message>
        <source>a relative humidity of {0} %; it lies between 0 and 100 %</source>
        <translation>eine relative Luftfeuchte von {0} %; sie liegt zwischen 0 und 100 %</translation>
    </message>
    <message>
        <source>a screw of {0} passes {1} of {2} and bites {3} into {4}; right would be {5}, {6} at least</source>
        <translation>eine Schraube von {0} geht durch {1} von „{2}“ und greift {3} in „{4}“; richtig wären {5}, mindestens {6}</translation>
    </message>
    <message>
        <source>a screw of {0} through {1} of {2} into {3} {4}; right would be {5}, {6} at most</source>
        <translation>eine Schraube von {0} durch {1} von „{2}“ in „{3}“ {4}; richtig wären {5}, höchstens {6}</translation>
    </message>
    <message>
        <source>a shop file</source>
        <translation>eine Werkstattdatei</translation>
    </message>
    <message>
        <source>a slant from {0} at {1}° runs {2} back, past the case&apos;s depth of {3}</source>
        <translation>eine Schräge ab {0} mit {1}° läuft {2} nach hinten, über die Tiefe des Korpus von {3} hinaus</translation>
    </message>
    <message>
        <source>a slant needs its angle or the top&apos;s depth beside its start</source>
        <translation>eine Schräge braucht neben ihrem Beginn ihren Winkel oder die obere Tiefe</translation>
    </message>
    <message>
        <source>a slant of {0}° from level is none; it must lie between 5° and 85°</source>
        <translation>eine Schräge von {0}° zur Waagerechten ist keine; sie muss zwischen 5° und 85° liegen</translation>
    </message>
    <message>
        <source>a slant that starts at {0} must start below the top&apos;s upper face at {1}</source>
        <translation>eine Schräge, die bei {0} beginnt, muss unter der Oberseite der Deckplatte bei {1} beginnen</translation>
    </message>
    <message>
        <source>a slant-desk</source>
        <translation>ein Schreibschrank mit Schräge</translation>
    </message>
    <message>
        <source>a stock of {0}</source>
        <translation>ein Material von {0}</translation>
    </message>
    <message>
        <source>a table</source>
        <translation>eine Tabelle</translation>
    </message>
    <message>
        <source>a tail at its root</source>
        <translation>eine Schwalbe an ihrer Wurzel</translation>
    </message>
    <message>
        <source>a tilted plane has no name among a board&apos;s six sides</source>
        <translation>eine gekippte Ebene hat unter den sechs Seiten eines Bretts keinen Namen</translation>
    </message>
    <message>
        <source>a top {0} deep</source>
        <translation>eine Deckplatte {0} tief</translation>
    </message>
    <message>
        <source>a top {0} deep must be deeper than 0 and less deep than the case ({1})</source>
        <translation>eine Deckplatte {0} tief muss tiefer als 0 und weniger tief als der Korpus sein ({1})</translation>
    </message>
    <message>
        <source>a web frame</source>
        <translation>ein Laufrahmen</translation>
    </message>
    <message>
        <source>a {0} needs sizes above 0, found {1}, {2}, {3}</source>
        <translation>ein Profil „{0}“ braucht Maße über 0, gefunden {1}, {2}, {3}</translation>
    </message>
    <message>
        <source>air of {0} °C; the table of equilibrium moisture spans {1} to {2} °C</source>
        <translation>Luft von {0} °C; die Tabelle der Gleichgewichtsfeuchte reicht von {1} bis {2} °C</translation>
    </message>
    <message>
        <source>all along</source>
        <translation>auf ganzer Länge</translation>
    </message>
    <message>
        <source>an angle between 0 and 90 degrees</source>
        <translation>ein Winkel zwischen 0 und 90 Grad</translation>
    </message>
    <message>
        <source>an angle here is zero or more</source>
        <translation>ein Winkel ist hier null oder mehr</translation>
    </message>
    <message>
        <source>an angle in degrees, a number or text such as &quot;50°&quot;</source>
        <translation>ein Winkel in Grad, eine Zahl oder Text wie &quot;50°&quot;</translation>
    </message>
    <message>
        <source>an angle is at most 360</source>
        <translation>ein Winkel ist höchstens 360</translation>
    </message>
    <message>
        <source>an angle of {0}° from level leaves no run; with this height and writing height the slant must be flatter</source>
        <translation>ein Winkel von {0}° zur Waagerechten lässt keinen Lauf; bei dieser Höhe und Schreibhöhe muss die Schräge flacher sein</translation>
    </message>
    <message>
        <source>an angle of {0}° from level runs {1} back, past the case&apos;s depth of {2}; it must be over {3}°</source>
        <translation>ein Winkel von {0}° zur Waagerechten läuft {1} nach hinten, über die Tiefe des Korpus von {2} hinaus; er muss über {3}° liegen</translation>
    </message>
    <message>
        <source>an empty file</source>
        <translation>eine leere Datei</translation>
    </message>
    <message>
        <source>an inside corner of radius {0} is tighter than any cutter: finish it by chisel</source>
        <translation>eine Innenecke mit Radius {0} ist enger als jeder Fräser: mit dem Stechbeitel fertigmachen</translation>
    </message>
    <message>
        <source>an open case</source>
        <translation>ein offener Korpus</translation>
    </message>
    <message>
        <source>an opening with fill = &quot;drawer&quot;</source>
        <translation>ein Fach mit fill = &quot;drawer&quot;</translation>
    </message>
    <message>
        <source>an opening with fill = &quot;pigeonhole&quot;, or any table behind a slant</source>
        <translation>ein Fach mit fill = &quot;pigeonhole&quot;, oder irgendeine Tabelle hinter einer Schräge</translation>
    </message>
    <message>
        <source>and {0} beyond each</source>
        <translation>und {0} über jede hinaus</translation>
    </message>
    <message>
        <source>and {0} more</source>
        <translation>und {0} weitere</translation>
    </message>
    <message>
        <source>areas are never made on paper</source>
        <translation>Flächen werden nie auf dem Papier gemacht</translation>
    </message>
    <message>
        <source>as built</source>
        <translation>beim Bau</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>mindestens</translation>
    </message>
    <message>
        <source>at {0}</source>
        <translation>bei {0}</translation>
    </message>
    <message>
        <source>back</source>
        <translation>Rückwand</translation>
    </message>
    <message>
        <source>back of the compartments</source>
        <translation>Rückwand der Inneneinteilung</translation>
    </message>
    <message>
        <source>back, board {0}</source>
        <translation>Rückwand, Brett {0}</translation>
    </message>
    <message>
        <source>back, muntin {0}</source>
        <translation>Rückwand, Mittelfries {0}</translation>
    </message>
    <message>
        <source>back, panel {0}</source>
        <translation>Rückwand, Füllung {0}</translation>
    </message>
    <message>
        <source>back, {0}</source>
        <translation>Rückwand, {0}</translation>
    </message>
    <message>
        <source>back, {0} rail</source>
        <translation>Rückwand, Querfries {0}</translation>
    </message>
    <message>
        <source>back, {0} stile</source>
        <translation>Rückwand, aufrechter Fries {0}</translation>
    </message>
    <message>
        <source>base.edge, a moulding</source>
        <translation>base.edge, ein Profil</translation>
    </message>
    <message>
        <source>bead</source>
        <translation>Rundstab</translation>
    </message>
    <message>
        <source>bead and quirk</source>
        <translation>Rundstab mit Nut</translation>
    </message>
    <message>
        <source>below the frame, round the side</source>
        <translation>unter dem Rahmen, um die Seite</translation>
    </message>
    <message>
        <source>between the lips of {0} and {1} there are {2} at build and {3} in the wettest season; right would be {4} then: drawer.lip {5}, or a rail {6} higher</source>
        <translation>zwischen den Überschlägen von „{0}“ und „{1}“ sind beim Bau {2} und in der feuchtesten Zeit {3}; richtig wären dann {4}: drawer.lip {5}, oder eine Traverse {6} höher</translation>
    </message>
    <message>
        <source>between {0} and the side&apos;s foot</source>
        <translation>zwischen „{0}“ und dem Fuß der Seite</translation>
    </message>
    <message>
        <source>between {0} and the slanted edge</source>
        <translation>zwischen „{0}“ und der schrägen Kante</translation>
    </message>
    <message>
        <source>between {0} and {1}</source>
        <translation>zwischen „{0}“ und „{1}“</translation>
    </message>
    <message>
        <source>bevel</source>
        <translation>Abschrägung</translation>
    </message>
    <message>
        <source>bevel {0}° from the face</source>
        <translation>Abschrägung {0}° gegen die Fläche</translation>
    </message>
    <message>
        <source>birch plywood</source>
        <translation>Birkensperrholz</translation>
    </message>
    <message>
        <source>biscuit {0}</source>
        <translation>Lamelle {0}</translation>
    </message>
    <message>
        <source>biscuit {0}, square to the mitre</source>
        <translation>Lamelle {0}, rechtwinklig zur Gehrung</translation>
    </message>
    <message>
        <source>board</source>
        <translation>Brett</translation>
    </message>
    <message>
        <source>board length</source>
        <translation>Brettlänge</translation>
    </message>
    <message>
        <source>board or sheet</source>
        <translation>Brett oder Platte</translation>
    </message>
    <message>
        <source>boards and sheets</source>
        <translation>Bretter und Platten</translation>
    </message>
    <message>
        <source>body of the lock</source>
        <translation>Schlosskasten</translation>
    </message>
    <message>
        <source>bolt of the lid&apos;s lock</source>
        <translation>Riegel des Klappenschlosses</translation>
    </message>
    <message>
        <source>both hinge leaves</source>
        <translation>beide Bandlappen</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>Unterboden</translation>
    </message>
    <message>
        <source>bracket, bay {0}</source>
        <translation>Bogen, Feld {0}</translation>
    </message>
    <message>
        <source>build {0} %, dry {1} %, wet {2} %</source>
        <translation>Bau {0} %, trocken {1} %, feucht {2} %</translation>
    </message>
    <message>
        <source>butt hinge</source>
        <translation>Aufschraubband</translation>
    </message>
    <message>
        <source>by itself, from the side named</source>
        <translation>für sich, von der genannten Seite</translation>
    </message>
    <message>
        <source>by the driest season the case loses {0} from front to back and {1} nothing: it would stand {2} proud; right would be {3} less length, with its stop in front and not at the back</source>
        <translation>bis zur trockensten Zeit verliert der Korpus von vorn nach hinten {0} und „{1}“ nichts: es stünde {2} vor; richtig wären {3} weniger Länge, mit dem Anschlag vorn und nicht an der Rückwand</translation>
    </message>
    <message>
        <source>by {0}</source>
        <translation>um {0}</translation>
    </message>
    <message>
        <source>called {0} before</source>
        <translation>früher {0} genannt</translation>
    </message>
    <message>
        <source>can be read as feet and inches or as a difference</source>
        <translation>ist als Fuß und Zoll oder als Unterschied zu lesen</translation>
    </message>
    <message>
        <source>can be read as {0} or as {1}</source>
        <translation>ist als {0} oder als {1} zu lesen</translation>
    </message>
    <message>
        <source>can&apos;t be read</source>
        <translation>ist nicht zu lesen</translation>
    </message>
    <message>
        <source>can&apos;t be read ({0}{1}); expected {2}</source>
        <translation>ist nicht zu lesen ({0}{1}); erwartet wird {2}</translation>
    </message>
    <message>
        <source>can&apos;t be saved ({0}{1})</source>
        <translation>kann nicht gespeichert werden ({0}{1})</translation>
    </message>
    <message>
        <source>case</source>
        <translation>Korpus</translation>
    </message>
    <message>
        <source>case.dado = &quot;stopped&quot;, and no face frame</source>
        <translation>case.dado = &quot;stopped&quot; und kein Blendrahmen</translation>
    </message>
    <message>
        <source>case.top_edge, a moulding</source>
        <translation>case.top_edge, ein Profil</translation>
    </message>
    <message>
        <source>case.top_rail {0} or more</source>
        <translation>case.top_rail {0} oder mehr</translation>
    </message>
    <message>
        <source>chamfer</source>
        <translation>Fase</translation>
    </message>
    <message>
        <source>chamfer 45°</source>
        <translation>Fase 45°</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>geändert</translation>
    </message>
    <message>
        <source>chisel, from the full-size template</source>
        <translation>Stechbeitel, nach der Schablone in wahrer Größe</translation>
    </message>
    <message>
        <source>clear widths</source>
        <translation>lichte Breiten</translation>
    </message>
    <message>
        <source>column {0} of {1}</source>
        <translation>Spalte {0} von {1}</translation>
    </message>
    <message>
        <source>comes out below zero</source>
        <translation>kommt unter null heraus</translation>
    </message>
    <message>
        <source>comes out by {0}</source>
        <translation>kommt um {0} heraus</translation>
    </message>
    <message>
        <source>compartments</source>
        <translation>Inneneinteilung</translation>
    </message>
    <message>
        <source>compartments {0} deep</source>
        <translation>Inneneinteilung {0} tief</translation>
    </message>
    <message>
        <source>compartments.drawers, 1 or more</source>
        <translation>compartments.drawers, 1 oder mehr</translation>
    </message>
    <message>
        <source>core&apos;s edge leans in {0}, {1}</source>
        <translation>Kante des Kerns neigt sich um {0} nach innen, {1}</translation>
    </message>
    <message>
        <source>corner of the notch, covered by {0}</source>
        <translation>Ecke der Ausklinkung, verdeckt von „{0}“</translation>
    </message>
    <message>
        <source>corners for {0}</source>
        <translation>Ecken für „{0}“</translation>
    </message>
    <message>
        <source>cove</source>
        <translation>Hohlkehle</translation>
    </message>
    <message>
        <source>cut: found &quot;{0}&quot;; expected a board&apos;s label or id, such as {1}</source>
        <translation>cut: gefunden &quot;{0}&quot;; erwartet wird die Kennung oder id eines Bretts, etwa {1}</translation>
    </message>
    <message>
        <source>cuts in order</source>
        <translation>Schnitte der Reihe nach</translation>
    </message>
    <message>
        <source>dado</source>
        <translation>Quernut</translation>
    </message>
    <message>
        <source>deep from the front plane to the open lid&apos;s edge</source>
        <translation>tief, von der Vorderebene bis zur Kante der offenen Klappe</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>depth {0}, top depth {1} and rise {2} give {3}°, not {4}°; for {5}° either the rise is {6} (start at {7}) or the top depth is {8}</source>
        <translation>Tiefe {0}, obere Tiefe {1} und Steigung {2} geben {3}°, nicht {4}°; für {5}° ist entweder die Steigung {6} (Beginn bei {7}) oder die obere Tiefe {8}</translation>
    </message>
    <message>
        <source>details {0}</source>
        <translation>Einzelheiten {0}</translation>
    </message>
    <message>
        <source>divider right of {0}</source>
        <translation>Trennwand rechts von {0}</translation>
    </message>
    <message>
        <source>divider, {0}</source>
        <translation>Trennwand, {0}</translation>
    </message>
    <message>
        <source>divides by zero</source>
        <translation>teilt durch null</translation>
    </message>
    <message>
        <source>dovetail</source>
        <translation>Zinkung</translation>
    </message>
    <message>
        <source>dovetail cutter, along the end</source>
        <translation>Gratfräser, am Ende entlang</translation>
    </message>
    <message>
        <source>dovetail cutter, from this edge</source>
        <translation>Gratfräser, von dieser Kante</translation>
    </message>
    <message>
        <source>dovetail ends below its socket&apos;s end in {0}</source>
        <translation>die Schwalbe endet unter dem Ende ihrer Zinkung in „{0}“</translation>
    </message>
    <message>
        <source>drawer {0} is {1} wide and {2} long, ratio {3}: pushed on one side it racks, with {4} clearance a side; right would be {5} at most: two drawers, a centre guide, or longer sides</source>
        <translation>Schubkasten {0} ist {1} breit und {2} lang, Verhältnis {3}: einseitig geschoben verkantet er, mit {4} Luft je Seite; richtig wäre höchstens {5}: zwei Schubkästen, eine Mittelführung oder längere Seiten</translation>
    </message>
    <message>
        <source>drawer {0}, back</source>
        <translation>Schubkasten {0}, Hinterstück</translation>
    </message>
    <message>
        <source>drawer {0}, bottom</source>
        <translation>Schubkasten {0}, Boden</translation>
    </message>
    <message>
        <source>drawer {0}, front</source>
        <translation>Schubkasten {0}, Vorderstück</translation>
    </message>
    <message>
        <source>drawer {0}, front of the box</source>
        <translation>Schubkasten {0}, Vorderstück des Kastens</translation>
    </message>
    <message>
        <source>drawer {0}, side, {1}</source>
        <translation>Schubkasten {0}, Seite, {1}</translation>
    </message>
    <message>
        <source>drawer.edge, a moulding</source>
        <translation>drawer.edge, ein Profil</translation>
    </message>
    <message>
        <source>drawers</source>
        <translation>Schubkästen</translation>
    </message>
    <message>
        <source>drawers and supports keep {0} before the back in the driest season; their stops are in front</source>
        <translation>Schubkästen und Klappenstützen bleiben in der trockensten Zeit {0} vor der Rückwand; ihre Anschläge sind vorn</translation>
    </message>
    <message>
        <source>drawers {0} long</source>
        <translation>Schubkästen {0} lang</translation>
    </message>
    <message>
        <source>drawn</source>
        <translation>ausgezogen</translation>
    </message>
    <message>
        <source>drawn {0} with {1} inside, a support&apos;s end falls {2} and the lid&apos;s edge {3}; a pad or shim of {4} takes it up</source>
        <translation>um {0} ausgezogen, {1} bleiben innen: das Ende einer Stütze sinkt um {2} und die Kante der Klappe um {3}; ein Klötzchen oder eine Beilage von {4} gleicht es aus</translation>
    </message>
    <message>
        <source>drill, or the cutter</source>
        <translation>Bohrer oder der Fräser</translation>
    </message>
    <message>
        <source>dust panel</source>
        <translation>Staubboden</translation>
    </message>
    <message>
        <source>dust panel {0}, {1}</source>
        <translation>Staubboden {0}, {1}</translation>
    </message>
    <message>
        <source>dust panels</source>
        <translation>Staubböden</translation>
    </message>
    <message>
        <source>eased</source>
        <translation>gebrochen</translation>
    </message>
    <message>
        <source>edge of the step</source>
        <translation>Kante der Stufe</translation>
    </message>
    <message>
        <source>edge strip, {0}</source>
        <translation>Kantenleiste, {0}</translation>
    </message>
    <message>
        <source>escutcheon, let in level</source>
        <translation>Schlüsselschild, bündig eingelassen</translation>
    </message>
    <message>
        <source>expected &quot;dovetail&quot; or &quot;housed&quot;: the lid lies on the top&apos;s front edge</source>
        <translation>erwartet wird &quot;dovetail&quot; oder &quot;housed&quot;: die Klappe liegt an der Vorderkante der Deckplatte</translation>
    </message>
    <message>
        <source>expected &quot;dovetail&quot; or &quot;housed&quot;: the lid&apos;s pin lies on the top&apos;s front edge</source>
        <translation>erwartet wird &quot;dovetail&quot; oder &quot;housed&quot;: der Bandstift der Klappe liegt an der Vorderkante der Deckplatte</translation>
    </message>
    <message>
        <source>expected &quot;flush&quot;: a lid hinged above lies between the sides, its reading face in the slant plane</source>
        <translation>erwartet wird &quot;flush&quot;: eine oben angeschlagene Klappe liegt zwischen den Seiten, ihre Lesefläche in der Schräge</translation>
    </message>
    <message>
        <source>expected &quot;frame&quot;: thick rails stand between a slant-desk&apos;s drawers</source>
        <translation>erwartet wird &quot;frame&quot;: zwischen den Schubkästen eines Schreibschranks stehen dicke Traversen</translation>
    </message>
    <message>
        <source>expected &quot;none&quot;: breadboard caps are made for a lid hinged below</source>
        <translation>erwartet wird &quot;none&quot;: Hirnleisten sind für eine unten angeschlagene Klappe gemacht</translation>
    </message>
    <message>
        <source>expected &quot;rails&quot;: a face frame would stand in the way of the lid</source>
        <translation>erwartet wird &quot;rails&quot;: ein Blendrahmen stünde der Klappe im Weg</translation>
    </message>
    <message>
        <source>expected &quot;shelf&quot;: opening {0} is divided by columns where it lies, and a shelf on pins would run through {1}; or leave {2} out</source>
        <translation>erwartet wird &quot;shelf&quot;: Fach {0} ist dort, wo er liegt, in Spalten geteilt, und ein Einlegeboden liefe durch „{1}“; oder {2} weglassen</translation>
    </message>
    <message>
        <source>expected a key of {0}</source>
        <translation>erwartet wird ein Schlüssel von {0}</translation>
    </message>
    <message>
        <source>expected at least {0} for sides of {1}{2}</source>
        <translation>erwartet: mindestens {0} bei Seiten von {1}{2}</translation>
    </message>
    <message>
        <source>expected {0}, as many as {1} has columns, or left out</source>
        <translation>erwartet werden {0}, so viele wie {1} Spalten hat, oder weglassen</translation>
    </message>
    <message>
        <source>stock {0} still carries its nominal size, {1}: measure it and put the thickness in {2}; a dado is cut to that plus {3}, the upper face stays where it was asked</source>
        <translation>Material {0} hat noch sein Nennmaß, {1}: messen und die Dicke in {2} eintragen; eine Quernut wird auf dieses Maß und {3} mehr geschnitten, die Oberseite bleibt, wo sie verlangt war</translation>
    </message>
    <message>
        <source>expected &quot;square&quot;: the ledge stands on the face of a lid hinged above</source>
        <translation>erwartet wird &quot;square&quot;: die Buchleiste steht auf der Fläche einer oben angeschlagenen Klappe</translation>
    </message>
    <message>
        <source>--only: {0} isn&apos;t there yet; expected one of {1}</source>
        <translation>--only: {0} gibt es noch nicht; erwartet wird eins von {1}</translation>
    </message>
    <message>
        <source>a third, {0}</source>
        <translation>ein Drittel, {0}</translation>
    </message>
    <message>
        <source>back edge</source>
        <translation>hintere Kante</translation>
    </message>
    <message>
        <source>back end</source>
        <translation>hinteres Ende</translation>
    </message>
    <message>
        <source>bay</source>
        <translation>Feld</translation>
    </message>
    <message>
        <source>bays</source>
        <translation>Felder</translation>
    </message>
    <message>
        <source>build</source>
        <translation>beim Bau</translation>
    </message>
    <message>
        <source>butt</source>
        <translation>Stoß</translation>
    </message>
    <message>
        <source>cannot declare {0} twice</source>
        <translation>{0} steht zweimal da</translation>
    </message>
    <message>
        <source>cannot mutate immutable namespace {0}</source>
        <translation>die Tabelle {0} ist schon abgeschlossen</translation>
    </message>
    <message>
        <source>cannot overwrite a value</source>
        <translation>ein Wert kann nicht überschrieben werden</translation>
    </message>
    <message>
        <source>detail {0}: {1} of the {2}</source>
        <translation>Einzelheit {0}: {2}, {1}</translation>
    </message>
    <message>
        <source>drawer {0}</source>
        <translation>Schubkasten {0}</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>trocken</translation>
    </message>
    <message>
        <source>duplicate inline table key {0}</source>
        <translation>Schlüssel {0} doppelt in einer Tabelle in einer Zeile</translation>
    </message>
    <message>
        <source>end</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>expected &quot;through&quot; or &quot;clean-sides&quot;: the top&apos;s front edge is square to the lid, the sides&apos; aren&apos;t</source>
        <translation>erwartet wird &quot;through&quot; oder &quot;clean-sides&quot;: die Vorderkante der Deckplatte ist rechtwinklig zur Klappe, die der Seiten nicht</translation>
    </message>
    <message>
        <source>expected &apos;=&apos; after a key in a key/value pair</source>
        <translation>erwartet wird &apos;=&apos; nach einem Schlüssel</translation>
    </message>
    <message>
        <source>expected &apos;]&apos; at the end of a table declaration</source>
        <translation>erwartet wird &apos;]&apos; am Ende eines Tabellenkopfs</translation>
    </message>
    <message>
        <source>expected &apos;]]&apos; at the end of an array declaration</source>
        <translation>erwartet wird &apos;]]&apos; am Ende eines Listenkopfs</translation>
    </message>
    <message>
        <source>expected 0 or more: a pin below the writing surface would need both edges eased</source>
        <translation>erwartet wird 0 oder mehr: ein Bandstift unter der Schreibfläche brauchte zwei gerundete Kanten</translation>
    </message>
    <message>
        <source>expected 0, or {0}: it covers the side&apos;s edge</source>
        <translation>erwartet wird 0 oder {0}: sie deckt die Kante der Seite</translation>
    </message>
    <message>
        <source>expected 1: a lectern&apos;s shelf is one board</source>
        <translation>erwartet wird 1: der Boden eines Stehpults ist ein Brett</translation>
    </message>
    <message>
        <source>expected TOML, key = value or [table] ({0}{1})</source>
        <translation>erwartet wird TOML, Schlüssel = Wert oder [Tabelle] ({0}{1})</translation>
    </message>
    <message>
        <source>expected a [slant] table with writing_height and one of angle and top_depth</source>
        <translation>erwartet wird eine Tabelle [slant] mit writing_height und einem von angle und top_depth</translation>
    </message>
    <message>
        <source>expected a board below and above compartments, for the partitions&apos; grooves: a shelf in its place</source>
        <translation>erwartet wird ein Brett unter und über der Inneneinteilung, für die Nuten der Fachwände: an seiner Stelle ein Boden</translation>
    </message>
    <message>
        <source>expected a box at least {0} high for one dovetail: a higher opening or a lower groove</source>
        <translation>erwartet wird ein Kasten von mindestens {0} Höhe für eine Schwalbe: ein höheres Fach oder eine tiefere Nut</translation>
    </message>
    <message>
        <source>expected a depth: the block meets the divider&apos;s rear edge, and this one runs all the way back</source>
        <translation>erwartet wird eine Tiefe: der Klotz trifft auf die Hinterkante der Trennwand, und diese läuft bis nach hinten durch</translation>
    </message>
    <message>
        <source>expected a finite number</source>
        <translation>erwartet wird eine endliche Zahl</translation>
    </message>
    <message>
        <source>expected a fixed level: {0}</source>
        <translation>erwartet wird eine feste Ebene: {0}</translation>
    </message>
    <message>
        <source>expected a length; it {0}: {1}</source>
        <translation>erwartet wird eine Länge; sie {0}: {1}</translation>
    </message>
    <message>
        <source>expected a level of its own: opening &quot;{0}&quot; lies there</source>
        <translation>erwartet wird eine eigene Ebene: dort liegt Fach &quot;{0}&quot;</translation>
    </message>
    <message>
        <source>expected a list of addresses, such as [&quot;slant.top_depth&quot;]</source>
        <translation>erwartet wird eine Liste von Adressen, etwa [&quot;slant.top_depth&quot;]</translation>
    </message>
    <message>
        <source>expected a list, as [1, 2]</source>
        <translation>erwartet wird eine Liste, etwa [1, 2]</translation>
    </message>
    <message>
        <source>expected a number</source>
        <translation>erwartet wird eine Zahl</translation>
    </message>
    <message>
        <source>expected a price, 0 or more</source>
        <translation>erwartet wird ein Preis, 0 oder mehr</translation>
    </message>
    <message>
        <source>expected a shelf or none: opening {0}, in which it would lie on its pins, {1}</source>
        <translation>erwartet wird ein Boden oder keiner: Fach {0}, in dem er auf seinen Bodenträgern läge, {1}</translation>
    </message>
    <message>
        <source>expected a spline thinner than {0}, or a thicker plinth</source>
        <translation>erwartet wird eine Feder dünner als {0}, oder ein dickerer Sockel</translation>
    </message>
    <message>
        <source>expected a table</source>
        <translation>erwartet wird eine Tabelle</translation>
    </message>
    <message>
        <source>expected a table of addresses and values</source>
        <translation>erwartet wird eine Tabelle von Adressen und Werten</translation>
    </message>
    <message>
        <source>expected a value for {0}, which has no default</source>
        <translation>erwartet wird ein Wert für {0}, das keine Vorgabe hat</translation>
    </message>
    <message>
        <source>expected a whole number</source>
        <translation>erwartet wird eine ganze Zahl</translation>
    </message>
    <message>
        <source>expected a whole number, 0 or more</source>
        <translation>erwartet wird eine ganze Zahl, 0 oder mehr</translation>
    </message>
    <message>
        <source>expected an address of one value; {0} is a table</source>
        <translation>erwartet wird die Adresse eines einzelnen Werts; {0} ist eine Tabelle</translation>
    </message>
    <message>
        <source>expected an address of one value; {0} is a value, not a table</source>
        <translation>erwartet wird die Adresse eines einzelnen Werts; {0} ist ein Wert, keine Tabelle</translation>
    </message>
    <message>
        <source>expected an address such as &quot;case.width&quot;</source>
        <translation>erwartet wird eine Adresse wie &quot;case.width&quot;</translation>
    </message>
    <message>
        <source>expected an address that the file gives: nothing stands at {0}</source>
        <translation>erwartet wird eine Adresse, die die Datei angibt: bei {0} steht nichts</translation>
    </message>
    <message>
        <source>expected an angle; it {0}: {1}</source>
        <translation>erwartet wird ein Winkel; er {0}: {1}</translation>
    </message>
    <message>
        <source>expected at least the frames&apos; {0}</source>
        <translation>erwartet werden mindestens die {0} der Rahmen</translation>
    </message>
    <message>
        <source>expected at least {0}</source>
        <translation>erwartet wird mindestens {0}</translation>
    </message>
    <message>
        <source>expected at least {0} for biscuits, or a spline</source>
        <translation>erwartet werden mindestens {0} für Lamellen, oder eine Feder</translation>
    </message>
    <message>
        <source>expected at least {0} for one dovetail: a flatter slant or a deeper case</source>
        <translation>erwartet werden mindestens {0} für eine Schwalbe: eine flachere Schräge oder ein tieferer Korpus</translation>
    </message>
    <message>
        <source>expected at least {0} for one dovetail: a higher opening, or back_joint = &quot;dado&quot;</source>
        <translation>erwartet werden mindestens {0} für eine Schwalbe: ein höheres Fach, oder back_joint = &quot;dado&quot;</translation>
    </message>
    <message>
        <source>expected at least {0}, edges jointed</source>
        <translation>erwartet werden mindestens {0}, mit gefügten Kanten</translation>
    </message>
    <message>
        <source>expected at least {0}, for its mortises</source>
        <translation>erwartet werden mindestens {0}, für die Zapfenlöcher</translation>
    </message>
    <message>
        <source>expected at least {0}, for its tenon</source>
        <translation>erwartet werden mindestens {0}, für den Zapfen</translation>
    </message>
    <message>
        <source>expected at least {0}, for the block that stops it, or stops = false</source>
        <translation>erwartet werden mindestens {0}, für den Klotz, der ihn anhält, oder stops = false</translation>
    </message>
    <message>
        <source>expected at least {0}, for the lock&apos;s bolt, or lid.lock = false</source>
        <translation>erwartet werden mindestens {0}, für den Riegel des Schlosses, oder lid.lock = false</translation>
    </message>
    <message>
        <source>expected at least {0}, to carry the hinges: a steeper slant or a deeper case</source>
        <translation>erwartet werden mindestens {0}, um die Bänder zu tragen: eine steilere Schräge oder ein tieferer Korpus</translation>
    </message>
    <message>
        <source>expected at least {0}: a deeper case or higher openings</source>
        <translation>erwartet werden mindestens {0}: ein tieferer Korpus oder höhere Fächer</translation>
    </message>
    <message>
        <source>expected at least {0}: a front further forward, a deeper case, or no drawers</source>
        <translation>erwartet werden mindestens {0}: eine Front weiter vorn, ein tieferer Korpus oder keine Schubkästen</translation>
    </message>
    <message>
        <source>expected at least {0}: a front further forward, a steeper slant or a deeper case</source>
        <translation>erwartet werden mindestens {0}: eine Front weiter vorn, eine steilere Schräge oder ein tieferer Korpus</translation>
    </message>
    <message>
        <source>expected at least {0}: a half pin stands under the groove</source>
        <translation>erwartet werden mindestens {0}: unter der Nut steht ein Halbzinken</translation>
    </message>
    <message>
        <source>expected at least {0}: a higher opening</source>
        <translation>erwartet werden mindestens {0}: ein höheres Fach</translation>
    </message>
    <message>
        <source>expected at least {0}: a higher opening, a lower groove or less drop</source>
        <translation>erwartet werden mindestens {0}: ein höheres Fach, eine tiefere Nut oder weniger Absenkung</translation>
    </message>
    <message>
        <source>expected at least {0}: a tail no narrower at its root than a pin</source>
        <translation>erwartet werden mindestens {0}: eine Schwalbe, die an der Wurzel nicht schmäler ist als ein Zinken</translation>
    </message>
    <message>
        <source>expected at least {0}: a thicker top or a smaller bevel</source>
        <translation>erwartet werden mindestens {0}: eine dickere Deckplatte oder eine kleinere Abschrägung</translation>
    </message>
    <message>
        <source>expected at least {0}: fewer levels, another height, or a higher case</source>
        <translation>erwartet werden mindestens {0}: weniger Ebenen, eine andere Höhe oder ein höherer Korpus</translation>
    </message>
    <message>
        <source>expected at least {0}: the foot block stands behind it; or a smaller base.block</source>
        <translation>erwartet werden mindestens {0}: dahinter steht der Fußklotz; oder ein kleinerer base.block</translation>
    </message>
    <message>
        <source>expected at least {0}: the sides end {1} below the bottom</source>
        <translation>erwartet werden mindestens {0}: die Seiten enden {1} unter dem Unterboden</translation>
    </message>
    <message>
        <source>expected at most half of the frame&apos;s {0}</source>
        <translation>erwartet wird höchstens die Hälfte der {0} des Rahmens</translation>
    </message>
    <message>
        <source>expected at most {0}</source>
        <translation>erwartet wird höchstens {0}</translation>
    </message>
    <message>
        <source>expected at most {0} for a front of {1}</source>
        <translation>erwartet werden höchstens {0} bei einem Vorderstück von {1}</translation>
    </message>
    <message>
        <source>expected at most {0} in a cap of {1}</source>
        <translation>erwartet werden höchstens {0} in einer Hirnleiste von {1}</translation>
    </message>
    <message>
        <source>expected at most {0} in a lid of {1}</source>
        <translation>erwartet werden höchstens {0} in einer Klappe von {1}</translation>
    </message>
    <message>
        <source>expected at most {0} in a lid {1} high</source>
        <translation>erwartet werden höchstens {0} in einer Klappe {1} hoch</translation>
    </message>
    <message>
        <source>expected at most {0} in a plinth of {1}</source>
        <translation>erwartet werden höchstens {0} in einem Sockel von {1}</translation>
    </message>
    <message>
        <source>expected at most {0} of {1}: the tails go halfway in at least</source>
        <translation>erwartet werden höchstens {0} von {1}: die Schwalben gehen mindestens zur Hälfte hinein</translation>
    </message>
    <message>
        <source>expected at most {0} on a plinth {1} thick and {2} high</source>
        <translation>erwartet werden höchstens {0} an einem Sockel {1} dick und {2} hoch</translation>
    </message>
    <message>
        <source>expected at most {0} on a step of {1}</source>
        <translation>erwartet werden höchstens {0} an einer Stufe von {1}</translation>
    </message>
    <message>
        <source>expected at most {0} on a top of {1}</source>
        <translation>erwartet werden höchstens {0} an einer Deckplatte von {1}</translation>
    </message>
    <message>
        <source>expected at most {0} on an edge of {1}</source>
        <translation>erwartet werden höchstens {0} an einer Kante von {1}</translation>
    </message>
    <message>
        <source>expected at most {0}, a third of a board less its gap</source>
        <translation>erwartet werden höchstens {0}, ein Drittel eines Bretts ohne seine Fuge</translation>
    </message>
    <message>
        <source>expected at most {0}, a third of the thinner board</source>
        <translation>erwartet werden höchstens {0}, ein Drittel des dünneren Bretts</translation>
    </message>
    <message>
        <source>expected at most {0}, for its runners</source>
        <translation>erwartet werden höchstens {0}, für seine Laufleisten</translation>
    </message>
    <message>
        <source>expected at most {0}, for the block that stops it</source>
        <translation>erwartet werden höchstens {0}, für den Klotz, der ihn anhält</translation>
    </message>
    <message>
        <source>expected at most {0}, half the space at the head of bay {1}</source>
        <translation>erwartet werden höchstens {0}, die Hälfte des Raums am Kopf von Feld {1}</translation>
    </message>
    <message>
        <source>expected at most {0}, or fewer of them, on a front of {1}</source>
        <translation>erwartet werden höchstens {0}, oder weniger davon, auf einem Vorderstück von {1}</translation>
    </message>
    <message>
        <source>expected at most {0}, to stay in the case</source>
        <translation>erwartet: höchstens {0}, damit es im Korpus bleibt</translation>
    </message>
    <message>
        <source>expected at most {0}, {1} less than the front</source>
        <translation>erwartet werden höchstens {0}, {1} weniger als das Vorderstück</translation>
    </message>
    <message>
        <source>expected at most {0}: half the shelf, and no further than the partition goes</source>
        <translation>erwartet werden höchstens {0}: die Hälfte des Bodens, und nicht weiter als die Fachwand reicht</translation>
    </message>
    <message>
        <source>expected at most {0}: more would be narrower than their pins</source>
        <translation>erwartet wird höchstens {0}: mehr wären schmäler als ihre Zinken</translation>
    </message>
    <message>
        <source>expected at most {0}: the lowest tail holds the bottom&apos;s groove</source>
        <translation>erwartet wird höchstens {0}: die unterste Schwalbe trägt die Nut des Bodens</translation>
    </message>
    <message>
        <source>expected at most {0}: {1} are left at the dovetail&apos;s root</source>
        <translation>erwartet werden höchstens {0}: {1} bleiben an der Wurzel der Schwalbe</translation>
    </message>
    <message>
        <source>expected base.mitre = &quot;spline&quot; or &quot;plain&quot;: no biscuit has room in such a mitre</source>
        <translation>erwartet wird base.mitre = &quot;spline&quot; oder &quot;plain&quot;: in so einer Gehrung hat keine Lamelle Platz</translation>
    </message>
    <message>
        <source>expected bays of {0} at least, at most {1} of them in {2}</source>
        <translation>erwartet werden Felder von mindestens {0}, höchstens {1} davon in {2}</translation>
    </message>
    <message>
        <source>expected bracket_path, or another bracket</source>
        <translation>erwartet wird bracket_path, oder ein anderer Bogen</translation>
    </message>
    <message>
        <source>expected clear heights of {0} at least, {1} each at most</source>
        <translation>erwartet werden lichte Höhen von mindestens {0}, höchstens {1} jede</translation>
    </message>
    <message>
        <source>expected column {0} at least {1} wide: its runner lies in the side&apos;s</source>
        <translation>erwartet wird Spalte {0} mindestens {1} breit: ihre Laufleiste liegt in der der Seite</translation>
    </message>
    <message>
        <source>expected columns in a row, or a fill alone: rows are divided into columns and these no further</source>
        <translation>erwartet werden Spalten in einer Reihe, oder eine Füllung allein: Reihen werden in Spalten geteilt und diese nicht weiter</translation>
    </message>
    <message>
        <source>expected columns that add up to {0}, each at least {1}: fewer columns, other sizes, or a wider case</source>
        <translation>erwartet werden Spalten, die zusammen {0} ergeben, jede mindestens {1}: weniger Spalten, andere Maße oder ein breiterer Korpus</translation>
    </message>
    <message>
        <source>expected drawer, pigeonhole or none: lid supports stand beside the topmost drawer of a slant-desk</source>
        <translation>erwartet wird drawer, pigeonhole oder none: neben dem obersten Schubkasten eines Schreibschranks stehen die Klappenstützen</translation>
    </message>
    <message>
        <source>expected dry ≤ build ≤ wet</source>
        <translation>erwartet wird dry ≤ build ≤ wet</translation>
    </message>
    <message>
        <source>expected each key and each table once</source>
        <translation>erwartet wird jeder Schlüssel und jede Tabelle einmal</translation>
    </message>
    <message>
        <source>expected either quarters (rough) or thickness (dressed)</source>
        <translation>erwartet wird entweder quarters (sägerau) oder thickness (gehobelt)</translation>
    </message>
    <message>
        <source>expected false: a back in grooves goes in from above, and here a board lies above</source>
        <translation>erwartet wird false: eine Rückwand in Nuten geht von oben hinein, und hier liegt ein Brett darüber</translation>
    </message>
    <message>
        <source>expected false: a lid hinged above has no edge over it</source>
        <translation>erwartet wird false: eine oben angeschlagene Klappe hat keine Kante über sich</translation>
    </message>
    <message>
        <source>expected false: a lid on the slant has no edge of the top above it; rabbet it, or set it flush</source>
        <translation>erwartet wird false: eine Klappe auf der Schräge hat keine Kante der Deckplatte über sich; einfälzen, oder bündig setzen</translation>
    </message>
    <message>
        <source>expected format = {0}</source>
        <translation>erwartet wird format = {0}</translation>
    </message>
    <message>
        <source>expected format = {0}; the file is left as it is</source>
        <translation>erwartet wird format = {0}; die Datei bleibt, wie sie ist</translation>
    </message>
    <message>
        <source>expected format {0} or earlier: a later version of shopdraw wrote this file; it is left as it is</source>
        <translation>erwartet wird Format {0} oder früher: eine spätere Fassung von shopdraw hat diese Datei geschrieben; sie bleibt, wie sie ist</translation>
    </message>
    <message>
        <source>expected less than the case&apos;s height of {0}</source>
        <translation>erwartet wird weniger als die Höhe des Korpus von {0}</translation>
    </message>
    <message>
        <source>expected less than {0}</source>
        <translation>erwartet wird weniger als {0}</translation>
    </message>
    <message>
        <source>expected less than {0}: the stiles are glued to the sides</source>
        <translation>erwartet wird weniger als {0}: die aufrechten Friese sind an die Seiten geleimt</translation>
    </message>
    <message>
        <source>expected lists and tables that are not nested hundreds deep</source>
        <translation>erwartet werden Listen und Tabellen, die nicht hundertfach ineinander stehen</translation>
    </message>
    <message>
        <source>expected narrower panels, or plywood: {0} stay in the groove when dry</source>
        <translation>erwartet werden schmälere Füllungen, oder Sperrholz: trocken bleiben {0} in der Nut</translation>
    </message>
    <message>
        <source>expected newline or end of document after a statement</source>
        <translation>erwartet wird eine neue Zeile oder das Ende nach einer Angabe</translation>
    </message>
    <message>
        <source>expected no [face]: drawers run between the sides, and a face frame would stand in their way</source>
        <translation>erwartet wird kein [face]: Schubkästen laufen zwischen den Seiten, und ein Blendrahmen stünde ihnen im Weg</translation>
    </message>
    <message>
        <source>expected no variant: the file has none</source>
        <translation>erwartet wird keine Variante: die Datei hat keine</translation>
    </message>
    <message>
        <source>expected none under a slant lid</source>
        <translation>erwartet wird keiner unter einer schrägen Klappe</translation>
    </message>
    <message>
        <source>expected one of the piece&apos;s stocks: {0}</source>
        <translation>erwartet wird eines der Materialien des Möbels: {0}</translation>
    </message>
    <message>
        <source>expected one of them: the other follows</source>
        <translation>erwartet wird eines davon: das andere folgt</translation>
    </message>
    <message>
        <source>expected one of width, top_width and foot_width</source>
        <translation>erwartet: width, top_width oder foot_width</translation>
    </message>
    <message>
        <source>expected one of {0}</source>
        <translation>erwartet wird eines von {0}</translation>
    </message>
    <message>
        <source>expected one width only, and {0} is given: over the case, its top or its feet</source>
        <translation>erwartet: nur eine Breite, und {0} ist angegeben: über den Korpus, seine Platte oder seine Füße</translation>
    </message>
    <message>
        <source>expected over the shelf at {0} and under the top at {1}</source>
        <translation>erwartet wird: über dem Boden bei {0} und unter der Deckplatte bei {1}</translation>
    </message>
    <message>
        <source>expected panels at least {0} each way: narrower members, or fewer panels</source>
        <translation>erwartet werden Füllungen von mindestens {0} in jeder Richtung: schmälere Friese, oder weniger Füllungen</translation>
    </message>
    <message>
        <source>expected shorter feet: {0} more are needed on a board of {1}</source>
        <translation>erwartet werden kürzere Füße: {0} mehr sind nötig auf einem Brett von {1}</translation>
    </message>
    <message>
        <source>expected smaller radii: {0}</source>
        <translation>erwartet werden kleinere Radien: {0}</translation>
    </message>
    <message>
        <source>expected text in quotes</source>
        <translation>erwartet wird Text in Anführungszeichen</translation>
    </message>
    <message>
        <source>expected text saved as UTF-8</source>
        <translation>erwartet wird Text in UTF-8</translation>
    </message>
    <message>
        <source>expected thicker than the strips&apos; {0}: its ends are let in behind them</source>
        <translation>erwartet wird: dicker als die {0} der Leisten, hinter denen die Enden eingelassen sind</translation>
    </message>
    <message>
        <source>expected threes of across, up, bulge: across from 0 at the end to 1 in the middle, up from 0 to {0}</source>
        <translation>erwartet werden Dreiergruppen von quer, hoch, Wölbung: quer von 0 am Ende bis 1 in der Mitte, hoch von 0 bis {0}</translation>
    </message>
    <message>
        <source>expected threes of across, up, radius: from the foot&apos;s inner end to the edge between the feet, as [0, 30, 12, 40, 40, 0]</source>
        <translation>erwartet werden Dreiergruppen von quer, hoch, Radius: vom inneren Ende des Fußes bis zur Kante zwischen den Füßen, etwa [0, 30, 12, 40, 40, 0]</translation>
    </message>
    <message>
        <source>expected true or false</source>
        <translation>erwartet wird true oder false</translation>
    </message>
    <message>
        <source>expected turn = true for kind = &quot;sheet&quot; only: solid wood always keeps its grain</source>
        <translation>erwartet wird turn = true nur bei kind = &quot;sheet&quot;: Massivholz behält immer seine Faserrichtung</translation>
    </message>
    <message>
        <source>expected widths that add up to {0}: {1} {2}</source>
        <translation>erwartet werden Breiten, die zusammen {0} ergeben: {1} {2}</translation>
    </message>
    <message>
        <source>expected within {0} of {1}, this is {2} off: it looks like fitting to the page is on; print at 100 % and measure again</source>
        <translation>erwartet wird innerhalb von {0} von {1}, dies ist um {2} daneben: es sieht nach Anpassen an die Seite aus; mit 100 % drucken und noch einmal messen</translation>
    </message>
    <message>
        <source>expected {0}</source>
        <translation>erwartet wird {0}</translation>
    </message>
    <message>
        <source>expected {0} for boards of {1} and</source>
        <translation>erwartet wird {0} bei Brettern von {1} und</translation>
    </message>
    <message>
        <source>expected {0} or {1}: it shares its holes, {2} apart, with the shelf below it</source>
        <translation>erwartet wird {0} oder {1}: er teilt seine Löcher, {2} auseinander, mit dem Boden darunter</translation>
    </message>
    <message>
        <source>expected {0}, for its fixing</source>
        <translation>erwartet: {0}, wegen der Befestigung</translation>
    </message>
    <message>
        <source>expected {0}, no larger than {1}</source>
        <translation>erwartet wird {0}, nicht größer als {1}</translation>
    </message>
    <message>
        <source>expected {0}, or at least {1}: the guides behind are as thick as that</source>
        <translation>erwartet wird {0}, oder mindestens {1}: die Streichleisten dahinter sind so dick</translation>
    </message>
    <message>
        <source>expected {0}, which is a short text</source>
        <translation>erwartet wird {0}, also ein kurzer Text</translation>
    </message>
    <message>
        <source>expected {0}: a front board before it and a rear one behind</source>
        <translation>erwartet wird {0}: ein vorderes Brett davor und ein hinteres dahinter</translation>
    </message>
    <message>
        <source>expected {0}: format = {1}, then [piece], [case] with its width, height and depth</source>
        <translation>erwartet wird {0}: format = {1}, dann [piece], [case] mit width, height und depth</translation>
    </message>
    <message>
        <source>expected {0}: format = {1}, then [shop], [saw], [cutter.ID], …</source>
        <translation>erwartet wird {0}: format = {1}, dann [shop], [saw], [cutter.ID], …</translation>
    </message>
    <message>
        <source>expected {0}: over the front rail and on the runner behind it</source>
        <translation>erwartet wird {0}: über der vorderen Traverse und auf der Laufleiste dahinter</translation>
    </message>
    <message>
        <source>expected {0}{1}</source>
        <translation>erwartet wird {0}{1}</translation>
    </message>
    <message>
        <source>face frame, {0} rail</source>
        <translation>Blendrahmen, Querfries {0}</translation>
    </message>
    <message>
        <source>face frame, {0} stile</source>
        <translation>Blendrahmen, aufrechter Fries {0}</translation>
    </message>
    <message>
        <source>face rail under drawer {0}</source>
        <translation>Traverse unter Schubkasten {0}</translation>
    </message>
    <message>
        <source>face {0} of {1}{2}; {3} to the fence both times</source>
        <translation>Seite {0} von {1}{2}; {3} beide Male am Anschlag</translation>
    </message>
    <message>
        <source>fast</source>
        <translation>fest</translation>
    </message>
    <message>
        <source>fewer tails</source>
        <translation>weniger Schwalben</translation>
    </message>
    <message>
        <source>fewer tails, or a shallower rabbet for the back</source>
        <translation>weniger Schwalben, oder ein flacherer Falz für die Rückwand</translation>
    </message>
    <message>
        <source>file exists</source>
        <translation>die Datei gibt es schon</translation>
    </message>
    <message>
        <source>finished width</source>
        <translation>fertige Breite</translation>
    </message>
    <message>
        <source>fix it to the wall with two brackets, a screw at least {0} long into solid framing behind each, and say so in load.anchored; keep heavy things in the lowest drawers</source>
        <translation>mit zwei Winkeln an der Wand befestigen, hinter jedem eine Schraube von mindestens {0} in tragendem Holz, und es in load.anchored sagen; Schweres in die untersten Schubkästen</translation>
    </message>
    <message>
        <source>flat square to the slant, takes off the sharp corner</source>
        <translation>Fläche rechtwinklig zur Schräge, nimmt die scharfe Ecke weg</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>Fußboden</translation>
    </message>
    <message>
        <source>foot</source>
        <translation>Fuß</translation>
    </message>
    <message>
        <source>foot block, {0} {1}</source>
        <translation>Fußklotz, {0} {1}</translation>
    </message>
    <message>
        <source>format {0} is later than {1}</source>
        <translation>Format {0} ist später als {1}</translation>
    </message>
    <message>
        <source>found invalid character {0}</source>
        <translation>unzulässiges Zeichen {0}</translation>
    </message>
    <message>
        <source>found {0}</source>
        <translation>gefunden {0}</translation>
    </message>
    <message>
        <source>frames and rails</source>
        <translation>Rahmen und Traversen</translation>
    </message>
    <message>
        <source>from front to back</source>
        <translation>von vorn nach hinten</translation>
    </message>
    <message>
        <source>from the floor</source>
        <translation>vom Fußboden</translation>
    </message>
    <message>
        <source>from the front plane</source>
        <translation>von der Vorderebene</translation>
    </message>
    <message>
        <source>from the left outer face</source>
        <translation>von der linken Außenseite</translation>
    </message>
    <message>
        <source>from {0} in, {1} long</source>
        <translation>ab {0}, {1} lang</translation>
    </message>
    <message>
        <source>front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>front board under the lid</source>
        <translation>vorderes Brett unter der Klappe</translation>
    </message>
    <message>
        <source>front corner, hides the stopped dado</source>
        <translation>vordere Ecke, verdeckt die abgesetzte Quernut</translation>
    </message>
    <message>
        <source>front edge</source>
        <translation>vordere Kante</translation>
    </message>
    <message>
        <source>front edge {0}</source>
        <translation>vordere Kante {0}</translation>
    </message>
    <message>
        <source>front end</source>
        <translation>vorderes Ende</translation>
    </message>
    <message>
        <source>glue block {0}</source>
        <translation>Leimklotz {0}</translation>
    </message>
    <message>
        <source>glued</source>
        <translation>geleimt</translation>
    </message>
    <message>
        <source>glued width</source>
        <translation>verleimte Breite</translation>
    </message>
    <message>
        <source>greater than or equal to {0}</source>
        <translation>größer oder gleich {0}</translation>
    </message>
    <message>
        <source>greater than {0}</source>
        <translation>größer als {0}</translation>
    </message>
    <message>
        <source>groove</source>
        <translation>Nut</translation>
    </message>
    <message>
        <source>guide behind the divider, {0}</source>
        <translation>Streichleiste hinter der Trennwand, {0}</translation>
    </message>
    <message>
        <source>guide beside drawer {0}, {1}</source>
        <translation>Streichleiste neben Schubkasten {0}, {1}</translation>
    </message>
    <message>
        <source>guide collar</source>
        <translation>Kopierring</translation>
    </message>
    <message>
        <source>half of the hinge&apos;s barrel</source>
        <translation>Hälfte der Bandrolle</translation>
    </message>
    <message>
        <source>has &quot;{0}&quot;, which is no unit known here</source>
        <translation>hat „{0}“, das hier keine bekannte Einheit ist</translation>
    </message>
    <message>
        <source>has a decimal sign without a figure after it</source>
        <translation>hat ein Dezimalzeichen ohne Ziffer dahinter</translation>
    </message>
    <message>
        <source>has a drawer</source>
        <translation>hat einen Schubkasten</translation>
    </message>
    <message>
        <source>has a minus without a space on both sides</source>
        <translation>hat ein Minus ohne Leerzeichen auf beiden Seiten</translation>
    </message>
    <message>
        <source>has a plus or minus with nothing beside it</source>
        <translation>hat ein Plus oder Minus mit nichts daneben</translation>
    </message>
    <message>
        <source>has a thousands mark</source>
        <translation>hat ein Tausenderzeichen</translation>
    </message>
    <message>
        <source>has a unit on one length and none on another</source>
        <translation>hat bei einer Länge eine Einheit und bei der anderen keine</translation>
    </message>
    <message>
        <source>has feet and inches that don&apos;t go together</source>
        <translation>hat Fuß und Zoll, die nicht zusammenpassen</translation>
    </message>
    <message>
        <source>has minutes or seconds that don&apos;t go with it</source>
        <translation>hat Minuten oder Sekunden, die nicht dazu passen</translation>
    </message>
    <message>
        <source>has two numbers side by side</source>
        <translation>hat zwei Zahlen nebeneinander</translation>
    </message>
    <message>
        <source>has two signs in a row</source>
        <translation>hat zwei Vorzeichen hintereinander</translation>
    </message>
    <message>
        <source>has {0}/{1} after a whole number</source>
        <translation>hat {0}/{1} nach einer ganzen Zahl</translation>
    </message>
    <message>
        <source>haunch, fills the panel&apos;s groove</source>
        <translation>Zapfenbrust, füllt die Nut der Füllung</translation>
    </message>
    <message>
        <source>head</source>
        <translation>Kopf</translation>
    </message>
    <message>
        <source>height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>high under the open lid</source>
        <translation>hoch unter der offenen Klappe</translation>
    </message>
    <message>
        <source>hinge leaf</source>
        <translation>Bandlappen</translation>
    </message>
    <message>
        <source>hinge {0}</source>
        <translation>Band {0}</translation>
    </message>
    <message>
        <source>holds &quot;{0}&quot;</source>
        <translation>enthält „{0}“</translation>
    </message>
    <message>
        <source>hollow</source>
        <translation>Kehle</translation>
    </message>
    <message>
        <source>illegal character {0}</source>
        <translation>unzulässiges Zeichen {0}</translation>
    </message>
    <message>
        <source>in a plane of its own, {0} deep</source>
        <translation>in einer eigenen Ebene, {0} tief</translation>
    </message>
    <message>
        <source>in height</source>
        <translation>in der Höhe</translation>
    </message>
    <message>
        <source>in the driest season</source>
        <translation>in der trockensten Zeit</translation>
    </message>
    <message>
        <source>in the driest season the lid&apos;s lip covers the gap at the top by {0}; right would be {1} or more: lid.lip {2}</source>
        <translation>in der trockensten Zeit deckt der Überschlag der Klappe die Fuge oben um {0}; richtig wären {1} oder mehr: lid.lip {2}</translation>
    </message>
    <message>
        <source>in the slant plane: {0}° from level, tilt {1}° from square</source>
        <translation>in der Schräge: {0}° zur Waagerechten, Neigung {1}° gegen den Winkel</translation>
    </message>
    <message>
        <source>in the wettest season</source>
        <translation>in der feuchtesten Zeit</translation>
    </message>
    <message>
        <source>in width</source>
        <translation>in der Breite</translation>
    </message>
    <message>
        <source>inner</source>
        <translation>innen</translation>
    </message>
    <message>
        <source>invalid date or datetime</source>
        <translation>ungültiges Datum</translation>
    </message>
    <message>
        <source>invalid hex value</source>
        <translation>ungültiger Hexadezimalwert</translation>
    </message>
    <message>
        <source>invalid initial character for a key part</source>
        <translation>so darf ein Schlüssel nicht beginnen</translation>
    </message>
    <message>
        <source>invalid statement</source>
        <translation>ungültige Angabe</translation>
    </message>
    <message>
        <source>invalid value</source>
        <translation>ungültiger Wert</translation>
    </message>
    <message>
        <source>is a directory</source>
        <translation>ist ein Ordner</translation>
    </message>
    <message>
        <source>is below zero</source>
        <translation>liegt unter null</translation>
    </message>
    <message>
        <source>is divided</source>
        <translation>ist geteilt</translation>
    </message>
    <message>
        <source>is empty</source>
        <translation>ist leer</translation>
    </message>
    <message>
        <source>is no longer in the piece</source>
        <translation>ist nicht mehr im Möbel</translation>
    </message>
    <message>
        <source>is not a size</source>
        <translation>ist keine Größe</translation>
    </message>
    <message>
        <source>is over a full turn</source>
        <translation>ist über eine volle Drehung</translation>
    </message>
    <message>
        <source>is too long</source>
        <translation>ist zu lang</translation>
    </message>
    <message>
        <source>is written with a power of ten</source>
        <translation>ist mit einer Zehnerpotenz geschrieben</translation>
    </message>
    <message>
        <source>is {0} characters long</source>
        <translation>ist {0} Zeichen lang</translation>
    </message>
    <message>
        <source>it ends {0} short of where it should</source>
        <translation>es endet {0} früher, als es sollte</translation>
    </message>
    <message>
        <source>it goes to {0}, and there is no {1} in this piece</source>
        <translation>es gehört zu {0}, und {1} gibt es in diesem Möbel nicht</translation>
    </message>
    <message>
        <source>it is {0} too long</source>
        <translation>es ist {0} zu lang</translation>
    </message>
    <message>
        <source>it isn&apos;t seen at its true size here ({0} instead of {1})</source>
        <translation>es ist hier nicht in wahrer Größe zu sehen ({0} statt {1})</translation>
    </message>
    <message>
        <source>it would need {0} of room and {1} has no such cut</source>
        <translation>es brauchte {0} Platz, und „{1}“ hat keinen solchen Schnitt</translation>
    </message>
    <message>
        <source>its cuts, outline or stock</source>
        <translation>Schnitte, Umriss oder Material</translation>
    </message>
    <message>
        <source>its end</source>
        <translation>Stirnseite</translation>
    </message>
    <message>
        <source>its features are {0} apart on paper; at least {1} is readable</source>
        <translation>die Kanten liegen auf dem Papier {0} auseinander; lesbar ist es ab {1}</translation>
    </message>
    <message>
        <source>its printer &quot;{0}&quot; isn&apos;t in this file; found {1}</source>
        <translation>der Drucker &quot;{0}&quot; ist nicht in dieser Datei; gefunden {1}</translation>
    </message>
    <message>
        <source>keeper&apos;s plate</source>
        <translation>Schließblech</translation>
    </message>
    <message>
        <source>keyhole</source>
        <translation>Schlüsselloch</translation>
    </message>
    <message>
        <source>kicker</source>
        <translation>Kippleiste</translation>
    </message>
    <message>
        <source>kicker over drawer {0}</source>
        <translation>Kippleiste über Schubkasten {0}</translation>
    </message>
    <message>
        <source>kicker over drawer {0}, {1}</source>
        <translation>Kippleiste über Schubkasten {0}, {1}</translation>
    </message>
    <message>
        <source>kicker over lid support, {0}</source>
        <translation>Kippleiste über der Klappenstütze, {0}</translation>
    </message>
    <message>
        <source>knob</source>
        <translation>Knopf</translation>
    </message>
    <message>
        <source>knob screw</source>
        <translation>Knopfschraube</translation>
    </message>
    <message>
        <source>lap</source>
        <translation>Überdeckung</translation>
    </message>
    <message>
        <source>lap over {0}</source>
        <translation>Überdeckung über „{0}“</translation>
    </message>
    <message>
        <source>lap, behind</source>
        <translation>Überdeckung, hinten</translation>
    </message>
    <message>
        <source>lap, in front</source>
        <translation>Überdeckung, vorn</translation>
    </message>
    <message>
        <source>layout of second settings</source>
        <translation>Anriss der zweiten Aufspannungen</translation>
    </message>
    <message>
        <source>leaves {0} before its point</source>
        <translation>lässt {0} vor ihrer Spitze</translation>
    </message>
    <message>
        <source>ledge</source>
        <translation>Buchleiste</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>left edge</source>
        <translation>linke Kante</translation>
    </message>
    <message>
        <source>left end</source>
        <translation>linkes Ende</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>less</source>
        <translation>weniger</translation>
    </message>
    <message>
        <source>less than or equal to {0}</source>
        <translation>kleiner oder gleich {0}</translation>
    </message>
    <message>
        <source>less than {0}</source>
        <translation>kleiner als {0}</translation>
    </message>
    <message>
        <source>level {0}: {1}</source>
        <translation>Ebene {0}: {1}</translation>
    </message>
    <message>
        <source>lid</source>
        <translation>Klappe</translation>
    </message>
    <message>
        <source>lid and supports</source>
        <translation>Klappe und Stützen</translation>
    </message>
    <message>
        <source>lid lock</source>
        <translation>Klappenschloss</translation>
    </message>
    <message>
        <source>lid stay</source>
        <translation>Klappenhalter</translation>
    </message>
    <message>
        <source>lid stay with stop</source>
        <translation>Klappenhalter mit Anschlag</translation>
    </message>
    <message>
        <source>lid stop, {0}</source>
        <translation>Klappenanschlag, {0}</translation>
    </message>
    <message>
        <source>lid support, {0}</source>
        <translation>Klappenstütze, {0}</translation>
    </message>
    <message>
        <source>lid support, {0}, head</source>
        <translation>Klappenstütze, {0}, Kopfstück</translation>
    </message>
    <message>
        <source>lid support, {0}, stop</source>
        <translation>Klappenstütze, {0}, Anschlag</translation>
    </message>
    <message>
        <source>lid, breadboard cap, {0}</source>
        <translation>Klappe, Hirnleiste, {0}</translation>
    </message>
    <message>
        <source>lid.edge, a moulding</source>
        <translation>lid.edge, ein Profil</translation>
    </message>
    <message>
        <source>line {0}: {1}</source>
        <translation>Zeile {0}: {1}</translation>
    </message>
    <message>
        <source>lip</source>
        <translation>Überschlag</translation>
    </message>
    <message>
        <source>lip, {0}</source>
        <translation>Überschlag, {0}</translation>
    </message>
    <message>
        <source>lock keeper</source>
        <translation>Schließblech</translation>
    </message>
    <message>
        <source>lower</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>lower edge</source>
        <translation>untere Kante</translation>
    </message>
    <message>
        <source>lower end</source>
        <translation>unteres Ende</translation>
    </message>
    <message>
        <source>lower it, or set it back</source>
        <translation>senken, oder zurücksetzen</translation>
    </message>
    <message>
        <source>machine settings</source>
        <translation>Maschineneinstellungen</translation>
    </message>
    <message>
        <source>may slide</source>
        <translation>kann gleiten</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>middle {0}</source>
        <translation>Mitte {0}</translation>
    </message>
    <message>
        <source>mitre</source>
        <translation>Gehrung</translation>
    </message>
    <message>
        <source>mitre with {0}, tilt 45° from square</source>
        <translation>Gehrung mit „{0}“, Neigung 45° gegen den Winkel</translation>
    </message>
    <message>
        <source>mm in steps of &quot;{0}&quot; with &quot;{1}&quot;; {2}</source>
        <translation>mm in Schritten von &quot;{0}&quot; mit &quot;{1}&quot;; {2}</translation>
    </message>
    <message>
        <source>more</source>
        <translation>mehr</translation>
    </message>
    <message>
        <source>more than {0} MB</source>
        <translation>mehr als {0} MB</translation>
    </message>
    <message>
        <source>mortise</source>
        <translation>Zapfenloch</translation>
    </message>
    <message>
        <source>moulding cutter of this profile, along the edge</source>
        <translation>Profilfräser dieser Form, an der Kante entlang</translation>
    </message>
    <message>
        <source>moulding, upper edge</source>
        <translation>Profil, obere Kante</translation>
    </message>
    <message>
        <source>moulding, {0} edge</source>
        <translation>Profil, Kante {0}</translation>
    </message>
    <message>
        <source>m² of wood</source>
        <translation>m² Holz</translation>
    </message>
    <message>
        <source>neither angle nor top_depth</source>
        <translation>weder angle noch top_depth</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>no [printer.ID] at all</source>
        <translation>überhaupt kein [printer.ID]</translation>
    </message>
    <message>
        <source>no free place for its figure beside the view</source>
        <translation>kein freier Platz für die Zahl neben der Ansicht</translation>
    </message>
    <message>
        <source>no free place for its figure in the view</source>
        <translation>kein freier Platz für die Zahl in der Ansicht</translation>
    </message>
    <message>
        <source>no free place for the balloon</source>
        <translation>kein freier Platz für die Kennung</translation>
    </message>
    <message>
        <source>no less than a quarter</source>
        <translation>nicht weniger als ein Viertel</translation>
    </message>
    <message>
        <source>no more than a half</source>
        <translation>nicht mehr als die Hälfte</translation>
    </message>
    <message>
        <source>no room for {0} on {1}: {2}; a larger paper or scale would take it</source>
        <translation>kein Platz für {0} auf {1}: {2}; ein größeres Papier oder ein größerer Maßstab nähme es auf</translation>
    </message>
    <message>
        <source>no space left on device</source>
        <translation>kein Platz mehr auf dem Datenträger</translation>
    </message>
    <message>
        <source>no strips or face frame before the sides</source>
        <translation>keine Leisten und kein Blendrahmen vor den Seiten</translation>
    </message>
    <message>
        <source>no such file or directory</source>
        <translation>diese Datei gibt es nicht</translation>
    </message>
    <message>
        <source>no view had room for it</source>
        <translation>keine Ansicht hatte Platz dafür</translation>
    </message>
    <message>
        <source>no wider than the side over the writing shelf&apos;s underside</source>
        <translation>nicht breiter als die Seite über der Unterseite der Schreibplatte</translation>
    </message>
    <message>
        <source>no wood of {0} stands in {1}: the board ends before its joint</source>
        <translation>kein Holz von „{0}“ steht in „{1}“: das Brett endet vor seiner Verbindung</translation>
    </message>
    <message>
        <source>no {0} &quot;{1}&quot;; the nearest are {2}</source>
        <translation>{0}: &quot;{1}&quot; gibt es nicht; am nächsten kommen {2}</translation>
    </message>
    <message>
        <source>none fits</source>
        <translation>keiner passt</translation>
    </message>
    <message>
        <source>not a directory</source>
        <translation>kein Ordner</translation>
    </message>
    <message>
        <source>not flat: see sheet</source>
        <translation>nicht eben: siehe Blatt</translation>
    </message>
    <message>
        <source>notch</source>
        <translation>Ausklinkung</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>of {0}&apos;s {1} only {2} stay inside at full reach; right would be a third, {3}: a reach of {4} at most</source>
        <translation>von den {1} von „{0}“ bleiben bei vollem Auszug nur {2} innen; richtig wäre ein Drittel, {3}: ein Auszug von höchstens {4}</translation>
    </message>
    <message>
        <source>offcuts kept</source>
        <translation>behaltene Reststücke</translation>
    </message>
    <message>
        <source>ogee</source>
        <translation>Karnies</translation>
    </message>
    <message>
        <source>on a pitch of {0} the half pins are {1} in front and {2} at the rear; right would be a corner {3} deep: {4} {5}</source>
        <translation>bei einem Schwalbenabstand von {0} sind die Halbzinken vorn {1} und hinten {2}; richtig wäre eine Ecke {3} tief: {4} {5}</translation>
    </message>
    <message>
        <source>one of</source>
        <translation>eines von</translation>
    </message>
    <message>
        <source>opening</source>
        <translation>Fach</translation>
    </message>
    <message>
        <source>opening {0}: {1}</source>
        <translation>Fach {0}: {1}</translation>
    </message>
    <message>
        <source>outer</source>
        <translation>außen</translation>
    </message>
    <message>
        <source>outer edge</source>
        <translation>Außenkante</translation>
    </message>
    <message>
        <source>over</source>
        <translation>über</translation>
    </message>
    <message>
        <source>ovolo</source>
        <translation>Viertelstab</translation>
    </message>
    <message>
        <source>own cut</source>
        <translation>eigener Ausschnitt</translation>
    </message>
    <message>
        <source>panel and caps are flush in one season only: {0} from the glue the panel draws back {1} by the driest season and stands {2} further out in the wettest; at the hinge edge the caps are cut {3} short, so that they never strike the shelf</source>
        <translation>Platte und Hirnleisten sind nur in einer Jahreszeit bündig: {0} von der Leimstelle zieht sich die Platte bis zur trockensten Zeit um {1} zurück und steht in der feuchtesten um {2} weiter vor; an der Bandkante sind die Hirnleisten {3} kürzer geschnitten, damit sie nie auf den Boden schlagen</translation>
    </message>
    <message>
        <source>panel of the back</source>
        <translation>Füllung der Rückwand</translation>
    </message>
    <message>
        <source>panels of the back</source>
        <translation>Füllungen der Rückwand</translation>
    </message>
    <message>
        <source>panels of {0}</source>
        <translation>Füllungen von {0}</translation>
    </message>
    <message>
        <source>partition</source>
        <translation>Fachwand</translation>
    </message>
    <message>
        <source>partition right of bay {0}</source>
        <translation>Fachwand rechts von Feld {0}</translation>
    </message>
    <message>
        <source>peg of the cap</source>
        <translation>Holznagel der Hirnleiste</translation>
    </message>
    <message>
        <source>peg, fast</source>
        <translation>Holznagel, fest</translation>
    </message>
    <message>
        <source>permission denied</source>
        <translation>Zugriff verweigert</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>Zinken</translation>
    </message>
    <message>
        <source>plinth</source>
        <translation>Sockel</translation>
    </message>
    <message>
        <source>plinth return, {0}</source>
        <translation>Sockelseite, {0}</translation>
    </message>
    <message>
        <source>plinth, front</source>
        <translation>Sockel, vorn</translation>
    </message>
    <message>
        <source>point</source>
        <translation>Spitze</translation>
    </message>
    <message>
        <source>pull</source>
        <translation>Griff</translation>
    </message>
    <message>
        <source>rabbet</source>
        <translation>Falz</translation>
    </message>
    <message>
        <source>rail under the writing shelf</source>
        <translation>Traverse unter der Schreibplatte</translation>
    </message>
    <message>
        <source>read-only file system</source>
        <translation>der Datenträger ist schreibgeschützt</translation>
    </message>
    <message>
        <source>rear</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>reference face</source>
        <translation>Bezugsfläche</translation>
    </message>
    <message>
        <source>reference face to the right</source>
        <translation>Bezugsfläche rechts</translation>
    </message>
    <message>
        <source>relief</source>
        <translation>Freistich</translation>
    </message>
    <message>
        <source>relief along the length</source>
        <translation>Freistich in Längsrichtung</translation>
    </message>
    <message>
        <source>relief on the bisector</source>
        <translation>Freistich auf der Winkelhalbierenden</translation>
    </message>
    <message>
        <source>reliefs</source>
        <translation>Freistiche</translation>
    </message>
    <message>
        <source>reverse ogee</source>
        <translation>verkehrter Karnies</translation>
    </message>
    <message>
        <source>revision: found &quot;{0}&quot;; expected a name of letters and figures, such as A</source>
        <translation>revision: gefunden &quot;{0}&quot;; erwartet wird ein Name aus Buchstaben und Ziffern, etwa A</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>right edge</source>
        <translation>rechte Kante</translation>
    </message>
    <message>
        <source>right end</source>
        <translation>rechtes Ende</translation>
    </message>
    <message>
        <source>roll_margin is {0}; expected less than the roll&apos;s own {1}</source>
        <translation>roll_margin ist {0}; erwartet: weniger als die Rolle selbst, {1}</translation>
    </message>
    <message>
        <source>room for the plinth&apos;s return</source>
        <translation>Platz für die Sockelseite</translation>
    </message>
    <message>
        <source>room for {0} tails; one needs {1}</source>
        <translation>Platz für {0} Schwalben; eine braucht {1}</translation>
    </message>
    <message>
        <source>room over {0}</source>
        <translation>Platz über „{0}“</translation>
    </message>
    <message>
        <source>room to move below the shelf</source>
        <translation>Platz zum Arbeiten unter dem Boden</translation>
    </message>
    <message>
        <source>round</source>
        <translation>Rundung</translation>
    </message>
    <message>
        <source>round the strip, {0}</source>
        <translation>um die Leiste, {0}</translation>
    </message>
    <message>
        <source>round the tenon&apos;s four edges to a radius of {0}, as its mortise&apos;s ends are</source>
        <translation>die vier Kanten des Zapfens mit Radius {0} runden, wie die Enden seines Zapfenlochs</translation>
    </message>
    <message>
        <source>round, R {0}</source>
        <translation>rund, R {0}</translation>
    </message>
    <message>
        <source>row {0} of {1}</source>
        <translation>Reihe {0} von {1}</translation>
    </message>
    <message>
        <source>runner</source>
        <translation>Laufleiste</translation>
    </message>
    <message>
        <source>runner, {0}, {1}</source>
        <translation>Laufleiste, {0}, {1}</translation>
    </message>
    <message>
        <source>scallop</source>
        <translation>Muschelbogen</translation>
    </message>
    <message>
        <source>screw into the back, may slide</source>
        <translation>Schraube in das Hinterstück, kann gleiten</translation>
    </message>
    <message>
        <source>screw into the top, fast</source>
        <translation>Schraube in die Deckplatte, fest</translation>
    </message>
    <message>
        <source>screw into the top, may slide</source>
        <translation>Schraube in die Deckplatte, kann gleiten</translation>
    </message>
    <message>
        <source>screw into {0}, fast</source>
        <translation>Schraube in „{0}“, fest</translation>
    </message>
    <message>
        <source>screw into {0}, may slide</source>
        <translation>Schraube in „{0}“, kann gleiten</translation>
    </message>
    <message>
        <source>screw into {0}, {1}</source>
        <translation>Schraube in „{0}“, {1}</translation>
    </message>
    <message>
        <source>screw of the {0}, countersunk behind</source>
        <translation>Schraube für {0}, hinten versenkt</translation>
    </message>
    <message>
        <source>second face</source>
        <translation>zweite Fläche</translation>
    </message>
    <message>
        <source>sheet</source>
        <translation>Platte</translation>
    </message>
    <message>
        <source>sheets of the shop file</source>
        <translation>Platten der Werkstattdatei</translation>
    </message>
    <message>
        <source>shelf</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>shelf pin</source>
        <translation>Bodenträger</translation>
    </message>
    <message>
        <source>shelf pin, {0} row</source>
        <translation>Bodenträger, Reihe {0}</translation>
    </message>
    <message>
        <source>shelf under the lid</source>
        <translation>Boden unter der Klappe</translation>
    </message>
    <message>
        <source>shelf {0}</source>
        <translation>Boden {0}</translation>
    </message>
    <message>
        <source>shelf {0}, on pins</source>
        <translation>Boden {0}, auf Bodenträgern</translation>
    </message>
    <message>
        <source>show face</source>
        <translation>Schauseite</translation>
    </message>
    <message>
        <source>show face, {0} edge, {1}</source>
        <translation>Schauseite, Kante {0}, {1}</translation>
    </message>
    <message>
        <source>side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>side, {0}</source>
        <translation>Seite, {0}</translation>
    </message>
    <message>
        <source>sides</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>slant</source>
        <translation>Schräge</translation>
    </message>
    <message>
        <source>slant {0}° from level; tilt saw {1}° from square; run {2}, rise {3}</source>
        <translation>Schräge {0}° zur Waagerechten; Sägeneigung {1}° gegen den Winkel; Lauf {2}, Steigung {3}</translation>
    </message>
    <message>
        <source>slant, {0}° from level</source>
        <translation>Schräge, {0}° zur Waagerechten</translation>
    </message>
    <message>
        <source>slant.seat = &quot;flush&quot; or &quot;on&quot;; else lip and reveal give it</source>
        <translation>slant.seat = &quot;flush&quot; oder &quot;on&quot;; sonst ergibt es sich aus Überschlag und Sichtfuge</translation>
    </message>
    <message>
        <source>slide</source>
        <translation>Langloch</translation>
    </message>
    <message>
        <source>sliding dovetail into {0}, 1:{1}</source>
        <translation>Gratverbindung in „{0}“, 1:{1}</translation>
    </message>
    <message>
        <source>small shelf, bay {0}</source>
        <translation>kleiner Boden, Feld {0}</translation>
    </message>
    <message>
        <source>socket of {0}, dovetail cutter 1:{1}, from below</source>
        <translation>Gratnut für „{0}“, Gratfräser 1:{1}, von unten</translation>
    </message>
    <message>
        <source>space</source>
        <translation>Fach</translation>
    </message>
    <message>
        <source>species</source>
        <translation>Holzart</translation>
    </message>
    <message>
        <source>spline of the plinth&apos;s mitre, {0}</source>
        <translation>Feder der Sockelgehrung, {0}</translation>
    </message>
    <message>
        <source>spot for a screw of the lid stay, {0}</source>
        <translation>Stelle für eine Schraube der Klappenstütze, {0}</translation>
    </message>
    <message>
        <source>sq ft of wood</source>
        <translation>sq ft Holz</translation>
    </message>
    <message>
        <source>square by chisel</source>
        <translation>mit dem Stechbeitel eckig</translation>
    </message>
    <message>
        <source>square by chisel at its upper end</source>
        <translation>am oberen Ende mit dem Stechbeitel eckig</translation>
    </message>
    <message>
        <source>square to the lid: tilt {0}° from square</source>
        <translation>rechtwinklig zur Klappe: Neigung {0}° gegen den Winkel</translation>
    </message>
    <message>
        <source>start</source>
        <translation>Anfang</translation>
    </message>
    <message>
        <source>steps are 1, 0.5, 0.1, 0.05, 0.01, signs . and ,</source>
        <translation>Schritte sind 1, 0.5, 0.1, 0.05, 0.01, Zeichen . und ,</translation>
    </message>
    <message>
        <source>stop of drawer {0}</source>
        <translation>Anschlag von Schubkasten {0}</translation>
    </message>
    <message>
        <source>strip {0}</source>
        <translation>Streifen {0}</translation>
    </message>
    <message>
        <source>support</source>
        <translation>Stütze</translation>
    </message>
    <message>
        <source>swung</source>
        <translation>geschwenkt</translation>
    </message>
    <message>
        <source>tail</source>
        <translation>Schwalbe</translation>
    </message>
    <message>
        <source>tail of the top, square by chisel</source>
        <translation>Schwalbe der Deckplatte, mit dem Stechbeitel eckig</translation>
    </message>
    <message>
        <source>tail of {0}, square by chisel</source>
        <translation>Schwalbe von „{0}“, mit dem Stechbeitel eckig</translation>
    </message>
    <message>
        <source>tails</source>
        <translation>Schwalben</translation>
    </message>
    <message>
        <source>tails into the top, 1:{0}</source>
        <translation>Schwalben in die Deckplatte, 1:{0}</translation>
    </message>
    <message>
        <source>tails into {0}, 1:{1}</source>
        <translation>Schwalben in „{0}“, 1:{1}</translation>
    </message>
    <message>
        <source>tenon</source>
        <translation>Zapfen</translation>
    </message>
    <message>
        <source>tenon into {0}</source>
        <translation>Zapfen in „{0}“</translation>
    </message>
    <message>
        <source>tenon&apos;s edges: round to R {0}</source>
        <translation>Zapfenkanten: auf R {0} runden</translation>
    </message>
    <message>
        <source>the US rule for clothing storage (16 CFR 1261, ASTM F2057-23: from {0} tall, {1} kg and {2} dm³)</source>
        <translation>US-Regel für Kleidermöbel (16 CFR 1261, ASTM F2057-23: ab {0} Höhe, {1} kg und {2} dm³)</translation>
    </message>
    <message>
        <source>the back edge</source>
        <translation>hinterer Kante</translation>
    </message>
    <message>
        <source>the back end</source>
        <translation>hinterem Ende</translation>
    </message>
    <message>
        <source>the byte 0x{0}</source>
        <translation>das Byte 0x{0}</translation>
    </message>
    <message>
        <source>the caps are mitred at both ends: the panel moves {0} over its {1} between seasons and can&apos;t; it will split, or break the mitres. Right would be lid.ends &quot;mitred&quot;, at the free edge only</source>
        <translation>die Hirnleisten sind an beiden Enden auf Gehrung: die Platte arbeitet zwischen den Jahreszeiten um {0} auf ihren {1} und kann nicht; sie reißt, oder bricht die Gehrungen. Richtig wäre lid.ends &quot;mitred&quot;, nur an der freien Kante</translation>
    </message>
    <message>
        <source>the caps&apos; mitres, {0} wide, open {1} at the heel in the driest season and {2} at the toe in the wettest; right would be at most {3}: caps of {4}, or quartered wood</source>
        <translation>die Gehrungen der Hirnleisten, {0} breit, öffnen sich in der trockensten Zeit an der Ferse um {1} und in der feuchtesten an der Spitze um {2}; richtig wären höchstens {3}: Hirnleisten von {4}, oder stehende Jahresringe</translation>
    </message>
    <message>
        <source>the clock ended the search: a quieter machine may find another layout</source>
        <translation>die Uhr hat die Suche beendet: ein ruhigerer Rechner findet vielleicht einen anderen Plan</translation>
    </message>
    <message>
        <source>the compartments&apos; plumb front stands {0} behind the front plane; the shut lid, with {1} of clearance{2} and knobs that stand out {3}, needs {4}: right would be compartments.front {5} or more, or leave it out</source>
        <translation>die lotrechte Front der Inneneinteilung steht {0} hinter der Vorderebene; die geschlossene Klappe braucht mit {1} Luft{2} und Knöpfen, die {3} vorstehen, {4}: richtig wäre compartments.front {5} oder mehr, oder weglassen</translation>
    </message>
    <message>
        <source>the cut for {0} lies outside {1}, which is {2}: it takes nothing</source>
        <translation>der Ausschnitt für {0} liegt außerhalb von „{1}“, das {2} misst: er nimmt nichts weg</translation>
    </message>
    <message>
        <source>the dry tenon of {0} keeps {1} in its mortise in the wettest season; right would be {2} or more</source>
        <translation>der trockene Zapfen von „{0}“ behält in der feuchtesten Zeit {1} in seinem Zapfenloch; richtig wären {2} oder mehr</translation>
    </message>
    <message>
        <source>the flat on the top&apos;s lower corner</source>
        <translation>die Fläche an der unteren Ecke der Deckplatte</translation>
    </message>
    <message>
        <source>the front edge</source>
        <translation>vorderer Kante</translation>
    </message>
    <message>
        <source>the front end</source>
        <translation>vorderem Ende</translation>
    </message>
    <message>
        <source>the gap over {0} is {1}</source>
        <translation>die Fuge über „{0}“ ist {1}</translation>
    </message>
    <message>
        <source>the gap over {0} is {1}: it sticks; right would be {2} at build</source>
        <translation>die Fuge über „{0}“ ist {1}: er klemmt; richtig wären {2} beim Bau</translation>
    </message>
    <message>
        <source>the hinge pin lies {0} behind the front plane, but the lid overlaps the sides, which reach to it: open, its ends run into them. {1}</source>
        <translation>der Bandstift liegt {0} hinter der Vorderebene, aber die Klappe überdeckt die Seiten, die bis dorthin reichen: offen stoßen ihre Enden daran. {1}</translation>
    </message>
    <message>
        <source>the hinges&apos; leaves reach {0} back and the rear board begins at {1}: a leaf lies wholly on the front board; right would be a front board {2} deep or more</source>
        <translation>die Bandlappen reichen {0} nach hinten, und das hintere Brett beginnt bei {1}: ein Lappen liegt ganz auf dem vorderen Brett; richtig wäre ein vorderes Brett {2} tief oder mehr</translation>
    </message>
    <message>
        <source>the joint&apos;s table</source>
        <translation>die Tabelle der Verbindung</translation>
    </message>
    <message>
        <source>the left edge</source>
        <translation>linker Kante</translation>
    </message>
    <message>
        <source>the left end</source>
        <translation>linkem Ende</translation>
    </message>
    <message>
        <source>the lid is only {0} thick, so {1} is notched {2} over a support and keeps {3}; right would be {4} or more: a thinner shelf or a thicker lid</source>
        <translation>die Klappe ist nur {0} dick, darum ist „{1}“ über einer Stütze um {2} ausgeklinkt und behält {3}; richtig wären {4} oder mehr: ein dünnerer Boden oder eine dickere Klappe</translation>
    </message>
    <message>
        <source>the lid&apos;s caps grow {0} at each end by the wettest season and have {1}; right would be lid.clearance {2} or more</source>
        <translation>die Hirnleisten der Klappe wachsen bis zur feuchtesten Zeit an jedem Ende um {0} und haben {1}; richtig wäre lid.clearance {2} oder mehr</translation>
    </message>
    <message>
        <source>the lid&apos;s hinges stand {0} apart; right would be {1} at most: {2} hinges</source>
        <translation>die Bänder der Klappe stehen {0} auseinander; richtig wären höchstens {1}: {2} Bänder</translation>
    </message>
    <message>
        <source>the lid&apos;s upper end nears the top by {0} by the wettest season and has {1}; right would be lid.top_clearance {2} or more</source>
        <translation>das obere Ende der Klappe nähert sich bis zur feuchtesten Zeit der Deckplatte um {0} und hat {1}; richtig wäre lid.top_clearance {2} oder mehr</translation>
    </message>
    <message>
        <source>the links make {0}, the overall is {1}: {2} off</source>
        <translation>die Glieder ergeben {0}, das Ganze ist {1}: um {2} daneben</translation>
    </message>
    <message>
        <source>the lower edge</source>
        <translation>unterer Kante</translation>
    </message>
    <message>
        <source>the lower end</source>
        <translation>unterem Ende</translation>
    </message>
    <message>
        <source>the mortise for {0} is {1} deep and leaves {2} of {3}; right would be {4} or more: a shorter tenon or a wider board</source>
        <translation>das Zapfenloch für „{0}“ ist {1} tief und lässt {2} von „{3}“; richtig wären {4} oder mehr: ein kürzerer Zapfen oder ein breiteres Brett</translation>
    </message>
    <message>
        <source>the note is on {0}, and there is nothing of that name in this piece</source>
        <translation>die Notiz steht an {0}, und nichts in diesem Möbel heißt so</translation>
    </message>
    <message>
        <source>the outer hinges&apos; leaves end {0} inside the caps&apos; shoulders; right would be {1} or more: shorter hinges or narrower caps</source>
        <translation>die Lappen der äußeren Bänder enden {0} innerhalb der Hirnleistenschultern; richtig wären {1} oder mehr: kürzere Bänder oder schmälere Hirnleisten</translation>
    </message>
    <message>
        <source>the own cut in {0} runs into {1}{2}; right would be {3} of wood between them: move it, or make it smaller</source>
        <translation>der eigene Ausschnitt in „{0}“ läuft in {1}{2}; richtig wären {3} Holz dazwischen: verschieben, oder kleiner machen</translation>
    </message>
    <message>
        <source>the plinth&apos;s feet are weakest in {0}, {1} along the grain {2} over their end</source>
        <translation>die Füße des Sockels sind am schwächsten in „{0}“, in Faserrichtung {1}, {2} über ihrem Ende</translation>
    </message>
    <message>
        <source>the rear board laps {0} over the front one, and both may draw apart by {1} by the driest season; right would be writing.lap {2} or more</source>
        <translation>das hintere Brett überdeckt das vordere um {0}, und beide können sich bis zur trockensten Zeit um {1} auseinanderziehen; richtig wäre writing.lap {2} oder mehr</translation>
    </message>
    <message>
        <source>the rear half pin</source>
        <translation>der hintere Halbzinken</translation>
    </message>
    <message>
        <source>the right edge</source>
        <translation>rechter Kante</translation>
    </message>
    <message>
        <source>the right end</source>
        <translation>rechtem Ende</translation>
    </message>
    <message>
        <source>the room for knees is {0} {1}; to sit at it all day takes {2} or more</source>
        <translation>der Raum für die Knie ist {0} {1}; um den ganzen Tag daran zu sitzen, braucht es {2} oder mehr</translation>
    </message>
    <message>
        <source>the shop file</source>
        <translation>die Werkstattdatei</translation>
    </message>
    <message>
        <source>the sides lose {0} over {1} by the driest season and {2} has {3} to give ({4} at its rear): it would push the back off or split the sides; right would be {5} or more</source>
        <translation>die Seiten verlieren bis zur trockensten Zeit {0} auf {1}, und {2} kann um {3} nachgeben (hinten: {4}): er drückte die Rückwand ab oder risse die Seiten; richtig wären {5} oder mehr</translation>
    </message>
    <message>
        <source>the sizes given add up to {0}, the clear height is {1}; the lowest would be right with {2}</source>
        <translation>die gegebenen Maße ergeben {0}, die lichte Höhe ist {1}; das unterste wäre mit {2} richtig</translation>
    </message>
    <message>
        <source>the slant is {0}° from level and the lid&apos;s stays are made for {1}° or steeper: they may not bring the lid level. Choose them before the case is drawn, and put their least angle in lid.stay_angle; sliding supports hold at any slant</source>
        <translation>die Schräge ist {0}° zur Waagerechten, und die Klappenhalter sind für {1}° oder steiler gemacht: sie bringen die Klappe vielleicht nicht in die Waagerechte. Zuerst die Halter wählen, dann den Korpus zeichnen, und ihren kleinsten Winkel in lid.stay_angle eintragen; ausziehbare Stützen halten bei jeder Schräge</translation>
    </message>
    <message>
        <source>the step of the writing shelf, {0} high, stands {1} behind the front plane; the shut lid needs {2}: right would be a front board {3} deep or more</source>
        <translation>die Stufe der Schreibplatte, {0} hoch, steht {1} hinter der Vorderebene; die geschlossene Klappe braucht {2}: richtig wäre ein vorderes Brett {3} tief oder mehr</translation>
    </message>
    <message>
        <source>the tenon of {0} is {1} long and {2} thick; right would be {3} or more</source>
        <translation>der Zapfen von „{0}“ ist {1} lang und {2} dick; richtig wären {3} oder mehr</translation>
    </message>
    <message>
        <source>the tenon of {0} is {1} of {2} thick; right would be {3}, and {4}, {5}</source>
        <translation>der Zapfen von „{0}“ ist {1} von {2} dick; richtig wäre {3}, und {4}, {5}</translation>
    </message>
    <message>
        <source>the top must lie higher than the pin: its upper face is {0} over it</source>
        <translation>die Deckplatte muss höher liegen als der Bandstift: ihre Oberseite ist {0} darüber</translation>
    </message>
    <message>
        <source>the top&apos;s ends hold the sockets</source>
        <translation>die Enden der Deckplatte tragen die Zinken</translation>
    </message>
    <message>
        <source>the top&apos;s front edge</source>
        <translation>die Vorderkante der Deckplatte</translation>
    </message>
    <message>
        <source>the upper edge</source>
        <translation>oberer Kante</translation>
    </message>
    <message>
        <source>the upper end</source>
        <translation>oberem Ende</translation>
    </message>
    <message>
        <source>the usual sheet: none for this stock in the shop file</source>
        <translation>die übliche Platte: für dieses Material steht keine in der Werkstattdatei</translation>
    </message>
    <message>
        <source>the view isn&apos;t drawn</source>
        <translation>die Ansicht ist nicht gezeichnet</translation>
    </message>
    <message>
        <source>the writing shelf is {0} thick; over a support {1} would fit under the open lid, with {2} of clearance: it is notched there by {3}; a thicker lid or a thinner shelf needs none</source>
        <translation>die Schreibplatte ist {0} dick; über einer Stütze passten {1} unter die offene Klappe, mit {2} Luft: dort ist sie um {3} ausgeklinkt; eine dickere Klappe oder ein dünnerer Boden braucht das nicht</translation>
    </message>
    <message>
        <source>the writing surface is {0} above the floor; the standard for fixed desks has {1}, and 28 to 30 in, {2}, are usual</source>
        <translation>die Schreibfläche liegt {0} über dem Fußboden; die Norm für feste Schreibtische hat {1}, und 28 bis 30 in, {2}, sind üblich</translation>
    </message>
    <message>
        <source>the {0}</source>
        <translation>{0}</translation>
    </message>
    <message>
        <source>the {0} for {1}</source>
        <translation>{0} für „{1}“</translation>
    </message>
    <message>
        <source>the {0} for {1} goes {2} into {3}, {4} of its {5}; right would be a third, {6}, and never over {7}</source>
        <translation>{0} für „{1}“ geht {2} tief in „{3}“, {4} von {5}; richtig wäre ein Drittel, {6}, und nie mehr als {7}</translation>
    </message>
    <message>
        <source>there is no board {0} in this piece</source>
        <translation>es gibt kein Brett {0} in diesem Möbel</translation>
    </message>
    <message>
        <source>there is no board {0} in this piece: the cut for {1} is lost</source>
        <translation>es gibt kein Brett {0} in diesem Möbel: der Ausschnitt für {1} geht verloren</translation>
    </message>
    <message>
        <source>there is no finding {0}{1} to silence: the table does nothing</source>
        <translation>es gibt keinen Befund {0}{1}, der hinzunehmen wäre: die Tabelle bewirkt nichts</translation>
    </message>
    <message>
        <source>there is no fitting {0}: it has no effect; right would be the id of one of the piece&apos;s fittings</source>
        <translation>es gibt keinen Beschlag {0}: er bewirkt nichts; richtig wäre die id eines der Beschläge des Möbels</translation>
    </message>
    <message>
        <source>thickness as measured</source>
        <translation>Dicke wie gemessen</translation>
    </message>
    <message>
        <source>this face up: {0}</source>
        <translation>diese Seite oben: {0}</translation>
    </message>
    <message>
        <source>tilt {0}° from square, {1}° from level, reference face up</source>
        <translation>Neigung {0}° gegen den Winkel, {1}° zur Waagerechten, Bezugsfläche oben</translation>
    </message>
    <message>
        <source>tilt {0}° from square, {1}° from level, reference face up (over 45°: plane it, or cut it on edge against a tall fence)</source>
        <translation>Neigung {0}° gegen den Winkel, {1}° zur Waagerechten, Bezugsfläche oben (über 45°: hobeln, oder hochkant an einem hohen Anschlag schneiden)</translation>
    </message>
    <message>
        <source>tilted face</source>
        <translation>gekippte Fläche</translation>
    </message>
    <message>
        <source>tongue</source>
        <translation>Feder</translation>
    </message>
    <message>
        <source>tongue into {0}</source>
        <translation>Feder in „{0}“</translation>
    </message>
    <message>
        <source>tongue of the lid&apos;s panel</source>
        <translation>Feder der Klappenplatte</translation>
    </message>
    <message>
        <source>tongue, a third of the thickness</source>
        <translation>Feder, ein Drittel der Dicke</translation>
    </message>
    <message>
        <source>too large</source>
        <translation>zu groß</translation>
    </message>
    <message>
        <source>too long for any board or sheet in one; cut in order as {0}</source>
        <translation>zu lang für jedes Brett und jede Platte; der Reihe nach geschnitten als {0}</translation>
    </message>
    <message>
        <source>top</source>
        <translation>Deckplatte</translation>
    </message>
    <message>
        <source>two depths round to {0}; the table tells them apart</source>
        <translation>zwei Tiefen runden auf {0}; die Tabelle hält sie auseinander</translation>
    </message>
    <message>
        <source>unclosed array</source>
        <translation>Liste ohne schließende Klammer</translation>
    </message>
    <message>
        <source>unclosed inline table</source>
        <translation>Tabelle ohne schließende Klammer</translation>
    </message>
    <message>
        <source>unescaped &apos;\&apos; in a string</source>
        <translation>einzelnes &apos;\&apos; in einem Text</translation>
    </message>
    <message>
        <source>unterminated string</source>
        <translation>Text ohne schließendes Anführungszeichen</translation>
    </message>
    <message>
        <source>up to {0}</source>
        <translation>bis zu {0}</translation>
    </message>
    <message>
        <source>upper</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>upper corner, at the groove&apos;s round end</source>
        <translation>obere Ecke, am runden Ende der Nut</translation>
    </message>
    <message>
        <source>upper edge</source>
        <translation>obere Kante</translation>
    </message>
    <message>
        <source>upper end</source>
        <translation>oberes Ende</translation>
    </message>
    <message>
        <source>usual rough boards: no yard stock in the shop file</source>
        <translation>übliche sägeraue Bretter: in der Werkstattdatei steht kein Holzvorrat</translation>
    </message>
    <message>
        <source>v-housing</source>
        <translation>V-Nut</translation>
    </message>
    <message>
        <source>view {0}</source>
        <translation>Ansicht {0}</translation>
    </message>
    <message>
        <source>view {0}: it has no line to dimension; give it at least one visible or cut edge</source>
        <translation>Ansicht {0}: sie hat keine Linie zum Bemaßen; mindestens eine sichtbare oder geschnittene Kante ist nötig</translation>
    </message>
    <message>
        <source>was cut to revision {0} and is wrong now ({1})</source>
        <translation>ist nach Änderungsstand {0} geschnitten und jetzt falsch ({1})</translation>
    </message>
    <message>
        <source>was {0}, is {1}</source>
        <translation>war {0}, ist {1}</translation>
    </message>
    <message>
        <source>way in for {0}</source>
        <translation>Durchlass für „{0}“</translation>
    </message>
    <message>
        <source>web frame under drawer {0}</source>
        <translation>Laufrahmen unter Schubkasten {0}</translation>
    </message>
    <message>
        <source>web frame under the top</source>
        <translation>Laufrahmen unter der Deckplatte</translation>
    </message>
    <message>
        <source>web frame {0}</source>
        <translation>Laufrahmen {0}</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>feucht</translation>
    </message>
    <message>
        <source>wide between the drawn supports</source>
        <translation>breit zwischen den ausgezogenen Stützen</translation>
    </message>
    <message>
        <source>width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>widths that add up to {0}</source>
        <translation>Breiten, die zusammen {0} ergeben</translation>
    </message>
    <message>
        <source>with depth {0}, height {1}, writing height {2} and top depth {3} held, the angle is {4}°; for {5}° the top depth is {6}: keep one of the two</source>
        <translation>bei Tiefe {0}, Höhe {1}, Schreibhöhe {2} und oberer Tiefe {3} ist der Winkel {4}°; für {5}° ist die obere Tiefe {6}: eines von beiden behalten</translation>
    </message>
    <message>
        <source>with everything open and the drawers full</source>
        <translation>alles offen, Schubkästen voll:</translation>
    </message>
    <message>
        <source>with the lid level each stay pulls {0} N, and {1} N with {2} kg on the lid&apos;s edge, {3} from the pin: choose stays and screws that are made for it; fixed higher on the side or further out on the lid they pull less</source>
        <translation>liegt die Klappe waagerecht, zieht jede Stütze mit {0} N, und mit {1} N bei {2} kg auf der Klappenkante, {3} vom Stift: Stützen und Schrauben wählen, die dafür gemacht sind; höher an der Seite oder weiter außen an der Klappe befestigt ziehen sie weniger</translation>
    </message>
    <message>
        <source>wood screw</source>
        <translation>Holzschraube</translation>
    </message>
    <message>
        <source>wood used</source>
        <translation>genutztes Holz</translation>
    </message>
    <message>
        <source>write 1234 without a space, 31 1/2 for a mixed number, 2&apos; 7&quot; for feet and inches</source>
        <translation>1234 ohne Leerzeichen schreiben, 31 1/2 für eine gemischte Zahl, 2&apos; 7&quot; für Fuß und Zoll</translation>
    </message>
    <message>
        <source>write 2&apos; 7&quot; for the one, 24&quot; - 7&quot; for the other</source>
        <translation>2&apos; 7&quot; für das eine schreiben, 24&quot; - 7&quot; für das andere</translation>
    </message>
    <message>
        <source>write 31 1/2 - 3/4 for a difference, 31-1/2 for a mixed number</source>
        <translation>31 1/2 - 3/4 für einen Unterschied schreiben, 31-1/2 für eine gemischte Zahl</translation>
    </message>
    <message>
        <source>write 5 or 5.0</source>
        <translation>5 oder 5.0 schreiben</translation>
    </message>
    <message>
        <source>write a fraction below 1 there, as 31 1/2</source>
        <translation>dort einen Bruch unter 1 schreiben, wie 31 1/2</translation>
    </message>
    <message>
        <source>write a fraction such as 1/2 or 3/16</source>
        <translation>einen Bruch wie 1/2 oder 3/16 schreiben</translation>
    </message>
    <message>
        <source>write a length on both sides, as 31 1/2 + 3/4</source>
        <translation>auf beiden Seiten eine Länge schreiben, wie 31 1/2 + 3/4</translation>
    </message>
    <message>
        <source>write a number such as 31.5, or text such as &quot;31 1/2 {0}&quot;</source>
        <translation>eine Zahl wie 31.5 schreiben, oder Text wie &quot;31 1/2 {0}&quot;</translation>
    </message>
    <message>
        <source>write degrees, for example 50, 50.2, 50,2° or 50° 12&apos;</source>
        <translation>Grad schreiben, zum Beispiel 50, 50.2, 50,2° oder 50° 12&apos;</translation>
    </message>
    <message>
        <source>write for example 31 1/2, 31-1/2, 2&apos; 7 1/2&quot;, 31.5 in, {0}, 80 cm or 31 1/2 + 3/4</source>
        <translation>zum Beispiel 31 1/2, 31-1/2, 2&apos; 7 1/2&quot;, 31.5 in, {0}, 80 cm oder 31 1/2 + 3/4 schreiben</translation>
    </message>
    <message>
        <source>write in, ft, mm, cm, m, &quot; or &apos;</source>
        <translation>in, ft, mm, cm, m, &quot; oder &apos; schreiben</translation>
    </message>
    <message>
        <source>write it without one, for example 1234.5 or 1234,5</source>
        <translation>ohne schreiben, zum Beispiel 1234.5 oder 1234,5</translation>
    </message>
    <message>
        <source>write one, as 31 1/2 - 3/4</source>
        <translation>eines schreiben, wie 31 1/2 - 3/4</translation>
    </message>
    <message>
        <source>write the number out, for example {0}</source>
        <translation>die Zahl ausschreiben, zum Beispiel {0}</translation>
    </message>
    <message>
        <source>write the unit on each, as 31 1/2 in + {0}</source>
        <translation>die Einheit bei jeder schreiben, wie 31 1/2 in + {0}</translation>
    </message>
    <message>
        <source>write whole degrees, and less than 60 of each, as 50° 12&apos;</source>
        <translation>ganze Grad schreiben, und weniger als 60 von jedem, wie 50° 12&apos;</translation>
    </message>
    <message>
        <source>write whole feet and less than 12 inches, as 2&apos; 7 1/2&quot;</source>
        <translation>ganze Fuß und weniger als 12 Zoll schreiben, wie 2&apos; 7 1/2&quot;</translation>
    </message>
    <message>
        <source>write {0} or {1}</source>
        <translation>{0} oder {1} schreiben</translation>
    </message>
    <message>
        <source>writing face</source>
        <translation>Schreibfläche</translation>
    </message>
    <message>
        <source>writing shelf</source>
        <translation>Schreibplatte</translation>
    </message>
    <message>
        <source>writing shelf, front board</source>
        <translation>Schreibplatte, vorderes Brett</translation>
    </message>
    <message>
        <source>writing shelf, rear board</source>
        <translation>Schreibplatte, hinteres Brett</translation>
    </message>
    <message>
        <source>writing.edge, a moulding</source>
        <translation>writing.edge, ein Profil</translation>
    </message>
    <message>
        <source>yard stock of the shop file</source>
        <translation>Holzvorrat der Werkstattdatei</translation>
    </message>
    <message>
        <source>{0} % of moisture ({1}) lies outside {2} to {3} %, where the change coefficients hold: movement is an estimate there</source>
        <translation>{0} % Holzfeuchte ({1}) liegt außerhalb von {2} bis {3} %, wo die Schwindmaße gelten: das Arbeiten ist dort geschätzt</translation>
    </message>
    <message>
        <source>{0} ({1}) and {2} ({3}) are glued along {4} and move differently, {5} by the worst season; right would be one stock and cut for both, or glue in front only</source>
        <translation>„{0}“ ({1}) und „{2}“ ({3}) sind auf {4} verleimt und arbeiten verschieden, {5} bis zur ungünstigsten Zeit; richtig wären ein Material und ein Schnitt für beide, oder Leim nur vorn</translation>
    </message>
    <message>
        <source>{0} and {1}</source>
        <translation>{0} und {1}</translation>
    </message>
    <message>
        <source>{0} and {1} are no two sides that meet</source>
        <translation>{0} und {1} sind keine zwei Seiten, die sich treffen</translation>
    </message>
    <message>
        <source>{0} and {1} are one place in this view</source>
        <translation>{0} und {1} sind in dieser Ansicht eine Stelle</translation>
    </message>
    <message>
        <source>{0} and {1} share {2} of wood {3}; they would be clear with about {4} less {5}</source>
        <translation>„{0}“ und „{1}“ teilen sich {2} Holz {3}; frei wären sie mit etwa {4} weniger {5}</translation>
    </message>
    <message>
        <source>{0} and {1} {2} back to back in {3}: together {4} of {5}, {6} of wood are left; right would be at most {7} together, or one of them moved along</source>
        <translation>{0} und {1} {2} Rücken an Rücken in „{3}“: zusammen {4} von {5}, es bleiben {6} Holz; richtig wären zusammen höchstens {7}, oder eine davon versetzt</translation>
    </message>
    <message>
        <source>{0} are open over {1} at build and {2} in the wettest season; right would be {3} at build</source>
        <translation>{0} sind über „{1}“ beim Bau offen und {2} in der feuchtesten Zeit; richtig wären {3} beim Bau</translation>
    </message>
    <message>
        <source>{0} at build, {1} in the driest and {2} in the wettest season</source>
        <translation>{0} beim Bau, {1} in der trockensten und {2} in der feuchtesten Zeit</translation>
    </message>
    <message>
        <source>{0} at {1} from the side</source>
        <translation>{0} bei {1} von der Seite</translation>
    </message>
    <message>
        <source>{0} between steps</source>
        <translation>{0} zwischen Absätzen</translation>
    </message>
    <message>
        <source>{0} between {1} and {2} is {3} wide; right would be {4} or more: {5}</source>
        <translation>{0} zwischen „{1}“ und „{2}“ ist {3} breit; richtig wären {4} oder mehr: {5}</translation>
    </message>
    <message>
        <source>{0} clear{1}</source>
        <translation>{0} licht{1}</translation>
    </message>
    <message>
        <source>{0} columns in {1} with dividers of {2}</source>
        <translation>{0} Spalten in {1} mit Trennwänden von {2}</translation>
    </message>
    <message>
        <source>{0} decimal places of an inch; 1 to 4 are printed</source>
        <translation>{0} Dezimalstellen eines Zolls; gedruckt werden 1 bis 4</translation>
    </message>
    <message>
        <source>{0} deep</source>
        <translation>{0} tief</translation>
    </message>
    <message>
        <source>{0} deep with a {1} cutter, over {2} times its diameter</source>
        <translation>{0} tief mit einem Fräser von {1}, mehr als das {2}-fache seines Durchmessers</translation>
    </message>
    <message>
        <source>{0} deep, the cutter cuts {1}</source>
        <translation>{0} tief, der Fräser schneidet {1}</translation>
    </message>
    <message>
        <source>{0} drawers need {1} sizes, or {2} and the lowest takes what is left; found {3}</source>
        <translation>{0} Schubkästen brauchen {1} Maße, oder {2}, und der unterste nimmt den Rest; gefunden {3}</translation>
    </message>
    <message>
        <source>{0} drawers share {1} of clear height and one would be {2} high; at least {3} is needed: fewer drawers, a smaller step, or a higher case</source>
        <translation>{0} Schubkästen teilen sich {1} lichte Höhe, und einer wäre {2} hoch; mindestens {3} sind nötig: weniger Schubkästen, eine kleinere Stufe oder ein höherer Korpus</translation>
    </message>
    <message>
        <source>{0} enters its {1} groove by {2} of {3}, shrinks {4} and grows {5} there; right would be {6} of entry and {7} of room: a deeper groove, quartered stock, or plywood</source>
        <translation>„{0}“ greift um {2} von {3} in seine Nut {1}, schwindet dort um {4} und wächst um {5}; richtig wären {6} Eingriff und {7} Platz: eine tiefere Nut, stehende Jahresringe, oder Sperrholz</translation>
    </message>
    <message>
        <source>{0} enters {1} by {2}, its {3} is {4} deep with a relief of {5}: {6}; right would be {7}</source>
        <translation>„{0}“ greift um {2} in „{1}“, {3} ist {4} tief mit einer Luft von {5}: {6}; richtig wären {7}</translation>
    </message>
    <message>
        <source>{0} files in {1}</source>
        <translation>{0} Dateien in {1}</translation>
    </message>
    <message>
        <source>{0} has no effect on a slant-desk, whose drawers are one bank over its bottom; it would count in a free piece</source>
        <translation>{0} bewirkt nichts an einem Schreibschrank mit Schräge, dessen Schubkästen eine Reihe über dem Unterboden sind; an einem freien Möbel zählte es</translation>
    </message>
    <message>
        <source>{0} has no effect on this piece; it would count with {1}</source>
        <translation>{0} bewirkt nichts an diesem Möbel; dafür nötig: {1}</translation>
    </message>
    <message>
        <source>{0} hold each other: none of them moves straight out along any axis, or square to the lid; open a dado or groove at the end from which its guest is to come</source>
        <translation>{0} halten einander: keines geht gerade in einer Achse heraus oder rechtwinklig zur Klappe; eine Quernut oder Nut an dem Ende öffnen, von dem ihr Gast kommen soll</translation>
    </message>
    <message>
        <source>{0} in a lid of {1}</source>
        <translation>{0} in einer Klappe von {1}</translation>
    </message>
    <message>
        <source>{0} in its place</source>
        <translation>{0} an seiner Stelle</translation>
    </message>
    <message>
        <source>{0} in {1}</source>
        <translation>{0} in {1}</translation>
    </message>
    <message>
        <source>{0} is a hidden edge in this view</source>
        <translation>{0} ist in dieser Ansicht eine verdeckte Kante</translation>
    </message>
    <message>
        <source>{0} is glued over {1} across the grain of {2}, which moves {3} over its {4} between seasons: it will split, or push the back off. Right would be at most {5} of glue in front and all else dry, with {6} free behind; or front and rear rail glued and the rear tenons dry, with that gap at the rear shoulder</source>
        <translation>„{0}“ ist auf {1} quer zur Faser von „{2}“ geleimt, das zwischen den Jahreszeiten um {3} auf seinen {4} arbeitet: es reißt, oder drückt die Rückwand ab. Richtig wären höchstens {5} Leim vorn und alles andere trocken, mit {6} frei dahinter; oder vordere und hintere Traverse geleimt und die hinteren Zapfen trocken, mit dieser Luft an der hinteren Schulter</translation>
    </message>
    <message>
        <source>{0} is no board of {1}</source>
        <translation>{0} ist kein Brett von {1}</translation>
    </message>
    <message>
        <source>{0} is no key of {1}: it is kept and has no effect{2}</source>
        <translation>{0} ist kein Schlüssel von {1}: er bleibt erhalten und bewirkt nichts{2}</translation>
    </message>
    <message>
        <source>{0} is {1} for {2}, of which {3} × {4} is clear</source>
        <translation>{0} ist {1} für {2}, davon sind {3} × {4} astrein</translation>
    </message>
    <message>
        <source>{0} isn&apos;t in this view</source>
        <translation>{0} ist nicht in dieser Ansicht</translation>
    </message>
    <message>
        <source>{0} level {1}</source>
        <translation>{0} Ebene {1}</translation>
    </message>
    <message>
        <source>{0} lies across {1}; its ends hold the sockets</source>
        <translation>„{0}“ liegt quer über „{1}“; die Enden tragen die Zinken</translation>
    </message>
    <message>
        <source>{0} meets {1} with an edge; a tenon stands on an end</source>
        <translation>{0} trifft {1} mit einer Kante; ein Zapfen steht an einem Ende</translation>
    </message>
    <message>
        <source>{0} of wood are left {1} in {2}; right would be {3} or more</source>
        <translation>{0} Holz bleiben {1} in „{2}“; richtig wären {3} oder mehr</translation>
    </message>
    <message>
        <source>{0} of wood stay under a pocket; at least {1} should</source>
        <translation>{0} Holz bleiben unter einer Tasche; mindestens {1} sollten es sein</translation>
    </message>
    <message>
        <source>{0} over the guide for the block</source>
        <translation>{0} über der Streichleiste für den Klotz</translation>
    </message>
    <message>
        <source>{0} rail, {1}</source>
        <translation>Traverse {0}, {1}</translation>
    </message>
    <message>
        <source>{0} reaches {1} under a lid of {2}, {3}: the lid tears its hinges; right would be {4} or more, better {5}</source>
        <translation>„{0}“ reicht {1} unter eine Klappe von {2}, {3}: die Klappe reißt ihre Bänder aus; richtig wären {4} oder mehr, besser {5}</translation>
    </message>
    <message>
        <source>{0} runs into {1} {2} when {3} {4}{5} of {6}{7}, by up to {8}; its way must be free to the end</source>
        <translation>„{0}“ stößt {2} an „{1}“, {3} um {4}{5} von {6}{7}, um bis zu {8}; der Weg muss bis zum Ende frei sein</translation>
    </message>
    <message>
        <source>{0} sawn</source>
        <translation>{0} sägerau</translation>
    </message>
    <message>
        <source>{0} screw</source>
        <translation>Schraube: {0}</translation>
    </message>
    <message>
        <source>{0} sizes are 0 or left out; only one can take the {1} that are left</source>
        <translation>{0} Maße sind 0 oder fehlen; nur eines kann die übrigen {1} nehmen</translation>
    </message>
    <message>
        <source>{0} spans {1} and sags {2} at once, {3} in time, under {4} kg a metre; it may {5}. Right would be a span of {6}, a shelf {7} thick, or a strip glued on edge under its front</source>
        <translation>„{0}“ spannt sich über {1} und biegt sich sofort um {2} durch, mit der Zeit um {3}, unter {4} kg je Meter; erlaubt sind {5}. Richtig wäre eine Spannweite von {6}, ein Boden {7} dick, oder eine hochkant unter die Vorderkante geleimte Leiste</translation>
    </message>
    <message>
        <source>{0} stands {1} before the pin and reaches {2} above the floor; the open lid&apos;s underside is at {3}, so it may reach {4} at most: {5}</source>
        <translation>„{0}“ steht {1} vor dem Bandstift und reicht {2} über den Fußboden; die Unterseite der offenen Klappe liegt bei {3}, also darf es höchstens {4} erreichen: {5}</translation>
    </message>
    <message>
        <source>{0} support</source>
        <translation>Stütze {0}</translation>
    </message>
    <message>
        <source>{0} tails on {1}</source>
        <translation>{0} Schwalben auf {1}</translation>
    </message>
    <message>
        <source>{0} to {1}</source>
        <translation>{0} bis {1}</translation>
    </message>
    <message>
        <source>{0} to {1} from {2}, {3} to {4} below the reference face, {5}</source>
        <translation>{0} bis {1} ab {2}, {3} bis {4} unter der Bezugsfläche, {5}</translation>
    </message>
    <message>
        <source>{0} too long</source>
        <translation>{0} zu lang</translation>
    </message>
    <message>
        <source>{0} too wide</source>
        <translation>{0} zu breit</translation>
    </message>
    <message>
        <source>{0} would need a tilt of {1}° from square: it can&apos;t be cut that way; cut it with the board on edge against a tall fence, tilt {2}°, or plane it</source>
        <translation>{0} brauchte eine Neigung von {1}° gegen den Winkel: so ist es nicht zu sägen; das Brett hochkant am hohen Anschlag sägen, Neigung {2}°, oder hobeln</translation>
    </message>
    <message>
        <source>{0} {1}: cut it again, or take the change back</source>
        <translation>{0} {1}: neu zuschneiden, oder die Änderung zurücknehmen</translation>
    </message>
    <message>
        <source>{0} {1}: foot</source>
        <translation>{0} {1}: Fußende</translation>
    </message>
    <message>
        <source>{0} {1}: reference edge</source>
        <translation>{0} {1}: Bezugskante</translation>
    </message>
    <message>
        <source>{0} × {1} need {2} of the {3} of {4} with the kerf, {5} more than there is; {6} × {7} would fit</source>
        <translation>{0} × {1} brauchen mit der Schnittfuge {2} ({3}: {4}), {5} mehr, als da ist; {6} × {7} gingen</translation>
    </message>
    <message>
        <source>{0} × {1}{2}, {3} deep</source>
        <translation>{0} × {1}{2}, {3} tief</translation>
    </message>
    <message>
        <source>{0}&apos;s edge, {1} in front of the foot line</source>
        <translation>Kante „{0}“, {1} vor der Standlinie</translation>
    </message>
    <message>
        <source>{0}, V-groove</source>
        <translation>{0}, V-Nut</translation>
    </message>
    <message>
        <source>{0}, or one bay without a width</source>
        <translation>{0}, oder ein Feld ohne Breite</translation>
    </message>
    <message>
        <source>{0}, square to the mitre</source>
        <translation>{0}, rechtwinklig zur Gehrung</translation>
    </message>
    <message>
        <source>{0}, stopped at the corners</source>
        <translation>{0}, an den Ecken abgesetzt</translation>
    </message>
    <message>
        <source>{0}, stretch {1}</source>
        <translation>{0}, Stück {1}</translation>
    </message>
    <message>
        <source>{0}, which lies there</source>
        <translation>{0}, das dort liegt</translation>
    </message>
    <message>
        <source>{0}, {1} kg and {2} dm³ here</source>
        <translation>{0}, {1} kg und {2} dm³ hier</translation>
    </message>
    <message>
        <source>{0}, {1} wide at the surface</source>
        <translation>{0}, an der Oberfläche {1} breit</translation>
    </message>
    <message>
        <source>{0}. {1} A screening, not a test to that standard</source>
        <translation>{0}. {1} Eine Vorprüfung, keine Prüfung nach jener Norm</translation>
    </message>
    <message>
        <source>{0}: a hole goes through into the bed; lay a spoil board under it</source>
        <translation>{0}: ein Loch geht bis in den Tisch durch; ein Opferbrett unterlegen</translation>
    </message>
    <message>
        <source>{0}: a pocket ends {1} short of an edge; run it out, or leave {2}</source>
        <translation>{0}: eine Tasche endet {1} vor einer Kante; auslaufen lassen, oder {2} stehen lassen</translation>
    </message>
    <message>
        <source>{0}: a pocket {1} wide is narrower than any cutter; it takes one of at most {2}</source>
        <translation>{0}: eine Tasche {1} breit ist schmäler als jeder Fräser; sie braucht einen von höchstens {2}</translation>
    </message>
    <message>
        <source>{0}: a table stands there; expected the address of one value</source>
        <translation>{0}: dort steht eine Tabelle; erwartet wird die Adresse eines einzelnen Werts</translation>
    </message>
    <message>
        <source>{0}: an inside corner of radius {1} in the outline is tighter than any cutter ({2}): finish it by chisel</source>
        <translation>{0}: eine Innenecke mit Radius {1} im Umriss ist enger als jeder Fräser ({2}): mit dem Stechbeitel fertigmachen</translation>
    </message>
    <message>
        <source>{0}: can&apos;t be written (permission denied); nothing was exported</source>
        <translation>{0}: kann nicht geschrieben werden (Zugriff verweigert); nichts wurde ausgegeben</translation>
    </message>
    <message>
        <source>{0}: can&apos;t be written ({1}); nothing was exported</source>
        <translation>{0}: kann nicht geschrieben werden ({1}); nichts wurde ausgegeben</translation>
    </message>
    <message>
        <source>{0}: can&apos;t be written ({1}); {2} is as it was</source>
        <translation>{0}: kann nicht geschrieben werden ({1}); {2} ist, wie es war</translation>
    </message>
    <message>
        <source>{0}: expected the address of a value</source>
        <translation>{0}: erwartet wird die Adresse eines Werts</translation>
    </message>
    <message>
        <source>{0}: found &quot;{1}&quot;; expected a board that the revision froze</source>
        <translation>{0}: gefunden &quot;{1}&quot;; erwartet wird ein Brett, das der Änderungsstand festhält</translation>
    </message>
    <message>
        <source>{0}: found &quot;{1}&quot;; expected an id, a label, sizes and a fingerprint</source>
        <translation>{0}: gefunden &quot;{1}&quot;; erwartet werden id, Kennung, Maße und Fingerabdruck</translation>
    </message>
    <message>
        <source>{0}: found a NUL in it; expected a folder&apos;s name</source>
        <translation>{0}: ein NUL gefunden; erwartet wird der Name eines Ordners</translation>
    </message>
    <message>
        <source>{0}: found a file; expected a folder to write to</source>
        <translation>{0}: eine Datei gefunden; erwartet wird ein Ordner zum Schreiben</translation>
    </message>
    <message>
        <source>{0}: it is frozen already; expected a new name</source>
        <translation>{0}: ist schon festgehalten; erwartet wird ein neuer Name</translation>
    </message>
    <message>
        <source>{0}: its cuts leave {1} pieces; a board must stay one piece</source>
        <translation>{0}: seine Schnitte lassen {1} Stücke; ein Brett muss ein Stück bleiben</translation>
    </message>
    <message>
        <source>{0}: no drill of {1} in the shop file; the hole is milled</source>
        <translation>{0}: kein Bohrer von {1} in der Werkstattdatei; das Loch wird gefräst</translation>
    </message>
    <message>
        <source>{0}: no straight cutter in the shop file; it can&apos;t be cut out</source>
        <translation>{0}: kein gerader Fräser in der Werkstattdatei; es kann nicht ausgeschnitten werden</translation>
    </message>
    <message>
        <source>{0}: no vee cutter of {1}° that is {2} wide</source>
        <translation>{0}: kein V-Fräser von {1}°, der {2} breit ist</translation>
    </message>
    <message>
        <source>{0}: nothing is cut from its {1}; it is cut from: {2}</source>
        <translation>{0}: von dieser Seite wird nichts geschnitten: {1}; geschnitten wird von: {2}</translation>
    </message>
    <message>
        <source>{0}: the value can&apos;t stand there ({1})</source>
        <translation>{0}: der Wert kann dort nicht stehen ({1})</translation>
    </message>
    <message>
        <source>{0}: there is nothing to cut it from</source>
        <translation>{0}: es ist nichts da, woraus es zu schneiden wäre</translation>
    </message>
    <message>
        <source>{0}: this file is laid out so that the value can&apos;t be changed alone</source>
        <translation>{0}: die Datei ist so angelegt, dass der Wert nicht allein geändert werden kann</translation>
    </message>
    <message>
        <source>{0}: {1} corner {2} for a round cutter: {3} of wood, covered by the mate</source>
        <translation>{0}: {1} {2} in den Ecken für einen runden Fräser: {3} Holz, vom Gegenstück verdeckt</translation>
    </message>
    <message>
        <source>{0}: {1} is a value, not a table</source>
        <translation>{0}: {1} ist ein Wert, keine Tabelle</translation>
    </message>
    <message>
        <source>{0}: {1} more like these</source>
        <translation>{0}: {1} weitere wie diese</translation>
    </message>
    <message>
        <source>{0}: {1} thick and {2} into the bed; the cutter {3} cuts {4}: a longer one, or two faces</source>
        <translation>{0}: {1} dick und {2} in den Tisch; der Fräser {3} schneidet {4}: ein längerer, oder zwei Seiten</translation>
    </message>
    <message>
        <source>{0}: {1}; the file is as it was: save it in another place</source>
        <translation>{0}: {1}; die Datei ist, wie sie war: an anderer Stelle speichern</translation>
    </message>
    <message>
        <source>{0}: {1}; the table does nothing</source>
        <translation>{0}: {1}; die Tabelle bewirkt nichts</translation>
    </message>
    <message>
        <source>{0}; it will be fixed to a wall, and stands only with that</source>
        <translation>{0}; es wird an einer Wand befestigt und steht nur so</translation>
    </message>
    <message>
        <source>{0}; or raised by {1} with top depth and height held (the angle becomes {2}°). The joint gap of {3} adds {4}</source>
        <translation>{0}; oder um {1} höher bei gleicher oberer Tiefe und Höhe (der Winkel wird {2}°). Die Fuge von {3} macht {4} mehr</translation>
    </message>
    <message>
        <source>{0}the piece tips over by itself</source>
        <translation>{0}das Möbel kippt von selbst</translation>
    </message>
    <message>
        <source>{0}{1} kg on {2} tip the piece; a weight of {3} kg is reckoned with</source>
        <translation>{0}{1} kg kippen das Möbel (angehängt: {2}); gerechnet wird mit einem Gewicht von {3} kg</translation>
    </message>
</context>
<context>
    <name>SheetHand</name>
    <message>
        <source>{words} stands in row {row}: shorter dimensions stand nearer to the view, longer beyond.</source>
        <translation>{words} steht in Reihe {row}: kürzere Maße stehen näher an der Ansicht, längere weiter außen.</translation>
    </message>
    <message>
        <source>Move {words} on the sheet</source>
        <translation>{words} auf dem Blatt verschieben</translation>
    </message>
    <message>
        <source>Move {name}</source>
        <translation>{name} verschieben</translation>
    </message>
    <message>
        <source>Add a dimension</source>
        <translation>Maß hinzufügen</translation>
    </message>
    <message>
        <source>Put {words} back</source>
        <translation>{words} zurücksetzen</translation>
    </message>
    <message>
        <source>It stands where the sheet itself puts it.</source>
        <translation>Es steht, wo das Blatt selbst es hinsetzt.</translation>
    </message>
</context>
<context>
    <name>SheetView</name>
    <message>
        <source>The sheet as it prints</source>
        <translation>Das Blatt, wie es gedruckt wird</translation>
    </message>
    <message>
        <source>Drag it to another side or row</source>
        <translation>Auf eine andere Seite oder Reihe ziehen</translation>
    </message>
    <message>
        <source>Drag the plane</source>
        <translation>Die Schnittebene ziehen</translation>
    </message>
    <message>
        <source>Draw to another edge for one more dimension</source>
        <translation>Zu einer anderen Kante ziehen für ein weiteres Maß</translation>
    </message>
    <message>
        <source>One more dimension, from {one} to {other}</source>
        <translation>Ein weiteres Maß, von {one} bis {other}</translation>
    </message>
    <message>
        <source>Above the view, row {row}</source>
        <translation>Über der Ansicht, Reihe {row}</translation>
    </message>
    <message>
        <source>Below the view, row {row}</source>
        <translation>Unter der Ansicht, Reihe {row}</translation>
    </message>
    <message>
        <source>Left of the view, row {row}</source>
        <translation>Links der Ansicht, Reihe {row}</translation>
    </message>
    <message>
        <source>Right of the view, row {row}</source>
        <translation>Rechts der Ansicht, Reihe {row}</translation>
    </message>
    <message>
        <source>{words}, {more} mm on paper</source>
        <translation>{words}, {more} mm auf dem Papier</translation>
    </message>
    <message>
        <source>Tab goes from dimension to dimension, arrow keys move it to another side or row, Delete puts it back.</source>
        <translation>Tab geht von Maß zu Maß, Pfeiltasten verschieben es auf eine andere Seite oder Reihe, Entf setzt es zurück.</translation>
    </message>
</context>
<context>
    <name>SheetsPanel</name>
    <message>
        <source>Sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>Large</source>
        <translation>Groß</translation>
    </message>
    <message>
        <source>Show this sheet in a window of its own</source>
        <translation>Dieses Blatt in einem eigenen Fenster zeigen</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Show all pages at once</source>
        <translation>Alle Seiten auf einmal zeigen</translation>
    </message>
    <message>
        <source>The sheets are being drawn…</source>
        <translation>Die Blätter werden gezeichnet…</translation>
    </message>
    <message>
        <source>{sheets} sheets and {tiles} template pages, as they print</source>
        <translation>{sheets} Blätter und {tiles} Schablonenseiten, wie sie gedruckt werden</translation>
    </message>
</context>
<context>
    <name>ShopWindow</name>
    <message>
        <source>Text of the shop file</source>
        <translation>Text der Werkstattdatei</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Save the shop file; comments in it stay</source>
        <translation>Die Werkstattdatei speichern; Anmerkungen darin bleiben</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Take the last change of the shop back</source>
        <translation>Die letzte Änderung an der Werkstatt zurücknehmen</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Do the change of the shop again</source>
        <translation>Die Änderung an der Werkstatt noch einmal ausführen</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>Nicht gespeichert</translation>
    </message>
    <message>
        <source>Open a piece first; it is laid out on the stock of this shop.</source>
        <translation>Öffnen Sie zuerst ein Möbel; es wird auf das Material dieser Werkstatt aufgeteilt.</translation>
    </message>
    <message>
        <source>The shop file has faults; put them right first.</source>
        <translation>Die Werkstattdatei hat Fehler; beheben Sie diese zuerst.</translation>
    </message>
    <message>
        <source>Not saved yet</source>
        <translation>Noch nicht gespeichert</translation>
    </message>
    <message>
        <source>{name} has changes that are not saved.</source>
        <translation>{name} hat Änderungen, die nicht gespeichert sind.</translation>
    </message>
    <message>
        <source>Leave without saving</source>
        <translation>Ohne Speichern verlassen</translation>
    </message>
    <message>
        <source>Go back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Mend the text</source>
        <translation>Text berichtigen</translation>
    </message>
    <message>
        <source>Given up.</source>
        <translation>Abgebrochen.</translation>
    </message>
    <message>
        <source>Shop: {name}</source>
        <translation>Werkstatt: {name}</translation>
    </message>
    <message>
        <source>{path} (not there yet: stated defaults hold until it is saved)</source>
        <translation>{path} (noch nicht da: bis zum Speichern gelten die genannten Vorgaben)</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>{name}: what is the new one called?</source>
        <translation>{name}: Wie soll der neue Eintrag heißen?</translation>
    </message>
    <message>
        <source>Add {name}</source>
        <translation>{name} hinzufügen</translation>
    </message>
    <message>
        <source>Take out {name}</source>
        <translation>{name} herausnehmen</translation>
    </message>
</context>
<context>
    <name>Size</name>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Width over the top</source>
        <translation>Breite über die Deckplatte</translation>
    </message>
    <message>
        <source>Width over the feet</source>
        <translation>Breite über die Füße</translation>
    </message>
    <message>
        <source>Writing height</source>
        <translation>Schreibhöhe</translation>
    </message>
    <message>
        <source>Top depth</source>
        <translation>Obere Tiefe</translation>
    </message>
    <message>
        <source>Slant from level</source>
        <translation>Schräge zur Waagerechten</translation>
    </message>
    <message>
        <source>Start of the slant</source>
        <translation>Beginn der Schräge</translation>
    </message>
    <message>
        <source>Slant</source>
        <translation>Schräge</translation>
    </message>
    <message>
        <source>Rail over the top drawer</source>
        <translation>Traverse über dem obersten Kasten</translation>
    </message>
    <message>
        <source>{bay}, space {number}</source>
        <translation>{bay}, Fach {number}</translation>
    </message>
    <message>
        <source>Plinth height</source>
        <translation>Sockelhöhe</translation>
    </message>
    <message>
        <source>Level {key}</source>
        <translation>Ebene {key}</translation>
    </message>
    <message>
        <source>Opening {key}, clear height</source>
        <translation>Fach {key}, lichte Höhe</translation>
    </message>
    <message>
        <source>Clear height over the bottom</source>
        <translation>Lichte Höhe über dem Unterboden</translation>
    </message>
    <message>
        <source>Clear height over level {key}</source>
        <translation>Lichte Höhe über Ebene {key}</translation>
    </message>
    <message>
        <source>Space for a support</source>
        <translation>Raum für eine Stütze</translation>
    </message>
    <message>
        <source>{bay}, clear width</source>
        <translation>{bay}, lichte Breite</translation>
    </message>
</context>
<context>
    <name>SketchView</name>
    <message>
        <source>Sketch of the term</source>
        <translation>Skizze zum Begriff</translation>
    </message>
</context>
<context>
    <name>StartPage</name>
    <message>
        <source>Begin with a piece and make it yours</source>
        <translation>Mit einem Möbel anfangen und es zum eigenen machen</translation>
    </message>
    <message>
        <source>Drag its handles, type into its dimensions. What you see is the drawing that prints.</source>
        <translation>Ziehen Sie an seinen Griffen, tippen Sie in seine Maße. Was Sie sehen, ist die Zeichnung, die gedruckt wird.</translation>
    </message>
    <message>
        <source>Open a piece file</source>
        <translation>Eine Möbeldatei öffnen</translation>
    </message>
    <message>
        <source>Look for a piece file on this computer</source>
        <translation>Eine Möbeldatei auf diesem Rechner suchen</translation>
    </message>
    <message>
        <source>Open lately</source>
        <translation>Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Files that were open lately</source>
        <translation>Zuletzt geöffnete Dateien</translation>
    </message>
    <message>
        <source>Begin with {title}, {size}</source>
        <translation>Mit {title} anfangen, {size}</translation>
    </message>
</context>
<context>
    <name>Step</name>
    <message>
        <source>Paths from another folder</source>
        <translation>Pfade aus einem anderen Ordner</translation>
    </message>
</context>
<context>
    <name>Table</name>
    <message>
        <source>divide</source>
        <translation>Teilung</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Möbel</translation>
    </message>
    <message>
        <source>Revision</source>
        <translation>Änderungsstand</translation>
    </message>
    <message>
        <source>Case</source>
        <translation>Korpus</translation>
    </message>
    <message>
        <source>Slant</source>
        <translation>Schräge</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Use</source>
        <translation>Verwendung</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Ebene</translation>
    </message>
    <message>
        <source>Opening</source>
        <translation>Fach</translation>
    </message>
    <message>
        <source>Divide</source>
        <translation>Teilung</translation>
    </message>
    <message>
        <source>Drawer</source>
        <translation>Schubkasten</translation>
    </message>
    <message>
        <source>Each</source>
        <translation>Einzelne</translation>
    </message>
    <message>
        <source>Lid</source>
        <translation>Klappe</translation>
    </message>
    <message>
        <source>Supports</source>
        <translation>Klappenstützen</translation>
    </message>
    <message>
        <source>Base</source>
        <translation>Sockel</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Rückwand</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Laufrahmen</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>Bodenträger</translation>
    </message>
    <message>
        <source>Face</source>
        <translation>Blendrahmen</translation>
    </message>
    <message>
        <source>Writing</source>
        <translation>Schreibplatte</translation>
    </message>
    <message>
        <source>Compartments</source>
        <translation>Inneneinteilung</translation>
    </message>
    <message>
        <source>Climate</source>
        <translation>Klima</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation>Zeichnung</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Brett</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Schnitt</translation>
    </message>
    <message>
        <source>Fitting</source>
        <translation>Beschlag</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Verschieben</translation>
    </message>
    <message>
        <source>Dimension</source>
        <translation>Maß</translation>
    </message>
    <message>
        <source>Plane</source>
        <translation>Schnittebene</translation>
    </message>
    <message>
        <source>Shop</source>
        <translation>Werkstattdatei</translation>
    </message>
    <message>
        <source>Saw</source>
        <translation>Säge</translation>
    </message>
    <message>
        <source>Router</source>
        <translation>Oberfräse</translation>
    </message>
    <message>
        <source>Cutter</source>
        <translation>Fräser</translation>
    </message>
    <message>
        <source>Collar</source>
        <translation>Kopierring</translation>
    </message>
    <message>
        <source>Yard</source>
        <translation>Holzhandel</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Plattenformat</translation>
    </message>
    <message>
        <source>Offcut</source>
        <translation>Reststück</translation>
    </message>
    <message>
        <source>Printer</source>
        <translation>Drucker</translation>
    </message>
    <message>
        <source>Allowance</source>
        <translation>Aufmaß</translation>
    </message>
    <message>
        <source>Habit</source>
        <translation>Gewohnheit</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Silence</source>
        <translation>Hingenommenes</translation>
    </message>
</context>
<context>
    <name>TraceWindow</name>
    <message>
        <source>Lay a photo behind a view</source>
        <translation>Ein Foto hinter eine Ansicht legen</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Vorderansicht</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seitenansicht</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Grundriss</translation>
    </message>
    <message>
        <source>From left to right</source>
        <translation>Von links nach rechts</translation>
    </message>
    <message>
        <source>From below to above</source>
        <translation>Von unten nach oben</translation>
    </message>
    <message>
        <source>Lower left, from the left</source>
        <translation>Unten links, von links</translation>
    </message>
    <message>
        <source>Lower left, from the floor</source>
        <translation>Unten links, vom Boden</translation>
    </message>
    <message>
        <source>Lay it behind the view</source>
        <translation>Hinter die Ansicht legen</translation>
    </message>
    <message>
        <source>Set the points again</source>
        <translation>Punkte neu setzen</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Ansicht</translation>
    </message>
    <message>
        <source>Fade</source>
        <translation>Verblassen</translation>
    </message>
    <message>
        <source>Keep the photo and its four points in the piece file</source>
        <translation>Das Foto und seine vier Punkte in der Möbeldatei behalten</translation>
    </message>
    <message>
        <source>Take the points away and click them anew</source>
        <translation>Die Punkte wegnehmen und neu anklicken</translation>
    </message>
    <message>
        <source>Click a point whose size you know, {corner}.</source>
        <translation>Klicken Sie einen Punkt an, dessen Maß Sie kennen: {corner}.</translation>
    </message>
    <message>
        <source>Say how far these points lie apart on the piece.</source>
        <translation>Sagen Sie, wie weit diese Punkte am Möbel auseinanderliegen.</translation>
    </message>
</context>
<context>
    <name>Typed</name>
    <message>
        <source>It comes out below zero; a length here is zero or more.</source>
        <translation>Das ergibt weniger als null; eine Länge ist hier null oder mehr.</translation>
    </message>
    <message>
        <source>“{text}” is no part; write for example 1/2 of depth.</source>
        <translation>„{text}“ ist kein Teil; schreiben Sie zum Beispiel 1/2 von Tiefe.</translation>
    </message>
    <message>
        <source>“{name}” is no size of this piece; known are {sizes}.</source>
        <translation>„{name}“ ist kein Maß dieses Möbels; bekannt sind {sizes}.</translation>
    </message>
    <message>
        <source>It must be given; it has no default.</source>
        <translation>Es muss angegeben werden; es hat keine Vorgabe.</translation>
    </message>
    <message>
        <source>Write where it begins and where it ends, for example 0 … 40; 600 … 650.</source>
        <translation>Schreiben Sie, wo es beginnt und wo es endet, zum Beispiel 0 … 40; 600 … 650.</translation>
    </message>
    <message>
        <source>Write a number, for example 8 or 1.15.</source>
        <translation>Schreiben Sie eine Zahl, zum Beispiel 8 oder 1,15.</translation>
    </message>
    <message>
        <source>Write a whole number, for example 3.</source>
        <translation>Schreiben Sie eine ganze Zahl, zum Beispiel 3.</translation>
    </message>
</context>
<context>
    <name>Window</name>
    <message>
        <source>Commands</source>
        <translation>Befehle</translation>
    </message>
    <message>
        <source>shopdraw</source>
        <translation>shopdraw</translation>
    </message>
    <message>
        <source>Variant</source>
        <translation>Variante</translation>
    </message>
    <message>
        <source>Open lately</source>
        <translation>Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Mend the text</source>
        <translation>Text berichtigen</translation>
    </message>
    <message>
        <source>Drawers</source>
        <translation>Schubkästen</translation>
    </message>
    <message>
        <source>This piece has no bank of drawers to change.</source>
        <translation>Dieses Möbel hat keine Schubkästen, die sich ändern ließen.</translation>
    </message>
    <message>
        <source>Accept a finding</source>
        <translation>Einen Befund hinnehmen</translation>
    </message>
    <message>
        <source>Why is it all right here?</source>
        <translation>Warum ist es hier in Ordnung?</translation>
    </message>
    <message>
        <source>{name}: which one?</source>
        <translation>{name}: welches?</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>{name}: what is the new one called?</source>
        <translation>{name}: Wie soll der neue Eintrag heißen?</translation>
    </message>
    <message>
        <source>as in the file</source>
        <translation>wie in der Datei</translation>
    </message>
</context>
<context>
    <name>WorkPage</name>
    <message>
        <source>Beside the drawing</source>
        <translation>Neben der Zeichnung</translation>
    </message>
    <message>
        <source>Sizes</source>
        <translation>Maße</translation>
    </message>
    <message>
        <source>Boards</source>
        <translation>Bretter</translation>
    </message>
    <message>
        <source>Proportions</source>
        <translation>Proportionen</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Blätter</translation>
    </message>
    <message>
        <source>{address} stands in the file alone</source>
        <translation>{address} steht nur in der Datei</translation>
    </message>
    <message>
        <source>Add {name}</source>
        <translation>{name} hinzufügen</translation>
    </message>
    <message>
        <source>Take out {name}</source>
        <translation>{name} herausnehmen</translation>
    </message>
    <message>
        <source>The photo {name} isn&apos;t there, or it is no picture.</source>
        <translation>Das Foto {name} ist nicht da, oder es ist kein Bild.</translation>
    </message>
    <message>
        <source>Mend a finding</source>
        <translation>Einen Befund beheben</translation>
    </message>
</context>
<context>
    <name>Working</name>
    <message>
        <source>This couldn&apos;t be worked out ({kind}): {why}</source>
        <translation>Das ließ sich nicht ausrechnen ({kind}): {why}</translation>
    </message>
</context>
</TS>
