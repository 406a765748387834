<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Ask</name>
    <message>
        <source>Piece files (*.piece);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos (*.png *.jpg *.jpeg *.webp *.bmp)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Board</name>
    <message>
        <source>{cut}, {face}, {deep} deep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{joint} with {other}, {held}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Board</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alike</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BoardView</name>
    <message>
        <source>The chosen board alone</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BoardsPanel</name>
    <message>
        <source>Boards of the piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a board to see it alone, with its cuts and joints.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Canvas</name>
    <message>
        <source>Drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front, side and plan of the piece. Tab goes from handle to handle, arrow keys move it, Enter types.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: {size}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Choice</name>
    <message>
        <source>slant-desk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bookcase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lectern</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dovetail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>housed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overhanging</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stopped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rabbeted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flush</source>
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
        <source>solid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>quarter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unknown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bottom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>web-frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pinned-shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>equal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ratio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drawer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lid-supports</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pigeonhole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lipped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tongue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rabbet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>square</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front-and-rear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>iso</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>asme</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>third</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>comma</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>roll</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tabloid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plan</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Command</name>
    <message>
        <source>Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go back to the starting pieces.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a piece file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the piece to its file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the piece under another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the package…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write sheets, templates, drawing, router files and lists to a folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print sheets, or templates at true size.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close the window.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the last change back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One more drawer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a drawer below the others.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One drawer fewer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the lowest drawer out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep as a variant…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep what differs from the saved file under a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay a photo behind a view…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trace the proportions of an old piece from a photo.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the whole sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Larger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the sheet larger.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the sheet smaller.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hidden lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show or leave out hidden lines.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dimensions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show or leave out dimensions.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dados</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show where dados, grooves and rabbets run.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lid swing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the open lid and its way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawers drawn out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show drawers and supports drawn out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the piece cut through its middle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the piece in a window of its own, open its lid and drawers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two variants side by side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compare the piece with one of its variants.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the language of the window; the drawing keeps its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light words on a dark ground, for the evening.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first ten minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How to shape a piece and get it made.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CompareWindow</name>
    <message>
        <source>{name}: two variants</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variant at the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variant at the right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as in the file</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Corner</name>
    <message>
        <source>lower left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lower right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>upper right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>upper left</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Crash</name>
    <message>
        <source>A copy of the piece is kept and offered at the next start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the piece under another name now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something went wrong inside the program ({kind}). {safe}; the details are in {file}.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Cut</name>
    <message>
        <source>rabbet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dado</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dovetail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bevel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>notch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>relief</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>groove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hinge-leaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hinge-barrel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mortise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tenon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tongue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mitre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slot</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Division</name>
    <message>
        <source>Drawer {key}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row {key}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bay {key}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Doing</name>
    <message>
        <source>How far the export has come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give up the export</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the package to this folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing the package</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The package is written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The package is not written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheets are being drawn; the print dialog comes when they are there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Templates at true size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What shall be printed?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file has no variants yet: change the piece, then keep it as a variant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep as a variant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is it called?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing differs from the saved file, so there is nothing to keep.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} can&apos;t be read as a picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Drag</name>
    <message>
        <source>It can&apos;t be built so.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Entry</name>
    <message>
        <source>Size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set this size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Also a sum, or a part of another size: 1/2 of depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{input}” ({table})</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Explanation</name>
    <message>
        <source>which member is made of which stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything that a person decided about a piece.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what it is and what its drawings say about it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>identification number on the title block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>legal owner of the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shop file, by a path relative to the piece file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over finished outsides; height from the floor to the upper face of the top.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the finished front plane to the sides&apos; rear edges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overhanging: the top lies over the sides, on a frame; not under a slant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of an overhanging top, in front and at both sides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>default: a third of the side&apos;s thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how far behind the front plane a stopped dado ends</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how much wider than its guest a dado is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how far short of a dado&apos;s floor its guest ends</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the writing surface down to the topmost drawer&apos;s opening; default from lid and front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of rounded ends; default 3 mm, in inch pieces 3.175</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tails at each end of a dovetailed top; default from its depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>8 for 1:8; default 8, in softwood 6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>exactly one of `angle` and `top_depth`; writing surface and lid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from level, degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height where the slant begins on an old piece, as measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>between shelf and lid at the hinge line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height of the pin over the writing surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how far the pin lies behind the front plane; default half the joint gap before it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>species or sheet, as measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>species or sheet, by its key in the trade tables</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change across the grain per 1 % of moisture, if measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kg/m³ at 12 % moisture, if weighed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>modulus of elasticity along the grain, GPa, if stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>allowance when buying, percent; default 15</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>size a sheet is sold in, by its key in the trade tables; default 4x8, in mm pieces 1220x2440</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>member to stock; the most exact name wins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a horizontal member; `top` from the floor, or none where it follows from others.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a clear space above a level, what divides it and what fills it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how an opening is divided; keys are given once and never used again for another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the top down, or from the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each row higher than the one above by this; default 20 mm, in inch pieces 3/4 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each row higher than the one above by this factor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clear heights in the order of the keys; one may be 0 for what is left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choices for all drawers; tables below it, [drawer.KEY], are read into `each` by the reader.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>[drawer] for all, [drawer.KEY] for one of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overlap on each side, above and below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gap beside and below an inset front; above it the seasons are added</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how far the sides enter the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bottom groove over the box&apos;s lower edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a panel, grain left to right, hinged on the writing shelf.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depth of a rabbeted lid&apos;s rabbet; default 0.4 of its thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how far a rabbeted lid laps over the bevel; default 12 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how far it laps over each side; default side&apos;s thickness less the reveal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what shows of the top&apos;s bevel beside the lid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>between core or flush lid and the sides, each side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the upper end, from the seasons when not given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bevel kept on the top&apos;s edge; follows from lip and reveal where the lid has them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>breadboard caps at the panel&apos;s ends</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width of a cap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>length of the tongue in a cap; default half its width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how much deeper than the tongue a cap&apos;s groove is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pegs in each cap; the one at the hinge edge is fast, others slotted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diameter of a peg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a lectern&apos;s ledge: how far it stands over the lid&apos;s outer face; default 12 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width of a leaf from the pin&apos;s centre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two sliding bars beside the topmost drawer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each side of the bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over the bar; default from its seasons, at least 1 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how far they pull out; default two thirds of the lid, a third kept inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a mitred plinth wrapped round the case.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the floor to the plinth&apos;s upper edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plinth&apos;s lower edge over the floor; the foot blocks stand on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width of the foot blocks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plywood in the rear rabbets.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>forward from the rear edge; default the back&apos;s thickness + 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>into the side; default half its thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back smaller than its seat, each way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the web frames that drawers run on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width of front and rear rails</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width of runners; default from what bears on them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>length of the glued front tenon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>round: tenons rounded to the mortises&apos; ends; square: the mortises&apos; corners are cleared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what loose shelves lie on: pins in rows of holes in both sides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from hole to hole; common practice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of a pin and its hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of a hole; 3 mm of the side are left at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the shelf&apos;s front and rear edge to the rows of holes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>further holes over and under those that a shelf lies on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a loose shelf shorter than the clear width by this; 2 to 3 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a face frame before the case&apos;s front edges; the depth of the case is over the frame.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width of the two stiles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width of the upper rail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width of the lower rail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the stiles beyond the sides&apos; outer faces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>length of the rails&apos; tenons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moisture of the wood when built and in the driest and wettest season; or the air that causes it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the air, °C, where humidity is given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>relative humidity of the shop&apos;s air; then `build` follows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what the piece will carry, and whether it is held to a wall.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kg on each metre of a shelf; default books, 30 kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kg in each cubic metre of a drawer; default 136 kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kg that may hang on an open drawer or on the lid&apos;s edge; default a child of 27 kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether the piece will be fixed to a wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how the sheets look.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A1, ARCH D, ...; default by style and set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of printed fractions: 2, 4, 8, 16, 32 or 64</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one board&apos;s own stock, grain words, note.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a photo of an old piece behind a view, to trace its proportions.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the photo, by a path relative to the piece file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>x and y, pixels, of four points: lower left, lower right, upper right, upper left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the left points to the right ones, on the piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the lower points to the upper ones, on the piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where the lower left point lies in the view, from the case&apos;s left or front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and from the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how much of the photo is faded out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>words on anything.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a finding that a person has looked at, with the reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frozen ones, the last one last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what a revision froze, and what had been cut by then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a line a board: id, label, sizes, fingerprint; freezing writes it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>boards already cut, by id or label</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Export</name>
    <message>
        <source>sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>templates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cnc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lists</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Exporting</name>
    <message>
        <source>Given up; what was in the folder is as it was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The export ended without a word.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The export can&apos;t be started: {program}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Face</name>
    <message>
        <source>face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>foot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>near</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FaultsPage</name>
    <message>
        <source>Faults of the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text of the piece file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the text again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} can&apos;t be shown yet. Put right what is listed; nothing has been changed.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Figure</name>
    <message>
        <source>The last one takes what the others leave: change their sizes, or the case&apos;s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all alike</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each larger by a step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each larger by a factor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This size follows from the rule “{rule}”. Type here to give the sizes one by one instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The top&apos;s depth follows from the slant&apos;s angle. Type here to give it instead of the angle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The angle follows from the top&apos;s depth. Type here to give it instead of the top&apos;s depth.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the slant starts follows from the writing height, the lid&apos;s seat and the slant.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Filing</name>
    <message>
        <source>Open a piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>piece.piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the piece as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not saved yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} has changes that are not saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave without saving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The program ended before {name} was saved. A copy of the work is there; the file itself is as it was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work was kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Throw the copy away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decide later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save in another place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is another one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} was changed by another program since it was opened here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write over it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file has changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another program changed {name}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep what is here</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Finding</name>
    <message>
        <source>Line {line}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>found {found}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{message} (accepted: {reason})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be fixed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FindingsPanel</name>
    <message>
        <source>Findings, worst first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the value that would mend it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the input</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the input that it speaks of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accept with a reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accept this finding with a reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set {name} to {value}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing found wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{worst} must be fixed, {rows} in all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{worst} must be fixed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing must be fixed; {rows} to look at</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FormPanel</name>
    <message>
        <source>Find an input</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a stock, a note or another keyed table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inputs of the piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click a field to read what it means. An empty field keeps its default.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It must be given.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left empty, it is worked out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left empty: {default}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>worked out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>default: {value}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Hand</name>
    <message>
        <source>moved by {by}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stops here: {why}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Handle</name>
    <message>
        <source>half the depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a third of the depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The angle now follows from the top depth; it is no longer given.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} and {next} alike</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>like {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sizes are now given one by one; the rule no longer sets them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rail&apos;s height is now given; it no longer follows from lid and front.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>halfway</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>Begin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose one of the starting pieces. It is a whole desk already: every board, joint and drawer is there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shape it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take hold of a green bar on the drawing and drag: width, height, depth, the slant, the writing height, the rails between drawers. The size runs along beside the pointer. It holds to whole steps, to equal drawers and to plain ratios; with Shift it goes in fine steps. Escape gives up. Where the piece can&apos;t be built any further, the drag stops and says why.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click a dimension and type: 36 1/2, 800 mm, 31 1/2 + 3/4, or a part of another size such as 1/2 of depth. A dimension that follows from others says what drives it; typing into it takes the other one&apos;s place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decide the rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under Sizes stands every other choice: stocks, lid, drawers, plinth, seasons, sheets. Empty fields keep their defaults. A sketch shows what a word means.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under the drawing stands what must be fixed (filled), what to be careful about (half filled) and what to know (open). Choose one and its boards light up. Where there is a right value, one button sets it. What is all right in your case you accept with a reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at it from all sides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture opens a window: turn the desk with the mouse, open lid and drawers. What runs into something is hatched.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Get it made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheets shows each page as it prints. Write the package puts sheets, full-size templates, drawings for the router, and lists into a folder. Print templates at 100 %, and measure the check line before you trust them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stay safe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is lost: what isn&apos;t saved is kept aside every 20 seconds and offered at the next start. For blades, routers and finishes the machine&apos;s manual and your local rules come first.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HelpWindow</name>
    <message>
        <source>The first ten minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Commands</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Input</name>
    <message>
        <source>Format</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Title</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Owner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawn by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Approved by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top joint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Overhang</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dado</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dado depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dado stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relief</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top rail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cutter radius</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tails</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tail slope</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hinge edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Joint gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pin above writing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pin behind front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Species</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nominal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coefficient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stiffness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waste reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Member</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lip thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side clearance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top clearance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reveal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front joint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Groove up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Knobs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rabbet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clearance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bevel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ends</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tongue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Groove room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pegs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Peg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ledge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hinges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hinge length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hinge leaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hinge thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clearance above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Foot gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rabbet depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rabbet width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Runner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tenon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mortise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pitch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Setback</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Play</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Upper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Build</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Humidity build</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Humidity dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Humidity wet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hung</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Anchored</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Style</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Projection</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decimal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Denominator</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Template paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Boards</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Joint</name>
    <message>
        <source>glued</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>floats</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dado</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dovetail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>butt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mortise-and-tenon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>groove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mitre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rabbet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Motion</name>
    <message>
        <source>Drawer {key}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Support left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Support right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lid</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>OpenPiece</name>
    <message>
        <source>new piece</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PictureView</name>
    <message>
        <source>Picture of the piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrow keys turn it, plus and minus make it larger and smaller.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PictureWindow</name>
    <message>
        <source>Picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shaded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shut everything</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These run into each other: {boards}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open {name}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PointPicker</name>
    <message>
        <source>Photo: click the four points</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProportionsPanel</name>
    <message>
        <source>Lay over the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Overlay: {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ratios of the piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>just {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{off} {way} {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{more} higher, {times} times</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the piece has</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each drawer opening over the one above it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Ratio</name>
    <message>
        <source>width : height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height : width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depth : width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}, upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>golden section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thirds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>graduated drawers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height : depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height : writing height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width : depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width : writing height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depth : height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depth : writing height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>writing height : height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>writing height : width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>writing height : depth</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Recovery</name>
    <message>
        <source>a piece that was not saved yet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SheetView</name>
    <message>
        <source>The sheet as it prints</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SheetsPanel</name>
    <message>
        <source>Sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Large</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show this sheet in a window of its own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheets are being drawn…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{sheets} sheets and {tiles} template pages, as they print</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Size</name>
    <message>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slant from level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start of the slant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rail over the top drawer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plinth height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level {key}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SketchView</name>
    <message>
        <source>Sketch of the term</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StartPage</name>
    <message>
        <source>Begin with a piece and make it yours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag its handles, type into its dimensions. What you see is the drawing that prints.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a piece file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open lately</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Files that were open lately</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin with {title}, {size}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Table</name>
    <message>
        <source>divide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Divide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supports</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Climate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Board</source>
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
        <source>Silence</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TraceWindow</name>
    <message>
        <source>Lay a photo behind a view</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From left to right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From below to above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower left, from the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower left, from the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay it behind the view</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the points again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click a point whose size you know, {corner}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say how far these points lie apart on the piece.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Typed</name>
    <message>
        <source>It comes out below zero; a length here is zero or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{text}” is no part; write for example 1/2 of depth.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{name}” is no size of this piece; known are {sizes}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It must be given; it has no default.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write a number, for example 8 or 1.15.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write a whole number, for example 3.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Window</name>
    <message>
        <source>Commands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shopdraw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open lately</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mend the text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This piece has no bank of drawers to change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the system</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which language shall the window speak?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The window speaks it from the next start on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accept a finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why is it all right here?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: what is the new one called?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as in the file</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WorkPage</name>
    <message>
        <source>Beside the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Boards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Proportions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{address} stands in the file alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mend a finding</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Working</name>
    <message>
        <source>This couldn&apos;t be worked out ({kind}): {why}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
