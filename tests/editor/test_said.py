"""What the layers below say in English is said in the person's language: nothing is left over, no value is lost."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path
from xml.etree import ElementTree

import pytest
from PySide6.QtCore import QLocale
from PySide6.QtWidgets import QApplication

from shopdraw.build import CannotBuild, build
from shopdraw.editor.board_list import carried, cut_words, left_words
from shopdraw.editor.field import form_of
from shopdraw.editor.finding_job import piece_findings
from shopdraw.editor.finding_list import fault_words, finding_words
from shopdraw.editor.router_job import router_sight
from shopdraw.editor.said import CONTEXT, left_over, said
from shopdraw.editor.sheet_job import sheet_sets
from shopdraw.editor.shown_size import shown_for
from shopdraw.editor.state import CannotSet, Setting, changed_text, state_of
from shopdraw.editor.tongue import speak, translate
from shopdraw.editor.typed import NotTyped, read_typed, read_typed_angle
from shopdraw.editor.window import Window
from shopdraw.measure import Unit
from shopdraw.piece.design import Design
from shopdraw.piece.fault import Fault
from shopdraw.shipped import resource_path, sample_names, sample_path
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.finding import Finding, Severity
from tests.build.designs import random_design
from tests.build.kinds import KINDS, random_kind
from tests.editor.test_translations import silence
from tests.sentences import SINGLE

ENGLISH = {
    "the", "of", "is", "are", "with", "would", "and", "by", "from", "to", "front", "rear", "side", "drawer", "board",
    "lid", "top", "bottom", "rail", "shelf", "right", "left", "expected", "found", "at", "least", "than", "or", "for",
}  # fmt: skip
"""Words of which one or more stands in every English sentence or name here, and in no German one."""
BAD = ("-1", "99999", "x y", "1/0", "12 furlongs")
"""Values that hardly an input takes: text without sense, nothing, too large, too small."""
NONSENSE = (
    "x", "1/0", "5-", "1 000 mm 3", "12 furlongs", "31 1/2 1/2", "5 ' 14 \"", "1e5", "--3", "2.", "3 in + 2", "",
    "9" * 200,
)  # fmt: skip


@pytest.fixture
def german(qapp: QApplication) -> Iterator[None]:
    assert speak(qapp, ["de"]) == "de"
    yield
    silence(qapp)


def english_in(words: str) -> list[str]:
    """English words of a text; what stands in quotes, ids and addresses belong to the file."""
    plain = re.sub(r'"[^"]*"|\S+[_:=/.]\S+|\w+ = \S+', " ", words)
    return [word for word in re.findall(r"[^\W\d_]+", plain) if word in ENGLISH]


def of_a_piece(assembly: Assembly) -> set[str]:
    """Names of boards and of what is cut."""
    return {board.name for board in assembly.boards} | {
        name for board in assembly.boards for name in board.cut_for if not assembly.has(name)
    }


def test_names_cuts_and_findings_of_every_sample_are_german(german: None) -> None:
    checked = 0
    for sample in sample_names():
        state = state_of(sample_path(sample).read_text(encoding="utf-8"), sample)
        assert state.design is not None
        assert state.assembly is not None
        own = {cut.reason for cut in state.design.cut.values()}
        found = piece_findings(state.design, state.assembly, (), sample_path(sample))
        texts = of_a_piece(state.assembly) | {finding.message for finding in found}
        left = {text: said(text) for text in texts - own if left_over(text) or english_in(said(text))}
        assert left == {}, sample
        checked += len(texts)
    assert checked > 500


@pytest.mark.parametrize("kind", ["desk", *KINDS])
def test_what_random_pieces_say_is_german(german: None, kind: str) -> None:
    for seed in range(2000, 2003):
        design = random_design(seed) if kind == "desk" else random_kind(kind, seed)
        try:
            assembly = build(design)
        except CannotBuild as error:
            texts = {words for fault in error.faults for words in (fault.found, fault.right)}
        else:
            texts = of_a_piece(assembly) | {one.message for one in piece_findings(design, assembly, (), None)}
        assert {text: said(text) for text in texts if left_over(text) or english_in(said(text))} == {}


def test_titles_of_sheets_and_places_on_them_are_german(german: None) -> None:
    sample = "tide-lectern"
    state = state_of(sample_path(sample).read_text(encoding="utf-8"), sample)
    assert state.design is not None
    assert state.assembly is not None
    made = sheet_sets(state.design, state.assembly, (), sample_path(sample))
    titles = {sheet.title for one in made.sets for sheet in one.sheets}
    assert len(titles) > 8
    assert {title: said(title) for title in titles if left_over(title) or english_in(said(title))} == {}
    own = english_alone()
    places = {place.says for held in made.held.values() for place in held.places}
    assert len(places) > 50
    told = {one: re.sub(r"(?:Fach|Ebene) [\w.-]+", "", said(one)) for one in places}  # keys of the file
    foreign = {one: words for one, words in told.items() if set(re.findall(r"[a-zäöüß]{2,}", words.lower())) & own}
    assert foreign == {}
    assert said("6.2a front rail, web frame under drawer 2: rear").startswith("6.2a Traverse vorn, Laufrahmen")


def test_faults_of_every_input_are_german(german: None) -> None:
    """Each input of the piece file is given values that it can't take."""
    sample = "harbour-office-desk"
    text = sample_path(sample).read_text(encoding="utf-8")
    state = state_of(text, sample)
    assert state.design is not None
    left, told = {}, set()
    groups = form_of(state, shown_for(state.design))
    for field in (field for group in groups for field in group.fields):
        for bad in BAD:
            try:
                after = state_of(changed_text(text, (Setting(field.address, bad),), None), sample)
                faults = after.faults
            except CannotSet as error:
                faults = (Fault(0, field.address, "", str(error)),)
            for fault in faults:
                told.add(re.sub(r"[\d.]+", "#", fault.right))
                if left_over(fault.right):
                    left[fault.right] = fault_words(fault)
    assert left == {}
    assert len(told) > 25


def test_what_cant_be_typed_is_told_in_german(german: None) -> None:
    told = {}
    for text in NONSENSE:
        for read in (lambda words: read_typed(words, Unit.MM, {}), read_typed_angle):
            try:
                read(text)
            except NotTyped as error:
                told[text] = str(error)
    assert len(told) > 10
    assert {text: words for text, words in told.items() if english_in(words)} == {}


OF_THE_FILE = re.compile(r"""\S*\w[.=_]\S*|\w+ = \S+|"[^"]*"|„[a-z]+“""")


def english_alone() -> set[str]:
    """Words that the layers below have in English, and that no German sentence, cut or name of theirs has."""
    tree = ElementTree.parse(resource_path("translations/shopdraw_de.ts")).getroot()
    both = [
        (message.findtext("source", ""), message.findtext("translation", ""))
        for context in tree
        if context.findtext("name") in (CONTEXT, "Cut", "Joint", "Face")
        for message in context.iter("message")
    ]
    english, german = (
        {word for pair in both for word in re.findall(r"[^\W\d_]{2,}", OF_THE_FILE.sub(" ", pair[side].lower()))}
        for side in (0, 1)
    )
    return english - german - {"shop", "slip"}


def test_what_a_board_carries_and_the_router_leaves_is_german_and_has_no_ids(german: None) -> None:
    """Both ways in which the list shows a board alone: its cuts and joints, and what the router makes of it."""
    own = english_alone()
    assert {"bore", "slot", "frame", "the", "edge", "shelf"} <= own
    wrong, lines = {}, 0
    for sample in ("harbour-office-desk", "mail-case", "plan-chest", "logbook-shelves"):
        state = state_of(sample_path(sample).read_text(encoding="utf-8"), sample)
        assembly, design = state.assembly, state.design
        assert assembly is not None
        assert design is not None
        reasons = {word for cut in design.cut.values() for word in re.findall(r"[^\W\d_]{2,}", cut.reason.lower())}
        ids = {board.id for board in assembly.boards} | {joint.guest for joint in assembly.joints}
        ids = {one for one in ids if "." in one}
        shapes = {(board.shape, tuple(board.cut_for)): board for board in assembly.boards}
        for board in shapes.values():
            told = [*carried(assembly, board, shown_for(design))]
            sight = router_sight(design, board, None)
            told += [cut_words(assembly, layer.purpose) for _, layers in sight.settings for layer in layers]
            told += [said(layer.cutter) for _, layers in sight.settings for layer in layers]
            for left in sight.left:
                told += [left_words(assembly, left.kind, left.what), said(left.where)]
            lines += len(told)
            for line in told:
                foreign = set(re.findall(r"[^\W\d_]{2,}", line.lower())) & own - reasons
                if foreign or any(re.search(rf"(?<![\w.]){re.escape(one)}(?![\w.])", line) for one in ids):
                    wrong[line] = foreign
    assert wrong == {}
    assert lines > 500


def planted() -> Iterator[tuple[str, list[str]]]:
    """Every sentence that a layer below can say, its gaps filled with values that stand nowhere in it."""
    for english in resource_path("translations/sentences.txt").read_text(encoding="utf-8").splitlines():
        values = [f"{7001 + number}" for number in range(len(re.findall(r"\{\d+\}", english)))]
        yield english, values


def test_every_sentence_keeps_its_values(german: None) -> None:
    lost, count = {}, 0
    for english, values in planted():
        text = english.format(*values)
        told = said(text)
        count += 1
        if left_over(text) or sorted(re.findall(r"700\d|701\d", told)) != sorted(values):
            lost[text] = told
    assert lost == {}
    assert count > 600


def test_a_value_takes_its_own_gap(german: None) -> None:
    """In German the gaps stand in another order."""
    english = "{0} stands {1} before the pin and reaches {2} above the floor; the open lid's underside is at {3}, so "
    english += "it may reach {4} at most: {5}"
    assert translate(CONTEXT, english) != english
    told = said(english.format("writing shelf", "12.5 mm", "700 mm", "705 mm", "690 mm", "lower it, or set it back"))
    assert told == translate(CONTEXT, english).format(
        "Schreibplatte", "12.5 mm", "700 mm", "705 mm", "690 mm", "senken, oder zurücksetzen"
    )


def test_a_name_is_taken_whole_where_commas_leave_a_choice(german: None) -> None:
    words = "the dado for bottom goes 7/16 in into side, left, 54% of its 13/16 in; right would be a third, 0.271 in, "
    assert "„Seite, links“, 54% von" in said(f"{words}and never over 13/32 in")


def test_inches_are_read_back_as_well(german: None) -> None:
    assert said("it is 1/4 in too long") == "es ist 1/4 in zu lang"
    assert said("it is 6.35 mm too long") == "es ist 6.35 mm zu lang"


def test_what_is_the_files_own_stays(german: None) -> None:
    for own in ("cord of the reading lamp", "/home/someone/lid/top.piece", "stock.lid", "lid.edge", "7.2a", "0.5 mm"):
        assert said(own) == own
    told = said("there is no board lid in this piece")
    assert told == "es gibt kein Brett lid in diesem Möbel"  # a key of the file, not the word


def words_alone() -> list[str]:
    """Words that are translated where they stand alone, and can be keys of the file."""
    return [word for word in SINGLE if re.fullmatch(r"[a-z]+", word) and translate(CONTEXT, word) != word]


def test_a_key_of_the_file_that_is_also_a_word_stays(german: None) -> None:
    """Tables, drawers and bays that a person called by such a word, in what is really told of them."""
    words = words_alone()
    assert len(words) > 40
    changed, told = {}, 0
    known = set(Design.model_fields)
    plain = sample_path("harbour-office-desk").read_text(encoding="utf-8")
    for word in words:
        tables = f"\n[{word}x]\nlength = 1\n" + (f"\n[{word}]\nlength = 1\n" if word not in known else "")
        state = state_of(plain + tables + f'\n[fitting."{word}"]\n{word} = 1\n', "desk")
        assert state.piece is not None or state.faults
        texts = [caution.message for caution in state.piece.cautions] if state.piece is not None else []
        texts += [fault.right for fault in state.faults if word in fault.right]
        texts += [f"{word} has no effect on this piece; it would count with {word}"]
        texts += [f"expected an address of one value; {word} is a table", f"{word}: expected the address of a value"]
        for text in texts:
            told += 1
            if len(re.findall(rf"\b{word}\b", said(text))) < len(re.findall(rf"\b{word}\b", text)):
                changed[text] = said(text)
        for name in (f"drawer {word}, front", f"stop of drawer {word}", f"partition right of bay {word}"):
            told += 1
            if not re.search(rf"\b{word}\b", said(name)):
                changed[name] = said(name)
    assert changed == {}
    assert told > 300


def test_a_side_beside_a_key_is_still_a_word(german: None) -> None:
    told = said("guide beside drawer top, left")
    assert "top" in told
    assert "links" in told


def test_english_stays_as_it_was_made(qapp: QApplication) -> None:
    for english, values in planted():
        text = english.format(*values)
        assert said(text) == text


def test_the_german_window_lists_german_rows(make_window, desk: Path, german: None, qtbot) -> None:
    window: Window = make_window(QLocale(QLocale.Language.German, QLocale.Country.Germany))
    window.show()
    window.open_file(desk)
    work = window.work
    work.side.setCurrentWidget(work.boards)
    boards = work.boards.model
    qtbot.waitUntil(lambda: boards.rowCount() > 0, timeout=20_000)
    rows = [str(boards.data(boards.index(row, 1))) for row in range(boards.rowCount())]
    assert "Seite, links" in rows
    assert [row for row in rows if english_in(row)] == []
    work.side.setCurrentWidget(work.sheets)
    qtbot.waitUntil(lambda: work.findings.model.rowCount() > 3 and bool(work.sheet_sets), timeout=120_000)
    findings = work.findings.model
    shown = [str(findings.data(findings.index(row))) for row in range(findings.rowCount())]
    assert [row for row in shown if english_in(row)] == []
    titles = [work.sheets.pages.itemText(row) for row in range(work.sheets.pages.count())]
    assert "Zuschnittliste" in " ".join(titles)
    assert [title for title in titles if english_in(title)] == []
    work.side.setCurrentWidget(work.boards)
    work.boards.choose("side.left")
    assert english_in(work.boards.about.text()) == []
    window.piece.set_values((Setting("case.dado_depth", "17"),), "Deeper")
    window.piece.set_text(window.piece.state.text.replace('width = "', 'width = "x'), "Break")
    faults = [window.faults.faults.item(row).text() for row in range(window.faults.faults.count())]
    assert faults
    assert [fault for fault in faults if english_in(fault)] == []


def test_a_planted_english_row_is_seen() -> None:
    finding = Finding("x", Severity.NOTE, (), "the shelf is of no known rule", right=None)
    assert english_in(finding_words(finding))
    assert english_in("Schreibplatte, lid") == ["lid"]
    assert english_in('lid.edge, "the lid"') == []


def test_what_an_export_says_is_german(make_window, desk: Path, german: None, tmp_path: Path, qtbot) -> None:
    """Each way in which an export ends: written, refused by the system, a folder that is none, a piece with faults."""
    refusals = (
        ("/srv/my top/lid: can't be written (permission denied); nothing was exported", "/srv/my top/lid"),
        ("/srv/lid: can't be written (no space left on device); /srv/my back side is as it was", "/srv/my back side"),
        ("/srv/a lid: found a file; expected a folder to write to", "/srv/a lid"),
        ("41 files in /srv/the lid", "/srv/the lid"),
        ("harbour.piece:12: case.width: found -1; expected at least 300 mm", "case.width"),
    )
    for line, own in refusals:
        told = said(line)
        assert own in told
        assert told != line
        assert english_in(told.replace(own, "")) == [], told
    taken = tmp_path / "taken"
    taken.write_text("a file, no folder", encoding="utf-8")
    window: Window = make_window()
    window.open_file(desk)
    answers = window.filing.ask
    answers.ready = [""]
    window.doing.export(str(taken))
    qtbot.waitUntil(lambda: bool(answers.asked), timeout=60_000)
    assert str(taken) in answers.asked[0].words
    assert "eine Datei gefunden" in answers.asked[0].words
