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
        <source>How far the export has come</source>
        <translation>Wie weit das Schreiben ist</translation>
    </message>
    <message>
        <source>Give up</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Give up the export</source>
        <translation>Das Schreiben abbrechen</translation>
    </message>
    <message>
        <source>Give up the export; what was in the folder stays as it was</source>
        <translation>Das Schreiben abbrechen; was im Ordner lag, bleibt wie zuvor</translation>
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
        <source>between core or flush lid and the sides, each side</source>
        <translation>zwischen Kern oder bündiger Klappe und den Seiten, je Seite</translation>
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
        <source>lost on each edge of a board at hand that is jointed</source>
        <translation>geht an jeder gefügten Kante eines vorhandenen Bretts verloren</translation>
    </message>
    <message>
        <source>its parts may lie with their grain across the sheet: painted, or without grain</source>
        <translation>seine Teile dürfen quer zur Faser der Platte liegen: deckend gestrichen oder ohne Faser</translation>
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
        <source>least slant, degrees from level, that a lectern&apos;s stays are made for; by their maker</source>
        <translation>kleinste Schräge, Grad zur Waagerechten, für die die Klappenhalter eines Stehpults gemacht sind; vom Hersteller</translation>
    </message>
    <message>
        <source>width of a leaf from the pin&apos;s centre</source>
        <translation>Breite eines Lappens von der Stiftmitte</translation>
    </message>
    <message>
        <source>two sliding bars beside the topmost drawer.</source>
        <translation>zwei ausziehbare Leisten neben dem obersten Schubkasten.</translation>
    </message>
    <message>
        <source>each side of the bar</source>
        <translation>an jeder Seite der Leiste</translation>
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
        <source>how many spaces, from the lowest up, have a drawer</source>
        <translation>wie viele Fächer, vom untersten an, ein Kästchen haben</translation>
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
        <source>of the air, °C, where humidity is given</source>
        <translation>der Luft, °C, wo die Luftfeuchte gegeben ist</translation>
    </message>
    <message>
        <source>relative humidity of the shop&apos;s air; then `build` follows</source>
        <translation>relative Luftfeuchte der Werkstatt; dann folgt die Holzfeuchte beim Bau</translation>
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
        <source>A1, ARCH D, ...; default by style and set</source>
        <translation>A1, ARCH D, …; Vorgabe nach Norm und Ausführung</translation>
    </message>
    <message>
        <source>of printed fractions: 2, 4, 8, 16, 32 or 64</source>
        <translation>gedruckter Brüche: 2, 4, 8, 16, 32 oder 64</translation>
    </message>
    <message>
        <source>one board&apos;s own stock, grain words, note.</source>
        <translation>Material, Bezeichnung und Notiz eines einzelnen Bretts.</translation>
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
        <source>a finding that a person has looked at, with the reason.</source>
        <translation>ein Befund, den jemand angesehen hat, mit der Begründung.</translation>
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
        <source>what lies in the rack; used before anything is bought.</source>
        <translation>was im Regal liegt; wird verwendet, bevor etwas gekauft wird.</translation>
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
        <source>Photo: click the four points</source>
        <translation>Foto: die vier Punkte anklicken</translation>
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
