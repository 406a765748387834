"""Saving: one value changes and nothing else; the file is whole or untouched."""

import errno
import os
import resource
import stat
import tomllib
from pathlib import Path

import pytest
import tomlkit
from hypothesis import given
from hypothesis import strategies as st

from shopdraw.piece import saving
from shopdraw.piece.reading import parse_piece, read_piece
from shopdraw.piece.saving import CannotSave, CannotSet, remove_value, save_piece, set_value
from shopdraw.shipped import sample_names, sample_path
from tests.piece.sample import SAMPLE


@pytest.fixture
def desk(tmp_path: Path) -> Path:
    path = tmp_path / "desk.piece"
    path.write_text(SAMPLE, encoding="utf-8", newline="")
    return path


def changed_lines(before: str, after: str) -> list[tuple[str, str]]:
    return [(old, new) for old, new in zip(before.split("\n"), after.split("\n"), strict=True) if old != new]


def test_case_33_unknown_keys_comments_and_order_survive_open_edit_save(desk: Path) -> None:
    save_piece(desk, set_value(read_piece(desk).text, "case.width", "32 in"))
    after = desk.read_text(encoding="utf-8")
    assert changed_lines(SAMPLE, after) == [('width = "31-1/2"', 'width = "32 in"')]
    assert 'shop_note = "ask about grain"' in after


def test_saving_without_a_change_leaves_every_byte(desk: Path) -> None:
    save_piece(desk, read_piece(desk).text)
    assert desk.read_bytes() == SAMPLE.encode()


@pytest.mark.parametrize("typed", ["31 1/2 in", "31-1/2", "7½″", "18,3 mm", "2' 7 1/2\""])
def test_what_was_typed_is_kept_as_typed(typed: str) -> None:
    assert tomllib.loads(set_value(SAMPLE, "case.width", typed))["case"]["width"] == typed


@pytest.mark.parametrize(
    ("address", "value"),
    [
        ("format", 1),
        ("lid.rabbet", 8),
        ("drawer.3.knobs", 1),
        ('stock."cherry 4/4".thickness', "20 mm"),
        ("opening.bank.divide.rule", "equal"),
        ("opening.bank.divide.step", "3/4"),
        ("opening.bank.divide.sizes", ["5", "6", "7"]),
        ("opening.other.divide.by", "columns"),
        ("note.new.text", 'with "quotes"\nand lines'),
        ("variant.tall.slant.writing_height", "30"),
        ('use."drawer.front"', "pine"),
    ],
)
def test_a_value_set_is_read_back_and_the_rest_is_as_it_was(address: str, value: object) -> None:
    after = set_value(SAMPLE, address, value)
    expected = tomllib.loads(SAMPLE)
    node = expected
    *way, last = saving.address_path(address)
    for key in way:
        node = node.setdefault(key, {})
    node[last] = value
    assert tomllib.loads(after) == expected
    assert all(line.partition("#")[2] in after for line in SAMPLE.split("\n") if "#" in line)


def test_a_removed_value_gives_its_default_back() -> None:
    without = remove_value(SAMPLE, "slant.seat")
    assert "seat" not in tomllib.loads(without)["slant"]
    assert remove_value(without, "slant.seat") == without


@pytest.mark.parametrize("address", ["", "a..b", "x y", "case", "case.width.x", "= 1", "a = 1\nb"])
def test_an_address_that_takes_no_value_is_refused(address: str) -> None:
    with pytest.raises(CannotSet):
        set_value(SAMPLE, address, 1)


KEYS = st.sampled_from(["a", "b", "c d", "é", "1"])
TABLES = st.recursive(
    st.integers(-9, 9) | st.booleans() | st.text(max_size=4),
    lambda inner: st.dictionaries(KEYS, inner, max_size=3) | st.lists(st.integers(0, 9), max_size=2),
    max_leaves=8,
)


@given(st.dictionaries(KEYS, TABLES, max_size=3), st.lists(KEYS, min_size=1, max_size=3), st.integers() | st.text())
def test_any_file_takes_any_value_or_says_no_and_is_never_harmed(
    tables: dict[str, object], path: list[str], value: int | str
) -> None:
    before = tomlkit.dumps(tables)
    address = saving.address_text(path)
    try:
        after = tomllib.loads(set_value(before, address, value))
    except CannotSet:
        return
    node: object = after
    for key in path:
        assert isinstance(node, dict)
        node = node[key]
    assert node == value


LENGTHS = st.builds(lambda whole, sixteenths: f"{whole} {sixteenths}/16", st.integers(1, 90), st.integers(1, 15))


@given(LENGTHS, LENGTHS)
def test_write_then_read_gives_the_same_piece(width: str, depth: str) -> None:
    text = set_value(set_value(SAMPLE, "case.width", width), "case.depth", depth)
    case = parse_piece(text).design.case
    for typed, mm in ((width, case.width), (depth, case.depth)):
        whole, _, sixteenths = typed.partition(" ")
        assert mm == pytest.approx((int(whole) + int(sixteenths.split("/")[0]) / 16) * 25.4, abs=1e-9)
    before = parse_piece(SAMPLE).design
    assert parse_piece(text).design.model_copy(update={"case": before.case}) == before


@pytest.mark.parametrize("step", ["write", "fsync", "replace"])
def test_case_30_a_failed_save_leaves_the_old_file_byte_for_byte(
    desk: Path, monkeypatch: pytest.MonkeyPatch, step: str
) -> None:
    def fail(*_: object) -> None:
        raise OSError(errno.ENOSPC, "No space left on device")

    if step == "replace":
        monkeypatch.setattr(Path, "replace", fail)
    elif step == "fsync":
        monkeypatch.setattr(os, "fsync", fail)
    else:
        monkeypatch.setattr(os, "fdopen", fail)
    with pytest.raises(CannotSave, match=r"no space left on device.*the file is as it was: save it in another place"):
        save_piece(desk, SAMPLE + "# more\n")
    monkeypatch.undo()
    assert desk.read_bytes() == SAMPLE.encode()
    assert list(desk.parent.iterdir()) == [desk]


def test_case_30_a_save_that_the_system_cuts_off_leaves_the_old_file(desk: Path) -> None:
    # No larger file than this may be written: the system itself refuses in the middle, as a full disk does.
    before = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (10_000, before[1]))
    try:
        with pytest.raises(CannotSave, match="file too large"):
            save_piece(desk, SAMPLE + "# more\n" * 48_000)
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, before)
    assert desk.read_bytes() == SAMPLE.encode()
    assert list(desk.parent.iterdir()) == [desk]


def test_case_32_a_target_that_cannot_be_written_is_told(tmp_path: Path) -> None:
    for target in (tmp_path, tmp_path / "nowhere" / "desk.piece", tmp_path / "x\0y"):
        with pytest.raises(CannotSave, match="can't be saved"):
            save_piece(target, SAMPLE)
    assert list(tmp_path.iterdir()) == []


def test_the_old_files_mode_is_kept(desk: Path) -> None:
    desk.chmod(0o640)
    save_piece(desk, SAMPLE)
    assert stat.S_IMODE(desk.stat().st_mode) == 0o640


def test_a_new_file_has_the_usual_mode(tmp_path: Path) -> None:
    save_piece(tmp_path / "a.piece", SAMPLE)
    (tmp_path / "b").write_text("x")
    assert (tmp_path / "a.piece").stat().st_mode == (tmp_path / "b").stat().st_mode


def test_a_link_stays_a_link(desk: Path, tmp_path: Path) -> None:
    link = tmp_path / "link.piece"
    link.symlink_to(desk)
    save_piece(link, SAMPLE + "# more\n")
    assert link.is_symlink()
    assert desk.read_text(encoding="utf-8").endswith("# more\n")


def test_text_that_is_no_text_is_refused(desk: Path) -> None:
    with pytest.raises(CannotSave):
        save_piece(desk, "\ud800")
    assert desk.read_bytes() == SAMPLE.encode()


ODD = """\
# a comment at the head
format = 1 # and one behind
[piece]
title = 'literal'
[case]
  width= "31 1/2 in"   # kept
[a.b.c]
x = [ 1, 2, # in a list
  3 ]
[a]
y.z = {one = 1, two = "2"}
[[many]]
k = 1
[[many]]
k = 2
[a.b.d]
"quoted key" = '''two
lines'''
when = 1979-05-27T07:32:00Z
"""
"""Layouts that a person may type and that a document must keep: spaces, comments, tables out of order, dotted keys."""


@pytest.mark.parametrize("name", [*sample_names(), "odd"])
def test_a_text_that_is_changed_again_and_again_gives_what_one_read_anew_gives(name: str, monkeypatch) -> None:
    """A drag changes the same text at each step: what is kept of it between two steps is never changed itself."""
    text = ODD if name == "odd" else sample_path(name).read_text(encoding="utf-8")
    changes = [
        ("case.width", "812 mm"), ("case.width", 900), ("case.depth", "1/2"), ("piece.title", "x"), ("new.t.key", 3),
        ("slant.angle", 51.5), ('opening."A.1".fill', "none"), ("a.b.d.when", "later"), ("many", 4), ("format", 1),
        ("slant.sizes", [1, "2 mm", 3.5]), ("slant.sizes", []), ("case.width", [[1, 2], [3, 4]]), ("many", ["a"]),
        ("case.width", True), ("case.width", 'a "quoted" \\ \n line'), ("case.width", float("nan")),
    ]  # fmt: skip

    def after() -> list[str]:
        found = []
        for address, value in (*changes, *changes):
            for make in (lambda a=address, v=value: set_value(text, a, v), lambda a=address: remove_value(text, a)):
                try:
                    found.append(make())
                except CannotSet as error:
                    found.append(str(error))
        return found

    kept = after()
    assert saving._place(text, ("case", "width")) is not None, "kept between two steps"
    monkeypatch.setattr(saving, "_place", lambda _text, _path: None)
    monkeypatch.setattr(saving, "_is_without", lambda _text, _path: False)
    assert after() == kept
    assert len(set(kept)) > 8
